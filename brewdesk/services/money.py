"""Money typed and shown: whole smallest coins inside, the locale's way outside.

A currency is a code of ISO 4217. How many digits its smallest coin takes is from that
standard's list one (from memory; what is not named here takes two). Nothing is converted.
"""

from __future__ import annotations

import re
from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction

from PySide6.QtCore import QLocale

from brewdesk.services.stockchecks import PRICE_MAX_MINOR, is_currency

FALLBACK = "EUR"  # where the locale names no currency
_NO_DIGITS = frozenset(
    (
        *("BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG"),
        *("RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"),
    )
)
_THREE_DIGITS = ("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND")
# Kept with a price in the locale's own writing: what is left and right of the number.
_TYPED = re.compile(r"^(?P<before>[^\d.,]*)(?P<number>[\d.,]*\d[.,]?|)(?P<after>[^\d.,]*)$")
_NBSP = "\u00a0"


class NotMoney(ValueError):  # noqa: N818  # named for what the text is
    """Text that is no price.

    ``reason`` is "empty", "no_number", "ambiguous", "too_fine", "too_much" or "currency".
    """

    def __init__(self, reason: str, text: str, part: str = "") -> None:
        self.reason = reason
        self.text = text
        self.part = part
        super().__init__(f"{reason}: {text!r}")


def digits_of(currency: str) -> int:
    """Return how many decimals a currency's smallest coin takes."""
    if currency in _NO_DIGITS:
        return 0
    return 3 if currency in _THREE_DIGITS else 2


def own_currency() -> str:
    """Return the currency of the locale."""
    code = QLocale().currencySymbol(QLocale.CurrencySymbolFormat.CurrencyIsoCode)
    return code if is_currency(code) else FALLBACK


def known_currencies() -> tuple[str, ...]:
    """Return the currencies that the locales of Qt's data use (CLDR), by code."""
    everywhere = QLocale.matchingLocales(
        QLocale.Language.AnyLanguage, QLocale.Script.AnyScript, QLocale.Country.AnyCountry
    )
    codes = {
        locale.currencySymbol(QLocale.CurrencySymbolFormat.CurrencyIsoCode) for locale in everywhere
    }
    return tuple(sorted(code for code in codes if is_currency(code)))


def show_money(minor: Fraction | int, currency: str, *, extra_digits: int = 0) -> str:
    """Write an amount, rounded for the eye, halves to even.

    ``extra_digits`` are for prices of a unit that are smaller than the smallest coin.
    """
    digits = digits_of(currency) + extra_digits
    exact = Decimal(minor.numerator) / Decimal(minor.denominator)
    value = exact.scaleb(-digits_of(currency)).quantize(
        Decimal(1).scaleb(-digits), rounding=ROUND_HALF_EVEN
    )
    if not value:
        value = abs(value)  # no "-0.00"
    return f"{_number(value, digits)}{_NBSP}{currency}"


def plain_money(minor: Fraction | int, currency: str) -> str:
    """Write an amount for a file: a point, no currency, as many digits as its coin has."""
    digits = digits_of(currency)
    exact = Decimal(minor.numerator) / Decimal(minor.denominator)
    value = exact.scaleb(-digits).quantize(Decimal(1).scaleb(-digits), rounding=ROUND_HALF_EVEN)
    return str(value if value else abs(value))


def read_money(text: str, currency: str) -> tuple[int, str]:
    """Read a price as smallest coins, and the currency it is in.

    A comma or a point is the decimal sign; numbers are not grouped. A code or the locale's
    own sign may stand before or behind; without one it is in ``currency``.

    Raises
    ------
    NotMoney
        If it is no price.
    """
    tidy = " ".join(text.replace(_NBSP, " ").split())
    if not tidy:
        raise NotMoney("empty", text)
    match = _TYPED.match(tidy)
    if match is None or not match["number"] or not match["number"].isascii():
        raise NotMoney("no_number", text)
    code = _code(match["before"].strip(), match["after"].strip(), currency, text)
    number = match["number"].replace(",", ".")
    if number.count(".") > 1:
        raise NotMoney("ambiguous", text, match["number"])
    whole, _, decimals = number.partition(".")
    digits = digits_of(code)
    if len(decimals) > digits:
        # "1,250" may mean one thousand two hundred and fifty.
        raise NotMoney("too_fine", text, match["number"])
    minor = int(Decimal(number if whole else f"0{number}").scaleb(digits))
    if minor > PRICE_MAX_MINOR:
        raise NotMoney("too_much", text, match["number"])
    return minor, code


def _code(before: str, after: str, currency: str, text: str) -> str:
    words = [word for word in (before, after) if word]
    if not words:
        return currency
    if len(words) > 1:
        raise NotMoney("no_number", text)
    word = words[0]
    if word.upper() == currency:
        return currency
    if is_currency(word.upper()) and word.upper() in known_currencies():
        return word.upper()
    if word == QLocale().currencySymbol() and own_currency() != FALLBACK:
        return own_currency()
    if word == "€":
        return "EUR"
    raise NotMoney("currency", text, word)


def _number(value: Decimal, digits: int) -> str:
    """Write a decimal to the digit, with the locale's decimal sign and no grouping."""
    sign, _, rest = str(abs(value)).partition(".")
    point = QLocale().decimalPoint()
    minus = QLocale().negativeSign() if value < 0 else ""
    return f"{minus}{sign}{point}{rest}" if digits else f"{minus}{sign}"
