"""Choose a vessel's shape from its drawn outlines."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QHBoxLayout, QSizePolicy, QWidget

from brewdesk.services.records import VesselShape
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.theme import SPACE, TOUCH, tokens

Profile = tuple[tuple[float, float], ...]  # (height_cm, radius_cm), foot to rim
_DRAWING = 56  # height of the outline, in px


class ShapeButton(QAbstractButton):
    """One shape. Chosen is told by border, tick and weight, not by colour alone."""

    def __init__(self, text: str, profile: Profile, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._profile = profile
        self.setText(text)
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Room for the outline above the words."""
        metrics = QFontMetrics(self.font())
        width = metrics.horizontalAdvance(self.text()) + 4 * SPACE
        height = max(TOUCH, metrics.height() + 2 * SPACE)
        return QSize(width, height + _DRAWING + SPACE)

    def minimumSizeHint(self) -> QSize:
        """Never less than the words need."""
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint ground, border, outline and words in the scheme's colours."""
        t = tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        chosen, hot = self.isChecked(), self.underMouse() and self.isEnabled()
        edge = QColor(t.accent if chosen or self.hasFocus() else t.edge)
        width = 2.0 if chosen or self.hasFocus() else 1.0
        painter.setPen(QPen(edge, width))
        painter.setBrush(QColor(t.accent_soft if chosen or hot else t.surface))
        inset = width / 2
        box = QRectF(self.rect()).adjusted(inset, inset, -inset, -inset)
        painter.drawRoundedRect(box, SPACE, SPACE)
        if self.hasFocus():
            painter.setPen(QPen(QColor(t.focus), 1.0, Qt.PenStyle.DotLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(box.adjusted(3, 3, -3, -3), SPACE - 3, SPACE - 3)
        words = QRectF(self.rect())
        self._paint_outline(painter, QColor(t.ink if chosen else t.muted))
        words.setTop(words.bottom() - TOUCH)
        font = self.font()
        font.setWeight(QFont.Weight.DemiBold if chosen else QFont.Weight.Normal)
        painter.setFont(font)
        painter.setPen(QColor(t.ink if self.isEnabled() else t.muted))
        painter.drawText(words, Qt.AlignmentFlag.AlignCenter, self.text())
        if chosen:
            self._paint_tick(painter, QColor(t.accent))

    def _paint_outline(self, painter: QPainter, ink: QColor) -> None:
        height_cm = self._profile[-1][0]
        scale = _DRAWING / height_cm
        middle, foot = self.width() / 2, SPACE * 1.5 + _DRAWING
        right = [QPointF(middle + r * scale, foot - h * scale) for h, r in self._profile]
        left = [QPointF(2 * middle - p.x(), p.y()) for p in reversed(right)]
        fill = QColor(ink)
        fill.setAlpha(28)
        painter.setBrush(fill)
        pen = QPen(ink, 1.8)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        painter.drawPolygon(QPolygonF(right + left))

    def _paint_tick(self, painter: QPainter, ink: QColor) -> None:
        pen = QPen(ink, 2.4)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        x, y = self.width() - 2.6 * SPACE, 1.6 * SPACE
        painter.drawPolyline(
            QPolygonF([QPointF(x, y), QPointF(x + 4, y + 4), QPointF(x + 11, y - 4)])
        )


class ShapeChoice(QWidget):
    """The shapes side by side, one of them chosen; arrow keys move between them."""

    chosen = Signal(object)  # VesselShape

    def __init__(
        self, outlines: Mapping[VesselShape, Profile], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        self._shapes = list(outlines)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        self.buttons: dict[VesselShape, ShapeButton] = {}
        for index, (shape, profile) in enumerate(outlines.items()):
            button = ShapeButton(name_of(shape), profile, self)
            button.setObjectName(f"vessel_shape_{shape.value}")
            button.setAccessibleName(self.tr("Shape: {shape}").format(shape=button.text()))
            self._group.addButton(button, index)
            layout.addWidget(button, 1)
            self.buttons[shape] = button
        self.buttons[self._shapes[0]].setChecked(True)
        self.setFocusProxy(self.buttons[self._shapes[0]])
        self._group.idClicked.connect(self._on_clicked)

    def value(self) -> VesselShape:
        """Return the chosen shape."""
        return self._shapes[self._group.checkedId()]

    def set_value(self, shape: VesselShape) -> None:
        """Choose a shape without telling anybody."""
        self.buttons[shape].setChecked(True)

    def _on_clicked(self, index: int) -> None:
        self.chosen.emit(self._shapes[index])
