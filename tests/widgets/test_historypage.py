"""Looking for something, reading its life, and going to it."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from brewdesk.models.timeline import DayHeading
from brewdesk.services.desk import build_desk
from brewdesk.services.jobs import Jobs
from brewdesk.services.records import Method, Quantity, ReadingDraft, TeaKind
from brewdesk.services.searchwords import FoundKind
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.store.store import Store
from brewdesk.widgets.historypage import HistoryPage
from tests.helpers.fakes import FakeClock, FakeNotifier
from tests.helpers.pantry_desk import open_desk, plan_batch, souring_batch

HOSTILE = '<img src="x"> & <b>bold</b>'


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def page(desk, qtbot):
    made = HistoryPage(desk)
    qtbot.addWidget(made)
    made.resize(1100, 700)
    return made


def show(page, qtbot):
    with qtbot.waitExposed(page):
        page.show()
    return page


def note(desk, batch, text):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=desk.clock.now(),
        quantity=Quantity.NOTE,
        method=Method.EYE,
        text=text,
    )
    return desk.readings.record((draft,))[0]


def look_for(page, text):
    page.search.setFocus()
    page.search.selectAll()
    QTest.keyClicks(page.search, text)
    page.ask()


def names(page):
    return [find.name for find in page.model.rows()]


def lines(page):
    return [row.text for row in page.pane.model.rows() if not isinstance(row, DayHeading)]


def test_an_empty_pantry_says_so(page, qtbot):
    show(page, qtbot)
    assert page.nothing.isVisible()
    assert "nothing in your records" in page.nothing.text()
    assert not page.nothing_clear.isVisible()
    assert page.pane.empty.isVisible()


def test_it_opens_on_the_newest_batch_and_its_life(desk, page, qtbot):
    batch = souring_batch(desk)
    show(page, qtbot)
    assert page.pane.subject() == Subject(SubjectKind.BATCH, batch.id)
    assert page.pane.title.text() == batch.name
    assert "Black tea 1 planned" in lines(page)[-1]
    assert not page.grab().isNull()


def test_typing_finds_after_a_pause(desk, page, qtbot):
    souring_batch(desk)
    plan_batch(desk, "Green tea 1", "Little jar")
    show(page, qtbot)
    page.search.setFocus()
    QTest.keyClicks(page.search, "GRÉEN")
    assert page.answer.text == ""
    qtbot.waitUntil(lambda: page.answer.text == "GRÉEN")
    assert names(page)[0] == "Green tea 1"
    assert page.count.text() == f"{page.answer.total} found"


def test_keys_alone_go_from_words_to_finds_to_the_thing(desk, page, qtbot):
    batch = souring_batch(desk)
    show(page, qtbot)
    page.focus_search()
    QTest.keyClicks(page.search, "black")
    QTest.keyClick(page.search, Qt.Key.Key_Return)  # looks at once
    assert page.answer.text == "black"
    assert page.list.hasFocus()
    assert page.list.chosen().id == batch.id
    with qtbot.waitSignal(page.batch_wanted) as caught:
        QTest.keyClick(page.list, Qt.Key.Key_Return)
    assert caught.args == [batch.id]
    QTest.keyClick(page.list, Qt.Key.Key_Escape)
    assert page.search.hasFocus()
    QTest.keyClick(page.search, Qt.Key.Key_Escape)
    assert page.search.text() == ""


def test_arrows_walk_the_finds_and_the_life_follows(desk, page, qtbot):
    souring_batch(desk)
    plan_batch(desk, "Green tea 1", "Little jar")
    show(page, qtbot)
    QTest.keyClick(page.search, Qt.Key.Key_Down)
    first = page.list.chosen()
    assert page.pane.subject() == first.subject
    QTest.keyClick(page.list, Qt.Key.Key_Down)
    second = page.list.chosen()
    assert second != first
    assert page.pane.subject() == second.subject
    QTest.keyClick(page.list, Qt.Key.Key_Up)
    QTest.keyClick(page.list, Qt.Key.Key_Up)
    assert page.search.hasFocus()


def test_a_note_leads_to_its_line(desk, page, qtbot):
    batch = souring_batch(desk)
    note(desk, batch, "a quince in the air")
    desk.clock.advance(days=1)
    note(desk, batch, "calm")
    show(page, qtbot)
    look_for(page, "quince")
    page._go_to_finds()
    assert page.list.chosen().kind is FoundKind.NOTE
    shown = page.pane.model.row_at(page.pane.list.currentIndex())
    assert "quince" in shown.text


def test_a_note_far_back_is_brought_into_view(desk, page, qtbot, monkeypatch):
    from brewdesk.widgets import historypane

    monkeypatch.setattr(historypane, "LINES_AT_FIRST", 3)
    batch = souring_batch(desk)
    note(desk, batch, "a quince in the air")
    for number in range(6):
        desk.clock.advance(days=1)
        note(desk, batch, f"calm {number}")
    show(page, qtbot)
    look_for(page, "quince")
    page._go_to_finds()
    shown = page.pane.model.row_at(page.pane.list.currentIndex())
    assert "quince" in shown.text


def test_filters_narrow_and_are_cleared_together(desk, page, qtbot):
    souring_batch(desk)
    show(page, qtbot)
    everything = page.answer.total
    combo = page.filters.combos["kind"]
    combo.setCurrentIndex(combo.findData(FoundKind.VESSEL))
    assert names(page) == ["Tall jar"]
    assert page.filters.clear_button.isVisible()
    qtbot.mouseClick(page.filters.clear_button, Qt.MouseButton.LeftButton)
    assert page.answer.total == everything
    assert not page.filters.clear_button.isVisible()


def test_nothing_found_names_the_filter_that_hides_it(desk, page, qtbot):
    souring_batch(desk)
    show(page, qtbot)
    combo = page.filters.combos["tea"]
    combo.setCurrentIndex(combo.findData(TeaKind.GREEN))
    look_for(page, "black tea 1")
    assert "“Green tea”" in page.nothing.text()
    assert page.count.text() == "Nothing found"
    qtbot.mouseClick(page.nothing_clear, Qt.MouseButton.LeftButton)
    assert "Black tea 1" in names(page)


def test_a_time_of_ones_own_has_two_ends_in_any_order(desk, page, qtbot):
    souring_batch(desk)
    show(page, qtbot)
    combo = page.filters.combos["time"]
    combo.setCurrentIndex(combo.findData("own"))
    assert page.filters.since.isVisible()
    today = page.filters.until.date()
    page.filters.since.setDate(today.addDays(5))
    sieve = page.filters.sieve()
    assert sieve.until - sieve.since == timedelta(days=6)
    assert sieve.since <= desk.clock.now() < sieve.until
    page.filters.until.setDate(today.addDays(4))
    assert FoundKind.ACT not in {find.kind for find in page.model.rows()}


def test_a_new_culture_can_be_filtered_by_at_once(desk, page, qtbot):
    show(page, qtbot)
    plan_batch(desk)
    assert page.filters.combos["culture_id"].findText("Culture of Tall jar") > 0


def test_an_ended_batch_is_looked_at_here_and_cannot_be_changed(desk, page, qtbot):
    batch = souring_batch(desk)
    draft = ReadingDraft(
        batch_id=batch.id,
        at=desk.clock.now(),
        quantity=Quantity.PH,
        method=Method.METER,
        value=3.9,
        sd=0.05,
    )
    desk.readings.record((draft,))
    desk.clock.advance(days=2)
    desk.batches.discard(batch.id, "dropped it")
    show(page, qtbot)
    wanted = []
    page.batch_wanted.connect(wanted.append)
    look_for(page, "black tea 1")
    page._go_to_finds()
    QTest.keyClick(page.list, Qt.Key.Key_Return)
    assert wanted == []
    tabs = page.pane.tabs
    assert tabs.currentWidget() is page.pane.curve
    said = " ".join(label.text() for label in page.pane.curve.chart.findChildren(QLabel))
    assert "It is over" in said
    tabs.setCurrentWidget(page.pane.readings)
    assert [row.value for row in page.pane.readings.model.rows()] == [3.9]
    before = desk.history.undo_act()
    page.pane.readings.table.selectRow(0)
    QTest.keyClick(page.pane.readings.table, Qt.Key.Key_Delete)
    assert desk.history.undo_act() == before
    tabs.setCurrentWidget(page.pane.amounts)
    facts = " ".join(label.text() for label in page.pane.amounts.findChildren(QLabel))
    assert "dropped it" in facts
    assert not page.grab().isNull()


def test_what_is_no_batch_has_a_time_line_alone(desk, page, qtbot):
    batch = souring_batch(desk)
    show(page, qtbot)
    page.show_subject(Subject(SubjectKind.VESSEL, batch.vessel_id))
    assert not page.pane.tabs.tabBar().isVisible()
    assert page.pane.list.isVisible()
    assert page.pane.list.hasFocus()
    with qtbot.waitSignal(page.vessel_wanted):
        qtbot.mouseClick(page.pane.open_button, Qt.MouseButton.LeftButton)


def test_a_line_is_followed_to_what_it_is_about(desk, page, qtbot):
    batch = souring_batch(desk)
    show(page, qtbot)
    page.show_subject(Subject(SubjectKind.VESSEL, batch.vessel_id))
    QTest.keyClick(page.pane.list, Qt.Key.Key_Return)
    assert page.pane.subject() == Subject(SubjectKind.BATCH, batch.id)
    QTest.keyClick(page.pane.list, Qt.Key.Key_Escape)
    assert page.list.hasFocus()


def test_what_happens_while_it_is_open_is_told_at_once(desk, page, qtbot):
    batch = souring_batch(desk)
    show(page, qtbot)
    note(desk, batch, "a thin film")
    assert "a thin film" in lines(page)[0]
    desk.history.undo()
    assert "a thin film" not in " ".join(lines(page))


def test_a_life_that_is_taken_back_is_let_go_of(desk, page, qtbot):
    batch = plan_batch(desk)
    show(page, qtbot)
    page.show_subject(Subject(SubjectKind.BATCH, batch.id))
    desk.batches.drop_plan(batch.id)
    assert page.pane.subject() is None
    assert page.pane.empty.isVisible()


def test_changes_while_hidden_are_caught_up_with(desk, page, qtbot):
    show(page, qtbot)
    page.hide()
    souring_batch(desk)
    with qtbot.waitExposed(page):
        page.show()
    assert "Black tea 1" in names(page)


def test_older_lines_and_more_finds_are_shown_when_asked_for(desk, page, qtbot, monkeypatch):
    from brewdesk.widgets import historypage, historypane

    monkeypatch.setattr(historypage, "FINDS_SHOWN", 4)
    monkeypatch.setattr(historypane, "LINES_AT_FIRST", 3)
    batch = souring_batch(desk)
    page._limit = 4
    show(page, qtbot)
    assert page.model.rowCount() == 4
    assert page.count.text() == f"The first 4 of {page.answer.total}"
    qtbot.mouseClick(page.more_button, Qt.MouseButton.LeftButton)
    assert page.model.rowCount() == 8
    page.show_subject(Subject(SubjectKind.VESSEL, batch.vessel_id))
    assert len(lines(page)) == 3
    assert "The newest 3 of" in page.pane.about.text()
    qtbot.mouseClick(page.pane.more_button, Qt.MouseButton.LeftButton)
    assert len(lines(page)) == 6


def test_hostile_names_are_shown_as_they_stand(desk, page, qtbot):
    souring_batch(desk, HOSTILE, "Jar " + HOSTILE)
    show(page, qtbot)
    look_for(page, "img")
    assert HOSTILE in names(page)
    page._go_to_finds()
    assert page.pane.title.text() == HOSTILE
    look_for(page, HOSTILE + " zzz")
    assert HOSTILE in page.nothing.text()
    shown = [w for w in page.findChildren(QLabel) if HOSTILE in w.text()]
    assert shown
    assert all(w.textFormat() is Qt.TextFormat.PlainText for w in shown)
    assert not page.grab().isNull()


def test_a_long_note_is_wrapped_and_takes_no_more_than_its_room(desk, page, qtbot):
    batch = souring_batch(desk)
    note(desk, batch, "film " * 3000)
    show(page, qtbot)
    view = page.pane.list
    row = view.model().index(1, 0)
    height = view.sizeHintForIndex(row).height()
    line = QFontMetrics(view.font()).height()
    assert 5 * line < height < 60 * line
    assert not page.grab().isNull()


def test_everything_that_takes_the_keyboard_has_a_name(desk, page, qtbot):
    souring_batch(desk)
    show(page, qtbot)
    for widget in (
        page.search,
        page.list,
        page.pane.list,
        page.pane.readings.table,
        page.filters.since,
        page.filters.until,
        *page.filters.combos.values(),
    ):
        assert widget.accessibleName(), widget.objectName()


def test_the_filters_go_on_below_where_they_do_not_fit(desk, page, qtbot):
    show(page, qtbot)
    wide = page.filters.height()
    page.resize(700, 700)
    QApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest.value)
    qtbot.waitUntil(lambda: page.filters.height() > wide)
    last = page.filters.combos["time"]
    assert last.geometry().right() <= page.filters.width()
    assert last.y() > page.filters.combos["kind"].y()


def test_on_real_threads_the_newest_words_win_and_the_window_stays_free(tmp_path, qapp, qtbot):
    clock = FakeClock()
    store = Store.open(tmp_path / "threads.brewdesk", now=clock.now())
    jobs = Jobs()
    desk = build_desk(store, clock, jobs=jobs, notifier=FakeNotifier())
    batch = souring_batch(desk)
    page = HistoryPage(desk)
    qtbot.addWidget(page)
    try:
        with qtbot.waitExposed(page):
            page.show()
        for words in ("nothing", "of the kind", batch.name):
            page.search.setText(words)
            page.ask()
        qtbot.waitUntil(lambda: page.answer is not None and page.answer.text == batch.name)
        qtbot.waitUntil(lambda: page.pane.title.text() == batch.name)
    finally:
        jobs.shutdown()
        page.hide()
        store.close()
