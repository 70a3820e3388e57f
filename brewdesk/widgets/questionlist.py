"""The list of questions: a line to look for one, the questions below their groups."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QModelIndex, QObject, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics, QKeyEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QLineEdit,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.questions import KEY_ROLE, QuestionFilter, QuestionModel
from brewdesk.services.reckoner.question import Question
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.theme import SPACE, TOUCH, tokens

_BESIDE_TEXT = 3 * SPACE  # what the style keeps free on both sides of an item's words
Index = QModelIndex | QPersistentModelIndex


class _Rows(QStyledItemDelegate):
    """Rows as high as their words need; groups quiet and strong, never chosen."""

    def initStyleOption(self, option: QStyleOptionViewItem, index: Index) -> None:  # noqa: N802  # Qt's name
        super().initStyleOption(option, index)
        option.features |= QStyleOptionViewItem.ViewItemFeature.WrapText
        if index.data(KEY_ROLE) is None:
            option.font.setWeight(QFont.Weight.DemiBold)
            option.palette.setColor(option.palette.ColorRole.Text, tokens().muted)
            option.displayAlignment = Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        view = self.parent()
        width = view.viewport().width() - _BESIDE_TEXT if isinstance(view, QTreeView) else 200
        room = QFontMetrics(option.font).boundingRect(
            0, 0, max(width, 8 * SPACE), 10_000, int(Qt.TextFlag.TextWordWrap), str(index.data())
        )
        return QSize(width, max(TOUCH - 4, room.height() + SPACE + 4))


class _Tree(QTreeView):
    """The questions; every group stays open, and long words break into lines."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setHeaderHidden(True)
        self.setRootIsDecorated(False)
        self.setItemsExpandable(False)
        self.setIndentation(SPACE)
        self.setWordWrap(True)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setItemDelegate(_Rows(self))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the words anew for another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()


class QuestionList(QWidget):
    """Look for a question and choose it. ``chosen`` carries its key."""

    chosen = Signal(str)
    entered = Signal()  # Enter: the maker wants to go on to the entries

    def __init__(self, questions: Sequence[Question], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.search = QLineEdit(self)
        self.search.setObjectName("reckoner_search")
        self.search.setPlaceholderText(self.tr("Find a question"))
        self.search.setAccessibleName(self.tr("Find a question"))
        self.filter = QuestionFilter(self)
        self.filter.setSourceModel(QuestionModel(questions, self))
        self.tree = _Tree(self)
        self.tree.setObjectName("reckoner_questions")
        self.tree.setAccessibleName(self.tr("Questions"))
        self.tree.setModel(self.filter)
        self.tree.expandAll()
        self.nothing = plain_label(
            self.tr("No question holds these words."), "muted", self, wraps=True
        )
        self.nothing.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.search)
        column.addWidget(self.nothing)
        column.addWidget(self.tree, 1)
        self._chosen = ""
        self.search.installEventFilter(self)
        self.search.textChanged.connect(self._on_search)
        self.search.returnPressed.connect(self._on_return)
        self.tree.selectionModel().currentChanged.connect(self._on_current)
        self.tree.activated.connect(lambda _index: self.entered.emit())

    def choose(self, key: str) -> None:
        """Choose a question, and let it be seen."""
        if not self.filter.index_of(key).isValid():
            self.search.clear()
        index = self.filter.index_of(key)
        if index.isValid():
            self.tree.setCurrentIndex(index)
            self._let_see(index)

    def showEvent(self, event: QShowEvent) -> None:
        """Scroll anew: before it was shown, no row had its height."""
        super().showEvent(event)
        if self.tree.currentIndex().isValid():
            self._let_see(self.tree.currentIndex())

    def _let_see(self, index: QModelIndex) -> None:
        """Scroll to a question; with the first of a group comes the group's name."""
        if index.row() == 0:
            self.tree.scrollTo(index.parent())
        self.tree.scrollTo(index)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Arrow down goes from the words looked for to what was found; Escape takes them back."""
        is_press = event.type() == QEvent.Type.KeyPress
        if watched is self.search and is_press and isinstance(event, QKeyEvent):
            if event.key() == Qt.Key.Key_Down:
                if not self.tree.currentIndex().isValid():
                    self.tree.setCurrentIndex(self.filter.first())
                self.tree.setFocus()
                return True
            if event.key() == Qt.Key.Key_Escape and self.search.text():
                self.search.clear()
                return True
        return super().eventFilter(watched, event)

    def _on_search(self, text: str) -> None:
        keep = self._chosen
        self.filter.look_for(text)
        self.tree.expandAll()
        self.nothing.setVisible(self.filter.rowCount() == 0)
        self.tree.setVisible(self.filter.rowCount() > 0)
        index = self.filter.index_of(keep)
        if index.isValid():
            self.tree.setCurrentIndex(index)
            self._let_see(index)
        else:
            self.tree.scrollToTop()

    def _on_return(self) -> None:
        """Take the first one found, unless the chosen one is among them."""
        index = self.filter.index_of(self._chosen)
        if not index.isValid():
            index = self.filter.first()
        if index.isValid():
            self.tree.setCurrentIndex(index)
            self.entered.emit()

    def _on_current(self, now: QModelIndex, _before: QModelIndex) -> None:
        key = now.data(KEY_ROLE)
        if key is not None and key != self._chosen:
            self._chosen = key
            self.chosen.emit(key)
