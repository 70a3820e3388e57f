"""The page of bottles through its real widgets: fill, be stopped, look after, chill."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QPushButton

from brewdesk.services.bottlingwish import BottleGroupWish
from brewdesk.services.records import (
    AdditionKind,
    BatchStage,
    BottleKind,
    BottlingState,
    CheckKind,
    Feel,
    Method,
    Opened,
    Quantity,
    ReadingDraft,
)
from brewdesk.widgets.bottlepage import BottlePage
from brewdesk.widgets.fizzplot import FizzPlot, FizzSpec
from tests.helpers.pantry_desk import open_desk, souring_batch


def sour(desk, name="Black tea 1", vessel="Tall jar", value=3.1):
    batch = souring_batch(desk, name, vessel)
    desk.clock.advance(days=8)
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=desk.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=value,
                sd=0.05,
            )
        ]
    )
    return batch


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def page(desk, qtbot):
    sour(desk)
    made = BottlePage(desk, delay_ms=0)
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    made.tabs.setCurrentWidget(made.fill)
    return made


def shown_words(widget):
    return " ".join(label.text() for label in widget.findChildren(QLabel) if label.isVisible())


def press(qtbot, button):
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def fill(page, qtbot):
    page.fill.reckon()
    press(qtbot, page.fill.fill_button)


def test_an_empty_pantry_says_what_to_do(desk, qtbot):
    page = BottlePage(desk, delay_ms=0)
    qtbot.addWidget(page)
    page.show()
    assert page.tabs.currentWidget() is page.fill
    assert "Nothing to bottle yet" in shown_words(page.fill)
    assert not page.fill.fill_button.isEnabled()
    page.tabs.setCurrentWidget(page.stand)
    assert "No bottles stand" in shown_words(page.stand)
    press(qtbot, page.stand.fill_button)
    assert page.tabs.currentWidget() is page.fill


def test_the_outlook_is_there_at_once_and_follows(page, qtbot):
    outlook = page.fill.outlook
    first = outlook.outlook()
    assert first is not None
    assert "Chill by" in outlook.summary.text()
    assert outlook.plot.spec().chill_by_day == pytest.approx(first.chill_by_day.low)
    page.fill.form.edits["warmest_c"].line.setText("34")
    qtbot.waitUntil(lambda: outlook.outlook() != first, timeout=3000)
    assert outlook.outlook().chill_by_day.low < first.chill_by_day.low


def test_the_slider_says_what_a_number_means(page, qtbot):
    form = page.fill.form
    form.fizz.setFocus()
    before = form.fizz.value()
    qtbot.keyClick(form.fizz, Qt.Key.Key_Right)
    assert form.fizz.value() == before + 1
    form.fizz.setValue(24)
    assert "2.4 volumes" in form.rows["target_volumes"].message.text()
    assert "fizzy" in form.fizz.accessibleDescription()


def test_filling_keeps_it_and_shows_its_card(page, desk, qtbot):
    fill(page, qtbot)
    (bottling,) = desk.bottlings.all()
    assert page.tabs.currentWidget() is page.stand
    (card,) = page.stand.cards()
    assert card.view.bottling.id == bottling.id
    assert bottling.name in card.accessibleName()
    assert desk.batches.get(bottling.batch_id).stage is BatchStage.DRAWN_OFF
    parts = desk.bottlings.parts_of(bottling.id)
    assert any(group.is_test for group in parts.groups)


def test_a_stop_asks_for_the_reason_beside_the_field(page, desk, qtbot):
    page.fill.form.fizz.setValue(38)
    page.fill.reckon()
    assert page.fill.reason_row.isVisible()
    qtbot.waitUntil(lambda: "Stop:" in shown_words(page.fill.outlook), timeout=3000)
    assert "What would help" in shown_words(page.fill.outlook)
    press(qtbot, page.fill.fill_button)
    assert desk.bottlings.all() == ()
    assert page.fill.reason_row.message.is_error
    assert page.fill.reason.hasFocus()
    qtbot.keyClicks(page.fill.reason, "thick swing-top bottles, tested before")
    qtbot.keyClick(page.fill.reason, Qt.Key.Key_Return)
    (bottling,) = desk.bottlings.all()
    assert bottling.override_reason.startswith("thick swing-top")
    assert page.fill.reason.text() == ""


def test_mistakes_are_said_beside_their_fields(page, desk, qtbot):
    form = page.fill.form
    form.edits["drink_volume_l"].line.setText("9 L")
    page.fill.reckon()
    assert form.edits["drink_volume_l"].message.is_error
    form.edits["drink_volume_l"].line.setText("")
    form.groups.rows[0].kind.setCurrentIndex(form.groups.rows[0].kind.findData(BottleKind.RATED))
    page.fill.reckon()
    row = form.groups.rows[0].rows["rated_bar"]
    assert row.isVisible()
    assert row.message.is_error
    form.groups.rows[0].rated.setValue(6.0)
    page.fill.reckon()
    assert not row.message.is_error
    assert page.fill.outlook.outlook().groups[0].ceiling_bar == 6.0
    form.name.clear()
    fill(page, qtbot)
    assert form.rows["name"].message.is_error
    assert desk.bottlings.all() == ()


def test_rows_of_bottles_come_and_go(page, qtbot):
    groups = page.fill.form.groups
    count = len(groups.rows)
    press(qtbot, groups.add_button)
    assert len(groups.rows) == count + 1
    assert groups.rows[-1].count.hasFocus()
    for row in tuple(groups.rows):
        press(qtbot, row.remove)
    page.fill.reckon()
    assert page.fill.trouble.isVisible()
    press(qtbot, groups.test_button)
    assert groups.rows[0].group().is_test


def test_additions_offer_the_table_and_may_be_anything(page, desk, qtbot):
    additions = page.fill.form.additions
    press(qtbot, additions.add_button)
    row = additions.rows[0]
    row.what.setCurrentIndex(row.what.findData("honey"))
    assert row.low.value() == pytest.approx(75.0)
    assert "FoodData" in row.source.text()
    row.mass.line.setText("30 g")
    page.fill.reckon()
    assert row.addition().kind is AdditionKind.HONEY
    row.high.setValue(95.0)
    assert "typed" in row.source.text()
    row.what.setCurrentIndex(row.what.findData(""))
    qtbot.waitUntil(lambda: row.rows["name"].isVisible(), timeout=3000)
    fill(page, qtbot)
    assert row.rows["name"].message.is_error
    qtbot.keyClicks(row.name, "Elderflower syrup")
    fill(page, qtbot)
    (bottling,) = desk.bottlings.all()
    (addition,) = desk.bottlings.parts_of(bottling.id).additions
    assert (addition.kind, addition.name) == (AdditionKind.OTHER, "Elderflower syrup")
    assert addition.sugar_share_high == pytest.approx(0.95)


def test_a_draft_survives_leaving_the_page(page, desk, qtbot):
    form = page.fill.form
    form.name.setText("For the party")
    form.fizz.setValue(19)
    press(qtbot, form.additions.add_button)
    page.hide()
    desk.clock.advance(hours=1)
    sour(desk, "Green tea 2", "Wide jar")
    page.show()
    assert form.name.text() == "For the party"
    assert form.fizz.value() == 19
    assert len(form.additions.rows) == 1
    assert form.batch.count() == 2
    page.begin(form.batch_id())
    assert form.name.text() == "For the party"


def test_another_batch_brings_its_own_figures(page, desk):
    other = sour(desk, "Green tea 2", "Wide jar")
    page.begin(other.id)
    assert page.fill.form.batch_id() == other.id
    assert page.fill.form.name.text() == "Green tea 2"


def test_a_batch_that_is_gone_is_let_go_of(page, desk):
    desk.batches.draw_off(page.fill.form.batch_id())
    assert page.fill.form.batch_id() is None
    assert "Nothing to bottle yet" in shown_words(page.fill)


def test_another_place_brings_its_temperature(page, desk):
    from brewdesk.services.records import PlaceDraft

    cellar = desk.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    form = page.fill.form
    form.refresh_choices()
    form.place.setCurrentIndex(form.place.findData(cellar.id))
    form.place.activated.emit(form.place.currentIndex())
    assert form.edits["place_temperature_c"].value() == pytest.approx(14.0)
    assert form.edits["warmest_c"].value() == pytest.approx(19.0)


# --- bottles that stand -------------------------------------------------------------------


@pytest.fixture
def card(page, desk, qtbot):
    fill(page, qtbot)
    desk.clock.advance(days=1)
    page.stand.refresh()
    return page.stand.cards()[0]


def checks_of(desk, card):
    return desk.bottlings.parts_of(card.view.bottling.id).checks


def test_looks_take_one_press(page, desk, card, qtbot):
    press(qtbot, card.feels[Feel.SOFT])
    press(qtbot, card.openings[Opened.RIGHT])
    card.gauge.setValue(1.2)
    press(qtbot, card.gauge_button)
    press(qtbot, card.vent_button)
    kinds = [check.kind for check in checks_of(desk, card)]
    assert kinds == [CheckKind.FEEL, CheckKind.OPENED, CheckKind.GAUGE, CheckKind.VENTED]
    (card,) = page.stand.cards()
    assert "test bottle soft" in card.looks.text()
    assert "6 of 7 bottles" in card.facts.text()
    assert card.plot.spec().points


def test_hard_is_urgent_in_words_and_shape(page, desk, card, qtbot):
    press(qtbot, card.feels[Feel.HARD])
    (card,) = page.stand.cards()
    assert card.urgency.text() == "Chill now"
    assert card.property("role") == "danger"
    assert card.what_to_do.isVisible()
    press(qtbot, card.chill_button)
    assert desk.bottlings.get(card.view.bottling.id).state is BottlingState.CHILLED
    (card,) = page.stand.cards()
    assert not card.chill_button.isVisible()
    assert not card.feels[Feel.SOFT].isVisible()
    assert "In the cold" in card.summary.text()


def test_pouring_away_asks_why(page, desk, card, qtbot):
    assert not card.why_row.isVisible()
    card._on_pour()
    press(qtbot, card.why_button)
    assert card.message.is_error
    qtbot.keyClicks(card.why, "smells of cork")
    qtbot.keyClick(card.why, Qt.Key.Key_Return)
    (gone,) = desk.bottlings.all((BottlingState.DISCARDED,))
    assert gone.end_reason == "smells of cork"
    assert page.stand.cards() == ()


def test_drunk_up_takes_the_card_away(page, desk, card, qtbot):
    press(qtbot, card.finish_button)
    assert page.stand.cards() == ()
    assert "No bottles stand" in shown_words(page.stand)
    desk.history.undo()
    assert len(page.stand.cards()) == 1


def test_glass_alone_offers_no_feel(page, desk, qtbot):
    glass = BottleGroupWish(bottle_count=8, kind=BottleKind.FIZZY_GLASS, brim_volume_l=0.52)
    page.fill.form.groups.set_groups((glass,))
    fill(page, qtbot)
    (card,) = page.stand.cards()
    assert not card.feels[Feel.SOFT].isVisible()


def test_the_cards_menu_leads_to_the_labels_of_its_bottles(page, card, qtbot):
    menu = card.more_button.menu()
    action = next(one for one in menu.actions() if "label" in one.text())
    with qtbot.waitSignal(page.label_wanted) as asked:
        action.trigger()
    assert asked.args == [card.view.bottling.id]


def test_every_control_has_a_name(page, card):
    for widget in (
        *card.feels.values(),
        *card.openings.values(),
        card.gauge,
        card.gauge_button,
        card.vent_button,
        card.chill_button,
        card.finish_button,
        card.more_button,
        card.why,
        page.fill.form.fizz,
        page.fill.form.batch,
    ):
        assert widget.accessibleName(), widget.objectName()
    assert card.plot.accessibleDescription()


def test_the_sheet_has_the_cautions_and_the_deadline(page, desk, card, qtbot):
    from brewdesk.widgets.bottlingsheetwords import bottling_sheet_of

    outlook = desk.bottlings.outlook_as_filled(card.view.bottling.id)
    sheet = bottling_sheet_of(desk, outlook)
    told = " ".join(sheet.cautions)
    for words in ("eye protection", "towel", "Never shake", "alcohol", "Rules and advice"):
        assert words in told
    assert dict(sheet.facts)["Chill by, at the latest"]
    assert len(sheet.amounts) == len(outlook.groups)
    with_more = replace(outlook, wish=replace(outlook.wish, additions=()), chill_by_at=None)
    assert (
        dict(bottling_sheet_of(desk, with_more).facts)["Chill by, at the latest"] == "no deadline"
    )
    page.stand._on_print(card.view.bottling.id)
    assert page.stand._paper.windowTitle() == "Bottling sheet"
    page.stand._paper.reject()


def test_the_form_prints_what_it_shows(page, qtbot):
    press(qtbot, page.fill.print_button)
    assert page.fill._paper.isVisible()
    page.fill._paper.reject()


# --- the picture ----------------------------------------------------------------------------


def _drawn(qtbot, spec):
    plot = FizzPlot()
    qtbot.addWidget(plot)
    plot.resize(420, 220)
    plot.set_spec(spec, "said")
    return plot.grab().toImage()


def test_the_picture_shows_ceiling_deadline_and_now(qtbot):
    days = (0.0, 2.0, 7.0)
    plain = FizzSpec(
        days=days, low=(0.0, 0.5, 1.0), likely=(0.5, 1.5, 3.0), high=(1.0, 3.0, 6.0), last_day=7.0
    )
    images = [
        _drawn(qtbot, spec)
        for spec in (
            plain,
            replace(plain, ceiling_bar=3.7, ceiling_words="3.7 bar"),
            replace(plain, chill_by_day=2.0, chill_words="chill by"),
            replace(plain, now_day=1.0, now_words="now"),
            replace(plain, points=((1.0, 1.2),)),
        )
    ]
    assert all(image != images[0] for image in images[1:])
    far = _drawn(qtbot, replace(plain, chill_by_day=20.0, now_day=30.0))
    assert far == images[0]
    assert _drawn(qtbot, None) != images[0]


def test_the_lines_end_where_the_picture_ends(qtbot):
    """What comes after the last day shown must not be drawn up its edge."""
    shown = FizzSpec(
        days=(0.0, 7.0), low=(0.0, 1.0), likely=(0.5, 3.0), high=(1.0, 4.0), last_day=7.0
    )
    longer = replace(
        shown,
        days=(0.0, 7.0, 14.0),
        low=(0.0, 1.0, 1.0),
        likely=(0.5, 3.0, 3.9),
        high=(1.0, 4.0, 4.4),
    )
    assert _drawn(qtbot, shown) == _drawn(qtbot, longer)
    between = replace(longer, last_day=10.5)
    assert _drawn(qtbot, between) != _drawn(qtbot, shown)


def test_a_reminder_of_bottles_opens_them(page, desk, qtbot):
    from brewdesk.widgets.duepage import DuePage

    fill(page, qtbot)
    (bottling,) = desk.bottlings.all()
    desk.clock.advance(days=2)
    desk.reminders.sync()
    due = DuePage(desk)
    qtbot.addWidget(due)
    due.resize(900, 1200)
    due.show()
    wanted = []
    due.open_bottling.connect(wanted.append)
    cards = [one for one in due.findChildren(QPushButton, "due_open") if one.isVisible()]
    (button,) = {one.text(): one for one in cards if "bottles" in one.text()}.values()
    assert button.text() == "Open the bottles"
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert wanted == [bottling.id]


def test_bottles_whose_figures_are_to_come_have_a_place(page, desk, qtbot):
    desk.jobs.hold = True
    fill(page, qtbot)
    page.tabs.setCurrentWidget(page.stand)
    assert page.stand.cards() == ()
    assert not page.stand.is_empty()
    (place,) = page.stand.findChildren(QFrame, "bottle_waiting")
    assert "Working out" in shown_words(place)
    assert "No bottles stand" not in shown_words(page.stand)
    while desk.jobs.is_holding():
        desk.jobs.release()
    (card,) = page.stand.cards()
    assert "Chill by" in card.summary.text()
    qtbot.waitUntil(lambda: page.stand.findChildren(QFrame, "bottle_waiting") == [])


def test_a_card_stays_with_what_is_typed_on_it_while_it_waits(page, desk, card, qtbot):
    page.tabs.setCurrentWidget(page.stand)
    before = card.summary.text()
    card.gauge.setValue(1.7)
    desk.jobs.hold = True
    press(qtbot, card.feels[Feel.HARD])
    assert page.stand.cards() == (card,)
    assert "Working out" in card.summary.text()
    assert card.urgency.text() == ""
    while desk.jobs.is_holding():
        desk.jobs.release()
    assert page.stand.cards() == (card,)
    assert card.gauge.value() == pytest.approx(1.7)
    assert card.summary.text() != before
    assert "Working out" not in card.summary.text()
    assert card.urgency.text()


def test_the_card_of_bottles_just_filled_is_gone_to_when_it_comes(page, desk, qtbot):
    desk.jobs.hold = True
    fill(page, qtbot)
    assert page.stand.cards() == ()
    while desk.jobs.is_holding():
        desk.jobs.release()
    (card,) = page.stand.cards()
    assert page.tabs.currentWidget() is page.stand
    assert card.chill_button.hasFocus() or not page.isActiveWindow()
