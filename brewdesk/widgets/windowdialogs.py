"""The dialogs that the window opens over itself. Each is made when asked for, then let go."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QDialog, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.paperdoc import Document
from brewdesk.services.records import BatchStage, Look
from brewdesk.services.shelf import JarView


class WindowDialogs(QObject):
    """Opens dialogs over ``window``. ``vessel_wanted`` carries a vessel to bring into view."""

    vessel_wanted = Signal(int)

    def __init__(self, desk: Desk, window: QWidget) -> None:
        super().__init__(window)
        self._desk = desk
        self._window = window

    def open(self, dialog: QDialog) -> None:
        """Show a dialog over the window, and let go of it once it is closed."""
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def add_vessel(self) -> None:
        """Open the form for a new vessel."""
        from brewdesk.widgets.vesselform import VesselDialog

        dialog = VesselDialog(self._desk, parent=self._window)
        dialog.saved.connect(self.vessel_wanted)
        self.open(dialog)

    def edit_vessel(self, vessel_id: int) -> None:
        """Open the form for a vessel there is."""
        from brewdesk.widgets.vesselform import VesselDialog

        for vessel in self._desk.vessels.all():
            if vessel.id == vessel_id:
                self.open(VesselDialog(self._desk, vessel, parent=self._window))

    def show_retired(self) -> None:
        """List the vessels that are off the shelf."""
        from brewdesk.widgets.retireddialog import RetiredDialog

        dialog = RetiredDialog(self._desk, self._window)
        dialog.restored.connect(self.vessel_wanted)
        self.open(dialog)

    def show_past(self) -> None:
        """Show the batches that have ended, with their records."""
        from brewdesk.widgets.pastdialog import PastDialog

        self.open(PastDialog(self._desk, self._window))

    def show_places(self) -> None:
        """Open the places and their temperatures."""
        from brewdesk.widgets.placesdialog import PlacesDialog

        self.open(PlacesDialog(self._desk, self._window))

    def add_culture(self) -> None:
        """Open the form for a new culture."""
        from brewdesk.widgets.cultureform import CultureDialog

        self.open(CultureDialog(self._desk, parent=self._window))

    def enter_already_in(self, batch_id: int) -> None:
        """Ask when a planned batch went into its jar."""
        from brewdesk.widgets.alreadyindialog import AlreadyInDialog

        batch = self._desk.batches.get(batch_id)
        if batch.stage is BatchStage.PLANNED:
            self.open(AlreadyInDialog(self._desk, batch, self._window))

    def end_batch(self, jar: JarView, discard: bool) -> None:
        """Ask how a batch ended."""
        from brewdesk.widgets.enddialog import EndDialog

        self.open(EndDialog(self._desk, jar, discard=discard, parent=self._window))

    def look_for_mold(self, batch_id: int) -> None:
        """Guide a look at the batch's surface; mold leads on to discarding it."""
        from brewdesk.widgets.lookdialog import LookDialog

        dialog = LookDialog(
            self._desk.batches.get(batch_id).name,
            self._window,
            keep=lambda look, seen: self._desk.readings.record_look(batch_id, look, seen),
        )
        dialog.looked.connect(lambda look, _seen: self._on_looked(batch_id, look))
        self.open(dialog)

    def discard_moldy(self, batch_id: int) -> None:
        """Ask whether to discard a batch with mold, culture and all."""
        from brewdesk.widgets.enddialog import EndDialog

        for jar in self._desk.shelf.jars():
            if jar.batch is not None and jar.batch.id == batch_id:
                self.open(
                    EndDialog(self._desk, jar, discard=True, reason="mold", parent=self._window)
                )

    def _on_looked(self, batch_id: int, look: Look) -> None:
        if look is Look.MOLD:
            self.discard_moldy(batch_id)

    def clear_batch(self, batch_id: int) -> None:
        """Ask why a batch is to be cleared of the suspicion of mold."""
        from brewdesk.widgets.leaveforms import ClearDialog

        self.open(ClearDialog(self._desk, self._desk.batches.get(batch_id), self._window))

    def print_run_sheet(self, batch_id: int) -> None:
        """Open the preview of a run sheet."""
        from brewdesk.widgets.printrunsheet import RunSheetDialog
        from brewdesk.widgets.runsheetwords import run_sheet_of

        self.open(RunSheetDialog(run_sheet_of(self._desk, batch_id), self._window))

    def export_calendar(self) -> None:
        """Ask where a calendar file of the due list is to go, and write it."""
        from brewdesk.widgets.calendardialog import ask_for_calendar_file

        dialog = ask_for_calendar_file(self._window)
        dialog.fileSelected.connect(lambda path: self._desk.calendar.export(Path(path)))

    def show_batch_report(self, batch_id: int) -> None:
        """Open the preview of a batch's report."""
        from brewdesk.widgets.reports import batch_report_dialog

        self.open(batch_report_dialog(self._desk, batch_id, self._window))

    def show_process_log(self) -> None:
        """Ask for a span of time, then open the preview of its log."""
        from brewdesk.widgets.processlogdialog import ProcessLogDialog

        dialog = ProcessLogDialog(self._desk, self._window)
        dialog.made.connect(self._on_process_log)
        self.open(dialog)

    def _on_process_log(self, document: Document) -> None:
        from brewdesk.widgets.reports import process_log_dialog

        self.open(process_log_dialog(document, self._window))

    def export_everything(self) -> None:
        """Open the way to an archive of everything."""
        from brewdesk.widgets.exportdialog import ExportDialog

        self.open(ExportDialog(self._desk, self._window))

    def copy_everything(self, open_store: Callable[[object], object]) -> None:
        """Open the way to a copy with photos; ``open_store`` is given its path if wanted."""
        from brewdesk.widgets.copydialog import CopyDialog

        dialog = CopyDialog(self._desk, self._window)
        dialog.open_wanted.connect(open_store)
        self.open(dialog)

    def show_backups(
        self, restore: Callable[[object], object], open_store: Callable[[object], object]
    ) -> None:
        """Show the backups; ``restore`` is given the one to go back to."""
        from brewdesk.widgets.backupsdialog import BackupsDialog

        dialog = BackupsDialog(self._desk, self._window)
        dialog.restore_wanted.connect(restore)
        dialog.copy_wanted.connect(lambda: self.copy_everything(open_store))
        self.open(dialog)

    def bring_in(self, open_store: Callable[[object], object]) -> None:
        """Open the way from an archive to a new pantry; ``open_store`` is given its path."""
        from brewdesk.widgets.importdialog import ImportDialog

        dialog = ImportDialog(self._desk, self._window)
        dialog.open_wanted.connect(open_store)
        self.open(dialog)

    def save_what_is_open(self, tell: Callable[[str, str], None]) -> None:
        """Ask where the records of a file that is gone are to be saved, and save them there."""
        from brewdesk.widgets.savedopen import ask_where

        ask_where(self._desk, self._window, tell)

    def read_readings(self, batch_id: int) -> None:
        """Open the way from a spreadsheet to the readings of a batch."""
        from brewdesk.widgets.readingsfiledialog import ReadingsFileDialog

        batch = self._desk.batches.get(batch_id)
        self.open(ReadingsFileDialog(self._desk, batch, self._window))

    def show_safety(self) -> None:
        """Show the limits in use with their sources."""
        from brewdesk.widgets.safetydialog import SafetyDialog

        self.open(SafetyDialog(self._window))

    def show_about(self) -> None:
        """Show versions and where the data lie."""
        from brewdesk.widgets.aboutdialog import AboutDialog

        self.open(AboutDialog(self._desk, self._window))
