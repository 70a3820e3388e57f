"""What was measured, tasted or noted: checked, kept, corrected, taken back."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass, replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any

from brewdesk.services import suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.quantities import Quantities
from brewdesk.store.records import Batch, Reading, ReadingDraft
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import Look, Method, Quantity, TasteMark
from culturecore.units import Kind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

EARLIEST_BEFORE_START = timedelta(days=1)  # water and starter are measured before mixing
LATEST_AFTER_NOW = timedelta(minutes=5)  # two clocks are never quite alike


@dataclass(frozen=True, slots=True)
class Span:
    """The values a reading can have, and those seen in kombucha; others are worth a second look."""

    low: float
    high: float
    unit: str
    usual_low: float
    usual_high: float


# Outer limits refuse slips of the keyboard. Usual ranges are from memory, on the wide side:
# pH from very sour kombucha to alkaline tap water; sugar to the sweetest sweet tea.
SPANS = {
    Quantity.PH: Span(0.0, 14.0, "pH", 2.0, 7.5),
    Quantity.TEMPERATURE_C: Span(-5.0, 110.0, "degC", 10.0, 40.0),
    Quantity.BRIX: Span(0.0, 40.0, "Brix", 0.0, 20.0),
    Quantity.SPECIFIC_GRAVITY: Span(0.98, 1.15, "", 0.995, 1.08),
    Quantity.TA_G_PER_L: Span(0.0, 60.0, "g/L", 0.0, 30.0),
    Quantity.PELLICLE_MM: Span(0.0, 200.0, "mm", 0.0, 50.0),
}

# Standard uncertainty of one reading, in the reading's unit. Where a scale is read by eye it is
# half its usual step; the figures are common practice, no source, unless one is named.
_SD = {
    # Michigan State University Extension gives 0.01-0.02 for a good, calibrated meter; a kitchen
    # meter between calibrations is given more.
    (Quantity.PH, Method.METER): 0.05,
    (Quantity.PH, Method.STRIP): 0.3,  # steps of about 0.5 pH, judged by colour
    (Quantity.PH, Method.TITRATION): 0.05,
    (Quantity.TEMPERATURE_C, Method.THERMOMETER): 0.5,
    (Quantity.TEMPERATURE_C, Method.METER): 0.5,
    (Quantity.TEMPERATURE_C, Method.STRIP): 1.0,  # stick-on strips, steps of 2 degC
    (Quantity.BRIX, Method.REFRACTOMETER): 0.2,  # one mark of a hand instrument
    (Quantity.BRIX, Method.HYDROMETER): 0.5,
    (Quantity.SPECIFIC_GRAVITY, Method.HYDROMETER): 0.001,  # half a mark of 0.002
    (Quantity.SPECIFIC_GRAVITY, Method.REFRACTOMETER): 0.001,
    (Quantity.PELLICLE_MM, Method.RULER): 0.5,
    (Quantity.PELLICLE_MM, Method.EYE): 2.0,
}
_TA_SHARE = 0.05  # titration with a syringe or small burette: 5 % of the value
_TA_LEAST_G_PER_L = 0.1  # about one drop of 0.1 mol/L base in a 10 mL sample gives 0.03 g/L

METHODS = {
    Quantity.PH: (Method.METER, Method.STRIP),
    Quantity.TEMPERATURE_C: (Method.THERMOMETER, Method.METER, Method.STRIP),
    Quantity.BRIX: (Method.REFRACTOMETER, Method.HYDROMETER),
    Quantity.SPECIFIC_GRAVITY: (Method.HYDROMETER, Method.REFRACTOMETER),
    Quantity.TA_G_PER_L: (Method.TITRATION,),
    Quantity.TASTE: (Method.TONGUE,),
    Quantity.PELLICLE_MM: (Method.RULER, Method.EYE),
    Quantity.NOTE: (Method.EYE,),
    Quantity.LOOK: (Method.EYE,),
}

# Quantities told by one of a few words; the word stands in ``text``.
_OFFERED = {
    Quantity.TASTE: frozenset(mark.value for mark in TasteMark),
    Quantity.LOOK: frozenset(look.value for look in Look),
}

_ENTRY = {
    Quantity.PH: (Kind.PH, "", 1.0),
    Quantity.TEMPERATURE_C: (Kind.TEMPERATURE, "", 1.0),
    Quantity.BRIX: (Kind.BRIX, "", 1.0),
    Quantity.SPECIFIC_GRAVITY: (Kind.GRAVITY, "", 1.0),
    Quantity.TA_G_PER_L: (Kind.ACIDITY, "", 1.0),
    Quantity.PELLICLE_MM: (Kind.LENGTH, "mm", 10.0),  # read as length in cm, kept in mm
}

# The names of numbers in a verdict carry their unit.
_NUMBER_ENDING = {
    Quantity.TEMPERATURE_C: "_c",
    Quantity.BRIX: "_brix",
    Quantity.SPECIFIC_GRAVITY: "_sg",
    Quantity.TA_G_PER_L: "_g_per_l",
    Quantity.PELLICLE_MM: "_mm",
}


def flag_if_moldy(
    unit: UnitOfWork, batch: Batch, drafts: Sequence[ReadingDraft], now: datetime
) -> None:
    """Put a batch under suspicion if a look among ``drafts`` found mold."""
    looks = [draft.text for draft in drafts if draft.quantity is Quantity.LOOK]
    if Look.MOLD.value in looks:
        notes = [draft.text for draft in drafts if draft.quantity is Quantity.NOTE]
        suspicion.flag_batch_seen(unit, batch, "; ".join(notes), now)


class Readings:
    """Keep the readings of batches."""

    def __init__(self, door: Door, quantities: Quantities) -> None:
        self._door = door
        self._quantities = quantities

    def of_batch(self, batch_id: int) -> tuple[Reading, ...]:
        """Return a batch's readings, oldest first."""
        with self._door.store.read() as unit:
            return unit.readings.where(batch_id=batch_id, order_by=("at", "id"))

    def get(self, reading_id: int) -> Reading:
        """Return one reading.

        Raises
        ------
        NoSuchRow
            If there is no reading with this id.
        """
        with self._door.store.read() as unit:
            return unit.readings.get(reading_id)

    def record(self, drafts: Sequence[ReadingDraft]) -> tuple[Reading, ...]:
        """Keep all readings of one form as one act.

        A draft without ``sd`` gets the usual one of its method. A look that found mold puts
        the batch and its culture under suspicion.

        Raises
        ------
        ImpossibleInput
            For a value or time no reading can have; ``field`` is the quantity's value
            ("ph", "brix", ...), "at", "text" or "drafts". Then none is kept.
        """
        if not drafts:
            raise ImpossibleInput("drafts", drafts, reason="empty")
        batch_ids = {draft.batch_id for draft in drafts}
        if len(batch_ids) > 1:
            raise ImpossibleInput("drafts", drafts, reason="several_batches")
        batch_id = batch_ids.pop()
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            vessel_name = unit.vessels.get(batch.vessel_id).name
        for draft in drafts:
            self.check(draft, batch)
        ready = [_with_sd(draft) for draft in drafts]

        def work(unit: UnitOfWork) -> tuple[Reading, ...]:
            flag_if_moldy(unit, batch, ready, self._door.clock.now())
            return tuple(unit.readings.add(draft) for draft in ready)

        return self._door.perform(
            ActKind.ADD_READINGS,
            {
                "batch": batch.name,
                "vessel": vessel_name,
                "readings": [_fact(draft) for draft in ready],
            },
            work,
            topics=Topic.READINGS,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
        )

    def record_look(
        self, batch_id: int, look: Look, seen: str = "", *, at: datetime | None = None
    ) -> tuple[Reading, ...]:
        """Keep a look at the surface and a note of what was seen, as one act.

        Raises
        ------
        ImpossibleInput
            As for `record`.
        """
        moment = at if at is not None else self._door.clock.now()
        found = ReadingDraft(
            batch_id=batch_id,
            at=moment,
            quantity=Quantity.LOOK,
            method=Method.EYE,
            text=look.value,
        )
        if not seen.strip():
            return self.record([found])
        return self.record([found, replace(found, quantity=Quantity.NOTE, text=seen.strip())])

    def edit(self, reading_id: int, **fields: Any) -> Reading:  # noqa: ANN401  # column values
        """Correct a reading.

        Raises
        ------
        ImpossibleInput
            As for `record`.
        """
        old = self.get(reading_id)
        draft = ReadingDraft(**(_fields(old) | fields))
        is_by_other_means = draft.method != old.method or draft.value != old.value
        if is_by_other_means and "sd" not in fields and old.sd == _usual_sd(old):
            fields["sd"] = _usual_sd(draft)
        batch, vessel_name = self._about(draft)
        self.check(draft, batch)

        def work(unit: UnitOfWork) -> Reading:
            if draft.text != old.text:
                flag_if_moldy(unit, batch, [draft], self._door.clock.now())
            return unit.readings.change(reading_id, **fields)

        return self._door.perform(
            ActKind.EDIT_READING,
            {
                "batch": batch.name,
                "vessel": vessel_name,
                "old": _fact(old),
                "readings": [_fact(draft)],
            },
            work,
            topics=Topic.READINGS,
            batch_id=batch.id,
            vessel_id=batch.vessel_id,
        )

    def remove(self, reading_id: int) -> None:
        """Take a reading out, until undone. Its photos stay with the batch."""
        old = self.get(reading_id)
        batch, vessel_name = self._about(old)

        def work(unit: UnitOfWork) -> None:
            for photo in unit.photos.where(reading_id=reading_id):
                unit.photos.change(photo.id, reading_id=None)
            unit.readings.remove(reading_id)

        self._door.perform(
            ActKind.REMOVE_READING,
            {"batch": batch.name, "vessel": vessel_name, "readings": [_fact(old)]},
            work,
            topics=Topic.READINGS,
            batch_id=batch.id,
            vessel_id=batch.vessel_id,
        )

    def check(self, draft: ReadingDraft, batch: Batch) -> None:
        """Refuse what no reading can be.

        Raises
        ------
        ImpossibleInput
            As for `record`.
        """
        _check_value(draft)
        now = self._door.clock.now()
        if draft.at > now + LATEST_AFTER_NOW:
            raise ImpossibleInput("at", draft.at, reason="in_future")
        begin: datetime = batch.started_at or batch.planned_at
        if draft.at < begin - EARLIEST_BEFORE_START:
            raise ImpossibleInput("at", draft.at, reason="before_start")

    def doubts(self, draft: ReadingDraft) -> tuple[Verdict, ...]:
        """Return a warning for a possible value that kombucha hardly ever has; not a refusal."""
        span = SPANS.get(draft.quantity)
        if span is None or draft.value is None:
            return ()
        if span.usual_low <= draft.value <= span.usual_high:
            return ()
        ending = _NUMBER_ENDING.get(draft.quantity, "")
        numbers = {
            f"value{ending}": draft.value,
            f"low{ending}": span.usual_low,
            f"high{ending}": span.usual_high,
        }
        return (Verdict(f"{draft.quantity.value}_unusual", Level.WARN, numbers),)

    def methods(self, quantity: Quantity) -> tuple[Method, ...]:
        """Return the methods by which a quantity is taken, the usual one first."""
        return METHODS[quantity]

    def default_sd(
        self, quantity: Quantity, method: Method, value: float | None = None
    ) -> float | None:
        """Return the usual standard uncertainty, in the quantity's unit; None for words.

        Titratable acidity has one in proportion to ``value``.
        """
        return _sd(quantity, method, value)

    def with_usual_sd(self, draft: ReadingDraft) -> ReadingDraft:
        """Return a draft with the usual uncertainty of its method, unless it has one."""
        return _with_sd(draft)

    def entry_from_text(
        self, batch_id: int, quantity: Quantity, method: Method, text: str, at: datetime
    ) -> ReadingDraft:
        """Read one field of the form into a draft; a taste or a look is the value of its mark.

        Raises
        ------
        NotAQuantity
            If the text is no amount of this quantity.
        """
        blank = ReadingDraft(
            batch_id=batch_id, at=at, quantity=quantity, method=method, entered=text
        )
        if quantity not in _ENTRY:
            return replace(blank, text=text.strip())
        kind, unit, factor = _ENTRY[quantity]
        if unit:
            value = self._quantities.read_in(text, kind, unit) * factor
        else:
            value = self._quantities.read(text, kind) * factor
        return replace(blank, value=value, sd=_sd(quantity, method, value))

    def _about(self, reading: ReadingDraft) -> tuple[Batch, str]:
        with self._door.store.read() as unit:
            return _batch_and_vessel_name(unit, reading.batch_id)


