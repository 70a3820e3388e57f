"""The process log in words: fit to be shown to an inspector, and saying what it does not know."""

from __future__ import annotations

from datetime import tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.paperdoc import Block, Document, Grid, Heading, Para
from brewdesk.services.processlog import LoggedBatch, ProcessLog
from brewdesk.services.safetylog import SafetyEntry, SafetyKind
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.batchreport import language
from brewdesk.services.wording.safetylog import (
    entry_words,
    full_date,
    full_stamp,
    kind_words,
    ph_words,
    safe_ph_cell,
)
from brewdesk.services.wording.stages import name_of
from culturecore import safety
from culturecore.units import Kind

_OVERRIDES = frozenset(
    {SafetyKind.STEP_OVERRIDE, SafetyKind.LIQUID_OVERRIDE, SafetyKind.BOTTLE_OVERRIDE}
)
_LOOKS = frozenset({SafetyKind.LOOK, SafetyKind.SUSPICION, SafetyKind.CLEARED})
_DISCARDS = frozenset({SafetyKind.DISCARD, SafetyKind.BOTTLES_DISCARDED})


def _t(text: str) -> str:
    return QCoreApplication.translate("ProcessLog", text)


def process_document(log: ProcessLog, show: Show, zone: tzinfo) -> Document:
    """Put a log into words."""
    limit = number_text(safety.limit("ph_finished_max"), 1)
    deadline = number_text(safety.limit("ph_deadline_days"), 0)
    blocks: list[Block] = [
        Para(
            text=_t(
                "Batches under way in this time, when their pH was first read at or below "
                "{limit} (wanted by day {day}, counted from the starter), calibrations of the "
                "meter, warnings that were overridden with the reason given, looks and discards."
            ).format(limit=limit, day=deadline)
        ),
        Heading(text=_t("Batches")),
        _batches(log, limit, zone),
        Para(
            text=_t(
                "Start pH: read within a day of the start. Day to pH {limit}: the day of the "
                "first reading that shows it; it may have been earlier. “Not shown” means that "
                "no reading shows it. ± is one standard uncertainty."
            ).format(limit=limit),
            is_muted=True,
        ),
        Heading(text=_t("Calibrations")),
        _calibrations(log, show, zone),
    ]
    for title, kinds, nothing in (
        (_t("Warnings overridden"), _OVERRIDES, _t("No warning was overridden.")),
        (_t("Looks and suspicions"), _LOOKS, _t("No look is entered.")),
        (_t("Discards"), _DISCARDS, _t("Nothing was discarded.")),
    ):
        blocks.append(Heading(text=title))
        found = [entry for entry in log.entries if entry.kind in kinds]
        blocks.append(_entries(found, show, zone) if found else Para(text=nothing, is_muted=True))
    title = _t("{first} to {last}").format(
        first=full_date(log.first_at, zone), last=full_date(log.last_at, zone)
    )
    return Document(
        kind=_t("Process log"),
        title=title,
        subtitle=_t("Invented data, to look at only.") if log.is_demo else "",
        made_on=full_date(log.now, zone),
        blocks=tuple(blocks),
        footer=_t(
            "Made from the maker's own entries; brewdesk cannot check them, and entries can be "
            "corrected later. Local rules and licensed practice come first."
        ),
        page_words=_t("Page {page} of {pages}"),
        is_one_page=False,
        language=language(),
    )


def _batches(log: ProcessLog, limit: str, zone: tzinfo) -> Grid | Para:
    if not log.batches:
        return Para(text=_t("No batch was under way in this time."), is_muted=True)
    return Grid(
        headers=(
            _t("Batch"),
            _t("Vessel, culture"),
            _t("Begun"),
            _t("Start pH"),
            _t("Day to pH {limit}").format(limit=limit),
            _t("pH read then"),
            _t("How it ended"),
        ),
        rows=tuple(_batch_row(each, zone) for each in log.batches),
        shares=(0.15, 0.18, 0.13, 0.135, 0.1, 0.135, 0.17),
    )


def _batch_row(logged: LoggedBatch, zone: tzinfo) -> tuple[str, ...]:
    batch, story = logged.batch, logged.safe_ph
    place = ", ".join(part for part in (logged.vessel_name, logged.culture_name) if part)
    ended = name_of(batch.stage)
    if batch.ended_at is not None:
        ended = _t("{how} {date}").format(how=ended, date=full_date(batch.ended_at, zone))
    return (
        batch.name,
        place,
        "–" if batch.started_at is None else full_date(batch.started_at, zone),
        ph_words(story.start),
        safe_ph_cell(story),
        ph_words(story.reached),
        ended,
    )


def _calibrations(log: ProcessLog, show: Show, zone: tzinfo) -> Grid | Para:
    if not log.calibrations:
        return Para(text=_t("No calibration is entered for this time."), is_muted=True)
    rows = tuple(
        (
            full_stamp(each.at, zone),
            each.meter,
            each.buffers,
            "" if each.slope_percent is None
            else _t("{number} %").format(number=number_text(each.slope_percent, 1)),
            "" if each.offset_mv is None
            else _t("{number} mV").format(number=number_text(each.offset_mv, 1)),
            "" if each.temperature_c is None else show(each.temperature_c, Kind.TEMPERATURE),
            "; ".join(part for part in (each.verdict, each.text) if part),
        )
        for each in log.calibrations
    )  # fmt: skip
    return Grid(
        headers=(
            _t("When"), _t("Meter"), _t("Buffers"), _t("Slope"), _t("Offset"), _t("At"),
            _t("Verdict, words"),
        ),
        rows=rows,
        shares=(0.2, 0.16, 0.16, 0.09, 0.1, 0.09, 0.2),
        numbers=frozenset({3, 4, 5}),
    )  # fmt: skip


def _entries(entries: list[SafetyEntry], show: Show, zone: tzinfo) -> Grid:
    rows = tuple(
        (full_stamp(entry.at, zone), entry.name, kind_words(entry), entry_words(entry, show))
        for entry in entries
    )
    return Grid(
        headers=(_t("When"), _t("Batch or culture"), _t("What"), _t("In the maker's words")),
        rows=rows,
        shares=(0.2, 0.2, 0.18, 0.42),
    )
