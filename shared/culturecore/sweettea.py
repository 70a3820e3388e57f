"""From a wish (how much, how sweet, which starter) to amounts on the scales.

One balance: the fill volume is sweet tea plus starter at 20 degC; the sweet tea's sugar
and water have exactly that volume by the density of sucrose solution; the water weighed
out is the water in the tea plus what the wet leaves keep. Leaf solids (about a third of
the leaf) and evaporation are left out: below 2 g a litre, and weighed back in if wanted.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from culturecore import heat, kitchen, safety, startacid, sugar
from culturecore import starter as starting
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate, Level, Verdict
from culturecore.stages import StarterTaste, TeaKind

LEAF_WATER_G_PER_G: Final = 2.5  # kept by wet leaves; common practice, no source

# The hot part steeps the leaf and dissolves the sugar. Assumptions, no source, but for the
# leaf: iso_3103 steeps 20 g in a litre; a concentrate of 30 g in a litre still draws well.
HOT_SHARE_MIN: Final = 0.15
HOT_SHARE_MAX: Final = 0.50
_HOT_G_PER_G_TEA = 1000.0 / 30.0
_HOT_G_PER_G_SUGAR = 1.5
MIXING_MARGIN_C: Final = 2.0  # the vessel's own heat; heat.MIXING_DOUBT_C

# Ordinary recipes; common practice, no source.
_USUAL_SUGAR_G_PER_L = (40.0, 100.0)
_USUAL_TEA_G_PER_L = (2.0, 10.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Starter:
    """What is known of the starter: pH, acidity as acetic acid [g/L], taste."""

    ph: float | None = None
    ta_g_per_l: float | None = None
    taste: StarterTaste | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """What the maker wants.

    ``sugar_g_per_l`` and ``tea_g_per_l`` are per litre of sweet tea before the starter, at
    20 degC. ``starter_volume_l`` is the maker's own amount; None lets the plan choose it.
    """

    fill_volume_l: float
    sugar_g_per_l: float = 50.0
    tea_kind: TeaKind = TeaKind.BLACK
    tea_g_per_l: float = 4.0
    bag_g: float = 2.0
    starter: Starter = field(default_factory=Starter)
    target_start_ph: float = 4.2
    water_alkalinity_meq_per_l: float = 1.5
    hot_water_c: float = 90.0
    cold_water_c: float = 15.0
    culture_limit_c: float = 30.0
    working_volume_l: float | None = None
    place_temperature_c: float = 22.0
    starter_volume_l: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """The amounts, what they give, and what there is to say about them.

    ``starter_share`` is the volume share planned; its bounds span what the target pH may
    take. ``leaf_water_g`` is contained in the hot and cold water. ``mixed_temperature_c``
    is that of the sweet tea before the starter. Verdicts come loudest first.
    """

    sweet_tea_volume_l: float
    sugar_g: float
    tea_g: float
    tea_bags: int
    starter_volume_l: float
    starter_share: Estimate
    hot_water_g: float
    cold_water_g: float
    leaf_water_g: float
    blend_volume_l: float
    blend_mass_g: float
    mixed_temperature_c: Estimate
    start_ph: Estimate
    verdicts: tuple[Verdict, ...]


# Wish field -> (lowest, highest, unit): what no kitchen exceeds.
WISH_RANGES: Final[dict[str, tuple[float, float, str]]] = {
    "fill_volume_l": (0.1, 500.0, "L"),
    "sugar_g_per_l": (1.0, 300.0, "g/L"),
    "tea_g_per_l": (0.1, 50.0, "g/L"),
    "bag_g": (0.2, 50.0, "g"),
    "target_start_ph": (3.0, 4.6, "pH"),
    "water_alkalinity_meq_per_l": (0.0, 12.0, "meq/L"),
    "hot_water_c": (40.0, 100.0, "°C"),
    "cold_water_c": (0.0, 40.0, "°C"),
    "culture_limit_c": (20.0, 40.0, "°C"),
    "place_temperature_c": (0.0, 45.0, "°C"),
}
STARTER_RANGES: Final[dict[str, tuple[float, float, str]]] = {
    "starter_ph": (2.0, 4.6, "pH"),
    "starter_ta_g_per_l": (0.2, 40.0, "g/L"),
}


def plan(wish: Wish) -> Plan:
    """Turn a wish into amounts, an expected start pH and verdicts.

    Raises
    ------
    ImpossibleInput
        With the field's name as in :class:`Wish`; a starter's own fields are named
        ``starter_ph`` and ``starter_ta_g_per_l`` (``reason`` "contradicts_ph" when no
        drink of that pH can hold so much acid).

    Notes
    -----
    Starter: with measured acidity, what the target pH takes; without, at least the usual
    amount for its taste. Never below 10 % (fst_297), never above 25 % on the plan's own
    account; the maker's own amount is taken as it is and judged.
    Water: as much of it hot as lets the mix end 2 degC below the culture limit, at least
    what steeping and dissolving need, at most half.
    """
    _check_wish(wish)
    inputs = startacid.AcidInputs(
        starter_ph=wish.starter.ph,
        starter_ta_g_per_l=wish.starter.ta_g_per_l,
        starter_taste=wish.starter.taste,
        tea_kind=wish.tea_kind,
        tea_g_per_l=wish.tea_g_per_l,
        water_alkalinity_meq_per_l=wish.water_alkalinity_meq_per_l,
    )
    _check_starter_agrees(wish.starter, inputs)
    tea_kg_per_l = sugar.density_kg_per_l(sugar.brix_from_g_per_l(wish.sugar_g_per_l))
    starter_share = _starter_share(wish, inputs, tea_kg_per_l)
    starter_volume_l = wish.starter_volume_l
    if starter_volume_l is None:
        starter_volume_l = starter_share.value * wish.fill_volume_l

    sweet_tea_volume_l = wish.fill_volume_l - starter_volume_l
    sugar_g = wish.sugar_g_per_l * sweet_tea_volume_l
    tea_g = wish.tea_g_per_l * sweet_tea_volume_l
    sweet_tea_g = sweet_tea_volume_l * tea_kg_per_l * 1000.0
    starter_g = starter_volume_l * startacid.STARTER_KG_PER_L * 1000.0
    leaf_water_g = LEAF_WATER_G_PER_G * tea_g
    water_g = sweet_tea_g - sugar_g + leaf_water_g
    hot_water_g = _hot_water_g(wish, water_g, sugar_g, tea_g)
    mixed = _mixed_temperature(wish, hot_water_g, water_g - hot_water_g, sugar_g)
    start_ph = startacid.start_ph(inputs, starter_g / (starter_g + sweet_tea_g))
    return Plan(
        sweet_tea_volume_l=sweet_tea_volume_l,
        sugar_g=sugar_g,
        tea_g=tea_g,
        tea_bags=kitchen.tea_bags(tea_g, wish.bag_g).whole,
        starter_volume_l=starter_volume_l,
        starter_share=starter_share,
        hot_water_g=hot_water_g,
        cold_water_g=water_g - hot_water_g,
        leaf_water_g=leaf_water_g,
        blend_volume_l=sweet_tea_volume_l + starter_volume_l,
        blend_mass_g=sweet_tea_g + starter_g,
        mixed_temperature_c=mixed,
        start_ph=start_ph,
        verdicts=_verdicts(wish, inputs, starter_share, mixed, start_ph),
    )


def _check_wish(wish: Wish) -> None:
    for name, (low, high, unit) in WISH_RANGES.items():
        _check(name, getattr(wish, name), low, high, unit)
    starter = {"starter_ph": wish.starter.ph, "starter_ta_g_per_l": wish.starter.ta_g_per_l}
    for name, value in starter.items():
        if value is not None:
            _check(name, value, *STARTER_RANGES[name])
    if wish.working_volume_l is not None:
        _check("working_volume_l", wish.working_volume_l, 0.05, 1000.0, "L")
    if wish.starter_volume_l is not None:
        # some starter, and some sweet tea left to feed it
        most = 0.9 * wish.fill_volume_l
        _check("starter_volume_l", wish.starter_volume_l, 0.001, most, "L")
    if wish.hot_water_c <= wish.cold_water_c:
        raise ImpossibleInput(
            "hot_water_c", wish.hot_water_c, low=wish.cold_water_c, high=100.0, unit="°C"
        )


def _check_starter_agrees(starter: Starter, inputs: startacid.AcidInputs) -> None:
    made_up, _tea = startacid.starter_and_tea(inputs)
    if made_up.strong_ion_excess_eq_per_kg > starting.IMPOSSIBLE_EXCESS_EQ_PER_KG:
        raise ImpossibleInput(
            "starter_ta_g_per_l", starter.ta_g_per_l, unit="g/L", reason="contradicts_ph"
        )


def _starter_share(wish: Wish, inputs: startacid.AcidInputs, tea_kg_per_l: float) -> Estimate:
    """Return the volume share of starter, with what the target may take as bounds."""
    needed, low, high = (
        starting.volume_share(mass_share, tea_kg_per_l)
        for mass_share in startacid.starter_mass_share_for(inputs, wish.target_start_ph)
    )
    if wish.starter_volume_l is not None:
        share = wish.starter_volume_l / wish.fill_volume_l
    else:
        least = safety.limit("starter_share_min")
        if wish.starter.ta_g_per_l is None:
            # the calculation then rests on an assumed acidity: at least the usual amount
            usual = starting.usual_share(ph=wish.starter.ph, taste=wish.starter.taste)
            least = max(least, usual)
        share = min(max(needed, least), safety.limit("starter_share_max"))
    return Estimate(
        share,
        min(low, share),
        max(high, share),
        caveats=startacid.caveats(inputs),
        sources=("fst_297", "kstate_2019", "recipe_practice"),
    )


def _hot_water_g(wish: Wish, water_g: float, sugar_g: float, tea_g: float) -> float:
    allowed_g = heat.hot_mass_for_temperature(
        total_water_g=water_g,
        hot_c=wish.hot_water_c,
        cold_c=wish.cold_water_c,
        target_c=wish.culture_limit_c - MIXING_MARGIN_C,
        sugar_g=sugar_g,
        sugar_c=wish.place_temperature_c,
    )
    needed_g = max(HOT_SHARE_MIN * water_g, _HOT_G_PER_G_TEA * tea_g, _HOT_G_PER_G_SUGAR * sugar_g)
    return min(max(min(allowed_g, HOT_SHARE_MAX * water_g), needed_g), water_g)


def _mixed_temperature(wish: Wish, hot_g: float, cold_g: float, sugar_g: float) -> Estimate:
    mixed_c = heat.mix_temperature_c(
        (
            heat.Portion(mass_g=hot_g, temperature_c=wish.hot_water_c),
            heat.Portion(mass_g=cold_g, temperature_c=wish.cold_water_c),
            heat.Portion(mass_g=sugar_g, temperature_c=wish.place_temperature_c, brix=100.0),
        )
    )
    doubt_c = heat.MIXING_DOUBT_C
    return Estimate(
        mixed_c,
        mixed_c - doubt_c,
        mixed_c + doubt_c,
        caveats=(Caveat.TEMPERATURE_ASSUMED,),
        sources=("llano_2005",),
    )


def _verdicts(
    wish: Wish,
    inputs: startacid.AcidInputs,
    share: Estimate,
    mixed: Estimate,
    start_ph: Estimate,
) -> tuple[Verdict, ...]:
    found = [
        safety.start_ph_verdict(start_ph),
        *_starter_verdicts(wish, inputs, share, start_ph),
        *_recipe_verdicts(wish),
        *_heat_verdicts(wish, mixed),
    ]
    order = (Level.STOP, Level.WARN, Level.INFORM)
    return tuple(sorted(found, key=lambda verdict: order.index(verdict.level)))


def _starter_verdicts(
    wish: Wish, inputs: startacid.AcidInputs, share: Estimate, start_ph: Estimate
) -> list[Verdict]:
    found = []
    numbers = {
        "share": share.value,
        "least": safety.limit("starter_share_min"),
        "most": safety.limit("starter_share_max"),
    }
    if share.value < numbers["least"] - 1e-9:
        found.append(Verdict("starter_low", Level.WARN, numbers, ("fst_297", "kstate_2019")))
    if share.value > numbers["most"] + 1e-9:
        found.append(Verdict("starter_high", Level.WARN, numbers, ("recipe_practice",)))
    if start_ph.value > wish.target_start_ph + 0.005:
        reached = {"ph": start_ph.value, "target": wish.target_start_ph, "share": share.value}
        sources = ("starter_acid_assumption", "tea_buffer_assumption")
        found.append(Verdict("cannot_reach_target", Level.WARN, reached, sources))
    if wish.starter.ph is not None and wish.starter.ta_g_per_l is not None:
        starter, _tea = startacid.starter_and_tea(inputs)
        low, high = starting.LIKELY_EXCESS_EQ_PER_KG
        if not low <= starter.strong_ion_excess_eq_per_kg <= high:
            odd = {"ph": wish.starter.ph, "ta_g_per_l": wish.starter.ta_g_per_l}
            found.append(Verdict("starter_odd", Level.WARN, odd, ("starter_acid_assumption",)))
    return found


def _recipe_verdicts(wish: Wish) -> list[Verdict]:
    found = []
    practice = ("recipe_practice",)
    if wish.working_volume_l is not None and wish.fill_volume_l > wish.working_volume_l + 1e-9:
        full = {"fill_l": wish.fill_volume_l, "working_l": wish.working_volume_l}
        found.append(Verdict("fill_over_working", Level.WARN, full))
    for name, value, (low, high) in (
        ("sugar", wish.sugar_g_per_l, _USUAL_SUGAR_G_PER_L),
        ("tea", wish.tea_g_per_l, _USUAL_TEA_G_PER_L),
    ):
        numbers = {"g_per_l": value, "low": low, "high": high}
        if value < low:
            found.append(Verdict(f"{name}_low", Level.WARN, numbers, practice))
        elif value > high:
            found.append(Verdict(f"{name}_high", Level.WARN, numbers, practice))
    if wish.tea_kind is TeaKind.HERBAL:
        found.append(Verdict("tea_herbal", Level.WARN, sources=practice))
    return found


def _heat_verdicts(wish: Wish, mixed: Estimate) -> list[Verdict]:
    found = []
    aim_c = wish.culture_limit_c - MIXING_MARGIN_C
    if mixed.value > aim_c + 0.05:
        numbers = {
            "mixed_c": mixed.value,
            "limit_c": wish.culture_limit_c,
            "cool_by_c": mixed.value - aim_c,
            "place_c": wish.place_temperature_c,
        }
        found.append(Verdict("needs_cooling", Level.WARN, numbers, ("llano_2005",)))
    place = safety.place_temperature_verdict(wish.place_temperature_c)
    if place.level is not Level.INFORM:
        found.append(place)
    steep = {"hot_c": wish.hot_water_c, "least_c": safety.limit("steep_min_c")}
    if wish.hot_water_c < steep["least_c"]:
        found.append(Verdict("steep_cool", Level.WARN, steep, ("niagara_region",)))
    found.append(Verdict("hot_water_scald", Level.INFORM, {"hot_c": wish.hot_water_c}))
    found.append(Verdict("cold_water_unboiled", Level.INFORM, sources=("fst_297",)))
    return found


def _check(field_name: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field_name, value, low=low, high=high, unit=unit)
