"""Short sentences beside a forecast: what moved, what to read next, what is in the drink."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.shownunits import UnitOf, estimate_words, metric_unit
from culturecore.outcome import Estimate
from culturecore.stages import Quantity
from culturecore.units import Kind

if TYPE_CHECKING:
    from culturecore.forecast import Forecast, NextReading

_LEAST_MOVE_DAYS = 0.5  # less is lost in the band anyway
_LEAST_NARROWING_DAYS = 0.5
_LEAST_SHOWN_PERCENT = 0.05


def _t(text: str) -> str:
    return QCoreApplication.translate("Outlook", text)


def moved_words(before: Forecast, now: Forecast, started_at: datetime, zone: tzinfo) -> str:
    """Say how the newest readings moved the start of the tasting window; "" if hardly at all."""
    was, is_now = before.window_opens_day, now.window_opens_day
    if was is None and is_now is None:
        return ""
    if was is None and is_now is not None:
        return _t(
            "Since yesterday: sour enough about {day}; before, not within {days} days."
        ).format(day=_day(is_now.value, started_at, zone), days=f"{before.days[-1]:.0f}")
    if was is not None and is_now is None:
        return _t(
            "Since yesterday: no longer expected within {days} days; before, about {day}."
        ).format(day=_day(was.value, started_at, zone), days=f"{now.days[-1]:.0f}")
    assert was is not None
    assert is_now is not None
    old, new = (_day(edge.value, started_at, zone) for edge in (was, is_now))
    if abs(is_now.value - was.value) < _LEAST_MOVE_DAYS or old == new:
        if _width(is_now) < _width(was) - _LEAST_MOVE_DAYS:
            return _t("Since yesterday: still about {day}, but surer by {days}.").format(
                day=new, days=_about_days(_width(was) - _width(is_now))
            )
        return ""
    if is_now.value < was.value:
        return _t("Since yesterday the window has moved earlier: {new} instead of {old}.").format(
            new=new, old=old
        )
    return _t("Since yesterday the window has moved later: {new} instead of {old}.").format(
        new=new, old=old
    )


def next_reading_words(
    reading: NextReading | None, started_at: datetime, now_day: float, zone: tzinfo
) -> str:
    """Say which reading would tell most; "" if none would tell much or its day has passed."""
    if reading is None or reading.narrows_days < _LEAST_NARROWING_DAYS:
        return ""
    if reading.day < now_day - 0.5:
        return ""
    is_today = reading.day <= now_day + 0.5
    what = _reading_names().get(reading.quantity)
    if what is None:
        return ""
    days = _about_days(reading.narrows_days)
    if is_today:
        return _t("{what} today would narrow the window by about {days}.").format(
            what=what, days=days
        )
    return _t("{what} on {day} would narrow the window by about {days}.").format(
        what=what, day=_day(reading.day, started_at, zone), days=days
    )


def drink_words(
    alcohol: Estimate | None, sugar: Estimate | None, unit_of: UnitOf = metric_unit
) -> str:
    """Say what is probably in the drink now; "" if nothing is known of it.

    ``unit_of`` gives the unit in which the maker reads sugar.
    """
    parts = []
    if alcohol is not None:
        # A low bound of 0.0 would read like a promise that there is none.
        text = (
            _t("alcohol {mid} % vol ({low} to {high})")
            if alcohol.low >= _LEAST_SHOWN_PERCENT
            else _t("alcohol {mid} % vol (perhaps {high})")
        )
        parts.append(
            text.format(
                mid=_number(max(alcohol.value, 0.1), 1),
                low=_number(alcohol.low, 1),
                high=_number(max(alcohol.high, 0.1), 1),
            )
        )
    if sugar is not None:
        parts.append(_t("sugar {amount}").format(amount=estimate_words(sugar, Kind.SUGAR, unit_of)))
    if not parts:
        return ""
    return _t("Estimate for now: {parts}; only a laboratory can certify.").format(
        parts=", ".join(parts)
    )


def imagined_words(
    forecast: Forecast,
    real: Forecast | None,
    *,
    started_at: datetime,
    is_from_the_start: bool,
    zone: tzinfo,
) -> str:
    """Say when the window would open and close if it were otherwise, beside what is forecast."""
    horizon = f"{forecast.days[-1]:.0f}"
    opens, closes = forecast.window_opens_day, forecast.window_closes_day
    if opens is None:
        text = _t("What if (dashed): probably not sour enough for you within {days} days.").format(
            days=horizon
        )
    elif closes is None:
        text = _t("What if (dashed): from about {day} ({low} to {high}).").format(
            day=_day(opens.value, started_at, zone),
            low=_day(opens.low, started_at, zone),
            high=_day(opens.high, started_at, zone),
        )
    else:
        text = _t("What if (dashed): from about {day} ({low} to {high}) to about {end}.").format(
            day=_day(opens.value, started_at, zone),
            low=_day(opens.low, started_at, zone),
            high=_day(opens.high, started_at, zone),
            end=_day(closes.value, started_at, zone),
        )
    parts = [text]
    was = real.window_opens_day if real is not None else None
    if opens is not None and was is not None:
        parts.append(_beside(opens.value - was.value))
    if is_from_the_start:
        parts.append(_t("As if it had begun so."))
    return " ".join(parts)


def _beside(later_days: float) -> str:
    if abs(later_days) < _LEAST_MOVE_DAYS:
        return _t("Hardly different from the forecast.")
    days = _about_days(abs(later_days))
    if later_days < 0:
        return _t("About {days} earlier than forecast.").format(days=days)
    return _t("About {days} later than forecast.").format(days=days)


def _about_days(days: float) -> str:
    whole = max(1, round(days))
    return _t("1 day") if whole == 1 else _t("{n} days").format(n=whole)


def _width(estimate: Estimate) -> float:
    return estimate.high - estimate.low


def _day(day: float, started_at: datetime, zone: tzinfo) -> str:
    return date_words(started_at + timedelta(days=day), zone)


def _reading_names() -> dict[Quantity, str]:
    return {
        Quantity.PH: _t("A pH"),
        Quantity.TA_G_PER_L: _t("A titration"),
        Quantity.BRIX: _t("A Brix"),
        Quantity.SPECIFIC_GRAVITY: _t("A gravity"),
        Quantity.TASTE: _t("A tasting"),
        Quantity.TEMPERATURE_C: _t("A temperature"),
    }


def _number(value: float, digits: int) -> str:
    return QLocale().toString(value, "f", digits)
