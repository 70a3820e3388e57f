"""A plan in ounces: the rows as shown add up, and an ounce is the legal one."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.amounts import Part, amount_rows
from brewdesk.services.wording.measures import ounce_words
from culturecore.sweettea import Starter, Wish, plan

GRAMS_PER_OUNCE = 28.349523125  # NIST Handbook 44, appendix C: the avoirdupois ounce, exact


def rows_of(wish: Wish):
    return {row.part: row for row in amount_rows(plan(wish), wish)}


@given(
    fill_l=st.floats(0.5, 40.0),
    sugar=st.floats(40.0, 100.0),
    tea=st.floats(2.0, 10.0),
)
def test_the_ounces_shown_add_up_to_the_total_shown(fill_l, sugar, tea):
    wish = Wish(fill_volume_l=fill_l, sugar_g_per_l=sugar, tea_g_per_l=tea, starter=Starter(ph=3.0))
    rows = rows_of(wish)
    shown = [row.mass_oz for part, row in rows.items() if part is not Part.TOTAL]
    assert sum(shown) == pytest.approx(rows[Part.TOTAL].mass_oz, abs=1e-6)


def test_an_ounce_is_the_legal_one():
    rows = rows_of(Wish(fill_volume_l=4.0, starter=Starter(ph=3.0)))
    for part in (Part.HOT_WATER, Part.SUGAR, Part.STARTER, Part.TOTAL):
        assert rows[part].mass_oz == pytest.approx(rows[part].mass_g / GRAMS_PER_OUNCE, abs=0.07)


def test_leaf_is_written_to_a_hundredth_of_an_ounce():
    rows = rows_of(Wish(fill_volume_l=4.0, starter=Starter(ph=3.0)))
    assert len(ounce_words(rows[Part.TEA]).split(".")[1]) == 2
    assert ounce_words(rows[Part.WET_LEAVES]).startswith("−")
