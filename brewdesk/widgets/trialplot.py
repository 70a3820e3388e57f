"""Draw the curves of a trial over each other. Imports pyqtgraph, so import it late."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPen
from PySide6.QtWidgets import QApplication, QWidget

from brewdesk.services.trialcurves import JarCurve, TrialCurves
from brewdesk.widgets.acidplot import CurvePlot, DayAxis
from brewdesk.widgets.armlook import ArmLook, look_of
from brewdesk.widgets.plotspec import PlotSpec
from brewdesk.widgets.theme import Tokens

_LEFT_OUT_ALPHA = 90
_JAR_ALPHA = 170
_AXIS_LINES = 3  # below the plot


class TrialDayAxis(DayAxis):
    """Days of the jars without dates, which differ where jars begin on different days."""

    def __init__(self) -> None:
        super().__init__(lambda _day: "")

    def tickStrings(  # noqa: D102  # pyqtgraph's
        self, values: Sequence[float], scale: float, spacing: float
    ) -> list[str]:
        return [text.strip() for text in super().tickStrings(values, scale, spacing)]


class TrialPlot(CurvePlot):
    """One thin line a jar, one thick line the mean of a level, dashed where pH 3.2 lies."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(lambda _day: "", parent, axis=TrialDayAxis())

    def draw_curves(self, curves: TrialCurves, spec: PlotSpec, colours: Tokens) -> None:
        """Show the curves; ``spec`` has the ranges and the points that answer the pointer."""
        self.draw(spec, colours)
        for line in spec.lines:
            self._add(
                pg.InfiniteLine(line.value, angle=0, pen=self._dashes(colours.ink, 1.2, 5, 4)), -8
            )
        for jar in curves.jars:
            self._draw_jar(jar, colours)
        if all(jar.arm is None for jar in curves.jars):
            self._draw_codes(curves.jars, spec, colours)
        for arm, mean in curves.means:
            self._draw_mean(look_of(arm), mean, colours)

    def _dress(self, spec: PlotSpec, colours: Tokens) -> None:
        """Give the days one line: jars that begin on different days share no dates."""
        super()._dress(spec, colours)
        font = QApplication.font()
        font.setPointSizeF(font.pointSizeF() * 0.86)
        self._axis.setHeight(pg.QtGui.QFontMetrics(font).height() + 14)

    def _draw_lines(self, spec: PlotSpec, colours: Tokens) -> None:
        """Leave the limit's red alone: the threshold of a trial is no danger."""
        for line in spec.lines:
            self._add_text(
                line.label, 1.0, line.value, colours.muted, colours.surface, anchor=(1.0, 1.0)
            )

    def _draw_points(self, spec: PlotSpec, colours: Tokens) -> None:
        """Draw none: each jar draws its own, in its level's shape."""

    def _draw_jar(self, jar: JarCurve, colours: Tokens) -> None:
        look = look_of(jar.arm)
        colour = QColor(look.colour(colours))
        colour.setAlpha(_JAR_ALPHA if jar.is_counted else _LEFT_OUT_ALPHA)
        days = _array([point.day for point in jar.points])
        values = _array([point.value for point in jar.points])
        pen = self._styled(colour, 1.2, look)
        if not jar.is_counted:
            pen.setStyle(Qt.PenStyle.DotLine)
        self._add(pg.PlotCurveItem(days, values, pen=pen, antialias=True), -2)
        dots = pg.ScatterPlotItem(
            days,
            values,
            symbol=look.symbol,
            size=8,
            pen=self._pen(look.colour(colours), 1.0),
            brush=QColor(colours.surface) if not jar.is_counted else colour,
            antialias=True,
        )
        self._add(dots, 2)

    def _draw_codes(self, jars: Sequence[JarCurve], spec: PlotSpec, colours: Tokens) -> None:
        """Write each code at the end of its jar, moved apart where several end together."""
        font = QApplication.font()
        font.setPointSizeF(font.pointSizeF() * 0.82)
        low, high = spec.value_range
        room_px = max(1.0, self.height() - _AXIS_LINES * pg.QtGui.QFontMetrics(font).height())
        line = pg.QtGui.QFontMetrics(font).height() / room_px * (high - low)
        last = low - line
        for jar in sorted(jars, key=lambda one: one.points[-1].value):
            last = max(jar.points[-1].value, last + line)
            text = pg.TextItem(jar.code, color=QColor(colours.ink), anchor=(0.0, 0.5))
            text.setFont(font)
            text.setPos(jar.points[-1].day + 0.12, last)
            self._add(text, 8)

    def _draw_mean(
        self, look: ArmLook, line: Sequence[tuple[float, float]], colours: Tokens
    ) -> None:
        pen = self._styled(QColor(look.colour(colours)), 3.6, look)
        days, values = _array([day for day, _ in line]), _array([value for _, value in line])
        self._add(pg.PlotCurveItem(days, values, pen=pen, antialias=True), 5)

    def _styled(self, colour: QColor, width: float, look: ArmLook) -> QPen:
        pen = self._pen(colour.name(), width)
        pen.setColor(colour)
        if look.dashes:
            pen.setDashPattern([part * 1.4 / max(width, 1.0) for part in look.dashes])
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        return pen


def _array(values: Sequence[float]) -> Any:  # noqa: ANN401  # numpy comes with pyqtgraph, late
    from numpy import asarray

    return asarray(values, dtype=float)
