"""The legend of the acidity chart: a flow of samples with their words, drawn in one widget."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, auto

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.widgets.theme import SPACE, Tokens, tokens

_SAMPLE_PX = 22.0
_GAP_PX = 6.0
_TYPE_SCALE = 0.88


class Look(Enum):
    """How a sample is drawn."""

    DOT = auto()
    DIAMOND = auto()
    HOLLOW = auto()
    MEDIAN = auto()
    IMAGINED = auto()
    INNER = auto()
    OUTER = auto()
    WINDOW = auto()
    BAND = auto()
    LIMIT = auto()


@dataclass(frozen=True, slots=True)
class LegendEntry:
    """One sample and what it stands for."""

    look: Look
    text: str


class ChartLegend(QWidget):
    """Lay the entries out like words on a page, as many lines as the width asks for."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._entries: tuple[LegendEntry, ...] = ()
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setObjectName("chart_legend")

    def set_entries(self, entries: tuple[LegendEntry, ...]) -> None:
        """Show these entries, in their order."""
        if entries == self._entries:  # laying the page out again is seen
            return
        self._entries = entries
        text = ", ".join(entry.text for entry in entries)
        self.setAccessibleName(self.tr("Legend: {entries}").format(entries=text) if text else "")
        self.updateGeometry()
        self.update()

    def entries(self) -> tuple[LegendEntry, ...]:
        """Return the entries shown."""
        return self._entries

    def hasHeightForWidth(self) -> bool:
        """Tell the layout that the lines wrap."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height of the wrapped lines."""
        places = self._places(width)
        return round(places[-1].bottom()) if places else 0

    def sizeHint(self) -> QSize:
        """Ask for two lines' room; the width decides in the end."""
        return QSize(320, self.heightForWidth(max(320, self.width())))

    def minimumSizeHint(self) -> QSize:
        """Never less than the longest entry."""
        widths = [self._entry_width(entry) for entry in self._entries]
        return QSize(round(max(widths, default=0.0)), round(self._line_height()))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw samples and words."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._type())
        colours = tokens()
        for entry, place in zip(self._entries, self._places(self.width()), strict=True):
            sample = QRectF(place.left(), place.top(), _SAMPLE_PX, place.height())
            _draw_sample(painter, entry.look, sample, colours)
            painter.setPen(QColor(colours.muted))
            words = place.adjusted(_SAMPLE_PX + _GAP_PX, 0, SPACE, 0)
            painter.drawText(words, Qt.AlignmentFlag.AlignVCenter, entry.text)
        painter.end()

    def _type(self) -> QFont:
        font = QFont(self.font())
        font.setPointSizeF(font.pointSizeF() * _TYPE_SCALE)
        return font

    def _line_height(self) -> float:
        return QFontMetricsF(self._type()).height() + _GAP_PX

    def _entry_width(self, entry: LegendEntry) -> float:
        words = QFontMetricsF(self._type()).horizontalAdvance(entry.text)
        return _SAMPLE_PX + _GAP_PX + words

    def _places(self, width: int) -> list[QRectF]:
        places: list[QRectF] = []
        x = y = 0.0
        height = self._line_height()
        for entry in self._entries:
            wide = self._entry_width(entry)
            if x > 0 and x + wide > width:
                x, y = 0.0, y + height
            places.append(QRectF(x, y, wide, height))
            x += wide + 2 * SPACE
        return places


def _draw_sample(painter: QPainter, look: Look, room: QRectF, colours: Tokens) -> None:
    middle = room.center()
    bar = QRectF(room.left(), middle.y() - 5.5, room.width(), 11)
    painter.setPen(Qt.PenStyle.NoPen)
    if look in (Look.DOT, Look.HOLLOW):
        hollow = look is Look.HOLLOW
        painter.setPen(QPen(QColor(colours.ink), 1.5))
        painter.setBrush(QColor(colours.surface if hollow else colours.ink))
        painter.drawEllipse(middle, 4.5, 4.5)
    elif look is Look.DIAMOND:
        painter.setBrush(QColor(colours.ink))
        corners = ((0, -6), (6, 0), (0, 6), (-6, 0))
        painter.drawPolygon(QPolygonF([middle + QPointF(x, y) for x, y in corners]))
    elif look in (Look.INNER, Look.OUTER):
        painter.setBrush(QColor(colours.band_inner if look is Look.INNER else colours.band_outer))
        painter.drawRoundedRect(bar, 2, 2)
    elif look is Look.WINDOW:
        painter.setBrush(QColor(colours.window))
        painter.drawRect(bar)
        painter.setPen(QPen(QColor(colours.warn), 1))
        painter.drawLine(bar.topLeft(), bar.bottomLeft())
        painter.drawLine(bar.topRight(), bar.bottomRight())
    elif look is Look.BAND:
        tint = QColor(colours.good)
        tint.setAlpha(40)
        painter.setBrush(tint)
        painter.drawRect(bar)
        painter.setPen(QPen(QColor(colours.good), 1, Qt.PenStyle.DotLine))
        painter.drawLine(bar.topLeft(), bar.topRight())
        painter.drawLine(bar.bottomLeft(), bar.bottomRight())
    else:
        colour, style = {
            Look.MEDIAN: (colours.accent, Qt.PenStyle.SolidLine),
            Look.IMAGINED: (colours.ink, Qt.PenStyle.DashLine),
        }.get(look, (colours.danger, Qt.PenStyle.DashLine))
        painter.setPen(QPen(QColor(colour), 2, style))
        painter.drawLine(QPointF(room.left(), middle.y()), QPointF(room.right(), middle.y()))
