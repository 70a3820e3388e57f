"""Which reminders a batch wants, and how wanted ones meet those already kept.

Pure functions: facts, the present instant and the zone come in, values go out.
Reminders of a day are due at an hour of the maker's wall clock, so they are worked
out anew whenever the zone or the forecast may have changed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta, tzinfo

from brewdesk.store.records import Reminder, ReminderDraft
from culturecore import safety
from culturecore.stages import BatchPurpose, BatchStage, Look, ReminderKind, ReminderState

SAFE_PH = safety.limit("ph_finished_max")
# A look before the deadline leaves time to act.
PH_CHECK_DAYS = (int(safety.limit("ph_slow_days")), int(safety.limit("ph_deadline_days")))
# Common practice, no source: a film is worth a look once it has begun to form, then twice a week.
FIRST_MOLD_LOOK_DAY = 3
MOLD_LOOK_EVERY_DAYS = 4
LOOK_AGAIN_AFTER_DAYS = 1  # after a look that left doubt
RENAG_AFTER = timedelta(days=1)
USUAL_HOUR = time(9, 0)

_OPEN = (ReminderState.WAITING, ReminderState.SHOWN, ReminderState.SNOOZED)
_OPEN_END = ".."
# A calendar that was given the older one takes the newer only under a higher number.
_TOLD_TO_CALENDARS = frozenset({"due_at", "window_end", "text"})
_ENDED = (BatchStage.DRAWN_OFF, BatchStage.CLOSED, BatchStage.DISCARDED)


@dataclass(frozen=True, slots=True)
class PhReading:
    """A measured pH with its standard uncertainty; without one it settles nothing."""

    at: datetime
    ph: float
    sd: float | None


@dataclass(frozen=True, slots=True)
class LookTaken:
    """A look at the surface, and what it found."""

    at: datetime
    look: Look


@dataclass(frozen=True, slots=True, kw_only=True)
class TastingWindow:
    """When a batch is forecast to be worth tasting.

    ``opens_at`` is the median, ``opens_earliest`` to ``opens_latest`` the central
    80 %; without a latest it may open at any time later. All are None if the window
    does not open within the forecast's horizon.
    """

    opens_at: datetime | None = None
    opens_earliest: datetime | None = None
    opens_latest: datetime | None = None
    closes_at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchFacts:
    """What the rules need of one batch. ``window`` is None while no forecast is known."""

    batch_id: int
    stage: BatchStage
    started_at: datetime | None
    ph_readings: tuple[PhReading, ...] = ()
    window: TastingWindow | None = None
    purpose: BatchPurpose = BatchPurpose.DRINK
    looks: tuple[LookTaken, ...] = ()  # oldest first
    ended_at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """One occurrence that the rules ask for. ``text`` is as in `span_text`."""

    kind: ReminderKind
    occurrence: str
    due_at: datetime
    window_end: datetime | None = None
    text: str = ""


@dataclass(frozen=True, slots=True)
class Merge:
    """What to write: rows to add, and changes of fields by row id."""

    add: tuple[ReminderDraft, ...] = ()
    change: Mapping[int, Mapping[str, object]] = field(default_factory=dict)

    def is_empty(self) -> bool:
        """Whether everything is as wanted already."""
        return not self.add and not self.change


def wall_instant(day: date, at: time, zone: tzinfo) -> datetime:
    """Return the UTC instant at which the maker's clock shows ``at`` on ``day``.

    A time that a change to summer time leaves out moves on by the missing hour; one
    that occurs twice means the first.
    """
    return datetime.combine(day, at.replace(fold=0), tzinfo=zone).astimezone(UTC)


def whole_hour(instant: datetime) -> datetime:
    """Cut to the hour: a forecast is no better, and rows are not rewritten for a minute."""
    return instant.astimezone(UTC).replace(minute=0, second=0, microsecond=0)


def wanted(
    facts: BatchFacts, *, now: datetime, zone: tzinfo, hour: time = USUAL_HOUR
) -> tuple[Wanted, ...]:
    """Return the reminders that this batch wants at ``now``; none unless it is souring."""
    if facts.stage is not BatchStage.SOURING or facts.started_at is None:
        return ()
    start_day = facts.started_at.astimezone(zone).date()
    found: list[Wanted] = []
    if not is_sour_enough(facts):
        found.extend(
            _on_day(ReminderKind.PH_CHECK, start_day, number, hour, zone)
            for number in _ph_check_days(facts, start_day, now, hour, zone)
        )
    found.extend(
        _on_day(ReminderKind.MOLD_LOOK, start_day, number, hour, zone)
        for number in _mold_look_days(facts, start_day, now, hour, zone)
    )
    if facts.purpose is BatchPurpose.CULTURE:
        return tuple(found)  # it is grown, not drunk
    tasting = _tasting(facts.window, hour, zone)
    if tasting is not None:
        found.append(tasting)
    return tuple(found)


def is_sour_enough(facts: BatchFacts) -> bool:
    """Whether a pH taken since the start is at or below the safe pH, its doubt included."""
    return any(
        reading.sd is not None
        and reading.ph + reading.sd <= SAFE_PH
        and facts.started_at is not None
        and reading.at >= facts.started_at
        for reading in facts.ph_readings
    )


def merge(facts: BatchFacts, kept: Iterable[Reminder], asked: Iterable[Wanted]) -> Merge:
    """Compare what is kept for one batch with what is wanted.

    A waiting reminder moves with the forecast. One that was shown is not shown again
    unless it moves a day or more into the future. Done stays done. What is no longer
    wanted is dropped; what is wanted again (an act was undone) comes back. What the maker
    wrote for a time after the batch's end stays: it is about what comes then ("give the
    neighbour two bottles"), and only the maker can tell. What was due by then ended with it.
    """
    is_unsettled = facts.window is None and facts.stage is BatchStage.SOURING
    return merge_rows(
        kept,
        asked,
        lambda want: _draft(facts.batch_id, want),
        has_ended=facts.stage in _ENDED,
        ended_at=facts.ended_at,
        unsettled=(ReminderKind.TASTE,) if is_unsettled else (),
    )


def merge_rows(
    kept: Iterable[Reminder],
    asked: Iterable[Wanted],
    draft: Callable[[Wanted], ReminderDraft],
    *,
    has_ended: bool,
    ended_at: datetime | None = None,
    unsettled: tuple[ReminderKind, ...] = (),
) -> Merge:
    """Compare what is kept for one batch, culture or bottling with what is wanted.

    As `merge` says. ``has_ended`` drops those of the maker's own that were due by
    ``ended_at``, all of them if it is None; kinds that are ``unsettled`` stay as they are.
    """
    rows = {(row.kind, row.occurrence): row for row in kept}
    change: dict[int, dict[str, object]] = {}
    add: list[ReminderDraft] = []
    asked_keys = set()
    for want in asked:
        asked_keys.add((want.kind, want.occurrence))
        row = rows.get((want.kind, want.occurrence))
        if row is None:
            add.append(draft(want))
        else:
            _note(change, row, _moved(row, want))
    for key, row in rows.items():
        if row.kind is ReminderKind.OWN:
            is_wanted = not has_ended or (ended_at is not None and effective_due(row) > ended_at)
            if is_wanted and row.state is ReminderState.DROPPED:
                was_seen = _was_seen(row, row.due_at)
                state = ReminderState.SHOWN if was_seen else ReminderState.WAITING
                _note(change, row, {"state": state})
        else:
            is_wanted = key in asked_keys or row.kind in unsettled
        if not is_wanted and row.state in _OPEN:
            change[row.id] = {"state": ReminderState.DROPPED}
    return Merge(tuple(add), change)


def effective_due(row: ReminderDraft) -> datetime:
    """Return when a reminder is to be shown: its due time, or the end of its snooze."""
    if row.state is ReminderState.SNOOZED and row.snoozed_until is not None:
        return row.snoozed_until
    return row.due_at


def span_text(earliest: datetime, latest: datetime | None) -> str:
    """Write the span in which a window opens, to be kept with its reminder (ISO 8601).

    None for ``latest`` is an open end.
    """
    end = latest.astimezone(UTC).isoformat() if latest is not None else _OPEN_END
    return f"{earliest.astimezone(UTC).isoformat()}/{end}"


def read_span(text: str) -> tuple[datetime, datetime | None] | None:
    """Read what `span_text` wrote; None for anything else."""
    first, _, last = text.partition("/")
    try:
        earliest = datetime.fromisoformat(first)
        latest = None if last == _OPEN_END else datetime.fromisoformat(last)
    except ValueError:
        return None
    if earliest.tzinfo is None or (latest is not None and latest.tzinfo is None):
        return None
    return earliest, latest


@dataclass(frozen=True, slots=True)
class QuietHours:
    """A span of the maker's wall clock in which nothing is shown; equal ends mean none."""

    begins: time
    ends: time

    def covers(self, now: datetime, zone: tzinfo) -> bool:
        """Whether the maker's clock shows a time within the span; the end is outside."""
        shown = now.astimezone(zone).time()
        if self.begins <= self.ends:
            return self.begins <= shown < self.ends
        return shown >= self.begins or shown < self.ends


