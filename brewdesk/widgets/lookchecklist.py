"""A guided look at a jar's surface: tick what is there, read what follows from it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QFrame, QHBoxLayout, QVBoxLayout, QWidget

from brewdesk.services.looks import FINE_SIGNS, MOLD_SIGNS, Sign, look_of
from brewdesk.services.records import Look
from brewdesk.services.wording.looks import look_source, look_words, seen_words, sign_words
from brewdesk.widgets.fields import announce, card, make_strong, plain_label
from brewdesk.widgets.lookfigures import SignFigure
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_ROLE = {Look.MOLD: "danger", Look.UNSURE: "warn", Look.FINE: "inform"}


class SignRow(QWidget):
    """One sign: its drawing, a box to tick, and more words. The whole row can be pressed."""

    toggled = Signal()

    def __init__(self, sign: Sign, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.sign = sign
        words = sign_words(sign)
        self.box = QCheckBox(words.name)
        self.box.setObjectName(f"sign_{sign.value}")
        self.box.setAccessibleDescription(words.more)
        make_strong(self.box)
        self.more = plain_label(words.more, "muted", wraps=True)
        column = QVBoxLayout()
        column.setSpacing(0)
        column.addWidget(self.box)
        column.addWidget(self.more)
        column.addStretch(1)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, SPACE // 2, 0, SPACE // 2)
        row.setSpacing(SPACE + 4)
        row.addWidget(SignFigure(sign, self), 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(column, 1)
        self.box.toggled.connect(self.toggled)

    def mouseReleaseEvent(self, event: object) -> None:
        """Tick as if the box itself had been pressed: wet fingers miss small boxes."""
        del event
        self.box.setFocus(Qt.FocusReason.MouseFocusReason)
        self.box.toggle()


class LookChecklist(QWidget):
    """The signs in two groups, and the finding. ``changed`` fires when a tick changes it."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("look_checklist")
        self.rows: dict[Sign, SignRow] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        groups = PairGrid(gap=3 * SPACE)
        groups.add(
            self._group(self.tr("Signs of mold: all of it goes"), MOLD_SIGNS),
            self._group(
                self.tr("Belongs to a healthy brew"),
                tuple(sign for sign in FINE_SIGNS if sign is not Sign.BARE),
            ),
        )
        # Doubt stands below the shorter column, apart from mold; so no one has to scroll to it.
        groups.add(self._row(Sign.DOUBT), self._row(Sign.BARE))
        column.addWidget(groups)
        self.finding, inner = card(role="inform")
        self.finding.setObjectName("look_finding")
        self.finding_text = plain_label("", wraps=True)
        make_strong(self.finding_text)
        self.advice_text = plain_label("", wraps=True)
        inner.setSpacing(SPACE // 2)
        inner.addWidget(self.finding_text)
        inner.addWidget(self.advice_text)
        column.addWidget(self.finding)
        column.addWidget(plain_label(look_source(), "label", wraps=True))
        self._show_finding(speak=False)

    def signs(self) -> frozenset[Sign]:
        """Return what is ticked."""
        return frozenset(sign for sign, row in self.rows.items() if row.box.isChecked())

    def look(self) -> Look | None:
        """Return the finding; None while nothing is ticked."""
        return look_of(self.signs())

    def text(self) -> str:
        """Return what was ticked, in words for the record."""
        return seen_words(self.signs())

    def _group(self, title: str, signs: tuple[Sign, ...]) -> QFrame:
        frame = QFrame()
        column = QVBoxLayout(frame)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        heading = plain_label(title, "heading", wraps=True)
        heading.setContentsMargins(0, SPACE, 0, SPACE // 2)
        column.addWidget(heading)
        for sign in signs:
            column.addWidget(self._row(sign))
        column.addStretch(1)
        return frame

    def _row(self, sign: Sign) -> SignRow:
        row = SignRow(sign, self)
        row.toggled.connect(self._on_toggled)
        self.rows[sign] = row
        return row

    def _on_toggled(self) -> None:
        self._show_finding(speak=True)
        self.changed.emit()

    def _show_finding(self, *, speak: bool) -> None:
        look = self.look()
        if look is None:
            finding = self.tr("Tick everything you see.")
            advice = self.tr(
                "Look in good light, from above and from the side, without stirring. Never taste "
                "to find out."
            )
        else:
            words = look_words(look)
            finding, advice = words.finding, words.what_to_do
        is_new = finding != self.finding_text.text()
        self.finding_text.setText(finding)
        self.advice_text.setText(advice)
        set_role(self.finding, _ROLE[look] if look is not None else "card")
        if speak and is_new:
            announce(self, f"{finding} {advice}")
