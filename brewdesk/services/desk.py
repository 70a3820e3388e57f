"""The desk: every service of one open pantry, joined and handed to the window as one bundle."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

from PySide6.QtCore import QLocale

from brewdesk.services.alarm_notices import AlarmNotices
from brewdesk.services.autostart import SessionStart
from brewdesk.services.batchcosts import BatchCosts
from brewdesk.services.batches import Batches
from brewdesk.services.bottlings import Bottlings
from brewdesk.services.brewing import Brewing
from brewdesk.services.calendarkeeper import CalendarKeeper
from brewdesk.services.carrying import Carrying
from brewdesk.services.changes import Changes
from brewdesk.services.clock import Clock
from brewdesk.services.culture_reminder_rules import RestRhythm
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.cultures import Cultures
from brewdesk.services.desks import Desks
from brewdesk.services.door import Door
from brewdesk.services.fizzforecasts import FizzForecasts
from brewdesk.services.forecasts import Forecasts
from brewdesk.services.growing import Growing
from brewdesk.services.history import History
from brewdesk.services.jarnow import JarNow
from brewdesk.services.jobs import JobRunner
from brewdesk.services.journal import Journal
from brewdesk.services.labelsheets import LabelSheets
from brewdesk.services.labelsources import LabelSources
from brewdesk.services.lineage import Lineage
from brewdesk.services.liquids import Liquids
from brewdesk.services.lookback import LookBack
from brewdesk.services.meters import Meters
from brewdesk.services.notices.port import Notifier
from brewdesk.services.palate import Palate
from brewdesk.services.photos import Photos
from brewdesk.services.placelog import PlaceLog
from brewdesk.services.placeview import PlaceViews
from brewdesk.services.quantities import Quantities
from brewdesk.services.readings import Readings
from brewdesk.services.reminder_clock import ReminderClock
from brewdesk.services.reminder_rules import QuietHours
from brewdesk.services.reminders import Reminders
from brewdesk.services.remindershares import SeveralDesks
from brewdesk.services.search import Search
from brewdesk.services.settings import (
    CALIBRATE_DAYS,
    QUIET_FROM,
    QUIET_TO,
    REMINDER_HOUR,
    REMINDERS_HERE,
    REST_FEED_DAYS,
    REST_TOP_UP_DAYS,
    SOUND_ON,
    Settings,
)
from brewdesk.services.shelf import Shelf
from brewdesk.services.sound import Sound
from brewdesk.services.stores import Stores
from brewdesk.services.suspicion import Suspicion
from brewdesk.services.timeline import Timeline
from brewdesk.services.timers import Timers
from brewdesk.services.trials import Trials
from brewdesk.services.turns import Turns
from brewdesk.services.vessels import Vessels
from brewdesk.store.openstore import OpenStore
from brewdesk.store.wholetables import StillCopy

BACKUP_EVERY = timedelta(days=1)


@dataclass(frozen=True, kw_only=True)
class Desk:
    """The services of one open pantry."""

    store: OpenStore
    clock: Clock
    jobs: JobRunner
    turns: Turns
    notifier: Notifier
    changes: Changes
    door: Door
    desks: Desks
    history: History
    settings: Settings
    quantities: Quantities
    vessels: Vessels
    place_log: PlaceLog
    place_views: PlaceViews
    cultures: Cultures
    culture_care: CultureCare
    lineage: Lineage
    suspicion: Suspicion
    growing: Growing
    batches: Batches
    liquids: Liquids
    bottlings: Bottlings
    fizz_forecasts: FizzForecasts
    carrying: Carrying
    brewing: Brewing
    timers: Timers
    readings: Readings
    photos: Photos
    meters: Meters
    journal: Journal
    timeline: Timeline
    search: Search
    palate: Palate
    look_back: LookBack
    forecasts: Forecasts
    reminders: Reminders
    reminder_clock: ReminderClock
    alarm_notices: AlarmNotices
    calendar: CalendarKeeper
    session_start: SessionStart | None  # None where a pantry is not to start by itself
    shelf: Shelf
    sound: Sound
    label_sheets: LabelSheets
    label_sources: LabelSources
    stores: Stores
    batch_costs: BatchCosts
    trials: Trials

    @property
    def store_path(self) -> Path:
        """The pantry's file; of a shared one, the name beside which this desk's files lie."""
        return self.store.path

    @property
    def place(self) -> str:
        """Where the pantry is, for people."""
        return self.store.place

    @contextmanager
    def still_copy(self, beside: Path) -> Iterator[StillCopy]:
        """Give a copy of all rows that nobody writes to, with every photo brought here before."""
        self.photos.bring_all_here()
        with self.store.still_copy(beside) as copy:
            yield copy

    def back_up(self) -> Path:
        """Make a backup because the maker wants one, and return its path. Slow: run it as a job.

        Raises
        ------
        StoreTrouble
            If no sound copy could be made; the older backups stay.
        """
        return self.store.backup("manual", now=self.clock.now())

    def back_up_before_import(self) -> Path:
        """Make a backup before readings of a file are brought in. Run it within a job.

        Raises
        ------
        StoreTrouble
            As `back_up`.
        """
        return self.store.backup("before-import", now=self.clock.now())

    def back_up_before_restore(self) -> Path:
        """Make a backup of what is here, before an older one takes its place. Run it as a job.

        Raises
        ------
        StoreTrouble
            As `back_up`.
        """
        return self.store.backup("before-restore", now=self.clock.now())

    def back_up_if_changed(self) -> Path | None:
        """Make the day's backup, if something was done since the last one. Slow: run it as a job.

        Returns
        -------
        Path or None
            The new backup; None if the last one is less than a day old or still the same.

        Raises
        ------
        StoreTrouble
            As `back_up`.
        """
        now = self.clock.now()
        # One dated later than now was made while the clock was wrong: it says nothing of today.
        made = tuple(info for info in self.store.backups() if info.made_at <= now)
        if made and now - made[0].made_at < BACKUP_EVERY:
            return None
        with self.store.read() as unit:
            act = unit.acts.last_done()
        if act is None or (made and act.at < made[0].made_at):
            return None
        return self.store.backup("daily", now=now)


def build_desk(
    store: OpenStore,
    clock: Clock,
    *,
    jobs: JobRunner,
    notifier: Notifier,
    measurement: QLocale.MeasurementSystem = QLocale.MeasurementSystem.MetricSystem,
    sounds: Path | None = None,
    session_start: SessionStart | None = None,
) -> Desk:
    """Join the services of ``store``. Nothing is started: no timer runs, nothing is shown.

    Parameters
    ----------
    store
        The open pantry.
    clock
        Where the time comes from.
    jobs
        Runs slow work off the window's thread.
    notifier
        Shows notices outside the window.
    measurement
        The locale's measurement system, for the units offered first.
    sounds
        The folder of the chime; without one nothing is ever played.
    session_start
        How this pantry is opened with the desktop session, if it can be.
    """
    changes = Changes()
    door = Door(store, clock, changes)
    settings = Settings(store, changes, measurement=measurement, are_several=store.is_shared)
    desks = Desks(store, changes, settings)
    quantities = Quantities(settings)
    palate = Palate(door, jobs, settings)
    place_log = PlaceLog(door)
    turns = Turns(clock)
    forecasts = Forecasts(
        door,
        jobs,
        band=palate.band,
        unit_of=quantities.unit,
        means=place_log.means,
        turns=turns,
    )
    palate.learned.connect(forecasts.request_all_live)
    fizz_forecasts = FizzForecasts(door, warmth_of=place_log.warmth_of, jobs=jobs)
    reminders = Reminders(
        door,
        window_of=forecasts.window_of,
        bottlings_of=fizz_forecasts.reminder_facts,
        hour=lambda: settings.get(REMINDER_HOUR),
        rhythm=lambda: rest_rhythm(settings),
        calibrate_days=lambda: settings.get(CALIBRATE_DAYS),
    )
    # The null device holds no file, so nothing is found to play.
    sound = Sound(sounds or Path(os.devnull), is_on=lambda: settings.get(SOUND_ON))
    timers = Timers(door)
    batches = Batches(door, settings)
    brewing = Brewing(door)
    culture_care = CultureCare(door, settings)
    jar_now = JarNow(door, forecasts.now)
    liquids = Liquids(door, batches, jar_now)
    reminder_clock = ReminderClock(
        door,
        reminders,
        notifier,
        quiet_hours=lambda: quiet_hours(settings),
        chime=sound.chime,
        jobs=jobs,
        shares=SeveralDesks(door, reminders, settings, desks) if store.is_shared else None,
    )
    fizz_forecasts.ready.connect(reminder_clock.look_soon)
    return Desk(
        store=store,
        clock=clock,
        jobs=jobs,
        turns=turns,
        notifier=notifier,
        changes=changes,
        door=door,
        desks=desks,
        history=History(door),
        settings=settings,
        quantities=quantities,
        vessels=Vessels(door),
        place_log=place_log,
        place_views=PlaceViews(door, place_log, quantities),
        cultures=Cultures(door),
        culture_care=culture_care,
        lineage=Lineage(door),
        suspicion=Suspicion(door),
        growing=Growing(door, settings),
        batches=batches,
        liquids=liquids,
        bottlings=Bottlings(door, batches, jar_now.liquid, fizz_forecasts.pace),
        fizz_forecasts=fizz_forecasts,
        carrying=Carrying(
            door, liquids=liquids, batches=batches, brewing=brewing, care=culture_care
        ),
        brewing=brewing,
        timers=timers,
        readings=Readings(door, quantities),
        photos=Photos(door, jobs, store.path, shared=store.photos),
        meters=Meters(door),
        journal=Journal(door, quantities),
        timeline=Timeline(door, jobs, quantities),
        search=Search(door, jobs, quantities),
        palate=palate,
        look_back=LookBack(door, jobs, place_log.means, band=palate.band),
        forecasts=forecasts,
        reminders=reminders,
        reminder_clock=reminder_clock,
        alarm_notices=AlarmNotices(
            door,
            timers,
            notifier,
            sound,
            is_wanted=lambda: not store.is_shared or settings.get(REMINDERS_HERE),
        ),
        session_start=session_start,
        calendar=CalendarKeeper(door, reminders, settings, jobs, pantry_uid=store.info.uid),
        shelf=Shelf(
            door,
            settings,
            window_of=forecasts.window_of,
            band=palate.band,
            known_reminders=reminders.known_open_rows,
        ),
        sound=sound,
        label_sheets=LabelSheets(store, changes),
        label_sources=LabelSources(
            door,
            window_of=forecasts.window_of,
            danger_of=lambda bottling_id: fizz_forecasts.now(bottling_id).chill_by_at,
        ),
        stores=Stores(door),
        batch_costs=BatchCosts(door, settings),
        trials=Trials(door, batches, forecast_of=forecasts.newest),
    )


def quiet_hours(settings: Settings) -> QuietHours:
    """Return the hours in which the maker wants no notices."""
    return QuietHours(settings.get(QUIET_FROM), settings.get(QUIET_TO))


def rest_rhythm(settings: Settings) -> RestRhythm:
    """Return how often resting cultures want care."""
    return RestRhythm(settings.get(REST_FEED_DAYS), settings.get(REST_TOP_UP_DAYS))
