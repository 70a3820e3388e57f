"""Every safety limit in one table with its source, and the verdicts drawn from them.

A verdict never says that a drink is safe: pH at or below 4.2 is necessary, not
sufficient (survivors were found in challenge studies: Brewer et al. 2021, J. Food Prot.
84(8):1366-1373, abstract). Local rules come first. Nothing here extrapolates: what the
limits do not settle raises NotAssessed, which no caller may show as safe.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.sources import SOURCES, Standing
from culturecore.stages import Look, Material


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit: its value, its unit, and the source keys behind it.

    ``own_standing`` is given where the figure is not simply the one its sources print.
    """

    value: float
    unit: str
    source_keys: tuple[str, ...]
    own_standing: Standing | None = None

    @property
    def source(self) -> str:
        """The sources in full."""
        return "; ".join(SOURCES[key].citation for key in self.source_keys)

    @property
    def standing(self) -> Standing:
        """How well the figure stands: its own standing, or that of its best source."""
        if self.own_standing is not None:
            return self.own_standing
        return min((SOURCES[key].standing for key in self.source_keys), key=list(Standing).index)

    @property
    def confirmed(self) -> bool:
        """Whether at least one source was itself read for this very figure."""
        return self.standing is Standing.READ


LIMITS: Final[dict[str, Limit]] = {
    "ph_finished_max": Limit(4.2, "pH", ("fpt_2025", "niagara_region")),
    "ph_finished_min": Limit(2.5, "pH", ("niagara_region", "fpt_2025")),
    "ph_deadline_days": Limit(7.0, "d", ("nummer_2013",)),
    "ph_slow_days": Limit(5.0, "d", ("safety_choice",)),
    "ph_start_max": Limit(4.6, "pH", ("food_code_tcs", "cfr_114_80")),
    "ph_start_wanted": Limit(4.2, "pH", ("fpt_2025",)),
    "ph_strip_max": Limit(4.0, "pH", ("cfr_114_80",)),
    "steep_min_c": Limit(74.0, "°C", ("niagara_region",)),  # 165 degF
    "steep_minutes": Limit(10.0, "min", ("fst_297",)),
    "uncultured_warn_hours": Limit(2.0, "h", ("food_code_cooling",)),
    "uncultured_max_hours": Limit(4.0, "h", ("food_code_cooling",)),
    "starter_share_min": Limit(0.10, "", ("fst_297",)),
    "starter_share_low": Limit(0.0625, "", ("kstate_2019",)),
    "starter_share_max": Limit(0.25, "", ("recipe_practice",)),
    "culture_in_max_c": Limit(30.0, "°C", ("culture_temperature_practice",)),
    "culture_harm_c": Limit(40.0, "°C", ("culture_temperature_practice",)),
    "place_low_c": Limit(18.0, "°C", ("culture_temperature_practice",)),
    "place_high_c": Limit(32.0, "°C", ("culture_temperature_practice",)),
    "place_reading_hours": Limit(72.0, "h", ("safety_choice",)),
    "long_souring_days": Limit(21.0, "d", ("safety_choice", "nummer_2013")),
    "over_long_souring_days": Limit(30.0, "d", ("nummer_2013",)),
    # --- bottles: gauge pressures; the printed 4.7 bar leaves open whether it is one --------
    "glass_printed_bar": Limit(4.7, "bar", ("british_glass_tec_7",)),
    "bottle_ceiling_bar": Limit(
        3.7, "bar", ("british_glass_tec_7", "safety_choice"), Standing.DERIVED
    ),
    "bottle_ceiling_volumes": Limit(
        4.0, "vol", ("bs_6119_1", "british_glass_tec_7", "safety_choice"), Standing.DERIVED
    ),
    "bottle_warn_bar": Limit(3.0, "bar", ("safety_choice",)),
    "bottle_warn_volumes": Limit(3.5, "vol", ("safety_choice",)),
    "bottle_chill_bar": Limit(2.5, "bar", ("safety_choice",)),
    "bottle_rated_share": Limit(0.75, "", ("safety_choice",)),
    "glass_max_l": Limit(1.15, "L", ("british_glass_tec_7",)),
    "headspace_share_usual": Limit(0.035, "", ("cetie_dt_11", "bs_6119_1")),
    "headspace_share_min": Limit(0.03, "", ("cetie_dt_11", "safety_choice"), Standing.DERIVED),
    "headspace_share_max": Limit(0.10, "", ("safety_choice",)),
    # --- alcohol ------------------------------------------------------------------------
    "abv_us": Limit(0.5, "% vol", ("ttb_kombucha",)),
    "abv_canada": Limit(1.1, "% vol", ("health_canada_ethanol",)),
    "abv_canada_provinces": Limit(0.5, "% vol", ("cfia_2020",)),
    "abv_bc_ontario": Limit(1.0, "% vol", ("ccnse_abstract",)),
    "abv_anz_statement": Limit(0.5, "% vol", ("wa_health",)),
    "abv_anz_soft_drink": Limit(1.15, "% vol", ("tasmania_doh",)),
    "abv_eu_statement": Limit(1.2, "% vol", ("eu_1169_2011",)),
    "abv_uk_low": Limit(1.2, "% vol", ("uk_descriptors",)),
    # --- serving, keeping, cleaning -------------------------------------------------------
    "cold_max_c": Limit(5.0, "°C", ("food_code_cold",)),
    "keeping_days": Limit(30.0, "d", ("safety_choice",)),
    "serving_day_fl_oz": Limit(4.0, "fl oz", ("niagara_region",)),
    "pasteurise_min_c": Limit(82.0, "°C", ("niagara_region",)),
    "chlorine_max_ppm": Limit(200.0, "ppm", ("nc_state_2004",)),
    "caffeine_day_mg": Limit(400.0, "mg", ("efsa_2015",)),
    "caffeine_once_mg": Limit(200.0, "mg", ("efsa_2015",)),
    # --- instruments ----------------------------------------------------------------------
    "meter_slope_low": Limit(0.85, "", ("calibration_notes",)),
    "meter_slope_high": Limit(1.05, "", ("calibration_notes",)),
    "meter_slope_good_low": Limit(0.92, "", ("electrode_habit",)),
    "meter_slope_good_high": Limit(1.02, "", ("electrode_habit",)),
    "meter_offset_mv": Limit(30.0, "mV", ("calibration_notes",)),
    "meter_accuracy_ph": Limit(0.02, "pH", ("meter_accuracy_notes",)),
}

