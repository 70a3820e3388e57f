"""A look back worked out: groups with their dots, months, verdicts, losses. Plain values.

Groups are never put into an order of merit, and two of them are compared only if both have
enough batches; the comparison is one, of the two largest, so that it is not the most
striking of many.
"""

from __future__ import annotations

import statistics
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from brewdesk.services.lookbackfacts import Drunk, Past, PastBatch, PastBottling
from brewdesk.services.lookbackgroups import (
    DONE,
    Dot,
    GroupKey,
    LookBackSieve,
    Question,
    dot_of,
    in_time,
    key_of,
    lets_through,
)
from brewdesk.services.lookbacklosses import Loss, losses_of
from culturecore.crossing import Reach
from culturecore.smallsamples import (
    Difference,
    Interval,
    Shrunk,
    Spread,
    difference_of,
    share_interval,
    shrink,
    spread_of,
)
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    Opened,
    TasteMark,
)

MONTHS_SHOWN = 12
_TOO_SWEET = (TasteMark.FAR_TOO_SWEET, TasteMark.TOO_SWEET)


@dataclass(frozen=True, slots=True, kw_only=True)
class Tally:
    """How often it was too little, right and too much; the interval is for "right"."""

    under: int = 0
    right: int = 0
    over: int = 0

    @property
    def count(self) -> int:
        """How often in all."""
        return self.under + self.right + self.over

    @property
    def right_share(self) -> Interval | None:
        """Return the interval for the share that was right; None without any."""
        return share_interval(self.right, self.count) if self.count else None

    def plus(self, other: Tally) -> Tally:
        """Return both together."""
        return Tally(
            under=self.under + other.under,
            right=self.right + other.right,
            over=self.over + other.over,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Group:
    """Batches with something in common.

    ``guess_days`` is the group's mean drawn towards that of all, for the next batch of its
    kind. ``temperature_c`` is the middle of its batches' means. ``tastes`` counts tastings,
    ``fizz`` bottles that were opened.
    """

    key: GroupKey
    dots: tuple[Dot, ...]
    spread: Spread | None
    guess_days: float | None
    temperature_c: float | None
    tastes: Tally
    fizz: Tally


@dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """The two largest groups side by side. ``warmer_c`` is how much warmer the first stood."""

    first: Group
    second: Group
    difference: Difference
    warmer_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Month:
    """One calendar month: batches that began in it, litres drunk in it."""

    year: int
    month: int
    begun: int = 0
    temperature_c: float | None = None
    spread: Spread | None = None
    drunk_l: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class LookBackView:
    """What the pantry has learned, as far as it was asked."""

    question: Question
    now: datetime
    has_any: bool  # whether any batch has ever soured, whatever the sieve
    batch_count: int
    drawn_off: int
    souring: int
    discarded: int
    groups: tuple[Group, ...]
    spread: Spread | None
    shrunk: Shrunk | None
    compared: Compared | None
    unread: int
    from_start: int
    tastes: Tally
    fizz: Tally
    vented: int
    months: tuple[Month, ...]
    losses: tuple[Loss, ...]
    drunk_l: float

    @property
    def dots(self) -> tuple[Dot, ...]:
        """Every batch that is shown, group by group."""
        return tuple(dot for group in self.groups for dot in group.dots)


def view_of(past: Past, question: Question) -> LookBackView:
    """Work out a look back."""
    chosen = [
        batch
        for batch in past.batches
        if batch.purpose is BatchPurpose.DRINK and lets_through(question.sieve, batch, past)
    ]
    ids = {batch.batch_id for batch in chosen}
    # Growing a culture is not brewing; what became of it is a loss like any other.
    any_purpose = {
        batch.batch_id for batch in past.batches if lets_through(question.sieve, batch, past)
    }
    bottlings = [one for one in past.bottlings if one.batch_id in ids]
    drunk = _drunk(past, question.sieve)
    dots: dict[int, Dot] = {}
    reasons: list[Reach] = []
    for batch in chosen:
        found = dot_of(batch, question, past)
        if isinstance(found, Dot):
            dots[batch.batch_id] = found
        else:
            reasons.append(found)
    groups, shrunk = _groups(chosen, dots, bottlings, question, past)
    all_fizz = [_fizz(one) for one in bottlings]
    return LookBackView(
        question=question,
        now=past.now,
        has_any=bool(past.batches),
        batch_count=len(chosen),
        drawn_off=sum(one.stage in DONE for one in chosen),
        souring=sum(one.stage is BatchStage.SOURING for one in chosen),
        discarded=sum(one.stage is BatchStage.DISCARDED for one in chosen),
        groups=groups,
        spread=_spread(tuple(dots.values())),
        shrunk=shrunk,
        compared=_compared(groups),
        unread=sum(one is Reach.UNREAD for one in reasons),
        from_start=sum(one is Reach.FROM_START for one in reasons),
        tastes=_sum([_tastes(batch) for batch in chosen]),
        fizz=_sum(all_fizz),
        vented=sum(one.vented for one in bottlings),
        months=_months(chosen, dots, drunk, past),
        losses=losses_of(past, question.sieve, any_purpose),
        drunk_l=sum(one.volume_l for one in drunk),
    )


def _groups(
    batches: Sequence[PastBatch],
    dots: dict[int, Dot],
    bottlings: Sequence[PastBottling],
    question: Question,
    past: Past,
) -> tuple[tuple[Group, ...], Shrunk | None]:
    members: dict[GroupKey, list[PastBatch]] = {}
    for batch in batches:
        members.setdefault(key_of(batch, question.factor, past), []).append(batch)
    by_batch: dict[int, list[PastBottling]] = {}
    for bottling in bottlings:
        by_batch.setdefault(bottling.batch_id, []).append(bottling)
    groups = []
    for key in sorted(members, key=lambda key: key.order):
        own = members[key]
        shown = tuple(dots[one.batch_id] for one in own if one.batch_id in dots)
        groups.append(
            Group(
                key=key,
                dots=shown,
                spread=_spread(shown),
                guess_days=None,
                temperature_c=_middle([one.temperature_c for one in own]),
                tastes=_sum([_tastes(one) for one in own]),
                fizz=_sum([_fizz(row) for one in own for row in by_batch.get(one.batch_id, ())]),
            )
        )
    return _with_guesses(groups)


def _with_guesses(groups: Sequence[Group]) -> tuple[tuple[Group, ...], Shrunk | None]:
    """Add what to expect of the next batch, from batches that were drawn off.

    A group with one that was drawn off before it was there has no mean to go by.
    """
    over = [_over(group.dots) for group in groups]
    reached = [[dot.days for dot in dots] for dots in over]
    counted = [n for n, dots in enumerate(over) if dots and not any(dot.is_open for dot in dots)]
    shrunk = shrink([reached[n] for n in counted])
    if shrunk is None:
        return tuple(groups), None
    guesses = dict(zip(counted, shrunk.means, strict=True))
    return (
        tuple(replace(group, guess_days=guesses.get(n)) for n, group in enumerate(groups)),
        shrunk,
    )


def _compared(groups: Sequence[Group]) -> Compared | None:
    """Compare the two groups that have the most batches, if they have enough."""
    ready = sorted(
        (group for group in groups if group.spread is not None and group.spread.is_enough),
        key=lambda group: (-len(group.dots), group.key.order),
    )[:2]
    if len(ready) < 2:
        return None
    first, second = sorted(ready, key=lambda group: group.key.order)
    # Only what went its way: among running ones those that are there are the quick ones.
    found = difference_of(_durations(_over(first.dots)), _durations(_over(second.dots)))
    if found is None:
        return None
    warmer_c = (first.temperature_c or 0.0) - (second.temperature_c or 0.0)
    return Compared(first=first, second=second, difference=found, warmer_c=warmer_c)


def _over(dots: Sequence[Dot]) -> list[Dot]:
    """Return those that went their whole way: not still at it, not thrown away."""
    return [dot for dot in dots if dot.batch.stage in DONE]


def _durations(dots: Sequence[Dot]) -> tuple[list[float], list[float]]:
    reached = [dot.days for dot in dots if not dot.is_open]
    return reached, [dot.days for dot in dots if dot.is_open]


def _spread(dots: Sequence[Dot]) -> Spread | None:
    return spread_of(*_durations(dots))


def _tastes(batch: PastBatch) -> Tally:
    marks = [mark for _, mark in batch.tastes]
    right = sum(mark is TasteMark.RIGHT for mark in marks)
    under = sum(mark in _TOO_SWEET for mark in marks)
    return Tally(under=under, right=right, over=len(marks) - right - under)


def _fizz(bottling: PastBottling) -> Tally:
    counts = dict.fromkeys(Opened, 0)
    for _, how, number in bottling.opened:
        counts[how] += number
    return Tally(
        under=counts[Opened.TOO_FLAT], right=counts[Opened.RIGHT], over=counts[Opened.GUSHER]
    )


def _sum(tallies: Sequence[Tally]) -> Tally:
    total = Tally()
    for one in tallies:
        total = total.plus(one)
    return total


def _middle(values: Sequence[float]) -> float | None:
    return statistics.median(values) if values else None


def _drunk(past: Past, sieve: LookBackSieve) -> list[Drunk]:
    """Return what was drunk in the time looked at, whenever its batch began."""
    ever = replace(sieve, since=None, until=None)
    ids = {batch.batch_id for batch in past.batches if lets_through(ever, batch, past)}
    return [
        one
        for one in past.drunk
        if one.batch_id in ids and in_time(sieve, one.at.astimezone(past.zone).date())
    ]


def _months(
    batches: Sequence[PastBatch],
    dots: dict[int, Dot],
    drunk: Sequence[Drunk],
    past: Past,
) -> tuple[Month, ...]:
    """Return the last months in order, ending with the newest in which anything was."""
    begun: dict[tuple[int, int], list[PastBatch]] = {}
    for batch in batches:
        begun.setdefault(_month_of(batch.started_at, past), []).append(batch)
    litres: dict[tuple[int, int], float] = {}
    for one in drunk:
        its_month = _month_of(one.at, past)
        litres[its_month] = litres.get(its_month, 0.0) + one.volume_l
    filled = begun.keys() | litres.keys()
    if not filled:
        return ()
    year, month = max(filled)
    oldest = min(filled)
    months = min(MONTHS_SHOWN, (year - oldest[0]) * 12 + month - oldest[1] + 1)
    found = []
    for back in range(months - 1, -1, -1):
        number = year * 12 + month - 1 - back
        key = (number // 12, number % 12 + 1)
        own = begun.get(key, [])
        found.append(
            Month(
                year=key[0],
                month=key[1],
                begun=len(own),
                temperature_c=statistics.fmean(one.temperature_c for one in own) if own else None,
                spread=_spread([dots[one.batch_id] for one in own if one.batch_id in dots]),
                drunk_l=litres.get(key, 0.0),
            )
        )
    return tuple(found)


def _month_of(instant: datetime, past: Past) -> tuple[int, int]:
    local = instant.astimezone(past.zone)
    return local.year, local.month
