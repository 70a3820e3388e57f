"""What closed bottles may do, drawn many times over, and how well each draw fits the checks.

Needs numpy, so nothing that runs at the start of the program imports this. A draw is a row
of standard normal latents: pace, warmth of the pace, sugar, yield, gas at filling, warmth of
the days ahead, then one for each venting.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

import numpy as np
from numpy.typing import NDArray

from culturecore import bottlearrays as arrays
from culturecore import co2
from culturecore.bottled import Bottled, Check
from culturecore.bottleverdicts import PRESSURE_DOUBT_SHARE
from culturecore.conditioning import RATE_AT_C, YIELD_LOW
from culturecore.ethanol import ETHANOL_G_PER_ML, SugarKind, co2_g_per_g, ethanol_g_per_g
from culturecore.fizzpace import TENFOLD_LOG, TENFOLD_SD
from culturecore.stages import CheckKind, Feel, Opened

Floats = NDArray[np.float64]

LATENTS: Final = 6
# bottle_feel_assumption: a plastic test bottle gives way, then resists, then is hard
# [bar gauge]; an opened drink is flat, or rushes out [volumes]. Each edge with its doubt.
FEEL_EDGES_BAR: Final = ((0.7, 0.3), (2.0, 0.6))
OPENED_EDGES_VOLUMES: Final = ((1.5, 0.5), (3.4, 0.7))
SLIP: Final = 0.04  # a check that says nothing: the wrong bottle pressed, the wrong word chosen
GAUGE_DOUBT_BAR: Final = 0.1
GAUGE_DOUBT_SHARE: Final = 0.04
_CO2_PER_G: Final = co2_g_per_g(SugarKind.SUCROSE)  # a hexose gives 5 % less: the safe side
_ABV_PER_G: Final = ethanol_g_per_g(SugarKind.SUCROSE) / (10.0 * ETHANOL_G_PER_ML)
_GAUGE_SPAN_BAR: Final = 31.0  # what any gauge may show
_SQUARE_ROOT_2: Final = math.sqrt(2.0)


@dataclass(frozen=True, slots=True)
class Gas:
    """Draws by days: sugar used up and left [g/L], all CO2 in the bottle [g/L as filled]."""

    fermented: Floats
    left: Floats
    total: Floats

    @property
    def ethanol_abv(self) -> Floats:
        """Alcohol made since filling [% vol]."""
        answer: Floats = _ABV_PER_G * self.fermented
        return answer

    @property
    def factors(self) -> Floats:
        """By how much sugar and alcohol lower the solubility."""
        return arrays.solute_factors(self.left, self.ethanol_abv)


@dataclass(frozen=True, slots=True)
class Shown:
    """Draws by days: gauge pressure with the air dissolved and trapped [bar], and volumes."""

    settled_bar: Floats
    trapped_bar: Floats
    volumes: Floats


def normal_share(values: Floats) -> Floats:
    """Return the standard normal's distribution function, within 2e-7.

    Abramowitz & Stegun 1964, 7.1.26, from memory; checked against math.erf.
    """
    size = np.abs(values) / _SQUARE_ROOT_2
    t = 1.0 / (1.0 + 0.3275911 * size)
    series = t * (
        0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))
    )
    tail = 0.5 * series * np.exp(-size * size)
    answer: Floats = np.where(values < 0.0, tail, 1.0 - tail)
    return answer


class Case:
    """Bottles with everything worked out that all draws share."""

    def __init__(self, bottled: Bottled) -> None:
        self._bottled = bottled
        vents = (check.day for check in bottled.checks if check.kind is CheckKind.VENTED)
        self._vents = tuple(sorted(vents))
        starts = {0.0, *(step.day for step in bottled.steps)}
        if bottled.chilled_day is not None:
            starts.add(bottled.chilled_day)
        self._edges = (*sorted(starts), math.inf)
        self._held_most = co2.open_jar_g_per_l(
            temperature_c=bottled.open_jar_c, altitude_m=bottled.filling.altitude_m
        )

    @property
    def dimensions(self) -> int:
        """How many latents a draw has."""
        return LATENTS + len(self._vents)

    def grow(self, latents: Floats, days: Sequence[float]) -> Gas:
        """Let every draw ferment to each of the days."""
        sugar, held = self._sugar(latents), self._held(latents)
        yield_share = YIELD_LOW + (1.0 - YIELD_LOW) * normal_share(latents[:, 3])[:, None]
        rates, moments = self._rates(latents), (*days, *self._vents)
        fermented = np.minimum(rates @ self._lengths(moments), sugar)
        made = _CO2_PER_G * yield_share * fermented
        count = len(days)
        total = held + made[:, :count]
        for number, vent in enumerate(self._vents):
            place = count + number
            used, made_then = fermented[:, place : place + 1], made[:, place : place + 1]
            # held: what the bottle would have at the vent, had it made no gas at all
            before = Gas(used, sugar - used, held + made_then)
            share = normal_share(latents[:, LATENTS + number])[:, None]
            held = self._vented(before, vent, share) - made_then
            later = np.array(days) >= vent
            total = np.where(later[None, :], held + made[:, :count], total)
        spent = fermented[:, :count]
        return Gas(spent, sugar - spent, np.maximum(total, 0.0))

    def shown(self, gas: Gas, celsius: Sequence[float]) -> Shown:
        """Return what gauges would show, each day at its temperature."""
        settled, trapped, volumes = (np.empty_like(gas.total) for _ in range(3))
        factors = gas.factors
        for one in sorted(set(celsius)):
            places = [place for place, other in enumerate(celsius) if other == one]
            closed = self._closed(one)
            of_day = factors[:, places]
            pressure = arrays.co2_bar(closed, gas.total[:, places], of_day)
            settled[:, places] = arrays.settled_bar(closed, pressure)
            trapped[:, places] = arrays.trapped_bar(closed, pressure)
            dissolved = arrays.dissolved_g_per_l(closed, pressure, of_day)
            volumes[:, places] = dissolved / co2.CO2_G_PER_L_PER_VOLUME
        return Shown(settled, trapped, volumes)

    def over_ceiling(self, latents: Floats, days: Sequence[float]) -> Floats:
        """Return for each draw the day on which it may pass the ceiling; inf for never.

        At the warmest, with all air trapped and the doubt of the calculation on top. After
        chilling only what happens in the cold counts.
        """
        chilled = self._bottled.chilled_day
        start = 0.0 if chilled is None else chilled
        seen = [day for day in days if day >= start]
        gas = self.grow(latents, seen)
        excess = gas.total - self._most_gas(gas, seen)
        return _first_above(excess, np.array(seen))

    def log_likelihood(self, latents: Floats) -> Floats:
        """Return how well each draw explains the checks."""
        told = [check for check in self._bottled.checks if check.kind in _SAYING]
        answer = np.zeros(len(latents))
        if not told:
            return answer
        # a venting or chilling at the same instant comes after what was felt or read
        days = [math.nextafter(check.day, -1.0) for check in told]
        gas = self.grow(latents, days)
        celsius = [
            self._bottled.likely_c(day) if check.temperature_c is None else check.temperature_c
            for day, check in zip(days, told, strict=True)
        ]
        shown = self.shown(gas, celsius)
        middle = 0.5 * (shown.settled_bar + shown.trapped_bar)
        for place, check in enumerate(told):
            answer += np.log(likelihood(check, middle[:, place], shown.volumes[:, place]))
        return answer

    def _sugar(self, latents: Floats) -> Floats:
        low, high = self._bottled.sugar_low_g_per_l, self._bottled.sugar_high_g_per_l
        answer: Floats = low + (high - low) * normal_share(latents[:, 2])[:, None]
        return answer

    def _held(self, latents: Floats) -> Floats:
        # the root leans to the full jar: less sugar is then needed to burst
        answer: Floats = self._held_most * np.sqrt(normal_share(latents[:, 4]))[:, None]
        return answer

    def _rates(self, latents: Floats) -> Floats:
        """Sugar used up a day [g/L], draws by stretches of one temperature."""
        bottled = self._bottled
        warmer = max(bottled.warmest_c - bottled.place_temperature_c, 0.0)
        # the square leans to the usual temperature: a whole week is seldom as warm as its peak
        ahead = bottled.place_temperature_c + warmer * normal_share(latents[:, 5]) ** 2
        read = [bottled.read_c(start) for start in self._edges[:-1]]
        warmth = np.stack(
            [ahead if celsius is None else np.full_like(ahead, celsius) for celsius in read],
            axis=1,
        )
        log_rate = bottled.pace.log_rate + bottled.pace.sd * latents[:, 0]
        tenfold = np.maximum(TENFOLD_LOG + TENFOLD_SD * latents[:, 1], 0.0)
        rates: Floats = np.exp(log_rate[:, None] + tenfold[:, None] * (warmth - RATE_AT_C) / 10.0)
        return rates

    def _lengths(self, days: Sequence[float]) -> Floats:
        """How much of each stretch has passed by each day: stretches by days."""
        moments = np.array(days)
        rows = [np.clip(moments - start, 0.0, end - start) for start, end in pairwise(self._edges)]
        return np.stack(rows)

    def _vented(self, gas: Gas, day: float, share: Floats) -> Floats:
        """All CO2 left after a cap was lifted: between the drink's and a flat drink's."""
        closed = self._closed(self._bottled.likely_c(day))
        if closed.is_brimful:
            return gas.total
        factors = gas.factors
        pressure = arrays.co2_bar(closed, gas.total, factors)
        most = arrays.dissolved_g_per_l(closed, pressure, factors)
        flat = arrays.dissolved_g_per_l(closed, np.float64(-closed.offset_bar), factors)
        least = np.minimum(flat, most)
        kept = (most - share * (most - least)) * closed.drink_l / closed.filled_l
        answer: Floats = np.minimum(kept, gas.total)
        return answer

    def _most_gas(self, gas: Gas, days: Sequence[float]) -> Floats:
        """All the CO2 with which the bottle is at its ceiling at the warmest [g/L as filled]."""
        bottled, factors = self._bottled, gas.factors
        doubt = PRESSURE_DOUBT_SHARE
        gauge_bar = (bottled.ceiling_bar - doubt) / (1.0 + doubt)
        answer = np.empty_like(gas.total)
        celsius = [bottled.warmest_by(day) for day in days]
        for one in sorted(set(celsius)):
            places = [place for place, other in enumerate(celsius) if other == one]
            closed = self._closed(one)
            co2_bar = gauge_bar - closed.offset_bar - closed.air_trapped_bar
            if co2_bar <= 0.0:  # air alone, or no room at all: any gas is too much
                answer[:, places] = -1.0
                continue
            held = arrays.held_g(closed, np.float64(co2_bar), factors[:, places])
            answer[:, places] = held / closed.filled_l
        return answer

    def _closed(self, temperature_c: float) -> arrays.ClosedBottle:
        sugar = min(self._bottled.sugar_high_g_per_l, 200.0)
        return arrays.closed_at(self._bottled.filling, temperature_c, sugar)


_SAYING: Final = (CheckKind.FEEL, CheckKind.GAUGE, CheckKind.OPENED)
_FEELS: Final = tuple(Feel)
_OPENINGS: Final = tuple(Opened)


def likelihood(check: Check, gauge_bar: Floats, volumes: Floats) -> Floats:
    """Return how likely a check is, for bottles at such pressures and volumes; above 0."""
    if check.gauge_bar is not None:
        spread = np.hypot(np.hypot(check.sd_bar, GAUGE_DOUBT_BAR), GAUGE_DOUBT_SHARE * gauge_bar)
        off = (check.gauge_bar - gauge_bar) / spread
        bell = np.exp(-0.5 * off * off) / (spread * math.sqrt(2.0 * math.pi))
        answer: Floats = (1.0 - SLIP) * bell + SLIP / _GAUGE_SPAN_BAR
        return answer
    if check.feel is not None:
        return _of_class(_FEELS.index(check.feel), gauge_bar, FEEL_EDGES_BAR)
    place = _OPENINGS.index(check.opened or Opened.RIGHT)
    return _of_class(place, volumes, OPENED_EDGES_VOLUMES)


def _of_class(place: int, value: Floats, edges: Iterable[tuple[float, float]]) -> Floats:
    """Return the chance of one of three classes in order, whose edges are not sharp."""
    (first, first_sd), (last, last_sd) = edges
    above_first = normal_share((value - first) / first_sd)
    # never more above the upper edge than above the lower one, however wide its doubt
    above_last = np.minimum(normal_share((value - last) / last_sd), above_first)
    chance = (1.0 - above_first, above_first - above_last, above_last)[place]
    answer: Floats = (1.0 - SLIP) * chance + SLIP / 3.0
    return answer


def _first_above(excess: Floats, days: Floats) -> Floats:
    """Return the day on which each row first rises above 0, straight between days."""
    above = excess > 0.0
    place = above.argmax(axis=1)
    rows = np.arange(len(excess))
    before = np.maximum(place - 1, 0)
    low, high = excess[rows, before], excess[rows, place]
    share = np.where(place > 0, -low / np.where(high > low, high - low, 1.0), 0.0)
    crossing = days[before] + np.clip(share, 0.0, 1.0) * (days[place] - days[before])
    answer: Floats = np.where(above.any(axis=1), crossing, np.inf)
    return answer
