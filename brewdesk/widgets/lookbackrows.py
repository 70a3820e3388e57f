"""What the pictures of a look back show, as their rows."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.lookbackview import Group, LookBackView, Month, Tally
from brewdesk.services.records import Kind
from brewdesk.services.wording.amounts import Show
from brewdesk.services.wording.lookback import days_words, dot_words, group_about, group_words
from brewdesk.widgets.dotspec import PlotDot, PlotRow
from brewdesk.widgets.monthstrip import StripCell, StripRow
from brewdesk.widgets.tallybars import TallyRow

_LEAST_SPAN_C = 4.0  # a degree is no more than a quarter of a bar
_FOOT_C = 2.0  # how far below the coldest month a bar begins


def _t(text: str) -> str:
    return QCoreApplication.translate("LookBackRows", text)


def plot_rows(view: LookBackView, show: Show, zone: tzinfo) -> tuple[PlotRow, ...]:
    """Return a row of dots for each group that has any."""
    return tuple(_plot_row(group, view, show, zone) for group in view.groups if group.dots)


def _plot_row(group: Group, view: LookBackView, show: Show, zone: tzinfo) -> PlotRow:
    spread = group.spread
    interval = None if spread is None else spread.interval
    return PlotRow(
        name=group_words(group.key, view.question.factor, show),
        about=group_about(group),
        dots=tuple(
            PlotDot(
                key=dot.batch.batch_id,
                days=dot.days,
                is_open=dot.is_open,
                words=dot_words(dot, show, zone),
            )
            for dot in group.dots
        ),
        median=None if spread is None else spread.median,
        low=None if interval is None else interval.low,
        high=None if interval is None else interval.high,
        guess=group.guess_days,
    )


def month_rows(months: Sequence[Month], show: Show) -> tuple[StripRow, ...]:
    """Return warmth, days, batches and litres by month."""
    unit_c = show(20.0, Kind.TEMPERATURE).rpartition(" ")[2]
    unit_l = show(20.0, Kind.VOLUME).rpartition(" ")[2]
    known = [month.temperature_c for month in months if month.temperature_c is not None]
    low_c = min(known, default=0.0) - _FOOT_C
    span_c = max(max(known, default=0.0) - low_c, _LEAST_SPAN_C)
    days = [None if month.spread is None else month.spread.median for month in months]
    return (
        StripRow(
            name=_t("Mean {unit}").format(unit=unit_c),
            cells=tuple(
                StripCell()
                if month.temperature_c is None
                else StripCell(
                    text=show(month.temperature_c, Kind.TEMPERATURE).rpartition(" ")[0],
                    share=(month.temperature_c - low_c) / span_c,
                )
                for month in months
            ),
            is_warmth=True,
        ),
        _bars(_t("Days"), days, days_words),
        _bars(_t("Batches"), [float(month.begun) for month in months], days_words),
        _bars(
            _t("Drunk, {unit}").format(unit=unit_l),
            [month.drunk_l for month in months],
            lambda volume_l: show(volume_l, Kind.VOLUME).rpartition(" ")[0],
        ),
    )


def _bars(name: str, values: Sequence[float | None], words: Callable[[float], str]) -> StripRow:
    """Return a row of bars; what is nought or not known has none."""
    most = max((value for value in values if value), default=1.0)
    return StripRow(
        name=name,
        cells=tuple(
            StripCell(text=words(value), share=value / most) if value else StripCell()
            for value in values
        ),
    )


def tally_rows(
    view: LookBackView, show: Show, tally_of: Callable[[Group], Tally]
) -> tuple[TallyRow, ...]:
    """Return a bar for each group that has any counts."""
    found = []
    for group in view.groups:
        tally = tally_of(group)
        if tally.count:
            name = group_words(group.key, view.question.factor, show)
            found.append(TallyRow(name=name, counts=(tally.under, tally.right, tally.over)))
    return tuple(found)
