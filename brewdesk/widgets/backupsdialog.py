"""The backups there are: each checked, what it holds, what going back to it would lose."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QListWidget,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.backupshelf import BackupView, look_at_all, newest_sound, would_be_lost
from brewdesk.services.desk import Desk
from brewdesk.services.jobs import Pool
from brewdesk.services.records import StoreTrouble
from brewdesk.services.wording.backups import (
    backup_line,
    inside_words,
    lost_words,
    no_backup_words,
    no_sound_backup_words,
)
from brewdesk.services.wording.problems import trouble_words
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class BackupsDialog(QDialog):
    """``restore_wanted`` carries the `BackupInfo` to go back to; ``copy_wanted``: to a folder."""

    restore_wanted = Signal(object)
    copy_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.views: tuple[BackupView, ...] = ()
        self.setObjectName("backups_dialog")
        self.setWindowTitle(self.tr("Backups"))
        self.setModal(True)
        self._build()
        self.resize(100 * SPACE, 72 * SPACE)
        self.look()

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.tr("Backups"), "title"))
        column.addWidget(
            plain_label(
                self.tr(
                    "One is made each day on which something was done: all of two days are kept, "
                    "then one of each day, week and month. They hold the records, not the files "
                    "of photos; a copy to a folder of your own holds both."
                ),
                "muted",
                wraps=True,
            )
        )
        self.list = QListWidget()
        self.list.setObjectName("backups_list")
        self.list.setAccessibleName(self.tr("Backups, the newest first"))
        self.list.setStyleSheet(f"QListView::item {{ padding: {SPACE - 2}px {SPACE}px; }}")
        self.list.currentRowChanged.connect(self._on_chosen)
        self.inside = plain_label("", "", wraps=True)
        self.inside.setObjectName("backups_inside")
        self.lost = plain_label("", "", wraps=True)
        self.lost.setObjectName("backups_lost")
        column.addLayout(self._columns(), 1)
        self.message = plain_label("", "", wraps=True)
        self.message.setObjectName("backups_message")
        self.message.hide()
        column.addWidget(self.message)
        column.addWidget(self._question())
        column.addLayout(self._buttons())

    def _columns(self) -> QHBoxLayout:
        words = QWidget()
        beside = QVBoxLayout(words)
        beside.setContentsMargins(0, 0, SPACE, 0)
        beside.setSpacing(2 * SPACE)
        beside.addWidget(self.inside)
        beside.addWidget(self.lost)
        beside.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        area.setAccessibleName(self.tr("What the chosen backup holds"))
        area.setWidget(words)
        columns = QHBoxLayout()
        columns.setSpacing(2 * SPACE)
        columns.addWidget(self.list, 1)
        columns.addWidget(area, 1)
        return columns

    def _question(self) -> QFrame:
        self.question = QFrame()
        set_role(self.question, "warn")
        row = QHBoxLayout(self.question)
        row.addWidget(
            plain_label(
                self.tr(
                    "Go back? What is here now is backed up first and then set aside; nothing is "
                    "deleted. The window closes and opens again."
                ),
                "",
                wraps=True,
            ),
            1,
        )
        self.stay = self._button("backups_stay", self.tr("Keep what is here"))
        self.stay.clicked.connect(self._on_stay)
        self.really = self._button("backups_really", self.tr("Go back now"))
        set_role(self.really, "danger")
        self.really.clicked.connect(self._on_really)
        row.addWidget(self.stay)
        row.addWidget(self.really)
        self.question.hide()
        return self.question

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(SPACE)
        self.make = self._button("backups_make", self.tr("Back up now"))
        self.make.clicked.connect(self.back_up)
        self.copy = self._button("backups_copy", self.tr("Copy everything to a folder…"))
        self.copy.clicked.connect(self._on_copy)
        self.restore = self._button("backups_restore", self.tr("Go back to this one…"))
        self.restore.clicked.connect(self._on_restore)
        self.leave = self._button("backups_leave", self.tr("Close"))
        self.leave.clicked.connect(self.reject)
        for button in (self.make, self.copy):
            row.addWidget(button)
        row.addStretch(1)
        for button in (self.restore, self.leave):
            row.addWidget(button)
        return row

    def _button(self, name: str, text: str) -> QPushButton:
        made = QPushButton(text)
        made.setObjectName(name)
        made.setAutoDefault(False)
        return made

    def look(self) -> None:
        """Check all backups anew, off the window's thread."""
        self.restore.setEnabled(False)
        self.inside.setText(self.tr("The backups are being checked…"))
        self.lost.setText("")
        self._desk.jobs.run(
            lambda: look_at_all(self._desk.store_path),
            self._on_looked,
            self._on_failed,
            key="backups-checked",
            pool=Pool.STORE,
        )

    def back_up(self) -> None:
        """Make one now."""
        self._desk.jobs.run(
            self._desk.back_up,
            lambda path: self._on_made(self.tr("Backed up as {file}.").format(file=path.name)),
            self._on_failed,
            key="backup",
            pool=Pool.STORE,
        )

    def _on_made(self, words: str) -> None:
        self._say(words, "good")
        self.look()

    def _on_looked(self, views: tuple[BackupView, ...]) -> None:
        self.views = views
        zone = self._desk.clock.zone()
        self.list.clear()
        self.list.addItems([backup_line(view, zone) for view in views])
        if not views:
            self.inside.setText(no_backup_words())
            return
        place = newest_sound(views)
        if place is None:
            self._say(no_sound_backup_words(), "error")
        self.list.setCurrentRow(place or 0)
        self.list.setFocus()

    def chosen(self) -> BackupView | None:
        """Return the backup whose content is told."""
        row = self.list.currentRow()
        return self.views[row] if 0 <= row < len(self.views) else None

    def _on_chosen(self) -> None:
        view = self.chosen()
        self.question.hide()
        if view is None:
            return
        clock = self._desk.clock
        self.inside.setText(inside_words(view, clock.now(), clock.zone()))
        set_role(self.inside, "" if view.is_sound else "error")
        store = self._desk.store
        self.restore.setEnabled(view.is_sound and not store.is_read_only and not store.is_shared)
        self.lost.setText("")
        if store.is_shared:
            # Other desks have it open: nothing may be put in its place behind their backs.
            self.lost.setText(
                self.tr(
                    "This pantry is on a server that other desks may be using. To go back, close "
                    "it at every desk and move the backup there with “brewdesk move-store”."
                )
            )
        elif view.is_sound:
            try:
                lost = would_be_lost(self._desk.store, view)
            except StoreTrouble as trouble:
                self.lost.setText(trouble_words(trouble))
            else:
                self.lost.setText(lost_words(lost, self._desk.quantities.show))

    def _on_restore(self) -> None:
        self.question.show()
        announce(self, self.lost.text())
        self.stay.setFocus()

    def _on_stay(self) -> None:
        self.question.hide()
        self.restore.setFocus()

    def _on_really(self) -> None:
        view = self.chosen()
        if view is None or not view.is_sound:
            return
        self.really.setEnabled(False)
        self._desk.jobs.run(
            self._desk.back_up_before_restore,
            lambda _path: self._go_back(view),
            self._on_failed,
            key="backup",
            pool=Pool.STORE,
        )

    def _go_back(self, view: BackupView) -> None:
        self.accept()
        self.restore_wanted.emit(view.info)

    def _on_copy(self) -> None:
        self.accept()
        self.copy_wanted.emit()

    def _on_failed(self, error: BaseException) -> None:
        if not isinstance(error, StoreTrouble):
            raise error
        self.really.setEnabled(True)
        self.question.hide()
        self._say(trouble_words(error), "error")

    def _say(self, text: str, role: str) -> None:
        set_role(self.message, role)
        self.message.setText(text)
        self.message.show()
        announce(self, text)
