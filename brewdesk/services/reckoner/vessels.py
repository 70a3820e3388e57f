"""Questions about vessels: levels, surfaces, a table of one's own, cups, materials."""

from __future__ import annotations

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import names, t
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Question,
    Span,
    choice,
    exact,
    in_words,
    number,
    told,
)
from brewdesk.services.wording.measures import measure_words
from culturecore import filltable, kitchen, vessels
from culturecore.errors import ImpossibleInput
from culturecore.formulas import sources_of
from culturecore.stages import VesselShape
from culturecore.units import Kind

_ROWS = ("1", "2", "3", "4", "5")


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (_level(), _ruler(), _table_volume(), _table_height(), _cups())


def _outline_fields() -> tuple[Field, ...]:
    return (
        choice("shape", t("Shape"), names(VesselShape), VesselShape.CYLINDER),
        number("diameter_cm", t("Widest inner diameter"), Kind.LENGTH, 15.0),
        number("brim_volume_l", t("Holds to the brim"), Kind.VOLUME, 4.5),
    )


def _level() -> Question:
    return Question(
        key="level",
        group=Group.VESSELS,
        title=t("How high does it stand in the vessel?"),
        purpose=t("Level, headspace and surface of an amount in a vessel."),
        words=t("height headspace surface ratio air fill"),
        fields=(*_outline_fields(), number("volume_l", t("Liquid in it"), Kind.VOLUME, 4.0)),
        answer=_level_answered,
    )


def _level_answered(given: Inputs) -> Answer:
    outline = (
        given.chosen("shape", VesselShape),
        given.number("diameter_cm"),
        given.number("brim_volume_l"),
    )
    volume_l = given.number("volume_l")
    height_cm = vessels.liquid_height_cm(*outline, volume_l)
    brim_cm = vessels.brim_height_cm(*outline)
    return Answer(
        lines=(
            exact("height", t("Stands above the foot"), height_cm, Kind.LENGTH),
            exact("free", t("Left to the brim"), brim_cm - height_cm, Kind.LENGTH),
            exact("headspace", t("Room above it"), outline[2] - volume_l, Kind.VOLUME),
            exact("surface", t("Open surface"), vessels.surface_area_cm2(*outline, volume_l),
                  measures.SQUARE_CENTIMETRES),
            exact("ratio", t("Surface to volume"),
                  vessels.surface_to_volume_per_cm(*outline, volume_l), measures.PER_CENTIMETRE),
        ),
        says=t("{volume_l} stands {height} high, {free} below the brim."),
        notes=(
            t("The more surface for its volume, the faster it sours. Neck and foot follow fixed "
              "proportions; for an odd vessel measure a table of your own."),
        ),
        formulas=(
            Formula(t("Straight lines between the points of the outline"),
                    tuple(s.key for s in sources_of(vessels.surface_to_volume_per_cm))),
        ),
    )  # fmt: skip


def _ruler() -> Question:
    return Question(
        key="volume_at_height",
        group=Group.VESSELS,
        title=t("How much is in it, by the ruler?"),
        purpose=t("The volume up to a height above the foot."),
        words=t("height volume measure level"),
        fields=(*_outline_fields(), number("height_cm", t("Stands at"), Kind.LENGTH, 20.0)),
        answer=_ruler_answered,
    )


def _ruler_answered(given: Inputs) -> Answer:
    volume_l = vessels.volume_to_height_l(
        given.chosen("shape", VesselShape),
        given.number("diameter_cm"),
        given.number("brim_volume_l"),
        given.number("height_cm"),
    )
    return Answer(
        lines=(exact("volume", t("Liquid in it"), volume_l, Kind.VOLUME),),
        says=t("Up to {height_cm} it holds {volume}, if it is shaped as this program assumes."),
        formulas=(
            Formula(t("Straight lines between the points of the outline"),
                    tuple(s.key for s in sources_of(vessels.volume_to_height_l))),
        ),
    )  # fmt: skip


def _row_fields() -> tuple[Field, ...]:
    heights = (5.0, 10.0, 18.0, None, None)
    volumes = (1.0, 1.9, 3.2, None, None)
    found: list[Field] = []
    for place, height, volume in zip(_ROWS, heights, volumes, strict=True):
        at = t("Mark {n}: height").format(n=place)
        holds = t("Mark {n}: holds").format(n=place)
        found.append(number(f"height_{place}", at, Kind.LENGTH, height, low=0.0, high=300.0))
        found.append(number(f"volume_{place}", holds, Kind.VOLUME, volume, low=0.0, high=1000.0))
    return tuple(entry if entry.key[-1] in "1" else _optional(entry) for entry in found)


