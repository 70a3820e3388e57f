"""Amounts as a kitchen without scales has them: cups, spoons, bags.

Always "about": a cup of sugar is good to some 5 % (usda_sugar and the Sugar Association
differ by as much). Weighing is better, and the program says so.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from culturecore.constants import (
    CUP_L,
    SUGAR_G_PER_CUP,
    SUGAR_G_PER_TABLESPOON,
    SUGAR_G_PER_TEASPOON,
    TABLESPOON_L,
    TEASPOON_L,
)
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate

# Sixths and twelfths of a cup are no measure that a kitchen has.
_CUP_STEPS = {0.0: "", 1 / 4: "¼", 1 / 3: "⅓", 1 / 2: "½", 2 / 3: "⅔", 3 / 4: "¾"}
_HALF_STEPS = {0.0: "", 1 / 2: "½"}
_QUARTER_STEPS = {0.0: "", 1 / 4: "¼", 1 / 2: "½", 3 / 4: "¾"}


@dataclass(frozen=True, slots=True)
class Measure:
    """So many of one kitchen measure.

    ``count`` is ``whole`` plus ``fraction`` as a number; ``fraction`` is one of
    ¼ ⅓ ½ ⅔ ¾ or empty; ``unit`` is "cup", "tablespoon", "teaspoon" or "bag".
    """

    count: float
    whole: int
    fraction: str
    unit: str


def sugar_measures(mass_g: float) -> list[Measure]:
    """Return white sugar as measures that ADD UP to about ``mass_g``, largest first.

    At most two: cups and tablespoons, tablespoons and teaspoons, or teaspoons. Within half
    a tablespoon above a quarter cup, within half a teaspoon below. Empty for nothing.

    Raises
    ------
    ImpossibleInput
        For a negative mass or one above 100 kg.
    """
    _check("mass_g", mass_g, 100_000.0, "g")
    return _added(mass_g, SUGAR_G_PER_CUP, SUGAR_G_PER_TABLESPOON, SUGAR_G_PER_TEASPOON)


def water_measures(volume_l: float) -> list[Measure]:
    """Return a volume as US cups and spoons that ADD UP to about ``volume_l``, largest first.

    Raises
    ------
    ImpossibleInput
        For a negative volume or one above 1000 L.
    """
    _check("volume_l", volume_l, 1000.0, "L")
    return _added(volume_l, CUP_L, TABLESPOON_L, TEASPOON_L)


def tea_bags(mass_g: float, bag_g: float) -> Measure:
    """Return the whole number of bags nearest to a mass of leaf, at least one for any leaf.

    Parameters
    ----------
    mass_g : float
        Leaf wanted [g].
    bag_g : float
        Leaf in one bag [g]; about 2 (common practice, no source): weigh ten and divide.

    Raises
    ------
    ImpossibleInput
        For a negative mass, or a bag of nothing.
    """
    _check("mass_g", mass_g, 100_000.0, "g")
    if not 0.0 < bag_g <= 1000.0:
        raise ImpossibleInput("bag_g", bag_g, low=0.0, high=1000.0, unit="g")
    count = math.floor(mass_g / bag_g + 0.5)
    if mass_g > 0.0:
        count = max(count, 1)
    return Measure(float(count), count, "", "bag")


def weighed_bag_g(*, bags: int, total_g: float, scale_step_g: float = 1.0) -> Estimate:
    """Return the leaf in one of the maker's own tea bags, from weighing several at once [g].

    Parameters
    ----------
    bags : int
        How many were weighed together, 1 to 1000; ten are better than one.
    total_g : float
        What they weighed [g], above 0; paper and string count in.
    scale_step_g : float
        The scale's last digit [g], above 0 to 10: the reading is good to one step.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, for a bag above 50 g, and for less than two steps of the scale,
        which is too little to tell.
    """
    if not 1 <= bags <= 1000:
        raise ImpossibleInput("bags", bags, low=1.0, high=1000.0)
    if not 0.0 < scale_step_g <= 10.0:
        raise ImpossibleInput("scale_step_g", scale_step_g, low=0.0, high=10.0, unit="g")
    least_g, most_g = 2.0 * scale_step_g, 50.0 * bags
    if not least_g <= total_g <= most_g:  # NaN fails too
        raise ImpossibleInput("total_g", total_g, low=least_g, high=most_g, unit="g")
    low_g, high_g = total_g - scale_step_g, total_g + scale_step_g
    return Estimate(total_g / bags, low_g / bags, high_g / bags)


def _added(amount: float, cup: float, tablespoon: float, teaspoon: float) -> list[Measure]:
    if amount >= cup / 4 - tablespoon / 4:
        large, left = _at_most(amount, cup, _CUP_STEPS, "cup", tablespoon / 4)
        small = _nearest(left, tablespoon, _HALF_STEPS, "tablespoon")
    elif amount >= tablespoon - teaspoon / 4:
        large, left = _at_most(amount, tablespoon, {0.0: ""}, "tablespoon", teaspoon / 4)
        small = _nearest(left, teaspoon, _HALF_STEPS, "teaspoon")
    else:
        return [m for m in (_nearest(amount, teaspoon, _QUARTER_STEPS, "teaspoon"),) if m.count]
    return [measure for measure in (large, small) if measure.count > 0.0]


def _at_most(
    amount: float, size: float, steps: dict[float, str], unit: str, tolerance: float
) -> tuple[Measure, float]:
    """Return the largest measure that does not exceed the amount, and what is left."""
    whole = math.floor((amount + tolerance) / size)
    rest = amount + tolerance - whole * size
    step = max(step for step in steps if step * size <= rest)
    count = whole + step
    return Measure(count, whole, steps[step], unit), max(amount - count * size, 0.0)


def _nearest(amount: float, size: float, steps: dict[float, str], unit: str) -> Measure:
    """Return the measure nearest to the amount."""
    whole = math.floor(amount / size)
    rest = amount / size - whole
    step = min((*steps, 1.0), key=lambda one: abs(one - rest))
    if step == 1.0:
        whole, step = whole + 1, 0.0
    return Measure(whole + step, whole, steps[step], unit)


def _check(field: str, value: float, most: float, unit: str) -> None:
    if not 0.0 <= value <= most:  # NaN fails too
        raise ImpossibleInput(field, value, low=0.0, high=most, unit=unit)
