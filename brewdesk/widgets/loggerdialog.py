"""Read a logger's file into the log of a place: look at it, read it, keep it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QProgressBar,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.loggerfile import examine, sampled
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
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.loggerchoices import LoggerChoices
from brewdesk.widgets.loggertable import LoggerTable
from brewdesk.widgets.tablefiledialog import TableFileDialog, TableFileWords
from brewdesk.widgets.theme import SPACE

_HUNDRED = 100


class LoggerDialog(TableFileDialog):
    """The way from a file to an entry in a place's log."""

    choices: LoggerChoices

    def __init__(self, desk: Desk, place: Place, parent: QWidget | None = None) -> None:
        self._desk = desk
        self._place = place
        self._has_file = False
        self._read: LoggerRead | None = None
        self._import = LogImport(
            desk.place_log, desk.jobs, desk.clock, back_up=desk.back_up_before_import
        )
        choices = LoggerChoices(desk.clock.zone(), desk.clock.now())
        super().__init__("logger", _words(place), self._import, choices, parent)
        self._make()
        self._lay_out((self._scrolled(), 1))
        self._connect()
        self._show_state()
        self._fit()
        self.choose.setFocus()

    def _look(self, encoding: str | None, delimiter: str | None) -> None:
        assert self._path is not None
        self._read = None
        try:
            preview = examine(self._path, encoding=encoding, delimiter=delimiter)
        except LoggerTrouble as trouble:
            self._has_file = False
            self._say(logger_trouble_words(trouble), "error")
        else:
            self._has_file = True
            self.choices.set_preview(preview)
            self._say("")
        self._show_state()

    # making

    def _make(self) -> None:
        self.table = LoggerTable(self._desk.quantities)
        self.bar = QProgressBar()
        self.bar.setObjectName("logger_progress")
        self.bar.setRange(0, _HUNDRED)
        self.bar.setAccessibleName(self.tr("How much of the file has been read"))
        self.stop = self._button("stop", self.tr("Stop"))
        self.errors_label = plain_label("", "label", wraps=True)
        self.progress = QWidget()
        line = QHBoxLayout(self.progress)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(2 * SPACE)
        line.addWidget(self.bar, 1)
        line.addWidget(self.stop)

    def _scrolled(self) -> QWidget:
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
        return area

    def _connect(self) -> None:
        self.stop.clicked.connect(self._import.cancel)
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
        is_read = self._read is not None
        errors = self._read.errors if self._read is not None else ()
        layout = self.choices.layout_now()
        self._show_parts(
            has_file=self._has_file,
            is_read=is_read,
            is_clear=self._has_file and layout is not None and layout.date_order is not None,
            is_reading=is_reading,
            has_errors=bool(errors),
        )
        self.table.setVisible(self._has_file and not is_read)
        self.progress.setVisible(is_reading)
        self.errors_label.setVisible(bool(errors))
        if self._has_file and not is_read:
            self._show_rows()

    def _show_rows(self) -> None:
        layout, preview = self.choices.layout_now(), self.choices.preview
        if preview is None or layout is None:
            return
        self.table.show_rows(sampled(preview, layout), layout, layout.first_line)
        if preview.is_order_open:
            problem = "" if layout.date_order is not None else self.tr("Please choose one.")
            self.choices.order_row.set_problem(problem)

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

    def _forget_read(self) -> None:
        self._read = None

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


def _words(place: Place) -> TableFileWords:
    return TableFileWords(
        window=_t("Read a logger's file"),
        title=_t("Read a logger's file for {name}").format(name=place.name),
        choose=_t("Choose the logger's file"),
        endings="*.csv *.txt *.tsv *.log *.dat",
        empty=_t(
            "Choose the table that your temperature logger exported: text with a time and a "
            "temperature in each row. How it is written is found out, and shown before "
            "anything is kept."
        ),
        errors=_t("Rows that could not be read"),
    )


def _t(text: str) -> str:
    return QCoreApplication.translate("LoggerDialog", text)
