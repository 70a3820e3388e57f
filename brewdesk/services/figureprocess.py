"""The other side of `apart`: a process without a window that works out what it is handed.

It reads pickled functions without arguments from its input, and writes what they return or
raise to its output. It ends when its input ends, and so with the program however that ends.
"""

from __future__ import annotations

import os
import pickle
import signal
import sys
import traceback
from collections.abc import Callable
from typing import BinaryIO

WORD = "--figures"  # what a packaged program is started with to be this process
NICENESS = 5  # painting comes first, but other programs do not come first by far


def serve(questions: BinaryIO, answers: BinaryIO) -> None:
    """Answer questions until there are no more, or nobody is left to hear the answers."""
    while True:
        try:
            work = pickle.load(questions)
        except EOFError:
            return
        try:
            answers.write(_answer_to(work))
            answers.flush()
        except BrokenPipeError:
            return


def _answer_to(work: Callable[[], object]) -> bytes:
    """Return, pickled, whether it went well, and the result or what was raised."""
    try:
        return pickle.dumps((True, work()), pickle.HIGHEST_PROTOCOL)
    except Exception as error:  # handed on whole to the program
        error.add_note(f"In the figures' process:\n{traceback.format_exc()}")
        return _told(error)


def _told(error: Exception) -> bytes:
    try:
        pickled = pickle.dumps((False, error), pickle.HIGHEST_PROTOCOL)
        pickle.loads(pickled)
    except Exception:  # not every exception can be made anew from its arguments
        plain = RuntimeError(f"{type(error).__name__}: {error}")
        plain.add_note("\n".join(error.__notes__))
        return pickle.dumps((False, plain), pickle.HIGHEST_PROTOCOL)
    return pickled


def main() -> int:
    """Serve on this process's own input and output."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # meant for the program, which ends this one
    if sys.platform != "win32":  # there the one who starts it says so
        os.nice(NICENESS)
    questions, answers = os.fdopen(os.dup(0), "rb"), os.fdopen(os.dup(1), "wb")
    # What a library may print must not get between the answers.
    nowhere = os.open(os.devnull, os.O_RDWR)
    os.dup2(nowhere, 0)
    os.dup2(nowhere, 1)
    os.close(nowhere)
    serve(questions, answers)
    return 0


if __name__ == "__main__":
    sys.exit(main())
