"""Which vessels are in a trial, and, where the maker deals them out, which level each gets."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QGridLayout, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Kind, Vessel
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.plandefaults import free_vessels
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.wheelpass import pass_wheel_on


class VesselPicks(QWidget):
    """A tick for each free vessel; beside it a choice of level while lots are not drawn."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.vessels: tuple[Vessel, ...] = free_vessels(desk)
        self.ticks: list[QCheckBox] = []
        self.levels: list[QComboBox] = []
        self._is_by_hand = False
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        if not self.vessels:
            empty = self.tr(
                "No vessel is free. You can plan the trial without, and take batches in later."
            )
            column.addWidget(plain_label(empty, "muted", wraps=True))
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(0)
        grid.setColumnStretch(1, 1)
        for n, vessel in enumerate(self.vessels):
            tick = QCheckBox(vessel.name.replace("&", "&&"), self)
            tick.setObjectName(f"trial_vessel_{n}")
            tick.toggled.connect(self._on_ticked)
            size = self.tr("{volume}, {width} wide").format(
                volume=desk.quantities.show(vessel.working_volume_l, Kind.VOLUME),
                width=desk.quantities.show(vessel.inner_diameter_cm, Kind.LENGTH),
            )
            level = QComboBox(self)
            level.setObjectName(f"trial_vessel_level_{n}")
            level.setAccessibleName(self.tr("Level of {vessel}").format(vessel=vessel.name))
            level.currentIndexChanged.connect(self.changed)
            pass_wheel_on(level)
            grid.addWidget(tick, n, 0)
            grid.addWidget(plain_label(size, "muted"), n, 1)
            grid.addWidget(level, n, 2)
            self.ticks.append(tick)
            self.levels.append(level)
        column.addLayout(grid)
        self._show()

    def chosen(self) -> tuple[Vessel, ...]:
        """Return the ticked vessels."""
        return tuple(
            v for v, tick in zip(self.vessels, self.ticks, strict=True) if tick.isChecked()
        )

    def by_hand(self) -> tuple[int, ...] | None:
        """Return the level of each ticked vessel, counted from 0; None while lots are drawn."""
        if not self._is_by_hand:
            return None
        return tuple(
            level.currentIndex()
            for level, tick in zip(self.levels, self.ticks, strict=True)
            if tick.isChecked()
        )

    def set_levels(self, names: tuple[str, ...]) -> None:
        """Offer these levels."""
        for n, level in enumerate(self.levels):
            kept = level.currentIndex()
            level.blockSignals(True)
            level.clear()
            level.addItems([name or "–" for name in names])
            level.setCurrentIndex(kept if 0 <= kept < len(names) else n % len(names))
            level.blockSignals(False)

    def set_by_hand(self, is_by_hand: bool) -> None:
        """Let the maker deal the vessels out, or not."""
        self._is_by_hand = is_by_hand
        self._show()
        self.changed.emit()

    def _on_ticked(self) -> None:
        self._show()
        self.changed.emit()

    def _show(self) -> None:
        for level, tick in zip(self.levels, self.ticks, strict=True):
            level.setVisible(self._is_by_hand)
            level.setEnabled(tick.isChecked())
