"""Draw the temperature course of a place. Imports pyqtgraph, so import it late.

The acidity plot with other time marks: dates and hours instead of days of a batch.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import pyqtgraph as pg
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QWidget

from brewdesk.services.placeview import CurveSample, PlaceCurve
from brewdesk.widgets.acidplot import CurvePlot
from brewdesk.widgets.plotspec import PlotSpec
from brewdesk.widgets.theme import Tokens

_PX_PER_TICK = 84.0
_STEPS_DAYS = (0.125, 0.25, 0.5, 1.0, 2.0, 4.0, 7.0, 14.0, 28.0, 56.0, 112.0, 224.0, 448.0)
_BAND_ALPHA = 190


class MomentAxis(pg.AxisItem):  # type: ignore[misc]  # pyqtgraph has no types
    """A bottom axis of dates, and of hours where there is room for them.

    ``label`` writes the mark at a day; the second argument is how far apart the marks are.
    """

    def __init__(self, label: Callable[[float, float], str]) -> None:
        super().__init__("bottom")
        self._label = label

    def tickSpacing(  # noqa: N802  # pyqtgraph's name
        self, low: float, high: float, size: float
    ) -> list[tuple[float, float]]:
        """Return hours or days so far apart that the words do not touch."""
        room = max(1.0, size / _PX_PER_TICK)
        for step in _STEPS_DAYS:
            if (high - low) / step <= room:
                return [(step, 0.0)]
        return [(896.0, 0.0)]

    def tickStrings(  # noqa: D102  # pyqtgraph's
        self, values: Sequence[float], scale: float, spacing: float
    ) -> list[str]:
        del scale
        return [self._label(value, spacing) for value in values]


class PlacePlot(CurvePlot):
    """The course of a place: means as a line, the ends of each step as a band behind it."""

    def __init__(self, label: Callable[[float, float], str], parent: QWidget | None = None) -> None:
        super().__init__(lambda _day: "", parent, axis=MomentAxis(label))

    def draw_course(self, curve: PlaceCurve, spec: PlotSpec, colours: Tokens) -> None:
        """Show a course; ``spec`` has its ranges, typed temperatures and the liked band."""
        self.draw(spec, colours)
        usual = pg.InfiniteLine(curve.usual, angle=0, pen=self._dashes(colours.ink, 1.5, 5, 3))
        self._add(usual, -12)
        for run in curve.runs:
            self._draw_run(run, colours)

    def _draw_run(self, run: tuple[CurveSample, ...], colours: Tokens) -> None:
        days = [sample.day for sample in run]
        means = [sample.value for sample in run]
        if len(run) == 1:  # a line of one point would not be seen
            dot = pg.ScatterPlotItem(
                days, means, symbol="s", size=6, pen=None, brush=QColor(colours.accent)
            )
            self._add(dot, -10)
            return
        low = pg.PlotCurveItem(days, [sample.low for sample in run], pen=None)
        high = pg.PlotCurveItem(days, [sample.high for sample in run], pen=None)
        tint = QColor(colours.band_inner)
        tint.setAlpha(_BAND_ALPHA)
        self._add(pg.FillBetweenItem(low, high, brush=tint), -20)
        line = pg.PlotCurveItem(days, means, pen=self._pen(colours.accent, 2), antialias=True)
        self._add(line, -10)
