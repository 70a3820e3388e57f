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
from brewdesk.services.records import ImpossibleInput, Kind, StoreTrouble
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.liquids import suggestion_words
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, announce
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard


class EndDialog(QDialog):
    """Asks only what undo could not tell: why, and whether mold was the reason.

    ``reason`` is one that is known already: "mold", "ph", "smell", "accident" or "other".
    """

    ended = Signal()

    def __init__(
        self,
        desk: Desk,
        jar: JarView,
        *,
        discard: bool,
        reason: str = "",
        parent: QWidget | None = None,
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
        self.kept = QuantityEdit(desk.quantities, Kind.VOLUME, required=False, lines=1)
        self.kept.line.setObjectName("end_kept")
        self.kept_row = FieldRow(self.tr("Left with the culture, as its liquid"), self.kept)
        self.kept_words = self._label("", "muted")
        self.kept_words.setObjectName("end_kept_words")
        for part in (self.kept_row, self.kept_words):
            part.setVisible(not discard and self._may_keep())
        if discard:
            self._offer_reasons()
            column.addWidget(self.reason)
        else:
            self._offer_to_keep()
            column.addWidget(self.kept_row)
            column.addWidget(self.kept_words)
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
        if discard and reason:
            self.reason.setCurrentIndex(self.reason.findData(reason))

    def _may_keep(self) -> bool:
        culture = self._jar.culture
        return culture is not None and culture.vessel_id == self._jar.vessel.id

    def _offer_to_keep(self) -> None:
        """Say what is in the jar, and how much starter is wanted next."""
        show = self._desk.quantities.show
        found = self._desk.liquids.starter_suggestion(self._jar.vessel.id)
        self.kept.set_placeholder(self.tr("may stay empty"))
        self._kept_hint = suggestion_words(found.volume_l, found.plan_name, show)
        self.kept.value_changed.connect(self._on_kept)
        self._on_kept()

    def _on_kept(self) -> None:
        """Show the balance beside the entry."""
        show, kept_l = self._desk.quantities.show, self.kept.value()
        now_l = self._jar.fill_volume_l
        if kept_l is None or kept_l > now_l:
            self.kept_words.setText(self._kept_hint)
            return
        self.kept_words.setText(
            self.tr("{drawn} are drawn off, {kept} stay.").format(
                drawn=show(now_l - kept_l, Kind.VOLUME), kept=show(kept_l, Kind.VOLUME)
            )
        )

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
        if self.kept.text().strip() and not self.kept.point_out():
            self.kept.line.setFocus()
            return
        try:
            if self._discard:
                is_mold = self.reason.currentData() == "mold"
                batches.discard(batch.id, self._reason_words(), culture_lost=is_mold)
            else:
                kept_l = self.kept.value() or 0.0
                batches.draw_off(batch.id, self.words.text().strip(), kept_l=kept_l)
        except ImpossibleInput as problem:
            if problem.field == "kept_l":
                words = impossible_words(problem, self._desk.quantities.show)
                self.kept_row.set_problem(words)
                self.kept.line.setFocus()
                return
            self._tell(impossible_words(problem, self._desk.quantities.show), "error")
            return
        except StoreTrouble as trouble:
            self._tell(trouble_words(trouble), "error")
            return
        self.accept()
        self.ended.emit()
