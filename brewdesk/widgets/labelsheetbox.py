"""Choose the sheet of labels, correct its measures, say where the first label goes."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.labelgeometry import LabelSheet
from brewdesk.services.labelsheets import new_key
from brewdesk.services.records import StoreTrouble
from brewdesk.services.wording.problems import trouble_words
from brewdesk.widgets.fields import FieldRow, choose, plain_label
from brewdesk.widgets.sheetdialog import SheetDialog
from brewdesk.widgets.sheetgrid import SheetGrid
from brewdesk.widgets.theme import SPACE


class LabelSheetBox(QWidget):
    """``changed`` fires for another sheet, start or frame; ``test_wanted`` for its test page."""

    changed = Signal()
    test_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.form: SheetDialog | None = None
        self.choice = QComboBox(self)
        self.choice.setObjectName("label_sheet")
        self.choice.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.choice.setMinimumContentsLength(18)
        self.edit = self._button("label_sheet_edit", self.tr("Change…"))
        self.add = self._button("label_sheet_add", self.tr("New sheet…"))
        self.remove = self._button("label_sheet_remove", self.tr("Remove"))
        self.grid = SheetGrid(self)
        self.frames = QCheckBox(self.tr("Draw the outline of each label"), self)
        self.frames.setObjectName("label_frames")
        self.test = self._button("label_test_page", self.tr("Print a test page…"))
        self.said = plain_label("", "error", self, wraps=True)
        self.said.hide()
        self._lay_out()
        self.refresh()
        self._connect()

    def _button(self, name: str, text: str) -> QPushButton:
        made = QPushButton(text, self)
        made.setObjectName(name)
        return made

    def _lay_out(self) -> None:
        body = QWidget()
        column = QVBoxLayout(body)
        column.setContentsMargins(0, SPACE, SPACE, SPACE)
        column.setSpacing(SPACE)
        column.addWidget(FieldRow(self.tr("Sheet or roll"), self.choice, lines=0))
        acts = QHBoxLayout()
        acts.setSpacing(SPACE)
        for button in (self.edit, self.add, self.remove):
            acts.addWidget(button)
        acts.addStretch(1)
        column.addLayout(acts)
        column.addWidget(self.said)
        column.addSpacing(SPACE)
        self.start_words = plain_label(self.tr("Click where the first label goes"), "label")
        self.start_words.setBuddy(self.grid)
        column.addWidget(self.start_words)
        column.addWidget(self.grid)
        column.addWidget(self.frames)
        column.addSpacing(SPACE)
        column.addWidget(
            plain_label(
                self.tr(
                    "Printers shift and stretch a little. The test page, on plain paper, shows "
                    "how much; Change… takes the correction. Print without “fit to page”."
                ),
                "muted",
                wraps=True,
            )
        )
        test = QHBoxLayout()
        test.addWidget(self.test)
        test.addStretch(1)
        column.addLayout(test)
        column.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidget(body)
        around = QVBoxLayout(self)
        around.setContentsMargins(0, 0, 0, 0)
        around.addWidget(area)

    def _connect(self) -> None:
        self.choice.currentIndexChanged.connect(self._on_choice)
        self.edit.clicked.connect(self.open_edit)
        self.add.clicked.connect(self.open_new)
        self.remove.clicked.connect(self._on_remove)
        self.grid.start_chosen.connect(lambda _start: self.changed.emit())
        self.frames.toggled.connect(lambda _on: self.changed.emit())
        self.test.clicked.connect(self.test_wanted)

    # --- what is chosen --------------------------------------------------------------

    def sheet(self) -> LabelSheet:
        """Return the sheet chosen."""
        return self._desk.label_sheets.get(str(self.choice.currentData()))

    def choose(self, key: str) -> None:
        """Choose a sheet by its key; one that is gone changes nothing."""
        choose(self.choice, key)

    def refresh(self) -> None:
        """List the sheets again; the choice stays if it can."""
        chosen = self.choice.currentData()
        self.choice.blockSignals(True)
        self.choice.clear()
        for sheet in self._desk.label_sheets.all():
            self.choice.addItem(sheet.name, sheet.key)
        choose(self.choice, chosen)
        self.choice.blockSignals(False)
        self._show()

    def _show(self) -> None:
        sheet = self.sheet()
        self.grid.set_sheet(sheet)
        sheets = self._desk.label_sheets
        is_starter = sheets.is_starter(sheet.key)
        self.remove.setText(self.tr("As it was") if is_starter else self.tr("Remove"))
        self.remove.setEnabled(sheets.is_changed(sheet.key))

    # --- what happens ----------------------------------------------------------------

    def open_edit(self) -> None:
        """Open the measures of the sheet chosen."""
        self._open(self.sheet(), self.tr("Measures of the sheet"))

    def open_new(self) -> None:
        """Open the form for a sheet that begins as a copy of the one chosen."""
        like = self.sheet()
        name = self.tr("Like {name}").format(name=like.name)[:60]
        self._open(replace(like, key=new_key(), name=name), self.tr("New sheet"))

    def _open(self, sheet: LabelSheet, title: str) -> None:
        form = SheetDialog(self._desk, sheet, title, self)
        form.saved.connect(self._on_saved)
        form.finished.connect(form.deleteLater)
        self.form = form
        form.open()

    def _on_saved(self, key: str) -> None:
        self.refresh()
        self.choose(key)
        self.changed.emit()

    def _on_choice(self, _index: int) -> None:
        self._show()
        self.changed.emit()

    def _on_remove(self) -> None:
        try:
            self._desk.label_sheets.remove(self.sheet().key)
        except StoreTrouble as trouble:
            self.said.setText(trouble_words(trouble))
            self.said.show()
            return
        self.said.hide()
        self.refresh()
        self.changed.emit()
