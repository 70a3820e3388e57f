"""What a find is and where it stands, in one short line; and why nothing was found."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from brewdesk.services.searchwords import Answer, FoundKind
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Batch, Culture, Vessel


def _t(text: str) -> str:
    return QCoreApplication.translate("Search", text)


def kind_words(kind: FoundKind) -> str:
    """Name what was found: "Batch", "Note"."""
    return {
        FoundKind.BATCH: _t("Batch"),
        FoundKind.CULTURE: _t("Culture"),
        FoundKind.VESSEL: _t("Vessel"),
        FoundKind.PLACE: _t("Place"),
        FoundKind.NOTE: _t("Note"),
        FoundKind.CARE: _t("Care"),
        FoundKind.PHOTO: _t("Photo"),
        FoundKind.REMINDER: _t("Reminder"),
        FoundKind.ACT: _t("Journal"),
    }[kind]


def kinds_words(kind: FoundKind) -> str:
    """Name a filter for one kind: "Batches", "Notes of readings"."""
    return {
        FoundKind.BATCH: _t("Batches"),
        FoundKind.CULTURE: _t("Cultures"),
        FoundKind.VESSEL: _t("Vessels"),
        FoundKind.PLACE: _t("Places"),
        FoundKind.NOTE: _t("Notes of readings"),
        FoundKind.CARE: _t("Notes of care"),
        FoundKind.PHOTO: _t("Captions of photos"),
        FoundKind.REMINDER: _t("Reminders"),
        FoundKind.ACT: _t("Lines of the journal"),
    }[kind]


def batch_line(batch: Batch, vessel_name: str) -> str:
    """Say of a batch how far it is, what tea, and in which vessel."""
    return _joined(name_of(batch.stage), name_of(batch.tea_kind), vessel_name)


def culture_line(culture: Culture, vessel_name: str) -> str:
    """Say of a culture how it is, where it came from, where it is, and to whom it went."""
    return _joined(name_of(culture.state), name_of(culture.origin), vessel_name, culture.gone_to)


def vessel_line(vessel: Vessel, volume: str, place_name: str) -> str:
    """Say of a vessel how large it is and where it stands, or that it is off the shelf."""
    where = _t("off the shelf") if vessel.retired_at is not None else place_name
    return _joined(volume, name_of(vessel.material), where)


def count_words(answer: Answer) -> str:
    """Say how much was found, and how much of it is listed."""
    if answer.total == 0:
        return _t("Nothing found")
    if answer.more:
        return _t("The first {shown} of {total}").format(
            shown=number_text(len(answer.finds), 0), total=number_text(answer.total, 0)
        )
    if answer.total == 1:
        return _t("1 found")
    return _t("{total} found").format(total=number_text(answer.total, 0))


def nothing_words(answer: Answer, filter_names: dict[str, str]) -> str:
    """Say why nothing was found: which filter holds back how much, or that it is nowhere.

    ``filter_names`` holds, for each filter in use, what it is set to.
    """
    sentences = [
        (
            _t("Without the filter “{name}” there would be 1.")
            if count == 1
            else _t("Without the filter “{name}” there would be {count}.")
        ).format(name=filter_names.get(name, name), count=number_text(count, 0))
        for name, count in answer.hidden_by
        if count
    ]
    if sentences:
        return "\n".join(sentences)
    if answer.without_filters:
        return _t(
            "No filter alone is in the way; without all of them there would be {count}."
        ).format(count=number_text(answer.without_filters, 0))
    if answer.text.strip():
        return _t(
            "“{text}” stands nowhere in your records. All words have to occur; fewer words, "
            "or the beginning of a word, find more."
        ).format(text=" ".join(answer.text.split()))
    return _t("There is nothing in your records yet.")


def _joined(*parts: str) -> str:
    return " · ".join(part for part in parts if part)
