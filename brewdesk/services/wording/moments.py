"""Days and times in words, in the maker's own zone."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication, QDate, QLocale, QTime


def _tr(text: str) -> str:
    return QCoreApplication.translate("moments", text)


def local(moment: datetime, zone: tzinfo) -> datetime:
    """Show an instant in ``zone``."""
    return moment.astimezone(zone)


def date_words(moment: datetime, zone: tzinfo) -> str:
    """Weekday and date: "Thu 3 Dec"."""
    day = local(moment, zone).date()
    text = QLocale().toString(QDate(day.year, day.month, day.day), _tr("ddd d MMM"))
    # Some locales end a short month with a point, which would stand beside a sentence's own.
    return text.removesuffix(".")


def time_words(moment: datetime, zone: tzinfo) -> str:
    """Time of day as the locale writes it."""
    at = local(moment, zone)
    return QLocale().toString(QTime(at.hour, at.minute), QLocale.FormatType.ShortFormat)


def stamp_words(moment: datetime, zone: tzinfo) -> str:
    """Date and time: "Thu 3 Dec, 09:00"."""
    return _tr("{date}, {time}").format(
        date=date_words(moment, zone), time=time_words(moment, zone)
    )


def days_between(earlier: datetime, later: datetime, zone: tzinfo) -> int:
    """Calendar days from one instant to another as a wall calendar counts them."""
    return (local(later, zone).date() - local(earlier, zone).date()).days


def day_words(moment: datetime, now: datetime, zone: tzinfo) -> str:
    """Near days by name, others by date: "today 17:00", "tomorrow", "on Thu 3 Dec"."""
    ahead = days_between(now, moment, zone)
    if ahead == 0:
        return _tr("today {time}").format(time=time_words(moment, zone))
    if ahead == 1:
        return _tr("tomorrow")
    if ahead == -1:
        return _tr("since yesterday")
    if ahead < 0:
        return _tr("since {date}").format(date=date_words(moment, zone))
    return _tr("on {date}").format(date=date_words(moment, zone))
