"""What rows say of a life that no act says: old records, births, and what was left undone."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services.clock import Clock
from brewdesk.services.quantities import Quantities
from brewdesk.services.subjects import Subject, SubjectKind, names_of
from brewdesk.services.wording.acts import reading_text
from brewdesk.services.wording.reminders import reminder_words
from brewdesk.services.wording.timeline import (
    born_words,
    care_words,
    log_words,
    missed_words,
    move_words,
    photo_words,
    temperature_words,
    transfer_words,
)
from brewdesk.store.records import Photo, Reminder, Transfer, VesselMove
from culturecore.stages import ReminderState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

RowTable = tuple[str, int]  # a table's name and a row's id


@dataclass(frozen=True, slots=True)
class RowLine:
    """One row's line; ``about`` is what it is about, the nearest first."""

    at: datetime
    text: str
    row: RowTable
    about: tuple[Subject, ...]


class RowTeller:
    """Tells what the rows of one unit say."""

    def __init__(self, unit: ReadUnit, quantities: Quantities, clock: Clock) -> None:
        self._unit = unit
        self._quantities = quantities
        self._clock = clock

    def lines(self, subject: Subject) -> list[RowLine]:
        """Return a line for every row that has to do with a subject, in no order.

        What happened to the batches in a vessel is not among them.
        """
        return {
            SubjectKind.BATCH: self._of_batch,
            SubjectKind.CULTURE: self._of_culture,
            SubjectKind.PLACE: self._of_place,
            SubjectKind.VESSEL: self._of_vessel,
        }[subject.kind](subject.id)

    def _of_vessel(self, vessel_id: int) -> list[RowLine]:
        moves = self._unit.vessel_moves
        rows = {row.id: row for row in moves.where(from_vessel_id=vessel_id)}
        rows |= {row.id: row for row in moves.where(to_vessel_id=vessel_id)}
        return self._moves(tuple(rows.values()))

    def _of_batch(self, batch_id: int) -> list[RowLine]:
        """Readings, photos, transfers, pourings over, and reminders left undone."""
        batch = Subject(SubjectKind.BATCH, batch_id)
        show = self._quantities.show
        lines = [
            RowLine(
                row.at,
                reading_text(
                    {"quantity": row.quantity.value, "value": row.value, "text": row.text}, show
                ),
                ("reading", row.id),
                (batch,),
            )
            for row in self._unit.readings.where(batch_id=batch_id)
        ]
        unit = self._unit
        lines += self._photos(unit.photos.where(batch_id=batch_id))
        lines += self._transfers(unit.transfers.where(from_batch_id=batch_id))
        lines += self._transfers(unit.transfers.where(to_batch_id=batch_id))
        lines += self._moves(unit.vessel_moves.where(batch_id=batch_id))
        lines += self._reminders(batch, unit.reminders.where(batch_id=batch_id))
        return lines

    def _of_culture(self, culture_id: int) -> list[RowLine]:
        """Its birth, care, photos, transfers of its liquid, and reminders left undone."""
        culture = Subject(SubjectKind.CULTURE, culture_id)
        row = self._unit.cultures.get(culture_id)
        lines = [RowLine(row.born_at, born_words(row), ("culture", row.id), (culture,))]
        lines += [
            RowLine(care.at, care_words(care, self._quantities.show), ("care", care.id), (culture,))
            for care in self._unit.care.where(culture_id=culture_id)
        ]
        unit = self._unit
        lines += self._photos(unit.photos.where(culture_id=culture_id))
        lines += self._transfers(unit.transfers.where(from_culture_id=culture_id))
        lines += self._transfers(unit.transfers.where(to_culture_id=culture_id))
        lines += self._reminders(culture, unit.reminders.where(culture_id=culture_id))
        return lines

    def _of_place(self, place_id: int) -> list[RowLine]:
        """Temperatures read there, and loggers' files."""
        place = Subject(SubjectKind.PLACE, place_id)
        lines = [
            RowLine(
                row.at,
                temperature_words(row.temperature_c, self._quantities.show),
                ("place_temperature", row.id),
                (place,),
            )
            for row in self._unit.place_temperatures.where(place_id=place_id)
        ]
        lines += [
            RowLine(log.last_at, log_words(log), ("temperature_log", log.id), (place,))
            for log in self._unit.temperature_logs.where(place_id=place_id)
        ]
        return lines

    def _moves(self, rows: Sequence[VesselMove]) -> list[RowLine]:
        """Pourings over."""
        found = []
        for row in rows:
            batch = Subject(SubjectKind.BATCH, row.batch_id)
            old = Subject(SubjectKind.VESSEL, row.from_vessel_id)
            new = Subject(SubjectKind.VESSEL, row.to_vessel_id)
            names = names_of(self._unit, [batch, old, new])
            text = move_words(names[batch], names[old], names[new])
            found.append(RowLine(row.at, text, ("vessel_move", row.id), (batch, new, old)))
        return found

    def _photos(self, rows: Sequence[Photo]) -> list[RowLine]:
        return [
            RowLine(
                row.taken_at,
                photo_words(row.caption),
                ("photo", row.id),
                _subjects(row.batch_id, row.culture_id),
            )
            for row in rows
        ]

    def _transfers(self, rows: Sequence[Transfer]) -> list[RowLine]:
        found = []
        for row in rows:
            about = (
                *_subjects(row.from_batch_id, row.from_culture_id),
                *_subjects(row.to_batch_id, row.to_culture_id),
            )
            text = transfer_words(row, self._quantities.show)
            found.append(RowLine(row.at, text, ("transfer", row.id), about))
        return found

    def _reminders(self, subject: Subject, rows: Sequence[Reminder]) -> list[RowLine]:
        """Return those that came due and were never ticked off; the acts tell of the others."""
        name = names_of(self._unit, [subject]).get(subject, "")
        return [
            RowLine(row.shown_at, self._missed(row, name), ("reminder", row.id), (subject,))
            for row in rows
            if row.shown_at is not None and row.state is not ReminderState.DONE
        ]

    def _missed(self, row: Reminder, name: str) -> str:
        title, _body = reminder_words(row, name, "", self._clock.now(), self._clock.zone())
        return missed_words(title)


def _subjects(batch_id: int | None, culture_id: int | None) -> tuple[Subject, ...]:
    found = []
    if batch_id is not None:
        found.append(Subject(SubjectKind.BATCH, batch_id))
    if culture_id is not None:
        found.append(Subject(SubjectKind.CULTURE, culture_id))
    return tuple(found)
