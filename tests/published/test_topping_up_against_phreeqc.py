"""Fresh sweet tea into a soured jar, against PHREEQC's own mixing of the two solutions."""

from __future__ import annotations

import pytest

from culturecore import startacid, sugar
from culturecore.blending import FreshTea, Liquid, topped_up
from culturecore.outcome import Estimate
from culturecore.stages import TeaKind

SUGAR_G_PER_L = 60.0  # no acid: it only makes the tea heavier


def test_the_ph_of_a_topped_up_jar_is_that_of_phreeqc(table) -> None:
    rows = table("topped_up_phreeqc.csv")
    assert len(rows) == 24
    tea_kg_per_l = sugar.density_kg_per_l(sugar.brix_from_g_per_l(SUGAR_G_PER_L))
    for row in rows:
        ph = row["jar_ph"]
        after = topped_up(
            Liquid(
                volume_l=row["jar_kg"] / startacid.STARTER_KG_PER_L,
                ph=Estimate(ph, ph, ph),
                ta_g_per_l=row["jar_ta_g_per_l"],
            ),
            FreshTea(
                volume_l=row["tea_kg"] / tea_kg_per_l,
                sugar_g_per_l=SUGAR_G_PER_L,
                tea_kind=TeaKind.BLACK,
                tea_g_per_l=row["tea_g_per_l"],
                water_alkalinity_meq_per_l=row["alkalinity_meq_per_l"],
            ),
        )
        assert after.ph is not None
        assert after.ph.value == pytest.approx(row["ph"], abs=0.005)
        assert after.ph.low < row["ph"] < after.ph.high
