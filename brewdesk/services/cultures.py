"""The living lines: where they came from, where they are, who their parents are."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import asdict, replace
from datetime import datetime
from typing import TYPE_CHECKING, Any

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.names import is_same_name, tidy_name
from brewdesk.services.vessels import LIVE_STAGES
from brewdesk.store.records import Culture, CultureDraft, CultureParentDraft, Vessel
from culturecore import safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import CultureState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

GONE = (CultureState.RETIRED, CultureState.GIVEN_AWAY, CultureState.LOST)
PELLICLE_HIGH_MM = 200.0  # refuses a slip of the keyboard; real ones are a few centimetres


class Cultures:
    """Keep cultures and their family tree."""

    def __init__(self, door: Door) -> None:
        self._door = door

    def all(self, *, include_gone: bool = True) -> tuple[Culture, ...]:
        """Return the cultures, oldest first; without those gone if asked."""
        with self._door.store.read() as unit:
            rows = unit.cultures.where(order_by=("born_at", "id"))
        return rows if include_gone else tuple(row for row in rows if row.state not in GONE)

    def get(self, culture_id: int) -> Culture:
        """Return one culture.

        Raises
        ------
        NoSuchRow
            If there is no culture with this id.
        """
        with self._door.store.read() as unit:
            return unit.cultures.get(culture_id)

    def add(self, draft: CultureDraft, parents: Iterable[int] = ()) -> Culture:
        """Add a culture with its parents.

        Raises
        ------
        ImpossibleInput
            For an empty or taken name, a birthday in the future or before a
            parent's, or a vessel that cannot take it.
        """
        draft = replace(draft, name=tidy_name(draft.name))
        parent_ids = tuple(dict.fromkeys(parents))
        with self._door.store.read() as unit:
            self._check(unit, draft, None)
            for parent_id in parent_ids:
                parent = unit.cultures.get(parent_id)
                if parent.born_at > draft.born_at:
                    raise ImpossibleInput("born_at", draft.born_at, reason="before_parent")
        fields = _fields(draft)

        def work(unit: UnitOfWork) -> Culture:
            culture = unit.cultures.add(CultureDraft(**fields))
            for parent_id in parent_ids:
                unit.culture_parents.add(
                    CultureParentDraft(culture_id=culture.id, parent_id=parent_id)
                )
            return culture

        return self._door.perform(
            ActKind.ADD_CULTURE,
            {"name": draft.name, "origin": draft.origin.value},
            work,
            topics=Topic.CULTURES,
            vessel_id=draft.vessel_id,
            culture_id=lambda culture: culture.id,
        )

    def edit(self, culture_id: int, **fields: Any) -> Culture:  # noqa: ANN401  # column values
        """Change fields of a culture. One that is gone is in no vessel.

        Raises
        ------
        ImpossibleInput
            For a value no culture can have; ``field`` is the draft's field. "vessel_id"
            with reason "above_brim" if what it rests in cannot be in that vessel.
        """
        old = self.get(culture_id)
        if "name" in fields:
            fields["name"] = tidy_name(fields["name"])
        if fields.get("state") in GONE:
            fields |= {"vessel_id": None, "rest_volume_l": None}
            fields.setdefault("gone_at", old.gone_at or self._door.clock.now())
        elif "state" in fields and old.state in GONE:
            fields |= {"gone_at": None, "gone_to": ""}
        draft = CultureDraft(**(_fields(old) | fields))
        rests_in_one = draft.vessel_id is not None and draft.state is CultureState.RESTING
        if draft.rest_volume_l is not None and not rests_in_one:
            fields["rest_volume_l"] = None  # the liquid does not come along
            draft = replace(draft, rest_volume_l=None)
        with self._door.store.read() as unit:
            self._check(unit, draft, culture_id)
            if draft.vessel_id != old.vessel_id and draft.vessel_id is not None:
                _check_fits(unit, draft.vessel_id, draft.rest_volume_l, culture_id)
        facts: dict[str, object] = {"name": draft.name, "old_name": old.name}
        if draft.state != old.state:
            facts["state"] = draft.state.value
        return self._door.perform(
            ActKind.EDIT_CULTURE,
            facts,
            lambda unit: unit.cultures.change(culture_id, **fields),
            topics=Topic.CULTURES,
            vessel_id=draft.vessel_id,
            culture_id=culture_id,
        )

    def parents_of(self, culture_id: int) -> tuple[Culture, ...]:
        """Return the cultures this one came from."""
        with self._door.store.read() as unit:
            links = unit.culture_parents.where(culture_id=culture_id, order_by="id")
            return tuple(unit.cultures.get(link.parent_id) for link in links)

    def parent_links(self) -> tuple[tuple[int, int], ...]:
        """Return every (culture id, parent id) pair: the family tree in one read."""
        with self._door.store.read() as unit:
            links = unit.culture_parents.where(order_by="id")
        return tuple((link.culture_id, link.parent_id) for link in links)

    def where(self, culture_id: int) -> Vessel | None:
        """Return the vessel a culture is in, or None."""
        with self._door.store.read() as unit:
            culture = unit.cultures.get(culture_id)
            return None if culture.vessel_id is None else unit.vessels.get(culture.vessel_id)

    def _check(self, unit: ReadUnit, draft: CultureDraft, culture_id: int | None) -> None:
        _check_fields(draft, self._door.clock.now())
        for other in unit.cultures.where():
            is_other = other.id != culture_id and other.state not in GONE
            if is_other and is_same_name(other.name, draft.name):
                raise ImpossibleInput("name", draft.name, reason="taken")
        if draft.vessel_id is None:
            return
        if unit.vessels.get(draft.vessel_id).retired_at is not None:
            raise ImpossibleInput("vessel_id", draft.vessel_id, reason="retired")
        if draft.state is CultureState.RESTING:
            check_can_rest_in(unit, draft.vessel_id, culture_id)


def _check_fits(
    unit: ReadUnit, vessel_id: int, rest_volume_l: float | None, culture_id: int
) -> None:
    """Refuse another vessel that its liquid, noted along with it, could not be in."""
    vessel = unit.vessels.get(vessel_id)
    if safety.material_verdict(vessel.material).level is Level.STOP:
        raise ImpossibleInput("vessel_id", vessel_id, reason="material")
    if rest_volume_l is None:
        return
    others = unit.cultures.where(vessel_id=vessel_id, state=CultureState.RESTING)
    others_l = sum(other.rest_volume_l or 0.0 for other in others if other.id != culture_id)
    room_l = vessel.brim_volume_l - others_l
    if rest_volume_l > room_l:
        raise ImpossibleInput(
            "vessel_id", rest_volume_l, high=max(room_l, 0.0), unit="L", reason="above_brim"
        )


def _check_fields(draft: CultureDraft, now: datetime) -> None:
    if draft.born_at > now:
        raise ImpossibleInput("born_at", draft.born_at, reason="in_future")
    thickness = draft.pellicle_mm
    if thickness is not None and not (
        math.isfinite(thickness) and 0.0 <= thickness <= PELLICLE_HIGH_MM
    ):
        raise ImpossibleInput("pellicle_mm", thickness, low=0.0, high=PELLICLE_HIGH_MM, unit="mm")


def check_can_rest_in(unit: ReadUnit, vessel_id: int, culture_id: int | None) -> None:
    """Refuse a vessel with a live batch, but for the one this culture waits there to go into.

    Raises
    ------
    ImpossibleInput
        Field "vessel_id" with reason "occupied".
    """
    for batch in unit.batches.where(vessel_id=vessel_id, stage=LIVE_STAGES):
        is_its_own = culture_id is not None and batch.culture_id == culture_id
        if batch.started_at is not None or not is_its_own:
            raise ImpossibleInput("vessel_id", vessel_id, reason="occupied")


def _fields(draft: CultureDraft) -> dict[str, Any]:
    fields = asdict(draft)
    fields.pop("id", None)
    return fields
