"""Where labels lie on a sheet or a roll, in millimetres from the paper's upper left corner."""

from __future__ import annotations

import math
from dataclasses import dataclass

from culturecore.errors import ImpossibleInput

RULER_MM = 100.0  # what the ruler on the test page should measure
LARGEST_PAGE_MM = 1200.0
MOST_IN_A_LINE = 60
MOST_ON_A_PAGE = 1000
_LEAST_LABEL_MM = 5.0
_NAME_LENGTH_HIGH = 60
_ROUNDING_MM = 1e-6
# Nearly every printer is within a few parts in a hundred; beyond it the ruler was misread.
_RULER_LOW_MM, _RULER_HIGH_MM = 90.0, 110.0
_SHIFT_HIGH_MM = 20.0


@dataclass(frozen=True, slots=True)
class RectMm:
    """A rectangle on paper: left, top, width and height in mm."""

    x: float
    y: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """Right edge."""
        return self.x + self.width

    @property
    def bottom(self) -> float:
        """Lower edge."""
        return self.y + self.height


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelSheet:
    """A sheet or roll of labels; all lengths in mm.

    On a roll a page is one row of labels and the gap after it; ``page_height_mm``, ``rows``
    and ``margin_top_mm`` mean nothing there. ``ruler_x_mm`` and ``ruler_y_mm`` are what a
    100 mm ruler measures as the printer prints it, ``shift_x_mm`` and ``shift_y_mm`` how far
    everything is to be moved right and down.
    """

    key: str
    name: str
    page_width_mm: float
    page_height_mm: float
    margin_left_mm: float
    margin_top_mm: float
    columns: int
    rows: int
    label_width_mm: float
    label_height_mm: float
    gap_x_mm: float = 0.0
    gap_y_mm: float = 0.0
    corner_mm: float = 0.0
    is_roll: bool = False
    shift_x_mm: float = 0.0
    shift_y_mm: float = 0.0
    ruler_x_mm: float = RULER_MM
    ruler_y_mm: float = RULER_MM

    @property
    def per_page(self) -> int:
        """Labels on one page."""
        return self.columns if self.is_roll else self.columns * self.rows

    @property
    def page_mm(self) -> tuple[float, float]:
        """Width and height of one page as it is sent to the printer."""
        if self.is_roll:
            return self.page_width_mm, self.label_height_mm + self.gap_y_mm
        return self.page_width_mm, self.page_height_mm

    @property
    def scale(self) -> tuple[float, float]:
        """Factors that undo what the printer does to lengths, across and down."""
        return RULER_MM / self.ruler_x_mm, RULER_MM / self.ruler_y_mm


def cell_mm(sheet: LabelSheet, position: int) -> RectMm:
    """Return where the label at ``position`` lies: row by row from the upper left, from 0.

    Raises
    ------
    IndexError
        Outside the page.
    """
    if not 0 <= position < sheet.per_page:
        raise IndexError(position)
    row, column = divmod(position, sheet.columns)
    top = 0.0 if sheet.is_roll else sheet.margin_top_mm
    return RectMm(
        sheet.margin_left_mm + column * (sheet.label_width_mm + sheet.gap_x_mm),
        top + row * (sheet.label_height_mm + sheet.gap_y_mm),
        sheet.label_width_mm,
        sheet.label_height_mm,
    )


def cell_at(sheet: LabelSheet, x_mm: float, y_mm: float) -> int | None:
    """Return the position of the label at a point of the page; None beside all of them."""
    for position in range(sheet.per_page):
        cell = cell_mm(sheet, position)
        if cell.x <= x_mm < cell.right and cell.y <= y_mm < cell.bottom:
            return position
    return None


def page_count(sheet: LabelSheet, labels: int, start: int = 0) -> int:
    """Return how many pages ``labels`` take when the first goes to position ``start``."""
    return math.ceil((labels + start) / sheet.per_page) if labels else 0


def problems_of(sheet: LabelSheet) -> tuple[ImpossibleInput, ...]:
    """Return what is wrong with a sheet, at most one problem a field; empty if it can be used."""
    found: dict[str, ImpossibleInput] = {}
    name = sheet.name.strip()
    if not name:
        found["name"] = ImpossibleInput("name", sheet.name, reason="empty")
    elif len(name) > _NAME_LENGTH_HIGH:
        found["name"] = ImpossibleInput("name", sheet.name, reason="too_long")
    for field, low, high in _ranges(sheet):
        value = getattr(sheet, field)
        if not low <= value <= high:  # a NaN fails this too
            found[field] = ImpossibleInput(field, value, low=low, high=high, unit=_unit(field))
    if not found:
        found.update(_overhangs(sheet))
    return tuple(found.values())


def _ranges(sheet: LabelSheet) -> tuple[tuple[str, float, float], ...]:
    half = min(sheet.label_width_mm, sheet.label_height_mm) / 2
    always = (
        ("page_width_mm", _LEAST_LABEL_MM, LARGEST_PAGE_MM),
        ("margin_left_mm", 0.0, LARGEST_PAGE_MM),
        ("columns", 1, MOST_IN_A_LINE),
        ("label_width_mm", _LEAST_LABEL_MM, LARGEST_PAGE_MM),
        ("label_height_mm", _LEAST_LABEL_MM, LARGEST_PAGE_MM),
        ("gap_x_mm", 0.0, LARGEST_PAGE_MM),
        ("gap_y_mm", 0.0, LARGEST_PAGE_MM),
        ("corner_mm", 0.0, half if half >= 0 else 0.0),
        ("shift_x_mm", -_SHIFT_HIGH_MM, _SHIFT_HIGH_MM),
        ("shift_y_mm", -_SHIFT_HIGH_MM, _SHIFT_HIGH_MM),
        ("ruler_x_mm", _RULER_LOW_MM, _RULER_HIGH_MM),
        ("ruler_y_mm", _RULER_LOW_MM, _RULER_HIGH_MM),
    )
    if sheet.is_roll:
        return always
    return (
        *always,
        ("page_height_mm", _LEAST_LABEL_MM, LARGEST_PAGE_MM),
        ("margin_top_mm", 0.0, LARGEST_PAGE_MM),
        ("rows", 1, MOST_IN_A_LINE),
    )


def _unit(field: str) -> str:
    return "mm" if field.endswith("_mm") else ""


def _overhangs(sheet: LabelSheet) -> dict[str, ImpossibleInput]:
    """Say where the labels together are larger than the paper; told at the labels' own size."""
    found = {}
    across = sheet.columns * sheet.label_width_mm + (sheet.columns - 1) * sheet.gap_x_mm
    room = sheet.page_width_mm - sheet.margin_left_mm
    if across > room + _ROUNDING_MM:
        found["label_width_mm"] = ImpossibleInput(
            "label_width_mm", across, high=room, unit="mm", reason="off_the_paper"
        )
    down = sheet.rows * sheet.label_height_mm + (sheet.rows - 1) * sheet.gap_y_mm
    room = sheet.page_height_mm - sheet.margin_top_mm
    if not sheet.is_roll and down > room + _ROUNDING_MM:
        found["label_height_mm"] = ImpossibleInput(
            "label_height_mm", down, high=room, unit="mm", reason="off_the_paper"
        )
    return found
