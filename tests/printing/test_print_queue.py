"""Labels through a real CUPS queue: what arrives at the printer is measured and decoded.

The whole way is the maker's: the page, Print…, the preview, the print dialog, the queue with its
filter, the device. The frames must lie within 0.2 mm of their places and every QR code
(ISO/IEC 18004) be read at 150 dots an inch. A system without CUPS fails here; nothing is left out.
"""

from __future__ import annotations

import json
import subprocess
import sys

import pytest

from brewdesk.services.labelsheets import starters
from tests.helpers.paper import CLOSE_MM, codes_on, frames_off_mm, page_of, pages_of
from tests.helpers.printqueue import NO_ROLLS, QUEUE, print_queue

SHEETS = {sheet.key: sheet for sheet in starters()}
DPI = 150


@pytest.fixture(scope="module")
def queue():
    with print_queue() as made:
        yield made


def printed(queue, folder, sheet, start, printer=QUEUE):
    """Print eight labels from the window; what it meant to print, and the file that arrived."""
    queue.landed.unlink(missing_ok=True)
    done = queue.run(
        [
            *(sys.executable, "-m", "tests.helpers.print_from_window"),
            *(str(folder), printer, sheet, str(start)),
        ]
    )
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout), queue.wait_until_printed()


@pytest.mark.parametrize(("key", "start"), [("a4_3x8", 20), ("letter_2x5", 3), ("roll_62x40", 0)])
def test_what_arrives_at_the_printer_is_true_to_size_and_every_code_is_read(
    queue, tmp_path, key, start
):
    meant, landed = printed(queue, tmp_path, key, start)
    sheet = SHEETS[key]
    count = len(meant["codes"])
    pages = [page_of(landed, DPI, page) for page in range(1, pages_of(landed) + 1)]
    assert len(pages) == -(-(start + count) // sheet.per_page)
    assert sorted(code for page in pages for code in codes_on(page)) == sorted(meant["codes"])
    off = []
    for place in range(start, start + count):
        number, position = divmod(place, sheet.per_page)
        off += frames_off_mm(pages[number], sheet, [position], DPI)
    assert len(off) >= 2 * count
    assert max(off) <= CLOSE_MM
    assert meant["said"] == ""


def test_the_paper_that_is_sent_is_the_sheets_and_not_the_printers_usual_one(queue, tmp_path):
    _meant, landed = printed(queue, tmp_path, "letter_2x5", 0)
    told = subprocess.run(["pdfinfo", str(landed)], check=True, capture_output=True, text=True)
    assert "612 x 792 pts" in told.stdout  # US Letter, 8.5 by 11 inch; the printer's usual is A4


def test_a_printer_that_has_no_such_paper_is_told_about(queue, tmp_path):
    meant, _landed = printed(queue, tmp_path, "roll_62x40", 0, NO_ROLLS)
    assert "does not have the paper" in meant["said"]