# The codes of verdicts on brewing; alcohol, bottleverdicts and drinkverdicts list their own.
# Each needs its sentence where people read it.
VERDICT_CODES: Final = frozenset(
    {
        "material_good", "material_steel", "material_ceramic_checked", "material_plastic",
        "material_unknown_plastic", "material_wood", "material_lead", "material_reactive",
        "culture_temperature_good", "culture_too_warm", "culture_far_too_warm",
        "place_good", "place_cold", "place_warm", "place_now_cold", "place_now_warm",
        "start_ph_good", "start_ph_above_wanted", "start_ph_high",
        "ph_low_enough", "ph_over_acid", "ph_not_yet", "ph_unsure", "ph_slow",
        "ph_deadline_missed", "ph_deadline_unproven",
        "mold_discard_all", "look_unsure",
        "uncultured_good", "uncultured_long", "uncultured_too_long",
        "souring_long", "souring_over_long",
        "starter_low", "starter_high", "starter_odd", "cannot_reach_target",
        "fill_over_working", "sugar_low", "sugar_high", "tea_low", "tea_high", "tea_herbal",
        "needs_cooling", "steep_cool", "hot_water_scald", "cold_water_unboiled",
    }
)  # fmt: skip


def limit(key: str) -> float:
    """Return the value of a limit in its own unit."""
    return LIMITS[key].value


_MATERIALS: Final[dict[Material, tuple[str, Level, tuple[str, ...]]]] = {
    Material.GLASS: ("material_good", Level.INFORM, ("mmwr_1995",)),
    Material.STAINLESS_STEEL: ("material_steel", Level.INFORM, ("material_practice",)),
    Material.CERAMIC_FOOD_SAFE: ("material_ceramic_checked", Level.WARN, ("mmwr_1995",)),
    Material.FOOD_PLASTIC: ("material_plastic", Level.WARN, ("material_practice",)),
    Material.OTHER_PLASTIC: ("material_unknown_plastic", Level.WARN, ("material_practice",)),
    Material.WOOD: ("material_wood", Level.WARN, ("material_practice",)),
    Material.CERAMIC_UNKNOWN_GLAZE: (
        "material_lead",
        Level.STOP,
        ("mmwr_1995", "munilla_garcia_2023"),
    ),
    Material.LEAD_CRYSTAL: ("material_lead", Level.STOP, ("mmwr_1995", "munilla_garcia_2023")),
    Material.REACTIVE_METAL: ("material_reactive", Level.STOP, ("material_practice",)),
}


def material_verdict(material: Material) -> Verdict:
    """Judge what the acid liquid will stand in for weeks."""
    code, level, sources = _MATERIALS[material]
    return Verdict(code, level, sources=sources)


