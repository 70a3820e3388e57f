"""People's quantities: read them, and turn them into the core's fixed units and back.

What a person typed is read by the grammar here and never handed to a units library:
such libraries read "1,5 L" as 15 litres and "1½ cup" as one cup without a word. Only
the conversion factors come from pint, from a small registry that is built when a factor
is asked for that is not among those of ``unitfactors``; afterwards they are plain floats.

Speed: the small registry takes some 20 ms, the library's own one twenty times that; what
is left is the import of pint, 0.1 to 0.3 s by itself and up to 0.7 s on a busy machine.
"""

from __future__ import annotations

import math
import re
import unicodedata
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from typing import TYPE_CHECKING

from culturecore.unitfactors import FIRST_SCREEN

if TYPE_CHECKING:
    import pint


class Kind(Enum):
    """What a quantity is; each kind has one unit inside the program."""

    VOLUME = "volume"  # L
    MASS = "mass"  # g
    TEMPERATURE = "temperature"  # degC
    LENGTH = "length"  # cm
    SUGAR = "sugar"  # g/L
    TEA = "tea"  # g/L
    ACIDITY = "acidity"  # g/L as acetic acid
    ALKALINITY = "alkalinity"  # meq/L
    PH = "ph"
    BRIX = "brix"  # degrees Brix, g sucrose in 100 g
    GRAVITY = "gravity"  # SG 20/20
    DURATION = "duration"  # s


class NotAQuantity(ValueError):  # noqa: N818  # says what the text is not
    """What was typed cannot be read with certainty.

    ``reason`` is one of "empty", "no_number", "ambiguous_number", "unknown_unit",
    "wrong_kind", "not_finite"; ``text`` is what came, ``part`` the piece at fault.
    """

    def __init__(self, reason: str, text: str, part: str = "") -> None:
        self.reason = reason
        self.text = text
        self.part = part
        super().__init__(f"{reason}: {part or text!r}")


@dataclass(frozen=True, slots=True)
class _Unit:
    """One unit offered: its symbol, its name in the registry, other ways to write it."""

    symbol: str
    registry_name: str
    aliases: tuple[str, ...] = ()


