"""The supplies of the stores, their purchases, and what left them, as rows."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, Qt

from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.clock import Clock
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import SupplyDraw, SupplyMeasure
from brewdesk.services.stockviews import LotView, StockView
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.stores import (
    amount_words,
    kind_words,
    left_words,
    price_words,
    reason_words,
    stock_notes,
    unit_price_words,
)

_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_MINUS = "\u2212"


def _t(text: str) -> str:
    return QCoreApplication.translate("SuppliesModel", text)


class SuppliesModel(RowTableModel[StockView]):
    """One supply a row; the delegate paints its name, what is left, and what to mind."""

    def __init__(self, clock: Clock, quantities: Quantities, parent: QObject | None = None) -> None:
        super().__init__((_t("Supply"),), lambda row: row.supply.id, parent)
        self._clock = clock
        self._quantities = quantities

    def cell(self, row: StockView, column: int) -> str:
        """Return a supply in one line, as a screen reader says it."""
        del column
        parts = [row.supply.name, self.left(row), self.detail(row), *self.notes(row)]
        return ", ".join(part for part in parts if part)

    def cell_extra(self, row: StockView, column: int, role: int) -> object:
        """Say the same to screen readers."""
        return self.cell(row, column) if role == Qt.ItemDataRole.AccessibleTextRole else None

    def left(self, row: StockView) -> str:
        """Return how much is left."""
        return left_words(row, self._quantities.show)

    def detail(self, row: StockView) -> str:
        """Return the kind of supply and its last price, on one line."""
        kind = kind_words(row.supply.kind)
        if row.supply.retired_at is not None:
            kind = _t("{kind}, no longer in use").format(kind=kind)
        if row.last_price is None:
            return kind
        return f"{kind} · {unit_price_words(row.last_price, row.supply.measure)}"

    def notes(self, row: StockView) -> list[str]:
        """Return what is to be minded, the weightiest first."""
        clock = self._clock
        return stock_notes(row, clock.now(), clock.zone(), self._quantities.show)


class LotsModel(RowTableModel[LotView]):
    """The purchases of one supply."""

    BOUGHT, AMOUNT, LEFT, PRICE, FROM = range(5)
    figure_columns = frozenset((AMOUNT, LEFT, PRICE))

    def __init__(self, clock: Clock, quantities: Quantities, parent: QObject | None = None) -> None:
        columns = (_t("Bought"), _t("Amount"), _t("Left"), _t("Price"), _t("From"))
        super().__init__(columns, lambda row: row.lot.id, parent)
        self._clock = clock
        self._quantities = quantities
        self.measure = SupplyMeasure.MASS_G

    def cell(self, row: LotView, column: int) -> str:
        """Return the text of one cell."""
        lot, zone = row.lot, self._clock.zone()
        if column == self.BOUGHT:
            return date_words(lot.bought_at, zone)
        if column == self.AMOUNT:
            return amount_words(lot.amount, self.measure, self._quantities.show)
        if column == self.LEFT:
            return amount_words(row.left, self.measure, self._quantities.show)
        if column == self.PRICE:
            return price_words(lot)
        parts = [lot.seller, lot.lot_code, lot.note]
        if lot.best_before is not None:
            day = date_words(lot.best_before, zone)
            template = _t("past its date, {day}") if row.is_past_best else _t("best before {day}")
            parts.insert(0, template.format(day=day))
        return " · ".join(" ".join(part.split()) for part in parts if part)

    def cell_extra(self, row: LotView, column: int, role: int) -> object:
        """Set figures to the right."""
        del row
        is_figure = column in self.figure_columns
        return _RIGHT if is_figure and role == Qt.ItemDataRole.TextAlignmentRole else None


class DrawsModel(RowTableModel[SupplyDraw]):
    """What left one supply, and what came back."""

    AT, AMOUNT, WHY, WHERE = range(4)
    figure_columns = frozenset((AMOUNT,))

    def __init__(self, clock: Clock, quantities: Quantities, parent: QObject | None = None) -> None:
        columns = (_t("When"), _t("Amount"), _t("Why"), _t("For"))
        super().__init__(columns, lambda row: row.id, parent)
        self._clock = clock
        self._quantities = quantities
        self.measure = SupplyMeasure.MASS_G
        self.names: dict[int, str] = {}  # of batches

    def cell(self, row: SupplyDraw, column: int) -> str:
        """Return the text of one cell."""
        if column == self.AT:
            return date_words(row.at, self._clock.zone())
        if column == self.AMOUNT:
            sign = _MINUS if row.amount > 0 else "+"
            amount = amount_words(abs(row.amount), self.measure, self._quantities.show)
            return f"{sign}{amount}"
        if column == self.WHY:
            return reason_words(row.reason)
        name = self.names.get(row.batch_id or 0, "")
        parts = [name, row.text]
        if row.lot_id is None:
            parts.append(_t("not on the books"))
        return " · ".join(" ".join(part.split()) for part in parts if part)

    def cell_extra(self, row: SupplyDraw, column: int, role: int) -> object:
        """Set figures to the right."""
        del row
        is_figure = column in self.figure_columns
        return _RIGHT if is_figure and role == Qt.ItemDataRole.TextAlignmentRole else None
