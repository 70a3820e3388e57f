"""What to do when the pantry's file is damaged, empty or gone: ask, rescue, restore."""

from __future__ import annotations

import logging
from datetime import UTC, datetime
from enum import Enum
from pathlib import Path

from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication

from brewdesk.services.backupshelf import BackupView, look_at_all, newest_sound
from brewdesk.services.clock import Clock
from brewdesk.services.wording.backups import (
    backup_line,
    inside_words,
    no_sound_backup_words,
    rescued_words,
    since_words,
)
from brewdesk.services.wording.problems import trouble_words
from brewdesk.store.backup import backups
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import BackupInfo
from brewdesk.store.restore import put_rescued_in_place, restore_backup, set_store_aside
from brewdesk.store.salvage import Rescued, rescue
from brewdesk.widgets.recoverydialog import Offer, RecoveryDialog, RescueDialog
from brewdesk.widgets.theme import Theme

log = logging.getLogger(__name__)

RESTORABLE = frozenset({"damaged", "empty_file", "not_a_store", "file_gone", "not_rescued"})
RESCUABLE = frozenset({"damaged", "not_a_store"})


class Wish(Enum):
    """What the maker chose, besides a backup."""

    LEAVE = "leave"
    BEGIN_ANEW = "begin anew"
    RESCUE = "rescue"


def missing_with_backups(store_path: Path) -> StoreTrouble | None:
    """Give the trouble of a store that is gone though it was backed up before; else None.

    A store that was never there is a new maker's first start.
    """
    if store_path.exists() or not backups(store_path):
        return None
    return StoreTrouble("file_gone", str(store_path))


def ask(app: QApplication, store_path: Path, trouble: StoreTrouble, clock: Clock) -> bool:
    """Say what is wrong and let the maker choose; True if the store can be opened now.

    Then there may be no file: a new pantry shall be begun.
    """
    Theme(app).apply()
    while True:
        views = look_at_all(store_path) if trouble.code in RESTORABLE else ()
        answer = _show(store_path, trouble, views, clock)
        if answer is Wish.LEAVE:
            return False
        try:
            if isinstance(answer, Wish):
                is_settled = (
                    _begin_anew(store_path, clock)
                    if answer is Wish.BEGIN_ANEW
                    else _rescue(store_path, clock)
                )
                if is_settled:
                    return True
                continue
            put_back(store_path, views[answer].info, now=clock.now())
        except StoreTrouble as new_trouble:
            log.warning("the pantry could not be put right: %s", new_trouble)
            trouble = new_trouble
            continue
        return True


def put_back(store_path: Path, info: BackupInfo, *, now: datetime) -> Path | None:
    """Put a verified backup in the store's place; return where what stood there is."""
    set_aside = restore_backup(store_path, info, now=now)
    log.info("restored %s; what stood there is %s", info.path.name, set_aside)
    return set_aside


def _begin_anew(store_path: Path, clock: Clock) -> bool:
    aside = set_store_aside(store_path, now=clock.now())
    log.info("a new pantry is begun; what stood there is %s", aside)
    return True


def _rescue(store_path: Path, clock: Clock) -> bool:
    """Rescue what can be read into a new file, and ask what to do with it."""
    now = clock.now()
    target = store_path.with_name(
        f"{store_path.stem}-rescued-{now.astimezone(UTC):%Y-%m-%dT%H%M%S}{store_path.suffix}"
    )
    try:
        rescued = rescue(store_path, target, now=now)
    except StoreTrouble as trouble:
        if trouble.code == "damaged":
            raise StoreTrouble("not_rescued", trouble.detail) from trouble
        raise
    log.info("rescued %s, lost %s, unknown %s", rescued.kept, rescued.lost, rescued.unknown)
    if not _asks_to_use(rescued):
        return False
    aside = put_rescued_in_place(store_path, rescued.path, now=now)
    log.info("the rescued pantry is in place; the damaged one is %s", aside)
    return True


def _asks_to_use(rescued: Rescued) -> bool:
    dialog = RescueDialog(rescued_words(rescued), str(rescued.path))
    return _answer_of(dialog) == RescueDialog.DialogCode.Accepted.value


def _offer(view: BackupView, clock: Clock) -> Offer:
    now, zone = clock.now(), clock.zone()
    words = inside_words(view, now, zone)
    if view.is_sound:
        words += "\n" + since_words(view, now, zone)
    return Offer(line=backup_line(view, zone), words=words, is_sound=view.is_sound)


def _show(
    store_path: Path, trouble: StoreTrouble, views: tuple[BackupView, ...], clock: Clock
) -> int | Wish:
    """Show the dialog; a backup's place in the list, or another wish."""
    answers: list[int | Wish] = []
    words = trouble_words(trouble)
    if views and newest_sound(views) is None:
        words += "\n\n" + no_sound_backup_words()
    is_there = store_path.exists()
    dialog = RecoveryDialog(
        words,
        str(store_path),
        [_offer(view, clock) for view in views],
        can_begin_anew=trouble.code in RESTORABLE,
        can_rescue=is_there and trouble.code in RESCUABLE,
        is_there=is_there,
    )
    dialog.restore_wanted.connect(answers.append)
    dialog.new_wanted.connect(lambda: answers.append(Wish.BEGIN_ANEW))
    dialog.rescue_wanted.connect(lambda: answers.append(Wish.RESCUE))
    _answer_of(dialog)
    return answers[0] if answers else Wish.LEAVE


def _answer_of(dialog: RecoveryDialog | RescueDialog) -> int:
    # A loop of its own: ending the application's would end every later wait in this process.
    loop = QEventLoop()
    dialog.finished.connect(loop.quit)
    dialog.open()
    loop.exec()
    dialog.deleteLater()
    return dialog.result()
