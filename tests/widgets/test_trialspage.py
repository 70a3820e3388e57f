"""The trials page, through real keys and clicks."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QDialog,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
)

from brewdesk.models.trialjars import CROSSING, LEVEL, STAGE, TrialJarsModel
from brewdesk.services.records import (
    BatchStage,
    Quantity,
    TasteMark,
    TeaKind,
    TrialFactor,
    TrialState,
)
from brewdesk.widgets.armlook import ARM_LOOKS
from brewdesk.widgets.trialspage import TrialsPage
from tests.helpers.pantry_desk import souring_batch
from tests.helpers.trial_desk import enter, jars, planned_trial, read_jars, souring_trial

HOSTILE = "<b>bold</b> &amp; {name} \u202e %s"


@pytest.fixture
def page(desk, qtbot):
    made = TrialsPage(desk)
    qtbot.addWidget(made)
    made.resize(1180, 760)
    made.show()
    made.grab()
    return made


def click(qtbot, parent, name):
    button = parent.findChild(QPushButton, name)
    assert button is not None, name
    assert button.isVisible(), name
    assert button.isEnabled(), name
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def dialog(page):
    """The dialog that is open over the page."""
    found = [one for one in page.findChildren(QDialog) if one.isVisible()]
    assert len(found) == 1
    found[0].grab()
    return found[0]


def typed(qtbot, parent, name, text):
    line = parent.findChild(QLineEdit, name)
    assert line is not None, name
    line.selectAll()
    qtbot.keyClicks(line, text)


def said(page, name):
    label = page.findChild(QLabel, name)
    assert label.textFormat() is Qt.TextFormat.PlainText
    return label.text()


def choose_row(page, row=0):
    page.sheet.table.selectRow(row)


def test_an_empty_page_says_why_it_takes_several_jars(page, qtbot):
    assert "two jars of the same tea differ as well" in said(page, "trials_why")
    click(qtbot, page, "trial_first_plan")
    assert dialog(page).objectName() == "trial_form"
    dialog(page).reject()


def test_a_trial_is_planned_by_keys_and_clicks(page, desk, qtbot):
    jars(desk, 4)
    click(qtbot, page, "trial_first_plan")
    form = dialog(page)
    typed(qtbot, form, "trial_form_name", "Two teas")
    typed(qtbot, form, "trial_form_question", "Which is quicker?")
    assert "batches that there are already" in said(form, "trial_outcome")
    for n in range(4):
        form.findChild(QCheckBox, f"trial_vessel_{n}").click()
    assert "no more than a hint" in said(form, "trial_outcome")
    click(qtbot, form, "trial_form_go")
    (trial,) = desk.trials.all()
    assert (trial.name, trial.factor, trial.is_blind) == ("Two teas", TrialFactor.TEA, True)
    assert [arm.level for arm in desk.trials.arms(trial.id)] == ["black", "green"]
    assert said(page, "trial_title") == "Two teas"
    assert "codes closed" in said(page, "trial_state")
    page.grab()
    desk.history.undo()
    assert desk.trials.all() == ()
    assert page.first_plan.isVisible()


def test_a_form_that_is_refused_keeps_what_was_typed(page, desk, qtbot):
    jars(desk, 2)
    click(qtbot, page, "trial_first_plan")
    form = dialog(page)
    click(qtbot, form, "trial_form_go")
    assert form.rows["name"].message.is_error
    typed(qtbot, form, "trial_form_name", "Two teas")
    form.findChild(QCheckBox, "trial_vessel_0").click()
    click(qtbot, form, "trial_form_go")
    assert "at least one vessel for each level" in form.rows["vessels"].message.text()
    assert form.findChild(QLineEdit, "trial_form_name").text() == "Two teas"
    form.reject()
    assert desk.trials.all() == ()


@pytest.mark.parametrize(
    ("factor", "levels"),
    [
        (TrialFactor.TEA_STRENGTH, ["4.0", "8.0"]),
        (TrialFactor.SUGAR, ["50.0", "70.0"]),
        (TrialFactor.STARTER_SHARE, ["0.1", "0.2"]),
    ],
)
def test_each_factor_offers_its_levels_and_names_them(page, desk, qtbot, factor, levels):
    jars(desk, 2)
    click(qtbot, page, "trial_first_plan")
    form = dialog(page)
    form.factor.setCurrentIndex(form.factor.findData(factor))
    typed(qtbot, form, "trial_form_name", "A trial")
    for n in range(2):
        form.findChild(QCheckBox, f"trial_vessel_{n}").click()
    click(qtbot, form, "trial_form_go")
    (trial,) = desk.trials.all()
    arms = desk.trials.arms(trial.id)
    assert [arm.level for arm in arms] == levels
    assert all(arm.name for arm in arms)


def test_vessels_are_dealt_out_by_hand_where_they_are_the_factor(page, desk, qtbot):
    jars(desk, 2)
    click(qtbot, page, "trial_first_plan")
    form = dialog(page)
    form.factor.setCurrentIndex(form.factor.findData(TrialFactor.VESSEL))
    assert form.hand.isChecked()
    assert not form.hand.isEnabled()
    typed(qtbot, form, "trial_form_name", "Shapes")
    typed(qtbot, form, "arm_name_0", "Wide")
    typed(qtbot, form, "arm_name_1", "Tall")
    for n in range(2):
        form.findChild(QCheckBox, f"trial_vessel_{n}").click()
        form.findChild(QComboBox, f"trial_vessel_level_{n}").setCurrentIndex(1 - n)
    form.blind.setChecked(False)
    click(qtbot, form, "trial_form_go")
    view = desk.trials.view(desk.trials.all()[0].id)
    assert [jar.arm.name for jar in view.jars] == ["Tall", "Wide"]


def test_a_third_level_comes_and_goes(page, desk, qtbot):
    click(qtbot, page, "trial_first_plan")
    form = dialog(page)
    click(qtbot, form, "arm_more")
    assert len(form.wish().arms) == 3
    click(qtbot, form, "arm_less")
    assert len(form.wish().arms) == 2
    assert not form.arms.less.isEnabled()
    form.reject()


def test_starting_plans_the_batches_with_their_codes_on_the_shelf(page, desk, qtbot):
    trial = planned_trial(desk)
    click(qtbot, page, "trial_start")
    form = dialog(page)
    assert not form.rows["tea_kind"].isVisible()
    typed(qtbot, form, "trial_start_starter_share", "15 %")
    click(qtbot, form, "trial_start_go")
    batches = desk.batches.all()
    codes = {jar.jar.code for jar in desk.trials.view(trial.id).jars}
    assert {batch.name for batch in batches} == {f"Two teas {code}" for code in codes}
    assert {batch.tea_kind for batch in batches} == {TeaKind.BLACK, TeaKind.GREEN}
    assert all(b.starter_volume_l == pytest.approx(0.15) for b in batches)
    assert not page.sheet.buttons["start"].isVisible()


def test_while_the_codes_are_closed_no_level_is_on_the_page(page, desk, qtbot):
    trial = souring_trial(desk)
    read_jars(desk, trial)
    page.grab()
    shown = " ".join(label.text() for label in page.findChildren(QLabel) if label.isVisible())
    model = page.sheet.model
    shown += " ".join(
        model.index(r, c).data() for r in range(4) for c in range(model.columnCount())
    )
    assert "Green" not in shown
    assert "Black" not in shown
    assert model.index(0, LEVEL).data() == "closed"
    assert page.sheet.chart.legend.isHidden()
    assert page.sheet.effects.isHidden()
    click(qtbot, page, "trial_reveal")
    page.grab()
    assert {model.index(r, LEVEL).data() for r in range(4)} == {"Black", "Green"}
    assert page.sheet.chart.legend.isVisible()
    assert "point to it but do not settle it" in said(page, "trial_headline") or (
        "do not tell" in said(page, "trial_headline")
    )
    desk.history.undo()
    assert model.index(0, LEVEL).data() == "closed"


def test_warnings_are_shown_while_the_trial_is_blind(page, desk, qtbot):
    trial = souring_trial(desk, 2)
    desk.clock.advance(days=9)
    jar = desk.trials.view(trial.id).jars[0]
    enter(desk, jar.batch.id, Quantity.PH, 4.6)
    assert desk.shelf.jar(jar.vessel.id).alerts

    def shown():
        return [label.text() for label in page.sheet.findChildren(QLabel) if label.isVisible()]

    qtbot.waitUntil(lambda: jar.jar.code in shown())
    assert any("4.6" in text for text in shown())


def test_curves_are_told_apart_by_more_than_colour(page, desk, qtbot):
    trial = souring_trial(desk, is_blind=False)
    read_jars(desk, trial)
    page.grab()
    spec = page.sheet.chart.spec()
    assert len(spec.points) == 24
    assert any(point.text.startswith("Green · ") for point in spec.points)
    looks = [(look.token, look.dashes, look.symbol) for look in ARM_LOOKS]
    for part in range(3):
        assert len({look[part] for look in looks}) == len(looks)


def test_an_interval_stands_on_its_side_of_zero(page, desk, qtbot):
    trial = souring_trial(desk, 8, is_blind=False)
    read_jars(desk, trial, green=6.0, black=10.0)
    page.grab()
    (row,) = page.sheet.effects.rows
    effect = desk.trials.view(trial.id).comparisons[0].effect
    zero = row.bar.x_of(0.0)
    assert row.bar.x_of(effect.low) < row.bar.x_of(effect.high) < zero
    assert zero == row.bar.width() / 2
    assert "earlier" in row.bar.accessibleName()
    assert "Green was" in row.words.text()


def test_glasses_are_tasted_by_code(page, desk, qtbot):
    trial = souring_trial(desk, 2)
    click(qtbot, page, "trial_taste")
    form = dialog(page)
    order = [jar.code for jar in desk.trials.tasting_order(trial.id)]
    assert [glass.code for glass in form.glasses] == order
    shown = " ".join(label.text() for label in form.findChildren(QLabel))
    assert "Green" not in shown
    typed(qtbot, form, "trial_tasting_taster", "T")
    typed(qtbot, form, f"liking_{order[0]}", "11")
    click(qtbot, form, "trial_tasting_go")
    assert form.said.is_error
    typed(qtbot, form, f"liking_{order[0]}", "7,5")
    form.glasses[1].mark.button(TasteMark.TOO_SOUR).click()
    form.glasses[1].words.setText(HOSTILE)  # no keyboard of a test has all of these signs
    click(qtbot, form, "trial_tasting_go")
    scores = {j.jar.code: j.scores for j in desk.trials.view(trial.id).jars}
    assert [(s.liking, s.taster) for s in scores[order[0]]] == [(7.5, "T")]
    assert [(s.mark, s.text) for s in scores[order[1]]] == [(TasteMark.TOO_SOUR, HOSTILE)]


def test_a_jar_is_left_out_with_a_reason_and_taken_back(page, desk, qtbot):
    trial = souring_trial(desk)
    choose_row(page)
    click(qtbot, page, "trial_leave_out")
    form = dialog(page)
    click(qtbot, form, "trial_leave_out_go")
    assert form.rows["reason"].message.is_error
    typed(qtbot, form, "trial_leave_out_reason", "mold")
    click(qtbot, form, "trial_leave_out_go")
    assert page.sheet.model.index(0, STAGE).data() == "left out: mold"
    assert len(desk.trials.view(trial.id).counted) == 3
    choose_row(page)
    click(qtbot, page, "trial_take_back")
    assert len(desk.trials.view(trial.id).counted) == 4


def test_a_batch_there_is_already_joins_and_what_differs_is_listed(page, desk, qtbot):
    souring_batch(desk, "Old one")
    souring_batch(desk, "Other one", vessel="Wide jar")
    trial = planned_trial(desk, 0, is_blind=False)
    for n in range(2):
        page.sheet._fill_menu()
        page.do("attach")
        form = dialog(page)
        form.arm.setCurrentIndex(n)
        click(qtbot, form, "trial_attach_go")
    assert len(desk.trials.view(trial.id).jars) == 2
    assert "Culture – " in said(page, "trial_differences")
    assert "cannot be told" in said(page, "trial_differences")


def test_a_trial_ends_with_a_conclusion_and_its_codes_open(page, desk, qtbot):
    trial = souring_trial(desk, 2)
    click(qtbot, page, "trial_end")
    form = dialog(page)
    form.findChild(QPlainTextEdit).setPlainText("They are alike.")
    click(qtbot, form, "trial_end_go")
    assert desk.trials.get(trial.id).state is TrialState.ENDED
    assert "They are alike." in said(page, "trial_conclusion")
    assert not page.sheet.buttons["end"].isVisible()
    assert page.sheet.model.index(0, LEVEL).data() in ("Black", "Green")
    assert {b.stage for b in desk.batches.all()} == {BatchStage.SOURING}


def test_a_trial_is_given_up_and_renamed(page, desk, qtbot):
    trial = planned_trial(desk)
    page.do("edit")
    typed(qtbot, dialog(page), "trial_edit_name", "Teas again")
    click(qtbot, dialog(page), "trial_edit_go")
    assert said(page, "trial_title") == "Teas again"
    page.do("drop")
    click(qtbot, dialog(page), "trial_end_go")
    assert desk.trials.get(trial.id).state is TrialState.DROPPED


def test_how_many_jars_is_answered_before_anything_is_planned(page, qtbot):
    click(qtbot, page, "trial_first_how_many")
    form = dialog(page)
    assert "only a guess" in form.known.text()
    typed(qtbot, form, "power_difference", "1")
    typed(qtbot, form, "power_scatter", "1")
    assert said(form, "power_answer").startswith("17 jars of each, 34 in all.")
    typed(qtbot, form, "power_jars", "17")
    assert said(form, "power_at_hand").startswith("17 jars of each see it in 81 of 100")
    typed(qtbot, form, "power_jars", "1")
    assert form.rows["jars"].message.is_error
    assert said(form, "power_answer") == ""
    typed(qtbot, form, "power_scatter", "much")
    assert form.rows["scatter"].message.is_error
    form.reject()


def test_a_hidden_page_catches_up_when_it_is_shown(page, desk, qtbot):
    page.hide()
    planned_trial(desk)
    assert page.list.count() == 0
    page.show()
    assert page.list.count() == 1


def test_a_jar_on_the_shelf_is_asked_for(page, desk, qtbot):
    souring_trial(desk, 2)
    choose_row(page, 1)
    with qtbot.waitSignal(page.open_batch) as asked:
        click(qtbot, page, "trial_to_jar")
    assert asked.args[0] in {batch.id for batch in desk.batches.all()}


def test_hostile_words_stand_as_they_were_typed(page, desk, qtbot):
    souring_trial(desk, 2, name=HOSTILE, question=HOSTILE, is_blind=False)
    page.grab()
    assert said(page, "trial_title") == HOSTILE
    assert said(page, "trial_question") == HOSTILE
    assert page.list.item(0).text().startswith(HOSTILE)


def test_the_table_of_jars_is_a_sound_model(desk):
    trial = souring_trial(desk)
    model = TrialJarsModel(desk.quantities)
    tester = QAbstractItemModelTester(
        model, QAbstractItemModelTester.FailureReportingMode.Fatal, model
    )
    assert tester.model() is model
    model.set_rows(desk.trials.view(trial.id).jars)
    read_jars(desk, trial)
    model.set_rows(desk.trials.view(trial.id).jars)
    assert all(model.index(row, CROSSING).data().startswith("day ") for row in range(4))


def test_every_control_has_a_name_to_be_read_out(page, desk, qtbot):
    souring_trial(desk, 2)
    page.grab()
    page.do("taste")
    for widget in (*page.findChildren(QLineEdit), *page.findChildren(QComboBox), page.list,
                   page.sheet.table):  # fmt: skip
        if widget.isVisible() and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            assert widget.accessibleName(), widget.objectName()
    dialog(page).reject()
    QApplication.processEvents()


def test_a_jar_that_must_not_be_drunk_has_no_glass_and_says_why(page, desk, qtbot):
    trial = souring_trial(desk, 2)
    desk.clock.advance(days=9)
    first, second = desk.trials.view(trial.id).jars
    enter(desk, first.batch.id, Quantity.PH, 4.6)
    click(qtbot, page, "trial_taste")
    form = dialog(page)
    assert [glass.code for glass in form.glasses] == [second.jar.code]
    shown = " ".join(label.text() for label in form.findChildren(QLabel))
    assert f"{first.jar.code} is not to be tasted." in shown
    form.reject()


def test_a_discarded_jar_that_still_counts_is_pointed_out(page, desk, qtbot):
    trial = souring_trial(desk, 2)
    jar = desk.trials.view(trial.id).jars[0]
    desk.batches.discard(jar.batch.id, "fuzzy spots")

    def shown():
        return " ".join(label.text() for label in page.sheet.findChildren(QLabel))

    qtbot.waitUntil(lambda: f"{jar.jar.code} was discarded (fuzzy spots)." in shown())
    desk.trials.leave_out(jar.jar.id, "mold")
    qtbot.waitUntil(lambda: "was discarded" not in shown())
