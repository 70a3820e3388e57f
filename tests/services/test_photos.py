"""Photos as the maker keeps them: entered together, worded, put right, taken out, undone."""

from __future__ import annotations

import os
from datetime import timedelta

import pytest

from brewdesk.models.pictures import look_into
from brewdesk.services.changes import Topic
from brewdesk.services.photofiles import PhotoTrouble, Source
from brewdesk.services.photos import MOST_AT_ONCE, Brought, PhotoOwner
from brewdesk.services.wording.photos import brought_words, printable_name
from brewdesk.store.errors import NoSuchRow, StoreTrouble
from brewdesk.store.records import ReadingDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import Method, Quantity
from tests.helpers.pictures import offered, picture, tiff_block, with_exif


@pytest.fixture
def batch(kit):
    return kit.souring()


@pytest.fixture
def owner(batch):
    return PhotoOwner(batch_id=batch.id)


def bring(kit, owner, *sources) -> Brought:
    heard = []
    kit.photos.bring(owner, sources, look_into, heard.append)
    (brought,) = heard
    return brought


def test_pictures_are_entered_together_as_one_act(kit, owner, batch):
    kit.heard.clear()
    brought = bring(kit, owner, *(offered(picture(seed=n)) for n in range(3)))
    assert len(brought.photos) == 3
    assert {photo.batch_id for photo in brought.photos} == {batch.id}
    (change,) = kit.heard
    assert change.concerns(Topic.PHOTOS)
    assert change.batch_ids == {batch.id}
    kit.history.undo()
    assert kit.photos.of(owner) == ()


def test_an_entry_says_what_the_file_is(kit, owner):
    data = picture("jpg", 60, 40)
    (photo,) = bring(kit, owner, offered(data)).photos
    assert (photo.media_type, photo.width_px, photo.height_px) == ("image/jpeg", 60, 40)
    assert photo.size_bytes == len(data)
    assert kit.photos.folder.read(photo) == data


def test_the_files_name_decides_nothing(kit, owner, tmp_path):
    path = tmp_path / "really.jpg"
    path.write_bytes(picture("png"))
    (photo,) = bring(kit, owner, Source(path.name, path)).photos
    assert photo.media_type == "image/png"
    assert kit.photos.folder.path_of(photo).suffix == ".png"


def test_bad_pictures_are_refused_by_name_and_the_good_ones_are_kept(kit, owner):
    brought = bring(kit, owner, offered(b"hello", "letter.jpg"), offered(picture(), "film.png"))
    assert len(brought.photos) == 1
    assert [(one.name, one.code) for one in brought.refused] == [("letter.jpg", "not_a_picture")]
    words = brought_words(brought)
    assert "One photo added." in words
    assert "letter.jpg" in words


def test_the_same_picture_is_entered_once_for_one_batch_and_again_for_another(kit, owner):
    data = picture()
    assert bring(kit, owner, offered(data), offered(data)).known_count == 1
    again = bring(kit, owner, offered(data))
    assert again.photos == ()
    assert again.known_count == 1
    other = kit.souring(kit.vessel("Short jar"), name="Black tea 2")
    (photo,) = bring(kit, PhotoOwner(batch_id=other.id), offered(data)).photos
    assert photo.content_hash == kit.photos.of(owner)[0].content_hash


def test_no_more_than_the_limit_are_taken_at_once(kit, owner):
    same = picture()
    brought = bring(kit, owner, *(offered(same, f"{n}") for n in range(MOST_AT_ONCE + 2)))
    assert [one.code for one in brought.refused] == ["too_many", "too_many"]


def test_photos_of_a_culture_and_of_a_reading(kit, batch):
    culture = kit.culture("Ferry")
    (of_culture,) = bring(kit, PhotoOwner(culture_id=culture.id), offered(picture())).photos
    assert (of_culture.culture_id, of_culture.batch_id) == (culture.id, None)
    reading = kit.readings.record([_ph(kit, batch)])[0]
    mine = PhotoOwner(reading_id=reading.id)
    (of_reading,) = bring(kit, mine, offered(picture(seed=2))).photos
    assert (of_reading.reading_id, of_reading.batch_id) == (reading.id, batch.id)
    assert kit.photos.of(mine) == (of_reading,)
    assert kit.photos.of(PhotoOwner(batch_id=batch.id)) == (of_reading,)
    assert kit.photos.name_of(mine) == batch.name


def _ph(kit, batch):
    return ReadingDraft(
        batch_id=batch.id,
        at=kit.clock.now(),
        quantity=Quantity.PH,
        method=Method.METER,
        value=3.4,
    )


def test_a_reading_that_goes_leaves_its_photos_with_the_batch_until_it_comes_back(kit, batch):
    reading = kit.readings.record([_ph(kit, batch)])[0]
    (photo,) = bring(kit, PhotoOwner(reading_id=reading.id), offered(picture())).photos
    kit.readings.remove(reading.id)
    assert kit.photos.get(photo.id).reading_id is None
    assert kit.photos.of(PhotoOwner(batch_id=batch.id))
    kit.history.undo()
    assert kit.photos.get(photo.id).reading_id == reading.id


@pytest.mark.parametrize(
    "ids", [{}, {"batch_id": 1, "culture_id": 1}, {"batch_id": 1, "reading_id": 1}]
)
def test_a_photo_is_of_one_thing(ids):
    with pytest.raises(ValueError, match="one batch, culture or reading"):
        PhotoOwner(**ids)


