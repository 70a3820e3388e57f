"""Growing a culture from a bottle of raw kombucha, or from starter liquid, as a batch of its own.

The run sheet, its gate for hot tea and the readings are those of any batch; only what
comes out differs: a culture, and sour liquid for it to rest in.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from enum import Enum
from typing import TYPE_CHECKING

from brewdesk.services.acts import ActKind
from brewdesk.services.batches import Batches, check_vessel
from brewdesk.services.changes import Topic
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.cultures import PELLICLE_HIGH_MM
from brewdesk.services.door import Door
from brewdesk.services.forming import growing_batch
from brewdesk.services.ledger import DROP_L
from brewdesk.services.names import is_same_name, tidy_name
from brewdesk.services.readings import flag_if_moldy
from brewdesk.services.restingliquid import stated
from brewdesk.services.settings import Settings
from brewdesk.store.records import (
    Batch,
    Culture,
    CultureDraft,
    CultureParentDraft,
    Reading,
    ReadingDraft,
    TransferDraft,
)
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    CultureOrigin,
    CultureState,
    Look,
    Method,
    Quantity,
    StarterTaste,
    TransferKind,
)
from culturecore.sweettea import Starter, Wish

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

# About 100 mL of raw kombucha in 500 mL of sweet tea with 50 g of sugar a litre; common
# practice, no source.
RAW_VOLUME_L = 0.1
SWEET_TEA_VOLUME_L = 0.5
SUGAR_G_PER_L = 50.0
SOLID_MM = (3.0, 5.0)  # thickness at which makers usually call it grown; common practice


@dataclass(frozen=True, slots=True)
class FilmDays:
    """Days after mixing at 25 degC, from first to last usual: assumptions, no source.

    Cooler places take longer, warmer ones less; nothing here is reckoned from that.
    """

    first_film: tuple[int, int] = (5, 10)
    solid: tuple[int, int] = (14, 21)
    at_c: float = 25.0


FILM_DAYS = FilmDays()


class BottleKind(Enum):
    """What the raw liquid is, as its label tells."""

    RAW_PLAIN = "raw_plain"
    RAW_FLAVOURED = "raw_flavoured"
    PASTEURISED = "pasteurised"
    UNKNOWN = "unknown"
    STARTER = "starter"  # liquid of a culture of one's own


@dataclass(frozen=True, slots=True, kw_only=True)
class Growth:
    """How far a growing culture is. ``day`` is None before the raw liquid went in."""

    batch: Batch
    culture: Culture
    day: int | None
    film_seen_day: int | None
    thickness_mm: float | None
    last_look: Look | None
    first_film_from: datetime | None
    first_film_to: datetime | None
    solid_from: datetime | None
    solid_to: datetime | None
    verdict: Verdict


class Growing:
    """Plan the growing of a culture, watch it, and call it grown."""

    def __init__(self, door: Door, settings: Settings) -> None:
        self._door = door
        self._batches = Batches(door, settings)
        self._care = CultureCare(door, settings)

    def default_wish(self, vessel_id: int) -> Wish:
        """Return the usual amounts, less if the vessel holds no more."""
        wish = self._batches.default_wish(vessel_id)
        usual_l = RAW_VOLUME_L + SWEET_TEA_VOLUME_L
        fill_l = min(usual_l, wish.fill_volume_l)
        return replace(
            wish,
            fill_volume_l=fill_l,
            sugar_g_per_l=SUGAR_G_PER_L,
            starter=Starter(taste=StarterTaste.BALANCED),
            starter_volume_l=fill_l * RAW_VOLUME_L / usual_l,
        )

    def bottle_verdicts(self, bottle: BottleKind) -> tuple[Verdict, ...]:
        """Judge by the label whether a culture is likely to grow; it refuses nothing."""
        code, level = {
            BottleKind.RAW_PLAIN: ("bottle_raw", Level.INFORM),
            BottleKind.RAW_FLAVOURED: ("bottle_flavoured", Level.WARN),
            BottleKind.PASTEURISED: ("bottle_pasteurised", Level.WARN),
            BottleKind.UNKNOWN: ("bottle_unknown", Level.WARN),
            BottleKind.STARTER: ("bottle_starter", Level.INFORM),
        }[bottle]
        return (Verdict(code, level),)

    def start(
        self,
        vessel_id: int,
        *,
        name: str,
        wish: Wish,
        batch_name: str = "",
        source: str = "",
        parent_id: int | None = None,
    ) -> Batch:
        """Plan a batch that grows a culture, which is forming from then on.

        Parameters
        ----------
        name
            Of the culture; the batch has the same unless ``batch_name`` is given.
        source
            Where the raw liquid is from, in the maker's words.
        parent_id
            The culture whose starter liquid it is; None for a bottle.

        Raises
        ------
        ImpossibleInput
            As for planning a batch; "name" with reason "taken"; "culture_id" with reason
            "gone", "forming" or "suspect" for the parent.
        """
        tidy = tidy_name(name)
        if parent_id is not None:
            self._care.get_usable(parent_id)
        with self._door.store.read() as unit:
            _check_name(unit, tidy)
            vessel = unit.vessels.get(vessel_id)
            check_vessel(unit, vessel, None)
        now = self._door.clock.now()
        origin = CultureOrigin.RAW_BOTTLE if parent_id is None else CultureOrigin.STARTER
        forming = CultureDraft(
            name=tidy,
            origin=origin,
            state=CultureState.FORMING,
            born_at=now,
            note=source.strip(),
        )
        plan = self._batches.draft(vessel, None, batch_name or tidy, wish)

        def work(unit: UnitOfWork) -> Batch:
            culture = unit.cultures.add(forming)
            if parent_id is not None:
                link = CultureParentDraft(culture_id=culture.id, parent_id=parent_id)
                unit.culture_parents.add(link)
            for done in unit.batches.where(vessel_id=vessel_id, stage=BatchStage.DRAWN_OFF):
                unit.batches.change(done.id, stage=BatchStage.CLOSED)
            return unit.batches.add(
                replace(
                    plan,
                    culture_id=culture.id,
                    purpose=BatchPurpose.CULTURE,
                    starter_culture_id=parent_id,
                )
            )

        return self._door.perform(
            ActKind.START_GROWING,
            {"name": tidy, "vessel": vessel.name, "source": forming.note},
            work,
            topics=Topic.BATCHES | Topic.CULTURES,
            batch_id=lambda batch: batch.id,
            vessel_id=vessel_id,
            culture_id=lambda batch: batch.culture_id,
        )

    def growth_of(self, culture_id: int) -> Growth | None:
        """Return how far a growing culture is; None if it does not grow in a live batch."""
        with self._door.store.read() as unit:
            culture = unit.cultures.get(culture_id)
            batch = growing_batch(unit, culture_id)
            if batch is None:
                return None
            readings = unit.readings.where(
                batch_id=batch.id,
                quantity=(Quantity.LOOK, Quantity.PELLICLE_MM),
                order_by=("at", "id"),
            )
        return self._growth(culture, batch, readings)

    def look(
        self, batch_id: int, look: Look, *, film_mm: float | None = None, text: str = ""
    ) -> tuple[Reading, ...]:
        """Keep a look at a growing culture: what was seen, and how thick the film is.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "not_growing"; "pellicle_mm" out of range.
        """
        batch = self._expect(batch_id)
        _check_thickness(film_mm)
        now = self._door.clock.now()
        drafts = [_seen(batch_id, now, look)]
        if film_mm is not None:
            drafts.append(_thickness(batch_id, now, film_mm))
        if text.strip():
            drafts.append(_note(batch_id, now, text.strip()))
        with self._door.store.read() as unit:
            vessel_name = unit.vessels.get(batch.vessel_id).name

        def work(unit: UnitOfWork) -> tuple[Reading, ...]:
            flag_if_moldy(unit, batch, drafts, now)
            return tuple(unit.readings.add(draft) for draft in drafts)

        return self._door.perform(
            ActKind.ADD_READINGS,
            {
                "batch": batch.name,
                "vessel": vessel_name,
                "readings": [_fact(draft) for draft in drafts],
            },
            work,
            topics=Topic.READINGS,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
            culture_id=batch.culture_id,
        )

    def thickness_verdict(self, pellicle_mm: float) -> Verdict:
        """Judge whether a film is thick enough to be called grown; it refuses nothing."""
        numbers = {"value_mm": pellicle_mm, "low_mm": SOLID_MM[0], "high_mm": SOLID_MM[1]}
        if pellicle_mm < SOLID_MM[0]:
            return Verdict("film_thin", Level.WARN, numbers)
        return Verdict("film_solid", Level.INFORM, numbers)

    def finish(self, batch_id: int, pellicle_mm: float) -> Culture:
        """Call a culture grown: it rests in the vessel, in the liquid it grew in.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "not_growing", "not_souring" or "suspect";
            "pellicle_mm" out of range.
        """
        batch = self._expect(batch_id)
        if batch.stage is not BatchStage.SOURING:
            raise ImpossibleInput("batch_id", batch_id, reason="not_souring")
        if batch.suspect_at is not None:
            raise ImpossibleInput("batch_id", batch.name, reason="suspect")
        _check_thickness(pellicle_mm)
        now = self._door.clock.now()
        culture_id = batch.culture_id or 0
        with self._door.store.read() as unit:
            culture = unit.cultures.get(culture_id)
            volume_l = _volume_now_l(unit, batch)

        def work(unit: UnitOfWork) -> Culture:
            unit.batches.change(batch_id, stage=BatchStage.CLOSED, ended_at=now)
            unit.readings.add(_thickness(batch_id, now, pellicle_mm))
            if volume_l > 0.0:
                unit.care.add(stated(culture_id, now, volume_l))
            if volume_l >= DROP_L:  # what it grew in stays with it, as starter
                unit.transfers.add(
                    TransferDraft(
                        at=now,
                        kind=TransferKind.STARTER,
                        volume_l=volume_l,
                        from_batch_id=batch_id,
                        to_culture_id=culture_id,
                    )
                )
            return unit.cultures.change(
                culture_id,
                state=CultureState.RESTING,
                vessel_id=batch.vessel_id,
                pellicle_mm=pellicle_mm,
                rest_volume_l=volume_l if volume_l > 0.0 else None,
            )

        return self._door.perform(
            ActKind.FINISH_GROWING,
            {"name": culture.name, "pellicle_mm": pellicle_mm},
            work,
            topics=Topic.BATCHES | Topic.CULTURES,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
            culture_id=culture_id,
        )

    def _expect(self, batch_id: int) -> Batch:
        batch = self._batches.get(batch_id)
        if batch.purpose is not BatchPurpose.CULTURE or not batch.stage.is_live:
            raise ImpossibleInput("batch_id", batch_id, reason="not_growing")
        return batch

    def _growth(self, culture: Culture, batch: Batch, readings: tuple[Reading, ...]) -> Growth:
        started_at = batch.started_at
        films = [row for row in readings if row.quantity is Quantity.PELLICLE_MM and row.value]
        looks = [row for row in readings if row.quantity is Quantity.LOOK]
        day = None if started_at is None else self._day(started_at, self._door.clock.now())
        seen_day = self._day(started_at, films[0].at) if films and started_at is not None else None
        thickness_mm = films[-1].value if films else None
        look = Look(looks[-1].text) if looks else None

        def on(number: int) -> datetime | None:
            return None if started_at is None else started_at + timedelta(days=number)

        return Growth(
            batch=batch,
            culture=culture,
            day=day,
            film_seen_day=seen_day,
            thickness_mm=thickness_mm,
            last_look=look,
            first_film_from=on(FILM_DAYS.first_film[0]),
            first_film_to=on(FILM_DAYS.first_film[1]),
            solid_from=on(FILM_DAYS.solid[0]),
            solid_to=on(FILM_DAYS.solid[1]),
            verdict=film_verdict(day, thickness_mm, look),
        )

    def _day(self, started_at: datetime, at: datetime) -> int:
        zone = self._door.clock.zone()
        return (at.astimezone(zone).date() - started_at.astimezone(zone).date()).days


def film_verdict(day: int | None, thickness_mm: float | None, look: Look | None) -> Verdict:
    """Judge a growing film by its day, its thickness in mm and the last look at it."""
    numbers = {
        "day": float(day or 0),
        "first_days": float(FILM_DAYS.first_film[0]),
        "last_days": float(FILM_DAYS.first_film[1]),
        "solid_days": float(FILM_DAYS.solid[0]),
        "latest_days": float(FILM_DAYS.solid[1]),
        "low_mm": SOLID_MM[0],
        "high_mm": SOLID_MM[1],
        "value_mm": thickness_mm or 0.0,
        "at_c": FILM_DAYS.at_c,
    }
    if look is Look.MOLD:
        return Verdict("mold_discard_all", Level.STOP)
    if look is Look.UNSURE:
        return Verdict("film_unsure", Level.WARN)
    if day is None:
        return Verdict("film_not_begun", Level.INFORM, numbers)
    if thickness_mm is not None and thickness_mm >= SOLID_MM[0]:
        return Verdict("film_ready", Level.INFORM, numbers)
    if thickness_mm is not None:
        late = day > FILM_DAYS.solid[1]
        return Verdict("film_slow" if late else "film_growing", Level.INFORM, numbers)
    if day <= FILM_DAYS.first_film[1]:
        return Verdict("film_awaited", Level.INFORM, numbers)
    return Verdict("film_overdue", Level.WARN, numbers)


def _volume_now_l(unit: ReadUnit, batch: Batch) -> float:
    into = sum(row.volume_l for row in unit.transfers.where(to_batch_id=batch.id))
    out = sum(row.volume_l for row in unit.transfers.where(from_batch_id=batch.id))
    return max(0.0, batch.fill_volume_l + into - out)


def _check_name(unit: ReadUnit, name: str) -> None:
    gone = (CultureState.RETIRED, CultureState.GIVEN_AWAY, CultureState.LOST)
    for other in unit.cultures.where():
        if other.state not in gone and is_same_name(other.name, name):
            raise ImpossibleInput("name", name, reason="taken")


def _check_thickness(pellicle_mm: float | None) -> None:
    if pellicle_mm is not None and not 0.0 <= pellicle_mm <= PELLICLE_HIGH_MM:
        raise ImpossibleInput("pellicle_mm", pellicle_mm, low=0.0, high=PELLICLE_HIGH_MM, unit="mm")


def _seen(batch_id: int, at: datetime, look: Look) -> ReadingDraft:
    return ReadingDraft(
        batch_id=batch_id,
        at=at,
        quantity=Quantity.LOOK,
        method=Method.EYE,
        text=look.value,
        entered=look.value,
    )


def _thickness(batch_id: int, at: datetime, film_mm: float) -> ReadingDraft:
    return ReadingDraft(
        batch_id=batch_id,
        at=at,
        quantity=Quantity.PELLICLE_MM,
        method=Method.EYE,
        value=film_mm,
        sd=2.0,  # by eye, as everywhere
        entered=f"{film_mm:g}",
    )


def _note(batch_id: int, at: datetime, words: str) -> ReadingDraft:
    return ReadingDraft(
        batch_id=batch_id,
        at=at,
        quantity=Quantity.NOTE,
        method=Method.EYE,
        text=words,
        entered=words,
    )


def _fact(draft: ReadingDraft) -> dict[str, object]:
    return {"quantity": draft.quantity.value, "value": draft.value, "text": draft.text}
