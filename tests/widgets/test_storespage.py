"""The stores through their real widgets: typed, pressed, read back from the records."""

from __future__ import annotations

import csv
import io
from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import QDate, QLocale, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QLabel

from brewdesk.services.records import (
    AdditionKind,
    BottleKind,
    DrawReason,
    SupplyDraft,
    SupplyKind,
    SupplyLotDraft,
    SupplyMeasure,
    TeaKind,
)
from brewdesk.services.stockdraws import PlanSupplies
from brewdesk.widgets.bottlepage import BottlePage
from brewdesk.widgets.duecard import DueCard
from brewdesk.widgets.duepage import DuePage
from brewdesk.widgets.planpage import PlanPage
from brewdesk.widgets.storespage import StoresPage
from brewdesk.widgets.supplylist import fill_colour
from tests.helpers.pantry_desk import plan_batch, souring_batch

HOSTILE = "=cmd|'/c x'!A1 <b>bold</b> \u202e gnp"


@pytest.fixture
def page(desk, qtbot):
    made = StoresPage(desk)
    qtbot.addWidget(made)
    made.resize(1180, 700)
    with qtbot.waitExposed(made):
        made.show()
    return made


def tea(desk, name="Invented Assam", **fields):
    draft = {"kind": SupplyKind.TEA, "measure": SupplyMeasure.MASS_G, "tea_kind": TeaKind.BLACK}
    return desk.stores.add(SupplyDraft(name=name, **(draft | fields)))


def sugar(desk):
    draft = SupplyDraft(name="Cane", kind=SupplyKind.SUGAR, measure=SupplyMeasure.MASS_G)
    return desk.stores.add(draft)


def buy(desk, supply, amount, price=None, days_ago=0):
    return desk.stores.buy(
        SupplyLotDraft(
            supply_id=supply.id,
            bought_at=desk.clock.now() - timedelta(days=days_ago),
            amount=amount,
            price_minor=price,
            currency="" if price is None else "EUR",
        )
    )


def write(line, text):
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, text)


def press(button):
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def test_an_empty_store_says_what_to_do_and_leads_to_a_first_tea(desk, page):
    assert page.stock.first_tea.isVisible()
    assert not page.stock.list.isVisible()
    press(page.stock.first_tea)
    form = page.stock.dialog
    press(form.save)
    assert form.rows["name"].message.is_error
    form.name.setText(HOSTILE)
    write(form.low.line, "60")
    press(form.save)
    (view,) = desk.stores.all()
    assert view.supply.name == " ".join(HOSTILE.split())
    assert (view.supply.kind, view.supply.low_amount) == (SupplyKind.TEA, 60.0)
    assert page.stock.list.isVisible()
    assert page.stock.sheet.title.text() == view.supply.name
    assert page.stock.sheet.title.textFormat() is Qt.TextFormat.PlainText
    assert all(
        label.textFormat() is Qt.TextFormat.PlainText
        for label in page.findChildren(QLabel)
        if view.supply.name in label.text()
    )
    assert not page.grab().isNull()


def test_a_purchase_is_typed_with_comma_or_point_and_corrected(desk, page):
    leaf = tea(desk)
    press(page.stock.sheet.buy)
    form = page.stock.dialog
    write(form.amount.line, "0,25 kg")
    write(form.price, "18,5O")  # the letter
    press(form.save)
    assert form.rows["price_minor"].message.is_error
    write(form.price, "1,250")
    press(form.save)
    assert form.rows["price_minor"].message.is_error  # thousands, or three decimals
    write(form.price, "18,50")
    form.best.box.setChecked(True)
    form.best.line.setDate(QDate(2027, 1, 31))
    write(form.seller, "A market stall")
    press(form.save)
    (lot,) = desk.stores.get(leaf.id).lots
    assert (lot.lot.amount, lot.lot.price_minor) == (250.0, 1850)
    assert lot.lot.currency == desk.batch_costs.currency()
    assert lot.lot.best_before.astimezone(desk.clock.zone()).date().isoformat() == "2027-01-31"
    press(page.stock.sheet.correct_lot)
    form = page.stock.dialog
    assert form.amount.value() == 250.0
    write(form.price, "17.00")
    press(form.save)
    (lot,) = desk.stores.get(leaf.id).lots
    assert lot.lot.price_minor == 1700
    press(page.stock.sheet.remove_lot)
    assert desk.stores.get(leaf.id).lots == ()
    desk.history.undo()
    assert len(page.stock.sheet.lots.rows()) == 1


