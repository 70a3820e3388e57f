"""The shelf: vessels standing on boards, in an item view with a delegate.

The view owns the scale (pixels to the centimetre), so that all jars stay true to
one another; it is chosen so that the boards fill the room there is.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from PySide6.QtCore import (
    QAbstractItemModel,
    QEvent,
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
    QPointF,
    QRect,
    QRectF,
    Qt,
    Signal,
)
from PySide6.QtGui import (
    QColor,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QFont,
    QFontMetrics,
    QHelpEvent,
    QKeyEvent,
    QLinearGradient,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QListView,
    QToolTip,
    QWidget,
)

from brewdesk.models.shelf import JAR_ROLE, ShelfModel
from brewdesk.services.drops import Carried, CarriedKind, Target
from brewdesk.services.shelf import JarView
from brewdesk.widgets.carriage import Carriage
from brewdesk.widgets.dropmarks import Mark, mark_of
from brewdesk.widgets.jardelegate import BOARD_PX, JarDelegate
from brewdesk.widgets.jarlook import look_of
from brewdesk.widgets.jarpainter import total_height_cm, widest_cm
from brewdesk.widgets.shelfdrag import answer_drag, grabbed, is_far_enough, run_drag, take_drop
from brewdesk.widgets.theme import SPACE, tokens

LEAST_JAR_PX = 132.0
MOST_JAR_PX = 330.0
CELL_LEAST_PX = 176
HEADROOM_PX = 18
LINES = 3
GRAB_PX = 12.0  # above and below a surface: as high as a fingertip is wide, about
EDGE_PX = 28

Index = QModelIndex | QPersistentModelIndex


class ShelfView(QListView):
    """Boards with jars. Emits ``jar_opened`` on Enter or double click."""

    jar_opened = Signal(int)
    jar_chosen = Signal(int)
    pick_up_wanted = Signal(int)  # by keys: what is in this vessel
    menu_wanted = Signal(int, QPoint)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("shelf_view")
        self.setAccessibleName(self.tr("Shelf"))
        self.scale_px_per_cm = 8.0
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setStyleSheet("QListView { background: transparent; border: none; }")
        self.setViewMode(QListView.ViewMode.IconMode)
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setMovement(QListView.Movement.Static)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSpacing(0)
        self.setItemDelegate(JarDelegate(self))
        self.activated.connect(self._on_activated)
        self._fonts: tuple[QFont, QFont] | None = None
        self._words_px: tuple[int, int] | None = None  # room for the words: width, height
        self._tallest: float | None = None  # asked for by every cell, found once
        self._sizes: dict[int, tuple[JarView, float, float]] = {}
        self._fitted: tuple[object, float | None] | None = None  # for what, and the scale
        self._laid_out: object = None
        self._worn: object = None
        self._carriage: Carriage | None = None
        self._pressed_at: QPoint | None = None
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.customContextMenuRequested.connect(self._on_menu_asked)

    def setModel(self, model: QAbstractItemModel | None) -> None:
        """Show another model."""
        if model is not None:  # before the view's own slots: they ask for sizes at once
            for signal in (
                model.dataChanged,
                model.rowsInserted,
                model.rowsRemoved,
                model.modelReset,
            ):
                signal.connect(self._forget_tallest)
        self._forget_tallest()
        super().setModel(model)

    def _forget_tallest(self, *_what: object) -> None:
        self._tallest = None

    # --- geometry shared with the delegate -------------------------------------------

    def fonts(self) -> tuple[QFont, QFont]:
        """Fonts of the name and of the lines below it."""
        if self._fonts is None:
            name = QFont(self.font())
            name.setWeight(QFont.Weight.DemiBold)
            small = QFont(self.font())
            small.setPointSizeF(self.font().pointSizeF() * 0.92)
            self._fonts = (name, small)
        return self._fonts

    def text_height(self) -> int:
        """Height of the words below a board."""
        return self._room_for_words()[1]

    def _room_for_words(self) -> tuple[int, int]:
        if self._words_px is None:
            name, small = (QFontMetrics(font) for font in self.fonts())
            high = name.height() + (LINES - 1) * (small.height() + 4) + 3 * SPACE
            self._words_px = (small.averageCharWidth() * 25, high)
        return self._words_px

    def jar_area(self) -> float:
        """Height from a row's top to the board."""
        return HEADROOM_PX + self._tallest_cm() * self.scale_px_per_cm

    def row_height(self) -> int:
        """Height of one board with jars above and words below."""
        return round(self.jar_area() + BOARD_PX + SPACE + self.text_height())

    def cell_width(self, jar: JarView) -> int:
        """Width of one jar's cell at the scale in use."""
        return self._cell_width_at(jar, self.scale_px_per_cm)

    def _cell_width_at(self, jar: JarView, scale: float) -> int:
        return self._cell_width_of(self._size_of(jar)[0], self._room_for_words()[0], scale)

    def _size_of(self, jar: JarView) -> tuple[float, float]:
        """Width and height of a jar [cm], found once a view: the layout asks again and again."""
        known = self._sizes.get(jar.vessel.id)
        if known is None or known[0] is not jar:
            look = look_of(jar)
            known = self._sizes[jar.vessel.id] = (jar, widest_cm(look), total_height_cm(look))
        return known[1:]

    @staticmethod
    def _cell_width_of(jar_cm: float, words_px: int, scale: float) -> int:
        return max(CELL_LEAST_PX, words_px, math.ceil(jar_cm * scale * 1.12) + 32)

    def _jars(self) -> Sequence[JarView]:
        model = self.model()
        if isinstance(model, ShelfModel):  # much quicker than asking for each by its role
            return model.jars()
        if model is None:
            return ()
        return [model.index(row, 0).data(JAR_ROLE) for row in range(model.rowCount())]

    def _tallest_cm(self) -> float:
        if self._tallest is None:
            heights = (self._size_of(jar)[1] for jar in self._jars())
            self._tallest = max(heights, default=20.0)
        return self._tallest

    def fit_scale(self) -> None:
        """Choose the scale so that all boards fit the window, within readable limits."""
        jars = self._jars()
        if not jars:
            return
        tallest = self._tallest_cm()
        fitting = self._fitting_scale(jars, tallest)
        # With a scroll bar "as needed" Qt keeps its width free even when it is not needed.
        self.setVerticalScrollBarPolicy(
            Qt.ScrollBarPolicy.ScrollBarAsNeeded
            if fitting is None
            else Qt.ScrollBarPolicy.ScrollBarAlwaysOff
        )
        best = LEAST_JAR_PX / tallest if fitting is None else fitting
        if abs(best - self.scale_px_per_cm) > 0.01:
            self.scale_px_per_cm = best
            self.scheduleDelayedItemsLayout()
            self.viewport().update()

    def _fitting_scale(self, jars: Sequence[JarView], tallest: float) -> float | None:
        """Largest scale at which all boards are seen at once; None if there is none."""
        room_w = max(200, self.width() - 2 * self.frameWidth())
        room_h = max(200, self.height() - 2 * self.frameWidth())
        widths_cm = tuple(self._size_of(jar)[0] for jar in jars)
        asked = (widths_cm, tallest, room_w, room_h, self._room_for_words())
        if self._fitted is None or self._fitted[0] != asked:
            self._fitted = (asked, self._found_scale(widths_cm, tallest, room_w, room_h))
        return self._fitted[1]

    def _found_scale(
        self, widths_cm: tuple[float, ...], tallest: float, room_w: int, room_h: int
    ) -> float | None:
        around = HEADROOM_PX + BOARD_PX + SPACE + self.text_height()
        best: float | None = None
        for rows in range(1, len(widths_cm) + 1):
            height = min(MOST_JAR_PX, room_h / rows - around - 1)
            if height < LEAST_JAR_PX:
                break
            # Fewer, wider jars on a board may force a smaller scale than its height allows.
            scale = height / tallest
            least = LEAST_JAR_PX / tallest
            while scale >= least and self._needs_more(rows, widths_cm, scale, room_w):
                scale *= 0.97
            if scale >= least and (best is None or scale > best):
                best = scale
        return best

    def _needs_more(
        self, rows: int, widths_cm: tuple[float, ...], scale: float, room_w: int
    ) -> bool:
        """Whether so many boards are too few; looks at no more jars than it has to."""
        words_px = self._room_for_words()[0]
        used = 0
        for jar_cm in widths_cm:
            wide = self._cell_width_of(jar_cm, words_px, scale)
            if used and used + wide > room_w:
                rows, used = rows - 1, 0
                if rows == 0:
                    return True
            used += wide
        return False

    def refresh_looks(self) -> None:
        """Lay out again after jars, fonts or colours changed, if anything stands otherwise."""
        self._fonts = self._words_px = None
        self.fit_scale()
        widths = tuple(self.cell_width(jar) for jar in self._jars())
        layout = (widths, self.row_height(), self.jar_area())
        if layout != self._laid_out:
            self._laid_out = layout
            self.scheduleDelayedItemsLayout()
        worn = (layout, tokens(), self.font().key())
        if worn != self._worn:  # a cell whose jar has changed is painted anew by itself
            self._worn = worn
            self.viewport().update()

    # --- choosing --------------------------------------------------------------------

    def choose(self, row: int) -> None:
        """Make ``row`` the current jar."""
        model = self.model()
        if model is not None and 0 <= row < model.rowCount():
            self.setCurrentIndex(model.index(row, 0))

    def currentChanged(self, current: Index, previous: Index) -> None:
        """Tell which jar is current."""
        super().currentChanged(current, previous)
        if current.isValid():
            self.jar_chosen.emit(current.data(JAR_ROLE).vessel.id)

    def _on_activated(self, index: QModelIndex) -> None:
        self.jar_opened.emit(index.data(JAR_ROLE).vessel.id)

    # --- carrying ----------------------------------------------------------------------

    def set_carriage(self, carriage: Carriage) -> None:
        """Let jars be carried from here and to here."""
        self._carriage = carriage
        self.setAcceptDrops(True)
        self.viewport().setAcceptDrops(True)
        self.setMouseTracking(True)
        for changed in (carriage.begun, carriage.pointed, carriage.ended):
            changed.connect(self.viewport().update)
        carriage.ended.connect(self._forget_press)

    def mark_of(self, jar: JarView) -> Mark | None:
        """Whether a jar takes what is carried; None while nothing is."""
        if self._carriage is None or jar.vessel.id == self._carriage.home_id():
            return None
        return mark_of(self._carriage, Target(vessel_id=jar.vessel.id))

    def target_at(self, at: QPoint) -> Target | None:
        """The vessel under a point of the viewport."""
        index = self.indexAt(at)
        if not index.isValid():
            return None
        return Target(vessel_id=index.data(JAR_ROLE).vessel.id)

    def box_of(self, vessel_id: int) -> QRect | None:
        """Where a vessel's jar stands in the viewport."""
        model = self.model()
        for row in range(model.rowCount() if model is not None else 0):
            index = model.index(row, 0)
            if index.data(JAR_ROLE).vessel.id == vessel_id:
                return self.visualRect(index)
        return None

    def pellicle_box(self, jar: JarView, cell: QRect) -> QRectF:
        """Where a hand gets hold of a jar's culture: about the surface of its liquid."""
        scale = self.scale_px_per_cm
        surface = cell.top() + self.jar_area() - jar.liquid_height_cm * scale
        half = widest_cm(look_of(jar)) * scale / 2
        reach = max(GRAB_PX, (jar.pellicle_mm or 0.0) / 10.0 * scale)
        return QRectF(cell.center().x() - half, surface - reach, 2 * half, 2 * reach)

    def _grabbed_at(self, at: QPoint) -> Carried | None:
        index = self.indexAt(at)
        if not index.isValid():
            return None
        jar: JarView = index.data(JAR_ROLE)
        cell = self.visualRect(index)
        return grabbed(jar, by_pellicle=self.pellicle_box(jar, cell).contains(QPointF(at)))

    def _is_carrying(self) -> bool:
        return self._carriage is not None and self._carriage.carried is not None

    def _forget_press(self) -> None:
        self._pressed_at = None

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Put down what is carried by clicks; else choose, and perhaps begin a drag."""
        at = event.position().toPoint()
        if self._carriage is not None and self._is_carrying():
            target = self.target_at(at)
            if event.button() is not Qt.MouseButton.LeftButton or target is None:
                self._carriage.give_up()
            else:
                self._carriage.lay_down(target)
            event.accept()
            return
        self._pressed_at = at if event.button() is Qt.MouseButton.LeftButton else None
        super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Begin a drag once the mouse has gone far enough with its button down."""
        at = event.position().toPoint()
        carriage = self._carriage
        if carriage is not None and self._is_carrying():
            carriage.point_at(self.target_at(at))
            event.accept()
            return
        pressed = self._pressed_at
        if carriage is None or pressed is None or not is_far_enough(pressed, at):
            self._show_what_is_grabbed(at)
            if pressed is None:
                super().mouseMoveEvent(event)
            return
        self._pressed_at = None
        carried = self._grabbed_at(pressed)
        if carried is not None:
            run_drag(self, carriage, carried)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """End what the press began."""
        self._pressed_at = None
        super().mouseReleaseEvent(event)

    def _show_what_is_grabbed(self, at: QPoint) -> None:
        can = self._carriage is not None and self._grabbed_at(at) is not None
        shape = Qt.CursorShape.OpenHandCursor if can else Qt.CursorShape.ArrowCursor
        self.viewport().setCursor(shape)

    def viewportEvent(self, event: QEvent) -> bool:
        """Say on the tip what a drag from here would carry."""
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            carried = self._grabbed_at(event.pos()) if self._carriage is not None else None
            words = {
                None: "",
                CarriedKind.BATCH: self.tr("Drag to carry the batch; at its surface, the culture."),
                CarriedKind.CULTURE: self.tr("Drag to carry the culture."),
            }[carried.kind if carried is not None else None]
            QToolTip.showText(event.globalPos(), words, self)
            return True
        return super().viewportEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Pick up with the space bar."""
        index = self.currentIndex()
        if event.key() == Qt.Key.Key_Space and self._carriage is not None and index.isValid():
            self.pick_up_wanted.emit(index.data(JAR_ROLE).vessel.id)
            event.accept()
            return
        super().keyPressEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Let in what this window picked up, and nothing else."""
        if self._carriage is not None and self._carriage.is_ours(event.mimeData()):
            event.accept()
        else:
            event.ignore()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """Answer for the jar under the pointer."""
        if self._carriage is None or not self._carriage.is_ours(event.mimeData()):
            event.ignore()
            return
        at = event.position().toPoint()
        self._scroll_at_the_edge(at)
        answer_drag(event, self._carriage, self.target_at(at))

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        """Let go of the pointer."""
        if self._carriage is not None:
            self._carriage.point_at(None)
        event.accept()

    def dropEvent(self, event: QDropEvent) -> None:
        """Put down what is let go over a jar."""
        if self._carriage is not None and self._carriage.is_ours(event.mimeData()):
            take_drop(event, self._carriage, self.target_at(event.position().toPoint()))
        else:
            event.ignore()

    def _scroll_at_the_edge(self, at: QPoint) -> None:
        """Bring boards into view that are out of it while something is dragged."""
        bar = self.verticalScrollBar()
        if at.y() < EDGE_PX:
            bar.setValue(bar.value() - EDGE_PX)
        elif at.y() > self.viewport().height() - EDGE_PX:
            bar.setValue(bar.value() + EDGE_PX)

    def _on_menu_asked(self, at: QPoint) -> None:
        index = self.indexAt(at)
        if not index.isValid():
            return
        self.setCurrentIndex(index)
        vessel_id = index.data(JAR_ROLE).vessel.id
        self.menu_wanted.emit(vessel_id, self.viewport().mapToGlobal(at))

    # --- painting --------------------------------------------------------------------

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Refit the scale to the new room."""
        self.fit_scale()
        super().resizeEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint wall and boards, then let the view place the jars."""
        painter = QPainter(self.viewport())
        t = tokens()
        area = self.viewport().rect()
        light = QLinearGradient(0, 0, 0, area.height())
        light.setColorAt(0.0, QColor(t.wall).lighter(103))
        light.setColorAt(1.0, QColor(t.wall))
        painter.fillRect(area, light)
        for y in self._board_tops():
            self._paint_board(painter, QRect(0, y, area.width(), BOARD_PX))
        painter.end()
        super().paintEvent(event)

    def _board_tops(self) -> list[int]:
        model = self.model()
        if model is None:
            return []
        tops = set[int]()
        bottom = self.viewport().height()
        for row in range(model.rowCount()):
            top = self.visualRect(model.index(row, 0)).top()
            if top > bottom:  # the rows follow one another: none behind is in sight
                break
            tops.add(round(top + self.jar_area()))
        return sorted(tops)

    def _paint_board(self, painter: QPainter, board: QRect) -> None:
        t = tokens()
        wood = QLinearGradient(board.topLeft(), board.bottomLeft())
        wood.setColorAt(0.0, QColor(t.board).lighter(112))
        wood.setColorAt(0.25, QColor(t.board))
        wood.setColorAt(1.0, QColor(t.board_edge))
        painter.fillRect(board, wood)
        shadow = QRect(board.left(), board.bottom() + 1, board.width(), 7)
        fade = QLinearGradient(shadow.topLeft(), shadow.bottomLeft())
        fade.setColorAt(0.0, QColor(0, 0, 0, 46))
        fade.setColorAt(1.0, QColor(0, 0, 0, 0))
        painter.fillRect(shadow, fade)
