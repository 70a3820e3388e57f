"""What a loss was about, as far as the maker's own words say. Plain values, no guessing."""

from __future__ import annotations

import re
from enum import Enum


class Cause(Enum):
    """What was lost for. ``UNTOLD`` is a reason that names none of the others."""

    MOLD = "mold"
    FLIES = "flies"
    TOO_SOUR = "too_sour"
    OFF = "off"  # smell or taste that does not belong there
    PRESSURE = "pressure"  # gushed, burst
    BROKEN = "broken"  # glass, spilt
    DRIED = "dried"  # forgotten, dried out, starved
    UNTOLD = "untold"


# English words only: reasons are the maker's own, in whatever language; what is not
# recognised is told as it stands and counted as untold.
_WORDS: tuple[tuple[Cause, str], ...] = (
    (Cause.MOLD, r"mou?ld(?:y|s|ed)?|fuzz(?:y)?|furry"),
    (Cause.FLIES, r"fl(?:y|ies)|gnats?|maggots?|larvae?|vinegar eels?"),
    (Cause.PRESSURE, r"gush(?:ed|er|ers|ing)?|burst|exploded?|overcarbonated|over pressure"),
    (Cause.BROKEN, r"broke(?:n)?|crack(?:ed|s)?|shatter(?:ed)?|spil(?:t|led)|dropped|leak(?:ed)?"),
    (Cause.TOO_SOUR, r"too sour|vinegar(?:y)?|far too acid(?:ic)?"),
    (Cause.OFF, r"smell(?:s|ed)?|stink(?:s)?|stank|rotten|off|sulphur|sulfur|cheesy|yeasty"),
    (Cause.DRIED, r"dried(?: out| up)?|dry|forgot(?:ten)?|starved"),
)
_PATTERNS = tuple(
    (cause, re.compile(rf"\b(?:{words})\b", re.IGNORECASE)) for cause, words in _WORDS
)
# "No mold, only yeast" tells of something else; a word or two may stand between.
_DENIAL_BEFORE = re.compile(
    r"\b(?:no|not|without|never|isn't|wasn't)\s+(?:[^\W\d_]+\s+){0,3}$", re.IGNORECASE
)


def cause_of(reason: str, *, saw_mold: bool = False) -> Cause:
    """Return what a loss was for: mold if that was ticked at a look, else what the words name."""
    if saw_mold:
        return Cause.MOLD
    for cause, pattern in _PATTERNS:
        for found in pattern.finditer(reason):
            if _DENIAL_BEFORE.search(reason[: found.start()]) is None:
                return cause
    return Cause.UNTOLD
