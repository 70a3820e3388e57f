"""``brewdesk due`` as a person or a script meets it."""

from __future__ import annotations

import io
import json
import os
import pty
import re
import subprocess
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path
from uuid import uuid4
from zoneinfo import ZoneInfo

import pytest

from brewdesk import duelist
from brewdesk.instance import Instance
from brewdesk.paths import STORE_NAME
from brewdesk.services.clock import zone_by_name
from brewdesk.services.reminders import Reminders
from brewdesk.store.records import ReminderDraft
from culturecore.stages import ReminderKind, ReminderState
from tests.helpers.fakes import DEFAULT_START, FakeClock
from tests.helpers.pantry_desk import open_desk, souring_batch

ROOT = Path(__file__).resolve().parents[2]
LONG_AGO_H = -20 * 365 * 24.0  # due whatever the day on which the real command is run
ESCAPE = re.compile(r"\x1b\[[0-9;]*m")


@pytest.fixture
def desk(tmp_path):
    made = open_desk(tmp_path)
    yield made
    made.store.close()


class Screen(io.StringIO):
    """A terminal that keeps what is written on it."""

    def isatty(self):
        return True


def run(desk, *words, out=None, now=None):
    """Run the command; returns exit code, output and errors."""
    out, err = out or io.StringIO(), io.StringIO()

    def clock_of(zone_name):
        return FakeClock(now or desk.clock.now(), zone_by_name(zone_name) or UTC)

    code = duelist.main(
        ["--store", str(desk.store_path), *words], out=out, err=err, clock_of=clock_of
    )
    return code, out.getvalue(), err.getvalue()


def on_screen(desk, monkeypatch, columns, *words, **variables):
    monkeypatch.setenv("COLUMNS", str(columns))
    monkeypatch.setenv("TERM", "xterm-256color")
    monkeypatch.delenv("NO_COLOR", raising=False)
    for name, value in variables.items():
        monkeypatch.setenv(name, value)
    return run(desk, *words, out=Screen())


def add(desk, text="Buy tea", hours=1.0, **fields):
    plain = {"batch_id": None, "kind": ReminderKind.OWN, "occurrence": uuid4().hex}
    due_at = desk.clock.now() + timedelta(hours=hours)
    with desk.store.write() as unit:
        return unit.reminders.add(ReminderDraft(**plain, due_at=due_at, text=text, **fields))


def command(*words, **variables):
    """Start the real command without any display; returns the finished process."""
    environment = {
        **{name: value for name, value in os.environ.items() if name != "QT_QPA_PLATFORM"},
        "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared"))),
        **variables,
    }
    for name in ("DISPLAY", "WAYLAND_DISPLAY"):
        environment.pop(name, None)
    return subprocess.run(
        [sys.executable, "-W", "error", "-m", "brewdesk", "due", *words],
        cwd=ROOT,
        env=environment,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )


def test_nothing_at_all(desk):
    assert run(desk) == (0, "Nothing is due. Nothing is coming.\n", "")


def test_what_is_coming_is_listed_and_no_alarm(desk):
    add(desk)
    code, text, _ = run(desk)
    assert code == duelist.NOTHING_DUE
    assert text.splitlines() == [
        "Nothing is due. 1 is coming.",
        "coming  Wed 25 Nov, 10:00  Buy tea",
    ]


def test_what_is_due_is_listed_first_and_says_how_late(desk):
    add(desk, "Later", hours=2)
    add(desk, "Now", hours=0)
    add(desk, "Late", hours=-26)
    code, text, _ = run(desk)
    assert code == duelist.SOMETHING_DUE
    assert [line.split("  ")[-1] for line in text.splitlines()[1:]] == [
        "Late (1 day 2 h late)",
        "Now",
        "Later",
    ]
    assert [line.split()[0] for line in text.splitlines()[1:]] == ["due", "due", "coming"]


def test_a_snoozed_reminder_is_due_when_its_snooze_ends(desk):
    kept = add(desk, hours=-1)
    Reminders(desk.door).snooze(kept.id, desk.clock.now() + timedelta(hours=3))
    assert run(desk)[0] == duelist.NOTHING_DUE
    assert run(desk, now=desk.clock.now() + timedelta(hours=3))[0] == duelist.SOMETHING_DUE