# The first of each kind is the unit used inside the program.
_UNITS: dict[Kind, tuple[_Unit, ...]] = {
    Kind.VOLUME: (
        _Unit("L", "litre", ("liter", "liters", "litre", "litres", "lt", "ltr")),
        _Unit("mL", "millilitre", ("milliliter", "milliliters", "millilitre", "millilitres", "cc")),
        _Unit("cL", "centilitre", ("centiliter", "centiliters", "centilitre", "centilitres")),
        _Unit("dL", "decilitre", ("deciliter", "deciliters", "decilitre", "decilitres")),
        _Unit("tsp", "us_teaspoon", ("tsps", "teaspoon", "teaspoons")),
        _Unit("tbsp", "us_tablespoon", ("tbsps", "tbs", "tablespoon", "tablespoons")),
        _Unit("fl oz", "us_fluid_ounce", ("floz", "fluid ounce", "fluid ounces", "us fl oz")),
        _Unit("cup", "us_cup", ("cups", "us cup", "us cups")),
        _Unit("pt", "us_pint", ("pts", "pint", "pints", "us pt", "us pint", "us pints")),
        _Unit("qt", "us_quart", ("qts", "quart", "quarts", "us qt", "us quart", "us quarts")),
        _Unit("gal", "us_gallon", ("gals", "gallon", "gallons", "us gal", "us gallon")),
        _Unit("imp fl oz", "imp_fluid_ounce", ("imperial fl oz", "imperial fluid ounces")),
        _Unit("imp pt", "imp_pint", ("imp pint", "imp pints", "imperial pint", "imperial pints")),
        _Unit("imp gal", "imp_gallon", ("imp gallon", "imp gallons", "imperial gallon")),
    ),
    Kind.MASS: (
        _Unit("g", "gram", ("gram", "grams", "gr", "gramme", "grammes")),
        _Unit("kg", "kilogram", ("kilo", "kilos", "kilogram", "kilograms")),
        _Unit("mg", "milligram", ("milligram", "milligrams")),
        _Unit("oz", "ounce", ("ounce", "ounces")),
        _Unit("lb", "pound", ("lbs", "pound", "pounds")),
    ),
    Kind.TEMPERATURE: (
        _Unit("°C", "degC", ("c", "degc", "deg c", "celsius", "degrees c", "degrees celsius")),
        _Unit("°F", "degF", ("f", "degf", "deg f", "fahrenheit", "degrees f")),
    ),
    Kind.LENGTH: (
        _Unit("cm", "centimetre", ("centimeter", "centimeters", "centimetre", "centimetres")),
        _Unit("mm", "millimetre", ("millimeter", "millimeters", "millimetre", "millimetres")),
        _Unit("in", "inch", ("inch", "inches", '"', "″")),
    ),
    Kind.SUGAR: (
        _Unit("g/L", "gram / litre", ("g per l", "grams per litre", "grams per liter")),
        _Unit("g/gal", "gram / us_gallon", ("g per gal", "grams per gallon")),
        _Unit("oz/gal", "ounce / us_gallon", ("oz per gal", "ounces per gallon")),
    ),
    Kind.TEA: (
        _Unit("g/L", "gram / litre", ("g per l", "grams per litre", "grams per liter")),
        _Unit("g/gal", "gram / us_gallon", ("g per gal", "grams per gallon")),
        _Unit("oz/gal", "ounce / us_gallon", ("oz per gal", "ounces per gallon")),
    ),
    Kind.ACIDITY: (_Unit("g/L", "gram / litre", ("g per l", "grams per litre")),),
    Kind.ALKALINITY: (
        _Unit("meq/L", "milliequivalent / litre", ("meq per l",)),
        _Unit("mg/L CaCO₃", "milligram_caco3 / litre", ("ppm caco₃", "mg/l as caco₃")),
    ),
    Kind.PH: (_Unit("pH", "one", ()),),
    Kind.BRIX: (_Unit("°Bx", "one", ("bx", "brix", "°brix")),),
    Kind.GRAVITY: (_Unit("SG", "one", ()),),
    Kind.DURATION: (
        _Unit("s", "second", ("sec", "secs", "second", "seconds")),
        _Unit("min", "minute", ("m", "mins", "minute", "minutes")),
        _Unit("h", "hour", ("hr", "hrs", "hour", "hours")),
        _Unit("d", "day", ("day", "days")),
    ),
}

# Inch and pound: international_yard_pound; US gallon of 231 in³: usc_26_5052; imperial gallon:
# uk_weights_1985; meq of CaCO3 = 50.04 mg (half of 100.09 g/mol).
_DEFINITIONS = (
    "metre = [length]",
    "gram = [mass]",
    "second = [time]",
    "equivalent = [equivalents]",
    "one = []",
    "kelvin = [temperature]; offset: 0",
    "degC = kelvin; offset: 273.15",
    "degF = 5 / 9 * kelvin; offset: 233.15 + 200 / 9",
    "centimetre = 0.01 * metre",
    "millimetre = 0.001 * metre",
    "inch = 0.0254 * metre",
    "litre = 0.001 * metre ** 3",
    "decilitre = 0.1 * litre",
    "centilitre = 0.01 * litre",
    "millilitre = 0.001 * litre",
    "us_gallon = 231 * inch ** 3",
    "us_quart = us_gallon / 4",
    "us_pint = us_gallon / 8",
    "us_cup = us_gallon / 16",
    "us_fluid_ounce = us_gallon / 128",
    "us_tablespoon = us_gallon / 256",
    "us_teaspoon = us_gallon / 768",
    "imp_gallon = 4.54609 * litre",
    "imp_pint = imp_gallon / 8",
    "imp_fluid_ounce = imp_gallon / 160",
    "kilogram = 1000 * gram",
    "milligram = 0.001 * gram",
    "pound = 453.59237 * gram",
    "ounce = pound / 16",
    "minute = 60 * second",
    "hour = 3600 * second",
    "day = 86400 * second",
    "milliequivalent = 0.001 * equivalent",
    "milligram_caco3 = milliequivalent / 50.04",
)

