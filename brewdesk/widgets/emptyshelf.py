"""What an empty pantry shows: an empty board, and what to do about it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from brewdesk.widgets.jarpainter import JarLook, paint_jar
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens

BOARD_PX = 12


class EmptyShelf(QWidget):
    """An invitation: add a vessel, or look at the invented pantry first."""

    add_wanted = Signal()
    demo_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(4 * SPACE, 4 * SPACE, 4 * SPACE, 4 * SPACE)
        column.setSpacing(SPACE)
        column.addStretch(5)
        heading = QLabel(self.tr("The shelf is empty"))
        set_role(heading, "title")
        advice = QLabel(
            self.tr(
                "Put up the first jar you want to brew in. A name and how much it holds are "
                "enough; the rest can wait."
            )
        )
        advice.setWordWrap(True)
        advice.setMaximumWidth(520)
        advice.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        set_role(advice, "muted")
        buttons = QHBoxLayout()
        buttons.addStretch(1)
        self.add_button = QPushButton(self.tr("Add your first vessel"))
        self.add_button.setObjectName("add_first_vessel")
        set_role(self.add_button, "primary")
        self.add_button.clicked.connect(self.add_wanted)
        self.demo_button = QPushButton(self.tr("Look at an invented pantry"))
        self.demo_button.setObjectName("open_demo")
        self.demo_button.clicked.connect(self.demo_wanted)
        buttons.addWidget(self.add_button)
        buttons.addWidget(self.demo_button)
        buttons.addStretch(1)
        column.addWidget(heading, 0, Qt.AlignmentFlag.AlignHCenter)
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(advice, 20)
        row.addStretch(1)
        column.addLayout(row)
        column.addSpacing(SPACE)
        column.addLayout(buttons)
        column.addStretch(2)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw a board with three outlined jars."""
        t = tokens()
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(t.wall).lighter(103))  # as the wall behind the jars
        middle, board_y = self.width() / 2.0, self.height() * 0.46
        painter.fillRect(
            QRectF(middle - 300, board_y, 600, BOARD_PX),
            QColor(t.board),
        )
        painter.setOpacity(0.8)
        scale = max(5.0, min(9.0, self.height() / 75.0))
        shapes = (
            (-170.0, ((0.0, 4.4), (13.0, 4.4))),
            (0.0, ((0.0, 7.0), (22.0, 7.0))),
            (170.0, ((0.0, 4.2), (13.0, 4.2), (18.0, 1.8), (21.0, 1.8))),
        )
        for offset, profile in shapes:
            paint_jar(painter, QPointF(middle + offset, board_y), scale, JarLook(profile), t)
