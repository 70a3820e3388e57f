"""The forecast: honest bands, robust to slips, the same answer for the same question."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import priors, reweighting
from culturecore.errors import ImpossibleInput
from culturecore.forecast import Band, Conditions, Forecast, Observation, forecast
from culturecore.outcome import Caveat, Estimate
from culturecore.stages import Quantity, TeaKind

PLAIN = Conditions(
    volume_l=1.0,
    surface_cm2=80.0,
    starter_share=0.1,
    start_ph=None,
    starter_ta_g_per_l=None,
    temperature_c=25.0,
    sugar_g_per_l=60.0,
    tea_kind=TeaKind.BLACK,
)
RECKONED = replace(PLAIN, start_ph=Estimate(4.2, 4.0, 4.4, caveats=(Caveat.WATER_ASSUMED,)))
# An invented course of a lively jar.
LIVELY = ((0.0, 4.2), (2.0, 3.9), (4.0, 3.65), (6.0, 3.45), (8.0, 3.3))


def ph_reading(day, value, sd=0.05):
    return Observation(day=day, quantity=Quantity.PH, value=value, sd=sd)


def ta_reading(day, value, sd=0.2):
    return Observation(day=day, quantity=Quantity.TA_G_PER_L, value=value, sd=sd)


def readings(course):
    return [ph_reading(day, value) for day, value in course]


def band_width(answer: Forecast, day: float) -> float:
    at = answer.days.index(day)
    return answer.ph[0.9][at] - answer.ph[0.1][at]


def width(estimate: Estimate) -> float:
    return estimate.high - estimate.low


def assert_sane(answer: Forecast) -> None:
    """Finite, ordered, falling, and consistent with itself."""
    quantiles = sorted(answer.ph)
    assert quantiles == [0.1, 0.25, 0.5, 0.75, 0.9]
    ph = np.array([answer.ph[q] for q in quantiles])
    ta = np.array([answer.ta_g_per_l[q] for q in quantiles])
    for curves in (ph, ta):
        assert curves.shape == (5, len(answer.days))
        assert np.isfinite(curves).all()
        assert (np.diff(curves, axis=0) >= -1e-9).all()
    assert (np.diff(ph, axis=1) <= 1e-9).all()
    assert (np.diff(ta, axis=1) >= -1e-9).all()
    assert ph.min() >= 2.5
    assert ph.max() <= 5.5
    assert 0.0 <= answer.probability_safe_by_deadline <= 1.0
    assert 1.0 <= answer.effective_draws <= 20_000.0
    for estimate in (answer.safe_ph_day, answer.window_opens_day, answer.window_closes_day):
        if estimate is not None:
            assert 0.0 <= estimate.low <= estimate.value <= estimate.high <= answer.days[-1]
            assert estimate.level == 0.8


def test_a_recipe_alone_gives_a_wide_window_and_says_so():
    answer = forecast(PLAIN, [])
    assert_sane(answer)
    assert Caveat.RECIPE_ONLY in answer.caveats
    assert answer.window_opens_day.high - answer.window_opens_day.low > 8.0
    assert answer.days == tuple(0.5 * i for i in range(71))


def test_a_reckoned_start_counts_and_brings_its_caveats():
    answer = forecast(RECKONED, [])
    assert Caveat.RECIPE_ONLY not in answer.caveats
    assert Caveat.WATER_ASSUMED in answer.caveats
    assert answer.ph[0.5][0] == pytest.approx(4.2, abs=0.15)
    assert band_width(answer, 0.0) < band_width(forecast(PLAIN, []), 0.0)


def test_a_read_start_replaces_the_reckoned_one():
    read = [ph_reading(0.0, 3.6)]
    answer = forecast(RECKONED, read)
    assert Caveat.WATER_ASSUMED not in answer.caveats
    assert answer.ph == forecast(PLAIN, read).ph


def test_the_same_question_gets_the_same_answer():
    assert forecast(PLAIN, readings(LIVELY)) == forecast(PLAIN, readings(LIVELY))


def test_another_seed_changes_little():
    here = forecast(PLAIN, readings(LIVELY)).window_opens_day
    there = forecast(PLAIN, readings(LIVELY), seed=7).window_opens_day
    assert here != there
    assert here.value == pytest.approx(there.value, abs=0.4)
    assert width(here) == pytest.approx(width(there), rel=0.25)


def test_the_window_is_where_the_curves_cross_the_band():
    answer = forecast(PLAIN, readings(LIVELY))
    days = np.array(answer.days)
    for estimate, limit in ((answer.window_opens_day, 3.3), (answer.window_closes_day, 2.9)):
        crossing = np.interp(-limit, -np.array(answer.ph[0.5]), days)
        assert estimate.value == pytest.approx(crossing, abs=0.2)


def test_a_sourer_taste_opens_the_window_later():
    sour = forecast(PLAIN, readings(LIVELY), band=Band(first_taste_ph=3.1, too_sour_ph=2.8))
    usual = forecast(PLAIN, readings(LIVELY))
    assert sour.window_opens_day.value > usual.window_opens_day.value + 1.0


@pytest.mark.parametrize(("cool_c", "warm_c"), [(20.0, 23.0), (23.0, 27.0), (16.0, 30.0)])
def test_a_warmer_place_is_ready_earlier(cool_c, warm_c):
    cool = forecast(replace(RECKONED, temperature_c=cool_c), [])
    warm = forecast(replace(RECKONED, temperature_c=warm_c), [])
    assert warm.window_opens_day.value < cool.window_opens_day.value
    assert warm.ph[0.5][14] < cool.ph[0.5][14]


def test_a_taller_fill_is_ready_later():
    tall = forecast(replace(RECKONED, volume_l=4.0, surface_cm2=150.0), [])
    flat = forecast(replace(RECKONED, volume_l=4.0, surface_cm2=400.0), [])
    assert flat.window_opens_day.value < tall.window_opens_day.value


def test_more_starter_starts_sourer():
    little = forecast(replace(PLAIN, starter_share=0.05), [])
    much = forecast(replace(PLAIN, starter_share=0.25), [])
    assert much.ph[0.5][0] < little.ph[0.5][0]
    assert much.probability_safe_by_deadline > little.probability_safe_by_deadline


def test_a_measured_starter_narrows_the_start():
    measured = forecast(replace(PLAIN, starter_ta_g_per_l=6.0), [])
    assert band_width(measured, 0.0) < band_width(forecast(PLAIN, []), 0.0)
    assert Caveat.STARTER_ACID_ASSUMED not in measured.caveats


def test_each_further_reading_narrows_the_window():
    widths = [
        width(forecast(PLAIN, readings(LIVELY[:count])).window_opens_day)
        for count in range(1, len(LIVELY) + 1)
    ]
    assert widths == sorted(widths, reverse=True)
    assert widths[-1] < 0.5 * widths[0]


def test_an_acidity_reading_moves_the_acidity_forecast():
    without = forecast(PLAIN, readings(LIVELY))
    at = without.days.index(14.0)
    more = forecast(PLAIN, [*readings(LIVELY), ta_reading(8.0, 2.0 * without.ta_g_per_l[0.5][16])])
    assert more.ta_g_per_l[0.5][at] > without.ta_g_per_l[0.5][at] * 1.2


def test_acidity_readings_alone_are_enough():
    answer = forecast(PLAIN, [ta_reading(0.0, 0.5), ta_reading(5.0, 1.8), ta_reading(9.0, 3.4)])
    assert_sane(answer)
    at = answer.days.index(9.0)
    assert answer.ta_g_per_l[0.1][at] < 3.4 < answer.ta_g_per_l[0.9][at]
    assert answer.suspects == ()


@pytest.mark.parametrize("wild", [(7.0, 5.2), (7.0, 2.0), (1.0, 6.9)])
def test_one_wild_reading_is_named_and_does_not_break_the_forecast(wild):
    calm = forecast(PLAIN, readings(LIVELY))
    shaken = forecast(PLAIN, [*readings(LIVELY[:3]), ph_reading(*wild), *readings(LIVELY[3:])])
    assert shaken.suspects == (3,)
    assert Caveat.UNLIKE_KNOWN not in shaken.caveats
    assert shaken.window_opens_day.value == pytest.approx(calm.window_opens_day.value, abs=0.6)
    assert width(shaken.window_opens_day) < 1.5 * width(calm.window_opens_day)


def test_calm_readings_are_not_suspected():
    assert forecast(PLAIN, readings(LIVELY)).suspects == ()


def test_a_jar_unlike_any_known_is_said_to_be_and_widens():
    zigzag = [ph_reading(float(day), 3.1 + 0.9 * (day % 2)) for day in range(10)]
    smooth = [ph_reading(float(day), 4.0 - 0.08 * day) for day in range(10)]
    strange, usual = forecast(PLAIN, zigzag), forecast(PLAIN, smooth)
    assert Caveat.UNLIKE_KNOWN in strange.caveats
    assert Caveat.UNLIKE_KNOWN not in usual.caveats
    assert band_width(strange, 14.0) > 2.0 * band_width(usual, 14.0)


def test_a_jar_that_does_not_sour_is_not_called_safe():
    stuck = forecast(PLAIN, [ph_reading(float(day), 4.7) for day in range(0, 14, 2)])
    assert_sane(stuck)
    assert stuck.probability_safe_by_deadline < 0.05
    assert stuck.safe_ph_day is None or stuck.safe_ph_day.value > 10.0
    assert stuck.window_opens_day is None
    assert stuck.window_closes_day is None


@pytest.mark.parametrize("value", [0.0, 2.0, 7.0, 14.0])
@pytest.mark.parametrize("count", [1, 2, 10, 30])
def test_absurd_readings_give_a_sane_and_warned_forecast(value, count):
    answer = forecast(PLAIN, [ph_reading(float(day), value) for day in range(count)])
    assert_sane(answer)
    assert Caveat.UNLIKE_KNOWN in answer.caveats
    # A fitting jar's band is 0.2 wide by then; below pH 2.5 the floor cuts the lower half off.
    assert band_width(answer, 10.0) > 0.35


def test_absurd_acidity_gives_a_sane_forecast():
    assert_sane(forecast(PLAIN, [ta_reading(float(day), 150.0) for day in range(5)]))


@settings(max_examples=25)
@given(
    course=st.lists(
        st.tuples(
            st.floats(0.0, 40.0),
            st.sampled_from([Quantity.PH, Quantity.TA_G_PER_L]),
            st.floats(0.0, 14.0),
            st.floats(0.001, 2.0),
        ),
        max_size=8,
    ),
    temperature_c=st.floats(0.0, 45.0),
    share=st.floats(0.0, 1.0),
    sugar_g_per_l=st.floats(0.0, 200.0),
    tea_kind=st.sampled_from(list(TeaKind)),
)
def test_any_input_that_is_not_refused_gives_a_sane_forecast(
    course, temperature_c, share, sugar_g_per_l, tea_kind
):
    conditions = replace(
        PLAIN,
        temperature_c=temperature_c,
        starter_share=share,
        sugar_g_per_l=sugar_g_per_l,
        tea_kind=tea_kind,
    )
    observations = [
        Observation(day=day, quantity=quantity, value=value, sd=sd)
        for day, quantity, value, sd in course
    ]
    assert_sane(forecast(conditions, observations))


def test_without_sugar_the_acid_stays():
    answer = forecast(replace(PLAIN, sugar_g_per_l=0.0), [])
    assert answer.ph[0.5][0] == pytest.approx(answer.ph[0.5][-1], abs=1e-9)


def test_a_short_horizon_cuts_the_answer():
    answer = forecast(PLAIN, readings(LIVELY), horizon_days=6.0)
    assert answer.days[-1] == 6.0
    assert answer.window_closes_day is None


@pytest.mark.parametrize(
    "conditions",
    [
        replace(PLAIN, temperature_c=12.0),
        replace(PLAIN, temperature_c=33.0),
        replace(PLAIN, volume_l=20.0),
    ],
)
def test_what_was_never_published_is_said_to_be_extrapolated(conditions):
    assert Caveat.EXTRAPOLATED in forecast(conditions, []).caveats
    assert Caveat.EXTRAPOLATED not in forecast(PLAIN, []).caveats


def test_an_old_jar_is_said_to_be_extrapolated():
    assert Caveat.EXTRAPOLATED in forecast(PLAIN, [], now_day=25.0).caveats
    assert Caveat.EXTRAPOLATED not in forecast(PLAIN, [], now_day=5.0).caveats


def test_herbs_widen_the_ph_and_say_so():
    herbal = forecast(replace(PLAIN, tea_kind=TeaKind.HERBAL), [])
    assert Caveat.TEA_ASSUMED in herbal.caveats
    assert band_width(herbal, 14.0) > band_width(forecast(PLAIN, []), 14.0)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("volume_l", 0.0),
        ("volume_l", math.nan),
        ("surface_cm2", -1.0),
        ("starter_share", 1.2),
        ("temperature_c", math.inf),
        ("sugar_g_per_l", -1.0),
        ("starter_ta_g_per_l", -0.1),
        ("start_ph", Estimate(math.nan, 4.0, 4.4)),
    ],
)
def test_conditions_that_cannot_be_are_refused(field, value):
    with pytest.raises(ImpossibleInput) as refused:
        forecast(replace(PLAIN, **{field: value}), [])
    assert refused.value.field == field


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("day", math.nan),
        ("day", -5.0),
        ("value", 15.0),
        ("value", math.nan),
        ("sd", 0.0),
        ("quantity", Quantity.PELLICLE_MM),
    ],
)
def test_observations_that_cannot_be_are_refused(field, value):
    with pytest.raises(ImpossibleInput) as refused:
        forecast(PLAIN, [replace(ph_reading(1.0, 4.0), **{field: value})])
    assert refused.value.field == field


def test_a_band_upside_down_is_refused():
    with pytest.raises(ImpossibleInput) as refused:
        forecast(PLAIN, [], band=Band(first_taste_ph=2.9, too_sour_ph=3.3))
    assert refused.value.field == "too_sour_ph"


@pytest.mark.parametrize(("now_day", "horizon_days"), [(math.nan, 35.0), (1.0, 0.0)])
def test_times_that_cannot_be_are_refused(now_day, horizon_days):
    with pytest.raises(ImpossibleInput):
        forecast(PLAIN, [], now_day=now_day, horizon_days=horizon_days)


def test_weights_stay_honest_with_thirty_readings():
    rng = np.random.default_rng(3)
    course = [
        ph_reading(float(day), 2.95 + 1.25 * math.exp(-day / 7.0) + float(rng.normal(0.0, 0.05)))
        for day in np.linspace(0.0, 14.0, 30)
    ]
    answer = forecast(PLAIN, course)
    assert answer.effective_draws > 200.0
    assert Caveat.UNLIKE_KNOWN not in answer.caveats
    assert band_width(answer, 14.0) < 0.35


def bisected_ph(acid_meq_per_l, share, excess_meq_per_l):
    """The charge balance without activities, by halving: another way than the program's."""
    low, high = 1.5, 8.0
    for _ in range(40):
        middle = 0.5 * (low + high)
        hydrogen = 10.0**-middle
        # constants at an ionic strength of 6 mmol/L, activity coefficient 0.92
        acetic, gluconic = 10.0**-4.756 / 0.92, 10.0**-3.70 / 0.92
        bound = (1.0 - share) * acetic / (acetic + hydrogen)
        bound += share * gluconic / (gluconic + hydrogen)
        if excess_meq_per_l / 1000.0 + hydrogen / 0.92 < acid_meq_per_l / 1000.0 * bound:
            high = middle
        else:
            low = middle
    return min(max(middle, 2.5), 5.5)


