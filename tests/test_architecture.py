"""The arrows between the layers, checked in the source itself.

``culturecore <- store <- services <- models <- widgets <- bootstrap, app``: who stands left
never imports what stands right of it.
"""

from __future__ import annotations

import ast
import json
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
SOURCE_ROOTS = (ROOT, ROOT / "shared")
# Alembic runs this file itself, inside a context of its own; nobody imports it.
RUN_BY_ALEMBIC = ROOT / "brewdesk" / "store" / "migrations" / "env.py"
# They import jeepney, which is installed on Linux alone.
SPEAKS_DBUS = {
    "brewdesk.services.notices.freedesktop",
    "brewdesk.services.notices.session_bus",
}
CLOCK = "brewdesk.services.clock"

TOP_LEVEL = {
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "pyproject.toml",
    "brewdesk",
    "packaging",
    "resources",
    "shared",
    "tests",
}
MADE_BY_BUILDS = {"build", "dist"}  # ignored by git


@dataclass(frozen=True)
class Layer:
    """A package, and the only modules that it may import besides the standard library."""

    package: str
    may_import: tuple[str, ...]


LAYERS = (
    Layer("culturecore", ("culturecore", "numpy")),
    Layer("brewdesk.paths", ("platformdirs",)),
    Layer("brewdesk.store", ("brewdesk.store", "culturecore", "sqlalchemy", "alembic", "psycopg")),
    Layer(
        "brewdesk.services",
        (
            "brewdesk.services",
            "brewdesk.store",
            "culturecore",
            "PySide6.QtCore",
            "jeepney",
            "segno",
            "numpy",
        ),
    ),
    Layer(
        "brewdesk.models",
        (
            "brewdesk.models",
            "brewdesk.services",
            "PySide6.QtCore",
            "PySide6.QtGui",
            "PySide6.QtWidgets",
        ),
    ),
    Layer(
        "brewdesk.printing",
        (
            "brewdesk.printing",
            "brewdesk.services",
            "brewdesk.paths",
            "PySide6.QtCore",
            "PySide6.QtGui",
            "PySide6.QtPrintSupport",
            "segno",
        ),
    ),
    Layer(
        "brewdesk.widgets",
        (
            "brewdesk.widgets",
            "brewdesk.models",
            "brewdesk.printing",
            "brewdesk.services",
            "brewdesk.paths",
            "brewdesk.__version__",
            "PySide6.QtCore",
            "PySide6.QtGui",
            "PySide6.QtWidgets",
            "PySide6.QtSvg",
            "PySide6.QtSvgWidgets",
            "PySide6.QtPrintSupport",
            "pyqtgraph",
            "numpy",
        ),
    ),
)
# One module each that may import one thing more.
ALSO_ALLOWED = {
    "culturecore.units": ("pint",),
    "brewdesk.services.calendarfile": ("icalendar",),
    "brewdesk.services.jobs": ("shiboken6",),
}
# The modules (with what lies in them) that alone may import the name on the left.
ONLY_IMPORTERS = {
    "PySide6.QtNetwork": ("brewdesk.instance",),
    "PySide6.QtSql": (),
    "pint": ("culturecore.units",),
    "jeepney": ("brewdesk.services.notices",),
    "icalendar": ("brewdesk.services.calendarfile",),
}
READS_THE_TIME = re.compile(
    r"(datetime|date)\.(now|utcnow|today)"
    r"|time\.(time|time_ns|monotonic|monotonic_ns|localtime|gmtime)"
    r"|QDateTime\.(currentDateTime|currentDateTimeUtc|currentMSecsSinceEpoch|currentSecsSinceEpoch)"
    r"|(QDate|QTime)\.(currentDate|currentTime)"
)


def source_files() -> list[Path]:
    """Return every module of the program and its core."""
    return sorted((*ROOT.glob("brewdesk/**/*.py"), *ROOT.glob("shared/culturecore/**/*.py")))


def module_name(path: Path) -> str:
    """Return the dotted name under which ``path`` is imported."""
    root = ROOT / "shared" if path.is_relative_to(ROOT / "shared") else ROOT
    parts = list(path.relative_to(root).with_suffix("").parts)
    if parts[-1] == "__init__":
        parts.pop()
    return ".".join(parts)


@cache
def syntax_of(path: Path) -> ast.Module:
    """Return the syntax tree of the file at ``path``."""
    return ast.parse(path.read_text(encoding="utf-8"))


