"""A row of figures: the value large, what it is small below."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class FigureRow(QWidget):
    """Up to ``count`` figures side by side, each of the same width."""

    def __init__(self, count: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2 * SPACE)
        self._pairs: list[tuple[QLabel, QLabel]] = []
        for _ in range(count):
            cell = QVBoxLayout()
            cell.setSpacing(0)
            figure, caption = QLabel(), QLabel()
            for label, role in ((figure, "figure"), (caption, "label")):
                label.setTextFormat(Qt.TextFormat.PlainText)
                set_role(label, role)
                cell.addWidget(label)
            row.addLayout(cell, 1)
            self._pairs.append((figure, caption))

    def set_figures(self, figures: list[tuple[str, str]]) -> None:
        """Show pairs of value and caption; further cells stay empty."""
        for index, (figure, caption) in enumerate(self._pairs):
            value, words = figures[index] if index < len(figures) else ("", "")
            figure.setText(value)
            caption.setText(words)
            figure.setAccessibleName(f"{words}: {value}" if value else "")
