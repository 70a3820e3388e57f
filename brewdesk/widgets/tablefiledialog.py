"""The way from a table in a file to entries: look at it, read it, keep it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QHBoxLayout,
    QListWidget,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.tablechoices import TableChoices
from brewdesk.widgets.theme import SPACE


class TableImport(Protocol):
    """What reads and keeps off the window's thread."""

    def cancel(self) -> None:
        """Give up what is under way."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TableFileWords:
    """What one kind of table is called. ``endings`` are a file dialog's: "*.csv *.txt"."""

    window: str
    title: str
    choose: str
    endings: str
    empty: str
    errors: str


class TableFileDialog(QDialog):
    """Choose a file, see how it is understood, read it, keep what was read.

    Nothing is kept before "Keep them". Subclasses make the choices and the table of first rows,
    and say what was read.
    """

    def __init__(
        self,
        prefix: str,
        words: TableFileWords,
        importer: TableImport,
        choices: TableChoices,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._prefix = prefix
        self._words = words
        # No child: what comes after the dialog is gone must find it, and be heard by nobody.
        self._importer = importer
        self._path: Path | None = None
        self._files: QFileDialog | None = None
        self.choices = choices
        self.setObjectName(f"{prefix}_dialog")
        self.setWindowTitle(words.window)
        self.setModal(True)
        self._make_parts()
        self.choose.clicked.connect(self.choose_file)
        self.choices.changed.connect(self._on_choices)
        self.choices.look_again.connect(lambda: self._look(*self.choices.reading_as()))
        self.go.clicked.connect(self._on_go)
        self.back.clicked.connect(self._on_back)
        self.keep.clicked.connect(self._on_keep)

    def _make_parts(self) -> None:
        words = self._words
        self.file_name = plain_label(self.tr("No file chosen yet."), "muted")
        self.file_name.setObjectName(f"{self._prefix}_file")
        self.file_name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.choose = self._button("choose", self.tr("Choose a file…"))
        self.empty = plain_label(words.empty, "muted", wraps=True)
        self.message = plain_label("", "", wraps=True)
        self.message.setObjectName(f"{self._prefix}_message")
        self.errors = QListWidget()
        self.errors.setObjectName(f"{self._prefix}_errors")
        self.errors.setAccessibleName(words.errors)
        self.errors.setWordWrap(True)
        self.go = self._button("go", self.tr("Read the file"))
        self.keep = self._button("keep", self.tr("Keep them"))
        self.back = self._button("back", self.tr("Read it otherwise"))
        self.leave = self._button("leave", self.tr("Cancel"))
        for button in (self.go, self.keep):
            set_role(button, "primary")

    def _button(self, name: str, text: str) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(f"{self._prefix}_{name}")
        button.setAutoDefault(False)
        return button

    def _lay_out(self, *parts: tuple[QWidget, int]) -> None:
        """Put parts with their stretch between the title and the buttons."""
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(self.choose)
        head.addWidget(self.file_name, 1)
        buttons = QDialogButtonBox(self)
        for button in (self.go, self.keep):
            buttons.addButton(button, QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.addButton(self.back, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(self.leave, QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self._words.title, "title", wraps=True))
        column.addLayout(head)
        for part, stretch in parts:
            column.addWidget(part, stretch)
        column.addStretch(0)
        column.addWidget(buttons)

    # choosing a file

    def choose_file(self) -> None:
        """Ask for the file."""
        self._files = QFileDialog(self, self._words.choose)
        self._files.setFileMode(QFileDialog.FileMode.ExistingFile)
        tables = self.tr("Tables as text ({endings})").format(endings=self._words.endings)
        self._files.setNameFilters([tables, self.tr("All files (*)")])
        self._files.fileSelected.connect(lambda name: self.open_file(Path(name)))
        self._files.open()

    def open_file(self, path: Path) -> None:
        """Look at a file and show how it would be read."""
        self._path = path
        self.file_name.setText(path.name)
        self._look(None, None)

    # what a subclass does

    def _look(self, encoding: str | None, delimiter: str | None) -> None:
        """Examine the file; an encoding and a delimiter that are given hold."""
        raise AssertionError("a subclass examines its own kind of file")

    def _on_go(self) -> None:
        """Begin to read the file."""
        raise AssertionError("a subclass reads its own kind of file")

    def _on_keep(self) -> None:
        """Keep what was read."""
        raise AssertionError("a subclass keeps its own kind of entry")

    def _forget_read(self) -> None:
        """Have nothing read any more."""
        raise AssertionError("a subclass knows what it read")

    def _show_state(self, *, is_reading: bool = False) -> None:
        """Show what belongs to the state."""
        raise AssertionError("a subclass knows its own states")

    # states

    def _show_parts(
        self, *, has_file: bool, is_read: bool, is_clear: bool, is_reading: bool, has_errors: bool
    ) -> None:
        """Show what belongs to a state: choosing, reading, or read."""
        self.empty.setVisible(self._path is None)
        self.choices.setVisible(has_file and not is_read)
        self.choices.setEnabled(not is_reading)
        self.choose.setEnabled(not is_reading)
        self.go.setVisible(not is_read)
        self.go.setEnabled(is_clear and not is_reading)
        self.keep.setVisible(is_read)
        self.back.setVisible(is_read)
        self.errors.setVisible(has_errors)
        self.message.setVisible(bool(self.message.text()))

    def _say(self, text: str, role: str = "") -> None:
        set_role(self.message, role)
        self.message.setText(text)
        self.message.setVisible(bool(text))
        announce(self, text)

    def _on_choices(self) -> None:
        self._say("")
        self._show_state()

    def _on_back(self) -> None:
        """Go back to the choices."""
        self._forget_read()
        self._say("")
        self._show_state()

    def done(self, result: int) -> None:
        """Give up what is being read, then close."""
        self._importer.cancel()
        super().done(result)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Give up what is being read."""
        self._importer.cancel()
        super().closeEvent(event)
