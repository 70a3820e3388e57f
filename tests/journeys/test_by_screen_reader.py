"""The main job done by ear alone: through the accessibility bus, as a screen reader does it."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from brewdesk.store.store import Store
from culturecore.stages import BatchStage, Quantity
from tests.helpers.bus import PrivateBus
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import open_desk, plan_batch, souring_batch
from tests.helpers.screen_reader import (
    CHECKED,
    FOCUSABLE,
    SHOWING,
    AccessibilityBus,
    Heard,
    ScreenReader,
    until,
)

pytestmark = [pytest.mark.screen, pytest.mark.bus]

END_WITHIN_S = 20.0
STEPS = 8  # of a run sheet for starter liquid only


@pytest.fixture
def reader(tmp_path: Path) -> Iterator[ScreenReader]:
    session = PrivateBus(tmp_path)
    session.start()
    accessibility = AccessibilityBus(session.address, tmp_path)
    made = ScreenReader(accessibility.start())
    program = subprocess.Popen(
        [sys.executable, "-m", "brewdesk", "--store", str(tmp_path / "pantry.sqlite")],
        env={
            **os.environ,
            "DBUS_SESSION_BUS_ADDRESS": session.address,
            "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1",
            "XDG_DATA_HOME": str(tmp_path / "data"),
            "XDG_CACHE_HOME": str(tmp_path / "cache"),
            "LC_ALL": "C.UTF-8",
        },
    )
    yield made
    program.terminate()
    program.wait(END_WITHIN_S)
    made.close()
    accessibility.stop()
    session.stop()


@pytest.fixture
def shelf_at_work(tmp_path: Path) -> None:
    """A pantry as it lies on the disk before the program starts: one souring jar, one empty."""
    desk = open_desk(tmp_path, FakeClock(datetime.now(UTC)))
    souring_batch(desk, "Black tea 1", "Tall jar")
    plan = plan_batch(desk, "Green tea 1", "Short jar")
    desk.batches.drop_plan(plan.id)
    desk.jobs.shutdown()
    desk.store.close()


def kept(folder: Path, look):
    """Look into the store as it lies on the disk, beside the running program."""
    store = Store.open(folder / "pantry.sqlite", now=datetime.now(UTC))
    try:
        with store.read() as unit:
            return look(unit)
    finally:
        store.close()


def put_up_a_jar(reader: ScreenReader, window: Heard) -> None:
    reader.find(window, "push button", "Add your first vessel").press()
    form = reader.find(window, "dialog", "Add a vessel")
    reader.find(form, "text", "Name").write("Tall jar")
    reader.find(form, "text", "Holds up to the brim").write("3,8")
    reader.find(form, "text", "Inner diameter").write("15 cm")
    reader.find(form, "push button", "Save vessel").press()


def follow_the_run_sheet(reader: ScreenReader, window: Heard) -> None:
    for number in range(1, STEPS + 1):
        step = reader.find(window, "panel", f"Step {number}: ")
        done = reader.find(step, "push button", "Done")
        for field in step.walk():
            if field.role == "text" and field.has(SHOWING):
                assert field.name == "Temperature of the sweet tea"
                field.write("24")
        done.press()
        until(lambda n=number: said_to_be_done(reader, window, n))


def said_to_be_done(reader: ScreenReader, window: Heard, number: int) -> bool:
    if number == STEPS:
        return bool(reader.find(window, "push button", "Add a reading"))
    assert reader.find(window, "panel", f"Step {number}: ").name.endswith("Done")
    return True


def test_a_jar_is_brewed_and_read_without_looking_at_it(reader, tmp_path):
    window = reader.application("brewdesk")
    put_up_a_jar(reader, window)
    jar = reader.find(window, "list item", "Tall jar")
    assert jar.name == "Tall jar, Empty · 3.42 L, Ready for a batch."

    reader.find(window, "push button", "Plan a batch").press()
    until(lambda: reader.find(window, "label", "In the vessel: "))
    reader.find(window, "push button", "Plan and start brewing").press()
    follow_the_run_sheet(reader, window)
    (batch,) = kept(tmp_path, lambda unit: unit.batches.where())
    assert batch.stage is BatchStage.SOURING

    reader.find(window, "push button", "Add a reading").press()
    reader.find(window, "text", "pH").write("3,9")
    reader.find(window, "push button", "Save the readings").press()

    jar = until(lambda: reader.find(window, "list item", "Tall jar, Black tea 1, Day 0 · pH 3.9"))
    assert "Look for mold" in jar.name
    (reading,) = kept(tmp_path, lambda unit: unit.readings.where(quantity=Quantity.PH))
    assert reading.value == pytest.approx(3.9)

    reader.find(window, "push button", "Undo: pH 3.9").press()
    until(lambda: reader.find(window, "list item", "Tall jar, Black tea 1, Day 0 · pH about"))
    assert kept(tmp_path, lambda unit: unit.readings.where(quantity=Quantity.PH)) == ()


def test_a_culture_is_looked_at_and_split_without_seeing_it(shelf_at_work, reader, tmp_path):
    window = reader.application("brewdesk")
    reader.find(window, "list item", "Tall jar")
    go_to(reader, window, "Cultures")
    mother = reader.find(window, "list item", "Culture of Tall jar")
    assert "At work in Tall jar" in mother.name

    reader.find(window, "push button", "Look for mold").press()
    form = reader.find(window, "dialog", "Look for mold")
    strings = reader.find(form, "check box", "Brown strings hanging")
    assert strings.description.startswith("Yeast")
    strings.choose()
    until(lambda: reader.find(form, "label", "Nothing suspicious seen."))
    reader.find(form, "push button", "Record this look").press()
    look = until(lambda: kept(tmp_path, lambda unit: unit.care.where())[-1])
    assert look.text == "Brown strings hanging"

    reader.find(window, "push button", "Split").press()
    form = reader.find(window, "dialog", "Split Culture of Tall jar")
    reader.find(form, "text", "Name of the daughter").write("Daughter")
    reader.find(form, "push button", "Split it").press()

    until(lambda: reader.find(window, "list item", "Daughter"))
    names = kept(tmp_path, lambda unit: [row.name for row in unit.cultures.where()])
    assert "Daughter" in names
    reader.find(window, "push button", "Undo: Daughter").press()
    until(lambda: missing(reader, window, "list item", "Daughter"))


def test_a_batch_is_carried_to_another_jar_without_seeing_it(shelf_at_work, reader, tmp_path):
    window = reader.application("brewdesk")
    reader.find(window, "list item", "Tall jar")
    reader.find(window, "menu item", "Jar").open()
    reader.find(window, "menu item", "Pour over into another vessel").press()
    form = reader.find(window, "dialog", "Pour Black tea 1 over")
    reader.find(form, "push button", "Pour Black tea 1 over").press()

    jar = until(lambda: reader.find(window, "list item", "Short jar, Black tea 1"))
    assert jar.name
    vessels = kept(tmp_path, lambda unit: {row.id: row.name for row in unit.vessels.where()})
    (batch,) = kept(tmp_path, lambda unit: unit.batches.where())
    assert vessels[batch.vessel_id] == "Short jar"
    reader.find(window, "push button", "Undo: Black tea 1").press()
    until(lambda: reader.find(window, "list item", "Tall jar, Black tea 1"))


def missing(reader: ScreenReader, window: Heard, role: str, name: str) -> bool:
    there = [one for one in window.walk() if one.role == role and one.has(SHOWING)]
    assert not any(one.name.startswith(name) for one in there)
    return True


def test_what_is_wrong_is_said_and_what_was_typed_stays(reader, tmp_path):
    window = reader.application("brewdesk")
    reader.find(window, "push button", "Add your first vessel").press()
    form = reader.find(window, "dialog", "Add a vessel")
    name = reader.find(form, "text", "Name")
    name.write("Crock")
    brim = reader.find(form, "text", "Holds up to the brim")
    brim.write("three pots")

    reader.find(form, "push button", "Save vessel").press()

    said = "There is no number in “three pots”."
    until(lambda: reader.find(form, "label", said))
    assert brim.description.startswith(said)
    assert (name.text, brim.text) == ("Crock", "three pots")
    assert kept(tmp_path, lambda unit: unit.vessels.where()) == ()


def test_nothing_on_any_page_that_takes_the_focus_is_without_a_name(reader):
    window = reader.application("brewdesk")
    put_up_a_jar(reader, window)
    reader.find(window, "list item", "Tall jar")
    pages = [one.name for one in window.walk() if one.role == "radio button" and one.has(SHOWING)]
    assert len(pages) >= 6

    nameless, heard = [], set()
    for page in pages:
        go_to(reader, window, page)
        focusable = [one for one in window.walk() if one.has(FOCUSABLE) and one.has(SHOWING)]
        names = {one: one.name for one in focusable}
        heard.add(frozenset(names.values()))
        nameless += [
            f"{page}: {one.role} {one.description!r} among {[c.name for c in one.children()]}"
            for one, name in names.items()
            if not name
        ]

    assert nameless == []
    assert len(heard) == len(pages)  # each page was really on show


def go_to(reader: ScreenReader, window: Heard, page: str) -> None:
    reader.find(window, "radio button", page).choose()
    until(lambda: is_on_page(reader, window, page))


def is_on_page(reader: ScreenReader, window: Heard, page: str) -> bool:
    assert reader.find(window, "radio button", page).has(CHECKED)
    return True
