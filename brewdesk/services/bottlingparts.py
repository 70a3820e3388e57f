"""A stored bottling with its bottles, additions and checks, and what follows from them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from brewdesk.services.bottlingwish import AdditionWish, BottleGroupWish, BottlingWish
from brewdesk.store.records import (
    Addition,
    Batch,
    BottleCheck,
    BottleCheckDraft,
    BottleGroup,
    Bottling,
)
from culturecore.stages import BottleKind, CheckKind, Quantity

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

_MOST_C = 40.0  # what the figures take


@dataclass(frozen=True, slots=True, kw_only=True)
class BottlingParts:
    """What a bottling is made of, and what was seen of it, by time."""

    bottling: Bottling
    groups: tuple[BottleGroup, ...]
    additions: tuple[Addition, ...]
    checks: tuple[BottleCheck, ...]

    @property
    def bottle_count(self) -> int:
        """How many bottles were filled."""
        return sum(group.bottle_count for group in self.groups)

    @property
    def bottles_left(self) -> int:
        """How many are still closed."""
        opened = sum(
            max(check.bottle_count, 1) for check in self.checks if check.kind is CheckKind.OPENED
        )
        return max(self.bottle_count - opened, 0)


def parts_in(unit: ReadUnit, bottling_id: int) -> BottlingParts:
    """Return a bottling with its bottles, additions and checks. Raises NoSuchRow."""
    return BottlingParts(
        bottling=unit.bottlings.get(bottling_id),
        groups=unit.bottle_groups.where(bottling_id=bottling_id, order_by=("position", "id")),
        additions=unit.additions.where(bottling_id=bottling_id, order_by=("position", "id")),
        checks=unit.bottle_checks.where(bottling_id=bottling_id, order_by=("at", "id")),
    )


def wish_as_filled(parts: BottlingParts) -> BottlingWish:
    """Return the wish that a stored bottling came from."""
    bottling = parts.bottling
    return BottlingWish(
        batch_id=bottling.batch_id,
        name=bottling.name,
        groups=tuple(
            BottleGroupWish(
                bottle_count=group.bottle_count,
                kind=group.kind,
                brim_volume_l=group.brim_volume_l,
                headspace_share=group.headspace_share,
                rated_bar=group.rated_bar,
                is_test=group.is_test,
                name=group.name,
            )
            for group in parts.groups
        ),
        additions=tuple(
            AdditionWish(
                kind=addition.kind,
                name=addition.name,
                mass_g=addition.mass_g,
                sugar_share_low=addition.sugar_share_low,
                sugar_share_high=addition.sugar_share_high,
                source=addition.source,
            )
            for addition in parts.additions
        ),
        drink_volume_l=bottling.drink_volume_l,
        target_volumes=bottling.target_volumes,
        priming_kind=bottling.priming_kind,
        priming_sugar_g=bottling.priming_sugar_g,
        place_id=bottling.place_id,
        place_temperature_c=kitchen_c(bottling.place_temperature_c),
        warmest_c=kitchen_c(bottling.warmest_c),
        open_jar_c=kitchen_c(bottling.open_jar_c),
        filled_at=bottling.filled_at,
        note=bottling.note,
    )


def has_culture(unit: ReadUnit, batch: Batch) -> bool:
    """Whether a culture is in the batch's jar, for starter to stay with."""
    if batch.culture_id is None:
        return False
    return unit.cultures.get(batch.culture_id).vessel_id == batch.vessel_id


def can_be_felt(groups: tuple[BottleGroup, ...]) -> bool:
    """Whether one of the bottles gives way when it is pressed."""
    return any(group.kind is BottleKind.FIZZY_PLASTIC or group.is_test for group in groups)


def check_facts(bottling: Bottling, check: BottleCheckDraft) -> dict[str, object]:
    """Return what the sentence about a look at bottles needs."""
    return {
        "name": bottling.name,
        "check": check.kind.value,
        "feel": None if check.feel is None else check.feel.value,
        "gauge_bar": check.gauge_bar,
        "opened": None if check.opened is None else check.opened.value,
        "text": check.text,
    }


def kitchen_c(temperature_c: float) -> float:
    """Return a temperature within what the figures take, 0 to 40 degC."""
    return min(max(temperature_c, 0.0), _MOST_C)


def warmest_jar_c(unit: ReadUnit, batch: Batch, usual_c: float) -> float:
    """Return the warmest that the open jar is known to have been since it was begun."""
    rows = unit.readings.where(batch_id=batch.id, quantity=Quantity.TEMPERATURE_C)
    read = [row.value for row in rows if row.value is not None]
    settled = [value for value in read if value <= _MOST_C]
    return max((usual_c, batch.place_temperature_c, *settled))
