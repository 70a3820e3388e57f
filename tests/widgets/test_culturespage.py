"""The cultures page, through real keys and clicks."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QMenu, QPushButton

from brewdesk.models.family import NODE_ROLE
from brewdesk.services.looks import Sign
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import (
    CultureDraft,
    CultureOrigin,
    CultureState,
    Look,
    Material,
    VesselDraft,
    VesselShape,
)
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.widgets.culturespage import CulturesPage
from tests.helpers.pantry_desk import souring_batch


def vessel(desk, name="Store jar", brim_l=1.5):
    return desk.vessels.add(
        VesselDraft(
            name=name,
            shape=VesselShape.CYLINDER,
            material=Material.GLASS,
            brim_volume_l=brim_l,
            working_volume_l=0.9 * brim_l,
            inner_diameter_cm=11.0,
            place_id=desk.vessels.ensure_place().id,
        )
    )


def culture(desk, name="Mother", **fields):
    draft = {
        "name": name,
        "origin": CultureOrigin.GIFT,
        "state": CultureState.RESTING,
        "born_at": desk.clock.now(),
    }
    return desk.cultures.add(CultureDraft(**(draft | fields)))


def split(desk, parent, name):
    desk.clock.advance(minutes=1)
    return desk.culture_care.split(parent.id, name=name, vessel_id=None)


@pytest.fixture
def page(desk, qtbot):
    made = CulturesPage(desk)
    qtbot.addWidget(made)
    made.resize(1150, 700)
    made.show()
    made.grab()
    return made


def click(qtbot, parent, name):
    button = parent.findChild(QPushButton, name)
    assert button is not None
    assert button.isVisible(), name
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def dialog(page):
    """The dialog that is open over the page."""
    found = [one for one in page.findChildren(QDialog) if one.isVisible()]
    assert len(found) == 1
    found[0].grab()  # paints it
    return found[0]


def texts(widget):
    QApplication.processEvents()  # what was put in just now is shown with the next event
    return [label.text() for label in widget.findChildren(QLabel) if label.isVisible()]


def press(view, key):
    from PySide6.QtTest import QTest

    QTest.keyClick(view, key)


def chosen(page):
    return page.tree.currentIndex().data(NODE_ROLE).culture.name


# --- empty, and the tree -------------------------------------------------------------


def test_without_cultures_the_page_says_what_to_do(page, qtbot):
    assert any("raw" in text for text in texts(page))
    click(qtbot, page, "grow_first_culture")
    assert dialog(page).objectName() == "grow"


def test_the_first_culture_brings_the_tree_and_is_chosen(page, desk, qtbot):
    click(qtbot, page, "add_first_culture")
    form = dialog(page)
    qtbot.keyClicks(form.name, "Old line")
    qtbot.mouseClick(form.save, Qt.MouseButton.LeftButton)
    assert chosen(page) == "Old line"
    assert page.sheet.title.text() == "Old line"


@pytest.fixture
def family(desk, page):
    mother = culture(desk)
    first = split(desk, mother, "First")
    split(desk, mother, "Second")
    split(desk, first, "Grandchild")
    page.show_culture(mother.id)
    return mother


def test_arrows_walk_the_family(page, family):
    page.tree.setFocus()
    walked = [chosen(page)]
    for key in (
        Qt.Key.Key_Right,
        Qt.Key.Key_Right,
        Qt.Key.Key_Right,
        Qt.Key.Key_Left,
        Qt.Key.Key_Down,
        Qt.Key.Key_Up,
        Qt.Key.Key_Left,
        Qt.Key.Key_End,
        Qt.Key.Key_Home,
    ):
        press(page.tree, key)
        walked.append(chosen(page))
    assert walked == [
        "Mother",
        "First",
        "Grandchild",
        "Grandchild",
        "First",
        "Second",
        "First",
        "Mother",
        "Second",
        "Mother",
    ]
    assert page.sheet.title.text() == "Mother"


def test_typing_a_name_finds_it(page, family, qtbot):
    page.tree.setFocus()
    qtbot.keyClicks(page.tree, "grand")
    assert chosen(page) == "Grandchild"


def test_enter_goes_to_the_first_act(page, family):
    page.tree.setFocus()
    press(page.tree, Qt.Key.Key_Return)
    assert page.focusWidget() is page.sheet.act_buttons["look"]


def test_a_click_on_a_card_chooses_it_and_the_ground_can_be_dragged(page, family, qtbot):
    row = page.model.row_of(next(n.culture.id for n in page.model.nodes if n.generation == 2))
    view = page.tree
    at = view.visualRect(page.model.index(row, 0)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert chosen(page) == "Grandchild"
    assert view.indexAt(QPoint(1, 1)).row() == -1

    page.resize(560, 220)
    page.split.setSizes([160, 400])
    view.scrollTo(page.model.index(0, 0))
    bar = view.verticalScrollBar()
    room = bar.maximum()
    assert room > 0
    start = QPoint(4, view.viewport().height() - 4)
    bar.setValue(0)
    assert not view.indexAt(start).isValid()
    qtbot.mousePress(view.viewport(), Qt.MouseButton.LeftButton, pos=start)
    qtbot.mouseMove(view.viewport(), start - QPoint(0, 40))
    qtbot.mouseRelease(view.viewport(), Qt.MouseButton.LeftButton, pos=start - QPoint(0, 40))
    assert bar.value() == min(room, 40)


def test_the_tree_tells_a_screen_reader_everything_it_shows(page, family, desk):
    desk.culture_care.give_away(desk.cultures.all()[2].id, "a neighbour")
    model, view = page.model, page.tree
    said = [
        model.index(row, 0).data(Qt.ItemDataRole.AccessibleTextRole)
        for row in range(model.rowCount())
    ]
    assert said[2] == "Second, Given to a neighbour, generation 1, less than a day old"
    interface = QAccessible.queryAccessibleInterface(view)
    assert interface.text(QAccessible.Text.Name) == view.accessibleName() != ""
    assert interface.role() is QAccessible.Role.List
    heard = [interface.child(number) for number in range(interface.childCount())]
    assert [one.text(QAccessible.Text.Name) for one in heard] == said
    for number, one in enumerate(heard):
        place = view.visualRect(model.index(number, 0))
        assert one.rect().size() == place.size()


def test_two_hundred_cultures_are_drawn_and_all_can_be_reached(page, desk):
    mother = culture(desk)
    line = [mother]
    for number in range(199):
        line.append(split(desk, line[number // 3], f"Child {number}"))
    page.refresh()
    assert page.model.rowCount() == 200
    rects = [page.tree.spot_rect(row) for row in range(200)]
    assert not any(one.intersects(other) for n, one in enumerate(rects) for other in rects[n + 1 :])
    page.show_culture(line[-1].id)
    card = page.tree.visualRect(page.tree.currentIndex())
    assert page.tree.viewport().rect().contains(card)
    page.grab()


def test_a_card_is_told_by_its_shape_not_by_colour_alone(page, family, desk):
    """Painted in one colour, the signs of the states still differ."""
    from dataclasses import fields

    from PySide6.QtCore import QRectF
    from PySide6.QtGui import QImage, QPainter

    from brewdesk.widgets.statesign import paint_state_sign
    from brewdesk.widgets.theme import LIGHT, Tokens

    grey = Tokens(
        **{
            field.name: ("#ffffff" if field.name == "surface" else "#404040")
            for field in fields(Tokens)
        }
    )
    assert grey != LIGHT
    pictures = set()
    for state, is_suspect in [
        *((one, False) for one in CultureState),
        (CultureState.RESTING, True),
    ]:
        image = QImage(20, 20, QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        painter = QPainter(image)
        paint_state_sign(painter, QRectF(2, 2, 16, 16), state, grey, is_suspect=is_suspect)
        painter.end()
        pictures.add(bytes(image.constBits()))
    assert len(pictures) == len(CultureState) + 1


# --- the sheet and its acts ------------------------------------------------------------


def test_kin_are_links(page, family, qtbot):
    daughter = next(n.culture for n in page.model.nodes if n.culture.name == "First")
    click(qtbot, page.sheet, f"kin_{daughter.id}")
    assert chosen(page) == "First"
    click(qtbot, page.sheet, f"kin_{family.id}")
    assert chosen(page) == "Mother"


def test_splitting_chooses_the_daughter_and_can_be_taken_back(page, family, desk, qtbot):
    jar = vessel(desk)
    click(qtbot, page.sheet, "act_split")
    form = dialog(page)
    qtbot.keyClicks(form.name, "Third")
    form.vessel.setCurrentIndex(form.vessel.findData(jar.id))
    qtbot.keyClicks(form.volume.line, "500 mL")
    qtbot.keyClicks(form.pellicle.line, "3")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert chosen(page) == "Third"
    made = desk.cultures.get(page.chosen_id())
    assert (made.vessel_id, made.rest_volume_l) == (jar.id, pytest.approx(0.5))
    assert made.pellicle_mm == pytest.approx(3.0)
    desk.history.undo()
    assert page.model.row_of(made.id) == -1


def test_a_refused_form_keeps_all_that_was_typed_and_says_why_beside_the_field(
    page, family, desk, qtbot
):
    click(qtbot, page.sheet, "act_split")
    form = dialog(page)
    qtbot.keyClicks(form.name, "first")
    qtbot.keyClicks(form.note, "from the top")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert form.isVisible()
    assert "name already" in form.rows["name"].message.text()
    assert (form.name.text(), form.note.text()) == ("first", "from the top")
    form.name.clear()
    qtbot.keyClicks(form.name, "Other")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert not form.isVisible()
    assert desk.cultures.get(page.chosen_id()).note == "from the top"


@pytest.fixture
def resting(page, desk):
    made = culture(desk)
    desk.culture_care.rest(made.id, vessel(desk).id, 0.8)
    page.show_culture(made.id)
    return made


def test_feeding_fills_in_the_sugar_and_is_in_the_care_log(page, resting, desk, qtbot):
    click(qtbot, page.sheet, "act_feed")
    form = dialog(page)
    qtbot.keyClicks(form.volume.line, "0.2 L")
    assert form.sugar.value() == pytest.approx(10.0)
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert desk.cultures.get(resting.id).rest_volume_l == pytest.approx(1.0)
    assert any("Fed with" in text for text in texts(page.sheet))


def test_too_much_is_refused_beside_the_amount(page, resting, qtbot):
    click(qtbot, page.sheet, "act_top_up")
    form = dialog(page)
    qtbot.keyClicks(form.volume.line, "3 L")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert "does not fit" in form.volume.message.text()
    form.volume.line.clear()
    qtbot.keyClicks(form.volume.line, "0.1 L")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert not form.isVisible()


def test_an_empty_amount_is_pointed_out(page, resting, qtbot):
    click(qtbot, page.sheet, "act_top_up")
    form = dialog(page)
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert form.isVisible()
    assert form.volume.message.text()


def menu_of(page):
    page.sheet.fill_menu()
    return {action.objectName(): action for action in page.sheet.findChild(QMenu).actions()}


def test_the_menu_offers_what_makes_sense(page, resting, desk):
    offered = menu_of(page)
    assert "culture_lose" in offered
    assert "culture_rest" in offered
    desk.culture_care.give_away(resting.id)
    gone = {name for name in menu_of(page) if name}
    assert gone == {"culture_history", "culture_edit", "culture_card"}


def test_a_moldy_look_leads_to_the_loss_and_flags_the_daughter(page, resting, desk, qtbot):
    split(desk, resting, "Daughter")
    page.show_culture(resting.id)
    click(qtbot, page.sheet, "act_look")
    form = dialog(page)
    form.checklist.rows[Sign.FUZZY].box.click()
    qtbot.keyClicks(form.words, "green fuzz")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    loss = dialog(page)
    assert loss.objectName() == "lose"
    assert "Daughter" in loss.touched.text()
    assert loss.reason.text() == "Fuzzy or hairy. green fuzz"
    qtbot.mouseClick(loss.go, Qt.MouseButton.LeftButton)
    assert desk.cultures.get(resting.id).state is CultureState.LOST
    page.show_culture(next(c.id for c in desk.cultures.all() if c.name == "Daughter"))
    assert any("may carry mold" in text.casefold() for text in texts(page.sheet))
    assert any("Mother: Fuzzy or hairy. green fuzz" in text for text in texts(page.sheet))
    row = page.tree.currentIndex()
    assert "may carry mold" in row.data(Qt.ItemDataRole.AccessibleTextRole)


def test_a_look_needs_an_answer(page, resting, desk, qtbot):
    click(qtbot, page.sheet, "act_look")
    form = dialog(page)
    assert not form.go.isEnabled()
    form.checklist.rows[Sign.STRINGS].box.click()
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    look = desk.culture_care.care_of(resting.id)[0]
    assert (look.look, look.text) == (Look.FINE, "Brown strings hanging")


def test_mold_that_was_seen_stays_in_sight_until_it_is_gone_or_cleared(page, resting, desk, qtbot):
    page.show_culture(resting.id)
    desk.culture_care.look(resting.id, Look.MOLD)
    desk.culture_care.look(resting.id, Look.FINE)
    assert any("may carry mold" in text.casefold() for text in texts(page.sheet))
    click(qtbot, page.sheet, "suspect_lose")
    assert dialog(page).objectName() == "lose"
    dialog(page).reject()
    desk.suspicion.clear(culture_id=resting.id, reason="yeast after all")
    assert not any("may carry mold" in text.casefold() for text in texts(page.sheet))


def test_photos_of_the_chosen_culture_are_shown_with_it(page, resting, desk):
    other = culture(desk, "Other")
    page.show_culture(resting.id)
    assert page.sheet.photos.owner() == PhotoOwner(culture_id=resting.id)
    page.show_culture(other.id)
    assert page.sheet.photos.owner() == PhotoOwner(culture_id=other.id)
    assert page.sheet.photos.isVisible()


def test_the_menu_leads_to_its_life_and_picks_it_up(page, resting, qtbot):
    page.show_culture(resting.id)
    with qtbot.waitSignal(page.acts.history_wanted) as life:
        page.acts.do("history", resting.id)
    assert life.args == [Subject(SubjectKind.CULTURE, resting.id)]
    with qtbot.waitSignal(page.acts.carry_wanted) as picked_up:
        page.acts.do("carry", resting.id)
    assert picked_up.args == [resting.id]


def test_what_cannot_be_done_without_another_vessel_or_culture_is_said_at_once(page, desk, qtbot):
    alone = culture(desk)
    page.show_culture(alone.id)
    with qtbot.assertNotEmitted(page.acts.carry_wanted):
        page.acts.do("carry", alone.id)
    assert "no vessel on the shelf" in page.said.text()
    for key, field, words in (
        ("rest", "vessel_id", "No vessel is free"),
        ("merge", "culture_ids", "no other culture"),
    ):
        page.acts.do(key, alone.id)
        form = dialog(page)
        assert words in form.rows[field].message.text()
        assert not form.go.isEnabled()
        form.reject()


def test_suspicion_is_cleared_only_with_a_reason(page, desk, qtbot):
    mother = culture(desk)
    daughter = split(desk, mother, "Daughter")
    desk.culture_care.lose(mother.id, "mold")
    page.show_culture(daughter.id)
    click(qtbot, page.sheet, "suspect_clear")
    form = dialog(page)
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert form.rows["reason"].message.text()
    qtbot.keyClicks(form.reason, "clean for three weeks")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert desk.cultures.get(daughter.id).suspect_at is None
    assert page.sheet.findChild(QPushButton, "suspect_clear") is None


def test_losing_without_mold_flags_nothing(page, resting, desk, qtbot):
    split(desk, resting, "Daughter")
    page.show_culture(resting.id)
    page.acts.do("lose", resting.id)
    form = dialog(page)
    form.mold.click()
    assert "Nothing else" in form.touched.text()
    qtbot.keyClicks(form.reason, "knocked over")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert all(one.suspect_at is None for one in desk.cultures.all())


def test_merging_needs_another_and_makes_one(page, resting, desk, qtbot):
    other = culture(desk, "Other")
    page.show_culture(resting.id)
    page.acts.do("merge", resting.id)
    form = dialog(page)
    qtbot.keyClicks(form.name, "Both")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert "at least one other" in form.rows["culture_ids"].message.text()
    form.others.item(0).setCheckState(Qt.CheckState.Checked)
    assert form.chosen_ids() == (other.id,)
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert chosen(page) == "Both"
    assert desk.cultures.get(other.id).gone_to == "Both"


def test_resting_moving_ph_and_notes_go_through_their_forms(page, resting, desk, qtbot):
    second = vessel(desk, "Second jar")
    page.acts.do("move", resting.id)
    form = dialog(page)
    form.vessel.setCurrentIndex(form.vessel.findData(second.id))
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert desk.cultures.get(resting.id).vessel_id == second.id

    page.acts.do("rest", resting.id)
    form = dialog(page)
    form.volume.line.clear()
    qtbot.keyClicks(form.volume.line, "0.4 L")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert desk.cultures.get(resting.id).rest_volume_l == pytest.approx(0.4)

    page.acts.do("ph", resting.id)
    form = dialog(page)
    qtbot.keyClicks(form.ph.line, "2.9")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)

    page.acts.do("note", resting.id)
    form = dialog(page)
    qtbot.keyClicks(form.words, "smells right")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    said = texts(page.sheet)
    assert any("pH 2.90" in text for text in said)
    assert any("smells right" in text for text in said)


def test_giving_away_offers_the_card_with_what_it_rested_in(page, resting, desk, qtbot):
    page.acts.do("give", resting.id)
    form = dialog(page)
    qtbot.keyClicks(form.to, "a neighbour")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    card = dialog(page)
    assert card.objectName() != "give"
    assert dict(card._card_page.card.facts)["Rests in"].startswith("0.8")
    assert desk.cultures.get(resting.id).state is CultureState.GIVEN_AWAY


def test_a_culture_that_is_planned_is_not_retired_and_it_is_said(page, resting, desk):
    jar = vessel(desk, "Tall jar", 4.0)
    desk.batches.plan(jar.id, resting.id, "Black tea 1", desk.batches.default_wish(jar.id))
    page.acts.do("retire", resting.id)
    assert "Black tea 1" in page.said.text()
    assert desk.cultures.get(resting.id).state is CultureState.RESTING


def test_the_story_says_one_batch_when_it_is_one(page, desk):
    batch = souring_batch(desk)
    page.show_culture(batch.culture_id)
    assert any(text.startswith("One batch: 1 souring") for text in texts(page.sheet))


def test_the_choice_stays_when_something_else_changes(page, family, desk):
    page.show_culture(family.id)
    culture(desk, "Newcomer", born_at=desk.clock.now() - timedelta(days=30))
    assert chosen(page) == "Mother"


def test_a_hidden_page_catches_up_when_it_is_shown(page, family, desk):
    page.hide()
    desk.culture_care.retire(family.id)
    page.show()
    QApplication.processEvents()
    node = page.model.nodes[page.model.row_of(family.id)]
    assert node.culture.state is CultureState.RETIRED


# --- growing -----------------------------------------------------------------------------


def test_a_pasteurised_bottle_is_warned_of_and_not_refused(page, desk, qtbot):
    vessel(desk, "Seed jar", 1.0)
    page.acts.grow()
    form = dialog(page)
    assert any("plain, raw" in text for text in texts(form))
    form.bottle.setCurrentIndex(2)
    assert any("nothing will grow" in text for text in texts(form))
    qtbot.keyClicks(form.name, "Sprout")
    planned = []
    page.open_batch.connect(planned.append)
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert len(planned) == 1
    assert chosen(page) == "Sprout"


def test_without_a_free_vessel_there_is_nothing_to_grow_in(page, resting, desk):
    page.acts.grow()
    form = dialog(page)
    assert not form.go.isEnabled()
    assert "No vessel is free" in form.rows["vessel_id"].message.text()


def test_amounts_that_cannot_be_are_told_at_once_and_refused(page, desk, qtbot):
    vessel(desk, "Seed jar", 1.0)
    page.acts.grow()
    form = dialog(page)
    qtbot.keyClicks(form.name, "Sprout")
    form.fill.line.clear()
    qtbot.keyClicks(form.fill.line, "3 L")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert form.isVisible()
    assert "does not fit" in form.fill.message.text()
    assert desk.cultures.all() == ()


def test_starter_of_ones_own_names_the_parent(page, resting, desk, qtbot):
    vessel(desk, "Seed jar", 1.0)
    page.acts.grow()
    form = dialog(page)
    form.bottle.setCurrentIndex(form.bottle.count() - 1)
    assert form.parent_choice.isVisible()
    qtbot.keyClicks(form.name, "Sprout")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    made = desk.cultures.get(page.chosen_id())
    assert desk.cultures.parents_of(made.id)[0].id == resting.id


# --- from elsewhere ------------------------------------------------------------------------


def test_a_reminder_of_a_culture_opens_its_sheet(desk, resting, qtbot):
    from brewdesk.widgets.duepage import DuePage

    desk.clock.advance(days=29)
    desk.reminders.sync()
    due = DuePage(desk)
    qtbot.addWidget(due)
    due.resize(900, 1200)
    due.show()
    QApplication.processEvents()
    wanted = []
    due.open_culture.connect(wanted.append)
    buttons = [one for one in due.findChildren(QPushButton, "due_open") if one.isVisible()]
    assert buttons[0].text() == "Open the culture"
    qtbot.mouseClick(buttons[0], Qt.MouseButton.LeftButton)
    assert wanted == [resting.id]


def test_a_batch_is_cleared_through_the_same_form(desk, qtbot):
    from brewdesk.widgets.leaveforms import ClearDialog

    batch = souring_batch(desk)
    desk.culture_care.lose(batch.culture_id, "mold")
    flagged = desk.batches.get(batch.id)
    assert flagged.suspect_at is not None
    form = ClearDialog(desk, flagged)
    qtbot.addWidget(form)
    form.open()
    qtbot.keyClicks(form.reason, "looked every day")
    qtbot.mouseClick(form.go, Qt.MouseButton.LeftButton)
    assert desk.batches.get(batch.id).suspect_at is None


def test_discarding_for_mold_names_what_comes_under_suspicion(desk, qtbot):
    from brewdesk.widgets.enddialog import EndDialog

    batch = souring_batch(desk)
    mother = desk.cultures.get(batch.culture_id)
    split(desk, mother, "Daughter")
    (jar,) = desk.shelf.jars()
    form = EndDialog(desk, jar, discard=True)
    qtbot.addWidget(form)
    form.reason.setCurrentIndex(0)
    assert "Daughter" in form.result_words.text()
    assert mother.name in form.result_words.text()