def test_taking_out_and_counting_say_beside_the_field_what_is_wrong(desk, page):
    leaf = tea(desk)
    buy(desk, leaf, 100.0, 850)
    press(page.stock.sheet.use)
    form = page.stock.dialog
    write(form.amount.line, "120")
    press(form.save)
    assert "100 g" in form.rows["amount"].message.text()
    assert form.isVisible()
    write(form.amount.line, "20")
    form.reason.setCurrentIndex(form.reason.findData(DrawReason.SPOILED))
    write(form.text, "damp")
    press(form.save)
    assert desk.stores.get(leaf.id).left == 80.0
    assert page.stock.sheet.draws.cell(desk.stores.get(leaf.id).draws[0], 3) == "damp"
    press(page.stock.sheet.count)
    form = page.stock.dialog
    write(form.amount.line, "77,5")
    press(form.save)
    assert desk.stores.get(leaf.id).left == 77.5


def test_what_runs_low_is_said_in_words_and_not_by_colour_alone(desk, page):
    leaf = tea(desk, low_amount=60.0)
    buy(desk, leaf, 50.0, 400)
    index = page.stock.model.index_of(leaf.id)
    said = index.data(Qt.ItemDataRole.AccessibleTextRole)
    assert "50.0 g left" in said
    assert "Low: your mark is 60.0 g." in said
    assert "1 low" in page.stock.count.text()
    assert "Low" in page.stock.sheet.notes.text()


def test_a_caddy_is_drawn_as_full_as_it_is(desk, page):
    leaf, other = tea(desk), tea(desk, "Other leaf")
    buy(desk, leaf, 100.0)
    buy(desk, other, 100.0)
    desk.stores.use(other.id, 90.0, DrawReason.OTHER)
    rows = page.stock.list
    filled = {}
    for supply in (leaf, other):
        rect = rows.visualRect(page.stock.model.index_of(supply.id))
        picture: QImage = rows.viewport().grab(rect).toImage()
        wanted = fill_colour(SupplyKind.TEA).rgb()
        x = 2 * 8 + 15
        filled[supply.id] = sum(picture.pixel(x, y) == wanted for y in range(picture.height()))
    assert filled[leaf.id] > 5 * filled[other.id] > 0


def test_retired_supplies_are_shown_on_wish_and_come_back(desk, page):
    leaf = tea(desk)
    sweet = sugar(desk)
    page.stock.list.choose(leaf.id)
    page.stock.sheet.retire_action.trigger()
    assert [view.supply.id for view in page.stock.model.rows()] == [sweet.id]
    page.stock.with_retired.setChecked(True)
    page.stock.list.choose(leaf.id)
    page.stock.sheet.restore_action.trigger()
    assert desk.stores.get(leaf.id).supply.retired_at is None


def test_emptied_bottles_come_back_with_one_press(desk, page):
    glass = desk.stores.add(
        SupplyDraft(
            name="Swing-tops",
            kind=SupplyKind.BOTTLE,
            measure=SupplyMeasure.PIECES,
            bottle_kind=BottleKind.FIZZY_GLASS,
            brim_volume_l=0.52,
        )
    )
    buy(desk, glass, 12.0, 2400)
    batch = souring_batch(desk)
    wish = desk.bottlings.wish_for(batch.id)
    group = replace(wish.groups[0], bottle_count=5, supply_id=glass.id)
    made = desk.bottlings.fill(replace(wish, groups=(group,)), "invented")
    page.stock.list.choose(glass.id)
    assert page.stock.sheet.return_buttons == {}
    desk.bottlings.finish(made.id)
    press(page.stock.sheet.return_buttons[made.id])
    assert desk.stores.get(glass.id).left == 12.0
    assert page.stock.sheet.return_buttons == {}
    desk.history.undo()
    assert list(page.stock.sheet.return_buttons) == [made.id]


