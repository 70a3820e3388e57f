"""One program per store, proven with a second process."""

from __future__ import annotations

import signal
import subprocess
import sys
from pathlib import Path

from brewdesk.instance import Instance

HOLDER = """
import sys
from pathlib import Path
from PySide6.QtCore import QCoreApplication
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
