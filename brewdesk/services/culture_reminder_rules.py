"""Which reminders a resting or a growing culture wants.

Pure functions, as in ``reminder_rules``. How often is common practice, no source: the
maker sets it.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, time, timedelta, tzinfo

from brewdesk.services.reminder_rules import (
    USUAL_HOUR,
    Merge,
    Wanted,
    merge_rows,
    wall_instant,
)
from brewdesk.services.settings import REST_FEED_DAYS, REST_TOP_UP_DAYS
from brewdesk.store.records import Culture, Reminder, ReminderDraft
from culturecore.stages import CultureState, ReminderKind

# When to look for the film of a growing culture: about when the first film and the solid one
# are usual (see ``growing``), and now and then before and after. An assumption, no source.
FILM_LOOK_DAYS = (5, 8, 11, 14, 18, 21)
FILM_LOOK_EVERY_DAYS = 7  # after the last of these
_GONE = (CultureState.RETIRED, CultureState.GIVEN_AWAY, CultureState.LOST)


@dataclass(frozen=True, slots=True)
class RestRhythm:
    """How many days apart a resting culture is fed, and looked at for dryness."""

    feed_days: float
    top_up_days: float


def usual_rhythm() -> RestRhythm:
    """Return the rhythm as long as the maker has set no other."""
    return RestRhythm(REST_FEED_DAYS.default, REST_TOP_UP_DAYS.default)


@dataclass(frozen=True, slots=True, kw_only=True)
class CultureFacts:
    """What the rules need of one culture.

    ``fed_at`` and ``poured_at`` are the last feeding and the last time any liquid went in,
    or when it was put to rest, if that is later.
    """

    culture_id: int
    state: CultureState
    fed_at: datetime
    poured_at: datetime
    is_in_vessel: bool


def wanted_of_culture(
    facts: CultureFacts,
    rhythm: RestRhythm,
    *,
    now: datetime,
    zone: tzinfo,
    hour: time = USUAL_HOUR,
) -> tuple[Wanted, ...]:
    """Return the reminders that this culture wants at ``now``: only one resting in a vessel."""
    if facts.state is not CultureState.RESTING or not facts.is_in_vessel:
        return ()
    found: list[Wanted] = []
    for kind, since, days in (
        (ReminderKind.FEED, facts.fed_at, rhythm.feed_days),
        (ReminderKind.TOP_UP, facts.poured_at, rhythm.top_up_days),
    ):
        found += rounds(kind, since, max(1, round(days)), now, zone, hour)
    return tuple(found)


def merge_of_culture(culture: Culture, kept: Iterable[Reminder], asked: Iterable[Wanted]) -> Merge:
    """Compare what is kept for one culture with what is wanted."""

    def draft(want: Wanted) -> ReminderDraft:
        return ReminderDraft(
            batch_id=None,
            culture_id=culture.id,
            kind=want.kind,
            occurrence=want.occurrence,
            due_at=want.due_at,
        )

    return merge_rows(kept, asked, draft, has_ended=culture.state in _GONE)


def film_looks(
    started_at: datetime | None, *, now: datetime, zone: tzinfo, hour: time = USUAL_HOUR
) -> tuple[Wanted, ...]:
    """Return the looks for a film: the newest that is due, and the next to come."""
    if started_at is None:
        return ()
    start_day = started_at.astimezone(zone).date()
    days = list(FILM_LOOK_DAYS)
    age_days = (now.astimezone(zone).date() - start_day).days
    while days[-1] <= age_days:
        days.append(days[-1] + FILM_LOOK_EVERY_DAYS)
    looks = [
        Wanted(
            kind=ReminderKind.FILM_LOOK,
            occurrence=f"film{number}",
            due_at=wall_instant(start_day + timedelta(days=number), hour, zone),
        )
        for number in days
    ]
    due = [look for look in looks if look.due_at <= now]
    coming = [look for look in looks if look.due_at > now]
    return (*due[-1:], *coming[:1])


def rounds(
    kind: ReminderKind, since: datetime, days: int, now: datetime, zone: tzinfo, hour: time
) -> list[Wanted]:
    """Return the newest round that is due and the next to come, counted from ``since``."""
    start_day = since.astimezone(zone).date()
    passed = max(0, (now.astimezone(zone).date() - start_day).days) // days
    if passed and wall_instant(start_day + timedelta(days=passed * days), hour, zone) > now:
        passed -= 1
    numbers = (passed, passed + 1) if passed else (1,)
    return [
        Wanted(
            kind=kind,
            # The round is told by its day: another rhythm makes other rounds of it.
            occurrence=(start_day + timedelta(days=number * days)).isoformat(),
            due_at=wall_instant(start_day + timedelta(days=number * days), hour, zone),
        )
        for number in numbers
    ]
