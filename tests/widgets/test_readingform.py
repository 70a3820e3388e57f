"""Entering readings by keyboard, on a real desk."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QScrollArea

from brewdesk.services.records import Look, Method, Quantity, TasteMark
from brewdesk.widgets.readingform import ReadingForm
from tests.helpers.pantry_desk import open_desk, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


@pytest.fixture
def batch(desk):
    return souring_batch(desk)


@pytest.fixture
def form(desk, batch, qtbot):
    made = ReadingForm(desk, notice_ms=20)
    qtbot.addWidget(made)
    made.set_batch(batch.id)
    with qtbot.waitExposed(made):
        made.show()
    made.focus_first()
    return made


def type_into(widget, text):
    QTest.keyClicks(widget, text)


def enter(form):
    QTest.keyClick(form.focusWidget(), Qt.Key.Key_Enter, Qt.KeyboardModifier.KeypadModifier)


def kept(desk, batch):
    return {reading.quantity: reading for reading in desk.readings.of_batch(batch.id)}


def test_a_whole_form_is_entered_with_the_number_pad_alone(desk, batch, form, qtbot):
    type_into(form.field(Quantity.PH), "3,42")
    enter(form)
    type_into(form.focusWidget(), "24.5")
    enter(form)
    type_into(form.focusWidget(), "5,4")
    enter(form)
    type_into(form.focusWidget(), "4.8")
    enter(form)
    type_into(form.focusWidget(), "6")
    enter(form)
    type_into(form.focusWidget(), "2")  # the second taste
    enter(form)
    type_into(form.focusWidget(), "1")  # the first look
    enter(form)
    with qtbot.waitSignal(form.recorded) as heard:
        enter(form)  # the note is the last field
    readings = kept(desk, batch)
    assert readings[Quantity.PH].value == pytest.approx(3.42)
    assert readings[Quantity.PH].entered == "3,42"
    assert readings[Quantity.TEMPERATURE_C].value == pytest.approx(24.5)
    assert readings[Quantity.BRIX].value == pytest.approx(5.4)
    assert readings[Quantity.TA_G_PER_L].value == pytest.approx(4.8)
    assert readings[Quantity.PELLICLE_MM].value == pytest.approx(6.0)
    assert readings[Quantity.TASTE].text == TasteMark.TOO_SWEET.value
    assert readings[Quantity.LOOK].text == Look.FINE.value
    assert len(heard.args[0]) == 7


def test_one_form_is_one_act_to_undo(desk, batch, form):
    type_into(form.field(Quantity.PH), "3.42")
    type_into(form.field(Quantity.TEMPERATURE_C), "24")
    form.save_button.click()
    assert len(kept(desk, batch)) == 2
    desk.history.undo()
    assert kept(desk, batch) == {}


def test_control_enter_saves_from_any_field(desk, batch, form, qtbot):
    type_into(form.field(Quantity.PH), "3.42")
    with qtbot.waitSignal(form.recorded):
        QTest.keyClick(
            form.field(Quantity.PH), Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier
        )
    assert kept(desk, batch)[Quantity.PH].value == pytest.approx(3.42)


def test_after_saving_the_form_is_empty_and_says_what_it_kept(form, qtbot):
    type_into(form.field(Quantity.PH), "3.42")
    form.fields.taste.set_value(TasteMark.RIGHT)
    form.save_button.click()
    assert form.is_empty()
    assert "3.42" in form.notice.text()
    assert form.field(Quantity.PH).hasFocus()
    qtbot.waitUntil(lambda: form.notice.text() == "")


def test_a_field_that_cannot_be_read_stays_while_the_others_are_kept(desk, batch, form):
    type_into(form.field(Quantity.PH), "3.42")
    type_into(form.field(Quantity.TEMPERATURE_C), "warm")
    form.save_button.click()
    assert set(kept(desk, batch)) == {Quantity.PH}
    assert form.field(Quantity.TEMPERATURE_C).text() == "warm"
    assert form.row(Quantity.TEMPERATURE_C).message.is_error
    assert form.field(Quantity.TEMPERATURE_C).hasFocus()
    assert form.field(Quantity.PH).text() == ""


def test_the_mended_field_is_kept_with_the_moment_of_the_others(desk, batch, form):
    type_into(form.field(Quantity.PH), "3.42")
    type_into(form.field(Quantity.TEMPERATURE_C), "warm")
    form.save_button.click()
    at = kept(desk, batch)[Quantity.PH].at
    desk.clock.advance(minutes=10)
    form.field(Quantity.TEMPERATURE_C).selectAll()
    type_into(form.field(Quantity.TEMPERATURE_C), "24")
    assert not form.row(Quantity.TEMPERATURE_C).message.is_error
    form.save_button.click()
    assert kept(desk, batch)[Quantity.TEMPERATURE_C].at == at
    assert form.when.is_following()


def test_an_impossible_value_is_told_beside_its_field(desk, batch, form):
    type_into(form.field(Quantity.PH), "15")
    form.save_button.click()
    assert form.row(Quantity.PH).message.is_error
    assert kept(desk, batch) == {}


def test_an_odd_value_is_asked_about_and_nothing_is_kept_yet(desk, batch, form):
    type_into(form.field(Quantity.PH), "9")
    type_into(form.field(Quantity.TEMPERATURE_C), "24")
    form.save_button.click()
    assert form.doubt.isVisible()
    assert "9" in form.doubt_text.text()
    assert kept(desk, batch) == {}
    form.anyway_button.click()
    assert kept(desk, batch)[Quantity.PH].value == pytest.approx(9.0)
    assert kept(desk, batch)[Quantity.TEMPERATURE_C].value == pytest.approx(24.0)
    assert not form.doubt.isVisible()


def test_changing_the_odd_value_withdraws_the_question(desk, batch, form):
    type_into(form.field(Quantity.PH), "9")
    form.save_button.click()
    form.mend_button.click()
    assert form.field(Quantity.PH).hasFocus()
    assert form.field(Quantity.PH).selectedText() == "9"
    type_into(form.field(Quantity.PH), "3.9")
    assert not form.doubt.isVisible()
    form.save_button.click()
    assert kept(desk, batch)[Quantity.PH].value == pytest.approx(3.9)


def test_an_accepted_odd_value_does_not_wave_the_next_one_through(form):
    type_into(form.field(Quantity.PH), "9")
    form.save_button.click()
    form.anyway_button.click()
    type_into(form.field(Quantity.PH), "9.5")
    form.save_button.click()
    assert form.doubt.isVisible()


def test_a_strip_is_kept_as_a_strip_with_its_wider_uncertainty(desk, batch, form):
    form.fields.method.button(Method.STRIP).click()
    type_into(form.field(Quantity.PH), "3.5")
    form.save_button.click()
    reading = kept(desk, batch)[Quantity.PH]
    assert reading.method is Method.STRIP
    assert reading.sd == desk.readings.default_sd(Quantity.PH, Method.STRIP)
    again = ReadingForm(desk)
    again.set_batch(batch.id)
    assert again.fields.method.value() is Method.STRIP
    again.deleteLater()


def test_the_sugar_field_reads_gravity_when_asked(desk, batch, form):
    form.fields.sugar_scale.button(Quantity.SPECIFIC_GRAVITY).click()
    type_into(form.field(Quantity.BRIX), "1.020")
    form.save_button.click()
    assert kept(desk, batch)[Quantity.SPECIFIC_GRAVITY].value == pytest.approx(1.02)
    assert form.field(Quantity.BRIX).text() == ""


def test_other_units_are_read_as_what_they_are(desk, batch, form):
    type_into(form.field(Quantity.TEMPERATURE_C), "77 °F")
    type_into(form.field(Quantity.PELLICLE_MM), "0,6 cm")
    form.save_button.click()
    assert kept(desk, batch)[Quantity.TEMPERATURE_C].value == pytest.approx(25.0)
    assert kept(desk, batch)[Quantity.PELLICLE_MM].value == pytest.approx(6.0)


def test_an_edited_time_is_kept_and_then_follows_the_clock_again(desk, batch, form):
    desk.clock.advance(hours=30)
    at = desk.clock.now() - timedelta(hours=20)
    form.when.set_instant(at)
    type_into(form.field(Quantity.PH), "3.42")
    form.save_button.click()
    assert kept(desk, batch)[Quantity.PH].at == at
    assert form.when.is_following()


def test_a_time_to_come_stops_everything_and_loses_nothing(desk, batch, form):
    form.when.set_instant(desk.clock.now() + timedelta(days=1))
    type_into(form.field(Quantity.PH), "3.42")
    form.save_button.click()
    assert form.when_row.message.is_error
    assert form.field(Quantity.PH).text() == "3.42"
    assert kept(desk, batch) == {}


def test_an_empty_form_keeps_nothing_and_says_so(desk, batch, form):
    form.save_button.click()
    assert form.notice.text() != ""
    assert kept(desk, batch) == {}


def test_what_was_typed_for_one_batch_waits_for_its_return(desk, batch, form):
    other = souring_batch(desk, name="Green tea 1", vessel="Crock")
    type_into(form.field(Quantity.PH), "3.")
    form.fields.taste.set_value(TasteMark.RIGHT)
    form.set_batch(other.id)
    assert form.is_empty()
    form.set_batch(batch.id)
    assert form.field(Quantity.PH).text() == "3."
    assert form.fields.taste.value() is TasteMark.RIGHT
    assert kept(desk, batch) == {}


def test_a_taste_pressed_twice_is_taken_back(form):
    form.fields.taste.button(TasteMark.RIGHT).click()
    assert form.fields.taste.value() is TasteMark.RIGHT
    form.fields.taste.button(TasteMark.RIGHT).click()
    assert form.fields.taste.value() is None


def test_without_a_batch_there_is_nothing_to_enter(desk, qtbot):
    form = ReadingForm(desk)
    qtbot.addWidget(form)
    form.save()
    assert not form.isEnabled()
    assert form.batch_id() is None


def test_the_units_shown_follow_the_settings(desk, form):
    from brewdesk.services.records import Kind

    desk.settings.put_unit(Kind.TEMPERATURE, "°F")
    assert form.field(Quantity.TEMPERATURE_C).placeholderText() == "°F"


def test_every_control_has_a_name_for_the_ear(form):
    from PySide6.QtWidgets import QAbstractButton, QLineEdit

    nameless = [
        widget.objectName()
        for widget in (*form.findChildren(QAbstractButton), *form.findChildren(QLineEdit))
        if not widget.accessibleName()
        and not getattr(widget, "text", str)()
        and widget.objectName() != "qt_spinbox_lineedit"
    ]
    assert nameless == []
    assert not form.grab().isNull()


def test_what_cannot_be_read_is_said_when_its_field_is_left(form, qtbot):
    type_into(form.field(Quantity.PH), "sour")
    QTest.keyClick(form.focusWidget(), Qt.Key.Key_Tab)
    assert form.row(Quantity.PH).message.is_error
    type_into(form.field(Quantity.TEMPERATURE_C), "24,5")
    enter(form)
    assert not form.row(Quantity.TEMPERATURE_C).message.is_error


def test_an_empty_field_is_left_without_a_word(form):
    QTest.keyClick(form.focusWidget(), Qt.Key.Key_Tab)
    assert form.row(Quantity.PH).message.text() == ""


def test_a_field_to_mend_is_brought_into_view(desk, batch, qtbot):
    area = QScrollArea()
    qtbot.addWidget(area)
    form = ReadingForm(desk)
    form.set_batch(batch.id)
    area.setWidgetResizable(True)
    area.setWidget(form)
    area.resize(520, 240)
    with qtbot.waitExposed(area):
        area.show()
    type_into(form.field(Quantity.PH), "sour")
    bar = area.verticalScrollBar()
    bar.setValue(bar.maximum())
    form.save_button.click()
    top = form.row(Quantity.PH).mapTo(area.viewport(), form.row(Quantity.PH).rect().topLeft())
    assert top.y() >= 0


def test_a_look_that_found_mold_leads_on_to_what_has_to_go(desk, batch, form, qtbot):
    form.fields.look.set_value(Look.MOLD)
    with qtbot.waitSignal(form.mold_seen) as heard:
        form.save_button.click()
    assert heard.args == [batch.id]
    assert kept(desk, batch)[Quantity.LOOK].text == "mold"
    assert form.is_empty()


def test_a_look_that_found_nothing_leads_nowhere(form, qtbot):
    form.fields.look.set_value(Look.FINE)
    with qtbot.assertNotEmitted(form.mold_seen):
        form.save_button.click()
    assert "Nothing suspicious" in form.notice.text()


def test_the_guide_is_asked_for_this_batch(batch, form, qtbot):
    with qtbot.waitSignal(form.look_wanted) as heard:
        form.fields.guide_button.click()
    assert heard.args == [batch.id]


def test_a_look_waits_while_another_batch_is_on_show(desk, batch, form):
    form.fields.look.set_value(Look.UNSURE)
    form.set_batch(souring_batch(desk, "Other", "Other jar").id)
    assert form.fields.look.value() is None
    form.set_batch(batch.id)
    assert form.fields.look.value() is Look.UNSURE
