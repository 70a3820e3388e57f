"""The photos of one batch, culture or reading: drop them, look at them, word them."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QStandardPaths, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDropEvent,
    QGuiApplication,
    QKeySequence,
    QShortcut,
    QShowEvent,
)
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QMenu,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.photomime import may_hold_pictures, sources_of, sources_of_paths
from brewdesk.models.photos import PhotosModel
from brewdesk.models.pictures import look_into
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.photofiles import FileState, Source
from brewdesk.services.photos import Brought, PhotoOwner
from brewdesk.services.records import ImpossibleInput, Photo, StoreTrouble
from brewdesk.services.wording.photos import (
    brought_words,
    location_words,
    state_sentence,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.icons import icon
from brewdesk.widgets.photocopy import PhotoCopies
from brewdesk.widgets.photodrop import DropGround
from brewdesk.widgets.photolist import PhotoListView
from brewdesk.widgets.photoviewer import PhotoViewer
from brewdesk.widgets.photowords import PhotoWordsDialog
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

PICTURES = "*.jpg *.jpeg *.png *.webp *.gif *.bmp *.tif *.tiff"


class PhotoStrip(QWidget):
    """Photos of ``owner``, the newest first. Everything done here can be undone.

    ``brought`` fires when pictures that were offered have been taken in or refused.
    """

    brought = Signal(object)

    def __init__(
        self, desk: Desk, owner: PhotoOwner | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setObjectName("photo_strip")
        self._desk = desk
        self._owner: PhotoOwner | None = None
        self._is_stale = False
        self.dialog: QWidget | None = None
        self.model = PhotosModel(desk.jobs, desk.photos.folder, desk.clock, self)
        self.copies = PhotoCopies(desk, self)
        self.setAcceptDrops(True)
        self._build()
        self._connect()
        self.set_owner(owner)

    # which photos

    def set_owner(self, owner: PhotoOwner | None) -> None:
        """Show the photos of ``owner``."""
        if owner != self._owner:
            self._say("")
        self._owner = owner
        self.setEnabled(owner is not None)
        self.refresh()

    def owner(self) -> PhotoOwner | None:
        """Return whose photos are shown."""
        return self._owner

    def chosen(self) -> Photo | None:
        """Return the photo that is chosen."""
        return self.view.chosen()

    def refresh(self) -> None:
        """Read the entries anew; a chosen photo that is still there stays chosen."""
        self._is_stale = False
        photos: tuple[Photo, ...] = ()
        name = ""
        if self._owner is not None:
            try:
                name = self._desk.photos.name_of(self._owner)
                photos = self._desk.photos.of(self._owner)
            except StoreTrouble as trouble:  # what they were of was taken back
                self._say(trouble_words(trouble), "error")
        self.ground.set_name(name)
        self.model.set_photos(photos, name)
        # No stack: it would keep the room of the one that is not shown.
        self.view.setVisible(bool(photos))
        self.ground.setVisible(not photos)
        self._show_state()

    # what the maker does

    def bring(self, sources: tuple[Source, ...]) -> None:
        """Take pictures in, off this thread."""
        if self._owner is None or not sources:
            return
        self._say(self.tr("Adding…"), "muted")
        self._desk.photos.bring(
            self._owner, sources, look_into, self._on_brought, self._on_bring_failed
        )

    def pick(self) -> None:
        """Let the maker choose files."""
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
        dialog = QFileDialog(self, self.tr("Add photos"), folder)
        dialog.setObjectName("photo_pick")
        dialog.setFileMode(QFileDialog.FileMode.ExistingFiles)
        dialog.setNameFilters(
            [self.tr("Pictures ({endings})").format(endings=PICTURES), self.tr("All files (*)")]
        )
        dialog.filesSelected.connect(self._on_picked)
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def paste(self) -> None:
        """Take in what is on the clipboard, if it is pictures."""
        mime = QGuiApplication.clipboard().mimeData()
        if mime is None or not may_hold_pictures(mime):
            self._say(self.tr("There is no picture on the clipboard."), "muted")
            return
        self.bring(sources_of(mime))

    def open_chosen(self) -> None:
        """Look at the chosen photo in large."""
        photo = self.chosen()
        row = self.model.row_of(photo.id) if photo is not None else None
        if row is None or self.dialog is not None:
            return
        viewer = PhotoViewer(self._desk, self.model.photos(), row, self)
        viewer.finished.connect(lambda: self._on_viewer_closed(viewer))
        self._keep_dialog(viewer)
        viewer.open()

    def word_chosen(self) -> None:
        """Word the chosen photo, or put right when it was taken."""
        photo = self.chosen()
        if photo is None or self.dialog is not None:
            return
        dialog = PhotoWordsDialog(self._desk, photo, self)
        dialog.finished.connect(self._on_dialog_closed)
        self._keep_dialog(dialog)
        dialog.open()

    def remove_chosen(self) -> None:
        """Take the chosen photo out; undo brings it back."""
        photo = self.chosen()
        row = self.model.row_of(photo.id) if photo is not None else None
        if photo is None or row is None:
            return
        try:
            self._desk.photos.remove(photo.id)
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble), "error")
            return
        self._say(self.tr("Taken out. Undo brings it back."), "muted")
        last = self.model.rowCount() - 1
        if last >= 0:
            self.view.choose(min(row, last))
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def copy_chosen(self) -> None:
        """Put the chosen photo on the clipboard, as what can be seen and nothing else."""
        photo = self.chosen()
        if photo is not None:
            self.copies.to_clipboard(photo)

    # Qt

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Welcome pictures that come from elsewhere."""
        if self._owner is not None and self._is_welcome(event):
            event.acceptProposedAction()
            self.ground.set_hovered(True)
            self.setProperty("hovered", True)
            self._say(self.tr("Let go to add it."), "muted")
        else:
            event.ignore()

    def dragMoveEvent(self, event: QDropEvent) -> None:
        """Go on welcoming them."""
        if self._is_welcome(event):
            event.setDropAction(Qt.DropAction.CopyAction)
            event.accept()

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        """Look as before."""
        super().dragLeaveEvent(event)
        self.ground.set_hovered(False)
        self._say("")

    def dropEvent(self, event: QDropEvent) -> None:
        """Take in what was dropped."""
        self.ground.set_hovered(False)
        if not self._is_welcome(event):
            event.ignore()
            return
        event.setDropAction(Qt.DropAction.CopyAction)
        event.accept()
        self.bring(sources_of(event.mimeData()))

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Offer what can be done with the photo under the pointer."""
        if self.chosen() is not None:
            self._popup(event.globalPos())

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        if self._is_stale:
            self.refresh()

    # building

    def _build(self) -> None:
        self.view = PhotoListView(self.model, self.copies.for_drag)
        self.view.setObjectName("photo_list")
        self.view.setAccessibleName(self.tr("Photos, the newest first"))
        # The list itself takes no drops, so that they come to the strip.
        self.view.setAcceptDrops(False)
        self.view.viewport().setAcceptDrops(False)
        self.ground = DropGround()
        self.add_button = QPushButton(self.tr("Add photos…"))
        self.add_button.setObjectName("photo_add")
        self.open_button = QPushButton(self.tr("Open"))
        self.open_button.setObjectName("photo_open")
        set_role(self.open_button, "quiet")
        self.more_button = QToolButton()
        self.more_button.setObjectName("photo_more")
        self.more_button.setAccessibleName(self.tr("More for this photo"))
        self.more_button.setToolTip(self.tr("More for this photo"))
        self.more_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.menu = QMenu(self.more_button)
        self.more_button.setMenu(self.menu)
        self.message = plain_label("", "muted", wraps=True)
        self.message.setObjectName("photo_message")
        self.location = plain_label(location_words(), "warn", wraps=True)
        self.location.setObjectName("photo_location")
        self.location.hide()
        bar = QHBoxLayout()
        bar.setSpacing(SPACE)
        bar.addWidget(self.add_button)
        bar.addStretch(1)
        bar.addWidget(self.open_button)
        bar.addWidget(self.more_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addLayout(bar)
        column.addWidget(self.view, 1)
        column.addWidget(self.ground, 1)
        column.addWidget(self.location)
        column.addWidget(self.message)
        self.message.hide()

    def _connect(self) -> None:
        self.add_button.clicked.connect(self.pick)
        self.ground.pick_wanted.connect(self.pick)
        self.ground.paste_wanted.connect(self.paste)
        self.open_button.clicked.connect(self.open_chosen)
        self.menu.aboutToShow.connect(self.fill_menu)
        self.view.open_wanted.connect(self.open_chosen)
        self.view.words_wanted.connect(self.word_chosen)
        self.view.remove_wanted.connect(self.remove_chosen)
        self.view.selectionModel().selectionChanged.connect(self._show_state)
        self.model.dataChanged.connect(self._show_state)
        self.copies.told.connect(self._say)
        self._desk.changes.changed.connect(self._on_changed)
        for keys, act in (
            (QKeySequence.StandardKey.Paste, self.paste),
            (QKeySequence.StandardKey.Copy, self.copy_chosen),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)

    def fill_menu(self) -> None:
        """Offer what can be done with the chosen photo."""
        self.menu.clear()
        photo = self.chosen()
        if photo is not None:
            self.menu.addAction(self.tr("Open"), self.open_chosen)
            self.menu.addAction(self.tr("Caption and date…"), self.word_chosen)
            self.menu.addSeparator()
            self.menu.addAction(self.tr("Copy"), self.copy_chosen)
            self.menu.addAction(
                self.tr("Save a copy without camera data…"),
                lambda: self.copies.ask_where(photo, is_clean=True),
            )
            self.menu.addAction(
                self.tr("Save a copy as it is…"), lambda: self.copies.offer_original(photo)
            )
            self.menu.addSeparator()
            self.menu.addAction(self.tr("Take out"), self.remove_chosen)
            self.menu.addSeparator()
        self.menu.addAction(self.tr("Paste a picture"), self.paste)

    def _popup(self, at: QPoint) -> None:
        self.fill_menu()
        self.menu.popup(at)

    # showing

    def _show_state(self) -> None:
        photo = self.chosen()
        has_photos = self.model.rowCount() > 0
        self.add_button.setVisible(has_photos)
        self.open_button.setVisible(has_photos)
        self.more_button.setVisible(has_photos)
        self.open_button.setEnabled(photo is not None)
        self.more_button.setIcon(icon("more"))
        self.location.setVisible(photo is not None and self.model.has_location(photo))
        state = self.model.state(photo) if photo is not None else None
        if state is not None and state is not FileState.FINE:
            self._say(state_sentence(state), "error")
        elif self.message.property("role") == "error" and self._is_state_told():
            self._say("")

    def _is_state_told(self) -> bool:
        return self.message.text() in {state_sentence(state) for state in FileState}

    def _say(self, text: str, role: str = "muted") -> None:
        if text == self.message.text() and role == self.message.property("role"):
            return
        set_role(self.message, role)
        self.message.setText(text)
        self.message.setVisible(bool(text))
        announce(self, text)

    # what happens

    def _is_welcome(self, event: QDropEvent) -> bool:
        return event.source() is not self.view and may_hold_pictures(event.mimeData())

    def _on_picked(self, paths: list[str]) -> None:
        self.bring(sources_of_paths(paths))

    def _on_brought(self, brought: Brought) -> None:
        self.model.forget_lost()
        self.refresh()
        self._say(brought_words(brought), "error" if brought.refused else "good")
        if brought.photos:
            row = self.model.row_of(brought.photos[0].id)
            if row is not None:
                self.view.choose(row)
        self.brought.emit(brought)

    def _on_bring_failed(self, error: BaseException) -> None:
        if isinstance(error, ImpossibleInput):
            self._say(impossible_words(error), "error")
        elif isinstance(error, StoreTrouble):
            self._say(trouble_words(error), "error")
        else:
            raise error

    def _on_changed(self, change: Change) -> None:
        if self._owner is None or not change.concerns(Topic.PHOTOS):
            return
        if self.isVisible():
            self.refresh()
        else:
            self._is_stale = True

    def _keep_dialog(self, dialog: QWidget) -> None:
        self.dialog = dialog

    def _on_viewer_closed(self, viewer: PhotoViewer) -> None:
        row = self.model.row_of(viewer.current().id)
        if row is not None:
            self.view.choose(row)
        self._on_dialog_closed()

    def _on_dialog_closed(self) -> None:
        if self.dialog is not None:
            self.dialog.deleteLater()
            self.dialog = None
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)
