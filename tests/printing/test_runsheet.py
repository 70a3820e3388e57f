"""The run sheet on paper, read back with tools that are not ours: pdftotext and pdftoppm."""

from __future__ import annotations

import subprocess
from dataclasses import replace

import pytest
from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrintPreviewWidget

from brewdesk.printing.runsheetpainter import RunStep, paint_run_sheet
from brewdesk.services.records import Material, VesselDraft, VesselShape
from brewdesk.widgets.printrunsheet import RunSheetDialog, file_name, write_pdf
from brewdesk.widgets.runsheetwords import run_sheet_of
from brewdesk.widgets.theme import FAMILY, load_fonts
from tests.helpers.pantry_desk import open_desk, plan_batch

SIZES = (QPageSize.PageSizeId.A4, QPageSize.PageSizeId.Letter)
LONG_NAME = "The wide crock with the chipped rim from the market in spring"[:60]
LONG_WORD = "W" * 60


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    load_fonts()
    yield made
    made.store.close()


@pytest.fixture
def sheet(desk):
    return run_sheet_of(desk, plan_batch(desk).id)


def long_sheet(desk, name):
    """A sheet with names as long as they may be and amounts of a small brewery."""
    vessel = desk.vessels.add(
        VesselDraft(
            name=name,
            shape=VesselShape.CYLINDER,
            material=Material.STAINLESS_STEEL,
            brim_volume_l=480.0,
            working_volume_l=450.0,
            inner_diameter_cm=70.0,
            place_id=desk.vessels.ensure_place().id,
        )
    )
    wish = desk.batches.default_wish(vessel.id)
    batch = desk.batches.plan(vessel.id, None, name, wish)
    return run_sheet_of(desk, batch.id)


def text_of(path):
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], check=True, capture_output=True, text=True
    )
    return done.stdout


def pages_of(path):
    done = subprocess.run(["pdfinfo", str(path)], check=True, capture_output=True, text=True)
    facts = dict(line.split(":", 1) for line in done.stdout.splitlines() if ":" in line)
    return int(facts["Pages"])


def picture_of(path, dpi=60):
    stem = path.with_suffix("")
    subprocess.run(
        ["pdftoppm", "-r", str(dpi), "-png", "-singlefile", str(path), str(stem)], check=True
    )
    return QImage(str(stem.with_suffix(".png")))


def ink_box(image):
    """The smallest rectangle around everything that is not paper."""
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows, columns = [], []
    for y in range(grey.height()):
        line = bytes(grey.constScanLine(y))[: grey.width()]
        dark = [x for x, value in enumerate(line) if value < 200]
        if dark:
            rows.append(y)
            columns += (dark[0], dark[-1])
    return QRectF(min(columns), min(rows), max(columns) - min(columns), max(rows) - min(rows))


@pytest.mark.parametrize("size", SIZES)
def test_everything_on_the_sheet_can_be_read_out_of_the_pdf(sheet, tmp_path, size):
    path = tmp_path / "sheet.pdf"
    assert write_pdf(sheet, path, size)

    text = " ".join(text_of(path).split())

    assert pages_of(path) == 1
    for words in (sheet.title, sheet.vessel, sheet.made_on, sheet.closing, sheet.footer):
        assert words in text
    for step in sheet.steps:
        assert step.text in text
        assert step.detail in text
    for caution in sheet.cautions:
        assert caution in text
    for row in (*sheet.amounts, sheet.total):
        assert all(cell in text for cell in row[:3])


def test_the_temperature_must_be_written_down_before_anything_live_goes_in(sheet, tmp_path):
    path = tmp_path / "sheet.pdf"
    write_pdf(sheet, path)
    text = text_of(path)

    blank = next(step.blank for step in sheet.steps if step.blank)
    assert "30.0 °C" in blank
    assert text.index("Let it cool") < text.index(blank) < text.index("Pour in the starter")


def test_the_sheet_tells_the_dangers_and_defers_to_local_rules(sheet):
    told = " ".join(sheet.cautions)

    assert "scalds" in told
    assert "mold" in told
    assert "4.2" in told
    assert "day 7" in told
    assert "where you live" in told
    assert "no guarantee" in sheet.footer


def test_the_amounts_on_the_sheet_add_up(sheet):
    for column in (1, 2):
        parts = [float(row[column].replace("−", "-") or "0") for row in sheet.amounts]
        assert sum(parts) == pytest.approx(float(sheet.total[column]), abs=1e-6)


def test_a_batch_without_a_culture_has_no_step_for_it(desk):
    sheet = long_sheet(desk, "Starter only")

    assert [step.text for step in sheet.steps if "culture" in step.text.casefold()] == []


