"""The sentences of a time line that no act says, and its days."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, timedelta, tzinfo

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from brewdesk.services.subjects import SubjectKind
from brewdesk.services.wording.amounts import Show, number_text, plain
from brewdesk.services.wording.moments import local, stamp_words
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Care, Culture, TemperatureLog, Transfer
from culturecore.units import Kind


def _t(text: str) -> str:
    return QCoreApplication.translate("Timeline", text)


def subject_kind_words(kind: SubjectKind) -> str:
    """Name what a time line is of."""
    return {
        SubjectKind.BATCH: _t("Batch"),
        SubjectKind.CULTURE: _t("Culture"),
        SubjectKind.VESSEL: _t("Vessel"),
        SubjectKind.PLACE: _t("Place"),
    }[kind]


def heading_words(day: date, today: date) -> str:
    """Name a day: "Today", "Yesterday", "Thursday 3 December 2026"."""
    if day == today:
        return _t("Today")
    if day == today - timedelta(days=1):
        return _t("Yesterday")
    return QLocale().toString(QDate(day.year, day.month, day.day), _t("dddd d MMMM yyyy"))


def full_date_words(moment: datetime, zone: tzinfo) -> str:
    """Write a date with its year, short: "3 Dec 2026"."""
    day = local(moment, zone).date()
    return QLocale().toString(QDate(day.year, day.month, day.day), _t("d MMM yyyy"))


def entered_words(entered_at: datetime, zone: tzinfo) -> str:
    """Say that something was written down later than it happened."""
    return _t("entered {when}").format(when=stamp_words(entered_at, zone))


def with_words(sentence: str, words: Sequence[str]) -> str:
    """Put the maker's own words behind a sentence that does not hold them yet."""
    new = [word for word in dict.fromkeys(words) if word not in sentence]
    if not new:
        return sentence
    return _t("{sentence}: {words}").format(
        sentence=sentence, words=" ".join(_t("“{words}”").format(words=word) for word in new)
    )


def born_words(culture: Culture) -> str:
    """Say how a culture came to be."""
    return _t("{name} came to be: {origin}").format(
        name=culture.name, origin=name_of(culture.origin)
    )


def care_words(care: Care, show: Show = plain) -> str:
    """Say one piece of care: "Fed, 0.2 L", "pH 3.10", with its words."""
    parts = [name_of(care.kind)]
    if care.ph is not None:
        parts = [_t("pH {ph}").format(ph=show(care.ph, Kind.PH))]
    if care.volume_l is not None:
        parts.append(show(care.volume_l, Kind.VOLUME))
    if care.look is not None:
        parts.append(name_of(care.look))
    return with_words(", ".join(parts), [care.text] if care.text else [])


def transfer_words(transfer: Transfer, show: Show = plain) -> str:
    """Say one transfer: "Drawn off, 0.5 L", with its note."""
    said = _t("{what}, {volume}").format(
        what=name_of(transfer.kind), volume=show(transfer.volume_l, Kind.VOLUME)
    )
    return with_words(said, [transfer.note] if transfer.note else [])


def move_words(batch: str, old: str, new: str) -> str:
    """Say a pouring over."""
    return _t("{batch} poured over from {old} into {new}").format(batch=batch, old=old, new=new)


def photo_words(caption: str) -> str:
    """Say that a photo was taken, with its caption."""
    return with_words(_t("Photo"), [caption] if caption else [])


def missed_words(title: str) -> str:
    """Say that a reminder came due and was not ticked off."""
    return _t("Came due, not ticked off: {reminder}").format(reminder=title)


def temperature_words(temperature_c: float, show: Show = plain) -> str:
    """Say a temperature read in a place."""
    return _t("{temperature} read").format(temperature=show(temperature_c, Kind.TEMPERATURE))


def log_words(log: TemperatureLog) -> str:
    """Say that a logger's file tells of the time up to here."""
    return _t("{count} temperatures in {file} end here").format(
        count=number_text(log.sample_count, 0), file=log.name
    )


def count_words(shown: int, total: int) -> str:
    """Say how much of a time line is shown."""
    if total == 1:
        return _t("1 line")
    if shown < total:
        return _t("The newest {shown} of {total} lines").format(
            shown=number_text(shown, 0), total=number_text(total, 0)
        )
    return _t("{total} lines").format(total=number_text(total, 0))
