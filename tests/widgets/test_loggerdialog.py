"""A logger's file on its way into a place's log, as the maker sees it."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from PySide6.QtCore import Qt

from brewdesk.services.jobs import Jobs
from brewdesk.services.loggerfile import examine
from brewdesk.services.loggertext import DateOrder, Degrees
from brewdesk.services.logimport import LogImport
from brewdesk.widgets.fields import choose
from brewdesk.widgets.loggerdialog import LoggerDialog
from tests.helpers.pantry_desk import open_desk

FIRST = datetime(2026, 11, 13, 10, 0)


@pytest.fixture
def desk(tmp_path, qapp):
    """A desk whose jobs are done at once."""
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def dialog(desk, qtbot):
    made = LoggerDialog(desk, desk.vessels.ensure_place())
    qtbot.addWidget(made)
    made.open()
    return made


@pytest.fixture
def file(tmp_path):
    def write(form, count=40, title="Time,Temp (C)", first=FIRST):
        path = tmp_path / "shelf logger.csv"
        rows = [form(first + n * timedelta(minutes=30), 20 + n / 10) for n in range(count)]
        path.write_text("\n".join([title, *rows]), encoding="utf-8")
        return path

    return write


def iso(at, celsius):
    return f"{at:%Y-%m-%d %H:%M},{celsius:.1f}"


def press(qtbot, button) -> None:
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def cells(dialog, column):
    table = dialog.table
    return [table.item(row, column).text() for row in range(table.rowCount())]


def errors(dialog):
    return [dialog.errors.item(row).text() for row in range(dialog.errors.count())]


def test_nothing_can_be_read_before_a_file_is_chosen(dialog):
    assert dialog.empty.isVisible()
    assert not dialog.go.isEnabled()
    assert not dialog.keep.isVisible()


def test_a_file_is_looked_at_read_and_kept_as_one_act(desk, dialog, file, qtbot):
    dialog.open_file(file(iso))
    assert cells(dialog, 1)[:3] == ["20.0 °C", "20.1 °C", "20.2 °C"]
    assert cells(dialog, 2)[0] == "2026-11-13 10:00"
    press(qtbot, dialog.go)
    assert "40 temperatures" in dialog.message.text()
    place = desk.vessels.places()[0]
    assert desk.place_log.logs(place.id) == ()  # nothing is kept before it is said so
    press(qtbot, dialog.keep)
    assert not dialog.isVisible()
    (log,) = desk.place_log.logs(place.id)
    assert (log.name, log.sample_count) == ("shelf logger.csv", 40)
    desk.history.undo()
    assert desk.place_log.logs(place.id) == ()


def test_dates_that_can_be_read_both_ways_have_to_be_chosen(desk, dialog, file, qtbot):
    dialog.open_file(
        file(lambda at, c: f"{at:%m/%d/%Y %I:%M %p},{c:.1f}", first=datetime(2026, 11, 3))
    )
    assert dialog.choices.order_row.isVisible()
    assert dialog.choices.order_row.message.is_error
    assert not dialog.go.isEnabled()
    assert set(cells(dialog, 0)) == {"day or month first?"}
    press(qtbot, dialog.choices.order.button(DateOrder.MONTH))
    assert cells(dialog, 0)[0].startswith("Tue 3 Nov 2026")
    press(qtbot, dialog.choices.order.button(DateOrder.DAY))
    assert cells(dialog, 0)[0].startswith("Wed 11 Mar 2026")
    press(qtbot, dialog.go)
    press(qtbot, dialog.keep)
    (log,) = desk.place_log.logs(desk.vessels.places()[0].id)
    assert log.first_at.month == 3


def test_another_column_brings_its_own_scale_and_the_maker_may_change_it(dialog, file, qtbot):
    path = file(
        lambda at, c: f"{at:%Y-%m-%d %H:%M},{c:.1f},{c * 1.8 + 32:.1f}", title="Time,In °C,Out °F"
    )
    dialog.open_file(path)
    assert dialog.choices.scale.value() is Degrees.CELSIUS
    choose(dialog.choices.temperature, 2)
    assert dialog.choices.scale.value() is Degrees.FAHRENHEIT
    assert cells(dialog, 1)[0] == "20.0 °C"
    press(qtbot, dialog.choices.scale.button(Degrees.CELSIUS))
    assert "no room is that cold or warm" in cells(dialog, 0)[0]


def test_the_clock_of_the_logger_may_be_another(desk, dialog, file, qtbot):
    dialog.open_file(file(iso))
    choose(dialog.choices.clock, dialog.choices.clock.itemData(dialog.choices.clock.count() - 1))
    press(qtbot, dialog.go)
    press(qtbot, dialog.keep)
    (log,) = desk.place_log.logs(desk.vessels.places()[0].id)
    assert log.first_at.replace(tzinfo=None) == FIRST


def test_another_delimiter_is_looked_at_anew(dialog, file):
    dialog.open_file(file(iso))
    choose(dialog.choices.delimiter, ";")
    dialog.choices.delimiter.activated.emit(0)
    assert "No table" in dialog.message.text()
    assert not dialog.go.isEnabled()


def test_rows_left_out_are_listed_and_the_file_can_be_read_otherwise(dialog, file, qtbot):
    path = file(iso)
    with path.open("a", encoding="utf-8") as more:
        more.write("\n2026-11-14 06:00,broken\n2026-11-14 06:30,---\n")
    dialog.open_file(path)
    press(qtbot, dialog.go)
    assert [text.split(":")[0] for text in errors(dialog)] == ["Line 42", "Line 43"]
    assert "2 rows could not be read" in dialog.message.text()
    press(qtbot, dialog.back)
    assert dialog.table.isVisible()
    assert dialog.go.isEnabled()
    assert not dialog.errors.isVisible()


def test_the_same_file_twice_is_told_and_changes_nothing(desk, dialog, file, qtbot):
    path = file(iso)
    for _ in range(2):
        dialog.open()
        dialog.open_file(path)
        press(qtbot, dialog.go)
        press(qtbot, dialog.keep)
    assert dialog.isVisible()
    assert "in this place's log already" in dialog.message.text()
    assert len(desk.place_log.logs(desk.vessels.places()[0].id)) == 1


def test_a_file_that_is_no_table_says_what_to_do(dialog, tmp_path):
    path = tmp_path / "letter.txt"
    path.write_text("Dear reader,\nnothing here.\n", encoding="utf-8")
    dialog.open_file(path)
    assert dialog.message.property("role") == "error"
    assert "No table" in dialog.message.text()
    assert not dialog.choices.isVisible()


@pytest.fixture
def threads(qapp):
    jobs = Jobs()
    yield jobs
    jobs.shutdown()


def test_an_import_on_another_thread_tells_its_progress_here_and_is_kept(
    desk, file, threads, qtbot
):
    path = file(iso, 40)
    importing = LogImport(desk.place_log, threads, desk.clock)
    shares = []
    importing.progressed.connect(shares.append)
    with qtbot.waitSignal(importing.was_read) as told:
        importing.start(path, examine(path).layout, desk.clock.zone())
    place = desk.vessels.ensure_place()
    with qtbot.waitSignal(importing.was_kept) as kept:
        importing.keep(place.id, path.name, told.args[0])
    assert kept.args[0].sample_count == 40
    assert shares[-1] == 1.0


def test_an_import_that_is_stopped_keeps_nothing(desk, file, threads, qtbot):
    path = file(iso, 40)
    importing = LogImport(desk.place_log, threads, desk.clock)
    with qtbot.waitSignal(importing.failed) as told:
        importing.start(path, examine(path).layout, desk.clock.zone())
        importing.cancel()
    assert told.args[0].code == "cancelled"
    with desk.store.read() as unit:
        assert unit.temperature_logs.where() == ()


def test_a_dialog_closed_while_it_reads_hears_nothing_of_the_end(desk, file, qtbot):
    jobs = desk.jobs
    dialog = LoggerDialog(desk, desk.vessels.ensure_place())
    dialog.open()
    dialog.open_file(file(iso))
    jobs.hold = True
    press(qtbot, dialog.go)
    assert dialog.progress.isVisible()
    assert not dialog.go.isEnabled()
    dialog.finished.connect(dialog.deleteLater)
    with qtbot.waitSignal(dialog.destroyed):
        dialog.reject()
    jobs.release()  # would raise here if it spoke to a dialog that is gone
    assert desk.place_log.logs(desk.vessels.places()[0].id) == ()
