"""A screen that nobody sees: one Xvfb on a free display number, ended with the block."""

from __future__ import annotations

import os
import select
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from devtool.speech import CannotGoOn

_START_LIMIT_S = 20.0


@contextmanager
def virtual_screen(
    width_px: int = 1280, height_px: int = 800, *, picture_folder: Path | None = None
) -> Iterator[str]:
    """Start Xvfb and yield its display, e.g. ``:1``.

    With ``picture_folder`` the server keeps the screen's pixels there in the file
    ``Xvfb_screen0`` (XWD format), which spares a screenshot program.
    """
    reader, writer = os.pipe()
    command = ["Xvfb", "-displayfd", str(writer), "-nolisten", "tcp", "-noreset"]
    command += ["-screen", "0", f"{width_px}x{height_px}x24"]
    if picture_folder is not None:
        command += ["-fbdir", str(picture_folder)]
    server = subprocess.Popen(
        command,
        pass_fds=(writer,),
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
    )
    os.close(writer)
    try:
        yield f":{_display_number(reader, server)}"
    finally:
        os.close(reader)
        server.terminate()
        server.communicate()


def _display_number(reader: int, server: subprocess.Popen[bytes]) -> str:
    text = b""
    while not text.endswith(b"\n"):
        ready, _, _ = select.select([reader], [], [], _START_LIMIT_S)
        piece = os.read(reader, 64) if ready else b""
        if not piece:
            server.terminate()
            _, errors = server.communicate()
            raise CannotGoOn(f"Xvfb did not start:\n{errors.decode(errors='replace')}")
        text += piece
    return text.decode().strip()
