"""A label of each kind to show what labels look like before anything is ticked. Invented."""

from __future__ import annotations

from datetime import datetime, timedelta

from brewdesk.services.labels import LabelFacts, LabelKind
from brewdesk.services.wording.labels import sample_texts

SAMPLE = "sample"  # in place of a record's name, so that a code leads nowhere


def sample_facts(kind: LabelKind, now: datetime) -> LabelFacts:
    """Return an invented record for a label of a kind, its dates around ``now``."""
    texts = sample_texts(kind.value)
    return LabelFacts(
        record=SAMPLE,
        record_id=0,
        kind=kind,
        name=texts["name"],
        stage=texts["stage"],
        made_on=now,
        taste_from=now + timedelta(days=6),
        chill_by=now + timedelta(days=4),
        best_before=now + timedelta(days=30),
        feed_by=now + timedelta(days=14),
        ingredients=texts["ingredients"],
        allergens=texts["allergens"],
    )
