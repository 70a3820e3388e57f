"""The sheet of the chosen jar: what it is, what comes next, and everything known of it."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from PySide6.QtCore import QPoint, Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QMenu,
    QPushButton,
    QScrollArea,
    QTabWidget,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.drops import Carried, CarriedKind, ChoiceKind
from brewdesk.services.records import BatchStage, Kind, Verdict
from brewdesk.services.shelf import JarView
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.shelf import jar_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.acidchart import AcidChart
from brewdesk.widgets.figurerow import ElidedLabel, FigureRow
from brewdesk.widgets.icons import icon
from brewdesk.widgets.jarphotos import JarPhotos
from brewdesk.widgets.journalview import JournalView
from brewdesk.widgets.liquidentries import TOP_UP, liquid_entries
from brewdesk.widgets.planfacts import PlanFacts
from brewdesk.widgets.readingform import ReadingForm
from brewdesk.widgets.readingsview import ReadingsView
from brewdesk.widgets.runsheetpanel import RunSheetPanel
from brewdesk.widgets.shelfdrag import carried_in
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard

_CURVE = "curve"


class JarSheet(QWidget):
    """Shows one jar. What the maker wants done is emitted; the window does it."""

    plan_wanted = Signal(int)  # vessel id
    edit_plan_wanted = Signal(int)  # batch id
    brew_wanted = Signal(int)  # batch id
    edit_vessel_wanted = Signal(int)
    retire_wanted = Signal(int)
    end_wanted = Signal(object, bool)  # jar, discard
    bottle_wanted = Signal(int)  # batch id
    print_wanted = Signal(int)  # batch id
    label_wanted = Signal(str, int)  # "batch", "culture" or "vessel", and its id
    drop_plan_wanted = Signal(int)
    already_in_wanted = Signal(int)
    history_wanted = Signal(object)  # a Subject
    carry_wanted = Signal(object, str, object)  # what, title, kinds of choices
    pick_up_wanted = Signal(object)
    top_up_wanted = Signal(int)  # batch id
    look_wanted = Signal(int)  # batch id
    mold_seen = Signal(int)  # batch id: all of it is to be discarded
    clear_wanted = Signal(int)  # batch id: its suspicion of mold
    culture_wanted = Signal(int)
    shown = Signal(object)  # the jar, or None

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._jar: JarView | None = None
        self._scroll_later = QTimer(self)  # once the rows have their places
        self._scroll_later.setObjectName("run_sheet_scroll")
        self._scroll_later.setSingleShot(True)
        self._scroll_later.setInterval(0)
        self._may_draw = False  # until the window's first paint is done
        self.setObjectName("jar_sheet")
        self.setMinimumWidth(430)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        column.setSpacing(SPACE)
        column.addLayout(self._make_header())
        self._figures = FigureRow(3)
        column.addWidget(self._figures)
        self._alerts = QVBoxLayout()
        self._alerts.setSpacing(SPACE)
        self._alerts_shown: tuple[Verdict, ...] = ()
        column.addLayout(self._alerts)
        self.tabs = QTabWidget()
        self.tabs.setObjectName("jar_tabs")
        self.tabs.setDocumentMode(True)
        self.tabs.setAccessibleName(self.tr("All about this jar"))
        column.addWidget(self.tabs, 1)
        self._make_tabs()
        desk.forecasts.ready.connect(self._on_forecast_ready)
        desk.forecasts.imagined.connect(self.chart.set_imagined)

    # --- building --------------------------------------------------------------------

    def _make_header(self) -> QHBoxLayout:
        row = QHBoxLayout()
        words = QVBoxLayout()
        words.setSpacing(0)
        self._title, self._subtitle = ElidedLabel(), ElidedLabel()
        self._title.setObjectName("jar_title")
        for label, role in ((self._title, "title"), (self._subtitle, "muted")):
            label.setTextFormat(Qt.TextFormat.PlainText)
            set_role(label, role)
            words.addWidget(label)
        row.addLayout(words, 1)
        self.next_button = QPushButton()
        self.next_button.setObjectName("next_act")
        set_role(self.next_button, "primary")
        self.next_button.clicked.connect(self._on_next)
        row.addWidget(self.next_button, 0, Qt.AlignmentFlag.AlignTop)
        self.more_button = QToolButton()
        self.more_button.setObjectName("jar_more")
        self.more_button.setAccessibleName(self.tr("More for this jar"))
        self.more_button.setToolTip(self.tr("More for this jar"))
        self.more_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self._menu = QMenu(self.more_button)
        self._menu.aboutToShow.connect(self.fill_menu)
        self.more_button.setMenu(self._menu)
        row.addWidget(self.more_button, 0, Qt.AlignmentFlag.AlignTop)
        return row

    def _make_tabs(self) -> None:
        self.chart = AcidChart(self, show_amount=self._desk.quantities.show)
        self.chart.what_if_wanted.connect(self._desk.forecasts.what_if)
        self.form = ReadingForm(self._desk, self)
        self.readings = ReadingsView(self._desk, self)
        self.run_sheet = RunSheetPanel(self._desk, self)
        self._scroll_later.timeout.connect(self.run_sheet.show_present_step)
        self.journal = JournalView(self._desk, self)
        self.facts = PlanFacts(self._desk, self)
        self.photos = JarPhotos(self._desk, self)
        self.photos.look_wanted.connect(self.look_wanted)
        self.photos.discard_wanted.connect(self.mold_seen)
        self.form.look_wanted.connect(self.look_wanted)
        self.form.mold_seen.connect(self.mold_seen)
        reading_page = QWidget()
        column = QVBoxLayout(reading_page)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.form)
        column.addWidget(self.readings, 1)
        self._pages: dict[str, tuple[QWidget, str]] = {
            "curve": (self.chart, self.tr("Curve")),
            "readings": self._scrolling(reading_page, self.tr("Readings")),
            "run": self._scrolling(self.run_sheet, self.tr("Run sheet")),
            "photos": self._scrolling(self.photos, self.tr("Photos")),
            "facts": self._scrolling(self.facts, self.tr("Recipe")),
            "journal": (self.journal, self.tr("Journal")),
        }
        for page, _ in self._pages.values():
            page.hide()

    def _scrolling(self, page: QWidget, title: str) -> tuple[QScrollArea, str]:
        area = QScrollArea(self)
        area.setAccessibleName(title)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(page)
        return area, title

    # --- showing ---------------------------------------------------------------------

    def jar(self) -> JarView | None:
        """The jar on show."""
        return self._jar

    def show_jar(self, jar: JarView | None) -> None:
        """Put ``jar`` on show, keeping the tab in use where the jar has it."""
        for _ in self.show_in_turns(jar):
            pass

    def show_in_turns(self, jar: JarView | None) -> Iterator[None]:
        """Do as `show_jar` in small steps, between which the window has time to paint."""
        changed = (self._jar is None) != (jar is None) or (
            self._jar is not None and jar is not None and self._jar.vessel.id != jar.vessel.id
        )
        stage_before = self._jar.stage_code if self._jar is not None else ""
        self._jar = jar
        self.setVisible(jar is not None)
        self.shown.emit(jar)
        if jar is None:
            return
        self._show_header(jar)
        self._show_alerts(jar)
        yield
        yield from self._show_tabs(jar, fresh=changed or stage_before != jar.stage_code)

    def show_readings(self) -> None:
        """Bring the reading form to the front, ready to type."""
        page = self._pages["readings"][0]
        if self.tabs.indexOf(page) >= 0:
            self.tabs.setCurrentWidget(page)
            self.form.focus_first()

    def show_tab(self, key: str) -> None:
        """Bring a tab to the front, if this jar has it."""
        page = self._pages[key][0]
        if self.tabs.indexOf(page) >= 0:
            self.tabs.setCurrentWidget(page)

    def _show_header(self, jar: JarView) -> None:
        now, zone = self._desk.clock.now(), self._desk.clock.zone()
        words = jar_words(jar, now, zone, self._desk.quantities.show)
        self._title.setText(jar.vessel.name)
        self._subtitle.setText(self._subtitle_words(jar))
        self.more_button.setIcon(icon("more"))
        text = {
            "empty": self.tr("Plan a batch"),
            "drawn_off": self.tr("Plan a batch"),
            "planned": self.tr("Start brewing"),
            "souring": self.tr("Add a reading"),
            "tasting": self.tr("Add a reading"),
            "past_window": self.tr("Draw it off"),
        }.get(jar.stage_code, "")
        self.next_button.setText(text)
        self.next_button.setVisible(bool(text))
        figures = [(words.state, self.tr("now"))]
        if jar.batch is not None and jar.day_number is not None and jar.batch.started_at:
            since = stamp_words(jar.batch.started_at, zone)
            figures = [
                (
                    self.tr("Day {n}").format(n=jar.day_number),
                    self.tr("since {when}").format(when=since),
                ),
                self._ph_figure(jar),
            ]
        if words.what:
            figures.append((words.what, words.when or self.tr("next")))
        self._figures.set_figures(figures)

    def _ph_figure(self, jar: JarView) -> tuple[str, str]:
        if jar.latest_ph is None or jar.ph_at is None:
            return (self.tr("pH –"), self.tr("not read yet"))
        when = stamp_words(jar.ph_at, self._desk.clock.zone())
        return (self.tr("pH {ph}").format(ph=number_text(jar.latest_ph, 2)), when)

    def _subtitle_words(self, jar: JarView) -> str:
        volume = self._desk.quantities.show(jar.vessel.working_volume_l, Kind.VOLUME)
        parts = [volume, name_of(jar.vessel.material)]
        if jar.batch is not None:
            is_souring = jar.batch.stage is BatchStage.SOURING
            fill_l = jar.fill_volume_l if is_souring else jar.batch.fill_volume_l
            parts = [jar.batch.name, self._desk.quantities.show(fill_l, Kind.VOLUME)]
        if jar.culture is not None:
            parts.append(jar.culture.name)
        return " · ".join(parts)

    def _show_alerts(self, jar: JarView) -> None:
        if self._alerts_shown == jar.alerts:
            return
        self._alerts_shown = jar.alerts
        while (item := self._alerts.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        for alert in jar.alerts:
            self._alerts.addWidget(VerdictCard(alert, self))

    def _show_tabs(self, jar: JarView, *, fresh: bool) -> Iterator[None]:
        wanted = {
            "brewing": ("run", "photos", "facts", "journal"),
            "planned": ("facts", "journal"),
            "souring": ("curve", "readings", "photos", "facts", "journal"),
            "tasting": ("curve", "readings", "photos", "facts", "journal"),
            "past_window": ("curve", "readings", "photos", "facts", "journal"),
            "drawn_off": ("facts", "photos", "journal"),
        }.get(jar.stage_code, ("facts",))
        if fresh:
            had_keyboard = self.tabs.isAncestorOf(QApplication.focusWidget() or self)
            for index in reversed(range(self.tabs.count())):
                self.tabs.removeTab(index)
            for page, _ in self._pages.values():
                page.hide()
            for key in wanted:
                page, title = self._pages[key]
                if key == "facts" and jar.batch is None:
                    title = self.tr("Vessel")
                self.tabs.addTab(page, title)
            self.tabs.setCurrentIndex(0)
            if had_keyboard:  # what had it is gone; it must not wander off to another page
                self.tabs.tabBar().setFocus(Qt.FocusReason.OtherFocusReason)
        self.facts.set_jar(jar)
        if jar.batch is None:
            return
        batch_id = jar.batch.id
        fillings: list[tuple[str, Callable[[int], None]]] = [
            ("journal", self.journal.set_batch),
            ("photos", self.photos.set_batch),
            ("run", self._show_run_sheet),
            ("curve", self.form.set_batch),
            ("curve", self.readings.set_batch),
        ]
        for key, fill in fillings:
            if key in wanted or key == "journal":
                yield
                if self._jar is not jar:  # another was put on show meanwhile
                    return
                fill(batch_id)
        if "curve" in wanted:
            yield
            if self._jar is jar:
                yield from self._refreshing_curve()

    def _show_run_sheet(self, batch_id: int) -> None:
        self.run_sheet.set_batch(batch_id)
        self._scroll_later.start()

    def allow_curves(self) -> None:
        """Draw curves from now on: the first one costs its library's import."""
        if not self._may_draw:
            self._may_draw = True
            self.refresh_curve()

    def refresh_curve(self) -> None:
        """Show the newest curve there is, and ask for a newer one."""
        for _ in self._refreshing_curve():
            pass

    def _refreshing_curve(self) -> Iterator[None]:
        jar = self._jar
        if not self._may_draw or jar is None or jar.batch is None:
            return
        if jar.batch.stage is not BatchStage.SOURING:
            return
        yield from self._drawing(jar.batch.id)
        yield
        if self._shows(jar.batch.id):
            self._desk.forecasts.request(jar.batch.id)

    def _drawing(self, batch_id: int) -> Iterator[None]:
        view = self._desk.forecasts.now(batch_id)
        yield
        if view is None or not self._shows(batch_id):
            return
        for _ in self.chart.set_view_in_turns(view):
            yield
            if not self._shows(batch_id):
                return

    def _shows(self, batch_id: int) -> bool:
        jar = self._jar
        return jar is not None and jar.batch is not None and jar.batch.id == batch_id

    def _on_forecast_ready(self, batch_id: int) -> None:
        if self._may_draw and self._shows(batch_id):
            self._desk.turns.begin(_CURVE, self._drawing(batch_id))

    # --- acting ----------------------------------------------------------------------

    def fill_menu(self) -> None:
        """Offer what can be done with the jar as it is now."""
        self._menu.clear()
        jar = self._jar
        if jar is None:
            return
        vessel_id = jar.vessel.id
        batch = jar.batch
        live = batch is not None and batch.stage.is_live
        if batch is not None and batch.stage is BatchStage.PLANNED:
            batch_id = batch.id
            self._menu.addAction(
                self.tr("It is already in the jar…"), lambda: self.already_in_wanted.emit(batch_id)
            )
            self._menu.addAction(
                self.tr("Change the plan…"), lambda: self.edit_plan_wanted.emit(batch_id)
            )
            self._menu.addAction(
                self.tr("Give the plan up"), lambda: self.drop_plan_wanted.emit(batch_id)
            )
        if batch is not None and live:
            batch_id = batch.id
            self._menu.addAction(
                self.tr("Print the run sheet…"), lambda: self.print_wanted.emit(batch_id)
            )
        self._menu.addAction(
            self.tr("Print a label…"), lambda: self.label_wanted.emit(*label_record(jar))
        )
        if batch is not None and batch.stage is BatchStage.SOURING:
            self._menu.addSeparator()
            batch_id = batch.id
            self._menu.addAction(self.tr("Bottle it…"), lambda: self.bottle_wanted.emit(batch_id))
            self._menu.addAction(self.tr("Draw it off…"), lambda: self.end_wanted.emit(jar, False))
            for entry in liquid_entries():
                action = self._menu.addAction(entry.text)
                action.triggered.connect(lambda _on=False, key=entry.key: self.start(key))
        if batch is not None and batch.stage in (BatchStage.SOURING, BatchStage.BREWING):
            seen_id = batch.id
            self._menu.addAction(self.tr("Look for mold…"), lambda: self.look_wanted.emit(seen_id))
            self._menu.addAction(self.tr("Discard it…"), lambda: self.end_wanted.emit(jar, True))
        if batch is not None and batch.suspect_at is not None:
            batch_id = batch.id
            if batch.stage is BatchStage.DRAWN_OFF:
                self._menu.addAction(
                    self.tr("Discard it…"), lambda: self.end_wanted.emit(jar, True)
                )
            self._menu.addAction(
                self.tr("Clear it of suspicion…"), lambda: self.clear_wanted.emit(batch_id)
            )
        self._add_carry_entries(jar)
        self._menu.addSeparator()
        if batch is not None:
            of_batch = Subject(SubjectKind.BATCH, batch.id)
            self._menu.addAction(
                self.tr("Show the batch's history"), lambda: self.history_wanted.emit(of_batch)
            )
        of_vessel = Subject(SubjectKind.VESSEL, vessel_id)
        self._menu.addAction(
            self.tr("Show the jar's history"), lambda: self.history_wanted.emit(of_vessel)
        )
        self._menu.addSeparator()
        if jar.culture is not None:
            culture_id = jar.culture.id
            self._menu.addAction(
                self.tr("Show the culture"), lambda: self.culture_wanted.emit(culture_id)
            )
        self._menu.addAction(
            self.tr("Change the vessel…"), lambda: self.edit_vessel_wanted.emit(vessel_id)
        )
        if not live:
            self._menu.addAction(
                self.tr("Retire the vessel"), lambda: self.retire_wanted.emit(vessel_id)
            )

    def _add_carry_entries(self, jar: JarView) -> None:
        for carried in carried_in(jar):
            self._menu.addSeparator()
            is_batch = carried.kind is CarriedKind.BATCH
            pick = self.tr("Carry the batch") if is_batch else self.tr("Carry the culture")
            action = self._menu.addAction(pick)
            action.triggered.connect(lambda _on=False, what=carried: self.pick_up_wanted.emit(what))
            to = self.tr("Carry the batch to…") if is_batch else self.tr("Carry the culture to…")
            action = self._menu.addAction(to)
            action.triggered.connect(
                lambda _on=False, what=carried: self.carry_wanted.emit(what, "", tuple(ChoiceKind))
            )

    def start(self, key: str) -> None:
        """Begin one of the acts with the chosen jar's liquid."""
        jar = self._jar
        if jar is None or jar.batch is None:
            return
        if key == TOP_UP:
            self.top_up_wanted.emit(jar.batch.id)
            return
        for entry in liquid_entries():
            if entry.key == key:
                carried = Carried(CarriedKind.BATCH, jar.batch.id)
                title = entry.title.format(name=jar.batch.name)
                self.carry_wanted.emit(carried, title, entry.kinds)

    def open_menu(self, at: QPoint) -> None:
        """Open the jar's menu at a point of the screen."""
        self._menu.popup(at)

    def _on_next(self) -> None:
        jar = self._jar
        if jar is None:
            return
        if jar.stage_code in ("empty", "drawn_off"):
            self.plan_wanted.emit(jar.vessel.id)
        elif jar.stage_code == "planned" and jar.batch is not None:
            self.brew_wanted.emit(jar.batch.id)
        elif jar.stage_code == "past_window":
            self.end_wanted.emit(jar, False)
        else:
            self.show_readings()


def label_record(jar: JarView) -> tuple[str, int]:
    """Return what a jar's label is about: its batch, else the culture in it, else the vessel."""
    if jar.batch is not None:
        return "batch", jar.batch.id
    if jar.culture is not None:
        return "culture", jar.culture.id
    return "vessel", jar.vessel.id
