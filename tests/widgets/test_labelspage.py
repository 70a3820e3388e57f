"""The labels page: tick, word, lay out, see, save; names are invented."""

from __future__ import annotations

import subprocess
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrintPreviewDialog
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from brewdesk.models.labelpicks import COPIES, NAME, STAGE
from brewdesk.services.bottlingwish import BottleGroupWish
from brewdesk.services.labels import LabelField, LabelKind
from brewdesk.services.labelsheets import starters
from brewdesk.services.records import BottleKind, CultureState
from brewdesk.widgets.cultureacts import offered
from brewdesk.widgets.jarsheet import JarSheet, label_record
from brewdesk.widgets.labelspage import LabelsPage
from brewdesk.widgets.sheetdialog import SheetDialog
from tests.helpers.pantry_desk import souring_batch

F = LabelField


@pytest.fixture
def batch(desk):
    return souring_batch(desk)


@pytest.fixture
def page(desk, batch, qtbot):
    return shown(desk, qtbot)


def shown(desk, qtbot):
    made = LabelsPage(desk, delay_ms=0)
    qtbot.addWidget(made)
    made.resize(1180, 720)
    with qtbot.waitExposed(made):
        made.show()
    return made


def dark_dots(page):
    picture = page.preview.canvas.picture().toImage()
    return sum(
        picture.pixelColor(x, y).lightness() < 100
        for x in range(0, picture.width(), 2)
        for y in range(0, picture.height(), 2)
    )


def reddish_dots(page):
    """Dots of the stamp: nothing on a label is red."""
    picture = page.preview.canvas.picture().toImage()
    colours = (
        picture.pixelColor(x, y)
        for x in range(0, picture.width(), 2)
        for y in range(0, picture.height(), 2)
    )
    return sum(colour.red() - colour.green() > 40 for colour in colours)


def edit(page, field, text):
    line = page.words.lines[field]
    line.setText(text)
    line.textEdited.emit(text)


def bottle(desk, batch):
    groups = (
        BottleGroupWish(bottle_count=3, kind=BottleKind.FIZZY_GLASS, brim_volume_l=0.52),
        BottleGroupWish(bottle_count=1, kind=BottleKind.FIZZY_PLASTIC, brim_volume_l=0.5),
    )
    wish = replace(desk.bottlings.wish_for(batch.id), groups=groups)
    return desk.bottlings.fill(wish, "invented, for a test")


def test_an_empty_pantry_says_what_to_do(desk, qtbot):
    made = shown(desk, qtbot)
    assert made.first_vessel.isVisible()
    with qtbot.waitSignal(made.add_vessel_wanted):
        made.first_vessel.click()
    souring_batch(desk)
    assert not made.first_vessel.isVisible()
    assert made.picker.isVisible()


def test_what_sours_is_ticked_until_the_maker_chooses(page, desk, batch):
    assert list(page.picker.picked) == [f"batch:{batch.id}"]
    assert "What sours now is ticked for you" in page.picker.count.text()
    assert page.save.isEnabled()
    page.picker.none.click()
    page.hide()
    page.show()
    desk.cultures.edit(batch.culture_id, name="Renamed")
    assert page.picker.picked == {}
    assert "for you" not in page.picker.count.text()


def test_bottles_just_filled_are_ticked_with_a_label_for_each(desk, batch, qtbot):
    bottling = bottle(desk, batch)
    page = shown(desk, qtbot)
    assert page.picker.picked == {f"bottling:{bottling.id}": 4}
    assert "Bottles filled lately" in page.picker.count.text()
    assert len(page.labels()) == 4
    (label,) = set(page.labels())
    assert label.code.startswith("brewdesk:bottling:")
    assert label.text(F.CHILL_BY)
    assert page.picker.tables["bottling"].isVisible()


def test_bottles_that_are_filled_while_nothing_was_chosen_are_ticked_next(page, desk, batch):
    bottling = bottle(desk, batch)
    assert page.picker.picked == {f"bottling:{bottling.id}": 4}


def test_a_bottlings_tick_by_hand_presets_the_copies(desk, batch, qtbot):
    bottling = bottle(desk, batch)
    page = shown(desk, qtbot)
    page.picker.none.click()
    table = page.picker.tables["bottling"]
    table.setFocus()
    table.setCurrentIndex(table.model().index(0, STAGE))
    QTest.keyClick(table, Qt.Key.Key_Space)
    assert page.picker.picked == {f"bottling:{bottling.id}": 4}


