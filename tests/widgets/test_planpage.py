"""The plan page: from a wish to a batch, with amounts that follow every key."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea

from brewdesk.services.amounts import Part, amount_rows
from brewdesk.services.records import (
    BatchStage,
    CultureDraft,
    CultureOrigin,
    CultureState,
    Kind,
    Level,
    Material,
    Starter,
    StarterTaste,
    TeaKind,
    VesselDraft,
    VesselShape,
    Wish,
)
from brewdesk.widgets.fields import choose
from brewdesk.widgets.planpage import PlanPage
from culturecore.sweettea import plan as reckon
from tests.helpers.worn_theme import worn_theme


def vessel(desk, name="Tall jar", working_l=4.0, **fields):
    draft = {
        "name": name,
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": working_l / 0.9,
        "working_volume_l": working_l,
        "inner_diameter_cm": 16.0,
        "place_id": desk.vessels.ensure_place().id,
    }
    return desk.vessels.add(VesselDraft(**(draft | fields)))


def culture(desk, name="Old Faithful", **fields):
    draft = {
        "name": name,
        "origin": CultureOrigin.GIFT,
        "state": CultureState.RESTING,
        "born_at": desk.clock.now(),
    }
    return desk.cultures.add(CultureDraft(**(draft | fields)))


@pytest.fixture
def show(desk, qtbot):
    """Open the page on what the test has put into the pantry."""
    made = []

    def opened() -> PlanPage:
        page = PlanPage(desk, replan_delay_ms=0)
        qtbot.addWidget(page)
        page.resize(1190, 752)
        page.show()
        made.append(page)
        return page

    yield opened
    for page in made:
        page.close()


def enter(qtbot, edit, text):
    edit.line.setFocus()
    edit.line.selectAll()
    qtbot.keyClicks(edit.line, text)


def field(page, name):
    return page.form.rows[name].editor


def shown_grams(page, part):
    return float(page.amounts.table.text(part, 1).replace("−", "-"))


def press(qtbot, button):
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


# from nothing to a batch


def test_from_an_empty_pantry_a_newcomer_has_a_plan_in_a_handful_of_acts(desk, show, qtbot):
    page = show()
    assert page.welcome.isVisible()
    assert not page.plan_button.isEnabled()

    acts = 0
    press(qtbot, page.first_vessel)
    acts += 1
    dialog = page.findChild(type(page._dialog))
    qtbot.keyClicks(dialog.name, "Tall jar")
    acts += 1
    dialog.brim.line.setFocus()
    qtbot.keyClicks(dialog.brim.line, "1 gal")
    acts += 1
    qtbot.keyClick(dialog.brim.line, Qt.Key.Key_Return)
    acts += 1
    with qtbot.waitSignal(page.start_wanted) as wanted:
        press(qtbot, page.start_button)
    acts += 1

    (batch,) = desk.batches.all()
    assert wanted.args == [batch.id]
    assert batch.stage is BatchStage.PLANNED
    assert batch.fill_volume_l == pytest.approx(0.9 * 3.785411784)
    assert acts <= 10  # the way to this page and the start of brewing take two more at most


def test_plan_it_tells_which_batch_was_planned_and_makes_room_for_the_next(desk, show, qtbot):
    vessel(desk)
    page = show()

    with qtbot.waitSignal(page.planned) as planned:
        press(qtbot, page.plan_button)

    (batch,) = desk.batches.all()
    assert planned.args == [batch.id]
    assert page.form.vessel_id() is None
    assert not page.plan_button.isEnabled()
    assert "in use" in page.form.rows["vessel_id"].message.text()


def test_planning_is_one_step_back(desk, show, qtbot):
    vessel(desk)
    page = show()
    press(qtbot, page.plan_button)

    desk.history.undo()

    assert desk.batches.all() == ()
    assert page.plan_button.isEnabled()


# the amounts


def test_the_amounts_are_those_of_the_core_and_follow_every_entry(desk, show, qtbot):
    jar = vessel(desk)
    page = show()
    enter(qtbot, field(page, "sugar_g_per_l"), "70 g/L")
    qtbot.waitUntil(lambda: shown_grams(page, Part.SUGAR) > 200.0)

    expected = reckon(replace(desk.batches.default_wish(jar.id), sugar_g_per_l=70.0))
    assert shown_grams(page, Part.SUGAR) == round(expected.sugar_g)
    assert shown_grams(page, Part.TOTAL) == round(expected.blend_mass_g)


@pytest.mark.parametrize("fill_volume_l", [0.3, 1.0, 3.8, 19.0, 400.0])
@pytest.mark.parametrize("sugar_g_per_l", [5.0, 50.0, 120.0])
def test_the_rows_add_up_to_the_total_to_the_gram_and_millilitre(fill_volume_l, sugar_g_per_l):
    wish = Wish(fill_volume_l=fill_volume_l, sugar_g_per_l=sugar_g_per_l, tea_g_per_l=6.3)
    plan = reckon(wish)
    *parts, total = amount_rows(plan, wish)

    assert sum(row.mass_g for row in parts) == pytest.approx(total.mass_g, abs=1e-6)
    assert sum(row.volume_ml or 0 for row in parts) == total.volume_ml
    assert total.volume_ml == round(fill_volume_l * 1000.0)
    by_part = {row.part: row for row in parts}
    # the row that takes up the rounding is off by no more than the others can have been rounded
    assert by_part[Part.COLD_WATER].mass_g == pytest.approx(plan.cold_water_g, abs=2.5)


def test_dissolved_sugar_takes_the_volume_that_sucrose_takes():
    # 0.61 to 0.64 mL/g: sucrose in dilute solution (1/density of water times apparent molar
    # volume 211 mL/mol over 342.3 g/mol, from memory).
    wish = Wish(fill_volume_l=10.0, sugar_g_per_l=60.0)
    sugar = next(row for row in amount_rows(reckon(wish), wish) if row.part is Part.SUGAR)

    assert 0.60 < sugar.volume_ml / sugar.mass_g < 0.64


def test_the_table_on_the_page_adds_up_as_shown(desk, show):
    vessel(desk)
    page = show()
    for column in (1, 2):
        shown = {
            part: float(page.amounts.table.text(part, column).replace("−", "-") or "0")
            for part in Part
        }
        total = shown.pop(Part.TOTAL)
        assert sum(shown.values()) == pytest.approx(total, abs=1e-6)


def test_tea_is_shown_in_whole_bags_and_sugar_in_kitchen_measures(desk, show):
    vessel(desk)
    page = show()

    assert page.amounts.table.text(Part.TEA, 4).endswith("bags")
    assert "cup" in page.amounts.table.text(Part.SUGAR, 4)


def test_the_start_ph_is_told_as_an_estimate_with_its_range_in_words(desk, show):
    jar = vessel(desk)
    page = show()
    estimate = reckon(desk.batches.default_wish(jar.id)).start_ph

    words = page.amounts.ph_words.text()

    assert f"{estimate.low:.2f}" in words
    assert f"{estimate.high:.2f}" in words
    assert "estimate" in words
    assert page.amounts.scale.accessibleName() == words


# what goes wrong


def test_what_no_jar_can_hold_is_said_beside_its_field_and_nothing_typed_is_lost(desk, show, qtbot):
    vessel(desk)
    page = show()
    enter(qtbot, field(page, "sugar_g_per_l"), "900 g/L")
    qtbot.waitUntil(lambda: field(page, "sugar_g_per_l").message.is_error)

    press(qtbot, page.plan_button)

    assert desk.batches.all() == ()
    assert field(page, "sugar_g_per_l").text() == "900 g/L"
    assert field(page, "sugar_g_per_l").message.is_error
    assert not field(page, "fill_volume_l").message.is_error
    assert page.amounts.state.text()


def test_more_than_the_vessel_holds_is_refused_beside_the_fill(desk, show, qtbot):
    vessel(desk)
    page = show()
    enter(qtbot, field(page, "fill_volume_l"), "9 L")

    press(qtbot, page.plan_button)

    assert desk.batches.all() == ()
    assert field(page, "fill_volume_l").message.is_error


def test_an_unreadable_entry_stops_the_plan_and_takes_the_keyboard(desk, show, qtbot):
    vessel(desk)
    page = show()
    enter(qtbot, field(page, "fill_volume_l"), "a lot")
    page.form.name.setFocus()

    press(qtbot, page.plan_button)

    assert desk.batches.all() == ()
    assert field(page, "fill_volume_l").text() == "a lot"
    assert field(page, "fill_volume_l").message.is_error
    assert page.form.focusWidget() is field(page, "fill_volume_l").line


def test_a_problem_in_the_exact_part_opens_it(desk, show, qtbot):
    vessel(desk)
    page = show()
    page.form.exact.set_open(True)
    enter(qtbot, field(page, "cold_water_c"), "95 °C")
    page.form.exact.set_open(False)

    page._say_beside(_impossible(desk, page), go_there=True)

    assert page.form.exact.is_open()
    assert field(page, "cold_water_c").message.is_error


def _impossible(desk, page):
    from brewdesk.services.records import ImpossibleInput

    with pytest.raises(ImpossibleInput) as caught:
        desk.batches.plan_preview(page.form.wish())
    return caught.value


def test_a_batch_without_a_name_is_not_planned(desk, show, qtbot):
    vessel(desk)
    page = show()
    page.form.name.selectAll()
    qtbot.keyClick(page.form.name, Qt.Key.Key_Delete)

    press(qtbot, page.plan_button)

    assert desk.batches.all() == ()
    assert page.form.rows["name"].message.is_error


def test_a_vessel_of_poisonous_material_is_refused_beside_the_vessel(desk, show, qtbot):
    vessel(desk, material=Material.LEAD_CRYSTAL)
    page = show()

    press(qtbot, page.plan_button)

    assert desk.batches.all() == ()
    assert page.form.rows["vessel_id"].message.is_error


def test_a_weak_starter_brings_a_warning_with_reason_and_what_to_do(desk, show):
    vessel(desk)
    page = show()
    choose(page.form.taste, StarterTaste.SWEET)
    page._show_amounts()

    warnings = [card for card in page.amounts.cards if card.verdict.level is Level.WARN]

    assert "cannot_reach_target" in [card.verdict.code for card in warnings]
    assert all(card.text.startswith("Careful: ") for card in warnings)
    assert all(len(card.findChildren(QLabel)) >= 2 for card in warnings)


# what is filled in


def test_a_new_plan_begins_as_the_last_one_was_made(desk, show):
    first, second = vessel(desk, "Tall jar"), vessel(desk, "Crock", 8.0)
    wish = replace(
        desk.batches.default_wish(first.id),
        sugar_g_per_l=62.0,
        tea_kind=TeaKind.GREEN,
        starter=Starter(ph=3.0, ta_g_per_l=5.5, taste=StarterTaste.SOUR),
        cold_water_c=12.0,
    )
    desk.batches.plan(first.id, None, "Green tea 1", wish)

    page = show()

    assert page.form.vessel_id() == second.id
    planned = page.form.wish()
    assert (planned.sugar_g_per_l, planned.tea_kind) == (62.0, TeaKind.GREEN)
    assert planned.starter == wish.starter
    assert planned.cold_water_c == 12.0
    assert planned.fill_volume_l == 8.0  # the vessel's own
    assert page.form.batch_name() == "Green tea 2"


def test_only_free_vessels_are_offered(desk, show):
    taken, free = vessel(desk, "Tall jar"), vessel(desk, "Crock")
    desk.batches.plan(taken.id, None, "Black tea 1", desk.batches.default_wish(taken.id))

    page = show()

    offered = [page.form.vessel.itemData(i) for i in range(page.form.vessel.count())]
    assert offered == [free.id]


def test_the_culture_that_rests_in_the_vessel_is_chosen(desk, show):
    culture(desk, "Elsewhere")
    jar = vessel(desk)
    here = culture(desk, "In the jar", vessel_id=jar.id)

    page = show()

    assert page.form.culture_id() == here.id


def test_a_culture_that_is_planned_elsewhere_is_warned_of_and_can_be_planned_all_the_same(
    desk, show, qtbot
):
    busy = culture(desk, "Busy")
    taken, _free = vessel(desk, "Tall jar"), vessel(desk, "Crock")
    desk.batches.plan(taken.id, busy.id, "Black tea 1", desk.batches.default_wish(taken.id))
    page = show()
    page.form.culture.choose(busy.id)

    assert "planned for another vessel" in page.form.culture.row.message.text()
    assert not page.form.culture.row.message.is_error
    press(qtbot, page.plan_button)
    assert [batch.culture_id for batch in desk.batches.all()] == [busy.id, busy.id]


def test_changing_a_plan_does_not_warn_of_itself(desk, show):
    busy = culture(desk, "Busy")
    jar = vessel(desk, "Tall jar")
    wish = desk.batches.default_wish(jar.id)
    batch = desk.batches.plan(jar.id, busy.id, "Black tea 1", wish)
    page = show()
    page.edit_plan(batch.id)
    assert page.form.culture_id() == busy.id
    assert page.form.culture.row.message.text() == ""


def test_what_is_forming_or_doubtful_is_not_suggested(desk, show):
    mother = culture(desk, "Mother")
    desk.clock.advance(minutes=1)
    desk.culture_care.split(mother.id, name="Daughter", vessel_id=None)
    desk.culture_care.lose(mother.id, "mold")
    seed = vessel(desk, "Seed jar")
    desk.growing.start(seed.id, name="Sprout", wish=desk.growing.default_wish(seed.id))
    vessel(desk, "Crock")

    page = show()

    words = [page.form.culture.combo.itemText(i) for i in range(page.form.culture.combo.count())]
    assert page.form.culture_id() is None
    assert not any("Sprout" in text for text in words)
    assert any("Daughter" in text and "may carry mold" in text for text in words)


def test_another_vessel_brings_its_own_volume_but_leaves_what_was_typed(desk, show, qtbot):
    vessel(desk, "Tall jar", 4.0)
    crock = vessel(desk, "Crock", 8.0)
    page = show()
    enter(qtbot, field(page, "sugar_g_per_l"), "65")

    choose(page.form.vessel, crock.id)

    assert field(page, "fill_volume_l").value() == 8.0
    assert field(page, "sugar_g_per_l").text() == "65"


def test_a_vessel_changed_elsewhere_brings_its_new_volume_unless_a_fill_was_typed(
    desk, show, qtbot
):
    jar = vessel(desk, working_l=4.0)
    page = show()
    desk.vessels.edit(jar.id, working_volume_l=3.0)
    assert field(page, "fill_volume_l").value() == 3.0
    assert page.form.wish().working_volume_l == 3.0

    enter(qtbot, field(page, "fill_volume_l"), "3.2 L")
    desk.vessels.edit(jar.id, working_volume_l=3.5)

    assert field(page, "fill_volume_l").text() == "3.2 L"
    assert page.form.wish().working_volume_l == 3.5


def test_figures_of_an_older_wish_are_dimmed_and_said_to_be_so(desk, show, qtbot):
    vessel(desk)
    page = show()
    sugar = page.amounts.table.text(Part.SUGAR, 1)
    enter(qtbot, field(page, "fill_volume_l"), "4 L and a bit")
    qtbot.waitUntil(lambda: bool(page.amounts.state.text()))
    assert page.amounts.table.text(Part.SUGAR, 1) == sugar
    assert page.amounts._dimmer.isEnabled()

    enter(qtbot, field(page, "fill_volume_l"), "2 L")
    qtbot.waitUntil(lambda: not page.amounts.state.text())

    assert page.amounts.table.text(Part.SUGAR, 1) != sugar
    assert not page.amounts._dimmer.isEnabled()


def test_a_vessel_added_elsewhere_is_offered_and_nothing_typed_is_lost(desk, show, qtbot):
    vessel(desk)
    page = show()
    enter(qtbot, field(page, "sugar_g_per_l"), "6x")

    vessel(desk, "Crock")

    assert page.form.vessel.count() == 2
    assert field(page, "sugar_g_per_l").text() == "6x"


def test_a_hidden_page_catches_up_when_it_is_shown(desk, show):
    vessel(desk)
    page = show()
    page.hide()
    vessel(desk, "Crock")
    assert page.form.vessel.count() == 1

    page.show()

    assert page.form.vessel.count() == 2


def test_a_new_culture_takes_a_name_and_enter(desk, show, qtbot):
    vessel(desk)
    page = show()
    press(qtbot, page.form.culture.new)
    qtbot.keyClicks(page.form.culture.name, "From a neighbour")
    qtbot.keyClick(page.form.culture.name, Qt.Key.Key_Return)

    (made,) = desk.cultures.all()
    assert made.name == "From a neighbour"
    assert made.origin is CultureOrigin.GIFT
    assert page.form.culture_id() == made.id
    assert not page.form.culture.form.isVisible()


def test_starter_liquid_alone_is_a_choice(desk, show, qtbot):
    vessel(desk)
    culture(desk)
    page = show()
    page.form.culture.combo.setCurrentIndex(page.form.culture.combo.count() - 1)

    press(qtbot, page.plan_button)

    assert desk.batches.all()[0].culture_id is None


# what was planned before


def test_a_plan_is_taken_up_again_and_changed(desk, show, qtbot):
    jar = vessel(desk)
    batch = desk.batches.plan(jar.id, None, "Monday jar", desk.batches.default_wish(jar.id))
    page = show()
    page.edit_plan(batch.id)
    assert page.form.batch_name() == "Monday jar"
    assert page.form.vessel_id() == jar.id

    enter(qtbot, field(page, "sugar_g_per_l"), "58")
    with qtbot.waitSignal(page.planned) as planned:
        press(qtbot, page.plan_button)

    assert planned.args == [batch.id]
    changed = desk.batches.get(batch.id)
    assert changed.sugar_g_per_l == 58.0
    assert len(desk.batches.all()) == 1
    assert page.form.editing() is None


def test_leaving_a_plan_keeps_it_as_it_was(desk, show, qtbot):
    jar = vessel(desk)
    batch = desk.batches.plan(jar.id, None, "Monday jar", desk.batches.default_wish(jar.id))
    page = show()
    page.edit_plan(batch.id)
    enter(qtbot, field(page, "sugar_g_per_l"), "58")

    press(qtbot, page.new_button)

    assert desk.batches.get(batch.id) == batch
    assert page.form.editing() is None


def test_the_plan_is_asked_for_by_vessel(desk, show):
    vessel(desk, "Tall jar")
    crock = vessel(desk, "Crock")
    page = show()

    page.set_vessel(crock.id)

    assert page.form.vessel_id() == crock.id


# the page itself


def test_units_follow_the_settings_but_typed_text_stays(desk, show, qtbot):
    vessel(desk, working_l=3.785411784)
    page = show()
    enter(qtbot, field(page, "hot_water_c"), "88 °C")

    desk.settings.put_unit(Kind.VOLUME, "gal")

    assert field(page, "fill_volume_l").text() == "1.00 gal"
    assert field(page, "hot_water_c").text() == "88 °C"


def test_wide_it_has_two_columns_and_narrow_one(desk, show):
    vessel(desk)
    page = show()
    assert page.columns.is_wide

    page.resize(QSize(720, 900))
    QApplication.processEvents()

    assert not page.columns.is_wide
    assert page.amounts.isVisible()
    assert page.form.isVisible()


def test_large_type_gets_one_column_instead_of_two_that_are_cut_off(desk, show, qapp):
    vessel(desk)
    with worn_theme(qapp, text_scale=2.0):
        page = show()
        QApplication.processEvents()

        assert not page.columns.is_wide
        areas = [area for area in page.columns.findChildren(QScrollArea) if area.isVisible()]
        assert [area.widget().width() <= area.viewport().width() for area in areas] == [True]


def test_narrowing_the_window_keeps_the_field_that_is_being_typed_in(desk, show, qtbot):
    vessel(desk)
    page = show()
    enter(qtbot, field(page, "fill_volume_l"), "3.5")

    page.resize(QSize(720, 900))
    QApplication.processEvents()

    assert page.focusWidget() is field(page, "fill_volume_l").line
    assert field(page, "fill_volume_l").text() == "3.5"


def test_tab_walks_the_wish_as_the_eye_does(desk, show, qtbot):
    vessel(desk)
    page = show()
    page.form.vessel.setFocus()
    walked = []
    for _ in range(5):
        walked.append(page.focusWidget().objectName())
        qtbot.keyClick(page.focusWidget(), Qt.Key.Key_Tab)

    assert walked == [
        "plan_vessel",
        "plan_name",
        "plan_fill_volume_l",
        "plan_sugar_g_per_l",
        "plan_tea_kind",
    ]


def test_every_field_has_a_name_for_a_screen_reader(desk, show):
    vessel(desk)
    page = show()

    nameless = [
        name for name, row in page.form.rows.items() if not row.focus_widget.accessibleName()
    ]

    assert nameless == []
