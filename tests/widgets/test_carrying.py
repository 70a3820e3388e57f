"""Carrying on the shelf: by drag events, by keys, by clicks and by menu."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent, QMouseEvent
from PySide6.QtWidgets import QApplication

from brewdesk.services.drops import Carried, CarriedKind, ChoiceKind, Target, Tray
from brewdesk.services.records import BatchStage
from brewdesk.widgets.carriage import MIME_TYPE, Carriage, Way
from brewdesk.widgets.carrydialog import CarryDialog
from brewdesk.widgets.dropmarks import Mark
from brewdesk.widgets.shelfdrag import chip_of, grabbed
from brewdesk.widgets.shelfpage import ShelfPage
from brewdesk.widgets.targetwalk import next_target
from tests.helpers.pantry_desk import brewing_batch, plan_batch, souring_batch

NO_KEYS = Qt.KeyboardModifier.NoModifier
LEFT = Qt.MouseButton.LeftButton


class Shelf:
    """A page with two souring jars, an empty one and one on its run sheet."""

    def __init__(self, desk, page) -> None:
        self.desk, self.page, self.view = desk, page, page.view
        self.carriage = page.carrier.carriage
        self.bubble = page.carrier.bubble

    def batch(self, name):
        return next(row for row in self.desk.batches.all() if row.name == name)

    def vessel_id(self, name):
        return next(row.id for row in self.desk.vessels.all() if row.name == name)

    def at(self, name) -> QPoint:
        """A point low in a jar, where a hand gets hold of the batch."""
        box = self.view.box_of(self.vessel_id(name))
        return QPoint(box.center().x(), box.top() + round(self.view.jar_area()) - 20)

    def pick_up(self, name, way=Way.DRAG):
        carried = Carried(CarriedKind.BATCH, self.batch(name).id)
        assert self.carriage.pick_up(carried, way)

    # Straight to the widget: the application hands drag events on during a drag of its own only.

    def enter(self, widget, at, mime=None):
        event = QDragEnterEvent(at, Qt.DropAction.MoveAction, mime or self.mime(), LEFT, NO_KEYS)
        widget.dragEnterEvent(event)
        return event.isAccepted()

    def move(self, widget, at):
        mime = self.mime()
        event = QDragMoveEvent(at, Qt.DropAction.MoveAction, mime, LEFT, NO_KEYS)
        widget.dragMoveEvent(event)
        return event.isAccepted()

    def drop(self, widget, at):
        mime = self.mime()
        event = QDropEvent(QPointF(at), Qt.DropAction.MoveAction, mime, LEFT, NO_KEYS)
        widget.dropEvent(event)
        return event.isAccepted()

    def mime(self):
        self._mime = self.carriage.mime()  # kept: the event does not own it
        return self._mime

    def tray(self, tray):
        return next(row for row in self.page.carrier.trays.trays if row.target.tray is tray)

    def menu_texts(self):
        menu = self.page.carrier.menu
        return [action.text() for action in menu.actions()] if menu is not None else None


@pytest.fixture
def shelf(desk, qtbot):
    souring_batch(desk, "Black tea 1", "Tall jar")
    souring_batch(desk, "Black tea 2", "Short jar")
    desk.batches.drop_plan(plan_batch(desk, "None", "Empty jar").id)
    brewing_batch(desk, "Black tea 3", "Hot jar")
    page = ShelfPage(desk)
    qtbot.addWidget(page)
    page.resize(1100, 700)
    page.show()
    qtbot.waitExposed(page)
    made = Shelf(desk, page)
    yield made
    made.carriage.give_up()
    for popup in QApplication.topLevelWidgets():
        if popup is not page and popup.isVisible():
            popup.close()


def dialog(qtbot):
    found = []

    def is_open():
        found[:] = [
            widget
            for widget in QApplication.topLevelWidgets()
            if isinstance(widget, CarryDialog) and widget.isVisible()
        ]
        return bool(found)

    qtbot.waitUntil(is_open)
    return found[0]


# --- dragging -------------------------------------------------------------------------------


def test_a_drag_is_let_in_and_answered_for_each_jar(shelf):
    port = shelf.view
    shelf.pick_up("Black tea 1")
    assert shelf.enter(port, shelf.at("Empty jar"))
    assert shelf.move(port, shelf.at("Empty jar"))
    assert shelf.bubble.words.text() == "Pour Black tea 1 over · Lend starter"
    assert shelf.move(port, shelf.at("Short jar"))
    assert not shelf.move(port, shelf.at("Hot jar"))
    assert "cool enough" in shelf.bubble.words.text()
    assert shelf.bubble.isVisible()
    assert shelf.bubble.accessibleName() == shelf.bubble.words.text()


def test_every_jar_shows_whether_it_takes_what_is_carried(shelf):
    jars = {jar.vessel.name: jar for jar in shelf.desk.shelf.jars()}
    assert all(shelf.view.mark_of(jar) is None for jar in jars.values())
    shelf.pick_up("Black tea 1")
    shelf.move(shelf.view, shelf.at("Empty jar"))
    marks = {name: shelf.view.mark_of(jar) for name, jar in jars.items()}
    assert marks == {
        "Tall jar": None,
        "Short jar": Mark.CAN,
        "Empty jar": Mark.HERE,
        "Hot jar": Mark.CANNOT,
    }
    shelf.move(shelf.view, shelf.at("Hot jar"))
    assert shelf.view.mark_of(jars["Hot jar"]) is Mark.REFUSED
    shelf.page.grab()  # paints all marks: a fault there would pass unseen otherwise


def test_a_drop_on_an_empty_jar_offers_a_choice_that_is_done_and_undone(shelf, qtbot):
    batch = shelf.batch("Black tea 1")
    shelf.pick_up("Black tea 1")
    assert shelf.drop(shelf.view, shelf.at("Empty jar"))
    qtbot.waitUntil(lambda: shelf.page.carrier.menu is not None)
    assert shelf.menu_texts() == ["Pour Black tea 1 over", "Lend starter…"]
    shelf.page.carrier.menu.actions()[0].trigger()
    assert shelf.batch("Black tea 1").vessel_id == shelf.vessel_id("Empty jar")
    shelf.desk.history.undo()
    assert shelf.batch("Black tea 1") == batch


def test_a_drop_where_nothing_can_be_done_does_nothing(shelf, qtbot):
    act = shelf.desk.history.undo_act()
    shelf.pick_up("Black tea 1")
    assert not shelf.drop(shelf.view, shelf.at("Hot jar"))
    assert shelf.carriage.carried is not None
    assert shelf.desk.history.undo_act() == act


def test_what_another_window_drags_is_not_let_in(shelf, desk):
    shelf.pick_up("Black tea 1")
    other = Carriage(desk.carrying)
    other.pick_up(Carried(CarriedKind.BATCH, shelf.batch("Black tea 1").id), Way.DRAG)
    port, at = shelf.view, shelf.at("Empty jar")
    stranger = other.mime()
    assert stranger.hasFormat(MIME_TYPE)
    assert not shelf.enter(port, at, stranger)
    text = QMimeData()
    text.setText("Black tea 1")
    assert not shelf.enter(port, at, text)


def test_leaving_takes_the_bubble_away(shelf):
    shelf.pick_up("Black tea 1")
    shelf.move(shelf.view, shelf.at("Hot jar"))
    shelf.view.dragLeaveEvent(QDragLeaveEvent())
    assert not shelf.bubble.isVisible()
    assert shelf.carriage.here is None


def test_trays_stand_there_only_while_something_is_carried(shelf, qtbot):
    trays = shelf.page.carrier.trays
    assert not trays.isVisible()
    before = shelf.view.geometry()
    shelf.pick_up("Black tea 1")
    assert trays.isVisible()
    assert shelf.view.geometry() == before  # nothing moves under the hand
    bottles, resting = shelf.tray(Tray.BOTTLES), shelf.tray(Tray.RESTING)
    assert shelf.enter(bottles, bottles.rect().center())
    assert shelf.move(bottles, bottles.rect().center())
    assert not shelf.move(resting, resting.rect().center())
    assert "No culture rests" in shelf.bubble.words.text()
    shelf.drop(bottles, bottles.rect().center())
    qtbot.waitUntil(lambda: shelf.page.carrier.menu is not None)
    assert shelf.menu_texts() == ["Fill bottles…", "Draw off part…", "Draw all of it off…"]
    assert not trays.isVisible()


def test_the_amount_is_asked_for_with_its_balance_and_checked(shelf, qtbot):
    shelf.pick_up("Black tea 1")
    bottles = shelf.tray(Tray.BOTTLES)
    shelf.drop(bottles, bottles.rect().center())
    qtbot.waitUntil(lambda: shelf.page.carrier.menu is not None)
    shelf.page.carrier.menu.actions()[1].trigger()
    asked = dialog(qtbot)
    assert asked.volume.value() == pytest.approx(2.0)
    asked.volume.line.setText("9 L")
    qtbot.mouseClick(asked.go, LEFT)
    assert asked.isVisible()
    assert "more than there is" in asked.volume.message.text()
    asked.volume.line.setText("1.5 L")
    assert "4.00 L − 1.50 L = 2.50 L" in asked.balance.text()
    qtbot.mouseClick(asked.go, LEFT)
    assert not asked.isVisible()
    batch = shelf.batch("Black tea 1")
    assert shelf.desk.liquids.volume_now_l(batch.id) == pytest.approx(2.5)
    shelf.desk.history.undo()
    assert shelf.desk.liquids.volume_now_l(batch.id) == pytest.approx(4.0)


def test_drawing_all_of_it_off_goes_the_usual_way(shelf, qtbot):
    ends = []
    shelf.page.sheet.end_wanted.connect(lambda jar, discard: ends.append((jar, discard)))
    shelf.pick_up("Black tea 1")
    bottles = shelf.tray(Tray.BOTTLES)
    shelf.drop(bottles, bottles.rect().center())
    qtbot.waitUntil(lambda: shelf.page.carrier.menu is not None)
    shelf.page.carrier.menu.actions()[2].trigger()
    ((jar, discard),) = ends
    assert (jar.batch.name, discard) == ("Black tea 1", False)


def test_filling_bottles_leads_to_their_own_page(shelf, qtbot):
    wanted = []
    shelf.page.sheet.bottle_wanted.connect(wanted.append)
    batch = shelf.batch("Black tea 1")
    shelf.pick_up("Black tea 1")
    bottles = shelf.tray(Tray.BOTTLES)
    shelf.drop(bottles, bottles.rect().center())
    qtbot.waitUntil(lambda: shelf.page.carrier.menu is not None)
    shelf.page.carrier.menu.actions()[0].trigger()
    assert wanted == [batch.id]
    assert shelf.desk.liquids.volume_now_l(batch.id) == pytest.approx(4.0)


def test_a_hand_gets_hold_of_the_culture_at_the_surface_and_of_the_batch_below(shelf):
    jar = next(jar for jar in shelf.desk.shelf.jars() if jar.vessel.name == "Tall jar")
    assert grabbed(jar, by_pellicle=True).kind is CarriedKind.CULTURE
    assert grabbed(jar, by_pellicle=False).kind is CarriedKind.BATCH
    cell = shelf.view.box_of(jar.vessel.id)
    surface = shelf.view.pellicle_box(jar, cell)
    assert cell.contains(surface.toRect())
    assert not surface.contains(QPointF(shelf.at("Tall jar")))
    empty = next(jar for jar in shelf.desk.shelf.jars() if jar.vessel.name == "Empty jar")
    assert grabbed(empty, by_pellicle=False) is None


def test_the_chip_under_the_pointer_is_painted(qapp):
    for kind in CarriedKind:
        chip = chip_of("A name that is longer than any jar's name should ever be, by far", kind)
        assert 40 < chip.deviceIndependentSize().width() < 360


# --- by keys ---------------------------------------------------------------------------------


def test_the_whole_way_by_keys(shelf, qtbot):
    shelf.view.setFocus()
    shelf.view.choose(0)
    qtbot.keyClick(shelf.view, Qt.Key.Key_Space)
    assert shelf.menu_texts() == ["The batch Black tea 1", "The culture Culture of Tall jar"]
    menu = shelf.page.carrier.menu
    qtbot.keyClick(menu, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: shelf.carriage.carried is not None)
    assert "Arrow keys" in shelf.bubble.words.text()
    target = Target(vessel_id=shelf.vessel_id("Empty jar"))
    for _ in range(4):
        if shelf.carriage.here != target:
            qtbot.keyClick(shelf.view, Qt.Key.Key_Right)
    assert shelf.carriage.here == target
    qtbot.keyClick(shelf.view, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: shelf.page.carrier.menu is not menu)
    qtbot.keyClick(shelf.page.carrier.menu, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: shelf.batch("Black tea 1").vessel_id == target.vessel_id)


def test_enter_on_a_jar_that_takes_nothing_says_why_and_goes_on(shelf, qtbot):
    shelf.pick_up("Black tea 1", Way.KEYS)
    shelf.carriage.point_at(Target(vessel_id=shelf.vessel_id("Hot jar")))
    qtbot.keyClick(shelf.view, Qt.Key.Key_Return)
    assert shelf.carriage.carried is not None
    assert "cool enough" in shelf.bubble.words.text()


def test_escape_gives_up_and_the_shelf_is_as_before(shelf, qtbot):
    act = shelf.desk.history.undo_act()
    shelf.pick_up("Black tea 1", Way.KEYS)
    qtbot.keyClick(shelf.view, Qt.Key.Key_Down)
    qtbot.keyClick(shelf.view, Qt.Key.Key_Escape)
    assert shelf.carriage.carried is None
    assert not shelf.bubble.isVisible()
    assert not shelf.page.carrier.trays.isVisible()
    assert shelf.desk.history.undo_act() == act
    qtbot.keyClick(shelf.view, Qt.Key.Key_Right)  # the arrows are the shelf's own again
    assert shelf.view.currentIndex().isValid()


def test_the_trays_are_reached_upwards(shelf, qtbot):
    shelf.pick_up("Black tea 1", Way.KEYS)
    for _ in range(4):
        qtbot.keyClick(shelf.view, Qt.Key.Key_Up)
    assert shelf.carriage.here.tray is not None


def test_every_target_is_reached_by_the_right_arrow(shelf):
    targets = shelf.page.carrier._targets()
    assert len(targets) == 6
    seen, here = set(), None
    for _ in range(12):
        here = next_target(targets, here, Qt.Key.Key_Right)
        seen.add(here)
    assert {target.vessel_id for target in seen} >= {
        shelf.vessel_id(name) for name in ("Tall jar", "Short jar", "Empty jar", "Hot jar")
    }


# --- by clicks and menus -----------------------------------------------------------------------


def test_click_and_click_again(shelf, qtbot):
    batch = shelf.batch("Black tea 1")
    shelf.page.sheet.pick_up_wanted.emit(Carried(CarriedKind.BATCH, batch.id))
    assert shelf.carriage.way is Way.CLICKS
    assert shelf.page.carrier.trays.give_up.isVisible()
    at = shelf.at("Empty jar")
    QApplication.sendEvent(
        shelf.view.viewport(),
        QMouseEvent(
            QEvent.Type.MouseMove,
            QPointF(at),
            QPointF(shelf.view.viewport().mapToGlobal(at)),
            Qt.MouseButton.NoButton,
            Qt.MouseButton.NoButton,
            NO_KEYS,
        ),
    )
    assert shelf.carriage.here == Target(vessel_id=shelf.vessel_id("Empty jar"))
    qtbot.mouseClick(shelf.view.viewport(), LEFT, pos=at)
    qtbot.waitUntil(lambda: shelf.page.carrier.menu is not None)
    assert shelf.menu_texts() == ["Pour Black tea 1 over", "Lend starter…"]


def test_giving_up_by_the_button_and_by_a_click_elsewhere(shelf, qtbot):
    shelf.pick_up("Black tea 1", Way.CLICKS)
    qtbot.mouseClick(shelf.page.carrier.trays.give_up, LEFT)
    assert shelf.carriage.carried is None
    shelf.pick_up("Black tea 1", Way.CLICKS)
    qtbot.mouseClick(shelf.page.sheet.tabs.tabBar(), LEFT)
    assert shelf.carriage.carried is None


def test_the_jars_menu_carries_and_names_what_can_be_done_with_its_liquid(shelf):
    shelf.page.choose_vessel(shelf.vessel_id("Tall jar"))
    shelf.page.sheet.fill_menu()
    texts = [action.text() for action in shelf.page.sheet._menu.actions()]
    for wanted in (
        "Draw off part…",
        "Keep starter back…",
        "Top up…",
        "Pour over into another vessel…",
        "Pour together with another batch…",
        "Carry the batch",
        "Carry the batch to…",
        "Carry the culture",
        "Carry the culture to…",
    ):
        assert wanted in texts
    shelf.page.choose_vessel(shelf.vessel_id("Empty jar"))
    shelf.page.sheet.fill_menu()
    empty = [action.text() for action in shelf.page.sheet._menu.actions()]
    assert not any(text.startswith(("Carry", "Draw", "Top up")) for text in empty)


def test_carry_to_lists_only_what_takes_it_and_does_it(shelf, qtbot):
    batch = shelf.batch("Black tea 1")
    shelf.page.carrier.ask(Carried(CarriedKind.BATCH, batch.id), "", tuple(ChoiceKind))
    asked = dialog(qtbot)
    names = [asked.where.itemText(row) for row in range(asked.where.count())]
    assert names == ["Short jar · Black tea 2", "Empty jar", "Bottles"]
    asked.where.setCurrentIndex(1)
    assert asked.choice().target == Target(vessel_id=shelf.vessel_id("Empty jar"))
    qtbot.mouseClick(asked.go, LEFT)
    assert shelf.batch("Black tea 1").vessel_id == shelf.vessel_id("Empty jar")


def test_where_nothing_takes_it_the_form_says_why(shelf, qtbot):
    shelf.page.choose_vessel(shelf.vessel_id("Tall jar"))
    batch = shelf.batch("Black tea 1")
    now = shelf.desk.clock.now()
    shelf.desk.door.quiet(lambda unit: unit.batches.change(batch.id, suspect_at=now))
    shelf.page.sheet.start("draw_part")
    asked = dialog(qtbot)
    assert "may carry mold" in asked.outcome.text()
    assert not asked.go.isEnabled()


def test_flagged_liquid_is_not_picked_up_and_says_so(shelf):
    batch = shelf.batch("Black tea 1")
    now = shelf.desk.clock.now()
    shelf.desk.door.quiet(lambda unit: unit.batches.change(batch.id, suspect_at=now))
    assert not shelf.carriage.pick_up(Carried(CarriedKind.BATCH, batch.id), Way.KEYS)
    assert "may carry mold" in shelf.bubble.words.text()
    assert shelf.carriage.carried is None


def test_batches_are_poured_together_with_one_name_for_both_cultures(shelf, qtbot):
    first, second = shelf.batch("Black tea 1"), shelf.batch("Black tea 2")
    shelf.desk.liquids.draw_part(second.id, 3.9)
    shelf.desk.liquids.draw_part(first.id, 2.0)
    shelf.page.choose_vessel(first.vessel_id)
    shelf.page.sheet.start("pour_together")
    asked = dialog(qtbot)
    assert asked.rows["name"].isVisible()
    assert "2.00 L − 2.00 L = 0" in asked.balance.text()
    asked.name.setText("Both")
    qtbot.mouseClick(asked.go, LEFT)
    into = shelf.batch("Black tea 2")
    assert shelf.desk.cultures.get(into.culture_id).name == "Both"
    assert shelf.batch("Black tea 1").stage is BatchStage.DRAWN_OFF
