"""Safety entries and the story of the pH in words, for reports."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from brewdesk.services.safetylog import SafePh, SafePhStory, SafetyEntry, SafetyKind
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.moments import local, time_words
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Reading
from culturecore.units import Kind


def _t(text: str) -> str:
    return QCoreApplication.translate("SafetyLog", text)


def full_date(moment: datetime, zone: tzinfo) -> str:
    """Return a date with its year: a report is read later."""
    day = local(moment, zone).date()
    return QLocale().toString(QDate(day.year, day.month, day.day), _t("d MMM yyyy"))


def full_stamp(moment: datetime, zone: tzinfo) -> str:
    """Return date and time of day."""
    return _t("{date}, {time}").format(date=full_date(moment, zone), time=time_words(moment, zone))


def ph_words(reading: Reading | None) -> str:
    """Return a pH with its uncertainty: "4.12 ± 0.05"; a dash where none was read."""
    if reading is None or reading.value is None:
        return "–"
    if reading.sd is None:
        return number_text(reading.value, 2)
    return _t("{value} ± {sd}").format(
        value=number_text(reading.value, 2), sd=number_text(reading.sd, 2)
    )


def safe_ph_words(story: SafePhStory) -> str:
    """Say when the pH was first read at or below its limit."""
    day = "" if story.day is None else number_text(story.day, 1)
    limit, most = number_text(story.limit_ph, 1), number_text(story.deadline_days, 0)
    return {
        SafePh.IN_TIME: _t("pH {limit} or below was first read on day {day}."),
        SafePh.LATE: _t("pH {limit} or below was first read on day {day}, later than day {most}."),
        SafePh.PENDING: _t("pH {limit} or below has not been read yet; day {most} is not over."),
        SafePh.NOT_SHOWN: _t("No reading shows pH {limit} or below."),
    }[story.code].format(limit=limit, day=day, most=most)


def safe_ph_cell(story: SafePhStory) -> str:
    """Say the same in a cell of a table."""
    if story.day is None:
        return _t("not yet") if story.code is SafePh.PENDING else _t("not shown")
    day = number_text(story.day, 1)
    return day if story.code is SafePh.IN_TIME else _t("{day} (late)").format(day=day)


def kind_words(entry: SafetyEntry) -> str:
    """Name what an entry tells of."""
    return {
        SafetyKind.STEP_OVERRIDE: _t("Warning overridden"),
        SafetyKind.LIQUID_OVERRIDE: _t("Warning overridden"),
        SafetyKind.BOTTLE_OVERRIDE: _t("Warning overridden"),
        SafetyKind.LOOK: _t("Look"),
        SafetyKind.DISCARD: _t("Discarded"),
        SafetyKind.BOTTLES_DISCARDED: _t("Bottles discarded"),
        SafetyKind.SUSPICION: _t("Under suspicion"),
        SafetyKind.CLEARED: _t("Suspicion cleared"),
    }[entry.kind]


def entry_words(entry: SafetyEntry, show: Show) -> str:
    """Say what happened, with the reason in the maker's own words."""
    parts: list[str] = []
    if entry.step is not None:
        parts.append(name_of(entry.step))
    if entry.kind is SafetyKind.LIQUID_OVERRIDE:
        parts.append(_t("Liquid poured in"))
    if entry.look is not None:
        parts.append(name_of(entry.look))
    if entry.temperature_c is not None:
        parts.append(show(entry.temperature_c, Kind.TEMPERATURE))
    if entry.reason:
        parts.append(_t("“{reason}”").format(reason=entry.reason))
    return ", ".join(parts) or "–"
