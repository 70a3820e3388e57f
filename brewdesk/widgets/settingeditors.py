"""Editors for declared settings, chosen by type; each applies its value at once."""

from __future__ import annotations

from datetime import time

from PySide6.QtCore import Qt, QTime, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QCompleter,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QTimeEdit,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.clock import zone_names
from brewdesk.services.folding import fold
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import ImpossibleInput, Kind, NotAQuantity, StoreTrouble
from brewdesk.services.settings import CALENDAR_PATH, DESK_NAME, NAME_LIMIT, ZONE, Option, Settings
from brewdesk.services.wording.problems import impossible_words, quantity_words, trouble_words
from brewdesk.widgets.calendardialog import ask_for_calendar_file
from brewdesk.widgets.fields import FieldRow
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.whenedit import bare

# What a number means decides how it is read; everything else follows from the type.
_KINDS = {
    "culture_limit_c": Kind.TEMPERATURE,
    "first_taste_ph": Kind.PH,
    "too_sour_ph": Kind.PH,
}
_SCALES = (0.9, 1.0, 1.15, 1.3, 1.5, 2.0, 2.5, 3.0)


class SettingEditor(QWidget):
    """One setting with its label and message. ``applied`` carries its key."""

    applied = Signal(str)

    def __init__(
        self,
        option: Option,  # type: ignore[type-arg]  # any of the declared types
        settings: Settings,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.option = option
        self._settings = settings
        self.setObjectName(f"setting_{option.key}")
        self.row: FieldRow | None = None
        self._is_showing = False

    def show_value(self) -> None:
        """Show what is in force."""
        self._is_showing = True
        self._show(self._settings.get(self.option.key))
        self._is_showing = False

    def _show(self, value: object) -> None:
        raise LookupError(f"no editor shows {value!r}")

    def _hold(self, control: QWidget, *, with_label: bool = True) -> None:
        control.setObjectName(f"{self.objectName()}_control")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        if with_label:
            self.row = FieldRow(self.option.label, control, lines=1)
            self.row.label.setWordWrap(True)
            layout.addWidget(self.row)
        else:
            control.setAccessibleName(self.option.label)
            layout.addWidget(control)

    def _put(self, value: bool | float | str | time) -> None:
        if self._is_showing or value == self._settings.get(self.option.key):
            self._say("")
            return
        try:
            self._settings.put(self.option.key, value)
        except ImpossibleInput as fault:
            self._say(impossible_words(fault))
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
        else:
            self._say("")
            self.applied.emit(self.option.key)

    def _say(self, problem: str) -> None:
        if self.row is not None:
            self.row.set_problem(problem)


class SwitchLine(QWidget):
    """A check box with words that wrap, which its own could not."""

    def __init__(self, label: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.box = QCheckBox()
        self.box.setAccessibleName(label)
        self.words = _Words(label)
        self.words.pressed.connect(self.box.toggle)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACE)
        row.addWidget(self.box)
        row.addWidget(self.words, 1)


class SwitchEditor(SettingEditor):
    """Yes or no."""

    def __init__(self, option: Option[bool], settings: Settings) -> None:
        super().__init__(option, settings)
        line = SwitchLine(option.label)
        self.box = line.box
        self._hold(line, with_label=False)
        self.box.toggled.connect(self._put)
        self.show_value()

    def _show(self, value: object) -> None:
        self.box.setChecked(bool(value))


class _Words(QLabel):
    """The words of a switch: pressing them works it, as pressing the box does."""

    pressed = Signal()

    def __init__(self, text: str) -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setText(text)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Act on release, and only if the pointer is still here."""
        if self.rect().contains(event.position().toPoint()):
            self.pressed.emit()


class TimeEditor(SettingEditor):
    """A time of day."""

    def __init__(self, option: Option[time], settings: Settings) -> None:
        super().__init__(option, settings)
        self.edit = QTimeEdit()
        self.edit.setDisplayFormat("HH:mm")
        bare(self.edit)
        self._hold(self.edit)
        self.edit.editingFinished.connect(self._on_finished)
        self.show_value()

    def _show(self, value: object) -> None:
        if isinstance(value, time):
            self.edit.setTime(QTime(value.hour, value.minute))

    def _on_finished(self) -> None:
        typed = self.edit.time()
        self._put(time(typed.hour(), typed.minute()))


class ChoiceEditor(SettingEditor):
    """One of a few, each with its words."""

    def __init__(
        self, option: Option[str] | Option[float], settings: Settings, words: dict[object, str]
    ) -> None:
        super().__init__(option, settings)
        self.combo = QComboBox()
        for value, text in words.items():
            self.combo.addItem(text, value)
        self._hold(self.combo)
        self.combo.currentIndexChanged.connect(self._on_chosen)
        self.show_value()

    def _show(self, value: object) -> None:
        found = self.combo.findData(value)
        if found < 0:  # set elsewhere to something that is not offered here
            self.combo.addItem(str(value), value)
            found = self.combo.count() - 1
        self.combo.setCurrentIndex(found)

    def _on_chosen(self) -> None:
        self._put(self.combo.currentData())


class ZoneEditor(SettingEditor):
    """A time zone: typed or chosen from those the system knows, or the computer's own."""

    def __init__(self, option: Option[str], settings: Settings, own_words: str) -> None:
        super().__init__(option, settings)
        self._own_words = own_words
        self._names = zone_names()
        self._by_folded = {fold(name).replace("_", " "): name for name in self._names}
        self.combo = QComboBox()
        self.combo.setEditable(True)
        self.combo.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.combo.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.combo.setMinimumContentsLength(16)
        self.combo.addItem(own_words, "")
        for name in self._names:
            self.combo.addItem(name, name)
        completer = QCompleter(self.combo.model(), self.combo)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        completer.setCompletionMode(QCompleter.CompletionMode.PopupCompletion)
        self.combo.setCompleter(completer)
        line = self.combo.lineEdit()
        assert line is not None  # an editable combo has one
        line.setObjectName("combo_line")  # the combo around it draws the frame
        line.setStyleSheet("border: none; padding: 0; min-height: 0; background: transparent;")
        self.line = line
        self._hold(self.combo)
        self.line.setAccessibleName(option.label)
        self.line.editingFinished.connect(self._on_finished)
        self.combo.activated.connect(self._on_finished)
        self.show_value()

    def _show(self, value: object) -> None:
        if self.line.hasFocus() and self.row is not None and self.row.message.is_error:
            return  # what is wrong stays to be put right
        found = self.combo.findData(value)
        self.combo.setCurrentIndex(found)
        if found < 0:  # known to another computer
            self.combo.setEditText(str(value))

    def _on_finished(self) -> None:
        typed = self.line.text().strip()
        if typed in ("", self._own_words):
            self._put("")
            self.line.setText(self._own_words)
            return
        name = self._by_folded.get(fold(typed).replace("_", " "), typed)
        self._put(name)
        if name in self._names:
            self.line.setText(name)


class CalendarPathEditor(SettingEditor):
    """Where a calendar file is kept up to date: chosen in a dialog, or given up."""

    def __init__(self, option: Option[str], settings: Settings) -> None:
        super().__init__(option, settings)
        self.line = QLineEdit()
        self.line.setReadOnly(True)
        self.line.setPlaceholderText(self.tr("No file is kept"))
        self.choose = QPushButton(self.tr("Choose…"))
        self.choose.setObjectName("setting_calendar_choose")
        self.choose.setAccessibleName(self.tr("Choose where the calendar file is kept"))
        self.stop = QPushButton(self.tr("Stop"))
        self.stop.setObjectName("setting_calendar_stop")
        self.stop.setAccessibleName(self.tr("Keep the calendar file up to date no longer"))
        held = QWidget()
        row = QHBoxLayout(held)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACE)
        row.addWidget(self.line, 1)
        row.addWidget(self.choose)
        row.addWidget(self.stop)
        self._hold(held)
        self.setContentsMargins(0, SPACE, 0, 0)  # a switch stands close above its label
        held.setFocusProxy(self.choose)
        self.line.setAccessibleName(option.label)
        self.choose.clicked.connect(self._on_choose)
        self.stop.clicked.connect(lambda: self._put(""))
        self.show_value()

    def _show(self, value: object) -> None:
        self.line.setText(str(value))
        self.line.setCursorPosition(0)
        self.line.setToolTip(plain_tip(str(value)))
        self.stop.setEnabled(bool(value))

    def _on_choose(self) -> None:
        dialog = ask_for_calendar_file(self, self.line.text())
        dialog.fileSelected.connect(self._put)


