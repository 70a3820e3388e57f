"""Hydrometer and refractometer: corrections there and back, and what they cannot say."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from culturecore import sugar
from culturecore.errors import ImpossibleInput
from culturecore.instruments import (
    GLASS_EXPANSION_PER_K,
    VERDICT_CODES,
    false_brix,
    false_gravity,
    hydrometer_reading,
    refractometer_reading,
)
from culturecore.outcome import Level
from culturecore.refraction import (
    MAX_BRIX,
    brix_from_index,
    index_at,
    index_from_brix,
    index_of_water,
)
from culturecore.sources import SOURCES

BRIX = st.floats(0.0, 25.0)


def _shown_by_hydrometer(brix: float, temperature_c: float, made_for_c: float) -> float:
    glass = 1.0 - GLASS_EXPANSION_PER_K * (temperature_c - made_for_c)
    density = sugar.density_kg_per_l(brix, temperature_c)
    return density / sugar.water_density_kg_per_l(made_for_c) / glass


@given(brix=BRIX, temperature_c=st.floats(0.0, 50.0), made_for_c=st.sampled_from([15.0, 20.0]))
def test_floating_glass_tells_the_solution_it_floats_in(
    brix: float, temperature_c: float, made_for_c: float
) -> None:
    found = hydrometer_reading(
        shown_sg=_shown_by_hydrometer(brix, temperature_c, made_for_c),
        temperature_c=temperature_c,
        made_for_c=made_for_c,
    )
    assert found.brix.value == pytest.approx(brix, abs=1e-6)
    assert found.specific_gravity.value == pytest.approx(sugar.sg_from_brix(brix), abs=1e-8)
    assert found.brix.low <= found.brix.value <= found.brix.high


def test_at_its_own_temperature_a_hydrometer_is_believed() -> None:
    found = hydrometer_reading(shown_sg=1.030, temperature_c=20.0)
    assert found.specific_gravity.value == pytest.approx(1.030, abs=1e-9)


@given(temperatures=st.tuples(st.floats(5.0, 45.0), st.floats(5.0, 45.0)))
def test_warmer_liquid_of_one_reading_holds_more(temperatures: tuple[float, float]) -> None:
    cool, warm = (
        hydrometer_reading(shown_sg=1.030, temperature_c=one).specific_gravity.value
        for one in sorted(temperatures)
    )
    assert warm >= cool


def test_lighter_than_water_is_no_sugar_and_no_error() -> None:
    """Dry ferments end below 1; ethanol is lighter than water."""
    found = hydrometer_reading(shown_sg=0.995, temperature_c=20.0, day=20.0)
    assert found.brix.value == 0.0
    assert found.specific_gravity.value == pytest.approx(0.995, abs=1e-9)


@given(brix=BRIX, temperature_c=st.floats(5.0, 40.0))
def test_refraction_there_and_back(brix: float, temperature_c: float) -> None:
    """The scale at 20 degC shows what this solution refracts at its temperature."""
    index = index_at(brix, temperature_c)
    assume(index >= index_from_brix(0.0))  # warm water reads below the scale
    shown = brix_from_index(index)
    found = refractometer_reading(shown_brix=min(shown, 28.0), temperature_c=temperature_c)
    assert found.brix.value == pytest.approx(brix, abs=1e-5)


@given(brix=st.floats(0.0, MAX_BRIX))
def test_index_to_brix_and_back(brix: float) -> None:
    assert brix_from_index(index_from_brix(brix)) == pytest.approx(brix, abs=1e-7)
    assert index_at(brix, 20.0) == pytest.approx(index_from_brix(brix), abs=1e-12)


@given(st.tuples(BRIX, BRIX), st.floats(0.0, 50.0))
def test_more_sugar_refracts_more(pair: tuple[float, float], temperature_c: float) -> None:
    low, high = (index_at(one, temperature_c) for one in sorted(pair))
    assert low <= high


def test_cold_water_is_read_as_sugar_and_corrected_to_none() -> None:
    shown = brix_from_index(index_of_water(10.0))
    assert shown == pytest.approx(0.5, abs=0.02)
    assert refractometer_reading(shown_brix=shown, temperature_c=10.0).brix.value == (
        pytest.approx(0.0, abs=0.005)
    )
    below = refractometer_reading(shown_brix=0.0, temperature_c=10.0)
    assert below.brix.value == pytest.approx(0.0, abs=1e-9)
    assert below.brix.low == 0.0


def test_instrument_that_compensates_is_left_alone() -> None:
    warm = {"shown_brix": 8.0, "temperature_c": 28.0}
    assert refractometer_reading(**warm, is_compensated=True).brix.value == 8.0
    assert refractometer_reading(**warm).brix.value > 8.4


@pytest.mark.parametrize("reading", [hydrometer_reading, refractometer_reading])
def test_after_the_first_day_a_reading_is_apparent(reading) -> None:
    shown = {"shown_sg": 1.03} if reading is hydrometer_reading else {"shown_brix": 8.0}
    fresh, old = (reading(**shown, temperature_c=20.0, day=day) for day in (1.0, 1.5))
    assert (fresh.verdict.code, fresh.verdict.level) == ("reading_is_sugar", Level.INFORM)
    assert (old.verdict.code, old.verdict.level) == ("reading_is_apparent", Level.WARN)
    assert {fresh.verdict.code, old.verdict.code} <= VERDICT_CODES
    assert set(fresh.sources) <= set(SOURCES)


def test_ethanol_fools_the_two_instruments_opposite_ways() -> None:
    """1 % by mass: +0.45 °Bx, and -0.0019 SG (1 % by volume: -0.0015, OIML R 22)."""
    ethanol = {"ethanol_mass_percent": 1.0, "acid_mass_percent": 0.0}
    assert false_brix(**ethanol).value == pytest.approx(0.45)
    assert false_gravity(**ethanol).value == pytest.approx(-0.0019, abs=0.0001)
    acid = {"ethanol_mass_percent": 0.0, "acid_mass_percent": 1.0}
    assert false_brix(**acid).value > 0.0
    assert false_gravity(**acid).value > 0.0


@given(ethanol=st.floats(0.0, 5.0), acid=st.floats(0.0, 5.0))
def test_false_readings_are_bounded(ethanol: float, acid: float) -> None:
    for function in (false_brix, false_gravity):
        found = function(ethanol_mass_percent=ethanol, acid_mass_percent=acid)
        assert found.low <= found.value <= found.high
        assert set(found.sources) <= set(SOURCES)


HYDROMETER = {"shown_sg": 1.03, "temperature_c": 20.0}
REFRACTOMETER = {"shown_brix": 8.0, "temperature_c": 20.0}
NONE = {"ethanol_mass_percent": 0.0, "acid_mass_percent": 0.0}


@pytest.mark.parametrize(
    ("function", "args", "field", "value"),
    [
        (hydrometer_reading, HYDROMETER, "shown_sg", 0.9),
        (hydrometer_reading, HYDROMETER, "shown_sg", math.nan),
        (hydrometer_reading, HYDROMETER, "temperature_c", 51.0),
        (hydrometer_reading, HYDROMETER, "made_for_c", 9.0),
        (hydrometer_reading, HYDROMETER, "day", -1.0),
        (refractometer_reading, REFRACTOMETER, "shown_brix", 28.1),
        (refractometer_reading, REFRACTOMETER, "temperature_c", 4.9),
        (refractometer_reading, REFRACTOMETER, "day", math.nan),
        (false_brix, NONE, "ethanol_mass_percent", 5.1),
        (false_brix, NONE, "acid_mass_percent", -1.0),
        (false_gravity, NONE, "ethanol_mass_percent", math.nan),
        (false_gravity, NONE, "acid_mass_percent", 6.0),
        (index_from_brix, {}, "brix", 31.0),
        (brix_from_index, {}, "index", 1.33),
        (index_of_water, {}, "temperature_c", 51.0),
        (index_at, {"brix": 1.0, "temperature_c": 20.0}, "brix", -1.0),
        (index_at, {"brix": 1.0, "temperature_c": 20.0}, "temperature_c", math.nan),
    ],
)
def test_impossible_readings_are_refused(function, args, field: str, value: float) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        function(**{**args, field: value})
    assert refusal.value.field == field
