"""The files of photos: beside the store, named by their content, written whole or not at all."""

from __future__ import annotations

import errno
import hashlib
import os
import re
import stat
import threading
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from enum import Enum
from pathlib import Path
from typing import Protocol

from brewdesk.store.errors import StoreTrouble
from brewdesk.store.files import sync_file, sync_folder, unfinished
from brewdesk.store.records import PhotoDraft

MAX_BYTES = 50_000_000
MAX_PIXELS = 60_000_000  # decoded at 4 bytes a pixel, 240 MB
SWEEP_AFTER = timedelta(days=1)  # a file just taken in has no entry yet
_THUMBS = "thumbs"
_HASH = re.compile(r"[0-9a-f]{64}")
_ENDINGS = {
    "image/jpeg": "jpg",
    "image/png": "png",
    "image/webp": "webp",
    "image/gif": "gif",
    "image/bmp": "bmp",
    "image/tiff": "tiff",
    "image/heic": "heic",
    "image/avif": "avif",
}
_OF_ERRNO = {
    errno.ENOSPC: "disk_full",
    errno.EDQUOT: "disk_full",
    errno.EROFS: "read_only",
    errno.EACCES: "read_only",
    errno.EPERM: "read_only",
}


class PhotoTrouble(Exception):  # noqa: N818  # a state of the world to tell the maker, not a bug
    """A picture cannot be taken in, shown or given away.

    ``code`` is one of: not_a_picture, broken, too_large, too_many_pixels, no_file,
    unreadable (of what came), disk_full, read_only, io_error (of the photos' folder),
    missing, damaged (of what was kept), copy_failed (of a copy for others).
    """

    def __init__(self, code: str, detail: str = "") -> None:
        self.code = code
        self.detail = detail
        super().__init__(f"{code}: {detail}" if detail else code)


class FileState(Enum):
    """What became of a kept file."""

    FINE = "fine"
    MISSING = "missing"
    DAMAGED = "damaged"
    UNREADABLE = "unreadable"


@dataclass(frozen=True, slots=True)
class Source:
    """A picture that is offered: a file, or bytes from the clipboard or a drag.

    ``make`` gives the bytes where there is no file; it is called off the window's thread.
    """

    name: str
    path: Path | None = None
    make: Callable[[], bytes] | None = None


def read_source(source: Source) -> bytes:
    """Read a picture that is offered, within the limit of size.

    Raises
    ------
    PhotoTrouble
        no_file, too_large, unreadable. Pipes and devices are no files: reading one never ends.
    """
    if source.path is None:
        made = source.make() if source.make is not None else b""
        if len(made) > MAX_BYTES:
            raise PhotoTrouble("too_large", source.name)
        if not made:
            raise PhotoTrouble("no_file", source.name)
        return made
    try:
        if not stat.S_ISREG(source.path.stat().st_mode):
            raise PhotoTrouble("not_a_picture", source.name)
        with source.path.open("rb") as file:
            data = file.read(MAX_BYTES + 1)
    except FileNotFoundError:
        raise PhotoTrouble("no_file", source.name) from None
    except OSError as error:
        raise PhotoTrouble("unreadable", str(error)) from error
    if len(data) > MAX_BYTES:
        raise PhotoTrouble("too_large", source.name)
    return data


def file_time(source: Source) -> datetime | None:
    """Return when a file was last written, in UTC; None for bytes without a file."""
    if source.path is None:
        return None
    try:
        return datetime.fromtimestamp(source.path.stat().st_mtime, UTC)
    except (OSError, OverflowError, ValueError):
        return None


class SharedPhotos(Protocol):
    """Where several desks keep their photos together. May raise StoreTrouble."""

    def keep(self, content_hash: str, ending: str, data: bytes) -> None:
        """Keep bytes for all desks."""
        ...

    def fetch(self, content_hash: str) -> bytes | None:
        """Give bytes that some desk kept; None if none did."""
        ...


