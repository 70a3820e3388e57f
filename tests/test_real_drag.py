"""A real drag on a real screen: the mouse of the X server carries, the store tells."""

from __future__ import annotations

import shutil
import subprocess

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QCursor
from PySide6.QtWidgets import QApplication

from brewdesk.services.drops import Target, Tray
from brewdesk.services.records import CultureDraft, CultureOrigin, CultureState
from brewdesk.widgets.shelfpage import ShelfPage
from tests.helpers.pantry_desk import open_desk, plan_batch, souring_batch

pytestmark = pytest.mark.screen

HURRY_MS = 15_000


class Mouse:
    """The pointer of the X server, moved from outside the program."""

    def __init__(self) -> None:
        found = shutil.which("xdotool")
        if found is None:
            pytest.fail("xdotool is missing: install the package that brings it")
        self._program = found
        self._running: list[subprocess.Popen[bytes]] = []

    def do(self, *words: object) -> None:
        """Have the server do something; the program goes on meanwhile."""
        arguments = [self._program, *(str(word) for word in words)]
        self._running.append(subprocess.Popen(arguments))

    def go_to(self, at: QPoint) -> None:
        """Move there as a hand would, over some points on the way."""
        start = QCursor.pos()
        words: list[object] = []
        for step in range(1, 6):
            on_the_way = start + (at - start) * step / 5
            words += ["mousemove", on_the_way.x(), on_the_way.y()]
        self.do(*words)

    def press(self) -> None:
        self.do("mousedown", 1)

    def release(self) -> None:
        self.do("mouseup", 1)

    def end(self) -> None:
        for process in self._running:
            assert process.wait(20) == 0
        subprocess.run([self._program, "mouseup", "1"], check=True)


class Stage:
    """A shelf on the screen, and a hand that drags over it."""

    def __init__(self, desk, page, qtbot) -> None:
        self.desk, self.page, self.qtbot = desk, page, qtbot
        self.carriage = page.carrier.carriage
        self.mouse = Mouse()
        self.seen: list[Target] = []
        self.pointers: list[Qt.CursorShape] = []

    def jar_at(self, vessel_id: int) -> QPoint:
        box = self.page.view.box_of(vessel_id)
        foot = box.top() + round(self.page.view.jar_area())
        return self.page.view.viewport().mapToGlobal(QPoint(box.center().x(), foot - 30))

    def tray_at(self, tray: Tray) -> QPoint:
        found = next(t for t in self.page.carrier.trays.trays if t.target.tray is tray)
        return found.mapToGlobal(found.rect().center())

    def drag(self, start: QPoint, end, target: Target) -> None:
        """Press at ``start``, go to ``end()`` once it is carried, let go once it is there."""
        ended = []

        def on_begun():
            self.mouse.go_to(end())

        def on_pointed():
            if self.carriage.here is not None:
                self.seen.append(self.carriage.here)
            if self.carriage.here == target and not ended:
                ended.append(True)
                self.mouse.release()

        self.carriage.begun.connect(on_begun)
        self.carriage.pointed.connect(on_pointed)
        self.mouse.go_to(start)
        self.qtbot.waitUntil(lambda: QCursor.pos() == start, timeout=HURRY_MS)
        self.mouse.press()
        pressed = lambda: self.page.view._pressed_at is not None  # noqa: E731
        self.qtbot.waitUntil(pressed, timeout=HURRY_MS)
        self.mouse.go_to(start + QPoint(40, 0))
        over = lambda: bool(ended) and self.carriage.carried is None  # noqa: E731
        self.qtbot.waitUntil(over, timeout=HURRY_MS)
        self.carriage.begun.disconnect(on_begun)
        self.carriage.pointed.disconnect(on_pointed)


@pytest.fixture
def stage(qtbot, qapp, tmp_path):
    desk = open_desk(tmp_path)
    souring_batch(desk, "Black tea 1", "Tall jar")
    souring_batch(desk, "Black tea 2", "Short jar")
    page = ShelfPage(desk)
    qtbot.addWidget(page)
    page.setGeometry(0, 0, 900, 560)
    with qtbot.waitExposed(page):
        page.show()
    page.view.setFocus()
    made = Stage(desk, page, qtbot)
    yield made
    made.mouse.end()
    for widget in QApplication.topLevelWidgets():
        if widget is not page:
            widget.close()
    page.close()
    desk.store.close()


