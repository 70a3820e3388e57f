"""The levels of a trial's factor: a name and a level each, as many as wanted up to six."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.records import CultureState, Kind, TeaKind, TrialFactor
from brewdesk.services.trialplan import ArmWish
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.wheelpass import pass_wheel_on

MOST = 6
_KINDS = {TrialFactor.TEA_STRENGTH: Kind.TEA, TrialFactor.SUGAR: Kind.SUGAR}
_FIRST = {
    TrialFactor.TEA_STRENGTH: (4.0, 8.0),
    TrialFactor.SUGAR: (50.0, 70.0),
}
_TEAS = (TeaKind.BLACK, TeaKind.GREEN)
_SHARES = ("10", "20")


class ArmEntry(QWidget):
    """One level. Its name follows the level until the maker types one."""

    changed = Signal()

    def __init__(self, desk: Desk, number: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._number = number
        self._editor: QComboBox | QuantityEdit | QLineEdit | None = None
        self.label = QLabel(self.tr("Level {number}").format(number=number + 1), self)
        self.label.setMinimumWidth(64)
        self.name = QLineEdit(self)
        self.name.setObjectName(f"arm_name_{number}")
        self.name.setMaxLength(80)
        self.name.setPlaceholderText(self.tr("its name"))
        self.name.setAccessibleName(self.tr("Name of level {number}").format(number=number + 1))
        self.name.textEdited.connect(self._on_named)
        self.name.textChanged.connect(self.changed)
        self._is_named = False
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(SPACE)
        self._row.addWidget(self.label)
        self._row.addWidget(self.name, 3)

    @property
    def editor(self) -> QComboBox | QuantityEdit | QLineEdit | None:
        """What the level is chosen or typed in; None for a factor without one."""
        return self._editor

    def set_factor(self, factor: TrialFactor) -> None:
        """Offer the levels of this factor."""
        if self._editor is not None:
            self._row.removeWidget(self._editor)
            self._editor.hide()
            self._editor.deleteLater()
        self._is_named = False
        self.name.clear()
        self._factor = factor
        self._editor = self._make_editor(factor)
        if self._editor is not None:
            told = self.tr("Level {number}").format(number=self._number + 1)
            inner = self._editor.line if isinstance(self._editor, QuantityEdit) else self._editor
            inner.setObjectName(f"arm_level_{self._number}")
            inner.setAccessibleName(told)
            self._row.insertWidget(1, self._editor, 2)
            QWidget.setTabOrder(inner, self.name)
        self._suggest_name()

    def wish(self) -> ArmWish:
        """Return the level as it stands."""
        return ArmWish(name=self.name.text(), level=self._level())

    def _make_editor(self, factor: TrialFactor) -> QComboBox | QuantityEdit | QLineEdit | None:
        if factor in _KINDS:
            edit = QuantityEdit(self._desk.quantities, _KINDS[factor], self, lines=0)
            if self._number < 2:
                edit.set_value(_FIRST[factor][self._number])
            edit.value_changed.connect(lambda _value: self._suggest_name())
            return edit
        if factor is TrialFactor.STARTER_SHARE:
            line = QLineEdit(self)
            line.setPlaceholderText(self.tr("percent"))
            if self._number < 2:
                line.setText(_SHARES[self._number])
            line.textChanged.connect(lambda _text: self._suggest_name())
            return line
        choices = self._choices(factor)
        if not choices:
            return None
        combo = QComboBox(self)
        for text, level in choices:
            combo.addItem(text, level)
        combo.setCurrentIndex(min(self._number, len(choices) - 1))
        if factor is TrialFactor.TEA and self._number < 2:
            combo.setCurrentIndex(combo.findData(_TEAS[self._number].value))
        combo.currentIndexChanged.connect(lambda _index: self._suggest_name())
        pass_wheel_on(combo)
        return combo

    def _choices(self, factor: TrialFactor) -> list[tuple[str, str]]:
        if factor is TrialFactor.TEA:
            return [(name_of(kind), kind.value) for kind in TeaKind]
        if factor is TrialFactor.PLACE:
            return [(place.name, str(place.id)) for place in self._desk.vessels.places()]
        if factor is TrialFactor.CULTURE:
            return [
                (culture.name, str(culture.id))
                for culture in self._desk.cultures.all(include_gone=False)
                if culture.state is not CultureState.FORMING
            ]
        return []

    def _level(self) -> str:
        if isinstance(self._editor, QComboBox):
            return str(self._editor.currentData() or "")
        if isinstance(self._editor, QuantityEdit):
            value = self._editor.value()
            return "" if value is None else repr(value)
        if isinstance(self._editor, QLineEdit):
            share = share_of(self._editor.text())
            return "" if share is None else repr(share)
        return ""

    def _suggest_name(self) -> None:
        if not self._is_named:
            self.name.setText(self._level_text())
        self.changed.emit()

    def _level_text(self) -> str:
        if isinstance(self._editor, QComboBox):
            return self._editor.currentText()
        if isinstance(self._editor, QuantityEdit):
            value = self._editor.value()
            kind = _KINDS[self._factor]
            return "" if value is None else self._desk.quantities.show(value, kind)
        if isinstance(self._editor, QLineEdit) and share_of(self._editor.text()) is not None:
            typed = self._editor.text().strip().rstrip("% ")
            return self.tr("{percent} % starter").format(percent=typed)
        return ""

    def _on_named(self, text: str) -> None:
        self._is_named = bool(text)


class ArmEntries(QWidget):
    """All levels, two to begin with."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._factor = TrialFactor.TEA
        self.entries: list[ArmEntry] = []
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(SPACE // 2)
        self.more = QPushButton(self.tr("One more level"), self)
        self.more.setObjectName("arm_more")
        self.less = QPushButton(self.tr("One less"), self)
        self.less.setObjectName("arm_less")
        line = QHBoxLayout()
        for button, call in ((self.more, self._add), (self.less, self._drop)):
            button.setAutoDefault(False)
            set_role(button, "quiet")
            button.clicked.connect(call)
            line.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        line.addStretch(1)
        self.hint = plain_label(
            self.tr("The first level is what the others are compared with."), "label"
        )
        self._column.addLayout(line)
        self._column.addWidget(self.hint)
        self._add()
        self._add()

    def set_factor(self, factor: TrialFactor) -> None:
        """Offer the levels of this factor."""
        self._factor = factor
        for entry in self.entries:
            entry.set_factor(factor)
        self.changed.emit()

    def wishes(self) -> tuple[ArmWish, ...]:
        """Return the levels in their order."""
        return tuple(entry.wish() for entry in self.entries)

    def _add(self) -> None:
        entry = ArmEntry(self._desk, len(self.entries), self)
        entry.set_factor(self._factor)
        entry.changed.connect(self.changed)
        self.entries.append(entry)
        self._column.insertWidget(len(self.entries) - 1, entry)
        self._show()

    def _drop(self) -> None:
        entry = self.entries.pop()
        self._column.removeWidget(entry)
        entry.hide()
        entry.deleteLater()
        self._show()

    def _show(self) -> None:
        self.more.setEnabled(len(self.entries) < MOST)
        self.less.setEnabled(len(self.entries) > 2)
        self.changed.emit()


def share_of(text: str) -> float | None:
    """Read percent as a share; None for what is no number."""
    try:
        return float(text.replace(",", ".").replace("%", "").strip()) / 100.0
    except ValueError:
        return None
