"""Text that somebody typed, made harmless for a terminal or a file of one line per fact."""

from __future__ import annotations

import unicodedata

# Marks that reorder what stands after them, beyond the word they stand in. Right-to-left
# writing needs none of them: letters bring their direction along.
_REORDERING = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
# Control characters, halves of surrogate pairs. What is only too new to be known here stays.
_LEFT_OUT = frozenset({"Cc", "Cs"})
_MORE = "…"


def plain_line(text: str, most: int | None = None) -> str:
    """Return ``text`` on one line, without anything that a reader could take for a command.

    Line breaks and tabs become spaces; other control characters, lone surrogates and marks
    that reorder text go. What is longer than ``most`` characters ends in "…".
    """
    # Spaces first: a line break that only vanished would join two words.
    spaced = " ".join(text.split())
    kept = "".join(
        character
        for character in spaced
        if unicodedata.category(character) not in _LEFT_OUT
        and character not in _REORDERING
        and not _is_never_a_character(character)
    )
    line = " ".join(kept.split())
    if most is None or len(line) <= most:
        return line
    short = line[: most - len(_MORE)]
    while short and unicodedata.combining(line[len(short)]):
        short = short[:-1]  # an accent without its letter would sit on the dots
    return short.rstrip() + _MORE


def _is_never_a_character(character: str) -> bool:
    """Whether Unicode keeps this number free for ever (section 23.7 of the standard)."""
    number = ord(character)
    return number & 0xFFFE == 0xFFFE or 0xFDD0 <= number <= 0xFDEF
