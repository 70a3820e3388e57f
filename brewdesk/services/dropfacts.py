"""What is carried, where to, and the shelf as far as carrying is concerned: plain values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum

from brewdesk.store.records import Batch, Culture, Vessel
from culturecore.outcome import Verdict
from culturecore.stages import StepKind


class CarriedKind(Enum):
    """What can be carried."""

    CULTURE = "culture"
    BATCH = "batch"


class Tray(Enum):
    """Places beside the shelf that take what is carried."""

    RESTING = "resting"
    BOTTLES = "bottles"


@dataclass(frozen=True, slots=True)
class Carried:
    """A culture or a batch that is being carried."""

    kind: CarriedKind
    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Target:
    """Where it would be put down: a vessel or a tray."""

    vessel_id: int | None = None
    tray: Tray | None = None


class ChoiceKind(Enum):
    """What putting down may mean."""

    MOVE_CULTURE = "move_culture"
    USE_IN_PLAN = "use_in_plan"
    PUT_IN = "put_in"
    SPLIT_CULTURE = "split_culture"
    REST = "rest"
    LEND = "lend"
    POUR_OVER = "pour_over"
    MERGE_ALL = "merge_all"
    MERGE_PART = "merge_part"
    KEEP = "keep"
    FILL_BOTTLES = "fill_bottles"
    DRAW_PART = "draw_part"
    DRAW_OFF = "draw_off"


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One thing that can be done at the drop.

    ``most_l`` is how much there is (room for), ``usual_l`` the amount to begin with; both
    None where no amount is asked for. ``store_ids`` are the cultures that starter can be
    kept with.
    """

    kind: ChoiceKind
    carried: Carried
    target: Target
    from_batch_id: int | None = None
    from_culture_id: int | None = None
    to_batch_id: int | None = None
    step_id: int | None = None
    most_l: float | None = None
    usual_l: float | None = None
    store_ids: tuple[int, ...] = ()
    vessel_ids: tuple[int, ...] = ()
    may_join_cultures: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Drop:
    """What can be done with something carried at a target, or why nothing can.

    ``names`` are for the sentences: what is carried, the target, and what is in the way.
    """

    choices: tuple[Choice, ...] = ()
    refusal: Verdict | None = None
    names: Mapping[str, str] = field(default_factory=dict)

    @property
    def is_allowed(self) -> bool:
        """Whether there is anything that can be done."""
        return bool(self.choices)


@dataclass(frozen=True, slots=True, kw_only=True)
class JarFacts:
    """One vessel on the shelf: what is in it, and whether what is in it is cool enough.

    ``heat`` is the verdict that keeps live things out of a batch on its run sheet, None once
    it is cool. ``open_step`` is (id, kind) of the first step for something live.
    """

    vessel: Vessel
    batch: Batch | None = None
    now_l: float = 0.0
    heat: Verdict | None = None
    open_step: tuple[int, StepKind] | None = None
    resting: tuple[Culture, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class ShelfFacts:
    """The shelf as far as carrying is concerned. ``starter_l`` is what the next plan wants."""

    jars: Mapping[int, JarFacts]
    cultures: Mapping[int, Culture]
    batch_jars: Mapping[int, int]  # live batch -> its vessel
    resting_l: Mapping[int, float] = field(default_factory=dict)  # culture -> its liquid now
    starter_l: float | None = None

    def jar_of_batch(self, batch_id: int) -> JarFacts | None:
        """Return the jar in which a live batch is."""
        vessel_id = self.batch_jars.get(batch_id)
        return None if vessel_id is None else self.jars.get(vessel_id)
