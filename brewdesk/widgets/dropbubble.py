"""A small bubble beside a target: what can be done there, or why nothing can."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt, QTimer
from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from brewdesk.services.records import Level
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import LevelSign

WIDE_PX = 280
STAYS_MS = 7000  # long enough to read two sentences


class DropBubble(QFrame):
    """Lies over its parent, takes no mouse and no keys, and is said to those who listen."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._over = parent
        self.setObjectName("drop_bubble")
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(SPACE + 4, SPACE, SPACE + 4, SPACE)
        self._row.setSpacing(SPACE)
        self._sign: LevelSign | None = None
        self.words = plain_label("", parent=self, wraps=True)
        self._row.addWidget(self.words, 1)
        self._away = QTimer(self)
        self._away.setObjectName("bubble_away")
        self._away.setSingleShot(True)
        self._away.setInterval(STAYS_MS)
        self._away.timeout.connect(self.hide)
        self.hide()

    def say(
        self,
        text: str,
        beside: QRect,
        *,
        refuses: bool,
        stays: bool = True,
        below: bool = False,
    ) -> None:
        """Show ``text`` over the top of a rectangle of the parent, or ``below`` it.

        Without ``stays`` it goes by itself.
        """
        if not text:
            self.hide()
            return
        same = text == self.words.text() and self.isVisible()
        level = Level.STOP if refuses else Level.INFORM
        if self._sign is None or self._sign.level is not level:
            self._show_sign(level)
        set_role(self, "danger" if refuses else "inform")
        self.words.setText(text)
        self.setAccessibleName(text)
        self._place(beside, below=below)
        self.show()
        self.raise_()
        if stays:
            self._away.stop()
        else:
            self._away.start()
        if not same:
            announce(self, text)

    def _show_sign(self, level: Level) -> None:
        if self._sign is not None:
            self._sign.hide()
            self._sign.deleteLater()
        self._sign = LevelSign(level, self)
        self._row.insertWidget(0, self._sign, 0, Qt.AlignmentFlag.AlignTop)

    def _place(self, beside: QRect, *, below: bool) -> None:
        """Lie wholly within the parent."""
        room = self._over.rect().adjusted(SPACE, SPACE, -SPACE, -SPACE)
        margins = self._row.contentsMargins()
        around = margins.left() + margins.right() + 4 * SPACE
        words = self.words.fontMetrics().horizontalAdvance(self.words.text())
        wide = min(WIDE_PX, room.width(), max(words + around + SPACE, 120))
        self.words.setFixedWidth(wide - around)
        self.setFixedWidth(wide)
        self._row.activate()
        high = max(self.heightForWidth(wide), self.sizeHint().height())
        self.setFixedHeight(high)
        left = min(max(beside.center().x() - wide // 2, room.left()), room.right() - wide)
        top = (beside.bottom() if below else beside.top()) + SPACE
        self.move(left, min(max(top, room.top()), room.bottom() - high))
