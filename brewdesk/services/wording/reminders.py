"""What reminders and notices say: whole sentences, with the doubt left in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime, timedelta, tzinfo

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.notices.port import NoticeAction
from brewdesk.services.reminder_rules import PH_CHECK_DAYS, SAFE_PH, read_span
from brewdesk.services.stock_reminder_rules import is_of_stock
from brewdesk.services.wording.bottlereminders import BOTTLE_WORDS, chill_snooze_warning
from brewdesk.services.wording.moments import date_words, time_words
from brewdesk.services.wording.stores import buy_body
from brewdesk.store.records import Reminder
from culturecore.stages import ReminderKind

__all__ = [
    "action_words",
    "chill_snooze_warning",
    "clock_doubt_words",
    "clock_moved_words",
    "lateness_words",
    "moment_words",
    "reminder_words",
    "snooze_warning",
    "span_words",
    "summary_words",
]


def _t(text: str) -> str:
    return QCoreApplication.translate("Reminders", text)


def reminder_words(
    reminder: Reminder, batch_name: str, vessel_name: str, now: datetime, zone: tzinfo
) -> tuple[str, str]:
    """Say what a reminder asks for: a title of a few words, and a body of sentences.

    Names may be empty for a reminder that belongs to no batch; ``batch_name`` is that of
    the culture or of the bottling for one that is about these.
    """
    return _WORDS[reminder.kind](reminder, _jar(batch_name, vessel_name), now, zone)


def lateness_words(due_at: datetime, now: datetime, zone: tzinfo) -> str:
    """Say when something is or was due, as one short sentence."""
    late = now - due_at
    at = moment_words(due_at, zone)
    if late < timedelta(0):
        return _t("Due {at}.").format(at=at)
    if late < timedelta(hours=1):
        return _t("Due now.")
    return _t("Was due {at}, {span} ago.").format(at=at, span=span_words(late))


def summary_words(titles: Sequence[str], *, was_away: bool) -> tuple[str, str]:
    """Say several due reminders in one notice, the first ones by name."""
    if was_away:
        title = _t("{count} things came due while nobody was told").format(count=len(titles))
    else:
        title = _t("{count} things are due").format(count=len(titles))
    named = list(titles[:_NAMED_IN_SUMMARY])
    rest = len(titles) - len(named)
    if rest == 1:
        named.append(_t("One more is in the due list."))
    elif rest > 1:
        named.append(_t("{count} more are in the due list.").format(count=rest))
    return title, "\n".join(named)


def action_words(action: NoticeAction) -> str:
    """Name the button for an answer to a notice."""
    return {
        NoticeAction.OPEN: _t("Open"),
        NoticeAction.DONE: _t("Done"),
        NoticeAction.SNOOZE: _t("In 2 hours"),
    }[action]


def snooze_warning(window_end: datetime, zone: tzinfo) -> str:
    """Warn that a snooze ends after the tasting window is forecast to close."""
    return _t(
        "By then the batch may be too sour for you: the tasting window is forecast to close {at}."
    ).format(at=moment_words(window_end, zone))


def clock_doubt_words(newest_at: datetime, now: datetime, zone: tzinfo) -> str:
    """Say that the computer's clock is earlier than what was recorded by it."""
    return _t(
        "The computer's clock shows {now}, but something was recorded {newest}. "
        "Please check the clock. Until it is right, nothing is reported as due."
    ).format(now=moment_words(now, zone), newest=moment_words(newest_at, zone))


def clock_moved_words(seconds: float) -> str:
    """Say that the computer's clock was put back, and what becomes of the reminders."""
    return _t(
        "The computer's clock was put back by {span}. What was shown already is not shown again; "
        "what is still to come waits for its time."
    ).format(span=span_words(timedelta(seconds=abs(seconds))))


def moment_words(instant: datetime, zone: tzinfo) -> str:
    """Write an instant as weekday, date and time on the maker's clock."""
    return _t("{day} at {time}").format(
        day=date_words(instant, zone), time=time_words(instant, zone)
    )


