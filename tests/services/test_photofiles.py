"""The photos' folder: named by content, written whole, private, swept with care."""

from __future__ import annotations

import errno
import hashlib
import os
import stat
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services import photofiles
from brewdesk.services.photofiles import PhotoFolder, PhotoTrouble, Source, file_time, read_source
from brewdesk.store.records import PhotoDraft

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)


def entry(content_hash: str, media_type: str = "image/png") -> PhotoDraft:
    return PhotoDraft(
        content_hash=content_hash,
        media_type=media_type,
        width_px=1,
        height_px=1,
        size_bytes=1,
        taken_at=NOW,
        batch_id=1,
    )


@pytest.fixture
def folder(tmp_path):
    return PhotoFolder(tmp_path / "pantry.brewdesk")


def age(path: Path, days: float) -> None:
    moment = (NOW - timedelta(days=days)).timestamp()
    os.utime(path, (moment, moment))


def test_a_picture_lies_beside_the_store_under_its_hash(folder, tmp_path):
    name = folder.keep(b"some bytes", "image/jpeg")
    assert name == hashlib.sha256(b"some bytes").hexdigest()
    path = tmp_path / "pantry.photos" / name[:2] / f"{name}.jpg"
    assert path.read_bytes() == b"some bytes"
    assert folder.path_of(entry(name, "image/jpeg")) == path


def test_only_the_owner_can_look(folder):
    path = folder.path_of(entry(folder.keep(b"some bytes", "image/png")))
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert stat.S_IMODE(path.parent.stat().st_mode) == 0o700
    assert stat.S_IMODE(folder.root.stat().st_mode) == 0o700


def test_the_same_picture_twice_is_one_file(folder):
    first = folder.keep(b"some bytes", "image/png")
    assert folder.keep(b"some bytes", "image/png") == first
    assert [path.name for path in folder.root.rglob("*") if path.is_file()] == [f"{first}.png"]


@given(data=st.binary(min_size=0, max_size=2000))
def test_what_is_kept_comes_back_to_the_byte(tmp_path_factory, data):
    folder = PhotoFolder(tmp_path_factory.mktemp("photos") / "pantry.brewdesk")
    name = folder.keep(data, "image/webp")
    assert folder.read(entry(name, "image/webp")) == data
    assert hashlib.sha256(data).hexdigest() == name


def test_a_missing_and_a_changed_file_are_told_apart_and_mended_by_the_picture_itself(folder):
    name = folder.keep(b"some bytes", "image/png")
    path = folder.path_of(entry(name))
    path.write_bytes(b"other bytes")
    with pytest.raises(PhotoTrouble) as trouble:
        folder.read(entry(name))
    assert trouble.value.code == "damaged"
    path.unlink()
    with pytest.raises(PhotoTrouble) as trouble:
        folder.read(entry(name))
    assert trouble.value.code == "missing"
    folder.keep(b"some bytes", "image/png")
    assert folder.read(entry(name)) == b"some bytes"


def test_a_link_in_a_files_place_is_replaced_and_not_followed(folder, tmp_path):
    name = folder.keep(b"some bytes", "image/png")
    path = folder.path_of(entry(name))
    outside = tmp_path / "outside.png"
    outside.write_bytes(b"some bytes")
    path.unlink()
    path.symlink_to(outside)
    folder.keep(b"some bytes", "image/png")
    assert not path.is_symlink()
    assert outside.read_bytes() == b"some bytes"


@pytest.mark.parametrize("name", ["../" + "a" * 61, "", "A" * 64, "g" * 64, "a" * 63])
def test_a_name_that_is_no_hash_leads_nowhere(folder, name):
    with pytest.raises(PhotoTrouble) as trouble:
        folder.path_of(entry(name))
    assert trouble.value.code == "damaged"


