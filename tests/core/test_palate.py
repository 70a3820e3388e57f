"""What is learnt of a maker's taste: little from little, more from more, never too sure.

The makers are simulated and their tongues are drawn from a normal curve, which is not the
curve that the model assumes.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import palate
from culturecore.errors import ImpossibleInput
from culturecore.forecast import Band
from culturecore.palate import PalateCaveat, TastingVerdict, learn_band
from culturecore.sources import Standing
from culturecore.stages import TasteMark

USUAL = Band(first_taste_ph=3.3, too_sour_ph=2.9)
MARKS = st.sampled_from(list(TasteMark))
SIPS = st.lists(
    st.builds(
        TastingVerdict,
        mark=MARKS,
        ph=st.floats(2.4, 4.4),
        ph_sd=st.floats(0.0, 0.4),
        ta_g_per_l=st.one_of(st.none(), st.floats(0.5, 25.0)),
    ),
    max_size=12,
)


def verdict(mark, ph, sd=0.05, ta=None):
    return TastingVerdict(mark=mark, ph=ph, ph_sd=sd, ta_g_per_l=ta)


def width(estimate):
    return estimate.high - estimate.low


class Maker:
    """A simulated maker who says what a sip tastes like."""

    def __init__(self, rng, first, sour, tongue_sd=0.12, far=0.3):
        self.rng, self.first, self.sour = rng, first, sour
        self.tongue_sd, self.far = tongue_sd, far

    def mark(self, ph):
        felt = ph + self.tongue_sd * self.rng.standard_normal()
        if felt > self.first + self.far:
            return TasteMark.FAR_TOO_SWEET
        if felt > self.first:
            return TasteMark.TOO_SWEET
        if felt > self.sour:
            return TasteMark.RIGHT
        return TasteMark.TOO_SOUR if felt > self.sour - self.far else TasteMark.FAR_TOO_SOUR

    def sips(self, count, meter_sd=0.05):
        made = []
        for ph in self.rng.uniform(2.6, 3.8, count):
            read = ph + meter_sd * self.rng.standard_normal()
            made.append(verdict(self.mark(ph), float(read), meter_sd))
        return made


def test_without_a_verdict_the_band_is_the_makers_own_setting():
    learnt = learn_band([], USUAL)
    assert learnt.first_taste_ph.value == pytest.approx(3.3, abs=0.02)
    assert learnt.too_sour_ph.value == pytest.approx(2.9, abs=0.02)
    assert width(learnt.first_taste_ph) > 0.4
    assert learnt.verdict_count == 0
    assert learnt.caveats == (PalateCaveat.FEW_VERDICTS,)
    assert learnt.first_taste_ta_g_per_l is None


def test_what_is_learnt_names_its_prior_as_an_assumption():
    for key in learn_band([], USUAL).first_taste_ph.sources:
        assert palate.PALATE_SOURCES[key].standing is Standing.ASSUMPTION


@pytest.mark.parametrize("mark", list(TasteMark))
@pytest.mark.parametrize("ph", [2.9, 3.1, 3.3, 3.5])
def test_one_verdict_moves_the_band_but_little(mark, ph):
    before, after = learn_band([], USUAL), learn_band([verdict(mark, ph)], USUAL)
    assert abs(after.first_taste_ph.value - before.first_taste_ph.value) < 0.2
    assert abs(after.too_sour_ph.value - before.too_sour_ph.value) < 0.2


def test_a_maker_who_likes_it_milder_moves_the_band_up():
    sips = [verdict(TasteMark.RIGHT, 3.55), verdict(TasteMark.TOO_SOUR, 3.2)] * 4
    learnt = learn_band(sips, USUAL)
    assert learnt.first_taste_ph.value > 3.45
    assert 3.2 < learnt.too_sour_ph.value < 3.5
    assert PalateCaveat.NO_SWEET_END in learnt.caveats
    assert PalateCaveat.NO_SOUR_END not in learnt.caveats


@pytest.mark.parametrize("extra", [2, 6, 12])
def test_calling_it_too_sour_never_makes_the_band_sourer(extra):
    few = [verdict(TasteMark.RIGHT, 3.2)]
    more = few + [verdict(TasteMark.TOO_SOUR, 3.05)] * extra
    assert learn_band(more, USUAL).too_sour_ph.value > learn_band(few, USUAL).too_sour_ph.value


def test_more_of_the_same_opinion_makes_it_surer():
    sips = [
        verdict(TasteMark.TOO_SWEET, 3.5),
        verdict(TasteMark.RIGHT, 3.2),
        verdict(TasteMark.TOO_SOUR, 2.9),
    ]
    widths = [width(learn_band(sips * n, USUAL).first_taste_ph) for n in (1, 3, 9)]
    assert widths == sorted(widths, reverse=True)
    assert widths[-1] < 0.7 * widths[0]


def test_contradictory_verdicts_leave_the_band_wider_and_are_named():
    agreed = [
        verdict(TasteMark.TOO_SWEET, 3.5),
        verdict(TasteMark.RIGHT, 3.2),
        verdict(TasteMark.TOO_SOUR, 2.9),
    ] * 4
    torn = [
        verdict(TasteMark.TOO_SOUR, 3.5),
        verdict(TasteMark.RIGHT, 3.2),
        verdict(TasteMark.TOO_SWEET, 2.9),
    ] * 4
    sure, unsure = learn_band(agreed, USUAL), learn_band(torn, USUAL)
    assert width(unsure.first_taste_ph) > 1.2 * width(sure.first_taste_ph)
    assert width(unsure.too_sour_ph) > 1.2 * width(sure.too_sour_ph)
    assert PalateCaveat.CONTRADICTORY in unsure.caveats
    assert PalateCaveat.CONTRADICTORY not in sure.caveats


def test_a_sip_whose_ph_is_hardly_known_says_less():
    sharp = learn_band([verdict(TasteMark.TOO_SOUR, 3.3, 0.03)] * 4, USUAL)
    vague = learn_band([verdict(TasteMark.TOO_SOUR, 3.3, 0.4)] * 4, USUAL)
    usual = learn_band([], USUAL).too_sour_ph.value
    assert usual < vague.too_sour_ph.value < sharp.too_sour_ph.value


def test_the_bounds_hold_the_truth_about_four_times_in_five():
    rng = np.random.default_rng(20261125)
    held = {"first": 0, "sour": 0}
    makers = 150
    for _ in range(makers):
        middle = rng.normal(3.1, palate.PH_MIDDLE_SD)
        span = 0.4 * palate.WIDTH_FACTOR ** rng.standard_normal()
        first, sour = middle + span / 2, middle - span / 2
        maker = Maker(
            rng, first, sour, tongue_sd=rng.uniform(0.06, 0.25), far=rng.uniform(0.15, 0.45)
        )
        learnt = learn_band(maker.sips(int(rng.integers(3, 25))), USUAL)
        held["first"] += learnt.first_taste_ph.low <= first <= learnt.first_taste_ph.high
        held["sour"] += learnt.too_sour_ph.low <= sour <= learnt.too_sour_ph.high
    for count in held.values():
        assert 0.70 <= count / makers <= 0.92  # 80 % give or take three standard errors


def test_a_maker_far_from_the_setting_is_found_in_time():
    rng = np.random.default_rng(7)
    maker = Maker(rng, first=3.7, sour=3.4)
    learnt = learn_band(maker.sips(60), USUAL)
    assert learnt.first_taste_ph.value == pytest.approx(3.7, abs=0.12)
    assert learnt.too_sour_ph.value == pytest.approx(3.4, abs=0.12)


def test_acidity_is_learnt_from_titrated_sips():
    sips = [
        verdict(TasteMark.TOO_SWEET, 3.5, ta=2.5),
        verdict(TasteMark.RIGHT, 3.2, ta=5.0),
        verdict(TasteMark.TOO_SOUR, 2.9, ta=8.0),
    ]
    assert learn_band(sips, USUAL).first_taste_ta_g_per_l is None, "three are too few"
    learnt = learn_band(sips * 4, USUAL)
    assert 2.5 < learnt.first_taste_ta_g_per_l.value < 5.0
    assert 5.0 < learnt.too_sour_ta_g_per_l.value < 8.0


@settings(max_examples=40, deadline=None)
@given(SIPS)
def test_whatever_was_said_the_ends_stand_in_order_and_are_finite(sips):
    learnt = learn_band(sips, USUAL)
    first, sour = learnt.first_taste_ph, learnt.too_sour_ph
    assert sour.value < first.value
    for estimate in (first, sour):
        assert math.isfinite(estimate.value)
        assert estimate.low <= estimate.value <= estimate.high
    assert learnt.verdict_count == len(sips)


@settings(max_examples=15, deadline=None)
@given(SIPS, st.randoms(use_true_random=False))
def test_the_order_of_the_verdicts_does_not_matter(sips, random):
    other = list(sips)
    random.shuffle(other)
    one, two = learn_band(sips, USUAL), learn_band(other, USUAL)
    assert one.first_taste_ph.value == pytest.approx(two.first_taste_ph.value, abs=1e-6)


@pytest.mark.parametrize(
    "fields",
    [{"ph": math.nan}, {"ph": 15.0}, {"ph_sd": -0.1}, {"ta_g_per_l": 0.0}, {"ta_sd_g_per_l": -1.0}],
)
def test_a_sip_that_cannot_be_is_refused(fields):
    values = {"mark": TasteMark.RIGHT, "ph": 3.2, "ph_sd": 0.05} | fields
    with pytest.raises(ImpossibleInput):
        learn_band([TastingVerdict(**values)], USUAL)


def test_a_band_on_its_head_is_refused():
    with pytest.raises(ImpossibleInput):
        learn_band([], Band(first_taste_ph=2.9, too_sour_ph=3.3))


def sweet_sip(mark, ph, sugar, sugar_sd=5.0, *, is_from_words=False):
    return TastingVerdict(
        mark=mark,
        ph=ph,
        ph_sd=0.05,
        sugar_g_per_l=sugar,
        sugar_sd_g_per_l=sugar_sd,
        is_from_words=is_from_words,
    )


# All equally sour, so that only sweetness can tell them apart.
BOTH_SIDES = [
    sweet_sip(TasteMark.TOO_SWEET, 3.1, 48.0),
    sweet_sip(TasteMark.RIGHT, 3.1, 35.0),
    sweet_sip(TasteMark.TOO_SOUR, 3.1, 18.0),
]


def test_sweetness_is_told_only_after_some_verdicts():
    few = learn_band(BOTH_SIDES, USUAL)
    assert (few.sweetest_g_per_l, few.driest_g_per_l) == (None, None)
    more = learn_band(BOTH_SIDES * 3, USUAL)
    assert 35.0 < more.sweetest_g_per_l.value < 52.0
    assert 15.0 < more.driest_g_per_l.value < 35.0
    assert more.driest_g_per_l.value < more.sweetest_g_per_l.value


@pytest.mark.parametrize("times", [2, 4, 12])
def test_what_sourness_explains_is_not_laid_to_sweetness(times):
    """In one jar sugar falls as it sours: such marks tell of the pH, and of sugar nothing."""
    one_course = [
        sweet_sip(TasteMark.TOO_SWEET, 3.7, 48.0),
        sweet_sip(TasteMark.RIGHT, 3.2, 35.0),
        sweet_sip(TasteMark.TOO_SOUR, 2.7, 25.0),
    ]
    learnt = learn_band(one_course * times, USUAL)
    assert (learnt.sweetest_g_per_l, learnt.driest_g_per_l) == (None, None)


def test_an_end_that_no_sip_has_met_is_not_told():
    only_sweet = [sip for sip in BOTH_SIDES if sip.mark is not TasteMark.TOO_SOUR] * 6
    learnt = learn_band(only_sweet, USUAL)
    assert learnt.sweetest_g_per_l is not None
    assert learnt.driest_g_per_l is None
    mirrored = [sip for sip in BOTH_SIDES if sip.mark is not TasteMark.TOO_SWEET] * 6
    learnt = learn_band(mirrored, USUAL)
    assert learnt.sweetest_g_per_l is None
    assert learnt.driest_g_per_l is not None


def test_sugar_that_is_hardly_known_tells_no_end():
    vague = [sweet_sip(sip.mark, sip.ph, sip.sugar_g_per_l, 40.0) for sip in BOTH_SIDES] * 2
    learnt = learn_band(vague, USUAL)
    assert (learnt.sweetest_g_per_l, learnt.driest_g_per_l) == (None, None)


def test_however_many_agree_the_shared_doubt_of_the_sugar_stays():
    learnt = learn_band(BOTH_SIDES * 20, USUAL)
    for end in (learnt.sweetest_g_per_l, learnt.driest_g_per_l):
        assert end.low < 0.8 * end.value
        assert end.high > 1.25 * end.value


def test_the_bounds_of_sweetness_hold_the_truth_about_four_times_in_five():
    """The makers go by sweetness alone in three sips of four, and by sourness in the fourth."""
    rng = np.random.default_rng(20261125)
    held, told = 0, 0
    for _ in range(120):
        middle = math.log(28.3) + palate.SUGAR_MIDDLE_LOG_SD * rng.standard_normal()
        span = math.log(50.0 / 16.0) * palate.WIDTH_FACTOR ** rng.standard_normal()
        sweetest, driest = math.exp(middle + span / 2), math.exp(middle - span / 2)
        shared = math.exp(0.15 * rng.standard_normal())
        sips = []
        for sugar in rng.uniform(8.0, 75.0, int(rng.integers(6, 25))):
            felt = sugar * math.exp(0.2 * rng.standard_normal())
            mark = TasteMark.RIGHT
            if felt > sweetest:
                mark = TasteMark.TOO_SWEET
            elif felt < driest:
                mark = TasteMark.TOO_SOUR
            if rng.uniform() < 0.25:
                mark = list(TasteMark)[1 + int(rng.integers(3))]
            reckoned = float(sugar * shared * math.exp(0.12 * rng.standard_normal()))
            sips.append(sweet_sip(mark, 3.2, reckoned, 0.12 * reckoned))
        end = learn_band(sips, USUAL).sweetest_g_per_l
        if end is not None:
            told += 1
            held += end.low <= sweetest <= end.high
    assert told > 60
    assert 0.68 <= held / told <= 0.95


def test_words_move_the_band_but_less_than_marks():
    by_mark = learn_band([sweet_sip(TasteMark.TOO_SOUR, 3.2, 30.0)] * 5, USUAL)
    by_words = learn_band([sweet_sip(TasteMark.TOO_SOUR, 3.2, 30.0, is_from_words=True)] * 5, USUAL)
    usual = learn_band([], USUAL).too_sour_ph.value
    assert usual < by_words.too_sour_ph.value < by_mark.too_sour_ph.value
    assert (by_mark.words_count, by_words.words_count) == (0, 5)


def test_words_say_the_side_and_not_how_far():
    said = [sweet_sip(TasteMark.TOO_SWEET, 3.9, 60.0, is_from_words=True)] * 6
    far = [sweet_sip(TasteMark.TOO_SWEET, 3.9, 60.0)] * 6
    assert (
        learn_band(said, USUAL).first_taste_ph.value < learn_band(far, USUAL).first_taste_ph.value
    )


@pytest.mark.parametrize("field", ["sugar_g_per_l", "sugar_sd_g_per_l"])
def test_a_sugar_that_cannot_be_is_refused(field):
    values = {"mark": TasteMark.RIGHT, "ph": 3.2, "ph_sd": 0.05, "sugar_g_per_l": 30.0}
    with pytest.raises(ImpossibleInput):
        learn_band([TastingVerdict(**values | {field: -1.0})], USUAL)
