"""The table model says exactly what changed; Qt's own tester looks on."""

from __future__ import annotations

from dataclasses import dataclass

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QPersistentModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester

from brewdesk.models.rowtable import ROW_ROLE, SORT_ROLE, RowTableModel


@dataclass(frozen=True)
class Line:
    id: int
    text: str


class LineModel(RowTableModel[Line]):
    def __init__(self):
        super().__init__(("Id", "Text"), lambda line: line.id)

    def cell(self, row, column):
        return str(row.id) if column == 0 else row.text


class Shadow:
    """Rebuild the rows from the model's signals alone."""

    def __init__(self, model):
        self.model = model
        self.ids = []
        model.rowsInserted.connect(self._inserted)
        model.rowsRemoved.connect(self._removed)
        model.rowsMoved.connect(self._moved)
        model.modelReset.connect(self._reset)
        self.resets = 0

    def _inserted(self, _parent, first, last):
        self.ids[first:first] = [line.id for line in self.model.rows()[first : last + 1]]

    def _removed(self, _parent, first, last):
        del self.ids[first : last + 1]

    def _moved(self, _parent, first, last, _to_parent, to):
        moved = self.ids[first : last + 1]
        del self.ids[first : last + 1]
        self.ids[to:to] = moved

    def _reset(self):
        self.resets += 1


def watched():
    model = LineModel()
    tester = QAbstractItemModelTester(
        model, QAbstractItemModelTester.FailureReportingMode.Warning, model
    )
    return model, tester


ROWS = st.lists(
    st.builds(Line, st.integers(0, 8), st.sampled_from("abc")),
    unique_by=lambda line: line.id,
    max_size=8,
)


@settings(max_examples=60)
@given(st.lists(ROWS, min_size=1, max_size=6))
def test_signals_alone_lead_to_the_rows_shown(lists):
    model, _tester = watched()
    shadow = Shadow(model)
    for rows in lists:
        model.set_rows(rows)
        assert list(model.rows()) == rows
        assert shadow.ids == [line.id for line in rows]
    assert shadow.resets == 0


def test_a_row_that_stays_keeps_its_index():
    model, _tester = watched()
    model.set_rows([Line(1, "a"), Line(2, "b"), Line(3, "c")])
    kept = QPersistentModelIndex(model.index_of(2))
    model.set_rows([Line(4, "new"), Line(3, "c"), Line(2, "b")])
    assert kept.isValid()
    assert kept.data(ROW_ROLE) == Line(2, "b")
    assert kept.row() == 2


def test_only_the_row_that_reads_differently_is_announced(qtbot):
    model, _tester = watched()
    model.set_rows([Line(1, "a"), Line(2, "b")])
    with qtbot.waitSignal(model.dataChanged) as heard:
        model.set_rows([Line(1, "a"), Line(2, "other")])
    assert (heard.args[0].row(), heard.args[1].row()) == (1, 1)
    assert model.index(1, 1).data() == "other"


def test_the_same_rows_again_announce_nothing(qtbot):
    model, _tester = watched()
    rows = [Line(1, "a"), Line(2, "b")]
    model.set_rows(rows)
    with (
        qtbot.assertNotEmitted(model.dataChanged),
        qtbot.assertNotEmitted(model.rowsInserted),
        qtbot.assertNotEmitted(model.rowsRemoved),
        qtbot.assertNotEmitted(model.rowsMoved),
    ):
        model.set_rows(rows)


def test_two_rows_with_one_id_are_refused_and_the_old_ones_stay():
    model, _tester = watched()
    model.set_rows([Line(1, "a")])
    with pytest.raises(ValueError, match="same id"):
        model.set_rows([Line(2, "b"), Line(2, "c")])
    assert model.rows() == (Line(1, "a"),)


def test_cells_titles_and_places_out_of_range():
    model, _tester = watched()
    model.set_rows([Line(7, "seven")])
    assert model.index(0, 0).data() == "7"
    assert model.index(0, 1).data(SORT_ROLE) == "seven"
    assert model.headerData(1, Qt.Orientation.Horizontal) == "Text"
    assert model.headerData(0, Qt.Orientation.Vertical) is None
    assert model.row_at(model.index(3, 0)) is None
    assert not model.index_of(99).isValid()
    assert model.rowCount(model.index(0, 0)) == 0
    assert model.index(0, 1).data(Qt.ItemDataRole.DecorationRole) is None


def test_refresh_announces_every_cell(qtbot):
    model, _tester = watched()
    model.refresh()
    model.set_rows([Line(1, "a"), Line(2, "b")])
    with qtbot.waitSignal(model.dataChanged) as heard:
        model.refresh()
    first, last = heard.args[0], heard.args[1]
    assert (first.row(), first.column(), last.row(), last.column()) == (0, 0, 1, 1)
