"""Where the time comes from. Nothing else in the program asks the machine for it."""

from __future__ import annotations

import os
import time
from collections.abc import Callable
from datetime import UTC, datetime, tzinfo
from typing import Protocol
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError, available_timezones

from PySide6.QtCore import QTimeZone


class Clock(Protocol):
    """The three questions the program asks about time."""

    def now(self) -> datetime:
        """Return the wall clock as an aware UTC datetime."""
        ...

    def monotonic(self) -> float:
        """Return seconds that never run backwards; they may stand still while asleep."""
        ...

    def zone(self) -> tzinfo:
        """Return the zone in which the maker lives, with its daylight-saving rules."""
        ...


class SystemClock:
    """The machine's own clock.

    ``zone_name`` gives the maker's chosen zone ("Europe/London") or "" for the
    machine's. It is asked anew each time, so that a changed setting or a journey
    is noticed.
    """

    def __init__(self, zone_name: Callable[[], str] | None = None) -> None:
        self._zone_name = zone_name

    def now(self) -> datetime:
        """Return the wall clock as an aware UTC datetime."""
        return datetime.now(UTC)

    def monotonic(self) -> float:
        """Return the machine's monotonic seconds."""
        return time.monotonic()

    def zone(self) -> tzinfo:
        """Return the chosen zone, else the machine's, else its present offset from UTC."""
        chosen = self._zone_name() if self._zone_name is not None else ""
        for name in (chosen, os.environ.get("TZ", ""), _machine_zone_name()):
            zone = zone_by_name(name)
            if zone is not None:
                return zone
        return datetime.now().astimezone().tzinfo or UTC


def zone_by_name(name: str) -> tzinfo | None:
    """Return the zone with this IANA name, or None if it is empty or not known."""
    if not name:
        return None
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return None


def zone_names() -> tuple[str, ...]:
    """Return the names of the zones known here that people live in, and UTC."""
    return tuple(
        sorted(
            name
            for name in available_timezones()
            if name == "UTC" or ("/" in name and not name.startswith(("Etc/", "SystemV/")))
        )
    )


def _machine_zone_name() -> str:
    return bytes(QTimeZone.systemTimeZoneId().data()).decode("ascii", "replace")
