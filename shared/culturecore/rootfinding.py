"""Fixed points and roots of plain functions, found in a bounded number of rounds."""

from __future__ import annotations

from collections.abc import Callable


def settle(
    improve: Callable[[float], float], value: float, *, tolerance: float, rounds: int = 60
) -> float:
    """Apply ``improve`` until the value moves by less than ``tolerance``.

    Parameters
    ----------
    improve : callable
        Gives a better value for a value.
    value : float
        Where to begin.
    tolerance : float
        In the unit of the value.
    rounds : int
        Never more than this; the last value is returned then.
    """
    for _ in range(rounds):
        before, value = value, improve(value)
        if abs(value - before) < tolerance:
            break
    return value


def root_of_rising(
    rising: Callable[[float], float], low: float, high: float, *, tolerance: float
) -> float:
    """Return where a rising function passes zero between ``low`` and ``high``, by halving.

    The nearer end comes back when it does not pass zero in between.
    """
    while high - low > tolerance:
        middle = (low + high) / 2.0
        if not low < middle < high:  # no float lies between any more
            break
        if rising(middle) < 0.0:
            low = middle
        else:
            high = middle
    return (low + high) / 2.0