def test_it_says_what_the_window_says(desk):
    souring_batch(desk)
    desk.reminders.sync()
    _, text, _ = run(desk, "--json")
    told = {(each["title"], each["body"]) for each in json.loads(text)["reminders"]}
    assert told == {(item.title, item.body) for item in desk.reminders.listed()}
    assert told


def test_only_what_is_due(desk):
    add(desk, "Later", hours=2)
    add(desk, "Now", hours=0)
    _, text, _ = run(desk, "--due-only")
    assert "Later" not in text
    assert text.startswith("1 thing is due. 1 is coming.\n")


def test_what_to_mind_is_printed_if_asked_for(desk):
    souring_batch(desk)
    desk.reminders.sync()
    assert "throw it out" not in run(desk)[1]
    assert "throw it out" in run(desk, "--full")[1]


def test_times_are_the_makers_own(desk):
    desk.settings.put("zone", "America/St_Johns")
    add(desk)
    _, text, _ = run(desk)
    assert "Wed 25 Nov, 06:30" in text
    _, text, _ = run(desk, "--json")
    (reminder,) = json.loads(text)["reminders"]
    assert reminder["due_at"] == "2026-11-25T06:30:00-03:30"


# Both instants show 02:30 in Berlin: clocks there go back on 25 October 2026 at 03:00.
@pytest.mark.parametrize(
    ("utc_hour", "written"),
    [(0, "2026-10-25T02:30:00+02:00"), (1, "2026-10-25T02:30:00+01:00")],
)
def test_the_hour_that_comes_twice_is_exact(desk, utc_hour, written):
    desk.settings.put("zone", "Europe/Berlin")
    at = datetime(2026, 10, 25, utc_hour, 30, tzinfo=UTC)
    with desk.store.write() as unit:
        unit.reminders.add(
            ReminderDraft(batch_id=None, kind=ReminderKind.OWN, occurrence="1", due_at=at, text="x")
        )
    code, text, _ = run(desk, "--json", now=at)
    (reminder,) = json.loads(text)["reminders"]
    assert reminder["due_at"] == written
    assert (code, reminder["late_s"]) == (1, 0)
    assert run(desk, now=at - timedelta(seconds=1))[0] == 0


def test_json_holds_everything(desk):
    souring_batch(desk)
    desk.reminders.sync()
    add(desk, "Buy tea", hours=-2)
    code, text, _ = run(desk, "--json")
    document = json.loads(text)
    assert code == 1
    assert document["format"] == 1
    assert document["is_invented"] is False
    assert document["due_count"] == 1
    assert datetime.fromisoformat(document["at"]) == desk.clock.now()
    own, *others = document["reminders"]
    assert own == {
        "kind": "own",
        "title": "Buy tea",
        "body": "You asked to be reminded of this.",
        "about": "",
        "vessel": "",
        "due_at": "2026-11-25T07:00:00+00:00",
        "is_due": True,
        "late_s": 7200,
    }
    assert {(each["about"], each["vessel"]) for each in others} == {("Black tea 1", "Tall jar")}


HOSTILE = "\x1b[31mred\x1b]0;title\x07\r\nsecond \x9b5n \u202etxt\u202c طعم"


@pytest.mark.parametrize("words", [(), ("--full",), ("--json",)])
def test_hostile_text_moves_no_cursor_and_begins_no_line(desk, words):
    add(desk, HOSTILE, hours=-1)
    _, text, _ = run(desk, *words)
    assert not re.search(r"[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]", text)
    if not words:
        assert len(text.splitlines()) == 2
        assert "طعم" in text


def test_no_line_is_wider_than_the_terminal(desk, monkeypatch):
    add(desk, "word " * 60, hours=-1)
    add(desk, "x" * 300, hours=1)
    for columns in (30, 40, 80, 200):
        _, text, _ = on_screen(desk, monkeypatch, columns, "--full")
        assert max(len(ESCAPE.sub("", line)) for line in text.splitlines()) <= columns


