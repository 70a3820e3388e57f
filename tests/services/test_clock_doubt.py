"""Whether the clock can be right: an empty clock battery, and a clock that ran ahead."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from brewdesk.services.clock_doubt import is_in_doubt
from brewdesk.store.records import Act

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


def acts(*days: float) -> list[Act]:
    """Return acts done on these days from now, in the order given, newest first."""
    made = [
        Act(
            id=number,
            at=NOW + timedelta(days=day),
            kind="add_place",
            facts={},
            batch_id=None,
            vessel_id=None,
            culture_id=None,
            state="done",
        )
        for number, day in enumerate(days, 1)
    ]
    return made[::-1]


@pytest.mark.parametrize(
    ("days", "is_doubted"),
    [
        ((), False),
        ((-9, -3, -0.1), False),
        ((-9, -3, 0.03), False),  # less than an hour ahead
        ((-9, -3, 2), True),  # put back by two days, or was two days ahead: nobody knows
        ((20000, 20003, 20004), True),  # a machine that began at 1970
        ((-2, -1, 1, 2, 3, 4), True),  # recorded all along: the clock fell back
        ((-9, -3, -0.1, 365, 365.1), False),  # recorded by a clock a year ahead
        ((-300, -290, 20), True),  # nearer to what lies ahead: it was a long pause
    ],
)
def test_a_clock_is_doubted_by_what_was_recorded(days, is_doubted):
    assert is_in_doubt(NOW, acts(*days)) is is_doubted


def test_the_makers_word_counts_for_what_was_recorded_until_then():
    known = acts(-9, 2)
    assert not is_in_doubt(NOW, known, trusted_act_id=2)
    assert is_in_doubt(NOW, acts(-9, 2, 3), trusted_act_id=2)
