"""The supplies as caddies on a board, each filled as far as there is something left in it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter, QPainterPath, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from brewdesk.models.rowtable import ROW_ROLE
from brewdesk.models.supplies import SuppliesModel
from brewdesk.services.records import SupplyKind
from brewdesk.services.stockviews import StockView
from brewdesk.widgets.findslist import Index, paint_ground
from brewdesk.widgets.theme import SPACE, tokens

_CADDY_WIDTH = 30
_LID_PX = 6
_LONGEST = 400  # characters of a name that are measured at all


def fill_colour(kind: SupplyKind) -> QColor:
    """Return the colour in which a kind of supply is drawn, here and in the costs."""
    t = tokens()
    return QColor(
        {
            SupplyKind.TEA: t.board,
            SupplyKind.SUGAR: t.window if t.name == "light" else t.pellicle,
            SupplyKind.FLAVOURING: t.good,
            SupplyKind.BOTTLE: t.band_inner,
            SupplyKind.CLOSURE: t.glass,
            SupplyKind.OTHER: t.edge,
        }[kind]
    )


def paint_caddy(painter: QPainter, box: QRectF, view: StockView) -> None:
    """Draw a caddy: what is left of the open lots, and a tick at the maker's mark."""
    t = tokens()
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    body = box.adjusted(1.0, _LID_PX, -1.0, -1.0)
    path = QPainterPath()
    path.addRoundedRect(body, 4.0, 4.0)
    painter.fillPath(path, QColor(t.sunken))
    share = min(max(view.share_left, 0.0), 1.0)
    if share > 0.0:
        painter.save()
        painter.setClipPath(path)
        height = max(2.0, body.height() * share)
        colour = QColor(t.warn) if view.is_low else fill_colour(view.supply.kind)
        painter.fillRect(QRectF(body.left(), body.bottom() - height, body.width(), height), colour)
        painter.restore()
    painter.setPen(QPen(QColor(t.edge), 1.4))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(path)
    lid = QRectF(body.left() + 3.0, box.top(), body.width() - 6.0, _LID_PX - 1.0)
    painter.setBrush(QColor(t.edge))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.drawRoundedRect(lid, 2.0, 2.0)
    mark = view.supply.low_amount
    if mark and view.capacity > mark:
        y = body.bottom() - body.height() * mark / view.capacity
        painter.setPen(QPen(QColor(t.ink), 1.6))
        painter.drawLine(QPointF(body.right() - 7.0, y), QPointF(body.right() + 3.0, y))
    painter.restore()


class _Rows(QStyledItemDelegate):
    """Caddy, name and amount left; below the kind and price, and what is to be minded."""

    def __init__(self, model: SuppliesModel, parent: QWidget) -> None:
        super().__init__(parent)
        self._model = model

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        del index
        return QSize(20 * SPACE, 3 * QFontMetrics(option.font).height() + 2 * SPACE)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        view: StockView = index.data(ROW_ROLE)
        painter.save()
        paint_ground(painter, option)
        box = option.rect.adjusted(2 * SPACE, SPACE, -2 * SPACE, -SPACE)
        caddy = QRectF(box.left(), box.top(), _CADDY_WIDTH, box.height())
        paint_caddy(painter, caddy, view)
        words = box.adjusted(_CADDY_WIDTH + 2 * SPACE, 0, 0, 0)
        self._paint_words(painter, option, words, view)
        painter.setPen(QColor(tokens().line))
        painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight())
        painter.restore()

    def _paint_words(
        self, painter: QPainter, option: QStyleOptionViewItem, box: QRect, view: StockView
    ) -> None:
        t, model = tokens(), self._model
        is_off = view.supply.retired_at is not None
        plain = QFontMetrics(option.font)
        strong_font = QFont(option.font)
        strong_font.setWeight(QFont.Weight.DemiBold)
        strong = QFontMetrics(strong_font)
        line = plain.height()
        left = model.left(view)
        left_width = strong.horizontalAdvance(left)
        upper = QRect(box.left(), box.top(), box.width(), line)
        painter.setFont(strong_font)
        painter.setPen(QColor(t.warn if view.is_low else t.muted if is_off else t.ink))
        painter.drawText(upper, Qt.AlignmentFlag.AlignRight, left)
        painter.setPen(QColor(t.muted if is_off else t.ink))
        room = box.width() - left_width - 2 * SPACE
        name = " ".join(view.supply.name.split())
        painter.drawText(upper, Qt.AlignmentFlag.AlignLeft, _cut(strong, name, room))
        painter.setFont(option.font)
        painter.setPen(QColor(t.muted))
        middle = upper.translated(0, line)
        detail = _cut(plain, model.detail(view), box.width())
        painter.drawText(middle, Qt.AlignmentFlag.AlignLeft, detail)
        notes = " ".join(model.notes(view))
        painter.setPen(QColor(t.warn if view.is_low or _is_weighty(view) else t.muted))
        lower = middle.translated(0, line)
        painter.drawText(lower, Qt.AlignmentFlag.AlignLeft, _cut(plain, notes, box.width()))


def _is_weighty(view: StockView) -> bool:
    return view.planned > view.left or any(lot.is_past_best for lot in view.lots)


def _cut(metrics: QFontMetrics, text: str, width: int) -> str:
    return metrics.elidedText(text[:_LONGEST], Qt.TextElideMode.ElideRight, width)


class SupplyList(QListView):
    """The list. ``chosen`` carries a supply's id, ``opened`` too: Enter or a double click."""

    chosen = Signal(int)
    opened = Signal(int)

    def __init__(self, model: SuppliesModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("supply_list")
        self.setAccessibleName(self.tr("What is in the stores"))
        self.setModel(model)
        self.setItemDelegate(_Rows(model, self))
        self.setUniformItemSizes(True)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.doubleClicked.connect(self._on_opened)
        self.selectionModel().currentChanged.connect(self._on_current)

    def supply_id(self) -> int | None:
        """Return the supply of the current row."""
        index = self.currentIndex()
        return index.data(ROW_ROLE).supply.id if index.isValid() else None

    def choose(self, supply_id: int) -> bool:
        """Go to a supply; False if it is not in the list."""
        model = self.model()
        assert isinstance(model, SuppliesModel)  # as it was made
        index = model.index_of(supply_id)
        if index.isValid():
            self.setCurrentIndex(index)
        return bool(index.isValid())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter lead on to the sheet."""
        index = self.currentIndex()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and index.isValid():
            self._on_opened(index)
        else:
            super().keyPressEvent(event)

    def _on_current(self, index: Index) -> None:
        if index.isValid():
            self.chosen.emit(index.data(ROW_ROLE).supply.id)

    def _on_opened(self, index: Index) -> None:
        self.opened.emit(index.data(ROW_ROLE).supply.id)
