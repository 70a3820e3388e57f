"""All questions in the order of the list."""

from __future__ import annotations

from brewdesk.services.reckoner import (
    acidity,
    alcohol,
    fizz,
    heat,
    label,
    limits,
    meter,
    sugar,
    tea,
    vessels,
)
from brewdesk.services.reckoner.naming import t
from brewdesk.services.reckoner.question import Group, Question


def all_questions() -> tuple[Question, ...]:
    """Return every question, made in the language in use now."""
    return tuple(
        question
        for module in (
            tea, acidity, meter, sugar, heat, vessels, fizz, alcohol, label, limits,
        )
        for question in module.questions()
    )  # fmt: skip


def group_name(group: Group) -> str:
    """Name a group of questions."""
    return {
        Group.STARTER: t("Tea and starter"),
        Group.ACIDITY: t("Acidity and meter"),
        Group.SUGAR: t("Sugar"),
        Group.HEAT: t("Heat"),
        Group.VESSELS: t("Vessels"),
        Group.FIZZ: t("Bottles and fizz"),
        Group.ALCOHOL: t("Alcohol"),
        Group.LABEL: t("Label and cost"),
        Group.SAFETY: t("Limits and safety"),
    }[group]