def culture_temperature_verdict(
    temperature_c: float, limit_c: float = LIMITS["culture_in_max_c"].value
) -> Verdict:
    """Judge whether a culture may go into liquid of this temperature.

    Parameters
    ----------
    temperature_c : float
        Measured in the liquid [degC].
    limit_c : float
        The maker's own limit; STOP above it, and always at or above 40 degC.

    Raises
    ------
    NotAssessed
        "temperature_unknown" for NaN.
    ImpossibleInput
        For temperatures that no brew has.
    """
    _known(temperature_c, "temperature_unknown")
    _check("temperature_c", temperature_c, -20.0, 105.0, "°C")
    _check("limit_c", limit_c, 0.0, limit("culture_harm_c"), "°C")
    numbers = {"temperature_c": temperature_c, "limit_c": limit_c}
    sources = ("culture_temperature_practice",)
    if temperature_c >= limit("culture_harm_c"):
        numbers["harm_c"] = limit("culture_harm_c")
        return Verdict("culture_far_too_warm", Level.STOP, numbers, sources)
    if temperature_c > limit_c:
        return Verdict("culture_too_warm", Level.STOP, numbers, sources)
    return Verdict("culture_temperature_good", Level.INFORM, numbers, sources)


def place_temperature_verdict(temperature_c: float) -> Verdict:
    """Judge the usual temperature of the place where a vessel stands.

    Raises as :func:`culture_temperature_verdict` does.
    """
    _known(temperature_c, "temperature_unknown")
    _check("temperature_c", temperature_c, -40.0, 60.0, "°C")
    low_c, high_c = limit("place_low_c"), limit("place_high_c")
    numbers = {"temperature_c": temperature_c, "low_c": low_c, "high_c": high_c}
    sources = ("culture_temperature_practice",)
    if temperature_c < low_c:
        return Verdict("place_cold", Level.WARN, numbers, sources)
    if temperature_c > high_c:
        return Verdict("place_warm", Level.WARN, numbers, sources)
    return Verdict("place_good", Level.INFORM, numbers, sources)


def place_now_verdict(temperature_c: float, age_hours: float) -> Verdict | None:
    """Judge the latest temperature read in the place of a souring batch.

    Parameters
    ----------
    temperature_c : float
        As read or logged there [degC].
    age_hours : float
        How long ago that was; what is older than "place_reading_hours" says nothing of today.

    Returns
    -------
    Verdict or None
        WARN "place_now_cold" or "place_now_warm"; None where there is nothing to say.

    Raises
    ------
    NotAssessed
        "temperature_unknown" or "time_unknown" for NaN.
    """
    _known(temperature_c, "temperature_unknown")
    _known(age_hours, "time_unknown")
    if age_hours > limit("place_reading_hours"):
        return None
    low_c, high_c = limit("place_low_c"), limit("place_high_c")
    numbers = {"temperature_c": temperature_c, "low_c": low_c, "high_c": high_c}
    sources = ("culture_temperature_practice",)
    if temperature_c < low_c:
        return Verdict("place_now_cold", Level.WARN, numbers, sources)
    if temperature_c > high_c:
        return Verdict("place_now_warm", Level.WARN, numbers, sources)
    return None


def start_ph_verdict(start_ph: Estimate) -> Verdict:
    """Judge the pH of the blend on the day it is made.

    WARN "start_ph_high" when the high end may be above 4.6, WARN
    "start_ph_above_wanted" when the value is above 4.2.

    Raises
    ------
    NotAssessed
        "ph_unknown" when the estimate has no number.
    """
    for number in (start_ph.value, start_ph.low, start_ph.high):
        _known(number, "ph_unknown")
    numbers = {
        "ph": start_ph.value,
        "low": start_ph.low,
        "high": start_ph.high,
        "limit": limit("ph_start_max"),
        "wanted": limit("ph_start_wanted"),
    }
    if start_ph.high > numbers["limit"]:
        return Verdict("start_ph_high", Level.WARN, numbers, LIMITS["ph_start_max"].source_keys)
    # compared as the maker reads it, with two decimals
    if round(start_ph.value, 2) > numbers["wanted"]:
        sources = LIMITS["ph_start_wanted"].source_keys
        return Verdict("start_ph_above_wanted", Level.WARN, numbers, sources)
    return Verdict("start_ph_good", Level.INFORM, numbers, LIMITS["ph_start_max"].source_keys)


