"""How warm a place was: a day, a week, a month or all of it. Words below carry the same."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, QLocale, Qt, QTime, Signal
from PySide6.QtGui import QFontMetrics, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QPushButton,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.placeview import CurveSample, PlaceCurve, Span
from brewdesk.widgets.chartlegend import ChartLegend, LegendEntry, Look
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import card, plain_label
from brewdesk.widgets.plotspec import PlotPoint, PlotSpec
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, theme, tokens

if TYPE_CHECKING:
    from brewdesk.widgets.placeplot import PlacePlot

_LEAST_PLOT_LINES = 10
_ROOM = 1.0  # degrees above and below what is drawn
_NEAR_STEPS = 0.75  # the pointer may be that many steps away from the one it asks about
_EVERY_DAYS = 28.0  # marks so far apart need their year


class PlaceChart(QWidget):
    """The course of one place. ``span_wanted`` carries the `Span` to show."""

    span_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._curve: PlaceCurve | None = None
        self._plot: PlacePlot | None = None
        self._is_stale = False
        self._build()
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._on_theme)

    def set_curve(self, curve: PlaceCurve, span: Span) -> None:
        """Show a course."""
        self._curve = curve
        self.span_bar.set_value(span)
        if self._plot is not None:
            self._plot.forget_view()
        self._refresh()

    def curve(self) -> PlaceCurve | None:
        """Return what is shown."""
        return self._curve

    def spec(self) -> PlotSpec | None:
        """Return the ranges and marks that the plot draws, or None while there is nothing."""
        curve = self._curve
        if curve is None or not (curve.runs or curve.typed):
            return None
        values = [end for run in curve.runs for each in run for end in (each.low, each.high)]
        values += [each.value for each in curve.typed] + [curve.usual]
        low, high = min(values) - _ROOM, max(values) + _ROOM
        band = max(curve.liked[0], low), min(curve.liked[1], high)
        return PlotSpec(
            day_range=curve.day_range,
            value_range=(low, high),
            value_digits=1,
            tick_digits=0 if high - low > 4 * _ROOM else 1,
            unit_text=self.tr("Temperature in {unit}").format(unit=curve.unit),
            points=tuple(
                PlotPoint(day=each.day, value=each.value, sd=0.0, text=self._typed_text(each))
                for each in curve.typed
            ),
            band=band if band[0] < band[1] else None,
            band_label=self.tr("a souring jar likes {low} to {high} {unit}").format(
                low=_number(curve.liked[0], 0), high=_number(curve.liked[1], 0), unit=curve.unit
            ),
            now_day=curve.now_day if curve.now_day <= curve.day_range[1] + 1e-6 else None,
            now_label=self.tr("now"),
        )

    def _build(self) -> None:
        self.span_bar = ChoiceBar(
            (
                (Span.DAY, self.tr("Day")),
                (Span.WEEK, self.tr("Week")),
                (Span.MONTH, self.tr("Month")),
                (Span.ALL, self.tr("All")),
            ),
            self.tr("Show"),
        )
        self.span_bar.setObjectName("place_span")
        self.span_bar.chosen.connect(self.span_wanted)
        self.readout = plain_label("", "muted", wraps=True)
        self.readout.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.whole_button = QPushButton(self.tr("Show all"))
        self.whole_button.setAutoDefault(False)
        set_role(self.whole_button, "quiet")
        self.whole_button.hide()
        self.whole_button.clicked.connect(self._on_whole)
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(self.span_bar)
        head.addWidget(self.readout, 1)
        head.addWidget(self.whole_button)
        self._stack = QStackedWidget()
        self.empty = plain_label("", "muted", wraps=True)
        self.empty.setObjectName("place_chart_empty")
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.empty.setMargin(4 * SPACE)
        self._stack.addWidget(self.empty)
        frame, inside = card()
        inside.setContentsMargins(SPACE // 2, SPACE, SPACE, SPACE // 2)
        inside.addWidget(self._stack)
        self.legend = ChartLegend()
        self.summary = plain_label("", "", wraps=True)
        self.summary.setObjectName("place_chart_summary")
        self.summary.setAccessibleName(self.tr("The course in words"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addLayout(head)
        column.addWidget(frame, 1)
        column.addWidget(self.legend)
        column.addWidget(self.summary)
        self._size_plot()

    def showEvent(self, event: QShowEvent) -> None:
        """Draw what came while the chart was hidden."""
        super().showEvent(event)
        if self._is_stale:
            self._refresh()

    def _on_theme(self) -> None:
        self._size_plot()
        self._refresh()

    def _size_plot(self) -> None:
        line_px = QFontMetrics(QApplication.font()).lineSpacing()
        self._stack.setMinimumHeight(_LEAST_PLOT_LINES * line_px)

    def _refresh(self) -> None:
        curve, spec = self._curve, self.spec()
        self.summary.setText(curve.summary if curve is not None else "")
        self.summary.setVisible(bool(self.summary.text()))
        self.legend.set_entries(self._legend())
        self.legend.setVisible(spec is not None)
        self.readout.setText(spec.unit_text if spec is not None else "")
        self.empty.setText(
            self.tr(
                "Nothing was read or logged in this time. Enter a temperature below, or read a "
                "logger's file."
            )
        )
        self._is_stale = not self.isVisible()
        if spec is None or curve is None:
            self._stack.setCurrentWidget(self.empty)
        elif not self._is_stale:
            plot = self._plot if self._plot is not None else self._make_plot()
            plot.draw_course(curve, spec, tokens())
            self._stack.setCurrentWidget(plot)

    def _legend(self) -> tuple[LegendEntry, ...]:
        curve, spec = self._curve, self.spec()
        if curve is None:
            return ()
        mean = (
            self.tr("mean of an hour")
            if curve.step_h == 1
            else self.tr("mean of {count} hours").format(count=curve.step_h)
        )
        looks = (
            (Look.MEDIAN, mean, bool(curve.runs)),
            (Look.INNER, self.tr("lowest to highest"), bool(curve.runs)),
            (Look.DOT, self.tr("read by you"), bool(curve.typed)),
            (Look.IMAGINED, self.tr("set as usual"), True),
            (Look.BAND, self.tr("liked by a souring jar"), spec is not None and bool(spec.band)),
        )
        return tuple(LegendEntry(look, text) for look, text, is_shown in looks if is_shown)

    def _make_plot(self) -> PlacePlot:
        from brewdesk.widgets.placeplot import PlacePlot

        self._plot = PlacePlot(self._mark, self)
        self._plot.setObjectName("place_plot")
        self._plot.setAccessibleName(self.tr("Temperature of the place over time"))
        self._plot.setAccessibleDescription(self.tr("The same is said in words below."))
        self._plot.hovered.connect(self._on_hovered)
        self._plot.moved.connect(self.whole_button.setVisible)
        self._stack.addWidget(self._plot)
        QWidget.setTabOrder(self.span_bar.button(Span.ALL), self._plot)
        return self._plot

    def _on_whole(self) -> None:
        if self._plot is not None:
            self._plot.reset_view()

    def _on_hovered(self, found: object) -> None:
        spec = self.spec()
        if isinstance(found, PlotPoint):
            self.readout.setText(found.text)
        elif isinstance(found, float) and (sample := self._sample_at(found)) is not None:
            self.readout.setText(
                self.tr("{when} · {mean} {unit} ({low} to {high})").format(
                    when=sample.text,
                    mean=_number(sample.value, 1),
                    unit=self._curve.unit if self._curve is not None else "",
                    low=_number(sample.low, 1),
                    high=_number(sample.high, 1),
                )
            )
        else:
            self.readout.setText(spec.unit_text if spec is not None else "")

    def _sample_at(self, day: float) -> CurveSample | None:
        if self._curve is None:
            return None
        samples = [sample for run in self._curve.runs for sample in run]
        nearest = min(samples, key=lambda sample: abs(sample.day - day), default=None)
        reach = _NEAR_STEPS * self._curve.step_h / 24.0
        return nearest if nearest is not None and abs(nearest.day - day) <= reach else None

    def _typed_text(self, sample: CurveSample) -> str:
        assert self._curve is not None
        return self.tr("{when} · {value} {unit}, read by you").format(
            when=sample.text, value=_number(sample.value, 1), unit=self._curve.unit
        )

    def _mark(self, day: float, spacing: float) -> str:
        if self._curve is None:
            return ""
        # Rounded to minutes: a mark must not stand at 23:59 of the day before.
        at = self._curve.origin.replace(tzinfo=None) + timedelta(minutes=round(day * 1440))
        date = QDate(at.year, at.month, at.day)
        if spacing < 1.0 and (at.hour or at.minute):
            return QLocale().toString(QTime(at.hour, at.minute), QLocale.FormatType.ShortFormat)
        words = QLocale().toString(date, self.tr("d MMM"))
        below = self.tr("yyyy") if spacing >= _EVERY_DAYS else self.tr("ddd")
        return f"{words}\n{QLocale().toString(date, below)}"


def _number(value: float, digits: int) -> str:
    return QLocale().toString(value, "f", digits)
