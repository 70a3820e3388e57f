"""The shelf at a glance."""

from __future__ import annotations

from datetime import timedelta
from zoneinfo import ZoneInfo

import pytest
from sqlalchemy import event

from brewdesk.services.culturecare import CultureCare
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.reminders import Reminders
from brewdesk.services.shelf import Shelf
from brewdesk.services.wording.shelf import stage_words
from brewdesk.store.records import ReadingDraft
from culturecore.outcome import Level
from culturecore.stages import BatchStage, Look, Material, Method, Quantity, StepKind


def _take(kit, batch, value, quantity=Quantity.PH, method=Method.METER, sd=None):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=kit.clock.now(),
        quantity=quantity,
        method=method,
        value=value,
        sd=sd,
    )
    return kit.readings.record([draft])[0]


def _jar(kit, shelf=None):
    (jar,) = (shelf or kit.shelf).jars()
    return jar


def _codes(jar):
    return [alert.code for alert in jar.alerts]


def test_an_empty_shelf_shows_nothing(kit):
    assert kit.shelf.jars() == ()


def test_an_empty_vessel_waits_for_a_batch(kit):
    vessel = kit.vessel()
    jar = _jar(kit)
    assert (jar.vessel, jar.batch, jar.culture) == (vessel, None, None)
    assert (jar.stage_code, jar.next_code, jar.next_at) == ("empty", "plan_batch", None)
    assert (jar.fill_volume_l, jar.fill_fraction, jar.liquid_height_cm) == (0.0, 0.0, 0.0)
    assert jar.profile == kit.vessels.profile(vessel.shape, 15.0, 4.5)
    assert jar.alerts == ()


def test_a_jar_follows_its_batch_from_plan_to_end(kit):
    culture = kit.culture()
    batch = kit.plan(culture=culture)
    jar = _jar(kit)
    assert (jar.stage_code, jar.next_code, jar.day_number) == ("planned", "brew_it", None)
    assert jar.fill_fraction == pytest.approx(4.0 / 4.5)
    assert jar.culture == culture

    steps = kit.brewing.start(batch.id)
    assert (_jar(kit).stage_code, _jar(kit).next_code) == ("brewing", "finish_run_sheet")
    for step in steps:
        kit.brewing.finish(step.id, 25.0)
    jar = _jar(kit)
    assert (jar.stage_code, jar.next_code, jar.day_number) == ("souring", "take_ph", 0)

    kit.clock.advance(days=9)
    kit.batches.draw_off(batch.id)
    jar = _jar(kit)
    assert (jar.stage_code, jar.next_code, jar.day_number) == ("drawn_off", "plan_batch", None)
    assert jar.fill_volume_l == 0.0
    assert jar.culture.id == culture.id

    kit.batches.close(batch.id)
    assert (_jar(kit).stage_code, _jar(kit).batch) == ("empty", None)


def test_while_brewing_the_jar_fills_as_the_steps_are_done(kit):
    batch = kit.plan()
    steps = {step.kind: step.id for step in kit.brewing.start(batch.id)}
    levels = [_jar(kit).fill_volume_l]
    for kind in (StepKind.BOIL, StepKind.ADD_COLD_WATER, StepKind.STARTER_IN):
        kit.brewing.finish(steps[kind], 25.0)
        levels.append(_jar(kit).fill_volume_l)
    assert levels == [
        0.0,
        pytest.approx(batch.hot_water_g / 1000.0),
        pytest.approx(4.0 - batch.starter_volume_l),
        4.0,
    ]


def test_a_running_timer_says_when_the_run_sheet_goes_on(kit):
    batch = kit.plan()
    step = kit.brewing.begin(kit.brewing.start(batch.id)[1].id)
    jar = _jar(kit)
    assert (jar.next_code, jar.next_at) == ("finish_run_sheet", step.ends_at)


def test_the_liquid_stands_as_high_as_its_volume_demands(kit):
    kit.souring()
    # A straight-sided vessel: height is volume over area.
    assert _jar(kit).liquid_height_cm == pytest.approx(4000.0 / (3.141592653589793 * 7.5**2))


def test_the_newest_ph_and_pellicle_are_shown(kit):
    batch = kit.souring()
    kit.clock.advance(days=1)
    _take(kit, batch, 3.9)
    kit.clock.advance(days=1)
    newest = _take(kit, batch, 3.7)
    _take(kit, batch, 2.0, Quantity.PELLICLE_MM, Method.RULER)
    jar = _jar(kit)
    assert (jar.latest_ph, jar.ph_at, jar.pellicle_mm) == (3.7, newest.at, 2.0)


