"""Places and their temperatures in words."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.placecourse import PlaceCourse
from brewdesk.services.placelog import LatestTemperature, UsualSuggestion
from brewdesk.services.wording.amounts import Show
from brewdesk.services.wording.moments import date_words, stamp_words
from brewdesk.store.records import Place
from culturecore.units import Kind


def _t(text: str) -> str:
    return QCoreApplication.translate("Places", text)


def usual_words(place: Place, latest: LatestTemperature | None, zone: tzinfo, show: Show) -> str:
    """Say how warm a place usually is, and how warm it was last."""
    usual = _t("Usually {temperature}.").format(
        temperature=show(place.temperature_c, Kind.TEMPERATURE)
    )
    if latest is None:
        return usual
    template = (
        _t("{usual} Last read {temperature}, {when}.")
        if latest.is_typed
        else _t("{usual} Last logged {temperature}, {when}.")
    )
    return template.format(
        usual=usual,
        temperature=show(latest.temperature_c, Kind.TEMPERATURE),
        when=stamp_words(latest.at, zone),
    )


def standing_words(names: Sequence[str]) -> str:
    """Say which vessels stand in a place."""
    if not names:
        return _t("No vessel stands here.")
    return _t("Here stand: {names}.").format(names=", ".join(names))


def short_words(place: Place, latest: LatestTemperature | None, count: int, show: Show) -> str:
    """Say the same in one short line, for a list."""
    warm = show(latest.temperature_c if latest else place.temperature_c, Kind.TEMPERATURE)
    if latest is None:
        warm = _t("usually {temperature}").format(temperature=warm)
    if not count:
        return _t("{temperature} · no vessel").format(temperature=warm)
    if count == 1:
        return _t("{temperature} · 1 vessel").format(temperature=warm)
    return _t("{temperature} · {count} vessels").format(temperature=warm, count=count)


def suggestion_words(found: UsualSuggestion, show: Show) -> str:
    """Ask whether another usual temperature is to be taken over."""
    return _t(
        "By the log of the last 30 days it was {mean} on average (days with a temperature: "
        "{days}). Set as usual is {usual}."
    ).format(
        mean=show(found.mean_c, Kind.TEMPERATURE),
        days=found.days,
        usual=show(found.usual_c, Kind.TEMPERATURE),
    )


def course_words(course: PlaceCourse, zone: tzinfo, show: Show) -> str:
    """Say what a picture of a course shows."""
    points = course.points
    if not points:
        return _t("Nothing was read or logged in this time.")
    mean_c = sum(point.temperature_c for point in points) / len(points)
    return _t("From {first} to {last} it was {low} to {high}, on average {mean}.").format(
        first=date_words(points[0].at, zone),
        last=date_words(points[-1].at, zone),
        low=show(min(point.low_c for point in points), Kind.TEMPERATURE),
        high=show(max(point.high_c for point in points), Kind.TEMPERATURE),
        mean=show(mean_c, Kind.TEMPERATURE),
    )


def liked_words(low_c: float, high_c: float, show: Show) -> str:
    """Say what suits a souring jar; common practice, no source."""
    return _t("By common practice a souring jar likes {low} to {high}.").format(
        low=show(low_c, Kind.TEMPERATURE), high=show(high_c, Kind.TEMPERATURE)
    )
