"""Write a purchase down, or correct one."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QGridLayout, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.money import NotMoney, read_money, show_money
from brewdesk.services.records import (
    ImpossibleInput,
    Kind,
    StoreTrouble,
    Supply,
    SupplyLot,
    SupplyLotDraft,
    SupplyMeasure,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stores import money_words
from brewdesk.widgets.dayedit import DayEdit, first_instant, last_instant
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.dialogfit import fit_height, set_letters
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stockamount import StockReader
from brewdesk.widgets.theme import SPACE


class LotDialog(QDialog):
    """How much, for how much, when, from whom, and how long it keeps."""

    saved = Signal(int)

    def __init__(
        self,
        desk: Desk,
        supply: Supply,
        lot: SupplyLot | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._supply = supply
        self._lot = lot
        self.setObjectName("lot_dialog")
        set_letters(self, 68)
        title = self.tr("A purchase") if lot is None else self.tr("Correct a purchase")
        self.setWindowTitle(title)
        self._make_controls()
        self._lay_out()
        if lot is not None:
            self._fill(lot)

    def _make_controls(self) -> None:
        desk = self._desk
        today = desk.clock.now().astimezone(desk.clock.zone()).date()
        reader = StockReader(desk.quantities, self._supply.measure)
        self.amount = QuantityEdit(reader, Kind.MASS)
        self.amount.line.setObjectName("lot_amount")
        self.price = QLineEdit()
        self.price.setObjectName("lot_price")
        self.price.setPlaceholderText(
            self.tr("not known; in {currency}").format(currency=desk.batch_costs.currency())
        )
        self.bought = DayEdit(today, "lot_bought")
        self.best = DayEdit(today, "lot_best_before", may_be_open=True)
        self.seller, self.code, self.note = QLineEdit(), QLineEdit(), QLineEdit()
        for name, line in (("seller", self.seller), ("code", self.code), ("note", self.note)):
            line.setObjectName(f"lot_{name}")

    def _lay_out(self) -> None:
        tr = self.tr
        is_counted = self._supply.measure is SupplyMeasure.PIECES
        how_much = tr("How &many") if is_counted else tr("How &much")
        self.rows = {
            "amount": FieldRow(how_much, self.amount),
            "price_minor": FieldRow(tr("&Price of all of it"), self.price),
            "bought_at": FieldRow(tr("&Bought on"), self.bought, lines=1),
            "best_before": FieldRow(tr("Best before"), self.best, lines=1),
            "seller": FieldRow(tr("From whom"), self.seller, lines=1),
            "lot_code": FieldRow(tr("Lot number on the pack"), self.code, lines=1),
            "note": FieldRow(tr("Note"), self.note, lines=1),
        }
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self._supply.name, "heading", wraps=True))
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(0)
        for key, row, left, span in (
            ("amount", 0, 0, 1),
            ("price_minor", 0, 1, 1),
            ("bought_at", 1, 0, 1),
            ("best_before", 1, 1, 1),
            ("seller", 2, 0, 1),
            ("lot_code", 2, 1, 1),
            ("note", 3, 0, 2),
        ):
            grid.addWidget(self.rows[key], row, left, 1, span)
        for side in range(2):
            grid.setColumnStretch(side, 1)
        column.addLayout(grid)
        buttons, self.save = go_and_leave(
            self, self.tr("Save the purchase"), self.tr("Cancel"), go_name="save_lot"
        )
        self.save.clicked.connect(self._on_save)
        column.addWidget(buttons)

    def _fill(self, lot: SupplyLot) -> None:
        zone = self._desk.clock.zone()
        self.amount.set_value(lot.amount)
        if lot.price_minor is not None:
            self.price.setText(show_money(lot.price_minor, lot.currency))
        self.bought.set_day(lot.bought_at.astimezone(zone).date())
        if lot.best_before is not None:
            self.best.set_day(lot.best_before.astimezone(zone).date())
        self.seller.setText(lot.seller)
        self.code.setText(lot.lot_code)
        self.note.setText(lot.note)

    def _draft(self, amount: float, price: tuple[int, str] | None) -> SupplyLotDraft:
        zone = self._desk.clock.zone()
        day, best = self.bought.day(), self.best.day()
        assert day is not None  # a purchase always has its day
        bought_at = first_instant(day, zone)
        if self._lot is not None and self._lot.bought_at.astimezone(zone).date() == day:
            bought_at = self._lot.bought_at
        return SupplyLotDraft(
            supply_id=self._supply.id,
            bought_at=bought_at,
            amount=amount,
            price_minor=None if price is None else price[0],
            currency="" if price is None else price[1],
            lot_code=self.code.text(),
            seller=self.seller.text(),
            best_before=None if best is None else last_instant(best, zone),
            note=self.note.text(),
        )

    def _on_save(self) -> None:
        for row in self.rows.values():
            row.set_problem("")
        amount = self.amount.value()
        if not self.amount.point_out() or amount is None:
            self.amount.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        price = None
        if self.price.text().strip():
            try:
                price = read_money(self.price.text(), self._desk.batch_costs.currency())
            except NotMoney as problem:
                self._say("price_minor", money_words(problem))
                return
        draft = self._draft(amount, price)
        try:
            kept = self._keep(draft)
        except ImpossibleInput as problem:
            field = problem.field if problem.field in self.rows else "amount"
            self._say(field, impossible_words(problem, self._desk.quantities.show))
            return
        except StoreTrouble as trouble:
            self._say("amount", trouble_words(trouble))
            return
        self.accept()
        self.saved.emit(kept.supply_id)

    def _keep(self, draft: SupplyLotDraft) -> SupplyLot:
        if self._lot is None:
            return self._desk.stores.buy(draft)
        fields = {field: getattr(draft, field) for field in SupplyLotDraft.__dataclass_fields__}
        return self._desk.stores.edit_lot(self._lot.id, **fields)

    def _say(self, field: str, words: str) -> None:
        row = self.rows[field]
        row.set_problem(words)
        row.focus_widget.setFocus(Qt.FocusReason.OtherFocusReason)
        fit_height(self)
