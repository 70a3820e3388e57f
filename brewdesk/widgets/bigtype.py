"""Type larger than the application's, that follows it when the text size changes."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication, QWidget

from brewdesk.widgets.theme import theme


class BigType(QObject):
    """Keep a widget's type at ``scale`` times the application's."""

    def __init__(self, widget: QWidget, scale: float, more: str = "") -> None:
        super().__init__(widget)
        self._widget = widget
        self._scale = scale
        self._more = more
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        size_pt = QApplication.font().pointSizeF() * self._scale
        self._widget.setStyleSheet(f"font-size: {size_pt:.1f}pt; {self._more}")
