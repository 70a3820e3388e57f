"""Measure search and time lines in an invented pantry of ten years, and print JSON.

500 batches in 12 vessels, 50 000 readings, 60 000 acts; everything in it is made up. Nothing
is asserted: clocks differ, and so do machines. Run from the repository:
``python packaging/bench_search.py``.
"""

from __future__ import annotations

import json
import os
import random
import sys
import tempfile
import time
import tracemalloc
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from brewdesk.services.desk import Desk

ROOT = Path(__file__).resolve().parents[1]
NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
BATCHES, READINGS, ACTS, VESSELS = 500, 50_000, 60_000, 12
REPEATS = 5
WORDS = [
    "ginger",
    "honey",
    "tart",
    "vinegary",
    "fizz",
    "cloudy",
    "clear",
    "pear",
    "rosehip",
    "late",
    "early",
    "calm",
    "slow",
    "odd",
]


def main() -> None:
    """Print one JSON object: seconds, and megabytes held."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    sys.path[:0] = [str(ROOT), str(ROOT / "shared")]
    from brewdesk.services.searchwords import Sieve
    from brewdesk.services.subjects import Subject, SubjectKind
    from culturecore.stages import TeaKind
    from culturecore.units import Kind

    with tempfile.TemporaryDirectory() as folder:
        desk = ten_years(Path(folder) / "pantry.brewdesk")
        tracemalloc.start()
        first, _ = timed(lambda: desk.search.find("nothing of the kind"))
        held, peak = tracemalloc.get_traced_memory()
        tracemalloc.stop()
        desk.settings.put_unit(Kind.VOLUME, "gal")  # every sentence reads otherwise now
        build, _ = timed(lambda: desk.search.find("nothing of the kind"))
        results = {
            "first_search_traced_s": first,
            "acts_read_anew_s": build,
            "held_mb": held / 1e6,
            "peak_mb": peak / 1e6,
        }
        for name, text, sieve in (
            ("nothing_typed", "", Sieve()),
            ("rare_word", "tea 417", Sieve()),
            ("common_letter", "e", Sieve()),
            ("two_words", "calm slow", Sieve()),
            ("two_words_filtered", "calm slow", Sieve(tea=TeaKind.GREEN, culture_id=2)),
            ("nothing_there", "xylophone", Sieve(tea=TeaKind.GREEN, place_id=1)),
        ):
            took, answer = timed(partial(desk.search.find, text, sieve))
            results[f"find_{name}_s"] = took
            results[f"find_{name}_total"] = answer.total
        for kind in SubjectKind:
            subject = Subject(kind, 2 if kind is SubjectKind.BATCH else 1)  # batch 1 is the model
            took, view = timed(partial(desk.timeline.of, subject, limit=300))
            results[f"timeline_{kind.value}_s"] = took
            results[f"timeline_{kind.value}_lines"] = view.total
        desk.store.close()
    print(json.dumps({k: round(v, 4) for k, v in results.items()}, indent=2))


def timed(work: Callable[[], Any]) -> tuple[float, Any]:
    """Return the shortest of some runs in seconds, and what came out."""
    times = []
    for _ in range(REPEATS):
        begun = time.perf_counter()
        result = work()
        times.append(time.perf_counter() - begun)
        if times[-1] > 1:
            break
    return min(times), result


class _StandingClock:
    def now(self) -> datetime:
        """Return the bench's day."""
        return NOW

    def monotonic(self) -> float:
        """Return seconds that stand still."""
        return 0.0

    def zone(self) -> Any:  # noqa: ANN401  # a tzinfo
        """Return UTC."""
        return UTC


class _NowJobs:
    def run(self, work: Any, done: Any, *_rest: Any, **_more: Any) -> None:  # noqa: ANN401
        """Do it at once."""
        done(work())

    def shutdown(self) -> None:
        """Have nothing to wait for."""