def test_a_plan_has_nothing_to_show(kit):
    planned = kit.plan()
    taken = kit.photos.take_in(offered(picture()), look_into)
    with pytest.raises(ImpossibleInput) as fault:
        kit.photos.add(PhotoOwner(batch_id=planned.id), [taken])
    assert (fault.value.field, fault.value.reason) == ("batch_id", "not_begun")


def test_what_keeps_the_entry_from_being_written_is_told(kit):
    planned = kit.plan()
    failed = []
    kit.photos.bring(
        PhotoOwner(batch_id=planned.id), [offered(picture())], look_into, print, failed.append
    )
    assert [type(error) for error in failed] == [ImpossibleInput]


# when it was taken


def test_the_camera_knows_when_else_the_file_does_else_it_is_now(kit, owner, tmp_path):
    block = tiff_block("2026:11:20 18:00:00", "+01:00")
    path = tmp_path / "film.jpg"
    path.write_bytes(with_exif(picture("jpg"), block))
    written_at = kit.clock.now() - timedelta(days=2)
    os.utime(path, (written_at.timestamp(), written_at.timestamp()))
    by_camera = kit.photos.take_in(Source("film", path), look_into)
    assert by_camera.taken_at == kit.clock.now().replace(day=20, hour=17)

    path.write_bytes(picture("jpg"))
    os.utime(path, (written_at.timestamp(), written_at.timestamp()))
    assert kit.photos.take_in(Source("film", path), look_into).taken_at == written_at

    assert kit.photos.take_in(offered(picture()), look_into).taken_at == kit.clock.now()


@pytest.mark.parametrize("taken", ["2031:01:01 00:00:00", "1980:01:01 00:00:00"])
def test_a_camera_whose_clock_was_never_set_is_not_believed(kit, taken):
    data = with_exif(picture("jpg"), tiff_block(taken))
    assert kit.photos.take_in(offered(data), look_into).taken_at == kit.clock.now()


def test_the_time_can_be_put_right_and_the_list_follows(kit, owner):
    first, second = bring(kit, owner, offered(picture(seed=1)), offered(picture(seed=2))).photos
    kit.photos.edit(second.id, taken_at=kit.clock.now() - timedelta(days=3))
    assert [photo.id for photo in kit.photos.of(owner)] == [first.id, second.id]
    with pytest.raises(ImpossibleInput) as fault:
        kit.photos.edit(first.id, taken_at=kit.clock.now() + timedelta(hours=1))
    assert (fault.value.field, fault.value.reason) == ("at", "in_future")


# words


def test_a_caption_stands_on_one_line_and_has_an_end(kit, owner):
    (photo,) = bring(kit, owner, offered(picture())).photos
    assert kit.photos.edit(photo.id, caption="  Second\n film ").caption == "Second film"
    with pytest.raises(ImpossibleInput) as fault:
        kit.photos.edit(photo.id, caption="x" * 2001)
    assert fault.value.reason == "too_long"
    kit.history.undo()
    assert kit.photos.get(photo.id).caption == ""


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("film.jpg", "film.jpg"),
        ("a\nb\tc.jpg", "a b c.jpg"),
        ("exe.\u202egpj", "exe. gpj"),
        ("\u200b\u2066", "a picture"),
        ("x" * 100, "x" * 20 + "…" + "x" * 20),
    ],
)
def test_a_strange_name_is_shown_on_one_line_in_reading_order(name, shown):
    assert printable_name(name) == shown


# taking out, and the file


def test_a_photo_taken_out_comes_back_with_its_file(kit, owner):
    (photo,) = bring(kit, owner, offered(picture())).photos
    kit.photos.remove(photo.id)
    with pytest.raises(NoSuchRow):
        kit.photos.get(photo.id)
    assert kit.photos.sweep() == 0
    kit.history.undo()
    assert kit.photos.folder.read(kit.photos.get(photo.id)) == picture()


def test_only_what_neither_a_photo_nor_undo_nor_redo_can_want_is_swept(kit, owner):
    kept, undone = (bring(kit, owner, offered(picture(seed=n))).photos[0] for n in (1, 2))
    orphan = kit.photos.take_in(offered(picture(seed=3)), look_into)
    kit.history.undo()  # the second can still be done again
    folder = kit.photos.folder
    old = (kit.clock.now() - timedelta(days=5)).timestamp()
    for path in folder.root.rglob("*.png"):
        os.utime(path, (old, old))

    assert kit.photos.sweep() == 1

    assert folder.read(undone) == picture(seed=2)
    assert folder.read(kept) == picture(seed=1)
    assert not list(folder.root.rglob(f"{orphan.content_hash}*"))

    kit.photos.edit(kept.id, caption="the second is given up by this")
    for path in folder.root.rglob("*.png"):
        os.utime(path, (old, old))
    assert kit.photos.sweep() == 1
    with pytest.raises(PhotoTrouble):
        folder.read(undone)


def test_a_photo_of_nothing_is_refused_by_the_store(kit):
    taken = kit.photos.take_in(offered(picture()), look_into)
    with pytest.raises(StoreTrouble):
        kit.photos.add(PhotoOwner(batch_id=999), [taken])