def test_allergens_typed_for_a_batch_hold_for_its_bottles_until_they_are_changed(
    desk, batch, qtbot
):
    page = shown(desk, qtbot)
    page.begin("batch", batch.id)
    edit(page, F.ALLERGENS, "sesame")
    bottling = bottle(desk, batch)
    page.begin("bottling", bottling.id)
    assert page.words.lines[F.ALLERGENS].text() == "sesame"
    assert page.labels()[0].text(F.ALLERGENS) == "Allergens: sesame"
    edit(page, F.ALLERGENS, "sesame, nuts")
    assert page.labels()[0].text(F.ALLERGENS) == "Allergens: sesame, nuts"
    page.hide()
    again = shown(desk, qtbot)
    again.begin("bottling", bottling.id)
    assert again.labels()[0].text(F.ALLERGENS) == "Allergens: sesame, nuts"
    again.begin("batch", batch.id)
    assert again.labels()[0].text(F.ALLERGENS) == "Allergens: sesame"


def test_nothing_ticked_shows_samples_that_say_so_and_prints_nothing(page, tmp_path):
    page.picker.none.click()
    page.draw()
    assert page.labels() == ()
    assert not page.print.isEnabled()
    assert not page.save.isEnabled()
    assert "Tick" in page.picker.count.text()
    assert "samples" in page.notes.text()
    assert page.notes.isVisible()
    assert dark_dots(page) > 50
    assert reddish_dots(page) > 50
    page.save_pdf(str(tmp_path / "none.pdf"))
    assert not (tmp_path / "none.pdf").exists()


def test_a_click_on_the_tick_makes_a_label_and_shows_it(page, qtbot):
    page.picker.none.click()
    model = page.picker.models["vessel"]
    model.setData(model.index(0, NAME), Qt.CheckState.Checked, Qt.ItemDataRole.CheckStateRole)
    qtbot.waitUntil(page.save.isEnabled)
    (label,) = page.labels()
    assert label.text(F.NAME) == "Tall jar"
    assert dark_dots(page) > 50
    assert page.picker.count.text() == "1 label in all."


def test_space_ticks_and_digits_change_the_copies(page, qtbot):
    page.picker.none.click()
    table = page.picker.tables["vessel"]
    table.setFocus()
    table.setCurrentIndex(table.model().index(0, STAGE))
    QTest.keyClick(table, Qt.Key.Key_Space)
    assert list(page.picker.picked.values()) == [1]
    QTest.keyClick(table, Qt.Key.Key_7)
    editor = QApplication.focusWidget()
    QTest.keyClick(editor, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: list(page.picker.picked.values()) == [7])
    assert len(page.labels()) == 7
    QTest.keyClick(table, Qt.Key.Key_Space)
    assert page.picker.picked == {}


def test_copies_have_bounds_and_nonsense_changes_nothing(page):
    page.picker.none.click()
    model = page.picker.models["vessel"]
    cell = model.index(0, COPIES)
    assert model.setData(cell, 100_000)
    assert list(page.picker.picked.values()) == [200]
    assert not model.setData(cell, "many")
    assert list(page.picker.picked.values()) == [200]
    assert model.setData(cell, 0)
    assert page.picker.picked == {}


def test_several_kinds_at_once_each_as_suits_it(page, batch):
    page.picker.pick_only((f"batch:{batch.id}", f"culture:{batch.culture_id}"))
    assert [label.kind for label in page.labels()] == [LabelKind.JAR, LabelKind.CULTURE]
    page.words.kind.setCurrentIndex(1 + list(LabelKind).index(LabelKind.BOTTLE))
    assert {label.kind for label in page.labels()} == {LabelKind.BOTTLE}


def test_a_field_that_is_switched_off_leaves_every_label(page, batch, qtbot):
    page.begin("batch", batch.id)
    page.words.boxes[F.STAGE].click()
    (label,) = page.labels()
    assert label.text(F.STAGE) == ""
    page.words.boxes[F.QR].click()
    assert page.labels()[0].code == ""


def test_own_words_are_for_one_record_and_can_be_taken_back(page, batch, qtbot):
    page.picker.pick_only((f"batch:{batch.id}", f"culture:{batch.culture_id}"))
    line = page.words.lines[F.NAME]
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, "For a friend")
    first, second = page.labels()
    assert first.text(F.NAME) == "For a friend"
    assert second.text(F.NAME) == "Culture of Tall jar"
    qtbot.waitUntil(lambda: page.painter.job.labels == page.labels())
    page.words.as_recorded.click()
    assert page.labels()[0].text(F.NAME) == "Black tea 1"
    assert line.text() == "Black tea 1"


