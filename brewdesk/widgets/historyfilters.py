"""What the history lets through: kind, tea, culture, place, stage and time."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta, tzinfo

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QComboBox, QDateEdit, QHBoxLayout, QPushButton, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import BatchStage, TeaKind
from brewdesk.services.searchwords import FoundKind, Sieve
from brewdesk.services.wording.search import kinds_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import choose
from brewdesk.widgets.flowlayout import FlowLayout
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, TOUCH
from brewdesk.widgets.wheelpass import pass_wheel_on

_LETTERS = 10  # of a choice that can be read without opening it
_SPANS_DAYS = {"week": 7, "month": 30, "year": 365}
OWN_SPAN = "own"


@dataclass(frozen=True, slots=True)
class _Choice:
    """One combo: the sieve's field, its accessible name, and what lets everything through."""

    field: str
    name: str
    anything: str


class HistoryFilters(QWidget):
    """One row of choices, and a button that opens them all. ``changed`` says: ask again."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("history_filters")
        self._desk = desk
        self._is_filling = False
        self.combos: dict[str, QComboBox] = {}
        row = FlowLayout(self, gap=SPACE)
        for choice in (
            _Choice("kind", self.tr("Kind of thing"), self.tr("Everything")),
            _Choice("tea", self.tr("Tea"), self.tr("Any tea")),
            _Choice("culture_id", self.tr("Culture"), self.tr("Any culture")),
            _Choice("place_id", self.tr("Place"), self.tr("Any place")),
            _Choice("stage", self.tr("Stage of the batch"), self.tr("Any stage")),
            _Choice("time", self.tr("Time"), self.tr("Any time")),
        ):
            combo = QComboBox()
            combo.setObjectName(f"history_{choice.field}")
            combo.setAccessibleName(choice.name)
            combo.setToolTip(choice.name)
            combo.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            combo.setMinimumContentsLength(_LETTERS)
            combo.addItem(choice.anything, None)
            combo.currentIndexChanged.connect(self._on_chosen)
            pass_wheel_on(combo)
            self.combos[choice.field] = combo
            row.addWidget(combo)
        self.since, self.until = self._date(self.tr("From")), self._date(self.tr("To"))
        self.since.setObjectName("history_since")
        self.until.setObjectName("history_until")
        self.clear_button = QPushButton(self.tr("Clear filters"))
        self.clear_button.setObjectName("history_clear")
        set_role(self.clear_button, "quiet")
        self.clear_button.clicked.connect(self.clear)
        self._ends = QWidget()  # they go to the next line together
        both = QHBoxLayout(self._ends)
        both.setContentsMargins(0, 0, 0, 0)
        both.setSpacing(SPACE)
        both.addWidget(self.since)
        both.addWidget(self.until)
        row.addWidget(self._ends)
        row.addWidget(self.clear_button)
        self._fill_fixed()
        self.refresh()
        self._show_state()

    def sieve(self) -> Sieve:
        """Return what is let through now."""
        chosen = {
            field: combo.currentData() for field, combo in self.combos.items() if field != "time"
        }
        since, until = self._span()
        return Sieve(**chosen, since=since, until=until)

    def names(self) -> dict[str, str]:
        """Return what each filter in use is set to, by the sieve's names."""
        return {
            field: combo.currentText()
            for field, combo in self.combos.items()
            if combo.currentIndex() > 0
        }

    def clear(self) -> None:
        """Let everything through."""
        self._is_filling = True
        for combo in self.combos.values():
            combo.setCurrentIndex(0)
        self._is_filling = False
        self._on_chosen()

    def refresh(self) -> None:
        """Offer the cultures and places there are now; what was chosen stays chosen."""
        cultures = [(row.id, row.name) for row in self._desk.cultures.all()]
        places = [(row.id, row.name) for row in self._desk.vessels.places()]
        self._is_filling = True
        for field, rows in (("culture_id", cultures), ("place_id", places)):
            combo = self.combos[field]
            chosen = combo.currentData()
            while combo.count() > 1:
                combo.removeItem(1)
            for number, name in rows:
                combo.addItem(name, number)
            choose(combo, chosen)
        self._is_filling = False

    def _fill_fixed(self) -> None:
        self._is_filling = True
        for kind in FoundKind:
            self.combos["kind"].addItem(kinds_words(kind), kind)
        for tea in TeaKind:
            self.combos["tea"].addItem(name_of(tea), tea)
        for stage in BatchStage:
            self.combos["stage"].addItem(name_of(stage), stage)
        for code, words in (
            ("week", self.tr("The last 7 days")),
            ("month", self.tr("The last 30 days")),
            ("year", self.tr("The last 12 months")),
            (OWN_SPAN, self.tr("From … to …")),
        ):
            self.combos["time"].addItem(words, code)
        self._is_filling = False

    def _date(self, name: str) -> QDateEdit:
        today = self._today()
        edit = QDateEdit(QDate(today.year, today.month, today.day))
        edit.setCalendarPopup(True)
        edit.setDisplayFormat(self.tr("d MMM yyyy"))
        edit.setAccessibleName(name)
        edit.setFixedHeight(TOUCH)
        edit.setToolTip(name)
        edit.dateChanged.connect(self._on_chosen)
        pass_wheel_on(edit)
        return edit

    def _today(self) -> date:
        return self._desk.clock.now().astimezone(self._desk.clock.zone()).date()

    def _span(self) -> tuple[datetime | None, datetime | None]:
        code, zone = self.combos["time"].currentData(), self._desk.clock.zone()
        if code is None:
            return None, None
        if code == OWN_SPAN:
            first, last = _day_of(self.since), _day_of(self.until)
            first, last = min(first, last), max(first, last)
            return _midnight(first, zone), _midnight(last + timedelta(days=1), zone)
        return _midnight(self._today() - timedelta(days=_SPANS_DAYS[code] - 1), zone), None

    def _on_chosen(self) -> None:
        if self._is_filling:
            return
        self._show_state()
        self.changed.emit()

    def _show_state(self) -> None:
        is_own = self.combos["time"].currentData() == OWN_SPAN
        self._ends.setVisible(is_own)
        self.clear_button.setVisible(bool(self.names()))


def _day_of(edit: QDateEdit) -> date:
    shown = edit.date()
    return date(shown.year(), shown.month(), shown.day())


def _midnight(day: date, zone: tzinfo) -> datetime:
    return datetime.combine(day, time(), tzinfo=zone)
