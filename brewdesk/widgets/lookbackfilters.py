"""What a look back goes by: side by side by what, which days, which batches."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QComboBox, QDateEdit, QHBoxLayout, QPushButton, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.lookbackgroups import Factor, LookBackSieve, Measure, Question
from brewdesk.services.records import TeaKind
from brewdesk.services.wording.inside import inside
from brewdesk.services.wording.lookback import factor_words, measure_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import choose
from brewdesk.widgets.flowlayout import FlowLayout
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, TOUCH
from brewdesk.widgets.wheelpass import pass_wheel_on

OWN_SPAN = "own"
_SPANS_DAYS = {"quarter": 91, "half": 182, "year": 365}
_LETTERS = 10  # of a choice that can be read without opening it
_SIEVE = ("tea", "culture_id", "place_id", "time")


class LookBackFilters(QWidget):
    """One flowing row of choices. ``changed`` says: ask again."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("look_back_filters")
        self._desk = desk
        self._is_filling = True
        self.combos: dict[str, QComboBox] = {}
        self.row = FlowLayout(self, gap=SPACE)
        for field, name in (
            ("factor", self.tr("Side by side by")),
            ("measure", self.tr("Days counted")),
            ("tea", self.tr("Tea")),
            ("culture_id", self.tr("Culture")),
            ("place_id", self.tr("Place")),
            ("time", self.tr("Time of the start")),
        ):
            self._add(field, name)
        self.since, self.until = self._date(self.tr("From")), self._date(self.tr("To"))
        self.since.setObjectName("look_back_since")
        self.until.setObjectName("look_back_until")
        self._ends = QWidget()  # they go to the next line together
        both = QHBoxLayout(self._ends)
        both.setContentsMargins(0, 0, 0, 0)
        both.setSpacing(SPACE)
        both.addWidget(self.since)
        both.addWidget(self.until)
        self.row.addWidget(self._ends)
        self.clear_button = QPushButton(self.tr("Clear filters"))
        self.clear_button.setObjectName("look_back_clear")
        set_role(self.clear_button, "quiet")
        self.clear_button.clicked.connect(self.clear)
        self.row.addWidget(self.clear_button)
        self._fill_fixed()
        self.refresh()
        self._show_state()

    def question(self) -> Question:
        """Return what is asked now."""
        since, until = self._span()
        return Question(
            sieve=LookBackSieve(
                tea=self.combos["tea"].currentData(),
                culture_id=self.combos["culture_id"].currentData(),
                place_id=self.combos["place_id"].currentData(),
                since=since,
                until=until,
            ),
            factor=self.combos["factor"].currentData(),
            measure=self.combos["measure"].currentData(),
            ripe_ph=self._desk.look_back.ripe_ph(),
        )

    def names(self) -> tuple[str, ...]:
        """Return what each filter in use is set to."""
        combos = [self.combos[field] for field in _SIEVE]
        return tuple(combo.currentText() for combo in combos if combo.currentIndex() > 0)

    def clear(self) -> None:
        """Let every batch through; what is asked of them stays."""
        self._is_filling = True
        for field in _SIEVE:
            self.combos[field].setCurrentIndex(0)
        self._is_filling = False
        self._on_chosen()

    def refresh(self) -> None:
        """Offer the cultures, the places and the ripe pH there are now."""
        # One that is gone has its batches still.
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
        question = Question(ripe_ph=self._desk.look_back.ripe_ph())
        measures = self.combos["measure"]
        for index in range(measures.count()):
            measure = measures.itemData(index)
            words = measure_words(measure, question, self._desk.quantities.show)
            measures.setItemText(index, self.tr("Days {what}").format(what=words))
        self._is_filling = False

    def _add(self, field: str, name: str) -> None:
        combo = QComboBox()
        combo.setObjectName(f"look_back_{field}")
        combo.setAccessibleName(name)
        combo.setToolTip(name)
        combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        combo.setMinimumContentsLength(_LETTERS)
        combo.currentIndexChanged.connect(self._on_chosen)
        pass_wheel_on(combo)
        self.combos[field] = combo
        self.row.addWidget(combo)

    def _fill_fixed(self) -> None:
        by = self.tr("By {what}")
        for factor in Factor:
            self.combos["factor"].addItem(by.format(what=inside(factor_words(factor))), factor)
        question = Question(ripe_ph=self._desk.look_back.ripe_ph())
        for measure in (Measure.RIPE_PH, Measure.SAFE_PH, Measure.DRAWN_OFF):
            words = measure_words(measure, question, self._desk.quantities.show)
            self.combos["measure"].addItem(self.tr("Days {what}").format(what=words), measure)
        self.combos["tea"].addItem(self.tr("Any tea"), None)
        for tea in TeaKind:
            self.combos["tea"].addItem(name_of(tea), tea)
        self.combos["culture_id"].addItem(self.tr("Any culture"), None)
        self.combos["place_id"].addItem(self.tr("Any place"), None)
        for words, code in (
            (self.tr("Any time"), None),
            (self.tr("The last 3 months"), "quarter"),
            (self.tr("The last 6 months"), "half"),
            (self.tr("The last 12 months"), "year"),
            (self.tr("From … to …"), OWN_SPAN),
        ):
            self.combos["time"].addItem(words, code)

    def _date(self, name: str) -> QDateEdit:
        today = self._today()
        edit = QDateEdit(QDate(today.year, today.month, today.day))
        edit.setCalendarPopup(True)
        edit.setDisplayFormat(self.tr("d MMM yyyy"))
        edit.setAccessibleName(name)
        edit.setToolTip(name)
        edit.setFixedHeight(TOUCH)
        edit.dateChanged.connect(self._on_chosen)
        pass_wheel_on(edit)
        return edit

    def _today(self) -> date:
        return self._desk.clock.now().astimezone(self._desk.clock.zone()).date()

    def _span(self) -> tuple[date | None, date | None]:
        code = self.combos["time"].currentData()
        if code is None:
            return None, None
        if code == OWN_SPAN:
            ends = [
                date(edit.date().year(), edit.date().month(), edit.date().day())
                for edit in (self.since, self.until)
            ]
            return min(ends), max(ends)
        return self._today() - timedelta(days=_SPANS_DAYS[code] - 1), None

    def _on_chosen(self) -> None:
        if self._is_filling:
            return
        self._show_state()
        self.changed.emit()

    def _show_state(self) -> None:
        self._ends.setVisible(self.combos["time"].currentData() == OWN_SPAN)
        self.clear_button.setVisible(bool(self.names()))
