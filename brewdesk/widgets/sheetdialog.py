"""The measures of a label sheet, its printer's correction, and a drawing of what they make."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.labelgeometry import LabelSheet, problems_of
from brewdesk.services.records import ImpossibleInput, Kind, NotAQuantity, StoreTrouble
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.labels import sheet_field_words, sheet_problem_words
from brewdesk.services.wording.problems import quantity_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.sheetgrid import SheetGrid
from brewdesk.widgets.theme import SPACE

_MEASURES = (
    "page_width_mm", "page_height_mm", "margin_left_mm", "margin_top_mm", "label_width_mm",
    "label_height_mm", "gap_x_mm", "gap_y_mm", "corner_mm",
)  # fmt: skip
_COUNTS = ("columns", "rows")
_CORRECTIONS = ("shift_x_mm", "shift_y_mm", "ruler_x_mm", "ruler_y_mm")
_ORDER = (
    "page_width_mm", "page_height_mm", "columns", "rows", "label_width_mm", "label_height_mm",
    "margin_left_mm", "margin_top_mm", "gap_x_mm", "gap_y_mm", "corner_mm",
)  # fmt: skip
_ONLY_SHEETS = ("page_height_mm", "margin_top_mm", "rows")
_MINUS = ("-", "−")


class SheetDialog(QDialog):
    """Opened with ``open()``. ``saved`` carries the key of the sheet that was kept."""

    saved = Signal(str)

    def __init__(
        self, desk: Desk, sheet: LabelSheet, title: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._sheet = sheet
        self.setModal(True)
        self.setWindowTitle(title)
        self.name = QLineEdit(sheet.name, self)
        self.name.setObjectName("sheet_name")
        self.is_roll = QCheckBox(self.tr("Labels on a roll: each row is a page"), self)
        self.is_roll.setObjectName("sheet_is_roll")
        self.is_roll.setChecked(sheet.is_roll)
        self.rows: dict[str, FieldRow] = {}
        self.lines: dict[str, QLineEdit] = {}
        self.counts: dict[str, QLineEdit] = {}
        self._make_fields()
        self.grid = SheetGrid(self, is_picture=True)
        self.said = plain_label("", "error", self, wraps=True)
        self.buttons, _save = go_and_leave(
            self, self.tr("Save"), self.tr("Cancel"), go_name="sheet_save"
        )
        self._lay_out()
        self._order_tabs()
        self.buttons.accepted.connect(self.save)
        self.is_roll.toggled.connect(self._on_roll)
        self._on_roll(sheet.is_roll)

    def _make_fields(self) -> None:
        sheet = self._sheet
        self.rows["name"] = FieldRow(sheet_field_words("name"), self.name, lines=1)
        self.name.textChanged.connect(self._on_edited)
        for field in (*_MEASURES, *_CORRECTIONS):
            line = QLineEdit(_plain(getattr(sheet, field)), self)
            line.setObjectName(f"sheet_{field}")
            line.textChanged.connect(self._on_edited)
            self.lines[field] = line
            self.rows[field] = FieldRow(sheet_field_words(field), line, lines=2)
        for field in _COUNTS:
            line = QLineEdit(str(getattr(sheet, field)), self)
            line.setObjectName(f"sheet_{field}")
            line.textChanged.connect(self._on_edited)
            self.counts[field] = line
            self.rows[field] = FieldRow(sheet_field_words(field), line, lines=2)

    def _lay_out(self) -> None:
        body = QWidget()
        inner = QVBoxLayout(body)
        inner.setContentsMargins(0, 0, SPACE, 0)
        inner.setSpacing(SPACE)
        inner.addWidget(self.rows["name"])
        inner.addWidget(self.is_roll)
        inner.addLayout(self._pairs(_ORDER))
        inner.addWidget(plain_label(self.tr("If your printer is a little off"), "heading"))
        inner.addWidget(
            plain_label(
                self.tr(
                    "Print the test page and measure its rulers: each should be 100 mm long. Then "
                    "see how far its frames stand from the labels."
                ),
                "muted",
                wraps=True,
            )
        )
        inner.addLayout(self._pairs(_CORRECTIONS))
        inner.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidget(body)
        side = QVBoxLayout()
        side.addWidget(self.grid)
        side.addStretch(1)
        halves = QHBoxLayout()
        halves.setSpacing(2 * SPACE)
        halves.addWidget(area, 3)
        halves.addLayout(side, 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addLayout(halves, 1)
        column.addWidget(self.said)
        column.addWidget(self.buttons)
        self.resize(860, 680)

    def _pairs(self, fields: tuple[str, ...]) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE // 2)
        for number, field in enumerate(fields):
            grid.addWidget(self.rows[field], number // 2, number % 2)
            grid.setColumnStretch(number % 2, 1)
        return grid

    def _order_tabs(self) -> None:
        stops = [self.name, self.is_roll]
        stops += [self.lines.get(field) or self.counts[field] for field in _ORDER]
        stops += [self.lines[field] for field in _CORRECTIONS]
        for first, second in pairwise(stops):
            self.setTabOrder(first, second)
        self.setTabOrder(stops[-1], self.buttons)
        self.name.setFocus()

    # --- reading ---------------------------------------------------------------------

    def read(self) -> LabelSheet | None:
        """Return the sheet as it stands in the form, saying beside each field what is wrong."""
        values: dict[str, float] = {}
        counts: dict[str, int] = {}
        unread: dict[str, str] = {}
        for field, line in self.lines.items():
            if self.is_roll.isChecked() and field in _ONLY_SHEETS:
                continue
            try:
                values[field] = self._length_mm(line.text())
            except NotAQuantity as problem:
                unread[field] = quantity_words(problem)
        for field, line in self.counts.items():
            if self.is_roll.isChecked() and field in _ONLY_SHEETS:
                continue
            try:
                counts[field] = int(line.text())
            except ValueError:
                unread[field] = self.tr("Please type a whole number.")
        sheet = replace(
            self._sheet,
            name=self.name.text(),
            is_roll=self.is_roll.isChecked(),
            **values,  # type: ignore[arg-type]  # lengths only, and every length field is a float
            **counts,  # type: ignore[arg-type]  # the two counts
        )
        found = {problem.field: sheet_problem_words(problem) for problem in problems_of(sheet)}
        told = {field: words for field, words in found.items() if field not in unread} | unread
        for field, row in self.rows.items():
            row.set_problem(told.get(field, ""))
        return sheet if not told else None

    def save(self) -> None:
        """Keep the sheet, if nothing is wrong with it."""
        sheet = self.read()
        if sheet is None:
            wrong = next(row for row in self.rows.values() if row.message.is_error)
            wrong.focus_widget.setFocus()
            return
        try:
            kept = self._desk.label_sheets.save(sheet)
        except ImpossibleInput as problem:
            self.said.setText(sheet_problem_words(problem))
            return
        except StoreTrouble as trouble:
            self.said.setText(trouble_words(trouble))
            return
        self.saved.emit(kept.key)
        self.accept()

    def _length_mm(self, text: str) -> float:
        """Read a length; a bare number means mm, and a correction may be below nothing."""
        bare = text.strip()
        if bare.startswith(_MINUS):
            return -self._length_mm(bare[1:])
        return 10.0 * self._desk.quantities.read_in(bare, Kind.LENGTH, "mm")

    # --- what happens ----------------------------------------------------------------

    def _on_roll(self, is_roll: bool) -> None:
        for field in _ONLY_SHEETS:
            self.rows[field].setVisible(not is_roll)
        for field in ("page_width_mm", "label_height_mm"):
            self.rows[field].label.setText(sheet_field_words(field, is_roll=is_roll))
        self._on_edited()

    def _on_edited(self, _what: object = None) -> None:
        sheet = self.read()
        if sheet is not None:
            self.grid.set_sheet(sheet)


def _plain(value: float) -> str:
    """Write a length with the digits it has, at most two."""
    decimals = next(count for count in (0, 1, 2) if count == 2 or round(value, count) == value)
    return number_text(value, decimals)
