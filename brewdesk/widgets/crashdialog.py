"""What went wrong in the program, as a report that can be read, copied and saved."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QStandardPaths
from PySide6.QtGui import QFontDatabase
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.wholefile import NotWrittenError, write_whole
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

FILE_NAME = "brewdesk-report.txt"
_BETWEEN = "\n" + 72 * "-" + "\n\n"


class CrashDialog(QDialog):
    """Shows the whole text that could be sent. Nothing is sent by itself."""

    def __init__(self, text: str, *, is_breakdown: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("crash_dialog")
        self.setWindowTitle(self.tr("A mistake in the program"))
        self.setModal(True)
        self._files: QFileDialog | None = None
        what = (
            self.tr(
                "brewdesk broke down last time. Everything that was saved is here; what was only "
                "typed is not."
            )
            if is_breakdown
            else self.tr(
                "Something went wrong in the program. What was saved before is safe, and the "
                "program goes on."
            )
        )
        self.words = plain_label(what, wraps=True)
        self.words.setObjectName("crash_words")
        self.advice = plain_label(
            self.tr(
                "If you want to help to mend it, send this report to those who gave you the "
                "program. It is meant to hold nothing of your pantry, and neither your name nor "
                "that of your computer. Please look through it before you send it: this is the "
                "whole text, and nothing is sent by itself."
            ),
            "muted",
            wraps=True,
        )
        self.advice.setObjectName("crash_advice")
        self.text = QPlainTextEdit(text)
        self.text.setObjectName("crash_text")
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(self.tr("The whole report"))
        self.text.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        self.text.setLineWrapMode(QPlainTextEdit.LineWrapMode.WidgetWidth)
        self.message = plain_label("", "muted", wraps=True)
        self.message.setObjectName("crash_message")
        self.copy = QPushButton(self.tr("Copy the text"))
        self.copy.setObjectName("crash_copy")
        self.copy.clicked.connect(self._on_copy)
        self.save = QPushButton(self.tr("Save as a file…"))
        self.save.setObjectName("crash_save")
        self.save.clicked.connect(self._on_save)
        self.close_button = QPushButton(self.tr("Close"))
        self.close_button.setObjectName("crash_close")
        self.close_button.clicked.connect(self.accept)
        self.close_button.setDefault(True)
        set_role(self.close_button, "primary")
        self._lay_out()
        self.resize(96 * SPACE, 68 * SPACE)
        announce(self, what)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.windowTitle(), "title"))
        column.addWidget(self.words)
        column.addWidget(self.advice)
        column.addWidget(self.text, 1)
        column.addWidget(self.message)
        row = QHBoxLayout()
        row.setSpacing(SPACE)
        row.addWidget(self.copy)
        row.addWidget(self.save)
        row.addStretch(1)
        row.addWidget(self.close_button)
        column.addLayout(row)

    def add(self, text: str) -> None:
        """Show one more report below."""
        self.text.appendPlainText(_BETWEEN + text)

    def save_to(self, path: Path) -> None:
        """Write the text to a file, for its owner alone."""
        try:
            write_whole(path, self.text.toPlainText().encode("utf-8"))
        except NotWrittenError as error:
            self._say(self.tr("It could not be saved: {why}").format(why=error))
        else:
            self._say(self.tr("Saved as {path}.").format(path=path))

    def _on_copy(self) -> None:
        QApplication.clipboard().setText(self.text.toPlainText())
        self._say(self.tr("The text is on the clipboard."))

    def _on_save(self) -> None:
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._files = QFileDialog(self, self.tr("Save the report"), folder)
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setDefaultSuffix("txt")
        self._files.selectFile(FILE_NAME)
        self._files.fileSelected.connect(self._on_file)
        self._files.open()

    def _on_file(self, name: str) -> None:
        self.save_to(Path(name))

    def _say(self, text: str) -> None:
        self.message.setText(text)
        announce(self.message, text)
