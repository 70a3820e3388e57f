"""The pages beside the shelf, each made and imported when it is first asked for."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from brewdesk.services.desk import Desk

if TYPE_CHECKING:
    from brewdesk.widgets.mainwindow import MainWindow


def make_page(key: str, desk: Desk, window: MainWindow) -> QWidget:
    """Make the page ``key``, its wishes connected to ``window``."""
    return _MAKERS[key](desk, window)


def _plan(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.planpage import PlanPage

    made = PlanPage(desk)
    made.planned.connect(window.open_batch)
    made.start_wanted.connect(window.start_brewing)
    return made


def _bottles(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.bottlepage import BottlePage

    made = BottlePage(desk)
    made.open_batch.connect(window.open_batch)
    made.label_wanted.connect(lambda bottling_id: window.make_label("bottling", bottling_id))
    return made


def _due(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.duepage import DuePage

    made = DuePage(desk)
    made.open_batch.connect(window.open_batch)
    made.open_culture.connect(window.open_culture)
    made.open_bottling.connect(window.open_bottling)
    made.open_supply.connect(window.open_supply)
    made.export_wanted.connect(window.dialogs.export_calendar)
    return made


def _cultures(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.culturespage import CulturesPage

    made = CulturesPage(desk)
    made.open_batch.connect(window.open_batch)
    made.acts.history_wanted.connect(window.show_history)
    made.acts.carry_wanted.connect(window.carry_culture)
    made.acts.label_wanted.connect(lambda culture_id: window.make_label("culture", culture_id))
    return made


def _stores(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.storespage import StoresPage

    made = StoresPage(desk)
    made.open_batch.connect(window.show_batch_history)
    return made


def _history(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.historypage import HistoryPage

    made = HistoryPage(desk)
    made.batch_wanted.connect(window.open_batch)
    made.vessel_wanted.connect(window.open_vessel)
    made.culture_wanted.connect(window.open_culture)
    made.places_wanted.connect(window.dialogs.show_places)
    return made


def _labels(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.labelspage import LabelsPage

    made = LabelsPage(desk)
    made.add_vessel_wanted.connect(window.dialogs.add_vessel)
    return made


def _trials(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.trialspage import TrialsPage

    made = TrialsPage(desk)
    made.open_batch.connect(window.open_batch)
    return made


def _reckoner(desk: Desk, _window: MainWindow) -> QWidget:
    from brewdesk.widgets.reckonerpage import ReckonerPage

    return ReckonerPage(desk)


def _settings(desk: Desk, window: MainWindow) -> QWidget:
    from brewdesk.widgets.settingspage import SettingsPage

    made = SettingsPage(desk)
    made.test_notice_wanted.connect(window.test_notice_wanted)
    return made


_MAKERS: dict[str, Callable[[Desk, MainWindow], QWidget]] = {
    "plan": _plan,
    "bottles": _bottles,
    "due": _due,
    "cultures": _cultures,
    "stores": _stores,
    "history": _history,
    "labels": _labels,
    "trials": _trials,
    "reckoner": _reckoner,
    "settings": _settings,
}
