"""Names that people give to vessels, cultures, batches and places."""

from __future__ import annotations

from culturecore.errors import ImpossibleInput

NAME_LENGTH_HIGH = 80  # a label and a jar on the shelf have no room for more


def tidy_name(text: str) -> str:
    """Return a name without spare spaces and line breaks.

    Raises
    ------
    ImpossibleInput
        Field "name", with reason "empty" or "too_long".
    """
    name = " ".join(text.split())
    if not name:
        raise ImpossibleInput("name", text, reason="empty")
    if len(name) > NAME_LENGTH_HIGH:
        raise ImpossibleInput("name", text, high=NAME_LENGTH_HIGH, reason="too_long")
    return name


def is_same_name(one: str, other: str) -> bool:
    """Whether two names would be taken for the same."""
    return " ".join(one.split()).casefold() == " ".join(other.split()).casefold()
