"""The chime: played by a program of the system, off the window's thread, or not at all."""

from __future__ import annotations

import runpy
import sys
import wave
from array import array
from pathlib import Path

import pytest

from brewdesk.services import sound as sound_module
from brewdesk.services.sound import Sound

ROOT = Path(__file__).resolve().parents[2]
SOUNDS = ROOT / "resources" / "sounds"


@pytest.fixture
def player(tmp_path, monkeypatch):
    """A player program that writes down what it was asked to play."""
    folder = tmp_path / "bin"
    folder.mkdir()
    played = tmp_path / "played"
    program = folder / "paplay"
    program.write_text(f'#!/bin/sh\necho "$@" >> "{played}"\n')
    program.chmod(0o755)
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setenv("PATH", str(folder))
    return played


def samples(path: Path) -> tuple[wave._wave_params, array]:
    with wave.open(str(path)) as file:
        return file.getparams(), array("h", file.readframes(file.getnframes()))


def test_the_chime_is_played_by_the_systems_own_player(player, qtbot):
    sound = Sound(SOUNDS, is_on=lambda: True)
    assert sound.can_play()
    sound.chime()
    qtbot.waitUntil(player.is_file)
    qtbot.waitUntil(lambda: player.read_text() == f"{SOUNDS / 'chime.wav'}\n")


def test_the_setting_is_asked_each_time(player, qtbot):
    wishes = [False, True]
    sound = Sound(SOUNDS, is_on=lambda: wishes.pop(0))
    sound.chime()
    sound.chime()
    qtbot.waitUntil(player.is_file)
    qtbot.waitUntil(lambda: player.read_text().count("chime.wav") == 1)
    assert wishes == []


def test_without_a_player_or_a_file_there_is_silence_and_no_error(tmp_path, player, monkeypatch):
    assert not Sound(tmp_path, is_on=lambda: True).can_play()
    Sound(tmp_path, is_on=lambda: True).chime()
    monkeypatch.setenv("PATH", str(tmp_path / "empty"))
    silent = Sound(SOUNDS, is_on=lambda: True)
    assert not silent.can_play()
    silent.chime()
    assert not player.exists()


def test_a_player_that_has_gone_since_is_no_error(player):
    sound = Sound(SOUNDS, is_on=lambda: True)
    (player.parent / "bin" / "paplay").unlink()
    sound.chime()
    assert not player.exists()


def test_the_mac_has_its_own_player(tmp_path, monkeypatch):
    asked = []
    monkeypatch.setattr(sys, "platform", "darwin")
    monkeypatch.setattr(sound_module.shutil, "which", lambda name: asked.append(name))
    assert not Sound(SOUNDS, is_on=lambda: True).can_play()
    assert asked == ["afplay"]


def test_the_chime_is_short_gentle_and_ends_in_silence():
    params, swings = samples(SOUNDS / "chime.wav")
    assert params.nframes / params.framerate < 2.0
    assert (params.nchannels, params.sampwidth) == (1, 2)
    assert max(abs(swing) for swing in swings) <= 0.36 * 32_767
    assert max(abs(swing) for swing in swings[:5]) < 600, "it would begin with a click"
    assert max(abs(swing) for swing in swings[-200:]) < 200
    assert max(abs(swing) for swing in swings) > 0.3 * 32_767, "it would not be heard"


def test_the_script_makes_the_chime_that_is_shipped(tmp_path, monkeypatch):
    script = ROOT / "packaging" / "make_sounds.py"
    monkeypatch.setattr(sys, "argv", [str(script), str(tmp_path)])
    runpy.run_path(str(script), run_name="__main__")
    made_params, made = samples(tmp_path / "chime.wav")
    shipped_params, shipped = samples(SOUNDS / "chime.wav")
    assert made_params == shipped_params
    # Another machine's sine may differ in the last place.
    assert max(abs(a - b) for a, b in zip(made, shipped, strict=True)) <= 1
