"""Trials in words. No sentence claims more than its jars show."""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import datetime, tzinfo
from enum import Enum

from PySide6.QtCore import QCoreApplication

from brewdesk.services.trialview import (
    Comparison,
    Difference,
    Finding,
    TrialJarView,
    TrialOutcome,
    TrialView,
)
from brewdesk.services.wording.amounts import Show, number_text, plain
from brewdesk.services.wording.inside import inside
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.stages import name_of
from culturecore.stages import TasteMark, TrialFactor
from culturecore.trials import THRESHOLD_PH, Passed, likely_bounds
from culturecore.units import Kind

_PERCENT = 100.0


def _t(text: str) -> str:
    return QCoreApplication.translate("Trials", text)


def factor_in_sentence(factor: TrialFactor) -> str:
    """Name the factor within a sentence."""
    return {
        TrialFactor.TEA: _t("the tea"),
        TrialFactor.TEA_STRENGTH: _t("the strength of the tea"),
        TrialFactor.SUGAR: _t("the sugar"),
        TrialFactor.STARTER_SHARE: _t("the share of starter"),
        TrialFactor.CULTURE: _t("the culture"),
        TrialFactor.PLACE: _t("the place"),
        TrialFactor.VESSEL: _t("the kind of vessel"),
        TrialFactor.OTHER: _t("what was changed"),
    }[factor]


def outcome_name(outcome: TrialOutcome) -> str:
    """Name what arms are compared by."""
    return {
        TrialOutcome.DAYS_TO_PH: _t("Days to pH {ph}").format(ph=_ph()),
        TrialOutcome.ACIDITY: _t("Titratable acidity"),
        TrialOutcome.PELLICLE: _t("Thickness of the pellicle"),
        TrialOutcome.LIKING: _t("Liking"),
    }[outcome]


def _outcome_in_sentence(outcome: TrialOutcome) -> str:
    return {
        TrialOutcome.DAYS_TO_PH: _t("the time to pH {ph}").format(ph=_ph()),
        TrialOutcome.ACIDITY: _t("acidity"),
        TrialOutcome.PELLICLE: _t("the thickness of the pellicle"),
        TrialOutcome.LIKING: _t("liking"),
    }[outcome]


def _ph() -> str:
    return number_text(THRESHOLD_PH, 1)


# --- amounts and ranges ---------------------------------------------------------------


def amount_words(outcome: TrialOutcome, value: float, show: Show = plain) -> str:
    """Write an amount of an outcome with its unit, without a sign."""
    size = abs(value)
    if outcome is TrialOutcome.ACIDITY:
        return show(size, Kind.ACIDITY)
    template = {
        TrialOutcome.DAYS_TO_PH: _t("{number} days"),
        TrialOutcome.PELLICLE: _t("{number} mm"),
        TrialOutcome.LIKING: _t("{number} points"),
    }[outcome]
    return template.format(number=number_text(size, 1))


def gap_words(outcome: TrialOutcome, gap: float, show: Show = plain) -> str:
    """Say how far the second arm is from the first: "1.2 days earlier"."""
    more, less = {
        TrialOutcome.DAYS_TO_PH: (_t("{amount} later"), _t("{amount} earlier")),
        TrialOutcome.ACIDITY: (_t("{amount} more acid"), _t("{amount} less acid")),
        TrialOutcome.PELLICLE: (_t("{amount} thicker"), _t("{amount} thinner")),
        TrialOutcome.LIKING: (_t("{amount} higher"), _t("{amount} lower")),
    }[outcome]
    return (more if gap >= 0 else less).format(amount=amount_words(outcome, gap, show))


def range_words(outcome: TrialOutcome, low: float, high: float, show: Show = plain) -> str:
    """Say between which differences the truth is likely to lie."""
    if low < 0.0 < high:
        return _t("anywhere from {low} to {high}").format(
            low=gap_words(outcome, low, show), high=gap_words(outcome, high, show)
        )
    near, far = (low, high) if low >= 0.0 else (high, low)
    return _t("between {near} and {far}").format(
        near=amount_words(outcome, near, show), far=gap_words(outcome, far, show)
    )


def chance_words(p_value: float) -> str:
    """Say how often chance does as much, in trials of a hundred."""
    if p_value < 0.01:
        return _t("fewer than 1 of 100 trials")
    count = round(p_value * _PERCENT)
    if count == 1:
        return _t("1 of 100 trials")
    return _t("{count} of 100 trials").format(count=count)


# --- what may be said -----------------------------------------------------------------


