"""Starting with the session: what the desktop is told, read back by the desktop's own tools."""

from __future__ import annotations

import json
import os
import plistlib
import select
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from brewdesk.services.autostart import (
    AutostartTrouble,
    Launch,
    LaunchAgent,
    RunKey,
    SessionStart,
    XdgAutostart,
    autostart_of,
    name_for,
    own_launch,
)
from brewdesk.services.desktopentry import entry_is_on, entry_text
from brewdesk.services.wording.autostart import autostart_trouble_words

HERE = Launch(("/opt/brewdesk/brewdesk", "--in-background"))
ODD = (
    "plain",
    "two words",
    'quote " tick ` dollar $HOME back \\ slash',
    "per % cent %f %%",
    "semi;colon|pipe&and<less>more*star?mark#hash(par)~tilde",
    "it's",
    "tab\tand\nline",
    "ümläut 茶",
    "",
    "\\n is no line break",
    "a=b",
)


class FakeRegistry:
    def __init__(self, *, refuses=False):
        self.values = {}
        self.refuses = refuses

    def get(self, name):
        return self.values.get(name)

    def put(self, name, value):
        if self.refuses:
            raise OSError("no access")
        self.values[name] = value

    def remove(self, name):
        if self.refuses:
            raise OSError("no access")
        self.values.pop(name, None)


@pytest.fixture
def folder(tmp_path):
    return tmp_path / "config" / "autostart"


@pytest.fixture(params=["linux", "darwin", "win32"])
def way(request, folder):
    """Each system's way, on a file system (or registry) of the test's own."""
    if request.param == "linux":
        return XdgAutostart(folder, "brewdesk")
    if request.param == "darwin":
        return LaunchAgent(folder, "brewdesk")
    return RunKey(FakeRegistry(), "brewdesk")


# what every system's way does


def test_it_is_off_until_it_is_switched_on(way):
    session = SessionStart(way, HERE)
    assert not session.is_on()
    session.put(True)
    assert session.is_on()
    assert way.starts(HERE)
    session.put(True)
    assert session.is_on()
    session.put(False)
    assert not session.is_on()
    session.put(False)
    assert not session.is_on()


def test_a_program_that_moved_is_followed(way):
    SessionStart(way, HERE).put(True)
    there = Launch(("/home/someone/my programs/brewdesk", "--in-background"))
    moved = SessionStart(way, there)
    assert moved.renew()
    assert way.starts(there)
    assert not moved.renew()


def test_a_start_of_the_program_switches_nothing_on(way):
    assert not SessionStart(way, HERE).renew()
    assert not way.is_on()


def test_each_pantry_has_a_switch_of_its_own(folder):
    registry = FakeRegistry()
    for make in (
        lambda name: XdgAutostart(folder, name),
        lambda name: LaunchAgent(folder, name),
        lambda name: RunKey(registry, name),
    ):
        make("brewdesk").turn_on(HERE)
        make("brewdesk-2").turn_on(HERE)
        make("brewdesk").turn_off()
        assert make("brewdesk-2").is_on()


# Linux


def test_the_file_is_what_the_desktops_own_checker_accepts(folder):
    way = XdgAutostart(folder, "brewdesk")
    for odd in ODD:
        way.turn_on(Launch((f"/opt/{odd.replace('=', '')}/brewdesk", odd, "--in-background")))
        done = subprocess.run(
            ["desktop-file-validate", str(way.path)], capture_output=True, text=True, check=False
        )
        assert (done.returncode, done.stdout + done.stderr) == (0, "")


