"""A year's costs as a table for spreadsheets. No text in it turns into a formula."""

from __future__ import annotations

from datetime import tzinfo

from brewdesk.services.batchcosts import BatchCost, YearCost, begun_at
from brewdesk.services.money import plain_money
from brewdesk.services.spreadsheetcells import Cell, csv_row
from brewdesk.services.wording.costtable import cost_columns, yes_or_no
from culturecore.stages import SupplyKind
from culturecore.stockcost import Cost

_LITRE_DIGITS = 3


def cost_table(year: YearCost, zone: tzinfo) -> bytes:
    """Return the batches of a year as CSV (RFC 4180, UTF-8 with its mark).

    A batch takes one line for each currency it was paid in; money has a point as decimal
    sign and stands in the currency that the line names.
    """
    lines = [csv_row(cost_columns())]
    lines += [csv_row(cells) for row in year.batches for cells in _lines(row, zone)]
    # Spreadsheets take UTF-8 without its mark for something older.
    return b"\xef\xbb\xbf" + "".join(lines).encode("utf-8", "replace")


def _lines(row: BatchCost, zone: tzinfo) -> list[list[Cell]]:
    currencies = [code for code, _ in row.total.known] or [""]
    return [_line(row, currency, zone) for currency in currencies]


def _line(row: BatchCost, currency: str, zone: tzinfo) -> list[Cell]:
    parts = dict(row.parts)
    saving = row.saving
    is_saving = saving is not None and saving.currency == currency
    return [
        row.batch.name,
        begun_at(row.batch).astimezone(zone).date().isoformat(),
        currency or None,
        *(_money(parts.get(kind), currency) for kind in SupplyKind),
        _money(row.total, currency),
        yes_or_no(is_so=row.total.is_complete),
        round(row.drink_l, _LITRE_DIGITS),
        _money(row.per_litre, currency),
        row.bottle_count,
        _money(row.per_bottle, currency),
        float(plain_money(saving.minor, currency)) if saving and is_saving else None,
    ]


def _money(cost: Cost | None, currency: str) -> Cell:
    known = {} if cost is None else dict(cost.known)
    return float(plain_money(known[currency], currency)) if currency in known else None
