"""The shelf at a glance: one view a vessel, from a handful of reads however many jars there are."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta, tzinfo
from functools import lru_cache

from brewdesk.services import suspicion
from brewdesk.services.door import Door
from brewdesk.services.ledger import balance_of
from brewdesk.services.palate import TasteBand, set_band
from brewdesk.services.placelog import LatestTemperature
from brewdesk.services.reminder_rules import TastingWindow, effective_due
from brewdesk.services.reminders import no_window
from brewdesk.services.settings import Settings
from brewdesk.services.shelfrows import KnownReminders, ShelfRows
from brewdesk.store.records import Batch, Care, Culture, Reading, Reminder, Step, Transfer, Vessel
from culturecore import safety
from culturecore import vessels as shapes
from culturecore.outcome import Level, Verdict
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    Look,
    Quantity,
    ReminderKind,
    StepKind,
    StepState,
    VesselShape,
)

_JARS_AT_ONCE = 4  # are looked at in one step
_KEPT = 1024

_NEXT_OF_REMINDER = {
    ReminderKind.PH_CHECK: "take_ph",
    ReminderKind.MOLD_LOOK: "look_for_mold",
    ReminderKind.TASTE: "taste",
    ReminderKind.OWN: "own",
    ReminderKind.FILM_LOOK: "look_for_film",
    ReminderKind.FEED: "feed",
    ReminderKind.TOP_UP: "top_up",
}
_NEXT_OF_STAGE = {
    "empty": "plan_batch",
    "planned": "brew_it",
    "brewing": "finish_run_sheet",
    "souring": "take_ph",
    "tasting": "taste",
    "past_window": "draw_off",
    "drawn_off": "plan_batch",
}
SETTLED_PH_CODES = ("ph_low_enough", "ph_over_acid")
SD_UNKNOWN_PH = 0.3  # a reading without stated uncertainty counts as one by strip
_G_PER_L_OF_WATER = 1000.0  # close enough for a drawing of hot water in a jar


@dataclass(frozen=True, slots=True, kw_only=True)
class JarView:
    """One vessel as it stands on the shelf now.

    ``profile`` is the inner outline, foot to rim, as (height, radius) in cm.
    ``liquid_height_cm`` belongs to ``fill_volume_l``; for a planned batch both are what
    it will be filled to. ``stage_code`` is "empty", "planned", "brewing", "souring",
    "tasting", "past_window" or "drawn_off"; ``next_code`` is "plan_batch", "brew_it",
    "finish_run_sheet", "take_ph", "taste", "look_for_mold", "look_for_film", "feed",
    "top_up", "draw_off" or "own".
    ``latest_ph`` is of the blend: the starter's own, taken before the start, does not count;
    without a batch it is that of what a culture rests in.
    ``day_number`` counts calendar days where the maker lives; the day it started is 0.
    ``alerts`` are verdicts that warn or stop. ``trial_code`` is that of a jar in a trial that
    goes on.
    """

    vessel: Vessel
    profile: tuple[tuple[float, float], ...]
    batch: Batch | None
    culture: Culture | None
    fill_volume_l: float
    fill_fraction: float
    liquid_height_cm: float
    latest_ph: float | None
    ph_at: datetime | None
    pellicle_mm: float | None
    day_number: int | None
    stage_code: str
    next_code: str
    next_at: datetime | None
    alerts: tuple[Verdict, ...]
    trial_code: str = ""


@dataclass(frozen=True, slots=True)
class _Look:
    """What is the same for all jars that are looked at together."""

    now: datetime
    today: date
    zone: tzinfo
    band: TasteBand


class Shelf:
    """Look at all jars.

    ``window_of`` gives a batch's forecast tasting window, if known; ``band`` the taste in
    force, where that is not simply what was set.
    """

    def __init__(
        self,
        door: Door,
        settings: Settings,
        *,
        window_of: Callable[[int], TastingWindow | None] = no_window,
        band: Callable[[], TasteBand] | None = None,
        known_reminders: KnownReminders = lambda: None,
    ) -> None:
        self._door = door
        self._band = band if band is not None else lambda: set_band(settings)
        self._window_of = window_of
        self._rows = ShelfRows(
            door, known_reminders
        )  # kept: the shelf is looked at again at every word

    def jars(self) -> tuple[JarView, ...]:
        """Return the jars in shelf order; retired vessels are not on the shelf."""
        self._rows.read()
        look = self._look()
        return tuple(self._jar(vessel, look) for vessel in self._rows.vessels())

    def jars_in_turns(self) -> Iterator[tuple[JarView, ...] | None]:
        """Look at all jars in small pieces: None while there is more to do, then the jars.

        Between the steps the window has time to paint. What changes meanwhile is not waited
        for; whoever looks hears of it and looks anew.
        """
        for _ in self._rows.pieces():
            yield None
        look, found = self._look(), list[JarView]()
        vessels = self._rows.vessels()
        for first in range(0, len(vessels), _JARS_AT_ONCE):
            found += (self._jar(one, look) for one in vessels[first : first + _JARS_AT_ONCE])
            yield None
        yield tuple(found)

    def jar(self, vessel_id: int) -> JarView | None:
        """Return one vessel's jar; None if it is not on the shelf."""
        self._rows.read()
        for vessel in self._rows.vessels():
            if vessel.id == vessel_id:
                return self._jar(vessel, self._look())
        return None

    def _look(self) -> _Look:
        now, zone = self._door.clock.now(), self._door.clock.zone()
        return _Look(now, now.astimezone(zone).date(), zone, self._band())

    def _jar(self, vessel: Vessel, look: _Look) -> JarView:
        rows = self._rows
        batch = rows.batch_in(vessel.id)
        readings = [] if batch is None else rows.readings_of(batch.id)
        steps = [] if batch is None else rows.steps_of(batch.id)
        reminders = [] if batch is None else rows.reminders_of(batch.id)
        ph = _latest(_of_the_blend(batch, readings), Quantity.PH)
        pellicle = _latest(readings, Quantity.PELLICLE_MM)
        culture = _culture_of(vessel, batch, rows)
        window = None
        is_drink = batch is not None and batch.purpose is BatchPurpose.DRINK
        if batch is not None and is_drink and batch.stage is BatchStage.SOURING:
            window = self._window_of(batch.id)
        stage_code = _stage_code(batch, ph, window, look)
        next_code, next_at = _next(stage_code, batch, reminders, steps, window)
        moved = rows.transfers_of(batch.id) if batch is not None else []
        volume_l = _volume_l(batch, steps, moved)
        if batch is None or not batch.stage.is_live:
            volume_l = _resting_l(rows.resting_in(vessel.id))
        volume_l = min(volume_l, vessel.brim_volume_l)
        rest_ph: Care | None = None
        if batch is None and culture is not None:
            rest_ph = rows.rest_ph(culture.id)
            next_code, next_at = _next_at_rest(rows.reminders_of_culture(culture.id), next_code)
        outline = (vessel.shape, vessel.inner_diameter_cm, vessel.brim_volume_l)
        measured_mm = pellicle.value if pellicle is not None else None
        if measured_mm is None and culture is not None:
            measured_mm = culture.pellicle_mm
        return JarView(
            vessel=vessel,
            profile=_profile(*outline),
            batch=batch,
            culture=culture,
            fill_volume_l=volume_l,
            fill_fraction=volume_l / vessel.brim_volume_l,
            liquid_height_cm=_liquid_height_cm(*outline, volume_l),
            latest_ph=ph.value if ph is not None else rest_ph.ph if rest_ph else None,
            ph_at=ph.at if ph is not None else rest_ph.at if rest_ph else None,
            pellicle_mm=measured_mm,
            day_number=_day_number(batch, look),
            trial_code="" if batch is None else rows.trial_code(batch.id),
            stage_code=stage_code,
            next_code=next_code,
            next_at=next_at,
            alerts=_with_suspicion(
                batch,
                culture,
                _alerts(
                    vessel,
                    batch,
                    ph,
                    _latest(readings, Quantity.LOOK),
                    rows.latest_in(vessel.place_id),
                    look.now,
                ),
            ),
        )


