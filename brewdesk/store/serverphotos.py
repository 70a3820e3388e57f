"""The bytes of photos on a server: every desk shows what any desk took in."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager

from sqlalchemy import Connection, delete, func, select, text
from sqlalchemy.dialects.postgresql import insert

from brewdesk.store.errors import told
from brewdesk.store.serverschema import photo_content


class ServerPhotos:
    """Photos of a shared store, by the SHA-256 of their bytes.

    Its methods may be called from any thread, outside units. ``connected`` gives a
    connection for the time of a block.
    """

    def __init__(self, connected: Callable[[], AbstractContextManager[Connection]]) -> None:
        self._connected = connected

    def keep(self, content_hash: str, ending: str, data: bytes) -> None:
        """Keep a photo's bytes; the same content is kept once.

        Raises
        ------
        StoreTrouble
            What the server says.
        """
        row = insert(photo_content).values(
            content_hash=content_hash, ending=ending, content=data, kept_at=func.now()
        )
        anew = row.on_conflict_do_update(
            index_elements=[photo_content.c.content_hash], set_={"kept_at": func.now()}
        )
        with self._connected() as connection, connection.begin(), told():
            connection.execute(anew)

    def fetch(self, content_hash: str) -> bytes | None:
        """Give a photo's bytes, or None if no desk brought them.

        Raises
        ------
        StoreTrouble
            What the server says.
        """
        statement = select(photo_content.c.content).where(
            photo_content.c.content_hash == content_hash
        )
        with self._connected() as connection, connection.begin(), told():
            found = connection.execute(statement).scalar_one_or_none()
        return None if found is None else bytes(found)

    def names(self) -> dict[str, str]:
        """Give the hashes of all photos, each with its file's ending."""
        statement = select(photo_content.c.content_hash, photo_content.c.ending)
        with self._connected() as connection, connection.begin(), told():
            return {row.content_hash: row.ending for row in connection.execute(statement)}

    def sweep(self, is_named: Callable[[str], bool]) -> None:
        """Let go of photos that nobody names and that were brought more than a day ago."""
        a_day_ago = func.now() - text("interval '1 day'")
        old = select(photo_content.c.content_hash).where(photo_content.c.kept_at < a_day_ago)
        with self._connected() as connection, connection.begin(), told():
            hashes = tuple(connection.execute(old).scalars())
        gone = [content_hash for content_hash in hashes if not is_named(content_hash)]
        if gone:
            # Still old: a desk may have brought one of them again meanwhile.
            statement = delete(photo_content).where(
                photo_content.c.content_hash.in_(gone), photo_content.c.kept_at < a_day_ago
            )
            with self._connected() as connection, connection.begin(), told():
                connection.execute(statement)
