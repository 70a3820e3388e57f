"""One program per store, proven with a second process."""

from __future__ import annotations

import signal
import subprocess
import sys
from pathlib import Path

from PySide6.QtCore import QLockFile

from brewdesk.instance import Instance

HOLDER = """
import sys
from pathlib import Path
from PySide6.QtCore import QCoreApplication
from PySide6.QtCore import QLockFile

from brewdesk.instance import Instance
app = QCoreApplication([])
held = Instance(Path(sys.argv[1]))
print("taken" if held.take() else "refused", flush=True)
held.raise_wanted.connect(lambda: print("raised", flush=True))
app.exec()
"""


def start_holder(store: Path) -> subprocess.Popen[str]:
    root = Path(__file__).resolve().parents[2]
    return subprocess.Popen(
        [sys.executable, "-c", HOLDER, str(store)],
        stdout=subprocess.PIPE,
        text=True,
        cwd=root,
        env={**__import__("os").environ, "PYTHONPATH": f"{root}:{root / 'shared'}"},
    )


def test_a_second_start_is_refused_and_raises_the_first(qapp, tmp_path):
    store = tmp_path / "pantry.brewdesk"
    first = start_holder(store)
    try:
        assert first.stdout.readline() == "taken\n"
        second = Instance(store)
        assert not second.take()
        assert second.call_first()
        assert first.stdout.readline() == "raised\n"
    finally:
        first.kill()
        first.communicate()


def test_the_lock_is_free_again_after_the_holder_was_killed(qapp, tmp_path):
    store = tmp_path / "pantry.brewdesk"
    first = start_holder(store)
    assert first.stdout.readline() == "taken\n"
    first.send_signal(signal.SIGKILL)
    first.communicate()
    second = Instance(store)
    assert second.take()
    second.release()


def test_two_stores_do_not_shut_each_other_out(qapp, tmp_path):
    one, other = Instance(tmp_path / "one.brewdesk"), Instance(tmp_path / "other.brewdesk")
    assert one.take()
    assert other.take()
    one.release()
    other.release()


def test_nobody_answers_where_nothing_runs(qapp, tmp_path):
    assert not Instance(tmp_path / "pantry.brewdesk").call_first()


def test_one_store_is_one_by_whatever_name_it_is_opened(qapp, tmp_path):
    store, link = tmp_path / "pantry.brewdesk", tmp_path / "link.brewdesk"
    store.touch()
    link.symlink_to(store)
    first = start_holder(store)
    try:
        assert first.stdout.readline() == "taken\n"
        assert not Instance(link).take()
    finally:
        first.kill()
        first.communicate()


def test_a_folder_in_which_no_lock_can_be_made_is_not_taken_for_another_program(qapp, tmp_path):
    """Nothing can be written there, so nothing can be spoilt: it is opened to look at."""

    class ShutFolder(QLockFile):
        def tryLock(self, _timeout_ms):
            return False

        def error(self):
            return QLockFile.LockError.PermissionError

    store = tmp_path / "pantry.brewdesk"
    instance = Instance(store)
    instance._lock = ShutFolder(str(store) + ".lock")
    assert instance.take()
    instance.release()
