"""What an act was, in a few words: for the undo menu, the notice bar and the journal.

The facts of an act carry every name and number, so that the words need no look-up and
stay true when a name changes later.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.acts import ActKind
from brewdesk.services.wording.amounts import Show, number_text, plain
from brewdesk.services.wording.bottlings import BOTTLE_WORDS
from brewdesk.services.wording.careacts import CARE_WORDS
from brewdesk.services.wording.readingsfile import import_readings
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.storesacts import STORES_WORDS
from brewdesk.services.wording.trialacts import TRIAL_WORDS
from brewdesk.store.records import Act
from culturecore.stages import CultureState, Look, Quantity, StepKind, TasteMark
from culturecore.units import Kind

Facts = Mapping[str, Any]
Words = Callable[[Facts, Show], str]


def _t(text: str) -> str:
    return QCoreApplication.translate("Acts", text)


def act_text(act: Act, show: Show = plain) -> str:
    """Say what was done, e.g. "pH 3.42 on Tall jar".

    ``show`` writes amounts in the maker's units; without it they are metric.
    """
    return _WORDS[ActKind(act.kind)](act.facts, show)


def undo_text(act: Act, show: Show = plain) -> str:
    """Name the menu entry that takes an act back."""
    return _t("Undo: {act}").format(act=act_text(act, show))


def redo_text(act: Act, show: Show = plain) -> str:
    """Name the menu entry that does an act again."""
    return _t("Redo: {act}").format(act=act_text(act, show))


def _add_place(facts: Facts, show: Show) -> str:
    temperature = show(facts["temperature_c"], Kind.TEMPERATURE)
    return _t("New place {name} at {temperature}").format(
        name=facts["name"], temperature=temperature
    )


def _edit_place(facts: Facts, show: Show) -> str:
    temperature = show(facts["temperature_c"], Kind.TEMPERATURE)
    return _t("{name} changed, now at {temperature}").format(
        name=facts["name"], temperature=temperature
    )


def _add_vessel(facts: Facts, show: Show) -> str:
    volume = show(facts["volume_l"], Kind.VOLUME)
    return _t("New vessel {name}, {volume}").format(name=facts["name"], volume=volume)


def _edited(facts: Facts, _show: Show) -> str:
    if facts["old_name"] != facts["name"]:
        return _t("{old_name} renamed {name}").format(
            old_name=facts["old_name"], name=facts["name"]
        )
    return _t("{name} changed").format(name=facts["name"])


def _retire_vessel(facts: Facts, _show: Show) -> str:
    return _t("{name} taken off the shelf").format(name=facts["name"])


def _restore_vessel(facts: Facts, _show: Show) -> str:
    return _t("{name} back on the shelf").format(name=facts["name"])


def _add_culture(facts: Facts, _show: Show) -> str:
    return _t("New culture {name}").format(name=facts["name"])


def _edit_culture(facts: Facts, show: Show) -> str:
    state = facts.get("state")
    if state is None:
        return _edited(facts, show)
    sentence = {
        CultureState.FORMING: _t("{name} is forming"),
        CultureState.AT_WORK: _t("{name} is at work"),
        CultureState.RESTING: _t("{name} is resting"),
        CultureState.RETIRED: _t("{name} retired"),
        CultureState.GIVEN_AWAY: _t("{name} given away"),
        CultureState.LOST: _t("{name} lost"),
    }[CultureState(state)]
    return sentence.format(name=facts["name"])


def _plan_batch(facts: Facts, show: Show) -> str:
    return _t("{name} planned, {volume} in {vessel}").format(
        name=facts["name"],
        volume=show(facts["fill_volume_l"], Kind.VOLUME),
        vessel=facts["vessel"],
    )


def _edit_plan(facts: Facts, _show: Show) -> str:
    return _t("Plan of {name} changed").format(name=facts["name"])


def _drop_plan(facts: Facts, _show: Show) -> str:
    return _t("Plan of {name} given up").format(name=facts["name"])


def _start_brew(facts: Facts, _show: Show) -> str:
    return _t("Brewing of {name} begun").format(name=facts["name"])


def _start_step(facts: Facts, _show: Show) -> str:
    return _step(facts, _t("{name}: “{step}” begun"))


def _pause_step(facts: Facts, _show: Show) -> str:
    return _step(facts, _t("{name}: “{step}” paused"))


def _resume_step(facts: Facts, _show: Show) -> str:
    return _step(facts, _t("{name}: “{step}” goes on"))


def _extend_step(facts: Facts, show: Show) -> str:
    time = show(facts["seconds"], Kind.DURATION)
    return _step(facts, _t("{name}: “{step}” given {time} more"), time=time)


def _finish_step(facts: Facts, show: Show) -> str:
    temperature_c, reason = facts["temperature_c"], facts["override_reason"]
    temperature = "" if temperature_c is None else show(temperature_c, Kind.TEMPERATURE)
    if reason and temperature:
        template = _t("{name}: “{step}” done at {temperature}, in spite of the warning: {reason}")
    elif reason:
        template = _t("{name}: “{step}” done, in spite of the warning: {reason}")
    elif temperature:
        template = _t("{name}: “{step}” done at {temperature}")
    else:
        template = _t("{name}: “{step}” done")
    return _step(facts, template, temperature=temperature, reason=reason)


def _start_souring(facts: Facts, _show: Show) -> str:
    return _t("{name} covered and souring").format(name=facts["name"])


def _note_already_in(facts: Facts, show: Show) -> str:
    temperature_c, reason = facts["temperature_c"], facts["override_reason"]
    if temperature_c is None:
        return _t("{name} entered as already souring, temperature not known: {reason}").format(
            name=facts["name"], reason=reason
        )
    temperature = show(temperature_c, Kind.TEMPERATURE)
    if reason:
        template = _t("{name} entered as already souring, begun at {temperature}: {reason}")
    else:
        template = _t("{name} entered as already souring, begun at {temperature}")
    return template.format(name=facts["name"], temperature=temperature, reason=reason)


def _add_readings(facts: Facts, show: Show) -> str:
    return _t("{readings} on {vessel}").format(
        readings=_listed(facts["readings"], show), vessel=facts["vessel"]
    )


def _edit_reading(facts: Facts, show: Show) -> str:
    old, new = _listed([facts["old"]], show), _listed(facts["readings"], show)
    if old == new:
        return _t("{readings} on {vessel} corrected").format(readings=new, vessel=facts["vessel"])
    return _t("{old} on {vessel} corrected to {readings}").format(
        old=old, readings=new, vessel=facts["vessel"]
    )


def _remove_reading(facts: Facts, show: Show) -> str:
    return _t("{readings} on {vessel} taken out").format(
        readings=_listed(facts["readings"], show), vessel=facts["vessel"]
    )


def _draw_off(facts: Facts, _show: Show) -> str:
    if facts["reason"]:
        return _t("{name} drawn off from {vessel}: {reason}").format(**facts)
    return _t("{name} drawn off from {vessel}").format(**facts)


def _close_batch(facts: Facts, _show: Show) -> str:
    return _t("{name} closed").format(name=facts["name"])


def _discard_batch(facts: Facts, _show: Show) -> str:
    if facts["culture_lost"]:
        return _t("{name} and its culture discarded: {reason}").format(**facts)
    return _t("{name} discarded: {reason}").format(**facts)


def _add_reminder(facts: Facts, _show: Show) -> str:
    return _t("Reminder “{reminder}” added").format(reminder=facts["reminder"])


def _snooze_reminder(facts: Facts, _show: Show) -> str:
    return _t("“{reminder}” put off").format(reminder=facts["reminder"])


def _finish_reminder(facts: Facts, _show: Show) -> str:
    return _t("“{reminder}” done").format(reminder=facts["reminder"])


def _step(facts: Facts, template: str, **more: str) -> str:
    return template.format(step=name_of(StepKind(facts["step"])), name=facts["name"], **more)


def _listed(readings: list[Facts], show: Show) -> str:
    parts = [reading_text(fact, show) for fact in readings]
    if len(parts) == 1:
        return parts[0]
    return _t("{first} and {last}").format(first=", ".join(parts[:-1]), last=parts[-1])


def reading_text(fact: Facts, show: Show = plain) -> str:
    """Say one reading: "pH 3.42", "23.5 °C", a taste or a note.

    ``fact`` holds the quantity's value, the number and the text.
    """
    quantity, value, text = Quantity(fact["quantity"]), fact["value"], fact["text"]
    if quantity is Quantity.NOTE:
        return _t("“{note}”").format(note=text)
    if quantity is Quantity.TASTE:
        return _t("Taste “{taste}”").format(taste=name_of(TasteMark(text)))
    if quantity is Quantity.LOOK:
        return _t("Look “{found}”").format(found=name_of(Look(text)))
    if quantity is Quantity.PELLICLE_MM:
        number = number_text(value, 0 if float(value).is_integer() else 1)
        return _t("Pellicle {number} mm").format(number=number)
    template, kind = {
        Quantity.PH: (_t("pH {amount}"), Kind.PH),
        Quantity.TEMPERATURE_C: ("{amount}", Kind.TEMPERATURE),
        Quantity.BRIX: ("{amount}", Kind.BRIX),
        Quantity.SPECIFIC_GRAVITY: (_t("SG {amount}"), Kind.GRAVITY),
        Quantity.TA_G_PER_L: (_t("Acidity {amount}"), Kind.ACIDITY),
    }[quantity]
    return template.format(amount=show(value, kind))


_WORDS: dict[ActKind, Words] = {
    ActKind.ADD_PLACE: _add_place,
    ActKind.EDIT_PLACE: _edit_place,
    ActKind.ADD_VESSEL: _add_vessel,
    ActKind.EDIT_VESSEL: _edited,
    ActKind.RETIRE_VESSEL: _retire_vessel,
    ActKind.RESTORE_VESSEL: _restore_vessel,
    ActKind.ADD_CULTURE: _add_culture,
    ActKind.EDIT_CULTURE: _edit_culture,
    ActKind.PLAN_BATCH: _plan_batch,
    ActKind.EDIT_PLAN: _edit_plan,
    ActKind.DROP_PLAN: _drop_plan,
    ActKind.START_BREW: _start_brew,
    ActKind.START_STEP: _start_step,
    ActKind.PAUSE_STEP: _pause_step,
    ActKind.RESUME_STEP: _resume_step,
    ActKind.EXTEND_STEP: _extend_step,
    ActKind.FINISH_STEP: _finish_step,
    ActKind.START_SOURING: _start_souring,
    ActKind.NOTE_ALREADY_IN: _note_already_in,
    ActKind.ADD_READINGS: _add_readings,
    ActKind.EDIT_READING: _edit_reading,
    ActKind.REMOVE_READING: _remove_reading,
    ActKind.DRAW_OFF: _draw_off,
    ActKind.CLOSE_BATCH: _close_batch,
    ActKind.DISCARD_BATCH: _discard_batch,
    ActKind.ADD_REMINDER: _add_reminder,
    ActKind.SNOOZE_REMINDER: _snooze_reminder,
    ActKind.FINISH_REMINDER: _finish_reminder,
    **CARE_WORDS,
    **BOTTLE_WORDS,
    **STORES_WORDS,
    **TRIAL_WORDS,
    ActKind.IMPORT_READINGS: import_readings,
}
