"""The commands: run, test, check, smoke, doctor. Each returns an exit code."""

from __future__ import annotations

import os
import platform
import subprocess
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from devtool import needs
from devtool.display import virtual_screen
from devtool.environment import DEV_LOCK, RUN_LOCK, Environment
from devtool.faulttable import (
    DOCUMENT,
    OUTCOMES,
    document,
    missing_in,
    read_faults,
    read_outcomes,
)
from devtool.speech import ROOT, CannotGoOn, say, say_command

_NO_TESTS_FOUND = 5  # pytest's exit code
FUZZER = "atheris==3.0.0"  # in no lock: it is for one command, and not for every system
_MOST_PROCESSES = 4  # each holds a window and its libraries, some 400 MB
ON_LINUX = sys.platform.startswith("linux")


@dataclass(frozen=True)
class Options:
    """What was asked for before the command's name."""

    install_system: bool
    fresh: bool
    use_uv: bool


def screen_needs(variables: Mapping[str, str]) -> tuple[needs.Need, ...]:
    """Return what the screen named by the environment asks for.

    Raises
    ------
    CannotGoOn
        If there is no screen, and no other Qt platform was chosen.
    """
    if not ON_LINUX or variables.get("QT_QPA_PLATFORM"):
        return ()
    if variables.get("DISPLAY"):
        return needs.SCREEN
    if variables.get("WAYLAND_DISPLAY"):
        return needs.WAYLAND
    raise CannotGoOn(
        "There is no screen here: neither DISPLAY nor WAYLAND_DISPLAY is set. "
        "Start the program from a desktop session."
    )


def run(options: Options, arguments: Sequence[str]) -> int:
    """Start the program on this machine's screen; ``run due`` and ``run move-store`` need none."""
    if arguments[:1] not in (["due"], ["move-store"]):
        needs.require(needs.OFFSCREEN, install=options.install_system)
        needs.require(screen_needs(os.environ), install=options.install_system)
    environment = _prepared(options, RUN_LOCK)
    command = [str(environment.python), "-m", "brewdesk", *arguments]
    if os.name == "posix":
        os.execve(command[0], command, environment.variables())  # signals reach the program itself
    return subprocess.call(command, env=environment.variables())


def test(options: Options, arguments: Sequence[str]) -> int:
    """Run the tests without a window, then those marked ``screen`` on an X server of their own."""
    return _tests(options, arguments, keeps_outcomes=not arguments)


def _tests(options: Options, arguments: Sequence[str], *, keeps_outcomes: bool) -> int:
    needs.require(
        (*needs.OFFSCREEN, *needs.SCREEN, *needs.TEST_PROGRAMS), install=options.install_system
    )
    environment = _prepared(options, DEV_LOCK)
    say("Tests without a window")
    windowless = _pytest(
        environment,
        [
            *("-m", "not screen"),
            *_side_by_side(arguments),
            *_report("windowless", is_kept=keeps_outcomes),
            *arguments,
        ],
        qt_platform="offscreen",
    )
    if not ON_LINUX:
        say(
            "The tests on a real screen were left out: they need an X server, so they run on Linux."
        )
        return windowless
    say("Tests on a real screen, under Xvfb")
    with virtual_screen() as display:
        on_screen = _pytest(
            environment,
            ["-m", "screen", *_report("screen", is_kept=keeps_outcomes), *arguments],
            qt_platform="xcb",
            DISPLAY=display,
        )
    codes = {windowless, on_screen}
    if arguments and codes != {_NO_TESTS_FOUND}:
        codes.discard(_NO_TESTS_FOUND)  # a selection may lie wholly in one of the two parts
    return max(codes)


def faults(options: Options, arguments: Sequence[str]) -> int:
    """Write the page of faults from the table and from what its tests do.

    ``--of-last-test`` takes the outcomes of the last whole run of the tests instead of running
    those of the table anew; ``--check`` writes nothing, but fails if the page is another.
    """
    if not set(arguments) <= {"--check", "--of-last-test"}:
        raise CannotGoOn("'faults' takes --check and --of-last-test.")
    table = read_faults()
    if "--of-last-test" not in arguments:
        named = sorted({test for fault in table for test in fault.tests})
        _tests(options, named, keeps_outcomes=True)
    outcomes = read_outcomes(sorted(OUTCOMES.glob("*.xml")))
    bad = missing_in(table, outcomes)
    for name in bad:
        say(f"Not tried, or not survived: {name}")
    page = document(table, outcomes)
    if "--check" in arguments:
        is_same = DOCUMENT.exists() and DOCUMENT.read_text(encoding="utf-8") == page
        if not is_same:
            say(f"{DOCUMENT.relative_to(ROOT)} is not what came out: run 'dev.py faults'.")
        return 0 if is_same and not bad else 1
    DOCUMENT.parent.mkdir(parents=True, exist_ok=True)
    DOCUMENT.write_text(page, encoding="utf-8")
    say(f"Written: {DOCUMENT.relative_to(ROOT)}")
    return 1 if bad else 0


