"""Search over everything that was written down, off the window's thread."""

from __future__ import annotations

import heapq
import threading
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.folding import words_of
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.quantities import Quantities
from brewdesk.services.searchfinds import finds_of
from brewdesk.services.searchindex import SearchIndex
from brewdesk.services.searchparts import Entry
from brewdesk.services.searchwords import Answer, FoundKind, Sieve
from brewdesk.services.wording.acts import act_text
from culturecore.units import Kind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

FINDS_SHOWN = 60
_IN_REST = 5  # how near a find is whose name holds none of the words
_ORDER = {kind: number for number, kind in enumerate(FoundKind)}


class Search(QObject):
    """Find batches, cultures, vessels, places, notes, care, captions, reminders and acts.

    ``answered`` carries an `Answer`, ``failed`` the error that kept one from being
    found. Only the newest question is answered.
    """

    answered = Signal(object)
    failed = Signal(object)

    def __init__(
        self, door: Door, jobs: JobRunner, quantities: Quantities, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._jobs = jobs
        self._quantities = quantities
        self._index = SearchIndex(door.store, lambda act: act_text(act, quantities.show))
        self._job = f"search {id(self)}"
        self._lock = threading.Lock()
        self._stale = Topic.NOTHING
        self._units = self._units_now()
        self._are_units_stale = False
        door.changes.changed.connect(self._on_changed)

    def ask(self, text: str, sieve: Sieve | None = None, *, limit: int = FINDS_SHOWN) -> None:
        """Look for ``text``; the answer comes by ``answered``. Older questions are forgotten.

        What the index lacks is read first, a piece a job, so that others get their turn.
        """
        wanted = sieve or Sieve()

        def work() -> Answer | None:
            return self._answer(text, wanted, limit) if self._catch_up() else None

        def done(answer: Answer | None) -> None:
            if answer is None:
                self._jobs.run(work, done, self.failed.emit, key=self._job, pool=Pool.STORE)
            else:
                self.answered.emit(answer)

        self._jobs.run(work, done, self.failed.emit, key=self._job, pool=Pool.STORE)

    def find(self, text: str, sieve: Sieve | None = None, *, limit: int = FINDS_SHOWN) -> Answer:
        """Look for ``text`` and wait. Slow: for jobs and tests.

        Raises
        ------
        StoreTrouble
            If the store cannot be read.
        """
        while not self._catch_up():
            pass
        return self._answer(text, sieve or Sieve(), limit)

    def _catch_up(self) -> bool:
        with self._lock:
            stale, self._stale = self._stale, Topic.NOTHING
            are_units_stale, self._are_units_stale = self._are_units_stale, False
        if stale:
            self._index.forget(stale)
        if are_units_stale:
            self._index.forget_acts()
        return self._index.catch_up()

    def _answer(self, text: str, sieve: Sieve, limit: int) -> Answer:
        words = words_of(text)
        with self._door.store.read() as unit:
            lets = _test_of(self._index, sieve, unit)
            held = [(_rank(entry, words), entry) for entry in self._matching(words) if lets(entry)]
            best = heapq.nsmallest(limit, held, key=lambda pair: pair[0])
            finds = finds_of(unit, self._index, [entry for _, entry in best], self._quantities)
            hidden: tuple[tuple[str, int], ...] = ()
            if not held and sieve.used():
                hidden = tuple(
                    (name, self._count(words, sieve.without(name), unit)) for name in sieve.used()
                )
            without = self._count(words, Sieve(), unit) if hidden else 0
        return Answer(
            text=text,
            sieve=sieve,
            finds=finds,
            total=len(held),
            hidden_by=hidden,
            without_filters=without,
        )

    def _matching(self, words: tuple[str, ...]) -> Iterator[Entry]:
        if not words:
            yield from self._index.entries()
            return
        longest, *others = sorted(words, key=len, reverse=True)
        for entry in self._index.entries():
            if (longest in entry.rest or longest in entry.name) and all(
                word in entry.rest or word in entry.name for word in others
            ):
                yield entry

    def _count(self, words: tuple[str, ...], sieve: Sieve, unit: ReadUnit) -> int:
        lets = _test_of(self._index, sieve, unit)
        return sum(1 for entry in self._matching(words) if lets(entry))

    def _units_now(self) -> tuple[str, ...]:
        return tuple(self._quantities.unit(kind) for kind in Kind)

    def _on_changed(self, change: Change) -> None:
        units = self._units_now() if change.concerns(Topic.SETTINGS) else self._units
        with self._lock:
            self._stale |= change.topics
            self._are_units_stale |= units != self._units
        self._units = units


def _rank(entry: Entry, words: tuple[str, ...]) -> tuple[int, int, float, int]:
    """Return what sorts the better find first: the name before the note, then the newest."""
    return (_closeness(entry, words), _ORDER[entry.kind], -_moment(entry), entry.id)


def _moment(entry: Entry) -> float:
    return entry.since if entry.since != float("-inf") else 0.0


def _closeness(entry: Entry, words: tuple[str, ...]) -> int:
    name = entry.name
    if not words or not name:
        return _IN_REST if words else int(not name)  # nothing looked for: things first
    if name.split() == list(words):
        return 0
    if name.startswith(words[0]) and all(word in name for word in words):
        return 1
    starts = name.split()
    if all(any(start.startswith(word) for start in starts) for word in words):
        return 2
    found = sum(word in name for word in words)
    return 3 if found == len(words) else 4 if found else _IN_REST


def _test_of(index: SearchIndex, sieve: Sieve, unit: ReadUnit) -> Callable[[Entry], bool]:
    """Return the test that an entry has to pass; the acts of a culture or place are looked up."""
    tests: list[Callable[[Entry], bool]] = []
    if sieve.kind is not None:
        tests.append(lambda entry: entry.kind is sieve.kind)
    batches, cultures, vessels = index.batches, index.cultures, index.vessels
    if sieve.tea is not None or sieve.stage is not None:
        fitting = {
            row.id
            for row in batches.values()
            if sieve.tea in (None, row.tea_kind) and sieve.stage in (None, row.stage)
        }
        tests.append(lambda entry: entry.batch_id in fitting)
    if sieve.culture_id is not None:
        culture_id = sieve.culture_id
        acts = unit.acts.ids_about("culture", culture_id)
        of_culture = {row.id for row in batches.values() if row.culture_id == culture_id}
        tests.append(
            lambda entry: (
                entry.culture_id == culture_id
                or entry.batch_id in of_culture
                or (entry.kind is FoundKind.ACT and entry.id in acts)
            )
        )
    if sieve.place_id is not None:
        place_id = sieve.place_id
        at_place = unit.acts.ids_about("place", place_id)
        jars = {row.id for row in vessels.values() if row.place_id == place_id}
        in_jars = {row.id for row in batches.values() if row.vessel_id in jars}
        living = {row.id for row in cultures.values() if row.vessel_id in jars}
        tests.append(
            lambda entry: (
                entry.place_id == place_id
                or entry.vessel_id in jars
                or entry.batch_id in in_jars
                or entry.culture_id in living
                or (entry.kind is FoundKind.ACT and entry.id in at_place)
            )
        )
    if sieve.since is not None or sieve.until is not None:
        tests.append(_time_test(index, sieve))
    return lambda entry: all(test(entry) for test in tests)


def _time_test(index: SearchIndex, sieve: Sieve) -> Callable[[Entry], bool]:
    since = float("-inf") if sieve.since is None else sieve.since.timestamp()
    until = float("inf") if sieve.until is None else sieve.until.timestamp()

    def test(entry: Entry) -> bool:
        first, last = index.span_of(entry)
        return first < until and last >= since

    return test