def ph_verdict(ph: float, sd: float, day: float) -> Verdict:
    """Judge one pH reading of a souring batch.

    Parameters
    ----------
    ph : float
        The reading, 0 to 14.
    sd : float
        Its standard uncertainty; the reading counts as low enough at ph + sd <= 4.2.
    day : float
        Days since the starter went in, not negative.

    Returns
    -------
    Verdict
        STOP "ph_deadline_missed" on day 7 or later above 4.2, STOP
        "ph_deadline_unproven" when only the uncertainty reaches over 4.2; WARN
        "ph_over_acid" below 2.5; WARN "ph_slow" from day 5; INFORM "ph_not_yet",
        "ph_unsure", "ph_low_enough".

    Raises
    ------
    NotAssessed
        "ph_unknown", "uncertainty_unknown", "day_unknown" for NaN.
    ImpossibleInput
        Outside the ranges.
    """
    _known(ph, "ph_unknown")
    _known(sd, "uncertainty_unknown")
    _known(day, "day_unknown")
    _check("ph", ph, 0.0, 14.0, "pH")
    _check("sd", sd, 0.0, 5.0, "pH")
    _check("day", day, 0.0, math.inf, "d")
    highest, deadline = limit("ph_finished_max"), limit("ph_deadline_days")
    numbers = {"ph": ph, "sd": sd, "day": day, "limit": highest, "deadline_days": deadline}
    if ph < limit("ph_finished_min"):
        numbers["limit"] = limit("ph_finished_min")
        sources = LIMITS["ph_finished_min"].source_keys
        return Verdict("ph_over_acid", Level.WARN, numbers, sources)
    sources = LIMITS["ph_finished_max"].source_keys
    proven = ph + sd <= highest + 1e-9  # 3.9 + 0.3 counts as 4.2 in spite of binary fractions
    if proven:
        return Verdict("ph_low_enough", Level.INFORM, numbers, sources)
    if day >= deadline:
        code = "ph_deadline_missed" if ph > highest else "ph_deadline_unproven"
        return Verdict(code, Level.STOP, numbers, (*sources, "nummer_2013"))
    if ph <= highest:
        return Verdict("ph_unsure", Level.INFORM, numbers, sources)
    if day >= limit("ph_slow_days"):
        return Verdict("ph_slow", Level.WARN, numbers, (*sources, "safety_choice"))
    return Verdict("ph_not_yet", Level.INFORM, numbers, sources)


def mold_verdict() -> Verdict:
    """Return what follows from any mold: everything in the vessel is discarded."""
    return Verdict("mold_discard_all", Level.STOP, sources=("niagara_region",))


def look_verdict(look: Look) -> Verdict | None:
    """Return what follows from a careful look; None where nothing suspicious was seen.

    Nothing seen is no proof: mold can begin out of sight.
    """
    if look is Look.MOLD:
        return mold_verdict()
    if look is Look.UNSURE:
        return Verdict("look_unsure", Level.WARN, sources=("look_practice", "niagara_region"))
    return None


def uncultured_verdict(hours_below_57_c: float) -> Verdict:
    """Judge how long sweet tea has stood below 57 degC without starter.

    Raises
    ------
    NotAssessed
        "time_unknown" for NaN.
    ImpossibleInput
        For negative times.
    """
    _known(hours_below_57_c, "time_unknown")
    _check("hours_below_57_c", hours_below_57_c, 0.0, math.inf, "h")
    warn, most = limit("uncultured_warn_hours"), limit("uncultured_max_hours")
    numbers = {"hours": hours_below_57_c, "warn_hours": warn, "limit_hours": most}
    sources = ("food_code_cooling",)
    if hours_below_57_c > most:
        return Verdict("uncultured_too_long", Level.STOP, numbers, sources)
    if hours_below_57_c > warn:
        return Verdict("uncultured_long", Level.WARN, numbers, sources)
    return Verdict("uncultured_good", Level.INFORM, numbers, sources)


def souring_length_verdict(day: float) -> Verdict | None:
    """Judge how long a batch has been souring; None while that is nothing to speak of.

    Raises
    ------
    NotAssessed
        "day_unknown" for NaN.
    """
    _known(day, "day_unknown")
    for key, code in (
        ("over_long_souring_days", "souring_over_long"),
        ("long_souring_days", "souring_long"),
    ):
        if day >= limit(key):
            numbers = {"day": day, "limit_days": limit(key)}
            return Verdict(code, Level.WARN, numbers, LIMITS[key].source_keys)
    return None


def _known(value: float, reason: str) -> None:
    if math.isnan(value):
        raise NotAssessed(reason)


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
