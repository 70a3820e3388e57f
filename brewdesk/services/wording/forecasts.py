"""What the forecast of a batch says in sentences; the same facts as its picture."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.wording.inside import inside
from brewdesk.services.wording.moments import date_words, time_words
from brewdesk.services.wording.shownunits import UnitOf, metric_unit, reading_words
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Reading
from culturecore.outcome import Caveat, Estimate
from culturecore.stages import Quantity
from culturecore.tastewindow import SweetnessSays
from culturecore.units import Kind

if TYPE_CHECKING:
    from culturecore.forecast import Forecast

# A share of draws is not known to the percent, and never a promise.
_LEAST_PERCENT, _MOST_PERCENT, _PERCENT_STEP = 5, 95, 5
_MOST_NAMED = 2  # of readings that do not fit: more would bury the answer


def _t(text: str) -> str:
    return QCoreApplication.translate("Forecasts", text)


def point_words(reading: Reading, zone: tzinfo, unit_of: UnitOf = metric_unit) -> str:
    """Say one measured point: "pH 3.42 ± 0.05 (meter), Thu 3 Dec at 09:10"."""
    value = reading.value if reading.value is not None else 0.0
    if reading.quantity is Quantity.PH:
        amount = _t("pH {value}").format(value=_ph_words(value, reading.sd))
    else:
        amount = _t("{amount} acidity").format(
            amount=reading_words(value, reading.sd, Kind.ACIDITY, unit_of)
        )
    return _t("{amount} ({method}), {day} at {time}").format(
        amount=amount,
        method=inside(name_of(reading.method)),
        day=date_words(reading.at, zone),
        time=time_words(reading.at, zone),
    )


def _ph_words(value: float, sd: float | None) -> str:
    if sd is None:
        return _number(value, 2)
    return _t("{value} ± {sd}").format(value=_number(value, 2), sd=_number(sd, 2))


def suspect_words(
    reading: Reading, reason: str, zone: tzinfo, unit_of: UnitOf = metric_unit
) -> str:
    """Name a reading that does not fit the others, and why; ``reason`` is the forecast's code."""
    day = date_words(reading.at, zone)
    if reading.quantity is Quantity.TASTE:
        return _t("The tasting of {day} does not fit the other readings.").format(day=day)
    value = reading.value if reading.value is not None else 0.0
    what, number = {
        Quantity.PH: (_t("pH {value}"), _number(value, 2)),
        Quantity.TA_G_PER_L: (
            _t("{value} acidity"),
            reading_words(value, None, Kind.ACIDITY, unit_of),
        ),
        Quantity.BRIX: (_t("{value} °Bx"), _number(value, 1)),
        Quantity.SPECIFIC_GRAVITY: (_t("Gravity {value}"), _number(value, 3)),
    }[reading.quantity]
    is_of_acid = reading.quantity in (Quantity.PH, Quantity.TA_G_PER_L)
    why = _reason_words(reason, is_of_acid=is_of_acid)
    return _t("{what} of {day} {why}: look for a slip, or measure again.").format(
        what=what.format(value=number), day=day, why=why
    )


def _reason_words(reason: str, *, is_of_acid: bool) -> str:
    back = _t("is less sour") if is_of_acid else _t("is sweeter")
    ahead = _t("is more sour") if is_of_acid else _t("is less sweet")
    between = _t("{how} than the readings before and after it")
    off = _t("{how} than the other readings let expect")
    return {
        "impossible_for_kombucha": _t("is hardly possible for kombucha"),
        "sweeter_than_before_and_after": between.format(how=back),
        "sourer_than_before_and_after": between.format(how=ahead),
        "less_sour_than_the_course": off.format(how=back),
        "sourer_than_the_course": off.format(how=ahead),
    }.get(reason, _t("does not fit the other readings"))


def waiting_words() -> str:
    """Say that there is no forecast yet."""
    return _t("The forecast is being worked out.")


def no_forecast_words() -> str:
    """Say that the readings or the vessel allow no forecast."""
    return _t(
        "No forecast can be made from this batch's amounts and readings. "
        "Please look whether one of them was mistyped."
    )


def growing_words() -> str:
    """Say why a batch that grows a culture has a curve and no tasting window."""
    return _t(
        "A culture grows in this jar: it is to keep, not to drink, so there is no tasting window. "
        "The curve shows how sour its liquid is reckoned to become. Measure it, and look for mold."
    )