def finding_name(finding: Finding) -> str:
    """Say in two or three words what a comparison came to."""
    return {
        Finding.NOT_READ: _t("Not measured in both"),
        Finding.ONE_EACH: _t("One jar each"),
        Finding.TOO_FEW: _t("Too few jars"),
        Finding.NONE_SEEN: _t("Not told apart"),
        Finding.HINT: _t("Points to it, not settled"),
        Finding.SHOWN: _t("Shown in these jars"),
    }[finding]


def comparison_words(one: Comparison, factor: TrialFactor, show: Show = plain) -> str:
    """Say what the jars show of one outcome, and no more."""
    if one.finding is Finding.NOT_READ:
        return _t("{outcome}: not measured yet in jars of both.").format(
            outcome=outcome_name(one.outcome)
        )
    if one.finding is Finding.ONE_EACH:
        return _one_each(one, factor, show)
    if one.finding is Finding.TOO_FEW:
        return _too_few(one, show)
    if any(one.waiting):
        return _still_waiting(one)
    assert one.effect is not None
    texts = {
        "lead": _lead(one, show),
        "first": one.first.name,
        "second": one.second.name,
        "outcome": _outcome_in_sentence(one.outcome),
        "range": range_words(one.outcome, one.effect.low, one.effect.high, show),
        "jars": _jars(one),
    }
    if one.finding is Finding.SHOWN:
        return " ".join(
            (
                _t("{lead} ({jars}). The difference of such jars is likely to be {range}.").format(
                    **texts
                ),
                _shown_chance(one),
            )
        )
    if one.finding is Finding.HINT:
        sentence = _t(
            "These jars point to it but do not settle it: {lead} ({jars}). The difference may "
            "be {range}."
        )
        return " ".join((sentence.format(**texts), _why_not(one)))
    return _t(
        "These jars do not tell {second} from {first} in {outcome} ({jars}): the difference may "
        "be {range}. That is no proof that there is none."
    ).format(**texts)


def _lead(one: Comparison, show: Show) -> str:
    assert one.effect is not None
    template = {
        TrialOutcome.DAYS_TO_PH: _t("{second} was {gap} at pH {ph} than {first}"),
        TrialOutcome.ACIDITY: _t("{second} was {gap} than {first} around day {day}"),
        TrialOutcome.PELLICLE: _t(
            "The pellicle of {second} was {gap} than that of {first} around day {day}"
        ),
        TrialOutcome.LIKING: _t("{second} was marked {gap} than {first}"),
    }[one.outcome]
    return template.format(
        first=one.first.name,
        second=one.second.name,
        gap=gap_words(one.outcome, one.effect.difference, show),
        ph=_ph(),
        day="–" if one.at_day is None else number_text(one.at_day, 0),
    )


def _jars(one: Comparison) -> str:
    first, second = one.counts
    words = _t("{second} against {first} jars").format(first=first, second=second)
    return (
        _t("{jars}, compared within like vessels").format(jars=words) if one.is_blocked else words
    )


def _shown_chance(one: Comparison) -> str:
    assert one.adjusted_p is not None
    assert one.dealt_p is not None
    chance = chance_words(max(one.adjusted_p, one.dealt_p))
    if one.looked_at > 1:
        return _t(
            "Chance alone does as much in {chance}, allowing for the {count} comparisons made."
        ).format(chance=chance, count=one.looked_at)
    return _t("Chance alone does as much in {chance}.").format(chance=chance)


def _why_not(one: Comparison) -> str:
    assert one.dealt_p is not None
    if one.least_p is not None and one.least_p >= 0.05:
        return _t(
            "With so few jars even the clearest order comes about by chance in {chance}."
        ).format(chance=chance_words(one.least_p))
    if one.dealt_p >= 0.05:
        return _t("Dealing the same jars out by lot parts them as far in {chance}.").format(
            chance=chance_words(one.dealt_p)
        )
    return _t("With {count} comparisons made, one is apt to stand out by chance alone.").format(
        count=one.looked_at
    )


def _one_each(one: Comparison, factor: TrialFactor, show: Show) -> str:
    cannot = _t("One jar each cannot tell {factor} from the jar.").format(
        factor=factor_in_sentence(factor)
    )
    if one.effect is None:
        return _t("{outcome}: not both jars are there yet. {cannot}").format(
            outcome=outcome_name(one.outcome), cannot=cannot
        )
    return f"{_lead(one, show)}. {cannot}"


