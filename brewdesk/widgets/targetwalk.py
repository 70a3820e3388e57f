"""From target to target by arrow keys, as they lie on the screen."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QPoint, QRect, Qt

from brewdesk.services.drops import Target

_WAY: dict[Qt.Key, tuple[int, int]] = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}
_ASIDE = 2.0  # what lies straight ahead is nearer than what lies aside


def next_target(targets: Mapping[Target, QRect], here: Target | None, key: Qt.Key) -> Target | None:
    """Return the nearest target in an arrow's direction; None if there is none that way.

    Left and right go on to the next row, so that every target can be reached by either.
    """
    if not targets:
        return None
    if here is None or here not in targets:
        return next(iter(targets))
    start = targets[here].center()
    ahead = {
        target: _distance(start, box.center(), _WAY[key])
        for target, box in targets.items()
        if target != here
    }
    reachable = {target: far for target, far in ahead.items() if far is not None}
    if reachable:
        return min(reachable, key=lambda target: reachable[target])
    if key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
        return None
    order = list(targets)
    step = 1 if key == Qt.Key.Key_Right else -1
    return order[(order.index(here) + step) % len(order)]


def _distance(start: QPoint, end: QPoint, way: tuple[int, int]) -> float | None:
    """How far away a point is in a direction; None if it does not lie there."""
    dx, dy = end.x() - start.x(), end.y() - start.y()
    along = dx * way[0] + dy * way[1]
    aside = abs(dx * way[1]) + abs(dy * way[0])
    if along <= 0 or (way[0] and aside > along):
        return None
    return along + _ASIDE * aside
