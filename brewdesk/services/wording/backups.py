"""Backups in words: when and why they were made, what they hold, what going back would lose."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.backupshelf import BackupView, WouldBeLost
from brewdesk.services.wholecopy import Copied
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.amounts import Show, plain
from brewdesk.services.wording.exports import missing_words, size_text
from brewdesk.services.wording.loggers import count_text
from brewdesk.services.wording.moments import days_between
from brewdesk.services.wording.safetylog import full_stamp
from brewdesk.store.salvage import Rescued


def _t(text: str) -> str:
    return QCoreApplication.translate("Backups", text)


def reason_words(reason: str) -> str:
    """Say why a backup was made."""
    return {
        "daily": _t("of the day"),
        "manual": _t("asked for"),
        "before-migration": _t("before the program brought the pantry up to date"),
        "before-import": _t("before readings were brought in"),
        "before-restore": _t("before going back to an older one"),
    }.get(reason, _t("made"))


def backup_line(view: BackupView, zone: tzinfo) -> str:
    """Name a backup in one line: when, why, and whether it is sound."""
    line = _t("{when} – {why}").format(
        when=full_stamp(view.info.made_at, zone), why=reason_words(view.info.reason)
    )
    return line if view.is_sound else _t("{line} – DAMAGED").format(line=line)


def age_words(made_at: datetime, now: datetime, zone: tzinfo) -> str:
    """Say how old a backup is, in days of the calendar."""
    days = days_between(made_at, now, zone)
    if days <= 0:
        return _t("today")
    if days == 1:
        return _t("yesterday")
    return _t("{days} days ago").format(days=count_text(days))


def inside_words(view: BackupView, now: datetime, zone: tzinfo) -> str:
    """Say what a backup holds, how new its newest entries are, and that it was checked."""
    if view.inside is None:
        return _t(
            "This backup is not what was written any more, so it cannot be used. It stays where "
            "it is. Please choose another."
        )
    counts = view.inside.row_counts
    said = [
        _t(
            "Checked: sound. It holds {vessels} vessels, {cultures} cultures, {batches} batches, "
            "{bottlings} bottlings, {readings} readings and {photos} entries of photos."
        ).format(
            vessels=count_text(counts.get("vessel", 0)),
            cultures=count_text(counts.get("culture", 0)),
            batches=count_text(counts.get("batch", 0)),
            bottlings=count_text(counts.get("bottling", 0)),
            readings=count_text(counts.get("reading", 0)),
            photos=count_text(counts.get("photo", 0)),
        )
    ]
    if view.inside.newest_reading_at is None:
        said.append(_t("There is no reading in it."))
    else:
        said.append(
            _t("Its newest reading is of {when}.").format(
                when=full_stamp(view.inside.newest_reading_at, zone)
            )
        )
    if view.inside.newest_act_at is not None:
        said.append(
            _t("The last thing that was done in it: {when}, {age}.").format(
                when=full_stamp(view.inside.newest_act_at, zone),
                age=age_words(view.inside.newest_act_at, now, zone),
            )
        )
    return " ".join(said)


def lost_words(lost: WouldBeLost, show: Show = plain) -> str:
    """Say what was done since a backup, and would be missing after going back to it."""
    if not lost.is_same_pantry:
        return _t(
            "It is of another pantry, so what is here now cannot be compared with it: all of it "
            "would be replaced."
        )
    if lost.count == 0:
        return _t("Nothing was done since: going back would lose nothing.")
    named = "\n".join(f"•  {act_text(act, show)}" for act in lost.newest)
    if lost.count == 1:
        return _t("Going back would lose the one thing done since:\n{named}").format(named=named)
    if lost.count == len(lost.newest):
        return _t("Going back would lose the {count} things done since:\n{named}").format(
            count=count_text(lost.count), named=named
        )
    return _t(
        "Going back would lose the {count} things done since, the last of them:\n{named}"
    ).format(count=count_text(lost.count), named=named)


def since_words(view: BackupView, now: datetime, zone: tzinfo) -> str:
    """Say what a backup cannot hold where the pantry itself cannot be asked."""
    return _t("What was entered after {when} ({age}) is not in it.").format(
        when=full_stamp(view.info.made_at, zone), age=age_words(view.info.made_at, now, zone)
    )


def no_backup_words() -> str:
    """Say that there is none."""
    return _t("There is no backup yet. One is made each day on which something was done.")


def no_sound_backup_words() -> str:
    """Say that all are damaged."""
    return _t(
        "None of the backups is sound any more. They stay where they are. What can still be read "
        "of the pantry itself can be rescued into a new file."
    )


def backup_failed_words(why: str, last: datetime | None, now: datetime, zone: tzinfo) -> str:
    """Say that the day's backup was not made, why, and how old the last one is."""
    if last is None:
        return _t("The day's backup could not be made, and there is no older one. {why}").format(
            why=why
        )
    return _t(
        "The day's backup could not be made. The last good one is of {when}, {age}. {why}"
    ).format(when=full_stamp(last, zone), age=age_words(last, now, zone), why=why)


def copied_words(copied: Copied) -> str:
    """Say what was copied, and how it is opened."""
    said = [
        _t(
            "Copied to {folder}: {rows} rows and {photos} photos, {size}, all read back and "
            "found equal."
        ).format(
            folder=copied.folder,
            rows=count_text(copied.rows),
            photos=count_text(copied.photos),
            size=size_text(copied.size_bytes),
        )
    ]
    if copied.missing:
        said.append(missing_words(copied.missing))
    return " ".join(said)


def rescued_words(rescued: Rescued) -> str:
    """Say what a rescue brought, and what it could not bring."""
    kept = sum(rescued.kept.values())
    if rescued.is_whole:
        return _t(
            "All {rows} rows could be read: nothing is lost. Only what is made anew from them "
            "was damaged."
        ).format(rows=count_text(kept))
    named = _table_names()
    parts = [
        _t("{what}: {count}").format(what=named.get(table, table), count=count_text(count))
        for table, count in sorted(rescued.lost.items())
    ]
    parts += [
        _t("{what}: all, and how many is not known").format(what=named.get(table, table))
        for table in rescued.unknown
    ]
    return _t(
        "{rows} rows could be read. Lost are these rows, and with them what belonged to them – "
        "{parts}."
    ).format(rows=count_text(kept), parts="; ".join(parts))


def _table_names() -> dict[str, str]:
    return {
        "vessel": _t("vessels"),
        "culture": _t("cultures"),
        "batch": _t("batches"),
        "bottling": _t("bottlings"),
        "reading": _t("readings"),
        "reminder": _t("reminders"),
        "photo": _t("entries of photos"),
        "step": _t("steps of run sheets"),
        "act": _t("acts in the history (for undoing)"),
        "act_subject": _t("what acts were about"),
        "place": _t("places"),
        "setting": _t("settings"),
        "temperature_chunk": _t("pieces of temperature logs"),
    }
