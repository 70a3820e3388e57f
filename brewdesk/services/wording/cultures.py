"""What a culture's sheet and its place in the family say. Nothing is claimed beyond the counts."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.lineage import CultureStory, FamilyNode, Mishap, Pace
from brewdesk.services.restingliquid import RestingLiquid, is_stated
from brewdesk.services.wording.amounts import Show, number_text, plain
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Care
from culturecore.stages import CareKind, CultureOrigin, CultureState, TasteMark
from culturecore.units import Kind

_DAYS_IN_WEEKS = 28  # from here on an age reads better in weeks, later in months
_DAYS_IN_MONTHS = 120
_DAYS_A_MONTH = 30.44
_FEW = 3  # up to so many batches an average says little


def _t(text: str) -> str:
    return QCoreApplication.translate("Cultures", text)


def age_words(days: int) -> str:
    """Say an age: "12 days old", "6 weeks old", "5 months old"."""
    if days <= 0:
        return _t("less than a day old")
    if days == 1:
        return _t("1 day old")
    if days < _DAYS_IN_WEEKS:
        return _t("{count} days old").format(count=days)
    if days < _DAYS_IN_MONTHS:
        return _t("{count} weeks old").format(count=days // 7)
    return _t("{count} months old").format(count=round(days / _DAYS_A_MONTH))


def generation_words(generation: int) -> str:
    """Say how far a culture is from the founder of its line."""
    if generation == 0:
        return _t("founder")
    return _t("generation {number}").format(number=generation)


def place_words(node: FamilyNode) -> str:
    """Say what a culture does, or what became of it, and where."""
    culture = node.culture
    state = name_of(culture.state)
    if culture.state is CultureState.GIVEN_AWAY and culture.gone_to:
        return _t("Given to {to}").format(to=culture.gone_to)
    if culture.state is CultureState.RETIRED and culture.gone_to:
        return _t("Now part of {name}").format(name=culture.gone_to)
    if node.is_gone or not node.vessel_name:
        return state
    return _t("{state} in {vessel}").format(state=state, vessel=node.vessel_name)


def node_sentence(node: FamilyNode) -> str:
    """Say everything the tree shows of a culture in one line, for a screen reader."""
    parts = [
        node.culture.name,
        place_words(node),
        generation_words(node.generation),
        age_words(node.age_days),
    ]
    if node.is_suspect:
        parts.insert(1, _t("may carry mold"))
    return ", ".join(parts)


def origin_words(node: FamilyNode, parent_names: Sequence[str]) -> str:
    """Say where a culture came from, with its parents by name."""
    origin = node.culture.origin
    if not parent_names:
        return name_of(origin)
    names = names_words(parent_names)
    template = {
        CultureOrigin.SPLIT: _t("Split from {names}"),
        CultureOrigin.MERGED: _t("Merged from {names}"),
        CultureOrigin.STARTER: _t("Grown from starter of {names}"),
    }.get(origin, _t("From {names}"))
    return template.format(names=names)


def names_words(names: Sequence[str]) -> str:
    """Join names: "A", "A and B", "A, B and C"."""
    if len(names) < 2:
        return "".join(names)
    return _t("{first} and {last}").format(first=", ".join(names[:-1]), last=names[-1])


def liquid_words(liquid: RestingLiquid | None, show: Show = plain) -> str:
    """Say what a culture rests in; what has evaporated is a wide guess and said so."""
    if liquid is None:
        return _t("Not noted")
    low, high = liquid.now_l.low, liquid.now_l.high
    stated = show(liquid.stated_l, Kind.VOLUME)
    if show(low, Kind.VOLUME) == stated:
        return stated
    return _t("{stated} when last noted; perhaps {low} to {high} now").format(
        stated=stated, low=show(max(0.0, low), Kind.VOLUME), high=show(high, Kind.VOLUME)
    )


def care_words(care: Care, show: Show = plain) -> str:
    """Say one line of the care log."""
    if is_stated(care) and care.volume_l is not None:
        return _t("Put to rest in {volume}").format(volume=show(care.volume_l, Kind.VOLUME))
    said = name_of(care.kind)
    if care.kind is CareKind.LOOKED and care.look is not None:
        said = _t("Looked at: {found}").format(found=name_of(care.look))
    elif care.kind is CareKind.PH and care.ph is not None:
        said = _t("pH {ph}").format(ph=show(care.ph, Kind.PH))
    elif care.kind is CareKind.FED and care.volume_l is not None:
        said = _t("Fed with {volume}").format(volume=show(care.volume_l, Kind.VOLUME))
        if care.sugar_g:
            said = _t("Fed with {volume} of sweet tea, {sugar} of sugar in it").format(
                volume=show(care.volume_l, Kind.VOLUME), sugar=show(care.sugar_g, Kind.MASS)
            )
    elif care.kind is CareKind.TOPPED_UP and care.volume_l is not None:
        said = _t("Topped up with {volume}").format(volume=show(care.volume_l, Kind.VOLUME))
    elif care.kind is CareKind.STARTER_TAKEN and care.volume_l is not None:
        said = _t("{volume} of starter taken").format(volume=show(care.volume_l, Kind.VOLUME))
    elif care.kind is CareKind.NOTE:
        return care.text
    return _t("{what} – {words}").format(what=said, words=care.text) if care.text else said


def story_lines(story: CultureStory, show: Show = plain) -> tuple[str, ...]:
    """Tell how a culture's batches did, a sentence a line; no more than was read of them."""
    brewed = len(story.batches)
    if not brewed:
        return (_t("No batch has been brewed with it yet."),)
    lines = [_count_words(story, brewed)]
    lines += [words for pace in story.paces if (words := _pace_words(pace, show))]
    tastes = _taste_words(story)
    if tastes:
        lines.append(tastes)
    return tuple(lines)


