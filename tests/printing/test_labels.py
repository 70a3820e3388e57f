"""Labels on paper, read back with tools that are not ours: poppler measures, ZXing decodes.

The frames must lie within 0.2 mm of their places, every QR code (ISO/IEC 18004) must be read
from a page of 150 dots an inch, and the words from the PDF itself.
"""

from __future__ import annotations

import subprocess
from dataclasses import replace
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest
import zxingcpp
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtPrintSupport import QPrinter

from brewdesk.printing.codeplaces import LEAST_MODULE_MM
from brewdesk.printing.labelfitting import LEAST_PT, fit_label
from brewdesk.printing.qrpainter import QUIET_MODULES, modules_of
from brewdesk.printing.sheetpainter import LabelJob, SheetPainter, page_layout, ruler_mm
from brewdesk.services.labelgeometry import cell_mm
from brewdesk.services.labels import OFFERED, LabelFacts, LabelField, LabelKind, label_content
from brewdesk.services.labelsheets import starters
from brewdesk.widgets.printlabels import (
    CalibrationPage,
    LabelPages,
    LabelPrinting,
    is_other_paper,
    write_pdf,
)
from brewdesk.widgets.theme import FAMILY, load_fonts
from tests.helpers.paper import (
    CLOSE_MM,
    MM_PER_INCH,
    codes_on,
    ink_box_mm,
    off_by_mm,
    page_of,
    pages_of,
    text_of,
)

F = LabelField
DAY = datetime(2026, 11, 25, 12, tzinfo=UTC)
HOSTILE = {
    "markup": "<b>Bold</b> <img src=x> &amp; {name} %1",
    "right to left": "תה שחור 12",
    "ten thousand signs": "long " * 2000,
    "one endless word": "W" * 10_000,
    "lines": "one\ntwo\r\nthree\tfour",
    "turned around": "\u202egnorw\u202c end",
}
MARKS = dict.fromkeys(map(ord, "\u202a\u202b\u202c\u200e\u200f"))
SHEETS = {sheet.key: sheet for sheet in starters()}


@pytest.fixture(autouse=True)
def _fonts(qapp):
    load_fonts()


def content(number=1, **changed):
    values = {
        "record": "batch",
        "record_id": number,
        "kind": LabelKind.BOTTLE,
        "name": f"Ginger {number}",
        "made_on": DAY,
        "best_before": DAY,
        "allergens": "none known",
    }
    facts = LabelFacts(**(values | changed))
    return label_content(facts, zone=ZoneInfo("Europe/Berlin"), pantry_uid="0f3a9c2e77")


def write(path, sheet, labels, **job):
    painter = SheetPainter(LabelJob(sheet=sheet, labels=tuple(labels), **job), FAMILY)
    assert write_pdf(LabelPages(painter, "Labels"), path)
    return painter


@pytest.mark.parametrize("dpi", [150, 300])
@pytest.mark.parametrize("key", sorted(SHEETS))
def test_frames_lie_in_their_places_on_a_full_page(tmp_path, key, dpi):
    sheet = SHEETS[key]
    write(tmp_path / "a.pdf", sheet, [content(n) for n in range(1, sheet.per_page + 1)])
    page = page_of(tmp_path / "a.pdf", dpi)
    cells = [cell_mm(sheet, position) for position in range(sheet.per_page)]
    off = [each for cell in cells for each in off_by_mm(page, sheet, cell, dpi)]
    assert len(off) >= 2 * len(cells)
    assert max(off) <= CLOSE_MM


@pytest.mark.parametrize("dpi", [150, 300])
def test_a_single_frame_is_found_where_it_should_be_without_knowing_where_to_look(tmp_path, dpi):
    sheet = SHEETS["a4_2x4"]
    write(tmp_path / "a.pdf", sheet, [content()], start=5)
    cell = cell_mm(sheet, 5)
    found = ink_box_mm(page_of(tmp_path / "a.pdf", dpi), dpi)
    assert found == pytest.approx((cell.x, cell.right, cell.y, cell.bottom), abs=CLOSE_MM)


@pytest.mark.parametrize("key", sorted(SHEETS))
def test_every_code_is_read_from_a_page_of_150_dots_an_inch(tmp_path, key):
    sheet = SHEETS[key]
    labels = [content(n) for n in range(1, sheet.per_page + 3)]
    write(tmp_path / "a.pdf", sheet, labels)
    found = []
    for page in range(1, pages_of(tmp_path / "a.pdf") + 1):
        found += codes_on(page_of(tmp_path / "a.pdf", 150, page))
    assert sorted(found) == sorted(label.code for label in labels)


