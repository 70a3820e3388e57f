"""Files outside the pantry, written whole or not at all."""

from __future__ import annotations

import os
from pathlib import Path

from PySide6.QtCore import QFileDevice, QIODevice, QSaveFile


class NotWrittenError(OSError):
    """The system did not take a file; what stood there stays. It says why."""


def write_whole(path: Path, data: bytes, *, is_private: bool = True) -> None:
    """Put ``data`` in the place of ``path``; what stood there stays until it is whole.

    A private file is for the maker alone to read and write; another one is as the system
    makes files, to be given away.

    Raises
    ------
    NotWrittenError
        If the system does not take it.
    """
    file = QSaveFile(os.fspath(path))
    owner = QFileDevice.Permission.ReadOwner | QFileDevice.Permission.WriteOwner
    if not file.open(QIODevice.OpenModeFlag.WriteOnly):
        raise NotWrittenError(file.errorString())
    # Before a byte of it is there: it is nobody else's business.
    is_prepared = not is_private or file.setPermissions(owner)
    if not is_prepared or file.write(data) != len(data) or not file.commit():
        detail = file.errorString()
        file.cancelWriting()
        raise NotWrittenError(detail)