# Kinds whose amounts people say in two steps: "1 h 20 min", "1 lb 4 oz".
_COMPOUND_KINDS = (Kind.VOLUME, Kind.MASS, Kind.DURATION)
# Kinds whose values lie far below a thousand, so that "1,024" can only be a decimal comma.
_NEVER_THOUSANDS = (Kind.PH, Kind.BRIX, Kind.GRAVITY)

_VULGAR = {
    "¼": 1 / 4, "½": 1 / 2, "¾": 3 / 4, "⅐": 1 / 7, "⅑": 1 / 9, "⅒": 1 / 10,
    "⅓": 1 / 3, "⅔": 2 / 3, "⅕": 1 / 5, "⅖": 2 / 5, "⅗": 3 / 5, "⅘": 4 / 5,
    "⅙": 1 / 6, "⅚": 5 / 6, "⅛": 1 / 8, "⅜": 3 / 8, "⅝": 5 / 8, "⅞": 7 / 8,
}  # fmt: skip
_VULGAR_SET = "".join(_VULGAR)

_NOT_FINITE_WORD = re.compile(r"[+-]?(?:nan|inf|infinity)\b|[+-]?∞", re.IGNORECASE)
_GROUPED = re.compile(r"[0-9][_'’‘`][0-9]")
# tried once per run of digits, and never twice in it: pasted pages must not take minutes
_EXPONENT = re.compile(r"(?<![0-9.,])[0-9.,]++[eE][+-]?[0-9]+")
_SLASH_FRACTION = re.compile(
    r"(?:(?P<whole>[0-9]{1,4})\s+)?(?P<top>[0-9]{1,4})\s*[/⁄]\s*(?P<bottom>[0-9]{1,4})"
    rf"(?![0-9.,/⁄{_VULGAR_SET}])"
)
_VULGAR_FRACTION = re.compile(
    rf"(?P<whole>[0-9]{{1,4}})?\s*(?P<part>[{_VULGAR_SET}])(?![0-9.,/⁄{_VULGAR_SET}])"
)
_NUMERIC_RUN = re.compile(r"[0-9.,]+")
_DECIMAL = re.compile(r"[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+")
_MAYBE_GROUPED = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}")
_NUMBER_START = re.compile(rf"[0-9{_VULGAR_SET}]|[.,](?=[0-9])")
_PH_PREFIX = re.compile(r"ph\s*[:=]?\s*", re.IGNORECASE)
_CACO3 = re.compile(r"caco3", re.IGNORECASE)


def units_for(kind: Kind) -> tuple[str, ...]:
    """Return the symbols offered for a kind, the program's own unit first."""
    return tuple(unit.symbol for unit in _UNITS[kind])


def to_canonical(value: float, unit: str, kind: Kind) -> float:
    """Convert ``value`` in ``unit`` to the program's unit of ``kind``.

    Parameters
    ----------
    value : float
        Number in ``unit``.
    unit : str
        A symbol of :func:`units_for`, or another usual way to write it.
    kind : Kind
        What the quantity is.

    Raises
    ------
    NotAQuantity
        "unknown_unit" or "wrong_kind" for the unit, "not_finite" for the value.
    """
    scale, zero = _affine(kind, _find_unit(unit, kind, unit).symbol)
    return _finite((value - zero) * scale, f"{value} {unit}")


def from_canonical(value: float, unit: str, kind: Kind) -> float:
    """Convert ``value`` in the program's unit of ``kind`` to ``unit``.

    Raises as :func:`to_canonical` does.
    """
    scale, zero = _affine(kind, _find_unit(unit, kind, unit).symbol)
    return _finite(value / scale + zero, f"{value} {unit}")


