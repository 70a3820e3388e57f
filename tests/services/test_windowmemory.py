"""The window's place between two starts."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.windowmemory import WindowMemory, WindowPlace, _from_text
from brewdesk.store.store import Store

PLACE = WindowPlace(x=40, y=60, width=1000, height=700, page="due", vessel_id=3)


def test_what_was_kept_is_remembered_by_the_next_start(kit):
    assert WindowMemory(kit.store).remembered() is None
    WindowMemory(kit.store).keep(PLACE)
    assert WindowMemory(kit.store).remembered() == PLACE


def test_it_is_no_act_and_no_setting(kit):
    before = kit.settings.options()
    WindowMemory(kit.store).keep(PLACE)
    assert kit.history.undo_act() is None
    assert kit.heard == []
    assert kit.settings.options() == before


def test_the_same_place_is_not_written_again(kit):
    memory = WindowMemory(kit.store)
    memory.keep(PLACE)
    before = kit.path.read_bytes()
    memory.keep(PLACE)
    assert kit.path.read_bytes() == before


@pytest.mark.parametrize(
    "changed",
    [
        {"x": "far"},
        {"x": True},
        {"width": 0},
        {"height": -5},
        {"y": 10**9},
        {"page": None},
        {"is_maximized": 1},
        {"vessel_id": "3"},
        {"screen": 2},
    ],
)
def test_what_makes_no_sense_is_forgotten(changed):
    kept = {"x": 1, "y": 1, "width": 10, "height": 10} | changed
    assert _from_text(json.dumps(kept)) is None


@given(st.text())
def test_any_text_is_read_without_harm(text):
    assert _from_text(text) is None


def test_a_store_that_takes_nothing_is_no_trouble(kit):
    kit.path.chmod(0o400)
    path = kit.path
    kit.store.close()
    store = Store.open(path, now=kit.clock.now())
    store.is_read_only = True  # as for a user who is not root
    memory = WindowMemory(store)
    memory.keep(PLACE)
    assert memory.remembered() is None
    store.close()
    path.chmod(0o600)
