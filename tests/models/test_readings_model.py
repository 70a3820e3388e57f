"""The words of the readings table."""

from __future__ import annotations

from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QAbstractItemModelTester

from brewdesk.models.readings import METHOD, VALUE, WHAT, WHEN, ReadingsModel, reading_words
from brewdesk.models.rowtable import SORT_ROLE
from brewdesk.services.records import Kind, Method, Quantity, ReadingDraft, TasteMark
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import open_desk, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path, FakeClock(zone=ZoneInfo("Europe/Berlin")))
    yield opened
    opened.store.close()


@pytest.fixture
def model(desk):
    made = ReadingsModel(desk.quantities, desk.clock)
    tester = QAbstractItemModelTester(
        made, QAbstractItemModelTester.FailureReportingMode.Warning, made
    )
    assert tester.model() is made
    return made


def keep(desk, batch, quantity, method, value=None, text=""):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=desk.clock.now(),
        quantity=quantity,
        method=method,
        value=value,
        text=text,
    )
    return desk.readings.record([draft])[0]


def row_texts(model, row=0):
    return [model.index(row, column).data() for column in range(model.columnCount())]


def test_a_ph_is_shown_with_its_uncertainty_and_local_time(desk, model):
    batch = souring_batch(desk)
    keep(desk, batch, Quantity.PH, Method.METER, 3.42)
    model.set_rows(desk.readings.of_batch(batch.id))
    when, what, value, method = row_texts(model)
    assert "10:00" in when  # 09:00 UTC is an hour later in Berlin in winter
    assert what == "pH"
    assert value == "3.42 ± 0.05"
    assert method == "Meter"


@pytest.mark.parametrize(
    ("quantity", "method", "value", "shown"),
    [
        (Quantity.TEMPERATURE_C, Method.THERMOMETER, 24.5, "24.5 ± 0.5 °C"),
        (Quantity.BRIX, Method.REFRACTOMETER, 5.4, "5.4 ± 0.2 °Bx"),
        (Quantity.SPECIFIC_GRAVITY, Method.HYDROMETER, 1.02, "1.020 ± 0.001"),
        (Quantity.PELLICLE_MM, Method.RULER, 6.0, "6.0 ± 0.5 mm"),
        (Quantity.TA_G_PER_L, Method.TITRATION, 5.0, "5.00 ± 0.25 g/L"),
    ],
)
def test_each_quantity_has_its_unit_and_digits(desk, model, quantity, method, value, shown):
    batch = souring_batch(desk)
    keep(desk, batch, quantity, method, value)
    model.set_rows(desk.readings.of_batch(batch.id))
    assert model.index(0, VALUE).data() == shown


def test_an_uncertainty_follows_the_value_into_fahrenheit(desk, model):
    batch = souring_batch(desk)
    keep(desk, batch, Quantity.TEMPERATURE_C, Method.THERMOMETER, 25.0)
    desk.settings.put_unit(Kind.TEMPERATURE, "°F")
    model.set_rows(desk.readings.of_batch(batch.id))
    # 25 °C = 77 °F by definition; a difference of 0.5 K is 0.9 °F.
    assert model.index(0, VALUE).data() == "77.0 ± 0.9 °F"


def test_decimal_commas_stay_commas_in_the_uncertainty(desk, model):
    batch = souring_batch(desk)
    keep(desk, batch, Quantity.PH, Method.STRIP, 3.5)
    model.set_rows(desk.readings.of_batch(batch.id))
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.German, QLocale.Country.Germany))
    try:
        assert model.index(0, VALUE).data() == "3,50 ± 0,30"
    finally:
        QLocale.setDefault(before)


def test_tastes_and_notes_are_words_without_a_method(desk, model):
    batch = souring_batch(desk)
    keep(desk, batch, Quantity.TASTE, Method.TONGUE, text=TasteMark.TOO_SOUR.value)
    keep(desk, batch, Quantity.NOTE, Method.EYE, text="<b>cloudy</b> & calm")
    model.set_rows(desk.readings.of_batch(batch.id))
    assert row_texts(model, 0)[WHAT:] == ["Taste", "Too sour", ""]
    assert row_texts(model, 1)[WHAT:] == ["Note", "<b>cloudy</b> & calm", ""]
    assert model.index(1, METHOD).data(Qt.ItemDataRole.AccessibleTextRole) == ""


def test_times_and_values_sort_by_size(desk, model):
    batch = souring_batch(desk)
    first = keep(desk, batch, Quantity.PH, Method.METER, 3.9)
    desk.clock.advance(days=1)
    second = keep(desk, batch, Quantity.PH, Method.METER, 3.42)
    model.set_rows([second, first])
    assert model.index(0, WHEN).data(SORT_ROLE) > model.index(1, WHEN).data(SORT_ROLE)
    assert model.index(0, VALUE).data(SORT_ROLE) == pytest.approx(3.42)


def test_a_reading_in_a_few_words(desk):
    batch = souring_batch(desk)
    reading = keep(desk, batch, Quantity.PH, Method.METER, 3.42)
    assert reading_words(reading, desk.quantities) == "pH 3.42"


def test_a_note_shows_what_its_words_were_read_as(desk, model):
    batch = souring_batch(desk)
    keep(desk, batch, Quantity.NOTE, Method.EYE, text="a bit sweet still")
    model.set_rows(desk.readings.of_batch(batch.id))
    assert row_texts(model)[VALUE] == "a bit sweet still (read as: too sweet)"


def test_a_note_beside_a_mark_or_without_a_verdict_stays_as_it_is(desk, model):
    batch = souring_batch(desk)
    keep(desk, batch, Quantity.NOTE, Method.EYE, text="vinegary")
    keep(desk, batch, Quantity.TASTE, Method.TONGUE, text=TasteMark.RIGHT.value)
    desk.clock.advance(hours=1)
    keep(desk, batch, Quantity.NOTE, Method.EYE, text="moved to the cellar")
    model.set_rows(desk.readings.of_batch(batch.id))
    values = [row_texts(model, row)[VALUE] for row in range(3)]
    assert values[0] == "vinegary"
    assert values[2] == "moved to the cellar"
