"""What a jar's lines on the shelf say: name, state, what comes next and when."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.shelf import JarView
from brewdesk.services.wording.amounts import Show, number_text, plain
from brewdesk.services.wording.moments import day_words, time_words
from culturecore.units import Kind


def _tr(text: str) -> str:
    return QCoreApplication.translate("shelf", text)


@dataclass(frozen=True, slots=True)
class JarWords:
    """Lines below a jar. ``urgent`` is '' | 'due' | 'danger'; never shown by colour alone."""

    name: str
    state: str
    coming: str
    what: str
    when: str
    urgent: str
    sentence: str


def stage_words(jar: JarView, show: Show = plain) -> str:
    """State of the jar: "Day 9 · pH 3.42", "Empty", "Being brewed"."""
    code = jar.stage_code
    if code == "empty":
        if jar.culture is not None:
            return _tr("{culture} at rest").format(culture=jar.culture.name)
        volume = show(jar.vessel.working_volume_l, Kind.VOLUME)
        return _tr("Empty · {volume}").format(volume=volume)
    if code == "planned":
        return _tr("Planned")
    if code == "brewing":
        return _tr("Being brewed")
    if code == "drawn_off":
        if jar.latest_ph is None:
            return _tr("Drawn off")
        return _tr("Drawn off at pH {ph}").format(ph=number_text(jar.latest_ph, 2))
    parts = []
    if jar.day_number is not None:
        parts.append(_tr("Day {n}").format(n=jar.day_number))
    if jar.latest_ph is not None:
        parts.append(_tr("pH {ph}").format(ph=number_text(jar.latest_ph, 2)))
    elif jar.batch is not None:
        parts.append(_tr("pH about {ph}").format(ph=number_text(jar.batch.start_ph, 1)))
    else:
        parts.append(_tr("no pH yet"))
    return " · ".join(parts)


def _next_words(jar: JarView) -> str:
    texts = {
        "plan_batch": _tr("Ready for a batch"),
        "brew_it": _tr("Brew it next"),
        "finish_run_sheet": _tr("Follow the run sheet"),
        "take_ph": _tr("Check the pH"),
        "taste": _tr("Taste it"),
        "look_for_mold": _tr("Look for mold"),
        "draw_off": _tr("Draw it off"),
        "own": _tr("Your reminder"),
        "look_for_film": _tr("Look for the film"),
        "feed": _tr("Feed it"),
        "top_up": _tr("Look for dryness"),
    }
    return texts.get(jar.next_code, "")


def next_when_words(jar: JarView, now: datetime, zone: tzinfo) -> str:
    """When the next thing is due, by itself: "now", "tomorrow", "on Thu 3 Dec", or nothing."""
    if jar.next_at is None:
        return ""
    if jar.next_code == "finish_run_sheet":
        time = time_words(jar.next_at, zone)
        return (
            _tr("timer until {time}").format(time=time) if jar.next_at > now else _tr("time is up")
        )
    return _tr("now") if jar.next_at <= now else day_words(jar.next_at, now, zone)


def coming_words(jar: JarView, now: datetime, zone: tzinfo) -> str:
    """What comes next and when, as one short line."""
    codes = {alert.code for alert in jar.alerts}
    if "mold_discard_all" in codes:
        return _tr("Mold was seen")  # nothing that is due matters more
    if "mold_suspected" in codes:
        return _tr("May carry mold")
    what, when = _next_words(jar), next_when_words(jar, now, zone)
    if jar.next_code == "finish_run_sheet" and when:
        return when[0].upper() + when[1:]
    if not what or not when:
        return what
    return _tr("{what} {when}").format(what=what, when=when)


def jar_words(jar: JarView, now: datetime, zone: tzinfo, show: Show = plain) -> JarWords:
    """All lines of one jar, and one sentence that says the same for a screen reader.

    ``show`` writes amounts in the maker's units; without it they are metric.
    """
    state = stage_words(jar, show)
    coming = coming_words(jar, now, zone)
    urgent = ""
    if jar.next_at is not None and jar.next_at <= now:
        urgent = "due"
    if any(alert.level.value in ("warn", "stop") for alert in jar.alerts):
        urgent = "danger"
    name = jar.vessel.name
    if jar.trial_code:
        name = _tr("{name} · {code}").format(name=name, code=jar.trial_code)
    lines = [name, state, coming]
    if jar.batch is not None:
        lines.insert(1, jar.batch.name)
    if jar.pellicle_mm:
        lines.append(_tr("pellicle {mm} mm").format(mm=f"{jar.pellicle_mm:.0f}"))
    if urgent == "danger":
        lines.append(_tr("needs attention"))
    sentence = ", ".join(part for part in lines if part) + "."
    return JarWords(
        name=name,
        state=state,
        coming=coming,
        what=_next_words(jar),
        when=next_when_words(jar, now, zone),
        urgent=urgent,
        sentence=sentence,
    )
