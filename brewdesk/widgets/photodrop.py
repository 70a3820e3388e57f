"""The inviting ground of an empty photo strip."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import RADIUS, SPACE, tokens

_PICTURE_PX = 72


class DropGround(QWidget):
    """Says what can be dropped here, and offers two other ways."""

    pick_wanted = Signal()
    paste_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("photo_ground")
        self._is_hovered = False
        self.heading = plain_label("", "heading", wraps=True)
        self.advice = plain_label(
            self.tr(
                "Drop them here from your file manager or phone folder. A picture every few days, "
                "from above in good light, shows best how the film grows."
            ),
            "muted",
            wraps=True,
        )
        self.pick_button = QPushButton(self.tr("Choose pictures…"))
        self.pick_button.setObjectName("photo_pick_first")
        set_role(self.pick_button, "primary")
        self.paste_button = QPushButton(self.tr("Paste"))
        self.paste_button.setObjectName("photo_paste")
        buttons = QHBoxLayout()
        buttons.setSpacing(SPACE)
        buttons.addStretch(1)
        buttons.addWidget(self.pick_button)
        buttons.addWidget(self.paste_button)
        buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addStretch(2)
        column.addSpacing(_PICTURE_PX + SPACE)
        for label in (self.heading, self.advice):
            label.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            column.addWidget(label)
        column.addSpacing(SPACE)
        column.addLayout(buttons)
        column.addStretch(3)
        self.pick_button.clicked.connect(self.pick_wanted)
        self.paste_button.clicked.connect(self.paste_wanted)
        self.set_name("")

    def set_name(self, name: str) -> None:
        """Say what the photos would be of."""
        text = self.tr("No photos of {name} yet").format(name=name) if name else ""
        self.heading.setText(text)

    def set_hovered(self, is_hovered: bool) -> None:
        """Show that what hangs over it would be taken."""
        self._is_hovered = is_hovered
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the dashed border and a picture frame."""
        t = tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
        painter.setBrush(QColor(t.accent_soft if self._is_hovered else t.ground))
        colour = QColor(t.accent if self._is_hovered else t.edge)
        painter.setPen(QPen(colour, 2.4 if self._is_hovered else 1.4, Qt.PenStyle.DashLine))
        painter.drawRoundedRect(area, RADIUS, RADIUS)
        top = float(self.heading.y() - _PICTURE_PX - SPACE)
        self._frame(painter, QRectF(area.center().x() - 44, top, 88, _PICTURE_PX))

    def _frame(self, painter: QPainter, box: QRectF) -> None:
        t = tokens()
        painter.setPen(QPen(QColor(t.edge), 2))
        painter.setBrush(QColor(t.surface))
        painter.drawRoundedRect(box, 8, 8)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.window))
        painter.drawEllipse(box.topLeft() + QPointF(22, 20), 7, 7)
        painter.setBrush(QColor(t.accent))
        foot = box.bottom() - 8
        painter.drawPolygon(
            QPolygonF(
                [
                    QPointF(box.left() + 10, foot),
                    QPointF(box.left() + 34, foot - 26),
                    QPointF(box.left() + 47, foot - 12),
                    QPointF(box.left() + 58, foot - 22),
                    QPointF(box.right() - 10, foot),
                ]
            )
        )
