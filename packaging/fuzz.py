"""Search for bytes that the program's doors answer with anything but a trouble of its own.

Atheris follows which branches of the program's code the bytes reach, and tries what reaches new
ones. The doors are those of ``tests/fuzz/targets.py``. What is found lies in
``build/fuzz/found/DOOR``: mend the program, then keep the file in ``tests/fuzz/cases/DOOR``. Run
from the repository: ``python3 packaging/dev.py fuzz [SECONDS [DOOR...]]``.
"""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
KEPT = ROOT / "build" / "fuzz"
SECONDS = 120
DOORS = (
    "amounts", "readings_file", "logger_file", "export_archive", "calendar_text", "camera_data",
    "settings_values", "label_fields",
)  # fmt: skip


def main(argv: list[str]) -> int:
    """Feed each door for its share of the seconds; 1 if anything was found."""
    if argv[:1] == ["--one"]:
        feed_one(argv[1], float(argv[2]))
    seconds = float(argv[0]) if argv else SECONDS
    doors = argv[1:] or list(DOORS)
    bad = [door for door in doors if not has_held(door, seconds / len(doors))]
    print(f"Found something at: {', '.join(bad)}" if bad else "Every door held.")
    return 1 if bad else 0


def has_held(door: str, seconds: float) -> bool:
    """Feed one door in a process of its own, and print what came of it."""
    done = subprocess.run(
        [sys.executable, __file__, "--one", door, str(max(1, round(seconds)))],
        cwd=ROOT,
        capture_output=True,
        text=True,
        errors="replace",
        check=False,
    )
    told = done.stdout + done.stderr
    tries = re.findall(r"^#(\d+)\s", told, re.MULTILINE)
    branches = re.findall(r"cov: (\d+)", told)
    reached = f"{tries[-1] if tries else 0} tries, {branches[-1] if branches else 0} branches"
    print(f"{door}: {'held' if done.returncode == 0 else 'NOT HELD'}, {reached}", flush=True)
    if done.returncode != 0:
        _, found, after = told.partition("=== Uncaught Python exception: ===")
        print((found + after)[:6000] or told[-6000:], flush=True)
    return done.returncode == 0


def feed_one(door: str, seconds: float) -> None:
    """Feed one door until the time is over or something was found; does not return."""
    import atheris

    sys.path[:0] = [str(ROOT), str(ROOT / "shared")]
    with atheris.instrument_imports(include=["brewdesk", "culturecore", "zipfile", "csv"]):
        from tests.fuzz.targets import MOST_BYTES, TARGETS
    target = TARGETS[door]
    corpus, found = KEPT / "corpus" / door, KEPT / "found" / door
    for folder in (corpus, found):
        folder.mkdir(parents=True, exist_ok=True)
    for number, seed in enumerate(target.seeds):
        (corpus / f"seed-{number}").write_bytes(seed)
    atheris.Setup(
        [
            sys.argv[0],
            str(corpus),
            f"-max_total_time={round(seconds)}",
            f"-max_len={min(MOST_BYTES, 2000)}",
            f"-artifact_prefix={found}/",
            "-print_final_stats=1",
            "-timeout=60",
        ],
        target.feed,
    )
    atheris.Fuzz()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
