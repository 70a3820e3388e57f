"""Reading what people type."""

from __future__ import annotations

import math
import subprocess
import sys
import time

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from culturecore import units
from culturecore.unitfactors import FIRST_SCREEN
from culturecore.units import (
    Kind,
    NotAQuantity,
    from_canonical,
    parse,
    to_canonical,
    units_for,
)

KIND_AND_UNIT = st.sampled_from([(kind, unit) for kind in Kind for unit in units_for(kind)])


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("1,5 L", 1.5),
        ("1.5l", 1.5),
        (" 1.5 ", 1.5),
        ("+1.5", 1.5),
        (",5 L", 0.5),
        (".5L", 0.5),
        ("0,125 l", 0.125),
        ("3 1/2 cups", 3.5 * 0.2365882365),
        ("1/2 cup", 0.5 * 0.2365882365),
        ("1⁄2 cup", 0.5 * 0.2365882365),
        ("½ gal", 1.892705892),
        ("1½ cup", 1.5 * 0.2365882365),
        ("1 ½ Cups", 1.5 * 0.2365882365),
        ("⅔ cup", 0.2365882365 * 2 / 3),
        ("2 tbsp", 2 * 0.01478676478125),
        ("2 TBSP.", 2 * 0.01478676478125),
        ("20 fl. oz.", 20 * 0.0295735295625),
        ("20 fl oz", 20 * 0.0295735295625),
        ("2 pints", 0.946352946),
        ("1 imp gal", 4.54609),
        ("8 imp pt", 4.54609),
        ("160 imp fl oz", 4.54609),
        ("750 mL", 0.75),
        ("75 cl", 0.75),
        ("7,5 dL", 0.75),
        ("1 gal 2 cups", 3.785411784 + 2 * 0.2365882365),
        ("-2 L", -2.0),
    ],
)
def test_volumes_are_read(text: str, litres: float) -> None:
    assert parse(text, Kind.VOLUME, default_unit="L") == pytest.approx(litres, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "kind", "default_unit", "value"),
    [
        ("12,5g", Kind.MASS, "g", 12.5),
        ("12,5", Kind.MASS, "kg", 12500.0),
        ("1 lb 4 oz", Kind.MASS, "g", 566.9904625),
        ("250 mg", Kind.MASS, "g", 0.25),
        ("70 °F", Kind.TEMPERATURE, "°C", 190 / 9),
        ("70°", Kind.TEMPERATURE, "°F", 190 / 9),
        ("32f", Kind.TEMPERATURE, "°C", 0.0),
        ("22 º C", Kind.TEMPERATURE, "°F", 22.0),
        ("22 ℃", Kind.TEMPERATURE, "°F", 22.0),
        ("-4 °F", Kind.TEMPERATURE, "°C", -20.0),
        ('6"', Kind.LENGTH, "cm", 15.24),
        ("6 in", Kind.LENGTH, "cm", 15.24),
        ("4 mm", Kind.LENGTH, "cm", 0.4),
        ("1 h 20 min", Kind.DURATION, "min", 4800.0),
        ("1h20m", Kind.DURATION, "min", 4800.0),
        ("1 ½ h", Kind.DURATION, "min", 5400.0),
        ("10", Kind.DURATION, "min", 600.0),
        ("2 days", Kind.DURATION, "h", 172800.0),
        ("4.20", Kind.PH, "pH", 4.2),
        ("3,42", Kind.PH, "pH", 3.42),
        ("pH 3.4", Kind.PH, "pH", 3.4),
        ("ph: 3,4", Kind.PH, "pH", 3.4),
        ("7.5 °Bx", Kind.BRIX, "°Bx", 7.5),
        ("7,5 bx", Kind.BRIX, "°Bx", 7.5),
        ("7.5 Brix", Kind.BRIX, "°Bx", 7.5),
        ("1.024", Kind.GRAVITY, "SG", 1.024),
        ("1,024", Kind.GRAVITY, "SG", 1.024),
        ("50 g/L", Kind.SUGAR, "g/L", 50.0),
        ("50 g / l", Kind.SUGAR, "g/L", 50.0),
        ("1 oz/gal", Kind.SUGAR, "g/L", 28.349523125 / 3.785411784),
        ("4", Kind.TEA, "g/L", 4.0),
        ("6,1 g/L", Kind.ACIDITY, "g/L", 6.1),
        ("1.5 meq/L", Kind.ALKALINITY, "meq/L", 1.5),
        ("100.08 mg/L CaCO3", Kind.ALKALINITY, "meq/L", 2.0),
        ("100.08", Kind.ALKALINITY, "mg/L CaCO₃", 2.0),
    ],
)
def test_other_quantities_are_read(text: str, kind: Kind, default_unit: str, value: float) -> None:
    assert parse(text, kind, default_unit=default_unit) == pytest.approx(value, rel=1e-12)


