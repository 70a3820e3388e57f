"""The costs of a year's batches, one batch a row."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, Qt

from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.batchcosts import BatchCost, begun_at
from brewdesk.services.clock import Clock
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.stores import (
    cost_words,
    kind_words,
    missing_words,
    saving_words,
)

_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_DASH = "\u2013"


def _t(text: str) -> str:
    return QCoreApplication.translate("CostsModel", text)


class CostsModel(RowTableModel[BatchCost]):
    """What each batch cost; the bar of its parts is painted by a delegate."""

    NAME, BEGUN, PARTS, TOTAL, DRUNK, LITRE, BOTTLE, SAVED = range(8)
    figure_columns = frozenset(range(TOTAL, SAVED + 1))

    def __init__(self, clock: Clock, quantities: Quantities, parent: QObject | None = None) -> None:
        columns = (
            _t("Batch"),
            _t("Begun"),
            _t("What it is made of"),
            _t("Cost"),
            _t("Drunk"),
            _t("A litre"),
            _t("A bottle"),
            _t("Against the shop"),
        )
        super().__init__(columns, lambda row: row.batch.id, parent)
        self._clock = clock
        self._quantities = quantities

    def cell(self, row: BatchCost, column: int) -> str:
        """Return the text of one cell."""
        return {
            self.NAME: lambda: " ".join(row.batch.name.split()),
            self.BEGUN: lambda: date_words(begun_at(row.batch), self._clock.zone()),
            self.PARTS: lambda: self.parts(row),
            self.TOTAL: lambda: cost_words(row.total),
            self.DRUNK: lambda: (
                self._quantities.show(row.drink_l, Kind.VOLUME)
                if row.drink_l
                else _t("not yet")
                if row.batch.stage.is_live
                else _DASH
            ),
            self.LITRE: lambda: _DASH if row.per_litre is None else cost_words(row.per_litre),
            self.BOTTLE: lambda: _DASH if row.per_bottle is None else cost_words(row.per_bottle),
            self.SAVED: lambda: saving_words(row.saving) or _DASH,
        }[column]()

    def parts(self, row: BatchCost) -> str:
        """Return the parts of a cost in words, for whoever does not see the bar."""
        said = [f"{kind_words(kind)} {cost_words(cost)}" for kind, cost in row.parts]
        return ", ".join(said)

    def cell_extra(self, row: BatchCost, column: int, role: int) -> object:
        """Set figures to the right; say in a tip what has no price."""
        if role == Qt.ItemDataRole.TextAlignmentRole and column in self.figure_columns:
            return _RIGHT
        if role == Qt.ItemDataRole.ToolTipRole and column == self.TOTAL:
            return missing_words(row.missing) or None
        return None
