"""Records that leave the pantry and come back, as the maker does it."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt

from brewdesk.services.jobs import Jobs
from brewdesk.services.records import Quantity
from brewdesk.widgets.documentdialog import DocumentDialog
from brewdesk.widgets.exportdialog import ExportDialog
from brewdesk.widgets.fields import choose
from brewdesk.widgets.importdialog import ImportDialog
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.processlogdialog import ProcessLogDialog
from brewdesk.widgets.readingsfiledialog import ReadingsFileDialog
from brewdesk.widgets.reports import batch_report_dialog
from brewdesk.widgets.theme import Theme
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.whole_pantry import everything


@pytest.fixture
def desk(tmp_path, qapp):
    """A desk whose jobs are done at once."""
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def opened(qtbot):
    def show(dialog):
        qtbot.addWidget(dialog)
        dialog.open()
        dialog.grab()
        return dialog

    return show


def press(qtbot, button) -> None:
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def test_everything_goes_out_and_comes_in_as_another_pantry(desk, opened, qtbot, tmp_path):
    souring_batch(desk)
    archive, target = tmp_path / "all.brewdesk-export.zip", tmp_path / "new.brewdesk"
    out = opened(ExportDialog(desk))
    out.export_to(archive)
    assert "Saved as all.brewdesk-export.zip" in out.message.text()
    assert not out.progress.isVisible()
    press(qtbot, out.leave)

    back = opened(ImportDialog(desk))
    assert not back.go.isEnabled()
    back.look_at(archive)
    assert back.go.isEnabled()
    assert back.facts.isVisible()
    back.bring_in_to(target)
    assert str(target) in back.message.text()
    assert everything(target) == everything(desk.store_path)
    with qtbot.waitSignal(back.open_wanted) as told:
        press(qtbot, back.go)
    assert told.args == [target]


def test_what_is_no_export_is_told_and_the_pantry_that_is_open_is_never_the_place(
    desk, opened, tmp_path
):
    dialog = opened(ImportDialog(desk))
    odd = tmp_path / "odd.zip"
    odd.write_text("no archive")
    dialog.look_at(odd)
    assert "no export" in dialog.message.text()
    assert not dialog.go.isEnabled()

    archive = tmp_path / "all.zip"
    opened(ExportDialog(desk)).export_to(archive)
    before = everything(desk.store_path)
    dialog.look_at(archive)
    dialog.bring_in_to(desk.store_path)
    assert "stands there already" in dialog.message.text()
    assert dialog.go.isEnabled()
    assert everything(desk.store_path) == before


def test_work_in_threads_tells_how_far_it_is_and_stops_when_asked(desk, opened, qtbot, tmp_path):
    souring_batch(desk)
    jobs = Jobs()
    dialog = ExportDialog(desk)
    dialog.work._jobs = jobs
    opened(dialog)
    told = []
    dialog.work.progressed.connect(told.append)
    with qtbot.waitSignal(dialog.work.finished, timeout=20_000):
        dialog.export_to(tmp_path / "one.zip")
    assert told[-1] == 1.0
    with qtbot.waitSignal(dialog.work.failed, timeout=20_000) as failed:
        dialog.export_to(tmp_path / "two.zip")
        dialog.work.cancel()
    assert failed.args[0].code == "cancelled"
    assert not (tmp_path / "two.zip").exists()
    jobs.shutdown()


def test_the_process_log_wants_its_days_in_order_and_is_then_shown(desk, opened, qtbot):
    dialog = opened(ProcessLogDialog(desk))
    dialog.first.setDate(dialog.last.date().addDays(1))
    press(qtbot, dialog.go)
    assert "after the last" in dialog.message.text()
    dialog.first.setDate(dialog.last.date().addDays(-30))
    with qtbot.waitSignal(dialog.made) as made:
        press(qtbot, dialog.go)
    assert made.args[0].kind == "Process log"
    assert not dialog.isVisible()


def test_a_report_is_seen_and_saved_both_ways(desk, opened, qtbot, tmp_path):
    dialog = opened(batch_report_dialog(desk, souring_batch(desk).id, None))
    assert isinstance(dialog, DocumentDialog)
    dialog.save_pdf(str(tmp_path / "r.pdf"))
    assert (tmp_path / "r.pdf").read_bytes().startswith(b"%PDF")
    dialog.save_html(str(tmp_path / "r.html"))
    assert "r.html" in dialog.said.text()
    assert "Black tea 1" in (tmp_path / "r.html").read_text(encoding="utf-8")
    dialog.save_html(str(tmp_path / "none" / "r.html"))
    assert "could not be written" in dialog.said.text()
    dialog.paper.setCurrentIndex(1)
    dialog.grab()


def test_a_spreadsheet_is_looked_at_mapped_read_and_kept_as_one_act(desk, opened, qtbot, tmp_path):
    batch = souring_batch(desk)
    first = desk.clock.now()
    desk.clock.advance(days=4)
    rows = [f"{first + timedelta(days=n):%d/%m/%Y %H:%M};{4 - n / 10:.2f};x" for n in range(3)]
    rows = [row.replace(".", ",") for row in rows] + ["05/12/2026;3,2;y", "01/01/2020;3,2;y"]
    path = tmp_path / "diary.csv"
    path.write_text("When;Sourness;Odd\n" + "\n".join(rows), encoding="latin-1")

    dialog = opened(ReadingsFileDialog(desk, batch))
    dialog.open_file(path)
    assert not dialog.go.isEnabled()  # nothing says which column is the pH
    choose(dialog.choices.columns[Quantity.PH], 1)
    assert dialog.go.isEnabled()
    assert dialog.table.item(0, 1).text() == "pH 4.00"
    press(qtbot, dialog.go)
    assert "New readings: 3" in dialog.message.text()
    assert dialog.errors.count() == 2
    assert desk.readings.of_batch(batch.id) == ()
    press(qtbot, dialog.keep)
    assert not dialog.isVisible()
    assert [reading.value for reading in desk.readings.of_batch(batch.id)] == [4.0, 3.9, 3.8]

    again = opened(ReadingsFileDialog(desk, batch))
    again.open_file(path)
    choose(again.choices.columns[Quantity.PH], 1)
    press(qtbot, again.go)
    assert "skipped: 3" in again.message.text()
    assert not again.keep.isEnabled()
    press(qtbot, again.leave)
    desk.history.undo()
    assert desk.readings.of_batch(batch.id) == ()


def test_a_file_that_is_no_table_is_told(desk, opened, tmp_path):
    dialog = opened(ReadingsFileDialog(desk, souring_batch(desk)))
    path = tmp_path / "x.csv"
    path.write_text("hello", encoding="utf-8")
    dialog.open_file(path)
    assert "No table" in dialog.message.text()
    assert not dialog.go.isEnabled()


@pytest.mark.parametrize(
    ("key", "kind"),
    [
        ("export", ExportDialog),
        ("import", ImportDialog),
        ("process_log", ProcessLogDialog),
        ("batch_report", DocumentDialog),
        ("read_readings", ReadingsFileDialog),
    ],
)
def test_the_menus_lead_to_each_dialog(desk, qtbot, qapp, key, kind):
    batch = souring_batch(desk)
    window = MainWindow(desk, Theme(qapp))
    qtbot.addWidget(window)
    window.show()
    window.open_batch(batch.id)
    window.actions_by_key[key].trigger()
    (dialog,) = window.findChildren(kind)
    assert dialog.isVisible()
    dialog.reject()
