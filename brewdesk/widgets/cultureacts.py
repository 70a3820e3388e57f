"""What can be done with a culture, by its state, and the forms that do it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, QObject, Signal
from PySide6.QtWidgets import QDialog, QMenu, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Culture,
    CultureState,
    ImpossibleInput,
    Look,
    StoreTrouble,
)
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.wording.problems import impossible_words, trouble_words


def _t(text: str) -> str:
    return QCoreApplication.translate("CultureActs", text)


@dataclass(frozen=True, slots=True)
class ActSpec:
    """One act: its key, its words, and the states in which it makes sense."""

    key: str
    text: str
    states: frozenset[CultureState]
    is_usual: bool = False  # has a button of its own


_FORMING = frozenset({CultureState.FORMING})
_RESTING = frozenset({CultureState.RESTING})
_GROWN = frozenset({CultureState.RESTING, CultureState.AT_WORK})
_HERE = _GROWN | _FORMING
_ALL = frozenset(CultureState)


def act_specs() -> tuple[ActSpec, ...]:
    """Return all acts in the order of buttons and menu; None of them is an act by itself."""
    return (
        ActSpec("look", _t("Look for mold…"), _GROWN, is_usual=True),
        ActSpec("feed", _t("Feed…"), _RESTING, is_usual=True),
        ActSpec("top_up", _t("Top up…"), _RESTING, is_usual=True),
        ActSpec("split", _t("Split…"), _GROWN, is_usual=True),
        ActSpec("merge", _t("Merge with others…"), _GROWN),
        ActSpec("rest", _t("Put to rest…"), _GROWN),
        ActSpec("move", _t("Move to another vessel…"), _GROWN),
        ActSpec("carry", _t("Carry over the shelf"), _GROWN),
        ActSpec("ph", _t("Note the pH…"), _GROWN),
        ActSpec("note", _t("Write a note…"), _HERE),
        ActSpec("history", _t("Show its history"), _ALL),
        ActSpec("edit", _t("Change…"), _ALL),
        ActSpec("label", _t("Print a label…"), _HERE),
        ActSpec("card", _t("Hand-over card…"), _GROWN | {CultureState.GIVEN_AWAY}),
        ActSpec("give", _t("Give away…"), _GROWN),
        ActSpec("retire", _t("Retire"), _GROWN),
        ActSpec("lose", _t("It is lost…"), _GROWN),
    )


def offered(culture: Culture, *, usual_only: bool = False) -> tuple[ActSpec, ...]:
    """Return the acts that make sense for a culture as it is."""
    return tuple(
        spec
        for spec in act_specs()
        if culture.state in spec.states and (spec.is_usual or not usual_only)
    )


class CultureActs(QObject):
    """Opens the form of an act over ``window``.

    ``made`` carries a culture that came of it, ``trouble`` words for an act without a form,
    ``planned`` the batch in which a culture is to grow, ``label_wanted`` one to be labelled.
    ``history_wanted`` carries the `Subject` whose life is asked for, ``carry_wanted`` a
    culture to be picked up.
    """

    made = Signal(int)
    trouble = Signal(str)
    planned = Signal(int)
    history_wanted = Signal(object)
    carry_wanted = Signal(int)
    label_wanted = Signal(int)

    def __init__(self, desk: Desk, window: QWidget) -> None:
        super().__init__(window)
        self._desk = desk
        self._window = window

    def do(self, key: str, culture_id: int) -> None:
        """Begin an act on a culture."""
        culture = self._desk.cultures.get(culture_id)
        calls: dict[str, Callable[[Culture], None]] = {
            "edit": self._edit,
            "retire": self._retire,
            "label": lambda one: self.label_wanted.emit(one.id),
            "card": lambda one: self.print_card(one.id),
            "look": self._look,
            "give": self._give,
            "split": self._split,
            "merge": self._merge,
            "carry": self._carry,
            "history": lambda one: self.history_wanted.emit(Subject(SubjectKind.CULTURE, one.id)),
        }
        call = calls.get(key)
        if call is not None:
            call(culture)
        else:
            self.open(self._plain_form(key, culture))

    def fill_menu(self, menu: QMenu, culture: Culture, *, usual_too: bool = True) -> None:
        """Put the acts of a culture into a menu."""
        menu.clear()
        for spec in offered(culture):
            if spec.is_usual and not usual_too:
                continue
            if spec.key in ("history", "give"):
                menu.addSeparator()
            action = menu.addAction(spec.text)
            action.setObjectName(f"culture_{spec.key}")
            action.triggered.connect(lambda _checked=False, key=spec.key: self.do(key, culture.id))

    def add(self) -> None:
        """Add a culture there is already."""
        from brewdesk.widgets.cultureform import CultureDialog

        dialog = CultureDialog(self._desk, parent=self._window)
        dialog.saved.connect(self.made)
        self.open(dialog)

    def grow(self) -> None:
        """Begin to grow a culture."""
        from brewdesk.widgets.growform import GrowDialog

        dialog = GrowDialog(self._desk, self._window)
        dialog.done_with.connect(self._on_planned)
        self.open(dialog)

    def look_at_film(self, culture_id: int) -> None:
        """Note a look at a growing culture; mold leads to throwing it away."""
        from brewdesk.widgets.growpanel import GrowLookDialog

        growth = self._desk.growing.growth_of(culture_id)
        if growth is None:
            return
        dialog = GrowLookDialog(self._desk, growth, self._window)

        def go_on(look: Look, _seen: str) -> None:
            if look is Look.MOLD:
                self.discard_growing(culture_id, reason="mold")

        dialog.looked.connect(go_on)
        self.open(dialog)

    def finish_growing(self, culture_id: int) -> None:
        """Call a growing culture grown."""
        from brewdesk.widgets.growpanel import GrownDialog

        growth = self._desk.growing.growth_of(culture_id)
        if growth is not None:
            self.open(GrownDialog(self._desk, growth, self._window))

    def discard_growing(self, culture_id: int, *, reason: str = "") -> None:
        """Throw a growing culture away, with the form for batches."""
        from brewdesk.widgets.enddialog import EndDialog

        for jar in self._desk.shelf.jars():
            if jar.culture is not None and jar.culture.id == culture_id and jar.batch is not None:
                self.open(
                    EndDialog(self._desk, jar, discard=True, reason=reason, parent=self._window)
                )

    def clear(self, culture_id: int) -> None:
        """Clear a culture of suspicion."""
        from brewdesk.widgets.leaveforms import ClearDialog

        culture = self._desk.cultures.get(culture_id)
        self.open(ClearDialog(self._desk, culture, self._window))

    def print_card(self, culture_id: int) -> None:
        """Show the hand-over card of a culture."""
        from brewdesk.widgets.handoverwords import hand_over_card
        from brewdesk.widgets.printhandover import HandOverDialog

        self.open(HandOverDialog(hand_over_card(self._desk, culture_id), self._window))

    def open(self, dialog: QDialog) -> None:
        """Show a dialog over the window, and let go of it once it is closed."""
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    # --- single acts -----------------------------------------------------------------

    def _plain_form(self, key: str, culture: Culture) -> QDialog:
        from brewdesk.widgets.leaveforms import LoseDialog
        from brewdesk.widgets.noteforms import NoteDialog, PhDialog
        from brewdesk.widgets.restforms import FeedDialog, MoveDialog, RestDialog, TopUpDialog

        form = {
            "feed": FeedDialog,
            "top_up": TopUpDialog,
            "rest": RestDialog,
            "move": MoveDialog,
            "ph": PhDialog,
            "note": NoteDialog,
            "lose": LoseDialog,
        }[key]
        return form(self._desk, culture, self._window)

    def _edit(self, culture: Culture) -> None:
        from brewdesk.widgets.cultureform import CultureDialog

        self.open(CultureDialog(self._desk, culture, parent=self._window))

    def _split(self, culture: Culture) -> None:
        from brewdesk.widgets.splitforms import SplitDialog

        dialog = SplitDialog(self._desk, culture, self._window)
        dialog.done_with.connect(lambda daughter: self.made.emit(daughter.id))
        self.open(dialog)

    def _merge(self, culture: Culture) -> None:
        from brewdesk.widgets.splitforms import MergeDialog

        dialog = MergeDialog(self._desk, culture, self._window)
        dialog.done_with.connect(lambda merged: self.made.emit(merged.id))
        self.open(dialog)

    def _look(self, culture: Culture) -> None:
        from brewdesk.widgets.leaveforms import LoseDialog
        from brewdesk.widgets.lookdialog import LookDialog

        dialog = LookDialog(
            culture.name,
            self._window,
            keep=lambda look, seen: self._desk.culture_care.look(culture.id, look, seen),
        )

        def go_on(look: Look, seen: str) -> None:
            if look is Look.MOLD:
                self.open(LoseDialog(self._desk, culture, self._window, seen=seen))

        dialog.looked.connect(go_on)
        self.open(dialog)

    def _carry(self, culture: Culture) -> None:
        if self._desk.vessels.all():
            self.carry_wanted.emit(culture.id)
        else:
            self.trouble.emit(
                _t("There is no vessel on the shelf yet that it could be carried to.")
            )

    def _give(self, culture: Culture) -> None:
        from brewdesk.widgets.handoverwords import hand_over_card
        from brewdesk.widgets.leaveforms import GiveDialog
        from brewdesk.widgets.printhandover import HandOverDialog

        # The words are made before it leaves: afterwards nobody knows what it rested in.
        words = hand_over_card(self._desk, culture.id)
        dialog = GiveDialog(self._desk, culture, self._window)

        def go_on(_given: object) -> None:
            if dialog.wants_card:
                self.open(HandOverDialog(words, self._window))

        dialog.done_with.connect(go_on)
        self.open(dialog)

    def _retire(self, culture: Culture) -> None:
        try:
            self._desk.culture_care.retire(culture.id)
        except ImpossibleInput as problem:
            self.trouble.emit(impossible_words(problem, self._desk.quantities.show))
        except StoreTrouble as trouble:
            self.trouble.emit(trouble_words(trouble))

    def _on_planned(self, batch: object) -> None:
        self.made.emit(getattr(batch, "culture_id", 0) or 0)
        self.planned.emit(getattr(batch, "id", 0))
