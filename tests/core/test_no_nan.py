"""Whatever number goes in, what comes out is finite or a refusal; NaN is always refused."""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import (
    acidbase,
    acidpair,
    buffers,
    cooling,
    filltable,
    heat,
    icemix,
    instruments,
    phmeter,
    refraction,
    starter,
    sugar,
    titration,
    vessels,
)
from culturecore.acidbase import Blend
from culturecore.errors import ImpossibleInput
from culturecore.stages import Method, VesselShape

CALIBRATION = phmeter.calibrate(
    [
        phmeter.CalibrationPoint(
            buffer=buffers.Buffer.TECHNICAL_7, temperature_c=25.0, reading_mv=-8.0
        ),
        phmeter.CalibrationPoint(
            buffer=buffers.Buffer.TECHNICAL_4, temperature_c=25.0, reading_mv=164.0
        ),
    ]
)
LEARNT = acidpair.learn_excess(ph=3.0, ta_g_per_l=8.0)
TABLE = filltable.fill_table([(5.0, 1.0), (10.0, 2.5)])
CURVE = cooling.fit_cooling(
    [
        cooling.PotReading(minute=0.0, temperature_c=55.0),
        cooling.PotReading(minute=20.0, temperature_c=45.0),
    ],
    ambient_c=21.0,
)
JAR = {"shape": VesselShape.SHOULDERED, "diameter_cm": 12.0, "brim_volume_l": 3.0}
LYE = {
    "lye_ml": 8.0, "lye_normality": 0.1, "sample_ml": 10.0, "dilution_factor": 1.0, "blank_ml": 0.1,
}  # fmt: skip


def _ph_of(temperature_c: float, **amounts: float) -> float:
    return acidbase.ph_of(Blend(**amounts), temperature_c)


def _mixed(mass_g: float, temperature_c: float, brix: float) -> float:
    return heat.mix_temperature_c(
        [
            heat.Portion(mass_g=mass_g, temperature_c=temperature_c, brix=brix),
            heat.Portion(mass_g=500.0, temperature_c=10.0),
        ]
    )


def _iced(mass_g: float, temperature_c: float, ice_g: float, ice_temperature_c: float):
    parts = [heat.Portion(mass_g=mass_g, temperature_c=temperature_c)]
    return icemix.mix_with_ice(parts, ice_g=ice_g, ice_temperature_c=ice_temperature_c)


def _fitted(minute: float, temperature_c: float, ambient_c: float):
    first = cooling.PotReading(minute=0.0, temperature_c=55.0)
    second = cooling.PotReading(minute=minute, temperature_c=temperature_c)
    return cooling.fit_cooling([first, second], ambient_c=ambient_c)


def _calibrated(reading_mv: float, temperature_c: float):
    point = phmeter.CalibrationPoint(
        buffer=buffers.Buffer.BORATE, temperature_c=temperature_c, reading_mv=reading_mv
    )
    return phmeter.calibrate([*CALIBRATION.points, point])


def _filled(height_cm: float, volume_l: float, asked_cm: float):
    return filltable.volume_at(filltable.fill_table([(5.0, 1.0), (height_cm, volume_l)]), asked_cm)


