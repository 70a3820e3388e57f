"""A row of figures: the value large, what it is small below."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class ElidedLabel(QLabel):
    """One line that ends in an ellipsis when there is no room; the tip has it whole."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def minimumSizeHint(self) -> QSize:
        """Give way: a few letters are enough to live on."""
        return QSize(4 * SPACE, super().minimumSizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the line, shortened if it must be."""
        metrics = self.fontMetrics()
        room = self.contentsRect()
        shown = metrics.elidedText(self.text(), Qt.TextElideMode.ElideRight, room.width())
        painter = QPainter(self)
        painter.setPen(self.palette().windowText().color())
        painter.drawText(room, int(self.alignment()), shown)


class FigureRow(QWidget):
    """Up to ``count`` figures side by side; those without a value take no room."""

    def __init__(self, count: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2 * SPACE)
        self._cells: list[tuple[QWidget, QLabel, QLabel]] = []
        for _ in range(count):
            cell = QWidget()
            column = QVBoxLayout(cell)
            column.setContentsMargins(0, 0, 0, 0)
            column.setSpacing(0)
            figure, caption = ElidedLabel(), ElidedLabel()
            for label, role in ((figure, "figure"), (caption, "label")):
                set_role(label, role)
                column.addWidget(label)
            row.addWidget(cell, 1)
            self._cells.append((cell, figure, caption))

    def set_figures(self, figures: list[tuple[str, str]]) -> None:
        """Show pairs of value and caption."""
        for index, (cell, figure, caption) in enumerate(self._cells):
            value, words = figures[index] if index < len(figures) else ("", "")
            figure.setText(value)
            caption.setText(words)
            figure.setToolTip("")
            figure.setAccessibleName(f"{words}: {value}" if value else "")
            cell.setVisible(bool(value))