def test_freezing_point_in_fahrenheit_is_exactly_zero() -> None:
    assert parse("32 °F", Kind.TEMPERATURE, default_unit="°C") == 0.0


@pytest.mark.parametrize(
    ("text", "reason", "part"),
    [
        ("", "empty", ""),
        ("  \t ", "empty", ""),
        ("abc", "no_number", "abc"),
        ("L", "no_number", "L"),
        (".", "no_number", "."),
        ("--5", "no_number", "-5"),
        ("about 5 L", "no_number", "about 5 L"),
        ("1.234,5", "ambiguous_number", "1.234,5"),
        ("1,234.5", "ambiguous_number", "1,234.5"),
        ("1,500 mL", "ambiguous_number", "1,500"),
        ("1.2.3", "ambiguous_number", "1.2.3"),
        ("5.", "ambiguous_number", "5."),
        ("1 234", "ambiguous_number", "1 234"),
        ("3-4 cups", "ambiguous_number", "3-4 cups"),
        ("1:20", "ambiguous_number", "1:20"),
        ("1_000", "ambiguous_number", "1_0"),
        ("1'000", "ambiguous_number", "1'0"),
        ("1’000", "ambiguous_number", "1’0"),
        ("−5", "ambiguous_number", "−"),
        ("–5", "ambiguous_number", "–"),
        ("５ L", "ambiguous_number", "５"),
        ("٣ L", "ambiguous_number", "٣"),
        ("3²", "ambiguous_number", "²"),
        ("2e3", "ambiguous_number", "2e3"),
        ("2e-400", "ambiguous_number", "2e-400"),
        ("1.2.3E4", "ambiguous_number", "1.2.3E4"),
        ("1/2/3", "ambiguous_number", "1/2/3"),
        ("2 cups 1 gal", "ambiguous_number", "gal"),
        ("1 L 1 L", "ambiguous_number", "L"),
        ("1 L 20", "ambiguous_number", "1 L 20"),
        ("nan", "not_finite", "nan"),
        ("-inf", "not_finite", "-inf"),
        ("Infinity L", "not_finite", "Infinity"),
        ("∞", "not_finite", "∞"),
        ("1e400", "not_finite", "1e400"),
        ("1,5e+0999", "not_finite", "1,5e+0999"),
        ("1/0 L", "not_finite", "1/0"),
        ("5 oz", "wrong_kind", "oz"),
        ("5 °C", "wrong_kind", "°C"),
        ("5 parsec", "unknown_unit", "parsec"),
        ("5%", "unknown_unit", "%"),
        ("2 T", "unknown_unit", "T"),
        ("5 °", "unknown_unit", "°"),
    ],
)
def test_doubtful_volumes_are_refused_with_a_reason(text: str, reason: str, part: str) -> None:
    with pytest.raises(NotAQuantity) as refusal:
        parse(text, Kind.VOLUME, default_unit="L")
    assert (refusal.value.reason, refusal.value.part) == (reason, part)
    assert refusal.value.text == text


def test_endless_digits_are_not_finite() -> None:
    with pytest.raises(NotAQuantity) as refusal:
        parse("9" * 5000, Kind.VOLUME, default_unit="L")
    assert refusal.value.reason == "not_finite"


def test_two_steps_are_no_temperature() -> None:
    with pytest.raises(NotAQuantity) as refusal:
        parse("70 °F 20 °C", Kind.TEMPERATURE, default_unit="°C")
    assert refusal.value.reason == "ambiguous_number"


def test_too_large_for_the_unit_is_not_finite() -> None:
    with pytest.raises(NotAQuantity) as refusal:
        parse("9" * 308, Kind.MASS, default_unit="kg")
    assert refusal.value.reason == "not_finite"


@given(
    kind_and_unit=KIND_AND_UNIT,
    thousandths=st.integers(-999_999, 999_999),
    decimal_sign=st.sampled_from(".,"),
)
def test_what_is_printed_plainly_is_read_back(
    kind_and_unit: tuple[Kind, str], thousandths: int, decimal_sign: str
) -> None:
    kind, unit = kind_and_unit
    number = f"{thousandths / 100:.2f}".replace(".", decimal_sign)
    read = parse(f"{number} {unit}", kind, default_unit=units_for(kind)[0])
    assert from_canonical(read, unit, kind) == pytest.approx(thousandths / 100, abs=1e-9)


