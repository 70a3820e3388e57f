"""Print labels as a maker does: tick, Print…, the preview's printer sign, a printer, Print.

A program of its own, since CUPS's library looks for its daemon once in a process. Arguments: an
empty folder, the printer, the key of a sheet, the first label's place. What was to be printed
goes to standard output as JSON.
"""

from __future__ import annotations

import json
import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QTimer
from PySide6.QtGui import QAction
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtWidgets import QApplication, QComboBox, QDialogButtonBox

from brewdesk.widgets.labelspage import LabelsPage
from tests.helpers.pantry_desk import open_desk, souring_batch

_LOOK_MS = 20


def main() -> int:
    """Print, and say what."""
    folder, printer, sheet, start = sys.argv[1:]
    application = QApplication([sys.argv[0]])
    desk = open_desk(Path(folder))
    batch = souring_batch(desk)
    page = LabelsPage(desk, delay_ms=0)
    page.resize(1180, 720)
    page.show()
    page.picker.pick_only((f"batch:{batch.id}", f"culture:{batch.culture_id}"))
    page.picker.picked[f"batch:{batch.id}"] = 7
    page.sheet.choose(sheet)
    page.sheet.grid.choose(int(start))
    page.draw()
    page.print.click()
    look = QTimer()
    look.setInterval(_LOOK_MS)
    look.timeout.connect(lambda: _answer(look, printer))
    look.start()
    signs = page.printing.preview.findChildren(QAction)
    next(sign for sign in signs if sign.text() == "Print").trigger()
    application.processEvents()
    codes = [label.code for label in page.labels()]
    print(json.dumps({"codes": codes, "said": page.said.text()}))
    page.close()
    desk.store.close()
    return 0


def _answer(look: QTimer, printer: str) -> None:
    """Choose the printer in the desktop's own dialog, and print."""
    dialog = QApplication.activeModalWidget()
    if not isinstance(dialog, QPrintDialog):
        return
    look.stop()
    choice = dialog.findChild(QComboBox, "printers")
    choice.setCurrentIndex(choice.findText(printer))
    assert choice.currentText() == printer, [choice.itemText(n) for n in range(choice.count())]
    dialog.findChild(QDialogButtonBox).button(QDialogButtonBox.StandardButton.Ok).click()


if __name__ == "__main__":
    sys.exit(main())
