"""The window's small dialogs, through their own controls."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from brewdesk.services.records import (
    BatchStage,
    CultureOrigin,
    CultureState,
    Method,
    Quantity,
    ReadingDraft,
    StoreTrouble,
)
from brewdesk.widgets.aboutdialog import AboutDialog
from brewdesk.widgets.alreadyindialog import AlreadyInDialog
from brewdesk.widgets.cultureform import CultureDialog
from brewdesk.widgets.enddialog import EndDialog
from brewdesk.widgets.fields import choose
from brewdesk.widgets.safetydialog import SafetyDialog
from tests.helpers.pantry_desk import plan_batch, souring_batch


@pytest.fixture
def shown(qtbot):
    def show(dialog):
        qtbot.addWidget(dialog)
        dialog.open()
        dialog.grab()  # paints it: a fault in a paint event would pass unseen otherwise
        return dialog

    return show


def press(qtbot, button) -> None:
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def read_ph(desk, batch, ph: float) -> None:
    desk.readings.record(
        (
            ReadingDraft(
                batch_id=batch.id,
                at=desk.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=ph,
                sd=0.05,
            ),
        )
    )


def test_a_new_culture_is_kept_with_its_parent(desk, shown, qtbot):
    mother = shown(CultureDialog(desk))
    qtbot.keyClicks(mother.name, "Old line")
    press(qtbot, mother.save)
    daughter = shown(CultureDialog(desk))
    qtbot.keyClicks(daughter.name, "Young line")
    choose(daughter.origin, CultureOrigin.SPLIT)
    choose(daughter.parent_choice, desk.cultures.all()[0].id)
    qtbot.keyClicks(daughter.pellicle.line, "6 mm")
    with qtbot.waitSignal(daughter.saved):
        press(qtbot, daughter.save)
    old, young = desk.cultures.all()
    assert young.pellicle_mm == pytest.approx(6.0)
    assert desk.cultures.parents_of(young.id) == (old,)


@pytest.mark.parametrize(("typed", "mm"), [("6", 6.0), ("0,8 cm", 8.0), ("1/4 in", 6.35)])
def test_a_bare_thickness_is_in_millimetres(desk, shown, qtbot, typed, mm):
    dialog = shown(CultureDialog(desk))
    qtbot.keyClicks(dialog.name, "Old line")
    qtbot.keyClicks(dialog.pellicle.line, typed)
    press(qtbot, dialog.save)
    (culture,) = desk.cultures.all()
    assert culture.pellicle_mm == pytest.approx(mm)
    again = shown(CultureDialog(desk, culture))
    assert again.pellicle.line.text().endswith(" mm")


def test_a_nameless_culture_is_refused_beside_the_field_and_nothing_is_lost(desk, shown, qtbot):
    dialog = shown(CultureDialog(desk))
    qtbot.keyClicks(dialog.note, "smells of apples")
    press(qtbot, dialog.save)
    assert dialog.isVisible()
    assert dialog.rows["name"].message.is_error
    assert dialog.note.text() == "smells of apples"
    assert desk.cultures.all() == ()


def test_a_culture_is_changed_in_place(desk, shown, qtbot):
    batch = plan_batch(desk)
    culture = desk.cultures.get(batch.culture_id)
    dialog = shown(CultureDialog(desk, culture))
    assert dialog.name.text() == culture.name
    choose(dialog.state, CultureState.AT_WORK)
    press(qtbot, dialog.save)
    changed = desk.cultures.get(culture.id)
    assert changed.state is CultureState.AT_WORK
    assert changed.born_at == culture.born_at


def test_changing_a_name_touches_nothing_that_the_form_does_not_ask_for(desk, shown, qtbot):
    batch = souring_batch(desk)
    mother = desk.cultures.get(batch.culture_id)
    free = desk.vessels.get(plan_batch(desk, "Green tea 1", "Store jar").vessel_id)
    desk.batches.drop_plan(desk.batches.live_in(free.id).id)
    daughter = desk.culture_care.split(mother.id, name="Daughter", vessel_id=None)
    desk.culture_care.rest(daughter.id, free.id, 0.4)
    desk.culture_care.feed(daughter.id, 0.1, 5.0)
    desk.culture_care.lose(mother.id, "fuzzy spot")
    before = desk.cultures.get(daughter.id)
    assert before.suspect_at is not None
    desk.clock.advance(hours=3)

    dialog = shown(CultureDialog(desk, before))
    dialog.name.setText("Other name")
    press(qtbot, dialog.save)

    assert desk.cultures.get(daughter.id) == replace(before, name="Other name")


def test_a_batch_already_in_the_jar_wants_a_temperature_or_a_reason(desk, shown, qtbot):
    batch = plan_batch(desk)
    dialog = shown(AlreadyInDialog(desk, batch))
    press(qtbot, dialog.go)
    assert dialog.rows["reason"].message.is_error
    assert desk.batches.get(batch.id).stage is BatchStage.PLANNED
    qtbot.keyClicks(dialog.temperature.line, "80 °F")
    with qtbot.waitSignal(dialog.entered):
        press(qtbot, dialog.go)
    assert desk.batches.get(batch.id).stage is BatchStage.SOURING


def test_a_store_that_cannot_be_written_is_told_in_the_dialog_and_nothing_is_lost(
    desk, shown, qtbot, monkeypatch
):
    batch = plan_batch(desk)
    dialog = shown(AlreadyInDialog(desk, batch))
    qtbot.keyClicks(dialog.temperature.line, "25")

    def no_room() -> None:
        raise StoreTrouble("disk_full", "")

    monkeypatch.setattr(desk.store, "write", no_room)
    press(qtbot, dialog.go)
    assert dialog.isVisible()
    assert "disk is full" in dialog.rows["reason"].message.text()
    assert dialog.temperature.line.text() == "25"


@pytest.mark.parametrize(
    ("ph", "code"),
    [
        (None, "finished_ph_unknown"),
        (4.5, "finished_ph_high"),
        (4.18, "finished_ph_high"),  # with its doubt of 0.05 it may lie above 4.2
        (3.2, "finished_ph_within"),
        (2.4, "finished_ph_over_acid"),
    ],
)
def test_drawing_off_says_what_the_newest_ph_lets_one_do(desk, shown, qtbot, ph, code):
    batch = souring_batch(desk)
    if ph is not None:
        read_ph(desk, batch, ph)
    (jar,) = desk.shelf.jars()
    dialog = shown(EndDialog(desk, jar, discard=False))
    assert dialog.verdict.code == code
    press(qtbot, dialog.go)
    assert desk.batches.get(batch.id).stage is BatchStage.DRAWN_OFF


def test_mold_takes_the_culture_with_it_and_undo_brings_both_back(desk, shown, qtbot):
    batch = souring_batch(desk)
    (jar,) = desk.shelf.jars()
    dialog = shown(EndDialog(desk, jar, discard=True))
    choose(dialog.reason, "mold")
    press(qtbot, dialog.go)
    assert desk.batches.get(batch.id).stage is BatchStage.DISCARDED
    assert desk.cultures.get(batch.culture_id).state is CultureState.LOST
    desk.history.undo()
    assert desk.batches.get(batch.id).stage is BatchStage.SOURING
    assert desk.cultures.get(batch.culture_id).state is CultureState.AT_WORK


def test_an_accident_leaves_the_culture(desk, shown, qtbot):
    batch = souring_batch(desk)
    (jar,) = desk.shelf.jars()
    dialog = shown(EndDialog(desk, jar, discard=True))
    choose(dialog.reason, "accident")
    press(qtbot, dialog.go)
    assert desk.cultures.get(batch.culture_id).state is not CultureState.LOST


def test_discarding_presumes_no_reason(desk, shown, qtbot):
    batch = souring_batch(desk)
    (jar,) = desk.shelf.jars()
    dialog = shown(EndDialog(desk, jar, discard=True))
    press(qtbot, dialog.go)
    assert dialog.isVisible()
    assert dialog.result_words.text()
    assert desk.batches.get(batch.id).stage is BatchStage.SOURING


def test_mold_says_beforehand_what_becomes_of_the_culture(desk, shown):
    batch = souring_batch(desk)
    (jar,) = desk.shelf.jars()
    dialog = shown(EndDialog(desk, jar, discard=True))
    choose(dialog.reason, "mold")
    assert desk.cultures.get(batch.culture_id).name in dialog.result_words.text()
    choose(dialog.reason, "smell")
    assert dialog.result_words.text() == ""


@pytest.mark.parametrize(
    ("key", "typed", "kept"),
    [
        ("mold", "green fuzz", "Mold: fuzzy, dry or coloured spots – green fuzz"),
        ("other", "moved house", "moved house"),
        ("accident", "", "An accident"),
    ],
)
def test_own_words_do_not_replace_the_reason(desk, shown, qtbot, key, typed, kept):
    batch = souring_batch(desk)
    (jar,) = desk.shelf.jars()
    dialog = shown(EndDialog(desk, jar, discard=True))
    choose(dialog.reason, key)
    qtbot.keyClicks(dialog.words, typed)
    press(qtbot, dialog.go)
    assert desk.batches.get(batch.id).end_reason == kept


def test_a_batch_that_ended_meanwhile_is_told_in_the_dialog(desk, shown, qtbot):
    batch = souring_batch(desk)
    (jar,) = desk.shelf.jars()
    dialog = shown(EndDialog(desk, jar, discard=False))
    desk.batches.discard(batch.id, "mold")
    press(qtbot, dialog.go)
    assert dialog.isVisible()
    assert dialog.result_words.text()


def texts_in(dialog) -> str:
    return " ".join(label.text() for label in dialog.findChildren(QLabel))


def test_safety_page_and_about_can_be_painted_and_name_sources(desk, shown):
    safety = shown(SafetyDialog())
    assert "4.2" in texts_in(safety)
    assert "Local rules" in texts_in(safety)
    assert "Niagara Region" in texts_in(safety)
    about = shown(AboutDialog(desk))
    assert str(desk.store_path) in texts_in(about)
