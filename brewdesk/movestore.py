"""``brewdesk move-store``: a pantry from its file onto a server, or back, in a terminal.

Exit codes: 0 moved, 2 trouble; then nothing was changed.
"""

from __future__ import annotations

import argparse
import os
import platform
import sys
from collections.abc import Callable, Mapping
from datetime import datetime
from pathlib import Path
from typing import TextIO

from brewdesk import paths
from brewdesk.services.clock import SystemClock
from brewdesk.services.movingstore import Moved, to_file, to_server
from brewdesk.services.photofiles import PhotoTrouble
from brewdesk.services.wording.movingstore import (
    done_words,
    help_words,
    in_use_words,
    photo_words,
    which_words,
)
from brewdesk.services.wording.problems import trouble_words
from brewdesk.store.desklocal import DeskIdentity, desk_identity
from brewdesk.store.errors import StoreTrouble, told
from brewdesk.store.serverurl import is_server

MOVED = 0
TROUBLE = 2
SERVER = "server"  # the word for the address in the environment: it may hold a password


def main(
    argv: list[str],
    *,
    out: TextIO | None = None,
    err: TextIO | None = None,
    variables: Mapping[str, str] = os.environ,
    now: Callable[[], datetime] | None = None,
) -> int:
    """Move; returns the exit code."""
    out, err = out or sys.stdout, err or sys.stderr
    options = _parser().parse_args(argv)
    folders = paths.folders(options.data_dir)
    known = variables.get(paths.SERVER_VARIABLE, "").strip()
    target = known if options.to == SERVER else options.to
    source = known if options.source == SERVER else options.source
    if not source:
        source = str(folders.store) if is_server(target) else known
    if not target or not source or is_server(target) == is_server(source):
        print(f"brewdesk move-store: {which_words(paths.SERVER_VARIABLE)}", file=err)
        return TROUBLE
    try:
        with told():
            desk = desk_identity(folders.data, platform.node() or "brewdesk")
        moved = _move(source, target, desk, (now or SystemClock().now)())
    except StoreTrouble as trouble:
        print(f"brewdesk move-store: {trouble_words(trouble)}", file=err)
        return TROUBLE
    except PhotoTrouble:
        print(f"brewdesk move-store: {photo_words()}", file=err)
        return TROUBLE
    if moved is None:
        print(f"brewdesk move-store: {in_use_words()}", file=err)
        return TROUBLE
    words = done_words(moved, paths.SERVER_VARIABLE, is_to_server=is_server(target))
    print(words, file=out)
    return MOVED


def _move(source: str, target: str, desk: DeskIdentity, now: datetime) -> Moved | None:
    """Move, holding the file's lock; None if a program has the file open."""
    from PySide6.QtCore import QLockFile

    file = Path(source if is_server(target) else target).absolute()
    if not file.parent.is_dir():
        raise StoreTrouble("file_gone", str(file.parent))
    lock = QLockFile(str(file.resolve()) + ".lock")
    lock.setStaleLockTime(0)
    if not lock.tryLock(0):
        return None
    try:
        if is_server(target):
            return to_server(file, target, desk=desk, now=now)
        return to_file(source, file, desk=desk, now=now)
    finally:
        lock.unlock()


def _parser() -> argparse.ArgumentParser:
    words = help_words(paths.SERVER_VARIABLE)
    parser = argparse.ArgumentParser(
        prog="brewdesk move-store", description=words["about"], epilog=words["codes"]
    )
    parser.add_argument("--to", required=True, help=words["to"])
    parser.add_argument("--from", dest="source", default="", help=words["from"])
    parser.add_argument("--data-dir", type=Path, help=words["data_dir"])
    return parser
