"""What a wish amounts to: the right half of the plan page."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QGraphicsOpacityEffect,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLayout,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.amounts import AmountRow, Part, amount_rows
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Estimate, Kind, Level, Plan, Verdict, Wish
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.measures import (
    mass_words,
    measure_words,
    ounce_words,
    part_name,
    volume_words,
)
from brewdesk.widgets.fields import MessageLine, card, make_strong, plain_label
from brewdesk.widgets.figurerow import FigureRow
from brewdesk.widgets.phscale import PhScale
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens
from brewdesk.widgets.verdictcard import VerdictCard, VerdictLine

_SAID_BY_THE_SCALE = "start_ph_good"
_NUMBERS = (1, 2, 3)  # columns that are read by their last digit


class AmountsTable(QWidget):
    """Part, grams, ounces, millilitres, kitchen measure; the last row is the sum of the others."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(2 * SPACE)
        self._grid.setVerticalSpacing(SPACE // 2)
        self._grid.setColumnStretch(4, 1)
        for column in _NUMBERS:
            self._grid.setColumnMinimumWidth(column, 5 * SPACE)
        headers = (
            self.tr("Part"),
            self.tr("g"),
            self.tr("oz"),
            self.tr("mL"),
            self.tr("Kitchen measure"),
        )
        for column, text in enumerate(headers):
            self._grid.addWidget(self._cell(column, text, "label"), 0, column)
        self._is_stale = False
        self._cells: dict[Part, tuple[QLabel, ...]] = {}
        for index, part in enumerate(Part):
            self._grid.addWidget(_Rule(self, strong=part is Part.TOTAL), 2 * index + 1, 0, 1, 5)
            cells = tuple(self._cell(column, "", "") for column in range(5))
            for column, cell in enumerate(cells):
                cell.setObjectName(f"amount_{part.value}_{column}")
                self._grid.addWidget(cell, 2 * index + 2, column)
                if part is Part.TOTAL:
                    make_strong(cell)
            self._cells[part] = cells

    def show_rows(self, rows: Sequence[AmountRow]) -> None:
        """Fill the table."""
        for row in rows:
            texts = (
                part_name(row.part),
                mass_words(row),
                ounce_words(row),
                volume_words(row),
                measure_words(row.measures),
            )
            for cell, text in zip(self._cells[row.part], texts, strict=True):
                cell.setText(text)
            name, grams, ounces, millilitres, kitchen = texts
            words = self.tr("{part}: {grams} g, {ounces} oz").format(
                part=name, grams=grams, ounces=ounces
            )
            if millilitres:
                words += self.tr(", {volume} mL").format(volume=millilitres)
            if kitchen:
                words += self.tr(", about {measure}").format(measure=kitchen)
            self._cells[row.part][0].setAccessibleName(words)

    def text(self, part: Part, column: int) -> str:
        """Return what stands in a cell."""
        return self._cells[part][column].text()

    def set_stale(self, is_stale: bool) -> None:
        """Grey the figures while they answer an older wish."""
        if is_stale == self._is_stale:
            return
        self._is_stale = is_stale
        for cells in self._cells.values():
            for cell in cells:
                set_role(cell, "muted" if is_stale else "")

    def _cell(self, column: int, text: str, role: str) -> QLabel:
        cell = plain_label(text, role, self, wraps=column == 4)
        side = Qt.AlignmentFlag.AlignRight if column in _NUMBERS else Qt.AlignmentFlag.AlignLeft
        cell.setAlignment(side | Qt.AlignmentFlag.AlignVCenter)
        return cell


class _Rule(QWidget):
    """A line between rows; the one above a sum is stronger."""

    def __init__(self, parent: QWidget, *, strong: bool) -> None:
        super().__init__(parent)
        self._strong = strong
        self.setFixedHeight(2 if strong else 1)

    def paintEvent(self, _event: QPaintEvent) -> None:
        t = tokens()
        QPainter(self).fillRect(self.rect(), QColor(t.ink if self._strong else t.line))


class AmountsPanel(QWidget):
    """Amounts, start pH on its scale, temperatures, and what there is to say about them."""

    def __init__(self, quantities: Quantities, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._quantities = quantities
        self._verdicts: tuple[Verdict, ...] = ()
        self.table = AmountsTable(self)
        self.figures = FigureRow(3, self)
        self.scale = PhScale(self)
        self.ph_words = plain_label(parent=self, wraps=True)
        self.heat_words = plain_label(parent=self, wraps=True)
        self.state = MessageLine(self, lines=1)
        self.state.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignBottom)
        self.cards: list[VerdictCard] = []
        self.remarks: list[VerdictLine] = []
        self._lay_out()
        self.show_nothing("")

    def _lay_out(self) -> None:
        amounts, column = card(self)
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(plain_label(self.tr("Amounts"), "heading", self))
        head.addWidget(self.state, 1)
        column.addLayout(head)
        column.addWidget(self.table)
        column.addWidget(
            plain_label(
                self.tr(
                    "Volumes are those at 20 °C. Weigh if you can: cups and spoons are good to "
                    "about 5\u00a0%."
                ),
                "label",
                self,
                wraps=True,
            )
        )
        result, below = card(self)
        below.addWidget(plain_label(self.tr("What to expect"), "heading", self))
        below.addWidget(self.figures)
        below.addWidget(self.scale)
        below.addWidget(self.ph_words)
        below.addWidget(self.heat_words)
        self._cards = QVBoxLayout()
        self._cards.setSpacing(SPACE)
        self._remarks = QVBoxLayout()
        self._remarks.setSpacing(SPACE)
        # What belongs to an older wish is dimmed as a whole, warnings included.
        self._rest = QWidget(self)
        rest = QVBoxLayout(self._rest)
        rest.setContentsMargins(0, 0, 0, 0)
        rest.setSpacing(2 * SPACE)
        rest.addLayout(self._cards)
        rest.addWidget(result)
        rest.addLayout(self._remarks)
        self._dimmer = QGraphicsOpacityEffect(self._rest)
        self._dimmer.setOpacity(0.45)
        self._dimmer.setEnabled(False)
        self._rest.setGraphicsEffect(self._dimmer)
        self._body = QWidget(self)
        body = QVBoxLayout(self._body)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(2 * SPACE)
        body.addWidget(amounts)
        body.addWidget(self._rest)
        self._empty, nothing = card(self)
        nothing.addWidget(plain_label(self.tr("Amounts"), "heading", self))
        self.why_empty = plain_label(role="muted", parent=self, wraps=True)
        nothing.addWidget(self.why_empty)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._body)
        column.addWidget(self._empty)
        column.addStretch(1)

    def show_nothing(self, words: str) -> None:
        """Show no figures, only why there are none."""
        self._body.hide()
        self.why_empty.setText(words)
        self._empty.show()

    def show_plan(self, plan: Plan, wish: Wish) -> None:
        """Show what ``wish`` amounts to."""
        self._empty.hide()
        self._body.show()
        self.state.say("")
        self.table.set_stale(False)
        self._dimmer.setEnabled(False)
        self.table.show_rows(amount_rows(plan, wish))
        show = self._quantities.show
        self.figures.set_figures(
            [
                (show(plan.start_ph.value, Kind.PH), self.tr("start pH, estimated")),
                (
                    show(plan.mixed_temperature_c.value, Kind.TEMPERATURE),
                    self.tr("once mixed, estimated"),
                ),
                (
                    self.tr("{percent} %").format(
                        percent=number_text(100.0 * plan.starter_volume_l / plan.blend_volume_l, 0)
                    ),
                    self.tr("of it starter"),
                ),
            ]
        )
        words = self._start_ph_words(plan.start_ph)
        self.ph_words.setText(words)
        self.scale.show_estimate(plan.start_ph, words)
        self.heat_words.setText(self._heat_words(plan, wish))
        if plan.verdicts != self._verdicts:
            self._verdicts = plan.verdicts
            self._show_verdicts()

    def show_stale(self, words: str) -> None:
        """Keep the figures, greyed, and say why they are not those of the wish."""
        if self._body.isHidden():
            self.show_nothing(words)
            return
        self.table.set_stale(True)
        self._dimmer.setEnabled(True)
        self.state.say(words, "error")

    def _start_ph_words(self, estimate: Estimate) -> str:
        return self.tr(
            "The start pH comes out between {low} and {high} about {times} times in 10. "
            "That is an estimate: measure it before you cover the vessel."
        ).format(
            low=number_text(estimate.low, 2),
            high=number_text(estimate.high, 2),
            times=round(10 * estimate.level),
        )

    def _heat_words(self, plan: Plan, wish: Wish) -> str:
        show = self._quantities.show
        mixed, limit_c = plan.mixed_temperature_c, wish.culture_limit_c
        limit = show(limit_c, Kind.TEMPERATURE)
        if mixed.high <= limit_c:
            text = self.tr(
                "Once mixed it should be cool enough: starter and culture may go in at {limit} "
                "or below. Take the temperature first."
            )
        else:
            text = self.tr(
                "Once mixed it has to cool: starter and culture may go in at {limit} or below."
            )
        return text.format(limit=limit)

    def _show_verdicts(self) -> None:
        _empty(self._cards)
        _empty(self._remarks)
        show = self._quantities.show
        self.cards = [
            VerdictCard(verdict, self, show=show)
            for verdict in self._verdicts
            if verdict.level is not Level.INFORM
        ]
        self.remarks = [
            VerdictLine(verdict, self, show=show)
            for verdict in self._verdicts
            if verdict.level is Level.INFORM and verdict.code != _SAID_BY_THE_SCALE
        ]
        for warning in self.cards:
            self._cards.addWidget(warning)
        for remark in self.remarks:
            self._remarks.addWidget(remark)


def _empty(layout: QLayout) -> None:
    while (item := layout.takeAt(0)) is not None:
        widget = item.widget()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