def _optional(entry: Field) -> Field:
    return Field(
        key=entry.key,
        label=entry.label,
        form=entry.form,
        default=entry.default,
        optional=True,
        low=entry.low,
        high=entry.high,
    )


def _table(given: Inputs) -> filltable.FillTable:
    rows = []
    for place in _ROWS:
        height, volume = given.maybe(f"height_{place}"), given.maybe(f"volume_{place}")
        if height is not None or volume is not None:
            rows.append((given.number(f"height_{place}"), given.number(f"volume_{place}")))
    try:
        return filltable.fill_table(rows)
    except ImpossibleInput as problem:
        if problem.reason != "not_rising":
            raise
        for place in _ROWS:
            if given.maybe(f"volume_{place}") == problem.value:
                raise ImpossibleInput(
                    f"volume_{place}",
                    problem.value,
                    low=problem.low,
                    unit="L",
                    reason="not_rising",
                ) from problem
        raise


_TABLE_RENAMES = {"rows": "volume_2", "height_cm": "asked_cm", "volume_l": "asked_l"}


def _table_volume() -> Question:
    return Question(
        key="table_volume",
        group=Group.VESSELS,
        title=t("Volume by my own marks"),
        purpose=t("Pour in known amounts, mark the heights; any height between tells its volume."),
        words=t("fill table measured marks crock odd shape calibrate"),
        fields=(
            number("asked_cm", t("It stands at"), Kind.LENGTH, 14.0),
            *_row_fields(),
        ),
        answer=_table_volume_answered,
        renames=_TABLE_RENAMES,
    )


def _table_volume_answered(given: Inputs) -> Answer:
    table = _table(given)
    volume = filltable.volume_at(table, given.number("asked_cm"))
    ratio = filltable.surface_to_volume_per_cm(table, volume.value)
    return Answer(
        lines=(
            told("volume", t("Liquid in it"), volume, Kind.VOLUME),
            exact("surface", t("Open surface, about"),
                  filltable.surface_at_cm2(table, volume.value), measures.SQUARE_CENTIMETRES),
            told("ratio", t("Surface to volume"), ratio, measures.PER_CENTIMETRE, Span.BOUNDS),
            exact("brim", t("The highest mark holds"), table.brim_volume_l, Kind.VOLUME),
        ),
        says=t("{volume_low} to {volume_high}, with the doubt of ruler and measuring jug."),
        formulas=(
            Formula(t("Monotone cubic through your marks"), table.sources),
            Formula(t("Why the surface matters"), ratio.sources),
        ),
    )  # fmt: skip


def _table_height() -> Question:
    return Question(
        key="table_height",
        group=Group.VESSELS,
        title=t("Where does my mark for an amount go?"),
        purpose=t("From the marks you measured, the height of any other amount."),
        words=t("fill table measured marks height ruler"),
        fields=(
            number("asked_l", t("The amount"), Kind.VOLUME, 2.5),
            *_row_fields(),
        ),
        answer=_table_height_answered,
        renames=_TABLE_RENAMES,
    )


def _table_height_answered(given: Inputs) -> Answer:
    table = _table(given)
    height_cm = filltable.height_at(table, given.number("asked_l"))
    return Answer(
        lines=(exact("height", t("Mark it at"), height_cm, Kind.LENGTH),),
        says=t("{asked_l} stands {height} above the foot."),
        formulas=(Formula(t("Monotone cubic through your marks"), table.sources),),
    )


def _cups() -> Question:
    return Question(
        key="water_cups",
        group=Group.VESSELS,
        title=t("A volume in cups and spoons"),
        purpose=t("US cups and spoons that add up to about an amount."),
        words=t("kitchen measure cup tablespoon teaspoon"),
        fields=(number("volume_l", t("Amount"), Kind.VOLUME, 0.6),),
        answer=_cupped,
    )


def _cupped(given: Inputs) -> Answer:
    words = measure_words(kitchen.water_measures(given.number("volume_l")))
    return Answer(
        lines=(in_words("cups", t("About"), words or t("none")),),
        says=t("{volume_l} is about {cups}, level."),
        formulas=(
            Formula(t("US cup, a sixteenth of a gallon of 231 cubic inches"), ("usc_26_5052",)),
        ),
    )
