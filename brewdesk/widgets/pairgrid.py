"""Fields in pairs while there is room for two columns, one below the other when there is not."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from brewdesk.widgets.theme import SPACE


class PairGrid(QWidget):
    """Rows of one or two widgets. Large type on a narrow sheet gives up the second column."""

    def __init__(self, parent: QWidget | None = None, *, gap: int = 2 * SPACE) -> None:
        super().__init__(parent)
        self._rows: list[tuple[QWidget, ...]] = []
        self._is_wide = True
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(gap)
        self._grid.setVerticalSpacing(0)

    @property
    def is_wide(self) -> bool:
        """Whether pairs stand side by side."""
        return self._is_wide

    def add(self, *widgets: QWidget) -> None:
        """Add a row: one widget takes the whole width, two share it."""
        self._rows.append(widgets)
        self._place()

    def minimumSizeHint(self) -> QSize:
        """Ask for one column's width only; the second is a luxury."""
        widths = [widget.minimumSizeHint().width() for row in self._rows for widget in row]
        return QSize(max(widths, default=0), self._grid.minimumSize().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Choose the arrangement that fits."""
        super().resizeEvent(event)
        self._arrange()

    def event(self, event: QEvent) -> bool:
        """Choose anew when what stands here needs another width, as with another type size."""
        handled = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self._arrange()
        return handled

    def _arrange(self) -> None:
        pairs = [row for row in self._rows if len(row) > 1]
        widest = max((w.minimumSizeHint().width() for row in pairs for w in row), default=0)
        is_wide = 2 * widest + self._grid.horizontalSpacing() <= self.width()
        if is_wide != self._is_wide:
            self._is_wide = is_wide
            self._place()
            self.updateGeometry()

    def _place(self) -> None:
        for row in self._rows:
            for widget in row:
                self._grid.removeWidget(widget)
        line = 0
        for row in self._rows:
            if len(row) == 1:
                self._grid.addWidget(row[0], line, 0, 1, 2 if self._is_wide else 1)
                line += 1
                continue
            for number, widget in enumerate(row):
                column = number if self._is_wide else 0
                self._grid.addWidget(widget, line + (0 if self._is_wide else number), column)
            line += 1 if self._is_wide else len(row)
        self._grid.setColumnStretch(0, 1)
        self._grid.setColumnStretch(1, 1 if self._is_wide else 0)
