"""The vessels on the shelf and the places they stand in."""

from __future__ import annotations

import math
from dataclasses import asdict, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.ledger import balance_in
from brewdesk.services.names import is_same_name, tidy_name
from brewdesk.store.records import Batch, Place, PlaceDraft, Vessel, VesselDraft
from culturecore import safety
from culturecore import vessels as shapes
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import BatchStage, CultureState, Material, VesselShape

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

LIVE_STAGES = tuple(stage for stage in BatchStage if stage.is_live)

# Rooms in which people keep cultures: this refuses slips of the keyboard, no more.
PLACE_TEMPERATURE_LOW_C = 0.0
PLACE_TEMPERATURE_HIGH_C = 45.0
FIRST_PLACE_TEMPERATURE_C = 22.0  # room temperature; an assumption the maker can change

VOLUME_HIGH_L = 1000.0
DIAMETER_HIGH_CM = 200.0

# Height over inner diameter. Kitchen jars, crocks and bottles lie between about 0.6 and 4
# (from memory); outside the wider range a figure is in the wrong unit.
RATIO_USUAL_LOW, RATIO_USUAL_HIGH = 0.4, 5.0
RATIO_POSSIBLE_LOW, RATIO_POSSIBLE_HIGH = 0.05, 30.0


class Vessels:
    """Keep vessels and places."""

    def __init__(self, door: Door) -> None:
        self._door = door

    def all(self, *, include_retired: bool = False) -> tuple[Vessel, ...]:
        """Return the vessels in shelf order."""
        with self._door.store.read() as unit:
            rows = unit.vessels.where(order_by=("shelf_order", "id"))
        return rows if include_retired else tuple(row for row in rows if row.retired_at is None)

    def get(self, vessel_id: int) -> Vessel:
        """Return one vessel.

        Raises
        ------
        NoSuchRow
            If there is no vessel with this id.
        """
        with self._door.store.read() as unit:
            return unit.vessels.get(vessel_id)

    def add(self, draft: VesselDraft) -> Vessel:
        """Put a new vessel on the shelf, behind the others.

        Raises
        ------
        ImpossibleInput
            For a field no vessel can have; ``field`` is the draft's field.
        """
        draft = replace(draft, name=tidy_name(draft.name))
        self.check(draft)
        with self._door.store.read() as unit:
            _check_name_is_free(unit, draft.name, None)
            others = unit.vessels.where()
        order = draft.shelf_order or max((row.shelf_order for row in others), default=0) + 1
        fields = _fields(draft) | {"shelf_order": order}
        return self._door.perform(
            ActKind.ADD_VESSEL,
            {"name": draft.name, "volume_l": draft.brim_volume_l},
            lambda unit: unit.vessels.add(VesselDraft(**fields)),
            topics=Topic.VESSELS,
            vessel_id=lambda vessel: vessel.id,
        )

    def edit(self, vessel_id: int, **fields: Any) -> Vessel:  # noqa: ANN401  # column values
        """Change fields of a vessel.

        Raises
        ------
        ImpossibleInput
            For a field no vessel can have, or a brim below what is in it now.
        """
        old = self.get(vessel_id)
        if "name" in fields:
            fields["name"] = tidy_name(fields["name"])
        draft = VesselDraft(**(_fields(old) | fields))
        self.check(draft)
        with self._door.store.read() as unit:
            _check_name_is_free(unit, draft.name, vessel_id)
            live = unit.batches.where(vessel_id=vessel_id, stage=LIVE_STAGES)
            resting = unit.cultures.where(vessel_id=vessel_id, state=CultureState.RESTING)
            needed_l = max(
                sum(culture.rest_volume_l or 0.0 for culture in resting),
                *(_volume_needed_l(unit, batch) for batch in live),
                0.0,
            )
        if draft.brim_volume_l < needed_l:
            raise ImpossibleInput(
                "brim_volume_l",
                draft.brim_volume_l,
                low=needed_l,
                unit="L",
                reason="below_fill",
            )
        return self._door.perform(
            ActKind.EDIT_VESSEL,
            {"name": draft.name, "old_name": old.name},
            lambda unit: unit.vessels.change(vessel_id, **fields),
            topics=Topic.VESSELS,
            vessel_id=vessel_id,
        )

    def retire(self, vessel_id: int) -> Vessel:
        """Take an empty vessel off the shelf; its history stays.

        Raises
        ------
        ImpossibleInput
            If a batch (reason "occupied") or a culture (reason "holds_culture") is in it.
        """
        vessel = self.get(vessel_id)
        with self._door.store.read() as unit:
            if unit.batches.where(vessel_id=vessel_id, stage=LIVE_STAGES):
                raise ImpossibleInput("vessel_id", vessel_id, reason="occupied")
            if unit.cultures.where(vessel_id=vessel_id):
                raise ImpossibleInput("vessel_id", vessel_id, reason="holds_culture")
        now = self._door.clock.now()
        return self._door.perform(
            ActKind.RETIRE_VESSEL,
            {"name": vessel.name},
            lambda unit: unit.vessels.change(vessel_id, retired_at=now),
            topics=Topic.VESSELS,
            vessel_id=vessel_id,
        )

    def restore(self, vessel_id: int) -> Vessel:
        """Put a retired vessel back on the shelf.

        Raises
        ------
        ImpossibleInput
            If another vessel bears its name by now (field "name").
        """
        vessel = self.get(vessel_id)
        with self._door.store.read() as unit:
            _check_name_is_free(unit, vessel.name, vessel_id)
        return self._door.perform(
            ActKind.RESTORE_VESSEL,
            {"name": vessel.name},
            lambda unit: unit.vessels.change(vessel_id, retired_at=None),
            topics=Topic.VESSELS,
            vessel_id=vessel_id,
        )

    def places(self) -> tuple[Place, ...]:
        """Return the places, oldest first."""
        with self._door.store.read() as unit:
            return unit.places.where(order_by="id")

    def ensure_place(self) -> Place:
        """Return the first place; make a pantry at room temperature if there is none."""
        places = self.places()
        if places:
            return places[0]
        draft = PlaceDraft(
            name=QCoreApplication.translate("Vessels", "Pantry"),
            temperature_c=FIRST_PLACE_TEMPERATURE_C,
        )
        return self._door.quiet(lambda unit: unit.places.add(draft), topics=Topic.PLACES)

    def add_place(self, draft: PlaceDraft) -> Place:
        """Add a place.

        Raises
        ------
        ImpossibleInput
            For an empty or taken name, or a temperature no room has.
        """
        draft = replace(draft, name=tidy_name(draft.name))
        self._check_place(draft, None)
        return self._door.perform(
            ActKind.ADD_PLACE,
            {"name": draft.name, "temperature_c": draft.temperature_c},
            lambda unit: unit.places.add(draft),
            topics=Topic.PLACES,
        )

    def edit_place(self, place_id: int, **fields: Any) -> Place:  # noqa: ANN401  # column values
        """Change a place's name or usual temperature.

        Raises
        ------
        ImpossibleInput
            For an empty or taken name, or a temperature no room has.
        """
        if "name" in fields:
            fields["name"] = tidy_name(fields["name"])
        with self._door.store.read() as unit:
            old = unit.places.get(place_id)
        kept: dict[str, Any] = {"name": old.name, "temperature_c": old.temperature_c}
        draft = PlaceDraft(**(kept | fields))
        self._check_place(draft, place_id)
        return self._door.perform(
            ActKind.EDIT_PLACE,
            {"name": draft.name, "temperature_c": draft.temperature_c},
            lambda unit: unit.places.change(place_id, **fields),
            topics=Topic.PLACES,
        )

    def check(self, draft: VesselDraft) -> tuple[Verdict, ...]:
        """Judge a vessel before it is kept: its material, and whether its figures fit together.

        Raises
        ------
        ImpossibleInput
            For a field no vessel can have; ``field`` is the draft's field.
        """
        tidy_name(draft.name)
        _check_positive("brim_volume_l", draft.brim_volume_l, VOLUME_HIGH_L, "L")
        _check_positive("working_volume_l", draft.working_volume_l, VOLUME_HIGH_L, "L")
        _check_positive("inner_diameter_cm", draft.inner_diameter_cm, DIAMETER_HIGH_CM, "cm")
        if draft.working_volume_l > draft.brim_volume_l:
            raise ImpossibleInput(
                "working_volume_l",
                draft.working_volume_l,
                low=0.0,
                high=draft.brim_volume_l,
                unit="L",
                reason="above_brim",
            )
        verdicts = [self.material_verdict(draft.material)]
        ratio = _height_over_diameter(draft)
        if not RATIO_POSSIBLE_LOW <= ratio <= RATIO_POSSIBLE_HIGH:
            raise ImpossibleInput(
                "inner_diameter_cm", draft.inner_diameter_cm, unit="cm", reason="proportions"
            )
        if not RATIO_USUAL_LOW <= ratio <= RATIO_USUAL_HIGH:
            numbers = {
                "height_cm": ratio * draft.inner_diameter_cm,
                "inner_diameter_cm": draft.inner_diameter_cm,
            }
            verdicts.append(Verdict("vessel_proportions_unusual", Level.WARN, numbers))
        return tuple(verdicts)

    def material_verdict(self, material: Material) -> Verdict:
        """Judge what the liquid would touch."""
        return safety.material_verdict(material)

    def profile(
        self, shape: VesselShape, diameter_cm: float, brim_volume_l: float
    ) -> tuple[tuple[float, float], ...]:
        """Return the inner outline, foot to rim, as (height, radius) pairs in cm.

        Raises
        ------
        ImpossibleInput
            If no vessel of this shape has these figures.
        """
        return tuple(shapes.profile(shape, diameter_cm, brim_volume_l))

    def _check_place(self, draft: PlaceDraft, place_id: int | None) -> None:
        if any(is_same_name(row.name, draft.name) and row.id != place_id for row in self.places()):
            raise ImpossibleInput("name", draft.name, reason="taken")
        if not PLACE_TEMPERATURE_LOW_C <= draft.temperature_c <= PLACE_TEMPERATURE_HIGH_C:
            raise ImpossibleInput(
                "temperature_c",
                draft.temperature_c,
                low=PLACE_TEMPERATURE_LOW_C,
                high=PLACE_TEMPERATURE_HIGH_C,
                unit="degC",
            )


def _fields(draft: VesselDraft) -> dict[str, Any]:
    fields = asdict(draft)
    fields.pop("id", None)
    return fields


def _check_positive(field: str, value: float, high: float, unit: str) -> None:
    if not (math.isfinite(value) and 0.0 < value <= high):
        raise ImpossibleInput(field, value, low=0.0, high=high, unit=unit)


def _check_name_is_free(unit: ReadUnit, name: str, vessel_id: int | None) -> None:
    for other in unit.vessels.where(retired_at=None):
        if other.id != vessel_id and is_same_name(other.name, name):
            raise ImpossibleInput("name", name, reason="taken")


def _volume_needed_l(unit: ReadUnit, batch: Batch) -> float:
    """Return what a live batch needs of its vessel: what is in it, or what it will be filled to."""
    if batch.started_at is None:
        return batch.fill_volume_l
    return balance_in(unit, batch).now_l


def _height_over_diameter(draft: VesselDraft) -> float:
    # The height a straight-sided vessel of this volume would have: the shape's own height
    # differs by less than the range judged here, and exists even for odd figures.
    height_cm = draft.brim_volume_l * 1000.0 / (math.pi * (draft.inner_diameter_cm / 2.0) ** 2)
    return height_cm / draft.inner_diameter_cm
