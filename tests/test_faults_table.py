"""Every fault of time and notices in the table is one that a test really causes."""

from __future__ import annotations

import ast
import csv
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
TABLE = ROOT / "tests" / "faults_time.csv"


def listed() -> list[tuple[str, str]]:
    with TABLE.open(encoding="utf-8", newline="") as file:
        return [(row["fault"], row["test"]) for row in csv.DictReader(file)]


def functions_in(path: Path) -> set[str]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return {node.name for node in tree.body if isinstance(node, ast.FunctionDef)}


def test_every_fault_names_a_test_that_is_there():
    missing = []
    for fault, test in listed():
        file, _, name = test.partition("::")
        path = ROOT / file
        if not fault or not path.is_file() or name not in functions_in(path):
            missing.append(f"{fault}: {test}")
    assert missing == []


def test_no_line_stands_there_twice():
    lines = listed()
    assert len(lines) == len(set(lines))
    assert len({fault for fault, _ in lines}) > 34


def test_every_test_of_a_fault_is_listed():
    """A fault that is tested and not told is one that somebody will test again."""
    named = {test for _, test in listed()}
    unlisted = [
        name
        for name in functions_in(ROOT / "tests" / "services" / "test_notice_faults.py")
        if name.startswith("test_") and f"tests/services/test_notice_faults.py::{name}" not in named
    ]
    assert unlisted == []
