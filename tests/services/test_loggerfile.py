"""Loggers' files of every make: what they say is read exactly, and what cannot be is told."""

from __future__ import annotations

import random
import sqlite3
import time
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from brewdesk.services import loggerread
from brewdesk.services.loggerfile import examine, sampled, with_temperature_column
from brewdesk.services.loggerread import ERRORS_KEPT, read_log
from brewdesk.services.loggertext import DateOrder, Degrees, TimeReader, celsius_of, scale_named
from brewdesk.services.loggertrouble import ROW_CODES, TROUBLE_CODES, LoggerTrouble
from brewdesk.services.packedsamples import unpack

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
FAR = NOW + timedelta(days=3000)
BERLIN = ZoneInfo("Europe/Berlin")
FIRST = datetime(2026, 11, 13, 10, 0)  # the 13th: day and month cannot be mistaken


@pytest.fixture
def file(tmp_path):
    def write(text, encoding="utf-8"):
        path = tmp_path / "log.csv"
        path.write_bytes(text.encode(encoding) if isinstance(text, str) else text)
        return path

    return write


def read(path, zone=UTC, **changes):
    layout = replace(examine(path).layout, **changes)
    return read_log(path, layout, zone, now=NOW)


def samples_of(got):
    at_s, celsius = unpack(got.packed.chunks)
    return list(zip(at_s.tolist(), celsius.tolist(), strict=True))


def utc_s(*parts):
    return int(datetime(*parts, tzinfo=UTC).timestamp())


def lines(form, count=30, *, step=timedelta(minutes=10), first=FIRST):
    return [form(first + n * step, 20.0 + n % 300 / 10) for n in range(count)]


KINDS = {
    "iso and comma": ("Time,Temp (C)", lambda at, c: f"{at:%Y-%m-%d %H:%M:%S},{c:.1f}"),
    "no header": ("", lambda at, c: f"{at:%Y-%m-%d %H:%M},{c:.1f}"),
    "decimal comma": (
        "Datum;Zeit;Temperatur °C",
        lambda at, c: f"{at:%d.%m.%Y};{at:%H:%M:%S};{c:.1f}".replace(".", ",").replace(
            f"{at:%d,%m,%Y}", f"{at:%d.%m.%Y}"
        ),
    ),
    "tab": ("No\tDate\tTemp", lambda at, c: f"7\t{at:%Y/%m/%d %H:%M}\t{c:.1f}"),
    "pipe": ("when|temp", lambda at, c: f"{at:%Y-%m-%dT%H:%M:%S}|{c:.1f}"),
    "zulu": ("t,temp", lambda at, c: f"{at:%Y-%m-%dT%H:%M:%S}Z,{c:.1f}"),
    "quoted": ("Time,Temp,RH", lambda at, c: f'"{at:%Y-%m-%d %H:%M:%S}","{c:.1f}","55"'),
    "twelve hours": ("Time,Temp", lambda at, c: f"{at:%m/%d/%Y %I:%M:%S %p},{c:.1f}"),
    "month by name": ("Time,Temp", lambda at, c: f"{at.day}-Nov-{at:%Y %H:%M},{c:.1f}"),
    "day first, short year": ("Time;Temp", lambda at, c: f"{at:%d/%m/%y %H:%M};{c:.1f}"),
    "humidity first": (
        "#;Time;Humidity %;Temperature",
        lambda at, c: f"1;{at:%d.%m.%Y %H:%M};55,5;{c:.1f}",
    ),
    "unit in the cell": ("Time,Temp", lambda at, c: f"{at:%Y-%m-%d %H:%M},{c:.1f} °C"),
}


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "latin-1"])
def test_files_of_every_kind_say_the_same(file, kind, encoding):
    title, form = KINDS[kind]
    path = file("\n".join([title, *lines(form)]) + "\n", encoding)
    assert not examine(path).is_order_open
    got = read(path)
    first_s = int(FIRST.replace(tzinfo=UTC).timestamp())
    expected = [(first_s + 600 * n, float(np.float32(round(20.0 + n / 10, 1)))) for n in range(30)]
    assert samples_of(got) == expected
    assert got.error_count == 0


