"""Laws of blends: what adds up, what is monotone, what comes back. PHREEQC is in published."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import acidarrays, acidbase
from culturecore.acidarrays import ph_of_many
from culturecore.acidbase import (
    BRACKET_PH,
    MAX_STRONG,
    Blend,
    buffer_capacity_eq_per_kg,
    mix,
    ph_of,
    starter_blend,
    starter_fraction_for,
    strong_ions_needed_eq_per_kg,
    sweet_tea_blend,
    titratable_acidity_g_per_l,
)
from culturecore.acidconstants import ACIDS, constants_at
from culturecore.errors import ImpossibleInput

STARTER_PH = st.floats(2.4, 3.6)
TA = st.floats(1.0, 20.0)
GLUCONIC = st.floats(0.0, 0.8)
ALKALINITY = st.floats(0.0, 6.0)
TEA = st.floats(1.0, 12.0)


@given(ph=STARTER_PH, ta=TA, gluconic=GLUCONIC, temperature_c=st.floats(10.0, 35.0))
def test_starter_has_the_ph_and_acidity_it_was_made_from(
    ph: float, ta: float, gluconic: float, temperature_c: float
) -> None:
    starter = starter_blend(ph, ta, gluconic, temperature_c=temperature_c)
    assert ph_of(starter, temperature_c) == pytest.approx(ph, abs=1e-6)
    assert titratable_acidity_g_per_l(starter, temperature_c) == pytest.approx(ta, rel=1e-6)


@given(ph=STARTER_PH, gluconic=st.floats(0.1, 0.8), excess=st.floats(0.0, 0.02))
def test_starter_without_titration_has_the_assumed_ions(
    ph: float, gluconic: float, excess: float
) -> None:
    starter = starter_blend(ph, None, gluconic, strong_ion_excess_eq_per_kg=excess)
    assert starter.strong_ion_excess_eq_per_kg == pytest.approx(excess, abs=1e-8)
    assert ph_of(starter) == pytest.approx(ph, abs=1e-5)


def test_ph_alone_leaves_the_acidity_wide_open() -> None:
    acidities = [
        titratable_acidity_g_per_l(
            starter_blend(3.0, None, share, strong_ion_excess_eq_per_kg=0.002)
        )
        for share in (0.0, 0.3, 0.6)
    ]
    assert acidities == sorted(acidities, reverse=True)
    assert acidities[0] > 4.0 * acidities[2]


@given(
    ph=STARTER_PH, ta=TA, alkalinity=ALKALINITY, tea=TEA, shares=st.tuples(*[st.floats(0, 1)] * 2)
)
def test_more_starter_is_never_less_acid(
    ph: float, ta: float, alkalinity: float, tea: float, shares: tuple[float, float]
) -> None:
    sweet_tea, starter = sweet_tea_blend(alkalinity, tea), starter_blend(ph, ta)
    low, high = sorted(shares)
    less, more = (ph_of(mix(((sweet_tea, 1.0 - share), (starter, share)))) for share in (low, high))
    assert more <= less + 1e-9


@given(ph=STARTER_PH, ta=TA, alkalinity=ALKALINITY, tea=TEA, target=st.floats(3.7, 4.6))
def test_starter_share_for_a_ph_gives_that_ph(
    ph: float, ta: float, alkalinity: float, tea: float, target: float
) -> None:
    sweet_tea, starter = sweet_tea_blend(alkalinity, tea), starter_blend(ph, ta)
    share = starter_fraction_for(sweet_tea, starter, target)
    assert 0.0 < share < 1.0
    blend = mix(((sweet_tea, 1.0 - share), (starter, share)))
    assert ph_of(blend) == pytest.approx(target, abs=1e-6)


def test_tea_that_is_acid_enough_takes_no_starter() -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        starter_fraction_for(Blend(acetic_mol_per_kg=0.01), starter_blend(3.0, 8.0), 4.2)
    assert refusal.value.reason == "already_below"


def test_mild_starter_cannot_reach_a_low_ph() -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        starter_fraction_for(sweet_tea_blend(1.0, 4.0), starter_blend(4.0, 2.0), 3.5)
    assert refusal.value.reason == "starter_not_acid_enough"


@given(st.lists(st.floats(0.0, 0.05), min_size=8, max_size=8), st.floats(-0.5, 0.5))
def test_ph_balances_the_charges(acids: list[float], excess: float) -> None:
    blend = Blend(
        **{f"{acid}_mol_per_kg": amount for acid, amount in zip(ACIDS, acids, strict=True)},
        strong_ion_excess_eq_per_kg=excess,
    )
    ph = ph_of(blend)
    assert strong_ions_needed_eq_per_kg(blend, ph) == pytest.approx(excess, abs=1e-8)


@given(
    st.lists(
        st.tuples(*[st.floats(0.0, 0.05)] * 8, st.floats(-0.005, 0.05), st.floats(0.0, 0.02)),
        min_size=1,
        max_size=5,
    ),
    st.floats(0.0, 60.0),
)
def test_arrays_give_what_single_blends_give(
    rows: list[tuple[float, ...]], temperature_c: float
) -> None:
    many = ph_of_many(
        [row[:8] for row in rows],
        [row[8] for row in rows],
        temperature_c,
        inert_salt_mol_per_kg=[row[9] for row in rows],
    )
    singles = [
        ph_of(
            Blend(
                **{f"{a}_mol_per_kg": x for a, x in zip(ACIDS, row[:8], strict=True)},
                strong_ion_excess_eq_per_kg=row[8],
                inert_salt_mol_per_kg=row[9],
            ),
            temperature_c,
        )
        for row in rows
    ]
    assert many == pytest.approx(singles, abs=1e-6)


@pytest.mark.parametrize(
    ("acids", "excess", "salt"),
    [
        ([[-1e-3] * 8], 0.0, 0.0),
        ([[math.nan] * 8], 0.0, 0.0),
        ([[0.01] * 7], 0.0, 0.0),
        ([[0.01] * 8], 0.6, 0.0),
        ([[0.01] * 8], math.nan, 0.0),
        ([[0.01] * 8], 0.0, -1.0),
        ([[10.0] * 8], 0.0, 0.0),
        ([[0.01] * 8], [0.0, 0.0], 0.0),
        ([[[0.01] * 8]], 0.0, 0.0),
    ],
)
def test_arrays_refuse_impossible_amounts(acids, excess: float, salt: float) -> None:
    with pytest.raises(ImpossibleInput):
        ph_of_many(acids, excess, inert_salt_mol_per_kg=salt)


# from traces to vinegar essence, and every balance of strong ions up to the last that is allowed
AMOUNTS = st.one_of(st.just(0.0), st.floats(-12.0, 0.99).map(lambda power: 10.0**power))
EXCESSES = st.one_of(
    st.sampled_from([-MAX_STRONG, MAX_STRONG, 0.0, 1e-9, -1e-9]),
    st.floats(-MAX_STRONG, MAX_STRONG),
)
EXTREMES = {
    "acids": st.lists(AMOUNTS, min_size=8, max_size=8),
    "excess": EXCESSES,
    "salt": st.sampled_from([0.0, 1e-6, MAX_STRONG]),
    "temperature_c": st.sampled_from([0.0, 25.0, 60.0]),
}


def _extreme(acids: list[float], excess: float, salt: float) -> Blend:
    return Blend(
        **{f"{acid}_mol_per_kg": amount for acid, amount in zip(ACIDS, acids, strict=True)},
        strong_ion_excess_eq_per_kg=excess,
        inert_salt_mol_per_kg=salt,
    )


def _charge_left(blend: Blend, ph: float, temperature_c: float) -> float:
    """What is left of the balance at a pH, relative to the charges there are."""
    constants = constants_at(temperature_c)
    ionic = acidbase._settled_ionic_strength(blend, ph, constants)
    charge, _buffer, _ionic = acidbase._imbalance(
        blend, blend.strong_ion_excess_eq_per_kg, ph, ionic, constants
    )
    return charge / ionic


@settings(max_examples=300)
@given(**EXTREMES)
def test_arrays_balance_whatever_is_allowed(
    acids: list[float], excess: float, salt: float, temperature_c: float
) -> None:
    (ph,) = ph_of_many([acids], excess, temperature_c, inert_salt_mol_per_kg=salt)
    assert BRACKET_PH[0] < ph < BRACKET_PH[1]
    assert abs(_charge_left(_extreme(acids, excess, salt), ph, temperature_c)) < 1e-6


@settings(max_examples=100)
@given(**EXTREMES)
def test_single_blends_balance_whatever_is_allowed(
    acids: list[float], excess: float, salt: float, temperature_c: float
) -> None:
    blend = _extreme(acids, excess, salt)
    assert abs(_charge_left(blend, ph_of(blend, temperature_c), temperature_c)) < 1e-6


@settings(max_examples=25, deadline=None)
@given(**EXTREMES)
def test_halving_finds_what_newton_finds(
    acids: list[float], excess: float, salt: float, temperature_c: float
) -> None:
    blend = _extreme(acids, excess, salt)
    slow = acidbase._ph_by_halving(blend, constants_at(temperature_c))
    assert abs(_charge_left(blend, slow, temperature_c)) < 1e-6


def test_blends_that_newton_leaves_open_are_halved(monkeypatch) -> None:
    monkeypatch.setattr(acidbase, "NEWTON_ROUNDS", 0)
    monkeypatch.setattr(acidarrays, "NEWTON_ROUNDS", (1, 0))
    blends = [starter_blend(3.0, 8.0), sweet_tea_blend(1.5, 4.0), Blend()]
    many = ph_of_many(
        [blend.acids_mol_per_kg for blend in blends],
        [blend.strong_ion_excess_eq_per_kg for blend in blends],
    )
    singles = [ph_of(blend) for blend in blends]
    monkeypatch.undo()
    assert many == pytest.approx([ph_of(blend) for blend in blends], abs=1e-7)
    assert singles == pytest.approx([ph_of(blend) for blend in blends], abs=1e-7)


def test_arrays_longer_than_a_block_are_solved_row_by_row() -> None:
    """Each row with a temperature of its own, against the single blend."""
    rng = np.random.default_rng(20261125)
    count = 2 * acidarrays.BLOCK + 3
    totals = rng.uniform(0.0, 0.05, (count, 8))
    excess = rng.uniform(0.0, 0.6, count) * totals.sum(axis=1)
    temperature_c = rng.uniform(0.0, 60.0, count)
    many = ph_of_many(totals, excess, temperature_c)
    for row in (0, acidarrays.BLOCK, count - 1):
        single = ph_of(_extreme(list(totals[row]), excess[row], 0.0), temperature_c[row])
        assert many[row] == pytest.approx(single, abs=1e-7)


def test_no_blends_have_no_ph() -> None:
    assert ph_of_many(np.empty((0, 8)), 0.0).shape == (0,)


def test_mixing_keeps_every_amount() -> None:
    one = starter_blend(3.0, 8.0)
    two = sweet_tea_blend(2.0, 5.0)
    blend = mix(((one, 0.5), (two, 1.5)))
    for name in ("acetic_mol_per_kg", "carbonic_mol_per_kg", "strong_ion_excess_eq_per_kg"):
        kept = 0.5 * getattr(one, name) + 1.5 * getattr(two, name)
        assert 2.0 * getattr(blend, name) == pytest.approx(kept)


@pytest.mark.parametrize("masses", [(-1.0, 1.0), (0.0, 0.0), (math.nan, 1.0), (math.inf, 1.0)])
def test_impossible_masses_do_not_mix(masses: tuple[float, float]) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        mix((Blend(), mass) for mass in masses)
    assert refusal.value.field == "mass_kg"


def test_buffer_capacity_is_the_slope_of_the_titration() -> None:
    starter = starter_blend(3.0, 8.0)
    step = 1e-5
    more = replace(starter, strong_ion_excess_eq_per_kg=starter.strong_ion_excess_eq_per_kg + step)
    slope = step / (ph_of(more) - ph_of(starter))
    assert buffer_capacity_eq_per_kg(starter) == pytest.approx(slope, rel=0.05)
    assert buffer_capacity_eq_per_kg(starter, ph=4.6) > 2.0 * slope


def test_harder_water_makes_tea_less_acid() -> None:
    values = [ph_of(sweet_tea_blend(alkalinity, 4.0)) for alkalinity in (0.0, 0.5, 1.5, 4.0)]
    assert values == sorted(values)
    assert values[0] == pytest.approx(4.95, abs=1e-6)


def test_water_without_leaf_is_water() -> None:
    assert ph_of(sweet_tea_blend(0.0, 0.0)) == pytest.approx(ph_of(Blend()), abs=1e-9)


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda: ph_of(Blend(acetic_mol_per_kg=-0.1)), "acetic_mol_per_kg"),
        (lambda: ph_of(Blend(citric_mol_per_kg=math.nan)), "citric_mol_per_kg"),
        (
            lambda: ph_of(Blend(strong_ion_excess_eq_per_kg=math.nan)),
            "strong_ion_excess_eq_per_kg",
        ),
        (lambda: ph_of(Blend(strong_ion_excess_eq_per_kg=0.51)), "strong_ion_excess_eq_per_kg"),
        (lambda: ph_of(Blend(strong_ion_excess_eq_per_kg=-0.51)), "strong_ion_excess_eq_per_kg"),
        (lambda: ph_of(Blend(inert_salt_mol_per_kg=-1.0)), "inert_salt_mol_per_kg"),
        (lambda: ph_of(Blend(), 61.0), "temperature_c"),
        (lambda: constants_at(math.nan), "temperature_c"),
        (lambda: strong_ions_needed_eq_per_kg(Blend(), 15.0), "ph"),
        (lambda: starter_blend(1.0, 8.0), "ph"),
        (lambda: starter_blend(3.0, -1.0), "ta_g_per_l"),
        (lambda: starter_blend(3.0, 8.0, 1.5), "gluconic_share"),
        (
            lambda: starter_blend(3.0, None, strong_ion_excess_eq_per_kg=-1.0),
            "strong_ion_excess_eq_per_kg",
        ),
        (lambda: sweet_tea_blend(-1.0, 4.0), "alkalinity_meq_per_l"),
        (lambda: sweet_tea_blend(1.0, math.nan), "tea_g_per_l"),
        (lambda: sweet_tea_blend(1.0, 4.0, tea_acid_mol_per_g=1.0), "tea_acid_mol_per_g"),
        (lambda: sweet_tea_blend(1.0, 4.0, tea_ph_in_pure_water=9.0), "tea_ph_in_pure_water"),
        (lambda: buffer_capacity_eq_per_kg(Blend(), ph=-1.0), "ph"),
        (lambda: starter_fraction_for(Blend(), Blend(), math.nan), "target_ph"),
    ],
)
def test_impossible_liquids_are_refused(call, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field
