"""See a page as it will be printed; save it as a PDF file or print it."""

from __future__ import annotations

from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QBuffer, QMarginsF, QRectF, QSize, QStandardPaths, Qt
from PySide6.QtGui import (
    QColor,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPaintEvent,
    QPdfWriter,
    QPixmap,
)
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.wholefile import write_whole
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import FAMILY, SPACE, load_fonts

PDF_DPI = 600
_INCH_MM = 25.4
_NAME_BYTES = 120  # half of what file systems take: an ending and a folder's own limits come on top
# Windows takes these for devices, whatever their ending:
# https://learn.microsoft.com/windows/win32/fileio/naming-a-file
_DEVICES = frozenset(
    ("CON", "PRN", "AUX", "NUL", *(f"{port}{n}" for port in ("COM", "LPT") for n in range(1, 10)))
)
_PAGE_WIDTH_PX = 620  # on screen, so that the smallest print can still be read


class Paper(Protocol):
    """A page that can be painted on paper of a size."""

    @property
    def title(self) -> str:
        """What the page is about; the file is named after it."""
        ...

    def layout(self, size: QPageSize.PageSizeId) -> QPageLayout:
        """Return the page with its margins."""
        ...

    def paint(self, painter: QPainter, room: QRectF | None, family: str) -> object:
        """Paint it into ``room``, in dots; None is all that the device shows."""
        ...