def span_words(span: timedelta) -> str:
    """Write a span in its two largest units: "1 day 13 h", "2 h 5 min"."""
    minutes = max(0, int(span.total_seconds() // 60))
    days, rest = divmod(minutes, 24 * 60)
    hours, left = divmod(rest, 60)
    if days == 1:
        return _t("1 day {hours} h").format(hours=hours) if hours else _t("1 day")
    if days:
        return _t("{days} days").format(days=days)
    if hours:
        return _t("{hours} h {minutes} min").format(hours=hours, minutes=left)
    return _t("{minutes} min").format(minutes=left)


_NAMED_IN_SUMMARY = 4


def _jar(batch_name: str, vessel_name: str) -> str:
    if batch_name and vessel_name and batch_name != vessel_name:
        return _t("{batch} in {vessel}").format(batch=batch_name, vessel=vessel_name)
    return batch_name or vessel_name


def _taste(reminder: Reminder, jar: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _t("Taste {jar}").format(jar=jar)
    sentences = []
    span = read_span(reminder.text)
    if span is not None:
        sentences.append(_opening(*span, zone))
    end = reminder.window_end
    if end is not None and end < now:
        sentences.append(
            _t("The window was forecast to close {day}: it may be more sour than you like.").format(
                day=date_words(end, zone)
            )
        )
    elif end is not None:
        sentences.append(
            _t("It may be too sour for you after {day}.").format(day=date_words(end, zone))
        )
    sentences += [
        _t("Measure the pH first: above {ph} it is not ready to drink.").format(ph=_safe_ph()),
        _t("Look for mold, and do not taste a batch that has any or smells wrong."),
    ]
    return title, " ".join(sentences)


def _opening(earliest: datetime, latest: datetime | None, zone: tzinfo) -> str:
    first = date_words(earliest, zone)
    if latest is None:
        return _t(
            "The forecast puts the start of the tasting window on {day}, or much later."
        ).format(day=first)
    last = date_words(latest, zone)
    if first == last:
        return _t("The forecast puts the start of the tasting window on {day}.").format(day=first)
    return _t(
        "The forecast puts the start of the tasting window between {first} and {last}."
    ).format(first=first, last=last)


def _ph_check(reminder: Reminder, jar: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _t("Measure the pH of {jar}").format(jar=jar)
    body = _t(
        "It should be at {ph} or below by day {day}, and no reading shows it yet. "
        "If it is not, follow your local food safety advice; when in doubt, throw it out."
    ).format(ph=_safe_ph(), day=PH_CHECK_DAYS[-1])
    return title, body


def _safe_ph() -> str:
    return QLocale().toString(SAFE_PH, "f", 1)


def _mold_look(reminder: Reminder, jar: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _t("Look for mold on {jar}").format(jar=jar)
    body = _t(
        "Dry, fuzzy or coloured spots on top are signs of mold. If there is mold, throw out the "
        "whole batch and its culture. When in doubt, throw it out."
    )
    return title, body


def _feed(reminder: Reminder, jar: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _t("Feed {jar}").format(jar=jar)
    body = _t(
        "Pour in a little fresh, cooled sweet tea, and write down how much. Makers do this every "
        "few weeks; look for mold first. When in doubt, throw it out."
    )
    return title, body


def _top_up(reminder: Reminder, jar: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _t("Look whether {jar} has dried up").format(jar=jar)
    body = _t(
        "Some of the liquid evaporates through the cloth; how much differs widely. The pellicle "
        "should stay covered: top up with ripe, unflavoured kombucha if it is not."
    )
    return title, body


def _film_look(reminder: Reminder, jar: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _t("Look for the film on {jar}").format(jar=jar)
    body = _t(
        "A new culture begins as a thin, smooth, pale film on top. Do not shake the jar. Dry, "
        "fuzzy or coloured spots are signs of mold: then throw out all of it."
    )
    return title, body


def _own(reminder: Reminder, jar: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    words = reminder.text.strip() or _t("Your own reminder")
    if is_of_stock(reminder):
        return words, buy_body()
    if jar:
        return words, _t("You asked to be reminded of this for {jar}.").format(jar=jar)
    return words, _t("You asked to be reminded of this.")


_WORDS: dict[ReminderKind, Callable[[Reminder, str, datetime, tzinfo], tuple[str, str]]] = {
    ReminderKind.TASTE: _taste,
    ReminderKind.PH_CHECK: _ph_check,
    ReminderKind.MOLD_LOOK: _mold_look,
    ReminderKind.OWN: _own,
    ReminderKind.FEED: _feed,
    ReminderKind.TOP_UP: _top_up,
    ReminderKind.FILM_LOOK: _film_look,
    **BOTTLE_WORDS,
}
