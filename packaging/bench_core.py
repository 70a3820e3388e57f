"""Measure the calculation core against PHREEQC and print the ratios as JSON.

Needs the development environment (phreeqc is in it). Nothing is asserted: clocks differ, and
so do machines. Run from the repository: ``python packaging/bench_core.py``.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
MIXTURES = 2000
REPEATS = 5
SPECIES = (
    "Acetate", "Gluconate", "Lactate", "Malate", "Citrate", "C(4)", "Teaa", "Teap",
)  # fmt: skip


def main() -> None:
    """Print one JSON object: microseconds per mixture, and how many times faster."""
    sys.path[:0] = [str(ROOT / "shared")]
    import numpy as np
    import phreeqc  # type: ignore[import-untyped]  # it has no stubs

    from culturecore.acidarrays import ph_of_many
    from culturecore.acidbase import Blend, ph_of
    from culturecore.acidconstants import ACIDS

    rng = np.random.default_rng(20261125)
    totals = rng.uniform(0.0, 0.035, (MIXTURES, len(ACIDS)))
    totals *= rng.random(totals.shape) < 0.6
    totals[:, 0] += 1e-3
    excess = rng.uniform(0.0, 0.6, MIXTURES) * totals.sum(axis=1)
    temperature_c = rng.uniform(5.0, 45.0, MIXTURES)

    engine = phreeqc.Phreeqc()
    database = (ROOT / "tests" / "cases" / "weak_acids.dat").read_text(encoding="utf-8")
    if engine.LoadDatabaseString(database):
        raise SystemExit(engine.GetErrorString())
    inputs = [
        _solution(row, float(sodium), float(t))
        for row, sodium, t in zip(totals.tolist(), excess, temperature_c, strict=True)
    ]
    blends = [
        Blend(
            **{f"{acid}_mol_per_kg": x for acid, x in zip(ACIDS, row, strict=True)},
            strong_ion_excess_eq_per_kg=float(sodium),
        )
        for row, sodium in zip(totals.tolist(), excess, strict=True)
    ]

    reference: list[float] = []

    def ask_phreeqc() -> None:
        reference.clear()
        for text in inputs:
            failed = engine.RunString(text)
            reference.append(float("nan") if failed else engine.GetSelectedOutput()["pH"][-1])

    microseconds = {
        "phreeqc": _best(ask_phreeqc),
        "array": _best(lambda: ph_of_many(totals, excess, temperature_c)),
        "array_one_temperature": _best(lambda: ph_of_many(totals, excess, 25.0)),
        "single": _best(
            lambda: [ph_of(b, float(t)) for b, t in zip(blends, temperature_c, strict=True)]
        ),
    }
    off = np.abs(ph_of_many(totals, excess, temperature_c) - np.array(reference))
    print(
        json.dumps(
            {
                "mixtures": MIXTURES,
                "microseconds_per_mixture": {k: round(v, 2) for k, v in microseconds.items()},
                "times_faster_than_phreeqc": {
                    k: round(microseconds["phreeqc"] / v, 1)
                    for k, v in microseconds.items()
                    if k != "phreeqc"
                },
                "phreeqc_did_not_converge": int(np.isnan(off).sum()),
                "largest_difference_ph": round(float(np.nanmax(off)), 6),
                "first_conversion_ms": {
                    unit: round(_first_conversion_ms(unit), 1) for unit in ("gal", "imp gal")
                },
            },
            indent=2,
        )
    )


def _solution(totals: list[float], sodium: float, temperature_c: float) -> str:
    """Write one mixture the way PHREEQC reads it."""
    lines = ["SOLUTION 1", f" temp {temperature_c:.12g}", " units mol/kgw", " pH 7 charge"]
    lines += [
        f" {name} {amount:.14g}"
        for name, amount in zip(("Na", *SPECIES), (sodium, *totals), strict=True)
        if amount > 0.0
    ]
    lines += ["SELECTED_OUTPUT", " -reset false", " -high_precision true", " -pH true", "END"]
    return "\n".join(lines)


def _first_conversion_ms(unit: str) -> float:
    """Return what the first conversion of a fresh process takes; "imp gal" has to load pint."""
    script = (
        "import time; from culturecore.units import Kind, from_canonical;"
        "started = time.perf_counter(); from_canonical(1.0, '{}', Kind.VOLUME);"
        "print(1000.0 * (time.perf_counter() - started))"
    )
    command = [sys.executable, "-c", script.format(unit)]
    environment = os.environ | {"PYTHONPATH": str(ROOT / "shared")}
    run = subprocess.run(command, check=True, capture_output=True, text=True, env=environment)
    return float(run.stdout)


def _best(work: Callable[[], object]) -> float:
    """Return the least processor time per mixture of several runs [us]."""
    times = []
    for _ in range(REPEATS):
        started = time.process_time()
        work()
        times.append(time.process_time() - started)
    return 1e6 * min(times) / MIXTURES


if __name__ == "__main__":
    main()
