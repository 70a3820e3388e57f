"""Asks where a calendar file of the due list is to go."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication, QStandardPaths
from PySide6.QtWidgets import QFileDialog, QWidget

_NAME = "brewdesk.ics"


def ask_for_calendar_file(parent: QWidget, now_at: str = "") -> QFileDialog:
    """Open the dialog; ``fileSelected`` of what is returned carries the path."""
    home = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    first = Path(now_at) if now_at else Path(home) / _NAME
    dialog = QFileDialog(parent, _tr("Calendar file of the due list"), str(first.parent))
    dialog.setObjectName("calendar_file_dialog")
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setNameFilter(_tr("Calendar files (*.ics)"))
    dialog.setDefaultSuffix("ics")
    dialog.selectFile(first.name)
    dialog.finished.connect(dialog.deleteLater)
    dialog.open()
    return dialog


def _tr(text: str) -> str:
    return QCoreApplication.translate("CalendarDialog", text)