@pytest.mark.parametrize("breaks", ["\r\n", "\r", "\n"])
def test_line_breaks_of_every_system(file, breaks):
    _, form = KINDS["iso and comma"]
    assert read(file(breaks.join(["Time,Temp", *lines(form)]) + breaks)).packed.count == 30


def test_lines_above_the_table_are_passed_over(file):
    junk = ['Logger 5" display', "Serial: 12-34", "Started; by hand", "", "Time,Temp,RH"]
    path = file("\n".join([*junk, *lines(lambda at, c: f"{at:%Y-%m-%d %H:%M},{c:.1f},50")]))
    layout = examine(path).layout
    assert (layout.first_line, layout.titles) == (6, ("Time", "Temp", "RH"))
    assert read(path).error_count == 0


def test_a_date_that_can_be_read_both_ways_is_asked_for(file):
    form = lambda at, c: f"{at:%d/%m/%Y %H:%M},{c:.1f}"  # noqa: E731  # as the table above
    path = file("\n".join(["Time,Temp", *lines(form, first=datetime(2026, 4, 3))]))
    found = examine(path)
    assert found.is_order_open
    with pytest.raises(LoggerTrouble) as refused:
        read_log(path, found.layout, UTC, now=NOW)
    assert refused.value.code == "order_unknown"
    by_day = read(path, date_order=DateOrder.DAY)
    by_month = read(path, date_order=DateOrder.MONTH)
    assert by_day.first_at == datetime(2026, 4, 3, tzinfo=UTC)
    assert by_month.first_at == datetime(2026, 3, 4, tzinfo=UTC)


def test_the_end_of_a_long_file_settles_what_its_beginning_leaves_open(file):
    form = lambda at, c: f"{at:%d/%m/%Y %H:%M},{c:.1f}"  # noqa: E731  # as the table above
    rows = lines(form, 20_000, step=timedelta(minutes=1), first=datetime(2026, 11, 1))
    found = examine(file("\n".join(["Time,Temp", *rows])))
    assert found.layout.date_order is DateOrder.DAY
    assert not found.is_order_open


@pytest.mark.parametrize(
    ("title", "values", "scale"),
    [
        ("Temp (°F)", ("70.0", "71.0"), Degrees.FAHRENHEIT),
        ("Temperature_F", ("70.0", "71.0"), Degrees.FAHRENHEIT),
        ("Fahrenheit", ("70.0", "71.0"), Degrees.FAHRENHEIT),
        ("Temp", ("70.0", "71.0"), Degrees.FAHRENHEIT),  # no room is that warm in degC
        ("Temp", ("21.0", "22.0"), Degrees.CELSIUS),
        ("Temp (°C)", ("50.0", "51.0"), Degrees.CELSIUS),
        ("Temp", ("70 °F", "71 °F"), Degrees.FAHRENHEIT),
    ],
)
def test_the_scale_is_found_in_the_title_the_cells_or_the_values(file, title, values, scale):
    rows = [f"2026-11-13 1{n}:00,{value}" for n, value in enumerate(values)]
    assert examine(file("\n".join([f"Time,{title}", *rows]))).layout.scale is scale


def test_fahrenheit_is_read_as_celsius(file):
    got = read(file("Time,Temp (F)\n2026-11-13 10:00,68.0\n2026-11-13 11:00,32\n"))
    assert [celsius for _, celsius in samples_of(got)] == [20.0, 0.0]


