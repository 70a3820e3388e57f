"""Paints one jar on its board, with its words below and what it answers to a carrying."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from brewdesk.models.shelf import JAR_ROLE, WORDS_ROLE
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.shelf import JarWords
from brewdesk.widgets.dropmarks import paint_mark
from brewdesk.widgets.jarlook import look_of
from brewdesk.widgets.jarpictures import JarPictures
from brewdesk.widgets.theme import SPACE, tokens

if TYPE_CHECKING:
    from brewdesk.widgets.shelfview import ShelfView

BOARD_PX = 12
Index = QModelIndex | QPersistentModelIndex


class JarDelegate(QStyledItemDelegate):
    """Paints one jar on its board with its three lines below."""

    def __init__(self, view: ShelfView) -> None:
        super().__init__(view)
        self._view = view
        self._pictures = JarPictures()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """As wide as jar and text need, as high as every other."""
        jar = index.data(JAR_ROLE)
        return QSize(self._view.cell_width(jar), self._view.row_height())

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw choice, jar and words."""
        jar: JarView = index.data(JAR_ROLE)
        words: JarWords = index.data(WORDS_ROLE)
        box = QRectF(option.rect)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        focused = bool(option.state & QStyle.StateFlag.State_HasFocus)
        self._paint_choice(painter, box, chosen=chosen, focused=focused)
        look = look_of(jar)
        foot = QPointF(box.center().x(), box.top() + self._view.jar_area())
        self._pictures.paint(
            painter,
            foot,
            self._view.scale_px_per_cm,
            look,
            tokens(),
            ratio=self._view.devicePixelRatioF(),
        )
        self._paint_words(painter, box, words)
        mark = self._view.mark_of(jar)
        if mark is not None:
            paint_mark(painter, option.rect.adjusted(2, 2, -2, -2), mark)

    def _paint_choice(self, painter: QPainter, box: QRectF, *, chosen: bool, focused: bool) -> None:
        if not chosen and not focused:
            return
        t = tokens()
        frame = box.adjusted(4, 4, -4, -4)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ground = QColor(t.accent)
        ground.setAlpha(38 if chosen else 0)
        painter.setBrush(ground)
        painter.setPen(QPen(QColor(t.accent), 2.0 if focused else 1.2))
        painter.drawRoundedRect(frame, 12, 12)
        painter.restore()

    def _paint_words(self, painter: QPainter, box: QRectF, words: JarWords) -> None:
        t = tokens()
        fonts = self._view.fonts()
        y = box.top() + self._view.jar_area() + BOARD_PX + SPACE
        width = box.width() - 2 * SPACE
        painter.save()
        for text, font, colour in (
            (words.name, fonts[0], t.ink),
            (words.state, fonts[1], t.ink),
        ):
            metrics = QFontMetrics(font)
            painter.setFont(font)
            painter.setPen(QColor(colour))
            line = QRectF(box.left() + SPACE, y, width, metrics.height())
            shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, int(width))
            painter.drawText(line, Qt.AlignmentFlag.AlignCenter, shown)
            y += metrics.height() + 2
        self._paint_coming(painter, box, y + 2, words, fonts[1])
        painter.restore()

    def _paint_coming(
        self, painter: QPainter, box: QRectF, y: float, words: JarWords, font: QFont
    ) -> None:
        if not words.coming and words.urgent != "danger":
            return
        t = tokens()
        metrics = QFontMetrics(font)
        mark = {"due": "!  ", "danger": "!!  "}.get(words.urgent, "")
        ink = {"due": t.warn, "danger": t.danger}.get(words.urgent, t.muted)
        ground = {"due": t.warn_soft, "danger": t.danger_soft}.get(words.urgent)
        room = int(box.width() - 4 * SPACE)
        text = metrics.elidedText(mark + words.coming, Qt.TextElideMode.ElideRight, room)
        wide = metrics.horizontalAdvance(text)
        line = QRectF(box.center().x() - wide / 2, y, wide, metrics.height())
        painter.setFont(font)
        if ground is not None:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(ink), 1))
            painter.setBrush(QColor(ground))
            pill = line.adjusted(-SPACE, -2, SPACE, 2)
            painter.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2)
        painter.setPen(QColor(ink))
        painter.drawText(line, Qt.AlignmentFlag.AlignCenter, text)
