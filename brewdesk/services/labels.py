"""What stands on a label: plain values in, finished words out. Nothing is drawn here."""

from __future__ import annotations

import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta, tzinfo
from enum import Enum

from brewdesk.services.wording import labels as words
from brewdesk.services.wording.amounts import Show, plain
from culturecore import drinkverdicts, safety
from culturecore.outcome import Level, Verdict

UID_LENGTH = 8  # of the pantry's uid in a QR code: enough to tell one's own pantries apart
LONGEST_TEXT = 2000  # no label has room for more


class LabelKind(Enum):
    """What the label is stuck on."""

    JAR = "jar"
    BOTTLE = "bottle"
    CULTURE = "culture"
    RESTING_JAR = "resting_jar"


class LabelField(Enum):
    """What may stand on a label, in the order in which it stands there."""

    NAME = "name"
    STAGE = "stage"
    MADE_ON = "made_on"
    TASTE_FROM = "taste_from"
    CHILL_BY = "chill_by"
    BEST_BEFORE = "best_before"
    FEED_BY = "feed_by"
    INGREDIENTS = "ingredients"
    ALLERGENS = "allergens"
    UNDER_PRESSURE = "under_pressure"
    KEEP_COLD = "keep_cold"
    TRACE_ALCOHOL = "trace_alcohol"
    QR = "qr"


F = LabelField
_DRINK = frozenset({F.INGREDIENTS, F.ALLERGENS, F.UNDER_PRESSURE, F.KEEP_COLD, F.TRACE_ALCOHOL})
OFFERED: Mapping[LabelKind, frozenset[LabelField]] = {
    LabelKind.JAR: frozenset(
        {
            F.NAME,
            F.STAGE,
            F.MADE_ON,
            F.TASTE_FROM,
            F.INGREDIENTS,
            F.ALLERGENS,
            F.TRACE_ALCOHOL,
            F.QR,
        }
    ),
    LabelKind.BOTTLE: frozenset({F.NAME, F.MADE_ON, F.CHILL_BY, F.BEST_BEFORE, F.QR}) | _DRINK,
    LabelKind.CULTURE: frozenset({F.NAME, F.STAGE, F.MADE_ON, F.FEED_BY, F.QR}),
    LabelKind.RESTING_JAR: frozenset({F.NAME, F.STAGE, F.MADE_ON, F.FEED_BY, F.QR}),
}
# What the maker may put in other words; dates too, since only the maker knows some of them.
EDITABLE = (
    F.NAME, F.STAGE, F.MADE_ON, F.TASTE_FROM, F.CHILL_BY, F.BEST_BEFORE, F.FEED_BY,
    F.INGREDIENTS, F.ALLERGENS,
)  # fmt: skip
CAUTIONS = (F.UNDER_PRESSURE, F.KEEP_COLD, F.TRACE_ALCOHOL)


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelFacts:
    """Plain values of one record that may be labelled. ``record`` is "batch", "vessel", ..."""

    record: str
    record_id: int
    kind: LabelKind
    name: str
    stage: str = ""
    made_on: datetime | None = None
    taste_from: datetime | None = None
    chill_by: datetime | None = None
    best_before: datetime | None = None
    feed_by: datetime | None = None
    ingredients: str = ""
    allergens: str = ""
    usual_copies: int = 1
    batch_key: str = ""  # the batch whose words hold here, too
    is_likely: bool = False  # what a maker most likely wants a label for now

    @property
    def key(self) -> str:
        """The record, as the maker's own words for it are kept."""
        return f"{self.record}:{self.record_id}"


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelLine:
    """One piece of text on a label, its own name before it where it needs one."""

    field: LabelField
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelContent:
    """Everything on one label. ``code`` is what the QR code says; empty for none."""

    kind: LabelKind
    lines: tuple[LabelLine, ...]
    code: str = ""
    cut: frozenset[LabelField] = frozenset()  # longer than any label, cut short already
    cautions: tuple[Verdict, ...] = field(default=(), compare=False)

    def text(self, wanted: LabelField) -> str:
        """Return the text of a field; empty if it is not on the label."""
        return next((line.text for line in self.lines if line.field is wanted), "")


def code_of(facts: LabelFacts, pantry_uid: str) -> str:
    """Return the record's own short name for a QR code: no free text, no personal data."""
    return f"brewdesk:{facts.record}:{pantry_uid[:UID_LENGTH]}-{facts.record_id}"


