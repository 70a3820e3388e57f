"""Copies of photos for others: without camera data, or as they are once that was said."""

from __future__ import annotations

import os
import re
import shutil
from pathlib import Path

from PySide6.QtCore import QObject, QStandardPaths, QTemporaryDir, Signal
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.pictures import full_image, without_camera_data
from brewdesk.services.cameradata import read_camera_data
from brewdesk.services.desk import Desk
from brewdesk.services.jobs import Pool
from brewdesk.services.photofiles import PhotoTrouble
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import Photo
from brewdesk.services.wording.photos import copied_words, location_words, trouble_of_photo
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.theme import SPACE


def file_name_of(desk: Desk, photo: Photo, ending: str) -> str:
    """Name a copy after what it shows and when: "Tall jar 2026-11-25 0930.jpg"."""
    owner = (
        PhotoOwner(batch_id=photo.batch_id)
        if photo.batch_id is not None
        else PhotoOwner(culture_id=photo.culture_id)
    )
    name = re.sub(r"[^\w ,()+-]+", " ", desk.photos.name_of(owner)).strip()[:60] or "photo"
    at = photo.taken_at.astimezone(desk.clock.zone())
    return f"{name} {at:%Y-%m-%d %H%M}{ending}"


class LocationDialog(QDialog):
    """Says that a file tells where it was taken, before it is given away as it is.

    ``chosen`` carries whether the camera data is to be left out.
    """

    chosen = Signal(bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("photo_location_dialog")
        self.setWindowTitle(self.tr("Save a copy"))
        self.setMinimumWidth(440)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        heading = self.tr("Leave the camera data out?")
        column.addWidget(plain_label(heading, "heading", wraps=True))
        column.addWidget(plain_label(location_words(), wraps=True))
        buttons, self.clean_button = go_and_leave(
            self, self.tr("Save without it"), self.tr("Cancel"), go_name="photo_clean_go"
        )
        self.as_is_button = QPushButton(self.tr("Save as it is"))
        self.as_is_button.setObjectName("photo_as_is_go")
        self.as_is_button.setAutoDefault(False)
        buttons.addButton(self.as_is_button, QDialogButtonBox.ButtonRole.ActionRole)
        column.addWidget(buttons)
        self.clean_button.clicked.connect(lambda: self._choose(True))
        self.as_is_button.clicked.connect(lambda: self._choose(False))

    def _choose(self, is_clean: bool) -> None:
        self.accept()
        self.chosen.emit(is_clean)


class PhotoCopies(QObject):
    """Makes copies off the window's thread. ``told`` carries what to say, and its role."""

    told = Signal(str, str)

    def __init__(self, desk: Desk, window: QWidget) -> None:
        super().__init__(window)
        self._desk = desk
        self._window = window
        self._drag_folder: QTemporaryDir | None = None

    def for_drag(self, photo: Photo) -> Path | None:
        """Lay a copy under a name that says what it is: the kept file itself is never given."""
        if self._drag_folder is None:
            self._drag_folder = QTemporaryDir()
        source = self._desk.photos.folder.path_of(photo)
        target = Path(self._drag_folder.path()) / file_name_of(self._desk, photo, source.suffix)
        try:
            shutil.copyfile(source, target)
        except OSError:
            self.told.emit(trouble_of_photo("missing"), "error")
            return None
        return target

    def offer_original(self, photo: Photo) -> None:
        """Ask where to put a copy as it is; if it says where it was taken, ask about that first."""
        folder = self._desk.photos.folder
        self._desk.jobs.run(
            lambda: read_camera_data(folder.read(photo)).has_location,
            lambda has_location: self._on_location_known(photo, has_location),
            self._on_failed,
            key="photo-location",
            pool=Pool.PICTURES,
        )

    def ask_where(self, photo: Photo, *, is_clean: bool) -> None:
        """Ask for the place of a copy, then make it."""
        source = self._desk.photos.folder.path_of(photo)
        ending = source.suffix
        if is_clean and ending not in (".png", ".jpg"):
            ending = ""  # it follows from what the picture turns out to be
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
        dialog = QFileDialog(self._window, self.tr("Save a copy"), folder)
        dialog.setObjectName("photo_save_as")
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.selectFile(file_name_of(self._desk, photo, ending))
        dialog.fileSelected.connect(lambda path: self.save(photo, Path(path), is_clean=is_clean))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def save(self, photo: Photo, target: Path, *, is_clean: bool) -> None:
        """Write a copy to ``target``."""
        folder = self._desk.photos.folder

        def work() -> Path:
            data = folder.read(photo)
            path = target
            if is_clean:
                data, ending = without_camera_data(data, photo.media_type)
                path = target.with_suffix(f".{ending}")
            _write(path, data)
            return path

        self._desk.jobs.run(
            work,
            lambda path: self.told.emit(
                copied_words(str(path))
                if is_clean
                else self.tr("Saved a copy: {path}").format(path=path),
                "good",
            ),
            self._on_failed,
            pool=Pool.PICTURES,
        )

    def to_clipboard(self, photo: Photo) -> None:
        """Copy what can be seen; camera data does not come along."""
        folder = self._desk.photos.folder
        self._desk.jobs.run(
            lambda: full_image(folder, photo),
            self._on_decoded,
            self._on_failed,
            key="photo-clipboard",
            pool=Pool.PICTURES,
        )

    def _on_location_known(self, photo: Photo, has_location: bool) -> None:
        if not has_location:
            self.ask_where(photo, is_clean=False)
            return
        dialog = LocationDialog(self._window)
        dialog.chosen.connect(lambda is_clean: self.ask_where(photo, is_clean=is_clean))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _on_decoded(self, image: QImage) -> None:
        QGuiApplication.clipboard().setImage(image)
        self.told.emit(self.tr("Copied."), "good")

    def _on_failed(self, error: BaseException) -> None:
        if not isinstance(error, PhotoTrouble):
            raise error
        self.told.emit(trouble_of_photo(error.code), "error")


def _write(path: Path, data: bytes) -> None:
    """Write a copy whole: what breaks off must not look like one."""
    temporary = path.with_name(f".{path.name}.{os.getpid()}.unfinished")
    try:
        temporary.write_bytes(data)
        os.replace(temporary, path)
    except OSError as error:
        temporary.unlink(missing_ok=True)
        raise PhotoTrouble("copy_failed", str(error)) from error
