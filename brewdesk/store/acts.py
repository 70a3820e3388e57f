"""The history: what the maker did, with the row changes that take it back."""

from __future__ import annotations

import json
from collections.abc import Collection, Iterable, Mapping
from datetime import datetime

from sqlalchemy import Connection, RowMapping, Select, insert, select, update

from brewdesk.store.deltas import deltas_from_json, deltas_to_json
from brewdesk.store.errors import NoSuchRow, told
from brewdesk.store.records import Act, RowDelta
from brewdesk.store.schema import ACT_STATES, SUBJECTS, act, act_subject
from brewdesk.store.subjects import subjects_of

SHOWN = [column for column in act.columns if column.name != "deltas"]


class ReadActRows:
    """The history, to read."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def get(self, act_id: int) -> Act:
        """Give one act.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        found = self._first(select(*SHOWN).where(act.c.id == act_id))
        if found is None:
            raise NoSuchRow("act", act_id)
        return found

    def last_done(self) -> Act | None:
        """Give the newest act that is done."""
        statement = select(*SHOWN).where(act.c.state == "done")
        return self._first(statement.order_by(act.c.id.desc()))

    def last_undone(self) -> Act | None:
        """Give the oldest of the acts that are undone."""
        statement = select(*SHOWN).where(act.c.state == "undone")
        return self._first(statement.order_by(act.c.id.asc()))

    def undoable(self) -> Act | None:
        """Give the act that undo takes back: the newest done one of this desk."""
        return self.last_done()

    def redoable(self) -> Act | None:
        """Give the act that redo does again: the oldest of those this desk has undone."""
        return self.last_undone()

    def deltas(self, act_id: int) -> tuple[RowDelta, ...]:
        """Give the row changes of an act, in the order they were made.

        Raises
        ------
        NoSuchRow
            If there is no act with this id.
        """
        with told():
            statement = select(act.c.deltas).where(act.c.id == act_id)
            text = self._connection.execute(statement).scalar_one_or_none()
        if text is None:
            raise NoSuchRow("act", act_id)
        return deltas_from_json(text)

    def for_batch(self, batch_id: int) -> tuple[Act, ...]:
        """Give the acts done to a batch, newest first; undone ones are left out."""
        statement = select(*SHOWN).where(act.c.batch_id == batch_id, act.c.state == "done")
        return self._all(statement.order_by(act.c.id.desc()))

    def about(
        self,
        subject: str,
        subject_id: int,
        *,
        limit: int | None = None,
        kinds: Collection[str] | None = None,
    ) -> tuple[Act, ...]:
        """Give the acts that had to do with a place, vessel, culture or batch, newest first.

        Undone ones are left out; with ``kinds`` also those of other kinds.

        Raises
        ------
        ValueError
            If ``subject`` is none of these four.
        """
        if subject not in SUBJECTS:
            raise ValueError(f"{subject!r} is nothing an act is about")
        statement = (
            select(*SHOWN)
            .join(act_subject, act_subject.c.act_id == act.c.id)
            .where(
                act_subject.c.subject == subject,
                act_subject.c.subject_id == subject_id,
                act.c.state == "done",
            )
        )
        if kinds is not None:
            statement = statement.where(act.c.kind.in_(list(kinds)))
        return self._all(statement.order_by(act.c.id.desc()).limit(limit))

    def repeatable(self, kinds: Collection[str]) -> tuple[Act, ...]:
        """Give the acts of some kinds that can still be undone or redone, oldest first."""
        statement = select(*SHOWN).where(
            act.c.kind.in_(list(kinds)), act.c.state.in_(("done", "undone"))
        )
        return self._all(statement.order_by(act.c.id.asc()))

    def recent(self, limit: int) -> tuple[Act, ...]:
        """Give the newest acts that are done, newest first."""
        statement = select(*SHOWN).where(act.c.state == "done")
        return self._all(statement.order_by(act.c.id.desc()).limit(limit))

    def is_named(self, text: str) -> bool:
        """Whether ``text`` stands in a row change that undo or redo may still ask for."""
        statement = select(*SHOWN).where(
            act.c.deltas.contains(text, autoescape=True), act.c.state != "dropped"
        )
        return self._first(statement) is not None

    def after(self, act_id: int, *, limit: int) -> tuple[Act, ...]:
        """Give the acts written after ``act_id``, oldest first, undone ones too: to read on."""
        statement = select(*SHOWN).where(act.c.id > act_id)
        return self._all(statement.order_by(act.c.id.asc()).limit(limit))

    def undone_ids(self) -> frozenset[int]:
        """Give the ids of the acts that were taken back."""
        with told():
            # Named one by one, for the index: "anything but done" would look at every act.
            taken_back = [state for state in ACT_STATES if state != "done"]
            statement = select(act.c.id).where(act.c.state.in_(taken_back))
            return frozenset(self._connection.execute(statement).scalars())

    def ids_about(self, subject: str, subject_id: int) -> frozenset[int]:
        """Give the ids of the acts that had to do with a subject, undone ones too."""
        with told():
            statement = select(act_subject.c.act_id).where(
                act_subject.c.subject == subject, act_subject.c.subject_id == subject_id
            )
            return frozenset(self._connection.execute(statement).scalars())

    def some(self, act_ids: Collection[int]) -> tuple[Act, ...]:
        """Give the acts with these ids that are done, newest first."""
        statement = select(*SHOWN).where(act.c.id.in_(list(act_ids)), act.c.state == "done")
        return self._all(statement.order_by(act.c.id.desc()))

    def deltas_of(self, act_ids: Collection[int]) -> dict[int, tuple[RowDelta, ...]]:
        """Give the row changes of several acts at once."""
        with told():
            statement = select(act.c.id, act.c.deltas).where(act.c.id.in_(list(act_ids)))
            rows = self._connection.execute(statement).all()
        return {act_id: deltas_from_json(text) for act_id, text in rows}

    def subjects_of(self, act_ids: Collection[int]) -> dict[int, tuple[tuple[str, int], ...]]:
        """Give what each of several acts had to do with: (table, id) of each subject."""
        found: dict[int, list[tuple[str, int]]] = {}
        with told():
            statement = select(
                act_subject.c.act_id, act_subject.c.subject, act_subject.c.subject_id
            ).where(act_subject.c.act_id.in_(list(act_ids)))
            for act_id, subject, number in self._connection.execute(statement):
                found.setdefault(act_id, []).append((subject, number))
        return {act_id: tuple(sorted(named)) for act_id, named in found.items()}

    def _first(self, statement: Select[*tuple[object, ...]]) -> Act | None:
        return next(iter(self._all(statement.limit(1))), None)

    def _all(self, statement: Select[*tuple[object, ...]]) -> tuple[Act, ...]:
        with told():
            rows = self._connection.execute(statement).mappings().all()
        return tuple(_act(row) for row in rows)


