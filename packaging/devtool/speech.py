"""How the tool speaks: plain lines on standard output, one kind of refusal."""

from __future__ import annotations

import shlex
from collections.abc import Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


class CannotGoOn(Exception):  # noqa: N818  # reads as the sentence it carries
    """Something is missing; the text says what, and what to do about it."""


def say(text: str) -> None:
    """Print one line at once, so that it stands before the output of the program it announces."""
    print(text, flush=True)


def say_command(command: Sequence[str]) -> None:
    """Print a command as it could be typed."""
    say(f"$ {shlex.join(command)}")
