"""Every page in every language: nothing is left in English, and no word is cut off."""

from __future__ import annotations

from contextlib import suppress

import pytest
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QGroupBox,
    QLabel,
    QLineEdit,
    QTabBar,
    QToolButton,
    QWidget,
)
from translating.catalogs import LANGUAGES, read_catalog

from brewdesk.services.settings import LANGUAGE
from brewdesk.store.store import Store
from brewdesk.widgets.figurerow import ElidedLabel

PAGES = (
    "shelf",
    "plan",
    "bottles",
    "due",
    "cultures",
    "stores",
    "trials",
    "history",
    "labels",
    "reckoner",
    "settings",
)


@pytest.fixture(params=LANGUAGES)
def language(request):
    return request.param


@pytest.fixture
def window(pantry, language):
    # Chosen before the invented pantry is filled, which is worded then.
    store = Store.open(pantry.path, now=pantry.clock.now(), is_demo=True)
    with store.write() as unit:
        unit.settings.put(LANGUAGE.key, language)
    store.close()
    window = pantry.open(is_demo=True).window
    window.resize(1280, 800)
    return window


@pytest.fixture
def left_out(language):
    """English texts that have another one in this language."""
    kept = read_catalog(language)
    spoken = set(kept.values())
    return {
        sentence.text.replace("&", "")
        for sentence, said in kept.items()
        if said != sentence.text and "{" not in sentence.text and sentence.text not in spoken
    }


def texts_of(root: QWidget) -> list[str]:
    found: list[str] = []
    for widget in (root, *root.findChildren(QWidget)):
        found += [widget.toolTip(), widget.accessibleName(), widget.accessibleDescription()]
        if isinstance(widget, (QLabel, QAbstractButton)):
            found.append(widget.text())
        elif isinstance(widget, QGroupBox):
            found.append(widget.title())
        elif isinstance(widget, QLineEdit):
            found.append(widget.placeholderText())
        elif isinstance(widget, QTabBar):
            found += [widget.tabText(index) for index in range(widget.count())]
        elif isinstance(widget, QComboBox):
            found += [widget.itemText(index) for index in range(widget.count())]
    return [text.replace("&", "") for text in found if text]


def cut_off(root: QWidget) -> list[str]:
    """Words that do not fit into what shows them, and are not shortened on purpose."""
    found = []
    for widget in root.findChildren(QWidget):
        if not widget.isVisible() or isinstance(widget, ElidedLabel):
            continue
        if isinstance(widget, QLabel) and widget.text() and not widget.wordWrap():
            needed = widget.sizeHint().width()
        elif isinstance(widget, QAbstractButton) and widget.text():
            if isinstance(widget, QToolButton) and widget.width() < widget.sizeHint().width():
                needed = widget.fontMetrics().horizontalAdvance(widget.text().replace("&", ""))
            else:
                needed = widget.sizeHint().width()
        else:
            continue
        if needed > widget.width() + 1:
            found.append(f"{type(widget).__name__} {widget.text()!r}: {widget.width()} < {needed}")
    return found


def test_nothing_is_left_in_english_and_no_word_is_cut_off(window, left_out, qtbot):
    english, cut = set(), {}
    actions = {action.text().replace("&", "") for action in window.findChildren(QAction)}
    for name in PAGES:
        window.show_page(name)
        page = window.page(name)
        with suppress(qtbot.TimeoutError):
            qtbot.waitUntil(lambda at=page: at.grab() and not cut_off(at), timeout=1000)
        if missing := cut_off(page):
            cut[name] = missing
        english |= left_out & (set(texts_of(window)) | actions)

    assert sorted(english) == []
    assert cut == {}
    assert QApplication.layoutDirection().name == "LeftToRight"
