"""Photos of batches, cultures and readings: taken in, worded, put right, taken out."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from brewdesk.services.acts import ActKind
from brewdesk.services.cameradata import read_camera_data
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.photofiles import (
    PhotoFolder,
    PhotoTrouble,
    Source,
    file_time,
    read_source,
)
from brewdesk.store.records import Photo, PhotoDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage

if TYPE_CHECKING:
    from pathlib import Path

    from brewdesk.store.serverphotos import ServerPhotos
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

CAPTION_LIMIT = 2000
MOST_AT_ONCE = 50
LATEST_AFTER_NOW = timedelta(minutes=5)  # two clocks are never quite alike
_EARLIEST = datetime(1990, 1, 1, tzinfo=UTC)  # a digital camera that says less was never set


@dataclass(frozen=True, slots=True, kw_only=True)
class PhotoOwner:
    """What photos are of: exactly one of a batch, a culture or a reading."""

    batch_id: int | None = None
    culture_id: int | None = None
    reading_id: int | None = None

    def __post_init__(self) -> None:
        """Refuse none and several.

        Raises
        ------
        ValueError
            If not exactly one id is given.
        """
        if [self.batch_id, self.culture_id, self.reading_id].count(None) != 2:
            raise ValueError("a photo belongs to one batch, culture or reading")


@dataclass(frozen=True, slots=True)
class PictureFacts:
    """What a look into a picture's bytes tells."""

    media_type: str
    width_px: int
    height_px: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenIn:
    """A picture whose file is kept; what is missing is only its entry."""

    content_hash: str
    facts: PictureFacts
    size_bytes: int
    taken_at: datetime


@dataclass(frozen=True, slots=True)
class Refusal:
    """A picture that was not taken in, by the name it came with, and why."""

    name: str
    code: str


@dataclass(frozen=True, slots=True)
class Brought:
    """What became of pictures that were offered together."""

    photos: tuple[Photo, ...]
    refused: tuple[Refusal, ...] = ()
    known_count: int = 0  # those that were there already


LookInto = Callable[[bytes], PictureFacts]


