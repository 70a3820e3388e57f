"""What may share mold with something that had it: who touched whom, and since when.

A patch of mold is only what can be seen of it, so everything that shared liquid with a
lost culture or batch since that was last seen clean is under suspicion: what it gave
liquid to, and what its own liquid came from, with what that gave to others. What only
poured into a tainted jar is not: liquid does not run back.

What mold was seen on is under suspicion itself from that moment, until it is thrown out or
cleared: nothing may be drawn, lent or split from it meanwhile.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass
from datetime import datetime
from itertools import combinations
from typing import TYPE_CHECKING, Any

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.wording.looks import mold_seen_words
from brewdesk.store.records import (
    Batch,
    CareDraft,
    Culture,
    CultureParent,
    ReadingDraft,
    Transfer,
)
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import (
    BatchStage,
    CareKind,
    CultureState,
    Look,
    Method,
    Quantity,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

CULTURE, BATCH = "culture", "batch"
GONE_TO_HIGH = 200  # letters that the store keeps of what became of a culture
_GONE = (CultureState.RETIRED, CultureState.GIVEN_AWAY, CultureState.LOST)
_ENDED = (BatchStage.CLOSED, BatchStage.DISCARDED)
_WITH_CULTURE_IN = (BatchStage.BREWING, BatchStage.SOURING)

Node = tuple[str, int]


@dataclass(frozen=True, slots=True)
class Contact:
    """Something that shared liquid: "culture" or "batch", its id and name, and since when."""

    subject: str
    id: int
    name: str
    since: datetime
    is_here: bool  # still in the pantry; what has ended or gone cannot be looked at


@dataclass(frozen=True, slots=True)
class _Link:
    """Liquid that went from one to another, or was in common from ``first`` to ``last``."""

    source: Node
    target: Node
    first: datetime
    last: datetime
    is_shared: bool


def suspect_verdict() -> Verdict:
    """Return the verdict on whatever may share mold with something that had it."""
    return Verdict("mold_suspected", Level.STOP)


def lost_fields(reason: str, now: datetime) -> dict[str, Any]:
    """Return what becomes of a culture's row when it is lost."""
    return {
        "state": CultureState.LOST,
        "vessel_id": None,
        "rest_volume_l": None,
        "gone_at": now,
        "gone_to": reason[:GONE_TO_HIGH],
    }


def inherited(unit: ReadUnit | UnitOfWork, batch: Batch) -> dict[str, Any]:
    """Return the suspicion a batch has or takes over from its culture or starter; {} if none."""
    sources: list[Batch | Culture] = [batch]
    culture_ids = (batch.culture_id, batch.starter_culture_id)
    sources += [unit.cultures.get(one) for one in culture_ids if one is not None]
    if batch.starter_batch_id is not None:
        sources.append(unit.batches.get(batch.starter_batch_id))
    for source in sources:
        if source.suspect_at is not None:
            return {"suspect_at": source.suspect_at, "suspect_reason": source.suspect_reason}
    return {}


def contacts_of(
    unit: ReadUnit | UnitOfWork,
    subject: str,
    subject_id: int,
    now: datetime,
    since: datetime | None = None,
) -> tuple[Contact, ...]:
    """Return everything that shared liquid with a culture or batch, in order of contact.

    ``since`` is when it was last clean; by default its last clean look, else its beginning.
    """
    pantry = _Pantry(unit, now)
    start = (subject, subject_id)
    begun = since or pantry.last_clean(start, now) or pantry.beginning(start)
    reached = _walk(pantry, start, begun)
    reached.pop(start, None)
    found = [pantry.contact(node, at) for node, at in reached.items()]
    return tuple(sorted(found, key=lambda one: (one.since, one.subject, one.id)))


def flag_contacts(
    unit: UnitOfWork, subject: str, subject_id: int, name: str, reason: str, now: datetime
) -> tuple[Contact, ...]:
    """Put everything still here that shared liquid with something under suspicion.

    What is under suspicion already keeps its first reason. Return what was flagged.
    """
    flagged = []
    fields: dict[str, Any] = {"suspect_at": now, "suspect_reason": f"{name}: {reason}"}
    for contact in contacts_of(unit, subject, subject_id, now):
        if not contact.is_here:
            continue
        if contact.subject == CULTURE:
            if unit.cultures.get(contact.id).suspect_at is None:
                unit.cultures.change(contact.id, **fields)
                flagged.append(contact)
        elif unit.batches.get(contact.id).suspect_at is None:
            unit.batches.change(contact.id, **fields)
            flagged.append(contact)
    return tuple(flagged)


