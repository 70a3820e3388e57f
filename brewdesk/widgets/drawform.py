"""Take something out of the stores by hand, or say what a count of the shelf found."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QDialog, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import DrawReason, ImpossibleInput, Kind, StoreTrouble
from brewdesk.services.stockviews import StockView
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stores import amount_words, left_words, reason_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.dialogfit import fit_height, set_letters
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stockamount import StockReader
from brewdesk.widgets.theme import SPACE

_REASONS = (DrawReason.OTHER, DrawReason.SPOILED)


class DrawDialog(QDialog):
    """``is_count``: what the shelf holds is asked for, not what left it."""

    saved = Signal(int)

    def __init__(
        self, desk: Desk, view: StockView, parent: QWidget | None = None, *, is_count: bool
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._view = view
        self._is_count = is_count
        self.setObjectName("draw_dialog")
        set_letters(self, 56)
        tr, supply = self.tr, view.supply
        self.setWindowTitle(tr("Count the shelf") if is_count else tr("Taken out"))
        reader = StockReader(desk.quantities, supply.measure)
        self.amount = QuantityEdit(reader, Kind.MASS, lines=2)
        self.amount.line.setObjectName("draw_amount")
        self.reason = QComboBox()
        self.reason.setObjectName("draw_reason")
        for reason in _REASONS:
            self.reason.addItem(reason_words(reason), reason)
        self.text = QLineEdit()
        self.text.setObjectName("draw_text")
        self.rows = {
            "amount": FieldRow(
                tr("How much there &is") if is_count else tr("How &much"), self.amount
            ),
            "reason": FieldRow(tr("&Why"), self.reason, lines=0),
            "text": FieldRow(tr("In your &words"), self.text, lines=1),
        }
        self.rows["reason"].setVisible(not is_count)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(supply.name, "heading", wraps=True))
        by_the_books = tr("By the books: {left}.").format(
            left=left_words(view, desk.quantities.show)
        )
        column.addWidget(plain_label(by_the_books, "muted", wraps=True))
        for row in self.rows.values():
            column.addWidget(row)
        go = tr("Correct the books") if is_count else tr("Take it out")
        buttons, self.save = go_and_leave(self, go, tr("Cancel"), go_name="save_draw")
        self.save.clicked.connect(self._on_save)
        column.addWidget(buttons)
        if is_count:
            self.amount.set_placeholder(
                amount_words(view.left, supply.measure, desk.quantities.show)
            )

    def _on_save(self) -> None:
        for row in self.rows.values():
            row.set_problem("")
        amount = self.amount.value()
        if not self.amount.point_out() or amount is None:
            self.amount.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        supply = self._view.supply
        try:
            if self._is_count:
                self._desk.stores.count(supply.id, amount, self.text.text())
            else:
                reason = DrawReason(self.reason.currentData())
                self._desk.stores.use(supply.id, amount, reason, self.text.text())
        except ImpossibleInput as problem:
            row = self.rows.get(problem.field, self.rows["amount"])
            row.set_problem(impossible_words(problem, self._desk.quantities.show))
            row.focus_widget.setFocus(Qt.FocusReason.OtherFocusReason)
            fit_height(self)
            return
        except StoreTrouble as trouble:
            self.rows["amount"].set_problem(trouble_words(trouble))
            return
        self.accept()
        self.saved.emit(supply.id)
