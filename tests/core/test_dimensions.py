"""Units that go together: formulas run on quantities with units, or scale as they must."""

from __future__ import annotations

import math

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import filltable, instruments, phmeter, titration, vessels
from culturecore.cooling import PotReading, cooled, fit_cooling, minutes_until_safe
from culturecore.heat import Portion, hot_mass_for_temperature, mix_temperature_c
from culturecore.icemix import ice_for_temperature, mix_with_ice
from culturecore.stages import StarterTaste, VesselShape
from culturecore.starter import starter_volume_for
from culturecore.sugar import volume_of_solution_l

SCALE = st.floats(0.2, 5.0)


@pytest.fixture(scope="module")
def units() -> pint.UnitRegistry:
    return pint.UnitRegistry(autoconvert_offset_to_baseunit=False)


# --- formulas that take quantities --------------------------------------------------------


def test_lye_over_sample_is_a_concentration(units: pint.UnitRegistry) -> None:
    found = titration._equivalents_per_volume(
        units.Quantity(8.0, "mL"), units.Quantity(0.1, "mol/L"), units.Quantity(10.0, "mL"), 2.0
    )
    assert found.to("mmol/L").magnitude == pytest.approx(160.0)
    plain = titration.acidity_meq_per_l(
        lye_ml=8.0, lye_normality=0.1, sample_ml=10.0, dilution_factor=2.0
    )
    assert found.to("mmol/L").magnitude == pytest.approx(plain)


def test_nernst_slope_is_a_voltage(units: pint.UnitRegistry) -> None:
    found = phmeter._nernst(
        units.Quantity(8.314462618, "J/mol/K"),
        units.Quantity(298.15, "K"),
        units.Quantity(96485.33212, "C/mol"),
    )
    assert found.to("mV").magnitude == pytest.approx(phmeter.nernst_mv_per_ph(25.0))


def test_floating_glass_tells_a_density(units: pint.UnitRegistry, monkeypatch) -> None:
    plain = instruments._density_in_glass(1.03, 0.9982, 10.0)
    expansion = units.Quantity(instruments.GLASS_EXPANSION_PER_K, "1/K")
    monkeypatch.setattr(instruments, "GLASS_EXPANSION_PER_K", expansion)
    found = instruments._density_in_glass(
        1.03, units.Quantity(998.2, "g/L"), units.Quantity(10.0, "K")
    )
    assert found.to("kg/L").magnitude == pytest.approx(plain)


def test_cooling_leaves_a_temperature_difference(units: pint.UnitRegistry) -> None:
    decay = units.Quantity(0.6, "1/hour") * units.Quantity(50.0, "minute")
    found = cooled(units.Quantity(40.0, "delta_degC"), decay.to("dimensionless").magnitude)
    assert found.to("kelvin").magnitude == pytest.approx(40.0 * math.exp(-0.5))
    assert (units.Quantity(1.0, "1/hour") * units.Quantity(1.0, "hour")).dimensionless


def test_frustum_is_a_volume(units: pint.UnitRegistry) -> None:
    found = vessels._frustum(
        units.Quantity(200.0, "mm"), units.Quantity(5.0, "cm"), units.Quantity(0.08, "m")
    )
    assert found.to("cm**3").magnitude == pytest.approx(vessels._frustum(20.0, 5.0, 8.0))


def test_measured_vessel_has_volumes_and_surfaces(units: pint.UnitRegistry) -> None:
    plain = [(0.0, 0.0), (5.0, 1.0), (10.0, 2.5), (12.0, 2.8)]
    rows = [(units.Quantity(h, "cm"), units.Quantity(v, "L")) for h, v in plain]
    slopes = filltable._slopes(rows)
    volume, surface = filltable._at(
        filltable.FillTable(tuple(rows), slopes), units.Quantity(70.0, "mm")
    )
    expected = filltable._at(filltable.fill_table(plain), 7.0)
    assert volume.to("L").magnitude == pytest.approx(expected[0])
    assert surface.to("L/cm").magnitude == pytest.approx(expected[1])
    assert surface.to("cm**2").magnitude == pytest.approx(1000.0 * expected[1])


