"""A mistake of the program is written down and told; nothing is swallowed."""

from __future__ import annotations

import sys
import threading

import pytest

from brewdesk import faults


@pytest.fixture
def watched(tmp_path, monkeypatch):
    # The test runner's own hooks would count what these tests raise on purpose.
    monkeypatch.setattr(sys, "excepthook", lambda *_error: None)
    monkeypatch.setattr(threading, "excepthook", lambda _args: None)
    told: list[str] = []
    path = faults.start_log(tmp_path)
    restore = faults.install(told.append)
    yield told, path
    restore()
    faults.stop_log()


def test_an_uncaught_fault_is_logged_with_its_trace_and_told(watched, error_log):
    told, path = watched
    error_log.expect("uncaught")
    try:
        raise ValueError("the jar is not round")
    except ValueError:
        sys.excepthook(*sys.exc_info())
    assert told == ["ValueError: the jar is not round"]
    text = path.read_text(encoding="utf-8")
    assert "Traceback" in text
    assert "the jar is not round" in text


def test_a_fault_in_a_thread_is_logged(watched, error_log):
    _, path = watched
    error_log.expect("uncaught in a thread")

    def work() -> None:
        raise RuntimeError("spilt")

    thread = threading.Thread(target=work)
    thread.start()
    thread.join()
    assert "spilt" in path.read_text(encoding="utf-8")


def test_stopping_by_hand_is_no_fault(watched):
    told, path = watched
    try:
        raise KeyboardInterrupt
    except KeyboardInterrupt:
        sys.excepthook(*sys.exc_info())
    assert told == []
    assert not path.exists()


def test_the_hooks_are_put_back(tmp_path):
    before = sys.excepthook, threading.excepthook
    restore = faults.install(lambda _line: None)
    assert sys.excepthook is not before[0]
    restore()
    assert (sys.excepthook, threading.excepthook) == before