def parse(text: str, kind: Kind, *, default_unit: str) -> float:
    """Read a typed quantity and return it in the program's unit of ``kind``.

    Decimal comma and decimal point are both read; digits are never grouped. A comma
    before exactly three digits ("1,500") may be either and is refused, except for pH,
    Brix and gravity, which never reach a thousand. Fractions are read as "1/2", "3 1/2",
    "½" and "1½"; volumes, masses and durations also in steps ("1 h 20 min").

    Parameters
    ----------
    text : str
        What the person typed.
    kind : Kind
        What is expected.
    default_unit : str
        Unit meant when the text has none.

    Returns
    -------
    float
        In L, g, degC, cm, g/L, meq/L, s; pH, Brix and gravity as they are.

    Raises
    ------
    NotAQuantity
        With the reason and the part that could not be read. Ranges are not checked
        here: a negative volume parses, and is refused where it is used.
    """
    rest = _CACO3.sub("CaCO₃", text).strip()
    if not rest:
        raise NotAQuantity("empty", text)
    _refuse_odd_signs(rest, text)
    if kind is Kind.PH:
        rest = _PH_PREFIX.sub("", rest, count=1) if _PH_PREFIX.match(rest) else rest
    sign = 1.0
    if rest[:1] in ("+", "-"):
        sign = -1.0 if rest[0] == "-" else 1.0
        rest = rest[1:].lstrip()
    steps = _read_steps(rest, kind, text)
    if len(steps) == 1:
        number, unit_text = steps[0]
        unit = default_unit if unit_text in ("", "°") else unit_text
        if unit_text == "°" and kind is not Kind.TEMPERATURE:
            raise NotAQuantity("unknown_unit", text, unit_text)
        found = _find_unit(unit, kind, text)
        return _finite(to_canonical(sign * number, found.symbol, kind), text)
    return sign * _add_steps(steps, kind, text)


def _refuse_odd_signs(rest: str, text: str) -> None:
    """Refuse what other readers would silently take for something else."""
    if word := _NOT_FINITE_WORD.match(rest):
        raise NotAQuantity("not_finite", text, word.group())
    for character in rest:
        foreign_digit = character.isdigit() and character not in "0123456789₃"
        dash = unicodedata.category(character) == "Pd" and character != "-"
        if foreign_digit or dash or character == "−":
            raise NotAQuantity("ambiguous_number", text, character)
    if grouped := _GROUPED.search(rest):
        raise NotAQuantity("ambiguous_number", text, grouped.group())
    if exponent := _EXPONENT.search(rest):
        # pasted from a calculator; too large to be a number at all is worth its own reason
        power = exponent.group().lower().partition("e")[2]
        reason = "not_finite" if _is_huge(power) else "ambiguous_number"
        raise NotAQuantity(reason, text, exponent.group())


def _is_huge(power: str) -> bool:
    digits = power.lstrip("+-0")
    return not power.startswith("-") and (len(digits) > 3 or int(digits or "0") > 300)


def _read_steps(rest: str, kind: Kind, text: str) -> list[tuple[float, str]]:
    """Split into (number, unit text) pairs."""
    steps: list[tuple[float, str]] = []
    position = 0
    while position < len(rest):
        number, position = _read_number(rest, position, kind, text)
        following = _NUMBER_START.search(rest, position)
        end = following.start() if following else len(rest)
        unit_text = rest[position:end].strip()
        if following and not unit_text.rstrip(":,.;+-/ "):
            # "1 234", "3-4", "1:20": two numbers with no unit between them
            raise NotAQuantity("ambiguous_number", text, rest)
        steps.append((number, unit_text))
        position = end
    return steps


