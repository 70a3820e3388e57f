"""Nothing that somebody wrote is ever taken for markup, on any page, in any dialog or tip.

A pantry in which every name and note is markup with a picture of this computer in it. Qt guesses
in labels, boxes and tips whether a text is markup; what it would take for it must not hold the
words as they were typed.
"""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from PySide6.QtCore import QAbstractItemModel, QAbstractListModel, QModelIndex, QObject, Qt
from PySide6.QtGui import QAction, QTextDocument
from PySide6.QtGui import Qt as TextQt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QComboBox,
    QDialog,
    QGraphicsTextItem,
    QGraphicsView,
    QLabel,
    QMenu,
    QMessageBox,
    QPushButton,
    QTextEdit,
    QWidget,
)

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.bottlingwish import BottleGroupWish
from brewdesk.services.records import BottleKind, Method, Quantity, ReadingDraft
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.theme import Theme
from tests.helpers.month import DIALOGS
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.worn_theme import look_kept

PICTURE = "<img src=file:///etc/hostname>"
HOSTILE = f"<b>x</b>{PICTURE} & \u202e1"
LONG = f"{HOSTILE} " * 230  # ten thousand signs and more
MOST_ROWS = 40


def is_rendered(text: str) -> bool:
    """Whether Qt, left to guess, would show a picture instead of the words."""
    return PICTURE in text and TextQt.mightBeRichText(text)


class Walk:
    """Looks at every object below windows, and keeps what is wrong with it."""

    def __init__(self) -> None:
        self.wrong: set[str] = set()
        self.seen = 0
        self.kinds: set[str] = set()

    def look_at_all(self) -> None:
        for top in QApplication.topLevelWidgets():
            for one in (top, *top.findChildren(QObject)):
                self._look(one)

    def _note(self, one: QObject, what: str, text: str) -> None:
        name = one.objectName() or (one.parent().objectName() if one.parent() else "")
        self.wrong.add(f"{type(one).__name__} '{name}': {what}: {text[:80]!r}")

    def _saw(self, one: QObject, text: str) -> bool:
        if PICTURE not in text:
            return False
        self.seen += 1
        self.kinds.add(type(one).__name__)
        return True

    def _look(self, one: QObject) -> None:
        if isinstance(one, QWidget | QAction):
            for what in (one.toolTip(), one.statusTip(), one.whatsThis()):
                if is_rendered(what):
                    self._note(one, "tip", what)
        if isinstance(one, QLabel) and self._saw(one, one.text()):
            self._look_at_label(one)
        if isinstance(one, QMessageBox) and one.textFormat() is not Qt.TextFormat.PlainText:
            self._note(one, "box", one.text())
        if isinstance(one, QTextEdit):
            self._look_at_page(one, one.document())
        if isinstance(one, QPushButton | QAction) and self._saw(one, one.text()):
            self._look_at_mnemonics(one)
        if isinstance(one, QComboBox | QAbstractItemView) and one.model() is not None:
            self._look_at_rows(one, one.model(), QModelIndex())
        if isinstance(one, QGraphicsView) and one.scene() is not None:
            for item in one.scene().items():
                if isinstance(item, QGraphicsTextItem):
                    self._look_at_page(one, item.document())

    def _look_at_label(self, label: QLabel) -> None:
        if label.textFormat() is not Qt.TextFormat.PlainText:
            self._note(label, "label", label.text())

    def _look_at_mnemonics(self, one: QPushButton | QAction) -> None:
        if re.search(r"(?<!&)&(?!&) ", one.text()):  # the sign before a blank is somebody's own
            self._note(one, "mnemonic", one.text())

    def _look_at_page(self, one: QObject, page: QTextDocument) -> None:
        if "<img" in page.toHtml():
            self._note(one, "page", page.toPlainText())

    def _look_at_rows(self, one: QObject, model: QAbstractItemModel, parent: QModelIndex) -> None:
        for row in range(min(model.rowCount(parent), MOST_ROWS)):
            columns = 1 if isinstance(model, QAbstractListModel) else model.columnCount(parent)
            for column in range(columns):
                index = model.index(row, column, parent)
                for role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.WhatsThisRole):
                    tip = index.data(role)
                    if isinstance(tip, str) and is_rendered(tip):
                        self._note(one, "tip of a row", tip)
                shown = index.data(Qt.ItemDataRole.DisplayRole)
                if isinstance(shown, str):
                    self._saw(one, shown)
            first = model.index(row, 0, parent)
            if not isinstance(model, QAbstractListModel) and model.rowCount(first):
                self._look_at_rows(one, model, first)


