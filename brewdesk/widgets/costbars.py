"""A batch's cost as a bar of its parts, and what the colours stand for."""

from __future__ import annotations

from fractions import Fraction

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QHBoxLayout,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from brewdesk.models.rowtable import ROW_ROLE
from brewdesk.services.batchcosts import BatchCost
from brewdesk.services.records import SupplyKind
from brewdesk.services.wording.stores import kind_words
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.findslist import Index, paint_ground
from brewdesk.widgets.flowlayout import FlowLayout
from brewdesk.widgets.supplylist import fill_colour
from brewdesk.widgets.theme import SPACE, tokens

_BAR_PX = 16
_SWATCH_PX = 14


def _hatch() -> QBrush:
    return QBrush(QColor(tokens().muted), Qt.BrushStyle.BDiagPattern)


class CostBar(QStyledItemDelegate):
    """Paints the parts that are paid in ``currency``, to one scale for all rows.

    What has no price is a hatched end: the bar may be longer.
    """

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.currency = ""
        self.most = Fraction(0)

    def set_scale(self, rows: tuple[BatchCost, ...], currency: str) -> None:
        """Let the dearest row fill the bar."""
        self.currency = currency
        sums = [dict(row.total.known).get(currency, Fraction(0)) for row in rows]
        self.most = max(sums, default=Fraction(0))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint the bar of one batch."""
        row: BatchCost = index.data(ROW_ROLE)
        painter.save()
        paint_ground(painter, option)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(option.rect).adjusted(SPACE, 0, -SPACE, 0)
        top = box.center().y() - _BAR_PX / 2
        at = box.left()
        room = box.width() - _BAR_PX
        for kind, cost in row.parts:
            money = dict(cost.known).get(self.currency, Fraction(0))
            if not money or not self.most:
                continue
            width = max(2.0, float(money / self.most) * room)
            part = QRectF(at, top, width, _BAR_PX)
            painter.fillRect(part, fill_colour(kind))
            painter.setPen(QPen(QColor(tokens().surface), 1))
            painter.drawLine(part.topRight(), part.bottomRight())
            at += width
        if not row.total.is_complete:
            end = QRectF(at, top, _BAR_PX, _BAR_PX)
            painter.setPen(QPen(QColor(tokens().edge), 1))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.fillRect(end, _hatch())
            painter.drawRect(end)
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Ask for a bar's room, whatever the words are that stand for it."""
        del index
        return QSize(14 * SPACE, option.fontMetrics.height())


class _Swatch(QWidget):
    def __init__(self, kind: SupplyKind | None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._kind = kind
        self.setFixedSize(_SWATCH_PX, _SWATCH_PX)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        box = QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
        painter.setPen(QPen(QColor(tokens().edge), 1))
        if self._kind is None:
            painter.fillRect(box, _hatch())
        else:
            painter.fillRect(box, fill_colour(self._kind))
        painter.drawRect(box)


class CostLegend(QWidget):
    """What the colours of the bars stand for; only those that occur."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._flow = FlowLayout(self)
        self._cells: dict[SupplyKind | None, QWidget] = {}
        for kind in (*SupplyKind, None):
            cell = QWidget(self)
            row = QHBoxLayout(cell)
            row.setContentsMargins(0, 0, SPACE, 0)
            row.setSpacing(SPACE // 2)
            row.addWidget(_Swatch(kind, cell))
            words = self.tr("no price known") if kind is None else kind_words(kind)
            row.addWidget(plain_label(words, "label", cell))
            self._cells[kind] = cell
            self._flow.addWidget(cell)

    def show_kinds(self, rows: tuple[BatchCost, ...]) -> None:
        """Name the kinds of parts that these rows have."""
        kinds: set[SupplyKind | None] = {
            kind for row in rows for kind, cost in row.parts if cost.known
        }
        if any(not row.total.is_complete for row in rows):
            kinds.add(None)
        for kind, cell in self._cells.items():
            cell.setVisible(kind in kinds)
