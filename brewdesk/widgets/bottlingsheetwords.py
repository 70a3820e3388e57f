"""A bottling in the words of its printed sheet: what to weigh, what to do, what to mind."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.printing.runsheetpainter import RunSheet, RunStep
from brewdesk.services.bottlingwish import BottlingOutlook, GroupOutlook
from brewdesk.services.desk import Desk
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.bottlings import bar_words, volumes_words
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.stages import name_of


def _t(text: str) -> str:
    return QCoreApplication.translate("BottlingSheet", text)


def bottling_sheet(
    outlook: BottlingOutlook, quantities: Quantities, *, now: datetime, zone: tzinfo
) -> RunSheet:
    """Put an outlook into the words of its sheet."""
    wish, show = outlook.wish, quantities.show
    chill = outlook.chill_by_at
    count = sum(group.group.bottle_count for group in outlook.groups)
    return RunSheet(
        kind=_t("Bottling sheet"),
        title=wish.name,
        vessel=_t("{volume} into {count} bottles, {fizz}").format(
            volume=show(outlook.drink_volume_l, Kind.VOLUME),
            count=count,
            fizz=volumes_words(wish.target_volumes),
        ),
        made_on=stamp_words(now, zone),
        headers=(
            _t("Bottles"),
            _t("Count"),
            _t("Sugar g"),
            _t("Fill mL"),
            _t("Kitchen measure, limit"),
        ),
        amounts=tuple(_row(group) for group in outlook.groups),
        total=(
            _t("In all"),
            number_text(count, 0),
            number_text(outlook.priming_sugar_g, 1),
            number_text(1000.0 * outlook.drink_volume_l, 0),
            ", ".join(
                _t("{name} {grams} g").format(
                    name=addition.name, grams=number_text(addition.mass_g, 0)
                )
                for addition in wish.additions
            ),
        ),
        facts=(
            (
                _t("Chill by, at the latest"),
                _t("no deadline") if chill is None else stamp_words(chill, zone),
            ),
            (_t("They stand at"), show(wish.place_temperature_c, Kind.TEMPERATURE)),
            (_t("At the warmest"), show(wish.warmest_c, Kind.TEMPERATURE)),
            (
                _t("Alcohol made in the bottle"),
                _t("{low} to {high} %").format(
                    low=number_text(outlook.ethanol_gained_abv.low, 1),
                    high=number_text(outlook.ethanol_gained_abv.high, 1),
                ),
            ),
        ),
        steps_title=_t("Steps"),
        time_label=_t("Time"),
        steps=_steps(outlook),
        closing=_t("In the cold since:"),
        cautions_title=_t("Mind"),
        cautions=cautions(),
        footer=_t(
            "All figures are estimates. The pace of the yeasts is hardly known beforehand, and no "
            "bottle promises to hold."
        ),
    )


def bottling_sheet_of(desk: Desk, outlook: BottlingOutlook) -> RunSheet:
    """Put an outlook into words, on the desk's own clock and in its units."""
    return bottling_sheet(outlook, desk.quantities, now=desk.clock.now(), zone=desk.clock.zone())


def cautions() -> tuple[str, ...]:
    """Return what everybody who handles the bottles should read."""
    return (
        _t("Glass under pressure can burst: eye protection, a crate or box with a lid, a towel "
           "over those you move."),
        _t("Never shake a bottle. Chill it through, then open it slowly, under a towel, over a "
           "sink, away from faces."),
        _t("Test bottle hard, or the chill-by time come: all bottles into the cold. Open none "
           "warm."),
        _t("It holds alcohol, more with every day. Not for children, in pregnancy, or where "
           "alcohol must be avoided."),
        _t("Rules and advice of the place where you live come before this sheet."),
    )  # fmt: skip


def _row(group: GroupOutlook) -> tuple[str, str, str, str, str]:
    limit = _t("none") if group.ceiling_bar is None else bar_words(group.ceiling_bar)
    name = name_of(group.group.kind)
    if group.group.is_test:
        name = _t("{name}, test").format(name=name)
    words = _t("at most {limit}").format(limit=limit)
    if group.sugar_measure:
        words = f"{group.sugar_measure}; {words}"
    return (
        name,
        number_text(group.group.bottle_count, 0),
        number_text(group.sugar_per_bottle_g, 1),
        number_text(1000.0 * group.group.filled_l, 0),
        words,
    )


def _steps(outlook: BottlingOutlook) -> tuple[RunStep, ...]:
    steps = [
        RunStep(
            text=_t("Look at every bottle"),
            detail=_t("No chip, no scratch, no crack. Clean, rinsed, and made for fizzy drinks."),
        ),
        RunStep(
            text=_t("Sugar into each bottle, or stirred into all of the drink"),
            detail=_t("Grams as above; weigh them, spoons are only about right."),
        ),
    ]
    if outlook.wish.additions:
        steps.append(
            RunStep(
                text=_t("Share out what else goes in"),
                detail=_t("Cut small and even: whole pieces gush when the bottle is opened."),
            )
        )
    steps += [
        RunStep(
            text=_t("Fill, leaving the headspace"),
            detail=_t("The same in every bottle, the test bottle too."),
        ),
        RunStep(
            text=_t("Close and stand them in a box"),
            detail=_t("With a lid, away from sun and people."),
        ),
        RunStep(
            text=_t("Feel the test bottle daily"),
            detail=_t("Soft: wait. Firm: chill one through and open it. Hard: chill all of them."),
        ),
    ]
    return tuple(steps)
