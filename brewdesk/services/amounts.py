"""A plan's amounts as they are weighed out: rows that visibly add up to what is in the vessel.

Rounded for a kitchen scale in such a way that the sum of the rows is the total, to the
gram and to the millilitre.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from culturecore import kitchen, safety, sugar
from culturecore.kitchen import Measure
from culturecore.startacid import STARTER_KG_PER_L
from culturecore.sweettea import Plan, Wish
from culturecore.units import Kind, from_canonical

_FINE_BELOW_G = 100.0  # leaf is weighed to a tenth of a gram up to here
_REFERENCE_C = 20.0  # volumes are those at 20 degC, as in the plan


class Part(Enum):
    """What goes into the vessel, in the order in which it is weighed, or comes out again."""

    HOT_WATER = "hot_water"
    TEA = "tea"
    SUGAR = "sugar"
    COLD_WATER = "cold_water"
    WET_LEAVES = "wet_leaves"
    STARTER = "starter"
    TOTAL = "total"


@dataclass(frozen=True, slots=True, kw_only=True)
class AmountRow:
    """One row: grams, ounces and millilitres as shown (negative: taken out), kitchen measures.

    ``mass_g`` of a little tea, and of its wet leaves, is to a tenth of a gram, else whole;
    ``mass_oz`` (avoirdupois) is to a hundredth for these two, else to a tenth.
    ``volume_ml`` is None where a volume means nothing.
    """

    part: Part
    mass_g: float
    mass_oz: float
    volume_ml: int | None
    measures: tuple[Measure, ...] = ()


def amount_rows(plan: Plan, wish: Wish) -> tuple[AmountRow, ...]:
    """Return the rows of ``plan``, the total last; their shown numbers add up to it."""
    water_kg_per_l = sugar.density_kg_per_l(0.0, _REFERENCE_C)

    def water_ml(mass_g: float) -> float:
        return mass_g / water_kg_per_l

    tea_g = round(plan.tea_g, 1 if plan.tea_g < _FINE_BELOW_G else 0)
    hot_g, sugar_g, leaf_g = round(plan.hot_water_g), round(plan.sugar_g), round(plan.leaf_water_g)
    starter_g = round(plan.starter_volume_l * STARTER_KG_PER_L * 1000.0)
    total_g = round(plan.blend_mass_g)
    # The cold water, as a rule the largest part, takes up what the rounding of the others left.
    cold_g = total_g - hot_g - sugar_g - starter_g + leaf_g

    hot_oz, sugar_oz, leaf_oz, starter_oz, total_oz = (
        round(_oz(mass_g), 1)
        for mass_g in (plan.hot_water_g, plan.sugar_g, plan.leaf_water_g, starter_g, total_g)
    )
    tea_oz = round(_oz(plan.tea_g), 2)
    cold_oz = round(total_oz - hot_oz - sugar_oz - starter_oz + leaf_oz, 1)

    hot_ml, leaf_ml = round(water_ml(plan.hot_water_g)), round(water_ml(plan.leaf_water_g))
    cold_ml = round(water_ml(plan.cold_water_g))
    starter_ml = round(plan.starter_volume_l * 1000.0)
    total_ml = round(plan.blend_volume_l * 1000.0)
    # What dissolved sugar adds is whatever the solution holds beyond its water.
    sugar_ml = total_ml - hot_ml - cold_ml + leaf_ml - starter_ml

    water = kitchen.water_measures
    bags = (kitchen.tea_bags(plan.tea_g, wish.bag_g),)
    return (
        AmountRow(
            part=Part.HOT_WATER,
            mass_g=hot_g,
            mass_oz=hot_oz,
            volume_ml=hot_ml,
            measures=tuple(water(hot_ml / 1000.0)),
        ),
        AmountRow(part=Part.TEA, mass_g=tea_g, mass_oz=tea_oz, volume_ml=None, measures=bags),
        AmountRow(
            part=Part.SUGAR,
            mass_g=sugar_g,
            mass_oz=sugar_oz,
            volume_ml=sugar_ml,
            measures=tuple(kitchen.sugar_measures(plan.sugar_g)),
        ),
        AmountRow(
            part=Part.COLD_WATER,
            mass_g=cold_g,
            mass_oz=cold_oz,
            volume_ml=cold_ml,
            measures=tuple(water(max(cold_ml, 0) / 1000.0)),
        ),
        AmountRow(
            part=Part.WET_LEAVES,
            mass_g=-round(tea_g + leaf_g, 1),
            mass_oz=-round(tea_oz + leaf_oz, 2),
            volume_ml=-leaf_ml,
        ),
        AmountRow(
            part=Part.STARTER,
            mass_g=starter_g,
            mass_oz=starter_oz,
            volume_ml=starter_ml,
            measures=tuple(water(plan.starter_volume_l)),
        ),
        AmountRow(part=Part.TOTAL, mass_g=total_g, mass_oz=total_oz, volume_ml=total_ml),
    )


def _oz(mass_g: float) -> float:
    return from_canonical(mass_g, "oz", Kind.MASS)


@dataclass(frozen=True, slots=True)
class PhMarks:
    """The pH limits that a start pH is drawn between, and the day of the middle one."""

    least_to_drink: float
    most_by_deadline: float
    most_to_start: float
    deadline_days: int


def ph_marks() -> PhMarks:
    """Return the marks, from the table of safety limits."""
    return PhMarks(
        least_to_drink=safety.limit("ph_finished_min"),
        most_by_deadline=safety.limit("ph_finished_max"),
        most_to_start=safety.limit("ph_start_max"),
        deadline_days=round(safety.limit("ph_deadline_days")),
    )
