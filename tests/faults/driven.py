"""The whole program in a process of its own, with somebody at its window.

``python -m tests.faults.driven STEP... -- WORDS...`` starts the program with the words of its
command line. Each step is done as soon as it can be: what it names is visible and enabled.

    begun               the program is running
    click NAME          press the button of that name
    menu KEY            choose that entry of the menu
    say NAME            print the text of the label of that name
    read NAME           print the plain text of the field of several lines of that name
    windows             print the names of the windows that can be seen
    notice              print what the bar at the top says
    type NAME TEXT      type into the field of that name
    write FILE          write a sign for the test
    wait FILE           go on when that file is there
    abort, trip         break the process down; raise an error in a slot
    leave               end the program as its menu does
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

from PySide6.QtCore import QObject, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from brewdesk import app, bootstrap


class Driver(QObject):
    """Does one step after the other."""

    def __init__(self, steps: list[str]) -> None:
        super().__init__()
        self._steps = steps
        self.program: bootstrap.Program | None = None
        self._timer = QTimer(self, interval=10)
        self._timer.timeout.connect(self._look)
        self._timer.start()

    def _look(self) -> None:
        if not self._steps:
            self._timer.stop()
            return
        word, _, rest = self._steps[0].partition(" ")
        if getattr(self, f"_{word}")(rest):
            print(f"done {self._steps.pop(0)}", flush=True)

    def _found(self, name: str) -> QWidget | None:
        for top in QApplication.topLevelWidgets():
            for widget in (top, *top.findChildren(QWidget, name)):
                if widget.objectName() == name and widget.isVisible() and widget.isEnabled():
                    return widget
        return None

    def _begun(self, _rest: str) -> bool:
        return self.program is not None and self.program.is_running

    def _click(self, name: str) -> bool:
        widget = self._found(name)
        if widget is None:
            return False
        # Its press may open a dialog that waits in a loop of its own: the next step goes on there.
        QTimer.singleShot(0, widget, widget.click)
        return True

    def _menu(self, key: str) -> bool:
        self.program.window.actions_by_key[key].trigger()
        return True

    def _say(self, name: str) -> bool:
        widget = self._found(name)
        if widget is None or not widget.text() or "being checked" in widget.text():
            return False
        print("said " + widget.text().replace("\n", " / "), flush=True)
        return True

    def _read(self, name: str) -> bool:
        widget = self._found(name)
        if widget is None:
            return False
        print("said " + widget.toPlainText().replace("\n", " / "), flush=True)
        return True

    def _windows(self, _rest: str) -> bool:
        shown = [top.objectName() for top in QApplication.topLevelWidgets() if top.isVisible()]
        print("said " + " ".join(sorted(shown)), flush=True)
        return True

    def _notice(self, _rest: str) -> bool:
        bar = self.program.window.notice
        if not bar.isVisible():
            return False
        print("said " + bar.words.text(), flush=True)
        return True

    def _box(self, _rest: str) -> bool:
        from PySide6.QtWidgets import QMessageBox

        for top in QApplication.topLevelWidgets():
            if isinstance(top, QMessageBox) and top.isVisible():
                print("said " + top.text().replace("\n", " / "), flush=True)
                top.close()
                return True
        return False

    def _type(self, rest: str) -> bool:
        name, _, text = rest.partition(" ")
        widget = self._found(name)
        if widget is None:
            return False
        widget.setFocus()
        QTest.keyClicks(widget, text)
        return True

    def _write(self, path: str) -> bool:
        Path(path).touch()
        return True

    def _wait(self, path: str) -> bool:
        return Path(path).exists()

    def _abort(self, _rest: str) -> bool:
        os.abort()

    def _trip(self, _rest: str) -> bool:
        def slot() -> None:
            raise ValueError("the jar is not round")

        QTimer.singleShot(0, self, slot)
        return True

    def _leave(self, _rest: str) -> bool:
        self.program.leave()
        return True


def main(words: list[str]) -> int:
    """Start the program and the one at its window."""
    cut = words.index("--")
    driver: list[Driver] = []
    starting = bootstrap.Program.start

    def start(program: bootstrap.Program, *, in_background: bool = False) -> None:
        driver[0].program = program
        starting(program, in_background=in_background)

    bootstrap.Program.start = start
    qt = QApplication(sys.argv[:1])
    driver.append(Driver(words[:cut]))
    code = app.main(words[cut + 1 :])
    del qt
    return code


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
