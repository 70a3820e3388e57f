"""Answers of single questions in words: figures, ranges, sentences, refusals, sources."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from brewdesk.services.reckoner.question import (
    Answer,
    Choice,
    Field,
    Formula,
    Line,
    Measure,
    Number,
    Question,
    Span,
    Value,
)
from brewdesk.services.wording import drinkverdicts
from brewdesk.services.wording.amounts import Show, number_text, plain
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Caveat
from culturecore.sources import SOURCES, Standing
from culturecore.units import Kind

_LONG_WAIT_MIN = 120.0
_PLAIN_DIGITS = 3


def _t(text: str) -> str:
    return QCoreApplication.translate("Reckoner", text)


def number_words(value: float, measure: Number) -> str:
    """Write a plain number with its unit, to the digits that mean something."""
    if measure.unit == "bar":
        return drinkverdicts.amount("_bar", value) or ""
    if measure.unit == "min" and value >= _LONG_WAIT_MIN:
        hours, minutes = divmod(round(value), 60)
        return _t("{hours} h {minutes} min").format(hours=hours, minutes=minutes)
    return entry_words(value, measure)


def _decimals_of(value: float) -> int:
    size = f"{abs(value):.{_PLAIN_DIGITS - 1}e}"
    power = int(size.partition("e")[2])
    return min(3, max(0, _PLAIN_DIGITS - 1 - power)) if value else 0


def entry_words(value: float, measure: Number) -> str:
    """Write a plain number as it can be typed again."""
    shown = value * measure.scale
    decimals = _decimals_of(shown) if measure.decimals is None else measure.decimals
    text = number_text(shown, decimals)
    return f"{text} {measure.unit}" if measure.unit else text


def amount_words(value: float, measure: Measure, show: Show) -> str:
    """Write a value of any measure in the maker's units."""
    return show(value, measure) if isinstance(measure, Kind) else number_words(value, measure)


@dataclass(frozen=True, slots=True)
class LineWords:
    """A line as people read it; ``ends`` is "" where the figure has no bounds."""

    label: str
    figure: str
    ends: str
    low: str = ""
    high: str = ""


def line_words(line: Line, show: Show) -> LineWords:
    """Put a line into words."""
    if line.value is None:
        return LineWords(line.label, line.text, "")
    figure = _figure(line.value, line, show)
    if line.low is None or line.high is None or line.low == line.high:
        return LineWords(line.label, figure, "")
    low, high = (_figure(end, line, show) for end in (line.low, line.high))
    ends = _t("{low} to {high}").format(low=low, high=high)
    return LineWords(line.label, figure, ends, low, high)


def _figure(value: float, line: Line, show: Show) -> str:
    """Write a number of an answer, which nobody edits, with a true minus."""
    return amount_words(value, line.measure, show).replace("-", "−")


def span_words(line: Line) -> str:
    """Say what the two ends of a line mean; "" where it has none."""
    if line.low is None or line.low == line.high:
        return ""
    if line.span is Span.BOUNDS:
        return _t("least and most reckoned")
    return _t("8 times in 10")


def says_words(question: Question, answer: Answer, values: Mapping[str, Value], show: Show) -> str:
    """Fill an answer's sentence with its figures and with what was entered."""
    texts = {
        entry.key: _entered(entry, values.get(entry.key), show) for entry in question.fields
    }  # fmt: skip
    for line in answer.lines:
        texts[line.key] = line_words(line, show).figure
        for end, value in (("low", line.low), ("high", line.high)):
            if value is not None:
                texts[f"{line.key}_{end}"] = _figure(value, line, show)
    return answer.says.format_map(texts)


def _entered(entry: Field, value: Value, show: Show) -> str:
    if isinstance(value, float) and not isinstance(entry.form, Choice):
        return amount_words(value, entry.form, show)
    return ""


@dataclass(frozen=True, slots=True)
class SourceWords:
    """One source: its citation, and how far it was read."""

    citation: str
    standing: str


def source_words(formula: Formula) -> tuple[SourceWords, ...]:
    """Cite what a formula rests on, once each."""
    found = []
    for key in dict.fromkeys(formula.keys):
        source = SOURCES[key]
        found.append(SourceWords(source.citation, standing_words(source.standing)))
    return tuple(found)


