"""The run sheet of brewing day: one step after the other, with their timers."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from brewdesk.services.brewing import StepShut
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Batch,
    BatchStage,
    ImpossibleInput,
    Step,
    StepState,
    StoreTrouble,
    Verdict,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.fields import bring_into_view, plain_label
from brewdesk.widgets.steprow import LIVE_STEPS, StepRow, Turn
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard

TICK_MS = 1_000
_EXTRA_S = 60.0


class RunSheetPanel(QWidget):
    """Follow one batch's run sheet.

    ``souring_started`` carries the batch's id when the last step turned it to souring.
    The seconds are counted only while a timer runs and the panel can be seen.
    """

    souring_started = Signal(int)

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, tick_ms: int = TICK_MS
    ) -> None:
        super().__init__(parent)
        self.setObjectName("run_sheet_panel")
        self._desk = desk
        self._batch: Batch | None = None
        self._rows: dict[int, StepRow] = {}
        self._is_stale = False
        self._timer = QTimer(self)
        self._timer.setObjectName("run_sheet_tick")
        self._timer.setInterval(tick_ms)
        self.empty = plain_label(
            self.tr("The run sheet is laid out when brewing begins."), "muted", wraps=True
        )
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, SPACE, 0, SPACE)
        self._column.setSpacing(SPACE // 2)
        self._column.addWidget(self.empty)
        self._standing: VerdictCard | None = None  # sweet tea that stands too long without starter
        self._column.addStretch(1)
        self._timer.timeout.connect(self.tick)
        desk.changes.changed.connect(self._on_changed)

    # which batch

    def set_batch(self, batch_id: int | None) -> None:
        """Show the run sheet of this batch."""
        if self._batch is None or self._batch.id != batch_id:
            self._drop_rows()
        self._batch = None if batch_id is None else self._desk.batches.get(batch_id)
        self.refresh()

    def rows(self) -> tuple[StepRow, ...]:
        """Return the steps shown, in order."""
        return tuple(sorted(self._rows.values(), key=lambda row: row.step.position))

    def present_row(self) -> StepRow | None:
        """Return the first step that is not done."""
        return next((row for row in self.rows() if row.turn is Turn.PRESENT), None)

    # keeping up

    def refresh(self) -> None:
        """Read the steps anew."""
        self._is_stale = False
        if self._batch is None:
            self._drop_rows()
            self.empty.show()
            return
        steps = self._desk.brewing.steps(self._batch.id)
        ids = {step.id for step in steps}
        if set(self._rows) != ids:
            self._drop_rows()
            for step in steps:
                self._add_row(step, self._batch)
        self.empty.setVisible(not steps)
        first_open = next((s.id for s in steps if s.state is not StepState.DONE), None)
        for step in steps:
            self._show(step, first_open)
        self._show_standing(self._batch.id)
        self.tick()
        self._run()

    def standing(self) -> Verdict | None:
        """Return the warning about sweet tea left standing, if it is shown."""
        return None if self._standing is None else self._standing.verdict

    def _show_standing(self, batch_id: int) -> None:
        verdict = self._desk.brewing.standing_verdict(batch_id)
        if self._standing is not None:
            self._standing.hide()
            self._standing.deleteLater()
            self._standing = None
        if verdict is not None:
            self._standing = VerdictCard(verdict, self, show=self._desk.quantities.show)
            self._column.insertWidget(0, self._standing)

    def tick(self) -> None:
        """Bring the countdowns up to date."""
        for row in self._rows.values():
            if row.turn is Turn.PRESENT:
                row.show_time(self._desk.brewing.remaining_s(row.step))

    def show_present_step(self) -> None:
        """Scroll so that the step whose turn it is can be seen whole."""
        row = self.present_row()
        if row is not None:
            bring_into_view(row)

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up, and count again."""
        super().showEvent(event)
        if self._is_stale:
            self.refresh()
        self.tick()
        self._run()

    def hideEvent(self, event: QHideEvent) -> None:
        """Count no seconds that nobody sees."""
        super().hideEvent(event)
        self._timer.stop()

    def _run(self) -> None:
        counts = any(
            row.step.state is StepState.RUNNING and row.step.ends_at is not None
            for row in self._rows.values()
        )
        if counts and self.isVisible():
            if not self._timer.isActive():
                self._timer.start()
        else:
            self._timer.stop()

    def _add_row(self, step: Step, batch: Batch) -> None:
        row = StepRow(step, batch, self._desk.quantities, self._desk.clock.zone(), self)
        row.begin_wanted.connect(self._on_begin)
        row.pause_wanted.connect(self._on_pause)
        row.resume_wanted.connect(self._on_resume)
        row.extend_wanted.connect(self._on_extend)
        row.finish_wanted.connect(self._on_finish)
        row.temperature_changed.connect(self._on_temperature)
        self._rows[step.id] = row
        self._column.insertWidget(self._column.count() - 1, row)

    def _drop_rows(self) -> None:
        for row in self._rows.values():
            row.hide()
            row.deleteLater()
        self._rows.clear()
        self._timer.stop()

    def _show(self, step: Step, first_open: int | None) -> None:
        is_present = step.id == first_open or step.state in (StepState.RUNNING, StepState.PAUSED)
        turn = Turn.LATER
        if step.state is StepState.DONE:
            turn = Turn.PAST
        elif is_present:
            turn = Turn.PRESENT
        row = self._rows[step.id]
        row.show_step(step, turn, self._gate(step, row.temperature_c()) if is_present else None)

    def _gate(self, step: Step, temperature_c: float | None) -> Verdict | None:
        if step.kind not in LIVE_STEPS or step.state is StepState.DONE:
            return None
        batch = self._batch
        if batch is None or batch.stage not in (BatchStage.BREWING, BatchStage.SOURING):
            return None
        return self._desk.brewing.gate(step.id, temperature_c)

    # what happens

    def _on_begin(self, step_id: int) -> None:
        self._do(step_id, lambda: self._desk.brewing.begin(step_id))

    def _on_pause(self, step_id: int) -> None:
        self._do(step_id, lambda: self._desk.brewing.pause(step_id))

    def _on_resume(self, step_id: int) -> None:
        self._do(step_id, lambda: self._desk.brewing.resume(step_id))

    def _on_extend(self, step_id: int) -> None:
        self._do(step_id, lambda: self._desk.brewing.extend(step_id, _EXTRA_S))

    def _on_finish(self, step_id: int, temperature_c: float | None, reason: str) -> None:
        batch = self._batch
        if batch is None:
            return
        if not self._do(step_id, lambda: self._desk.brewing.finish(step_id, temperature_c, reason)):
            return
        before, self._batch = batch.stage, self._desk.batches.get(batch.id)
        if before is not BatchStage.SOURING and self._batch.stage is BatchStage.SOURING:
            self.souring_started.emit(batch.id)

    def _do(self, step_id: int, act: Callable[[], object]) -> bool:
        row = self._rows[step_id]
        row.show_problem("")
        try:
            act()
        except StepShut as shut:
            row.show_gate(shut.verdict)
            return False
        except ImpossibleInput as fault:
            row.show_problem(impossible_words(fault, self._desk.quantities.show))
            return False
        except StoreTrouble as trouble:
            row.show_problem(trouble_words(trouble))
            return False
        self.take_keyboard()
        return True

    def take_keyboard(self) -> None:
        """Give the keyboard to what comes next."""
        row = self.present_row()
        control = row.first_control() if row is not None else None
        if control is not None and self.isVisible():
            control.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_temperature(self, step_id: int, temperature_c: float | None) -> None:
        row = self._rows[step_id]
        row.show_gate(self._gate(row.step, temperature_c))

    def _on_changed(self, change: Change) -> None:
        if self._batch is None or not change.concerns_batch(self._batch.id):
            return
        if not change.concerns(Topic.STEPS | Topic.BATCHES | Topic.SETTINGS):
            return
        if not self.isVisible():
            self._is_stale = True
            return
        try:
            self._batch = self._desk.batches.get(self._batch.id)
        except StoreTrouble:  # its plan was given up; the sheet goes with it
            self._batch = None
        self.refresh()