def test_a_pellicle_not_measured_here_is_as_thick_as_the_cultures(kit):
    kit.souring(culture=kit.culture(pellicle_mm=4.0))
    assert _jar(kit).pellicle_mm == 4.0


def test_days_are_counted_by_the_calendar_where_the_maker_lives(kit):
    kit.clock.travel(ZoneInfo("Pacific/Auckland"))
    kit.souring()  # 22:00 on 25 November there
    assert _jar(kit).day_number == 0
    kit.clock.advance(hours=2, minutes=1)
    assert _jar(kit).day_number == 1


def test_a_measured_ph_within_the_band_is_worth_tasting(kit):
    batch = kit.souring()
    kit.clock.advance(days=8)
    for value, stage_code, next_code in (
        (3.31, "souring", "take_ph"),
        (3.3, "tasting", "taste"),
        (2.91, "tasting", "taste"),
        (2.9, "past_window", "draw_off"),
    ):
        _take(kit, batch, value)
        jar = _jar(kit)
        assert (jar.stage_code, jar.next_code) == (stage_code, next_code)
        kit.clock.advance(minutes=1)


def test_the_forecast_window_decides_where_no_ph_does(kit):
    batch = kit.souring()
    start = kit.clock.now()
    window = TastingWindow(opens_at=start + timedelta(days=8), closes_at=start + timedelta(days=12))
    shelf = Shelf(kit.door, kit.settings, window_of={batch.id: window}.get)

    jar = _jar(kit, shelf)
    assert (jar.stage_code, jar.next_code) == ("souring", "taste")
    assert jar.next_at == window.opens_at
    kit.clock.advance(days=8)
    assert _jar(kit, shelf).stage_code == "tasting"
    kit.clock.advance(days=4)
    assert _jar(kit, shelf).stage_code == "past_window"


def test_a_measured_ph_outweighs_the_forecast(kit):
    batch = kit.souring()
    start = kit.clock.now()
    kit.clock.advance(days=6)
    _take(kit, batch, 3.1)
    late = TastingWindow(opens_at=start + timedelta(days=20))
    assert _jar(kit, Shelf(kit.door, kit.settings, window_of=lambda _: late)).stage_code == (
        "tasting"
    )


def test_the_first_open_reminder_says_what_comes_next(kit):
    batch = kit.souring()
    reminders = Reminders(kit.door)
    reminders.sync()
    due = min(item.due_at for item in reminders.listed())
    jar = _jar(kit)
    assert (jar.next_code, jar.next_at) == ("look_for_mold", due)

    own_at = kit.clock.now() + timedelta(hours=1)
    own = reminders.add_own(batch.id, own_at, "buy a new cloth")
    assert (_jar(kit).next_code, _jar(kit).next_at) == ("own", own_at)
    reminders.snooze(own.id, due + timedelta(days=30))
    assert _jar(kit).next_code == "look_for_mold"


def test_a_ph_still_high_after_a_week_is_an_alarm(kit):
    batch = kit.souring()
    kit.clock.advance(days=8)
    _take(kit, batch, 4.3)
    (alert,) = _jar(kit).alerts
    assert (alert.code, alert.level) == ("ph_deadline_missed", Level.STOP)


def test_no_ph_by_the_deadline_is_a_warning(kit):
    kit.souring()
    kit.clock.advance(days=6, hours=23)
    assert _codes(_jar(kit)) == []
    kit.clock.advance(hours=1)
    assert _codes(_jar(kit)) == ["ph_not_taken_by_deadline"]


def test_an_old_high_ph_says_nothing_of_today(kit):
    batch = kit.souring()
    kit.clock.advance(days=3)
    _take(kit, batch, 4.3)
    assert _codes(_jar(kit)) == []
    kit.clock.advance(days=5)
    assert _codes(_jar(kit)) == ["ph_not_taken_by_deadline"]


def test_a_ph_once_low_enough_settles_the_deadline(kit):
    batch = kit.souring()
    kit.clock.advance(days=4)
    _take(kit, batch, 3.8)
    kit.clock.advance(days=6)
    assert _codes(_jar(kit)) == []


def test_a_strip_close_to_the_limit_does_not_settle_it(kit):
    batch = kit.souring()
    kit.clock.advance(days=7)
    _take(kit, batch, 4.0, method=Method.STRIP)
    assert _codes(_jar(kit)) == ["ph_deadline_unproven"]


def test_a_ph_taken_before_the_start_is_no_proof(kit):
    batch = kit.souring()
    kit.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now() - timedelta(hours=2),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.0,
            )
        ]
    )
    kit.clock.advance(days=8)
    assert _codes(_jar(kit)) == ["ph_not_taken_by_deadline"]