def flag_batch_seen(unit: UnitOfWork, batch: Batch, reason: str, now: datetime) -> None:
    """Put a batch at which mold was seen under suspicion, with the culture that is in it."""
    words = reason or mold_seen_words()
    if batch.stage not in _ENDED:
        _flag_row(unit, batch, words, now)
    if batch.culture_id is not None:
        culture = unit.cultures.get(batch.culture_id)
        if culture.vessel_id == batch.vessel_id and culture.state not in _GONE:
            _flag_row(unit, culture, words, now)


def flag_culture_seen(unit: UnitOfWork, culture: Culture, reason: str, now: datetime) -> None:
    """Put a culture on which mold was seen under suspicion, with what lies in the same vessel."""
    words = reason or mold_seen_words()
    _flag_row(unit, culture, words, now)
    if culture.vessel_id is None:
        return
    for batch in unit.batches.where(vessel_id=culture.vessel_id, culture_id=culture.id):
        if batch.stage in _WITH_CULTURE_IN:
            _flag_row(unit, batch, words, now)
    if culture.state is CultureState.RESTING:
        at_rest = unit.cultures.where(vessel_id=culture.vessel_id, state=CultureState.RESTING)
        for other in at_rest:
            _flag_row(unit, other, f"{culture.name}: {words}", now)


def _flag_row(unit: UnitOfWork, row: Batch | Culture, reason: str, now: datetime) -> None:
    """Put one row under suspicion; what is so already keeps its first reason."""
    rows = unit.batches if isinstance(row, Batch) else unit.cultures
    if rows.get(row.id).suspect_at is None:
        rows.change(row.id, suspect_at=now, suspect_reason=reason)


