"""The server goes and comes back; nothing that was acknowledged or typed is lost."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import textwrap
from contextlib import contextmanager

import pytest

from brewdesk import faults
from brewdesk.services.changes import Topic
from brewdesk.store.desklocal import DeskIdentity
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.serverstore import ServerStore
from brewdesk.widgets.vesselform import VesselDialog
from tests.helpers.fakes import DEFAULT_START
from tests.helpers.pantry_desk import plan_batch
from tests.helpers.pgserver import PgServer

BACK_MS = 20_000  # the server's own start, and the desk's next try


@pytest.fixture
def pg_server():
    """A server of this test's own: it is going to be killed."""
    server = PgServer()
    server.start()
    yield server
    server.close()


@contextmanager
def away(shared, pg_server, program, how):
    """Take the server away until a window says so; start it afterwards, until it was found.

    Pages that look meanwhile find nothing: the program's own hook tells that, below.
    """
    line = program.window.centralWidget().desk_line
    with shared.qtbot.capture_exceptions() as caught:
        how()
        shared.qtbot.waitUntil(line.isVisible, timeout=BACK_MS)
        yield
        with shared.qtbot.waitSignal(program.desk.desks.connection_changed, timeout=BACK_MS):
            pg_server.start()
            program.store._listener.look()
    assert {getattr(error, "code", error) for _, error, _ in caught} <= {"not_connected"}
    assert not line.isVisible()


@pytest.mark.parametrize("how", ["stop", "kill"])
def test_a_window_outlives_its_server(shared, anna, pg_server, how, qtbot):
    plan_batch(anna.desk, vessel="Invented crock")
    (crock,) = anna.desk.vessels.all()
    form = VesselDialog(anna.desk, crock)
    qtbot.addWidget(form)
    form.open()
    form.name.setText("What Anna typed")

    with away(shared, pg_server, anna, getattr(pg_server, how)):
        form.save.click()

        assert form.isVisible()
        assert form.name.text() == "What Anna typed"
        assert "does not answer" in form.trouble.text()
        with pytest.raises(StoreTrouble) as caught:
            anna.desk.vessels.edit(crock.id, name="Lost")
        assert caught.value.code == "not_connected"
    form.save.click()

    assert not form.isVisible()
    assert [vessel.name for vessel in anna.desk.vessels.all()] == ["What Anna typed"]


def test_what_was_missed_is_read_when_the_server_is_back(shared, anna, pg_server, qtbot):
    heard = []
    anna.desk.changes.changed.connect(heard.append)

    with away(shared, pg_server, anna, pg_server.stop):
        heard.clear()

    assert Topic.EVERYTHING in [change.topics for change in heard]


def test_a_page_that_finds_no_server_is_no_fault_of_the_program():
    faults_told, troubles = [], []
    restore = faults.install(faults_told.append, troubles.append)
    trouble = StoreTrouble("not_connected", "invented")

    sys.excepthook(StoreTrouble, trouble, None)

    restore()
    assert (faults_told, troubles) == ([], [trouble])


WRITER = """
    import sys
    from datetime import UTC, datetime
    from pathlib import Path
    from brewdesk.store.desklocal import DeskIdentity
    from brewdesk.store.records import PlaceDraft
    from brewdesk.store.serverstore import ServerStore

    now = datetime(2026, 11, 25, tzinfo=UTC)
    store = ServerStore.open(
        sys.argv[1], Path(sys.argv[2]), desk=DeskIdentity("w" * 32, "Writer"), now=now
    )
    number = 0
    while True:
        number += 1
        with store.write() as unit:
            place = unit.places.add(PlaceDraft(name=f"Invented {number}", temperature_c=20.0))
            unit.acts.add(kind="add_place", facts={"number": number}, at=now, deltas=unit.deltas)
        print(number, flush=True)  # acknowledged
"""


def test_a_desk_killed_in_mid_write_loses_no_acknowledged_act(pg_server, tmp_path):
    address = pg_server.make_store()
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    writer = subprocess.Popen(
        [sys.executable, "-c", textwrap.dedent(WRITER), address, str(tmp_path / "w")],
        stdout=subprocess.PIPE, text=True, env=environment,
    )  # fmt: skip
    acknowledged = [int(writer.stdout.readline()) for _ in range(40)]
    writer.send_signal(signal.SIGKILL)
    writer.wait()
    acknowledged += [int(line) for line in writer.stdout.read().split()]
    writer.stdout.close()

    store = ServerStore.open(
        address, tmp_path / "r", desk=DeskIdentity("r" * 32, "Reader"), now=DEFAULT_START
    )
    with store.read() as unit:
        places = {place.name for place in unit.places.where()}
        acts = [act.facts["number"] for act in unit.acts.recent(10_000)]
    with store.write() as unit:  # its lock has gone with it
        unit.settings.put("rest_feed_days", "14.0")
    store.close()

    assert {f"Invented {number}" for number in acknowledged} <= places
    assert {f"Invented {number}" for number in acts} == places, "an act without its rows"


def test_a_server_killed_in_mid_write_loses_no_acknowledged_act(pg_server, tmp_path):
    address = pg_server.make_store()
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    writer = subprocess.Popen(
        [sys.executable, "-c", textwrap.dedent(WRITER), address, str(tmp_path / "w")],
        stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environment,
    )  # fmt: skip
    acknowledged = [int(writer.stdout.readline()) for _ in range(40)]
    pg_server.kill()
    out, err = writer.communicate(timeout=60)
    acknowledged += [int(line) for line in out.split()]
    pg_server.start()

    store = ServerStore.open(
        address, tmp_path / "r", desk=DeskIdentity("r" * 32, "Reader"), now=DEFAULT_START
    )
    with store.read() as unit:
        places = {place.name for place in unit.places.where()}
    store.close()

    assert {f"Invented {number}" for number in acknowledged} <= places
    assert "not_connected" in err
