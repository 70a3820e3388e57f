"""The photos of a jar's batch, with the guided look for mold beside them."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import BatchStage, Look, Quantity, StoreTrouble
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import make_strong, plain_label
from brewdesk.widgets.photostrip import PhotoStrip
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_LOOKED_AT = (BatchStage.BREWING, BatchStage.SOURING)
_ROLE = {Look.MOLD: "danger", Look.UNSURE: "warn", Look.FINE: "card"}


class JarPhotos(QWidget):
    """Photos of one batch. ``look_wanted`` asks for the guided look.

    ``discard_wanted`` asks to throw the batch away, because the last look found mold.
    """

    look_wanted = Signal(int)  # batch id
    discard_wanted = Signal(int)  # batch id

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("jar_photos")
        self._desk = desk
        self._batch_id: int | None = None
        self.card = QFrame()
        set_role(self.card, "card")
        self.finding = plain_label("", wraps=True)
        make_strong(self.finding)
        self.when = plain_label("", "muted", wraps=True)
        self.look_button = QPushButton(self.tr("Look for mold…"))
        self.look_button.setObjectName("photos_look")
        self.discard_button = QPushButton(self.tr("Discard it…"))
        self.discard_button.setObjectName("photos_discard")
        set_role(self.discard_button, "danger")
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.finding)
        words.addWidget(self.when)
        row = QHBoxLayout(self.card)
        row.setContentsMargins(2 * SPACE, SPACE, SPACE, SPACE)
        row.setSpacing(SPACE)
        row.addLayout(words, 1)
        row.addWidget(self.discard_button)
        row.addWidget(self.look_button)
        self.strip = PhotoStrip(desk)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.card)
        column.addWidget(self.strip, 1)
        self.look_button.clicked.connect(self._on_look)
        self.discard_button.clicked.connect(self._on_discard)
        desk.changes.changed.connect(self._on_changed)

    def set_batch(self, batch_id: int | None) -> None:
        """Show this batch."""
        is_other = batch_id != self._batch_id
        self._batch_id = batch_id
        if is_other:
            owner = PhotoOwner(batch_id=batch_id) if batch_id is not None else None
            self.strip.set_owner(owner)
        self._show_look()

    def _show_look(self) -> None:
        if self._batch_id is None:
            return
        stage = self._desk.batches.get(self._batch_id).stage
        looks = [
            reading
            for reading in self._desk.readings.of_batch(self._batch_id)
            if reading.quantity is Quantity.LOOK
        ]
        self.card.setVisible(stage in _LOOKED_AT or bool(looks))
        self.look_button.setVisible(stage in _LOOKED_AT)
        last = Look(looks[-1].text) if looks else None
        self.discard_button.setVisible(stage in _LOOKED_AT and last is Look.MOLD)
        if last is None:
            self.finding.setText(self.tr("Not looked at yet"))
            self.when.setText(self.tr("What is mold, what is not: a guide with drawings."))
            set_role(self.card, "card")
            return
        stamp = stamp_words(looks[-1].at, self._desk.clock.zone())
        self.finding.setText(name_of(last))
        self.when.setText(self.tr("looked at {when}").format(when=stamp))
        set_role(self.card, _ROLE[last])

    def _on_look(self) -> None:
        if self._batch_id is not None:
            self.look_wanted.emit(self._batch_id)

    def _on_discard(self) -> None:
        if self._batch_id is not None:
            self.discard_wanted.emit(self._batch_id)

    def _on_changed(self, change: Change) -> None:
        batch_id = self._batch_id
        is_ours = change.concerns(Topic.READINGS | Topic.BATCHES)
        if batch_id is None or not is_ours or not change.concerns_batch(batch_id):
            return
        try:
            self._show_look()
        except StoreTrouble:  # its making was taken back
            self.set_batch(None)
