"""The entries of one question, built from what it declares."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFrame, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.quantities import Quantities
from brewdesk.services.reckoner.numbers import NumberReader
from brewdesk.services.reckoner.question import Choice, Field, Number, Question, Value
from brewdesk.services.records import Kind
from brewdesk.widgets.fields import FieldRow, card, choose
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class QuestionForm(QWidget):
    """One entry for each field. ``changed`` fires after every change of any of them.

    ``own`` holds what the maker has settled elsewhere; entries of those names begin with it.
    """

    changed = Signal()

    def __init__(
        self,
        question: Question,
        quantities: Quantities,
        parent: QWidget | None = None,
        *,
        own: Mapping[str, Value] | None = None,
    ) -> None:
        super().__init__(parent)
        self.question = question
        self._own = dict(own or {})
        self._quantities = quantities
        self._is_filling = False
        self.rows: dict[str, FieldRow] = {}
        self._edits: dict[str, QuantityEdit] = {}
        self._combos: dict[str, QComboBox] = {}
        frame = self._entries()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(frame)
        column.addStretch(1)
        self.reset()

    def _entries(self) -> QFrame:
        frame, column = card(self)
        grid = PairGrid(self)
        made = [self._row(entry) for entry in self.question.fields]
        for first in range(0, len(made), 2):
            grid.add(*made[first : first + 2])
        column.addWidget(grid)
        self.again = QPushButton(self.tr("Begin these entries anew"), self)
        self.again.setObjectName("reckoner_reset")
        set_role(self.again, "quiet")
        self.again.setEnabled(False)
        self.again.clicked.connect(self._on_again)
        column.addWidget(self.again, 0, Qt.AlignmentFlag.AlignLeft)
        margins = column.contentsMargins()
        margins.setBottom(SPACE)
        column.setContentsMargins(margins)
        return frame

    def _row(self, entry: Field) -> FieldRow:
        row = FieldRow(entry.label, self._editor(entry), self, lines=1)
        row.focus_widget.setObjectName(f"reckoner_{entry.key}")
        row.setContentsMargins(0, 0, 0, SPACE // 2)  # between a message and the next label
        self.rows[entry.key] = row
        return row

    def _editor(self, entry: Field) -> QWidget:
        if isinstance(entry.form, Choice):
            combo = QComboBox(self)
            combo.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            combo.setMinimumContentsLength(10)
            for value, words in entry.form.options:
                combo.addItem(words, value)
            combo.currentIndexChanged.connect(self._on_change)
            self._combos[entry.key] = combo
            return combo
        is_number = isinstance(entry.form, Number)
        edit = QuantityEdit(
            NumberReader(self._quantities, entry.form)
            if isinstance(entry.form, Number)
            else self._quantities,
            Kind.ACIDITY if is_number or not isinstance(entry.form, Kind) else entry.form,
            self,
            required=not entry.optional,
            lines=1,
        )
        if entry.optional:
            edit.set_placeholder(self.tr("may stay empty"))
        edit.value_changed.connect(self._on_change)
        edit.line.textChanged.connect(self._on_change)
        self._edits[entry.key] = edit
        return edit

    def reset(self) -> None:
        """Put in what the entries begin with."""
        self._is_filling = True
        for key, first in self.question.defaults().items():
            value = self._own.get(key, first)
            if key in self._combos:
                choose(self._combos[key], value)
            else:
                self._edits[key].set_value(value if isinstance(value, float) else None)
        self._is_filling = False

    def values(self) -> dict[str, Value] | None:
        """Return what was entered, or None while an entry cannot be read."""
        if not all(edit.is_valid() for edit in self._edits.values()):
            return None
        found: dict[str, Value] = {key: edit.value() for key, edit in self._edits.items()}
        found.update({key: combo.currentData() for key, combo in self._combos.items()})
        return found

    def set_problem(self, key: str, words: str) -> bool:
        """Show a problem beside its entry; False if there is no such entry."""
        row = self.rows.get(key)
        if row is None:
            return False
        row.set_problem(words)
        return True

    def clear_problems(self) -> None:
        """Take back the problems shown by ``set_problem``."""
        for row in self.rows.values():
            row.set_problem("")

    def refresh_units(self) -> None:
        """Show untouched amounts in the unit the maker has chosen since."""
        for edit in self._edits.values():
            edit.refresh_unit()

    def go_to_first(self) -> None:
        """Put the keyboard into the first entry."""
        for row in self.rows.values():
            row.focus_widget.setFocus()
            return

    def _on_change(self, _value: object = None) -> None:
        if not self._is_filling:
            self.again.setEnabled(True)
            self.changed.emit()

    def _on_again(self) -> None:
        self.reset()
        self.go_to_first()
        self.again.setEnabled(False)
        self.changed.emit()
