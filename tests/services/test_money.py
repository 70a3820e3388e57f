"""Prices typed and shown: to the coin, by comma or point, in the locale's way."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QLocale

from brewdesk.services.money import (
    NotMoney,
    digits_of,
    known_currencies,
    own_currency,
    plain_money,
    read_money,
    show_money,
)
from brewdesk.services.stockchecks import PRICE_MAX_MINOR
from brewdesk.services.wording.stores import money_words

CODES = st.sampled_from(["EUR", "USD", "JPY", "KWD", "CHF"])
LOCALES = ["C", "de_DE", "en_US", "fr_CA", "hi_IN"]


@pytest.fixture(params=LOCALES)
def locale(request):
    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield request.param
    QLocale.setDefault(before)


def test_what_is_shown_is_read_back_in_every_locale(locale):
    for code in ("EUR", "JPY", "KWD"):
        for minor in (0, 1, 99, 100, 12345, PRICE_MAX_MINOR):
            assert read_money(show_money(minor, code), "USD") == (minor, code)


@given(st.integers(0, PRICE_MAX_MINOR), CODES)
def test_no_coin_is_lost_between_typing_and_keeping(minor, code):
    digits = digits_of(code)
    whole, rest = divmod(minor, 10**digits)
    for sign in ".,":
        typed = f"{whole}{sign}{rest:0{digits}d}" if digits else str(whole)
        assert read_money(typed, code) == (minor, code)
        assert read_money(f"{code} {typed}", "USD") == (minor, code)
        assert read_money(f"{typed}{code.lower()}", code) == (minor, code)


@given(st.text(max_size=20))
def test_any_text_is_a_price_or_a_reason(text):
    try:
        minor, code = read_money(text, "EUR")
        said = show_money(minor, code)
    except NotMoney as problem:
        minor, said = 0, money_words(problem)
    assert 0 <= minor <= PRICE_MAX_MINOR
    assert said
    assert "{" not in said or "{" in text


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("", "empty"),
        ("  ", "empty"),
        ("cheap", "no_number"),
        ("1,250", "too_fine"),  # a thousand and more, or three decimals
        ("1.250,00", "ambiguous"),
        ("1 250", "no_number"),
        ("-3", "currency"),
        ("3 XQZ", "currency"),
        ("EUR 3 EUR", "no_number"),
        ("99999999999", "too_much"),
        ("\u0663", "no_number"),  # a digit, but of another script
    ],
)
def test_what_could_be_read_in_two_ways_is_refused(text, reason):
    with pytest.raises(NotMoney) as refusal:
        read_money(text, "EUR")
    assert refusal.value.reason == reason


def test_the_currency_is_the_locales_own():
    before = QLocale()
    try:
        QLocale.setDefault(QLocale("ja_JP"))
        assert own_currency() == "JPY"
        assert read_money("1200", own_currency()) == (1200, "JPY")
        QLocale.setDefault(QLocale("de_CH"))
        assert own_currency() == "CHF"
        assert show_money(350, "CHF") == "3.50\u00a0CHF"
        QLocale.setDefault(QLocale("de_DE"))
        assert show_money(350, "EUR") == "3,50\u00a0EUR"
    finally:
        QLocale.setDefault(before)
    assert {"EUR", "USD", "JPY"} <= set(known_currencies())


def test_rounding_is_for_the_eye_only():
    assert show_money(Fraction(5, 2), "EUR") == "0.02\u00a0EUR"
    assert show_money(Fraction(7, 2), "EUR") == "0.04\u00a0EUR"
    assert show_money(Fraction(-1, 10), "EUR") == "0.00\u00a0EUR"
    assert plain_money(Fraction(-1, 10), "EUR") == "0.00"
    assert plain_money(Fraction(-1333, 10), "EUR") == "-1.33"
    assert show_money(Fraction(25, 2), "EUR", extra_digits=1) == "0.125\u00a0EUR"
