"""Hostile input at the window: shown as it is, refused in words, or kept to the letter."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import QMimeData, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QMenu

from brewdesk.services.records import Method, Quantity, ReadingDraft
from brewdesk.store.errors import StoreTrouble
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import Theme
from culturecore.units import Kind
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.worn_theme import look_kept

MARKUP = "<img src=file:///etc/hostname><b>Salt & sugar</b>"


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    yield made
    made.store.close()


def note(desk, batch_id, text):
    return ReadingDraft(
        batch_id=batch_id,
        at=desk.clock.now(),
        quantity=Quantity.NOTE,
        method=Method.EYE,
        text=text,
    )


@pytest.mark.parametrize(
    "text",
    [
        "pale " * 2000,
        "🍵 mother 👩‍🔬 e\u0301",
        "\u202b\u05e9\u05dc\u05d5\u05dd\u202c",
        "zero\u200bwidth\ufeff",
        "<script>alert(1)</script> & 'quotes' \"\"",
        "=1+1\t@x\r\nnext",
    ],
    ids=["long", "emoji", "right to left", "zero width", "markup", "formula"],
)
def test_any_note_is_kept_to_the_letter(desk, text):
    batch = souring_batch(desk)

    (kept,) = desk.readings.record([note(desk, batch.id, text)])

    assert desk.readings.get(kept.id).text == text


@pytest.mark.parametrize("text", ["lone \ud800 half", "a\x00b"], ids=["surrogate", "NUL"])
def test_text_that_no_file_can_keep_is_refused_and_nothing_else_is_lost(desk, text):
    batch = souring_batch(desk)
    before = desk.readings.of_batch(batch.id)

    with pytest.raises(StoreTrouble) as caught:
        desk.readings.record([note(desk, batch.id, "good"), note(desk, batch.id, text)])

    assert caught.value.code == "row_refused"
    assert desk.readings.of_batch(batch.id) == before


def test_no_page_takes_a_name_for_markup(desk, qapp, qtbot):
    with look_kept(qapp):
        batch = souring_batch(desk, name=MARKUP, vessel=MARKUP)
        desk.readings.record([note(desk, batch.id, MARKUP)])
        window = MainWindow(desk, Theme(qapp))
        qtbot.addWidget(window)
        window.show()
        window.open_batch(batch.id)
        shown = 0
        for page in window.rail.buttons:
            window.show_page(page)
            window.grab()
            for label in window.findChildren(QLabel):
                if "<b>" in label.text() or "<img" in label.text():
                    shown += 1
                    assert label.textFormat() is Qt.TextFormat.PlainText, label.objectName()
                # A tip guesses its format: a name must not be the whole of it as it stands.
                assert not re.search(r"<img src=file", label.toolTip()), label.objectName()
        assert shown > 3
        window.notice.say(MARKUP)
        assert window.notice.words.textFormat() is Qt.TextFormat.PlainText
        # An action's tip is its text, which may name a jar: no menu shows it.
        assert [menu.title() for menu in window.findChildren(QMenu) if menu.toolTipsVisible()] == []
        window.hide()


def test_an_ampersand_in_a_name_is_shown_and_underlines_nothing(desk, qapp, qtbot):
    with look_kept(qapp):
        souring_batch(desk, name="Salt & sugar", vessel="Jar & lid")
        window = MainWindow(desk, Theme(qapp))
        qtbot.addWidget(window)
        window.show()
        texts = [action.text() for action in window.actions_by_key.values()]
        bare = [text for text in texts if re.search(r"(?<!&)& ", text)]
        assert bare == []
        assert "&&" in window.actions_by_key["undo"].text()
        window.hide()


def test_a_picture_pasted_into_a_field_for_numbers_is_passed_over(desk, qtbot):
    field = QuantityEdit(desk.quantities, Kind.VOLUME)
    qtbot.addWidget(field)
    field.show()
    line = field.findChild(QLineEdit)
    qtbot.keyClicks(line, "3.8")
    picture = QImage(4, 4, QImage.Format.Format_RGB32)
    picture.fill(QColor("red"))
    junk = QMimeData()
    junk.setImageData(picture)
    QApplication.clipboard().setMimeData(junk)

    qtbot.keyClick(line, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)

    assert line.text() == "3.8"
    QApplication.clipboard().clear()


@pytest.mark.parametrize(
    "pasted",
    ["nan", "inf", "1e400", "1_000", "--", "\u0663\u066b\u0664x", "drop table", "3.8\x003"],
)
def test_nonsense_pasted_into_a_field_for_numbers_stays_there_and_is_no_amount(desk, qtbot, pasted):
    field = QuantityEdit(desk.quantities, Kind.VOLUME)
    qtbot.addWidget(field)
    field.show()
    line = field.findChild(QLineEdit)
    QApplication.clipboard().setText(pasted)

    qtbot.keyClick(line, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)

    assert field.value() is None
    assert line.text()
    QApplication.clipboard().clear()


def test_no_box_of_the_program_guesses_whether_a_text_is_markup():
    """QMessageBox takes text for markup by itself; the one place that uses it says plain."""
    from pathlib import Path

    import brewdesk

    root = Path(brewdesk.__file__).parent
    users = [
        path
        for path in root.rglob("*.py")
        if re.search(r"QMessageBox\(|QMessageBox\.(about|warning|critical|question|information)\(",
                     path.read_text(encoding="utf-8"))
    ]  # fmt: skip
    for path in users:
        assert "setTextFormat(Qt.TextFormat.PlainText)" in path.read_text(encoding="utf-8"), path
