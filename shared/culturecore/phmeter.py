"""The pH electrode: its calibration, its verdict, and what a reading is worth.

An electrode gives a voltage that falls with pH by the Nernst slope, from about zero at
pH 7. Calibration finds what share of that slope and what voltage at pH 7 it really has.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from culturecore import safety
from culturecore.buffers import Buffer, buffer_ph
from culturecore.constants import GAS_CONSTANT_J_PER_MOL_K, LN_10, ZERO_CELSIUS_K
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.stages import Method

FARADAY_C_PER_MOL: Final = 96485.33212  # SI, exact to the digits given
ZERO_POINT_PH: Final = 7.0
Z_80: Final = 1.2816  # standard deviations to either side of a central 80 %

# Standard deviations; assumptions for a kitchen meter, but for the buffers' two digits.
BUFFER_SD_PH: Final = 0.02
BUFFER_READING_SD_MV: Final = 0.5
SAMPLE_READING_SD_MV: Final = 1.0
DRIFT_PH_PER_DAY: Final = 0.01
UNCALIBRATED_METER_SD_PH: Final = 0.2
STRIP_SD_LEAST_PH: Final = 0.15  # strip_doubts
STRIP_SD_STEPS: Final = 0.6

FRESH_DAYS: Final = 1.0  # calibration_practice
OLD_DAYS: Final = 7.0
RESIDUAL_PH: Final = 0.1  # check_buffer_note
LEAST_SPAN_PH: Final = 1.0  # two buffers nearer than that say nothing of the slope
LOW_BUFFER_PH: Final = 4.1  # drinks lie below; the nearest common buffer

VERDICT_CODES: Final = frozenset(
    {
        "electrode_good", "electrode_usable", "electrode_clean_or_replace",
        "calibration_disagrees", "calibration_no_low_buffer",
        "calibration_fresh", "calibration_due", "calibration_old",
        "compensation_slope_only", "compensation_missing",
    }
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrationPoint:
    """A buffer, its temperature [degC], and the voltage read in it [mV]."""

    buffer: Buffer
    temperature_c: float
    reading_mv: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Calibration:
    """What an electrode does.

    ``slope_percent`` is of the Nernst slope, ``offset_mv`` the voltage at pH 7,
    ``residual_ph`` how far the worst buffer lies off the line (0 with two buffers).
    """

    slope_percent: float
    offset_mv: float
    residual_ph: float
    points: tuple[CalibrationPoint, ...]
    verdicts: tuple[Verdict, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Compensation:
    """What temperature compensation does to a reading, and what it does not.

    ``error_without_ph`` is what a meter that takes the liquid for ``assumed_c`` shows too
    much. The verdict's code stands for the explanation.
    """

    error_without_ph: float
    verdict: Verdict
    sources: tuple[str, ...]


def nernst_mv_per_ph(temperature_c: float) -> float:
    """Return the slope of an ideal electrode [mV per pH], 0 to 100 degC (nernst).

    Raises
    ------
    ImpossibleInput
        Outside that range.
    """
    _check("temperature_c", temperature_c, 0.0, 100.0, "°C")
    kelvin = temperature_c + ZERO_CELSIUS_K
    return 1000.0 * _nernst(GAS_CONSTANT_J_PER_MOL_K, kelvin, FARADAY_C_PER_MOL)


def mv_from_shown(shown_ph: float, temperature_c: float = 25.0) -> float:
    """Return the voltage behind the pH that an uncalibrated meter shows [mV].

    Parameters
    ----------
    shown_ph : float
        0 to 14, on the maker's ideal scale.
    temperature_c : float
        That the meter reckons with: the liquid's, or 25 degC without compensation.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    _check("shown_ph", shown_ph, 0.0, 14.0, "pH")
    return (ZERO_POINT_PH - shown_ph) * nernst_mv_per_ph(temperature_c)


def calibrate(points: Sequence[CalibrationPoint]) -> Calibration:
    """Return slope and offset of an electrode from two or three buffers.

    Parameters
    ----------
    points : sequence of CalibrationPoint
        Two or three different buffers, at least one pH apart from end to end; readings
        within 1000 mV.

    Raises
    ------
    ImpossibleInput
        ``reason`` "too_few", "too_many", "same_buffer", "too_near" or "wrong_way" (the
        voltage does not fall with pH); or a reading or temperature out of range.

    Notes
    -----
    Least squares of the voltage on (7 - pH) times the Nernst slope at each buffer's own
    temperature; with two buffers the line through both. Limits: calibration_notes,
    electrode_habit, check_buffer_note.
    """
    kept = tuple(points)
    _check_points(kept)
    ideal = [_ideal_mv(point) for point in kept]
    read = [point.reading_mv for point in kept]
    mean_ideal, mean_read = sum(ideal) / len(ideal), sum(read) / len(read)
    spread = sum((x - mean_ideal) ** 2 for x in ideal)
    slope = sum((x - mean_ideal) * (y - mean_read) for x, y in zip(ideal, read, strict=True))
    slope /= spread
    if slope <= 0.0:
        raise ImpossibleInput("points", slope, low=0.0, reason="wrong_way")
    offset_mv = mean_read - slope * mean_ideal
    residual_ph = max(
        abs(y - offset_mv - slope * x) / (slope * nernst_mv_per_ph(point.temperature_c))
        for x, y, point in zip(ideal, read, kept, strict=True)
    )
    return Calibration(
        slope_percent=100.0 * slope,
        offset_mv=offset_mv,
        residual_ph=residual_ph,
        points=kept,
        verdicts=_calibration_verdicts(slope, offset_mv, residual_ph, kept),
        sources=("nernst", "calibration_notes", "electrode_habit", "check_buffer_note"),
    )


