"""What is being carried over the shelf, by whichever way: drag, keys or clicks."""

from __future__ import annotations

import secrets
from enum import Enum

from PySide6.QtCore import QByteArray, QMimeData, QObject, QTimer, Signal

from brewdesk.services.carrying import Carrying
from brewdesk.services.drops import (
    Carried,
    CarriedKind,
    Drop,
    ShelfFacts,
    Target,
    can_be_carried,
    choices,
)

MIME_TYPE = "application/x-brewdesk-carried"


class Way(Enum):
    """How something is carried."""

    DRAG = "drag"
    KEYS = "keys"
    CLICKS = "clicks"


class Carriage(QObject):
    """Holds what is carried and the shelf as it was when it was picked up.

    ``begun`` and ``ended`` enclose a carrying; ``pointed`` says that the target under the
    mouse or the keys is another. ``laid_down`` carries the `Carried`, the `Target` and the
    `Drop`, once whatever began the carrying has come to its end. ``refused`` carries the
    `Drop` of a target that takes nothing.
    """

    begun = Signal()
    pointed = Signal()
    ended = Signal()
    laid_down = Signal(object, object, object)
    refused = Signal(object)

    def __init__(self, carrying: Carrying, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._carrying = carrying
        # A drag from another window, with another pantry, must not name a batch of this one.
        self._token = secrets.token_hex(8)
        self._facts: ShelfFacts | None = None
        self._found: dict[Target, Drop] = {}
        self.carried: Carried | None = None
        self.way: Way | None = None
        self.here: Target | None = None
        self._later = QTimer(self)
        self._later.setObjectName("lay_down")
        self._later.setSingleShot(True)
        self._later.setInterval(0)
        self._later.timeout.connect(self._tell_laid_down)
        self._laid: tuple[Carried, Target, Drop] | None = None

    def pick_up(self, carried: Carried, way: Way) -> bool:
        """Begin to carry something; False if it cannot be carried now."""
        self.give_up()
        facts = self._carrying.facts()
        refusal = can_be_carried(facts, carried)
        if refusal.refusal is not None:
            self.refused.emit(refusal)
            return False
        self._facts = facts
        self._found = {}
        self.carried, self.way, self.here = carried, way, None
        self.begun.emit()
        return True

    def name(self) -> str:
        """What is carried, by its name."""
        if self._facts is None or self.carried is None:
            return ""
        if self.carried.kind is CarriedKind.CULTURE:
            culture = self._facts.cultures.get(self.carried.id)
            return "" if culture is None else culture.name
        jar = self._facts.jar_of_batch(self.carried.id)
        return "" if jar is None or jar.batch is None else jar.batch.name

    def home_id(self) -> int | None:
        """The vessel that what is carried comes from."""
        if self._facts is None or self.carried is None:
            return None
        if self.carried.kind is CarriedKind.BATCH:
            return self._facts.batch_jars.get(self.carried.id)
        culture = self._facts.cultures.get(self.carried.id)
        return None if culture is None else culture.vessel_id

    def drop_at(self, target: Target) -> Drop:
        """What can be done at a target; asked of the rule book once for each."""
        if self._facts is None or self.carried is None:
            return Drop()
        if target not in self._found:
            self._found[target] = choices(self._facts, self.carried, target)
        return self._found[target]

    def point_at(self, target: Target | None) -> None:
        """Say which target is under the mouse, or reached by keys."""
        if target != self.here:
            self.here = target
            self.pointed.emit()

    def lay_down(self, target: Target) -> bool:
        """End the carrying at a target; False, and nothing ends, if it takes nothing."""
        if self.carried is None:
            return False
        drop = self.drop_at(target)
        if not drop.is_allowed:
            self.point_at(target)
            self.refused.emit(drop)
            return False
        self._laid = (self.carried, target, drop)
        self._end()
        # A drag still runs its own loop here: a menu opened now would live inside it.
        self._later.start()
        return True

    def give_up(self) -> None:
        """End the carrying with nothing done."""
        if self.carried is not None:
            self._end()

    def mime(self) -> QMimeData:
        """What a drag carries along."""
        made = QMimeData()
        if self.carried is not None:
            words = f"{self._token} {self.carried.kind.value} {self.carried.id}"
            made.setData(MIME_TYPE, QByteArray(words.encode()))
        return made

    def is_ours(self, mime: QMimeData) -> bool:
        """Whether a drag carries what this window picked up."""
        if self.carried is None or not mime.hasFormat(MIME_TYPE):
            return False
        return mime.data(MIME_TYPE) == self.mime().data(MIME_TYPE)

    def _end(self) -> None:
        self.carried, self.way, self.here = None, None, None
        self._found = {}
        self.ended.emit()

    def _tell_laid_down(self) -> None:
        if self._laid is not None:
            laid, self._laid = self._laid, None
            self.laid_down.emit(*laid)
