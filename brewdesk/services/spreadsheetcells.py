"""Cells of a CSV file that a spreadsheet may open: text never turns into a formula.

Spreadsheets take a cell for a formula if it begins with one of a few signs, whatever wrote
it (OWASP, "CSV Injection", https://owasp.org/www-community/attacks/CSV_Injection). Such text
gets an apostrophe in front. Numbers are written as they are, so that they stay numbers.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence

Cell = str | int | float | None

# OWASP's list; the full-width forms are in it because some spreadsheets fold them. Blanks are
# passed over, since some programs trim them before they look.
_SIGNS = tuple("=+-@\t\r\n＝＋－＠")
_BLANKS = " \u00a0\u200b\ufeff"


def safe_cell(value: Cell) -> Cell:
    """Return a cell that no spreadsheet takes for a formula; numbers and None unchanged."""
    if not isinstance(value, str):
        return value
    return f"'{value}" if value.lstrip(_BLANKS).startswith(_SIGNS) else value


def csv_row(cells: Sequence[Cell]) -> str:
    """Return one row as CSV (RFC 4180), with its line break."""
    held = io.StringIO()
    writer = csv.writer(held, lineterminator="\r\n")
    writer.writerow([_text(safe_cell(cell)) for cell in cells])
    return held.getvalue()


def _text(cell: Cell) -> str:
    if cell is None:
        return ""
    return cell if isinstance(cell, str) else repr(cell)
