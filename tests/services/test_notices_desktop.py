"""Notices over a real message bus, with a notice service of our own behind it."""

from __future__ import annotations

import shutil
import socket
from collections.abc import Callable, Iterator
from itertools import pairwise
from pathlib import Path
from time import monotonic

import pytest
from PySide6.QtCore import QElapsedTimer, QTimer

from brewdesk.services.notices import session_bus
from brewdesk.services.notices.freedesktop import (
    BODY_LIMIT,
    FreedesktopNotifier,
    notify_arguments,
    shortened,
)
from brewdesk.services.notices.port import Notice, NoticeAction, Urgency
from brewdesk.services.notices.silent import SilentNotifier
from tests.helpers.bus import FakeDaemon, PrivateBus

BUTTONS = (
    (NoticeAction.OPEN, "Open"),
    (NoticeAction.DONE, "Done"),
    (NoticeAction.SNOOZE, "In 2 hours"),
)
NOTICE = Notice("reminder-7", "Taste Amber", "It may be ready.", BUTTONS)


@pytest.fixture
def bus(tmp_path: Path) -> Iterator[PrivateBus]:
    private_bus = PrivateBus(tmp_path)
    private_bus.start()
    yield private_bus
    private_bus.stop()


@pytest.fixture
def start_daemon(bus: PrivateBus) -> Iterator[Callable[..., FakeDaemon]]:
    daemons: list[FakeDaemon] = []

    def start(**options) -> FakeDaemon:
        daemons.append(FakeDaemon(bus.address, **options).start())
        return daemons[-1]

    yield start
    for daemon in daemons:
        daemon.stop()


@pytest.fixture
def make_notifier(qtbot) -> Iterator[Callable[[str], FreedesktopNotifier]]:
    made: list[FreedesktopNotifier] = []

    def make(address: str) -> FreedesktopNotifier:
        made.append(FreedesktopNotifier(address))
        return made[-1]

    yield make
    for notifier in made:
        notifier.close()


pytestmark = pytest.mark.bus


def test_a_notice_arrives_with_its_words_buttons_and_hints(bus, start_daemon, make_notifier, qtbot):
    daemon = start_daemon()
    notifier = make_notifier(bus.address)
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: len(daemon.shown) == 1)
    (shown,) = daemon.shown
    assert (shown.title, shown.body) == ("Taste Amber", "It may be ready.")
    assert shown.actions == ["default", "Open", "done", "Done", "snooze", "In 2 hours"]
    assert shown.hints["desktop-entry"] == ("s", "brewdesk")
    assert shown.hints["urgency"] == ("y", 1)
    assert shown.replaces_id == 0
    qtbot.waitUntil(notifier.is_available)


@pytest.mark.parametrize(
    ("name", "action"),
    [
        ("default", NoticeAction.OPEN),
        ("done", NoticeAction.DONE),
        ("snooze", NoticeAction.SNOOZE),
    ],
)
def test_a_pressed_button_comes_back_with_the_key(
    bus, start_daemon, make_notifier, qtbot, name, action
):
    daemon = start_daemon(first_id=41)
    notifier = make_notifier(bus.address)
    with qtbot.waitSignal(notifier.availability_changed):
        notifier.show(NOTICE)
    qtbot.waitUntil(lambda: notifier._id_by_key == {"reminder-7": 41})
    with qtbot.waitSignal(notifier.acted) as acted:
        daemon.press(40, "done")  # another program's notice
        daemon.press(41, "unheard of")
        daemon.press(41, name)
    assert acted.args == ["reminder-7", action]


def test_the_same_key_replaces_the_notice_on_the_screen(bus, start_daemon, make_notifier, qtbot):
    daemon = start_daemon(first_id=5)
    notifier = make_notifier(bus.address)
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: notifier._id_by_key == {"reminder-7": 5})
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: len(daemon.shown) == 2)
    assert daemon.shown[1].replaces_id == 5