def _stage_code(
    batch: Batch | None, ph: Reading | None, window: TastingWindow | None, look: _Look
) -> str:
    if batch is None:
        return "empty"
    if batch.stage is not BatchStage.SOURING:
        return str(batch.stage.value)
    if batch.purpose is BatchPurpose.CULTURE:
        return "souring"  # it is grown, not drunk: it has no window
    # A pH that was measured outweighs a window that was forecast.
    if ph is not None and ph.value is not None:
        if ph.value <= look.band.too_sour_ph:
            return "past_window"
        if ph.value <= look.band.first_taste_ph:
            return "tasting"
    if window is None or window.opens_at is None or look.now < window.opens_at:
        return "souring"
    is_over = window.closes_at is not None and look.now >= window.closes_at
    return "past_window" if is_over else "tasting"


def _day_number(batch: Batch | None, look: _Look) -> int | None:
    if batch is None or batch.started_at is None or not batch.stage.is_live:
        return None
    return (look.today - batch.started_at.astimezone(look.zone).date()).days


def _alerts(
    vessel: Vessel,
    batch: Batch | None,
    ph: Reading | None,
    look: Reading | None,
    around: LatestTemperature | None,
    now: datetime,
) -> tuple[Verdict, ...]:
    found = []
    # A material that only calls for care was pointed out when the vessel was added.
    material = safety.material_verdict(vessel.material)
    if material.level is Level.STOP:
        found.append(material)
    if batch is not None and batch.stage.is_live and look is not None:
        seen = safety.look_verdict(Look(look.text))
        if seen is not None:
            found.append(seen)
    if batch is not None and batch.stage is BatchStage.SOURING:
        found.extend(_souring_alerts(batch, ph, now))
        if around is not None:
            age_hours = (now - around.at) / timedelta(hours=1)
            place = safety.place_now_verdict(around.temperature_c, age_hours)
            found += [place] if place is not None else []
    return tuple(verdict for verdict in found if verdict.level is not Level.INFORM)


