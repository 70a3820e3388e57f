"""The pantry's file was deleted or exchanged while open: save what is open as a file of its own."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QStandardPaths
from PySide6.QtWidgets import QFileDialog, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.jobs import Pool
from brewdesk.services.records import StoreTrouble
from brewdesk.services.wording.problems import trouble_words

Tell = Callable[[str, str], None]


def _t(text: str) -> str:
    return QCoreApplication.translate("SavedOpen", text)


def ask_where(desk: Desk, parent: QWidget, tell: Tell) -> QFileDialog:
    """Ask where the copy is to be, and save it there; ``tell`` is given words and their role."""
    folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    dialog = QFileDialog(parent, _t("Save what is open as a copy"), folder)
    dialog.setObjectName("save_open_dialog")
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.selectFile(f"saved-{desk.store_path.name}")
    dialog.fileSelected.connect(lambda name: save_to(desk, Path(name), tell))
    dialog.finished.connect(dialog.deleteLater)
    dialog.open()
    return dialog


def save_to(desk: Desk, target: Path, tell: Tell) -> None:
    """Save what is open, off the window's thread."""

    def failed(error: BaseException) -> None:
        if not isinstance(error, StoreTrouble):
            raise error
        tell(trouble_words(error), "danger")

    desk.jobs.run(
        lambda: desk.store.save_what_is_open(target),
        lambda _done: tell(
            _t(
                "Saved as {path}. Close brewdesk and put this file in the pantry's place, or go "
                "on with it from there."
            ).format(path=target),
            "good",
        ),
        failed,
        key="save-open",
        pool=Pool.STORE,
    )