class NameEditor(SettingEditor):
    """A name that the maker gives."""

    def __init__(self, option: Option[str], settings: Settings) -> None:
        super().__init__(option, settings)
        self.line = QLineEdit()
        self.line.setMaxLength(NAME_LIMIT)
        self._hold(self.line)
        self.line.editingFinished.connect(self._on_finished)
        self.show_value()

    def _show(self, value: object) -> None:
        if not self.line.hasFocus():
            self.line.setText(str(value))

    def _on_finished(self) -> None:
        self._put(self.line.text().strip())


class AmountEditor(SettingEditor):
    """A number with a unit, read like every other amount in the program."""

    def __init__(
        self, option: Option[float], settings: Settings, quantities: Quantities, kind: Kind
    ) -> None:
        super().__init__(option, settings)
        self._quantities = quantities
        self._kind = kind
        self.line = QLineEdit()
        self._hold(self.line)
        self.line.editingFinished.connect(self._on_finished)
        self.show_value()

    def _show(self, value: object) -> None:
        if isinstance(value, float) and not self.line.hasFocus():
            self.line.setText(self._quantities.show(value, self._kind))
            self._say("")

    def _on_finished(self) -> None:
        try:
            value = self._quantities.read(self.line.text(), self._kind)
        except NotAQuantity as fault:
            self._say(quantity_words(fault))
            return
        kept = self._settings.get(self.option.key)
        shown = self._quantities.show(kept, self._kind) if isinstance(kept, float) else ""
        if self.line.text().strip() != shown:  # the rounding of the display is no change
            self._put(value)
        else:
            self._say("")


def make_editor(
    option: Option,  # type: ignore[type-arg]  # any of the declared types
    settings: Settings,
    quantities: Quantities,
    words: dict[str, dict[object, str]],
) -> SettingEditor:
    """Make the editor for ``option``; ``words`` holds the texts of choices by key.

    Raises
    ------
    LookupError
        For an option of free text, which no setting should be.
    """
    default = option.default
    if isinstance(default, bool):
        return SwitchEditor(option, settings)
    if isinstance(default, time):
        return TimeEditor(option, settings)
    if option.key in words:
        return ChoiceEditor(option, settings, words[option.key])
    if isinstance(default, float):
        return AmountEditor(option, settings, quantities, _KINDS[option.key])
    if option.key == ZONE.key:
        return ZoneEditor(option, settings, words.get("", {}).get(option.key, ""))
    if option.key == CALENDAR_PATH.key:
        return CalendarPathEditor(option, settings)
    if option.key == DESK_NAME.key:
        return NameEditor(option, settings)
    if option.choices:
        return ChoiceEditor(option, settings, {choice: choice for choice in option.choices})
    raise LookupError(f"no editor for the setting {option.key}")


def scale_words() -> dict[object, str]:
    """Return the text sizes offered, in percent."""
    return {scale: f"{scale * 100:.0f} %" for scale in _SCALES}
