"""Pictures of every kind, and files that pretend to be some."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtGui import QColor, QImage

from brewdesk.models import pictures
from brewdesk.models.pictures import full_image, look_into, thumbnail, without_camera_data
from brewdesk.services.cameradata import read_camera_data
from brewdesk.services.photofiles import FileState, PhotoFolder, PhotoTrouble
from brewdesk.store.records import Photo
from tests.helpers.pictures import encoded, huge_png, picture, tiff_block, with_exif

# Qt and its codecs say on the log what they think of broken files.
grumbles = pytest.mark.qt_log_ignore(".", extend=True)

KINDS = [
    ("jpg", "image/jpeg"),
    ("png", "image/png"),
    ("webp", "image/webp"),
    ("bmp", "image/bmp"),
    ("tiff", "image/tiff"),
]


def code_of(data: bytes) -> str:
    with pytest.raises(PhotoTrouble) as trouble:
        look_into(data)
    return trouble.value.code


@pytest.fixture
def folder(tmp_path):
    return PhotoFolder(tmp_path / "pantry.brewdesk")


def kept(folder: PhotoFolder, data: bytes) -> Photo:
    facts = look_into(data)
    return Photo(
        id=1,
        content_hash=folder.keep(data, facts.media_type),
        media_type=facts.media_type,
        width_px=facts.width_px,
        height_px=facts.height_px,
        size_bytes=len(data),
        taken_at=datetime(2026, 11, 25, tzinfo=UTC),
        batch_id=1,
    )


@pytest.mark.parametrize(("kind", "media_type"), KINDS)
def test_a_picture_is_known_by_its_content(kind, media_type):
    facts = look_into(picture(kind, 61, 47))
    assert (facts.media_type, facts.width_px, facts.height_px) == (media_type, 61, 47)


@pytest.mark.parametrize("kind", [kind for kind, _ in KINDS])
def test_a_picture_of_one_pixel_is_one(kind):
    facts = look_into(picture(kind, 1, 1))
    assert (facts.width_px, facts.height_px) == (1, 1)


def test_a_gif_is_known_too():
    data = (
        b"GIF89a\x01\x00\x01\x00\x80\x00\x00\x10\x20\x30\xff\xff\xff"
        b"\x2c\x00\x00\x00\x00\x01\x00\x01\x00\x00\x02\x02\x44\x01\x00\x3b"
    )
    assert look_into(data).media_type == "image/gif"


@grumbles
@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"hello",
        b"%PDF-1.7\n",
        b"\x7fELF" + b"\0" * 100,
        b'<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><rect/></svg>',
        b"P6 9 9 255 " + b"\0" * 300,
    ],
    ids=["empty", "words", "document", "program", "drawing", "bare pixels"],
)
def test_what_is_no_photo_is_refused(data):
    assert code_of(data) in ("not_a_picture", "broken")


@grumbles
@pytest.mark.parametrize("kind", [kind for kind, _ in KINDS])
@pytest.mark.parametrize("share", [0.1, 0.5, 0.9])
def test_a_picture_that_breaks_off_is_refused(kind, share):
    whole = picture(kind, 300, 200)
    assert code_of(whole[: int(len(whole) * share)]) in ("not_a_picture", "broken")


@grumbles
@pytest.mark.parametrize("side", [20_000, 1_000_000])
def test_a_picture_that_would_unfold_is_refused_before_it_does(side, monkeypatch):
    def unfold(*_arguments: object) -> QImage:
        raise AssertionError("it was decoded")

    monkeypatch.setattr(pictures, "_decoded", unfold)
    data = huge_png(side, side)
    assert len(data) < 1000
    assert code_of(data) in ("too_many_pixels", "broken", "not_a_picture")


@grumbles
def test_the_limit_of_pixels_itself_is_told():
    assert code_of(huge_png(10_000, 6_001)) == "too_many_pixels"


@grumbles
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    data=st.binary(max_size=300),
    head=st.sampled_from(
        [b"\xff\xd8\xff\xe0", b"\x89PNG\r\n\x1a\n", b"RIFF\xff\0\0\0WEBPVP8 ", b"GIF89a", b"BM"]
    ),
)
def test_bytes_behind_a_true_beginning_are_refused_or_read(data, head):
    try:
        facts = look_into(head + data)
    except PhotoTrouble as trouble:
        refused = trouble.code
    else:
        refused = "" if facts.width_px * facts.height_px > 0 else "an empty picture"
    assert refused in ("", "not_a_picture", "broken", "too_many_pixels")


# small and large


def test_a_photo_is_shown_as_the_camera_was_held(folder):
    image = QImage(40, 20, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    for x in range(20):
        for y in range(20):
            image.setPixelColor(x, y, QColor("black"))  # the left half is dark
    photo = kept(folder, with_exif(encoded(image, "jpg"), tiff_block(orientation=6)))
    shown = full_image(folder, photo)  # orientation 6: turned right, so the dark is on top
    assert (photo.width_px, photo.height_px) == (20, 40) == (shown.width(), shown.height())
    assert shown.pixelColor(10, 5).lightness() < 60
    assert shown.pixelColor(10, 35).lightness() > 200
    small = thumbnail(folder, photo, 20).image
    assert small.height() == 20
    assert small.pixelColor(5, 2).lightness() < 60


def test_a_small_picture_keeps_its_shape_and_is_cached(folder, monkeypatch):
    photo = kept(folder, picture("png", 1200, 800))
    first = thumbnail(folder, photo, 300)
    assert first.image.width() == 300
    assert abs(first.image.height() - 200) <= 1
    cached = folder.thumbnail_path(photo, pictures.THUMBNAIL_PX)
    assert cached.is_file()
    cached.write_bytes(picture("jpg", 512, 341, seed=99))
    again = thumbnail(folder, photo, 300)
    assert again.image.pixelColor(1, 1) != first.image.pixelColor(1, 1)


@grumbles
def test_a_broken_cache_is_made_anew(folder):
    photo = kept(folder, picture("png", 1200, 800))
    first = thumbnail(folder, photo, 300).image
    folder.thumbnail_path(photo, pictures.THUMBNAIL_PX).write_bytes(b"broken")
    assert thumbnail(folder, photo, 300).image.size() == first.size()


def test_a_thin_picture_keeps_at_least_a_pixel(folder):
    photo = kept(folder, picture("png", 2000, 1))
    assert thumbnail(folder, photo, 300).image.height() == 1


def test_missing_and_damaged_files_are_told_apart(folder):
    photo = kept(folder, picture())
    path = folder.path_of(photo)
    thumbnail(folder, photo, 100)
    path.write_bytes(picture(seed=5))
    assert thumbnail(folder, photo, 100).state is FileState.DAMAGED
    path.unlink()
    lost = thumbnail(folder, photo, 100)
    assert (lost.state, lost.image) == (FileState.MISSING, None)


def test_a_folder_that_takes_no_cache_still_shows(folder, monkeypatch):
    photo = kept(folder, picture("png", 1200, 800))

    def refuse(*_arguments: object) -> None:
        raise PhotoTrouble("disk_full")

    monkeypatch.setattr(folder, "write", refuse)
    assert thumbnail(folder, photo, 300).state is FileState.FINE


def test_a_small_picture_says_whether_the_file_knows_the_place(folder):
    with_place = with_exif(picture("jpg"), tiff_block(has_position=True))
    assert thumbnail(folder, kept(folder, with_place), 50).has_location
    assert not thumbnail(folder, kept(folder, picture("jpg")), 50).has_location


# giving away


@pytest.mark.parametrize("kind", ["jpg", "png"])
def test_a_clean_copy_holds_pixels_and_nothing_else(kind):
    image = QImage(40, 20, QImage.Format.Format_RGB32)
    image.fill(QColor(40, 120, 200))
    image.setText("Author", "an invented person")
    block = tiff_block("2026:11:20 18:00:00", orientation=6, has_position=True)
    data = with_exif(encoded(image, kind), block) + b'exif:GPSLatitude="1"'
    assert read_camera_data(data).has_location

    clean, ending = without_camera_data(data, look_into(data).media_type)

    assert ending == kind
    told = read_camera_data(clean)
    assert (told.taken_at, told.has_location) == (None, False)
    assert b"invented person" not in clean
    assert b"Exif" not in clean
    facts = look_into(clean)
    assert (facts.width_px, facts.height_px) == ((20, 40) if kind == "jpg" else (40, 20))
    colour = QImage.fromData(clean).pixelColor(10, 10)
    assert abs(colour.blue() - 200) < 6
    assert abs(colour.red() - 40) < 6


def test_a_clean_copy_keeps_what_is_transparent():
    image = QImage(9, 9, QImage.Format.Format_ARGB32)
    image.fill(QColor(10, 20, 30, 0))
    clean, ending = without_camera_data(encoded(image, "png"), "image/png")
    assert ending == "png"
    assert QImage.fromData(clean).pixelColor(4, 4).alpha() == 0
