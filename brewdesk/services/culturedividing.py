"""One culture becomes several, several become one."""

from __future__ import annotations

import math
from collections.abc import Iterable
from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.cultureacts import CultureActs, check_not_planned, gone_fields
from brewdesk.services.cultures import GONE, PELLICLE_HIGH_MM
from brewdesk.services.names import is_same_name, tidy_name
from brewdesk.services.restingliquid import check_rest, stated, sum_of_liquids
from brewdesk.store.records import Culture, CultureDraft, CultureParentDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import CultureOrigin, CultureState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork


class CultureDividing(CultureActs):
    """Split and merge cultures."""

    def split(
        self,
        culture_id: int,
        *,
        name: str,
        vessel_id: int | None,
        pellicle_mm: float | None = None,
        rest_volume_l: float | None = None,
        note: str = "",
    ) -> Culture:
        """Take a daughter off a culture. She rests, in a vessel if one is given.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone", "forming" or "suspect"; "name",
            "vessel_id", "pellicle_mm" or "rest_volume_l" as for a new culture.
        """
        parent = self.get_usable(culture_id)
        tidy = tidy_name(name)
        now = self._door.clock.now()
        _check_length(pellicle_mm)
        with self._door.store.read() as unit:
            _check_name(unit, tidy)
            vessel_name = check_rest(unit, None, vessel_id, rest_volume_l, now)
        draft = CultureDraft(
            name=tidy,
            origin=CultureOrigin.SPLIT,
            state=CultureState.RESTING,
            born_at=now,
            vessel_id=vessel_id,
            pellicle_mm=pellicle_mm,
            rest_volume_l=rest_volume_l if vessel_id is not None else None,
            note=note.strip(),
        )

        def work(unit: UnitOfWork) -> Culture:
            return _add(unit, draft, (culture_id,), now)

        return self._door.perform(
            ActKind.SPLIT_CULTURE,
            {"name": tidy, "parent": parent.name, "vessel": vessel_name},
            work,
            topics=Topic.CULTURES,
            vessel_id=vessel_id,
            culture_id=lambda daughter: daughter.id,
        )

    def merge(self, culture_ids: Iterable[int], *, name: str, vessel_id: int | None) -> Culture:
        """Put cultures together into a new one; they themselves are retired.

        Raises
        ------
        ImpossibleInput
            Field "culture_ids" with reason "too_few"; "culture_id" as for `split`;
            "name" or "vessel_id" as for a new culture.
        """
        ids = tuple(dict.fromkeys(culture_ids))
        if len(ids) < 2:
            raise ImpossibleInput("culture_ids", ids, reason="too_few")
        parents = tuple(self.get_usable(culture_id) for culture_id in ids)
        tidy = tidy_name(name)
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            _check_name(unit, tidy, leaving=ids)
            for parent in parents:
                check_not_planned(unit, parent)
            volume_l = sum_of_liquids(unit, parents, now) if vessel_id is not None else None
            vessel_name = check_rest(unit, None, vessel_id, volume_l, now, leaving=ids)
        draft = CultureDraft(
            name=tidy,
            origin=CultureOrigin.MERGED,
            state=CultureState.RESTING,
            born_at=now,
            vessel_id=vessel_id,
            rest_volume_l=volume_l,
        )

        def work(unit: UnitOfWork) -> Culture:
            for parent in parents:
                unit.cultures.change(parent.id, **gone_fields(CultureState.RETIRED, now, tidy))
            return _add(unit, draft, ids, now)

        names = [parent.name for parent in parents]
        return self._door.perform(
            ActKind.MERGE_CULTURES,
            {"name": tidy, "parents": names, "vessel": vessel_name},
            work,
            topics=Topic.CULTURES,
            vessel_id=vessel_id,
            culture_id=lambda merged: merged.id,
        )


def _add(
    unit: UnitOfWork, draft: CultureDraft, parent_ids: Iterable[int], now: datetime
) -> Culture:
    culture = unit.cultures.add(draft)
    for parent_id in parent_ids:
        unit.culture_parents.add(CultureParentDraft(culture_id=culture.id, parent_id=parent_id))
    if culture.rest_volume_l is not None:
        unit.care.add(stated(culture.id, now, culture.rest_volume_l))
    return culture


def _check_name(unit: ReadUnit, name: str, leaving: tuple[int, ...] = ()) -> None:
    for other in unit.cultures.where():
        is_here = other.state not in GONE and other.id not in leaving
        if is_here and is_same_name(other.name, name):
            raise ImpossibleInput("name", name, reason="taken")


def _check_length(pellicle_mm: float | None) -> None:
    if pellicle_mm is None:
        return
    if not (math.isfinite(pellicle_mm) and 0.0 <= pellicle_mm <= PELLICLE_HIGH_MM):
        raise ImpossibleInput("pellicle_mm", pellicle_mm, low=0.0, high=PELLICLE_HIGH_MM, unit="mm")