def _on_day(kind: ReminderKind, start_day: date, number: int, hour: time, zone: tzinfo) -> Wanted:
    due_at = wall_instant(start_day + timedelta(days=number), hour, zone)
    return Wanted(kind=kind, occurrence=f"day{number}", due_at=due_at)


def _ph_check_days(
    facts: BatchFacts, start_day: date, now: datetime, hour: time, zone: tzinfo
) -> tuple[int, ...]:
    """Return the checks that no reading has answered; the newest that is due stands for older ones.

    A reading of the check's day or later answers it, sour enough or not: what follows from
    the reading is said at the jar.
    """
    read_days = [
        (reading.at.astimezone(zone).date() - start_day).days for reading in facts.ph_readings
    ]
    unanswered = [number for number in PH_CHECK_DAYS if number > max(read_days, default=-1)]
    due = [
        number
        for number in unanswered
        if wall_instant(start_day + timedelta(days=number), hour, zone) <= now
    ]
    return tuple(number for number in unanswered if number not in due[:-1])


def _mold_look_days(
    facts: BatchFacts, start_day: date, now: datetime, hour: time, zone: tzinfo
) -> tuple[int, ...]:
    """Return the looks that nothing has answered: the newest that is due, and the next to come.

    A look that found nothing answers those of its day and before. One that left doubt asks
    for another the day after; one that found mold answers nothing: the jar still stands there.
    """
    taken = [(one.look, (one.at.astimezone(zone).date() - start_day).days) for one in facts.looks]
    answered = max((day for look, day in taken if look is not Look.MOLD), default=-1)
    days = {day for day in _usual_look_days(start_day, now, hour, zone) if day > answered}
    if taken and taken[-1][0] is Look.UNSURE:
        days.add(taken[-1][1] + LOOK_AGAIN_AFTER_DAYS)
    return tuple(sorted(days))


