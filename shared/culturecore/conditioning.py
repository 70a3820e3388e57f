"""Fizz made in the closed bottle: how much sugar, what pressure, how long, how much alcohol.

Sugar left in the drink, fruit and added sugar are one and the same to the yeast. What is
planned is the target; what can happen, if nobody chills in time, is that all of it
ferments. Both are always given. The pace rests on an assumption and is known to a factor
of six at best: only looking at the bottles tells.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import Final

from culturecore import bottle, co2
from culturecore.bottle import BottlePressure, Filling
from culturecore.errors import ImpossibleInput
from culturecore.ethanol import SugarKind, abv_from_g_per_l, co2_g_per_g, ethanol_g_per_g
from culturecore.outcome import Caveat, Estimate
from culturecore.rootfinding import root_of_rising

# bottle_yeast_assumption
YIELD_LOW: Final = 0.90
YIELD_LIKELY: Final = 0.95
RATE_LOW_G_PER_L_DAY: Final = 0.5
RATE_HIGH_G_PER_L_DAY: Final = 3.0
RATE_AT_C: Final = 22.0
TENFOLD_LOW: Final = 1.7  # pace for 10 degC more over pace now
TENFOLD_HIGH: Final = 3.0
_RATE_KNOWN_C: Final = (15.0, 30.0)
_MAX_SUGAR_G_PER_L: Final = 300.0
_STRONGEST_ABV: Final = 15.0  # yeast stops by itself about there; common practice
_SOURCES: Final = ("stoichiometry", "weiss_1974", "bottle_yeast_assumption")


@dataclass(frozen=True, slots=True, kw_only=True)
class Fruit:
    """Fruit or juice that goes in, and the least and most share of sugar in it."""

    mass_g: float
    sugar_share_low: float
    sugar_share_high: float


@dataclass(frozen=True, slots=True, kw_only=True)
class FizzWish:
    """What is to be bottled and how fizzy it shall be.

    ``residual_sugar_low/high_g_per_l`` bound the sugar still in the drink. ``open_jar_c``
    is the warmest the open jar has been since it last made gas. ``warmest_c`` is the
    warmest that the closed bottles may get. ``priming_sugar_g`` is the maker's own amount
    of added sugar; None takes the reckoned one. ``ceiling_bar`` is the gauge pressure that
    the bottles must not pass.
    """

    volume_l: float
    filling: Filling
    ceiling_bar: float
    target_volumes: float = 2.2
    residual_sugar_low_g_per_l: float = 0.0
    residual_sugar_high_g_per_l: float = 0.0
    fruit: tuple[Fruit, ...] = field(default=())
    sugar_kind: SugarKind = SugarKind.SUCROSE
    priming_sugar_g: float | None = None
    open_jar_c: float = 22.0
    place_temperature_c: float = 22.0
    warmest_c: float = 30.0


@dataclass(frozen=True, slots=True, kw_only=True)
class FizzPlan:
    """What the wish comes to.

    ``to_ferment_g_per_l`` is the sugar whose fermenting gives the target,
    ``sugar_to_add_g`` what of it has to be added to all of the drink, and
    ``priming_sugar_g`` what the rest is reckoned with. ``on_target`` and ``all_sugar`` are
    the pressures at the warmest. ``days_to_target`` is None when the sugar cannot give it.
    ``chill_by_day`` is the earliest day on which the bottles could pass their ceiling; None
    when even all the sugar does not bring them there.
    """

    to_ferment_g_per_l: Estimate
    sugar_to_add_g: Estimate
    priming_sugar_g: float
    ethanol_gained_abv: Estimate
    ethanol_all_sugar_abv: float
    on_target: BottlePressure
    all_sugar: BottlePressure
    days_to_target: Estimate | None
    chill_by_day: float | None


WISH_RANGES: Final[dict[str, tuple[float, float, str]]] = {
    "volume_l": (0.05, 500.0, "L"),
    "ceiling_bar": (0.1, co2.MODEL_TOP_BAR, "bar"),
    "target_volumes": (0.1, 5.0, "vol"),
    "residual_sugar_low_g_per_l": (0.0, 200.0, "g/L"),
    "residual_sugar_high_g_per_l": (0.0, 200.0, "g/L"),
    "open_jar_c": (0.0, 40.0, "°C"),
    "place_temperature_c": (0.0, 40.0, "°C"),
    "warmest_c": (0.0, 40.0, "°C"),
}


def plan_fizz(wish: FizzWish) -> FizzPlan:
    """Reckon sugar, pressures, days and alcohol for a wish.

    Raises
    ------
    ImpossibleInput
        With the wish's field, for values outside WISH_RANGES or ends in the wrong order,
        for fruit with an impossible share of sugar, for more than 300 g/L of sugar in all,
        and for bottles as :func:`culturecore.bottle.pressure`.

    Notes
    -----
    Target: yield 90 to 100 %, likely 95 % (bottle_yeast_assumption), and an open jar that
    held between nothing and all it can; the value takes the latter, which asks for less
    sugar. Worst case: 100 % yield of every gram, jar saturated. Added sugar and fruit are
    taken not to change the volume.
    """
    check_wish(wish)
    held_g_per_l = co2.open_jar_g_per_l(
        temperature_c=wish.open_jar_c, altitude_m=wish.filling.altitude_m
    )
    to_ferment = sugar_for_volumes(
        target_volumes=wish.target_volumes, held_g_per_l=held_g_per_l, kind=wish.sugar_kind
    )
    there_low, there_high = _sugar_there(wish)
    to_add = _to_add_g(to_ferment, there_low, there_high, wish.volume_l)
    priming_g = to_add.value if wish.priming_sugar_g is None else wish.priming_sugar_g
    most_g_per_l = there_high + priming_g / wish.volume_l
    _check("priming_sugar_g", most_g_per_l, 0.0, _MAX_SUGAR_G_PER_L, "g/L")
    yeast = _Yeast(wish, held_g_per_l, most_g_per_l)
    return FizzPlan(
        to_ferment_g_per_l=to_ferment,
        sugar_to_add_g=to_add,
        priming_sugar_g=priming_g,
        ethanol_gained_abv=_ethanol_for_volumes(wish.target_volumes, held_g_per_l),
        ethanol_all_sugar_abv=yeast.ethanol_abv(most_g_per_l),
        on_target=yeast.pressure_with(co2.g_per_l_from_volumes(wish.target_volumes)),
        all_sugar=yeast.pressure_after(most_g_per_l),
        days_to_target=_days_to_target(wish, to_ferment, most_g_per_l),
        chill_by_day=yeast.earliest_day_over_ceiling(),
    )


def check_wish(wish: FizzWish) -> None:
    """Refuse a wish that no bottle can have. Raises as :func:`plan_fizz` does."""
    for name, (low, high, unit) in WISH_RANGES.items():
        _check(name, getattr(wish, name), low, high, unit)
    _check(
        "residual_sugar_high_g_per_l",
        wish.residual_sugar_high_g_per_l,
        wish.residual_sugar_low_g_per_l,
        200.0,
        "g/L",
    )
    for fruit in wish.fruit:
        _check("mass_g", fruit.mass_g, 0.0, 1000.0 * wish.volume_l, "g")
        _check("sugar_share_low", fruit.sugar_share_low, 0.0, 1.0, "")
        _check("sugar_share_high", fruit.sugar_share_high, fruit.sugar_share_low, 1.0, "")
    if wish.priming_sugar_g is not None:
        _check("priming_sugar_g", wish.priming_sugar_g, 0.0, math.inf, "g")


def sugar_for_volumes(*, target_volumes: float, held_g_per_l: float, kind: SugarKind) -> Estimate:
    """Return the sugar whose fermenting in the bottle gives so many volumes [g/L].

    Parameters
    ----------
    target_volumes : float
        0 to 20, in the drink; what goes into the headspace comes on top and is left out.
    held_g_per_l : float
        CO2 that the drink holds at most as it is bottled [g/L].
    kind : SugarKind
        Which sugar.

    Returns
    -------
    Estimate
        Value: saturated drink, yield 95 %. Low: saturated, 100 %. High: flat drink, 90 %.
    """
    _check("held_g_per_l", held_g_per_l, 0.0, 40.0, "g/L")
    wanted = co2.g_per_l_from_volumes(target_volumes)
    missing = max(wanted - held_g_per_l, 0.0)
    per_g = co2_g_per_g(kind)
    return Estimate(
        missing / (YIELD_LIKELY * per_g),
        missing / per_g,
        wanted / (YIELD_LOW * per_g),
        sources=("stoichiometry", "bottle_yeast_assumption"),
    )


def sugar_rate_g_per_l_day(temperature_c: float) -> Estimate:
    """Return how much sugar yeast uses up in a closed bottle [g/L a day], 0 to 40 degC.

    An assumption (bottle_yeast_assumption): 0.5 to 3 at 22 degC, and 1.7 to 3 times as much
    for 10 degC more. Outside 15 to 30 degC with Caveat.EXTRAPOLATED. Cold slows it, but
    does not stop it at once.
    """
    _check("temperature_c", temperature_c, 0.0, 40.0, "°C")
    tens = (temperature_c - RATE_AT_C) / 10.0
    ends = (TENFOLD_LOW**tens, TENFOLD_HIGH**tens)
    likely = math.sqrt(RATE_LOW_G_PER_L_DAY * RATE_HIGH_G_PER_L_DAY * ends[0] * ends[1])
    known = _RATE_KNOWN_C[0] <= temperature_c <= _RATE_KNOWN_C[1]
    return Estimate(
        likely,
        RATE_LOW_G_PER_L_DAY * min(ends),
        RATE_HIGH_G_PER_L_DAY * max(ends),
        caveats=(Caveat.RECIPE_ONLY,) if known else (Caveat.RECIPE_ONLY, Caveat.EXTRAPOLATED),
        sources=("bottle_yeast_assumption",),
    )


def days_for(sugar_g_per_l: Estimate, temperature_c: float) -> Estimate:
    """Return how many days yeast needs for so much sugar, as wide as the pace is unsure."""
    for name in ("low", "value", "high"):
        _check("sugar_g_per_l", getattr(sugar_g_per_l, name), 0.0, _MAX_SUGAR_G_PER_L, "g/L")
    rate = sugar_rate_g_per_l_day(temperature_c)
    return Estimate(
        sugar_g_per_l.value / rate.value,
        sugar_g_per_l.low / rate.high,
        sugar_g_per_l.high / rate.low,
        caveats=rate.caveats,
        sources=_SOURCES,
    )


@dataclass(frozen=True, slots=True)
class _Yeast:
    """The course of the worst case: saturated at filling, nothing lost, at the warmest."""

    wish: FizzWish
    held_g_per_l: float
    most_g_per_l: float

    def ethanol_abv(self, fermented_g_per_l: float) -> float:
        grams = fermented_g_per_l * ethanol_g_per_g(SugarKind.SUCROSE)
        return min(abv_from_g_per_l(grams), _STRONGEST_ABV)

    def pressure_after(self, fermented_g_per_l: float) -> BottlePressure:
        made_g_per_l = fermented_g_per_l * co2_g_per_g(SugarKind.SUCROSE)
        return self._pressure(self.held_g_per_l + made_g_per_l, fermented_g_per_l)

    def pressure_with(self, co2_g_per_l: float) -> BottlePressure:
        made_g_per_l = max(co2_g_per_l - self.held_g_per_l, 0.0)
        fermented = made_g_per_l / co2_g_per_g(SugarKind.SUCROSE)
        return self._pressure(co2_g_per_l, min(fermented, self.most_g_per_l))

    def _pressure(self, co2_g_per_l: float, fermented_g_per_l: float) -> BottlePressure:
        return bottle.pressure(
            self.wish.filling,
            co2_g_per_l=co2_g_per_l,
            temperature_c=self.wish.warmest_c,
            sugar_g_per_l=min(max(self.most_g_per_l - fermented_g_per_l, 0.0), 200.0),
            ethanol_abv=self.ethanol_abv(fermented_g_per_l),
        )

    def earliest_day_over_ceiling(self) -> float | None:
        def above_ceiling(fermented_g_per_l: float) -> float:
            trapped_bar = self.pressure_after(fermented_g_per_l).air_trapped_bar
            told = co2.MODEL_TOP_BAR + 1.0 if trapped_bar is None else trapped_bar
            return told - self.wish.ceiling_bar

        if above_ceiling(self.most_g_per_l) < 0.0:
            return None
        fermented = root_of_rising(above_ceiling, 0.0, self.most_g_per_l, tolerance=1e-6)
        return fermented / sugar_rate_g_per_l_day(self.wish.warmest_c).high


def _sugar_there(wish: FizzWish) -> tuple[float, float]:
    """Return the least and most sugar per litre before any is added."""
    low, high = wish.residual_sugar_low_g_per_l, wish.residual_sugar_high_g_per_l
    for fruit in wish.fruit:
        low += fruit.mass_g * fruit.sugar_share_low / wish.volume_l
        high += fruit.mass_g * fruit.sugar_share_high / wish.volume_l
    return low, high


def _to_add_g(to_ferment: Estimate, low: float, high: float, volume_l: float) -> Estimate:
    return Estimate(
        max(to_ferment.value - (low + high) / 2.0, 0.0) * volume_l,
        max(to_ferment.low - high, 0.0) * volume_l,
        max(to_ferment.high - low, 0.0) * volume_l,
        sources=to_ferment.sources,
    )


def _ethanol_for_volumes(target_volumes: float, held_g_per_l: float) -> Estimate:
    """Return the alcohol that comes with making the gas, from saturated to flat [% vol]."""
    per_g_of_gas = ethanol_g_per_g(SugarKind.SUCROSE) / co2_g_per_g(SugarKind.SUCROSE)
    wanted = co2.g_per_l_from_volumes(target_volumes)
    low, high = (
        abv_from_g_per_l(per_g_of_gas * max(wanted - held, 0.0)) for held in (held_g_per_l, 0.0)
    )
    return Estimate((low + high) / 2.0, low, high, sources=("stoichiometry", "oiml_r22"))


def _days_to_target(wish: FizzWish, to_ferment: Estimate, most_g_per_l: float) -> Estimate | None:
    if most_g_per_l < to_ferment.low:
        return None
    return days_for(to_ferment, wish.place_temperature_c)


def _check(field_name: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field_name, value, low=low, high=high, unit=unit)