def importable_modules() -> list[str]:
    """Return the names of all modules that can be imported on this system."""
    names = [
        module_name(path)
        for path in source_files()
        if path != RUN_BY_ALEMBIC and path.name != "__main__.py"
    ]
    return [name for name in names if sys.platform == "linux" or name not in SPEAKS_DBUS]


def is_within(name: str, package: str) -> bool:
    """Say whether ``name`` is ``package`` or lies in it."""
    return name == package or name.startswith(f"{package}.")


def imported_names(tree: ast.AST, module: str, *, is_package: bool) -> Iterator[str]:
    """Yield the full name of everything imported anywhere in the file, also inside functions.

    ``from PySide6 import QtCore`` yields ``PySide6.QtCore``.
    """
    home = module.split(".") if is_package else module.split(".")[:-1]
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = node.module or ""
            if node.level:
                above = home[: len(home) - node.level + 1]
                base = ".".join((*above, base)) if base else ".".join(above)
            yield from (f"{base}.{alias.name}" for alias in node.names)


@cache
def imports_of(path: Path) -> frozenset[str]:
    """Return the full names that the module at ``path`` imports."""
    tree = syntax_of(path)
    names = imported_names(tree, module_name(path), is_package=path.name == "__init__.py")
    return frozenset(names) - {"__future__.annotations"}


def forbidden_imports(path: Path) -> list[str]:
    """Return what the module at ``path`` imports against the rules."""
    module = module_name(path)
    complaints = [
        f"{module} imports {name}"
        for name in imports_of(path)
        for package, importers in ONLY_IMPORTERS.items()
        if is_within(name, package) and not any(is_within(module, each) for each in importers)
    ]
    layer = next((each for each in LAYERS if is_within(module, each.package)), None)
    if layer is None:
        return complaints
    allowed = (*layer.may_import, *ALSO_ALLOWED.get(module, ()))
    complaints += [
        f"{module} imports {name}"
        for name in imports_of(path)
        if name.split(".")[0] not in sys.stdlib_module_names
        and not any(is_within(name, package) for package in allowed)
    ]
    return complaints


def in_bare_process(script: str, *arguments: str, folder: Path) -> subprocess.CompletedProcess[str]:
    """Run ``script`` in a Python of its own whose home and working folder are ``folder``."""
    folders = ("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME")
    environment = {
        **os.environ,
        **dict.fromkeys(folders, str(folder)),
        "PYTHONPATH": os.pathsep.join(str(root) for root in SOURCE_ROOTS),
        "PYTHONDONTWRITEBYTECODE": "1",
    }
    return subprocess.run(
        [sys.executable, "-W", "error", "-c", script, *arguments],
        cwd=folder,
        env=environment,
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )


def test_every_import_follows_the_arrows():
    complaints = [each for path in source_files() for each in forbidden_imports(path)]

    assert not complaints, "\n".join(sorted(set(complaints)))


@pytest.mark.parametrize(
    ("module", "line", "name"),
    [
        ("culturecore.acidbase", "import sqlalchemy", "sqlalchemy"),
        ("culturecore.acidbase", "def f():\n    import pint", "pint"),
        ("brewdesk.store.engine", "from PySide6 import QtCore", "PySide6.QtCore"),
        ("brewdesk.services.shelf", "from PySide6.QtGui import QColor", "PySide6.QtGui.QColor"),
        ("brewdesk.widgets.page", "from ..store import records", "brewdesk.store.records"),
        ("brewdesk.widgets.page", "from culturecore.stages import TeaKind", "culturecore.stages"),
        ("brewdesk.models.jars", "from PySide6.QtSql import QSqlQuery", "PySide6.QtSql.QSqlQuery"),
        ("brewdesk.app", "from PySide6 import QtNetwork", "PySide6.QtNetwork"),
    ],
)
def test_an_import_against_the_arrows_is_seen(tmp_path, monkeypatch, module, line, name):
    monkeypatch.setattr(sys.modules[__name__], "ROOT", tmp_path)
    root = tmp_path / "shared" if module.startswith("culturecore") else tmp_path
    path = root.joinpath(*module.split(".")).with_suffix(".py")
    path.parent.mkdir(parents=True)
    path.write_text(f"{line}\n", encoding="utf-8")

    complaints = forbidden_imports(path)

    assert any(f"{module} imports {name}" in complaint for complaint in complaints)


