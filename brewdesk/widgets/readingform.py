"""Fast entry of what was measured, tasted or seen on one batch."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.readings import reading_words
from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Batch,
    ImpossibleInput,
    Kind,
    Method,
    NotAQuantity,
    Quantity,
    ReadingDraft,
    StoreTrouble,
    TasteMark,
)
from brewdesk.services.wording.problems import impossible_words, quantity_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.bigtype import BigType
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import FieldRow, announce, card, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.whenedit import WhenEdit

NOTICE_MS = 8_000
_BIG_PX = 56
_BIG_SCALE = 1.7
_TASTE_PX = 48  # two lines of words

# In the order in which Enter walks through them.
_NUMBERS = (
    Quantity.PH,
    Quantity.TEMPERATURE_C,
    Quantity.BRIX,
    Quantity.TA_G_PER_L,
    Quantity.PELLICLE_MM,
)


@dataclass(frozen=True, slots=True)
class _Draft:
    """What stands in the form for one batch while another is looked at."""

    texts: dict[Quantity, str]
    taste: object
    sugar: object
    at: datetime | None


class ReadingForm(QWidget):
    """Enter any of a batch's readings, and keep all that are filled in as one act.

    A field that cannot be read stays in the form with its message; the others are kept.
    ``recorded`` carries the tuple of readings just kept.
    """

    recorded = Signal(object)

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, notice_ms: int = NOTICE_MS
    ) -> None:
        super().__init__(parent)
        self.setObjectName("reading_form")
        self._desk = desk
        self._batch: Batch | None = None
        self._drafts: dict[int, _Draft] = {}
        self._accepted: set[Quantity] = set()
        self._notice_timer = QTimer(self, singleShot=True)
        self._notice_timer.setObjectName("reading_notice")
        self._notice_timer.setInterval(notice_ms)
        self._build()
        self._connect()
        self.setEnabled(False)

    # which batch

    def set_batch(self, batch_id: int | None) -> None:
        """Enter readings for this batch; what stood here for another waits for its return."""
        if self._batch is not None and self._batch.id == batch_id:
            self._batch = self._desk.batches.get(self._batch.id)
            return
        self._put_away()
        self._batch = None if batch_id is None else self._desk.batches.get(batch_id)
        self.setEnabled(self._batch is not None)
        self._clear_fields()
        self._say("")
        if batch_id is None:
            return
        draft = self._drafts.pop(batch_id, None)
        if draft is not None:
            self._bring_back(draft)
        self._choose_usual_method(batch_id)

    def batch_id(self) -> int | None:
        """Return the batch for which readings are entered."""
        return None if self._batch is None else self._batch.id

    def focus_first(self) -> None:
        """Put the keyboard into the first field."""
        self.field(Quantity.PH).setFocus(Qt.FocusReason.OtherFocusReason)

    def field(self, quantity: Quantity) -> QLineEdit:
        """Return the entry line of a quantity."""
        return self._lines[quantity]

    def row(self, quantity: Quantity) -> FieldRow:
        """Return the field of a quantity with its label and message."""
        return self._rows[quantity]

    def is_empty(self) -> bool:
        """Whether nothing has been entered."""
        return not self._filled() and self.taste.value() is None

    # building

    def _build(self) -> None:
        self._lines: dict[Quantity, QLineEdit] = {}
        self._rows: dict[Quantity, FieldRow] = {}
        self.method = ChoiceBar(
            [(method, name_of(method)) for method in self._desk.readings.methods(Quantity.PH)],
            self.tr("pH taken with"),
            height_px=_BIG_PX,
        )
        self.method.setObjectName("reading_method")
        self.sugar_scale = ChoiceBar(
            ((Quantity.BRIX, self.tr("°Bx")), (Quantity.SPECIFIC_GRAVITY, self.tr("SG"))),
            self.tr("Sugar measured as"),
        )
        self.sugar_scale.setObjectName("reading_sugar_scale")
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(0)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        grid.addWidget(self._number_row(Quantity.PH, self.tr("p&H"), big=True), 0, 0)
        method_row = FieldRow(self.tr("pH taken with"), self.method, lines=0)
        grid.addWidget(method_row, 0, 1)
        grid.addWidget(self._number_row(Quantity.TEMPERATURE_C, self.tr("Temperature")), 1, 0)
        grid.addWidget(
            self._number_row(Quantity.BRIX, self.tr("Sugar"), beside=self.sugar_scale), 1, 1
        )
        grid.addWidget(self._number_row(Quantity.TA_G_PER_L, self.tr("Titratable acidity")), 2, 0)
        grid.addWidget(self._number_row(Quantity.PELLICLE_MM, self.tr("Pellicle thickness")), 2, 1)
        grid.addWidget(self._taste_row(), 3, 0, 1, 2)
        grid.addWidget(self._note_row(), 4, 0, 1, 2)

        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addLayout(grid)
        column.addWidget(self._build_doubt())
        column.addLayout(self._build_foot())
        column.addStretch(1)
        self._show_units()

    def _number_row(
        self, quantity: Quantity, label: str, *, beside: QWidget | None = None, big: bool = False
    ) -> FieldRow:
        line = QLineEdit()
        line.setObjectName(f"reading_{quantity.value}")
        line.setInputMethodHints(Qt.InputMethodHint.ImhFormattedNumbersOnly)
        if big:
            BigType(line, _BIG_SCALE, f"min-height: {_BIG_PX - 10}px;")
        row = FieldRow(label, line, beside=beside, lines=1)
        self._lines[quantity] = line
        self._rows[quantity] = row
        return row

    def _taste_row(self) -> FieldRow:
        self.taste = ChoiceBar(
            [(mark, name_of(mark).replace(" too ", " too\n")) for mark in TasteMark],
            self.tr("Taste"),
            may_be_none=True,
            submits=True,
            height_px=_TASTE_PX,
        )
        self.taste.setObjectName("reading_taste")
        row = FieldRow(self.tr("Taste"), self.taste, lines=0)
        row.setContentsMargins(0, 0, 0, SPACE)
        return row

    def _note_row(self) -> FieldRow:
        line = QLineEdit()
        line.setObjectName("reading_note")
        line.setPlaceholderText(self.tr("What you saw, smelled or did"))
        row = FieldRow(self.tr("Note"), line, lines=0)
        row.setContentsMargins(0, 0, 0, SPACE)
        self._lines[Quantity.NOTE] = line
        self._rows[Quantity.NOTE] = row
        return row

    def _build_doubt(self) -> QWidget:
        self.doubt, column = card(role="warn")
        self.doubt.setObjectName("reading_doubt")
        self.doubt_text = plain_label("", "", wraps=True)
        column.addWidget(self.doubt_text)
        self.anyway_button = QPushButton(self.tr("Save anyway"))
        self.anyway_button.setObjectName("reading_anyway")
        self.mend_button = QPushButton(self.tr("Change it"))
        self.mend_button.setObjectName("reading_mend")
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        line.addWidget(self.mend_button)
        line.addWidget(self.anyway_button)
        line.addStretch(1)
        column.addLayout(line)
        self.doubt.hide()
        return self.doubt

    def _build_foot(self) -> QHBoxLayout:
        self.when = WhenEdit(self._desk.clock)
        self.when.line.setObjectName("reading_when")
        self.when_row = FieldRow(self.tr("When"), self.when, lines=1)
        self.save_button = QPushButton(self.tr("Save"))
        self.save_button.setObjectName("reading_save")
        self.save_button.setToolTip(self.tr("Ctrl+Enter saves from any field"))
        set_role(self.save_button, "primary")
        self.notice = plain_label("", "good", wraps=True)
        self.notice.setObjectName("reading_notice_text")
        self.notice.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        level = FieldRow(" ", self.save_button, lines=0)  # stands level with the field beside it
        self.save_button.setAccessibleName(self.tr("Save the readings"))
        beside = QVBoxLayout()
        beside.setSpacing(SPACE // 2)
        beside.addWidget(level)
        beside.addWidget(self.notice)
        beside.addStretch(1)
        foot = QHBoxLayout()
        foot.setSpacing(2 * SPACE)
        foot.addWidget(self.when_row, 1)
        foot.addLayout(beside, 1)
        return foot

    def _connect(self) -> None:
        for quantity, line in self._lines.items():
            line.returnPressed.connect(self._on_enter)
            line.textEdited.connect(self._on_edited)
            line.setProperty("quantity", quantity.value)
        self.taste.submitted.connect(self._on_enter)
        self.taste.chosen.connect(self._on_edited)
        self.sugar_scale.chosen.connect(self._show_units)
        self.when.submitted.connect(self.save)
        self.when.edited.connect(self._on_when_edited)
        self.save_button.clicked.connect(self.save)
        self.anyway_button.clicked.connect(self._on_anyway)
        self.mend_button.clicked.connect(self._on_mend)
        self._notice_timer.timeout.connect(self._on_notice_over)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self.save)
        self._desk.changes.changed.connect(self._on_changed)

    # keeping

    def save(self) -> None:
        """Keep every field that can be read; point out the others; ask about odd values."""
        if self._batch is None:
            return
        at = self.when.instant()
        drafts, first_bad = self._read(self._batch, at)
        if not self.when_row.message.is_error and not drafts and first_bad is None:
            self._say(self.tr("Nothing is filled in yet."), role="muted")
            self.focus_first()
            return
        if self.when_row.message.is_error:
            self.when.setFocus()
            return
        if self._ask_about(drafts):
            return
        if drafts and not self._record(drafts):
            return
        if first_bad is not None:
            self.when.set_instant(at)  # what is mended belongs to the same moment
            self.field(first_bad).setFocus(Qt.FocusReason.OtherFocusReason)

    def _read(self, batch: Batch, at: datetime) -> tuple[list[ReadingDraft], Quantity | None]:
        drafts: list[ReadingDraft] = []
        first_bad: Quantity | None = None
        self.when_row.set_problem("")
        for slot, text in self._filled().items():
            problem = ""
            quantity, method = self._what(slot)
            try:
                draft = self._desk.readings.entry_from_text(batch.id, quantity, method, text, at)
                self._desk.readings.check(draft, batch)
                drafts.append(draft)
            except NotAQuantity as fault:
                problem = quantity_words(fault)
            except ImpossibleInput as fault:
                if fault.field == "at":
                    self.when_row.set_problem(impossible_words(fault))
                else:
                    problem = impossible_words(fault)
            self._rows[slot].set_problem(problem)
            if problem and first_bad is None:
                first_bad = slot
        mark = self.taste.value()
        if isinstance(mark, TasteMark):
            drafts.append(
                self._desk.readings.entry_from_text(
                    batch.id, Quantity.TASTE, Method.TONGUE, mark.value, at
                )
            )
        return drafts, first_bad

    def _what(self, slot: Quantity) -> tuple[Quantity, Method]:
        """Return what a field means now, and how it was taken."""
        quantity = slot
        if slot is Quantity.BRIX and self.sugar_scale.value() is Quantity.SPECIFIC_GRAVITY:
            quantity = Quantity.SPECIFIC_GRAVITY
        method = self.method.value()
        if quantity is Quantity.PH and isinstance(method, Method):
            return quantity, method
        return quantity, self._desk.readings.methods(quantity)[0]

    def _ask_about(self, drafts: list[ReadingDraft]) -> bool:
        """Ask whether odd values are meant; return whether an answer is awaited."""
        sentences = []
        for draft in drafts:
            if draft.quantity in self._accepted:
                continue
            for verdict in self._desk.readings.doubts(draft):
                words = verdict_words(verdict)
                sentences.append(
                    " ".join(part for part in (words.fact, words.why, words.what_to_do) if part)
                )
        if not sentences:
            self.doubt.hide()
            return False
        self.doubt_text.setText("\n".join(sentences))
        self.doubt.show()
        self.anyway_button.setFocus(Qt.FocusReason.OtherFocusReason)
        announce(self, self.doubt_text.text())
        return True

    def _record(self, drafts: list[ReadingDraft]) -> bool:
        try:
            kept = self._desk.readings.record(drafts)
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble), role="error")
            return False
        self._clear_kept(drafts)
        said = self.tr("Saved: {what}").format(
            what=", ".join(reading_words(reading, self._desk.quantities) for reading in kept)
        )
        self._say(said)
        announce(self, said)
        self.recorded.emit(kept)
        return True

    def _clear_kept(self, drafts: list[ReadingDraft]) -> None:
        self._accepted.clear()
        self.doubt.hide()
        kept = {draft.quantity for draft in drafts}
        for slot, row in self._rows.items():
            if self._what(slot)[0] in kept:
                self._lines[slot].clear()
                row.set_problem("")
        self.taste.set_value(None)
        if self.is_empty():
            self.when.follow_now()
            self.when_row.message.say("")
            self.focus_first()

    # what happens

    def _on_enter(self) -> None:
        order = [*self._lines.values()]
        stops: list[QWidget] = [*order[:-1], self.taste, order[-1]]
        sender = self.sender()
        here = next((n for n, stop in enumerate(stops) if stop is sender), len(stops) - 1)
        if here + 1 < len(stops):
            stops[here + 1].setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.save()

    def _on_edited(self) -> None:
        sender = self.sender()
        self.doubt.hide()
        for slot, line in self._lines.items():
            if line is sender:
                self._rows[slot].set_problem("")
                self._accepted.discard(self._what(slot)[0])
        if self.notice.text() and not self._notice_timer.isActive():
            self._say("")

    def _on_when_edited(self) -> None:
        self.when_row.set_problem("")
        self.when_row.set_hint(self.tr("Stays at this time until you press Now."))

    def _on_anyway(self) -> None:
        if self._batch is None:
            return
        drafts, _ = self._read(self._batch, self.when.instant())
        self._accepted = {draft.quantity for draft in drafts if self._desk.readings.doubts(draft)}
        self.save()

    def _on_mend(self) -> None:
        self.doubt.hide()
        if self._batch is None:
            return
        drafts, _ = self._read(self._batch, self.when.instant())
        doubted = {draft.quantity for draft in drafts if self._desk.readings.doubts(draft)}
        for slot, line in self._lines.items():
            if self._what(slot)[0] in doubted:
                line.setFocus(Qt.FocusReason.OtherFocusReason)
                line.selectAll()
                return

    def _on_notice_over(self) -> None:
        self.notice.setText("")

    def _on_changed(self, change: object) -> None:
        from brewdesk.services.changes import Change, Topic

        if isinstance(change, Change) and change.concerns(Topic.SETTINGS):
            self._show_units()

    # small things

    def _filled(self) -> dict[Quantity, str]:
        return {slot: line.text() for slot, line in self._lines.items() if line.text().strip()}

    def _say(self, text: str, role: str = "good") -> None:
        set_role(self.notice, role)
        self.notice.setText(text)
        if text and role == "good":
            self._notice_timer.start()
        else:
            self._notice_timer.stop()

    def _show_units(self) -> None:
        show = self._desk.quantities.unit
        is_gravity = self.sugar_scale.value() is Quantity.SPECIFIC_GRAVITY
        self._lines[Quantity.PH].setPlaceholderText(self.tr("3.40"))
        self._lines[Quantity.TEMPERATURE_C].setPlaceholderText(show(Kind.TEMPERATURE))
        self._lines[Quantity.BRIX].setPlaceholderText("1.020" if is_gravity else "°Bx")
        self._lines[Quantity.TA_G_PER_L].setPlaceholderText(show(Kind.ACIDITY))
        self._lines[Quantity.PELLICLE_MM].setPlaceholderText("mm")

    def _clear_fields(self) -> None:
        for slot, line in self._lines.items():
            line.clear()
            self._rows[slot].set_problem("")
        self._accepted.clear()
        self.taste.set_value(None)
        self.doubt.hide()
        self.when_row.set_problem("")
        self.when.follow_now()

    def _put_away(self) -> None:
        if self._batch is None or self.is_empty():
            return
        self._drafts[self._batch.id] = _Draft(
            self._filled(),
            self.taste.value(),
            self.sugar_scale.value(),
            None if self.when.is_following() else self.when.instant(),
        )

    def _bring_back(self, draft: _Draft) -> None:
        for slot, text in draft.texts.items():
            self._lines[slot].setText(text)
        self.taste.set_value(draft.taste if isinstance(draft.taste, TasteMark) else None)
        if isinstance(draft.sugar, Quantity):
            self.sugar_scale.set_value(draft.sugar)
            self._show_units()
        if draft.at is not None:
            self.when.set_instant(draft.at)

    def _choose_usual_method(self, batch_id: int) -> None:
        taken = [
            reading.method
            for reading in self._desk.readings.of_batch(batch_id)
            if reading.quantity is Quantity.PH
        ]
        if taken:
            self.method.set_value(taken[-1])
