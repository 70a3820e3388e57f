"""Guard against Qt bindings that lose references to the singletons None and True.

PySide6 6.12.0 gives back ``None`` from most calls without taking a reference. Before Python
3.12 the count runs down and the interpreter aborts after some thousands of calls; from 3.12
on the singletons are immortal (PEP 683) and their count must not move at all.
"""

from __future__ import annotations

import sys

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QLabel

CALLS = 500
SINGLETONS_ARE_IMMORTAL = sys.version_info >= (3, 12)


class Sender(QObject):
    happened = Signal()


def lost_references(singleton, call) -> int:
    """Count the references to ``singleton`` that CALLS calls lose."""
    before = sys.getrefcount(singleton)
    for _ in range(CALLS):
        call()
    return before - sys.getrefcount(singleton)


def test_calls_without_a_result_keep_none_alive(qtbot):
    label = QLabel()
    qtbot.addWidget(label)

    lost = lost_references(None, label.update)

    assert lost == 0 if SINGLETONS_ARE_IMMORTAL else lost < CALLS // 2


def test_emitting_a_signal_keeps_true_alive(qapp):
    sender = Sender()

    lost = lost_references(True, sender.happened.emit)

    assert lost == 0 if SINGLETONS_ARE_IMMORTAL else lost < CALLS // 2


def test_the_guard_sees_a_lost_reference_where_one_can_be_lost():
    """Holding None in a list moves its count on mortal Pythons, and only there."""
    held: list[None] = []

    gained = -lost_references(None, lambda: held.append(None))

    assert gained == 0 if SINGLETONS_ARE_IMMORTAL else gained >= CALLS
