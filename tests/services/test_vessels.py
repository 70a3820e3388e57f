"""Vessels and places: what can be, what cannot, what is worth a warning."""

from __future__ import annotations

import itertools
import math

import pytest

from brewdesk.services.wording.problems import impossible_words
from brewdesk.store.records import PlaceDraft, VesselDraft
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import Material, VesselShape


def test_vessels_stand_in_the_order_in_which_they_came(kit):
    kit.vessel("One")
    kit.vessel("Two")
    kit.vessel("First of all", shelf_order=-1)
    assert [vessel.name for vessel in kit.vessels.all()] == ["First of all", "One", "Two"]


@pytest.mark.parametrize(
    ("fields", "field", "reason"),
    [
        ({"name": "  "}, "name", "empty"),
        ({"brim_volume_l": 0.0}, "brim_volume_l", "out_of_range"),
        ({"brim_volume_l": -4.0}, "brim_volume_l", "out_of_range"),
        ({"brim_volume_l": math.nan}, "brim_volume_l", "out_of_range"),
        ({"brim_volume_l": math.inf}, "brim_volume_l", "out_of_range"),
        ({"working_volume_l": 0.0}, "working_volume_l", "out_of_range"),
        ({"working_volume_l": 4.6}, "working_volume_l", "above_brim"),
        ({"inner_diameter_cm": 0.0}, "inner_diameter_cm", "out_of_range"),
        ({"inner_diameter_cm": 1.5}, "inner_diameter_cm", "proportions"),
        ({"inner_diameter_cm": 150.0}, "inner_diameter_cm", "proportions"),
    ],
)
def test_a_vessel_that_cannot_be_is_refused_by_its_field(kit, fields, field, reason):
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessel(**fields)
    assert (refused.value.field, refused.value.reason) == (field, reason)
    assert field in VesselDraft.__dataclass_fields__
    assert kit.vessels.all() == ()


def test_working_volume_may_reach_the_brim(kit):
    assert kit.vessel(working_volume_l=4.5).working_volume_l == 4.5


def test_odd_proportions_are_warned_of_but_kept(kit):
    # 4.5 L at 40 cm across would stand 3.6 cm high.
    vessel = kit.vessel(inner_diameter_cm=40.0)
    verdicts = {verdict.code: verdict for verdict in kit.vessels.check(vessel)}
    odd = verdicts["vessel_proportions_unusual"]
    assert odd.level is Level.WARN
    assert odd.numbers["height_cm"] == pytest.approx(4500.0 / (math.pi * 20.0**2))


def test_a_usual_vessel_has_only_its_material_judged(kit):
    verdicts = kit.vessels.check(kit.vessel())
    assert verdicts == (kit.vessels.material_verdict(Material.GLASS),)


def test_two_vessels_on_the_shelf_have_different_names(kit):
    first = kit.vessel("Tall jar")
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessel(" tall JAR ")
    assert (refused.value.field, refused.value.reason) == ("name", "taken")

    kit.vessels.retire(first.id)
    kit.vessel("Tall jar")
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessels.restore(first.id)
    assert refused.value.reason == "taken"


@pytest.mark.parametrize("typed", ["  Tall   jar ", "Tall\njar"])
def test_names_are_kept_tidy_and_short(kit, typed):
    vessel = kit.vessel(typed)
    assert vessel.name == "Tall jar"
    assert kit.vessels.edit(vessel.id, name=" Short  jar").name == "Short jar"
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessels.edit(vessel.id, name="x" * 81)
    assert (refused.value.field, refused.value.reason) == ("name", "too_long")


def test_an_edit_may_keep_the_name(kit):
    vessel = kit.vessel("Tall jar")
    assert kit.vessels.edit(vessel.id, name="Tall jar", note="x").note == "x"


def test_a_vessel_cannot_shrink_below_what_is_in_it(kit):
    batch = kit.souring()
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessels.edit(batch.vessel_id, brim_volume_l=3.9, working_volume_l=3.5)
    assert (refused.value.field, refused.value.reason) == ("brim_volume_l", "below_fill")
    assert refused.value.low == batch.fill_volume_l


def test_a_vessel_in_use_is_not_retired(kit):
    batch = kit.plan()
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessels.retire(batch.vessel_id)
    assert refused.value.reason == "occupied"

    kit.batches.drop_plan(batch.id)
    retired = kit.vessels.retire(batch.vessel_id)
    assert retired.retired_at == kit.clock.now()
    assert kit.vessels.all() == ()
    assert kit.vessels.all(include_retired=True) == (retired,)
    assert kit.vessels.restore(retired.id).retired_at is None


def test_the_first_place_is_made_once_and_by_the_program(kit):
    place = kit.vessels.ensure_place()
    assert (place.name, place.temperature_c) == ("Pantry", 22.0)
    assert kit.vessels.ensure_place() == place
    assert kit.vessels.places() == (place,)
    assert kit.history.undo_act() is None


@pytest.mark.parametrize(
    ("name", "temperature_c", "field"),
    [
        ("", 20.0, "name"),
        ("pantry", 20.0, "name"),
        ("Oven", 90.0, "temperature_c"),
        ("Cellar", math.nan, "temperature_c"),
    ],
)
def test_a_place_that_cannot_be_is_refused(kit, name, temperature_c, field):
    kit.vessels.ensure_place()
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessels.add_place(PlaceDraft(name=name, temperature_c=temperature_c))
    assert refused.value.field == field


def test_a_place_is_renamed(kit):
    place = kit.vessels.ensure_place()
    assert kit.vessels.edit_place(place.id, name="Cupboard").name == "Cupboard"


@pytest.mark.parametrize("shape", list(VesselShape))
def test_the_outline_of_a_vessel_encloses_its_volume(kit, shape):
    outline = kit.vessels.profile(shape, 15.0, 4.5)
    # Frustum formula, sum over the sections (any geometry text).
    volume_cm3 = sum(
        math.pi * (h1 - h0) * (r0 * r0 + r0 * r1 + r1 * r1) / 3.0
        for (h0, r0), (h1, r1) in itertools.pairwise(outline)
    )
    assert volume_cm3 == pytest.approx(4500.0)
    assert max(radius for _, radius in outline) == pytest.approx(7.5)


def test_a_vessel_with_a_culture_in_it_stays_on_the_shelf(kit):
    vessel = kit.vessel()
    culture = kit.culture(vessel_id=vessel.id)
    with pytest.raises(ImpossibleInput) as refused:
        kit.vessels.retire(vessel.id)
    assert (refused.value.field, refused.value.reason) == ("vessel_id", "holds_culture")
    assert "culture" in impossible_words(refused.value)

    kit.cultures.edit(culture.id, vessel_id=None)
    assert kit.vessels.retire(vessel.id).retired_at is not None
