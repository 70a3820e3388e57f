"""Text as it is looked for: without case, accents and look-alike letters."""

from __future__ import annotations

import unicodedata

# Letters that Unicode does not take apart, though people type the plain one for them.
_PLAIN = str.maketrans({"ø": "o", "ł": "l", "đ": "d", "ħ": "h", "ı": "i", "æ": "ae", "œ": "oe"})


def fold(text: str) -> str:
    """Return ``text`` for comparing: "Crème BRÛLÉE" and "creme brulee" give the same.

    Compatibility forms are taken apart (NFKD), case is folded, marks are left out. Folding
    twice is folding once.
    """
    if text.isascii():
        return text.lower()
    apart = unicodedata.normalize("NFKD", unicodedata.normalize("NFKD", text).casefold())
    kept = "".join(letter for letter in apart if unicodedata.category(letter) != "Mn")
    return kept.translate(_PLAIN)


def words_of(text: str) -> tuple[str, ...]:
    """Return the folded words of what somebody looks for, each once."""
    return tuple(dict.fromkeys(fold(text).split()))
