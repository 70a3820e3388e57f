"""The stores: what there is, and what it all costs."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

from brewdesk.services.batchcosts import TOPICS as COST_TOPICS
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.widgets.costpane import CostPane
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stockpane import StockPane
from brewdesk.widgets.theme import SPACE

_TAB_INDENT = 10
_STOCK_TOPICS = Topic.STORES | Topic.BATCHES | Topic.BOTTLINGS | Topic.SETTINGS


class StoresPage(QWidget):
    """Two tabs. ``open_batch`` carries a batch whose cost was opened."""

    open_batch = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("stores_page")
        self._stale = {"stock", "costs"}
        self.stock = StockPane(desk, self)
        self.costs = CostPane(desk, self)
        self.tabs = QTabWidget(self)
        self.tabs.setObjectName("stores_tabs")
        self.tabs.setAccessibleName(self.tr("What there is, and what it costs"))
        self.tabs.setDocumentMode(True)
        # so that the first tab's words stand below the title
        self.tabs.setStyleSheet(f"QTabWidget::tab-bar {{ left: {_TAB_INDENT}px; }}")
        self.tabs.addTab(self.stock, self.tr("On the shelf"))
        self.tabs.addTab(self.costs, self.tr("What it costs"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 2 * SPACE, 0, 0)
        column.setSpacing(SPACE)
        head = QVBoxLayout()
        head.setContentsMargins(3 * SPACE, 0, 2 * SPACE, 0)
        head.addWidget(plain_label(self.tr("Stores"), "title", self))
        column.addLayout(head)
        column.addWidget(self.tabs, 1)
        self.costs.open_batch.connect(self.open_batch)
        self.tabs.currentChanged.connect(lambda _index: self._catch_up())
        desk.changes.changed.connect(self._on_changed)

    def show_supply(self, supply_id: int) -> None:
        """Bring one supply into view."""
        self.tabs.setCurrentWidget(self.stock)
        self._stale.discard("stock")
        self.stock.refresh()
        self.stock.choose(supply_id)

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden; dates pass without a change."""
        super().showEvent(event)
        self._stale |= {"stock", "costs"}
        self._catch_up()
        if self.focusWidget() in (None, self.stock.add_button):
            self.stock.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_STOCK_TOPICS):
            self._stale.add("stock")
        if change.concerns(COST_TOPICS):
            self._stale.add("costs")
        if self.isVisible():
            self._catch_up()

    def _catch_up(self) -> None:
        """Read again what is looked at; the other tab waits for its turn."""
        if not self.isVisible():
            return
        is_stock = self.tabs.currentWidget() is self.stock
        key = "stock" if is_stock else "costs"
        if key in self._stale:
            self._stale.discard(key)
            (self.stock if is_stock else self.costs).refresh()