def test_what_does_not_fit_is_told(page, batch, qtbot):
    page.begin("batch", batch.id)
    assert not page.notes.isVisible()
    line = page.words.lines[F.INGREDIENTS]
    line.setText("water and tea, " * 300)
    line.textEdited.emit(line.text())
    qtbot.waitUntil(page.notes.isVisible)
    assert "Ingredients" in page.notes.text()
    assert "cut short" in page.notes.text()


def test_a_name_with_markup_is_shown_as_it_is(page, desk, batch):
    page.begin("batch", batch.id)
    line = page.words.lines[F.NAME]
    line.setText("<h1>Big</h1>" * 60)
    line.textEdited.emit(line.text())
    page.draw()
    assert "<h1>" in page.notes.text()
    assert page.notes.textFormat() is Qt.TextFormat.PlainText


def test_the_start_is_chosen_by_a_click_on_the_drawn_sheet(page, batch, qtbot):
    page.begin("batch", batch.id)
    page.tabs.setCurrentWidget(page.sheet)
    grid = page.sheet.grid
    at = grid.cell_px(7).center().toPoint()
    with qtbot.waitSignal(grid.start_chosen):
        QTest.mouseClick(grid, Qt.MouseButton.LeftButton, pos=at)
    page.draw()
    assert [position for position, _label in page.painter.on_page(0)] == [7]
    assert "Row 3, column 2" in grid.accessibleDescription()


def test_the_start_is_moved_by_keys_and_stays_on_the_sheet(page, qtbot):
    page.tabs.setCurrentWidget(page.sheet)
    grid = page.sheet.grid
    for key, start in (
        (Qt.Key.Key_Left, 0),
        (Qt.Key.Key_Right, 1),
        (Qt.Key.Key_Down, 4),
        (Qt.Key.Key_End, 23),
        (Qt.Key.Key_Down, 23),
        (Qt.Key.Key_Up, 20),
        (Qt.Key.Key_Home, 0),
    ):
        QTest.keyClick(grid, key)
        assert grid.start == start


def test_a_smaller_sheet_takes_back_a_start_it_does_not_have(page):
    page.sheet.grid.choose(23)
    page.sheet.choose("a4_2x4")
    assert page.sheet.grid.start == 0


def test_pages_turn_and_the_preview_zooms(page, batch):
    page.picker.pick_only((f"batch:{batch.id}",))
    page.picker.picked[f"batch:{batch.id}"] = 30
    page.draw()
    preview = page.preview
    assert preview.page_words.text() == "Page 1 of 2"
    assert not preview.back.isEnabled()
    preview.on.click()
    assert preview.page == 1
    assert not preview.on.isEnabled()
    preview.zoom.setCurrentIndex(preview.zoom.findData(0.0))
    whole = preview.canvas.width()
    preview.zoom.setCurrentIndex(preview.zoom.findData(2.0))
    assert preview.canvas.width() > 2 * whole


def test_a_pdf_is_saved_and_said_and_the_choices_are_kept(page, desk, batch, tmp_path, qtbot):
    page.begin("batch", batch.id)
    page.words.boxes[F.STAGE].click()
    page.sheet.choose("letter_2x5")
    line = page.words.lines[F.ALLERGENS]
    line.setText("sesame")
    line.textEdited.emit("sesame")
    path = tmp_path / "labels.pdf"
    page.save_pdf(str(path))
    assert "labels.pdf" in page.said.text()
    text = subprocess.run(["pdftotext", str(path), "-"], check=True, capture_output=True).stdout
    assert "Allergens: sesame" in text.decode()
    again = shown(desk, qtbot)
    again.begin("batch", batch.id)
    assert again.sheet.sheet().key == "letter_2x5"
    assert F.STAGE in again.words.hidden()
    assert again.labels()[0].text(F.ALLERGENS) == "Allergens: sesame"
    (tmp_path / "taken.pdf").mkdir()
    page.save_pdf(str(tmp_path / "taken.pdf"))
    assert "could not be written" in page.said.text()


def test_printing_opens_the_preview_with_the_sheets_paper(page, batch, qtbot):
    page.begin("batch", batch.id)
    page.print.click()
    preview = page.printing.preview
    assert isinstance(preview, QPrintPreviewDialog)
    size = preview.printer().pageLayout().pageSize()
    assert size.name().startswith("A4")
    assert preview.printer().docName() == "Label Black tea 1"
    preview.close()


def test_a_printer_without_the_paper_is_told_until_another_has_it(page):
    page.printing.painted.emit(False)
    assert "does not have the paper" in page.said.text()
    page.printing.painted.emit(True)
    assert page.said.text() == ""


