"""Backups as the maker meets them: looked at, compared, copied with photos, told when they fail."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt

from brewdesk.services.backupshelf import look_at_all, newest_sound, would_be_lost
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.photofiles import PhotoFolder
from brewdesk.services.wholecopy import copy_everything
from brewdesk.services.wording.backups import (
    backup_failed_words,
    inside_words,
    lost_words,
    reason_words,
)
from brewdesk.store.backup import REASONS, backup_folder
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.store import Store
from brewdesk.widgets.backupsdialog import BackupsDialog
from brewdesk.widgets.copydialog import CopyDialog
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.readingsfiledialog import ReadingsFileDialog
from brewdesk.widgets.theme import Theme
from tests.faults.forked import readings_of
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.whole_pantry import everything, full_pantry, photo_files
from tests.store.drafts import NOW


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def show(qtbot):
    def shown(dialog):
        qtbot.addWidget(dialog)
        dialog.open()
        dialog.grab()
        return dialog

    return shown


@pytest.fixture
def closed_later():
    """Open pantries that are closed at the end."""
    opened = []

    def open_one(path):
        opened.append(Store.open(path, now=NOW))
        return opened[-1]

    yield open_one
    for store in opened:
        store.close()


def press(qtbot, button):
    assert button.isVisible()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def spoil(info):
    content = bytearray(info.path.read_bytes())
    content[-1] ^= 1
    info.path.write_bytes(content)


def test_each_backup_says_what_it_holds_and_what_going_back_would_lose(desk, show):
    batch = souring_batch(desk)
    desk.back_up()
    desk.clock.advance(hours=5)
    desk.readings.record(readings_of(desk, batch.id, 2))
    desk.clock.advance(hours=5)
    desk.back_up()

    dialog = show(BackupsDialog(desk))

    assert dialog.list.count() == 2
    assert "2 readings" in dialog.inside.text()
    assert "nothing" in dialog.lost.text()
    dialog.list.setCurrentRow(1)
    assert "0 readings" in dialog.inside.text()
    assert "There is no reading in it" in dialog.inside.text()
    assert "lose the one thing done since" in dialog.lost.text()
    assert "pH 3.4" in dialog.lost.text()
    assert dialog.restore.isEnabled()
    dialog.reject()


def test_what_was_undone_since_is_not_counted_as_lost(desk):
    batch = souring_batch(desk)
    desk.back_up()
    desk.readings.record(readings_of(desk, batch.id, 2))
    desk.history.undo()

    lost = would_be_lost(desk.store, look_at_all(desk.store_path)[0])

    assert lost.count == 0
    assert "nothing" in lost_words(lost)


def test_a_damaged_newest_backup_is_marked_and_the_older_sound_one_chosen(desk, show):
    souring_batch(desk)
    for _ in range(2):
        desk.back_up()
        desk.clock.advance(hours=1)
    newest = desk.store.backups()[0]
    spoil(newest)

    dialog = show(BackupsDialog(desk))

    assert dialog.list.item(0).text().endswith("DAMAGED")
    assert dialog.list.currentRow() == 1
    assert dialog.restore.isEnabled()
    dialog.list.setCurrentRow(0)
    assert not dialog.restore.isEnabled()
    assert "cannot be used" in dialog.inside.text()
    assert newest.path.exists()
    dialog.reject()


def test_where_all_backups_are_damaged_none_can_be_gone_back_to(desk, show):
    souring_batch(desk)
    desk.back_up()
    spoil(desk.store.backups()[0])

    dialog = show(BackupsDialog(desk))

    assert not dialog.restore.isEnabled()
    assert "None of the backups is sound" in dialog.message.text()
    dialog.reject()


def test_going_back_is_asked_about_and_what_is_here_is_backed_up_first(desk, show, qtbot):
    souring_batch(desk)
    desk.back_up()
    dialog = show(BackupsDialog(desk))
    wanted = []
    dialog.restore_wanted.connect(wanted.append)

    press(qtbot, dialog.restore)
    press(qtbot, dialog.stay)
    assert wanted == []
    assert not dialog.question.isVisible()
    press(qtbot, dialog.restore)
    desk.clock.advance(minutes=1)
    press(qtbot, dialog.really)

    assert wanted == [desk.store.backups()[1]]
    assert desk.store.backups()[0].reason == "before-restore"


def test_a_backup_that_cannot_be_made_keeps_everything_as_it_is(desk, show, qtbot, monkeypatch):
    souring_batch(desk)
    desk.back_up()
    dialog = show(BackupsDialog(desk))
    wanted = []
    dialog.restore_wanted.connect(wanted.append)

    def refuse(reason, *, now):
        raise StoreTrouble("disk_full")

    monkeypatch.setattr(desk.store, "backup", refuse)
    press(qtbot, dialog.restore)
    press(qtbot, dialog.really)

    assert wanted == []
    assert "disk is full" in dialog.message.text()
    assert dialog.isVisible()
    dialog.reject()


def test_backups_of_another_pantry_are_not_compared(desk, tmp_path):
    souring_batch(desk)
    desk.back_up()
    (tmp_path / "other").mkdir()
    other = Store.open(tmp_path / "other" / "pantry.sqlite", now=NOW)

    lost = would_be_lost(other, look_at_all(desk.store_path)[0])
    other.close()

    assert not lost.is_same_pantry
    assert "another pantry" in lost_words(lost)


def test_every_reason_has_its_words():
    assert len({reason_words(reason) for reason in REASONS}) == len(REASONS)


def test_a_days_backup_that_fails_is_told_with_the_age_of_the_last_one(desk, qapp, qtbot):
    souring_batch(desk)
    desk.back_up()
    window = MainWindow(desk, Theme(qapp))
    qtbot.addWidget(window)
    window.show()
    desk.clock.advance(days=3)

    window.tell_backup_failed(StoreTrouble("disk_full"))

    assert "3 days ago" in window.notice.words.text()
    assert "disk is full" in window.notice.words.text()
    assert "no older one" in backup_failed_words("", None, NOW, FakeClock().zone())
    window.hide()


def test_a_copy_holds_every_row_and_every_photo_and_opens(tmp_path, closed_later):
    path = full_pantry(tmp_path / "pantry.brewdesk")
    opened = closed_later(path)
    (tmp_path / "stick").mkdir()

    copied = copy_everything(opened, tmp_path / "stick", now=NOW)

    copy = copied.folder / "pantry.brewdesk"
    assert everything(copy) == everything(path)
    assert photo_files(copy) == photo_files(path)
    assert copied.photos == len(photo_files(path)) == 1
    assert copied.missing == 0
    assert copy.stat().st_mode & 0o077 == 0
    Store.open(copy, now=NOW).close()
    assert [entry.name for entry in (tmp_path / "stick").iterdir()] == [copied.folder.name]
    again = copy_everything(opened, tmp_path / "stick", now=NOW)
    assert again.folder != copied.folder


def test_a_photo_that_changed_on_the_disk_is_told_and_not_copied_as_if_it_were_whole(
    tmp_path, closed_later
):
    path = full_pantry(tmp_path / "pantry.brewdesk")
    opened = closed_later(path)
    (file,) = PhotoFolder(path).root.glob("??/*")
    file.write_bytes(b"something else")
    (tmp_path / "stick").mkdir()

    copied = copy_everything(opened, tmp_path / "stick", now=NOW)

    assert (copied.photos, copied.missing) == (0, 1)
    assert photo_files(copied.folder / "pantry.brewdesk") == {}


def test_a_copy_that_is_stopped_or_has_no_folder_leaves_nothing(tmp_path, closed_later):
    path = full_pantry(tmp_path / "pantry.brewdesk")
    opened = closed_later(path)
    stick = tmp_path / "stick"
    with pytest.raises(ExportTrouble) as caught:
        copy_everything(opened, stick, now=NOW)
    assert caught.value.code == "no_folder"
    stick.mkdir()
    with pytest.raises(ExportTrouble) as caught:
        copy_everything(opened, stick, now=NOW, is_cancelled=lambda: True)
    assert caught.value.code == "cancelled"
    assert list(stick.iterdir()) == []


def test_the_copy_is_made_from_the_window_and_can_be_opened(desk, show, qtbot, tmp_path):
    souring_batch(desk)
    (tmp_path / "stick").mkdir()
    dialog = show(CopyDialog(desk))
    dialog.copy_to(tmp_path / "stick")

    assert "read back and found equal" in dialog.message.text()
    with qtbot.waitSignal(dialog.open_wanted) as told:
        press(qtbot, dialog.go)
    assert everything(told.args[0]) == everything(desk.store_path)


def test_days_weeks_and_months_of_backups_stay_and_each_is_sound(tmp_path, qapp):
    desk = open_desk(tmp_path)
    batch = souring_batch(desk)
    for _ in range(120):
        desk.clock.advance(days=1, minutes=1)
        desk.readings.record(readings_of(desk, batch.id, 1))
        assert desk.back_up_if_changed() is not None

    views = look_at_all(desk.store_path)
    desk.store.close()

    ages = [(desk.clock.now() - view.info.made_at) / timedelta(days=1) for view in views]
    assert all(view.is_sound for view in views)
    assert sum(age < 14 for age in ages) == 14
    assert max(ages) > 80
    assert len(views) < 30
    assert len(list(backup_folder(desk.store_path).iterdir())) == 2 * len(views)
    assert newest_sound(views) == 0
    assert "Checked: sound" in inside_words(views[-1], desk.clock.now(), desk.clock.zone())


def fill_in_readings(desk, batch, path, show, qtbot):
    desk.clock.advance(days=1)
    path.write_text(f"When;pH\n{desk.clock.now():%Y-%m-%d %H:%M};3,9\n", encoding="utf-8")
    dialog = show(ReadingsFileDialog(desk, batch))
    dialog.open_file(path)
    press(qtbot, dialog.go)
    press(qtbot, dialog.keep)
    return dialog


def test_before_readings_of_a_file_are_kept_a_backup_is_made(desk, show, qtbot, tmp_path):
    batch = souring_batch(desk)
    fill_in_readings(desk, batch, tmp_path / "diary.csv", show, qtbot)

    assert len(desk.readings.of_batch(batch.id)) == 1
    (info,) = desk.store.backups()
    assert info.reason == "before-import"
    assert info.row_counts["reading"] == 0


def test_where_no_backup_can_be_made_nothing_of_a_file_is_kept(
    desk, show, qtbot, tmp_path, monkeypatch
):
    batch = souring_batch(desk)

    def refuse(reason, *, now):
        raise StoreTrouble("disk_full")

    monkeypatch.setattr(desk.store, "backup", refuse)
    dialog = fill_in_readings(desk, batch, tmp_path / "diary.csv", show, qtbot)

    assert desk.readings.of_batch(batch.id) == ()
    assert "disk is full" in dialog.message.text()
    dialog.reject()
