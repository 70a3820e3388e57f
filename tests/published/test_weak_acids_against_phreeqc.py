"""The pH solver against PHREEQC (Parkhurst & Appelo 2013, USGS TM 6-A43), package phreeqc.

Stored mixtures test the numerics without the package being run; fresh ones run it. With
PHREEQC's own minteq.v4 database, whose constants and complexes are others', the model is
tested too.
"""

from __future__ import annotations

import numpy as np
import phreeqc
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore.acidarrays import ph_of_many
from culturecore.acidbase import (
    Blend,
    mix,
    ph_of,
    starter_blend,
    starter_fraction_for,
    sweet_tea_blend,
    titratable_acidity_g_per_l,
)

SPECIES = {
    "acetic": "Acetate",
    "gluconic": "Gluconate",
    "lactic": "Lactate",
    "malic": "Malate",
    "citric": "Citrate",
    "carbonic": "C(4)",
    "tea_acid": "Teaa",
    "tea_phenol": "Teap",
}


def _blend(row: dict[str, float]) -> Blend:
    amounts = {f"{acid}_mol_per_kg": row[acid] for acid in SPECIES}
    return Blend(
        **amounts,
        strong_ion_excess_eq_per_kg=row["sodium"] - row["chloride"],
        inert_salt_mol_per_kg=min(row["sodium"], row["chloride"]),
    )


def _phreeqc_ph(engine: phreeqc.Phreeqc, blend: Blend, temperature_c: float) -> float:
    ph = _phreeqc_answer(engine, blend, temperature_c)
    assert ph is not None, engine.GetErrorString()
    return ph


def _phreeqc_answer(engine: phreeqc.Phreeqc, blend: Blend, temperature_c: float) -> float | None:
    """PHREEQC's pH, None when it does not converge."""
    excess, salt = blend.strong_ion_excess_eq_per_kg, blend.inert_salt_mol_per_kg
    lines = ["SOLUTION 1", f" temp {temperature_c:.12g}", " units mol/kgw", " pH 7 charge"]
    for name, amount in (
        ("Na", salt + max(excess, 0.0)),
        ("Cl", salt + max(-excess, 0.0)),
        *zip(SPECIES.values(), blend.acids_mol_per_kg, strict=True),
    ):
        if amount > 0.0:
            lines.append(f" {name} {amount:.14g}")
    lines += ["SELECTED_OUTPUT", " -reset false", " -high_precision true", " -pH true", "END"]
    if engine.RunString("\n".join(lines)):
        return None
    return engine.GetSelectedOutput()["pH"][-1]


@pytest.fixture(scope="module")
def engine(weak_acids_database: str) -> phreeqc.Phreeqc:
    one = phreeqc.Phreeqc()
    assert one.LoadDatabaseString(weak_acids_database) == 0, one.GetErrorString()
    return one


def test_four_hundred_mixtures_agree_to_a_thousandth(table) -> None:
    rows = table("weak_acid_mixtures_phreeqc.csv")
    assert len(rows) == 400
    off = [ph_of(_blend(row), row["t_c"]) - row["ph"] for row in rows]
    assert max(map(abs, off)) < 0.001


def test_arrays_agree_with_phreeqc_as_single_values_do(table) -> None:
    rows = table("weak_acid_mixtures_phreeqc.csv")
    for row in rows[:40]:
        blend = _blend(row)
        (ph,) = ph_of_many(
            [blend.acids_mol_per_kg],
            blend.strong_ion_excess_eq_per_kg,
            row["t_c"],
            inert_salt_mol_per_kg=blend.inert_salt_mol_per_kg,
        )
        assert ph == pytest.approx(row["ph"], abs=0.001)


def test_water_with_calcium_and_magnesium_agrees_with_another_database(table) -> None:
    """minteq.v4.dat: its own constants and acetate complexes; 0.02 pH is what those cost."""
    rows = table("acid_water_minteq.csv")
    assert len(rows) > 50
    for row in rows:
        cations = 2 * row["calcium"] + 2 * row["magnesium"] + row["sodium"] + row["potassium"]
        anions = 2 * row["sulfate"] + row["chloride"]
        # ions of charge two count fourfold in the ionic strength
        squares = 4 * (row["calcium"] + row["magnesium"] + row["sulfate"])
        squares += row["sodium"] + row["potassium"] + row["chloride"]
        blend = Blend(
            acetic_mol_per_kg=row["acetic"],
            carbonic_mol_per_kg=row["carbonic"],
            strong_ion_excess_eq_per_kg=cations - anions,
            inert_salt_mol_per_kg=(squares - abs(cations - anions)) / 2,
        )
        assert ph_of(blend, row["t_c"]) == pytest.approx(row["ph"], abs=0.02)


_AMOUNT = st.one_of(st.just(0.0), st.floats(1e-4, 0.05))


@settings(max_examples=60, deadline=None)
@given(
    acids=st.tuples(*[_AMOUNT] * len(SPECIES)).filter(lambda amounts: sum(amounts) > 1e-3),
    excess_share=st.floats(-0.05, 0.8),
    salt=st.floats(0.0, 0.02),
    temperature_c=st.floats(5.0, 45.0),
)
def test_fresh_mixtures_agree_to_two_thousandths(
    engine: phreeqc.Phreeqc,
    acids: tuple[float, ...],
    excess_share: float,
    salt: float,
    temperature_c: float,
) -> None:
    names = [f"{acid}_mol_per_kg" for acid in SPECIES]
    blend = Blend(
        **dict(zip(names, acids, strict=True)),
        strong_ion_excess_eq_per_kg=excess_share * sum(acids),
        inert_salt_mol_per_kg=salt,
    )
    assert ph_of(blend, temperature_c) == pytest.approx(
        _phreeqc_ph(engine, blend, temperature_c), abs=0.002
    )


