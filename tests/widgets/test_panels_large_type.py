"""Nothing is cut off at twice the text size in a sheet as narrow as it may get."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QDateTimeEdit,
    QFrame,
    QLabel,
    QLineEdit,
    QScrollArea,
)

from brewdesk.widgets.acidchart import AcidChart
from brewdesk.widgets.duepage import DuePage
from brewdesk.widgets.readingform import ReadingForm
from brewdesk.widgets.runsheetpanel import RunSheetPanel
from brewdesk.widgets.settingspage import SettingsPage
from brewdesk.widgets.theme import TOUCH
from tests.helpers.pantry_desk import brewing_batch, open_desk, souring_batch
from tests.helpers.worn_theme import worn_theme

NARROW_PX = 500


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


@pytest.fixture(params=[1.0, 2.0])
def scale(qapp, request):
    with worn_theme(qapp, "light", request.param):
        yield request.param


def reading_form(desk):
    form = ReadingForm(desk)
    form.set_batch(souring_batch(desk).id)
    return form


def run_sheet(desk):
    panel = RunSheetPanel(desk)
    panel.set_batch(brewing_batch(desk).id)
    return panel


def due_page(desk):
    souring_batch(desk)
    desk.reminders.sync()
    page = DuePage(desk)
    page.adding.set_open(True)
    return page


PANELS = {
    "reading form": reading_form,
    "run sheet": run_sheet,
    "due page": due_page,
    "settings": SettingsPage,
    "chart": lambda desk: AcidChart(),
}


@pytest.mark.parametrize("name", PANELS)
def test_every_control_and_word_lies_within_the_sheet(desk, scale, qtbot, name):
    panel = PANELS[name](desk)
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setWidget(panel)
    qtbot.addWidget(area)
    area.resize(NARROW_PX, 700)
    with qtbot.waitExposed(area):
        area.show()
    kinds = (QAbstractButton, QComboBox, QLabel, QDateTimeEdit, QLineEdit)

    def cut_off():
        area.grab()
        shown = [w for kind in kinds for w in panel.findChildren(kind) if w.isVisible()]
        assert shown
        return [
            f"{type(w).__name__} {w.objectName()} {w.mapTo(area, QPoint(0, 0)).x()} + {w.width()}"
            for w in shown
            if w.mapTo(area, QPoint(w.width(), 0)).x() > NARROW_PX
        ]

    qtbot.waitUntil(lambda: cut_off() == [])


@pytest.mark.parametrize("name", ["reading form", "run sheet", "due page", "settings"])
def test_everything_to_press_is_tall_enough_for_a_finger(desk, scale, qtbot, name):
    panel = PANELS[name](desk)
    qtbot.addWidget(panel)
    panel.resize(560, 900)
    with qtbot.waitExposed(panel):
        panel.show()
    panel.grab()
    small = [
        f"{type(w).__name__} {w.objectName()} {w.height()}"
        for kind in (QAbstractButton, QComboBox, QLineEdit)
        for w in panel.findChildren(kind)
        # The line inside such a box is pressed with the box.
        if w.isVisible() and w.objectName() not in ("qt_spinbox_lineedit", "combo_line")
        if w.height() < TOUCH - (8 if w.inherits("QCheckBox") else 0)
    ]
    assert small == []
