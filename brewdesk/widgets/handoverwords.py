"""The words of a hand-over card: where a culture comes from, and how to keep it."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from brewdesk.printing.handovercard import HandOverCard
from brewdesk.services.amounts import ph_marks
from brewdesk.services.desk import Desk
from brewdesk.services.lineage import Family, FamilyNode
from brewdesk.services.records import CareKind, Culture, Kind
from brewdesk.services.restingliquid import is_stated
from brewdesk.services.settings import CULTURE_LIMIT_C, REST_FEED_DAYS
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.cultures import generation_words, names_words, origin_words
from brewdesk.services.wording.inside import inside
from brewdesk.services.wording.moments import local
from brewdesk.services.wording.stages import name_of

_ANCESTORS = 6  # generations told on the card; a longer line is cut with a word


def _t(text: str) -> str:
    return QCoreApplication.translate("HandOver", text)


def hand_over_card(desk: Desk, culture_id: int) -> HandOverCard:
    """Put a culture into the words of its card.

    Raises
    ------
    StoreTrouble
        If there is no such culture.
    """
    culture = desk.cultures.get(culture_id)
    family = desk.lineage.tree()
    now, zone = desk.clock.now(), desk.clock.zone()
    return HandOverCard(
        kind=_t("Kombucha culture, handed over"),
        title=culture.name,
        made_on=day_words(now, zone),
        facts=_facts(desk, culture, family),
        lineage_title=_t("Where it comes from"),
        lineage=lineage_words(family, culture_id),
        care_title=_t("How to keep it"),
        care=_care(desk),
        feed_by_label=_t("Feed it, or brew with it, by"),
        feed_by=day_words(feed_by(desk, culture), zone),
        cautions_title=_t("Mind"),
        cautions=_cautions(),
        footer=_t("Kitchen experience, not a guarantee. Local rules and advice come first."),
    )


def feed_by(desk: Desk, culture: Culture) -> datetime:
    """Return by when a culture should get fresh sweet tea; one overdue: today.

    Counted from its last feeding, its last batch or its rest, in the maker's own rhythm.
    """
    now = desk.clock.now()
    starts = [culture.born_at]
    if culture.fed_at is not None:
        starts.append(culture.fed_at)
    starts += [
        care.at
        for care in desk.culture_care.care_of(culture.id)
        if care.kind is CareKind.FED or is_stated(care)
    ]
    story = desk.lineage.story(culture.id)
    starts += [batch.ended_at for batch in story.batches if batch.ended_at is not None]
    due = max(starts) + timedelta(days=desk.settings.get(REST_FEED_DAYS))
    return max(due, now)


def lineage_words(family: Family, culture_id: int) -> str:
    """Tell a line from the culture back to its founder, parent by parent."""
    node = family.node(culture_id)
    if node is None:
        return ""
    sentences = [_t("{origin}.").format(origin=origin_words(node, _names(family, node)))]
    told = {culture_id}
    for _ in range(_ANCESTORS):
        parents = [family.node(one) for one in node.parent_ids if one not in told]
        known = [parent for parent in parents if parent is not None]
        if not known:
            break
        node = max(known, key=lambda parent: parent.generation)
        told.add(node.culture.id)
        sentences.append(
            _t("{name}: {origin}.").format(
                name=node.culture.name, origin=inside(origin_words(node, _names(family, node)))
            )
        )
    if node.parent_ids and not all(one in told for one in node.parent_ids):
        sentences.append(_t("The line goes back further."))
    return " ".join(sentences)


def day_words(moment: datetime, zone: tzinfo) -> str:
    """Write a day with its year: the card outlives the month."""
    day = local(moment, zone).date()
    return QLocale().toString(QDate(day.year, day.month, day.day), _t("ddd d MMM yyyy"))


def _names(family: Family, node: FamilyNode) -> list[str]:
    found = [family.node(parent_id) for parent_id in node.parent_ids]
    return [parent.culture.name for parent in found if parent is not None]


def _facts(desk: Desk, culture: Culture, family: Family) -> tuple[tuple[str, str], ...]:
    zone = desk.clock.zone()
    node = family.node(culture.id)
    facts = [
        (_t("Born"), day_words(culture.born_at, zone)),
        (_t("Line"), generation_words(node.generation if node is not None else 0)),
    ]
    if culture.pellicle_mm is not None:
        thickness = _t("about {mm} mm").format(mm=number_text(culture.pellicle_mm, 0))
        facts.append((_t("Pellicle"), thickness))
    facts.append((_t("Rests in"), _rests_in(desk, culture)))
    story = desk.lineage.story(culture.id)
    teas = dict.fromkeys(name_of(batch.tea_kind) for batch in story.batches)
    if teas:
        facts.append((_t("Used to"), names_words([inside(tea) for tea in teas])))
    return tuple(facts)


def _rests_in(desk: Desk, culture: Culture) -> str:
    if culture.rest_volume_l is None:
        return _t("ripe kombucha that covers it")
    return _t("{volume} of ripe kombucha").format(
        volume=desk.quantities.show(culture.rest_volume_l, Kind.VOLUME)
    )


def _care(desk: Desk) -> tuple[str, ...]:
    show = desk.quantities.show
    limit = show(desk.settings.get(CULTURE_LIMIT_C), Kind.TEMPERATURE)
    days = round(desk.settings.get(REST_FEED_DAYS))
    return (
        _t("Keep it covered by its sour liquid, in glass, under a tightly woven cloth."),
        _t("Keep it at room temperature, out of the sun, away from smoke and from fruit."),
        _t(
            "Every {days} days or so, pour in some sweet tea: {tea} of tea and {sugar} of sugar in "
            "{volume} of water, cooled to {limit} or below."
        ).format(
            days=days,
            tea=show(4.0, Kind.MASS),
            sugar=show(50.0, Kind.MASS),
            volume=show(1.0, Kind.VOLUME),
            limit=limit,
        ),
        _t("If it dries up, top it up with ripe, unflavoured kombucha."),
        _t("To brew, use its liquid as starter, at least a tenth of the whole."),
    )


def _cautions() -> tuple[str, ...]:
    marks = ph_marks()
    return (
        _t(
            "Dry, fuzzy or coloured spots on top are signs of mold: then throw out all of it, "
            "culture and liquid. When in doubt, throw it out."
        ),
        _t(
            "A batch must be at pH {most} or below by day {day}; otherwise discard it. Measure it."
        ).format(most=number_text(marks.most_by_deadline, 1), day=marks.deadline_days),
        _t(
            "Home-made kombucha is alive and holds acid and some alcohol. Whoever is pregnant, ill "
            "or weak, and whoever cares for small children, should ask a doctor first."
        ),
    )
