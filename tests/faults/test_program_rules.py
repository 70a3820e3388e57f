"""Habits that keep the file safe, read from the sources themselves."""

from __future__ import annotations

import ast
from pathlib import Path

import brewdesk

ROOT = Path(brewdesk.__file__).parent
FORKING = {"os.fork", "os.forkpty", "pty.fork", "multiprocessing"}


def names_in(path: Path) -> set[str]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    used = {ast.unparse(node) for node in ast.walk(tree) if isinstance(node, ast.Attribute)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            used |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            used.add(node.module or "")
    return used


def test_nothing_forks_a_process_that_has_the_pantry_open():
    """SQLite's files must not be carried over a fork (sqlite.org/howtocorrupt.html, 2.6)."""
    files = sorted(ROOT.rglob("*.py"))

    found = [f"{path.name}: {name}" for path in files for name in names_in(path) & FORKING]

    assert len(files) > 100
    assert found == []
