"""The window's frame: rail, pages, bottom bar. What a page wants done is arranged here."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QGuiApplication, QHideEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QMainWindow,
    QWidget,
)

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.jobs import Pool
from brewdesk.services.records import ImpossibleInput, StoreTrouble
from brewdesk.services.reminders import DueItem
from brewdesk.services.shelf import JarView
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.windowmemory import WindowMemory
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.alarms import time_up_words
from brewdesk.services.wording.backups import backup_failed_words
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.reminders import clock_moved_words
from brewdesk.services.wording.starting import read_only_words
from brewdesk.widgets import windowreturn
from brewdesk.widgets.actions import build_actions, offer
from brewdesk.widgets.enterpress import EnterPress
from brewdesk.widgets.fields import announce
from brewdesk.widgets.icons import program_icon
from brewdesk.widgets.jarsheet import label_record
from brewdesk.widgets.liquidentries import liquid_entries
from brewdesk.widgets.shelfpage import ShelfPage
from brewdesk.widgets.theme import Theme
from brewdesk.widgets.windowdialogs import WindowDialogs
from brewdesk.widgets.windowframe import WindowFrame
from brewdesk.widgets.windowpages import make_page

if TYPE_CHECKING:
    from brewdesk.widgets.bottlepage import BottlePage
    from brewdesk.widgets.culturespage import CulturesPage
    from brewdesk.widgets.historypage import HistoryPage
    from brewdesk.widgets.labelspage import LabelsPage
    from brewdesk.widgets.planpage import PlanPage
    from brewdesk.widgets.storespage import StoresPage

MINUTE_MS = 60_000
_WORTH_SAYING_S = 3_600.0  # by which the clock was put back


class MainWindow(QMainWindow):
    """One window, made to stay open. ``quit_wanted`` means: really leave."""

    quit_wanted = Signal()
    demo_wanted = Signal()
    store_wanted = Signal(object)  # the path of another pantry, to open in a window of its own
    restore_wanted = Signal(object)  # the backup to go back to; the window has to close for it
    test_notice_wanted = Signal()

    def __init__(self, desk: Desk, theme: Theme, *, is_demo: bool = False) -> None:
        super().__init__()
        self._desk = desk
        self._theme = theme
        self._is_demo = is_demo
        self._alarm_batch_id: int | None = None  # whose run sheet the notice bar opens
        self._doubts_clock = False  # and the notice bar asks about it
        self._has_lost_file = False  # and the notice bar offers to save what is open
        # Both are set by the tray's owner: whether closing only puts the window away, and how.
        self.may_hide: Callable[[], bool] = lambda: False
        self.hide_away: Callable[[], None] = self.hide
        self.dialogs = WindowDialogs(desk, self)
        self.setObjectName("main_window")
        self.setWindowIcon(program_icon())
        title = self.tr("Invented pantry – brewdesk") if is_demo else "brewdesk"
        self.setWindowTitle(title)
        self.shelf = ShelfPage(desk)
        self.pages: dict[str, QWidget] = {"shelf": self.shelf}
        frame = WindowFrame(desk, self.shelf, is_demo=is_demo)
        self.rail, self.notice, self.stack = frame.rail, frame.notice, frame.stack
        self.act_bar, self.due_strip = frame.act_bar, frame.due_strip
        self.setCentralWidget(frame)
        self.actions_by_key = build_actions(self, self.menuBar(), self._calls())
        self._connect()
        self.show_page("shelf")
        app = QApplication.instance()
        if isinstance(app, QApplication):
            EnterPress(app, self)
        self.shelf.view.setFocus()
        self._memory = WindowMemory(desk.store)
        windowreturn.restore(self, self._memory)
        self._minute = QTimer(self)
        self._minute.setObjectName("minute")
        self._minute.setTimerType(Qt.TimerType.VeryCoarseTimer)
        self._minute.setInterval(MINUTE_MS)
        self._minute.timeout.connect(self._on_minute)
        desk.fizz_forecasts.ready.connect(self._refresh_bottle_count)
        self._was_hidden = False

    def _connect(self) -> None:
        desk = self._desk
        self.rail.page_wanted.connect(self.show_page)
        self.dialogs.vessel_wanted.connect(self.open_vessel)
        self.shelf.add_vessel_wanted.connect(self.dialogs.add_vessel)
        self.shelf.plan_wanted.connect(lambda: self.plan(None))
        self.shelf.demo_wanted.connect(self.demo_wanted)
        self.shelf.places_wanted.connect(self.dialogs.show_places)
        sheet = self.shelf.sheet
        sheet.shown.connect(self._on_jar_shown)
        offer(self.actions_by_key, None)
        sheet.plan_wanted.connect(self.plan)
        sheet.edit_plan_wanted.connect(self.edit_plan)
        sheet.brew_wanted.connect(self.start_brewing)
        sheet.edit_vessel_wanted.connect(self.dialogs.edit_vessel)
        sheet.retire_wanted.connect(self.retire_vessel)
        sheet.drop_plan_wanted.connect(
            lambda batch_id: self._attempt(lambda: desk.batches.drop_plan(batch_id))
        )
        sheet.end_wanted.connect(self.dialogs.end_batch)
        sheet.bottle_wanted.connect(self.bottle)
        sheet.already_in_wanted.connect(self.dialogs.enter_already_in)
        sheet.print_wanted.connect(self.dialogs.print_run_sheet)
        sheet.label_wanted.connect(self.make_label)
        sheet.look_wanted.connect(self.dialogs.look_for_mold)
        sheet.mold_seen.connect(self.dialogs.discard_moldy)
        sheet.history_wanted.connect(self.show_history)
        sheet.clear_wanted.connect(self.dialogs.clear_batch)
        sheet.culture_wanted.connect(self.open_culture)
        self.act_bar.undo_wanted.connect(desk.history.undo)
        self.notice.open_wanted.connect(self._on_notice_opened)
        self.due_strip.open_due.connect(lambda: self.show_page("due"))
        desk.history.trouble.connect(self.tell_trouble)
        desk.changes.changed.connect(self._on_changed)
        desk.reminder_clock.open_asked.connect(self._on_open_asked)
        desk.reminder_clock.came_due.connect(self._on_came_due)
        desk.reminder_clock.trouble.connect(self.tell_trouble)
        desk.reminder_clock.clock_doubt.connect(self._on_clock_doubt)
        desk.reminder_clock.clock_trusted.connect(self._on_clock_trusted)
        desk.reminder_clock.clock_moved.connect(self._on_clock_moved)
        desk.alarm_notices.told.connect(self._on_step_told)
        desk.alarm_notices.open_asked.connect(self._open_run_sheet)
        desk.calendar.told.connect(self.notice.say)
        self._theme.changed.connect(self._on_theme)
        self._refresh_history()
        self._refresh_due_count()

    def _calls(self) -> dict[str, Callable[[], object]]:
        return {
            "add_vessel": self.dialogs.add_vessel,
            "add_culture": self.dialogs.add_culture,
            "plan": lambda: self.plan(None),
            "places": self.dialogs.show_places,
            "past": self.dialogs.show_past,
            "retired": self.dialogs.show_retired,
            "backups": lambda: self.dialogs.show_backups(
                self.restore_wanted.emit, self.store_wanted.emit
            ),
            "backup": self.back_up,
            "copy": lambda: self.dialogs.copy_everything(self.store_wanted.emit),
            "calendar": self.dialogs.export_calendar,
            "export": self.dialogs.export_everything,
            "import": lambda: self.dialogs.bring_in(self.store_wanted.emit),
            "process_log": self.dialogs.show_process_log,
            "demo": self.demo_wanted.emit,
            "quit": self.ask_to_leave,
            "undo": self._desk.history.undo,
            "redo": self._desk.history.redo,
            "reading": self.add_reading,
            "brew": lambda: self._with_batch(lambda jar, batch_id: self.start_brewing(batch_id)),
            "already_in": lambda: self._with_batch(
                lambda jar, batch_id: self.dialogs.enter_already_in(batch_id)
            ),
            "print_sheet": lambda: self._with_batch(
                lambda jar, batch_id: self.dialogs.print_run_sheet(batch_id)
            ),
            "bottle": lambda: self._with_batch(lambda jar, batch_id: self.bottle(batch_id)),
            "label": lambda: self._with_jar(lambda jar: self.make_label(*label_record(jar))),
            "batch_report": lambda: self._with_batch(
                lambda jar, batch_id: self.dialogs.show_batch_report(batch_id)
            ),
            "read_readings": lambda: self._with_batch(
                lambda jar, batch_id: self.dialogs.read_readings(batch_id)
            ),
            "draw_off": lambda: self._with_batch(
                lambda jar, batch_id: self.dialogs.end_batch(jar, False)
            ),
            "discard": lambda: self._with_batch(
                lambda jar, batch_id: self.dialogs.end_batch(jar, True)
            ),
            "edit_vessel": lambda: self._with_jar(
                lambda jar: self.dialogs.edit_vessel(jar.vessel.id)
            ),
            "history": lambda: self._with_jar(
                lambda jar: self.show_history(Subject(SubjectKind.VESSEL, jar.vessel.id))
            ),
            "find": self.find_anything,
            "retire": lambda: self._with_jar(lambda jar: self.retire_vessel(jar.vessel.id)),
            "carry": self.carry,
            **{entry.key: partial(self.start_liquid, entry.key) for entry in liquid_entries()},
            "show_shelf": lambda: self.show_page("shelf"),
            "show_plan": lambda: self.show_page("plan"),
            "show_bottles": lambda: self.show_page("bottles"),
            "show_due": lambda: self.show_page("due"),
            "show_cultures": lambda: self.show_page("cultures"),
            "show_stores": lambda: self.show_page("stores"),
            "show_trials": lambda: self.show_page("trials"),
            "show_history": lambda: self.show_page("history"),
            "look_back": self.look_back,
            "show_labels": lambda: self.show_page("labels"),
            "show_reckoner": lambda: self.show_page("reckoner"),
            "show_settings": lambda: self.show_page("settings"),
            "find_act": self.find_act,
            "safety": self.dialogs.show_safety,
            "about": self.dialogs.show_about,
        }

    def find_act(self) -> None:
        """List every act by its name; the one chosen is done once the list is closed."""
        from brewdesk.widgets.actsdialog import ActsDialog

        dialog = ActsDialog(self.actions_by_key, self)
        dialog.accepted.connect(lambda: dialog.chosen.trigger() if dialog.chosen else None)
        self.dialogs.open(dialog)

    # --- pages -----------------------------------------------------------------------

    def page(self, key: str) -> QWidget:
        """The page ``key``, made when first asked for."""
        if key not in self.pages:
            made = make_page(key, self._desk, self)
            self.pages[key] = made
            self.stack.addWidget(made)
        return self.pages[key]

    def show_page(self, key: str) -> None:
        """Bring a page to the front."""
        self.stack.setCurrentWidget(self.page(key))
        self.rail.show_page(key)

    def page_on_show(self) -> str:
        """Return the key of the page in front."""
        return next(key for key, page in self.pages.items() if page is self.stack.currentWidget())

    def remember(self) -> None:
        """Keep where the window is and what it shows, for the next start."""
        windowreturn.note(self, self._memory)

    def _plan_page(self) -> PlanPage:
        return cast("PlanPage", self.page("plan"))

    # --- acts ------------------------------------------------------------------------

    def retire_vessel(self, vessel_id: int) -> None:
        """Take a vessel off the shelf."""
        if self._attempt(lambda: self._desk.vessels.retire(vessel_id)):
            self.notice.say(
                self.tr("It is off the shelf. Pantry > Retired vessels puts it back."), "inform"
            )

    def plan(self, vessel_id: int | None) -> None:
        """Go to the planner, for a vessel if one is given."""
        self._plan_page().begin(vessel_id)
        self.show_page("plan")

    def edit_plan(self, batch_id: int) -> None:
        """Go to the planner with a plan there is."""
        self._plan_page().edit_plan(batch_id)
        self.show_page("plan")

    def bottle(self, batch_id: int) -> None:
        """Go to the bottles with a batch to be filled."""
        page = cast("BottlePage", self.page("bottles"))
        page.begin(batch_id)
        self.show_page("bottles")

    def start_brewing(self, batch_id: int) -> None:
        """Begin the run sheet of a planned batch and show it."""
        if self._attempt(lambda: self._desk.brewing.start(batch_id)):
            self.open_batch(batch_id)
            self.shelf.sheet.show_tab("run")
            self.shelf.sheet.run_sheet.take_keyboard()

    def add_reading(self) -> None:
        """Bring the reading form of the chosen jar to the front."""
        self.show_page("shelf")
        self.shelf.sheet.show_readings()

    def carry(self) -> None:
        """Pick up what is in the chosen jar."""
        self.show_page("shelf")
        self.shelf.carry()

    def carry_culture(self, culture_id: int) -> None:
        """Pick up a culture, wherever it is kept, to put it down on the shelf."""
        self.show_page("shelf")
        self.shelf.carry_culture(culture_id)

    def start_liquid(self, key: str) -> None:
        """Begin an act with the chosen jar's liquid."""
        self.show_page("shelf")
        self.shelf.sheet.start(key)

    def back_up(self) -> None:
        """Copy the store to the backup folder, off the window's thread."""
        self._desk.jobs.run(
            self._desk.back_up,
            lambda path: self.notice.say(self.tr("Backed up to {path}").format(path=path), "good"),
            self._on_backup_failed,
            key="backup",
            pool=Pool.STORE,
        )

    def open_batch(self, batch_id: int) -> None:
        """Show the jar of a batch."""
        self.show_page("shelf")
        self.shelf.choose_vessel(self._desk.batches.get(batch_id).vessel_id)

    def open_vessel(self, vessel_id: int) -> None:
        """Show a vessel on the shelf."""
        self.show_page("shelf")
        self.shelf.choose_vessel(vessel_id)

    def open_culture(self, culture_id: int) -> None:
        """Show the sheet of a culture."""
        self.show_page("cultures")
        cast("CulturesPage", self.page("cultures")).show_culture(culture_id)

    def open_bottling(self, bottling_id: int) -> None:
        """Show bottles that stand."""
        page = cast("BottlePage", self.page("bottles"))
        self.show_page("bottles")
        page.go_to(bottling_id)

    def open_due_item(self, item: DueItem) -> None:
        """Bring forward what a line of the due list is about."""
        self.bring_forward()
        if item.batch is not None:
            self.open_batch(item.batch.id)
        elif item.culture is not None:
            self.open_culture(item.culture.id)
        elif item.bottling is not None:
            self.open_bottling(item.bottling.id)
        elif item.supply_id is not None:
            self.open_supply(item.supply_id)
        else:
            self.show_page("due")

    def open_supply(self, supply_id: int) -> None:
        """Show one supply of the stores."""
        self.show_page("stores")
        cast("StoresPage", self.page("stores")).show_supply(supply_id)

    def show_history(self, subject: Subject) -> None:
        """Show the whole life of a batch, a culture, a vessel or a place."""
        self.show_page("history")
        cast("HistoryPage", self.page("history")).show_subject(subject)

    def show_batch_history(self, batch_id: int) -> None:
        """Show the whole life of a batch."""
        self.show_history(Subject(SubjectKind.BATCH, batch_id))

    def look_back(self) -> None:
        """Show what the pantry has learned."""
        self.show_page("history")
        cast("HistoryPage", self.page("history")).turn_to("look_back")

    def make_label(self, record: str, record_id: int) -> None:
        """Go to the labels with one record chosen: "vessel", "batch" or "culture"."""
        cast("LabelsPage", self.page("labels")).begin(record, record_id)
        self.show_page("labels")

    def find_anything(self) -> None:
        """Go where everything can be looked for, ready to type."""
        self.show_page("history")
        cast("HistoryPage", self.page("history")).focus_search()

    def bring_forward(self) -> None:
        """Show the window in front."""
        self.show()
        self.setWindowState(self.windowState() & ~Qt.WindowState.WindowMinimized)
        self.raise_()
        self.activateWindow()

    def _attempt(self, act: Callable[[], object]) -> bool:
        try:
            act()
        except ImpossibleInput as problem:
            self.notice.say(impossible_words(problem, self._desk.quantities.show))
            return False
        except StoreTrouble as trouble:
            self.tell_trouble(trouble)
            return False
        return True

    def _with_jar(self, act: Callable[[JarView], None]) -> None:
        jar = self.shelf.chosen()
        if jar is not None:
            act(jar)

    def _with_batch(self, act: Callable[[JarView, int], None]) -> None:
        jar = self.shelf.chosen()
        if jar is not None and jar.batch is not None:
            act(jar, jar.batch.id)

    # --- telling ---------------------------------------------------------------------

    def tell_trouble(self, trouble: StoreTrouble) -> None:
        """Say what kept the store from doing what was asked."""
        if trouble.code in ("file_gone", "file_replaced"):
            self._has_lost_file = True
            self.notice.say(
                trouble_words(trouble), "danger", answer=self.tr("Save what is open as a copy…")
            )
            return
        is_known = trouble.code == "read_only" and self._desk.store.is_read_only
        words = read_only_words() if is_known else trouble_words(trouble)
        self.notice.say(words, "warn" if is_known else "danger")

    def tell_fault(self, first_line: str) -> None:
        """Say that the program itself made a mistake."""
        self.notice.say(
            self.tr(
                "Something went wrong in the program ({what}). What was saved before is safe; "
                "the log file holds the details."
            ).format(what=first_line),
            "danger",
        )

    # --- events ----------------------------------------------------------------------

    def _on_changed(self, change: Change) -> None:
        self._refresh_history()
        if change.concerns(Topic.REMINDERS | Topic.BATCHES):
            self._refresh_due_count()
        if change.concerns(Topic.BOTTLINGS):
            self._refresh_bottle_count()

    def _refresh_history(self) -> None:
        history = self._desk.history
        for key, act, plain, with_act in (
            ("undo", history.undo_act(), self.tr("&Undo"), self.tr("&Undo: {act}")),
            ("redo", history.redo_act(), self.tr("&Redo"), self.tr("&Redo: {act}")),
        ):
            action = self.actions_by_key[key]
            action.setEnabled(act is not None)
            words = (
                act_text(act, self._desk.quantities.show).replace("&", "&&")
                if act is not None
                else ""
            )
            action.setText(with_act.format(act=words) if words else plain)
            action.setToolTip(plain.replace("&", ""))  # by itself it would be the whole text
        self.act_bar.refresh()

    def _refresh_due_count(self) -> None:
        self.rail.set_count("due", self._desk.reminders.due_count())

    def _refresh_bottle_count(self) -> None:
        """Write behind the page's name how many bottlings need their maker now."""
        views = self._desk.fizz_forecasts.all_open()
        self.rail.set_count("bottles", sum(view.is_urgent for view in views))

    def _on_minute(self) -> None:
        self._refresh_bottle_count()
        self.shelf.refresh_words()

    def _on_theme(self) -> None:
        self.rail.restyle()
        self.notice.restyle()
        self.act_bar.refresh()
        self.shelf.refresh_words()

    def _on_open_asked(self, batch_id: int | None) -> None:
        self.bring_forward()
        if batch_id is None:
            self.show_page("due")
        else:
            self.open_batch(batch_id)

    def _on_step_told(self, step_id: int) -> None:
        """Say that a step's time is over, without pulling the maker out of what they are at."""
        step = self._desk.brewing.step(step_id)
        batch = self._desk.batches.get(step.batch_id)
        self._alarm_batch_id = batch.id
        self._doubts_clock = False
        self.notice.say(f"{batch.name}: {time_up_words(step.kind)}", "warn", can_open=True)

    def _on_notice_opened(self) -> None:
        if self._has_lost_file:
            self._has_lost_file = False
            self.dialogs.save_what_is_open(self.notice.say)
        elif self._doubts_clock:
            self._attempt(self._desk.reminder_clock.trust_clock)
        elif self._alarm_batch_id is not None:
            self._open_run_sheet(self._alarm_batch_id)

    def _open_run_sheet(self, batch_id: int) -> None:
        self.bring_forward()
        self.open_batch(batch_id)
        self.shelf.sheet.show_tab("run")

    def _on_jar_shown(self, jar: JarView | None) -> None:
        offer(self.actions_by_key, None if jar is None else jar.stage_code)

    def _on_came_due(self, items: tuple[DueItem, ...]) -> None:
        """Say it to those who listen; for the eye it stands at the foot and in the rail."""
        announce(self, ". ".join(item.title for item in items))

    def _on_clock_doubt(self, _newest: object) -> None:
        self._doubts_clock = True
        self.notice.say(
            self.tr(
                "The computer's clock is earlier than your newest record. Reminders wait until "
                "it is right again; nothing is lost."
            ),
            answer=self.tr("The clock is right"),
        )

    def _on_clock_trusted(self) -> None:
        self._doubts_clock = False
        self.notice.hide()

    def _on_clock_moved(self, seconds: float) -> None:
        """Say that the clock was put back; forward it explains itself by what is late."""
        if seconds < -_WORTH_SAYING_S:
            self.notice.say(clock_moved_words(seconds))

    def _on_backup_failed(self, error: BaseException) -> None:
        if isinstance(error, StoreTrouble):
            self.tell_trouble(error)
        else:
            self.tell_fault(str(error))

    def tell_backup_failed(self, error: BaseException) -> None:
        """Say that the day's backup was not made, and how old the last one is."""
        why = trouble_words(error) if isinstance(error, StoreTrouble) else str(error)
        clock = self._desk.clock
        made = self._desk.store.backups()
        last = made[0].made_at if made else None
        self.notice.say(backup_failed_words(why, last, clock.now(), clock.zone()))

    def showEvent(self, event: QShowEvent) -> None:
        """Keep the words true while they can be seen."""
        super().showEvent(event)
        if self._was_hidden:
            self.shelf.refresh_words()
        self._minute.start()

    def hideEvent(self, event: QHideEvent) -> None:
        """Rest while nobody looks, and for good once the program has been left."""
        super().hideEvent(event)
        self._was_hidden = True
        self._minute.stop()

    def changeEvent(self, event: QEvent) -> None:
        """Look at the due list when the maker comes back to the window."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            self._desk.reminder_clock.window_activated()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Put the window away if the maker chose so; else leave."""
        if self.may_hide() and not _is_logging_out():
            event.ignore()
            self.hide_away()
            return
        if self._asks_before_closing():
            event.ignore()
            return
        event.accept()
        self.quit_wanted.emit()

    def ask_to_leave(self) -> None:
        """Leave, unless a timer would then end unheard: that is asked about first."""
        if not self._asks_before_closing():
            self.quit_wanted.emit()

    def _asks_before_closing(self) -> bool:
        from brewdesk.widgets.closingdialog import ClosingDialog, steps_that_would_not_ring

        if self._is_demo or _is_logging_out():
            return False
        try:
            steps = steps_that_would_not_ring(self._desk)
        except StoreTrouble:  # a store that cannot be read must not hold the window open
            return False
        if not steps:
            return False
        dialog = ClosingDialog(self._desk, steps, self, may_hide=self.may_hide())
        dialog.close_wanted.connect(self.quit_wanted)
        self.bring_forward()
        self.dialogs.open(dialog)
        return True


def _is_logging_out() -> bool:
    app = QGuiApplication.instance()
    return isinstance(app, QGuiApplication) and app.isSavingSession()
