"""Labels and test pages on their way to a printer or into a PDF file."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QBuffer, QCoreApplication, QObject, Signal
from PySide6.QtGui import QPagedPaintDevice, QPageLayout, QPainter, QPdfWriter
from PySide6.QtWidgets import QDialog, QWidget

from brewdesk.printing.sheetpainter import (
    SheetPainter,
    page_layout,
    paint_test_page,
    ruler_mm,
)
from brewdesk.services.labelgeometry import LabelSheet
from brewdesk.services.wholefile import write_whole
from brewdesk.services.wording.labels import ruler_words, test_page_words
from brewdesk.widgets.theme import FAMILY, load_fonts

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

PDF_DPI = 1200
_NEAR_MM = 1.5  # papers this alike are the same paper


class Printable(Protocol):
    """Pages that can be painted on any paged device."""

    @property
    def sheet(self) -> LabelSheet:
        """The sheet they are for."""
        ...

    @property
    def title(self) -> str:
        """What the print queue calls them."""
        ...

    def paint_all(self, device: QPagedPaintDevice) -> bool:
        """Paint every page; False if the device takes nothing."""
        ...


class LabelPages:
    """The labels of a job."""

    def __init__(self, painter: SheetPainter, title: str) -> None:
        self._painter = painter
        self.title = title
        self.sheet = painter.job.sheet

    def paint_all(self, device: QPagedPaintDevice) -> bool:
        """Paint every page."""
        return self._painter.paint_all(device)


class CalibrationPage:
    """The test page of a sheet."""

    def __init__(self, sheet: LabelSheet) -> None:
        self.sheet = sheet
        self.title = QCoreApplication.translate("PrintLabels", "Test page")

    def paint_all(self, device: QPagedPaintDevice) -> bool:
        """Paint the one page."""
        painter = QPainter()
        if not painter.begin(device):
            return False
        across, down = (ruler_mm(side) for side in self.sheet.page_mm)
        words = (self.sheet.name, ruler_words(across, down), test_page_words())
        paint_test_page(painter, self.sheet, words, FAMILY)
        painter.end()
        return True


def write_pdf(pages: Printable, path: Path) -> bool:
    """Write the pages as a PDF file; False if it could not be written."""
    load_fonts()
    buffer = QBuffer()
    buffer.open(QBuffer.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(PDF_DPI)
    writer.setPageLayout(page_layout(pages.sheet))
    writer.setTitle(pages.title)
    writer.setCreator("brewdesk")
    if not pages.paint_all(writer):
        return False
    # Painted whole before the file is touched: a full disk leaves no half page behind as "saved".
    try:
        write_whole(path, bytes(buffer.data().data()), is_private=False)
    except OSError:
        return False
    return True


def is_other_paper(printer: QPrinter, sheet: LabelSheet) -> bool:
    """Whether a printer is set to another paper than the sheet's."""
    paper = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    width, height = sheet.page_mm
    return abs(paper.width() - width) > _NEAR_MM or abs(paper.height() - height) > _NEAR_MM


class LabelPrinting(QObject):
    """Opens the desktop's print preview. ``painted`` says whether the printer has the paper."""

    painted = Signal(bool)

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        self._printer: QPrinter | None = None
        self.preview: QDialog | None = None

    def open(self, pages: Printable) -> None:
        """Show the preview, from which any printer can be chosen."""
        from PySide6.QtPrintSupport import QPrinter, QPrintPreviewDialog

        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setPageLayout(page_layout(pages.sheet))
        printer.setFullPage(True)
        printer.setDocName(pages.title)
        self._printer = printer  # the preview does not keep it alive
        preview = QPrintPreviewDialog(printer, self._window)
        preview.paintRequested.connect(lambda device: self.paint(pages, device))
        preview.finished.connect(preview.deleteLater)
        self.preview = preview
        preview.open()

    def paint(self, pages: Printable, printer: QPrinter) -> None:
        """Put the pages on a printer, and tell whether it has the sheet's paper."""
        load_fonts()
        # The print dialog puts the printer's usual paper in place of the sheet's, unasked. The
        # layout counts from the paper's corner, whatever the printer's margins are.
        printer.setPageLayout(page_layout(pages.sheet))
        pages.paint_all(printer)
        self.painted.emit(not is_other_paper(printer, pages.sheet))
