"""Whether the computer's clock can be right, going by what was recorded under it.

Pure functions. A machine whose clock battery is empty starts years back; one whose clock
was set wrong by hand may have recorded things that lie ahead. The first must not mark
anything, the second must not silence the reminders until its mistake comes true.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from itertools import takewhile

from brewdesk.store.records import Act

DOUBT_AFTER = timedelta(hours=1)
# Nobody who brews leaves the pantry alone for so long that this is a usual gap.
LEAP = timedelta(days=30)
# What was shown by a clock this far ahead of the present one was shown by a wrong clock.
FAR_AHEAD = timedelta(days=7)
ACTS_LOOKED_AT = 200


def is_in_doubt(now: datetime, acts: Sequence[Act], *, trusted_act_id: int = 0) -> bool:
    """Whether the clock is to be doubted at ``now``; ``acts`` are the newest, newest first.

    It is if it shows more than an hour before the newest act, unless the maker has said since
    that it is right. Acts that follow upon a leap of a month or more, with the clock nearer
    to what was done before the leap, were recorded by a clock that ran ahead: then the
    present one goes on where the right one was.
    """
    if not acts or now >= acts[0].at - DOUBT_AFTER or acts[0].id <= trusted_act_id:
        return False
    ahead = tuple(takewhile(lambda act: act.at > now, acts))
    if len(ahead) == len(acts):
        return True  # it shows a time before anything that is known
    before, after = acts[len(ahead)].at, ahead[-1].at
    return after - before < LEAP or now - before > after - now
