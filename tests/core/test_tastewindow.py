"""The window in sourness and sweetness together: sweetness narrows it, or says why it cannot."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.forecast import Band, Conditions, DrawOff, forecast
from culturecore.stages import TeaKind
from culturecore.tastewindow import SweetnessSays, crossing, day_of_sugar, taste_window

DAYS = np.arange(0.0, 36.0, 2.0)
HORIZON = 35.0


def falling(start, per_day, jars=1):
    return np.tile(np.maximum(start - per_day * DAYS, 0.0), (jars, 1))


def window(opens, closes, sugar, **band):
    opens, closes = np.atleast_1d(np.array(opens)), np.atleast_1d(np.array(closes))
    return taste_window(opens, closes, DAYS, sugar, Band(**band), HORIZON)


def test_the_day_of_a_level_is_read_between_the_days():
    assert day_of_sugar(DAYS, falling(60.0, 2.0), 33.0)[0] == pytest.approx(13.5)


def test_a_level_never_exceeded_holds_from_the_start_and_one_never_reached_never():
    assert day_of_sugar(DAYS, falling(60.0, 2.0), 80.0)[0] == 0.0
    assert day_of_sugar(DAYS, falling(60.0, 0.1), 20.0)[0] == math.inf


def test_after_fresh_tea_the_last_day_of_too_much_counts():
    sugar = falling(60.0, 2.0)
    sugar[:, DAYS > 20.0] += 30.0
    assert day_of_sugar(DAYS, sugar, 33.0)[0] > 20.0


def test_without_a_band_of_sweetness_sourness_alone_makes_the_window():
    made = window(8.0, 15.0, falling(60.0, 2.0))
    assert (made.opens[0], made.closes[0], made.sweetness) == (8.0, 15.0, None)


def test_too_much_sugar_opens_it_later():
    made = window(8.0, 20.0, falling(60.0, 2.0), too_sweet_g_per_l=36.0)
    assert made.opens[0] == pytest.approx(12.0)
    assert made.closes[0] == 20.0
    assert made.sweetness is SweetnessSays.OPENS_LATER


def test_too_little_sugar_closes_it_earlier():
    made = window(8.0, 20.0, falling(60.0, 2.0), too_dry_g_per_l=30.0)
    assert (made.opens[0], made.closes[0]) == (8.0, pytest.approx(15.0))
    assert made.sweetness is SweetnessSays.CLOSES_EARLIER


def test_both_ends_may_narrow_it_or_neither():
    both = window(8.0, 20.0, falling(60.0, 2.0), too_sweet_g_per_l=40.0, too_dry_g_per_l=30.0)
    assert both.sweetness is SweetnessSays.NARROWS_BOTH
    neither = window(8.0, 20.0, falling(60.0, 2.0), too_sweet_g_per_l=50.0, too_dry_g_per_l=10.0)
    assert neither.sweetness is None
    assert (neither.opens[0], neither.closes[0]) == (8.0, 20.0)


def test_a_jar_never_right_in_both_goes_by_sourness_and_says_so():
    made = window(8.0, 12.0, falling(90.0, 1.0), too_sweet_g_per_l=40.0)
    assert (made.opens[0], made.closes[0]) == (8.0, 12.0)
    assert made.sweetness is SweetnessSays.NEVER_TOGETHER


def test_a_few_possible_jars_never_right_in_both_do_not_decide_for_the_others():
    sugar = np.vstack([falling(60.0, 2.0, jars=9), falling(90.0, 0.5)])
    made = window([8.0] * 10, [20.0] * 10, sugar, too_sweet_g_per_l=36.0)
    assert made.sweetness is SweetnessSays.OPENS_LATER
    assert made.opens[-1] == 8.0
    assert made.opening(HORIZON).value == pytest.approx(12.0)


def test_jars_never_sour_enough_stay_without_a_window():
    made = window([math.inf] * 3, [math.inf] * 3, falling(60.0, 0.5, 3), too_sweet_g_per_l=36.0)
    assert made.opening(HORIZON) is None
    assert made.closing(HORIZON) is None
    assert made.sweetness is None


def test_most_jars_beyond_the_horizon_are_no_date():
    assert crossing(np.array([3.0, 40.0, math.inf]), HORIZON) is None
    assert crossing(np.array([3.0, 4.0, math.inf]), HORIZON).value == 4.0


@settings(max_examples=60, deadline=None)
@given(
    st.lists(
        st.tuples(st.floats(0.0, 40.0), st.floats(0.1, 20.0), st.floats(20, 90), st.floats(0, 4)),
        min_size=1,
        max_size=8,
    ),
    st.floats(0.0, 80.0),
    st.floats(0.0, 40.0),
)
def test_sweetness_never_widens_the_window(jars, dry, more):
    opens = np.array([jar[0] for jar in jars])
    closes = opens + np.array([jar[1] for jar in jars])
    sugar = np.vstack([falling(jar[2], jar[3]) for jar in jars])
    made = window(opens, closes, sugar, too_dry_g_per_l=dry, too_sweet_g_per_l=dry + more)
    assert (made.opens >= opens).all()
    assert (made.closes <= closes).all()
    assert (made.opens < made.closes).all()


@pytest.mark.parametrize(
    "band",
    [
        {"too_sweet_g_per_l": math.nan},
        {"too_sweet_g_per_l": -1.0},
        {"too_dry_g_per_l": 40.0, "too_sweet_g_per_l": 30.0},
    ],
)
def test_a_band_of_sweetness_that_cannot_be_is_refused(band):
    with pytest.raises(ImpossibleInput):
        window(8.0, 20.0, falling(60.0, 2.0), **band)


JAR = Conditions(
    volume_l=3.0,
    surface_cm2=150.0,
    starter_share=0.12,
    start_ph=None,
    starter_ta_g_per_l=None,
    temperature_c=24.0,
    sugar_g_per_l=60.0,
    tea_kind=TeaKind.BLACK,
)


def test_a_forecast_keeps_the_makers_sweetness_in_its_window():
    plain = forecast(JAR, ())
    median = dict(zip(plain.days, plain.sugar_g_per_l[0.5], strict=True))
    level = median[round(2 * plain.window_opens_day.value + 6) / 2]  # a few days after it opens
    sweet = forecast(JAR, (), band=Band(too_sweet_g_per_l=level))
    assert plain.sweetness is None
    assert sweet.window_opens_day.value > plain.window_opens_day.value + 0.5
    assert sweet.window_closes_day.value == plain.window_closes_day.value
    assert sweet.sweetness is SweetnessSays.OPENS_LATER
    assert sweet.ph == plain.ph


def test_fresh_tea_makes_a_drawn_jar_too_sweet_again():
    band = Band(too_sweet_g_per_l=55.0)
    drawn = Conditions(
        **{f: getattr(JAR, f) for f in JAR.__slots__} | {"drawn": (DrawOff(day=9.0, share=0.7),)}
    )
    opens = forecast(drawn, (), band=band).window_opens_day
    assert opens.low >= 9.0
    assert opens.value > forecast(JAR, (), band=band).window_opens_day.value + 1.0
