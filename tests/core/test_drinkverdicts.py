"""The finished drink at the edges of its limits; doubt counts against the maker."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import drinkverdicts as drink
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Estimate, Level
from culturecore.sources import SOURCES


@pytest.mark.parametrize(
    ("ph", "sd", "by_strip", "code", "level"),
    [
        (3.4, 0.05, False, "finished_ph_within", Level.INFORM),
        (3.9, 0.3, True, "finished_ph_within", Level.INFORM),
        (4.2, 0.0, False, "finished_ph_within", Level.INFORM),
        (4.19, 0.02, False, "finished_ph_high", Level.STOP),
        (4.1, 0.05, True, "finished_ph_needs_meter", Level.STOP),
        (4.1, 0.05, False, "finished_ph_within", Level.INFORM),
        (2.5, 0.0, False, "finished_ph_within", Level.INFORM),
        (2.52, 0.05, False, "finished_ph_over_acid", Level.WARN),
        (2.3, 0.0, False, "finished_ph_over_acid", Level.WARN),
    ],
)
def test_ph_of_the_finished_drink(
    ph: float, sd: float, by_strip: bool, code: str, level: Level
) -> None:
    verdict = drink.finished_ph_verdict(ph, sd, by_strip=by_strip)
    assert (verdict.code, verdict.level) == (code, level)


@given(st.floats(0.0, 14.0), st.floats(0.0, 2.0))
def test_only_a_proven_ph_is_within(ph: float, sd: float) -> None:
    is_within = drink.finished_ph_verdict(ph, sd).code == "finished_ph_within"
    assert is_within == (ph - sd >= 2.5 - 1e-9 and ph + sd <= 4.2 + 1e-9)


@pytest.mark.parametrize(
    ("verdict", "code", "level"),
    [
        (drink.storage_verdict(4.5, 0.5), "storage_cold", Level.INFORM),
        (drink.storage_verdict(4.6, 0.5), "storage_warm", Level.WARN),
        (drink.keeping_verdict(30.0), "keeping_short", Level.INFORM),
        (drink.keeping_verdict(30.1), "keeping_long", Level.WARN),
        (drink.serving_verdict(4 * 0.0295735295625), "serving_small", Level.INFORM),
        (drink.serving_verdict(0.12), "serving_large", Level.INFORM),
        (drink.audience_verdict(), "not_for_everyone", Level.INFORM),
        (drink.flavouring_verdict(is_pasteurised=True), "flavour_heated", Level.INFORM),
        (drink.flavouring_verdict(is_pasteurised=False), "flavour_fresh", Level.WARN),
        (drink.flavouring_verdict(is_pasteurised=None), "flavour_fresh", Level.WARN),
        (drink.pasteurising_verdict(83.0, 1.0), "pasteurise_hot", Level.INFORM),
        (drink.pasteurising_verdict(82.9, 1.0), "pasteurise_cool", Level.WARN),
        (drink.pasteurising_verdict(90.0, is_sealed=True), "pasteurise_sealed", Level.STOP),
        (drink.pasteurising_verdict(math.nan, is_sealed=True), "pasteurise_sealed", Level.STOP),
        (drink.chlorine_verdict(200.0), "chlorine_within", Level.INFORM),
        (drink.chlorine_verdict(200.0, 20.0), "chlorine_strong", Level.WARN),
        (drink.caffeine_verdict(Estimate(100.0, 50.0, 200.0)), "caffeine_within", Level.INFORM),
        (drink.caffeine_verdict(Estimate(100.0, 50.0, 201.0)), "caffeine_much", Level.WARN),
    ],
)
def test_verdict_at_its_edge(verdict, code: str, level: Level) -> None:
    assert (verdict.code, verdict.level) == (code, level)
    assert code in drink.VERDICT_CODES
    assert verdict.sources
    assert set(verdict.sources) <= set(SOURCES)


def test_a_tablespoon_of_bleach_to_the_gallon_is_200_ppm() -> None:
    """Fraser & Lackey 2004, NC State; household bleach of 5.25 %."""
    ppm = drink.chlorine_ppm(bleach_ml=14.787, water_l=3.785, chlorine_percent=5.25)
    assert ppm == pytest.approx(200.0, rel=0.03)
    assert drink.chlorine_verdict(ppm).code == "chlorine_within"


@pytest.mark.parametrize(
    "call",
    [
        lambda x: drink.finished_ph_verdict(x, 0.1),
        lambda x: drink.finished_ph_verdict(3.5, x),
        lambda x: drink.storage_verdict(x),
        lambda x: drink.storage_verdict(4.0, x),
        lambda x: drink.keeping_verdict(x),
        lambda x: drink.serving_verdict(x),
        lambda x: drink.pasteurising_verdict(x),
        lambda x: drink.pasteurising_verdict(85.0, x),
        lambda x: drink.chlorine_verdict(x),
        lambda x: drink.chlorine_verdict(100.0, x),
    ],
)
def test_unknown_is_not_assessed_and_impossible_is_refused(call) -> None:
    with pytest.raises(NotAssessed):
        call(math.nan)
    with pytest.raises(ImpossibleInput):
        call(-50.0)


def test_unknown_caffeine_is_not_assessed() -> None:
    with pytest.raises(NotAssessed):
        drink.caffeine_verdict(Estimate(100.0, 50.0, math.nan))


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"bleach_ml": -1.0}, "bleach_ml"),
        ({"water_l": 0.0}, "water_l"),
        ({"chlorine_percent": math.nan}, "chlorine_percent"),
    ],
)
def test_impossible_rinse_is_refused(changes: dict[str, float], field: str) -> None:
    rinse = {"bleach_ml": 15.0, "water_l": 4.0, "chlorine_percent": 5.0, **changes}
    with pytest.raises(ImpossibleInput) as refusal:
        drink.chlorine_ppm(**rinse)
    assert refusal.value.field == field
