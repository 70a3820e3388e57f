"""Columns of a terminal."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.terminaltext import padded, width_of, wrapped


@pytest.mark.parametrize(
    ("text", "columns"), [("jar", 3), ("茶", 2), ("e\u0301", 1), ("ｗ", 2), ("", 0), ("½", 1)]
)
def test_width(text, columns):
    assert width_of(text) == columns


def test_lines_break_at_spaces_and_long_words_anywhere():
    assert wrapped("taste the tall jar", 9) == ["taste the", "tall jar"]
    assert wrapped("abcdefgh ij", 3) == ["abc", "def", "gh", "ij"]
    assert wrapped("茶茶茶", 4) == ["茶茶", "茶"]
    assert wrapped("", 5) == [""]


def test_padding_counts_columns():
    assert padded("茶", 4) == "茶  "
    assert padded("long", 2) == "long"


@given(
    st.text(st.characters(categories=["L", "M", "N", "P", "S"]) | st.just(" ")), st.integers(2, 40)
)
def test_no_line_is_wider_than_the_terminal_and_no_letter_is_lost(text, columns):
    lines = wrapped(text, columns)
    assert all(width_of(line) <= columns for line in lines)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")
