"""The one door for changes: all or nothing, written down, told."""

from __future__ import annotations

import pytest

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import PlaceDraft
from tests.helpers.dump import dump

CELLAR = PlaceDraft(name="Cellar", temperature_c=14.0)


def test_an_act_is_written_with_its_rows_and_told_once(kit):
    place = kit.door.perform(
        ActKind.ADD_PLACE,
        lambda place: {"name": place.name, "temperature_c": place.temperature_c},
        lambda unit: unit.places.add(CELLAR),
        topics=Topic.PLACES,
        vessel_id=lambda place: place.id + 100,
    )

    act = kit.history.undo_act()
    assert act.kind == "add_place"
    assert act.facts == {"name": "Cellar", "temperature_c": 14.0}
    assert act.at == kit.clock.now()
    assert act.vessel_id == place.id + 100
    (change,) = kit.heard
    assert change.topics == Topic.PLACES


def test_work_that_fails_leaves_no_row_no_act_and_no_word(kit):
    before = dump(kit.path)

    def work(unit):
        unit.places.add(CELLAR)
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        kit.door.perform(ActKind.ADD_PLACE, {}, work, topics=Topic.PLACES)

    assert dump(kit.path) == before
    assert kit.history.undo_act() is None
    assert kit.heard == []


def test_a_refused_row_takes_the_whole_act_with_it(kit):
    before = dump(kit.path)

    def work(unit):
        unit.places.add(CELLAR)
        unit.places.add(PlaceDraft(name="", temperature_c=14.0))

    with pytest.raises(StoreTrouble):
        kit.door.perform(ActKind.ADD_PLACE, {}, work, topics=Topic.PLACES)
    assert dump(kit.path) == before


def test_quiet_work_is_told_but_is_no_act(kit):
    kit.door.quiet(lambda unit: unit.places.add(CELLAR), batch_ids=(7,))
    (change,) = kit.heard
    assert change.topics == Topic.PLACES
    assert change.batch_ids == {7}
    assert kit.history.undo_act() is None


def test_quiet_work_that_changes_nothing_says_nothing(kit):
    kit.door.quiet(lambda unit: unit.places.where(), topics=Topic.PLACES)
    assert kit.heard == []
