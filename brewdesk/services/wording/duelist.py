"""What ``brewdesk due`` says in a terminal."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication


def _t(text: str) -> str:
    return QCoreApplication.translate("DueList", text)


def heading_words(due: int, coming: int, *, is_demo: bool) -> str:
    """Say how much there is to do, in a line."""
    if due == 0:
        first = _t("Nothing is due.")
    elif due == 1:
        first = _t("1 thing is due.")
    else:
        first = _t("{count} things are due.").format(count=due)
    if coming == 0:
        second = _t("Nothing is coming.")
    elif coming == 1:
        second = _t("1 is coming.")
    else:
        second = _t("{count} are coming.").format(count=coming)
    line = f"{first} {second}"
    return _t("Invented pantry. {line}").format(line=line) if is_demo else line


def state_words(*, is_due: bool) -> str:
    """Say in a word whether something is due."""
    return _t("due") if is_due else _t("coming")


def late_words(title: str, span: str) -> str:
    """Add to a title how late it is."""
    return _t("{title} ({span} late)").format(title=title, span=span)


def trouble_words(code: str, path: str) -> str:
    """Say why the due list cannot be read, and what to do."""
    sentences = {
        "no_driver": _t(
            "The pantry named by {path} lies on a server, and the part of the program that "
            "speaks with servers is not installed: install “brewdesk[desks]”."
        ),
        "not_connected": _t(
            "The server named by {path} does not answer, or does not let this desk in."
        ),
        "no_store": _t("There is no pantry at {path}. Open the window once, and it makes one."),
        "not_a_store": _t("The file {path} is no pantry of this program."),
        "older": _t(
            "The pantry at {path} was last used by an older version. Open the window once: it "
            "brings the pantry up to date, after a backup."
        ),
        "newer": _t(
            "The pantry at {path} was last used by a newer version. Please install that version."
        ),
        "damaged": _t(
            "The pantry at {path} is damaged. Open the window: it offers the latest backup."
        ),
        "interrupted": _t(
            "The last change to the pantry at {path} broke off. Open the window once: it puts "
            "that right."
        ),
        "locked": _t("The pantry at {path} is being written to. Please try again in a moment."),
        "unreadable": _t("The pantry at {path} cannot be read. Please check its rights."),
    }
    return sentences[code].format(path=path)


def fault_words() -> str:
    """Say that the program itself made a mistake."""
    return _t("Something went wrong in the program; nothing was changed.")


def help_words() -> dict[str, str]:
    """Return the texts of the command's help."""
    return {
        "about": _t(
            "Print what is due in your pantry, and what is coming, as the window last worked it "
            "out. Needs no display, works beside the open window, changes nothing."
        ),
        "json": _t("print JSON instead of columns"),
        "full": _t("print under each line what to do and to mind"),
        "due_only": _t("leave out what is only coming"),
        "store": _t("read this pantry file instead of your own"),
        "demo": _t("read the invented pantry"),
        "data_dir": _t("everything is kept below this folder"),
        "codes": _t("Exit code: 0 nothing is due, 1 something is due, 2 trouble."),
    }
