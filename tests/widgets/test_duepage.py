"""The due list and the strip at the foot of the window."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from types import SimpleNamespace
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest

from brewdesk.services.records import (
    BottlingDraft,
    ReminderDraft,
    ReminderKind,
    ReminderState,
)
from brewdesk.widgets.duecard import snooze_times
from brewdesk.widgets.duepage import DuePage
from brewdesk.widgets.duestrip import DueStrip, short_words
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import brewing_batch, open_desk, souring_batch

BERLIN = ZoneInfo("Europe/Berlin")


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path, FakeClock(datetime(2026, 11, 25, 9, 0, tzinfo=UTC), BERLIN))
    yield opened
    opened.store.close()


@pytest.fixture
def page(desk, qtbot):
    made = DuePage(desk)
    qtbot.addWidget(made)
    made.resize(900, 700)
    with qtbot.waitExposed(made):
        made.show()
    return made


@pytest.fixture
def strip(desk, qtbot):
    made = DueStrip(desk)
    qtbot.addWidget(made)
    made.resize(900, 48)
    with qtbot.waitExposed(made):
        made.show()
    return made


def remind(desk, text, batch_id=None, **ahead):
    return desk.reminders.add_own(batch_id, desk.clock.now() + timedelta(**ahead), text)


def titles(page):
    return [card.title.text() for card in page.cards()]


def choose(card, code):
    card.fill_menu()
    action = next(a for a in card.menu.actions() if a.objectName() == f"snooze_{code}")
    action.trigger()


def test_an_empty_list_says_what_will_come(page):
    assert page.empty.isVisible()
    assert page.cards() == ()
    assert not page.grab().isNull()


def test_reminders_stand_nearest_first_under_their_headings(desk, page):
    remind(desk, "In three days", days=3)
    remind(desk, "Tonight", hours=8)
    remind(desk, "At once", minutes=1)
    desk.clock.advance(minutes=2)
    page.refresh()
    assert titles(page) == ["At once", "Tonight", "In three days"]
    assert not page.empty.isVisible()
    assert page.cards()[0].when.property("role") == "warn"
    assert page.cards()[1].when.property("role") == "muted"


def test_a_reminder_comes_due_while_one_looks(desk, page, qtbot):
    remind(desk, "Stir", minutes=1)
    assert not page.cards()[0].item.is_due
    desk.clock.advance(minutes=2)
    page.findChild(QTimer, "due_minute").setInterval(5)
    qtbot.waitUntil(lambda: page.cards()[0].item.is_due)


def test_done_takes_it_off_and_undo_brings_it_back(desk, page):
    remind(desk, "Stir", minutes=1)
    page.cards()[0].done_button.click()
    assert titles(page) == []
    desk.history.undo()
    assert titles(page) == ["Stir"]


def test_snoozing_moves_it_to_the_chosen_time(desk, page):
    kept = remind(desk, "Stir", minutes=1)
    desk.clock.advance(hours=1)
    page.refresh()
    choose(page.cards()[0], "tomorrow")
    with desk.store.read() as unit:
        row = unit.reminders.get(kept.id)
    assert row.state is ReminderState.SNOOZED
    # 09:00 on the next day in Berlin, which is 08:00 UTC in winter.
    assert row.snoozed_until == datetime(2026, 11, 26, 8, 0, tzinfo=UTC)
    assert not page.cards()[0].item.is_due


def test_no_evening_is_offered_when_it_is_nearly_there():
    def codes(hour, minute):
        now = datetime(2026, 11, 25, hour, minute, tzinfo=BERLIN)
        return [code for code, _ in snooze_times(now, BERLIN)]

    assert codes(12, 0) == ["hour", "evening", "tomorrow"]
    assert codes(17, 45) == ["hour", "tomorrow"]
    assert codes(23, 30) == ["hour", "tomorrow"]


def test_tomorrow_morning_is_nine_also_when_the_clocks_change():
    # Clocks go back in the night to 25 October 2026 in Berlin (EU summer time rule).
    now = datetime(2026, 10, 24, 20, 0, tzinfo=BERLIN)
    until = dict(snooze_times(now, BERLIN))["tomorrow"]
    assert until.astimezone(UTC) == datetime(2026, 10, 25, 8, 0, tzinfo=UTC)


def test_a_snooze_past_the_tasting_window_is_warned_of(desk, page):
    batch = souring_batch(desk)
    kept = remind(desk, "Taste", batch.id, minutes=1)
    desk.door.quiet(
        lambda unit: unit.reminders.change(
            kept.id, window_end=desk.clock.now() + timedelta(hours=2)
        ),
        topics=_reminders_topic(),
    )
    card = next(card for card in page.cards() if card.item.reminder.id == kept.id)
    assert not card.warning.isVisible()
    choose(card, "tomorrow")
    assert card.warning.isVisible()
    assert "too sour" in card.warning.text()


def _reminders_topic():
    from brewdesk.services.changes import Topic

    return Topic.REMINDERS


def test_a_card_opens_its_jar_and_one_without_a_jar_cannot(desk, page, qtbot):
    batch = souring_batch(desk)
    remind(desk, "Stir", batch.id, minutes=1)
    remind(desk, "Buy sugar", minutes=2)
    with_jar = next(card for card in page.cards() if card.title.text() == "Stir")
    without = next(card for card in page.cards() if card.title.text() == "Buy sugar")
    assert not without.open_button.isVisible()
    assert with_jar.place.text() == "Tall jar · Black tea 1"
    with qtbot.waitSignal(page.open_batch) as heard:
        with_jar.open_button.click()
    assert heard.args == [batch.id]


def test_names_are_shown_as_they_are(desk, page):
    remind(desk, "<b>Wash</b> & dry", minutes=1)
    card = page.cards()[0]
    assert card.title.text() == "<b>Wash</b> & dry"
    assert card.title.textFormat() == Qt.TextFormat.PlainText


def test_running_timers_stand_on_top_and_count(desk, page, qtbot):
    batch = brewing_batch(desk)
    step = desk.brewing.steps(batch.id)[0]
    desk.brewing.begin(step.id)
    (card,) = page.timer_cards()
    assert card.countdown.text() == "5:00"
    desk.clock.advance(minutes=6)
    page.tick()
    assert card.countdown.text() == "+1:00"
    assert "Time is up" in card.title.text()
    with qtbot.waitSignal(page.open_batch) as heard:
        card.open_button.click()
    assert heard.args == [batch.id]
    desk.brewing.finish(step.id)
    assert page.timer_cards() == ()


def test_timers_rest_while_the_page_is_hidden(desk, page):
    batch = brewing_batch(desk)
    desk.brewing.begin(desk.brewing.steps(batch.id)[0].id)
    second, minute = page.findChild(QTimer, "due_second"), page.findChild(QTimer, "due_minute")
    assert second.isActive()
    assert minute.isActive()
    page.hide()
    assert not second.isActive()
    assert not minute.isActive()
    remind(desk, "While hidden", minutes=1)
    assert titles(page) == []
    page.show()
    assert titles(page) == ["While hidden"]
    assert second.isActive()


def test_an_own_reminder_is_added_for_a_jar(desk, page):
    batch = souring_batch(desk)
    page.adding.set_open(True)
    QTest.keyClicks(page.own.text, "Wash the cloth")
    page.own.when.set_instant(desk.clock.now() + timedelta(hours=3))
    page.own.jar.setCurrentIndex(page.own.jar.findData(batch.id))
    page.own.add_button.click()
    assert "Wash the cloth" in titles(page)
    card = next(card for card in page.cards() if card.title.text() == "Wash the cloth")
    assert card.item.batch.id == batch.id
    assert page.own.text.text() == ""
    assert not page.adding.is_open()


def test_an_own_reminder_needs_words_and_a_time_to_come(desk, page):
    page.adding.set_open(True)
    page.own.add_button.click()
    assert page.own.text_row.message.is_error
    QTest.keyClicks(page.own.text, "Too late")
    page.own.when.set_instant(desk.clock.now() - timedelta(hours=1))
    page.own.add_button.click()
    assert page.own.when_row.message.is_error
    assert titles(page) == []
    assert page.own.text.text() == "Too late"


def test_the_proposed_time_is_tomorrow_morning(desk, page):
    assert page.own.when.instant() == datetime(2026, 11, 26, 8, 0, tzinfo=UTC)


def test_the_jar_chosen_survives_a_refresh(desk, page):
    batch = souring_batch(desk)
    page.own.jar.setCurrentIndex(page.own.jar.findData(batch.id))
    souring_batch(desk, name="Green tea 1", vessel="Crock")
    assert page.own.jar.currentData() == batch.id


# the strip


def shown(strip):
    return [line.text() for line in strip.lines if line.isVisible()]


def test_the_strip_shows_the_nearest_three(desk, strip, qtbot):
    assert strip.empty.isVisible()
    for hours in (4, 1, 3, 2):
        remind(desk, f"R{hours}", hours=hours)
    qtbot.waitUntil(lambda: len(shown(strip)) == 3)
    texts = shown(strip)
    for number, text in zip((1, 2, 3), texts, strict=True):
        assert f"R{number}" in text
    assert not strip.empty.isVisible()
    assert not strip.grab().isNull()


def test_what_is_due_says_now_and_an_ampersand_stays_one(desk, strip):
    remind(desk, "Wash & dry", minutes=1)
    desk.clock.advance(minutes=2)
    strip.refresh()
    assert shown(strip) == ["Now: Wash && dry"]  # doubled, or Qt would make it a shortcut


def test_a_click_on_the_strip_opens_the_list(desk, strip, qtbot):
    remind(desk, "Stir", minutes=1)
    qtbot.waitUntil(strip.lines[0].isVisible)
    with qtbot.waitSignal(strip.open_due):
        QTest.mouseClick(strip.lines[0], Qt.MouseButton.LeftButton)


def test_a_long_line_is_cut_but_its_name_is_whole(desk, strip, qtbot):
    remind(desk, "Something long to do " * 10, minutes=1)
    line = strip.lines[0]
    qtbot.waitUntil(lambda: bool(line.text()))
    assert line.text().endswith("…")
    assert ("Something long to do " * 10).strip() in line.accessibleName()


def test_the_strip_rests_while_hidden(strip):
    timer = strip.findChild(QTimer, "due_strip_minute")
    assert timer.isActive()
    strip.hide()
    assert not timer.isActive()


def test_the_page_says_when_notices_do_not_reach_the_desktop(desk, page):
    assert not page.unheard.isVisible()
    desk.notifier.available = False
    desk.notifier.availability_changed.emit(False)
    assert page.unheard.isVisible()
    assert "look here" in page.unheard.text()
    desk.notifier.available = True
    desk.notifier.availability_changed.emit(True)
    assert not page.unheard.isVisible()


def test_bottles_in_danger_stand_first_and_in_the_colour_of_danger(desk, page):
    remind(desk, "Wash the cloths", minutes=-30)
    batch = souring_batch(desk)
    now = desk.clock.now()
    bottling = BottlingDraft(
        name="Ginger",
        batch_id=batch.id,
        filled_at=now - timedelta(days=4),
        drink_volume_l=2.0,
        residual_sugar_low_g_per_l=20.0,
        residual_sugar_high_g_per_l=40.0,
        target_volumes=2.5,
        priming_sugar_g=10.0,
        place_temperature_c=22.0,
        open_jar_c=24.0,
        warmest_c=26.0,
    )
    made = desk.door.quiet(lambda unit: unit.bottlings.add(bottling))
    draft = ReminderDraft(
        batch_id=None,
        bottling_id=made.id,
        kind=ReminderKind.CHILL,
        occurrence="chill",
        due_at=now - timedelta(days=1),
        window_end=now - timedelta(minutes=5),
    )
    desk.door.quiet(lambda unit: unit.reminders.add(draft), topics=_reminders_topic())
    first = page.cards()[0]
    assert first.title.text() == "Chill the bottles now: Ginger"
    assert first.property("role") == "danger"
    assert "burst" in first.body.text()
    assert page.grab().width() > 0


def test_the_strip_names_what_is_to_be_done_with_bottles(desk, strip):
    remind(desk, "Wash the cloths", minutes=-30)
    own = desk.reminders.listed()[0]
    bottling = SimpleNamespace(name="Ginger")
    for kind in ReminderKind:
        row = replace(own.reminder, kind=kind)
        item = replace(own, reminder=row, bottling=bottling, title=kind.value)
        words = short_words(item)
        is_of_bottles = "Ginger" in words
        assert is_of_bottles is (
            kind
            in (
                ReminderKind.CHILL,
                ReminderKind.PRESSURE_CHECK,
                ReminderKind.OPEN_TEST,
                ReminderKind.BEST_BEFORE,
            )
        )
