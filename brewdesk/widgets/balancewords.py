"""The balance of what is poured, as it would be, in a line that follows the typing."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from brewdesk.services.desk import Desk
from brewdesk.services.drops import Choice, ChoiceKind, JarFacts, ShelfFacts
from brewdesk.services.records import Estimate, ImpossibleInput, Kind
from brewdesk.services.wording.amounts import Show, number_text

_TAKEN = (
    ChoiceKind.LEND,
    ChoiceKind.KEEP,
    ChoiceKind.MERGE_PART,
    ChoiceKind.MERGE_ALL,
    ChoiceKind.DRAW_PART,
)


def _t(text: str) -> str:
    return QCoreApplication.translate("BalanceWords", text)


def balance_words(
    desk: Desk,
    facts: ShelfFacts,
    choice: Choice,
    volume_l: float | None,
    store_id: int | None = None,
) -> str:
    """Say what each vessel would hold afterwards; empty while the amount is not known."""
    show = desk.quantities.show
    if choice.kind not in _TAKEN:
        return ""
    source = facts.jar_of_batch(choice.from_batch_id or 0)
    from_l = source.now_l if source is not None else None
    if source is None and choice.from_culture_id is not None:
        from_l = facts.resting_l.get(choice.from_culture_id)
    if choice.kind is ChoiceKind.MERGE_ALL:
        volume_l = from_l
    if volume_l is None or from_l is None:
        return ""
    name = source.vessel.name if source is not None else _store_name(facts, choice.from_culture_id)
    parts = [_after(name, from_l, -volume_l, show)]
    into = _into(facts, choice, store_id)
    if into is not None:
        parts.append(_after(into[0], into[1], volume_l, show))
    return " ".join(parts)


def _into(facts: ShelfFacts, choice: Choice, store_id: int | None) -> tuple[str, float] | None:
    if choice.kind in (ChoiceKind.MERGE_PART, ChoiceKind.MERGE_ALL):
        jar: JarFacts | None = facts.jar_of_batch(choice.to_batch_id or 0)
        return None if jar is None else (jar.vessel.name, jar.now_l)
    if choice.kind is ChoiceKind.KEEP:
        kept_id = store_id if store_id is not None else next(iter(choice.store_ids), None)
        if kept_id is None:
            return None
        return _store_name(facts, kept_id), facts.resting_l.get(kept_id, 0.0)
    return None


def _store_name(facts: ShelfFacts, culture_id: int | None) -> str:
    culture = facts.cultures.get(culture_id or 0)
    return "" if culture is None else culture.name


def _after(name: str, before_l: float, change_l: float, show: Show) -> str:
    template = _t("{name}: {before} − {change} = {after}.")
    if change_l > 0.0:
        template = _t("{name}: {before} + {change} = {after}.")
    after_l = before_l + change_l
    if after_l < -1e-9:
        return _t("{name} holds {before}.").format(name=name, before=show(before_l, Kind.VOLUME))
    return template.format(
        name=name,
        before=show(before_l, Kind.VOLUME),
        change=show(abs(change_l), Kind.VOLUME),
        after=show(max(after_l, 0.0), Kind.VOLUME),
    )


def blend_words(desk: Desk, choice: Choice, volume_l: float | None) -> str:
    """Say what pouring two batches together makes of the pH; empty where nothing is known."""
    if choice.kind not in (ChoiceKind.MERGE_PART, ChoiceKind.MERGE_ALL):
        return ""
    if choice.from_batch_id is None or choice.to_batch_id is None:
        return ""
    if choice.kind is ChoiceKind.MERGE_PART and volume_l is None:
        return ""
    try:
        preview = desk.liquids.preview_merge(choice.from_batch_id, choice.to_batch_id, volume_l)
    except ImpossibleInput:
        return ""
    if preview.before.ph is None or preview.after.ph is None:
        return _t("Without a pH of both, that of the blend is not known.")
    return _t("Its pH goes from about {before} to {after}.").format(
        before=number_text(preview.before.ph.value, 2), after=range_words(preview.after.ph, 2)
    )


def range_words(estimate: Estimate, decimals: int) -> str:
    """Write an estimate as its bounds, with the value where the two differ."""
    low, high = (number_text(end, decimals) for end in (estimate.low, estimate.high))
    value = number_text(estimate.value, decimals)
    if low == high:
        return value
    return _t("{value} ({low} to {high})").format(value=value, low=low, high=high)
