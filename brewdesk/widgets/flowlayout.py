"""Widgets in a row that goes on below where it does not fit."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowLayout(QLayout):
    """Lays out from left to right, then on the next line. Hidden widgets take no room."""

    def __init__(self, parent: QWidget | None = None, *, gap: int = 8) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self.setSpacing(gap)
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        """Take one more."""
        self._items.append(item)

    def count(self) -> int:
        """Return how many there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """Return one, or None beyond the last."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Take one out, or None beyond the last."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """Want no more room than is needed."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """Need more height where there is less width."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height of all lines at this width."""
        return self._place(QRect(0, 0, width, 0), is_real=False)

    def setGeometry(self, rect: QRect) -> None:
        """Put everything where it belongs."""
        super().setGeometry(rect)
        self._place(rect, is_real=True)

    def sizeHint(self) -> QSize:
        """Ask for one line if there is room."""
        widths = [item.sizeHint().width() + self.spacing() for item in self._shown()]
        heights = [item.sizeHint().height() for item in self._shown()]
        return QSize(max(0, sum(widths) - self.spacing()), max(heights, default=0))

    def minimumSize(self) -> QSize:  # noqa: N802  # Qt's name
        """Ask for the room of the largest at least."""
        size = QSize()
        for item in self._shown():
            size = size.expandedTo(item.minimumSize())
        return size

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _place(self, rect: QRect, *, is_real: bool) -> int:
        top = rect.y()
        for number, line in enumerate(self._lines(rect.width())):
            top += self.spacing() if number else 0
            height = max(size.height() for _item, size in line)
            left = rect.x()
            for item, size in line:
                if is_real:
                    middle = top + (height - size.height()) // 2
                    item.setGeometry(QRect(QPoint(left, middle), size))
                left += size.width() + self.spacing()
            top += height
        return top - rect.y()

    def _lines(self, width: int) -> list[list[tuple[QLayoutItem, QSize]]]:
        """Share what is shown out into lines no wider than ``width``."""
        lines: list[list[tuple[QLayoutItem, QSize]]] = []
        used = 0
        for item in self._shown():
            hint = item.sizeHint()
            size = QSize(min(hint.width(), width), hint.height())
            if not lines or used + self.spacing() + size.width() > width:
                lines.append([])
                used = -self.spacing()
            lines[-1].append((item, size))
            used += self.spacing() + size.width()
        return lines