class Photos:
    """Keep photos: rows in the store, files beside it."""

    def __init__(
        self,
        door: Door,
        jobs: JobRunner,
        store_path: Path,
        *,
        shared: ServerPhotos | None = None,
    ) -> None:
        self._door = door
        self._jobs = jobs
        self._shared = shared
        self.folder = PhotoFolder(store_path, shared)

    def bring_all_here(self) -> None:
        """Fetch what other desks brought and this one lacks. Slow: from a worker thread.

        Raises
        ------
        StoreTrouble
            What the server says.
        PhotoTrouble
            What the disk says.
        """
        if self._shared is None:
            return
        names = self._shared.names()
        for content_hash in names.keys() - self.folder.files().keys():
            data = self._shared.fetch(content_hash)
            if data is not None:
                self.folder.keep_as(content_hash, names[content_hash], data)

    def of(self, owner: PhotoOwner) -> tuple[Photo, ...]:
        """Return an owner's photos, newest first."""
        with self._door.store.read() as unit:
            return _photos_of(unit, owner)

    def get(self, photo_id: int) -> Photo:
        """Return one photo's entry.

        Raises
        ------
        NoSuchRow
            If there is no photo with this id.
        """
        with self._door.store.read() as unit:
            return unit.photos.get(photo_id)

    def name_of(self, owner: PhotoOwner) -> str:
        """Return the name of the batch or culture that the photos are of."""
        with self._door.store.read() as unit:
            return _home(unit, owner).name

    def bring(
        self,
        owner: PhotoOwner,
        sources: Sequence[Source],
        look_into: LookInto,
        done: Callable[[Brought], None],
        failed: Callable[[BaseException], None] | None = None,
    ) -> None:
        """Take pictures in off this thread, then enter all that could be as one act.

        ``look_into`` says what a picture's bytes are, or raises PhotoTrouble. ``failed`` is
        told what kept the entry from being written.
        """
        offered = tuple(sources)

        def work() -> tuple[tuple[TakenIn, ...], tuple[Refusal, ...]]:
            return self._take_all(offered, look_into)

        def land(result: tuple[tuple[TakenIn, ...], tuple[Refusal, ...]]) -> None:
            taken, refused = result
            try:
                photos = self.add(owner, taken) if taken else ()
            except Exception as error:
                if failed is None:
                    raise
                failed(error)
                return
            done(Brought(photos, refused, len(taken) - len(photos)))

        self._jobs.run(work, land, failed, pool=Pool.PICTURES)

    def take_in(self, source: Source, look_into: LookInto) -> TakenIn:
        """Read one picture, look into it and keep its bytes unchanged. For any thread.

        Raises
        ------
        PhotoTrouble
            If it is no picture, too large, unreadable, or cannot be kept.
        """
        data = read_source(source)
        facts = look_into(data)
        now = self._door.clock.now()
        told = read_camera_data(data).instant(self._door.clock.zone())
        by_file = file_time(source)
        times = (at for at in (told, by_file) if at is not None and _is_likely(at, now))
        return TakenIn(
            content_hash=self.folder.keep(data, facts.media_type),
            facts=facts,
            size_bytes=len(data),
            taken_at=next(times, now),
        )

    def add(self, owner: PhotoOwner, taken: Sequence[TakenIn]) -> tuple[Photo, ...]:
        """Enter pictures that were taken in, as one act; those already there stay single.

        Raises
        ------
        ImpossibleInput
            field "batch_id", reason "not_begun", for a batch that is only planned.
        """
        with self._door.store.read() as unit:
            home = _home(unit, owner)
            if home.stage is BatchStage.PLANNED:
                raise ImpossibleInput("batch_id", home.batch_id, reason="not_begun")
            known = {row.content_hash for row in _photos_of(unit, owner)}
        drafts: list[PhotoDraft] = []
        for one in taken:
            if one.content_hash not in known:
                known.add(one.content_hash)
                drafts.append(_draft(one, home, owner))
        if not drafts:
            return ()

        return self._perform_add(home, drafts)

    def _perform_add(self, home: _Home, drafts: Sequence[PhotoDraft]) -> tuple[Photo, ...]:
        def work(unit: UnitOfWork) -> tuple[Photo, ...]:
            return tuple(unit.photos.add(draft) for draft in drafts)

        return self._door.perform(
            ActKind.ADD_PHOTOS,
            {"count": len(drafts), "name": home.name},
            work,
            topics=Topic.PHOTOS,
            batch_id=home.batch_id,
            vessel_id=home.vessel_id,
            culture_id=home.culture_id,
        )

    def add_told(self, owner: PhotoOwner, told: Sequence[tuple[TakenIn, datetime, str]]) -> None:
        """Enter pictures with when they were taken and what they show, as one act."""
        with self._door.store.read() as unit:
            home = _home(unit, owner)
        drafts = [
            replace(_draft(taken, home, owner), taken_at=taken_at, caption=caption)
            for taken, taken_at, caption in told
        ]
        self._perform_add(home, drafts)

    def edit(
        self, photo_id: int, *, caption: str | None = None, taken_at: datetime | None = None
    ) -> Photo:
        """Word a photo anew, or put right when it was taken.

        Raises
        ------
        ImpossibleInput
            field "caption" (too_long) or "at" (in_future, too_early).
        """
        old = self.get(photo_id)
        fields: dict[str, object] = {}
        if caption is not None:
            words = " ".join(caption.split())
            if len(words) > CAPTION_LIMIT:
                raise ImpossibleInput("text", len(words), high=CAPTION_LIMIT, reason="too_long")
            fields["caption"] = words
        if taken_at is not None:
            if taken_at > self._door.clock.now() + LATEST_AFTER_NOW:
                raise ImpossibleInput("at", taken_at, reason="in_future")
            fields["taken_at"] = taken_at.astimezone(UTC)
        return self._perform_on(
            ActKind.EDIT_PHOTO, old, lambda unit: unit.photos.change(photo_id, **fields)
        )

    def remove(self, photo_id: int) -> None:
        """Take a photo out, until undone. Its file stays, for undo."""
        old = self.get(photo_id)
        self._perform_on(ActKind.REMOVE_PHOTO, old, lambda unit: unit.photos.remove(photo_id))

    def sweep(self) -> int:
        """Delete files that no photo and no act of the history names. Slow: run it as a job."""
        with self._door.store.read() as unit:
            shown = {photo.content_hash for photo in unit.photos.where()}

        def is_named(content_hash: str) -> bool:
            if content_hash in shown:
                return True
            with self._door.store.read() as unit:
                return unit.acts.is_named(content_hash)

        if self._shared is not None:
            self._shared.sweep(is_named)
        return self.folder.sweep(is_named, self._door.clock.now())

    def _perform_on(
        self, kind: ActKind, photo: Photo, work: Callable[[UnitOfWork], Photo | None]
    ) -> Photo:
        owner = (
            PhotoOwner(batch_id=photo.batch_id)
            if photo.batch_id is not None
            else PhotoOwner(culture_id=photo.culture_id)
        )
        with self._door.store.read() as unit:
            home = _home(unit, owner)
        changed = self._door.perform(
            kind,
            {"name": home.name},
            work,
            topics=Topic.PHOTOS,
            batch_id=home.batch_id,
            vessel_id=home.vessel_id,
            culture_id=home.culture_id,
        )
        return changed if changed is not None else photo

    def _take_all(
        self, sources: Sequence[Source], look_into: LookInto
    ) -> tuple[tuple[TakenIn, ...], tuple[Refusal, ...]]:
        taken: list[TakenIn] = []
        refused: list[Refusal] = []
        for number, source in enumerate(sources):
            if number >= MOST_AT_ONCE:
                refused.append(Refusal(source.name, "too_many"))
                continue
            try:
                taken.append(self.take_in(source, look_into))
            except PhotoTrouble as trouble:
                refused.append(Refusal(source.name, trouble.code))
        return tuple(taken), tuple(refused)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Home:
    """What a photo hangs on, and the name it is told by."""

    name: str
    batch_id: int | None = None
    vessel_id: int | None = None
    culture_id: int | None = None
    stage: BatchStage | None = None


