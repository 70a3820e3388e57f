"""What can keep a logger's file, or a row of it, from being read."""

from __future__ import annotations

from dataclasses import dataclass

TROUBLE_CODES = frozenset(
    {
        "unreadable", "empty_file", "no_table", "order_unknown", "too_many", "cancelled",
        "nothing_read",
    }
)  # fmt: skip
ROW_CODES = frozenset(
    {
        "empty_row", "too_few_columns", "time_unreadable", "time_impossible", "date_impossible",
        "time_ahead", "temperature_missing", "temperature_unreadable", "temperature_not_finite",
        "temperature_absurd",
    }
)  # fmt: skip


class LoggerTrouble(Exception):  # noqa: N818  # named as the store's own
    """Why a whole file cannot be read; ``code`` is one of `TROUBLE_CODES`."""

    def __init__(self, code: str, detail: str = "") -> None:
        self.code = code
        self.detail = detail
        super().__init__(f"{code}: {detail}" if detail else code)


@dataclass(frozen=True, slots=True)
class RowError:
    """One row that was left out: its line in the file, why, and how it begins."""

    line: int
    code: str
    text: str
