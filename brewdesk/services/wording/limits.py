"""The safety limits in words, each with its source, for the page that shows them."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from culturecore.safety import LIMITS, Limit
from culturecore.sources import Standing


def _tr(text: str) -> str:
    return QCoreApplication.translate("limits", text)


@dataclass(frozen=True, slots=True)
class LimitLine:
    """One limit as a maker reads it; ``standing`` says how well its figure is founded."""

    name: str
    value: str
    source: str
    standing: str


def _names() -> dict[str, str]:
    return {
        "ph_finished_max": _tr("pH of a finished drink, at most"),
        "ph_finished_min": _tr("pH of a finished drink, at least"),
        "ph_deadline_days": _tr("Time to reach that pH"),
        "ph_slow_days": _tr("Called slow when not reached by"),
        "ph_start_max": _tr("pH of the blend at the start, at most"),
        "ph_start_wanted": _tr("pH of the blend at the start, wanted"),
        "ph_strip_max": _tr("pH strips are trusted up to"),
        "steep_min_c": _tr("Water for steeping, at least"),
        "steep_minutes": _tr("Steeping time"),
        "uncultured_warn_hours": _tr("Sweet tea standing without starter: careful after"),
        "uncultured_max_hours": _tr("Sweet tea standing without starter: at most"),
        "starter_share_min": _tr("Share of starter, at least"),
        "starter_share_low": _tr("Share of starter, lowest advice read"),
        "starter_share_max": _tr("Share of starter, at most"),
        "culture_in_max_c": _tr("Liquid a culture goes into, at most"),
        "culture_harm_c": _tr("Liquid that harms a culture, from"),
        "place_low_c": _tr("A souring jar's place, at least"),
        "place_reading_hours": _tr("A place's temperature says something of today for"),
        "place_high_c": _tr("A souring jar's place, at most"),
        "long_souring_days": _tr("Called long when souring for"),
        "over_long_souring_days": _tr("Called over-long when souring for"),
        **_bottle_names(),
        **_alcohol_names(),
        **_drink_names(),
        **_instrument_names(),
    }


def _bottle_names() -> dict[str, str]:
    return {
        "glass_printed_bar": _tr("Glass for fizzy drinks: the trade's own figure, at most"),
        "bottle_ceiling_bar": _tr(
            "Bottle for fizzy drinks of unknown rating: pressure on a gauge, at most"
        ),
        "bottle_ceiling_volumes": _tr(
            "Bottle for fizzy drinks of unknown rating: volumes of carbon dioxide, below"
        ),
        "bottle_warn_bar": _tr("Called close to that pressure from"),
        "bottle_warn_volumes": _tr("Called close to that fizz from"),
        "bottle_chill_bar": _tr("Time to chill when a gauge shows"),
        "bottle_rated_share": _tr("Rated bottle: careful from this part of its rating"),
        "glass_max_l": _tr("Glass under pressure: size, at most"),
        "headspace_share_usual": _tr("Headspace of a bottle, usual"),
        "headspace_share_min": _tr("Headspace of a bottle, at least"),
        "headspace_share_max": _tr("Headspace of a bottle, called large above"),
    }


def _alcohol_names() -> dict[str, str]:
    return {
        "abv_us": _tr("United States: an alcohol beverage from, at any time"),
        "abv_canada": _tr("Canada: strength is declared from"),
        "abv_canada_provinces": _tr("Canada, most provinces: controlled above"),
        "abv_bc_ontario": _tr("British Columbia and Ontario: controlled above"),
        "abv_anz_statement": _tr("Australia and New Zealand: strength is stated above"),
        "abv_anz_soft_drink": _tr("Australia and New Zealand: brewed soft drink, at most"),
        "abv_eu_statement": _tr("European Union: strength is stated above"),
        "abv_uk_low": _tr("United Kingdom: called low alcohol, at most"),
    }


def _drink_names() -> dict[str, str]:
    return {
        "cold_max_c": _tr("Cold storage of the drink, at most"),
        "keeping_days": _tr("Keeping the drink cold, at most"),
        "serving_day_fl_oz": _tr("Drunk in a day, most cautious advice read"),
        "pasteurise_min_c": _tr("Heating to end fermenting, in an open pot, at least"),
        "chlorine_max_ppm": _tr("Chlorine in water for rinsing vessels, at most"),
        "caffeine_day_mg": _tr("Caffeine in a day, adults, at most"),
        "caffeine_once_mg": _tr("Caffeine at once, and in a day of pregnancy, at most"),
    }


def _instrument_names() -> dict[str, str]:
    return {
        "meter_slope_low": _tr("Slope of a pH meter, at least"),
        "meter_slope_high": _tr("Slope of a pH meter, at most"),
        "meter_slope_good_low": _tr("Slope of a pH meter, called good from"),
        "meter_slope_good_high": _tr("Slope of a pH meter, called good up to"),
        "meter_offset_mv": _tr("Offset of a pH meter in the neutral buffer, at most"),
        "meter_accuracy_ph": _tr("Accuracy that a pH meter for food should have"),
    }


def _units() -> dict[str, str]:
    return {
        "d": _tr("days"),
        "h": _tr("hours"),
        "min": _tr("minutes"),
        "pH": "",
        "vol": _tr("volumes"),
        "% vol": _tr("% alcohol by volume"),
        "fl oz": _tr("US fl oz"),
        "ppm": _tr("mg/L"),
    }


def _standings() -> dict[Standing, str]:
    return {
        Standing.READ: _tr("Read in the source itself."),
        Standing.SECOND_HAND: _tr("Read only as others quote it."),
        Standing.FROM_MEMORY: _tr("From memory, not confirmed."),
        Standing.DERIVED: _tr("Derived from the figures named."),
        Standing.PRACTICE: _tr("Common practice, without a source."),
        Standing.ASSUMPTION: _tr("A cautious choice of this program."),
    }


def limit_lines() -> tuple[LimitLine, ...]:
    """Every limit with its value and source, in the table's order."""
    names, standings = _names(), _standings()
    return tuple(
        LimitLine(
            name=names[key],
            value=_value(limit),
            source=f"{limit.source}. {standings[limit.standing]}",
            standing=standings[limit.standing],
        )
        for key, limit in LIMITS.items()
    )


def _value(limit: Limit) -> str:
    if limit.unit == "":
        return f"{limit.value * 100:g} %"
    return f"{limit.value:g} {_units().get(limit.unit, limit.unit)}".strip()