def _batch_and_vessel_name(unit: ReadUnit, batch_id: int) -> tuple[Batch, str]:
    batch = unit.batches.get(batch_id)
    return batch, unit.vessels.get(batch.vessel_id).name


def _check_value(draft: ReadingDraft) -> None:
    if draft.method not in METHODS[draft.quantity]:
        raise ImpossibleInput("method", draft.method, reason="wrong_method")
    if draft.quantity is Quantity.NOTE:
        if not draft.text.strip():
            raise ImpossibleInput("text", draft.text, reason="empty")
        return
    offered = _OFFERED.get(draft.quantity)
    if offered is not None:
        if draft.text not in offered:
            raise ImpossibleInput("text", draft.text, reason="not_offered")
        return
    span, field = SPANS[draft.quantity], draft.quantity.value
    if draft.value is None:
        raise ImpossibleInput(field, None, low=span.low, high=span.high, reason="empty")
    if not span.low <= draft.value <= span.high:  # a NaN fails this too
        raise ImpossibleInput(field, draft.value, low=span.low, high=span.high, unit=span.unit)
    widest = (span.high - span.low) / 3.0  # more than this is no measurement
    if draft.sd is not None and not 0.0 < draft.sd <= widest:
        raise ImpossibleInput("sd", draft.sd, low=0.0, high=widest, unit=span.unit)


def _sd(quantity: Quantity, method: Method, value: float | None) -> float | None:
    if quantity is Quantity.TA_G_PER_L:
        return max(_TA_LEAST_G_PER_L, _TA_SHARE * (value or 0.0))
    return _SD.get((quantity, method))


def _usual_sd(draft: ReadingDraft) -> float | None:
    return _sd(draft.quantity, draft.method, draft.value)


def _with_sd(draft: ReadingDraft) -> ReadingDraft:
    return draft if draft.sd is not None else replace(draft, sd=_usual_sd(draft))


def _fact(draft: ReadingDraft) -> dict[str, object]:
    return {"quantity": draft.quantity.value, "value": draft.value, "text": draft.text}


def _fields(reading: ReadingDraft) -> dict[str, Any]:
    fields = asdict(reading)
    fields.pop("id", None)
    return fields
