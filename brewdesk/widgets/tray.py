"""The tray icon: what is due next, the way back, the end; and notices for lack of better ones."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QSystemTrayIcon

from brewdesk.services.notices.port import Notice, NoticeAction, Notifier
from brewdesk.services.plaintext import plain_line
from brewdesk.services.reminders import DueItem
from brewdesk.widgets.icons import program_icon
from brewdesk.widgets.trayicon import tray_icon

MOST_ITEMS = 3
_TEXT_LENGTH_HIGH = 60


class Tray(QObject):
    """Stands in the tray while there is one. Many desktops have none: never rely on it.

    ``item_wanted`` carries the `DueItem` that was chosen from the menu. ``is_there`` says
    whether the desktop has a tray now; it may come and go.
    """

    show_wanted = Signal()
    quit_wanted = Signal()
    item_wanted = Signal(object)

    def __init__(
        self,
        parent: QObject | None = None,
        *,
        is_there: Callable[[], bool] = QSystemTrayIcon.isSystemTrayAvailable,
        icon: QSystemTrayIcon | None = None,
    ) -> None:
        super().__init__(parent)
        self._is_there = is_there
        self._shown: tuple[object, ...] | None = None
        self._items: list[QAction] = []
        self.menu = QMenu()
        self._below_items = self.menu.addSeparator()
        show = QAction(self.tr("Show the shelf"), self.menu)
        show.setObjectName("tray_show")
        show.triggered.connect(self.show_wanted)
        leave = QAction(self.tr("Quit"), self.menu)
        leave.setObjectName("tray_quit")
        leave.triggered.connect(self.quit_wanted)
        self.menu.addAction(show)
        self.menu.addAction(leave)
        self.icon = icon or QSystemTrayIcon(self)
        self.icon.setIcon(tray_icon(is_due=False))
        self.icon.setContextMenu(self.menu)
        self.icon.activated.connect(self._on_activated)
        self.show_due((), 0, ())

    def start(self) -> bool:
        """Put the icon up; False when the desktop has no tray, or not yet."""
        if not self._is_there():
            return False
        if not self.icon.isVisible():
            self.icon.show()
        return True

    def is_up(self) -> bool:
        """Whether the icon stands in a tray now."""
        return self.icon.isVisible() and self._is_there()

    def close(self) -> None:
        """Take the icon away."""
        self.icon.hide()
        self.menu.deleteLater()

    def show_due(self, items: Sequence[DueItem], due_count: int, whens: Sequence[str]) -> None:
        """Show the next things to do and how many are due; ``whens`` says when each is."""
        items = tuple(items[:MOST_ITEMS])
        texts = tuple(self._item_text(item, when) for item, when in zip(items, whens, strict=False))
        shown = (texts, due_count, tuple(item.reminder.id for item in items))
        if shown == self._shown:
            return  # a menu that stands open is not changed under the pointer for nothing
        was_due = self._shown is not None and bool(self._shown[1])
        self._shown = shown
        self._fill(items, texts)
        if bool(due_count) != was_due:
            self.icon.setIcon(tray_icon(is_due=bool(due_count)))
        self.icon.setToolTip(self._tool_tip(due_count))

    def item_actions(self) -> tuple[QAction, ...]:
        """Return the menu's entries for things to do."""
        return tuple(self._items)

    def _fill(self, items: Sequence[DueItem], texts: Sequence[str]) -> None:
        for action in self._items:
            self.menu.removeAction(action)
            action.deleteLater()
        self._items = []
        for item, text in zip(items, texts, strict=True):
            action = QAction(text, self.menu)
            action.triggered.connect(lambda _checked=False, item=item: self.item_wanted.emit(item))
            self._items.append(action)
        if not items:
            nothing = QAction(self.tr("Nothing to do"), self.menu)
            nothing.setEnabled(False)
            self._items.append(nothing)
        self.menu.insertActions(self._below_items, self._items)

    def _item_text(self, item: DueItem, when: str) -> str:
        title = plain_line(item.title, _TEXT_LENGTH_HIGH)
        words = self.tr("Due: {title}") if item.is_due else self.tr("{when}: {title}")
        return words.format(title=title, when=when).replace("&", "&&")

    def _tool_tip(self, due_count: int) -> str:
        if due_count == 0:
            return self.tr("brewdesk: nothing is due")
        if due_count == 1:
            return self.tr("brewdesk: 1 thing is due")
        return self.tr("brewdesk: {count} things are due").format(count=due_count)

    def _on_activated(self, reason: QSystemTrayIcon.ActivationReason) -> None:
        if reason in (
            QSystemTrayIcon.ActivationReason.Trigger,
            QSystemTrayIcon.ActivationReason.DoubleClick,
        ):
            self.show_wanted.emit()


class TrayNotifier(Notifier):
    """Notices through the tray's own message, for desktops without a notice bus."""

    def __init__(self, tray: Tray, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._tray = tray
        self._key = ""
        tray.icon.messageClicked.connect(self._on_clicked)

    def is_available(self) -> bool:
        """Whether the tray is there."""
        return self._tray.is_up()

    def show(self, notice: Notice) -> None:
        """Show the notice; a click on it opens the jar."""
        if not self._tray.is_up():
            return
        self._key = notice.key
        self._tray.icon.showMessage(notice.title, notice.body, program_icon())

    def _on_clicked(self) -> None:
        self.acted.emit(self._key, NoticeAction.OPEN)
