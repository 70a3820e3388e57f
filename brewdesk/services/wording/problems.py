"""What is wrong with an entry or with the disk: what happened, what to do."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording import bottlings, labels, liquids, stores, trials
from brewdesk.services.wording.amounts import Show, decimals_for, number_text, plain
from brewdesk.store.errors import ChangedElsewhere, StoreTrouble
from culturecore.errors import ImpossibleInput
from culturecore.units import Kind, NotAQuantity

_KIND_OF_UNIT = {
    "L": Kind.VOLUME,
    "g": Kind.MASS,
    "degC": Kind.TEMPERATURE,
    "°C": Kind.TEMPERATURE,
    "cm": Kind.LENGTH,
    "g/L": Kind.SUGAR,
    "meq/L": Kind.ALKALINITY,
    "pH": Kind.PH,
    "s": Kind.DURATION,
}


def _t(text: str) -> str:
    return QCoreApplication.translate("Problems", text)


def impossible_words(error: ImpossibleInput, show: Show = plain) -> str:
    """Say why a value cannot be, and which would do, in one or two sentences.

    ``show`` writes amounts in the maker's units; without it they are metric.
    """
    reasons = _reasons() | liquids.problems() | bottlings.problems() | labels.problems()
    reasons = stores.problems() | reasons | trials.problems()
    special = reasons.get((error.field, error.reason)) or reasons.get(("", error.reason))
    if special is not None:
        return special.format(
            value=error.value,
            low=_amount(error.low, error.unit, show),
            high=_amount(error.high, error.unit, show),
        )
    low, high = error.low, error.high
    labels_by_field = stores.labels() | _labels() | bottlings.labels() | trials.labels()
    label = labels_by_field.get(error.field, _t("This value"))
    texts = {
        "label": label,
        "low": _amount(low, error.unit, show),
        "high": _amount(high, error.unit, show),
    }
    if low is not None and high is not None:
        return _t("{label} must lie between {low} and {high}.").format(**texts)
    if low is not None:
        return _t("{label} must be at least {low}.").format(**texts)
    if high is not None:
        return _t("{label} must be at most {high}.").format(**texts)
    return _t("{label} cannot be that. Please check it.").format(**texts)


def quantity_words(error: NotAQuantity) -> str:
    """Say why what was typed is no amount, and how to write it."""
    sentence = {
        "empty": _t("Please type an amount."),
        "no_number": _t("There is no number in “{text}”. Type it as in “3.8 L” or “3 1/2 cups”."),
        "ambiguous_number": _t(
            "“{part}” can be read in more than one way. Type the number without grouping, "
            "as in “1500” or “1.5”."
        ),
        "unknown_unit": _t("The unit “{part}” is not known here."),
        "wrong_kind": _t("“{part}” is a unit of something else."),
        "not_finite": _t("“{part}” is not a number that can be measured."),
    }[error.reason]
    return sentence.format(text=error.text, part=error.part or error.text)


def trouble_words(trouble: StoreTrouble) -> str:
    """Say what keeps records from being kept, what it means for the brew, what to do."""
    sentences = {
        "newer_file": _t(
            "This pantry was last used by a newer version of the program. Nothing in it was "
            "touched. Please install the newer version to open it."
        ),
        "not_a_store": _t(
            "This file is not a pantry of this program. It was left as it is. "
            "Please choose another."
        ),
        "damaged": _t(
            "The pantry file is damaged and was left as it is. Your jars are not affected; "
            "please open the latest backup."
        ),
        "empty_file": _t(
            "The pantry file is empty, as after a copy that broke off. "
            "Please open the latest backup."
        ),
        "disk_full": _t(
            "The disk is full, so nothing was saved. Please free some space and try again."
        ),
        "read_only": _t(
            "The pantry file may not be written to, so nothing was saved. Please check the "
            "rights of its folder."
        ),
        "locked": _t(
            "Another program is using the pantry file, so nothing was saved. Please close it "
            "and try again."
        ),
        "io_error": _t(
            "The disk did not answer as it should, so nothing was saved. Please make sure that "
            "it is still connected, and try again."
        ),
        "cannot_open": _t(
            "The pantry file cannot be opened. Please check that it is in its place."
        ),
        "file_gone": _t(
            "The pantry file is no longer in its place, so nothing was saved. Please put it "
            "back, or open the latest backup."
        ),
        "file_replaced": _t(
            "The pantry file was replaced by another while the program was open, so nothing was "
            "saved. Please close the program and start it again."
        ),
        "migration_failed": _t(
            "The pantry could not be brought up to this version of the program. It was left as "
            "it was; a backup lies beside it."
        ),
        "not_rescued": _t(
            "Nothing can be read out of the damaged file any more. It was left as it is."
        ),
        "backup_failed": _t("No backup could be made, so nothing was changed."),
        "no_such_row": _t("This entry is no longer there. It may have been taken back meanwhile."),
        "stale_row": _t(
            "This cannot be taken back any more, because something it touched has changed since."
        ),
        "row_refused": _t("This does not fit with what is kept already, so nothing was saved."),
    }
    sentences |= _server_sentences()
    if isinstance(trouble, ChangedElsewhere):
        return _changed_elsewhere(trouble)
    fallback = _t("The pantry file could not be used, so nothing was saved. Please try again.")
    return sentences.get(trouble.code, fallback)


def _server_sentences() -> dict[str, str]:
    """Return what can be wrong with a pantry on a server."""
    return {
        "bad_address": _t(
            "The address of the shared pantry cannot be read. It begins with "
            "“postgresql+psycopg://” and names a database. Please put it right and start again."
        ),
        "no_driver": _t(
            "A shared pantry needs the part of the program that speaks with servers, and it is "
            "not installed. Please install “brewdesk[desks]” and start again."
        ),
        "not_connected": _t(
            "The server with your pantry does not answer, so nothing was saved. Please make sure "
            "that it is running and that this computer reaches it, and try again."
        ),
        "not_let_in": _t(
            "The server with your pantry does not let this desk in: the name, the password, the "
            "database or its rights are not as the server has them. Nothing was saved."
        ),
        "older_server": _t(
            "The shared pantry was laid out by an older version that this one cannot bring up to "
            "date. It was left as it is. Please move it to a file with the older version, and "
            "back to the server with this one."
        ),
        "not_utf8": _t(
            "The database of the shared pantry does not keep text as UTF-8, so it would lose "
            "letters. Nothing was changed. Please make a database with that encoding."
        ),
        "no_pantry_there": _t(
            "There is no pantry in this database yet, so there is nothing to move."
        ),
        "not_empty": _t(
            "There is a pantry already where this one was to go. Nothing was changed there."
        ),
    }


def _changed_elsewhere(trouble: ChangedElsewhere) -> str:
    things = {
        "place": _t("this place"),
        "vessel": _t("this jar"),
        "culture": _t("this culture"),
        "batch": _t("this batch"),
        "step": _t("this step"),
        "reading": _t("this reading"),
        "reminder": _t("this reminder"),
        "bottling": _t("these bottles"),
        "photo": _t("this photo"),
    }
    sentence = (
        _t(
            "The desk “{desk}” changed {thing} a moment ago, so nothing was saved. Please look "
            "at what it is now, and try again."
        )
        if trouble.desk_name
        else _t(
            "Another desk changed {thing} a moment ago, so nothing was saved. Please look at "
            "what it is now, and try again."
        )
    )
    return sentence.format(
        desk=trouble.desk_name, thing=things.get(trouble.table, _t("what this is about"))
    )


def _amount(value: float | None, unit: str, show: Show) -> str:
    if value is None:
        return ""
    if unit in _KIND_OF_UNIT:
        return show(value, _KIND_OF_UNIT[unit])
    decimals = 0 if float(value).is_integer() else max(1, decimals_for(value, Kind.MASS))
    number = number_text(value, decimals)
    return f"{number} {unit}" if unit else number


def _labels() -> dict[str, str]:
    return {
        "brim_volume_l": _t("The volume to the brim"),
        "working_volume_l": _t("The working volume"),
        "inner_diameter_cm": _t("The inner diameter"),
        "temperature_c": _t("The temperature"),
        "pellicle_mm": _t("The thickness of the pellicle"),
        "fill_volume_l": _t("The amount to make"),
        "sugar_g_per_l": _t("The sugar"),
        "tea_g_per_l": _t("The tea"),
        "bag_g": _t("The tea in one bag"),
        "ph": _t("The pH"),
        "starter_ph": _t("The pH of the starter"),
        "ta_g_per_l": _t("The titratable acidity"),
        "starter_ta_g_per_l": _t("The titratable acidity of the starter"),
        "starter": _t("The starter"),
        "starter_volume_l": _t("The amount of starter"),
        "target_start_ph": _t("The pH to start at"),
        "water_alkalinity_meq_per_l": _t("The alkalinity of the water"),
        "hot_water_c": _t("The temperature of the hot water"),
        "cold_water_c": _t("The temperature of the cold water"),
        "culture_limit_c": _t("The warmest temperature for the culture"),
        "place_temperature_c": _t("The temperature of the place"),
        "brix": _t("The Brix reading"),
        "specific_gravity": _t("The specific gravity"),
        "sd": _t("The uncertainty"),
        "seconds": _t("The extra time"),
        "volume_l": _t("The amount"),
        "rest_volume_l": _t("The amount it rests in"),
        "sugar_g": _t("The sugar"),
        "first_taste_ph": _t("The pH at which you first taste"),
        "too_sour_ph": _t("The pH that is too sour for you"),
        "text_scale": _t("The size of the text"),
        "kept_l": _t("The amount kept back"),
    }


def _reasons() -> dict[tuple[str, str], str]:
    """Return sentences by (field, reason); an empty field stands for any other."""
    return {
        ("name", "empty"): _t("Please give it a name."),
        ("name", "taken"): _t("Another one has this name already. Please choose another name."),
        ("name", "too_long"): _t("This name is too long for a label. Please shorten it."),
        ("reason", "empty"): _t("Please write down why."),
        ("text", "empty"): _t("Please write something."),
        ("text", "too_long"): _t("Please keep it shorter."),
        ("drafts", "empty"): _t("Please enter at least one reading."),
        ("meter", "too_long"): _t("This name is too long for a label. Please shorten it."),
        ("", "not_finite"): _t("This is not a number that can be measured."),
        ("", "empty"): _t("Please fill this in."),
        ("", "above_brim"): _t("That does not fit: the vessel holds {high} to the brim."),
        ("", "below_fill"): _t("There are {low} in it now, so it must hold at least that much."),
        ("", "proportions"): _t(
            "A vessel of this volume cannot have this diameter. Please check both, and their units."
        ),
        ("vessel_id", "material"): _t(
            "This vessel's material must not touch kombucha. Please choose another vessel."
        ),
        ("vessel_id", "occupied"): _t("There is a batch in this vessel already."),
        ("vessel_id", "resting_culture"): _t(
            "Another culture rests in this vessel. Move it first, or choose another vessel."
        ),
        ("vessel_id", "holds_culture"): _t("There is a culture in this vessel. Move it first."),
        ("vessel_id", "retired"): _t("This vessel is off the shelf. Put it back first."),
        ("culture_id", "gone"): _t("This culture is no longer there."),
        ("culture_id", "suspect"): _t(
            "It may carry mold. Look at it closely and clear it first, with your "
            "reason; when in doubt, throw it out."
        ),
        ("culture_id", "forming"): _t("It is still forming. Wait until it has grown."),
        ("culture_id", "not_resting"): _t("It is not at rest now."),
        ("culture_id", "planned"): _t("It is planned for {value}. Change or drop that plan first."),
        ("", "not_suspect"): _t("It is not under suspicion."),
        ("batch_id", "not_growing"): _t("No culture is growing in this batch."),
        ("culture_ids", "too_few"): _t("Choose at least one other culture to merge with."),
        ("vessel_id", "already_there"): _t("It is there already."),
        ("to", "too_long"): _t("Please keep it shorter."),
        ("", "before_birth"): _t("This is before the culture was born. Please check the date."),
        ("born_at", "before_parent"): _t("A culture cannot be older than its parent."),
        ("", "in_future"): _t("This time has not come yet. Please check the date and time."),
        ("at", "before_start"): _t(
            "This is before the batch was begun. Please check the date and time."
        ),
        ("until", "not_in_future"): _t("Please choose a time that is still to come."),
        ("batch_id", "not_begun"): _t("This batch is only planned; there is nothing to see of it."),
        ("batch_id", "not_planned"): _t("Brewing has begun, so the plan stands."),
        ("batch_id", "not_souring"): _t("Only a batch that is souring can be drawn off."),
        ("batch_id", "not_drawn_off"): _t("Only a batch that was drawn off can be closed."),
        ("batch_id", "already_ended"): _t("This batch has ended already."),
        ("step_id", "not_brewing"): _t("This batch is not being brewed."),
        ("step_id", "not_waiting"): _t("This step was begun already."),
        ("step_id", "not_running"): _t("This step is not under way."),
        ("step_id", "not_paused"): _t("This step is not paused."),
        ("step_id", "done"): _t("This step is done already."),
        ("step_id", "nothing_live_in"): _t(
            "Neither starter nor culture is in yet. Tick that step off first, then cover the "
            "vessel."
        ),
        ("method", "wrong_method"): _t("This cannot be measured that way."),
        ("drafts", "several_batches"): _t("Readings of several batches are kept one by one."),
        ("samples", "empty"): _t("There is no temperature in this file that can be read."),
        ("samples", "taken"): _t("The same temperatures are in this place's log already."),
        ("place_id", "vessels_here"): _t(
            "Vessels stand here. Give them another place first (Edit vessel), then remove it."
        ),
        ("place_id", "retired_vessels_here"): _t(
            "Retired vessels belong here. Put them back on the shelf and give them another place "
            "first, then remove it."
        ),
        ("", "not_offered"): _t("Please choose one of those offered."),
        ("", "wrong_type"): _t("Please choose one of those offered."),
        ("", "band_upside_down"): _t(
            "The pH for first tasting must be above the pH that is too sour for you."
        ),
    }
