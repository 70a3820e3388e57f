"""A time line as rows: a heading for each day, below it what happened, newest first."""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QCoreApplication, QModelIndex, QObject, QPersistentModelIndex, Qt

from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.clock import Clock
from brewdesk.services.subjects import SubjectKind
from brewdesk.services.timeline import TimelineLine, TimelineView
from brewdesk.services.wording.moments import local, time_words
from brewdesk.services.wording.timeline import entered_words, heading_words

Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True, slots=True)
class DayHeading:
    """The day that the lines below it share, on the maker's clock."""

    day: date


TimelineRow = DayHeading | TimelineLine


def _t(text: str) -> str:
    return QCoreApplication.translate("TimelineModel", text)


def _row_id(row: TimelineRow) -> Hashable:
    if isinstance(row, DayHeading):
        return ("day", row.day)
    return ("act", row.act_id) if row.act_id is not None else ("rows", row.rows)


class TimelineModel(RowTableModel[TimelineRow]):
    """Days and lines. Days cannot be chosen."""

    def __init__(self, clock: Clock, parent: QObject | None = None) -> None:
        super().__init__((_t("What happened"),), _row_id, parent)
        self._clock = clock
        self._is_of_batch = False

    def set_view(self, view: TimelineView | None) -> None:
        """Show a time line, grouped by the days of the maker's calendar."""
        zone = self._clock.zone()
        self._is_of_batch = view is not None and view.subject.kind is SubjectKind.BATCH
        rows: list[TimelineRow] = []
        day: date | None = None
        for line in view.lines if view is not None else ():
            of_line = local(line.at, zone).date()
            if of_line != day:
                day = of_line
                rows.append(DayHeading(of_line))
            rows.append(line)
        self.set_rows(rows)

    def row_of_act(self, act_id: int) -> QModelIndex:
        """Return where an act's line stands; an invalid index if it is not shown."""
        return self.index_of(("act", act_id))

    def row_of(self, table: str, row_id: int) -> QModelIndex:
        """Return where the line stands that tells of a row of the store."""
        for number, row in enumerate(self.rows()):
            if isinstance(row, TimelineLine) and (table, row_id) in row.rows:
                return self.index(number, 0)
        return QModelIndex()

    def time(self, line: TimelineLine) -> str:
        """Return the time of day of a line."""
        return time_words(line.at, self._clock.zone())

    def aside(self, line: TimelineLine) -> str:
        """Return what else a line says: what it leads to, and when it was written down."""
        parts = [] if self._is_plain(line) else [line.about_name]
        if line.is_late and line.entered_at is not None:
            parts.append(entered_words(line.entered_at, self._clock.zone()))
        return " · ".join(part for part in parts if part)

    def _is_plain(self, line: TimelineLine) -> bool:
        """Whether it needs no saying where a line leads: the jar of a batch, or a name in it."""
        is_vessel = line.about is not None and line.about.kind is SubjectKind.VESSEL
        return line.about_name in line.text or (self._is_of_batch and is_vessel)

    def cell(self, row: TimelineRow, column: int) -> str:
        """Return a row as a screen reader says it."""
        del column
        if isinstance(row, DayHeading):
            return heading_words(row.day, local(self._clock.now(), self._clock.zone()).date())
        parts = (self.time(row), row.text, self.aside(row))
        return ", ".join(part for part in parts if part)

    def cell_extra(self, row: TimelineRow, column: int, role: int) -> object:
        """Say the same to screen readers."""
        return self.cell(row, column) if role == Qt.ItemDataRole.AccessibleTextRole else None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Let lines be chosen, and days not."""
        if isinstance(self.row_at(index), DayHeading):
            return Qt.ItemFlag.ItemIsEnabled
        return super().flags(index)
