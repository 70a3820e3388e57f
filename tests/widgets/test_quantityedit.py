"""Entry of amounts: any common unit, point or comma, what is wrong said below."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from brewdesk.services.records import Kind
from brewdesk.widgets.fields import FieldRow
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.teastrength import TeaStrengthEdit

GALLON_L = 3.785411784  # 231 cubic inches of 2.54 cm cubed: US gallon, 26 USC 5052(b)


@pytest.fixture
def volume(desk, qtbot):
    edit = QuantityEdit(desk.quantities, Kind.VOLUME, error_delay_ms=0)
    qtbot.addWidget(edit)
    edit.resize(260, 100)
    edit.show()
    return edit


def typed(qtbot, edit: QuantityEdit, text: str) -> None:
    edit.line.selectAll()
    qtbot.keyClicks(edit.line, text)


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("3.8 L", 3.8),
        ("3,8", 3.8),
        ("1 gal", GALLON_L),
        ("16 cups", GALLON_L),
        ("750 ml", 0.75),
        ("3 1/2 qt", 3.5 * GALLON_L / 4.0),
    ],
)
def test_it_takes_any_common_unit_with_point_or_comma(volume, qtbot, text, litres):
    typed(qtbot, volume, text)

    assert volume.value() == pytest.approx(litres, rel=1e-12)
    assert volume.is_valid()
    assert volume.text() == text


def test_another_unit_is_told_in_the_makers_own_and_the_makers_own_is_not_repeated(volume, qtbot):
    typed(qtbot, volume, "1 gal")
    assert volume.message.text() == "= 3.79 L"

    typed(qtbot, volume, "5 L")
    assert volume.message.text() == ""


def test_a_bare_number_is_told_with_the_unit_it_was_taken_for(volume, qtbot):
    typed(qtbot, volume, "3,8")

    assert volume.message.text() == "= 3.80 L"


@pytest.mark.parametrize("text", ["lots", "1,500", "3 bananas", "12 g", "1e999"])
def test_what_cannot_be_read_stays_typed_and_is_explained_beside_the_field(volume, qtbot, text):
    typed(qtbot, volume, text)
    qtbot.waitUntil(lambda: volume.message.is_error)

    assert volume.text() == text
    assert volume.value() is None
    assert not volume.is_valid()
    assert volume.line.property("invalid") is True
    assert volume.line.accessibleDescription() == volume.message.text()


def test_a_unit_on_the_way_to_being_typed_is_no_mistake_yet(desk, qtbot):
    edit = QuantityEdit(desk.quantities, Kind.VOLUME, error_delay_ms=60_000)
    qtbot.addWidget(edit)

    qtbot.keyClicks(edit.line, "1 ga")  # not a unit
    assert not edit.message.is_error
    qtbot.keyClicks(edit.line, "l")

    assert edit.is_valid()
    assert edit.value() == pytest.approx(GALLON_L)


def test_leaving_the_field_points_a_mistake_out_at_once(desk, qtbot):
    edit = QuantityEdit(desk.quantities, Kind.VOLUME, error_delay_ms=60_000)
    qtbot.addWidget(edit)
    qtbot.keyClicks(edit.line, "lots")
    assert not edit.message.is_error

    qtbot.keyClick(edit.line, Qt.Key.Key_Return)

    assert edit.message.is_error
    assert "lots" in edit.message.text()


def test_the_message_takes_no_new_room(volume, qtbot):
    height = volume.heightForWidth(volume.width())

    typed(qtbot, volume, "lots")
    qtbot.waitUntil(lambda: volume.message.is_error)

    assert volume.heightForWidth(volume.width()) == height


def test_each_change_of_the_amount_is_told_once(volume, qtbot):
    told = []
    volume.value_changed.connect(told.append)

    typed(qtbot, volume, "2")
    qtbot.keyClicks(volume.line, " L")  # the same amount, spelled out
    qtbot.keyClicks(volume.line, "x")

    assert told[0] == 2.0
    assert told[-1] is None
    assert told.count(2.0) == 1


def test_a_value_put_in_keeps_all_its_digits_until_something_is_typed(volume, qtbot):
    volume.set_value(GALLON_L)

    assert volume.text() == "3.79 L"
    assert volume.value() == GALLON_L
    assert not volume.is_touched()


def test_an_optional_field_may_be_empty_and_a_required_one_says_so(desk, qtbot):
    optional = QuantityEdit(desk.quantities, Kind.PH, required=False)
    required = QuantityEdit(desk.quantities, Kind.PH)
    for edit in (optional, required):
        qtbot.addWidget(edit)

    assert optional.point_out()
    assert optional.value() is None
    assert not required.point_out()
    assert required.message.is_error


def test_a_problem_found_elsewhere_stands_until_the_field_is_edited(volume, qtbot):
    typed(qtbot, volume, "5 L")
    volume.set_problem("That does not fit.")
    assert (volume.message.text(), volume.message.is_error) == ("That does not fit.", True)

    typed(qtbot, volume, "4 L")

    assert not volume.message.is_error


def test_the_label_names_the_field_for_screen_readers_and_jumps_to_it(desk, qtbot):
    edit = QuantityEdit(desk.quantities, Kind.VOLUME)
    row = FieldRow("You &fill it to", edit)
    qtbot.addWidget(row)

    assert row.label.buddy() is edit.line
    assert edit.line.accessibleName() == "You fill it to"


def test_another_unit_in_the_settings_shows_what_was_put_in_but_not_what_was_typed(volume, desk):
    volume.set_value(GALLON_L)
    desk.settings.put_unit(Kind.VOLUME, "gal")

    volume.refresh_unit()

    assert volume.text() == "1.00 gal"
    assert volume.value() == GALLON_L


@pytest.fixture
def tea(desk, qtbot):
    edit = TeaStrengthEdit(desk.quantities, 2.5)
    qtbot.addWidget(edit)
    edit.show()
    return edit


def test_tea_is_counted_in_bags_or_weighed(tea, qtbot):
    tea.set_value(5.0)
    qtbot.mouseClick(tea.units.button(True), Qt.MouseButton.LeftButton)
    assert tea.line.text() == "2 bags/L"
    assert tea.value() == 5.0

    tea.line.selectAll()
    qtbot.keyClicks(tea.line, "3 1/2 bags")
    assert tea.value() == pytest.approx(8.75)

    qtbot.mouseClick(tea.units.button(False), Qt.MouseButton.LeftButton)
    assert tea.line.text() == "8.75 g/L"


def test_grams_may_be_typed_while_bags_are_chosen(tea, qtbot):
    tea.set_in_bags(True)

    qtbot.keyClicks(tea.line, "6 g/L")

    assert tea.value() == 6.0


def test_choosing_bags_does_not_lose_what_cannot_be_read(tea, qtbot):
    qtbot.keyClicks(tea.line, "a handful")

    qtbot.mouseClick(tea.units.button(True), Qt.MouseButton.LeftButton)

    assert tea.line.text() == "a handful"
    assert not tea.is_valid()


def test_a_field_never_names_one_unit_and_reads_in_another(desk, qtbot):
    """ "40" typed for hot tea under a stale "°C" would be read as 40 °F, and pass for cool."""
    edit = QuantityEdit(desk.quantities, Kind.TEMPERATURE, required=False)
    qtbot.addWidget(edit)
    edit.show()
    assert edit.line.placeholderText() == "°C"
    edit.hide()
    desk.settings.put_unit(Kind.TEMPERATURE, "°F")
    edit.show()
    assert edit.line.placeholderText() == "°F"
    desk.settings.put_unit(Kind.TEMPERATURE, "°C")
    edit.line.clearFocus()
    edit.activateWindow()
    edit.line.setFocus()
    qtbot.keyClicks(edit.line, "40")
    assert edit.line.placeholderText() == "°C"
    assert edit.value() == pytest.approx(40.0)
