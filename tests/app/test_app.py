"""The start itself: what happens when it goes wrong before there is a window."""

from __future__ import annotations

import pytest

from brewdesk import app as program
from brewdesk import faults


def test_a_mistake_before_the_window_is_there_is_in_the_log(qapp, tmp_path, monkeypatch, error_log):
    error_log.expect("the program could not go on")

    def trip(*_args):
        raise ValueError("the jar is not round")

    monkeypatch.setattr(program, "_run", trip)
    with pytest.raises(ValueError, match="not round"):
        program.main(["--data-dir", str(tmp_path)])

    text = (tmp_path / "state" / "brewdesk.log").read_text(encoding="utf-8")
    assert "Traceback" in text
    assert "the jar is not round" in text


def test_a_log_that_cannot_be_written_keeps_nobody_out(tmp_path):
    (tmp_path / "state").write_text("a file where the folder should be", encoding="utf-8")
    assert faults.start_log(tmp_path / "state") is None
    faults.stop_log()
