"""Ask the calculation core any single question: the list, the entries, the answer beside them."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent, QTimer
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.reckoner.catalogue import all_questions
from brewdesk.services.reckoner.question import Answer, Question, Value, reckon
from brewdesk.services.records import ImpossibleInput, NotAssessed
from brewdesk.services.settings import CULTURE_LIMIT_C
from brewdesk.services.wording.reckoner import refusal_words, withheld_words
from brewdesk.widgets.answerpanel import AnswerPanel
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.keepcalibration import KeepCalibration
from brewdesk.widgets.questionform import QuestionForm
from brewdesk.widgets.questionlist import QuestionList
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.twocolumns import TwoColumns

REPLY_DELAY_MS = 80
_LIST_LETTERS, _LIST_SHARE = 38, 0.34  # the list's width: enough to read, never most of the page
_WIDE_LETTERS = 88
_KEPT_QUESTION = "calibrate"  # the one whose answer is worth keeping


class ReckonerPage(QWidget):
    """One question at a time; what was typed for another is there when it is chosen again."""

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, reply_delay_ms: int = REPLY_DELAY_MS
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._questions = {question.key: question for question in all_questions()}
        self._forms: dict[str, QuestionForm] = {}
        self._key = ""
        self._is_stale = False
        self._asked = 0  # counts what was asked, so that a late answer finds no place
        self._reply = QTimer(self)
        self._reply.setObjectName("reply")
        self._reply.setSingleShot(True)
        self._reply.setInterval(reply_delay_ms)
        self.list = QuestionList(tuple(self._questions.values()), self)
        self.answer = AnswerPanel(desk.quantities, self)
        self._lay_out()
        self._reply.timeout.connect(self.reply)
        self.list.chosen.connect(self.ask)
        self.list.entered.connect(self._on_entered)
        desk.changes.changed.connect(self._on_changed)
        self.list.choose(next(iter(self._questions)))

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(SPACE)
        left.addWidget(plain_label(self.tr("Reckon"), "title", self))
        left.addWidget(self.list, 1)
        self._left = QWidget(self)
        self._left.setLayout(left)
        left.setContentsMargins(0, 0, 0, 0)
        self.heading = plain_label(role="title", parent=self, wraps=True)
        self.purpose = plain_label(role="muted", parent=self, wraps=True)
        self.trouble = plain_label(role="error", parent=self, wraps=True)
        self.trouble.hide()
        self._form_place = QWidget(self)
        self._form_column = QVBoxLayout(self._form_place)
        self._form_column.setContentsMargins(0, 0, 0, 0)
        self._form_column.addWidget(self.trouble)
        self.keep = KeepCalibration(self._desk, self._form_place)
        self._form_column.addWidget(self.keep)
        self.columns = TwoColumns(self._form_place, self.answer, self, wide_letters=_WIDE_LETTERS)
        right = QVBoxLayout()
        right.setSpacing(SPACE)
        right.addWidget(self.heading)
        right.addWidget(self.purpose)
        right.addSpacing(SPACE // 2)
        right.addWidget(self.columns, 1)
        row = QHBoxLayout(self)
        row.setContentsMargins(3 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        row.setSpacing(3 * SPACE)
        row.addWidget(self._left)
        row.addLayout(right, 1)
        self._fit_list()

    # asking

    def question(self) -> Question:
        """Return the question on show."""
        return self._questions[self._key]

    def form(self) -> QuestionForm:
        """Return its entries."""
        return self._forms[self._key]

    def ask(self, key: str) -> None:
        """Show a question with what was typed for it before, and answer it."""
        if key == self._key:
            return
        if self._key:
            self.form().hide()
        self._key = key
        question = self.question()
        if key not in self._forms:
            own = {"limit_c": self._desk.settings.get(CULTURE_LIMIT_C)}
            form = QuestionForm(question, self._desk.quantities, self._form_place, own=own)
            form.changed.connect(self._reply.start)
            self._forms[key] = form
            self._form_column.insertWidget(self._form_column.indexOf(self.keep), form)
        self.form().show()
        self.heading.setText(question.title)
        self.purpose.setText(question.purpose)
        self.answer.show_nothing("")
        self.keep.withdraw()
        self.reply()

    def reply(self) -> None:
        """Answer what stands in the entries, or say beside them why that cannot be."""
        self._reply.stop()
        self._asked += 1
        form, question = self.form(), self.question()
        form.clear_problems()
        self._say("")
        values = form.values()
        if values is None:
            self.keep.withdraw()
            self.answer.show_stale(self.tr("Waiting for the marked entry."))
            return
        work = partial(reckon, question, values)
        landed = partial(self._on_answer, self._asked, question, values)
        failed = partial(self._on_failed, self._asked, question)
        if question.is_slow:
            self._desk.jobs.run(work, landed, failed, key="reckoner")
            return
        try:
            answer = work()
        except (ImpossibleInput, NotAssessed) as problem:
            failed(problem)
        else:
            landed(answer)

    def _on_answer(
        self, number: int, question: Question, values: dict[str, Value], answer: Answer
    ) -> None:
        if number != self._asked:
            return
        self.answer.show_answer(question, answer, values)
        if question.key == _KEPT_QUESTION:
            self.keep.offer(answer, values)
        announce(self.answer, self.answer.text)

    def _on_failed(self, number: int, question: Question, problem: BaseException) -> None:
        if not isinstance(problem, ImpossibleInput | NotAssessed):
            raise problem
        if number != self._asked:
            return
        self.keep.withdraw()
        if isinstance(problem, NotAssessed):
            self.answer.show_withheld(withheld_words(problem))
            announce(self.answer, self.answer.text)
            return
        words = refusal_words(problem, question, self._desk.quantities.show)
        if not self.form().set_problem(problem.field, words):
            self._say(words)
        self.answer.show_stale(self.tr("Not up to date: see the marked entry."))

    def _say(self, words: str) -> None:
        self.trouble.setText(words)
        self.trouble.setVisible(bool(words))
        announce(self, words)

    def _on_entered(self) -> None:
        self.form().go_to_first()

    # staying up to date

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(Topic.SETTINGS):
            return
        self._is_stale = True
        if self.isVisible():
            self._catch_up()

    def _catch_up(self) -> None:
        self._is_stale = False
        for form in self._forms.values():
            form.refresh_units()
        self.reply()

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with other units."""
        super().showEvent(event)
        if self._is_stale:
            self._catch_up()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the list its share of the width."""
        super().resizeEvent(event)
        self._fit_list()

    def changeEvent(self, event: QEvent) -> None:
        """Give the list its share anew when the type size changes."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._fit_list()

    def _fit_list(self) -> None:
        letters = self.fontMetrics().averageCharWidth() * _LIST_LETTERS
        self._left.setFixedWidth(max(12 * SPACE, min(letters, round(self.width() * _LIST_SHARE))))
