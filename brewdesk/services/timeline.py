"""The whole life of a batch, a culture, a vessel or a place on one time line."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.door import Door
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.quantities import Quantities
from brewdesk.services.stays import Stay, stays_in
from brewdesk.services.subjects import Subject, SubjectKind, known, names_of
from brewdesk.services.timelinerows import RowLine, RowTable, RowTeller
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.timeline import with_words
from brewdesk.store.errors import NoSuchRow
from brewdesk.store.records import Act, RowDelta

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

LINES_AT_FIRST = 150  # laying these out takes a few hundredths of a second
LATE = timedelta(hours=1)  # entered later than this after it happened, a line says so
ACTS_AT_A_TIME = 400  # in one unit: a long one would keep the maker's next act from being written
# Where a new row says when it happened, and what it holds in the maker's own words.
_MOMENTS = {
    "reading": "at",
    "care": "at",
    "transfer": "at",
    "vessel_move": "at",
    "place_temperature": "at",
    "bottle_check": "at",
    "photo": "taken_at",
}
_WORDS = {"care": "text", "photo": "caption", "transfer": "note", "bottle_check": "text"}


@dataclass(frozen=True, slots=True, kw_only=True)
class TimelineLine:
    """One thing that happened.

    ``at`` is when it did, ``entered_at`` when an act wrote it down. ``about`` is what the
    line leads to: another thing than the one whose time line this is, where there is
    one. ``rows`` are the rows whose story the line tells.
    """

    at: datetime
    text: str
    kind: str
    act_id: int | None = None
    rows: frozenset[RowTable] = frozenset()
    about: Subject | None = None
    about_name: str = ""
    entered_at: datetime | None = None

    @property
    def is_late(self) -> bool:
        """Whether it was written down well after it happened."""
        return self.entered_at is not None and self.entered_at - self.at > LATE


@dataclass(frozen=True, slots=True, kw_only=True)
class TimelineView:
    """A time line, newest first; ``lines`` may be the newest of ``total`` only."""

    subject: Subject
    name: str
    lines: tuple[TimelineLine, ...]
    total: int


@dataclass(frozen=True, slots=True)
class _Told:
    """An act with what its row changes say: when it happened, which rows it made."""

    act: Act
    at: datetime
    rows: frozenset[RowTable]
    words: tuple[str, ...]


class Timeline(QObject):
    """Tell lives. ``ready`` carries a `TimelineView`, ``failed`` the error that kept one away."""

    ready = Signal(object)
    failed = Signal(object)

    def __init__(
        self, door: Door, jobs: JobRunner, quantities: Quantities, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._jobs = jobs
        self._quantities = quantities

    def request(self, subject: Subject, *, limit: int = LINES_AT_FIRST) -> None:
        """Ask for a time line; it comes by ``ready``. Only the newest request is answered."""
        self._jobs.run(
            lambda: self.of(subject, limit=limit),
            self.ready.emit,
            self.failed.emit,
            key=f"timeline {id(self)}",
            pool=Pool.STORE,
        )

    def of(self, subject: Subject, *, limit: int | None = None) -> TimelineView:
        """Return the time line of a subject, the newest ``limit`` lines of it. May be slow.

        Every act about it is there, but those taken back; and every reading, piece of
        care, photo, transfer, pouring over and temperature that no act tells of. A
        vessel's time line also tells of its batches, while they were in it.

        Raises
        ------
        NoSuchRow
            If the subject is not there (any more).
        StoreTrouble
            If the store cannot be read.
        """
        with self._door.store.read() as unit:
            name = names_of(unit, [subject]).get(subject)
            if name is None:
                raise NoSuchRow(subject.kind.value, subject.id)
            stays = stays_in(unit, subject.id) if subject.kind is SubjectKind.VESSEL else ()
            own_ids = unit.acts.ids_about(subject.kind.value, subject.id)
            ids_of_stays = {stay: unit.acts.ids_about("batch", stay.batch_id) for stay in stays}
        told = {one.act.id: one for one in self._told(own_ids.union(*ids_of_stays.values()))}
        rows = self._rows(subject, stays)
        shown = own_ids.union(
            act_id
            for stay, ids in ids_of_stays.items()
            for act_id in ids
            if act_id in told and stay.covers(told[act_id].at)
        )
        told_rows = frozenset(row for one in told.values() for row in one.rows)
        lines: list[_Told | RowLine] = [one for act_id, one in told.items() if act_id in shown]
        lines += [line for line in rows if line.row not in told_rows]
        lines.sort(key=_newest_first, reverse=True)
        kept = lines if limit is None else lines[:limit]
        return TimelineView(
            subject=subject, name=name, lines=self._lines(subject, kept), total=len(lines)
        )

    def _told(self, act_ids: Iterable[int]) -> list[_Told]:
        """Read the acts that are done, with what their row changes say."""
        told: list[_Told] = []
        ids = sorted(act_ids)
        for first in range(0, len(ids), ACTS_AT_A_TIME):
            part = ids[first : first + ACTS_AT_A_TIME]
            with self._door.store.read() as unit:
                acts, deltas = unit.acts.some(part), unit.acts.deltas_of(part)
            told += [_read(act, deltas.get(act.id, ())) for act in acts]
        return told

    def _rows(self, subject: Subject, stays: Sequence[Stay]) -> list[RowLine]:
        """Read what rows say, each batch of a vessel in a unit of its own."""
        with self._door.store.read() as unit:
            teller = RowTeller(unit, self._quantities, self._door.clock)
            lines = {line.row: line for line in teller.lines(subject)}
        for stay in stays:
            with self._door.store.read() as unit:
                teller = RowTeller(unit, self._quantities, self._door.clock)
                of_batch = teller.lines(Subject(SubjectKind.BATCH, stay.batch_id))
            lines |= {line.row: line for line in of_batch if stay.covers(line.at)}
        return list(lines.values())

    def _lines(
        self, subject: Subject, lines: Sequence[_Told | RowLine]
    ) -> tuple[TimelineLine, ...]:
        with self._door.store.read() as unit:
            abouts = _abouts(unit, lines)
            names = names_of(unit, [one for found in abouts for one in found])
        made = []
        for line, found in zip(lines, abouts, strict=True):
            about = next((one for one in found if one != subject and one in names), None)
            made.append(self._line(line, about, names[about] if about is not None else ""))
        return tuple(made)

    def _line(self, line: _Told | RowLine, about: Subject | None, about_name: str) -> TimelineLine:
        if isinstance(line, RowLine):
            return TimelineLine(
                at=line.at,
                text=line.text,
                kind=line.row[0],
                rows=frozenset({line.row}),
                about=about,
                about_name=about_name,
            )
        return TimelineLine(
            at=line.at,
            text=with_words(act_text(line.act, self._quantities.show), line.words),
            kind=line.act.kind,
            act_id=line.act.id,
            rows=line.rows,
            about=about,
            about_name=about_name,
            entered_at=line.act.at,
        )


def _read(act: Act, deltas: Sequence[RowDelta]) -> _Told:
    """Find in an act's row changes when it happened and which rows it made."""
    moments, rows, words = [], set(), []
    for delta in deltas:
        column = _MOMENTS.get(delta.table)
        if column is None or delta.before is not None or delta.after is None:
            continue
        rows.add((delta.table, delta.row_id))
        moments.append(datetime.fromisoformat(str(delta.after[column])))
        words.append(str(delta.after.get(_WORDS.get(delta.table, ""), "")))
    return _Told(
        act, min(moments, default=act.at), frozenset(rows), tuple(word for word in words if word)
    )


def _newest_first(line: _Told | RowLine) -> tuple[datetime, int]:
    return (line.at, line.act.id if isinstance(line, _Told) else 0)


def _abouts(unit: ReadUnit, lines: Sequence[_Told | RowLine]) -> list[tuple[Subject, ...]]:
    """Return what each line is about, the nearest first."""
    named = unit.acts.subjects_of([one.act.id for one in lines if isinstance(one, _Told)])
    abouts: list[tuple[Subject, ...]] = []
    for line in lines:
        if isinstance(line, RowLine):
            abouts.append(line.about)
            continue
        act = line.act
        first = [
            Subject(kind, number)
            for kind, number in (
                (SubjectKind.BATCH, act.batch_id),
                (SubjectKind.CULTURE, act.culture_id),
                (SubjectKind.VESSEL, act.vessel_id),
            )
            if number is not None
        ]
        rest = known(named.get(act.id, ()))
        abouts.append(tuple(dict.fromkeys([*first, *rest])))
    return abouts
