"""The nearest reminders on one line at the foot of the window."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QCoreApplication, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QHideEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSizePolicy, QWidget

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import ReminderKind
from brewdesk.services.reminders import DueItem
from brewdesk.services.wording.moments import day_words
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, TOUCH

MINUTE_MS = 30_000
_SHOWN = 3
_TURN = "due_strip"
_WIDEST_PX = 288
_LEAST_PX = 96
_TOPICS = Topic.REMINDERS | Topic.BATCHES | Topic.VESSELS | Topic.BOTTLINGS


class DueStrip(QWidget):
    """Up to three reminders, nearest first. A click opens the due list."""

    open_due = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("due_strip")
        self._desk = desk
        self._minute = QTimer(self)
        self._minute.setObjectName("due_strip_minute")
        self._minute.setInterval(MINUTE_MS)
        self._minute.setTimerType(Qt.TimerType.VeryCoarseTimer)
        self.lines = [_StripLine(n, self) for n in range(_SHOWN)]
        self.empty = plain_label(self.tr("Nothing is due."), "muted")
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE // 2)
        layout.addWidget(self.empty)
        for line in self.lines:
            layout.addWidget(line)
            line.clicked.connect(self.open_due)
        self._minute.timeout.connect(self.refresh)
        desk.changes.changed.connect(self._on_changed)
        self.refresh()

    def refresh(self) -> None:
        """Read the due list anew."""
        now, zone = self._desk.clock.now(), self._desk.clock.zone()
        items = self._desk.reminders.listed(now, most=_SHOWN)
        self.empty.setVisible(not items)
        for line, item in zip(self.lines, [*items, None, None, None], strict=False):
            line.setVisible(item is not None)
            if item is not None:
                when = self.tr("Now") if item.is_due else day_words(item.due_at, now, zone)
                when = when[:1].upper() + when[1:]
                line.show_item(item, when)

    def showEvent(self, event: QShowEvent) -> None:
        """Keep the words true while they can be seen."""
        super().showEvent(event)
        self.refresh()
        self._minute.start()

    def hideEvent(self, event: QHideEvent) -> None:
        """Rest while nobody looks."""
        super().hideEvent(event)
        self._minute.stop()

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_TOPICS):
            self._desk.turns.begin(_TURN, self._refreshing())

    def _refreshing(self) -> Iterator[None]:
        self.refresh()
        yield


def short_words(item: DueItem) -> str:
    """Say what is due with the vessel's or the bottling's name alone; the list says the rest."""
    if item.bottling is not None:
        found = _bottle_words().get(item.reminder.kind, "")
        return found.format(name=item.bottling.name) or item.title
    if item.vessel is None or item.reminder.kind is ReminderKind.OWN:
        return item.title
    words = {
        ReminderKind.TASTE: QCoreApplication.translate("DueStrip", "taste {jar}"),
        ReminderKind.PH_CHECK: QCoreApplication.translate("DueStrip", "pH of {jar}"),
        ReminderKind.FEED: QCoreApplication.translate("DueStrip", "feed {jar}"),
        ReminderKind.TOP_UP: QCoreApplication.translate("DueStrip", "top up {jar}"),
        ReminderKind.FILM_LOOK: QCoreApplication.translate("DueStrip", "film on {jar}"),
        ReminderKind.MOLD_LOOK: QCoreApplication.translate("DueStrip", "look for mold on {jar}"),
    }[item.reminder.kind]
    return words.format(jar=item.vessel.name)


def _bottle_words() -> dict[ReminderKind, str]:
    return {
        ReminderKind.CHILL: QCoreApplication.translate("DueStrip", "chill {name}"),
        ReminderKind.PRESSURE_CHECK: QCoreApplication.translate("DueStrip", "press {name}"),
        ReminderKind.OPEN_TEST: QCoreApplication.translate("DueStrip", "open one of {name}"),
        ReminderKind.BEST_BEFORE: QCoreApplication.translate("DueStrip", "drink up {name}"),
    }


class _StripLine(QPushButton):
    """One reminder in one line that gives way when room is short."""

    def __init__(self, number: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._whole = ""
        self.setObjectName(f"due_line_{number}")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        set_role(self, "quiet")

    def show_item(self, item: DueItem, when: str) -> None:
        """Show what is due and when."""
        self._whole = self.tr("{when}: {what}").format(when=when, what=short_words(item))
        self.setToolTip(plain_tip(item.body))
        self.setAccessibleName(
            self.tr("{title}, {when}. Opens the due list.").format(title=item.title, when=when)
        )
        set_role(self, "" if item.is_due else "quiet")
        self._fit()
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        """Ask for the whole line, within reason."""
        wide = QFontMetrics(self.font()).horizontalAdvance(self._whole) + 5 * SPACE
        return QSize(min(wide, _WIDEST_PX), max(TOUCH, super().sizeHint().height()))

    def minimumSizeHint(self) -> QSize:
        """Make do with the beginning."""
        return QSize(_LEAST_PX, self.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Cut the words to the room there is."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        room = max(self.width(), _LEAST_PX) - 4 * SPACE
        metrics = QFontMetrics(self.font())
        cut = metrics.elidedText(self._whole, Qt.TextElideMode.ElideRight, room)
        self.setText(cut.replace("&", "&&"))  # a name's own ampersand is no shortcut
