"""Free words about a sip, read as what they say of sweet and sour; most words say nothing.

The list is this program's own reading of plain English, not a tasting standard. Words that
may as well speak of tea, fizz or body ("thin", "flat") stand in it as saying nothing, so that
the choice can be seen. A list of one's own can be put in front of it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Final

from culturecore.sources import Source, Standing

WORD_SOURCES: Final[dict[str, Source]] = {
    "taste_words_assumption": Source(
        "taste_words_assumption",
        "Our own reading of plain English words for a sip; no lexicon of kombucha was used",
        Standing.ASSUMPTION,
    )
}


class Leaning(Enum):
    """What words say of a sip."""

    TOO_SWEET = "too_sweet"
    RIGHT = "right"
    TOO_SOUR = "too_sour"
    NOTHING = "nothing"


@dataclass(frozen=True, slots=True)
class Phrase:
    """Words in their order, and what they say.

    ``*`` stands for up to two of `FILLERS`; it cannot come first.
    """

    words: str
    leaning: Leaning


def _phrases(leaning: Leaning, *words: str) -> tuple[Phrase, ...]:
    return tuple(Phrase(each, leaning) for each in words)


TASTE_WORDS: Final[tuple[Phrase, ...]] = (
    *_phrases(
        Leaning.TOO_SWEET,
        *("too sweet", "a bit sweet", "bit sweet", "a little sweet", "still sweet"),
        *("still * sweet", "sweet still", "rather sweet", "quite sweet", "very sweet"),
        *("overly sweet", "sickly", "syrupy", "sugary", "cloying", "like sweet tea"),
        *("not sour enough", "not * sour enough", "not sharp enough", "not tart enough"),
        *("needs more time", "needs longer", "needs * days", "not ready", "not * ready yet"),
        *("too mild", "too young"),
    ),
    *_phrases(
        Leaning.TOO_SOUR,
        *("too sour", "too sharp", "too tart", "too acidic"),
        *("too acid", "a bit sour", "bit sour", "very sour", "rather sour", "quite sour"),
        *("overly sour", "vinegary", "vinegar", "like vinegar", "mouth puckering", "puckering"),
        *("harsh", "biting", "undrinkably sour", "burns", "not sweet enough"),
        *("not * sweet enough", "too dry", "bone dry", "too long", "gone over", "past it"),
    ),
    *_phrases(
        Leaning.RIGHT,
        *("lovely", "perfect", "just right", "spot on", "delicious", "balanced", "well balanced"),
        *("good", "very good", "great", "nice", "excellent", "ready", "as i like it", "not bad"),
        *("the best", "wonderful", "pleasant"),
    ),
    # Body, tea, fizz and smell: nothing about the balance of sweet and sour.
    *_phrases(
        Leaning.NOTHING,
        *("thin", "watery", "weak", "flat", "fizzy", "yeasty", "earthy", "funky", "bitter"),
        *("astringent", "cloudy", "sweet", "sour", "tart", "sharp", "dry", "mild"),
        *("smells of vinegar", "smells vinegary", "smells like vinegar", "smells * good"),
        *("sweet tea", "good looking", "looks good", "looks great", "looks nice", "looks * ready"),
        *("smells good", "smells nice", "smells great", "smells lovely"),
    ),
)

# Small words that a star may stand for: others would join what does not belong together.
FILLERS = frozenset(
    {"a", "an", "and", "any", "bit", "few", "just", "little", "more", "much", "quite", "rather"}
    | {"really", "slightly", "so", "some", "the", "two", "very", "yet"}
)
_NOT = frozenset(
    {"not", "no", "never", "hardly", "isn't", "isnt", "wasn't", "wasnt", "without", "less"}
)
_NEGATION_REACH = 2  # words before a phrase in which a "not" still belongs to it
_MOST_BETWEEN = 2  # words that a star stands for
_WORD = re.compile(r"[a-z]+(?:'[a-z]+)?")


# The longer ones first, so that they win.
_LISTED: Final = sorted(
    ((phrase.words.split(), phrase.leaning) for phrase in TASTE_WORDS),
    key=lambda item: -len(item[0]),
)


@dataclass(frozen=True, slots=True)
class WordsRead:
    """What a note was read as, and the phrases that made it so."""

    leaning: Leaning
    because: tuple[str, ...] = ()


def read_words(text: str, own: Sequence[Phrase] = ()) -> WordsRead:
    """Read what a note says of a sip.

    Parameters: ``own`` are phrases that come before the program's.

    Notes: longer phrases win over the shorter ones inside them; a "not" before a phrase takes
    its meaning away ("not too sweet" says nothing); words for both sides together say nothing;
    "too sweet" beside "lovely" is still too sweet.
    """
    tokens = _WORD.findall(text.lower().replace("\u2019", "'"))
    taken: set[int] = set()
    found: dict[Leaning, list[str]] = {}
    for words, leaning in _by_length(own):
        if words[0] not in tokens:
            continue
        for places in _places(tokens, words):
            if taken & set(places):
                continue
            taken.update(places)
            if leaning is not Leaning.NOTHING and not _is_denied(tokens, places[0], words):
                phrase = " ".join(tokens[places[0] : places[-1] + 1])
                found.setdefault(leaning, []).append(phrase)
    sides = [side for side in (Leaning.TOO_SWEET, Leaning.TOO_SOUR) if side in found]
    if len(sides) > 1:
        return WordsRead(Leaning.NOTHING)
    leaning = sides[0] if sides else Leaning.RIGHT
    if leaning not in found:
        return WordsRead(Leaning.NOTHING)
    return WordsRead(leaning, tuple(found[leaning]))


def _by_length(own: Sequence[Phrase]) -> list[tuple[list[str], Leaning]]:
    """Give the phrases of one's own first, then the longer ones before the shorter ones."""
    mine = [
        (phrase.words.lower().split(), phrase.leaning) for phrase in own if phrase.words.strip()
    ]
    return [*sorted(mine, key=lambda item: -len(item[0])), *_LISTED]


def _places(tokens: list[str], words: list[str]) -> list[list[int]]:
    """Find where a phrase's words stand, as indexes of the words themselves."""
    found = []
    for start in range(len(tokens)):
        places = _match(tokens, words, start)
        if places is not None:
            found.append(places)
    return found


def _match(tokens: list[str], words: list[str], start: int) -> list[int] | None:
    places: list[int] = []
    at, gap = start, 0
    for word in words:
        if word == "*":
            gap = _MOST_BETWEEN
            continue
        while gap and at < len(tokens) and tokens[at] != word and tokens[at] in FILLERS:
            at, gap = at + 1, gap - 1
        if at >= len(tokens) or tokens[at] != word:
            return None
        places.append(at)
        at, gap = at + 1, 0
    return places


def _is_denied(tokens: list[str], start: int, words: list[str]) -> bool:
    """Tell whether a "not" just before takes the meaning away; a phrase's own "not" does not."""
    if words[0] in _NOT:
        return False
    return bool(_NOT & set(tokens[max(0, start - _NEGATION_REACH) : start]))
