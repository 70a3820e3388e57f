"""Look back: what the pantry has learned, in sentences first and pictures after."""

from __future__ import annotations

from PySide6.QtCore import QLocale, Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.lookback import TOPICS
from brewdesk.services.lookbacklosses import Loss, LossKind
from brewdesk.services.lookbackview import LookBackView
from brewdesk.services.records import StoreTrouble
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.inside import inside
from brewdesk.services.wording.lookback import (
    factor_words,
    group_line,
    measure_words,
    month_words,
    sentences,
)
from brewdesk.services.wording.problems import trouble_words
from brewdesk.widgets.dotplot import DotPlot
from brewdesk.widgets.fields import MessageLine, announce, card, plain_label
from brewdesk.widgets.lookbackfilters import LookBackFilters
from brewdesk.widgets.lookbackrows import month_rows, plot_rows, tally_rows
from brewdesk.widgets.losslist import LossList
from brewdesk.widgets.monthstrip import MonthStrip
from brewdesk.widgets.tallybars import TallyBars
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.twocolumns import TwoColumns

CHANGE_MS = 150  # several changes at once are one question
BUSY_AFTER_MS = 250
_NOTHING_PX = 90 * SPACE
_WIDE_LETTERS = 108  # of both columns; the plots are readable in half of that


class LookBackPage(QWidget):
    """Filters, sentences, pictures. ``subject_wanted`` carries the `Subject` of a batch or so."""

    subject_wanted = Signal(object)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("look_back_page")
        self._desk = desk
        self._is_stale = True
        self.view: LookBackView | None = None
        self.filters = LookBackFilters(desk)
        self.print_button = QPushButton(self.tr("Print or save…"))
        self.print_button.setObjectName("look_back_print")
        self.print_button.clicked.connect(self.print_page)
        self.filters.row.addWidget(self.print_button)
        self.body = QStackedWidget()
        self.body.addWidget(self._nothing_page())
        self.body.addWidget(self._view_page())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2 * SPACE)
        column.addWidget(self.filters)
        column.addWidget(self.body, 1)
        self._later = self._timer("look_back_later", CHANGE_MS, self.ask)
        self._busy_later = self._timer("look_back_busy", BUSY_AFTER_MS, self._show_busy)
        self.filters.changed.connect(self.ask)
        self.plot.opened.connect(self._on_dot)
        self.plot.walked.connect(self.told.say)
        self.losses.opened.connect(self._on_loss)
        desk.look_back.ready.connect(self._on_ready)
        desk.look_back.failed.connect(self._on_failed)
        desk.changes.changed.connect(self._on_changed)
        desk.palate.learned.connect(self._ask_later)

    def ask(self) -> None:
        """Ask anew, by the filters as they are."""
        self._later.stop()
        self._is_stale = False
        self._busy_later.start()
        self._desk.look_back.ask(self.filters.question())

    def print_page(self) -> None:
        """Show the page as it will be printed."""
        if self.view is None:
            return
        from brewdesk.widgets.reports import look_back_dialog

        dialog = look_back_dialog(self._desk, self.view, self.filters.names(), self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        if self._is_stale:
            self.filters.refresh()
            self.ask()

    # building

    def _timer(self, name: str, milliseconds: int, call: object) -> QTimer:
        made = QTimer(self)
        made.setObjectName(name)
        made.setSingleShot(True)
        made.setInterval(milliseconds)
        made.timeout.connect(call)
        return made

    def _nothing_page(self) -> QWidget:
        page = QWidget()
        self.nothing = plain_label("", "muted", wraps=True)
        self.nothing.setObjectName("look_back_nothing")
        self.nothing.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.nothing_clear = QPushButton(self.tr("Clear filters"))
        self.nothing_clear.setObjectName("look_back_nothing_clear")
        self.nothing_clear.clicked.connect(self.filters.clear)
        self.nothing_clear.hide()
        column = QVBoxLayout(page)
        column.setSpacing(2 * SPACE)
        column.addStretch(1)
        self.nothing.setMaximumWidth(_NOTHING_PX)
        middle = QHBoxLayout()  # a label told to stand in the middle would wrap too soon
        middle.addStretch(1)
        middle.addWidget(self.nothing, 100)
        middle.addStretch(1)
        column.addLayout(middle)
        column.addWidget(self.nothing_clear, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(2)
        return page

    def _view_page(self) -> QWidget:
        self.short = QVBoxLayout()
        self.short.setSpacing(SPACE)
        short_card, column = self._card(self.tr("In short"), "look_back_short")
        column.addLayout(self.short)
        self.plot = DotPlot()
        self.plot_title = plain_label("", "heading", wraps=True)
        self.told = MessageLine()
        self.told.setObjectName("look_back_told")
        legend = self.tr(
            "Each dot is a batch; an open one is not there, or ended before. The line is the "
            "median, the band where the median of many such batches lies (nine times in ten; "
            "from five batches on). The diamond is the better guess for the next one: a small "
            "group's mean drawn towards that of all. Groups stand in no order of merit."
        )
        caution = self.tr(
            "Tea, culture, place and season change together in a pantry. What stands side by "
            "side here shows what was, not what it came from."
        )
        plot_card, column = self._card("", "look_back_days")
        column.addWidget(self.plot_title)
        column.addWidget(self.plot)
        column.addWidget(self.told)
        column.addWidget(plain_label(legend, "label", wraps=True))
        column.addWidget(plain_label(caution, "label", wraps=True))
        left = _column(short_card, plot_card)
        self.months = MonthStrip()
        self.tastes, self.fizz = TallyBars(), TallyBars()
        self.losses = LossList(self._desk)
        self._cards: dict[str, QFrame] = {}
        for key, title, widget in (
            ("months", self.tr("Month by month"), self.months),
            ("tastes", self.tr("How it tasted"), self.tastes),
            ("fizz", self.tr("How bottles opened"), self.fizz),
            ("losses", self.tr("Losses"), self.losses),
        ):
            made, column = self._card(title, f"look_back_{key}")
            column.addWidget(widget)
            self._cards[key] = made
        right = _column(*self._cards.values())
        return TwoColumns(left, right, wide_letters=_WIDE_LETTERS)

    def _card(self, title: str, name: str) -> tuple[QFrame, QVBoxLayout]:
        made, column = card()
        made.setObjectName(name)
        if title:
            column.addWidget(plain_label(title, "heading", wraps=True))
        return made, column

    # answers

    def _show_busy(self) -> None:
        if self.view is None:
            self.nothing.setText(self.tr("Looking through your records…"))
            self.body.setCurrentIndex(0)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(TOPICS | Topic.SETTINGS):
            self._ask_later()

    def _ask_later(self) -> None:
        """Ask anew, once what changes together has changed; while hidden, when shown again."""
        self._is_stale = True
        if self.isVisible():
            self.filters.refresh()
            self._later.start()

    def _on_failed(self, error: BaseException) -> None:
        self._busy_later.stop()
        if not isinstance(error, StoreTrouble):
            raise error
        self.nothing.setText(trouble_words(error))
        self.nothing_clear.hide()
        self.body.setCurrentIndex(0)

    def _on_ready(self, view: LookBackView) -> None:
        self._busy_later.stop()
        self.view = view
        is_empty = not view.batch_count and not view.losses
        self.print_button.setEnabled(not is_empty)
        if is_empty:
            self._show_nothing(view)
            return
        self._show_sentences(view)
        self._show_plot(view)
        self._show_months(view)
        self._show_tallies(view)
        self.losses.set_losses(view.losses)
        self._cards["losses"].setVisible(bool(view.losses))
        self.body.setCurrentIndex(1)

    def _show_nothing(self, view: LookBackView) -> None:
        names = self.filters.names()
        if view.has_any and names:
            words = self.tr("No batch that has soured is like that: {filters}.").format(
                filters=", ".join(names)
            )
        else:
            words = self.tr(
                "Nothing to look back at yet.\n\nWhen your first batch sours and its pH is read "
                "a few times, its days appear here. Tastings, opened bottles, months and losses "
                "join as you note them. With five batches of a kind the page says how sure it "
                "is of their pace, and with five of two kinds whether they differ."
            )
        self.nothing.setText(words)
        self.nothing_clear.setVisible(bool(view.has_any and names))
        self.body.setCurrentIndex(0)
        announce(self, words)

    def _show_sentences(self, view: LookBackView) -> None:
        while (item := self.short.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        told = sentences(view, self._desk.quantities.show)
        for number, sentence in enumerate(told):
            label = plain_label(sentence, "" if number < 2 else "muted", wraps=True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            self.short.addWidget(label)
        announce(self, told[0] if told else "")

    def _show_plot(self, view: LookBackView) -> None:
        show, zone, question = self._desk.quantities.show, self._desk.clock.zone(), view.question
        title = self.tr("Days {what}, by {factor}").format(
            what=measure_words(question.measure, question, show),
            factor=inside(factor_words(question.factor)),
        )
        rows = plot_rows(view, show, zone)
        self.plot_title.setText(title)
        lines = "\n".join(group_line(group, question, show) for group in view.groups)
        self.plot.set_rows(rows, title, lines)
        self.plot.setVisible(bool(rows))
        if rows:
            self.told.say(self.tr("Press a dot, or walk with the arrows, to meet its batch."))
        else:
            self.told.say(self.tr("No batch has readings that tell these days."))

    def _show_months(self, view: LookBackView) -> None:
        show, months = self._desk.quantities.show, view.months
        self._cards["months"].setVisible(bool(months))
        if not months:
            return
        rows = month_rows(months, show)
        locale = QLocale()
        short = QLocale.FormatType.ShortFormat
        names = tuple(locale.standaloneMonthName(m.month, short) for m in months)
        words = "\n".join(month_words(m, show) for m in months)
        self.months.set_rows(names, rows, self.tr("Months"), words)

    def _show_tallies(self, view: LookBackView) -> None:
        show = self._desk.quantities.show
        tastes = tally_rows(view, show, lambda group: group.tastes)
        fizz = tally_rows(view, show, lambda group: group.fizz)
        for key, bars, rows, heads in (
            (
                "tastes",
                self.tastes,
                tastes,
                (self.tr("Too sweet"), self.tr("Just right"), self.tr("Too sour")),
            ),
            ("fizz", self.fizz, fizz, (self.tr("Too flat"), self.tr("Right"), self.tr("Gushed"))),
        ):
            self._cards[key].setVisible(bool(rows))
            lines = [
                f"{row.name}: "
                + ", ".join(
                    f"{head} {number_text(float(count), 0)}"
                    for head, count in zip(heads, row.counts, strict=True)
                )
                for row in rows
            ]
            title = self.tr("How it tasted") if key == "tastes" else self.tr("How bottles opened")
            bars.set_rows(rows, heads, title, "\n".join(lines))

    def _on_dot(self, batch_id: int) -> None:
        self.subject_wanted.emit(Subject(SubjectKind.BATCH, batch_id))

    def _on_loss(self, loss: Loss) -> None:
        if loss.kind is LossKind.CULTURE:
            self.subject_wanted.emit(Subject(SubjectKind.CULTURE, loss.subject_id))
        elif loss.batch_id is not None:
            self.subject_wanted.emit(Subject(SubjectKind.BATCH, loss.batch_id))


def _column(*widgets: QWidget) -> QWidget:
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(2 * SPACE)
    for widget in widgets:
        column.addWidget(widget)
    return holder
