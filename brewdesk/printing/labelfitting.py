"""Fits a label's words and code into its rectangle: sizes, lines, places, and what is cut.

Lengths are millimetres. Type is set in hundredths of a millimetre and scaled by the painter,
so that lines break in the same places on paper, in a PDF file and in the preview.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import (
    QFont,
    QFontMetricsF,
    QTextLayout,
    QTextOption,
)

from brewdesk.printing.codeplaces import above_code, code_places, is_upright
from brewdesk.printing.qrpainter import modules_of
from brewdesk.services.labelgeometry import RectMm
from brewdesk.services.labels import CAUTIONS, LabelContent, LabelField

UNITS_PER_MM = 100.0
LEAST_PT = 5.0
FRAME_MM = 0.2
_MM_PER_PT = 25.4 / 72.0
_LARGEST_SCALE = 2.2
_HALVINGS = 9  # the scale is found to within half a hundredth
_GAP_MM = 0.5
_FOOT_GAP_MM = 1.8
_ENDLESS_MM = 20_000.0
# A name that would need a second line is set smaller instead, down to this share of its size.
_ONE_LINE_SHARE = 0.66
_UNDER_NAME = 0.8  # of the name's size, at most
_COMFORT_PT = 6.5  # below it a smaller code makes room for larger type

F = LabelField
_SIZES_PT = {
    F.NAME: 13.0, F.STAGE: 8.5, F.MADE_ON: 8.5, F.TASTE_FROM: 8.5, F.CHILL_BY: 9.5,
    F.BEST_BEFORE: 8.5, F.FEED_BY: 8.5, F.INGREDIENTS: 7.0, F.ALLERGENS: 7.5,
    F.UNDER_PRESSURE: 7.0, F.KEEP_COLD: 7.0, F.TRACE_ALCOHOL: 7.0,
}  # fmt: skip
_BOLD = (F.NAME, F.CHILL_BY, F.ALLERGENS, F.UNDER_PRESSURE)
# What goes first when there is no room at all; the name never goes.
_DROPPED_FIRST = (
    F.STAGE, F.TASTE_FROM, F.FEED_BY, F.MADE_ON, F.INGREDIENTS, F.BEST_BEFORE,
    F.TRACE_ALCOHOL, F.KEEP_COLD, F.CHILL_BY, F.UNDER_PRESSURE, F.ALLERGENS,
)  # fmt: skip
_FOOT = frozenset({F.INGREDIENTS, F.ALLERGENS, *CAUTIONS})
_DATES = frozenset({F.MADE_ON, F.TASTE_FROM, F.CHILL_BY, F.BEST_BEFORE, F.FEED_BY})
_KEPT_WHOLE = (F.ALLERGENS, F.CHILL_BY, *CAUTIONS)


@dataclass(frozen=True, slots=True)
class FitNote:
    """Something that does not stand on the label as it should.

    ``reason`` is "elided", "left_out", "too_long" or "qr_left_out".
    """

    field: LabelField
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FittedBlock:
    """One field as it will be set, in mm from the label's upper left corner."""

    field: LabelField
    text: str
    size_pt: float
    is_bold: bool
    place: RectMm


@dataclass(frozen=True, slots=True, kw_only=True)
class FittedLabel:
    """A label ready to be painted, and what of it did not fit."""

    width_mm: float
    height_mm: float
    corner_mm: float
    family: str
    blocks: tuple[FittedBlock, ...]
    rule: RectMm | None  # a hair line above the foot; of no height
    modules: tuple[tuple[bool, ...], ...]
    code_place: RectMm | None
    notes: tuple[FitNote, ...]


