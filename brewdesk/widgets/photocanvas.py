"""One photo in large: fitted, or zoomed and moved about."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QWidget

from brewdesk.widgets.theme import SPACE, tokens

MOST_ZOOM = 8.0  # screen pixels a picture pixel
STEP = 1.25
_PAN_PX = 60.0
_WHEEL_NOTCH = 120.0


class PhotoCanvas(QWidget):
    """Shows a pixmap, or words in its place. ``zoom`` is in device pixels a picture pixel.

    Plus and minus zoom, 0 fits, 1 shows every pixel; the arrows move a picture that is larger
    than its place, else they are left to whoever holds this. A double click goes to and fro.
    """

    zoomed = Signal()
    taken_up = Signal()  # it has the keyboard now

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(QSize(160, 160))
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self._pixmap = QPixmap()
        self._words = ""
        self._fits = True
        self._zoom = 1.0
        self._middle = QPointF()  # of the picture, in its own pixels
        self._grip: QPointF | None = None

    def set_pixmap(self, pixmap: QPixmap) -> None:
        """Show a picture, fitted."""
        self._pixmap, self._words = pixmap, ""
        self.fit()

    def set_words(self, text: str) -> None:
        """Show words where the picture would be."""
        self._pixmap, self._words = QPixmap(), text
        self.fit()

    def has_picture(self) -> bool:
        """Whether a picture is shown."""
        return not self._pixmap.isNull()

    def is_fitted(self) -> bool:
        """Whether the picture follows the size of its place."""
        return self._fits

    def zoom(self) -> float:
        """Return how many device pixels a pixel of the picture takes."""
        return self._fit_zoom() if self._fits else self._zoom

    def fit(self) -> None:
        """Show all of the picture."""
        self._fits = True
        self._middle = QPointF(self._pixmap.width() / 2, self._pixmap.height() / 2)
        self._said()

    def zoom_to(self, zoom: float, at: QPointF | None = None) -> None:
        """Zoom, keeping what is at ``at`` (of this widget; its middle by default) in place."""
        if not self.has_picture():
            return
        place = at if at is not None else QPointF(self.width() / 2, self.height() / 2)
        held = self._picture_point(place)
        wanted = min(MOST_ZOOM, max(min(self._fit_zoom(), 1.0), zoom))
        self._fits = wanted <= self._fit_zoom() and self._fit_zoom() < 1.0
        self._zoom = wanted
        scale = self._scale()
        offset = place - QPointF(self.width() / 2, self.height() / 2)
        self._middle = held - offset / scale
        self._keep_inside()
        self._said()

    def zoom_in(self) -> None:
        """Zoom in by one step."""
        self.zoom_to(self.zoom() * STEP)

    def zoom_out(self) -> None:
        """Zoom out by one step."""
        self.zoom_to(self.zoom() / STEP)

    def can_pan(self) -> bool:
        """Whether the picture is larger than its place."""
        size = self._shown_size()
        return self.has_picture() and (
            size.width() > self.width() + 1 or size.height() > self.height() + 1
        )

    def middle(self) -> QPointF:
        """Return the point of the picture that is in the middle, in the picture's pixels."""
        return QPointF(self._middle)

    def pan(self, by: QPointF) -> None:
        """Move the picture by so many pixels of this widget."""
        self._middle -= by / self._scale()
        self._keep_inside()
        self.update()

    # Qt

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint picture or words, and who has the keyboard."""
        t = tokens()
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(t.wall))
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, self.zoom() < 4.0)
        if self.has_picture():
            size = self._shown_size()
            scale = self._scale()
            left = self.width() / 2 - self._middle.x() * scale
            top = self.height() / 2 - self._middle.y() * scale
            target = QRectF(left, top, size.width(), size.height())
            painter.drawPixmap(target, self._pixmap, QRectF(self._pixmap.rect()))
        else:
            painter.setPen(QColor(t.muted))
            flags = Qt.AlignmentFlag.AlignCenter.value | Qt.TextFlag.TextWordWrap.value
            area = self.rect().adjusted(4 * SPACE, 0, -4 * SPACE, 0)
            painter.drawText(area, flags, self._words)
        if self.hasFocus():
            painter.setPen(QPen(QColor(t.focus), 3))
            painter.drawRect(self.rect().adjusted(1, 1, -2, -2))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Stay fitted, or keep the middle."""
        super().resizeEvent(event)
        self._keep_inside()
        self.zoomed.emit()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Say that this one is meant now."""
        super().focusInEvent(event)
        self.taken_up.emit()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom at the pointer."""
        notches = event.angleDelta().y() / _WHEEL_NOTCH
        if notches:
            self.zoom_to(self.zoom() * STEP**notches, event.position())
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the picture."""
        super().mousePressEvent(event)
        if event.button() == Qt.MouseButton.LeftButton:
            self._grip = event.position()
            self.setCursor(Qt.CursorShape.ClosedHandCursor)
            event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move it along."""
        if self._grip is not None:
            self.pan(event.position() - self._grip)
            self._grip = event.position()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        super().mouseReleaseEvent(event)
        self._grip = None
        self.setCursor(Qt.CursorShape.OpenHandCursor)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Go between all of it and every pixel of it."""
        if self._fits:
            self.zoom_to(1.0, event.position())
        else:
            self.fit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Zoom and move by keyboard."""
        key = event.key()
        steps = {
            Qt.Key.Key_Left: QPointF(_PAN_PX, 0),
            Qt.Key.Key_Right: QPointF(-_PAN_PX, 0),
            Qt.Key.Key_Up: QPointF(0, _PAN_PX),
            Qt.Key.Key_Down: QPointF(0, -_PAN_PX),
        }
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_in()
        elif key == Qt.Key.Key_Minus:
            self.zoom_out()
        elif key == Qt.Key.Key_0:
            self.fit()
        elif key == Qt.Key.Key_1:
            self.zoom_to(1.0)
        elif key in steps and self.can_pan():
            self.pan(steps[Qt.Key(key)])
        else:
            event.ignore()

    # geometry

    def _scale(self) -> float:
        """Return how many of this widget's pixels a pixel of the picture takes."""
        return self.zoom() / self.devicePixelRatioF()

    def _shown_size(self) -> QSize:
        scale = self._scale()
        return QSize(round(self._pixmap.width() * scale), round(self._pixmap.height() * scale))

    def _fit_zoom(self) -> float:
        if not self.has_picture():
            return 1.0
        ratio = self.devicePixelRatioF()
        wide = self.width() * ratio / self._pixmap.width()
        high = self.height() * ratio / self._pixmap.height()
        return max(0.001, min(wide, high, 1.0))

    def _picture_point(self, place: QPointF) -> QPointF:
        offset = place - QPointF(self.width() / 2, self.height() / 2)
        return self._middle + offset / self._scale()

    def _keep_inside(self) -> None:
        """Leave no empty strip where there is picture, and centre what is smaller."""
        scale = self._scale()
        half_wide, half_high = self.width() / 2 / scale, self.height() / 2 / scale
        wide, high = float(self._pixmap.width()), float(self._pixmap.height())
        x = wide / 2 if half_wide * 2 >= wide else _within(self._middle.x(), half_wide, wide)
        y = high / 2 if half_high * 2 >= high else _within(self._middle.y(), half_high, high)
        self._middle = QPointF(x, y)

    def _said(self) -> None:
        self.update()
        self.zoomed.emit()


def _within(middle: float, half: float, whole: float) -> float:
    return min(whole - half, max(half, middle))
