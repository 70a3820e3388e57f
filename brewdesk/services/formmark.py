"""What a form was opened with, so that it does not write over what another desk changed since."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from brewdesk.services.door import Door
from brewdesk.store.errors import ChangedElsewhere


class FormMark:
    """Taken when a form opens; its acts are done inside `keeping`."""

    def __init__(self, door: Door) -> None:
        self._door = door
        self._seen = door.seen()

    @contextmanager
    def keeping(self) -> Iterator[None]:
        """Refuse acts on what another desk changed since the form was opened.

        Once refused and told, the maker knows of it, and a second try is meant.

        Raises
        ------
        ChangedElsewhere
            With the name of the other desk.
        """
        try:
            with self._door.since(self._seen):
                yield
        except ChangedElsewhere:
            self._seen = self._door.seen()
            raise
