"""Units of work on a shared store: whose act it was, what another desk changed meanwhile."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime

from sqlalchemy import Connection, Select, func, select, update
from sqlalchemy.dialects.postgresql import insert

from brewdesk.store.acts import SHOWN, ActRows, ReadActRows
from brewdesk.store.desklocal import (
    DESK_NAME_KEY,
    DeskIdentity,
    is_local,
    local_key,
    split_local,
)
from brewdesk.store.errors import ChangedElsewhere, StaleRow, StoreTrouble, told
from brewdesk.store.records import Act, RowDelta
from brewdesk.store.schema import act
from brewdesk.store.serverschema import act_desk, row_change, server_state
from brewdesk.store.servershares import ReminderShares
from brewdesk.store.settings import ReadSettingRows, SettingRows
from brewdesk.store.subjects import subjects_of
from brewdesk.store.touched import Word, touched_by, word_to_text
from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

CHANNEL = "brewdesk"


class _OwnActs(ReadActRows):
    """The history of all desks, of which each takes back its own."""

    _desk: DeskIdentity

    def undoable(self) -> Act | None:
        """Give the newest done act of this desk."""
        return self._first(self._own("done").order_by(act.c.id.desc()))

    def redoable(self) -> Act | None:
        """Give the oldest of the acts that this desk has undone."""
        return self._first(self._own("undone").order_by(act.c.id.asc()))

    def _own(self, state: str) -> Select[*tuple[object, ...]]:
        return (
            select(*SHOWN)
            .join(act_desk, act_desk.c.act_id == act.c.id)
            .where(act_desk.c.desk_uid == self._desk.uid, act.c.state == state)
        )


class ServerReadActs(_OwnActs):
    """The history, to read."""

    def __init__(self, connection: Connection, desk: DeskIdentity) -> None:
        super().__init__(connection)
        self._desk = desk


class ServerActs(_OwnActs, ActRows):
    """The history, to read and to go on writing."""

    def __init__(self, unit: ServerUnit, connection: Connection, desk: DeskIdentity) -> None:
        super().__init__(connection)
        self._unit = unit
        self._desk = desk

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
        """Write down an act of this desk as done.

        Raises
        ------
        ChangedElsewhere
            If another desk changed what it is about, and this one has not been shown it yet.
        """
        changes = tuple(deltas)
        self._unit.refuse_unseen(changes)
        added = super().add(
            kind=kind,
            facts=facts,
            at=at,
            batch_id=batch_id,
            vessel_id=vessel_id,
            culture_id=culture_id,
            deltas=changes,
        )
        with told():
            self._connection.execute(
                insert(act_desk).values(act_id=added.id, desk_uid=self._desk.uid)
            )
        self._unit.acted(changes)
        return added

    def drop_undone(self) -> None:
        """Give up redoing what this desk has undone."""
        own = select(act_desk.c.act_id).where(act_desk.c.desk_uid == self._desk.uid)
        statement = update(act).where(act.c.state == "undone", act.c.id.in_(own))
        with told():
            self._connection.execute(statement.values(state="dropped"))


class ServerReadSettings(ReadSettingRows):
    """Choices, those of this desk before those of all."""

    def __init__(self, connection: Connection, desk: DeskIdentity) -> None:
        super().__init__(connection)
        self._desk = desk

    def get(self, key: str) -> str | None:
        """Give the text kept for a key, or None."""
        if is_local(key):
            own = super().get(local_key(self._desk.uid, key))
            if own is not None:
                return own
        return super().get(key)

    def all(self) -> dict[str, str]:
        """Give every key that means something at this desk, with its text."""
        return own_view(super().all(), self._desk.uid)


class ServerSettings(ServerReadSettings, SettingRows):
    """Choices, to read and to change."""

    def __init__(self, connection: Connection, desk: DeskIdentity) -> None:
        super().__init__(connection, desk)
        self.have_changed = False

    def put(self, key: str, value: str) -> None:
        """Keep a text for a key: at this desk alone, or for all."""
        if is_local(key):
            super().put(local_key(self._desk.uid, key), value)
            # The others write "Anna's desk"; the rest of what is local is nobody's business.
            self.have_changed = self.have_changed or key == DESK_NAME_KEY
            return
        super().put(key, value)
        self.have_changed = True


def own_view(kept: Mapping[str, str], desk_uid: str) -> dict[str, str]:
    """Give the choices as they are at one desk: its own ones lie over those of all."""
    shared = {key: value for key, value in kept.items() if split_local(key) is None}
    own = {
        parts[1]: value
        for key, value in kept.items()
        if (parts := split_local(key)) is not None and parts[0] == desk_uid
    }
    return shared | own


class ServerReadUnit(ReadUnit):
    """One view of a shared store in which nothing changes while it is open."""

    def __init__(self, connection: Connection, desk: DeskIdentity) -> None:
        super().__init__(connection)
        self.shares = ReminderShares(connection, desk)
        self.acts = ServerReadActs(connection, desk)
        self.settings = ServerReadSettings(connection, desk)


class ServerUnit(UnitOfWork):
    """One set of changes to a shared store, told to the other desks as it is committed.

    ``seen`` is the serial of the last change that this desk has been shown.
    """

    def __init__(self, connection: Connection, desk: DeskIdentity, *, seen: int) -> None:
        super().__init__(connection)
        self._desk = desk
        self._seen = seen
        self._applied: list[RowDelta] = []
        self._acted: list[RowDelta] = []
        self._own_settings = ServerSettings(connection, desk)
        self.settings = self._own_settings
        self.acts = ServerActs(self, connection, desk)
        self.shares = ReminderShares(connection, desk)

    def apply(self, deltas: Sequence[RowDelta], *, backwards: bool) -> None:
        """Do changes again, or take them back; these are not noted in ``deltas``.

        Raises
        ------
        ChangedElsewhere
            If another desk changed a row since.
        StaleRow
            If a row is no longer as the changes left it for another reason.
        """
        try:
            super().apply(deltas, backwards=backwards)
        except StaleRow as stale:
            by = self._last_changed_by(stale.table, stale.row_id)
            if by is None or by == self._desk.uid:
                raise
            raise ChangedElsewhere(stale.table, stale.row_id, self._name_of(by)) from stale
        self._applied += deltas
        self._acted += deltas

    def acted(self, deltas: Iterable[RowDelta]) -> None:
        """Note row changes as those of an act: for the others, they are this desk's word."""
        self._acted += deltas

    def refuse_unseen(self, deltas: Sequence[RowDelta]) -> None:
        """Refuse changes to rows, or about subjects, that another desk changed unseen.

        Raises
        ------
        ChangedElsewhere
            With the name of that desk.
        """
        about = {(delta.table, delta.row_id) for delta in deltas if delta.before is not None}
        about |= subjects_of(deltas)
        if not about:
            return
        statement = (
            select(row_change.c.table_name, row_change.c.row_id, row_change.c.desk_uid)
            .where(row_change.c.serial > self._seen, row_change.c.desk_uid != self._desk.uid)
            .order_by(row_change.c.serial.desc())
        )
        with told():
            found = self._connection.execute(statement).all()
        for table, row_id, desk_uid in found:
            if (table, row_id) in about:
                raise ChangedElsewhere(table, row_id, self._name_of(desk_uid))

    def finish(self, number: int) -> None:
        """Write down who changed what, and tell the others; the last thing before the commit.

        Raises
        ------
        StoreTrouble
            newer_file, if another desk has brought the store to a newer schema meanwhile.
        """
        changed = (*self.deltas, *self._applied)
        if not changed and not self._own_settings.have_changed:
            return
        raised = update(server_state).values(serial=server_state.c.serial + 1)
        with told():
            serial, found = self._connection.execute(
                raised.returning(server_state.c.serial, server_state.c.schema_number)
            ).one()
        if found != number:
            raise StoreTrouble("newer_file", f"schema {found}, this program knows {number}")
        self._note_author(serial)
        touched = touched_by(changed, settings=self._own_settings.have_changed)
        word = Word(desk_uid=self._desk.uid, serial=serial, touched=touched)
        with told():
            self._connection.execute(select(func.pg_notify(CHANNEL, word_to_text(word))))

    def _note_author(self, serial: int) -> None:
        rows = sorted({(delta.table, delta.row_id) for delta in self._acted})
        if not rows:
            return
        values = [
            {"table_name": table, "row_id": row_id, "serial": serial, "desk_uid": self._desk.uid}
            for table, row_id in rows
        ]
        written = insert(row_change)
        statement = written.on_conflict_do_update(
            index_elements=[row_change.c.table_name, row_change.c.row_id],
            set_={"serial": written.excluded.serial, "desk_uid": written.excluded.desk_uid},
        )
        with told():
            self._connection.execute(statement, values)

    def _last_changed_by(self, table: str, row_id: int) -> str | None:
        statement = select(row_change.c.desk_uid).where(
            row_change.c.table_name == table, row_change.c.row_id == row_id
        )
        with told():
            return self._connection.execute(statement).scalar_one_or_none()

    def _name_of(self, desk_uid: str) -> str:
        kept = ReadSettingRows(self._connection).get(local_key(desk_uid, DESK_NAME_KEY))
        return kept or ""