def _report(name: str, *, is_kept: bool) -> list[str]:
    """Have the outcomes of a run kept, for the page of faults."""
    if not is_kept:
        return []
    report = OUTCOMES / f"{name}.xml"
    report.unlink(missing_ok=True)
    return [f"--junitxml={report}"]


def _side_by_side(arguments: Sequence[str]) -> list[str]:
    """Spread whole files over the processors, unless a part was asked for.

    A part is often wanted to look into it, and then one process says more.
    """
    processors = min(os.cpu_count() or 1, _MOST_PROCESSES)
    if arguments or processors == 1:
        return []
    return ["-n", str(processors), "--dist", "loadfile", "--no-loadscope-reorder"]


def check(options: Options, arguments: Sequence[str]) -> int:
    """Check format, lint, types and the import arrows; all of them, then say which failed."""
    _no_arguments("check", arguments)
    needs.require(needs.OFFSCREEN, install=options.install_system)
    environment = _prepared(options, DEV_LOCK)
    python = str(environment.python)
    failed = []
    for title, command in (
        ("format", [python, "-m", "ruff", "format", "--check", "."]),
        ("lint", [python, "-m", "ruff", "check", "."]),
        ("types", [python, "-m", "mypy"]),
    ):
        if _call(command, environment.variables()) != 0:
            failed.append(title)
    if _pytest(environment, ["-q", "tests/test_architecture.py"], qt_platform="offscreen") != 0:
        failed.append("architecture")
    say(f"Failed: {', '.join(failed)}" if failed else "Format, lint, types, architecture: good")
    return 1 if failed else 0


def smoke(options: Options, arguments: Sequence[str]) -> int:
    """Open the program in a real window, look at its pixels, and close it as a person would."""
    if not ON_LINUX:
        say("The smoke run was left out: it needs an X server, and so Linux.")
        return 0
    needs.require(
        (*needs.OFFSCREEN, *needs.SCREEN, *needs.SMOKE_PROGRAMS), install=options.install_system
    )
    environment = _prepared(options, RUN_LOCK)
    script = str(ROOT / "packaging" / "smoke.py")
    return _call([str(environment.python), script, *arguments], environment.variables())


def screenshots(options: Options, arguments: Sequence[str]) -> int:
    """Take the README's pictures anew; they need no screen."""
    needs.require(needs.OFFSCREEN, install=options.install_system)
    environment = _prepared(options, RUN_LOCK)
    script = str(ROOT / "packaging" / "screenshots.py")
    return _call([str(environment.python), script, *arguments], environment.variables())


def evaluate(options: Options, arguments: Sequence[str]) -> int:
    """Measure the forecast on a folder of series; only the report goes to standard output."""
    if len(arguments) != 1 or not Path(arguments[0]).is_dir():
        raise CannotGoOn("'evaluate' takes one folder with CSV files of series.")
    folder = str(Path(arguments[0]).resolve())
    with _output_kept_clean():
        environment = _prepared(options, DEV_LOCK)
    command = [str(environment.python), str(ROOT / "packaging" / "evaluate.py"), folder]
    return subprocess.call(command, cwd=ROOT, env=environment.variables())


def translate(options: Options, arguments: Sequence[str]) -> int:
    """Bring the translations up to date, fill them, or check them: see ``translate.py``."""
    with _output_kept_clean():
        environment = _prepared(options, DEV_LOCK)
    command = [str(environment.python), str(ROOT / "packaging" / "translate.py"), *arguments]
    return subprocess.call(command, cwd=ROOT, env=environment.variables())


def bench_refresh(options: Options, arguments: Sequence[str]) -> int:
    """Measure how a full shelf is forecast anew; only the JSON goes to standard output."""
    return _bench("bench_refresh.py", options, arguments)


