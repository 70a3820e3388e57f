"""The open store is touched through SQLite alone.

One plain open and close of the file by the same process drops SQLite's locks on it
(https://www.sqlite.org/howtocorrupt.html, section 2.2).
"""

from __future__ import annotations

import os
import subprocess
import sys

A_SESSION = """
import sys
from datetime import UTC, datetime
from pathlib import Path
from brewdesk.store.store import Store
from tests.store.drafts import PLACE

path = Path(sys.argv[1])
plain, through_sqlite = [], []

def watch(event, arguments):
    names = [str(argument) for argument in arguments[:2]]
    if event in ("open", "shutil.copyfile") and str(path) in names:
        plain.append(event)
    if event == "sqlite3.connect" and path.as_uri() in names[0]:
        through_sqlite.append(event)

sys.addaudithook(watch)
now = datetime(2026, 11, 25, tzinfo=UTC)
store = Store.open(path, now=now)
with store.write() as unit:
    unit.places.add(PLACE)
    with store.read() as inner:
        inner.places.where()
store.backup("manual", now=now)
store.backups()
store.close()
print(len(plain), len(through_sqlite) > 0)
path.open().close()
print(len(plain))
"""


def test_a_session_never_opens_the_store_but_through_sqlite(store):
    store.close()

    done = subprocess.run(
        [sys.executable, "-c", A_SESSION, str(store.path)],
        env={**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)},
        capture_output=True,
        text=True,
        check=True,
    )

    # The last number shows that the watcher would have seen it.
    assert done.stdout.split() == ["0", "True", "1"]
