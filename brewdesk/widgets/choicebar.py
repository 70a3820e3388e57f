"""A row of buttons of which one is chosen: worked with fingers, arrows or digits."""

from __future__ import annotations

from collections.abc import Hashable, Sequence

from PySide6.QtCore import QEvent, QObject, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QApplication, QBoxLayout, QPushButton, QSizePolicy, QWidget

from brewdesk.widgets.theme import RADIUS, SPACE, TOUCH, Tokens, theme, tokens


class ChoiceBar(QWidget):
    """Choose one of a few. One stop for Tab; arrows walk, digits choose directly.

    Parameters
    ----------
    choices
        What each button stands for, and its words.
    may_be_none
        Whether pressing the chosen button again takes the choice back.
    submits
        Whether Enter leads on to the next field instead of pressing the button.
    height_px
        Height of all buttons, so that one- and two-line words stand level.
    """

    chosen = Signal(object)  # what was chosen, or None
    submitted = Signal()  # Enter was pressed: on to the next field

    def __init__(
        self,
        choices: Sequence[tuple[Hashable, str]],
        name: str,
        parent: QWidget | None = None,
        *,
        may_be_none: bool = False,
        submits: bool = False,
        height_px: int = TOUCH,
    ) -> None:
        super().__init__(parent)
        self._may_be_none = may_be_none
        self._submits = submits
        self._height_px = height_px
        self._value: Hashable | None = None
        self._buttons: dict[Hashable, QPushButton] = {}
        self.setAccessibleName(name)
        self._is_stacked = False
        layout = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        self._row = layout
        for number, (value, text) in enumerate(choices):
            button = self._make_button(text, name, number, len(choices))
            self._buttons[value] = button
            layout.addWidget(button, 1)
        if not may_be_none and choices:
            self._value = choices[0][0]
        self._dress()
        self._show_value()
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._dress)

    def value(self) -> Hashable | None:
        """Return what is chosen."""
        return self._value

    def set_value(self, value: Hashable | None) -> None:
        """Choose without a signal; what is not offered chooses nothing."""
        self._value = value if value in self._buttons else None
        self._show_value()

    def button(self, value: Hashable) -> QPushButton:
        """Return the button that stands for ``value``."""
        return self._buttons[value]

    def minimumSizeHint(self) -> QSize:
        """Ask for the widest button only: the choices stack when the row is too narrow."""
        return QSize(max(self._widths(), default=0), self._row.minimumSize().height())

    def sizeHint(self) -> QSize:
        """Ask for room to stand side by side, also while stacked."""
        return QSize(sum(self._widths()), self._row.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Stack the choices when they do not fit side by side."""
        super().resizeEvent(event)
        is_stacked = sum(self._widths()) > event.size().width()
        if is_stacked == self._is_stacked:
            return
        self._is_stacked = is_stacked
        way = QBoxLayout.Direction
        self._row.setDirection(way.TopToBottom if is_stacked else way.LeftToRight)
        self._row.setSpacing(SPACE // 2 if is_stacked else 0)
        for number, button in enumerate(self._buttons.values()):
            end = "both" if is_stacked else _end_of(number, len(self._buttons))
            button.setProperty("end", end)
        self._dress()
        self.updateGeometry()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Walk with the arrows, choose with digits, go on with Enter."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            return self._on_key(watched, event)
        return super().eventFilter(watched, event)

    def _widths(self) -> list[int]:
        return [button.minimumSizeHint().width() for button in self._buttons.values()]

    def _make_button(self, text: str, name: str, number: int, count: int) -> QPushButton:
        button = QPushButton(text, self)
        button.setCheckable(True)
        button.setProperty("end", _end_of(number, count))
        button.setAccessibleName(
            self.tr("{name}: {choice}").format(name=name, choice=text.replace("\n", " "))
        )
        button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        button.installEventFilter(self)
        button.clicked.connect(self._on_clicked)
        return button

    def _on_clicked(self) -> None:
        pressed = self.sender()
        value = next(value for value, button in self._buttons.items() if button is pressed)
        self._choose(None if value == self._value and self._may_be_none else value)

    def _choose(self, value: Hashable | None) -> None:
        changed = value != self._value
        self._value = value
        self._show_value()
        if changed:
            self.chosen.emit(value)

    def _on_key(self, watched: QObject, event: QKeyEvent) -> bool:
        buttons = list(self._buttons.values())
        here = next((n for n, button in enumerate(buttons) if button is watched), 0)
        steps = {
            Qt.Key.Key_Left: -1,
            Qt.Key.Key_Up: -1,
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_Down: 1,
        }
        plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if plain and event.key() in steps:
            there = here + steps[Qt.Key(event.key())]
            if 0 <= there < len(buttons):
                buttons[there].setFocus(Qt.FocusReason.OtherFocusReason)
            return True
        digit = event.key() - Qt.Key.Key_1
        if plain and 0 <= digit < len(buttons):
            buttons[digit].setFocus(Qt.FocusReason.OtherFocusReason)
            buttons[digit].click()
            return True
        if plain and self._submits and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.submitted.emit()
            return True
        return False

    def _show_value(self) -> None:
        first = True
        for value, button in self._buttons.items():
            is_chosen = value == self._value
            button.setChecked(is_chosen)
            takes_tab = is_chosen or (self._value is None and first)
            policy = Qt.FocusPolicy.StrongFocus if takes_tab else Qt.FocusPolicy.ClickFocus
            button.setFocusPolicy(policy)
            if takes_tab:
                self.setFocusProxy(button)
            first = False

    def _dress(self) -> None:
        lines = 1 + max((b.text().count("\n") for b in self._buttons.values()), default=0)
        words_px = lines * QFontMetrics(QApplication.font()).lineSpacing() + SPACE
        self.setStyleSheet(_sheet(tokens(), max(self._height_px, words_px)))


def _end_of(number: int, count: int) -> str:
    if count == 1:
        return "both"
    return "first" if number == 0 else "last" if number == count - 1 else "middle"


def _sheet(t: Tokens, height_px: int) -> str:
    r = RADIUS - 2
    return f"""
QPushButton {{ border-radius: 0; border: 1px solid {t.edge}; border-left-width: 0;
  padding: 0 8px; min-height: {height_px - 2}px; max-height: {height_px - 2}px; }}
QPushButton[end="first"] {{ border-left-width: 1px; border-top-left-radius: {r}px;
  border-bottom-left-radius: {r}px; }}
QPushButton[end="last"] {{ border-top-right-radius: {r}px; border-bottom-right-radius: {r}px; }}
QPushButton[end="both"] {{ border-left-width: 1px; border-radius: {r}px; }}
QPushButton:checked {{ background: {t.accent}; color: {t.on_accent}; font-weight: 600; }}
QPushButton:focus {{ border: 2px solid {t.focus}; padding: 0 7px;
  min-height: {height_px - 4}px; max-height: {height_px - 4}px; }}
QPushButton:checked:focus {{ border: 3px double {t.on_accent}; padding: 0 6px;
  min-height: {height_px - 6}px; max-height: {height_px - 6}px; }}
"""
