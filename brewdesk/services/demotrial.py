"""The invented pantry's trial: green against black tea, six little jars, long over.

Its jars were put away again, so that it is found among the trials and nowhere on the shelf.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from datetime import time
from functools import partial
from typing import Protocol

from PySide6.QtCore import QCoreApplication

from brewdesk.services.batches import Batches
from brewdesk.services.brewing import Brewing
from brewdesk.services.clock import Clock
from brewdesk.services.demo_story import Story
from brewdesk.services.readings import Readings
from brewdesk.services.trialplan import ArmWish, TrialRecipe, TrialWish
from brewdesk.services.trials import ScoreEntry, Trials
from brewdesk.services.vessels import Vessels
from brewdesk.store.records import ReadingDraft, VesselDraft
from culturecore.stages import (
    Material,
    Method,
    Quantity,
    StarterTaste,
    TasteMark,
    TeaKind,
    TrialFactor,
    VesselShape,
)
from culturecore.sweettea import Starter

_BEGUN, _READ_DAYS, _TASTED, _ENDED = 56, (1, 2, 4, 6, 8, 10, 12), 44, 43
_BREWING, _MORNING, _EVENING = time(16, 0), time(9, 30), time(19, 30)
_MINUTES_APART = 2.0
# How fast each jar sours: invented, and as far apart as like jars may well be.
_PACES = {TeaKind.GREEN: (1.30, 1.18, 1.24), TeaKind.BLACK: (1.02, 0.94, 1.06)}
_PELLICLES = {TeaKind.GREEN: (3.0, 4.0, 5.0), TeaKind.BLACK: (4.0, 3.0, 3.0)}
_LIKINGS = {TeaKind.GREEN: (7.0, 6.0, 7.5), TeaKind.BLACK: (6.5, 7.0, 5.5)}


def _t(text: str) -> str:
    return QCoreApplication.translate("DemoTrial", text)


class At(Protocol):
    """Puts something to do into the story, days before today."""

    def __call__(
        self, days_ago: int, hour: time, do: Callable[[], object], minutes: float = 0
    ) -> None:
        """Have it done then."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class DemoTrial:
    """Plans, fills, reads, tastes and ends the trial by the maker's own services."""

    vessels: Vessels
    batches: Batches
    brewing: Brewing
    readings: Readings
    trials: Trials
    clock: Clock
    ids: dict[str, int]

    def tell(self, at: At) -> None:
        """Put all of it into the story."""
        for n in range(6):
            at(_BEGUN + 1, time(18, 0), partial(self._add_vessel, n), n)
        at(_BEGUN, _BREWING, self._plan)
        at(_BEGUN, _BREWING, self._start, 5)
        at(_BEGUN, _BREWING, self._cover, 90)
        for day in _READ_DAYS:
            at(_BEGUN - day, _MORNING, partial(self._read, day))
        at(_BEGUN - 12, _MORNING, self._read_more, 30)
        for number, taster in enumerate((_t("First taster (invented)"), _t("Second taster"))):
            at(_TASTED, _EVENING, partial(self._taste, taster, number), 10 * number)
        at(_ENDED, _EVENING, lambda: self.trials.reveal(self.ids["trial"]))
        at(_ENDED, _EVENING, self._end, 20)

    def _add_vessel(self, n: int) -> None:
        draft = VesselDraft(
            name=_t("Trial jar {number}").format(number=n + 1),
            shape=VesselShape.CYLINDER,
            material=Material.GLASS,
            brim_volume_l=1.1,
            working_volume_l=1.0,
            inner_diameter_cm=9.8,
            place_id=self.ids["pantry"],
            note=_t("Invented for the example pantry."),
        )
        self.ids[f"trial jar {n}"] = self.vessels.add(draft).id

    def _plan(self) -> None:
        wish = TrialWish(
            name=_t("Green or black (invented)"),
            question=_t("Does green tea sour faster than black, and which is liked better?"),
            factor=TrialFactor.TEA,
            arms=(
                ArmWish(name=_t("Black tea"), level=TeaKind.BLACK.value),
                ArmWish(name=_t("Green tea"), level=TeaKind.GREEN.value),
            ),
            vessel_ids=tuple(self.ids[f"trial jar {n}"] for n in range(6)),
            is_blind=True,
            seed=1908,
        )
        self.ids["trial"] = self.trials.plan(wish).id

    def _start(self) -> None:
        starter = Starter(ph=3.1, taste=StarterTaste.SOUR)
        self.trials.start(self.ids["trial"], TrialRecipe(starter_share=0.15, starter=starter))

    def _jars(self) -> list[tuple[int, int, TeaKind, int]]:
        """Return jar, batch, tea and number within its tea of each jar."""
        counts: dict[TeaKind, int] = {}
        found = []
        for jar in self.trials.view(self.ids["trial"]).jars:
            assert jar.batch is not None
            tea = jar.batch.tea_kind
            found.append((jar.jar.id, jar.batch.id, tea, counts.get(tea, 0)))
            counts[tea] = counts.get(tea, 0) + 1
        return found

    def _cover(self) -> None:
        for _, batch_id, _, _ in self._jars():
            self.brewing.note_already_in(batch_id, self.clock.now(), 25.0)

    def _read(self, day: int) -> None:
        for _, batch_id, tea, n in self._jars():
            pace = _PACES[tea][n]
            wiggle = 0.02 * math.sin(2.4 * day + 7.0 * pace)
            ph = round(2.95 + 1.17 * math.exp(-pace * day / 5.8) + wiggle, 2)
            self._record(batch_id, (Quantity.PH, Method.METER, ph))

    def _read_more(self) -> None:
        for _, batch_id, tea, n in self._jars():
            pace = _PACES[tea][n]
            self._record(
                batch_id,
                (Quantity.TA_G_PER_L, Method.TITRATION, round(1.0 + 4.6 * pace, 1)),
                (Quantity.PELLICLE_MM, Method.RULER, _PELLICLES[tea][n]),
            )

    def _record(self, batch_id: int, *entries: tuple[Quantity, Method, float]) -> None:
        self.readings.record(
            [
                ReadingDraft(
                    batch_id=batch_id,
                    at=self.clock.now(),
                    quantity=quantity,
                    method=method,
                    value=value,
                    entered=f"{value:g}",
                )
                for quantity, method, value in entries
            ]
        )

    def _taste(self, taster: str, number: int) -> None:
        entries = []
        for jar_id, _, tea, n in self._jars():
            liking = _LIKINGS[tea][n] - 0.5 * number * (n % 2)
            mark = TasteMark.RIGHT if liking >= 6.5 else TasteMark.TOO_SOUR
            entries.append(ScoreEntry(jar_id=jar_id, liking=liking, mark=mark))
        self.trials.score(self.ids["trial"], taster, entries)

    def _end(self) -> None:
        reason = _t("The trial is over. (Invented)")
        for _, batch_id, _, _ in self._jars():
            self.batches.draw_off(batch_id, reason)
            self.batches.close(batch_id)
        words = _t("Green seems quicker. Next time four jars of each. (Invented)")
        self.trials.end(self.ids["trial"], words)
        for n in range(6):
            self.vessels.retire(self.ids[f"trial jar {n}"])


def run_trial(story: Story) -> None:
    """Enter the trial into the story."""
    trial = DemoTrial(
        vessels=story.vessels,
        batches=story.batches,
        brewing=story.brewing,
        readings=story.readings,
        trials=Trials(story.door, story.batches),
        clock=story.clock,
        ids=story.ids,
    )
    trial.tell(story.at)
