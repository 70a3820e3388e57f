"""Dragging on the shelf: what is picked up, how it looks, and what the targets answer."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QDrag,
    QDropEvent,
    QFont,
    QFontMetrics,
    QGuiApplication,
    QPainter,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import QApplication, QWidget

from brewdesk.services.drops import Carried, CarriedKind, Target
from brewdesk.services.shelf import JarView
from brewdesk.widgets.carriage import Carriage, Way
from brewdesk.widgets.icons import pixmap
from brewdesk.widgets.theme import SPACE, tokens

CHIP_MOST_PX = 260
_BATCH_STAGES = ("souring", "tasting", "past_window", "planned", "brewing")


def carried_in(jar: JarView) -> tuple[Carried, ...]:
    """Return what a jar holds that may be carried: its batch, its culture, both or nothing."""
    found = []
    if jar.batch is not None and jar.stage_code in _BATCH_STAGES:
        found.append(Carried(CarriedKind.BATCH, jar.batch.id))
    if jar.culture is not None and jar.culture.vessel_id == jar.vessel.id:
        found.append(Carried(CarriedKind.CULTURE, jar.culture.id))
    return tuple(found)


def grabbed(jar: JarView, *, by_pellicle: bool) -> Carried | None:
    """Return what a hand gets hold of: the culture at the pellicle, elsewhere the batch."""
    found = carried_in(jar)
    if not found:
        return None
    wanted = CarriedKind.CULTURE if by_pellicle else CarriedKind.BATCH
    return next((carried for carried in found if carried.kind is wanted), found[0])


def is_far_enough(start: QPoint, now: QPoint) -> bool:
    """Whether a pressed mouse has moved so far that a drag is meant."""
    return (now - start).manhattanLength() >= QApplication.startDragDistance()


def run_drag(source: QWidget, carriage: Carriage, carried: Carried) -> None:
    """Carry something by a real drag; returns when the button was let go."""
    if not carriage.pick_up(carried, Way.DRAG):
        return
    drag = QDrag(source)
    drag.setMimeData(carriage.mime())
    chip = chip_of(carriage.name(), carried.kind)
    drag.setPixmap(chip)
    drag.setHotSpot(QPoint(-SPACE, -SPACE))  # beside the pointer: the target stays in sight
    drag.exec(Qt.DropAction.MoveAction)
    carriage.give_up()


def chip_of(name: str, kind: CarriedKind) -> QPixmap:
    """Paint the small label that follows the pointer."""
    t = tokens()
    font = QFont(QApplication.font())
    font.setWeight(QFont.Weight.DemiBold)
    metrics = QFontMetrics(font)
    text = metrics.elidedText(name, Qt.TextElideMode.ElideRight, CHIP_MOST_PX)
    side = 20
    size = QSize(metrics.horizontalAdvance(text) + side + 4 * SPACE, metrics.height() + 2 * SPACE)
    screen = QGuiApplication.primaryScreen()
    ratio = screen.devicePixelRatio() if screen is not None else 1.0
    made = QPixmap(size * ratio)
    made.setDevicePixelRatio(ratio)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor(t.accent), 2))
    painter.setBrush(QColor(t.surface))
    box = QRectF(1, 1, size.width() - 2, size.height() - 2)
    painter.drawRoundedRect(box, box.height() / 2, box.height() / 2)
    sign = "cultures" if kind is CarriedKind.CULTURE else "shelf"
    top = (size.height() - side) // 2
    painter.drawPixmap(round(1.5 * SPACE), top, pixmap(sign, t.ink, side))
    painter.setFont(font)
    painter.setPen(QColor(t.ink))
    words = QRectF(side + 2 * SPACE, 0, size.width() - side - 3 * SPACE, size.height())
    painter.drawText(words, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
    painter.end()
    return made


def answer_drag(event: QDropEvent, carriage: Carriage, target: Target | None) -> None:
    """Take or refuse what is dragged over a target; the desktop shows which by the pointer."""
    carriage.point_at(target)
    if target is not None and carriage.drop_at(target).is_allowed:
        event.setDropAction(Qt.DropAction.MoveAction)
        event.accept()
    else:
        event.ignore()


def take_drop(event: QDropEvent, carriage: Carriage, target: Target | None) -> None:
    """Lay down what was dragged, if the target takes it."""
    if target is not None and carriage.lay_down(target):
        event.setDropAction(Qt.DropAction.MoveAction)
        event.accept()
    else:
        event.ignore()
