"""The souring model and the forecast against published courses of kombucha.

The files in ``cases/series`` keep the sources' columns: each row says where its number was
printed or read off. The priors rest on some of the same few papers, so agreement here shows
that nothing is broken; it is no independent proof.
"""

from __future__ import annotations

import csv
from pathlib import Path

import numpy as np
import pytest

from culturecore import souring
from culturecore.forecast import Conditions, Forecast, Observation, forecast
from culturecore.outcome import Caveat
from culturecore.stages import Quantity, TeaKind

SERIES = Path(__file__).parents[1] / "cases" / "series"
ACETIC_MEQ_PER_G = 1.0 / 0.06005
LACTIC_MEQ_PER_G = 1.0 / 0.09008
METER_SD_PH = 0.05
TYPICAL_EXCESS_MEQ_PER_L = 4.0


def rows(name):
    with (SERIES / name).open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def course(name, quantity):
    found = [(float(r["day"]), float(r["value"])) for r in rows(name) if r["quantity"] == quantity]
    assert len(found) >= 6
    return found


def conditions(sugar_g_per_l):
    """What the abstracts leave out is set to the usual: 25 degC, a tenth of starter."""
    return Conditions(
        volume_l=1.0,
        surface_cm2=80.0,
        starter_share=0.1,
        start_ph=None,
        starter_ta_g_per_l=None,
        temperature_c=25.0,
        sugar_g_per_l=sugar_g_per_l,
        tea_kind=TeaKind.BLACK,
    )


def hafsari_forecast(known_readings) -> Forecast:
    observations = [
        Observation(day=day, quantity=Quantity.PH, value=value, sd=METER_SD_PH)
        for day, value in known_readings
    ]
    return forecast(conditions(70.0), observations)


def held(answer, curves, day, value, slack=0.0):
    at = answer.days.index(day)
    return curves[0.1][at] - slack <= value <= curves[0.9][at] + slack


def days_of_ph(answer, ph):
    """The days on which the lower and the upper edge of the band reach a pH."""
    days = np.array(answer.days)
    return [float(np.interp(-ph, -np.array(answer.ph[q]), days)) for q in (0.1, 0.9)]


@pytest.fixture(scope="module")
def hafsari():
    """Hafsari et al. 2021, Gunung Djati Conf. Ser. 6: black tea, pH of days 0 to 15."""
    return course("hafsari_2021_black_mean.csv", "pH")


@pytest.mark.parametrize("last_read_day", [6.0, 9.0])
def test_later_ph_lies_in_the_band_once_the_wait_has_shown(hafsari, last_read_day):
    answer = hafsari_forecast([r for r in hafsari if r[0] <= last_read_day])
    assert Caveat.UNLIKE_KNOWN not in answer.caveats
    later = [r for r in hafsari if r[0] > last_read_day]
    assert all(held(answer, answer.ph, day, value) for day, value in later)
    assert len(later) >= 2


def test_later_ph_lies_within_a_meters_error_of_the_band_after_day_3(hafsari):
    """The waiting jar has only begun to show itself: day 6 touches the upper edge."""
    answer = hafsari_forecast([r for r in hafsari if r[0] <= 3.0])
    later = [r for r in hafsari if r[0] > 3.0]
    assert all(held(answer, answer.ph, *r, slack=METER_SD_PH) for r in later)
    assert sum(held(answer, answer.ph, *r) for r in later) >= 3


def test_the_day_of_ph_3_1_is_foreseen_from_the_first_week(hafsari):
    # Between 3.24 on day 9 and 3.09 on day 12 the course passes 3.10 on day 11.8.
    earliest, latest = days_of_ph(hafsari_forecast([r for r in hafsari if r[0] <= 6.0]), 3.1)
    assert earliest <= 11.8 <= latest
    unread_earliest, unread_latest = days_of_ph(forecast(conditions(70.0), []), 3.1)
    assert latest - earliest < 0.75 * (unread_latest - unread_earliest)


def test_the_whole_course_is_believable_from_the_recipe_alone(hafsari):
    answer = forecast(conditions(70.0), [])
    assert all(held(answer, answer.ph, day, value) for day, value in hafsari)


def test_no_hafsari_reading_is_suspected(hafsari):
    assert hafsari_forecast(hafsari).suspects == ()


ACID_COURSES = [
    # Chen & Liu 2000, J. Appl. Microbiol. 89:834, mean of nine cultures
    ("chen_liu_2000_mean9.csv", 99.0),
    # Sievers et al. 1995, Syst. Appl. Microbiol. 18:590, stirred
    ("sievers_1995_agitated.csv", 68.0),
]


