"""Undo and redo over the act table; it outlives the program."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from brewdesk.services.changes import Change
from brewdesk.services.door import Door
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import Act, RowDelta
from brewdesk.store.unitofwork import UnitOfWork


class History(QObject):
    """Take back the newest act, or do it again.

    ``changed`` says that what can be undone or redone may be another act now.
    ``trouble`` carries the `StoreTrouble` that kept an undo or redo from being done;
    then nothing was changed.
    """

    changed = Signal()
    trouble = Signal(object)

    def __init__(self, door: Door, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._door = door
        door.changes.changed.connect(self._on_changed)

    def undo_act(self) -> Act | None:
        """Return the act that `undo` would take back."""
        with self._door.store.read() as unit:
            return unit.acts.undoable()

    def redo_act(self) -> Act | None:
        """Return the act that `redo` would do again."""
        with self._door.store.read() as unit:
            return unit.acts.redoable()

    def undo(self) -> None:
        """Take back the newest act. Do nothing if there is none."""
        self._step(lambda unit: unit.acts.undoable(), backwards=True)

    def redo(self) -> None:
        """Do the act that was undone last again. Do nothing if there is none."""
        self._step(lambda unit: unit.acts.redoable(), backwards=False)

    def _step(self, choose: Callable[[UnitOfWork], Act | None], *, backwards: bool) -> None:
        deltas: tuple[RowDelta, ...] = ()
        try:
            with self._door.store.write() as unit:
                act = choose(unit)
                if act is None:
                    return
                deltas = unit.acts.deltas(act.id)
                unit.apply(deltas, backwards=backwards)
                unit.acts.mark(act.id, "undone" if backwards else "done")
        except StoreTrouble as trouble:
            self.trouble.emit(trouble)
            return
        self._door.tell(deltas)

    def _on_changed(self, _change: Change) -> None:
        self.changed.emit()
