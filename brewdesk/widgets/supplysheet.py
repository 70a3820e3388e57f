"""The sheet of the chosen supply: what is left, what it cost, its purchases, where it went."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, SignalInstance
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QMenu,
    QPushButton,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.supplies import DrawsModel, LotsModel
from brewdesk.services.desk import Desk
from brewdesk.services.records import SupplyKind
from brewdesk.services.stockviews import StockView
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.stores import (
    amount_words,
    kind_words,
    left_words,
    price_figure,
    stock_notes,
)
from brewdesk.widgets.fields import MessageLine, plain_label
from brewdesk.widgets.figureflow import FigureFlow
from brewdesk.widgets.figurerow import ElidedLabel
from brewdesk.widgets.icons import icon
from brewdesk.widgets.plaintable import PlainTable
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_LEAST_PX = 400
_DRAWS_SHOWN = 60
_ROWS_HIGH = 6  # of a table before it scrolls by itself


class SupplySheet(QWidget):
    """Shows one supply. What the maker wants is emitted, with the supply's or the lot's id."""

    buy_wanted = Signal(int)
    use_wanted = Signal(int)
    count_wanted = Signal(int)
    edit_wanted = Signal(int)
    retire_wanted = Signal(int)
    restore_wanted = Signal(int)
    edit_lot_wanted = Signal(int)
    remove_lot_wanted = Signal(int)
    return_wanted = Signal(int)  # a bottling

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.view: StockView | None = None
        self.setObjectName("supply_sheet")
        self.setMinimumWidth(_LEAST_PX)
        self.lots = LotsModel(desk.clock, desk.quantities, self)
        self.draws = DrawsModel(desk.clock, desk.quantities, self)
        self._build()

    # --- building --------------------------------------------------------------------

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        column.setSpacing(SPACE)
        column.addLayout(self._make_header())
        column.addLayout(self._make_buttons())
        self.said = MessageLine(self, lines=0)
        column.addWidget(self.said)
        body = QWidget()
        parts = QVBoxLayout(body)
        parts.setContentsMargins(0, SPACE, SPACE, SPACE)
        parts.setSpacing(SPACE)
        self.figures = FigureFlow(3)
        parts.addWidget(self.figures)
        self.notes = plain_label("", "", wraps=True)
        self.notes.setObjectName("supply_notes")
        self.facts = plain_label("", "muted", wraps=True)
        parts.addWidget(self.notes)
        parts.addWidget(self.facts)
        self.returns = QVBoxLayout()
        self.returns.setSpacing(SPACE)
        parts.addLayout(self.returns)
        self.lot_table = self._make_table(parts, self.lots, LotsModel.FROM, self.tr("Purchases"))
        self.lot_table.setObjectName("supply_lots")
        self.lot_table.open_wanted.connect(self._on_open_lot)
        self.lot_table.remove_wanted.connect(self._on_remove_lot)
        parts.addLayout(self._make_lot_buttons())
        self.draw_table = self._make_table(
            parts, self.draws, DrawsModel.WHERE, self.tr("What left, and what came back")
        )
        self.draw_table.setObjectName("supply_draws")
        parts.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(body)
        column.addWidget(area, 1)

    def _make_header(self) -> QHBoxLayout:
        row = QHBoxLayout()
        words = QVBoxLayout()
        words.setSpacing(0)
        self.title = ElidedLabel()
        self.title.setObjectName("supply_title")
        set_role(self.title, "title")
        self.subtitle = plain_label("", "muted", wraps=True)
        words.addWidget(self.title)
        words.addWidget(self.subtitle)
        row.addLayout(words, 1)
        self.more = QToolButton()
        self.more.setObjectName("supply_more")
        self.more.setAccessibleName(self.tr("More for this supply"))
        self.more.setToolTip(self.tr("More for this supply"))
        self.more.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        menu = QMenu(self.more)
        self.edit_action = menu.addAction(self.tr("Change…"))
        self.edit_action.triggered.connect(lambda: self._emit(self.edit_wanted))
        self.retire_action = menu.addAction(self.tr("Take it off the list"))
        self.retire_action.triggered.connect(lambda: self._emit(self.retire_wanted))
        self.restore_action = menu.addAction(self.tr("Put it back on the list"))
        self.restore_action.triggered.connect(lambda: self._emit(self.restore_wanted))
        self.more.setMenu(menu)
        row.addWidget(self.more, 0, Qt.AlignmentFlag.AlignTop)
        return row

    def _make_buttons(self) -> QHBoxLayout:
        self.buy = QPushButton(self.tr("Bought…"))
        self.buy.setObjectName("supply_buy")
        set_role(self.buy, "primary")
        self.use = QPushButton(self.tr("Taken out…"))
        self.use.setObjectName("supply_use")
        self.count = QPushButton(self.tr("Counted…"))
        self.count.setObjectName("supply_count")
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        for button, signal in (
            (self.buy, self.buy_wanted),
            (self.use, self.use_wanted),
            (self.count, self.count_wanted),
        ):
            button.clicked.connect(lambda _=False, one=signal: self._emit(one))
            line.addWidget(button, 1)
        return line

    def _make_table(
        self, parts: QVBoxLayout, model: LotsModel | DrawsModel, stretched: int, title: str
    ) -> PlainTable:
        heading = plain_label(title, "heading", wraps=True)
        parts.addSpacing(SPACE)
        parts.addWidget(heading)
        table = PlainTable(model, stretched=stretched)
        table.setAccessibleName(title)
        table.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        parts.addWidget(table)
        return table

    def _make_lot_buttons(self) -> QHBoxLayout:
        self.correct_lot = QPushButton(self.tr("Correct…"))
        self.correct_lot.setObjectName("lot_correct")
        self.remove_lot = QPushButton(self.tr("Take out"))
        self.remove_lot.setObjectName("lot_remove")
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        for button in (self.correct_lot, self.remove_lot):
            set_role(button, "quiet")
            line.addWidget(button)
        line.addStretch(1)
        self.correct_lot.clicked.connect(self._on_open_lot)
        self.remove_lot.clicked.connect(self._on_remove_lot)
        return line

    # --- showing ---------------------------------------------------------------------

    def show_view(self, view: StockView | None, *, bottles_out: dict[int, int]) -> None:
        """Put a supply on show; ``bottles_out`` are bottles of ended bottlings, by bottling."""
        same = view is not None and self.view is not None
        same = same and view.supply.id == self.view.supply.id  # type: ignore[union-attr]  # both are there
        self.view = view
        self.setVisible(view is not None)
        if view is None:
            return
        supply, show = view.supply, self._desk.quantities.show
        if not same:
            self.said.say("")
        self.more.setIcon(icon("more"))
        self.title.setText(" ".join(supply.name.split()))
        self.title.setToolTip("")
        self.subtitle.setText(self._subtitle(view))
        is_off = supply.retired_at is not None
        self.retire_action.setVisible(not is_off)
        self.restore_action.setVisible(is_off)
        self.buy.setEnabled(not is_off)
        self.use.setEnabled(view.left > 0)
        self.figures.set_figures(self._figures(view))
        clock = self._desk.clock
        notes = stock_notes(view, clock.now(), clock.zone(), show)
        self.notes.setText(" ".join(notes))
        set_role(self.notes, "warn" if view.is_low or view.planned > view.left else "muted")
        self.notes.setVisible(bool(notes))
        self._show_facts(view)
        self._show_returns(view, bottles_out)
        self._show_tables(view)

    def say(self, words: str) -> None:
        """Say what went wrong."""
        self.said.say(words, "error" if words else "label")

    def _subtitle(self, view: StockView) -> str:
        supply = view.supply
        parts = [kind_words(supply.kind)]
        if supply.tea_kind is not None:
            parts = [name_of(supply.tea_kind)]
        if supply.bottle_kind is not None:
            parts.append(name_of(supply.bottle_kind))
        if supply.retired_at is not None:
            parts.append(self.tr("no longer in use"))
        return " · ".join(parts)

    def _figures(self, view: StockView) -> list[tuple[str, str]]:
        show, measure = self._desk.quantities.show, view.supply.measure
        if not view.lots:
            return [(left_words(view, show), "")]
        figures = [(amount_words(view.left, measure, show), self.tr("left"))]
        if view.last_price is not None:
            figures.append(price_figure(view.last_price, measure))
        mark = view.supply.low_amount
        if mark is not None:
            figures.append((amount_words(mark, measure, show), self.tr("your mark")))
        return figures

    def _show_facts(self, view: StockView) -> None:
        supply = view.supply
        parts = []
        if supply.kind is SupplyKind.FLAVOURING and supply.sugar_share_high is not None:
            low, high = 100.0 * (supply.sugar_share_low or 0.0), 100.0 * supply.sugar_share_high
            parts.append(self.tr("Sugar: {low:.3g} to {high:.3g} %.").format(low=low, high=high))
        if supply.ingredients:
            parts.append(self.tr("Ingredients: {text}").format(text=supply.ingredients))
        if supply.allergens:
            parts.append(self.tr("Allergens: {text}").format(text=supply.allergens))
        if supply.note:
            parts.append(supply.note)
        self.facts.setText("\n".join(parts))
        self.facts.setVisible(bool(parts))

    def _show_returns(self, view: StockView, bottles_out: dict[int, int]) -> None:
        while (item := self.returns.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        self.return_buttons: dict[int, QPushButton] = {}
        if view.supply.kind is not SupplyKind.BOTTLE:
            return
        for bottling_id, count in bottles_out.items():
            name = self._desk.bottlings.get(bottling_id).name
            self.returns.addWidget(self._return_line(bottling_id, count, name))

    def _return_line(self, bottling_id: int, count: int, name: str) -> QWidget:
        holder = QFrame()
        set_role(holder, "inform")
        line = QHBoxLayout(holder)
        line.setContentsMargins(2 * SPACE, SPACE, SPACE, SPACE)
        words: QLabel = plain_label(
            self.tr("{count} emptied bottles of {name}").format(count=count, name=name), wraps=True
        )
        button = QPushButton(self.tr("Washed, and back"))
        button.setObjectName(f"return_{bottling_id}")
        button.setAccessibleName(
            self.tr("{count} bottles of {name} are washed and back").format(count=count, name=name)
        )
        button.clicked.connect(lambda: self.return_wanted.emit(bottling_id))
        line.addWidget(words, 1)
        line.addWidget(button)
        self.return_buttons[bottling_id] = button
        return holder

    def _show_tables(self, view: StockView) -> None:
        chosen = self.lot_id()
        self.lots.measure = self.draws.measure = view.supply.measure
        self.lots.set_rows(view.lots)
        self.lots.refresh()
        draws = view.draws[:_DRAWS_SHOWN]
        self.draws.names = self._desk.stores.batch_names(draws)
        self.draws.set_rows(draws)
        self.draws.refresh()
        index = self.lots.index_of(chosen) if chosen is not None else self.lots.index(0, 0)
        self.lot_table.setCurrentIndex(index if index.isValid() else self.lots.index(0, 0))
        for button in (self.correct_lot, self.remove_lot):
            button.setVisible(bool(view.lots))
        for table in (self.lot_table, self.draw_table):
            _fit(table)

    def lot_id(self) -> int | None:
        """Return the purchase of the current row."""
        row = self.lots.row_at(self.lot_table.currentIndex())
        return None if row is None else row.lot.id

    # --- what happens ----------------------------------------------------------------

    def _emit(self, signal: SignalInstance) -> None:
        if self.view is not None:
            signal.emit(self.view.supply.id)

    def _on_open_lot(self) -> None:
        lot_id = self.lot_id()
        if lot_id is not None:
            self.edit_lot_wanted.emit(lot_id)

    def _on_remove_lot(self) -> None:
        lot_id = self.lot_id()
        if lot_id is not None:
            self.remove_lot_wanted.emit(lot_id)


def _fit(table: PlainTable) -> None:
    """Give a table room for its rows, up to as many as are good to look at."""
    rows = min(max(table.model().rowCount(), 1), _ROWS_HIGH)
    height = table.verticalHeader().defaultSectionSize()
    bar = table.horizontalScrollBar().sizeHint().height() + 4
    table.setFixedHeight(table.horizontalHeader().sizeHint().height() + rows * height + bar)