def test_the_costs_are_worked_out_shown_and_saved(desk, page, tmp_path):
    leaf, sweet = tea(desk), sugar(desk)
    buy(desk, leaf, 100.0, 700)
    buy(desk, sweet, 1000.0, 200)
    plan = plan_batch(desk, name="=Hostile+1")
    desk.batches.edit_plan(
        plan.id,
        vessel_id=plan.vessel_id,
        culture_id=plan.culture_id,
        name=plan.name,
        wish=desk.batches.wish_of(plan),
        supplies=PlanSupplies(tea_id=leaf.id, sugar_id=sweet.id),
    )
    for step in desk.brewing.start(plan.id):
        desk.brewing.finish(step.id, 25.0)
    desk.batches.draw_off(plan.id)
    page.tabs.setCurrentWidget(page.costs)
    costs = page.costs
    assert "Type what a litre costs" in costs.summary.text()
    write(costs.shop, "3,5o")
    QTest.keyClick(costs.shop, Qt.Key.Key_Return)
    assert costs.rows["shop"].message.is_error
    write(costs.shop, "3,50")
    QTest.keyClick(costs.shop, Qt.Key.Key_Return)
    code = desk.batch_costs.currency()
    assert desk.batch_costs.shop_price().minor == 350
    assert (f"12.67\u00a0{code}", "saved against the shop") in costs.figures.figures()
    (row,) = costs.model.rows()
    said = [costs.model.cell(row, column) for column in range(costs.model.columnCount())]
    assert said[3] == "1.33\u00a0EUR"
    assert "Tea 0.98\u00a0EUR" in said[2]
    assert not page.grab().isNull()
    target = tmp_path / "costs.csv"
    costs.save_table(str(target))
    (line,) = csv.DictReader(io.StringIO(target.read_text(encoding="utf-8-sig")))
    assert line["Batch"] == "'=Hostile+1"
    assert line["Total"] == "1.33"
    costs.save_table(str(tmp_path / "no" / "folder.csv"))
    assert "could not be written" in costs.said.text()
    costs.uses.setValue(5)
    assert desk.batch_costs.bottle_uses() == 5
    opened = []
    page.open_batch.connect(opened.append)
    costs.table.setCurrentIndex(costs.model.index(0, 0))
    QTest.keyClick(costs.table, Qt.Key.Key_Return)
    assert opened == [plan.id]


def test_the_models_keep_qts_rules(desk, page, qtbot):
    testers = [
        QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
        for model in (page.stock.model, page.stock.sheet.lots, page.costs.model)
    ]
    leaf = tea(desk)
    buy(desk, leaf, 10.0, 100)
    buy(desk, leaf, 20.0)
    desk.stores.use(leaf.id, 15.0, DrawReason.OTHER)
    desk.history.undo()
    desk.history.undo()
    assert len(testers) == 3
    assert len(page.stock.sheet.lots.rows()) == 1


def test_a_plan_takes_from_the_stores_and_says_what_is_short(desk, qtbot):
    leaf, other, sweet = tea(desk), tea(desk, "Green", tea_kind=TeaKind.GREEN), sugar(desk)
    buy(desk, leaf, 8.0, 100)
    buy(desk, other, 100.0, 100)
    buy(desk, sweet, 1000.0, 200)
    plan = plan_batch(desk)
    desk.batches.drop_plan(plan.id)
    page = PlanPage(desk, replan_delay_ms=0)
    qtbot.addWidget(page)
    page.resize(1180, 800)
    page.show()
    stores = page.form.stores
    assert stores.supplies().tea_id == leaf.id
    assert stores.supplies().sugar_id == sweet.id
    row = page.form.rows["tea_supply_id"]
    assert row.message.text() == "8.00 g of Invented Assam left, 14.0 g needed."
    assert page.form.rows["sugar_supply_id"].message.text() == "Takes 175 g of 1000 g."
    page.form.tea_kind.setCurrentIndex(page.form.tea_kind.findData(TeaKind.GREEN))
    qtbot.waitUntil(lambda: row.message.text().startswith("Takes"))
    assert stores.supplies().tea_id == other.id
    combo = stores.combos[SupplyKind.SUGAR]
    combo.setCurrentIndex(0)
    press(page.plan_button)
    (made,) = desk.batches.all()
    assert desk.stores.planned_for(made.id) == {SupplyKind.TEA: other.id}
    page.edit_plan(made.id)
    assert stores.supplies().tea_id == other.id
    assert stores.supplies().sugar_id is None
    assert "of 100 g" in row.message.text()  # its own share is not taken twice
    combo.setCurrentIndex(combo.findData(sweet.id))
    press(page.start_button)
    assert desk.stores.planned_for(made.id) == {
        SupplyKind.TEA: other.id,
        SupplyKind.SUGAR: sweet.id,
    }