def test_an_escape_sequence_is_never_broken_and_always_closed(desk, monkeypatch):
    add(desk, "word " * 60, hours=-1)
    _, text, _ = on_screen(desk, monkeypatch, 40)
    coloured = [line for line in text.splitlines() if "\x1b" in line]
    assert len(coloured) > 3
    for line in coloured:
        assert ESCAPE.findall(line) == ["\x1b[1;33m", "\x1b[0m"]
        assert line.startswith("\x1b[1;33m")
        assert line.endswith("\x1b[0m")


def test_a_pipe_gets_one_line_each_and_no_colours(desk, monkeypatch):
    monkeypatch.setenv("COLUMNS", "40")
    add(desk, "word " * 60, hours=-1)
    _, text, _ = run(desk)
    assert "\x1b" not in text
    assert len(text.splitlines()) == 2


@pytest.mark.parametrize("variables", [{"NO_COLOR": "1"}, {"TERM": "dumb"}])
def test_whoever_wants_no_colours_gets_none(desk, monkeypatch, variables):
    add(desk, hours=-1)
    assert "\x1b[" in on_screen(desk, monkeypatch, 80)[1]
    assert "\x1b[" not in on_screen(desk, monkeypatch, 80, **variables)[1]


def test_the_colour_is_never_the_only_sign(desk, monkeypatch):
    add(desk, hours=-1)
    add(desk, hours=1)
    _, text, _ = on_screen(desk, monkeypatch, 80)
    _, due, coming = ESCAPE.sub("", text).splitlines()
    assert (due.split()[0], coming.split()[0]) == ("due", "coming")


def test_trouble_is_told_apart_from_something_due(desk, tmp_path):
    out, err = io.StringIO(), io.StringIO()
    code = duelist.main(["--store", str(tmp_path / "gone")], out=out, err=err)
    assert code == duelist.TROUBLE
    assert out.getvalue() == ""
    assert err.getvalue().startswith("brewdesk due: There is no pantry at ")
    with pytest.raises(SystemExit) as left:
        duelist.main(["--no-such-option"])
    assert left.value.code == duelist.TROUBLE


def test_a_fault_of_the_program_is_trouble_too(desk, monkeypatch):
    def trip(_path):
        raise ZeroDivisionError

    monkeypatch.setattr(duelist, "read_due", trip)
    code, _, err = run(desk)
    assert code == duelist.TROUBLE
    assert "ZeroDivisionError" in err
    assert err.endswith("nothing was changed.\n")


def test_every_trouble_has_its_sentence(tmp_path):
    from brewdesk.services.wording.duelist import trouble_words
    from brewdesk.store.duereader import DueTrouble

    codes = set(
        re.findall(r"[a-z_]+(?=[,.])", DueTrouble.__doc__.split("one of:")[1].split("The last")[0])
    )
    assert len(codes) == 10
    for code in codes:
        assert "pantry.x" in trouble_words(code, "pantry.x")


# the command itself


def test_without_a_display_beside_the_open_window_and_in_little_time(desk, tmp_path, qapp):
    add(desk, hours=LONG_AGO_H)
    holder = Instance(desk.store_path)
    assert holder.take()  # as the open window does
    try:
        before, names = desk.store_path.read_bytes(), sorted(os.listdir(tmp_path))
        done = command("--store", str(desk.store_path))
        assert desk.store_path.read_bytes() == before
        assert sorted(os.listdir(tmp_path)) == names
    finally:
        holder.release()
    assert done.stderr == ""
    assert done.returncode == 1
    assert "Buy tea" in done.stdout


def test_nothing_slow_and_nothing_that_needs_a_display_is_imported(desk):
    script = """
import sys
from brewdesk.__main__ import main
sys.argv = ["brewdesk", "due", "--store", sys.argv[1]]
code = main()
slow = ("sqlalchemy", "alembic", "numpy", "pint", "icalendar", "jeepney", "PySide6.QtGui",
        "PySide6.QtWidgets", "PySide6.QtNetwork", "brewdesk.app")
print([name for name in slow if name in sys.modules], code, file=sys.stderr)
"""
    done = subprocess.run(
        [sys.executable, "-c", script, str(desk.store_path)],
        cwd=ROOT,
        env={**os.environ, "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared")))},
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.stderr.strip() == "[] 0"


