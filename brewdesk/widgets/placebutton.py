"""The places named under the shelf's title: a line to read that also opens them."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from brewdesk.models.plaintip import plain_tip
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class PlaceButton(QPushButton):
    """A quiet line that ends in an ellipsis when there is no room; the tip has it whole."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = ""
        self.setObjectName("shelf_places")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        set_role(self, "link")

    def words(self) -> str:
        """Return the whole line."""
        return self._words

    def set_words(self, words: str) -> None:
        """Say ``words``; without any there is nothing to open."""
        self._words = words
        self.setVisible(bool(words))
        self.setAccessibleName(self.tr("Places: {places}").format(places=words))
        tip = self.tr("Change the places and how warm they are")
        self.setToolTip(plain_tip(f"{words}\n{tip}"))
        self._shorten()

    def minimumSizeHint(self) -> QSize:
        """Give way: a few letters are enough to live on."""
        return QSize(4 * SPACE, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Show as much as there is room for."""
        super().resizeEvent(event)
        self._shorten()

    def _shorten(self) -> None:
        room = self.width() - SPACE // 2
        shown = self.fontMetrics().elidedText(self._words, Qt.TextElideMode.ElideRight, room)
        self.setText(shown.replace("&", "&&"))
