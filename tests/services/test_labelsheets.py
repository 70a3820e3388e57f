"""Sheets in millimetres: nothing overlaps, nothing leaves the paper, what is kept comes back."""

from __future__ import annotations

import json
import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.labelgeometry import (
    LabelSheet,
    cell_at,
    cell_mm,
    page_count,
    problems_of,
)
from brewdesk.services.labelsheets import (
    CHOICES_KEY,
    MOST_TEXTS,
    SHEETS_KEY,
    LabelChoices,
    new_key,
    starters,
)
from brewdesk.services.records import ImpossibleInput
from brewdesk.services.wording.labels import sheet_field_words, sheet_problem_words
from tests.helpers.pantry_desk import open_desk

SLACK_MM = 1e-6
lengths = st.floats(5.0, 60.0)
gaps = st.floats(0.0, 12.0)


@st.composite
def sheets(draw):
    """A sheet whose labels fit on its paper, built up from the labels."""
    columns, rows = draw(st.integers(1, 8)), draw(st.integers(1, 16))
    width, height = draw(lengths), draw(lengths)
    gap_x, gap_y = draw(gaps), draw(gaps)
    left, top = draw(gaps), draw(gaps)
    page_width = left + columns * width + (columns - 1) * gap_x + draw(gaps)
    page_height = top + rows * height + (rows - 1) * gap_y + draw(gaps)
    return LabelSheet(
        key="own_1", name="Made up", page_width_mm=page_width, page_height_mm=page_height,
        margin_left_mm=left, margin_top_mm=top, columns=columns, rows=rows,
        label_width_mm=width, label_height_mm=height, gap_x_mm=gap_x, gap_y_mm=gap_y,
        is_roll=draw(st.booleans()),
    )  # fmt: skip


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    yield made
    made.store.close()


def overlap(one, other):
    wide = min(one.right, other.right) - max(one.x, other.x)
    high = min(one.bottom, other.bottom) - max(one.y, other.y)
    return max(0.0, wide) * max(0.0, high)


@given(sheets())
def test_labels_stay_on_the_paper_apart_from_each_other_and_of_one_size(sheet):
    cells = [cell_mm(sheet, position) for position in range(sheet.per_page)]
    width, height = sheet.page_mm
    for cell in cells:
        assert cell.x >= 0
        assert cell.y >= 0
        assert cell.right <= width + SLACK_MM
        assert cell.bottom <= height + SLACK_MM
        assert (cell.width, cell.height) == (sheet.label_width_mm, sheet.label_height_mm)
    for number, cell in enumerate(cells[:40]):
        assert all(overlap(cell, other) < 1e-3 for other in cells[number + 1 : number + 20])


@given(sheets(), st.floats(0.01, 0.99), st.floats(0.01, 0.99), st.integers(0, 200))
def test_a_point_inside_a_label_finds_it(sheet, across, down, number):
    position = number % sheet.per_page
    cell = cell_mm(sheet, position)
    assert cell_at(sheet, cell.x + across * cell.width, cell.y + down * cell.height) == position


@given(sheets())
def test_rows_are_filled_from_the_left_and_the_pitch_is_even(sheet):
    first = cell_mm(sheet, 0)
    for position in range(sheet.per_page):
        row, column = position // sheet.columns, position % sheet.columns
        cell = cell_mm(sheet, position)
        pitch_x = sheet.label_width_mm + sheet.gap_x_mm
        pitch_y = sheet.label_height_mm + sheet.gap_y_mm
        assert math.isclose(cell.x, first.x + column * pitch_x, abs_tol=1e-9)
        assert math.isclose(cell.y, first.y + row * pitch_y, abs_tol=1e-9)


@given(sheets(), st.integers(0, 400), st.integers(0, 200))
def test_pages_hold_all_labels_and_none_is_empty(sheet, labels, number):
    start = number % sheet.per_page
    pages = page_count(sheet, labels, start)
    assert pages * sheet.per_page >= labels + (start if labels else 0)
    if labels:
        assert (pages - 1) * sheet.per_page < labels + start


@given(sheets())
def test_a_sheet_built_from_its_labels_has_no_problem_and_a_smaller_paper_has(sheet):
    assert problems_of(sheet) == ()
    narrow = replace(sheet, page_width_mm=sheet.page_width_mm / 2)
    taken = sheet.margin_left_mm + sheet.columns * sheet.label_width_mm
    taken += (sheet.columns - 1) * sheet.gap_x_mm
    fields = {problem.field for problem in problems_of(narrow)}
    if narrow.page_width_mm < taken - SLACK_MM:
        assert fields & {"label_width_mm", "page_width_mm"}


def test_outside_the_page_there_is_no_label():
    sheet = starters()[0]
    with pytest.raises(IndexError):
        cell_mm(sheet, sheet.per_page)
    with pytest.raises(IndexError):
        cell_mm(sheet, -1)
    assert cell_at(sheet, 105.0, 1.0) is None