def invented_jar(rng):
    """A jar drawn from the priors: its pH by day."""
    start = 10.0 * 2.5 ** rng.normal()
    rate = 5.0 * 1.6 ** rng.normal() * 1.2 ** rng.normal()
    curvature = rng.normal(1.3, 0.2)
    lag = min(max(2.5 * (rng.normal() - 0.6), 0.0), 4.0)
    share, excess = rng.beta(2.0, 5.0), 4.0 * 1.8 ** rng.normal()

    def ph_on(day):
        acid = start + 7.0 * rate * (max(day - lag, 0.0) / 7.0) ** curvature
        return bisected_ph(acid, share, excess)

    return ph_on


@pytest.mark.parametrize("read_days", [(0,), (0, 2, 4, 6)])
def test_the_80_percent_band_holds_80_percent_of_invented_jars(read_days):
    rng = np.random.default_rng(11)
    jars, held = 60, 0
    for _ in range(jars):
        ph_on = invented_jar(rng)
        sd = float(rng.uniform(0.05, 0.1))
        wobble = priors.PH_WOBBLE.spread
        observations = [
            ph_reading(float(day), ph_on(day) + float(rng.normal(0.0, math.hypot(sd, wobble))), sd)
            for day in read_days
        ]
        answer = forecast(PLAIN, observations)
        later = min(max(ph_on(12) + float(rng.normal(0.0, wobble)), 2.5), 5.5)
        at = answer.days.index(12.0)
        held += answer.ph[0.1][at] <= later <= answer.ph[0.9][at]
    # 0.05 % and 99.95 % points of a binomial of 60 at 0.8 are 37 and 57 (scipy.stats.binom).
    assert 37 <= held <= 57