@pytest.mark.parametrize("name", [LONG_NAME, LONG_WORD])
@pytest.mark.parametrize("size", SIZES)
def test_long_names_and_large_amounts_stay_inside_the_margins(desk, tmp_path, name, size):
    path = tmp_path / "long.pdf"
    assert write_pdf(long_sheet(desk, name), path, size)
    page = picture_of(path)
    box = ink_box(page)

    dots_per_mm = 60 / 25.4
    margin = 15.0 * dots_per_mm - 2.0  # a stroke's width and rounding
    assert pages_of(path) == 1
    assert box.left() >= margin
    assert box.top() >= margin
    assert page.width() - box.right() >= margin
    assert page.height() - box.bottom() >= margin
    assert box.width() > 0.7 * page.width()
    whole = "".join(text_of(path).split())
    assert whole.count("".join(name.split())) == 2  # the batch's name and the vessel's


def test_too_much_for_the_page_is_set_smaller_until_it_fits(sheet, qapp):
    page = QImage(QSize(1240, 1754), QImage.Format.Format_RGB32)  # A4 at 150 dots an inch
    page.setDotsPerMeterX(round(150 / 0.0254))
    page.setDotsPerMeterY(round(150 / 0.0254))
    page.fill(Qt.GlobalColor.white)
    room = QRectF(80, 80, 1080, 1594)
    crowded = replace(sheet, steps=sheet.steps + (RunStep(text="Stir", detail="Once."),) * 14)
    painter = QPainter(page)
    usual = paint_run_sheet(painter, sheet, room, FAMILY)
    page.fill(Qt.GlobalColor.white)
    took = paint_run_sheet(painter, crowded, room, FAMILY)
    painter.end()

    assert usual.height() <= room.height()
    assert took.height() <= room.height()
    assert room.adjusted(-2, -2, 2, 2).contains(ink_box(page))


def test_the_page_is_dark_on_white_whatever_the_window_wears(sheet, qtbot, qapp):
    dialog = RunSheetDialog(sheet)
    qtbot.addWidget(dialog)
    dialog.setStyleSheet("QWidget { background: black; color: white; }")
    dialog.open()
    page = dialog.page.grab().toImage()
    dialog.close()

    middle = page.width() // 2
    assert page.pixelColor(middle, 30).lightness() > 250  # the upper margin
    greys = page.convertToFormat(QImage.Format.Format_Grayscale8)
    values = [v for y in range(60, 500) for v in bytes(greys.constScanLine(y))[200 : middle + 200]]
    assert sum(v > 200 for v in values) > 0.7 * len(values)
    assert min(values) < 80


def test_saving_as_pdf_says_that_it_was_done(sheet, qtbot, tmp_path):
    dialog = RunSheetDialog(sheet)
    qtbot.addWidget(dialog)
    path = tmp_path / file_name(sheet.title)

    dialog.save_pdf(str(path))

    assert path.read_bytes().startswith(b"%PDF-")
    assert path.name in dialog.said.text()


def test_a_file_that_cannot_be_written_is_told_and_not_taken_for_saved(sheet, qtbot, tmp_path):
    dialog = RunSheetDialog(sheet)
    qtbot.addWidget(dialog)
    (tmp_path / "taken.pdf").mkdir()  # a folder stands where the file should go

    dialog.save_pdf(str(tmp_path / "taken.pdf"))

    assert "could not be written" in dialog.said.text()


def test_the_paper_can_be_chosen(sheet, qtbot):
    dialog = RunSheetDialog(sheet)
    qtbot.addWidget(dialog)
    tall = dialog.page.minimumHeight()

    dialog.paper.setCurrentIndex(1)

    assert dialog.paper_size() is QPageSize.PageSizeId.Letter
    assert dialog.page.minimumHeight() < tall


def test_the_print_preview_paints_the_same_page(sheet, qtbot):
    dialog = RunSheetDialog(sheet)
    qtbot.addWidget(dialog)
    dialog.open()
    painted = []
    qtbot.mouseClick(dialog.print, Qt.MouseButton.LeftButton)
    preview = dialog._printing
    preview.paintRequested.connect(lambda printer: painted.append(printer.pageLayout().margins()))
    with qtbot.waitSignal(preview.paintRequested):
        preview.resize(700, 900)
        preview.findChild(QPrintPreviewWidget).updatePreview()

    assert painted
    assert painted[0].left() == pytest.approx(15.0, abs=0.5)
    preview.close()
    dialog.close()


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("Black tea 1", "Black tea 1.pdf"),
        ("a/b\\c:d", "a_b_c_d.pdf"),
        ("  ", "run sheet.pdf"),
        ("Grüner Tee", "Grüner Tee.pdf"),
    ],
)
def test_the_file_is_named_after_the_batch(title, name):
    assert file_name(title) == name
