"""Questions about heat: mixing, ice, waiting, boiling."""

from __future__ import annotations

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import t
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Question,
    Span,
    exact,
    number,
    told,
)
from culturecore import cooling, heat, icemix
from culturecore.units import Kind

_NO_LOSSES = ("llano_2005",)
_READINGS = ("1", "2", "3", "4")


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (_mix(), _hot_share(), _with_ice(), _ice_for(), _cooling(), _boiling())


def _parts_fields() -> tuple[Field, ...]:
    return (
        number("hot_g", t("Hot water or tea"), Kind.MASS, 1500.0),
        number("hot_c", t("How hot"), Kind.TEMPERATURE, 85.0),
        number("cold_g", t("Cold water"), Kind.MASS, 2000.0),
        number("cold_c", t("How cold"), Kind.TEMPERATURE, 15.0),
        number("sugar_g", t("Sugar stirred in"), Kind.MASS, 200.0),
        number("sugar_c", t("Temperature of the sugar"), Kind.TEMPERATURE, 20.0),
    )


def _parts(given: Inputs) -> tuple[heat.Portion, ...]:
    return (
        heat.Portion(mass_g=given.number("hot_g"), temperature_c=given.number("hot_c")),
        heat.Portion(mass_g=given.number("cold_g"), temperature_c=given.number("cold_c")),
        heat.Portion(
            mass_g=given.number("sugar_g"), temperature_c=given.number("sugar_c"), brix=100.0
        ),
    )


_PART_RENAMES = {"mass_g": "hot_g", "temperature_c": "hot_c"}


def _bounded(fields: tuple[Field, ...]) -> tuple[Field, ...]:
    """Bound what the core checks under one name for all parts, so that the right one is named."""
    return tuple(
        number(entry.key, entry.label, entry.form, _default(entry), low=0.0,
               high=100.0 if entry.form is Kind.TEMPERATURE else 1e6)
        for entry in fields
        if isinstance(entry.form, Kind)
    )  # fmt: skip


def _default(entry: Field) -> float | None:
    return entry.default if isinstance(entry.default, float) else None


def _mix() -> Question:
    return Question(
        key="mix_temperature",
        group=Group.HEAT,
        title=t("How warm is hot and cold together?"),
        purpose=t("The temperature once hot tea, cold water and sugar are stirred together."),
        words=t("mixing temperature blend concentrate"),
        fields=_bounded(_parts_fields()),
        answer=_mixed,
        renames=_PART_RENAMES,
    )


def _mixed(given: Inputs) -> Answer:
    # no ice: the same balance, with the doubt that vessel and losses bring
    found = icemix.mix_with_ice(_parts(given), ice_g=0.0)
    return Answer(
        lines=(
            told("mixed", t("Mixed temperature"), found.temperature_c, Kind.TEMPERATURE,
                 Span.BOUNDS),
            exact("mass", t("Together"), found.liquid_mass_g, Kind.MASS),
        ),
        says=t("Expect {mixed_low} to {mixed_high}: vessel and losses on the way move it a little. "
               "A thermometer decides when the culture goes in."),
        formulas=(Formula(t("Heat content is kept"), _NO_LOSSES),),
    )  # fmt: skip


def _hot_share() -> Question:
    return Question(
        key="hot_water_for",
        group=Group.HEAT,
        title=t("How much of the water may be hot?"),
        purpose=t("So that the mix ends at the temperature you want, without waiting."),
        words=t("hot cold share mixing target"),
        fields=(
            number("total_water_g", t("Water in all"), Kind.MASS, 3500.0, low=0.0, high=1e6),
            number("hot_c", t("Hot water at"), Kind.TEMPERATURE, 90.0),
            number("cold_c", t("Cold water at"), Kind.TEMPERATURE, 15.0),
            number("target_c", t("Wanted once mixed"), Kind.TEMPERATURE, 28.0),
            number("sugar_g", t("Sugar stirred in"), Kind.MASS, 200.0, low=0.0, high=1e6),
            number("sugar_c", t("Temperature of the sugar"), Kind.TEMPERATURE, 20.0),
        ),
        answer=_hot_share_answered,
    )


def _hot_share_answered(given: Inputs) -> Answer:
    hot_g = heat.hot_mass_for_temperature(
        **{
            key: given.number(key)
            for key in ("total_water_g", "hot_c", "cold_c", "target_c", "sugar_g", "sugar_c")
        }
    )
    return Answer(
        lines=(exact("hot", t("Hot water, at most"), hot_g, Kind.MASS),),
        says=t("Take up to {hot} of the water hot and the rest cold, and it should come out near "
               "{target_c}, give or take what vessel and losses do. Measure before the culture "
               "goes in."),
        notes=(t("The figure stays between nothing and all of the water: outside, no share of hot "
                 "water gives that temperature."),),
        formulas=(Formula(t("Heat content is kept"), _NO_LOSSES),),
    )  # fmt: skip


def _with_ice() -> Question:
    return Question(
        key="mix_with_ice",
        group=Group.HEAT,
        title=t("How cold does ice make it?"),
        purpose=t("Hot concentrate, cold water and ice: the temperature, or the ice that is left."),
        words=t("chill ice cubes melt quick cooling"),
        fields=(
            *_bounded(_parts_fields()),
            number("ice_g", t("Ice"), Kind.MASS, 500.0, low=0.0, high=1e6),
            number("ice_temperature_c", t("Temperature of the ice"), Kind.TEMPERATURE, -10.0),
        ),
        answer=_iced,
        renames=_PART_RENAMES,
    )