# function, and arguments that it takes
CALLS = [
    (_ph_of, {"temperature_c": 25.0, "acetic_mol_per_kg": 0.1, "citric_mol_per_kg": 0.01,
              "strong_ion_excess_eq_per_kg": 0.01, "inert_salt_mol_per_kg": 0.01}),
    (acidbase.starter_blend, {"ph": 3.0, "ta_g_per_l": 8.0, "gluconic_share": 0.3}),
    (acidbase.sweet_tea_blend, {"alkalinity_meq_per_l": 1.5, "tea_g_per_l": 4.0}),
    (starter.judge_starter, {"ph": 3.0, "ta_g_per_l": 8.0}),
    (starter.starter_volume_for, {
        "blend_volume_l": 4.0, "target_start_ph": 4.2, "starter_ph": 3.0,
        "starter_ta_g_per_l": 8.0, "tea_g_per_l": 4.0, "sugar_g_per_l": 50.0,
        "water_alkalinity_meq_per_l": 1.5}),
    (titration.acidity_meq_per_l, LYE),
    (titration.titrate, LYE | {"end_point_ph": 8.1}),
    (acidpair.learn_excess, {"ph": 3.0, "ta_g_per_l": 8.0, "gluconic_share": 0.3}),
    (lambda ta_g_per_l: acidpair.ph_from_ta(ta_g_per_l=ta_g_per_l, learnt=LEARNT),
     {"ta_g_per_l": 5.0}),
    (lambda ph: acidpair.ta_from_ph(ph=ph, learnt=LEARNT), {"ph": 3.2}),
    (phmeter.nernst_mv_per_ph, {"temperature_c": 25.0}),
    (phmeter.mv_from_shown, {"shown_ph": 3.0, "temperature_c": 25.0}),
    (_calibrated, {"reading_mv": -130.0, "temperature_c": 25.0}),
    (lambda **known: phmeter.correct_reading(calibration=CALIBRATION, **known),
     {"reading_mv": 200.0, "temperature_c": 20.0, "age_days": 1.0}),
    (phmeter.calibration_age_verdict, {"age_days": 1.0}),
    (lambda **known: phmeter.reading_of(method=Method.STRIP, **known),
     {"ph": 3.0, "strip_step_ph": 0.5}),
    (lambda **known: phmeter.compensation(is_compensated=False, **known),
     {"ph": 3.0, "temperature_c": 20.0, "assumed_c": 25.0}),
    (instruments.hydrometer_reading,
     {"shown_sg": 1.03, "temperature_c": 25.0, "made_for_c": 20.0, "day": 2.0}),
    (instruments.refractometer_reading, {"shown_brix": 8.0, "temperature_c": 25.0, "day": 2.0}),
    (instruments.false_brix, {"ethanol_mass_percent": 1.0, "acid_mass_percent": 1.0}),
    (instruments.false_gravity, {"ethanol_mass_percent": 1.0, "acid_mass_percent": 1.0}),
    (refraction.index_at, {"brix": 8.0, "temperature_c": 25.0}),
    (refraction.brix_from_index, {"index": 1.34}),
    (_mixed, {"mass_g": 1000.0, "temperature_c": 90.0, "brix": 8.0}),
    (_iced, {"mass_g": 1000.0, "temperature_c": 90.0, "ice_g": 300.0, "ice_temperature_c": -5.0}),
    (_fitted, {"minute": 20.0, "temperature_c": 45.0, "ambient_c": 21.0}),
    (lambda limit_c: cooling.minutes_until_safe(CURVE, limit_c=limit_c), {"limit_c": 30.0}),
    (CURVE.temperature_c, {"minute": 40.0}),
    (heat.hot_mass_for_temperature,
     {"total_water_g": 3000.0, "hot_c": 95.0, "cold_c": 12.0, "target_c": 28.0,
      "sugar_g": 200.0, "sugar_c": 20.0}),
    (heat.minutes_until,
     {"now_c": 50.0, "target_c": 30.0, "ambient_c": 22.0, "k_per_min": 0.01, "read_at_c": 50.0}),
    (heat.boiling_point_c, {"altitude_m": 100.0}),
    (_filled, {"height_cm": 10.0, "volume_l": 2.5, "asked_cm": 7.0}),
    (lambda volume_l: filltable.surface_to_volume_per_cm(TABLE, volume_l), {"volume_l": 2.0}),
    (lambda **known: vessels.surface_to_volume_per_cm(VesselShape.SHOULDERED, **known),
     {"diameter_cm": 12.0, "brim_volume_l": 3.0, "volume_l": 2.0}),
    (sugar.density_kg_per_l, {"brix": 8.0, "temperature_c": 25.0}),
    (sugar.volume_of_solution_l, {"water_g": 900.0, "sugar_g": 70.0}),
    (sugar.brix_from_g_per_l, {"sugar_g_per_l": 70.0}),
    (sugar.brix_from_sg, {"specific_gravity": 1.03}),
]  # fmt: skip
QUESTIONS = [(function, known, name) for function, known in CALLS for name in known]
ODD = st.one_of(
    st.sampled_from([0.0, -0.0, 1e-300, -1e-300, 1e300, -1e300, 5e-324, math.inf, -math.inf]),
    st.floats(allow_nan=False),
    st.floats(-10.0, 120.0),
)


def _numbers(answer: object) -> Iterator[float]:
    """Every float that an answer holds, however deep."""
    if isinstance(answer, float):
        yield answer
    elif isinstance(answer, dict):
        for value in answer.values():
            yield from _numbers(value)
    elif isinstance(answer, (tuple, list)):
        for value in answer:
            yield from _numbers(value)
    elif dataclasses.is_dataclass(answer):
        for field in dataclasses.fields(answer):
            yield from _numbers(getattr(answer, field.name))


@pytest.mark.parametrize(("function", "known"), CALLS)
def test_good_numbers_get_an_answer(function, known: dict[str, float]) -> None:
    numbers = list(_numbers(function(**known)))
    assert numbers
    assert all(map(math.isfinite, numbers))


@pytest.mark.parametrize(("function", "known", "name"), QUESTIONS)
def test_nan_is_refused(function, known: dict[str, float], name: str) -> None:
    with pytest.raises(ImpossibleInput):
        function(**(known | {name: math.nan}))


@settings(max_examples=600, deadline=None)
@given(question=st.sampled_from(QUESTIONS), odd=ODD)
def test_odd_numbers_get_a_finite_answer_or_a_refusal(question, odd: float) -> None:
    function, known, name = question
    try:
        answer = function(**(known | {name: odd}))
    except ImpossibleInput:
        return
    assert all(map(math.isfinite, _numbers(answer)))