@pytest.mark.parametrize(
    "size", [(59.0, 29.0), (99.0, 67.0), (101.6, 50.8), (66.7, 25.4), (40.0, 60.0)]
)
@pytest.mark.parametrize("kind", list(LabelKind))
def test_all_that_a_kind_offers_stands_on_labels_of_all_sizes(kind, size):
    """Longer texts may be cut, and that is told; everyday ones must not be."""
    made = content(
        kind=kind, stage="Souring", taste_from=DAY, chill_by=DAY, feed_by=DAY,
        ingredients="Water, live kombucha culture, sugar, black tea, ginger",
    )  # fmt: skip
    fitted = fit_label(made, *size, FAMILY, 1.5)
    assert fitted.notes == ()
    assert {block.field for block in fitted.blocks} | {F.QR} == OFFERED[kind]
    assert fitted.code_place is not None


def test_the_words_below_the_code_use_the_labels_whole_width():
    fitted = fit_label(content(ingredients="Water, tea, sugar"), 99.0, 67.0, FAMILY)
    beside = {block.field: block.place for block in fitted.blocks}
    assert beside[F.NAME].right <= fitted.code_place.x
    assert beside[F.INGREDIENTS].right > fitted.code_place.x
    assert beside[F.INGREDIENTS].y > fitted.rule.y > beside[F.BEST_BEFORE].bottom


def test_a_long_name_is_set_smaller_before_it_takes_a_second_line():
    short, longer = (
        fit_label(content(name=name), 99.0, 67.0, FAMILY).blocks[0]
        for name in ("Ginger", "Ginger and raspberry 12")
    )
    assert longer.size_pt < short.size_pt
    assert longer.place.height < short.place.height


def test_a_code_of_the_largest_ids_is_read_too(tmp_path):
    label = content(2**53, record="bottling")
    write(tmp_path / "a.pdf", SHEETS["letter_3x10"], [label])
    assert codes_on(page_of(tmp_path / "a.pdf", 150)) == [label.code]


def test_codes_mend_damage_as_level_m_promises():
    """ISO/IEC 18004 gives level M about 15 %; a blot of a twentieth of the code is less."""
    modules = np.array(modules_of(content().code))
    blotted = modules.copy()
    side = len(modules)
    edge = int((0.05 * side * side) ** 0.5)
    blotted[side - edge - 2 : side - 2, side - edge - 2 : side - 2] = True
    assert (blotted != modules).any()
    framed = np.pad(~blotted, QUIET_MODULES, constant_values=True)
    image = np.kron(framed, np.ones((6, 6))).astype(np.uint8) * 255
    assert [found.text for found in zxingcpp.read_barcodes(image)] == [content().code]


@pytest.mark.parametrize("key", ["a4_3x8", "a4_2x4", "letter_2x5", "roll_62x40"])
def test_the_words_can_be_read_out_of_the_pdf(tmp_path, key):
    label = content(ingredients="Water, tea, sugar")
    painter = write(tmp_path / "a.pdf", SHEETS[key], [label])
    assert painter.notes() == ()
    text = text_of(tmp_path / "a.pdf")
    for line in label.lines:
        assert line.text in text


@pytest.mark.parametrize("name", HOSTILE.values(), ids=HOSTILE.keys())
@pytest.mark.parametrize("key", ["a4_3x8", "letter_3x10", "roll_62x40"])
def test_hostile_words_stand_as_text_inside_their_label(tmp_path, key, name):
    sheet = SHEETS[key]
    start = 1 if sheet.per_page > 1 else 0
    label = content(name=name, ingredients=name, allergens=name)
    painter = write(tmp_path / "a.pdf", sheet, [label], start=start)
    cell = cell_mm(sheet, start)
    left, right, top, bottom = ink_box_mm(page_of(tmp_path / "a.pdf", 150), 150)
    assert left >= cell.x - CLOSE_MM
    assert right <= cell.right + CLOSE_MM
    assert top >= cell.y - CLOSE_MM
    assert bottom <= cell.bottom + CLOSE_MM
    # poppler marks the writing direction with signs of its own
    text = "".join(text_of(tmp_path / "a.pdf").split()).translate(MARKS)
    shown = "".join(painter.fitted(label).blocks[0].text.split())
    assert sorted(shown) == sorted(text[: len(shown)])
    told = {note.field: note.reason for _label, note in painter.notes()}
    is_whole = shown == "".join(label.text(F.NAME).split()) and F.NAME not in label.cut
    assert is_whole is (F.NAME not in told)


