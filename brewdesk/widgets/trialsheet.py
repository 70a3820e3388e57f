"""The sheet of one trial: what its jars show, the curves, the intervals, the jars."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QMenu,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.trialjars import CROSSING, TrialJarsModel
from brewdesk.services.desk import Desk
from brewdesk.services.records import BatchStage, StoreTrouble, TrialState
from brewdesk.services.trialview import TrialJarView, TrialView
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.problems import trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.trials import (
    difference_words,
    differences_lead,
    discarded_words,
    headline,
    many_words,
    scope_words,
)
from brewdesk.widgets.effectrows import EffectRows
from brewdesk.widgets.fields import MessageLine, card, plain_label
from brewdesk.widgets.flowlayout import FlowLayout
from brewdesk.widgets.plaintable import PlainTable
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.trialchart import TrialChart
from brewdesk.widgets.verdictcard import VerdictCard

_OPEN = (TrialState.PLANNED, TrialState.RUNNING)


class TrialSheet(QScrollArea):
    """Shows a `TrialView`. ``wanted`` carries the key of an act; ``open_batch`` a batch's id."""

    wanted = Signal(str)
    open_batch = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._view: TrialView | None = None
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setAccessibleName(self.tr("Sheet of the trial"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._body = QWidget()
        self._column = QVBoxLayout(self._body)
        self._column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 3 * SPACE)
        self._column.setSpacing(SPACE)
        self.setWidget(self._body)
        self._build_head()
        self._build_result()
        self._build_jars()
        self._column.addStretch(1)

    # --- building --------------------------------------------------------------------

    def _build_head(self) -> None:
        self.title = plain_label("", "title", wraps=True)
        self.title.setObjectName("trial_title")
        self.state = plain_label("", "muted", wraps=True)
        self.state.setObjectName("trial_state")
        self.question = plain_label("", wraps=True)
        self.question.setObjectName("trial_question")
        buttons = QWidget()
        flow = FlowLayout(buttons)
        self.buttons: dict[str, QPushButton] = {}
        for key, text in (
            ("start", self.tr("Start…")),
            ("taste", self.tr("Taste…")),
            ("reveal", self.tr("Open the codes")),
            ("end", self.tr("End…")),
            ("report", self.tr("Report…")),
        ):
            button = QPushButton(text)
            button.setObjectName(f"trial_{key}")
            button.clicked.connect(lambda _checked=False, key=key: self.wanted.emit(key))
            flow.addWidget(button)
            self.buttons[key] = button
        self.more = QPushButton(self.tr("More"))
        self.more.setObjectName("trial_more")
        self.menu = QMenu(self.more)
        self.menu.aboutToShow.connect(self._fill_menu)
        self.more.setMenu(self.menu)
        flow.addWidget(self.more)
        self.said = MessageLine(self._body, lines=0)
        self._alerts = QVBoxLayout()
        self._alerts.setSpacing(SPACE)
        for widget in (self.title, self.state, self.question, buttons, self.said):
            self._column.addWidget(widget)
        self._column.addLayout(self._alerts)

    def _build_result(self) -> None:
        frame, inside = card(self._body, "inform")
        self.headline = plain_label("", wraps=True)
        self.headline.setObjectName("trial_headline")
        self.scope = plain_label("", "muted", wraps=True)
        self.conclusion = plain_label("", wraps=True)
        self.conclusion.setObjectName("trial_conclusion")
        for label in (self.headline, self.conclusion, self.scope):
            inside.addWidget(label)
        self._column.addWidget(frame)
        self.chart = TrialChart(self._body)
        self._column.addWidget(self.chart)
        self.effects_title = plain_label(self.tr("How far apart"), "heading")
        self._column.addWidget(self.effects_title)
        self.effects = EffectRows(self._body)
        self._column.addWidget(self.effects)
        self.many = plain_label("", "muted", wraps=True)
        self._column.addWidget(self.many)

    def _build_jars(self) -> None:
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        line.addWidget(plain_label(self.tr("Jars"), "heading"), 1)
        self.leave_out = QPushButton(self.tr("Leave out…"))
        self.leave_out.setObjectName("trial_leave_out")
        self.take_back = QPushButton(self.tr("Count it again"))
        self.take_back.setObjectName("trial_take_back")
        self.to_jar = QPushButton(self.tr("Go to the jar"))
        self.to_jar.setObjectName("trial_to_jar")
        for button, key in ((self.leave_out, "leave_out"), (self.take_back, "take_back")):
            button.clicked.connect(lambda _checked=False, key=key: self.wanted.emit(key))
        self.to_jar.clicked.connect(self._on_to_jar)
        for button in (self.to_jar, self.leave_out, self.take_back):
            set_role(button, "quiet")
            line.addWidget(button)
        self._column.addLayout(line)
        self.model = TrialJarsModel(self._desk.quantities, self)
        self.table = PlainTable(self.model, stretched=CROSSING, wraps=True)
        self.table.setObjectName("trial_jars")
        self.table.setAccessibleName(self.tr("Jars of the trial"))
        self.table.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.table.open_wanted.connect(self._on_to_jar)
        self.table.selectionModel().selectionChanged.connect(self._show_choice)
        self._column.addWidget(self.table)
        self.differs = plain_label("", wraps=True)
        self.differs.setObjectName("trial_differences")
        self._column.addWidget(plain_label(self.tr("What else differs"), "heading"))
        self._column.addWidget(self.differs)

    # --- showing ---------------------------------------------------------------------

    def view(self) -> TrialView | None:
        """Return the trial shown."""
        return self._view

    def show_view(self, view: TrialView) -> None:
        """Show a trial; another one begins at the top."""
        is_other = self._view is None or self._view.trial.id != view.trial.id
        self._view = view
        show, zone = self._desk.quantities.show, self._desk.clock.zone()
        trial = view.trial
        self.title.setText(trial.name)
        self.state.setText(self._state_words(view))
        self.question.setText(trial.question)
        self.question.setVisible(bool(trial.question))
        self.headline.setText(headline(view, show))
        self.conclusion.setText(
            self.tr("Your conclusion: {words}").format(words=trial.conclusion)
            if trial.conclusion
            else ""
        )
        self.conclusion.setVisible(bool(trial.conclusion))
        self.scope.setText(scope_words() if view.comparisons else "")
        self.scope.setVisible(bool(view.comparisons))
        self.chart.set_view(view)
        self.effects.set_view(view, show)
        self.effects_title.setVisible(bool(view.comparisons))
        self.many.setText(many_words(view))
        self.many.setVisible(bool(self.many.text()))
        self.model.set_rows(view.jars)
        self.model.refresh()
        self._fit_table()
        lines = [differences_lead(view)]
        lines += [difference_words(one, show, zone) for one in view.differences]
        self.differs.setText("\n".join(lines))
        self._show_alerts(view)
        self._show_acts(view)
        self._show_choice()
        if is_other:
            self.said.say("")
            self.verticalScrollBar().setValue(0)

    def chosen_jar(self) -> TrialJarView | None:
        """Return the jar of the selected row."""
        rows = self.table.selectionModel().selectedRows()
        return self.model.row_at(rows[0]) if rows else None

    def _state_words(self, view: TrialView) -> str:
        trial, zone = view.trial, self._desk.clock.zone()
        parts = [
            name_of(trial.factor),
            self.tr("{count} jars").format(count=len(view.jars)),
            name_of(trial.state),
        ]
        if trial.ended_at is not None:
            parts[-1] = self.tr("{state} {date}").format(
                state=name_of(trial.state), date=date_words(trial.ended_at, zone)
            )
        elif trial.started_at is not None:
            parts.append(self.tr("since {date}").format(date=date_words(trial.started_at, zone)))
        if view.is_hidden:
            parts.append(self.tr("codes closed"))
        return " · ".join(parts)

    def _show_alerts(self, view: TrialView) -> None:
        """Show every warning of every jar: a code never hides one."""
        while (item := self._alerts.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        for jar in view.counted:
            if jar.batch is not None and jar.batch.stage is BatchStage.DISCARDED:
                words = plain_label(discarded_words(jar), "warn", wraps=True)
                self._alerts.addWidget(words)
        for jar in view.jars:
            if jar.batch is None or not jar.batch.stage.is_live:
                continue
            on_shelf = self._desk.shelf.jar(jar.batch.vessel_id)
            for alert in on_shelf.alerts if on_shelf is not None else ():
                self._alerts.addWidget(plain_label(jar.jar.code, "warn"))
                self._alerts.addWidget(VerdictCard(alert, self._body))

    def _show_acts(self, view: TrialView) -> None:
        is_open = view.trial.state in _OPEN
        waits = any(
            jar.batch is None and jar.jar.vessel_id is not None and jar.is_counted
            for jar in view.jars
        )
        has_batch = any(jar.batch is not None for jar in view.jars)
        shown = {
            "start": is_open and waits,
            "taste": is_open and has_batch,
            "reveal": view.is_hidden,
            "end": is_open and has_batch,
            "report": has_batch,
        }
        for key, button in self.buttons.items():
            button.setVisible(shown[key])
            set_role(button, "")
        first = next((key for key in ("start", "taste", "report") if shown[key]), None)
        if first is not None:
            set_role(self.buttons[first], "primary")

    def _show_choice(self) -> None:
        jar, view = self.chosen_jar(), self._view
        is_open = view is not None and view.trial.state in _OPEN
        self.to_jar.setEnabled(
            jar is not None and jar.batch is not None and jar.batch.stage.is_live
        )
        self.leave_out.setEnabled(is_open and jar is not None and jar.is_counted)
        self.take_back.setEnabled(is_open and jar is not None and not jar.is_counted)
        self.take_back.setVisible(jar is not None and not jar.is_counted)
        self.leave_out.setVisible(not self.take_back.isVisibleTo(self._body))

    def _fit_table(self) -> None:
        """Show all rows: the sheet scrolls, not the table in it."""
        self.table.resizeRowsToContents()
        rows = sum(self.table.rowHeight(n) for n in range(self.model.rowCount()))
        head = self.table.horizontalHeader().sizeHint().height()
        self.table.setFixedHeight(rows + head + 2 * self.table.frameWidth() + 2)

    def _fill_menu(self) -> None:
        self.menu.clear()
        view = self._view
        if view is None:
            return
        entries = [("edit", self.tr("Change name and question…"))]
        if view.trial.state in _OPEN:
            entries.append(("attach", self.tr("Take a batch in…")))
            entries.append(("drop", self.tr("Give the trial up…")))
        for key, text in entries:
            action = self.menu.addAction(text)
            action.setObjectName(f"trial_{key}")
            action.triggered.connect(lambda _checked=False, key=key: self.wanted.emit(key))

    def tell(self, trouble: StoreTrouble) -> None:
        """Say why something could not be done."""
        self.said.say(trouble_words(trouble), "error")

    def _on_to_jar(self) -> None:
        jar = self.chosen_jar()
        if jar is not None and jar.batch is not None and jar.batch.stage.is_live:
            self.open_batch.emit(jar.batch.id)
