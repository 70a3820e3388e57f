"""Notices by the desktop's own service (freedesktop.org Desktop Notifications, version 1.2).

What is sent, and what the capabilities mean, follows that specification:
https://specifications.freedesktop.org/notification-spec/
"""

from __future__ import annotations

import html
import logging
import unicodedata

from jeepney import DBusAddress, HeaderFields, MatchRule, Message, MessageType, new_method_call
from jeepney.bus_messages import message_bus
from PySide6.QtCore import QObject, QTextBoundaryFinder, QTimer

from brewdesk.services.notices.port import Notice, NoticeAction, Notifier, Urgency
from brewdesk.services.notices.session_bus import SessionBus

_log = logging.getLogger(__name__)

SERVICE = "org.freedesktop.Notifications"
PATH = "/org/freedesktop/Notifications"
APP_NAME = "Brewdesk"
DESKTOP_ENTRY = "brewdesk"
CATEGORY = "x-brewdesk.reminder"  # the specification's own list has none for reminders
DEFAULT_ACTION = "default"  # the one that a click on the notice itself means
ANSWER_TIMEOUT_MS = 5_000
TITLE_LIMIT = 120
BODY_LIMIT = 600
PENDING_LIMIT = 20

_DESKTOP = DBusAddress(PATH, bus_name=SERVICE, interface=SERVICE)
_BUS_NAME = "org.freedesktop.DBus"
_URGENCY_BYTE = {Urgency.LOW: 0, Urgency.NORMAL: 1, Urgency.CRITICAL: 2}
_SERVER_CHOOSES = -1


class FreedesktopNotifier(Notifier):
    """Show notices on a Linux desktop, as far as there is a service that takes them.

    Without a bus or a service nothing is raised: `is_available` becomes false, the
    newest notices are kept, and they are shown when a service appears. A bus that
    was not there is looked for again when the next notice comes.
    """

    def __init__(self, address: str | None = None, parent: QObject | None = None) -> None:
        super().__init__()
        if parent is not None:
            self.setParent(parent)
        self._address = address
        self._bus: SessionBus | None = None
        self._is_connected = False
        self._capabilities: frozenset[str] | None = None
        self._was_available = False
        self._waiting: dict[str, Notice] = {}  # not yet taken by a service
        self._sent: dict[str, Notice] = {}  # on its way, not yet answered
        self._id_by_key: dict[str, int] = {}
        self._silence = QTimer(self, singleShot=True, interval=ANSWER_TIMEOUT_MS)
        self._silence.timeout.connect(self._on_silence)

    def start(self) -> None:
        """Look for the bus and the service, without waiting for them."""
        if self._bus is not None:
            return
        bus = SessionBus(self._address, self)
        self._bus = bus
        bus.ready.connect(self._on_ready)
        bus.lost.connect(self._on_lost)
        bus.signalled.connect(self._on_signal)
        bus.open()

    def is_available(self) -> bool:
        """Whether a service has said what it can do and answers."""
        return self._was_available

    def show(self, notice: Notice) -> None:
        """Show ``notice``, or bring the one with its key up to date."""
        self._waiting.pop(notice.key, None)
        self._waiting[notice.key] = notice
        while len(self._waiting) > PENDING_LIMIT:
            del self._waiting[next(iter(self._waiting))]
        if self._bus is None:
            self.start()
        elif self._capabilities is not None:
            self._send_waiting()
        elif self._is_connected and not self._silence.isActive():
            self._ask_capabilities()

    def withdraw(self, key: str) -> None:
        """Take the notice with this key off the screen, and do not show it if it waits."""
        self._waiting.pop(key, None)
        self._sent.pop(key, None)
        notice_id = self._id_by_key.pop(key, None)
        if notice_id is not None and self._bus is not None:
            self._bus.send(new_method_call(_DESKTOP, "CloseNotification", "u", (notice_id,)))

    def close(self) -> None:
        """Let go of the bus."""
        self._silence.stop()
        if self._bus is not None:
            self._bus.close()
            self._bus.deleteLater()
            self._bus = None
        self._forget_service()
        self._is_connected = False

    def _on_ready(self) -> None:
        if self._bus is None:
            return
        self._is_connected = True
        for member in ("ActionInvoked", "NotificationClosed"):
            rule = MatchRule(type="signal", interface=SERVICE, path=PATH, member=member)
            self._bus.send(message_bus.AddMatch(rule))
        owner_rule = MatchRule(
            type="signal", sender=_BUS_NAME, interface=_BUS_NAME, member="NameOwnerChanged"
        )
        owner_rule.add_arg_condition(0, SERVICE)
        self._bus.send(message_bus.AddMatch(owner_rule))
        self._ask_capabilities()

    def _ask_capabilities(self) -> None:
        if self._bus is not None:
            self._silence.start()
            self._bus.send(new_method_call(_DESKTOP, "GetCapabilities"), self._on_capabilities)

    def _on_capabilities(self, reply: Message) -> None:
        self._silence.stop()
        if reply.header.message_type is MessageType.error or not reply.body:
            _log.info("no notice service: %s", reply.header.fields.get(HeaderFields.error_name))
            self._forget_service()
            self._set_available(False)
            return
        self._capabilities = frozenset(str(name) for name in reply.body[0])
        self._set_available(True)
        self._send_waiting()

    def _send_waiting(self) -> None:
        waiting, self._waiting = self._waiting, {}
        for notice in waiting.values():
            self._send(notice)

    def _send(self, notice: Notice) -> None:
        if self._bus is None or self._capabilities is None:
            self._waiting[notice.key] = notice
            return
        message = new_method_call(
            _DESKTOP,
            "Notify",
            "susssasa{sv}i",
            notify_arguments(notice, self._capabilities, self._id_by_key.get(notice.key, 0)),
        )
        self._sent[notice.key] = notice
        self._silence.start()
        self._bus.send(message, lambda reply: self._on_notified(notice, reply))

    def _on_notified(self, notice: Notice, reply: Message) -> None:
        self._silence.stop()
        is_still_wanted = self._sent.get(notice.key) is notice
        if is_still_wanted:
            del self._sent[notice.key]
        if reply.header.message_type is MessageType.error:
            _log.info("a notice was refused: %s", reply.header.fields.get(HeaderFields.error_name))
            if is_still_wanted:
                self._waiting.setdefault(notice.key, notice)
            self._forget_service()
            self._set_available(False)
            return
        self._set_available(True)
        (notice_id,) = reply.body
        if is_still_wanted or notice.key in self._sent:
            self._id_by_key[notice.key] = notice_id
        elif self._bus is not None:  # withdrawn while it was on its way
            self._bus.send(new_method_call(_DESKTOP, "CloseNotification", "u", (notice_id,)))

    def _on_signal(self, message: Message) -> None:
        member = message.header.fields.get(HeaderFields.member)
        if member == "NameOwnerChanged" and message.body[0] == SERVICE:
            self._on_owner_changed(bool(message.body[2]))
        elif member == "ActionInvoked":
            self._on_action(int(message.body[0]), str(message.body[1]))
        elif member == "NotificationClosed":
            self._forget_id(int(message.body[0]))

    def _on_owner_changed(self, has_owner: bool) -> None:
        # Ids mean something to the service that gave them alone; what it had not answered,
        # it has not shown for long.
        self._waiting = {**self._sent, **self._waiting}
        self._forget_service()
        if has_owner:
            self._ask_capabilities()
        else:
            self._set_available(False)

    def _on_action(self, notice_id: int, name: str) -> None:
        for key, known_id in self._id_by_key.items():
            if known_id == notice_id:
                action = _action_named(name)
                if action is not None:
                    self.acted.emit(key, action)
                return

    def _forget_id(self, notice_id: int) -> None:
        self._id_by_key = {
            key: known_id for key, known_id in self._id_by_key.items() if known_id != notice_id
        }

    def _on_silence(self) -> None:
        _log.info("the notice service does not answer")
        self._set_available(False)

    def _on_lost(self) -> None:
        self._silence.stop()
        self._waiting = {**self._sent, **self._waiting}
        self._forget_service()
        self._is_connected = False
        if self._bus is not None:
            self._bus.deleteLater()
            self._bus = None
        self._set_available(False)

    def _forget_service(self) -> None:
        self._capabilities = None
        self._sent.clear()
        self._id_by_key.clear()

    def _set_available(self, is_available: bool) -> None:
        if is_available != self._was_available:
            self._was_available = is_available
            self.availability_changed.emit(is_available)


