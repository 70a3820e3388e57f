"""The places in which vessels stand, with how warm each usually is."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QGridLayout,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, Kind, Place, PlaceDraft, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE

NAME_MAX = 60


@dataclass(frozen=True)
class PlaceRow:
    """The two fields of one place; ``place`` is None for one that is still to be added."""

    place: Place | None
    name: FieldRow
    temperature: FieldRow
    name_line: QLineEdit
    temperature_edit: QuantityEdit

    def is_blank(self) -> bool:
        """Whether nothing was entered in a row for a new place."""
        return (
            self.place is None
            and not self.name_line.text().strip()
            and not self.temperature_edit.text().strip()
        )

    def is_changed(self) -> bool:
        """Whether there is something to keep."""
        if self.place is None:
            return not self.is_blank()
        is_renamed = self.name_line.text().strip() != self.place.name
        return is_renamed or self.temperature_edit.is_touched()


class PlacesDialog(QDialog):
    """Name the places, say how warm they are, add one. Each change can be undone."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.rows: list[PlaceRow] = []
        self.setObjectName("places_dialog")
        self.setWindowTitle(self.tr("Places"))
        self.setModal(True)
        self._build()
        for place in desk.vessels.places():
            self._add_row(place)
        if not self.rows:
            self._add_row(None)
        self.resize(64 * SPACE, 56 * SPACE)

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Where your vessels stand"), "title"))
        column.addWidget(
            plain_label(
                self.tr(
                    "The usual temperature of a place goes into the forecast of every batch "
                    "planned for it from now on. Temperatures you read on a batch count more."
                ),
                "muted",
                wraps=True,
            )
        )
        holder = QWidget()
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(2 * SPACE)
        self._grid.setVerticalSpacing(0)
        self._grid.setColumnStretch(0, 3)
        self._grid.setColumnStretch(1, 2)
        self.add_button = QPushButton(self.tr("Add a place"))
        self.add_button.setObjectName("place_add")
        self.add_button.setAutoDefault(False)
        self.add_button.clicked.connect(self._on_add)
        inner = QVBoxLayout(holder)
        inner.setContentsMargins(0, 0, SPACE, 0)
        inner.addLayout(self._grid)
        inner.addWidget(self.add_button, 0, Qt.AlignmentFlag.AlignLeft)
        inner.addStretch(1)
        self._area = QScrollArea()
        self._area.setWidgetResizable(True)
        self._area.setWidget(holder)
        column.addWidget(self._area, 1)
        self.trouble = plain_label("", "error", wraps=True)
        self.trouble.hide()
        column.addWidget(self.trouble)
        buttons, self.save = go_and_leave(
            self, self.tr("Save places"), self.tr("Cancel"), go_name="places_save"
        )
        self.save.clicked.connect(self._on_save)
        column.addWidget(buttons)

    def _add_row(self, place: Place | None) -> PlaceRow:
        number = len(self.rows)
        name = QLineEdit()
        name.setObjectName(f"place_name_{number}")
        name.setMaxLength(NAME_MAX)
        temperature = QuantityEdit(self._desk.quantities, Kind.TEMPERATURE, lines=1)
        temperature.line.setObjectName(f"place_temperature_{number}")
        row = PlaceRow(
            place=place,
            name=FieldRow(self.tr("Name"), name, lines=1),
            temperature=FieldRow(self.tr("Usual temperature"), temperature),
            name_line=name,
            temperature_edit=temperature,
        )
        if place is not None:
            name.setText(place.name)
            temperature.set_value(place.temperature_c)
        name.textEdited.connect(lambda: row.name.set_problem(""))
        self._grid.addWidget(row.name, number, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(row.temperature, number, 1, Qt.AlignmentFlag.AlignTop)
        if self.rows:
            QWidget.setTabOrder(self.rows[-1].temperature_edit, name)
        self.rows.append(row)
        QWidget.setTabOrder(name, temperature)
        QWidget.setTabOrder(temperature, self.add_button)
        return row

    def _on_add(self) -> None:
        row = next((row for row in self.rows if row.is_blank()), None) or self._add_row(None)
        row.name_line.setFocus(Qt.FocusReason.OtherFocusReason)
        self._area.ensureWidgetVisible(self.add_button)

    def _on_save(self) -> None:
        self.trouble.hide()
        for number, row in enumerate(self.rows):
            if not row.is_changed():
                continue
            kept = self._keep(row)
            if kept is None:
                return
            # What is kept is not kept again, should a later row need mending first.
            self.rows[number] = PlaceRow(
                kept, row.name, row.temperature, row.name_line, row.temperature_edit
            )
            row.temperature_edit.set_value(kept.temperature_c)
        self.accept()

    def _keep(self, row: PlaceRow) -> Place | None:
        if not row.name_line.text().strip():
            row.name.set_problem(self.tr("Please give it a name."))
            row.name_line.setFocus()
            return None
        temperature_c = row.temperature_edit.value()
        if not row.temperature_edit.point_out() or temperature_c is None:
            row.temperature_edit.line.setFocus()
            return None
        draft = PlaceDraft(name=row.name_line.text(), temperature_c=temperature_c)
        vessels = self._desk.vessels
        try:
            if row.place is None:
                return vessels.add_place(draft)
            return vessels.edit_place(
                row.place.id, name=draft.name, temperature_c=draft.temperature_c
            )
        except ImpossibleInput as problem:
            field = row.temperature if problem.field == "temperature_c" else row.name
            field.set_problem(impossible_words(problem, self._desk.quantities.show))
            field.focus_widget.setFocus()
        except StoreTrouble as trouble:
            self.trouble.setText(trouble_words(trouble))
            self.trouble.show()
        return None
