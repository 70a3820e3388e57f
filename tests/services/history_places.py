"""The acts on places: what has to be there before each, and the act itself."""

from __future__ import annotations

from datetime import timedelta

from brewdesk.services.acts import ActKind
from brewdesk.services.packedsamples import pack_pairs
from brewdesk.services.placelog import PlaceLog
from brewdesk.store.records import PlaceDraft


def samples_before(kit, *celsius):
    """Pack one sample an hour that end with the present."""
    now_s = int(kit.clock.now().timestamp())
    count = len(celsius)
    return pack_pairs((now_s - 3600 * (count - n), value) for n, value in enumerate(celsius, 1))


def _log(kit):
    return PlaceLog(kit.door)


def _cellar(kit):
    return kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))


def _read(kit):
    return _log(kit).read_place(_cellar(kit).id, 13.5)


def _imported(kit):
    return _log(kit).add_log(_cellar(kit).id, "cellar.csv", samples_before(kit, 13.0, 13.5))


def _full_place(kit):
    place = _cellar(kit)
    _log(kit).read_place(place.id, 13.5, kit.clock.now() - timedelta(days=1))
    _log(kit).add_log(place.id, "cellar.csv", samples_before(kit, 13.0, 13.5))
    return place


PLACE_ACTS = {
    ActKind.REMOVE_PLACE: (
        _full_place,
        lambda kit, place: _log(kit).remove_place(place.id),
    ),
    ActKind.READ_PLACE: (_cellar, lambda kit, place: _log(kit).read_place(place.id, 13.5)),
    ActKind.DROP_PLACE_READING: (_read, lambda kit, row: _log(kit).drop_reading(row.id)),
    ActKind.IMPORT_TEMPERATURES: (
        _cellar,
        lambda kit, place: _log(kit).add_log(
            place.id, "cellar.csv", samples_before(kit, 13.0, 13.5)
        ),
    ),
    ActKind.DROP_TEMPERATURES: (_imported, lambda kit, row: _log(kit).drop_log(row.id)),
}