def test_every_row_that_is_left_out_is_told_with_its_line(file):
    text = (
        "Time,Temp\n"  # 1
        "2026-11-13 10:00,20.0\n"
        "\n"  # 3
        "2026-11-13 10:10\n"  # 4
        "yesterday,20.0\n"  # 5
        "2026-11-31 10:20,20.0\n"  # 6
        "2026-11-13 25:00,20.0\n"  # 7
        "2026-11-13 10:30,\n"  # 8
        "2026-11-13 10:40,warm\n"  # 9
        "2026-11-13 10:50,nan\n"  # 10
        "2026-11-13 11:00,1e9\n"  # 11
        "2026-11-13 11:10,850\n"  # 12
        "2027-11-13 11:20,20.0\n"  # 13
        ";;,,\n"  # 14
        "2026-11-13 11:30,21.0\n"
        "\n\n"
    )
    got = read(file(text))
    assert [(error.line, error.code) for error in got.errors] == [
        (3, "empty_row"),
        (4, "too_few_columns"),
        (5, "time_unreadable"),
        (6, "date_impossible"),
        (7, "time_impossible"),
        (8, "temperature_missing"),
        (9, "temperature_unreadable"),
        (10, "temperature_not_finite"),
        (11, "temperature_unreadable"),
        (12, "temperature_absurd"),
        (13, "time_ahead"),
        (14, "time_unreadable"),
    ]
    assert got.error_count == 12
    assert [celsius for _, celsius in samples_of(got)] == [20.0, 21.0]
    assert {error.code for error in got.errors} <= ROW_CODES


def test_of_very_many_errors_the_first_are_told_and_all_are_counted(file):
    rows = ["2026-11-13 10:00,20.0"] + ["2026-11-13 10:10,warm"] * 1000
    got = read(file("\n".join(["Time,Temp", *rows])))
    assert got.error_count == 1000
    assert [error.line for error in got.errors] == list(range(3, 3 + ERRORS_KEPT))


def test_rows_out_of_order_are_sorted_and_a_time_counts_once(file):
    rows = ["2026-11-13 11:00,21", "2026-11-13 10:00,20", "2026-11-13 11:00,29"]
    got = read(file("\n".join(["Time,Temp", *rows])))
    assert samples_of(got) == [(utc_s(2026, 11, 13, 10), 20.0), (utc_s(2026, 11, 13, 11), 21.0)]
    assert (got.doubled, got.was_in_order) == (1, False)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        (b"", "empty_file"),
        (b"\xef\xbb\xbf\r\n \n", "empty_file"),
        (b"a,b\n1,2\n", "no_table"),
        (b"20.1\n20.2\n", "no_table"),
        (bytes(range(256)) * 20, "no_table"),
    ],
)
def test_what_is_no_log_is_refused_as_a_whole(file, text, code):
    with pytest.raises(LoggerTrouble) as refused:
        examine(file(text))
    assert refused.value.code == code


def test_a_file_that_is_not_there_is_refused(tmp_path):
    with pytest.raises(LoggerTrouble) as refused:
        examine(tmp_path / "gone.csv")
    assert refused.value.code == "unreadable"


def test_reading_stops_when_asked_to(file):
    path = file("\n".join(["Time,Temp", *lines(KINDS["iso and comma"][1])]))
    with pytest.raises(LoggerTrouble) as stopped:
        read_log(path, examine(path).layout, UTC, now=NOW, is_cancelled=lambda: True)
    assert stopped.value.code == "cancelled"


def test_progress_rises_to_the_whole(file):
    form = KINDS["iso and comma"][1]
    path = file("\n".join(["Time,Temp", *lines(form, 120_000, step=timedelta(seconds=5))]))
    shares = []
    read_log(path, examine(path).layout, UTC, now=NOW, progress=shares.append)
    assert len(shares) > 2
    assert shares == sorted(shares)
    assert shares[-1] == 1.0


def test_too_many_rows_are_refused(file, monkeypatch):
    monkeypatch.setattr(loggerread, "MOST_ROWS", 20)
    path = file("\n".join(["Time,Temp", *lines(KINDS["iso and comma"][1])]))
    with pytest.raises(LoggerTrouble) as refused:
        read(path)
    assert refused.value.code == "too_many"


