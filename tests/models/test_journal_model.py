"""The journal as rows of time and sentence."""

from __future__ import annotations

import pytest
from PySide6.QtTest import QAbstractItemModelTester

from brewdesk.models.journal import WHAT, WHEN, JournalModel
from brewdesk.models.rowtable import SORT_ROLE
from brewdesk.services.records import Method, Quantity, ReadingDraft
from tests.helpers.pantry_desk import open_desk, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


def test_the_newest_act_stands_first_with_its_time(desk):
    batch = souring_batch(desk)
    model = JournalModel(desk.clock)
    tester = QAbstractItemModelTester(
        model, QAbstractItemModelTester.FailureReportingMode.Warning, model
    )
    assert tester.model() is model
    model.set_rows(desk.journal.of_batch(batch.id))
    before = model.rowCount()
    desk.clock.advance(hours=5)
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=desk.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.42,
            )
        ]
    )
    model.set_rows(desk.journal.of_batch(batch.id))
    assert model.rowCount() == before + 1
    assert "3.42" in model.index(0, WHAT).data()
    assert "14:00" in model.index(0, WHEN).data()
    assert model.index(0, WHEN).data(SORT_ROLE) > model.index(1, WHEN).data(SORT_ROLE)
