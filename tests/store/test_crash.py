"""What was acknowledged is there after the program is killed; what was not is whole or absent."""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
from contextlib import closing

import pytest

from brewdesk.store.store import Store
from tests.store.drafts import NOW

# Each act writes three rows that belong together, then says so.
WRITE_ON = """
import sys
from datetime import UTC, datetime
from pathlib import Path
from brewdesk.store.store import Store
from tests.store.drafts import reading_draft

store = Store.open(Path(sys.argv[1]), now=datetime(2026, 11, 25, tzinfo=UTC))
while True:
    with store.write() as unit:
        for part in ("ph", "temperature", "taste"):
            reading = unit.readings.add(reading_draft(int(sys.argv[2]), entered=part))
        act = unit.acts.add(
            kind="add_readings",
            facts={},
            at=reading.at,
            batch_id=reading.batch_id,
            deltas=unit.deltas,
        )
    print(act.id, flush=True)
"""


@pytest.mark.parametrize("acknowledged", [1, 3, 10, 25, 60])
def test_a_kill_while_writing_loses_nothing_that_was_acknowledged(store, shelf, acknowledged):
    store.close()
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)}
    said = []
    with subprocess.Popen(
        [sys.executable, "-c", WRITE_ON, str(store.path), str(shelf.batch.id)],
        env=environment,
        stdout=subprocess.PIPE,
        text=True,
    ) as writer:
        for line in writer.stdout:
            said.append(int(line))
            if len(said) == acknowledged:
                writer.kill()
        # What it said before the signal arrived counts as acknowledged too.
    assert writer.returncode == -signal.SIGKILL

    reopened = Store.open(store.path, now=NOW)
    with reopened.read() as unit:
        acts = unit.acts.for_batch(shelf.batch.id)
        readings = unit.readings.where(order_by="id")
        deltas = [delta for act in reversed(acts) for delta in unit.acts.deltas(act.id)]
    reopened.close()

    assert len(said) >= acknowledged
    assert {act.id for act in acts} >= set(said)
    assert [reading.id for reading in readings] == [delta.row_id for delta in deltas]
    assert [reading.entered for reading in readings] == ["ph", "temperature", "taste"] * len(acts)
    with closing(sqlite3.connect(store.path)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
