"""The rail of pages at the window's left edge."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QIcon, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QFrame,
    QPushButton,
    QStyle,
    QStyleOptionButton,
    QStylePainter,
    QVBoxLayout,
    QWidget,
)

from brewdesk.widgets.icons import icon
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens

RAIL_PX = 92
ICON_PX = 26
_CLOSE_PX = 2  # around picture and name in a window that is low


class RailButton(QPushButton):
    """A page's button: its picture above its name.

    A tool button could draw that by itself, but would be read out as a box to tick; this one
    is read as one of several.
    """

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setCheckable(True)
        self.setAutoExclusive(True)
        self.is_named = True

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw picture and name in the middle of the button."""
        option = QStyleOptionButton()
        self.initStyleOption(option)
        option.text, option.icon = "", QIcon()
        painter = QStylePainter(self)
        painter.drawControl(QStyle.ControlElement.CE_PushButton, option)
        font = QFont(self.font())
        font.setWeight(QFont.Weight.DemiBold if self.isChecked() else QFont.Weight.Normal)
        painter.setFont(font)
        painter.setPen(QColor(tokens().ink if self.isChecked() else tokens().muted))
        line = QFontMetrics(font).height()
        if not self.is_named:
            line = -(SPACE // 2)
        top = (self.height() - ICON_PX - line - SPACE // 2) // 2
        self.icon().paint(painter, QRect((self.width() - ICON_PX) // 2, top, ICON_PX, ICON_PX))
        if not self.is_named:
            return
        name = QRect(0, top + ICON_PX + SPACE // 2, self.width(), line)
        painter.drawText(name, Qt.AlignmentFlag.AlignCenter, self.text())


class Rail(QFrame):
    """One button a page; the last stands at the foot.

    Where the window is low the buttons come closer; where it is very low they lose their names,
    which their tips then tell.
    """

    page_wanted = Signal(str)

    def __init__(self, pages: list[tuple[str, str, str]], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, "rail")
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACE // 2, 2 * SPACE, SPACE // 2, SPACE)
        column.setSpacing(SPACE // 2)
        column.setSizeConstraint(QVBoxLayout.SizeConstraint.SetNoConstraint)  # see minimumSizeHint
        self._group = QButtonGroup(self)
        self._shown = ""
        self._icons = {key: icon_name for key, icon_name, _ in pages}
        self._texts = {key: text for key, _, text in pages}
        self.buttons: dict[str, RailButton] = {}
        for key, _, text in pages:
            if key == pages[-1][0]:
                column.addStretch(1)
            button = RailButton(text)
            button.setObjectName(f"rail_{key}")
            button.setAccessibleName(text)
            button.setIconSize(QSize(ICON_PX, ICON_PX))
            set_role(button, "nav")
            # Not only clicked: a screen reader chooses a page without a click.
            button.toggled.connect(lambda is_on, key=key: self._on_toggled(key, is_on))
            self._group.addButton(button)
            column.addWidget(button)
            self.buttons[key] = button
        self.restyle()

    def show_page(self, key: str) -> None:
        """Mark the page on show."""
        self._shown = key
        self.buttons[key].setChecked(True)
        self.restyle()

    def _on_toggled(self, key: str, is_on: bool) -> None:
        if is_on and key != self._shown:
            self.page_wanted.emit(key)

    def set_count(self, key: str, count: int) -> None:
        """Write a count behind a page's name."""
        text = f"{self._texts[key]} · {count}" if count else self._texts[key]
        self.buttons[key].setText(text)
        self.buttons[key].setAccessibleName(text)

    def restyle(self) -> None:
        """Draw the icons in the colours in use."""
        for key, button in self.buttons.items():
            colour = tokens().accent if button.isChecked() else tokens().muted
            button.setIcon(icon(self._icons[key], colour, ICON_PX))
        self._fit()

    def minimumSizeHint(self) -> QSize:
        """Return what the pictures alone need."""
        return QSize(self.width(), self._height_of(ICON_PX + SPACE))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Use the height there is."""
        super().resizeEvent(event)
        if event.size().height() != event.oldSize().height():
            self._fit()

    def _height_of(self, button_px: int) -> int:
        """Return the rail's height with buttons of a height."""
        count, layout = len(self.buttons), self.layout()
        assert layout is not None  # made with the rail
        margins = layout.contentsMargins()
        between = (count + 1) * layout.spacing()  # the stretch above the last is spaced too
        return count * button_px + between + margins.top() + margins.bottom()

    def _fit(self) -> None:
        """Make the buttons as wide as their longest name, count included, and as high as fits."""
        button = next(iter(self.buttons.values()))
        button.ensurePolished()
        font = QFont(button.font())
        font.setWeight(QFont.Weight.DemiBold)  # as the chosen page's name is written
        metrics = QFontMetrics(font)
        names = [f"{text} · 9" for text in self._texts.values()]
        wide = max(metrics.horizontalAdvance(name) for name in names) + 2 * SPACE
        side = max(RAIL_PX - SPACE - 1, wide)
        bare = ICON_PX + SPACE // 2 + metrics.height()
        room = (self.height() - self._height_of(0)) // len(self.buttons)
        is_named = room >= bare + _CLOSE_PX
        most = bare + SPACE + SPACE // 2
        high = max(min(room, most), ICON_PX + SPACE)
        for key, made in self.buttons.items():
            made.ensurePolished()  # later on the style sheet would set other heights
            made.setFixedSize(side, high)
            made.setToolTip("" if is_named else self._texts[key])
            if made.is_named is not is_named:
                made.is_named = is_named
                made.update()
        self.setFixedWidth(side + SPACE + 1)
        layout = self.layout()
        if layout is not None:
            layout.activate()  # before the next painting, not after it
