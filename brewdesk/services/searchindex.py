"""What can be found, folded and held in memory, brought up to date piece by piece.

A search through SQL would have to fold every text anew for each letter typed, and the
sentences of the journal do not stand in the file at all: only their names and numbers do.
The pieces are read in short units: a long one would keep the maker's next act from being
written. ``packaging/bench_search.py`` measures time and memory with ten years of records.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from brewdesk.services.changes import Topic
from brewdesk.services.folding import fold
from brewdesk.services.searchparts import ALWAYS, PARTS, Entry
from brewdesk.services.searchwords import FoundKind
from brewdesk.store.records import Act, Batch, Culture, Vessel
from culturecore.stages import Quantity

if TYPE_CHECKING:
    from brewdesk.services.door import Units

ACTS_AT_A_TIME = 400  # in one job, so that others and the window get their turn


class SearchIndex:
    """Everything that can be found. Used by one worker thread at a time.

    Parameters
    ----------
    store
        Where it is read from.
    sentence
        Writes an act as the journal does.
    """

    def __init__(self, store: Units, sentence: Callable[[Act], str]) -> None:
        self._store = store
        self._sentence = sentence
        self._parts: dict[str, list[Entry]] = {}
        self._acts: list[Entry] = []
        self._undone: frozenset[int] = frozenset()
        self._last_act_id = 0
        self._spans: dict[int, tuple[float, float]] = {}  # of vessels, from acts
        self.batches: dict[int, Batch] = {}
        self.cultures: dict[int, Culture] = {}
        self.vessels: dict[int, Vessel] = {}

    def forget_acts(self) -> None:
        """Read the acts anew at the next catching up: their sentences read otherwise now."""
        self._acts.clear()
        self._spans.clear()
        self._last_act_id = 0

    def forget(self, topics: Topic) -> None:
        """Read what these topics touch anew at the next catching up."""
        for name, part in PARTS.items():
            if part.topics & topics:
                self._parts.pop(name, None)

    def catch_up(self) -> bool:
        """Read one piece of what is missing; return whether nothing is missing now."""
        for name in PARTS:
            if name not in self._parts:
                self._read(name)
                return False
        with self._store.read() as unit:
            acts = unit.acts.after(self._last_act_id, limit=ACTS_AT_A_TIME)
            self._undone = unit.acts.undone_ids()
        for act in acts:  # the unit is over: making sentences takes longer than reading
            self._take(act)
        return len(acts) < ACTS_AT_A_TIME

    def entries(self) -> Iterable[Entry]:
        """Go through everything that is there: things first, then what was written down."""
        for name in PARTS:
            yield from self._parts.get(name, ())
        undone = self._undone
        for entry in self._acts:
            if entry.id not in undone:
                yield entry

    def span_of(self, entry: Entry) -> tuple[float, float]:
        """Return from when to when, in seconds, an entry was there.

        A vessel was there while anything was done with it: its row does not know since when.
        """
        if entry.kind is FoundKind.VESSEL:
            return self._spans.get(entry.id, (entry.since, entry.until))
        return entry.since, entry.until

    def _read(self, name: str) -> None:
        part = PARTS[name]
        with self._store.read() as unit:
            rows = part.rows(unit)
        self._parts[name] = [part.entry(row) for row in rows]
        if name == "batches":
            self.batches = {row.id: row for row in rows}
        elif name == "cultures":
            self.cultures = {row.id: row for row in rows}
        elif name == "vessels":
            self.vessels = {row.id: row for row in rows}

    def _take(self, act: Act) -> None:
        self._last_act_id = act.id
        at = act.at.timestamp()
        if act.vessel_id is not None:
            first, last = self._spans.get(act.vessel_id, (ALWAYS, -ALWAYS))
            self._spans[act.vessel_id] = (min(first, at), max(last, at))
        if _is_said_by_rows(act):
            return
        self._acts.append(
            Entry(
                FoundKind.ACT,
                act.id,
                "",
                fold(self._sentence(act)),
                at,
                at,
                act.batch_id,
                act.vessel_id,
                act.culture_id,
            )
        )


def _is_said_by_rows(act: Act) -> bool:
    """Whether all words of an act stand in the rows it made, and are found there."""
    if act.kind == "add_reminder":
        return True
    readings = act.facts.get("readings") if act.kind == "add_readings" else None
    return isinstance(readings, list) and all(
        isinstance(fact, dict) and fact.get("quantity") == Quantity.NOTE.value for fact in readings
    )
