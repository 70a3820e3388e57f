"""Every fault in the table is one that a test really causes, or says why none does."""

from __future__ import annotations

import ast
from functools import cache
from pathlib import Path

import pytest
from devtool.faulttable import (
    DOCUMENT,
    Fault,
    Outcome,
    document,
    missing_in,
    read_faults,
    read_outcomes,
)

ROOT = Path(__file__).resolve().parents[1]
# Whoever adds a test there adds a fault, or another way of causing one.
FAULTS_ONLY = ("tests/services/test_notice_faults.py", "tests/faults/test_*.py")


@cache
def functions_in(path: Path) -> frozenset[str]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return frozenset(node.name for node in tree.body if isinstance(node, ast.FunctionDef))


def test_every_fault_names_tests_that_are_there():
    missing = []
    for fault in read_faults():
        for test in fault.tests:
            file, _, name = test.partition("::")
            path = ROOT / file
            if not path.is_file() or name not in functions_in(path):
                missing.append(f"{fault.name}: {test}")
    assert missing == []


def test_every_fault_is_answered():
    unanswered = [
        fault.name
        for fault in read_faults()
        if not fault.name
        or not fault.area
        or not (fault.tests or fault.why_not)
        or (fault.tests and not (fault.how and fault.holds))
    ]
    assert unanswered == []


def test_no_line_stands_there_twice():
    names = [fault.name for fault in read_faults()]
    assert len(names) == len(set(names))
    assert len(names) > 140
    for fault in read_faults():
        assert len(fault.tests) == len(set(fault.tests)), fault.name


def test_every_test_of_a_fault_is_listed():
    """A fault that is tested and not told is one that somebody will test again."""
    named = {test for fault in read_faults() for test in fault.tests}
    unlisted = [
        test
        for pattern in FAULTS_ONLY
        for path in sorted(ROOT.glob(pattern))
        for name in functions_in(path)
        if name.startswith("test_")
        and (test := f"{path.relative_to(ROOT).as_posix()}::{name}") not in named
    ]
    assert unlisted == []


def test_the_page_tells_every_fault():
    page = DOCUMENT.read_text(encoding="utf-8")
    assert [fault.name for fault in read_faults() if fault.name not in page] == []
    assert "NOT SHOWN" not in page


REPORT = """<?xml version="1.0"?><testsuites><testsuite>
<testcase classname="tests.faults.test_a" name="test_one[x]"><properties>
<property name="tried" value="200"/></properties></testcase>
<testcase classname="tests.faults.test_a" name="test_one[y]"/>
<testcase classname="tests.faults.test_a" name="test_two"><failure message="no"/></testcase>
<testcase classname="tests.faults.test_a" name="test_three"><skipped message="no"/></testcase>
</testsuite></testsuites>"""


@pytest.fixture
def outcomes(tmp_path):
    report = tmp_path / "report.xml"
    report.write_text(REPORT, encoding="utf-8")
    return read_outcomes([report])


def fault(*tests: str, why_not: str = "") -> Fault:
    return Fault("disk", "a | fault", "how", "holds", True, tests, why_not)


def test_tries_are_counted_and_what_failed_was_not_survived(outcomes):
    assert outcomes["tests/faults/test_a.py::test_one"] == Outcome(201, 201)
    assert outcomes["tests/faults/test_a.py::test_two"] == Outcome(1, 0)
    assert outcomes["tests/faults/test_a.py::test_three"] == Outcome(1, 0)


def test_the_page_says_what_was_not_shown(outcomes):
    good = fault("tests/faults/test_a.py::test_one")
    bad = fault("tests/faults/test_a.py::test_two", "tests/faults/test_a.py::test_gone")

    page = document([good, bad, fault(why_not="because")], outcomes)

    assert "| a \\| fault | how | holds | 201 | 201 | nothing |" in page
    assert "| a \\| fault | how | holds | 1 | 0 | NOT SHOWN |" in page
    assert "- a | fault: because" in page
    assert "Survived: 1 of 2." in page
    assert missing_in([good, bad], outcomes) == [
        "tests/faults/test_a.py::test_gone",
        "tests/faults/test_a.py::test_two",
    ]
