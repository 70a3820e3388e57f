"""Laws of mixing and cooling."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.heat import (
    Portion,
    boiling_point_c,
    hot_mass_for_temperature,
    minutes_until,
    mix_temperature_c,
    newton_k_per_min,
    vapour_pressure_pa,
)
from culturecore.outcome import Caveat

PORTIONS = st.lists(
    st.builds(
        Portion,
        mass_g=st.floats(1.0, 1e4),
        temperature_c=st.floats(0.0, 100.0),
        brix=st.floats(0.0, 100.0),
    ),
    min_size=1,
    max_size=5,
)


@given(PORTIONS)
def test_mix_lies_between_its_parts(parts: list[Portion]) -> None:
    temperatures = [part.temperature_c for part in parts]
    # dry sugar's heat capacity rises with temperature, which may shift a mix a little
    assert min(temperatures) - 1e-6 <= mix_temperature_c(parts) <= max(temperatures) + 1e-6


@given(
    total_g=st.floats(100.0, 1e4),
    sugar_share=st.floats(0.0, 0.2),
    cold_c=st.floats(0.0, 25.0),
    hot_c=st.floats(60.0, 100.0),
    target_c=st.floats(26.0, 40.0),
)
def test_hot_share_gives_the_wished_temperature(
    total_g: float, sugar_share: float, cold_c: float, hot_c: float, target_c: float
) -> None:
    sugar_g = sugar_share * total_g
    hot_g = hot_mass_for_temperature(
        total_water_g=total_g, hot_c=hot_c, cold_c=cold_c, target_c=target_c, sugar_g=sugar_g
    )
    mixed_c = mix_temperature_c(
        (
            Portion(mass_g=hot_g, temperature_c=hot_c),
            Portion(mass_g=total_g - hot_g, temperature_c=cold_c),
            Portion(mass_g=sugar_g, temperature_c=20.0, brix=100.0),
        )
    )
    assert mixed_c == pytest.approx(target_c, abs=1e-6)


def test_water_that_is_too_warm_leaves_no_room_for_hot() -> None:
    args = {"total_water_g": 1000.0, "hot_c": 95.0}
    assert hot_mass_for_temperature(**args, cold_c=35.0, target_c=28.0) == 0.0
    assert hot_mass_for_temperature(**args, cold_c=10.0, target_c=96.0) == 1000.0
    assert (
        hot_mass_for_temperature(total_water_g=0.0, hot_c=95.0, cold_c=10.0, target_c=28.0) == 0.0
    )


@given(st.tuples(st.floats(-500.0, 9000.0), st.floats(-500.0, 9000.0)))
def test_water_boils_cooler_higher_up(pair: tuple[float, float]) -> None:
    low, high = sorted(pair)
    assert boiling_point_c(high) <= boiling_point_c(low)


def _k(first_c: float, second_c: float) -> float:
    return newton_k_per_min(
        first_c=first_c, second_c=second_c, minutes_between=30.0, ambient_c=22.0
    )


def test_cooling_constant_foretells_the_reading_it_was_made_from() -> None:
    k = _k(50.0, 40.0)
    wait = minutes_until(now_c=50.0, target_c=40.0, ambient_c=22.0, k_per_min=k, read_at_c=50.0)
    assert wait.value == pytest.approx(30.0)
    assert wait.low < wait.value < wait.high
    assert wait.caveats == ()


def test_readings_of_a_steaming_pot_give_the_earliest_time_only() -> None:
    wait = minutes_until(
        now_c=70.0, target_c=30.0, ambient_c=22.0, k_per_min=_k(90.0, 70.0), read_at_c=90.0
    )
    assert wait.low == wait.value
    assert wait.high == pytest.approx(2.0 * wait.value)
    assert wait.caveats == (Caveat.EXTRAPOLATED,)


def test_cool_enough_needs_no_waiting() -> None:
    wait = minutes_until(now_c=28.0, target_c=30.0, ambient_c=22.0, k_per_min=0.01, read_at_c=50.0)
    assert (wait.value, wait.low, wait.high) == (0.0, 0.0, 0.0)


def test_warm_room_never_cools_below_itself() -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        minutes_until(now_c=50.0, target_c=30.0, ambient_c=30.0, k_per_min=0.01, read_at_c=50.0)
    assert refusal.value.reason == "never"


HOT = {"total_water_g": 1.0, "hot_c": 90.0, "cold_c": 10.0, "target_c": 28.0}
UNTIL = {"now_c": 50.0, "target_c": 30.0, "ambient_c": 22.0, "k_per_min": 0.01, "read_at_c": 50.0}
NEWTON = {"first_c": 90.0, "second_c": 70.0, "minutes_between": 30.0, "ambient_c": 22.0}


@pytest.mark.parametrize(
    ("function", "args", "field", "value"),
    [
        *[
            (hot_mass_for_temperature, HOT, field, value)
            for field, value in (
                ("total_water_g", -1.0),
                ("hot_c", 101.0),
                ("hot_c", 10.0),
                ("cold_c", -1.0),
                ("target_c", math.nan),
                ("sugar_g", -1.0),
                ("sugar_c", 120.0),
            )
        ],
        *[
            (minutes_until, UNTIL, field, value)
            for field, value in (
                ("k_per_min", 0.0),
                ("k_per_min", math.nan),
                ("ambient_c", 61.0),
                ("now_c", 106.0),
                ("read_at_c", math.nan),
                ("target_c", math.nan),
            )
        ],
        *[
            (newton_k_per_min, NEWTON, field, value)
            for field, value in (
                ("ambient_c", -21.0),
                ("first_c", 106.0),
                ("second_c", 22.0),
                ("second_c", 90.0),
                ("minutes_between", 0.0),
            )
        ],
    ],
)
def test_impossible_heat_is_refused(function, args, field: str, value: float) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        function(**{**args, field: value})
    assert refusal.value.field == field


@pytest.mark.parametrize(
    ("part", "field"),
    [
        (Portion(mass_g=-1.0, temperature_c=20.0), "mass_g"),
        (Portion(mass_g=0.0, temperature_c=20.0), "mass_g"),
        (Portion(mass_g=1.0, temperature_c=101.0), "temperature_c"),
        (Portion(mass_g=1.0, temperature_c=20.0, brix=-1.0), "brix"),
    ],
)
def test_impossible_portions_do_not_mix(part: Portion, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        mix_temperature_c((part,))
    assert refusal.value.field == field


def test_impossible_places_have_no_boiling_point() -> None:
    with pytest.raises(ImpossibleInput):
        boiling_point_c(9001.0)
    with pytest.raises(ImpossibleInput):
        vapour_pressure_pa(0.0)
