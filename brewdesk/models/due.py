"""The due list as groups: now, later today, the coming days."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, tzinfo
from enum import Enum

from brewdesk.services.reminders import DueItem


class DueGroup(Enum):
    """How near a line of the due list is."""

    NOW = "now"
    TODAY = "today"
    COMING = "coming"


def group_of(item: DueItem, now: datetime, zone: tzinfo) -> DueGroup:
    """Say in which group a line stands, by the maker's own calendar."""
    if item.is_due:
        return DueGroup.NOW
    is_today = item.due_at.astimezone(zone).date() == now.astimezone(zone).date()
    return DueGroup.TODAY if is_today else DueGroup.COMING


def grouped(
    items: Sequence[DueItem], now: datetime, zone: tzinfo
) -> tuple[tuple[DueGroup, tuple[DueItem, ...]], ...]:
    """Split a due list into its groups that have lines, keeping the order of the lines."""
    groups = []
    for group in DueGroup:
        lines = tuple(item for item in items if group_of(item, now, zone) is group)
        if lines:
            groups.append((group, lines))
    return tuple(groups)


def place_of(item: DueItem) -> str:
    """Name the jar and batch that a line is about; empty if it is about none."""
    if item.batch is None or item.vessel is None:
        return ""
    if item.batch.name == item.vessel.name:
        return item.vessel.name
    return f"{item.vessel.name} · {item.batch.name}"