def test_a_bottling_takes_from_the_stores_and_says_what_is_short(desk, qtbot):
    glass = desk.stores.add(
        SupplyDraft(
            name="Rated bottles",
            kind=SupplyKind.BOTTLE,
            measure=SupplyMeasure.PIECES,
            bottle_kind=BottleKind.RATED,
            brim_volume_l=0.75,
            rated_bar=6.0,
        )
    )
    juice = desk.stores.add(
        SupplyDraft(
            name="Elderberry",
            kind=SupplyKind.FLAVOURING,
            measure=SupplyMeasure.VOLUME_L,
            addition_kind=AdditionKind.JUICE,
            sugar_share_low=0.06,
            sugar_share_high=0.09,
        )
    )
    sweet = sugar(desk)
    for supply, amount in ((glass, 2.0), (juice, 0.5), (sweet, 1000.0)):
        buy(desk, supply, amount, 100)
    souring_batch(desk)
    page = BottlePage(desk, delay_ms=0)
    qtbot.addWidget(page)
    page.resize(1180, 800)
    page.show()
    page.tabs.setCurrentWidget(page.fill)
    form = page.fill.form
    group = form.groups.rows[0]
    assert group.source.currentData() == glass.id
    assert (group.brim.value(), group.rated.value()) == (0.75, 6.0)
    assert group.count.value() == 3
    assert group.rows["source"].message.text() == (
        "2 pieces of Rated bottles left, 3 pieces needed."
    )
    form.additions.add_button.click()
    row = form.additions.rows[0]
    assert row.choice().supply_id == juice.id
    assert (row.low.value(), row.high.value()) == (6.0, 9.0)
    row.mass.set_value(104.0)
    page.fill.reckon()
    assert row.rows["what"].message.text() == "Takes 0.100 L of 0.500 L."
    assert form.priming_supply.currentData() == sweet.id
    form.edits["priming_sugar_g"].set_value(12.0)
    page.fill.reason.setText("invented, for a test")
    press(page.fill.fill_button)
    assert desk.stores.get(juice.id).left == pytest.approx(0.4)
    assert desk.stores.get(sweet.id).left == 988.0
    assert (desk.stores.get(glass.id).left, desk.stores.get(glass.id).unbooked) == (0.0, 1.0)


def test_what_runs_low_leads_from_the_due_list_to_the_stores(desk, qtbot):
    leaf = tea(desk, low_amount=60.0)
    buy(desk, leaf, 50.0, 400)
    desk.reminders.sync()
    page = DuePage(desk)
    qtbot.addWidget(page)
    page.show()
    wanted = []
    page.open_supply.connect(wanted.append)
    (card,) = page.findChildren(DueCard)
    assert card.title.text() == "Buy Invented Assam"
    assert card.open_button.text() == "Open the stores"
    press(card.open_button)
    assert wanted == [leaf.id]


def test_a_plan_without_stores_asks_nothing(desk, qtbot):
    plan_batch(desk)
    page = PlanPage(desk)
    qtbot.addWidget(page)
    page.show()
    assert not page.form.stores.isVisible()


def test_prices_follow_the_locale(desk, page):
    leaf = tea(desk)
    buy(desk, leaf, 100.0, 1250)
    before = QLocale()
    QLocale.setDefault(QLocale("de_DE"))
    try:
        page.stock.refresh()
        said = page.stock.model.detail(page.stock.model.rows()[0])
        assert "125,00\u00a0EUR" in said
    finally:
        QLocale.setDefault(before)
