"""The due list: what stands on it, in which order and words, and what the maker can do."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services.dueitems import KIND_ORDER
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.reminders import OWN_TEXT_LIMIT
from brewdesk.services.wording.reminders import (
    clock_doubt_words,
    lateness_words,
    reminder_words,
    span_words,
    summary_words,
)
from brewdesk.store.errors import NoSuchRow
from brewdesk.store.records import Reminder
from culturecore.errors import ImpossibleInput
from culturecore.stages import ReminderKind, ReminderState
from tests.helpers.fakes import FakeClock
from tests.helpers.watched_pantry import WatchedPantry

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture(autouse=True)
def _plain_locale() -> Iterator[None]:
    before = QLocale()
    QLocale.setDefault(QLocale.c())
    yield
    QLocale.setDefault(before)


@pytest.fixture
def pantry(tmp_path, qapp) -> Iterator[WatchedPantry]:
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(NOON))
    yield made
    made.close()


def test_due_comes_first_and_safety_before_taste(pantry):
    batch = pantry.add_batch(days_ago=8)
    pantry.windows[batch.id] = TastingWindow(
        opens_at=NOON - timedelta(days=1), closes_at=NOON + timedelta(days=4)
    )
    pantry.own("Later", days=1)
    pantry.reminders.sync()
    listed = pantry.reminders.listed()
    assert [(item.reminder.kind, item.is_due) for item in listed] == [
        (ReminderKind.PH_CHECK, True),
        (ReminderKind.MOLD_LOOK, True),
        (ReminderKind.TASTE, True),
        (ReminderKind.OWN, False),
        (ReminderKind.MOLD_LOOK, False),
    ]


def test_a_line_carries_its_batch_vessel_and_words(pantry):
    batch = pantry.add_batch("Amber", days_ago=4)
    pantry.reminders.sync()
    item = pantry.reminders.listed()[0]
    assert item.batch == batch
    assert item.vessel.name == "Jar of Amber"
    assert item.title == "Look for mold on Amber in Jar of Amber"
    assert "When in doubt, throw it out." in item.body
    assert item.when_text == "Was due Tue 24 Nov at 09:00, 1 day 3 h ago."


def test_syncing_again_changes_no_row_and_says_nothing(pantry, qtbot):
    pantry.add_batch(days_ago=4)
    assert pantry.reminders.sync()
    with qtbot.assertNotEmitted(pantry.changes.changed):
        assert not pantry.reminders.sync()


def test_syncing_is_no_step_of_the_undo_history(pantry):
    pantry.add_batch(days_ago=4)
    pantry.reminders.sync()
    assert pantry.history.undo_act() is None


def test_a_restart_lists_the_tasting_before_any_forecast_has_run(pantry):
    batch = pantry.add_batch(days_ago=4)
    opens = NOON + timedelta(days=3)
    pantry.windows[batch.id] = TastingWindow(
        opens_at=opens,
        opens_earliest=opens - timedelta(days=1),
        opens_latest=opens + timedelta(days=2),
        closes_at=opens + timedelta(days=5),
    )
    pantry.reminders.sync()
    pantry.windows.clear()
    pantry.reopen()
    pantry.reminders.sync()
    (taste,) = [
        item for item in pantry.reminders.listed() if item.reminder.kind is ReminderKind.TASTE
    ]
    assert "between Fri 27 Nov and Mon 30 Nov" in taste.body
    assert "too sour for you after Thu 3 Dec" in taste.body


def test_done_twice_is_one_act_and_undo_opens_it_again(pantry):
    own = pantry.own("Wash the cloths", minutes=10)
    pantry.reminders.done(own.id)
    pantry.reminders.done(own.id)
    act = pantry.history.undo_act()
    assert (act.kind, act.facts["reminder"]) == ("finish_reminder", "Wash the cloths")
    pantry.history.undo()
    assert pantry.history.undo_act().kind == "add_reminder"
    assert [item.reminder.id for item in pantry.reminders.listed()] == [own.id]


def test_what_was_done_can_be_neither_snoozed_nor_listed(pantry):
    own = pantry.own("Wash the cloths", minutes=10)
    pantry.reminders.done(own.id)
    pantry.reminders.snooze(own.id, NOON + timedelta(hours=1))
    assert pantry.reminders.listed() == ()
    assert pantry.history.undo_act().kind == "finish_reminder"


def test_a_snoozed_line_is_due_when_the_snooze_ends(pantry):
    own = pantry.own("Wash the cloths", minutes=-30)
    pantry.reminders.snooze(own.id, NOON + timedelta(hours=2))
    (item,) = pantry.reminders.listed()
    assert (item.is_due, item.due_at) == (False, NOON + timedelta(hours=2))
    pantry.clock.advance(hours=2)
    (item,) = pantry.reminders.listed()
    assert item.is_due
    assert item.lateness == timedelta(hours=2, minutes=30)


def test_a_snooze_into_the_past_is_refused(pantry):
    own = pantry.own("Wash the cloths", minutes=10)
    with pytest.raises(ImpossibleInput) as refused:
        pantry.reminders.snooze(own.id, NOON)
    assert refused.value.reason == "not_in_future"


def test_a_snooze_past_the_window_is_warned_of_and_allowed(pantry):
    batch = pantry.add_batch(days_ago=6)
    pantry.windows[batch.id] = TastingWindow(
        opens_at=NOON - timedelta(days=1), closes_at=NOON + timedelta(days=3)
    )
    pantry.reminders.sync()
    (taste,) = pantry.kept(ReminderKind.TASTE)
    assert pantry.reminders.snooze_problem(taste.id, NOON + timedelta(days=2)) == ""
    late = NOON + timedelta(days=5)
    assert "Sat 28 Nov" in pantry.reminders.snooze_problem(taste.id, late)
    pantry.reminders.snooze(taste.id, late)
    assert pantry.kept(ReminderKind.TASTE)[0].state is ReminderState.SNOOZED


@pytest.mark.parametrize(("text", "reason"), [("  ", "empty"), ("a" * 501, "too_long")])
def test_an_own_reminder_needs_words_and_not_too_many(pantry, text, reason):
    assert len(text) <= OWN_TEXT_LIMIT + 1
    with pytest.raises(ImpossibleInput) as refused:
        pantry.reminders.add_own(None, NOON, text)
    assert refused.value.reason == reason
    assert pantry.reminders.listed() == ()


def test_two_own_reminders_of_one_batch_at_one_moment_both_stand(pantry):
    batch = pantry.add_batch()
    pantry.own("one", batch=batch, hours=1)
    pantry.own("two", batch=batch, hours=1)
    pantry.reminders.sync()
    own = [item.title for item in pantry.reminders.listed() if item.reminder.kind.value == "own"]
    assert own == ["one", "two"]


def test_undoing_an_own_reminder_takes_it_off_the_list(pantry):
    pantry.own("Wash the cloths", hours=1)
    pantry.history.undo()
    assert pantry.reminders.listed() == ()
    pantry.history.redo()
    assert [item.title for item in pantry.reminders.listed()] == ["Wash the cloths"]


def test_an_unknown_reminder_is_an_error(pantry):
    with pytest.raises(NoSuchRow):
        pantry.reminders.done(404)


def test_every_kind_has_words_in_whole_sentences():
    for kind in ReminderKind:
        row = Reminder(id=1, batch_id=1, kind=kind, occurrence="x", due_at=NOON)
        title, body = reminder_words(row, "Amber", "Tall jar", NOON, UTC)
        assert title
        assert body.endswith(".")
        bare_title, bare_body = reminder_words(row, "", "", NOON, UTC)
        assert "{" not in title + body + bare_title + bare_body


def test_a_window_that_has_passed_is_said_to_have_passed():
    row = Reminder(
        id=1,
        batch_id=1,
        kind=ReminderKind.TASTE,
        occurrence="window",
        due_at=NOON - timedelta(days=6),
        window_end=NOON - timedelta(days=1),
    )
    _, body = reminder_words(row, "Amber", "Tall jar", NOON, UTC)
    assert "was forecast to close Tue 24 Nov" in body


def test_braces_in_a_name_stay_as_they_are():
    row = Reminder(id=1, batch_id=1, kind=ReminderKind.MOLD_LOOK, occurrence="x", due_at=NOON)
    title, _ = reminder_words(row, "{jar} {0}", "", NOON, UTC)
    assert title == "Look for mold on {jar} {0}"


@pytest.mark.parametrize(
    ("span", "words"),
    [
        (timedelta(minutes=7), "7 min"),
        (timedelta(hours=2, minutes=5), "2 h 5 min"),
        (timedelta(days=1), "1 day"),
        (timedelta(hours=37), "1 day 13 h"),
        (timedelta(days=3, hours=20), "3 days"),
    ],
)
def test_a_span_is_told_in_the_units_that_matter(span, words):
    assert span_words(span) == words


def test_lateness_tells_the_true_due_time():
    assert lateness_words(NOON, NOON + timedelta(minutes=3), UTC) == "Due now."
    assert lateness_words(NOON, NOON - timedelta(minutes=3), UTC) == "Due Wed 25 Nov at 12:00."
    late = lateness_words(NOON, NOON + timedelta(hours=3), UTC)
    assert late == "Was due Wed 25 Nov at 12:00, 3 h 0 min ago."


def test_a_summary_counts_what_it_does_not_name():
    _, body = summary_words(["a", "b", "c", "d", "e"], was_away=False)
    assert body.splitlines()[-1] == "One more is in the due list."


def test_doubt_in_the_clock_names_both_times():
    words = clock_doubt_words(NOON, NOON - timedelta(days=2), UTC)
    assert "Mon 23 Nov at 12:00" in words
    assert "Wed 25 Nov at 12:00" in words


def test_what_the_program_shows_by_itself_does_not_keep_an_act_from_being_undone(tmp_path):
    pantry = WatchedPantry(tmp_path / "pantry.sqlite", FakeClock())
    pantry.watch.start()
    pantry.own("feed the resting jar", minutes=5)
    pantry.tick(minutes=6)
    assert pantry.titles, "it was shown"
    troubles = []
    pantry.history.trouble.connect(troubles.append)
    pantry.history.undo()
    assert not troubles
    assert pantry.kept(ReminderKind.OWN) == ()
    pantry.close()


def test_tasting_is_asked_for_with_the_ph_first(pantry):
    """The window may be forecast from the recipe alone: nobody has measured anything yet."""
    batch = pantry.add_batch(days_ago=5)
    pantry.windows[batch.id] = TastingWindow(opens_at=NOON - timedelta(hours=4))
    pantry.reminders.sync()
    (taste,) = [
        item for item in pantry.reminders.listed() if item.reminder.kind is ReminderKind.TASTE
    ]
    assert "Measure the pH first: above 4.2 it is not ready to drink." in taste.body


def test_every_kind_has_its_place_in_the_list():
    assert sorted(KIND_ORDER, key=str) == sorted(ReminderKind, key=str)


def test_what_hurts_says_how_to_keep_safe():
    for kind in (ReminderKind.CHILL, ReminderKind.PRESSURE_CHECK, ReminderKind.OPEN_TEST):
        row = Reminder(id=1, batch_id=None, kind=kind, occurrence="x", due_at=NOON, window_end=NOON)
        _, body = reminder_words(row, "Ginger", "", NOON, UTC)
        assert "chill" in body.lower() or "fridge" in body
        assert "eyes" in body or "face" in body
