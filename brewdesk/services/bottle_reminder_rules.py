"""Which reminders a bottling wants: chill it in time, press the test bottle, open one, drink up.

Pure functions, as in ``reminder_rules``. The earliest danger comes from the forecast of the
pressure; nothing here reckons one. How long before it one is told is our choice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta, tzinfo

from brewdesk.services.escalation import DANGER_AGAIN, PRESSING_BEFORE
from brewdesk.services.reminder_rules import (
    RENAG_AFTER,
    USUAL_HOUR,
    Merge,
    Wanted,
    merge_rows,
    wall_instant,
    whole_hour,
)
from brewdesk.store.records import Reminder, ReminderDraft
from culturecore.stages import BottlingState, ReminderKind, ReminderState

CHILL = "chill"
STILL_WARM = "still_warm"  # ticked off, and yet the records have the bottles at room temperature
# A danger that moves off by less is the forecast's own unrest, and the earlier one is kept.
LEAST_PUT_OFF = timedelta(hours=2)
# Common practice, no source: a bottle has some fizz by then.
FIRST_OPEN_DAY = 2
USUAL_OPEN_DAY = 3  # while no danger is known
# Days before the best-before date: so that they can still be drunk.
BEST_BEFORE_NOTICE_DAYS = 3
_ENDED = (BottlingState.FINISHED, BottlingState.DISCARDED)


@dataclass(frozen=True, slots=True, kw_only=True)
class BottlingFacts:
    """What the rules need of one bottling.

    ``chill_by_low_at`` is the earliest danger, ``chill_by_at`` the likely one; None while no
    forecast is known or none lies within its horizon. ``is_urgent`` says that the bottles are
    to be chilled now, whatever the forecast was. ``last_check_at`` is the newest look of any
    kind, ``opened_at`` the newest bottle opened.
    """

    bottling_id: int
    state: BottlingState
    filled_at: datetime
    chill_by_low_at: datetime | None = None
    chill_by_at: datetime | None = None
    is_urgent: bool = False
    last_check_at: datetime | None = None
    best_before: datetime | None = None
    name: str = ""
    opened_at: datetime | None = None


def no_bottlings() -> tuple[BottlingFacts, ...]:
    """Know of no bottlings."""
    return ()


def wanted_of_bottling(
    facts: BottlingFacts,
    kept: Iterable[Reminder] = (),
    *,
    now: datetime,
    zone: tzinfo,
    hour: time = USUAL_HOUR,
) -> tuple[Wanted, ...]:
    """Return the reminders that this bottling wants at ``now``.

    ``kept`` are its reminders so far: a danger that moves off a little is kept where it
    was, and one that was ticked off while the bottles stayed warm is asked for once more.
    """
    if facts.state in _ENDED:
        return ()
    found: list[Wanted] = []
    rows = {(row.kind, row.occurrence): row for row in kept}
    if facts.state is BottlingState.CONDITIONING:
        found += _chill(facts, rows.get((ReminderKind.CHILL, CHILL)), zone, hour)
        found += _pressure_checks(facts, now, zone, hour)
        found += _open_test(facts, zone, hour)
    if facts.best_before is not None:
        day = facts.best_before.astimezone(zone).date() - timedelta(days=BEST_BEFORE_NOTICE_DAYS)
        due_at = max(wall_instant(day, hour, zone), facts.filled_at)
        found.append(
            Wanted(
                kind=ReminderKind.BEST_BEFORE,
                occurrence="best_before",
                due_at=due_at,
                window_end=facts.best_before,
            )
        )
    return tuple(found)


def merge_of_bottling(
    facts: BottlingFacts, kept: Iterable[Reminder], asked: Iterable[Wanted]
) -> Merge:
    """Compare what is kept for one bottling with what is wanted.

    While no danger is known, a reminder to chill that is kept stays as it is: a restart must
    not take it away. A snooze ends at the latest with the earliest danger as it is now.
    """
    rows = tuple(kept)
    asked = tuple(asked)
    unsettled: tuple[ReminderKind, ...] = ()
    if facts.state is BottlingState.CONDITIONING and not _has_danger(facts):
        unsettled = (ReminderKind.CHILL,)
    elif facts.state is BottlingState.CHILLED:
        unsettled = (ReminderKind.OPEN_TEST,)  # cold ones are opened too

    def draft(want: Wanted) -> ReminderDraft:
        return ReminderDraft(
            batch_id=None,
            bottling_id=facts.bottling_id,
            kind=want.kind,
            occurrence=want.occurrence,
            due_at=want.due_at,
            window_end=want.window_end,
            text=want.text,
        )

    merged = merge_rows(rows, asked, draft, has_ended=facts.state in _ENDED, unsettled=unsettled)
    return _with_shorter_snoozes(merged, rows, asked)


def chill_due_at(filled_at: datetime, danger_at: datetime, zone: tzinfo, hour: time) -> datetime:
    """Return when to tell that bottles are to be chilled: in good time, at the maker's hour.

    That is the last such hour that leaves `PRESSING_BEFORE` until the danger; for bottles
    that have less than that, the moment at which they were filled.
    """
    latest = danger_at - PRESSING_BEFORE
    day = latest.astimezone(zone).date()
    due_at = wall_instant(day, hour, zone)
    if due_at > latest:
        due_at = wall_instant(day - timedelta(days=1), hour, zone)
    return max(due_at, filled_at)


def _has_danger(facts: BottlingFacts) -> bool:
    return facts.is_urgent or facts.chill_by_low_at is not None


def _chill(facts: BottlingFacts, kept: Reminder | None, zone: tzinfo, hour: time) -> list[Wanted]:
    danger_at = _danger_at(facts, kept)
    if danger_at is None:
        return []
    told_at = chill_due_at(facts.filled_at, danger_at, zone, hour)
    due_at = danger_at if facts.is_urgent else told_at
    if kept is not None and kept.state is ReminderState.SHOWN and kept.window_end is not None:
        # The maker's hour leaps by a day when the danger moves by a minute: what was shown
        # stays shown unless the danger itself has moved off. It grows louder in any case.
        due_at = due_at if danger_at - kept.window_end >= RENAG_AFTER else kept.due_at
    first = Wanted(kind=ReminderKind.CHILL, occurrence=CHILL, due_at=due_at, window_end=danger_at)
    if kept is None or kept.state is not ReminderState.DONE or kept.done_at is None:
        return [first]
    again_at = max(danger_at, kept.done_at + DANGER_AGAIN)
    again = Wanted(
        kind=ReminderKind.CHILL, occurrence=STILL_WARM, due_at=again_at, window_end=danger_at
    )
    return [first, again]


def _danger_at(facts: BottlingFacts, kept: Reminder | None) -> datetime | None:
    """Return the earliest danger, cut to the hour, without the forecast's own unrest."""
    if facts.is_urgent:
        known = [facts.filled_at, facts.last_check_at]
        urgent_at = max(instant for instant in known if instant is not None)
        if facts.chill_by_low_at is not None:
            urgent_at = min(urgent_at, facts.chill_by_low_at)
        return urgent_at
    if facts.chill_by_low_at is None:
        return None
    danger_at = whole_hour(facts.chill_by_low_at)
    before = kept.window_end if kept is not None else None
    if before is not None and timedelta(0) < danger_at - before < LEAST_PUT_OFF:
        return before
    return danger_at


