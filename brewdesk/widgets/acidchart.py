"""How sour a batch is and will be: readings, forecast bands, tasting window, limits.

Draws a `CurveView` and knows no chemistry. The plotting library is loaded when the
first curve is shown, not at the program's start. The words under the picture carry
the same facts for those who cannot see it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from enum import Enum, auto
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, QLocale, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.forecasts import CurveView, Imagined
from brewdesk.services.records import Kind
from brewdesk.services.whatif import WhatIf
from brewdesk.widgets.chartlegend import ChartLegend
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.curvespec import acid_spec, legend_of, ph_spec
from brewdesk.widgets.fields import card, plain_label
from brewdesk.widgets.plotspec import PlotPoint, PlotSpec
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, theme, tokens
from brewdesk.widgets.whatifpanel import ShowAmount, WhatIfPanel

if TYPE_CHECKING:
    from brewdesk.widgets.acidplot import CurvePlot

# Heights in lines of text: of the plot, so that its labels have room (less beside the
# sliders), and of the whole from which there is room for the legend beside them.
_LEAST_PLOT_LINES, _LEAST_LINES_BESIDE = 9.5, 6.5
_ROOMY_LINES = 24


class Scale(Enum):
    """Which of the two curves is shown."""

    PH = auto()
    ACID = auto()


def metric_amount(value: float, kind: Kind) -> str:
    """Write a temperature or a length in °C or cm."""
    unit = "°C" if kind is Kind.TEMPERATURE else "cm"
    return f"{_number(value, 1)} {unit}"


class AcidChart(QWidget):
    """The acidity of one batch over its days.

    ``what_if_wanted`` carries a batch's id and the `WhatIf` to imagine; the answer comes by
    `set_imagined`. ``show_amount`` writes amounts in the maker's units.
    """

    what_if_wanted = Signal(int, object)

    def __init__(
        self, parent: QWidget | None = None, *, show_amount: ShowAmount = metric_amount
    ) -> None:
        super().__init__(parent)
        self.setObjectName("acid_chart")
        self._show_amount = show_amount
        self._imagined: Imagined | None = None
        self._scroll_later = QTimer(self)  # once the opened panel has its place
        self._scroll_later.setObjectName("what_if_scroll")
        self._scroll_later.setSingleShot(True)
        self._scroll_later.setInterval(0)
        self._view: CurveView | None = None
        self._is_over = False
        self._scale = Scale.PH
        self._plot: CurvePlot | None = None
        self._spec: PlotSpec | None = None
        self._is_stale = False
        self._is_moved = False
        self._was_tight = False
        self._build()
        self._connect()
        self._tell()

    # what it shows

    def set_view(self, view: CurveView | None, *, is_over: bool = False) -> None:
        """Show ``view``; None or a view without a curve shows what to do to get one.

        Of a batch that ``is_over`` the present is the end.
        """
        for _ in self.set_view_in_turns(view, is_over=is_over):
            pass

    def set_view_in_turns(self, view: CurveView | None, *, is_over: bool = False) -> Iterator[None]:
        """Do as `set_view` in small steps; what is shown meanwhile makes the rest void."""
        self._is_over = is_over
        is_other = view is None or self._view is None or view.batch_id != self._view.batch_id
        was, self._view = self._view, view
        if is_other:
            self._imagined = None
            self.what_if.set_open(False)
            if self._plot is not None:
                self._plot.forget_view()
        can_imagine = view is not None and view.forecast is not None and not is_over
        self.what_if.set_real(view.as_it_is if view is not None and can_imagine else None)
        yield from self._refreshing()
        if was != view and self._view is view:
            self._ask_again()

    def set_imagined(self, imagined: Imagined) -> None:
        """Show how it would go otherwise, if that is still what is asked."""
        if self._view is None or imagined.batch_id != self._view.batch_id:
            return
        if imagined.change != self.what_if.change() or imagined.change.is_as_it_is():
            return
        self._imagined = imagined
        self.what_if.say(imagined.text)
        self._refresh()

    def imagined(self) -> Imagined | None:
        """Return what is drawn beside the forecast."""
        return self._imagined

    def view(self) -> CurveView | None:
        """Return what is shown."""
        return self._view

    def scale(self) -> Scale:
        """Return which curve is shown."""
        return self._scale

    def set_scale(self, scale: Scale) -> None:
        """Show the pH or the titratable acidity."""
        self.scale_bar.set_value(scale)
        if scale is not self._scale:
            self._scale = scale
            if self._plot is not None:
                self._plot.forget_view()
            self._refresh()

    def spec(self) -> PlotSpec | None:
        """Return what the plot draws now, or None while there is nothing to draw."""
        return self._spec

    def sizeHint(self) -> QSize:
        """Ask for a comfortable picture."""
        return QSize(520, 460)

    # building

    def _build(self) -> None:
        self.scale_bar = ChoiceBar(
            ((Scale.PH, self.tr("pH")), (Scale.ACID, self.tr("Acidity"))), self.tr("Show")
        )
        self.scale_bar.setObjectName("chart_scale")
        self.scale_bar.button(Scale.ACID).setToolTip(
            self.tr("Titratable acidity, counted as acetic acid")
        )
        self.whole_button = QPushButton(self.tr("Show all days"))
        self.whole_button.setObjectName("chart_whole")
        set_role(self.whole_button, "quiet")

        self.readout = plain_label("", "muted", wraps=True)
        self.readout.setObjectName("chart_readout")
        self.readout.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

        head = QHBoxLayout()
        head.setSpacing(SPACE)
        head.addWidget(self.scale_bar)
        head.addSpacing(SPACE)
        head.addWidget(self.readout, 1)
        head.addWidget(self.whole_button)
        self.what_if = WhatIfPanel(self._show_amount)
        head.addWidget(self.what_if.reset_button)
        head.addWidget(self.what_if.open_button)

        self._stack = QStackedWidget()
        # What is over after the words is the picture's; its own wish would make the page scroll.
        self._stack.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self.empty = plain_label("", "muted", wraps=True)
        self.empty.setObjectName("chart_empty")
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.empty.setMargin(4 * SPACE)
        self._stack.addWidget(self.empty)

        self.legend = ChartLegend()
        self.summary = plain_label("", "", wraps=True)
        self.summary.setObjectName("chart_summary")
        self.summary.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.summary.setAccessibleName(self.tr("The curve in words"))

        self.notes = plain_label("", "muted", wraps=True)
        self.notes.setObjectName("chart_notes")
        self.notes.setTextInteractionFlags(self.summary.textInteractionFlags())
        self.notes.setAccessibleName(self.tr("More about the forecast"))

        content = QWidget()
        layout = self._column = QVBoxLayout(content)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        layout.addLayout(head)
        frame, inside = card()
        inside.setContentsMargins(SPACE // 2, SPACE, SPACE, SPACE // 2)
        inside.addWidget(self._stack)
        layout.addWidget(frame, 1)
        layout.addWidget(self.legend)
        layout.addWidget(self.notes)
        layout.addWidget(self.what_if)
        area = QScrollArea()  # for large type in a low window
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(content)
        self._area = area
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, SPACE, 0, 0)
        outer.setSpacing(SPACE)
        outer.addWidget(self.summary)  # the answer comes first and never scrolls out of sight
        outer.addWidget(area, 1)
        self._size_plot()

    def _connect(self) -> None:
        self.scale_bar.chosen.connect(self.set_scale)
        self.whole_button.clicked.connect(self._on_whole)
        self.what_if.changed.connect(self._on_what_if)
        self.what_if.toggled.connect(self._on_what_if_opened)
        self._scroll_later.timeout.connect(self._show_what_if)
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._on_theme)

    # keeping up

    def _size_plot(self) -> None:
        lines = _LEAST_LINES_BESIDE if self.what_if.is_open() else _LEAST_PLOT_LINES
        self._stack.setMinimumHeight(round(lines * _line_px()))
        self._column.setSpacing(SPACE // 2 if self.what_if.is_open() else SPACE)

    def _on_theme(self) -> None:
        self._size_plot()
        self._refresh()

    def showEvent(self, event: QShowEvent) -> None:
        """Draw what came while the chart was hidden."""
        super().showEvent(event)
        if self._is_stale:
            self._refresh()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Say less in and under the picture where the sliders leave little room."""
        super().resizeEvent(event)
        if self._is_tight() != self._was_tight:
            self._refresh()

    def _is_tight(self) -> bool:
        """Whether the sliders leave no room for what is not the picture itself."""
        return self.what_if.is_open() and self.height() < _ROOMY_LINES * _line_px()

    def _refresh(self) -> None:
        for _ in self._refreshing():
            pass

    def _refreshing(self) -> Iterator[None]:
        self._tell()
        spec = self._spec
        self._is_stale = True
        if spec is None or not self.isVisible():
            self._is_stale = not self.isVisible()
            return
        yield
        if self._spec is not spec:
            return
        plot = self._plot if self._plot is not None else self._make_plot()
        for _ in plot.keep_up_in_turns(spec, tokens()):
            yield
            if self._spec is not spec:
                return
        self._is_stale = False
        self._stack.setCurrentWidget(plot)

    def _tell(self) -> None:
        """Bring words, legend and buttons up to date; the picture waits until it is seen."""
        view = self._view
        self._spec = None
        if view is not None:
            make = ph_spec if self._scale is Scale.PH else acid_spec
            self._spec = make(view, self._imagined)
        if self._spec is not None and self._is_over:
            self._spec = replace(self._spec, now_label=self.tr("ended"))
        has_curve = self._spec is not None
        self._was_tight = self._is_tight()
        if self._spec is not None and self._was_tight:
            self._spec = replace(
                self._spec,
                band_label="",
                lines=tuple(replace(line, label="") for line in self._spec.lines),
            )
        is_beside = self.what_if.is_open()
        self.legend.set_entries(
            legend_of(self._spec, is_brief=is_beside) if self._spec is not None else ()
        )
        self.legend.setVisible(has_curve and not self._was_tight)
        self.whole_button.setVisible(has_curve and self._is_moved)
        self.summary.setText(view.text_summary if view is not None else "")
        self.summary.setVisible(bool(self.summary.text()))
        notes = view.notes if view is not None and view.forecast is not None else ()
        self.notes.setText("\n".join(notes))
        self.notes.setVisible(bool(notes) and not is_beside)  # the sliders take their place
        self.readout.setText(self._resting_text())
        self.empty.setText(self._empty_text())
        if not has_curve:
            self._stack.setCurrentWidget(self.empty)

    def _empty_text(self) -> str:
        if self._view is None or self._scale is Scale.PH:
            return self.tr(
                "No curve yet. It begins when the starter is in. Take a first pH then, and the "
                "forecast will show when to taste."
            )
        return self.tr(
            "No titratable acidity measured or forecast yet. Enter one with the next reading."
        )

    def _make_plot(self) -> CurvePlot:
        from brewdesk.widgets.acidplot import CurvePlot

        self._plot = CurvePlot(self._date_text, self)
        self._plot.setObjectName("chart_plot")
        self._plot.setAccessibleName(self.tr("Acidity over the days of the batch"))
        self._plot.setAccessibleDescription(
            self.tr("The same is said in words beside it and in the table of readings.")
        )
        self._plot.hovered.connect(self._on_hovered)
        self._plot.moved.connect(self._on_moved)
        self._stack.addWidget(self._plot)
        # Made late, it would come last of all in the window.
        QWidget.setTabOrder(self.scale_bar.button(Scale.ACID), self._plot)
        return self._plot

    # imagining

    def _on_what_if_opened(self) -> None:
        """Make room for the sliders, or give it back."""
        self._size_plot()
        self._refresh()
        self._scroll_later.start()

    def _show_what_if(self) -> None:
        """Bring the opened panel into view, and as much of the picture as there is room for."""
        if self.what_if.is_open() and self.isVisible():
            self._area.ensureWidgetVisible(self.what_if, 0, SPACE)

    def _on_what_if(self, change: WhatIf) -> None:
        if change.is_as_it_is():
            self._imagined = None
            self._refresh()
        else:
            self._ask_again()

    def _ask_again(self) -> None:
        """Have what is imagined worked out from what is known now."""
        change = self.what_if.change()
        if self._view is not None and not change.is_as_it_is():
            self.what_if_wanted.emit(self._view.batch_id, change)

    # pointing

    def _on_whole(self) -> None:
        if self._plot is not None:
            self._plot.reset_view()

    def _on_moved(self, is_moved: bool) -> None:
        self._is_moved = is_moved
        self.whole_button.setVisible(is_moved and self._spec is not None)

    def _on_hovered(self, found: object) -> None:
        if isinstance(found, PlotPoint):
            self.readout.setText(
                self.tr("Day {day} · {what}").format(day=_number(found.day, 1), what=found.text)
            )
        elif isinstance(found, float) and self._spec is not None:
            self.readout.setText(self._forecast_text(found))
        else:
            self.readout.setText(self._resting_text())

    def _forecast_text(self, day: float) -> str:
        assert self._spec is not None
        place = self.tr("Day {day}, {date}").format(day=_number(day, 1), date=self._date_text(day))
        expected = self._spec.forecast.at(day) if self._spec.forecast else None
        if expected is None:
            return place
        low, mid, high = (_number(value, self._spec.value_digits) for value in expected)
        return self.tr("{place} · expected {mid} ({low} to {high})").format(
            place=place, mid=mid, low=low, high=high
        )

    def _resting_text(self) -> str:
        if self._spec is None or self._was_tight:
            return ""
        return self._spec.unit_text

    def _date_text(self, day: float) -> str:
        if self._view is None:
            return ""
        date = (self._view.started_at + timedelta(days=day)).date()
        return QLocale().toString(QDate(date.year, date.month, date.day), self.tr("d MMM"))


def _line_px() -> int:
    return QFontMetrics(QApplication.font()).lineSpacing()


def _number(value: float, digits: int) -> str:
    return QLocale().toString(value, "f", digits)
