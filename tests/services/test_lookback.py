"""Looking back: what is gathered, how it is put side by side, what is kept between questions."""

from __future__ import annotations

import itertools
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from brewdesk.services import lookback, lookbackfacts
from brewdesk.services.lookbackfacts import gather
from brewdesk.services.lookbackgroups import Factor, LookBackSieve, Measure, Question
from brewdesk.services.lookbacklosses import LossKind
from brewdesk.services.lookbackview import view_of
from brewdesk.services.losscauses import Cause, cause_of
from brewdesk.services.settings import FIRST_TASTE_PH
from brewdesk.services.wording.lookback import group_words, sentences
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import (
    BottleCheckDraft,
    BottleGroupDraft,
    BottlingDraft,
    PlaceDraft,
    PlaceTemperatureDraft,
    ReadingDraft,
    TransferDraft,
)
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    BottleKind,
    BottlingState,
    CheckKind,
    CultureState,
    Look,
    Method,
    Opened,
    Quantity,
    TasteMark,
    TeaKind,
    TransferKind,
)
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import open_desk
from tests.services.pasts import Past


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def past(desk):
    return Past(desk)


def look(desk, **fields):
    return desk.look_back.now(Question(**fields))


def told(desk, view):
    return " ".join(sentences(view, desk.quantities.show))


# --- how long -------------------------------------------------------------------------------


def test_an_empty_pantry_has_nothing_to_tell(desk):
    view = look(desk)
    assert not view.has_any
    assert (view.groups, view.months, view.losses) == ((), (), ())
    assert sentences(view, desk.quantities.show) == ()


def test_days_are_read_between_the_readings(desk, past):
    past.batch(((6.0, 3.4), (10.0, 3.0)))
    (dot,) = look(desk).dots
    assert dot.days == pytest.approx(8.0)
    assert (dot.earliest, dot.latest) == (pytest.approx(6.0), pytest.approx(10.0))
    assert not dot.is_open


def test_what_did_not_get_there_is_open_and_what_was_not_read_has_no_say(desk, past):
    past.batch(((5.0, 3.6),), stage=BatchStage.SOURING, started=5.5)
    past.batch(())
    past.batch(((5.0, 3.0),), start_ph=3.1, start_ph_low=3.0)
    view = look(desk)
    (dot,) = view.dots
    assert (dot.days, dot.is_open) == (pytest.approx(5.0), True)
    assert (view.unread, view.from_start) == (1, 1)
    assert view.spread is None


def test_until_drawn_off_goes_by_the_end(desk, past):
    past.batch(lasted=9.0)
    past.batch(stage=BatchStage.SOURING, started=4.0)
    past.batch(stage=BatchStage.DISCARDED, lasted=3.0, reason="mold")
    view = look(desk, measure=Measure.DRAWN_OFF)
    assert [(round(dot.days, 6), dot.is_open) for dot in view.dots] == [(9.0, False), (4.0, True)]
    assert (view.drawn_off, view.souring, view.discarded) == (1, 1, 1)


def test_readings_after_the_end_do_not_count(desk, past):
    past.batch(((5.0, 3.6), (14.0, 3.0)), lasted=12.0)
    (dot,) = look(desk).dots
    assert dot.is_open


def test_growing_a_culture_has_no_pace(desk, past):
    past.batch(purpose=BatchPurpose.CULTURE)
    view = look(desk)
    assert view.has_any
    assert (view.batch_count, view.dots) == (0, ())


def test_ripe_is_the_makers_own_band_once_there_is_one(desk):
    assert desk.look_back.ripe_ph() == 3.2
    desk.settings.put(FIRST_TASTE_PH, 3.5)
    assert desk.look_back.ripe_ph() == 3.5


# --- side by side ---------------------------------------------------------------------------


def test_two_groups_with_five_each_are_compared(desk, past):
    for days in (7.0, 7.2, 7.4, 7.6, 7.8):
        past.reached(days)
    for days in (10.0, 10.4, 10.8, 11.0, 11.2):
        past.reached(days, tea=TeaKind.GREEN)
    view = look(desk)
    assert view.compared.difference.is_told
    assert view.compared.difference.interval.high < 0.0  # black took less
    assert "Green tea took longer than Black tea" in told(desk, view)


