"""See a report as it will be printed; save it as PDF or HTML, or print it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QRectF, QStandardPaths
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtWidgets import QFileDialog, QPushButton, QScrollArea, QVBoxLayout, QWidget

from brewdesk.printing.documentpainter import count_pages, page_layout, paint_document
from brewdesk.services.paperdoc import Document
from brewdesk.services.paperhtml import html_of
from brewdesk.services.wholefile import write_whole
from brewdesk.widgets.paperdialog import PDF_DPI, PageView, PaperDialog, file_name
from brewdesk.widgets.theme import FAMILY, load_fonts

_MOST_SHOWN = 20  # pages; the file holds all


class DocumentPage:
    """One page of a document, for the view of it."""

    def __init__(self, document: Document, page: int | None = 1) -> None:
        self._document = document
        self._page = page

    @property
    def title(self) -> str:
        """What the file is named after."""
        return f"{self._document.kind} {self._document.title}"

    def layout(self, size: QPageSize.PageSizeId) -> QPageLayout:
        """Return the page with its margins."""
        return page_layout(size)

    def paint(self, painter: QPainter, room: QRectF | None, family: str) -> object:
        """Paint this page alone; all of them on a printer."""
        device = painter.device()
        turn = getattr(device, "newPage", lambda: None)
        only = self._page if room is not None else None
        return paint_document(painter, self._document, room, family, only_page=only, new_page=turn)


class DocumentDialog(PaperDialog):
    """A report in small, and what can be done with it. Opened with ``open()``."""

    def __init__(
        self, document: Document, *, name: str, save_title: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(
            DocumentPage(document), name=name, title=document.kind, save_title=save_title,
            parent=parent,
        )  # fmt: skip
        self.setObjectName(f"{name}_dialog")
        self._document = document
        self.html = QPushButton(self.tr("Save as HTML…"), self)
        self.html.setObjectName(f"{name}_html")
        self.html.setAutoDefault(False)
        self.html.clicked.connect(self._on_html)
        self.line.insertWidget(self.line.count() - 1, self.html)
        self._views: list[PageView] = []
        self._show_more()

    def _show_more(self) -> None:
        """Put the pages after the first one below it."""
        pages = min(_MOST_SHOWN, page_count(self._document, self.paper_size()))
        if pages == 1:
            return
        area = self.findChild(QScrollArea)
        assert area is not None
        area.takeWidget()
        stack = QWidget()
        column = QVBoxLayout(stack)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        for number in range(2, pages + 1):
            view = PageView(DocumentPage(self._document, number), stack)
            view.set_paper(self.paper_size())
            self._views.append(view)
            column.addWidget(view)
        area.setWidget(stack)

    def _on_paper(self, index: int) -> None:
        super()._on_paper(index)
        for view in self._views:
            view.set_paper(self.paper_size())

    def save_pdf(self, path: str) -> None:
        """Write all pages to ``path`` and say how that went."""
        self._say(Path(path), write_document_pdf(self._document, Path(path), self.paper_size()))

    def save_html(self, path: str) -> None:
        """Write the document as HTML to ``path`` and say how that went."""
        self._say(Path(path), write_document_html(self._document, Path(path)))

    def _say(self, path: Path, is_saved: bool) -> None:
        words = (
            self.tr("Saved as {file}")
            if is_saved
            else self.tr("{file} could not be written. Choose another folder.")
        )
        self.said.setText(words.format(file=path.name))

    def _on_html(self) -> None:
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._files = QFileDialog(self, self.tr("Save as HTML"), folder)
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setNameFilter(self.tr("HTML files (*.html)"))
        self._files.setDefaultSuffix("html")
        name = file_name(DocumentPage(self._document).title).removesuffix(".pdf")
        self._files.selectFile(f"{name}.html")
        self._files.fileSelected.connect(self.save_html)
        self._files.open()


def page_count(document: Document, size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4) -> int:
    """Return how many pages a document takes on paper of a size."""
    load_fonts()
    image = QImage(8, 8, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    pages = count_pages(painter, document, size, FAMILY)
    painter.end()
    return pages


def write_document_pdf(
    document: Document, path: Path, size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4
) -> bool:
    """Write a document as a PDF file; False if it could not be written."""
    load_fonts()
    buffer = QBuffer()
    buffer.open(QBuffer.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setPageLayout(page_layout(size))
    writer.setResolution(PDF_DPI)
    writer.setTitle(f"{document.kind} {document.title}")
    writer.setCreator("brewdesk")
    painter = QPainter(writer)
    paint_document(painter, document, None, FAMILY, new_page=writer.newPage)
    painter.end()
    return _written(path, bytes(buffer.data().data()))


def write_document_html(document: Document, path: Path) -> bool:
    """Write a document as an HTML file; False if it could not be written."""
    return _written(path, html_of(document).encode("utf-8", "replace"))


def _written(path: Path, data: bytes) -> bool:
    # Made whole before the file is touched: a full disk leaves no half report behind as "saved".
    try:
        write_whole(path, data, is_private=False)
    except OSError:
        return False
    return True
