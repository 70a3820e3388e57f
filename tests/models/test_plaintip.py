"""Names and notes that look like markup read in a tooltip as they were typed."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import Qt as TextQt
from PySide6.QtGui import QTextDocument

from brewdesk.models.family import FamilyModel
from brewdesk.models.plaintip import plain_tip
from brewdesk.models.readings import VALUE, ReadingsModel
from brewdesk.store.records import CultureDraft, ReadingDraft
from culturecore.stages import CultureOrigin, CultureState, Method, Quantity
from tests.helpers.pantry_desk import open_desk, souring_batch

TYPED = "<b>Bold</b> & <img src='x'> 3 < 4, a long enough note\nsecond line"


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


def as_shown(tip: str) -> str:
    """Read a tip as the tooltip would show it."""
    assert TextQt.mightBeRichText(tip)
    page = QTextDocument()
    page.setHtml(tip)
    return page.toPlainText()


@pytest.mark.parametrize("text", [TYPED, "plain", "a  b"])
def test_a_tip_shows_what_was_typed(qapp, text):
    assert as_shown(plain_tip(text)) == text


def test_no_words_are_no_tip():
    assert plain_tip("") == ""


def test_a_note_is_no_markup(desk):
    batch = souring_batch(desk)
    draft = ReadingDraft(
        batch_id=batch.id,
        at=desk.clock.now(),
        quantity=Quantity.NOTE,
        method=Method.EYE,
        text=TYPED,
    )
    model = ReadingsModel(desk.quantities, desk.clock)
    model.set_rows(desk.readings.record([draft]))
    tip = model.index(0, VALUE).data(Qt.ItemDataRole.ToolTipRole)
    assert as_shown(tip) == TYPED


def test_a_cultures_name_is_no_markup(desk):
    desk.cultures.add(
        CultureDraft(
            name="<i>Old</i> Faithful",
            origin=CultureOrigin.GIFT,
            state=CultureState.RESTING,
            born_at=desk.clock.now(),
        )
    )
    model = FamilyModel(words=lambda node: node.culture.name)
    model.set_nodes(desk.lineage.tree().nodes)
    tip = model.index(0, 0).data(Qt.ItemDataRole.ToolTipRole)
    assert as_shown(tip) == "<i>Old</i> Faithful"
