"""What was done to cultures, liquids, photos and places, in a few words.

The facts of an act carry every name and number, as in ``acts``.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.acts import ActKind
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.stages import name_of
from culturecore.stages import CareKind, Look, TransferKind
from culturecore.units import Kind

Facts = Mapping[str, Any]
Words = Callable[[Facts, Show], str]


def _t(text: str) -> str:
    return QCoreApplication.translate("CareActs", text)


def _volume(facts: Facts, show: Show) -> str:
    return show(facts["volume_l"], Kind.VOLUME)


def _split_culture(facts: Facts, _show: Show) -> str:
    if facts["vessel"] is None:
        return _t("{name} split from {parent}").format(**facts)
    return _t("{name} split from {parent} into {vessel}").format(**facts)


def _merge_cultures(facts: Facts, _show: Show) -> str:
    return _t("{parents} merged into {name}").format(
        name=facts["name"], parents=", ".join(facts["parents"])
    )


def _move_culture(facts: Facts, _show: Show) -> str:
    if facts["vessel"] is None:
        return _t("{name} taken out of its vessel").format(name=facts["name"])
    return _t("{name} moved to {vessel}").format(name=facts["name"], vessel=facts["vessel"])


def _rest_culture(facts: Facts, show: Show) -> str:
    return _t("{name} put to rest in {vessel}, {volume}").format(
        name=facts["name"], vessel=facts["vessel"], volume=_volume(facts, show)
    )


def _feed_culture(facts: Facts, show: Show) -> str:
    return _t("{name} fed with {volume}").format(name=facts["name"], volume=_volume(facts, show))


def _top_up_culture(facts: Facts, show: Show) -> str:
    return _t("{name} topped up with {volume}").format(
        name=facts["name"], volume=_volume(facts, show)
    )


def _care_for_culture(facts: Facts, show: Show) -> str:
    kind, name = CareKind(facts["care"]), facts["name"]
    if kind is CareKind.LOOKED:
        found = name_of(Look(facts["look"]))
        return _t("{name} looked at: {found}").format(name=name, found=found)
    if kind is CareKind.PH:
        return _t("pH {ph} of {name}").format(ph=show(facts["ph"], Kind.PH), name=name)
    return _t("{care}: {name}").format(care=name_of(kind), name=name)


def _give_culture(facts: Facts, _show: Show) -> str:
    if facts["to"]:
        return _t("{name} given to {to}").format(name=facts["name"], to=facts["to"])
    return _t("{name} given away").format(name=facts["name"])


def _retire_culture(facts: Facts, _show: Show) -> str:
    return _t("{name} retired").format(name=facts["name"])


def _lose_culture(facts: Facts, _show: Show) -> str:
    if facts["flagged"]:
        return _t("{name} lost: {reason}; flagged with it: {flagged}").format(
            name=facts["name"], reason=facts["reason"], flagged=", ".join(facts["flagged"])
        )
    return _t("{name} lost: {reason}").format(name=facts["name"], reason=facts["reason"])


def _clear_suspicion(facts: Facts, _show: Show) -> str:
    return _t("{name} cleared of suspicion").format(name=facts["name"])


def _start_growing(facts: Facts, _show: Show) -> str:
    return _t("{name}: growing a culture in {vessel}").format(
        name=facts["name"], vessel=facts["vessel"]
    )


def _finish_growing(facts: Facts, _show: Show) -> str:
    return _t("{name} has grown").format(name=facts["name"])


def _draw_part(facts: Facts, show: Show) -> str:
    template = {
        TransferKind.DRINK: _t("{volume} of {name} drawn off"),
        TransferKind.SAMPLE: _t("{volume} of {name} taken as a sample"),
        TransferKind.LOSS: _t("{volume} of {name} lost"),
    }[TransferKind(facts["kind"])]
    return template.format(volume=_volume(facts, show), name=facts["name"])


def _keep_starter(facts: Facts, show: Show) -> str:
    return _t("{volume} of {name} kept as starter with {to}").format(
        volume=_volume(facts, show), name=facts["name"], to=facts["to"]
    )


def _top_up_batch(facts: Facts, show: Show) -> str:
    return _t("{name} topped up with {volume} of sweet tea").format(
        volume=_volume(facts, show), name=facts["name"]
    )


def _merge_batches(facts: Facts, show: Show) -> str:
    return _t("{volume} of {name} poured into {into}").format(
        volume=_volume(facts, show), name=facts["name"], into=facts["into"]
    )


def _move_batch(facts: Facts, _show: Show) -> str:
    return _t("{name} poured over into {vessel}").format(name=facts["name"], vessel=facts["vessel"])


def _lend_starter(facts: Facts, show: Show) -> str:
    return _t("{volume} of starter lent by {name} to {to}").format(
        volume=_volume(facts, show), name=facts["name"], to=facts["to"]
    )


def _add_photos(facts: Facts, _show: Show) -> str:
    if facts["count"] == 1:
        return _t("Photo of {name} added").format(name=facts["name"])
    return _t("{count} photos of {name} added").format(
        count=number_text(facts["count"], 0), name=facts["name"]
    )


def _edit_photo(facts: Facts, _show: Show) -> str:
    return _t("Caption of a photo of {name} changed").format(name=facts["name"])


def _remove_photo(facts: Facts, _show: Show) -> str:
    return _t("Photo of {name} removed").format(name=facts["name"])


def _remove_place(facts: Facts, _show: Show) -> str:
    return _t("{name} removed").format(name=facts["name"])


def _read_place(facts: Facts, show: Show) -> str:
    return _t("{temperature} in {name}").format(
        temperature=show(facts["temperature_c"], Kind.TEMPERATURE), name=facts["name"]
    )


def _drop_place_reading(facts: Facts, show: Show) -> str:
    return _t("{temperature} in {name} taken out").format(
        temperature=show(facts["temperature_c"], Kind.TEMPERATURE), name=facts["name"]
    )


def _import_temperatures(facts: Facts, _show: Show) -> str:
    return _t("{count} temperatures of {name} read from {file}").format(
        count=number_text(facts["count"], 0), name=facts["name"], file=facts["file"]
    )


def _drop_temperatures(facts: Facts, _show: Show) -> str:
    return _t("Temperatures of {name} from {file} taken out").format(
        name=facts["name"], file=facts["file"]
    )


def _record_calibration(facts: Facts, _show: Show) -> str:
    if facts["slope_percent"] is None:
        return _t("{meter} calibrated").format(meter=facts["meter"])
    return _t("{meter} calibrated, slope {slope} %").format(
        meter=facts["meter"], slope=number_text(facts["slope_percent"], 1)
    )


CARE_WORDS: dict[ActKind, Words] = {
    ActKind.SPLIT_CULTURE: _split_culture,
    ActKind.MERGE_CULTURES: _merge_cultures,
    ActKind.MOVE_CULTURE: _move_culture,
    ActKind.REST_CULTURE: _rest_culture,
    ActKind.FEED_CULTURE: _feed_culture,
    ActKind.TOP_UP_CULTURE: _top_up_culture,
    ActKind.CARE_FOR_CULTURE: _care_for_culture,
    ActKind.GIVE_CULTURE: _give_culture,
    ActKind.RETIRE_CULTURE: _retire_culture,
    ActKind.LOSE_CULTURE: _lose_culture,
    ActKind.CLEAR_SUSPICION: _clear_suspicion,
    ActKind.START_GROWING: _start_growing,
    ActKind.FINISH_GROWING: _finish_growing,
    ActKind.DRAW_PART: _draw_part,
    ActKind.KEEP_STARTER: _keep_starter,
    ActKind.TOP_UP_BATCH: _top_up_batch,
    ActKind.MERGE_BATCHES: _merge_batches,
    ActKind.MOVE_BATCH: _move_batch,
    ActKind.LEND_STARTER: _lend_starter,
    ActKind.ADD_PHOTOS: _add_photos,
    ActKind.EDIT_PHOTO: _edit_photo,
    ActKind.REMOVE_PHOTO: _remove_photo,
    ActKind.REMOVE_PLACE: _remove_place,
    ActKind.READ_PLACE: _read_place,
    ActKind.DROP_PLACE_READING: _drop_place_reading,
    ActKind.IMPORT_TEMPERATURES: _import_temperatures,
    ActKind.DROP_TEMPERATURES: _drop_temperatures,
    ActKind.RECORD_CALIBRATION: _record_calibration,
}
