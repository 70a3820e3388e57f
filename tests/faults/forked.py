"""What runs inside a forked program: the ways of saving that the window uses."""

from __future__ import annotations

import os
import signal
import sys
import traceback
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from brewdesk.services.desk import Desk, build_desk
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import ReadingDraft
from brewdesk.store.store import Store
from culturecore.stages import Method, Quantity
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs


def say(text: str) -> None:
    """Say one line to the test; it arrives whole, also if a kill follows at once."""
    os.write(1, text.encode() + b"\n")


def serve() -> None:
    """Fork a program for each line of standard input."""
    say("ready")
    for line in sys.stdin:
        work, *arguments = line.rstrip("\n").split("\t")
        pid = os.fork()
        if pid == 0:
            code = 1
            try:
                WORKS[work](*arguments)
                code = 0
            except BaseException:
                traceback.print_exc()
            finally:
                os._exit(code)
        say(f"forked {pid}")
        say(f"ended {os.waitpid(pid, 0)[1]}")


def open_desk(path: str) -> Desk:
    """Open a pantry with all its services, but no threads and no notices."""
    clock = FakeClock()
    store = Store.open(Path(path), now=clock.now())
    return build_desk(store, clock, jobs=InlineJobs(hold=True), notifier=FakeNotifier())


def readings_of(desk: Desk, batch_id: int, count: int) -> list[ReadingDraft]:
    """Return a form's readings; each knows its number and how many belong together."""
    return [
        ReadingDraft(
            batch_id=batch_id,
            at=desk.clock.now(),
            quantity=Quantity.PH,
            method=Method.METER,
            value=3.4,
            entered=f"{number} of {count}",
        )
        for number in range(1, count + 1)
    ]


def save_for_ever(path: str, batch_id: str) -> None:
    """Keep forms of three readings, and take every fifth back; say each act once it is kept."""
    desk = open_desk(path)
    turn = 0
    while True:
        turn += 1
        kept = desk.readings.record(readings_of(desk, int(batch_id), 3))
        say("kept " + " ".join(str(reading.id) for reading in kept))
        if turn % 5 == 0:
            desk.history.undo()
            say("taken back " + " ".join(str(reading.id) for reading in kept))


def _record(desk: Desk, batch_id: int) -> None:
    desk.readings.record(readings_of(desk, batch_id, 3))


def _plan(desk: Desk, _batch_id: int) -> None:
    empty = next(vessel for vessel in desk.vessels.all() if vessel.name == "Empty jar")
    wish = desk.batches.default_wish(empty.id)
    desk.batches.plan(empty.id, None, "Invented green tea", wish)


def _discard(desk: Desk, batch_id: int) -> None:
    desk.batches.discard(batch_id, "mold: an invented green spot")


def _split(desk: Desk, _batch_id: int) -> None:
    mother = next(each for each in desk.cultures.all() if each.name == "Invented mother")
    desk.culture_care.split(
        mother.id, name="Daughter", vessel_id=None, pellicle_mm=3.0, rest_volume_l=0.3
    )


def _undo(desk: Desk, _batch_id: int) -> None:
    desk.history.undo()


ACTS: dict[str, Callable[[Desk, int], None]] = {
    "record": _record,
    "plan": _plan,
    "discard": _discard,
    "split": _split,
    "undo": _undo,
}


def die_at_statement(path: str, batch_id: str, act: str, number: str) -> None:
    """Do an act, but end at its n-th statement that changes something; say so if there is none."""
    from sqlalchemy import Engine, event

    desk = open_desk(path)
    left = int(number)

    def count(_connection: object, _cursor: object, statement: str, *_rest: object) -> None:
        nonlocal left
        if statement.lstrip()[:6].upper() in ("INSERT", "UPDATE", "DELETE"):
            left -= 1
            if left == 0:
                os.kill(os.getpid(), signal.SIGKILL)

    event.listen(Engine, "after_cursor_execute", count)
    ACTS[act](desk, int(batch_id))
    say("done")


def back_up_until_page(path: str, number: str) -> None:
    """Make a backup, but end at the n-th step of the copying; say so if there is none."""
    from brewdesk.store import files

    left = int(number)
    copying = files.copy_store

    def one_page_at_a_time(source: Path, target: Path, *, patience: int = 100) -> None:
        import sqlite3
        from contextlib import closing

        def progress(_status: int, _remaining: int, _total: int) -> None:
            nonlocal left
            left -= 1
            if left == 0:
                os.kill(os.getpid(), signal.SIGKILL)

        with closing(sqlite3.connect(source)) as reader, closing(sqlite3.connect(target)) as writer:
            reader.backup(writer, pages=1, progress=progress)
        copying(source, target, patience=patience)

    from brewdesk.store import backup

    backup.copy_store = one_page_at_a_time
    store = Store.open(Path(path), now=datetime(2026, 11, 25, tzinfo=UTC))
    store.backup("manual", now=datetime(2026, 11, 26, tzinfo=UTC))
    say("done")


def try_to_save(path: str, batch_id: str) -> None:
    """Wait for a line of the test each time, keep a form, and say what came of it."""
    desk = open_desk(path)
    say("open")
    flag = Path(path + ".flag")
    for turn in range(3):
        flag.write_text("on") if turn == 1 else flag.unlink(missing_ok=True)
        try:
            desk.readings.record(readings_of(desk, int(batch_id), 3))
            say("kept")
        except StoreTrouble as trouble:
            say(trouble.code)


WORKS: dict[str, Callable[..., None]] = {
    "save_for_ever": save_for_ever,
    "die_at_statement": die_at_statement,
    "back_up_until_page": back_up_until_page,
    "try_to_save": try_to_save,
}