@given(kind_and_unit=KIND_AND_UNIT, value=st.floats(-1e6, 1e6))
def test_there_and_back_is_the_same(kind_and_unit: tuple[Kind, str], value: float) -> None:
    kind, unit = kind_and_unit
    back = from_canonical(to_canonical(value, unit, kind), unit, kind)
    assert back == pytest.approx(value, rel=1e-12, abs=1e-9)


def _reading(text: str, kind: Kind) -> float | str:
    try:
        return parse(text, kind, default_unit=units_for(kind)[0])
    except NotAQuantity as refusal:
        return refusal.reason


@given(text=st.text(), kind=st.sampled_from(Kind))
def test_any_text_gives_a_number_or_a_known_reason(text: str, kind: Kind) -> None:
    reading = _reading(text, kind)
    if isinstance(reading, float):
        assert math.isfinite(reading)
        assert any(character.isnumeric() for character in text)
    else:
        assert reading in {
            "empty", "no_number", "ambiguous_number", "unknown_unit", "wrong_kind", "not_finite",
        }  # fmt: skip


@pytest.mark.parametrize("piece", ["9", "1 ", "1/", "½", "1e", ".", ",1", " ", "a", "1a", "-"])
def test_very_long_text_is_answered_at_once(piece: str) -> None:
    """A pasted page must not hold the window; slow patterns would take minutes here."""
    started = time.process_time()
    _reading(piece * 20_000, Kind.VOLUME)
    assert time.process_time() - started < 2.0


@given(text=st.text(alphabet="0123456789.,-+/ ½⅓:eL", max_size=12))
def test_number_like_text_is_never_read_as_something_else(text: str) -> None:
    """Where Python itself reads the text as a plain decimal, the grammar reads the same."""
    try:
        value = parse(text, Kind.PH, default_unit="pH")
    except NotAQuantity:
        return
    try:
        plain = float(text.replace(",", "."))
    except ValueError:
        assume(False)
    assert value == pytest.approx(plain)


def test_factors_at_hand_are_those_of_the_registry() -> None:
    """pint's arithmetic in its last digits; every one of the table, none that is not offered."""
    units.prepare()
    offered = {(kind.value, symbol): kind for kind in Kind for symbol in units_for(kind)}
    for (kind_name, symbol), (scale, zero) in FIRST_SCREEN.items():
        kind = offered[kind_name, symbol]
        asked_scale, asked_zero = units._affine_from_registry(kind, symbol)
        assert scale == pytest.approx(asked_scale, rel=1e-15)
        assert zero == asked_zero


def test_program_unit_of_each_kind_comes_first() -> None:
    for kind in Kind:
        assert to_canonical(1.25, units_for(kind)[0], kind) == 1.25


@pytest.mark.parametrize("convert", [to_canonical, from_canonical])
def test_units_of_another_kind_do_not_convert(convert) -> None:
    with pytest.raises(NotAQuantity) as refusal:
        convert(1.0, "g", Kind.VOLUME)
    assert refusal.value.reason == "wrong_kind"


def test_nan_does_not_convert() -> None:
    with pytest.raises(NotAQuantity) as refusal:
        to_canonical(float("nan"), "L", Kind.VOLUME)
    assert refusal.value.reason == "not_finite"


def test_units_of_a_first_screen_load_no_heavy_library() -> None:
    script = (
        "import sys\n"
        "from culturecore import kitchen, safety, sweettea\n"
        "from culturecore.units import Kind, from_canonical, parse\n"
        "assert parse('1,5 L', Kind.VOLUME, default_unit='L') == 1.5\n"
        "assert not {'pint', 'numpy'} & set(sys.modules), sorted(sys.modules)\n"
        "parse('1 gal 2 cups', Kind.VOLUME, default_unit='L')\n"
        "assert round(from_canonical(25.0, '°F', Kind.TEMPERATURE), 9) == 77.0\n"
        "assert not {'pint', 'numpy'} & set(sys.modules), sorted(sys.modules)\n"
        "parse('1 imp gal', Kind.VOLUME, default_unit='L')\n"
        "assert 'pint' in sys.modules\n"
    )
    run = subprocess.run(
        [sys.executable, "-c", script], check=False, capture_output=True, text=True,
        env={"PYTHONPATH": "shared"},
    )  # fmt: skip
    assert run.returncode == 0, run.stderr
