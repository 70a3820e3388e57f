"""What a question is: its entries, how they are read, and the answer that the core gives.

Everything here is frozen and knows no window. Words are those of the language in use when
the questions are made. A question only hands entries to the core and names what returns.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import TypeVar

from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate, Verdict
from culturecore.units import Kind

T = TypeVar("T", bound=Enum)


class Group(Enum):
    """What the maker is doing when the question comes up, in the order of the list."""

    STARTER = "starter"
    ACIDITY = "acidity"
    SUGAR = "sugar"
    HEAT = "heat"
    VESSELS = "vessels"
    FIZZ = "fizz"
    ALCOHOL = "alcohol"
    LABEL = "label"
    SAFETY = "safety"


@dataclass(frozen=True, slots=True)
class Number:
    """A plain number with one unit.

    ``scale`` is how many of ``unit`` make one of the core's: 100 where the core has shares
    and people percent. ``decimals`` None means three significant digits.
    """

    unit: str = ""
    decimals: int | None = None
    scale: float = 1.0


@dataclass(frozen=True, slots=True)
class Choice:
    """One of several, each with its words; the value None is "not known"."""

    options: tuple[tuple[Enum | str | bool | None, str], ...]


Measure = Kind | Number
Value = float | Enum | str | bool | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Field:
    """One entry. ``low`` and ``high`` bound a plain number, in the core's unit."""

    key: str
    label: str
    form: Kind | Number | Choice
    default: Value = None
    optional: bool = False
    low: float | None = None
    high: float | None = None


