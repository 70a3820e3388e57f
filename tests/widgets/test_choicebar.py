"""A row of choices by finger, arrows and digits."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.theme import TOUCH


@pytest.fixture
def bar(qtbot):
    made = ChoiceBar((("a", "First"), ("b", "Second"), ("c", "Third")), "Letter")
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    made.setFocus()
    return made


def test_one_is_chosen_from_the_start_and_a_click_chooses_another(bar, qtbot):
    assert bar.value() == "a"
    with qtbot.waitSignal(bar.chosen) as heard:
        bar.button("c").click()
    assert heard.args == ["c"]
    assert [bar.button(value).isChecked() for value in "abc"] == [False, False, True]


def test_pressing_the_chosen_one_again_keeps_it(bar, qtbot):
    with qtbot.assertNotEmitted(bar.chosen):
        bar.button("a").click()
    assert bar.value() == "a"
    assert bar.button("a").isChecked()


def test_arrows_walk_and_space_chooses(bar):
    QTest.keyClick(bar.focusWidget(), Qt.Key.Key_Right)
    assert bar.button("b").hasFocus()
    assert bar.value() == "a"
    QTest.keyClick(bar.focusWidget(), Qt.Key.Key_Space)
    assert bar.value() == "b"
    QTest.keyClick(bar.focusWidget(), Qt.Key.Key_Left)
    QTest.keyClick(bar.focusWidget(), Qt.Key.Key_Left)
    assert bar.button("a").hasFocus()


def test_a_digit_chooses_directly_and_one_too_high_does_nothing(bar):
    QTest.keyClick(bar.focusWidget(), Qt.Key.Key_3)
    assert bar.value() == "c"
    QTest.keyClick(bar.focusWidget(), Qt.Key.Key_9)
    assert bar.value() == "c"


def test_only_one_button_is_a_stop_for_tab(bar):
    bar.set_value("b")
    stops = [
        value
        for value in "abc"
        if bar.button(value).focusPolicy() & Qt.FocusPolicy.TabFocus == Qt.FocusPolicy.TabFocus
    ]
    assert stops == ["b"]


def test_enter_leads_on_only_where_asked(qtbot):
    leading = ChoiceBar((("a", "First"), ("b", "Second")), "Letter", may_be_none=True, submits=True)
    qtbot.addWidget(leading)
    leading.show()
    assert leading.value() is None
    with qtbot.waitSignal(leading.submitted):
        QTest.keyClick(leading.button("a"), Qt.Key.Key_Return)
    assert leading.value() is None


def test_buttons_are_tall_enough_and_named(bar):
    for value, word in (("a", "First"), ("b", "Second")):
        assert bar.button(value).height() >= TOUCH
        assert bar.button(value).accessibleName() == f"Letter: {word}"


def test_what_is_not_offered_chooses_nothing(bar):
    bar.set_value("z")
    assert bar.value() is None
