"""The shelf at a glance: one view a vessel, from a handful of reads however many jars there are."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, TypeVar

from brewdesk.services import suspicion
from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.ledger import balance_of
from brewdesk.services.palate import TasteBand, set_band
from brewdesk.services.placelog import LatestTemperature, latest_in
from brewdesk.services.reminder_rules import TastingWindow, effective_due
from brewdesk.services.reminders import OPEN_STATES, no_window
from brewdesk.services.settings import Settings
from brewdesk.store.records import Batch, Care, Culture, Reading, Reminder, Step, Transfer, Vessel
from culturecore import safety
from culturecore import vessels as shapes
from culturecore.outcome import Level, Verdict
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    CareKind,
    Look,
    Quantity,
    ReminderKind,
    StepKind,
    StepState,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

ON_SHELF = (BatchStage.PLANNED, BatchStage.BREWING, BatchStage.SOURING, BatchStage.DRAWN_OFF)

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

V = TypeVar("V")


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
    ``alerts`` are verdicts that warn or stop.
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


_ROW_TOPICS = (
    Topic.VESSELS | Topic.BATCHES | Topic.CULTURES | Topic.READINGS | Topic.STEPS | Topic.PLACES
)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Rows:
    """What one reading of the store brought, sorted by what it belongs to."""

    vessels: tuple[Vessel, ...]
    batch_in: dict[int, Batch]
    cultures: dict[int, Culture]
    resting_in: dict[int, Culture]
    readings_of: dict[int, list[Reading]]
    steps_of: dict[int, list[Step]]
    reminders_of: dict[int, list[Reminder]]
    transfers_of: dict[int, list[Transfer]]
    reminders_of_culture: dict[int, list[Reminder]]
    rest_ph: dict[int, Care]
    latest_in: dict[int, LatestTemperature]


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
    ) -> None:
        self._door = door
        self._band = band if band is not None else lambda: set_band(settings)
        self._window_of = window_of
        # What was read is kept until it changes: the shelf is looked at again at every word.
        self._readings_of: dict[int, list[Reading]] = {}
        self._rows: _Rows | None = None
        self._has_other_reminders = False
        door.changes.changed.connect(self._on_changed)

    def jars(self) -> tuple[JarView, ...]:
        """Return the jars in shelf order; retired vessels are not on the shelf."""
        rows = self._rows
        if rows is None or self._has_other_reminders:
            with self._door.store.read() as unit:
                if rows is None:
                    rows = _read(unit, self._readings_of)
                else:
                    reminders = unit.reminders.where(state=OPEN_STATES)
                    rows = replace(
                        rows,
                        reminders_of=_grouped(reminders, lambda row: row.batch_id or 0),
                        reminders_of_culture=_grouped(reminders, lambda row: row.culture_id or 0),
                    )
            self._rows, self._has_other_reminders = rows, False
        return tuple(self._jar(vessel, rows) for vessel in rows.vessels)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_ROW_TOPICS):
            self._rows = None
        if change.concerns(Topic.REMINDERS):
            self._has_other_reminders = True
        if change.concerns(Topic.READINGS | Topic.BATCHES):
            for batch_id in tuple(self._readings_of):
                if change.concerns_batch(batch_id):
                    del self._readings_of[batch_id]

    def _jar(self, vessel: Vessel, rows: _Rows) -> JarView:
        batch = rows.batch_in.get(vessel.id)
        readings = [] if batch is None else rows.readings_of.get(batch.id, [])
        steps = [] if batch is None else rows.steps_of.get(batch.id, [])
        reminders = [] if batch is None else rows.reminders_of.get(batch.id, [])
        ph = _latest(_of_the_blend(batch, readings), Quantity.PH)
        pellicle = _latest(readings, Quantity.PELLICLE_MM)
        culture = _culture_of(vessel, batch, rows)
        window = None
        is_drink = batch is not None and batch.purpose is BatchPurpose.DRINK
        if batch is not None and is_drink and batch.stage is BatchStage.SOURING:
            window = self._window_of(batch.id)
        stage_code = self._stage_code(batch, ph, window)
        next_code, next_at = _next(stage_code, batch, reminders, steps, window)
        moved = rows.transfers_of.get(batch.id, []) if batch is not None else []
        volume_l = _volume_l(batch, steps, moved)
        if batch is None or not batch.stage.is_live:
            volume_l = _resting_l(rows.resting_in.get(vessel.id))
        volume_l = min(volume_l, vessel.brim_volume_l)
        rest_ph: Care | None = None
        if batch is None and culture is not None:
            rest_ph = rows.rest_ph.get(culture.id)
            next_code, next_at = _next_at_rest(
                rows.reminders_of_culture.get(culture.id, []), next_code
            )
        outline = (vessel.shape, vessel.inner_diameter_cm, vessel.brim_volume_l)
        measured_mm = pellicle.value if pellicle is not None else None
        if measured_mm is None and culture is not None:
            measured_mm = culture.pellicle_mm
        return JarView(
            vessel=vessel,
            profile=shapes.profile(*outline),
            batch=batch,
            culture=culture,
            fill_volume_l=volume_l,
            fill_fraction=volume_l / vessel.brim_volume_l,
            liquid_height_cm=shapes.liquid_height_cm(*outline, volume_l),
            latest_ph=ph.value if ph is not None else rest_ph.ph if rest_ph else None,
            ph_at=ph.at if ph is not None else rest_ph.at if rest_ph else None,
            pellicle_mm=measured_mm,
            day_number=self._day_number(batch),
            stage_code=stage_code,
            next_code=next_code,
            next_at=next_at,
            alerts=_with_suspicion(
                batch,
                culture,
                self._alerts(
                    vessel,
                    batch,
                    ph,
                    _latest(readings, Quantity.LOOK),
                    rows.latest_in.get(vessel.place_id),
                ),
            ),
        )

    def _stage_code(
        self, batch: Batch | None, ph: Reading | None, window: TastingWindow | None
    ) -> str:
        if batch is None:
            return "empty"
        if batch.stage is not BatchStage.SOURING:
            return str(batch.stage.value)
        if batch.purpose is BatchPurpose.CULTURE:
            return "souring"  # it is grown, not drunk: it has no window
        now = self._door.clock.now()
        # A pH that was measured outweighs a window that was forecast.
        if ph is not None and ph.value is not None:
            band = self._band()
            if ph.value <= band.too_sour_ph:
                return "past_window"
            if ph.value <= band.first_taste_ph:
                return "tasting"
        if window is None or window.opens_at is None or now < window.opens_at:
            return "souring"
        is_over = window.closes_at is not None and now >= window.closes_at
        return "past_window" if is_over else "tasting"

    def _day_number(self, batch: Batch | None) -> int | None:
        if batch is None or batch.started_at is None or not batch.stage.is_live:
            return None
        zone = self._door.clock.zone()
        today = self._door.clock.now().astimezone(zone).date()
        return (today - batch.started_at.astimezone(zone).date()).days

    def _alerts(
        self,
        vessel: Vessel,
        batch: Batch | None,
        ph: Reading | None,
        look: Reading | None,
        around: LatestTemperature | None,
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
            found.extend(self._souring_alerts(batch, ph))
            if around is not None:
                age_hours = (self._door.clock.now() - around.at) / timedelta(hours=1)
                place = safety.place_now_verdict(around.temperature_c, age_hours)
                found += [place] if place is not None else []
        return tuple(verdict for verdict in found if verdict.level is not Level.INFORM)

    def _souring_alerts(self, batch: Batch, ph: Reading | None) -> Iterable[Verdict]:
        if batch.started_at is None:
            return
        now_day = max(0.0, _days(self._door.clock.now() - batch.started_at))
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


def _read(unit: ReadUnit, readings_of: dict[int, list[Reading]]) -> _Rows:
    """Read all but the readings that are known already; the new ones are added to them."""
    vessels = unit.vessels.where(order_by="shelf_order", retired_at=None)
    batches = unit.batches.where(order_by=("planned_at", "id"), stage=ON_SHELF)
    batch_in = _shown_batches(batches)
    shown_ids = tuple(batch.id for batch in batch_in.values())
    brewing_ids = tuple(
        batch.id for batch in batch_in.values() if batch.stage is BatchStage.BREWING
    )
    souring_in = {
        vessel.place_id
        for vessel in vessels
        if vessel.id in batch_in and batch_in[vessel.id].stage is BatchStage.SOURING
    }
    cultures = unit.cultures.where()
    reminders = unit.reminders.where(state=OPEN_STATES)
    resting_ids = tuple(row.id for row in cultures if row.rest_volume_l is not None)
    measured_at_rest = (
        unit.care.where(culture_id=resting_ids, kind=CareKind.PH, order_by="at")
        if resting_ids
        else ()
    )
    unread = tuple(batch_id for batch_id in shown_ids if batch_id not in readings_of)
    if unread:
        measured = (Quantity.PH, Quantity.PELLICLE_MM, Quantity.LOOK)
        found = unit.readings.where(order_by="at", batch_id=unread, quantity=measured)
        readings_of.update({batch_id: [] for batch_id in unread})
        readings_of.update(_grouped(found, lambda row: row.batch_id))
    return _Rows(
        vessels=vessels,
        batch_in=batch_in,
        cultures={culture.id: culture for culture in cultures},
        resting_in={
            culture.vessel_id: culture for culture in cultures if culture.vessel_id is not None
        },
        readings_of=readings_of,
        steps_of=_grouped(
            unit.steps.where(order_by="position", batch_id=brewing_ids), lambda row: row.batch_id
        ),
        reminders_of=_grouped(reminders, lambda row: row.batch_id or 0),
        reminders_of_culture=_grouped(reminders, lambda row: row.culture_id or 0),
        rest_ph={row.culture_id: row for row in measured_at_rest},
        transfers_of=_transfers_of(unit, shown_ids),
        latest_in=latest_in(unit, souring_in),
    )


def _transfers_of(unit: ReadUnit, batch_ids: tuple[int, ...]) -> dict[int, list[Transfer]]:
    found: dict[int, list[Transfer]] = {}
    for row in unit.transfers.where(from_batch_id=batch_ids):
        found.setdefault(row.from_batch_id or 0, []).append(row)
    for row in unit.transfers.where(to_batch_id=batch_ids):
        found.setdefault(row.to_batch_id or 0, []).append(row)
    return found


def _shown_batches(batches: tuple[Batch, ...]) -> dict[int, Batch]:
    """Choose each vessel's batch: the live one, else the one drawn off last."""
    shown: dict[int, Batch] = {}
    for batch in batches:
        other = shown.get(batch.vessel_id)
        if other is None or not other.stage.is_live:
            shown[batch.vessel_id] = batch
    return shown


def _grouped(rows: Iterable[V], key: Callable[[V], int]) -> dict[int, list[V]]:
    groups: dict[int, list[V]] = {}
    for row in rows:
        groups.setdefault(key(row), []).append(row)
    return groups


def _of_the_blend(batch: Batch | None, readings: list[Reading]) -> list[Reading]:
    """Leave out what was measured before the start: that was the water or the starter."""
    started_at = batch.started_at if batch is not None else None
    return [] if started_at is None else [row for row in readings if row.at >= started_at]


def _latest(readings: list[Reading], quantity: Quantity) -> Reading | None:
    return next((row for row in reversed(readings) if row.quantity is quantity), None)


def _culture_of(vessel: Vessel, batch: Batch | None, rows: _Rows) -> Culture | None:
    if batch is not None and batch.stage.is_live and batch.culture_id is not None:
        return rows.cultures.get(batch.culture_id)
    return rows.resting_in.get(vessel.id)


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


def _days(span: timedelta) -> float:
    return span / timedelta(days=1)
