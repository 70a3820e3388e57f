"""Series of readings from tidy CSV files: one row a reading, the conditions in columns.

Columns: source_key, series_key, day, quantity, value, sd, and conditions (tea,
sucrose_g_per_L, starter_percent, temperature_C, volume_mL, vessel_diameter_cm, culture).
Any column but day, quantity and value may be missing or hold free text; a file may hold many
series.
"""

from __future__ import annotations

import csv
import math
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from culturecore import priors
from culturecore.forecast import Conditions, Observation
from culturecore.stages import Quantity, TeaKind

QUANTITIES = {
    "ph": Quantity.PH,
    "titratable_acidity_g_per_l_as_acetic": Quantity.TA_G_PER_L,
    "titratable_acidity_g_per_l": Quantity.TA_G_PER_L,
    "ta_g_per_l": Quantity.TA_G_PER_L,
    "ta_g_per_l_as_acetic": Quantity.TA_G_PER_L,
    "brix": Quantity.BRIX,
    "specific_gravity": Quantity.SPECIFIC_GRAVITY,
    "sg": Quantity.SPECIFIC_GRAVITY,
}
# Where a source gives none: a bench meter's or titration's.
USUAL_SD = {
    Quantity.PH: 0.05,
    Quantity.TA_G_PER_L: 0.2,
    Quantity.BRIX: 0.3,
    Quantity.SPECIFIC_GRAVITY: 0.002,
}
LEAST_SD = {
    Quantity.PH: 0.01,
    Quantity.TA_G_PER_L: 0.02,
    Quantity.BRIX: 0.05,
    Quantity.SPECIFIC_GRAVITY: 0.0002,
}
USUAL_TEMPERATURE_C = 25.0
USUAL_SUGAR_G_PER_L = 60.0
USUAL_STARTER_PERCENT = 10.0
USUAL_VOLUME_ML = 1000.0
_TEAS = {"black": TeaKind.BLACK, "green": TeaKind.GREEN, "oolong": TeaKind.OOLONG}
_NUMBER = re.compile(r"[-+]?\d+(?:\.\d+)?(?:[eE][-+]?\d+)?")


@dataclass(frozen=True, kw_only=True)
class Series:
    """One series: its conditions without a temperature course, and its readings by day."""

    source_key: str
    key: str
    conditions: Conditions
    temperatures: tuple[tuple[float, float], ...]
    readings: tuple[Observation, ...]
    culture: str = ""  # its name, where the source has one

    def of(self, quantity: Quantity) -> list[Observation]:
        """Return the readings of one quantity."""
        return [r for r in self.readings if r.quantity is quantity]


def all_series(folder: Path) -> Iterator[Series]:
    """Read every CSV file of a folder and of those below it.

    Files that lack the columns day, quantity and value hold no series and are passed over.
    """
    for path in sorted(folder.rglob("*.csv")):
        groups: dict[tuple[str, str], list[dict[str, str]]] = {}
        for row in _rows(path):
            key = row.get("series_key", "").strip() or path.stem
            groups.setdefault((row.get("source_key", "").strip(), key), []).append(row)
        for (source, key), rows in groups.items():
            yield _series(source or key, key, rows)


def _rows(path: Path) -> list[dict[str, str]]:
    with path.open(newline="", encoding="utf-8-sig", errors="replace") as file:
        lines = (line for line in file if not line.startswith("#"))
        table = csv.DictReader(lines)
        names = {(name or "").strip().lower() for name in table.fieldnames or ()}
        if not {"day", "quantity", "value"} <= names:
            return []
        return [
            {(k or "").strip().lower(): v for k, v in row.items() if isinstance(v, str)}
            for row in table
        ]


