"""Topping up, through its own form."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from brewdesk.services.records import Method, Quantity, ReadingDraft
from brewdesk.widgets.enddialog import EndDialog
from brewdesk.widgets.topupdialog import TopUpDialog
from tests.helpers.pantry_desk import plan_batch, souring_batch


@pytest.fixture
def batch(desk):
    made = souring_batch(desk)
    desk.liquids.draw_part(made.id, 2.0)
    return made


@pytest.fixture
def form(desk, batch, qtbot):
    made = TopUpDialog(desk, batch)
    qtbot.addWidget(made)
    made.open()
    made.grab()
    return made


def press(qtbot, form):
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)


def test_it_begins_with_the_batchs_own_tea_up_to_its_first_volume(form):
    assert form.volume.value() == pytest.approx(2.0)
    assert form.sugar.value() == pytest.approx(50.0)
    assert "2.00 L + 2.00 L = 4.00 L" in form.volume_words.text()


def test_the_balance_follows_the_typing_and_the_brim_is_said_at_the_field(form):
    form.volume.line.setText("0.5 L")
    assert "2.00 L + 0.500 L = 2.50 L" in form.volume_words.text()
    form.volume.line.setText("2.6 L")
    assert "room for 2.50 L" in form.volume.message.text()
    form.volume.line.setText("0.5 L")
    assert form.volume.message.text() == ""


def test_the_ph_is_reckoned_once_one_is_known(desk, batch, form):
    assert "No pH" in form.ph_words.text()
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=desk.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.1,
                sd=0.05,
            )
        ]
    )
    form.volume.line.setText("1 L")
    assert form.ph_words.text().startswith("pH from about 3.10 to 3.")


def test_warm_tea_needs_a_written_reason(desk, batch, form, qtbot):
    form.temperature.line.setText("45")
    press(qtbot, form)
    assert form.isVisible()
    assert form.rows["reason"].isVisible()
    assert form.rows["reason"].message.text()
    assert desk.liquids.volume_now_l(batch.id) == pytest.approx(2.0)
    form.reason.setText("thermometer broken, feels cool")
    press(qtbot, form)
    assert not form.isVisible()
    rows = desk.liquids.transfers(batch.id)
    assert rows[-1].override_reason == "thermometer broken, feels cool"


def test_cool_tea_goes_in_and_is_undone(desk, batch, form, qtbot):
    form.volume.line.setText("1,5 L")
    form.temperature.line.setText("24")
    with qtbot.waitSignal(form.topped_up):
        press(qtbot, form)
    assert desk.liquids.volume_now_l(batch.id) == pytest.approx(3.5)
    desk.history.undo()
    assert desk.liquids.volume_now_l(batch.id) == pytest.approx(2.0)


def test_what_cannot_be_read_is_said_at_its_field(form, qtbot):
    form.sugar.line.setText("sweet")
    press(qtbot, form)
    assert form.isVisible()
    assert form.sugar.message.text()
    assert form.volume_words.text() == "Type an amount to see what it does."


def test_drawing_off_keeps_starter_with_the_culture(desk, batch, qtbot):
    plan_batch(desk, "Next tea", "Other jar")
    (jar,) = [j for j in desk.shelf.jars() if j.batch is not None and j.batch.id == batch.id]
    form = EndDialog(desk, jar, discard=False)
    qtbot.addWidget(form)
    form.open()
    assert "Next tea, which is planned next, wants" in form.kept_words.text()
    form.kept.line.setText("0.5 L")
    assert form.kept_words.text() == "1.50 L are drawn off, 0.500 L stay."
    form.kept.line.setText("5 L")
    press(qtbot, form)
    assert form.isVisible()
    assert "more than there is" in form.kept.message.text()
    form.kept.line.setText("0.5 L")
    press(qtbot, form)
    assert desk.cultures.get(batch.culture_id).rest_volume_l == pytest.approx(0.5)
