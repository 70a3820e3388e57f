"""Word a photo, and put right when it was taken."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.formmark import FormMark
from brewdesk.services.photos import CAPTION_LIMIT
from brewdesk.services.records import ImpossibleInput, Photo, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.whenedit import WhenEdit

_WIDTH_PX = 440


class PhotoWordsDialog(QDialog):
    """Caption and time of one photo. The file itself is never changed."""

    def __init__(self, desk: Desk, photo: Photo, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("photo_words")
        self._desk = desk
        self._photo = photo
        self._mark = FormMark(desk.door)
        self.setWindowTitle(self.tr("Caption and date"))
        self.setMinimumWidth(_WIDTH_PX)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Caption and date"), "heading"))
        self.line = QLineEdit(photo.caption)
        self.line.setObjectName("photo_caption")
        self.line.setMaxLength(CAPTION_LIMIT)
        self.line.setPlaceholderText(self.tr("What is to be seen"))
        self.line.selectAll()
        self.line.setFocus(Qt.FocusReason.OtherFocusReason)
        self.caption_row = FieldRow(self.tr("Caption"), self.line, lines=1)
        column.addWidget(self.caption_row)
        self.when = WhenEdit(desk.clock, follows=False)
        self.when.line.setObjectName("photo_when")
        self.when.set_instant(photo.taken_at)
        self._when_shown = self.when.instant()
        self.when_row = FieldRow(self.tr("Taken"), self.when, lines=2)
        self.when_row.set_hint(
            self.tr("Read from the camera or the file. Put it right if the clock was wrong.")
        )
        column.addWidget(self.when_row)
        buttons, self.save_button = go_and_leave(
            self, self.tr("Save"), self.tr("Cancel"), go_name="photo_save"
        )
        column.addWidget(buttons)
        self.save_button.clicked.connect(self.save)
        self.when.submitted.connect(self.save)

    def save(self) -> None:
        """Keep what changed and close; or say what is wrong with it and stay."""
        self.when_row.set_problem("")
        self.caption_row.set_problem("")
        at: datetime | None = self.when.instant()
        if at == self._when_shown:
            at = None
        try:
            with self._mark.keeping():
                self._desk.photos.edit(self._photo.id, caption=self.line.text(), taken_at=at)
        except ImpossibleInput as fault:
            row = self.when_row if fault.field == "at" else self.caption_row
            row.set_problem(impossible_words(fault))
        except StoreTrouble as trouble:
            self.caption_row.set_problem(trouble_words(trouble))
        else:
            self.accept()
