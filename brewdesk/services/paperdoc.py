"""A document in blocks, for paper and for HTML alike: every word is in it, and no place.

Lengths in a drawing are points (1/72 inch), from its upper left corner.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Ink = Literal["ink", "muted", "line", "shade", "accent", "band", "danger"]

# Darker than on a screen, so that a poor printer still shows them.
COLOURS: dict[Ink, str] = {
    "ink": "#1c1a17",
    "muted": "#5b544a",
    "line": "#8d8578",
    "shade": "#f1ede6",
    "accent": "#8a4b12",
    "band": "#ecd9c0",
    "danger": "#a3211b",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Stroke:
    """A line through points, or an area inside them if ``is_filled``."""

    points: tuple[tuple[float, float], ...]
    ink: Ink
    width: float = 0.6
    is_dashed: bool = False
    is_filled: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Dot:
    """A filled circle; hollow for a point that is doubted."""

    x: float
    y: float
    radius: float
    ink: Ink
    is_hollow: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """Words at a point: ``anchor`` says which end of them is there."""

    x: float
    y: float
    text: str
    anchor: Literal["start", "middle", "end"] = "start"
    ink: Ink = "muted"
    size: float = 8.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """A picture made of strokes, and the same in words for those who do not see it."""

    width: float
    height: float
    shapes: tuple[Stroke | Dot | Label, ...]
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Heading:
    """The title of what follows."""

    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Para:
    """A paragraph."""

    text: str
    is_muted: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """Short facts, each with its label, side by side."""

    pairs: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Grid:
    """A table; ``shares`` of the width for each column, ``numbers`` are set to the right.

    On a page that has to hold everything, only ``most_on_paper`` rows are shown, spread over all
    of them with the first and the last, and ``thinned`` says so below.
    """

    headers: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    shares: tuple[float, ...]
    numbers: frozenset[int] = frozenset()
    most_on_paper: int | None = None
    thinned: str = ""

    def on_paper(self) -> tuple[tuple[str, ...], ...]:
        """Return the rows that are shown on one page."""
        most, last = self.most_on_paper, len(self.rows) - 1
        if most is None or last < most:
            return self.rows
        return tuple(self.rows[round(place * last / (most - 1))] for place in range(most))

    def thinned_words(self) -> str:
        """Say that rows are left out on one page; empty if none are."""
        shown, count = len(self.on_paper()), len(self.rows)
        return "" if shown == count else self.thinned.format(shown=shown, count=count)


@dataclass(frozen=True, slots=True, kw_only=True)
class Halves:
    """Two columns side by side."""

    left: tuple[Heading | Para | Facts | Grid, ...]
    right: tuple[Heading | Para | Facts | Grid, ...]


Block = Heading | Para | Facts | Grid | Drawing | Halves


@dataclass(frozen=True, slots=True, kw_only=True)
class Document:
    """Every word of a document. ``page_words`` has {page} and {pages} in it."""

    kind: str
    title: str
    subtitle: str
    made_on: str
    blocks: tuple[Block, ...]
    footer: str
    page_words: str
    is_one_page: bool
    language: str = "en"
