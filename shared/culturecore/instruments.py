"""What a hydrometer and a refractometer say, at the liquid's temperature and with a culture.

Both are made for sugar in water at one temperature. Temperature can be corrected. Ethanol,
acids and inverted sugar cannot be told from sugar by either alone: from the second day on
a reading is apparent, and says how things move, not how much sugar is left.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from culturecore import refraction, sugar
from culturecore.alcohol import (
    BRIX_PER_ACID_PERCENT,
    BRIX_PER_ETHANOL_PERCENT,
    SG_PER_ACID_PERCENT,
)
from culturecore.errors import ImpossibleInput
from culturecore.ethanol import density_kg_per_l as ethanol_density_kg_per_l
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.rootfinding import root_of_rising

GLASS_EXPANSION_PER_K: Final = 25e-6  # of volume; oiml_r22_glass
GRAVITY_RANGE: Final = (0.97, 1.15)
APPARENT_FROM_DAY: Final = 1.0
# Standard uncertainties: half a mark of a kitchen instrument; assumption.
HYDROMETER_SD_SG: Final = 0.001
REFRACTOMETER_SD_BRIX: Final = 0.2
Z_80: Final = 1.2816

VERDICT_CODES: Final = frozenset({"reading_is_sugar", "reading_is_apparent"})


@dataclass(frozen=True, slots=True, kw_only=True)
class SugarReading:
    """A corrected reading: gravity 20/20, Brix, and whether they mean sugar."""

    specific_gravity: Estimate
    brix: Estimate
    verdict: Verdict
    sources: tuple[str, ...]


def hydrometer_reading(
    *, shown_sg: float, temperature_c: float, made_for_c: float = 20.0, day: float = 0.0
) -> SugarReading:
    """Return specific gravity 20/20 and Brix behind a hydrometer's reading.

    Parameters
    ----------
    shown_sg : float
        0.97 to 1.15, relative to water at ``made_for_c``.
    temperature_c : float
        Of the liquid, 0 to 50 degC.
    made_for_c : float
        Printed on the instrument: 15, 15.6 or 20 degC, allowed 10 to 30.
    day : float
        Since the culture went in; after the first the reading is apparent.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    The liquid's density is the reading times that of water, less the expansion of the glass
    (oiml_r22_glass); which sugar solution has it at that temperature says what it would
    have at 20 degC (emmerich_icumsa). Below water, its expansion is taken as water's.
    """
    _check("shown_sg", shown_sg, *GRAVITY_RANGE, "SG")
    _check("temperature_c", temperature_c, 0.0, 50.0, "°C")
    _check("made_for_c", made_for_c, 10.0, 30.0, "°C")
    density = _density_in_glass(
        shown_sg, sugar.water_density_kg_per_l(made_for_c), temperature_c - made_for_c
    )
    if density <= sugar.water_density_kg_per_l(temperature_c):
        gravity = density / sugar.water_density_kg_per_l(temperature_c)
        brix = 0.0
    else:
        brix = root_of_rising(
            lambda brix: sugar.density_kg_per_l(brix, temperature_c) - density,
            0.0,
            sugar.MAX_BRIX,
            tolerance=1e-10,
        )
        gravity = sugar.sg_from_brix(brix)
    spread = Z_80 * HYDROMETER_SD_SG
    return SugarReading(
        specific_gravity=Estimate(
            gravity, gravity - spread, gravity + spread, sources=("oiml_r22_glass",)
        ),
        brix=Estimate(
            brix,
            min(sugar.brix_from_sg(max(gravity - spread, 1.0)), brix),
            max(sugar.brix_from_sg(max(gravity + spread, 1.0)), brix),
            sources=("emmerich_icumsa",),
        ),
        verdict=_meaning(day),
        sources=("oiml_r22_glass", "emmerich_icumsa", "kell_water_density"),
    )


def refractometer_reading(
    *, shown_brix: float, temperature_c: float, is_compensated: bool = False, day: float = 0.0
) -> SugarReading:
    """Return Brix and specific gravity behind a refractometer's reading.

    Parameters
    ----------
    shown_brix : float
        0 to 28 °Bx on a scale made for 20 degC.
    temperature_c : float
        Of instrument and liquid, 5 to 40 degC.
    is_compensated : bool
        The instrument corrects for temperature by itself; nothing is added then.
    day : float
        As in :func:`hydrometer_reading`.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    The Brix whose refractive index at that temperature is the shown one's at 20 degC; see
    :func:`culturecore.refraction.index_at`. A reading that comes out below water is water.
    """
    _check("shown_brix", shown_brix, 0.0, 28.0, "°Bx")
    _check("temperature_c", temperature_c, 5.0, 40.0, "°C")
    brix = shown_brix
    if not is_compensated:
        wanted = refraction.index_from_brix(shown_brix)
        brix = root_of_rising(
            lambda brix: refraction.index_at(brix, temperature_c) - wanted,
            0.0,
            refraction.MAX_BRIX,
            tolerance=1e-10,
        )
    low, high = (max(brix + sign * Z_80 * REFRACTOMETER_SD_BRIX, 0.0) for sign in (-1, 1))
    sources = ("icumsa_1974", "iapws_r9_97", "lorentz_lorenz")
    return SugarReading(
        specific_gravity=Estimate(
            sugar.sg_from_brix(brix),
            sugar.sg_from_brix(low),
            sugar.sg_from_brix(high),
            sources=("emmerich_icumsa",),
        ),
        brix=Estimate(brix, low, high, sources=sources),
        verdict=_meaning(day),
        sources=(*sources, "emmerich_icumsa"),
    )


def false_brix(*, ethanol_mass_percent: float, acid_mass_percent: float) -> Estimate:
    """Return what ethanol and acid add to a refractometer's reading [°Bx].

    Parameters
    ----------
    ethanol_mass_percent, acid_mass_percent : float
        0 to 5 % by mass, the acid as acetic acid.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    lorentz_lorenz_ethanol; a tenth either way as bounds. Gluconic acid and the sugars
    of inverted sucrose read about as sucrose does.
    """
    _check("ethanol_mass_percent", ethanol_mass_percent, 0.0, 5.0, "%")
    _check("acid_mass_percent", acid_mass_percent, 0.0, 5.0, "%")
    added = (
        BRIX_PER_ETHANOL_PERCENT * ethanol_mass_percent + BRIX_PER_ACID_PERCENT * acid_mass_percent
    )
    return Estimate(added, 0.9 * added, 1.1 * added, sources=("lorentz_lorenz_ethanol",))


def false_gravity(*, ethanol_mass_percent: float, acid_mass_percent: float) -> Estimate:
    """Return what ethanol and acid add to a hydrometer's reading [SG]; ethanol takes away.

    Parameters and errors as in :func:`false_brix`.

    Notes
    -----
    oiml_r22 for ethanol in water, lorentz_lorenz_ethanol for the acid; a tenth of each part
    either way as bounds.
    """
    _check("ethanol_mass_percent", ethanol_mass_percent, 0.0, 5.0, "%")
    _check("acid_mass_percent", acid_mass_percent, 0.0, 5.0, "%")
    water = ethanol_density_kg_per_l(0.0, 20.0)
    lighter = ethanol_density_kg_per_l(ethanol_mass_percent, 20.0) / water - 1.0
    heavier = SG_PER_ACID_PERCENT * acid_mass_percent
    doubt = 0.1 * (heavier - lighter)
    added = lighter + heavier
    return Estimate(
        added, added - doubt, added + doubt, sources=("oiml_r22", "lorentz_lorenz_ethanol")
    )


def _density_in_glass(shown_sg: float, water_density: float, warmer_by: float) -> float:
    """Return the density that floats the glass there; ``warmer_by`` in kelvin."""
    return shown_sg * water_density * (1.0 - GLASS_EXPANSION_PER_K * warmer_by)


def _meaning(day: float) -> Verdict:
    if not 0.0 <= day < 10000.0:  # NaN fails too
        raise ImpossibleInput("day", day, low=0.0, unit="d")
    numbers = {"day": day, "from_day": APPARENT_FROM_DAY}
    if day <= APPARENT_FROM_DAY:
        return Verdict("reading_is_sugar", Level.INFORM, numbers, ("emmerich_icumsa",))
    return Verdict("reading_is_apparent", Level.WARN, numbers, ("lorentz_lorenz_ethanol",))


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