# --- scaling laws of the others -------------------------------------------------------------


@given(scale=SCALE, shape=st.sampled_from(VesselShape), share=st.floats(0.05, 1.0))
def test_larger_vessel_of_one_shape_is_larger_everywhere(
    scale: float, shape: VesselShape, share: float
) -> None:
    """Lengths as k, surfaces as k squared, volumes as k cubed, surface to volume as 1/k."""
    small = (shape, 12.0, 3.0, 3.0 * share)
    large = (shape, 12.0 * scale, 3.0 * scale**3, 3.0 * share * scale**3)
    for function, power in (
        (vessels.liquid_height_cm, 1),
        (vessels.surface_area_cm2, 2),
        (vessels.surface_to_volume_per_cm, -1),
    ):
        assert function(*large) == pytest.approx(function(*small) * scale**power, rel=1e-9)


@given(scale=SCALE)
def test_mixing_knows_no_size(scale: float) -> None:
    def parts(factor: float) -> list[Portion]:
        return [
            Portion(mass_g=1000.0 * factor, temperature_c=92.0, brix=12.0),
            Portion(mass_g=2500.0 * factor, temperature_c=11.0),
        ]

    assert mix_temperature_c(parts(scale)) == pytest.approx(mix_temperature_c(parts(1.0)))
    one, other = (mix_with_ice(parts(f), ice_g=3000.0 * f) for f in (1.0, scale))
    assert other.ice_left_g == pytest.approx(scale * one.ice_left_g, abs=1e-6)
    assert ice_for_temperature(parts(scale), target_c=20.0).value == pytest.approx(
        scale * ice_for_temperature(parts(1.0), target_c=20.0).value
    )
    hot = {"hot_c": 95.0, "cold_c": 12.0, "target_c": 28.0}
    assert hot_mass_for_temperature(
        total_water_g=3000.0 * scale, sugar_g=200.0 * scale, **hot
    ) == pytest.approx(scale * hot_mass_for_temperature(total_water_g=3000.0, sugar_g=200.0, **hot))


@given(scale=SCALE)
def test_clock_of_another_unit_gives_the_same_cooling(scale: float) -> None:
    def curve(factor: float):
        return fit_cooling(
            [
                PotReading(minute=0.0, temperature_c=55.0),
                PotReading(minute=20.0 * factor, temperature_c=45.0),
                PotReading(minute=35.0 * factor, temperature_c=40.0),
            ],
            ambient_c=21.0,
        )

    one, other = curve(1.0), curve(scale)
    assert other.rate_per_min.value == pytest.approx(one.rate_per_min.value / scale)
    assert minutes_until_safe(other, limit_c=30.0).high == pytest.approx(
        scale * minutes_until_safe(one, limit_c=30.0).high
    )


@given(scale=SCALE)
def test_amounts_grow_with_the_batch(scale: float) -> None:
    assert volume_of_solution_l(900.0 * scale, 70.0 * scale) == pytest.approx(
        scale * volume_of_solution_l(900.0, 70.0)
    )
    one, other = (
        starter_volume_for(blend_volume_l=4.0 * f, starter_taste=StarterTaste.SOUR)
        for f in (1.0, scale)
    )
    assert other.volume_l.high == pytest.approx(scale * one.volume_l.high)
    assert other.usual_volume_l == pytest.approx(scale * one.usual_volume_l)


@given(scale=SCALE)
def test_acidity_is_the_same_in_any_unit_of_volume(scale: float) -> None:
    one, other = (
        titration.titrate(lye_ml=6.0 * f, lye_normality=0.1, sample_ml=10.0 * f)
        for f in (1.0, scale)
    )
    assert other.ta_g_per_l.value == pytest.approx(one.ta_g_per_l.value)
