"""Taking the window back to where it was left, and noting where it is left."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRect, Qt

from brewdesk.services.windowmemory import WindowMemory, WindowPlace
from brewdesk.widgets.windowsize import fit_to_screen, put_back

if TYPE_CHECKING:
    from brewdesk.widgets.mainwindow import MainWindow


def restore(window: MainWindow, memory: WindowMemory) -> None:
    """Open ``window`` as it was left: place, size, page and jar, as far as they are still there."""
    place = memory.remembered()
    if place is None:
        fit_to_screen(window)
        return
    put_back(window, QRect(place.x, place.y, place.width, place.height))
    if place.is_maximized:
        window.setWindowState(window.windowState() | Qt.WindowState.WindowMaximized)
    if place.vessel_id is not None:
        window.shelf.choose_vessel(place.vessel_id)
    if place.page in window.rail.buttons:
        window.show_page(place.page)


def note(window: MainWindow, memory: WindowMemory) -> None:
    """Keep how ``window`` is left."""
    normal = window.normalGeometry() if window.isMaximized() else window.geometry()
    corner = normal.topLeft() if window.isMaximized() else window.pos()
    jar = window.shelf.chosen()
    memory.keep(
        WindowPlace(
            x=corner.x(),
            y=corner.y(),
            width=normal.width(),
            height=normal.height(),
            is_maximized=window.isMaximized(),
            page=window.page_on_show(),
            vessel_id=None if jar is None else jar.vessel.id,
        )
    )
