"""Start the whole program in a process of its own, and read what was seen at its window."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

from tests.faults.forker import ROOT, surroundings

PATIENCE_S = 120


class WholeProgram:
    """A running program; ``said`` collects what its window told."""

    def __init__(
        self, steps: Sequence[str], words: Sequence[str], *before: str, **env: str
    ) -> None:
        self._process = subprocess.Popen(
            [*before, sys.executable, "-m", "tests.faults.driven", *steps, "--", *words],
            cwd=ROOT,
            env={**surroundings(), "QT_QPA_PLATFORM": "offscreen", **env},
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )
        self.pid = self._process.pid
        self.said: list[str] = []
        self.done: list[str] = []
        self.complaints = ""

    def until(self, step: str) -> None:
        """Wait until a step was done."""
        for line in self._process.stdout:
            self._note(line)
            if line == f"done {step}\n":
                return
        raise AssertionError(f"it ended before {step!r}: {self._process.stderr.read()}")

    def ended(self) -> int:
        """Wait for its end and return its exit code."""
        out, self.complaints = self._process.communicate(timeout=PATIENCE_S)
        for line in out.splitlines():
            self._note(line)
        return self._process.returncode

    def signal(self, number: int) -> None:
        """Send it a signal."""
        self._process.send_signal(number)

    def _note(self, line: str) -> None:
        word, _, rest = line.strip().partition(" ")
        {"said": self.said, "done": self.done}.get(word, []).append(rest)


def run(steps: Sequence[str], store: Path, *before: str, **env: str) -> tuple[int, WholeProgram]:
    """Open a pantry, follow the steps, and wait for the end."""
    program = WholeProgram(steps, ["--store", str(store)], *before, **env)
    return program.ended(), program
