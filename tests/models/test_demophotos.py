"""The painted photos of the invented pantry."""

from __future__ import annotations

import pytest

from brewdesk.models.demophotos import add_demo_photos
from brewdesk.models.pictures import thumbnail
from brewdesk.services import demo
from brewdesk.services.desk import build_desk
from brewdesk.services.photofiles import FileState, PhotoTrouble
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import BatchStage
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs


@pytest.fixture
def desk(tmp_path, qapp):
    clock = FakeClock()
    store = Store.open(tmp_path / "pantry.brewdesk", now=clock.now(), is_demo=True)
    made = build_desk(store, clock, jobs=InlineJobs(hold=True), notifier=FakeNotifier())
    yield made
    store.close()


def all_photos(desk):
    return [
        photo
        for batch in desk.batches.all()
        for photo in desk.photos.of(PhotoOwner(batch_id=batch.id))
    ]


def test_the_invented_pantry_has_photos_that_say_they_are_invented(desk):
    assert demo.fill_if_empty(desk)
    add_demo_photos(desk)
    photos = all_photos(desk)
    assert len(photos) == 3
    assert all("invented" in photo.caption for photo in photos)
    assert sum(photo.size_bytes for photo in photos) < 300_000
    for photo in photos:
        assert thumbnail(desk.photos.folder, photo, 100).state is FileState.FINE
        batch = desk.batches.get(photo.batch_id)
        assert batch.stage is BatchStage.SOURING
        assert batch.started_at < photo.taken_at <= desk.clock.now()


def test_all_of_the_invented_pantry_can_be_undone_and_done_again(desk):
    troubles = []
    desk.history.trouble.connect(troubles.append)
    empty = without_settings(desk)
    assert demo.fill_if_empty(desk)
    add_demo_photos(desk)
    full = without_settings(desk)
    while desk.history.undo_act() is not None and not troubles:
        desk.history.undo()
    assert troubles == []
    assert without_settings(desk) == empty
    while desk.history.redo_act() is not None and not troubles:
        desk.history.redo()
    assert troubles == []
    assert without_settings(desk) == full


def without_settings(desk):
    """What lies in the store; places, settings and reminders are the program's own doing."""
    own = ("setting:", "reminder:", "place:")
    return [line for line in dump(desk.store.path).splitlines() if not line.startswith(own)]


def test_a_pantry_that_was_filled_before_gets_none_again(desk):
    assert demo.fill_if_empty(desk)
    assert not demo.fill_if_empty(desk)


def test_an_empty_pantry_gets_none(desk):
    add_demo_photos(desk)
    assert all_photos(desk) == []


def test_a_folder_that_takes_none_is_no_trouble(desk, monkeypatch):
    def refuse(*_arguments: object) -> None:
        raise PhotoTrouble("disk_full")

    monkeypatch.setattr(desk.photos.folder, "write", refuse)
    demo.fill_if_empty(desk)
    add_demo_photos(desk)
    assert all_photos(desk) == []
