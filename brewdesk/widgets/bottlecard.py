"""One bottling that stands: how urgent it is, how it stands, and one-press looks."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QDoubleSpinBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QMenu,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.bottlingparts import BottlingParts, can_be_felt, check_facts
from brewdesk.services.desk import Desk
from brewdesk.services.fizzforecasts import BottlingView, Urgency
from brewdesk.services.records import BottlingState, CheckKind, Feel, Kind, Level, Opened
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.bottlings import bar_words, check_text
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.fields import MessageLine, make_strong, plain_label
from brewdesk.widgets.fizzplot import FizzPlot, FizzSpec
from brewdesk.widgets.plainspin import make_plain
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import LevelSign

_ROLE = {Urgency.CALM: "card", Urgency.SOON: "warn", Urgency.NOW: "danger"}
_LEVEL = {Urgency.CALM: Level.INFORM, Urgency.SOON: Level.WARN, Urgency.NOW: Level.STOP}
_LOOKS_SHOWN = 4
_AHEAD_DAYS = 7.0


class BottleCard(QFrame):
    """A bottling. What the maker wants is emitted; the page does it.

    ``look_wanted`` carries the bottling's id, the kind of look, and its value: a `Feel`, an
    `Opened`, bar of a gauge, or None.
    """

    look_wanted = Signal(int, object, object)
    chill_wanted = Signal(int)
    finish_wanted = Signal(int)
    discard_wanted = Signal(int, str)
    print_wanted = Signal(int)
    label_wanted = Signal(int)
    open_batch = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.view: BottlingView | None = None
        self.setObjectName("bottle_card")
        self._build()
        self._connect()

    # building

    def _build(self) -> None:
        self._sign_place = QVBoxLayout()
        self.title = plain_label("", "heading", self, wraps=True)
        self.urgency = plain_label("", "", self)
        make_strong(self.urgency)
        self.facts = plain_label("", "muted", self, wraps=True)
        self.summary = plain_label("", "", self, wraps=True)
        self.what_to_do = plain_label("", "", self, wraps=True)
        self.looks = plain_label("", "muted", self, wraps=True)
        self.plot = FizzPlot(self)
        self.message = MessageLine(self, lines=1)
        head = QHBoxLayout()
        head.setSpacing(SPACE + 4)
        head.addLayout(self._sign_place)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.title)
        words.addWidget(self.facts)
        head.addLayout(words, 1)
        head.addWidget(self.urgency)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, SPACE + 4, 2 * SPACE, SPACE + 4)
        column.setSpacing(SPACE)
        column.addLayout(head)
        column.addWidget(self.summary)
        column.addWidget(self.what_to_do)
        column.addWidget(self.plot)
        column.addWidget(self.looks)
        column.addLayout(self._make_looks())
        column.addWidget(self._make_why())
        column.addWidget(self.message)
        column.addLayout(self._make_foot())

    def _make_looks(self) -> QGridLayout:
        tr = self.tr
        grid = QGridLayout()
        grid.setHorizontalSpacing(SPACE)
        grid.setVerticalSpacing(SPACE)
        self.feel_label = plain_label(tr("The test bottle is"), "label", self)
        self.feels: dict[Feel, QPushButton] = {}
        line = QHBoxLayout()
        for feel in Feel:
            button = QPushButton(_capital(name_of(feel)), self)
            button.setObjectName(f"feel_{feel.value}")
            self.feels[feel] = button
            line.addWidget(button)
        line.addStretch(1)
        grid.addWidget(self.feel_label, 0, 0)
        grid.addLayout(line, 0, 1)
        self.opened_label = plain_label(tr("One opened was"), "label", self)
        self.openings: dict[Opened, QPushButton] = {}
        line = QHBoxLayout()
        for opened in Opened:
            button = QPushButton(_capital(name_of(opened)), self)
            button.setObjectName(f"opened_{opened.value}")
            self.openings[opened] = button
            line.addWidget(button)
        line.addStretch(1)
        grid.addWidget(self.opened_label, 1, 0)
        grid.addLayout(line, 1, 1)
        self.gauge_label = plain_label(tr("A gauge shows"), "label", self)
        self.gauge = QDoubleSpinBox(self)
        self.gauge.setObjectName("gauge_bar")
        self.gauge.setRange(0.0, 15.0)
        self.gauge.setDecimals(2)
        self.gauge.setSingleStep(0.1)
        self.gauge.setSuffix(tr(" bar"))
        self.gauge.setAccessibleName(tr("What the gauge shows"))
        make_plain(self.gauge)
        self.gauge.setMinimumWidth(14 * SPACE)
        self.gauge_button = QPushButton(tr("Note it"), self)
        self.gauge_button.setObjectName("gauge_note")
        self.vent_button = QPushButton(tr("Vented all"), self)
        self.vent_button.setObjectName("vented")
        line = QHBoxLayout()
        for widget in (self.gauge, self.gauge_button, self.vent_button):
            line.addWidget(widget)
        line.addStretch(1)
        grid.addWidget(self.gauge_label, 2, 0)
        grid.addLayout(line, 2, 1)
        grid.setColumnStretch(1, 1)
        return grid

    def _make_why(self) -> QWidget:
        """Build the line that asks why bottles are poured away."""
        self.why_row = QWidget(self)
        self.why = QLineEdit(self.why_row)
        self.why.setObjectName("discard_reason")
        self.why.setPlaceholderText(self.tr("Why are they poured away?"))
        self.why.setAccessibleName(self.tr("Why are they poured away?"))
        self.why_button = QPushButton(self.tr("Pour away"), self.why_row)
        self.why_button.setObjectName("discard_now")
        set_role(self.why_button, "danger")
        line = QHBoxLayout(self.why_row)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(self.why, 1)
        line.addWidget(self.why_button)
        self.why_row.hide()
        return self.why_row

    def _make_foot(self) -> QHBoxLayout:
        self.chill_button = QPushButton(self.tr("They are in the cold now"), self)
        self.chill_button.setObjectName("chill_now")
        set_role(self.chill_button, "primary")
        self.finish_button = QPushButton(self.tr("Drunk up"), self)
        self.finish_button.setObjectName("finish_bottles")
        self.more_button = QPushButton(self.tr("More"), self)
        self.more_button.setObjectName("bottle_more")
        set_role(self.more_button, "quiet")
        menu = QMenu(self.more_button)
        menu.addAction(self.tr("Print the bottling sheet…"), self._on_print)
        menu.addAction(self.tr("Print labels…"), self._on_label)
        menu.addAction(self.tr("Open the batch"), self._on_open)
        menu.addSeparator()
        menu.addAction(self.tr("Pour away…"), self._on_pour)
        self.more_button.setMenu(menu)
        foot = QHBoxLayout()
        foot.setSpacing(SPACE)
        foot.addWidget(self.chill_button)
        foot.addWidget(self.finish_button)
        foot.addStretch(1)
        foot.addWidget(self.more_button)
        return foot

    def _connect(self) -> None:
        for feel, button in self.feels.items():
            button.clicked.connect(lambda _=False, one=feel: self._look(CheckKind.FEEL, one))
        for opened, button in self.openings.items():
            button.clicked.connect(lambda _=False, one=opened: self._look(CheckKind.OPENED, one))
        self.gauge_button.clicked.connect(lambda: self._look(CheckKind.GAUGE, self.gauge.value()))
        self.vent_button.clicked.connect(lambda: self._look(CheckKind.VENTED, None))
        self.chill_button.clicked.connect(lambda: self.chill_wanted.emit(self._id()))
        self.finish_button.clicked.connect(lambda: self.finish_wanted.emit(self._id()))
        self.why_button.clicked.connect(self._on_pour_now)
        self.why.returnPressed.connect(self._on_pour_now)

    # showing

    def show_view(self, view: BottlingView) -> None:
        """Show how a bottling stands."""
        self.view = view
        bottling, zone = view.bottling, self._desk.clock.zone()
        set_role(self, _ROLE[view.urgency])
        _swap(self._sign_place, LevelSign(_LEVEL[view.urgency], self))
        self.urgency.setText(self._urgency_words(view))
        self.title.setText(bottling.name)
        self.facts.setText(self._fact_words(view.parts, stamp_words(bottling.filled_at, zone)))
        self.summary.setText(view.summary)
        words = verdict_words(view.verdict, self._desk.quantities.show)
        self.what_to_do.setText(f"{words.fact} {words.what_to_do}".strip())
        make_strong(self.what_to_do)
        self.what_to_do.setVisible(view.urgency is not Urgency.CALM)
        self.looks.setText(self._look_words(view.parts))
        self.plot.set_spec(self._spec(view), view.summary)
        is_warm = bottling.state is BottlingState.CONDITIONING
        can_feel = can_be_felt(view.parts.groups)
        for widget in (self.feel_label, *self.feels.values()):
            widget.setVisible(is_warm and can_feel)
        for widget in (self.gauge_label, self.gauge, self.gauge_button, self.vent_button):
            widget.setVisible(is_warm)
        self.chill_button.setVisible(is_warm)
        set_role(self.finish_button, "" if is_warm else "primary")
        self.message.say("")
        self._name_buttons(bottling.name)
        self.setAccessibleName(f"{bottling.name}: {self.urgency.text()}. {view.summary}")

    def show_waiting(self, words: str) -> None:
        """Say no more how the bottling stands, until it is known anew."""
        self.summary.setText(words)
        self.urgency.setText("")
        self.what_to_do.setVisible(False)
        set_role(self, "card")

    def say(self, words: str) -> None:
        """Say on the card what went wrong."""
        self.message.say(words, "error" if words else "label")

    def _urgency_words(self, view: BottlingView) -> str:
        if view.bottling.state is BottlingState.CHILLED:
            calm = self.tr("In the cold")
        else:
            calm = self.tr("Conditioning")
        return {
            Urgency.CALM: calm,
            Urgency.SOON: self.tr("Soon"),
            Urgency.NOW: (
                self.tr("Look now")
                if view.bottling.state is BottlingState.CHILLED
                else self.tr("Chill now")
            ),
        }[view.urgency]

    def _fact_words(self, parts: BottlingParts, filled: str) -> str:
        show = self._desk.quantities.show
        words = [
            self.tr("{left} of {count} bottles").format(
                left=parts.bottles_left, count=parts.bottle_count
            ),
            show(parts.bottling.drink_volume_l, Kind.VOLUME),
            self.tr("filled {when}").format(when=filled),
        ]
        words += [
            self.tr("{name} {grams} g").format(
                name=addition.name, grams=number_text(addition.mass_g, 0)
            )
            for addition in parts.additions
        ]
        return " · ".join(words)

    def _look_words(self, parts: BottlingParts) -> str:
        zone = self._desk.clock.zone()
        told = [
            f"{stamp_words(check.at, zone)}: {check_text(check_facts(parts.bottling, check))}"
            for check in parts.checks[-_LOOKS_SHOWN:]
        ]
        return "   ".join(told) if told else self.tr("Not looked at yet.")

    def _spec(self, view: BottlingView) -> FizzSpec:
        curve, course = view.course.gauge_bar, view.course
        first = course.chill_by_day or 0.0
        last_day = max(view.now_day + _AHEAD_DAYS, min(first + 2.0, view.now_day + 21.0))
        filled = view.bottling.filled_at
        gauges = tuple(
            ((check.at - filled).total_seconds() / 86400.0, check.gauge_bar)
            for check in view.parts.checks
            if check.gauge_bar is not None
        )
        return FizzSpec(
            days=curve.days,
            low=curve.low,
            likely=curve.likely,
            high=curve.high,
            last_day=last_day,
            ceiling_bar=view.ceiling_bar,
            ceiling_words="" if view.ceiling_bar is None else bar_words(view.ceiling_bar),
            chill_by_day=course.chill_by_day,
            chill_words=(
                self.tr("chill by")
                if view.bottling.state is BottlingState.CONDITIONING
                else self.tr("limit in the cold")
            ),
            now_day=view.now_day,
            now_words=self.tr("now"),
            points=gauges,
        )

    def _name_buttons(self, name: str) -> None:
        for feel, button in self.feels.items():
            button.setAccessibleName(
                self.tr("{name}: the test bottle is {feel}").format(name=name, feel=name_of(feel))
            )
        for opened, button in self.openings.items():
            button.setAccessibleName(
                self.tr("{name}: one opened was {opened}").format(name=name, opened=name_of(opened))
            )
        for button, words in (
            (self.gauge_button, self.tr("{name}: note the gauge")),
            (self.vent_button, self.tr("{name}: all were vented")),
            (self.chill_button, self.tr("{name}: they are in the cold now")),
            (self.finish_button, self.tr("{name}: drunk up")),
            (self.more_button, self.tr("{name}: more")),
        ):
            button.setAccessibleName(words.format(name=name))

    # acting

    def _id(self) -> int:
        return self.view.bottling.id if self.view is not None else 0

    def _look(self, kind: CheckKind, value: object) -> None:
        self.look_wanted.emit(self._id(), kind, value)

    def _on_print(self) -> None:
        self.print_wanted.emit(self._id())

    def _on_label(self) -> None:
        if self.view is not None:
            self.label_wanted.emit(self.view.bottling.id)

    def _on_open(self) -> None:
        if self.view is not None:
            self.open_batch.emit(self.view.bottling.batch_id)

    def _on_pour(self) -> None:
        self.why_row.show()
        self.why.setFocus()

    def _on_pour_now(self) -> None:
        self.discard_wanted.emit(self._id(), self.why.text())


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _swap(place: QVBoxLayout, widget: QWidget) -> None:
    while (item := place.takeAt(0)) is not None:
        old = item.widget()
        if old is not None:
            old.hide()
            old.deleteLater()
    place.addWidget(widget)
    place.addStretch(1)
