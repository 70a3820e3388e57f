"""One line for a quantity: any common unit, point or comma, what is wrong said below."""

from __future__ import annotations

import re
from typing import Protocol

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QFocusEvent, QShowEvent
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.records import Kind, NotAQuantity
from brewdesk.services.wording.problems import quantity_words
from brewdesk.widgets.fields import MessageLine
from brewdesk.widgets.theme import SPACE

_UNITS_NAMED = 4  # in an error: enough to see what is meant
_USUAL_UNITS = ("L", "mL", "cup", "gal", "g", "kg", "oz", "lb")
_NUMBER = re.compile(r"^[\d.,/¼½¾⅓⅔+-]+")
ERROR_DELAY_MS = 700  # "1 g" on the way to "1 gal" is not yet a mistake


class Reader(Protocol):
    """What turns text into a quantity and back: the service, or a dress over it."""

    def unit(self, kind: Kind) -> str:
        """Return the symbol in which ``kind`` is shown."""
        ...

    def units(self, kind: Kind) -> tuple[str, ...]:
        """Return the units offered."""
        ...

    def read(self, text: str, kind: Kind) -> float:
        """Read ``text``; raises NotAQuantity."""
        ...

    def show(self, value: float, kind: Kind, /) -> str:
        """Write ``value`` with its unit."""
        ...


