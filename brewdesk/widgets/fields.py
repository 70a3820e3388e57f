"""Labelled fields: the label above, the control, and a line for what is wrong with it.

The message line keeps its height while empty, so that nothing jumps when it speaks.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QFont, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QComboBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.wheelpass import pass_wheel_on

_TIGHT = SPACE // 4  # between a field and the words that belong to it


def plain_label(
    text: str = "", role: str = "", parent: QWidget | None = None, *, wraps: bool = False
) -> QLabel:
    """Make a label that shows ``text`` as it is, never as markup."""
    label = QLabel(parent)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setText(text)
    label.setWordWrap(wraps)
    if role:
        set_role(label, role)
    return label


def make_strong(label: QWidget) -> None:
    """Set a widget's words in the stronger of the program's two weights."""
    font = label.font()
    font.setWeight(QFont.Weight.DemiBold)  # the bold of most systems would be a smeared regular
    label.setFont(font)


def announce(widget: QWidget, text: str) -> None:
    """Let a screen reader say ``text`` without moving the focus."""
    if text and QAccessible.isActive():
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(widget, text))


def bring_into_view(widget: QWidget) -> None:
    """Scroll the page around ``widget`` so far that all of it can be seen."""
    above = widget.parentWidget()
    while above is not None and not isinstance(above, QScrollArea):
        above = above.parentWidget()
    if isinstance(above, QScrollArea):
        above.ensureWidgetVisible(widget, 0, SPACE)


class MessageLine(QLabel):
    """One hint or error in a space that is always kept for it."""

    def __init__(self, parent: QWidget | None = None, *, lines: int = 2) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self._lines = lines
        set_role(self, "error")  # its type size decides the height that is kept
        self._keep_height()

    @property
    def is_error(self) -> bool:
        """Whether what stands here is an error."""
        return bool(self.text()) and self.property("role") == "error"

    def say(self, text: str, role: str = "label") -> None:
        """Show ``text`` as a quiet remark or as an ``error``; empty text clears the line."""
        if text == self.text() and role == self.property("role"):
            return
        set_role(self, role)
        self.setText(text)
        if role == "error":
            announce(self, text)

    def sizeHint(self) -> QSize:
        """Ask for the height that is kept; only a text too long for its width asks for more."""
        return QSize(super().sizeHint().width(), self.minimumHeight())

    def changeEvent(self, event: QEvent) -> None:
        """Follow the type size."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._keep_height()

    def _keep_height(self) -> None:
        line = QFontMetrics(self.font()).lineSpacing()
        self.setMinimumHeight(line * self._lines)


class FieldRow(QWidget):
    """A control with its label above and its message line below.

    An ``editor`` that has a ``MessageLine`` of its own (attribute ``message``) keeps
    it. ``focus_widget`` is what takes the keyboard, if it is not the editor itself.
    """

    def __init__(
        self,
        label: str,
        editor: QWidget,
        parent: QWidget | None = None,
        *,
        beside: QWidget | None = None,
        lines: int = 2,
    ) -> None:
        super().__init__(parent)
        self.editor = editor
        own = getattr(editor, "message", None)
        self.message = own if isinstance(own, MessageLine) else MessageLine(self, lines=lines)
        takes_focus = getattr(editor, "line", None)
        self.focus_widget = takes_focus if isinstance(takes_focus, QWidget) else editor
        if isinstance(self.focus_widget, (QComboBox, QAbstractSpinBox)):
            pass_wheel_on(self.focus_widget)

        self.label = QLabel(label, self)
        self.label.setTextFormat(Qt.TextFormat.PlainText)
        set_role(self.label, "label")
        self.label.setBuddy(self.focus_widget)
        for named in (
            editor,
            self.focus_widget,
        ):  # an editor hands the keyboard on, if it is not one
            named.setAccessibleName(label.replace("&", ""))

        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.label)
        layout.addSpacing(_TIGHT)
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        line.addWidget(editor, 1)
        if beside is not None:
            line.addWidget(beside, 0, Qt.AlignmentFlag.AlignTop)
        layout.addLayout(line)
        if own is not self.message and lines:
            layout.addSpacing(_TIGHT)
            layout.addWidget(self.message)
        self.message.setVisible(bool(lines) or own is self.message)
        layout.addStretch(1)

    def set_problem(self, text: str) -> None:
        """Show what is wrong with the field; empty text clears it."""
        said = getattr(self.editor, "set_problem", None)
        if said is not None:
            said(text)
            return
        self.message.say(text, "error" if text else "label")
        self.focus_widget.setAccessibleDescription(text)
        _mark_invalid(self.focus_widget, bool(text))

    def set_hint(self, text: str) -> None:
        """Show a quiet remark below the field, unless an error stands there."""
        if not self.message.is_error:
            self.message.say(text)
            self.focus_widget.setAccessibleDescription(text)


def _mark_invalid(widget: QWidget, invalid: bool) -> None:
    if bool(widget.property("invalid")) == invalid:
        return
    widget.setProperty("invalid", invalid)
    widget.style().unpolish(widget)
    widget.style().polish(widget)


class Disclosure(QWidget):
    """A button that opens and closes what stands below it."""

    toggled = Signal(bool)

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.button = QToolButton(self)
        self.button.setText(text)
        self.button.setCheckable(True)
        self.button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.button.setArrowType(Qt.ArrowType.RightArrow)
        self.button.setAccessibleName(text)
        set_role(self.button, "quiet")
        self.body = QWidget(self)
        self.body.setVisible(False)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        layout.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(self.body)
        self.button.toggled.connect(self._on_toggled)

    def is_open(self) -> bool:
        """Whether the body is shown."""
        return self.button.isChecked()

    def set_open(self, is_open: bool) -> None:
        """Show or hide the body."""
        self.button.setChecked(is_open)

    def _on_toggled(self, is_open: bool) -> None:
        arrow = Qt.ArrowType.DownArrow if is_open else Qt.ArrowType.RightArrow
        self.button.setArrowType(arrow)
        self.body.setVisible(is_open)
        self.toggled.emit(is_open)


def card(parent: QWidget | None = None, role: str = "card") -> tuple[QFrame, QVBoxLayout]:
    """Make a panel and the column inside it."""
    frame = QFrame(parent)
    set_role(frame, role)
    column = QVBoxLayout(frame)
    column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
    column.setSpacing(SPACE)
    return frame, column


def choose(combo: QComboBox, data: object) -> None:
    """Select the entry that carries ``data``; leave the choice alone if none does."""
    for index in range(combo.count()):
        if combo.itemData(index) == data:
            combo.setCurrentIndex(index)
            return
