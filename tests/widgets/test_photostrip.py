"""Photos on a real desk: dropped, pasted, walked by keyboard, worded, taken out, given away."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import (
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QGuiApplication,
    QImage,
)
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog

from brewdesk.models.photos import DAY_ROLE, PIXMAP_ROLE, PhotosModel
from brewdesk.services.desk import build_desk
from brewdesk.services.jobs import Jobs
from brewdesk.services.photofiles import FileState, Source
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import Look
from brewdesk.services.wording.photos import location_words
from brewdesk.store.store import Store
from brewdesk.widgets.pastdialog import PastDialog
from brewdesk.widgets.photocopy import LocationDialog
from brewdesk.widgets.photolist import PhotoListView
from brewdesk.widgets.photostrip import PhotoStrip
from brewdesk.widgets.readingsview import ReadingsView
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs
from tests.helpers.pantry_desk import souring_batch
from tests.helpers.pictures import offered, painted, picture, tiff_block, with_exif


@pytest.fixture
def jobs():
    return InlineJobs()


@pytest.fixture
def desk(tmp_path, qapp, jobs):
    clock = FakeClock()
    store = Store.open(tmp_path / "pantry.sqlite", now=clock.now())
    made = build_desk(store, clock, jobs=jobs, notifier=FakeNotifier())
    # Curves are not asked for here, and would be worked out at once.
    yield made
    made.store.close()


@pytest.fixture
def batch(desk):
    return souring_batch(desk)


@pytest.fixture
def owner(batch):
    return PhotoOwner(batch_id=batch.id)


@pytest.fixture
def strip(desk, owner, qtbot):
    made = PhotoStrip(desk, owner)
    qtbot.addWidget(made)
    made.resize(560, 520)
    with qtbot.waitExposed(made):
        made.show()
    return made


def fill(strip, count=3):
    strip.bring(tuple(offered(picture(seed=n)) for n in range(count)))
    return strip.model.photos()


def mime_of(*paths) -> QMimeData:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    return mime


def drop(widget, mime) -> bool:
    """Drag ``mime`` over a widget and let go, with the events Qt itself sends."""
    at, actions = QPoint(60, 60), Qt.DropAction.CopyAction | Qt.DropAction.MoveAction
    buttons, keys = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(at, actions, mime, buttons, keys)
    QApplication.sendEvent(widget, enter)
    if not enter.isAccepted():
        return False
    move = QDragMoveEvent(at, actions, mime, buttons, keys)
    QApplication.sendEvent(widget, move)
    event = QDropEvent(QPointF(at), actions, mime, buttons, keys)
    QApplication.sendEvent(widget, event)
    return event.isAccepted() and event.dropAction() == Qt.DropAction.CopyAction


# taking in


def test_files_are_dropped_on_the_empty_ground_and_copied(strip, tmp_path):
    paths = []
    for number in range(2):
        paths.append(tmp_path / f"film {number}.jpg")
        paths[-1].write_bytes(picture("jpg", seed=number))
    assert strip.ground.isVisible()
    assert drop(strip, mime_of(*paths))
    assert len(strip.model.photos()) == 2
    assert all(path.is_file() for path in paths)
    assert strip.view.isVisible()
    assert strip.message.text() == "2 photos added."


def test_a_file_is_dropped_on_the_list(strip, tmp_path):
    fill(strip, 1)
    path = tmp_path / "film.png"
    path.write_bytes(picture(seed=50))
    assert drop(strip, mime_of(path))
    assert len(strip.model.photos()) == 2


def test_an_image_without_a_file_is_dropped(strip):
    mime = QMimeData()
    mime.setImageData(painted(30, 20))
    assert drop(strip, mime)
    (photo,) = strip.model.photos()
    assert (photo.media_type, photo.width_px, photo.height_px) == ("image/png", 30, 20)


@pytest.mark.parametrize("kind", ["words", "elsewhere"])
def test_what_holds_no_picture_is_refused_while_it_hovers(strip, kind):
    mime = QMimeData()
    if kind == "words":
        mime.setText("a picture")
    else:
        mime.setUrls([QUrl("https://example.invalid/film.jpg")])
    assert not drop(strip, mime)
    assert strip.model.photos() == ()


def test_a_file_that_is_no_picture_is_refused_by_name(strip, tmp_path):
    path = tmp_path / "a\nletter\u202egpj.jpg"
    path.write_bytes(b"Dear reader")
    assert drop(strip, mime_of(path))
    assert strip.model.photos() == ()
    assert "a letter gpj.jpg" in strip.message.text()
    assert strip.message.property("role") == "error"


def test_hovering_invites_and_leaving_forgets_it(strip, tmp_path):
    path = tmp_path / "film.png"
    path.write_bytes(picture())
    mime = mime_of(path)  # no event keeps it alive
    enter = QDragEnterEvent(
        QPoint(9, 9),
        Qt.DropAction.CopyAction,
        mime,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    QApplication.sendEvent(strip, enter)
    assert strip.message.text() == "Let go to add it."
    QApplication.sendEvent(strip, QDragLeaveEvent())
    assert not strip.message.isVisible()


def test_a_picture_is_pasted_by_keyboard(strip):
    QGuiApplication.clipboard().setImage(painted(30, 20))
    strip.ground.paste_button.setFocus()
    QTest.keyClick(strip.ground.paste_button, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert len(strip.model.photos()) == 1
    QGuiApplication.clipboard().setText("words")
    strip.paste()
    assert strip.message.text() == "There is no picture on the clipboard."


def test_files_are_picked_in_a_dialog(strip, tmp_path):
    path = tmp_path / "film.png"
    path.write_bytes(picture())
    strip.ground.pick_button.click()
    dialog = strip.findChild(QFileDialog, "photo_pick")
    assert dialog.fileMode() == QFileDialog.FileMode.ExistingFiles
    dialog.filesSelected.emit([str(path)])
    dialog.reject()
    assert len(strip.model.photos()) == 1


def test_taking_in_can_be_undone(strip, desk):
    fill(strip)
    desk.history.undo()
    assert strip.ground.isVisible()
    assert strip.model.photos() == ()


# nothing waits


def test_the_window_never_waits_for_a_picture(desk, jobs, owner, qtbot):
    jobs.hold = True
    strip = PhotoStrip(desk, owner)
    qtbot.addWidget(strip)
    strip.resize(560, 520)
    strip.bring((offered(picture(seed=1)), offered(picture(seed=2))))
    assert strip.message.text() == "Adding…"
    assert strip.model.photos() == ()
    jobs.release()
    assert len(strip.model.photos()) == 2
    with qtbot.waitExposed(strip):
        strip.show()
    strip.grab()
    index = strip.model.index(0)
    assert index.data(PIXMAP_ROLE) is None
    jobs.release()
    assert index.data(PIXMAP_ROLE).width() > 0


def test_small_pictures_are_fetched_once_and_memory_has_a_bound(desk, jobs, strip):
    photos = fill(strip, 6)
    model = PhotosModel(jobs, desk.photos.folder, desk.clock, most_bytes=40_000)
    model.set_side(64)
    model.set_photos(photos, "Amber")
    jobs.keys.clear()
    for row in range(6):
        model.index(row).data(PIXMAP_ROLE)
        model.index(row).data(PIXMAP_ROLE)
        assert model.held_bytes() <= 40_000
    assert len(jobs.keys) == 6
    assert model.index(5).data(PIXMAP_ROLE) is not None
    assert len(jobs.keys) == 6


# the list


def test_days_are_named_over_their_first_photo(strip, desk):
    photos = fill(strip, 3)
    desk.photos.edit(photos[2].id, taken_at=photos[2].taken_at.replace(day=20))
    days = [strip.model.index(row).data(DAY_ROLE) for row in range(3)]
    assert days[0] != ""
    assert days[1] == ""
    assert days[2] not in ("", days[0])


def test_arrows_walk_and_the_last_photo_added_is_chosen(strip):
    photos = fill(strip)
    assert strip.chosen() == strip.model.photos()[strip.view.currentIndex().row()]
    strip.view.choose(0)
    strip.view.setFocus()
    QTest.keyClick(strip.view, Qt.Key.Key_Right)
    assert strip.chosen().id == photos[1].id
    QTest.keyClick(strip.view, Qt.Key.Key_Left)
    assert strip.chosen().id == photos[0].id


def test_f2_words_the_chosen_photo(strip, desk):
    fill(strip)
    strip.view.choose(1)
    QTest.keyClick(strip.view, Qt.Key.Key_F2)
    dialog = strip.dialog
    QTest.keyClicks(dialog.line, "Second film")
    dialog.save_button.click()
    assert strip.dialog is None
    assert strip.chosen().caption == "Second film"
    assert strip.model.data(strip.view.currentIndex()) == "Second film"
    assert strip.model.photos()[1].taken_at == strip.model.photos()[0].taken_at


def test_a_time_to_come_is_refused_in_the_dialog(strip, desk):
    fill(strip, 1)
    strip.word_chosen()
    dialog = strip.dialog
    dialog.when.set_instant(desk.clock.now().replace(year=2027))
    dialog.save()
    assert dialog.isVisible()
    assert dialog.when_row.message.is_error
    dialog.reject()


def test_delete_takes_out_and_undo_brings_back(strip, desk):
    photos = fill(strip)
    strip.view.choose(1)
    QTest.keyClick(strip.view, Qt.Key.Key_Delete)
    assert [photo.id for photo in strip.model.photos()] == [photos[0].id, photos[2].id]
    assert strip.chosen().id == photos[2].id
    desk.history.undo()
    assert len(strip.model.photos()) == 3


def test_enter_opens_and_the_list_follows_where_the_viewer_went(strip):
    photos = fill(strip)
    strip.view.choose(0)
    QTest.keyClick(strip.view, Qt.Key.Key_Return)
    viewer = strip.dialog
    QTest.keyClick(viewer, Qt.Key.Key_Right)
    viewer.accept()
    assert strip.chosen().id == photos[1].id


def test_another_owner_shows_other_photos(strip, desk):
    fill(strip)
    other = souring_batch(desk, "Other", "Other jar")
    strip.set_owner(PhotoOwner(batch_id=other.id))
    assert strip.model.photos() == ()
    assert "Other" in strip.ground.heading.text()
    assert not strip.message.isVisible()
    strip.set_owner(None)
    assert not strip.isEnabled()


def test_a_culture_has_its_own(strip, desk, batch, qtbot):
    culture = PhotoStrip(desk, PhotoOwner(culture_id=batch.culture_id))
    qtbot.addWidget(culture)
    culture.bring((offered(picture()),))
    assert len(culture.model.photos()) == 1
    assert strip.model.photos() == ()


# files that are no longer what they were


def test_a_missing_file_says_so_and_the_picture_itself_mends_it(strip, desk):
    (photo,) = fill(strip, 1)
    desk.photos.folder.path_of(photo).unlink()
    strip.model.forget()
    strip.grab()
    assert strip.model.state(photo) is FileState.MISSING
    assert "no longer in its place" in strip.message.text()
    assert "File missing" in strip.model.data(
        strip.model.index(0), Qt.ItemDataRole.AccessibleTextRole
    )
    strip.bring((offered(picture(seed=0)),))
    strip.grab()
    assert strip.model.state(photo) is FileState.FINE
    assert strip.message.text() == "One was here already."


def test_a_changed_file_says_so(strip, desk):
    (photo,) = fill(strip, 1)
    desk.photos.folder.path_of(photo).write_bytes(picture(seed=9))
    strip.model.forget()
    strip.grab()
    assert strip.model.state(photo) is FileState.DAMAGED
    assert "changed or damaged" in strip.message.text()


# giving away


@pytest.fixture
def placed(strip):
    data = with_exif(picture("jpg"), tiff_block("2026:11:20 18:00:00", has_position=True))
    strip.bring((offered(data),))
    strip.grab()
    return data


def test_a_photo_that_knows_its_place_says_so_while_it_is_chosen(strip, placed):
    assert strip.location.isVisible()
    assert strip.location.text() == location_words()
    strip.bring((offered(picture(seed=7)),))
    strip.grab()
    strip.view.choose(0)
    assert not strip.location.isVisible()


def test_a_drag_hands_out_a_copy_under_a_name_that_says_what_it_is(strip, desk, placed):
    mime = strip.view.drag_data()
    (url,) = mime.urls()
    path = url.toLocalFile()
    assert path.endswith("Black tea 1 2026-11-20 1800.jpg")
    with open(path, "rb") as file:
        assert file.read() == placed
    kept = desk.photos.folder.path_of(strip.chosen())
    assert str(kept) != path
    with open(path, "wb") as file:
        file.write(b"changed by another program")
    assert desk.photos.folder.read(strip.chosen()) == placed


def test_the_list_may_be_dragged_from(strip):
    fill(strip, 1)
    assert strip.view.dragEnabled()
    assert strip.model.flags(strip.model.index(0)) & Qt.ItemFlag.ItemIsDragEnabled
    assert isinstance(strip.view, PhotoListView)


def test_before_a_copy_as_it_is_the_place_is_pointed_out(strip, placed):
    strip.copies.offer_original(strip.chosen())
    dialog = strip.findChild(LocationDialog)
    assert dialog.isVisible()
    dialog.reject()
    assert strip.findChild(QFileDialog, "photo_save_as") is None


def test_a_photo_without_a_place_is_saved_without_a_question(strip):
    fill(strip, 1)
    strip.copies.offer_original(strip.chosen())
    assert strip.findChild(LocationDialog) is None
    dialog = strip.findChild(QFileDialog, "photo_save_as")
    assert dialog is not None
    dialog.reject()


def test_a_copy_without_camera_data_is_saved(strip, placed, tmp_path):
    target = tmp_path / "copy.jpg"
    strip.copies.save(strip.chosen(), target, is_clean=True)
    data = target.read_bytes()
    assert b"Exif" not in data
    assert not QImage.fromData(data).isNull()
    assert str(target) in strip.message.text()
    strip.copies.save(strip.chosen(), tmp_path / "as it is.jpg", is_clean=False)
    assert (tmp_path / "as it is.jpg").read_bytes() == placed


def test_a_copy_that_cannot_be_written_is_told(strip, placed, tmp_path):
    strip.copies.save(strip.chosen(), tmp_path / "nowhere" / "copy.jpg", is_clean=False)
    assert "choose another folder" in strip.message.text()


def test_copying_takes_what_can_be_seen(strip):
    fill(strip, 1)
    strip.view.setFocus()
    QTest.keyClick(strip.view, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().image().size() == painted().size()


def test_the_menu_offers_everything_the_keys_do(strip):
    fill(strip, 1)
    strip.fill_menu()
    names = [action.text() for action in strip.menu.actions() if action.text()]
    assert names == [
        "Open",
        "Caption and date…",
        "Copy",
        "Save a copy without camera data…",
        "Save a copy as it is…",
        "Take out",
        "Paste a picture",
    ]


def test_a_source_without_a_file_here_is_refused_by_name(strip):
    strip.bring((Source("film.jpg"),))
    assert "film.jpg" in strip.message.text()
    assert "not on this computer" in strip.message.text()


# where else they are


def test_the_photos_of_a_reading_open_from_its_row(desk, batch, strip, qtbot):
    desk.readings.record_look(batch.id, Look.FINE)
    view = ReadingsView(desk)
    qtbot.addWidget(view)
    view.set_batch(batch.id)
    view.show()
    assert not view.photos_button.isEnabled()
    view.table.selectRow(0)
    view.photos_button.click()
    view.dialog.strip.bring((offered(picture(seed=4)),))
    view.dialog.reject()
    (photo,) = strip.model.photos()
    assert photo.reading_id == desk.readings.of_batch(batch.id)[0].id
    view.remove_chosen()
    assert strip.model.photos()[0].reading_id is None


def test_a_batch_that_is_over_still_shows_its_photos(desk, batch, strip, qtbot):
    fill(strip, 2)
    desk.batches.draw_off(batch.id)
    past = PastDialog(desk)
    qtbot.addWidget(past)
    assert len(past.photos.model.photos()) == 2


def test_with_real_threads_the_pictures_come_by_themselves(tmp_path, qapp, qtbot):
    clock, jobs = FakeClock(), Jobs()
    store = Store.open(tmp_path / "pantry.sqlite", now=clock.now())
    desk = build_desk(store, clock, jobs=jobs, notifier=FakeNotifier())
    strip = PhotoStrip(desk, PhotoOwner(batch_id=souring_batch(desk).id))
    qtbot.addWidget(strip)
    strip.resize(560, 520)
    with qtbot.waitExposed(strip):
        strip.show()
    with qtbot.waitSignal(strip.brought) as heard:
        strip.bring(tuple(offered(picture("jpg", 1500, 1000, seed=n)) for n in range(3)))
    assert len(heard.args[0].photos) == 3
    qtbot.waitUntil(
        lambda: all(strip.model.index(row).data(PIXMAP_ROLE) is not None for row in range(3))
    )
    jobs.shutdown()
    store.close()
