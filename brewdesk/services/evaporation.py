"""How much a resting culture's liquid may have dried up: a wide guess, and marked as one."""

from __future__ import annotations

from datetime import datetime, timedelta

from brewdesk.store.records import Vessel
from culturecore import vessels as shapes
from culturecore.outcome import Caveat, Estimate

# Fall of an open surface under cloth in a room, in mm a day: an assumption, no source. Cloth,
# warmth and dry air differ so much that the range spans a factor of ten and more.
FALL_MM_PER_DAY = Estimate(0.4, 0.1, 1.5, caveats=(Caveat.EXTRAPOLATED,))
_CM_PER_MM = 0.1
_CM3_PER_L = 1000.0


def evaporated_l(vessel: Vessel, volume_l: float, since: datetime, until: datetime) -> Estimate:
    """Estimate what has evaporated from ``volume_l`` under cloth, in L; never more than all.

    Parameters
    ----------
    vessel
        Where it stands; its open surface counts.
    volume_l
        What was in it at ``since``, above 0 and at most to the brim.
    since, until
        The span; nothing evaporates backwards.
    """
    days = max(0.0, (until - since) / timedelta(days=1))
    surface_cm2 = shapes.surface_area_cm2(
        vessel.shape, vessel.inner_diameter_cm, vessel.brim_volume_l, volume_l
    )
    value, low, high = (
        min(volume_l, fall * _CM_PER_MM * surface_cm2 * days / _CM3_PER_L)
        for fall in (FALL_MM_PER_DAY.value, FALL_MM_PER_DAY.low, FALL_MM_PER_DAY.high)
    )
    return Estimate(value, low, high, caveats=FALL_MM_PER_DAY.caveats)
