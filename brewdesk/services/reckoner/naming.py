"""Words for what may be chosen in a question."""

from __future__ import annotations

from enum import Enum

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.reckonernames import choice_name

Options = tuple[tuple[Enum | str | bool | None, str], ...]


def t(text: str) -> str:
    """Translate a text of a question."""
    return QCoreApplication.translate("Reckoner", text)


def names(kind: type[Enum]) -> Options:
    """Offer every member of an enum by its name."""
    return tuple((member, choice_name(member)) for member in kind)


def names_or_unknown(kind: type[Enum]) -> Options:
    """Offer the same, after "not known"."""
    return ((None, t("Not known")), *names(kind))


def names_or_none(kind: type[Enum]) -> Options:
    """Offer the same, after "none"."""
    return ((None, t("None")), *names(kind))


def yes_or_no() -> Options:
    """Offer yes and no."""
    return ((True, t("Yes")), (False, t("No")))


def yes_no_or_unknown() -> Options:
    """Offer yes, no and "not known"."""
    return (*yes_or_no(), (None, t("Not known")))
