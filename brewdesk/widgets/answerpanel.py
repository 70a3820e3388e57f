"""An answer of the reckoner: the figure, its range, what to mind, where it comes from."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QGraphicsOpacityEffect,
    QGridLayout,
    QLayout,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.quantities import Quantities
from brewdesk.services.reckoner.question import Answer, Formula, Question, Value
from brewdesk.services.records import Level
from brewdesk.services.wording.reckoner import (
    arithmetic_words,
    caveat_words,
    line_words,
    says_words,
    source_words,
    span_words,
)
from brewdesk.widgets.bigtype import BigType
from brewdesk.widgets.fields import Disclosure, MessageLine, card, make_strong, plain_label
from brewdesk.widgets.rangebar import RangeBar
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard, VerdictLine

_FIGURE_SCALE = 2.4
_STALE_OPACITY = 0.45


class AnswerPanel(QWidget):
    """Shows one answer; what belongs to older entries is dimmed."""

    def __init__(self, quantities: Quantities, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._quantities = quantities
        self.text = ""  # the whole answer, as a screen reader says it
        self.state = MessageLine(self, lines=1)
        self.label = plain_label(role="label", parent=self, wraps=True)
        self.figure = plain_label(parent=self, wraps=True)
        self.figure.setObjectName("reckoner_figure")
        self.figure.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._big = BigType(self.figure, _FIGURE_SCALE, "font-weight: 600;")
        self.range = RangeBar(self)
        self.range.setObjectName("reckoner_range")
        self.sentence = plain_label(parent=self, wraps=True)
        self.sentence.setObjectName("reckoner_sentence")
        self.sources = Disclosure(self.tr("Where this comes from"), self)
        self.sources.button.setObjectName("reckoner_sources")
        self.cards: list[VerdictCard] = []
        self.remarks: list[VerdictLine] = []
        self._lay_out()
        self.show_nothing("")

    def _lay_out(self) -> None:
        self._answer_card, answer = card(self)
        answer.addWidget(self.label)
        answer.addWidget(self.figure)
        answer.addWidget(self.range)
        answer.addWidget(self.sentence)
        self._also_card, self._also = card(self)
        self._stops = QVBoxLayout()
        self._verdicts = QVBoxLayout()
        self._minded = QVBoxLayout()
        for layout in (self._stops, self._verdicts, self._minded):
            layout.setSpacing(SPACE)
        self._cited = QVBoxLayout(self.sources.body)
        self._cited.setContentsMargins(2 * SPACE, 0, SPACE, SPACE)
        self._cited.setSpacing(SPACE // 2)
        self._body = QWidget(self)
        body = QVBoxLayout(self._body)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(2 * SPACE)
        body.addLayout(self._stops)
        body.addWidget(self._answer_card)
        body.addLayout(self._verdicts)
        body.addWidget(self._also_card)
        body.addLayout(self._minded)
        body.addWidget(self.sources)
        self._dimmer = QGraphicsOpacityEffect(self._body)
        self._dimmer.setOpacity(_STALE_OPACITY)
        self._dimmer.setEnabled(False)
        self._body.setGraphicsEffect(self._dimmer)
        self._withheld_card, withheld = card(self, "warn")
        self.withheld = plain_label(parent=self, wraps=True)
        self.withheld.setObjectName("reckoner_withheld")
        withheld.addWidget(self.withheld)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addWidget(self._withheld_card)
        column.addWidget(self.state)
        column.addWidget(self._body)
        column.addStretch(1)

    # what is shown

    def show_nothing(self, words: str) -> None:
        """Show no figures, only why there are none."""
        self._body.hide()
        self._withheld_card.hide()
        self.text = words
        self.state.say(words)
        self.state.setVisible(bool(words))

    def show_withheld(self, words: str) -> None:
        """Show no figures, and say in full type why the core gives none."""
        self.show_nothing("")
        self.text = words
        self.withheld.setText(words)
        self._withheld_card.show()

    def show_stale(self, words: str) -> None:
        """Keep the answer, dimmed, and say why it is not that of the entries."""
        if self._body.isHidden():
            self.show_nothing(words)
            return
        self._dimmer.setEnabled(True)
        self.text = words
        self.state.say(words, "error")
        self.state.show()

    def show_answer(self, question: Question, answer: Answer, values: Mapping[str, Value]) -> None:
        """Show what the core says."""
        show = self._quantities.show
        self.state.say("")
        self.state.hide()
        self._dimmer.setEnabled(False)
        self._withheld_card.hide()
        self._show_figure(answer)
        self.sentence.setText(says_words(question, answer, values, show))
        self.sentence.setVisible(bool(answer.says))
        self._show_also(answer)
        self._answer_card.setVisible(not answer.is_judgement or bool(answer.says))
        self._show_verdicts(answer)
        self._show_minded(answer)
        self._show_sources(answer.formulas)
        self._body.show()
        parts = (self.label.text(), self.figure.text(), self.range.text, self.sentence.text())
        said = [*parts, *(one.text for one in self.cards), *(one.text for one in self.remarks)]
        self.text = " ".join(part for part in said if part)

    def _show_figure(self, answer: Answer) -> None:
        label = figure = ""
        self.range.clear()
        if answer.lines and not answer.is_judgement:
            line = answer.lines[0]
            words = line_words(line, self._quantities.show)
            label, figure = words.label, words.figure
            if words.ends:
                self.range.show_range(line, words, span_words(line))
        for shown, text in ((self.label, label), (self.figure, figure)):
            shown.setText(text)
            shown.setVisible(bool(text))
        self.figure.setAccessibleName(f"{label}: {figure}" if figure else "")

    def _show_also(self, answer: Answer) -> None:
        _empty(self._also)
        lines = answer.lines if answer.is_judgement else answer.lines[1:]
        self._also_card.setVisible(bool(lines))
        if not lines:
            return
        if answer.is_judgement:
            heading = plain_label(self.tr("Limits it was held against"), "label", self, wraps=True)
            self._also.addWidget(heading)
        holder = QWidget(self)
        grid = QGridLayout(holder)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE)
        grid.setColumnStretch(0, 1)
        top, right = Qt.AlignmentFlag.AlignTop, Qt.AlignmentFlag.AlignRight
        for row, line in enumerate(lines):
            words = line_words(line, self._quantities.show)
            name = plain_label(words.label, "muted", holder, wraps=True)
            figure = plain_label(words.figure, parent=holder)
            make_strong(figure)
            figure.setAccessibleName(f"{words.label}: {words.figure} {words.ends}".strip())
            grid.addWidget(name, 2 * row, 0, top)
            grid.addWidget(figure, 2 * row, 1, top | right)
            if words.ends:
                ends = plain_label(words.ends, "label", holder)
                grid.addWidget(ends, 2 * row + 1, 0, 1, 2, top | right)
        self._also.addWidget(holder)

    def _show_verdicts(self, answer: Answer) -> None:
        _empty(self._stops)
        _empty(self._verdicts)
        show = self._quantities.show
        is_all = answer.is_judgement  # then even a mild verdict gets its card
        self.cards, self.remarks = [], []
        for verdict in answer.verdicts:
            if is_all or verdict.level is not Level.INFORM:
                self.cards.append(VerdictCard(verdict, self, show=show))
            else:
                self.remarks.append(VerdictLine(verdict, self, show=show))
        # what forbids, or is the whole answer, stands above every figure
        for warning in self.cards:
            is_first = is_all or warning.verdict.level is Level.STOP
            (self._stops if is_first else self._verdicts).addWidget(warning)
        for remark in self.remarks:
            self._verdicts.addWidget(remark)

    def _show_minded(self, answer: Answer) -> None:
        _empty(self._minded)
        sentences = [*(caveat_words(caveat) for caveat in answer.caveats), *answer.notes]
        if not sentences:
            return
        self._minded.addWidget(plain_label(self.tr("To bear in mind"), "heading", self))
        for sentence in sentences:
            self._minded.addWidget(plain_label(sentence, "muted", self, wraps=True))

    def _show_sources(self, formulas: tuple[Formula, ...]) -> None:
        _empty(self._cited)
        for formula in formulas:
            name = plain_label(formula.name, parent=self.sources.body, wraps=True)
            make_strong(name)
            self._cited.addWidget(name)
            cited = [
                self.tr("{citation} ({standing})").format(
                    citation=source.citation.rstrip("."), standing=source.standing
                )
                for source in source_words(formula)
            ]
            for text in cited or [arithmetic_words()]:
                shown = plain_label(text, "muted", self.sources.body, wraps=True)
                shown.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
                self._cited.addWidget(shown)
            self._cited.addSpacing(SPACE)


def _empty(layout: QLayout) -> None:
    while (item := layout.takeAt(0)) is not None:
        widget = item.widget()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
