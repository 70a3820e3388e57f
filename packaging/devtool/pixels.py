"""Read the picture that Xvfb keeps of its screen (XWD format), and write it as PNG."""

from __future__ import annotations

import struct
import zlib
from collections import Counter
from dataclasses import dataclass
from pathlib import Path

_XWD_VERSION = 7
_HEADER_WORDS = 25
_COLOUR_ENTRY_BYTES = 12
_LEAST_SIGNIFICANT_FIRST = 0


@dataclass(frozen=True)
class Picture:
    """Pixels row by row, three bytes each: red, green, blue."""

    width_px: int
    height_px: int
    rgb: bytes

    def colour_count(self) -> int:
        """Return how many different colours occur."""
        return len(self._colours())

    def share_of_commonest(self) -> float:
        """Return the share of the picture that its commonest colour fills, from 0 to 1."""
        return self._colours().most_common(1)[0][1] / (self.width_px * self.height_px)

    def without_top(self, rows: int) -> Picture:
        """Return the picture without its first rows."""
        rest = self.rgb[rows * self.width_px * 3 :]
        return Picture(self.width_px, self.height_px - rows, rest)

    def write_png(self, path: Path) -> None:
        """Write an 8-bit RGB PNG."""
        stride = self.width_px * 3
        rows = b"".join(
            b"\0" + self.rgb[start : start + stride] for start in range(0, len(self.rgb), stride)
        )
        header = struct.pack(">IIBBBBB", self.width_px, self.height_px, 8, 2, 0, 0, 0)
        path.write_bytes(
            b"\x89PNG\r\n\x1a\n"
            + _chunk(b"IHDR", header)
            + _chunk(b"IDAT", zlib.compress(rows, 6))
            + _chunk(b"IEND", b"")
        )

    def _colours(self) -> Counter[bytes]:
        return Counter(self.rgb[at : at + 3] for at in range(0, len(self.rgb), 3))


def read_xwd(data: bytes) -> Picture:
    """Read a 24-bit XWD picture; the layout is that of the header XWDFile.h of the X sources.

    Raises
    ------
    ValueError
        If it is another format or another depth.
    """
    words = struct.unpack(f">{_HEADER_WORDS}I", data[: _HEADER_WORDS * 4])
    header_size, version = words[0], words[1]
    width_px, height_px, byte_order = words[4], words[5], words[7]
    bits_per_pixel, bytes_per_line, colours = words[11], words[12], words[19]
    if version != _XWD_VERSION or bits_per_pixel != 32:
        raise ValueError(f"not a 32-bit XWD picture: version {version}, {bits_per_pixel} bits")
    start = header_size + colours * _COLOUR_ENTRY_BYTES
    rgb = bytearray(width_px * height_px * 3)
    first = (2, 1, 0) if byte_order == _LEAST_SIGNIFICANT_FIRST else (1, 2, 3)
    for row in range(height_px):
        line = data[start + row * bytes_per_line :][: width_px * 4]
        target = row * width_px * 3
        for channel, offset in enumerate(first):
            rgb[target + channel : target + width_px * 3 : 3] = line[offset::4]
    return Picture(width_px, height_px, bytes(rgb))


def _chunk(kind: bytes, content: bytes) -> bytes:
    length = struct.pack(">I", len(content))
    return length + kind + content + struct.pack(">I", zlib.crc32(kind + content))
