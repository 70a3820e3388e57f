"""How bottles stand now, in one or two sentences; and the verdicts that only then arise."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.bottlings import bar_words, volumes_words
from brewdesk.services.wording.moments import stamp_words
from brewdesk.store.records import Bottling
from culturecore.outcome import Estimate
from culturecore.stages import BottlingState

Parts = tuple[str, str, str]


def _t(text: str) -> str:
    return QCoreApplication.translate("Bottlings", text)


def now_words(
    bottling: Bottling,
    *,
    gauge: Estimate,
    volumes: Estimate,
    chill_by_at: datetime | None,
    best_before: datetime | None,
    now: datetime,
    zone: tzinfo,
) -> str:
    """Say what the bottles are likely at, and what is to be done by when."""
    stands = _t("Likely {volumes}, at {bar}; it may be as much as {high}.").format(
        volumes=volumes_words(volumes.value),
        bar=bar_words(gauge.value),
        high=bar_words(gauge.high, is_high=True),
    )
    if bottling.state is BottlingState.CHILLED:
        until = "" if best_before is None else stamp_words(best_before, zone)
        rest = _t("In the cold it still rises slowly. Drink it before {until}.").format(until=until)
    elif bottling.state is not BottlingState.CONDITIONING:
        return ""
    elif chill_by_at is None:
        rest = _t("No sugar is left that could bring them to their limit, as far as is known.")
    elif chill_by_at <= now:
        rest = _t("Chill now: since {moment} lively yeasts could have reached the limit.").format(
            moment=stamp_words(chill_by_at, zone)
        )
    else:
        rest = _t("Chill by {moment} at the latest, sooner once it is right.").format(
            moment=stamp_words(chill_by_at, zone)
        )
    return f"{stands} {rest}"


def verdicts() -> dict[str, Parts]:
    """Words on bottles that stand."""
    rules = _t("Where your local rules ask for more, follow them.")
    return {
        "bottles_hard": (
            _t("The test bottle was hard."),
            _t("Then the glass ones hold as much, and it goes on rising while they stand warm."),
            _t("Put all bottles in the cold now. Open none warm, and none to let gas out. ")
            + rules,
        ),
        "bottles_over_in_the_cold": (
            _t("Even in the cold they may have reached their limit by day {chill_by_days}."),
            _t("Cold slows the yeasts and does not end them."),
            _t("Cover them, wear eye protection, and open them one by one over a sink, slowly "
               "and under a towel. Keep what you do not drink in the coldest place. ") + rules,
        ),
    }  # fmt: skip
