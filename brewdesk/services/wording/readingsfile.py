"""Readings from a spreadsheet in words: what it held, what was left out, and why."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import tzinfo
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.loggertrouble import ROW_CODES, LoggerTrouble, RowError
from brewdesk.services.wording.amounts import Show
from brewdesk.services.wording.loggers import count_text, logger_trouble_words, row_error_words
from brewdesk.services.wording.moments import date_words

if TYPE_CHECKING:
    from brewdesk.services.readingsfile import CellError, ReadingsRead


def _t(text: str) -> str:
    return QCoreApplication.translate("ReadingsFile", text)


def import_readings(facts: Mapping[str, Any], _show: Show) -> str:
    """Say what an import did: "12 readings on Tall jar from diary.csv"."""
    if facts["count"] == 1:
        return _t("One reading on {vessel} from {file}").format(
            vessel=facts["vessel"], file=facts["file"]
        )
    return _t("{count} readings on {vessel} from {file}").format(
        count=count_text(facts["count"]), vessel=facts["vessel"], file=facts["file"]
    )


def file_trouble_words(trouble: LoggerTrouble) -> str:
    """Say why a spreadsheet's file cannot be read, and what to do."""
    own = {
        "empty_file": _t("This file is empty. Please save the table as CSV once more."),
        "no_table": _t(
            "No table with a date and a number in each row was found in this file. Please save "
            "the table as CSV and choose that file."
        ),
        "too_many": _t("More than 2000 readings at once are too many. Please split the file."),
        "nothing_read": _t(
            "Not one value could be read this way. Please check the columns and the dates."
        ),
    }
    return own.get(trouble.code) or logger_trouble_words(trouble)


def cell_error_words(error: CellError) -> str:
    """Say why one value or row was left out: "Line 12, pH: ..."."""
    if error.code in ROW_CODES and not error.title:
        return row_error_words(RowError(error.line, error.code, error.text))
    why = {
        "value_unreadable": _t("this is no amount that can be read"),
        "value_absurd": _t("no reading is that low or high"),
        "note_too_long": _t("the note is too long"),
        "time_ahead": _t("the time is still to come"),
        "before_start": _t("it is more than a day before the batch began"),
    }[error.code]
    return _t("Line {line}, {column}: {why} ({text})").format(
        line=count_text(error.line),
        column=error.title,
        why=why,
        text=" ".join(error.text.split()),
    )


def read_words(read: ReadingsRead, zone: tzinfo) -> str:
    """Say what a file held, in a few sentences."""
    said = []
    if read.first_at is not None and read.last_at is not None:
        said.append(
            _t("New readings: {count}, from {first} to {last}.").format(
                count=count_text(len(read.drafts)),
                first=date_words(read.first_at, zone),
                last=date_words(read.last_at, zone),
            )
        )
    else:
        said.append(_t("Nothing new is in this file."))
    if read.known:
        said.append(
            _t("Already there at the same time, and skipped: {count}.").format(
                count=count_text(read.known)
            )
        )
    if read.doubled:
        said.append(
            _t("Twice in the file at the same time, the first one counts: {count}.").format(
                count=count_text(read.doubled)
            )
        )
    if read.error_count:
        said.append(_t("Left out: {count}.").format(count=count_text(read.error_count)))
    if read.twice:
        said.append(
            _t("Times that the end of summer time repeats: {count}.").format(
                count=count_text(read.twice)
            )
        )
    if read.left_out:
        said.append(
            _t("Times that summer time leaves out, moved on by an hour: {count}.").format(
                count=count_text(read.left_out)
            )
        )
    return " ".join(said)
