"""The shelf: vessels standing on boards, in an item view with a delegate.

The view owns the scale (pixels to the centimetre), so that all jars stay true to
one another; it is chosen so that the boards fill the room there is.
"""

from __future__ import annotations

import math

from PySide6.QtCore import (
    QAbstractItemModel,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetrics,
    QLinearGradient,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from brewdesk.models.shelf import JAR_ROLE, WORDS_ROLE
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.shelf import JarWords
from brewdesk.widgets.jarlook import look_of
from brewdesk.widgets.jarpainter import paint_jar, total_height_cm, widest_cm
from brewdesk.widgets.theme import SPACE, tokens

LEAST_JAR_PX = 132.0
MOST_JAR_PX = 330.0
CELL_LEAST_PX = 176
BOARD_PX = 12
HEADROOM_PX = 18
LINES = 3

Index = QModelIndex | QPersistentModelIndex


class JarDelegate(QStyledItemDelegate):
    """Paints one jar on its board with its three lines below."""

    def __init__(self, view: ShelfView) -> None:
        super().__init__(view)
        self._view = view

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
        paint_jar(painter, foot, self._view.scale_px_per_cm, look, tokens())
        self._paint_words(painter, box, words)

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


class ShelfView(QListView):
    """Boards with jars. Emits ``jar_opened`` on Enter or double click."""

    jar_opened = Signal(int)
    jar_chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("shelf_view")
        self.setAccessibleName(self.tr("Shelf"))
        self.scale_px_per_cm = 8.0
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setStyleSheet("QListView { background: transparent; border: none; }")
        self.setViewMode(QListView.ViewMode.IconMode)
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setMovement(QListView.Movement.Static)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSpacing(0)
        self.setItemDelegate(JarDelegate(self))
        self.activated.connect(self._on_activated)
        self._fonts: tuple[QFont, QFont] | None = None
        self._words_px: tuple[int, int] | None = None  # room for the words: width, height
        self._tallest: float | None = None  # asked for by every cell, found once

    def setModel(self, model: QAbstractItemModel | None) -> None:
        """Show another model."""
        if model is not None:  # before the view's own slots: they ask for sizes at once
            for signal in (
                model.dataChanged,
                model.rowsInserted,
                model.rowsRemoved,
                model.modelReset,
            ):
                signal.connect(self._forget_tallest)
        self._forget_tallest()
        super().setModel(model)

    def _forget_tallest(self, *_what: object) -> None:
        self._tallest = None

    # --- geometry shared with the delegate -------------------------------------------

    def fonts(self) -> tuple[QFont, QFont]:
        """Fonts of the name and of the lines below it."""
        if self._fonts is None:
            name = QFont(self.font())
            name.setWeight(QFont.Weight.DemiBold)
            small = QFont(self.font())
            small.setPointSizeF(self.font().pointSizeF() * 0.92)
            self._fonts = (name, small)
        return self._fonts

    def text_height(self) -> int:
        """Height of the words below a board."""
        return self._room_for_words()[1]

    def _room_for_words(self) -> tuple[int, int]:
        if self._words_px is None:
            name, small = (QFontMetrics(font) for font in self.fonts())
            high = name.height() + (LINES - 1) * (small.height() + 4) + 3 * SPACE
            self._words_px = (small.averageCharWidth() * 25, high)
        return self._words_px

    def jar_area(self) -> float:
        """Height from a row's top to the board."""
        return HEADROOM_PX + self._tallest_cm() * self.scale_px_per_cm

    def row_height(self) -> int:
        """Height of one board with jars above and words below."""
        return round(self.jar_area() + BOARD_PX + SPACE + self.text_height())

    def cell_width(self, jar: JarView) -> int:
        """Width of one jar's cell at the scale in use."""
        return self._cell_width_at(jar, self.scale_px_per_cm)

    def _cell_width_at(self, jar: JarView, scale: float) -> int:
        return self._cell_width_of(widest_cm(look_of(jar)), self._room_for_words()[0], scale)

    @staticmethod
    def _cell_width_of(jar_cm: float, words_px: int, scale: float) -> int:
        return max(CELL_LEAST_PX, words_px, math.ceil(jar_cm * scale * 1.12) + 32)

    def _jars(self) -> list[JarView]:
        model = self.model()
        if model is None:
            return []
        return [model.index(row, 0).data(JAR_ROLE) for row in range(model.rowCount())]

    def _tallest_cm(self) -> float:
        if self._tallest is None:
            heights = (total_height_cm(look_of(jar)) for jar in self._jars())
            self._tallest = max(heights, default=20.0)
        return self._tallest

    def fit_scale(self) -> None:
        """Choose the scale so that all boards fit the window, within readable limits."""
        jars = self._jars()
        if not jars:
            return
        tallest = self._tallest_cm()
        fitting = self._fitting_scale(jars, tallest)
        # With a scroll bar "as needed" Qt keeps its width free even when it is not needed.
        self.setVerticalScrollBarPolicy(
            Qt.ScrollBarPolicy.ScrollBarAsNeeded
            if fitting is None
            else Qt.ScrollBarPolicy.ScrollBarAlwaysOff
        )
        best = LEAST_JAR_PX / tallest if fitting is None else fitting
        if abs(best - self.scale_px_per_cm) > 0.01:
            self.scale_px_per_cm = best
            self.scheduleDelayedItemsLayout()
            self.viewport().update()

    def _fitting_scale(self, jars: list[JarView], tallest: float) -> float | None:
        """Largest scale at which all boards are seen at once; None if there is none."""
        room_w = max(200, self.width() - 2 * self.frameWidth())
        room_h = max(200, self.height() - 2 * self.frameWidth())
        around = HEADROOM_PX + BOARD_PX + SPACE + self.text_height()
        widths_cm = [widest_cm(look_of(jar)) for jar in jars]
        best: float | None = None
        for rows in range(1, len(jars) + 1):
            height = min(MOST_JAR_PX, room_h / rows - around - 1)
            if height < LEAST_JAR_PX:
                break
            # Fewer, wider jars on a board may force a smaller scale than its height allows.
            scale = height / tallest
            least = LEAST_JAR_PX / tallest
            while scale >= least and self._rows_needed(widths_cm, scale, room_w) > rows:
                scale *= 0.97
            if scale >= least and (best is None or scale > best):
                best = scale
        return best

    def _rows_needed(self, widths_cm: list[float], scale: float, room_w: int) -> int:
        words_px = self._room_for_words()[0]
        rows, used = 1, 0
        for jar_cm in widths_cm:
            wide = self._cell_width_of(jar_cm, words_px, scale)
            if used and used + wide > room_w:
                rows, used = rows + 1, 0
            used += wide
        return rows

    def refresh_looks(self) -> None:
        """Lay out again after jars, fonts or colours changed."""
        self._fonts = self._words_px = None
        self.fit_scale()
        self.scheduleDelayedItemsLayout()
        self.viewport().update()

    # --- choosing --------------------------------------------------------------------

    def choose(self, row: int) -> None:
        """Make ``row`` the current jar."""
        model = self.model()
        if model is not None and 0 <= row < model.rowCount():
            self.setCurrentIndex(model.index(row, 0))

    def currentChanged(self, current: Index, previous: Index) -> None:
        """Tell which jar is current."""
        super().currentChanged(current, previous)
        if current.isValid():
            self.jar_chosen.emit(current.data(JAR_ROLE).vessel.id)

    def _on_activated(self, index: QModelIndex) -> None:
        self.jar_opened.emit(index.data(JAR_ROLE).vessel.id)

    # --- painting --------------------------------------------------------------------

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Refit the scale to the new room."""
        self.fit_scale()
        super().resizeEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint wall and boards, then let the view place the jars."""
        painter = QPainter(self.viewport())
        t = tokens()
        area = self.viewport().rect()
        light = QLinearGradient(0, 0, 0, area.height())
        light.setColorAt(0.0, QColor(t.wall).lighter(103))
        light.setColorAt(1.0, QColor(t.wall))
        painter.fillRect(area, light)
        for y in self._board_tops():
            self._paint_board(painter, QRect(0, y, area.width(), BOARD_PX))
        painter.end()
        super().paintEvent(event)

    def _board_tops(self) -> list[int]:
        model = self.model()
        if model is None:
            return []
        tops = {
            round(self.visualRect(model.index(row, 0)).top() + self.jar_area())
            for row in range(model.rowCount())
        }
        return sorted(tops)

    def _paint_board(self, painter: QPainter, board: QRect) -> None:
        t = tokens()
        wood = QLinearGradient(board.topLeft(), board.bottomLeft())
        wood.setColorAt(0.0, QColor(t.board).lighter(112))
        wood.setColorAt(0.25, QColor(t.board))
        wood.setColorAt(1.0, QColor(t.board_edge))
        painter.fillRect(board, wood)
        shadow = QRect(board.left(), board.bottom() + 1, board.width(), 7)
        fade = QLinearGradient(shadow.topLeft(), shadow.bottomLeft())
        fade.setColorAt(0.0, QColor(0, 0, 0, 46))
        fade.setColorAt(1.0, QColor(0, 0, 0, 0))
        painter.fillRect(shadow, fade)
