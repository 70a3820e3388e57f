"""The trays that stand above the shelf while something is carried."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.drops import Target, Tray
from brewdesk.services.wording.drops import tray_words
from brewdesk.widgets.carriage import Carriage, Way
from brewdesk.widgets.dropmarks import Mark, mark_of, paint_mark
from brewdesk.widgets.fields import make_strong
from brewdesk.widgets.figurerow import ElidedLabel
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import RADIUS, SPACE, tokens


class TrayTarget(QFrame):
    """One tray: takes drops and clicks."""

    def __init__(self, carriage: Carriage, tray: Tray, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.target = Target(tray=tray)
        self._carriage = carriage
        self.setObjectName(f"tray_{tray.value}")
        self.setAcceptDrops(True)
        self.setMouseTracking(True)
        name, purpose = tray_words(tray)
        self.setAccessibleName(name)
        self.setAccessibleDescription(purpose)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, SPACE // 2, 2 * SPACE, SPACE // 2)
        column.setSpacing(0)
        column.addStretch(1)
        title, hint = ElidedLabel(name, self), ElidedLabel(purpose, self)
        make_strong(title)
        set_role(hint, "label")
        column.addWidget(title)
        column.addWidget(hint)
        column.addStretch(1)
        self.setToolTip(purpose)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the tray, and whether it takes what is carried."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tokens().surface))
        box = self.rect().adjusted(1, 1, -1, -1)
        painter.drawRoundedRect(box, RADIUS, RADIUS)
        paint_mark(painter, box, mark_of(self._carriage, self.target) or Mark.CANNOT)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Look at what comes in."""
        self._over(event)

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """Answer again: the pointer is over this tray."""
        self._over(event)

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        """Let go of the pointer."""
        self._carriage.point_at(None)
        event.accept()

    def dropEvent(self, event: QDropEvent) -> None:
        """Take what is let go here."""
        if self._carriage.is_ours(event.mimeData()):
            self._carriage.lay_down(self.target)
            event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Say what could be done here while something is carried by clicks."""
        if self._carriage.way is Way.CLICKS:
            self._carriage.point_at(self.target)
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Put it down here."""
        self._carriage.lay_down(self.target)
        event.accept()

    def _over(self, event: QDragMoveEvent) -> None:
        if not self._carriage.is_ours(event.mimeData()):
            event.ignore()
            return
        self._carriage.point_at(self.target)
        # A drag that is refused as it comes in is not told of any further: so it is let in,
        # and only the place where it is says no.
        if self._carriage.drop_at(self.target).is_allowed:
            event.setDropAction(Qt.DropAction.MoveAction)
            event.accept()
        elif isinstance(event, QDragEnterEvent):
            event.accept()
        else:
            event.ignore()


class TrayStrip(QWidget):
    """Both trays, what is carried, and a way to give up."""

    give_up_wanted = Signal()

    def __init__(self, carriage: Carriage, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._carriage = carriage
        self.setObjectName("tray_strip")
        row = QHBoxLayout(self)
        row.setContentsMargins(3 * SPACE, SPACE, 2 * SPACE, SPACE)
        row.setSpacing(SPACE)
        self.trays = [TrayTarget(carriage, tray, self) for tray in Tray]
        for tray in self.trays:
            row.addWidget(tray, 1)
        self.give_up = QPushButton(self.tr("Give up"), self)
        self.give_up.setObjectName("give_up_carrying")
        self.give_up.setToolTip(self.tr("Put it back where it was (Escape)"))
        set_role(self.give_up, "quiet")
        self.give_up.clicked.connect(self.give_up_wanted)
        row.addWidget(self.give_up)

    def refresh(self) -> None:
        """Paint the trays as they answer now."""
        self.give_up.setVisible(self._carriage.way is not Way.DRAG)
        for tray in self.trays:
            tray.update()

    def box_of(self, target: Target, over: QWidget) -> QRect | None:
        """Where a tray lies in ``over``."""
        for tray in self.trays:
            if tray.target == target:
                return QRect(tray.mapTo(over, tray.rect().topLeft()), tray.size())
        return None
