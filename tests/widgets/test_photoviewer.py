"""Photos in large: fitted, zoomed at the pointer, moved, walked, two side by side."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QPixmap, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from brewdesk.models.pictures import look_into
from brewdesk.services.photos import PhotoOwner, Photos
from brewdesk.widgets.photocanvas import MOST_ZOOM, STEP, PhotoCanvas
from brewdesk.widgets.photoviewer import PhotoViewer
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.pictures import offered, painted, picture


@pytest.fixture
def canvas(qtbot):
    made = PhotoCanvas()
    qtbot.addWidget(made)
    made.resize(400, 300)
    with qtbot.waitExposed(made):
        made.show()
    made.set_pixmap(QPixmap.fromImage(painted(1600, 900)))
    return made


def wheel(canvas, at, notches):
    event = QWheelEvent(
        QPointF(at),
        QPointF(canvas.mapToGlobal(at)),
        QPoint(),
        QPoint(0, round(120 * notches)),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(canvas, event)


def test_a_picture_is_fitted_and_stays_so(canvas):
    assert canvas.zoom() == pytest.approx(0.25)
    canvas.resize(800, 600)
    assert canvas.zoom() == pytest.approx(0.5)
    assert canvas.is_fitted()
    assert not canvas.can_pan()


def test_a_small_picture_is_not_blown_up(canvas):
    canvas.set_pixmap(QPixmap.fromImage(painted(50, 40)))
    assert canvas.zoom() == 1.0


def test_zooming_keeps_what_is_under_the_pointer(canvas):
    canvas.zoom_to(1.0)
    at = QPoint(300, 200)
    before = canvas.middle() + (QPointF(at) - QPointF(200, 150)) / canvas.zoom()
    wheel(canvas, at, 1)
    after = canvas.middle() + (QPointF(at) - QPointF(200, 150)) / canvas.zoom()
    assert canvas.zoom() == pytest.approx(STEP)
    assert after.x() == pytest.approx(before.x(), abs=0.5)
    assert after.y() == pytest.approx(before.y(), abs=0.5)


def test_zoom_has_ends_and_the_lower_one_is_the_fit(canvas):
    for _ in range(60):
        canvas.zoom_in()
    assert canvas.zoom() == MOST_ZOOM
    for _ in range(60):
        canvas.zoom_out()
    assert canvas.is_fitted()
    assert canvas.zoom() == pytest.approx(0.25)


def test_a_picture_cannot_be_moved_out_of_sight(canvas):
    canvas.zoom_to(1.0)
    canvas.pan(QPointF(100_000, 100_000))
    assert (canvas.middle().x(), canvas.middle().y()) == (200.0, 150.0)
    canvas.pan(QPointF(-100_000, -100_000))
    assert (canvas.middle().x(), canvas.middle().y()) == (1400.0, 750.0)


def test_dragging_moves_the_picture_along(canvas):
    canvas.zoom_to(1.0)
    before = canvas.middle()
    QTest.mousePress(canvas, Qt.MouseButton.LeftButton, pos=QPoint(200, 150))
    QTest.mouseMove(canvas, QPoint(170, 130))
    QTest.mouseRelease(canvas, Qt.MouseButton.LeftButton, pos=QPoint(170, 130))
    assert canvas.middle().x() == pytest.approx(before.x() + 30)
    assert canvas.middle().y() == pytest.approx(before.y() + 20)


def test_keys_zoom_fit_and_move(canvas):
    canvas.setFocus()
    QTest.keyClick(canvas, Qt.Key.Key_1)
    assert canvas.zoom() == 1.0
    before = canvas.middle().x()
    QTest.keyClick(canvas, Qt.Key.Key_Right)
    assert canvas.middle().x() > before
    QTest.keyClick(canvas, Qt.Key.Key_Plus)
    assert canvas.zoom() == pytest.approx(STEP)
    QTest.keyClick(canvas, Qt.Key.Key_0)
    assert canvas.is_fitted()


def test_a_double_click_goes_to_and_fro(canvas):
    QTest.mouseDClick(canvas, Qt.MouseButton.LeftButton, pos=QPoint(200, 150))
    assert canvas.zoom() == 1.0
    QTest.mouseDClick(canvas, Qt.MouseButton.LeftButton, pos=QPoint(200, 150))
    assert canvas.is_fitted()


# the viewer


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    yield made
    made.store.close()


@pytest.fixture
def photos(desk):
    batch = souring_batch(desk)
    keeper: Photos = desk.photos
    taken = [keeper.take_in(offered(picture(seed=n)), look_into) for n in range(4)]
    added = keeper.add(PhotoOwner(batch_id=batch.id), taken)
    for number, photo in enumerate(added):
        day = photo.taken_at.replace(day=25 - 2 * number)
        keeper.edit(photo.id, caption=f"Photo {number}", taken_at=day)
    return keeper.of(PhotoOwner(batch_id=batch.id))


@pytest.fixture
def viewer(desk, photos, qtbot):
    made = PhotoViewer(desk, photos, 1)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_a_photo_comes_when_it_is_ready(desk, viewer):
    assert not viewer.first.canvas.has_picture()
    desk.jobs.release()
    assert viewer.first.canvas.has_picture()
    assert viewer.first.caption.text() == "Photo 1"


def test_only_the_photo_on_show_is_painted_however_late_the_others_come(desk, viewer, photos):
    viewer.first.go(1)
    viewer.first.go(1)
    desk.jobs.release()
    assert viewer.current() == photos[3]
    assert viewer.first.canvas.has_picture()


def test_arrows_walk_to_the_ends_and_no_further(viewer, photos):
    for _ in range(5):
        QTest.keyClick(viewer, Qt.Key.Key_Left)
    assert viewer.current() == photos[0]
    assert not viewer.first.newer_button.isEnabled()
    for _ in range(9):
        QTest.keyClick(viewer, Qt.Key.Key_Right)
    assert viewer.current() == photos[3]
    assert not viewer.first.older_button.isEnabled()


def test_two_are_compared_and_each_side_walks_by_itself(desk, viewer, photos):
    viewer.activateWindow()
    QTest.keyClick(viewer, Qt.Key.Key_C)
    assert viewer.second is not None
    assert viewer.active() is viewer.second
    assert viewer.second.photo() == photos[2]
    assert viewer.span.text() == "2 days between them"
    QTest.keyClick(viewer, Qt.Key.Key_Right)
    assert (viewer.first.photo(), viewer.second.photo()) == (photos[1], photos[3])
    assert viewer.span.text() == "4 days between them"
    viewer.first.canvas.setFocus()
    QTest.keyClick(viewer, Qt.Key.Key_Left)
    assert viewer.first.photo() == photos[0]
    viewer.compare_button.click()
    assert viewer.second is None
    assert viewer.span.text() == ""
    assert viewer.current() == photos[0]


def test_one_photo_has_nothing_to_be_compared_with(desk, photos, qtbot):
    alone = PhotoViewer(desk, photos[:1], 0)
    qtbot.addWidget(alone)
    assert not alone.compare_button.isEnabled()
    alone.set_comparing(True)
    assert alone.second is None


def test_a_missing_photo_says_so_in_its_place(desk, photos, qtbot):
    desk.photos.folder.path_of(photos[0]).unlink()
    viewer = PhotoViewer(desk, photos, 0)
    qtbot.addWidget(viewer)
    desk.jobs.release()
    assert not viewer.first.canvas.has_picture()
    assert not viewer.fit_button.isEnabled()


def test_escape_closes(viewer):
    QTest.keyClick(viewer, Qt.Key.Key_Escape)
    assert not viewer.isVisible()
