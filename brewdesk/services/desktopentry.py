"""The text of a .desktop file, and what is to be read from one.

Desktop Entry Specification 1.5 (https://specifications.freedesktop.org/desktop-entry-spec/):
section 4 for the escapes of values, section 7 for the quoting within Exec.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping, Sequence

from brewdesk.services.wording.autostart import entry_comment

# What needs no quotes by section 7. Everything else gets them, also where it could do without.
_BARE = re.compile(r"[A-Za-z0-9_./:=@,+-]+")
_MAY_BE_ESCAPED = "\n\t\r"


def entry_text(words: Sequence[str], variables: Mapping[str, str]) -> str:
    """Return the file that starts ``words`` with ``variables``.

    Raises
    ------
    ValueError
        For a program whose path the specification cannot express: one with "=" in it, with
        control characters, or that is no text.
    """
    program = words[0]
    for text in (*words, *variables, *variables.values()):
        if any(_is_unspeakable(character) for character in text):
            raise ValueError(f"control characters in {text!r}")
        text.encode("utf-8")
    if "=" in program:  # section 7 forbids it, and env would take it for a variable
        raise ValueError(f"an equals sign in {program!r}")
    command = list(words)
    if variables:
        command = ["env", *(f"{name}={value}" for name, value in variables.items()), *command]
    lines = (
        "[Desktop Entry]",
        "Type=Application",
        "Name=brewdesk",
        f"Comment={_value(entry_comment())}",
        f"Exec={_value(' '.join(_quoted(word) for word in command))}",
        f"TryExec={_value(program)}",
        "Icon=brewdesk",
        "Terminal=false",
        "StartupNotify=false",
        "X-GNOME-Autostart-enabled=true",
    )
    return "\n".join(lines) + "\n"


def entry_is_on(text: str) -> bool:
    """Whether a desktop that reads ``text`` starts what it names."""
    keys = _main_keys(text)
    return (
        bool(keys.get("Exec"))
        and keys.get("Hidden", "false") != "true"
        and keys.get("X-GNOME-Autostart-enabled", "true") != "false"
    )


def _main_keys(text: str) -> dict[str, str]:
    keys: dict[str, str] = {}
    is_main = False
    for line in text.split("\n"):
        if line.startswith("["):
            is_main = line.strip() == "[Desktop Entry]"
        elif is_main and "=" in line and not line.startswith("#"):
            name, value = line.split("=", 1)
            keys[name.strip()] = value.strip()
    return keys


def _quoted(word: str) -> str:
    """Quote a word of Exec; "%" begins a field code there, and stands for itself doubled."""
    doubled = word.replace("%", "%%")
    if _BARE.fullmatch(word):
        return doubled
    return '"' + re.sub(r'(["`$\\])', r"\\\1", doubled) + '"'


def _value(text: str) -> str:
    """Escape a value of the file."""
    escaped = text.replace("\\", "\\\\")
    for character, letter in (("\n", "n"), ("\t", "t"), ("\r", "r")):
        escaped = escaped.replace(character, f"\\{letter}")
    return f"\\s{escaped[1:]}" if escaped.startswith(" ") else escaped


def _is_unspeakable(character: str) -> bool:
    return unicodedata.category(character) == "Cc" and character not in _MAY_BE_ESCAPED