def _read_number(rest: str, position: int, kind: Kind, text: str) -> tuple[float, int]:
    """Read one number at ``position``; return it and where it ends."""
    if match := _SLASH_FRACTION.match(rest, position):
        bottom = int(match["bottom"])
        if bottom == 0:
            raise NotAQuantity("not_finite", text, match.group())
        return int(match["whole"] or 0) + int(match["top"]) / bottom, match.end()
    if match := _VULGAR_FRACTION.match(rest, position):
        return int(match["whole"] or 0) + _VULGAR[match["part"]], match.end()
    match = _NUMERIC_RUN.match(rest, position)
    if match is None:
        raise NotAQuantity("no_number", text, rest[position:])
    run = match.group()
    if not any(character.isdigit() for character in run):
        raise NotAQuantity("no_number", text, run)
    if not _DECIMAL.fullmatch(run):
        raise NotAQuantity("ambiguous_number", text, run)
    if kind not in _NEVER_THOUSANDS and _MAYBE_GROUPED.fullmatch(run):
        raise NotAQuantity("ambiguous_number", text, run)
    return _finite(float(run.replace(",", ".")), text), match.end()


def _add_steps(steps: list[tuple[float, str]], kind: Kind, text: str) -> float:
    """Add "1 h" and "20 min"; each step needs a unit, and each a smaller one."""
    if kind not in _COMPOUND_KINDS or any(not unit_text for _, unit_text in steps):
        raise NotAQuantity("ambiguous_number", text, text)
    total = 0.0
    last_scale = math.inf
    for number, unit_text in steps:
        scale, _ = _affine(kind, _find_unit(unit_text, kind, text).symbol)
        if scale >= last_scale:
            raise NotAQuantity("ambiguous_number", text, unit_text)
        last_scale = scale
        total += number * scale
    return _finite(total, text)


def _normal(unit_text: str) -> str:
    """Fold a unit's spelling: case, dots, spaces, degree look-alikes."""
    folded = unit_text.replace("º", "°").replace("℃", "°C").replace("℉", "°F").replace(".", " ")
    folded = folded.replace("° ", "°").casefold()
    return " ".join(folded.split()).replace(" / ", "/")


@lru_cache(maxsize=1)
def _spellings() -> dict[Kind, dict[str, _Unit]]:
    return {
        kind: {
            _normal(spelling): unit for unit in units for spelling in (unit.symbol, *unit.aliases)
        }
        for kind, units in _UNITS.items()
    }


def _find_unit(unit_text: str, kind: Kind, text: str) -> _Unit:
    wanted = _normal(unit_text)
    spellings = _spellings()
    unit = spellings[kind].get(wanted)
    if unit is not None:
        return unit
    known_elsewhere = any(wanted in others for others in spellings.values())
    raise NotAQuantity("wrong_kind" if known_elsewhere else "unknown_unit", text, unit_text)


def _finite(value: float, text: str) -> float:
    if not math.isfinite(value):
        raise NotAQuantity("not_finite", text, text)
    return value


@lru_cache(maxsize=1)
def _registry() -> pint.UnitRegistry[float]:
    """Build the small registry; the library's own one takes twenty times as long."""
    import pint

    registry: pint.UnitRegistry[float] = pint.UnitRegistry(None)
    for definition in _DEFINITIONS:
        registry.define(definition)
    return registry


def prepare() -> None:
    """Load pint and build the registry now, for instance in the background after start-up."""
    _registry()


def _affine(kind: Kind, symbol: str) -> tuple[float, float]:
    """Return (scale, zero): program value = (value - zero) * scale."""
    if symbol == _UNITS[kind][0].symbol:
        return 1.0, 0.0
    return FIRST_SCREEN.get((kind.value, symbol)) or _affine_from_registry(kind, symbol)


@lru_cache(maxsize=64)
def _affine_from_registry(kind: Kind, symbol: str) -> tuple[float, float]:
    own, unit = _UNITS[kind][0], next(one for one in _UNITS[kind] if one.symbol == symbol)
    registry = _registry()
    zero = 0.0
    scale_from, scale_to = unit.registry_name, own.registry_name
    if kind is Kind.TEMPERATURE:
        # rounding removes the last-digit noise of the offset, so that 32 °F is 0 °C exactly
        zero = round(registry.Quantity(0.0, scale_to).to(scale_from).magnitude, 9)
        scale_from, scale_to = f"delta_{scale_from}", f"delta_{scale_to}"
    return float(registry.Quantity(1.0, scale_from).to(scale_to).magnitude), float(zero)
