"""How much liquid is in a jar: what it was filled with, what came in, what went out.

Nothing is kept twice: the volume now is always the sum of the transfers there are, so an
undone transfer is undone in the volume too.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from brewdesk.store.records import Batch, Transfer
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, TransferKind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

# Sums of litres carry no more digits than this.
ROUNDING_L = 1e-9
# Twenty drops to the millilitre (from memory). Less than a drop is nothing that can be poured.
DROP_L = 5e-5
# Starter lent to a plan is part of what the jar is filled with; these come on top of it.
_ON_TOP = (TransferKind.TOP_UP, TransferKind.MERGE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Balance:
    """A batch's liquid [L]: ``now_l`` = ``filled_l`` + ``in_l`` - ``out_l``.

    ``filled_l`` is 0 until the starter is in. What was left when a batch ended counts as
    gone out with it.
    """

    filled_l: float
    in_l: float
    out_l: float
    now_l: float


def transfers_of(unit: ReadUnit | UnitOfWork, batch_id: int) -> tuple[Transfer, ...]:
    """Return what went into a batch and out of it, in the order of time."""
    rows = (
        *unit.transfers.where(from_batch_id=batch_id),
        *unit.transfers.where(to_batch_id=batch_id),
    )
    return tuple(sorted(rows, key=lambda row: (row.at, row.id)))


def balance_of(batch: Batch, transfers: Iterable[Transfer]) -> Balance:
    """Add up a batch's liquid from its transfers, which may be mixed with those of others."""
    filled_l = 0.0 if batch.started_at is None else batch.fill_volume_l
    in_l = out_l = 0.0
    for transfer in transfers:
        if transfer.from_batch_id == batch.id:
            out_l += transfer.volume_l
        elif transfer.to_batch_id == batch.id and transfer.kind in _ON_TOP:
            in_l += transfer.volume_l
    if not batch.stage.is_live:
        return Balance(filled_l=filled_l, in_l=in_l, out_l=filled_l + in_l, now_l=0.0)
    now_l = filled_l + in_l - out_l
    return Balance(
        filled_l=filled_l, in_l=in_l, out_l=out_l, now_l=0.0 if now_l < ROUNDING_L else now_l
    )


def balance_in(unit: ReadUnit | UnitOfWork, batch: Batch) -> Balance:
    """Add up a batch's liquid as the store has it."""
    return balance_of(batch, transfers_of(unit, batch.id))


def check_volume(field: str, volume_l: float, most_l: float, *, reason: str = "not_there") -> float:
    """Return a volume that is at least a drop and at most ``most_l``.

    A volume over by no more than the rounding of sums is taken for ``most_l`` itself.

    Raises
    ------
    ImpossibleInput
        Field ``field``: less than a drop, or ``reason`` for more than there is (room for).
    """
    if not DROP_L <= volume_l < float("inf"):
        raise ImpossibleInput(field, volume_l, low=DROP_L, unit="L", reason="less_than_a_drop")
    if volume_l > most_l + ROUNDING_L:
        raise ImpossibleInput(field, volume_l, low=0.0, high=most_l, unit="L", reason=reason)
    return min(volume_l, most_l)


def check_part(field: str, volume_l: float, now_l: float) -> float:
    """Return a volume that leaves at least a drop behind.

    Raises
    ------
    ImpossibleInput
        As `check_volume`, and reason "all_of_it".
    """
    checked_l = check_volume(field, volume_l, now_l)
    if now_l - checked_l < DROP_L:
        raise ImpossibleInput(field, volume_l, low=0.0, high=now_l, unit="L", reason="all_of_it")
    return checked_l


def is_souring(batch: Batch) -> bool:
    """Whether a batch's liquid is there to be drawn, poured and lent."""
    return batch.stage is BatchStage.SOURING
