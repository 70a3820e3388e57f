"""The film's bounds against the few figures that were published; most lack the vessel.

Only abstracts were read, so each check is as coarse as they are.
"""

from __future__ import annotations

import pytest

from culturecore import pellicle
from culturecore.forecast import Conditions
from culturecore.pellicle import film_forecast, wet_thickness_mm
from culturecore.stages import TeaKind


def film(*, is_lively, temperature_c=25.0, starter_share=0.1):
    return film_forecast(
        Conditions(
            volume_l=1.0,
            surface_cm2=100.0,
            starter_share=starter_share,
            start_ph=None,
            starter_ta_g_per_l=None,
            temperature_c=temperature_c,
            sugar_g_per_l=80.0,
            tea_kind=TeaKind.GREEN,
        ),
        is_lively=is_lively,
    )


def test_films_were_seen_between_days_6_and_9():
    """Coatings 2020, 10(11):1132, abstract: two consortia in green tea; temperature not given."""
    first = film(is_lively=False).first_film_day
    assert first.low < 6.0
    assert 6.0 < first.value < 9.0
    assert first.high > 9.0


def test_from_washed_cells_a_film_shows_only_after_day_6():
    """Huang, Xin and Lu 2022, eLife 11:76401, at 25 °C: cells alone are slower than liquid."""
    raw = film(is_lively=False)
    assert raw.first_film_day.high > 6.0
    assert raw.late_day > 6.0
    assert film(is_lively=True).first_film_day.high < 6.0


def test_what_a_litre_feeds_spans_the_published_wet_masses():
    """Agustina and Boontawan 2026, Trends Sci. 23(2):11128, abstract: after 15 d at 30 °C."""
    least, most = 74.53, 259.54
    spread = pellicle.MOST_WET_FACTOR**1.2816
    assert pellicle.MOST_WET_G_PER_L / spread == pytest.approx(least, rel=0.05)
    assert pellicle.MOST_WET_G_PER_L * spread == pytest.approx(most, rel=0.05)


def test_the_pace_overlaps_with_the_published_fastest_growth():
    """Processes 2024, 12(7):1301, abstract: 7.3 to 10.0 g/L a day at its fastest.

    The vessel is not given; a beaker filled 5 cm high is taken, where a film lies on little.
    """
    slow, fast = (wet_thickness_mm(grams, 0.5, 100.0) for grams in (7.3, 10.0))
    spread = pellicle.GROWTH_FACTOR**1.2816
    assert pellicle.GROWTH_MM_PER_DAY / spread < slow < pellicle.GROWTH_MM_PER_DAY * spread
    assert pellicle.GROWTH_MM_PER_DAY / spread < fast < pellicle.GROWTH_MM_PER_DAY * spread


def test_the_thinnest_published_film_lies_among_those_held_possible():
    """Agustina and Boontawan 2026 again, as a thickness at 10 cm of depth (not given there)."""
    warm = film(is_lively=True, temperature_c=30.0)
    at = warm.days.index(15.0)
    thinnest = wet_thickness_mm(74.53, 1.0, 100.0)
    assert warm.thickness_mm[0.1][at] < thinnest < warm.thickness_mm[0.9][at]
