"""A date and time on the maker's own clock, that can follow 'now' until it is touched."""

from __future__ import annotations

from datetime import UTC, datetime

from PySide6.QtCore import QDate, QDateTime, QEvent, QObject, Qt, QTime, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QHideEvent, QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QDateTimeEdit,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QWidget,
)

from brewdesk.services.clock import Clock
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, TOUCH


def bare(edit: QDateTimeEdit) -> None:
    """Take the arrows off, and keep the line inside from drawing a second frame."""
    # With ButtonSymbols.NoButtons a styled edit gives its line no width at all.
    edit.setStyleSheet(
        "QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { width: 0; border: none; }"
        "QAbstractSpinBox::up-arrow, QAbstractSpinBox::down-arrow { image: none; width: 0; }"
        "QLineEdit { border: none; padding: 0; min-height: 0; background: transparent; }"
    )
    line = edit.findChild(QLineEdit)
    if line is not None:  # the line ignores a padding from the sheet
        line.setTextMargins(SPACE, 0, SPACE, 0)
    edit.setFixedHeight(TOUCH)


_WIDE_DATE = "30 Sep 2028, 20:00"
FOLLOW_MS = 10_000  # a minute is shown, so a sixth of one is near enough


class WhenEdit(QWidget):
    """Enter an instant. Following the clock costs a timer only while it can be seen.

    Parameters
    ----------
    clock
        Tells the time and the zone in which it is shown.
    follows
        Whether it shows the present until it is edited, with a button to go back to it.
    """

    submitted = Signal()
    edited = Signal()

    def __init__(
        self,
        clock: Clock,
        parent: QWidget | None = None,
        *,
        follows: bool = True,
        follow_ms: int = FOLLOW_MS,
    ) -> None:
        super().__init__(parent)
        self._clock = clock
        self._follows = follows
        self._is_setting = False
        self._exact: datetime | None = None  # what the minutes shown stand for
        self.line = QDateTimeEdit(self)
        bare(self.line)
        self.line.setDisplayFormat(self.tr("d MMM yyyy, HH:mm"))
        self.line.installEventFilter(self)
        self.now_button = QPushButton(self.tr("Now"), self)
        self.now_button.setObjectName("when_now")
        self.now_button.setAccessibleName(self.tr("Set the time to now"))
        set_role(self.now_button, "quiet")
        self.now_button.setVisible(follows)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        layout.addWidget(self.line, 1)
        layout.addWidget(self.now_button)
        self._size_line()
        self.setFocusProxy(self.line)
        self._timer = QTimer(self)
        self._timer.setObjectName("when_follow")
        self._timer.setInterval(follow_ms)
        self._connect()
        if follows:
            self.follow_now()
        else:
            self.set_instant(clock.now())

    def _connect(self) -> None:
        self.line.dateTimeChanged.connect(self._on_edited)
        self.now_button.clicked.connect(self.follow_now)
        self._timer.timeout.connect(self._on_tick)

    def is_following(self) -> bool:
        """Whether the entry shows the present."""
        return self._follows

    def instant(self) -> datetime:
        """Return the instant entered, or the present while following it, in UTC.

        One that was set and not edited comes back to the second.
        """
        if self._follows:
            return self._clock.now()
        if self._exact is not None:
            return self._exact
        typed = self.line.dateTime()
        day, time = typed.date(), typed.time()
        local = datetime(
            day.year(),
            day.month(),
            day.day(),
            time.hour(),
            time.minute(),
            tzinfo=self._clock.zone(),
        )
        return local.astimezone(UTC)

    def set_instant(self, instant: datetime) -> None:
        """Show ``instant``, and stay there."""
        self._follows = False
        self._exact = instant.astimezone(UTC)
        self._put(instant)
        self._run()

    def follow_now(self) -> None:
        """Show the present, and go with it."""
        self._follows = True
        self._put(self._clock.now())
        self._run()

    def showEvent(self, event: QShowEvent) -> None:
        """Follow the clock again."""
        super().showEvent(event)
        self._on_tick()
        self._run()

    def hideEvent(self, event: QHideEvent) -> None:
        """Rest while nobody looks."""
        super().hideEvent(event)
        self._timer.stop()

    def changeEvent(self, event: QEvent) -> None:
        """Follow the type size."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._size_line()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take Enter as 'done with this field'."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
            if plain and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.submitted.emit()
                return True
        return super().eventFilter(watched, event)

    def _size_line(self) -> None:
        # The edit's own hint is wider than any date and would cost a column.
        metrics = QFontMetrics(QApplication.font())
        self.line.setMinimumWidth(metrics.horizontalAdvance(_WIDE_DATE) + 3 * SPACE)

    def _put(self, instant: datetime) -> None:
        local = instant.astimezone(self._clock.zone())
        self._is_setting = True
        self.line.setDateTime(
            QDateTime(QDate(local.year, local.month, local.day), QTime(local.hour, local.minute))
        )
        self._is_setting = False

    def _run(self) -> None:
        if self._follows and self.isVisible():
            self._timer.start()
        else:
            self._timer.stop()

    def _on_tick(self) -> None:
        if self._follows:
            self._put(self._clock.now())

    def _on_edited(self) -> None:
        if self._is_setting:
            return
        self._follows = False
        self._exact = None
        self._run()
        self.edited.emit()