def _usual_look_days(start_day: date, now: datetime, hour: time, zone: tzinfo) -> tuple[int, ...]:
    """Return the newest look that is due and the next to come: one look makes up for older ones."""
    age_days = (now.astimezone(zone).date() - start_day).days
    rounds = max(0, (age_days - FIRST_MOLD_LOOK_DAY) // MOLD_LOOK_EVERY_DAYS)
    number = FIRST_MOLD_LOOK_DAY + rounds * MOLD_LOOK_EVERY_DAYS
    if wall_instant(start_day + timedelta(days=number), hour, zone) > now:
        number -= MOLD_LOOK_EVERY_DAYS
    coming = number + MOLD_LOOK_EVERY_DAYS
    return (number, coming) if number >= FIRST_MOLD_LOOK_DAY else (coming,)


def _tasting(window: TastingWindow | None, hour: time, zone: tzinfo) -> Wanted | None:
    if window is None or window.opens_at is None:
        return None
    if window.opens_earliest is None:
        text = ""
    else:
        latest = window.opens_latest
        text = span_text(
            whole_hour(window.opens_earliest),
            whole_hour(latest) if latest is not None else None,
        )
    return Wanted(
        kind=ReminderKind.TASTE,
        occurrence="window",
        due_at=wall_instant(window.opens_at.astimezone(zone).date(), hour, zone),
        window_end=whole_hour(window.closes_at) if window.closes_at is not None else None,
        text=text,
    )


def _draft(batch_id: int, want: Wanted) -> ReminderDraft:
    return ReminderDraft(
        batch_id=batch_id,
        kind=want.kind,
        occurrence=want.occurrence,
        due_at=want.due_at,
        window_end=want.window_end,
        text=want.text,
    )


def _moved(row: Reminder, want: Wanted) -> dict[str, object]:
    words: dict[str, object] = {"window_end": want.window_end, "text": want.text}
    if row.state is ReminderState.DONE:
        return {}
    if row.state is ReminderState.SNOOZED:
        return words
    was_seen = _was_seen(row, want.due_at)
    if row.state is ReminderState.SHOWN and was_seen:
        return words
    state = ReminderState.SHOWN if was_seen else ReminderState.WAITING
    return {**words, "due_at": want.due_at, "state": state}


def _was_seen(row: Reminder, due_at: datetime) -> bool:
    """Whether what was shown before stands for a reminder that is now due at ``due_at``.

    A forecast wanders to and fro over midnight: what was shown after the new due time was
    shown for it too, and what has moved by less than a day is no news.
    """
    shown_at = row.shown_at
    if shown_at is None:
        if row.state is not ReminderState.SHOWN:
            return False
        shown_at = row.due_at
    if due_at <= shown_at:
        return True
    waits_again = row.due_at > shown_at
    return not waits_again and due_at - row.due_at < RENAG_AFTER


def _note(change: dict[int, dict[str, object]], row: Reminder, fields: dict[str, object]) -> None:
    differing = {name: new for name, new in fields.items() if getattr(row, name) != new}
    if not differing.keys().isdisjoint(_TOLD_TO_CALENDARS):
        differing["revision"] = row.revision + 1
    if differing:
        change[row.id] = differing
