"""Fresh sweet tea into a souring jar: what it takes, and what it makes of pH and sugar."""

from __future__ import annotations

from dataclasses import dataclass

from brewdesk.services.ledger import ROUNDING_L, check_volume
from brewdesk.store.records import Batch, Vessel
from culturecore import safety
from culturecore.blending import FreshTea, Liquid, topped_up
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.stages import TeaKind
from culturecore.sweettea import WISH_RANGES

# Topped up by more than what is there, a jar is as good as brewed anew; an assumption.
MOST_SHARE = 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class FreshWish:
    """The sweet tea that the maker means to pour in, per litre of it at 20 degC."""

    volume_l: float
    sugar_g_per_l: float
    tea_kind: TeaKind
    tea_g_per_l: float

    @property
    def sugar_g(self) -> float:
        """The sugar in it."""
        return self.sugar_g_per_l * self.volume_l

    @property
    def tea_g(self) -> float:
        """The dry leaf for it."""
        return self.tea_g_per_l * self.volume_l


@dataclass(frozen=True, slots=True, kw_only=True)
class TopUpPreview:
    """What topping up would do. ``room_l`` is what fits up to the working volume.

    pH and sugar are None where nothing is known of the jar's own.
    """

    before: Liquid
    after: Liquid
    sugar_g: float
    tea_g: float
    room_l: float
    verdicts: tuple[Verdict, ...]

    @property
    def ph_after(self) -> Estimate | None:
        """The pH of the blend."""
        return self.after.ph


def check_fresh(fresh: FreshWish) -> None:
    """Refuse sugar or tea that no kitchen has.

    Raises
    ------
    ImpossibleInput
        Field "sugar_g_per_l" or "tea_g_per_l".
    """
    for name in ("sugar_g_per_l", "tea_g_per_l"):
        low, high, unit = WISH_RANGES[name]
        value = getattr(fresh, name)
        if not low <= value <= high:
            raise ImpossibleInput(name, value, low=low, high=high, unit=unit)


def preview(batch: Batch, vessel: Vessel, jar: Liquid, fresh: FreshWish) -> TopUpPreview:
    """Reckon what fresh sweet tea makes of a jar; nothing is kept.

    Raises
    ------
    ImpossibleInput
        Field "volume_l" with reason "above_brim" or "less_than_a_drop", or a field of the
        fresh tea.
    """
    check_fresh(fresh)
    room_l = max(vessel.brim_volume_l - jar.volume_l, 0.0)
    check_room("volume_l", fresh.volume_l, jar.volume_l, vessel)
    after = topped_up(
        jar,
        FreshTea(
            volume_l=min(fresh.volume_l, room_l),
            sugar_g_per_l=fresh.sugar_g_per_l,
            tea_kind=fresh.tea_kind,
            tea_g_per_l=fresh.tea_g_per_l,
            water_alkalinity_meq_per_l=batch.water_alkalinity_meq_per_l,
        ),
    )
    return TopUpPreview(
        before=jar,
        after=after,
        sugar_g=fresh.sugar_g,
        tea_g=fresh.tea_g,
        room_l=max(vessel.working_volume_l - jar.volume_l, 0.0),
        verdicts=_verdicts(vessel, after, fresh.volume_l / after.volume_l),
    )


def check_room(field: str, volume_l: float, in_it_l: float, vessel: Vessel) -> float:
    """Return a volume that still fits below the brim.

    Raises
    ------
    ImpossibleInput
        Field ``field`` with reason "above_brim"; ``high`` is the vessel's brim volume.
    """
    room_l = max(vessel.brim_volume_l - in_it_l, 0.0)
    try:
        return check_volume(field, volume_l, room_l)
    except ImpossibleInput as refused:
        if refused.reason != "not_there":
            raise
        raise ImpossibleInput(
            field, volume_l, low=0.0, high=room_l, unit="L", reason="above_brim_by_now"
        ) from None


def _verdicts(vessel: Vessel, after: Liquid, share: float) -> tuple[Verdict, ...]:
    found = []
    most_ph = safety.limit("ph_start_max")
    if after.ph is not None and after.ph.high > most_ph:
        numbers = {"ph": after.ph.value, "high": after.ph.high, "limit": most_ph}
        sources = safety.LIMITS["ph_start_max"].source_keys
        found.append(Verdict("top_up_ph_high", Level.WARN, numbers, sources))
    if after.volume_l > vessel.working_volume_l + ROUNDING_L:
        full = {"fill_l": after.volume_l, "working_l": vessel.working_volume_l}
        found.append(Verdict("top_up_over_working", Level.WARN, full))
    if share > MOST_SHARE:
        found.append(Verdict("top_up_large", Level.WARN, {"share": share, "most": MOST_SHARE}))
    return tuple(found)
