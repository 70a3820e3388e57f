"""Enter one temperature of a place: the value, when, done."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, Kind, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.fields import FieldRow, announce
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.whenedit import WhenEdit


class PlaceReadingForm(QWidget):
    """One line to enter what a thermometer shows in a place."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._place_id: int | None = None
        self.temperature_edit = QuantityEdit(
            desk.quantities, Kind.TEMPERATURE, lines=1, required=False
        )
        self.temperature_edit.line.setObjectName("place_reading")
        self.when = WhenEdit(desk.clock)
        self.when.line.setObjectName("place_reading_when")
        self.temperature = FieldRow(self.tr("&Temperature now"), self.temperature_edit)
        self.at = FieldRow(self.tr("&Read at"), self.when, lines=1)
        self.enter = QPushButton(self.tr("Enter it"))
        self.enter.setObjectName("place_reading_enter")
        self.enter.setAutoDefault(False)
        label_px = self.temperature.label.sizeHint().height() + SPACE // 4
        beside = QVBoxLayout()
        beside.addSpacing(label_px)
        beside.addWidget(self.enter)
        beside.addStretch(1)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(2 * SPACE)
        line.addWidget(self.temperature, 2)
        line.addWidget(self.at, 3)
        line.addLayout(beside)
        self.enter.clicked.connect(self._on_enter)
        self.temperature_edit.submitted.connect(self._on_enter)
        self.when.submitted.connect(self._on_enter)

    def set_place(self, place_id: int) -> None:
        """Enter what follows for another place; what was typed for the last one is dropped."""
        if place_id != self._place_id:
            self._place_id = place_id
            self._clear()

    def _clear(self) -> None:
        self.temperature_edit.set_value(None)
        self.temperature.set_problem("")
        self.at.set_problem("")
        self.when.follow_now()

    def _on_enter(self) -> None:
        self.at.set_problem("")
        temperature_c = self.temperature_edit.value()
        if self._place_id is None:
            return
        if not self.temperature_edit.point_out() or temperature_c is None:
            if temperature_c is None and not self.temperature_edit.text().strip():
                self.temperature.set_problem(self.tr("Please type a temperature."))
            self.temperature_edit.line.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        at = None if self.when.is_following() else self.when.instant()
        try:
            self._desk.place_log.read_place(self._place_id, temperature_c, at)
        except ImpossibleInput as problem:
            field = self.temperature if problem.field == "temperature_c" else self.at
            field.set_problem(impossible_words(problem, self._desk.quantities.show))
            return
        except StoreTrouble as trouble:
            self.temperature.set_problem(trouble_words(trouble))
            return
        self._clear()
        self.temperature_edit.line.setFocus(Qt.FocusReason.OtherFocusReason)
        announce(self, self.tr("Entered."))
