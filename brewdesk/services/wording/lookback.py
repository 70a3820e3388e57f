"""A look back in plain sentences: what took how long, and what the numbers cannot carry."""

from __future__ import annotations

import math
from datetime import tzinfo

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.lookbackgroups import (
    AGE_EDGES_DAYS,
    STARTER_EDGES,
    WARMTH_EDGES_C,
    Dot,
    Factor,
    GroupKey,
    Measure,
    Question,
)
from brewdesk.services.lookbackview import Compared, Group, LookBackView, Month
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.stages import name_of
from culturecore.smallsamples import LEAST_COUNT, Interval, Spread
from culturecore.stages import TeaKind
from culturecore.units import Kind

GROUPS_TOLD = 4  # more make a sentence that nobody reads; the picture has them all
WARMER_TOLD_C = 1.0  # a degree is worth about a day in ten; our choice
_HARDLY_ANY = 0.05  # days; rounds to nought
_MONTHS_PER_DAY = 1.0 / 30.44


def _t(text: str) -> str:
    return QCoreApplication.translate("LookBack", text)


def factor_words(factor: Factor) -> str:
    """Name what batches are put side by side by."""
    return {
        Factor.TEA: _t("Tea"),
        Factor.CULTURE: _t("Culture"),
        Factor.PLACE: _t("Place"),
        Factor.WARMTH: _t("Warmth"),
        Factor.MONTH: _t("Month"),
        Factor.STARTER: _t("Starter share"),
        Factor.GENERATION: _t("Generation"),
        Factor.CULTURE_AGE: _t("Age of culture"),
    }[factor]


def measure_words(measure: Measure, question: Question, show: Show) -> str:
    """Name what is waited for: "to pH 3.2", "until drawn off"."""
    if measure is Measure.DRAWN_OFF:
        return _t("until drawn off")
    ph = Question(measure=measure, ripe_ph=question.ripe_ph).ph or 0.0
    return _t("to pH {ph}").format(ph=number_text(ph, 1 if round(ph, 1) == ph else 2))


def days_words(days: float) -> str:
    """Write days as people say them: to half a day where that means something."""
    if math.isinf(days):
        return _t("open")
    rounded = round(days, 1)
    return number_text(rounded, 0 if rounded == round(rounded) else 1)


def count_words(count: int) -> str:
    """Write a number of batches."""
    return _t("1 batch") if count == 1 else _t("{count} batches").format(count=count)


def group_words(key: GroupKey, factor: Factor, show: Show) -> str:
    """Name a group of batches."""
    if factor is Factor.TEA and isinstance(key.value, TeaKind):
        return name_of(key.value)
    if key.name:
        return key.name
    if not isinstance(key.value, int):
        return _t("No culture")
    if factor is Factor.MONTH:
        return QLocale().standaloneMonthName(key.value)
    if factor is Factor.WARMTH:
        return _band(key.value, [show(edge, Kind.TEMPERATURE) for edge in WARMTH_EDGES_C])
    if factor is Factor.STARTER:
        edges = [_t("{share} %").format(share=number_text(100 * edge, 0)) for edge in STARTER_EDGES]
        return _t("Starter {band}").format(band=_band(key.value, edges))
    if factor is Factor.CULTURE_AGE:
        ages = [number_text(days * _MONTHS_PER_DAY, 0) for days in AGE_EDGES_DAYS]
        return _t("Culture {band} months old").format(band=_band(key.value, ages))
    return _t("Founder") if key.value == 0 else _t("Generation {n}").format(n=key.value)


def _band(number: int, edges: list[str]) -> str:
    if number <= 0:
        return _t("under {high}").format(high=edges[0])
    if number >= len(edges):
        return _t("{low} and more").format(low=edges[-1])
    low = edges[number - 1].partition(" ")[0]  # the unit stands behind the upper end
    return _t("{low} to {high}").format(low=low, high=edges[number])


# --- groups -----------------------------------------------------------------------------