def standing_words(standing: Standing) -> str:
    """Say how well a source stands behind what it is cited for."""
    return {
        Standing.READ: _t("read in the source itself"),
        Standing.SECOND_HAND: _t("read as others quote it"),
        Standing.FROM_MEMORY: _t("from memory, not confirmed"),
        Standing.DERIVED: _t("derived"),
        Standing.PRACTICE: _t("common practice, no source"),
        Standing.ASSUMPTION: _t("an assumption of this program"),
    }[standing]


def arithmetic_words() -> str:
    """Say that nothing but arithmetic stands behind a figure."""
    return _t("Plain arithmetic with the figures you entered; it needs no source.")


def caveat_words(caveat: Caveat) -> str:
    """Say why an estimate is weaker than its digits suggest."""
    return {
        Caveat.STARTER_ACID_ASSUMED: _t(
            "How much acid the starter holds is assumed: titrating it makes this sharper."
        ),
        Caveat.STARTER_PH_ASSUMED: _t(
            "The starter's pH is assumed from its taste or acidity: measuring it makes this "
            "sharper."
        ),
        Caveat.WATER_ASSUMED: _t(
            "The water's alkalinity is assumed; a test strip or the supplier's report tells it."
        ),
        Caveat.TEA_ASSUMED: _t("What the tea itself brings is assumed from few published figures."),
        Caveat.EXTRAPOLATED: _t("This goes beyond what was measured, so trust it less."),
        Caveat.TEMPERATURE_ASSUMED: _t(
            "Vessel and losses on the way are not known; the range allows for a little of both."
        ),
        Caveat.RECIPE_ONLY: _t("It rests on assumed figures alone, not on your own readings."),
        Caveat.UNLIKE_KNOWN: _t("A brew is not quite the liquid that the formula was made for."),
    }[caveat]


def refusal_words(
    problem: ImpossibleInput, question: Question, show: Show = plain
) -> str:  # fmt: skip
    """Say beside its entry why a value cannot be, and which would do."""
    reasons = _reasons()
    entry = next((one for one in question.fields if one.key == problem.field), None)
    own = reasons.get(problem.reason)
    low, high = _end(problem.low, entry, show), _end(problem.high, entry, show)
    if own is not None:
        return own.format(low=low, high=high)
    if low and high:
        return _t("This must lie between {low} and {high}.").format(low=low, high=high)
    if low:
        return _t("This must be above {low}.").format(low=low)
    if high:
        return _t("This must be at most {high}.").format(high=high)
    return _t("This cannot be. Please check it.")


def _end(value: float | None, entry: Field | None, show: Show) -> str:
    if value is None or value in (float("inf"), float("-inf")):
        return ""
    if entry is None or isinstance(entry.form, Choice):
        return number_text(value, _decimals_of(value))
    return amount_words(value, entry.form, show)


def _reasons() -> dict[str, str]:
    return {
        "empty": _t("Please fill this in."),
        "nothing": _t("This must be above nothing."),
        "not_finite": _t("This is not a number that can be measured."),
        "not_whole": _t("Please enter a whole number."),
        "not_offered": _t("Please choose one of those offered."),
        "ends_crossed": _t("The least must be below the likely figure, the most above it."),
        "contradicts_ph": _t("No drink of this pH can hold so much acid. Please check both."),
        "too_few": _t("Please enter at least two readings."),
        "too_many": _t("These are more than can be used."),
        "same_buffer": _t("Each buffer can be used once only. Please choose another."),
        "too_near": _t("The buffers must lie at least one pH apart."),
        "wrong_way": _t("The voltage must fall as the pH rises. Are two readings swapped?"),
        "same_moment": _t("The readings must be taken at different moments."),
        "not_cooling": _t("The pot has not cooled between the readings. Please check them."),
        "at_ambient": _t("Every reading must be warmer than the room."),
        "never": _t(
            "It never gets there in such a place: the wanted temperature must be above it."
        ),
        "not_rising": _t("A higher mark must hold more than the one below it."),
        "readings_disagree": _t("No drink reads like this on both. Please measure both again."),
    }


def withheld_words(withheld: NotAssessed) -> str:
    """Say why no answer is given."""
    return {
        "caffeine_unknown": _t(
            "Herbs differ too much: some hold no caffeine, some a lot. No figure is given."
        ),
        "not_for_pressure": _t(
            "This bottle is not made for pressure, so there is no pressure it may be under. "
            "Please use bottles made for fizzy drinks."
        ),
        "rating_unknown": _t("Please enter the pressure for which the maker rates the bottle."),
    }.get(withheld.reason, _t("What was entered does not settle this, so no answer is given."))
