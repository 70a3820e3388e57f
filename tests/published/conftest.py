"""Reads the tables that others published; the first line of each names where it is from."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import pytest

_CASES = Path(__file__).parents[1] / "cases"


def _rows(name: str) -> list[dict[str, float]]:
    with (_CASES / name).open(encoding="utf-8", newline="") as file:
        source = file.readline()
        assert source.startswith("# "), f"{name} does not name its source"
        return [{key: float(value) for key, value in row.items()} for row in csv.DictReader(file)]


@pytest.fixture(scope="session")
def table() -> Callable[[str], list[dict[str, float]]]:
    """Rows of a table in tests/cases as numbers."""
    return _rows


@pytest.fixture(scope="session")
def weak_acids_database() -> str:
    """PHREEQC database text with the core's own constants."""
    return (_CASES / "weak_acids.dat").read_text(encoding="utf-8")
