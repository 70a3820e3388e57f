"""Imagine a batch otherwise: a warmer place, more starter, a wider jar. Nothing is kept."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QLabel,
    QPushButton,
    QSlider,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.records import Kind
from brewdesk.services.whatif import MOST_WARMER_C, AsItIs, WhatIf, imagined_share
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.wheelpass import pass_wheel_on

# In tenths of what is so.
_LEAST_STARTER, _MOST_STARTER = 5, 20
_LEAST_WIDTH, _MOST_WIDTH = 7, 16
_SAME = 10

ShowAmount = Callable[[float, Kind], str]


class WhatIfPanel(QWidget):
    """Three sliders, and in words what they would do.

    ``open_button`` shows and hides the panel, ``reset_button`` puts everything back; whoever
    holds the panel finds them a place.
    ``changed`` carries the `WhatIf` asked for; one that is as it is takes the picture away.
    """

    changed = Signal(object)
    toggled = Signal(bool)

    def __init__(self, show_amount: ShowAmount, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("what_if")
        self._show_amount = show_amount
        self._real: AsItIs | None = None
        self.open_button = QToolButton()
        self.open_button.setObjectName("what_if_open")
        self.open_button.setText(self.tr("What if…"))
        self.open_button.setAccessibleName(self.tr("What if…"))
        self.open_button.setToolTip(self.tr("See how it would go otherwise"))
        self.open_button.setCheckable(True)
        self.open_button.hide()  # until there is something to imagine from
        self.open_button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        set_role(self.open_button, "quiet")
        self.warmer = self._slider("what_if_warmer", -MOST_WARMER_C, MOST_WARMER_C, 0)
        self.starter = self._slider("what_if_starter", _LEAST_STARTER, _MOST_STARTER, _SAME)
        self.width_slider = self._slider("what_if_width", _LEAST_WIDTH, _MOST_WIDTH, _SAME)
        self.reset_button = QPushButton(self.tr("As it is"))
        self.reset_button.setObjectName("what_if_reset")
        set_role(self.reset_button, "quiet")
        self.words = plain_label("", "", wraps=True)
        self.words.setObjectName("what_if_words")
        self.words.setAccessibleName(self.tr("What if, in words"))
        self.words.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self._values: dict[QSlider, QLabel] = {}
        self._lay_out()
        self.reset_button.clicked.connect(self.reset)
        self.open_button.toggled.connect(self._on_toggled)
        self._on_toggled(is_open=False)
        self._tell()

    def change(self) -> WhatIf:
        """Return what is imagined now."""
        return WhatIf(
            warmer_c=float(self.warmer.value()),
            starter_factor=self.starter.value() / _SAME,
            diameter_factor=self.width_slider.value() / _SAME,
        )

    def is_open(self) -> bool:
        """Whether the panel is shown."""
        return self.open_button.isChecked()

    def set_open(self, is_open: bool) -> None:
        """Show or hide the panel."""
        self.open_button.setChecked(is_open)

    def set_real(self, real: AsItIs | None) -> None:
        """Tell what the batch has now; without it there is nothing to imagine from."""
        self._real = real
        self.open_button.setVisible(real is not None)
        if real is None:
            self.set_open(False)
        self._tell()

    def say(self, text: str) -> None:
        """Show what would be, in words; "" for how to find out."""
        set_role(self.words, "" if text else "muted")
        self.words.setText(
            text or self.tr("Move a slider: the dashed line shows how it would go then.")
        )

    def reset(self) -> None:
        """Put everything back as it is."""
        was_otherwise = not self.change().is_as_it_is()
        for slider in self._values:
            slider.blockSignals(True)  # one change, not three
            slider.setValue(0 if slider is self.warmer else _SAME)
            slider.blockSignals(False)
        self._tell()
        if was_otherwise:
            self.changed.emit(self.change())

    def _slider(self, name: str, low: int, high: int, value: int) -> QSlider:
        slider = QSlider(Qt.Orientation.Horizontal)
        slider.setObjectName(name)
        slider.setRange(low, high)
        slider.setValue(value)
        slider.setPageStep(2)
        pass_wheel_on(slider)
        slider.valueChanged.connect(self._on_moved)
        return slider

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE // 2)
        rows = (
            (self.warmer, self.tr("The place, from now on")),
            (self.starter, self.tr("The starter, from the start")),
            (self.width_slider, self.tr("The jar, from the start")),
        )
        for row, (slider, text) in enumerate(rows):
            label = plain_label(text, "muted")
            label.setBuddy(slider)
            slider.setAccessibleName(text)
            value = plain_label("", "")
            self._values[slider] = value
            grid.addWidget(label, row, 0)
            grid.addWidget(slider, row, 1)
            grid.addWidget(value, row, 2)
        grid.setColumnStretch(1, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        column.addLayout(grid)
        column.addWidget(self.words)

    def _on_moved(self) -> None:
        self._tell()
        self.changed.emit(self.change())

    def _on_toggled(self, is_open: bool) -> None:
        arrow = Qt.ArrowType.DownArrow if is_open else Qt.ArrowType.RightArrow
        self.open_button.setArrowType(arrow)
        self.setVisible(is_open)
        self.reset_button.setVisible(is_open)
        if not is_open:  # what cannot be seen must not stay in the picture
            self.reset()
        self.toggled.emit(is_open)

    def _tell(self) -> None:
        """Write the values beside the sliders, in the maker's units."""
        change, real = self.change(), self._real
        self.reset_button.setEnabled(not change.is_as_it_is())
        if change.is_as_it_is():
            self.say("")
        if real is None or not self._values:
            return
        degrees = self._show_amount(real.temperature_c + change.warmer_c, Kind.TEMPERATURE)
        share = 100.0 * imagined_share(real.starter_share, change)
        percent = self.tr("{share} % of the jar").format(
            share=QLocale().toString(share, "f", 0 if share >= 10.0 else 1)
        )
        across = self.tr("{length} across").format(
            length=self._show_amount(real.diameter_cm * change.diameter_factor, Kind.LENGTH)
        )
        for slider, text in (
            (self.warmer, degrees),
            (self.starter, percent),
            (self.width_slider, across),
        ):
            self._values[slider].setText(text)
            slider.setAccessibleDescription(text)
