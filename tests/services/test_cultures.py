"""Cultures, where they are, and their family."""

from __future__ import annotations

from datetime import timedelta

import pytest

from culturecore.errors import ImpossibleInput
from culturecore.stages import CultureOrigin, CultureState, Material


def test_a_family_of_cultures_is_kept_with_all_its_links(kit):
    bottle = kit.culture("Bottle", origin=CultureOrigin.RAW_BOTTLE)
    gift = kit.culture("Gift")
    merged = kit.culture("Both", origin=CultureOrigin.MERGED, parents=(bottle.id, gift.id))
    split = kit.culture("Piece", origin=CultureOrigin.SPLIT, parents=(merged.id, merged.id))

    assert kit.cultures.parents_of(merged.id) == (bottle, gift)
    assert kit.cultures.parents_of(split.id) == (merged,)
    assert kit.cultures.parent_links() == (
        (merged.id, bottle.id),
        (merged.id, gift.id),
        (split.id, merged.id),
    )


def test_a_culture_is_not_older_than_its_parent(kit):
    parent = kit.culture("Parent")
    with pytest.raises(ImpossibleInput) as refused:
        kit.culture("Child", born_at=kit.clock.now() - timedelta(days=1), parents=(parent.id,))
    assert (refused.value.field, refused.value.reason) == ("born_at", "before_parent")
    assert kit.cultures.parent_links() == ()


@pytest.mark.parametrize(
    ("fields", "field", "reason"),
    [
        ({"name": " "}, "name", "empty"),
        ({"name": "old faithful"}, "name", "taken"),
        ({"pellicle_mm": -1.0}, "pellicle_mm", "out_of_range"),
        ({"pellicle_mm": float("nan")}, "pellicle_mm", "out_of_range"),
    ],
)
def test_a_culture_that_cannot_be_is_refused_by_its_field(kit, fields, field, reason):
    kit.culture()
    with pytest.raises(ImpossibleInput) as refused:
        kit.culture(**({"name": "Another"} | fields))
    assert (refused.value.field, refused.value.reason) == (field, reason)


def test_a_culture_is_not_born_tomorrow(kit):
    with pytest.raises(ImpossibleInput) as refused:
        kit.culture(born_at=kit.clock.now() + timedelta(days=1))
    assert (refused.value.field, refused.value.reason) == ("born_at", "in_future")


@pytest.mark.parametrize(
    "state", [CultureState.RETIRED, CultureState.GIVEN_AWAY, CultureState.LOST]
)
def test_a_culture_that_is_gone_is_in_no_vessel_and_its_name_is_free(kit, state):
    culture = kit.culture(vessel_id=kit.vessel().id)
    gone = kit.cultures.edit(culture.id, state=state)
    assert (gone.state, gone.vessel_id) == (state, None)
    assert kit.cultures.where(culture.id) is None
    assert kit.cultures.all(include_gone=False) == ()
    assert kit.cultures.all() == (gone,)
    kit.culture(culture.name)


def test_a_culture_is_found_where_it_was_put(kit):
    vessel = kit.vessel()
    culture = kit.culture()
    assert kit.cultures.where(culture.id) is None
    kit.cultures.edit(culture.id, vessel_id=vessel.id)
    assert kit.cultures.where(culture.id) == vessel


def test_a_culture_does_not_rest_in_a_vessel_that_sours(kit):
    batch = kit.souring()
    with pytest.raises(ImpossibleInput) as refused:
        kit.culture(vessel_id=batch.vessel_id)
    assert (refused.value.field, refused.value.reason) == ("vessel_id", "occupied")


def test_a_culture_is_not_put_into_a_retired_vessel(kit):
    vessel = kit.vessels.retire(kit.vessel().id)
    with pytest.raises(ImpossibleInput) as refused:
        kit.culture(vessel_id=vessel.id)
    assert refused.value.reason == "retired"


def test_a_culture_is_not_put_to_rest_where_a_batch_of_another_is_planned(kit):
    vessel = kit.vessel()
    kit.plan(vessel)
    with pytest.raises(ImpossibleInput) as refused:
        kit.culture("Guest", vessel_id=vessel.id)
    assert (refused.value.field, refused.value.reason) == ("vessel_id", "occupied")


def test_a_culture_may_rest_in_the_vessel_it_is_planned_for(kit):
    vessel, culture = kit.vessel(), kit.culture()
    kit.plan(vessel, culture)
    assert kit.cultures.edit(culture.id, vessel_id=vessel.id).vessel_id == vessel.id


def test_a_corrected_vessel_must_hold_what_the_culture_rests_in(kit):
    jar, cup = kit.vessel("Store jar"), kit.vessel("Cup", brim_volume_l=0.3, working_volume_l=0.25)
    lead = kit.vessel("Old crock", material=Material.LEAD_CRYSTAL)
    culture = kit.culture(vessel_id=jar.id, rest_volume_l=0.5)
    for vessel, reason in ((cup, "above_brim"), (lead, "material")):
        with pytest.raises(ImpossibleInput) as refused:
            kit.cultures.edit(culture.id, vessel_id=vessel.id)
        assert (refused.value.field, refused.value.reason) == ("vessel_id", reason)
    other = kit.vessel("Other jar")
    assert kit.cultures.edit(culture.id, vessel_id=other.id).rest_volume_l == 0.5