def word_heights_pt(path):
    done = subprocess.run(
        ["pdftotext", "-bbox", str(path), "-"], check=True, capture_output=True, text=True
    )
    words = [line for line in done.stdout.splitlines() if "<word " in line]
    spots = [dict(part.split("=") for part in word.split(">")[0].split()[1:]) for word in words]
    return [float(spot["yMax"].strip('"')) - float(spot["yMin"].strip('"')) for spot in spots]


def test_no_word_is_set_below_the_least_size(tmp_path):
    crowded = content(name="Much to say " * 30, ingredients="this and that, " * 80)
    painter = write(tmp_path / "a.pdf", SHEETS["letter_3x10"], [crowded])
    assert min(block.size_pt for block in painter.fitted(crowded).blocks) == LEAST_PT
    heights = word_heights_pt(tmp_path / "a.pdf")
    assert heights
    assert min(heights) >= LEAST_PT  # a word's box is the type's full height


texts = st.text(st.characters(codec="utf-8"), max_size=300)


@settings(max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    name=texts,
    ingredients=texts,
    allergens=st.text("nuts, milk. ", max_size=400),
    width=st.floats(20.0, 120.0),
    height=st.floats(10.0, 120.0),
)
def test_whatever_is_written_stays_inside_and_what_is_cut_is_told(
    name, ingredients, allergens, width, height
):
    label = content(name=name or "x", ingredients=ingredients, allergens=allergens)
    fitted = fit_label(label, width, height, FAMILY)
    told = {note.field for note in fitted.notes}
    top = 0.0
    for block in fitted.blocks:
        assert block.size_pt >= LEAST_PT
        assert block.place.y >= top
        top = block.place.bottom
        assert block.place.x >= 0
        assert block.place.right <= width
        if block.text != label.text(block.field):
            assert block.field in told
    if len(fitted.blocks) > 1 or F.NAME not in told:
        assert top <= height
    assert {line.field for line in label.lines} - {block.field for block in fitted.blocks} <= told
    if fitted.code_place is None:
        assert F.QR in told
    else:
        code = fitted.code_place
        assert code.x >= 0
        assert code.right <= width
        assert code.bottom <= height
        module = code.width / (len(fitted.modules) + 2 * QUIET_MODULES)
        assert module >= LEAST_MODULE_MM - 1e-9
        for block in fitted.blocks:
            is_beside = block.place.right <= code.x + 1e-6
            assert is_beside or block.place.y < code.y or block.place.y >= code.bottom - 1e-6


def test_allergens_and_cautions_outlast_everything_else():
    label = content(ingredients="this and that, " * 60, allergens="may hold nuts")
    fitted = fit_label(label, 62.0, 20.0, FAMILY)
    kept = {block.field: block.text for block in fitted.blocks}
    assert kept[F.ALLERGENS] == label.text(F.ALLERGENS)
    assert kept[F.UNDER_PRESSURE] == label.text(F.UNDER_PRESSURE)
    assert F.INGREDIENTS in {note.field for note in fitted.notes}


def test_copies_start_where_they_should_and_run_over_pages(tmp_path):
    sheet = SHEETS["a4_2x4"]
    labels = [content(1)] * 5 + [content(2)] * 6
    painter = write(tmp_path / "a.pdf", sheet, labels, start=3)
    assert pages_of(tmp_path / "a.pdf") == painter.pages == 2
    assert [position for position, _label in painter.on_page(0)] == [3, 4, 5, 6, 7]
    first = codes_on(page_of(tmp_path / "a.pdf", 150, 1))
    second = codes_on(page_of(tmp_path / "a.pdf", 150, 2))
    assert first == [content(1).code] * 5
    assert second == [content(2).code] * 6


def test_without_outlines_nothing_is_drawn_on_the_labels_edge(tmp_path):
    sheet = SHEETS["a4_2x4"]
    write(tmp_path / "a.pdf", sheet, [content()], has_frames=False)
    cell = cell_mm(sheet, 0)
    left, _right, top, _bottom = ink_box_mm(page_of(tmp_path / "a.pdf", 150), 150)
    assert left > cell.x + 1.0
    assert top > cell.y + 1.0


