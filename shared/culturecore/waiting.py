"""Times until something happened, where some are still waited for.

A jar that has not passed its threshold yet is not left out, which would make the slow arm
look fast: it counts for as long as it was watched.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from culturecore.errors import ImpossibleInput
from culturecore.studentt import chi_square_1_tail


@dataclass(frozen=True, slots=True)
class Wait:
    """How long one was watched, and whether it happened at the end of that."""

    days: float
    is_over: bool


@dataclass(frozen=True, slots=True)
class WaitStep:
    """After ``days``, ``still_waiting`` is the share for whom it has not happened."""

    days: float
    still_waiting: float


@dataclass(frozen=True, slots=True)
class LogRank:
    """The log-rank comparison of two arms: chi-square of one degree of freedom, its p."""

    chi_square: float
    p_value: float


def still_waiting(waits: Sequence[Wait]) -> tuple[WaitStep, ...]:
    """Return the steps of the Kaplan-Meier curve.

    Kaplan, E. L. & Meier, P. 1958, J. Amer. Statist. Assoc. 53:457-481. One whose watch ends
    on the day on which it happens to another counts as still watched then.
    """
    _check(waits)
    share, steps = 1.0, []
    for day in sorted({wait.days for wait in waits if wait.is_over}):
        at_risk = sum(wait.days >= day for wait in waits)
        happened = sum(wait.is_over and wait.days == day for wait in waits)
        share *= 1.0 - happened / at_risk
        steps.append(WaitStep(day, share))
    return tuple(steps)


def median_wait(waits: Sequence[Wait]) -> float | None:
    """Return the day by which it has happened to half; None while it has not."""
    steps = still_waiting(waits)
    return next((step.days for step in steps if step.still_waiting <= 0.5 + 1e-12), None)


def log_rank(first: Sequence[Wait], second: Sequence[Wait]) -> LogRank:
    """Compare how long two arms wait.

    Mantel, N. 1966, Cancer Chemother. Rep. 50:163-170, with the hypergeometric variance. The
    chi-square holds for many; with few jars deal the `log_rank_scores` out instead.

    Raises
    ------
    ImpossibleInput
        Field "waits" if nothing happened in either arm.
    """
    everyone = [*first, *second]
    _check(everyone)
    observed = expected = variance = 0.0
    for day in sorted({wait.days for wait in everyone if wait.is_over}):
        here, all_ = (sum(w.days >= day for w in group) for group in (first, everyone))
        mine, happened = (
            sum(w.is_over and w.days == day for w in group) for group in (first, everyone)
        )
        observed += mine
        expected += happened * here / all_
        if all_ > 1:
            share = here / all_
            variance += happened * share * (1.0 - share) * (all_ - happened) / (all_ - 1)
    if variance <= 0.0:
        raise ImpossibleInput("waits", len(everyone), reason="nothing_happened")
    chi_square = (observed - expected) ** 2 / variance
    return LogRank(chi_square, chi_square_1_tail(chi_square))


def log_rank_scores(waits: Sequence[Wait]) -> tuple[float, ...]:
    """Return one number for each wait, whose sums over the arms the log-rank test compares.

    Whether it happened, less the risk run (Nelson 1969, Aalen 1978): dealing these out by lot
    gives a log-rank test without a large sample (Peto & Peto 1972, J. R. Statist. Soc. A
    135:185-207, from memory).
    """
    _check(waits)
    risk: list[tuple[float, float]] = []
    total = 0.0
    for day in sorted({wait.days for wait in waits if wait.is_over}):
        at_risk = sum(wait.days >= day for wait in waits)
        total += sum(wait.is_over and wait.days == day for wait in waits) / at_risk
        risk.append((day, total))
    return tuple(
        float(wait.is_over) - max((run for day, run in risk if day <= wait.days), default=0.0)
        for wait in waits
    )


def _check(waits: Sequence[Wait]) -> None:
    for wait in waits:
        if not wait.days >= 0.0 or math.isinf(wait.days):
            raise ImpossibleInput("days", wait.days, low=0.0)
