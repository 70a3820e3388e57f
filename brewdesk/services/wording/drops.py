"""What can be done at a drop, and why something cannot be put down there."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication

from brewdesk.services.drops import Choice, ChoiceKind, Drop, Tray
from brewdesk.services.wording.amounts import Show, plain
from brewdesk.services.wording.verdicts import verdict_words
from culturecore.units import Kind


def _t(text: str) -> str:
    return QCoreApplication.translate("Drops", text)


def refusal_words(drop: Drop, show: Show = plain) -> str:
    """Say in whole sentences why something cannot be put down; empty if it can."""
    if drop.refusal is None:
        return ""
    sentence = _refusals().get(drop.refusal.code)
    if sentence is not None:
        return sentence.format_map(drop.names)
    words = verdict_words(drop.refusal, show)
    return " ".join(part for part in (words.fact, words.what_to_do) if part)


def choice_words(choice: Choice, names: Mapping[str, str]) -> str:
    """Say what a choice does, as the text of a button or a menu entry."""
    return _choices()[choice.kind].format_map(names)


def choice_detail(choice: Choice, names: Mapping[str, str], show: Show = plain) -> str:
    """Say what comes of a choice, in a sentence."""
    texts = {"most": "" if choice.most_l is None else show(choice.most_l, Kind.VOLUME)}
    kind = choice.kind
    if kind is ChoiceKind.LEND and choice.to_batch_id is None:
        return _t("A plan is opened for {target}, with this starter in it.").format_map(names)
    return _details()[kind].format_map({**names, **texts})


def tray_words(tray: Tray) -> tuple[str, str]:
    """Return a tray's name, and what it is for."""
    return {
        Tray.RESTING: (_t("To rest"), _t("Put a culture to rest, or keep starter with one")),
        Tray.BOTTLES: (_t("Bottles"), _t("Bottle a batch, or draw it off, all or part of it")),
    }[tray]


def allowed_words(drop: Drop) -> str:
    """Say what could be done here, as a short list."""
    words = (choice_words(choice, drop.names).rstrip("…") for choice in drop.choices)
    return _t(" · ").join(words)


def picked_up_words(name: str) -> str:
    """Say that something was picked up, and how to go on by keys."""
    return _t(
        "{name} picked up. Arrow keys go to where it shall be put, Enter puts it down, Escape "
        "gives up."
    ).format(name=name)


def _choices() -> dict[ChoiceKind, str]:
    return {
        ChoiceKind.MOVE_CULTURE: _t("Move {carried} here"),
        ChoiceKind.USE_IN_PLAN: _t("Let {carried} work in {other}"),
        ChoiceKind.PUT_IN: _t("Put {carried} in now"),
        ChoiceKind.SPLIT_CULTURE: _t("Split {carried}…"),
        ChoiceKind.REST: _t("Put {carried} to rest…"),
        ChoiceKind.LEND: _t("Lend starter…"),
        ChoiceKind.POUR_OVER: _t("Pour {carried} over"),
        ChoiceKind.MERGE_ALL: _t("Pour all of it in…"),
        ChoiceKind.MERGE_PART: _t("Pour part of it in…"),
        ChoiceKind.KEEP: _t("Keep starter with it…"),
        ChoiceKind.FILL_BOTTLES: _t("Fill bottles…"),
        ChoiceKind.DRAW_PART: _t("Draw off part…"),
        ChoiceKind.DRAW_OFF: _t("Draw all of it off…"),
    }


def _details() -> dict[ChoiceKind, str]:
    return {
        ChoiceKind.MOVE_CULTURE: _t("It goes into {target} with what it rests in."),
        ChoiceKind.USE_IN_PLAN: _t("The plan takes it as its culture."),
        ChoiceKind.PUT_IN: _t("The step on the run sheet is ticked off."),
        ChoiceKind.SPLIT_CULTURE: _t("A daughter of it goes into {target}; it stays where it is."),
        ChoiceKind.REST: _t("It rests in ripe kombucha, in a vessel you choose."),
        ChoiceKind.LEND: _t("{other} is reckoned anew with this starter. There are {most}."),
        ChoiceKind.POUR_OVER: _t("All of it goes into {target}, and its culture with it."),
        ChoiceKind.MERGE_ALL: _t("{carried} ends with it; {other} goes on with both."),
        ChoiceKind.MERGE_PART: _t("Both go on. Up to {most} fit."),
        ChoiceKind.KEEP: _t("It is poured to the culture that rests there. Up to {most} fit."),
        ChoiceKind.FILL_BOTTLES: _t(
            "Bottles, sugar and fizz are worked out first, and the day to chill by."
        ),
        ChoiceKind.DRAW_PART: _t("The rest sours on. There are {most}."),
        ChoiceKind.DRAW_OFF: _t("The batch ends; its culture rests in the jar."),
    }


def _refusals() -> dict[str, str]:
    look = _t("Look at it closely and clear it first; when in doubt, throw it out.")
    return {
        "drop_gone": _t("This is no longer there."),
        "drop_no_target": _t("There is nothing to put it down on here."),
        "drop_carried_suspect": _t("{carried} may carry mold. ") + look,
        "drop_target_suspect": _t("{other} in {target} may carry mold. ") + look,
        "drop_forming": _t("{carried} is still forming. Let it grow firm before you carry it."),
        "drop_culture_no_drink": _t(
            "{carried} is a culture, not a drink. Drag its jar here to draw the batch off."
        ),
        "drop_at_work": _t("{carried} is at work. It comes to rest when its batch is drawn off."),
        "drop_rests_already": _t("{carried} rests already. Drag it onto a vessel to move it."),
        "drop_no_vessel_free": _t(
            "No vessel is free for it to rest in. Add one, or draw a batch off first."
        ),
        "drop_retired": _t("{target} is off the shelf. Put it back first."),
        "drop_same_place": _t("It is in {target} already."),
        "drop_occupied": _t("{other} is souring in {target}. One batch at a time."),
        "drop_planned_with_it": _t(
            "{other} is planned with {carried} already, and there is no starter to lend."
        ),
        "drop_brewed_for_another": _t("{other} is being brewed for another culture."),
        "drop_starter_first": _t(
            "The culture does not go into {other} at this step. See its run sheet."
        ),
        "drop_not_brewed_yet": _t("{carried} is a plan: there is nothing to pour yet."),
        "drop_still_brewing": _t(
            "{carried} is still being brewed. It can be poured once it is covered and sours."
        ),
        "drop_nothing_left": _t("There is nothing left of {carried} to pour."),
        "drop_no_store": _t(
            "No culture rests in a vessel with room for starter. Put one to rest first."
        ),
        "drop_no_room": _t("{target} is full to the brim. Draw some of it off first."),
        "culture_temperature_unknown": _t(
            "It is not known whether {other} is cool enough yet. Measure it, and enter it on its "
            "run sheet."
        ),
        "culture_too_warm": _t("{other} is still too hot for anything live. Let it cool first."),
        "culture_far_too_warm": _t(
            "{other} is far too hot: anything live would die in it. Let it cool first."
        ),
        "drop_tea_not_ready": _t(
            "{other} is on its run sheet. Its starter goes in there, at its own step."
        ),
    }