def correct_reading(
    *,
    calibration: Calibration,
    reading_mv: float,
    temperature_c: float,
    age_days: float = 0.0,
) -> Estimate:
    """Return the pH behind a voltage, 80 % bounds.

    Parameters
    ----------
    calibration : Calibration
        Of this electrode.
    reading_mv : float
        In the sample, within 1000 mV; see :func:`mv_from_shown` for meters that show pH.
    temperature_c : float
        Of the sample, 0 to 60 degC.
    age_days : float
        Since the calibration, 0 to 365 days; the electrode drifts meanwhile.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    The bounds hold the doubts of the buffers, of reading them and the sample, and of the
    drift. A between-laboratory comparison (astm_e70_aoac_97341) is wider: sd 0.10.
    """
    _check("reading_mv", reading_mv, -1000.0, 1000.0, "mV")
    _check("temperature_c", temperature_c, 0.0, 60.0, "°C")
    _check("age_days", age_days, 0.0, 365.0, "d")
    slope = calibration.slope_percent / 100.0
    mv_per_ph = slope * nernst_mv_per_ph(temperature_c)
    ideal_mv = (reading_mv - calibration.offset_mv) / slope
    ph = ZERO_POINT_PH - (reading_mv - calibration.offset_mv) / mv_per_ph
    of_buffers = math.hypot(BUFFER_SD_PH, BUFFER_READING_SD_MV / mv_per_ph)
    sd = math.hypot(
        of_buffers * _leverage(calibration.points, ideal_mv),
        SAMPLE_READING_SD_MV / mv_per_ph,
        DRIFT_PH_PER_DAY * age_days,
        # buffers that disagree make the line itself doubtful
        calibration.residual_ph,
    )
    return Estimate(
        ph,
        ph - Z_80 * sd,
        ph + Z_80 * sd,
        sources=("nernst", "astm_e70_aoac_97341", "calibration_practice"),
    )


def calibration_age_verdict(age_days: float) -> Verdict:
    """Judge how long ago the meter was calibrated [days] (calibration_practice).

    Raises
    ------
    ImpossibleInput
        Below 0, or not finite.
    """
    if not 0.0 <= age_days < math.inf:  # NaN fails too
        raise ImpossibleInput("age_days", age_days, low=0.0, unit="d")
    numbers = {"age_days": age_days, "fresh_days": FRESH_DAYS, "old_days": OLD_DAYS}
    if age_days <= FRESH_DAYS:
        return Verdict("calibration_fresh", Level.INFORM, numbers, ("calibration_practice",))
    if age_days <= OLD_DAYS:
        return Verdict("calibration_due", Level.INFORM, numbers, ("calibration_practice",))
    return Verdict("calibration_old", Level.WARN, numbers, ("calibration_practice",))


