"""One place: what it is like, its course, and what can be entered about it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.placeview import Span
from brewdesk.services.records import ImpossibleInput, Place, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.fields import MessageLine, bring_into_view, card, plain_label
from brewdesk.widgets.placechart import PlaceChart
from brewdesk.widgets.placeentries import PlaceEntries
from brewdesk.widgets.placereading import PlaceReadingForm
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class PlaceSheet(QWidget):
    """Shows one place. The wishes that need a dialog are signals."""

    edit_wanted = Signal()
    import_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._place: Place | None = None
        self._span = Span.WEEK
        self._suggested_c: float | None = None
        self.name = plain_label("", "heading")
        self.name.setWordWrap(True)
        self.edit = self._button("place_edit", self.tr("Edit…"))
        self.remove = self._button("place_remove", self.tr("Remove"))
        self.import_button = self._button("place_import", self.tr("Read a logger's file…"))
        self.usual = plain_label("", "muted", wraps=True)
        self.standing = plain_label("", "muted", wraps=True)
        self.message = MessageLine(lines=1)
        self.message.setObjectName("place_message")
        self.chart = PlaceChart()
        self.reading = PlaceReadingForm(desk)
        self.entries = PlaceEntries()
        self._build()
        self._connect()

    def place(self) -> Place | None:
        """Return the place shown."""
        return self._place

    def show_place(self, place: Place) -> None:
        """Show a place as it is now."""
        is_other = self._place is None or self._place.id != place.id
        self._place = place
        if is_other:
            self.message.say("")
            self._span = self._desk.place_views.span_with_news(place)
            self.entries.set_open(False)
        self.reading.set_place(place.id)
        facts = self._desk.place_views.facts(place)
        self.name.setText(place.name)
        self.edit.setAccessibleName(self.tr("Edit {name}").format(name=place.name))
        self.remove.setAccessibleName(self.tr("Remove {name}").format(name=place.name))
        self.usual.setText(facts.usual)
        self.standing.setText(facts.standing)
        self._suggested_c = facts.suggested_c
        self.suggestion.setText(facts.suggestion)
        self.suggestion_frame.setVisible(bool(facts.suggestion))
        self.entries.set_entries(facts.entries)
        self.chart.set_curve(self._desk.place_views.curve(place, self._span), self._span)

    def _button(self, name: str, text: str) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(name)
        button.setAutoDefault(False)
        return button

    def _build(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, SPACE, 0)
        column.setSpacing(SPACE)
        head = QHBoxLayout()
        head.setSpacing(SPACE)
        head.addWidget(self.name, 1)
        head.addWidget(self.import_button)
        head.addWidget(self.edit)
        head.addWidget(self.remove)
        column.addLayout(head)
        column.addWidget(self.usual)
        column.addWidget(self.standing)
        column.addWidget(self.message)
        column.addWidget(self._make_suggestion())
        column.addWidget(self.chart, 1)
        column.addSpacing(SPACE)
        column.addWidget(self.reading)
        column.addWidget(self.entries)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(content)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(area)

    def _make_suggestion(self) -> QFrame:
        self.suggestion_frame, inside = card(role="inform")
        inside.setContentsMargins(2 * SPACE, SPACE, SPACE, SPACE)
        self.suggestion: QLabel = plain_label("", "", wraps=True)
        self.suggestion.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.take_over = self._button("place_take_over", self.tr("Take it over"))
        line = QHBoxLayout()
        line.setSpacing(2 * SPACE)
        line.addWidget(self.suggestion, 1)
        line.addWidget(self.take_over, 0, Qt.AlignmentFlag.AlignVCenter)
        inside.addLayout(line)
        self.suggestion_frame.hide()
        return self.suggestion_frame

    def _connect(self) -> None:
        set_role(self.remove, "danger")
        self.edit.clicked.connect(self.edit_wanted)
        self.import_button.clicked.connect(self.import_wanted)
        self.remove.clicked.connect(self._on_remove)
        self.take_over.clicked.connect(self._on_take_over)
        self.chart.span_wanted.connect(self._on_span)
        self.entries.remove_wanted.connect(self._on_remove_entry)
        self._scroll_later = QTimer(self)  # once the opened list has its place
        self._scroll_later.setObjectName("place_scroll")
        self._scroll_later.setSingleShot(True)
        self._scroll_later.setInterval(0)
        self._scroll_later.timeout.connect(self._show_entries)
        self.entries.toggled.connect(lambda _open: self._scroll_later.start())

    def _show_entries(self) -> None:
        if self.entries.is_open() and self.isVisible():
            bring_into_view(self.entries)

    def _on_span(self, span: Span) -> None:
        self._span = span
        if self._place is not None:
            self.chart.set_curve(self._desk.place_views.curve(self._place, span), span)

    def _on_remove(self) -> None:
        place = self._place
        if place is not None:
            self._attempt(lambda: self._desk.place_log.remove_place(place.id))

    def _on_take_over(self) -> None:
        place, suggested_c = self._place, self._suggested_c
        if place is not None and suggested_c is not None:
            self._attempt(
                lambda: self._desk.vessels.edit_place(place.id, temperature_c=round(suggested_c, 1))
            )

    def _on_remove_entry(self, key: tuple[str, int]) -> None:
        kind, row_id = key
        log = self._desk.place_log
        drop = log.drop_log if kind == "log" else log.drop_reading
        self._attempt(lambda: drop(row_id))

    def _attempt(self, act: Callable[[], object]) -> None:
        self.message.say("")
        try:
            act()
        except ImpossibleInput as problem:
            self.message.say(impossible_words(problem, self._desk.quantities.show), "error")
        except StoreTrouble as trouble:
            self.message.say(trouble_words(trouble), "error")
