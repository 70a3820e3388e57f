"""A logger's file as lines of text: its encoding, and its lines in blocks.

Each line is one row. Loggers write no line breaks into cells, and a quotation mark left
open must not swallow the rows behind it.
"""

from __future__ import annotations

import codecs
import csv
from collections.abc import Iterator
from io import TextIOWrapper
from pathlib import Path
from typing import IO

from brewdesk.services.loggertrouble import LoggerTrouble

DELIMITERS = (";", "\t", "|", ",")
ENCODINGS = ("utf-8", "utf-16-le", "utf-16-be", "latin-1")
_BLOCK = 1 << 18  # small enough that the window gets its turn in between
_LONGEST_LINE = 1 << 16  # what is longer is no row of a table; the rest of it is left out
_BOMS = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)
_BOM_CHARACTER = "\ufeff"


def encoding_of(head: bytes) -> str:
    """Guess the encoding from the first bytes; Latin-1 is what reads anything."""
    for bom, name in _BOMS:
        if head.startswith(bom):
            return name
    even, odd = head[0::2], head[1::2]
    # Latin letters and digits in UTF-16 have every second byte zero.
    if odd and odd.count(0) > len(odd) // 2 > even.count(0):
        return "utf-16-le"
    if odd and even.count(0) > len(odd) // 2 > odd.count(0):
        return "utf-16-be"
    try:
        codecs.getincrementaldecoder("utf-8")().decode(head)
    except UnicodeDecodeError:
        return "latin-1"
    return "utf-8"


def opened(path: Path, encoding: str) -> TextIOWrapper:
    """Open a file as text; bytes that are no text become marks that no number has.

    Raises
    ------
    LoggerTrouble
        "unreadable" if the file cannot be opened.
    """
    try:
        return path.open(encoding=encoding, errors="replace")
    except (OSError, ValueError) as error:  # ValueError: a path that cannot be
        raise LoggerTrouble("unreadable", str(error)) from error


def line_blocks(file: IO[str]) -> Iterator[str]:
    """Give whole lines of a file in blocks of about a quarter of a million characters.

    No block ends with a line break; the empty piece behind the last one is no line.

    Raises
    ------
    LoggerTrouble
        "unreadable" if the disk does not give what it holds.
    """
    rest, is_first = "", True
    while True:
        try:
            block = file.read(_BLOCK)
        except OSError as error:
            raise LoggerTrouble("unreadable", str(error)) from error
        if not block:
            break
        if is_first:
            block, is_first = block.removeprefix(_BOM_CHARACTER), False
        lines, found, rest = (rest + block).rpartition("\n")
        rest = rest[:_LONGEST_LINE]
        if found:
            yield lines
    if rest:
        yield rest


def cells_of(line: str, delimiter: str) -> list[str]:
    """Split one line into its cells."""
    if '"' not in line:
        return line.split(delimiter)
    try:
        return next(csv.reader((line,), delimiter=delimiter), [])
    except csv.Error:
        return line.split(delimiter)
