"""Each reminder is shown at one desk, or at each, and never lost with a desk that died."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services.settings import REMINDERS_HERE, REMINDERS_ONCE


@pytest.fixture
def anna(shared):
    """An invented maker's desk, without its window."""
    return shared.open_bare("Anna")


@pytest.fixture
def ben(shared, anna):
    """Another's."""
    return shared.open_bare("Ben")


@pytest.fixture
def due(shared, anna, ben):
    """A reminder of the maker's own that has come due; nobody has looked yet."""
    at = shared.clock.now() + timedelta(hours=1)
    reminder = anna.desk.reminders.add_own(None, at, "Invented errand")
    heard_by(shared, anna, ben)
    shared.clock.advance(hours=2)
    return reminder


def heard_by(shared, *programs):
    """Wait until each desk has been shown the newest change."""
    newest = programs[0].store.serial()
    shared.soon(lambda: all(p.store.seen() >= newest or p is programs[0] for p in programs))


def shown(program):
    return [notice.title for notice in program.notifier.shown]


def look(*programs):
    for program in programs:
        program.desk.reminder_clock.evaluate()


def test_each_reminder_is_shown_at_one_desk_only(shared, anna, ben, due):
    look(ben, anna)
    heard_by(shared, ben, anna)
    look(anna, ben)

    assert len(shown(ben)) == 1
    assert shown(anna) == []


def test_where_every_desk_shows_them_each_shows_it_once(shared, anna, ben, due):
    anna.desk.settings.put(REMINDERS_ONCE, False)
    shared.soon(lambda: not ben.desk.settings.get(REMINDERS_ONCE))
    for _ in range(3):
        look(ben, anna)
        heard_by(shared, ben, anna)
        heard_by(shared, anna, ben)

    assert len(shown(anna)) == len(shown(ben)) == 1
    assert shown(anna) == shown(ben)


def test_a_desk_that_is_to_show_none_leaves_them_to_the_other(shared, anna, ben, due):
    ben.desk.settings.put(REMINDERS_HERE, False)

    look(ben)
    assert shown(ben) == []
    look(anna)

    assert len(shown(anna)) == 1
    assert anna.desk.settings.get(REMINDERS_HERE), "that was Ben's choice for his desk alone"


def claim(program, reminder):
    """Claim as the clock does just before it shows."""
    with program.store.write() as unit:
        return unit.shares.claim([reminder.id], lease_s=30)


def test_what_a_desk_claimed_is_not_shown_at_another(shared, anna, ben, due):
    assert claim(ben, due) == {due.id}

    look(anna)

    assert claim(anna, due) == frozenset()
    assert shown(anna) == []


def test_what_a_desk_claimed_and_never_showed_is_shown_by_the_other(
    shared, anna, ben, due, pg_server
):
    claim(ben, due)  # and dies
    database = shared.address.partition("?")[0].rpartition("/")[2]
    pg_server.execute("UPDATE brewdesk.reminder_claim SET until = now() - interval '1s'", database)

    look(anna)

    assert len(shown(anna)) == 1
    look(ben)  # it was only slow: the claim is gone, the reminder was shown
    assert shown(ben) == []


def test_a_claim_that_ran_out_before_the_showing_is_asked_for_again(shared, anna, ben, due):
    items = ben.desk.reminders.to_be_shown(shared.clock.now())
    shares = ben.desk.reminder_clock._shares
    assert shares.claim(items, shared.clock.now()) == items
    with anna.store.write() as unit:  # Ben's computer slept meanwhile, and Anna's took over
        unit._connection.exec_driver_sql(
            f"UPDATE reminder_claim SET desk_uid = '{anna.store.desk.uid}'"
        )

    with ben.store.write() as unit:
        assert shares.held(unit, items) == ()


def test_what_is_done_at_one_desk_is_withdrawn_at_the_other(shared, anna, ben, due):
    look(ben)
    heard_by(shared, ben, anna)
    (key,) = ben.notifier.keys

    anna.desk.reminders.done(due.id)

    shared.soon(lambda: ben.notifier.withdrawn == [key])


def test_one_desk_keeps_reminders_in_line_and_another_takes_its_place(shared, anna, ben):
    shared.soon(lambda: anna.desk.desks.is_keeper or ben.desk.desks.is_keeper)
    keeper, other = (anna, ben) if anna.desk.desks.is_keeper else (ben, anna)
    assert not other.desk.desks.is_keeper

    with shared.qtbot.waitSignal(other.desk.desks.became_keeper, timeout=10_000):
        shared.close(keeper)

    assert other.desk.desks.is_keeper
