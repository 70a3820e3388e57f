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

    nameless = []
    for page in pages:
        reader.find(window, "radio button", page).choose()
        until(lambda name=page: is_on_page(reader, window, name))
        nameless += [
            f"{page}: {one.role} {one.description!r}"
            for one in window.walk()
            if one.has(FOCUSABLE) and one.has(SHOWING) and not one.name
        ]

    assert nameless == []


def is_on_page(reader: ScreenReader, window: Heard, page: str) -> bool:
    assert reader.find(window, "radio button", page).has(CHECKED)
    return True
