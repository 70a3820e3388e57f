"""How many jars a trial takes, for those who ask before they begin."""

from __future__ import annotations

from dataclasses import dataclass

from brewdesk.services.trialview import TrialOutcome
from culturecore import trialpower

USUAL_POWER = 0.8
# Where no trial tells it yet: common practice, no source. How far like jars lie apart.
GUESSED_SCATTER = {
    TrialOutcome.DAYS_TO_PH: 0.8,
    TrialOutcome.ACIDITY: 0.6,
    TrialOutcome.PELLICLE: 1.0,
    TrialOutcome.LIKING: 1.5,
}
GUESSED_DIFFERENCE = {
    TrialOutcome.DAYS_TO_PH: 1.5,
    TrialOutcome.ACIDITY: 1.0,
    TrialOutcome.PELLICLE: 2.0,
    TrialOutcome.LIKING: 2.0,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class PowerAnswer:
    """``jars`` of each level, None if more than a thousand; what the jars at hand can see."""

    jars: int | None
    share_at_hand: float
    smallest_at_hand: float


def power_answer(
    *, difference: float, scatter: float, jars_at_hand: int, power: float = USUAL_POWER
) -> PowerAnswer:
    """Reckon how many jars of each level see a difference, and what ``jars_at_hand`` see.

    Raises
    ------
    ImpossibleInput
        Fields "difference", "scatter", "jars" or "power".
    """
    return PowerAnswer(
        jars=trialpower.jars_needed(difference, scatter, power=power),
        share_at_hand=trialpower.power_of(difference, scatter, jars_at_hand),
        smallest_at_hand=trialpower.difference_seen(scatter, jars_at_hand),
    )
