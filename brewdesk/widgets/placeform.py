"""The two fields of a place: its name and its usual temperature."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.formmark import FormMark
from brewdesk.services.records import ImpossibleInput, Kind, Place, PlaceDraft, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE

NAME_MAX = 60


class PlaceDialog(QDialog):
    """Add a place, or change one. ``saved`` carries its id."""

    saved = Signal(int)

    def __init__(
        self, desk: Desk, place: Place | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._place = place
        self._mark = FormMark(desk.door)
        self.setObjectName("place_dialog")
        self.setModal(True)
        title = self.tr("Add a place") if place is None else self.tr("Edit place")
        self.setWindowTitle(title)
        self.name_line = QLineEdit()
        self.name_line.setObjectName("place_name")
        self.name_line.setMaxLength(NAME_MAX)
        self.temperature_edit = QuantityEdit(desk.quantities, Kind.TEMPERATURE, lines=1)
        self.temperature_edit.line.setObjectName("place_temperature")
        self.name = FieldRow(self.tr("&Name"), self.name_line, lines=1)
        self.temperature = FieldRow(self.tr("&Usual temperature"), self.temperature_edit)
        self.trouble = plain_label("", "error", wraps=True)
        self.trouble.hide()
        buttons, self.save = go_and_leave(
            self, self.tr("Save place"), self.tr("Cancel"), go_name="place_save"
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(title, "title"))
        column.addWidget(self.name)
        column.addWidget(self.temperature)
        column.addWidget(
            plain_label(
                self.tr(
                    "Batches planned for this place take its usual temperature. What is read or "
                    "logged here, and what you read on a batch, counts more."
                ),
                "muted",
                wraps=True,
            )
        )
        column.addWidget(self.trouble)
        column.addStretch(1)
        column.addWidget(buttons)
        if place is not None:
            self.name_line.setText(place.name)
            self.temperature_edit.set_value(place.temperature_c)
        self.name_line.textEdited.connect(lambda: self.name.set_problem(""))
        self.save.clicked.connect(self._on_save)
        self.setMinimumWidth(52 * SPACE)

    def _on_save(self) -> None:
        self.trouble.hide()
        if not self.name_line.text().strip():
            self.name.set_problem(self.tr("Please give it a name."))
            self.name_line.setFocus()
            return
        temperature_c = self.temperature_edit.value()
        if not self.temperature_edit.point_out() or temperature_c is None:
            self.temperature_edit.line.setFocus()
            return
        try:
            kept = self._keep(PlaceDraft(name=self.name_line.text(), temperature_c=temperature_c))
        except ImpossibleInput as problem:
            field = self.temperature if problem.field == "temperature_c" else self.name
            field.set_problem(impossible_words(problem, self._desk.quantities.show))
            field.focus_widget.setFocus()
            return
        except StoreTrouble as trouble:
            self.trouble.setText(trouble_words(trouble))
            self.trouble.show()
            return
        self.saved.emit(kept.id)
        self.accept()

    def _keep(self, draft: PlaceDraft) -> Place:
        vessels = self._desk.vessels
        if self._place is None:
            return vessels.add_place(draft)
        changed: dict[str, object] = {"name": draft.name}
        if self.temperature_edit.is_touched():  # what is shown is rounded
            changed["temperature_c"] = draft.temperature_c
        with self._mark.keeping():
            return vessels.edit_place(self._place.id, **changed)