def _series(source: str, key: str, rows: list[dict[str, str]]) -> Series:
    readings: list[Observation] = []
    temperatures: list[tuple[float, float]] = []
    for row in rows:
        day, value = number(row.get("day")), number(row.get("value"))
        if day is None or value is None or not 0.0 <= day < 400.0:
            continue
        name = row.get("quantity", "").strip().lower()
        if name in ("temperature_c", "temperature"):
            temperatures.append((day, value))
        quantity = QUANTITIES.get(name)
        if quantity is None or not _is_possible(quantity, value):
            continue
        sd = number(row.get("sd"))
        sd = USUAL_SD[quantity] if sd is None else max(sd, LEAST_SD[quantity])
        readings.append(Observation(day=day, quantity=quantity, value=value, sd=sd))
    return Series(
        source_key=source,
        key=key,
        conditions=_conditions(rows[0], temperatures),
        temperatures=tuple(sorted(temperatures)),
        readings=tuple(sorted(readings, key=lambda reading: reading.day)),
        culture=(rows[0].get("culture") or rows[0].get("culture_key") or "").strip(),
    )


def _conditions(row: dict[str, str], temperatures: list[tuple[float, float]]) -> Conditions:
    volume_ml = _within(_first(row, "volume_ml"), 10.0, 1e7, USUAL_VOLUME_ML)
    litres = _first(row, "volume_l")
    if litres is not None and _first(row, "volume_ml") is None:
        volume_ml = _within(1000.0 * litres, 10.0, 1e7, USUAL_VOLUME_ML)
    diameter, surface = _first(row, "vessel_diameter_cm"), _first(row, "surface_cm2")
    if surface is None:
        surface = priors.REFERENCE_SURFACE_PER_CM.centre * volume_ml
        if diameter is not None and diameter > 0.0:
            surface = math.pi * diameter**2 / 4.0
    celsius = _first(row, "temperature_c")
    if celsius is None and temperatures:
        celsius = temperatures[0][1]  # what a maker knows on day 0
    start_ta = _first(row, "starter_ta_g_per_l")
    return Conditions(
        volume_l=volume_ml / 1000.0,
        surface_cm2=_within(surface, 0.1, 1e6, 80.0),
        starter_share=_within(_first(row, "starter_percent"), 0.0, 100.0, USUAL_STARTER_PERCENT)
        / 100.0,
        start_ph=None,
        starter_ta_g_per_l=None if start_ta is None else _within(start_ta, 0.0, 200.0, 6.0),
        temperature_c=_within(celsius, 5.0, 45.0, USUAL_TEMPERATURE_C),
        sugar_g_per_l=_within(
            _first(row, "sucrose_g_per_l", "sugar_g_per_l"), 0.0, 500.0, USUAL_SUGAR_G_PER_L
        ),
        tea_kind=_tea(row.get("tea", "")),
    )


def _tea(text: str) -> TeaKind:
    low = text.lower()
    if "not tea" in low:
        return TeaKind.HERBAL
    found = [kind for word, kind in _TEAS.items() if word in low]
    if len(found) == 1:
        return found[0]
    if found or "tea" in low or not low.strip():
        return TeaKind.MIXED if found else TeaKind.BLACK
    return TeaKind.HERBAL


def _first(row: dict[str, str], *names: str) -> float | None:
    for name in names:
        value = number(row.get(name))
        if value is not None:
            return value
    return None


def _within(value: float | None, low: float, high: float, usual: float) -> float:
    return value if value is not None and low <= value <= high else usual


def number(text: str | None) -> float | None:
    """Return the number at the beginning of a text, such as 99 of "99 (day-0 point)"."""
    found = _NUMBER.match((text or "").strip())
    if found is None:
        return None
    value = float(found.group())
    return value if math.isfinite(value) else None


def _is_possible(quantity: Quantity, value: float) -> bool:
    low, high = {
        Quantity.PH: (0.0, 14.0),
        Quantity.TA_G_PER_L: (0.0, 200.0),
        Quantity.BRIX: (0.0, 60.0),
        Quantity.SPECIFIC_GRAVITY: (0.9, 1.4),
    }[quantity]
    return low <= value <= high
