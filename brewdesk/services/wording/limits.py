"""The safety limits in words, each with its source, for the page that shows them."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from culturecore.safety import LIMITS, Limit


def _tr(text: str) -> str:
    return QCoreApplication.translate("limits", text)


@dataclass(frozen=True, slots=True)
class LimitLine:
    """One limit as a maker reads it."""

    name: str
    value: str
    source: str


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
        "place_high_c": _tr("A souring jar's place, at most"),
        "long_souring_days": _tr("Called long when souring for"),
        "over_long_souring_days": _tr("Called over-long when souring for"),
    }


def _units() -> dict[str, str]:
    return {"d": _tr("days"), "h": _tr("hours"), "min": _tr("minutes"), "pH": ""}


def limit_lines() -> tuple[LimitLine, ...]:
    """Every limit with its value and source, in the table's order."""
    names = _names()
    return tuple(
        LimitLine(name=names[key], value=_value(limit), source=limit.source)
        for key, limit in LIMITS.items()
    )


def _value(limit: Limit) -> str:
    if limit.unit == "":
        return f"{limit.value * 100:g} %"
    return f"{limit.value:g} {_units().get(limit.unit, limit.unit)}".strip()
