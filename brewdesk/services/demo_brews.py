"""The invented pantry's batches: brewed, read, tasted, drawn off."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import time
from typing import Any

from brewdesk.services.demo_story import BREWING_HOUR, PANTRY_C, READING_HOUR, Story, t
from brewdesk.store.records import (
    ReadingDraft,
)
from culturecore.stages import (
    Method,
    Quantity,
    StarterTaste,
    StepKind,
    TasteMark,
    TeaKind,
)
from culturecore.sweettea import Starter

_SOUR_STARTER = Starter(ph=3.1, taste=StarterTaste.SOUR)


@dataclass(frozen=True, slots=True, kw_only=True)
class Brew:
    """One batch of the story; days count back from today."""

    vessel: str
    culture: str | None
    tea: TeaKind
    started: int
    sugar_g_per_l: float = 50.0
    starter: Starter = _SOUR_STARTER
    pace: float = 1.0  # how fast it sours against the usual course
    room_c: float = PANTRY_C
    name: str = ""  # where it has one of its own
    why_discarded: str = ""
    is_brief: bool = False  # read less often, as one does after the first batches
    last_day: int = 0  # of the readings
    drawn_off: int | None = None
    closed: int | None = None
    discarded: int | None = None


def brew_all(story: Story) -> None:
    """Brew every batch of the month."""
    for number, one in enumerate(BREWS):
        brew(story, f"batch {number}", one)


def brew(story: Story, key: str, one: Brew) -> None:
    """Have one batch brewed, read and ended, known as ``key``."""
    story.at(one.started, BREWING_HOUR, planning(story, key, one))
    story.at(one.started, BREWING_HOUR, lambda: story.brewing.start(story.ids[key]), 10)
    for kind, minutes, temperature_c in RUN:
        story.at(one.started, BREWING_HOUR, finishing(story, key, kind, temperature_c), minutes)
    for day in range(1, one.last_day + 1):
        for number, entries in enumerate(_forms(day, one)):
            story.at(one.started - day, READING_HOUR, recording(story, key, entries), 2.0 * number)
    if one.discarded is not None:
        mold = t("A fuzzy spot on top: mold. All of it thrown away. (Invented)")
        reason = one.why_discarded or mold
        story.at(
            one.discarded,
            time(19, 0),
            lambda: story.batches.discard(story.ids[key], reason),
        )
    if one.drawn_off is not None:
        liked = t("Tastes as we like it. (Invented)")
        story.at(
            one.drawn_off,
            time(18, 30),
            lambda: story.batches.draw_off(story.ids[key], liked),
        )
    if one.closed is not None:
        story.at(one.closed, time(20, 0), lambda: story.batches.close(story.ids[key]))


def planning(story: Story, key: str, brew: Brew, **wish: Any) -> Callable[[], None]:  # noqa: ANN401
    """Return what plans a batch; ``wish`` are fields of the wish."""

    def do() -> None:
        vessel_id = story.ids[brew.vessel]
        full = replace(
            story.batches.default_wish(vessel_id),
            tea_kind=brew.tea,
            sugar_g_per_l=brew.sugar_g_per_l,
            starter=brew.starter,
            **wish,
        )
        culture_id = None if brew.culture is None else story.ids[brew.culture]
        name = brew.name or story.batches.suggested_name(brew.tea)
        supplies = story.stores.for_tea(brew.tea)
        plan = story.batches.plan(vessel_id, culture_id, name, full, supplies=supplies)
        story.ids[key] = plan.id

    return do


def finishing(
    story: Story, key: str, kind: StepKind, temperature_c: float | None
) -> Callable[[], None]:
    """Return what finishes a batch's step of one kind."""

    def do() -> None:
        for step in story.brewing.steps(story.ids[key]):
            if step.kind is kind:
                story.brewing.finish(step.id, temperature_c)

    return do


def beginning(story: Story, key: str, kind: StepKind) -> Callable[[], None]:
    """Return what begins a batch's step of one kind."""

    def do() -> None:
        for step in story.brewing.steps(story.ids[key]):
            if step.kind is kind:
                story.brewing.begin(step.id)

    return do


def recording(story: Story, key: str, entries: tuple[Entry, ...]) -> Callable[[], None]:
    """Return what keeps one form of readings."""

    def do() -> None:
        story.readings.record(
            [
                ReadingDraft(
                    batch_id=story.ids[key],
                    at=story.clock.now(),
                    quantity=entry.quantity,
                    method=entry.method,
                    value=entry.value,
                    text=entry.text,
                    entered=entry.text if entry.value is None else f"{entry.value:g}",
                )
                for entry in entries
            ]
        )

    return do


def plan_tomorrow(story: Story) -> None:
    """Plan a batch that nobody has begun."""
    brew = Brew(vessel="tall", culture=None, tea=TeaKind.WHITE, started=1)
    story.at(1, time(20, 0), planning(story, "planned", brew))


