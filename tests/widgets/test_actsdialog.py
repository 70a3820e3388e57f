"""Every act can be found by typing its name, and is done when chosen."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget

from brewdesk.widgets.actions import action_specs
from brewdesk.widgets.actsdialog import ActsDialog, plain_name


@pytest.fixture
def actions(qtbot):
    owner = QWidget()
    qtbot.addWidget(owner)
    made = {}
    for spec in action_specs():
        made[spec.key] = QAction(spec.text, owner)
        made[spec.key].setShortcut(QKeySequence(spec.shortcut))
    yield made
    made.clear()  # and only now the owner that keeps them
    owner.hide()


@pytest.fixture
def dialog(actions, qtbot):
    made = ActsDialog(actions)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def names(dialog):
    return [item.text(0) for item in dialog.rows()]


def test_all_acts_are_listed_with_menu_and_keys(dialog):
    assert len(dialog.rows()) == len(action_specs())
    told = {item.text(0): (item.text(1), item.text(2)) for item in dialog.rows()}
    assert told["Add a reading"] == ("Jar", "Ctrl+R")
    assert told["Copy everything to a folder"] == ("Pantry", "")


def test_typed_words_narrow_the_list_whatever_their_case_and_order(dialog, qtbot):
    qtbot.keyClicks(dialog.line, "OFF draw")
    assert names(dialog) == ["Draw it off", "Draw off part"]
    assert dialog.list.currentItem().text(0) == "Draw it off"


def test_enter_takes_what_is_marked_and_arrows_move_the_mark(dialog, actions, qtbot):
    qtbot.keyClicks(dialog.line, "draw off")
    qtbot.keyClick(dialog.line, Qt.Key.Key_Down)
    with qtbot.waitSignal(dialog.accepted):
        qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert dialog.chosen is actions["draw_part"]


def test_what_cannot_be_done_now_is_grey_and_is_not_taken(actions, qtbot):
    actions["brew"].setEnabled(False)
    dialog = ActsDialog(actions)
    qtbot.addWidget(dialog)
    dialog.line.setText("brewing")
    assert names(dialog) == ["Start brewing"]
    assert not dialog.go.isEnabled()
    assert not dialog.note.isHidden()
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert dialog.chosen is None


def test_no_act_of_that_name_is_said(dialog):
    dialog.line.setText("zzz")
    assert dialog.rows() == ()
    assert dialog.none.isVisible()
    assert not dialog.go.isEnabled()


@pytest.mark.parametrize(
    ("text", "name"), [("&Undo", "Undo"), ("Salt && &sugar…", "Salt & sugar"), ("Carr&y", "Carry")]
)
def test_key_marks_are_left_out_of_names(text, name):
    assert plain_name(text) == name
