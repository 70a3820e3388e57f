"""From the command line to the open window."""

from __future__ import annotations

import argparse
import gc
import logging
import os
import sys
from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QProcess
from PySide6.QtWidgets import QApplication

from brewdesk import __version__, faults, paths
from brewdesk.language import Speech

if TYPE_CHECKING:
    from brewdesk.bootstrap import Program
    from brewdesk.instance import Instance
    from brewdesk.services.autostart import SessionStart
    from brewdesk.services.records import StoreTrouble
    from brewdesk.store.records import BackupInfo

log = logging.getLogger(__name__)

EXIT_OK = 0
EXIT_TROUBLE = 2


@dataclass(frozen=True, slots=True)
class Start:
    """What one start of the program goes by besides its command line."""

    server: str  # the address of a shared pantry, or ""
    speech: Speech


@dataclass(frozen=True, slots=True)
class LastRun:
    """How the last run ended, as far as the next one has to tell; ``said`` is for the bar."""

    ended_badly: bool = False
    broke_down: str = ""  # what was written down meanwhile
    said: str = ""


def parse(argv: list[str]) -> argparse.Namespace:
    """Read the command line."""
    parser = argparse.ArgumentParser(
        prog="brewdesk",
        description="A window for the pantry: plan, brew, watch and remember.",
        epilog="'brewdesk due' prints what is due in a terminal; 'brewdesk move-store' moves a "
        "pantry to a server or back. Each says more with --help.",
    )
    parser.add_argument("--store", type=Path, help="open this pantry file instead of your own")
    parser.add_argument("--demo", action="store_true", help="open an invented pantry to look at")
    parser.add_argument("--data-dir", type=Path, help="keep everything below this folder")
    parser.add_argument(
        "--in-background", action="store_true", help="open no window, only the tray and notices"
    )
    parser.add_argument("--version", action="version", version=f"brewdesk {__version__}")
    return parser.parse_args(argv)


def server_of(options: argparse.Namespace, variables: Mapping[str, str]) -> str:
    """Give the address of a shared pantry; "" if there is none, or a file was asked for."""
    if options.demo or options.store is not None:
        return ""
    return variables.get(paths.SERVER_VARIABLE, "").strip()


def main(argv: list[str]) -> int:
    """Run the program; returns its exit code."""
    options = parse(argv)
    folders = paths.folders(options.data_dir)
    server = server_of(options, os.environ)
    own = folders.shared_store if server else folders.store
    store_path = options.store or (folders.demo_store if options.demo else own)
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)  # another kind of application cannot be here
    app.setApplicationName("brewdesk")
    app.setApplicationVersion(__version__)
    app.setDesktopFileName("brewdesk")
    app.setQuitOnLastWindowClosed(False)
    faults.start_log(folders.state)
    start = Start(server=server, speech=Speech(app))
    start.speech.speak("system")  # for what is said before the pantry is open
    try:
        return _run(app, store_path, options, folders.state, start)
    except Exception:
        # Started from a menu, nobody sees the error stream.
        log.exception("the program could not go on")
        raise
    finally:
        faults.stop_log()


def _run(
    app: QApplication,
    store_path: Path,
    options: argparse.Namespace,
    state: Path,
    start: Start,
) -> int:
    from brewdesk.instance import Instance

    try:
        instance = Instance(store_path)
    except OSError as error:
        from brewdesk.services.wording.starting import no_folder_words

        log.warning("the pantry's folder cannot be made: %s", error)
        _say(app, no_folder_words(str(store_path.parent), _who_chose(options)))
        return EXIT_TROUBLE
    if not instance.take():
        # Started with the session while open already: nobody asked to see the window.
        if options.in_background or instance.call_first():
            return EXIT_OK
        _say(app, _taken_words(instance))
        return EXIT_TROUBLE
    mark = faults.RunMark(state, store_path)
    last = LastRun(ended_badly=mark.set(), broke_down=faults.take_breakdown(state, store_path))
    crash_log = faults.start_crash_log(state, store_path)
    try:
        code = _open_until_left(app, instance, store_path, options, start, last)
    except Exception as error:
        faults.note_end(crash_log, error)
        raise
    finally:
        faults.stop_crash_log(crash_log)
        instance.release()
    mark.clear()
    return code


def _open_until_left(
    app: QApplication,
    instance: Instance,
    store_path: Path,
    options: argparse.Namespace,
    start: Start,
    last: LastRun,
) -> int:
    """Open the pantry; go back to a backup and open it again as often as the maker wants."""
    said = ""
    if last.ended_badly:
        from brewdesk.services.wording.starting import ended_badly_words

        said = ended_badly_words()
    while True:
        wanted: list[BackupInfo] = []
        code = _open(app, instance, store_path, options, start, wanted, replace(last, said=said))
        if not wanted:
            return code
        last = LastRun()
        said = _go_back(store_path, wanted[-1])


def _go_back(store_path: Path, info: BackupInfo) -> str:
    """Put a backup in the pantry's place, and say what came of it."""
    from brewdesk.recovery import put_back
    from brewdesk.services.clock import SystemClock
    from brewdesk.services.records import StoreTrouble
    from brewdesk.services.wording.problems import trouble_words
    from brewdesk.services.wording.starting import went_back_words

    clock = SystemClock()
    try:
        aside = put_back(store_path, info, now=clock.now())
    except StoreTrouble as trouble:
        log.warning("the backup could not be put back: %s", trouble)
        return trouble_words(trouble)
    return went_back_words(info.made_at, str(aside or ""), clock.zone())


