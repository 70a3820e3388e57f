"""Fits a label's words into its rectangle and paints them: always dark on light paper.

Lengths are millimetres. Type is set in hundredths of a millimetre and scaled by the painter,
so that lines break in the same places on paper, in a PDF file and in the preview.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QPainter,
    QPen,
    QTextLayout,
    QTextOption,
)

from brewdesk.printing.qrpainter import QUIET_MODULES, modules_of, paint_modules
from brewdesk.services.labelgeometry import RectMm
from brewdesk.services.labels import CAUTIONS, LabelContent, LabelField

UNITS_PER_MM = 100.0
LEAST_PT = 5.0
FRAME_MM = 0.2
INK = QColor("#1c1a17")
FRAME_INK = QColor("#5b544a")
LEAST_MODULE_MM = 0.4  # ten dots at 600 dpi, over two at 150: what a telephone still reads
_MODULES_MM = (0.8, 0.6, 0.5, LEAST_MODULE_MM)
_MM_PER_PT = 25.4 / 72.0
_LARGEST_SCALE = 2.2
_HALVINGS = 9  # the scale is found to within half a hundredth
_GAP_MM = 0.5
_BESIDE_MM = 0.8  # the code's own quiet zone lies between, too
_LEAST_WORDS_MM = 8.0  # what a code must leave for the words
_CODE_SHARE = 0.36  # of a label's width
_UPRIGHT = 1.15  # height over width from which the code goes below the words

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
    modules = modules_of(content.code) if content.code else ()
    best: FittedLabel | None = None
    for code in _code_places(inner, modules):
        words = inner if code is None else _beside(inner, code)
        blocks, notes = _Fitting(content, words, family).result()
        made = FittedLabel(
            width_mm=width_mm,
            height_mm=height_mm,
            corner_mm=corner_mm,
            family=family,
            blocks=blocks,
            modules=modules if code is not None else (),
            code_place=code,
            notes=notes,
        )
        if best is None or len(made.notes) < len(best.notes):
            best = made
        if not made.notes:
            break
    assert best is not None  # there is always one place to try, if only without a code
    notes = best.notes + tuple(FitNote(each, "too_long") for each in F if each in content.cut)
    if modules and best.code_place is None:
        notes = (*notes, FitNote(F.QR, "qr_left_out"))
    return replace(best, notes=_once_a_field(notes))


def paint_label(painter: QPainter, label: FittedLabel, *, has_frame: bool) -> None:
    """Paint a label with its upper left corner at the origin; the painter counts in mm."""
    painter.save()
    if has_frame:
        paint_frame(painter, RectMm(0, 0, label.width_mm, label.height_mm), label.corner_mm)
    if label.code_place is not None:
        paint_modules(painter, label.modules, label.code_place, INK)
    painter.scale(1 / UNITS_PER_MM, 1 / UNITS_PER_MM)
    painter.setPen(INK)
    for block in label.blocks:
        setting = _Setting(block.text, _font(block, label.family), block.place.width)
        at = QPointF(block.place.x, block.place.y) * UNITS_PER_MM
        setting.layout.draw(painter, at)
    painter.restore()


def paint_frame(painter: QPainter, frame: RectMm, corner_mm: float) -> None:
    """Draw a label's outline, the middle of the stroke on its edge."""
    pen = QPen(FRAME_INK, FRAME_MM)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    rect = QRectF(frame.x, frame.y, frame.width, frame.height)
    if corner_mm > 0:
        painter.drawRoundedRect(rect, corner_mm, corner_mm)
    else:
        painter.drawRect(rect)


class _Setting:
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