class PaperDialog(QDialog):
    """The page in small, and what can be done with it. Opened with ``open()``.

    ``name`` begins the names of its buttons; ``title`` is the window's, ``save_title`` that
    of the file dialog.
    """

    def __init__(
        self,
        sheet: Paper,
        *,
        name: str,
        title: str,
        save_title: str,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._sheet = sheet
        self._save_title = save_title
        self._printing: QDialog | None = None
        self._printer: object | None = None
        self._files: QFileDialog | None = None
        self.setModal(True)
        self.setWindowTitle(title)
        self.page = PageView(sheet, self)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        area.setAccessibleName(self.tr("The page as it will be printed"))
        area.setWidget(self.page)
        self.paper = QComboBox(self)
        self.paper.setObjectName("paper_size")
        self.paper.setAccessibleName(self.tr("Paper size"))
        for size in (QPageSize.PageSizeId.A4, QPageSize.PageSizeId.Letter):
            self.paper.addItem(QPageSize.name(size), size)
        self.said = plain_label(role="muted", parent=self, wraps=True)
        self.save = QPushButton(self.tr("Save as PDF…"), self)
        self.save.setObjectName(f"{name}_pdf")
        self.save.setDefault(True)
        set_role(self.save, "primary")
        self.print = QPushButton(self.tr("Print…"), self)
        self.print.setObjectName(f"{name}_print")
        self.shut = QPushButton(self.tr("Close"), self)
        for button in (self.print, self.shut):
            button.setAutoDefault(False)
        self.line = line = QHBoxLayout()
        line.setSpacing(SPACE)
        line.addWidget(self.paper)
        line.addWidget(self.said, 1)
        for button in (self.shut, self.print, self.save):
            line.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(area, 1)
        column.addLayout(line)
        self.resize(QSize(_PAGE_WIDTH_PX + 8 * SPACE, 92 * SPACE))
        self._connect()

    def _connect(self) -> None:
        self.save.clicked.connect(self._on_save)
        self.print.clicked.connect(self._on_print)
        self.shut.clicked.connect(self.reject)
        self.paper.currentIndexChanged.connect(self._on_paper)

    def paper_size(self) -> QPageSize.PageSizeId:
        """Return the paper chosen."""
        return QPageSize.PageSizeId(self.paper.currentData())

    def _on_paper(self, _index: int) -> None:
        self.page.set_paper(self.paper_size())

    def _on_save(self) -> None:
        """Ask where to put the file."""
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._files = QFileDialog(self, self._save_title, folder)
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setNameFilter(self.tr("PDF files (*.pdf)"))
        self._files.setDefaultSuffix("pdf")
        self._files.selectFile(file_name(self._sheet.title))
        self._files.fileSelected.connect(self.save_pdf)
        self._files.open()

    def save_pdf(self, path: str) -> None:
        """Write the sheet to ``path`` and say how that went."""
        if write_page(self._sheet, Path(path), self.paper_size()):
            self.said.setText(self.tr("Saved as {file}").format(file=Path(path).name))
        else:
            self.said.setText(
                self.tr("{file} could not be written. Choose another folder.").format(
                    file=Path(path).name
                )
            )

    def _on_print(self) -> None:
        """Open the desktop's print preview; the module is loaded only now."""
        from PySide6.QtPrintSupport import QPrinter, QPrintPreviewDialog

        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setPageLayout(self._sheet.layout(self.paper_size()))
        printer.setDocName(self._sheet.title)
        self._printer = printer  # the preview does not keep it alive
        preview = QPrintPreviewDialog(printer, self)
        preview.paintRequested.connect(self._on_paint_requested)
        preview.finished.connect(preview.deleteLater)
        self._printing = preview
        preview.open()

    def _on_paint_requested(self, printer: object) -> None:
        painter = QPainter(printer)  # type: ignore[call-overload]  # a QPrinter, imported late
        load_fonts()
        self._sheet.paint(painter, None, FAMILY)
        painter.end()


class PageView(QWidget):
    """The page as an image, black on white in every scheme."""

    def __init__(self, sheet: Paper, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sheet = sheet
        self._size = QPageSize.PageSizeId.A4
        self._shown: QPixmap | None = None
        self.setAccessibleName(sheet.title)
        self.set_paper(self._size)

    def show_sheet(self, sheet: Paper) -> None:
        """Show another sheet on the same paper."""
        self._sheet = sheet
        self.setAccessibleName(sheet.title)
        self.set_paper(self._size)

    def set_paper(self, size: QPageSize.PageSizeId) -> None:
        """Show the sheet on this paper."""
        self._size = size
        self._shown = None
        paper = QPageSize.definitionSize(size)
        unit = 1.0 if QPageSize.definitionUnits(size) == QPageSize.Unit.Millimeter else _INCH_MM
        self._paper_mm = (paper.width() * unit, paper.height() * unit)
        height = round(_PAGE_WIDTH_PX * self._paper_mm[1] / self._paper_mm[0])
        self.setMinimumSize(QSize(_PAGE_WIDTH_PX, height + 2 * SPACE))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page in the middle, on a faint shadow."""
        if self._shown is None:
            self._shown = self._drawn()
        painter = QPainter(self)
        left = (self.width() - _PAGE_WIDTH_PX) / 2
        size = self._shown.deviceIndependentSize()
        page = QRectF(left, SPACE / 2, size.width(), size.height())
        painter.fillRect(page.translated(2, 3), QColor(0, 0, 0, 50))
        painter.drawPixmap(page, self._shown, QRectF(self._shown.rect()))

    def _drawn(self) -> QPixmap:
        ratio = self.devicePixelRatioF()
        dots_per_mm = _PAGE_WIDTH_PX * ratio / self._paper_mm[0]
        width, height = (round(side * dots_per_mm) for side in self._paper_mm)
        image = QImage(width, height, QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        image.setDotsPerMeterX(round(dots_per_mm * 1000))
        image.setDotsPerMeterY(round(dots_per_mm * 1000))
        margins: QMarginsF = self._sheet.layout(self._size).margins()
        room = QRectF(image.rect()).marginsRemoved(margins * dots_per_mm)
        load_fonts()
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._sheet.paint(painter, room, FAMILY)
        painter.end()
        pixmap = QPixmap.fromImage(image)
        pixmap.setDevicePixelRatio(ratio)
        return pixmap


def write_page(
    sheet: Paper, path: Path, size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4
) -> bool:
    """Write ``sheet`` as a PDF file; False if it could not be written."""
    load_fonts()
    buffer = QBuffer()
    buffer.open(QBuffer.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setPageLayout(sheet.layout(size))
    writer.setResolution(PDF_DPI)
    writer.setTitle(sheet.title)
    writer.setCreator("brewdesk")
    painter = QPainter(writer)
    sheet.paint(painter, None, FAMILY)
    painter.end()
    # Painted whole before the file is touched: a full disk leaves no half page behind as "saved".
    try:
        write_whole(path, bytes(buffer.data().data()), is_private=False)
    except OSError:
        return False
    return True


def file_name(title: str, otherwise: str = "page") -> str:
    """Return a file name made from a title, without signs that file systems refuse."""
    kept = "".join(sign if sign.isalnum() or sign in " -_" else "_" for sign in title).strip()
    while len(kept.encode("utf-8")) > _NAME_BYTES:
        kept = kept[:-1].rstrip()
    if kept.upper() in _DEVICES:
        kept += "_"
    return f"{kept or otherwise}.pdf"
