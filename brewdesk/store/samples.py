"""The samples of temperature loggers, as packed chunks under the hash of their content.

They are in no act: an import of a million samples is taken back by taking back its entry in
``temperature_log``, while the chunks stay for the case that it is done again.
"""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection, case, delete, func, insert, select

from brewdesk.store.errors import told
from brewdesk.store.schema import temperature_chunk, temperature_log


class ReadSampleRows:
    """Packed samples, to read."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def chunks(self, content_hash: str) -> tuple[bytes, ...]:
        """Give the chunks of one content, in order; none if it is not kept."""
        statement = (
            select(temperature_chunk.c.samples)
            .where(temperature_chunk.c.content_hash == content_hash)
            .order_by(temperature_chunk.c.position)
        )
        with told():
            return tuple(bytes(row) for row in self._connection.execute(statement).scalars())

    def tail(self, content_hash: str, size_bytes: int) -> bytes:
        """Give the last bytes of one content without reading the rest; none if it is not kept."""
        size = func.length(temperature_chunk.c.samples)
        # Counting from the end is SQLite's own way; this is everybody's.
        start = case((size > size_bytes, size - size_bytes + 1), else_=1)
        statement = (
            select(func.substr(temperature_chunk.c.samples, start))
            .where(temperature_chunk.c.content_hash == content_hash)
            .order_by(temperature_chunk.c.position.desc())
            .limit(1)
        )
        with told():
            return bytes(self._connection.execute(statement).scalar_one_or_none() or b"")

    def is_kept(self, content_hash: str) -> bool:
        """Tell whether a content is kept."""
        statement = select(temperature_chunk.c.position).where(
            temperature_chunk.c.content_hash == content_hash
        )
        with told():
            return self._connection.execute(statement.limit(1)).first() is not None


class SampleRows(ReadSampleRows):
    """Packed samples, to read and to keep."""

    def keep(self, content_hash: str, chunks: Sequence[bytes]) -> None:
        """Keep chunks under the hash of their content; the same content is kept once."""
        rows = [
            {"content_hash": content_hash, "position": position, "samples": chunk}
            for position, chunk in enumerate(chunks)
        ]
        statement = delete(temperature_chunk).where(
            temperature_chunk.c.content_hash == content_hash
        )
        with told():
            self._connection.execute(statement)
            if rows:
                self._connection.execute(insert(temperature_chunk), rows)

    def sweep(self, still_wanted: Sequence[str]) -> None:
        """Let go of contents that no log entry names and that are not ``still_wanted``."""
        named = select(temperature_log.c.content_hash)
        statement = delete(temperature_chunk).where(
            temperature_chunk.c.content_hash.not_in(named),
            temperature_chunk.c.content_hash.not_in(list(still_wanted)),
        )
        with told():
            self._connection.execute(statement)
