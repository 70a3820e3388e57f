"""Text as it is looked for."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.folding import fold, words_of


@pytest.mark.parametrize(
    ("written", "typed"),
    [
        ("Crème Brûlée", "creme brulee"),
        ("STRASSE", "straße"),
        ("Ødegård", "odegard"),
        ("Łódź", "lodz"),
        ("ﬁzz", "FIZZ"),
        ("½ Gallon", "1⁄2 gallon"),
        ("Αθήνα", "ΑΘΗΝΑ"),
        ("naïve", "nai\u0308ve"),
    ],
)
def test_what_looks_alike_is_found_alike(written, typed):
    assert fold(written) == fold(typed)


@given(st.text())
def test_folding_twice_is_folding_once(text):
    assert fold(fold(text)) == fold(text)


@given(st.text(alphabet=st.characters(exclude_categories=["Cs"])))
def test_case_and_marks_make_no_difference(text):
    assert fold(unicodedata.normalize("NFD", text)) == fold(unicodedata.normalize("NFC", text))
    assert fold(text.casefold()) == fold(text)


@given(st.text())
def test_every_word_of_a_text_is_in_it(text):
    assert all(word in fold(text) for word in words_of(text))


def test_a_word_said_twice_is_one_word():
    assert words_of("  Tea tea\tTÉA ") == ("tea",)
