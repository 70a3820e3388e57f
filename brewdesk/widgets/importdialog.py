"""Bring an export in as a new pantry: look at it, say where to, watch it, open it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog, QGridLayout, QHBoxLayout, QSizePolicy, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.exportformat import ENDING
from brewdesk.services.exportmanifest import Manifest
from brewdesk.services.importing import Imported
from brewdesk.services.wording.exports import imported_words, missing_words, preview_pairs
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.progressframe import ProgressDialog
from brewdesk.widgets.theme import SPACE

_PANTRY = ".brewdesk"


class ImportDialog(ProgressDialog):
    """The way from an archive to a new pantry. ``open_wanted`` carries its path."""

    open_wanted = Signal(object)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, name="import", parent=parent)
        self.set_words(
            self.tr("Bring in an export"),
            self.tr(
                "An export becomes a new pantry in a file of its own. The pantry that is open "
                "now stays as it is. Every entry is proven first: if anything is wrong, nothing "
                "is brought in."
            ),
        )
        self._path: Path | None = None
        self._made: Path | None = None
        self._files: QFileDialog | None = None
        self.choose = self.button("import_choose", self.tr("Choose an export…"))
        self.file_name = plain_label(self.tr("No file chosen yet."), "muted")
        self.file_name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(self.choose)
        head.addWidget(self.file_name, 1)
        self.facts = QWidget()
        self.facts.setObjectName("import_facts")
        self._grid = QGridLayout(self.facts)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(3 * SPACE)
        self._grid.setVerticalSpacing(SPACE // 2)
        self._grid.setColumnStretch(1, 1)
        self.facts.hide()
        self.column.insertLayout(2, head)
        self.column.insertWidget(3, self.facts)
        self.go.setText(self.tr("Bring it in…"))
        self.go.setEnabled(False)
        self.choose.clicked.connect(self.choose_file)
        self.go.clicked.connect(self._on_go)
        self.work.examined.connect(self._on_examined)
        self.work.finished.connect(self._on_finished)
        self.work.failed.connect(self._offer_again)
        self.choose.setFocus()

    def _offer_again(self, _trouble: object) -> None:
        self.go.setEnabled(self.facts.isVisible())

    def choose_file(self) -> None:
        """Ask for the archive."""
        self._files = QFileDialog(self, self.tr("Choose an export"))
        self._files.setFileMode(QFileDialog.FileMode.ExistingFile)
        self._files.setNameFilters(
            [
                self.tr("Exports of a pantry (*{ending})").format(ending=ENDING),
                self.tr("All files (*)"),
            ]
        )
        self._files.fileSelected.connect(lambda name: self.look_at(Path(name)))
        self._files.open()

    def look_at(self, path: Path) -> None:
        """Look at an archive, and show what it holds."""
        self._path = path
        self.file_name.setText(path.name)
        self.facts.hide()
        self.go.setEnabled(False)
        self.say("")
        self.work.examine(path)

    def bring_in_to(self, target: Path) -> None:
        """Begin to make the new pantry."""
        if self._path is None:
            return
        if not target.suffix:
            target = target.with_name(target.name + _PANTRY)
        self.set_busy(True)
        self.choose.setEnabled(False)
        self.work.bring_in(self._path, target)

    def _on_examined(self, seen: Manifest) -> None:
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        for row, (label, value) in enumerate(preview_pairs(seen, self._desk.clock.zone())):
            self._grid.addWidget(plain_label(label, "muted"), row, 0)
            self._grid.addWidget(plain_label(value, "", wraps=True), row, 1)
        self.facts.show()
        self.go.setEnabled(True)
        said = [self.tr("This pantry is invented, to look at only.")] if seen.is_demo else []
        if seen.missing_photos:
            said.append(missing_words(len(seen.missing_photos)))
        self.say(" ".join(said), "warn")
        self.go.setFocus()

    def _on_go(self) -> None:
        if self._made is not None:
            self.open_wanted.emit(self._made)
            self.accept()
            return
        self._files = QFileDialog(
            self, self.tr("Where the new pantry is to be"), str(self._desk.store_path.parent)
        )
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setOption(QFileDialog.Option.DontConfirmOverwrite)
        self._files.setNameFilter(self.tr("Pantries (*{ending})").format(ending=_PANTRY))
        day = self._desk.clock.now().astimezone(self._desk.clock.zone())
        self._files.selectFile(f"pantry-{day:%Y-%m-%d}{_PANTRY}")
        self._files.fileSelected.connect(lambda name: self.bring_in_to(Path(name)))
        self._files.open()

    def _on_finished(self, imported: Imported) -> None:
        self.set_busy(False)
        self._made = imported.path
        self.say(imported_words(imported), "good")
        self.go.setText(self.tr("Open it in a window of its own"))
        self.leave.setText(self.tr("Close"))
        self.go.setFocus()
