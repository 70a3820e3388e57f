"""What people type becomes one harmless line."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.plaintext import plain_line


@pytest.mark.parametrize(
    ("typed", "line"),
    [
        ("Taste\nthe\ttall  jar", "Taste the tall jar"),
        ("a\x1b[31mred\x1b[0m jar", "a[31mred[0m jar"),
        ("nul\x00l\ud800", "null"),
        ("safe \u202egpj.exe\u202c", "safe gpj.exe"),
        ("طعم الجرة", "طعم الجرة"),
        ("👩\u200d🍳 tastes", "👩\u200d🍳 tastes"),  # the joiner holds one picture together
        ("bell\x07 and \x9b31m", "bell and 31m"),
        ("line\u2028sep", "line sep"),
        ("\uffff\ufdd0x", "x"),
        ("\U0001fae8 new", "\U0001fae8 new"),  # newer than this Python's tables
    ],
)
def test_a_line_is_plain(typed, line):
    assert plain_line(typed) == line


def test_a_long_line_is_cut_and_says_so():
    assert plain_line("x" * 10_000, 10) == "x" * 9 + "…"
    assert plain_line("x" * 10, 10) == "x" * 10


def test_no_accent_is_left_on_the_dots():
    assert plain_line("abcde\u0301fgh", 6) == "abcd…"


@given(st.text(st.characters(exclude_categories=()), max_size=300), st.integers(2, 50))
def test_whatever_is_typed_the_line_is_harmless(typed, most):
    line = plain_line(typed, most)
    assert len(line) <= most
    assert {unicodedata.category(each) for each in line}.isdisjoint({"Cc", "Cs", "Zl", "Zp"})
    assert line.encode("utf-8").decode("utf-8") == line
    assert len(line.splitlines()) <= 1
    assert plain_line(plain_line(typed)) == plain_line(typed)
