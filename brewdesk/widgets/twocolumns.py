"""Two columns that scroll apart while there is room, and become one when there is not."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from brewdesk.widgets.theme import SPACE

WIDE_LETTERS = 124  # two columns begin where a line of both has room for this many letters
_LEFT_SHARE, _RIGHT_SHARE = 11, 10


class TwoColumns(QWidget):
    """Shows ``left`` and ``right`` side by side, each in its own scroll area, or stacked."""

    def __init__(
        self,
        left: QWidget,
        right: QWidget,
        parent: QWidget | None = None,
        *,
        wide_letters: int = WIDE_LETTERS,
    ) -> None:
        super().__init__(parent)
        self._left, self._right = left, right
        self._wide_letters = wide_letters
        self._is_wide: bool | None = None
        self._areas = (_area(self), _area(self))
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(SPACE)
        self._row.addWidget(self._areas[0], _LEFT_SHARE)
        self._row.addWidget(self._areas[1], _RIGHT_SHARE)
        self._arrange(is_wide=True)

    @property
    def is_wide(self) -> bool:
        """Whether the columns stand side by side."""
        return bool(self._is_wide)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Choose the arrangement that fits."""
        super().resizeEvent(event)
        self._arrange(is_wide=self._fits_two(event.size().width()))

    def changeEvent(self, event: QEvent) -> None:
        """Choose anew when the type size changes."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._arrange(is_wide=self._fits_two(self.width()))

    def _fits_two(self, width: int) -> bool:
        """Whether both columns can be read, and neither is cut off, at this width."""
        letters = self.fontMetrics().averageCharWidth() * self._wide_letters
        share = width / (_LEFT_SHARE + _RIGHT_SHARE)
        bar = 3 * SPACE  # scroll bar and gap
        fits_left = share * _LEFT_SHARE - bar >= self._left.minimumSizeHint().width()
        fits_right = share * _RIGHT_SHARE - bar >= self._right.minimumSizeHint().width()
        return width >= letters and fits_left and fits_right

    def show_left(self, widget: QWidget) -> None:
        """Scroll so that ``widget`` of the left column can be seen."""
        self._areas[0].ensureWidgetVisible(widget)

    def _arrange(self, *, is_wide: bool) -> None:
        if is_wide == self._is_wide:
            return
        self._is_wide = is_wide
        focus = self.window().focusWidget()
        had_focus = focus is not None and self.isAncestorOf(focus)
        for column in (self._left, self._right):
            column.setParent(None)
        for area, columns in zip(
            self._areas,
            ((self._left,), (self._right,)) if is_wide else ((self._left, self._right), ()),
            strict=True,
        ):
            old = area.takeWidget()
            if old is not None:
                old.deleteLater()
            if columns:
                area.setWidget(_stack(columns))
            area.setVisible(bool(columns))
        # Shown while being resized, the second column is else left where it was made.
        self._row.invalidate()
        self._row.activate()
        if had_focus and focus is not None:
            focus.setFocus()  # moving a widget to another parent takes its focus away


def _area(parent: QWidget) -> QScrollArea:
    area = QScrollArea(parent)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    return area


def _stack(columns: tuple[QWidget, ...]) -> QWidget:
    holder = QWidget()
    layout = QVBoxLayout(holder)
    layout.setContentsMargins(0, 0, SPACE, 0)
    layout.setSpacing(2 * SPACE)
    for column in columns:
        layout.addWidget(column)
        column.show()
    layout.addStretch(1)
    return holder
