"""Photos as an item model; their small pictures come off the window's thread, a few at a time."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QPixmap

from brewdesk.models.pictures import Thumbnail, thumbnail
from brewdesk.models.plaintip import plain_tip
from brewdesk.services.clock import Clock
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.photofiles import FileState, PhotoFolder
from brewdesk.services.records import Photo
from brewdesk.services.wording.moments import date_words, stamp_words
from brewdesk.services.wording.photos import caption_words, is_first_of_day, photo_sentence

PHOTO_ROLE = int(Qt.ItemDataRole.UserRole) + 1
PIXMAP_ROLE = int(Qt.ItemDataRole.UserRole) + 2  # None while it is being made
STATE_ROLE = int(Qt.ItemDataRole.UserRole) + 3  # a FileState; None while it is not known
DAY_ROLE = int(Qt.ItemDataRole.UserRole) + 4  # the day's name over its first photo, else ""

MOST_BYTES = 48_000_000  # of small pictures in memory
_BYTES_A_PIXEL = 4

Index = QModelIndex | QPersistentModelIndex


class PhotosModel(QAbstractListModel):
    """Rows of ``Photo``, newest first. What is asked for in `PIXMAP_ROLE` is fetched."""

    def __init__(
        self,
        jobs: JobRunner,
        folder: PhotoFolder,
        clock: Clock,
        parent: QObject | None = None,
        *,
        most_bytes: int = MOST_BYTES,
    ) -> None:
        super().__init__(parent)
        self._jobs = jobs
        self._folder = folder
        self._clock = clock
        self._most_bytes = most_bytes
        self._photos: list[Photo] = []
        self._name = ""
        self._side_px = 320
        self._pixmaps: OrderedDict[str, QPixmap] = OrderedDict()  # by content, last used last
        self._bytes = 0
        self._known: dict[str, Thumbnail] = {}  # without their images
        self._asked: set[str] = set()

    # what is shown

    def set_photos(self, photos: Sequence[Photo], name: str) -> None:
        """Show ``photos``, which are of ``name``; rows that stay keep their place."""
        self._name = name
        wanted = {photo.id for photo in photos}
        for row in reversed(range(len(self._photos))):
            if self._photos[row].id not in wanted:
                self.beginRemoveRows(QModelIndex(), row, row)
                del self._photos[row]
                self.endRemoveRows()
        for row, photo in enumerate(photos):
            old = next((n for n, one in enumerate(self._photos) if one.id == photo.id), None)
            if old is None:
                self.beginInsertRows(QModelIndex(), row, row)
                self._photos.insert(row, photo)
                self.endInsertRows()
                continue
            if old != row:
                self.beginMoveRows(QModelIndex(), old, old, QModelIndex(), row)
                self._photos.insert(row, self._photos.pop(old))
                self.endMoveRows()
            self._photos[row] = photo
        if self._photos:  # whose day begins where may have changed with any of them
            self.dataChanged.emit(self.index(0), self.index(len(self._photos) - 1))

    def photos(self) -> tuple[Photo, ...]:
        """Return the photos shown, in their order."""
        return tuple(self._photos)

    def row_of(self, photo_id: int) -> int | None:
        """Return the row of a photo, or None."""
        return next((n for n, one in enumerate(self._photos) if one.id == photo_id), None)

    def set_side(self, side_px: int) -> None:
        """Have small pictures made for this many device pixels on their long side."""
        if side_px != self._side_px:
            self._side_px = side_px
            self.forget()

    def forget(self) -> None:
        """Look at every file anew, as after one was put back."""
        self._pixmaps.clear()
        self._known.clear()
        self._asked.clear()
        self._bytes = 0
        if self._photos:
            self.dataChanged.emit(self.index(0), self.index(len(self._photos) - 1))

    def forget_lost(self) -> None:
        """Look anew at the files that were missing or damaged: one may be back."""
        lost = [key for key, made in self._known.items() if made.state is not FileState.FINE]
        for content in lost:
            del self._known[content]

    def held_bytes(self) -> int:
        """Return how much memory the small pictures take."""
        return self._bytes

    def has_location(self, photo: Photo) -> bool:
        """Whether the photo's file is known to say where it was taken."""
        found = self._known.get(photo.content_hash)
        return found is not None and found.has_location

    def state(self, photo: Photo) -> FileState | None:
        """Return what became of the photo's file, None while that is not known."""
        found = self._known.get(photo.content_hash)
        return found.state if found is not None else None

    # Qt's model

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own default
        """Count the photos."""
        return 0 if parent.isValid() else len(self._photos)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Give the photo, its small picture, its words."""
        if not index.isValid() or not 0 <= index.row() < len(self._photos):
            return None
        photo = self._photos[index.row()]
        zone = self._clock.zone()
        if role == Qt.ItemDataRole.DisplayRole:
            return caption_words(photo, zone)
        if role == PHOTO_ROLE:
            return photo
        if role == PIXMAP_ROLE:
            return self._pixmap(photo)
        if role == STATE_ROLE:
            return self.state(photo)
        if role == DAY_ROLE:
            is_first = is_first_of_day(self._photos, index.row(), zone)
            return date_words(photo.taken_at, zone) if is_first else ""
        if role == Qt.ItemDataRole.ToolTipRole:
            stamp = stamp_words(photo.taken_at, zone)
            return plain_tip("\n".join(part for part in (stamp, photo.caption) if part))
        if role == Qt.ItemDataRole.AccessibleTextRole:
            state = self.state(photo) or FileState.FINE
            return photo_sentence(photo, zone, state, self._name)
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Every photo can be chosen and dragged out."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        return (
            Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemIsDragEnabled
        )

    # small pictures

    def _pixmap(self, photo: Photo) -> QPixmap | None:
        content = photo.content_hash
        found = self._pixmaps.get(content)
        if found is not None:
            self._pixmaps.move_to_end(content)
            return found
        known = self._known.get(content)
        if content in self._asked or (known is not None and known.state is not FileState.FINE):
            return None
        self._asked.add(content)
        folder, side_px = self._folder, self._side_px
        self._jobs.run(
            lambda: thumbnail(folder, photo, side_px),
            lambda made: self._on_made(content, side_px, made),
            lambda _error: self._on_made(content, side_px, Thumbnail(None, FileState.UNREADABLE)),
            key=f"thumbnail:{id(self)}:{content}",
            pool=Pool.PICTURES,
        )
        return None

    def _on_made(self, content: str, side_px: int, made: Thumbnail) -> None:
        if side_px != self._side_px:
            return
        self._asked.discard(content)
        self._known[content] = Thumbnail(None, made.state, made.has_location)
        if made.image is not None:
            self._hold(content, QPixmap.fromImage(made.image))
        for row, photo in enumerate(self._photos):
            if photo.content_hash == content:
                self.dataChanged.emit(self.index(row), self.index(row))

    def _hold(self, content: str, pixmap: QPixmap) -> None:
        self._pixmaps[content] = pixmap
        self._bytes += _bytes_of(pixmap)
        while self._bytes > self._most_bytes and len(self._pixmaps) > 1:
            _, oldest = self._pixmaps.popitem(last=False)
            self._bytes -= _bytes_of(oldest)


def _bytes_of(pixmap: QPixmap) -> int:
    return pixmap.width() * pixmap.height() * _BYTES_A_PIXEL