def bench_month(options: Options, arguments: Sequence[str]) -> int:
    """Measure a month with the window open; only the JSON goes to standard output."""
    return _bench("bench_month.py", options, arguments)


def fuzz(options: Options, arguments: Sequence[str]) -> int:
    """Feed the program's doors with bytes; the fuzzer is installed below ``build`` first."""
    needs.require(needs.OFFSCREEN, install=options.install_system)
    environment = _prepared(options, DEV_LOCK)
    place = ROOT / "build" / "fuzz" / FUZZER.replace("==", "-")
    if not (place / "atheris").is_dir():
        if environment.uv:
            command = [environment.uv, "pip", "install", "--python", str(environment.python)]
        else:
            command = [sys.executable, "-m", "pip", "install"]
        if _call([*command, "--no-deps", "--target", str(place), FUZZER], dict(os.environ)) != 0:
            raise CannotGoOn(
                f"{FUZZER} could not be installed: there are wheels of it for Linux and Python "
                "3.11 to 3.13 alone. 'dev.py test tests/fuzz' tries the same doors without it."
            )
    variables = environment.variables()
    variables["PYTHONPATH"] = os.pathsep.join((variables["PYTHONPATH"], str(place)))
    script = str(ROOT / "packaging" / "fuzz.py")
    return _call([str(environment.python), script, *arguments], variables)


def _bench(name: str, options: Options, arguments: Sequence[str]) -> int:
    with _output_kept_clean():
        needs.require(needs.OFFSCREEN, install=options.install_system)
        environment = _prepared(options, RUN_LOCK)
    command = [str(environment.python), str(ROOT / "packaging" / name), *arguments]
    variables = {**environment.variables(), "QT_QPA_PLATFORM": "offscreen"}
    return subprocess.call(command, cwd=ROOT, env=variables)


@contextmanager
def _output_kept_clean() -> Iterator[None]:
    """Send what is said meanwhile to standard error, also what installers print."""
    sys.stdout.flush()
    kept = os.dup(1)
    os.dup2(2, 1)
    try:
        yield
        sys.stdout.flush()
    finally:
        os.dup2(kept, 1)
        os.close(kept)


def doctor(options: Options, arguments: Sequence[str]) -> int:
    """Say what is here and what is missing; change nothing."""
    _no_arguments("doctor", arguments)
    environment = Environment(use_uv=options.use_uv)
    say(f"System       {platform.platform()}")
    say(f"Python       {sys.version.split()[0]} ({sys.executable})")
    say(f"uv           {environment.uv or 'not used'}")
    for lock in (RUN_LOCK, DEV_LOCK):
        state = "ready" if environment.is_ready(lock) else "to be installed"
        say(f"Packages     {lock.name}: {state}")
    if not ON_LINUX:
        return 0
    say(f"Screen       {os.environ.get('DISPLAY') or os.environ.get('WAYLAND_DISPLAY') or 'none'}")
    lacking: dict[str, needs.Need] = {}
    for title, group in (
        ("without a window", needs.OFFSCREEN),
        ("on a screen", needs.SCREEN),
        ("for the tests", needs.TEST_PROGRAMS),
        ("for the smoke run", needs.SMOKE_PROGRAMS),
    ):
        found = needs.missing(group)
        say(f"Needed {title}: {', '.join(need.name for need in found) or 'nothing'} missing")
        lacking.update({need.name: need for need in found})
    command = needs.install_command(lacking.values()) if lacking else None
    if command:
        say(f"Install with: {' '.join(command)}")
    return 1 if lacking else 0


def _prepared(options: Options, lock: Path) -> Environment:
    environment = Environment(use_uv=options.use_uv)
    environment.prepare(lock, fresh=options.fresh, install_system=options.install_system)
    return environment


def _pytest(
    environment: Environment, arguments: Sequence[str], *, qt_platform: str, **variables: str
) -> int:
    settings = {**environment.variables(), "QT_QPA_PLATFORM": qt_platform, **variables}
    return _call([str(environment.python), "-m", "pytest", *arguments], settings)


def _call(command: Sequence[str], variables: dict[str, str]) -> int:
    say_command(command)
    return subprocess.call(command, cwd=ROOT, env=variables)


def _no_arguments(name: str, arguments: Sequence[str]) -> None:
    if arguments:
        raise CannotGoOn(f"'{name}' takes no arguments, but got: {' '.join(arguments)}")
