"""What is done with cultures: refusals by their field, one place for each, liquid that balances."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from brewdesk.services.culturecare import CultureCare
from brewdesk.services.evaporation import evaporated_l
from brewdesk.services.restingliquid import is_stated
from brewdesk.store.records import VesselDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    BatchStage,
    CareKind,
    CultureOrigin,
    CultureState,
    Look,
    Material,
    StepKind,
    VesselShape,
)

JAR = VesselDraft(
    name="Jar",
    shape=VesselShape.CYLINDER,
    material=Material.GLASS,
    brim_volume_l=1.0,
    working_volume_l=0.9,
    inner_diameter_cm=10.0,
    place_id=1,
)


@pytest.fixture
def care(kit):
    return CultureCare(kit.door, kit.settings)


@pytest.fixture
def resting(kit, care):
    culture = kit.culture()
    jar = kit.vessel("Store", brim_volume_l=1.0, working_volume_l=0.9, inner_diameter_cm=10.0)
    return care.rest(culture.id, jar.id, 0.5)


def refused(act, field, reason):
    with pytest.raises(ImpossibleInput) as problem:
        act()
    assert (problem.value.field, problem.value.reason) == (field, reason)


def test_a_daughter_rests_with_her_parent_known(kit, care, resting):
    jar = kit.vessel("Second")
    daughter = care.split(
        resting.id, name="Daughter", vessel_id=jar.id, pellicle_mm=3.0, rest_volume_l=0.3
    )
    assert daughter.origin is CultureOrigin.SPLIT
    assert daughter.state is CultureState.RESTING
    assert (daughter.vessel_id, daughter.rest_volume_l) == (jar.id, 0.3)
    assert kit.cultures.parents_of(daughter.id) == (resting,)
    assert care.resting_liquid(daughter.id).now_l.value == pytest.approx(0.3)


def test_a_daughter_without_a_vessel_is_in_none(care, resting):
    daughter = care.split(resting.id, name="Daughter", vessel_id=None, rest_volume_l=0.3)
    assert (daughter.vessel_id, daughter.rest_volume_l) == (None, None)


def test_a_split_is_refused_by_its_field(kit, care, resting):
    store = resting.vessel_id

    def split(**fields):
        wanted = {"name": "Daughter", "vessel_id": store} | fields
        return lambda: care.split(resting.id, **wanted)

    refused(split(name=" "), "name", "empty")
    refused(split(name="old faithful"), "name", "taken")
    refused(split(pellicle_mm=-1.0), "pellicle_mm", "out_of_range")
    refused(split(rest_volume_l=0.6), "rest_volume_l", "above_brim")
    refused(split(rest_volume_l=float("nan")), "rest_volume_l", "out_of_range")
    refused(split(vessel_id=kit.souring().vessel_id), "vessel_id", "occupied")
    metal = kit.vessel("Copper", material=Material.REACTIVE_METAL)
    refused(split(vessel_id=metal.id), "vessel_id", "material")
    assert len(kit.cultures.all()) == 1


def test_merging_retires_the_parents_and_adds_up_what_they_rested_in(kit, care, resting):
    jar = kit.vessel("Second")
    other = care.rest(kit.culture("Other").id, jar.id, 0.25)
    both = care.merge([resting.id, other.id], name="Both", vessel_id=jar.id)
    assert both.origin is CultureOrigin.MERGED
    assert both.rest_volume_l == pytest.approx(0.75)
    for parent in kit.cultures.parents_of(both.id):
        assert parent.state is CultureState.RETIRED
        assert (parent.vessel_id, parent.gone_to) == (None, "Both")
        assert parent.gone_at == kit.clock.now()


def test_a_merged_culture_may_take_over_a_parents_name(kit, care, resting):
    other = kit.culture("Other")
    both = care.merge([resting.id, other.id], name=resting.name, vessel_id=None)
    assert both.name == resting.name


def test_one_culture_is_not_merged_with_itself(care, resting):
    refused(
        lambda: care.merge([resting.id, resting.id], name="Both", vessel_id=None),
        "culture_ids",
        "too_few",
    )


def test_a_culture_at_work_that_is_moved_rests_and_its_batch_stays(kit, care):
    culture = kit.culture()
    batch = kit.souring(culture=culture)
    jar = kit.vessel("Second")
    moved = care.move(culture.id, jar.id)
    assert (moved.state, moved.vessel_id) == (CultureState.RESTING, jar.id)
    assert kit.batches.get(batch.id).stage is BatchStage.SOURING


def test_moving_takes_what_is_left_of_the_liquid_along(kit, care, resting):
    kit.clock.advance(days=20)
    left = care.resting_liquid(resting.id)
    jar = kit.vessel("Second")
    moved = care.move(resting.id, jar.id)
    assert moved.rest_volume_l == pytest.approx(left.now_l.value)
    assert moved.rest_volume_l < 0.5
    assert care.move(resting.id, None).rest_volume_l is None
    refused(lambda: care.move(resting.id, None), "vessel_id", "already_there")


def test_putting_to_work_ends_the_rest(kit, resting):
    kit.souring(kit.vessel(), kit.cultures.get(resting.id))
    worker = kit.cultures.get(resting.id)
    assert (worker.state, worker.rest_volume_l) == (CultureState.AT_WORK, None)


def test_feeding_counts_from_when_it_was_done_and_takes_off_what_dried_up(kit, care, resting):
    kit.clock.advance(days=10)
    before = care.resting_liquid(resting.id).now_l.value
    at = kit.clock.now()
    fed = care.feed(resting.id, 0.1, 5.0)
    assert fed.fed_at == at
    assert fed.rest_volume_l == pytest.approx(before + 0.1)
    assert care.care_of(resting.id)[0].kind is CareKind.FED
    earlier = care.feed(resting.id, 0.05, 2.0, at=at - timedelta(days=2))
    assert earlier.fed_at == at


def test_liquid_does_not_go_above_the_brim(care, resting):
    refused(lambda: care.top_up(resting.id, 0.6), "volume_l", "above_brim")
    refused(lambda: care.top_up(resting.id, 0.0), "volume_l", "out_of_range")
    refused(lambda: care.feed(resting.id, 0.1, -1.0), "sugar_g", "out_of_range")
    assert care.top_up(resting.id, 0.5).rest_volume_l == pytest.approx(1.0)


def test_care_has_its_time(kit, care, resting):
    later, sooner = kit.clock.now() + timedelta(days=1), resting.born_at - timedelta(days=1)
    refused(lambda: care.feed(resting.id, 0.1, 5.0, at=later), "at", "in_future")
    refused(lambda: care.feed(resting.id, 0.1, 5.0, at=sooner), "at", "before_birth")


def test_only_a_resting_culture_is_fed(kit, care):
    culture = kit.culture()
    kit.souring(culture=culture)
    refused(lambda: care.feed(culture.id, 0.1, 5.0), "culture_id", "not_resting")


def test_what_is_seen_and_measured_is_kept_newest_first(kit, care, resting):
    care.look(resting.id, Look.FINE, "smooth")
    kit.clock.advance(minutes=1)
    care.measure_ph(resting.id, 2.9, 0.05)
    kit.clock.advance(minutes=1)
    care.note(resting.id, "smells right")
    kinds = [row.kind for row in care.care_of(resting.id) if not is_stated(row)]
    assert kinds == [CareKind.NOTE, CareKind.PH, CareKind.LOOKED]
    refused(lambda: care.measure_ph(resting.id, float("nan"), None), "ph", "out_of_range")
    refused(lambda: care.note(resting.id, "  "), "text", "empty")


@pytest.mark.parametrize("act", ["give", "retire"])
def test_what_has_left_is_nowhere_and_can_do_nothing(kit, care, resting, act):
    if act == "give":
        gone = care.give_away(resting.id, "a  neighbour")
        assert (gone.state, gone.gone_to) == (CultureState.GIVEN_AWAY, "a neighbour")
    else:
        gone = care.retire(resting.id)
        assert gone.state is CultureState.RETIRED
    assert (gone.vessel_id, gone.rest_volume_l, gone.gone_at) == (None, None, kit.clock.now())
    refused(lambda: care.retire(resting.id), "culture_id", "gone")
    refused(lambda: care.split(resting.id, name="X", vessel_id=None), "culture_id", "gone")
    refused(lambda: care.look(resting.id, Look.FINE), "culture_id", "gone")


def test_a_culture_that_is_planned_for_a_batch_is_not_given_away(kit, care):
    culture = kit.culture()
    batch = kit.plan(culture=culture)
    refused(lambda: care.give_away(culture.id), "culture_id", "planned")
    kit.batches.drop_plan(batch.id)
    assert care.give_away(culture.id).state is CultureState.GIVEN_AWAY


def test_a_lost_culture_is_taken_out_of_what_was_to_be_brewed_with_it(kit, care):
    culture = kit.culture()
    planned = kit.plan(kit.vessel("A"), culture)
    brewing = kit.plan(kit.vessel("B"), culture, name="Other")
    kit.brewing.start(brewing.id)
    care.lose(culture.id, "dried up", flag=False)
    assert kit.batches.get(planned.id).culture_id is None
    assert kit.batches.get(brewing.id).culture_id is None
    kinds = [step.kind for step in kit.brewing.steps(brewing.id)]
    assert StepKind.CULTURE_IN not in kinds
    assert kit.cultures.get(culture.id).suspect_at is None
    refused(lambda: care.lose(culture.id, "again"), "culture_id", "gone")


def test_losing_needs_a_reason(care, resting):
    refused(lambda: care.lose(resting.id, " "), "reason", "empty")


@settings(max_examples=40, deadline=None)
@given(
    volume_l=st.floats(0.01, 1.0),
    days=st.floats(0.0, 400.0),
)
def test_evaporation_lies_between_nothing_and_all_of_it(volume_l, days):
    from tests.helpers.fakes import DEFAULT_START

    until = DEFAULT_START + timedelta(days=days)
    lost = evaporated_l(JAR, volume_l, DEFAULT_START, until)
    assert 0.0 <= lost.low <= lost.value <= lost.high <= volume_l
    backwards = evaporated_l(JAR, volume_l, until, DEFAULT_START)
    assert (backwards.low, backwards.value, backwards.high) == (0.0, 0.0, 0.0)


def test_evaporation_is_the_fall_of_the_open_surface():
    """A cylinder 10 cm wide has 78.54 cm2 of surface (pi r2); 4 mm of it are 31.4 mL."""
    from tests.helpers.fakes import DEFAULT_START

    lost = evaporated_l(JAR, 0.9, DEFAULT_START, DEFAULT_START + timedelta(days=10))
    assert lost.value == pytest.approx(0.0314, rel=0.01)
    assert lost.high / lost.low > 10
    assert lost.caveats


def test_planning_warns_of_a_culture_that_is_planned_elsewhere_and_refuses_nothing(kit):
    culture = kit.culture()
    first = kit.plan(kit.vessel("A"), culture)
    (verdict,) = kit.batches.culture_verdicts(culture.id)
    assert verdict.code == "culture_planned_elsewhere"
    assert kit.batches.culture_verdicts(culture.id, batch_id=first.id) == ()
    assert kit.batches.culture_verdicts(None) == ()
    second = kit.plan(kit.vessel("B"), culture, name="Other")
    assert second.culture_id == culture.id


def test_planning_warns_of_a_culture_that_is_at_work(kit):
    culture = kit.culture()
    kit.souring(culture=culture)
    (verdict,) = kit.batches.culture_verdicts(culture.id)
    assert verdict.code == "culture_at_work_elsewhere"


def test_correcting_where_it_is_leaves_the_liquid_behind(kit, care, resting):
    assert kit.cultures.edit(resting.id, vessel_id=None).rest_volume_l is None
    kit.history.undo()
    assert kit.cultures.get(resting.id).rest_volume_l == 0.5
    gone = kit.cultures.edit(resting.id, state=CultureState.GIVEN_AWAY)
    assert (gone.vessel_id, gone.rest_volume_l, gone.gone_at) == (None, None, kit.clock.now())
    back = kit.cultures.edit(resting.id, state=CultureState.RESTING)
    assert (back.gone_at, back.gone_to) == (None, "")
