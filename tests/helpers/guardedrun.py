"""The whole program, from its command line to its end, with its doors to the outside watched.

``python -m tests.helpers.guardedrun FOLDER`` opens a pantry below FOLDER with the file mask at 0,
lives through everything that writes a file, and prints as JSON what reached for a network (an
audit hook hears of every socket of Python's), which modules that could were loaded, and what went
wrong. Names and notes are invented.
"""

from __future__ import annotations

import json
import os
import socket
import sys
from datetime import timedelta
from pathlib import Path

REACHES = ("socket.connect", "socket.bind", "socket.sendto", "socket.sendmsg",
           "socket.getaddrinfo", "socket.gethostbyname", "socket.gethostbyaddr",
           "socket.getnameinfo", "urllib.Request", "http.client.connect", "ftplib.connect",
           "smtplib.connect")  # fmt: skip
# Libraries load parts of the standard library that could (ssl, http.client) without using them.
CAN_REACH = ("psycopg", "requests", "httpx", "PySide6.QtWebSockets", "PySide6.QtWebEngineCore")
reached: list[str] = []


def watch(event: str, arguments: tuple[object, ...]) -> None:
    """Note what reaches beyond this computer; sockets of the file system do not."""
    if event not in REACHES:
        return
    first = arguments[0] if arguments else None
    if isinstance(first, socket.socket) and first.family == socket.AF_UNIX:
        return
    reached.append(f"{event} {arguments[1:]!r}")


def main(words: list[str]) -> int:
    """Run the program through its day."""
    folder = Path(words[0])
    os.umask(0)
    sys.addaudithook(watch)
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication

    from brewdesk import app, bootstrap

    errors: list[str] = []
    starting = bootstrap.Program.start

    def start(program: bootstrap.Program, *, in_background: bool = False) -> None:
        starting(program, in_background=in_background)

        def begin() -> None:
            if not program.is_running:
                QTimer.singleShot(20, program, begin)
                return
            try:
                live(program, folder)
            except BaseException as error:
                errors.append(f"{type(error).__name__}: {error}")
                raise
            finally:
                program.leave()

        QTimer.singleShot(0, program, begin)

    bootstrap.Program.start = start
    qt = QApplication(sys.argv[:1])
    code = app.main(["--data-dir", str(folder / "data")])
    del qt
    loaded = sorted(name for name in CAN_REACH if name in sys.modules)
    print(json.dumps({"code": code, "reached": reached, "loaded": loaded, "errors": errors}))
    return 0


def live(program, folder: Path) -> None:
    """Look at everything, and have every kind of file written."""
    from PySide6.QtGui import QColor, QImage
    from PySide6.QtTest import QTest
    from PySide6.QtWidgets import QDialog

    from brewdesk.models.pictures import look_into
    from brewdesk.services.photofiles import Source
    from brewdesk.services.photos import PhotoOwner
    from brewdesk.services.records import Method, Quantity, ReadingDraft
    from brewdesk.services.settings import CALENDAR_PATH, THEME
    from tests.helpers.pantry_desk import souring_batch

    desk, window = program.desk, program.window

    def settle() -> None:
        for _ in range(400):
            QTest.qWait(10)
            if program.jobs.is_idle():
                break
        QTest.qWait(30)

    desk.settings.put(CALENDAR_PATH, str(folder / "data" / "due.ics"))
    batch = souring_batch(desk)
    now = desk.clock.now()
    desk.readings.record(
        [ReadingDraft(batch_id=batch.id, at=now, quantity=Quantity.PH, method=Method.METER,
                      value=3.9)]
    )  # fmt: skip
    desk.reminders.add_own(batch.id, now + timedelta(days=1), "look in")
    picture = QImage(40, 30, QImage.Format.Format_RGB32)
    picture.fill(QColor("brown"))
    picture.save(str(folder / "picture.png"))
    kept: list[object] = []
    offered = Source(name="picture.png", path=folder / "picture.png")
    desk.photos.bring(PhotoOwner(batch_id=batch.id), [offered], look_into, kept.append)
    settle()
    for page in window.rail.buttons:
        window.show_page(page)
        window.grab()
        settle()
    desk.settings.put(THEME, "dark")
    window.open_batch(batch.id)
    for key in ("safety", "about", "backups", "export", "process_log", "batch_report"):
        window.actions_by_key[key].trigger()
        settle()
        for dialog in window.findChildren(QDialog):
            if dialog.isVisible():
                dialog.grab()
                dialog.reject()
    window.actions_by_key["backup"].trigger()
    desk.history.undo()
    desk.history.redo()
    desk.calendar.export(folder / "data" / "given.ics")
    QTest.qWait(2300)  # the calendar lets a change settle for two seconds
    settle()
    assert kept, "no photo came in"
    try:
        raise RuntimeError("invented, for the log")
    except RuntimeError:
        sys.excepthook(*sys.exc_info())
    settle()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