def notify_arguments(
    notice: Notice, capabilities: frozenset[str], replaces_id: int
) -> tuple[object, ...]:
    """Return the arguments of the service's ``Notify`` for what it can do.

    Without ``actions`` there are no buttons; with ``body-markup`` the body is escaped,
    since names on jars are words and never markup.
    """
    body = shortened(notice.body, BODY_LIMIT)
    if "body-markup" in capabilities:
        body = html.escape(body, quote=False)
    actions: list[str] = []
    if "actions" in capabilities:
        for action, label in notice.actions:
            name = DEFAULT_ACTION if action is NoticeAction.OPEN else action.value
            actions += [name, shortened(label, TITLE_LIMIT)]
    hints = {
        "desktop-entry": ("s", DESKTOP_ENTRY),
        "category": ("s", CATEGORY),
        "urgency": ("y", _URGENCY_BYTE[notice.urgency]),
        "suppress-sound": ("b", True),  # the program has its own chime, and its own switch for it
    }
    title = shortened(notice.title, TITLE_LIMIT)
    return (APP_NAME, replaces_id, DESKTOP_ENTRY, title, body, actions, hints, _SERVER_CHOOSES)


def shortened(text: str, limit: int) -> str:
    """Cut to ``limit`` characters, never inside what is read as one, without control characters."""
    clean = "".join(
        letter
        for letter in text
        if letter == "\n" or unicodedata.category(letter) not in _UNSENDABLE
    )
    if len(clean) <= limit:
        return clean
    # The finder counts UTF-16 units; its bytes are cut, so that positions agree.
    units = clean.encode("utf-16-le")
    finder = QTextBoundaryFinder(QTextBoundaryFinder.BoundaryType.Grapheme, clean)
    finder.setPosition(limit - 1)
    end = finder.position() if finder.isAtBoundary() else finder.toPreviousBoundary()
    return units[: 2 * end].decode("utf-16-le").rstrip() + "…"


_UNSENDABLE = ("Cc", "Cs")  # control characters, and halves of surrogate pairs


def _action_named(name: str) -> NoticeAction | None:
    if name == DEFAULT_ACTION:
        return NoticeAction.OPEN
    return next((action for action in NoticeAction if action.value == name), None)
