"""Loggers' files in words: what they held, which rows were left out, what to do."""

from __future__ import annotations

from datetime import tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.loggertrouble import LoggerTrouble, RowError
from brewdesk.services.wording.amounts import Show
from brewdesk.services.wording.moments import date_words
from culturecore.units import Kind

if TYPE_CHECKING:
    from brewdesk.services.loggerread import LoggerRead


def _t(text: str) -> str:
    return QCoreApplication.translate("Loggers", text)


def count_text(count: int) -> str:
    """Write a count as the locale groups it."""
    return QLocale().toString(count)


def logger_trouble_words(trouble: LoggerTrouble) -> str:
    """Say why a file cannot be read, and what to do."""
    return {
        "unreadable": _t("This file cannot be opened. Please check that it is still there."),
        "empty_file": _t("This file is empty. Please export it from the logger once more."),
        "no_table": _t(
            "No table of times and temperatures was found in this file. Please choose the "
            "logger's export as text (CSV)."
        ),
        "order_unknown": _t(
            "The dates can be read in two ways. Please say whether the day or the month comes "
            "first."
        ),
        "too_many": _t(
            "This file has more than ten million rows. Please export a shorter time from the "
            "logger."
        ),
        "cancelled": _t("Stopped. Nothing was kept."),
        "nothing_read": _t(
            "Not one row could be read this way. Please check the columns and the dates."
        ),
    }[trouble.code]


def row_error_words(error: RowError) -> str:
    """Say why one row was left out: "Line 12: ..."."""
    why = {
        "empty_row": _t("the row is empty"),
        "too_few_columns": _t("the row has too few columns"),
        "time_unreadable": _t("the time cannot be read"),
        "time_impossible": _t("there is no such time of day"),
        "date_impossible": _t("there is no such date"),
        "time_ahead": _t("the time is still to come"),
        "temperature_missing": _t("there is no temperature"),
        "temperature_unreadable": _t("the temperature is no number"),
        "temperature_not_finite": _t("the temperature is no number that can be measured"),
        "temperature_absurd": _t("no room is that cold or warm"),
    }[error.code]
    if not error.text.strip():
        return _t("Line {line}: {why}").format(line=count_text(error.line), why=why)
    return _t("Line {line}: {why} ({text})").format(
        line=count_text(error.line), why=why, text=" ".join(error.text.split())
    )


def read_words(read: LoggerRead, zone: tzinfo, show: Show) -> str:
    """Say what a file held, in a few sentences."""
    said = [
        _t(
            "{count} temperatures from {first} to {last}, between {least} and {most}, on average "
            "{mean}."
        ).format(
            count=count_text(read.packed.count),
            first=date_words(read.first_at, zone),
            last=date_words(read.last_at, zone),
            least=show(read.least_c, Kind.TEMPERATURE),
            most=show(read.most_c, Kind.TEMPERATURE),
            mean=show(read.mean_c, Kind.TEMPERATURE),
        )
    ]
    if read.error_count == 1:
        said.append(_t("One row could not be read and is left out."))
    elif read.error_count:
        said.append(
            _t("{count} rows could not be read and are left out.").format(
                count=count_text(read.error_count)
            )
        )
    if read.doubled:
        said.append(
            _t("Times that came more than once count once: {count}.").format(
                count=count_text(read.doubled)
            )
        )
    if read.twice:
        said.append(
            _t(
                "Times that the end of summer time repeats: {count}. The order of the rows says "
                "which is which."
            ).format(count=count_text(read.twice))
        )
    if read.left_out:
        said.append(
            _t(
                "Times that summer time leaves out: {count}. They were moved on by the missing "
                "hour; perhaps the logger's clock does not follow summer time."
            ).format(count=count_text(read.left_out))
        )
    return " ".join(said)
