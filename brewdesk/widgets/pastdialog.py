"""Batches that have ended, with everything that is known of each."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import Batch, BatchStage
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.acidchart import AcidChart
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.journalview import JournalView
from brewdesk.widgets.photostrip import PhotoStrip
from brewdesk.widgets.readingsview import ReadingsView
from brewdesk.widgets.theme import SPACE

ENDED = tuple(stage for stage in BatchStage if not stage.is_live)


class PastDialog(QDialog):
    """A list of ended batches, the last one first, and the records of the chosen one."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName("past_dialog")
        self.setWindowTitle(self.tr("Past batches"))
        self.setModal(True)
        self.batches = desk.batches.all(stages=ENDED)
        self._vessels = {vessel.id: vessel for vessel in desk.vessels.all(include_retired=True)}
        self._build()
        desk.forecasts.ready.connect(self._on_ready)
        if self.batches:
            self.list.setCurrentRow(0)
        self.resize(116 * SPACE, 84 * SPACE)

    def _build(self) -> None:
        self.list = QListWidget()
        self.list.setObjectName("past_list")
        self.list.setAccessibleName(self.tr("Past batches, the last one first"))
        self.list.setWordWrap(True)
        self.list.setStyleSheet(f"QListView::item {{ padding: {SPACE - 2}px {SPACE}px; }}")
        for batch in self.batches:
            item = QListWidgetItem(self._line(batch))
            item.setData(Qt.ItemDataRole.UserRole, batch.id)
            self.list.addItem(item)
        self.list.currentRowChanged.connect(self._on_chosen)
        self.summary = plain_label("", "muted", wraps=True)
        self.summary.setObjectName("past_summary")
        self.chart = AcidChart(self)
        self.readings = ReadingsView(self._desk, self)
        self.journal = JournalView(self._desk, self)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setAccessibleName(self.tr("Records of this batch"))
        self.tabs.addTab(self.chart, self.tr("Curve"))
        self.tabs.addTab(self.readings, self.tr("Readings"))
        self.photos = PhotoStrip(self._desk, parent=self)
        self.tabs.addTab(self.photos, self.tr("Photos"))
        self.tabs.addTab(self.journal, self.tr("Journal"))
        right = QVBoxLayout()
        right.setSpacing(SPACE)
        right.addWidget(self.summary)
        right.addWidget(self.tabs, 1)
        columns = QHBoxLayout()
        columns.setSpacing(2 * SPACE)
        columns.addWidget(self.list, 2)
        columns.addLayout(right, 5)
        self.empty = plain_label(
            self.tr("No batch has ended yet. Once one is drawn off or discarded, it is kept here."),
            "muted",
            wraps=True,
        )
        self.empty.setVisible(not self.batches)
        self.list.setVisible(bool(self.batches))
        self.tabs.setVisible(bool(self.batches))
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Past batches"), "title"))
        column.addWidget(self.empty)
        column.addLayout(columns, 1)
        buttons = QDialogButtonBox(self)
        buttons.addButton(QPushButton(self.tr("Close")), QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)

    def chosen(self) -> Batch | None:
        """Return the batch whose records are shown."""
        row = self.list.currentRow()
        return self.batches[row] if 0 <= row < len(self.batches) else None

    def _line(self, batch: Batch) -> str:
        """Name a batch, and below it how and when it ended."""
        if batch.ended_at is None:
            return f"{batch.name}\n{name_of(batch.stage)}"
        ended = self.tr("{how} {date}").format(
            how=name_of(batch.stage), date=date_words(batch.ended_at, self._desk.clock.zone())
        )
        return f"{batch.name}\n{ended}"

    def _on_chosen(self) -> None:
        batch = self.chosen()
        if batch is None:
            return
        self.summary.setText(self._summary(batch))
        self.readings.set_batch(batch.id)
        self.photos.set_owner(PhotoOwner(batch_id=batch.id))
        self.journal.set_batch(batch.id)
        self._show_curve(batch)
        self._desk.forecasts.request(batch.id)

    def _show_curve(self, batch: Batch) -> None:
        """Draw what was measured; what was expected then must not read like advice now."""
        view = self._desk.forecasts.now(batch.id)
        if view is None:
            self.chart.set_view(None)
            return
        words = (
            self.tr("It is over; this is what was read until it ended.")
            if view.points or view.ta_points
            else self.tr("Neither pH nor acidity was read of this batch.")
        )
        self.chart.set_view(
            replace(view, forecast=None, opens_on=None, closes_on=None, text_summary=words),
            is_over=True,
        )

    def _summary(self, batch: Batch) -> str:
        vessel = self._vessels.get(batch.vessel_id)
        words = [vessel.name] if vessel is not None else []
        if batch.started_at is not None:
            since = date_words(batch.started_at, self._desk.clock.zone())
            words.append(self.tr("begun {date}").format(date=since))
        words.append(batch.end_reason)
        return " · ".join(word for word in words if word)

    def _on_ready(self, batch_id: int) -> None:
        batch = self.chosen()
        if batch is not None and batch.id == batch_id:
            self._show_curve(batch)
