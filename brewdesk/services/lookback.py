"""Look back at what the pantry has learned: asked for, worked out in a job, kept until changes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from PySide6.QtCore import QObject, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.lookbackfacts import Past, PastBatch, gather
from brewdesk.services.lookbackgroups import Question
from brewdesk.services.lookbackview import LookBackView, view_of
from brewdesk.services.placecourse import SampleMeans
from brewdesk.services.tasteband import TasteBand, usual_band

# Where many makers begin to taste; a mark to compare by, from memory, no limit.
USUAL_RIPE_PH = 3.2
TOPICS = (
    Topic.BATCHES | Topic.READINGS | Topic.CULTURES | Topic.PLACES | Topic.VESSELS | Topic.BOTTLINGS
)
# What may change every batch: names, kin, where vessels stood, how warm it was.
_ALL_BATCHES = Topic.CULTURES | Topic.PLACES | Topic.VESSELS


@dataclass(frozen=True, slots=True)
class _Worked:
    """What a job brings back: the past as it was read, and the view that was asked for."""

    past: Past
    view: LookBackView


class LookBack(QObject):
    """Answers questions about the past. ``ready`` carries a `LookBackView`, ``failed`` an error.

    Only the newest question is answered. What was read of batches is kept until it changes.
    """

    ready = Signal(object)
    failed = Signal(object)

    def __init__(
        self,
        door: Door,
        jobs: JobRunner,
        means: SampleMeans,
        band: Callable[[], TasteBand] = usual_band,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._jobs = jobs
        self._means = means
        self._band = band
        self._past: Past | None = None
        self._batches: dict[int, PastBatch] = {}
        self._revision = 0
        door.changes.changed.connect(self._on_changed)

    def ripe_ph(self) -> float:
        """Return the pH that ripe means here: the maker's own first taste, or the usual 3.2."""
        first_taste_ph = self._band().first_taste_ph
        is_own = first_taste_ph != usual_band().first_taste_ph
        return first_taste_ph if is_own else USUAL_RIPE_PH

    def ask(self, question: Question) -> None:
        """Work a question out in the background; the answer comes by ``ready``."""
        past, known, revision = self._past, dict(self._batches), self._revision

        def work() -> _Worked:
            read = past if past is not None else gather(self._door, self._means, known)
            if past is not None:
                read = replace(past, now=self._door.clock.now(), zone=self._door.clock.zone())
            return _Worked(read, view_of(read, question))

        self._jobs.run(
            work,
            lambda worked: self._on_worked(worked, revision),
            self.failed.emit,
            key=f"look back {id(self)}",
            pool=Pool.STORE,
        )

    def now(self, question: Question) -> LookBackView:
        """Work a question out at once. Slow: for paper and tests.

        Raises
        ------
        StoreTrouble
            If the store cannot be read.
        """
        return view_of(gather(self._door, self._means, dict(self._batches)), question)

    def _on_worked(self, worked: _Worked, revision: int) -> None:
        if revision == self._revision:  # else it was read while something changed
            self._past = worked.past
            self._batches = {one.batch_id: one for one in worked.past.batches}
        self.ready.emit(worked.view)

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(TOPICS):
            return
        self._revision += 1
        self._past = None
        if change.concerns(_ALL_BATCHES) or not change.batch_ids:
            self._batches.clear()
        for batch_id in change.batch_ids:
            self._batches.pop(batch_id, None)
