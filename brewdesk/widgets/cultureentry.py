"""Choose the culture of a batch, or make a new one on the spot with name and origin."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Batch,
    CultureDraft,
    CultureOrigin,
    CultureState,
    ImpossibleInput,
    StoreTrouble,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.fields import FieldRow, choose
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

# Splitting and merging need parents and are done where the cultures are.
_ORIGINS = (CultureOrigin.GIFT, CultureOrigin.BOUGHT, CultureOrigin.RAW_BOTTLE)
NAME_MAX = 60


class CultureEntry(QWidget):
    """A list of living cultures, "starter liquid only", and a small form for a new one."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.is_chosen_by_hand = False
        self.own_plan: Batch | None = None  # the plan being changed: it binds nothing else
        self.combo = QComboBox(self)
        self.combo.setObjectName("plan_culture")
        self.combo.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.combo.setMinimumContentsLength(12)
        self.new = QPushButton(self.tr("New culture…"), self)
        self.new.setObjectName("plan_new_culture")
        self.new.setCheckable(True)
        self.row = FieldRow(self.tr("&Culture"), self.combo, self, beside=self.new)
        self.form = self._make_form()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.row)
        self.form.setVisible(False)
        self._connect()

    def _make_form(self) -> QWidget:
        form = QWidget(self)
        self.name = QLineEdit(form)
        self.name.setObjectName("culture_name")
        self.name.setMaxLength(NAME_MAX)
        self.origin = QComboBox(form)
        self.origin.setObjectName("culture_origin")
        for origin in _ORIGINS:
            self.origin.addItem(name_of(origin), origin)
        self.keep = QPushButton(self.tr("Add culture"), form)
        self.keep.setObjectName("culture_add")
        set_role(self.keep, "primary")
        self.name_row = FieldRow(self.tr("Name of the culture"), self.name, form, lines=1)
        origin_row = FieldRow(
            self.tr("Where it came from"), self.origin, form, beside=self.keep, lines=1
        )
        grid = QGridLayout(form)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * SPACE)
        grid.addWidget(self.name_row, 0, 0)
        grid.addWidget(origin_row, 0, 1)
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(1, 3)
        return form

    def _connect(self) -> None:
        self.combo.activated.connect(self._on_activated)
        self.combo.currentIndexChanged.connect(self._on_index)
        self.new.toggled.connect(self._on_new)
        self.keep.clicked.connect(self._on_keep)
        self.name.returnPressed.connect(self._on_keep)
        self.name.textChanged.connect(self._on_name)

    def value(self) -> int | None:
        """Return the chosen culture's id; None is starter liquid alone."""
        data = self.combo.currentData()
        return None if data is None else int(data)

    def choose(self, culture_id: int | None) -> None:
        """Choose as the maker would."""
        self.is_chosen_by_hand = True
        self._select(culture_id)

    def suggest(self, culture_id: int | None) -> None:
        """Choose without taking it for the maker's own choice."""
        self._select(culture_id)
        self.is_chosen_by_hand = False

    def reload(self) -> None:
        """Read the living cultures anew; the choice stays."""
        chosen = self.value()
        self.combo.blockSignals(True)
        self.combo.clear()
        for culture in self._desk.cultures.all(include_gone=False):
            is_own = self.own_plan is not None and self.own_plan.culture_id == culture.id
            if culture.state is CultureState.FORMING and not is_own:
                continue
            state = name_of(culture.state)
            if culture.suspect_at is not None:
                state = self.tr("may carry mold")
            words = self.tr("{name} – {state}").format(name=culture.name, state=state)
            self.combo.addItem(words, culture.id)
        self.combo.addItem(self.tr("Starter liquid only"), None)
        self.combo.setCurrentIndex(self.combo.count() - 1)
        choose(self.combo, chosen)
        self.combo.blockSignals(False)
        self.hint()

    def hint(self) -> None:
        """Say beside the choice that it is bound elsewhere already; that refuses nothing."""
        own_id = None if self.own_plan is None else self.own_plan.id
        verdicts = self._desk.batches.culture_verdicts(self.value(), batch_id=own_id)
        words = [verdict_words(verdict) for verdict in verdicts]
        self.row.set_hint(" ".join(f"{one.fact} {one.what_to_do}" for one in words))

    def _select(self, culture_id: int | None) -> None:
        if culture_id is None:
            self.combo.setCurrentIndex(self.combo.count() - 1)
        else:
            choose(self.combo, culture_id)

    def _on_activated(self, _index: int) -> None:
        self.is_chosen_by_hand = True

    def _on_index(self, _index: int) -> None:
        self.row.set_problem("")
        self.hint()
        self.changed.emit()

    def _on_new(self, is_open: bool) -> None:
        self.form.setVisible(is_open)
        if is_open:
            self.name.setFocus()

    def _on_name(self, _text: str) -> None:
        self.name_row.set_problem("")

    def _on_keep(self) -> None:
        if not self.name.text().strip():
            self._refuse(self.tr("Give the culture a name."))
            return
        draft = CultureDraft(
            name=self.name.text().strip(),
            origin=CultureOrigin(self.origin.currentData()),
            state=CultureState.RESTING,
            born_at=self._desk.clock.now(),
        )
        try:
            culture = self._desk.cultures.add(draft)
        except ImpossibleInput as problem:
            self._refuse(impossible_words(problem, self._desk.quantities.show))
            return
        except StoreTrouble as trouble:
            self._refuse(trouble_words(trouble))
            return
        self.name.clear()
        self.new.setChecked(False)
        self.reload()
        self.choose(culture.id)
        self.combo.setFocus()

    def _refuse(self, words: str) -> None:
        self.name_row.set_problem(words)
        self.name.setFocus()
