"""The dialogs of the reports: which document, under which name."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from brewdesk.services.batchreport import batch_facts
from brewdesk.services.desk import Desk
from brewdesk.services.lookbackview import LookBackView
from brewdesk.services.paperdoc import Document
from brewdesk.services.wording.batchreport import batch_report
from brewdesk.services.wording.lookbackreport import look_back_report
from brewdesk.widgets.documentdialog import DocumentDialog


def batch_document(desk: Desk, batch_id: int) -> Document:
    """Make the report of a batch as it stands, with its newest forecast.

    Raises
    ------
    StoreTrouble
        If there is no such batch.
    """
    facts = batch_facts(desk.door, batch_id, desk.forecasts.now(batch_id))
    return batch_report(facts, desk.quantities.show, desk.clock.zone())


def batch_report_dialog(desk: Desk, batch_id: int, parent: QWidget | None) -> DocumentDialog:
    """Make the preview of a batch's report."""
    return DocumentDialog(
        batch_document(desk, batch_id),
        name="batch_report",
        save_title=QCoreApplication.translate("Reports", "Save the batch report as PDF"),
        parent=parent,
    )


def process_log_dialog(document: Document, parent: QWidget | None) -> DocumentDialog:
    """Make the preview of a process log."""
    return DocumentDialog(
        document,
        name="process_log",
        save_title=QCoreApplication.translate("Reports", "Save the process log as PDF"),
        parent=parent,
    )


def look_back_dialog(
    desk: Desk, view: LookBackView, filters: Sequence[str], parent: QWidget | None
) -> DocumentDialog:
    """Make the preview of a look back; ``filters`` are the names of those in use."""
    return DocumentDialog(
        look_back_report(view, filters, desk.quantities.show, desk.clock.zone()),
        name="look_back",
        save_title=QCoreApplication.translate("Reports", "Save the look back as PDF"),
        parent=parent,
    )
