"""The reckoner's list: every question once below its group, found by any of its words."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester

from brewdesk.models.questions import KEY_ROLE, QuestionFilter, QuestionModel
from brewdesk.services.reckoner.catalogue import all_questions, group_name


@pytest.fixture
def kept(qapp):
    model = QuestionModel(all_questions())
    kept = QuestionFilter()
    kept.setSourceModel(model)
    testers = [
        QAbstractItemModelTester(one, QAbstractItemModelTester.FailureReportingMode.Fatal)
        for one in (model, kept)
    ]
    yield kept
    del testers, kept, model


def shown(kept):
    """(group, key) of everything that is kept, in its order."""
    return [
        (kept.index(row, 0).data(), kept.index(below, 0, kept.index(row, 0)).data(KEY_ROLE))
        for row in range(kept.rowCount())
        for below in range(kept.rowCount(kept.index(row, 0)))
    ]


def test_it_lists_every_question_below_its_group(kept):
    assert shown(kept) == [(group_name(q.group), q.key) for q in all_questions()]


def test_groups_cannot_be_chosen(kept):
    group = kept.index(0, 0)
    assert not group.flags() & Qt.ItemFlag.ItemIsSelectable
    assert kept.index(0, 0, group).flags() & Qt.ItemFlag.ItemIsSelectable


def test_all_words_must_occur_anywhere_in_a_question(kept):
    kept.look_for("NAOH  acid")
    assert [key for _, key in shown(kept)] == ["titration"]
    kept.look_for("no such words")
    assert kept.rowCount() == 0
    assert not kept.first().isValid()
    kept.look_for("")
    assert len(shown(kept)) == len(all_questions())


def test_the_name_of_a_group_finds_its_questions(kept):
    kept.look_for("bottles and fizz")
    assert {group for group, _ in shown(kept)} == {"Bottles and fizz"}
    assert kept.first().data(KEY_ROLE) == "prime"


def test_a_question_is_found_by_its_key_while_it_is_kept(kept):
    assert kept.index_of("boiling_point").data(KEY_ROLE) == "boiling_point"
    kept.look_for("starter")
    assert kept.index_of("boiling_point") == QModelIndex()
