"""The electrode: slope, offset, verdicts, corrected readings and their doubt."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.buffers import Buffer, buffer_ph
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.phmeter import (
    VERDICT_CODES,
    Z_80,
    Calibration,
    CalibrationPoint,
    calibrate,
    calibration_age_verdict,
    compensation,
    correct_reading,
    mv_from_shown,
    nernst_mv_per_ph,
    reading_of,
)
from culturecore.sources import SOURCES
from culturecore.stages import Method

TEMPERATURES_C = st.floats(0.0, 50.0)


def _points(slope: float, offset_mv: float, *buffers: Buffer, temperature_c: float = 25.0):
    """What an electrode of that slope share and offset reads."""
    return [
        CalibrationPoint(
            buffer=buffer,
            temperature_c=temperature_c,
            reading_mv=offset_mv
            + slope
            * (7.0 - buffer_ph(buffer, temperature_c).value)
            * nernst_mv_per_ph(temperature_c),
        )
        for buffer in buffers
    ]


def _calibrated(slope: float = 0.97, offset_mv: float = -8.0) -> Calibration:
    return calibrate(_points(slope, offset_mv, Buffer.TECHNICAL_7, Buffer.TECHNICAL_4))


def _codes(calibration: Calibration) -> set[str]:
    return {verdict.code for verdict in calibration.verdicts}


@given(
    slope=st.floats(0.5, 1.2),
    offset_mv=st.floats(-60.0, 60.0),
    temperatures=st.tuples(TEMPERATURES_C, TEMPERATURES_C, TEMPERATURES_C),
)
def test_electrode_is_found_again_at_any_temperatures(
    slope: float, offset_mv: float, temperatures: tuple[float, float, float]
) -> None:
    points = [
        _points(slope, offset_mv, buffer, temperature_c=temperature_c)[0]
        for buffer, temperature_c in zip(
            (Buffer.PHTHALATE, Buffer.PHOSPHATE, Buffer.BORATE), temperatures, strict=True
        )
    ]
    found = calibrate(points)
    assert found.slope_percent == pytest.approx(100.0 * slope)
    assert found.offset_mv == pytest.approx(offset_mv, abs=1e-6)
    assert found.residual_ph < 1e-6


@given(
    ph=st.floats(2.0, 8.0),
    temperature_c=st.floats(0.0, 60.0),
    slope=st.floats(0.8, 1.1),
    offset_mv=st.floats(-40.0, 40.0),
)
def test_reading_of_a_known_ph_comes_back(
    ph: float, temperature_c: float, slope: float, offset_mv: float
) -> None:
    reading_mv = offset_mv + slope * (7.0 - ph) * nernst_mv_per_ph(temperature_c)
    found = correct_reading(
        calibration=_calibrated(slope, offset_mv),
        reading_mv=reading_mv,
        temperature_c=temperature_c,
    )
    assert found.value == pytest.approx(ph, abs=1e-6)
    assert found.low < found.value < found.high


@given(st.tuples(st.floats(-300.0, 300.0), st.floats(-300.0, 300.0)))
def test_higher_voltage_is_lower_ph(voltages: tuple[float, float]) -> None:
    low, high = (
        correct_reading(calibration=_calibrated(), reading_mv=mv, temperature_c=20.0).value
        for mv in sorted(voltages)
    )
    assert high <= low


def test_three_buffers_off_the_line_are_fitted_in_the_middle() -> None:
    """Least squares: the residuals of the voltages add up to nothing."""
    points = _points(1.0, 0.0, Buffer.TECHNICAL_4, Buffer.TECHNICAL_7, Buffer.TECHNICAL_10)
    points[1] = replace(points[1], reading_mv=points[1].reading_mv + 12.0)
    found = calibrate(points)
    assert found.offset_mv == pytest.approx(4.0, abs=0.1)
    assert found.slope_percent == pytest.approx(100.0, abs=0.1)
    assert found.residual_ph == pytest.approx(8.0 / 59.16, abs=0.005)
    assert "calibration_disagrees" in _codes(found)
    assert found.verdicts[0].level is Level.WARN


@pytest.mark.parametrize(
    ("slope", "offset_mv", "code"),
    [
        (0.97, -8.0, "electrode_good"),
        (0.93, 29.0, "electrode_good"),
        (0.88, 0.0, "electrode_usable"),
        (1.04, 0.0, "electrode_usable"),
        (0.84, 0.0, "electrode_clean_or_replace"),  # 85 %: maker's note
        (1.06, 0.0, "electrode_clean_or_replace"),  # 105 %
        (0.98, 31.0, "electrode_clean_or_replace"),  # 30 mV
        (0.98, -31.0, "electrode_clean_or_replace"),
    ],
)
def test_electrode_is_judged(slope: float, offset_mv: float, code: str) -> None:
    found = _calibrated(slope, offset_mv)
    assert _codes(found) == {code}
    assert set(found.sources) <= set(SOURCES)


def test_drinks_lie_below_a_calibration_without_a_low_buffer() -> None:
    found = calibrate(_points(0.97, 0.0, Buffer.PHOSPHATE, Buffer.BORATE))
    assert "calibration_no_low_buffer" in _codes(found)


def test_doubt_grows_away_from_the_buffers_with_age_and_with_disagreement() -> None:
    calibration = _calibrated()

    def width(ph: float, age_days: float = 0.0, of: Calibration = calibration) -> float:
        reading_mv = of.offset_mv + (7.0 - ph) * 0.97 * nernst_mv_per_ph(25.0)
        found = correct_reading(
            calibration=of, reading_mv=reading_mv, temperature_c=25.0, age_days=age_days
        )
        return found.high - found.low

    assert width(5.5) < width(4.0) < width(2.5)
    assert width(3.0) < width(3.0, age_days=5.0) < width(3.0, age_days=30.0)
    assert width(3.0, of=replace(calibration, residual_ph=0.1)) > width(3.0)


@pytest.mark.parametrize(
    ("age_days", "code", "level"),
    [
        (0.0, "calibration_fresh", Level.INFORM),
        (1.0, "calibration_fresh", Level.INFORM),
        (1.1, "calibration_due", Level.INFORM),
        (7.0, "calibration_due", Level.INFORM),
        (7.1, "calibration_old", Level.WARN),
    ],
)
def test_calibration_ages(age_days: float, code: str, level: Level) -> None:
    verdict = calibration_age_verdict(age_days)
    assert (verdict.code, verdict.level) == (code, level)
    assert code in VERDICT_CODES


@given(shown=st.floats(0.0, 14.0), temperature_c=st.floats(0.0, 60.0))
def test_meter_that_shows_ph_is_read_back_as_voltage(shown: float, temperature_c: float) -> None:
    ideal = calibrate(_points(1.0, 0.0, Buffer.TECHNICAL_7, Buffer.TECHNICAL_4))
    found = correct_reading(
        calibration=ideal,
        reading_mv=mv_from_shown(shown, temperature_c),
        temperature_c=temperature_c,
    )
    assert found.value == pytest.approx(shown, abs=1e-9)


def test_strip_is_worth_less_than_a_meter_and_less_the_coarser_it_is() -> None:
    def width(*args, **kwargs) -> float:
        found = reading_of(*args, **kwargs)
        assert found.value == pytest.approx((found.low + found.high) / 2.0)
        assert found.sources
        return found.high - found.low

    fine, usual, coarse = (width(3.0, Method.STRIP, strip_step_ph=s) for s in (0.2, 0.5, 1.0))
    assert fine < usual < coarse
    assert usual == pytest.approx(2.0 * Z_80 * 0.3)
    assert width(3.0, Method.METER) < usual


@given(ph=st.floats(0.0, 6.9), temperature_c=st.floats(0.0, 60.0))
def test_uncompensated_cold_drink_reads_too_high(ph: float, temperature_c: float) -> None:
    error = compensation(ph=ph, temperature_c=temperature_c, is_compensated=False)
    assert (error.error_without_ph > 0.0) == (temperature_c < 25.0 and ph < 7.0) or math.isclose(
        error.error_without_ph, 0.0, abs_tol=1e-9
    )


def test_compensation_is_missed_only_where_it_matters() -> None:
    cold = {"ph": 3.0, "temperature_c": 15.0}
    missing = compensation(**cold, is_compensated=False)
    assert missing.verdict.code == "compensation_missing"
    assert missing.error_without_ph == pytest.approx(0.13, abs=0.005)
    assert compensation(**cold, is_compensated=True).verdict.code == "compensation_slope_only"
    near = compensation(ph=3.0, temperature_c=24.9, is_compensated=False)
    assert near.verdict.code == "compensation_slope_only"


GOOD = _points(0.97, 0.0, Buffer.TECHNICAL_7, Buffer.TECHNICAL_4)
FOUR, SEVEN, TEN = Buffer.TECHNICAL_4, Buffer.TECHNICAL_7, Buffer.TECHNICAL_10


@pytest.mark.parametrize(
    ("points", "field", "reason"),
    [
        (GOOD[:1], "points", "too_few"),
        (_points(1.0, 0.0, FOUR, SEVEN, TEN, Buffer.BORATE), "points", "too_many"),
        (_points(1.0, 0.0, FOUR, SEVEN, SEVEN), "points", "same_buffer"),
        (_points(1.0, 0.0, FOUR, Buffer.PHTHALATE), "points", "too_near"),
        (_points(-1.0, 0.0, FOUR, SEVEN), "points", "wrong_way"),
        ([GOOD[0], replace(GOOD[1], reading_mv=math.nan)], "reading_mv", "out_of_range"),
        ([GOOD[0], replace(GOOD[1], temperature_c=51.0)], "temperature_c", "out_of_range"),
    ],
)
def test_calibrations_that_say_nothing_are_refused(points, field: str, reason: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        calibrate(points)
    assert (refusal.value.field, refusal.value.reason) == (field, reason)


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda: nernst_mv_per_ph(-1.0), "temperature_c"),
        (lambda: mv_from_shown(14.1), "shown_ph"),
        (lambda: buffer_ph(Buffer.BORATE, math.nan), "temperature_c"),
        (lambda: calibration_age_verdict(-1.0), "age_days"),
        (lambda: calibration_age_verdict(math.inf), "age_days"),
        (lambda: reading_of(15.0, Method.METER), "ph"),
        (lambda: reading_of(3.0, Method.STRIP, strip_step_ph=0.0), "strip_step_ph"),
        (lambda: reading_of(3.0, Method.TONGUE), "method"),
        (lambda: compensation(ph=15.0, temperature_c=20.0, is_compensated=True), "ph"),
        (lambda: compensation(ph=3.0, temperature_c=61.0, is_compensated=True), "temperature_c"),
        (
            lambda: compensation(
                ph=3.0, temperature_c=20.0, assumed_c=math.nan, is_compensated=True
            ),
            "assumed_c",
        ),
        *[
            (
                lambda wrong=wrong: correct_reading(
                    **{"calibration": _calibrated(), "reading_mv": 0.0, "temperature_c": 20.0}
                    | wrong
                ),
                field,
            )
            for wrong, field in (
                ({"reading_mv": 1001.0}, "reading_mv"),
                ({"temperature_c": 61.0}, "temperature_c"),
                ({"age_days": -1.0}, "age_days"),
            )
        ],
    ],
)
def test_impossible_readings_are_refused(call, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field