def _souring_alerts(batch: Batch, ph: Reading | None, now: datetime) -> Iterable[Verdict]:
    if batch.started_at is None:
        return
    now_day = max(0.0, _days(now - batch.started_at))
    length = safety.souring_length_verdict(now_day)
    if length is not None:
        yield length
    deadline = safety.limit("ph_deadline_days")
    verdict = None
    if ph is not None and ph.value is not None:
        read_day = _days(ph.at - batch.started_at)
        sd = ph.sd if ph.sd is not None else SD_UNKNOWN_PH
        verdict = safety.ph_verdict(ph.value, sd, read_day)
        if read_day >= deadline or verdict.code in SETTLED_PH_CODES:
            yield verdict
            return
    # What was read before the deadline and was not low enough by then says nothing of today.
    if now_day >= deadline:
        numbers = {"day": now_day, "deadline_days": deadline}
        yield Verdict("ph_not_taken_by_deadline", Level.WARN, numbers)
    elif verdict is not None:
        yield verdict


def _of_the_blend(batch: Batch | None, readings: list[Reading]) -> list[Reading]:
    """Leave out what was measured before the start: that was the water or the starter."""
    started_at = batch.started_at if batch is not None else None
    return [] if started_at is None else [row for row in readings if row.at >= started_at]


def _latest(readings: list[Reading], quantity: Quantity) -> Reading | None:
    return next((row for row in reversed(readings) if row.quantity is quantity), None)


def _culture_of(vessel: Vessel, batch: Batch | None, rows: ShelfRows) -> Culture | None:
    if batch is not None and batch.stage.is_live and batch.culture_id is not None:
        return rows.culture(batch.culture_id)
    return rows.resting_in(vessel.id)


def _resting_l(culture: Culture | None) -> float:
    """Return the liquid that a culture rests in, where it is known."""
    return 0.0 if culture is None or culture.rest_volume_l is None else culture.rest_volume_l


def _volume_l(batch: Batch | None, steps: list[Step], transfers: list[Transfer]) -> float:
    """Return what is in the vessel, or for a plan what will be; nothing once drawn off."""
    if batch is None or batch.stage is BatchStage.DRAWN_OFF:
        return 0.0
    if batch.stage is BatchStage.SOURING:
        return balance_of(batch, transfers).now_l
    if batch.stage is not BatchStage.BREWING:
        return batch.fill_volume_l
    done = {step.kind for step in steps if step.state is StepState.DONE}
    if StepKind.STARTER_IN in done:
        return batch.fill_volume_l
    if StepKind.ADD_COLD_WATER in done:
        return batch.fill_volume_l - batch.starter_volume_l
    return batch.hot_water_g / _G_PER_L_OF_WATER if StepKind.BOIL in done else 0.0


def _next(
    stage_code: str,
    batch: Batch | None,
    reminders: list[Reminder],
    steps: list[Step],
    window: TastingWindow | None,
) -> tuple[str, datetime | None]:
    usual = _NEXT_OF_STAGE[stage_code]
    if batch is None or not batch.stage.is_live:
        return usual, None
    if batch.stage is BatchStage.BREWING:
        ends = [step.ends_at for step in steps if step.ends_at is not None]
        return usual, min(ends, default=None)
    if reminders:
        first = min(reminders, key=lambda row: (effective_due(row), row.id))
        return _NEXT_OF_REMINDER[first.kind], effective_due(first)
    if stage_code == "souring" and window is not None and window.opens_at is not None:
        return "taste", window.opens_at
    return usual, None


def _next_at_rest(reminders: list[Reminder], usual: str) -> tuple[str, datetime | None]:
    """Return the next care of a culture that rests in a vessel without a batch."""
    if not reminders:
        return usual, None
    first = min(reminders, key=lambda row: (effective_due(row), row.id))
    return _NEXT_OF_REMINDER[first.kind], effective_due(first)


def _with_suspicion(
    batch: Batch | None, culture: Culture | None, alerts: tuple[Verdict, ...]
) -> tuple[Verdict, ...]:
    """Say it once, before all else, if the batch or the culture in the vessel may carry mold."""
    is_suspect = (batch is not None and batch.suspect_at is not None) or (
        culture is not None and culture.suspect_at is not None
    )
    is_seen = any(alert.code == "mold_discard_all" for alert in alerts)
    return (suspicion.suspect_verdict(), *alerts) if is_suspect and not is_seen else alerts


@lru_cache(maxsize=_KEPT)
def _profile(
    shape: VesselShape, inner_diameter_cm: float, brim_volume_l: float
) -> tuple[tuple[float, float], ...]:
    return shapes.profile(shape, inner_diameter_cm, brim_volume_l)


@lru_cache(maxsize=_KEPT)
def _liquid_height_cm(
    shape: VesselShape, inner_diameter_cm: float, brim_volume_l: float, volume_l: float
) -> float:
    return shapes.liquid_height_cm(shape, inner_diameter_cm, brim_volume_l, volume_l)


def _days(span: timedelta) -> float:
    return span / timedelta(days=1)