class Suspicion:
    """See what is under suspicion, and clear it with a written reason."""

    def __init__(self, door: Door) -> None:
        self._door = door

    def contacts(self, subject: str, subject_id: int) -> tuple[Contact, ...]:
        """Return what would be flagged if this culture or batch were lost to mold now."""
        with self._door.store.read() as unit:
            found = contacts_of(unit, subject, subject_id, self._door.clock.now())
        return tuple(contact for contact in found if contact.is_here)

    def clear(
        self, *, culture_id: int | None = None, batch_id: int | None = None, reason: str
    ) -> None:
        """Take a culture or a batch out of suspicion; the reason is kept with it.

        Raises
        ------
        ImpossibleInput
            Field "reason" with reason "empty"; "culture_id" or "batch_id" with reason
            "not_suspect".
        """
        words = reason.strip()
        if not words:
            raise ImpossibleInput("reason", reason, reason="empty")
        with self._door.store.read() as unit:
            row: Culture | Batch
            if culture_id is not None:
                row, field = unit.cultures.get(culture_id), "culture_id"
            elif batch_id is not None:
                row, field = unit.batches.get(batch_id), "batch_id"
            else:
                raise ImpossibleInput("culture_id", None, reason="empty")
        if row.suspect_at is None:
            raise ImpossibleInput(field, row.id, reason="not_suspect")
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> None:
            cleared: dict[str, Any] = {"suspect_at": None, "suspect_reason": ""}
            if culture_id is not None:
                unit.cultures.change(culture_id, **cleared)
                note = CareDraft(culture_id=culture_id, at=now, kind=CareKind.NOTE, text=words)
                unit.care.add(note)
            elif batch_id is not None:
                unit.batches.change(batch_id, **cleared)
                unit.readings.add(_note(batch_id, now, words))

        self._door.perform(
            ActKind.CLEAR_SUSPICION,
            {"name": row.name, "reason": words},
            work,
            topics=Topic.CULTURES | Topic.BATCHES,
            batch_id=batch_id,
            culture_id=culture_id,
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


class _Pantry:
    """Everything the walk needs, from a handful of reads."""

    def __init__(self, unit: ReadUnit | UnitOfWork, now: datetime) -> None:
        self._now = now
        self._cultures = {row.id: row for row in unit.cultures.where()}
        self._batches = {row.id: row for row in unit.batches.where()}
        self._clean: dict[Node, list[datetime]] = {}
        for care in unit.care.where(kind=CareKind.LOOKED, look=Look.FINE):
            self._clean.setdefault((CULTURE, care.culture_id), []).append(care.at)
        for look in unit.readings.where(quantity=Quantity.LOOK, text=Look.FINE.value):
            self._clean.setdefault((BATCH, look.batch_id), []).append(look.at)
            batch = self._batches[look.batch_id]
            if batch.culture_id is not None:  # who looks into a jar sees the pellicle first
                self._clean.setdefault((CULTURE, batch.culture_id), []).append(look.at)
        self.links: dict[Node, list[_Link]] = {}
        for link in self._all_links(unit.culture_parents.where(), unit.transfers.where()):
            self.links.setdefault(link.source, []).append(link)
            self.links.setdefault(link.target, []).append(link)

    def last_clean(self, node: Node, at: datetime) -> datetime | None:
        """Return the last clean look at or before an instant."""
        return max((seen for seen in self._clean.get(node, ()) if seen <= at), default=None)

    def beginning(self, node: Node) -> datetime:
        """Return when a culture was born or a batch begun."""
        if node[0] == CULTURE:
            return self._cultures[node[1]].born_at
        batch = self._batches[node[1]]
        return batch.started_at or batch.planned_at

    def contact(self, node: Node, since: datetime) -> Contact:
        """Put a node that was reached into the words of a contact."""
        subject, row_id = node
        if subject == CULTURE:
            culture = self._cultures[row_id]
            is_here = culture.state not in _GONE
            return Contact(subject, row_id, culture.name, since, is_here)
        batch = self._batches[row_id]
        return Contact(subject, row_id, batch.name, since, batch.stage not in _ENDED)

    def _all_links(
        self, parents: tuple[CultureParent, ...], transfers: tuple[Transfer, ...]
    ) -> list[_Link]:
        links = [link for batch in self._batches.values() for link in self._of_batch(batch)]
        for parent in parents:
            born_at = self._cultures[parent.culture_id].born_at
            links.append(
                _poured((CULTURE, parent.parent_id), (CULTURE, parent.culture_id), born_at)
            )
        for transfer in transfers:
            source = _end_of(transfer.from_batch_id, transfer.from_culture_id)
            target = _end_of(transfer.to_batch_id, transfer.to_culture_id)
            if source is not None and target is not None:
                links.append(_poured(source, target, transfer.at))
        return links + self._same_store()

    def _of_batch(self, batch: Batch) -> list[_Link]:
        begun = batch.started_at
        if begun is None and batch.stage is BatchStage.BREWING:
            begun = batch.planned_at  # its starter may be in before the vessel is covered
        if begun is None:
            return []
        here, links = (BATCH, batch.id), []
        if batch.culture_id is not None:
            until = max(batch.ended_at or self._now, begun)
            links.append(_Link((CULTURE, batch.culture_id), here, begun, until, is_shared=True))
        if batch.starter_culture_id is not None:
            links.append(_poured((CULTURE, batch.starter_culture_id), here, begun))
        if batch.starter_batch_id is not None:
            links.append(_poured((BATCH, batch.starter_batch_id), here, begun))
        return links

    def _same_store(self) -> list[_Link]:
        """Link the cultures that rest in one vessel now: they lie in the same liquid."""
        stores: dict[int, list[Culture]] = {}
        for culture in self._cultures.values():
            if culture.vessel_id is not None and culture.state is CultureState.RESTING:
                stores.setdefault(culture.vessel_id, []).append(culture)
        return [
            _Link(
                (CULTURE, one.id),
                (CULTURE, other.id),
                max(one.born_at, other.born_at),
                self._now,
                is_shared=True,
            )
            for together in stores.values()
            for one, other in combinations(together, 2)
        ]


def _poured(source: Node, target: Node, at: datetime) -> _Link:
    return _Link(source, target, at, at, is_shared=False)


def _end_of(batch_id: int | None, culture_id: int | None) -> Node | None:
    if batch_id is not None:
        return (BATCH, batch_id)
    return None if culture_id is None else (CULTURE, culture_id)


def _walk(pantry: _Pantry, start: Node, since: datetime) -> dict[Node, datetime]:
    """Return every node that may carry the same mold, and from when on.

    A node may have *got* it, and hands it on from then; or it may have *brought* it, and
    then whatever brought it there is doubtful too. The earliest instant of each counts.
    """
    best: dict[tuple[Node, bool], datetime] = {}
    queue: list[tuple[datetime, int, Node, bool]] = [(since, 0, start, True)]
    pushed = 0
    while queue:
        at, _, node, may_have_brought = heapq.heappop(queue)
        known = [best[key] for key in ((node, True), (node, may_have_brought)) if key in best]
        if known and min(known) <= at:
            continue
        best[(node, may_have_brought)] = at
        for link in pantry.links.get(node, ()):
            step = _next_node(pantry, link, node, at, since, brought=may_have_brought)
            if step is not None:
                pushed += 1
                heapq.heappush(queue, (step[0], pushed, step[1], step[2]))
    earliest: dict[Node, datetime] = {}
    for (node, _), at in best.items():
        earliest[node] = min(at, earliest.get(node, at))
    return earliest


def _next_node(
    pantry: _Pantry, link: _Link, node: Node, at: datetime, since: datetime, *, brought: bool
) -> tuple[datetime, Node, bool] | None:
    if link.last < at:
        return None
    other = link.target if link.source == node else link.source
    if link.is_shared:
        return max(link.first, at), other, brought
    if link.source == node:
        return link.last, other, False
    if not brought:
        return None
    clean = pantry.last_clean(other, link.last)
    return (since if clean is None else clean), other, True
