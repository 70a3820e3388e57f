"""Acts on trials in a few words. None names a level: the trial may be blind."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.acts import ActKind
from brewdesk.services.wording.amounts import Show

Facts = Mapping[str, Any]


def _t(text: str) -> str:
    return QCoreApplication.translate("TrialActs", text)


def _said(template: Callable[[], str]) -> Callable[[Facts, Show], str]:
    """Return words that fill a template, translated when they are asked for."""
    return lambda facts, _show: template().format(**facts)


def _edited(facts: Facts, _show: Show) -> str:
    if facts["old_name"] != facts["name"]:
        return _t("Trial {old_name} renamed {name}").format(**facts)
    return _t("Trial {name} changed").format(**facts)


TRIAL_WORDS: dict[ActKind, Callable[[Facts, Show], str]] = {
    ActKind.PLAN_TRIAL: _said(lambda: _t("Trial {name} planned, {jars} jars")),
    ActKind.EDIT_TRIAL: _edited,
    ActKind.START_TRIAL: _said(lambda: _t("Trial {name} started: {jars} batches planned")),
    ActKind.ATTACH_TO_TRIAL: _said(lambda: _t("{batch} taken into the trial {name}")),
    ActKind.LEAVE_OUT_JAR: _said(lambda: _t("{code} left out of the trial {name}: {reason}")),
    ActKind.TAKE_JAR_BACK: _said(lambda: _t("{code} counted again in the trial {name}")),
    ActKind.TASTE_TRIAL: _said(lambda: _t("{jars} jars of the trial {name} tasted")),
    ActKind.REMOVE_TRIAL_SCORE: _said(
        lambda: _t("Tasting of {code} in the trial {name} taken out")
    ),
    ActKind.REVEAL_TRIAL: _said(lambda: _t("Codes of the trial {name} opened")),
    ActKind.END_TRIAL: _said(lambda: _t("Trial {name} ended")),
    ActKind.DROP_TRIAL: _said(lambda: _t("Trial {name} given up")),
}
