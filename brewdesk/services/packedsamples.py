"""The samples of a temperature logger, packed: how they are kept, and their hourly means.

One sample takes twelve bytes, little-endian: seconds since 1970-01-01 UTC as int64, then
the temperature [degC] as float32. A content is the samples in order of time; it is named
by the SHA-256 of all its bytes and kept in chunks of at most `CHUNK_SAMPLES`.
"""

from __future__ import annotations

import hashlib
import struct
from array import array
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from typing import Any, TypeAlias

    from numpy import float32, int64
    from numpy.typing import NDArray

    Instants: TypeAlias = NDArray[int64]
    Degrees: TypeAlias = NDArray[float32]

CHUNK_SAMPLES = 65_536
SECONDS_PER_HOUR = 3600
_ONE = struct.Struct("<qf")
SAMPLE_BYTES = _ONE.size


@dataclass(frozen=True, slots=True)
class Packed:
    """Samples in order of time, as they are kept."""

    content_hash: str
    chunks: tuple[bytes, ...]
    count: int


@dataclass(frozen=True, slots=True)
class HourlyMeans:
    """What a log says of each hour in which it has samples.

    ``hours`` are whole hours since 1970-01-01 UTC in rising order; the other arrays go with
    them: mean, lowest and highest temperature [degC], and the number of samples.
    """

    hours: array[int]
    means_c: array[float]
    lows_c: array[float]
    highs_c: array[float]
    counts: array[int]


def pack(at_s: Instants, celsius: Degrees) -> Packed:
    """Pack samples that are already in order of time.

    Parameters
    ----------
    at_s
        Seconds since 1970-01-01 UTC, rising.
    celsius
        Temperatures [degC], one for each.
    """
    import numpy as np

    digest, chunks = hashlib.sha256(), []
    for start in range(0, len(at_s), CHUNK_SAMPLES):
        part = slice(start, start + CHUNK_SAMPLES)
        rows = np.empty(len(at_s[part]), dtype=_row_type())
        rows["at_s"] = at_s[part]
        rows["celsius"] = celsius[part]
        chunks.append(rows.tobytes())
        digest.update(chunks[-1])
    return Packed(digest.hexdigest(), tuple(chunks), len(at_s))


def pack_pairs(samples: Iterable[tuple[int, float]]) -> Packed:
    """Pack a few samples without numpy, in any order: (seconds, degC)."""
    ordered = sorted(samples)
    content = b"".join(_ONE.pack(at_s, celsius) for at_s, celsius in ordered)
    size = CHUNK_SAMPLES * SAMPLE_BYTES
    chunks = tuple(content[n : n + size] for n in range(0, len(content), size))
    return Packed(hashlib.sha256(content).hexdigest(), chunks, len(ordered))


def unpack(chunks: Sequence[bytes]) -> tuple[Instants, Degrees]:
    """Return the seconds and the temperatures [degC] that chunks hold."""
    import numpy as np

    rows = np.frombuffer(b"".join(chunks), dtype=_row_type())
    return rows["at_s"].astype(np.int64), rows["celsius"].astype(np.float32)


def last_of(tail: bytes) -> tuple[int, float] | None:
    """Return the last sample of a content from its last bytes; None if there are none."""
    if len(tail) < SAMPLE_BYTES:
        return None
    at_s, celsius = _ONE.unpack(tail[-SAMPLE_BYTES:])
    return at_s, celsius


def hourly(chunks: Sequence[bytes]) -> HourlyMeans:
    """Return the hourly means of a content."""
    import numpy as np

    at_s, celsius = unpack(chunks)
    if not len(at_s):
        return HourlyMeans(array("q"), array("d"), array("d"), array("d"), array("q"))
    hours = at_s // SECONDS_PER_HOUR
    first = np.flatnonzero(np.diff(hours, prepend=hours[0] - 1))
    counts = np.diff(first, append=len(hours))
    degrees = celsius.astype(np.float64)
    return HourlyMeans(
        hours=array("q", hours[first].tolist()),
        means_c=array("d", (np.add.reduceat(degrees, first) / counts).tolist()),
        lows_c=array("d", np.minimum.reduceat(degrees, first).tolist()),
        highs_c=array("d", np.maximum.reduceat(degrees, first).tolist()),
        counts=array("q", counts.tolist()),
    )


def _row_type() -> Any:  # noqa: ANN401  # numpy comes late
    import numpy as np

    return np.dtype([("at_s", "<i8"), ("celsius", "<f4")])
