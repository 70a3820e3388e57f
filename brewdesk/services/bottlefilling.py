"""Filling bottles within a unit of work: drink out, starter kept, bottles and additions noted."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services import lending
from brewdesk.services.bottledraws import draw_for_bottling
from brewdesk.services.bottlingwish import BottlingWish
from brewdesk.services.ending import end_batch
from brewdesk.services.ledger import DROP_L, balance_in
from brewdesk.services.names import tidy_name
from brewdesk.store.records import (
    AdditionDraft,
    Batch,
    BottleGroupDraft,
    Bottling,
    BottlingDraft,
    TransferDraft,
)
from culturecore.stages import BatchStage, TransferKind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork


def fill_bottles(
    unit: UnitOfWork, batch: Batch, wish: BottlingWish, draft: BottlingDraft, now: datetime
) -> Bottling:
    """Write a bottling down, and end its batch if nothing is left or it is to be over."""
    transfer = unit.transfers.add(
        TransferDraft(
            at=draft.filled_at,
            kind=TransferKind.DRINK,
            volume_l=draft.drink_volume_l,
            from_batch_id=batch.id,
            override_reason=draft.override_reason,
        )
    )
    bottling = unit.bottlings.add(replace(draft, transfer_id=transfer.id))
    for position, group in enumerate(wish.groups):
        unit.bottle_groups.add(
            BottleGroupDraft(
                bottling_id=bottling.id,
                position=position,
                bottle_count=group.bottle_count,
                kind=group.kind,
                brim_volume_l=group.brim_volume_l,
                headspace_share=group.headspace_share,
                rated_bar=group.rated_bar,
                is_test=group.is_test,
                name=group.name,
            )
        )
    for position, addition in enumerate(wish.additions):
        unit.additions.add(
            AdditionDraft(
                bottling_id=bottling.id,
                position=position,
                kind=addition.kind,
                name=tidy_name(addition.name),
                mass_g=addition.mass_g,
                sugar_share_low=addition.sugar_share_low,
                sugar_share_high=addition.sugar_share_high,
                source=addition.source,
            )
        )
    draw_for_bottling(unit, wish, bottling)
    kept_in_jar_l = wish.starter_kept_l
    if wish.starter_kept_l > 0.0 and wish.starter_culture_id is not None:
        culture = unit.cultures.get(wish.starter_culture_id)
        lending.keep_with(unit, batch, culture, wish.starter_kept_l, now)
        kept_in_jar_l = 0.0
    left_l = balance_in(unit, batch).now_l
    if wish.closes_batch or left_l < DROP_L:
        end_batch(
            unit,
            batch,
            BatchStage.DRAWN_OFF,
            now=now,
            reason="",
            kept_l=min(kept_in_jar_l, left_l),
        )
    return bottling
