"""The records of one batch, to look at: its curve, its readings, what went into it."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QStackedLayout, QVBoxLayout, QWidget

from brewdesk.models.readings import VALUE, ReadingsModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.forecasts import CurveView
from brewdesk.services.records import Batch
from brewdesk.widgets.acidchart import AcidChart
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.plaintable import PlainTable
from brewdesk.widgets.planfacts import PlanFacts


class BatchCurve(QWidget):
    """The curve of a batch. Of one that has ended, only what was read is shown."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._batch: Batch | None = None
        self.chart = AcidChart(self, show_amount=desk.quantities.show)
        self.chart.what_if_wanted.connect(desk.forecasts.what_if)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.chart)
        desk.forecasts.ready.connect(self._on_ready)
        desk.forecasts.imagined.connect(self.chart.set_imagined)

    def set_batch(self, batch: Batch | None) -> None:
        """Show the curve of a batch, and ask for a newer one."""
        self._batch = batch
        self._show()
        if batch is not None:
            self._desk.forecasts.request(batch.id)

    def _show(self) -> None:
        view = self._desk.forecasts.now(self._batch.id) if self._batch is not None else None
        if view is None or self._batch is None:
            self.chart.set_view(None)
        elif self._batch.stage.is_live:
            self.chart.set_view(view)
        else:
            self.chart.set_view(self._as_it_was(view), is_over=True)

    def _as_it_was(self, view: CurveView) -> CurveView:
        """Leave out what was expected then: it must not read like advice now."""
        words = (
            self.tr("It is over; this is what was read until it ended.")
            if view.points or view.ta_points
            else self.tr("Neither pH nor acidity was read of this batch.")
        )
        return replace(
            view, forecast=None, opens_on=None, closes_on=None, text_summary=words, notes=()
        )

    def _on_ready(self, batch_id: int) -> None:
        if self._batch is not None and self._batch.id == batch_id and self.isVisible():
            self._show()


class BatchReadings(QWidget):
    """The readings of a batch, newest first; nothing can be changed here."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._batch_id: int | None = None
        self.model = ReadingsModel(desk.quantities, desk.clock, self)
        self.table = PlainTable(self.model, stretched=VALUE)
        self.table.setObjectName("history_readings")
        self.table.setAccessibleName(self.tr("Readings, newest first"))
        self.empty = plain_label(self.tr("Nothing was read of this batch."), "muted", wraps=True)
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self.table)
        self._stack.addWidget(self.empty)
        desk.changes.changed.connect(self._on_changed)

    def set_batch(self, batch: Batch | None) -> None:
        """Show the readings of a batch."""
        self._batch_id = None if batch is None else batch.id
        self._refresh()

    def _refresh(self) -> None:
        rows = () if self._batch_id is None else self._desk.readings.of_batch(self._batch_id)
        self.model.set_rows(rows[::-1])
        self._stack.setCurrentWidget(self.table if rows else self.empty)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.SETTINGS):
            self.model.refresh()
        if self._batch_id is None or not change.concerns(Topic.READINGS):
            return
        if self.isVisible() and change.concerns_batch(self._batch_id):
            self._refresh()


class BatchAmounts(QScrollArea):
    """What went into a batch, and the vessel it is or was in."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.facts = PlanFacts(desk)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidget(self.facts)

    def set_batch(self, batch: Batch | None) -> None:
        """Show the amounts of a batch."""
        if batch is None:
            return
        for vessel in self._desk.vessels.all(include_retired=True):
            if vessel.id == batch.vessel_id:
                self.facts.set_batch(batch, vessel)
