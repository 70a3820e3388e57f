"""Looking back from the window: sentences, dots, losses, by mouse, by keys, on paper."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton

from brewdesk.services import lookback
from brewdesk.services.lookbackgroups import Factor, Measure
from brewdesk.services.paperhtml import html_of
from brewdesk.services.records import (
    BatchStage,
    Quantity,
    StoreTrouble,
    TasteMark,
    TeaKind,
)
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.wording.lookbackreport import look_back_report
from brewdesk.widgets.documentdialog import DocumentDialog
from brewdesk.widgets.fields import choose
from brewdesk.widgets.historypage import FIND, LOOK_BACK, HistoryPage
from brewdesk.widgets.lookbackpage import LookBackPage
from brewdesk.widgets.losslist import SHOWN
from tests.helpers.pantry_desk import open_desk
from tests.services.pasts import Past

HOSTILE = '<img src="x"> & <b>bold</b>'


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def past(desk):
    return Past(desk)


@pytest.fixture
def page(desk, qtbot):
    made = LookBackPage(desk)
    qtbot.addWidget(made)
    made.resize(1150, 700)
    return made


def show(page, qtbot):
    with qtbot.waitExposed(page):
        page.show()
    return page


def shown_words(page):
    return "\n".join(label.text() for label in page.findChildren(QLabel) if label.isVisibleTo(page))


def names(page):
    return [row.name for row in page.plot.rows()]


def test_an_empty_pantry_is_told_what_will_appear_and_when(page, qtbot):
    show(page, qtbot)
    assert "Nothing to look back at yet" in page.nothing.text()
    assert "five batches" in page.nothing.text()
    assert page.nothing.isVisible()
    assert not page.nothing_clear.isVisible()
    assert not page.print_button.isEnabled()


def test_sentences_come_first_and_dots_after(page, past, qtbot):
    for n in range(5):
        past.reached(8.0 + n / 2)
    past.reached(12.0, tea=TeaKind.GREEN)
    show(page, qtbot)
    first = page.short.itemAt(0).widget().text()
    assert first == (
        "Black tea took 9 days (8 to 10, 5 batches) to pH 3.2; Green tea 12 days (1 batch)."
    )
    assert "too few to call it a difference" in page.short.itemAt(1).widget().text()
    assert names(page) == ["Black tea", "Green tea"]
    assert page.plot.rows()[0].median == pytest.approx(9.0)
    assert page.plot.rows()[1].low is None
    assert not page.grab().isNull()


def test_a_screen_reader_is_told_what_the_pictures_show(page, past, qtbot):
    batch = past.reached(8.0)
    past.reading(batch, 8.0, Quantity.TASTE, text=TasteMark.RIGHT.value)
    show(page, qtbot)
    assert page.plot.accessibleName() == "Days to pH 3.2, by tea"
    assert "Black tea: 8 days (1 batch). Too few to say more." in page.plot.accessibleDescription()
    assert "1 batch begun" in page.months.accessibleDescription()
    assert "Just right 1" in page.tastes.accessibleDescription()
    for combo in page.filters.combos.values():
        assert combo.accessibleName()


def test_a_pressed_dot_asks_for_its_batch(page, past, qtbot):
    past.reached(6.0)
    wanted = past.reached(11.0)
    show(page, qtbot)
    asked = []
    page.subject_wanted.connect(asked.append)
    spot = page.plot.spot_of(wanted.id).toPoint()
    QTest.mouseClick(page.plot, Qt.MouseButton.LeftButton, pos=spot)
    assert asked == [Subject(SubjectKind.BATCH, wanted.id)]
    QTest.mouseClick(page.plot, Qt.MouseButton.LeftButton, pos=spot + QPoint(-60, 0))
    assert len(asked) == 1


def test_the_keys_walk_the_dots_and_open_one(page, past, qtbot):
    quick, slow = past.reached(6.0, name="Quick"), past.reached(11.0, name="Slow")
    green = past.reached(10.5, name="Leaf", tea=TeaKind.GREEN)
    show(page, qtbot)
    asked = []
    page.subject_wanted.connect(asked.append)
    page.plot.setFocus(Qt.FocusReason.TabFocusReason)
    assert page.plot.current_key() == quick.id
    assert "Quick" in page.told.text()
    for key, batch in (
        (Qt.Key.Key_Right, slow),
        (Qt.Key.Key_Right, slow),
        (Qt.Key.Key_Down, green),
        (Qt.Key.Key_Down, green),
        (Qt.Key.Key_Up, slow),
        (Qt.Key.Key_Home, quick),
        (Qt.Key.Key_End, slow),
        (Qt.Key.Key_Left, quick),
    ):
        QTest.keyClick(page.plot, key)
        assert page.plot.current_key() == batch.id
    QTest.keyClick(page.plot, Qt.Key.Key_Return)
    assert asked == [Subject(SubjectKind.BATCH, quick.id)]
    assert not page.plot.grab().isNull()


def test_the_keyboards_dot_stays_when_something_else_changes(desk, page, past, qtbot):
    past.reached(6.0)
    kept = past.reached(11.0)
    show(page, qtbot)
    page.plot.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(page.plot, Qt.Key.Key_End)
    past.reached(3.0)
    page.ask()
    desk.look_back._past = None  # the helper writes rows behind the services' back
    page.ask()
    assert len(page.plot.rows()[0].dots) == 3
    assert page.plot.current_key() == kept.id


def test_choices_ask_anew(page, past, qtbot):
    culture = past.culture("Lighthouse")
    past.reached(8.0, culture=culture)
    past.reached(9.0, tea=TeaKind.GREEN, lasted=14.0)
    show(page, qtbot)
    choose(page.filters.combos["factor"], Factor.CULTURE)
    assert names(page) == ["Lighthouse", "No culture"]
    choose(page.filters.combos["measure"], Measure.DRAWN_OFF)
    assert page.plot_title.text() == "Days until drawn off, by culture"
    assert page.plot.rows()[1].dots[0].days == pytest.approx(14.0)
    choose(page.filters.combos["tea"], TeaKind.GREEN)
    assert names(page) == ["No culture"]
    choose(page.filters.combos["tea"], TeaKind.WHITE)
    assert page.nothing.text() == "No batch that has soured is like that: White tea."
    QTest.mouseClick(page.nothing_clear, Qt.MouseButton.LeftButton)
    assert names(page) == ["Lighthouse", "No culture"]


def test_a_span_of_ones_own(desk, page, past, qtbot):
    past.reached(8.0, name="old", started=100.0)
    past.reached(9.0, name="new", started=20.0)
    show(page, qtbot)
    assert not page.filters.since.isVisible()
    choose(page.filters.combos["time"], "quarter")
    assert len(page.plot.rows()[0].dots) == 1
    choose(page.filters.combos["time"], "own")
    assert page.filters.since.isVisible()
    day = (past.now - timedelta(days=101)).date()
    page.filters.until.setDate(page.filters.until.date().addDays(-60))
    page.filters.since.setDate(day)
    assert [dot.words.split(" ")[0] for dot in page.plot.rows()[0].dots] == ["old"]


def test_a_change_is_followed_while_it_is_shown(desk, page, past, qtbot):
    culture = past.culture("Before")
    past.reached(8.0, culture=culture)
    show(page, qtbot)
    choose(page.filters.combos["factor"], Factor.CULTURE)
    desk.cultures.edit(culture.id, name="After")
    qtbot.waitUntil(lambda: names(page) == ["After"])
    assert page.filters.combos["culture_id"].itemText(1) == "After"


def test_losses_are_told_in_the_makers_words_with_what_helps(desk, page, past, qtbot):
    batch = past.batch(
        stage=BatchStage.DISCARDED, lasted=6.0, reason="Fuzzy blue mold on top", name="Blue one"
    )
    show(page, qtbot)
    words = shown_words(page)
    assert "Fuzzy blue mold on top" in words
    assert "Mold: Throw all of it away, liquid, culture and cloth" in words
    assert "Common practice, no source" in words
    asked = []
    page.subject_wanted.connect(asked.append)
    head = page.losses.findChild(QPushButton, "loss_open")
    assert "Blue one" in head.accessibleName()
    QTest.mouseClick(head, Qt.MouseButton.LeftButton)
    assert asked == [Subject(SubjectKind.BATCH, batch.id)]


def test_a_lost_culture_leads_to_its_own_life(desk, page, past, qtbot):
    past.reached(8.0)
    culture = past.culture("Skerry")
    desk.culture_care.lose(culture.id, "Dried out", flag=False)
    show(page, qtbot)
    asked = []
    page.subject_wanted.connect(asked.append)
    page.losses.findChild(QPushButton, "loss_open").click()
    assert asked == [Subject(SubjectKind.CULTURE, culture.id)]


def test_many_losses_are_opened_by_a_button(page, past, qtbot):
    for n in range(SHOWN + 3):
        past.batch(stage=BatchStage.DISCARDED, lasted=6.0, reason=f"Reason {n}")
    show(page, qtbot)
    assert len(page.losses.findChildren(QPushButton, "loss_open")) == SHOWN
    page.losses.findChild(QPushButton, "loss_more").click()

    def seen():
        heads = page.losses.findChildren(QPushButton, "loss_open")
        return sum(head.isVisibleTo(page) for head in heads)

    qtbot.waitUntil(lambda: seen() == SHOWN + 3)


def test_hostile_names_are_shown_letter_by_letter(desk, page, past, qtbot):
    culture = past.culture(HOSTILE)
    past.reached(8.0, name=HOSTILE, culture=culture)
    past.batch(stage=BatchStage.DISCARDED, lasted=6.0, reason=HOSTILE, name=HOSTILE)
    show(page, qtbot)
    choose(page.filters.combos["factor"], Factor.CULTURE)
    page.plot.setFocus(Qt.FocusReason.TabFocusReason)
    for label in page.findChildren(QLabel):
        assert label.textFormat() is Qt.TextFormat.PlainText or "<" not in label.text()
    assert HOSTILE in shown_words(page)
    assert HOSTILE in page.told.text()
    assert not page.grab().isNull()
    document = look_back_report(
        page.view, page.filters.names(), desk.quantities.show, desk.clock.zone()
    )
    html = html_of(document)
    assert "<img" not in html
    assert "<b>bold" not in html


def test_trouble_is_told_where_the_answer_would_be(page, past, qtbot, monkeypatch):
    past.reached(8.0)

    def broken(*_given):
        raise StoreTrouble("io_error")

    monkeypatch.setattr(lookback, "gather", broken)
    show(page, qtbot)
    assert page.body.currentIndex() == 0
    assert page.nothing.text()
    assert "Nothing to look back at yet" not in page.nothing.text()


def test_it_goes_onto_paper(desk, page, past, qtbot, tmp_path):
    for n in range(6):
        past.reached(8.0 + n / 2)
    past.batch(stage=BatchStage.DISCARDED, lasted=6.0, reason="Mold")
    show(page, qtbot)
    QTest.mouseClick(page.print_button, Qt.MouseButton.LeftButton)
    (dialog,) = page.findChildren(DocumentDialog)
    dialog.save_pdf(str(tmp_path / "back.pdf"))
    dialog.save_html(str(tmp_path / "back.html"))
    dialog.close()
    assert (tmp_path / "back.pdf").read_bytes().startswith(b"%PDF")
    html = (tmp_path / "back.html").read_text(encoding="utf-8")
    for words in ("Your batches took 9.2 days (8 to 10.5, 6 batches", "Month by month", "Mold"):
        assert words in html


@pytest.mark.parametrize("width", [420, 700, 1100, 1800])
def test_nothing_is_wider_than_the_window(page, past, qtbot, width):
    for n in range(5):
        past.reached(8.0 + n, culture=past.culture(f"A culture with a rather long name {n}"))
    past.batch(stage=BatchStage.DISCARDED, lasted=6.0, reason="word " * 60, name="n" * 60)
    page.resize(width, 700)
    show(page, qtbot)
    choose(page.filters.combos["factor"], Factor.CULTURE)
    QApplication.processEvents()
    for widget in (page.plot, page.months, page.losses):
        right = widget.mapTo(page, QPoint(widget.width(), 0)).x()
        assert right <= max(page.width(), page.minimumSizeHint().width())


# --- within the history ---------------------------------------------------------------------


@pytest.fixture
def history(desk, qtbot):
    made = HistoryPage(desk)
    qtbot.addWidget(made)
    made.resize(1150, 700)
    return made


def test_the_history_has_two_sides(history, past, qtbot):
    batch = past.reached(8.0)
    show(history, qtbot)
    assert history.search.isVisible()
    assert history.look_back is None
    QTest.mouseClick(history.sides.button(LOOK_BACK), Qt.MouseButton.LeftButton)
    assert history.look_back.isVisible()
    assert not history.search.isVisible()
    history.look_back.subject_wanted.emit(Subject(SubjectKind.BATCH, batch.id))
    assert history.sides.value() == FIND
    assert history.search.isVisible()
    assert history.pane.subject() == Subject(SubjectKind.BATCH, batch.id)


def test_to_search_is_to_leave_the_look_back(history, past, qtbot):
    past.reached(8.0)
    show(history, qtbot)
    history.turn_to(LOOK_BACK)
    history.focus_search()
    assert history.sides.value() == FIND
    assert history.search.isVisible()


def test_the_sides_are_turned_by_keys(history, past, qtbot):
    past.reached(8.0)
    show(history, qtbot)
    history.sides.button(FIND).setFocus()
    QTest.keyClick(history.sides.button(FIND), Qt.Key.Key_Right)
    QTest.keyClick(history.sides.button(LOOK_BACK), Qt.Key.Key_Space)
    assert history.sides.value() == LOOK_BACK
    assert history.look_back.isVisible()