def _iced(given: Inputs) -> Answer:
    found = icemix.mix_with_ice(
        _parts(given),
        ice_g=given.number("ice_g"),
        ice_temperature_c=given.number("ice_temperature_c"),
    )
    return Answer(
        lines=(
            told("mixed", t("Temperature"), found.temperature_c, Kind.TEMPERATURE, Span.BOUNDS),
            exact("left", t("Ice left"), found.ice_left_g, Kind.MASS),
            exact("mass", t("Liquid"), found.liquid_mass_g, Kind.MASS),
        ),
        says=t("Expect {mixed_low} to {mixed_high}, with {left} of ice left in it."),
        caveats=found.temperature_c.caveats,
        notes=(t("The ice is water too: count it in, and use only ice that is good to drink."),),
        formulas=(Formula(t("Heat content is kept, melting included"), found.sources),),
    )


def _ice_for() -> Question:
    return Question(
        key="ice_for",
        group=Group.HEAT,
        title=t("How much ice cools it to where I want it?"),
        purpose=t("The ice that brings hot tea to a temperature at once."),
        words=t("chill ice cubes quick cooling target"),
        fields=(
            *_bounded(_parts_fields()),
            number("target_c", t("Wanted"), Kind.TEMPERATURE, 28.0),
            number("ice_temperature_c", t("Temperature of the ice"), Kind.TEMPERATURE, -10.0),
        ),
        answer=_ice_answered,
        renames=_PART_RENAMES,
    )


def _ice_answered(given: Inputs) -> Answer:
    ice = icemix.ice_for_temperature(
        _parts(given),
        target_c=given.number("target_c"),
        ice_temperature_c=given.number("ice_temperature_c"),
    )
    return Answer(
        lines=(told("ice", t("Ice"), ice, Kind.MASS, Span.BOUNDS),),
        says=t("About {ice}; for a little warmer or colder it takes {ice_low} to {ice_high}."),
        caveats=ice.caveats,
        notes=(t("The ice is water too: leave that much out of the cold water."),),
        formulas=(Formula(t("Heat content is kept, melting included"), ice.sources),),
    )


def _cooling() -> Question:
    pairs: list[Field] = []
    for place, minute, degrees in zip(
        _READINGS, (0.0, 30.0, None, None), (55.0, 46.0, None, None), strict=True
    ):
        named = t("Reading {n}: minute").format(n=place)
        pairs.append(number(f"minute_{place}", named, measures.MINUTES, minute))
        warm = t("Reading {n}: temperature").format(n=place)
        pairs.append(number(f"temperature_{place}", warm, Kind.TEMPERATURE, degrees))
    return Question(
        key="cooling",
        group=Group.HEAT,
        title=t("When is it cool enough for the culture?"),
        purpose=t("From two to four temperatures of the cooling pot, and that of the room."),
        words=t("cooling curve wait time newton minutes safe"),
        fields=(
            number("ambient_c", t("Temperature of the room"), Kind.TEMPERATURE, 21.0),
            number("limit_c", t("Warmest for the culture"), Kind.TEMPERATURE, 30.0),
            *pairs,
        ),
        answer=_cooled,
        renames={
            "readings": "temperature_2",
            "readings:same_moment": "minute_2",
            "readings:at_ambient": "ambient_c",
            "temperature_c": "temperature_1",
            "minute": "minute_1",
        },
    )


def _cooled(given: Inputs) -> Answer:
    readings = []
    for place in _READINGS:
        minute, degrees = given.maybe(f"minute_{place}"), given.maybe(f"temperature_{place}")
        if minute is not None or degrees is not None:
            readings.append(
                cooling.PotReading(
                    minute=given.number(f"minute_{place}"),
                    temperature_c=given.number(f"temperature_{place}"),
                )
            )
    curve = cooling.fit_cooling(readings, ambient_c=given.number("ambient_c"))
    wait = cooling.minutes_until_safe(curve, limit_c=given.number("limit_c"))
    span = Span.BOUNDS if curve.is_earliest else Span.LIKELY
    if curve.is_earliest:
        says = t("At the earliest {wait} after the latest reading, perhaps not before {wait_high}: "
                 "it was read while it steamed.")  # fmt: skip
    else:
        says = t("About {wait} after the latest reading; between {wait_low} and {wait_high} "
                 "8 times in 10.")  # fmt: skip
    return Answer(
        lines=(
            told("wait", t("Still to wait, from the latest reading"), wait, measures.MINUTES, span),
            exact("latest", t("Latest reading"), curve.latest.temperature_c, Kind.TEMPERATURE),
        ),
        says=says,
        caveats=wait.caveats,
        notes=(t("A thermometer decides, not this: measure before the culture goes in."),),
        formulas=(Formula(t("Newton's law of cooling, with the room's temperature given"),
                          curve.sources),),
    )  # fmt: skip


def _boiling() -> Question:
    return Question(
        key="boiling_point",
        group=Group.HEAT,
        title=t("How hot is boiling water up here?"),
        purpose=t("The boiling point of water by altitude, in ordinary weather."),
        words=t("altitude height mountain steep"),
        fields=(number("altitude_m", t("Above the sea"), measures.METRES, 500.0),),
        answer=_boiled,
    )


def _boiled(given: Inputs) -> Answer:
    boiling_c = heat.boiling_point_c(given.number("altitude_m"))
    return Answer(
        lines=(exact("boiling", t("Water boils at"), boiling_c, Kind.TEMPERATURE),),
        says=t("At {altitude_m} water boils at about {boiling}; the weather moves that a little."),
        formulas=(
            Formula(t("Standard atmosphere"), ("isa_1975",)),
            Formula(t("Vapour pressure of water"), ("wagner_pruss_1993",)),
        ),
    )  # fmt: skip
