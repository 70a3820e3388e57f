"""What an act was about: the places, vessels, cultures and batches its row changes name."""

from __future__ import annotations

from collections.abc import Iterable

from brewdesk.store.records import RowDelta
from brewdesk.store.schema import SHELF_TABLES, SUBJECTS

Subject = tuple[str, int]


def _links() -> dict[str, tuple[tuple[str, str], ...]]:
    """Give, for each table, the columns that point at a subject, with the subject's table."""
    return {
        table.name: tuple(
            (column.name, key.column.table.name)
            for column in table.columns
            for key in column.foreign_keys
            if key.column.table.name in SUBJECTS
        )
        for table in SHELF_TABLES
    }


_LINKS = _links()


def subjects_of(deltas: Iterable[RowDelta]) -> frozenset[Subject]:
    """Give every (table, id) that row changes are about, before or after."""
    found: set[Subject] = set()
    for delta in deltas:
        if delta.table in SUBJECTS:
            found.add((delta.table, delta.row_id))
        for row in (delta.before, delta.after):
            if row is None:
                continue
            for name, table in _LINKS[delta.table]:
                value = row[name]
                if isinstance(value, int):
                    found.add((table, value))
    return frozenset(found)
