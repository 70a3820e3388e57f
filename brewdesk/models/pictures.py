"""What Qt makes of a picture's bytes: what it is, small and large images, a clean copy.

Every function may be called from any thread.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize, Qt
from PySide6.QtGui import QColorSpace, QImage, QImageReader, QImageWriter, QPainter

from brewdesk.services.cameradata import is_whole_jpeg, read_camera_data
from brewdesk.services.photofiles import (
    MAX_PIXELS,
    FileState,
    PhotoFolder,
    PhotoTrouble,
)
from brewdesk.services.photos import PictureFacts
from brewdesk.services.records import Photo

THUMBNAIL_PX = 512  # the long side of what is kept; smaller ones are made of it
_JPEG_QUALITY = 92
_THUMBNAIL_QUALITY = 85
# Qt reads more than these, but drawings and documents are no photos, and may fetch or run things.
_MEDIA_TYPES = {
    b"jpeg": "image/jpeg",
    b"jpg": "image/jpeg",
    b"png": "image/png",
    b"webp": "image/webp",
    b"gif": "image/gif",
    b"bmp": "image/bmp",
    b"tiff": "image/tiff",
    b"tif": "image/tiff",
    b"heic": "image/heic",
    b"heif": "image/heic",
    b"avif": "image/avif",
}
_STATE_OF = {"missing": FileState.MISSING, "damaged": FileState.DAMAGED}


@dataclass(frozen=True, slots=True)
class Thumbnail:
    """A small picture, or what keeps it from being shown."""

    image: QImage | None
    state: FileState
    has_location: bool = False


def look_into(data: bytes) -> PictureFacts:
    """Say what a picture is, by its content and never by its name; sizes as it is shown.

    The size is read and judged before anything is decoded, so that a small file that unfolds
    into a huge picture is never unfolded.

    Raises
    ------
    PhotoTrouble
        not_a_picture, too_many_pixels, broken.
    """
    with _Opened(data) as opened:
        media_type = _MEDIA_TYPES.get(bytes(opened.reader.format().data()).lower())
        size = opened.reader.size()
        if media_type is None or not opened.reader.canRead():
            raise PhotoTrouble("not_a_picture")
        if not size.isValid() or size.isEmpty():
            raise PhotoTrouble("broken")
        if size.width() * size.height() > MAX_PIXELS:
            raise PhotoTrouble("too_many_pixels", f"{size.width()} x {size.height()}")
    if media_type == "image/jpeg" and not is_whole_jpeg(data):
        raise PhotoTrouble("broken", "the end is missing")
    if media_type == "image/bmp" and len(data) < int.from_bytes(data[2:6], "little"):
        raise PhotoTrouble("broken", "the end is missing")
    _decoded(data, THUMBNAIL_PX)
    turned = _size_as_shown(data)
    return PictureFacts(media_type, turned.width(), turned.height())


def full_image(folder: PhotoFolder, photo: Photo) -> QImage:
    """Decode a kept photo in full, the right way up.

    Raises
    ------
    PhotoTrouble
        missing, damaged, unreadable, broken.
    """
    return _decoded(folder.read(photo), None)


def thumbnail(folder: PhotoFolder, photo: Photo, side_px: int) -> Thumbnail:
    """Make a photo's small picture with the long side ``side_px``, or say why there is none.

    The file is checked against its hash each time; the small picture itself is cached.
    """
    try:
        data = folder.read(photo)
        has_location = read_camera_data(data).has_location
        image = _cached(folder, photo)
        if image.isNull():
            image = _decoded(data, THUMBNAIL_PX)
            _cache(folder, photo, image)
    except PhotoTrouble as trouble:
        return Thumbnail(None, _STATE_OF.get(trouble.code, FileState.UNREADABLE))
    return Thumbnail(_fitted(image, side_px), FileState.FINE, has_location)


def without_camera_data(data: bytes, media_type: str) -> tuple[bytes, str]:
    """Paint a picture anew, so that only what can be seen is left; return bytes and ending.

    Photographs come out as JPEG, pictures with transparency or of few colours as PNG.

    Raises
    ------
    PhotoTrouble
        broken.
    """
    image = _decoded(data, None)
    is_photograph = media_type in ("image/jpeg", "image/heic", "image/avif") or (
        media_type == "image/webp" and not image.hasAlphaChannel()
    )
    image.convertToColorSpace(QColorSpace(QColorSpace.NamedColorSpace.SRgb))
    kind = QImage.Format.Format_RGB32 if is_photograph else QImage.Format.Format_ARGB32
    clean = QImage(image.size(), kind)  # a copy of the old one would carry its texts along
    clean.fill(Qt.GlobalColor.white if is_photograph else Qt.GlobalColor.transparent)
    painter = QPainter(clean)
    painter.drawImage(0, 0, image)
    painter.end()
    ending = "jpg" if is_photograph else "png"
    return _encoded(clean, ending, _JPEG_QUALITY if is_photograph else -1), ending


def png_of(image: QImage) -> bytes:
    """Write an image from the clipboard as PNG, losing nothing."""
    return _encoded(image, "png", -1)


def jpeg_of(image: QImage) -> bytes:
    """Write a painted image as JPEG."""
    return _encoded(image, "jpg", _JPEG_QUALITY)


class _Opened:
    """A reader over bytes. Never keep the reader itself: it must go before its buffer does."""

    def __init__(self, data: bytes) -> None:
        self._bytes = QByteArray(data)
        self._buffer = QBuffer(self._bytes)
        self._buffer.open(QIODevice.OpenModeFlag.ReadOnly)
        self.reader = QImageReader(self._buffer)
        self.reader.setDecideFormatFromContent(True)
        self.reader.setAutoTransform(True)  # as the camera was held

    def __enter__(self) -> _Opened:
        return self

    def __exit__(self, *_error: object) -> None:
        del self.reader  # before the buffer it reads from
        self._buffer.close()


def _size_as_shown(data: bytes) -> QSize:
    with _Opened(data) as opened:
        size = opened.reader.size()
        is_turned = opened.reader.transformation().value & 4  # TransformationRotate90
    return size.transposed() if is_turned else size


def _decoded(data: bytes, side_px: int | None) -> QImage:
    with _Opened(data) as opened:
        size = opened.reader.size()
        if not size.isValid() or size.width() * size.height() > MAX_PIXELS:
            raise PhotoTrouble("broken")
        if side_px is not None and max(size.width(), size.height()) > side_px:
            bound = QSize(side_px, side_px)
            scaled = size.scaled(bound, Qt.AspectRatioMode.KeepAspectRatio)
            opened.reader.setScaledSize(scaled.expandedTo(QSize(1, 1)))
        image = opened.reader.read()
        if image.isNull():
            raise PhotoTrouble("broken", opened.reader.errorString())
    return image


def _fitted(image: QImage, side_px: int) -> QImage:
    if max(image.width(), image.height()) <= side_px:
        return image
    return image.scaled(
        QSize(side_px, side_px),
        Qt.AspectRatioMode.KeepAspectRatio,
        Qt.TransformationMode.SmoothTransformation,
    )


def _cached(folder: PhotoFolder, photo: Photo) -> QImage:
    try:
        data = folder.thumbnail_path(photo, THUMBNAIL_PX).read_bytes()
        return _decoded(data, THUMBNAIL_PX)
    except (OSError, PhotoTrouble):
        return QImage()


def _cache(folder: PhotoFolder, photo: Photo, image: QImage) -> None:
    flat = QImage(image.size(), QImage.Format.Format_RGB32)
    flat.fill(Qt.GlobalColor.white)
    painter = QPainter(flat)
    painter.drawImage(0, 0, image)
    painter.end()
    try:
        folder.write(
            folder.thumbnail_path(photo, THUMBNAIL_PX), _encoded(flat, "jpg", _THUMBNAIL_QUALITY)
        )
    except PhotoTrouble:  # the picture is shown all the same, only made anew next time
        return


def _encoded(image: QImage, ending: str, quality: int) -> bytes:
    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(buffer, ending.encode())
    writer.setQuality(quality)
    is_written = writer.write(image)
    del writer  # before the buffer it writes to
    buffer.close()
    if not is_written:
        raise PhotoTrouble("broken", f"cannot be written as {ending}")
    return bytes(held.data())
