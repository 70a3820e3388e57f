"""The jars of a trial as a table: by code, with what was measured of each."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, Qt

from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind
from brewdesk.services.trialview import TrialJarView
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.trials import crossing_words, marks_words

CODE, LEVEL, VESSEL, STAGE, CROSSING, ACIDITY, PELLICLE, LIKING = range(8)


def _t(text: str) -> str:
    return QCoreApplication.translate("TrialJarsModel", text)


class TrialJarsModel(RowTableModel[TrialJarView]):
    """One row a jar. The level is told only when the codes are open."""

    def __init__(self, quantities: Quantities, parent: QObject | None = None) -> None:
        super().__init__(
            (
                _t("Code"),
                _t("Level"),
                _t("Jar"),
                _t("State"),
                _t("pH 3.2 passed"),
                _t("Acidity"),
                _t("Pellicle"),
                _t("Liking"),
            ),
            lambda row: row.jar.id,
            parent,
        )
        self._quantities = quantities

    def cell(self, row: TrialJarView, column: int) -> str:
        """Return the text of one cell."""
        measures = row.measures
        if column == CODE:
            return row.jar.code
        if column == LEVEL:
            return _t("closed") if row.arm is None else row.arm.name
        if column == VESSEL:
            return "" if row.vessel is None else row.vessel.name
        if column == STAGE:
            if row.jar.left_out_reason:
                return _t("left out: {reason}").format(reason=row.jar.left_out_reason)
            return _t("no batch yet") if row.batch is None else name_of(row.batch.stage)
        if column == CROSSING:
            return crossing_words(row)
        if column == ACIDITY:
            value = measures.acidity_g_per_l
            return "" if value is None else self._quantities.show(value, Kind.ACIDITY)
        if column == PELLICLE:
            value = measures.pellicle_mm
            return "" if value is None else _t("{mm} mm").format(mm=number_text(value, 1))
        liking = "" if measures.liking is None else number_text(measures.liking, 1)
        return " · ".join(filter(None, (liking, marks_words(measures.marks))))

    def cell_extra(self, row: TrialJarView, column: int, role: int) -> object:
        """Say in full what is cut short."""
        if role in (Qt.ItemDataRole.AccessibleTextRole,):
            return self.cell(row, column)
        return None
