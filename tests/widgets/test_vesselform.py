"""Adding and changing a vessel through its form."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import Qt

from brewdesk.services.records import Level, Material, VesselShape
from brewdesk.widgets.fields import choose
from brewdesk.widgets.jarpreview import filled_height_cm
from brewdesk.widgets.vesselform import VesselDialog, guessed_diameter_cm
from culturecore.vessels import liquid_height_cm

GALLON_L = 3.785411784


@pytest.fixture
def form(desk, qtbot):
    dialog = VesselDialog(desk)
    qtbot.addWidget(dialog)
    dialog.open()
    yield dialog
    dialog.close()


def fill(qtbot, form, name, brim):
    form.name.setFocus()
    qtbot.keyClicks(form.name, name)
    qtbot.keyClick(form.name, Qt.Key.Key_Tab)
    qtbot.keyClicks(form.brim.line, brim)


def test_a_name_and_a_volume_and_enter_are_enough(desk, form, qtbot):
    fill(qtbot, form, "Tall jar", "1 gal")
    with qtbot.waitSignal(form.saved) as saved:
        qtbot.keyClick(form.brim.line, Qt.Key.Key_Return)

    (vessel,) = desk.vessels.all()
    assert saved.args == [vessel.id]
    assert vessel.name == "Tall jar"
    assert vessel.brim_volume_l == pytest.approx(GALLON_L)
    assert vessel.working_volume_l == pytest.approx(0.9 * GALLON_L)
    assert vessel.material is Material.GLASS
    assert vessel.shape is VesselShape.CYLINDER
    assert not form.isVisible()


def test_the_guessed_diameter_gives_a_jar_of_the_volume_and_the_usual_proportions():
    diameter_cm = guessed_diameter_cm(4.0)

    height_cm = 1.4 * diameter_cm
    assert math.pi / 4.0 * diameter_cm**2 * height_cm == pytest.approx(4000.0)


def test_guesses_follow_the_volume_until_they_are_typed_over(form, qtbot):
    fill(qtbot, form, "Jar", "4 L")
    form.working.line.selectAll()
    qtbot.keyClicks(form.working.line, "3,5")
    form.brim.line.selectAll()
    qtbot.keyClicks(form.brim.line, "5 L")

    assert form.working.value() == 3.5
    assert form.working.text() == "3,5"
    assert form.diameter.value() == pytest.approx(guessed_diameter_cm(5.0))


def test_nothing_is_kept_without_a_name_and_the_field_says_so(desk, form, qtbot):
    fill(qtbot, form, "  ", "4 L")

    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)

    assert desk.vessels.all() == ()
    assert form.rows["name"].message.is_error
    assert form.isVisible()
    assert form.brim.text() == "4 L"


def test_what_cannot_be_read_is_not_kept_and_stays_as_typed(desk, form, qtbot):
    fill(qtbot, form, "Jar", "as much as fits")

    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)

    assert desk.vessels.all() == ()
    assert form.brim.text() == "as much as fits"
    assert form.brim.message.is_error


def test_more_than_the_brim_is_refused_beside_its_field(desk, form, qtbot):
    fill(qtbot, form, "Jar", "4 L")
    form.working.line.selectAll()
    qtbot.keyClicks(form.working.line, "5 L")

    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)

    assert desk.vessels.all() == ()
    assert form.working.message.is_error
    assert "4.00 L" in form.working.message.text()
    assert not form.brim.message.is_error


def test_a_name_that_is_taken_is_refused_beside_the_name(desk, form, qtbot):
    fill(qtbot, form, "Jar", "4 L")
    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)
    second = VesselDialog(desk)
    qtbot.addWidget(second)
    second.open()
    fill(qtbot, second, "jar", "3 L")

    qtbot.mouseClick(second.save, Qt.MouseButton.LeftButton)

    assert len(desk.vessels.all()) == 1
    assert second.rows["name"].message.is_error
    second.close()


def test_the_material_is_judged_at_once_with_word_reason_and_what_to_do(form):
    choose(form.material, Material.LEAD_CRYSTAL)
    (card,) = form.cards
    assert card.verdict.level is Level.STOP
    assert card.text.startswith("Stop: ")
    assert "lead" in card.text

    choose(form.material, Material.GLASS)
    (card,) = form.cards
    assert card.verdict.level is Level.INFORM


def test_odd_proportions_are_remarked_on(form, qtbot):
    fill(qtbot, form, "Jar", "4 L")
    form.diameter.line.selectAll()
    qtbot.keyClicks(form.diameter.line, "9 cm")

    codes = [card.verdict.code for card in form.cards]

    assert "vessel_proportions_unusual" in codes


@pytest.mark.parametrize("shape", list(VesselShape))
def test_the_drawing_is_true_to_the_figures(desk, form, qtbot, shape):
    fill(qtbot, form, "Jar", "4 L")
    qtbot.mouseClick(form.shape.buttons[shape], Qt.MouseButton.LeftButton)
    look = form.preview.look

    assert form.shape.value() is shape
    assert 2.0 * max(radius for _, radius in look.profile) == pytest.approx(form.diameter.value())
    # The core fills the same outline in closed form; the drawing halves its way there.
    expected_cm = liquid_height_cm(shape, form.diameter.value(), 4.0, form.working.value())
    assert look.planned_height_cm == pytest.approx(expected_cm, abs=0.02)


def test_a_cube_of_a_litre_stands_ten_centimetres_high():
    radius_cm = math.sqrt(100.0 / math.pi)  # a round vessel with the foot of a 10 cm cube

    assert filled_height_cm(((0.0, radius_cm), (30.0, radius_cm)), 1.0) == pytest.approx(
        10.0, abs=0.01
    )


def test_a_vessel_is_changed_and_the_change_can_be_undone(desk, form, qtbot):
    fill(qtbot, form, "Jar", "4 L")
    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)
    (vessel,) = desk.vessels.all()
    edit = VesselDialog(desk, vessel)
    qtbot.addWidget(edit)
    edit.open()
    edit.name.selectAll()
    qtbot.keyClicks(edit.name, "Window jar")
    qtbot.mouseClick(edit.shape.buttons[VesselShape.TAPERED], Qt.MouseButton.LeftButton)
    qtbot.mouseClick(edit.save, Qt.MouseButton.LeftButton)

    (changed,) = desk.vessels.all()
    assert (changed.id, changed.name) == (vessel.id, "Window jar")
    assert changed.shape is VesselShape.TAPERED
    assert changed.brim_volume_l == vessel.brim_volume_l  # shown rounded, kept whole

    desk.history.undo()
    assert desk.vessels.all() == (vessel,)


def test_changing_the_brim_of_a_known_vessel_leaves_its_other_figures(desk, form, qtbot):
    fill(qtbot, form, "Jar", "4 L")
    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)
    (vessel,) = desk.vessels.all()
    edit = VesselDialog(desk, vessel)
    qtbot.addWidget(edit)

    edit.brim.line.selectAll()
    qtbot.keyClicks(edit.brim.line, "5 L")

    assert edit.working.value() == vessel.working_volume_l
    assert edit.diameter.value() == vessel.inner_diameter_cm


def test_escape_keeps_nothing(desk, form, qtbot):
    fill(qtbot, form, "Jar", "4 L")

    qtbot.keyClick(form, Qt.Key.Key_Escape)

    assert not form.isVisible()
    assert desk.vessels.all() == ()


def test_markup_in_a_name_is_shown_as_it_was_typed(desk, form, qtbot):
    fill(qtbot, form, "<b>Jar</b> & co", "4 L")
    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)

    (vessel,) = desk.vessels.all()
    assert vessel.name == "<b>Jar</b> & co"


def test_every_control_has_a_name_for_a_screen_reader(form):
    nameless = [
        control.objectName() or type(control).__name__
        for control in (
            form.name,
            form.brim.line,
            form.working.line,
            form.diameter.line,
            form.material,
            form.place,
            *form.shape.buttons.values(),
            form.preview,
        )
        if not control.accessibleName()
    ]
    assert nameless == []


def test_a_refused_vessel_leaves_no_place_behind(desk, form, qtbot):
    fill(qtbot, form, "Jar", "4 L")
    form.working.line.selectAll()
    qtbot.keyClicks(form.working.line, "9 L")
    form.save.click()
    assert form.rows["working_volume_l"].message.is_error
    assert desk.vessels.places() == ()


def test_an_unreadable_volume_does_not_blame_the_diameter_that_follows_from_it(form, qtbot):
    fill(qtbot, form, "Jar", "lots")
    form.save.click()
    assert form.rows["brim_volume_l"].message.is_error
    assert not form.rows["inner_diameter_cm"].message.is_error
