"""The shelf and, beside it, the sheet of the chosen jar."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPoint, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QShowEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.shelf import JAR_ROLE, ShelfModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.drops import Carried, CarriedKind
from brewdesk.services.records import Kind
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.shelf import JarWords, jar_words
from brewdesk.widgets.emptyshelf import EmptyShelf
from brewdesk.widgets.icons import icon
from brewdesk.widgets.jarsheet import JarSheet
from brewdesk.widgets.placebutton import PlaceButton
from brewdesk.widgets.shelfcarrier import ShelfCarrier
from brewdesk.widgets.shelfview import ShelfView
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, Tokens, tokens

SHEET_SHARE = 0.47
_FEW_JARS = 24  # are shown anew in less than a frame
_TURN = "shelf"
_BEFORE_PAINT_S = 0.05
_DONE = object()

SHELF_TOPICS = (
    Topic.VESSELS
    | Topic.CULTURES
    | Topic.BATCHES
    | Topic.STEPS
    | Topic.READINGS
    | Topic.REMINDERS
    | Topic.PLACES
    | Topic.SETTINGS
    | Topic.TRIALS
)


class ShelfPage(QWidget):
    """The heart of the window."""

    add_vessel_wanted = Signal()
    first_painted = Signal()
    plan_wanted = Signal()
    demo_wanted = Signal()
    places_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName("shelf_page")
        self._stale = True
        self.model = ShelfModel(self._words, self)
        self.view = ShelfView()
        self.view.setModel(self.model)
        self.sheet = JarSheet(desk)
        self.empty = EmptyShelf()
        self.empty.add_wanted.connect(self.add_vessel_wanted)
        self.empty.demo_wanted.connect(self.demo_wanted)
        self._stack = QStackedWidget()
        self._stack.addWidget(self.view)
        self._stack.addWidget(self.empty)
        self._left = left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self.carrier = ShelfCarrier(desk, self.view, left, self)
        # Trays stand where the page's head is: nothing moves while something is carried.
        self._head = QStackedWidget()
        self._head.addWidget(self._make_bar())
        self._head.addWidget(self.carrier.trays)
        self._head.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        column.addWidget(self._head)
        column.addWidget(self._stack, 1)
        self.splitter = QSplitter(Qt.Orientation.Horizontal)
        self.splitter.setObjectName("shelf_splitter")
        self.splitter.setHandleWidth(1)
        self.splitter.setChildrenCollapsible(False)
        self.splitter.addWidget(left)
        self.splitter.addWidget(self.sheet)
        self.splitter.setStretchFactor(0, 1)
        self.splitter.setStretchFactor(1, 1)
        self._has_painted = False
        self._is_split = False  # until the maker has a sheet to look at
        left.setMinimumWidth(400)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.splitter)
        self.sheet.hide()
        self.view.jar_chosen.connect(self._on_chosen)
        self.view.jar_opened.connect(self._on_opened)
        self.view.menu_wanted.connect(self._on_menu_wanted)
        self.carrier.carrying.connect(self._on_carrying)
        self.carrier.end_wanted.connect(self._on_end_wanted)
        self.carrier.bottle_wanted.connect(self.sheet.bottle_wanted)
        self.sheet.carry_wanted.connect(self.carrier.ask)
        self.sheet.pick_up_wanted.connect(self.carrier.pick_up)
        self.sheet.top_up_wanted.connect(self.carrier.top_up)
        desk.changes.changed.connect(self._on_changed)
        self._is_filling = False
        self._worn: Tokens | None = None  # the colours of the icon

    def _make_bar(self) -> QWidget:
        bar = QWidget()
        row = QHBoxLayout(bar)
        row.setContentsMargins(3 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        row.setSpacing(SPACE)
        words = QVBoxLayout()
        words.setSpacing(0)
        title = QLabel(self.tr("Shelf"))
        set_role(title, "title")
        self.place_button = PlaceButton()
        self.place_button.clicked.connect(self.places_wanted)
        words.addWidget(title)
        words.addWidget(self.place_button)
        row.addLayout(words, 1)
        self.add_button = QPushButton(self.tr("Add a vessel"))
        self.add_button.setObjectName("add_vessel")
        self.add_button.clicked.connect(self.add_vessel_wanted)
        self.plan_button = QPushButton(self.tr("Plan a batch"))
        self.plan_button.setObjectName("plan_batch")
        set_role(self.plan_button, "primary")
        self.plan_button.clicked.connect(self.plan_wanted)
        row.addWidget(self.add_button)
        row.addWidget(self.plan_button)
        return bar

    def _words(self, jar: JarView) -> JarWords:
        clock = self._desk.clock
        return jar_words(jar, clock.now(), clock.zone(), self._desk.quantities.show)

    def _split(self) -> None:
        """Share the width between shelf and sheet, once; from then on it is the maker's."""
        if not self._is_split and self.width() > 0 and self.isVisible():
            self._is_split = True
            sheet = round(self.width() * SHEET_SHARE)
            self.splitter.setSizes([self.width() - sheet, sheet])

    # --- refreshing ------------------------------------------------------------------

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        if not self._stale:
            return
        # Few jars are there with the first paint. Many go on coming between the next ones.
        self._desk.turns.give_up(_TURN)
        work, clock = self._refreshing(), self._desk.clock
        began = clock.monotonic()
        while next(work, _DONE) is not _DONE:
            if clock.monotonic() - began >= _BEFORE_PAINT_S:
                is_empty = self.model.rowCount() == 0  # then there is nothing else to look at
                self._desk.turns.begin(_TURN, work, is_hurried=is_empty)
                return

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(SHELF_TOPICS):
            return
        self._stale = True
        if self.isVisible():
            self._refresh_later()

    def refresh(self) -> None:
        """Read the shelf again and show it."""
        self._desk.turns.give_up(_TURN)
        self._stale = False
        jars = self._desk.shelf.jars()
        self.model.set_jars(jars)
        self._show_jars(jars)
        self._show_current()

    def _refresh_later(self) -> None:
        """Do as `refresh` in turns: with many jars all of it at once would be seen."""
        self._desk.turns.begin(_TURN, self._refreshing_anew())

    def _refreshing_anew(self) -> Iterator[None]:
        if self.model.rowCount() <= _FEW_JARS:
            self.refresh()
            return
        yield from self._refreshing()

    def _refreshing(self) -> Iterator[None]:
        """Read the shelf again and show it, in small steps."""
        self._stale = False
        jars: tuple[JarView, ...] = ()
        for found in self._desk.shelf.jars_in_turns():
            jars = found or ()
            yield
        yield from self.model.set_in_turns(jars)
        yield
        # The sheet of the one that is chosen here is filled below, step by step.
        self._is_filling = True
        try:
            self._show_jars(jars)
        finally:
            self._is_filling = False
        yield
        jar = self.view.currentIndex().data(JAR_ROLE)
        if jar is not None:
            for _ in self.sheet.show_in_turns(jar):
                yield
            self._split()

    def _show_jars(self, jars: tuple[JarView, ...]) -> None:
        self._stack.setCurrentWidget(self.view if jars else self.empty)
        if self._worn is not tokens():
            self._worn = tokens()
            self.add_button.setIcon(icon("add"))
        self.add_button.setVisible(bool(jars))
        self.plan_button.setVisible(bool(jars))
        self.place_button.set_words(self._place_words())
        self.view.refresh_looks()
        current = self.view.currentIndex()
        if jars and not current.isValid():
            self.view.choose(self._first_of_interest(jars))
        elif not jars:
            self.sheet.show_jar(None)

    def refresh_words(self) -> None:
        """Say the lines again, since time went on."""
        self._stale = True
        if self.isVisible():
            self._refresh_later()

    def _place_words(self) -> str:
        show = self._desk.quantities.show
        return " · ".join(
            f"{place.name} {show(place.temperature_c, Kind.TEMPERATURE)}"
            for place in self._desk.vessels.places()
        )

    def _first_of_interest(self, jars: tuple[JarView, ...]) -> int:
        with_next = [
            (jar.next_at, row)
            for row, jar in enumerate(jars)
            if jar.next_at is not None and jar.batch is not None
        ]
        return min(with_next)[1] if with_next else 0

    def _show_current(self) -> None:
        jar = self.view.currentIndex().data(JAR_ROLE)
        if jar is not None:
            self.sheet.show_jar(jar)
            self._split()

    # --- choosing --------------------------------------------------------------------

    def choose_vessel(self, vessel_id: int) -> None:
        """Make the vessel's jar the chosen one."""
        if self._stale or self._desk.turns.has(_TURN):
            self.refresh()
        row = self.model.row_of(vessel_id)
        if row is not None:
            self.view.choose(row)
            self._on_chosen(vessel_id)

    def chosen(self) -> JarView | None:
        """The jar on the sheet."""
        return self.sheet.jar()

    def _on_chosen(self, vessel_id: int) -> None:
        if self._is_filling:
            return
        jar = self._desk.shelf.jar(vessel_id)
        if jar is not None:
            self.sheet.show_jar(jar)
            self._split()

    def _on_opened(self, vessel_id: int) -> None:
        self._on_chosen(vessel_id)
        self.sheet.next_button.setFocus(Qt.FocusReason.ShortcutFocusReason)

    # --- carrying --------------------------------------------------------------------

    def carry(self) -> None:
        """Pick up what is in the chosen jar, to put it down by keys or a click."""
        jar = self.chosen()
        if jar is not None:
            self.carrier.pick_up_from(jar)

    def carry_culture(self, culture_id: int) -> None:
        """Pick up a culture, also one that is in no vessel."""
        if self._stale:
            self.refresh()
        home = self._desk.cultures.where(culture_id)
        if home is not None:
            self.choose_vessel(home.id)
        self.carrier.pick_up(Carried(CarriedKind.CULTURE, culture_id))

    def _on_carrying(self, is_carrying: bool) -> None:
        self._head.setCurrentIndex(1 if is_carrying else 0)

    def _on_end_wanted(self, batch_id: int) -> None:
        for jar in self._desk.shelf.jars():
            if jar.batch is not None and jar.batch.id == batch_id:
                self.sheet.end_wanted.emit(jar, False)

    def _on_menu_wanted(self, vessel_id: int, at: QPoint) -> None:
        self.choose_vessel(vessel_id)
        self.sheet.open_menu(at)

    def sizeHint(self) -> QSize:
        """Room for two boards and a sheet."""
        return QSize(1180, 680)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Give the sheet's side the surface colour, wall colour the other."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(tokens().surface))
        painter.fillRect(self._left.geometry(), QColor(tokens().wall).lighter(103))
        if not self._has_painted:
            self._has_painted = True
            self.first_painted.emit()
