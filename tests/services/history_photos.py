"""The acts on photos, for the tests of the history: what has to be there before, and the act."""

from __future__ import annotations

from brewdesk.models.pictures import look_into
from brewdesk.services.acts import ActKind
from brewdesk.services.photos import PhotoOwner
from tests.helpers.pictures import offered, picture


def _taken_in(kit):
    batch = kit.souring()
    taken = kit.photos.take_in(offered(picture()), look_into)
    return PhotoOwner(batch_id=batch.id), taken


def _added(kit):
    owner, taken = _taken_in(kit)
    return kit.photos.add(owner, [taken])[0]


PHOTO_ACTS = {
    ActKind.ADD_PHOTOS: (
        _taken_in,
        lambda kit, prepared: kit.photos.add(prepared[0], [prepared[1]]),
    ),
    ActKind.EDIT_PHOTO: (
        _added,
        lambda kit, photo: kit.photos.edit(photo.id, caption="Second film"),
    ),
    ActKind.REMOVE_PHOTO: (_added, lambda kit, photo: kit.photos.remove(photo.id)),
}