def test_four_of_a_kind_are_too_few_to_call_it_a_difference(desk, past):
    for days in (7.0, 7.2, 7.4, 7.6, 7.8, 7.9):
        past.reached(days)
    for days in (15.0, 15.5, 16.0, 16.5):
        past.reached(days, tea=TeaKind.GREEN)
    view = look(desk)
    assert view.compared is None
    assert "too few to call it a difference" in told(desk, view)
    assert "longer" not in told(desk, view)


def test_warmth_is_named_where_it_may_be_behind_a_difference(desk, past):
    cellar = desk.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=17.0))
    for n in range(5):
        past.reached(7.0 + n / 10)
        jar = past.vessel(cellar)
        past.reached(12.0 + n / 10, tea=TeaKind.GREEN, vessel=jar, place_temperature_c=17.0)
    assert "may be warmth: Green tea stood 5.0 °C cooler" in told(desk, look(desk))


def test_running_batches_are_shown_but_not_compared(desk, past):
    for n in range(5):
        past.reached(7.0 + n / 10)
        past.reached(8.0 + n / 10, tea=TeaKind.GREEN)
    before = look(desk).compared.difference
    past.reached(3.0, stage=BatchStage.SOURING, started=9.0)
    view = look(desk)
    assert view.compared.difference == before
    assert len(view.groups[0].dots) == 6


def test_one_that_never_got_there_takes_the_guess_away(desk, past):
    for n in range(5):
        past.reached(7.0 + n / 10)
        past.reached(9.0 + n / 10, tea=TeaKind.GREEN)
    assert all(group.guess_days is not None for group in look(desk).groups)
    past.batch(((9.0, 3.5),))
    black, green = look(desk).groups
    assert black.guess_days is None
    assert green.guess_days is None  # alone it has nothing to be drawn towards