def fit_label(
    content: LabelContent, width_mm: float, height_mm: float, family: str, corner_mm: float = 0.0
) -> FittedLabel:
    """Find the largest type at which everything fits; never below `LEAST_PT`.

    Lines wrap at every size. What does not fit even at the least size is cut short with an
    ellipsis or left out, cautions and allergens last, and every such field is noted.
    """
    shorter_mm = min(width_mm, height_mm)
    pad = min(max(1.5, 0.045 * shorter_mm, 0.3 * corner_mm + 1.0), 0.15 * shorter_mm)
    inner = RectMm(pad, pad, width_mm - 2 * pad, height_mm - 2 * pad)
    free = min(pad, FRAME_MM + 0.3 * corner_mm)  # a round corner reaches 0.29 radii inwards
    clear = RectMm(free, free, width_mm - 2 * free, height_mm - 2 * free)
    modules = modules_of(content.code) if content.code else ()
    best: FittedLabel | None = None
    for code in code_places(inner, clear, modules):
        if code is not None and is_upright(inner):
            fitted = _Fitting(content, above_code(inner, code), None, family).result()
        else:
            fitted = _Fitting(content, inner, code, family).result()
        made = FittedLabel(
            width_mm=width_mm,
            height_mm=height_mm,
            corner_mm=corner_mm,
            family=family,
            blocks=fitted.blocks,
            rule=fitted.rule,
            modules=modules if code is not None else (),
            code_place=code,
            notes=fitted.notes,
        )
        if best is None or _merit(made) > _merit(best):
            best = made
        if _merit(made) >= (0, _COMFORT_PT):
            break
    assert best is not None  # there is always one place to try, if only without a code
    notes = best.notes + tuple(FitNote(each, "too_long") for each in F if each in content.cut)
    if modules and best.code_place is None:
        notes = (*notes, FitNote(F.QR, "qr_left_out"))
    return replace(best, notes=_once_a_field(notes))


def _merit(label: FittedLabel) -> tuple[int, float]:
    """Rank layouts: what is cut counts first, then the least type, as far as it is small."""
    least_pt = min((block.size_pt for block in label.blocks), default=_COMFORT_PT)
    lost = sum(
        (2 if note.reason == "left_out" else 1) * (10 if note.field in _KEPT_WHOLE else 1)
        for note in label.notes
    )
    return -lost, min(least_pt, _COMFORT_PT)


class Setting:
    """One text, broken into lines at one size. Lengths in hundredths of a mm."""

    def __init__(self, text: str, font: QFont, width_mm: float) -> None:
        self.layout = QTextLayout(text, font)
        option = QTextOption(Qt.AlignmentFlag.AlignLeft)
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        self.layout.setTextOption(option)
        self.starts: list[int] = []
        self.heights: list[float] = []
        self._width = width_mm * UNITS_PER_MM
        height = 0.0
        self.layout.beginLayout()
        while True:
            line = self.layout.createLine()
            if not line.isValid():
                break
            line.setLineWidth(self._width)
            line.setPosition(QPointF(0, height))
            height += line.height()
            self.starts.append(line.textStart())
            self.heights.append(line.height())
        self.layout.endLayout()

    @property
    def width_mm(self) -> float:
        """How wide it was set."""
        return self._width / UNITS_PER_MM

    @property
    def natural_width_mm(self) -> float:
        """How wide its first line is."""
        return self.layout.lineAt(0).naturalTextWidth() / UNITS_PER_MM

    def height_mm(self, lines: int | None = None) -> float:
        """Height of the first ``lines``, or of all."""
        return sum(self.heights[:lines]) / UNITS_PER_MM

    def cut_to(self, lines: int) -> str:
        """Return the text as far as it fits into ``lines``, with an ellipsis."""
        text = self.layout.text()
        if len(self.starts) <= lines:
            return text
        start = self.starts[lines - 1]
        metrics = QFontMetricsF(self.layout.font())
        # A hair of room, as the last line is broken anew with the ellipsis in it.
        tail = metrics.elidedText(text[start:], Qt.TextElideMode.ElideRight, self._width * 0.97)
        return text[:start] + tail


@dataclass(frozen=True, slots=True)
class _Set:
    """One field where it would stand: its lines as set, and how many of them are wanted."""

    field: LabelField
    setting: Setting
    size_pt: float
    top: float
    lines: int

    @property
    def is_elided(self) -> bool:
        return self.lines < len(self.setting.starts)

    @property
    def height(self) -> float:
        return self.setting.height_mm(self.lines)


