"""An invented pantry to look around in: a month of brewing that never happened.

It is made by the same services that a maker uses, under a clock that is led through
the month, so that its journal and its history are as real as any. Nothing in it is
left to chance: the same instant gives the same pantry.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta, tzinfo
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.batches import Batches
from brewdesk.services.bottlings import Bottlings
from brewdesk.services.bottlingwish import AdditionWish, BottleGroupWish
from brewdesk.services.brewing import Brewing
from brewdesk.services.changes import Changes, Topic
from brewdesk.services.clock import Clock
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.cultures import Cultures
from brewdesk.services.demotrial import DemoTrial
from brewdesk.services.door import Door, Units
from brewdesk.services.growing import Growing
from brewdesk.services.jarnow import JarNow
from brewdesk.services.packedsamples import pack_pairs
from brewdesk.services.placelog import PlaceLog
from brewdesk.services.quantities import Quantities
from brewdesk.services.readings import Readings
from brewdesk.services.reminder_rules import wall_instant
from brewdesk.services.settings import Settings
from brewdesk.services.trials import Trials
from brewdesk.services.vessels import Vessels
from brewdesk.store.records import (
    BottleCheckDraft,
    CultureDraft,
    PlaceDraft,
    ReadingDraft,
    VesselDraft,
)
from culturecore.stages import (
    AdditionKind,
    BottleKind,
    CheckKind,
    CultureOrigin,
    CultureState,
    Feel,
    Look,
    Material,
    Method,
    Quantity,
    StarterTaste,
    StepKind,
    TasteMark,
    TeaKind,
    VesselShape,
)
from culturecore.sweettea import Starter

if TYPE_CHECKING:
    from brewdesk.services.desk import Desk
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

PANTRY_C = 22.5
BREWING_HOUR = time(17, 0)
READING_HOUR = time(8, 15)


def fill(store: Units, clock: Clock) -> None:
    """Fill an empty store with the invented pantry as it would stand at ``clock.now()``.

    All of it is written in one unit of work: it is there as a whole or not at all.
    """
    with store.write() as unit:
        _Story(_OneUnit(store, unit), clock).tell()


def fill_if_empty(desk: Desk) -> bool:
    """Fill the desk's store if nothing stands on its shelf, announce it, and say whether it was."""
    if desk.vessels.all(include_retired=True):
        return False
    fill(desk.store, desk.clock)
    desk.changes.announce(Topic.EVERYTHING)
    return True


def _t(text: str) -> str:
    return QCoreApplication.translate("Demo", text)


class _OneUnit:
    """Let many acts share one unit of work, each with its own deltas."""

    def __init__(self, store: Units, unit: UnitOfWork) -> None:
        self._store = store
        self._unit = unit

    def read(self) -> AbstractContextManager[ReadUnit]:
        return self._store.read()

    @contextmanager
    def write(self) -> Iterator[UnitOfWork]:
        self._unit.deltas.clear()
        yield self._unit


class _LedClock:
    """A clock that shows what the story wants."""

    def __init__(self, outside: Clock) -> None:
        self._outside = outside
        self.instant = outside.now()

    def now(self) -> datetime:
        return self.instant

    def monotonic(self) -> float:
        return self._outside.monotonic()

    def zone(self) -> tzinfo:
        return self._outside.zone()


_SOUR_STARTER = Starter(ph=3.1, taste=StarterTaste.SOUR)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Brew:
    """One batch of the story; days count back from today."""

    vessel: str
    culture: str | None
    tea: TeaKind
    started: int
    sugar_g_per_l: float = 50.0
    starter: Starter = _SOUR_STARTER
    pace: float = 1.0  # how fast it sours against the usual course
    last_day: int = 0  # of the readings
    drawn_off: int | None = None
    closed: int | None = None
    discarded: int | None = None