def field_texts(facts: LabelFacts, zone: tzinfo) -> dict[LabelField, str]:
    """Return the texts that the maker may change, as the record has them."""
    texts = {F.NAME: facts.name, F.STAGE: facts.stage}
    for each in (F.MADE_ON, F.TASTE_FROM, F.BEST_BEFORE, F.FEED_BY):
        moment: datetime | None = getattr(facts, each.value)
        texts[each] = words.date_on_label(moment, zone) if moment is not None else ""
    texts[F.CHILL_BY] = chill_by_text(facts, zone)
    texts[F.INGREDIENTS] = facts.ingredients
    texts[F.ALLERGENS] = facts.allergens
    return texts


def chill_by_text(facts: LabelFacts, zone: tzinfo) -> str:
    """Return the last day that is over before the bottles may be in danger.

    A bare day is read as "to its end", so the day of the danger itself will not do. Bottles that
    are in danger on the day they were filled get the hour.
    """
    danger_at = facts.chill_by
    if danger_at is None:
        return ""
    last = danger_at - timedelta(days=1)
    if facts.made_on is not None and _day(last, zone) < _day(facts.made_on, zone):
        return words.hour_on_label(danger_at, zone)
    return words.date_on_label(last, zone)


def _day(moment: datetime, zone: tzinfo) -> date:
    return moment.astimezone(zone).date()


def inherited(facts: LabelFacts, texts: Mapping[str, Mapping[str, str]]) -> dict[LabelField, str]:
    """Return what the maker wrote for the batch that holds here, too.

    ``texts`` are the maker's words by the record's key and the field's name. What a batch may set
    off is in its bottles as well; what is in it is not all that is in them.
    """
    fields = (F.ALLERGENS,) if facts.record == "bottling" else (F.INGREDIENTS, F.ALLERGENS)
    kept = texts.get(facts.batch_key, {}) if facts.batch_key else {}
    return {each: kept[each.value] for each in fields if each.value in kept}


def label_content(
    facts: LabelFacts,
    *,
    zone: tzinfo,
    pantry_uid: str,
    kind: LabelKind | None = None,
    hidden: frozenset[LabelField] = frozenset(),
    own: Mapping[LabelField, str] | None = None,
    show: Show = plain,
) -> LabelContent:
    """Put a record into the words of its label.

    Parameters
    ----------
    facts
        The record.
    zone
        Where the maker lives: dates are that place's.
    pantry_uid
        The pantry's uid; its first eight signs go into the QR code.
    kind
        Another kind than the record's usual one.
    hidden
        Fields that are left off.
    own
        The maker's words in place of the record's.
    show
        Writes a temperature in the maker's unit.
    """
    kind = kind or facts.kind
    texts = field_texts(facts, zone) | dict(own or {})
    cautions = caution_verdicts()
    lines = []
    cut = frozenset(each for each, text in texts.items() if is_cut_short(text))
    for each in LabelField:
        if each in hidden or each not in OFFERED[kind] or each is F.QR:
            continue
        if each in CAUTIONS:
            text = words.caution_words(each.value, cautions[each], show)
        else:
            text = words.line_words(each.value, kind.value, tidy_text(texts.get(each, "")))
        if text:
            lines.append(LabelLine(field=each, text=text))
    has_code = F.QR not in hidden and F.QR in OFFERED[kind]
    return LabelContent(
        kind=kind,
        lines=tuple(lines),
        code=code_of(facts, pantry_uid) if has_code else "",
        cut=cut & {line.field for line in lines},
        cautions=tuple(cautions[line.field] for line in lines if line.field in cautions),
    )


def caution_verdicts() -> dict[LabelField, Verdict]:
    """Return the judgement behind each caution, with its sources."""
    cold = safety.limit("cold_max_c")
    return {
        F.UNDER_PRESSURE: Verdict("bottle_handling", Level.INFORM, sources=("kuhn_2004",)),
        F.KEEP_COLD: drinkverdicts.storage_verdict(cold),
        F.TRACE_ALCOHOL: drinkverdicts.audience_verdict(),
    }


def tidy_text(text: str) -> str:
    """Return text on one line, without signs that steer instead of saying something.

    Line breaks and tabs turn into spaces; control signs and overrides of the writing direction
    go: one would turn the words beside it around too. Markup stays, as the letters it is.
    """
    kept = "".join(
        " " if sign.isspace() else sign
        for sign in text[: LONGEST_TEXT + 1]
        if sign.isspace() or unicodedata.category(sign) not in ("Cc", "Cs", "Cn")
        if unicodedata.bidirectional(sign) not in _STEERING
    )
    tidy = " ".join(kept.split())
    return tidy if len(tidy) <= LONGEST_TEXT else tidy[: LONGEST_TEXT - 1] + "…"


_STEERING = frozenset({"LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"})


def is_cut_short(text: str) -> bool:
    """Whether a text is longer than any label takes."""
    return len(" ".join(text.split())) > LONGEST_TEXT
