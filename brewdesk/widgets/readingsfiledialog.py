"""Read a spreadsheet's readings into a batch: look at it, say what is what, read it, keep it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.readingsfile import ReadingsRead, examine_readings
from brewdesk.services.readingsimport import ReadingsImport
from brewdesk.services.records import Batch, StoreTrouble
from brewdesk.services.wording.loggers import count_text
from brewdesk.services.wording.problems import trouble_words
from brewdesk.services.wording.readingsfile import (
    cell_error_words,
    file_trouble_words,
    read_words,
)
from brewdesk.widgets.readingschoices import ReadingsChoices
from brewdesk.widgets.readingstable import ReadingsTable
from brewdesk.widgets.tablefiledialog import TableFileDialog, TableFileWords
from brewdesk.widgets.theme import SPACE


class ReadingsFileDialog(TableFileDialog):
    """The way from a file to readings of a batch."""

    choices: ReadingsChoices

    def __init__(self, desk: Desk, batch: Batch, parent: QWidget | None = None) -> None:
        self._desk = desk
        self._batch = batch
        self._read: ReadingsRead | None = None
        self._import = ReadingsImport(
            desk.door, desk.readings, desk.jobs, back_up=desk.back_up_before_import
        )
        choices = ReadingsChoices(desk.clock.zone())
        super().__init__("readings_file", _words(batch), self._import, choices, parent)
        self.table = ReadingsTable(desk.quantities)
        self._lay_out(
            (self.empty, 0), (choices, 0), (self.table, 1), (self.message, 0), (self.errors, 1)
        )
        self._import.was_read.connect(self._on_read)
        self._import.was_kept.connect(self._on_kept)
        self._import.failed.connect(self._on_failed)
        self._show_state()
        self.resize(124 * SPACE, 88 * SPACE)
        self.choose.setFocus()

    def _on_kept(self, _count: int) -> None:
        self.accept()

    def _look(self, encoding: str | None, delimiter: str | None) -> None:
        assert self._path is not None
        self._read = None
        try:
            preview, choice = examine_readings(self._path, encoding=encoding, delimiter=delimiter)
        except LoggerTrouble as trouble:
            self.choices.forget()
            self._say(file_trouble_words(trouble), "error")
        else:
            self.choices.set_choice(preview, choice)
            self._say("")
        self._show_state()

    # states

    def _show_state(self, *, is_reading: bool = False) -> None:
        choice, read = self.choices.choice(), self._read
        is_clear = (
            choice is not None and bool(choice.columns) and choice.layout.date_order is not None
        )
        self._show_parts(
            has_file=choice is not None,
            is_read=read is not None,
            is_clear=is_clear,
            is_reading=is_reading,
            has_errors=read is not None and bool(read.errors),
        )
        self.table.setVisible(choice is not None and read is None)
        self.keep.setEnabled(read is not None and bool(read.drafts))
        if choice is not None and self.choices.preview is not None:
            self.choices.show_needed()
            self.table.show_rows(self.choices.preview, choice)

    # reading and keeping

    def _on_go(self) -> None:
        choice = self.choices.choice()
        if self._path is None or choice is None:
            return
        self._say("")
        self._show_state(is_reading=True)
        self._import.start(self._batch, self._path, choice, self.choices.zone())

    def _on_read(self, read: ReadingsRead) -> None:
        self._read = read
        self._say(read_words(read, self._desk.clock.zone()))
        self.errors.clear()
        self.errors.addItems([cell_error_words(error) for error in read.errors])
        if read.error_count > len(read.errors):
            rest = count_text(read.error_count - len(read.errors))
            self.errors.addItem(self.tr("{count} more").format(count=rest))
        self._show_state()
        (self.keep if read.drafts else self.back).setFocus(Qt.FocusReason.OtherFocusReason)

    def _forget_read(self) -> None:
        self._read = None

    def _on_keep(self) -> None:
        if self._read is None or self._path is None:
            return
        self.keep.setEnabled(False)
        self._import.keep(self._batch, self._path.name, self._read)

    def _on_failed(self, trouble: LoggerTrouble | StoreTrouble) -> None:
        words = (
            file_trouble_words(trouble)
            if isinstance(trouble, LoggerTrouble)
            else trouble_words(trouble)
        )
        self._say(words, "error")
        self._show_state()


def _words(batch: Batch) -> TableFileWords:
    return TableFileWords(
        window=_t("Read in readings"),
        title=_t("Read in readings of {name}").format(name=batch.name),
        choose=_t("Choose the table"),
        endings="*.csv *.txt *.tsv",
        empty=_t(
            "Choose a table with a date and readings in each row, saved from your "
            "spreadsheet as CSV. You see how it is understood before anything is kept."
        ),
        errors=_t("What was left out, and why"),
    )


def _t(text: str) -> str:
    return QCoreApplication.translate("ReadingsFileDialog", text)
