"""The pH meters: when they were calibrated, what came out, and what that is worth now."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.reckoner.question import Answer, Inputs, Value
from brewdesk.services.wording.reckonernames import choice_name
from brewdesk.store.records import Calibration, CalibrationDraft
from culturecore import phmeter
from culturecore.buffers import Buffer
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

NAME_LIMIT = 200
# A clock that is a little slow must not refuse what was done just now.
_SLACK = timedelta(minutes=5)


class Meters:
    """Keep calibrations, and judge them.

    A reading does not say by which meter it was taken, so reminders count from the newest
    calibration of any.
    """

    def __init__(self, door: Door) -> None:
        self._door = door

    def record(self, draft: CalibrationDraft) -> Calibration:
        """Keep a calibration, as an act. Its verdict is worked out if slope and offset are known.

        Raises
        ------
        ImpossibleInput
            Without the meter's name (``reason`` "empty") or with too long a one ("too_long");
            for a time to come ("in_future"); for a slope or an offset that no electrode has.
        """
        name = draft.meter.strip()
        if not name:
            raise ImpossibleInput("meter", draft.meter, reason="empty")
        if len(name) > NAME_LIMIT:
            raise ImpossibleInput("meter", len(name), high=NAME_LIMIT, reason="too_long")
        if draft.at > self._door.clock.now() + _SLACK:
            raise ImpossibleInput("at", draft.at, reason="in_future")
        electrode = _electrode(draft)
        code = electrode.code if electrode is not None else draft.verdict
        kept = replace(draft, meter=name, verdict=code)
        return self._door.perform(
            ActKind.RECORD_CALIBRATION,
            {"meter": name, "slope_percent": draft.slope_percent, "offset_mv": draft.offset_mv},
            lambda unit: unit.calibrations.add(kept),
            topics=Topic.METERS,
        )

    def all(self, meter: str = "") -> tuple[Calibration, ...]:
        """Return the calibrations of a meter, or of all of them, newest first."""
        with self._door.store.read() as unit:
            return _newest(unit, meter, limit=None)

    def last(self, meter: str = "") -> Calibration | None:
        """Return the newest calibration of a meter, or of any; None if there is none."""
        with self._door.store.read() as unit:
            return next(iter(_newest(unit, meter, limit=1)), None)

    def names(self) -> tuple[str, ...]:
        """Return the names of the meters, the one calibrated last first."""
        return tuple(dict.fromkeys(row.meter for row in self.all()))

    def verdicts(self, calibration: Calibration) -> tuple[Verdict, ...]:
        """Judge a calibration as it is now, warnings first: its age, and the electrode if known."""
        age = self._door.clock.now() - calibration.at
        found = [phmeter.calibration_age_verdict(max(0.0, age / timedelta(days=1)))]
        electrode = _electrode(calibration)
        if electrode is not None:
            found.append(electrode)
        return tuple(sorted(found, key=lambda verdict: verdict.level is Level.INFORM))


def calibration_of(
    answer: Answer, values: Mapping[str, Value], *, meter: str, at: datetime
) -> CalibrationDraft:
    """Return what the reckoner's question about a calibration found, ready to be kept.

    Raises
    ------
    KeyError
        For the answer to another question.
    """
    found = {line.key: line.value for line in answer.lines}
    given = Inputs(values)
    buffers = [given.maybe_chosen(f"buffer_{place}", Buffer) for place in ("1", "2", "3")]
    return CalibrationDraft(
        at=at,
        meter=meter,
        slope_percent=found["slope"],
        offset_mv=found["offset"],
        temperature_c=given.maybe("buffer_c"),
        buffers="; ".join(choice_name(buffer) for buffer in buffers if buffer is not None),
    )


def _electrode(draft: CalibrationDraft) -> Verdict | None:
    if draft.slope_percent is None or draft.offset_mv is None:
        return None
    for field, value in (("slope_percent", draft.slope_percent), ("offset_mv", draft.offset_mv)):
        if not math.isfinite(value):
            raise ImpossibleInput(field, value, reason="not_finite")
    return phmeter.electrode_verdict(slope_percent=draft.slope_percent, offset_mv=draft.offset_mv)


def _newest(unit: ReadUnit, meter: str, *, limit: int | None) -> tuple[Calibration, ...]:
    if meter:
        return unit.calibrations.where(meter=meter, order_by="-at", limit=limit)
    return unit.calibrations.where(order_by="-at", limit=limit)
