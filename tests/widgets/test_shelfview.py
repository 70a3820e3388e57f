"""The boards: everything in view, true to one another, reached by keys and by ear."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible

from brewdesk.models.shelf import ShelfModel
from brewdesk.widgets.jarlook import look_of
from brewdesk.widgets.jarpainter import widest_cm
from brewdesk.widgets.shelfview import ShelfView
from tests.models.test_shelf import jar, words


@pytest.fixture
def view(qtbot):
    made = ShelfView()
    qtbot.addWidget(made)
    model = ShelfModel(words, made)
    made.setModel(model)
    model.set_jars([jar(number) for number in range(1, 6)])
    made.resize(640, 640)
    made.show()
    qtbot.waitExposed(made)
    made.refresh_looks()
    made.doItemsLayout()
    return made


def boxes(view):
    model = view.model()
    return [view.visualRect(model.index(row, 0)) for row in range(model.rowCount())]


@pytest.mark.parametrize("size", [(420, 800), (640, 640), (700, 900), (1000, 700), (1700, 1000)])
def test_all_jars_are_in_view_where_there_is_room(view, size):
    view.resize(*size)
    view.doItemsLayout()
    bottom = max(box.bottom() for box in boxes(view))
    right = max(box.right() for box in boxes(view))
    assert bottom <= view.viewport().height()
    assert right <= view.viewport().width()
    assert view.verticalScrollBar().maximum() == 0


def test_where_there_is_no_room_the_shelf_scrolls_rather_than_shrinks_to_nothing(view):
    view.resize(420, 300)
    view.doItemsLayout()
    assert view.verticalScrollBar().maximum() > 0
    assert view.scale_px_per_cm * 22.0 > 100


def test_jars_do_not_overlap(view):
    found = boxes(view)
    for number, box in enumerate(found):
        assert not any(box.intersects(other) for other in found[number + 1 :])


def test_a_cell_is_wide_enough_for_its_jar(view):
    for index, box in enumerate(boxes(view)):
        view_jar = jar(index + 1)
        assert box.width() >= widest_cm(look_of(view_jar)) * view.scale_px_per_cm


def test_arrow_keys_walk_along_the_shelf_and_enter_opens(view, qtbot):
    view.choose(0)
    chosen: list[int] = []
    view.jar_chosen.connect(chosen.append)
    qtbot.keyClick(view, Qt.Key.Key_Right)
    qtbot.keyClick(view, Qt.Key.Key_Right)
    assert chosen == [2, 3]
    with qtbot.waitSignal(view.jar_opened) as opened:
        qtbot.keyClick(view, Qt.Key.Key_Return)
    assert opened.args == [3]


def test_the_shelf_and_its_jars_have_names_for_a_screen_reader(view):
    interface = QAccessible.queryAccessibleInterface(view)
    assert interface.text(QAccessible.Text.Name) == "Shelf"
    names = [
        interface.child(number).text(QAccessible.Text.Name)
        for number in range(interface.childCount())
    ]
    assert "Jar 1, pH None." in names


def test_it_can_be_painted_in_every_state(view, qtbot):
    view.choose(1)
    image = view.grab().toImage()
    colours = {
        image.pixelColor(x, y).name()
        for x in range(0, image.width(), 4)
        for y in range(0, image.height(), 4)
    }
    assert len(colours) > 10