def summary_words(
    forecast: Forecast,
    *,
    started_at: datetime,
    now_day: float,
    deadline_day: float,
    safe_ph: float,
    is_known_safe: bool,
    zone: tzinfo,
    suspects: tuple[str, ...] = (),
) -> str:
    """Say what a forecast expects, how sure it is, and what it rests on.

    ``suspects`` are the sentences of `suspect_words`.
    """
    horizon = forecast.days[-1]
    sentences = [_opening(forecast.window_opens_day, started_at, now_day, horizon, zone)]
    if forecast.window_opens_day is not None:
        sentences.append(_closing(forecast, started_at, now_day, zone))
        sentences.append(_sweetness(forecast, now_day))
    if not is_known_safe and now_day <= deadline_day:
        sentences.append(_safety(forecast.probability_safe_by_deadline, deadline_day, safe_ph))
    if len(suspects) > _MOST_NAMED:
        sentences.append(_t("Several readings do not fit the others; please measure again."))
    else:
        sentences += suspects
    sentences += [_CAVEATS[caveat]() for caveat in forecast.caveats if caveat in _CAVEATS]
    return " ".join(sentence for sentence in sentences if sentence)


def _opening(
    opens: Estimate | None, started_at: datetime, now_day: float, horizon: float, zone: tzinfo
) -> str:
    if opens is None:
        return _t("It will probably not be sour enough for you within {days} days.").format(
            days=f"{horizon:.0f}"
        )
    middle, low, high = _dates(opens, started_at, zone)
    if opens.value <= now_day:
        return _t(
            "The tasting window has probably been open since {day} "
            "(4 in 5 chance that it opened between {low} and {high})."
        ).format(day=middle, low=low, high=high)
    if opens.high >= horizon:
        return _t("Worth tasting from about {day}; it may begin on {low}, or much later.").format(
            day=middle, low=low
        )
    return _t(
        "Worth tasting from about {day} (4 in 5 chance that it begins between {low} and {high})."
    ).format(day=middle, low=low, high=high)


def _closing(forecast: Forecast, started_at: datetime, now_day: float, zone: tzinfo) -> str:
    closes = forecast.window_closes_day
    if closes is None:
        return ""
    middle, low, high = _dates(closes, started_at, zone)
    # What ends the window first is what the maker will taste.
    how = _t("hardly sweet enough") if _is_dry_first(forecast) else _t("too sour")
    if closes.value <= now_day:
        return _t("It has probably been {how} for you since {day}.").format(how=how, day=middle)
    if closes.high >= forecast.days[-1]:
        return _t("It will probably be {how} for you after {day}, perhaps from {low} on.").format(
            how=how, day=middle, low=low
        )
    return _t("It will probably be {how} for you after {day} (between {low} and {high}).").format(
        how=how, day=middle, low=low, high=high
    )


def _is_dry_first(forecast: Forecast) -> bool:
    return forecast.sweetness in (SweetnessSays.CLOSES_EARLIER, SweetnessSays.NARROWS_BOTH)


def _sweetness(forecast: Forecast, now_day: float) -> str:
    """Say what the maker's band of sweetness does to the window; "" for nothing."""
    opens = forecast.window_opens_day
    if forecast.sweetness is SweetnessSays.NEVER_TOGETHER:
        return _t(
            "Going by your tastings its sourness and its sweetness may never be right for you at "
            "once, so these days go by sourness alone."
        )
    is_later = forecast.sweetness in (SweetnessSays.OPENS_LATER, SweetnessSays.NARROWS_BOTH)
    if is_later and opens is not None and opens.value > now_day:
        return _t("It will be sour enough before that, but probably still too sweet for you.")
    return ""


def _safety(probability: float, deadline_day: float, safe_ph: float) -> str:
    percent = round(probability * 100 / _PERCENT_STEP) * _PERCENT_STEP
    day, ph = f"{deadline_day:.0f}", _number(safe_ph, 1)
    if percent > _MOST_PERCENT:
        chance = _t("very likely")
    elif percent < _LEAST_PERCENT:
        chance = _t("very unlikely")
    else:
        return _t(
            "The chance that pH {ph} is reached by day {day} is about {percent} %; "
            "only a reading shows whether it was."
        ).format(ph=ph, day=day, percent=percent)
    return _t(
        "It is {chance} that pH {ph} is reached by day {day}; only a reading shows whether it was."
    ).format(chance=chance, ph=ph, day=day)


def _dates(estimate: Estimate, started_at: datetime, zone: tzinfo) -> tuple[str, str, str]:
    middle, low, high = (
        date_words(started_at + timedelta(days=day), zone)
        for day in (estimate.value, estimate.low, estimate.high)
    )
    return middle, low, high


def _number(value: float, digits: int) -> str:
    return QLocale().toString(value, "f", digits)


_CAVEATS = {
    Caveat.RECIPE_ONLY: lambda: _t("It rests on the recipe alone until there is a reading."),
    Caveat.STARTER_ACID_ASSUMED: lambda: _t(
        "How much acid the starter holds is assumed; a reading makes this sharper."
    ),
    Caveat.EXTRAPOLATED: lambda: _t(
        "Its temperature, vessel or age lies beyond the published courses, so trust it less."
    ),
    Caveat.UNLIKE_KNOWN: lambda: _t(
        "The readings are like no known course, so the bands are wide."
    ),
}