class QuantityEdit(QWidget):
    """An entry for one quantity; its value is a float in the fixed unit of its kind.

    What was typed stays as it was typed. Below it stands what it amounts to in the
    maker's own unit, or what is wrong, in a space kept for that.

    Parameters
    ----------
    quantities
        Reads and shows amounts in the maker's units.
    kind
        What the entry measures.
    required
        Whether an empty field is a mistake.
    error_delay_ms
        How long after the last key a mistake is pointed out; leaving the field
        points it out at once.
    """

    value_changed = Signal(object)  # float in the fixed unit, or None
    submitted = Signal()  # Enter was pressed

    def __init__(
        self,
        quantities: Reader,
        kind: Kind,
        parent: QWidget | None = None,
        *,
        required: bool = True,
        lines: int = 2,
        error_delay_ms: int = ERROR_DELAY_MS,
    ) -> None:
        super().__init__(parent)
        self._quantities = quantities
        self._kind = kind
        self._required = required
        self._value: float | None = None
        self._fault: NotAQuantity | None = None
        self._problem = ""
        self._touched = False
        self._is_setting = False

        self.line = QLineEdit(self)
        self._unit_shown = ""
        self._placeholder = ""
        self._show_placeholder()
        self.message = MessageLine(self, lines=lines)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE // 4)
        layout.addWidget(self.line)
        layout.addWidget(self.message)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # else Qt leaves it where it was made
        self.setFocusProxy(self.line)

        self._late = QTimer(self)
        self._late.setObjectName("error_delay")
        self._late.setSingleShot(True)
        self._late.setInterval(error_delay_ms)
        self._connect()

    def _connect(self) -> None:
        self.line.textChanged.connect(self._on_text)
        self.line.editingFinished.connect(self._point_out)
        self.line.returnPressed.connect(self._on_return)
        self._late.timeout.connect(self._point_out)
        self.line.installEventFilter(self)

    # what it holds

    def value(self) -> float | None:
        """Return the amount in the fixed unit, or None when empty or not readable."""
        return self._value

    def set_value(self, value: float | None) -> None:
        """Show ``value`` (fixed unit) in the maker's unit; None empties the field."""
        text = "" if value is None else self._quantities.show(value, self._kind)
        self._is_setting = True
        self.line.setText(text)
        self.line.setCursorPosition(0)
        self._is_setting = False
        self._touched = False
        self._problem = ""
        self._fault = None
        self._late.stop()
        changed = value != self._value
        self._value = value
        self._tell(point_out=False)
        if changed:
            self.value_changed.emit(value)

    def is_valid(self) -> bool:
        """Whether the text can be read, or the field may stay empty and is."""
        return self._fault is None and (self._value is not None or not self._required)

    def is_touched(self) -> bool:
        """Whether the maker has typed here since the last ``set_value``."""
        return self._touched

    def text(self) -> str:
        """Return what stands in the field, exactly as typed."""
        return self.line.text()

    def set_placeholder(self, text: str) -> None:
        """Show ``text`` while the field is empty, instead of the unit."""
        self._placeholder = text
        self._show_placeholder()

    def set_problem(self, text: str) -> None:
        """Show a problem found elsewhere; it stands until the field is edited."""
        self._problem = text
        self._tell(point_out=True)

    def point_out(self) -> bool:
        """Say what is wrong now, also that it is empty; return whether all is well."""
        if self._value is None and self._fault is None and self._required:
            self._read()
        self._tell(point_out=True)
        return self.is_valid() and not self._problem

    def set_reader(self, quantities: Reader) -> None:
        """Read and show in another way; the amount stays, and so does unreadable text."""
        self._quantities = quantities
        self._show_placeholder()
        if self._value is not None:
            was_touched = self._touched
            self.set_value(self._value)
            self._touched = was_touched
        elif self._touched:
            self._read()
            self._tell(point_out=True)
            self.value_changed.emit(self._value)

    def refresh_unit(self) -> None:
        """Show the value anew after the maker chose another unit; typed text stays."""
        self._show_placeholder()
        if self._touched:
            self._tell(point_out=False)
        else:
            self.set_value(self._value)

    # what happens

    def showEvent(self, event: QShowEvent) -> None:
        """Name the unit in use: it may have been changed while another page was shown."""
        super().showEvent(event)
        self._follow_unit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Select the whole text on the click that enters, so that typing replaces it."""
        if watched is self.line and event.type() == QEvent.Type.FocusIn:
            self._follow_unit()
        if (
            watched is self.line
            and isinstance(event, QFocusEvent)
            and event.type() == QEvent.Type.FocusIn
            and event.reason() == Qt.FocusReason.MouseFocusReason
        ):
            QTimer.singleShot(0, self.line, self.line.selectAll)
        return super().eventFilter(watched, event)

    def _on_text(self, _text: str) -> None:
        if self._is_setting:
            return
        self._touched = True
        self._problem = ""
        self._show_placeholder()  # the unit in which a bare number is read from now on
        before = self._value
        self._read()
        if self._fault is None:
            self._late.stop()
            self._tell(point_out=False)
        else:
            self._tell(point_out=self.message.is_error)
            self._late.start()
        if before != self._value:
            self.value_changed.emit(self._value)

    def _follow_unit(self) -> None:
        """Never let a field name one unit and read a bare number in another."""
        if self._quantities.unit(self._kind) != self._unit_shown:
            self.refresh_unit()

    def _show_placeholder(self) -> None:
        self._unit_shown = self._quantities.unit(self._kind)
        self.line.setPlaceholderText(self._placeholder or self._unit_shown)

    def _read(self) -> None:
        text = self.line.text()
        self._fault = None
        self._value = None
        if not text.strip() and not self._required:
            return
        try:
            self._value = self._quantities.read(text, self._kind)
        except NotAQuantity as fault:
            self._fault = fault

    def _point_out(self) -> None:
        self._late.stop()
        if self._touched:
            self._tell(point_out=True)

    def _on_return(self) -> None:
        self._point_out()
        self.submitted.emit()

    def _tell(self, *, point_out: bool) -> None:
        """Choose between problem, mistake, conversion and silence."""
        error = self._problem
        if not error and self._fault is not None and point_out:
            error = self._fault_words(self._fault)
        text = error or self._conversion()
        self.message.say(text, "error" if error else "label")
        self.line.setAccessibleDescription(text)
        if bool(self.line.property("invalid")) != bool(error):
            self.line.setProperty("invalid", bool(error))
            self.line.style().unpolish(self.line)
            self.line.style().polish(self.line)

    def _fault_words(self, fault: NotAQuantity) -> str:
        words = quantity_words(fault)
        if fault.reason in ("unknown_unit", "wrong_kind"):
            offered = self._quantities.units(self._kind)
            usual = [unit for unit in offered if unit in _USUAL_UNITS] or offered
            units = ", ".join(usual[:_UNITS_NAMED])
            words += " " + self.tr("Use {units}.").format(units=units)
        return words

    def _conversion(self) -> str:
        if self._value is None or not self._touched:
            return ""
        shown = self._quantities.show(self._value, self._kind)
        typed, unit = _squeezed(self.line.text()), _squeezed(self._quantities.unit(self._kind))
        if typed == _squeezed(shown) or _NUMBER.sub("", typed) == unit:
            return ""  # it is in the maker's own unit as it stands
        return self.tr("= {amount}").format(amount=shown)


def _squeezed(text: str) -> str:
    return "".join(text.split()).replace(",", ".").casefold()
