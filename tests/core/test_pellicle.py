"""The film on top: it only grows, its bounds stand in order, and a ruler outweighs belief."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.forecast import Conditions
from culturecore.outcome import Caveat
from culturecore.pellicle import (
    FILM_SOURCES,
    QUANTILES,
    FilmReading,
    film_forecast,
    wet_thickness_mm,
)
from culturecore.sources import Standing
from culturecore.stages import TeaKind

JAR = Conditions(
    volume_l=3.0,
    surface_cm2=150.0,
    starter_share=0.12,
    start_ph=None,
    starter_ta_g_per_l=None,
    temperature_c=25.0,
    sugar_g_per_l=60.0,
    tea_kind=TeaKind.BLACK,
)


def film(*readings, jar=JAR, is_lively=True, **options):
    return film_forecast(jar, readings, is_lively=is_lively, **options)


def measured(day, thickness_mm, sd_mm=0.5):
    return FilmReading(day=day, thickness_mm=thickness_mm, sd_mm=sd_mm)


def on(made, day, share=0.5):
    return made.thickness_mm[share][made.days.index(day)]


def test_a_lively_jar_has_a_first_film_in_3_to_5_days_and_raw_kombucha_in_5_to_10():
    lively, raw = film().first_film_day, film(is_lively=False).first_film_day
    assert (lively.low, lively.high) == (pytest.approx(3.0, abs=0.2), pytest.approx(5.0, abs=0.2))
    assert (raw.low, raw.high) == (pytest.approx(5.0, abs=0.3), pytest.approx(10.0, abs=0.4))


def test_it_is_usable_in_two_to_three_weeks():
    assert 3.0 <= on(film(), 17.0) <= 5.0
    assert 12.0 < film().usable_day.value < 21.0
    assert 14.0 < film(is_lively=False).usable_day.value < 24.0


def test_its_bounds_rest_on_named_sources_and_say_what_is_assumed():
    first = film().first_film_day
    assert {FILM_SOURCES[key].standing for key in first.sources} == {
        Standing.READ,
        Standing.ASSUMPTION,
    }
    assert all(source.key == key for key, source in FILM_SOURCES.items())
    assert first.caveats == (Caveat.RECIPE_ONLY,)
    assert film(measured(10.0, 3.0)).first_film_day.caveats == ()


@settings(max_examples=30, deadline=None)
@given(
    volume_l=st.floats(0.3, 30.0),
    surface_cm2=st.floats(20.0, 2000.0),
    share=st.floats(0.0, 0.5),
    temperature_c=st.floats(16.0, 34.0),
    is_lively=st.booleans(),
    readings=st.lists(
        st.tuples(st.floats(0.0, 30.0), st.floats(0.0, 30.0), st.floats(0.0, 3.0)), max_size=4
    ),
    old_mm=st.sampled_from([0.0, 6.0]),
)
def test_it_never_gets_thinner_and_its_bounds_stand_in_order(
    volume_l, surface_cm2, share, temperature_c, is_lively, readings, old_mm
):
    jar = replace(
        JAR,
        volume_l=volume_l,
        surface_cm2=surface_cm2,
        starter_share=share,
        temperature_c=temperature_c,
    )
    made = film(
        *(measured(*reading) for reading in readings),
        jar=jar,
        is_lively=is_lively,
        old_pellicle_mm=old_mm,
    )
    for share_of in QUANTILES:
        curve = made.thickness_mm[share_of]
        assert all(math.isfinite(mm) and mm >= 0.0 for mm in curve)
        assert list(curve) == sorted(curve)
    for thicknesses in zip(*(made.thickness_mm[q] for q in QUANTILES), strict=True):
        assert list(thicknesses) == sorted(thicknesses)
    first = made.first_film_day
    assert 0.0 < first.low <= first.value <= first.high
    assert made.late_day > 0.0


def test_warmth_and_more_starter_bring_it_sooner():
    warm, cool = (film(jar=replace(JAR, temperature_c=degrees)) for degrees in (28.0, 20.0))
    assert warm.first_film_day.value < film().first_film_day.value < cool.first_film_day.value
    assert warm.late_day < cool.late_day
    assert on(warm, 14.0) > on(cool, 14.0)
    little = film(jar=replace(JAR, starter_share=0.04))
    assert film().first_film_day.value < little.first_film_day.value
    much = film(jar=replace(JAR, starter_share=0.3))
    assert much.first_film_day == film().first_film_day


def test_a_warm_spell_that_was_logged_counts():
    warmed = replace(JAR, temperature_c=20.0, temperature_course=((0.0, 29.0), (4.0, 29.0)))
    cool = film(jar=replace(JAR, temperature_c=20.0))
    assert film(jar=warmed).first_film_day.value < cool.first_film_day.value - 0.5


def test_a_shallow_jar_feeds_a_thinner_film_in_the_end():
    shallow = film(jar=replace(JAR, surface_cm2=1000.0))
    assert on(shallow, 30.0) < on(film(), 30.0)
    assert on(shallow, 30.0, 0.9) < 12.0
    assert on(shallow, 5.0) == pytest.approx(on(film(), 5.0), abs=0.1)


def test_a_film_too_thin_for_use_in_time_has_no_such_day():
    assert film(jar=replace(JAR, surface_cm2=2900.0)).usable_day is None


def test_a_measured_thickness_narrows_what_is_expected():
    thick = film(measured(10.0, 5.0))
    assert on(thick, 10.0) > on(film(), 10.0) + 1.0
    spread, before = (on(made, 14.0, 0.9) / on(made, 14.0, 0.1) for made in (thick, film()))
    assert spread < 0.6 * before


def test_no_film_seen_puts_the_first_one_off():
    none = film(measured(8.0, 0.0), is_lively=False)
    assert none.first_film_day.value > film(is_lively=False).first_film_day.value + 0.5
    assert on(none, 8.0) < 0.1


def test_the_day_of_worry_is_that_of_like_jars_whatever_was_seen_here():
    none = film(measured(8.0, 0.0), is_lively=False)
    assert none.late_day == film(is_lively=False).late_day
    assert 10.0 < none.late_day < 12.0


def test_a_ruler_may_have_measured_the_old_pellicle_too():
    both = film(measured(8.0, 8.0), old_pellicle_mm=6.0)
    assert on(both, 8.0) < 4.0
    assert on(film(measured(8.0, 8.0)), 8.0) > on(both, 8.0)


def test_a_thickness_like_no_film_leaves_wide_bounds():
    odd = film(measured(4.0, 60.0), measured(6.0, 0.0), measured(8.0, 60.0))
    assert on(odd, 14.0, 0.9) > 3.0 * on(odd, 14.0, 0.1)


def test_wet_mass_becomes_thickness_by_the_surface_it_lies_on():
    # 100 g of wet film on 100 cm2 is 1 cm thick.
    assert wet_thickness_mm(100.0, 1.0, 100.0) == pytest.approx(10.0)
    assert wet_thickness_mm(100.0, 2.0, 100.0) == pytest.approx(20.0)


@pytest.mark.parametrize(
    "call",
    [
        lambda: film(jar=replace(JAR, temperature_c=math.nan)),
        lambda: film(jar=replace(JAR, starter_share=1.5)),
        lambda: film(measured(3.0, -1.0)),
        lambda: film(measured(math.inf, 1.0)),
        lambda: film(measured(3.0, 1.0, -0.1)),
        lambda: film(old_pellicle_mm=-1.0),
        lambda: film(horizon_days=0.0),
        lambda: wet_thickness_mm(-1.0, 1.0, 100.0),
        lambda: film(jar=replace(JAR, surface_cm2=0.0)),
    ],
)
def test_what_no_jar_can_have_is_refused(call):
    with pytest.raises(ImpossibleInput):
        call()
