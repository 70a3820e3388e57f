"""What is seen on a surface, and what follows: in doubt never the milder of two."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.looks import FINE_SIGNS, MOLD_SIGNS, Sign, look_of
from brewdesk.services.wording.looks import look_source, look_words, seen_words, sign_words
from culturecore.stages import Look

SIGNS = st.sets(st.sampled_from(Sign))


@given(SIGNS)
def test_any_sign_of_mold_is_mold_whatever_else_is_seen(signs):
    assert (look_of(signs) is Look.MOLD) == bool(signs & set(MOLD_SIGNS))


@given(SIGNS)
def test_another_sign_never_makes_it_milder(signs):
    order = [None, Look.FINE, Look.UNSURE, Look.MOLD]
    for one in signs:
        assert order.index(look_of(signs)) >= order.index(look_of(signs - {one}))


def test_nothing_ticked_is_no_finding():
    assert look_of([]) is None


def test_every_sign_belongs_to_one_group():
    assert sorted(s.value for s in (*MOLD_SIGNS, *FINE_SIGNS, Sign.DOUBT)) == sorted(
        s.value for s in Sign
    )


@pytest.mark.parametrize("look", list(Look))
def test_no_look_calls_a_jar_safe_and_each_says_what_to_do(look):
    words = look_words(look)
    said = f"{words.finding} {words.what_to_do}".lower()
    assert "safe" not in said
    assert "harmless" not in said
    assert words.what_to_do


def test_mold_takes_culture_and_cloth_along_and_doubt_throws_it_out():
    assert "culture and cloth" in look_words(Look.MOLD).what_to_do
    for look in (Look.UNSURE, Look.FINE):
        assert "in doubt, throw it out" in look_words(look).what_to_do


def test_every_sign_has_words_and_a_drawing_told_by_words():
    texts = [sign_words(sign) for sign in Sign]
    assert len({words.name for words in texts}) == len(Sign)
    assert all(words.more and words.drawing.startswith("Drawing: ") for words in texts)


def test_what_was_seen_is_written_down_in_the_order_of_the_list():
    assert seen_words([Sign.STRINGS, Sign.FUZZY]) == "Fuzzy or hairy; Brown strings hanging"


def test_the_advice_names_its_source_and_what_has_none():
    assert "Niagara Region" in look_source()
    assert "common practice, no source" in look_source()
