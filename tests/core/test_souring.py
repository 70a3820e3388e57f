"""The souring model: its laws, its chemistry against handbook values and a second solver."""

from __future__ import annotations

import math
import subprocess
import sys
from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import acidbase, souring
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat

SHARED = Path(souring.__file__).parents[1]

acids = st.floats(3.0, 300.0)
shares = st.floats(0.0, 0.9)
excesses = st.floats(0.0, 15.0)


def ph(acid, share=0.29, excess=4.0):
    return float(souring.ph_of_acid(acid, gluconic_share=share, strong_ion_excess_meq_per_l=excess))


@pytest.mark.parametrize(
    ("acetic_meq_per_l", "printed_ph"),
    # The Merck Index, "Acetic acid": pH of aqueous solutions 0.1 M 2.9, 0.01 M 3.4
    # (from memory); 0.001 M 3.9, common chemistry tables (from memory). Printed to 0.1.
    [(100.0, 2.9), (10.0, 3.4), (1.0, 3.9)],
)
def test_acetic_acid_in_water_has_the_handbook_ph(acetic_meq_per_l, printed_ph):
    assert ph(acetic_meq_per_l, share=0.0, excess=0.0) == pytest.approx(printed_ph, abs=0.05)


def test_half_neutralised_acetic_acid_has_the_ph_of_its_pk():
    # Henderson and Hasselbalch: pH = pK + log10 gamma; gamma of 0.05 mol/L is 0.82 (Kielland
    # 1937, J. Am. Chem. Soc. 59:1675, acetate at 0.05 mol/L, from memory).
    expected = souring.ACETIC_PK + math.log10(0.82)
    assert ph(100.0, share=0.0, excess=50.0) == pytest.approx(expected, abs=0.02)


@given(acid=st.floats(5.0, 200.0), share=shares, excess=excesses)
def test_both_solvers_of_the_core_give_the_same_ph(acid, share, excess):
    here = ph(acid, share, excess)
    blend = acidbase.Blend(
        acetic_mol_per_kg=acid * (1.0 - share) / 1000.0,
        gluconic_mol_per_kg=acid * share / 1000.0,
        strong_ion_excess_eq_per_kg=excess / 1000.0,
    )
    there = min(max(acidbase.ph_of(blend, 25.0), souring.PH_FLOOR), souring.PH_CAP)
    assert here == pytest.approx(there, abs=0.01)


@given(wanted=st.floats(2.55, 5.4), share=shares, excess=excesses)
def test_acid_of_a_ph_gives_that_ph_back(wanted, share, excess):
    acid = souring.acid_of_ph(wanted, gluconic_share=share, strong_ion_excess_meq_per_l=excess)
    assert ph(acid, share, excess) == pytest.approx(wanted, abs=0.003)


@given(acid=acids, share=shares, excess=excesses)
def test_strong_ions_follow_from_ph_and_acid(acid, share, excess):
    measured = ph(acid, share, excess)
    if not souring.PH_FLOOR < measured < souring.PH_CAP:
        return
    implied = souring.strong_ion_excess_meq_per_l(
        ph=measured, acid_meq_per_l=acid, gluconic_share=share
    )
    assert float(implied) == pytest.approx(excess, abs=0.02 * acid + 0.02)


@given(acid=acids, more=st.floats(1.01, 3.0), share=shares, excess=excesses)
def test_more_acid_never_raises_the_ph(acid, more, share, excess):
    assert ph(acid * more, share, excess) <= ph(acid, share, excess)


@given(acid=acids, share=shares, excess=excesses, more=st.floats(0.5, 5.0))
def test_more_strong_ions_never_lower_the_ph(acid, share, excess, more):
    assert ph(acid, share, excess + more) >= ph(acid, share, excess)


def test_gluconic_acid_sours_more_than_as_much_acetic():
    assert ph(60.0, share=0.4) < ph(60.0, share=0.0) - 0.1


def test_ph_stays_between_floor_and_cap():
    assert ph(5000.0) == souring.PH_FLOOR
    assert ph(0.0) == souring.PH_CAP
    assert ph(1.0, excess=40.0) == souring.PH_CAP


def test_arrays_broadcast_draws_against_days():
    excess = np.array([[2.0], [4.0], [6.0]])
    grid = souring.ph_of_acid(
        np.array([10.0, 40.0]), gluconic_share=0.3, strong_ion_excess_meq_per_l=excess
    )
    assert grid.shape == (3, 2)
    assert float(grid[1, 1]) == pytest.approx(ph(40.0, 0.3, 4.0), abs=1e-9)


def test_acid_after_a_week_is_the_start_and_a_week_of_the_rate():
    acid = souring.acid_meq_per_l(7.0, start_meq_per_l=10.0, rate_meq_per_l_day=5.0, curvature=1.3)
    assert float(acid) == pytest.approx(45.0)


def test_nothing_forms_before_the_lag_is_over():
    course = souring.acid_meq_per_l(
        np.array([-1.0, 0.0, 3.0, 4.0]),
        start_meq_per_l=10.0,
        rate_meq_per_l_day=5.0,
        curvature=1.3,
        lag_days=3.0,
    )
    assert course[:3].tolist() == [10.0, 10.0, 10.0]
    assert course[3] > 10.0


