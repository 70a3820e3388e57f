"""What runs inside a forked program: the ways of saving that the window uses."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import traceback
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from brewdesk.services.desk import Desk, build_desk
from brewdesk.services.exporting import export_everything
from brewdesk.services.exporttrouble import ExportTrouble
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
    from brewdesk.store.backup import make_backup
    from brewdesk.store.files import copy_store

    left = int(number)

    def one_page_at_a_time(source: Path, target: Path) -> None:
        import sqlite3
        from contextlib import closing

        def progress(_status: int, _remaining: int, _total: int) -> None:
            nonlocal left
            left -= 1
            if left == 0:
                os.kill(os.getpid(), signal.SIGKILL)

        with closing(sqlite3.connect(source)) as reader, closing(sqlite3.connect(target)) as writer:
            reader.backup(writer, pages=1, progress=progress)
        copy_store(source, target)

    now = datetime(2026, 11, 26, tzinfo=UTC)
    make_backup(Path(path), "manual", now=now, copying=one_page_at_a_time)
    say("done")


def follow(path: str, batch_id: str, *steps: str) -> None:
    """Open a pantry and follow steps; say what came of each.

    ``save N`` keeps a form with N bytes of text, ``backup`` and ``export FILE`` write what
    they are called, ``calendar FILE`` writes the due list, ``count`` says how many readings
    there are, ``$ …`` is a command for the shell.
    """
    try:
        desk = open_desk(path)
    except StoreTrouble as trouble:
        say(trouble.code)
        return
    say("open to look at" if desk.store.is_read_only else "open")
    for step in steps:
        word, _, rest = step.partition(" ")
        if word == "$":
            subprocess.run(["sh", "-c", rest], check=True)
            continue
        try:
            say(STEPS[word](desk, int(batch_id), rest))
        except (StoreTrouble, ExportTrouble) as trouble:
            say(trouble.code)


def _step_save(desk: Desk, batch_id: int, size: str) -> str:
    note = ReadingDraft(
        batch_id=batch_id,
        at=desk.clock.now(),
        quantity=Quantity.NOTE,
        method=Method.EYE,
        text="x" * 1000,
    )
    desk.readings.record([note] * max(1, int(size) // 1000))
    return "kept"


def _step_backup(desk: Desk, _batch_id: int, _rest: str) -> str:
    desk.back_up()
    return "backed up"


def _step_export(desk: Desk, _batch_id: int, target: str) -> str:
    export_everything(desk.store_path, Path(target), now=desk.clock.now(), program="test")
    return "exported"


def _step_calendar(desk: Desk, _batch_id: int, target: str) -> str:
    told: list[tuple[object, ...]] = []
    desk.calendar.told.connect(lambda *words: told.append(words))
    desk.calendar.export(Path(target))
    desk.jobs.release()
    return f"calendar: {told[-1][0]}"


def _step_count(desk: Desk, batch_id: int, _rest: str) -> str:
    return str(len(desk.readings.of_batch(batch_id)))


STEPS: dict[str, Callable[[Desk, int, str], str]] = {
    "save": _step_save,
    "backup": _step_backup,
    "export": _step_export,
    "calendar": _step_calendar,
    "count": _step_count,
}


def migrate_until(path: str, number: str) -> None:
    """Open an older store, but end at the n-th statement of its migration.

    For 0 it comes to its end, and says how many statements there were.
    """
    from sqlalchemy import Engine, event

    left = int(number)

    def count(*_told: object) -> None:
        nonlocal left
        left -= 1
        if left == 0:
            os.kill(os.getpid(), signal.SIGKILL)

    event.listen(Engine, "after_cursor_execute", count)
    Store.open(Path(path), now=datetime(2026, 11, 25, tzinfo=UTC)).close()
    say(str(-left))


def restore_until(path: str, number: str) -> None:
    """Go back to the newest backup, but end before the n-th renaming of a file."""
    from brewdesk.store.backup import backups
    from brewdesk.store.restore import restore_backup

    left = int(number)
    really_replace = os.replace

    def replace(source: Path, target: Path) -> None:
        nonlocal left
        left -= 1
        if left == 0:
            os.kill(os.getpid(), signal.SIGKILL)
        really_replace(source, target)

    os.replace = replace
    now = datetime(2026, 11, 26, tzinfo=UTC)
    restore_backup(Path(path), backups(Path(path))[0], now=now)
    say("done")


def shell(command: str) -> None:
    """Run a command where this program sees the disks."""
    subprocess.run(["sh", "-c", command], check=True)


WORKS: dict[str, Callable[..., None]] = {
    "save_for_ever": save_for_ever,
    "die_at_statement": die_at_statement,
    "back_up_until_page": back_up_until_page,
    "follow": follow,
    "migrate_until": migrate_until,
    "restore_until": restore_until,
    "shell": shell,
}
