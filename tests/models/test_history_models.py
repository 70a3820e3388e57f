"""Finds and time lines as item models."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester

from brewdesk.models.finds import FindsModel
from brewdesk.models.timeline import DayHeading, TimelineModel
from brewdesk.services.searchwords import Find, FoundKind
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.timeline import TimelineLine, TimelineView
from tests.helpers.fakes import FakeClock

JAR = Subject(SubjectKind.VESSEL, 1)
BATCH = Subject(SubjectKind.BATCH, 7)
NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


def line(number, at, text="pH 3.40 on Tall jar", **more):
    fields = {"about": BATCH, "about_name": "Black tea 1"} | more
    return TimelineLine(at=at, text=text, kind="add_readings", act_id=number, **fields)


def view(*lines, subject=JAR):
    return TimelineView(subject=subject, name="Tall jar", lines=lines, total=len(lines))


@pytest.fixture
def model(qapp):
    made = TimelineModel(FakeClock(NOON, ZoneInfo("Europe/Berlin")))
    made.tester = QAbstractItemModelTester(
        made, QAbstractItemModelTester.FailureReportingMode.Fatal
    )
    return made


def words(model):
    return [model.index(row, 0).data() for row in range(model.rowCount())]


def test_days_are_those_of_the_makers_calendar(model):
    # 23:30 UTC is half past midnight in Berlin: the next day.
    model.set_view(
        view(
            line(3, NOON),
            line(2, datetime(2026, 11, 24, 23, 30, tzinfo=UTC)),
            line(1, datetime(2026, 11, 24, 22, 30, tzinfo=UTC)),
            line(0, datetime(2025, 12, 3, 9, 0, tzinfo=UTC)),
        )
    )
    headings = [row for row in model.rows() if isinstance(row, DayHeading)]
    assert [row.day.isoformat() for row in headings] == ["2026-11-25", "2026-11-24", "2025-12-03"]
    assert words(model)[0] == "Today"
    assert words(model)[3] == "Yesterday"
    assert "2025" in words(model)[5]


def test_days_cannot_be_chosen_and_lines_can(model):
    model.set_view(view(line(1, NOON)))
    heading, told = model.index(0, 0), model.index(1, 0)
    assert not heading.flags() & Qt.ItemFlag.ItemIsSelectable
    assert told.flags() & Qt.ItemFlag.ItemIsSelectable


def test_a_line_says_where_it_leads_unless_its_sentence_does(model):
    late = NOON + timedelta(days=1)
    model.set_view(
        view(
            line(3, NOON),
            line(2, NOON, "Black tea 1 planned"),
            line(1, NOON, entered_at=late),
        )
    )
    _heading, first, named, entered = model.rows()
    assert model.aside(first) == "Black tea 1"
    assert model.aside(named) == ""
    assert model.aside(entered).startswith("Black tea 1 · entered ")


def test_the_time_line_of_a_batch_does_not_name_its_jar_over_and_over(model):
    in_jar = line(1, NOON, "Boiling begun", about=JAR, about_name="Tall jar")
    model.set_view(view(in_jar, subject=BATCH))
    assert model.aside(in_jar) == ""


def test_a_line_is_found_by_its_act_and_by_its_rows(model):
    told = line(5, NOON, rows=frozenset({("reading", 9)}))
    model.set_view(view(told))
    assert model.row_at(model.row_of_act(5)) == told
    assert model.row_at(model.row_of("reading", 9)) == told
    assert not model.row_of("reading", 10).isValid()


@given(
    hours=st.lists(st.integers(0, 500), unique=True, max_size=20),
    more=st.lists(st.integers(0, 500), unique=True, max_size=20),
)
def test_any_time_line_can_follow_any_other(qapp, hours, more):
    model = TimelineModel(FakeClock(NOON))
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    for told in (hours, more, []):
        lines = [line(h, NOON - timedelta(hours=h)) for h in sorted(told)]
        model.set_view(view(*lines))
        assert [row for row in model.rows() if isinstance(row, TimelineLine)] == lines
        days = [row.day for row in model.rows() if isinstance(row, DayHeading)]
        assert days == sorted({one.at.date() for one in lines}, reverse=True)
    assert tester.model() is model


def test_a_find_is_one_sentence_for_those_who_listen(qapp):
    model = FindsModel(FakeClock(NOON))
    model.set_rows(
        [
            Find(
                kind=FoundKind.NOTE,
                id=3,
                name="Black tea 1",
                text="<b>thin</b>\nfilm",
                at=NOON,
                subject=BATCH,
            )
        ]
    )
    said = model.index(0, 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert said == "Black tea 1, Note · <b>thin</b> film, 25 Nov 2026"
