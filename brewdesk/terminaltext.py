"""Text in the columns of a terminal: how wide it stands there, and where to break it."""

from __future__ import annotations

import unicodedata

_NO_WIDTH = frozenset({"Mn", "Me", "Cf"})  # accents, joiners: they stand on what is before them


def width_of(text: str) -> int:
    """Return how many columns ``text`` takes (Unicode Standard Annex 11: wide ones take two)."""
    return sum(_width(character) for character in text)


def wrapped(text: str, columns: int) -> list[str]:
    """Break ``text`` at its spaces into lines of at most ``columns``; words too long break."""
    lines: list[str] = []
    line = ""
    for word in text.split(" "):
        joined = f"{line} {word}" if line else word
        if width_of(joined) <= columns:
            line = joined
            continue
        if line:
            lines.append(line)
        *whole, line = _pieces(word, columns)
        lines += whole
    return [*lines, line]


def padded(text: str, columns: int) -> str:
    """Fill ``text`` up with spaces to ``columns``."""
    return text + " " * max(0, columns - width_of(text))


def _width(character: str) -> int:
    if unicodedata.category(character) in _NO_WIDTH:
        return 0
    return 2 if unicodedata.east_asian_width(character) in "WF" else 1


def _pieces(word: str, columns: int) -> list[str]:
    pieces = [""]
    taken = 0
    for character in word:
        width = _width(character)
        if taken + width > columns and pieces[-1]:
            pieces.append("")
            taken = 0
        pieces[-1] += character
        taken += width
    return pieces