def test_starters_are_sound_and_named_by_numbers_alone():
    for sheet in starters():
        assert problems_of(sheet) == ()
        assert any(sign.isdigit() for sign in sheet.name)
        words = {word for word in sheet.name.replace(",", " ").split() if word.isalpha()}
        assert words <= {"US", "Letter", "Roll", "mm", "wide", "labels", "long"}
    assert len({sheet.key for sheet in starters()}) == len(starters())


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("name", "  "),
        ("name", "n" * 61),
        ("columns", 0),
        ("rows", 61),
        ("page_width_mm", float("nan")),
        ("label_width_mm", 4.0),
        ("label_width_mm", 80.0),
        ("label_height_mm", 40.0),
        ("margin_left_mm", -1.0),
        ("gap_x_mm", -0.1),
        ("corner_mm", 19.0),
        ("shift_x_mm", 21.0),
        ("ruler_y_mm", 80.0),
    ],
)
def test_what_is_wrong_is_told_at_its_field_in_words(field, value):
    wrong = replace(starters()[0], **{field: value})
    problems = problems_of(wrong)
    assert [problem.field for problem in problems] == [field]
    assert len(sheet_problem_words(problems[0])) > 15
    assert sheet_field_words(field)


def test_a_sheet_is_kept_changed_and_forgotten(desk, tmp_path):
    own = replace(starters()[0], key=new_key(), name="  My   sheet ", shift_x_mm=-0.5)
    kept = desk.label_sheets.save(own)
    assert kept.name == "My sheet"
    assert desk.label_sheets.all()[-1] == kept
    assert desk.label_sheets.get(kept.key) == kept
    desk.label_sheets.remove(kept.key)
    assert desk.label_sheets.all() == starters()
    assert desk.label_sheets.get(kept.key) == starters()[0]


def test_a_starter_keeps_a_correction_until_it_is_taken_back(desk):
    first = starters()[0]
    desk.label_sheets.save(replace(first, ruler_x_mm=99.0))
    assert desk.label_sheets.get(first.key).scale == (100.0 / 99.0, 1.0)
    assert desk.label_sheets.is_changed(first.key)
    assert len(desk.label_sheets.all()) == len(starters())
    desk.label_sheets.remove(first.key)
    assert desk.label_sheets.get(first.key) == first


def test_a_sheet_that_cannot_be_is_not_kept(desk):
    with pytest.raises(ImpossibleInput):
        desk.label_sheets.save(replace(starters()[0], columns=9))
    assert desk.label_sheets.all() == starters()


def put(desk, key, text):
    with desk.store.write() as unit:
        unit.settings.put(key, text)


@pytest.mark.parametrize(
    "text",
    [
        "", "{", "[]", "null", "7", '{"a": 1}', '[{"key": "x"}]', "[null, 3, []]", "[" * 5000,
        '[{"key": "own_1", "name": "n", "page_width_mm": NaN}]',
    ],
)  # fmt: skip
def test_nonsense_in_the_store_leaves_the_starters(desk, text):
    put(desk, SHEETS_KEY, text)
    put(desk, CHOICES_KEY, text)
    assert desk.label_sheets.all() == starters()
    assert desk.label_sheets.choices() == LabelChoices()


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("columns", 3.5), ("columns", True), ("columns", "3"), ("page_width_mm", "210"),
        ("page_width_mm", None), ("page_width_mm", 1e300), ("is_roll", 1), ("key", ""),
        ("name", 7), ("label_width_mm", -70),
    ],
)  # fmt: skip
def test_one_bad_entry_does_not_take_the_good_ones_with_it(desk, field, value):
    good = desk.label_sheets.save(replace(starters()[1], key="own_good"))
    with desk.store.read() as unit:
        rows = json.loads(unit.settings.get(SHEETS_KEY))
    bad = rows[0] | {"key": "own_bad", field: value}
    put(desk, SHEETS_KEY, json.dumps([bad, *rows]))
    assert desk.label_sheets.all() == (*starters(), good)


def test_whole_numbers_are_lengths_too(desk):
    good = desk.label_sheets.save(replace(starters()[1], key="own_good"))
    with desk.store.read() as unit:
        rows = json.loads(unit.settings.get(SHEETS_KEY))
    put(desk, SHEETS_KEY, json.dumps([rows[0] | {"page_width_mm": 210}]))
    assert desk.label_sheets.get(good.key).page_width_mm == 210.0


def test_choices_come_back_and_only_the_newest_words_are_kept(desk):
    texts = {f"batch:{number}": {"allergens": "none"} for number in range(MOST_TEXTS + 5)}
    texts["batch:0"] = {}
    chosen = LabelChoices(sheet_key="a4_2x4", kind="jar", hidden=("qr",), texts=texts)
    desk.label_sheets.keep_choices(chosen)
    back = desk.label_sheets.choices()
    assert (back.sheet_key, back.kind, back.hidden) == ("a4_2x4", "jar", ("qr",))
    assert back.has_frames
    assert len(back.texts) == MOST_TEXTS
    assert list(back.texts)[-1] == f"batch:{MOST_TEXTS + 4}"
