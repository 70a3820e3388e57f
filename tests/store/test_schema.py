"""The revisions build the very tables that the program works with."""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import create_engine
from sqlalchemy.dialects import postgresql
from sqlalchemy.schema import CreateIndex, CreateTable

from brewdesk.store import schema
from brewdesk.store.migrate import CURRENT


def statements(connection):
    """Return the SQL of everything in a file, without differences of spelling."""
    rows = connection.execute("SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL")
    return {
        f"{kind} {name}": normalised(sql)
        for kind, name, sql in rows
        if name not in ("alembic_version", "sqlite_sequence")
    }


def normalised(sql):
    """Return the parts of a statement in order of text: constraints may come in any order."""
    return sorted(part.strip().rstrip(",") for part in sql.splitlines() if part.strip())


def test_the_revisions_and_the_tables_agree_word_by_word(store):
    with closing(sqlite3.connect(":memory:")) as fresh, closing(sqlite3.connect(store.path)) as old:
        engine = create_engine("sqlite://", creator=lambda: fresh)
        schema.metadata.create_all(engine)
        wanted, migrated = statements(fresh), statements(old)
        engine.dispose()

    assert migrated == wanted


def test_alembic_finds_nothing_left_to_do(store):
    engine = create_engine(f"sqlite:///{store.path}")
    with engine.connect() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        left = compare_metadata(context, schema.metadata)
    engine.dispose()

    assert left == []


def test_every_table_is_strict(store):
    with closing(sqlite3.connect(store.path)) as connection:
        strict = {
            name: strict
            for _, name, kind, _, _, strict in connection.execute("PRAGMA table_list")
            if kind == "table" and not name.startswith("sqlite_") and name != "alembic_version"
        }

    assert strict == dict.fromkeys(schema.metadata.tables, 1)


@pytest.mark.parametrize("table", schema.metadata.sorted_tables, ids=lambda table: table.name)
def test_every_constraint_has_a_name(table):
    assert all(constraint.name for constraint in table.constraints)


def test_the_file_says_whose_it_is_and_of_which_schema(store):
    with closing(sqlite3.connect(store.path)) as connection:
        numbers = [
            connection.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("application_id", "user_version")
        ]

    assert numbers == [schema.APPLICATION_ID, schema.SCHEMA_NUMBER]


def test_the_newest_revision_is_the_schema_number():
    numbers = [int(path.name[:4]) for path in (CURRENT.folder / "versions").glob("[0-9]*.py")]

    assert max(numbers) == CURRENT.number == schema.SCHEMA_NUMBER


@pytest.mark.parametrize("table", schema.metadata.sorted_tables, ids=lambda table: table.name)
def test_the_tables_can_be_said_to_postgresql(table):
    dialect = postgresql.dialect()
    said = [str(CreateTable(table).compile(dialect=dialect))]
    said += [str(CreateIndex(index).compile(dialect=dialect)) for index in table.indexes]

    assert "STRICT" not in "".join(said)
    assert "REAL" not in "".join(said)  # PostgreSQL's REAL keeps six digits only
