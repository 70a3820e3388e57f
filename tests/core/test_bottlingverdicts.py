"""Verdicts on a bottling as a whole, each with its words."""

from __future__ import annotations

from dataclasses import replace

import pytest

from brewdesk.services.wording.verdicts import verdict_words
from culturecore import bottleverdicts
from culturecore import bottlingverdicts as bottling
from culturecore.bottle import Filling
from culturecore.bottlecourse import course_of
from culturecore.bottled import Bottled
from culturecore.outcome import Estimate, Level
from culturecore.sources import SOURCES

SWEET = Bottled(
    filling=Filling(brim_volume_l=0.5, headspace_share=0.04),
    ceiling_bar=3.7,
    sugar_low_g_per_l=15.0,
    sugar_high_g_per_l=30.0,
)
COURSE = course_of(SWEET)
DRY = course_of(replace(SWEET, sugar_low_g_per_l=0.0, sugar_high_g_per_l=0.5))
HOT = course_of(replace(SWEET, ceiling_bar=0.8, place_temperature_c=35.0, warmest_c=38.0))


def test_no_time_is_a_stop_only_when_chilling_would_come_too_late():
    assert bottling.no_time_verdict(COURSE) is None
    assert bottling.no_time_verdict(DRY) is None
    found = bottling.no_time_verdict(HOT)
    assert found is not None
    assert found.level is Level.STOP
    assert found.numbers["hours"] < found.numbers["least_hours"]


def test_bottles_in_the_cold_are_warned_of_only_past_their_day():
    first = COURSE.chill_by_day
    assert first is not None
    assert bottling.cold_verdict(COURSE, day=first - 0.1) is None
    assert bottling.cold_verdict(DRY, day=30.0) is None
    found = bottling.cold_verdict(COURSE, day=first)
    assert found is not None
    assert found.code == "bottles_over_in_the_cold"


def test_standing_bottles_go_from_later_to_right_to_now():
    slow = replace(SWEET, warmest_c=22.0)
    course = course_of(slow)
    codes = [
        bottling.standing_verdict(course, day=day / 4.0, target_volumes=2.0).code
        for day in range(24)
    ]
    order = ["chill_later", "chill_once_right", "chill_now"]
    assert [code for code in order if code in codes] == order
    assert sorted(codes, key=order.index) == codes
    once = bottling.standing_verdict(course, day=codes.index(order[1]) / 4.0, target_volumes=2.0)
    assert once.numbers["low_days"] <= once.numbers["days"] < once.numbers["high_days"]


def test_a_drink_that_may_never_be_right_is_told_as_far_as_one_looks():
    found = bottling.standing_verdict(DRY, day=1.0, target_volumes=0.6)
    assert found.code == "chill_once_right"
    assert found.numbers["high_days"] == DRY.volumes.days[-1]
    assert bottling.earliest_day(DRY.volumes, 9.0) == DRY.volumes.days[-1]


def test_the_first_day_is_found_between_days():
    days, line = (0.0, 2.0, 4.0), (1.0, 2.0, 6.0)
    assert bottling.first_day(days, line, 0.5) == 0.0
    assert bottling.first_day(days, line, 4.0) == pytest.approx(3.0)
    assert bottling.first_day(days, line, 7.0) is None


def _all():
    return [
        bottling.no_time_verdict(HOT),
        bottling.unrated_verdict(),
        bottling.no_test_verdict(),
        bottling.alcohol_verdict(Estimate(0.5, 0.4, 0.6), 2.0),
        bottling.handling_verdict(is_glass=True),
        bottling.handling_verdict(is_glass=False),
        bottling.not_for_pressure_verdict(),
        bottling.hard_verdict(day=2.0),
        bottling.cold_verdict(COURSE, day=30.0),
    ]


@pytest.mark.parametrize("verdict", _all(), ids=lambda verdict: verdict.code)
def test_each_has_whole_sentences_and_its_sources(verdict):
    words = verdict_words(verdict)
    assert words.fact
    assert words.why
    assert words.what_to_do
    for part in (words.fact, words.why, words.what_to_do):
        assert part.rstrip()[-1] == "."
        assert "{" not in part
    assert words.sources == tuple(SOURCES[key].citation for key in verdict.sources)
    assert words.sources


def test_no_code_is_forgotten_or_means_two_things():
    told = {verdict.code for verdict in _all()}
    assert told - bottleverdicts.VERDICT_CODES == bottling.VERDICT_CODES
    assert not bottling.VERDICT_CODES & bottleverdicts.VERDICT_CODES