@pytest.mark.parametrize(
    ("number", "code"),
    [
        (errno.ENOSPC, "disk_full"),
        (errno.EDQUOT, "disk_full"),
        (errno.EROFS, "read_only"),
        (errno.EACCES, "read_only"),
        (errno.EIO, "io_error"),
    ],
)
def test_a_disk_that_refuses_is_told_and_nothing_is_left_behind(folder, monkeypatch, number, code):
    def refuse(_path: Path) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(photofiles, "sync_file", refuse)
    with pytest.raises(PhotoTrouble) as trouble:
        folder.keep(b"some bytes", "image/png")
    assert trouble.value.code == code
    assert [path for path in folder.root.rglob("*") if path.is_file()] == []


def test_a_file_in_the_folders_place_is_told(folder):
    folder.root.write_bytes(b"in the way")
    with pytest.raises(PhotoTrouble) as trouble:
        folder.keep(b"some bytes", "image/png")
    assert trouble.value.code == "io_error"
    assert folder.root.read_bytes() == b"in the way"


def test_sweeping_takes_only_old_files_that_nobody_names(folder):
    named, old, fresh = (folder.keep(data, "image/png") for data in (b"1", b"2", b"3"))
    strange = folder.root / old[:2] / "notes.txt"
    strange.write_bytes(b"not ours")
    broken = folder.root / old[:2] / f".{old}.png.0badf00d.unfinished"
    broken.write_bytes(b"half")
    small = folder.thumbnail_path(entry(old), 512)
    folder.write(small, b"small")
    for path in folder.root.rglob("*"):
        if path.is_file():
            age(path, days=2)
    age(folder.path_of(entry(fresh)), days=0.5)

    gone = folder.sweep(lambda name: name == named, NOW)

    assert gone == 3
    left = {path.name for path in folder.root.rglob("*") if path.is_file()}
    assert left == {f"{named}.png", f"{fresh}.png", "notes.txt"}


def test_keeping_a_picture_again_saves_it_from_the_sweep(folder):
    name = folder.keep(b"some bytes", "image/png")
    age(folder.path_of(entry(name)), days=9)
    folder.keep(b"some bytes", "image/png")
    kept_at = datetime.fromtimestamp(folder.path_of(entry(name)).stat().st_mtime, UTC)
    assert folder.sweep(lambda _name: False, kept_at + timedelta(hours=1)) == 0
    assert folder.read(entry(name)) == b"some bytes"


def test_sweeping_without_a_folder_finds_nothing(folder):
    assert folder.sweep(lambda _name: False, NOW) == 0


# what is offered


def code_of(source: Source) -> str:
    with pytest.raises(PhotoTrouble) as trouble:
        read_source(source)
    return trouble.value.code


def test_a_file_is_read_through_a_link_and_whatever_its_name(tmp_path):
    path = tmp_path / "jar\n\u202egpj.exe"
    path.write_bytes(b"some bytes")
    link = tmp_path / "link.png"
    link.symlink_to(path)
    assert read_source(Source(link.name, link)) == b"some bytes"
    assert file_time(Source(path.name, path)) is not None


def test_what_is_no_file_is_refused_before_it_is_read(tmp_path):
    pipe = tmp_path / "pipe.png"
    os.mkfifo(pipe)
    assert code_of(Source("pipe.png", pipe)) == "not_a_picture"
    assert code_of(Source("folder", tmp_path)) == "not_a_picture"
    assert code_of(Source("gone", tmp_path / "gone")) == "no_file"
    loop = tmp_path / "loop"
    loop.symlink_to(loop)
    assert code_of(Source("loop", loop)) == "unreadable"
    assert code_of(Source("elsewhere")) == "no_file"
    assert file_time(Source("gone", tmp_path / "gone")) is None


def test_a_file_over_the_limit_is_refused_and_one_at_it_is_read(tmp_path, monkeypatch):
    monkeypatch.setattr(photofiles, "MAX_BYTES", 100)
    path = tmp_path / "large.png"
    path.write_bytes(b"x" * 100)
    assert len(read_source(Source("large", path))) == 100
    path.write_bytes(b"x" * 101)
    assert code_of(Source("large", path)) == "too_large"
    assert code_of(Source("large", make=lambda: b"x" * 101)) == "too_large"
