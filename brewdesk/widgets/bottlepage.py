"""The page of the second stage: filling bottles, and the bottles that stand."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.widgets.bottlefill import RECKON_DELAY_MS, BottleFill
from brewdesk.widgets.bottlestand import BottleStand
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.theme import SPACE

_TOPICS = (Topic.BOTTLINGS | Topic.BATCHES | Topic.READINGS | Topic.PLACES | Topic.CULTURES) | (
    Topic.SETTINGS | Topic.STORES
)
_TAB_INDENT = 10
REFRESH_MS = 300_000  # the pressure rises slowly: every five minutes while it can be seen


class BottlePage(QWidget):
    """Two tabs: bottles that stand, and bottles to be filled. Drafts stay when one leaves."""

    label_wanted = Signal(int)
    open_batch = Signal(int)

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, delay_ms: int = RECKON_DELAY_MS
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self.fill = BottleFill(desk, self, delay_ms=delay_ms)
        self.stand = BottleStand(desk, self)
        self.tabs = QTabWidget(self)
        self.tabs.setObjectName("bottle_tabs")
        self.tabs.setAccessibleName(self.tr("Bottles that stand, and filling bottles"))
        self.tabs.setDocumentMode(True)
        # so that the first tab's words stand below the title
        self.tabs.setStyleSheet(f"QTabWidget::tab-bar {{ left: {_TAB_INDENT}px; }}")
        self.tabs.addTab(self.stand, self.tr("Bottles that stand"))
        self.tabs.addTab(self.fill, self.tr("Fill bottles"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 2 * SPACE, 0, 0)
        column.setSpacing(SPACE)
        head = QVBoxLayout()
        head.setContentsMargins(3 * SPACE, 0, 2 * SPACE, 0)
        head.addWidget(plain_label(self.tr("Bottles"), "title", self))
        column.addLayout(head)
        column.addWidget(self.tabs, 1)
        self._again = QTimer(self)
        self._again.setObjectName("bottles_again")
        self._again.setInterval(REFRESH_MS)
        self._again.setTimerType(Qt.TimerType.VeryCoarseTimer)
        self._connect()
        self.stand.refresh()
        if self.stand.is_empty():
            self.tabs.setCurrentWidget(self.fill)

    def _connect(self) -> None:
        self.fill.filled.connect(self._on_filled)
        self.stand.fill_wanted.connect(lambda: self.tabs.setCurrentWidget(self.fill))
        self.stand.open_batch.connect(self.open_batch)
        self.stand.label_wanted.connect(self.label_wanted)
        self._again.timeout.connect(self.stand.refresh)
        self._desk.changes.changed.connect(self._on_changed)
        self._desk.forecasts.ready.connect(self._on_forecast)
        self._desk.fizz_forecasts.ready.connect(self._on_worked_out)

    def begin(self, batch_id: int) -> None:
        """Begin to bottle a batch; a draft from the same batch stays as it is."""
        if self.fill.form.batch_id() != batch_id:
            self.fill.begin(batch_id)
        self.tabs.setCurrentWidget(self.fill)
        self.fill.form.name.setFocus()

    def go_to(self, bottling_id: int) -> None:
        """Show one bottling that stands."""
        self.tabs.setCurrentWidget(self.stand)
        self.stand.refresh()
        self.stand.go_to(bottling_id)

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while the page was hidden."""
        super().showEvent(event)
        self._again.start()
        self._catch_up()

    def hideEvent(self, event: QHideEvent) -> None:
        """Rest while nobody looks."""
        super().hideEvent(event)
        self._again.stop()

    def _on_filled(self, bottling_id: int) -> None:
        self.go_to(bottling_id)

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        if self.isVisible():
            self._catch_up()

    def _on_forecast(self, batch_id: int) -> None:
        if self.isVisible() and self.fill.form.batch_id() == batch_id:
            self.fill.catch_up()

    def _on_worked_out(self) -> None:
        if self.isVisible():
            self._catch_up()

    def _catch_up(self) -> None:
        self.stand.refresh()
        self.fill.catch_up()
