"""The bottles that stand: cards, the most urgent first."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QPushButton, QScrollArea, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.fizzforecasts import BottlingView
from brewdesk.services.records import (
    BottleCheckDraft,
    Bottling,
    CheckKind,
    Feel,
    ImpossibleInput,
    Opened,
    StoreTrouble,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.bottlecard import BottleCard
from brewdesk.widgets.bottlingsheetwords import bottling_sheet_of
from brewdesk.widgets.fields import card, plain_label
from brewdesk.widgets.printrunsheet import RunSheetDialog
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_WIDEST_LETTERS = 110  # a line longer than this is hard to read


class BottleStand(QScrollArea):
    """All bottlings that condition or are chilled."""

    label_wanted = Signal(int)
    open_batch = Signal(int)
    fill_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._cards: dict[int, BottleCard] = {}
        self._places: dict[int, QFrame] = {}  # kept for cards whose figures are to come
        self._wanted: int | None = None  # to be gone to once its card is there
        self._paper: RunSheetDialog | None = None
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        holder = QWidget()
        self._column = QVBoxLayout(holder)
        self._column.setContentsMargins(3 * SPACE, SPACE, 3 * SPACE, 2 * SPACE)
        self._column.setSpacing(2 * SPACE)
        self.empty, column = card(holder)
        column.addWidget(plain_label(self.tr("No bottles stand"), "heading", holder))
        column.addWidget(
            plain_label(
                self.tr(
                    "Filled bottles appear here: how much pressure they likely hold, by when to "
                    "chill them, and what you felt and saw."
                ),
                parent=holder,
                wraps=True,
            )
        )
        self.fill_button = QPushButton(self.tr("Fill bottles"), holder)
        self.fill_button.setObjectName("stand_fill")
        set_role(self.fill_button, "primary")
        self.fill_button.clicked.connect(self.fill_wanted)
        column.addWidget(self.fill_button, 0, Qt.AlignmentFlag.AlignLeft)
        self._column.addWidget(self.empty)
        self._column.addStretch(1)
        self.setWidget(holder)

    def cards(self) -> tuple[BottleCard, ...]:
        """Return the cards, the most urgent first."""
        return tuple(self._cards.values())

    def is_empty(self) -> bool:
        """Whether no bottles stand."""
        return not self._cards and not self._places

    def refresh(self) -> None:
        """Show how all bottlings stand now; what is typed on a card stays."""
        views = self._desk.fizz_forecasts.all_open()
        waiting = self._desk.fizz_forecasts.being_worked_out()
        self._drop_all_but({view.bottling.id for view in views} | {one.id for one in waiting})
        self._show_views(views)
        self._show_waiting(waiting)
        self.empty.setVisible(self.is_empty())
        if self._wanted in self._cards:
            self.go_to(self._wanted)

    def _drop_all_but(self, kept: set[int]) -> None:
        for bottling_id in [one for one in self._cards if one not in kept]:
            self._let_go(self._cards.pop(bottling_id))

    def _let_go(self, old: QWidget) -> None:
        self._column.removeWidget(old)
        old.hide()
        old.deleteLater()

    def _show_views(self, views: tuple[BottlingView, ...]) -> None:
        widest = self.fontMetrics().averageCharWidth() * _WIDEST_LETTERS
        shown: dict[int, BottleCard] = {}
        for view in views:
            found = self._cards.get(view.bottling.id) or self._make_card()
            found.setMaximumWidth(widest)
            found.show_view(view)
            shown[view.bottling.id] = found
        # A card that waits for its new figures stays where it is, and all others with it.
        ordered = shown if self._cards.keys() <= shown.keys() else self._cards | shown
        for place, found in enumerate(ordered.values()):
            self._column.insertWidget(place, found)
        self._cards = ordered

    def _show_waiting(self, waiting: tuple[Bottling, ...]) -> None:
        """Keep a place for each bottling that is still being worked out."""
        without_card = {one.id for one in waiting} - self._cards.keys()
        for bottling_id in [one for one in self._places if one not in without_card]:
            self._let_go(self._places.pop(bottling_id))
        words = self.tr("Working out how much pressure they hold, and by when to chill them…")
        for bottling in waiting:
            known = self._cards.get(bottling.id)
            if known is not None:
                known.show_waiting(words)
            if known is not None or bottling.id in self._places:
                continue
            place, column = card(self.widget())
            place.setObjectName("bottle_waiting")
            column.addWidget(plain_label(bottling.name, "heading", place))
            column.addWidget(plain_label(words, "muted", place, wraps=True))
            self._column.insertWidget(len(self._cards) + len(self._places), place)
            self._places[bottling.id] = place

    def go_to(self, bottling_id: int) -> None:
        """Bring one card into view, and the keyboard to it, as soon as it is there."""
        found = self._cards.get(bottling_id)
        self._wanted = bottling_id if found is None else None
        if found is not None:
            self.ensureWidgetVisible(found)
            found.chill_button.setFocus()

    def _make_card(self) -> BottleCard:
        made = BottleCard(self._desk)
        bottles = self._desk.bottlings
        made.look_wanted.connect(self._on_look)
        made.chill_wanted.connect(lambda one: self._attempt(one, lambda: bottles.chill(one)))
        made.finish_wanted.connect(lambda one: self._attempt(one, lambda: bottles.finish(one)))
        made.discard_wanted.connect(
            lambda one, why: self._attempt(one, lambda: bottles.discard(one, why))
        )
        made.print_wanted.connect(self._on_print)
        made.label_wanted.connect(self.label_wanted)
        made.open_batch.connect(self.open_batch)
        return made

    def _on_look(self, bottling_id: int, kind: CheckKind, value: object) -> None:
        draft = BottleCheckDraft(
            bottling_id=bottling_id,
            at=self._desk.clock.now(),
            kind=kind,
            feel=value if isinstance(value, Feel) else None,
            gauge_bar=value if isinstance(value, float) else None,
            opened=value if isinstance(value, Opened) else None,
        )
        self._attempt(bottling_id, lambda: self._desk.bottlings.check(draft))

    def _attempt(self, bottling_id: int, act: Callable[[], object]) -> None:
        try:
            act()
        except ImpossibleInput as problem:
            self._say(bottling_id, impossible_words(problem, self._desk.quantities.show))
        except StoreTrouble as trouble:
            self._say(bottling_id, trouble_words(trouble))

    def _say(self, bottling_id: int, words: str) -> None:
        found = self._cards.get(bottling_id)
        if found is not None:
            found.say(words)

    def _on_print(self, bottling_id: int) -> None:
        outlook = self._desk.bottlings.outlook_as_filled(bottling_id)
        self._paper = RunSheetDialog(bottling_sheet_of(self._desk, outlook), self)
        self._paper.finished.connect(self._paper.deleteLater)
        self._paper.open()