class _Fitting:
    """Finds sizes for the lines of one label within one rectangle."""

    def __init__(self, content: LabelContent, room: RectMm, family: str) -> None:
        self._room = room
        self._family = family
        self._lines = {line.field: line.text for line in content.lines}

    def result(self) -> tuple[tuple[FittedBlock, ...], tuple[FitNote, ...]]:
        """Return the blocks in their places, and what was cut."""
        if not self._lines:
            return (), ()
        low = LEAST_PT / max(_SIZES_PT.values())
        if self._height(low) > self._room.height:
            return self._squeezed(low)
        high = _LARGEST_SCALE
        if self._height(high) <= self._room.height:
            low = high
        for _ in range(_HALVINGS):
            middle = (low + high) / 2
            if self._height(middle) <= self._room.height:
                low = middle
            else:
                high = middle
        return self._placed(low, self._lines, {}), ()

    def _squeezed(self, scale: float) -> tuple[tuple[FittedBlock, ...], tuple[FitNote, ...]]:
        """Cut and leave out at the least size: plain facts first, cautions and allergens last."""
        lines = dict(self._lines)
        settings = {each: self._set(each, scale) for each in lines}
        most = {each: len(setting.starts) for each, setting in settings.items()}

        def too_high() -> bool:
            heights = [settings[each].height_mm(most[each]) for each in lines]
            return sum(heights) + _GAP_MM * scale * (len(heights) - 1) > self._room.height

        for is_last_resort in (False, True):
            mine = [each for each in lines if (each in _KEPT_WHOLE) is is_last_resort]
            while too_high() and any(most[each] > 1 for each in mine):
                most[max(mine, key=lambda each: most[each])] -= 1
            for each in _DROPPED_FIRST:
                if too_high() and each in mine:
                    del lines[each]
        self._take_back(lines, most, settings, too_high)
        left_out = [FitNote(each, "left_out") for each in self._lines if each not in lines]
        elided = [
            FitNote(each, "elided") for each in lines if most[each] < len(settings[each].starts)
        ]
        ordered = [each for each in self._lines if each in lines]
        return self._placed(scale, ordered, most), (*left_out, *elided)

    def _take_back(
        self,
        lines: dict[LabelField, str],
        most: dict[LabelField, int],
        settings: dict[LabelField, _Setting],
        too_high: Callable[[], bool],
    ) -> None:
        """Give room that is left over to what was cut or left out, the most telling first."""
        for each in (F.NAME, *reversed(_DROPPED_FIRST)):
            if each not in self._lines:
                continue
            if each not in lines:
                lines[each], most[each] = self._lines[each], 1
                if too_high():
                    del lines[each]
                    continue
            while most[each] < len(settings[each].starts):
                most[each] += 1
                if too_high():
                    most[each] -= 1
                    break

    def _height(self, scale: float) -> float:
        heights = [self._set(each, scale).height_mm() for each in self._lines]
        return sum(heights) + _GAP_MM * scale * (len(heights) - 1)

    def _set(self, each: LabelField, scale: float) -> _Setting:
        block = FittedBlock(
            field=each,
            text=self._lines[each],
            size_pt=_size_pt(each, scale),
            is_bold=each in _BOLD,
            place=self._room,
        )
        return _Setting(block.text, _font(block, self._family), self._room.width)

    def _placed(
        self, scale: float, lines: Iterable[LabelField], most: dict[LabelField, int]
    ) -> tuple[FittedBlock, ...]:
        placed, top = [], self._room.y
        for each in lines:
            setting = self._set(each, scale)
            count = most.get(each, len(setting.starts))
            height = setting.height_mm(count)
            placed.append(
                FittedBlock(
                    field=each,
                    text=setting.cut_to(count),
                    size_pt=_size_pt(each, scale),
                    is_bold=each in _BOLD,
                    place=RectMm(self._room.x, top, self._room.width, height),
                )
            )
            top += height + _GAP_MM * scale
        return tuple(placed)


def _size_pt(each: LabelField, scale: float) -> float:
    return max(LEAST_PT, _SIZES_PT[each] * scale)


def _font(block: FittedBlock, family: str) -> QFont:
    font = QFont(family)
    # Rounded up: a hundredth of a mm more than the least size, never less.
    font.setPixelSize(int(-(-block.size_pt * _MM_PER_PT * UNITS_PER_MM // 1)))
    font.setWeight(QFont.Weight.DemiBold if block.is_bold else QFont.Weight.Normal)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    # As on the run sheet: local letter forms cannot be searched or read aloud in a PDF.
    font.setFeature(QFont.Tag("locl"), 0)
    return font


def _code_places(inner: RectMm, modules: tuple[tuple[bool, ...], ...]) -> tuple[RectMm | None, ...]:
    """Return where the code may stand, the easiest to read first; only None if nowhere."""
    if not modules:
        return (None,)
    count = len(modules) + 2 * QUIET_MODULES
    is_upright = inner.height > _UPRIGHT * inner.width
    room = inner.width if is_upright else inner.height
    share = inner.height * 0.5 if is_upright else inner.width * _CODE_SHARE
    places = []
    for module_mm in _MODULES_MM:
        side = module_mm * count
        if side <= min(room, inner.width, max(share, LEAST_MODULE_MM * count)):
            top = inner.bottom - side if is_upright else inner.y
            places.append(RectMm(inner.right - side, top, side, side))
    if not places:
        return (None,)
    left_mm = inner.height - places[-1].height if is_upright else inner.width - places[-1].width
    return tuple(places) if left_mm >= _LEAST_WORDS_MM else (None,)


def _beside(inner: RectMm, code: RectMm) -> RectMm:
    """Return what the code leaves for the words: left of it, or above."""
    if code.y > inner.y:
        return RectMm(inner.x, inner.y, inner.width, code.y - inner.y)
    return RectMm(inner.x, inner.y, code.x - inner.x - _BESIDE_MM, inner.height)


def _once_a_field(notes: tuple[FitNote, ...]) -> tuple[FitNote, ...]:
    found: dict[LabelField, FitNote] = {}
    for note in notes:
        found.setdefault(note.field, note)
    return tuple(found.values())
