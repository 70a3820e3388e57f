"""Several desks, one store: what the others do, as it reaches this one."""

from __future__ import annotations

import logging
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QObject, Signal

from brewdesk.services.changes import Changes, Topic
from brewdesk.services.door import topics_of
from brewdesk.services.settings import Settings
from brewdesk.store.openstore import OpenStore
from brewdesk.store.touched import Touched, Word

if TYPE_CHECKING:
    from brewdesk.store.serverstore import ServerStore

log = logging.getLogger(__name__)


class Desks(QObject):
    """Announces what other desks committed as if it had been done here.

    A pantry in a file has no other desks: then nothing ever happens here.

    ``connection_changed`` carries whether the server can be reached. When it is there again,
    everything is announced as changed, since nobody knows what was missed. ``became_keeper``
    says that from now on this desk keeps the reminders in line with the brews.
    """

    connection_changed = Signal(bool)
    became_keeper = Signal()
    _heard = Signal(object)
    _lost = Signal()
    _back = Signal(int)
    _keeper = Signal()

    def __init__(
        self,
        store: OpenStore,
        changes: Changes,
        settings: Settings,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        # Asked by its own word, not by its class: most makers never load what speaks to servers.
        self._store = cast("ServerStore", store) if store.is_shared else None
        self._changes = changes
        self._settings = settings
        self._is_listening = False
        # From the listener's thread to the window's.
        self._heard.connect(self._on_word)
        self._lost.connect(self._on_lost)
        self._back.connect(self._on_back)
        self._keeper.connect(self._on_keeper)

    @property
    def are_several(self) -> bool:
        """Whether there can be other desks."""
        return self._store is not None

    @property
    def are_connected(self) -> bool:
        """Whether the store can be reached; a file always counts as reached."""
        return self._store is None or self._store.is_connected

    @property
    def is_keeper(self) -> bool:
        """Whether this desk brings the reminders in line: without others, always."""
        return self._store is None or self._store.is_keeper

    def start(self) -> None:
        """Hear the others from now on. Doing it twice is doing it once."""
        if self._store is None or self._is_listening:
            return
        self._is_listening = True
        self._store.listen(
            on_word=self._heard.emit,
            on_lost=self._lost.emit,
            on_back=self._back.emit,
            on_keeper=self._keeper.emit,
        )

    def stop(self) -> None:
        """Hear nothing more; what is on its way falls silent. The store is closed elsewhere."""
        self._is_listening = False

    def _on_word(self, word: Word) -> None:
        if self._store is None or not self._is_listening:
            return
        if word.desk_uid != self._store.desk.uid:
            self._announce(word.touched)
        # In the order of the commits, so that nothing earlier of others is still unseen.
        self._store.note_seen(word.serial)

    def _announce(self, touched: Touched) -> None:
        try:
            topics = topics_of(touched.tables)
        except KeyError:  # a table of a newer program
            topics = Topic.EVERYTHING
        if touched.settings:
            self._settings.forget()
            topics |= Topic.SETTINGS
        self._changes.announce(topics, batch_ids=touched.batch_ids, vessel_ids=touched.vessel_ids)

    def _on_lost(self) -> None:
        if self._is_listening:
            self.connection_changed.emit(False)

    def _on_keeper(self) -> None:
        if self._is_listening:
            self.became_keeper.emit()

    def _on_back(self, serial: int) -> None:
        if self._store is None or not self._is_listening:
            return
        log.info("the server is there; everything is read anew")
        self._settings.forget()
        self._changes.announce(Topic.EVERYTHING)
        self._store.note_seen(serial)
        self.connection_changed.emit(True)