def _pressure_checks(facts: BottlingFacts, now: datetime, zone: tzinfo, hour: time) -> list[Wanted]:
    """Return the newest daily check that is due and unanswered, and the next to come."""
    first_day = facts.filled_at.astimezone(zone).date()
    checked_day = None if facts.last_check_at is None else facts.last_check_at.astimezone(zone)
    answered = 0 if checked_day is None else max(0, (checked_day.date() - first_day).days)
    number = max(1, (now.astimezone(zone).date() - first_day).days)
    if number > 1 and _day_instant(first_day, number, hour, zone) > now:
        number -= 1
    numbers = {number, number + 1} if _day_instant(first_day, number, hour, zone) <= now else {1}
    coming = max(numbers)
    if answered >= coming:
        numbers = {answered + 1}
    return [
        Wanted(
            kind=ReminderKind.PRESSURE_CHECK,
            occurrence=f"day{one}",
            due_at=_day_instant(first_day, one, hour, zone),
        )
        for one in sorted(numbers)
        if one > answered
    ]


def _open_test(facts: BottlingFacts, zone: tzinfo, hour: time) -> list[Wanted]:
    """Ask once to open a cold one: half way to the earliest danger, and before it is near."""
    if facts.opened_at is not None or facts.is_urgent:
        return []
    first_day = facts.filled_at.astimezone(zone).date()
    if facts.chill_by_low_at is None:
        day = first_day + timedelta(days=USUAL_OPEN_DAY)
    else:
        half = (facts.chill_by_low_at - facts.filled_at) / 2
        half_day = (facts.filled_at + half).astimezone(zone).date()
        day = max(first_day + timedelta(days=FIRST_OPEN_DAY), half_day)
    due_at = wall_instant(day, hour, zone)
    if facts.chill_by_low_at is not None:
        told_at = chill_due_at(facts.filled_at, facts.chill_by_low_at, zone, hour)
        if due_at >= told_at:
            return []  # they are to be chilled before that; then all of them are cold
    return [Wanted(kind=ReminderKind.OPEN_TEST, occurrence="first", due_at=due_at)]


def _day_instant(first_day: date, number: int, hour: time, zone: tzinfo) -> datetime:
    return wall_instant(first_day + timedelta(days=number), hour, zone)


def _with_shorter_snoozes(
    merged: Merge, rows: tuple[Reminder, ...], asked: tuple[Wanted, ...]
) -> Merge:
    ends = {want.occurrence: want.window_end for want in asked if want.kind is ReminderKind.CHILL}
    change = {row_id: dict(fields) for row_id, fields in merged.change.items()}
    for row in rows:
        end = ends.get(row.occurrence) if row.kind is ReminderKind.CHILL else None
        if end is None or row.state is not ReminderState.SNOOZED or row.snoozed_until is None:
            continue
        has_come_nearer = row.window_end is None or end < row.window_end
        if has_come_nearer and end < row.snoozed_until:
            change.setdefault(row.id, {})["snoozed_until"] = end
    return replace(merged, change=change)
