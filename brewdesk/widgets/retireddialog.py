"""The vessels that were taken off the shelf, and the way back."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, Kind, StoreTrouble, Vessel
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import announce, card, make_strong, plain_label
from brewdesk.widgets.theme import SPACE


class RetiredDialog(QDialog):
    """Lists retired vessels; ``restored`` carries the id of one put back on the shelf."""

    restored = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName("retired_dialog")
        self.setWindowTitle(self.tr("Retired vessels"))
        self.setModal(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Off the shelf"), "title"))
        self.empty = plain_label(
            self.tr("No vessel is retired. One that you retire waits here, with its history."),
            "muted",
            wraps=True,
        )
        column.addWidget(self.empty)
        self._area = QScrollArea()
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setAccessibleName(self.tr("Vessels off the shelf"))
        column.addWidget(self._area, 1)
        self.problem = plain_label("", "error", wraps=True)
        self.problem.setObjectName("retired_problem")
        column.addWidget(self.problem)
        buttons = QDialogButtonBox(self)
        close = QPushButton(self.tr("Close"))
        buttons.addButton(close, QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)
        self.refresh()
        self.resize(64 * SPACE, 48 * SPACE)

    def refresh(self) -> None:
        """Read the retired vessels anew, last one first."""
        gone = [v for v in self._desk.vessels.all(include_retired=True) if v.retired_at is not None]
        gone.sort(key=lambda vessel: str(vessel.retired_at), reverse=True)
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, SPACE, 0)
        column.setSpacing(SPACE)
        for vessel in gone:
            column.addWidget(self._row(vessel))
        column.addStretch(1)
        self._area.setWidget(holder)
        self._area.setVisible(bool(gone))
        self.empty.setVisible(not gone)

    def _row(self, vessel: Vessel) -> QFrame:
        frame, column = card()
        name = plain_label(vessel.name)
        make_strong(name)
        words = self.tr("{volume}, {material}").format(
            volume=self._desk.quantities.show(vessel.working_volume_l, Kind.VOLUME),
            material=name_of(vessel.material),
        )
        if vessel.retired_at is not None:
            since = date_words(vessel.retired_at, self._desk.clock.zone())
            words = self.tr("{vessel}, off the shelf since {date}").format(vessel=words, date=since)
        texts = QVBoxLayout()
        texts.setSpacing(0)
        texts.addWidget(name)
        texts.addWidget(plain_label(words, "muted", wraps=True))
        back = QPushButton(self.tr("Put it back"))
        back.setObjectName(f"restore_{vessel.id}")
        back.setAccessibleName(self.tr("Put {name} back on the shelf").format(name=vessel.name))
        back.setAutoDefault(False)
        back.clicked.connect(lambda: self._on_back(vessel.id))
        line = QHBoxLayout()
        line.setSpacing(2 * SPACE)
        line.addLayout(texts, 1)
        line.addWidget(back, 0, Qt.AlignmentFlag.AlignVCenter)
        column.addLayout(line)
        return frame

    def _on_back(self, vessel_id: int) -> None:
        self.problem.clear()
        try:
            self._desk.vessels.restore(vessel_id)
        except ImpossibleInput as fault:
            self._say(impossible_words(fault, self._desk.quantities.show))
            return
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
            return
        self.refresh()
        self.restored.emit(vessel_id)

    def _say(self, problem: str) -> None:
        self.problem.setText(problem)
        announce(self, problem)