class _Fitting:
    """Finds sizes for the lines of one label within one rectangle.

    A code may stand in the upper right corner (``code``): lines beside it are short, lines below
    it are as wide as the label.
    """

    def __init__(
        self, content: LabelContent, room: RectMm, code: RectMm | None, family: str
    ) -> None:
        self._room = room
        self._code = code
        self._family = family
        self._foot_gap_mm = _FOOT_GAP_MM
        self._lines = {line.field: line.text for line in content.lines}
        # A label without ingredients and cautions has its dates at the foot.
        self._foot = _FOOT if _FOOT & self._lines.keys() else _DATES
        self._settings: dict[tuple[LabelField, float, float], Setting] = {}

    def result(self) -> _Fitted:
        """Return the blocks in their places, and what was cut."""
        if not self._lines:
            return _Fitted((), None, ())
        low = LEAST_PT / max(_SIZES_PT.values())
        if self._is_too_high(low, self._lines):
            return self._squeezed(low)
        high = _LARGEST_SCALE
        if not self._is_too_high(high, self._lines):
            low = high
        for _ in range(_HALVINGS):
            middle = (low + high) / 2
            if self._is_too_high(middle, self._lines):
                high = middle
            else:
                low = middle
        return self._placed(low, self._flow(low, self._lines))

    def _squeezed(self, scale: float) -> _Fitted:
        """Cut and leave out at the least size: plain facts first, cautions and allergens last."""
        self._foot_gap_mm = _GAP_MM  # room for a line of words comes before air
        kept = list(self._lines)
        # Beside the code they need the most lines; what goes above may lift them there.
        narrow = self._width_at(self._room.y)
        most = {
            each: len(self._set(each, self._size_pt(each, scale, narrow), narrow).starts)
            for each in kept
        }

        def too_high() -> bool:
            return self._is_too_high(scale, kept, most)

        for is_last_resort in (False, True):
            mine = [each for each in kept if (each in _KEPT_WHOLE) is is_last_resort]
            while too_high() and any(most[each] > 1 for each in mine):
                most[max(mine, key=lambda each: most[each])] -= 1
            for each in _DROPPED_FIRST:
                if too_high() and each in mine:
                    kept.remove(each)
        kept = self._take_back(scale, kept, most)
        flow = self._flow(scale, kept, most)
        left_out = [FitNote(each, "left_out") for each in self._lines if each not in kept]
        elided = [FitNote(one.field, "elided") for one in flow if one.is_elided]
        return self._placed(scale, flow, (*left_out, *elided))

    def _take_back(
        self, scale: float, kept: list[LabelField], most: dict[LabelField, int]
    ) -> list[LabelField]:
        """Give room that is left over to what was cut or left out, the most telling first."""
        for each in (F.NAME, *reversed(_DROPPED_FIRST)):
            if each not in self._lines:
                continue
            if each not in kept:
                more = [one for one in self._lines if one in kept or one is each]
                if self._is_too_high(scale, more, most | {each: 1}):
                    continue
                kept, most[each] = more, 1
            while self._is_cut(scale, kept, most, each):
                most[each] += 1
                if self._is_too_high(scale, kept, most):
                    most[each] -= 1
                    break
        return kept

    def _is_cut(
        self, scale: float, kept: list[LabelField], most: dict[LabelField, int], each: LabelField
    ) -> bool:
        return any(one.is_elided for one in self._flow(scale, kept, most) if one.field is each)

    def _is_too_high(
        self,
        scale: float,
        fields: Iterable[LabelField],
        most: Mapping[LabelField, int] | None = None,
    ) -> bool:
        last = self._flow(scale, fields, most)[-1]
        return last.top + last.height > self._room.bottom

    def _flow(
        self,
        scale: float,
        fields: Iterable[LabelField],
        most: Mapping[LabelField, int] | None = None,
    ) -> list[_Set]:
        """Put fields one below the other; the foot below the code, where it is wide, if it fits."""
        fields, most = tuple(fields), most or {}
        if self._code is not None:
            flow = self._column(scale, fields, most, self._code.bottom)
            if flow[-1].top + flow[-1].height <= self._room.bottom:
                return flow
        return self._column(scale, fields, most, self._room.y)

    def _column(
        self,
        scale: float,
        fields: Iterable[LabelField],
        most: Mapping[LabelField, int],
        foot_top: float,
    ) -> list[_Set]:
        """Put fields one below the other, each as wide as its place allows."""
        flow: list[_Set] = []
        top = self._room.y
        for each in fields:
            if flow:
                starts_foot = each in self._foot and flow[-1].field not in self._foot
                top += (self._foot_gap_mm if starts_foot else _GAP_MM) * scale
                top = max(top, foot_top) if starts_foot else top
            size_pt = self._size_pt(each, scale, self._width_at(top))
            if flow and flow[0].field is F.NAME:  # which stands out, however small it had to be
                size_pt = max(LEAST_PT, min(size_pt, _UNDER_NAME * flow[0].size_pt))
            setting = self._set(each, size_pt, self._width_at(top))
            lines = min(len(setting.starts), most.get(each, len(setting.starts)))
            flow.append(_Set(each, setting, size_pt, top, lines))
            top += flow[-1].height
        return flow

    def _width_at(self, top: float) -> float:
        if self._code is None or top >= self._code.bottom:
            return self._room.width
        return self._code.x - self._room.x  # its own quiet zone lies between

    def _size_pt(self, each: LabelField, scale: float, width: float) -> float:
        """Return a field's size; a name that nearly fits on one line is set to fit on it."""
        size_pt = max(LEAST_PT, _SIZES_PT[each] * scale)
        if each is not F.NAME:
            return size_pt
        setting = self._set(each, size_pt, width)
        if len(setting.starts) == 1:
            return size_pt
        share = width / self._set(each, size_pt, _ENDLESS_MM).natural_width_mm
        return max(LEAST_PT, size_pt * share * 0.99) if share >= _ONE_LINE_SHARE else size_pt

    def _set(self, each: LabelField, size_pt: float, width: float) -> Setting:
        key = (each, size_pt, width)
        if key not in self._settings:
            font = block_font(size_pt, self._family, is_bold=each in _BOLD)
            self._settings[key] = Setting(self._lines[each], font, width)
        return self._settings[key]

    def _placed(self, scale: float, flow: list[_Set], notes: tuple[FitNote, ...] = ()) -> _Fitted:
        """Make blocks; what belongs at the foot goes there, a line above it."""
        spare = max(0.0, self._room.bottom - flow[-1].top - flow[-1].height)
        has_head = flow[0].field not in self._foot
        blocks, rule = [], None
        for one in flow:
            is_foot = one.field in self._foot
            top = one.top + (spare if is_foot and has_head else 0.0)
            if is_foot and has_head and rule is None:
                at = top - 0.45 * self._foot_gap_mm * scale
                rule = RectMm(self._room.x, at, self._width_at(at), 0.0)
            blocks.append(
                FittedBlock(
                    field=one.field,
                    text=one.setting.cut_to(one.lines),
                    size_pt=one.size_pt,
                    is_bold=one.field in _BOLD,
                    place=RectMm(self._room.x, top, one.setting.width_mm, one.height),
                )
            )
        return _Fitted(tuple(blocks), rule, notes)


@dataclass(frozen=True, slots=True)
class _Fitted:
    """Blocks in their places, the line above the foot, and what was cut."""

    blocks: tuple[FittedBlock, ...]
    rule: RectMm | None
    notes: tuple[FitNote, ...]


def block_font(size_pt: float, family: str, *, is_bold: bool) -> QFont:
    """Return the type of a block, counted in hundredths of a millimetre."""
    font = QFont(family)
    # Rounded up: a hundredth of a mm more than the least size, never less.
    font.setPixelSize(int(-(-size_pt * _MM_PER_PT * UNITS_PER_MM // 1)))
    font.setWeight(QFont.Weight.DemiBold if is_bold else QFont.Weight.Normal)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    # As on the run sheet: local letter forms cannot be searched or read aloud in a PDF.
    font.setFeature(QFont.Tag("locl"), 0)
    return font


def _once_a_field(notes: tuple[FitNote, ...]) -> tuple[FitNote, ...]:
    found: dict[LabelField, FitNote] = {}
    for note in notes:
        found.setdefault(note.field, note)
    return tuple(found.values())
