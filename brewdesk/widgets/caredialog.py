"""What all small forms for cultures share: fields, one act, and messages beside the fields."""

from __future__ import annotations

from collections.abc import Collection

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFrame,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, StoreTrouble, Verdict
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, MessageLine, choose, plain_label
from brewdesk.widgets.plandefaults import free_vessels
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard

TEXT_MAX = 2000


class CareDialog(QDialog):
    """A form with one act. Refused, it stays open with all that was typed.

    ``done_with`` carries what the act returned, once the dialog has closed.
    """

    done_with = Signal(object)

    def __init__(
        self,
        desk: Desk,
        title: str,
        go_text: str,
        *,
        name: str,
        parent: QWidget | None = None,
        role: str = "primary",
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName(name)
        self.setWindowTitle(title)
        self.setMinimumWidth(460)
        self.setModal(True)
        self.rows: dict[str, FieldRow] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(title, "heading", self, wraps=True))
        self._content = QWidget()
        self.body = QVBoxLayout(self._content)
        self.body.setContentsMargins(0, 0, 0, 0)
        self.body.setSpacing(SPACE)
        self._area = QScrollArea(self)
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._area.setAccessibleName(title)
        self._area.setWidget(self._content)
        column.addWidget(self._area, 1)
        self.said = MessageLine(self, lines=1)
        self.said.setObjectName(f"{name}_said")
        column.addWidget(self.said)
        buttons, self.go = go_and_leave(
            self, go_text, self.tr("Cancel"), go_name=f"{name}_go", role=role
        )
        self.go.clicked.connect(self._on_go)
        column.addWidget(buttons)

    # --- its size --------------------------------------------------------------------

    def showEvent(self, event: QShowEvent) -> None:
        """Open as large as the form is."""
        super().showEvent(event)
        self.fit()

    def fit(self) -> None:
        """Grow until the whole form can be seen, or the screen is full; then it scrolls."""
        layout = self.layout()
        if layout is None:
            return
        self.body.activate()
        layout.activate()
        wide = max(self.width(), self.minimumWidth(), self._content.minimumSizeHint().width())
        margins = layout.contentsMargins()
        inner = wide - margins.left() - margins.right()
        needed = self.body.totalHeightForWidth(inner)
        around = layout.totalSizeHint().height() - self._area.sizeHint().height()
        height = max(self.height(), needed + around)
        room = self.screen().availableGeometry().height() - 6 * SPACE
        self.resize(wide, min(height, room))

    # --- building --------------------------------------------------------------------

    def add_words(self, text: str, role: str = "muted") -> QLabel:
        """Put sentences into the form."""
        label = plain_label(text, role, self, wraps=True)
        self.body.addWidget(label)
        return label

    def add_verdict(self, verdict: Verdict) -> VerdictCard:
        """Put a judgement into the form."""
        made = VerdictCard(verdict, self, show=self._desk.quantities.show)
        self.body.addWidget(made)
        return made

    def add_row(self, field: str, label: str, editor: QWidget, *, lines: int = 1) -> FieldRow:
        """Put a labelled field into the form; problems with ``field`` are told below it."""
        row = FieldRow(label, editor, self, lines=lines)
        row.focus_widget.setObjectName(f"{self.objectName()}_{field}")
        self.rows[field] = row
        self.body.addWidget(row)
        return row

    def add_line(self, field: str, label: str, text: str = "") -> QLineEdit:
        """Put a line to type into into the form."""
        line = QLineEdit(text)
        line.setMaxLength(TEXT_MAX)
        self.add_row(field, label, line)
        return line

    def add_vessels(
        self,
        field: str,
        label: str,
        chosen: int | None,
        *,
        may_be_none: bool,
        without: Collection[int] = (),
    ) -> QComboBox:
        """Put a choice of the vessels without a live batch into the form."""
        combo = QComboBox()
        if may_be_none:
            combo.addItem(self.tr("In no vessel"), None)
        for vessel in free_vessels(self._desk):
            if vessel.id not in without:
                combo.addItem(vessel.name, vessel.id)
        choose(combo, chosen)
        self.add_row(field, label, combo)
        return combo

    def refuse(self, field: str, words: str) -> None:
        """Say beside a field what stands in the way from the start; then nothing can be done."""
        self.rows[field].set_problem(words)
        self.go.setEnabled(False)

    # --- doing -----------------------------------------------------------------------

    def act(self) -> object:
        """Do what the form is for; every form has its own."""
        raise LookupError("a form without an act")

    def _on_go(self) -> None:
        self.said.say("")
        for row in self.rows.values():
            row.set_problem("")
        for row in self.rows.values():
            if isinstance(row.editor, QuantityEdit) and not row.editor.point_out():
                row.focus_widget.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        try:
            result = self.act()
        except ImpossibleInput as problem:
            self._tell(problem.field, impossible_words(problem, self._desk.quantities.show))
            return
        except StoreTrouble as trouble:
            self.said.say(trouble_words(trouble), "error")
            return
        self.accept()
        self.done_with.emit(result)

    def _tell(self, field: str, words: str) -> None:
        row = self.rows.get(field)
        if row is None:
            self.said.say(words, "error")
            return
        row.set_problem(words)
        row.focus_widget.setFocus(Qt.FocusReason.OtherFocusReason)
