"""Looking at readings, correcting them and taking them out."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester, QTest

from brewdesk.models.readings import VALUE
from brewdesk.services.records import Kind, Look, Method, Quantity, ReadingDraft, TasteMark
from brewdesk.widgets.readingsview import ReadingsView
from tests.helpers.pantry_desk import open_desk, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


@pytest.fixture
def batch(desk):
    made = souring_batch(desk)
    keep(desk, made, Quantity.PH, Method.METER, 3.9)
    desk.clock.advance(days=1)
    keep(desk, made, Quantity.TASTE, Method.TONGUE, text=TasteMark.TOO_SWEET.value)
    desk.clock.advance(days=1)
    keep(desk, made, Quantity.PH, Method.METER, 3.42)
    return made


@pytest.fixture
def view(desk, batch, qtbot):
    made = ReadingsView(desk)
    qtbot.addWidget(made)
    tester = QAbstractItemModelTester(
        made.model, QAbstractItemModelTester.FailureReportingMode.Warning, made
    )
    assert tester.model() is made.model
    made.set_batch(batch.id)
    made.resize(560, 300)
    with qtbot.waitExposed(made):
        made.show()
    return made


def keep(desk, batch, quantity, method, value=None, text=""):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=desk.clock.now(),
        quantity=quantity,
        method=method,
        value=value,
        text=text,
    )
    return desk.readings.record([draft])[0]


def values(view):
    return [view.model.index(row, VALUE).data() for row in range(view.model.rowCount())]


def open_row(view, row):
    view.table.selectRow(row)
    view.table.setFocus()
    QTest.keyClick(view.table, Qt.Key.Key_F2)
    return view.dialog


def test_the_newest_reading_stands_first(view):
    assert values(view) == ["3.42 ± 0.05", "Too sweet", "3.90 ± 0.05"]
    assert not view.grab().isNull()


def test_a_new_reading_appears_without_moving_the_selection(desk, batch, view):
    view.table.selectRow(2)
    chosen = view.chosen()
    keep(desk, batch, Quantity.PH, Method.METER, 3.3)
    assert values(view)[0] == "3.30 ± 0.05"
    assert view.chosen() == chosen


def test_a_hidden_view_reads_again_when_it_is_shown(desk, batch, view):
    view.hide()
    keep(desk, batch, Quantity.PH, Method.METER, 3.3)
    assert len(values(view)) == 3
    view.show()
    assert len(values(view)) == 4


def test_delete_takes_a_reading_out_and_undo_brings_it_back(desk, view):
    view.table.selectRow(0)
    QTest.keyClick(view.table, Qt.Key.Key_Delete)
    assert values(view) == ["Too sweet", "3.90 ± 0.05"]
    desk.history.undo()
    assert values(view)[0] == "3.42 ± 0.05"


def test_a_reading_that_is_gone_already_is_told_in_words(desk, view):
    view.table.selectRow(0)
    gone = view.chosen()
    view.hide()  # so that the view does not hear of it
    desk.readings.remove(gone.id)
    view.remove_chosen()
    assert view.problem.text() != ""


def test_the_last_reading_out_leaves_a_hint(view):
    for _ in range(3):
        view.table.selectRow(0)
        view.remove_button.click()
    assert view.empty.isVisible()
    assert not view.remove_button.isVisible()


def test_a_correction_changes_value_and_keeps_what_was_typed(desk, view, qtbot):
    dialog = open_row(view, 0)
    assert dialog.line.text() == "3.42"
    dialog.line.selectAll()
    QTest.keyClicks(dialog.line, "3,45")
    with qtbot.waitSignal(dialog.finished):
        QTest.keyClick(dialog.line, Qt.Key.Key_Return)
    assert values(view)[0] == "3.45 ± 0.05"
    newest = desk.readings.of_batch(view.chosen().batch_id)[-1]
    assert newest.entered == "3,45"
    assert view.dialog is None


def test_saving_without_a_change_is_no_act(desk, batch, view, qtbot):
    before = len(desk.journal.of_batch(batch.id))
    dialog = open_row(view, 0)
    with qtbot.waitSignal(dialog.finished):
        dialog.save_button.click()
    assert len(desk.journal.of_batch(batch.id)) == before


def test_rounding_for_display_changes_nothing(desk, batch, view, qtbot):
    exact = keep(desk, batch, Quantity.TEMPERATURE_C, Method.THERMOMETER, 24.444)
    dialog = open_row(view, 0)
    dialog.method.button(Method.METER).click()
    with qtbot.waitSignal(dialog.finished):
        dialog.save_button.click()
    changed = desk.readings.get(exact.id)
    assert changed.value == pytest.approx(24.444)
    assert changed.method is Method.METER


def test_a_correction_that_cannot_be_read_stays_open_and_says_why(view, qtbot):
    dialog = open_row(view, 0)
    for text in ("sour", "15", ""):
        dialog.line.setText(text)
        dialog.save_button.click()
        assert dialog.isVisible()
        assert dialog.value_row.message.is_error
    with qtbot.waitSignal(dialog.finished):
        qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert values(view)[0] == "3.42 ± 0.05"


def test_a_time_to_come_is_told_beside_the_time(desk, view, qtbot):
    dialog = open_row(view, 0)
    dialog.when.set_instant(desk.clock.now() + timedelta(days=2))
    dialog.save_button.click()
    assert dialog.when_row.message.is_error
    with qtbot.waitSignal(dialog.finished):
        QTest.keyClick(dialog, Qt.Key.Key_Escape)


def test_a_taste_is_corrected_by_its_buttons(view, qtbot):
    dialog = open_row(view, 1)
    dialog.mark.button(TasteMark.RIGHT).click()
    with qtbot.waitSignal(dialog.finished):
        dialog.save_button.click()
    assert values(view)[1] == "Just right"


def test_a_double_click_opens_the_reading_once(view, qtbot):
    place = view.table.visualRect(view.model.index(0, VALUE)).center()
    QTest.mouseClick(view.table.viewport(), Qt.MouseButton.LeftButton, pos=place)
    QTest.mouseDClick(view.table.viewport(), Qt.MouseButton.LeftButton, pos=place)
    first = view.dialog
    view.edit_chosen()
    assert first is not None
    assert view.dialog is first
    with qtbot.waitSignal(first.finished):
        first.reject()


def test_a_change_of_unit_rewrites_the_table(desk, batch, view):
    keep(desk, batch, Quantity.TEMPERATURE_C, Method.THERMOMETER, 25.0)
    desk.settings.put_unit(Kind.TEMPERATURE, "°F")
    assert values(view)[0] == "77.0 ± 0.9 °F"


def test_a_look_is_shown_in_words_and_corrected_by_its_buttons(desk, qtbot):
    batch = souring_batch(desk, "Other", "Other jar")
    desk.readings.record_look(batch.id, Look.UNSURE)
    view = ReadingsView(desk)
    qtbot.addWidget(view)
    view.set_batch(batch.id)
    view.show()
    assert view.model.index(0, VALUE).data() == "Not sure"
    dialog = open_row(view, 0)
    dialog.mark.button(Look.MOLD).click()
    dialog.save()
    assert desk.readings.of_batch(batch.id)[0].text == "mold"
