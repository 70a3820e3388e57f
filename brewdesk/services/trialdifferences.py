"""In what the jars of a trial differ beside its factor."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import timedelta

from brewdesk.services.trialview import Difference, TrialJarView
from brewdesk.store.records import Batch, Place, Vessel
from brewdesk.store.trialrecords import Trial
from culturecore.stages import TrialFactor

_SAME_START = timedelta(hours=12)
# What a factor changes itself is no difference beside it.
_OWN = {
    TrialFactor.TEA: {"tea_kind"},
    TrialFactor.TEA_STRENGTH: {"tea_g_per_l"},
    TrialFactor.SUGAR: {"sugar_g_per_l"},
    TrialFactor.STARTER_SHARE: {"starter_share"},
    TrialFactor.CULTURE: {"culture"},
    TrialFactor.PLACE: {"place", "place_temperature_c"},
    TrialFactor.VESSEL: {"fill_volume_l", "inner_diameter_cm", "shape", "material"},
    TrialFactor.OTHER: set(),
}


@dataclass(frozen=True, slots=True)
class _Facet:
    """One thing to look at: its value in a jar, and by how much alike jars may differ."""

    code: str
    value: Callable[[Batch | None, Vessel], object]
    near: float = 0.0  # relative
    at_most: float = 0.0  # absolute


def differences(
    trial: Trial,
    jars: Sequence[TrialJarView],
    places: Mapping[int, Place],
    culture_names: Mapping[int, str],
    *,
    tells_arms: bool,
) -> tuple[Difference, ...]:
    """List what differs, in the order of what matters to how fast a jar sours."""
    found = []
    for facet in _facets(places, culture_names):
        if facet.code in _OWN[trial.factor]:
            continue
        values = [
            (jar, facet.value(jar.batch, jar.vessel)) for jar in jars if jar.vessel is not None
        ]
        groups = _grouped([(jar, value) for jar, value in values if value is not None], facet)
        if len(groups) < 2:
            continue
        found.append(
            Difference(
                code=facet.code,
                groups=tuple(
                    (value, tuple(jar.jar.code for jar in members)) for value, members in groups
                ),
                goes_with_arms=tells_arms and _goes_with_arms(groups),
            )
        )
    return tuple(found)


def _facets(places: Mapping[int, Place], culture_names: Mapping[int, str]) -> tuple[_Facet, ...]:
    def of_batch(name: str) -> Callable[[Batch | None, Vessel], object]:
        return lambda batch, _vessel: None if batch is None else getattr(batch, name)

    def of_vessel(name: str) -> Callable[[Batch | None, Vessel], object]:
        return lambda _batch, vessel: getattr(vessel, name)

    def filled(batch: Batch | None, vessel: Vessel) -> object:
        return vessel.working_volume_l if batch is None else batch.fill_volume_l

    def share(batch: Batch | None, _vessel: Vessel) -> object:
        return None if batch is None else batch.starter_volume_l / batch.fill_volume_l

    def culture(batch: Batch | None, _vessel: Vessel) -> object:
        if batch is None:
            return None
        return "" if batch.culture_id is None else culture_names.get(batch.culture_id, "")

    def place(_batch: Batch | None, vessel: Vessel) -> object:
        return places[vessel.place_id].name

    return (
        _Facet("place_temperature_c", of_batch("place_temperature_c"), at_most=0.5),
        _Facet("place", place),
        _Facet("starter_share", share, near=0.05),
        _Facet("starter_ph", of_batch("starter_ph"), at_most=0.1),
        _Facet("culture", culture),
        _Facet("tea_kind", of_batch("tea_kind")),
        _Facet("tea_g_per_l", of_batch("tea_g_per_l"), near=0.05),
        _Facet("sugar_g_per_l", of_batch("sugar_g_per_l"), near=0.02),
        _Facet("fill_volume_l", filled, near=0.02),
        _Facet("inner_diameter_cm", of_vessel("inner_diameter_cm"), near=0.02),
        _Facet("shape", of_vessel("shape")),
        _Facet("material", of_vessel("material")),
        _Facet(
            "started_at",
            of_batch("started_at"),
            at_most=_SAME_START.total_seconds(),
        ),
    )


_Group = tuple[object, list[TrialJarView]]


def _grouped(values: Sequence[tuple[TrialJarView, object]], facet: _Facet) -> list[_Group]:
    groups: list[_Group] = []
    for jar, value in values:
        for known, members in groups:
            if _is_same(known, value, facet):
                members.append(jar)
                break
        else:
            groups.append((value, [jar]))
    return groups


def _is_same(one: object, other: object, facet: _Facet) -> bool:
    if hasattr(one, "timestamp") and hasattr(other, "timestamp"):
        one, other = one.timestamp(), other.timestamp()
    if isinstance(one, float) and isinstance(other, float):
        limit = max(facet.at_most, facet.near * max(abs(one), abs(other)))
        return abs(one - other) <= limit + 1e-9
    return one == other


def _goes_with_arms(groups: Sequence[_Group]) -> bool:
    """Whether no value is found in two arms: then nothing tells it from the factor."""
    arms = [{jar.jar.arm_id for jar in members} for _, members in groups]
    seen: set[int] = set()
    for mine in arms:
        if mine & seen:
            return False
        seen |= mine
    return True
