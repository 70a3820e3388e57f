"""Cups, spoons and bags add up to what was wished."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.constants import SUGAR_G_PER_TABLESPOON
from culturecore.errors import ImpossibleInput
from culturecore.kitchen import Measure, sugar_measures, tea_bags, water_measures, weighed_bag_g

SUGAR_G = {"cup": 200.0, "tablespoon": 12.6, "teaspoon": 4.2}
WATER_L = {"cup": 0.2365882365, "tablespoon": 0.01478676478125, "teaspoon": 0.00492892159375}
FRACTIONS = {"": 0.0, "¼": 0.25, "⅓": 1 / 3, "½": 0.5, "⅔": 2 / 3, "¾": 0.75}


def _sum(measures: list[Measure], sizes: dict[str, float]) -> float:
    return sum(measure.count * sizes[measure.unit] for measure in measures)


@given(st.floats(0.0, 2000.0))
def test_sugar_measures_add_up(mass_g: float) -> None:
    step_g = 12.6 if mass_g > 50.0 else 4.2
    measures = sugar_measures(mass_g)
    assert _sum(measures, SUGAR_G) == pytest.approx(mass_g, abs=step_g / 2)
    assert len(measures) <= 2


@given(st.floats(0.0, 10.0))
def test_water_measures_add_up(volume_l: float) -> None:
    assert _sum(water_measures(volume_l), WATER_L) == pytest.approx(
        volume_l, abs=WATER_L["tablespoon"] / 2
    )


@given(st.floats(0.0, 2000.0))
def test_count_is_whole_and_fraction(mass_g: float) -> None:
    for measure in sugar_measures(mass_g):
        assert measure.count == pytest.approx(measure.whole + FRACTIONS[measure.fraction])
        assert measure.count > 0.0


@pytest.mark.parametrize(
    ("mass_g", "expected"),
    [
        (0.0, []),
        (1.0, [(0, "¼", "teaspoon")]),
        (4.1, [(1, "", "teaspoon")]),
        (12.4, [(1, "", "tablespoon")]),
        (30.0, [(2, "", "tablespoon"), (1, "", "teaspoon")]),
        (100.0, [(0, "½", "cup")]),
        (212.0, [(1, "", "cup"), (1, "", "tablespoon")]),
        (330.0, [(1, "½", "cup"), (2, "½", "tablespoon")]),
    ],
)
def test_sugar_is_said_as_a_kitchen_says_it(
    mass_g: float, expected: list[tuple[int, str, str]]
) -> None:
    said = [(m.whole, m.fraction, m.unit) for m in sugar_measures(mass_g)]
    assert said == expected


@pytest.mark.parametrize(
    ("mass_g", "bag_g", "bags"),
    [(14.0, 2.0, 7), (15.0, 2.0, 8), (0.3, 2.0, 1), (0.0, 2.0, 0), (10.0, 2.5, 4)],
)
def test_tea_is_counted_in_whole_bags(mass_g: float, bag_g: float, bags: int) -> None:
    assert tea_bags(mass_g, bag_g) == Measure(float(bags), bags, "", "bag")


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda: sugar_measures(-1.0), "mass_g"),
        (lambda: sugar_measures(math.nan), "mass_g"),
        (lambda: water_measures(-1.0), "volume_l"),
        (lambda: tea_bags(-1.0, 2.0), "mass_g"),
        (lambda: tea_bags(10.0, 0.0), "bag_g"),
    ],
)
def test_impossible_amounts_are_refused(call, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field


def test_four_tablespoons_of_sugar_are_about_fifty_grams() -> None:
    """Common practice; 12.6 g a tablespoon by the USDA household weight."""
    four_g = 4 * SUGAR_G_PER_TABLESPOON
    assert four_g == pytest.approx(50.0, rel=0.02)
    assert [(m.count, m.unit) for m in sugar_measures(50.0)] == [(0.25, "cup")]


def test_makers_own_bags_are_weighed_together() -> None:
    one, ten = weighed_bag_g(bags=1, total_g=2.0), weighed_bag_g(bags=10, total_g=21.0)
    assert (ten.value, ten.low, ten.high) == (2.1, 2.0, 2.2)
    assert one.high - one.low > ten.high - ten.low
    assert weighed_bag_g(bags=10, total_g=21.0, scale_step_g=0.1).low == pytest.approx(2.09)


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"bags": 0}, "bags"),
        ({"bags": 1001}, "bags"),
        ({"scale_step_g": 0.0}, "scale_step_g"),
        ({"scale_step_g": math.nan}, "scale_step_g"),
        ({"total_g": 1.9}, "total_g"),
        ({"total_g": 501.0}, "total_g"),
        ({"total_g": math.nan}, "total_g"),
    ],
)
def test_impossible_weighing_is_refused(changes: dict[str, float], field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        weighed_bag_g(**{"bags": 10, "total_g": 20.0, **changes})
    assert refusal.value.field == field