def _home(unit: ReadUnit, owner: PhotoOwner) -> _Home:
    if owner.culture_id is not None:
        return _Home(name=unit.cultures.get(owner.culture_id).name, culture_id=owner.culture_id)
    batch_id = owner.batch_id
    if owner.reading_id is not None:
        batch_id = unit.readings.get(owner.reading_id).batch_id
    assert batch_id is not None  # an owner has exactly one id
    batch = unit.batches.get(batch_id)
    return _Home(name=batch.name, batch_id=batch.id, vessel_id=batch.vessel_id, stage=batch.stage)


def _photos_of(unit: ReadUnit, owner: PhotoOwner) -> tuple[Photo, ...]:
    order = ("-taken_at", "-id")
    if owner.batch_id is not None:
        return unit.photos.where(order_by=order, batch_id=owner.batch_id)
    if owner.culture_id is not None:
        return unit.photos.where(order_by=order, culture_id=owner.culture_id)
    return unit.photos.where(order_by=order, reading_id=owner.reading_id)


def _draft(taken: TakenIn, home: _Home, owner: PhotoOwner) -> PhotoDraft:
    return PhotoDraft(
        content_hash=taken.content_hash,
        media_type=taken.facts.media_type,
        width_px=taken.facts.width_px,
        height_px=taken.facts.height_px,
        size_bytes=taken.size_bytes,
        taken_at=taken.taken_at,
        batch_id=home.batch_id,
        culture_id=home.culture_id,
        reading_id=owner.reading_id,
    )


def _is_likely(at: datetime, now: datetime) -> bool:
    return _EARLIEST <= at <= now + LATEST_AFTER_NOW