def test_only_the_clock_reads_the_time():
    readers = [
        f"{module_name(path)}:{node.lineno} {ast.unparse(node)}"
        for path in source_files()
        if module_name(path) != CLOCK
        for node in ast.walk(syntax_of(path))
        if isinstance(node, ast.Attribute) and READS_THE_TIME.fullmatch(ast.unparse(node))
    ]
    by_name = [
        f"{module_name(path)} imports {name}"
        for path in source_files()
        if module_name(path) != CLOCK
        for name in imports_of(path)
        if READS_THE_TIME.fullmatch(name)
    ]

    assert not readers + by_name, "\n".join(readers + by_name)


def test_importing_any_module_makes_no_file_no_application_and_no_thread(tmp_path):
    modules = importable_modules()
    script = """
import importlib, json, sys, threading
for name in json.loads(sys.argv[1]):
    importlib.import_module(name)
from PySide6.QtCore import QCoreApplication
assert QCoreApplication.instance() is None, "an application was made"
assert threading.active_count() == 1, threading.enumerate()
"""

    result = in_bare_process(script, json.dumps(modules), folder=tmp_path)

    assert result.returncode == 0, result.stderr
    assert result.stdout + result.stderr == ""
    assert list(tmp_path.rglob("*")) == []


@pytest.mark.parametrize(
    ("package", "blocked"),
    [
        ("culturecore", "PySide6"),
        ("brewdesk.store", "PySide6"),
        ("brewdesk.services", "PySide6.QtGui"),
        ("brewdesk.services", "PySide6.QtWidgets"),
    ],
)
def test_a_layer_works_where_what_it_must_not_know_is_absent(tmp_path, package, blocked):
    modules = [name for name in importable_modules() if is_within(name, package)]
    script = """
import importlib, json, sys
sys.modules[sys.argv[2]] = None
for name in json.loads(sys.argv[1]):
    importlib.import_module(name)
"""

    result = in_bare_process(script, json.dumps(modules), blocked, folder=tmp_path)

    assert result.returncode == 0, result.stderr


@pytest.mark.parametrize("slow", ["numpy", "pint", "pyqtgraph", "alembic", "icalendar"])
def test_the_program_starts_without(tmp_path, slow):
    script = "import sys, brewdesk.app; sys.exit(sys.argv[1] in sys.modules)"

    result = in_bare_process(script, slow, folder=tmp_path)

    assert result.returncode == 0, result.stderr or f"importing brewdesk.app imports {slow}"


def test_the_top_level_holds_what_was_agreed():
    entries = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")}

    assert entries - MADE_BY_BUILDS == TOP_LEVEL


def test_the_packaging_folder_does_not_hide_the_library_of_that_name():
    """An ``__init__.py`` there would shadow the ``packaging`` that pytest imports."""
    assert not (ROOT / "packaging" / "__init__.py").exists()


def test_every_exemption_from_a_checker_names_its_rule():
    bare = re.compile(r"#\s*(noqa(?!:\s*[A-Z])|type:\s*ignore(?!\[))")
    own = Path(__file__)

    found = [
        f"{path.relative_to(ROOT)}:{number}"
        for folder in ("brewdesk", "shared", "packaging", "tests")
        for path in sorted(ROOT.joinpath(folder).rglob("*.py"))
        if path != own
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1)
        if bare.search(line)
    ]

    assert not found


def test_no_module_is_a_drawer_for_odds_and_ends():
    drawers = {"utils", "util", "helpers", "manager", "common", "misc"}

    assert [path for path in source_files() if path.stem in drawers] == []


def test_no_test_sleeps_skips_or_expects_to_fail():
    shirking = re.compile(
        r"time\.sleep|QTest\.qSleep|QThread\.(sleep|msleep)|qtbot\.wait"
        r"|pytest\.(skip|xfail|importorskip)|pytest\.mark\.(skip|skipif|xfail)"
    )

    found = [
        f"{path.relative_to(ROOT)}:{node.lineno} {ast.unparse(node)}"
        for path in sorted(ROOT.glob("tests/**/*.py"))
        for node in ast.walk(syntax_of(path))
        if isinstance(node, ast.Attribute) and shirking.fullmatch(ast.unparse(node))
    ]

    assert not found, "\n".join(found)
