"""Which fields stand on the labels, and the maker's own words for one record."""

from __future__ import annotations

from datetime import tzinfo

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFrame,
    QGridLayout,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.labels import (
    EDITABLE,
    OFFERED,
    LabelFacts,
    LabelField,
    LabelKind,
    field_texts,
    inherited,
)
from brewdesk.services.wording.labels import field_words, kind_words
from brewdesk.widgets.fields import FieldRow, choose, plain_label
from brewdesk.widgets.theme import SPACE

_TYPED = 10_000  # what a line takes: more than any label, so that a paste is told, not cut unseen


class LabelWords(QWidget):
    """``changed`` fires when a field is switched or a text edited.

    ``texts`` are the maker's own words by the record's key and the field's name.
    """

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.texts: dict[str, dict[str, str]] = {}
        self._facts: dict[str, LabelFacts] = {}
        self._zone: tzinfo | None = None
        self._is_filling = False
        self.kind = QComboBox(self)
        self.kind.setObjectName("label_kind")
        self.kind.addItem(self.tr("As suits each"), None)
        for kind in LabelKind:
            self.kind.addItem(kind_words(kind.value), kind)
        self.whose = QComboBox(self)
        self.whose.setObjectName("label_whose")
        self.whose.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.whose.setMinimumContentsLength(16)
        self.boxes: dict[LabelField, QCheckBox] = {}
        self.lines: dict[LabelField, QLineEdit] = {}
        self.as_recorded = QPushButton(self.tr("Back to what is recorded"), self)
        self.as_recorded.setObjectName("label_as_recorded")
        self._grid = QGridLayout()
        self._make_fields()
        self._lay_out()
        self.kind.currentIndexChanged.connect(self._on_kind)
        self.whose.currentIndexChanged.connect(lambda _index: self._fill())
        self.as_recorded.clicked.connect(self._on_as_recorded)

    def _make_fields(self) -> None:
        self._grid.setHorizontalSpacing(SPACE)
        self._grid.setVerticalSpacing(SPACE // 2)
        self._grid.setColumnStretch(1, 1)
        for row, each in enumerate(LabelField):
            box = QCheckBox(field_words(each.value), self)
            box.setObjectName(f"label_has_{each.value}")
            box.setChecked(True)
            box.setEnabled(each is not LabelField.NAME)  # a label without a name is of no use
            box.toggled.connect(self._on_toggled)
            self.boxes[each] = box
            if each not in EDITABLE:
                self._grid.addWidget(box, row, 0, 1, 2)
                continue
            self._grid.addWidget(box, row, 0)
            line = QLineEdit(self)
            line.setObjectName(f"label_text_{each.value}")
            line.setMaxLength(_TYPED)
            line.setAccessibleName(field_words(each.value))
            line.textEdited.connect(lambda text, each=each: self._on_edited(each, text))
            self.lines[each] = line
            self._grid.addWidget(line, row, 1)
        self.lines[LabelField.INGREDIENTS].setPlaceholderText(self.tr("What is in it"))
        self.lines[LabelField.ALLERGENS].setPlaceholderText(
            self.tr("You know; the program does not")
        )

    def _lay_out(self) -> None:
        body = QWidget()
        inner = QVBoxLayout(body)
        inner.setContentsMargins(0, SPACE, SPACE, SPACE)
        inner.setSpacing(SPACE)
        inner.addWidget(FieldRow(self.tr("Kind of label"), self.kind, lines=0))
        self._whose_row = FieldRow(self.tr("Words for"), self.whose, lines=0)
        inner.addWidget(self._whose_row)
        inner.addLayout(self._grid)
        inner.addWidget(self.as_recorded, 0, Qt.AlignmentFlag.AlignLeft)
        inner.addWidget(
            plain_label(
                self.tr(
                    "Ticks count for all labels, words for the one chosen above. The label says "
                    "what you and your records say; it does not say that a drink is safe. Where "
                    "you give or sell it, follow your local rules on labels."
                ),
                "muted",
                wraps=True,
            )
        )
        inner.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(body)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(area)

    # --- what is chosen --------------------------------------------------------------

    def chosen_kind(self) -> LabelKind | None:
        """Return the kind for all labels; None for each record's own."""
        # Qt hands an enum in an item's data back as it was given.
        kind = self.kind.currentData()
        return kind if isinstance(kind, LabelKind) else None

    def hidden(self) -> frozenset[LabelField]:
        """Return the fields that are switched off."""
        return frozenset(each for each, box in self.boxes.items() if not box.isChecked())

    def own(self, key: str) -> dict[LabelField, str]:
        """Return the maker's words for a record."""
        known = {each.value: each for each in EDITABLE}
        words = self.texts.get(key, {})
        return {known[name]: text for name, text in words.items() if name in known}

    def all_own(self, facts: LabelFacts) -> dict[LabelField, str]:
        """Return the maker's words for a record, those for its batch among them."""
        return inherited(facts, self.texts) | self.own(facts.key)

    def _recorded(self, facts: LabelFacts) -> dict[LabelField, str]:
        """Return the texts as the record has them, or the batch it is from."""
        texts = field_texts(facts, self._zone) if self._zone is not None else {}
        return texts | inherited(facts, self.texts)

    def restore(self, kind: str, hidden: tuple[str, ...], texts: dict[str, dict[str, str]]) -> None:
        """Put back what was chosen last."""
        self._is_filling = True
        self.texts = texts
        choose(self.kind, next((each for each in LabelKind if each.value == kind), None))
        for each, box in self.boxes.items():
            box.setChecked(each.value not in hidden or each is LabelField.NAME)
        self._is_filling = False
        self._fill()

    def set_facts(self, facts: tuple[LabelFacts, ...], zone: tzinfo) -> None:
        """Offer these records for editing; the one chosen stays, if it is among them."""
        self._facts = {each.key: each for each in facts}
        self._zone = zone
        chosen = self.whose.currentData()
        self._is_filling = True
        self.whose.clear()
        for each in facts:
            self.whose.addItem(" ".join(each.name.split()), each.key)
        choose(self.whose, chosen)
        self._is_filling = False
        self._fill()

    # --- what happens ----------------------------------------------------------------

    def _fill(self) -> None:
        if self._is_filling:
            return
        facts = self._facts.get(str(self.whose.currentData()))
        kinds = self._kinds(facts)
        offered = frozenset().union(*(OFFERED[kind] for kind in kinds))
        texts = self._recorded(facts) if facts is not None else {}
        own = self.own(facts.key) if facts is not None else {}
        for each, box in self.boxes.items():
            box.setVisible(each in offered)
        for each, line in self.lines.items():
            line.setVisible(each in offered and facts is not None)
            text = own.get(each, texts.get(each, ""))
            if line.text() != text:
                line.setText(text)
                line.setCursorPosition(0)
        self._whose_row.setVisible(facts is not None)
        self.as_recorded.setVisible(facts is not None)
        self.as_recorded.setEnabled(bool(own))

    def _kinds(self, facts: LabelFacts | None) -> tuple[LabelKind, ...]:
        kind = self.chosen_kind()
        if kind is not None:
            return (kind,)
        return (facts.kind,) if facts is not None else tuple(LabelKind)

    def _on_kind(self, _index: int) -> None:
        self._fill()
        self._tell()

    def _on_toggled(self, _is_on: bool) -> None:
        self._tell()

    def _tell(self) -> None:
        if not self._is_filling:
            self.changed.emit()

    def _on_edited(self, each: LabelField, text: str) -> None:
        facts = self._facts.get(str(self.whose.currentData()))
        if facts is None or self._zone is None:
            return
        words = self.texts.pop(facts.key, {})  # and in again at the end: the newest are kept
        if text == self._recorded(facts).get(each, ""):
            words.pop(each.value, None)
        else:
            words[each.value] = text
        if words:
            self.texts[facts.key] = words
        self.as_recorded.setEnabled(bool(words))
        self._tell()

    def _on_as_recorded(self) -> None:
        self.texts.pop(str(self.whose.currentData()), None)
        self._fill()
        self._tell()
