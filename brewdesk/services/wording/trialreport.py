"""A trial's report in words: to print, and as a picture to publish. Names only if wished."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.paperdoc import Block, Document, Drawing, Facts, Grid, Heading, Para
from brewdesk.services.trialcurves import curves_of
from brewdesk.services.trialdrawing import curves_drawing, effects_drawing
from brewdesk.services.trialview import Comparison, TrialJarView, TrialView
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.batchreport import language
from brewdesk.services.wording.safetylog import full_date
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.trials import (
    comparison_words,
    crossing_words,
    difference_words,
    differences_lead,
    gap_words,
    headline,
    many_words,
    marks_words,
    outcome_name,
    scope_words,
)
from culturecore.units import Kind


def _t(text: str) -> str:
    return QCoreApplication.translate("TrialReport", text)


def trial_report(
    view: TrialView, show: Show, zone: tzinfo, now: datetime, *, with_names: bool = False
) -> Document:
    """Put a trial into the words of its report.

    ``with_names`` tells the names of vessels and tasters; codes stand in their place.
    """
    blocks: list[Block] = [Facts(pairs=_pairs(view, zone)), *_result(view, show)]
    curves = _curves(view)
    if curves is not None:
        blocks.append(curves)
    effects = _effects(view, show)
    if effects is not None:
        blocks += [Heading(text=_t("Differences")), effects]
    told = [Para(text=comparison_words(one, view.trial.factor, show)) for one in view.comparisons]
    blocks += told
    if many_words(view):
        blocks.append(Para(text=many_words(view), is_muted=True))
    blocks += [Heading(text=_t("Jars")), _jars(view, show, with_names=with_names)]
    blocks += [Heading(text=_t("What else differs")), Para(text=differences_lead(view))]
    blocks += [
        Para(text=difference_words(one, show, zone))
        for one in view.differences
        if with_names or one.code not in ("place", "culture")
    ]
    if view.trial.conclusion:
        blocks += [Heading(text=_t("The maker's conclusion")), Para(text=view.trial.conclusion)]
    if with_names:
        blocks += _tasters(view)
    return _document(view, blocks, zone, now)


def trial_picture(view: TrialView, show: Show, zone: tzinfo, now: datetime) -> Document:
    """Return what the picture to publish shows: question, jars, curves, the honest sentence.

    No name of a vessel, a place, a culture or a taster is in it.
    """
    blocks: list[Block] = [Facts(pairs=_pairs(view, zone)), *_result(view, show)]
    curves = _curves(view)
    if curves is not None:
        blocks.append(curves)
    effects = _effects(view, show)
    if effects is not None:
        blocks.append(effects)
    if view.differences:
        blocks.append(Para(text=differences_lead(view).rstrip(":") + ".", is_muted=True))
    return _document(view, blocks, zone, now)


def _document(view: TrialView, blocks: list[Block], zone: tzinfo, now: datetime) -> Document:
    return Document(
        kind=_t("Trial report"),
        title=view.trial.name,
        subtitle=view.trial.question,
        made_on=full_date(now, zone),
        blocks=tuple(blocks),
        footer=_t(
            "Made from the maker's own entries; brewdesk cannot check them. A trial at home "
            "tells of its own jars. It says nothing of safety; local rules come first."
        ),
        page_words=_t("Page {page} of {pages}"),
        is_one_page=False,
        language=language(),
    )


def _pairs(view: TrialView, zone: tzinfo) -> tuple[tuple[str, str], ...]:
    trial = view.trial
    counts = ", ".join(
        _t("{count} {arm}").format(count=count, arm=arm.name)
        for arm, count in zip(view.arms, view.arm_counts, strict=True)
    )
    left_out = len(view.jars) - len(view.counted)
    pairs = [
        (_t("Jars differ in"), name_of(trial.factor)),
        (_t("Jars counted"), counts or str(len(view.counted))),
        (_t("Tasted blind"), _t("yes") if trial.is_blind else _t("no")),
    ]
    if left_out:
        pairs.append((_t("Left out"), str(left_out)))
    if trial.started_at is not None:
        pairs.append((_t("Begun"), full_date(trial.started_at, zone)))
    if trial.ended_at is not None:
        pairs.append((name_of(trial.state).capitalize(), full_date(trial.ended_at, zone)))
    return tuple(pairs)


def _result(view: TrialView, show: Show) -> list[Block]:
    return [
        Heading(text=_t("What these jars show")),
        Para(text=headline(view, show)),
        Para(text=scope_words(), is_muted=True),
    ]


def _curves(view: TrialView) -> Drawing | None:
    curves = curves_of(view)
    if curves is None:
        return None
    return curves_drawing(
        curves,
        [arm.name for arm in view.arms],
        threshold_ph=view.threshold_ph,
        day_label=_t("day since each jar began"),
        ph_label=_t("pH"),
        threshold_label=_t("pH {ph}").format(ph=number_text(view.threshold_ph, 1)),
        words=_t("Thin lines are single jars, thick ones the mean of a level.")
        if curves.means
        else _t("Each line is a single jar."),
    )


def _effects(view: TrialView, show: Show) -> Drawing | None:
    bounded = [one for one in view.comparisons if one.effect is not None and one.effect.is_bounded]
    if not bounded:
        return None
    return effects_drawing(
        bounded,
        [(_title(one, view), *_ends(one, show)) for one in bounded],
        _t(
            "The bar holds the difference in 95 of 100 such trials; where it crosses the line, "
            "there may be none."
        ),
    )


def _title(one: Comparison, view: TrialView) -> str:
    if len(view.arms) < 3:
        return outcome_name(one.outcome)
    return _t("{outcome}: {arm}").format(outcome=outcome_name(one.outcome), arm=one.second.name)


def _ends(one: Comparison, show: Show) -> tuple[str, str]:
    assert one.effect is not None
    return (
        gap_words(one.outcome, one.effect.low, show),
        gap_words(one.outcome, one.effect.high, show),
    )


def _jars(view: TrialView, show: Show, *, with_names: bool) -> Grid:
    rows = []
    for jar in view.jars:
        name = jar.vessel.name if with_names and jar.vessel is not None else ""
        code = f"{jar.jar.code} {name}".strip()
        rows.append((code, "" if jar.arm is None else jar.arm.name, *_measured(jar, show)))
    return Grid(
        headers=(
            _t("Jar"),
            _t("Level"),
            _t("pH {ph} passed").format(ph=number_text(view.threshold_ph, 1)),
            _t("Acidity"),
            _t("Pellicle"),
            _t("Liking"),
        ),
        rows=tuple(rows),
        shares=(0.15, 0.16, 0.27, 0.12, 0.1, 0.2),
    )


def _measured(jar: TrialJarView, show: Show) -> tuple[str, str, str, str]:
    if jar.jar.left_out_reason:
        return _t("left out: {reason}").format(reason=jar.jar.left_out_reason), "", "", ""
    measures = jar.measures
    acidity, pellicle = measures.acidity_g_per_l, measures.pellicle_mm
    liking = "" if measures.liking is None else number_text(measures.liking, 1)
    return (
        crossing_words(jar),
        "" if acidity is None else show(acidity, Kind.ACIDITY),
        "" if pellicle is None else _t("{mm} mm").format(mm=number_text(pellicle, 1)),
        " · ".join(filter(None, (liking, marks_words(measures.marks)))),
    )


def _tasters(view: TrialView) -> list[Block]:
    rows = [
        (
            score.taster or "–",
            jar.jar.code,
            "" if score.liking is None else number_text(score.liking, 1),
            " · ".join(
                filter(None, ("" if score.mark is None else name_of(score.mark), score.text))
            ),
        )
        for jar in view.jars
        for score in jar.scores
    ]
    if not rows:
        return []
    grid = Grid(
        headers=(_t("Taster"), _t("Jar"), _t("Liking"), _t("Words")),
        rows=tuple(sorted(rows)),
        shares=(0.25, 0.12, 0.12, 0.51),
    )
    return [Heading(text=_t("Tastings")), grid]
