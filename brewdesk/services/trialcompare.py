"""Compare the arms of a trial by what was measured of its jars. Pure figures.

A difference is called shown only if it stands when all things looked at are allowed for,
and if dealing the jars out anew does as much less than once in twenty. Fewer than four jars
an arm can never meet the second, however far apart they are.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass, replace

from brewdesk.services.trialview import Comparison, Finding, JarMeasures, TrialOutcome
from brewdesk.store.trialrecords import TrialArm
from culturecore import trialeffects, waiting
from culturecore.trialeffects import Effect
from culturecore.trials import Passed

CHANCE = 0.05


@dataclass(frozen=True, slots=True, kw_only=True)
class Jar:
    """A counted jar: its arm, the block of like vessels it is in, what was measured."""

    arm_id: int
    block: Hashable
    measures: JarMeasures


def compare_arms(
    arms: Sequence[TrialArm],
    jars: Sequence[Jar],
    *,
    seed: int,
    days: dict[TrialOutcome, float | None],
) -> tuple[Comparison, ...]:
    """Compare each arm with the first one by every outcome that was measured.

    ``days`` are the days of the readings that are compared, where there is one.
    """
    found = []
    for outcome in TrialOutcome:
        for second in arms[1:]:
            pair = [
                [jar for jar in jars if jar.arm_id == arm.id and _is_known(jar, outcome)]
                for arm in (arms[0], second)
            ]
            if not pair[0] and not pair[1]:
                continue
            made = Comparison(
                outcome=outcome,
                first=arms[0],
                second=second,
                finding=Finding.NOT_READ,
                at_day=days.get(outcome),
            )
            found.append(_compared(made, pair[0], pair[1], seed))
    return _judged(found)


def _is_known(jar: Jar, outcome: TrialOutcome) -> bool:
    if outcome is TrialOutcome.DAYS_TO_PH:
        return jar.measures.crossing.how in (Passed.BETWEEN, Passed.NOT_YET)
    return value_of(jar.measures, outcome) is not None


def value_of(measures: JarMeasures, outcome: TrialOutcome) -> float | None:
    """Return what of a jar an outcome compares; None if it was not measured."""
    return {
        TrialOutcome.DAYS_TO_PH: measures.crossing.day,
        TrialOutcome.ACIDITY: measures.acidity_g_per_l,
        TrialOutcome.PELLICLE: measures.pellicle_mm,
        TrialOutcome.LIKING: measures.liking,
    }[outcome]


def _values(jars: Sequence[Jar], outcome: TrialOutcome) -> tuple[float, ...]:
    return tuple(value for jar in jars if (value := value_of(jar.measures, outcome)) is not None)


def _compared(
    made: Comparison, first: Sequence[Jar], second: Sequence[Jar], seed: int
) -> Comparison:
    outcome = made.outcome
    values = _values(first, outcome), _values(second, outcome)
    waits = len(first) - len(values[0]), len(second) - len(values[1])
    made = replace(made, first_values=values[0], second_values=values[1], waiting=waits)
    if not first or not second:
        return made
    made = replace(made, least_p=trialeffects.least_p(len(first), len(second)))
    if any(waits):
        return _waited(made, first, second, seed)
    if len(first) == 1 and len(second) == 1:
        effect = trialeffects.welch_effect(*values)
        return replace(made, finding=Finding.ONE_EACH, effect=effect)
    blocks = [jar.block for jar in first], [jar.block for jar in second]
    is_blocked = _are_blocks(*blocks) and outcome is not TrialOutcome.LIKING
    dealt = trialeffects.permutation_p(*values, *(blocks if is_blocked else ()), seed=seed)
    effect = _effect(outcome, values, blocks if is_blocked else None)
    if not effect.is_bounded or min(len(first), len(second)) == 1:
        return replace(made, finding=Finding.TOO_FEW, effect=effect, dealt_p=dealt)
    p_value = dealt if effect.p_value is None else effect.p_value
    return replace(
        made,
        finding=Finding.NONE_SEEN,
        effect=effect,
        p_value=p_value,
        dealt_p=dealt,
        is_blocked=is_blocked,
    )


def _effect(
    outcome: TrialOutcome,
    values: tuple[tuple[float, ...], tuple[float, ...]],
    blocks: tuple[list[Hashable], list[Hashable]] | None,
) -> Effect:
    if outcome is TrialOutcome.LIKING:
        return trialeffects.shift_effect(*values)
    if blocks is not None:
        return trialeffects.blocked_effect(*values, *blocks)
    return trialeffects.welch_effect(*values)


def _waited(made: Comparison, first: Sequence[Jar], second: Sequence[Jar], seed: int) -> Comparison:
    """Compare arms of which some jars have not passed yet: each counts while it was watched."""
    waits = [[_wait(jar) for jar in side] for side in (first, second)]
    medians = waiting.median_wait(waits[0]), waiting.median_wait(waits[1])
    made = replace(made, medians=medians)
    if len(first) == 1 and len(second) == 1:
        return replace(made, finding=Finding.ONE_EACH)
    if min(len(first), len(second)) == 1 or not any(w.is_over for side in waits for w in side):
        return replace(made, finding=Finding.TOO_FEW)
    scores = waiting.log_rank_scores([*waits[0], *waits[1]])
    dealt = trialeffects.permutation_p(scores[: len(first)], scores[len(first) :], seed=seed)
    return replace(made, finding=Finding.NONE_SEEN, p_value=dealt, dealt_p=dealt)


def _wait(jar: Jar) -> waiting.Wait:
    crossing = jar.measures.crossing
    if crossing.day is not None:
        return waiting.Wait(crossing.day, True)
    return waiting.Wait(crossing.low or 0.0, False)


def _are_blocks(first: Sequence[Hashable], second: Sequence[Hashable]) -> bool:
    """Whether the jars are of several sizes, and each size has both arms."""
    return set(first) == set(second) and len(set(first)) > 1


def _judged(found: Sequence[Comparison]) -> tuple[Comparison, ...]:
    judged = [one for one in found if one.p_value is not None]
    adjusted = trialeffects.holm([one.p_value for one in judged if one.p_value is not None])
    by_pair = {(one.outcome, one.second.id): p for one, p in zip(judged, adjusted, strict=True)}
    return tuple(
        one
        if one.p_value is None
        else _finding(one, by_pair[one.outcome, one.second.id], len(judged))
        for one in found
    )


def _finding(one: Comparison, adjusted_p: float, looked_at: int) -> Comparison:
    assert one.p_value is not None
    assert one.dealt_p is not None
    if adjusted_p < CHANCE and one.dealt_p < CHANCE:
        finding = Finding.SHOWN
    elif min(one.p_value, one.dealt_p) < CHANCE:
        finding = Finding.HINT
    else:
        finding = Finding.NONE_SEEN
    return replace(one, finding=finding, adjusted_p=adjusted_p, looked_at=looked_at)