def test_it_takes_less_than_half_a_second_of_the_processor(desk):
    """Measured: 0.2 s. Time on the processor, because other programs may want it too."""
    import resource

    def used():
        usage = resource.getrusage(resource.RUSAGE_CHILDREN)
        return usage.ru_utime + usage.ru_stime

    spent = []
    for _ in range(3):
        before = used()
        assert command("--store", str(desk.store_path)).returncode == 0
        spent.append(used() - before)
    assert min(spent) < 0.5


def test_a_pantry_that_was_never_made_is_not_made_by_looking(tmp_path):
    done = command("--data-dir", str(tmp_path / "nowhere"))
    assert done.returncode == 2
    assert STORE_NAME in done.stderr
    assert list(tmp_path.iterdir()) == []


def test_a_reader_that_has_seen_enough_is_no_trouble(desk):
    for number in range(300):
        add(desk, f"{number} " + "x" * 400, hours=LONG_AGO_H)
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared")))}
    process = subprocess.Popen(
        [sys.executable, "-m", "brewdesk", "due", "--store", str(desk.store_path)],
        cwd=ROOT,
        env=environment,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    assert process.stdout.readline() == b"300 things are due. Nothing is coming.\n"
    process.stdout.close()
    errors = process.stderr.read()
    process.stderr.close()
    assert (process.wait(timeout=30), errors) == (1, b"")


def test_an_encoding_without_the_letter_gets_a_mark_instead(desk):
    add(desk, "Té verde 茶", hours=LONG_AGO_H)
    done = command("--store", str(desk.store_path), PYTHONIOENCODING="ascii", LC_ALL="C")
    assert done.returncode == 1
    assert "T? verde ?" in done.stdout


def test_a_real_terminal_gives_its_width_and_colours(desk):
    add(desk, "word " * 60, hours=LONG_AGO_H)
    master, slave = pty.openpty()
    import fcntl
    import struct
    import termios

    fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 50, 0, 0))
    environment = {
        **os.environ,
        "TERM": "xterm",
        "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared"))),
    }
    for name in ("NO_COLOR", "COLUMNS"):
        environment.pop(name, None)
    process = subprocess.Popen(
        [sys.executable, "-m", "brewdesk", "due", "--store", str(desk.store_path)],
        cwd=ROOT,
        env=environment,
        stdout=slave,
        stderr=slave,
    )
    os.close(slave)
    text = b""
    while True:
        try:
            part = os.read(master, 4096)
        except OSError:  # Linux says so when the other end is closed
            break
        if not part:
            break
        text += part
    os.close(master)
    assert process.wait(timeout=30) == 1
    lines = text.decode().split("\r\n")
    assert max(len(ESCAPE.sub("", line)) for line in lines) <= 50
    assert sum("\x1b[1;33m" in line for line in lines) > 5


def test_bottles_about_to_get_too_strong_stand_first():
    zone = ZoneInfo("UTC")
    lines = [
        duelist.Line(
            kind=kind.value,
            title="x",
            body="",
            about="",
            vessel="",
            due_at=DEFAULT_START.astimezone(zone) + timedelta(hours=hours),
            is_due=is_due,
            lateness=timedelta(0),
        )
        for kind, hours, is_due in (
            (ReminderKind.TASTE, 0, True),
            (ReminderKind.CHILL, 1, True),
            (ReminderKind.OWN, -5, True),
            (ReminderKind.CHILL, 2, False),
        )
    ]
    kinds = [(line.kind, line.is_due) for line in sorted(lines, key=duelist._order)]
    assert kinds == [("chill", True), ("own", True), ("taste", True), ("chill", False)]


def test_states_other_than_open_are_not_listed(desk):
    for state in ReminderState:
        add(desk, state.value, hours=-1, state=state)
    _, text, _ = run(desk)
    assert {line.split("  ")[-1].split()[0] for line in text.splitlines()[1:]} == {
        "waiting",
        "shown",
        "snoozed",
    }
