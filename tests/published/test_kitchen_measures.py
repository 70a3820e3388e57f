"""Kitchen measures against the NIST household table and the laws that define them."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from culturecore.kitchen import sugar_measures
from culturecore.units import Kind, to_canonical

_NIST = Path(__file__).parents[1] / "cases" / "kitchen_measures_nist.csv"


def test_us_measures_round_to_the_nist_household_table() -> None:
    with _NIST.open(encoding="utf-8", newline="") as file:
        assert file.readline().startswith("# NIST")
        rows = list(csv.DictReader(file))
    for row in rows:
        exact_ml = 1000.0 * to_canonical(1.0, row["unit"], Kind.VOLUME)
        assert exact_ml == pytest.approx(float(row["ml"]), abs=float(row["rounded_to"]) / 2)


@pytest.mark.parametrize(
    ("unit", "litres"),
    [
        ("gal", 3.785411784),  # 26 USC 5052(b): 231 cubic inches of 25.4 mm
        ("cup", 0.2365882365),
        ("fl oz", 0.0295735295625),
        ("tbsp", 0.01478676478125),
        ("tsp", 0.00492892159375),
        ("imp gal", 4.54609),  # UK Weights and Measures Act 1985, Schedule 1
        ("imp pt", 0.56826125),
        ("imp fl oz", 0.0284130625),
    ],
)
def test_volumes_are_those_of_the_statutes(unit: str, litres: float) -> None:
    assert to_canonical(1.0, unit, Kind.VOLUME) == pytest.approx(litres, rel=1e-12)


def test_cup_of_sugar_is_the_usda_cup() -> None:
    """USDA household weight: 200 g a cup (as reprinted)."""
    (measure,) = sugar_measures(200.0)
    assert (measure.count, measure.unit) == (1.0, "cup")
