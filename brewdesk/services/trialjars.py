"""What becomes of a trial's jar when its batch goes."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork


def forget_batch(unit: UnitOfWork, batch_id: int, reason: str) -> None:
    """Let a batch go whose plan is given up; its jar counts no more, for ``reason``."""
    for jar in unit.trial_jars.where(batch_id=batch_id):
        unit.trial_jars.change(jar.id, batch_id=None, left_out_reason=jar.left_out_reason or reason)
