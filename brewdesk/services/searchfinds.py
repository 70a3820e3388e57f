"""Folded entries turned back into what people read, for the few that are shown."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services.quantities import Quantities
from brewdesk.services.searchindex import SearchIndex
from brewdesk.services.searchparts import Entry
from brewdesk.services.searchwords import Find, FoundKind
from brewdesk.services.subjects import Subject, known, names_of
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.search import batch_line, culture_line, vessel_line
from brewdesk.services.wording.stages import name_of
from culturecore.units import Kind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

Told = tuple[str, str, datetime | None]  # name, text, moment


def finds_of(
    unit: ReadUnit, index: SearchIndex, entries: Sequence[Entry], quantities: Quantities
) -> tuple[Find, ...]:
    """Return what is shown of ``entries``, in their order. What is gone meanwhile is left out."""
    told = _told(unit, index, entries, quantities)
    acts = {entry.id for entry in entries if entry.kind is FoundKind.ACT}
    named_by_acts = unit.acts.subjects_of(acts)
    subjects = [_subject(entry, named_by_acts) for entry in entries]
    names = names_of(unit, [subject for subject in subjects if subject is not None])
    finds = []
    for entry, subject in zip(entries, subjects, strict=True):
        words = told.get((entry.kind, entry.id))
        if words is None:
            continue
        own_name, text, at = words
        name = names.get(subject, "") if subject is not None else ""
        finds.append(
            Find(
                kind=entry.kind,
                id=entry.id,
                name=own_name or name,
                text=text,
                at=at,
                subject=subject if name else None,
                act_id=entry.id if entry.kind is FoundKind.ACT else None,
            )
        )
    return tuple(finds)


def _subject(entry: Entry, named_by_acts: dict[int, tuple[tuple[str, int], ...]]) -> Subject | None:
    subject = entry.subject()
    if subject is None and entry.kind is FoundKind.ACT:
        return next(iter(known(named_by_acts.get(entry.id, ()))), None)
    return subject


def _told(
    unit: ReadUnit, index: SearchIndex, entries: Sequence[Entry], quantities: Quantities
) -> dict[tuple[FoundKind, int], Told]:
    ids: dict[FoundKind, set[int]] = {kind: set() for kind in FoundKind}
    for entry in entries:
        ids[entry.kind].add(entry.id)
    told: dict[tuple[FoundKind, int], Told] = {}

    def tell(kind: FoundKind, number: int, name: str, text: str, at: datetime | None) -> None:
        told[kind, number] = (name, text, at)

    vessels = {row.id: row.name for row in index.vessels.values()}
    places = {row.id: row.name for row in unit.places.where()}
    for batch in unit.batches.where(id=ids[FoundKind.BATCH]):
        text = batch_line(batch, vessels.get(batch.vessel_id, ""))
        at = batch.ended_at or batch.started_at or batch.planned_at
        tell(FoundKind.BATCH, batch.id, batch.name, text, at)
    for culture in unit.cultures.where(id=ids[FoundKind.CULTURE]):
        text = culture_line(culture, vessels.get(culture.vessel_id or 0, ""))
        tell(FoundKind.CULTURE, culture.id, culture.name, text, culture.gone_at or culture.born_at)
    for vessel in unit.vessels.where(id=ids[FoundKind.VESSEL]):
        volume = quantities.show(vessel.working_volume_l, Kind.VOLUME)
        text = vessel_line(vessel, volume, places.get(vessel.place_id, ""))
        tell(FoundKind.VESSEL, vessel.id, vessel.name, text, vessel.retired_at)
    for place in unit.places.where(id=ids[FoundKind.PLACE]):
        text = quantities.show(place.temperature_c, Kind.TEMPERATURE)
        tell(FoundKind.PLACE, place.id, place.name, text, None)
    for reading in unit.readings.where(id=ids[FoundKind.NOTE]):
        tell(FoundKind.NOTE, reading.id, "", reading.text, reading.at)
    for care in unit.care.where(id=ids[FoundKind.CARE]):
        text = f"{name_of(care.kind)}: {care.text}"
        tell(FoundKind.CARE, care.id, "", text, care.at)
    for photo in unit.photos.where(id=ids[FoundKind.PHOTO]):
        tell(FoundKind.PHOTO, photo.id, "", photo.caption, photo.taken_at)
    for reminder in unit.reminders.where(id=ids[FoundKind.REMINDER]):
        tell(FoundKind.REMINDER, reminder.id, "", reminder.text, reminder.due_at)
    for act in unit.acts.some(ids[FoundKind.ACT]):
        tell(FoundKind.ACT, act.id, "", act_text(act, quantities.show), act.at)
    return told
