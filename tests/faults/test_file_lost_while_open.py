"""The file is deleted or exchanged under the open program: told, and what is open can be saved."""

from __future__ import annotations

import shutil

import pytest

from brewdesk.store.errors import StoreTrouble
from brewdesk.store.store import Store
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.savedopen import save_to
from brewdesk.widgets.theme import Theme
from tests.faults.forked import readings_of
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.whole_pantry import everything
from tests.helpers.worn_theme import look_kept
from tests.store.drafts import NOW


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path / "pantry")
    souring_batch(made)
    yield made
    made.store.close()


@pytest.mark.parametrize("is_replaced", [False, True], ids=["deleted", "exchanged"])
def test_what_is_open_is_saved_to_the_last_row_though_the_file_is_gone(desk, tmp_path, is_replaced):
    desk.readings.record(readings_of(desk, 1, 3))
    content = everything(desk.store_path)
    other = Store.open(tmp_path / "other.sqlite", now=NOW)
    other.close()
    if is_replaced:
        shutil.move(tmp_path / "other.sqlite", desk.store_path)
    else:
        desk.store_path.unlink()

    with pytest.raises(StoreTrouble) as caught:
        desk.readings.record(readings_of(desk, 1, 3))
    told = []
    desk.jobs.hold = False
    save_to(desk, tmp_path / "saved.sqlite", lambda *words: told.append(words))

    assert caught.value.code == ("file_replaced" if is_replaced else "file_gone")
    assert told[0][1] == "good"
    assert everything(tmp_path / "saved.sqlite") == content
    Store.open(tmp_path / "saved.sqlite", now=NOW).close()
    assert desk.store_path.exists() == is_replaced


def test_the_window_stays_and_offers_to_save(desk, qapp, qtbot):
    with look_kept(qapp):
        window = MainWindow(desk, Theme(qapp))
        qtbot.addWidget(window)
        window.show()
        desk.store_path.unlink()

        window.act_bar.undo_wanted.emit()

        assert "no longer in its place" in window.notice.words.text()
        assert window.notice.open_button.isVisible()
        assert window.notice.open_button.text().startswith("Save what is open")
        assert not desk.store_path.exists()
        window.hide()


def test_where_nothing_is_open_any_more_that_is_said(desk, tmp_path):
    desk.store_path.unlink()
    desk.store._engine.dispose()

    with pytest.raises(StoreTrouble) as caught:
        desk.store.save_what_is_open(tmp_path / "saved.sqlite")

    assert caught.value.code == "file_gone"
    assert not (tmp_path / "saved.sqlite").exists()
