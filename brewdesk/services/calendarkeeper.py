"""Writes the due list as a calendar file: once when asked, or again whenever it changes."""

from __future__ import annotations

import logging
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from brewdesk.services.calendarfile import (
    CalendarTrouble,
    Entry,
    calendar_bytes,
    entry_of,
    says_the_same,
    settled_entries,
    write_calendar,
)
from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.reminders import Reminders
from brewdesk.services.settings import CALENDAR_PATH, Settings
from brewdesk.services.wording.calendar import not_ours_words, not_written_words, written_words
from brewdesk.services.wording.problems import trouble_words
from brewdesk.store.errors import StoreTrouble

log = logging.getLogger(__name__)

SETTLES_MS = 2_000  # a form or a forecast changes many rows one after another
_TOPICS = (
    Topic.REMINDERS | Topic.BATCHES | Topic.CULTURES | Topic.VESSELS | Topic.BOTTLINGS
) | Topic.SETTINGS
_BEGINS = b"BEGIN:VCALENDAR"
NOT_OURS = "not a calendar"


class CalendarKeeper(QObject):
    """Keeps one calendar file true, if the maker chose where; writes others when asked.

    ``told`` carries a sentence and its role ("good", "warn"). A file that cannot be kept up to
    date is told of once, and again only after it could be written in between.
    """

    told = Signal(str, str)

    def __init__(
        self,
        door: Door,
        reminders: Reminders,
        settings: Settings,
        jobs: JobRunner,
        *,
        pantry_uid: str,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._pantry_uid = pantry_uid
        self._door = door
        self._reminders = reminders
        self._settings = settings
        self._jobs = jobs
        self._told_of = ""
        self._soon = QTimer(self, interval=SETTLES_MS, singleShot=True)
        self._soon.setObjectName("calendar_soon")
        self._soon.timeout.connect(self.renew)
        self._is_watching = False
        door.changes.changed.connect(self._on_changed)

    def start(self) -> None:
        """Bring the chosen file up to date, and keep it so."""
        self._is_watching = True
        self.renew()

    def stop(self) -> None:
        """Look after the file no more."""
        self._is_watching = False
        self._soon.stop()

    def chosen_path(self) -> Path | None:
        """Return where a file is kept up to date; None while none is."""
        text = self._settings.get(CALENDAR_PATH)
        return Path(text) if text else None

    def export(self, path: Path) -> None:
        """Write the due list of now to ``path``, and tell how that went."""
        self._run(path, is_kept=False)

    def renew(self) -> None:
        """Write the chosen file anew if it does not say what is true."""
        path = self.chosen_path()
        if path is not None:
            self._run(path, is_kept=True)

    def _run(self, path: Path, *, is_kept: bool) -> None:
        now = self._door.clock.now()
        uid = self._pantry_uid
        try:
            items = self._reminders.listed(now)
        except StoreTrouble as trouble:
            self._on_failed(trouble, path, is_kept=is_kept)
            return
        entries = tuple(entry_of(item, uid) for item in items)

        def work() -> tuple[Path, int]:
            with self._door.store.read() as unit:
                settled = settled_entries(unit, uid, now)
            _put(path, (*entries, *settled), now)
            return path, len(entries)

        self._jobs.run(
            work,
            self._on_kept if is_kept else self._on_exported,
            lambda error: self._on_failed(error, path, is_kept=is_kept),
            key="calendar-kept" if is_kept else "calendar-export",
            pool=Pool.STORE,
        )

    def _on_exported(self, written: tuple[Path, int]) -> None:
        path, count = written
        self.told.emit(written_words(str(path), count), "good")

    def _on_kept(self, _written: tuple[Path, int]) -> None:
        self._told_of = ""

    def _on_failed(self, error: BaseException, path: Path, *, is_kept: bool) -> None:
        if isinstance(error, StoreTrouble):
            words = trouble_words(error)
        elif isinstance(error, CalendarTrouble):
            is_foreign = error.detail == NOT_OURS
            words = not_ours_words(str(path)) if is_foreign else not_written_words(str(path))
        else:
            raise error
        if is_kept and self._told_of == words:
            return
        if is_kept:
            self._told_of = words
        log.warning("the calendar file could not be written: %s", error)
        self.told.emit(words, "warn")

    def _on_changed(self, change: Change) -> None:
        if self._is_watching and change.concerns(_TOPICS) and self.chosen_path() is not None:
            self._soon.start()


def _put(path: Path, entries: tuple[Entry, ...], now: datetime) -> None:
    """Write the file, unless it says the same already.

    Raises
    ------
    CalendarTrouble
        If the system does not take it, or what stands there is no calendar.
    """
    data = calendar_bytes(entries, stamped_at=now)
    try:
        old = path.read_bytes()
    except FileNotFoundError:
        old = b""
    except OSError as error:
        raise CalendarTrouble(path, str(error)) from error
    if old and not old.lstrip(b"\xef\xbb\xbf").upper().startswith(_BEGINS):
        raise CalendarTrouble(path, NOT_OURS)
    if not old or not says_the_same(old, data):
        write_calendar(path, data)
