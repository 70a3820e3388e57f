"""What is expected of the film on a jar, in a sentence."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.moments import date_words

if TYPE_CHECKING:
    from culturecore.pellicle import FilmForecast

_AHEAD_DAYS = 7.0  # how far ahead a thickness is told
_LEAST_MM = 1  # thinner is told as "up to"


def _t(text: str) -> str:
    return QCoreApplication.translate("Films", text)


def film_words(
    film: FilmForecast,
    *,
    started_at: datetime,
    now_day: float,
    is_from_raw: bool,
    has_been_seen: bool,
    zone: tzinfo,
) -> str:
    """Say when a film is expected or how thick it will be; "" beyond what is forecast.

    A jar that grows its first film ``is_from_raw`` kombucha is told when none is a worry.
    """

    def day_words(day: float) -> str:
        return date_words(started_at + timedelta(days=day), zone)

    first = film.first_film_day
    if not has_been_seen and is_from_raw and now_day > film.late_day:
        return _t(
            "A first film was to be expected by {day}. If there is none, see that the jar stands "
            "warm and under a cloth that lets air in, and that the kombucha it began from was raw."
        ).format(day=day_words(film.late_day))
    if not has_been_seen and first.value > now_day:
        expected = _t("First film expected about {day} ({low} to {high}).").format(
            day=day_words(first.value), low=day_words(first.low), high=day_words(first.high)
        )
        if not is_from_raw:
            return expected
        return _t("{expected} Without one by {late}, something probably holds it back.").format(
            expected=expected, late=day_words(film.late_day)
        )
    ahead = now_day + _AHEAD_DAYS
    if ahead > film.days[-1]:
        return ""
    nearest = min(range(len(film.days)), key=lambda n: abs(film.days[n] - ahead))
    low, high = (round(film.thickness_mm[share][nearest]) for share in (0.1, 0.9))
    if low < _LEAST_MM:
        return _t("Expected film: up to {high} mm by {day}.").format(
            high=max(high, _LEAST_MM), day=day_words(ahead)
        )
    if low == high:
        return _t("Expected film: about {mm} mm by {day}.").format(mm=low, day=day_words(ahead))
    return _t("Expected film: {low} to {high} mm by {day}.").format(
        low=low, high=high, day=day_words(ahead)
    )
