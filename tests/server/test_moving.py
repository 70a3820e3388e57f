"""A pantry moves onto a server and back, and is what it was."""

from __future__ import annotations

import io
import sqlite3
import subprocess
import sys
from contextlib import closing

import pytest

from brewdesk import movestore
from brewdesk.paths import SERVER_VARIABLE, STORE_NAME
from brewdesk.store.desklocal import desk_identity
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.moving import move_to_server
from brewdesk.store.records import PlaceDraft
from brewdesk.store.serverstore import ServerStore
from brewdesk.store.store import Store
from tests.helpers.fakes import DEFAULT_START
from tests.helpers.pgserver import PASSWORD
from tests.helpers.whole_pantry import everything, full_pantry, photo_files


@pytest.fixture
def own(tmp_path):
    """The maker's own pantry: invented, with something in every table."""
    return full_pantry(tmp_path / STORE_NAME)


@pytest.fixture
def address(pg_server):
    """An address of a database with nothing in it."""
    made = pg_server.make_database()
    yield made
    pg_server.drop(made)


@pytest.fixture
def move(tmp_path, address):
    """Run the command as this desk; return its exit code and all it said."""

    def run(*words, address=address):
        out, err = io.StringIO(), io.StringIO()
        code = movestore.main(
            [*words, "--data-dir", str(tmp_path)],
            out=out,
            err=err,
            variables={SERVER_VARIABLE: address} if address else {},
            now=lambda: DEFAULT_START,
        )
        return code, out.getvalue() + err.getvalue()

    return run


@pytest.fixture
def open_shared(tmp_path, address):
    opened = []

    def opening(path=tmp_path / "shared-pantry.brewdesk"):
        desk = desk_identity(tmp_path, "Invented desk")
        opened.append(ServerStore.open(address, path, desk=desk, now=DEFAULT_START))
        return opened[-1]

    yield opening
    for store in opened:
        store.close()


def test_a_pantry_that_goes_to_a_server_and_back_is_the_same_to_the_last_id(move, own, tmp_path):
    rows, photos = everything(own), photo_files(own)
    back = tmp_path / "back.brewdesk"

    there = move("--to", "server")
    here = move("--to", str(back))

    assert (there[0], here[0]) == (0, 0), (there, here)
    assert everything(back) == rows
    assert photo_files(back) == photos
    assert len(photos) == 1
    assert everything(own) == rows, "what was moved stays as it was"


def test_what_came_back_opens_and_is_backed_up(move, own, tmp_path):
    back = tmp_path / "back" / "pantry.brewdesk"
    back.parent.mkdir()
    move("--to", "server")
    move("--to", str(back))

    store = Store.open(back, now=DEFAULT_START)

    assert [info.reason for info in store.backups()] == ["manual"]
    store.close()


def test_the_maker_who_moved_goes_on_undoing(move, own, open_shared):
    file = Store.open(own, now=DEFAULT_START)
    with file.write() as unit:
        place = unit.places.add(PlaceDraft(name="Invented cellar", temperature_c=17.0))
        act = unit.acts.add(kind="add_place", facts={}, at=DEFAULT_START, deltas=unit.deltas)
    file.close()
    move("--to", "server")

    store = open_shared()
    with store.write() as unit:
        newest = unit.acts.undoable()
        unit.apply(unit.acts.deltas(newest.id), backwards=True)

    assert newest == act
    with store.read() as unit:
        assert unit.places.where(id=place.id) == ()


def test_ids_go_on_after_those_that_were_given_before(move, own, open_shared):
    with closing(sqlite3.connect(own)) as connection:
        connection.execute("UPDATE sqlite_sequence SET seq = 4711 WHERE name = 'place'")
        connection.commit()
    move("--to", "server")

    with open_shared().write() as unit:
        place = unit.places.add(PlaceDraft(name="Invented cellar", temperature_c=17.0))

    assert place.id == 4712


