"""Two columns while there is room, one when there is not."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QLabel, QWidget

from brewdesk.widgets.pairgrid import PairGrid


@pytest.fixture
def grid(qtbot):
    holder = QWidget()  # a window of its own could not be made narrower than its layout
    qtbot.addWidget(holder)
    made = PairGrid(holder)
    made.left, made.right, made.whole = QLabel("left"), QLabel("right"), QLabel("whole")
    for label in (made.left, made.right):
        label.setMinimumWidth(200)
    made.add(made.left, made.right)
    made.add(made.whole)
    holder.resize(700, 300)
    with qtbot.waitExposed(holder):
        holder.show()
    made.holder = holder  # kept alive with it
    return made


def test_a_pair_stands_side_by_side_where_there_is_room(grid, qtbot):
    grid.resize(600, 200)
    qtbot.waitUntil(lambda: grid.right.x() > grid.left.x())
    assert grid.is_wide
    assert grid.right.y() == grid.left.y()
    assert grid.whole.width() == grid.width()


def test_a_narrow_grid_stacks_the_pair_in_its_order(grid, qtbot):
    grid.resize(300, 200)
    qtbot.waitUntil(lambda: grid.right.y() > grid.left.y())
    assert not grid.is_wide
    assert grid.right.x() == grid.left.x()
    assert grid.whole.y() > grid.right.y()
    grid.resize(600, 200)
    qtbot.waitUntil(lambda: grid.right.y() == grid.left.y())


def test_one_column_is_all_it_insists_on(grid):
    assert grid.minimumSizeHint().width() == 200


def test_the_second_column_comes_back_when_its_widgets_become_small_again(grid, qtbot):
    grid.resize(600, 200)
    grid.left.setText("as wide as large type makes it " * 4)
    qtbot.waitUntil(lambda: not grid.is_wide)
    grid.left.setText("left")
    qtbot.waitUntil(lambda: grid.is_wide)
