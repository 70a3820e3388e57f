"""The photos of one reading, in a window of their own."""

from __future__ import annotations

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPushButton, QVBoxLayout, QWidget

from brewdesk.models.readings import reading_words
from brewdesk.services.desk import Desk
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import Reading
from brewdesk.services.wording.moments import stamp_words
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.photostrip import PhotoStrip
from brewdesk.widgets.theme import SPACE


class ReadingPhotosDialog(QDialog):
    """Photos that belong to a reading; the batch shows them as well."""

    def __init__(self, desk: Desk, reading: Reading, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("reading_photos")
        self.setWindowTitle(self.tr("Photos of a reading"))
        self.strip = PhotoStrip(desk, PhotoOwner(reading_id=reading.id))
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        words = reading_words(reading, desk.quantities)
        column.addWidget(plain_label(words, "heading", wraps=True))
        stamp = stamp_words(reading.at, desk.clock.zone())
        column.addWidget(plain_label(stamp, "muted", wraps=True))
        column.addWidget(self.strip, 1)
        buttons = QDialogButtonBox(self)
        buttons.addButton(QPushButton(self.tr("Close")), QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)
        self.resize(80 * SPACE, 72 * SPACE)