def test_the_correction_moves_and_stretches_what_is_printed(tmp_path):
    sheet = replace(
        SHEETS["a4_2x4"], shift_x_mm=1.5, shift_y_mm=-2.0, ruler_x_mm=99.0, ruler_y_mm=101.0
    )
    write(tmp_path / "a.pdf", sheet, [content()], start=5)
    cell = cell_mm(sheet, 5)
    wanted = (
        1.5 + cell.x * 100 / 99, 1.5 + cell.right * 100 / 99,
        -2.0 + cell.y * 100 / 101, -2.0 + cell.bottom * 100 / 101,
    )  # fmt: skip
    assert ink_box_mm(page_of(tmp_path / "a.pdf", 300), 300) == pytest.approx(wanted, abs=CLOSE_MM)


def longest_run_mm(line, dpi):
    """The longest unbroken stretch of dark dots in a line, in mm."""
    edges = np.flatnonzero(np.diff(np.concatenate(([0], (line > 0.3).astype(int), [0]))))
    return max(np.diff(edges)[::2], default=0) * MM_PER_INCH / dpi


@pytest.mark.parametrize("ruler_mm_read", [100.0, 98.0])
def test_the_rulers_of_the_test_page_are_100_mm_whatever_the_correction(tmp_path, ruler_mm_read):
    sheet = replace(SHEETS["letter_2x5"], ruler_x_mm=ruler_mm_read, ruler_y_mm=ruler_mm_read)
    assert write_pdf(CalibrationPage(sheet), tmp_path / "t.pdf")
    page = page_of(tmp_path / "t.pdf", 300)
    width, height = sheet.page_mm
    dots = 300 / MM_PER_INCH
    near = slice(int((0.45 * height - 0.4) * dots), int((0.45 * height + 0.4) * dots) + 1)
    across = max(longest_run_mm(line, 300) for line in page[near])
    at = (width - 100.0) / 4
    beside = slice(int((at - 0.4) * dots), int((at + 0.4) * dots) + 1)
    down = max(longest_run_mm(line, 300) for line in page[:, beside].T)
    assert across == pytest.approx(100.0, abs=CLOSE_MM + 0.2)  # and the width of the end ticks
    assert down == pytest.approx(100.0, abs=CLOSE_MM + 0.2)
    assert "Both lines are 100 mm" in text_of(tmp_path / "t.pdf")


def test_a_narrow_rolls_test_page_has_a_shorter_ruler_and_says_so(tmp_path):
    sheet = SHEETS["roll_62x40"]
    assert ruler_mm(sheet.page_mm[0]) == 50.0
    assert write_pdf(CalibrationPage(sheet), tmp_path / "t.pdf")
    assert pages_of(tmp_path / "t.pdf") == 1
    text = text_of(tmp_path / "t.pdf")
    assert "across is 50 mm long and the line down 20 mm" in text
    assert "by 2 and 5" in text


def test_a_printer_gets_the_same_page_as_the_file(tmp_path, qtbot):
    sheet = SHEETS["letter_2x5"]
    painter = SheetPainter(LabelJob(sheet=sheet, labels=(content(),), start=3), FAMILY)
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "p.pdf"))
    printer.setPageLayout(page_layout(sheet))
    from PySide6.QtWidgets import QWidget

    window = QWidget()
    qtbot.addWidget(window)
    LabelPrinting(window).paint(LabelPages(painter, "Labels"), printer)
    assert not is_other_paper(printer, sheet)
    assert is_other_paper(printer, SHEETS["a4_3x8"])
    cell = cell_mm(sheet, 3)
    page = page_of(tmp_path / "p.pdf", 150)
    wanted = (cell.x, cell.right, cell.y, cell.bottom)
    assert ink_box_mm(page, 150) == pytest.approx(wanted, abs=CLOSE_MM)
    assert codes_on(page) == [content().code]


def test_a_file_that_cannot_be_written_is_told(tmp_path):
    painter = SheetPainter(LabelJob(sheet=SHEETS["a4_3x8"], labels=(content(),)), FAMILY)
    (tmp_path / "taken.pdf").mkdir()
    assert not write_pdf(LabelPages(painter, "Labels"), tmp_path / "taken.pdf")
