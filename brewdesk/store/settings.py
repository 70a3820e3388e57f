"""The maker's choices, as text by key. What the keys mean is declared elsewhere."""

from __future__ import annotations

from sqlalchemy import Connection, insert, select, update

from brewdesk.store.errors import told
from brewdesk.store.schema import setting


class ReadSettingRows:
    """Settings, to read."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def get(self, key: str) -> str | None:
        """Give the text kept for a key, or None."""
        with told():
            statement = select(setting.c.value).where(setting.c.key == key)
            return self._connection.execute(statement).scalar_one_or_none()

    def all(self) -> dict[str, str]:
        """Give every key with its text."""
        with told():
            statement = select(setting.c.key, setting.c.value).order_by(setting.c.key)
            return {row.key: row.value for row in self._connection.execute(statement)}


class SettingRows(ReadSettingRows):
    """Settings, to read and to change. Changes are no acts and make no deltas."""

    def put(self, key: str, value: str) -> None:
        """Keep a text for a key, in place of an earlier one."""
        with told():
            statement = update(setting).where(setting.c.key == key).values(value=value)
            if self._connection.execute(statement).rowcount == 0:
                self._connection.execute(insert(setting).values(key=key, value=value))
