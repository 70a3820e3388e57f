"""Ending a batch: drawing it off, or discarding it with a reason."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, StoreTrouble
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import announce
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard


class EndDialog(QDialog):
    """Asks only what undo could not tell: why, and whether mold was the reason."""

    ended = Signal()

    def __init__(
        self, desk: Desk, jar: JarView, *, discard: bool, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._jar = jar
        self._discard = discard
        self.setObjectName("end_dialog")
        self.setWindowTitle(self.tr("Discard a batch") if discard else self.tr("Draw a batch off"))
        self.setMinimumWidth(460)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        batch = jar.batch
        name = batch.name if batch is not None else ""
        heading = self._label(
            (self.tr("Discard {name}?") if discard else self.tr("Draw {name} off?")).format(
                name=name
            ),
            "heading",
        )
        column.addWidget(heading)
        if not discard and batch is not None:
            self.verdict = desk.batches.drinkable_verdict(batch.id)
            column.addWidget(VerdictCard(self.verdict, self, show=desk.quantities.show))
        self.advice = self._label(self._advice(), "muted")
        column.addWidget(self.advice)
        self.reason = QComboBox()
        self.reason.setObjectName("end_reason")
        self.reason.setAccessibleName(self.tr("Reason"))
        self.words = QLineEdit()
        self.words.setObjectName("end_words")
        self.words.setAccessibleName(self.tr("In your own words"))
        self.words.setPlaceholderText(self.tr("In your own words (optional)"))
        if discard:
            self._offer_reasons()
            column.addWidget(self.reason)
        column.addWidget(self.words)
        self.result_words = self._label("", "warn")
        self.result_words.setObjectName("end_result")
        column.addWidget(self.result_words)
        buttons, self.go = go_and_leave(
            self,
            self.tr("Discard all of it") if discard else self.tr("Draw it off"),
            self.tr("Keep it going"),
            go_name="end_go",
            role="danger" if discard else "primary",
        )
        self.go.clicked.connect(self._on_go)
        column.addWidget(buttons)

    def _offer_reasons(self) -> None:
        """Offer reasons with none chosen: mold is no default, for it takes the culture too."""
        for key, text in (
            ("mold", self.tr("Mold: fuzzy, dry or coloured spots")),
            ("ph", self.tr("Not sour enough in time")),
            ("smell", self.tr("It smells or tastes wrong")),
            ("accident", self.tr("An accident")),
            ("other", self.tr("Another reason")),
        ):
            self.reason.addItem(text, key)
        self.reason.setPlaceholderText(self.tr("Choose the reason"))
        self.reason.setCurrentIndex(-1)
        self.reason.currentIndexChanged.connect(self._on_reason)

    def _on_reason(self) -> None:
        self._tell(self._mold_words() if self.reason.currentData() == "mold" else "", "warn")

    def _mold_words(self) -> str:
        """Say what else mold concerns: the culture in the jar, and what shared liquid with it."""
        batch, culture = self._jar.batch, self._jar.culture
        words = []
        if culture is not None:
            lost = self.tr("The culture {culture} is marked as lost with it.")
            words.append(lost.format(culture=culture.name))
        contacts = () if batch is None else self._desk.suspicion.contacts("batch", batch.id)
        own_id = None if culture is None else culture.id
        names = [one.name for one in contacts if (one.subject, one.id) != ("culture", own_id)]
        if names:
            touched = self.tr("Under suspicion, since they shared liquid with it: {names}.")
            words.append(touched.format(names=", ".join(names)))
        return " ".join(words)

    def _tell(self, text: str, role: str) -> None:
        set_role(self.result_words, role)
        self.result_words.setText(text)
        announce(self, text)

    def _reason_words(self) -> str:
        """Put the reason and the maker's own words together; neither replaces the other."""
        words = self.words.text().strip()
        chosen = self.reason.currentText()
        if not words:
            return chosen
        if self.reason.currentData() == "other":
            return words
        return self.tr("{reason} – {words}").format(reason=chosen, words=words)

    def _label(self, text: str, role: str) -> QLabel:
        label = QLabel(text)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        set_role(label, role)
        return label

    def _advice(self) -> str:
        if self._discard:
            return self.tr(
                "With mold, everything goes: liquid, culture and cloth. Mold cannot be scooped "
                "off safely; when in doubt, throw it out. Wash and sanitise the vessel."
            )
        return self.tr(
            "Keep back enough of it as starter for the next jar, and chill what you drink. "
            "It holds some alcohol; how much is allowed to be given away is for local rules."
        )

    def _on_go(self) -> None:
        batch = self._jar.batch
        if batch is None:
            self.reject()
            return
        if self._discard and self.reason.currentIndex() < 0:
            self._tell(self.tr("Please choose why."), "error")
            self.reason.setFocus()
            return
        batches = self._desk.batches
        try:
            if self._discard:
                is_mold = self.reason.currentData() == "mold"
                batches.discard(batch.id, self._reason_words(), culture_lost=is_mold)
            else:
                batches.draw_off(batch.id, self.words.text().strip())
        except ImpossibleInput as problem:
            self._tell(impossible_words(problem, self._desk.quantities.show), "error")
            return
        except StoreTrouble as trouble:
            self._tell(trouble_words(trouble), "error")
            return
        self.accept()
        self.ended.emit()
