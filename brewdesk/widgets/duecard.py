"""One line of the due list as a card: what, where, since when, and what to do with it."""

from __future__ import annotations

from datetime import datetime, time, timedelta, tzinfo

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QMenu, QPushButton, QVBoxLayout, QWidget

from brewdesk.models.due import place_of
from brewdesk.services.escalation import Step as Loudness
from brewdesk.services.records import Batch, Step
from brewdesk.services.reminders import DueItem
from brewdesk.services.wording.alarms import time_up_words
from brewdesk.services.wording.moments import time_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stepwords import countdown_words
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_LOUD = {Loudness.PRESSING: "warn", Loudness.DANGER: "danger"}
EVENING = time(18, 0)
MORNING = time(9, 0)
_LEAST_AHEAD = timedelta(minutes=30)  # an evening that is nearly there is no snooze


def snooze_times(now: datetime, zone: tzinfo) -> tuple[tuple[str, datetime], ...]:
    """Return when a reminder may be put off to, with a code for each: hour, evening, tomorrow."""
    local = now.astimezone(zone)
    evening = datetime.combine(local.date(), EVENING, tzinfo=zone)
    tomorrow = datetime.combine(local.date() + timedelta(days=1), MORNING, tzinfo=zone)
    offers = [("hour", now + timedelta(hours=1))]
    if evening - local >= _LEAST_AHEAD:
        offers.append(("evening", evening))
    offers.append(("tomorrow", tomorrow))
    return tuple(offers)


