"""See a hand-over card as it will be printed; save it as a PDF file or print it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtWidgets import QComboBox, QWidget

from brewdesk.printing.handovercard import HandOverCard, page_layout, paint_hand_over_card
from brewdesk.widgets import paperdialog
from brewdesk.widgets.paperdialog import PaperDialog


@dataclass
class _CardPage:
    card: HandOverCard
    card_size: str = "a5"

    @property
    def title(self) -> str:
        return self.card.title

    def layout(self, size: QPageSize.PageSizeId) -> QPageLayout:
        return page_layout(size)

    def paint(self, painter: QPainter, room: QRectF | None, family: str) -> object:
        return paint_hand_over_card(painter, self.card, room, family, self.card_size)


class HandOverDialog(PaperDialog):
    """The card in small, and what can be done with it. Opened with ``open()``."""

    def __init__(self, card: HandOverCard, parent: QWidget | None = None) -> None:
        page = _CardPage(card)
        super().__init__(
            page,
            name="hand_over",
            title=self.tr("Hand-over card"),
            save_title=self.tr("Save the card as PDF"),
            parent=parent,
        )
        self._card_page = page
        self.size_choice = QComboBox(self)
        self.size_choice.setObjectName("card_size")
        self.size_choice.setAccessibleName(self.tr("Size of the card"))
        self.size_choice.addItem(self.tr("Card A5"), "a5")
        self.size_choice.addItem(self.tr("Card A6"), "a6")
        self.size_choice.currentIndexChanged.connect(self._on_card_size)
        self.line.insertWidget(1, self.size_choice)

    def _on_card_size(self, _index: int) -> None:
        self._card_page.card_size = str(self.size_choice.currentData())
        self.page.set_paper(self.paper_size())


def write_card(
    card: HandOverCard,
    path: Path,
    size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4,
    card_size: str = "a5",
) -> bool:
    """Write ``card`` as a PDF file; False if it could not be written."""
    return paperdialog.write_page(_CardPage(card, card_size), path, size)