def spread_words(spread: Spread) -> str:
    """Say median, range and number: "9.5 days (8 to 12, 6 batches)"."""
    if spread.median is not None:
        middle = _t("{days} days").format(days=days_words(spread.median))
    else:
        middle = _t("more than {days} days").format(days=days_words(spread.longest_seen))
    parts = [count_words(spread.count)]
    if spread.count > 1 and spread.low != spread.high:
        parts.insert(
            0,
            _t("{low} to {high}").format(low=days_words(spread.low), high=days_words(spread.high)),
        )
    if spread.open_count:
        parts.append(_t("{count} more not there").format(count=spread.open_count))
    return f"{middle} ({', '.join(parts)})"


def group_about(group: Group) -> str:
    """Say of a group in a few letters what its median is and how many it rests on."""
    spread = group.spread
    if spread is None:
        return _t("none there, of {count}").format(count=len(group.dots))
    middle = (
        _t("over {days} days").format(days=days_words(spread.longest_seen))
        if spread.median is None
        else _t("{days} days").format(days=days_words(spread.median))
    )
    found = _t("{middle} · {batches}").format(middle=middle, batches=count_words(spread.count))
    return found if spread.is_enough else found + _t(", too few")


def group_line(group: Group, question: Question, show: Show) -> str:
    """Say of one group what its batches took, for those who do not see the picture."""
    name = group_words(group.key, question.factor, show)
    if group.spread is None:
        if group.dots:
            return _t("{name}: none of {batches} is there yet.").format(
                name=name, batches=count_words(len(group.dots))
            )
        return _t("{name}: no batch tells.").format(name=name)
    found = _t("{name}: {spread}.").format(name=name, spread=spread_words(group.spread))
    if not group.spread.is_enough:
        return f"{found} " + _t("Too few to say more.")
    found += " " + likely_words(group.spread.interval)
    if group.guess_days is not None:
        found += " " + guess_words(group.guess_days)
    return found


def likely_words(interval: Interval | None) -> str:
    """Say where the median of many such batches would lie."""
    if interval is None:
        return ""
    percent = number_text(100.0 * interval.coverage, 0)
    if math.isinf(interval.high):
        return _t("The median of many such batches lies above {low} ({percent} % sure).").format(
            low=days_words(interval.low), percent=percent
        )
    return _t(
        "The median of many such batches lies between {low} and {high} days ({percent} % sure)."
    ).format(low=days_words(interval.low), high=days_words(interval.high), percent=percent)


def guess_words(days: float) -> str:
    """Say what to expect of the next batch of a group."""
    return _t("For the next one, {days} days is the better guess.").format(days=days_words(days))


def dot_words(dot: Dot, show: Show, zone: tzinfo) -> str:
    """Say of one batch how long it took, how warm it stood, with which culture."""
    batch = dot.batch
    parts = [batch.name, date_words(batch.started_at, zone)]
    if dot.is_open:
        parts.append(_t("not there after {days} days").format(days=days_words(dot.days)))
    elif dot.earliest is not None and dot.latest is not None and dot.latest - dot.earliest > 0.05:
        parts.append(
            _t("{days} days, read between day {early} and day {late}").format(
                days=days_words(dot.days),
                early=days_words(dot.earliest),
                late=days_words(dot.latest),
            )
        )
    else:
        parts.append(_t("{days} days").format(days=days_words(dot.days)))
    celsius = show(batch.temperature_c, Kind.TEMPERATURE)
    parts.append(
        celsius if batch.is_measured else _t("{celsius} as usual there").format(celsius=celsius)
    )
    parts += [name_of(batch.tea_kind), batch.culture_name]
    return " · ".join(part for part in parts if part)


# --- the sentences ----------------------------------------------------------------------


