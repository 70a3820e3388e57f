"""What stays around the pages: the rail, the notice bar, the foot with undo and what is due."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QStackedWidget, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.widgets.deskline import DeskLine
from brewdesk.widgets.duestrip import DueStrip
from brewdesk.widgets.noticebar import ActBar, NoticeBar
from brewdesk.widgets.rail import Rail
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class WindowFrame(QWidget):
    """Lays out the window around a stack of pages, ``first`` on top."""

    def __init__(self, desk: Desk, first: QWidget, *, is_demo: bool) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        self.rail = Rail(
            [
                ("shelf", "shelf", self.tr("Shelf")),
                ("plan", "plan", self.tr("Plan")),
                ("bottles", "bottle", self.tr("Bottles")),
                ("due", "due", self.tr("Due")),
                ("cultures", "cultures", self.tr("Cultures")),
                ("stores", "stores", self.tr("Stores")),
                ("trials", "trials", self.tr("Trials")),
                ("history", "history", self.tr("History")),
                ("labels", "labels", self.tr("Labels")),
                ("reckoner", "reckon", self.tr("Reckon")),
                ("settings", "settings", self.tr("Settings")),
            ]
        )
        row.addWidget(self.rail)
        column = QVBoxLayout()
        column.setSpacing(0)
        if is_demo:
            column.addWidget(self._demo_banner())
        self.notice = NoticeBar()
        notice_place = QVBoxLayout()
        notice_place.setContentsMargins(SPACE, 0, SPACE, 0)
        if desk.desks.are_several:
            self.desk_line = DeskLine(desk.desks)
            notice_place.addWidget(self.desk_line)
        notice_place.addWidget(self.notice)
        column.addLayout(notice_place)
        self.stack = QStackedWidget()
        self.stack.addWidget(first)
        column.addWidget(self.stack, 1)
        column.addWidget(self._bottom(desk))
        row.addLayout(column, 1)

    def _demo_banner(self) -> QFrame:
        banner = QFrame()
        set_role(banner, "strip")
        line = QHBoxLayout(banner)
        line.setContentsMargins(3 * SPACE, SPACE - 2, 2 * SPACE, SPACE - 2)
        words = QLabel(
            self.tr(
                "This pantry is invented, to look around in. Its jars and readings are made up "
                "and kept in a file of their own."
            )
        )
        words.setObjectName("demo_banner")
        set_role(words, "warn")
        words.setWordWrap(True)
        line.addWidget(words)
        return banner

    def _bottom(self, desk: Desk) -> QFrame:
        frame = QFrame()
        set_role(frame, "strip")
        row = QHBoxLayout(frame)
        row.setContentsMargins(SPACE, SPACE // 2, SPACE, SPACE // 2)
        row.setSpacing(2 * SPACE)
        self.act_bar = ActBar(desk.history, desk.quantities.show)
        self.due_strip = DueStrip(desk)
        row.addWidget(self.act_bar, 0)
        row.addStretch(1)
        row.addWidget(self.due_strip, 0)
        return frame
