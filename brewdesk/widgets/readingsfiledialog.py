"""Read a spreadsheet's readings into a batch: look at it, say what is what, read it, keep it."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, tzinfo
from pathlib import Path

from PySide6.QtCore import QDate, QLocale, Qt, QTime
from PySide6.QtGui import QCloseEvent, QColor, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QGridLayout,
    QHBoxLayout,
    QListWidget,
    QPushButton,
    QSizePolicy,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.loggerfile import Preview, zone_in_title
from brewdesk.services.loggerlines import DELIMITERS, ENCODINGS
from brewdesk.services.loggertext import DateOrder, Degrees
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.readingsfile import (
    OFFERED,
    Choice,
    ReadingsRead,
    examine_readings,
    sample_row,
)
from brewdesk.services.readingsimport import ReadingsImport
from brewdesk.services.records import Batch, Quantity, StoreTrouble
from brewdesk.services.wording.acts import reading_text
from brewdesk.services.wording.loggers import count_text
from brewdesk.services.wording.problems import trouble_words
from brewdesk.services.wording.readingsfile import (
    cell_error_words,
    file_trouble_words,
    read_words,
)
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import FieldRow, announce, choose, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens

_NONE = -1
_TITLE_LETTERS = 28


class ReadingsFileDialog(QDialog):
    """The way from a file to readings of a batch. Nothing is kept before "Keep them"."""

    def __init__(self, desk: Desk, batch: Batch, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._batch = batch
        self._path: Path | None = None
        self._preview: Preview | None = None
        self._choice: Choice | None = None
        self._read: ReadingsRead | None = None
        self._files: QFileDialog | None = None
        self._is_filling = False
        self.setObjectName("readings_file_dialog")
        self.setWindowTitle(self.tr("Read in readings"))
        self.setModal(True)
        # No child: what comes after the dialog is gone must find it, and be heard by nobody.
        self._import = ReadingsImport(
            desk.door, desk.readings, desk.jobs, back_up=desk.back_up_before_import
        )
        self._make()
        self._lay_out()
        self._connect()
        self._show_state()
        self.resize(124 * SPACE, 88 * SPACE)
        self.choose.setFocus()

    # choosing a file

    def choose_file(self) -> None:
        """Ask for the file."""
        self._files = QFileDialog(self, self.tr("Choose the table"))
        self._files.setFileMode(QFileDialog.FileMode.ExistingFile)
        self._files.setNameFilters(
            [self.tr("Tables as text (*.csv *.txt *.tsv)"), self.tr("All files (*)")]
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
            self._preview, self._choice = examine_readings(
                self._path, encoding=encoding, delimiter=delimiter
            )
        except LoggerTrouble as trouble:
            self._preview = self._choice = None
            self._say(file_trouble_words(trouble), "error")
        else:
            self._fill(self._preview, self._choice)
            self._say("")
        self._show_state()

    # making

    def _make(self) -> None:
        self.file_name = plain_label(self.tr("No file chosen yet."), "muted")
        self.file_name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.choose = _button("readings_file_choose", self.tr("Choose a file…"))
        self.empty = plain_label(
            self.tr(
                "Choose a table with a date and readings in each row, saved from your "
                "spreadsheet as CSV. You see how it is understood before anything is kept."
            ),
            "muted",
            wraps=True,
        )
        self.time = _combo("readings_file_time", self.tr("Date and time"))
        self.clock = _combo("readings_file_clock", self.tr("Time of day, if apart"))
        self.columns = {
            quantity: _combo(f"readings_file_{quantity.value}", name_of(quantity))
            for quantity in OFFERED
        }
        self.scale = ChoiceBar(
            ((Degrees.CELSIUS, "°C"), (Degrees.FAHRENHEIT, "°F")), self.tr("Temperatures in")
        )
        self.order = ChoiceBar(
            (
                (DateOrder.DAY, self.tr("day first")),
                (DateOrder.MONTH, self.tr("month first")),
            ),
            self.tr("Dates"),
            may_be_none=True,
        )
        self.zone = _combo("readings_file_zone", self.tr("The times are in"))
        self.encoding = _combo("readings_file_encoding", self.tr("Letters are written as"))
        for name in ENCODINGS:
            self.encoding.addItem(name.upper(), name)
        self.delimiter = _combo("readings_file_delimiter", self.tr("Columns are parted by"))
        names = {
            ";": self.tr("Semicolon ;"),
            "\t": self.tr("Tab"),
            "|": self.tr("Bar |"),
            ",": self.tr("Comma ,"),
        }
        for mark in DELIMITERS:
            self.delimiter.addItem(names[mark], mark)
        self.table = QTableWidget()
        self.table.setObjectName("readings_file_preview")
        self.table.setAccessibleName(self.tr("The first rows, as they are understood"))
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setWordWrap(False)
        self.table.verticalHeader().hide()
        self.table.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        )
        self.table.setStyleSheet(f"QTableView::item {{ padding: 0 {SPACE}px; }}")
        self.message = plain_label("", "", wraps=True)
        self.message.setObjectName("readings_file_message")
        self.errors = QListWidget()
        self.errors.setObjectName("readings_file_errors")
        self.errors.setAccessibleName(self.tr("What was left out, and why"))
        self.errors.setWordWrap(True)
        self.go = _button("readings_file_go", self.tr("Read the file"))
        self.keep = _button("readings_file_keep", self.tr("Keep them"))
        self.back = _button("readings_file_back", self.tr("Read it otherwise"))
        self.leave = _button("readings_file_leave", self.tr("Cancel"))
        for button in (self.go, self.keep):
            set_role(button, "primary")

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(self.choose)
        head.addWidget(self.file_name, 1)
        self.choices = QWidget()
        grid = QGridLayout(self.choices)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE)
        self.order_row = FieldRow(self.tr("In the dates"), self.order, lines=1)
        self.scale_row = FieldRow(self.tr("Temperatures in"), self.scale, lines=0)
        fields: list[QWidget] = [
            FieldRow(self.tr("&Date and time"), self.time, lines=0),
            FieldRow(self.tr("Time of da&y, if apart"), self.clock, lines=0),
            FieldRow(self.tr("The times are &in"), self.zone, lines=0),
            *(FieldRow(name_of(q), combo, lines=0) for q, combo in self.columns.items()),
            FieldRow(self.tr("Columns are &parted by"), self.delimiter, lines=0),
            FieldRow(self.tr("&Letters are written as"), self.encoding, lines=0),
            self.scale_row,
            self.order_row,
        ]
        for number, field in enumerate(fields):
            grid.addWidget(field, number // 3, number % 3)
        for column_number in range(3):
            grid.setColumnStretch(column_number, 1)
        buttons = QDialogButtonBox(self)
        for button in (self.go, self.keep):
            buttons.addButton(button, QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.addButton(self.back, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(self.leave, QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        title = self.tr("Read in readings of {name}").format(name=self._batch.name)
        column.addWidget(plain_label(title, "title", wraps=True))
        column.addLayout(head)
        column.addWidget(self.empty)
        column.addWidget(self.choices)
        column.addWidget(self.table, 1)
        column.addWidget(self.message)
        column.addWidget(self.errors, 1)
        column.addStretch(0)
        column.addWidget(buttons)

    def _connect(self) -> None:
        self.choose.clicked.connect(self.choose_file)
        for combo in (self.time, self.clock, *self.columns.values()):
            combo.currentIndexChanged.connect(self._on_choice)
        self.scale.chosen.connect(self._on_choice)
        self.order.chosen.connect(self._on_choice)
        for combo in (self.encoding, self.delimiter):
            combo.activated.connect(
                lambda: self._look(self.encoding.currentData(), self.delimiter.currentData())
            )
        self.go.clicked.connect(self._on_go)
        self.back.clicked.connect(self._on_back)
        self.keep.clicked.connect(self._on_keep)
        self._import.was_read.connect(self._on_read)
        self._import.was_kept.connect(lambda _count: self.accept())
        self._import.failed.connect(self._on_failed)

    # choices

    def _fill(self, preview: Preview, choice: Choice) -> None:
        layout = choice.layout
        self._is_filling = True
        width = max([len(layout.titles), *(len(row) for row in preview.rows)])
        titles = [
            (layout.titles[n] if n < len(layout.titles) else "")[:_TITLE_LETTERS]
            or self.tr("Column {number}").format(number=n + 1)
            for n in range(width)
        ]
        for combo in (self.time, self.clock, *self.columns.values()):
            combo.clear()
        self.clock.addItem(self.tr("in the same column"), _NONE)
        for combo in self.columns.values():
            combo.addItem(self.tr("not in the table"), _NONE)
        for number, title in enumerate(titles):
            for combo in (self.time, self.clock, *self.columns.values()):
                combo.addItem(title, number)
        choose(self.time, layout.time_columns[0])
        choose(self.clock, layout.time_columns[1] if len(layout.time_columns) == 2 else _NONE)
        found = dict(choice.columns)
        for quantity, combo in self.columns.items():
            choose(combo, found.get(quantity, _NONE))
        self.scale.set_value(layout.scale)
        self.order.set_value(layout.date_order)
        choose(self.encoding, layout.encoding.removesuffix("-sig"))
        choose(self.delimiter, layout.delimiter)
        self.zone.clear()
        named = zone_in_title(layout)
        own = self._desk.clock.zone()
        if named is not None:
            said = self.tr("{zone}, as the file says").format(zone=named.tzname(None))
            self.zone.addItem(said, named)
        else:
            self.zone.addItem(self.tr("your own time ({zone})").format(zone=own), own)
            self.zone.addItem(self.tr("UTC"), UTC)
        self._is_filling = False

    def _on_choice(self) -> None:
        if self._is_filling or self._choice is None or self._preview is None:
            return
        first, apart = self.time.currentData(), self.clock.currentData()
        scale, order = self.scale.value(), self.order.value()
        layout = replace(
            self._choice.layout,
            time_columns=(first,) if apart in (_NONE, first) else (first, apart),
            scale=scale if isinstance(scale, Degrees) else self._choice.layout.scale,
            date_order=order if isinstance(order, DateOrder) else self._choice.layout.date_order,
        )
        columns = tuple(
            (quantity, combo.currentData())
            for quantity, combo in self.columns.items()
            if combo.currentData() != _NONE
        )
        self._choice = Choice(layout=layout, columns=columns)
        self._say("")
        self._show_state()

    # states

    def _show_state(self, *, is_reading: bool = False) -> None:
        has_file, is_read = self._choice is not None, self._read is not None
        self.empty.setVisible(self._path is None)
        self.choices.setVisible(has_file and not is_read)
        self.choices.setEnabled(not is_reading)
        self.table.setVisible(has_file and not is_read)
        self.go.setVisible(not is_read)
        is_clear = self._choice is not None and (
            bool(self._choice.columns) and self._choice.layout.date_order is not None
        )
        self.go.setEnabled(is_clear and not is_reading)
        self.keep.setVisible(is_read)
        self.keep.setEnabled(self._read is not None and bool(self._read.drafts))
        self.back.setVisible(is_read)
        self.errors.setVisible(self._read is not None and bool(self._read.errors))
        self.message.setVisible(bool(self.message.text()))
        if self._preview is None or self._choice is None:
            return
        self.order_row.setVisible(self._preview.is_order_open)
        is_open = self._choice.layout.date_order is None
        self.order_row.set_problem(self.tr("Please choose one.") if is_open else "")
        self.scale_row.setVisible(self.columns[Quantity.TEMPERATURE_C].currentData() != _NONE)
        self._show_rows(self._preview, self._choice)

    def _show_rows(self, preview: Preview, choice: Choice) -> None:
        titles = [self.tr("Read as time"), self.tr("Read as")]
        width = max([len(choice.layout.titles), *(len(row) for row in preview.rows)])
        titles += [
            (choice.layout.titles[n] if n < len(choice.layout.titles) else "") or str(n + 1)
            for n in range(width)
        ]
        self.table.setColumnCount(len(titles))
        self.table.setHorizontalHeaderLabels(titles)
        self.table.setRowCount(len(preview.rows))
        height = QFontMetrics(self.font()).height() + SPACE
        for number, cells in enumerate(preview.rows):
            self.table.setRowHeight(number, height)
            local_s, values, errors = sample_row(cells, choice, choice.layout.first_line + number)
            when = "" if local_s is None else _stamp(local_s)
            said = ", ".join(
                reading_text(
                    {"quantity": v.quantity.value, "value": v.value, "text": v.text},
                    self._desk.quantities.show,
                )
                for v in values
            )
            wrong = "; ".join(map(cell_error_words, errors))
            self._put(number, 0, when, tokens().ink)
            self._put(number, 1, "; ".join(filter(None, (said, wrong))),
                      tokens().danger if errors else tokens().ink)  # fmt: skip
            for column in range(width):
                text = cells[column] if column < len(cells) else ""
                self._put(number, 2 + column, text, tokens().muted)
        self.table.resizeColumnsToContents()
        self.table.setMinimumHeight(4 * height)

    def _put(self, row: int, column: int, text: str, colour: str) -> None:
        item = QTableWidgetItem(" ".join(text.split()))
        item.setForeground(QColor(colour))
        self.table.setItem(row, column, item)

    def _say(self, text: str, role: str = "") -> None:
        set_role(self.message, role)
        self.message.setText(text)
        self.message.setVisible(bool(text))
        announce(self, text)

    # reading and keeping

    def _on_go(self) -> None:
        if self._path is None or self._choice is None:
            return
        zone = self.zone.currentData()
        zone = zone if isinstance(zone, tzinfo) else self._desk.clock.zone()
        self._say("")
        self._show_state(is_reading=True)
        self._import.start(self._batch, self._path, self._choice, zone)

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

    def _on_back(self) -> None:
        self._read = None
        self._say("")
        self._show_state()

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

    def done(self, result: int) -> None:
        """Give up what is being read, then close."""
        self._import.cancel()
        super().done(result)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Give up what is being read."""
        self._import.cancel()
        super().closeEvent(event)


def _stamp(local_s: int) -> str:
    at = datetime.fromtimestamp(local_s, UTC)  # the file's own clock, as it shows
    date = QLocale().toString(QDate(at.year, at.month, at.day), "ddd d MMM yyyy")
    clock = QLocale().toString(QTime(at.hour, at.minute), QLocale.FormatType.ShortFormat)
    return f"{date}, {clock}"


def _button(name: str, text: str) -> QPushButton:
    button = QPushButton(text)
    button.setObjectName(name)
    button.setAutoDefault(False)
    return button


def _combo(name: str, spoken: str) -> QComboBox:
    combo = QComboBox()
    combo.setObjectName(name)
    combo.setAccessibleName(spoken)
    combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    combo.setMinimumContentsLength(12)
    return combo
