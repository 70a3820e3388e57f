"""Figures that go on below where they do not fit: none is ever cut short."""

from __future__ import annotations

from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.flowlayout import FlowLayout
from brewdesk.widgets.theme import SPACE


class FigureFlow(QWidget):
    """Up to ``count`` figures: the value large, what it is small below."""

    def __init__(self, count: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        flow = FlowLayout(self, gap=4 * SPACE)
        self._cells: list[tuple[QWidget, QLabel, QLabel]] = []
        for _ in range(count):
            cell = QWidget(self)
            column = QVBoxLayout(cell)
            column.setContentsMargins(0, 0, 0, 0)
            column.setSpacing(0)
            figure, caption = plain_label("", "figure", cell), plain_label("", "label", cell)
            column.addWidget(figure)
            column.addWidget(caption)
            flow.addWidget(cell)
            self._cells.append((cell, figure, caption))

    def figures(self) -> list[tuple[str, str]]:
        """Return what is shown."""
        return [
            (figure.text(), caption.text()) for _, figure, caption in self._cells if figure.text()
        ]

    def set_figures(self, figures: list[tuple[str, str]]) -> None:
        """Show pairs of value and caption."""
        for index, (cell, figure, caption) in enumerate(self._cells):
            value, words = figures[index] if index < len(figures) else ("", "")
            figure.setText(value)
            caption.setText(words)
            figure.setAccessibleName(f"{words}: {value}" if value else "")
            cell.setVisible(bool(value))
        self.updateGeometry()