def _too_few(one: Comparison, show: Show) -> str:
    if any(one.waiting):
        return _waiting_count(one)
    more = (
        _t("The marks are too few for an interval; nothing follows from them yet.")
        if one.outcome is TrialOutcome.LIKING and min(one.counts) > 1
        else _t("It takes at least two jars of each that differ a little, to see how jars scatter.")
    )
    return f"{_lead(one, show)} ({_jars(one)}). {more}"


def _waiting_count(one: Comparison) -> str:
    first, second = one.counts
    return _t(
        "{done_second} of {second_count} jars of {second} and {done_first} of {first_count} of "
        "{first} have passed pH {ph}; the others are still waited for."
    ).format(
        done_second=second - one.waiting[1],
        second_count=second,
        second=one.second.name,
        done_first=first - one.waiting[0],
        first_count=first,
        first=one.first.name,
        ph=_ph(),
    )


def _still_waiting(one: Comparison) -> str:
    parts = [_waiting_count(one)]
    for arm, median in zip((one.first, one.second), one.medians, strict=True):
        if median is not None:
            parts.append(
                _t("Half of {arm} had by day {day}.").format(
                    arm=arm.name, day=number_text(median, 1)
                )
            )
    if one.finding is Finding.SHOWN:
        parts.append(_t("The waits differ, also when jars not there yet are counted as watched."))
        parts.append(_shown_chance(one))
    elif one.finding is Finding.HINT:
        parts.append(_t("That points to a difference, but does not settle it."))
        parts.append(_why_not(one))
    else:
        parts.append(_t("So far these jars do not tell them apart."))
    return " ".join(parts)


def headline(view: TrialView, show: Show = plain) -> str:
    """Say the trial's result in a sentence or two, as it stands."""
    if view.is_hidden:
        return _t(
            "The codes are closed. Which jar is which, and how the levels compare, is shown when "
            "they are opened."
        )
    if not view.counted:
        return _t("No jar counts yet.")
    shown = [one for one in view.comparisons if one.finding is Finding.SHOWN]
    if shown:
        return " ".join(comparison_words(one, view.trial.factor, show) for one in shown)
    if not any(one.finding is not Finding.NOT_READ for one in view.comparisons):
        return _t("Nothing can be compared yet: it needs readings of jars of each level.")
    if max(view.arm_counts, default=0) <= 1:
        return _t(
            "One jar each: the curves can be laid side by side, but nobody can say whether it was "
            "{factor} or the jar."
        ).format(factor=factor_in_sentence(view.trial.factor))
    hints = [one for one in view.comparisons if one.finding is Finding.HINT]
    if hints:
        return " ".join(
            filter(None, (comparison_words(hints[0], view.trial.factor, show), _also(hints)))
        )
    return _t(
        "Nothing is settled: these jars do not tell the levels apart. That is no proof that "
        "there is no difference; it may be smaller than so few jars can show."
    )


def _also(hints: Sequence[Comparison]) -> str:
    """Name what else stands out without being settled."""
    if len(hints) < 2:
        return ""
    is_of_one = len({one.second.id for one in hints}) == 1
    template = "{outcome}" if is_of_one else _t("{outcome} ({second})")
    others = ", ".join(
        template.format(outcome=_outcome_in_sentence(one.outcome), second=one.second.name)
        for one in hints[1:]
    )
    return _t("Not settled either, though it stands out: {others}.").format(others=others)


def scope_words() -> str:
    """Say for what a result holds at all."""
    return _t(
        "It holds for these jars, this culture and this recipe. Intervals are of 95 %, and take "
        "jars of one kind to scatter evenly around their mean."
    )


def many_words(view: TrialView) -> str:
    """Say that several things were looked at; nothing if it was one."""
    count = max((one.looked_at for one in view.comparisons), default=1)
    if count < 2:
        return ""
    return _t(
        "{count} comparisons were made. Each is judged more strictly for it (Holm 1979); the "
        "intervals are drawn for each alone."
    ).format(count=count)


# --- jars -----------------------------------------------------------------------------