class _Story:
    """The month, as instants and what is done at them."""

    def __init__(self, units: Units, clock: Clock) -> None:
        self._outside = clock
        self._clock = _LedClock(clock)
        changes = Changes()
        door = Door(units, self._clock, changes)
        settings = Settings(units, changes)
        self._vessels = Vessels(door)
        self._place_log = PlaceLog(door)
        self._cultures = Cultures(door)
        self._care = CultureCare(door, settings)
        self._growing = Growing(door, settings)
        self._batches = Batches(door, settings)
        self._brewing = Brewing(door)
        self._readings = Readings(door, Quantities(settings))
        self._bottlings = Bottlings(door, self._batches, JarNow(door).liquid)
        self._ids: dict[str, int] = {}
        self._trial = DemoTrial(
            vessels=self._vessels,
            batches=self._batches,
            brewing=self._brewing,
            readings=self._readings,
            trials=Trials(door, self._batches),
            clock=self._clock,
            ids=self._ids,
        )
        self._events: list[tuple[datetime, int, Callable[[], object]]] = []

    def tell(self) -> None:
        """Do everything in order of time."""
        self._furnish()
        for number, brew in enumerate(_BREWS):
            self._brew(f"batch {number}", brew)
        self._keep_a_family()
        self._grow_one()
        self._log_places()
        self._fill_bottles()
        self._trial.tell(self._at)
        self._plan_tomorrow()
        self._brew_now()
        for instant, _, do in sorted(self._events, key=lambda event: event[:2]):
            self._clock.instant = instant
            do()

    def _at(self, days_ago: int, hour: time, do: Callable[[], object], minutes: float = 0) -> None:
        now, zone = self._outside.now(), self._outside.zone()
        day = now.astimezone(zone).date() - timedelta(days=days_ago)
        instant = wall_instant(day, hour, zone) + timedelta(minutes=minutes)
        self._events.append((min(instant, now), len(self._events), do))

    def _ago(self, minutes: float, do: Callable[[], object]) -> None:
        instant = self._outside.now() - timedelta(minutes=minutes)
        self._events.append((instant, len(self._events), do))

    def _furnish(self) -> None:
        for number, (key, temperature_c) in enumerate(_PLACES):
            self._at(60, time(10, 0), self._adding_place(key, temperature_c), minutes=number)
        for number, fields in enumerate(_VESSELS):
            self._at(60, time(10, 5), self._adding_vessel(fields), minutes=number)
        self._at(60, time(11, 0), self._adding_culture("first", _first_culture()))
        self._at(45, time(11, 0), self._adding_culture("second", _second_culture(), "first"))
        self._at(30, time(11, 0), self._adding_culture("third", _third_culture(), "second"))

    def _adding_place(self, key: str, temperature_c: float) -> Callable[[], None]:
        def do() -> None:
            draft = PlaceDraft(name=_place_names()[key], temperature_c=temperature_c)
            self._ids[key] = self._vessels.add_place(draft).id

        return do

    def _log_places(self) -> None:
        """Two loggers, read out this morning, and a thermometer that is looked at now and then."""
        for key, every_h, course in (("pantry", 1, _pantry_c), ("cellar", 2, _cellar_c)):
            self._at(0, time(7, 30), self._logging(key, every_h, course))
        for days in (12, 9, 6, 4, 2, 1):
            celsius = round(21.0 + 1.2 * math.sin(1.7 * days), 1)
            self._at(days, time(7, 45), self._reading_place("kitchen", celsius))

        def carry_down() -> None:
            self._vessels.edit(self._ids["steel"], place_id=self._ids["cellar"])

        self._at(1, time(19, 0), carry_down)

    def _logging(
        self, key: str, every_h: int, course: Callable[[float], float]
    ) -> Callable[[], None]:
        def do() -> None:
            last_s = int(self._clock.now().timestamp()) // 3600 * 3600
            hours = range(_LOGGED_DAYS * 24, -1, -every_h)
            samples = [(last_s - 3600 * back, round(course(-back / 24.0), 1)) for back in hours]
            name = _t("{place}-logger.csv (invented)").format(place=key)
            self._place_log.add_log(self._ids[key], name, pack_pairs(samples))

        return do

    def _reading_place(self, key: str, celsius: float) -> Callable[[], object]:
        return lambda: self._place_log.read_place(self._ids[key], celsius)

    def _adding_vessel(self, fields: dict[str, Any]) -> Callable[[], None]:
        def do() -> None:
            names = _vessel_names()
            draft = VesselDraft(
                **(fields | {"name": names[fields["name"]], "place_id": self._ids["pantry"]}),
                note=_t("Invented for the example pantry."),
            )
            self._ids[fields["name"]] = self._vessels.add(draft).id

        return do

    def _adding_culture(
        self, key: str, fields: dict[str, Any], parent: str | None = None
    ) -> Callable[[], None]:
        def do() -> None:
            draft = CultureDraft(born_at=self._clock.now(), **fields)
            parents = () if parent is None else (self._ids[parent],)
            self._ids[key] = self._cultures.add(draft, parents).id

        return do

    def _planning(self, key: str, brew: _Brew, **wish: Any) -> Callable[[], None]:  # noqa: ANN401
        def do() -> None:
            vessel_id = self._ids[brew.vessel]
            full = replace(
                self._batches.default_wish(vessel_id),
                tea_kind=brew.tea,
                sugar_g_per_l=brew.sugar_g_per_l,
                starter=brew.starter,
                **wish,
            )
            culture_id = None if brew.culture is None else self._ids[brew.culture]
            name = self._batches.suggested_name(brew.tea)
            self._ids[key] = self._batches.plan(vessel_id, culture_id, name, full).id

        return do

    def _brew(self, key: str, brew: _Brew) -> None:
        self._at(brew.started, BREWING_HOUR, self._planning(key, brew))
        self._at(brew.started, BREWING_HOUR, lambda: self._brewing.start(self._ids[key]), 10)
        for kind, minutes, temperature_c in _RUN:
            self._at(brew.started, BREWING_HOUR, self._finishing(key, kind, temperature_c), minutes)
        for day in range(1, brew.last_day + 1):
            for number, entries in enumerate(_forms(day, brew.pace)):
                self._at(
                    brew.started - day, READING_HOUR, self._recording(key, entries), 2.0 * number
                )
        if brew.discarded is not None:
            reason = _t("A fuzzy spot on top: mold. All of it thrown away. (Invented)")
            self._at(
                brew.discarded,
                time(19, 0),
                lambda: self._batches.discard(self._ids[key], reason),
            )
        if brew.drawn_off is not None:
            reason = _t("Tastes as we like it. (Invented)")
            self._at(
                brew.drawn_off,
                time(18, 30),
                lambda: self._batches.draw_off(self._ids[key], reason),
            )
        if brew.closed is not None:
            self._at(brew.closed, time(20, 0), lambda: self._batches.close(self._ids[key]))

    def _finishing(
        self, key: str, kind: StepKind, temperature_c: float | None
    ) -> Callable[[], None]:
        def do() -> None:
            for step in self._brewing.steps(self._ids[key]):
                if step.kind is kind:
                    self._brewing.finish(step.id, temperature_c)

        return do

    def _beginning(self, key: str, kind: StepKind) -> Callable[[], None]:
        def do() -> None:
            for step in self._brewing.steps(self._ids[key]):
                if step.kind is kind:
                    self._brewing.begin(step.id)

        return do

    def _recording(self, key: str, entries: tuple[_Entry, ...]) -> Callable[[], None]:
        def do() -> None:
            self._readings.record(
                [
                    ReadingDraft(
                        batch_id=self._ids[key],
                        at=self._clock.now(),
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

    def _keep_a_family(self) -> None:
        """Split, merge, rest, feed and give away, so that the family has something to show."""
        note = _t("Invented for the example pantry.")

        def split(key: str, name: str, parent: str) -> Callable[[], None]:
            def do() -> None:
                made = self._care.split(self._ids[parent], name=name, vessel_id=None, note=note)
                self._ids[key] = made.id

            return do

        def merge() -> None:
            both = (self._ids["dune"], self._ids["reed"])
            merged = self._care.merge(both, name=_t("Marsh"), vessel_id=None)
            self._ids["marsh"] = self._cultures.edit(merged.id, note=note, pellicle_mm=5.0).id

        self._at(44, time(18, 0), split("jetty", _t("Jetty"), "first"))
        self._at(41, time(18, 0), split("reed", _t("Reed"), "second"))
        self._at(41, time(19, 0), self._adding_culture("dune", _fourth_culture()))
        neighbour = _t("a neighbour (invented)")
        self._at(35, time(18, 0), lambda: self._care.give_away(self._ids["jetty"], neighbour))
        self._at(34, time(18, 0), merge)
        self._at(
            34,
            time(18, 30),
            lambda: self._care.rest(self._ids["marsh"], self._ids["store"], 0.8),
        )
        smooth = _t("Smooth and wet all over. (Invented)")
        self._at(20, time(18, 0), lambda: self._care.look(self._ids["marsh"], Look.FINE, smooth))
        self._at(20, time(18, 5), lambda: self._care.feed(self._ids["marsh"], 0.1, 5.0))
        self._at(7, time(18, 0), lambda: self._care.top_up(self._ids["marsh"], 0.05))
        self._at(7, time(18, 2), lambda: self._care.measure_ph(self._ids["marsh"], 2.92, 0.05))

    def _grow_one(self) -> None:
        """Grow a culture from a bottle; nine days on it has its first film."""
        source = _t("A raw, unflavoured bottle. Invented for the example pantry.")

        def begin() -> None:
            vessel_id = self._ids["seed"]
            wish = self._growing.default_wish(vessel_id)
            batch = self._growing.start(vessel_id, name=_t("Sandbar"), wish=wish, source=source)
            self._ids["growing"] = batch.id

        self._at(9, BREWING_HOUR, begin)
        self._at(9, BREWING_HOUR, lambda: self._brewing.start(self._ids["growing"]), 10)
        for kind, minutes, temperature_c in _RUN:
            do = self._finishing("growing", kind, temperature_c)
            self._at(9, BREWING_HOUR, do, minutes)
        self._at(4, READING_HOUR, lambda: self._growing.look(self._ids["growing"], Look.FINE), 4)
        for day, ph in ((2, 3.92), (5, 3.61), (7, 3.38)):
            entry = _Entry(Quantity.PH, Method.METER, ph)
            self._at(9 - day, READING_HOUR, self._recording("growing", (entry,)), 2)
        film = _t("A thin, pale film. (Invented)")
        self._at(
            1,
            READING_HOUR,
            lambda: self._growing.look(self._ids["growing"], Look.FINE, film_mm=1.0, text=film),
            4,
        )

    def _fill_bottles(self) -> None:
        """Bottle part of two batches: one stands and was felt, one is in the cold."""
        self._at(16, time(18, 20), self._filling("batch 0", "cold", with_ginger=True))
        self._at(14, READING_HOUR, self._feeling("cold", Feel.FIRM))
        self._at(14, time(18, 0), lambda: self._bottlings.chill(self._ids["cold"]))
        self._at(2, time(18, 20), self._filling("batch 2", "warm"))
        self._at(1, READING_HOUR, self._feeling("warm", Feel.SOFT))

    def _filling(self, batch: str, key: str, *, with_ginger: bool = False) -> Callable[[], None]:
        def do() -> None:
            ginger = AdditionWish(
                kind=AdditionKind.GINGER,
                name=_t("Ginger root"),
                mass_g=24.0,
                sugar_share_low=0.01,
                sugar_share_high=0.03,
            )
            wish = self._bottlings.wish_for(self._ids[batch])
            wish = replace(
                wish,
                name=_t("{name}, in bottles (invented)").format(name=wish.name),
                groups=_DEMO_BOTTLES,
                additions=(ginger,) if with_ginger else (),
                residual_sugar_low_g_per_l=4.0,
                residual_sugar_high_g_per_l=12.0,
                warmest_c=25.0,
                target_volumes=2.0,
            )
            self._ids[key] = self._bottlings.fill(wish).id

        return do

    def _feeling(self, key: str, feel: Feel) -> Callable[[], None]:
        def do() -> None:
            self._bottlings.check(
                BottleCheckDraft(
                    bottling_id=self._ids[key],
                    at=self._clock.now(),
                    kind=CheckKind.FEEL,
                    feel=feel,
                )
            )

        return do

    def _plan_tomorrow(self) -> None:
        brew = _Brew(vessel="tall", culture=None, tea=TeaKind.WHITE, started=1)
        self._at(1, time(20, 0), self._planning("planned", brew))

    def _brew_now(self) -> None:
        brew = _Brew(vessel="little", culture="third", tea=TeaKind.BLACK, started=0)
        # Warm tap water, so that the mix has to cool and its timer runs.
        self._ago(60, self._planning("brewing", brew, cold_water_c=26.0, hot_water_c=95.0))
        self._ago(55, lambda: self._brewing.start(self._ids["brewing"]))
        done = (
            (StepKind.BOIL, 40),
            (StepKind.STEEP, 28),
            (StepKind.LIFT_TEA, 27),
            (StepKind.DISSOLVE_SUGAR, 24),
            (StepKind.ADD_COLD_WATER, 20),
        )
        for kind, minutes in done:
            self._ago(minutes, self._finishing("brewing", kind, None))
        self._ago(19, self._beginning("brewing", StepKind.COOL))


@dataclass(frozen=True, slots=True)
class _Entry:
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


def _forms(day: int, pace: float) -> list[tuple[_Entry, ...]]:
    """Return the reading forms of one day, each a tuple of what was entered together."""
    forms: list[tuple[_Entry, ...]] = []
    room_c = round(PANTRY_C + 0.8 * math.sin(0.9 * day + pace), 1)
    if day in (1, 2, 3, 5, 7, 8, 9, 10, 12, 14):
        ph = round(course_ph(day, pace) + _wiggle(day, pace), 2)
        forms.append(
            (
                _Entry(Quantity.PH, Method.METER, ph),
                _Entry(Quantity.TEMPERATURE_C, Method.THERMOMETER, room_c),
            )
        )
    if day in (4, 9):
        thickness_mm = float(round(min(7.0, 0.6 * pace * day), 0))
        forms.append((_Entry(Quantity.PELLICLE_MM, Method.RULER, max(1.0, thickness_mm)),))
    if day == 8:
        acidity_g_per_l = round(1.0 + 0.45 * pace * day, 1)
        forms.append((_Entry(Quantity.TA_G_PER_L, Method.TITRATION, acidity_g_per_l),))
    taste = {6: TasteMark.TOO_SWEET, 9: TasteMark.RIGHT, 14: TasteMark.TOO_SOUR}.get(day)
    if taste is not None:
        forms.append((_Entry(Quantity.TASTE, Method.TONGUE, text=taste.value),))
    if day == 3:
        note = _t("A thin, clear film all over. (Invented)")
        forms.append((_Entry(Quantity.NOTE, Method.EYE, text=note),))
    return forms


# Minutes after the brewing hour, and the temperature entered at the step.
_RUN: tuple[tuple[StepKind, float, float | None], ...] = (
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

_DEMO_BOTTLES = (
    BottleGroupWish(bottle_count=3, kind=BottleKind.FIZZY_GLASS, brim_volume_l=0.52),
    BottleGroupWish(bottle_count=1, kind=BottleKind.FIZZY_PLASTIC, brim_volume_l=0.5, is_test=True),
)

_BREWS = (
    _Brew(
        vessel="tall",
        culture="first",
        tea=TeaKind.BLACK,
        started=28,
        last_day=12,
        drawn_off=16,
        closed=15,
    ),
    _Brew(
        vessel="little",
        culture=None,
        tea=TeaKind.GREEN,
        started=26,
        pace=0.5,
        last_day=5,
        discarded=20,
    ),
    _Brew(
        vessel="steel",
        culture="third",
        tea=TeaKind.OOLONG,
        started=16,
        pace=0.95,
        last_day=14,
        drawn_off=2,
    ),
    _Brew(
        vessel="crock",
        culture="first",
        tea=TeaKind.BLACK,
        started=10,
        sugar_g_per_l=60.0,
        pace=1.1,
        last_day=10,
    ),
    _Brew(vessel="flask", culture="second", tea=TeaKind.GREEN, started=3, last_day=3),
)

_VESSELS: tuple[dict[str, Any], ...] = (
    {
        "name": "tall",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 4.5,
        "working_volume_l": 4.0,
        "inner_diameter_cm": 15.0,
    },
    {
        "name": "crock",
        "shape": VesselShape.TAPERED,
        "material": Material.CERAMIC_FOOD_SAFE,
        "brim_volume_l": 8.0,
        "working_volume_l": 7.0,
        "inner_diameter_cm": 25.0,
    },
    {
        "name": "store",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 1.5,
        "working_volume_l": 1.2,
        "inner_diameter_cm": 11.0,
    },
    {
        "name": "seed",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 1.0,
        "working_volume_l": 0.8,
        "inner_diameter_cm": 9.5,
    },
    {
        "name": "flask",
        "shape": VesselShape.SHOULDERED,
        "material": Material.GLASS,
        "brim_volume_l": 5.2,
        "working_volume_l": 4.4,
        "inner_diameter_cm": 18.0,
    },
    {
        "name": "little",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 2.0,
        "working_volume_l": 1.8,
        "inner_diameter_cm": 11.0,
    },
    {
        "name": "steel",
        "shape": VesselShape.CYLINDER,
        "material": Material.STAINLESS_STEEL,
        "brim_volume_l": 6.0,
        "working_volume_l": 5.5,
        "inner_diameter_cm": 20.0,
    },
)


_PLACES = (("pantry", PANTRY_C), ("kitchen", 21.5), ("cellar", 15.0))
_LOGGED_DAYS = 30


def _pantry_c(day: float) -> float:
    """Return the pantry's invented course: a swing by day and a slower one."""
    return PANTRY_C + 0.7 * math.sin(2.0 * math.pi * day - 1.0) + 0.6 * math.sin(0.45 * day)


def _cellar_c(day: float) -> float:
    """Return the cellar's invented course: it has cooled through the month."""
    return 13.1 - 0.06 * day + 0.25 * math.sin(2.0 * math.pi * day) + 0.3 * math.sin(0.7 * day)


def _place_names() -> dict[str, str]:
    return {
        "pantry": _t("Example pantry (invented)"),
        "kitchen": _t("Example kitchen (invented)"),
        "cellar": _t("Example cellar (invented)"),
    }


def _vessel_names() -> dict[str, str]:
    return {
        "tall": _t("Tall jar"),
        "crock": _t("Grey crock"),
        "flask": _t("Big flask"),
        "little": _t("Little jar"),
        "steel": _t("Steel pot"),
        "store": _t("Store jar"),
        "seed": _t("Seed jar"),
    }


def _first_culture() -> dict[str, Any]:
    return {
        "name": _t("Lighthouse"),
        "origin": CultureOrigin.RAW_BOTTLE,
        "state": CultureState.RESTING,
        "pellicle_mm": 6.0,
        "note": _t("Grown from a raw bottle. Invented for the example pantry."),
    }


def _second_culture() -> dict[str, Any]:
    return {
        "name": _t("Ferry"),
        "origin": CultureOrigin.SPLIT,
        "state": CultureState.RESTING,
        "pellicle_mm": 4.0,
        "note": _t("Split off Lighthouse. Invented for the example pantry."),
    }


def _third_culture() -> dict[str, Any]:
    return {
        "name": _t("Harbour"),
        "origin": CultureOrigin.GIFT,
        "state": CultureState.RESTING,
        "pellicle_mm": 3.0,
        "note": _t("A gift from somebody who had a piece of Ferry. Invented."),
    }


def _fourth_culture() -> dict[str, Any]:
    return {
        "name": _t("Dune"),
        "origin": CultureOrigin.BOUGHT,
        "state": CultureState.RESTING,
        "note": _t("Bought. Invented for the example pantry."),
    }
