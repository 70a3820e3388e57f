"""Read a logger's file into the log of a place: look at it, read it, keep it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QListWidget,
    QProgressBar,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.loggerfile import Preview, examine, sampled
from brewdesk.services.loggerread import LoggerRead
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.logimport import LogImport
from brewdesk.services.records import ImpossibleInput, Place, StoreTrouble
from brewdesk.services.wording.loggers import (
    count_text,
    logger_trouble_words,
    read_words,
    row_error_words,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.loggerchoices import LoggerChoices
from brewdesk.widgets.loggertable import LoggerTable
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_HUNDRED = 100


class LoggerDialog(QDialog):
    """The way from a file to an entry in a place's log. Nothing is kept before "Keep them"."""

    def __init__(self, desk: Desk, place: Place, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._place = place
        self._path: Path | None = None
        self._preview: Preview | None = None
        self._read: LoggerRead | None = None
        self._files: QFileDialog | None = None
        self.setObjectName("logger_dialog")
        self.setWindowTitle(self.tr("Read a logger's file"))
        self.setModal(True)
        # No child: what comes after the dialog is gone must find it, and be heard by nobody.
        self._import = LogImport(
            desk.place_log, desk.jobs, desk.clock, back_up=desk.back_up_before_import
        )
        self._make()
        self._lay_out()
        self._connect()
        self._show_state()
        self._fit()
        self.choose.setFocus()

    # choosing a file

    def choose_file(self) -> None:
        """Ask for the file."""
        self._files = QFileDialog(self, self.tr("Choose the logger's file"))
        self._files.setFileMode(QFileDialog.FileMode.ExistingFile)
        self._files.setNameFilters(
            [
                self.tr("Tables as text (*.csv *.txt *.tsv *.log *.dat)"),
                self.tr("All files (*)"),
            ]
        )
        self._files.fileSelected.connect(lambda name: self.open_file(Path(name)))
        self._files.open()

    def open_file(self, path: Path) -> None:
        """Look at a file and show how it would be read."""
        self._path = path
        self._look(None, None)

    def _look(self, encoding: str | None, delimiter: str | None) -> None:
        assert self._path is not None
        self._read = None
        self.file_name.setText(self._path.name)
        try:
            self._preview = examine(self._path, encoding=encoding, delimiter=delimiter)
        except LoggerTrouble as trouble:
            self._preview = None
            self._say(logger_trouble_words(trouble), "error")
        else:
            self.choices.set_preview(self._preview)
            self._say("")
        self._show_state()

    # making

    def _make(self) -> None:
        self.file_name = plain_label(self.tr("No file chosen yet."), "muted")
        self.file_name.setObjectName("logger_file")
        self.file_name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.choose = self._button("logger_choose", self.tr("Choose a file…"))
        self.empty = plain_label(
            self.tr(
                "Choose the table that your temperature logger exported: text with a time and a "
                "temperature in each row. How it is written is found out, and shown before "
                "anything is kept."
            ),
            "muted",
            wraps=True,
        )
        self.choices = LoggerChoices(self._desk.clock.zone(), self._desk.clock.now())
        self.table = LoggerTable(self._desk.quantities)
        self.bar = QProgressBar()
        self.bar.setObjectName("logger_progress")
        self.bar.setRange(0, _HUNDRED)
        self.bar.setAccessibleName(self.tr("How much of the file has been read"))
        self.stop = self._button("logger_stop", self.tr("Stop"))
        self.message = plain_label("", "", wraps=True)
        self.message.setObjectName("logger_message")
        self.errors_label = plain_label("", "label", wraps=True)
        self.errors = QListWidget()
        self.errors.setObjectName("logger_errors")
        self.errors.setAccessibleName(self.tr("Rows that could not be read"))
        self.go = self._button("logger_go", self.tr("Read the file"))
        self.keep = self._button("logger_keep", self.tr("Keep them"))
        self.back = self._button("logger_back", self.tr("Read it otherwise"))
        self.leave = self._button("logger_leave", self.tr("Cancel"))
        for button in (self.go, self.keep):
            set_role(button, "primary")

    def _button(self, name: str, text: str) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(name)
        button.setAutoDefault(False)
        return button

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(self.choose)
        head.addWidget(self.file_name, 1)
        self.progress = QWidget()
        line = QHBoxLayout(self.progress)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(2 * SPACE)
        line.addWidget(self.bar, 1)
        line.addWidget(self.stop)
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(0, 0, SPACE, 0)
        inner.setSpacing(SPACE)
        for widget in (self.empty, self.choices, self.table, self.message, self.progress):
            inner.addWidget(widget, 1 if widget is self.table else 0)
        inner.addWidget(self.errors_label)
        inner.addWidget(self.errors, 1)
        inner.addStretch(0)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(content)
        buttons = QDialogButtonBox(self)
        for button in (self.go, self.keep):
            buttons.addButton(button, QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.addButton(self.back, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(self.leave, QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        title = self.tr("Read a logger's file for {name}").format(name=self._place.name)
        column.addWidget(plain_label(title, "title", wraps=True))
        column.addLayout(head)
        column.addWidget(area, 1)
        column.addWidget(buttons)

    def _connect(self) -> None:
        self.choose.clicked.connect(self.choose_file)
        self.choices.changed.connect(self._on_choices)
        self.choices.look_again.connect(lambda: self._look(*self.choices.reading_as()))
        self.go.clicked.connect(self._on_go)
        self.back.clicked.connect(self._on_back)
        self.stop.clicked.connect(self._import.cancel)
        self.keep.clicked.connect(self._on_keep)
        self._import.progressed.connect(self._on_progress)
        self._import.was_read.connect(self._on_read)
        self._import.was_kept.connect(self._on_kept)
        self._import.failed.connect(self._on_failed)

    def _fit(self) -> None:
        parent = self.parentWidget()
        room = parent.window().size() if parent is not None else self.size()
        self.resize(
            min(max(room.width() - 4 * SPACE, 90 * SPACE), 130 * SPACE),
            min(max(room.height() - 4 * SPACE, 70 * SPACE), 100 * SPACE),
        )

    # states

    def _show_state(self, *, is_reading: bool = False) -> None:
        """Show what belongs to the state: choosing, reading, or read."""
        has_file, is_read = self._preview is not None, self._read is not None
        self.empty.setVisible(self._path is None)
        self.choices.setVisible(has_file and not is_read)
        self.table.setVisible(has_file and not is_read)
        self.choices.setEnabled(not is_reading)
        self.choose.setEnabled(not is_reading)
        self.progress.setVisible(is_reading)
        self.go.setVisible(not is_read)
        layout = self.choices.layout_now()
        is_clear = has_file and layout is not None and layout.date_order is not None
        self.go.setEnabled(is_clear and not is_reading)
        self.keep.setVisible(is_read)
        self.back.setVisible(is_read)
        errors = self._read.errors if self._read is not None else ()
        self.errors.setVisible(bool(errors))
        self.errors_label.setVisible(bool(errors))
        self.message.setVisible(bool(self.message.text()))
        if has_file and not is_read:
            self._show_rows()

    def _show_rows(self) -> None:
        layout = self.choices.layout_now()
        if self._preview is None or layout is None:
            return
        self.table.show_rows(sampled(self._preview, layout), layout, layout.first_line)
        if self._preview.is_order_open:
            problem = "" if layout.date_order is not None else self.tr("Please choose one.")
            self.choices.order_row.set_problem(problem)

    def _say(self, text: str, role: str = "") -> None:
        set_role(self.message, role)
        self.message.setText(text)
        self.message.setVisible(bool(text))
        announce(self, text)

    def _on_choices(self) -> None:
        self._say("")
        self._show_state()

    def _on_go(self) -> None:
        layout = self.choices.layout_now()
        if self._path is None or layout is None:
            return
        self._say("")
        self.bar.setValue(0)
        self._show_state(is_reading=True)
        self.stop.setFocus(Qt.FocusReason.OtherFocusReason)
        self._import.start(self._path, layout, self.choices.zone())

    def _on_progress(self, share: float) -> None:
        self.bar.setValue(round(_HUNDRED * share))

    def _on_kept(self, _entered: object) -> None:
        self.accept()

    def _on_read(self, read: LoggerRead) -> None:
        self._read = read
        self._say(read_words(read, self._desk.clock.zone(), self._desk.quantities.show))
        self.errors.clear()
        self.errors.addItems([row_error_words(error) for error in read.errors])
        self.errors_label.setText(
            self.tr("Rows left out ({count}), the first of them:").format(
                count=count_text(read.error_count)
            )
        )
        self.keep.setEnabled(True)
        self._show_state()
        self.keep.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_back(self) -> None:
        """Go back to the choices."""
        self._read = None
        self._say("")
        self._show_state()

    def _on_keep(self) -> None:
        if self._read is None or self._path is None:
            return
        self.keep.setEnabled(False)
        self._import.keep(self._place.id, self._path.name, self._read)

    def _on_failed(self, trouble: LoggerTrouble | ImpossibleInput | StoreTrouble) -> None:
        if isinstance(trouble, LoggerTrouble):
            is_wish = trouble.code == "cancelled"
            self._say(logger_trouble_words(trouble), "" if is_wish else "error")
        elif isinstance(trouble, ImpossibleInput):
            self._say(impossible_words(trouble, self._desk.quantities.show), "error")
        else:
            self._say(trouble_words(trouble), "error")
        self.keep.setEnabled(True)
        self._show_state()

    def done(self, result: int) -> None:
        """Give up what is being read, then close."""
        self._import.cancel()
        super().done(result)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Give up what is being read."""
        self._import.cancel()
        super().closeEvent(event)
