"""What is done at one desk is seen at the other within a second, and is not done over."""

from __future__ import annotations

from tests.helpers.pantry_desk import plan_batch


def names(program):
    return [jar.vessel.name for jar in program.desk.shelf.jars()]


def test_a_jar_appears_at_the_other_desk(shared, anna, ben):
    plan_batch(anna.desk, vessel="Invented crock")

    shared.soon(lambda: ben.window.shelf.view.model().rowCount() == 1)
    assert names(ben) == ["Invented crock"]