def ten_years(path: Path) -> Desk:
    """Fill a new store through its own rows and acts, in few units of work."""
    from brewdesk.services.desk import build_desk
    from brewdesk.services.notices.silent import SilentNotifier
    from brewdesk.store.store import Store

    clock = _StandingClock()
    store = Store.open(path, now=NOW)
    desk = build_desk(store, clock, jobs=_NowJobs(), notifier=SilentNotifier())
    chance = random.Random(20261125)
    vessels = _furnish(desk)
    batches = _brew(desk, vessels, chance)
    _write_down(desk, batches, chance)
    return desk


def _furnish(desk: Desk) -> list[int]:
    from brewdesk.store.records import CultureDraft, VesselDraft
    from culturecore.stages import CultureOrigin, CultureState, Material, VesselShape

    place = desk.vessels.ensure_place()
    vessels = [
        desk.vessels.add(
            VesselDraft(
                name=f"Jar {number}",
                shape=VesselShape.CYLINDER,
                material=Material.GLASS,
                brim_volume_l=4.5,
                working_volume_l=4.0,
                inner_diameter_cm=15.0,
                place_id=place.id,
            )
        ).id
        for number in range(1, VESSELS + 1)
    ]
    for number in range(1, 41):
        desk.cultures.add(
            CultureDraft(
                name=f"Culture {number}",
                origin=CultureOrigin.GIFT,
                state=CultureState.RESTING,
                born_at=NOW - timedelta(days=3650),
            )
        )
    return vessels


def _brew(desk: Desk, vessels: list[int], chance: random.Random) -> list[Any]:
    from brewdesk.store.records import BatchDraft
    from culturecore.stages import BatchStage, TeaKind

    wish = replace(desk.batches.default_wish(vessels[0]))
    model = desk.batches.plan(vessels[0], 1, "Model", wish)
    fields = {name: getattr(model, name) for name in BatchDraft.__dataclass_fields__}
    made = []
    with desk.store.write() as unit:
        for number in range(BATCHES):
            begun = NOW - timedelta(days=3650 - 7 * number)
            tea = chance.choice(list(TeaKind))
            changed = {
                "name": f"{tea.value.title()} tea {number}",
                "vessel_id": vessels[number % VESSELS],
                "culture_id": 1 + number % 40,
                "stage": BatchStage.CLOSED,
                "tea_kind": tea,
                "planned_at": begun,
                "started_at": begun,
                "ended_at": begun + timedelta(days=12),
                "end_reason": " ".join(chance.choices(WORDS, k=6)),
            }
            made.append(unit.batches.add(BatchDraft(**(fields | changed))))
    return made


def _write_down(desk: Desk, batches: list[Any], chance: random.Random) -> None:
    """Write readings with the acts that took them, and other acts beside them."""
    from brewdesk.store.records import ReadingDraft
    from culturecore.stages import Method, Quantity

    names = {vessel.id: vessel.name for vessel in desk.vessels.all(include_retired=True)}
    per_batch = READINGS // BATCHES
    others = (ACTS - READINGS) // BATCHES
    for batch in batches:
        with desk.store.write() as unit:
            for number in range(per_batch):
                at = batch.started_at + timedelta(hours=3 * number)
                is_note = number % 10 == 0
                text = " ".join(chance.choices(WORDS, k=12)) if is_note else ""
                quantity = Quantity.NOTE if is_note else Quantity.PH
                value = None if is_note else round(chance.uniform(2.6, 4.5), 2)
                unit.deltas.clear()
                unit.readings.add(
                    ReadingDraft(
                        batch_id=batch.id,
                        at=at,
                        quantity=quantity,
                        method=Method.EYE if is_note else Method.METER,
                        value=value,
                        text=text,
                    )
                )
                fact = {"quantity": quantity.value, "value": value, "text": text}
                unit.acts.add(
                    kind="add_readings",
                    facts={"readings": [fact], "vessel": names[batch.vessel_id]},
                    at=at,
                    batch_id=batch.id,
                    vessel_id=batch.vessel_id,
                    deltas=unit.deltas,
                )
            for _ in range(others):
                unit.acts.add(
                    kind="edit_plan",
                    facts={"name": batch.name, "vessel": names[batch.vessel_id]},
                    at=batch.planned_at,
                    batch_id=batch.id,
                    vessel_id=batch.vessel_id,
                    culture_id=batch.culture_id,
                )


if __name__ == "__main__":
    main()