def test_the_desktop_starts_the_very_words_that_were_meant(folder, tmp_path):
    """GLib's launcher, which shares no code with the writer, runs a program that notes them."""
    note = tmp_path / "note it"
    os.mkfifo(note)
    program = tmp_path / 'my "odd" $programs' / "brewdesk"
    program.parent.mkdir()
    program.write_text(
        f"#!{sys.executable}\n"
        "import json, os, sys\n"
        "with open(os.environ['NOTE_AT'], 'w') as file:\n"
        "    json.dump([sys.argv, os.environ.get('PYTHONPATH')], file)\n",
        encoding="utf-8",
    )
    program.chmod(0o700)
    way = XdgAutostart(folder, "brewdesk")
    way.turn_on(Launch((str(program), *ODD), (("NOTE_AT", str(note)), ("PYTHONPATH", "/a b:/c"))))
    reader = os.open(note, os.O_RDONLY | os.O_NONBLOCK)

    subprocess.run(["gio", "launch", str(way.path)], check=True, timeout=60)

    ready, _, _ = select.select([reader], [], [], 60)
    assert ready, "the program was not started"
    os.set_blocking(reader, True)
    with open(reader, encoding="utf-8") as file:
        words, variable = json.load(file)
    assert words == [str(program), *ODD]
    assert variable == "/a b:/c"


def decoded(text):
    """Undo the two rounds of escapes by the letter of the specification; not by our code."""
    value = next(line for line in text.split("\n") if line.startswith("Exec="))[5:]
    unescaped, rest = [], iter(value)
    for character in rest:
        if character == "\\":
            letter = next(rest)
            unescaped.append({"s": " ", "n": "\n", "t": "\t", "r": "\r", "\\": "\\"}[letter])
        else:
            unescaped.append(character)
    words, word, is_quoted, has_word = [], [], False, False
    rest = iter("".join(unescaped))
    for character in rest:
        if character == '"':
            is_quoted, has_word = not is_quoted, True
        elif is_quoted and character == "\\":
            word.append(next(rest))
        elif not is_quoted and character == " ":
            if has_word:
                words.append("".join(word))
            word, has_word = [], False
        elif character == "%":
            assert next(rest) == "%", "a field code"
            word.append("%")
            has_word = True
        else:
            assert is_quoted or character.isalnum() or character in "_./:=@,+-"
            word.append(character)
            has_word = True
    return [*words, "".join(word)]


_WORD = st.text(st.characters(exclude_categories=["Cs", "Cc"]) | st.sampled_from("\n\t\r"))


@given(st.lists(_WORD, min_size=1, max_size=4))
def test_any_words_come_back(words):
    text = entry_text(["/opt/x", *words], {})
    assert decoded(text) == ["/opt/x", *words]
    assert len(text.split("\n")) == 11  # no word begins a line of its own
    assert entry_is_on(text)


@pytest.mark.parametrize(
    "path", ["/opt/a=b/brewdesk", "/opt/bell\x07/brewdesk", "/opt/\udcff/brewdesk"]
)
def test_a_path_that_cannot_be_written_is_refused_and_nothing_is_left(folder, path):
    way = XdgAutostart(folder, "brewdesk")
    with pytest.raises(AutostartTrouble) as caught:
        way.turn_on(Launch((path,)))
    assert caught.value.code == "odd_path"
    assert not way.is_on()


@pytest.mark.parametrize(
    "change",
    [
        ("Terminal=false", "Terminal=false\nHidden=true"),
        ("X-GNOME-Autostart-enabled=true", "X-GNOME-Autostart-enabled=false"),
        ("[Desktop Entry]", "[Desktop Action x]"),
    ],
)
def test_what_was_switched_off_in_the_desktops_own_settings_stays_off(folder, change):
    way = XdgAutostart(folder, "brewdesk")
    way.turn_on(HERE)
    way.path.write_text(way.path.read_text("utf-8").replace(*change), encoding="utf-8")
    before = way.path.read_bytes()
    assert not way.is_on()
    assert not SessionStart(way, Launch(("/elsewhere",))).renew()
    assert way.path.read_bytes() == before


def test_a_comment_or_another_group_switches_nothing_off(folder):
    way = XdgAutostart(folder, "brewdesk")
    way.turn_on(HERE)
    text = way.path.read_text("utf-8") + "#Hidden=true\n[Desktop Action x]\nHidden=true\n"
    way.path.write_text(text, encoding="utf-8")
    assert way.is_on()


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=50)
@given(st.binary(max_size=200))
def test_a_file_full_of_rubbish_is_off(folder, data):
    way = XdgAutostart(folder, "brewdesk")
    agent = LaunchAgent(folder, "brewdesk")
    folder.mkdir(parents=True, exist_ok=True)
    for each in (way, agent):
        each.path.write_bytes(data)
        assert not each.is_on()
        assert not each.starts(HERE)


