"""What each step of the run sheet asks for, with the batch's own amounts in the sentence."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Batch, Kind, Step, StepKind
from brewdesk.services.wording.measures import (
    bag_words,
    sugar_measure_words,
    volume_measure_words,
    water_measure_words,
)
from brewdesk.services.wording.stages import name_of

_LEAST_G = 0.5  # less water than this is none


def _t(text: str) -> str:
    return QCoreApplication.translate("StepWords", text)


def step_words(step: Step, batch: Batch, quantities: Quantities) -> str:
    """Say what to do in one step."""
    show = quantities.show
    amounts = {
        "hot": show(batch.hot_water_g, Kind.MASS),
        "cold": show(batch.cold_water_g, Kind.MASS),
        "tea": show(batch.tea_g, Kind.MASS),
        "kind": name_of(batch.tea_kind),
        "sugar": show(batch.sugar_g, Kind.MASS),
        "starter": _volume(batch.starter_volume_l, quantities),
        "hot_measure": water_measure_words(batch.hot_water_g),
        "cold_measure": water_measure_words(batch.cold_water_g),
        "bags": bag_words(batch.tea_g, batch.bag_g),
        "sugar_measure": sugar_measure_words(batch.sugar_g),
        "starter_measure": volume_measure_words(batch.starter_volume_l),
        "limit": show(batch.culture_limit_c, Kind.TEMPERATURE),
    }
    if step.kind is StepKind.ADD_COLD_WATER and batch.cold_water_g < _LEAST_G:
        return _t("This batch needs no cold water.")
    return _sentences()[step.kind].format(**amounts)


def _volume(volume_l: float, quantities: Quantities) -> str:
    """Write a volume; less than a litre in the millilitres that jugs are marked with."""
    if quantities.unit(Kind.VOLUME) == "L" and volume_l < 1.0:
        return _t("{number} mL").format(number=round(volume_l * 1000.0))
    return quantities.show(volume_l, Kind.VOLUME)


def _sentences() -> dict[StepKind, str]:
    return {
        StepKind.BOIL: _t("Bring {hot} of water ({hot_measure}) to a rolling boil."),
        StepKind.STEEP: _t("Pour the {hot} of boiling water on {tea} of tea ({kind}, {bags})."),
        StepKind.LIFT_TEA: _t("Lift the tea out and let it drip off."),
        StepKind.DISSOLVE_SUGAR: _t(
            "Stir in {sugar} of sugar ({sugar_measure}) until no grain is left."
        ),
        StepKind.ADD_COLD_WATER: _t("Add {cold} of cold water ({cold_measure})."),
        StepKind.COOL: _t("Let it stand covered until it is at {limit} or below, then measure."),
        StepKind.STARTER_IN: _t("Pour in {starter} of starter ({starter_measure}) and stir once."),
        StepKind.CULTURE_IN: _t("Slide the culture in with clean hands."),
        StepKind.COVER: _t("Cover with a tightly woven cloth and tie it down."),
    }


def countdown_words(remaining_s: float) -> str:
    """Write the time left as m:ss or h:mm:ss; time past the end with a plus."""
    seconds = int(-(-remaining_s // 1)) if remaining_s > 0 else int(-remaining_s)
    minutes, second = divmod(seconds, 60)
    hours, minute = divmod(minutes, 60)
    text = f"{hours}:{minute:02d}:{second:02d}" if hours else f"{minute}:{second:02d}"
    return text if remaining_s > 0 or seconds == 0 else f"+{text}"


def length_words(planned_s: float) -> str:
    """Write a planned time: "10 min", "2 h 5 min"."""
    minutes = round(planned_s / 60)
    if minutes < 60:
        return _t("{minutes} min").format(minutes=minutes)
    hours, rest = divmod(minutes, 60)
    if not rest:
        return _t("{hours} h").format(hours=hours)
    return _t("{hours} h {minutes} min").format(hours=hours, minutes=rest)
