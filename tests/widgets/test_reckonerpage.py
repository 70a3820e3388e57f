"""Single questions asked through the real page: keys and clicks in, words out."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit

from brewdesk.services.reckoner.catalogue import all_questions
from brewdesk.services.records import Kind, Level
from brewdesk.services.settings import CULTURE_LIMIT_C
from brewdesk.widgets.fields import choose
from brewdesk.widgets.reckonerpage import ReckonerPage
from tests.helpers.worn_theme import worn_theme


@pytest.fixture
def page(desk, qtbot):
    made = ReckonerPage(desk, reply_delay_ms=0)
    qtbot.addWidget(made)
    made.resize(1180, 760)
    made.show()
    return made


def type_into(page, key, text):
    line = page.form().findChild(QLineEdit, f"reckoner_{key}")
    line.selectAll()
    QTest.keyClicks(line, text)
    page.reply()


def pick(page, key, value):
    choose(page.form().findChild(QComboBox, f"reckoner_{key}"), value)
    page.reply()


def said(page):
    """Every word that can be seen in the answer."""
    return " ".join(
        label.text() for label in page.answer.findChildren(QLabel) if label.isVisibleTo(page)
    )


def message(page, key):
    return page.form().rows[key].message


def test_it_opens_with_the_first_question_answered(page):
    first = all_questions()[0]
    assert page.question().key == first.key
    assert page.heading.text() == first.title
    assert page.answer.figure.text() == "Mild"


def test_an_answer_follows_what_is_typed(page):
    page.list.choose("boiling_point")
    assert page.answer.figure.text() == "98.3 °C"
    type_into(page, "altitude_m", "1500")
    assert page.answer.figure.text() == "95.0 °C"
    assert "At 1500 m water boils" in page.answer.sentence.text()


def test_the_answer_comes_by_itself_a_moment_after_the_last_key(page, qtbot):
    page.list.choose("from_brix")
    line = page.form().findChild(QLineEdit, "reckoner_brix")
    line.selectAll()
    QTest.keyClicks(line, "10")
    qtbot.waitUntil(lambda: page.answer.figure.text() == "104 g/L")


def test_an_amount_may_be_typed_in_any_common_unit(page):
    page.list.choose("boiling_point")
    page.list.choose("level")
    type_into(page, "volume_l", "1 gal")
    assert message(page, "volume_l").text() == "= 3.79 L"
    assert page.answer.figure.text() == "21.4 cm"


def test_nothing_typed_is_lost_on_the_way_to_another_question(page):
    page.list.choose("boiling_point")
    type_into(page, "altitude_m", "1500 m")
    page.list.choose("level")
    type_into(page, "volume_l", "two litres")
    page.list.choose("boiling_point")
    assert page.form().findChild(QLineEdit, "reckoner_altitude_m").text() == "1500 m"
    assert page.answer.figure.text() == "95.0 °C"
    page.list.choose("level")
    assert page.form().findChild(QLineEdit, "reckoner_volume_l").text() == "two litres"
    assert page.answer.figure.isHidden() or not page.answer.figure.isVisible()


def test_the_entries_can_begin_anew(page, qtbot):
    page.list.choose("boiling_point")
    assert not page.form().again.isEnabled()
    type_into(page, "altitude_m", "1500")
    qtbot.mouseClick(page.form().again, Qt.MouseButton.LeftButton)
    page.reply()
    assert page.answer.figure.text() == "98.3 °C"
    assert not page.form().again.isEnabled()


def test_what_cannot_be_is_said_beside_its_entry_and_the_old_answer_dims(page):
    page.list.choose("boiling_point")
    type_into(page, "altitude_m", "20000")
    assert message(page, "altitude_m").is_error
    assert "−500 m" in message(page, "altitude_m").text().replace("-", "−")
    assert "9000 m" in message(page, "altitude_m").text()
    assert page.answer.state.is_error
    assert page.answer.figure.text() == "98.3 °C"
    type_into(page, "altitude_m", "200")
    assert not message(page, "altitude_m").is_error
    assert page.answer.state.isHidden()


def test_a_reading_that_contradicts_another_is_marked_where_it_was_typed(page):
    page.list.choose("cooling")
    type_into(page, "temperature_2", "56")
    assert "not cooled" in message(page, "temperature_2").text()


def test_an_empty_entry_that_is_needed_is_waited_for(page):
    page.list.choose("level")
    type_into(page, "volume_l", "0")
    line = page.form().findChild(QLineEdit, "reckoner_volume_l")
    line.clear()
    page.reply()
    assert page.answer.state.text() == "Waiting for the marked entry."


def test_an_answer_that_is_withheld_says_why_and_shows_no_figure(page):
    page.list.choose("gauge_reading")
    kinds = page.form().findChild(QComboBox, "reckoner_kind")
    kinds.setCurrentIndex(kinds.count() - 1)
    page.reply()
    assert "not made for pressure" in page.answer.withheld.text()
    assert page.answer.withheld.isVisible()
    assert not page.answer.figure.isVisible()


def test_a_stop_stands_above_the_figure(page):
    page.list.choose("prime")
    kinds = page.form().findChild(QComboBox, "reckoner_kind")
    kinds.setCurrentIndex(kinds.count() - 1)
    page.reply()
    stop = page.answer.cards[0]
    assert stop.verdict.level is Level.STOP
    top = stop.mapTo(page.answer, stop.rect().topLeft()).y()
    assert top < page.answer.figure.mapTo(page.answer, page.answer.figure.rect().topLeft()).y()


def test_a_judgement_shows_its_verdict_and_limits_and_no_figure_of_its_own(page, qtbot):
    page.list.choose("ph_on_day")
    type_into(page, "ph", "4.5")
    type_into(page, "day", "2")
    assert not page.answer.figure.isVisible()
    (card,) = page.answer.cards
    assert card.verdict.code == "ph_not_yet"
    assert "Do not drink it yet" in card.text
    qtbot.waitUntil(lambda: "Limits it was held against" in said(page))


def test_a_range_is_drawn_and_said(page):
    page.list.choose("reading_worth")
    assert page.answer.range.isVisible()
    assert page.answer.range.text == "3.12 to 3.88, 8 times in 10"
    page.list.choose("boiling_point")
    assert not page.answer.range.isVisible()


def test_sources_are_one_click_away_and_stay_open(page, qtbot):
    page.list.choose("boiling_point")
    assert "ISO 2533" not in said(page)
    qtbot.mouseClick(page.answer.sources.button, Qt.MouseButton.LeftButton)
    assert "ISO 2533:1975 standard atmosphere (from memory, not confirmed)" in said(page)
    page.list.choose("from_brix")
    assert "Emmerich" in said(page)


def test_plain_arithmetic_says_that_it_is(page):
    page.list.choose("cost")
    page.answer.sources.set_open(True)
    assert "needs no source" in said(page)


def test_a_slow_answer_comes_through_the_jobs_and_a_late_one_is_dropped(page, desk):
    page.list.choose("starter_for_ph")
    assert "reckoner" in desk.jobs.keys
    assert not page.answer.figure.isVisible()
    page.list.choose("boiling_point")
    desk.jobs.release()
    assert page.answer.figure.text() == "98.3 °C"
    page.list.choose("starter_for_ph")
    desk.jobs.release()
    assert page.answer.figure.text() == "0.632 L"


def test_a_slow_refusal_is_said_beside_its_entry_too(page, desk):
    page.list.choose("starter_for_ph")
    type_into(page, "target_start_ph", "7")
    desk.jobs.release()
    assert message(page, "target_start_ph").is_error


def test_figures_follow_other_units_at_once(page, desk):
    page.list.choose("boiling_point")
    desk.settings.put_unit(Kind.TEMPERATURE, "°F")
    assert page.answer.figure.text() == "209.0 °F"
    page.hide()
    desk.settings.put_unit(Kind.TEMPERATURE, "°C")
    page.show()
    assert page.answer.figure.text() == "98.3 °C"


def test_the_makers_own_limit_is_the_one_reckoned_with(page, desk):
    desk.settings.put(CULTURE_LIMIT_C, 27.5)
    page.list.choose("culture_in")
    assert page.form().findChild(QLineEdit, "reckoner_limit_c").text() == "27.5 °C"
    assert page.answer.cards[0].verdict.level is Level.STOP


# --- the list by keyboard ----------------------------------------------------------------


def test_a_question_is_found_entered_and_answered_by_keyboard_alone(page, qtbot):
    page.activateWindow()
    page.list.search.setFocus()
    QTest.keyClicks(page.list.search, "altitude boil")
    QTest.keyClick(page.list.search, Qt.Key.Key_Return)
    assert page.question().key == "boiling_point"
    line = page.form().findChild(QLineEdit, "reckoner_altitude_m")
    assert page.focusWidget() is line
    line.selectAll()
    QTest.keyClicks(line, "0")
    page.reply()
    assert page.answer.figure.text() == "100.0 °C"


def test_arrow_down_goes_from_the_words_to_the_questions(page):
    page.list.search.setFocus()
    QTest.keyClicks(page.list.search, "vessel marks")
    QTest.keyClick(page.list.search, Qt.Key.Key_Down)
    assert page.focusWidget() is page.list.tree
    QTest.keyClick(page.list.tree, Qt.Key.Key_Down)
    assert page.question().key in {"table_volume", "table_height", "level"}


def test_words_that_no_question_holds_leave_the_answer_alone(page):
    before = page.question().key
    QTest.keyClicks(page.list.search, "xylophone")
    assert page.list.nothing.isVisible()
    QTest.keyClick(page.list.search, Qt.Key.Key_Return)
    assert page.question().key == before
    page.list.search.clear()
    assert not page.list.nothing.isVisible()
    assert page.list.tree.currentIndex().isValid()


def test_escape_takes_the_words_back(page):
    page.list.search.setFocus()
    QTest.keyClicks(page.list.search, "acid")
    QTest.keyClick(page.list.search, Qt.Key.Key_Escape)
    assert page.list.search.text() == ""


def test_a_question_that_is_filtered_out_can_be_chosen_all_the_same(page):
    QTest.keyClicks(page.list.search, "acid")
    page.list.choose("boiling_point")
    assert page.question().key == "boiling_point"
    assert page.list.search.text() == ""


# --- how it looks ------------------------------------------------------------------------


@pytest.mark.parametrize("key", [question.key for question in all_questions()])
def test_every_question_paints_and_names_what_takes_the_keyboard(page, desk, key):
    page.list.choose(key)
    desk.jobs.release()
    assert page.answer.text
    assert not page.grab().isNull()
    for row in page.form().rows.values():
        assert row.focus_widget.accessibleName()
        assert row.focus_widget.focusPolicy() & Qt.FocusPolicy.TabFocus


def cut_off(page):
    """Entries that have less room than they need, or reach beyond the page."""
    return [
        key
        for key, row in page.form().rows.items()
        if row.width() < row.minimumSizeHint().width()
        or row.mapTo(page, row.rect().topRight()).x() > page.width()
    ]


@pytest.mark.parametrize(("scheme", "scale"), [("light", 1.0), ("dark", 1.0), ("light", 2.0)])
def test_no_entry_is_cut_off_at_any_type_size(desk, qtbot, qapp, scheme, scale):
    with worn_theme(qapp, scheme, scale):
        page = ReckonerPage(desk, reply_delay_ms=0)
        qtbot.addWidget(page)
        page.resize(1180, 700)
        page.show()
        for key in ("titration", "prime", "cooling"):
            page.list.choose(key)
            qtbot.waitUntil(lambda page=page: not cut_off(page))
            assert not page.grab().isNull()
        assert page.columns.is_wide == (scale < 2.0)


def test_the_page_brings_in_neither_numpy_nor_pint():
    code = (
        "import sys\n"
        "import brewdesk.widgets.reckonerpage\n"
        "from brewdesk.services.reckoner.catalogue import all_questions\n"
        "from brewdesk.services.reckoner.question import reckon\n"
        "for question in all_questions(): reckon(question, question.defaults())\n"
        "sys.exit(bool({'numpy', 'pint'} & sys.modules.keys()))\n"
    )
    assert subprocess.run([sys.executable, "-c", code], env=_env(), check=False).returncode == 0


def _env():
    return {**os.environ, "PYTHONPATH": os.pathsep.join(path for path in sys.path if path)}


def test_a_calibration_is_kept_from_its_answer_and_can_be_taken_back(desk, page, qtbot):
    assert not page.keep.isVisible()
    page.ask("calibrate")
    assert page.keep.isVisible()
    assert "None is kept yet" in page.keep.said.text()
    page.keep.name.setText("Yellow meter")
    qtbot.mouseClick(page.keep.button, Qt.MouseButton.LeftButton)
    kept = desk.meters.last()
    assert kept.meter == "Yellow meter"
    assert kept.verdict == "electrode_good"
    assert 95.0 < kept.slope_percent < 99.0
    assert kept.temperature_c == 20.0
    assert kept.buffers == "Technical buffer 7.00; Phthalate, 4.01 at 25 °C"
    assert not page.keep.button.isEnabled()
    desk.history.undo()
    assert desk.meters.last() is None
    page.ask("buffer_ph")
    assert not page.keep.isVisible()


def test_a_calibration_needs_a_name_and_a_right_answer(desk, page, qtbot):
    page.ask("calibrate")
    page.keep.name.clear()
    qtbot.mouseClick(page.keep.button, Qt.MouseButton.LeftButton)
    assert page.keep.row.message.text()
    assert desk.meters.last() is None
    type_into(page, "shown_2", "-200")
    assert not page.keep.isVisible()
