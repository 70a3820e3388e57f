"""The table of faults: what is caused on purpose, and what came of it when the tests ran.

``tests/faults.csv`` says which test causes which fault; the tests' own outcomes say how often
it was tried and survived. Both together are the document that readers get.
"""

from __future__ import annotations

import csv
import xml.etree.ElementTree as ET
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from devtool.speech import ROOT

TABLE = ROOT / "tests" / "faults.csv"
DOCUMENT = ROOT / "resources" / "docs" / "faults.md"
OUTCOMES = ROOT / "build" / "outcomes"  # what the last whole run of the tests left

_HEAD = """# Faults tried on purpose

What can go wrong around the program is caused in tests, again in each run of continuous
integration, and this page is made from what came of it: `python3 packaging/dev.py faults`
writes it from [tests/faults.csv](../../tests/faults.csv) and the outcomes of those tests;
do not edit it. A fault counts as survived when the test that caused it passed. "Nothing lost"
stands where records were at stake and the test compared them with what they had to be.
"""


@dataclass(frozen=True, slots=True)
class Fault:
    """One line of the table. ``keeps_records``: its tests compare the records."""

    area: str
    name: str
    how: str
    holds: str
    keeps_records: bool
    tests: tuple[str, ...]
    why_not: str


@dataclass(frozen=True, slots=True)
class Outcome:
    """What came of one test: how often it caused its fault, how often that was survived."""

    tried: int
    survived: int

    def __add__(self, other: Outcome) -> Outcome:
        return Outcome(self.tried + other.tried, self.survived + other.survived)


NOTHING = Outcome(0, 0)


def read_faults(path: Path = TABLE) -> tuple[Fault, ...]:
    """Read the table."""
    with path.open(encoding="utf-8", newline="") as file:
        return tuple(
            Fault(
                area=row["area"],
                name=row["fault"],
                how=row["how"],
                holds=row["holds"],
                keeps_records=row["records"] == "kept",
                tests=tuple(row["tests"].split()),
                why_not=row["why_not"],
            )
            for row in csv.DictReader(file)
        )


def read_outcomes(reports: Iterable[Path]) -> dict[str, Outcome]:
    """Read what came of each test, all its parameters together, from JUnit reports.

    A test that tries more than once says so in its property ``tried``.
    """
    found: dict[str, Outcome] = {}
    for report in reports:
        for case in ET.parse(report).getroot().iter("testcase"):
            file = case.get("classname", "").replace(".", "/") + ".py"
            name = f"{file}::{case.get('name', '').partition('[')[0]}"
            tried = 1
            for each in case.iter("property"):
                if each.get("name") == "tried":
                    tried = int(each.get("value", "1"))
            bad = any(case.find(kind) is not None for kind in ("failure", "error", "skipped"))
            found[name] = found.get(name, NOTHING) + Outcome(tried, 0 if bad else tried)
    return found


def document(faults: Sequence[Fault], outcomes: Mapping[str, Outcome]) -> str:
    """Write the page."""
    tested = [fault for fault in faults if fault.tests]
    survived = [fault for fault in tested if _is_survived(fault, outcomes)]
    kept = [fault for fault in tested if fault.keeps_records]
    summary = (
        f"{len(faults)} faults: {len(tested)} are caused by tests, "
        f"{len(faults) - len(tested)} are answered by a sentence. "
        f"Survived: {len(survived)} of {len(tested)}. "
        f"Records were at stake in {len(kept)}; nothing was lost in "
        f"{sum(fault.keeps_records for fault in survived)} of them."
    )
    lines = [
        _HEAD,
        summary,
        "",
    ]
    for area in dict.fromkeys(fault.area for fault in faults):
        lines += [f"## {area.capitalize()}", ""]
        lines += ["| fault | caused by | what must hold | tried | survived | nothing lost |"]
        lines += ["|---|---|---|---|---|---|"]
        lines += [_line(fault, outcomes) for fault in tested if fault.area == area]
        lines += [""]
    lines += ["## Not caused, or not wholly", ""]
    lines += [f"- {fault.name}: {fault.why_not}" for fault in faults if fault.why_not]
    return "\n".join(lines) + "\n"


def missing_in(faults: Sequence[Fault], outcomes: Mapping[str, Outcome]) -> list[str]:
    """Name the tests of the table that did not run or did not pass."""
    return sorted(
        {
            test
            for fault in faults
            for test in fault.tests
            if (got := outcomes.get(test, NOTHING)).tried == 0 or got.survived < got.tried
        }
    )


def _sum(fault: Fault, outcomes: Mapping[str, Outcome]) -> Outcome:
    total = NOTHING
    for test in fault.tests:
        total += outcomes.get(test, NOTHING)
    return total


def _is_survived(fault: Fault, outcomes: Mapping[str, Outcome]) -> bool:
    return not missing_in([fault], outcomes)


def _line(fault: Fault, outcomes: Mapping[str, Outcome]) -> str:
    total = _sum(fault, outcomes)
    lost = "–"
    if fault.keeps_records:
        lost = "nothing" if _is_survived(fault, outcomes) else "NOT SHOWN"
    cells = (fault.name, fault.how, fault.holds, str(total.tried), str(total.survived), lost)
    return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"