def crossing_words(jar: TrialJarView) -> str:
    """Say when a jar passed the threshold, and by what that is known."""
    crossing = jar.measures.crossing
    if crossing.how is Passed.UNREAD:
        return _t("no pH yet")
    if crossing.how is Passed.BEFORE:
        return _t("before day {day}").format(day=number_text(crossing.high or 0.0, 1))
    if crossing.how is Passed.NOT_YET:
        told = _t("not by day {day}").format(day=number_text(crossing.low or 0.0, 1))
        expected = jar.measures.expected
        if expected is None:
            return told
        return _t("{told}; by the forecast about day {day} ({low} to {high})").format(
            told=told,
            day=number_text(expected.value, 1),
            low=number_text(expected.low, 1),
            high=number_text(expected.high, 1),
        )
    bounds = likely_bounds(crossing)
    assert bounds is not None
    assert crossing.day is not None
    words = _t("day {day} ({low} to {high})").format(
        day=number_text(crossing.day, 1),
        low=number_text(bounds[0], 1),
        high=number_text(bounds[1], 1),
    )
    if jar.measures.starts_reckoned:
        return _t("{words}, from the reckoned start").format(words=words)
    return words


def discarded_words(jar: TrialJarView) -> str:
    """Say of a jar that was thrown away that it still counts."""
    assert jar.batch is not None
    return _t(
        "{code} was discarded ({reason}). What was read of it still counts: leave it out, with the "
        "reason, if it went wrong."
    ).format(code=jar.jar.code, reason=jar.batch.end_reason or _t("no reason given"))


def marks_words(marks: Sequence[TasteMark]) -> str:
    """Count tasters' verdicts: "2 right, 1 too sour"."""
    return ", ".join(
        _t("{count} {mark}").format(count=marks.count(mark), mark=inside(name_of(mark)))
        for mark in TasteMark
        if mark in marks
    )


def difference_words(difference: Difference, show: Show, zone: tzinfo) -> str:
    """Name something beside the factor in which the jars differ, and in which jars."""
    parts = "; ".join(
        _t("{value}: {codes}").format(
            value=_value_words(difference.code, value, show, zone), codes=", ".join(codes)
        )
        for value, codes in difference.groups
    )
    return _t("{what} – {parts}").format(what=_facet_name(difference.code), parts=parts)


def differences_lead(view: TrialView) -> str:
    """Say what it means that jars differ in more than the factor."""
    if not view.differences:
        return _t("The jars differ in nothing else that is entered.")
    factor = factor_in_sentence(view.trial.factor)
    if any(one.goes_with_arms for one in view.differences):
        return _t(
            "Beside {factor}, the levels differ in something else as a whole. What that does "
            "cannot be told from what {factor} does:"
        ).format(factor=factor)
    return _t("The jars differ in more than {factor}:").format(factor=factor)


def _facet_name(code: str) -> str:
    return {
        "place_temperature_c": _t("Temperature of the place"),
        "place": _t("Place"),
        "starter_share": _t("Share of starter"),
        "starter_ph": _t("pH of the starter"),
        "culture": _t("Culture"),
        "tea_kind": _t("Tea"),
        "tea_g_per_l": _t("Strength of the tea"),
        "sugar_g_per_l": _t("Sugar"),
        "fill_volume_l": _t("Filled to"),
        "inner_diameter_cm": _t("Width of the vessel"),
        "shape": _t("Shape of the vessel"),
        "material": _t("Material of the vessel"),
        "started_at": _t("Begun"),
    }[code]


def _value_words(code: str, value: object, show: Show, zone: tzinfo) -> str:
    if isinstance(value, Enum):
        return name_of(value)
    if isinstance(value, datetime):
        return stamp_words(value, zone)
    if isinstance(value, float):
        if code == "starter_share":
            return percent_words(value)
        kind = {
            "place_temperature_c": Kind.TEMPERATURE,
            "starter_ph": Kind.PH,
            "tea_g_per_l": Kind.TEA,
            "sugar_g_per_l": Kind.SUGAR,
            "fill_volume_l": Kind.VOLUME,
            "inner_diameter_cm": Kind.LENGTH,
        }[code]
        return show(value, kind)
    return str(value) or _t("none, starter liquid only")


def percent_words(share: float) -> str:
    """Write a share as percent."""
    digits = 0 if math.isclose(share * _PERCENT, round(share * _PERCENT), abs_tol=0.05) else 1
    return _t("{number} %").format(number=number_text(share * _PERCENT, digits))


# --- how many jars --------------------------------------------------------------------


def power_words(
    outcome: TrialOutcome, difference: float, scatter: float, jars: int | None, power: float
) -> str:
    """Say how many jars it takes to see a difference."""
    texts = {
        "gap": amount_words(outcome, difference),
        "scatter": amount_words(outcome, scatter),
        "share": number_text(power * _PERCENT, 0),
    }
    if jars is None:
        return _t(
            "More than a thousand jars of each: a difference of {gap} drowns in a scatter of "
            "{scatter}."
        ).format(**texts)
    return _t(
        "{jars} jars of each, {all} in all. Then at least {share} of 100 such trials see a "
        "difference of {gap}, if like jars scatter by {scatter} and if only this is compared."
    ).format(jars=jars, all=2 * jars, **texts)


