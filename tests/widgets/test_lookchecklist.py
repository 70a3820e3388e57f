"""The guided look: ticks, finding, what is recorded, and where mold leads."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest

from brewdesk.services.looks import Sign
from brewdesk.services.records import BatchStage, CultureState, Look, Quantity, StoreTrouble
from brewdesk.widgets.enddialog import EndDialog
from brewdesk.widgets.jarphotos import JarPhotos
from brewdesk.widgets.lookchecklist import LookChecklist
from brewdesk.widgets.lookdialog import LookDialog
from brewdesk.widgets.lookfigures import paint_sign
from brewdesk.widgets.windowdialogs import WindowDialogs
from tests.helpers.pantry_desk import souring_batch


@pytest.fixture
def checklist(qtbot):
    made = LookChecklist()
    qtbot.addWidget(made)
    made.resize(900, 700)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_nothing_ticked_is_no_look(checklist):
    assert checklist.look() is None
    assert checklist.finding_text.text() == "Tick everything you see."


def test_the_finding_follows_the_ticks(checklist, qtbot):
    with qtbot.waitSignal(checklist.changed):
        checklist.rows[Sign.BUBBLES].box.click()
    assert checklist.look() is Look.FINE
    assert checklist.finding_text.text() == "Nothing suspicious seen."
    checklist.rows[Sign.DOUBT].box.click()
    assert checklist.look() is Look.UNSURE
    assert "look again tomorrow" in checklist.advice_text.text()
    checklist.rows[Sign.DRY].box.click()
    assert checklist.look() is Look.MOLD
    assert "culture and cloth" in checklist.advice_text.text()
    assert checklist.finding.property("role") == "danger"
    assert checklist.text() == "Dry, standing above the liquid; Bubbles under it; I am not sure"


def test_ticks_are_set_by_keyboard_and_by_pressing_anywhere_on_the_row(checklist):
    box = checklist.rows[Sign.FUZZY].box
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Space)
    assert box.isChecked()
    row = checklist.rows[Sign.STRINGS]
    QTest.mouseClick(row, Qt.MouseButton.LeftButton, pos=QPoint(30, 30))
    assert row.box.isChecked()
    assert box.accessibleDescription() != ""


def test_every_sign_has_a_drawing_of_its_own(qapp):
    seen = set()
    for sign in Sign:
        image = QImage(104, 76, QImage.Format.Format_RGB32)
        image.fill(0)
        painter = QPainter(image)
        paint_sign(painter, QRectF(0, 0, 104, 76), sign)
        painter.end()
        seen.add(bytes(image.constBits()))
    assert len(seen) == len(Sign)


# the dialog


@pytest.fixture
def dialog(qtbot):
    made = LookDialog("Amber")
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_a_look_is_handed_over_with_what_was_ticked(dialog, qtbot):
    assert not dialog.go.isEnabled()
    dialog.checklist.rows[Sign.STRINGS].box.click()
    with qtbot.waitSignal(dialog.looked) as heard:
        dialog.go.click()
    assert heard.args == [Look.FINE, "Brown strings hanging"]
    assert not dialog.isVisible()


def test_a_look_that_cannot_be_kept_stays_and_is_told(qtbot):
    def refuse(_look: Look, _text: str) -> None:
        raise StoreTrouble("disk_full")

    dialog = LookDialog("Amber", keep=refuse)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.checklist.rows[Sign.STRINGS].box.click()
    with qtbot.assertNotEmitted(dialog.looked):
        dialog.record()
    assert dialog.isVisible()
    assert "disk is full" in dialog.problem.text()


def test_mold_is_recorded_on_the_way_to_discarding(dialog):
    dialog.checklist.rows[Sign.COLOURED].box.click()
    assert dialog.go.text() == "Record it and discard…"
    assert dialog.go.property("role") == "danger"


# on the desk


@pytest.fixture
def window(desk, qtbot):
    from PySide6.QtWidgets import QWidget

    made = QWidget()
    qtbot.addWidget(made)
    made.show()
    return made


def test_a_fine_look_is_recorded_with_its_note_and_nothing_else_opens(desk, window):
    batch = souring_batch(desk)
    dialogs = WindowDialogs(desk, window)
    dialogs.look_for_mold(batch.id)
    dialog = window.findChild(LookDialog)
    dialog.checklist.rows[Sign.WET_SMOOTH].box.click()
    dialog.go.click()
    look, note = desk.readings.of_batch(batch.id)
    assert (look.quantity, look.text) == (Quantity.LOOK, "fine")
    assert note.text == "Wet and smooth, of the colour of the tea"
    assert window.findChild(EndDialog) is None


def test_mold_leads_to_discarding_the_batch_and_its_culture(desk, window):
    batch = souring_batch(desk)
    dialogs = WindowDialogs(desk, window)
    dialogs.look_for_mold(batch.id)
    dialog = window.findChild(LookDialog)
    dialog.checklist.rows[Sign.FUZZY].box.click()
    dialog.go.click()
    end = window.findChild(EndDialog)
    assert end.reason.currentData() == "mold"
    assert "marked as lost" in end.result_words.text()
    end.go.click()
    assert desk.batches.get(batch.id).stage is BatchStage.DISCARDED
    (culture,) = (c for c in desk.cultures.all() if c.id == batch.culture_id)
    assert culture.state is CultureState.LOST


def test_the_photos_page_tells_the_last_look(desk, qtbot):
    batch = souring_batch(desk)
    page = JarPhotos(desk)
    qtbot.addWidget(page)
    page.set_batch(batch.id)
    page.show()
    assert page.finding.text() == "Not looked at yet"
    desk.readings.record_look(batch.id, Look.MOLD)
    assert page.finding.text() == "Mold"
    assert page.card.property("role") == "danger"
    with qtbot.waitSignal(page.discard_wanted) as heard:
        page.discard_button.click()
    assert heard.args == [batch.id]
    desk.history.undo()
    assert page.finding.text() == "Not looked at yet"
    assert not page.discard_button.isVisible()
    with qtbot.waitSignal(page.look_wanted):
        page.look_button.click()