@given(
    day=st.floats(0.1, 40.0),
    start=st.floats(0.5, 60.0),
    rate=st.floats(0.5, 15.0),
    curvature=st.floats(0.7, 2.0),
    lag=st.floats(0.0, 4.0),
    room=st.sampled_from([150.0, 400.0, 1e9]),
)
def test_day_of_acid_is_the_inverse_of_the_course(day, start, rate, curvature, lag, room):
    course = {
        "room_meq_per_l": room,
        "start_meq_per_l": start,
        "rate_meq_per_l_day": rate,
        "curvature": curvature,
        "lag_days": lag,
    }
    acid = float(souring.acid_meq_per_l(day, **course))
    found = float(souring.day_of_acid(acid, **course))
    if acid - start > 0.99 * room:  # the last hundredth takes for ever
        assert found > lag
    elif acid - start > 1e-3:
        assert found == pytest.approx(day, rel=1e-4)
    else:
        assert found <= day


def test_acid_that_is_there_from_the_start_is_reached_at_once():
    day = souring.day_of_acid(
        5.0, start_meq_per_l=10.0, rate_meq_per_l_day=5.0, curvature=1.3, lag_days=2.0
    )
    assert float(day) == 0.0


def test_sugar_sets_a_ceiling_that_is_never_passed():
    ceiling = souring.acid_ceiling_meq_per_l(
        start_meq_per_l=10.0, sugar_g_per_l=5.0, gluconic_share=0.0
    )
    # 5 g/L sucrose = 14.6 mmol/L, four acetic acids each
    assert float(ceiling) == pytest.approx(10.0 + 4.0 * 5.0 / 0.3423, rel=1e-4)
    course = {
        "start_meq_per_l": 10.0,
        "rate_meq_per_l_day": 5.0,
        "curvature": 1.3,
        "room_meq_per_l": ceiling - 10.0,
    }
    assert float(souring.acid_meq_per_l(60.0, **course)) == pytest.approx(float(ceiling))
    assert float(souring.day_of_acid(ceiling + 1.0, **course)) == math.inf


def test_acid_slows_down_as_it_fills_its_room():
    course = {"start_meq_per_l": 10.0, "rate_meq_per_l_day": 5.0, "curvature": 1.3}
    free = souring.acid_meq_per_l(np.array([2.0, 7.0, 30.0]), **course)
    held = souring.acid_meq_per_l(np.array([2.0, 7.0, 30.0]), room_meq_per_l=100.0, **course)
    assert float(held[0]) == pytest.approx(float(free[0]), rel=0.01)
    assert 10.0 + 100.0 * math.tanh(0.35) == pytest.approx(float(held[1]))
    assert float(held[2]) == pytest.approx(110.0, rel=0.02)


def test_warmth_doubles_the_rate_in_ten_degrees_and_stops_at_thirty():
    assert float(souring.temperature_factor(25.0, 2.0)) == pytest.approx(1.0)
    assert float(souring.temperature_factor(15.0, 2.0)) == pytest.approx(0.5)
    assert float(souring.temperature_factor(36.0, 2.0)) == float(
        souring.temperature_factor(30.0, 2.0)
    )


def test_a_wide_shallow_jar_sours_faster_than_a_tall_one():
    assert souring.surface_factor(0.16, 0.5) > 1.0 > souring.surface_factor(0.04, 0.5)
    assert float(souring.surface_factor(0.16, 0.0)) == 1.0


def test_titratable_acidity_is_what_is_not_neutralised():
    # 40 meq/L less 4 neutralised, 60.05 g/mol
    assert float(souring.ta_g_per_l(40.0, 4.0)) == pytest.approx(36.0 * 0.06005, rel=1e-4)
    assert float(souring.ta_g_per_l(2.0, 4.0)) == 0.0


def test_sucrose_falls_and_its_bounds_hold_the_value():
    days = [
        souring.sucrose_left_g_per_l(day=day, sugar_g_per_l=60.0, temperature_c=24.0)
        for day in (0.0, 3.0, 10.0, 20.0)
    ]
    assert days[0].value == days[0].low == days[0].high == 60.0
    for earlier, later in pairwise(days):
        assert later.value < earlier.value
        assert 0.0 < later.low < later.value < later.high < 60.0


def test_ethanol_rises_to_its_plateau_and_is_never_called_certain():
    early = souring.ethanol_percent(day=5.0, temperature_c=24.0)
    late = souring.ethanol_percent(day=14.0, temperature_c=24.0)
    assert early.value < late.value
    assert souring.ethanol_percent(day=30.0, temperature_c=24.0).value == late.value
    assert late.high > 1.0
    assert late.low < 0.15


def test_a_cold_place_is_said_to_be_extrapolated():
    cold = souring.ethanol_percent(day=5.0, temperature_c=12.0)
    assert cold.caveats == (Caveat.EXTRAPOLATED,)


@pytest.mark.parametrize("day", [-1.0, math.nan, math.inf])
def test_a_day_that_cannot_be_is_refused(day):
    with pytest.raises(ImpossibleInput) as refused:
        souring.ethanol_percent(day=day, temperature_c=24.0)
    assert refused.value.field == "day"


def test_negative_sugar_is_refused():
    with pytest.raises(ImpossibleInput) as refused:
        souring.sucrose_left_g_per_l(day=1.0, sugar_g_per_l=-5.0, temperature_c=24.0)
    assert refused.value.field == "sugar_g_per_l"


def test_importing_the_forecast_does_not_import_numpy():
    code = (
        f"import sys; sys.path.insert(0, {str(SHARED)!r}); "
        "import culturecore.forecast, culturecore.souring, culturecore.priors; "
        "sys.exit('numpy' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
