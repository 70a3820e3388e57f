"""What happens to mistakes of the program itself: a log the maker can read, and a notice."""

from __future__ import annotations

import faulthandler
import hashlib
import logging
import logging.handlers
import sys
import threading
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from types import TracebackType
from typing import TextIO

from brewdesk.store.errors import StoreTrouble

log = logging.getLogger("brewdesk")

LOG_BYTES = 512_000
LOG_FILES = 3


def start_log(state_dir: Path) -> Path | None:
    """Write the log to ``state_dir``; return its path, None if there can be no such folder."""
    try:
        state_dir.mkdir(parents=True, exist_ok=True, mode=0o700)
    except OSError as error:
        log.warning("no log is kept: %s", error)
        return None
    path = state_dir / "brewdesk.log"
    handler = logging.handlers.RotatingFileHandler(
        path, maxBytes=LOG_BYTES, backupCount=LOG_FILES, encoding="utf-8", delay=True
    )
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    root = logging.getLogger("brewdesk")
    root.setLevel(logging.INFO)
    root.addHandler(handler)
    return path


def start_crash_log(state_dir: Path) -> TextIO | None:
    """Have Python write where it was when the process itself breaks down.

    Returns
    -------
    TextIO or None
        What is to be handed to `stop_crash_log`; None if there can be no such file.
    """
    try:
        stream = (state_dir / "crash.log").open("a", encoding="utf-8")
    except OSError as error:
        log.warning("no log of crashes is kept: %s", error)
        return None
    faulthandler.enable(stream)
    return stream


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
        digest = hashlib.sha256(str(store_path.absolute()).encode()).hexdigest()[:16]
        self._path = state_dir / f"running-{digest}"

    def set(self) -> bool:
        """Put it down; True if it lay there already: the last run did not end in order."""
        lay_there = self._path.exists()
        try:
            self._path.touch()
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
    tell: Callable[[str], None], tell_away: Callable[[StoreTrouble], None] | None = None
) -> Callable[[], None]:
    """Send every uncaught error to the log, and its first line to ``tell``.

    That a shared store cannot be reached is no mistake of the program, wherever it is found
    out: ``tell_away`` is told instead.

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
        tell(f"{kind.__name__}: {error}")

    def on_thread_error(args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None:
            log.error("uncaught in a thread", exc_info=args.exc_value)
        before_thread(args)

    sys.excepthook = on_error
    threading.excepthook = on_thread_error

    def restore() -> None:
        sys.excepthook, threading.excepthook = before, before_thread

    return restore