def test_reweighing_finds_a_known_answer():
    """A normal prior and a normal reading have a posterior that is known exactly."""
    rng = np.random.default_rng(5)
    found = reweighting.reweigh(
        lambda latents: -0.5 * ((latents[:, 0] - 3.0) / 0.1) ** 2,
        dimensions=2,
        first_draws=4000,
        further_draws=4000,
        enough_effective=500.0,
        rng=rng,
    )
    mean = found.weights @ found.latents
    sd = np.sqrt(found.weights @ (found.latents - mean) ** 2)
    assert mean[0] == pytest.approx(3.0 / (1.0 + 0.1**2), abs=0.01)
    assert sd[0] == pytest.approx(0.1 / math.sqrt(1.0 + 0.1**2), rel=0.07)
    assert mean[1] == pytest.approx(0.0, abs=0.1)
    assert sd[1] == pytest.approx(1.0, rel=0.07)
    assert found.tempering == 1.0
    assert found.effective_draws >= 500.0


def test_every_prior_tells_its_basis():
    told = [value for value in vars(priors).values() if isinstance(value, priors.Prior)]
    assert len(told) >= 15
    for prior in told:
        assert len(prior.basis) > 20
        assert prior.unit
        assert prior.sources
        assert set(prior.sources) <= set(priors.SOURING_SOURCES)
        if prior.is_assumption:
            assert "souring_assumption" in prior.sources
        assert math.isfinite(prior.centre)
        if prior.spread_kind is priors.Spread.GEOMETRIC_SD:
            assert prior.spread > 1.0
