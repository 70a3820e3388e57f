"""Readings from a spreadsheet: whatever it is written like, nothing guessed, nothing twice."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from brewdesk.services.acts import ActKind
from brewdesk.services.loggertext import DateOrder, Degrees
from brewdesk.services.loggertrouble import TROUBLE_CODES, LoggerTrouble
from brewdesk.services.readingsfile import examine_readings, read_readings
from brewdesk.services.readingsimport import ReadingsImport
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.readingsfile import (
    cell_error_words,
    file_trouble_words,
    read_words,
)
from culturecore.stages import Quantity
from tests.helpers.fakes import InlineJobs

FUZZ = settings(max_examples=120, suppress_health_check=[HealthCheck.function_scoped_fixture])
PARIS = ZoneInfo("Europe/Paris")
TABLE = (
    "Date;Time;pH;Temp °C;Brix;SG;TA g/L;Notes\n"
    "2026-11-20;08:15;4,12;22,5;6,2;1,024;1,5;=first look\n"
    "2026-11-21;08:15;3,91;22,0;;;;\n"
    "2026-11-22;08:15;abc;;;;;smells good\n"
    "2026-11-23;25:15;3,70;;;;;\n"
    "2026-11-24;08:15;33;;;;;\n"
)


def write(tmp_path, text, encoding="utf-8"):
    path = tmp_path / "diary.csv"
    path.write_bytes(text.encode(encoding))
    return path


def read(path, zone=UTC, choice=None, **more):
    _, found = examine_readings(path)
    return read_readings(path, choice or found, zone, batch_id=1, **more)


def values(result, quantity):
    return [draft.value for draft in result.drafts if draft.quantity is quantity]


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "latin-1"])
@pytest.mark.parametrize("mark", [";", "\t", "|"])
def test_a_table_is_read_whatever_it_is_written_like(tmp_path, encoding, mark):
    result = read(write(tmp_path, TABLE.replace(";", mark), encoding))

    assert values(result, Quantity.PH) == [4.12, 3.91]
    assert values(result, Quantity.TEMPERATURE_C) == [22.5, 22.0]
    assert values(result, Quantity.BRIX) == [6.2]
    assert values(result, Quantity.SPECIFIC_GRAVITY) == [1.024]
    assert values(result, Quantity.TA_G_PER_L) == [1.5]
    notes = [draft.text for draft in result.drafts if draft.quantity is Quantity.NOTE]
    assert notes == ["=first look", "smells good"]
    assert [(error.line, error.code) for error in result.errors] == [
        (4, "value_unreadable"),
        (5, "time_impossible"),
        (6, "value_absurd"),
    ]
    assert result.first_at == datetime(2026, 11, 20, 8, 15, tzinfo=UTC)


def test_local_times_become_utc_and_fahrenheit_celsius(tmp_path):
    path = write(tmp_path, "when,Temp (°F),pH\n2026-07-01 10:00,77,3.5\n")
    result = read(path, PARIS)

    assert result.first_at == datetime(2026, 7, 1, 8, 0, tzinfo=UTC)
    assert values(result, Quantity.TEMPERATURE_C) == [25.0]
    _, choice = examine_readings(path)
    assert choice.layout.scale is Degrees.FAHRENHEIT


def test_dates_that_can_be_read_both_ways_are_asked_for(tmp_path):
    path = write(tmp_path, "Date,pH\n03/04/2026,3.5\n")
    preview, choice = examine_readings(path)
    assert preview.is_order_open
    with pytest.raises(LoggerTrouble, match="order_unknown"):
        read(path)
    month = replace(choice, layout=replace(choice.layout, date_order=DateOrder.MONTH))
    assert read(path, choice=month).first_at == datetime(2026, 3, 4, tzinfo=UTC)


def test_a_note_may_have_line_breaks_and_an_open_mark_swallows_nothing(tmp_path):
    good = 'Date,pH,Note\n2026-11-20,3.5,"two\nlines, ""quoted"""\n2026-11-21,3.4,\n'
    result = read(write(tmp_path, good))
    assert values(result, Quantity.PH) == [3.5, 3.4]
    assert 'two\nlines, "quoted"' in [draft.text for draft in result.drafts]

    rows = "".join(f"2026-{1 + n // 28:02d}-{1 + n % 28:02d},3.5,\n" for n in range(100))
    result = read(write(tmp_path, f'Date,pH,Note\n2025-11-20,3.6,"open\n{rows}'))
    assert len(values(result, Quantity.PH)) == 101