def test_a_folder_that_takes_no_file_is_told(folder):
    folder.parent.mkdir()
    folder.write_text("a file where the folder should be", encoding="utf-8")
    for way in (XdgAutostart(folder, "brewdesk"), LaunchAgent(folder, "brewdesk")):
        with pytest.raises(AutostartTrouble) as caught:
            SessionStart(way, HERE).put(True)
        assert caught.value.code == "not_written"
        assert autostart_trouble_words(caught.value.code)
        assert not way.is_on()


def test_the_folder_is_the_sessions_own():
    home = Path("/home/someone")

    def path(**variables):
        return autostart_of("linux", home, variables, "brewdesk").path

    assert path() == home / ".config/autostart/brewdesk.desktop"
    assert path(XDG_CONFIG_HOME="/cfg") == Path("/cfg/autostart/brewdesk.desktop")
    assert path(XDG_CONFIG_HOME="relative") == home / ".config/autostart/brewdesk.desktop"
    assert path(XDG_CONFIG_HOME="") == home / ".config/autostart/brewdesk.desktop"


# macOS and Windows


def test_the_launch_agent_says_what_macos_wants_to_know(folder):
    way = autostart_of("darwin", folder, {}, "brewdesk")
    way.turn_on(Launch(("/x", 'a "b"', "--in-background"), (("PYTHONPATH", "/p"),)))
    assert way.path == folder / "Library/LaunchAgents/local.brewdesk.plist"
    assert plistlib.loads(way.path.read_bytes()) == {
        "Label": "local.brewdesk",
        "ProgramArguments": ["/x", 'a "b"', "--in-background"],
        "RunAtLoad": True,
        "ProcessType": "Interactive",
        "EnvironmentVariables": {"PYTHONPATH": "/p"},
    }


def test_the_run_key_quotes_a_path_with_spaces():
    registry = FakeRegistry()
    way = RunKey(registry, "brewdesk")
    way.turn_on(Launch((r"C:\Program Files\brewdesk\brewdesk.exe", "--in-background")))
    assert registry.values == {
        "brewdesk": r'"C:\Program Files\brewdesk\brewdesk.exe" --in-background'
    }
    with pytest.raises(AutostartTrouble):
        way.turn_on(Launch(("python",), (("PYTHONPATH", "x"),)))


def test_a_registry_that_refuses_is_told():
    way = RunKey(FakeRegistry(refuses=True), "brewdesk")
    for act in (lambda: way.turn_on(HERE), way.turn_off):
        with pytest.raises(AutostartTrouble):
            act()
    assert isinstance(autostart_of("win32", Path("/"), {}, "brewdesk"), RunKey)


# how the program names itself


def launch(started_as="", *, is_frozen=False, options=(), **variables):
    return own_launch(
        options,
        executable="/venv/bin/python",
        started_as=started_as,
        is_frozen=is_frozen,
        variables=variables,
    )


def test_a_frozen_program_is_its_own_executable():
    assert launch("x", is_frozen=True).words == ("/venv/bin/python", "--in-background")


def test_an_installed_program_is_its_script(tmp_path):
    script = tmp_path / "brewdesk"
    script.write_text("#!/bin/sh\n", encoding="utf-8")
    script.chmod(0o700)
    assert launch(str(script)).words == (str(script), "--in-background")


def test_a_checkout_is_found_by_its_path(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    started = launch(
        str(tmp_path / "brewdesk" / "__main__.py"),
        options=("--store", "/p"),
        PYTHONPATH=".:/srv/shared",
    )
    assert started.words == (
        "/venv/bin/python",
        "-m",
        "brewdesk",
        "--store",
        "/p",
        "--in-background",
    )
    assert started.variables == (("PYTHONPATH", f"{tmp_path}:/srv/shared"),)


def test_the_usual_pantry_has_the_plain_name(tmp_path):
    usual = tmp_path / "pantry.brewdesk"
    assert name_for(usual, usual) == "brewdesk"
    other = name_for(tmp_path / "other", usual)
    assert other.startswith("brewdesk-")
    assert other != name_for(tmp_path / "third", usual)