def sentences(view: LookBackView, show: Show) -> tuple[str, ...]:
    """Tell the whole look back in a few plain sentences, the speed first."""
    found = [_speed(view, show), _compared(view, show), _not_counted(view, show)]
    found += [_counts(view), _tastes(view), _bottles(view), _losses(view), _drunk(view, show)]
    return tuple(sentence for sentence in found if sentence)


def _speed(view: LookBackView, show: Show) -> str:
    question = view.question
    told = [group for group in view.groups if group.spread is not None]
    what = measure_words(question.measure, question, show)
    if not told:
        open_count = len(view.dots)
        if open_count:
            return (
                _t("None of {batches} has come {what} yet.").format(
                    batches=count_words(open_count), what=what
                )
                if question.ph is not None
                else _t("None of {batches} is drawn off yet.").format(
                    batches=count_words(open_count)
                )
            )
        return ""
    # by how many there are, so that the sentence begins with what it knows most of
    told = sorted(told, key=lambda group: (-len(group.dots), group.key.order))[:GROUPS_TOLD]
    first, *others = told
    assert first.spread is not None
    name = group_words(first.key, question.factor, show)
    if len(view.groups) == 1:
        whole = _t("Your batches took {spread} {what}.")
        return whole.format(spread=spread_words(first.spread), what=what)
    parts = [
        _t("{name} took {spread} {what}").format(
            name=name, spread=spread_words(first.spread), what=what
        )
    ]
    parts += [
        _t("{name} {spread}").format(
            name=group_words(group.key, question.factor, show), spread=spread_words(group.spread)
        )
        for group in others
        if group.spread is not None
    ]
    return "; ".join(parts) + "."


def _compared(view: LookBackView, show: Show) -> str:
    told = [group for group in view.groups if group.spread is not None]
    if len(told) < 2:
        if told and not (told[0].spread and told[0].spread.is_enough):
            return _t("That is too few to say what the next one will take.")
        return ""
    if view.compared is None:
        return _t(
            "That is too few to call it a difference: it takes {count} batches of each."
        ).format(count=LEAST_COUNT)
    return compared_words(view.compared, view.question, show)


def compared_words(compared: Compared, question: Question, show: Show) -> str:
    """Say whether two groups differ, by how much, and what else may be behind it."""
    first = group_words(compared.first.key, question.factor, show)
    second = group_words(compared.second.key, question.factor, show)
    interval = compared.difference.interval
    if not compared.difference.is_told:
        if math.isinf(interval.low) or math.isinf(interval.high):
            return _t("Whether {first} and {second} differ cannot be said yet.").format(
                first=first, second=second
            )
        return _t(
            "Between {first} and {second} no difference shows: {first} may be anything from "
            "{fast} days faster to {slow} days slower."
        ).format(
            first=first,
            second=second,
            fast=days_words(max(-interval.low, 0.0)),
            slow=days_words(max(interval.high, 0.0)),
        )
    is_slower = interval.low > 0.0
    slow, fast = (first, second) if is_slower else (second, first)
    ends = (interval.low, interval.high) if is_slower else (-interval.high, -interval.low)
    low = days_words(ends[0]) if ends[0] >= _HARDLY_ANY else _t("hardly any")
    estimate = compared.difference.estimate
    if estimate is None or math.isinf(ends[1]):
        found = _t("{slow} took longer than {fast}, by {low} days at least.").format(
            slow=slow, fast=fast, low=low
        )
    else:
        found = _t("{slow} took longer than {fast}, by about {middle} days ({low} to {high}).")
        found = found.format(
            slow=slow,
            fast=fast,
            middle=days_words(abs(estimate)),
            low=low,
            high=days_words(ends[1]),
        )
    if abs(compared.warmer_c) >= WARMER_TOLD_C and question.factor is not Factor.WARMTH:
        warm, cool = (first, second) if compared.warmer_c > 0 else (second, first)
        found += " " + _t(
            "Part of it may be warmth: {cool} stood {degrees} cooler than {warm}."
        ).format(cool=cool, warm=warm, degrees=_degrees(abs(compared.warmer_c), show))
    return found


