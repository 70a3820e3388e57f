"""Add or change a vessel: a name and a volume are enough, the rest is guessed and shown."""

from __future__ import annotations

import math
from itertools import pairwise

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.formmark import FormMark
from brewdesk.services.records import (
    ImpossibleInput,
    Kind,
    Material,
    StoreTrouble,
    Verdict,
    Vessel,
    VesselDraft,
    VesselShape,
)
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import FieldRow, announce, choose, plain_label
from brewdesk.widgets.jarlook import WALLS
from brewdesk.widgets.jarpainter import JarLook
from brewdesk.widgets.jarpreview import JarPreview, filled_height_cm
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.shapechoice import ShapeChoice
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard

# Proportions of a common glass fermenting jar; an assumption, shown and open to change.
TYPICAL_HEIGHT_OVER_DIAMETER = 1.4
WORKING_SHARE = 0.9  # room for a pellicle and for carrying without spilling
NAME_MAX = 60
_VERDICT_LINES = 7


def guessed_diameter_cm(brim_volume_l: float) -> float:
    """Inner diameter of a straight jar of common proportions that holds this much."""
    volume_cm3 = brim_volume_l * 1000.0
    return math.cbrt(4.0 * volume_cm3 / (math.pi * TYPICAL_HEIGHT_OVER_DIAMETER))


