"""Add a culture or change one."""

from __future__ import annotations

from datetime import UTC, date, datetime, time

from PySide6.QtCore import QDate, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QDialog,
    QGridLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.formmark import FormMark
from brewdesk.services.records import (
    Culture,
    CultureDraft,
    CultureOrigin,
    CultureState,
    ImpossibleInput,
    Kind,
    StoreTrouble,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, choose, plain_label
from brewdesk.widgets.millimetres import MillimetreReader
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE

MM_PER_CM = 10.0
# What this form asks for; nothing else of a culture is touched by it.
_ASKED = ("name", "origin", "state", "born_at", "vessel_id", "pellicle_mm", "note")


class CultureDialog(QDialog):
    """One form for a culture's facts. A new one may name a parent."""

    saved = Signal(int)

    def __init__(
        self, desk: Desk, culture: Culture | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._culture = culture
        self._mark = FormMark(desk.door)
        self.setObjectName("culture_dialog")
        self.setWindowTitle(self.tr("A culture"))
        self.setMinimumWidth(520)
        self._make_controls()
        self._lay_out()
        if culture is not None:
            self._fill(culture)

    def _make_controls(self) -> None:
        self.name = QLineEdit()
        self.name.setObjectName("culture_name")
        self.origin, self.state = QComboBox(), QComboBox()
        for origin in CultureOrigin:
            self.origin.addItem(name_of(origin), origin)
        now = self._culture.state if self._culture is not None else None
        for state in CultureState:
            # One leaves, grows and has grown by acts of their own, which ask what must be known.
            is_offered = state in (CultureState.RESTING, CultureState.AT_WORK)
            if state is now or (is_offered and now is not CultureState.FORMING):
                self.state.addItem(name_of(state), state)
        choose(self.state, CultureState.RESTING)
        self.parent_choice, self.vessel = QComboBox(), QComboBox()
        self.parent_choice.addItem(self.tr("None known"), None)
        for other in self._desk.cultures.all():
            self.parent_choice.addItem(other.name, other.id)
        self.vessel.addItem(self.tr("In no vessel"), None)
        for vessel in self._desk.vessels.all():
            self.vessel.addItem(vessel.name, vessel.id)
        self.born = QDateEdit()
        self.born.setCalendarPopup(True)
        self.born.setDisplayFormat(self.tr("d MMM yyyy"))  # 5/11 is read as two different days
        today = self._desk.clock.now().astimezone(self._desk.clock.zone()).date()
        self.born.setDate(QDate(today.year, today.month, today.day))
        millimetres = MillimetreReader(self._desk.quantities)
        self.pellicle = QuantityEdit(millimetres, Kind.LENGTH, required=False, lines=1)
        self.note = QLineEdit()

    def _lay_out(self) -> None:
        self.rows = {
            "name": FieldRow(self.tr("Name"), self.name, lines=1),
            "origin": FieldRow(self.tr("Came as"), self.origin, lines=1),
            "parent": FieldRow(self.tr("Parent"), self.parent_choice, lines=1),
            "born_at": FieldRow(self.tr("Born"), self.born, lines=1),
            "state": FieldRow(self.tr("State"), self.state, lines=1),
            "vessel_id": FieldRow(self.tr("Where it is"), self.vessel, lines=1),
            "pellicle_mm": FieldRow(self.tr("Pellicle thickness"), self.pellicle),
            "note": FieldRow(self.tr("Note"), self.note, lines=1),
        }
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        title = self.tr("Add a culture") if self._culture is None else self.tr("Change a culture")
        column.addWidget(plain_label(title, "heading"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(0)
        places = (
            ("name", 0, 0, 2),
            ("origin", 1, 0, 1),
            ("parent", 1, 1, 1),
            ("born_at", 2, 0, 1),
            ("state", 2, 1, 1),
            ("vessel_id", 3, 0, 1),
            ("pellicle_mm", 3, 1, 1),
            ("note", 4, 0, 2),
        )
        for key, row, left, span in places:
            grid.addWidget(self.rows[key], row, left, 1, span)
        column.addLayout(grid)
        self.rows["parent"].setVisible(self._culture is None)
        buttons, self.save = go_and_leave(
            self, self.tr("Save the culture"), self.tr("Cancel"), go_name="save_culture"
        )
        self.save.clicked.connect(self._on_save)
        column.addWidget(buttons)

    def _fill(self, culture: Culture) -> None:
        self.name.setText(culture.name)
        choose(self.origin, culture.origin)
        choose(self.state, culture.state)
        choose(self.vessel, culture.vessel_id)
        born = culture.born_at.astimezone(self._desk.clock.zone()).date()
        self.born.setDate(QDate(born.year, born.month, born.day))
        if culture.pellicle_mm is not None:
            self.pellicle.set_value(culture.pellicle_mm / MM_PER_CM)
        self.note.setText(culture.note)

    def _born_at(self) -> datetime:
        """The day chosen, at noon of the maker's zone, but never in the future.

        The day it had already keeps its hour.
        """
        day = self.born.date()
        if self._culture is not None:
            old = self._culture.born_at.astimezone(self._desk.clock.zone()).date()
            if (old.year, old.month, old.day) == (day.year(), day.month(), day.day()):
                return self._culture.born_at
        noon = datetime.combine(
            date(day.year(), day.month(), day.day()),
            time(12),
            tzinfo=self._desk.clock.zone(),
        ).astimezone(UTC)
        now = self._desk.clock.now()
        same_day = (
            now.astimezone(self._desk.clock.zone()).date()
            == noon.astimezone(self._desk.clock.zone()).date()
        )
        return min(noon, now) if same_day else noon

    def _on_save(self) -> None:
        for row in self.rows.values():
            row.set_problem("")
        if not self.pellicle.is_valid():
            self.pellicle.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        thickness_cm = self.pellicle.value()
        draft = CultureDraft(
            name=self.name.text().strip(),
            origin=self.origin.currentData(),
            state=self.state.currentData(),
            born_at=self._born_at(),
            vessel_id=self.vessel.currentData(),
            pellicle_mm=None if thickness_cm is None else thickness_cm * MM_PER_CM,
            note=self.note.text().strip(),
        )
        try:
            saved_id = self._keep(draft)
        except ImpossibleInput as problem:
            row = self.rows.get(problem.field, self.rows["name"])
            row.set_problem(impossible_words(problem, self._desk.quantities.show))
            row.focus_widget.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        except StoreTrouble as trouble:
            self.rows["name"].set_problem(trouble_words(trouble))
            return
        self.accept()
        self.saved.emit(saved_id)

    def _keep(self, draft: CultureDraft) -> int:
        if self._culture is None:
            parent_id = self.parent_choice.currentData()
            parents = () if parent_id is None else (parent_id,)
            return self._desk.cultures.add(draft, parents).id
        fields = {
            name: getattr(draft, name)
            for name in _ASKED
            if getattr(draft, name) != getattr(self._culture, name)
        }
        if fields:
            with self._mark.keeping():
                self._desk.cultures.edit(self._culture.id, **fields)
        return self._culture.id
