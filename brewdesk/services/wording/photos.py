"""Sentences about photos: what was taken in, what was not and why, what became of a file."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence
from datetime import tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.photofiles import MAX_BYTES, MAX_PIXELS, FileState
from brewdesk.services.photos import MOST_AT_ONCE, Brought, Refusal
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.moments import days_between, stamp_words, time_words
from brewdesk.store.records import Photo

_NAME_LENGTH = 40
_MOST_TOLD = 3


def _t(text: str) -> str:
    return QCoreApplication.translate("Photos", text)


def printable_name(name: str) -> str:
    """Write a file's name on one line, without marks that turn or hide what follows."""
    shown = "".join(
        " " if unicodedata.category(letter) in ("Cc", "Cf", "Cs", "Co", "Zl", "Zp") else letter
        for letter in name
    )
    shown = " ".join(shown.split())
    if len(shown) > _NAME_LENGTH:
        half = _NAME_LENGTH // 2
        shown = f"{shown[:half]}…{shown[-half:]}"
    return shown or _t("a picture")


def brought_words(brought: Brought) -> str:
    """Say what became of pictures that were offered together."""
    parts = []
    count = len(brought.photos)
    if count == 1:
        parts.append(_t("One photo added."))
    elif count:
        parts.append(_t("{count} photos added.").format(count=number_text(count, 0)))
    if brought.known_count == 1:
        parts.append(_t("One was here already."))
    elif brought.known_count:
        parts.append(
            _t("{count} were here already.").format(count=number_text(brought.known_count, 0))
        )
    parts.extend(refusal_words(one) for one in brought.refused[:_MOST_TOLD])
    more = len(brought.refused) - _MOST_TOLD
    if more > 0:
        parts.append(_t("Not added either: {count} more.").format(count=number_text(more, 0)))
    return " ".join(parts)


def refusal_words(refusal: Refusal) -> str:
    """Say why one picture was not taken in."""
    return _t("Not added: “{name}”. {why}").format(
        name=printable_name(refusal.name), why=trouble_of_photo(refusal.code)
    )


def trouble_of_photo(code: str) -> str:
    """Say what is the matter with a picture or the photos' folder, and what to do."""
    megabytes = number_text(MAX_BYTES / 1e6, 0)
    megapixels = number_text(MAX_PIXELS / 1e6, 0)
    sentences = {
        "not_a_picture": _t(
            "It is not a picture this program reads (JPEG, PNG, WebP, GIF, BMP or TIFF)."
        ),
        "broken": _t("The picture breaks off or cannot be read; please copy it anew."),
        "too_large": _t("It is larger than {size} MB; please make it smaller first.").format(
            size=megabytes
        ),
        "too_many_pixels": _t(
            "It has more than {count} million pixels; please make it smaller first."
        ).format(count=megapixels),
        "too_many": _t("No more than {count} are added at once; please add the rest again.").format(
            count=number_text(MOST_AT_ONCE, 0)
        ),
        "no_file": _t("The file is not there, or not on this computer; please save it first."),
        "unreadable": _t("The file may not be read; please check its rights."),
        "disk_full": _t("The disk is full. Please free some space and try again."),
        "read_only": _t("The folder of the photos may not be written to. Please check its rights."),
        "io_error": _t("The disk did not answer as it should. Please try again."),
        "copy_failed": _t("The copy could not be written there. Please choose another folder."),
        "missing": _t("The photo's file is no longer in its place beside the pantry file."),
        "damaged": _t("The photo's file is no longer what was kept: it was changed or damaged."),
    }
    return sentences.get(code, sentences["io_error"])


def state_words(state: FileState) -> str:
    """Say in two words what stands in a photo's place."""
    return {
        FileState.FINE: "",
        FileState.MISSING: _t("File missing"),
        FileState.DAMAGED: _t("File damaged"),
        FileState.UNREADABLE: _t("Cannot be read"),
    }[state]


def state_sentence(state: FileState) -> str:
    """Say what became of a photo's file, and what can be done."""
    return {
        FileState.FINE: "",
        FileState.MISSING: _t(
            "The photo's file is no longer in its place beside the pantry file. If you have the "
            "picture elsewhere, add it again: it finds its place by itself."
        ),
        FileState.DAMAGED: _t(
            "The photo's file is no longer what was kept: it was changed or damaged. If you have "
            "the picture elsewhere, add it again: it finds its place by itself."
        ),
        FileState.UNREADABLE: _t(
            "The photo's file cannot be read. Please check the rights of the folder beside the "
            "pantry file."
        ),
    }[state]


def photo_sentence(photo: Photo, zone: tzinfo, state: FileState, name: str) -> str:
    """Say one photo for those who listen."""
    parts = [
        _t("Photo of {name}, {when}").format(name=name, when=stamp_words(photo.taken_at, zone))
    ]
    parts.extend(part for part in (photo.caption, state_words(state)) if part)
    return ". ".join(parts)


def caption_words(photo: Photo, zone: tzinfo) -> str:
    """Give the line below a small picture: its caption, or else the time of day."""
    return photo.caption or time_words(photo.taken_at, zone)


def is_first_of_day(photos: Sequence[Photo], row: int, zone: tzinfo) -> bool:
    """Whether a photo is the first of its day in a list in order of time."""
    if row == 0:
        return True
    return days_between(photos[row - 1].taken_at, photos[row].taken_at, zone) != 0


def location_words() -> str:
    """Warn that a picture says where it was taken."""
    return _t("This file says where it was taken. It stays in the file if you give it away.")


def copied_words(path: str) -> str:
    """Say where a copy was put."""
    return _t("Saved a copy without camera data: {path}").format(path=path)
