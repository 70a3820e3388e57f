"""The readings of one batch as a table, newest first."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLocale, QObject, Qt

from brewdesk.models.plaintip import plain_tip
from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.clock import Clock
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind, Quantity, Reading, TasteMark
from brewdesk.services.wording.acts import reading_text
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.palate import read_as_words
from brewdesk.services.wording.stages import name_of

WHEN, WHAT, VALUE, METHOD = range(4)

# Kind of each number, and the factor from the reading's unit to the kind's own.
_KINDS = {
    Quantity.PH: (Kind.PH, 1.0),
    Quantity.TEMPERATURE_C: (Kind.TEMPERATURE, 1.0),
    Quantity.BRIX: (Kind.BRIX, 1.0),
    Quantity.SPECIFIC_GRAVITY: (Kind.GRAVITY, 1.0),
    Quantity.TA_G_PER_L: (Kind.ACIDITY, 1.0),
    Quantity.PELLICLE_MM: (Kind.LENGTH, 0.1),  # mm to cm
}


def _t(text: str) -> str:
    return QCoreApplication.translate("ReadingsModel", text)


def reading_words(reading: Reading, quantities: Quantities) -> str:
    """Say one reading in a few words: "pH 3.42"."""
    fact = {"quantity": reading.quantity.value, "value": reading.value, "text": reading.text}
    return reading_text(fact, quantities.show)


def value_words(reading: Reading, quantities: Quantities) -> str:
    """Write a reading's value with its standard uncertainty, or its words."""
    if reading.quantity is Quantity.TASTE:
        return name_of(TasteMark(reading.text))
    if reading.value is None:
        return reading.text
    kind, factor = _KINDS[reading.quantity]
    if kind is Kind.LENGTH:  # thickness is measured in millimetres whatever lengths are shown in
        return _with_spread(
            number_text(reading.value, 1),
            number_text(reading.sd, 1) if reading.sd else "",
            "mm",
        )
    number = quantities.show(reading.value * factor, kind, with_unit=False)
    spread = _spread(reading, quantities, kind, number)
    return _with_spread(number, spread, quantities.unit(kind))


def _with_spread(number: str, spread: str, unit: str) -> str:
    unit_part = f" {unit}" if unit else ""
    return f"{number} ± {spread}{unit_part}" if spread else f"{number}{unit_part}"


def _spread(reading: Reading, quantities: Quantities, kind: Kind, number: str) -> str:
    """Write the uncertainty in the unit shown, to the digits of ``number``."""
    if reading.value is None or not reading.sd:
        return ""
    locale = QLocale()
    ends = [
        locale.toDouble(quantities.show(end, kind, with_unit=False))
        for end in (reading.value - reading.sd, reading.value + reading.sd)
    ]
    (low, low_ok), (high, high_ok) = ends
    if not (low_ok and high_ok) or high <= low:
        return ""
    point = locale.decimalPoint()
    decimals = len(number.partition(point)[2])
    return number_text((high - low) / 2, decimals)


class ReadingsModel(RowTableModel[Reading]):
    """When, what, how much and how it was taken."""

    def __init__(self, quantities: Quantities, clock: Clock, parent: QObject | None = None) -> None:
        columns = (_t("When"), _t("What"), _t("Value"), _t("Taken with"))
        super().__init__(columns, lambda row: row.id, parent)
        self._quantities = quantities
        self._clock = clock

    def cell(self, row: Reading, column: int) -> str:
        """Return the text of one cell."""
        if column == WHEN:
            return stamp_words(row.at, self._clock.zone())
        if column == WHAT:
            return name_of(row.quantity)
        if column == VALUE:
            return self._with_what_was_read(row, value_words(row, self._quantities))
        has_method = row.quantity not in (Quantity.NOTE, Quantity.TASTE)
        return name_of(row.method) if has_method else ""

    def _with_what_was_read(self, row: Reading, words: str) -> str:
        """Add what a note was read as; beside a mark of the same moment the mark counts."""
        if row.quantity is not Quantity.NOTE:
            return words
        if any(other.quantity is Quantity.TASTE and other.at == row.at for other in self._rows):
            return words
        read_as = read_as_words(row.text)
        return _t("{words} ({read_as})").format(words=words, read_as=read_as) if read_as else words

    def cell_sort(self, row: Reading, column: int) -> object:
        """Sort times and numbers by their size."""
        if column == WHEN:
            return row.at.timestamp()
        if column == VALUE:
            return row.value if row.value is not None else float("-inf")
        return self.cell(row, column)

    def cell_extra(self, row: Reading, column: int, role: int) -> object:
        """Give the whole reading as one sentence, for screen readers and long notes."""
        if role == Qt.ItemDataRole.ToolTipRole and column == VALUE:
            return plain_tip(row.text) if len(row.text) > 30 else None
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self.cell(row, column)
        return None
