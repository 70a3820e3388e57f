"""What can be done with a souring jar's liquid, as the menus offer it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from brewdesk.services.drops import ChoiceKind

TOP_UP = "top_up"


@dataclass(frozen=True, slots=True)
class LiquidEntry:
    """A menu's entry: its key, its text, the title of its form, what the form offers."""

    key: str
    text: str
    title: str = ""
    kinds: tuple[ChoiceKind, ...] = ()


def _t(text: str) -> str:
    return QCoreApplication.translate("LiquidEntries", text)


def liquid_entries() -> tuple[LiquidEntry, ...]:
    """Return the entries in their order."""
    return (
        LiquidEntry(
            "draw_part",
            _t("Draw off part…"),
            _t("Draw off part of {name}"),
            (ChoiceKind.DRAW_PART,),
        ),
        LiquidEntry(
            "keep_starter",
            _t("Keep starter back…"),
            _t("Keep starter of {name}"),
            (ChoiceKind.KEEP, ChoiceKind.LEND),
        ),
        LiquidEntry(TOP_UP, _t("Top up…")),
        LiquidEntry(
            "pour_over",
            _t("Pour over into another vessel…"),
            _t("Pour {name} over"),
            (ChoiceKind.POUR_OVER,),
        ),
        LiquidEntry(
            "pour_together",
            _t("Pour together with another batch…"),
            _t("Pour {name} into another batch"),
            (ChoiceKind.MERGE_ALL, ChoiceKind.MERGE_PART),
        ),
    )
