"""What to do when the pantry's file is damaged, empty or gone: ask, and restore."""

from __future__ import annotations

import logging
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEventLoop
from PySide6.QtWidgets import QApplication

from brewdesk.services.clock import Clock
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.problems import trouble_words
from brewdesk.store.backup import backups
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import BackupInfo
from brewdesk.store.restore import restore_backup
from brewdesk.widgets.recoverydialog import RecoveryDialog
from brewdesk.widgets.theme import Theme

log = logging.getLogger(__name__)

RESTORABLE = frozenset({"damaged", "empty_file", "not_a_store", "file_gone"})


def missing_with_backups(store_path: Path) -> StoreTrouble | None:
    """Give the trouble of a store that is gone though it was backed up before; else None.

    A store that was never there is a new maker's first start.
    """
    if store_path.exists() or not backups(store_path):
        return None
    return StoreTrouble("file_gone", str(store_path))


def ask(app: QApplication, store_path: Path, trouble: StoreTrouble, clock: Clock) -> bool:
    """Say what is wrong and let the maker choose; True if the store can be opened now."""
    Theme(app).apply()
    while True:
        found = backups(store_path) if trouble.code in RESTORABLE else ()
        answer = _show(store_path, trouble, found, clock)
        if answer is None:
            return False
        if answer == -1:
            return True
        try:
            put_back(store_path, found[answer], now=clock.now())
        except StoreTrouble as new_trouble:
            log.warning("the backup could not be put back: %s", new_trouble.code)
            trouble = new_trouble
            continue
        return True


def put_back(store_path: Path, info: BackupInfo, *, now: datetime) -> None:
    """Put a verified backup in the store's place."""
    set_aside = restore_backup(store_path, info, now=now)
    log.info("restored %s; what stood there is %s", info.path.name, set_aside)


def backup_line(info: BackupInfo, clock: Clock) -> str:
    """A backup in one line: when it was made, and what it holds."""
    return QCoreApplication.translate(
        "recovery", "{when}: {batches} batches, {readings} readings"
    ).format(
        when=stamp_words(info.made_at, clock.zone()),
        batches=info.row_counts.get("batch", 0),
        readings=info.row_counts.get("reading", 0),
    )


def _show(
    store_path: Path,
    trouble: StoreTrouble,
    found: tuple[BackupInfo, ...],
    clock: Clock,
) -> int | None:
    """Show the dialog; a backup's index, -1 for a new pantry, None to leave."""
    answers: list[int] = []
    dialog = RecoveryDialog(
        trouble_words(trouble),
        str(store_path),
        [backup_line(info, clock) for info in found],
        can_begin_anew=trouble.code == "file_gone" and not store_path.exists(),
    )
    dialog.restore_wanted.connect(answers.append)
    dialog.new_wanted.connect(lambda: answers.append(-1))
    # A loop of its own: ending the application's would end every later wait in this process.
    loop = QEventLoop()
    dialog.finished.connect(loop.quit)
    dialog.open()
    loop.exec()
    dialog.deleteLater()
    return answers[0] if answers else None
