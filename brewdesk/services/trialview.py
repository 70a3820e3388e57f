"""What a trial shows: its jars, what was measured of each, and how the arms compare.

Plain values; what is hidden while a trial is blind is not in them.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from brewdesk.store.records import Batch, Vessel
from brewdesk.store.trialrecords import Trial, TrialArm, TrialJar, TrialScore
from culturecore.outcome import Estimate
from culturecore.stages import TasteMark
from culturecore.trialeffects import Effect
from culturecore.trials import Crossing


class TrialOutcome(Enum):
    """What arms are compared by."""

    DAYS_TO_PH = "days_to_ph"
    ACIDITY = "acidity"
    PELLICLE = "pellicle"
    LIKING = "liking"


class Finding(Enum):
    """What may be said of a comparison, from least to most."""

    NOT_READ = "not_read"  # nothing measured in one arm or both
    ONE_EACH = "one_each"  # one jar an arm: the jar cannot be told from the factor
    TOO_FEW = "too_few"  # one arm has a single jar, or the jars agree to the last digit
    NONE_SEEN = "none_seen"  # chance does as much
    HINT = "hint"  # more than chance usually does, but not settled
    SHOWN = "shown"


@dataclass(frozen=True, slots=True)
class TrialPoint:
    """One reading of a jar: day since its start, value, standard uncertainty."""

    day: float
    value: float
    sd: float


@dataclass(frozen=True, slots=True, kw_only=True)
class JarMeasures:
    """What of one jar is compared.

    ``starts_reckoned`` says that the start in the crossing is the plan's, not a reading.
    ``expected`` is the day of the crossing by the forecast, for a jar not there yet: it is
    shown, and counts in no comparison.
    """

    crossing: Crossing
    starts_reckoned: bool = False
    expected: Estimate | None = None
    acidity_g_per_l: float | None = None
    pellicle_mm: float | None = None
    liking: float | None = None  # median of the tastings
    marks: tuple[TasteMark, ...] = ()
    tastings: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialJarView:
    """One jar of a trial. ``arm`` is None while that is hidden."""

    jar: TrialJar
    arm: TrialArm | None
    batch: Batch | None
    vessel: Vessel | None
    points: tuple[TrialPoint, ...]
    measures: JarMeasures
    scores: tuple[TrialScore, ...]

    @property
    def is_counted(self) -> bool:
        """Whether it counts in the results."""
        return not self.jar.left_out_reason


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """Two arms by one outcome. The effect is ``second`` less ``first``.

    ``waiting`` are the jars of first and second that have not passed the threshold yet; then
    there is no effect, and ``medians`` hold what half of each arm's jars needed. ``p_value``
    is of the comparison alone, ``adjusted_p`` allows for all ``looked_at`` comparisons,
    ``dealt_p`` is by dealing the jars out anew, ``least_p`` the least that so few could give.
    """

    outcome: TrialOutcome
    first: TrialArm
    second: TrialArm
    finding: Finding
    first_values: tuple[float, ...] = ()
    second_values: tuple[float, ...] = ()
    effect: Effect | None = None
    p_value: float | None = None
    adjusted_p: float | None = None
    dealt_p: float | None = None
    least_p: float | None = None
    looked_at: int = 1
    is_blocked: bool = False
    waiting: tuple[int, int] = (0, 0)
    medians: tuple[float | None, float | None] = (None, None)
    at_day: float | None = None  # of the readings compared

    @property
    def counts(self) -> tuple[int, int]:
        """How many jars stand behind each side."""
        return (
            len(self.first_values) + self.waiting[0],
            len(self.second_values) + self.waiting[1],
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """Something beside the factor in which the jars differ.

    ``groups`` hold a value and the codes of its jars. ``goes_with_arms`` says that it parts
    the jars as the arms do: its effect then cannot be told from the factor's.
    """

    code: str
    groups: tuple[tuple[object, tuple[str, ...]], ...]
    goes_with_arms: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialView:
    """A trial as it stands. While ``is_hidden``, arms are named nowhere and nothing is compared."""

    trial: Trial
    arms: tuple[TrialArm, ...]
    jars: tuple[TrialJarView, ...]
    comparisons: tuple[Comparison, ...]
    differences: tuple[Difference, ...]
    is_hidden: bool
    threshold_ph: float
    arm_counts: tuple[int, ...] = ()  # counted jars of each arm; empty while hidden

    @property
    def counted(self) -> tuple[TrialJarView, ...]:
        """The jars that count in the results."""
        return tuple(jar for jar in self.jars if jar.is_counted)


def is_hidden(trial: Trial) -> bool:
    """Whether the codes of a trial are still closed."""
    return trial.is_blind and trial.revealed_at is None
