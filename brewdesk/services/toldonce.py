"""What the maker needs to be told a single time, remembered in the pantry's file."""

from __future__ import annotations

import logging
from typing import TYPE_CHECKING

from brewdesk.store.errors import StoreTrouble

if TYPE_CHECKING:
    from brewdesk.services.door import Units

log = logging.getLogger(__name__)


class ToldOnce:
    """Remembers what was said. It is no setting that makers see, and no act."""

    def __init__(self, store: Units) -> None:
        self._store = store
        self._said: set[str] = set()  # where the store takes nothing, once per run

    def is_news(self, what: str) -> bool:
        """Whether ``what`` was never said before; from now on it was."""
        if what in self._said:
            return False
        self._said.add(what)
        key = f"told_{what}"
        try:
            with self._store.read() as unit:
                if unit.settings.get(key) is not None:
                    return False
            with self._store.write() as unit:
                unit.settings.put(key, "yes")
        except StoreTrouble as trouble:
            log.warning("it could not be kept that something was told: %s", trouble.code)
        return True
