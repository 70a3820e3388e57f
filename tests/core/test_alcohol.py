"""Alcohol is always a range, and never certified."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import safety
from culturecore.alcohol import (
    THRESHOLD_KEYS,
    VERDICT_CODES,
    TwoReadings,
    from_sugar,
    from_two_readings,
    readings_of,
    threshold_verdict,
)
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Caveat, Estimate, Level


def test_nothing_known_of_the_sugar_gives_the_widest_range() -> None:
    """Stoichiometry: 50 g/L of sucrose make at most 26.9 g/L, 3.41 % vol."""
    found = from_sugar(
        start_sugar_g_per_l=50.0, left_sugar_low_g_per_l=0.0, left_sugar_high_g_per_l=50.0
    )
    assert found.low == 0.0
    assert found.high == pytest.approx(3.41, abs=0.005)
    assert found.value == pytest.approx(found.high / 2.0)


def test_acid_that_came_from_ethanol_lowers_the_low_end_only() -> None:
    sugar = {
        "start_sugar_g_per_l": 60.0,
        "left_sugar_low_g_per_l": 10.0,
        "left_sugar_high_g_per_l": 20.0,
    }
    plain, sour = from_sugar(**sugar), from_sugar(**sugar, acid_formed_g_per_l=5.0)
    assert sour.high == plain.high
    assert plain.low - sour.low == pytest.approx(5.0 / 1.3035 / 7.8924, rel=1e-3)


@given(st.floats(0.0, 300.0), st.floats(0.0, 1.0), st.floats(0.0, 1.0), st.floats(0.0, 60.0))
def test_range_from_sugar_is_in_order(
    start: float, low_share: float, more_share: float, acid: float
) -> None:
    low = start * low_share
    found = from_sugar(
        start_sugar_g_per_l=start,
        left_sugar_low_g_per_l=low,
        left_sugar_high_g_per_l=min(low + (start - low) * more_share, start),
        acid_formed_g_per_l=acid,
    )
    assert 0.0 <= found.low <= found.value <= found.high
    assert math.isfinite(found.high)


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"start_sugar_g_per_l": math.nan}, "start_sugar_g_per_l"),
        ({"left_sugar_low_g_per_l": 51.0}, "left_sugar_low_g_per_l"),
        ({"left_sugar_high_g_per_l": 5.0}, "left_sugar_high_g_per_l"),
        ({"acid_formed_g_per_l": -1.0}, "acid_formed_g_per_l"),
    ],
)
def test_impossible_sugar_is_refused(changes: dict[str, float], field: str) -> None:
    sugar = {
        "start_sugar_g_per_l": 50.0,
        "left_sugar_low_g_per_l": 10.0,
        "left_sugar_high_g_per_l": 20.0,
    }
    with pytest.raises(ImpossibleInput) as refusal:
        from_sugar(**{**sugar, **changes})
    assert refusal.value.field == field


def test_two_readings_are_never_surer_than_half_a_percent() -> None:
    exact = TwoReadings(specific_gravity=1.0180, brix=5.0, specific_gravity_sd=1e-5, brix_sd=1e-3)
    found = from_two_readings(exact)
    assert found.high - found.low >= 0.99
    assert found.caveats == (Caveat.UNLIKE_KNOWN,)


def test_coarse_instruments_widen_the_range() -> None:
    fine = TwoReadings(specific_gravity=1.0130, brix=5.0)
    coarse = replace(fine, specific_gravity_sd=0.002, brix_sd=0.5)
    assert from_two_readings(coarse).high > from_two_readings(fine).high
    assert from_two_readings(coarse).value == from_two_readings(fine).value


def test_measured_acid_is_taken_out_and_doubted() -> None:
    plain = TwoReadings(specific_gravity=1.0130, brix=5.0)
    sour = replace(plain, acid_g_per_l=20.0)
    found, before = from_two_readings(sour), from_two_readings(plain)
    assert found.value < before.value
    assert found.high - found.low > before.high - before.low


def test_acid_beyond_the_whole_reading_leaves_no_sugar() -> None:
    found = from_two_readings(TwoReadings(specific_gravity=1.001, brix=0.3, acid_g_per_l=10.0))
    assert found.low == 0.0


def test_readings_that_no_drink_gives_are_refused() -> None:
    for gravity, brix in ((1.060, 5.0), (0.98, 30.0)):
        with pytest.raises(ImpossibleInput) as refusal:
            from_two_readings(TwoReadings(specific_gravity=gravity, brix=brix))
        assert refusal.value.reason == "readings_disagree"


@given(st.floats(0.0, 12.0), st.floats(0.0, 5.0), st.floats(0.05, 1.0))
def test_more_ethanol_is_found_as_more(sugar: float, ethanol: float, more: float) -> None:
    less, much = (
        from_two_readings(
            TwoReadings(
                **dict(
                    zip(
                        ("specific_gravity", "brix"),
                        readings_of(sugar_percent=sugar, ethanol_percent=percent),
                        strict=True,
                    )
                )
            )
        )
        for percent in (ethanol, ethanol + more)
    )
    assert much.value > less.value
    assert 0.0 <= less.low <= less.value <= less.high


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"specific_gravity": 0.9}, "specific_gravity"),
        ({"brix": math.nan}, "brix"),
        ({"specific_gravity_sd": 0.0}, "specific_gravity_sd"),
        ({"brix_sd": math.inf}, "brix_sd"),
        ({"acid_g_per_l": 61.0}, "acid_g_per_l"),
    ],
)
def test_impossible_readings_are_refused(changes: dict[str, float], field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        from_two_readings(replace(TwoReadings(specific_gravity=1.01, brix=4.0), **changes))
    assert refusal.value.field == field


def test_impossible_mixtures_are_refused() -> None:
    with pytest.raises(ImpossibleInput):
        readings_of(sugar_percent=31.0, ethanol_percent=0.0)
    with pytest.raises(ImpossibleInput):
        readings_of(sugar_percent=5.0, ethanol_percent=math.nan)


@pytest.mark.parametrize(
    ("key", "abv"),
    [
        ("abv_us", 0.5),  # TTB; 26 USC 5052(a)
        ("abv_canada", 1.1),  # Health Canada
        ("abv_anz_soft_drink", 1.15),  # Food Standards Code 2.6.2
        ("abv_eu_statement", 1.2),  # Regulation (EU) 1169/2011, Art. 28(2)
    ],
)
def test_threshold_is_the_published_one(key: str, abv: float) -> None:
    assert key in THRESHOLD_KEYS
    assert safety.limit(key) == abv
    assert safety.LIMITS[key].confirmed


def test_every_threshold_is_a_limit_and_every_limit_on_alcohol_a_threshold() -> None:
    assert set(THRESHOLD_KEYS) == {key for key in safety.LIMITS if key.startswith("abv_")}


@pytest.mark.parametrize(
    ("low", "high", "code", "level"),
    [
        (0.0, 0.39, "alcohol_likely_below", Level.INFORM),
        (0.0, 0.40, "alcohol_may_be_over", Level.WARN),
        (0.49, 0.9, "alcohol_may_be_over", Level.WARN),
        (0.50, 0.9, "alcohol_likely_over", Level.WARN),
    ],
)
def test_nearness_to_a_threshold(low: float, high: float, code: str, level: Level) -> None:
    verdict = threshold_verdict(Estimate((low + high) / 2.0, low, high), "abv_us")
    assert (verdict.code, verdict.level) == (code, level)
    assert code in VERDICT_CODES
    assert verdict.sources == ("ttb_kombucha",)


def test_unknown_alcohol_and_unknown_threshold_are_refused() -> None:
    with pytest.raises(NotAssessed):
        threshold_verdict(Estimate(math.nan, 0.0, 1.0), "abv_us")
    with pytest.raises(ImpossibleInput):
        threshold_verdict(Estimate(0.1, 0.0, 0.2), "ph_finished_max")


def test_low_end_is_half_the_lost_sugar_at_90_percent() -> None:
    found = from_sugar(
        start_sugar_g_per_l=60.0, left_sugar_low_g_per_l=0.0, left_sugar_high_g_per_l=20.0
    )
    assert found.low == pytest.approx(40.0 * 0.5 * 0.9 * 0.53834 / 7.8924, rel=1e-4)


def test_spread_is_that_of_instruments_model_and_acid_together() -> None:
    """By hand in percent by mass; a percent of ethanol parts the instruments by 0.0037."""
    readings = TwoReadings(
        specific_gravity=1.012, brix=5.0, specific_gravity_sd=0.002, brix_sd=0.4, acid_g_per_l=20.0
    )
    step = 0.00398  # gravity for a degree Brix near 4
    apart = 0.45 * step + 0.00190
    from_instruments = 1.2816 * math.hypot(step * 0.4, 0.002) / apart
    from_acid = 0.5 * 2.0 * (step * 0.49 - 0.0014) / apart
    spread_percent = math.hypot(from_instruments, 0.5 * 0.78924, from_acid)
    found = from_two_readings(readings)
    per_percent = 998.2 / 789.24
    assert (found.high - found.low) / 2.0 == pytest.approx(spread_percent * per_percent, rel=0.01)
