"""The journal of a batch in its table."""

from __future__ import annotations

import pytest
from PySide6.QtTest import QAbstractItemModelTester

from brewdesk.models.journal import WHAT
from brewdesk.services.records import Kind
from brewdesk.widgets.journalview import JournalView
from tests.helpers.pantry_desk import open_desk, plan_batch, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


@pytest.fixture
def view(desk, qtbot):
    made = JournalView(desk)
    qtbot.addWidget(made)
    tester = QAbstractItemModelTester(
        made.model, QAbstractItemModelTester.FailureReportingMode.Warning, made
    )
    assert tester.model() is made.model
    made.resize(560, 400)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_acts_appear_as_they_happen_and_go_when_undone(desk, view):
    batch = plan_batch(desk, name="Amber")
    view.set_batch(batch.id)
    assert "Amber planned" in view.model.index(0, WHAT).data()
    desk.brewing.start(batch.id)
    assert "begun" in view.model.index(0, WHAT).data()
    desk.history.undo()
    assert "Amber planned" in view.model.index(0, WHAT).data()
    assert not view.grab().isNull()


def test_a_hidden_journal_catches_up_when_shown(desk, view):
    batch = souring_batch(desk)
    view.hide()
    view.set_batch(batch.id)
    assert view.model.rowCount() == 0
    view.show()
    assert view.model.rowCount() == len(desk.journal.of_batch(batch.id))


def test_a_change_of_unit_rewrites_the_sentences(desk, view):
    batch = plan_batch(desk)
    view.set_batch(batch.id)
    assert "4.00 L" in view.model.index(0, WHAT).data()
    desk.settings.put_unit(Kind.VOLUME, "gal")
    assert "gal" in view.model.index(0, WHAT).data()


def test_without_a_batch_it_says_that_it_is_empty(view):
    view.set_batch(None)
    assert view.empty.isVisible()
