"""Pictures on the clipboard and in a drag: read when they come in, written when they go out."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import cast

from PySide6.QtCore import QMimeData, QUrl
from PySide6.QtGui import QImage

from brewdesk.models.pictures import png_of
from brewdesk.services.photofiles import Source


def may_hold_pictures(mime: QMimeData) -> bool:
    """Whether a drag or the clipboard has files or an image; cheap, for while it moves."""
    return mime.hasImage() or any(url.isLocalFile() for url in mime.urls())


def sources_of(mime: QMimeData) -> tuple[Source, ...]:
    """Return what is offered: files of this computer, or else the image itself."""
    urls = mime.urls()
    local = [url for url in urls if url.isLocalFile()]
    if not local and mime.hasImage():
        image = QImage(cast("QImage", mime.imageData()))
        return () if image.isNull() else (Source("", make=partial(png_of, image)),)
    # What lies elsewhere is refused by name rather than overlooked.
    return tuple(
        Source(url.fileName() or url.toString(), Path(url.toLocalFile()))
        if url.isLocalFile()
        else Source(url.fileName() or url.toString())
        for url in urls
    )


def sources_of_paths(paths: list[str]) -> tuple[Source, ...]:
    """Return the files chosen in a dialog."""
    return tuple(Source(Path(path).name, Path(path)) for path in paths)


def mime_of_file(path: Path) -> QMimeData:
    """Offer one file to other programs."""
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path))])
    return mime