def electrode_verdict(*, slope_percent: float, offset_mv: float) -> Verdict:
    """Judge an electrode by the outcome of its calibration (calibration_notes, electrode_habit).

    Parameters
    ----------
    slope_percent : float
        Of the Nernst slope, above 0 and up to 1000.
    offset_mv : float
        At pH 7, within 10 V.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    _check("slope_percent", slope_percent, math.ulp(0.0), 1000.0, "%")
    _check("offset_mv", offset_mv, -10_000.0, 10_000.0, "mV")
    slope, most_mv = slope_percent / 100.0, safety.limit("meter_offset_mv")
    numbers = {"slope_percent": slope_percent, "offset_mv": offset_mv, "most_mv": most_mv}
    if abs(offset_mv) > most_mv or not (
        safety.limit("meter_slope_low") <= slope <= safety.limit("meter_slope_high")
    ):
        return Verdict("electrode_clean_or_replace", Level.WARN, numbers, ("calibration_notes",))
    if safety.limit("meter_slope_good_low") <= slope <= safety.limit("meter_slope_good_high"):
        return Verdict("electrode_good", Level.INFORM, numbers, ("electrode_habit",))
    return Verdict("electrode_usable", Level.INFORM, numbers, ("calibration_notes",))


def reading_of(ph: float, method: Method, *, strip_step_ph: float = 0.5) -> Estimate:
    """Return a pH as read, 80 % bounds, from a strip or a meter of unknown calibration.

    Parameters
    ----------
    ph : float
        As read, 0 to 14.
    method : Method
        ``STRIP`` or ``METER``; for a calibrated meter see :func:`correct_reading`.
    strip_step_ph : float
        Between two colours of the strip's scale, 0.1 to 2.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, and for another method.
    """
    _check("ph", ph, 0.0, 14.0, "pH")
    _check("strip_step_ph", strip_step_ph, 0.1, 2.0, "pH")
    if method is Method.STRIP:
        sd, source = max(STRIP_SD_STEPS * strip_step_ph, STRIP_SD_LEAST_PH), "strip_doubts"
    elif method is Method.METER:
        sd, source = UNCALIBRATED_METER_SD_PH, "calibration_notes"
    else:
        raise ImpossibleInput("method", method.value, reason="not_a_ph_method")
    return Estimate(ph, ph - Z_80 * sd, ph + Z_80 * sd, sources=(source,))


def compensation(
    *, ph: float, temperature_c: float, assumed_c: float = 25.0, is_compensated: bool
) -> Compensation:
    """Say what temperature compensation does for a reading.

    It corrects the electrode's slope, which matters in proportion to the distance from
    pH 7. It does not turn the pH of a cold sample into that at 25 degC; for an acid drink
    that is below 0.01 anyway.

    Parameters
    ----------
    ph : float
        The true pH, 0 to 14.
    temperature_c, assumed_c : float
        Of the sample, and that the meter takes it for: 0 to 60 degC.
    is_compensated : bool
        Whether the meter measures, or is told, the temperature.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    _check("ph", ph, 0.0, 14.0, "pH")
    _check("temperature_c", temperature_c, 0.0, 60.0, "°C")
    _check("assumed_c", assumed_c, 0.0, 60.0, "°C")
    stretch = nernst_mv_per_ph(temperature_c) / nernst_mv_per_ph(assumed_c)
    error_ph = (ph - ZERO_POINT_PH) * (stretch - 1.0)
    numbers = {"ph": ph, "temperature_c": temperature_c, "error_without_ph": error_ph}
    code, level = "compensation_slope_only", Level.INFORM
    if not is_compensated and abs(error_ph) > safety.limit("meter_accuracy_ph"):
        code, level = "compensation_missing", Level.WARN
    return Compensation(
        error_without_ph=error_ph,
        verdict=Verdict(code, level, numbers, ("nernst",)),
        sources=("nernst", "meter_accuracy_notes"),
    )


def _nernst(gas_constant: float, kelvin: float, faraday: float) -> float:
    """Return the slope in volts: any units that go together."""
    return LN_10 * gas_constant * kelvin / faraday


def _ideal_mv(point: CalibrationPoint) -> float:
    """Return what an ideal electrode reads in the buffer [mV]."""
    ph = buffer_ph(point.buffer, point.temperature_c).value
    return (ZERO_POINT_PH - ph) * nernst_mv_per_ph(point.temperature_c)


def _leverage(points: tuple[CalibrationPoint, ...], ideal_mv: float) -> float:
    """Return by how much the line carries a buffer's doubt to this voltage."""
    ideal = [_ideal_mv(point) for point in points]
    mean = sum(ideal) / len(ideal)
    spread = sum((x - mean) ** 2 for x in ideal)
    return math.sqrt(1.0 / len(ideal) + (ideal_mv - mean) ** 2 / spread)


def _calibration_verdicts(
    slope: float, offset_mv: float, residual_ph: float, points: tuple[CalibrationPoint, ...]
) -> tuple[Verdict, ...]:
    found = [electrode_verdict(slope_percent=100.0 * slope, offset_mv=offset_mv)]
    if residual_ph > RESIDUAL_PH:
        off = {"residual_ph": residual_ph, "most_ph": RESIDUAL_PH}
        found.append(Verdict("calibration_disagrees", Level.WARN, off, ("check_buffer_note",)))
    lowest = min(buffer_ph(point.buffer, point.temperature_c).value for point in points)
    if lowest > LOW_BUFFER_PH:
        low = {"lowest_ph": lowest}
        found.append(Verdict("calibration_no_low_buffer", Level.WARN, low, ("calibration_notes",)))
    return tuple(sorted(found, key=lambda verdict: verdict.level is Level.INFORM))


def _check_points(points: tuple[CalibrationPoint, ...]) -> None:
    if len(points) < 2:
        raise ImpossibleInput("points", len(points), low=2, high=3, reason="too_few")
    if len(points) > 3:
        raise ImpossibleInput("points", len(points), low=2, high=3, reason="too_many")
    for point in points:
        _check("reading_mv", point.reading_mv, -1000.0, 1000.0, "mV")
    if len({point.buffer for point in points}) < len(points):
        raise ImpossibleInput("points", len(points), reason="same_buffer")
    phs = [buffer_ph(point.buffer, point.temperature_c).value for point in points]
    if max(phs) - min(phs) < LEAST_SPAN_PH:
        raise ImpossibleInput(
            "points", max(phs) - min(phs), low=LEAST_SPAN_PH, unit="pH", reason="too_near"
        )


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