class DueCard(QFrame):
    """A reminder. What the maker wants is emitted."""

    done_wanted = Signal(int)  # reminder id
    snooze_wanted = Signal(int, object)  # reminder id, instant
    open_batch = Signal(int)
    open_culture = Signal(int)
    open_bottling = Signal(int)
    open_supply = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.item: DueItem | None = None
        self._now: datetime | None = None
        self._zone: tzinfo | None = None
        set_role(self, "card")
        self.setObjectName("due_card")
        self._build()
        self._connect()

    def show_item(self, item: DueItem, now: datetime, zone: tzinfo, warning: str = "") -> None:
        """Show ``item`` as it is at ``now``; ``warning`` is about its snooze."""
        self.item, self._now, self._zone = item, now, zone
        place = place_of(item)
        self.place.setText(place)
        is_named = item.vessel is not None and item.vessel.name in item.title
        self.place.setVisible(bool(place) and not is_named)
        self.title.setText(item.title)
        self.body.setText(item.body)
        self.when.setText(item.when_text)
        set_role(self.when, "warn" if item.is_due else "muted")
        set_role(self, _LOUD.get(item.step, "card"))
        set_role(self.done_button, "primary" if item.is_due else "")
        subjects = (item.batch, item.culture, item.bottling)
        has_subject = any(subject is not None for subject in subjects)
        self.open_button.setVisible(has_subject or item.supply_id is not None)
        self.open_button.setText(self._open_words(item))
        self.warning.setText(warning)
        self.warning.setVisible(bool(warning))
        for button, words in (
            (self.done_button, self.tr("Done: {title}")),
            (self.snooze_button, self.tr("Remind me later: {title}")),
            (self.open_button, self.tr("{what}: {{title}}").format(what=self.open_button.text())),
        ):
            button.setAccessibleName(words.format(title=item.title))

    def _open_words(self, item: DueItem) -> str:
        if item.culture is not None:
            return self.tr("Open the culture")
        if item.supply_id is not None:
            return self.tr("Open the stores")
        return self.tr("Open the jar") if item.bottling is None else self.tr("Open the bottles")

    def fill_menu(self) -> None:
        """Offer the times that make sense now."""
        self.menu.clear()
        if self._now is None or self._zone is None:
            return
        for code, until in snooze_times(self._now, self._zone):
            at = time_words(until, self._zone)
            text = {
                "hour": self.tr("In one hour, at {time}"),
                "evening": self.tr("This evening, {time}"),
                "tomorrow": self.tr("Tomorrow, {time}"),
            }[code].format(time=at)
            action = self.menu.addAction(text)
            action.setObjectName(f"snooze_{code}")
            action.setData(until)

    def _build(self) -> None:
        self.place = plain_label("", "label")
        self.title = plain_label("", "heading", wraps=True)
        self.when = plain_label("", "muted", wraps=True)
        self.body = plain_label("", "", wraps=True)
        self.warning = plain_label("", "warn", wraps=True)
        self.done_button = QPushButton(self.tr("Done"))
        self.done_button.setObjectName("due_done")
        self.snooze_button = QPushButton(self.tr("Later  ▾"))
        self.snooze_button.setObjectName("due_snooze")
        self.menu = QMenu(self.snooze_button)
        self.open_button = QPushButton(self.tr("Open the jar"))
        self.open_button.setObjectName("due_open")
        set_role(self.open_button, "quiet")
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        line.addWidget(self.done_button)
        line.addWidget(self.snooze_button)
        line.addWidget(self.open_button)
        line.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, SPACE + 4, 2 * SPACE, SPACE + 4)
        column.setSpacing(SPACE // 2)
        for label in (self.place, self.title, self.when, self.body, self.warning):
            column.addWidget(label)
        column.addSpacing(SPACE // 2)
        column.addLayout(line)

    def _connect(self) -> None:
        self.done_button.clicked.connect(self._on_done)
        self.open_button.clicked.connect(self._on_open)
        self.snooze_button.clicked.connect(self._on_snooze)
        self.menu.triggered.connect(self._on_snoozed)

    def _on_done(self) -> None:
        if self.item is not None:
            self.done_wanted.emit(self.item.reminder.id)

    def _on_open(self) -> None:
        if self.item is not None and self.item.batch is not None:
            self.open_batch.emit(self.item.batch.id)
        elif self.item is not None and self.item.culture is not None:
            self.open_culture.emit(self.item.culture.id)
        elif self.item is not None and self.item.bottling is not None:
            self.open_bottling.emit(self.item.bottling.id)
        elif self.item is not None and self.item.supply_id is not None:
            self.open_supply.emit(self.item.supply_id)

    def _on_snooze(self) -> None:
        self.fill_menu()
        self.menu.popup(self.snooze_button.mapToGlobal(self.snooze_button.rect().bottomLeft()))

    def _on_snoozed(self, action: object) -> None:
        until = action.data() if hasattr(action, "data") else None
        if self.item is not None and isinstance(until, datetime):
            self.snooze_wanted.emit(self.item.reminder.id, until)


class TimerCard(QFrame):
    """A running timer of a run sheet."""

    open_batch = Signal(int)

    def __init__(self, step: Step, batch: Batch, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.step = step
        self._batch_id = batch.id
        self.setObjectName("timer_card")
        self.place = plain_label(batch.name, "label")
        self.title = plain_label(name_of(step.kind), "heading", wraps=True)
        self.countdown = plain_label("", "figure")
        self.countdown.setAccessibleDescription(self.tr("Time left"))
        self.open_button = QPushButton(self.tr("Open the run sheet"))
        self.open_button.setObjectName("timer_open")
        self.open_button.setAccessibleName(
            self.tr("Open the run sheet of {batch}").format(batch=batch.name)
        )
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.place)
        words.addWidget(self.title)
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * SPACE, SPACE + 4, 2 * SPACE, SPACE + 4)
        row.setSpacing(2 * SPACE)
        row.addLayout(words, 1)
        row.addWidget(self.countdown)
        row.addWidget(self.open_button)
        self.open_button.clicked.connect(lambda: self.open_batch.emit(self._batch_id))
        set_role(self, "inform")

    def show_time(self, remaining_s: float | None) -> None:
        """Show the time left, or what to do once it is over."""
        if remaining_s is None:
            return
        self.countdown.setText(countdown_words(remaining_s))
        rings = remaining_s <= 0
        self.title.setText(time_up_words(self.step.kind) if rings else name_of(self.step.kind))
        role = "warn" if rings else "inform"
        if self.property("role") != role:
            set_role(self, role)
