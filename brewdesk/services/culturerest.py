"""A culture at rest: put there, moved, fed, topped up, looked at, measured, noted."""

from __future__ import annotations

import math
from datetime import datetime
from typing import TYPE_CHECKING, Any

from brewdesk.services import suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.cultureacts import CultureActs
from brewdesk.services.restingliquid import (
    RestingLiquid,
    after_pouring,
    check_rest,
    check_volume,
    liquid_of,
    stated,
)
from brewdesk.store.records import Care, CareDraft, Culture
from culturecore.errors import ImpossibleInput
from culturecore.stages import CareKind, CultureState, Look

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

SUGAR_HIGH_G = 10_000.0  # refuses a slip of the keyboard
PH_LOW, PH_HIGH = 0.0, 14.0


class CultureRest(CultureActs):
    """Put cultures to rest and care for them there."""

    def care_of(self, culture_id: int) -> tuple[Care, ...]:
        """Return what was done for a culture and seen at it, newest first."""
        with self._door.store.read() as unit:
            return unit.care.where(culture_id=culture_id, order_by=("-at", "-id"))

    def resting_liquid(self, culture_id: int) -> RestingLiquid | None:
        """Return what a culture rests in; None while nothing is known of it."""
        with self._door.store.read() as unit:
            culture = unit.cultures.get(culture_id)
            return liquid_of(unit, culture, self._door.clock.now())

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

    # within

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
