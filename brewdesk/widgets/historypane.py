"""One life: what it is of, its time line, its photos, and the records of a batch."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QPushButton,
    QStackedWidget,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.timeline import TimelineModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import Batch, BatchStage, StoreTrouble
from brewdesk.services.searchwords import Find, FoundKind
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.timeline import LINES_AT_FIRST, TimelineView
from brewdesk.services.wording.problems import trouble_words
from brewdesk.services.wording.timeline import count_words, subject_kind_words
from brewdesk.widgets.batchrecords import BatchAmounts, BatchCurve, BatchReadings
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.figurerow import ElidedLabel
from brewdesk.widgets.photostrip import PhotoStrip
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.timelinelist import TimelineList

_TABLES = {FoundKind.NOTE: "reading", FoundKind.CARE: "care", FoundKind.PHOTO: "photo"}
_CURVE, _READINGS, _PHOTOS, _AMOUNTS = 1, 2, 3, 4  # tabs behind the time line


class HistoryPane(QWidget):
    """Shows one subject. ``open_wanted`` asks to jump to it, ``left`` to leave for the finds."""

    open_wanted = Signal(object)
    followed = Signal(object)
    left = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("history_pane")
        self._desk = desk
        self._subject: Subject | None = None
        self._find: Find | None = None
        self._batch: Batch | None = None
        self._limit = LINES_AT_FIRST
        self._is_stale = False
        self.model = TimelineModel(desk.clock, self)
        self._build()
        desk.timeline.ready.connect(self._on_ready)
        desk.timeline.failed.connect(self._on_failed)
        desk.changes.changed.connect(self._on_changed)

    def subject(self) -> Subject | None:
        """Return whose life is on show."""
        return self._subject

    def show_subject(self, subject: Subject | None, find: Find | None = None) -> None:
        """Show a life; with a find, the line that tells of it."""
        is_other = subject != self._subject
        self._subject, self._find = subject, find
        if subject is None:
            self._stack.setCurrentWidget(self.empty)
            return
        if is_other:
            self._limit = LINES_AT_FIRST
            self.model.set_view(None)
            self.title.setText("")
            self.about.setText(subject_kind_words(subject.kind))
            self._show_batch(subject)
        self._ask()

    def take_keyboard(self) -> None:
        """Put the keyboard on the time line."""
        self.tabs.setCurrentIndex(0)
        if not self.list.currentIndex().isValid() and self.model.rowCount() > 1:
            self.list.setCurrentIndex(self.model.index(1, 0))
        self.list.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def show_records(self) -> None:
        """Bring the curve of a batch that is over to the front."""
        if self._batch is not None:
            self.tabs.setCurrentIndex(_CURVE)
            self.tabs.tabBar().setFocus(Qt.FocusReason.ShortcutFocusReason)

    def catch_up(self) -> None:
        """Read again what changed while nobody looked."""
        if self._is_stale and self._subject is not None:
            self._is_stale = False
            self._show_batch(self._subject)
            self._ask()

    # building

    def _build(self) -> None:
        self.title, self.about = ElidedLabel(), plain_label("", "muted", wraps=True)
        self.title.setObjectName("history_title")
        self.title.setTextFormat(Qt.TextFormat.PlainText)
        set_role(self.title, "title")
        self.open_button = QPushButton()
        self.open_button.setObjectName("history_open")
        self.open_button.clicked.connect(self._on_open)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.title)
        words.addWidget(self.about)
        head = QHBoxLayout()
        head.setSpacing(SPACE)
        head.addLayout(words, 1)
        head.addWidget(self.open_button, 0, Qt.AlignmentFlag.AlignTop)
        self.list = TimelineList(self.model)
        self.list.followed.connect(self.followed)
        self.list.left.connect(self.left)
        self.more_button = QPushButton(self.tr("Show older lines"))
        self.more_button.setObjectName("history_older")
        self.more_button.clicked.connect(self._on_more)
        self.more_button.hide()
        line_page = QWidget()
        column = QVBoxLayout(line_page)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.list, 1)
        column.addWidget(self.more_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.curve = BatchCurve(self._desk)
        self.readings = BatchReadings(self._desk)
        self.photos = PhotoStrip(self._desk)
        self.amounts = BatchAmounts(self._desk)
        self.tabs = QTabWidget()
        self.tabs.setObjectName("history_tabs")
        self.tabs.setDocumentMode(True)
        self.tabs.setAccessibleName(self.tr("Time line and records"))
        self.tabs.addTab(line_page, self.tr("Time line"))
        self.tabs.addTab(self.curve, self.tr("Curve"))
        self.tabs.addTab(self.readings, self.tr("Readings"))
        self.tabs.addTab(self.photos, self.tr("Photos"))
        self.tabs.addTab(self.amounts, self.tr("Recipe"))
        self.tabs.currentChanged.connect(self._show_tab)
        self.problem = plain_label("", "error", wraps=True)
        self.problem.hide()
        life = QWidget()
        column = QVBoxLayout(life)
        column.setContentsMargins(2 * SPACE, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addLayout(head)
        column.addWidget(self.problem)
        column.addWidget(self.tabs, 1)
        self.empty = plain_label(
            self.tr("Choose something on the left: all that happened to it is told here."),
            "muted",
            wraps=True,
        )
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._life = life
        self._stack = QStackedWidget()
        self._stack.addWidget(self.empty)
        self._stack.addWidget(life)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._stack)

    # showing

    def _ask(self) -> None:
        if self._subject is not None:
            self._desk.timeline.request(self._subject, limit=self._limit)

    def _show_batch(self, subject: Subject) -> None:
        """Show the tabs of a batch's records, and name the way to the thing itself."""
        self._batch = None
        try:
            if subject.kind is SubjectKind.BATCH:
                self._batch = self._desk.batches.get(subject.id)
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
        is_batch = self._batch is not None
        for tab in (_CURVE, _READINGS, _AMOUNTS):
            self.tabs.setTabVisible(tab, is_batch)
        has_photos = self._photo_owner() is not None
        self.tabs.setTabVisible(_PHOTOS, has_photos)
        self.tabs.tabBar().setVisible(is_batch or has_photos)
        words = self._open_words(subject)
        self.open_button.setText(words)
        self.open_button.setVisible(bool(words))
        self._show_tab()

    def _open_words(self, subject: Subject) -> str:
        if subject.kind is SubjectKind.BATCH:
            is_live = self._batch is not None and self._batch.stage.is_live
            return self.tr("Show its jar") if is_live else ""
        if subject.kind is SubjectKind.VESSEL:
            on_shelf = any(row.id == subject.id for row in self._desk.vessels.all())
            return self.tr("Show on the shelf") if on_shelf else ""
        if subject.kind is SubjectKind.CULTURE:
            return self.tr("Show in Cultures")
        return self.tr("Show the places")

    def _show_tab(self) -> None:
        """Fill the tab in front; the others wait until they are looked at."""
        tab = self.tabs.currentIndex()
        fill = {
            _CURVE: self.curve.set_batch,
            _READINGS: self.readings.set_batch,
            _AMOUNTS: self.amounts.set_batch,
        }.get(tab)
        if fill is not None and self._batch is not None:
            fill(self._batch)
        if tab == _PHOTOS:
            self.photos.set_owner(self._photo_owner())

    def _photo_owner(self) -> PhotoOwner | None:
        if self._batch is not None:
            is_begun = self._batch.stage is not BatchStage.PLANNED
            return PhotoOwner(batch_id=self._batch.id) if is_begun else None
        if self._subject is not None and self._subject.kind is SubjectKind.CULTURE:
            return PhotoOwner(culture_id=self._subject.id)
        return None

    def _on_ready(self, view: TimelineView) -> None:
        if view.subject != self._subject:
            return
        self._say("")
        self._stack.setCurrentWidget(self._life)
        self.title.setText(view.name)
        kind = subject_kind_words(view.subject.kind)
        self.about.setText(f"{kind} · {count_words(len(view.lines), view.total)}")
        self.model.set_view(view)
        self.more_button.setVisible(len(view.lines) < view.total)
        if self._find is not None:
            self._let_see_find(self._find, view)

    def _let_see_find(self, find: Find, view: TimelineView) -> None:
        """Scroll to the line that tells of the find; if it is an older one, ask for all first."""
        if find.act_id is not None:
            index = self.model.row_of_act(find.act_id)
        elif find.kind in _TABLES:
            index = self.model.row_of(_TABLES[find.kind], find.id)
        else:
            self._find = None
            return
        if not index.isValid() and len(view.lines) < view.total and self._limit < view.total:
            self._limit = view.total
            self._ask()
            return
        self._find = None
        self.list.let_see(index)

    def _on_failed(self, error: BaseException) -> None:
        if not isinstance(error, StoreTrouble):
            raise error
        if error.code == "no_such_row":  # taken back meanwhile
            self.show_subject(None)
        else:
            self._stack.setCurrentWidget(self._life)
            self._say(trouble_words(error))

    def _say(self, words: str) -> None:
        self.problem.setText(words)
        self.problem.setVisible(bool(words))
        announce(self, words)

    # what is done

    def _on_more(self) -> None:
        self._limit += LINES_AT_FIRST
        self._ask()

    def _on_open(self) -> None:
        if self._subject is not None:
            self.open_wanted.emit(self._subject)

    def _on_changed(self, change: Change) -> None:
        if self._subject is None or not change.concerns(~Topic.FORECASTS):
            return
        self._is_stale = True
        if self.isVisible():
            self.catch_up()
