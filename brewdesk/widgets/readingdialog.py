"""Correct one reading: its value, how it was taken, and when."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QLineEdit, QVBoxLayout, QWidget

from brewdesk.models.readings import value_words
from brewdesk.services.desk import Desk
from brewdesk.services.formmark import FormMark
from brewdesk.services.records import (
    ImpossibleInput,
    Look,
    Method,
    NotAQuantity,
    Quantity,
    Reading,
    ReadingDraft,
    StoreTrouble,
    TasteMark,
)
from brewdesk.services.wording.problems import impossible_words, quantity_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.whenedit import WhenEdit

_WIDTH_PX = 440


class ReadingDialog(QDialog):
    """Change one reading. Saved changes can be undone like everything else."""

    def __init__(self, desk: Desk, reading: Reading, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("reading_dialog")
        self._desk = desk
        self._reading = reading
        self._mark = FormMark(desk.door)
        name = name_of(reading.quantity)
        self.setWindowTitle(self.tr("Correct a reading: {what}").format(what=name))
        self.setMinimumWidth(_WIDTH_PX)
        self._build(name)
        self._connect()

    def save(self) -> None:
        """Keep the correction and close; or say what is wrong with it and stay."""
        self.value_row.set_problem("")
        self.when_row.set_problem("")
        try:
            changed = self._changed_fields()
            if changed:
                with self._mark.keeping():
                    self._desk.readings.edit(self._reading.id, **changed)
        except NotAQuantity as fault:
            self.value_row.set_problem(quantity_words(fault))
        except ImpossibleInput as fault:
            row = self.when_row if fault.field == "at" else self.value_row
            row.set_problem(impossible_words(fault))
        except StoreTrouble as trouble:
            self.value_row.set_problem(trouble_words(trouble))
        else:
            self.accept()

    def _build(self, name: str) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        layout.setSpacing(SPACE)
        layout.addWidget(plain_label(self.tr("Correct a reading"), "heading"))
        self.line: QLineEdit | None = None
        self.mark: ChoiceBar | None = None  # for what is told by a word
        self.value_row = self._value_row(name)
        layout.addWidget(self.value_row)
        methods = self._desk.readings.methods(self._reading.quantity)
        self.method: ChoiceBar | None = None
        if len(methods) > 1:
            self.method = ChoiceBar(
                [(method, name_of(method)) for method in methods], self.tr("Taken with")
            )
            self.method.setObjectName("correct_method")
            self.method.set_value(self._reading.method)
            layout.addWidget(FieldRow(self.tr("Taken with"), self.method, lines=0))
            layout.addSpacing(SPACE)
        self.when = WhenEdit(self._desk.clock, follows=False)
        self.when.line.setObjectName("correct_when")
        self.when.set_instant(self._reading.at)
        self._when_shown = self.when.instant()
        self.when_row = FieldRow(self.tr("When"), self.when, lines=1)
        layout.addWidget(self.when_row)
        buttons, self.save_button = go_and_leave(
            self, self.tr("Save"), self.tr("Cancel"), go_name="correct_save"
        )
        layout.addWidget(buttons)

    def _value_row(self, name: str) -> FieldRow:
        reading = self._reading
        if reading.quantity is Quantity.TASTE:
            self.mark = ChoiceBar(
                [(mark, name_of(mark).replace(" too ", " too\n")) for mark in TasteMark], name
            )
            self.mark.set_value(TasteMark(reading.text))
            return FieldRow(name, self.mark, lines=1)
        if reading.quantity is Quantity.LOOK:
            self.mark = ChoiceBar([(look, name_of(look)) for look in Look], name)
            self.mark.set_value(Look(reading.text))
            return FieldRow(name, self.mark, lines=1)
        self.line = QLineEdit()
        self.line.setObjectName("correct_value")
        self._text_before = self._entry_text()
        self.line.setText(self._text_before)
        self.line.selectAll()
        self.line.setFocus(Qt.FocusReason.OtherFocusReason)
        return FieldRow(name, self.line, lines=1)

    def _entry_text(self) -> str:
        """Return what to start from: the value without its uncertainty, in the maker's unit."""
        plain = replace(self._reading, sd=None)
        return value_words(plain, self._desk.quantities)

    def _connect(self) -> None:
        self.save_button.clicked.connect(self.save)
        self.when.submitted.connect(self.save)

    def _changed_fields(self) -> dict[str, Any]:
        """Return only what was really changed, so that rounding for display changes nothing."""
        reading = self._reading
        fields: dict[str, Any] = {}
        if self.mark is not None:
            mark = self.mark.value()
            if isinstance(mark, TasteMark | Look) and mark.value != reading.text:
                fields["text"] = mark.value
        elif self.line is not None and self.line.text() != self._text_before:
            draft = self._read(self.line.text())
            fields |= {"value": draft.value, "text": draft.text, "entered": draft.entered}
        method = self.method.value() if self.method is not None else reading.method
        if method is not reading.method:
            fields["method"] = method
        at = self.when.instant()
        if at != self._when_shown:
            fields["at"] = at
        return fields

    def _read(self, text: str) -> ReadingDraft:
        chosen = self.method.value() if self.method is not None else None
        method = chosen if isinstance(chosen, Method) else self._reading.method
        return self._desk.readings.entry_from_text(
            self._reading.batch_id, self._reading.quantity, method, text, self._reading.at
        )
