"""A trial's report: seen, printed, saved; and a picture of it to publish."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QRect, QRectF, QSize, QStandardPaths, Qt
from PySide6.QtGui import QImage, QImageWriter, QPainter
from PySide6.QtWidgets import QCheckBox, QFileDialog, QPushButton, QWidget

from brewdesk.printing.documentpainter import paint_document
from brewdesk.services.desk import Desk
from brewdesk.services.paperdoc import Document
from brewdesk.services.trialview import TrialView
from brewdesk.services.wording.trialreport import trial_picture, trial_report
from brewdesk.widgets.documentdialog import DocumentDialog, DocumentPage
from brewdesk.widgets.paperdialog import file_name
from brewdesk.widgets.theme import FAMILY, load_fonts

_WIDTH_PX, _MARGIN_PX = 1200, 60
_DPI = 144.0
_MM_PER_INCH = 25.4
_TALLEST_PX = 4000


class TrialReportDialog(DocumentDialog):
    """The report with a tick for names, and a button for the picture. Opened with ``open()``."""

    def __init__(self, desk: Desk, view: TrialView, parent: QWidget | None = None) -> None:
        self._desk, self._trial = desk, view
        super().__init__(
            self._made(with_names=False), name="trial_report", parent=parent, save_title="",
        )  # fmt: skip
        self._save_title = self.tr("Save the trial report as PDF")
        self.names = QCheckBox(self.tr("With names of jars and tasters"), self)
        self.names.setObjectName("trial_report_names")
        self.names.toggled.connect(self._on_names)
        self.picture = QPushButton(self.tr("Save as picture…"), self)
        self.picture.setObjectName("trial_report_picture")
        self.picture.setAutoDefault(False)
        self.picture.clicked.connect(self._on_picture)
        self.line.insertWidget(1, self.names)
        self.line.insertWidget(self.line.count() - 1, self.picture)
        self.resize(self.width() + 260, self.height())

    def save_picture(self, path: str) -> None:
        """Write the picture to ``path``, as its ending says, and say how that went."""
        document = trial_picture(
            self._trial,
            self._desk.quantities.show,
            self._desk.clock.zone(),
            self._desk.clock.now(),
        )
        self._say(Path(path), write_picture(document, Path(path)))

    def _made(self, *, with_names: bool) -> Document:
        return trial_report(
            self._trial,
            self._desk.quantities.show,
            self._desk.clock.zone(),
            self._desk.clock.now(),
            with_names=with_names,
        )

    def _on_names(self, with_names: bool) -> None:
        self._document = self._made(with_names=with_names)
        self._sheet = DocumentPage(self._document)
        self.page.show_sheet(self._sheet)
        for view in self._views:
            view.hide()
            view.deleteLater()
        self._views.clear()
        self._show_more()

    def _on_picture(self) -> None:
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
        self._files = QFileDialog(self, self.tr("Save as picture"), folder)
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setNameFilters(
            [self.tr("PNG pictures (*.png)"), self.tr("SVG pictures (*.svg)")]
        )
        self._files.setDefaultSuffix("png")
        name = file_name(DocumentPage(self._document).title).removesuffix(".pdf")
        self._files.selectFile(f"{name}.png")
        self._files.fileSelected.connect(self.save_picture)
        self._files.open()


def picture_height(document: Document) -> int:
    """Return how high a picture has to be to hold a document on one page."""
    load_fonts()
    image = _blank(QSize(8, 8))
    height = _WIDTH_PX
    while height < _TALLEST_PX:
        painter = QPainter(image)
        room = QRectF(0, 0, _WIDTH_PX - 2 * _MARGIN_PX, height - 2 * _MARGIN_PX)
        pages = paint_document(painter, document, room, FAMILY, only_page=0)
        painter.end()
        if pages == 1:
            return height
        height += 40
    return _TALLEST_PX


def write_picture(document: Document, path: Path) -> bool:
    """Write a document as one picture, PNG or SVG by the file's ending; False if it cannot be."""
    size = QSize(_WIDTH_PX, picture_height(document))
    data = _svg(document, size) if path.suffix.lower() == ".svg" else _png(document, size)
    try:
        path.write_bytes(data)
    except OSError:
        return False
    return True


def _paint(painter: QPainter, document: Document, size: QSize) -> None:
    room = QRectF(QRect(0, 0, size.width(), size.height())).adjusted(
        _MARGIN_PX, _MARGIN_PX, -_MARGIN_PX, -_MARGIN_PX
    )
    paint_document(painter, document, room, FAMILY, only_page=1)


def _png(document: Document, size: QSize) -> bytes:
    image = _blank(size)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _paint(painter, document, size)
    painter.end()
    buffer = QBuffer()
    buffer.open(QBuffer.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, b"png").write(image)
    return bytes(buffer.data().data())


def _svg(document: Document, size: QSize) -> bytes:
    from PySide6.QtSvg import QSvgGenerator

    buffer = QBuffer()
    buffer.open(QBuffer.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setSize(size)
    generator.setViewBox(QRect(0, 0, size.width(), size.height()))
    generator.setResolution(round(_DPI))
    generator.setTitle(document.title)
    generator.setDescription(document.kind)
    painter = QPainter(generator)
    painter.fillRect(QRect(0, 0, size.width(), size.height()), Qt.GlobalColor.white)
    _paint(painter, document, size)
    painter.end()
    return bytes(buffer.data().data())


def _blank(size: QSize) -> QImage:
    image = QImage(size, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    dots_per_m = round(_DPI / _MM_PER_INCH * 1000)
    image.setDotsPerMeterX(dots_per_m)
    image.setDotsPerMeterY(dots_per_m)
    return image
