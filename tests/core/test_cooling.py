"""Cooling curves: Newton's law is found again, steam and rooms are doubted."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.cooling import PotReading, fit_cooling, minutes_until_safe
from culturecore.errors import ImpossibleInput
from culturecore.heat import minutes_until, newton_k_per_min
from culturecore.outcome import Caveat

AMBIENT_C = st.floats(10.0, 24.0)
RATE = st.floats(0.003, 0.05)


def _read(start_c: float, ambient_c: float, rate: float, *minutes: float) -> list[PotReading]:
    return [
        PotReading(
            minute=minute,
            temperature_c=ambient_c + (start_c - ambient_c) * math.exp(-rate * minute),
        )
        for minute in minutes
    ]


@given(ambient_c=AMBIENT_C, rate=RATE, start_c=st.floats(45.0, 57.0), more=st.integers(0, 4))
def test_newtons_law_is_found_again(
    ambient_c: float, rate: float, start_c: float, more: int
) -> None:
    minutes = [20.0 * step for step in range(2 + more)]
    curve = fit_cooling(_read(start_c, ambient_c, rate, *minutes), ambient_c=ambient_c)
    assert curve.rate_per_min.value == pytest.approx(rate, rel=1e-6)
    assert curve.rate_per_min.low < rate < curve.rate_per_min.high
    later = minutes[-1] + 30.0
    expected = _read(start_c, ambient_c, rate, later)[0].temperature_c
    assert curve.temperature_c(later) == pytest.approx(expected, abs=1e-6)


def test_two_readings_are_the_closed_form() -> None:
    curve = fit_cooling(
        [PotReading(minute=0.0, temperature_c=55.0), PotReading(minute=30.0, temperature_c=42.0)],
        ambient_c=22.0,
    )
    k = newton_k_per_min(first_c=55.0, second_c=42.0, minutes_between=30.0, ambient_c=22.0)
    wait = minutes_until(now_c=42.0, target_c=30.0, ambient_c=22.0, k_per_min=k, read_at_c=55.0)
    assert curve.rate_per_min.value == pytest.approx(k)
    assert minutes_until_safe(curve, limit_c=30.0).value == pytest.approx(wait.value)


@given(ambient_c=AMBIENT_C, rate=RATE, limit_c=st.floats(25.0, 40.0))
def test_wait_ends_at_the_limit(ambient_c: float, rate: float, limit_c: float) -> None:
    curve = fit_cooling(_read(56.0, ambient_c, rate, 0.0, 8.0, 20.0), ambient_c=ambient_c)
    wait = minutes_until_safe(curve, limit_c=limit_c)
    assert 0.0 <= wait.low <= wait.value <= wait.high < math.inf
    at_the_end = curve.temperature_c(20.0 + wait.value)
    assert at_the_end == pytest.approx(min(limit_c, curve.latest.temperature_c), abs=1e-6)


@given(limits=st.tuples(st.floats(23.0, 45.0), st.floats(23.0, 45.0)))
def test_cooler_limit_is_a_longer_wait(limits: tuple[float, float]) -> None:
    curve = fit_cooling(_read(56.0, 22.0, 0.01, 0.0, 20.0), ambient_c=22.0)
    cool, warm = (minutes_until_safe(curve, limit_c=one).value for one in sorted(limits))
    assert warm <= cool


def test_only_the_latest_readings_count_and_in_any_order() -> None:
    hot = _read(95.0, 22.0, 0.05, 0.0, 5.0)
    late = _read(50.0, 22.0, 0.01, 20.0, 30.0, 40.0, 50.0)
    curve = fit_cooling([*late, *hot], ambient_c=22.0)
    assert curve.rate_per_min.value == pytest.approx(0.01, rel=1e-6)
    assert curve.latest == late[-1]
    assert not curve.is_earliest


def test_steaming_pot_gives_the_earliest_time_only() -> None:
    curve = fit_cooling(_read(90.0, 22.0, 0.0116, 0.0, 30.0), ambient_c=22.0)
    wait = minutes_until_safe(curve, limit_c=30.0)
    assert curve.is_earliest
    assert wait.low == wait.value
    assert wait.high >= 2.0 * wait.value
    assert wait.caveats == (Caveat.EXTRAPOLATED,)


def test_evaporating_pot_is_never_foretold_too_late() -> None:
    """A pot that also evaporates, stepped through; its readings give the earliest time.

    Loss by evaporation is taken as vapour pressure over water in the room, with a strength
    that doubles the cooling at 80 degC; invented, but steeper than Newton as in any pot.
    """
    temperature_c, minute, readings, safe_minute = 95.0, 0.0, [], 0.0
    while temperature_c > 30.0:
        if minute in (0.0, 15.0, 30.0):
            readings.append(PotReading(minute=minute, temperature_c=temperature_c))
        vapour = math.exp(0.05 * (temperature_c - 80.0))
        temperature_c -= 0.25 * 0.006 * (temperature_c - 22.0) * (1.0 + vapour)
        minute += 0.25
        safe_minute = minute
    curve = fit_cooling(readings, ambient_c=22.0)
    wait = minutes_until_safe(curve, limit_c=30.0)
    assert wait.low < safe_minute - 30.0
    assert safe_minute - 30.0 < wait.high


def test_more_readings_are_narrower() -> None:
    few, many = (
        fit_cooling(_read(50.0, 22.0, 0.01, *minutes), ambient_c=22.0).rate_per_min
        for minutes in ((0.0, 30.0), (0.0, 10.0, 20.0, 30.0))
    )
    assert many.high - many.low < few.high - few.low


def test_pot_near_the_rooms_warmth_is_doubted_most() -> None:
    """With the pot 1.2 degC above the room, a room one degree warmer cannot be ruled out."""
    curve = fit_cooling(_read(24.0, 22.0, 0.01, 0.0, 50.0), ambient_c=22.0)
    rate = curve.rate_per_min
    assert rate.low < 0.5 * rate.value


def test_cool_pot_needs_no_waiting() -> None:
    curve = fit_cooling(_read(35.0, 22.0, 0.01, 0.0, 60.0), ambient_c=22.0)
    wait = minutes_until_safe(curve, limit_c=30.0)
    assert (wait.value, wait.low, wait.high) == (0.0, 0.0, 0.0)


@pytest.mark.parametrize(
    ("readings", "ambient_c", "field", "reason"),
    [
        ([(0.0, 50.0)], 22.0, "readings", "too_few"),
        ([(0.0, 50.0), (0.0, 40.0)], 22.0, "readings", "same_moment"),
        ([(0.0, 40.0), (9.0, 40.0)], 22.0, "readings", "not_cooling"),
        ([(0.0, 40.0), (9.0, 22.0)], 22.0, "readings", "at_ambient"),
        ([(0.0, 50.0), (9.0, 40.0)], 61.0, "ambient_c", "out_of_range"),
        ([(0.0, 106.0), (9.0, 40.0)], 22.0, "temperature_c", "out_of_range"),
        ([(0.0, 50.0), (math.nan, 40.0)], 22.0, "minute", "out_of_range"),
    ],
)
def test_readings_without_a_curve_are_refused(
    readings, ambient_c: float, field: str, reason: str
) -> None:
    pot = [PotReading(minute=minute, temperature_c=t) for minute, t in readings]
    with pytest.raises(ImpossibleInput) as refusal:
        fit_cooling(pot, ambient_c=ambient_c)
    assert (refusal.value.field, refusal.value.reason) == (field, reason)


def test_impossible_questions_of_a_curve_are_refused() -> None:
    curve = fit_cooling(_read(50.0, 26.0, 0.01, 0.0, 20.0), ambient_c=26.0)
    for limit_c, reason in ((46.0, "out_of_range"), (math.nan, "out_of_range"), (26.0, "never")):
        with pytest.raises(ImpossibleInput) as refusal:
            minutes_until_safe(curve, limit_c=limit_c)
        assert refusal.value.reason == reason
    for minute in (19.0, math.nan):
        with pytest.raises(ImpossibleInput):
            curve.temperature_c(minute)
