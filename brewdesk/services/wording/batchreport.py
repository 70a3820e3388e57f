"""A batch's report in words: one page with its curve, readings, run sheet and safety log."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta, tzinfo

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.batchreport import BatchFacts
from brewdesk.services.curvedrawing import curve_drawing
from brewdesk.services.curveview import CurveView
from brewdesk.services.paperdoc import Block, Document, Facts, Grid, Halves, Heading, Para
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.safetylog import (
    entry_words,
    full_date,
    full_stamp,
    kind_words,
    ph_words,
    safe_ph_words,
)
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Batch, Reading, Step
from culturecore.stages import Look, Quantity, TasteMark
from culturecore.units import Kind

_READINGS_ON_PAPER = 14
_SAFETY_ON_PAPER = 8
_NUMBERS = (
    (Quantity.PH, Kind.PH),
    (Quantity.TEMPERATURE_C, Kind.TEMPERATURE),
    (Quantity.BRIX, Kind.BRIX),
    (Quantity.SPECIFIC_GRAVITY, Kind.GRAVITY),
    (Quantity.TA_G_PER_L, Kind.ACIDITY),
)


def _t(text: str) -> str:
    return QCoreApplication.translate("BatchReport", text)


def language() -> str:
    """Return the language of the words, as HTML names it."""
    return QLocale().bcp47Name().partition("-")[0] or "en"


def batch_report(facts: BatchFacts, show: Show, zone: tzinfo) -> Document:
    """Put the facts of a batch into the words of its report."""
    batch = facts.batch
    subtitle = [facts.vessel_name, facts.culture_name, name_of(batch.stage)]
    blocks: list[Block] = [Facts(pairs=_pairs(facts, show, zone))]
    if facts.view is not None and facts.view.points:
        blocks.append(
            curve_drawing(
                _as_told(facts.view, is_over=not batch.stage.is_live),
                day_label=_t("day"),
                ph_label=_t("pH"),
                limit_label=_t("at most pH {limit} from day {day} on").format(
                    limit=number_text(facts.safe_ph.limit_ph, 1),
                    day=number_text(facts.safe_ph.deadline_days, 0),
                ),
                is_over=not batch.stage.is_live,
            )
        )
    blocks.append(Heading(text=_t("Readings")))
    blocks.append(_readings(facts, show, zone))
    blocks.append(
        Halves(
            left=(Heading(text=_t("What went in")), _amounts(batch, show)),
            right=(Heading(text=_t("Run sheet")), _steps(facts.steps, show, zone)),
        )
    )
    blocks += [Heading(text=_t("Safety log")), Para(text=safe_ph_words(facts.safe_ph))]
    if facts.safety:
        blocks.append(_safety(facts, show, zone))
    else:
        blocks.append(Para(text=_t("No warning was overridden, and no look is entered.")))
    return Document(
        kind=_t("Batch report"),
        title=batch.name,
        subtitle=" · ".join(part for part in subtitle if part),
        made_on=full_date(facts.now, zone),
        blocks=tuple(blocks),
        footer=_t(
            "Made from the maker's own entries; brewdesk cannot check them. Readings have "
            "their uncertainty, forecasts are no guarantee, and local rules come first."
        ),
        page_words=_t("Page {page} of {pages}"),
        is_one_page=True,
        language=language(),
    )


def _as_told(view: CurveView, *, is_over: bool) -> CurveView:
    """Leave out what was expected of a batch that is over, and what is being worked out."""
    if not is_over and view.forecast is None:  # paper does not wait for it
        return replace(view, text_summary=_t("What was read so far; without a forecast."))
    if not is_over:
        return view
    return replace(view, text_summary=_t("It is over; this is what was read until it ended."))


def _pairs(facts: BatchFacts, show: Show, zone: tzinfo) -> tuple[tuple[str, str], ...]:
    batch = facts.batch
    taken = [r for r in facts.readings if r.quantity is Quantity.PH and r.value is not None]
    pairs = [
        (_t("Begun"), "–" if batch.started_at is None else full_stamp(batch.started_at, zone)),
        (_t("Start pH read"), ph_words(facts.safe_ph.start)),
        (
            _t("Start pH reckoned"),
            _t("{value} ({low} to {high})").format(
                value=number_text(batch.start_ph, 2),
                low=number_text(batch.start_ph_low, 2),
                high=number_text(batch.start_ph_high, 2),
            ),
        ),
        (_t("Last pH"), ph_words(taken[-1] if taken else None)),
    ]
    if batch.ended_at is not None:
        ended = _t("{date}: {reason}") if batch.end_reason else "{date}"
        words = ended.format(date=full_date(batch.ended_at, zone), reason=batch.end_reason)
        pairs.append((name_of(batch.stage), words))
    pairs.append((_t("Filled to"), show(batch.fill_volume_l, Kind.VOLUME)))
    return tuple(pairs)


def _readings(facts: BatchFacts, show: Show, zone: tzinfo) -> Grid | Para:
    if not facts.readings:
        return Para(text=_t("Nothing was read of this batch."), is_muted=True)
    used = [each for each in _NUMBERS if any(r.quantity is each[0] for r in facts.readings)]
    moments: dict[datetime, list[Reading]] = {}
    for reading in facts.readings:
        moments.setdefault(reading.at, []).append(reading)
    rows = []
    for at, together in moments.items():
        numbers = [
            next((show(r.value, kind) for r in together
                  if r.quantity is quantity and r.value is not None), "")
            for quantity, kind in used
        ]  # fmt: skip
        words = "; ".join(filter(None, map(_said, together)))
        rows.append((full_stamp(at, zone), _day(facts.batch, at), *numbers, words))
    number_share = 0.12
    share = 1.0 - 0.23 - 0.06 - number_share * len(used)
    return Grid(
        headers=(_t("When"), _t("Day"), *(name_of(quantity) for quantity, _ in used), _t("Words")),
        rows=tuple(rows),
        shares=(0.23, 0.06, *(number_share,) * len(used), share),
        numbers=frozenset(range(1, 2 + len(used))),
        most_on_paper=_READINGS_ON_PAPER,
        thinned=_t(
            "Thinned out to {shown} of {count} rows, spread over the whole time, so that the "
            "report is one page. The curve has every pH; the HTML report has every row."
        ),
    )


def _said(reading: Reading) -> str:
    if reading.quantity is Quantity.NOTE:
        return reading.text
    if reading.quantity is Quantity.TASTE:
        return _t("Taste: {taste}").format(taste=name_of(TasteMark(reading.text)))
    if reading.quantity is Quantity.LOOK:
        return _t("Look: {found}").format(found=name_of(Look(reading.text)))
    if reading.quantity is Quantity.PELLICLE_MM and reading.value is not None:
        return _t("Pellicle {number} mm").format(number=number_text(reading.value, 1))
    return reading.text


def _day(batch: Batch, at: datetime) -> str:
    if batch.started_at is None:
        return ""
    return number_text((at - batch.started_at) / timedelta(days=1), 1)


def _amounts(batch: Batch, show: Show) -> Grid:
    rows = (
        (_t("Tea ({kind})").format(kind=name_of(batch.tea_kind)), show(batch.tea_g, Kind.MASS)),
        (_t("Sugar"), show(batch.sugar_g, Kind.MASS)),
        (_t("Hot water"), show(batch.hot_water_g, Kind.MASS)),
        (_t("Cold water"), show(batch.cold_water_g, Kind.MASS)),
        (_t("Starter liquid"), show(batch.starter_volume_l, Kind.VOLUME)),
        (_t("pH of the starter"), "–" if batch.starter_ph is None
         else number_text(batch.starter_ph, 2)),
        (_t("Culture in at most at"), show(batch.culture_limit_c, Kind.TEMPERATURE)),
    )  # fmt: skip
    return Grid(
        headers=(_t("Part"), _t("Amount")), rows=rows, shares=(0.62, 0.38), numbers=frozenset({1})
    )


def _steps(steps: Sequence[Step], show: Show, zone: tzinfo) -> Grid | Para:
    if not steps:
        return Para(text=_t("There is no run sheet of this batch."), is_muted=True)
    rows = tuple(
        (
            name_of(step.kind),
            "–" if step.finished_at is None else full_stamp(step.finished_at, zone),
            "" if step.temperature_c is None else show(step.temperature_c, Kind.TEMPERATURE),
        )
        for step in steps
    )
    return Grid(
        headers=(_t("Step"), _t("Done"), _t("At")),
        rows=rows,
        shares=(0.42, 0.40, 0.18),
        numbers=frozenset({2}),
    )


def _safety(facts: BatchFacts, show: Show, zone: tzinfo) -> Grid:
    rows = tuple(
        (full_stamp(entry.at, zone), kind_words(entry), entry_words(entry, show))
        for entry in facts.safety
    )
    return Grid(
        headers=(_t("When"), _t("What"), _t("In the maker's words")),
        rows=rows,
        shares=(0.23, 0.21, 0.56),
        most_on_paper=_SAFETY_ON_PAPER,
        thinned=_t(
            "Only {shown} of {count} entries fit on one page. The process log and the HTML "
            "report have them all."
        ),
    )
