"""A pantry that cannot be opened: what is said, and that a backup comes back whole."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from brewdesk import recovery
from brewdesk.store.backup import make_backup
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import PlaceDraft
from brewdesk.store.store import Store
from brewdesk.widgets.recoverydialog import RecoveryDialog
from tests.helpers.dump import dump
from tests.helpers.fakes import FakeClock
from tests.helpers.worn_theme import look_kept


@pytest.fixture(autouse=True)
def _look(qapp):
    with look_kept(qapp):
        yield


@pytest.fixture
def clock():
    return FakeClock()


@pytest.fixture
def backed_up(tmp_path, clock):
    """A pantry with one place and a backup; gives the path and its dump."""
    path = tmp_path / "pantry.brewdesk"
    store = Store.open(path, now=clock.now())
    with store.write() as unit:
        unit.places.add(PlaceDraft(name="Cellar", temperature_c=18.0))
    store.close()
    make_backup(path, "daily", now=clock.now())
    return path, dump(path)


def answer_with(name: str, seen: list[str]) -> QTimer:
    """Press the button called ``name`` as soon as the dialog is there."""
    timer = QTimer()
    timer.setInterval(5)

    def look() -> None:
        for widget in QApplication.topLevelWidgets():
            if isinstance(widget, RecoveryDialog) and widget.isVisible():
                timer.stop()
                widget.grab()
                seen.append(widget.words.text())
                button = widget.findChild(QPushButton, name) if name else widget.leave
                QTest.mouseClick(button, Qt.MouseButton.LeftButton)

    timer.timeout.connect(look)
    timer.start()
    return timer


def test_a_damaged_pantry_is_restored_from_its_backup(qapp, backed_up, clock):
    path, content = backed_up
    path.write_bytes(path.read_bytes()[:5000])
    with pytest.raises(StoreTrouble) as told:
        Store.open(path, now=clock.now())
    seen: list[str] = []
    timer = answer_with("recovery_restore", seen)
    assert recovery.ask(qapp, path, told.value, clock)
    timer.stop()
    assert "damaged" in seen[0]
    assert dump(path) == content
    Store.open(path, now=clock.now()).close()


def test_a_missing_pantry_that_was_backed_up_is_not_begun_anew_unasked(qapp, backed_up, clock):
    path, content = backed_up
    path.unlink()
    trouble = recovery.missing_with_backups(path)
    assert trouble is not None
    seen: list[str] = []
    timer = answer_with("", seen)
    assert not recovery.ask(qapp, path, trouble, clock)
    timer.stop()
    assert not path.exists()
    timer = answer_with("recovery_restore", seen)
    assert recovery.ask(qapp, path, trouble, clock)
    timer.stop()
    assert dump(path) == content


def test_the_maker_may_begin_a_new_pantry_where_the_old_one_is_gone(qapp, backed_up, clock):
    path, _ = backed_up
    path.unlink()
    timer = answer_with("recovery_new", [])
    assert recovery.ask(qapp, path, recovery.missing_with_backups(path), clock)
    timer.stop()
    assert not path.exists()


def test_a_first_start_is_no_trouble(tmp_path):
    assert recovery.missing_with_backups(tmp_path / "pantry.brewdesk") is None


def test_a_newer_pantry_offers_no_backup_in_its_place(qapp, backed_up, clock):
    path, content = backed_up
    seen: list[str] = []
    timer = answer_with("", seen)
    assert not recovery.ask(qapp, path, StoreTrouble("newer_file", ""), clock)
    timer.stop()
    assert "newer version" in seen[0]
    assert dump(path) == content
