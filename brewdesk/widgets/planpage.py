"""Plan a batch: the wish on the left, what it amounts to on the right, kept live."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.formmark import FormMark
from brewdesk.services.records import Batch, ImpossibleInput, Plan, StoreTrouble, VesselShape, Wish
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.amountspanel import AmountsPanel
from brewdesk.widgets.fields import announce, card, plain_label
from brewdesk.widgets.jarpainter import JarLook
from brewdesk.widgets.jarpreview import JarPreview
from brewdesk.widgets.planform import PlanForm
from brewdesk.widgets.planstores import Needs
from brewdesk.widgets.printrunsheet import RunSheetDialog
from brewdesk.widgets.runsheetwords import run_sheet
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.twocolumns import TwoColumns
from brewdesk.widgets.vesselform import VesselDialog

REPLAN_DELAY_MS = 80
_TOPICS = Topic.VESSELS | Topic.CULTURES | Topic.BATCHES | Topic.SETTINGS | Topic.STORES


class PlanPage(QWidget):
    """One page from wish to plan.

    ``planned`` carries the id of a batch that was planned or changed, ``start_wanted``
    that of one to be brewed now, ``vessel_added`` that of a vessel made on the way.
    """

    planned = Signal(int)
    start_wanted = Signal(int)
    vessel_added = Signal(int)

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, replan_delay_ms: int = REPLAN_DELAY_MS
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._mark = FormMark(desk.door)
        self._plan: Plan | None = None
        self._wish: Wish | None = None
        self._reckoned: tuple[Wish, Plan] | None = None
        self._is_stale = False
        self._dialog: VesselDialog | None = None
        self._paper: RunSheetDialog | None = None
        self._replan = QTimer(self)
        self._replan.setObjectName("replan")
        self._replan.setSingleShot(True)
        self._replan.setInterval(replan_delay_ms)
        self.form = PlanForm(desk, self)
        self.amounts = AmountsPanel(desk.quantities, self)
        self._lay_out()
        self._connect()
        self.begin()

    # making

    def _lay_out(self) -> None:
        self.title = plain_label(self.tr("Plan a batch"), "title", self)
        self.add_button = QPushButton(self.tr("Add a vessel…"), self)
        self.add_button.setObjectName("plan_add_vessel")
        self.trouble = plain_label(role="error", parent=self, wraps=True)
        self.trouble.hide()
        left = QWidget(self)
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2 * SPACE)
        self.welcome = self._make_welcome()
        column.addWidget(self.welcome)
        column.addWidget(self.form)
        self.columns = TwoColumns(left, self.amounts, self)
        head = QVBoxLayout()
        head.setContentsMargins(3 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        head.setSpacing(SPACE)
        line = QHBoxLayout()
        line.addWidget(self.title, 1)
        line.addWidget(self.add_button)
        head.addLayout(line)
        head.addWidget(self.columns, 1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addLayout(head, 1)
        outer.addWidget(self._make_strip())

    def _make_welcome(self) -> QFrame:
        frame, outer = card(self, "inform")
        picture = JarPreview(self)
        picture.setMinimumSize(0, 0)
        picture.setFixedSize(16 * SPACE, 18 * SPACE)
        outline = self._desk.vessels.profile(VesselShape.CYLINDER, 15.0, 4.0)
        picture.show_look(
            JarLook(profile=outline, planned_height_cm=0.9 * outline[-1][0]),
            self.tr("An empty jar"),
        )
        row = QHBoxLayout()
        row.setSpacing(3 * SPACE)
        column = QVBoxLayout()
        row.addWidget(picture)
        row.addLayout(column, 1)
        outer.addLayout(row)
        column.addWidget(plain_label(self.tr("First, a vessel"), "heading", self))
        column.addWidget(
            plain_label(
                self.tr(
                    "A batch needs something to stand in. A name and a volume are enough; "
                    "everything else is filled in for you and can be changed."
                ),
                parent=self,
                wraps=True,
            )
        )
        self.first_vessel = QPushButton(self.tr("Add a vessel…"), self)
        self.first_vessel.setObjectName("plan_first_vessel")
        set_role(self.first_vessel, "primary")
        line = QHBoxLayout()
        line.addWidget(self.first_vessel)
        line.addStretch(1)
        column.addLayout(line)
        column.addStretch(1)
        return frame

    def _make_strip(self) -> QFrame:
        strip = QFrame(self)
        set_role(strip, "strip")
        self.plan_button = QPushButton(self.tr("Plan it"), self)
        self.plan_button.setObjectName("plan_it")
        set_role(self.plan_button, "primary")
        self.start_button = QPushButton(self.tr("Plan and start brewing"), self)
        self.start_button.setObjectName("plan_and_start")
        self.print_button = QPushButton(self.tr("Print run sheet…"), self)
        self.print_button.setObjectName("plan_print")
        set_role(self.print_button, "quiet")
        for button in (self.plan_button, self.start_button):
            button.setAutoDefault(True)  # so that Enter presses the one in focus
        self.new_button = QPushButton(self.tr("Leave the plan as it was"), self)
        self.new_button.setObjectName("plan_leave")
        set_role(self.new_button, "quiet")
        line = QHBoxLayout(strip)
        line.setContentsMargins(3 * SPACE, SPACE + 4, 3 * SPACE, SPACE + 4)
        line.setSpacing(2 * SPACE)
        line.addWidget(self.plan_button)
        line.addWidget(self.start_button)
        line.addWidget(self.new_button)
        line.addWidget(self.trouble, 1)
        line.addStretch(1)
        line.addWidget(self.print_button)
        return strip

    def _connect(self) -> None:
        self.form.changed.connect(self._on_form)
        self.add_button.clicked.connect(self.add_vessel)
        self.first_vessel.clicked.connect(self.add_vessel)
        self._replan.timeout.connect(self._show_amounts)
        self.plan_button.clicked.connect(self._on_plan)
        self.start_button.clicked.connect(self._on_start)
        self.print_button.clicked.connect(self._on_print)
        self.new_button.clicked.connect(self._on_leave)
        self._desk.changes.changed.connect(self._on_changed)

    # what others ask of it

    def begin(self, vessel_id: int | None = None) -> None:
        """Begin a new plan, for ``vessel_id`` if given; what stood here is dropped."""
        self.form.begin(vessel_id)
        self._after_begin()

    def set_vessel(self, vessel_id: int) -> None:
        """Plan for this vessel; what was typed elsewhere on the page stays."""
        if self.form.editing() is not None:
            self.form.begin(vessel_id)
        else:
            self.form.choose_vessel(vessel_id)
        self._after_begin()

    def edit_plan(self, batch_id: int) -> None:
        """Take up a plan that was made before, to change it."""
        self._mark = FormMark(self._desk.door)
        self.form.begin_edit(self._desk.batches.get(batch_id))
        self._after_begin()

    def _after_begin(self) -> None:
        editing = self.form.editing()
        self._say("")
        if editing is None:
            self.title.setText(self.tr("Plan a batch"))
            self.plan_button.setText(self.tr("Plan it"))
            self.start_button.setText(self.tr("Plan and start brewing"))
        else:
            self.title.setText(self.tr("Change the plan of {name}").format(name=editing.name))
            self.plan_button.setText(self.tr("Save the plan"))
            self.start_button.setText(self.tr("Save and start brewing"))
        self.new_button.setVisible(editing is not None)
        self._show_amounts()
        self._take_keyboard()

    def _take_keyboard(self) -> None:
        """Begin at the vessel; while none is free, at the way to get one."""
        has_vessel = self.form.vessel_id() is not None
        start = self.form.vessel if has_vessel else self.add_button
        start.setFocus(Qt.FocusReason.OtherFocusReason)

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while the page was hidden."""
        super().showEvent(event)
        if self._is_stale:
            self._is_stale = False
            self._catch_up()

    # live amounts

    def _on_form(self) -> None:
        self._replan.start()

    def _show_amounts(self) -> None:
        """Reckon the wish and show it, or say beside its field why it cannot be."""
        self._replan.stop()
        self._plan = self._wish = None
        has_vessel = self.form.vessel_id() is not None
        self._show_welcome(has_vessel=has_vessel)
        if not has_vessel:
            self.amounts.show_nothing(
                self.tr(
                    "As soon as there is a vessel, what to weigh out stands here: water, tea, "
                    "sugar and starter, to the gram."
                )
            )
            return
        self.form.clear_problems()
        wish = self.form.wish()
        if wish is None:
            self.amounts.show_stale(self.tr("Waiting for the marked field."))
            return
        try:
            plan = self._reckon(wish)
        except ImpossibleInput as problem:
            self._say_beside(problem)
            self.amounts.show_stale(self.tr("Not up to date: see the marked field."))
            return
        self._say("")
        self._plan, self._wish = plan, wish
        needs = Needs(tea_g=plan.tea_g, tea_bags=plan.tea_bags, sugar_g=plan.sugar_g)
        self.form.stores.show_needs(needs)
        self.amounts.show_plan(plan, wish)

    def _reckon(self, wish: Wish) -> Plan:
        """Reckon a wish, unless it is the one that was reckoned last."""
        if self._reckoned is None or self._reckoned[0] != wish:
            self._reckoned = (wish, self._desk.batches.plan_preview(wish))
        return self._reckoned[1]

    def _show_welcome(self, *, has_vessel: bool) -> None:
        is_first = not has_vessel and not self._desk.vessels.all()
        self.welcome.setVisible(is_first)
        self.add_button.setVisible(not is_first)
        self.form.setVisible(not is_first)
        for button in (self.plan_button, self.start_button, self.print_button):
            button.setEnabled(has_vessel)
        if not has_vessel and not is_first:
            self.form.rows["vessel_id"].set_hint(
                self.tr("Every vessel is in use. Add one, or end a batch first.")
            )

    def _say_beside(self, problem: ImpossibleInput, *, go_there: bool = False) -> None:
        words = impossible_words(problem, self._desk.quantities.show)
        if not self.form.set_problem(problem.field, words, go_there=go_there):
            self._say(words)

    def _say(self, words: str) -> None:
        self.trouble.setText(words)
        self.trouble.setVisible(bool(words))
        announce(self, words)

    # keeping

    def _on_plan(self) -> None:
        batch = self._keep()
        if batch is not None:
            self.planned.emit(batch.id)

    def _on_start(self) -> None:
        batch = self._keep()
        if batch is not None:
            self.start_wanted.emit(batch.id)

    def _keep(self) -> Batch | None:
        """Keep the plan; None, with the reason said, if it cannot be."""
        self._show_amounts()
        vessel_id, wish = self.form.vessel_id(), self.form.wish()
        if not self.form.point_out() or vessel_id is None or wish is None:
            return None
        editing = self.form.editing()
        batches = self._desk.batches
        culture_id, name = self.form.culture_id(), self.form.batch_name()
        supplies = self.form.stores.supplies()
        try:
            if editing is None:
                batch = batches.plan(vessel_id, culture_id, name, wish, supplies=supplies)
            else:
                with self._mark.keeping():
                    batch = batches.edit_plan(
                        editing.id,
                        vessel_id=vessel_id,
                        culture_id=culture_id,
                        name=name,
                        wish=wish,
                        supplies=supplies,
                    )
        except ImpossibleInput as problem:
            self._say_beside(problem, go_there=True)
            return None
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
            return None
        self.begin()
        return batch

    def _on_leave(self) -> None:
        self.begin()

    def add_vessel(self) -> None:
        """Open the form for a new vessel; it is chosen here once it is kept."""
        self._dialog = VesselDialog(self._desk, None, self)
        self._dialog.saved.connect(self._on_vessel_saved)
        self._dialog.finished.connect(self._dialog.deleteLater)
        self._dialog.open()

    def _on_vessel_saved(self, vessel_id: int) -> None:
        self.form.choose_vessel(vessel_id)
        self._show_amounts()
        self.plan_button.setFocus()
        self.vessel_added.emit(vessel_id)

    # printing

    def _on_print(self) -> None:
        self._show_amounts()
        vessel_id = self.form.vessel_id()
        if not self.form.point_out() or self._plan is None or self._wish is None:
            return
        if vessel_id is None:
            return
        culture_id = self.form.culture_id()
        sheet = run_sheet(
            self._desk.quantities,
            name=self.form.batch_name(),
            vessel=self._desk.vessels.get(vessel_id),
            culture=None if culture_id is None else self._desk.cultures.get(culture_id),
            wish=self._wish,
            plan=self._plan,
            now=self._desk.clock.now(),
            zone=self._desk.clock.zone(),
        )
        self._paper = RunSheetDialog(sheet, self)
        self._paper.finished.connect(self._paper.deleteLater)
        self._paper.open()

    # staying up to date

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        if self.isVisible():
            self._catch_up()
        else:
            self._is_stale = True

    def _catch_up(self) -> None:
        self.form.refresh_units()
        self._show_amounts()
