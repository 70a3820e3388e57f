"""Acts in the stores for the history test: what has to be there before, and the act itself."""

from __future__ import annotations

from dataclasses import replace

from brewdesk.services.acts import ActKind
from brewdesk.services.stores import Stores
from brewdesk.store.stockrecords import SupplyDraft, SupplyLotDraft
from culturecore.stages import BottleKind, DrawReason, SupplyKind, SupplyMeasure, TeaKind
from tests.services.history_bottles import sour


def _tea(kit):
    draft = SupplyDraft(
        name="Invented Assam",
        kind=SupplyKind.TEA,
        measure=SupplyMeasure.MASS_G,
        tea_kind=TeaKind.BLACK,
    )
    return Stores(kit.door).add(draft)


def _bottles(kit):
    draft = SupplyDraft(
        name="Swing-tops",
        kind=SupplyKind.BOTTLE,
        measure=SupplyMeasure.PIECES,
        bottle_kind=BottleKind.FIZZY_GLASS,
        brim_volume_l=0.52,
    )
    return Stores(kit.door).add(draft)


def _buy(kit, supply):
    draft = SupplyLotDraft(
        supply_id=supply.id,
        bought_at=kit.clock.now(),
        amount=100.0,
        price_minor=850,
        currency="EUR",
    )
    return Stores(kit.door).buy(draft)


def _bought(kit):
    supply = _tea(kit)
    return _buy(kit, supply)


def _emptied(kit):
    glass = _bottles(kit)
    _buy(kit, glass)
    batch = sour(kit)
    wish = kit.bottlings.wish_for(batch.id)
    group = replace(wish.groups[0], bottle_count=3, supply_id=glass.id)
    bottling = kit.bottlings.fill(replace(wish, groups=(group,)), "invented")
    return kit.bottlings.finish(bottling.id)


def _retired(kit):
    supply = _tea(kit)
    return Stores(kit.door).retire(supply.id)


ACTS = {
    ActKind.ADD_SUPPLY: (lambda kit: None, lambda kit, _: _tea(kit)),
    ActKind.EDIT_SUPPLY: (_tea, lambda kit, row: Stores(kit.door).edit(row.id, low_amount=50.0)),
    ActKind.RETIRE_SUPPLY: (_tea, lambda kit, row: Stores(kit.door).retire(row.id)),
    ActKind.RESTORE_SUPPLY: (_retired, lambda kit, row: Stores(kit.door).restore(row.id)),
    ActKind.BUY_SUPPLY: (_tea, _buy),
    ActKind.EDIT_LOT: (
        _bought,
        lambda kit, lot: Stores(kit.door).edit_lot(lot.id, price_minor=900),
    ),
    ActKind.REMOVE_LOT: (_bought, lambda kit, lot: Stores(kit.door).remove_lot(lot.id)),
    ActKind.USE_SUPPLY: (
        _bought,
        lambda kit, lot: Stores(kit.door).use(lot.supply_id, 5.0, DrawReason.SPOILED, "damp"),
    ),
    ActKind.COUNT_SUPPLY: (
        _bought,
        lambda kit, lot: Stores(kit.door).count(lot.supply_id, 120.0),
    ),
    ActKind.RETURN_BOTTLES: (
        _emptied,
        lambda kit, bottling: Stores(kit.door).return_bottles(bottling.id),
    ),
}