class VesselDialog(QDialog):
    """The form for one vessel, with the vessel drawn beside it.

    Opened with ``open()``. ``saved`` carries the vessel's id after it was kept.
    """

    saved = Signal(int)

    def __init__(
        self, desk: Desk, vessel: Vessel | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._vessel = vessel
        self._mark = FormMark(desk.door)
        self._is_filling = False
        self.setModal(True)
        self.setWindowTitle(self.tr("Add a vessel") if vessel is None else self.tr("Edit vessel"))
        self._make_fields()
        self._lay_out()
        self._order_tabs()
        self._connect()
        if vessel is not None:
            self._fill(vessel)
        self._show_verdict()
        self._preview()

    # making

    def _make_fields(self) -> None:
        quantities = self._desk.quantities
        self.name = QLineEdit(self)
        self.name.setObjectName("vessel_name")
        self.name.setMaxLength(NAME_MAX)
        self.name.setPlaceholderText(self.tr("Tall jar"))
        outline = self._desk.vessels.profile
        self.shape = ShapeChoice({shape: outline(shape, 16.0, 4.5) for shape in VesselShape}, self)
        self.brim = QuantityEdit(quantities, Kind.VOLUME, self)
        self.brim.line.setObjectName("vessel_brim")
        self.working = QuantityEdit(quantities, Kind.VOLUME, self)
        self.working.line.setObjectName("vessel_working")
        self.diameter = QuantityEdit(quantities, Kind.LENGTH, self)
        self.diameter.line.setObjectName("vessel_diameter")
        self.material = QComboBox(self)
        self.material.setObjectName("vessel_material")
        for material in Material:
            self.material.addItem(name_of(material), material)
        # Long names in the list must not widen the form.
        self.material.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.material.setMinimumContentsLength(16)
        self.place = QComboBox(self)
        self.place.setObjectName("vessel_place")
        for place in self._desk.vessels.places():
            self.place.addItem(place.name, place.id)
        self.preview = JarPreview(self)
        self.measures = plain_label(role="muted", parent=self, wraps=True)
        self.measures.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)

    def _lay_out(self) -> None:
        self.rows = {
            "name": FieldRow(self.tr("&Name"), self.name, self, lines=1),
            "shape": FieldRow(self.tr("Shape"), self.shape, self, lines=0),
            "brim_volume_l": FieldRow(self.tr("Holds up to the &brim"), self.brim, self),
            "working_volume_l": FieldRow(self.tr("You &fill it to"), self.working, self),
            "inner_diameter_cm": FieldRow(self.tr("&Inner diameter"), self.diameter, self),
            "material": FieldRow(self.tr("&Material"), self.material, self, lines=0),
            "place_id": FieldRow(self.tr("Where it &stands"), self.place, self, lines=0),
        }
        self.rows["place_id"].setVisible(self.place.count() > 1)
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE)
        grid.addWidget(self.rows["name"], 0, 0, 1, 2)
        grid.addWidget(self.rows["brim_volume_l"], 1, 0)
        grid.addWidget(self.rows["working_volume_l"], 1, 1)
        grid.addWidget(self.rows["shape"], 2, 0, 1, 2)
        grid.addWidget(self.rows["inner_diameter_cm"], 3, 0)
        grid.addWidget(self.rows["place_id"], 3, 1)
        grid.addWidget(self.rows["material"], 4, 0, 1, 2)
        grid.setRowStretch(5, 1)
        for column in (0, 1):
            grid.setColumnStretch(column, 1)

        side = QVBoxLayout()
        side.setSpacing(SPACE)
        side.addWidget(self.preview, 1)
        side.addWidget(self.measures)
        side.addWidget(self._make_verdict_room())
        columns = QHBoxLayout()
        columns.setSpacing(3 * SPACE)
        columns.addLayout(grid, 4)
        columns.addLayout(side, 3)

        self.trouble = plain_label(role="error", parent=self, wraps=True)
        self.trouble.setVisible(False)
        title = plain_label(self.windowTitle(), "title", self)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        outer.setSpacing(2 * SPACE)
        outer.addWidget(title)
        outer.addLayout(columns, 1)
        outer.addWidget(self.trouble)
        outer.addWidget(self._make_buttons())
        self.resize(112 * SPACE, 80 * SPACE)

    def _make_verdict_room(self) -> QWidget:
        """Keep the height of a long verdict, so that nothing moves when it changes."""
        room = QWidget(self)
        room.setMinimumHeight(_VERDICT_LINES * self.fontMetrics().lineSpacing() + 4 * SPACE)
        self._verdict_column = QVBoxLayout()
        self._verdict_column.setSpacing(SPACE)
        holder = QVBoxLayout(room)
        holder.setContentsMargins(0, 0, 0, 0)
        holder.addLayout(self._verdict_column)
        holder.addStretch(1)
        return room

    def _make_buttons(self) -> QDialogButtonBox:
        self.buttons = QDialogButtonBox(self)
        self.save = QPushButton(self.tr("Save vessel"), self)
        self.save.setObjectName("vessel_save")
        self.save.setDefault(True)
        set_role(self.save, "primary")
        cancel = QPushButton(self.tr("Cancel"), self)
        cancel.setAutoDefault(False)
        self.buttons.addButton(self.save, QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.addButton(cancel, QDialogButtonBox.ButtonRole.RejectRole)
        return self.buttons

    def _order_tabs(self) -> None:
        """Let Tab walk as the eye does."""
        walk: list[QWidget] = [
            self.name,
            self.brim,
            self.working,
            *self.shape.buttons.values(),
            self.diameter,
            self.place,
            self.material,
            self.save,
        ]
        for before, after in pairwise(walk):
            QWidget.setTabOrder(before, after)

    def _connect(self) -> None:
        self.buttons.accepted.connect(self._on_save)
        self.buttons.rejected.connect(self.reject)
        self.name.textChanged.connect(self._on_name)
        self.brim.value_changed.connect(self._on_brim)
        self.working.value_changed.connect(self._on_figures)
        self.diameter.value_changed.connect(self._on_figures)
        self.shape.chosen.connect(self._on_figures)
        self.material.currentIndexChanged.connect(self._on_material)

    def _fill(self, vessel: Vessel) -> None:
        self._is_filling = True
        self.name.setText(vessel.name)
        self.shape.set_value(vessel.shape)
        self.brim.set_value(vessel.brim_volume_l)
        self.working.set_value(vessel.working_volume_l)
        self.diameter.set_value(vessel.inner_diameter_cm)
        choose(self.material, vessel.material)
        choose(self.place, vessel.place_id)
        self._is_filling = False

    def showEvent(self, event: QShowEvent) -> None:
        """Start in the name."""
        super().showEvent(event)
        self.name.setFocus(Qt.FocusReason.OtherFocusReason)

    # what happens

    def _on_name(self, _text: str) -> None:
        self.rows["name"].set_problem("")

    def _on_brim(self, brim_volume_l: float | None) -> None:
        if self._is_filling:
            return
        if brim_volume_l is not None and brim_volume_l > 0.0:
            if self._is_guess(self.working):
                self.working.set_value(brim_volume_l * WORKING_SHARE)
            if self._is_guess(self.diameter):
                self.diameter.set_value(guessed_diameter_cm(brim_volume_l))
        self._on_figures()

    def _is_guess(self, edit: QuantityEdit) -> bool:
        return self._vessel is None and not edit.is_touched()

    def _on_figures(self, _value: object = None) -> None:
        if self._is_filling:
            return
        for field in ("brim_volume_l", "working_volume_l", "inner_diameter_cm"):
            self.rows[field].set_problem("")
        self._preview()
        self._show_verdict()

    def _on_material(self, _index: int) -> None:
        self._preview()
        self._show_verdict()

    def _draft(self) -> VesselDraft | None:
        """What the form says, or None while a figure is missing."""
        brim, working, diameter = (
            edit.value() for edit in (self.brim, self.working, self.diameter)
        )
        if brim is None or working is None or diameter is None:
            return None
        old = self._vessel
        return VesselDraft(
            name=self.name.text().strip(),
            shape=self.shape.value(),
            material=self._material(),
            brim_volume_l=brim,
            working_volume_l=working,
            inner_diameter_cm=diameter,
            place_id=self.place.currentData() or 0,
            shelf_order=old.shelf_order if old else 0,
            note=old.note if old else "",
            retired_at=old.retired_at if old else None,
        )

    def _material(self) -> Material:
        return Material(self.material.currentData())

    def _preview(self) -> None:
        """Draw the vessel as the figures say, or leave the board empty."""
        brim, diameter, working = self.brim.value(), self.diameter.value(), self.working.value()
        if brim is None or diameter is None:
            self._preview_nothing(self.tr("Give a volume, and the vessel is drawn here."))
            return
        try:
            profile = self._desk.vessels.profile(self.shape.value(), diameter, brim)
        except ImpossibleInput:
            self._preview_nothing(self.tr("These figures fit no vessel of this shape."))
            return
        level_cm = filled_height_cm(profile, min(working, brim)) if working else 0.0
        look = JarLook(
            profile=profile,
            planned_height_cm=level_cm,
            wall=WALLS.get(self._material(), ""),
        )
        show = self._desk.quantities.show
        words = self.tr("{height} high inside, {width} at the widest.").format(
            height=show(profile[-1][0], Kind.LENGTH),
            width=show(2.0 * max(radius for _, radius in profile), Kind.LENGTH),
        )
        if self._is_guess(self.diameter):
            words += " " + self.tr("The diameter is a guess: measure it when you can.")
        self.preview.show_look(look, words)
        self.measures.setText(words)

    def _preview_nothing(self, words: str) -> None:
        self.preview.show_look(None, words)
        self.measures.setText(words)

    def _show_verdict(self) -> None:
        while (item := self._verdict_column.takeAt(0)) is not None:
            taken = item.widget()
            if taken is not None:
                taken.hide()
                taken.deleteLater()
        self.cards = [
            VerdictCard(verdict, self, show=self._desk.quantities.show)
            for verdict in self._verdicts()
        ]
        for made in self.cards:
            self._verdict_column.addWidget(made)

    def _verdicts(self) -> tuple[Verdict, ...]:
        vessels = self._desk.vessels
        draft = self._draft()
        if draft is not None:
            try:
                return tuple(vessels.check(draft))
            except ImpossibleInput:
                pass  # said beside its field when the maker saves; the material still counts
        return (vessels.material_verdict(self._material()),)

    # keeping

    def _on_save(self) -> None:
        self.trouble.setVisible(False)
        edits = [self.brim, self.working, self.diameter]
        if not self.name.text().strip():
            self.rows["name"].set_problem(self.tr("Give the vessel a name you will know it by."))
        if not self.brim.is_valid() and self._is_guess(self.diameter):
            edits.remove(self.diameter)  # the diameter follows from the volume
        unread = [edit for edit in edits if not edit.point_out()]
        draft = self._draft()
        if not self.name.text().strip():
            self.name.setFocus()
            return
        if draft is None or unread:
            unread[0].line.setFocus()
            return
        try:
            self._desk.vessels.check(draft)  # before a first place is made for it
        except ImpossibleInput as problem:
            self._say(problem)
            return
        try:
            vessel = self._keep(draft)
        except ImpossibleInput as problem:
            self._say(problem)
            return
        except StoreTrouble as trouble:
            self._say_at_the_foot(trouble_words(trouble))
            return
        self.saved.emit(vessel.id)
        self.accept()

    def _keep(self, draft: VesselDraft) -> Vessel:
        vessels = self._desk.vessels
        place_id = draft.place_id or vessels.ensure_place().id
        fields = {
            field: getattr(draft, field)
            for field in (
                "name",
                "shape",
                "material",
                "brim_volume_l",
                "working_volume_l",
                "inner_diameter_cm",
            )
        }
        if self._vessel is not None:
            with self._mark.keeping():
                return vessels.edit(self._vessel.id, **fields, place_id=place_id)
        return vessels.add(VesselDraft(**fields, place_id=place_id))

    def _say(self, problem: ImpossibleInput) -> None:
        words = impossible_words(problem, self._desk.quantities.show)
        row = self.rows.get(problem.field)
        if row is None:
            self._say_at_the_foot(words)
            return
        row.set_problem(words)
        row.focus_widget.setFocus()

    def _say_at_the_foot(self, words: str) -> None:
        self.trouble.setText(words)
        self.trouble.setVisible(True)
        announce(self, words)
