"""The jars that could be behind a recipe: standard normal latents made into parameters.

Latents are independent standard normals, one column a parameter; here they become acid,
rate and all the rest, by the priors and the batch's own recipe, temperature and vessel.
The first `BASE` columns are the jar, then come the pieces of its pace, sugar and warmth.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, fields
from functools import cache
from typing import TYPE_CHECKING

from culturecore import pace, priors, souring
from culturecore.equivalenttime import equivalent_days, plain_day, warmer_by_piece
from culturecore.stages import TeaKind

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.souringcase import Conditions, DrawOff

    Floats: TypeAlias = NDArray[float64]

BASE = 7  # starter acid, rate, curvature, strong ions, gluconic share, lag, room for acid
RATE, CURVATURE, EXCESS = 1, 2, 3  # columns that finished batches teach something about
LAG = 5
ROOM = 6
FIRST_PACE = BASE
FIRST_SUGAR = BASE + pace.PIECES
SUGAR = 2  # ethanol, sugar used beside the acids
WARMTH = FIRST_SUGAR + SUGAR  # how much warmth matters, where temperatures were logged
LATENTS = WARMTH + 1

SURFACE_REACH = 4.0  # known vessels lie within this factor of the usual surface

_LEAST_CURVATURE = 0.5
_LEAST_ROOM_MEQ_PER_L = 1e-12
_LEAST_FOR_LAG_MEQ_PER_L = 0.5  # with less, cells come from cloth, air and the pellicle
_ETHANOL_G_PER_L_PER_PERCENT = 7.892
_TABLE_REACH, _TABLE_STEPS = 4.5, 180  # standard deviations, of the table of gluconic shares
_SUCROSE_PER_ETHANOL = 342.30 / (4.0 * 46.07)


@dataclass(frozen=True, slots=True)
class _Stretch:
    """A piece of a course: its first day, what had grown by then, and the state it began in.

    ``brought_meq_per_l`` is acid that starter and tea brought, ``fullness`` the inverse
    hyperbolic tangent of the share of the room that formed acid has taken.
    """

    day: float
    grown: Floats
    brought_meq_per_l: Floats
    fullness: Floats

    def acid(self, grown: Floats, room_meq_per_l: Floats) -> Floats:
        """Acid (meq/L): it holds back what makes it, the more the fuller the room is."""
        import numpy as np

        fullness = self.fullness + (grown - self.grown) / room_meq_per_l
        acid: Floats = self.brought_meq_per_l + room_meq_per_l * np.tanh(fullness)
        return acid


@dataclass(frozen=True, slots=True, kw_only=True)
class PossibleJars:
    """Many possible jars: one value of each parameter a draw, shape (draws, 1)."""

    conditions: Conditions
    start_meq_per_l: Floats
    tea_meq_per_l: Floats
    rate_meq_per_l_day: Floats
    curvature: Floats
    lag_days: Floats
    pace_factors: Floats
    room_meq_per_l: Floats
    excess_meq_per_l: Floats
    gluconic_share: Floats
    ethanol_plateau_percent: Floats
    sugar_factor: Floats

    def in_single_precision(self) -> PossibleJars:
        """Return the same jars as numbers of single precision: for many days, and fast."""
        named = {field.name: getattr(self, field.name) for field in fields(self)}
        conditions = named.pop("conditions")
        return PossibleJars(
            conditions=conditions, **{name: in_single_precision(x) for name, x in named.items()}
        )

    def acid(self, days: Floats) -> Floats:
        """Acid equivalents (meq/L), draws by days."""
        import numpy as np

        grown = self._grown(days)
        first, *later = self._stretches()
        acid = first.acid(grown, self.room_meq_per_l)
        for stretch in later:
            after = stretch.acid(grown, self.room_meq_per_l)
            acid = np.where(days > stretch.day, after, acid)
        return acid

    def ph(self, acid: Floats) -> Floats:
        """Give the pH at these acid equivalents."""
        return souring.ph_of_acid(
            acid,
            gluconic_share=self.gluconic_share,
            strong_ion_excess_meq_per_l=self.excess_meq_per_l,
        )

    def ta(self, acid: Floats) -> Floats:
        """Titratable acidity (g/L as acetic) at these acid equivalents."""
        return souring.ta_g_per_l(acid, self.excess_meq_per_l)

    def ethanol_percent(self, days: Floats) -> Floats:
        """Ethanol (% by volume), draws by days: it rises evenly to day 14 and stays."""
        import numpy as np

        ripe = equivalent_days(self.conditions, days) * self._warmth() / souring.ETHANOL_RISE_DAYS
        rise = np.minimum(np.maximum(ripe, 0.0), 1.0)
        kept = np.ones_like(days)
        for draw in self.conditions.drawn:
            kept = kept * np.where(days > draw.day, 1.0 - draw.share, 1.0)
        # What the starter brings and what the sugar could give bound it.
        most = self.conditions.sugar_g_per_l / _SUCROSE_PER_ETHANOL / _ETHANOL_G_PER_L_PER_PERCENT
        ethanol: Floats = np.minimum(self.ethanol_plateau_percent, most) * (rise * kept)
        return ethanol

    def sugar(self, days: Floats, acid: Floats, ethanol_percent: Floats) -> Floats:
        """All sugars left (g/L, as sucrose), draws by days, by mass balance."""
        import numpy as np

        sugar_g_per_l = np.full_like(days, self.conditions.sugar_g_per_l)
        brought = np.broadcast_to(self.start_meq_per_l, np.shape(acid))
        for draw, stretch in zip(self._draws(), self._stretches()[1:], strict=True):
            fresh = draw.sugar_g_per_l
            fresh = self.conditions.sugar_g_per_l if fresh is None else fresh
            later = days > draw.day
            mixed = (1.0 - draw.share) * sugar_g_per_l + draw.share * fresh
            sugar_g_per_l = np.where(later, mixed, sugar_g_per_l)
            brought = np.where(later, stretch.brought_meq_per_l, brought)
        per_meq = souring.sugar_per_meq(self.gluconic_share)
        formed = np.maximum(acid - brought, 0.0)
        used = formed * per_meq * self.sugar_factor
        used = used + ethanol_percent * (_ETHANOL_G_PER_L_PER_PERCENT * _SUCROSE_PER_ETHANOL)
        left: Floats = np.maximum(sugar_g_per_l - used, 0.0)
        return left

    def day_of_ph(self, ph: Floats) -> Floats:
        """Day on which each jar gets down to each pH of its own (draws by pH).

        After a draw-off, the day on which it gets there again.
        """
        import numpy as np

        inside = np.clip(ph, souring.PH_FLOOR, souring.PH_CAP)
        wanted = souring.acid_of_ph(
            inside,
            gluconic_share=self.gluconic_share,
            strong_ion_excess_meq_per_l=self.excess_meq_per_l,
        )
        last = self._stretches()[-1]
        missing = (wanted - last.brought_meq_per_l) / self.room_meq_per_l
        fullness = np.arctanh(np.clip(missing, 0.0, souring.NEARLY_FULL))
        grown = last.grown + np.maximum(fullness - last.fullness, 0.0) * self.room_meq_per_l
        even = pace.day_grown(
            grown / self.rate_meq_per_l_day, self.curvature, self.lag_days, self.pace_factors
        )
        earliest = last.day
        day = np.maximum(plain_day(self.conditions, even), earliest)
        day = np.where(missing > souring.NEARLY_FULL, np.inf, day)
        day = np.where(missing <= 0.0, earliest, day)
        never: Floats = np.where(ph < souring.PH_FLOOR, np.inf, day)
        at_once: Floats = np.where(ph >= souring.PH_CAP, earliest, never)
        return at_once

    def _grown(self, days: Floats) -> Floats:
        """Acid (meq/L) that would have been formed by each day if nothing held it back."""
        even = equivalent_days(self.conditions, days).astype(self.curvature.dtype, copy=False)
        grown: Floats = self.rate_meq_per_l_day * pace.grown(
            even, self.curvature, self.lag_days, self.pace_factors
        )
        return grown

    def _draws(self) -> list[DrawOff]:
        return sorted(self.conditions.drawn, key=lambda draw: draw.day)

    def _stretches(self) -> list[_Stretch]:
        """Pieces of the course between draw-offs, the first from day 0 on."""
        import numpy as np

        none = np.zeros_like(self.start_meq_per_l)
        found = [_Stretch(0.0, none, self.start_meq_per_l, none)]
        for draw in self._draws():
            last, kept = found[-1], 1.0 - draw.share
            grown = self._grown(np.array([[draw.day]]))
            formed = kept * (last.acid(grown, self.room_meq_per_l) - last.brought_meq_per_l)
            brought = kept * last.brought_meq_per_l + draw.share * self.tea_meq_per_l
            full = np.arctanh(np.clip(formed / self.room_meq_per_l, 0.0, souring.NEARLY_FULL))
            found.append(_Stretch(draw.day, grown, brought, full))
        return found

    def _warmth(self) -> float:
        warm = min(self.conditions.temperature_c, souring.TESTED_HIGH_C)
        factor: float = priors.Q10.centre ** ((warm - souring.REFERENCE_TEMPERATURE_C) / 10.0)
        return factor


def in_single_precision(values: Floats) -> Floats:
    """Return numbers in single precision; what is worked out from them is so too."""
    import numpy as np

    single: Floats = values.astype(np.dtype("float32"))
    return single


def possible_jars(conditions: Conditions, latents: Floats) -> PossibleJars:
    """Turn standard normal latents (draws by `LATENTS`) into the parameters they stand for."""
    import numpy as np

    columns = latents.T[:, :, None]
    log_rate, log_rate_sd = log_rate_prior(conditions)
    log_excess, log_excess_sd = log_excess_prior(conditions)
    curvature, curvature_sd = curvature_prior(conditions)
    share = _gluconic_share(columns[4])
    excess = np.exp(log_excess + log_excess_sd * columns[EXCESS])
    tea_meq = _tea_acid(columns[0], excess, share)
    starter_meq = _starter_acid(conditions, columns[0])
    most = souring.acid_ceiling_meq_per_l(
        start_meq_per_l=0.0, sugar_g_per_l=_all_sugar_g_per_l(conditions), gluconic_share=share
    )
    room = priors.ROOM_FOR_ACID_MEQ_PER_L
    room_meq = room.centre * np.exp(math.log(room.spread) * columns[ROOM])
    ethanol, sugar = priors.ETHANOL_PLATEAU_PERCENT, priors.SUGAR_BESIDE_ACIDS
    return PossibleJars(
        conditions=conditions,
        start_meq_per_l=starter_meq + (1.0 - conditions.starter_share) * tea_meq,
        tea_meq_per_l=tea_meq,
        rate_meq_per_l_day=np.exp(log_rate + log_rate_sd * pace.slower(columns[RATE])),
        curvature=np.maximum(curvature + curvature_sd * columns[2], _LEAST_CURVATURE),
        lag_days=_lag_days(columns[LAG], starter_meq),
        pace_factors=_pace_factors(conditions, latents),
        room_meq_per_l=np.maximum(np.minimum(room_meq, most), _LEAST_ROOM_MEQ_PER_L),
        excess_meq_per_l=excess,
        gluconic_share=share,
        ethanol_plateau_percent=ethanol.centre
        * np.exp(math.log(ethanol.spread) * columns[FIRST_SUGAR]),
        sugar_factor=1.0
        + (sugar.centre - 1.0) * np.exp(math.log(sugar.spread) * columns[FIRST_SUGAR + 1]),
    )


def _pace_factors(conditions: Conditions, latents: Floats) -> Floats:
    """Factors on the rate by piece; a logged warm spell counts for more or less with Q10."""
    import numpy as np

    factors = pace.pace_factors(latents[:, FIRST_PACE:FIRST_SUGAR])
    if not conditions.temperature_course:
        return factors
    warmer = np.array(warmer_by_piece(conditions, pace.PIECE_STARTS), dtype=latents.dtype) / 10.0
    doubt = math.log(priors.Q10.spread) * latents[:, WARMTH, None]
    answer: Floats = factors * np.exp(doubt * warmer)
    return answer


def _all_sugar_g_per_l(conditions: Conditions) -> float:
    """Sugar that the jar has had, with what draw-offs brought."""
    fresh = [
        d.share * (conditions.sugar_g_per_l if d.sugar_g_per_l is None else d.sugar_g_per_l)
        for d in conditions.drawn
    ]
    return conditions.sugar_g_per_l + sum(fresh)


def log_excess_prior(conditions: Conditions) -> tuple[float, float]:
    """Mean and sd of the log of the strong-ion excess (meq/L)."""
    herbal = conditions.tea_kind is TeaKind.HERBAL
    prior = (
        priors.HERBAL_STRONG_ION_EXCESS_MEQ_PER_L if herbal else priors.STRONG_ION_EXCESS_MEQ_PER_L
    )
    known = conditions.known
    if known is None or herbal:
        return math.log(prior.centre), math.log(prior.spread)
    return math.log(prior.centre) + known.log_excess_offset, known.log_excess_sd


def curvature_prior(conditions: Conditions) -> tuple[float, float]:
    """Mean and sd of the curvature."""
    prior, known = priors.CURVATURE, conditions.known
    if known is None:
        return prior.centre, prior.spread
    return prior.centre + known.curvature_offset, known.curvature_sd


def _starter_acid(conditions: Conditions, latent: Floats) -> Floats:
    """Acid that the starter brought (meq per litre of the blend)."""
    import numpy as np

    measured = conditions.starter_ta_g_per_l
    if measured is None:
        per_litre, spread = priors.STARTER_ACID_MEQ_PER_L.centre, priors.STARTER_ACID_MEQ_PER_L
    else:
        free = measured / souring.ACETIC_G_PER_MEQ
        per_litre = free + priors.STRONG_ION_EXCESS_MEQ_PER_L.centre
        spread = priors.MEASURED_STARTER_SPREAD
    acid: Floats = conditions.starter_share * per_litre * np.exp(math.log(spread.spread) * latent)
    return acid


def _tea_acid(latent: Floats, excess_meq_per_l: Floats, gluconic_share: Floats) -> Floats:
    """Acid (meq/L) of sweet tea alone, as much as its ions need for its own pH.

    Notes: it goes with the starter's latent, since both only show as the start pH.
    """
    import numpy as np

    tea = priors.SWEET_TEA_PH
    return souring.acid_of_ph(
        np.clip(tea.centre - tea.spread * latent, souring.PH_FLOOR, souring.PH_CAP),
        gluconic_share=gluconic_share,
        strong_ion_excess_meq_per_l=excess_meq_per_l,
    )


def _lag_days(latent: Floats, starter_meq_per_l: Floats) -> Floats:
    """Wait before souring (days): the longer, the less live starter there is to begin with.

    Notes: the acid that the starter brought stands for its cells, so that a start near pH 5
    foretells a wait, whatever share of starter was written down.
    """
    import numpy as np

    lag, usual = priors.LAG_DAYS, priors.USUAL_STARTER_MEQ_PER_L
    fewer = np.log(usual / np.maximum(starter_meq_per_l, _LEAST_FOR_LAG_MEQ_PER_L))
    wait = np.maximum(fewer, 0.0) * priors.LAG_PER_E_FOLD_DAYS.centre
    days: Floats = np.clip(lag.centre + wait + lag.spread * latent, 0.0, priors.LONGEST_LAG_DAYS)
    return days


def log_rate_prior(conditions: Conditions) -> tuple[float, float]:
    """Mean and sd of the log of the rate at this temperature, surface and tea."""
    rate, known = priors.RATE_MEQ_PER_L_DAY, conditions.known
    warmth = min(conditions.temperature_c, souring.TESTED_HIGH_C)
    warmth = (warmth - souring.REFERENCE_TEMPERATURE_C) / 10.0
    per_cm = conditions.surface_cm2 / (conditions.volume_l * 1000.0)
    reach = math.log(SURFACE_REACH)
    surface = math.log(per_cm / priors.REFERENCE_SURFACE_PER_CM.centre)
    surface = min(max(surface, -reach), reach)
    mean = (
        math.log(rate.centre)
        + (known.log_rate_offset if known is not None else 0.0)
        + math.log(priors.Q10.centre) * warmth
        + priors.SURFACE_EXPONENT.centre * surface
    )
    beyond = max(
        souring.TESTED_LOW_C - conditions.temperature_c,
        conditions.temperature_c - souring.TESTED_HIGH_C,
        0.0,
    )
    sd = math.hypot(
        known.log_rate_sd if known is not None else math.log(rate.spread),
        priors.RATE_BEYOND_TESTED_PER_10_C.spread * beyond / 10.0,
        math.log(priors.Q10.spread) * warmth,
        priors.SURFACE_EXPONENT.spread * surface,
        math.log(priors.TEA_FACTOR.spread),
    )
    return mean, sd


def _gluconic_share(latent: Floats) -> Floats:
    """Beta(2, 5) from a standard normal, by a table of both distribution functions."""
    import numpy as np

    table, rise = _gluconic_table()
    place = (latent + _TABLE_REACH) * (_TABLE_STEPS / (2.0 * _TABLE_REACH))
    place = np.minimum(np.maximum(place, 0.0), float(_TABLE_STEPS))
    step = np.minimum(place.astype(np.intp), _TABLE_STEPS - 1)
    share: Floats = table.take(step) + rise.take(step) * (place - step)
    return share.astype(latent.dtype, copy=False)


@cache
def _gluconic_table() -> tuple[Floats, Floats]:
    """Share at evenly spaced normals, and its rise to the next one."""
    import numpy as np

    shares = np.linspace(0.0, 0.95, 96)
    below = 1.0 - (1.0 - shares) ** 5 * (1.0 + 5.0 * shares)
    normal = np.linspace(-_TABLE_REACH, _TABLE_REACH, _TABLE_STEPS + 1)
    cumulative = np.array([0.5 * math.erfc(-x / math.sqrt(2.0)) for x in normal])
    table = np.interp(cumulative, below, shares)
    return table, np.diff(table)
