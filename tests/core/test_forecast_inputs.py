"""What else a forecast may be told: temperatures, draw-offs, sugar, taste, known cultures."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from culturecore import priors
from culturecore.equivalenttime import equivalent_days, plain_day
from culturecore.errors import ImpossibleInput
from culturecore.forecast import (
    Band,
    Conditions,
    DrawOff,
    Observation,
    forecast,
)
from culturecore.knownculture import learn_culture
from culturecore.pace import day_grown, grown, pace_factors
from culturecore.possiblejars import LATENTS, possible_jars
from culturecore.stages import Quantity, TasteMark, TeaKind

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


def reading(day, value, quantity=Quantity.PH, sd=0.05):
    return Observation(day=float(day), quantity=quantity, value=value, sd=sd)


def taste(day, mark):
    return Observation(day=float(day), quantity=Quantity.TASTE, value=0.0, sd=1.0, taste=mark)


START = [reading(0, 4.2)]
LIVELY = [reading(d, v) for d, v in ((0, 4.2), (2, 3.9), (4, 3.65), (6, 3.45), (8, 3.3))]


def jars(conditions=PLAIN, count=50):
    rng = np.random.default_rng(4)
    return possible_jars(conditions, rng.standard_normal((count, LATENTS)))


# Temperatures


def test_an_even_course_of_temperature_is_no_news():
    course = ((0.0, 25.0), (4.0, 25.0), (9.0, 25.0))
    with_course = forecast(replace(PLAIN, temperature_course=course), LIVELY)
    without = forecast(PLAIN, LIVELY)
    assert with_course.ph[0.5] == pytest.approx(without.ph[0.5], abs=1e-6)


def test_ten_degrees_count_as_the_usual_factor():
    warm = replace(PLAIN, temperature_c=20.0, temperature_course=((0.0, 30.0), (10.0, 30.0)))
    even = equivalent_days(warm, np.array([0.0, 5.0, 10.0, 14.0]))
    factor = priors.Q10.centre
    assert even == pytest.approx([0.0, 5.0 * factor, 10.0 * factor, 10.0 * factor + 4.0])
    assert plain_day(warm, even) == pytest.approx([0.0, 5.0, 10.0, 14.0])


def test_a_cold_spell_delays_and_a_warm_one_hastens():
    opens = [
        forecast(replace(PLAIN, temperature_course=((0.0, t), (8.0, t))), START).window_opens_day
        for t in (20.0, 25.0, 29.0)
    ]
    assert opens[0].value > opens[1].value + 0.5 > opens[2].value + 1.0


def test_how_much_warmth_matters_is_in_doubt_where_it_was_logged():
    """One latent more: a warm spell hastens some jars by more than others."""
    course = tuple((float(day), 28.0) for day in range(9))
    warm = replace(PLAIN, temperature_c=23.0, temperature_course=course)
    latents = np.zeros((3, LATENTS))
    latents[:, -1] = (-1.0, 0.0, 1.0)
    acid = possible_jars(warm, latents).acid(np.array([[3.0, 8.0]]))
    assert (np.diff(acid, axis=0) > 0.3).all()
    usual = possible_jars(replace(warm, temperature_course=()), latents).acid(np.array([[8.0]]))
    assert np.ptp(usual) == 0.0
    # Five degrees by a Q10 a spread higher or lower: the factor of the first piece.
    factor = priors.Q10.spread**0.5
    early = possible_jars(warm, latents).acid(np.array([[1.0]])) - possible_jars(
        warm, latents
    ).acid(np.array([[0.0]]))
    assert early[2, 0] / early[1, 0] == pytest.approx(factor, rel=0.03)


# Pace


def test_an_even_pace_is_the_plain_course():
    days = np.linspace(0.0, 30.0, 61)[None, :]
    p, lag = np.array([[1.3]]), np.array([[1.5]])
    plain = 7.0 * (np.maximum(days - 1.5, 0.0) / 7.0) ** 1.3
    assert grown(days, p, lag, np.ones((1, 8))) == pytest.approx(plain)


def test_the_day_grown_turns_the_course_round():
    rng = np.random.default_rng(2)
    factors = pace_factors(rng.standard_normal((40, 8)))
    p, lag = rng.uniform(0.8, 1.7, (40, 1)), rng.uniform(0.0, 4.0, (40, 1))
    for day in (4.5, 8.0, 13.0, 24.0, 33.0):
        so_far = grown(np.array([[day]]), p, lag, factors)
        assert day_grown(so_far, p, lag, factors) == pytest.approx(np.full((40, 1), day))


# Draw-offs


def test_a_draw_off_takes_its_share_of_the_acid_and_the_jar_goes_on():
    drawn = jars(replace(PLAIN, drawn=(DrawOff(day=6.0, share=0.7), DrawOff(day=9.0, share=0.5))))
    whole = jars()
    before, after = drawn.acid(np.array([[6.0]])), drawn.acid(np.array([[6.0 + 1e-9]]))
    # The fresh tea brings sugar, which is room for a little more acid from the start.
    assert before == pytest.approx(whole.acid(np.array([[6.0]])), rel=1e-3)
    # What comes in is sweet tea, with its own weak acids.
    assert after == pytest.approx(0.3 * before + 0.7 * drawn.tea_meq_per_l, rel=1e-6)
    second = drawn.acid(np.array([[9.0]])), drawn.acid(np.array([[9.0 + 1e-9]]))
    assert second[1] == pytest.approx(0.5 * second[0] + 0.5 * drawn.tea_meq_per_l, rel=1e-6)


def test_a_jar_drawn_from_for_months_goes_on_souring():
    """Acid that was taken out leaves room for more: the jar never fills for good."""
    often = tuple(DrawOff(day=7.0 * week, share=0.6) for week in range(1, 9))
    acid = jars(replace(PLAIN, drawn=often)).acid(np.array([[14.1, 21.0, 49.1, 56.0]]))
    assert float(np.median(acid[:, 3] - acid[:, 2])) > 0.8 * float(
        np.median(acid[:, 1] - acid[:, 0])
    )


# Starter and lag


def test_sweet_tea_without_starter_begins_near_ph_5():
    """Huang et al. 2022 (eLife 11:76401) and Jayabalan et al. 2007: pH 5 on day 0."""
    answer = forecast(replace(PLAIN, starter_share=0.0), [])
    assert answer.ph[0.5][0] == pytest.approx(5.0, abs=0.15)
    assert answer.ph[0.5][answer.days.index(3.0)] > 4.1


def test_less_starter_waits_longer():
    waits = [
        float(np.quantile(jars(replace(PLAIN, starter_share=share), 400).lag_days, 0.8))
        for share in (0.0, 0.01, 0.03, 0.1, 0.3)
    ]
    assert waits == sorted(waits, reverse=True)
    assert waits[0] > waits[3] + 1.0


def test_after_a_draw_off_the_jar_is_sweeter_and_ready_later():
    drawn = forecast(replace(PLAIN, drawn=(DrawOff(day=9.0, share=0.7),)), LIVELY)
    whole = forecast(PLAIN, LIVELY)
    at = whole.days.index(10.0)
    assert drawn.ph[0.5][at] > whole.ph[0.5][at] + 0.1
    assert drawn.sugar_g_per_l[0.5][at] > whole.sugar_g_per_l[0.5][at]
    assert drawn.ethanol_percent_vv[0.5][at] < 0.5 * whole.ethanol_percent_vv[0.5][at]
    assert drawn.window_opens_day.low >= 9.0
    assert drawn.window_opens_day.value > whole.window_opens_day.value + 1.0


@pytest.mark.parametrize(
    "conditions", [PLAIN, replace(PLAIN, drawn=(DrawOff(day=5.0, share=0.6),))]
)
def test_the_crossing_day_is_where_the_course_is(conditions):
    some = jars(conditions, 200)
    day = some.day_of_ph(np.full((200, 1), 3.3))[:, 0]
    there = (day > 5.1) & (day < 30.0)
    assert there.sum() > 30
    for row in np.flatnonzero(there):
        ph = some.ph(some.acid(np.array([[day[row]]])))[row, 0]
        assert ph == pytest.approx(3.3, abs=2e-3)


# Sugar, ethanol, taste


def test_sugar_never_exceeds_what_went_in_and_falls():
    answer = forecast(PLAIN, LIVELY)
    for curve in answer.sugar_g_per_l.values():
        assert max(curve) <= 60.0
        assert (np.diff(curve) <= 1e-9).all()
    assert answer.ethanol_percent_vv[0.5][0] == 0.0
    quantiles = [answer.ethanol_percent_vv[q][28] for q in (0.1, 0.25, 0.5, 0.75, 0.9)]
    assert quantiles == sorted(quantiles)


def test_sugar_is_balanced_by_mass():
    some = jars()
    days = np.array([[10.0]])
    acid, ethanol = some.acid(days), some.ethanol_percent(days)
    used = 60.0 - some.sugar(days, acid, ethanol)
    # Ethanol alone: 1 g of sucrose gives at most 0.538 g, 7.892 g/L to the percent.
    assert (used >= np.minimum(ethanol * 7.892 / 0.5384, 60.0) - 1e-6).all()


@pytest.mark.parametrize(
    ("quantity", "little", "much"),
    [(Quantity.BRIX, 3.5, 6.0), (Quantity.SPECIFIC_GRAVITY, 1.012, 1.023)],
)
def test_less_sugar_read_means_less_sugar_told_and_a_faster_jar(quantity, little, much):
    sd = 0.1 if quantity is Quantity.BRIX else 0.0005
    far, near = (
        forecast(PLAIN, [*START, reading(8, value, quantity, sd)]) for value in (little, much)
    )
    assert far.sugar_g_per_l[0.5][16] < near.sugar_g_per_l[0.5][16] - 3.0
    assert far.window_opens_day.value < near.window_opens_day.value


def test_sourer_verdicts_tell_of_a_sourer_jar():
    told = [forecast(PLAIN, [*START, taste(7, mark)]).ph[0.5][14] for mark in TasteMark]
    assert told[0] > told[1] > told[2] > told[3]
    # "Right" on day 7 puts that day's pH into the maker's band.
    assert 2.9 <= told[2] <= 3.4


def test_a_verdict_is_read_by_the_makers_own_band():
    mark = [*START, taste(7, TasteMark.RIGHT)]
    sour = forecast(PLAIN, mark, band=Band(first_taste_ph=3.0, too_sour_ph=2.7))
    sweet = forecast(PLAIN, mark, band=Band(first_taste_ph=3.7, too_sour_ph=3.4))
    assert sour.ph[0.5][14] < sweet.ph[0.5][14] - 0.2


def test_a_taste_without_a_verdict_tells_nothing():
    assert forecast(PLAIN, [*START, taste(7, None)]).ph[0.5][14] == pytest.approx(
        forecast(PLAIN, START).ph[0.5][14], abs=0.08
    )


# What finished batches taught


def test_nothing_learnt_is_the_literature():
    known = learn_culture([])
    assert known.batches == 0
    told, plain = forecast(replace(PLAIN, known=known), LIVELY), forecast(PLAIN, LIVELY)
    assert told.ph[0.5] == pytest.approx(plain.ph[0.5], abs=1e-6)


def course(speed):
    return [reading(d, 2.9 + 1.3 * math.exp(-speed * d / 8.0)) for d in (0, 2, 4, 6, 8, 10, 12, 14)]


def test_a_fast_culture_is_known_to_be_fast_and_surer_with_each_batch():
    fast = [(PLAIN, course(1.8))]
    slow = [(PLAIN, course(0.5))]
    assert learn_culture(fast).log_rate_offset > learn_culture(slow).log_rate_offset + 0.2
    sds = [learn_culture(fast * count).log_rate_sd for count in (0, 1, 2, 5)]
    assert sds == sorted(sds, reverse=True)
    # A batch still differs from its culture, however many went before.
    assert sds[-1] > 0.4 * sds[0]


def test_the_pantry_teaches_less_than_the_culture_itself():
    fast = [(PLAIN, course(1.8))] * 3
    own, neighbour = learn_culture(fast), learn_culture([], fast)
    assert 0.0 < neighbour.log_rate_offset < own.log_rate_offset
    assert own.log_rate_sd < neighbour.log_rate_sd < math.log(priors.RATE_MEQ_PER_L_DAY.spread)


def test_batches_without_readings_teach_nothing():
    assert learn_culture([(PLAIN, [])]).log_rate_sd == learn_culture([]).log_rate_sd


def test_a_first_reading_alone_teaches_nothing_of_the_bend():
    known = learn_culture([(PLAIN, [reading(0, 4.2)])])
    assert known.curvature_sd == learn_culture([]).curvature_sd
    assert known.log_excess_sd < learn_culture([]).log_excess_sd


# The next reading, and readings that look wrong


def test_the_next_reading_narrows_about_as_much_as_promised():
    """Take the promised reading on a hundred possible jars: the mean narrowing is near."""
    now = forecast(PLAIN, LIVELY[:2], now_day=2.0)
    promised = now.next_reading
    assert promised.quantity is Quantity.PH
    assert promised.day > 2.0
    wide = now.window_opens_day.high - now.window_opens_day.low
    at = now.days.index(promised.day)
    widths = []
    for share in (0.1, 0.25, 0.5, 0.75, 0.9):
        seen = reading(promised.day, now.ph[share][at])
        window = forecast(PLAIN, [*LIVELY[:2], seen], now_day=promised.day).window_opens_day
        widths.append(window.high - window.low)
    narrowed = wide - float(np.mean(widths))
    assert narrowed == pytest.approx(promised.narrows_days, abs=0.4 * wide)
    assert narrowed > 0.0


def test_no_reading_is_asked_for_once_the_window_is_open():
    assert forecast(PLAIN, [reading(d, 2.8) for d in (10, 12, 14)]).next_reading is None


@pytest.mark.parametrize(
    ("wild", "why"),
    [
        ((7.0, 1.5), "impossible_for_kombucha"),
        ((7.0, 5.2), "sweeter_than_before_and_after"),
        ((7.0, 2.4), "sourer_than_before_and_after"),
        ((12.0, 4.6), "less_sour_than_the_course"),
    ],
)
def test_a_wild_reading_comes_with_a_reason(wild, why):
    answer = forecast(PLAIN, [*LIVELY, reading(*wild)])
    assert answer.suspects == (5,)
    assert answer.suspect_reasons == (why,)


def test_a_gravity_that_cannot_be_is_refused():
    with pytest.raises(ImpossibleInput):
        forecast(PLAIN, [reading(1, 2.0, Quantity.SPECIFIC_GRAVITY)])


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"temperature_course": ((0.0, math.nan),)}, "temperature_c"),
        ({"temperature_course": ((math.inf, 25.0),)}, "day"),
        ({"drawn": (DrawOff(day=3.0, share=1.1),)}, "share"),
        ({"drawn": (DrawOff(day=3.0, share=0.5, sugar_g_per_l=-1.0),)}, "sugar_g_per_l"),
    ],
)
def test_courses_and_draw_offs_that_cannot_be_are_refused(changed, field):
    with pytest.raises(ImpossibleInput) as refused:
        forecast(replace(PLAIN, **changed), LIVELY)
    assert refused.value.field == field


def test_extreme_temperatures_and_draw_offs_give_finite_curves():
    harsh = replace(
        PLAIN,
        temperature_course=((0.0, 2.0), (3.0, 45.0), (3.0, 20.0)),
        drawn=(DrawOff(day=2.0, share=1.0), DrawOff(day=2.0, share=0.0)),
    )
    answer = forecast(harsh, [*LIVELY, taste(9, TasteMark.FAR_TOO_SOUR)])
    for curves in (answer.ph, answer.ta_g_per_l, answer.sugar_g_per_l, answer.ethanol_percent_vv):
        assert np.isfinite(list(curves.values())).all()
