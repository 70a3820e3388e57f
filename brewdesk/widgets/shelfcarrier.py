"""Carrying on the shelf page: picks up, leads to the target, asks what is meant, does it."""

from __future__ import annotations

from collections.abc import Callable, Collection

from PySide6.QtCore import QEvent, QObject, QRect, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QDialog, QMenu, QWidget

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.brewing import StepShut
from brewdesk.services.desk import Desk
from brewdesk.services.drops import Carried, CarriedKind, Choice, ChoiceKind, Drop, Target
from brewdesk.services.records import ImpossibleInput, StoreTrouble
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.drops import (
    allowed_words,
    choice_detail,
    choice_words,
    picked_up_words,
    refusal_words,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.carriage import Carriage, Way
from brewdesk.widgets.dropbubble import DropBubble
from brewdesk.widgets.fields import announce
from brewdesk.widgets.shelfdrag import carried_in
from brewdesk.widgets.shelfview import ShelfView
from brewdesk.widgets.targetwalk import next_target
from brewdesk.widgets.trays import TrayStrip

_ARROWS = (Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down)


class ShelfCarrier(QObject):
    """Joins carriage, view, trays, bubble and dialogs.

    ``pane`` is the widget that holds the view and the trays; the bubble lies over it.
    ``carrying`` says whether something is being carried; ``end_wanted`` carries the id of a
    batch that is to be drawn off whole, ``bottle_wanted`` of one that is to be bottled.
    """

    carrying = Signal(bool)
    end_wanted = Signal(int)
    bottle_wanted = Signal(int)

    def __init__(self, desk: Desk, view: ShelfView, pane: QWidget, parent: QWidget) -> None:
        super().__init__(parent)
        self._desk = desk
        self._view = view
        self._pane = pane
        self._page = parent
        self.carriage = Carriage(desk.carrying, self)
        self.trays = TrayStrip(self.carriage, pane)
        self.bubble = DropBubble(pane)
        self.menu: QMenu | None = None
        view.set_carriage(self.carriage)
        view.pick_up_wanted.connect(self._on_pick_up_wanted)
        self.trays.give_up_wanted.connect(self.carriage.give_up)
        self.carriage.begun.connect(self._on_begun)
        self.carriage.pointed.connect(self._on_pointed)
        self.carriage.ended.connect(self._on_ended)
        self.carriage.refused.connect(self._on_refused)
        self.carriage.laid_down.connect(self._on_laid_down)

    # --- picking up ------------------------------------------------------------------

    def pick_up(self, carried: Carried, way: Way = Way.CLICKS) -> bool:
        """Carry something by keys and clicks from now on."""
        self._view.setFocus(Qt.FocusReason.OtherFocusReason)
        return self.carriage.pick_up(carried, way)

    def pick_up_from(self, jar: JarView, way: Way = Way.CLICKS) -> None:
        """Carry what is in a jar; ask which, if it is a batch and a culture."""
        found = carried_in(jar)
        if not found:
            text = self.tr("There is nothing in {vessel} to carry.")
            self._say(text.format(vessel=jar.vessel.name), jar.vessel.id)
            return
        if len(found) == 1:
            self.pick_up(found[0], way)
            return
        menu = self._new_menu()
        for carried in found:
            action = menu.addAction(self.pick_up_words(jar, carried))
            action.triggered.connect(lambda _on=False, what=carried: self.pick_up(what, way))
        self._open(menu, self._box(Target(vessel_id=jar.vessel.id)))

    def pick_up_words(self, jar: JarView, carried: Carried) -> str:
        """Name what would be carried, as a menu entry."""
        if carried.kind is CarriedKind.BATCH and jar.batch is not None:
            return self.tr("The batch {name}").format(name=jar.batch.name)
        name = jar.culture.name if jar.culture is not None else ""
        return self.tr("The culture {name}").format(name=name)

    def _on_pick_up_wanted(self, vessel_id: int) -> None:
        for jar in self._desk.shelf.jars():
            if jar.vessel.id == vessel_id:
                self.pick_up_from(jar, Way.KEYS)

    # --- under way ---------------------------------------------------------------------

    def _on_begun(self) -> None:
        self.bubble.hide()
        self.trays.refresh()
        self.carrying.emit(True)
        if self.carriage.way is Way.DRAG:
            return
        app = QApplication.instance()
        if app is not None:
            app.installEventFilter(self)
        text = picked_up_words(self.carriage.name())
        announce(self._view, text)
        home = self.carriage.home_id()
        # What is in no vessel is said over the first one: that is where the arrows begin.
        box = self._box(Target(vessel_id=home)) if home is not None else self._first_box()
        self.bubble.say(text, box, refuses=False)

    def _on_pointed(self) -> None:
        self.trays.refresh()
        target = self.carriage.here
        if target is None:
            self.bubble.hide()
            return
        if target.vessel_id is not None and target.vessel_id == self.carriage.home_id():
            drop = self.carriage.drop_at(target)
            if not drop.is_allowed and self.carriage.way is Way.DRAG:
                self.bubble.hide()  # it was only just taken from there
                return
        self._tell(self.carriage.drop_at(target), target)

    def _tell(self, drop: Drop, target: Target) -> None:
        show = self._desk.quantities.show
        text = allowed_words(drop) if drop.is_allowed else refusal_words(drop, show)
        is_tray = target.tray is not None
        self.bubble.say(text, self._box(target), refuses=not drop.is_allowed, below=is_tray)

    def _on_ended(self) -> None:
        app = QApplication.instance()
        if app is not None:
            app.removeEventFilter(self)
        self.bubble.hide()
        self.trays.refresh()
        self.carrying.emit(False)

    def _on_refused(self, drop: Drop) -> None:
        target = self.carriage.here
        if target is not None:
            self._tell(drop, target)
            return
        index = self._view.currentIndex()
        box = self._view.visualRect(index) if index.isValid() else self._view.rect()
        words = refusal_words(drop, self._desk.quantities.show)
        self.bubble.say(words, self._over_pane(box), refuses=True, stays=False)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Lead what is carried by keys: arrows, Enter, Escape."""
        if self.carriage.carried is None or not isinstance(watched, QWidget):
            return super().eventFilter(watched, event)
        if watched.window() is self._page.window():
            if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
                return self._on_key(event) or super().eventFilter(watched, event)
            if event.type() == QEvent.Type.MouseButtonPress and not self._is_target(watched):
                self.carriage.give_up()  # the maker turned to something else
        return super().eventFilter(watched, event)

    def _is_target(self, widget: QWidget) -> bool:
        parts = (self._view, self.trays)
        return any(part is widget or part.isAncestorOf(widget) for part in parts)

    def _on_key(self, event: QKeyEvent) -> bool:
        key = event.key()
        if key == Qt.Key.Key_Escape:
            name = self.carriage.name()
            self.carriage.give_up()
            announce(self._view, self.tr("{name} put back.").format(name=name))
            return True
        if key in _ARROWS:
            self._walk(Qt.Key(key))
            return True
        is_put_down = key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)
        if is_put_down and self.carriage.here is not None and not self._on_give_up():
            self.carriage.lay_down(self.carriage.here)
            return True
        return False

    def _on_give_up(self) -> bool:
        return self.trays.give_up.hasFocus()

    def _walk(self, key: Qt.Key) -> None:
        here = self.carriage.here
        home = self.carriage.home_id()
        if here is None and home is not None:
            here = Target(vessel_id=home)
        found = next_target(self._targets(), here, key)
        if found is None:
            return
        if found.vessel_id is not None:
            box = self._view.box_of(found.vessel_id)
            if box is not None and not self._view.viewport().rect().contains(box):
                bar = self._view.verticalScrollBar()
                bar.setValue(bar.value() + box.top())
        self.carriage.point_at(found)

    def _targets(self) -> dict[Target, QRect]:
        found = {}
        model = self._view.model()
        for row in range(model.rowCount() if model is not None else 0):
            target = self._view.target_at(self._view.visualRect(model.index(row, 0)).center())
            if target is not None:
                found[target] = self._box(target)
        for tray in self.trays.trays:
            found[tray.target] = self._box(tray.target)
        return found

    # --- putting down --------------------------------------------------------------------

    def _on_laid_down(self, carried: Carried, target: Target, drop: Drop) -> None:
        if len(drop.choices) == 1:
            self._choose(drop.choices[0], target)
            return
        menu = self._new_menu()
        show = self._desk.quantities.show
        for choice in drop.choices:
            action = menu.addAction(choice_words(choice, drop.names))
            action.setToolTip(plain_tip(choice_detail(choice, drop.names, show)))
            action.setData(choice)
            action.triggered.connect(lambda _on=False, what=choice: self._choose(what, target))
        self._open(menu, self._box(target))

    def _choose(self, choice: Choice, target: Target) -> None:
        from brewdesk.widgets.carrydialog import CarryDialog, asks_nothing

        if choice.kind is ChoiceKind.DRAW_OFF and choice.from_batch_id is not None:
            self.end_wanted.emit(choice.from_batch_id)
            return
        if choice.kind is ChoiceKind.FILL_BOTTLES and choice.from_batch_id is not None:
            self.bottle_wanted.emit(choice.from_batch_id)
            return
        if asks_nothing(choice):
            self._do(lambda: self._desk.carrying.perform(choice), target)
            return
        self._show(CarryDialog(self._desk, choice.carried, self._page, choice=choice))

    def _do(self, act: Callable[[], object], target: Target) -> None:
        try:
            act()
        except ImpossibleInput as problem:
            words = impossible_words(problem, self._desk.quantities.show)
        except StepShut as shut:
            found = verdict_words(shut.verdict, self._desk.quantities.show)
            words = f"{found.fact} {found.what_to_do}"
        except StoreTrouble as trouble:
            words = trouble_words(trouble)
        else:
            return
        self.bubble.say(words, self._box(target), refuses=True, stays=False)

    def ask(self, carried: Carried, title: str, kinds: Collection[ChoiceKind]) -> None:
        """Open the form for something carried, for some of what can be done with it."""
        from brewdesk.widgets.carrydialog import CarryDialog

        self._show(CarryDialog(self._desk, carried, self._page, title=title, kinds=kinds))

    def top_up(self, batch_id: int) -> None:
        """Open the form for fresh sweet tea."""
        from brewdesk.widgets.topupdialog import TopUpDialog

        self._show(TopUpDialog(self._desk, self._desk.batches.get(batch_id), self._page))

    def _show(self, dialog: QDialog) -> None:
        for name in ("end_wanted", "bottle_wanted"):
            wanted = getattr(dialog, name, None)
            if wanted is not None:
                wanted.connect(getattr(self, name))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    # --- where things are ------------------------------------------------------------------

    def _new_menu(self) -> QMenu:
        if self.menu is not None:
            self.menu.deleteLater()
        self.menu = QMenu(self._page)
        self.menu.setObjectName("drop_choice")
        self.menu.setToolTipsVisible(True)
        return self.menu

    def _open(self, menu: QMenu, box: QRect) -> None:
        menu.popup(self._pane.mapToGlobal(box.center()))
        menu.setActiveAction(menu.actions()[0])

    def _box(self, target: Target) -> QRect:
        """Where a target lies in the pane."""
        if target.tray is not None:
            found = self.trays.box_of(target, self._pane)
            return found if found is not None else QRect()
        box = self._view.box_of(target.vessel_id or 0)
        return self._over_pane(box) if box is not None else self._pane.rect()

    def _first_box(self) -> QRect:
        return next(iter(self._targets().values()), self._pane.rect())

    def _over_pane(self, box: QRect) -> QRect:
        return QRect(self._view.viewport().mapTo(self._pane, box.topLeft()), box.size())

    def _say(self, text: str, vessel_id: int) -> None:
        box = self._box(Target(vessel_id=vessel_id))
        self.bubble.say(text, box, refuses=True, stays=False)
