"""What was put into a jar, or what an empty vessel is: plain facts in two columns."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Batch, Kind, Vessel
from brewdesk.services.shelf import JarView
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class PlanFacts(QWidget):
    """Rows of label and value for one jar."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(SPACE // 2, 2 * SPACE, SPACE // 2, SPACE)
        self._grid.setHorizontalSpacing(3 * SPACE)
        self._grid.setVerticalSpacing(SPACE)
        self._grid.setColumnStretch(1, 1)
        self._shown: tuple[tuple[str, str], ...] = ()

    def set_jar(self, jar: JarView) -> None:
        """Show the recipe of the jar's batch, then the vessel."""
        self.set_batch(jar.batch, jar.vessel)

    def set_batch(self, batch: Batch | None, vessel: Vessel) -> None:
        """Show the recipe of a batch, if there is one, then the vessel."""
        rows = tuple(self._batch_rows(batch) if batch is not None else ()) + tuple(
            self._vessel_rows(vessel)
        )
        if rows != self._shown:
            self._shown = rows
            self._rebuild(rows)

    def _rebuild(self, rows: tuple[tuple[str, str], ...]) -> None:
        while (item := self._grid.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        for index, (name, value) in enumerate(rows):
            left, right = QLabel(name), QLabel(value)
            for label in (left, right):
                label.setTextFormat(Qt.TextFormat.PlainText)
            set_role(left, "muted")
            right.setWordWrap(True)
            right.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            right.setAccessibleName(f"{name}: {value}")
            self._grid.addWidget(left, index, 0, Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(right, index, 1)
        self._grid.setRowStretch(len(rows), 1)

    def _batch_rows(self, batch: Batch) -> list[tuple[str, str]]:
        show = self._desk.quantities.show
        rows = [
            (self.tr("Fill"), show(batch.fill_volume_l, Kind.VOLUME)),
            (
                self.tr("Tea"),
                self.tr("{mass} of {kind} (about {bags} bags of {bag})").format(
                    mass=show(batch.tea_g, Kind.MASS),
                    kind=name_of(batch.tea_kind),
                    bags=max(1, round(batch.tea_g / batch.bag_g)),
                    bag=show(batch.bag_g, Kind.MASS),
                ),
            ),
            (
                self.tr("Sugar"),
                self.tr("{mass} ({strength} of sweet tea)").format(
                    mass=show(batch.sugar_g, Kind.MASS),
                    strength=show(batch.sugar_g_per_l, Kind.SUGAR),
                ),
            ),
            (self.tr("Hot water"), show(batch.hot_water_g, Kind.MASS)),
            (self.tr("Cold water"), show(batch.cold_water_g, Kind.MASS)),
            (self.tr("Starter"), show(batch.starter_volume_l, Kind.VOLUME)),
            (
                self.tr("Start pH"),
                self.tr("about {ph}, likely {low} to {high}").format(
                    ph=number_text(batch.start_ph, 2),
                    low=number_text(batch.start_ph_low, 2),
                    high=number_text(batch.start_ph_high, 2),
                ),
            ),
            (self.tr("Where it stands"), show(batch.place_temperature_c, Kind.TEMPERATURE)),
        ]
        if batch.end_reason:
            rows.append((self.tr("Note at the end"), batch.end_reason))
        return rows

    def _vessel_rows(self, vessel: Vessel) -> list[tuple[str, str]]:
        show = self._desk.quantities.show
        rows = [
            (
                self.tr("Vessel"),
                self.tr("{shape}, {material}").format(
                    shape=name_of(vessel.shape), material=name_of(vessel.material)
                ),
            ),
            (self.tr("To the brim"), show(vessel.brim_volume_l, Kind.VOLUME)),
            (self.tr("Filled in use"), show(vessel.working_volume_l, Kind.VOLUME)),
            (self.tr("Inner diameter"), show(vessel.inner_diameter_cm, Kind.LENGTH)),
        ]
        if vessel.note:
            rows.append((self.tr("Note"), vessel.note))
        return rows
