"""A damaged file gives up every row that is still on it, into a file of its own."""

from __future__ import annotations

import random
import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest

from brewdesk.store.errors import StoreTrouble
from brewdesk.store.restore import put_rescued_in_place
from brewdesk.store.salvage import rescue
from brewdesk.store.store import Store
from tests.helpers.whole_pantry import everything
from tests.store.drafts import NOW, reading_draft

PAGE = 4096
TABLE_LEAF = 0x0D  # https://www.sqlite.org/fileformat.html, section 1.6
READINGS = 1500


@pytest.fixture
def long_kept(pantry):
    """A pantry with fifteen hundred readings; gives its path and the readings' rows."""
    store = Store.open(pantry.path, now=NOW)
    with store.write() as unit:
        first = reading_draft(pantry.batch_id)
        for number in range(READINGS):
            unit.readings.add(
                replace(first, at=NOW + timedelta(minutes=number), entered=f"reading {number}")
            )
    store.close()
    return pantry.path, rows_of(pantry.path)


def rows_of(path) -> dict[int, tuple]:
    with closing(sqlite3.connect(path)) as connection:
        return {row[0]: row for row in connection.execute("SELECT * FROM reading NOT INDEXED")}


def pages_with(path, text: bytes) -> list[int]:
    """Return the numbers of the pages of a table's rows on which a text stands."""
    content = path.read_bytes()
    return [
        start // PAGE + 1
        for start in range(PAGE, len(content), PAGE)
        if content[start] == TABLE_LEAF and text in content[start : start + PAGE]
    ]


def cells_on(path, page: int) -> int:
    start = (page - 1) * PAGE + 3
    return int.from_bytes(path.read_bytes()[start : start + 2], "big")


def roots_of_indexes(path) -> list[int]:
    with closing(sqlite3.connect(path)) as connection:
        found = connection.execute("SELECT rootpage FROM sqlite_schema WHERE type = 'index'")
        return [row[0] for row in found]


def smash(path, pages) -> None:
    with path.open("r+b") as stream:
        for page in pages:
            stream.seek((page - 1) * PAGE)
            stream.write(b"\xa5" * PAGE)


def is_refused(path) -> bool:
    try:
        Store.open(path, now=NOW).close()
    except StoreTrouble as trouble:
        return trouble.code in ("damaged", "not_a_store")
    return False


def test_three_ruined_pages_cost_the_rows_on_them_and_no_other(long_kept, record_property):
    path, rows = long_kept
    pages = random.Random(20261125).sample(pages_with(path, b"reading 1"), 3)
    on_them = sum(cells_on(path, page) for page in pages)
    smash(path, pages)
    ruined = path.read_bytes()
    assert is_refused(path)

    rescued = rescue(path, path.with_name("rescued.brewdesk"), now=NOW)

    assert path.read_bytes() == ruined
    kept = rows_of(rescued.path)
    assert kept.items() <= rows.items()
    assert len(rows) - len(kept) == rescued.lost["reading"] == on_them
    assert not rescued.is_whole
    store = Store.open(rescued.path, now=NOW)
    with store.write() as unit:  # and one can go on with it
        unit.readings.add(reading_draft(1))
    store.close()
    record_property("tried", len(pages))


def test_damage_to_indexes_alone_costs_nothing(long_kept, record_property):
    path, rows = long_kept
    before = everything(path)
    roots = roots_of_indexes(path)
    smash(path, roots)
    assert is_refused(path)

    rescued = rescue(path, path.with_name("rescued.brewdesk"), now=NOW)

    assert rescued.is_whole
    assert rows_of(rescued.path) == rows
    assert everything(rescued.path) == before
    record_property("tried", len(roots))


def test_a_lost_beginning_of_the_file_is_written_anew(long_kept):
    path, _ = long_kept
    before = everything(path)
    with path.open("r+b") as stream:
        stream.write(bytes(16))
    assert is_refused(path)

    rescued = rescue(path, path.with_name("rescued.brewdesk"), now=NOW)

    assert rescued.is_whole
    assert everything(rescued.path) == before


def test_what_names_a_lost_row_is_counted_as_lost_and_nothing_points_to_nothing(long_kept):
    path, rows = long_kept
    smash(path, pages_with(path, b"Black tea 1")[:1])

    rescued = rescue(path, path.with_name("rescued.brewdesk"), now=NOW)

    assert rescued.lost["batch"] == 1
    assert rescued.lost["reading"] == len(rows)
    with closing(sqlite3.connect(rescued.path)) as connection:
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []


def test_where_nothing_can_be_read_no_file_is_made(tmp_path, pantry):
    pantry.path.write_bytes(pantry.path.read_bytes()[:PAGE] + b"\xa5" * 40 * PAGE)

    with pytest.raises(StoreTrouble) as caught:
        rescue(pantry.path, tmp_path / "rescued.brewdesk", now=NOW)

    assert caught.value.code == "damaged"
    assert [entry.name for entry in tmp_path.iterdir()] == ["pantry.brewdesk"]


def test_a_file_of_a_later_program_is_not_taken_apart(tmp_path, pantry):
    with closing(sqlite3.connect(pantry.path)) as connection:
        connection.execute("PRAGMA user_version=999")
    with pytest.raises(StoreTrouble) as caught:
        rescue(pantry.path, tmp_path / "rescued.brewdesk", now=NOW)
    assert caught.value.code == "newer_file"


def test_the_rescued_takes_the_place_and_the_damaged_one_is_kept(long_kept):
    path, _ = long_kept
    smash(path, pages_with(path, b"reading 1")[:1])
    ruined = path.read_bytes()
    rescued = rescue(path, path.with_name("rescued.brewdesk"), now=NOW)
    content = everything(rescued.path)

    aside = put_rescued_in_place(path, rescued.path, now=NOW)

    assert everything(path) == content
    assert aside.read_bytes() == ruined
    Store.open(path, now=NOW).close()


def test_three_hundred_damages_are_found_or_harmless_and_what_is_rescued_was_there(
    pantry, record_property
):
    """Bytes changed anywhere: no traceback, no wrong row called sound without a word."""
    picked = random.Random(20261125)
    sound = pantry.path.read_bytes()
    refused = rescues = stubs = 0
    codes = set()
    for _ in range(300):
        at = picked.randrange(len(sound))
        length = picked.choice([1, 4, 64, 4096])
        broken = bytearray(sound)
        broken[at : at + length] = picked.randbytes(min(length, len(sound) - at))
        pantry.path.write_bytes(broken)
        if not is_refused(pantry.path):
            continue
        refused += 1
        target = pantry.path.with_name("rescued.brewdesk")
        try:
            rescue(pantry.path, target, now=NOW)
        except StoreTrouble as trouble:
            codes.add(trouble.code)
            stubs += target.exists()
            continue
        rescues += 1
        Store.open(target, now=NOW).close()
        target.unlink()
    assert refused > 50
    assert stubs == 0
    assert codes <= {"damaged", "newer_file", "not_a_store"}
    assert rescues > refused / 2
    record_property("tried", 300)