# --- daylight saving --------------------------------------------------------------------


def _clock_rows(first, count, step, zone):
    """Rows as a logger writes them whose clock follows the zone."""
    instants = [first + n * step for n in range(count)]
    return instants, [f"{at.astimezone(zone):%Y-%m-%d %H:%M},20.0" for at in instants]


@pytest.mark.parametrize("zone_name", ["Europe/Berlin", "Australia/Lord_Howe", "America/Sao_Paulo"])
@pytest.mark.parametrize("is_newest_first", [False, True])
def test_the_hour_that_comes_twice_is_read_twice(file, zone_name, is_newest_first):
    zone = ZoneInfo(zone_name)
    # Ends of summer time: 2026-10-25 01:00 UTC, 2026-04-04 15:00 UTC, 2018-02-18 02:00 UTC.
    end = {
        "Europe/Berlin": datetime(2026, 10, 25, 1, tzinfo=UTC),
        "Australia/Lord_Howe": datetime(2026, 4, 4, 15, tzinfo=UTC),
        "America/Sao_Paulo": datetime(2018, 2, 18, 2, tzinfo=UTC),
    }[zone_name]
    instants, rows = _clock_rows(end - timedelta(hours=5), 60, timedelta(minutes=10), zone)
    rows = rows[::-1] if is_newest_first else rows
    got = read(file("\n".join(["Time,Temp", *rows])), zone)
    assert [at_s for at_s, _ in samples_of(got)] == [int(at.timestamp()) for at in instants]
    assert got.twice == (6 if zone_name == "Australia/Lord_Howe" else 12)
    assert (got.left_out, got.doubled) == (0, 0)


def test_the_hour_that_is_left_out_is_moved_and_told(file):
    # Berlin, 2026-03-29: 02:00 to 03:00 was left out; a logger that does not know goes on.
    rows = [f"2026-03-29 0{hour}:30,20.0" for hour in (1, 2, 3)]
    got = read(file("\n".join(["Time,Temp", *rows])), BERLIN)
    assert got.left_out == 1
    # 02:30 becomes 03:30, which is there already: it counts once.
    assert [at_s for at_s, _ in samples_of(got)] == [
        utc_s(2026, 3, 29, 0, 30),
        utc_s(2026, 3, 29, 1, 30),
    ]
    assert got.doubled == 1


def test_a_zone_in_the_cell_or_in_the_title_comes_before_the_makers(file):
    in_cell = file("Time,Temp\n2026-07-01 10:00:00+02:00,20\n2026-07-01 10:00:00 -0500,21\n")
    assert [at_s for at_s, _ in samples_of(read(in_cell, ZoneInfo("Asia/Kolkata")))] == [
        utc_s(2026, 7, 1, 8),
        utc_s(2026, 7, 1, 15),
    ]
    in_title = file('"Date Time, GMT+02:00";Temp\n2026-07-01 10:00;20\n')
    assert read(in_title, BERLIN).first_at == datetime(2026, 7, 1, 8, tzinfo=UTC)


