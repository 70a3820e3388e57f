"""What has ended can still be looked at: readings, journal and curve."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from brewdesk.services.records import Method, Quantity, ReadingDraft
from brewdesk.widgets.pastdialog import PastDialog
from tests.helpers.pantry_desk import open_desk, plan_batch, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def opened(desk, qtbot):
    def show() -> PastDialog:
        dialog = PastDialog(desk)
        qtbot.addWidget(dialog)
        dialog.open()
        dialog.grab()
        return dialog

    return show


def discarded_batch(desk, name: str, vessel: str):
    batch = souring_batch(desk, name, vessel)
    desk.clock.advance(days=3)
    desk.readings.record(
        (
            ReadingDraft(
                batch_id=batch.id,
                at=desk.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.9,
                sd=0.05,
            ),
        )
    )
    desk.batches.discard(batch.id, "An accident – dropped it")
    return batch


def test_a_discarded_batch_keeps_its_readings_journal_and_curve(desk, opened):
    batch = discarded_batch(desk, "Black tea 1", "Tall jar")
    dialog = opened()
    assert dialog.chosen().id == batch.id
    assert "dropped it" in dialog.summary.text()
    assert "Tall jar" in dialog.summary.text()
    assert [row.value for row in dialog.readings.model.rows()] == [3.9]
    dialog.tabs.setCurrentWidget(dialog.journal)
    assert dialog.journal.model.rowCount() > 0
    assert desk.forecasts.now(batch.id).points[0].value == 3.9


def test_what_was_expected_of_an_ended_batch_is_no_advice_any_more(desk, opened):
    discarded_batch(desk, "Black tea 1", "Tall jar")
    dialog = opened()
    said = " ".join(label.text() for label in dialog.chart.findChildren(QLabel))
    assert "It is over" in said
    assert "tasting from" not in said
    assert "4 in 5" not in said
    assert dialog.chart.spec().now_label == "ended"
    assert dialog.chart.spec().window is None


def test_the_last_one_ended_stands_first_and_keys_walk_the_list(desk, opened, qtbot):
    first = discarded_batch(desk, "Black tea 1", "Tall jar")
    second = discarded_batch(desk, "Black tea 2", "Little jar")
    dialog = opened()
    assert dialog.chosen().id == second.id
    qtbot.keyClick(dialog.list, Qt.Key.Key_Down)
    assert dialog.chosen().id == first.id
    assert "Tall jar" in dialog.summary.text()


def test_batches_under_way_are_not_among_them(desk, opened):
    plan_batch(desk)
    dialog = opened()
    assert dialog.chosen() is None
    assert dialog.empty.isVisible()
    assert not dialog.tabs.isVisible()
