"""All trials as a place to work: the list, and the sheet of the chosen one."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, StoreTrouble, Trial
from brewdesk.services.trialview import TrialView, is_hidden
from brewdesk.services.wording.problems import impossible_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.trials import why_words
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.trialsheet import TrialSheet

_WORDS_PX = 620
_TOPICS = (
    Topic.TRIALS | Topic.BATCHES | Topic.READINGS | Topic.VESSELS | Topic.SETTINGS | Topic.FORECASTS
)


class TrialsPage(QWidget):
    """List and sheet. ``open_batch`` carries a batch whose jar is wanted."""

    open_batch = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._stale = True
        self._trials: tuple[Trial, ...] = ()
        self.setObjectName("trials_page")
        self._stack = QStackedWidget()
        self._stack.addWidget(self._make_split())
        self._stack.addWidget(self._make_empty())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._stack)
        self.sheet.wanted.connect(self.do)
        self.sheet.open_batch.connect(self.open_batch)
        desk.changes.changed.connect(self._on_changed)

    # --- building --------------------------------------------------------------------

    def _make_split(self) -> QWidget:
        split = QSplitter(Qt.Orientation.Horizontal)
        split.setChildrenCollapsible(False)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Trials"), "title"))
        self.list = QListWidget()
        self.list.setObjectName("trial_list")
        self.list.setAccessibleName(self.tr("Trials, the newest first"))
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setStyleSheet(f"QListView::item {{ padding: {SPACE - 2}px {SPACE}px; }}")
        self.list.currentRowChanged.connect(self._on_chosen)
        column.addWidget(self.list, 1)
        self.power_button = QPushButton(self.tr("How many jars?"))
        self.power_button.setObjectName("trial_how_many")
        self.power_button.clicked.connect(lambda: self.do("power"))
        self.plan_button = QPushButton(self.tr("Plan a trial…"))
        self.plan_button.setObjectName("trial_plan")
        set_role(self.plan_button, "primary")
        self.plan_button.clicked.connect(lambda: self.do("plan"))
        column.addWidget(self.plan_button)
        column.addWidget(self.power_button)
        side = QFrame()
        set_role(side, "side")
        around = QVBoxLayout(side)
        around.setContentsMargins(0, 0, 0, 0)
        self.sheet = TrialSheet(self._desk)
        around.addWidget(self.sheet)
        split.addWidget(left)
        split.addWidget(side)
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 4)
        split.setSizes([260, 900])
        return split

    def _make_empty(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Trials"), "title"))
        column.addStretch(2)
        middle = Qt.AlignmentFlag.AlignHCenter
        column.addWidget(plain_label(self.tr("No trial yet"), "heading"), 0, middle)
        words = plain_label(why_words(), "muted", wraps=True)
        words.setObjectName("trials_why")
        words.setAlignment(middle)
        words.setMaximumWidth(_WORDS_PX)
        around = QHBoxLayout()
        around.addStretch(1)
        around.addWidget(words, 20)
        around.addStretch(1)
        column.addLayout(around)
        self.first_plan = QPushButton(self.tr("Plan a trial…"))
        self.first_plan.setObjectName("trial_first_plan")
        set_role(self.first_plan, "primary")
        self.first_plan.clicked.connect(lambda: self.do("plan"))
        self.first_power = QPushButton(self.tr("How many jars?"))
        self.first_power.setObjectName("trial_first_how_many")
        self.first_power.clicked.connect(lambda: self.do("power"))
        row = QHBoxLayout()
        row.setSpacing(SPACE)
        row.addStretch(1)
        row.addWidget(self.first_plan)
        row.addWidget(self.first_power)
        row.addStretch(1)
        column.addSpacing(SPACE)
        column.addLayout(row)
        column.addStretch(3)
        return page

    # --- showing ---------------------------------------------------------------------

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        self.refresh()

    def chosen(self) -> Trial | None:
        """Return the chosen trial."""
        row = self.list.currentRow()
        return self._trials[row] if 0 <= row < len(self._trials) else None

    def show_trial(self, trial_id: int) -> None:
        """Choose a trial."""
        if self._stale:
            self.refresh()
        for n, trial in enumerate(self._trials):
            if trial.id == trial_id:
                self.list.setCurrentRow(n)

    def refresh(self) -> None:
        """Read the trials anew; the choice stays."""
        self._stale = False
        chosen = self.chosen()
        self._trials = self._desk.trials.all()
        self._stack.setCurrentIndex(0 if self._trials else 1)
        self.list.blockSignals(True)
        self.list.clear()
        for trial in self._trials:
            item = QListWidgetItem(f"{trial.name}\n{self._line(trial)}")
            item.setData(Qt.ItemDataRole.UserRole, trial.id)
            self.list.addItem(item)
        ids = [trial.id for trial in self._trials]
        if ids:
            self.list.setCurrentRow(ids.index(chosen.id) if chosen and chosen.id in ids else 0)
        self.list.blockSignals(False)
        self._on_chosen()

    def _line(self, trial: Trial) -> str:
        parts = [name_of(trial.factor), name_of(trial.state)]
        if is_hidden(trial):
            parts.append(self.tr("codes closed"))
        return " · ".join(parts)

    def _on_chosen(self, _row: int = 0) -> None:
        trial = self.chosen()
        if trial is not None:
            self.sheet.show_view(self._desk.trials.view(trial.id))

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        if self.isVisible():
            self.refresh()
        else:
            self._stale = True

    # --- doing -----------------------------------------------------------------------

    def do(self, key: str) -> None:
        """Begin an act; those without a form are done at once and can be undone."""
        view = self.sheet.view()
        if key == "reveal" and view is not None:
            self._attempt(lambda: self._desk.trials.reveal(view.trial.id))
        elif key == "take_back":
            jar = self.sheet.chosen_jar()
            if jar is not None:
                self._attempt(lambda: self._desk.trials.take_back(jar.jar.id))
        else:
            dialog = self._dialog(key, view)
            if dialog is not None:
                dialog.finished.connect(dialog.deleteLater)
                dialog.open()

    def _dialog(self, key: str, view: TrialView | None) -> QDialog | None:
        if key == "plan":
            return self._plan_dialog()
        if key == "power":
            from brewdesk.widgets.trialpowerdialog import PowerDialog

            return PowerDialog(self._desk, self)
        if view is None:
            return None
        if key == "taste":
            from brewdesk.widgets.tastingform import TastingDialog

            return TastingDialog(self._desk, view, self)
        if key == "report":
            from brewdesk.widgets.trialpaper import TrialReportDialog

            return TrialReportDialog(self._desk, view, self)
        return self._small_form(key, view)

    def _small_form(self, key: str, view: TrialView) -> QDialog | None:
        from brewdesk.widgets import trialforms

        jar = self.sheet.chosen_jar()
        if key == "leave_out":
            return None if jar is None else trialforms.LeaveOutDialog(self._desk, jar, self)
        if key == "drop":
            return trialforms.EndDialog(self._desk, view, self, gives_up=True)
        form = {
            "start": trialforms.StartDialog,
            "attach": trialforms.AttachDialog,
            "end": trialforms.EndDialog,
            "edit": trialforms.EditTrialDialog,
        }[key]
        return form(self._desk, view, self)

    def _plan_dialog(self) -> QDialog:
        from brewdesk.widgets.trialform import TrialDialog

        dialog = TrialDialog(self._desk, self)
        dialog.done_with.connect(lambda trial: self.show_trial(trial.id))
        return dialog

    def _attempt(self, act: Callable[[], object]) -> None:
        try:
            act()
        except ImpossibleInput as problem:
            self.sheet.said.say(impossible_words(problem), "error")
        except StoreTrouble as trouble:
            self.sheet.tell(trouble)
