"""Invented pictures, painted or put together byte by byte, and files that only look like some."""

from __future__ import annotations

import struct
import zlib
from random import Random

from PySide6.QtCore import QBuffer, QByteArray, QIODevice
from PySide6.QtGui import QColor, QImage, QImageWriter, QPainter

from brewdesk.services.photofiles import Source


def painted(width: int = 64, height: int = 48, seed: int = 1) -> QImage:
    """Paint coloured blocks that differ by ``seed``."""
    random = Random(seed)
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor(*(random.randrange(256) for _ in range(3))))
    painter = QPainter(image)
    for _ in range(12):
        colour = QColor(*(random.randrange(256) for _ in range(3)))
        painter.fillRect(random.randrange(width), random.randrange(height), 9, 9, colour)
    painter.end()
    return image


def encoded(image: QImage, kind: str = "png") -> bytes:
    """Write an image in Qt's name of a format."""
    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(buffer, kind.encode())
    assert writer.write(image), writer.errorString()
    del writer
    buffer.close()
    return bytes(held.data())


def picture(kind: str = "png", width: int = 64, height: int = 48, seed: int = 1) -> bytes:
    """Paint a picture and write it."""
    return encoded(painted(width, height, seed), kind)


def offered(data: bytes, name: str = "picture") -> Source:
    """Offer bytes as the clipboard does."""
    return Source(name, make=lambda: data)


def tiff_block(
    taken: str = "",
    offset: str = "",
    *,
    orientation: int = 1,
    has_position: bool = False,
    order: str = "<",
) -> bytes:
    """Lay out an Exif block: a first directory, the camera's own, and one of the position."""
    head = (b"II" if order == "<" else b"MM") + struct.pack(f"{order}HI", 42, 8)
    first_count = 2 + has_position
    exif_at = 8 + 2 + 12 * first_count + 4
    texts = [(0x9003, taken.encode() + b"\0")] if taken else []
    texts += [(0x9011, offset.encode() + b"\0")] if offset else []
    position_at = exif_at + 2 + 12 * len(texts) + 4
    position = struct.pack(f"{order}H", 1) + struct.pack(f"{order}HHI4sI", 1, 2, 2, b"N\0\0\0", 0)
    text_at = position_at + (len(position) if has_position else 0)
    first = struct.pack(f"{order}H", first_count)
    first += struct.pack(f"{order}HHIHH", 0x0112, 3, 1, orientation, 0)
    first += struct.pack(f"{order}HHII", 0x8769, 4, 1, exif_at)
    if has_position:
        first += struct.pack(f"{order}HHII", 0x8825, 4, 1, position_at)
    first += struct.pack(f"{order}I", 0)
    exif, tail = struct.pack(f"{order}H", len(texts)), b""
    for tag, value in texts:
        exif += struct.pack(f"{order}HHII", tag, 2, len(value), text_at + len(tail))
        tail += value
    exif += struct.pack(f"{order}I", 0)
    return head + first + exif + (position if has_position else b"") + tail


def with_exif(data: bytes, block: bytes) -> bytes:
    """Put an Exif block into a JPEG or a PNG, as a camera or a phone does."""
    if data.startswith(b"\xff\xd8"):
        body = b"Exif\0\0" + block
        return data[:2] + b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body + data[2:]
    after_header = 8 + 25
    chunk = b"eXIf" + block
    crc = struct.pack(">I", zlib.crc32(chunk))
    return data[:after_header] + struct.pack(">I", len(block)) + chunk + crc + data[after_header:]


def huge_png(width: int, height: int) -> bytes:
    """Write a small PNG that says it is huge; its pixels, all alike, would unfold to that."""

    def chunk(name: bytes, body: bytes) -> bytes:
        return (
            struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))
        )

    header = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return (
        b"\x89PNG\r\n\x1a\n"
        + chunk(b"IHDR", header)
        + chunk(b"IDAT", zlib.compress(b"\0" * 10_000, 9))
        + chunk(b"IEND", b"")
    )
