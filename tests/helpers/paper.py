"""Pages read back with tools that are not ours: poppler draws and measures, ZXing decodes."""

from __future__ import annotations

import subprocess

import numpy as np
import zxingcpp

from brewdesk.services.labelgeometry import cell_mm

MM_PER_INCH = 25.4
CLOSE_MM = 0.2


def page_of(path, dpi, page=1):
    """Darkness of every dot of a page, from 0 (paper) to 1."""
    done = subprocess.run(
        ["pdftoppm", "-r", str(dpi), "-gray", "-f", str(page), "-l", str(page), str(path)],
        check=True,
        capture_output=True,
    ).stdout
    kind, size, depth, dots = done.split(b"\n", 3)
    assert (kind, depth) == (b"P5", b"255")
    width, height = (int(side) for side in size.split())
    return 1.0 - np.frombuffer(dots, np.uint8, width * height).reshape(height, width) / 255.0


def text_of(path):
    done = subprocess.run(["pdftotext", "-raw", str(path), "-"], check=True, capture_output=True)
    return " ".join(done.stdout.decode().split())


def pages_of(path):
    done = subprocess.run(["pdfinfo", str(path)], check=True, capture_output=True, text=True)
    facts = dict(line.split(":", 1) for line in done.stdout.splitlines() if ":" in line)
    return int(facts["Pages"])


def stroke_mm(profile, expected_mm, dpi, reach_mm=0.9):
    """Where the middle of a stroke is along a line of dots, looked for near a place."""
    middle = expected_mm * dpi / MM_PER_INCH
    reach = reach_mm * dpi / MM_PER_INCH
    first, last = max(0, int(middle - reach)), min(len(profile), int(middle + reach) + 1)
    part = profile[first:last]
    assert part.sum() > 0.3, "there is no stroke"
    at = (np.arange(first, last) + 0.5) @ part / part.sum()
    return at * MM_PER_INCH / dpi


def off_by_mm(page, sheet, cell, dpi):
    """How far each stroke of a label's frame is from its place, in mm.

    A stroke on the paper's own edge is cut with the paper (a PDF's is a whole number of points)
    and cannot be measured.
    """
    dots = dpi / MM_PER_INCH
    # Half way up the sides no words come near the stroke, nor a round corner.
    row = page[int((cell.y + cell.height / 2) * dots)]
    column = page[:, int((cell.x + cell.width / 2) * dots)]
    width, height = sheet.page_mm
    edges = (
        (row, cell.x, width),
        (row, cell.right, width),
        (column, cell.y, height),
        (column, cell.bottom, height),
    )
    return [
        abs(stroke_mm(line, edge, dpi) - edge)
        for line, edge, side in edges
        if 0.2 < edge < side - 0.2
    ]


def ink_box_mm(page, dpi):
    """Left, right, top and bottom of all that is dark, in mm."""
    rows, columns = np.nonzero(page.max(axis=1) > 0.3)[0], np.nonzero(page.max(axis=0) > 0.3)[0]
    edges = (columns[0], columns[-1] + 1, rows[0], rows[-1] + 1)
    return tuple(edge * MM_PER_INCH / dpi for edge in edges)


def codes_on(page):
    image = np.ascontiguousarray((255 * (1.0 - page)).astype(np.uint8))
    return sorted(found.text for found in zxingcpp.read_barcodes(image))


def frames_off_mm(page, sheet, positions, dpi):
    """How far all strokes of the frames at some positions are from their places, in mm."""
    cells = [cell_mm(sheet, position) for position in positions]
    return [each for cell in cells for each in off_by_mm(page, sheet, cell, dpi)]
