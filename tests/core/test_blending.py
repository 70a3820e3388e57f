"""Topping up and pouring together: balance of charge, of volume and of sugar."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import acidbase, startacid, sugar
from culturecore.blending import FreshTea, Liquid, dilution_share, poured_together, topped_up
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate
from culturecore.stages import TeaKind

LITRES = st.floats(0.01, 20.0)
PH = st.floats(2.6, 4.2)


def known(ph, doubt=0.1):
    return Estimate(ph, ph - doubt, ph + doubt)


def fresh(volume_l, sugar_g_per_l=60.0, tea_g_per_l=5.0, alkalinity=1.5):
    return FreshTea(
        volume_l=volume_l,
        sugar_g_per_l=sugar_g_per_l,
        tea_kind=TeaKind.BLACK,
        tea_g_per_l=tea_g_per_l,
        water_alkalinity_meq_per_l=alkalinity,
    )


@given(LITRES, LITRES, PH)
def test_volume_adds_up_and_fresh_tea_never_lowers_the_ph(jar_l, fresh_l, ph):
    after = topped_up(Liquid(volume_l=jar_l, ph=known(ph)), fresh(fresh_l))
    assert after.volume_l == pytest.approx(jar_l + fresh_l, abs=1e-12)
    assert after.ph.value >= ph - 1e-6
    assert after.ph.low < after.ph.value < after.ph.high


@given(LITRES, LITRES, st.floats(0.0, 80.0), st.floats(1.0, 120.0))
def test_the_grams_of_sugar_balance(jar_l, fresh_l, left, put_in):
    jar = Liquid(volume_l=jar_l, sugar_g_per_l=Estimate(left, left, left))
    after = topped_up(jar, fresh(fresh_l, sugar_g_per_l=put_in))
    grams = left * jar_l + put_in * fresh_l
    assert after.sugar_g_per_l.value * after.volume_l == pytest.approx(grams)


@given(LITRES, LITRES, PH, PH)
def test_the_blend_of_two_lies_between_them_and_does_not_depend_on_the_order(a_l, b_l, a, b):
    one, other = Liquid(volume_l=a_l, ph=known(a)), Liquid(volume_l=b_l, ph=known(b))
    there, back = poured_together(one, other), poured_together(other, one)
    assert there.volume_l == pytest.approx(a_l + b_l)
    assert min(a, b) - 1e-6 <= there.ph.value <= max(a, b) + 1e-6
    assert there.ph.value == pytest.approx(back.ph.value, abs=1e-8)
    assert there.ph.low == pytest.approx(back.ph.low, abs=1e-8)


def test_topping_up_is_the_charge_balance_of_starter_and_sweet_tea():
    """The same two liquids mixed by hand with the weak-acid equations that PHREEQC checks."""
    jar_l, fresh_l = 2.0, 1.0
    after = topped_up(Liquid(volume_l=jar_l, ph=known(3.1), ta_g_per_l=5.0), fresh(fresh_l))
    tea = acidbase.sweet_tea_blend(1.5, 5.0)
    starter = acidbase.starter_blend(3.1, 5.0)
    tea_kg = fresh_l * sugar.density_kg_per_l(sugar.brix_from_g_per_l(60.0))
    parts = ((starter, jar_l * startacid.STARTER_KG_PER_L), (tea, tea_kg))
    assert after.ph.value == pytest.approx(acidbase.ph_of(acidbase.mix(parts)), abs=1e-6)


def test_a_jar_whose_ph_is_less_sure_gives_a_less_sure_blend():
    sure = topped_up(Liquid(volume_l=2.0, ph=known(3.2, 0.02)), fresh(1.0))
    unsure = topped_up(Liquid(volume_l=2.0, ph=known(3.2, 0.5)), fresh(1.0))
    assert unsure.ph.high - unsure.ph.low > sure.ph.high - sure.ph.low


def test_what_is_unknown_stays_unknown():
    after = topped_up(Liquid(volume_l=2.0), fresh(1.0))
    assert (after.ph, after.sugar_g_per_l) == (None, None)
    mixed = poured_together(Liquid(volume_l=1.0, ph=known(3.0)), Liquid(volume_l=1.0))
    assert mixed.ph is None


@given(st.floats(0.0, 1.0), PH, PH)
def test_liquid_thins_by_no_more_than_fresh_tea_and_not_at_all_if_as_sour(share, here, coming):
    thinned = dilution_share(volume_share=share, ph_here=here, ph_coming=coming)
    assert 0.0 <= thinned <= share
    if coming <= here:
        assert thinned == 0.0


def test_sweeter_liquid_thins_more():
    mild, sweet = (
        dilution_share(volume_share=0.5, ph_here=2.9, ph_coming=coming) for coming in (3.3, 4.5)
    )
    assert 0.0 < mild < sweet < 0.5


@pytest.mark.parametrize("volume_l", [-0.1, float("nan"), float("inf")])
def test_no_volume_below_zero_or_without_end(volume_l):
    with pytest.raises(ImpossibleInput):
        topped_up(Liquid(volume_l=volume_l), fresh(1.0))
    with pytest.raises(ImpossibleInput):
        poured_together(Liquid(volume_l=1.0), Liquid(volume_l=volume_l))


def test_nothing_and_nothing_is_no_blend():
    with pytest.raises(ImpossibleInput):
        poured_together(Liquid(volume_l=0.0), Liquid(volume_l=0.0))
    with pytest.raises(ImpossibleInput):
        dilution_share(volume_share=1.2, ph_here=3.0, ph_coming=3.0)
