"""The pH of calibration buffers by temperature, from printed tables."""

from __future__ import annotations

import csv
from enum import Enum
from functools import lru_cache
from pathlib import Path

from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate

_TABLE = Path(__file__).parent / "tables" / "ph_buffers.csv"
LOWEST_C, HIGHEST_C = 0.0, 50.0


class Buffer(Enum):
    """A calibration liquid; bottles of the same nominal pH may hold different ones."""

    PHTHALATE = "phthalate"  # 4.01 at 25 degC
    PHOSPHATE = "phosphate"  # 6.86 at 25 degC
    BORATE = "borate"  # 9.18 at 25 degC
    TECHNICAL_4 = "technical_4"  # 4.00 at 25 degC
    TECHNICAL_7 = "technical_7"  # 7.00 at 25 degC, but 7.04 at 15 degC
    TECHNICAL_10 = "technical_10"  # 10.01 at 25 degC; goes stale in air


# What each was printed with, to two digits; the doubt is that of a fresh bottle, and of
# one that takes up carbonic acid. Assumption, beyond the table's own last digit.
_DOUBT_PH = {Buffer.BORATE: 0.04, Buffer.TECHNICAL_10: 0.05}
_USUAL_DOUBT_PH = 0.025
_SOURCE = {
    Buffer.PHTHALATE: "jis_z_8802",
    Buffer.PHOSPHATE: "jis_z_8802",
    Buffer.BORATE: "jis_z_8802",
    Buffer.TECHNICAL_4: "us_technical_buffers",
    Buffer.TECHNICAL_7: "us_technical_buffers",
    Buffer.TECHNICAL_10: "us_technical_buffers",
}


def buffer_ph(buffer: Buffer, temperature_c: float) -> Estimate:
    """Return the pH of a fresh buffer, 80 % bounds.

    Parameters
    ----------
    buffer : Buffer
        Which liquid it is; the bottle or its table says so.
    temperature_c : float
        Of the buffer, 0 to 50 degC; linear between the table's rows, 5 degC apart.

    Raises
    ------
    ImpossibleInput
        Outside that range.

    Notes
    -----
    jis_z_8802 for phthalate, phosphate and borate, us_technical_buffers for the others.
    """
    if not LOWEST_C <= temperature_c <= HIGHEST_C:  # NaN fails too
        raise ImpossibleInput(
            "temperature_c", temperature_c, low=LOWEST_C, high=HIGHEST_C, unit="°C"
        )
    rows = _rows()
    # the last row that is not above, and the one after it; at the top end the last two
    index = min(sum(row[0] <= temperature_c for row in rows), len(rows) - 1)
    (low_c, low), (high_c, high) = rows[index - 1], rows[index]
    share = (temperature_c - low_c) / (high_c - low_c)
    ph = low[buffer] + share * (high[buffer] - low[buffer])
    doubt = _DOUBT_PH.get(buffer, _USUAL_DOUBT_PH)
    return Estimate(ph, ph - doubt, ph + doubt, sources=(_SOURCE[buffer],))


@lru_cache(maxsize=1)
def _rows() -> tuple[tuple[float, dict[Buffer, float]], ...]:
    with _TABLE.open(encoding="utf-8", newline="") as file:
        file.readline()  # names the sources
        return tuple(
            (float(row["t_c"]), {buffer: float(row[buffer.value]) for buffer in Buffer})
            for row in csv.DictReader(file)
        )