def _open(
    app: QApplication,
    instance: Instance,
    store_path: Path,
    options: argparse.Namespace,
    start: Start,
    wanted: list[BackupInfo],
    last: LastRun,
) -> int:
    """Open the pantry until it is left; ``wanted`` takes the backup to go back to, if any."""
    from brewdesk.crashwatch import CrashWatch
    from brewdesk.endsignals import EndSignals

    if start.server:
        program = _open_shared(app, store_path, options, start)
    else:
        program = _open_program(app, store_path, options, start)
    if program is None:
        return EXIT_TROUBLE
    signals = EndSignals()
    signals.end_wanted.connect(program.leave)
    watch = CrashWatch(program.desk, program.window)
    restore = faults.install(program.window.tell_fault, program.window.tell_trouble, watch.note)
    instance.raise_wanted.connect(program.window.bring_forward)
    program.left.connect(app.quit)
    # What the imports made stays: looking through it for garbage costs a frame each time.
    program.has_begun.connect(gc.freeze)
    program.has_settled.connect(gc.freeze)
    program.demo_wanted.connect(lambda: open_demo(options))
    program.store_wanted.connect(open_store)
    program.restore_wanted.connect(wanted.append)
    app.commitDataRequest.connect(lambda _manager: None)
    app.aboutToQuit.connect(program.leave)
    program.start(in_background=options.in_background)
    if last.said:
        program.window.notice.say(last.said, "inform")
    watch.tell_breakdown(last.broke_down)
    try:
        return app.exec()
    finally:
        signals.release()
        restore()


def _open_program(
    app: QApplication, store_path: Path, options: argparse.Namespace, start: Start
) -> Program | None:
    """Open the pantry; if that fails, ask what to do, and try once more."""
    from brewdesk.services.clock import SystemClock
    from brewdesk.services.records import StoreTrouble

    for _ in range(2):
        try:
            gone = None if options.demo else _gone(store_path)
            if gone is not None:
                raise gone
            return _program(app, store_path, options, start)
        except StoreTrouble as trouble:
            from brewdesk import recovery

            log.warning("the store could not be opened: %s", trouble.code)
            if not recovery.ask(app, store_path, trouble, SystemClock()):
                return None
            if not store_path.exists():  # and the maker wants to begin anew
                return _program(app, store_path, options, start)
    return None


def _open_shared(
    app: QApplication, store_path: Path, options: argparse.Namespace, start: Start
) -> Program | None:
    """Open the pantry on a server; if that fails, say why."""
    from brewdesk.services.records import StoreTrouble
    from brewdesk.services.wording.problems import trouble_words

    try:
        return _program(app, store_path, options, start)
    except StoreTrouble as trouble:
        log.warning("the shared store could not be opened: %s", trouble.code)
        _say(app, trouble_words(trouble))
        return None


def _program(
    app: QApplication, store_path: Path, options: argparse.Namespace, start: Start
) -> Program:
    from brewdesk.bootstrap import Program

    return Program(
        app,
        store_path,
        is_demo=options.demo,
        server=start.server,
        speech=start.speech,
        session_start=session_start(store_path, options),
    )


def session_start(store_path: Path, options: argparse.Namespace) -> SessionStart | None:
    """Say how this pantry is opened with the session; never the invented one."""
    from brewdesk.services.autostart import SessionStart, autostart_of, name_for, own_launch

    if options.demo:
        return None
    words: list[str] = []
    if options.store is not None:
        words += ["--store", str(options.store.absolute())]
    if options.data_dir is not None:
        words += ["--data-dir", str(options.data_dir.absolute())]
    launch = own_launch(
        words,
        executable=sys.executable,
        started_as=sys.argv[0],
        is_frozen=bool(getattr(sys, "frozen", False)),
        variables=os.environ,
    )
    name = name_for(store_path, paths.folders().store)
    return SessionStart(autostart_of(sys.platform, Path.home(), os.environ, name), launch)


def _gone(store_path: Path) -> StoreTrouble | None:
    """A store that is missing though it was backed up: asked about, never begun anew unasked."""
    if store_path.exists():
        return None
    from brewdesk.recovery import missing_with_backups

    return missing_with_backups(store_path)


def open_demo(options: argparse.Namespace) -> bool:
    """Start a second program with the invented pantry; yours stays open."""
    words = ["--demo"]
    if options.data_dir is not None:
        words += ["--data-dir", str(options.data_dir)]
    return _start_second(words)


def open_store(path: Path) -> bool:
    """Start a second program with another pantry; yours stays open."""
    return _start_second(["--store", str(path)])


def _start_second(words: list[str]) -> bool:
    if getattr(sys, "frozen", False):
        return bool(QProcess.startDetached(sys.executable, words)[0])
    return bool(QProcess.startDetached(sys.executable, ["-m", "brewdesk", *words], os.getcwd())[0])


def _who_chose(options: argparse.Namespace) -> str:
    """Name what decided where the pantry is, for a maker who has to change it."""
    if options.store is not None:
        return "--store"
    if options.data_dir is not None:
        return "--data-dir"
    return "XDG_DATA_HOME" if os.environ.get("XDG_DATA_HOME") else ""


def _taken_words(instance: Instance) -> str:
    from brewdesk.services.wording.starting import taken_elsewhere_words, taken_words

    host = instance.other_computer()
    return taken_elsewhere_words(host, str(instance.lock_path)) if host else taken_words()


def _say(app: QApplication, text: str) -> None:
    """Show one message where there is no window yet."""
    from PySide6.QtCore import Qt
    from PySide6.QtWidgets import QMessageBox

    box = QMessageBox()
    box.setWindowTitle("brewdesk")
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setText(text)
    box.setStandardButtons(QMessageBox.StandardButton.Close)
    box.finished.connect(app.quit)
    box.open()
    app.exec()
