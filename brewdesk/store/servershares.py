"""Which desk shows which reminder: claims that run out, and what each desk has shown."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from sqlalchemy import Connection, delete, func, or_, select, text
from sqlalchemy.dialects.postgresql import insert

from brewdesk.store.desklocal import DeskIdentity
from brewdesk.store.errors import told
from brewdesk.store.serverschema import reminder_claim, reminder_told


class ReminderShares:
    """The claims and notes of one desk, inside a unit of work."""

    def __init__(self, connection: Connection, desk: DeskIdentity) -> None:
        self._connection = connection
        self._desk = desk

    def claim(self, reminder_ids: Collection[int], *, lease_s: int) -> frozenset[int]:
        """Claim the showing of reminders; give those that no other desk holds.

        A claim is void after ``lease_s`` seconds of the server's clock, so that what a desk
        claimed and never showed is shown by another.
        """
        if not reminder_ids:
            return frozenset()
        until = func.now() + text(f"interval '{int(lease_s)} seconds'")
        claimed = insert(reminder_claim).values(
            [{"reminder_id": each, "desk_uid": self._desk.uid, "until": until}
             for each in sorted(set(reminder_ids))]
        )  # fmt: skip
        statement = claimed.on_conflict_do_update(
            index_elements=[reminder_claim.c.reminder_id],
            set_={"desk_uid": claimed.excluded.desk_uid, "until": claimed.excluded.until},
            where=or_(
                reminder_claim.c.desk_uid == self._desk.uid, reminder_claim.c.until < func.now()
            ),
        ).returning(reminder_claim.c.reminder_id)
        with told():
            return frozenset(self._connection.execute(statement).scalars())

    def held(self, reminder_ids: Collection[int]) -> frozenset[int]:
        """Give those whose claim is still this desk's: nobody took one over that ran out."""
        statement = select(reminder_claim.c.reminder_id).where(
            reminder_claim.c.desk_uid == self._desk.uid,
            reminder_claim.c.reminder_id.in_(list(reminder_ids)),
        )
        with told():
            return frozenset(self._connection.execute(statement).scalars())

    def release(self, reminder_ids: Collection[int]) -> None:
        """Give claims up: it was shown."""
        statement = delete(reminder_claim).where(
            reminder_claim.c.desk_uid == self._desk.uid,
            reminder_claim.c.reminder_id.in_(list(reminder_ids)),
        )
        with told():
            self._connection.execute(statement)

    def told(self) -> dict[int, str]:
        """Give what this desk has shown by itself: the reminder's id, and its ``shown_at`` then."""
        statement = select(reminder_told.c.reminder_id, reminder_told.c.shown_at).where(
            reminder_told.c.desk_uid == self._desk.uid
        )
        with told():
            return {row.reminder_id: row.shown_at for row in self._connection.execute(statement)}

    def note_told(self, shown: Mapping[int, str]) -> None:
        """Note that this desk has shown reminders."""
        if not shown:
            return
        noted = insert(reminder_told).values(
            [{"reminder_id": each, "desk_uid": self._desk.uid, "shown_at": shown_at}
             for each, shown_at in sorted(shown.items())]
        )  # fmt: skip
        statement = noted.on_conflict_do_update(
            index_elements=[reminder_told.c.reminder_id, reminder_told.c.desk_uid],
            set_={"shown_at": noted.excluded.shown_at},
        )
        with told():
            self._connection.execute(statement)