@pytest.mark.parametrize("zone_name", ["Europe/Berlin", "America/New_York", "Asia/Kolkata"])
@given(start=st.integers(1_400_000_000, 1_790_000_000), minutes=st.sampled_from([5, 10, 30, 60]))
@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_a_log_kept_through_any_week_comes_back_exactly(file, zone_name, start, minutes):
    """A logger's clock that follows its zone: every instant comes back, whatever the season."""
    zone = ZoneInfo(zone_name)
    first = datetime.fromtimestamp(start // 3600 * 3600, UTC)
    count = 7 * 24 * 60 // minutes
    instants, rows = _clock_rows(first, count, timedelta(minutes=minutes), zone)
    got = read(file("\n".join(["Time,Temp", *rows])), zone)
    expected = [int(at.timestamp()) for at in instants]
    if minutes == 60:  # an hour read once an hour: nothing tells that it has begun again
        assert {at_s for at_s, _ in samples_of(got)} <= set(expected)
        assert got.packed.count + got.doubled == count
    else:
        assert [at_s for at_s, _ in samples_of(got)] == expected


# --- properties -------------------------------------------------------------------------

forms = st.sampled_from(
    [
        ("%Y-%m-%d %H:%M:%S", "."),
        ("%d.%m.%Y %H:%M:%S", ","),
        ("%m/%d/%Y %I:%M:%S %p", "."),
        ("%Y/%m/%dT%H:%M:%SZ", ","),
    ]
)


@given(
    form=forms,
    mark=st.sampled_from([";", "\t", "|"]),
    samples=st.dictionaries(
        st.integers(1_500_000_000, 1_760_000_000),
        st.integers(-3999, 5999).map(lambda n: n / 100),
        min_size=1,
        max_size=60,
    ),
    seed=st.integers(0, 1000),
    is_quoted=st.booleans(),
)
@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_generated_logs_come_back_exactly(file, form, mark, samples, seed, is_quoted):
    pattern, point = form
    order = DateOrder.MONTH if pattern.startswith("%m") else DateOrder.DAY
    rows = list(samples.items())
    random.Random(seed).shuffle(rows)

    def row(at_s, celsius):
        cells = [
            datetime.fromtimestamp(at_s, UTC).strftime(pattern),
            f"{celsius:.2f}".replace(".", point),
        ]
        return mark.join(f'"{cell}"' for cell in cells) if is_quoted else mark.join(cells)

    path = file("\n".join([mark.join(("Time", "Temp °C")), *(row(*each) for each in rows)]))
    got = read(path, date_order=order)
    expected = [(at_s, float(np.float32(celsius))) for at_s, celsius in sorted(samples.items())]
    assert samples_of(got) == expected
    assert (got.error_count, got.doubled) == (0, 0)


@given(st.binary(max_size=3000))
@settings(max_examples=150, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_no_bytes_raise_anything_but_the_readers_own_trouble(file, content):
    assert _trouble_of(file(content)) in {None, *TROUBLE_CODES}


cells = st.one_of(
    st.sampled_from(
        [
            "2026-11-13 10:00", "13.11.2026 10:00", "03/04/2026 1:05 PM", "2026-03-29 02:30",
            "", "21,4", "21.4", "-3", "nan", "1e5", '"', '""', "24:00", "2026-02-30",
            "2026-11-13T10:00Z", "99:99", "\ufeff", "\x00", "°C", "2026-11-13", "10:00:00",
            "12:00 AM", "+99:00", "0", "\uff11",
        ]
    ),
    st.text(max_size=8),
)  # fmt: skip


@given(
    rows=st.lists(st.lists(cells, min_size=1, max_size=5), min_size=1, max_size=40),
    mark=st.sampled_from([",", ";", "\t", "|"]),
    encoding=st.sampled_from(["utf-8", "utf-8-sig", "utf-16", "utf-16-be"]),
)
@settings(max_examples=150, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_no_table_raises_anything_but_the_readers_own_trouble(file, rows, mark, encoding):
    text = "\n".join(mark.join(row) for row in rows)
    path = file(text.encode(encoding, "surrogatepass"))
    assert _trouble_of(path) in {None, *TROUBLE_CODES}


def _trouble_of(path):
    """Read a file in every way there is; give the code of what kept it from being read."""
    try:
        found = examine(path)
        assert len(sampled(found, found.layout)) == len(found.rows)
        for column in range(3):
            with_temperature_column(found, found.layout, column)
        for order in DateOrder:
            got = read_log(path, replace(found.layout, date_order=order), BERLIN, now=NOW)
            assert got.packed.count >= 1
            assert -40.0 <= got.least_c <= got.mean_c <= got.most_c <= 60.0
            assert len(got.errors) == min(got.error_count, ERRORS_KEPT)
    except LoggerTrouble as trouble:
        return trouble.code
    return None


@given(
    rows=st.lists(st.lists(cells, min_size=2, max_size=3), min_size=1, max_size=12),
    mark=st.sampled_from([",", ";"]),
)
@settings(max_examples=150, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_the_quick_way_of_reading_and_the_careful_one_agree(file, monkeypatch, rows, mark):
    path = file("2026-11-13 10:00" + mark + "20.0\n" + "\n".join(mark.join(row) for row in rows))
    try:
        layout = replace(examine(path).layout, date_order=DateOrder.DAY)
    except LoggerTrouble:
        return
    quick = _outcome(path, layout)
    with monkeypatch.context() as patch:
        patch.setattr(loggerread.FastReader, "read", lambda self, text: None)
        careful = _outcome(path, layout)
    assert quick == careful


def _outcome(path, layout):
    try:
        return read_log(path, layout, BERLIN, now=NOW)
    except LoggerTrouble as trouble:
        return trouble.code


@given(st.integers(utc_s(2000, 1, 1), utc_s(2099, 12, 30)))
def test_times_are_read_as_the_standard_library_has_them(second):
    at = datetime.fromtimestamp(second, UTC)
    assert TimeReader(DateOrder.DAY).read(f"{at:%d.%m.%Y %H:%M:%S}") == (second, None)
    short = f"{at:%m/%d/%y %I:%M:%S %p}".replace(" 0", " ")
    assert TimeReader(DateOrder.MONTH).read(short) == (second, None)
    east = timezone(timedelta(hours=5, minutes=30))
    assert TimeReader(DateOrder.DAY).read(at.astimezone(east).isoformat()) == (
        second + 19_800,
        19_800,
    )


@given(st.text(max_size=12))
def test_any_text_is_a_temperature_in_bounds_or_a_code(text):
    found = celsius_of(text, Degrees.CELSIUS, -40.0, 60.0)
    assert found in ROW_CODES if isinstance(found, str) else -40.0 <= found <= 60.0
    scale_named(text)


def test_a_row_costs_no_more_than_a_few_times_what_the_bare_database_takes_for_it(file):
    """Processor time of both, side by side, since the machine may be busy or slow."""
    count = 100_000
    form = KINDS["iso and comma"][1]
    path = file("\n".join(["Time,Temp", *lines(form, count, step=timedelta(seconds=5))]))
    layout = examine(path).layout
    bare = [(1_700_000_000 + 5 * n, 20.0) for n in range(count)]

    def insert():
        with closing(sqlite3.connect(":memory:")) as connection:
            connection.execute("CREATE TABLE sample (at_s INTEGER NOT NULL, celsius REAL NOT NULL)")
            connection.executemany("INSERT INTO sample VALUES (?, ?)", bare)
            connection.commit()

    ours = min(_processor_s(lambda: read_log(path, layout, UTC, now=FAR)) for _ in range(3))
    theirs = min(_processor_s(insert) for _ in range(3))
    assert ours < 6.0 * theirs


def _processor_s(work):
    began = time.process_time()
    work()
    return time.process_time() - began


def test_one_broken_row_makes_only_its_neighbours_slow(file, monkeypatch):
    form = KINDS["iso and comma"][1]
    rows = lines(form, 20_000, step=timedelta(seconds=5))
    rows[11_000] = "broken"
    path = file("\n".join(["Time,Temp", *rows]))
    slowly = []
    read_row = loggerread._read_row
    monkeypatch.setattr(
        loggerread, "_read_row", lambda *each: slowly.append(each) or read_row(*each)
    )
    got = read_log(path, examine(path).layout, UTC, now=FAR)
    assert (got.packed.count, got.error_count) == (19_999, 1)
    assert got.errors[0].line == 11_002
    assert len(slowly) <= 1000
