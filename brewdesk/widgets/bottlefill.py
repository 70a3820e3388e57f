"""Fill bottles: the wish on the left, what it comes to on the right, kept live."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.bottlings import StoppedBottling
from brewdesk.services.bottlingwish import BottlingOutlook, BottlingWish
from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.bottleform import BottleForm
from brewdesk.widgets.bottleoutlook import BottleOutlook
from brewdesk.widgets.bottlingsheetwords import bottling_sheet_of
from brewdesk.widgets.fields import FieldRow, announce, card, plain_label
from brewdesk.widgets.printrunsheet import RunSheetDialog
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.twocolumns import TwoColumns

RECKON_DELAY_MS = 150


class BottleFill(QWidget):
    """One form from wish to full bottles. ``filled`` carries the id of a new bottling."""

    filled = Signal(int)

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, delay_ms: int = RECKON_DELAY_MS
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._reckoned: tuple[BottlingWish, BottlingOutlook] | None = None
        self._paper: RunSheetDialog | None = None
        self._later = QTimer(self)
        self._later.setObjectName("reckon_bottles")
        self._later.setSingleShot(True)
        self._later.setInterval(delay_ms)
        self.form = BottleForm(desk, self)
        self.outlook = BottleOutlook(desk, self)
        self._lay_out()
        self._connect()
        self.begin()

    def _lay_out(self) -> None:
        self.empty, column = card(self)
        column.addWidget(plain_label(self.tr("Nothing to bottle yet"), "heading", self))
        column.addWidget(
            plain_label(
                self.tr(
                    "Bottles are filled from a batch that is souring. Once one is in its window, "
                    "it can be chosen here, or from its jar with “Bottle it”."
                ),
                parent=self,
                wraps=True,
            )
        )
        left = QWidget(self)
        stack = QVBoxLayout(left)
        stack.setContentsMargins(0, 0, 0, 0)
        stack.addWidget(self.empty)
        stack.addWidget(self.form)
        self.columns = TwoColumns(left, self.outlook, self)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        inner = QVBoxLayout()
        inner.setContentsMargins(3 * SPACE, SPACE, 2 * SPACE, SPACE)
        inner.addWidget(self.columns)
        outer.addLayout(inner, 1)
        outer.addWidget(self._make_strip())

    def _make_strip(self) -> QFrame:
        strip = QFrame(self)
        set_role(strip, "strip")
        self.fill_button = QPushButton(self.tr("Fill the bottles"), self)
        self.fill_button.setObjectName("fill_bottles")
        self.fill_button.setAutoDefault(True)
        set_role(self.fill_button, "primary")
        self.print_button = QPushButton(self.tr("Print the sheet…"), self)
        self.print_button.setObjectName("print_bottles")
        set_role(self.print_button, "quiet")
        self.reason = QLineEdit(self)
        self.reason.setObjectName("bottle_reason")
        self.reason.setPlaceholderText(self.tr("Why fill them all the same?"))
        self.reason_row = FieldRow(
            self.tr("It is stopped. Your reason, to be kept with the bottling"),
            self.reason,
            self,
            lines=1,
        )
        self.reason_row.hide()
        self.trouble = plain_label(role="error", parent=self, wraps=True)
        self.trouble.hide()
        line = QHBoxLayout(strip)
        line.setContentsMargins(3 * SPACE, SPACE + 4, 3 * SPACE, SPACE + 4)
        line.setSpacing(2 * SPACE)
        line.addWidget(self.fill_button)
        line.addWidget(self.reason_row, 2)
        line.addWidget(self.trouble, 1)
        line.addStretch(1)
        line.addWidget(self.print_button)
        return strip

    def _connect(self) -> None:
        self.form.changed.connect(self._later.start)
        self._later.timeout.connect(self.reckon)
        self.fill_button.clicked.connect(self._on_fill)
        self.reason.returnPressed.connect(self._on_fill)
        self.print_button.clicked.connect(self._on_print)

    # what others ask of it

    def begin(self, batch_id: int | None = None) -> None:
        """Begin a new bottling, from ``batch_id`` if given; what stood here is dropped."""
        self.form.begin(batch_id)
        self.reason.clear()
        self._say("")
        self.reckon()

    def catch_up(self) -> None:
        """Follow what changed elsewhere; what was typed stays."""
        chosen = self.form.batch_id()
        self.form.refresh_choices()
        self.form.refresh_units()
        self._reckoned = None
        if self.form.batch_id() != chosen:
            self.form.begin()
        self.reckon()

    # live

    def reckon(self) -> None:
        """Reckon the wish and show it, or say beside its field why it cannot be."""
        self._later.stop()
        has_batch = self.form.batch_id() is not None
        self.empty.setVisible(not has_batch)
        self.form.setVisible(has_batch)
        for button in (self.fill_button, self.print_button):
            button.setEnabled(has_batch)
        if not has_batch:
            self.reason_row.hide()
            self.outlook.show_nothing(
                self.tr(
                    "What goes into each bottle, how the pressure may rise and by when to chill "
                    "stands here as soon as there is a batch."
                )
            )
            return
        self.form.clear_problems()
        wish = self.form.wish()
        if wish is None:
            self.outlook.show_stale(self.tr("Waiting for the marked field."))
            return
        try:
            outlook = self._reckon(wish)
        except ImpossibleInput as problem:
            self._say_beside(problem)
            self.outlook.show_stale(self.tr("Not up to date: see the marked field."))
            return
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
            return
        self._say("")
        self.outlook.show_outlook(outlook)
        self.form.show_stock(outlook.priming_sugar_g)
        self.reason_row.setVisible(outlook.is_stopped)
        set_role(self.fill_button, "danger" if outlook.is_stopped else "primary")

    def _reckon(self, wish: BottlingWish) -> BottlingOutlook:
        """Reckon a wish, unless it is the one that was reckoned last."""
        if self._reckoned is None or self._reckoned[0] != wish:
            self._reckoned = (wish, self._desk.bottlings.outlook(wish))
        return self._reckoned[1]

    def _say_beside(self, problem: ImpossibleInput, *, go_there: bool = False) -> None:
        words = impossible_words(problem, self._desk.quantities.show)
        if not self.form.set_problem(problem.field, words, go_there=go_there):
            self._say(words)

    def _say(self, words: str) -> None:
        self.trouble.setText(words)
        self.trouble.setVisible(bool(words))
        announce(self, words)

    # keeping

    def _on_fill(self) -> None:
        self.reckon()
        if not self.form.point_out():
            return
        wish = self.form.wish()
        if wish is None:
            return
        try:
            bottling = self._desk.bottlings.fill(wish, self.reason.text())
        except StoppedBottling:
            self.reason_row.show()
            self.reason_row.set_problem(
                self.tr("A warning stops this. Change the bottling, or write down your reason.")
            )
            self.reason.setFocus()
            return
        except ImpossibleInput as problem:
            self._say_beside(problem, go_there=True)
            return
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
            return
        self.reason_row.set_problem("")
        self.begin()
        self.filled.emit(bottling.id)

    def _on_print(self) -> None:
        self.reckon()
        outlook = self.outlook.outlook()
        if not self.form.point_out() or outlook is None:
            return
        self._paper = RunSheetDialog(bottling_sheet_of(self._desk, outlook), self)
        self._paper.finished.connect(self._paper.deleteLater)
        self._paper.open()
