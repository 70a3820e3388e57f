"""A report of a mistake of the program that its maker can read through and send.

It is built from what is known to be no data, rather than cleaned of it: kinds of errors, places
in source files, names of functions, versions, kinds of acts. An error's own words are left out,
for they may quote what somebody typed, except where Python itself formed them from names in the
source. Of paths only what lies below the program or a library is kept. There is no environment,
there are no values of variables.
"""

from __future__ import annotations

import builtins
import dis
import platform
import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from types import CodeType, TracebackType

import PySide6
from PySide6.QtCore import qVersion

from brewdesk import __version__

HEAD = "brewdesk: report of a fault"
_ROOT = Path(__file__).resolve().parents[1]
_PLACE = re.compile(r'File "(?P<path>[^"\n]*)", line (?P<line>\d+|\?\?\?)(?:,)? in (?P<name>\S+)')
_STARTS = ("Fatal Python error: ", "Windows fatal exception: ", "Current thread ", "Thread ")
_QUOTED = re.compile(r"'[^']*'|\"[^\"]*\"")
_WORDED_BY_PYTHON = (TypeError, AttributeError, NameError, IndexError, ZeroDivisionError,
                     RecursionError)  # fmt: skip
_RAISED_BY_HAND = ("RAISE_VARARGS", "RERAISE")
_MOST_PLACES = 60
_MOST_LINKS = 8  # errors that led to one another
_SHORTEST_SECRET = 3
UNSAID = "…"


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What must not stand in a report, wherever it came from."""

    home: str = ""
    words: tuple[str, ...] = ()  # user, host, address of a database, each part of it


def told_of_error(error: BaseException, where: str) -> tuple[str, ...]:
    """Tell an error that nothing caught, line by line, and keep nothing of the error itself.

    ``where`` names the kind of place it came out of.
    """
    return (f"Where: {where}", "", *_chain(error))


def told_of_breakdown(kept: str) -> tuple[str, ...]:
    """Tell what Python wrote down while the process broke down (`faulthandler`)."""
    where = "Where: the program broke down; this was found at its next start"
    return (where, "", *_of_faulthandler(kept))


def report(told: Sequence[str], *, at: datetime, acts: Sequence[str], around: Surroundings) -> str:
    """Put a whole report together. ``acts`` are kinds, the newest first."""
    python, qt = platform.python_version(), f"PySide6 {PySide6.__version__}, Qt {qVersion()}"
    head = [
        HEAD,
        f"brewdesk {__version__}, Python {python}, {qt}",
        f"System: {platform.system()} {platform.release()}, {platform.machine()}",
        f"Time: {at.astimezone(UTC):%Y-%m-%d %H:%M} UTC",
        "Kinds of the last acts, the newest first: " + (", ".join(acts) or "none"),
    ]
    return _scrubbed("\n".join([*head, *told]).rstrip() + "\n", around)


def surroundings_of(home: str, words: Iterable[str], address: str) -> Surroundings:
    """Gather what must not be told. ``address`` is that of a shared store, with its password."""
    parts = [address, *re.split(r"[:/@?&=]+", address)] if address else []
    kept = {word for word in (*words, *parts) if len(word) >= _SHORTEST_SECRET}
    return Surroundings(home, tuple(sorted(kept, key=len, reverse=True)))


def _scrubbed(text: str, around: Surroundings) -> str:
    """Take out what must not be told; nothing of it should be there, and this is the last net."""
    if len(around.home) > 1:
        text = text.replace(around.home, "~")
    for word in around.words:
        text = re.sub(rf"(?<!\w){re.escape(word)}(?!\w)", UNSAID, text)
    return text


def _chain(error: BaseException) -> Iterator[str]:
    told: set[int] = set()
    link: BaseException | None = error
    relation = ""
    while link is not None and id(link) not in told and len(told) < _MOST_LINKS:
        told.add(id(link))
        if relation:
            yield from ("", relation)
        yield f"{_kind(link)}{_own_words(link)}"
        yield from (f"  {place}" for place in _places(link.__traceback__))
        for note in getattr(link, "__notes__", ()):
            yield from (f"  figures: {place}" for place in _places_in(note))
        if link.__cause__ is not None:
            link, relation = link.__cause__, "It came from:"
        elif link.__suppress_context__:
            link = None
        else:
            link, relation = link.__context__, "It arose while this was dealt with:"


def _kind(error: BaseException) -> str:
    kind = type(error)
    if kind.__module__ == "builtins":
        return kind.__qualname__
    return f"{kind.__module__}.{kind.__qualname__}"


def _own_words(error: BaseException) -> str:
    code = getattr(error, "code", None)
    if type(error).__module__.startswith("brewdesk.") and isinstance(code, str):
        return f" ({code})" if re.fullmatch(r"[a-z_]{1,40}", code) else ""
    if not isinstance(error, _WORDED_BY_PYTHON) or error.__traceback__ is None:
        return ""
    last = error.__traceback__
    while last.tb_next is not None:
        last = last.tb_next
    if _instruction(last.tb_frame.f_code, last.tb_lasti) in _RAISED_BY_HAND:
        return ""
    known = _names_in(last.tb_frame.f_code)
    message = str(error).splitlines()[0] if str(error) else ""
    return ": " + _QUOTED.sub(lambda found: _if_known(found[0], known), message)


def _if_known(quoted: str, known: frozenset[str]) -> str:
    inside = quoted[1:-1]
    parts = inside.replace("()", "").split(".")
    is_told = inside.isidentifier() and all(part in known for part in parts)
    return quoted if is_told else f"{quoted[0]}{UNSAID}{quoted[0]}"


def _instruction(code: CodeType, offset: int) -> str:
    return dis.opname[code.co_code[offset]] if 0 <= offset < len(code.co_code) else ""


def _names_in(code: CodeType) -> frozenset[str]:
    """Return the names that stand in the source there: none of them can be data."""
    return frozenset(
        (*code.co_names, *code.co_varnames, *code.co_freevars, *code.co_cellvars, *dir(builtins))
    )


def _places(trace: TracebackType | None) -> list[str]:
    found: list[str] = []
    while trace is not None:
        code = trace.tb_frame.f_code
        found.append(_place(code.co_filename, str(trace.tb_lineno), code.co_name))
        trace = trace.tb_next
    if len(found) > _MOST_PLACES:
        half = _MOST_PLACES // 2
        left_out = f"({len(found) - 2 * half} more)"
        found = [*found[:half], left_out, *found[-half:]]
    return found


def _places_in(text: str) -> list[str]:
    found = _PLACE.finditer(text)
    return [_place(one["path"], one["line"], one["name"]) for one in found][:_MOST_PLACES]


def _place(path: str, line: str, name: str) -> str:
    named = name if re.fullmatch(r"[\w.<>]+", name) else UNSAID
    return f"{short_path(path)}, line {line}, in {named}"


def short_path(path: str) -> str:
    """Cut a source file's path down to what lies below the program, a library or Python."""
    plain = path.replace("\\", "/")
    # First, since libraries may lie in an environment below the program's own folder.
    _, cut, below = plain.rpartition("/site-packages/")
    if cut:
        return below
    if plain.startswith(_ROOT.as_posix() + "/"):
        return plain[len(_ROOT.as_posix()) + 1 :]
    standard = Path(dis.__file__).parent.as_posix() + "/"
    if plain.startswith(standard):
        return plain[len(standard) :]
    return plain.rpartition("/")[2] or UNSAID


def _of_faulthandler(text: str) -> Iterator[str]:
    """Keep the lines that Python is known to write, each in its known parts alone."""
    for line in text.splitlines():
        found = _PLACE.search(line)
        if found:
            yield f"  {_place(found['path'], found['line'], found['name'])}"
        elif line.startswith(_STARTS):
            yield re.sub(r"[^\w :().,'/-]", "", line)[:120]
        elif line.startswith("Extension modules: "):
            yield re.sub(r"[^\w :().,]", "", line)
