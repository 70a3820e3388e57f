"""The stores of the invented pantry: what was bought, at prices that nobody ever asked."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from PySide6.QtCore import QCoreApplication

from brewdesk.services.clock import Clock
from brewdesk.services.money import digits_of, own_currency
from brewdesk.services.stockdraws import PlanSupplies
from brewdesk.services.stores import Stores
from brewdesk.store.stockrecords import SupplyDraft, SupplyLotDraft
from culturecore.stages import (
    AdditionKind,
    BottleKind,
    DrawReason,
    SupplyKind,
    SupplyMeasure,
    TeaKind,
)

_HUNDRED = 100


def _t(text: str) -> str:
    return QCoreApplication.translate("Demo", text)


@dataclass(frozen=True, slots=True, kw_only=True)
class Purchase:
    """One purchase of the story. ``hundredths`` is its price in hundredths of the currency."""

    key: str
    days_ago: int
    amount: float
    hundredths: int | None
    keeps_days: int | None = None


PURCHASES = (
    Purchase(key="black", days_ago=58, amount=100.0, hundredths=790, keeps_days=500),
    Purchase(key="green", days_ago=58, amount=75.0, hundredths=720, keeps_days=68),
    Purchase(key="oolong", days_ago=40, amount=50.0, hundredths=890, keeps_days=400),
    Purchase(key="sugar", days_ago=58, amount=1000.0, hundredths=149),
    Purchase(key="sugar", days_ago=21, amount=1000.0, hundredths=165),
    Purchase(key="ginger", days_ago=19, amount=180.0, hundredths=210, keeps_days=30),
    Purchase(key="bottles", days_ago=58, amount=12.0, hundredths=2640),
    Purchase(key="test", days_ago=58, amount=3.0, hundredths=150),
    Purchase(key="black", days_ago=12, amount=250.0, hundredths=1850, keeps_days=540),
    Purchase(key="elder", days_ago=12, amount=0.5, hundredths=None, keeps_days=50),
)
SPOILED = ("bottles", 31, 1.0)


class DemoStores:
    """Puts the story's supplies on the shelf and buys them."""

    def __init__(self, stores: Stores, clock: Clock) -> None:
        self._stores = stores
        self._clock = clock
        self.ids: dict[str, int] = {}

    def furnish(self) -> None:
        """Put everything on the list."""
        note = _t("Invented for the example pantry.")
        for key, draft in _supplies(note).items():
            self.ids[key] = self._stores.add(draft).id

    def buy(self, purchase: Purchase) -> None:
        """Write one purchase down, at the clock's instant."""
        now, currency = self._clock.now(), own_currency()
        price = purchase.hundredths
        minor = None if price is None else price * 10 ** digits_of(currency) // _HUNDRED
        keeps = purchase.keeps_days
        self._stores.buy(
            SupplyLotDraft(
                supply_id=self.ids[purchase.key],
                bought_at=now,
                amount=purchase.amount,
                price_minor=minor,
                currency="" if minor is None else currency,
                seller=_t("An invented shop"),
                best_before=None if keeps is None else now + timedelta(days=keeps),
            )
        )

    def spoil(self) -> None:
        """Break a bottle."""
        key, _, amount = SPOILED
        reason = _t("Fell off the draining board. (Invented)")
        self._stores.use(self.ids[key], amount, DrawReason.SPOILED, reason)

    def for_tea(self, tea: TeaKind) -> PlanSupplies | None:
        """Return what a batch of a tea takes; white tea is not in the stores.

        None before anything was bought: older batches cost nobody knows what.
        """
        if not self.ids:
            return None
        keys = {TeaKind.BLACK: "black", TeaKind.GREEN: "green", TeaKind.OOLONG: "oolong"}
        key = keys.get(tea)
        return PlanSupplies(
            tea_id=None if key is None else self.ids[key], sugar_id=self.ids["sugar"]
        )


def _supplies(note: str) -> dict[str, SupplyDraft]:
    grams, pieces = SupplyMeasure.MASS_G, SupplyMeasure.PIECES
    return {
        "black": _tea(_t("Black leaf (invented)"), TeaKind.BLACK, 60.0, note),
        "green": _tea(_t("Green leaf (invented)"), TeaKind.GREEN, 60.0, note),
        "oolong": _tea(_t("Oolong (invented)"), TeaKind.OOLONG, None, note),
        "sugar": SupplyDraft(
            name=_t("White sugar (invented)"),
            kind=SupplyKind.SUGAR,
            measure=grams,
            low_amount=500.0,
            note=note,
        ),
        "ginger": SupplyDraft(
            name=_t("Ginger root (invented)"),
            kind=SupplyKind.FLAVOURING,
            measure=grams,
            addition_kind=AdditionKind.GINGER,
            sugar_share_low=0.01,
            sugar_share_high=0.03,
            note=note,
        ),
        "elder": SupplyDraft(
            name=_t("Elderberry juice (invented)"),
            kind=SupplyKind.FLAVOURING,
            measure=SupplyMeasure.VOLUME_L,
            addition_kind=AdditionKind.JUICE,
            sugar_share_low=0.06,
            sugar_share_high=0.09,
            note=note,
        ),
        "bottles": SupplyDraft(
            name=_t("Swing-top bottles, half a litre (invented)"),
            kind=SupplyKind.BOTTLE,
            measure=pieces,
            bottle_kind=BottleKind.FIZZY_GLASS,
            brim_volume_l=0.52,
            low_amount=4.0,
            note=note,
        ),
        "test": SupplyDraft(
            name=_t("Plastic test bottles (invented)"),
            kind=SupplyKind.BOTTLE,
            measure=pieces,
            bottle_kind=BottleKind.FIZZY_PLASTIC,
            brim_volume_l=0.5,
            note=note,
        ),
    }


def _tea(name: str, kind: TeaKind, low: float | None, note: str) -> SupplyDraft:
    return SupplyDraft(
        name=name,
        kind=SupplyKind.TEA,
        measure=SupplyMeasure.MASS_G,
        tea_kind=kind,
        low_amount=low,
        note=note,
    )