def test_a_notice_closed_by_the_maker_is_not_replaced_later(
    bus, start_daemon, make_notifier, qtbot
):
    daemon = start_daemon()
    notifier = make_notifier(bus.address)
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: notifier._id_by_key == {"reminder-7": 1})
    daemon.dismiss(1)
    qtbot.waitUntil(lambda: notifier._id_by_key == {})
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: len(daemon.shown) == 2)
    assert daemon.shown[1].replaces_id == 0


def test_withdrawing_takes_the_notice_off_the_screen(bus, start_daemon, make_notifier, qtbot):
    daemon = start_daemon(first_id=9)
    notifier = make_notifier(bus.address)
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: notifier._id_by_key == {"reminder-7": 9})
    notifier.withdraw("reminder-7")
    notifier.withdraw("never shown")
    qtbot.waitUntil(lambda: daemon.closed == [9])


def test_a_notice_withdrawn_on_its_way_is_closed_when_its_number_comes(
    bus, start_daemon, make_notifier, qtbot
):
    daemon = start_daemon(first_id=3)
    notifier = make_notifier(bus.address)
    with qtbot.waitSignal(notifier.availability_changed):
        notifier.start()
    notifier.show(NOTICE)
    notifier.withdraw("reminder-7")
    qtbot.waitUntil(lambda: daemon.closed == [3])


def test_without_a_bus_nothing_is_raised_and_nothing_waits(make_notifier, monkeypatch):
    monkeypatch.delenv(session_bus.ADDRESS_VARIABLE, raising=False)
    for address in ("", "unix:path=/nowhere/bus", "tcp:host=localhost,port=1", "nonsense"):
        notifier = make_notifier(address)
        clock = QElapsedTimer()
        clock.start()
        notifier.start()
        notifier.show(NOTICE)
        notifier.withdraw("reminder-7")
        assert clock.elapsed() < 250
        assert not notifier.is_available()


def test_the_bus_is_looked_for_where_the_desktop_says(
    bus, start_daemon, make_notifier, qtbot, monkeypatch
):
    daemon = start_daemon()
    monkeypatch.setenv(session_bus.ADDRESS_VARIABLE, bus.address)
    make_notifier("").show(NOTICE)
    qtbot.waitUntil(lambda: len(daemon.shown) == 1)
    monkeypatch.delenv(session_bus.ADDRESS_VARIABLE)
    socket_path = bus.address.partition("unix:path=")[2].partition(",")[0]
    monkeypatch.setenv(session_bus.FOLDER_VARIABLE, str(Path(socket_path).parent))
    make_notifier("").show(NOTICE)
    qtbot.waitUntil(lambda: len(daemon.shown) == 2)


def test_a_bus_that_stands_still_is_given_up_and_holds_nothing(
    bus, start_daemon, make_notifier, qtbot
):
    daemon = start_daemon()
    notifier = make_notifier(bus.address)
    with qtbot.waitSignal(notifier.availability_changed):
        notifier.start()
    bus.freeze()
    clock = QElapsedTimer()
    longest_ms = 0
    with qtbot.waitSignal(notifier.availability_changed) as changed:
        for number in range(5_000):
            clock.start()
            notifier.show(Notice(f"reminder-{number}", "Taste Amber", "x" * BODY_LIMIT))
            longest_ms = max(longest_ms, clock.elapsed())
    assert changed.args == [False]
    assert longest_ms < 250
    bus.thaw()
    qtbot.waitUntil(lambda: len(daemon.shown) > 0)


def test_a_bus_that_was_slow_gets_all_that_was_sent(bus, start_daemon, make_notifier, qtbot):
    daemon = start_daemon()
    notifier = make_notifier(bus.address)
    with qtbot.waitSignal(notifier.availability_changed):
        notifier.start()
    notifier._bus._socket.setsockopt(socket.SOL_SOCKET, socket.SO_SNDBUF, 4096)
    bus.freeze()
    for number in range(100):  # a bus lets nobody wait for more than 128 answers
        notifier.show(Notice(f"reminder-{number}", "Taste Amber", "x" * BODY_LIMIT))
    assert notifier._bus._writing.isEnabled(), "the socket was to be full"
    bus.thaw()
    qtbot.waitUntil(lambda: len(daemon.shown) == 100)
    assert notifier.is_available()


