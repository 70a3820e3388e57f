"""What has been learnt of the maker's taste, in a sentence."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.wording.shownunits import UnitOf, estimate_words, metric_unit
from culturecore.outcome import Estimate
from culturecore.tastewords import Leaning, read_words
from culturecore.units import Kind

if TYPE_CHECKING:
    from culturecore.palate import PreferredBand


def _t(text: str) -> str:
    return QCoreApplication.translate("Palate", text)


def learnt_words(learnt: PreferredBand | None, unit_of: UnitOf = metric_unit) -> str:
    """Say which band tastings have taught, and how sure it is; how to begin while none has.

    ``unit_of`` gives the unit in which the maker reads sugar.
    """
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
    if learnt.words_count:
        sentences.append(
            _t("One tasting was read from the words of a note.")
            if learnt.words_count == 1
            else _t("{n} tastings were read from the words of notes.").format(n=learnt.words_count)
        )
    sentences.append(_sweetness_words(learnt, unit_of))
    codes = {caveat.value for caveat in learnt.caveats}
    if "few_verdicts" in codes:
        sentences.append(_t("So few move it little."))
    if "contradictory" in codes:
        sentences.append(_t("They contradict one another, so the band stays wide."))
    elif "no_sweet_end" in codes and "few_verdicts" not in codes:
        sentences.append(_t("No sip was too sweet so far, so the upper end is a guess."))
    elif "no_sour_end" in codes and "few_verdicts" not in codes:
        sentences.append(_t("No sip was too sour so far, so the lower end is a guess."))
    return " ".join(sentence for sentence in sentences if sentence)


def read_as_words(note: str) -> str:
    """Say what a note was read as: "read as: too sweet"; "" for one that says nothing of taste."""
    what = {
        Leaning.TOO_SWEET: _t("too sweet"),
        Leaning.RIGHT: _t("right"),
        Leaning.TOO_SOUR: _t("too sour"),
    }.get(read_words(note).leaning)
    return "" if what is None else _t("read as: {what}").format(what=what)


def _sweetness_words(learnt: PreferredBand, unit_of: UnitOf) -> str:
    """Say what is known of the sweetness that the maker likes; "" while nothing is."""
    sweetest, driest = (
        estimate_words(end, Kind.SUGAR, unit_of) if end is not None else ""
        for end in (learnt.sweetest_g_per_l, learnt.driest_g_per_l)
    )
    if sweetest and driest:
        return _t(
            "Too sweet from about {sweetest} of sugar, hardly sweet enough below about {driest}; "
            "the sugar is reckoned, so only what is surely beyond this narrows a window."
        ).format(sweetest=sweetest, driest=driest)
    if sweetest:
        return _t(
            "Too sweet from about {sweetest} of sugar; the sugar is reckoned, so only what is "
            "surely above this narrows a window."
        ).format(sweetest=sweetest)
    if driest:
        return _t(
            "Hardly sweet enough below about {driest} of sugar; the sugar is reckoned, so only "
            "what is surely below this narrows a window."
        ).format(driest=driest)
    return ""


def _span(end: Estimate) -> str:
    return _t("{mid} ({low} to {high})").format(
        mid=_number(end.value), low=_number(end.low), high=_number(end.high)
    )


def _number(value: float) -> str:
    return QLocale().toString(value, "f", 2)
