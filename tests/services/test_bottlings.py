"""Bottles: what is stopped, what is filled and balances, how they are looked after."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from brewdesk.services.acts import ActKind
from brewdesk.services.bottlings import StoppedBottling
from brewdesk.services.changes import Topic
from brewdesk.services.history import History
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.bottlings import (
    addition_name,
    bar_words,
    days_words,
    volumes_words,
)
from brewdesk.services.wording.problems import impossible_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.store.errors import NoSuchRow
from brewdesk.store.records import BottleCheckDraft
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import (
    AdditionKind,
    BatchStage,
    BottleKind,
    BottlingState,
    CheckKind,
    CultureState,
    Feel,
    Opened,
    SugarKind,
    TransferKind,
)
from tests.services.history_bottles import (
    GINGER,
    GLASS,
    TEST,
    felt,
    filled,
    filled_a_day_ago,
    sour,
    sour_and_store,
    wish_of,
)


def codes(outlook, level=None):
    return {one.code for one in outlook.verdicts if level is None or one.level is level}


# --- the outlook ----------------------------------------------------------------------------


def test_a_first_wish_fills_the_jar_into_half_litre_bottles(kit):
    batch = sour(kit)
    wish = kit.bottlings.wish_for(batch.id)
    outlook = kit.bottlings.outlook(wish)
    assert outlook.drink_volume_l == pytest.approx(outlook.capacity_l)
    assert outlook.capacity_l + outlook.left_over_l == pytest.approx(4.0)
    assert outlook.bottles_needed == 1
    assert wish.warmest_c > wish.place_temperature_c
    assert [row.id for row in kit.bottlings.candidates()] == [batch.id]


def test_grams_and_teaspoons_by_the_bottle_add_up(kit):
    batch = sour(kit)
    wish = wish_of(kit, batch, residual_sugar_low_g_per_l=0.0, residual_sugar_high_g_per_l=0.0)
    wish = replace(wish, drink_volume_l=GLASS.filled_l * 5 + 0.48)
    outlook = kit.bottlings.outlook(wish)
    by_bottle = sum(group.sugar_per_bottle_g * group.group.bottle_count for group in outlook.groups)
    assert outlook.priming_sugar_g > 0.0
    assert by_bottle == pytest.approx(outlook.priming_sugar_g, rel=1e-6)
    assert "teaspoon" in outlook.groups[0].sugar_measure
    honey = kit.bottlings.outlook(replace(wish, priming_kind=SugarKind.HEXOSE))
    assert honey.groups[0].sugar_measure == ""
    assert honey.priming_sugar_g > outlook.priming_sugar_g


def test_verdicts_are_loudest_first_and_each_has_words(kit):
    batch = sour(kit)
    wish = wish_of(kit, batch, additions=(GINGER,), groups=(GLASS,))
    outlook = kit.bottlings.outlook(wish)
    loudness = [list(Level).index(verdict.level) for verdict in outlook.verdicts]
    assert loudness == sorted(loudness, reverse=True)
    assert {
        "bottling_glass",
        "bottling_alcohol",
        "bottling_unrated",
        "bottling_no_test",
        "not_for_everyone",
        "flavour_fresh",
        "finished_ph_within",
    } <= codes(outlook)
    assert not outlook.is_stopped
    for verdict in outlook.verdicts:
        words = verdict_words(verdict)
        assert words.fact
        assert "{" not in words.fact + words.why + words.what_to_do


def test_plastic_alone_is_not_warned_of_as_glass(kit):
    outlook = kit.bottlings.outlook(
        wish_of(kit, sour(kit), groups=(replace(TEST, bottle_count=6),))
    )
    assert "bottle_handling" in codes(outlook)
    assert not {"bottling_glass", "bottling_no_test"} & codes(outlook)


@pytest.mark.parametrize(
    ("groups", "changes", "code"),
    [
        ((replace(GLASS, kind=BottleKind.NOT_FOR_PRESSURE),), {}, "bottle_not_for_pressure"),
        ((GLASS,), {"target_volumes": 3.6, "warmest_c": 32.0}, "bottle_over_ceiling"),
        ((replace(GLASS, brim_volume_l=1.5),), {}, "bottle_too_large"),
        ((replace(GLASS, headspace_share=0.0),), {"warmest_c": 35.0}, "bottle_no_room"),
        (
            (replace(GLASS, kind=BottleKind.RATED, rated_bar=1.0),),
            {"warmest_c": 38.0, "place_temperature_c": 35.0, "target_volumes": 0.6},
            "bottling_no_time",
        ),
    ],
)
def test_what_is_stopped_says_why_and_what_would_help(kit, groups, changes, code):
    batch = sour(kit)
    wish = wish_of(kit, batch, groups=groups, **changes)
    outlook = kit.bottlings.outlook(wish)
    assert code in codes(outlook, Level.STOP)
    assert outlook.is_stopped
    assert verdict_words(outlook.verdicts[0]).what_to_do
    assert code == "bottling_no_time" or outlook.remedies
    with pytest.raises(StoppedBottling) as stopped:
        kit.bottlings.fill(replace(wish, drink_volume_l=0.4))
    assert stopped.value.verdicts


def test_the_remedy_in_numbers_is_not_stopped(kit):
    batch = sour(kit)
    wish = wish_of(kit, batch, groups=(GLASS,), target_volumes=3.6, warmest_c=32.0)
    remedies = kit.bottlings.outlook(wish).remedies
    number = next(one for one in remedies if "volumes" in one).split("up to ")[1].split()[0]
    assert 1.0 <= float(number) < 3.6
    assert not kit.bottlings.outlook(replace(wish, target_volumes=float(number))).is_stopped


def test_bottles_that_no_fizz_suits_are_told_so(kit):
    wish = wish_of(
        kit,
        sour(kit),
        groups=(replace(GLASS, kind=BottleKind.RATED, rated_bar=0.3),),
        warmest_c=35.0,
    )
    assert any("alone does not help" in one for one in kit.bottlings.outlook(wish).remedies)


@pytest.mark.parametrize("value", [None, 4.4])
def test_a_drink_not_shown_to_be_sour_is_stopped_until_a_reason_is_written(kit, value):
    batch = kit.souring() if value is None else sour(kit, value=value)
    wish = wish_of(kit, batch)
    assert kit.bottlings.outlook(wish).is_stopped
    with pytest.raises(StoppedBottling):
        kit.bottlings.fill(wish, "   ")
    bottling = kit.bottlings.fill(wish, " tasted sharp, meter broken ")
    assert bottling.override_reason == "tasted sharp, meter broken"
    with kit.store.read() as unit:
        assert "tasted sharp" in act_text(unit.acts.last_done())


def test_suspicion_of_mold_stops_it_for_batch_and_culture(kit):
    batch = sour(kit)
    with kit.store.write() as unit:
        unit.cultures.change(batch.culture_id, suspect_at=kit.clock.now(), suspect_reason="spots")
    assert "mold_suspected" in codes(kit.bottlings.outlook(wish_of(kit, batch)), Level.STOP)
    with kit.store.write() as unit:
        unit.cultures.change(batch.culture_id, suspect_at=None, suspect_reason="")
        unit.batches.change(batch.id, suspect_at=kit.clock.now(), suspect_reason="spots")
    with pytest.raises(StoppedBottling):
        kit.bottlings.fill(wish_of(kit, batch))


def test_a_reason_that_is_not_needed_is_not_kept(kit):
    assert kit.bottlings.fill(wish_of(kit, sour(kit)), "just because").override_reason == ""


# --- filling --------------------------------------------------------------------------------


def test_filling_takes_the_drink_out_of_the_jar_in_one_act(kit):
    batch = sour(kit)
    bottling = kit.bottlings.fill(wish_of(kit, batch, additions=(GINGER,)))
    balance = kit.liquids.balance(batch.id)
    assert balance.now_l == pytest.approx(4.0 - 2.8)
    (transfer,) = kit.liquids.transfers(batch.id)
    assert (transfer.id, transfer.kind) == (bottling.transfer_id, TransferKind.DRINK)
    parts = kit.bottlings.parts_of(bottling.id)
    assert [group.bottle_count for group in parts.groups] == [5, 1]
    assert (parts.bottle_count, parts.bottles_left) == (6, 6)
    assert [one.name for one in parts.additions] == ["Ginger root"]
    assert (bottling.ph, bottling.ph_sd) == (3.1, 0.05)
    assert kit.batches.get(batch.id).stage is BatchStage.SOURING
    assert kit.heard[-1].concerns(Topic.BOTTLINGS)
    assert batch.id in kit.heard[-1].batch_ids
    History(kit.door).undo()
    assert kit.bottlings.all() == ()
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(4.0)


def test_the_last_bottling_ends_the_batch_and_keeps_starter_with_its_culture(kit):
    batch = sour(kit)
    kit.bottlings.fill(wish_of(kit, batch, starter_kept_l=0.5, closes_batch=True))
    ended = kit.batches.get(batch.id)
    assert ended.stage is BatchStage.DRAWN_OFF
    culture = kit.cultures.get(batch.culture_id)
    assert culture.state is CultureState.RESTING
    assert culture.rest_volume_l == pytest.approx(0.5)
    moved = kit.liquids.transfers(batch.id)
    assert sum(row.volume_l for row in moved) == pytest.approx(4.0)


def test_all_of_it_ends_the_batch_by_itself(kit):
    batch = sour(kit)
    groups = (replace(GLASS, bottle_count=9),)
    kit.bottlings.fill(wish_of(kit, batch, groups=groups, drink_volume_l=None))
    assert kit.batches.get(batch.id).stage is BatchStage.DRAWN_OFF


def test_starter_needs_a_culture_to_stay_with_in_an_emptied_jar(kit):
    batch = kit.souring()
    assert not kit.bottlings.may_keep_in_jar(batch.id)
    with pytest.raises(ImpossibleInput) as refused:
        kit.bottlings.fill(wish_of(kit, batch, starter_kept_l=0.3, closes_batch=True), "no meter")
    assert (refused.value.field, refused.value.reason) == ("starter_kept_l", "no_culture")
    assert impossible_words(refused.value)
    kit.bottlings.fill(wish_of(kit, batch, starter_kept_l=0.3), "no meter")
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(1.2)


def test_starter_can_be_kept_in_a_store(kit):
    batch, store = sour_and_store(kit)
    kit.bottlings.fill(wish_of(kit, batch, starter_kept_l=0.4, starter_culture_id=store.id))
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(4.0 - 2.8 - 0.4)
    assert kit.cultures.get(store.id).rest_volume_l > 0.8


def test_starter_kept_in_the_jar_shortens_what_is_bottled(kit):
    batch = sour(kit)
    groups = (replace(GLASS, bottle_count=8),)
    wish = wish_of(kit, batch, groups=groups, drink_volume_l=None, starter_kept_l=0.5)
    assert kit.bottlings.fill(wish).drink_volume_l == pytest.approx(3.5)
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(0.5)


@pytest.mark.parametrize(
    ("changes", "field", "reason"),
    [
        ({"groups": ()}, "groups", "empty"),
        ({"groups": (replace(GLASS, bottle_count=0),)}, "bottle_count", "out_of_range"),
        ({"groups": (replace(GLASS, kind=BottleKind.RATED),)}, "rated_bar", "empty"),
        ({"groups": (replace(GLASS, bottle_count=2),)}, "drink_volume_l", "bottles_too_few"),
        ({"drink_volume_l": 9.0}, "drink_volume_l", "not_there"),
        ({"drink_volume_l": math.nan}, "drink_volume_l", "less_than_a_drop"),
        ({"name": "  "}, "name", "empty"),
        ({"starter_kept_l": 3.0}, "starter_kept_l", "not_there"),
        ({"target_volumes": 9.0}, "target_volumes", "out_of_range"),
        (
            {"additions": (replace(GINGER, sugar_share_high=2.0),)},
            "sugar_share_high",
            "out_of_range",
        ),
        ({"additions": (replace(GINGER, name=" "),)}, "name", "empty"),
    ],
)
def test_what_cannot_be_bottled_is_refused_beside_its_field(kit, changes, field, reason):
    batch = sour(kit)
    with pytest.raises(ImpossibleInput) as refused:
        kit.bottlings.fill(wish_of(kit, batch, **changes))
    assert (refused.value.field, refused.value.reason) == (field, reason)
    assert impossible_words(refused.value)
    assert kit.bottlings.all() == ()
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(4.0)


def test_nothing_is_filled_ahead_of_time_or_from_what_does_not_sour(kit):
    batch = sour(kit)
    tomorrow = kit.clock.now() + timedelta(days=1)
    with pytest.raises(ImpossibleInput, match="filled_at"):
        kit.bottlings.fill(wish_of(kit, batch, filled_at=tomorrow))
    kit.batches.draw_off(batch.id)
    with pytest.raises(ImpossibleInput):
        kit.bottlings.fill(wish_of(kit, batch))
    with pytest.raises(NoSuchRow):
        kit.bottlings.wish_for(99)


def test_whatever_is_bottled_the_litres_balance(kit):
    batch, history = sour(kit), History(kit.door)

    @settings(max_examples=25, deadline=None, database=None)
    @given(drink_l=st.floats(0.2, 3.4), kept_l=st.floats(0.0, 0.5), closes=st.booleans())
    def balances(drink_l, kept_l, closes):
        wish = wish_of(
            kit,
            batch,
            groups=(replace(GLASS, bottle_count=8),),
            drink_volume_l=drink_l,
            starter_kept_l=kept_l if kept_l > 0.001 else 0.0,
            closes_batch=closes,
        )
        kit.bottlings.fill(wish)
        balance = kit.liquids.balance(batch.id)
        gone_l = sum(row.volume_l for row in kit.liquids.transfers(batch.id))
        assert balance.filled_l + balance.in_l - gone_l == pytest.approx(balance.now_l, abs=1e-4)
        assert kit.batches.get(batch.id).stage.is_live is not closes
        history.undo()
        assert kit.liquids.volume_now_l(batch.id) == pytest.approx(4.0)

    balances()


# --- looking after them -----------------------------------------------------------------------


def test_every_look_is_kept_and_told(kit):
    bottling = filled_a_day_ago(kit)
    felt(kit, bottling, Feel.SOFT)
    for fields in (
        {"kind": CheckKind.GAUGE, "feel": None, "gauge_bar": 1.4, "sd_bar": 0.1},
        {"kind": CheckKind.OPENED, "feel": None, "opened": Opened.RIGHT, "bottle_count": 2},
        {"kind": CheckKind.VENTED, "feel": None},
        {"kind": CheckKind.NOTE, "feel": None, "text": "smells of ginger"},
    ):
        felt(kit, bottling, **fields)
    parts = kit.bottlings.parts_of(bottling.id)
    assert len(parts.checks) == 5
    assert parts.bottles_left == 4
    told = " / ".join(line.text for line in kit.journal.of_batch(bottling.batch_id))
    for words in ("test bottle soft", "gauge 1.4 bar", "just right", "vented", "smells of ginger"):
        assert words in told


@pytest.mark.parametrize(
    ("fields", "field", "reason"),
    [
        ({"feel": None}, "feel", "empty"),
        ({"kind": CheckKind.GAUGE, "feel": None}, "gauge_bar", "empty"),
        ({"kind": CheckKind.GAUGE, "gauge_bar": 99.0}, "gauge_bar", "out_of_range"),
        ({"kind": CheckKind.OPENED, "feel": None}, "opened", "empty"),
        ({"kind": CheckKind.NOTE, "text": " "}, "text", "empty"),
        (
            {"kind": CheckKind.OPENED, "opened": Opened.RIGHT, "bottle_count": 9},
            "bottle_count",
            "too_many",
        ),
        ({"at": timedelta(days=1)}, "at", "in_future"),
        ({"at": timedelta(days=-9)}, "at", "before_filling"),
    ],
)
def test_looks_that_cannot_be_are_refused(kit, fields, field, reason):
    bottling = filled_a_day_ago(kit)
    if "at" in fields:
        fields = fields | {"at": kit.clock.now() + fields["at"]}
    with pytest.raises(ImpossibleInput) as refused:
        felt(kit, bottling, **({"feel": Feel.SOFT} | fields))
    assert (refused.value.field, refused.value.reason) == (field, reason)
    assert impossible_words(refused.value)
    assert kit.bottlings.parts_of(bottling.id).checks == ()


def test_glass_cannot_be_felt(kit):
    bottling = filled(kit, groups=(replace(GLASS, bottle_count=6),))
    with pytest.raises(ImpossibleInput) as refused:
        felt(kit, bottling)
    assert refused.value.reason == "no_test_bottle"


def test_a_look_is_corrected_and_taken_out(kit):
    check = felt(kit, filled_a_day_ago(kit), Feel.SOFT)
    assert kit.bottlings.edit_check(check.id, feel=Feel.FIRM).feel is Feel.FIRM
    with pytest.raises(ImpossibleInput, match="feel"):
        kit.bottlings.edit_check(check.id, feel=None)
    kit.bottlings.remove_check(check.id)
    assert kit.bottlings.parts_of(check.bottling_id).checks == ()


def test_chilling_sets_the_best_before(kit):
    bottling = filled_a_day_ago(kit)
    with pytest.raises(ImpossibleInput, match="cold_temperature_c"):
        kit.bottlings.chill(bottling.id, cold_temperature_c=30.0)
    cold = kit.bottlings.chill(bottling.id, cold_temperature_c=6.0)
    assert cold.state is BottlingState.CHILLED
    assert cold.best_before == kit.clock.now() + timedelta(days=30)
    with pytest.raises(ImpossibleInput) as refused:
        kit.bottlings.chill(bottling.id)
    assert refused.value.reason == "not_conditioning"


def test_an_end_is_an_end(kit):
    bottling = filled_a_day_ago(kit)
    with pytest.raises(ImpossibleInput, match="reason"):
        kit.bottlings.discard(bottling.id, " ")
    kit.bottlings.finish(bottling.id)
    assert kit.bottlings.all() == ()
    assert [row.id for row in kit.bottlings.all((BottlingState.FINISHED,))] == [bottling.id]
    for act in (
        lambda: kit.bottlings.finish(bottling.id),
        lambda: kit.bottlings.discard(bottling.id, "why not"),
        lambda: felt(kit, bottling),
    ):
        with pytest.raises(ImpossibleInput) as refused:
            act()
        assert refused.value.reason == "ended"
        assert impossible_words(refused.value)


def test_names_of_the_trade_are_words():
    for member in (*Feel, *Opened, *AdditionKind, *BottlingState):
        assert name_of(member)[0].isalpha()
    with pytest.raises(KeyError):
        name_of(ActKind.FILL_BOTTLES)
    assert addition_name("figs") == "Figs"


def test_numbers_are_told_as_far_as_they_are_known():
    assert bar_words(8.0) == "over 8 bar"
    assert bar_words(-0.1).startswith("0.0 bar")
    assert bar_words(2.41, is_high=True).startswith("2.5 bar")
    assert days_words(0.2, 0.9) == "less than a day"
    assert days_words(1.24, 4.6) == "1.2 to 5 days"
    assert days_words(5.0, 5.2) == "about 5 days"
    told = {volumes_words(number).split(", ")[1] for number in (1.0, 1.8, 2.4, 3.0, 3.6)}
    assert len(told) == 5


def test_a_draft_keeps_what_was_typed(kit):
    bottling = filled_a_day_ago(kit)
    draft = BottleCheckDraft(
        bottling_id=bottling.id,
        at=kit.clock.now(),
        kind=CheckKind.GAUGE,
        gauge_bar=1.2,
        temperature_c=19.0,
    )
    check = kit.bottlings.check(draft)
    assert (check.gauge_bar, check.temperature_c) == (1.2, 19.0)