@pytest.mark.parametrize(("name", "sugar_g_per_l"), ACID_COURSES)
def test_acid_of_the_third_week_follows_from_the_first(name, sugar_g_per_l):
    """Least squares of the model on days 0 to 9, with its usual curvature, foretells 10 to 20."""
    points = np.array(course(name, "acid_sum_g_per_L_as_acetic_DERIVED"))
    days, acid = points[:, 0], points[:, 1] * ACETIC_MEQ_PER_G
    formed = souring.acid_meq_per_l(
        days, start_meq_per_l=0.0, rate_meq_per_l_day=1.0, curvature=1.3
    )
    early = days <= 9.0
    design = np.column_stack([np.ones_like(days), formed])
    (start, rate), *_ = np.linalg.lstsq(design[early], acid[early], rcond=None)
    told = souring.acid_meq_per_l(
        days[~early], start_meq_per_l=start, rate_meq_per_l_day=rate, curvature=1.3
    )
    # The authors' curves are smooth means read off a figure; 10 % is what a reading allows.
    assert told == pytest.approx(acid[~early], rel=0.10)
    assert 2.5 <= rate <= 10.5  # range of the published rates, meq/L/day


@pytest.mark.parametrize(("name", "sugar_g_per_l"), ACID_COURSES)
def test_later_acidity_lies_in_the_band_of_the_first_nine_days(name, sugar_g_per_l):
    """Acid sums are taken as titratable after taking off the part that tea neutralises."""
    neutralised = TYPICAL_EXCESS_MEQ_PER_L * souring.ACETIC_G_PER_MEQ
    points = [
        (day, max(value - neutralised, 0.0))
        for day, value in course(name, "acid_sum_g_per_L_as_acetic_DERIVED")
    ]
    known = [
        Observation(day=day, quantity=Quantity.TA_G_PER_L, value=value, sd=0.15)
        for day, value in points
        if day <= 9.0
    ]
    answer = forecast(conditions(sugar_g_per_l), known)
    later = [p for p in points if p[0] > 9.0]
    assert all(held(answer, answer.ta_g_per_l, day, value) for day, value in later)
    assert len(later) >= 2


@pytest.mark.parametrize(("name", "sugar_g_per_l"), ACID_COURSES)
def test_sucrose_and_ethanol_stay_within_their_wide_bounds(name, sugar_g_per_l):
    for day, value in course(name, "sucrose_g_per_L"):
        left = souring.sucrose_left_g_per_l(
            day=day, sugar_g_per_l=sugar_g_per_l, temperature_c=25.0
        )
        # 3 g/L is what a marker in the figure can be off by
        assert left.low - 3.0 <= value <= left.high + 3.0
    for day, value in course(name, "ethanol_percent_vv"):
        # the starter brought about 0.1 % on day 0, which the estimate leaves out
        ethanol = souring.ethanol_percent(day=day, temperature_c=25.0)
        assert ethanol.low <= value <= ethanol.high + 0.11


@pytest.fixture(scope="module")
def bottles():
    """47 bottled drinks, Sogin & Worobo 2024 (data repository, MIT): pH, acetic, lactic."""
    found = [r for r in rows("ph_ta_pairs.csv") if r["source_key"] == "sogin_worobo_2024"]
    assert len(found) == 47
    return [r for r in found if not r["doubt"]]  # one acetic value, 11.71 g/L, looks wrong


def test_bottled_ph_follows_from_the_acids_alone(bottles):
    """Lactic acid (pK 3.86) stands in gluconic acid's place (3.70): at most 0.1 pH.

    Juice acids and potassium were not measured, which is worth 0.2 to 0.3 pH either way.
    """
    measured = np.array([float(r["pH"]) for r in bottles])
    acetic = np.array([float(r["acetic_g_per_L"]) for r in bottles]) * ACETIC_MEQ_PER_G
    lactic = np.array([float(r["lactic_g_per_L"]) for r in bottles]) * LACTIC_MEQ_PER_G
    acid, share = acetic + lactic, lactic / (acetic + lactic)
    told = souring.ph_of_acid(acid, gluconic_share=share, strong_ion_excess_meq_per_l=0.0)
    off = measured - told
    assert np.sqrt(np.mean(off**2)) < 0.3
    assert abs(np.median(off)) < 0.15
    implied = souring.strong_ion_excess_meq_per_l(
        ph=measured, acid_meq_per_l=acid, gluconic_share=share
    )
    assert -1.0 < np.quantile(implied, 0.1) < np.quantile(implied, 0.9) < 6.0


def test_a_titrated_black_tea_kombucha_has_a_believable_strong_ion_excess():
    """Kustyawati & Ramli: pH 2.99 at 3.31 g/L as acetic, day 15; below the tea's few meq/L."""
    black = next(
        r
        for r in rows("ph_ta_pairs.csv")
        if (r["source_key"], r["sample"]) == ("kustyawati_ramli", "black")
    )
    free = float(black["ta_g_per_L_as_acetic"]) * ACETIC_MEQ_PER_G
    for share in (0.0, 0.29, 0.6):
        # the titrated part is free acid: the total is larger by the excess itself
        excess = 0.0
        for _ in range(40):
            excess = float(
                souring.strong_ion_excess_meq_per_l(
                    ph=float(black["pH"]), acid_meq_per_l=free + excess, gluconic_share=share
                )
            )
        assert -1.0 < excess < 10.0