@pytest.fixture
def hostile_desk(tmp_path, qapp):
    desk = open_desk(tmp_path, with_forecasts=True)
    (place,) = (desk.vessels.ensure_place(),)
    desk.vessels.edit_place(place.id, name=HOSTILE)
    first = souring_batch(desk, HOSTILE, f"{HOSTILE}1")
    other = souring_batch(desk, f"{HOSTILE}2", f"{HOSTILE}3")
    now = desk.clock.now()
    plain = {"at": now, "batch_id": first.id}
    desk.readings.record(
        [
            ReadingDraft(quantity=Quantity.PH, method=Method.METER, value=3.2, **plain),
            ReadingDraft(quantity=Quantity.NOTE, method=Method.EYE, text=HOSTILE, **plain),
            ReadingDraft(quantity=Quantity.NOTE, method=Method.EYE, text=LONG[:10_000], **plain),
        ]
    )
    desk.reminders.add_own(first.id, now, HOSTILE)
    desk.clock.advance(minutes=1)
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=other.id, at=desk.clock.now(), quantity=Quantity.PH, method=Method.METER,
                value=3.2,
            )
        ]
    )  # fmt: skip
    wish = desk.bottlings.wish_for(other.id)
    groups = (
        BottleGroupWish(
            bottle_count=3, kind=BottleKind.RATED, brim_volume_l=0.5, rated_bar=8.0, name=HOSTILE
        ),
    )
    desk.bottlings.fill(
        replace(wish, groups=groups, name=HOSTILE, note=HOSTILE), override_reason=HOSTILE
    )
    desk.clock.advance(days=2)
    yield desk, first
    desk.store.close()


def test_no_page_dialog_or_tip_takes_words_for_markup(hostile_desk, qapp, qtbot):
    desk, batch = hostile_desk
    walk = Walk()
    with look_kept(qapp):
        window = MainWindow(desk, Theme(qapp))
        qtbot.addWidget(window)
        window.resize(1280, 800)
        window.show()
        for page in window.rail.buttons:
            window.show_page(page)
            qapp.processEvents()
            walk.look_at_all()
        window.open_batch(batch.id)
        tabs = window.shelf.sheet.tabs
        for index in range(tabs.count()):
            tabs.setCurrentIndex(index)
            qapp.processEvents()
            walk.look_at_all()
        window.show_batch_history(batch.id)
        qapp.processEvents()
        walk.look_at_all()
        window.open_batch(batch.id)
        opened = set()
        for key in DIALOGS:
            action = window.actions_by_key[key]
            action.trigger()
            qapp.processEvents()
            walk.look_at_all()
            for dialog in window.findChildren(QDialog):
                if dialog.isVisible():
                    opened.add(key)
                    dialog.reject()
                    qapp.processEvents()
        for menu in window.findChildren(QMenu):
            menu.aboutToShow.emit()
            assert not menu.toolTipsVisible()
        window.notice.say(HOSTILE)
        walk.look_at_all()
        window.hide()
    assert walk.wrong == set()
    assert walk.seen > 60
    assert {"QLabel", "QAction"} <= walk.kinds
    assert len(opened) >= len(DIALOGS) - 4


def test_the_walk_would_find_each_of_them(qapp, qtbot):
    holder = QWidget()
    holder.setObjectName("planted")
    qtbot.addWidget(holder)
    QLabel(HOSTILE, holder)
    QPushButton("plain", holder).setToolTip(HOSTILE)
    QPushButton(HOSTILE, holder)
    QTextEdit(holder).setHtml(f"<p>{PICTURE}</p>")
    combo = QComboBox(holder)
    combo.addItem("one")
    combo.setItemData(0, HOSTILE, Qt.ItemDataRole.ToolTipRole)
    QMessageBox(holder).setText("box")
    walk = Walk()
    walk.look_at_all()
    found = {text.split("'planted'")[1].split(":")[1].strip() for text in walk.wrong
             if "'planted'" in text}  # fmt: skip
    assert found == {"label", "tip", "mnemonic", "page", "tip of a row", "box"}
    assert not is_rendered(plain_tip(HOSTILE))