class ActRows(ReadActRows):
    """The history, to read and to go on writing."""

    def add(
        self,
        *,
        kind: str,
        facts: Mapping[str, object],
        at: datetime,
        batch_id: int | None = None,
        vessel_id: int | None = None,
        culture_id: int | None = None,
        deltas: Iterable[RowDelta] = (),
    ) -> Act:
        """Write down an act as done.

        ``facts`` holds names and numbers for its sentence: text, numbers, truth values,
        None, and lists of these (what JSON can say).
        """
        changes = tuple(deltas)
        values = {
            "kind": kind,
            "facts": json.dumps(dict(facts), ensure_ascii=False, allow_nan=False),
            "at": at,
            "batch_id": batch_id,
            "vessel_id": vessel_id,
            "culture_id": culture_id,
            "state": "done",
            "deltas": deltas_to_json(changes),
        }
        with told():
            result = self._connection.execute(insert(act).values(values))
            (act_id,) = result.inserted_primary_key or (None,)
            assert isinstance(act_id, int)
            told_of = {"batch": batch_id, "vessel": vessel_id, "culture": culture_id}
            subjects = set(subjects_of(changes))
            subjects |= {(name, value) for name, value in told_of.items() if value is not None}
            if subjects:
                rows = [
                    {"subject": name, "subject_id": number, "act_id": act_id}
                    for name, number in sorted(subjects)
                ]
                self._connection.execute(insert(act_subject), rows)
        return self.get(act_id)

    def mark(self, act_id: int, state: str) -> Act:
        """Set an act's state: done, undone or dropped.

        Raises
        ------
        NoSuchRow
            If there is no act with this id.
        """
        if state not in ACT_STATES:
            raise ValueError(f"{state!r} is no state of an act")
        with told():
            self._connection.execute(update(act).where(act.c.id == act_id).values(state=state))
        return self.get(act_id)

    def drop_undone(self) -> None:
        """Give up redoing: what was undone stays undone, because something new was done."""
        with told():
            statement = update(act).where(act.c.state == "undone").values(state="dropped")
            self._connection.execute(statement)


def _act(row: RowMapping) -> Act:
    return Act(**{**row, "facts": json.loads(row["facts"])})
