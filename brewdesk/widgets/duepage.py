"""The due list: running timers, what is due now, later today and in the coming days."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QScrollArea, QVBoxLayout, QWidget

from brewdesk.models.due import DueGroup, grouped
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import StoreTrouble
from brewdesk.services.reminders import DueItem
from brewdesk.services.wording.problems import trouble_words
from brewdesk.widgets.duecard import DueCard, TimerCard
from brewdesk.widgets.fields import Disclosure, plain_label
from brewdesk.widgets.ownreminder import OwnReminderForm
from brewdesk.widgets.theme import SPACE

SECOND_MS = 1_000
MINUTE_MS = 30_000
_WIDEST_PX = 760
_TOPICS = (
    Topic.REMINDERS | Topic.STEPS | Topic.BATCHES | Topic.VESSELS | Topic.SETTINGS
) | Topic.BOTTLINGS


class DuePage(QWidget):
    """Everything that asks for the maker, nearest first. This list is the record.

    ``open_batch`` carries the id of the batch whose jar is to be shown. ``export_wanted``
    asks for the list as a calendar file.
    """

    open_batch = Signal(int)
    open_culture = Signal(int)
    open_bottling = Signal(int)
    open_supply = Signal(int)
    export_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("due_page")
        self._desk = desk
        self._cards: dict[int, DueCard] = {}
        self._timer_cards: dict[int, TimerCard] = {}
        self._warnings: dict[int, str] = {}
        self._is_stale = True
        self._second = QTimer(self)
        self._second.setObjectName("due_second")
        self._second.setInterval(SECOND_MS)
        self._minute = QTimer(self)
        self._minute.setObjectName("due_minute")
        self._minute.setInterval(MINUTE_MS)
        self._minute.setTimerType(Qt.TimerType.VeryCoarseTimer)
        self._build()
        self._connect()

    def cards(self) -> tuple[DueCard, ...]:
        """Return the cards shown, in their order."""
        found = [self._lists[group].itemAt(n) for group in DueGroup for n in self._range(group)]
        widgets = [item.widget() for item in found if item is not None]
        return tuple(widget for widget in widgets if isinstance(widget, DueCard))

    def timer_cards(self) -> tuple[TimerCard, ...]:
        """Return the cards of the running timers."""
        return tuple(self._timer_cards.values())

    def refresh(self) -> None:
        """Read the due list anew, or note that it is stale while nobody looks."""
        self._is_stale = not self.isVisible()
        if self._is_stale:
            return
        now, zone = self._desk.clock.now(), self._desk.clock.zone()
        items = self._desk.reminders.listed(now)
        groups = dict(grouped(items, now, zone))
        self._drop_cards(keep={item.reminder.id for item in items})
        for group in DueGroup:
            lines = groups.get(group, ())
            self._headings[group].setVisible(bool(lines))
            self._show_group(group, lines, now)
        self._refresh_timers()
        self.empty.setVisible(not items and not self._timer_cards)
        self._show_unheard()
        self.own.refresh()

    def tick(self) -> None:
        """Bring the countdowns up to date."""
        for card in self._timer_cards.values():
            card.show_time(self._desk.brewing.remaining_s(card.step))

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        self.refresh()
        self._minute.start()

    def hideEvent(self, event: QHideEvent) -> None:
        """Count nothing that nobody sees."""
        super().hideEvent(event)
        self._minute.stop()
        self._second.stop()

    # building

    def _build(self) -> None:
        content = QWidget()
        content.setMaximumWidth(_WIDEST_PX)
        column = QVBoxLayout(content)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 3 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Due"), "title"))
        self.problem = plain_label("", "error", wraps=True)
        self.problem.hide()
        column.addWidget(self.problem)
        self.unheard = plain_label(
            self.tr(
                "Notices do not reach your desktop at present: look here, and listen for the chime."
            ),
            "muted",
            wraps=True,
        )
        self.unheard.setObjectName("due_unheard")
        column.addWidget(self.unheard)
        self._timers = QVBoxLayout()
        self._timers.setSpacing(SPACE)
        column.addLayout(self._timers)
        self.empty = plain_label(
            self.tr(
                "Nothing is due. Reminders appear here by themselves once a batch is souring: "
                "to check its pH, to look for mold, and to taste it. You can add your own below."
            ),
            "muted",
            wraps=True,
        )
        self.empty.setObjectName("due_empty")
        column.addWidget(self.empty)
        self._headings = {}
        self._lists: dict[DueGroup, QVBoxLayout] = {}
        for group, words in (
            (DueGroup.NOW, self.tr("Now")),
            (DueGroup.TODAY, self.tr("Today")),
            (DueGroup.COMING, self.tr("Coming days")),
        ):
            heading = plain_label(words, "heading", wraps=True)
            heading.setContentsMargins(0, SPACE, 0, 0)
            self._headings[group] = heading
            self._lists[group] = QVBoxLayout()
            self._lists[group].setSpacing(SPACE)
            column.addWidget(heading)
            column.addLayout(self._lists[group])
        column.addSpacing(SPACE)
        self.adding = Disclosure(self.tr("Add a reminder of your own"))
        self.adding.button.setObjectName("due_add")
        self.own = OwnReminderForm(self._desk)
        body = QVBoxLayout(self.adding.body)
        body.setContentsMargins(0, 0, 0, 0)
        body.addWidget(self.own)
        column.addWidget(self.adding)
        column.addSpacing(SPACE)
        self.export_button = QPushButton(self.tr("As a calendar file…"))
        self.export_button.setAccessibleName(self.tr("Export the due list as a calendar file"))
        self.export_button.setObjectName("due_export")
        column.addWidget(self.export_button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        self._scroll = QScrollArea(self)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setAccessibleName(self.tr("All that is due"))
        holder = QWidget()
        row = QHBoxLayout(holder)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(content, 1)
        row.addStretch(0)
        self._scroll.setWidget(holder)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._scroll)

    def _connect(self) -> None:
        self._desk.changes.changed.connect(self._on_changed)
        self._minute.timeout.connect(self.refresh)
        self._second.timeout.connect(self.tick)
        self._desk.notifier.availability_changed.connect(self._show_unheard)
        self.own.added.connect(self._on_added)
        self.export_button.clicked.connect(self.export_wanted)
        self.adding.toggled.connect(self._on_adding)

    # keeping up

    def _range(self, group: DueGroup) -> range:
        return range(self._lists[group].count())

    def _show_group(self, group: DueGroup, lines: tuple[DueItem, ...], now: datetime) -> None:
        zone = self._desk.clock.zone()
        for place, item in enumerate(lines):
            card = self._cards.get(item.reminder.id)
            if card is None:
                card = self._make_card()
                self._cards[item.reminder.id] = card
            card.show_item(item, now, zone, self._warnings.get(item.reminder.id, ""))
            self._lists[group].insertWidget(place, card)
            card.show()

    def _make_card(self) -> DueCard:
        card = DueCard(self)
        card.done_wanted.connect(self._on_done)
        card.snooze_wanted.connect(self._on_snooze)
        card.open_batch.connect(self.open_batch)
        card.open_culture.connect(self.open_culture)
        card.open_bottling.connect(self.open_bottling)
        card.open_supply.connect(self.open_supply)
        return card

    def _drop_cards(self, keep: set[int]) -> None:
        for reminder_id in [gone for gone in self._cards if gone not in keep]:
            card = self._cards.pop(reminder_id)
            self._warnings.pop(reminder_id, None)
            for group in DueGroup:
                self._lists[group].removeWidget(card)
            card.hide()
            card.deleteLater()

    def _refresh_timers(self) -> None:
        steps = {step.id: step for step in self._desk.brewing.running_steps()}
        for step_id in [gone for gone in self._timer_cards if gone not in steps]:
            card = self._timer_cards.pop(step_id)
            self._timers.removeWidget(card)
            card.hide()
            card.deleteLater()
        for step in steps.values():
            known = self._timer_cards.get(step.id)
            if known is None:
                known = TimerCard(step, self._desk.batches.get(step.batch_id), self)
                known.open_batch.connect(self.open_batch)
                self._timer_cards[step.id] = known
                self._timers.addWidget(known)
            known.step = step
        self.tick()
        if self._timer_cards and self.isVisible():
            self._second.start()
        else:
            self._second.stop()

    def _show_unheard(self) -> None:
        self.unheard.setVisible(not self._desk.notifier.is_available())

    # what happens

    def _on_done(self, reminder_id: int) -> None:
        try:
            self._desk.reminders.done(reminder_id)
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))

    def _on_snooze(self, reminder_id: int, until: datetime) -> None:
        try:
            self._warnings[reminder_id] = self._desk.reminders.snooze_problem(reminder_id, until)
            self._desk.reminders.snooze(reminder_id, until)
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))

    def _say(self, text: str) -> None:
        self.problem.setText(text)
        self.problem.setVisible(bool(text))

    def _on_added(self, reminder_id: int) -> None:
        del reminder_id
        # The form goes away with the keyboard in it: no "Done" of a reminder shall get that.
        self.adding.button.setFocus(Qt.FocusReason.OtherFocusReason)
        self.adding.set_open(False)

    def _on_adding(self, is_open: bool) -> None:
        if is_open:
            self.own.text.setFocus(Qt.FocusReason.OtherFocusReason)
            QTimer.singleShot(0, self, self._show_form)

    def _show_form(self) -> None:
        self._scroll.ensureWidgetVisible(self.own.add_button)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_TOPICS):
            self._say("")
            self.refresh()
