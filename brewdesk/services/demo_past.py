"""The invented pantry's earlier batches, so that there is something to look back at."""

from __future__ import annotations

from collections.abc import Callable
from datetime import time

from brewdesk.services.demo_bottles import filling, opening
from brewdesk.services.demo_brews import Brew, brew
from brewdesk.services.demo_furniture import adding_culture
from brewdesk.services.demo_story import READING_HOUR, Story, t
from culturecore.stages import CultureOrigin, CultureState, Opened, TeaKind

# vessel, culture, tea, days ago, days in the jar, pace against the usual course, room [degC]
_EARLIER: tuple[tuple[str, str, TeaKind, int, int, float, float], ...] = (
    ("tall", "first", TeaKind.BLACK, 190, 12, 0.88, 20.4),
    ("flask", "first", TeaKind.GREEN, 176, 13, 0.74, 20.9),
    ("crock", "second", TeaKind.BLACK, 168, 11, 0.95, 21.3),
    ("tall", "first", TeaKind.BLACK, 161, 10, 1.02, 22.0),
    ("flask", "second", TeaKind.GREEN, 155, 12, 0.86, 22.4),
    ("tall", "first", TeaKind.GREEN, 149, 11, 0.93, 23.2),
    ("crock", "second", TeaKind.BLACK, 141, 9, 1.18, 24.1),
    ("tall", "first", TeaKind.BLACK, 136, 9, 1.27, 25.0),
    ("flask", "second", TeaKind.GREEN, 130, 10, 1.03, 25.6),
    ("tall", "first", TeaKind.OOLONG, 124, 9, 1.12, 25.9),
    ("flask", "second", TeaKind.BLACK, 118, 8, 1.36, 26.2),
    ("tall", "first", TeaKind.GREEN, 112, 10, 1.09, 25.4),
    ("tall", "first", TeaKind.BLACK, 98, 10, 1.13, 24.0),
    ("flask", "second", TeaKind.GREEN, 94, 12, 0.9, 23.5),
    ("tall", "first", TeaKind.WHITE, 84, 12, 0.84, 23.1),
    ("flask", "second", TeaKind.BLACK, 78, 11, 1.0, 22.8),
    ("tall", "first", TeaKind.GREEN, 68, 13, 0.8, 22.6),
)


def brew_before(story: Story) -> None:
    """Brew what came before the last month."""
    numbers: dict[TeaKind, int] = {}
    for number, (vessel, culture, tea, started, days, pace, room_c) in enumerate(_EARLIER):
        numbers[tea] = numbers.get(tea, 0) + 1
        one = Brew(
            vessel=vessel,
            culture=culture,
            tea=tea,
            started=started,
            pace=pace,
            room_c=room_c,
            name=_name(tea, numbers[tea]),
            last_day=days,
            is_brief=True,
            drawn_off=started - days,
            closed=started - days,
        )
        brew(story, f"earlier {number}", one)
    brew(story, "spoilt", _spoilt())


def lose_one(story: Story) -> None:
    """Lose a culture that nobody fed."""
    fields = {
        "name": t("Skerry"),
        "origin": CultureOrigin.BOUGHT,
        "state": CultureState.RESTING,
        "note": t("Bought. Invented for the example pantry."),
    }
    story.at(150, time(12, 0), adding_culture(story, "skerry", fields))
    reason = t("Forgotten behind the flour and dried out. (Invented)")
    story.at(80, time(12, 0), lambda: story.care.lose(story.ids["skerry"], reason, flag=False))


def open_bottles(story: Story) -> None:
    """Bottle two earlier batches, open some, and pour one of them away."""
    for number, (batch, filled) in enumerate((("earlier 6", 132), ("earlier 12", 88))):
        key = f"opened {number}"
        story.at(filled, time(18, 20), filling(story, batch, key))
        story.at(filled - 3, time(18, 0), _chilling(story, key))
    story.at(127, READING_HOUR, opening(story, "opened 0", Opened.RIGHT, 2))
    story.at(120, READING_HOUR, opening(story, "opened 0", Opened.GUSHER, 1))
    story.at(118, READING_HOUR, opening(story, "opened 0", Opened.RIGHT, 1))
    story.at(117, READING_HOUR, lambda: story.bottlings.finish(story.ids["opened 0"]))
    story.at(83, READING_HOUR, opening(story, "opened 1", Opened.TOO_FLAT, 1))
    story.at(81, READING_HOUR, opening(story, "opened 1", Opened.RIGHT, 1))
    poured = t("Gone like vinegar after a week in the warm. (Invented)")
    story.at(76, time(12, 0), lambda: story.bottlings.discard(story.ids["opened 1"], poured))


def _chilling(story: Story, key: str) -> Callable[[], object]:
    return lambda: story.bottlings.chill(story.ids[key])


def _spoilt() -> Brew:
    return Brew(
        vessel="little",
        culture=None,
        tea=TeaKind.HERBAL,
        started=116,
        pace=0.4,
        room_c=25.5,
        name=_name(TeaKind.HERBAL, 1),
        last_day=8,
        is_brief=True,
        discarded=106,
        why_discarded=t("Fruit flies got under the cloth. All of it thrown away. (Invented)"),
    )


def _name(tea: TeaKind, number: int) -> str:
    return {
        TeaKind.BLACK: t("Earlier black {n}"),
        TeaKind.GREEN: t("Earlier green {n}"),
        TeaKind.OOLONG: t("Earlier oolong {n}"),
        TeaKind.WHITE: t("Earlier white {n}"),
        TeaKind.HERBAL: t("Earlier herbs {n}"),
    }[tea].format(n=number)
