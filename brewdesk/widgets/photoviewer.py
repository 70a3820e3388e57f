"""Look at photos in large, one at a time or two side by side."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QImage, QKeyEvent, QPixmap
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.pictures import full_image
from brewdesk.services.desk import Desk
from brewdesk.services.jobs import Pool
from brewdesk.services.photofiles import FileState, PhotoTrouble
from brewdesk.services.records import Photo
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.moments import days_between, stamp_words
from brewdesk.services.wording.photos import state_sentence, trouble_of_photo
from brewdesk.widgets.fields import announce, make_strong, plain_label
from brewdesk.widgets.photocanvas import PhotoCanvas
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_STATE_OF = {"missing": FileState.MISSING, "damaged": FileState.DAMAGED}


class PhotoPane(QWidget):
    """One photo with its words, and ways to the next and the one before."""

    moved = Signal()
    taken_up = Signal()

    def __init__(
        self, desk: Desk, photos: Sequence[Photo], row: int, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._photos = tuple(photos)
        self._row = row
        self.canvas = PhotoCanvas()
        self.when = plain_label("", wraps=True)
        make_strong(self.when)
        self.caption = plain_label("", "muted", wraps=True)
        self.newer_button = self._arrow(self.tr("Newer photo"), Qt.ArrowType.LeftArrow)
        self.older_button = self._arrow(self.tr("Older photo"), Qt.ArrowType.RightArrow)
        self.count = plain_label("", "muted")
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.when)
        words.addWidget(self.caption)
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        line.addLayout(words, 1)
        line.addWidget(self.count)
        line.addWidget(self.newer_button)
        line.addWidget(self.older_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.canvas, 1)
        column.addLayout(line)
        self.newer_button.clicked.connect(lambda: self.go(-1))
        self.older_button.clicked.connect(lambda: self.go(1))
        self.canvas.taken_up.connect(self.taken_up)
        self._load()

    def photo(self) -> Photo:
        """Return the photo on show."""
        return self._photos[self._row]

    def row(self) -> int:
        """Return its place among all."""
        return self._row

    def go(self, by: int) -> None:
        """Go to an older photo (1) or a newer one (-1), if there is one."""
        row = self._row + by
        if 0 <= row < len(self._photos):
            self._row = row
            self._load()
            self.moved.emit()

    def _arrow(self, name: str, arrow: Qt.ArrowType) -> QToolButton:
        button = QToolButton()
        button.setArrowType(arrow)
        button.setAccessibleName(name)
        button.setToolTip(name)
        return button

    def _load(self) -> None:
        photo = self.photo()
        zone = self._desk.clock.zone()
        self.when.setText(stamp_words(photo.taken_at, zone))
        self.caption.setText(photo.caption)
        self.caption.setVisible(bool(photo.caption))
        self.count.setText(
            self.tr("{n} of {all}").format(
                n=number_text(self._row + 1, 0), all=number_text(len(self._photos), 0)
            )
        )
        self.newer_button.setEnabled(self._row > 0)
        self.older_button.setEnabled(self._row + 1 < len(self._photos))
        said = ". ".join(part for part in (self.when.text(), photo.caption) if part)
        self.canvas.setAccessibleName(self.tr("Photo, {said}").format(said=said))
        announce(self, said)
        self.canvas.set_words(self.tr("Loading…"))
        folder = self._desk.photos.folder
        self._desk.jobs.run(
            lambda: full_image(folder, photo),
            lambda image: self._on_loaded(photo, image),
            lambda error: self._on_failed(photo, error),
            key=f"photo:{id(self)}",
            pool=Pool.PICTURES,
        )

    def _on_loaded(self, photo: Photo, image: QImage) -> None:
        if photo == self.photo():
            self.canvas.set_pixmap(QPixmap.fromImage(image))

    def _on_failed(self, photo: Photo, error: BaseException) -> None:
        if photo != self.photo():
            return
        if not isinstance(error, PhotoTrouble):
            raise error
        state = _STATE_OF.get(error.code)
        text = state_sentence(state) if state is not None else trouble_of_photo(error.code)
        self.canvas.set_words(text)
        announce(self, text)


class PhotoViewer(QDialog):
    """Photos in large. Left and right go through them, C compares two, Escape closes."""

    def __init__(
        self, desk: Desk, photos: Sequence[Photo], row: int, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setObjectName("photo_viewer")
        self.setWindowTitle(self.tr("Photos"))
        self._desk = desk
        self._photos = tuple(photos)
        self.first = PhotoPane(desk, photos, row)
        self.second: PhotoPane | None = None
        self._active = self.first
        self._build()
        self._connect(self.first)
        window = parent.window() if parent is not None else None
        size = window.size() if window is not None else QSize(1100, 760)
        self.resize(max(640, round(size.width() * 0.92)), max(520, round(size.height() * 0.92)))
        self.first.canvas.setFocus(Qt.FocusReason.OtherFocusReason)
        self._show_state()

    def current(self) -> Photo:
        """Return the photo that the keyboard is at."""
        return self._active.photo()

    def active(self) -> PhotoPane:
        """Return the side that the keyboard is at."""
        return self._active

    def set_comparing(self, is_on: bool) -> None:
        """Put a second photo beside the first, or take it away again."""
        if is_on == (self.second is not None) or (is_on and len(self._photos) < 2):
            return
        if is_on:
            older = self.first.row() + 1
            row = older if older < len(self._photos) else self.first.row() - 1
            self.second = PhotoPane(self._desk, self._photos, row, self)
            self._connect(self.second)
            self._panes.addWidget(self.second, 1)
            self.second.canvas.setFocus(Qt.FocusReason.OtherFocusReason)
        elif self.second is not None:
            gone, self.second = self.second, None
            self._active = self.first
            self._panes.removeWidget(gone)
            gone.hide()
            gone.deleteLater()
            self.first.canvas.setFocus(Qt.FocusReason.OtherFocusReason)
        self._show_state()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go through the photos, compare, close."""
        key = event.key()
        if key in (Qt.Key.Key_Left, Qt.Key.Key_PageUp):
            self._active.go(-1)
        elif key in (Qt.Key.Key_Right, Qt.Key.Key_PageDown):
            self._active.go(1)
        elif key == Qt.Key.Key_C and not event.modifiers():
            self.set_comparing(self.second is None)
        else:
            super().keyPressEvent(event)

    def _build(self) -> None:
        self.compare_button = QPushButton(self.tr("Compare two"))
        self.compare_button.setObjectName("photo_compare")
        self.compare_button.setEnabled(len(self._photos) > 1)
        self.fit_button = self._tool(self.tr("Fit"), "photo_fit")
        self.full_button = self._tool(self.tr("100 %"), "photo_full")
        self.out_button = self._tool(self.tr("−"), "photo_zoom_out")
        self.in_button = self._tool(self.tr("+"), "photo_zoom_in")
        self.out_button.setAccessibleName(self.tr("Zoom out"))
        self.in_button.setAccessibleName(self.tr("Zoom in"))
        self.full_button.setAccessibleName(self.tr("Show every pixel"))
        self.zoom_label = QLabel()
        self.zoom_label.setTextFormat(Qt.TextFormat.PlainText)
        set_role(self.zoom_label, "muted")
        self.span = plain_label("", "muted")
        close = QPushButton(self.tr("Close"))
        close.setObjectName("photo_close")
        close.setAutoDefault(False)
        close.clicked.connect(self.accept)
        bar = QHBoxLayout()
        bar.setSpacing(SPACE)
        bar.addWidget(self.compare_button)
        bar.addWidget(self.span)
        bar.addStretch(1)
        for widget in (
            self.zoom_label,
            self.out_button,
            self.in_button,
            self.fit_button,
            self.full_button,
        ):
            bar.addWidget(widget)
        bar.addSpacing(SPACE)
        bar.addWidget(close)
        frame = QFrame()
        self._panes = QHBoxLayout(frame)
        self._panes.setContentsMargins(0, 0, 0, 0)
        self._panes.setSpacing(2 * SPACE)
        self._panes.addWidget(self.first, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addLayout(bar)
        column.addWidget(frame, 1)
        self.compare_button.setAutoDefault(False)
        self.compare_button.clicked.connect(lambda: self.set_comparing(self.second is None))
        self.fit_button.clicked.connect(lambda: self._active.canvas.fit())
        self.full_button.clicked.connect(lambda: self._active.canvas.zoom_to(1.0))
        self.out_button.clicked.connect(lambda: self._active.canvas.zoom_out())
        self.in_button.clicked.connect(lambda: self._active.canvas.zoom_in())

    def _tool(self, text: str, name: str) -> QToolButton:
        button = QToolButton()
        button.setText(text)
        button.setObjectName(name)
        return button

    def _connect(self, pane: PhotoPane) -> None:
        pane.moved.connect(self._show_state)
        pane.taken_up.connect(lambda: self._on_taken_up(pane))
        pane.canvas.zoomed.connect(self._show_state)

    def _on_taken_up(self, pane: PhotoPane) -> None:
        if pane is self.first or pane is self.second:
            self._active = pane
            self._show_state()

    def _show_state(self) -> None:
        canvas = self._active.canvas
        has_picture = canvas.has_picture()
        self.zoom_label.setText(
            self.tr("{percent} %").format(percent=number_text(100 * canvas.zoom(), 0))
            if has_picture
            else ""
        )
        for button in (self.fit_button, self.full_button, self.out_button, self.in_button):
            button.setEnabled(has_picture)
        is_comparing = self.second is not None
        self.compare_button.setText(self.tr("Show one") if is_comparing else self.tr("Compare two"))
        self.span.setText(self._span_words())

    def _span_words(self) -> str:
        if self.second is None:
            return ""
        ends = sorted((self.first.photo().taken_at, self.second.photo().taken_at))
        days = days_between(ends[0], ends[1], self._desk.clock.zone())
        if days == 0:
            return self.tr("Both of the same day")
        if days == 1:
            return self.tr("1 day between them")
        return self.tr("{n} days between them").format(n=number_text(days, 0))
