"""What a glass holds adds up, in ranges."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.nutrition import SMALL_SERVING_L, Content, caffeine_mg_per_l, facts
from culturecore.outcome import Caveat, Estimate
from culturecore.stages import TeaKind

CONTENT = Content(
    sugar_g_per_l=Estimate(30.0, 20.0, 45.0),
    acid_g_per_l=Estimate(5.0, 4.0, 7.0),
    ethanol_abv=Estimate(0.5, 0.1, 1.2),
    caffeine_mg_per_l=Estimate(90.0, 30.0, 120.0),
)


def test_label_speaks_of_100_ml() -> None:
    found = facts(CONTENT)
    assert found.volume_l == 0.1
    assert found.sugar_g == Estimate(3.0, 2.0, 4.5)
    assert found.caffeine_mg.value == pytest.approx(9.0)


def test_small_serving_is_four_us_fluid_ounces() -> None:
    """118 mL (Niagara Region)."""
    assert pytest.approx(0.1183, abs=1e-4) == SMALL_SERVING_L
    assert facts(CONTENT, volume_l=SMALL_SERVING_L).sugar_g.value == pytest.approx(3.549, abs=1e-3)


@given(st.floats(0.01, 10.0))
def test_energy_is_in_order_and_goes_with_the_volume(volume_l: float) -> None:
    found, label = facts(CONTENT, volume_l=volume_l), facts(CONTENT)
    for energy, of_label in (
        (found.energy_kcal, label.energy_kcal),
        (found.energy_kj, label.energy_kj),
    ):
        assert 0.0 < energy.low < energy.value < energy.high
        assert energy.value == pytest.approx(of_label.value * volume_l / 0.1)


def test_columns_of_energy_are_not_converted_into_each_other() -> None:
    found = facts(CONTENT)
    assert found.energy_kj.value / found.energy_kcal.value != pytest.approx(4.184, abs=0.02)


@pytest.mark.parametrize("kind", [kind for kind in TeaKind if kind is not TeaKind.HERBAL])
def test_caffeine_is_a_range_for_every_tea(kind: TeaKind) -> None:
    found = caffeine_mg_per_l(tea_kind=kind, tea_g_per_l=4.0)
    assert 0.0 < found.low < found.value < found.high
    listed = kind in (TeaKind.BLACK, TeaKind.GREEN, TeaKind.OOLONG)
    assert (Caveat.TEA_ASSUMED in found.caveats) == (not listed)


def test_leaf_above_the_usual_range_widens_it() -> None:
    """36.6 mg/g in green tea (Hicks, Hsieh & Bell 1996) against 14.3-34.8 in another study."""
    green = caffeine_mg_per_l(tea_kind=TeaKind.GREEN, tea_g_per_l=1.0)
    black = caffeine_mg_per_l(tea_kind=TeaKind.BLACK, tea_g_per_l=1.0)
    assert green.high == pytest.approx(36.6 * 0.852)
    assert black.high == pytest.approx(34.8 * 0.852)
    assert green.low == black.low == pytest.approx(14.3 * 0.515)


def test_caffeine_of_herbs_is_not_assessed() -> None:
    with pytest.raises(NotAssessed):
        caffeine_mg_per_l(tea_kind=TeaKind.HERBAL, tea_g_per_l=4.0)


@pytest.mark.parametrize("bad", [-1.0, 51.0, math.nan])
def test_impossible_leaf_is_refused(bad: float) -> None:
    with pytest.raises(ImpossibleInput):
        caffeine_mg_per_l(tea_kind=TeaKind.BLACK, tea_g_per_l=bad)


@pytest.mark.parametrize("bad", [0.0, 11.0, math.nan])
def test_impossible_volume_is_refused(bad: float) -> None:
    with pytest.raises(ImpossibleInput):
        facts(CONTENT, volume_l=bad)


@pytest.mark.parametrize(
    "name", ["sugar_g_per_l", "acid_g_per_l", "ethanol_abv", "caffeine_mg_per_l"]
)
@pytest.mark.parametrize(
    "bad",
    [Estimate(1.0, 2.0, 3.0), Estimate(1.0, 0.0, 1e6), Estimate(math.nan, 0.0, 1.0)],
)
def test_impossible_content_is_refused(name: str, bad: Estimate) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        facts(replace(CONTENT, **{name: bad}))
    assert refusal.value.field == name
