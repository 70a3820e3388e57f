"""What people type and what they are shown."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QLocale

from brewdesk.services.quantities import Quantities
from brewdesk.services.wording.amounts import decimals_for, number_text, plain
from culturecore.units import Kind, NotAQuantity


@pytest.mark.parametrize(
    ("value", "kind", "shown"),
    [
        (3.785411784, Kind.VOLUME, "3.79 L"),
        (0.25, Kind.VOLUME, "0.250 L"),
        (12.0, Kind.VOLUME, "12.0 L"),
        (0.0, Kind.VOLUME, "0 L"),
        (9.996, Kind.VOLUME, "10.0 L"),
        (200.4, Kind.MASS, "200 g"),
        (1234.0, Kind.MASS, "1234 g"),
        (21.04, Kind.TEMPERATURE, "21.0 °C"),
        (-0.04, Kind.TEMPERATURE, "0.0 °C"),
        (3.417, Kind.PH, "3.42"),
        (5.24, Kind.BRIX, "5.2 °Bx"),
        (1.0204, Kind.GRAVITY, "1.020"),
        (600.0, Kind.DURATION, "10.0 min"),
        (50.0, Kind.SUGAR, "50.0 g/L"),
    ],
)
def test_amounts_are_shown_to_the_digits_that_mean_something(kit, value, kind, shown):
    assert kit.quantities.show(value, kind) == shown
    assert plain(value, kind) == shown


def test_amounts_are_shown_in_the_makers_unit(kit):
    kit.settings.put_unit(Kind.VOLUME, "gal")
    kit.settings.put_unit(Kind.TEMPERATURE, "°F")
    # 26 USC 5052(b): one US gallon is 231 cubic inches, 3.785411784 L.
    assert kit.quantities.show(3.785411784, Kind.VOLUME) == "1.00 gal"
    assert kit.quantities.show(3.18, Kind.VOLUME) == "0.840 gal"
    assert kit.quantities.show(20.0, Kind.TEMPERATURE) == "68.0 °F"
    assert kit.quantities.show(20.0, Kind.TEMPERATURE, with_unit=False) == "68.0"


def test_a_bare_number_is_in_the_makers_unit_and_any_unit_may_be_typed(kit):
    kit.settings.put_unit(Kind.VOLUME, "gal")
    assert kit.quantities.read("1", Kind.VOLUME) == pytest.approx(3.785411784)
    assert kit.quantities.read("2 L", Kind.VOLUME) == 2.0
    assert kit.quantities.read("3,42", Kind.PH) == 3.42
    assert kit.quantities.read("10", Kind.DURATION) == 600.0
    with pytest.raises(NotAQuantity):
        kit.quantities.read("2 g", Kind.VOLUME)


def test_the_decimal_sign_is_that_of_the_locale_and_digits_are_never_grouped(kit):
    german = QLocale(QLocale.Language.German, QLocale.Country.Germany)
    quantities = Quantities(kit.settings, german)
    assert quantities.show(3.785, Kind.VOLUME) == "3,79 L"
    assert quantities.show(12345.0, Kind.MASS) == "12345 g"


@given(st.floats(min_value=0.001, max_value=1e5), st.sampled_from([Kind.VOLUME, Kind.MASS]))
def test_what_is_shown_is_within_one_percent_of_what_is_meant(value, kind):
    shown = float(number_text(value, decimals_for(value, kind), QLocale.c()))
    assert shown == pytest.approx(value, rel=0.01, abs=0.0005)
