"""What the jar's sheet says of its film: when, how thick, and when none is a worry."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services.films import FilmReader
from brewdesk.services.filmwork import film_of as film_of_course
from brewdesk.services.forecasts import Forecasts
from brewdesk.services.jarcourse import JarCourse
from brewdesk.services.wording.films import film_words
from brewdesk.store.records import CultureDraft, ReadingDraft
from culturecore.outcome import Estimate
from culturecore.pellicle import FilmForecast
from culturecore.stages import (
    BatchStage,
    CultureOrigin,
    CultureState,
    Method,
    Quantity,
)
from tests.helpers.fakes import FakeClock, InlineJobs
from tests.helpers.watched_pantry import WatchedPantry

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture(autouse=True)
def _plain_locale():
    before = QLocale()
    QLocale.setDefault(QLocale.c())
    yield
    QLocale.setDefault(before)


@pytest.fixture
def pantry(tmp_path, qapp):
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(NOON))
    yield made
    made.close()


def add_culture(pantry, state=CultureState.AT_WORK, pellicle_mm=6.0):
    draft = CultureDraft(
        name="Amber line",
        origin=CultureOrigin.GIFT,
        state=state,
        born_at=NOON,
        pellicle_mm=pellicle_mm,
    )
    return pantry.door.quiet(lambda unit: unit.cultures.add(draft)).id


def measure(pantry, batch, thickness_mm, days_ago=0.0, sd=0.5):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=pantry.clock.now() - timedelta(days=days_ago),
        quantity=Quantity.PELLICLE_MM,
        method=Method.RULER,
        value=thickness_mm,
        sd=sd,
    )
    return pantry.door.quiet(lambda unit: unit.readings.add(draft))


def film_of(pantry, batch):
    with pantry.store.read() as unit:
        vessel = unit.vessels.get(batch.vessel_id)
        readings = unit.readings.where(batch_id=batch.id, quantity=Quantity.TEMPERATURE_C)
        inputs = FilmReader(pantry.door).of(unit, batch)
    return film_of_course(JarCourse(batch, vessel, readings), inputs)


def note(pantry, batch):
    forecasts = Forecasts(pantry.door, InlineJobs())
    forecasts.request(batch.id)
    found = [each for each in forecasts.now(batch.id).notes if "film" in each.lower()]
    assert len(found) <= 1
    return found[0] if found else ""


def test_a_jar_with_a_culture_is_told_how_thick_its_film_will_be(pantry):
    batch = pantry.add_batch(days_ago=9, culture_id=add_culture(pantry))
    made = film_of(pantry, batch).forecast
    low, high = (round(made.thickness_mm[share][made.days.index(16.0)]) for share in (0.1, 0.9))
    assert 0 < low < high
    assert note(pantry, batch) == f"Expected film: {low} to {high} mm by Wed 2 Dec."


def test_a_measured_film_narrows_the_sentence(pantry):
    batch = pantry.add_batch(days_ago=9, culture_id=add_culture(pantry, pellicle_mm=None))
    before = film_of(pantry, batch).forecast
    measure(pantry, batch, 3.0, days_ago=1)
    after = film_of(pantry, batch).forecast
    at = before.days.index(16.0)
    assert (
        after.thickness_mm[0.9][at] - after.thickness_mm[0.1][at]
        < before.thickness_mm[0.9][at] - before.thickness_mm[0.1][at]
    )
    assert note(pantry, batch).startswith("Expected film: ")


def test_a_jar_growing_from_raw_kombucha_is_told_when_to_worry(pantry):
    batch = pantry.add_batch(days_ago=1)
    assert film_of(pantry, batch).is_from_raw
    words = note(pantry, batch)
    assert words.startswith("First film expected about ")
    assert words.endswith("something probably holds it back.")
    pantry.clock.advance(days=25)
    late = note(pantry, batch)
    assert late.startswith("A first film was to be expected by ")
    assert "raw" in late


def test_a_culture_that_still_forms_counts_as_growing_from_raw(pantry):
    forming = add_culture(pantry, CultureState.FORMING)
    assert film_of(pantry, pantry.add_batch(days_ago=1, culture_id=forming)).is_from_raw
    at_work = add_culture(pantry)
    assert not film_of(pantry, pantry.add_batch(days_ago=1, culture_id=at_work)).is_from_raw


def test_once_a_film_was_measured_nobody_worries(pantry):
    batch = pantry.add_batch(days_ago=20)
    assert "was to be expected" in note(pantry, batch)
    measure(pantry, batch, 1.0)
    assert note(pantry, batch).startswith("Expected film: ")


def test_a_pellicle_measured_before_the_start_is_not_the_jars_own(pantry):
    batch = pantry.add_batch(days_ago=5, culture_id=add_culture(pantry))
    measure(pantry, batch, 6.0, days_ago=5.2)
    assert not film_of(pantry, batch).has_been_seen


def test_a_reading_without_its_uncertainty_counts_as_one_by_eye(pantry):
    sure = pantry.add_batch("Sure", days_ago=9)
    rough = pantry.add_batch("Rough", days_ago=9)
    measure(pantry, sure, 5.0, sd=0.5)
    measure(pantry, rough, 5.0, sd=None)
    widths = []
    for batch in (sure, rough):
        made = film_of(pantry, batch).forecast
        at = made.days.index(9.0)
        widths.append(made.thickness_mm[0.9][at] - made.thickness_mm[0.1][at])
    assert widths[0] < widths[1]


def test_a_batch_out_of_its_jar_or_with_impossible_amounts_says_nothing_of_a_film(pantry):
    done = pantry.add_batch(days_ago=9, stage=BatchStage.DRAWN_OFF, ended_at=NOON)
    assert note(pantry, done) == ""
    odd = pantry.add_batch("Odd", days_ago=9)
    draft = ReadingDraft(
        batch_id=odd.id,
        at=NOON,
        quantity=Quantity.TEMPERATURE_C,
        method=Method.THERMOMETER,
        value=90.0,
    )
    pantry.door.quiet(lambda unit: unit.readings.add(draft))
    assert film_of(pantry, odd) is None
    assert note(pantry, odd) == ""


# sentences


def made_film(low, high, first=(4.0, 3.0, 5.0), late=6.0, last_day=35.0):
    days = (0.0, 14.0, last_day)
    return FilmForecast(
        days=days,
        thickness_mm={0.1: (0.0, low, low), 0.5: (0.0, low, high), 0.9: (0.0, high, high)},
        first_film_day=Estimate(*first),
        usable_day=None,
        late_day=late,
    )


def said(film, now_day=7.0, *, is_from_raw=False, has_been_seen=False):
    return film_words(
        film,
        started_at=NOON,
        now_day=now_day,
        is_from_raw=is_from_raw,
        has_been_seen=has_been_seen,
        zone=UTC,
    )


def test_thickness_is_told_in_whole_millimetres_a_week_ahead():
    assert said(made_film(2.2, 4.8)) == "Expected film: 2 to 5 mm by Wed 9 Dec."
    assert said(made_film(3.1, 3.3)) == "Expected film: about 3 mm by Wed 9 Dec."
    assert said(made_film(0.2, 1.8)) == "Expected film: up to 2 mm by Wed 9 Dec."
    assert said(made_film(0.0, 0.2)) == "Expected film: up to 1 mm by Wed 9 Dec."


def test_a_first_film_is_told_with_its_bounds_and_worry_only_to_those_who_grow_one():
    plain = "First film expected about Sun 29 Nov (Sat 28 Nov to Mon 30 Nov)."
    assert said(made_film(1, 2), now_day=1.0) == plain
    assert said(made_film(1, 2), now_day=1.0, is_from_raw=True) == (
        plain + " Without one by Tue 1 Dec, something probably holds it back."
    )


def test_beyond_the_forecast_nothing_is_said():
    assert said(made_film(2, 5), now_day=30.0) == ""
    assert said(made_film(2, 5), now_day=30.0, is_from_raw=True, has_been_seen=True) == ""
