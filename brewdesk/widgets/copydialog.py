"""Copy the pantry with its photos into a folder: say what that is, ask where, show how far."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QStandardPaths, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.wholecopy import Copied
from brewdesk.services.wording.backups import copied_words
from brewdesk.widgets.progressframe import ProgressDialog


class CopyDialog(ProgressDialog):
    """The way to a copy that can be opened. ``open_wanted`` carries the copy's file."""

    open_wanted = Signal(object)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, name="copy", parent=parent)
        self.set_words(
            self.tr("Copy everything to a folder"),
            self.tr(
                "The pantry and the files of all its photos are copied into a new folder, on a "
                "memory stick for example. The copy is read back and compared, and can be opened "
                "as it is. The pantry itself stays as it is.\n\n"
                "Photos go along unchanged, with whatever the camera wrote into them."
            ),
        )
        self.go.setText(self.tr("Choose a folder…"))
        self.go.clicked.connect(self._on_go)
        self.work.finished.connect(self._on_finished)
        self._files: QFileDialog | None = None
        self._made: Path | None = None

    def _on_go(self) -> None:
        if self._made is not None:
            self.open_wanted.emit(self._made)
            self.accept()
            return
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._files = QFileDialog(self, self.tr("Where the copy is to be"), folder)
        self._files.setFileMode(QFileDialog.FileMode.Directory)
        self._files.setOption(QFileDialog.Option.ShowDirsOnly)
        self._files.fileSelected.connect(lambda name: self.copy_to(Path(name)))
        self._files.open()

    def copy_to(self, folder: Path) -> None:
        """Begin to copy into a new folder below ``folder``."""
        self.set_busy(True)
        self.work.copy(self._desk.store, folder)

    def _on_finished(self, copied: Copied) -> None:
        self.set_busy(False)
        self._made = copied.folder / self._desk.store_path.name
        self.say(copied_words(copied), "warn" if copied.missing else "good")
        self.go.setText(self.tr("Open it in a window of its own"))
        self.leave.setText(self.tr("Close"))
        self.leave.setFocus()