def mishap_words(mishap: Mishap, zone: tzinfo) -> str:
    """Tell of a batch that was thrown away, with its reason as it was written down."""
    return _t("{name} was thrown away on {day}: {reason}").format(
        name=mishap.batch_name, day=date_words(mishap.at, zone), reason=mishap.reason
    )


def _count_words(story: CultureStory, brewed: int) -> str:
    count = _t("One batch") if brewed == 1 else _t("{count} batches").format(count=brewed)
    rest = [
        _t("{count} drawn off").format(count=story.drawn_off) if story.drawn_off else "",
        _t("{count} souring").format(count=story.souring) if story.souring else "",
        _t("{count} thrown away").format(count=len(story.mishaps)) if story.mishaps else "",
    ]
    told = [part for part in rest if part]
    if not told:
        return _t("{count}.").format(count=count)
    return _t("{count}: {rest}.").format(count=count, rest=", ".join(told))


def _pace_words(pace: Pace, show: Show) -> str:
    ph = number_text(pace.ph, 1)
    sentences = []
    if pace.median_days is not None:
        days = number_text(pace.median_days, 1)
        if pace.counted == 1:
            sentences.append(
                _t("pH {ph} after about {days} days, by the readings of one batch.").format(
                    ph=ph, days=days
                )
            )
        else:
            sentences.append(
                _t("pH {ph} after about {days} days, the median of {count} batches.").format(
                    ph=ph, days=days, count=pace.counted
                )
            )
            if pace.counted <= _FEW:
                sentences.append(_t("That is too few to tell a habit."))
    if pace.not_shown == 1:
        sentences.append(_t("In one batch no reading was as low as pH {ph}.").format(ph=ph))
    elif pace.not_shown:
        sentences.append(
            _t("In {count} batches no reading was as low as pH {ph}.").format(
                count=pace.not_shown, ph=ph
            )
        )
    return " ".join(sentences)


def _taste_words(story: CultureStory) -> str:
    if not story.tastes:
        return ""
    parts = [
        _t("{taste}: {count}").format(taste=name_of(mark), count=story.tastes[mark])
        for mark in TasteMark
        if mark in story.tastes
    ]
    return _t("Tasted: {parts}.").format(parts=", ".join(parts))