class Span(Enum):
    """What the two ends beside a figure mean."""

    LIKELY = "likely"  # the central 80 %
    BOUNDS = "bounds"  # from least to most


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One figure of an answer; ``text`` stands for it where it is no number."""

    key: str
    label: str
    measure: Measure = Number()
    value: float | None = None
    low: float | None = None
    high: float | None = None
    text: str = ""
    span: Span = Span.LIKELY


@dataclass(frozen=True, slots=True)
class Formula:
    """A formula by name, and the keys of the sources it rests on; none: plain arithmetic."""

    name: str
    keys: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """What the core says. The first line is the figure that was asked for.

    ``is_judgement`` says that the verdict is the answer, and the lines are its limits.
    ``says`` is a sentence with places for lines and entries by their keys; a line's ends
    are called ``<key>_low`` and ``<key>_high``.
    """

    lines: tuple[Line, ...]
    says: str = ""
    verdicts: tuple[Verdict, ...] = ()
    caveats: tuple[Caveat, ...] = ()
    notes: tuple[str, ...] = ()
    formulas: tuple[Formula, ...]
    is_judgement: bool = False


class Inputs:
    """Entries by key, read with the type that the question declared."""

    def __init__(self, values: Mapping[str, Value]) -> None:
        self._values = values

    def number(self, key: str) -> float:
        """Return a number that must be there.

        Raises
        ------
        ImpossibleInput
            ``reason`` "empty" when it is not, or "not_finite".
        """
        value = self.maybe(key)
        if value is None:
            raise ImpossibleInput(key, value, reason="empty")
        return value

    def maybe(self, key: str) -> float | None:
        """Return a number, or None where nothing was entered."""
        value = self._values.get(key)
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, int | float):
            raise ImpossibleInput(key, value, reason="wrong_type")
        if not math.isfinite(value):
            raise ImpossibleInput(key, value, reason="not_finite")
        return float(value)

    def chosen(self, key: str, kind: type[T]) -> T:
        """Return what was chosen from an enum."""
        value = self.maybe_chosen(key, kind)
        if value is None:
            raise ImpossibleInput(key, value, reason="empty")
        return value

    def maybe_chosen(self, key: str, kind: type[T]) -> T | None:
        """Return what was chosen, or None for "not known"."""
        value = self._values.get(key)
        if value is not None and not isinstance(value, kind):
            raise ImpossibleInput(key, value, reason="not_offered")
        return value

    def word(self, key: str) -> str:
        """Return the word that stands for what was chosen."""
        value = self._values.get(key)
        if not isinstance(value, str):
            raise ImpossibleInput(key, value, reason="not_offered")
        return value

    def is_so(self, key: str) -> bool:
        """Return whether yes was chosen."""
        return self._values.get(key) is True

    def maybe_so(self, key: str) -> bool | None:
        """Return yes, no, or None for "not known"."""
        value = self._values.get(key)
        return value if isinstance(value, bool) else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """One question to the core.

    ``words`` are further words under which it is found. ``renames`` gives the entry at
    fault for a name, or for "name:reason", that the core uses. ``is_slow`` says that the
    answer may take longer than a frame of the screen.
    """

    key: str
    group: Group
    title: str
    purpose: str
    fields: tuple[Field, ...]
    answer: Callable[[Inputs], Answer]
    words: str = ""
    renames: Mapping[str, str] = field(default_factory=dict)
    is_slow: bool = False

    def defaults(self) -> dict[str, Value]:
        """Return what the entries begin with."""
        return {entry.key: entry.default for entry in self.fields}


def reckon(question: Question, values: Mapping[str, Value]) -> Answer:
    """Put a question to the core.

    Raises
    ------
    ImpossibleInput
        With ``field`` the key of the entry at fault; "" where none is alone.
    NotAssessed
        Where the core withholds the answer.
    """
    for entry in question.fields:
        _check_entry(entry, values.get(entry.key))
    try:
        return question.answer(Inputs(values))
    except ImpossibleInput as problem:
        raise _renamed(question, problem) from problem


def _check_entry(entry: Field, value: Value) -> None:
    if value is None:
        if not entry.optional and not isinstance(entry.form, Choice):
            raise ImpossibleInput(entry.key, value, reason="empty")
        return
    if isinstance(entry.form, Choice):
        if value not in {option for option, _ in entry.form.options}:
            raise ImpossibleInput(entry.key, value, reason="not_offered")
        return
    number = Inputs({entry.key: value}).number(entry.key)
    low = -math.inf if entry.low is None else entry.low
    high = math.inf if entry.high is None else entry.high
    if not low <= number <= high:
        raise ImpossibleInput(entry.key, value, low=entry.low, high=entry.high)


def _renamed(question: Question, problem: ImpossibleInput) -> ImpossibleInput:
    keys = {entry.key for entry in question.fields}
    name = problem.field
    found = question.renames.get(f"{name}:{problem.reason}", question.renames.get(name, name))
    return ImpossibleInput(
        found if found in keys else "",
        problem.value,
        low=problem.low,
        high=problem.high,
        unit=problem.unit,
        reason=problem.reason,
    )


# --- short ways to declare ---------------------------------------------------------------


def number(
    key: str,
    label: str,
    measure: Measure,
    default: float | None = None,
    *,
    low: float | None = None,
    high: float | None = None,
) -> Field:
    """Declare an entry for a number; without a default it may stay empty."""
    return Field(
        key=key,
        label=label,
        form=measure,
        default=default,
        optional=default is None,
        low=low,
        high=high,
    )


def choice(
    key: str,
    label: str,
    options: tuple[tuple[Enum | str | bool | None, str], ...],
    default: Enum | str | bool | None,
) -> Field:
    """Declare a choice."""
    return Field(key=key, label=label, form=Choice(options), default=default)


def told(
    key: str, label: str, estimate: Estimate, measure: Measure, span: Span = Span.LIKELY
) -> Line:
    """Make a line of an estimate."""
    return Line(
        key=key,
        label=label,
        measure=measure,
        value=estimate.value,
        low=estimate.low,
        high=estimate.high,
        span=span,
    )


def exact(key: str, label: str, value: float, measure: Measure) -> Line:
    """Make a line of a number that comes without bounds."""
    return Line(key=key, label=label, measure=measure, value=value)


def in_words(key: str, label: str, text: str) -> Line:
    """Make a line of words."""
    return Line(key=key, label=label, text=text)
