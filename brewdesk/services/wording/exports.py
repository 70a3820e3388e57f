"""Exports and imports in words: what went out, what would come in, what stands in the way."""

from __future__ import annotations

from datetime import tzinfo

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.exporting import Exported
from brewdesk.services.exportmanifest import Manifest
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.importing import Imported
from brewdesk.services.wording.loggers import count_text
from brewdesk.services.wording.safetylog import full_date, full_stamp


def _t(text: str) -> str:
    return QCoreApplication.translate("Exports", text)


def size_text(size_bytes: int) -> str:
    """Return a size of a file as people read it."""
    return QLocale().formattedDataSize(size_bytes, 1, QLocale.DataSizeFormat.DataSizeSIFormat)


def exported_words(exported: Exported) -> str:
    """Say what went out."""
    said = [
        _t("Saved as {file}: {rows} rows and {photos} photos, {size}.").format(
            file=exported.path.name,
            rows=count_text(exported.rows),
            photos=count_text(exported.photos),
            size=size_text(exported.size_bytes),
        )
    ]
    if exported.missing:
        said.append(missing_words(exported.missing))
    return " ".join(said)


def missing_words(count: int) -> str:
    """Say that files of photos are not there."""
    if count == 1:
        return _t("The file of one photo is missing or damaged; its entry is there.")
    return _t(
        "The files of {count} photos are missing or damaged; their entries are there."
    ).format(count=count_text(count))


def imported_words(imported: Imported) -> str:
    """Say what came in."""
    said = [
        _t("The new pantry is at {path}: {rows} rows and {photos} photos, all proven.").format(
            path=imported.path,
            rows=count_text(imported.rows),
            photos=count_text(imported.photos),
        )
    ]
    if imported.missing:
        said.append(missing_words(imported.missing))
    return " ".join(said)


def preview_pairs(seen: Manifest, zone: tzinfo) -> tuple[tuple[str, str], ...]:
    """Say what an archive tells of itself, label by label."""
    pairs = [
        (_t("Made"), full_stamp(seen.made_at, zone)),
        (_t("By"), _t("brewdesk {version}").format(version=seen.program)),
    ]
    if seen.first_at is not None and seen.last_at is not None:
        span = _t("{first} to {last}").format(
            first=full_date(seen.first_at, zone), last=full_date(seen.last_at, zone)
        )
        pairs.append((_t("Tells of"), span))
    for label, table in (
        (_t("Vessels"), "vessel"),
        (_t("Cultures"), "culture"),
        (_t("Batches"), "batch"),
        (_t("Bottlings"), "bottling"),
        (_t("Readings"), "reading"),
        (_t("Acts in the history"), "act"),
    ):
        pairs.append((label, count_text(seen.rows_of(table))))
    photos = count_text(len(seen.photos))
    if seen.photos:
        photos = _t("{count} ({size})").format(count=photos, size=size_text(seen.photo_bytes))
    pairs.append((_t("Photos"), photos))
    return tuple(pairs)


def export_trouble_words(trouble: ExportTrouble) -> str:
    """Say what keeps an export from being made or read, and what to do."""
    sentence = {
        "cancelled": _t("Stopped. Nothing was kept."),
        "disk_full": _t("The disk has not enough room. Nothing was kept; please free some space."),
        "not_writable": _t("Nothing can be written there. Please choose another folder."),
        "unreadable": _t("This file cannot be opened. Please check that it is still there."),
        "not_an_export": _t("This is no export of a pantry. Please choose another file."),
        "newer_export": _t(
            "A newer version of the program made this export. Please bring it in with that version."
        ),
        "damaged": _t(
            "This export is damaged, as after a copy that broke off ({where}). Nothing was "
            "brought in; please use another copy of it."
        ),
        "unsafe": _t(
            "This archive holds what no export holds ({where}). Nothing was brought in; it may "
            "have been made to do harm."
        ),
        "too_large": _t("This archive is larger than any export can be. Nothing was brought in."),
        "row_refused": _t(
            "An entry breaks a rule of the pantry ({where}). Nothing was brought in."
        ),
        "photo_missing": _t(
            "A photo that an entry names is not in the archive. Nothing was brought in."
        ),
        "target_taken": _t(
            "Something stands there already, and nothing is ever written over. Please choose "
            "another name."
        ),
        "no_folder": _t("There is no such folder. Please choose another."),
    }[trouble.code]
    return sentence.format(where=_where(trouble))


def _where(trouble: ExportTrouble) -> str:
    plain = "".join(sign if sign.isprintable() else "?" for sign in trouble.where)[:80]
    if trouble.line:
        return _t("{entry}, line {line}").format(entry=plain, line=count_text(trouble.line))
    return plain or _t("the archive as a whole")
