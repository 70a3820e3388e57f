"""Measure the forecast on any folder of series, beside three simpler ways of foretelling.

Prints one JSON object: for each cut (all readings of days 0, 0-3, 0-5, 0-7 known) the median
absolute error of later pH and of the day of crossing pH 3.2, how often the 50 % and 80 %
bands held, and how wide they were; the same by source; and the time a forecast took. Needs
the development environment. Run it as ``python3 packaging/dev.py evaluate FOLDER``.
"""

from __future__ import annotations

import json
import os
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
# One core: so that the time of a forecast means something on any machine.
ONE_CORE = ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS")


def main(arguments: list[str]) -> int:
    """Evaluate one folder and print what was found."""
    if len(arguments) != 1 or not Path(arguments[0]).is_dir():
        print("Give one folder of CSV series.", file=sys.stderr)
        return 2
    for name in ONE_CORE:
        os.environ.setdefault(name, "1")
    sys.path[:0] = [str(ROOT / "shared"), str(ROOT / "packaging")]
    from evaluation.report import report

    print(json.dumps(report(Path(arguments[0])), indent=2))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
