"""One step of the run sheet: its mark, its words, and the controls while it is its turn."""

from __future__ import annotations

from datetime import tzinfo
from enum import Enum, auto

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QApplication, QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Batch, Kind, Step, StepKind, StepState, Verdict
from brewdesk.services.wording.alarms import time_up_words
from brewdesk.services.wording.moments import time_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.bigtype import BigType
from brewdesk.widgets.fields import FieldRow, announce, plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stepgate import StepGate
from brewdesk.widgets.stepwords import countdown_words, length_words, step_words
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens

_MARK_PX = 32
_COUNTDOWN_SCALE = 3.2
LIVE_STEPS = (StepKind.STARTER_IN, StepKind.CULTURE_IN)


class Turn(Enum):
    """Where a step stands in the order of work."""

    PAST = auto()
    PRESENT = auto()
    LATER = auto()


class StepRow(QFrame):
    """Shows one step. What the maker wants is emitted with the step's id."""

    begin_wanted = Signal(int)
    pause_wanted = Signal(int)
    resume_wanted = Signal(int)
    extend_wanted = Signal(int)
    finish_wanted = Signal(int, object, str)  # id, temperature in degC or None, reason
    temperature_changed = Signal(int, object)

    def __init__(
        self,
        step: Step,
        batch: Batch,
        quantities: Quantities,
        zone: tzinfo,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.step = step
        self.turn = Turn.LATER
        self._batch = batch
        self._quantities = quantities
        self._zone = zone
        self._is_ringing = False
        self.setObjectName(f"step_{step.kind.value}")
        self._build()
        self._connect()

    # showing

    def show_step(self, step: Step, turn: Turn, gate: Verdict | None) -> None:
        """Show ``step`` in its ``turn``; ``gate`` keeps a live step shut."""
        self.step = step
        self.turn = turn
        self._mark.show_mark(step.position, turn)
        present = turn is Turn.PRESENT
        self.title.setText(name_of(step.kind))
        set_role(self.title, "heading" if present else "" if turn is Turn.PAST else "muted")
        self.sentence.setText(step_words(step, self._batch, self._quantities))
        self.sentence.setVisible(turn is not Turn.PAST)
        set_role(self.sentence, "" if present else "muted")
        self.side.setText(self._side_words())
        self._controls.setVisible(present)
        self._show_controls(gate)
        self._dress()
        self.setAccessibleName(
            self.tr("Step {number}: {title}, {state}").format(
                number=step.position, title=self.title.text(), state=name_of(step.state)
            )
        )

    def show_time(self, remaining_s: float | None) -> None:
        """Show the time left; past its end the row asks for what comes next."""
        has_timer = remaining_s is not None and self.step.state in (
            StepState.RUNNING,
            StepState.PAUSED,
        )
        self.countdown.setVisible(has_timer)
        rings = False
        if has_timer and remaining_s is not None:
            self.countdown.setText(countdown_words(remaining_s))
            rings = remaining_s <= 0 and self.step.state is StepState.RUNNING
        if rings == self._is_ringing:
            return
        self._is_ringing = rings
        self.alarm.setText(time_up_words(self.step.kind) if rings else "")
        self.alarm.setVisible(rings)
        set_role(self.done_button, "primary" if self._done_leads() else "")
        self._dress()
        if rings:
            announce(self, self.alarm.text())

    def is_ringing(self) -> bool:
        """Whether the step's time is over and it is not done."""
        return self._is_ringing

    def show_problem(self, text: str) -> None:
        """Say what went wrong with the last act on this step."""
        self.problem.setText(text)
        self.problem.setVisible(bool(text))
        announce(self, text)

    def temperature_c(self) -> float | None:
        """Return the temperature entered, in degC."""
        return self.temperature.value()

    def first_control(self) -> QWidget | None:
        """Return what should have the keyboard when this step's turn comes."""
        if self.temperature_row.isVisibleTo(self):
            return self.temperature.line
        # While a timer runs a second press on the same key must not end the step.
        last = (
            (self.done_button, self.pause_button)
            if self._done_leads()
            else (self.pause_button, self.done_button)
        )
        leading = (self.begin_button, self.resume_button, *last)
        return next((b for b in leading if b.isVisibleTo(self) and b.isEnabled()), None)

    # building

    def _build(self) -> None:
        self._mark = _StepMark(self)
        self.title = plain_label("", "muted")
        self.side = plain_label("", "label")
        self.sentence = plain_label("", "muted", wraps=True)
        head = QHBoxLayout()
        head.setSpacing(SPACE)
        head.addWidget(self.title, 1)
        head.addWidget(self.side)
        words = QVBoxLayout()
        words.setSpacing(SPACE // 2)
        words.addLayout(head)
        words.addWidget(self.sentence)
        words.addWidget(self._build_controls())
        self._line = row = QHBoxLayout(self)
        row.setSpacing(SPACE + 4)
        row.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(words, 1)

    def _build_controls(self) -> QWidget:
        self._controls = QWidget()
        column = QVBoxLayout(self._controls)
        column.setContentsMargins(0, SPACE // 2, 0, SPACE // 2)
        column.setSpacing(SPACE)
        self.countdown = plain_label("", "countdown")
        self.countdown.setObjectName("step_countdown")
        self.countdown.setAccessibleDescription(self.tr("Time left"))
        BigType(self.countdown, _COUNTDOWN_SCALE, "font-weight: 600;")
        self.alarm = plain_label("", "heading", wraps=True)
        self.alarm.setObjectName("step_alarm")
        self.alarm.hide()
        self.temperature = QuantityEdit(self._quantities, Kind.TEMPERATURE, required=False, lines=1)
        self.temperature.line.setObjectName("step_temperature")
        self.temperature.line.setMaximumWidth(22 * SPACE)
        self.temperature_row = FieldRow(self.tr("Temperature of the sweet tea"), self.temperature)
        self.gate = StepGate()
        self.problem = plain_label("", "error", wraps=True)
        self.problem.hide()
        for widget in (self.alarm, self.countdown, self.temperature_row, self.gate, self.problem):
            column.addWidget(widget)
        column.addLayout(self._build_buttons())
        self._controls.hide()
        return self._controls

    def _build_buttons(self) -> QHBoxLayout:
        self.begin_button = self._button("", "step_begin", "primary")
        self.pause_button = self._button(self.tr("Pause"), "step_pause")
        self.resume_button = self._button(self.tr("Go on"), "step_resume", "primary")
        self.extend_button = self._button(self.tr("+1 min"), "step_extend")
        self.extend_button.setAccessibleName(self.tr("One minute more"))
        self.done_button = self._button(self.tr("Done"), "step_done")
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        for button in (
            self.begin_button,
            self.resume_button,
            self.done_button,
            self.pause_button,
            self.extend_button,
        ):
            line.addWidget(button)
        line.addStretch(1)
        return line

    def _button(self, text: str, name: str, role: str = "") -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(name)
        if role:
            set_role(button, role)
        return button

    def _connect(self) -> None:
        self.begin_button.clicked.connect(lambda: self.begin_wanted.emit(self.step.id))
        self.pause_button.clicked.connect(lambda: self.pause_wanted.emit(self.step.id))
        self.resume_button.clicked.connect(lambda: self.resume_wanted.emit(self.step.id))
        self.extend_button.clicked.connect(lambda: self.extend_wanted.emit(self.step.id))
        self.done_button.clicked.connect(self._on_done)
        self.temperature.submitted.connect(self._on_temperature_submitted)
        self.temperature.value_changed.connect(self._on_temperature)
        self.gate.override_wanted.connect(self._on_override)

    # keeping up

    def show_gate(self, gate: Verdict | None) -> None:
        """Shut or open the step, without touching what is being typed."""
        is_shut = gate is not None
        self.gate.setVisible(is_shut)
        if gate is not None:
            self.gate.show_verdict(gate)
        self.done_button.setEnabled(not is_shut)

    def _show_controls(self, gate: Verdict | None) -> None:
        state = self.step.state
        waits = state is StepState.WAITING
        has_timer = self.step.planned_s is not None
        self.begin_button.setVisible(waits and has_timer)
        if has_timer and self.step.planned_s is not None:
            self.begin_button.setText(
                self.tr("Start {time}").format(time=length_words(self.step.planned_s))
            )
        self.pause_button.setVisible(state is StepState.RUNNING and has_timer)
        self.resume_button.setVisible(state is StepState.PAUSED)
        self.extend_button.setVisible(has_timer and not waits)
        takes_temperature = self.step.kind in (StepKind.COOL, *LIVE_STEPS)
        self.temperature_row.setVisible(takes_temperature)
        self.temperature.refresh_unit()  # a bare number is read in the unit of now
        self.show_gate(gate)
        set_role(self.done_button, "primary" if self._done_leads() else "")

    def _done_leads(self) -> bool:
        """Whether 'done' is what is most likely wanted next."""
        if self._is_ringing:
            return True
        return self.step.planned_s is None

    def _side_words(self) -> str:
        step = self.step
        if step.state is StepState.DONE and step.finished_at is not None:
            time = time_words(step.finished_at, self._zone)
            if step.temperature_c is None:
                return self.tr("done {time}").format(time=time)
            shown = self._quantities.show(step.temperature_c, Kind.TEMPERATURE)
            return self.tr("{temperature}, done {time}").format(temperature=shown, time=time)
        if step.state is StepState.PAUSED:
            return self.tr("paused")
        if self.turn is Turn.LATER and step.planned_s is not None:
            return length_words(step.planned_s)
        return ""

    def _dress(self) -> None:
        above = SPACE + 4 if self.turn is Turn.PRESENT else SPACE // 2
        self._line.setContentsMargins(SPACE + 4, above, 2 * SPACE, above)
        if self.turn is not Turn.PRESENT:
            set_role(self, "")
        else:
            set_role(self, "warn" if self._is_ringing else "card")

    # what happens

    def _on_done(self) -> None:
        if not self.temperature.is_valid():
            self.temperature.point_out()
            self.temperature.line.setFocus()
            return
        self.finish_wanted.emit(self.step.id, self.temperature.value(), "")

    def _on_override(self, reason: str) -> None:
        self.finish_wanted.emit(self.step.id, self.temperature.value(), reason)

    def _on_temperature(self, temperature_c: float | None) -> None:
        self.temperature_changed.emit(self.step.id, temperature_c)

    def _on_temperature_submitted(self) -> None:
        if self.temperature.value() is not None and self.done_button.isEnabled():
            self.done_button.setFocus(Qt.FocusReason.TabFocusReason)


class _StepMark(QWidget):
    """A numbered disc; a tick when the step is done."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._number = 0
        self._turn = Turn.LATER
        line_px = QFontMetrics(QApplication.font()).lineSpacing()
        self._side = max(_MARK_PX, round(1.4 * line_px))
        self.setFixedSize(QSize(self._side, self._side))

    def show_mark(self, number: int, turn: Turn) -> None:
        """Show a step's number and whether it is done."""
        self._number, self._turn = number, turn
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the disc."""
        del event
        colours = tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = QRectF(2, 2, self._side - 4, self._side - 4)
        if self._turn is Turn.LATER:
            painter.setPen(QPen(QColor(colours.edge), 1.5))
            painter.setBrush(Qt.BrushStyle.NoBrush)
        elif self._turn is Turn.PRESENT:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours.accent))
        else:
            painter.setPen(QPen(QColor(colours.good), 1.5))
            painter.setBrush(QColor(colours.good_soft))
        painter.drawEllipse(room)
        if self._turn is Turn.PAST:
            pen = QPen(QColor(colours.good), 2.5)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            painter.setPen(pen)
            middle = room.center()
            painter.drawPolyline(
                QPolygonF([middle + QPointF(x, y) for x, y in ((-6, 0.5), (-2, 4.5), (6, -4.5))])
            )
        else:
            is_present = self._turn is Turn.PRESENT
            painter.setPen(QColor(colours.on_accent if is_present else colours.muted))
            painter.drawText(room, Qt.AlignmentFlag.AlignCenter, str(self._number))
        painter.end()
