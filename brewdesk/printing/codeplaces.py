"""Where a QR code may stand on a label, in mm from the label's upper left corner."""

from __future__ import annotations

from brewdesk.printing.qrpainter import QUIET_MODULES
from brewdesk.services.labelgeometry import RectMm

LEAST_MODULE_MM = 0.4  # ten dots at 600 dpi, over two at 150: what a telephone still reads
_MODULES_MM = (0.8, 0.6, 0.5, LEAST_MODULE_MM)
_LEAST_WORDS_MM = 8.0  # what a code must leave for the words
_CODE_SHARE = 0.36  # of a label's width
_UPRIGHT = 1.15  # height over width from which the code goes below the words


def code_places(
    inner: RectMm, clear: RectMm, modules: tuple[tuple[bool, ...], ...]
) -> tuple[RectMm | None, ...]:
    """Return where the code may stand, the easiest to read first; only None if nowhere.

    ``inner`` is for words, ``clear`` is all that is inside the outline: a code's own quiet zone
    may lie in the margin, so that its dark modules line up with the words.
    """
    if not modules:
        return (None,)
    count = len(modules) + 2 * QUIET_MODULES
    is_below = is_upright(inner)
    room = clear.width if is_below else clear.height
    share = inner.height * 0.5 if is_below else inner.width * _CODE_SHARE
    places = []
    for module_mm in _MODULES_MM:
        side = module_mm * count
        if side <= min(room, clear.width, max(share, LEAST_MODULE_MM * count)):
            left, top = _code_corner(inner, clear, side, QUIET_MODULES * module_mm)
            places.append(RectMm(left, top, side, side))
    if not places:
        return (None,)
    last = places[-1]
    left_mm = last.y - inner.y if is_below else last.x - inner.x
    return tuple(places) if left_mm >= _LEAST_WORDS_MM else (None,)


def _code_corner(inner: RectMm, clear: RectMm, side: float, quiet_mm: float) -> tuple[float, float]:
    """Return a code's left and upper edge: its modules at the words' edge, if that is clear."""
    left = min(inner.right + quiet_mm, clear.right) - side
    if is_upright(inner):
        return left, min(inner.bottom + quiet_mm, clear.bottom) - side
    return left, min(max(inner.y - quiet_mm, clear.y), clear.bottom - side)


def is_upright(inner: RectMm) -> bool:
    """Whether a label is so narrow that its code goes below the words."""
    return inner.height > _UPRIGHT * inner.width


def above_code(inner: RectMm, code: RectMm) -> RectMm:
    """Return what an upright label leaves for the words above its code."""
    return RectMm(inner.x, inner.y, inner.width, code.y - inner.y)
