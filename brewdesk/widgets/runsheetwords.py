"""The words of a run sheet: a plan told as steps, with what to mind."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from brewdesk.printing.runsheetpainter import RunSheet, RunStep
from brewdesk.services.amounts import AmountRow, Part, amount_rows, ph_marks
from brewdesk.services.brewing import STEEP_S
from brewdesk.services.desk import Desk
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Culture, Kind, Plan, StepKind, Vessel, Wish
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.measures import (
    mass_words,
    measure_words,
    ounce_words,
    part_name,
    volume_words,
)
from brewdesk.services.wording.moments import local
from brewdesk.services.wording.stages import name_of


def _t(text: str) -> str:
    return QCoreApplication.translate("RunSheet", text)


def run_sheet(
    quantities: Quantities,
    *,
    name: str,
    vessel: Vessel,
    culture: Culture | None,
    wish: Wish,
    plan: Plan,
    now: datetime,
    zone: tzinfo,
) -> RunSheet:
    """Put a plan into the words of its run sheet."""
    rows = amount_rows(plan, wish)
    marks = ph_marks()
    limit = quantities.show(wish.culture_limit_c, Kind.TEMPERATURE)
    return RunSheet(
        kind=_t("Run sheet"),
        title=name,
        vessel=_vessel_words(quantities, vessel, culture, wish),
        made_on=_date_words(now, zone),
        headers=(_t("Part"), _t("g"), _t("oz"), _t("mL"), _t("Kitchen measure")),
        amounts=tuple(_cells(row) for row in rows if row.part is not Part.TOTAL),
        total=_cells(rows[-1]),
        facts=(
            (_t("Start pH wanted"), number_text(wish.target_start_ph, 2)),
            (
                _t("Start pH estimated"),
                _t("{value} ({low} to {high})").format(
                    value=number_text(plan.start_ph.value, 2),
                    low=number_text(plan.start_ph.low, 2),
                    high=number_text(plan.start_ph.high, 2),
                ),
            ),
            (
                _t("Once mixed, estimated"),
                quantities.show(plan.mixed_temperature_c.value, Kind.TEMPERATURE),
            ),
            (_t("Starter and culture go in at"), _t("{limit} or below").format(limit=limit)),
        ),
        steps_title=_t("Steps"),
        time_label=_t("Time"),
        steps=_steps(rows, limit, has_culture=culture is not None),
        closing=_t("pH by day {day}, counted from the starter ({most} or below):").format(
            day=marks.deadline_days, most=number_text(marks.most_by_deadline, 1)
        ),
        cautions_title=_t("Mind"),
        cautions=_cautions(),
        footer=_t("All figures are estimates for 20 °C. They are no guarantee."),
    )


def run_sheet_of(desk: Desk, batch_id: int) -> RunSheet:
    """Put a batch that was planned into the words of its run sheet.

    Raises
    ------
    StoreTrouble
        If there is no such batch.
    """
    batch = desk.batches.get(batch_id)
    wish = desk.batches.wish_of(batch)
    return run_sheet(
        desk.quantities,
        name=batch.name,
        vessel=desk.vessels.get(batch.vessel_id),
        culture=None if batch.culture_id is None else desk.cultures.get(batch.culture_id),
        wish=wish,
        plan=desk.batches.plan_preview(wish),
        now=desk.clock.now(),
        zone=desk.clock.zone(),
    )


def _vessel_words(
    quantities: Quantities, vessel: Vessel, culture: Culture | None, wish: Wish
) -> str:
    words = _t("{vessel}, filled to {fill}").format(
        vessel=vessel.name, fill=quantities.show(wish.fill_volume_l, Kind.VOLUME)
    )
    if culture is None:
        return _t("{vessel}, started with starter liquid only").format(vessel=words)
    return _t("{vessel}, culture: {culture}").format(vessel=words, culture=culture.name)


def _date_words(now: datetime, zone: tzinfo) -> str:
    day = local(now, zone).date()
    return QLocale().toString(QDate(day.year, day.month, day.day), _t("ddd d MMM yyyy"))


def _cells(row: AmountRow) -> tuple[str, str, str, str, str]:
    return (
        part_name(row.part),
        mass_words(row),
        ounce_words(row),
        volume_words(row),
        measure_words(row.measures),
    )


def _steps(rows: tuple[AmountRow, ...], limit: str, *, has_culture: bool) -> tuple[RunStep, ...]:
    grams = {row.part: _t("{mass} g").format(mass=mass_words(row)) for row in rows}
    tea = next(row for row in rows if row.part is Part.TEA)
    details = {
        StepKind.BOIL: _t("{hot} for the tea. Mind the steam and the pot.").format(
            hot=grams[Part.HOT_WATER]
        ),
        StepKind.STEEP: _t("{tea} ({bags}), {minutes} minutes or as long as you like it.").format(
            tea=grams[Part.TEA], bags=measure_words(tea.measures), minutes=STEEP_S // 60
        ),
        StepKind.LIFT_TEA: _t("Let it drip; do not wring it."),
        StepKind.DISSOLVE_SUGAR: _t("{sugar}, until no grain is left.").format(
            sugar=grams[Part.SUGAR]
        ),
        StepKind.ADD_COLD_WATER: _t("{cold}, boiled before and cooled, or safe to drink.").format(
            cold=grams[Part.COLD_WATER]
        ),
        StepKind.COOL: _t("To {limit} or below, covered.").format(limit=limit),
        StepKind.STARTER_IN: _t("{starter}, live and unpasteurised. Stir; take the pH.").format(
            starter=grams[Part.STARTER]
        ),
        StepKind.CULTURE_IN: _t("With clean hands, rinsed free of soap."),
        StepKind.COVER: _t("Tightly woven cloth and a band: air gets in, flies do not."),
    }
    blank = _t("Temperature before starter and culture go in ({limit} or below):")
    return tuple(
        RunStep(
            text=name_of(kind),
            detail=details[kind],
            blank=blank.format(limit=limit) if kind is StepKind.STARTER_IN else "",
        )
        for kind in StepKind
        if has_culture or kind is not StepKind.CULTURE_IN
    )


def _cautions() -> tuple[str, ...]:
    marks = ph_marks()
    most, least = (number_text(m, 1) for m in (marks.most_by_deadline, marks.least_to_drink))
    return (
        _t("Hot tea scalds, and cracks cold glass. Mix in a pot, or warm the vessel first."),
        _t("Any mold, on any day: throw everything away, the culture included."),
        _t(
            "Above pH {most} on day {day}: discard the batch. Do not drink below pH {least}."
        ).format(most=most, day=marks.deadline_days, least=least),
        _t("Rules and advice of the place where you live come before this sheet."),
    )
