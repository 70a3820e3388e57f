"""Names that begin with a capital by themselves, as they stand inside a sentence."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication


def inside(name: str) -> str:
    """Write a name in the middle of a sentence: small, or as it is where nouns are never small."""
    # Not shown: a translation other than "lower" keeps the capital, as German nouns need.
    how = QCoreApplication.translate("Inside", "lower")
    return name[:1].lower() + name[1:] if how == "lower" else name
