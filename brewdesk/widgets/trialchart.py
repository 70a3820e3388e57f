"""The curves of a trial with their legend, and the same in words for those who do not see it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, Qt
from PySide6.QtGui import QFontMetrics, QShowEvent
from PySide6.QtWidgets import QApplication, QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from brewdesk.services.trialcurves import TrialCurves, curves_of
from brewdesk.services.trialview import TrialView
from brewdesk.widgets.armlook import ArmLegend
from brewdesk.widgets.fields import card, plain_label
from brewdesk.widgets.plotspec import PlotLine, PlotPoint, PlotSpec
from brewdesk.widgets.theme import SPACE, theme, tokens

if TYPE_CHECKING:
    from brewdesk.widgets.trialplot import TrialPlot

_LINES = 15
_ROOM_FOR_CODES = 0.09


class TrialChart(QWidget):
    """All jars of a trial on one plot."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: TrialView | None = None
        self._curves: TrialCurves | None = None
        self._plot: TrialPlot | None = None
        self._is_stale = False
        self.readout = plain_label("", "muted")
        self.readout.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.empty = plain_label(
            self.tr(
                "No pH was read yet. Once readings of the jars are entered on the shelf, their "
                "curves lie here over each other."
            ),
            "muted",
            wraps=True,
        )
        self.empty.setObjectName("trial_chart_empty")
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.empty.setMargin(4 * SPACE)
        self._stack = QStackedWidget()
        self._stack.addWidget(self.empty)
        frame, inside = card()
        inside.setContentsMargins(SPACE // 2, SPACE, SPACE, SPACE // 2)
        inside.addWidget(self._stack)
        self.legend = ArmLegend()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addWidget(self.legend)
        column.addWidget(self.readout)
        column.addWidget(frame, 1)
        self._size()
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._on_theme)

    def set_view(self, view: TrialView) -> None:
        """Show a trial."""
        is_other = self._view is None or self._view.trial.id != view.trial.id
        self._view, self._curves = view, curves_of(view)
        self.legend.set_names(tuple(arm.name for arm in view.arms) if self._curves else ())
        if is_other and self._plot is not None:
            self._plot.forget_view()
        self._refresh()

    def spec(self) -> PlotSpec | None:
        """Return ranges, threshold and points; None while there is nothing to draw."""
        view, curves = self._view, self._curves
        if view is None or curves is None:
            return None
        wide = curves.last_day * (1.0 + _ROOM_FOR_CODES) if view.is_hidden else curves.last_day
        arms = {jar.jar.code: jar.arm.name for jar in view.jars if jar.arm is not None}
        return PlotSpec(
            day_range=(-0.3, wide),
            value_range=curves.ph_range,
            value_digits=2,
            tick_digits=1,
            unit_text=self.tr("pH by day since each jar began"),
            points=tuple(
                PlotPoint(
                    day=point.day,
                    value=point.value,
                    sd=point.sd,
                    text=self._point_text(jar.code, arms.get(jar.code), point.day, point.value),
                )
                for jar in curves.jars
                for point in jar.points
            ),
            lines=(
                PlotLine(
                    value=view.threshold_ph,
                    label=self.tr("pH {ph}").format(ph=_number(view.threshold_ph, 1)),
                ),
            ),
        )

    def showEvent(self, event: QShowEvent) -> None:
        """Draw what came while the chart was hidden."""
        super().showEvent(event)
        if self._is_stale:
            self._refresh()

    def _point_text(self, code: str, arm: str | None, day: float, ph: float) -> str:
        words = self.tr("{code} · day {day} · pH {ph}").format(
            code=code, day=_number(day, 1), ph=_number(ph, 2)
        )
        return words if arm is None else f"{arm} · {words}"

    def _refresh(self) -> None:
        spec = self.spec()
        self.readout.setText(spec.unit_text if spec is not None else "")
        self.readout.setVisible(spec is not None)
        self._is_stale = not self.isVisible()
        if spec is None or self._curves is None:
            self._stack.setCurrentWidget(self.empty)
        elif not self._is_stale:
            plot = self._plot if self._plot is not None else self._make_plot()
            plot.draw_curves(self._curves, spec, tokens())
            self._stack.setCurrentWidget(plot)

    def _make_plot(self) -> TrialPlot:
        from brewdesk.widgets.trialplot import TrialPlot

        self._plot = TrialPlot(self)
        self._plot.setObjectName("trial_plot")
        self._plot.setAccessibleName(self.tr("pH of the jars over time"))
        self._plot.setAccessibleDescription(self.tr("The table below has the same in figures."))
        self._plot.hovered.connect(self._on_hovered)
        self._stack.addWidget(self._plot)
        return self._plot

    def _on_hovered(self, found: object) -> None:
        spec = self.spec()
        if isinstance(found, PlotPoint):
            self.readout.setText(found.text)
        else:
            self.readout.setText(spec.unit_text if spec is not None else "")

    def _on_theme(self) -> None:
        self._size()
        self._refresh()

    def _size(self) -> None:
        line_px = QFontMetrics(QApplication.font()).lineSpacing()
        self._stack.setFixedHeight(_LINES * line_px)


def _number(value: float, digits: int) -> str:
    return QLocale().toString(value, "f", digits)