def test_what_the_batch_has_already_is_skipped_and_said(tmp_path):
    path = write(tmp_path, TABLE + "2026-11-20;08:15;4,13;;;;;\n")
    first = read(path)
    assert first.doubled == 1
    known = frozenset({(int(draft.at.timestamp()), draft.quantity) for draft in first.drafts})
    again = read(path, known=known)
    assert again.drafts == ()
    assert again.known == len(first.drafts) + 1
    assert "skipped" in read_words(again, UTC)


def test_columns_without_titles_are_for_the_maker_to_say(tmp_path):
    path = write(tmp_path, "2026-11-20,3.5\n2026-11-21,3.4\n")
    _, choice = examine_readings(path)
    assert choice.columns == ()
    said = replace(choice, columns=((Quantity.PH, 1),))
    assert values(read(path, choice=said), Quantity.PH) == [3.5, 3.4]


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "empty_file"),
        ("no table at all\n", "no_table"),
        ("Date,pH\n2026-11-20,x\n", "no_table"),
    ],
)
def test_files_that_hold_nothing_are_told(tmp_path, text, code):
    with pytest.raises(LoggerTrouble) as caught:
        read(write(tmp_path, text))
    assert caught.value.code == code
    assert file_trouble_words(caught.value)


def test_too_many_at_once_are_refused(tmp_path):
    start = datetime(2020, 1, 1)
    rows = "".join(f"{start + timedelta(minutes=n):%Y-%m-%d %H:%M},3.5\n" for n in range(2001))
    with pytest.raises(LoggerTrouble, match="too_many"):
        read(write(tmp_path, "Date,pH\n" + rows))


def test_reading_can_be_stopped(tmp_path):
    with pytest.raises(LoggerTrouble, match="cancelled"):
        read(write(tmp_path, TABLE), is_cancelled=lambda: True)


@FUZZ
@given(
    lines=st.lists(
        st.text(st.sampled_from('0123456789.,;:-/ "\t\nTZ+pHé\x00='), min_size=0, max_size=40),
        max_size=8,
    )
)
def test_any_text_gives_readings_or_our_own_trouble(tmp_path, lines):
    path = write(tmp_path, TABLE + "\n".join(lines))
    result = read(path)
    for error in result.errors:
        assert cell_error_words(error)
    assert all(draft.value is None or draft.value == draft.value for draft in result.drafts)


@FUZZ
@given(data=st.binary(max_size=300))
def test_any_bytes_give_readings_or_our_own_trouble(tmp_path, data):
    path = tmp_path / "x.csv"
    path.write_bytes(data)
    code = "read"
    try:
        read(path)
    except LoggerTrouble as trouble:
        code = trouble.code
    assert code in TROUBLE_CODES | {"read"}


def test_what_was_read_is_one_act_that_can_be_undone_and_done_again(kit, tmp_path):
    batch = kit.souring()
    at = kit.clock.now()
    kit.clock.advance(days=3)
    rows = [f"{at + timedelta(days=n):%Y-%m-%d %H:%M:%S},{4 - n / 10:.2f}" for n in range(3)]
    rows += [f"{at - timedelta(days=9):%Y-%m-%d},3.5", f"{at + timedelta(days=9):%Y-%m-%d},3.5"]
    path = write(tmp_path, "Date,pH\n" + "\n".join(rows))
    came = []
    work = ReadingsImport(kit.door, kit.readings, InlineJobs())
    work.was_read.connect(came.append)
    work.was_kept.connect(came.append)
    _, choice = examine_readings(path)
    work.start(batch, path, choice, UTC)
    (found,) = came
    assert [error.code for error in found.errors] == ["before_start", "time_ahead"]
    assert kit.readings.of_batch(batch.id) == ()
    heard = len(kit.heard)
    work.keep(batch, "diary.csv", found)
    work.keep(batch, "diary.csv", found)

    assert came[1:] == [3, 0]  # the second time everything is there already
    assert len(kit.heard) == heard + 1
    act = kit.history.undo_act()
    assert act.kind == ActKind.IMPORT_READINGS.value
    assert act_text(act) == "3 readings on Tall jar from diary.csv"
    assert [reading.sd for reading in kit.readings.of_batch(batch.id)] == [0.05] * 3
    kit.history.undo()
    assert kit.readings.of_batch(batch.id) == ()
    kit.history.redo()
    assert len(kit.readings.of_batch(batch.id)) == 3