def test_too_sour_and_too_long_are_told(kit):
    batch = kit.souring()
    kit.clock.advance(days=31)
    _take(kit, batch, 2.4)
    assert sorted(_codes(_jar(kit))) == ["ph_over_acid", "souring_over_long"]


def test_a_vessel_that_must_not_be_used_is_marked(kit):
    kit.vessel(material=Material.LEAD_CRYSTAL)
    assert _codes(_jar(kit)) == ["material_lead"]


def test_retired_vessels_are_not_on_the_shelf(kit):
    kit.vessels.retire(kit.vessel().id)
    assert kit.shelf.jars() == ()


def test_a_new_plan_takes_the_place_of_the_batch_drawn_off_and_closes_it(kit):
    vessel = kit.vessel()
    drawn_off = kit.batches.draw_off(kit.souring(vessel).id)
    planned = kit.plan(vessel, name="Next")
    assert _jar(kit).batch == planned
    assert kit.batches.get(drawn_off.id).stage is BatchStage.CLOSED
    kit.history.undo()
    assert _jar(kit).batch == drawn_off


def test_the_number_of_reads_does_not_grow_with_the_shelf(kit):
    statements = []

    def count(_connection, _cursor, statement, *_rest):
        if statement.lstrip().upper().startswith("SELECT"):
            statements.append(statement)

    event.listen(kit.store._engine, "before_cursor_execute", count)
    counts = []
    for number in range(4):
        batch = kit.souring(kit.vessel(f"Jar {number}"), name=f"Batch {number}")
        _take(kit, batch, 3.9)
        Reminders(kit.door).sync()
        statements.clear()
        assert len(kit.shelf.jars()) == number + 1
        counts.append(len(statements))
    event.remove(kit.store._engine, "before_cursor_execute", count)
    assert len(set(counts[1:])) == 1  # what has not changed is not even read again
    assert counts[1] <= counts[0] <= 12


def test_the_ph_of_the_starter_is_not_that_of_the_batch(kit):
    """Measured before mixing: it must not call for tasting, nor count as low enough."""
    batch = kit.plan()
    kit.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.0,
            )
        ]
    )
    kit.clock.advance(hours=1)
    for step in kit.brewing.start(batch.id):
        kit.brewing.finish(step.id, 25.0)

    (jar,) = kit.shelf.jars()

    assert jar.stage_code == "souring"
    assert (jar.latest_ph, jar.ph_at) == (None, None)
    kit.clock.advance(days=8)
    (late,) = kit.shelf.jars()
    assert [alert.code for alert in late.alerts] == ["ph_not_taken_by_deadline"]


@pytest.mark.parametrize(
    ("looks", "codes"),
    [
        ([Look.FINE], []),
        ([Look.UNSURE], ["look_unsure"]),
        ([Look.MOLD], ["mold_discard_all"]),
        ([Look.UNSURE, Look.FINE], []),
        ([Look.FINE, Look.MOLD], ["mold_discard_all"]),
        ([Look.MOLD, Look.FINE], ["mold_suspected"]),  # a clean look alone clears nothing
    ],
)
def test_the_newest_look_is_told_at_the_jar(kit, looks, codes):
    batch = kit.souring()
    for look in looks:
        kit.clock.advance(minutes=5)
        kit.readings.record_look(batch.id, look)
    (jar,) = kit.shelf.jars()
    assert [verdict.code for verdict in jar.alerts] == codes


def test_a_look_of_a_batch_that_is_over_is_told_no_more(kit):
    batch = kit.souring()
    kit.readings.record_look(batch.id, Look.UNSURE)
    kit.batches.draw_off(batch.id)
    (jar,) = kit.shelf.jars()
    assert jar.alerts == ()


def test_a_resting_culture_lends_its_jar_volume_and_ph(kit):
    store = kit.vessel("Store")
    care = CultureCare(kit.door, kit.settings)
    culture = care.rest(kit.culture().id, store.id, 0.8)
    care.measure_ph(culture.id, 2.9, 0.05)
    (jar,) = kit.shelf.jars()
    assert jar.fill_volume_l == pytest.approx(0.8)
    assert (jar.latest_ph, jar.stage_code) == (2.9, "empty")
    assert stage_words(jar) == "Old Faithful at rest"


def test_looked_at_in_turns_the_jars_are_the_same(kit):
    for number in range(12):
        batch = kit.souring(kit.vessel(f"Jar {number}"), name=f"Batch {number}")
        _take(kit, batch, 3.9)
    Reminders(kit.door).sync()
    *steps, jars = kit.shelf.jars_in_turns()
    assert all(step is None for step in steps)
    assert len(steps) > 12 // 4  # the readings alone are read four batches a step
    assert jars == Shelf(kit.door, kit.settings).jars()
    assert kit.shelf.jar(jars[3].vessel.id) == jars[3]
