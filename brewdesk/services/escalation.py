"""How a reminder that warns of danger grows louder until it is answered.

Pure functions. Only what may burst does so: everything else is shown once. The hours are
our choice, no source: enough of a warning to come home, and an hour to sleep between two.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from enum import IntEnum

from brewdesk.store.records import Reminder, ReminderDraft
from culturecore.stages import ReminderKind, ReminderState

# Closed bottles: the only thing in a pantry that hurts somebody by waiting.
DANGER_KINDS = (ReminderKind.CHILL,)
PRESSING_BEFORE = timedelta(hours=12)
PRESSING_AGAIN = timedelta(hours=3)
DANGER_AGAIN = timedelta(hours=1)


class Step(IntEnum):
    """How loud a reminder is."""

    CALM = 0  # shown once, keeps the quiet hours
    PRESSING = 1  # shown every three hours, also in quiet hours
    DANGER = 2  # shown every hour, critical


def step_of(row: ReminderDraft, now: datetime) -> Step:
    """Return how loud a reminder is at ``now``: by how far off the earliest danger is."""
    if row.kind not in DANGER_KINDS or row.window_end is None:
        return Step.CALM
    if now >= row.window_end:
        return Step.DANGER
    if now >= row.window_end - PRESSING_BEFORE:
        return Step.PRESSING
    return Step.CALM


def is_to_be_repeated(row: Reminder, now: datetime) -> bool:
    """Whether a reminder that was shown, and is still open, is to be shown again.

    At once when it has grown louder since, then at the rhythm of its step. A showing that
    lies in the future was by a clock that has been put back: it counts by its distance.
    """
    if row.state is not ReminderState.SHOWN or row.shown_at is None:
        return False
    step = step_of(row, now)
    if step is not Step.CALM and step > step_of(row, row.shown_at):
        return True
    return is_time_again(step, row.shown_at, now)


def is_time_again(step: Step, told_at: datetime, now: datetime) -> bool:
    """Whether what was told at ``told_at`` is to be told again by the rhythm of its step."""
    if step is Step.CALM:
        return False
    every = DANGER_AGAIN if step is Step.DANGER else PRESSING_AGAIN
    return abs(now - told_at) >= every


def latest_snooze(row: ReminderDraft, until: datetime, now: datetime) -> datetime:
    """Cut a snooze that reaches over the danger.

    Before the danger it ends with it; in danger it ends with the next repeat.
    """
    if row.kind not in DANGER_KINDS or row.window_end is None:
        return until
    return min(until, max(row.window_end, now + DANGER_AGAIN))
