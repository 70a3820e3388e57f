"""Everything that ever was in the pantry: look for it, and read its life."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.finds import FindsModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import StoreTrouble
from brewdesk.services.search import FINDS_SHOWN
from brewdesk.services.searchwords import Answer, Find
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.wording.problems import trouble_words
from brewdesk.services.wording.search import count_words, nothing_words
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.findslist import FindsList
from brewdesk.widgets.historyfilters import HistoryFilters
from brewdesk.widgets.historypane import HistoryPane
from brewdesk.widgets.theme import SPACE

if TYPE_CHECKING:
    from brewdesk.widgets.lookbackpage import LookBackPage

TYPING_MS = 120
BUSY_AFTER_MS = 250
_LEFT_SHARE = 0.4
FIND, LOOK_BACK = "find", "look_back"


class HistoryPage(QWidget):
    """Search, filters, finds and the chosen life.

    ``batch_wanted``, ``vessel_wanted`` and ``culture_wanted`` carry the id of what is to be
    shown in its own place; ``places_wanted`` asks for the places.
    """

    batch_wanted = Signal(int)
    vessel_wanted = Signal(int)
    culture_wanted = Signal(int)
    places_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("history_page")
        self._desk = desk
        self._is_stale = True
        self._is_showing = False
        self._limit = FINDS_SHOWN
        self.answer: Answer | None = None
        self.look_back: LookBackPage | None = None  # until it is first looked at
        self._sides = QStackedWidget()
        self.model = FindsModel(desk.clock, self)
        self._typing = self._timer("history_typing", TYPING_MS, self.ask)
        self._busy_later = self._timer("history_busy", BUSY_AFTER_MS, self._show_busy)
        self._build()
        self._connect()

    def show_subject(self, subject: Subject) -> None:
        """Show the life of one thing, whatever is looked for."""
        self.turn_to(FIND)
        self.list.setCurrentIndex(QModelIndex())
        self.list.clearSelection()
        self.pane.show_subject(subject)
        self.pane.take_keyboard()

    def focus_search(self) -> None:
        """Put the keyboard into the words to look for."""
        self.turn_to(FIND)
        self.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.search.selectAll()

    def turn_to(self, side: str) -> None:
        """Show the search ("find") or the look back ("look_back")."""
        self.sides.set_value(side)
        is_back = side == LOOK_BACK
        if is_back and self.look_back is None:
            from brewdesk.widgets.lookbackpage import LookBackPage

            self.look_back = LookBackPage(self._desk)
            self.look_back.subject_wanted.connect(self.show_subject)
            self._sides.addWidget(self.look_back)
        if is_back and self.look_back is not None:
            self._sides.setCurrentWidget(self.look_back)
        else:
            self._sides.setCurrentIndex(0)
        self.search.setVisible(not is_back)

    def ask(self) -> None:
        """Look for what is typed, through the filters as they are."""
        self._typing.stop()
        self._is_stale = False
        self._busy_later.start()
        self._desk.search.ask(self.search.text(), self.filters.sieve(), limit=self._limit)

    # building

    def _timer(self, name: str, milliseconds: int, call: object) -> QTimer:
        made = QTimer(self)
        made.setObjectName(name)
        made.setSingleShot(True)
        made.setInterval(milliseconds)
        made.timeout.connect(call)
        return made

    def _build(self) -> None:
        self.search = QLineEdit()
        self.search.setObjectName("history_search")
        self.search.setPlaceholderText(self.tr("Find batches, jars, cultures, notes, anything"))
        self.search.setAccessibleName(self.tr("Words to find"))
        self.search.setMaxLength(200)
        self.filters = HistoryFilters(self._desk)
        self.count = plain_label("", "muted")
        self.count.setObjectName("history_count")
        self.list = FindsList(self.model)
        self.nothing = plain_label("", "muted", wraps=True)
        self.nothing.setObjectName("history_nothing")
        self.nothing.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.nothing_clear = QPushButton(self.tr("Clear filters"))
        self.nothing_clear.setObjectName("history_nothing_clear")
        self.nothing_clear.clicked.connect(self.filters.clear)
        nothing_page = QWidget()
        column = QVBoxLayout(nothing_page)
        column.setSpacing(SPACE)
        column.addStretch(1)
        column.addWidget(self.nothing)
        column.addWidget(self.nothing_clear, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(2)
        self._nothing_page = nothing_page
        self._finds = QStackedWidget()
        self._finds.addWidget(self.list)
        self._finds.addWidget(nothing_page)
        self.more_button = QPushButton(self.tr("Show more"))
        self.more_button.setObjectName("history_more")
        self.more_button.hide()
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 2 * SPACE, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.count)
        column.addWidget(self._finds, 1)
        column.addWidget(self.more_button, 0, Qt.AlignmentFlag.AlignLeft)
        left.setMinimumWidth(30 * SPACE)
        self.pane = HistoryPane(self._desk)
        self.pane.setMinimumWidth(38 * SPACE)
        self.splitter = QSplitter(Qt.Orientation.Horizontal)
        self.splitter.setObjectName("history_splitter")
        self.splitter.setHandleWidth(1)
        self.splitter.setChildrenCollapsible(False)
        self.splitter.addWidget(left)
        self.splitter.addWidget(self.pane)
        self.splitter.setStretchFactor(0, 2)
        self.splitter.setStretchFactor(1, 3)
        self._is_split = False
        self.sides = ChoiceBar(
            ((FIND, self.tr("Find")), (LOOK_BACK, self.tr("Look back"))), self.tr("History")
        )
        self.sides.setObjectName("history_sides")
        self.sides.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        find = QWidget()
        column = QVBoxLayout(find)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE + SPACE // 2)
        column.addWidget(self.filters)
        column.addWidget(self.splitter, 1)
        self._sides.addWidget(find)
        head = QHBoxLayout()
        head.setSpacing(3 * SPACE)
        head.addWidget(plain_label(self.tr("History"), "title"))
        head.addWidget(self.sides)
        head.addWidget(self.search, 1)
        head.addStretch()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        layout.setSpacing(SPACE + SPACE // 2)
        layout.addLayout(head)
        layout.addWidget(self._sides, 1)

    def _connect(self) -> None:
        self.sides.chosen.connect(self.turn_to)
        self.search.installEventFilter(self)
        self.search.textChanged.connect(self._on_typed)
        self.search.returnPressed.connect(self._on_return)
        self.filters.changed.connect(self._on_filtered)
        self.list.selectionModel().currentChanged.connect(self._on_current)
        self.list.opened.connect(self._on_opened)
        self.list.left.connect(self.focus_search)
        self.more_button.clicked.connect(self._on_more)
        self.pane.left.connect(self._on_pane_left)
        self.pane.followed.connect(self.show_subject)
        self.pane.open_wanted.connect(self._jump)
        self._desk.search.answered.connect(self._on_answered)
        self._desk.search.failed.connect(self._on_failed)
        self._desk.changes.changed.connect(self._on_changed)

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        self._widen_sides()
        if not self._is_split and self.width() > 0:
            self._is_split = True
            left = round(self.width() * _LEFT_SHARE)
            self.splitter.setSizes([left, self.width() - left])
        if self._is_stale:
            self.filters.refresh()
            self.ask()
        self.pane.catch_up()

    def changeEvent(self, event: QEvent) -> None:
        """Give the two sides room around their words, whatever size these have."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._widen_sides()

    def _widen_sides(self) -> None:
        metrics = QFontMetrics(QApplication.font())
        words = "".join(self.sides.button(side).text() for side in (FIND, LOOK_BACK))
        self.sides.setMinimumWidth(metrics.horizontalAdvance(words) + 16 * SPACE)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Arrow down goes to what was found; Escape takes the words back, then the filters."""
        is_press = event.type() == QEvent.Type.KeyPress
        if watched is self.search and is_press and isinstance(event, QKeyEvent):
            if event.key() == Qt.Key.Key_Down:
                self._go_to_finds()
                return True
            if event.key() == Qt.Key.Key_Escape and self.search.text():
                self.search.clear()
                return True
            if event.key() == Qt.Key.Key_Escape and self.filters.names():
                self.filters.clear()
                return True
        return super().eventFilter(watched, event)

    # asking and answering

    def _on_typed(self) -> None:
        self._limit = FINDS_SHOWN
        self._typing.start()

    def _on_filtered(self) -> None:
        self._limit = FINDS_SHOWN
        self.ask()

    def _on_more(self) -> None:
        self._limit += FINDS_SHOWN
        self.ask()

    def _on_answered(self, answer: Answer) -> None:
        self._busy_later.stop()
        self.answer = answer
        chosen = self.list.chosen()
        self._is_showing = True
        self.model.set_rows(answer.finds)
        kept = self.model.index_of((chosen.kind, chosen.id)) if chosen is not None else None
        if kept is not None and kept.isValid():
            self.list.setCurrentIndex(kept)
        else:
            self.list.setCurrentIndex(QModelIndex())
            self.list.clearSelection()
            self.list.scrollToTop()
        self._is_showing = False
        self.count.setText(count_words(answer))
        self.more_button.setVisible(answer.more > 0)
        if not answer.finds:
            self.nothing.setText(nothing_words(answer, self.filters.names()))
            self.nothing_clear.setVisible(answer.without_filters > 0)
        self._finds.setCurrentWidget(self.list if answer.finds else self._nothing_page)
        announce(self, self.count.text() if answer.finds else self.nothing.text())
        if answer.finds and self.pane.subject() is None:
            self.list.setCurrentIndex(self.model.index(0, 0))

    def _on_failed(self, error: BaseException) -> None:
        self._busy_later.stop()
        if not isinstance(error, StoreTrouble):
            raise error
        self.count.setText("")
        self.nothing.setText(trouble_words(error))
        self.nothing_clear.hide()
        self._finds.setCurrentWidget(self._nothing_page)

    def _show_busy(self) -> None:
        self.count.setText(self.tr("Looking through your records…"))

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(~Topic.FORECASTS):
            return
        self._is_stale = True
        if self.isVisible():
            if change.concerns(Topic.CULTURES | Topic.PLACES):
                self.filters.refresh()
            self._typing.start()

    # choosing

    def _go_to_finds(self) -> None:
        if self.model.rowCount() == 0:
            return
        if not self.list.currentIndex().isValid():
            self.list.setCurrentIndex(self.model.index(0, 0))
        self.list.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _on_return(self) -> None:
        """Look at once, and go to what was found."""
        if self._typing.isActive():
            self.ask()
        self._go_to_finds()

    def _on_current(self, now: QModelIndex, _before: QModelIndex) -> None:
        find = self.model.row_at(now)
        if find is not None and find.subject is not None and not self._is_showing:
            self.pane.show_subject(find.subject, find)

    def _on_pane_left(self) -> None:
        if self.model.rowCount():
            self._go_to_finds()
        else:
            self.focus_search()

    def _on_opened(self, find: Find) -> None:
        if find.subject is not None:
            self.pane.show_subject(find.subject, find)
            self._jump(find.subject)

    def _jump(self, subject: Subject) -> None:
        """Go to the thing itself; what is over or off the shelf is looked at here."""
        if subject.kind is SubjectKind.PLACE:
            self.places_wanted.emit()
        elif subject.kind is SubjectKind.CULTURE:
            self.culture_wanted.emit(subject.id)
        elif subject.kind is SubjectKind.VESSEL:
            if any(row.id == subject.id for row in self._desk.vessels.all()):
                self.vessel_wanted.emit(subject.id)
            else:
                self.pane.take_keyboard()
        elif self._is_live(subject.id):
            self.batch_wanted.emit(subject.id)
        else:
            self.pane.show_records()

    def _is_live(self, batch_id: int) -> bool:
        try:
            return self._desk.batches.get(batch_id).stage.is_live
        except StoreTrouble:  # taken back meanwhile, or not to be read: the pane tells which
            return False
