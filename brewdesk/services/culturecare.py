"""What is done with a culture: split, merged, put to rest, fed, looked at, given away, lost."""

from __future__ import annotations

import math
from collections.abc import Iterable
from datetime import datetime
from typing import TYPE_CHECKING, Any

from brewdesk.services import suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.cultures import GONE, PELLICLE_HIGH_MM
from brewdesk.services.door import Door
from brewdesk.services.names import is_same_name, tidy_name
from brewdesk.services.restingliquid import (
    RestingLiquid,
    after_pouring,
    check_rest,
    check_volume,
    liquid_of,
    stated,
    sum_of_liquids,
)
from brewdesk.services.settings import Settings
from brewdesk.services.suspicion import Contact
from brewdesk.store.records import Care, CareDraft, Culture, CultureDraft, CultureParentDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    BatchStage,
    CareKind,
    CultureOrigin,
    CultureState,
    Look,
    StepKind,
    StepState,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

TO_HIGH = 200  # letters of to whom a culture was given
SUGAR_HIGH_G = 10_000.0  # refuses a slip of the keyboard
PH_LOW, PH_HIGH = 0.0, 14.0
_NOT_BEGUN = (BatchStage.PLANNED, BatchStage.BREWING)


class CultureCare:
    """Every act on a culture but adding and correcting it."""

    def __init__(self, door: Door, settings: Settings) -> None:
        self._door = door
        self._settings = settings

    def care_of(self, culture_id: int) -> tuple[Care, ...]:
        """Return what was done for a culture and seen at it, newest first."""
        with self._door.store.read() as unit:
            return unit.care.where(culture_id=culture_id, order_by=("-at", "-id"))

    def resting_liquid(self, culture_id: int) -> RestingLiquid | None:
        """Return what a culture rests in; None while nothing is known of it."""
        with self._door.store.read() as unit:
            culture = unit.cultures.get(culture_id)
            return liquid_of(unit, culture, self._door.clock.now())

    # one becomes several, several become one

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
                _check_not_planned(unit, parent)
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
                unit.cultures.change(parent.id, **_gone(CultureState.RETIRED, now, tidy))
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

    # where it is

    def move(self, culture_id: int, vessel_id: int | None) -> Culture:
        """Put a culture into another vessel with what it rests in, or out of any vessel.

        One at work is lifted out of its batch and rests; how much liquid went along is then
        not known.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone" or "forming"; "vessel_id" as for a new
            culture, or with reason "already_there".
        """
        culture = self._get_living(culture_id)
        if culture.vessel_id == vessel_id and culture.state is CultureState.RESTING:
            raise ImpossibleInput("vessel_id", vessel_id, reason="already_there")
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            liquid = liquid_of(unit, culture, now) if vessel_id is not None else None
            volume_l = None if liquid is None else liquid.now_l.value
            vessel_name = check_rest(unit, culture_id, vessel_id, volume_l, now)
        fields: dict[str, Any] = {
            "vessel_id": vessel_id,
            "state": CultureState.RESTING,
            "rest_volume_l": volume_l,
        }

        def work(unit: UnitOfWork) -> Culture:
            if volume_l is not None:
                unit.care.add(stated(culture_id, now, volume_l))
            return unit.cultures.change(culture_id, **fields)

        return self._door.perform(
            ActKind.MOVE_CULTURE,
            {"name": culture.name, "vessel": vessel_name},
            work,
            topics=Topic.CULTURES,
            vessel_id=vessel_id,
            culture_id=culture_id,
        )

    def rest(self, culture_id: int, vessel_id: int, volume_l: float) -> Culture:
        """Put a culture to rest in ``volume_l`` of ripe kombucha. Feeding is counted from now.

        Raises
        ------
        ImpossibleInput
            As for `move`; "volume_l" out of range or with reason "above_brim".
        """
        culture = self._get_living(culture_id)
        check_volume(volume_l)
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            vessel_name = check_rest(unit, culture_id, vessel_id, volume_l, now, field="volume_l")

        def work(unit: UnitOfWork) -> Culture:
            unit.care.add(stated(culture_id, now, volume_l))
            return unit.cultures.change(
                culture_id,
                vessel_id=vessel_id,
                state=CultureState.RESTING,
                rest_volume_l=volume_l,
                fed_at=None,
            )

        return self._door.perform(
            ActKind.REST_CULTURE,
            {"name": culture.name, "vessel": vessel_name, "volume_l": volume_l},
            work,
            topics=Topic.CULTURES,
            vessel_id=vessel_id,
            culture_id=culture_id,
        )

    # care at rest

    def feed(
        self, culture_id: int, volume_l: float, sugar_g: float, at: datetime | None = None
    ) -> Culture:
        """Give a resting culture fresh sweet tea with ``sugar_g`` of sugar in it.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone" or "not_resting"; "volume_l" or
            "sugar_g" out of range; "at" with reason "in_future" or "before_birth".
        """
        if not (math.isfinite(sugar_g) and 0.0 <= sugar_g <= SUGAR_HIGH_G):
            raise ImpossibleInput("sugar_g", sugar_g, low=0.0, high=SUGAR_HIGH_G, unit="g")
        culture = self._get_resting(culture_id)
        moment = self._moment(culture, at)
        fed_at = max(moment, culture.fed_at) if culture.fed_at is not None else moment
        care = CareDraft(
            culture_id=culture_id,
            at=moment,
            kind=CareKind.FED,
            volume_l=volume_l,
            sugar_g=sugar_g,
        )
        return self._pour(ActKind.FEED_CULTURE, culture, care, {"fed_at": fed_at})

    def top_up(self, culture_id: int, volume_l: float, at: datetime | None = None) -> Culture:
        """Make good what has evaporated, with ripe kombucha.

        Raises
        ------
        ImpossibleInput
            As for `feed`.
        """
        culture = self._get_resting(culture_id)
        moment = self._moment(culture, at)
        care = CareDraft(
            culture_id=culture_id, at=moment, kind=CareKind.TOPPED_UP, volume_l=volume_l
        )
        return self._pour(ActKind.TOP_UP_CULTURE, culture, care, {})

    def look(self, culture_id: int, look: Look, text: str = "") -> Care:
        """Keep what a careful look found. With mold, `lose` is the next thing to do.

        Until then the culture, and what lies in the same vessel, is under suspicion.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone".
        """
        care = CareDraft(
            culture_id=culture_id,
            at=self._door.clock.now(),
            kind=CareKind.LOOKED,
            look=look,
            text=text.strip(),
        )
        return self._note(care, {"look": look.value})

    def measure_ph(self, culture_id: int, ph: float, sd: float | None) -> Care:
        """Keep the pH of what a culture rests in, with its standard uncertainty.

        Raises
        ------
        ImpossibleInput
            Field "ph" out of range; "culture_id" with reason "gone".
        """
        if not PH_LOW <= ph <= PH_HIGH:  # a NaN fails this too
            raise ImpossibleInput("ph", ph, low=PH_LOW, high=PH_HIGH, unit="pH")
        care = CareDraft(
            culture_id=culture_id, at=self._door.clock.now(), kind=CareKind.PH, ph=ph, sd=sd
        )
        return self._note(care, {"ph": ph})

    def note(self, culture_id: int, text: str) -> Care:
        """Keep a note in the maker's own words.

        Raises
        ------
        ImpossibleInput
            Field "text" with reason "empty"; "culture_id" with reason "gone".
        """
        if not text.strip():
            raise ImpossibleInput("text", text, reason="empty")
        care = CareDraft(
            culture_id=culture_id,
            at=self._door.clock.now(),
            kind=CareKind.NOTE,
            text=text.strip(),
        )
        return self._note(care, {})

    # it leaves

    def give_away(self, culture_id: int, to: str = "") -> Culture:
        """Give a culture away; it is in no vessel any more.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone", "forming", "suspect" or "planned";
            "to" with reason "too_long".
        """
        words = " ".join(to.split())
        if len(words) > TO_HIGH:
            raise ImpossibleInput("to", words, high=TO_HIGH, reason="too_long")
        culture = self.get_usable(culture_id)
        fields = _gone(CultureState.GIVEN_AWAY, self._door.clock.now(), words)
        return self._leave(ActKind.GIVE_CULTURE, culture, fields, {"to": words})

    def retire(self, culture_id: int) -> Culture:
        """Stop keeping a culture, for no bad reason.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone", "forming" or "planned".
        """
        culture = self._get_living(culture_id)
        fields = _gone(CultureState.RETIRED, self._door.clock.now(), "")
        return self._leave(ActKind.RETIRE_CULTURE, culture, fields, {})

    def lose(self, culture_id: int, reason: str, *, flag: bool = True) -> tuple[Contact, ...]:
        """Mark a culture as lost, and everything that shared liquid with it as doubtful.

        ``flag`` is for mold and what else may spread; without it nothing else is touched.
        A batch that was to be brewed with it goes on without. Return what was flagged.

        Raises
        ------
        ImpossibleInput
            Field "reason" with reason "empty"; "culture_id" with reason "gone".
        """
        words = reason.strip()
        if not words:
            raise ImpossibleInput("reason", reason, reason="empty")
        culture = self._get_here(culture_id)
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> tuple[Contact, ...]:
            flagged: tuple[Contact, ...] = ()
            if flag:
                flagged = suspicion.flag_contacts(
                    unit, suspicion.CULTURE, culture_id, culture.name, words, now
                )
            _take_out_of_plans(unit, culture)
            unit.cultures.change(culture_id, **suspicion.lost_fields(words, now))
            return flagged

        return self._door.perform(
            ActKind.LOSE_CULTURE,
            lambda flagged: {
                "name": culture.name,
                "reason": words,
                "flagged": [contact.name for contact in flagged],
            },
            work,
            topics=Topic.CULTURES | Topic.BATCHES,
            vessel_id=culture.vessel_id,
            culture_id=culture_id,
        )

    def clear_suspicion(
        self, *, culture_id: int | None = None, batch_id: int | None = None, reason: str
    ) -> None:
        """Take a culture or a batch out of suspicion, as `suspicion.Suspicion.clear`."""
        suspicion.Suspicion(self._door).clear(
            culture_id=culture_id, batch_id=batch_id, reason=reason
        )

    def get_usable(self, culture_id: int) -> Culture:
        """Return a culture that may be used: here, grown, and under no suspicion.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone", "forming" or "suspect".
        """
        culture = self._get_living(culture_id)
        if culture.suspect_at is not None:
            raise ImpossibleInput("culture_id", culture_id, reason="suspect")
        return culture

    # within

    def _get_here(self, culture_id: int) -> Culture:
        with self._door.store.read() as unit:
            culture = unit.cultures.get(culture_id)
        if culture.state in GONE:
            raise ImpossibleInput("culture_id", culture_id, reason="gone")
        return culture

    def _get_living(self, culture_id: int) -> Culture:
        culture = self._get_here(culture_id)
        if culture.state is CultureState.FORMING:
            raise ImpossibleInput("culture_id", culture_id, reason="forming")
        return culture

    def _get_resting(self, culture_id: int) -> Culture:
        culture = self._get_here(culture_id)
        if culture.state is not CultureState.RESTING:
            raise ImpossibleInput("culture_id", culture_id, reason="not_resting")
        return culture

    def _moment(self, culture: Culture, at: datetime | None) -> datetime:
        now = self._door.clock.now()
        moment = at or now
        if moment > now:
            raise ImpossibleInput("at", moment, reason="in_future")
        if moment < culture.born_at:
            raise ImpossibleInput("at", moment, reason="before_birth")
        return moment

    def _pour(
        self, kind: ActKind, culture: Culture, care: CareDraft, fields: dict[str, Any]
    ) -> Culture:
        """Add liquid to what a culture rests in, and take off what has evaporated meanwhile."""
        volume_l = care.volume_l or 0.0
        check_volume(volume_l)
        with self._door.store.read() as unit:
            after_l = after_pouring(unit, culture, volume_l, care.at)
        changed = fields | ({"rest_volume_l": after_l} if after_l is not None else {})

        def work(unit: UnitOfWork) -> Culture:
            unit.care.add(care)
            return unit.cultures.change(culture.id, **changed)

        return self._door.perform(
            kind,
            {"name": culture.name, "volume_l": volume_l, "sugar_g": care.sugar_g},
            work,
            topics=Topic.CULTURES,
            vessel_id=culture.vessel_id,
            culture_id=culture.id,
        )

    def _note(self, care: CareDraft, facts: dict[str, object]) -> Care:
        culture = self._get_here(care.culture_id)

        def work(unit: UnitOfWork) -> Care:
            if care.look is Look.MOLD:
                suspicion.flag_culture_seen(unit, culture, care.text, care.at)
            return unit.care.add(care)

        return self._door.perform(
            ActKind.CARE_FOR_CULTURE,
            {"name": culture.name, "care": care.kind.value, "text": care.text} | facts,
            work,
            topics=Topic.CULTURES,
            vessel_id=culture.vessel_id,
            culture_id=culture.id,
        )

    def _leave(
        self, kind: ActKind, culture: Culture, fields: dict[str, Any], facts: dict[str, object]
    ) -> Culture:
        with self._door.store.read() as unit:
            _check_not_planned(unit, culture)
        return self._door.perform(
            kind,
            {"name": culture.name} | facts,
            lambda unit: unit.cultures.change(culture.id, **fields),
            topics=Topic.CULTURES,
            vessel_id=culture.vessel_id,
            culture_id=culture.id,
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


def _gone(state: CultureState, now: datetime, to: str) -> dict[str, Any]:
    return {
        "state": state,
        "vessel_id": None,
        "rest_volume_l": None,
        "gone_at": now,
        "gone_to": to,
    }


def _take_out_of_plans(unit: UnitOfWork, culture: Culture) -> None:
    """Let what was to be brewed with a lost culture go on without it."""
    for batch in unit.batches.where(culture_id=culture.id, stage=_NOT_BEGUN):
        waiting = unit.steps.where(
            batch_id=batch.id, kind=StepKind.CULTURE_IN, state=StepState.WAITING
        )
        if batch.stage is BatchStage.BREWING and not waiting:
            continue  # it is in already
        for step in waiting:
            unit.steps.remove(step.id)
        unit.batches.change(batch.id, culture_id=None)


def _check_not_planned(unit: ReadUnit, culture: Culture) -> None:
    for batch in unit.batches.where(culture_id=culture.id, stage=_NOT_BEGUN):
        raise ImpossibleInput("culture_id", batch.name, reason="planned")


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
