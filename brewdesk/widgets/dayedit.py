"""One day of the calendar; it may be left open."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta, tzinfo

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QCheckBox, QDateEdit, QHBoxLayout, QWidget

from brewdesk.widgets.theme import SPACE


class DayEdit(QWidget):
    """A date with a calendar; with ``may_be_open``, a box says whether there is one."""

    changed = Signal()

    def __init__(
        self, today: date, name: str, parent: QWidget | None = None, *, may_be_open: bool = False
    ) -> None:
        super().__init__(parent)
        self.box = QCheckBox(self.tr("known"), self)
        self.box.setObjectName(f"{name}_known")
        self.box.setVisible(may_be_open)
        self.box.setChecked(not may_be_open)
        self.line = QDateEdit(self)
        self.line.setObjectName(name)
        self.line.setCalendarPopup(True)
        self.line.setDisplayFormat(self.tr("d MMM yyyy"))  # 5/11 is read as two different days
        self.line.setDate(QDate(today.year, today.month, today.day))
        self.line.setEnabled(not may_be_open)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACE)
        row.addWidget(self.box)
        row.addWidget(self.line, 1)
        self.box.toggled.connect(self.line.setEnabled)
        self.box.toggled.connect(self.changed)
        self.line.dateChanged.connect(self.changed)

    def day(self) -> date | None:
        """Return the day, or None while it is left open."""
        if not self.box.isChecked():
            return None
        chosen = self.line.date()
        return date(chosen.year(), chosen.month(), chosen.day())

    def set_day(self, day: date | None) -> None:
        """Show a day."""
        self.box.setChecked(day is not None)
        if day is not None:
            self.line.setDate(QDate(day.year, day.month, day.day))


def first_instant(day: date, zone: tzinfo) -> datetime:
    """Return when a day begins on the maker's clock."""
    return datetime.combine(day, time(0), tzinfo=zone).astimezone(UTC)


def last_instant(day: date, zone: tzinfo) -> datetime:
    """Return the last second of a day on the maker's clock."""
    return first_instant(day + timedelta(days=1), zone) - timedelta(seconds=1)
