"""How sour and how sweet a batch's liquid is now: as read, or as the forecast has it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from brewdesk.services.door import Door
from brewdesk.services.jarcourse import sd_of, value_at
from brewdesk.services.ledger import balance_of, transfers_of
from brewdesk.store.records import Batch, Reading, Transfer
from culturecore.blending import Liquid
from culturecore.outcome import Estimate
from culturecore.stages import CareKind, Quantity, TransferKind

if TYPE_CHECKING:
    from brewdesk.services.forecasts import CurveView
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

# An acidity tells of the same liquid as a pH only if both were read about then.
TOGETHER = timedelta(hours=12)
_Z80 = 1.2815515655446004  # half of a central 80 % interval, in standard deviations


@dataclass(frozen=True, slots=True, kw_only=True)
class StarterKnown:
    """What was measured of a liquid that may be lent as starter."""

    ph: float | None = None
    ta_g_per_l: float | None = None


def no_curve(_batch_id: int) -> CurveView | None:
    """Stand in for forecasts where there are none."""
    return None


class JarNow:
    """Say what is known of a batch's liquid. ``curve_of`` gives its newest forecast."""

    def __init__(self, door: Door, curve_of: Callable[[int], CurveView | None] = no_curve) -> None:
        self._door = door
        self._curve_of = curve_of

    def liquid(self, batch_id: int) -> Liquid:
        """Return volume, pH, acidity and sugar of a batch, as far as they are known.

        A pH that was read since anything was poured in counts; else the forecast's. The
        sugar is always the forecast's.
        """
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            transfers = transfers_of(unit, batch_id)
            ph_row = newest_reading(unit, batch, transfers, Quantity.PH)
            ta_row = newest_reading(unit, batch, transfers, Quantity.TA_G_PER_L)
        ph = None if ph_row is None else _as_estimate(ph_row)
        sugar = None
        curve = self._curve_of(batch_id) if batch.started_at is not None else None
        if curve is not None and curve.forecast is not None:
            forecast = curve.forecast
            day = min(max(curve.now_day, 0.0), forecast.days[-1])
            if ph is None:
                ph = value_at(forecast.days, forecast.ph, day)
            if forecast.sugar_g_per_l is not None:
                sugar = value_at(forecast.days, forecast.sugar_g_per_l, day)
        return Liquid(
            volume_l=balance_of(batch, transfers).now_l,
            ph=ph,
            ta_g_per_l=_acidity_with(ph_row, ta_row),
            sugar_g_per_l=sugar,
        )


def newest_reading(
    unit: ReadUnit | UnitOfWork, batch: Batch, transfers: tuple[Transfer, ...], quantity: Quantity
) -> Reading | None:
    """Return the newest reading that tells of a batch's liquid as it is now."""
    if batch.started_at is None:
        return None
    poured = [
        row.at
        for row in transfers
        if row.to_batch_id == batch.id and row.kind in (TransferKind.TOP_UP, TransferKind.MERGE)
    ]
    since = max(poured, default=batch.started_at)
    rows = unit.readings.where(
        order_by=("-at", "-id"), limit=1, batch_id=batch.id, quantity=quantity
    )
    return rows[0] if rows and rows[0].at >= since and rows[0].value is not None else None


def starter_of_batch(unit: ReadUnit | UnitOfWork, batch: Batch) -> StarterKnown:
    """Return what was measured of a batch's liquid."""
    transfers = transfers_of(unit, batch.id)
    ph = newest_reading(unit, batch, transfers, Quantity.PH)
    ta = newest_reading(unit, batch, transfers, Quantity.TA_G_PER_L)
    if ph is None:
        return StarterKnown()
    return StarterKnown(ph=ph.value, ta_g_per_l=_acidity_with(ph, ta))


def starter_of_store(unit: ReadUnit | UnitOfWork, culture_id: int) -> StarterKnown:
    """Return what was measured of the liquid a culture rests in, since it was last added to."""
    rows = unit.care.where(order_by=("-at", "-id"), culture_id=culture_id)
    for row in rows:
        if row.kind is CareKind.PH:
            return StarterKnown(ph=row.ph)
        if row.kind in (CareKind.FED, CareKind.TOPPED_UP):
            break
    return StarterKnown()


def _acidity_with(ph: Reading | None, ta: Reading | None) -> float | None:
    if ph is None or ta is None or abs(ph.at - ta.at) > TOGETHER:
        return None
    return ta.value


def _as_estimate(reading: Reading) -> Estimate:
    value = reading.value or 0.0
    doubt = _Z80 * sd_of(reading)
    return Estimate(value, value - doubt, value + doubt)
