"""Where the window was, and what was looked at: kept between two starts, in the pantry's file."""

from __future__ import annotations

import json
import logging
from dataclasses import asdict, dataclass
from typing import TYPE_CHECKING

from brewdesk.store.errors import StoreTrouble

if TYPE_CHECKING:
    from brewdesk.services.door import Units

log = logging.getLogger(__name__)

_KEY = "window"
_FARTHEST_PX = 100_000  # beyond this no screen ever was


@dataclass(frozen=True, slots=True, kw_only=True)
class WindowPlace:
    """The window's frame in pixels of the desktop, and what it showed."""

    x: int
    y: int
    width: int
    height: int
    is_maximized: bool = False
    page: str = "shelf"
    vessel_id: int | None = None


class WindowMemory:
    """Keep one `WindowPlace`. It is no setting that makers see, and no act."""

    def __init__(self, store: Units) -> None:
        self._store = store

    def remembered(self) -> WindowPlace | None:
        """Return what was kept; None if nothing was, or nothing that makes sense."""
        try:
            with self._store.read() as unit:
                text = unit.settings.get(_KEY)
        except StoreTrouble as trouble:
            log.warning("the window's place could not be read: %s", trouble.code)
            return None
        return None if text is None else _from_text(text)

    def keep(self, place: WindowPlace) -> None:
        """Keep where the window is. A store that takes nothing is no reason to complain."""
        if place == self.remembered():
            return
        try:
            with self._store.write() as unit:
                unit.settings.put(_KEY, json.dumps(asdict(place)))
        except StoreTrouble as trouble:
            log.warning("the window's place could not be kept: %s", trouble.code)


def _from_text(text: str) -> WindowPlace | None:
    try:
        kept = json.loads(text)
        place = WindowPlace(**kept)
    except (ValueError, TypeError):
        return None
    numbers = (place.x, place.y, place.width, place.height)
    if not all(type(number) is int and abs(number) <= _FARTHEST_PX for number in numbers):
        return None
    if place.width < 1 or place.height < 1 or type(place.is_maximized) is not bool:
        return None
    if type(place.page) is not str or type(place.vessel_id) not in (int, type(None)):
        return None
    return place
