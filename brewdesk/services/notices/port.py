"""What every way of showing a notice offers, and what a notice is."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import QObject, Signal


class NoticeAction(Enum):
    """What the maker can answer to a notice."""

    OPEN = "open"
    DONE = "done"
    SNOOZE = "snooze"


class Urgency(Enum):
    """How much a notice may disturb. Only a danger is critical: it may cover a full screen."""

    LOW = "low"
    NORMAL = "normal"
    CRITICAL = "critical"


@dataclass(frozen=True, slots=True)
class Notice:
    """One message for the maker.

    ``key`` is ours and stable: showing a notice with a key that is on the screen
    replaces it. ``actions`` pairs each answer with the word on its button.
    """

    key: str
    title: str
    body: str
    actions: tuple[tuple[NoticeAction, str], ...] = ()
    urgency: Urgency = Urgency.NORMAL


class Notifier(QObject):
    """A way to show notices. This one has none, and is what the others build on.

    A notifier never raises and never waits. It may fail to show anything, and a
    desktop never tells whether the maker saw it: the due list is the record.

    ``acted(key, action)`` says what the maker answered, ``action`` a
    `NoticeAction`; ``availability_changed(bool)`` that notices began or ceased to
    reach the desktop.
    """

    acted = Signal(str, object)
    availability_changed = Signal(bool)

    def start(self) -> None:
        """Look for the desktop's notice service, without waiting for it."""

    def is_available(self) -> bool:
        """Whether notices reach the desktop, as far as is known now."""
        return False

    def show(self, notice: Notice) -> None:
        """Show ``notice``, or bring the one with its key up to date."""

    def withdraw(self, key: str) -> None:
        """Take the notice with this key off the screen, if it is there."""

    def close(self) -> None:
        """Let go of the desktop's notice service."""
