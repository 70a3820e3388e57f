"""What has been learnt of the maker's taste, in a sentence."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QLocale

from culturecore.outcome import Estimate

if TYPE_CHECKING:
    from culturecore.palate import PreferredBand


def _t(text: str) -> str:
    return QCoreApplication.translate("Palate", text)


def learnt_words(learnt: PreferredBand | None) -> str:
    """Say which band tastings have taught, and how sure it is; how to begin while none has."""
    if learnt is None:
        return _t(
            "Nothing is learnt yet: the two pH above hold. Enter a tasting with your readings, "
            "best with a pH of the same hour."
        )
    count = (
        _t("1 tasting")
        if learnt.verdict_count == 1
        else _t("{n} tastings").format(n=learnt.verdict_count)
    )
    sentences = [
        _t("In force after {count}: pH {first} down to {sour}.").format(
            count=count,
            first=_span(learnt.first_taste_ph),
            sour=_span(learnt.too_sour_ph),
        )
    ]
    codes = {caveat.value for caveat in learnt.caveats}
    if "few_verdicts" in codes:
        sentences.append(_t("So few move it little."))
    if "contradictory" in codes:
        sentences.append(_t("They contradict one another, so the band stays wide."))
    elif "no_sweet_end" in codes and "few_verdicts" not in codes:
        sentences.append(_t("No sip was too sweet so far, so the upper end is a guess."))
    elif "no_sour_end" in codes and "few_verdicts" not in codes:
        sentences.append(_t("No sip was too sour so far, so the lower end is a guess."))
    return " ".join(sentences)


def _span(end: Estimate) -> str:
    return _t("{mid} ({low} to {high})").format(
        mid=_number(end.value), low=_number(end.low), high=_number(end.high)
    )


def _number(value: float) -> str:
    return QLocale().toString(value, "f", 2)
