"""Fast entry of what was measured, tasted or seen on one batch."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.readings import reading_words
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Batch,
    ImpossibleInput,
    Look,
    Method,
    NotAQuantity,
    Quantity,
    ReadingDraft,
    StoreTrouble,
    TasteMark,
)
from brewdesk.services.wording.problems import impossible_words, quantity_words, trouble_words
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.fields import FieldRow, announce, bring_into_view, card, plain_label
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.readingfields import FieldTexts, ReadingFields
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.whenedit import WhenEdit

NOTICE_MS = 8_000


class ReadingForm(QWidget):
    """Enter any of a batch's readings, and keep all that are filled in as one act.

    A field that cannot be read stays in the form with its message; the others are kept.
    ``recorded`` carries the tuple of readings just kept. ``look_wanted`` asks for the guided
    look at a batch, ``mold_seen`` says that a look that was kept found mold.
    """

    recorded = Signal(object)
    look_wanted = Signal(int)  # batch id
    mold_seen = Signal(int)  # batch id

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, notice_ms: int = NOTICE_MS
    ) -> None:
        super().__init__(parent)
        self.setObjectName("reading_form")
        self._desk = desk
        self._batch: Batch | None = None
        self._waiting: dict[int, tuple[FieldTexts, datetime | None]] = {}
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
        self._bring_back(batch_id)
        self._choose_usual_method(batch_id)

    def batch_id(self) -> int | None:
        """Return the batch for which readings are entered."""
        return None if self._batch is None else self._batch.id

    def focus_first(self) -> None:
        """Put the keyboard into the first field."""
        self.field(Quantity.PH).setFocus(Qt.FocusReason.OtherFocusReason)

    def field(self, quantity: Quantity) -> QLineEdit:
        """Return the entry line of a quantity."""
        return self.fields.lines[quantity]

    def row(self, quantity: Quantity) -> FieldRow:
        """Return the field of a quantity with its label and message."""
        return self.fields.rows[quantity]

    def is_empty(self) -> bool:
        """Whether nothing has been entered."""
        return self.fields.is_empty()

    # building

    def _build(self) -> None:
        self.fields = ReadingFields(self._desk.readings, self._desk.quantities)
        self.foot = self._build_foot()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.fields)
        column.addWidget(self._build_doubt())
        column.addWidget(self.foot)
        column.addStretch(1)

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

    def _build_foot(self) -> PairGrid:
        self.when = WhenEdit(self._desk.clock)
        self.when.line.setObjectName("reading_when")
        self.when_row = FieldRow(self.tr("When"), self.when, lines=1)
        self.save_button = QPushButton(self.tr("Save"))
        self.save_button.setObjectName("reading_save")
        self.save_button.setToolTip(self.tr("Ctrl+Enter saves from any field"))
        set_role(self.save_button, "primary")
        self.save_row = FieldRow(" ", self.save_button, lines=1)  # level with the time beside it
        self.save_button.setAccessibleName(self.tr("Save the readings"))
        self.notice = self.save_row.message
        self.notice.setObjectName("reading_notice_text")
        foot = PairGrid()
        foot.add(self.when_row, self.save_row)
        return foot

    def _connect(self) -> None:
        self.fields.edited.connect(self._on_edited)
        self.fields.left.connect(self._on_left)
        self.fields.submitted.connect(self.save)
        self.fields.guide_wanted.connect(self._on_guide_wanted)
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
            self._hint_of_time()
            self.field(first_bad).setFocus(Qt.FocusReason.OtherFocusReason)
            bring_into_view(self.row(first_bad))

    def _read(self, batch: Batch, at: datetime) -> tuple[list[ReadingDraft], Quantity | None]:
        drafts: list[ReadingDraft] = []
        first_bad: Quantity | None = None
        self.when_row.set_problem("")
        for slot, text in self.fields.filled().items():
            draft, problem = self._read_one(batch, *self.fields.meaning(slot), text, at)
            self.fields.rows[slot].set_problem(problem)
            if draft is not None:
                drafts.append(draft)
            elif problem and first_bad is None:
                first_bad = slot
        for bar, quantity, method in (
            (self.fields.taste, Quantity.TASTE, Method.TONGUE),
            (self.fields.look, Quantity.LOOK, Method.EYE),
        ):
            mark = bar.value()
            if isinstance(mark, TasteMark | Look):
                draft, _ = self._read_one(batch, quantity, method, mark.value, at)
                if draft is not None:
                    drafts.append(draft)
        return drafts, first_bad

    def _read_one(
        self, batch: Batch, quantity: Quantity, method: Method, text: str, at: datetime
    ) -> tuple[ReadingDraft | None, str]:
        """Read one field; a fault of the time is told beside the time, not here."""
        try:
            draft = self._desk.readings.entry_from_text(batch.id, quantity, method, text, at)
            self._desk.readings.check(draft, batch)
        except NotAQuantity as fault:
            return None, quantity_words(fault)
        except ImpossibleInput as fault:
            words = impossible_words(fault)
            if fault.field != "at":
                return None, words
            self.when_row.set_problem(words)
            return None, ""
        return draft, ""

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
        QTimer.singleShot(0, self.doubt, lambda: bring_into_view(self.doubt))  # once it has a place
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
        for reading in kept:
            if reading.quantity is Quantity.LOOK and reading.text == Look.MOLD.value:
                self.mold_seen.emit(reading.batch_id)
        return True

    def _clear_kept(self, drafts: list[ReadingDraft]) -> None:
        self._accepted.clear()
        self.doubt.hide()
        self.fields.clear_kept({draft.quantity for draft in drafts})
        if self.is_empty():
            self.when.follow_now()
            self.when_row.message.say("")
            self.focus_first()

    # what happens

    def _on_edited(self, slot: Quantity | None) -> None:
        self.doubt.hide()
        if slot is not None:
            self._accepted.discard(self.fields.meaning(slot)[0])
        if self.notice.text() and not self._notice_timer.isActive():
            self._say("")

    def _on_left(self, slot: Quantity) -> None:
        """Say at once what cannot be read, as every other field of the program does."""
        text = self.field(slot).text()
        if self._batch is None or not text.strip():
            return
        now = self._desk.clock.now()  # the time that is entered may still be changed
        _, problem = self._read_one(self._batch, *self.fields.meaning(slot), text, now)
        self.row(slot).set_problem(problem)

    def _on_when_edited(self) -> None:
        self.when_row.set_problem("")
        self._hint_of_time()

    def _hint_of_time(self) -> None:
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
        for slot, line in self.fields.lines.items():
            if self.fields.meaning(slot)[0] in doubted:
                line.setFocus(Qt.FocusReason.OtherFocusReason)
                line.selectAll()
                return

    def _on_guide_wanted(self) -> None:
        if self._batch is not None:
            self.look_wanted.emit(self._batch.id)

    def _on_notice_over(self) -> None:
        self.notice.say("")

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.SETTINGS):
            self.fields.show_units()

    # small things

    def _say(self, text: str, role: str = "good") -> None:
        self.notice.say(text, role)
        if text and role == "good":
            self._notice_timer.start()
        else:
            self._notice_timer.stop()

    def _clear_fields(self) -> None:
        self.fields.clear()
        self._accepted.clear()
        self.doubt.hide()
        self.when_row.set_problem("")
        self.when.follow_now()

    def _put_away(self) -> None:
        if self._batch is None or self.is_empty():
            return
        at = None if self.when.is_following() else self.when.instant()
        self._waiting[self._batch.id] = (self.fields.texts(), at)

    def _bring_back(self, batch_id: int) -> None:
        texts, at = self._waiting.pop(batch_id, (None, None))
        if texts is not None:
            self.fields.put_back(texts)
        if at is not None:
            self.when.set_instant(at)

    def _choose_usual_method(self, batch_id: int) -> None:
        taken = [
            reading.method
            for reading in self._desk.readings.of_batch(batch_id)
            if reading.quantity is Quantity.PH
        ]
        if taken:
            self.fields.method.set_value(taken[-1])
