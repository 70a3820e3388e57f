"""What reminders go by is read once, and again when something of it changed."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services.changes import Change, Topic
from brewdesk.services.reminder_facts import ReadingsBook
from brewdesk.store.records import ReadingDraft
from culturecore.stages import BatchStage, Look, Method, Quantity


@pytest.fixture
def book(kit):
    made = ReadingsBook()
    kit.door.changes.changed.connect(made.note)
    return made


def read_ph(kit, batch, ph):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=kit.clock.now(),
        quantity=Quantity.PH,
        method=Method.METER,
        value=ph,
        sd=0.05,
    )
    return kit.readings.record((draft,))[0]


def asked(kit, book, *batches):
    with kit.store.read() as unit:
        return book.of(unit, [kit.batches.get(batch.id) for batch in batches])


def two(kit):
    return kit.souring(name="One"), kit.souring(vessel=kit.vessel("Other"), name="Two")


def test_each_batch_has_its_own_readings_and_looks_by_time(kit, book):
    one, two_ = two(kit)
    read_ph(kit, one, 3.9)
    kit.clock.advance(days=1)
    read_ph(kit, one, 3.6)
    look = ReadingDraft(
        batch_id=two_.id,
        at=kit.clock.now(),
        quantity=Quantity.LOOK,
        method=Method.EYE,
        value=None,
        text=Look.UNSURE.value,
    )
    kit.readings.record((look,))
    found = asked(kit, book, one, two_)
    assert [reading.ph for reading in found[one.id].ph] == [3.9, 3.6]
    assert found[one.id].looks == []
    assert found[two_.id].ph == []
    assert [taken.look for taken in found[two_.id].looks] == [Look.UNSURE]


def test_what_is_kept_is_not_read_again(kit, book, monkeypatch):
    one, _ = two(kit)
    read_ph(kit, one, 3.9)
    first = asked(kit, book, one)
    with kit.store.read() as unit:
        monkeypatch.delattr(unit, "readings")
        assert book.of(unit, [kit.batches.get(one.id)]) == first


def test_a_reading_is_known_once_it_was_told(kit, book):
    one, two_ = two(kit)
    asked(kit, book, one, two_)
    kit.clock.advance(hours=1)
    reading = read_ph(kit, one, 3.4)
    assert [taken.ph for taken in asked(kit, book, one)[one.id].ph] == [3.4]
    kit.readings.edit(reading.id, value=3.5)
    assert [taken.ph for taken in asked(kit, book, one)[one.id].ph] == [3.5]
    kit.readings.remove(reading.id)
    assert asked(kit, book, one)[one.id].ph == []


def test_a_change_while_it_is_read_leaves_nothing_old_behind(kit, book):
    one, _ = two(kit)
    with kit.store.read() as unit:
        real = unit.readings

        class Slow:
            def where(self, **asked_for):
                found = real.where(**asked_for)
                book.note(Change(Topic.READINGS, frozenset({one.id})))
                return found

        unit.readings = Slow()
        book.of(unit, [kit.batches.get(one.id)])
    read = []
    with kit.store.read() as unit:
        real = unit.readings

        class Watched:
            def where(self, **asked_for):
                read.append(asked_for["batch_id"])
                return real.where(**asked_for)

        unit.readings = Watched()
        book.of(unit, [kit.batches.get(one.id)])
    assert read == [(one.id,)]


def test_what_does_not_sour_has_no_readings_to_go_by(kit, book):
    one, _ = two(kit)
    read_ph(kit, one, 3.4)
    kit.clock.advance(days=8)
    kit.batches.draw_off(one.id)
    assert kit.batches.get(one.id).stage is BatchStage.DRAWN_OFF
    assert asked(kit, book, one) == {}
    assert kit.clock.now() - one.started_at > timedelta(days=7)
