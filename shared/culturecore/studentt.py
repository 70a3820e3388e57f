"""Student's t and its noncentral kin, to the digits that an interval needs.

The standard library knows the normal distribution alone. The incomplete beta function is
worked out by its continued fraction (Abramowitz & Stegun 1964, 26.5.8, from memory).
"""

from __future__ import annotations

import math

from culturecore.errors import ImpossibleInput
from culturecore.rootfinding import root_of_rising

_ROUNDS = 400
_SMALL = 1e-300
_EXACT = 1e-15
_CHI_STEPS = 400  # of Simpson's rule across the spread of the sample's scatter
_CHI_REACH = 9.0  # standard deviations to either side
_MOST_T = 1e7


def t_cdf(t: float, df: float) -> float:
    """Return the share of Student's distribution below ``t``.

    Parameters
    ----------
    t : float
        The statistic.
    df : float
        Degrees of freedom, above 0; need not be whole.
    """
    _check_df(df)
    if math.isinf(t):
        return 1.0 if t > 0 else 0.0
    tail = 0.5 * _beta_share(df / (df + t * t), df / 2.0, 0.5)
    return 1.0 - tail if t > 0 else tail


def t_two_sided_p(t: float, df: float) -> float:
    """Return how often chance alone gives a statistic at least as far from zero as ``t``."""
    _check_df(df)
    if math.isinf(t):
        return 0.0
    return _beta_share(df / (df + t * t), df / 2.0, 0.5)


def t_quantile(share: float, df: float) -> float:
    """Return the value below which ``share`` of Student's distribution lies.

    Raises
    ------
    ImpossibleInput
        For a share that is not between 0 and 1, or no degrees of freedom.
    """
    _check_df(df)
    if not 0.0 < share < 1.0:
        raise ImpossibleInput("share", share, low=0.0, high=1.0)
    if share < 0.5:
        return -t_quantile(1.0 - share, df)
    if share == 0.5:
        return 0.0
    high = 2.0
    while high < _MOST_T and t_cdf(high, df) < share:
        high *= 2.0
    return root_of_rising(lambda t: t_cdf(t, df) - share, 0.0, high, tolerance=1e-10 * high)


def noncentral_t_cdf(t: float, df: float, shift: float) -> float:
    """Return the share below ``t`` of Student's distribution moved by ``shift``.

    The statistic of two samples whose means truly differ by ``shift`` standard errors. The
    normal share at ``t s - shift`` is averaged over ``s``, the root of a chi-square over its
    degrees of freedom (Johnson & Kotz 1970, from memory), by Simpson's rule.

    Raises
    ------
    ImpossibleInput
        For fewer than 2 degrees of freedom, where the rule is too coarse.
    """
    _check_df(df)
    if df < 2.0:
        raise ImpossibleInput("df", df, low=2.0)
    spread = 1.0 / math.sqrt(2.0 * df)
    low, high = max(0.0, 1.0 - _CHI_REACH * spread), 1.0 + _CHI_REACH * spread
    width = (high - low) / _CHI_STEPS
    log_scale = math.log(2.0) + (df / 2.0) * math.log(df / 2.0) - math.lgamma(df / 2.0)
    total = 0.0
    for n in range(_CHI_STEPS + 1):
        s = low + n * width
        if s <= 0.0:
            continue
        density = math.exp(log_scale + (df - 1.0) * math.log(s) - df * s * s / 2.0)
        weight = 1.0 if n in (0, _CHI_STEPS) else (4.0 if n % 2 else 2.0)
        total += weight * density * _normal_share(t * s - shift)
    return min(1.0, max(0.0, total * width / 3.0))


def chi_square_1_tail(value: float) -> float:
    """Return the share of the chi-square distribution of one degree of freedom above a value."""
    return math.erfc(math.sqrt(max(0.0, value) / 2.0))


def _normal_share(z: float) -> float:
    return 0.5 * math.erfc(-z / math.sqrt(2.0))


def _check_df(df: float) -> None:
    if not df > 0.0 or math.isinf(df):
        raise ImpossibleInput("df", df, low=0.0)


def _beta_share(x: float, a: float, b: float) -> float:
    """Return the regularised incomplete beta function of ``x``."""
    if x <= 0.0:
        return 0.0
    if x >= 1.0:
        return 1.0
    front = math.exp(
        math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b)
        + a * math.log(x) + b * math.log1p(-x)
    )  # fmt: skip
    if x < (a + 1.0) / (a + b + 2.0):
        return front * _beta_fraction(x, a, b) / a
    return 1.0 - front * _beta_fraction(1.0 - x, b, a) / b


def _beta_fraction(x: float, a: float, b: float) -> float:
    """Return the continued fraction by the modified Lentz method."""
    c, d = 1.0, 1.0 - (a + b) * x / (a + 1.0)
    d = 1.0 / (d if abs(d) > _SMALL else _SMALL)
    total = d
    for m in range(1, _ROUNDS):
        for step in (
            m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m)),
            -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1)),
        ):
            d = 1.0 + step * d
            d = 1.0 / (d if abs(d) > _SMALL else _SMALL)
            c = 1.0 + step / c
            c = c if abs(c) > _SMALL else _SMALL
            total *= c * d
        if abs(c * d - 1.0) < _EXACT:
            break
    return total