def test_a_bus_that_comes_later_is_found_by_the_next_notice(tmp_path, make_notifier, qtbot):
    late_bus = PrivateBus(tmp_path)
    notifier = make_notifier(f"unix:path={tmp_path / 'bus'}")
    notifier.show(NOTICE)
    assert not notifier.is_available()
    late_bus.start()
    daemon = FakeDaemon(late_bus.address).start()
    try:
        notifier.show(Notice("reminder-8", "Look for mold", ""))
        qtbot.waitUntil(lambda: len(daemon.shown) == 2)
        assert [shown.title for shown in daemon.shown] == ["Taste Amber", "Look for mold"]
    finally:
        daemon.stop()
        late_bus.stop()


def test_without_a_service_the_notice_waits_until_one_appears(
    bus, start_daemon, make_notifier, qtbot
):
    notifier = make_notifier(bus.address)
    notifier.show(NOTICE)
    notifier.show(Notice("reminder-8", "Handled in the window meanwhile", ""))
    qtbot.waitUntil(lambda: notifier._is_connected and not notifier._silence.isActive())
    assert not notifier.is_available()
    notifier.withdraw("reminder-8")
    daemon = start_daemon()
    qtbot.waitUntil(notifier.is_available)
    qtbot.waitUntil(lambda: len(daemon.shown) == 1)
    assert daemon.shown[0].title == "Taste Amber"


def test_a_service_that_dies_and_returns_is_used_again_with_fresh_numbers(
    bus, start_daemon, make_notifier, qtbot
):
    first = start_daemon(first_id=77)
    notifier = make_notifier(bus.address)
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: notifier._id_by_key == {"reminder-7": 77})
    with qtbot.waitSignal(notifier.availability_changed) as changed:
        first.stop()
    assert changed.args == [False]
    with qtbot.waitSignal(notifier.availability_changed) as changed:
        second = start_daemon(first_id=1)
    assert changed.args == [True]
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: len(second.shown) == 1)
    assert second.shown[0].replaces_id == 0, "a number of the old service means nothing now"


def test_a_bus_that_dies_only_makes_notices_unavailable(bus, start_daemon, make_notifier, qtbot):
    start_daemon()
    notifier = make_notifier(bus.address)
    notifier.show(NOTICE)
    qtbot.waitUntil(notifier.is_available)
    with qtbot.waitSignal(notifier.availability_changed) as changed:
        bus.stop()
    assert changed.args == [False]
    notifier.show(NOTICE)
    assert not notifier.is_available()


def test_what_a_dying_bus_did_not_answer_is_shown_over_the_next_one(
    bus, start_daemon, make_notifier, qtbot
):
    start_daemon()
    notifier = make_notifier(bus.address)
    with qtbot.waitSignal(notifier.availability_changed):
        notifier.start()
    bus.freeze()
    notifier.show(NOTICE)
    with qtbot.waitSignal(notifier.availability_changed):
        bus.stop()
    bus.start()
    second = start_daemon()
    notifier.show(Notice("reminder-8", "Look for mold", ""))
    qtbot.waitUntil(lambda: len(second.shown) == 2)
    assert [shown.title for shown in second.shown] == ["Taste Amber", "Look for mold"]


def test_a_refused_notice_is_kept_for_the_next_try(bus, start_daemon, make_notifier, qtbot):
    daemon = start_daemon(refuses=True)
    notifier = make_notifier(bus.address)
    with qtbot.waitSignals([notifier.availability_changed] * 2):
        notifier.show(NOTICE)
    assert not notifier.is_available()
    daemon.refuses = False
    notifier.show(Notice("reminder-8", "Look for mold", ""))
    qtbot.waitUntil(lambda: len(daemon.shown) == 2)
    assert {shown.title for shown in daemon.shown} == {"Taste Amber", "Look for mold"}


