"""How bottles stand now: conditioned on looks and warmth, and what reminders are told."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from brewdesk.services import fizzforecasts, fizzwork
from brewdesk.services.fizzforecasts import FizzForecasts, Urgency
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.store.errors import NoSuchRow
from brewdesk.store.records import BottleCheckDraft, PlaceTemperatureDraft
from culturecore.fizzpace import Pace
from culturecore.stages import BottleKind, BottlingState, CheckKind, Feel, Opened
from tests.helpers.fakes import InlineJobs
from tests.services.history_bottles import GLASS, TEST, felt, filled, sour, wish_of


def sweet(kit, **changes):
    """Bottles with sugar enough to pass any ceiling."""
    return filled(kit, residual_sugar_low_g_per_l=25.0, residual_sugar_high_g_per_l=35.0, **changes)


def now(kit, bottling):
    return kit.fizz_forecasts.now(bottling.id)


def test_a_fresh_bottling_is_calm_and_says_by_when_to_chill(kit):
    bottling = filled(kit, warmest_c=22.0)
    view = now(kit, bottling)
    assert view.urgency is Urgency.CALM
    assert not view.is_urgent
    assert view.chill_by_at > kit.clock.now() + timedelta(days=1)
    assert view.chill_by_at < view.chill_likely_at
    assert view.ceiling_bar == pytest.approx(3.7)
    assert "Chill by" in view.summary
    assert verdict_words(view.verdict).fact
    with pytest.raises(NoSuchRow):
        kit.fizz_forecasts.now(99)


def test_urgency_grows_with_the_days(kit):
    bottling = sweet(kit)
    seen = []
    for _ in range(8):
        seen.append(now(kit, bottling).urgency)
        kit.clock.advance(hours=12)
    order = [list(Urgency).index(one) for one in seen]
    assert order == sorted(order)
    assert seen[-1] is Urgency.NOW
    assert "Chill now" in now(kit, bottling).summary
    assert now(kit, bottling).verdict.code == "chill_now"


def test_soft_lets_one_wait_and_hard_calls_at_once(kit):
    bottling = sweet(kit)
    kit.clock.advance(days=1)
    before = now(kit, bottling)
    soft = felt(kit, bottling, Feel.SOFT)
    assert now(kit, bottling).chill_by_at > before.chill_by_at
    kit.bottlings.edit_check(soft.id, feel=Feel.HARD)
    view = now(kit, bottling)
    assert view.urgency is Urgency.NOW
    assert "bottles_hard" in {verdict.code for verdict in view.verdicts}
    assert view.chill_by_at < before.chill_by_at


@pytest.mark.parametrize(
    ("bar", "code"), [(1.0, "gauge_within"), (2.8, "gauge_chill"), (4.0, "gauge_over_ceiling")]
)
def test_a_gauge_is_judged_until_the_caps_are_lifted(kit, bar, code):
    bottling = sweet(kit)
    kit.clock.advance(days=1)
    felt(kit, bottling, kind=CheckKind.GAUGE, feel=None, gauge_bar=bar)
    view = now(kit, bottling)
    assert code in {verdict.code for verdict in view.verdicts}
    assert view.is_urgent is (code != "gauge_within") or view.verdict.code == "chill_now"
    felt(kit, bottling, kind=CheckKind.VENTED, feel=None)
    assert code not in {verdict.code for verdict in now(kit, bottling).verdicts}


def test_warm_days_bring_the_deadline_forward(kit):
    bottling = sweet(kit)
    kit.clock.advance(days=2)
    usual = now(kit, bottling)
    with kit.store.write() as unit:
        for hours, celsius in ((2, 31.0), (20, 30.0), (44, 32.0)):
            unit.place_temperatures.add(
                PlaceTemperatureDraft(
                    place_id=bottling.place_id,
                    at=bottling.filled_at + timedelta(hours=hours),
                    temperature_c=celsius,
                )
            )
    warm = now(kit, bottling)
    assert warm.chill_by_at < usual.chill_by_at
    assert warm.gauge_bar.value > usual.gauge_bar.value


def test_a_cool_look_long_ago_does_not_vouch_for_today(kit):
    bottling = sweet(kit)
    kit.clock.advance(days=6)
    with kit.store.write() as unit:
        unit.place_temperatures.add(
            PlaceTemperatureDraft(
                place_id=bottling.place_id, at=bottling.filled_at, temperature_c=12.0
            )
        )
    warmth = fizzforecasts.typed_warmth
    with kit.store.read() as unit:
        found = warmth(unit, bottling.place_id, bottling.filled_at, kit.clock.now())
    steps = fizzforecasts._steps(bottling, found, kit.clock.now())
    assert [step.temperature_c for step in steps] == [12.0, None]
    assert steps[1].day == pytest.approx(1.5)


def test_in_the_cold_the_gauge_falls_and_the_month_runs(kit):
    bottling = sweet(kit)
    kit.clock.advance(days=1)
    felt(kit, bottling, Feel.FIRM)
    warm = now(kit, bottling)
    kit.bottlings.chill(bottling.id)
    kit.clock.advance(hours=6)
    cold = now(kit, bottling)
    assert cold.gauge_bar.value < warm.gauge_bar.value
    assert cold.urgency is Urgency.CALM
    assert cold.best_before is not None
    assert "In the cold" in cold.summary
    kit.clock.advance(days=31)
    late = now(kit, bottling)
    assert late.urgency is Urgency.NOW
    assert "keeping_long" in {verdict.code for verdict in late.verdicts}


def test_even_the_cold_does_not_hold_for_ever(kit):
    bottling = sweet(kit)
    kit.clock.advance(days=2)
    felt(kit, bottling, Feel.HARD)
    kit.bottlings.chill(bottling.id, cold_temperature_c=12.0)
    kit.clock.advance(days=60)
    view = now(kit, bottling)
    assert "bottles_over_in_the_cold" in {verdict.code for verdict in view.verdicts}
    assert view.best_before < kit.bottlings.get(bottling.id).best_before
    assert verdict_words(view.verdict).what_to_do


def test_a_drink_without_sugar_has_no_deadline(kit):
    bottling = filled(
        kit,
        residual_sugar_low_g_per_l=0.0,
        residual_sugar_high_g_per_l=0.5,
        target_volumes=1.0,
        priming_sugar_g=0.0,
    )
    view = now(kit, bottling)
    assert view.chill_by_at is None
    assert view.chill_likely_at is None
    assert "No sugar is left" in view.summary
    assert kit.fizz_forecasts.reminder_facts()[0].chill_by_low_at is None


def test_bottles_not_for_pressure_stay_urgent(kit):
    wish = wish_of(kit, sour(kit), groups=(replace(GLASS, kind=BottleKind.NOT_FOR_PRESSURE), TEST))
    bottling = kit.bottlings.fill(wish, "to be drunk tonight")
    view = now(kit, bottling)
    assert view.ceiling_bar is None
    assert view.verdict.code == "bottle_not_for_pressure"
    assert view.is_urgent


def test_what_is_gone_is_calm_and_says_nothing(kit):
    bottling = sweet(kit)
    kit.clock.advance(days=9)
    kit.bottlings.finish(bottling.id)
    view = now(kit, bottling)
    assert view.urgency is Urgency.CALM
    assert view.summary == ""
    assert kit.fizz_forecasts.all_open() == ()


def test_the_most_urgent_comes_first(kit):
    calm = filled(kit, warmest_c=22.0)
    other = sour(kit)
    wish = wish_of(kit, other, residual_sugar_high_g_per_l=40.0, warmest_c=28.0)
    urgent = kit.bottlings.fill(wish)
    felt(kit, urgent, Feel.HARD)
    assert [view.bottling.id for view in kit.fizz_forecasts.all_open()] == [urgent.id, calm.id]


def test_reminders_are_told_what_they_need(kit):
    bottling = sweet(kit)
    (facts,) = kit.fizz_forecasts.reminder_facts()
    view = now(kit, bottling)
    assert (facts.chill_by_low_at, facts.chill_by_at) == (view.chill_by_at, view.chill_likely_at)
    assert (facts.filled_at, facts.name) == (bottling.filled_at, bottling.name)
    assert facts.last_check_at is None
    assert facts.opened_at is None
    assert facts.best_before is None
    kit.clock.advance(days=1)
    check = felt(kit, bottling, Feel.SOFT)
    kit.bottlings.chill(bottling.id)
    (facts,) = kit.fizz_forecasts.reminder_facts()
    assert facts.last_check_at == check.at
    assert facts.state is BottlingState.CHILLED
    assert facts.best_before is not None


def test_the_newest_bottle_opened_is_told_to_the_reminders(kit):
    bottling = sweet(kit)
    kit.clock.advance(days=2)
    opened = kit.bottlings.check(
        BottleCheckDraft(
            bottling_id=bottling.id,
            at=kit.clock.now(),
            kind=CheckKind.OPENED,
            opened=Opened.RIGHT,
            bottle_count=1,
        )
    )
    (facts,) = kit.fizz_forecasts.reminder_facts()
    assert facts.opened_at == opened.at


def test_earlier_bottlings_teach_the_next(kit):
    assert kit.fizz_forecasts.pace().sd == pytest.approx(Pace().sd, rel=1e-3)
    first = sweet(kit)
    kit.clock.advance(days=1)
    felt(kit, first, kind=CheckKind.GAUGE, feel=None, gauge_bar=3.2, sd_bar=0.1)
    lively = kit.fizz_forecasts.pace()
    assert lively.log_rate > Pace().log_rate + 0.2
    assert lively.sd < Pace().sd
    batch = sour(kit)
    plain = wish_of(kit, batch, residual_sugar_high_g_per_l=35.0)
    learnt = kit.bottlings.outlook(plain).chill_by_day.low
    kit.bottlings.remove_check(kit.bottlings.parts_of(first.id).checks[0].id)
    assert kit.bottlings.outlook(plain).chill_by_day.low > learnt


def test_a_later_bottling_teaches_nothing_backwards(kit):
    first = sweet(kit)
    before = now(kit, first).chill_by_at
    second = kit.bottlings.fill(wish_of(kit, sour(kit)))
    kit.clock.advance(days=1)
    felt(kit, second, kind=CheckKind.OPENED, feel=None, opened=Opened.GUSHER)
    assert now(kit, first).chill_by_at == before
    assert kit.fizz_forecasts.pace().log_rate > Pace().log_rate


def test_what_was_worked_out_is_kept_while_it_holds(kit, monkeypatch):
    bottling = sweet(kit)
    counted = []
    real = fizzwork.course_of
    monkeypatch.setattr(
        fizzwork, "course_of", lambda *args, **kw: counted.append(1) or real(*args, **kw)
    )
    forecasts = FizzForecasts(kit.door)
    forecasts.now(bottling.id)
    first = len(counted)
    kit.clock.advance(hours=3)
    forecasts.now(bottling.id)
    assert len(counted) == first == 2  # one for each kind of bottles
    felt(kit, bottling, Feel.SOFT)
    forecasts.now(bottling.id)
    assert len(counted) == 4


@pytest.fixture
def jobs():
    return InlineJobs(hold=True)


@pytest.fixture
def apart(kit, jobs):
    """Forecasts that are worked out elsewhere, when the jobs are let go."""
    return FizzForecasts(kit.door, jobs=jobs)


def let_go(apart, jobs):
    """Let the jobs be done until nothing more is asked for; return how often that was."""
    for rounds in range(10):
        apart.all_open()
        if not jobs.is_holding():
            return rounds
        jobs.release()
    raise AssertionError("asked for again and again")


def test_nothing_is_worked_out_on_the_callers_thread(kit, apart, jobs, monkeypatch):
    bottling = sweet(kit)
    monkeypatch.setattr(fizzforecasts, "courses_of", lambda keys: pytest.fail("worked out here"))
    assert apart.all_open() == ()
    assert apart.reminder_facts() == ()
    assert [one.id for one in apart.being_worked_out()] == [bottling.id]


def test_what_comes_is_what_would_have_been_worked_out_at_once(kit, apart, jobs):
    first = sweet(kit)
    kit.clock.advance(days=1)
    felt(kit, first, kind=CheckKind.GAUGE, feel=None, gauge_bar=3.0, sd_bar=0.1)
    kit.bottlings.fill(wish_of(kit, sour(kit)))
    let_go(apart, jobs)
    assert apart.all_open() == kit.fizz_forecasts.all_open()
    assert len(apart.all_open()) == 2
    assert apart.being_worked_out() == ()
    assert apart.reminder_facts() == kit.fizz_forecasts.reminder_facts()


def test_it_is_asked_for_once_however_often_one_looks(kit, apart, jobs):
    sweet(kit)
    for _ in range(5):
        apart.all_open()
        apart.being_worked_out()
    assert len(jobs.keys) == 1
    ready = []
    apart.ready.connect(lambda: ready.append(len(apart.all_open())))
    jobs.release()
    assert ready == [1]
    for _ in range(5):
        apart.all_open()
    assert len(jobs.keys) == 1


def test_an_hour_later_the_old_figures_stand_until_the_new_ones_are_there(kit, apart, jobs):
    bottling = sweet(kit)
    read = PlaceTemperatureDraft(
        place_id=bottling.place_id, at=bottling.filled_at, temperature_c=24.0
    )
    with kit.store.write() as unit:
        unit.place_temperatures.add(read)
    let_go(apart, jobs)
    (before,) = apart.all_open()
    kit.clock.advance(hours=7)
    (meanwhile,) = apart.all_open()
    assert jobs.is_holding()
    assert meanwhile.course == before.course
    assert meanwhile.now_day > before.now_day
    let_go(apart, jobs)
    (after,) = apart.all_open()
    assert after == kit.fizz_forecasts.now(bottling.id)


def test_after_a_look_at_the_bottles_nothing_old_is_said(kit, apart, jobs):
    bottling = sweet(kit)
    let_go(apart, jobs)
    assert len(apart.all_open()) == 1
    kit.clock.advance(days=1)
    felt(kit, bottling, Feel.HARD)
    assert apart.all_open() == ()
    assert apart.reminder_facts() == ()
    assert [one.id for one in apart.being_worked_out()] == [bottling.id]
    let_go(apart, jobs)
    assert apart.all_open() == (kit.fizz_forecasts.now(bottling.id),)


def test_what_failed_is_asked_for_again(kit, apart, jobs, monkeypatch):
    sweet(kit)

    def broken(_keys):
        raise RuntimeError("a bug")

    with monkeypatch.context() as patched:
        patched.setattr(fizzforecasts, "courses_of", broken)
        apart.all_open()
        with pytest.raises(RuntimeError):
            jobs.release()
    let_go(apart, jobs)
    assert len(apart.all_open()) == 1
