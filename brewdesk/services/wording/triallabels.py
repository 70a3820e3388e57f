"""What a jar of a trial has on its label: its code and a day, and nothing that betrays it."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.trialview import TrialJarView
from brewdesk.services.wording.moments import date_words


def blind_label_words(jar: TrialJarView, now: datetime, zone: tzinfo) -> tuple[str, str]:
    """Return the two lines of a blind label: the code, and when the jar was begun.

    A jar that has not begun has the day on which the label is made.
    """
    begun = jar.batch.started_at if jar.batch is not None else None
    template = (
        QCoreApplication.translate("TrialLabels", "begun {date}")
        if begun is not None
        else QCoreApplication.translate("TrialLabels", "labelled {date}")
    )
    return jar.jar.code, template.format(date=date_words(begun or now, zone))
