"""Write everything into one archive: say what that is, ask where to, show how far it is."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QStandardPaths
from PySide6.QtWidgets import QFileDialog, QWidget

from brewdesk import __version__
from brewdesk.paths import resource
from brewdesk.services.desk import Desk
from brewdesk.services.exportformat import ENDING
from brewdesk.services.exporting import Exported
from brewdesk.services.wording.exports import exported_words
from brewdesk.widgets.progressframe import ProgressDialog


class ExportDialog(ProgressDialog):
    """The way from the pantry to an archive."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, name="export", parent=parent)
        self.set_words(
            self.tr("Export everything"),
            self.tr(
                "Everything in this pantry goes into one file: vessels, cultures, batches, "
                "bottlings, readings, temperatures, the whole history, settings and photos, as "
                "open text that other programs can read and as tables for spreadsheets. What is "
                "in it is written down inside. The pantry itself stays as it is.\n\n"
                "Photos go along unchanged, with whatever the camera wrote into them."
            ),
        )
        self.go.setText(self.tr("Choose where…"))
        self.go.clicked.connect(self.choose_target)
        self.work.finished.connect(self._on_finished)
        self._files: QFileDialog | None = None

    def choose_target(self) -> None:
        """Ask where the archive is to be."""
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._files = QFileDialog(self, self.tr("Export everything"), folder)
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setNameFilter(self.tr("Exports of a pantry (*{ending})").format(ending=ENDING))
        day = self._desk.clock.now().astimezone(self._desk.clock.zone())
        self._files.selectFile(f"{self._desk.store_path.stem}-{day:%Y-%m-%d}{ENDING}")
        self._files.fileSelected.connect(lambda name: self.export_to(Path(name)))
        self._files.open()

    def export_to(self, target: Path) -> None:
        """Begin to write."""
        if not target.name.endswith(".zip"):
            target = target.with_name(target.name + ENDING)
        self.set_busy(True)
        guide = resource("records", "export-format.md").read_text(encoding="utf-8")
        self.work.export(
            self._desk.store_path,
            target,
            program=__version__,
            guide=guide,
            copying=self._desk.still_copy,
        )

    def _on_finished(self, exported: Exported) -> None:
        self.set_busy(False)
        self.say(exported_words(exported), "good")
        self.go.hide()
        self.leave.setText(self.tr("Close"))
        self.leave.setFocus()
