"""Losses with their reasons in the maker's own words, and what usually helps."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QPushButton, QSizePolicy, QVBoxLayout, QWidget

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.desk import Desk
from brewdesk.services.lookbacklosses import Loss
from brewdesk.services.losscauses import Cause
from brewdesk.services.wording.losses import cause_words, help_words, loss_words
from brewdesk.widgets.fields import make_strong, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

SHOWN = 8  # more are opened by a button


class _ShortButton(QPushButton):
    """A button whose words end in an ellipsis where there is no room; the tip has them whole."""

    def __init__(self, words: str) -> None:
        super().__init__()
        self._words = words
        self.setToolTip(plain_tip(words))
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def minimumSizeHint(self) -> QSize:
        """Give way: a few letters are enough to live on."""
        return QSize(12 * SPACE, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Shorten the words to the room there is."""
        super().resizeEvent(event)
        self._shorten()

    def changeEvent(self, event: QEvent) -> None:
        """Shorten anew when the type size changes."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._shorten()

    def _shorten(self) -> None:
        room = self.contentsRect().width() - SPACE
        shown = self.fontMetrics().elidedText(self._words, Qt.TextElideMode.ElideRight, room)
        words = shown.replace("&", "&&")
        if words != self.text():
            self.setText(words)


class LossList(QWidget):
    """Shows losses by their cause. ``opened`` carries one of them."""

    opened = Signal(object)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("loss_list")
        self._desk = desk
        self._losses: tuple[Loss, ...] = ()
        self._shows_all = False
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(SPACE)

    def set_losses(self, losses: tuple[Loss, ...]) -> None:
        """Show ``losses``, the newest first; nothing is built anew if they are the same."""
        if losses == self._losses and self._column.count():
            return
        self._losses = losses
        self._build()

    def _build(self) -> None:
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        shown = self._losses if self._shows_all else self._losses[:SHOWN]
        for loss in shown:
            self._column.addWidget(self._entry(loss))
        if len(shown) < len(self._losses):
            words = self.tr("Show all {count} losses").format(count=len(self._losses))
            more = QPushButton(words)
            more.setObjectName("loss_more")
            set_role(more, "quiet")
            more.clicked.connect(self._on_more)
            self._column.addWidget(more)
        causes = dict.fromkeys(loss.cause for loss in self._losses)
        helped = [cause for cause in causes if help_words(cause)]
        if helped:
            self._column.addWidget(self._helps(helped))

    def _entry(self, loss: Loss) -> QWidget:
        show, zone = self._desk.quantities.show, self._desk.clock.zone()
        entry = QWidget()
        column = QVBoxLayout(entry)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 4)
        words = loss_words(loss, show, zone)
        head = _ShortButton(words)
        head.setObjectName("loss_open")
        head.setAccessibleName(self.tr("Open the history: {what}").format(what=words))
        set_role(head, "kin")
        head.clicked.connect(lambda: self.opened.emit(loss))
        column.addWidget(head)
        reason = loss.reason or self.tr("No reason was written down.")
        column.addWidget(plain_label(reason, "", wraps=True))
        return entry

    def _helps(self, causes: list[Cause]) -> QWidget:
        box = QWidget()
        column = QVBoxLayout(box)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.setSpacing(SPACE // 2)
        heading = plain_label(self.tr("What usually helps"))
        make_strong(heading)
        column.addWidget(heading)
        for cause in causes:
            words = self.tr("{cause}: {help}").format(
                cause=cause_words(cause), help=help_words(cause)
            )
            column.addWidget(plain_label(words, "", wraps=True))
        marked = self.tr(
            "Common practice, no source. The causes are read from your own words; what they "
            "do not name is left as it is."
        )
        column.addWidget(plain_label(marked, "label", wraps=True))
        return box

    def _on_more(self) -> None:
        self._shows_all = True
        self._build()
