"""Trials on a real store: planning, starting, reading, tasting, revealing, ending."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from brewdesk.services.labelsources import LabelSources
from brewdesk.services.trialplan import ArmWish, TrialRecipe
from brewdesk.services.trials import ScoreEntry, Trials
from brewdesk.services.trialview import Finding, TrialOutcome
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.shelf import jar_words
from brewdesk.services.wording.trials import (
    comparison_words,
    crossing_words,
    difference_words,
    differences_lead,
    headline,
)
from brewdesk.store.records import PlaceDraft, ReadingDraft
from culturecore import safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate, Level
from culturecore.stages import (
    BatchStage,
    Look,
    Method,
    Quantity,
    TasteMark,
    TeaKind,
    TrialFactor,
    TrialState,
)
from culturecore.sweettea import Starter
from tests.helpers.dump import dump
from tests.services.history_trials import TEAS, trials_of, wish

HOSTILE = "<b>&amp;{0} \u202e\U0001f9ea ' \" %s \\ DROP"


@pytest.fixture
def trials(kit):
    return trials_of(kit)


def _souring(kit, trial):
    """Bring all jars of a started trial to souring, at once and from now."""
    for jar in trials_of(kit).view(trial.id).jars:
        kit.brewing.note_already_in(jar.batch.id, kit.clock.now(), 25.0)


def _started(kit, jars=4, **fields):
    trial = trials_of(kit).plan(wish(kit, jars=jars, **fields))
    trials_of(kit).start(trial.id, TrialRecipe())
    _souring(kit, trial)
    return trial


def _read(kit, batch_id, quantity, value, method=Method.METER):
    kit.readings.record(
        [
            ReadingDraft(
                batch_id=batch_id, at=kit.clock.now(), quantity=quantity, method=method, value=value
            )
        ]
    )


def _run(kit, trial, crossing_day, days=(2, 5, 8, 11, 14)):
    """Read all jars, each falling straight to pH 3.2 at the day ``crossing_day`` gives."""
    before = 0
    for day in days:
        kit.clock.advance(days=day - before)
        before = day
        for n, jar in enumerate(trials_of(kit).view(trial.id).jars):
            slope = (4.0 - 3.2) / crossing_day(jar.batch.tea_kind, n)
            _read(kit, jar.batch.id, Quantity.PH, round(4.0 - slope * day, 3))


def test_a_plan_keeps_arms_jars_and_codes(kit, trials):
    trial = trials.plan(wish(kit, jars=6, question=" Which is quicker? ", is_blind=False))
    view = trials.view(trial.id)
    assert (trial.state, trial.question) == (TrialState.PLANNED, "Which is quicker?")
    assert [arm.name for arm in view.arms] == ["Green", "Black"]
    assert Counter(jar.arm.name for jar in view.jars) == {"Green": 3, "Black": 3}
    assert len({jar.jar.code for jar in view.jars}) == 6


def test_the_same_seed_draws_the_same_lots(kit, trials):
    one = wish(kit, jars=6, seed=7)
    first, second = trials.plan(one), trials.plan(replace(one, name="Again"))
    assert [(j.jar.code, trials.arms(first.id)[0].id == j.jar.arm_id)
            for j in trials.view(first.id).jars] == [
        (j.jar.code, trials.arms(second.id)[0].id == j.jar.arm_id)
        for j in trials.view(second.id).jars
    ]  # fmt: skip


def test_the_makers_own_dealing_is_kept(kit, trials):
    made = wish(kit, factor=TrialFactor.VESSEL, is_blind=False, by_hand=(1, 0),
                arms=(ArmWish(name="Wide"), ArmWish(name="Tall")))  # fmt: skip
    assert [jar.arm.name for jar in trials.view(trials.plan(made).id).jars] == ["Tall", "Wide"]


@pytest.mark.parametrize(
    ("change", "field", "reason"),
    [
        ({"name": " "}, "name", "empty"),
        ({"name": "x" * 61}, "name", "too_long"),
        ({"arms": TEAS[:1]}, "arms", "too_few"),
        ({"arms": TEAS * 4}, "arms", "too_many"),
        ({"arms": (TEAS[0], replace(TEAS[1], name=" green "))}, "arms", "same"),
        ({"arms": (TEAS[0], replace(TEAS[0], name="Other"))}, "arms", "same"),
        ({"arms": (TEAS[0], ArmWish(name=" "))}, "arm_name", "empty"),
        ({"arms": (TEAS[0], ArmWish(name="B", level="coffee"))}, "level", "unknown_level"),
        ({"vessel_ids": (1,)}, "vessels", "fewer_than_arms"),
        ({"vessel_ids": (1, 1)}, "vessels", "twice"),
        ({"vessel_ids": tuple(range(1, 30))}, "vessels", "too_many"),
        ({"by_hand": (0,)}, "by_hand", "incomplete"),
        ({"by_hand": (0, 2)}, "by_hand", "incomplete"),
        ({"factor": TrialFactor.VESSEL}, "by_hand", "incomplete"),
        ({"question": "q" * 2001}, "question", "too_long"),
    ],
)
def test_a_plan_that_is_no_trial_is_refused(kit, trials, change, field, reason):
    made = wish(kit)
    with pytest.raises(ImpossibleInput) as refused:
        trials.plan(replace(made, **change))
    assert (refused.value.field, refused.value.reason) == (field, reason)
    assert trials.all() == ()


def test_starting_plans_jars_alike_but_for_the_tea(kit, trials):
    trial = trials.plan(wish(kit, jars=4))
    recipe = TrialRecipe(sugar_g_per_l=55.0, starter_share=0.15, starter=Starter(ph=3.0))
    ids = trials.start(trial.id, recipe)
    batches = [kit.batches.get(one) for one in ids]
    assert Counter(b.tea_kind for b in batches) == {TeaKind.GREEN: 2, TeaKind.BLACK: 2}
    alike = {
        (b.fill_volume_l, b.sugar_g_per_l, b.tea_g_per_l, b.starter_volume_l, b.starter_ph,
         b.place_temperature_c, b.hot_water_c, b.target_start_ph, b.stage)
        for b in batches
    }  # fmt: skip
    assert len(alike) == 1
    assert batches[0].starter_volume_l == pytest.approx(0.15 * batches[0].fill_volume_l)
    assert trials.get(trial.id).state is TrialState.RUNNING


def test_one_undo_takes_the_whole_start_back(kit, trials):
    trial = trials.plan(wish(kit, jars=4))
    before = dump(kit.path)
    trials.start(trial.id, TrialRecipe())
    after = dump(kit.path)
    kit.history.undo()
    assert dump(kit.path) == before
    kit.history.redo()
    assert dump(kit.path) == after


def test_undoing_everything_leaves_an_empty_pantry(kit, trials):
    kit.vessels.ensure_place()
    before = dump(kit.path)
    trial = _started(kit)
    _run(kit, trial, lambda tea, n: 6.0 + n, days=(2, 5))
    jar = trials.view(trial.id).jars[0].jar
    trials.score(trial.id, "T", [ScoreEntry(jar_id=jar.id, liking=5.0)])
    trials.leave_out(jar.id, "mold")
    trials.take_back(jar.id)
    trials.reveal(trial.id)
    trials.edit(trial.id, name="Renamed", question="", note="")
    trials.end(trial.id, "So it is.")
    while kit.history.undo_act() is not None:
        kit.history.undo()
    assert dump(kit.path) == before


def test_a_recipe_that_fits_no_jar_plans_nothing_at_all(kit, trials):
    trial = trials.plan(wish(kit))
    before = dump(kit.path)
    with pytest.raises(ImpossibleInput, match="above_brim"):
        trials.start(trial.id, TrialRecipe(fill_volume_l=9.0))
    with pytest.raises(ImpossibleInput, match="starter_share"):
        trials.start(trial.id, TrialRecipe(starter_share=0.9))
    assert dump(kit.path) == before


def test_a_vessel_that_is_taken_keeps_the_whole_trial_from_starting(kit, trials):
    made = wish(kit)
    trial = trials.plan(made)
    kit.plan(kit.vessels.get(made.vessel_ids[1]))
    before = dump(kit.path)
    with pytest.raises(ImpossibleInput, match="occupied"):
        trials.start(trial.id, TrialRecipe())
    assert dump(kit.path) == before


@pytest.mark.parametrize(
    ("factor", "levels", "column"),
    [
        (TrialFactor.TEA_STRENGTH, ("4.0", "8.0"), "tea_g_per_l"),
        (TrialFactor.SUGAR, ("50.0", "70.0"), "sugar_g_per_l"),
        (TrialFactor.STARTER_SHARE, ("0.1", "0.2"), "starter_volume_l"),
    ],
)
def test_each_factor_changes_its_own_part_and_no_other(kit, trials, factor, levels, column):
    arms = tuple(ArmWish(name=level, level=level) for level in levels)
    trial = trials.plan(wish(kit, factor=factor, arms=arms, is_blind=False))
    first, second = (kit.batches.get(one) for one in trials.start(trial.id, TrialRecipe()))
    assert getattr(first, column) != getattr(second, column)
    assert trials.view(trial.id).differences == ()


def test_the_place_of_a_level_moves_the_jar_and_undo_moves_it_back(kit, trials):
    warm = kit.vessels.ensure_place()
    cool = kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=17.0))
    arms = tuple(ArmWish(name=place.name, level=str(place.id)) for place in (cool, warm))
    trial = trials.plan(wish(kit, factor=TrialFactor.PLACE, arms=arms, is_blind=False))
    trials.start(trial.id, TrialRecipe())
    for jar in trials.view(trial.id).jars:
        place = cool if jar.arm.name == "Cellar" else warm
        assert jar.vessel.place_id == place.id
        assert jar.batch.place_temperature_c == place.temperature_c
    kit.history.undo()
    assert {v.place_id for v in kit.vessels.all()} == {warm.id}


def test_a_culture_is_a_level(kit, trials):
    cultures = [kit.culture(name) for name in ("One", "Two")]
    arms = tuple(ArmWish(name=c.name, level=str(c.id)) for c in cultures)
    trial = trials.plan(wish(kit, factor=TrialFactor.CULTURE, arms=arms, is_blind=False))
    trials.start(trial.id, TrialRecipe())
    assert {jar.batch.culture_id for jar in trials.view(trial.id).jars} == {c.id for c in cultures}


def test_while_blind_nothing_tells_the_levels(kit, trials):
    trial = _started(kit, jars=4)
    _run(kit, trial, lambda tea, n: 6.0 if tea is TeaKind.GREEN else 9.0)
    view = trials.view(trial.id)
    assert view.is_hidden
    assert (view.arms, view.comparisons, view.arm_counts) == ((), (), ())
    assert all(jar.arm is None for jar in view.jars)
    assert not any(d.goes_with_arms for d in view.differences)
    names = {jar.batch.name for jar in view.jars}
    assert all("Two teas" in name for name in names)
    told = headline(view) + " ".join(names) + " ".join(crossing_words(jar) for jar in view.jars)
    assert "green" not in told.casefold()
    assert "black" not in told.casefold()
    assert trials.scatter(TrialOutcome.DAYS_TO_PH) == (None, 0)
    opened = trials.view(trials.reveal(trial.id).id)
    assert [arm.name for arm in opened.arms] == ["Green", "Black"]
    assert opened.comparisons
    with pytest.raises(ImpossibleInput, match="not_hidden"):
        trials.reveal(trial.id)


def test_acts_on_a_blind_trial_name_no_level(kit, trials):
    trial = _started(kit)
    jar = trials.view(trial.id).jars[0].jar
    trials.score(trial.id, "", [ScoreEntry(jar_id=jar.id, mark=TasteMark.RIGHT)])
    trials.leave_out(jar.id, "spilt")
    with kit.store.read() as unit:
        last = unit.acts.last_done()
    assert act_text(last) == f"{jar.code} left out of the trial Two teas: spilt"


def test_four_clear_jars_of_each_show_it(kit, trials):
    trial = _started(kit, jars=8, is_blind=False)
    days = {TeaKind.GREEN: (6.0, 6.3, 5.9, 6.2), TeaKind.BLACK: (9.0, 9.4, 8.8, 9.2)}
    seen = Counter()

    def crossing_day(tea, _n):
        seen[tea] += 1
        return days[tea][(seen[tea] - 1) % 4]

    _run(kit, trial, crossing_day)
    (one,) = trials.view(trial.id).comparisons
    assert (one.outcome, one.finding) == (TrialOutcome.DAYS_TO_PH, Finding.SHOWN)
    assert one.effect.low > 2.5
    assert one.effect.high < 3.6
    words = comparison_words(one, trial.factor)
    assert words.startswith("Black was 3.0 days later at pH 3.2 than Green (4 against 4 jars).")
    assert "3 of 100 trials" in words
    scatter, count = trials.scatter(TrialOutcome.DAYS_TO_PH)
    assert count == 8
    assert scatter == pytest.approx(0.24, abs=0.04)


def test_one_jar_of_each_says_that_it_cannot_tell(kit, trials):
    trial = _started(kit, jars=2, is_blind=False)
    _run(kit, trial, lambda tea, n: 6.0 if tea is TeaKind.GREEN else 9.0)
    view = trials.view(trial.id)
    (one,) = view.comparisons
    assert one.finding is Finding.ONE_EACH
    assert comparison_words(one, trial.factor).endswith(
        "One jar each cannot tell the tea from the jar."
    )
    assert "nobody can say whether it was the tea or the jar" in headline(view)


def test_jars_not_there_yet_are_waited_for_and_not_forgotten(kit, trials):
    trial = _started(kit, jars=4, is_blind=False)
    _run(kit, trial, lambda tea, n: 6.0 + 0.1 * n if tea is TeaKind.GREEN else 30.0)
    (one,) = trials.view(trial.id).comparisons
    assert one.effect is None
    assert one.waiting == (0, 2)
    assert one.medians[0] == pytest.approx(6.1, abs=0.3)
    assert one.medians[1] is None
    words = comparison_words(one, trial.factor)
    assert "0 of 2 jars of Black and 2 of 2 of Green have passed pH 3.2" in words
    assert "do not tell them apart" in words


def test_a_forecast_is_shown_for_a_jar_not_there_yet_and_counts_nowhere(kit):
    class Forecast:
        days = (0.0, 10.0, 12.0, 14.0, 16.0)
        ph = {  # read only
            0.1: (4.0, 3.4, 3.2, 3.1, 3.0),
            0.5: (4.0, 3.5, 3.3, 3.2, 3.1),
            0.9: (4.0, 3.6, 3.4, 3.3, 3.2),
        }

    trial = _started(kit, jars=2, is_blind=False)
    _run(kit, trial, lambda tea, n: 14.0, days=(2, 5))
    view = Trials(kit.door, kit.batches, forecast_of=lambda _id: Forecast()).view(trial.id)
    jar = view.jars[0]
    assert jar.measures.expected == Estimate(14.0, 12.0, 16.0)
    assert crossing_words(jar) == "not by day 5.0; by the forecast about day 14.0 (12.0 to 16.0)"
    assert view.comparisons[0].waiting == (1, 1)


def test_a_first_reading_below_uses_the_reckoned_start_and_says_so(kit, trials):
    trial = _started(kit, jars=2, is_blind=False)
    _run(kit, trial, lambda tea, n: 3.0, days=(5, 8))
    jar = trials.view(trial.id).jars[0]
    assert jar.measures.starts_reckoned
    assert 0.0 < jar.measures.crossing.day < 5.0
    assert crossing_words(jar).endswith("from the reckoned start")


def test_a_jar_left_out_counts_in_nothing_and_can_be_taken_back(kit, trials):
    trial = _started(kit, jars=4, is_blind=False)
    _run(kit, trial, lambda tea, n: 6.0 + n)
    jar = trials.view(trial.id).jars[0]
    trials.leave_out(jar.jar.id, " mold ")
    view = trials.view(trial.id)
    assert sum(view.arm_counts) == 3
    assert sum(view.comparisons[0].counts) == 3
    assert view.jars[0].jar.left_out_reason == "mold"
    assert view.jars[0].jar.id not in {j.id for j in trials.tasting_order(trial.id)}
    trials.take_back(jar.jar.id)
    assert sum(trials.view(trial.id).comparisons[0].counts) == 4
    with pytest.raises(ImpossibleInput, match="empty"):
        trials.leave_out(jar.jar.id, "  ")


def test_jars_of_several_sizes_are_compared_within_their_size(kit, trials):
    small = [kit.vessel(f"Small {n}", working_volume_l=1.0, brim_volume_l=1.2,
                        inner_diameter_cm=9.0).id for n in range(2)]  # fmt: skip
    large = [kit.vessel(f"Large {n}").id for n in range(2)]
    made = wish(kit, jars=0, is_blind=False)
    trial = trials.plan(replace(made, vessel_ids=(small[0], large[0], small[1], large[1])))
    by_size = {}
    for jar in trials.view(trial.id).jars:
        by_size.setdefault(jar.vessel.working_volume_l, set()).add(jar.arm.name)
    assert by_size == {1.0: {"Green", "Black"}, 4.0: {"Green", "Black"}}
    trials.start(trial.id, TrialRecipe())
    _souring(kit, trial)
    batches = {jar.batch.id: jar.vessel.working_volume_l for jar in trials.view(trial.id).jars}
    before = 0
    for day in (2, 5, 8, 11, 14, 17):
        kit.clock.advance(days=day - before)
        before = day
        for jar in trials.view(trial.id).jars:
            slow = 1.7 * batches[jar.batch.id] + (jar.arm.name == "Black")
            _read(kit, jar.batch.id, Quantity.PH, round(4.0 - 0.8 * day / (5.0 + slow), 3))
    view = trials.view(trial.id)
    assert view.comparisons[0].is_blocked
    assert "compared within like vessels" in comparison_words(view.comparisons[0], trial.factor)
    assert {d.code for d in view.differences} == {"fill_volume_l", "inner_diameter_cm"}
    assert not any(d.goes_with_arms for d in view.differences)


def test_what_differs_between_attached_batches_is_listed(kit, trials):
    trial = trials.plan(wish(kit, jars=0, is_blind=False))
    green, black = trials.arms(trial.id)
    one = kit.plan(kit.vessel("A"), name="One", tea_kind=TeaKind.GREEN, sugar_g_per_l=50.0)
    two = kit.plan(kit.vessel("B", inner_diameter_cm=20.0), name="Two", sugar_g_per_l=80.0)
    trials.attach(trial.id, green.id, one.id)
    trials.attach(trial.id, black.id, two.id)
    view = trials.view(trial.id)
    assert view.trial.state is TrialState.RUNNING
    found = {difference.code: difference for difference in view.differences}
    assert {"sugar_g_per_l", "inner_diameter_cm"} <= set(found)
    assert "tea_kind" not in found
    assert found["sugar_g_per_l"].goes_with_arms
    words = difference_words(found["sugar_g_per_l"], kit.quantities.show, kit.clock.zone())
    codes = [jar.jar.code for jar in view.jars]
    assert words == f"Sugar – 50.0 g/L: {codes[0]}; 80.0 g/L: {codes[1]}"
    assert "cannot be told from what the tea does" in differences_lead(view)


def test_a_batch_joins_one_trial_only(kit, trials):
    trial = trials.plan(wish(kit, jars=0))
    arm = trials.arms(trial.id)[0]
    batch = kit.plan()
    assert batch.id in dict(trials.batches_to_attach())
    trials.attach(trial.id, arm.id, batch.id)
    assert batch.id not in dict(trials.batches_to_attach())
    with pytest.raises(ImpossibleInput, match="in_a_trial"):
        trials.attach(trial.id, arm.id, batch.id)
    other = trials.plan(replace(wish(kit, jars=0), name="Other"))
    with pytest.raises(ImpossibleInput, match="not_of_this"):
        trials.attach(other.id, arm.id, kit.plan(kit.vessel("C")).id)


def test_a_dropped_plan_leaves_its_jar_out_and_undo_brings_it_back(kit, trials):
    trial = trials.plan(wish(kit))
    ids = trials.start(trial.id, TrialRecipe())
    before = dump(kit.path)
    kit.batches.drop_plan(ids[0])
    gone = next(jar for jar in trials.view(trial.id).jars if jar.batch is None)
    assert gone.jar.left_out_reason == "The plan of its batch was given up."
    kit.history.undo()
    assert dump(kit.path) == before


def test_the_tasting_order_is_by_lot_and_holds_until_it_is_entered(kit, trials):
    trial = _started(kit, jars=8)
    first = trials.tasting_order(trial.id)
    assert first == trials.tasting_order(trial.id)
    orders = {tuple(jar.code for jar in trials.tasting_order(trial.id, f"T{n}")) for n in range(9)}
    assert len(orders) > 5
    trials.score(trial.id, "", [ScoreEntry(jar_id=first[0].id, liking=5.0)])
    assert trials.tasting_order(trial.id) != first


@pytest.mark.parametrize(
    ("entry", "field"),
    [
        ({"liking": 10.5}, "liking"),
        ({"liking": float("nan")}, "liking"),
        ({"liking": -1.0}, "liking"),
        ({}, "entries"),
        ({"text": "x" * 20_001}, "text"),
        ({"jar_id": 999, "liking": 1.0}, "jar_id"),
    ],
)
def test_a_tasting_that_says_nothing_sensible_is_refused(kit, trials, entry, field):
    trial = _started(kit, jars=2)
    jar = trials.view(trial.id).jars[0].jar
    with pytest.raises(ImpossibleInput) as refused:
        trials.score(trial.id, "", [ScoreEntry(**({"jar_id": jar.id} | entry))])
    assert refused.value.field == field


def test_several_tasters_of_one_jar_are_one_value(kit, trials):
    trial = _started(kit, jars=2, is_blind=False)
    first, second = (jar.jar.id for jar in trials.view(trial.id).jars)
    for taster, liking in (("A", 4.0), ("B", 6.0), ("C", 9.0)):
        trials.score(trial.id, taster, [ScoreEntry(jar_id=first, liking=liking)])
    trials.score(trial.id, "A", [ScoreEntry(jar_id=second, liking=5.0, mark=TasteMark.RIGHT)])
    view = trials.view(trial.id)
    assert [jar.measures.liking for jar in view.jars] == [6.0, 5.0]
    assert view.comparisons[0].counts == (1, 1)
    assert view.jars[1].measures.marks == (TasteMark.RIGHT,)


def test_an_ended_trial_takes_nothing_more_and_its_codes_are_open(kit, trials):
    trial = _started(kit, jars=2)
    jar = trials.view(trial.id).jars[0].jar
    ended = trials.end(trial.id, " Alike. ")
    assert (ended.state, ended.conclusion) == (TrialState.ENDED, "Alike.")
    assert not trials.view(trial.id).is_hidden
    for act in (
        lambda: trials.end(trial.id, ""),
        lambda: trials.leave_out(jar.id, "late"),
        lambda: trials.score(trial.id, "", [ScoreEntry(jar_id=jar.id, liking=1.0)]),
        lambda: trials.start(trial.id, TrialRecipe()),
    ):
        with pytest.raises(ImpossibleInput, match="ended"):
            act()
    assert all(kit.batches.get(j.batch.id).stage is BatchStage.SOURING
               for j in trials.view(trial.id).jars)  # fmt: skip


def test_a_started_trial_has_nothing_left_to_start(kit, trials):
    trial = _started(kit, jars=2)
    with pytest.raises(ImpossibleInput, match="nothing_to_start"):
        trials.start(trial.id, TrialRecipe())


def test_hostile_names_come_back_as_they_were_typed(kit, trials):
    arms = (ArmWish(name=HOSTILE + "1", level="green"), ArmWish(name=HOSTILE + "2", level="black"))
    trial = _started(kit, jars=2, name=HOSTILE, question=HOSTILE, arms=arms, is_blind=False)
    _run(kit, trial, lambda tea, n: 6.0 + n)
    view = trials.view(trial.id)
    assert view.trial.name == HOSTILE
    words = comparison_words(view.comparisons[0], trial.factor)
    assert HOSTILE + "1" in words
    assert HOSTILE + "2" in words


def test_labels_of_a_blind_trial_have_codes_until_they_are_opened(kit, trials):
    trial = trials.plan(wish(kit))
    trials.start(trial.id, TrialRecipe())
    _souring(kit, trial)
    sources = LabelSources(kit.door)
    jars = trials.view(trial.id).jars
    codes = {jar.batch.id: jar.jar.code for jar in jars}

    hidden = {one.record_id: one for one in sources.batches()}
    assert {key: one.name for key, one in hidden.items()} == codes
    assert all(one.ingredients == "" for one in hidden.values())
    on_jars = [one for one in sources.jars() if one.batch_key]
    assert sorted(one.batch_key for one in on_jars) == sorted(f"batch:{key}" for key in codes)
    assert all(one.ingredients == "" for one in on_jars)
    for one in on_jars:
        assert codes[int(one.batch_key.partition(":")[2])] in one.stage
        assert not any(tea in one.stage.lower() for tea in ("black", "green"))

    trials.reveal(trial.id)
    for one in sources.batches():
        assert one.name == kit.batches.get(one.record_id).name
        assert "tea" in one.ingredients


def test_two_outcomes_are_judged_more_strictly_than_one(kit, trials):
    trial = _started(kit, jars=8, is_blind=False)
    _run(kit, trial, lambda tea, n: 6.0 + 0.2 * n + (tea is TeaKind.BLACK))
    alone = trials.view(trial.id).comparisons[0]
    for n, jar in enumerate(trials.view(trial.id).jars):
        _read(kit, jar.batch.id, Quantity.TA_G_PER_L, 5.0 + 0.3 * n, Method.TITRATION)
    both = trials.view(trial.id).comparisons
    assert [one.looked_at for one in both] == [2, 2]
    assert both[0].p_value == alone.p_value
    assert both[0].adjusted_p >= alone.adjusted_p
    assert max(one.adjusted_p for one in both) <= 1.0


def test_a_jar_on_the_shelf_carries_its_code_while_the_trial_goes_on(kit, trials):
    trial = trials.plan(wish(kit, jars=2))
    assert [jar.trial_code for jar in kit.shelf.jars()] == ["", ""]
    trials.start(trial.id, TrialRecipe())
    codes = [jar.jar.code for jar in trials.view(trial.id).jars]
    shown = kit.shelf.jars()
    assert [jar.trial_code for jar in shown] == codes
    words = jar_words(shown[0], kit.clock.now(), kit.clock.zone())
    assert words.name == f"Trial jar 1 · {codes[0]}"
    assert codes[0] in words.sentence
    trials.end(trial.id, "")
    assert [jar.trial_code for jar in kit.shelf.jars()] == ["", ""]
    kit.history.undo()
    assert [jar.trial_code for jar in kit.shelf.jars()] == codes


def test_what_must_not_be_drunk_is_in_no_tasting(kit, trials):
    trial = _started(kit, jars=6)
    sour, high, moldy, thrown, unread, left = trials.view(trial.id).jars
    kit.clock.advance(days=9)
    _read(kit, sour.batch.id, Quantity.PH, 3.1)
    _read(kit, high.batch.id, Quantity.PH, 4.6)
    kit.readings.record(
        [
            ReadingDraft(
                batch_id=moldy.batch.id, at=kit.clock.now(), quantity=Quantity.LOOK,
                method=Method.EYE, text=Look.MOLD.value,
            )
        ]
    )  # fmt: skip
    kit.batches.discard(thrown.batch.id, "spilt")
    trials.leave_out(left.jar.id, "another reason")
    verdicts = trials.glass_verdicts(trial.id)
    assert set(verdicts) == {jar.jar.id for jar in (sour, high, moldy, unread)}
    assert verdicts[high.jar.id].level is Level.STOP
    assert verdicts[moldy.jar.id].code == safety.mold_verdict().code
    assert verdicts[unread.jar.id].code == "finished_ph_unknown"
    order = {jar.id for jar in trials.tasting_order(trial.id)}
    assert order == {sour.jar.id, unread.jar.id}


def test_a_plan_that_was_never_brewed_is_in_no_tasting(kit, trials):
    trial = trials.plan(wish(kit))
    trials.start(trial.id, TrialRecipe())
    assert trials.tasting_order(trial.id) == ()


def test_the_same_jars_are_compared_once(kit, trials, monkeypatch):
    trial = _started(kit, jars=4, is_blind=False)
    _run(kit, trial, lambda tea, n: 6.0 + n)
    first = trials.view(trial.id).comparisons
    monkeypatch.setattr("brewdesk.services.trialreader.compare_arms", lambda *_a, **_k: ())
    assert trials.view(trial.id).comparisons is first
    _read(kit, trials.view(trial.id).jars[0].batch.id, Quantity.TA_G_PER_L, 5.0, Method.TITRATION)
    assert trials.view(trial.id).comparisons == ()