def test_hundreds_of_random_mixtures_as_one_array(engine: phreeqc.Phreeqc) -> None:
    """Each at a temperature of its own; drinks, waters and teas from pH 2 to 10.

    PHREEQC itself finds no answer for a few of them; those are left out of the comparison. It
    also lowers the activity of water, which in 0.06 mol/kg of carbonic acid is 0.003 pH.
    """
    rng = np.random.default_rng(20261125)
    count = 640
    totals = rng.uniform(0.0, 0.035, (count, len(SPECIES)))
    totals *= rng.random(totals.shape) < 0.5  # about half of the acids are missing
    totals[:, 0] += 1e-3
    excess = rng.uniform(-0.05, 0.9, count) * totals.sum(axis=1)
    salt = rng.uniform(0.0, 0.02, count)
    temperature_c = rng.uniform(2.0, 50.0, count)
    found = ph_of_many(totals, excess, temperature_c, inert_salt_mol_per_kg=salt)
    names = [f"{acid}_mol_per_kg" for acid in SPECIES]
    off, references = [], []
    for row in range(count):
        blend = Blend(
            **dict(zip(names, totals[row].tolist(), strict=True)),
            strong_ion_excess_eq_per_kg=float(excess[row]),
            inert_salt_mol_per_kg=float(salt[row]),
        )
        reference = _phreeqc_answer(engine, blend, float(temperature_c[row]))
        if reference is not None:
            references.append(reference)
            off.append(abs(float(found[row]) - reference))
    assert len(off) >= 500
    assert np.ptp(references) > 5.0
    assert max(off) < 0.002


@pytest.mark.parametrize("ph", [2.6, 3.0, 3.4])
@pytest.mark.parametrize("ta_g_per_l", [3.0, 8.0, 14.0])
@pytest.mark.parametrize("gluconic_share", [0.0, 0.3, 0.6])
def test_starter_put_together_from_readings_has_that_ph_in_phreeqc(
    engine: phreeqc.Phreeqc, ph: float, ta_g_per_l: float, gluconic_share: float
) -> None:
    starter = starter_blend(ph, ta_g_per_l, gluconic_share)
    assert _phreeqc_ph(engine, starter, 25.0) == pytest.approx(ph, abs=0.001)


def test_titration_to_the_end_point_ends_there_in_phreeqc(engine: phreeqc.Phreeqc) -> None:
    """AOAC 942.15: glass electrode, end point pH 8.1."""
    starter = starter_blend(3.0, 8.0, 0.3)
    lye_eq_per_kg = titratable_acidity_g_per_l(starter) / 60.052
    titrated = mix(((starter, 1.0), (Blend(strong_ion_excess_eq_per_kg=lye_eq_per_kg), 1.0)))
    doubled = Blend(
        acetic_mol_per_kg=2 * titrated.acetic_mol_per_kg,
        gluconic_mol_per_kg=2 * titrated.gluconic_mol_per_kg,
        strong_ion_excess_eq_per_kg=2 * titrated.strong_ion_excess_eq_per_kg,
    )
    assert _phreeqc_ph(engine, doubled, 25.0) == pytest.approx(8.1, abs=0.005)


@pytest.mark.parametrize("alkalinity_meq_per_l", [0.0, 1.5, 4.0])
@pytest.mark.parametrize("target_ph", [3.8, 4.2, 4.5])
def test_starter_for_a_wished_ph_gives_that_ph_in_phreeqc(
    engine: phreeqc.Phreeqc, alkalinity_meq_per_l: float, target_ph: float
) -> None:
    tea, starter = sweet_tea_blend(alkalinity_meq_per_l, 4.0), starter_blend(2.9, 8.0)
    share = starter_fraction_for(tea, starter, target_ph)
    blend = mix(((tea, 1.0 - share), (starter, share)))
    assert _phreeqc_ph(engine, blend, 25.0) == pytest.approx(target_ph, abs=0.001)


def test_citrate_standard_has_its_published_ph() -> None:
    """0.05 mol/kg potassium dihydrogen citrate, 3.776 at 25 degC.

    Staples & Bates 1969, J. Res. NBS 73A:37 (abstract).
    """
    standard = Blend(citric_mol_per_kg=0.05, strong_ion_excess_eq_per_kg=0.05)
    assert ph_of(standard, 25.0) == pytest.approx(3.776, abs=0.015)


def test_acetic_acid_has_the_handbook_ph(table) -> None:
    """Approximate pH of four strengths, one decimal: a laboratory reagent table."""
    rows = table("weak_acid_handbook_ph.csv")
    assert len(rows) == 4
    for row in rows:
        molality = row["normality"] / (1.0 - 0.06 * row["normality"])  # a mol takes some 60 mL
        assert ph_of(Blend(acetic_mol_per_kg=molality)) == pytest.approx(row["ph"], abs=0.051)


def test_vinegar_strength_acetic_acid_has_the_textbook_ph() -> None:
    """0.1 mol/L acetic acid: pH 2.88 (general chemistry textbooks, from memory)."""
    assert ph_of(Blend(acetic_mol_per_kg=0.1)) == pytest.approx(2.88, abs=0.01)


def test_pure_water_is_neutral_and_colder_water_less_acid() -> None:
    """Neutral point 7.00 at 25 and 7.47 at 0 degC (IAPWS R11-07, from memory)."""
    assert ph_of(Blend(), 25.0) == pytest.approx(7.0, abs=0.01)
    assert ph_of(Blend(), 0.0) == pytest.approx(7.47, abs=0.02)
    assert np.allclose(ph_of_many(np.zeros((3, 8)), 0.0), ph_of(Blend()), atol=1e-6)
