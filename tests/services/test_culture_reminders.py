"""Reminders of resting cultures: when, how often, and how they meet what the maker does."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services.culture_reminder_rules import (
    CultureFacts,
    RestRhythm,
    film_looks,
    wanted_of_culture,
)
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.reminders import Reminders
from brewdesk.services.wording.reminders import reminder_words
from culturecore.stages import CultureState, ReminderKind, ReminderState
from tests.helpers.dump import dump

RHYTHM = RestRhythm(28.0, 14.0)


@pytest.fixture
def care(kit):
    return CultureCare(kit.door, kit.settings)


@pytest.fixture
def reminders(kit):
    return Reminders(kit.door, rhythm=lambda: RHYTHM)


@pytest.fixture
def resting(kit, care):
    return care.rest(kit.culture().id, kit.vessel("Store").id, 0.5)


def due(reminders):
    return [item for item in reminders.listed() if item.is_due]


def facts(kit, **fields):
    now = kit.clock.now()
    usual = {
        "culture_id": 1,
        "state": CultureState.RESTING,
        "fed_at": now,
        "poured_at": now,
        "is_in_vessel": True,
    }
    return CultureFacts(**(usual | fields))


def test_a_resting_culture_wants_feeding_and_a_look_for_dryness(kit):
    zone = kit.clock.zone()
    wants = wanted_of_culture(facts(kit), RHYTHM, now=kit.clock.now(), zone=zone)
    days = {want.kind: (want.due_at.date() - kit.clock.now().date()).days for want in wants}
    assert days == {ReminderKind.FEED: 28, ReminderKind.TOP_UP: 14}


@pytest.mark.parametrize(
    "fields",
    [{"state": CultureState.AT_WORK}, {"state": CultureState.LOST}, {"is_in_vessel": False}],
)
def test_others_want_nothing(kit, fields):
    zone = kit.clock.zone()
    assert wanted_of_culture(facts(kit, **fields), RHYTHM, now=kit.clock.now(), zone=zone) == ()


def test_a_round_that_was_missed_is_asked_for_once_with_the_next_to_come(kit):
    now = kit.clock.now()
    old = facts(kit, fed_at=now - timedelta(days=90), poured_at=now - timedelta(days=90))
    wants = wanted_of_culture(old, RHYTHM, now=now, zone=kit.clock.zone())
    feeding = [want.due_at for want in wants if want.kind is ReminderKind.FEED]
    assert len(feeding) == 2
    assert feeding[0] <= now < feeding[1]


def test_feeding_answers_the_reminder(kit, care, reminders, resting):
    kit.clock.advance(days=29)
    reminders.sync()
    assert {item.reminder.kind for item in due(reminders)} == {
        ReminderKind.FEED,
        ReminderKind.TOP_UP,
    }
    care.feed(resting.id, 0.1, 5.0)
    reminders.sync()
    assert due(reminders) == []


def test_topping_up_does_not_answer_the_feeding(kit, care, reminders, resting):
    kit.clock.advance(days=29)
    care.top_up(resting.id, 0.1)
    reminders.sync()
    assert [item.reminder.kind for item in due(reminders)] == [ReminderKind.FEED]


def test_ticking_off_asks_again_after_another_round(kit, reminders, resting):
    kit.clock.advance(days=29)
    reminders.sync()
    feed = next(i for i in due(reminders) if i.reminder.kind is ReminderKind.FEED)
    reminders.done(feed.reminder.id)
    reminders.sync()
    assert ReminderKind.FEED not in {item.reminder.kind for item in due(reminders)}
    kit.clock.advance(days=28)
    reminders.sync()
    assert ReminderKind.FEED in {item.reminder.kind for item in due(reminders)}


def test_a_culture_put_to_work_is_no_longer_to_be_fed(kit, reminders, resting):
    kit.clock.advance(days=29)
    reminders.sync()
    kit.souring(kit.vessel("Jar"), kit.cultures.get(resting.id))
    reminders.sync()
    kinds = {item.reminder.kind for item in reminders.listed()}
    assert not kinds & {ReminderKind.FEED, ReminderKind.TOP_UP}


def test_the_line_names_culture_and_vessel(kit, reminders, resting):
    kit.clock.advance(days=29)
    reminders.sync()
    item = next(i for i in due(reminders) if i.reminder.kind is ReminderKind.FEED)
    assert item.title == "Feed Old Faithful in Store"
    assert (item.culture.id, item.vessel.name, item.batch) == (resting.id, "Store", None)


def test_syncing_twice_changes_nothing(kit, reminders, resting):
    kit.clock.advance(days=40)
    assert reminders.sync()
    before = dump(kit.path)
    assert not reminders.sync()
    assert dump(kit.path) == before


def test_undoing_the_rest_takes_its_reminders_back(kit, reminders, resting):
    reminders.sync()
    kit.history.undo()
    reminders.sync()
    with kit.store.read() as unit:
        states = {row.state for row in unit.reminders.where(culture_id=resting.id)}
    assert states <= {ReminderState.DROPPED}


def test_looks_for_a_film_go_on_after_the_usual_days(kit):
    started_at, zone = kit.clock.now(), kit.clock.zone()
    kit.clock.advance(days=60)
    looks = film_looks(started_at, now=kit.clock.now(), zone=zone)
    assert len(looks) == 2
    assert looks[0].due_at <= kit.clock.now() < looks[1].due_at
    assert film_looks(None, now=kit.clock.now(), zone=zone) == ()


def test_the_shelf_says_what_a_resting_culture_wants(kit, reminders, resting):
    reminders.sync()
    jar = next(jar for jar in kit.shelf.jars() if jar.vessel.name == "Store")
    assert jar.next_code == "top_up"
    assert jar.fill_volume_l == pytest.approx(0.5)


def test_words_defer_to_doubt(kit, reminders, resting):
    reminders.sync()
    with kit.store.read() as unit:
        rows = unit.reminders.where(culture_id=resting.id)
    now, zone = kit.clock.now(), kit.clock.zone()
    bodies = [reminder_words(row, "Old Faithful", "Store", now, zone)[1] for row in rows]
    assert any("When in doubt, throw it out." in body for body in bodies)
