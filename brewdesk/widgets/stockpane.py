"""What is in the stores: the list on the left, the chosen supply's sheet beside it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.supplies import SuppliesModel
from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, StoreTrouble, SupplyKind
from brewdesk.services.stockviews import StockView
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.drawform import DrawDialog
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.lotform import LotDialog
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.supplyform import SupplyDialog
from brewdesk.widgets.supplylist import SupplyList
from brewdesk.widgets.supplysheet import SupplySheet
from brewdesk.widgets.theme import SPACE

_WORDS_PX = 560


class StockPane(QWidget):
    """List, sheet, and the forms they open."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._views: tuple[StockView, ...] = ()
        self.dialog: QDialog | None = None
        self.model = SuppliesModel(desk.clock, desk.quantities, self)
        self._stack = QStackedWidget(self)
        self._stack.addWidget(self._make_split())
        self._stack.addWidget(self._make_empty())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._stack)
        self._connect()

    # --- building --------------------------------------------------------------------

    def _make_split(self) -> QWidget:
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(3 * SPACE, SPACE, SPACE, SPACE)
        column.setSpacing(SPACE)
        bar = QHBoxLayout()
        bar.setSpacing(SPACE)
        self.count = plain_label("", "muted", wraps=True)
        self.with_retired = QCheckBox(self.tr("Also what is no longer in use"))
        self.with_retired.setObjectName("stores_with_retired")
        self.add_button = QPushButton(self.tr("Add a supply…"))
        self.add_button.setObjectName("add_supply")
        bar.addWidget(self.count, 1)
        bar.addWidget(self.add_button)
        column.addLayout(bar)
        self.list = SupplyList(self.model)
        column.addWidget(self.list, 1)
        column.addWidget(self.with_retired)
        side = QFrame()
        set_role(side, "side")
        around = QVBoxLayout(side)
        around.setContentsMargins(0, 0, 0, 0)
        self.sheet = SupplySheet(self._desk)
        around.addWidget(self.sheet)
        split = QSplitter(Qt.Orientation.Horizontal)
        split.setChildrenCollapsible(False)
        split.addWidget(left)
        split.addWidget(side)
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 1)
        split.setSizes([600, 560])
        return split

    def _make_empty(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addStretch(2)
        middle = Qt.AlignmentFlag.AlignHCenter
        column.addWidget(plain_label(self.tr("The stores are empty"), "heading"), 0, middle)
        words = plain_label(
            self.tr(
                "Add the tea and the sugar you brew with, and what you bought of them for how "
                "much. Each brew then takes its share, you see what runs low, and the costs tell "
                "what a litre really comes to. Bottles and fruit can follow."
            ),
            "muted",
            wraps=True,
        )
        words.setAlignment(middle)
        words.setMaximumWidth(_WORDS_PX)
        around = QHBoxLayout()
        around.addStretch(1)
        around.addWidget(words, 20)
        around.addStretch(1)
        column.addLayout(around)
        row = QHBoxLayout()
        row.setSpacing(SPACE)
        self.first_tea = QPushButton(self.tr("Add a tea…"))
        self.first_tea.setObjectName("add_first_tea")
        set_role(self.first_tea, "primary")
        self.first_other = QPushButton(self.tr("Add something else…"))
        self.first_other.setObjectName("add_first_other")
        row.addStretch(1)
        row.addWidget(self.first_tea)
        row.addWidget(self.first_other)
        row.addStretch(1)
        column.addSpacing(SPACE)
        column.addLayout(row)
        column.addStretch(3)
        return page

    def _connect(self) -> None:
        self.add_button.clicked.connect(lambda: self.add())
        self.first_tea.clicked.connect(lambda: self.add(SupplyKind.TEA))
        self.first_other.clicked.connect(lambda: self.add(SupplyKind.SUGAR))
        self.with_retired.toggled.connect(self.refresh)
        self.list.chosen.connect(lambda _supply_id: self._show_chosen())
        self.list.opened.connect(lambda _supply_id: self.sheet.buy.setFocus())
        sheet, stores = self.sheet, self._desk.stores
        sheet.buy_wanted.connect(self.buy)
        sheet.use_wanted.connect(lambda one: self._draw(one, is_count=False))
        sheet.count_wanted.connect(lambda one: self._draw(one, is_count=True))
        sheet.edit_wanted.connect(self._edit)
        sheet.retire_wanted.connect(lambda one: self._attempt(lambda: stores.retire(one)))
        sheet.restore_wanted.connect(lambda one: self._attempt(lambda: stores.restore(one)))
        sheet.edit_lot_wanted.connect(self._edit_lot)
        sheet.remove_lot_wanted.connect(lambda one: self._attempt(lambda: stores.remove_lot(one)))
        sheet.return_wanted.connect(lambda one: self._attempt(lambda: stores.return_bottles(one)))

    # --- showing ---------------------------------------------------------------------

    def refresh(self) -> None:
        """Read the stores again; the choice stays."""
        everything = self._desk.stores.all(include_retired=True)
        is_wanted = self.with_retired.isChecked()
        self._views = tuple(
            view for view in everything if is_wanted or view.supply.retired_at is None
        )
        retired = sum(view.supply.retired_at is not None for view in everything)
        self.with_retired.setVisible(bool(retired))
        self._stack.setCurrentIndex(0 if everything else 1)
        chosen = self.list.supply_id()
        self.model.set_rows(self._views)
        self.model.refresh()
        low = sum(view.is_low for view in self._views)
        count = self.tr("{count} supplies").format(count=len(everything) - retired)
        self.count.setText(
            self.tr("{count}, {low} low").format(count=count, low=low) if low else count
        )
        if self._views and (chosen is None or not self.list.choose(chosen)):
            first = next((view for view in self._views if view.is_low), self._views[0])
            self.list.choose(first.supply.id)
        self._show_chosen()

    def choose(self, supply_id: int) -> None:
        """Bring one supply into view."""
        if not self.list.choose(supply_id):
            self.with_retired.setChecked(True)
            self.list.choose(supply_id)

    def _show_chosen(self) -> None:
        chosen = self.list.supply_id()
        view = next((one for one in self._views if one.supply.id == chosen), None)
        self.sheet.show_view(view, bottles_out=self._out_of(view))

    def _out_of(self, view: StockView | None) -> dict[int, int]:
        if view is None or view.supply.kind is not SupplyKind.BOTTLE or not view.out:
            return {}
        mine = {draw.bottling_id for draw in view.draws}
        out = self._desk.stores.bottles_out()
        return {key: count for key, count in out.items() if key in mine}

    # --- forms -----------------------------------------------------------------------

    def add(self, kind: SupplyKind = SupplyKind.TEA) -> None:
        """Open the form for a new supply; the first purchase is asked for right after it."""
        dialog = SupplyDialog(self._desk, None, self, kind=kind)
        dialog.saved.connect(self._on_added)
        self._open(dialog)

    def buy(self, supply_id: int) -> None:
        """Open the form for a purchase."""
        dialog = LotDialog(self._desk, self._desk.stores.get(supply_id).supply, None, self)
        self._open(dialog)

    def _on_added(self, supply_id: int) -> None:
        self.choose(supply_id)
        self.sheet.buy.setFocus(Qt.FocusReason.OtherFocusReason)

    def _edit(self, supply_id: int) -> None:
        view = self._desk.stores.get(supply_id)
        is_used = bool(view.lots or view.draws or view.planned)
        self._open(SupplyDialog(self._desk, view.supply, self, is_used=is_used))

    def _edit_lot(self, lot_id: int) -> None:
        view = self.sheet.view
        for lot in view.lots if view is not None else ():
            if view is not None and lot.lot.id == lot_id:
                self._open(LotDialog(self._desk, view.supply, lot.lot, self))

    def _draw(self, supply_id: int, *, is_count: bool) -> None:
        view = self._desk.stores.get(supply_id)
        self._open(DrawDialog(self._desk, view, self, is_count=is_count))

    def _open(self, dialog: QDialog) -> None:
        self.sheet.say("")
        self.dialog = dialog
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _attempt(self, act: Callable[[], object]) -> None:
        self.sheet.say("")
        try:
            act()
        except ImpossibleInput as problem:
            self.sheet.say(impossible_words(problem, self._desk.quantities.show))
        except StoreTrouble as trouble:
            self.sheet.say(trouble_words(trouble))
