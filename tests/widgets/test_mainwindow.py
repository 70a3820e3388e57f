"""The window itself: leaving it, its keys, its way to dialogs, its size."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QApplication, QDialog, QPushButton

from brewdesk.services.records import BatchStage, StepState
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.theme import Theme
from brewdesk.widgets.windowsize import PLEASANT, size_for
from tests.helpers.pantry_desk import brewing_batch, plan_batch, souring_batch
from tests.helpers.worn_theme import look_kept


@pytest.fixture
def window(desk, qapp, qtbot):
    made = MainWindow(desk, Theme(qapp))
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def begin_boiling(desk):
    batch = brewing_batch(desk)
    desk.brewing.begin(desk.brewing.steps(batch.id)[0].id)
    return batch


def dialog_of(window, name: str) -> QDialog | None:
    return next((d for d in window.findChildren(QDialog, name) if d.isVisible()), None)


def test_closing_while_a_timer_runs_asks_and_may_stay(desk, window, qtbot):
    begin_boiling(desk)
    left = []
    window.quit_wanted.connect(lambda: left.append(True))
    assert window.close() is False
    asked = dialog_of(window, "closing_dialog")
    assert asked is not None
    qtbot.keyClick(asked, Qt.Key.Key_Escape)
    assert left == []
    assert window.isVisible()


def test_closing_all_the_same_leaves(desk, window, qtbot):
    begin_boiling(desk)
    window.close()
    asked = dialog_of(window, "closing_dialog")
    with qtbot.waitSignal(window.quit_wanted):
        qtbot.mouseClick(asked.go, Qt.MouseButton.LeftButton)


@pytest.mark.parametrize("is_over", [False, True])
def test_without_a_timer_that_could_still_ring_closing_just_closes(desk, window, qtbot, is_over):
    if is_over:
        begin_boiling(desk)
        desk.clock.advance(hours=1)
    with qtbot.waitSignal(window.quit_wanted):
        window.close()
    assert dialog_of(window, "closing_dialog") is None


def test_the_menus_way_out_asks_too(desk, window):
    begin_boiling(desk)
    window.actions_by_key["quit"].trigger()
    assert dialog_of(window, "closing_dialog") is not None


def test_hiding_into_the_tray_needs_no_question(desk, window):
    begin_boiling(desk)
    window.may_hide = lambda: True
    window.close()
    assert not window.isVisible()
    assert dialog_of(window, "closing_dialog") is None


def test_enter_presses_the_button_that_has_the_keyboard(desk, window, qtbot):
    batch = brewing_batch(desk)
    window.open_batch(batch.id)
    window.shelf.sheet.show_tab("run")
    row = window.shelf.sheet.run_sheet.present_row()
    row.done_button.setFocus()
    qtbot.keyClick(row.done_button, Qt.Key.Key_Return)
    assert window.shelf.sheet.run_sheet.present_row().step.position == 2


def test_a_retired_vessel_comes_back_by_the_menu(desk, window, qtbot):
    batch = plan_batch(desk)
    desk.batches.drop_plan(batch.id)
    window.retire_vessel(batch.vessel_id)
    assert "Retired vessels" in window.notice.words.text()
    window.actions_by_key["retired"].trigger()
    dialog = dialog_of(window, "retired_dialog")
    button = dialog.findChild(QPushButton, f"restore_{batch.vessel_id}")
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert window.shelf.chosen().vessel.id == batch.vessel_id


def test_the_line_under_the_title_opens_the_places(desk, window, qtbot):
    plan_batch(desk)
    window.shelf.refresh()
    assert "22.0 °C" in window.shelf.place_button.words()
    qtbot.mouseClick(window.shelf.place_button, Qt.MouseButton.LeftButton)
    assert dialog_of(window, "places_dialog") is not None


def test_a_dialog_is_let_go_of_when_it_closes(window, qtbot):
    window.dialogs.add_vessel()
    (dialog,) = window.findChildren(QDialog)
    with qtbot.waitSignal(dialog.destroyed):
        qtbot.keyClick(dialog, Qt.Key.Key_Escape)
        QApplication.processEvents()


@pytest.mark.parametrize(
    "screen", [QSize(1280, 800), QSize(1024, 700), QSize(1366, 768), QSize(2560, 1440)]
)
def test_the_window_opens_no_larger_than_its_screen(screen):
    size = size_for(screen)
    assert size.width() < screen.width()
    assert size.height() < screen.height()
    assert size.width() <= PLEASANT.width()


def test_brewing_begins_with_the_keyboard_on_the_first_step(desk, window):
    batch = plan_batch(desk)
    window.start_brewing(batch.id)
    row = window.shelf.sheet.run_sheet.present_row()
    assert window.focusWidget() is row.begin_button


def test_a_second_press_after_starting_a_timer_does_not_end_the_step(desk, window, qtbot):
    batch = plan_batch(desk)
    window.start_brewing(batch.id)
    for _ in range(2):
        qtbot.keyClick(window.focusWidget(), Qt.Key.Key_Return)
    step = desk.brewing.steps(batch.id)[0]
    assert step.state is StepState.PAUSED


def test_the_keyboard_stays_on_the_sheet_when_the_last_step_is_done(desk, window, qtbot):
    batch = brewing_batch(desk)
    *before, _last = desk.brewing.steps(batch.id)
    for step in before:
        desk.brewing.finish(step.id, 25.0)
    window.open_batch(batch.id)
    window.shelf.sheet.run_sheet.take_keyboard()
    qtbot.keyClick(window.focusWidget(), Qt.Key.Key_Return)
    window.shelf.refresh()
    assert desk.batches.get(batch.id).stage is BatchStage.SOURING
    assert window.focusWidget() is window.shelf.sheet.tabs.tabBar()


def test_planning_begins_at_the_vessel_or_at_the_way_to_one(desk, window, qtbot):
    window.plan(None)
    page = window.pages["plan"]
    assert page.focusWidget() is page.add_button
    batch = plan_batch(desk)
    desk.batches.drop_plan(batch.id)
    window.plan(batch.vessel_id)
    assert page.focusWidget() is page.form.vessel


def test_enter_in_a_field_presses_no_button_that_gets_the_focus_by_it(desk, window, qtbot):
    souring_batch(desk)
    window.show_page("due")
    page = window.pages["due"]
    page.adding.set_open(True)
    qtbot.keyClicks(page.own.text, "buy sugar")
    page.own.text.setFocus()
    before = len(desk.reminders.listed(desk.clock.now()))
    qtbot.keyClick(page.own.text, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: len(desk.reminders.listed(desk.clock.now())) == before + 1)


def test_enter_on_cancel_cancels(desk, window, qtbot):
    window.dialogs.add_vessel()
    dialog = next(iter(window.findChildren(QDialog)))
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    qtbot.keyClicks(dialog.name, "Tall jar")
    qtbot.keyClicks(dialog.brim.line, "4")
    cancel = next(b for b in dialog.findChildren(QPushButton) if b.text() == "Cancel")
    cancel.setFocus()
    qtbot.keyClick(cancel, Qt.Key.Key_Return)
    assert not dialog.isVisible()
    assert desk.vessels.all() == ()


def export_to(window, path):
    """Name a file in the dialog that is open."""
    dialog = dialog_of(window, "calendar_file_dialog")
    dialog.fileSelected.emit(str(path))
    dialog.reject()


def test_the_due_list_is_exported_from_the_menu(desk, window, tmp_path):
    desk.reminders.add_own(None, desk.clock.now() + timedelta(hours=1), "Buy tea")
    window.actions_by_key["calendar"].trigger()
    export_to(window, tmp_path / "due.ics")
    desk.jobs.release()
    assert b"SUMMARY:Buy tea\r\n" in (tmp_path / "due.ics").read_bytes()
    assert window.notice.words.text().startswith("1 reminder is in the calendar file ")


def test_the_due_list_is_exported_from_its_page(desk, window, tmp_path, qtbot):
    window.show_page("due")
    qtbot.mouseClick(window.page("due").export_button, Qt.MouseButton.LeftButton)
    export_to(window, tmp_path / "gone" / "due.ics")
    desk.jobs.release()
    assert "could not be written" in window.notice.words.text()
    assert window.notice.property("role") == "warn"


def test_a_window_put_away_is_put_away_as_its_owner_says(window):
    away = []
    window.may_hide = lambda: True
    window.hide_away = lambda: away.append(True)
    assert window.close() is False
    assert away == [True]


def test_logging_out_is_not_held_up_by_the_wish_to_run_on(window, qtbot, monkeypatch):
    monkeypatch.setattr("brewdesk.widgets.mainwindow._is_logging_out", lambda: True)
    window.may_hide = lambda: True
    with qtbot.waitSignal(window.quit_wanted):
        window.close()


def test_every_page_has_a_button_of_the_same_height_once_it_is_shown(qtbot):
    from PySide6.QtWidgets import QApplication

    from brewdesk.widgets.rail import Rail
    from brewdesk.widgets.theme import Theme

    app = QApplication.instance()
    with look_kept(app):
        Theme(app).apply("light", 1.0)
        rail = Rail([("shelf", "shelf", "Shelf"), ("due", "due", "Due"), ("set", "settings", "S")])
        qtbot.addWidget(rail)
        rail.resize(100, 600)
        rail.show()
        QApplication.processEvents()
        assert len({button.height() for button in rail.buttons.values()}) == 1


def test_the_menu_leads_to_what_the_pantry_has_learned(window):
    window.actions_by_key["look_back"].trigger()
    page = window.page("history")
    assert window.stack.currentWidget() is page
    assert page.look_back.isVisible()


def test_an_act_that_was_found_by_its_name_is_done(window, qtbot):
    from PySide6.QtCore import Qt

    from brewdesk.widgets.actsdialog import ActsDialog

    window.actions_by_key["find_act"].trigger()
    dialog = window.findChild(ActsDialog)
    qtbot.keyClicks(dialog.line, "look back")
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    page = window.page("history")
    qtbot.waitUntil(lambda: window.stack.currentWidget() is page and page.look_back.isVisible())
