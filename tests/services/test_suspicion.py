"""Who shared liquid with whom: what is flagged when mold is found, and what is not."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from brewdesk.services.brewing import StepShut
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.suspicion import Suspicion, _Link, _walk
from brewdesk.services.wording.shelf import jar_words
from brewdesk.store.records import ReadingDraft, TransferDraft
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import BatchStage, CultureState, Look, Method, Quantity, TransferKind
from tests.helpers.dump import dump
from tests.helpers.fakes import DEFAULT_START


@pytest.fixture
def care(kit):
    return CultureCare(kit.door, kit.settings)


@pytest.fixture
def suspicion(kit):
    return Suspicion(kit.door)


def names(contacts):
    return {contact.name for contact in contacts}


def pour(kit, volume_l=0.2, **ends):
    draft = TransferDraft(at=kit.clock.now(), kind=TransferKind.STARTER, volume_l=volume_l, **ends)
    return kit.door.quiet(lambda unit: unit.transfers.add(draft))


def test_a_moldy_culture_takes_its_batch_and_its_daughter_with_it(kit, care):
    mother = kit.culture("Mother")
    batch = kit.souring(culture=mother, name="Brew")
    daughter = care.split(mother.id, name="Daughter", vessel_id=None)
    kit.culture("Stranger")

    flagged = care.lose(mother.id, "fuzzy spot")

    assert names(flagged) == {"Brew", "Daughter"}
    assert kit.batches.get(batch.id).suspect_reason == "Mother: fuzzy spot"
    assert kit.cultures.get(daughter.id).suspect_at == kit.clock.now()
    assert [c.name for c in kit.cultures.all() if c.suspect_at] == ["Daughter"]
    lost = kit.cultures.get(mother.id)
    assert (lost.state, lost.vessel_id) == (CultureState.LOST, None)


def test_a_clean_look_ends_what_came_before_it(kit, care):
    mother = kit.culture("Mother")
    care.split(mother.id, name="Early", vessel_id=None)
    kit.clock.advance(days=5)
    care.look(mother.id, Look.FINE)
    kit.clock.advance(days=5)
    care.split(mother.id, name="Late", vessel_id=None)
    assert names(care.lose(mother.id, "mold")) == {"Late"}


def test_a_look_into_the_jar_counts_for_the_culture_in_it(kit, care):
    mother = kit.culture("Mother")
    care.split(mother.id, name="Early", vessel_id=None)
    batch = kit.souring(culture=mother, name="Brew")
    kit.clock.advance(days=5)
    look = ReadingDraft(
        batch_id=batch.id,
        at=kit.clock.now(),
        quantity=Quantity.LOOK,
        method=Method.EYE,
        text=Look.FINE.value,
    )
    kit.readings.record([look])
    kit.clock.advance(days=1)
    assert names(care.lose(mother.id, "mold")) == {"Brew"}


def test_an_unsure_look_clears_nothing(kit, care):
    mother = kit.culture("Mother")
    care.split(mother.id, name="Early", vessel_id=None)
    kit.clock.advance(days=5)
    care.look(mother.id, Look.UNSURE)
    assert names(care.lose(mother.id, "mold")) == {"Early"}


def test_starter_carries_it_on_and_may_have_brought_it(kit, suspicion):
    """A gave to B, B gave to C, D gave to B, D also gave to E: mold is found in B."""
    batches = {
        name: kit.souring(kit.vessel(f"Jar {name}"), name=name)
        for name in ("A", "B", "C", "D", "E")
    }
    ids = {name: batch.id for name, batch in batches.items()}
    kit.clock.advance(days=1)
    pour(kit, from_batch_id=ids["A"], to_batch_id=ids["B"])
    kit.clock.advance(days=1)
    pour(kit, from_batch_id=ids["B"], to_batch_id=ids["C"])
    pour(kit, from_batch_id=ids["D"], to_batch_id=ids["E"])
    kit.clock.advance(days=1)
    pour(kit, from_batch_id=ids["D"], to_batch_id=ids["B"])
    kit.clock.advance(days=1)
    assert names(suspicion.contacts("batch", ids["B"])) == {"A", "C", "D", "E"}
    # Liquid does not run back: mold found in C may be from B, and from what went into B before.
    assert names(suspicion.contacts("batch", ids["C"])) == {"A", "B", "D", "E"}


def test_what_only_poured_into_a_tainted_jar_is_not_tainted_by_it(kit, suspicion):
    ids = {name: kit.souring(kit.vessel(f"Jar {name}"), name=name).id for name in ("X", "Y", "Z")}
    kit.clock.advance(days=1)
    pour(kit, from_batch_id=ids["X"], to_batch_id=ids["Y"])
    kit.clock.advance(days=1)
    pour(kit, from_batch_id=ids["Z"], to_batch_id=ids["Y"])
    assert names(suspicion.contacts("batch", ids["X"])) == {"Y"}


def test_cultures_in_one_store_lie_in_the_same_liquid(kit, care):
    store = kit.vessel("Store")
    one, other = kit.culture("One"), kit.culture("Other")
    care.rest(one.id, store.id, 0.3)
    care.rest(other.id, store.id, 0.3)
    assert names(care.lose(one.id, "mold")) == {"Other"}


def test_a_batch_thrown_away_for_mold_flags_too(kit):
    culture = kit.culture("Mother")
    batch = kit.souring(culture=culture, name="Brew")
    other = kit.souring(kit.vessel("Second"), name="Fed")
    pour(kit, from_batch_id=batch.id, to_batch_id=other.id)
    kit.batches.discard(batch.id, "mold", culture_lost=True)
    assert kit.batches.get(other.id).suspect_at is not None
    assert kit.cultures.get(culture.id).state is CultureState.LOST
    other_jar = next(jar for jar in kit.shelf.jars() if jar.vessel.name == "Second")
    assert [alert.code for alert in other_jar.alerts] == ["mold_suspected"]
    assert kit.batches.drinkable_verdict(other.id).code == "mold_suspected"
    words = jar_words(other_jar, kit.clock.now(), kit.clock.zone())
    assert (words.coming, words.urgent) == ("May carry mold", "danger")


def test_a_batch_thrown_away_for_another_reason_flags_nothing(kit):
    batch = kit.souring(culture=kit.culture("Mother"), name="Brew")
    kit.batches.discard(batch.id, "knocked over")
    assert kit.cultures.all()[0].suspect_at is None


@pytest.fixture
def suspect(kit, care):
    mother = kit.culture("Mother")
    daughter = care.split(mother.id, name="Daughter", vessel_id=None)
    care.lose(mother.id, "mold")
    return kit.cultures.get(daughter.id)


def test_what_is_under_suspicion_is_not_used_until_cleared_with_a_reason(
    kit, care, suspicion, suspect
):
    for act in (
        lambda: kit.plan(kit.vessel("A"), suspect),
        lambda: care.split(suspect.id, name="Next", vessel_id=None),
        lambda: care.merge([suspect.id, kit.culture("Clean").id], name="Both", vessel_id=None),
        lambda: care.give_away(suspect.id),
    ):
        with pytest.raises(ImpossibleInput) as refused:
            act()
        assert (refused.value.field, refused.value.reason) == ("culture_id", "suspect")
    with pytest.raises(ImpossibleInput) as refused:
        suspicion.clear(culture_id=suspect.id, reason="  ")
    assert refused.value.field == "reason"

    suspicion.clear(culture_id=suspect.id, reason="three clean weeks")

    assert kit.cultures.get(suspect.id).suspect_at is None
    assert care.care_of(suspect.id)[0].text == "three clean weeks"
    assert kit.plan(kit.vessel("B"), suspect).culture_id == suspect.id
    with pytest.raises(ImpossibleInput) as refused:
        suspicion.clear(culture_id=suspect.id, reason="again")
    assert refused.value.reason == "not_suspect"


def test_what_became_doubtful_after_planning_does_not_go_in(kit, care):
    mother = kit.culture("Mother")
    daughter = care.split(mother.id, name="Daughter", vessel_id=None)
    batch = kit.plan(kit.vessel(), daughter)
    steps = kit.brewing.start(batch.id)
    care.lose(mother.id, "mold")
    live = next(step for step in steps if step.kind.value == "culture_in")
    with pytest.raises(StepShut) as shut:
        kit.brewing.finish(live.id, 22.0, override_reason="I am sure")
    assert shut.value.verdict.code == "mold_suspected"
    assert shut.value.verdict.level is Level.STOP
    assert kit.brewing.gate(live.id, 22.0).code == "mold_suspected"


def test_what_went_in_all_the_same_is_told_with_its_suspicion(kit, care):
    mother = kit.culture("Mother")
    daughter = care.split(mother.id, name="Daughter", vessel_id=None)
    batch = kit.plan(kit.vessel(), daughter)
    care.lose(mother.id, "mold")
    entered = kit.brewing.note_already_in(batch.id, kit.clock.now(), 22.0)
    assert entered.stage is BatchStage.SOURING
    assert entered.suspect_reason == "Mother: mold"


def test_a_cleared_batch_keeps_the_reason_as_a_note(kit, suspicion):
    batch = kit.souring(name="Brew")
    other = kit.souring(kit.vessel("Second"), name="Fed")
    pour(kit, from_batch_id=batch.id, to_batch_id=other.id)
    kit.batches.discard(batch.id, "mold", culture_lost=True)
    suspicion.clear(batch_id=other.id, reason="looked every day")
    assert kit.batches.get(other.id).suspect_at is None
    assert kit.readings.of_batch(other.id)[-1].text == "looked every day"


class Drawn:
    """A pantry of plain links between numbered jars, none ever looked at."""

    def __init__(self, pours):
        self.links = {}
        for source, target, day in pours:
            at = DEFAULT_START + timedelta(days=day)
            link = _Link(("batch", source), ("batch", target), at, at, is_shared=False)
            self.links.setdefault(link.source, []).append(link)
            self.links.setdefault(link.target, []).append(link)

    def last_clean(self, _node, _at):
        return None


POURS = st.lists(
    st.tuples(st.integers(0, 6), st.integers(0, 6), st.integers(0, 9)).filter(
        lambda pour: pour[0] != pour[1]
    ),
    max_size=14,
)


def tainted_by_hand(pours, start):
    """Let the liquid flow day by day: what holds taint after the last pour."""
    tainted = {start}
    for source, target, _ in sorted(pours, key=lambda pour: pour[2]):
        if source in tainted:
            tainted.add(target)
    return tainted


@settings(max_examples=150, deadline=None)
@given(pours=POURS, start=st.integers(0, 6))
def test_everything_the_liquid_can_have_reached_is_reached(pours, start):
    """Against a plain simulation of pouring, on which the walk must never miss a jar."""
    on_different_days = [(s, t, number) for number, (s, t, _) in enumerate(pours)]
    reached = _walk(Drawn(on_different_days), ("batch", start), DEFAULT_START)
    assert tainted_by_hand(on_different_days, start) <= {node[1] for node in reached}


@settings(max_examples=100, deadline=None)
@given(pours=POURS, start=st.integers(0, 6))
def test_what_never_had_a_way_of_liquid_between_them_is_not_reached(pours, start):
    reached = {node[1] for node in _walk(Drawn(pours), ("batch", start), DEFAULT_START)}
    joined, grew = {start}, True
    while grew:
        more = {t for s, t, _ in pours if s in joined} | {s for s, t, _ in pours if t in joined}
        grew = not more <= joined
        joined |= more
    assert reached <= joined


# --- from the moment mold is seen ---------------------------------------------------


def test_a_jar_in_which_mold_was_seen_gives_nothing_away_until_it_is_cleared(kit, care, suspicion):
    mother = kit.culture("Mother")
    batch = kit.souring(culture=mother, name="Brew")
    before = dump(kit.store.path)

    kit.readings.record_look(batch.id, Look.MOLD, "Fuzzy or hairy")

    assert kit.batches.get(batch.id).suspect_reason == "Fuzzy or hairy"
    assert kit.cultures.get(mother.id).suspect_reason == "Fuzzy or hairy"
    assert kit.batches.drinkable_verdict(batch.id).level is Level.STOP
    with pytest.raises(ImpossibleInput, match="suspect"):
        kit.batches.draw_off(batch.id)
    with pytest.raises(ImpossibleInput, match="suspect"):
        care.split(mother.id, name="Daughter", vessel_id=None)
    kit.clock.advance(days=1)
    kit.readings.record_look(batch.id, Look.FINE)
    assert kit.batches.get(batch.id).suspect_at is not None  # a clean look alone clears nothing
    suspicion.clear(batch_id=batch.id, reason="yeast after all")
    kit.batches.draw_off(batch.id)

    while kit.history.undo_act().kind != "start_souring" and dump(kit.store.path) != before:
        kit.history.undo()
    assert dump(kit.store.path) == before


def test_mold_on_a_resting_culture_is_on_what_lies_beside_it_too(kit, care):
    jar = kit.vessel("Store jar")
    one, other, apart = (kit.culture(name) for name in ("One", "Other", "Apart"))
    for culture in (one, other):
        care.rest(culture.id, jar.id, 0.3)

    care.look(one.id, Look.MOLD)

    assert kit.cultures.get(one.id).suspect_reason == "Mold was seen on it."
    assert kit.cultures.get(other.id).suspect_reason == "One: Mold was seen on it."
    assert kit.cultures.get(apart.id).suspect_at is None


def test_a_look_corrected_to_mold_counts_from_then(kit):
    batch = kit.souring()
    (look,) = kit.readings.record_look(batch.id, Look.FINE)
    kit.readings.edit(look.id, entered="by the window")
    assert kit.batches.get(batch.id).suspect_at is None
    kit.readings.edit(look.id, text=Look.MOLD.value)
    assert kit.batches.get(batch.id).suspect_at == kit.clock.now()
