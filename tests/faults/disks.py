"""Disks for tests: small ones, read-only ones, and one that fails when told to."""

from __future__ import annotations

import os
import subprocess
from pathlib import Path

from tests.faults.forker import Forker

COMPILE = ("cc", "-shared", "-fPIC", "-nostdlib", "-fno-builtin", "-O1", "-Wall", "-Werror")
SOURCE = Path(__file__).with_name("disk_that_fails.c")


def compiled(folder: Path) -> Path:
    """Build the library that makes a disk fail; it includes and links nothing."""
    library = folder / "disk_that_fails.so"
    subprocess.run(
        [*COMPILE, "-o", str(library), str(SOURCE)],
        check=True,
    )
    return library


def own_mounts(*commands: str) -> tuple[str, ...]:
    """Return the words that start a program whose mounts nobody else sees.

    Whoever is not root becomes it in there, of their own files alone.
    """
    unshare = ["unshare", "-m"] if os.geteuid() == 0 else ["unshare", "-U", "-r", "-m"]
    script = " && ".join([*commands, 'exec "$@"'])
    return (*unshare, "sh", "-c", script, "sh")


def on_small_disk(folder: Path, size: str) -> Forker:
    """Give a program for which ``folder`` is a disk of its own, of so many bytes."""
    return Forker(*own_mounts(f"mount -t tmpfs -o size={size},mode=700 none '{folder}'"))


def on_read_only_disk(folder: Path) -> Forker:
    """Give a program for which ``folder`` is on a disk that cannot be written."""
    return Forker(
        *own_mounts(f"mount --bind '{folder}' '{folder}'", f"mount -o remount,ro,bind '{folder}'")
    )


def on_failing_disk(library: Path, folder: Path, switch: Path, log: Path | None = None) -> Forker:
    """Give a program whose files below ``folder`` fail as the switch says."""
    variables = {
        "LD_PRELOAD": str(library),
        "FAULT_FOLDER": str(folder),
        "FAULT_SWITCH": str(switch),
    }
    if log is not None:
        variables["FAULT_LOG"] = str(log)
    return Forker(**variables)
