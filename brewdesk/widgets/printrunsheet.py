"""See a run sheet as it will be printed; save it as a PDF file or print it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtWidgets import QWidget

from brewdesk.printing.runsheetpainter import RunSheet, page_layout, paint_run_sheet
from brewdesk.widgets import paperdialog
from brewdesk.widgets.paperdialog import PaperDialog


@dataclass(frozen=True)
class _RunSheetPage:
    sheet: RunSheet

    @property
    def title(self) -> str:
        return self.sheet.title

    def layout(self, size: QPageSize.PageSizeId) -> QPageLayout:
        return page_layout(size)

    def paint(self, painter: QPainter, room: QRectF | None, family: str) -> object:
        return paint_run_sheet(painter, self.sheet, room, family)


class RunSheetDialog(PaperDialog):
    """The run sheet in small, and what can be done with it. Opened with ``open()``."""

    def __init__(self, sheet: RunSheet, parent: QWidget | None = None) -> None:
        super().__init__(
            _RunSheetPage(sheet),
            name="run_sheet",
            title=sheet.kind,
            save_title=self.tr("Save the sheet as PDF"),
            parent=parent,
        )


def write_pdf(
    sheet: RunSheet, path: Path, size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4
) -> bool:
    """Write ``sheet`` as a PDF file; False if it could not be written."""
    return paperdialog.write_page(_RunSheetPage(sheet), path, size)


def file_name(title: str) -> str:
    """Return a file name made from a batch's name, without signs that file systems refuse."""
    return paperdialog.file_name(title, "run sheet")