def _degrees(celsius: float, show: Show) -> str:
    """Write a difference of temperatures in the unit that temperatures are shown in."""
    unit = show(20.0, Kind.TEMPERATURE).rpartition(" ")[2]
    factor = 1.8 if "F" in unit else 1.0
    return f"{number_text(celsius * factor, 1)} {unit}"


def _not_counted(view: LookBackView, show: Show) -> str:
    """Say which batches have no say."""
    parts = []
    if view.from_start:
        parts.append(_t("{count} perhaps that sour from the start").format(count=view.from_start))
    if view.unread:
        has_ph = view.question.ph is not None
        words = _t("{count} without readings that tell") if has_ph else _t("{count} not drawn off")
        parts.append(words.format(count=view.unread))
    if not parts:
        return ""
    return _t("Not counted: {parts}.").format(parts=", ".join(parts))


def _counts(view: LookBackView) -> str:
    if not view.batch_count:
        return ""
    parts = []
    if view.drawn_off:
        parts.append(_t("{count} drawn off").format(count=view.drawn_off))
    if view.souring:
        parts.append(_t("{count} still souring").format(count=view.souring))
    if view.discarded:
        parts.append(_t("{count} thrown away").format(count=view.discarded))
    return _t("{batches} in all: {parts}.").format(
        batches=count_words(view.batch_count), parts=", ".join(parts)
    )


def _tastes(view: LookBackView) -> str:
    tastes = view.tastes
    if not tastes.count:
        return ""
    found = _t("Of {count} tastings {right} were just right, {under} too sweet, {over} too sour")
    found = found.format(
        count=tastes.count, right=tastes.right, under=tastes.under, over=tastes.over
    )
    return f"{found}{_share_words(tastes.count, tastes.right_share)}."


def _bottles(view: LookBackView) -> str:
    fizz = view.fizz
    if not fizz.count:
        return _vented(view).strip()
    found = _t("Of {count} bottles opened {right} were right, {under} too flat, {over} gushed")
    found = found.format(count=fizz.count, right=fizz.right, under=fizz.under, over=fizz.over)
    return f"{found}{_share_words(fizz.count, fizz.right_share)}.{_vented(view)}"


def _vented(view: LookBackView) -> str:
    if not view.vented:
        return ""
    if view.vented == 1:
        return " " + _t("Bottles were vented once.")
    return " " + _t("Bottles were vented {count} times.").format(count=view.vented)


def _share_words(count: int, interval: Interval | None) -> str:
    if interval is None or count < LEAST_COUNT:
        return _t("; too few to say how it is as a rule")
    return _t(" (right: {low} to {high} % as a rule)").format(
        low=number_text(100.0 * interval.low, 0), high=number_text(100.0 * interval.high, 0)
    )


def _losses(view: LookBackView) -> str:
    if not view.losses:
        return ""
    if len(view.losses) == 1:
        return _t("1 loss is written down, with its reason below.")
    return _t("{count} losses are written down, with their reasons below.").format(
        count=len(view.losses)
    )


def _drunk(view: LookBackView, show: Show) -> str:
    if view.drunk_l <= 0.0:
        return ""
    return _t("{volume} were drunk or given away.").format(volume=show(view.drunk_l, Kind.VOLUME))


def month_words(month: Month, show: Show) -> str:
    """Say of one month how many batches began, how warm they stood, how long they took."""
    name = f"{QLocale().standaloneMonthName(month.month)} {month.year}"
    parts = [_t("{batches} begun").format(batches=count_words(month.begun))]
    if month.temperature_c is not None:
        parts.append(show(month.temperature_c, Kind.TEMPERATURE))
    if month.spread is not None:
        parts.append(spread_words(month.spread))
    if month.drunk_l > 0.0:
        parts.append(_t("{volume} drunk").format(volume=show(month.drunk_l, Kind.VOLUME)))
    return _t("{month}: {parts}").format(month=name, parts=", ".join(parts))