def power_of_words(outcome: TrialOutcome, jars: int, share: float, smallest: float) -> str:
    """Say what a number of jars can see."""
    return _t(
        "{jars} jars of each see it in {share} of 100 trials. The smallest difference that they "
        "see in 80 of 100 is {smallest}."
    ).format(
        jars=jars,
        share=number_text(share * _PERCENT, 0),
        smallest=amount_words(outcome, smallest),
    )


def few_jars_words() -> str:
    """Say what this program asks for besides."""
    return _t(
        "This program calls a difference shown only from four jars of each on: with fewer, even "
        "the clearest order of the jars comes about by chance too often. With just four it asks "
        "besides that no jar of one kind lies among those of the other."
    )


def scatter_words(outcome: TrialOutcome, scatter: float | None, count: int) -> str:
    """Say from where the scatter offered is known."""
    if scatter is None:
        return _t(
            "How far do like jars lie apart? No trial of yours tells it yet; the figure here is "
            "only a guess. Two or three jars of one kind would show it."
        )
    return _t("Like jars of your trials scattered by {amount} ({count} jars).").format(
        amount=amount_words(outcome, scatter), count=count
    )


# --- why ------------------------------------------------------------------------------


def why_words() -> str:
    """Say on an empty page what a trial is for and why it needs several jars."""
    return _t(
        "Does green tea sour faster than black? Two jars side by side cannot say: two jars of the "
        "same tea differ as well. Start several jars alike but for one thing, draw lots for which "
        "gets what, and taste them by code. The program lays the curves over each other and says "
        "what the jars show, with its doubt, and what they do not."
    )


def blind_words() -> str:
    """Say what blinding by codes can and cannot do."""
    return _t(
        "Whoever brews the jars knows what is in them: let somebody else pour, or taste by the "
        "codes alone. Warnings about a jar are always shown."
    )


def problems() -> dict[tuple[str, str], str]:
    """Say what is wrong with an entry of a trial, by field and reason."""
    return {
        ("arms", "too_few"): _t("A trial compares at least two levels."),
        ("arms", "too_many"): _t("At most {high} levels fit into one trial."),
        ("arms", "same"): _t("Two levels are the same. Give each its own name and level."),
        ("arm_name", "empty"): _t("Give each level a name."),
        ("arm_name", "too_long"): _t("A name of a level has at most {high} letters."),
        ("level", "unknown_level"): _t("Choose or type the level of each."),
        ("level", "out_of_range"): _t("A level must lie between {low} and {high}."),
        ("vessels", "twice"): _t("A vessel can hold one jar of the trial only."),
        ("vessels", "fewer_than_arms"): _t("Choose at least one vessel for each level."),
        ("vessels", "too_many"): _t("At most {high} jars fit into one trial."),
        ("by_hand", "incomplete"): _t("Say for each vessel which level it gets."),
        ("trial_id", "ended"): _t("This trial has ended. Undo brings it back."),
        ("trial_id", "nothing_to_start"): _t("Every jar of this trial has its batch already."),
        ("trial_id", "not_hidden"): _t("The codes of this trial are open already."),
        ("batch_id", "in_a_trial"): _t("This batch is in a trial already."),
        ("batch_id", "not_a_drink"): _t("What grows a culture is no jar of a trial."),
        ("arm_id", "not_of_this"): _t("This level belongs to another trial."),
        ("jar_id", "not_of_this"): _t("This jar belongs to another trial."),
        ("entries", "nothing_said"): _t("Say something of at least one jar."),
        ("", "too_long"): _t("At most {high} letters fit here."),
        ("question", "too_long"): _t("The question has at most {high} letters."),
        ("conclusion", "too_long"): _t("The conclusion has at most {high} letters."),
        ("taster", "too_long"): _t("The taster's name has at most {high} letters."),
    }


def labels() -> dict[str, str]:
    """Name the fields of a trial that have a range."""
    return {
        "liking": _t("The liking"),
        "starter_share": _t("The share of starter, from 0 to 1,"),
        "difference": _t("The difference"),
        "scatter": _t("The scatter"),
        "level": _t("A level"),
    }


def given_up_reason() -> str:
    """Say why a jar counts no more whose plan was given up."""
    return _t("The plan of its batch was given up.")