def test_choices_of_this_desk_come_back_and_those_of_others_do_not(move, own, tmp_path, address):
    move("--to", "server")
    for name in (".", "other"):
        desk = desk_identity(tmp_path / name, f"Invented desk {name}")
        store = ServerStore.open(address, tmp_path / "s", desk=desk, now=DEFAULT_START)
        with store.write() as unit:
            unit.settings.put("theme", "dark" if name == "." else "light")
            unit.settings.put("rest_feed_days", "14.0")
        store.close()
    back = tmp_path / "back.brewdesk"
    move("--to", str(back))

    file = Store.open(back, now=DEFAULT_START)
    with file.read() as unit:
        kept = unit.settings.all()
    file.close()

    assert kept["theme"] == "dark"
    assert kept["rest_feed_days"] == "14.0"
    assert not [key for key in kept if key.startswith("desk/")]


def test_a_database_with_a_pantry_is_not_written_over(move, own, open_shared):
    store = open_shared()
    with store.read() as unit:
        before = unit.settings.all()

    code, said = move("--to", "server")

    assert (code, "Nothing was changed there" in said) == (2, True), said
    with store.read() as unit:
        assert unit.settings.all() == before
        assert unit.places.where() == ()


def test_a_file_is_not_written_over(move, own, tmp_path):
    move("--to", "server")
    before = own.read_bytes()

    code, _ = move("--to", str(own))

    assert code == 2
    assert own.read_bytes() == before


def test_a_database_without_a_pantry_has_nothing_to_give(move, tmp_path, pg_server, address):
    code, said = move("--to", str(tmp_path / "back.brewdesk"))

    assert (code, "nothing to move" in said) == (2, True), said
    database = address.partition("?")[0].rpartition("/")[2]
    assert pg_server.execute("SELECT count(*) FROM pg_namespace WHERE nspname = 'brewdesk'",
                             database) == [(0,)]  # fmt: skip


def test_rows_that_do_not_arrive_as_they_were_leave_nothing_on_the_server(
    own, address, tmp_path, monkeypatch
):
    def lose_a_table(connection):
        return {}

    monkeypatch.setattr("brewdesk.store.servercopy.server_sums", lose_a_table)
    desk = desk_identity(tmp_path, "Invented desk")

    with pytest.raises(StoreTrouble) as caught:
        move_to_server(own, address, desk=desk, now=DEFAULT_START)

    assert caught.value.code == "damaged"
    monkeypatch.undo()
    move_to_server(own, address, desk=desk, now=DEFAULT_START)  # the database is still empty


@pytest.mark.parametrize("words", [("--to", "server"), ("--to", "a-file.brewdesk")])
def test_without_a_server_there_is_nowhere_to_move(move, own, words):
    code, said = move(*words, address="")

    assert (code, SERVER_VARIABLE in said) == (2, True), said


def test_a_pantry_that_is_open_in_a_window_is_not_moved(move, own):
    from PySide6.QtCore import QLockFile

    lock = QLockFile(str(own) + ".lock")
    assert lock.tryLock(0)

    code, said = move("--to", "server")

    lock.unlock()
    assert (code, "open in a window" in said) == (2, True), said


def test_a_wrong_password_is_told_without_the_password(move, own, address):
    wrong = address.replace("invented%20secret", "another%20secret")

    code, said = move("--to", wrong)

    assert (code, "does not let this desk in" in said) == (2, True), said
    assert "secret" not in said


def test_the_command_runs_from_a_terminal(own, address, tmp_path):
    done = subprocess.run(
        [sys.executable, "-m", "brewdesk", "move-store", "--to", "server", "--data-dir",
         str(tmp_path)],
        capture_output=True, text=True, check=False,
        env={**_environment(), SERVER_VARIABLE: address},
    )  # fmt: skip

    assert done.returncode == 0, done.stderr
    assert "are the same as before" in done.stdout
    assert PASSWORD not in done.stdout + done.stderr


def _environment():
    import os

    return {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
