"""Free words about a sip: what they are read as, and what they are not read as."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.sources import Standing
from culturecore.tastewords import TASTE_WORDS, WORD_SOURCES, Leaning, Phrase, read_words


@pytest.mark.parametrize(
    ("note", "leaning"),
    [
        ("a bit sweet still", Leaning.TOO_SWEET),
        ("Too sweet, not sour", Leaning.TOO_SWEET),
        ("lovely but a bit too sweet", Leaning.TOO_SWEET),
        ("not quite sour enough", Leaning.TOO_SWEET),
        ("Needs a few days", Leaning.TOO_SWEET),
        ("vinegary", Leaning.TOO_SOUR),
        ("It isn\u2019t sweet enough", Leaning.NOTHING),
        ("not sweet enough", Leaning.TOO_SOUR),
        ("too sour but sweet", Leaning.TOO_SOUR),
        ("LOVELY!", Leaning.RIGHT),
        ("not bad", Leaning.RIGHT),
        ("just right, nice fizz", Leaning.RIGHT),
        ("thin", Leaning.NOTHING),
        ("flat", Leaning.NOTHING),
        ("sweet and sour", Leaning.NOTHING),
        ("not too sweet", Leaning.NOTHING),
        ("not very sour", Leaning.NOTHING),
        ("not good", Leaning.NOTHING),
        ("smells vinegary", Leaning.NOTHING),
        ("looks good", Leaning.NOTHING),
        ("too sweet and too sour", Leaning.NOTHING),
        ("moved to the cellar", Leaning.NOTHING),
        ("too", Leaning.NOTHING),
        ("still a", Leaning.NOTHING),
        ("", Leaning.NOTHING),
    ],
)
def test_plain_words_are_read_as_what_they_say(note, leaning):
    assert read_words(note).leaning is leaning


def test_the_words_that_decided_are_named_as_they_were_written():
    assert read_words("Lovely, though still a bit sweet").because == ("a bit sweet",)
    assert read_words("thin").because == ()


def test_a_star_joins_small_words_only():
    assert read_words("still a very sweet drink").leaning is Leaning.TOO_SWEET
    assert read_words("still waters, sweet air").leaning is Leaning.NOTHING


def test_words_of_ones_own_come_first():
    own = (Phrase("thin", Leaning.TOO_SOUR), Phrase("like Gran's", Leaning.RIGHT))
    assert read_words("rather thin", own).leaning is Leaning.TOO_SOUR
    assert read_words("Like Gran's", own).leaning is Leaning.RIGHT
    assert read_words("rather thin").leaning is Leaning.NOTHING


def test_an_empty_phrase_of_ones_own_says_nothing():
    assert read_words("lovely", (Phrase(" ", Leaning.TOO_SOUR),)).leaning is Leaning.RIGHT


def test_every_phrase_of_the_list_is_read_as_it_is_listed():
    for phrase in TASTE_WORDS:
        assert read_words(phrase.words.replace(" *", " a")).leaning is phrase.leaning, phrase


def test_no_phrase_is_listed_twice_and_the_list_is_owned_up_to():
    words = [phrase.words for phrase in TASTE_WORDS]
    assert len(set(words)) == len(words)
    assert all(source.standing is Standing.ASSUMPTION for source in WORD_SOURCES.values())


@given(st.text(max_size=80))
def test_any_text_is_read_and_decides_only_by_words_of_its_own(text):
    read = read_words(text)
    assert bool(read.because) == (read.leaning is not Leaning.NOTHING)