def vessel_of(stage, name):
    return next(row for row in stage.desk.vessels.all() if row.name == name)


def test_a_batch_is_dragged_into_an_empty_jar_and_undone(stage, qtbot):
    plan = plan_batch(stage.desk, "Black tea 3", "Empty jar")
    stage.desk.batches.drop_plan(plan.id)
    qtbot.waitUntil(lambda: stage.page.view.box_of(plan.vessel_id) is not None)
    batch = next(b for b in stage.desk.batches.all() if b.name == "Black tea 1")

    target = Target(vessel_id=plan.vessel_id)
    stage.drag(stage.jar_at(batch.vessel_id), lambda: stage.jar_at(plan.vessel_id), target)
    menu = lambda: stage.page.carrier.menu  # noqa: E731
    qtbot.waitUntil(lambda: menu() is not None and menu().isVisible(), timeout=HURRY_MS)
    texts = [action.text() for action in menu().actions()]
    assert texts == ["Pour Black tea 1 over", "Lend starter…"]
    qtbot.keyClick(menu(), Qt.Key.Key_Return)

    qtbot.waitUntil(
        lambda: stage.desk.batches.get(batch.id).vessel_id == plan.vessel_id, timeout=HURRY_MS
    )
    stage.desk.history.undo()
    assert stage.desk.batches.get(batch.id).vessel_id == batch.vessel_id


def test_a_jar_that_takes_nothing_says_so_while_dragging_and_nothing_happens(stage, qtbot):
    desk = stage.desk
    plan = plan_batch(desk, "Black tea 3", "Hot jar")
    desk.brewing.start(plan.id)
    qtbot.waitUntil(lambda: stage.page.view.box_of(plan.vessel_id) is not None)
    batch = next(b for b in desk.batches.all() if b.name == "Black tea 1")
    said = []
    act = desk.history.undo_act()
    stage.carriage.pointed.connect(
        lambda: (
            said.append(stage.page.carrier.bubble.words.text())
            if stage.page.carrier.bubble.isVisible()
            else None
        )
    )

    target = Target(vessel_id=plan.vessel_id)
    stage.drag(stage.jar_at(batch.vessel_id), lambda: stage.jar_at(plan.vessel_id), target)

    assert any("cool enough" in words for words in said)
    assert desk.history.undo_act() == act
    assert not stage.page.carrier.bubble.isVisible()


def test_a_resting_culture_is_dragged_from_its_store_to_another_vessel(stage, qtbot):
    desk = stage.desk
    plans = [plan_batch(desk, f"Tea {name}", name) for name in ("Store", "Other store")]
    for plan in plans:
        desk.batches.drop_plan(plan.id)
    culture = desk.cultures.add(
        CultureDraft(
            name="Hotel",
            origin=CultureOrigin.GIFT,
            state=CultureState.RESTING,
            born_at=desk.clock.now(),
            vessel_id=plans[0].vessel_id,
        )
    )
    home, there = (plan.vessel_id for plan in plans)
    qtbot.waitUntil(lambda: stage.page.model.rowCount() == 4)
    qtbot.waitUntil(lambda: not stage.desk.turns.has("shelf"))

    stage.drag(stage.jar_at(home), lambda: stage.jar_at(there), Target(vessel_id=there))

    menu = lambda: stage.page.carrier.menu  # noqa: E731
    qtbot.waitUntil(lambda: menu() is not None and menu().isVisible(), timeout=HURRY_MS)
    qtbot.keyClick(menu(), Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: desk.cultures.get(culture.id).vessel_id == there, timeout=HURRY_MS)


def test_the_trays_appear_while_dragging_and_bottles_take_a_batch(stage, qtbot):
    batch = next(b for b in stage.desk.batches.all() if b.name == "Black tea 1")
    assert not stage.page.carrier.trays.isVisible()

    stage.drag(
        stage.jar_at(batch.vessel_id),
        lambda: stage.tray_at(Tray.BOTTLES),
        Target(tray=Tray.BOTTLES),
    )

    menu = lambda: stage.page.carrier.menu  # noqa: E731
    qtbot.waitUntil(lambda: menu() is not None and menu().isVisible(), timeout=HURRY_MS)
    assert [action.text() for action in menu().actions()] == [
        "Fill bottles…",
        "Draw off part…",
        "Draw all of it off…",
    ]
    menu().close()
    assert not stage.page.carrier.trays.isVisible()
