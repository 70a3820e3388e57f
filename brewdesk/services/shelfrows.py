"""The rows that the shelf is made of: read in pieces, and only what has changed is read again."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, TypeVar

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.placelog import LatestTemperature, latest_in
from brewdesk.services.reminders import OPEN_STATES
from brewdesk.store.records import Batch, Care, Culture, Reading, Reminder, Step, Transfer, Vessel
from culturecore.stages import BatchStage, CareKind, Quantity, ReminderKind, TrialState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

ON_SHELF = (BatchStage.PLANNED, BatchStage.BREWING, BatchStage.SOURING, BatchStage.DRAWN_OFF)
# How many are read in one piece of about a third of a frame: a batch has dozens of readings.
_VESSELS_AT_ONCE = 20
_BATCHES_AT_ONCE = 4
_ALL = 1_000_000
_OPEN_TRIALS = (TrialState.PLANNED, TrialState.RUNNING)
_MEASURED = (Quantity.PH, Quantity.PELLICLE_MM, Quantity.LOOK)

V = TypeVar("V")
KnownReminders = Callable[[], Sequence[Reminder] | None]


class ShelfRows:
    """What was read of the store, sorted by what it belongs to. Kept until it changes.

    ``known_reminders`` gives all open reminders if somebody has read them already.
    """

    def __init__(self, door: Door, known_reminders: KnownReminders = lambda: None) -> None:
        self._door = door
        self._known_reminders = known_reminders
        self._vessels: tuple[Vessel, ...] | None = None
        self._batch_in: dict[int, Batch | None] = {}
        self._cultures: dict[int, Culture] | None = None
        self._resting_in: dict[int, Culture] = {}
        self._rest_ph: dict[int, Care] | None = None
        self._readings_of: dict[int, list[Reading]] = {}
        self._steps_of: dict[int, list[Step]] | None = None
        self._reminders: dict[ReminderKind, tuple[Reminder, ...]] = {}
        self._reminders_of: dict[int, list[Reminder]] | None = None
        self._reminders_of_culture: dict[int, list[Reminder]] = {}
        self._transfers_of: dict[int, list[Transfer]] | None = None
        self._latest_in: dict[int, LatestTemperature] | None = None
        self._codes: dict[int, str] | None = None
        door.changes.changed.connect(self._on_changed)

    # reading -----------------------------------------------------------------------------

    def read(self) -> None:
        """Read all that is missing at once, in a handful of queries."""
        if self._piece(_ALL, _ALL) is None:
            return
        with self._door.store.read() as unit:
            while (piece := self._piece(_ALL, _ALL)) is not None:
                piece(unit)

    def pieces(self) -> Iterator[None]:
        """Read what is missing, a small piece a step."""
        while (piece := self._piece(_VESSELS_AT_ONCE, _BATCHES_AT_ONCE)) is not None:
            with self._door.store.read() as unit:
                piece(unit)
            yield

    def _piece(self, vessels: int, batches: int) -> Callable[[ReadUnit], None] | None:
        """Return what reads the next of what is missing, None if nothing is."""
        if self._vessels is None:
            return self._read_vessels
        unseen = [row.id for row in self._vessels if row.id not in self._batch_in]
        if unseen:
            return lambda unit: self._read_batches(unit, tuple(unseen[:vessels]))
        wholes: tuple[tuple[object, Callable[[ReadUnit], None]], ...] = (
            (self._cultures, self._read_cultures),
            (self._rest_ph, self._read_rest_ph),
            (self._steps_of, self._read_steps),
            (self._transfers_of, self._read_transfers),
            (self._latest_in, self._read_latest),
            (self._codes, self._read_codes),
        )
        for rows, read in wholes:
            if rows is None:
                return read
        if self._reminders_of is None:
            known = self._known_reminders()
            if known is not None:
                self._sort_reminders(known)
                return self._piece(vessels, batches)
            return self._read_all_reminders if batches == _ALL else self._read_reminders
        unread = [row.id for row in self._shown() if row.id not in self._readings_of]
        if unread:
            return lambda unit: self._read_readings(unit, tuple(unread[:batches]))
        return None

    def _shown(self) -> Iterable[Batch]:
        found = (self._batch_in.get(row.id) for row in self._vessels or ())
        return [row for row in found if row is not None]

    def _read_vessels(self, unit: ReadUnit) -> None:
        self._vessels = unit.vessels.where(order_by="shelf_order", retired_at=None)

    def _read_batches(self, unit: ReadUnit, vessel_ids: tuple[int, ...]) -> None:
        found = unit.batches.where(
            order_by=("planned_at", "id"), stage=ON_SHELF, vessel_id=vessel_ids
        )
        self._batch_in.update(dict.fromkeys(vessel_ids))
        self._batch_in.update(_shown_batches(found))

    def _read_cultures(self, unit: ReadUnit) -> None:
        rows = unit.cultures.where()
        self._cultures = {row.id: row for row in rows}
        self._resting_in = {row.vessel_id: row for row in rows if row.vessel_id is not None}

    def _read_rest_ph(self, unit: ReadUnit) -> None:
        rows = (self._cultures or {}).values()
        ids = tuple(row.id for row in rows if row.rest_volume_l is not None)
        found = unit.care.where(culture_id=ids, kind=CareKind.PH, order_by="at") if ids else ()
        self._rest_ph = {row.culture_id: row for row in found}

    def _read_steps(self, unit: ReadUnit) -> None:
        ids = tuple(row.id for row in self._shown() if row.stage is BatchStage.BREWING)
        found = unit.steps.where(order_by="position", batch_id=ids) if ids else ()
        self._steps_of = grouped(found, lambda row: row.batch_id)

    def _read_transfers(self, unit: ReadUnit) -> None:
        ids = tuple(row.id for row in self._shown())
        self._transfers_of = {}
        for row in unit.transfers.where(from_batch_id=ids):
            self._transfers_of.setdefault(row.from_batch_id or 0, []).append(row)
        for row in unit.transfers.where(to_batch_id=ids):
            self._transfers_of.setdefault(row.to_batch_id or 0, []).append(row)

    def _read_latest(self, unit: ReadUnit) -> None:
        place_ids = {
            vessel.place_id
            for vessel in self._vessels or ()
            if (batch := self._batch_in.get(vessel.id)) is not None
            and batch.stage is BatchStage.SOURING
        }
        self._latest_in = latest_in(unit, place_ids)

    def _read_codes(self, unit: ReadUnit) -> None:
        ids = tuple(row.id for row in unit.trials.where(state=_OPEN_TRIALS))
        jars = unit.trial_jars.where(trial_id=ids) if ids else ()
        self._codes = {row.batch_id: row.code for row in jars if row.batch_id is not None}

    def _read_reminders(self, unit: ReadUnit) -> None:
        """Read the open reminders of one more kind."""
        kind = next((kind for kind in ReminderKind if kind not in self._reminders), None)
        if kind is not None:
            self._reminders[kind] = unit.reminders.where(state=OPEN_STATES, kind=kind)
            return
        self._sort_reminders([row for rows in self._reminders.values() for row in rows])

    def _read_all_reminders(self, unit: ReadUnit) -> None:
        self._sort_reminders(unit.reminders.where(state=OPEN_STATES))

    def _sort_reminders(self, rows: Iterable[Reminder]) -> None:
        self._reminders.clear()
        self._reminders_of = grouped(rows, lambda row: row.batch_id or 0)
        self._reminders_of_culture = grouped(rows, lambda row: row.culture_id or 0)

    def _read_readings(self, unit: ReadUnit, batch_ids: tuple[int, ...]) -> None:
        found = unit.readings.where(order_by="at", batch_id=batch_ids, quantity=_MEASURED)
        self._readings_of.update({batch_id: [] for batch_id in batch_ids})
        self._readings_of.update(grouped(found, lambda row: row.batch_id))

    # what was read -----------------------------------------------------------------------

    def vessels(self) -> tuple[Vessel, ...]:
        """Return the vessels in shelf order, without the retired ones."""
        return self._vessels or ()

    def batch_in(self, vessel_id: int) -> Batch | None:
        """Return what is in a vessel, or was last drawn off from it."""
        return self._batch_in.get(vessel_id)

    def culture(self, culture_id: int) -> Culture | None:
        """Return one culture."""
        return (self._cultures or {}).get(culture_id)

    def resting_in(self, vessel_id: int) -> Culture | None:
        """Return the culture that rests in a vessel."""
        return self._resting_in.get(vessel_id)

    def rest_ph(self, culture_id: int) -> Care | None:
        """Return the last pH of what a culture rests in."""
        return (self._rest_ph or {}).get(culture_id)

    def readings_of(self, batch_id: int) -> list[Reading]:
        """Return a batch's pH, pellicles and looks by time."""
        return self._readings_of.get(batch_id, [])

    def steps_of(self, batch_id: int) -> list[Step]:
        """Return the steps of a batch that is being brewed."""
        return (self._steps_of or {}).get(batch_id, [])

    def reminders_of(self, batch_id: int) -> list[Reminder]:
        """Return a batch's open reminders."""
        return (self._reminders_of or {}).get(batch_id, [])

    def reminders_of_culture(self, culture_id: int) -> list[Reminder]:
        """Return a culture's open reminders."""
        return self._reminders_of_culture.get(culture_id, [])

    def transfers_of(self, batch_id: int) -> list[Transfer]:
        """Return what went into a batch or out of it."""
        return (self._transfers_of or {}).get(batch_id, [])

    def trial_code(self, batch_id: int) -> str:
        """Return the code of a batch in a trial that goes on; empty if it is in none."""
        return (self._codes or {}).get(batch_id, "")

    def latest_in(self, place_id: int) -> LatestTemperature | None:
        """Return the newest temperature of a place where something sours."""
        return (self._latest_in or {}).get(place_id)

    # keeping up --------------------------------------------------------------------------

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.VESSELS):
            self._vessels = None
        if change.concerns(Topic.BATCHES):
            self._steps_of = self._transfers_of = None
            for vessel_id in tuple(change.vessel_ids or self._batch_in):
                self._batch_in.pop(vessel_id, None)
        if change.concerns(Topic.TRIALS | Topic.BATCHES):
            self._codes = None
        if change.concerns(Topic.STEPS):
            self._steps_of = None
        if change.concerns(Topic.CULTURES):
            self._cultures = self._rest_ph = None
        if change.concerns(Topic.REMINDERS):
            self._reminders_of = None
            self._reminders.clear()
        if change.concerns(Topic.PLACES | Topic.VESSELS | Topic.BATCHES):
            self._latest_in = None
        if change.concerns(Topic.READINGS | Topic.BATCHES):
            for batch_id in tuple(self._readings_of):
                if change.concerns_batch(batch_id):
                    del self._readings_of[batch_id]


def _shown_batches(batches: tuple[Batch, ...]) -> dict[int, Batch]:
    """Choose each vessel's batch: the live one, else the one drawn off last."""
    shown: dict[int, Batch] = {}
    for batch in batches:
        other = shown.get(batch.vessel_id)
        if other is None or not other.stage.is_live:
            shown[batch.vessel_id] = batch
    return shown


def grouped(rows: Iterable[V], key: Callable[[V], int]) -> dict[int, list[V]]:
    """Sort rows by what they belong to."""
    groups: dict[int, list[V]] = {}
    for row in rows:
        groups.setdefault(key(row), []).append(row)
    return groups
