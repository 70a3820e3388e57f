"""A process that has the program in memory and forks a fresh one for each try.

Starting Python and the program two hundred times would take minutes. What is forked has
nothing open yet: it opens the pantry itself, as a start of the program does.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from select import select
from time import monotonic

ROOT = Path(__file__).resolve().parents[2]
_SERVE = "from tests.faults.forked import serve; serve()"


def surroundings() -> dict[str, str]:
    """Return the environment in which a child finds the program and these tests."""
    return {
        **os.environ,
        "PYTHONPATH": os.pathsep.join([str(ROOT), str(ROOT / "shared")]),
        "PYTHONDONTWRITEBYTECODE": "1",
    }


@dataclass(frozen=True)
class Ended:
    """How one forked program ended: what it had said by then, and the status of its end."""

    lines: tuple[str, ...]
    status: int

    @property
    def was_killed(self) -> bool:
        return os.WIFSIGNALED(self.status) and os.WTERMSIG(self.status) == signal.SIGKILL

    @property
    def ended_well(self) -> bool:
        return os.WIFEXITED(self.status) and os.WEXITSTATUS(self.status) == 0


class Forker:
    """Use as a context. Each `begin` forks one program; `finish` waits for its end."""

    def __init__(self, *command: str, **variables: str) -> None:
        self._process = subprocess.Popen(
            [*command, sys.executable, "-c", _SERVE],
            env={**surroundings(), **variables},
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            bufsize=0,
        )
        self._rest = b""
        self._pid = 0
        self._said: list[str] = []

    def __enter__(self) -> Forker:
        assert self._line(60.0) == "ready"
        return self

    def __exit__(self, *_error: object) -> None:
        self._process.stdin.close()
        self._process.stdout.close()
        self._process.wait()

    def begin(self, work: str, *arguments: object) -> None:
        """Fork a program that does ``work`` (a function of `forked`)."""
        words = "\t".join([work, *(str(argument) for argument in arguments)])
        self._process.stdin.write(words.encode() + b"\n")
        said = self._line(60.0)
        assert said.startswith("forked "), said
        self._pid, self._said = int(said.split()[1]), []

    def listen(self, *, seconds: float) -> None:
        """Take in what it says, for so long."""
        end = monotonic() + seconds
        while (left := end - monotonic()) > 0:
            line = self._line(left)
            if line is not None:
                self._said.append(line)

    def hear(self) -> str:
        """Wait for the next thing it says."""
        line = self._line(60.0)
        self._said.append(line)
        return line

    def kill(self) -> None:
        """End it in the middle of whatever it does."""
        os.kill(self._pid, signal.SIGKILL)

    def finish(self) -> Ended:
        """Wait until it has ended."""
        while not (line := self._line(60.0)).startswith("ended "):
            self._said.append(line)
        return Ended(tuple(self._said), int(line.split()[1]))

    def run(self, work: str, *arguments: object) -> Ended:
        """Fork a program and let it come to its end."""
        self.begin(work, *arguments)
        return self.finish()

    def _line(self, seconds: float) -> str | None:
        end = monotonic() + seconds
        while b"\n" not in self._rest:
            left = end - monotonic()
            if left <= 0 or not select([self._process.stdout], [], [], left)[0]:
                return None
            piece = os.read(self._process.stdout.fileno(), 65536)
            assert piece, "the forking process has ended"
            self._rest += piece
        line, _, self._rest = self._rest.partition(b"\n")
        return line.decode()