def test_a_new_sheet_is_made_in_the_form_and_chosen(page, desk, qtbot):
    page.sheet.add.click()
    form = page.sheet.form
    form.name.setText("Small ones")
    for field, text in (("label_width_mm", "20"), ("label_height_mm", "0,5 in")):
        form.lines[field].setText(text)
    form.counts["columns"].setText("9")
    form.save()
    sheet = page.sheet.sheet()
    assert (sheet.name, sheet.columns) == ("Small ones", 9)
    assert sheet.label_height_mm == pytest.approx(12.7)
    assert page.sheet.remove.isEnabled()
    page.sheet.remove.click()
    assert desk.label_sheets.all() == starters()


def test_the_form_says_what_is_wrong_beside_the_field_and_keeps_nothing(desk, qtbot):
    form = SheetDialog(desk, starters()[0], "Measures")
    qtbot.addWidget(form)
    for field, text, words in (
        ("label_width_mm", "90", "270 mm wide"),
        ("gap_x_mm", "wide", "no number"),
        ("gap_y_mm", "-3", "between 0 mm and"),
    ):
        before = form.lines[field].text()
        form.lines[field].setText(text)
        form.save()
        assert words in form.rows[field].message.text()
        assert words in form.lines[field].accessibleDescription()
        form.lines[field].setText(before)
        assert form.rows[field].message.text() == ""
    form.counts["rows"].setText("two")
    form.save()
    assert "whole number" in form.rows["rows"].message.text()
    assert desk.label_sheets.all() == starters()


def test_a_roll_has_no_rows_and_no_height_and_takes_a_correction_below_nothing(desk, qtbot):
    form = SheetDialog(desk, starters()[-1], "Measures")
    qtbot.addWidget(form)
    form.show()
    assert not form.rows["rows"].isVisible()
    assert not form.rows["page_height_mm"].isVisible()
    form.lines["shift_y_mm"].setText("−1.5")
    with qtbot.waitSignal(form.saved):
        form.save()
    assert desk.label_sheets.all()[-1].shift_y_mm == pytest.approx(-1.5)


def test_every_control_has_a_name_for_screen_readers(page, batch):
    page.begin("batch", batch.id)
    for control in (
        page.words.kind, page.words.whose, page.sheet.choice, page.sheet.grid,
        page.picker.find_line, page.preview.zoom, page.preview.back, page.preview.area,
        *page.picker.tables.values(), *page.words.lines.values(),
    ):  # fmt: skip
        assert control.accessibleName()


def test_what_changes_in_the_pantry_changes_the_labels(page, desk, batch):
    page.picker.pick_only((f"batch:{batch.id}",))
    desk.batches.discard(batch.id, "too sour")
    assert page.picker.picked == {}
    assert page.labels() == ()


def test_the_jars_menu_leads_to_its_label(desk, batch, qtbot):
    sheet = JarSheet(desk)
    qtbot.addWidget(sheet)
    (jar,) = desk.shelf.jars()
    sheet.show_jar(jar)
    sheet.fill_menu()
    action = next(one for one in sheet._menu.actions() if "label" in one.text())
    with qtbot.waitSignal(sheet.label_wanted) as asked:
        action.trigger()
    assert asked.args == ["batch", batch.id] == list(label_record(jar))


def test_a_cultures_menu_offers_a_label_while_it_is_here(desk, batch):
    culture = desk.cultures.get(batch.culture_id)
    assert "label" in {spec.key for spec in offered(culture)}
    gone = desk.culture_care.lose
    gone(culture.id, "dried up", flag=False)
    lost = desk.cultures.get(culture.id)
    assert lost.state is CultureState.LOST
    assert "label" not in {spec.key for spec in offered(lost)}


def test_a_label_asked_for_while_the_page_is_hidden_is_there_when_it_is_shown(page, batch):
    page.hide()
    page.begin("culture", batch.culture_id)
    page.show()
    assert list(page.picker.picked) == [f"culture:{batch.culture_id}"]
    assert [label.kind for label in page.labels()] == [LabelKind.CULTURE]
    assert page.tabs.currentWidget() is page.words


def test_names_keep_the_larger_part_of_the_list(page):
    table = page.picker.tables["vessel"]
    header = table.horizontalHeader()
    assert header.sectionSize(NAME) > header.sectionSize(STAGE)
    assert header.length() <= table.viewport().width()


def test_a_page_as_wide_as_the_room_needs_no_bar_to_move_it_sideways(page, batch, qtbot):
    page.begin("batch", batch.id)
    area = page.preview.area
    for width in (900, 1100, 1500):
        page.resize(width, 700)
        qtbot.waitUntil(lambda: not area.horizontalScrollBar().isVisible())
        free = area.maximumViewportSize().width() - page.preview.canvas.width()
        bar = area.verticalScrollBar().sizeHint().width()
        assert free in range(4) or free - bar in range(4)
