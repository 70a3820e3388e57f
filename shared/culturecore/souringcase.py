"""What a forecast is asked about: the batch, its readings, the maker's band, what is known.

Plain values; everything is worked out in `culturecore.forecast`.
"""

from __future__ import annotations

from dataclasses import dataclass

from culturecore.outcome import Estimate
from culturecore.stages import Quantity, TasteMark, TeaKind


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawOff:
    """A share of the jar taken out on a day and replaced by fresh sweet tea.

    ``share`` is the part drawn, 0 to 1; ``sugar_g_per_l`` is that of the fresh tea, None
    for the same as the batch's.
    """

    day: float
    share: float
    sugar_g_per_l: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class KnownCulture:
    """What finished batches taught of a culture, on the scale of the priors.

    ``log_rate_offset`` is the log of its speed against the literature's at like conditions,
    ``log_excess_offset`` that of its strong-ion excess (tea and water of this pantry),
    ``curvature_offset`` the bend of its course. ``batches`` counts the finished batches
    behind it; 0 means that nothing is known beyond the literature.
    """

    log_rate_offset: float
    log_rate_sd: float
    log_excess_offset: float
    log_excess_sd: float
    curvature_offset: float
    curvature_sd: float
    batches: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Conditions:
    """What is known of a batch without reading it.

    ``starter_share`` is the starter's part of the blend's volume; ``start_ph`` was reckoned
    from the recipe (a reading of day 0 belongs among the observations);
    ``starter_ta_g_per_l`` is the starter's titratable acidity as acetic acid, if measured.
    ``temperature_course`` holds (day, degC) as logged; where it is empty ``temperature_c``
    holds throughout. ``known`` is what finished batches taught, ``drawn`` what was taken out
    and topped up with fresh sweet tea.
    """

    volume_l: float
    surface_cm2: float
    starter_share: float
    start_ph: Estimate | None
    starter_ta_g_per_l: float | None
    temperature_c: float
    sugar_g_per_l: float
    tea_kind: TeaKind
    temperature_course: tuple[tuple[float, float], ...] = ()
    known: KnownCulture | None = None
    drawn: tuple[DrawOff, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Observation:
    """One reading with its standard error.

    ``quantity`` is pH, titratable acidity (g/L as acetic acid), Brix, specific gravity
    (20/20 degC) or taste. A taste has its verdict in ``taste``; its ``value`` and ``sd``
    are not looked at.
    """

    day: float
    quantity: Quantity
    value: float
    sd: float
    taste: TasteMark | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """The pH between which the maker likes the drink: first worth tasting, and too sour.

    Above ``too_sweet_g_per_l`` of sugar it is surely too sweet for the maker, below
    ``too_dry_g_per_l`` surely too little so; None where tastings have not shown it.
    """

    first_taste_ph: float = 3.3
    too_sour_ph: float = 2.9
    too_sweet_g_per_l: float | None = None
    too_dry_g_per_l: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class NextReading:
    """The reading that would tell most.

    ``narrows_days`` is by how much it would narrow the 80 % window of the day on which the
    tasting window opens, on average over what it may show.
    """

    quantity: Quantity
    day: float
    narrows_days: float
