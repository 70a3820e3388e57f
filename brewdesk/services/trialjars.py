"""A trial's jars and their batches: which code stands for one, and what if it goes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from brewdesk.services.trialview import is_hidden

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork


def hidden_codes(unit: ReadUnit | UnitOfWork) -> dict[int, str]:
    """Return, by batch, the codes that are all a taster may know of it for now."""
    closed = tuple(trial.id for trial in unit.trials.where(is_blind=True) if is_hidden(trial))
    jars = unit.trial_jars.where(trial_id=closed) if closed else ()
    return {jar.batch_id: jar.code for jar in jars if jar.batch_id is not None}


def forget_batch(unit: UnitOfWork, batch_id: int, reason: str) -> None:
    """Let a batch go whose plan is given up; its jar counts no more, for ``reason``."""
    for jar in unit.trial_jars.where(batch_id=batch_id):
        unit.trial_jars.change(jar.id, batch_id=None, left_out_reason=jar.left_out_reason or reason)
