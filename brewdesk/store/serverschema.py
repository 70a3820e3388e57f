"""The tables of a shared store: those of every store, and a few that only a server has.

The server's own tables know which desk did what. They are no part of a pantry: they are not
exported, and a store that moves to a file leaves them behind.
"""

from __future__ import annotations

import uuid
from collections.abc import Callable, Mapping
from datetime import datetime

from sqlalchemy import (
    BigInteger,
    CheckConstraint,
    Column,
    Connection,
    DateTime,
    Integer,
    LargeBinary,
    MetaData,
    PrimaryKeyConstraint,
    Table,
    insert,
    inspect,
    select,
    update,
)
from sqlalchemy.schema import CreateSchema

from brewdesk.store.columns import Words
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.schema import SCHEMA_NUMBER, pantry
from brewdesk.store.tableparts import metadata

# The tables' place in the database. What else the database holds is not looked at.
NAMESPACE = "brewdesk"
# All writers of one database take turns at this lock; "BRDK", as in a file's application id.
WRITE_LOCK = 0x4252444B

server_metadata = MetaData(naming_convention=metadata.naming_convention)

server_state = Table(
    "server_state",
    server_metadata,
    Column("id", Integer(), nullable=False, autoincrement=False),
    Column("schema_number", Integer(), nullable=False),
    # Rises with every committed change; what a desk has been shown is told by it.
    Column("serial", BigInteger(), nullable=False),
    CheckConstraint("id = 1", name="one_row"),
    PrimaryKeyConstraint("id"),
)

# Who last changed a row by an act.
row_change = Table(
    "row_change",
    server_metadata,
    Column("table_name", Words(), nullable=False),
    Column("row_id", BigInteger(), nullable=False),
    Column("serial", BigInteger(), nullable=False),
    Column("desk_uid", Words(), nullable=False),
    PrimaryKeyConstraint("table_name", "row_id"),
)

# Whose act it was: each desk takes back its own.
act_desk = Table(
    "act_desk",
    server_metadata,
    Column("act_id", Integer(), nullable=False, autoincrement=False),
    Column("desk_uid", Words(), nullable=False),
    PrimaryKeyConstraint("act_id"),
)

# The desk that is about to show a reminder; void at ``until``, by the server's clock.
reminder_claim = Table(
    "reminder_claim",
    server_metadata,
    Column("reminder_id", Integer(), nullable=False, autoincrement=False),
    Column("desk_uid", Words(), nullable=False),
    Column("until", DateTime(timezone=True), nullable=False),
    PrimaryKeyConstraint("reminder_id"),
)

# What each desk has shown, where every desk shows everything.
reminder_told = Table(
    "reminder_told",
    server_metadata,
    Column("reminder_id", Integer(), nullable=False, autoincrement=False),
    Column("desk_uid", Words(), nullable=False),
    Column("shown_at", Words(), nullable=False),
    PrimaryKeyConstraint("reminder_id", "desk_uid"),
)

# The bytes of photos, which a pantry in a file keeps beside itself.
photo_content = Table(
    "photo_content",
    server_metadata,
    Column("content_hash", Words(), nullable=False),
    Column("ending", Words(), nullable=False),
    Column("content", LargeBinary(), nullable=False),
    Column("kept_at", DateTime(timezone=True), nullable=False),
    PrimaryKeyConstraint("content_hash"),
)

Step = Callable[[Connection], None]
# Step n brings a server store from schema n - 1 to n. The first server stores were of schema
# 2 or 3 and never released; from the first release on, each new schema has its step here.
STEPS: Mapping[int, Step] = {}


def prepare(
    connection: Connection,
    *,
    now: datetime,
    is_demo: bool = False,
    number: int = SCHEMA_NUMBER,
    steps: Mapping[int, Step] = STEPS,
) -> None:
    """Lay the tables out where there are none; bring older ones to the present schema.

    All in the caller's transaction, which must hold the write lock: two desks that open a new
    store at once make one.

    Raises
    ------
    StoreTrouble
        newer_file, older_server (from where no step leads on), not_utf8, damaged.
    """
    encoding = connection.exec_driver_sql("SHOW server_encoding").scalar_one()
    if encoding != "UTF8":
        raise StoreTrouble("not_utf8", f"the database keeps text as {encoding}")
    if not inspect(connection).has_table(server_state.name, schema=NAMESPACE):
        lay_out(connection, number=number)
        values = {"id": 1, "uid": uuid.uuid4().hex, "created_at": now, "is_demo": is_demo}
        connection.execute(insert(pantry).values(values))
        return
    found = connection.execute(select(server_state.c.schema_number)).scalar_one_or_none()
    if found is None:
        raise StoreTrouble("damaged", "the server's store has no number")
    if found > number:
        raise StoreTrouble("newer_file", f"schema {found}, this program knows {number}")
    for step_number in range(found + 1, number + 1):
        step = steps.get(step_number)
        if step is None:
            raise StoreTrouble("older_server", f"no step leads from schema {found} to {number}")
        step(connection)
    if found < number:
        connection.execute(update(server_state).values(schema_number=number))


def lay_out(connection: Connection, *, number: int = SCHEMA_NUMBER) -> None:
    """Make all tables, with no row but the number of their schema."""
    connection.execute(CreateSchema(NAMESPACE, if_not_exists=True))
    metadata.create_all(connection, checkfirst=False)
    server_metadata.create_all(connection, checkfirst=False)
    connection.execute(insert(server_state).values(id=1, schema_number=number, serial=0))


def is_laid_out(connection: Connection) -> bool:
    """Whether the database holds a store."""
    return inspect(connection).has_table(server_state.name, schema=NAMESPACE)
