"""The family of cultures, drawn: generations from left to right, lines from parent to child."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import (
    QEvent,
    QItemSelection,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
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
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QRegion,
    QResizeEvent,
)
from PySide6.QtWidgets import QAbstractItemView, QFrame, QListView, QWidget

from brewdesk.models.family import NODE_ROLE, FamilyModel
from brewdesk.models.familylayout import FamilyPlan, plan_family
from brewdesk.services.lineage import FamilyNode
from brewdesk.services.wording.cultures import age_words, place_words
from brewdesk.widgets.statesign import paint_state_sign
from brewdesk.widgets.theme import SPACE, theme, tokens

Index = QModelIndex | QPersistentModelIndex
_LETTERS = 18  # of a usual width that a card has room for
_SIGN = 14
_DRAG_PX = 4  # a hand's tremble is no drag


class FamilyView(QListView):
    """Cards in columns. Arrows walk: left to a parent, right to a child, up and down beside.

    Dragging the ground moves the drawing, as the scroll bars do. It is a list view, and
    not the bare item view, because only of a list do screen readers hear the entries.
    """

    culture_chosen = Signal(int)
    culture_opened = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plan: FamilyPlan = plan_family(())
        self._pan_from: QPoint | None = None
        self._pan_start = QPoint()
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.activated.connect(self._on_activated)
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._on_theme)

    # --- measures --------------------------------------------------------------------

    def card_size(self) -> QSize:
        """Return the size of every card, from the type in use."""
        metrics = QFontMetrics(self.font())
        width = metrics.averageCharWidth() * _LETTERS + _SIGN + 4 * SPACE
        return QSize(width, 3 * metrics.lineSpacing() + 2 * SPACE)

    def spot_rect(self, row: int) -> QRect:
        """Return where a card stands in the whole drawing, unscrolled."""
        spot, size = self._plan.spots[row], self.card_size()
        across, down = size.width() + 5 * SPACE, size.height() + 2 * SPACE
        return QRect(2 * SPACE + spot.column * across, 2 * SPACE + spot.row * down, *size.toTuple())

    def drawing_size(self) -> QSize:
        """Return how much room the whole family takes."""
        size = self.card_size()
        return QSize(
            self._plan.columns * (size.width() + 5 * SPACE) - SPACE,
            self._plan.rows * (size.height() + 2 * SPACE) + 2 * SPACE,
        )

    # --- what an item view has to answer ---------------------------------------------

    def visualRect(self, index: Index) -> QRect:
        """Return where a card is seen."""
        if not index.isValid() or index.row() >= len(self._plan.spots):
            return QRect()
        return self.spot_rect(index.row()).translated(-self._offset())

    def indexAt(self, point: QPoint) -> QModelIndex:
        """Return the card under a point of the viewport."""
        model = self.model()
        there = point + self._offset()
        for row in range(len(self._plan.spots)):
            if self.spot_rect(row).contains(there):
                return model.index(row, 0)
        return QModelIndex()

    def scrollTo(
        self,
        index: Index,
        hint: QAbstractItemView.ScrollHint = QAbstractItemView.ScrollHint.EnsureVisible,
    ) -> None:
        """Bring a card into view; from the middle on if that was asked for."""
        card = self.visualRect(index)
        if card.isNull():
            return
        seen = self.viewport().rect()
        if hint == QAbstractItemView.ScrollHint.PositionAtCenter:
            shift = card.center() - seen.center()
        else:
            wide = card.adjusted(-2 * SPACE, -2 * SPACE, 2 * SPACE, 2 * SPACE)
            shift = QPoint(
                min(0, wide.left() - seen.left()) or max(0, wide.right() - seen.right()),
                min(0, wide.top() - seen.top()) or max(0, wide.bottom() - seen.bottom()),
            )
        self._scroll_by(shift)

    def moveCursor(
        self,
        action: QAbstractItemView.CursorAction,
        modifiers: Qt.KeyboardModifier,
    ) -> QModelIndex:
        """Walk the family."""
        model, here = self.model(), self.currentIndex()
        if model is None or not self._plan.spots:
            return QModelIndex()
        if not here.isValid():
            return model.index(0, 0)
        row = self._row_for(action, here.row())
        return model.index(row, 0)

    def _row_for(self, action: QAbstractItemView.CursorAction, row: int) -> int:
        kinds = QAbstractItemView.CursorAction
        if action == kinds.MoveLeft:
            parent = self._plan.first_parent[row]
            return row if parent is None else parent
        if action == kinds.MoveRight:
            children = [child for above, child in self._plan.links if above == row]
            return min(children, key=lambda child: self._down_from(row, child), default=row)
        if action in (kinds.MoveUp, kinds.MoveDown):
            return self._beside(row, -1 if action == kinds.MoveUp else 1)
        if action in (kinds.MovePageUp, kinds.MovePageDown):
            return self._page(row, -1 if action == kinds.MovePageUp else 1)
        everyone = range(len(self._plan.spots))
        if action == kinds.MoveHome:
            return min(everyone, key=self._reading_order)
        if action == kinds.MoveEnd:
            return max(everyone, key=self._reading_order)
        step = {kinds.MoveNext: 1, kinds.MovePrevious: -1}.get(action, 0)
        return min(max(0, row + step), len(self._plan.spots) - 1)

    def _down_from(self, row: int, other: int) -> tuple[int, int]:
        spots = self._plan.spots
        return abs(spots[other].row - spots[row].row), other

    def _beside(self, row: int, way: int) -> int:
        """Return the next one above or below in the same column, else in any."""
        spots, here = self._plan.spots, self._plan.spots[row]
        ahead = [
            other
            for other, spot in enumerate(spots)
            if other != row and (spot.row - here.row) * way > 0
        ]
        same = [other for other in ahead if spots[other].column == here.column]
        return min(
            same or ahead,
            key=lambda other: (
                abs(spots[other].row - here.row),
                abs(spots[other].column - here.column),
            ),
            default=row,
        )

    def _page(self, row: int, way: int) -> int:
        height = self.spot_rect(row).height() + 2 * SPACE
        for _ in range(max(1, self.viewport().height() // height)):
            row = self._beside(row, way)
        return row

    def _reading_order(self, row: int) -> tuple[int, int]:
        return self._plan.spots[row].row, self._plan.spots[row].column

    def horizontalOffset(self) -> int:
        """Return how far the drawing is scrolled sideways."""
        return self.horizontalScrollBar().value()

    def verticalOffset(self) -> int:
        """Return how far the drawing is scrolled down."""
        return self.verticalScrollBar().value()

    def isIndexHidden(self, index: Index) -> bool:
        """Nobody is hidden."""
        return False

    def setSelection(self, rect: QRect, command: QItemSelectionModel.SelectionFlag) -> None:
        """Select the card that begins in ``rect``."""
        index = self.indexAt(rect.center() if rect.width() > 1 else rect.topLeft())
        chosen = QItemSelection(index, index) if index.isValid() else QItemSelection()
        self.selectionModel().select(chosen, command)

    def visualRegionForSelection(self, selection: QItemSelection) -> QRegion:
        """Return the region of the selected cards."""
        region = QRegion()
        for index in selection.indexes():
            region += self.visualRect(index)
        return region

    # --- choosing --------------------------------------------------------------------

    def choose(self, culture_id: int) -> bool:
        """Make a culture the current one and bring it into view; False if it is not here."""
        model = self._family()
        row = model.row_of(culture_id) if model is not None else -1
        if model is None or row < 0:
            return False
        index = model.index(row, 0)
        self.setCurrentIndex(index)
        self.scrollTo(index)
        return True

    def currentChanged(self, current: Index, previous: Index) -> None:
        """Tell which culture is current."""
        super().currentChanged(current, previous)
        if current.isValid():
            self.scrollTo(current)
            self.culture_chosen.emit(current.data(NODE_ROLE).culture.id)
        self.viewport().update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter open what is chosen; the rest is the item view's."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self._on_activated(self.currentIndex())
            return
        super().keyPressEvent(event)

    def _on_activated(self, index: Index) -> None:
        self.culture_opened.emit(index.data(NODE_ROLE).culture.id)

    # --- moving the drawing ----------------------------------------------------------

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin to drag the ground, or choose a card."""
        at = event.position().toPoint()
        if event.button() == Qt.MouseButton.LeftButton and not self.indexAt(at).isValid():
            self._pan_from, self._pan_start = at, self._offset()
            return
        super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag the ground along."""
        if self._pan_from is None:
            super().mouseMoveEvent(event)
            return
        shift = event.position().toPoint() - self._pan_from
        if shift.manhattanLength() >= _DRAG_PX:
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            wanted = self._pan_start - shift
            self.horizontalScrollBar().setValue(wanted.x())
            self.verticalScrollBar().setValue(wanted.y())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go of the ground."""
        if self._pan_from is None:
            super().mouseReleaseEvent(event)
            return
        self._pan_from = None
        self.viewport().unsetCursor()

    def _offset(self) -> QPoint:
        return QPoint(self.horizontalOffset(), self.verticalOffset())

    def _scroll_by(self, shift: QPoint) -> None:
        for bar, step in (
            (self.horizontalScrollBar(), shift.x()),
            (self.verticalScrollBar(), shift.y()),
        ):
            bar.setValue(bar.value() + step)

    # --- keeping up ------------------------------------------------------------------

    def replan(self) -> None:
        """Place everybody anew."""
        model = self._family()
        self._plan = plan_family(model.nodes if model is not None else ())
        self.updateGeometries()
        self.viewport().update()

    def doItemsLayout(self) -> None:  # noqa: N802  # Qt's own name
        """Place everybody; a list would set rows below one another."""
        self.replan()

    def reset(self) -> None:
        """Place everybody anew after the model changed as a whole."""
        super().reset()
        self.replan()

    def dataChanged(self, top: Index, bottom: Index, roles: Sequence[int] = ()) -> None:
        """Place everybody anew: a changed culture may have other parents."""
        super().dataChanged(top, bottom, list(roles))
        self.replan()

    def updateGeometries(self) -> None:
        """Fit the scroll bars to the drawing; a list's own rows do not count."""
        whole, seen = self.drawing_size(), self.viewport().size()
        for bar, length, room in (
            (self.horizontalScrollBar(), whole.width(), seen.width()),
            (self.verticalScrollBar(), whole.height(), seen.height()),
        ):
            bar.setRange(0, max(0, length - room))
            bar.setPageStep(room)
            bar.setSingleStep(4 * SPACE)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the scroll bars to the room."""
        super().resizeEvent(event)
        self.updateGeometries()

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        """Move the drawing."""
        self.viewport().update()

    def changeEvent(self, event: QEvent) -> None:
        """Place everybody anew when the type size changes."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self.updateGeometries()
            self.viewport().update()

    def _on_theme(self) -> None:
        self.updateGeometries()
        self.viewport().update()

    def _family(self) -> FamilyModel | None:
        model = self.model()
        return model if isinstance(model, FamilyModel) else None

    # --- painting --------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the lines, then the cards that can be seen."""
        painter = QPainter(self.viewport())
        painter.fillRect(self.viewport().rect(), QColor(tokens().ground))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_lines(painter, event.rect())
        model = self._family()
        nodes = model.nodes if model is not None else ()
        current = self.currentIndex().row()
        for row, node in enumerate(nodes):
            card = self.spot_rect(row).translated(-self._offset())
            if card.adjusted(-3, -3, 3, 3).intersects(event.rect()):
                self._paint_card(painter, card, node, is_current=row == current)
        painter.end()

    def _paint_lines(self, painter: QPainter, seen: QRect) -> None:
        t = tokens()
        offset = self._offset()
        for parent, child in self._plan.links:
            start = self.spot_rect(parent).translated(-offset)
            end = self.spot_rect(child).translated(-offset)
            if not start.united(end).intersects(seen):
                continue
            is_other = self._plan.first_parent[child] != parent
            style = Qt.PenStyle.DashLine if is_other else Qt.PenStyle.SolidLine
            painter.setPen(QPen(QColor(t.edge), 1.6, style))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            out = QPointF(start.right() + 1, start.center().y())
            into = QPointF(end.left(), end.center().y())
            painter.drawPath(_curve(out, into) if is_other else _elbow(out, into))

    def _paint_card(
        self, painter: QPainter, card: QRect, node: FamilyNode, *, is_current: bool
    ) -> None:
        t = tokens()
        ground = t.ground if node.is_gone else t.accent_soft if is_current else t.surface
        edge, width = (t.edge if node.is_gone else t.line), 1.0
        if node.is_suspect:
            ground, edge, width = t.danger_soft, t.danger, 1.4
        if is_current:
            edge, width = t.focus, 2.4 if self.hasFocus() else 1.6
        pen = QPen(QColor(edge), width)
        if node.is_gone and not is_current:
            pen.setStyle(Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.setBrush(QColor(ground))
        painter.drawRoundedRect(QRectF(card).adjusted(0.5, 0.5, -0.5, -0.5), SPACE, SPACE)
        self._paint_words(painter, card, node)

    def _paint_words(self, painter: QPainter, card: QRect, node: FamilyNode) -> None:
        t = tokens()
        strong = QFont(self.font())
        strong.setWeight(QFont.Weight.DemiBold)
        metrics = QFontMetrics(self.font())
        left, line = card.left() + SPACE + 4, metrics.lineSpacing()
        top = card.top() + SPACE
        sign = QRectF(left, top + (line - _SIGN) / 2, _SIGN, _SIGN)
        paint_state_sign(painter, sign, node.culture.state, t, is_suspect=node.is_suspect)
        beside = left + _SIGN + SPACE
        ink = t.muted if node.is_gone else t.ink
        second = self.tr("May carry mold") if node.is_suspect else place_words(node)
        rows = (
            (node.culture.name, strong, ink, beside),
            (second, self.font(), t.danger if node.is_suspect else ink, left),
            (age_words(node.age_days), self.font(), t.muted, left),
        )
        for text, font, colour, at in rows:
            room = card.right() - SPACE - at
            shown = QFontMetrics(font).elidedText(text, Qt.TextElideMode.ElideRight, room)
            painter.setFont(font)
            painter.setPen(QColor(colour))
            flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(QRect(at, top, room, line), flags, shown)
            top += line


def _elbow(out: QPointF, into: QPointF) -> QPainterPath:
    """Go down in the gap between two columns, so that no card is crossed."""
    path = QPainterPath(out)
    bend = (out.x() + into.x()) / 2
    drop = into.y() - out.y()
    turn = min(float(SPACE), abs(drop) / 2)
    down = turn if drop > 0 else -turn
    path.lineTo(bend - turn, out.y())
    path.quadTo(bend, out.y(), bend, out.y() + down)
    path.lineTo(bend, into.y() - down)
    path.quadTo(bend, into.y(), bend + turn, into.y())
    path.lineTo(into)
    return path


def _curve(out: QPointF, into: QPointF) -> QPainterPath:
    """Go to a child that stands beside another parent; cards are painted over it."""
    path = QPainterPath(out)
    bend = max(2.5 * SPACE, (into.x() - out.x()) / 2)
    path.cubicTo(QPointF(out.x() + bend, out.y()), QPointF(into.x() - bend, into.y()), into)
    return path
