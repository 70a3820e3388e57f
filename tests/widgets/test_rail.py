"""All pages have a button in any window, however low it is."""

from __future__ import annotations

from itertools import pairwise

import pytest
from PySide6.QtCore import QRect
from PySide6.QtWidgets import QVBoxLayout, QWidget

from brewdesk.widgets.rail import Rail
from tests.helpers.worn_theme import worn_theme

PAGES = [(f"page{n}", "shelf", f"Page {n}") for n in range(11)]


@pytest.fixture
def room(qtbot, qapp):
    with worn_theme(qapp, "light", 1.0):
        outside = QWidget()
        column = QVBoxLayout(outside)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Rail(PAGES))
        qtbot.addWidget(outside)
        with qtbot.waitExposed(outside):
            outside.show()
        yield outside


@pytest.mark.parametrize(
    ("height", "is_named"), [(1000, True), (760, True), (640, True), (500, False), (450, False)]
)
def test_every_button_lies_in_the_rail_and_is_told_by_name_or_tip(room, height, is_named):
    rail = room.findChild(Rail)
    room.resize(200, height)
    room.grab()
    assert rail.height() == height
    buttons = list(rail.buttons.values())
    inside = QRect(0, 0, rail.width(), rail.height())
    assert all(inside.contains(button.geometry()) for button in buttons)
    tops = [button.geometry().top() for button in buttons]
    assert all(below - above >= buttons[0].height() for above, below in pairwise(tops))
    assert [button.is_named for button in buttons] == [is_named] * len(buttons)
    assert [bool(button.toolTip()) for button in buttons] == [not is_named] * len(buttons)
    if is_named:
        assert buttons[0].height() >= 44  # WCAG 2.2, 2.5.5 target size (enhanced)
