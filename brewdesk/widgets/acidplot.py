"""Draw one curve with its bands, readings and marks. Imports pyqtgraph, so import it late.

Knows no chemistry: everything to draw comes in a `PlotSpec`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from typing import Any

import pyqtgraph as pg
from PySide6.QtCore import QCoreApplication, QLocale, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFocusEvent, QFont, QKeyEvent, QMouseEvent, QPen, QWheelEvent
from PySide6.QtWidgets import QApplication, QWidget

from brewdesk.widgets.plotspec import PlotPoint, PlotSpec
from brewdesk.widgets.theme import Tokens, tokens

_PX_PER_TICK = 84.0  # room for a date of two lines
_SNAP_PX = 28.0  # how near the pointer has to be for a reading to answer
_LEAST_DAYS = 2.0
_PAN_SHARE = 0.1
_ZOOM = 0.8
_ABOVE_WORDS = 24  # no label may hide a reading
_NOW_DIGITS = 2  # a quarter of an hour: far less than a pixel
_EDGE_SHARE = 0.06  # so near an edge a label centred on its line would be cut off


_Part = tuple[str, object, Callable[[PlotSpec, Tokens], None]]


class DayAxis(pg.AxisItem):  # type: ignore[misc]  # pyqtgraph has no types
    """A bottom axis in days of the batch, with the date under each day."""

    def __init__(self, date_text: Callable[[float], str]) -> None:
        super().__init__("bottom")
        self._date_text = date_text

    def tickSpacing(  # noqa: N802  # pyqtgraph's name
        self, low: float, high: float, size: float
    ) -> list[tuple[float, float]]:
        """Return whole days, so far apart that the dates do not touch."""
        room = max(1.0, size / _PX_PER_TICK)
        for step in (1.0, 2.0, 3.0, 7.0, 14.0, 28.0):
            if (high - low) / step <= room:
                return [(step, 0.0)]
        return [(56.0, 0.0)]

    def tickStrings(  # noqa: D102  # pyqtgraph's
        self, values: Sequence[float], scale: float, spacing: float
    ) -> list[str]:
        del scale, spacing
        return [self._day_text(value) if value >= 0 else "" for value in values]

    def _day_text(self, value: float) -> str:
        words = QCoreApplication.translate("DayAxis", "day {day}").format(day=f"{value:.0f}")
        return f"{words}\n{self._date_text(value)}"


class ValueAxis(pg.AxisItem):  # type: ignore[misc]  # pyqtgraph has no types
    """A left axis whose numbers all have the same decimals, written as the locale does."""

    def __init__(self) -> None:
        super().__init__("left")
        self.digits = 1

    def tickStrings(  # noqa: D102  # pyqtgraph's
        self, values: Sequence[float], scale: float, spacing: float
    ) -> list[str]:
        del scale, spacing
        return [QLocale().toString(float(value), "f", self.digits) for value in values]


class CurvePlot(pg.PlotWidget):  # type: ignore[misc]  # pyqtgraph has no types
    """The plot itself: pans and zooms in days only, within what there is to see.

    ``hovered`` carries the `PlotPoint` or the day under the pointer, or None when it
    has left. The wheel zooms only while the plot has the focus, and otherwise
    scrolls the page.
    """

    hovered = Signal(object)
    moved = Signal(bool)  # whether less than the whole curve is in view

    def __init__(
        self,
        date_text: Callable[[float], str],
        parent: QWidget | None = None,
        *,
        axis: pg.AxisItem | None = None,
    ) -> None:
        self._axis = DayAxis(date_text) if axis is None else axis
        super().__init__(parent, axisItems={"bottom": self._axis, "left": ValueAxis()})
        self._spec: PlotSpec | None = None
        self._parts: dict[str, list[Any]] = {}  # the items of each part of the picture
        self._looks: dict[str, object] = {}  # what makes each part look as it does
        self._part = ""  # to which what is added belongs
        self._drawing = 0
        self._at_home = True
        item = self.getPlotItem()
        item.hideButtons()
        item.setMenuEnabled(False)
        item.setMouseEnabled(x=True, y=False)
        item.getViewBox().setDefaultPadding(0.0)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().setAccessibleName(
            self.tr("Picture of the course")
        )  # it can be met by itself
        self._cross = pg.InfiniteLine(angle=90, movable=False)
        self._cross.setZValue(40)
        self._cross.hide()
        item.addItem(self._cross, ignoreBounds=True)

    def keep_up(self, spec: PlotSpec, colours: Tokens) -> bool:
        """Show ``spec`` in ``colours``; whether anything of it had to be drawn anew."""
        is_drawn = False
        for _ in self.keep_up_in_turns(spec, colours):
            is_drawn = True
        return is_drawn

    def keep_up_in_turns(self, spec: PlotSpec, colours: Tokens) -> Iterator[None]:
        """Do as `keep_up` part by part; nothing is painted before the last is done.

        Something else that is shown meanwhile makes the rest of it void.
        """
        self._drawing += 1
        mine = self._drawing
        self._spec = spec
        common = self._common_look(spec, colours)
        try:
            for part, look, draw in self._looks_of(spec):
                if self._looks.get(part) == (look, common):
                    continue
                self.setUpdatesEnabled(False)
                self._take_away(part)
                self._part = part
                draw(spec, colours)
                self._looks[part] = (look, common)
                yield
                if mine != self._drawing:
                    return
            if self._at_home:
                self.reset_view()
        finally:
            if mine == self._drawing:
                with suppress(RuntimeError):  # given up because the window is gone
                    self.setUpdatesEnabled(True)

    def draw(self, spec: PlotSpec, colours: Tokens) -> None:
        """Show ``spec`` in ``colours``, replacing what was there."""
        for part in tuple(self._parts):
            self._take_away(part)
        self._looks.clear()
        self.keep_up(spec, colours)
        self._part = ""

    def _take_away(self, part: str) -> None:
        self._looks.pop(part, None)
        for made in self._parts.pop(part, ()):
            self.getPlotItem().removeItem(made)

    def _looks_of(self, spec: PlotSpec) -> tuple[_Part, ...]:
        """Return the parts of a picture: what each looks like, and how it is drawn."""
        now_day = None if spec.now_day is None else round(spec.now_day, _NOW_DIGITS)
        now = (now_day, spec.now_label, spec.day_range, spec.value_range)
        return (
            ("dress", spec.tick_digits, self._dress),
            ("window", (spec.window, spec.window_bounds), self._draw_window),
            ("band", (spec.band, spec.band_label), self._draw_band),
            ("forecast", spec.forecast, self._draw_forecast),
            ("imagined", spec.imagined, self._draw_imagined),
            ("lines", (spec.lines, spec.deadline), self._draw_lines),
            ("now", now, self._draw_now),
            ("points", spec.points, self._draw_points),
            ("limits", (spec.day_range, spec.value_range), self._set_limits),
        )

    def _common_look(self, spec: PlotSpec, colours: Tokens) -> tuple[object, ...]:
        """Return what all parts depend on."""
        return (
            colours,
            QApplication.font().key(),
            self.devicePixelRatioF(),
            QLocale().name(),
            # The axis asks for its words while it paints: another zone or language is seen there.
            self._axis.tickStrings([0.0, spec.day_range[1]], 1.0, 1.0),
        )

    def reset_view(self) -> None:
        """Show the whole curve again."""
        if self._spec is None:
            return
        self._at_home = True
        self.moved.emit(False)
        self.getPlotItem().setXRange(*self._spec.day_range, padding=0)
        self.getPlotItem().setYRange(*self._spec.value_range, padding=0)

    def forget_view(self) -> None:
        """Let the next curve be shown whole, wherever this one was panned to."""
        self._at_home = True

    def nearest(self, day: float, value: float) -> PlotPoint | None:
        """Return the reading within reach of a place in the plot, if there is one."""
        if self._spec is None:
            return None
        width, height = self.getPlotItem().getViewBox().viewPixelSize()
        best, best_px = None, _SNAP_PX
        for point in self._spec.points:
            dx, dy = (point.day - day) / width, (point.value - value) / height
            away_px = (dx * dx + dy * dy) ** 0.5
            if away_px <= best_px:
                best, best_px = point, away_px
        return best

    # drawing ---------------------------------------------------------------------------

    def _add(self, made: Any, z: float) -> None:  # noqa: ANN401  # any plot item
        made.setZValue(z)
        self.getPlotItem().addItem(made, ignoreBounds=True)
        self._parts.setdefault(self._part, []).append(made)

    def _dress(self, spec: PlotSpec, colours: Tokens) -> None:
        self.setBackground(QColor(colours.surface))
        small = _font(0.86)
        for side in ("left", "bottom"):
            axis = self.getPlotItem().getAxis(side)
            axis.setPen(self._pen(colours.line, 1))
            axis.setTextPen(QColor(colours.muted))
            axis.setTickFont(small)
            axis.setStyle(tickLength=0, tickTextOffset=8, hideOverlappingLabels=False)
        line_px = pg.QtGui.QFontMetrics(small).height()
        self._axis.setHeight(2 * line_px + 14)
        left = self.getPlotItem().getAxis("left")
        left.digits = spec.tick_digits
        left.setWidth(pg.QtGui.QFontMetrics(small).horizontalAdvance("00.0") + 16)
        self.getPlotItem().showGrid(x=False, y=True, alpha=0.10)
        left.setGrid(38)
        self._cross.setPen(self._pen(colours.muted, 1, Qt.PenStyle.DotLine))

    def _draw_window(self, spec: PlotSpec, colours: Tokens) -> None:
        if spec.window is not None:
            span = pg.LinearRegionItem(
                spec.window,
                orientation="vertical",
                movable=False,
                pen=self._pen(colours.warn, 1),
                brush=_tint(colours.window, 150 if colours.name == "light" else 170),
            )
            self._add(span, -30)
        for day in spec.window_bounds:
            self._add(pg.InfiniteLine(day, angle=90, pen=self._dashes(colours.warn, 1, 5, 4)), -29)

    def _draw_band(self, spec: PlotSpec, colours: Tokens) -> None:
        if spec.band is None:
            return
        stripe = pg.LinearRegionItem(
            spec.band,
            orientation="horizontal",
            movable=False,
            pen=self._pen(colours.good, 1, Qt.PenStyle.DotLine),
            brush=_tint(colours.good, 26),
        )
        self._add(stripe, -28)
        self._add_text(
            spec.band_label, 1.0, spec.band[1], colours.good, colours.surface, anchor=(1.0, 1.0)
        )

    def _draw_forecast(self, spec: PlotSpec, colours: Tokens) -> None:
        course = spec.forecast
        if course is None:
            return
        days = _array(course.days)
        for low, high, colour, z in (
            (course.outer_low, course.outer_high, colours.band_outer, -20),
            (course.inner_low, course.inner_high, colours.band_inner, -19),
        ):
            bottom = pg.PlotCurveItem(days, _array(low), pen=None)
            top = pg.PlotCurveItem(days, _array(high), pen=None)
            self._add(pg.FillBetweenItem(bottom, top, brush=_tint(colour, 205)), z)
        rim = self._dashes(colours.accent, 1, 1, 2)
        for edge in (course.outer_low, course.outer_high):
            self._add(pg.PlotCurveItem(days, _array(edge), pen=rim, antialias=True), -18)
        self._add(
            pg.PlotCurveItem(
                days, _array(course.median), pen=self._pen(colours.accent, 2), antialias=True
            ),
            -10,
        )

    def _draw_imagined(self, spec: PlotSpec, colours: Tokens) -> None:
        course = spec.imagined
        if course is not None:
            line = pg.PlotCurveItem(
                _array(course.days),
                _array(course.values),
                pen=self._dashes(colours.ink, 2, 5, 3),
                antialias=True,
            )
            self._add(line, -9)

    def _draw_lines(self, spec: PlotSpec, colours: Tokens) -> None:
        for line in spec.lines:
            self._add(
                pg.InfiniteLine(
                    line.value,
                    angle=0,
                    pen=self._dashes(colours.danger, 2, 4, 3),
                ),
                -5,
            )
            side = 1.0 if line.is_right else 0.0
            self._add_text(
                line.label, side, line.value, colours.danger, colours.surface, anchor=(side, 1.0)
            )
        if spec.deadline is not None:
            day, value = spec.deadline
            flag = pg.ScatterPlotItem(
                [day],
                [value],
                symbol="t",
                size=14,
                pen=self._pen(colours.surface, 1.5),
                brush=QColor(colours.danger),
                antialias=True,
            )
            self._add(flag, 6)

    def _draw_now(self, spec: PlotSpec, colours: Tokens) -> None:
        if spec.now_day is None:
            return
        self._add(pg.InfiniteLine(spec.now_day, angle=90, pen=self._pen(colours.ink, 1.5)), -4)
        text = pg.TextItem(spec.now_label, color=QColor(colours.ink), anchor=(_anchor_x(spec), 0.0))
        text.setFont(_font(0.86, bold=True))
        text.fill = pg.mkBrush(_tint(colours.surface, 225))
        text.setPos(spec.now_day, spec.value_range[1])
        self._add(text, 21)

    def _draw_points(self, spec: PlotSpec, colours: Tokens) -> None:
        if not spec.points:
            return
        for symbol, is_strip in (("o", False), ("d", True)):
            chosen = [point for point in spec.points if point.is_rough == is_strip]
            if not chosen:
                continue
            bars = pg.ErrorBarItem(
                x=_array([point.day for point in chosen]),
                y=_array([point.value for point in chosen]),
                height=_array([2.0 * point.sd for point in chosen]),
                beam=0.0,
                pen=self._pen(colours.ink, 1.5),
            )
            self._add(bars, _ABOVE_WORDS)
            dots = pg.ScatterPlotItem(
                [point.day for point in chosen],
                [point.value for point in chosen],
                symbol=symbol,
                size=11 if symbol == "o" else 18,
                pen=[
                    self._pen(colours.ink if p.is_doubted else colours.surface, 1.5) for p in chosen
                ],
                brush=[QColor(colours.surface if p.is_doubted else colours.ink) for p in chosen],
                antialias=True,
            )
            self._add(dots, _ABOVE_WORDS + 1)

    def _add_text(
        self,
        text: str,
        share_x: float,
        value: float,
        colour: str,
        ground: str,
        *,
        anchor: tuple[float, float],
    ) -> None:
        if not text:  # left out where there is little room
            return
        label = _SideText(text, share_x, value, anchor=anchor)
        label.setFont(_font(0.82))
        label.setColor(QColor(colour))
        label.fill = pg.mkBrush(_tint(ground, 205))
        self._add(label, 20)

    def _set_limits(self, spec: PlotSpec, colours: Tokens) -> None:
        del colours
        first, last = spec.day_range
        low, high = spec.value_range
        self.getPlotItem().getViewBox().setLimits(
            xMin=first,
            xMax=last,
            yMin=low,
            yMax=high,
            minXRange=min(_LEAST_DAYS, last - first),
            maxXRange=last - first,
        )

    def _pen(self, colour: str, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
        # A cosmetic pen counts the screen's own pixels, which are smaller on a dense screen.
        pen = QPen(QColor(colour), width * self.devicePixelRatioF(), style)
        pen.setCosmetic(True)
        return pen

    def _dashes(self, colour: str, width: float, on: float, off: float) -> QPen:
        pen = self._pen(colour, width)
        pen.setDashPattern([on, off])
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        return pen

    # hands -----------------------------------------------------------------------------

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show that the keys pan and zoom here."""
        super().focusInEvent(event)
        self.getPlotItem().getViewBox().setBorder(self._pen(tokens().focus, 2))

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Take the frame away."""
        super().focusOutEvent(event)
        self.getPlotItem().getViewBox().setBorder(None)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom while focused; otherwise let the page scroll."""
        if not self.hasFocus():
            event.ignore()
            return
        super().wheelEvent(event)
        event.accept()
        self._note_move()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Show the whole curve again."""
        super().mouseDoubleClickEvent(event)
        self.reset_view()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Say what lies under the pointer."""
        super().mouseMoveEvent(event)
        if event.buttons():
            self._note_move()
        else:
            self._point_at(event.position())

    def leaveEvent(self, event: Any) -> None:  # noqa: ANN401  # pyqtgraph leaves it untyped
        """Forget the pointer."""
        super().leaveEvent(event)
        self._cross.hide()
        self.hovered.emit(None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Pan with the arrows, zoom with plus and minus, show all with Home."""
        key = event.key()
        box = self.getPlotItem().getViewBox()
        width = box.viewRect().width()
        if key == Qt.Key.Key_Home:
            self.reset_view()
        elif key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            way = 1 if key == Qt.Key.Key_Right else -1
            box.translateBy(x=way * _PAN_SHARE * width)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Minus):
            box.scaleBy(x=_ZOOM if key == Qt.Key.Key_Plus else 1 / _ZOOM)
        else:
            super().keyPressEvent(event)
            return
        event.accept()
        self._note_move()

    def _note_move(self) -> None:
        if self._spec is None:
            return
        first, last = self._spec.day_range
        view = self.getPlotItem().getViewBox().viewRect()
        self._at_home = view.width() >= 0.999 * (last - first)
        self.moved.emit(not self._at_home)

    def _point_at(self, position: QPointF) -> None:
        box = self.getPlotItem().getViewBox()
        scene = self.mapToScene(position.toPoint())
        if self._spec is None or not box.sceneBoundingRect().contains(scene):
            self._cross.hide()
            self.hovered.emit(None)
            return
        place = box.mapSceneToView(scene)
        point = self.nearest(place.x(), place.y())
        day = point.day if point is not None else place.x()
        self._cross.setPos(day)
        self._cross.show()
        self.hovered.emit(point if point is not None else float(day))


class _SideText(pg.TextItem):  # type: ignore[misc]  # pyqtgraph has no types
    """A text that stays at one side of the view however the days are panned."""

    def __init__(
        self, text: str, share_x: float, value: float, *, anchor: tuple[float, float]
    ) -> None:
        super().__init__(text, anchor=anchor)
        self._share_x = share_x
        self._value = value
        self._is_placing = False

    def updateTransform(self, force: bool = False) -> None:  # noqa: N802  # pyqtgraph's name
        """Follow the view."""
        box = self.getViewBox()
        if isinstance(box, pg.ViewBox) and not self._is_placing:
            self._is_placing = True
            view: QRectF = box.viewRect()
            inset = 6 * box.viewPixelSize()[0]
            x = view.left() + self._share_x * view.width() + (0.5 - self._share_x) * 2 * inset
            self.setPos(x, self._value)
            self._is_placing = False
        super().updateTransform(force)


def _anchor_x(spec: PlotSpec) -> float:
    """Return which end of the label stands at the present: at an edge it reaches inwards."""
    first, last = spec.day_range
    share = ((spec.now_day or 0.0) - first) / (last - first)
    if share < _EDGE_SHARE:
        return 0.0
    return 1.0 if share > 1.0 - _EDGE_SHARE else 0.5


def _font(scale: float, *, bold: bool = False) -> QFont:
    font = QFont(QApplication.font())
    font.setPointSizeF(font.pointSizeF() * scale)
    if bold:
        font.setWeight(QFont.Weight.DemiBold)
    return font


def _tint(colour: str, alpha: int) -> QColor:
    tint = QColor(colour)
    tint.setAlpha(alpha)
    return tint


def _array(values: Sequence[float]) -> Any:  # noqa: ANN401  # numpy comes with pyqtgraph, late
    from numpy import asarray

    return asarray(values, dtype=float)
