"""The wheel scrolls pages; it never changes a date, a time or a choice."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QComboBox, QScrollArea, QWidget

from brewdesk.widgets.cultureform import CultureDialog
from brewdesk.widgets.duepage import DuePage
from brewdesk.widgets.planpage import PlanPage
from brewdesk.widgets.readingform import ReadingForm
from brewdesk.widgets.settingspage import SettingsPage
from brewdesk.widgets.vesselform import VesselDialog
from tests.helpers.pantry_desk import souring_batch

PAGES = (ReadingForm, PlanPage, DuePage, SettingsPage, CultureDialog, VesselDialog)


def roll(widget: QWidget) -> None:
    """Turn the wheel one notch down in the middle of ``widget``, as the desktop would."""
    window = widget.window()
    place = widget.mapTo(window, widget.rect().center())
    QTest.wheelEvent(window.windowHandle(), QPointF(place), QPoint(0, -120))
    QApplication.processEvents()


def said(page: QWidget) -> list[str]:
    choices = [combo.currentText() for combo in page.findChildren(QComboBox)]
    return choices + [edit.text() for edit in page.findChildren(QAbstractSpinBox)]


@pytest.mark.parametrize("kind", PAGES)
def test_rolling_over_a_choice_or_a_date_changes_nothing(kind, desk, qtbot):
    souring_batch(desk)
    page = kind(desk)
    qtbot.addWidget(page)
    page.resize(1000, 2400)
    with qtbot.waitExposed(page):
        page.show()
    if isinstance(page, ReadingForm):
        page.set_batch(desk.batches.all()[0].id)
    editors = [*page.findChildren(QComboBox), *page.findChildren(QAbstractSpinBox)]
    assert editors
    before = said(page)
    for editor in editors:
        assert editor.focusPolicy() is Qt.FocusPolicy.StrongFocus
        bottom = editor.mapTo(page, editor.rect().bottomLeft()).y()
        if not editor.isVisible() or bottom > page.height():
            continue
        editor.setFocus()
        roll(editor)
        for line in editor.findChildren(QWidget, "qt_spinbox_lineedit"):
            roll(line)
    assert said(page) == before


def test_rolling_over_a_date_scrolls_the_page_around_it(desk, qtbot):
    form = ReadingForm(desk)
    form.set_batch(souring_batch(desk).id)
    area = QScrollArea()
    qtbot.addWidget(area)
    area.setWidget(form)
    form.resize(400, 900)
    area.resize(420, 300)
    with qtbot.waitExposed(area):
        area.show()
    bar = area.verticalScrollBar()
    area.ensureWidgetVisible(form.when.line, 0, 20)
    before = bar.value()
    assert before < bar.maximum()
    roll(form.when.line)
    assert bar.value() > before


def test_the_open_list_and_the_keys_still_choose(desk, qtbot):
    page = SettingsPage(desk)
    qtbot.addWidget(page)
    page.show()
    combo = page.findChild(QComboBox, "setting_theme_control")
    before = combo.currentIndex()
    qtbot.keyClick(combo, Qt.Key.Key_Down)
    assert combo.currentIndex() == before + 1