def brew_now(story: Story) -> None:
    """Have a batch half way through its run sheet."""
    brew = Brew(vessel="little", culture="third", tea=TeaKind.BLACK, started=0)
    # Warm tap water, so that the mix has to cool and its timer runs.
    story.ago(60, planning(story, "brewing", brew, cold_water_c=26.0, hot_water_c=95.0))
    story.ago(55, lambda: story.brewing.start(story.ids["brewing"]))
    done = (
        (StepKind.BOIL, 40),
        (StepKind.STEEP, 28),
        (StepKind.LIFT_TEA, 27),
        (StepKind.DISSOLVE_SUGAR, 24),
        (StepKind.ADD_COLD_WATER, 20),
    )
    for kind, minutes in done:
        story.ago(minutes, finishing(story, "brewing", kind, None))
    story.ago(19, beginning(story, "brewing", StepKind.COOL))


@dataclass(frozen=True, slots=True)
class Entry:
    """One field of a reading form."""

    quantity: Quantity
    method: Method
    value: float | None = None
    text: str = ""


def course_ph(day: float, pace: float) -> float:
    """Return the invented course: about 4.1 at the start, 3.1 on day 12, never below 2.9."""
    return 2.95 + 1.17 * math.exp(-pace * day / 5.8)


def _wiggle(day: int, pace: float) -> float:
    """Return the scatter of the invented readings: the same every time, within 0.03."""
    return 0.03 * math.sin(2.4 * day + 7.0 * pace)


def _forms(day: int, one: Brew) -> list[tuple[Entry, ...]]:
    """Return the reading forms of one day, each a tuple of what was entered together."""
    if one.is_brief:
        return _brief_forms(day, one)
    forms: list[tuple[Entry, ...]] = []
    pace = one.pace
    room_c = round(one.room_c + 0.8 * math.sin(0.9 * day + pace), 1)
    if day in (1, 2, 3, 5, 7, 8, 9, 10, 12, 14):
        ph = round(course_ph(day, pace) + _wiggle(day, pace), 2)
        forms.append(
            (
                Entry(Quantity.PH, Method.METER, ph),
                Entry(Quantity.TEMPERATURE_C, Method.THERMOMETER, room_c),
            )
        )
    if day in (4, 9):
        thickness_mm = float(round(min(7.0, 0.6 * pace * day), 0))
        forms.append((Entry(Quantity.PELLICLE_MM, Method.RULER, max(1.0, thickness_mm)),))
    if day == 8:
        acidity_g_per_l = round(1.0 + 0.45 * pace * day, 1)
        forms.append((Entry(Quantity.TA_G_PER_L, Method.TITRATION, acidity_g_per_l),))
    taste = {6: TasteMark.TOO_SWEET, 9: TasteMark.RIGHT, 14: TasteMark.TOO_SOUR}.get(day)
    if taste is not None:
        forms.append((Entry(Quantity.TASTE, Method.TONGUE, text=taste.value),))
    if day == 3:
        note = t("A thin, clear film all over. (Invented)")
        forms.append((Entry(Quantity.NOTE, Method.EYE, text=note),))
    return forms


def _brief_forms(day: int, one: Brew) -> list[tuple[Entry, ...]]:
    if day not in (2, 5, 7, 9, one.last_day):
        return []
    exact = course_ph(day, one.pace)
    ph = round(exact + _wiggle(day, one.pace), 2)
    room_c = round(one.room_c + 0.8 * math.sin(0.9 * day + one.pace), 1)
    entries = [
        Entry(Quantity.PH, Method.METER, ph),
        Entry(Quantity.TEMPERATURE_C, Method.THERMOMETER, room_c),
    ]
    if day >= 7:
        mark = TasteMark.RIGHT if exact < 3.26 else TasteMark.TOO_SWEET
        mark = TasteMark.TOO_SOUR if exact < 3.06 else mark
        entries.append(Entry(Quantity.TASTE, Method.TONGUE, text=mark.value))
    return [tuple(entries)]


# Minutes after the brewing hour, and the temperature entered at the step.
RUN: tuple[tuple[StepKind, float, float | None], ...] = (
    (StepKind.BOIL, 25, None),
    (StepKind.STEEP, 37, None),
    (StepKind.LIFT_TEA, 38, None),
    (StepKind.DISSOLVE_SUGAR, 42, None),
    (StepKind.ADD_COLD_WATER, 48, None),
    (StepKind.COOL, 60, 27.5),
    (StepKind.STARTER_IN, 65, None),
    (StepKind.CULTURE_IN, 67, 27.0),
    (StepKind.COVER, 70, None),
)


BREWS = (
    Brew(
        vessel="tall",
        culture="first",
        tea=TeaKind.BLACK,
        started=28,
        last_day=12,
        drawn_off=16,
        closed=15,
    ),
    Brew(
        vessel="little",
        culture=None,
        tea=TeaKind.GREEN,
        started=26,
        pace=0.5,
        last_day=5,
        discarded=20,
    ),
    Brew(
        vessel="steel",
        culture="third",
        tea=TeaKind.OOLONG,
        started=16,
        pace=0.95,
        last_day=14,
        drawn_off=2,
    ),
    Brew(
        vessel="crock",
        culture="first",
        tea=TeaKind.BLACK,
        started=10,
        sugar_g_per_l=60.0,
        pace=1.1,
        last_day=10,
    ),
    Brew(vessel="flask", culture="second", tea=TeaKind.GREEN, started=3, last_day=3),
)
