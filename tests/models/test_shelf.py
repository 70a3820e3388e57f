"""The shelf's item model against a plain list, with Qt's own checker watching."""

from __future__ import annotations

import itertools
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPersistentModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester

from brewdesk.models.shelf import JAR_ROLE, ShelfModel
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.shelf import JarWords
from brewdesk.store.records import Vessel
from culturecore.stages import Material, VesselShape


def jar(number: int, ph: float | None = None) -> JarView:
    vessel = Vessel(
        id=number,
        name=f"Jar {number}",
        shape=VesselShape.CYLINDER,
        material=Material.GLASS,
        brim_volume_l=4.0,
        working_volume_l=3.5,
        inner_diameter_cm=15.0,
        place_id=1,
    )
    return JarView(
        vessel=vessel,
        profile=((0.0, 7.5), (22.0, 7.5)),
        batch=None,
        culture=None,
        fill_volume_l=0.0,
        fill_fraction=0.0,
        liquid_height_cm=0.0,
        latest_ph=ph,
        ph_at=None,
        pellicle_mm=None,
        day_number=None,
        stage_code="empty",
        next_code="plan_batch",
        next_at=None,
        alerts=(),
    )


def words(view: JarView) -> JarWords:
    state = f"pH {view.latest_ph}"
    return JarWords(
        name=view.vessel.name,
        state=state,
        coming="",
        what="",
        when="",
        urgent="",
        sentence=f"{view.vessel.name}, {state}.",
    )


@pytest.fixture
def model(qapp):
    made = ShelfModel(words)
    made.tester = QAbstractItemModelTester(
        made, QAbstractItemModelTester.FailureReportingMode.Warning
    )
    return made


def shown(model: ShelfModel) -> list[int]:
    return [model.index(row).data(JAR_ROLE).vessel.id for row in range(model.rowCount())]


lists_of_jars = st.lists(
    st.lists(st.integers(1, 6), unique=True, max_size=6), min_size=1, max_size=8
)


@given(lists_of_jars)
def test_whatever_order_the_jars_come_in_the_model_shows_it(qapp, orders):
    model = ShelfModel(words)
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Warning)
    for order in orders:
        model.set_jars([jar(number) for number in order])
        assert shown(model) == order
    del tester


def test_a_chosen_jar_stays_chosen_when_others_come_and_go(model):
    model.set_jars([jar(1), jar(2), jar(3)])
    chosen = QPersistentModelIndex(model.index(2))
    model.set_jars([jar(3), jar(4), jar(1)])
    assert chosen.isValid()
    assert chosen.data(JAR_ROLE).vessel.id == 3
    assert chosen.row() == 0


def test_only_the_jar_that_changed_is_painted_again(model, qtbot):
    model.set_jars([jar(1), jar(2)])
    rows: list[int] = []
    model.dataChanged.connect(lambda top, _bottom: rows.append(top.row()))
    model.set_jars([jar(1), jar(2)])
    assert rows == []
    model.set_jars([jar(1), replace(jar(2), latest_ph=3.3)])
    assert rows == [1]


def test_a_screen_reader_hears_the_whole_sentence(model):
    model.set_jars([jar(1, ph=3.4)])
    index = model.index(0)
    assert index.data(Qt.ItemDataRole.AccessibleTextRole) == "Jar 1, pH 3.4."
    assert index.data(Qt.ItemDataRole.DisplayRole) == "Jar 1"
    assert model.row_of(1) == 0
    assert model.row_of(9) is None


def test_many_jars_are_shown_in_steps_that_make_a_few_words_each():
    made = []

    def counted(shown_jar):
        made.append(shown_jar.vessel.id)
        return words(shown_jar)

    model = ShelfModel(counted)
    steps = model.set_in_turns([jar(number) for number in range(1, 101)])
    counts = [0]
    counts.extend(len(made) for _ in steps)
    assert shown(model) == list(range(1, 101))
    assert max(after - before for before, after in itertools.pairwise(counts)) <= 16
