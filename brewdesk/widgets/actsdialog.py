"""Every act of the window by its name, with its keys: to be found by typing, and to be learnt."""

from __future__ import annotations

from collections.abc import Mapping
from typing import cast

from PySide6.QtCore import QEvent, QModelIndex, QObject, QSize, Qt
from PySide6.QtGui import QAction, QColor, QKeyEvent, QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QHeaderView,
    QLineEdit,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.folding import fold, words_of
from brewdesk.widgets.actions import action_specs, menu_titles
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.theme import SPACE, tokens

_WALK = (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown)
_ROW_PX = 36
_ACTION = Qt.ItemDataRole.UserRole


def plain_name(text: str) -> str:
    """Return an act's name without its key mark and its dots."""
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&").removesuffix("…")


class ActsDialog(QDialog):
    """Lists the acts whose names hold all typed words. ``chosen`` is the one to do, if any."""

    def __init__(self, actions: Mapping[str, QAction], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._actions = actions
        self.chosen: QAction | None = None
        self.setObjectName("acts_dialog")
        self.setWindowTitle(self.tr("Find an act"))
        self.setModal(True)
        self.line = QLineEdit(self)
        self.line.setObjectName("acts_line")
        self.line.setPlaceholderText(self.tr("Type what you want to do"))
        self.line.setAccessibleName(self.tr("What you want to do"))
        self.line.installEventFilter(self)
        self.list = QTreeWidget(self)
        self.list.setObjectName("acts_list")
        self.list.setAccessibleName(self.tr("Acts, their menus and their keys"))
        self.list.setRootIsDecorated(False)
        self.list.setUniformRowHeights(True)
        self.list.setHeaderLabels([self.tr("Act"), self.tr("Menu"), self.tr("Keys")])
        header = self.list.header()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column in (1, 2):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        self.none = plain_label(self.tr("No act is called that."), "muted", wraps=True)
        self.note = plain_label(
            self.tr("Acts in grey are not for the jar that is chosen now."), "muted", wraps=True
        )
        buttons, self.go = go_and_leave(self, self.tr("Do it"), self.tr("Close"), go_name="acts_go")
        buttons.accepted.connect(self._take)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        layout.setSpacing(SPACE)
        for widget in (self.line, self.none, self.list, self.note, buttons):
            layout.addWidget(widget)
        self._fill()
        self.line.textChanged.connect(self._sieve)
        self.list.itemActivated.connect(lambda _item, _column: self._take())
        self.list.currentItemChanged.connect(lambda _now, _before: self._show_go())
        self._sieve()
        self.resize(76 * SPACE, 70 * SPACE)
        self.line.setFocus()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: D102  # Qt's
        if event.type() == QEvent.Type.KeyPress:
            pressed = cast("QKeyEvent", event)
            if pressed.key() in _WALK:
                self.list.keyPressEvent(pressed)
                return True
        return super().eventFilter(watched, event)

    def _fill(self) -> None:
        menus = {key: plain_name(title) for key, title in menu_titles().items()}
        for spec in action_specs():
            action = self._actions[spec.key]
            keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
            # The act's own text, which may say more than the list: what is to be undone.
            item = QTreeWidgetItem([plain_name(action.text()), menus[spec.menu], keys])
            item.setData(0, _ACTION, action)
            item.setSizeHint(0, QSize(0, _ROW_PX))
            if not action.isEnabled():
                item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEnabled)
                for column in range(3):
                    item.setForeground(column, QColor(tokens().muted))
            self.list.addTopLevelItem(item)

    def rows(self) -> tuple[QTreeWidgetItem, ...]:
        """Return the acts on show."""
        items = (self.list.topLevelItem(row) for row in range(self.list.topLevelItemCount()))
        return tuple(item for item in items if item is not None and not item.isHidden())

    def _sieve(self) -> None:
        words = words_of(self.line.text())
        for row in range(self.list.topLevelItemCount()):
            item = self.list.topLevelItem(row)
            if item is not None:
                name = fold(f"{item.text(0)} {item.text(1)}")
                item.setHidden(not all(word in name for word in words))
        shown = self.rows()
        doable = [item for item in shown if not item.isDisabled()]
        if doable:
            self.list.setCurrentItem(doable[0])
        else:
            self.list.setCurrentIndex(QModelIndex())
        self.none.setVisible(not shown)
        self.note.setVisible(len(doable) < len(shown))
        self._show_go()
        if not shown:
            announce(self, self.none.text())

    def _show_go(self) -> None:
        item = self.list.currentItem()
        self.go.setEnabled(item is not None and not item.isDisabled())

    def _take(self) -> None:
        item = self.list.currentItem()
        if item is None or item.isDisabled():
            return
        self.chosen = item.data(0, _ACTION)
        self.accept()
