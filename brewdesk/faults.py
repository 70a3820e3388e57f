"""What happens to mistakes of the program itself: a log the maker can read, and a notice."""

from __future__ import annotations

import faulthandler
import hashlib
import logging
import logging.handlers
import os
import sys
import threading
import traceback
from collections.abc import Callable
from contextlib import suppress
from io import TextIOWrapper
from pathlib import Path
from types import TracebackType
from typing import TextIO, cast

from brewdesk.paths import make_private_folder
from brewdesk.store.errors import StoreTrouble

log = logging.getLogger("brewdesk")

LOG_BYTES = 512_000
LOG_FILES = 3
MOST_CRASH_BYTES = 64_000


class _PrivateLog(logging.handlers.RotatingFileHandler):
    """A log that only its owner reads, whatever the system's habit with new files is."""

    def _open(self) -> TextIOWrapper:
        descriptor = private(self.baseFilename, os.O_CREAT | os.O_APPEND | os.O_WRONLY)
        stream = os.fdopen(descriptor, self.mode, encoding=self.encoding)
        return cast("TextIOWrapper", stream)  # that is what text modes give


def start_log(state_dir: Path) -> Path | None:
    """Write the log to ``state_dir``; return its path, None if there can be no such folder."""
    try:
        make_private_folder(state_dir)
    except OSError as error:
        log.warning("no log is kept: %s", error)
        return None
    path = state_dir / "brewdesk.log"
    handler = _PrivateLog(
        path, maxBytes=LOG_BYTES, backupCount=LOG_FILES, encoding="utf-8", delay=True
    )
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    root = logging.getLogger("brewdesk")
    root.setLevel(logging.INFO)
    root.addHandler(handler)
    return path


def start_crash_log(state_dir: Path, store_path: Path) -> TextIO | None:
    """Have Python write where it was when the process itself breaks down.

    Only the program that has the pantry may do so: another one would take the file away.

    Returns
    -------
    TextIO or None
        What is to be handed to `stop_crash_log`; None if there can be no such file.
    """
    try:
        path = crash_path(state_dir, store_path)
        stream = open(path, "a", encoding="utf-8", opener=private)  # noqa: SIM115  # for the run
    except OSError as error:
        log.warning("no log of crashes is kept: %s", error)
        return None
    faulthandler.enable(stream)
    return stream


def note_end(stream: TextIO | None, error: BaseException) -> None:
    """Write down, as Python does when it breaks down, where an error ended the program."""
    if stream is None:
        return
    places = traceback.extract_tb(error.__traceback__)
    lines = [f'  File "{one.filename}", line {one.lineno} in {one.name}' for one in places]
    with suppress(OSError):
        stream.write("\n".join([f"Fatal Python error: {type(error).__name__}", *lines, ""]))
        stream.flush()


def take_breakdown(state_dir: Path, store_path: Path) -> str:
    """Give what the last run of this pantry wrote while it broke down, once; "" if it did not.

    It is set aside under another name, for whoever wants to look at it later.
    """
    path = crash_path(state_dir, store_path)
    try:
        kept = path.read_bytes()[-MOST_CRASH_BYTES:].decode("utf-8", errors="replace")
        path.replace(path.with_suffix(".told"))
    except OSError:
        return ""
    return kept.strip()


def crash_path(state_dir: Path, store_path: Path) -> Path:
    """Name the log of crashes of the program that has this pantry."""
    return state_dir / f"crash-{_digest(store_path)}.log"


def private(path: str, flags: int) -> int:
    """Open a file that, if it is new, only its owner reads and writes."""
    return os.open(path, flags, 0o600)


def _digest(store_path: Path) -> str:
    return hashlib.sha256(str(store_path.absolute()).encode()).hexdigest()[:16]


def stop_crash_log(stream: TextIO | None) -> None:
    """Close the log of crashes; nothing is left of it if there was none."""
    if stream is None:
        return
    faulthandler.disable()
    path = Path(stream.name)
    with suppress(OSError):
        stream.close()
        if path.stat().st_size == 0:
            path.unlink()


class RunMark:
    """A small file that is there while the program runs, and stays if it ends in no good order."""

    def __init__(self, state_dir: Path, store_path: Path) -> None:
        self._path = state_dir / f"running-{_digest(store_path)}"

    def set(self) -> bool:
        """Put it down; True if it lay there already: the last run did not end in order."""
        lay_there = self._path.exists()
        try:
            self._path.touch(mode=0o600)
        except OSError as error:
            log.warning("an end without order will not be noticed: %s", error)
        return lay_there

    def clear(self) -> None:
        """Take it away: this run ends in order."""
        with suppress(OSError):
            self._path.unlink(missing_ok=True)


def stop_log() -> None:
    """Close the log files (the handlers belong to one run)."""
    root = logging.getLogger("brewdesk")
    for handler in list(root.handlers):
        if isinstance(handler, logging.handlers.RotatingFileHandler):
            root.removeHandler(handler)
            with suppress(OSError):  # what is still in memory has no room on a full disk
                handler.close()


def install(
    tell: Callable[[str], None],
    tell_away: Callable[[StoreTrouble], None] | None = None,
    note: Callable[[BaseException, str], None] | None = None,
) -> Callable[[], None]:
    """Send every uncaught error to the log, and its first line to ``tell``.

    That a shared store cannot be reached is no mistake of the program, wherever it is found
    out: ``tell_away`` is told instead. ``note`` is handed every other error, on whatever thread
    it arose, and the kind of place it came out of.

    Returns what puts the hooks back. Slots swallow exceptions into ``sys.excepthook``,
    so without this a fault in a button would pass unseen.
    """
    before, before_thread = sys.excepthook, threading.excepthook

    def on_error(
        kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            before(kind, error, trace)
            return
        if (
            tell_away is not None
            and isinstance(error, StoreTrouble)
            and error.code == "not_connected"
        ):
            log.warning("the shared store could not be read: %s", error.code)
            tell_away(error)
            return
        log.error("uncaught", exc_info=(kind, error, trace))
        before(kind, error, trace)
        if note is not None:
            note(error, "the window's thread")
        tell(f"{kind.__name__}: {error}")

    def on_thread_error(args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None:
            log.error("uncaught in a thread", exc_info=args.exc_value)
            if note is not None:
                note(args.exc_value, "a thread of its own")
        before_thread(args)

    sys.excepthook = on_error
    threading.excepthook = on_thread_error

    def restore() -> None:
        sys.excepthook, threading.excepthook = before, before_thread

    return restore
