"""What a run-sheet timer says when it has ended: in the window and on the desktop."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from culturecore.stages import StepKind


def _t(text: str) -> str:
    return QCoreApplication.translate("Alarms", text)


def time_up_words(kind: StepKind) -> str:
    """Say what to do now that a step's time is over."""
    return {
        StepKind.BOIL: _t("Time is up: pour the water on the tea."),
        StepKind.STEEP: _t("Time is up: lift the tea out."),
        StepKind.DISSOLVE_SUGAR: _t("Time is up: look whether all sugar is dissolved."),
        StepKind.COOL: _t("Time is up: measure the temperature."),
    }.get(kind, _t("Time is up."))


def where_words(batch_name: str, vessel_name: str) -> str:
    """Say which batch a timer belongs to."""
    return _t("{batch} in {vessel}").format(batch=batch_name, vessel=vessel_name)
