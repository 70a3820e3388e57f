"""The family of cultures, and how their batches did, told no better than it is known."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.culturecare import CultureCare
from brewdesk.services.lineage import Lineage, generations
from brewdesk.store.records import ReadingDraft
from culturecore.stages import Method, Quantity, TasteMark


@pytest.fixture
def lineage(kit):
    return Lineage(kit.door)


def record(kit, batch, day, ph=None, taste=None):
    kit.clock.set_now(batch.started_at + timedelta(days=day))
    drafts = []
    if ph is not None:
        drafts.append(
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=ph,
            )
        )
    if taste is not None:
        drafts.append(
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now(),
                quantity=Quantity.TASTE,
                method=Method.TONGUE,
                text=taste.value,
            )
        )
    kit.readings.record(drafts)


def test_generations_are_the_longest_way_from_a_founder():
    parents = {2: [1], 3: [2, 1], 4: [1], 5: [3, 4]}
    assert generations([1, 2, 3, 4, 5], parents) == {1: 0, 2: 1, 3: 2, 4: 1, 5: 3}


def test_a_ring_of_parents_does_not_hang_the_tree():
    found = generations([1, 2], {1: [2], 2: [1]})
    assert set(found) == {1, 2}


@given(
    st.lists(st.tuples(st.integers(0, 29), st.integers(0, 29)), max_size=60).map(
        lambda pairs: [(max(a, b), min(a, b)) for a, b in pairs if a != b]
    ),
    st.randoms(),
)
def test_a_child_is_one_generation_after_its_latest_parent(links, random):
    ids = list(range(30))
    random.shuffle(ids)
    parents = {}
    for child, parent in links:
        parents.setdefault(child, []).append(parent)
    found = generations(ids, parents)
    for one in ids:
        above = [found[parent] for parent in parents.get(one, ())]
        assert found[one] == (1 + max(above) if above else 0)


def test_two_thousand_generations_are_no_trouble():
    ids = list(range(2000))
    assert generations(ids, {n: [n - 1] for n in range(1, 2000)})[1999] == 1999


def test_the_tree_knows_kin_age_place_and_batches(kit, lineage):
    care = CultureCare(kit.door, kit.settings)
    mother = kit.culture("Mother")
    batch = kit.souring(culture=mother)
    kit.clock.advance(days=3)
    daughter = care.split(mother.id, name="Daughter", vessel_id=None)
    kit.clock.advance(days=4)
    care.give_away(daughter.id, "a neighbour")
    kit.clock.advance(days=10)

    family = lineage.tree()

    node, young = family.nodes
    assert (node.generation, young.generation) == (0, 1)
    assert node.child_ids == (daughter.id,)
    assert young.parent_ids == (mother.id,)
    assert (node.age_days, young.age_days) == (17, 4)  # one that is gone ages no more
    assert node.vessel_name == kit.vessels.get(batch.vessel_id).name
    assert (node.batch_count, young.batch_count) == (1, 0)
    assert (node.is_gone, young.is_gone) == (False, True)
    assert family.node(daughter.id) is young
    assert family.node(0) is None


def test_a_culture_without_batches_has_no_story_to_tell(kit, lineage):
    story = lineage.story(kit.culture().id)
    assert story.batches == ()
    assert [pace.median_days for pace in story.paces] == [None, None]
    assert (story.tastes, story.mishaps) == ({}, ())


def test_the_day_of_a_ph_lies_between_the_readings_around_it(kit, lineage):
    culture = kit.culture()
    batch = kit.souring(culture=culture)
    record(kit, batch, 1, 4.6)
    record(kit, batch, 3, 4.0)
    record(kit, batch, 7, 3.0)
    safe, tasted = lineage.story(culture.id).paces
    assert safe.median_days == pytest.approx(1 + 2 * (4.6 - 4.2) / 0.6)
    assert tasted.median_days == pytest.approx(3 + 4 * (4.0 - 3.2) / 1.0)
    assert (safe.counted, tasted.counted) == (1, 1)


def test_batches_that_did_not_show_it_are_counted_apart(kit, lineage):
    culture = kit.culture()
    for number, course in enumerate(([(2, 4.5), (4, 3.1)], [(2, 4.5), (5, 4.4)], [])):
        batch = kit.souring(kit.vessel(f"Jar {number}"), culture, name=f"Brew {number}")
        for day, ph in course:
            record(kit, batch, day, ph)
    safe = lineage.story(culture.id).paces[0]
    assert (safe.counted, safe.not_shown, safe.below_from_start) == (1, 1, 0)


def test_a_batch_that_started_low_tells_nothing_of_the_way_there(kit, lineage):
    culture = kit.culture()
    batch = kit.souring(culture=culture, target_start_ph=3.9)
    assert batch.start_ph < 4.2
    record(kit, batch, 1, 3.8)
    safe = lineage.story(culture.id).paces[0]
    assert (safe.counted, safe.below_from_start, safe.median_days) == (0, 1, None)


def test_a_reading_of_the_starter_before_the_start_does_not_count(kit, lineage):
    culture = kit.culture()
    batch = kit.souring(culture=culture)
    kit.clock.advance(days=2)
    draft = ReadingDraft(
        batch_id=batch.id,
        at=batch.started_at - timedelta(hours=1),
        quantity=Quantity.PH,
        method=Method.METER,
        value=2.9,
    )
    kit.readings.record([draft])
    assert all(pace.counted == 0 for pace in lineage.story(culture.id).paces)


def test_the_median_is_over_the_batches(kit, lineage):
    culture = kit.culture()
    for number, day in enumerate((2.0, 4.0, 9.0)):
        batch = kit.souring(kit.vessel(f"Jar {number}"), culture, name=f"Brew {number}")
        record(kit, batch, day - 1, 4.4)
        record(kit, batch, day, 4.2)
    safe = lineage.story(culture.id).paces[0]
    assert safe.counted == 3
    assert safe.median_days == pytest.approx(4.0, abs=1e-6)


def test_tastes_and_mishaps_are_told_with_their_reasons(kit, lineage):
    culture = kit.culture()
    good = kit.souring(kit.vessel("A"), culture, name="Good")
    bad = kit.souring(kit.vessel("B"), culture, name="Bad")
    record(kit, good, 6, taste=TasteMark.RIGHT)
    record(kit, good, 8, taste=TasteMark.TOO_SOUR)
    kit.batches.draw_off(good.id)
    kit.batches.discard(bad.id, "a fuzzy spot")
    story = lineage.story(culture.id)
    assert story.tastes == {TasteMark.RIGHT: 1, TasteMark.TOO_SOUR: 1}
    (mishap,) = story.mishaps
    assert (mishap.batch_name, mishap.reason) == ("Bad", "a fuzzy spot")
    assert (story.drawn_off, story.souring) == (1, 0)
