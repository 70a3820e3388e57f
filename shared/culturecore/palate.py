"""A maker's own taste: verdicts on sips turned into the band that the maker likes.

The band of sourness has two ends: where the drink is first worth tasting and where it is too
sour. Each verdict says on which side of an end a sip lay, with a tongue that is not quite
sure. The maker's setting is where belief begins; verdicts move it, contradictory ones widen
it. The same verdicts make a band of sweetness, far vaguer: the sugar of a sip is reckoned,
hardly ever measured, and a sip may seem sweet for want of acid. An end of it is told only
once the verdicts have made it clearly narrower than what was believed before any.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING, Final

from culturecore.errors import ImpossibleInput
from culturecore.forecast import Band
from culturecore.outcome import Estimate
from culturecore.sources import Source, Standing
from culturecore.stages import TasteMark

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]

PALATE_SOURCES: Final[dict[str, Source]] = {
    "palate_assumption": Source(
        "palate_assumption",
        "Chosen for learning a maker's taste; no measured palate of kombucha was found",
        Standing.ASSUMPTION,
    ),
    "sogin_worobo_2024": Source(
        "sogin_worobo_2024",
        "Sogin and Worobo, data repository Sogin_and_Worobo_Kombucha_2024, Qiime_Data/"
        "metadata.csv: glucose and fructose of 47 bottled kombuchas, middle 80 % 21-43 g/L",
        Standing.READ,
    ),
}

# How far the middle of the band may lie from the setting, and how much wider or narrower it is.
PH_MIDDLE_SD = 0.16
WIDTH_FACTOR = 1.4
# How unsure the tongue is (pH), and how far beyond an end "far too ..." begins.
TONGUE_SD_PH = (0.05, 0.09, 0.16, 0.28, 0.5)
FAR_BEYOND_PH = (0.12, 0.25, 0.5)
# A sip after coffee, a mark that was mistapped: it says nothing.
LAPSE_SHARE = 0.04

# Titratable acidity has no setting: a middle band (from memory), wide enough to be overruled.
ACID_BAND_G_PER_L = (4.0, 9.0)
ACID_MIDDLE_LOG_SD = 0.4
# One pH unit of taste is worth about this much in the logarithm of acidity: in sweet tea that
# sours, 0.4 of pH goes with about a doubling.
LOG_ACID_PER_PH = 1.7

# Sugar left has no setting either. The middle 80 % of 47 bottled kombuchas hold 21 to 43 g/L of
# glucose and fructose (Sogin and Worobo 2024, data repository); makers at home are taken to
# differ more.
SUGAR_BAND_G_PER_L = (16.0, 50.0)
SUGAR_MIDDLE_LOG_SD = 0.45
# From sweet tea to a sour drink pH falls by about 1 while the sugar halves; the tongue is given
# twice that doubt, since acid covers sweetness.
LOG_SUGAR_PER_PH = 1.4
LEAST_SUGAR_LOG_SD = 0.1
# Too sweet for want of acid, too sour for too much of it: then the mark says nothing of sugar.
SUGAR_LAPSE_SHARE, MOST_SUGAR_LAPSE_SHARE = 0.25, 0.97
LEAST_SUGAR_VERDICTS = 4
# All sugars come from one mass balance: what is wrong with it does not average out.
SHARED_SUGAR_LOG_SD = 0.2
TELLING_SHARE = 0.7  # of its first width: an end that is no narrower is not told
LEAST_INWARD_LOG = 0.2  # by which its outer bound has to have come in

# Words are read, not asked for: one note in six is taken to be read wrongly.
WORDS_LAPSE_SHARE = 0.17

_ASSUMED = ("palate_assumption",)
FEW_VERDICTS = 5
LEAST_ACID_VERDICTS = 4
_CONTRADICTORY_SD_PH = 0.24
_MIDDLES, _WIDTHS = 57, 25
_Z80 = 1.2816  # 90 % point of the standard normal
_SIDES = 3  # too sweet, right, too sour
_REACH = 3.2  # standard deviations that the grid spans
_LOGISTIC_PER_NORMAL = 1.702  # a logistic curve of this slope follows the normal one within 0.01
_SWEET = (TasteMark.FAR_TOO_SWEET, TasteMark.TOO_SWEET)
_SOUR = (TasteMark.TOO_SOUR, TasteMark.FAR_TOO_SOUR)


class PalateCaveat(Enum):
    """Why a learnt band is weaker than its digits suggest."""

    FEW_VERDICTS = "few_verdicts"
    CONTRADICTORY = "contradictory"
    NO_SWEET_END = "no_sweet_end"
    NO_SOUR_END = "no_sour_end"


@dataclass(frozen=True, slots=True, kw_only=True)
class TastingVerdict:
    """One sip: the mark, and how sour it was by pH and, if known, by titratable acidity (g/L).

    ``sugar_g_per_l`` is the sugar left, if it could be reckoned. ``ph_sd``,
    ``ta_sd_g_per_l`` and ``sugar_sd_g_per_l`` are standard uncertainties of the sip's own
    values. Of a verdict that ``is_from_words`` the mark says the side, not how far.
    """

    mark: TasteMark
    ph: float
    ph_sd: float
    ta_g_per_l: float | None = None
    ta_sd_g_per_l: float | None = None
    sugar_g_per_l: float | None = None
    sugar_sd_g_per_l: float | None = None
    is_from_words: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class PreferredBand:
    """The band that the maker likes, with 80 % bounds of its ends.

    The acidities (g/L as acetic acid) are None until a few tasted sips were titrated. The
    sugars (g/L) are None until verdicts have told something of them: ``sweetest_g_per_l`` is
    what is just not too sweet, ``driest_g_per_l`` what is just sweet enough.
    """

    first_taste_ph: Estimate
    too_sour_ph: Estimate
    verdict_count: int
    caveats: tuple[PalateCaveat, ...]
    first_taste_ta_g_per_l: Estimate | None = None
    too_sour_ta_g_per_l: Estimate | None = None
    sweetest_g_per_l: Estimate | None = None
    driest_g_per_l: Estimate | None = None
    words_count: int = 0  # of the verdicts, those read from words


@dataclass(frozen=True, slots=True)
class _Scale:
    """One measure of sourness, rising from sweet to sour; ``per_ph`` is what a pH unit is in it."""

    sweet_end: float
    sour_end: float
    middle_sd: float
    per_ph: float


@dataclass(frozen=True, slots=True)
class _Sip:
    mark: TasteMark
    sourness: float
    sd: float
    lapse_share: float = LAPSE_SHARE
    is_side_only: bool = False


@dataclass(frozen=True, slots=True)
class _Learnt:
    sweet_end: tuple[float, float, float]  # 10 %, 50 %, 90 %
    sour_end: tuple[float, float, float]
    tongue_sd_ph: float


def learn_band(verdicts: Sequence[TastingVerdict], prior: Band) -> PreferredBand:
    """Learn the band of a maker from verdicts; without any it is the prior's, with its doubt.

    Raises: `ImpossibleInput` for a pH, acidity or uncertainty that no sip has.

    Notes: an ordered logistic model (five marks, two ends, one unsure tongue, a share of
    lapses) worked out on a grid. Every number of the prior is an assumption.
    """
    for verdict in verdicts:
        _check(verdict)
    if not 0.0 < prior.too_sour_ph < prior.first_taste_ph <= 14.0:
        raise ImpossibleInput("first_taste_ph", prior.first_taste_ph, reason="band_upside_down")
    by_ph = _learn(
        [_Sip(v.mark, -v.ph, v.ph_sd, _lapse(v), v.is_from_words) for v in verdicts],
        _Scale(-prior.first_taste_ph, -prior.too_sour_ph, PH_MIDDLE_SD, 1.0),
    )
    sweet_ta, sour_ta = _acid_ends(verdicts)
    sweetest, driest = _sugar_ends(verdicts, by_ph)
    return PreferredBand(
        first_taste_ph=_negated(by_ph.sweet_end),
        too_sour_ph=_negated(by_ph.sour_end),
        verdict_count=len(verdicts),
        caveats=_caveats(verdicts, by_ph.tongue_sd_ph),
        first_taste_ta_g_per_l=sweet_ta,
        too_sour_ta_g_per_l=sour_ta,
        sweetest_g_per_l=sweetest,
        driest_g_per_l=driest,
        words_count=sum(verdict.is_from_words for verdict in verdicts),
    )


def _acid_ends(verdicts: Sequence[TastingVerdict]) -> tuple[Estimate | None, Estimate | None]:
    sips = [
        _Sip(
            v.mark,
            math.log(v.ta_g_per_l),
            (v.ta_sd_g_per_l or 0.1 * v.ta_g_per_l) / v.ta_g_per_l,
            _lapse(v),
            v.is_from_words,
        )
        for v in verdicts
        if v.ta_g_per_l is not None
    ]
    if len(sips) < LEAST_ACID_VERDICTS:
        return None, None
    sweet, sour = (math.log(acid) for acid in ACID_BAND_G_PER_L)
    learnt = _learn(sips, _Scale(sweet, sour, ACID_MIDDLE_LOG_SD, LOG_ACID_PER_PH))
    return _exponential(learnt.sweet_end), _exponential(learnt.sour_end)


def _sugar_ends(
    verdicts: Sequence[TastingVerdict], by_ph: _Learnt
) -> tuple[Estimate | None, Estimate | None]:
    """Learn what is too sweet and what is not sweet enough, each only where it was met.

    In one jar sugar falls as acid rises, so what the pH already explains tells little of sugar.
    """
    sips = [
        _Sip(
            v.mark,
            -math.log(v.sugar_g_per_l),
            max((v.sugar_sd_g_per_l or 0.0) / v.sugar_g_per_l, LEAST_SUGAR_LOG_SD),
            _sugar_lapse(v, by_ph),
            v.is_from_words,
        )
        for v in verdicts
        if v.sugar_g_per_l is not None
    ]
    if len(sips) < LEAST_SUGAR_VERDICTS:
        return None, None
    dry, sweet = (-math.log(sugar) for sugar in SUGAR_BAND_G_PER_L)
    scale = _Scale(sweet, dry, SUGAR_MIDDLE_LOG_SD, LOG_SUGAR_PER_PH)
    before, after = _learn([], scale), _learn(sips, scale)
    marks = {sip.mark for sip in sips}
    sweetest = driest = None
    inward = after.sweet_end[0] - before.sweet_end[0]
    if marks & set(_SWEET) and _is_told(before.sweet_end, after.sweet_end, inward):
        sweetest = _sugar(after.sweet_end)
    inward = before.sour_end[2] - after.sour_end[2]
    if marks & set(_SOUR) and _is_told(before.sour_end, after.sour_end, inward):
        driest = _sugar(after.sour_end)
    return sweetest, driest


def _sugar_lapse(verdict: TastingVerdict, by_ph: _Learnt) -> float:
    """Return the share of such marks that say nothing of sugar, since the pH explains them."""
    least = max(_lapse(verdict), SUGAR_LAPSE_SHARE)
    if verdict.mark is TasteMark.RIGHT:
        return least
    is_sweet = verdict.mark in _SWEET
    low, end, high = by_ph.sweet_end if is_sweet else by_ph.sour_end
    beyond = (end + verdict.ph) if is_sweet else (-verdict.ph - end)  # ends are negated pH
    blur = math.hypot((high - low) / (2.0 * _Z80), verdict.ph_sd, by_ph.tongue_sd_ph)
    explained = 0.5 * (1.0 + math.tanh(0.5 * _LOGISTIC_PER_NORMAL * beyond / blur))
    return min(max(least, explained), MOST_SUGAR_LAPSE_SHARE)


def _is_told(
    before: tuple[float, float, float], after: tuple[float, float, float], inward: float
) -> bool:
    """Tell whether verdicts made an end narrower, from the side beyond which nobody likes it."""
    is_narrower = after[2] - after[0] < TELLING_SHARE * (before[2] - before[0])
    return is_narrower and inward > LEAST_INWARD_LOG


def _lapse(verdict: TastingVerdict) -> float:
    return WORDS_LAPSE_SHARE if verdict.is_from_words else LAPSE_SHARE


def _learn(sips: Sequence[_Sip], scale: _Scale) -> _Learnt:
    """Weigh every band of a grid by the verdicts."""
    import numpy as np

    middle = 0.5 * (scale.sweet_end + scale.sour_end)
    width = scale.sour_end - scale.sweet_end
    steps = np.linspace(-_REACH, _REACH, _MIDDLES)
    width_steps = np.linspace(-_REACH, _REACH, _WIDTHS)
    middles = (middle + scale.middle_sd * steps)[:, None, None, None]
    widths = (width * WIDTH_FACTOR**width_steps)[None, :, None, None]
    tongue = scale.per_ph * np.array(TONGUE_SD_PH)[None, None, :, None]
    far = scale.per_ph * np.array(FAR_BEYOND_PH)[None, None, None, :]
    sweet_end, sour_end = middles - 0.5 * widths, middles + 0.5 * widths
    log_weight = (
        -0.5 * np.square(steps)[:, None, None, None]
        - 0.5 * np.square(width_steps)[None, :, None, None]
        + np.zeros((1, 1, len(TONGUE_SD_PH), len(FAR_BEYOND_PH)))
    )
    for sip in sips:
        blur = np.hypot(tongue, sip.sd)
        answers = _SIDES if sip.is_side_only else len(TasteMark)
        log_weight = log_weight + np.log(
            sip.lapse_share / answers
            + (1.0 - sip.lapse_share) * _chance(sip, sweet_end, sour_end, far, blur)
        )
    weight = np.exp(log_weight - log_weight.max())
    weight /= weight.sum()
    by_band = weight.sum(axis=(2, 3))
    by_tongue = weight.sum(axis=(0, 1, 3))
    return _Learnt(
        sweet_end=_quantiles(sweet_end[:, :, 0, 0], by_band),
        sour_end=_quantiles(sour_end[:, :, 0, 0], by_band),
        tongue_sd_ph=float(by_tongue @ np.array(TONGUE_SD_PH)),
    )


def _chance(sip: _Sip, sweet_end: Floats, sour_end: Floats, far: Floats, blur: Floats) -> Floats:
    """Chance of a mark for a sip of this sourness."""

    def beyond(end: Floats) -> Floats:
        import numpy as np

        chance: Floats = 1.0 / (1.0 + np.exp(_LOGISTIC_PER_NORMAL * (end - sip.sourness) / blur))
        return chance

    if sip.is_side_only and sip.mark in _SWEET:
        return 1.0 - beyond(sweet_end)
    if sip.is_side_only and sip.mark in _SOUR:
        return beyond(sour_end)
    if sip.mark is TasteMark.FAR_TOO_SWEET:
        return 1.0 - beyond(sweet_end - far)
    if sip.mark is TasteMark.TOO_SWEET:
        return beyond(sweet_end - far) - beyond(sweet_end)
    if sip.mark is TasteMark.RIGHT:
        return beyond(sweet_end) - beyond(sour_end)
    if sip.mark is TasteMark.TOO_SOUR:
        return beyond(sour_end) - beyond(sour_end + far)
    return beyond(sour_end + far)


def _quantiles(values: Floats, weights: Floats) -> tuple[float, float, float]:
    import numpy as np

    order = np.argsort(values, axis=None)
    cumulative = np.cumsum(weights.ravel()[order])
    middles = cumulative - 0.5 * weights.ravel()[order]
    low, mid, high = np.interp((0.1, 0.5, 0.9), middles, values.ravel()[order]).tolist()
    return low, mid, high


def _negated(ends: tuple[float, float, float]) -> Estimate:
    low, mid, high = ends
    return Estimate(value=-mid, low=-high, high=-low, sources=_ASSUMED)


def _exponential(ends: tuple[float, float, float]) -> Estimate:
    low, mid, high = (math.exp(end) for end in ends)
    return Estimate(value=mid, low=low, high=high, sources=_ASSUMED)


def _sugar(ends: tuple[float, float, float]) -> Estimate:
    low, mid, high = (-end for end in reversed(ends))
    shared = _Z80 * SHARED_SUGAR_LOG_SD
    return Estimate(
        value=math.exp(mid),
        low=math.exp(mid - math.hypot(mid - low, shared)),
        high=math.exp(mid + math.hypot(high - mid, shared)),
        sources=tuple(PALATE_SOURCES),
    )


def _caveats(verdicts: Sequence[TastingVerdict], tongue_sd_ph: float) -> tuple[PalateCaveat, ...]:
    if not verdicts:
        return (PalateCaveat.FEW_VERDICTS,)
    found = []
    if len(verdicts) < FEW_VERDICTS:
        found.append(PalateCaveat.FEW_VERDICTS)
    if len(verdicts) >= FEW_VERDICTS and tongue_sd_ph > _CONTRADICTORY_SD_PH:
        found.append(PalateCaveat.CONTRADICTORY)
    marks = {verdict.mark for verdict in verdicts}
    if not marks & set(_SWEET):
        found.append(PalateCaveat.NO_SWEET_END)
    if not marks & set(_SOUR):
        found.append(PalateCaveat.NO_SOUR_END)
    return tuple(found)


def _check(verdict: TastingVerdict) -> None:
    _within("ph", verdict.ph, 0.0, 14.0)
    _within("ph_sd", verdict.ph_sd, 0.0, 5.0)
    if verdict.ta_g_per_l is not None:
        _within("ta_g_per_l", verdict.ta_g_per_l, 0.01, 200.0)
    if verdict.ta_sd_g_per_l is not None:
        _within("ta_sd_g_per_l", verdict.ta_sd_g_per_l, 0.0, 100.0)
    if verdict.sugar_g_per_l is not None:
        _within("sugar_g_per_l", verdict.sugar_g_per_l, 0.01, 700.0)
    if verdict.sugar_sd_g_per_l is not None:
        _within("sugar_sd_g_per_l", verdict.sugar_sd_g_per_l, 0.0, 700.0)


def _within(field: str, value: float, low: float, high: float) -> None:
    if not math.isfinite(value) or not low <= value <= high:
        raise ImpossibleInput(field, value, low=low, high=high)