@settings(
    max_examples=15, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(order=st.permutations([6.0, 8.0, 10.0, 12.0]))
def test_groups_never_stand_in_the_order_of_their_speed(gathered, order):
    """The teas keep their places whichever of them was quickest."""
    batches = tuple(
        replace(
            gathered.batches[0],
            batch_id=n,
            tea_kind=tea,
            ph=((days - 0.5, 3.3), (days + 0.5, 3.1)),
        )
        for n, (tea, days) in enumerate(zip(list(TeaKind)[:4], order, strict=True))
    )
    view = view_of(replace(gathered, batches=batches), Question())
    assert [group.key.value for group in view.groups] == list(TeaKind)[:4]


@pytest.fixture(scope="module")
def gathered(tmp_path_factory, qapp):
    desk = open_desk(tmp_path_factory.mktemp("shared"), with_forecasts=True)
    Past(desk).batch()
    found = gather(desk.door, desk.place_log.means, {})
    desk.store.close()
    return found


def test_every_factor_puts_every_batch_into_one_group(desk, past):
    founder = past.culture("Founder")
    child = past.culture("Child", parents=(founder.id,), born_days_ago=60.0)
    for n, culture in enumerate((founder, child, None)):
        past.reached(7.0 + n, culture=culture, started=30.0 + 45 * n)
    for factor in Factor:
        view = look(desk, factor=factor)
        assert sum(len(group.dots) for group in view.groups) == 3
        names = [group_words(group.key, factor, desk.quantities.show) for group in view.groups]
        assert all(names)
        assert len(set(names)) == len(names)


def test_generation_and_age_are_those_at_the_start(desk, past):
    founder = past.culture("Founder")
    child = past.culture("Child", parents=(founder.id,), born_days_ago=60.0)
    past.reached(7.0, culture=child, started=40.0)
    (group,) = look(desk, factor=Factor.GENERATION).groups
    assert group.key.value == 1
    assert group.dots[0].batch.culture_age_days == pytest.approx(20.0)


def test_months_are_those_of_the_local_calendar(tmp_path, qapp):
    """23:30 on 31 October in UTC is November in Auckland."""
    clock = FakeClock(zone=ZoneInfo("Pacific/Auckland"))
    desk = open_desk(tmp_path, clock, with_forecasts=True)
    past = Past(desk)
    started = (past.now - datetime(2026, 10, 31, 23, 30, tzinfo=UTC)) / timedelta(days=1)
    past.reached(7.0, started=started)
    view = look(desk, factor=Factor.MONTH)
    assert [group.key.value for group in view.groups] == [11]
    assert [(month.year, month.month) for month in view.months] == [(2026, 11)]
    desk.store.close()


# --- warmth and place -----------------------------------------------------------------------


def test_the_place_log_tells_how_warm_it_was(desk, past):
    batch = past.reached(7.0, started=20.0, lasted=10.0)
    with desk.store.write() as unit:
        for day in range(10):
            unit.place_temperatures.add(
                PlaceTemperatureDraft(
                    place_id=past.place.id,
                    at=batch.started_at + timedelta(days=day + 0.5),
                    temperature_c=24.0 + day / 10,
                )
            )
    (dot,) = look(desk).dots
    assert dot.batch.is_measured
    assert dot.batch.temperature_c == pytest.approx(24.45)


def test_without_a_log_the_usual_temperature_is_marked_as_such(desk, past):
    past.reached(7.0, place_temperature_c=19.5)
    (dot,) = look(desk).dots
    assert (dot.batch.temperature_c, dot.batch.is_measured) == (19.5, False)


def test_a_day_read_often_counts_once(desk, past):
    batch = past.reached(7.0)
    for hour in range(10):
        past.reading(batch, 2.0 + hour / 24, Quantity.TEMPERATURE_C, value=30.0)
    past.reading(batch, 5.0, Quantity.TEMPERATURE_C, value=20.0)
    (dot,) = look(desk).dots
    assert dot.batch.temperature_c == pytest.approx(25.0)


def test_a_batch_belongs_to_the_place_where_it_stood_longest(desk, past):
    cellar = desk.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    jar = past.vessel()
    past.reached(7.0, started=30.0, stage=BatchStage.SOURING, vessel=jar)
    desk.vessels.edit(jar.id, place_id=cellar.id)  # carried away a moment ago
    (group,) = look(desk, factor=Factor.PLACE).groups
    assert group.key.name == "Invented pantry"
    desk.clock.advance(days=40)
    (group,) = look(desk, factor=Factor.PLACE).groups
    assert group.key.name == "Cellar"


# --- what is let through --------------------------------------------------------------------


def test_the_sieve_lets_through_by_tea_culture_place_and_time(desk, past):
    culture = past.culture()
    cellar = desk.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    names = {
        "green": past.reached(7.0, name="green", tea=TeaKind.GREEN, started=90.0),
        "own": past.reached(7.0, name="own", culture=culture, started=60.0),
        "below": past.reached(7.0, name="below", vessel=past.vessel(cellar), started=30.0),
    }
    assert len(names) == 3
    today = past.now.date()

    def seen(**fields):
        return {dot.batch.name for dot in look(desk, sieve=LookBackSieve(**fields)).dots}

    assert seen() == {"green", "own", "below"}
    assert seen(tea=TeaKind.GREEN) == {"green"}
    assert seen(culture_id=culture.id) == {"own"}
    assert seen(place_id=cellar.id) == {"below"}
    assert seen(since=today - timedelta(days=60)) == {"own", "below"}
    assert seen(until=today - timedelta(days=60)) == {"green", "own"}
    assert seen(tea=TeaKind.GREEN, culture_id=culture.id) == set()


# --- tastes, bottles, litres, losses --------------------------------------------------------


def test_tastes_are_counted_by_group_and_in_all(desk, past):
    batch = past.reached(7.0)
    for day, mark in enumerate(TasteMark):
        past.reading(batch, 1.0 + day, Quantity.TASTE, text=mark.value)
    view = look(desk)
    assert (view.tastes.under, view.tastes.right, view.tastes.over) == (2, 1, 2)
    assert view.groups[0].tastes == view.tastes
    assert "Of 5 tastings 1 were just right" in told(desk, view)


def _bottling(unit, past, batch, *, state, checks=(), reason="", transfer_id=None):
    filled = batch.ended_at
    bottling = unit.bottlings.add(
        BottlingDraft(
            name="Invented bottles",
            batch_id=batch.id,
            filled_at=filled,
            drink_volume_l=2.0,
            residual_sugar_low_g_per_l=4.0,
            residual_sugar_high_g_per_l=12.0,
            target_volumes=2.0,
            priming_sugar_g=0.0,
            place_temperature_c=20.0,
            open_jar_c=22.0,
            warmest_c=25.0,
            state=state,
            transfer_id=transfer_id,
            chilled_at=filled + timedelta(days=2),
            cold_temperature_c=4.0,
            ended_at=None
            if state in (BottlingState.CONDITIONING, BottlingState.CHILLED)
            else filled + timedelta(days=10),
            end_reason=reason,
        )
    )
    unit.bottle_groups.add(
        BottleGroupDraft(
            bottling_id=bottling.id,
            position=0,
            bottle_count=4,
            kind=BottleKind.FIZZY_GLASS,
            brim_volume_l=0.52,
            headspace_share=0.04,
        )
    )
    for kind, opened, count in checks:
        unit.bottle_checks.add(
            BottleCheckDraft(
                bottling_id=bottling.id,
                at=filled + timedelta(days=3),
                kind=kind,
                opened=opened,
                bottle_count=count,
            )
        )
    return bottling


def test_bottles_tell_how_they_opened_and_what_was_drunk(desk, past):
    batch = past.reached(7.0, lasted=10.0)
    with desk.store.write() as unit:
        into = unit.transfers.add(
            TransferDraft(
                at=batch.ended_at,
                kind=TransferKind.DRINK,
                volume_l=2.0,
                from_batch_id=batch.id,
            )
        )
        unit.transfers.add(
            TransferDraft(
                at=batch.ended_at,
                kind=TransferKind.DRINK,
                volume_l=0.7,
                from_batch_id=batch.id,
            )
        )
        checks = (
            (CheckKind.OPENED, Opened.RIGHT, 2),
            (CheckKind.OPENED, Opened.GUSHER, 1),
            (CheckKind.VENTED, None, 0),
        )
        _bottling(
            unit, past, batch, state=BottlingState.CHILLED, checks=checks, transfer_id=into.id
        )
    view = look(desk)
    assert (view.fizz.under, view.fizz.right, view.fizz.over) == (0, 2, 1)
    assert view.vented == 1
    assert "Bottles were vented once." in told(desk, view)
    # 0.7 L from the jar and three of four bottles of half a litre; the fourth is still closed
    assert view.drunk_l == pytest.approx(0.7 + 3 * 0.5)
    assert sum(month.drunk_l for month in view.months) == pytest.approx(view.drunk_l)


def test_finished_bottles_are_drunk_and_discarded_ones_lost(desk, past):
    first, second = past.reached(7.0), past.reached(8.0)
    opened = ((CheckKind.OPENED, Opened.TOO_FLAT, 1),)
    with desk.store.write() as unit:
        _bottling(unit, past, first, state=BottlingState.FINISHED, checks=opened)
        _bottling(
            unit, past, second, state=BottlingState.DISCARDED, reason="Two cracked", checks=opened
        )
    view = look(desk)
    assert view.drunk_l == pytest.approx(2.0 + 0.5)
    (loss,) = view.losses
    assert (loss.kind, loss.bottle_count, loss.cause) == (LossKind.BOTTLES, 3, Cause.BROKEN)
    assert loss.volume_l == pytest.approx(1.5)


def test_litres_go_by_the_day_they_were_drunk(desk, past):
    batch = past.reached(7.0, started=100.0, lasted=10.0)
    with desk.store.write() as unit:
        _bottling(unit, past, batch, state=BottlingState.FINISHED)
    late = LookBackSieve(since=(batch.ended_at + timedelta(days=5)).date())
    view = look(desk, sieve=late)
    assert view.batch_count == 0
    assert view.drunk_l == pytest.approx(2.0)


def test_losses_carry_the_makers_words_and_their_cause(desk, past):
    past.batch(stage=BatchStage.DISCARDED, lasted=5.0, reason="Fruit flies everywhere")
    looked = past.batch(stage=BatchStage.DISCARDED, lasted=6.0, reason="Did not look right")
    past.reading(looked, 5.5, Quantity.LOOK, text=Look.MOLD.value)
    culture = past.culture("Skerry")
    desk.culture_care.lose(culture.id, "Dried out", flag=False)
    view = look(desk)
    assert [loss.kind for loss in view.losses] == [
        LossKind.CULTURE,
        LossKind.BATCH,
        LossKind.BATCH,
    ]
    assert [loss.cause for loss in view.losses] == [Cause.DRIED, Cause.MOLD, Cause.FLIES]
    assert {loss.reason for loss in view.losses} == {
        "Dried out",
        "Did not look right",
        "Fruit flies everywhere",
    }
    only_tea = look(desk, sieve=LookBackSieve(tea=TeaKind.BLACK))
    assert LossKind.CULTURE not in {loss.kind for loss in only_tea.losses}


@pytest.mark.parametrize(
    ("reason", "cause"),
    [
        ("A fuzzy spot on top: mold.", Cause.MOLD),
        ("MOULDY", Cause.MOLD),
        ("No mold, but flies had got in", Cause.FLIES),
        ("not a trace of mold; it smells rotten", Cause.OFF),
        ("The jar cracked", Cause.BROKEN),
        ("Two burst in the pantry", Cause.PRESSURE),
        ("far too acidic, like vinegar", Cause.TOO_SOUR),
        ("forgotten and dried out", Cause.DRIED),
        ("changed my mind", Cause.UNTOLD),
        ("butterfly-pea test, over", Cause.UNTOLD),
        ("offered to a friend", Cause.UNTOLD),
        ("", Cause.UNTOLD),
        ("<b>mold</b>", Cause.MOLD),
    ],
)
def test_a_cause_is_read_from_the_words_and_never_made_up(reason, cause):
    assert cause_of(reason) is cause


def test_mold_that_was_ticked_needs_no_words():
    assert cause_of("changed my mind", saw_mold=True) is Cause.MOLD


# --- asked and kept -------------------------------------------------------------------------


class Asking:
    """A desk's look back, its answers, and how many batches each answer read anew."""

    def __init__(self, desk, monkeypatch):
        self.desk, self.views, self.read = desk, [], []
        desk.look_back.ready.connect(self.views.append)
        inner = lookbackfacts._past_batch

        def counted(course, *rest):
            self.read.append(course.batch.id)
            return inner(course, *rest)

        monkeypatch.setattr(lookbackfacts, "_past_batch", counted)

    def ask(self, question=None):
        self.read.clear()
        self.desk.look_back.ask(question or Question())
        return self.views[-1], sorted(self.read)


@pytest.fixture
def asking(desk, past, monkeypatch):
    return Asking(desk, monkeypatch)


def test_what_has_not_changed_is_read_once(asking, past):
    first, second = past.reached(7.0), past.reached(9.0)
    view, read = asking.ask()
    assert (len(view.dots), read) == (2, [first.id, second.id])
    again, read = asking.ask(Question(factor=Factor.CULTURE))
    assert (len(again.dots), read) == (2, [])


def test_a_new_reading_is_seen_and_reads_its_batch_alone(asking, past):
    past.reached(7.0)
    running = past.batch(((5.0, 3.6),), stage=BatchStage.SOURING, started=8.0)
    view, _ = asking.ask()
    assert [dot.is_open for dot in view.dots] == [False, True]
    asking.desk.readings.record(
        [
            ReadingDraft(
                batch_id=running.id,
                at=past.now - timedelta(hours=1),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.0,
                entered="3.0",
            )
        ]
    )
    view, read = asking.ask()
    assert [dot.is_open for dot in view.dots] == [False, False]
    assert read == [running.id]


def test_an_undone_reading_is_gone_again(asking, past):
    running = past.batch(((5.0, 3.6),), stage=BatchStage.SOURING, started=8.0)
    draft = ReadingDraft(
        batch_id=running.id,
        at=past.now,
        quantity=Quantity.PH,
        method=Method.METER,
        value=3.0,
        entered="3.0",
    )
    asking.desk.readings.record([draft])
    assert [dot.is_open for dot in asking.ask()[0].dots] == [False]
    asking.desk.history.undo()
    assert [dot.is_open for dot in asking.ask()[0].dots] == [True]


def test_a_culture_renamed_is_told_by_its_new_name(asking, past):
    culture = past.culture("Before")
    past.reached(7.0, culture=culture)
    question = Question(factor=Factor.CULTURE)
    assert asking.ask(question)[0].groups[0].key.name == "Before"
    asking.desk.cultures.edit(culture.id, name="After")
    assert asking.ask(question)[0].groups[0].key.name == "After"


def test_what_was_read_while_something_changed_is_not_kept(tmp_path, qapp):
    desk = open_desk(tmp_path)  # its jobs are held
    past = Past(desk)
    culture = past.culture("Before")
    past.reached(7.0, culture=culture)
    views = []
    desk.look_back.ready.connect(views.append)
    question = Question(factor=Factor.CULTURE)

    desk.look_back.ask(question)
    work = desk.jobs._held[-1][1]  # begun now, landing after the change
    original = desk.look_back._on_worked
    landing = []
    desk.look_back._on_worked = lambda *given: landing.append(given)
    work()
    desk.cultures.edit(culture.id, name="After")
    desk.look_back._on_worked = original
    original(*landing[0])
    assert views[-1].groups[0].key.name == "Before"
    desk.look_back.ask(question)
    desk.jobs.release()
    assert views[-1].groups[0].key.name == "After"
    desk.store.close()


def test_trouble_with_the_store_is_told_and_the_next_answer_comes(desk, past, monkeypatch):
    troubles, views = [], []
    desk.look_back.failed.connect(troubles.append)
    desk.look_back.ready.connect(views.append)
    past.reached(7.0)

    def broken(*_given):
        raise StoreTrouble("io_error")

    with monkeypatch.context() as patch:
        patch.setattr(lookback, "gather", broken)
        desk.look_back.ask(Question())
    assert ([trouble.code for trouble in troubles], views) == (["io_error"], [])
    desk.look_back.ask(Question())
    assert len(views[0].dots) == 1


def test_running_batches_grow_older_between_questions(asking, past):
    past.batch((), stage=BatchStage.SOURING, started=4.0)
    question = Question(measure=Measure.DRAWN_OFF)
    assert asking.ask(question)[0].dots[0].days == pytest.approx(4.0)
    asking.desk.clock.advance(days=2)
    assert asking.ask(question)[0].dots[0].days == pytest.approx(6.0)


def test_lost_cultures_stay_lost_after_the_pantry_is_read_again(asking, past):
    culture = past.culture("Skerry")
    past.reached(7.0)
    asking.ask()
    asking.desk.culture_care.lose(culture.id, "mold", flag=False)
    view, _ = asking.ask()
    assert [loss.name for loss in view.losses] == ["Skerry"]
    with asking.desk.store.read() as unit:
        assert unit.cultures.get(culture.id).state is CultureState.LOST


def test_several_batches_a_chunk_come_in_the_order_of_their_start(desk, past, monkeypatch):
    monkeypatch.setattr(lookbackfacts, "BATCHES_AT_A_TIME", 2)
    for started in (50.0, 90.0, 70.0, 110.0, 30.0):
        past.reached(7.0, started=started)
    starts = [dot.batch.started_at for dot in look(desk).dots]
    assert len(starts) == 5
    assert all(a < b for a, b in itertools.pairwise(starts))
