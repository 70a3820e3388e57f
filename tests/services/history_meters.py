"""Acts on meters for the history test: what has to be there before, and the act itself."""

from __future__ import annotations

from brewdesk.services.acts import ActKind
from brewdesk.services.meters import Meters
from brewdesk.store.records import CalibrationDraft


def _record(kit, _):
    return Meters(kit.door).record(
        CalibrationDraft(
            at=kit.clock.now(), meter="Yellow meter", slope_percent=96.4, offset_mv=-8.0
        )
    )


ACTS = {ActKind.RECORD_CALIBRATION: (lambda kit: None, _record)}
