"""How the levels of a trial look: each by colour, by dashes and by the shape of its points."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.widgets.theme import SPACE, Tokens, tokens

_SAMPLE_PX = 40.0
_MARK_PX = 5.0


@dataclass(frozen=True, slots=True)
class ArmLook:
    """One level's look: the token of its colour, its dashes (empty is solid), its mark."""

    token: str
    dashes: tuple[float, ...]
    symbol: str  # as the plot names it: o s t d star x

    def colour(self, colours: Tokens) -> str:
        """Return the colour in a scheme."""
        return str(getattr(colours, self.token))


ARM_LOOKS = (
    ArmLook("accent", (), "o"),
    ArmLook("warn", (6.0, 3.0), "s"),
    ArmLook("ink", (2.0, 2.0), "t"),
    ArmLook("good", (8.0, 3.0, 2.0, 3.0), "d"),
    ArmLook("muted", (10.0, 4.0), "t1"),
    ArmLook("edge", (3.0, 3.0, 1.0, 3.0), "x"),
)
HIDDEN = ArmLook("muted", (), "o")


def look_of(arm: int | None) -> ArmLook:
    """Return the look of the level with this number; all alike while it is hidden."""
    return HIDDEN if arm is None else ARM_LOOKS[arm % len(ARM_LOOKS)]


def draw_mark(painter: QPainter, symbol: str, at: QPointF, size: float) -> None:
    """Draw a level's mark with the painter's pen and brush."""
    if symbol == "o":
        painter.drawEllipse(at, size, size)
        return
    corners = {
        "s": ((-1, -1), (1, -1), (1, 1), (-1, 1)),
        "t": ((0, 1.1), (1.1, -0.9), (-1.1, -0.9)),
        "t1": ((0, -1.1), (1.1, 0.9), (-1.1, 0.9)),
        "d": ((0, -1.3), (1.1, 0), (0, 1.3), (-1.1, 0)),
        "x": ((-1, -1), (1, 1), (0, 0), (1, -1), (-1, 1), (0, 0)),
    }[symbol]
    painter.drawPolygon(QPolygonF([at + QPointF(x * size, y * size) for x, y in corners]))


class ArmLegend(QWidget):
    """Which look is which level, in a row that wraps."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._names: tuple[str, ...] = ()
        self.setObjectName("arm_legend")
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def set_names(self, names: tuple[str, ...]) -> None:
        """Show the levels in their order."""
        self._names = names
        self.setAccessibleName(self.tr("Legend: {names}").format(names=", ".join(names)))
        self.setVisible(bool(names))
        self.updateGeometry()
        self.update()

    def hasHeightForWidth(self) -> bool:
        """Tell the layout that the lines wrap."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height of the wrapped lines."""
        places = self._places(width)
        return round(places[-1].bottom()) if places else 0

    def sizeHint(self) -> QSize:
        """Ask for one line."""
        return QSize(320, self.heightForWidth(max(320, self.width())))

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw samples and names."""
        painter, colours = QPainter(self), tokens()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for n, (name, place) in enumerate(
            zip(self._names, self._places(self.width()), strict=True)
        ):
            look = look_of(n)
            colour = QColor(look.colour(colours))
            middle = QPointF(place.left() + _SAMPLE_PX / 2, place.center().y())
            pen = QPen(colour, 3.0)
            if look.dashes:
                pen.setDashPattern([part / 1.5 for part in look.dashes])
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
            painter.setPen(pen)
            half = QPointF(_SAMPLE_PX / 2, 0)
            painter.drawLine(middle - half, middle + half)
            painter.setPen(QPen(QColor(colours.surface), 1.5))
            painter.setBrush(colour)
            draw_mark(painter, look.symbol, middle, _MARK_PX)
            painter.setPen(QColor(colours.ink))
            words = place.adjusted(_SAMPLE_PX + SPACE, 0, 0, 0)
            shown = painter.fontMetrics().elidedText(
                name, Qt.TextElideMode.ElideRight, int(words.width())
            )
            painter.drawText(
                words, int(Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextSingleLine), shown
            )
        painter.end()

    def _places(self, width: int) -> list[QRectF]:
        metrics = QFontMetricsF(self.font())
        height = metrics.height() + SPACE
        places: list[QRectF] = []
        x = y = 0.0
        for name in self._names:
            wide = min(_SAMPLE_PX + SPACE + metrics.horizontalAdvance(name) + 2, float(width))
            if x > 0 and x + wide > width:
                x, y = 0.0, y + height
            places.append(QRectF(x, y, wide, height))
            x += wide + 3 * SPACE
        return places
