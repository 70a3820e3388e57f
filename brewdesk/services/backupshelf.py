"""The backups of a pantry as one looks at them: each checked, and what it would bring or lose."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from brewdesk.store.backup import Inside, backups, look_inside
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.openstore import OpenStore
from brewdesk.store.records import Act, BackupInfo

_ACTS_AT_A_TIME = 500


@dataclass(frozen=True, slots=True, kw_only=True)
class BackupView:
    """One backup, looked at. ``inside`` is None if it is not sound any more; then ``trouble``."""

    info: BackupInfo
    inside: Inside | None
    trouble: StoreTrouble | None = None

    @property
    def is_sound(self) -> bool:
        """Whether it is to the byte what was written, and opens."""
        return self.inside is not None


@dataclass(frozen=True, slots=True, kw_only=True)
class WouldBeLost:
    """What was done since a backup was made. ``newest`` are the last acts of it, newest first."""

    count: int
    newest: tuple[Act, ...]
    is_same_pantry: bool


def look_at(info: BackupInfo) -> BackupView:
    """Open and check one backup. Reads all of it: run it as a job."""
    try:
        return BackupView(info=info, inside=look_inside(info))
    except StoreTrouble as trouble:
        return BackupView(info=info, inside=None, trouble=trouble)


def look_at_all(
    store_path: Path, is_cancelled: Callable[[], bool] = lambda: False
) -> tuple[BackupView, ...]:
    """Open and check all backups of a pantry, newest first. Slow: run it as a job."""
    views = []
    for info in backups(store_path):
        if is_cancelled():
            break
        views.append(look_at(info))
    return tuple(views)


def newest_sound(views: tuple[BackupView, ...]) -> int | None:
    """Return the place of the newest backup that is sound, or None."""
    return next((place for place, view in enumerate(views) if view.is_sound), None)


def would_be_lost(store: OpenStore, view: BackupView, *, name_at_most: int = 8) -> WouldBeLost:
    """Say what going back to a backup would take from the pantry that is open.

    Raises
    ------
    StoreTrouble
        If the pantry cannot be read.
    """
    if view.inside is None or view.info.pantry_uid != store.info.uid:
        return WouldBeLost(count=0, newest=(), is_same_pantry=False)
    count = 0
    newest: list[Act] = []
    after = view.inside.newest_act_id
    with store.read() as unit:
        undone = unit.acts.undone_ids()
        while acts := unit.acts.after(after, limit=_ACTS_AT_A_TIME):
            after = acts[-1].id
            done = [act for act in acts if act.id not in undone]
            count += len(done)
            newest = [*newest, *done][-name_at_most:]
    return WouldBeLost(count=count, newest=tuple(reversed(newest)), is_same_pantry=True)
