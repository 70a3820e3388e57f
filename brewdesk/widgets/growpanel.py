"""How far a growing culture is, what to look for, and calling it grown."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.growing import Growth
from brewdesk.services.records import Kind, Look
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.moments import date_words
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.fields import FieldRow, bring_into_view, plain_label
from brewdesk.widgets.lookdialog import LookDialog
from brewdesk.widgets.millimetres import MillimetreReader
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard

MM_PER_CM = 10.0


class GrowPanel(QFrame):
    """The guide of one growing culture."""

    look_wanted = Signal(int)  # batch id
    finish_wanted = Signal(int)
    jar_wanted = Signal(int)

    def __init__(self, desk: Desk, growth: Growth, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._growth = growth
        self.setObjectName("grow_panel")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        self.card = VerdictCard(growth.verdict, self, show=desk.quantities.show)
        column.addWidget(self.card)
        for words in self._lines():
            column.addWidget(plain_label(words, "", self, wraps=True))
        column.addLayout(self._buttons())

    def _lines(self) -> list[str]:
        growth, zone = self._growth, self._desk.clock.zone()
        if growth.first_film_from is None or growth.first_film_to is None:
            return []
        lines = []
        if growth.solid_from is not None and growth.solid_to is not None:
            lines.append(
                self.tr(
                    "Film expected from {first} to {last}, solid from {solid} to {latest}; "
                    "assumed for about 25 °C."
                ).format(
                    first=date_words(growth.first_film_from, zone),
                    last=date_words(growth.first_film_to, zone),
                    solid=date_words(growth.solid_from, zone),
                    latest=date_words(growth.solid_to, zone),
                )
            )
        if growth.film_seen_day is not None and growth.thickness_mm is not None:
            lines.append(
                self.tr("Film first noted on day {day}; {mm} mm at the last look.").format(
                    day=growth.film_seen_day, mm=number_text(growth.thickness_mm, 0)
                )
            )
        return lines

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(SPACE)
        batch_id = self._growth.batch.id
        has_begun = self._growth.day is not None
        self.look = QPushButton(self.tr("Look for mold…"))
        self.look.setObjectName("grow_look")
        self.finish = QPushButton(self.tr("It has grown…"))
        self.finish.setObjectName("grow_finish")
        self.jar = QPushButton(self.tr("Show the jar") if has_begun else self.tr("Go and mix it"))
        self.jar.setObjectName("grow_jar")
        set_role(self.look if has_begun else self.jar, "primary")
        self.look.setVisible(has_begun)
        self.finish.setVisible(has_begun)
        self.look.clicked.connect(lambda: self.look_wanted.emit(batch_id))
        self.finish.clicked.connect(lambda: self.finish_wanted.emit(batch_id))
        self.jar.clicked.connect(lambda: self.jar_wanted.emit(batch_id))
        for button in (self.look, self.finish, self.jar):
            row.addWidget(button)
        row.addStretch(1)
        return row


class GrowLookDialog(LookDialog):
    """The guided look at a growing culture; how thick its film is, is asked with it."""

    def __init__(self, desk: Desk, growth: Growth, parent: QWidget | None = None) -> None:
        super().__init__(growth.culture.name, parent, keep=self._keep_both)
        self._desk = desk
        self._batch_id = growth.batch.id
        self.film = QuantityEdit(
            MillimetreReader(desk.quantities), Kind.LENGTH, required=False, lines=1
        )
        self.film.set_placeholder(self.tr("no film yet"))
        row = FieldRow(self.tr("Thickness of the film"), self.film)
        row.focus_widget.setObjectName("film_pellicle_mm")
        self.before.addWidget(row)

    def record(self) -> None:
        """Keep the look, unless the thickness cannot be read: it must not be lost unseen."""
        if self.film.point_out():
            super().record()
        else:
            bring_into_view(self.film)
            self.film.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _keep_both(self, look: Look, text: str) -> None:
        film_cm = self.film.value()
        self._desk.growing.look(
            self._batch_id,
            look,
            film_mm=None if film_cm is None else film_cm * MM_PER_CM,
            text=text,
        )


class GrownDialog(CareDialog):
    """Call a culture grown: how thick it is decides nothing, but is said to be usual or not."""

    def __init__(self, desk: Desk, growth: Growth, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("{name} has grown").format(name=growth.culture.name),
            self.tr("Call it grown"),
            name="grown",
            parent=parent,
        )
        self._batch_id = growth.batch.id
        self.add_words(
            self.tr(
                "It then rests in the liquid it grew in, which is its first starter. Call it "
                "grown when the film is one solid piece, without mold."
            )
        )
        self.pellicle = QuantityEdit(MillimetreReader(desk.quantities), Kind.LENGTH, lines=1)
        self.add_row("pellicle_mm", self.tr("Thickness of the pellicle"), self.pellicle)
        self._hint = QVBoxLayout()
        self.body.addLayout(self._hint)
        self.pellicle.value_changed.connect(self._on_value)
        if growth.thickness_mm is not None:
            self.pellicle.set_value(growth.thickness_mm / MM_PER_CM)

    def _on_value(self, thickness_cm: float | None) -> None:
        while (item := self._hint.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        if thickness_cm is None:
            return
        verdict = self._desk.growing.thickness_verdict(thickness_cm * MM_PER_CM)
        self._hint.addWidget(VerdictCard(verdict, self, show=self._desk.quantities.show))
        self.fit()

    def act(self) -> object:
        """Call it grown."""
        return self._desk.growing.finish(self._batch_id, (self.pellicle.value() or 0.0) * MM_PER_CM)