def test_a_service_that_never_answers_does_not_hold_the_window(
    bus, start_daemon, make_notifier, qtbot
):
    start_daemon(is_mute=True)
    notifier = make_notifier(bus.address)
    notifier._silence.setInterval(300)
    beats: list[float] = []
    heart = QTimer(interval=10)
    heart.timeout.connect(lambda: beats.append(monotonic()))
    heart.start()
    notifier.show(NOTICE)
    qtbot.waitUntil(lambda: notifier._is_connected and not notifier._silence.isActive())
    heart.stop()
    assert not notifier.is_available()
    assert len(beats) > 5
    gaps = [later - earlier for earlier, later in pairwise(beats)]
    assert max(gaps) < 0.25, "the window stood still"


def test_a_bus_that_accepts_but_never_speaks_is_given_up(tmp_path, make_notifier, qtbot):
    path = tmp_path / "mute"
    with socket.socket(socket.AF_UNIX) as listener:
        listener.bind(str(path))
        listener.listen(1)
        notifier = make_notifier(f"unix:path={path}")
        notifier.start()
        notifier._bus._deadline.start(50)
        qtbot.waitUntil(lambda: notifier._bus is None)
    assert not notifier.is_available()


def test_a_stranger_on_the_socket_is_given_up(tmp_path, make_notifier, qtbot):
    path = tmp_path / "stranger"
    with socket.socket(socket.AF_UNIX) as listener:
        listener.bind(str(path))
        listener.listen(1)
        notifier = make_notifier(f"unix:path={path}")
        notifier.start()
        stranger, _ = listener.accept()
        with stranger:
            stranger.sendall(b"220 mail.example\r\n")
            qtbot.waitUntil(lambda: notifier._bus is None)
    assert not notifier.is_available()


def test_markup_in_a_jar_name_stays_words():
    hostile = Notice("k", "Taste <b>x</b>", "<img src=file:///etc/hostname> & <b>x</b>", BUTTONS)
    with_markup = notify_arguments(hostile, frozenset({"body", "body-markup"}), 0)
    plain = notify_arguments(hostile, frozenset({"body"}), 0)
    assert with_markup[4] == "&lt;img src=file:///etc/hostname&gt; &amp; &lt;b&gt;x&lt;/b&gt;"
    assert plain[4] == hostile.body
    assert with_markup[3] == "Taste <b>x</b>", "the specification gives titles no markup"


def test_no_buttons_are_sent_where_the_service_has_none():
    arguments = notify_arguments(NOTICE, frozenset({"body"}), 12)
    assert arguments[5] == []
    assert arguments[1] == 12


def test_urgency_is_normal_unless_said():
    loud = Notice("k", "t", "b", urgency=Urgency.CRITICAL)
    assert notify_arguments(NOTICE, frozenset(), 0)[6]["urgency"] == ("y", 1)
    assert notify_arguments(loud, frozenset(), 0)[6]["urgency"] == ("y", 2)


def test_long_text_is_cut_between_what_is_read_as_one_letter():
    family = "\U0001f469\u200d\U0001f469\u200d\U0001f467"
    cut = shortened("a" * (BODY_LIMIT - 4) + family * 50, BODY_LIMIT)
    assert cut == "a" * (BODY_LIMIT - 4) + "…"
    assert shortened("short", BODY_LIMIT) == "short"


def test_what_no_bus_can_carry_is_left_out():
    assert shortened("one\x00two\ud800\nthree\x1b", 100) == "onetwo\nthree"


def test_the_silent_notifier_shows_nothing_and_says_so(qapp):
    notifier = SilentNotifier()
    notifier.start()
    notifier.show(NOTICE)
    notifier.withdraw(NOTICE.key)
    notifier.close()
    assert not notifier.is_available()


def test_a_missing_dbus_daemon_is_a_failure_that_names_the_package(tmp_path, monkeypatch):
    monkeypatch.setattr(shutil, "which", lambda program: None)
    with pytest.raises(pytest.fail.Exception, match="install the package dbus"):
        PrivateBus(tmp_path).start()
