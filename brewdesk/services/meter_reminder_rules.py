"""When the pH meter is to be calibrated: only one that is in use, and only so often.

Pure functions, as in ``reminder_rules``. How often is common practice, no source: the maker
sets it.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, time, timedelta, tzinfo

from brewdesk.services.culture_reminder_rules import rounds
from brewdesk.services.reminder_rules import USUAL_HOUR, Merge, Wanted, merge_rows, wall_instant
from brewdesk.store.records import Reminder, ReminderDraft
from culturecore.stages import ReminderKind

# A meter nobody has read for so long lies in a drawer: an assumption, no source.
IN_USE = timedelta(weeks=3)
NEVER = "never_yet"


@dataclass(frozen=True, slots=True, kw_only=True)
class MeterFacts:
    """What the rules need: the newest calibration, and the first and newest pH by a meter."""

    calibrated_at: datetime | None
    first_read_at: datetime | None
    last_read_at: datetime | None


def wanted_of_meter(
    facts: MeterFacts, every_days: float, *, now: datetime, zone: tzinfo, hour: time = USUAL_HOUR
) -> tuple[Wanted, ...]:
    """Return the reminders to calibrate: none unless a pH was read by meter in the last weeks.

    Counted from the newest calibration. While none is on record it is asked for once, counted
    from the first reading.
    """
    if facts.last_read_at is None or now - facts.last_read_at > IN_USE:
        return ()
    days = max(1, round(every_days))
    if facts.calibrated_at is not None:
        return tuple(rounds(ReminderKind.CALIBRATE, facts.calibrated_at, days, now, zone, hour))
    begun = facts.first_read_at or facts.last_read_at
    due_day = begun.astimezone(zone).date() + timedelta(days=days)
    return (
        Wanted(
            kind=ReminderKind.CALIBRATE,
            occurrence=NEVER,
            due_at=wall_instant(due_day, hour, zone),
        ),
    )


def merge_of_meter(kept: Iterable[Reminder], asked: Iterable[Wanted]) -> Merge:
    """Compare what is kept about the meter with what is wanted."""

    def draft(want: Wanted) -> ReminderDraft:
        return ReminderDraft(
            batch_id=None, kind=want.kind, occurrence=want.occurrence, due_at=want.due_at
        )

    return merge_rows(kept, asked, draft, has_ended=False)
