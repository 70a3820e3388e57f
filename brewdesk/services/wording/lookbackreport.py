"""A look back on paper: the sentences, the dots, the groups, months and losses."""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import tzinfo

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.lookbackdrawing import DrawnGroup, dots_drawing
from brewdesk.services.lookbackview import Group, LookBackView
from brewdesk.services.paperdoc import Block, Document, Grid, Heading, Para
from brewdesk.services.wording.amounts import Show
from brewdesk.services.wording.batchreport import language
from brewdesk.services.wording.inside import inside
from brewdesk.services.wording.lookback import (
    days_words,
    factor_words,
    group_about,
    group_line,
    group_words,
    measure_words,
    sentences,
)
from brewdesk.services.wording.losses import cause_words, help_words, loss_words
from brewdesk.services.wording.safetylog import full_stamp
from culturecore.units import Kind

_GROUPS_ON_PAPER = 24  # a drawing does not go over a page's end


def _t(text: str) -> str:
    return QCoreApplication.translate("LookBackReport", text)


def look_back_report(
    view: LookBackView, filters: Sequence[str], show: Show, zone: tzinfo
) -> Document:
    """Put a look back into a document; ``filters`` are the names of those in use."""
    question = view.question
    title = _t("Days {what}, by {factor}").format(
        what=measure_words(question.measure, question, show),
        factor=inside(factor_words(question.factor)),
    )
    blocks: list[Block] = [Para(text=sentence) for sentence in sentences(view, show)]
    shown = [group for group in view.groups if group.dots]
    if shown:
        blocks += [Heading(text=title), _drawing(view, shown[:_GROUPS_ON_PAPER], show)]
        blocks.append(
            Para(
                text=_t(
                    "Each dot is a batch; a hollow one is not there, or ended before. The line is "
                    "the median, the band where the median of many such batches lies (nine times "
                    "in ten; from five batches on). Groups stand in no order of merit. Tea, "
                    "culture, place and season change together: this shows what was, not what it "
                    "came from."
                ),
                is_muted=True,
            )
        )
    blocks += [Heading(text=_t("Groups")), _groups(view, show)]
    if view.months:
        blocks += [Heading(text=_t("Month by month")), _months(view, show)]
    blocks += _losses(view, show, zone)
    return Document(
        kind=_t("Look back"),
        title=title,
        subtitle=", ".join(filters) if filters else _t("All batches"),
        made_on=full_stamp(view.now, zone),
        blocks=tuple(blocks),
        footer=_t("brewdesk – what was noted, as far as its numbers carry"),
        page_words=_t("Page {page} of {pages}"),
        is_one_page=False,
        language=language(),
    )


def _drawing(view: LookBackView, groups: Sequence[Group], show: Show) -> Block:
    question = view.question
    drawn = []
    for group in groups:
        spread = group.spread
        band = None
        if spread is not None and spread.interval is not None:
            band = (spread.interval.low, spread.interval.high)
        drawn.append(
            DrawnGroup(
                name=group_words(group.key, question.factor, show),
                about=group_about(group),
                dots=tuple((dot.days, dot.is_open) for dot in group.dots),
                median=None if spread is None else spread.median,
                band=band,
            )
        )
    words = " ".join(group_line(group, question, show) for group in groups)
    return dots_drawing(drawn, day_label=_t("days"), words=words)


def _groups(view: LookBackView, show: Show) -> Grid:
    return Grid(
        headers=(
            _t("Group"),
            _t("Batches"),
            _t("Median days"),
            _t("Range"),
            _t("Median lies"),
            _t("Next one"),
            _t("Warmth"),
            _t("Right taste"),
        ),
        rows=tuple(_group_row(view, group, show) for group in view.groups),
        shares=(0.24, 0.09, 0.12, 0.11, 0.13, 0.1, 0.1, 0.11),
    )


def _group_row(view: LookBackView, group: Group, show: Show) -> tuple[str, ...]:
    spread = group.spread
    none = "–"
    median = extent = interval = none
    if spread is not None:
        median = none if spread.median is None else days_words(spread.median)
        if spread.low != spread.high:
            extent = f"{days_words(spread.low)}–{days_words(spread.high)}"
        if spread.interval is not None:
            high = spread.interval.high
            interval = (
                _t("over {low}").format(low=days_words(spread.interval.low))
                if math.isinf(high)
                else f"{days_words(spread.interval.low)}–{days_words(high)}"
            )
        else:
            interval = _t("too few")
    tastes = group.tastes
    return (
        group_words(group.key, view.question.factor, show),
        str(0 if spread is None else spread.count),
        median,
        extent,
        interval,
        none if group.guess_days is None else days_words(group.guess_days),
        none if group.temperature_c is None else show(group.temperature_c, Kind.TEMPERATURE),
        _t("{right} of {count}").format(right=tastes.right, count=tastes.count)
        if tastes.count
        else none,
    )


def _months(view: LookBackView, show: Show) -> Grid:
    rows = []
    for month in view.months:
        spread = month.spread
        has_median = spread is not None and spread.median is not None
        rows.append(
            (
                f"{QLocale().standaloneMonthName(month.month)} {month.year}",
                str(month.begun),
                "–" if month.temperature_c is None else show(month.temperature_c, Kind.TEMPERATURE),
                days_words(spread.median)
                if spread is not None and has_median and spread.median is not None
                else "–",
                show(month.drunk_l, Kind.VOLUME) if month.drunk_l > 0.0 else "–",
            )
        )
    return Grid(
        headers=(_t("Month"), _t("Begun"), _t("Mean warmth"), _t("Median days"), _t("Drunk")),
        rows=tuple(rows),
        shares=(0.34, 0.12, 0.18, 0.18, 0.18),
    )


def _losses(view: LookBackView, show: Show, zone: tzinfo) -> list[Block]:
    if not view.losses:
        return []
    blocks: list[Block] = [
        Heading(text=_t("Losses")),
        Grid(
            headers=(_t("What"), _t("Cause"), _t("In your words")),
            rows=tuple(
                (loss_words(loss, show, zone), cause_words(loss.cause), loss.reason)
                for loss in view.losses
            ),
            shares=(0.36, 0.16, 0.48),
        ),
    ]
    causes = [c for c in dict.fromkeys(loss.cause for loss in view.losses) if help_words(c)]
    if causes:
        blocks.append(Heading(text=_t("What usually helps (common practice, no source)")))
        blocks += [
            Para(
                text=_t("{cause}: {help}").format(cause=cause_words(cause), help=help_words(cause))
            )
            for cause in causes
        ]
    return blocks
