"""Every act of the window as a QAction, built from one list."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenuBar, QWidget


@dataclass(frozen=True, slots=True)
class ActionSpec:
    """One action: its key, where it stands, what it says, how it is called by keys."""

    key: str
    menu: str
    text: str
    shortcut: str = ""
    separated: bool = False


def _tr(text: str) -> str:
    return QCoreApplication.translate("actions", text)


def menu_titles() -> dict[str, str]:
    """Menus in their order."""
    return {
        "pantry": _tr("&Pantry"),
        "edit": _tr("&Edit"),
        "jar": _tr("&Jar"),
        "view": _tr("&View"),
        "help": _tr("&Help"),
    }


def action_specs() -> tuple[ActionSpec, ...]:
    """Every action there is."""
    return (
        ActionSpec("add_vessel", "pantry", _tr("Add a &vessel…"), "Ctrl+Shift+V"),
        ActionSpec("add_culture", "pantry", _tr("Add a &culture…"), "Ctrl+Shift+C"),
        ActionSpec("plan", "pantry", _tr("&Plan a batch…"), "Ctrl+N"),
        ActionSpec("places", "pantry", _tr("P&laces and how warm they are…"), "", separated=True),
        ActionSpec("past", "pantry", _tr("Past &batches…"), "Ctrl+H"),
        ActionSpec("retired", "pantry", _tr("&Retired vessels…"), ""),
        ActionSpec("backups", "pantry", _tr("Bac&kups…"), "", separated=True),
        ActionSpec("backup", "pantry", _tr("Back up no&w"), ""),
        ActionSpec("copy", "pantry", _tr("Copy ever&ything to a folder…"), ""),
        ActionSpec("export", "pantry", _tr("E&xport everything…"), "", separated=True),
        ActionSpec("import", "pantry", _tr("Bring in an expor&t…"), ""),
        ActionSpec("calendar", "pantry", _tr("Due list as a &calendar file…"), ""),
        ActionSpec("process_log", "pantry", _tr("Pr&ocess log…"), ""),
        ActionSpec("demo", "pantry", _tr("Open the &invented pantry"), "", separated=True),
        ActionSpec("quit", "pantry", _tr("&Quit"), "Ctrl+Q", separated=True),
        ActionSpec("undo", "edit", _tr("&Undo"), "Ctrl+Z"),
        ActionSpec("redo", "edit", _tr("&Redo"), "Ctrl+Shift+Z"),
        ActionSpec("find", "edit", _tr("&Find in everything"), "Ctrl+F", separated=True),
        ActionSpec("reading", "jar", _tr("Add a &reading"), "Ctrl+R"),
        ActionSpec("brew", "jar", _tr("Start &brewing"), "Ctrl+B"),
        ActionSpec("already_in", "jar", _tr("It is already in the &jar…"), ""),
        ActionSpec("print_sheet", "jar", _tr("&Print the run sheet…"), "Ctrl+P"),
        ActionSpec("bottle", "jar", _tr("B&ottle it…"), "Ctrl+L"),
        ActionSpec("label", "jar", _tr("Print a &label…"), "Ctrl+Shift+L"),
        ActionSpec("batch_report", "jar", _tr("B&atch report…"), ""),
        ActionSpec("read_readings", "jar", _tr("Read in readi&ngs…"), ""),
        ActionSpec("draw_off", "jar", _tr("&Draw it off…"), "Ctrl+D", separated=True),
        ActionSpec("discard", "jar", _tr("D&iscard it…"), ""),
        ActionSpec("draw_part", "jar", _tr("Draw off par&t…"), "Ctrl+Shift+D", separated=True),
        ActionSpec("keep_starter", "jar", _tr("&Keep starter back…"), ""),
        ActionSpec("top_up", "jar", _tr("Top &up…"), "Ctrl+U"),
        ActionSpec("pour_over", "jar", _tr("Pour &over into another vessel…"), ""),
        ActionSpec("pour_together", "jar", _tr("Pour to&gether with another batch…"), ""),
        ActionSpec("carry", "jar", _tr("Carr&y"), "Ctrl+K"),
        ActionSpec("edit_vessel", "jar", _tr("&Change the vessel…"), "Ctrl+E", separated=True),
        ActionSpec("retire", "jar", _tr("R&etire the vessel"), ""),
        ActionSpec("history", "jar", _tr("Show its &history"), "Ctrl+Shift+H", separated=True),
        ActionSpec("show_shelf", "view", _tr("&Shelf"), "Ctrl+1"),
        ActionSpec("show_plan", "view", _tr("&Plan"), "Ctrl+2"),
        ActionSpec("show_bottles", "view", _tr("B&ottles"), "Ctrl+3"),
        ActionSpec("show_due", "view", _tr("&Due"), "Ctrl+4"),
        ActionSpec("show_cultures", "view", _tr("&Cultures"), "Ctrl+5"),
        ActionSpec("show_stores", "view", _tr("Stor&es"), "Ctrl+0"),
        ActionSpec("show_trials", "view", _tr("T&rials"), "Ctrl+Shift+T"),
        ActionSpec("show_history", "view", _tr("&History"), "Ctrl+6"),
        ActionSpec("look_back", "view", _tr("Look &back"), "Ctrl+Shift+B"),
        ActionSpec("show_labels", "view", _tr("&Labels"), "Ctrl+7"),
        ActionSpec("show_reckoner", "view", _tr("&Reckon"), "Ctrl+8"),
        ActionSpec("show_settings", "view", _tr("Se&ttings"), "Ctrl+9"),
        ActionSpec("find_act", "help", _tr("&Find an act, and its keys…"), "Ctrl+Shift+F"),
        ActionSpec("safety", "help", _tr("&Safety, and where the limits come from"), "F1"),
        ActionSpec("about", "help", _tr("&About brewdesk"), ""),
    )


_SOURING = frozenset({"souring", "tasting", "past_window"})
_ANY = _SOURING | {"empty", "planned", "brewing", "drawn_off"}

# What can be done with a jar in which state; the rest is greyed out, its keys with it.
OFFERED: Mapping[str, frozenset[str]] = {
    "reading": _SOURING,
    "brew": frozenset({"planned"}),
    "already_in": frozenset({"planned"}),
    "print_sheet": _SOURING | {"planned", "brewing"},
    "bottle": _SOURING,
    "label": _ANY,
    "batch_report": _SOURING | {"planned", "brewing", "drawn_off"},
    "read_readings": _SOURING | {"brewing", "drawn_off"},
    "draw_off": _SOURING,
    "discard": _SOURING | {"brewing"},
    "draw_part": _SOURING,
    "keep_starter": _SOURING,
    "top_up": _SOURING,
    "pour_over": _SOURING,
    "pour_together": _SOURING,
    "carry": _ANY,
    "edit_vessel": _ANY,
    "history": _ANY,
    "retire": frozenset({"empty", "drawn_off"}),
}


def offer(actions: Mapping[str, QAction], stage_code: str | None) -> None:
    """Enable what can be done with a jar in this state; nothing without a jar."""
    for key, stages in OFFERED.items():
        actions[key].setEnabled(stage_code in stages)


def build_actions(
    owner: QWidget, bar: QMenuBar, calls: Mapping[str, Callable[[], object]]
) -> dict[str, QAction]:
    """Make all actions, hang them into ``bar`` and connect them to ``calls``."""
    menus = {key: bar.addMenu(title) for key, title in menu_titles().items()}
    made: dict[str, QAction] = {}
    for spec in action_specs():
        action = QAction(spec.text, owner)
        action.setObjectName(f"action_{spec.key}")
        if spec.shortcut:
            action.setShortcut(QKeySequence(spec.shortcut))
        call = calls[spec.key]
        action.triggered.connect(lambda _checked=False, call=call: call())
        if spec.separated:
            menus[spec.menu].addSeparator()
        menus[spec.menu].addAction(action)
        made[spec.key] = action
    made["quit"].setMenuRole(QAction.MenuRole.QuitRole)
    made["about"].setMenuRole(QAction.MenuRole.AboutRole)
    return made
