"""The limits as their sources print them, and the verdicts at their edges."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import safety
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.sources import SOURCES, Standing
from culturecore.stages import Look, Material


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("ph_finished_max", 4.2),  # Food Protection Trends 2025 p. 93; Niagara Region
        ("ph_finished_min", 2.5),  # Niagara Region
        ("ph_deadline_days", 7.0),  # Nummer 2013, second hand
        ("ph_start_max", 4.6),  # FDA Food Code tables A and B; 21 CFR 114.80
        ("starter_share_min", 0.10),  # Virginia Cooperative Extension FST-297
        ("starter_share_low", 0.0625),  # K-State 2019: one US cup to the US gallon
        ("uncultured_max_hours", 4.0),  # Food Code 3-501.19
    ],
)
def test_limit_is_the_published_one(key: str, value: float) -> None:
    assert safety.limit(key) == value


def test_steep_limit_is_just_above_164_fahrenheit() -> None:
    """Niagara Region: hotter than 164 degF, that is 165 degF."""
    assert safety.limit("steep_min_c") == pytest.approx((165.0 - 32.0) / 1.8, abs=0.2)


def test_every_limit_names_its_sources() -> None:
    for key, limit in safety.LIMITS.items():
        assert limit.source, key
        assert set(limit.source_keys) <= set(SOURCES), key


def test_limit_from_memory_is_not_called_confirmed() -> None:
    assert not safety.LIMITS["culture_in_max_c"].confirmed
    assert not safety.LIMITS["ph_deadline_days"].confirmed
    assert safety.LIMITS["ph_finished_max"].confirmed


def test_limit_stands_as_its_best_source_unless_it_was_derived() -> None:
    assert safety.LIMITS["ph_start_max"].standing is Standing.READ
    assert safety.LIMITS["culture_in_max_c"].standing is Standing.FROM_MEMORY
    assert safety.LIMITS["ph_slow_days"].standing is Standing.ASSUMPTION
    derived = safety.LIMITS["bottle_ceiling_bar"]
    assert derived.standing is Standing.DERIVED
    assert not derived.confirmed  # although the figure it was made from was read


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("glass_printed_bar", 4.7),  # British Glass TEC 7
        ("glass_max_l", 1.15),  # British Glass TEC 7
        ("headspace_share_usual", 0.035),  # CETIE DT 11, BS 6119-1
        ("cold_max_c", 5.0),  # FDA Food Code 41 degF
        ("serving_day_fl_oz", 4.0),  # Niagara Region
        ("chlorine_max_ppm", 200.0),  # NC State 2004
        ("caffeine_day_mg", 400.0),  # EFSA 2015
        ("meter_slope_low", 0.85),  # laboratory calibration note
    ],
)
def test_limit_on_the_drink_is_the_published_one(key: str, value: float) -> None:
    assert safety.limit(key) == value
    assert safety.LIMITS[key].confirmed


def test_ceiling_of_a_bottle_is_the_printed_one_read_as_absolute() -> None:
    printed, ceiling = safety.limit("glass_printed_bar"), safety.limit("bottle_ceiling_bar")
    assert ceiling == pytest.approx(printed - 1.0)


@pytest.mark.parametrize(
    ("material", "level"),
    [
        (Material.GLASS, Level.INFORM),
        (Material.STAINLESS_STEEL, Level.INFORM),
        (Material.FOOD_PLASTIC, Level.WARN),
        (Material.OTHER_PLASTIC, Level.WARN),
        (Material.WOOD, Level.WARN),
        (Material.CERAMIC_FOOD_SAFE, Level.WARN),
        (Material.CERAMIC_UNKNOWN_GLAZE, Level.STOP),
        (Material.LEAD_CRYSTAL, Level.STOP),
        (Material.REACTIVE_METAL, Level.STOP),
    ],
)
def test_material_is_judged(material: Material, level: Level) -> None:
    assert safety.material_verdict(material).level is level


def test_every_material_has_a_verdict() -> None:
    codes = {safety.material_verdict(material).code for material in Material}
    assert codes <= safety.VERDICT_CODES


@pytest.mark.parametrize(
    ("ph", "sd", "day", "code", "level"),
    [
        (4.2, 0.0, 0.0, "ph_low_enough", Level.INFORM),
        (3.9, 0.3, 7.0, "ph_low_enough", Level.INFORM),
        (2.5, 0.05, 10.0, "ph_low_enough", Level.INFORM),
        (2.49, 0.05, 10.0, "ph_over_acid", Level.WARN),
        (4.3, 0.02, 4.9, "ph_not_yet", Level.INFORM),
        (4.19, 0.05, 4.0, "ph_unsure", Level.INFORM),
        (4.19, 0.05, 6.9, "ph_unsure", Level.INFORM),
        (4.3, 0.02, 5.0, "ph_slow", Level.WARN),
        (4.3, 0.02, 6.99, "ph_slow", Level.WARN),
        (4.21, 0.0, 7.0, "ph_deadline_missed", Level.STOP),
        (4.19, 0.05, 7.0, "ph_deadline_unproven", Level.STOP),
        (5.0, 0.02, 30.0, "ph_deadline_missed", Level.STOP),
    ],
)
def test_ph_reading_is_judged(ph: float, sd: float, day: float, code: str, level: Level) -> None:
    verdict = safety.ph_verdict(ph, sd, day)
    assert (verdict.code, verdict.level) == (code, level)
    assert verdict.numbers["ph"] == ph


@given(st.floats(2.5, 14.0), st.floats(0.0, 1.0), st.floats(0.0, 60.0))
def test_only_a_proven_reading_is_low_enough(ph: float, sd: float, day: float) -> None:
    verdict = safety.ph_verdict(ph, sd, day)
    assert (verdict.code == "ph_low_enough") == (ph + sd <= 4.2 + 1e-9)


@given(st.floats(4.2001, 14.0), st.floats(0.0, 1.0), st.floats(7.0, 60.0))
def test_nothing_above_the_limit_passes_after_the_deadline(
    ph: float, sd: float, day: float
) -> None:
    assert safety.ph_verdict(ph, sd, day).level is Level.STOP


@pytest.mark.parametrize(
    ("args", "reason"),
    [
        ((math.nan, 0.1, 1.0), "ph_unknown"),
        ((3.5, math.nan, 1.0), "uncertainty_unknown"),
        ((3.5, 0.1, math.nan), "day_unknown"),
    ],
)
def test_unknown_reading_is_not_assessed(args: tuple[float, float, float], reason: str) -> None:
    with pytest.raises(NotAssessed) as refusal:
        safety.ph_verdict(*args)
    assert refusal.value.reason == reason


@pytest.mark.parametrize(
    "args", [(-0.1, 0.1, 1.0), (14.1, 0.1, 1.0), (3.5, -0.1, 1.0), (3.5, 0.1, -1.0)]
)
def test_impossible_reading_is_refused(args: tuple[float, float, float]) -> None:
    with pytest.raises(ImpossibleInput):
        safety.ph_verdict(*args)


@pytest.mark.parametrize(
    ("value", "high", "code", "level"),
    [
        (4.0, 4.4, "start_ph_good", Level.INFORM),
        (4.2, 4.6, "start_ph_good", Level.INFORM),
        (4.21, 4.5, "start_ph_above_wanted", Level.WARN),
        (4.1, 4.61, "start_ph_high", Level.WARN),
        (5.0, 5.2, "start_ph_high", Level.WARN),
    ],
)
def test_start_ph_is_judged(value: float, high: float, code: str, level: Level) -> None:
    verdict = safety.start_ph_verdict(Estimate(value, value - 0.3, high))
    assert (verdict.code, verdict.level) == (code, level)


def test_start_ph_without_number_is_not_assessed() -> None:
    with pytest.raises(NotAssessed):
        safety.start_ph_verdict(Estimate(4.0, 3.8, math.nan))


@pytest.mark.parametrize(
    ("temperature_c", "limit_c", "code", "level"),
    [
        (30.0, 30.0, "culture_temperature_good", Level.INFORM),
        (30.1, 30.0, "culture_too_warm", Level.STOP),
        (27.0, 26.0, "culture_too_warm", Level.STOP),
        (40.0, 40.0, "culture_far_too_warm", Level.STOP),
        (90.0, 30.0, "culture_far_too_warm", Level.STOP),
    ],
)
def test_culture_temperature_is_judged(
    temperature_c: float, limit_c: float, code: str, level: Level
) -> None:
    verdict = safety.culture_temperature_verdict(temperature_c, limit_c)
    assert (verdict.code, verdict.level) == (code, level)


@pytest.mark.parametrize(
    ("temperature_c", "code"),
    [(17.9, "place_cold"), (18.0, "place_good"), (32.0, "place_good"), (32.1, "place_warm")],
)
def test_place_is_judged(temperature_c: float, code: str) -> None:
    assert safety.place_temperature_verdict(temperature_c).code == code


@pytest.mark.parametrize(
    ("hours", "code", "level"),
    [
        (2.0, "uncultured_good", Level.INFORM),
        (2.1, "uncultured_long", Level.WARN),
        (4.1, "uncultured_too_long", Level.STOP),
    ],
)
def test_sweet_tea_without_starter_is_judged(hours: float, code: str, level: Level) -> None:
    verdict = safety.uncultured_verdict(hours)
    assert (verdict.code, verdict.level) == (code, level)


@pytest.mark.parametrize(
    ("day", "code"), [(20.9, None), (21.0, "souring_long"), (30.0, "souring_over_long")]
)
def test_long_souring_is_judged(day: float, code: str | None) -> None:
    verdict = safety.souring_length_verdict(day)
    assert (verdict.code if verdict else None) == code


def test_mold_means_discarding_everything() -> None:
    assert safety.mold_verdict() == Verdict(
        "mold_discard_all", Level.STOP, sources=("niagara_region",)
    )


@pytest.mark.parametrize(
    "call",
    [
        lambda: safety.culture_temperature_verdict(math.nan),
        lambda: safety.place_temperature_verdict(math.nan),
        lambda: safety.uncultured_verdict(math.nan),
        lambda: safety.souring_length_verdict(math.nan),
    ],
)
def test_unknown_numbers_are_not_assessed(call) -> None:
    with pytest.raises(NotAssessed):
        call()


@pytest.mark.parametrize(
    "call",
    [
        lambda: safety.culture_temperature_verdict(200.0),
        lambda: safety.culture_temperature_verdict(20.0, 41.0),
        lambda: safety.place_temperature_verdict(80.0),
        lambda: safety.uncultured_verdict(-1.0),
    ],
)
def test_impossible_numbers_are_refused(call) -> None:
    with pytest.raises(ImpossibleInput):
        call()


def test_a_look_leads_to_discarding_to_waiting_or_to_nothing_said():
    assert safety.look_verdict(Look.MOLD) == safety.mold_verdict()
    unsure = safety.look_verdict(Look.UNSURE)
    assert (unsure.code, unsure.level) == ("look_unsure", Level.WARN)
    assert safety.look_verdict(Look.FINE) is None