class PhotoFolder:
    """The folder "<store's stem>.photos". Its methods may be called from any thread.

    With ``shared`` it is this desk's part of what all desks keep: what is missing here is
    fetched when it is asked for.
    """

    def __init__(self, store_path: Path, shared: SharedPhotos | None = None) -> None:
        self.root = store_path.with_name(f"{store_path.stem}.photos")
        self.shared = shared
        self._lock = threading.Lock()  # between keeping a file and sweeping it away

    def path_of(self, photo: PhotoDraft) -> Path:
        """Return where the file of a photo lies.

        Raises
        ------
        PhotoTrouble
            "damaged" if its hash is none: it must not lead out of the folder.
        """
        ending = _ENDINGS.get(photo.media_type, "img")
        return self._shelf(photo.content_hash) / f"{photo.content_hash}.{ending}"

    def thumbnail_path(self, photo: PhotoDraft, side_px: int) -> Path:
        """Return where a small picture of a photo may lie; it can be made anew at any time."""
        self._shelf(photo.content_hash)
        return self.root / _THUMBS / f"{photo.content_hash}-{side_px}.jpg"

    def keep(self, data: bytes, media_type: str) -> str:
        """Keep a picture's bytes unchanged, and return the hash that names them.

        The same picture again is the same file. One that is damaged is replaced.

        Raises
        ------
        PhotoTrouble
            disk_full, read_only, io_error; then nothing is left behind.
        """
        content_hash = hashlib.sha256(data).hexdigest()
        ending = _ENDINGS.get(media_type, "img")
        self.keep_as(content_hash, ending, data)
        if self.shared is not None:
            self.shared.keep(content_hash, ending, data)
        return content_hash

    def keep_as(self, content_hash: str, ending: str, data: bytes) -> None:
        """Keep bytes of a known hash in this folder alone.

        Raises
        ------
        PhotoTrouble
            As `keep`.
        """
        target = self._shelf(content_hash) / f"{content_hash}.{ending}"
        with self._lock:
            if content_hash_of(target) == content_hash:
                os.utime(target)  # as good as new: not to be swept
            else:
                self.write(target, data)

    def files(self) -> dict[str, Path]:
        """Return the photos' files by their hash."""
        return {
            path.stem: path
            for path in sorted(self.root.glob("??/*.*"))
            if _HASH.fullmatch(path.stem) and not path.is_symlink()
        }

    def write(self, target: Path, data: bytes) -> None:
        """Put a private file in its place whole.

        Raises
        ------
        PhotoTrouble
            As `keep`.
        """
        try:
            for folder in (self.root, target.parent):
                folder.mkdir(mode=0o700, exist_ok=True)
            temporary = unfinished(target)
            try:
                temporary.write_bytes(data)
                sync_file(temporary)
                os.replace(temporary, target)
            except BaseException:
                temporary.unlink(missing_ok=True)
                raise
            sync_folder(target.parent)
        except OSError as error:
            raise PhotoTrouble(_OF_ERRNO.get(error.errno or 0, "io_error"), str(error)) from error

    def read(self, photo: PhotoDraft) -> bytes:
        """Return a photo's bytes, if they still are what was kept.

        Raises
        ------
        PhotoTrouble
            missing, damaged, unreadable.
        """
        try:
            data = self.path_of(photo).read_bytes()
        except (FileNotFoundError, NotADirectoryError):
            data = self._fetched(photo)
        except OSError as error:
            raise PhotoTrouble("unreadable", str(error)) from error
        if hashlib.sha256(data).hexdigest() != photo.content_hash:
            raise PhotoTrouble("damaged", photo.content_hash)
        return data

    def _fetched(self, photo: PhotoDraft) -> bytes:
        """Fetch what another desk brought, and keep it here."""
        try:
            data = None if self.shared is None else self.shared.fetch(photo.content_hash)
        except StoreTrouble as trouble:
            raise PhotoTrouble("unreadable", trouble.code) from trouble
        if data is None:
            raise PhotoTrouble("missing", photo.content_hash)
        if hashlib.sha256(data).hexdigest() == photo.content_hash:
            self.keep_as(photo.content_hash, _ENDINGS.get(photo.media_type, "img"), data)
        return data

    def sweep(self, is_named: Callable[[str], bool], now: datetime) -> int:
        """Delete files whose hash nobody names, and what broke off; return how many went.

        Files of the last day stay: their entry may be about to be written. So do files whose
        name is none of ours.
        """
        gone = 0
        for path in sorted(self.root.glob("*/*")):
            stem = path.name.partition(".")[0].partition("-")[0]
            is_leftover = path.name.endswith(".unfinished")
            if not is_leftover and (not _HASH.fullmatch(stem) or is_named(stem)):
                continue
            with self._lock:
                try:
                    written = datetime.fromtimestamp(path.lstat().st_mtime, UTC)
                    if now - written >= SWEEP_AFTER:
                        path.unlink()
                        gone += 1
                except OSError:  # gone already, or not ours to delete
                    continue
        return gone

    def _shelf(self, content_hash: str) -> Path:
        if not _HASH.fullmatch(content_hash):
            raise PhotoTrouble("damaged", content_hash)
        return self.root / content_hash[:2]


def content_hash_of(path: Path) -> str:
    """Return the SHA-256 of a file's content; "" for a link or what cannot be read."""
    try:
        return "" if path.is_symlink() else hashlib.sha256(path.read_bytes()).hexdigest()
    except OSError:
        return ""
