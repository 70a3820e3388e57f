"""Turn a `CurveView` into what one plot shows: ranges, marks and their words."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.forecasts import CurvePoint, CurveView, Imagined
from brewdesk.services.records import Estimate, Method
from brewdesk.widgets.chartlegend import LegendEntry, Look
from brewdesk.widgets.plotspec import PlotCourse, PlotForecast, PlotLine, PlotPoint, PlotSpec

# The levels that makers are held to; the services judge by them, here they are only drawn.
_PH_ROOM = (2.3, 4.7)
_DAYS_AFTER = 4.0  # shown beyond the window's likely end
_LEAST_DAYS = 14.0
_EDGE_DAYS = 0.4
_BRIEF = (Look.MEDIAN, Look.IMAGINED, Look.OUTER)


def _t(text: str) -> str:
    return QCoreApplication.translate("CurveSpec", text)


def ph_spec(view: CurveView, imagined: Imagined | None = None) -> PlotSpec | None:
    """Return the pH over the days, or None while there is neither reading nor forecast."""
    points = _points(view.points, view)
    forecast = view.forecast
    if not points and forecast is None:
        return None
    highest = max([point.value + point.sd for point in points], default=0.0)
    high = max(_PH_ROOM[1], highest + 0.15)
    lowest = min([point.value - point.sd for point in points], default=9.0)
    low = min(_PH_ROOM[0], lowest - 0.15)
    opens, closes = _edges(view)
    return PlotSpec(
        day_range=_day_range(view, opens, closes),
        value_range=(low, high),
        value_digits=2,
        tick_digits=1,
        unit_text=_t("pH over the days of the batch"),
        points=points,
        window=_window(view, opens, closes),
        window_bounds=_bounds(opens, closes),
        band=(view.too_sour_ph, view.first_taste_ph),
        band_label=_t("your taste: pH {low} to {high}").format(
            low=_number(view.too_sour_ph, 1), high=_number(view.first_taste_ph, 1)
        ),
        lines=(
            PlotLine(
                value=view.safe_ph,
                label=_t("pH {ph}: to be reached by day {day}").format(
                    ph=_number(view.safe_ph, 1), day=f"{view.deadline_day:.0f}"
                ),
                is_right=True,
            ),
            PlotLine(
                value=view.least_ph,
                label=_t("pH {ph}: do not drink below").format(ph=_number(view.least_ph, 1)),
            ),
        ),
        deadline=(view.deadline_day, view.safe_ph),
        now_day=view.now_day,
        now_label=_t("now"),
        forecast=_course(forecast.days, forecast.ph) if forecast is not None else None,
        imagined=(
            PlotCourse(days=imagined.days, values=imagined.ph_median)
            if imagined is not None
            else None
        ),
    )


def acid_spec(view: CurveView, imagined: Imagined | None = None) -> PlotSpec | None:
    """Return the titratable acidity over the days, or None while there is nothing of it."""
    points = _points(view.ta_points, view)
    forecast = view.forecast
    if not points and forecast is None:
        return None
    opens, closes = _edges(view)
    day_range = _day_range(view, opens, closes)
    curve = _course(forecast.days, forecast.ta_g_per_l) if forecast is not None else None
    tops = [point.value + point.sd for point in points]
    if curve is not None:
        tops += [
            value
            for day, value in zip(curve.days, curve.outer_high, strict=True)
            if day <= day_range[1]
        ]
    return PlotSpec(
        day_range=day_range,
        value_range=(0.0, max(2.0, 1.08 * max(tops))),
        value_digits=1,
        tick_digits=0,
        unit_text=_t("Titratable acidity in g/L, counted as acetic acid"),
        points=points,
        window=_window(view, opens, closes),
        window_bounds=_bounds(opens, closes),
        now_day=view.now_day,
        now_label=_t("now"),
        forecast=curve,
        imagined=(
            PlotCourse(days=imagined.days, values=imagined.ta_median)
            if imagined is not None
            else None
        ),
    )


def legend_of(spec: PlotSpec, *, is_brief: bool = False) -> tuple[LegendEntry, ...]:
    """Name what the plot shows, and only that.

    ``is_brief`` names no more than what two courses side by side are told apart by.
    """
    looks = (
        (Look.DOT, _t("reading ± uncertainty"), any(not p.is_rough for p in spec.points)),
        (Look.DIAMOND, _t("read off a strip"), any(p.is_rough for p in spec.points)),
        (Look.HOLLOW, _t("does not fit the others"), any(p.is_doubted for p in spec.points)),
        (Look.MEDIAN, _t("most likely"), spec.forecast is not None),
        (Look.IMAGINED, _t("what if"), spec.imagined is not None),
        (Look.INNER, _t("1 in 2 chance"), spec.forecast is not None),
        (Look.OUTER, _t("4 in 5 chance"), spec.forecast is not None),
        (Look.WINDOW, _t("tasting window"), spec.window is not None),
        (Look.BAND, _t("your taste"), spec.band is not None),
        (Look.LIMIT, _t("safety limit"), bool(spec.lines)),
    )
    return tuple(
        LegendEntry(look, text)
        for look, text, is_shown in looks
        if is_shown and (not is_brief or look in _BRIEF)
    )


def _points(points: Sequence[CurvePoint], view: CurveView) -> tuple[PlotPoint, ...]:
    return tuple(
        PlotPoint(
            day=point.day,
            value=point.value,
            sd=point.sd,
            text=point.text,
            is_rough=point.method is Method.STRIP,
            is_doubted=point.is_suspect,
        )
        for point in points
    )


def _edges(view: CurveView) -> tuple[Estimate | None, Estimate | None]:
    if view.forecast is None:
        return None, None
    return view.forecast.window_opens_day, view.forecast.window_closes_day


def _window(
    view: CurveView, opens: Estimate | None, closes: Estimate | None
) -> tuple[float, float] | None:
    if opens is None or view.forecast is None:
        return None
    end = closes.value if closes is not None else view.forecast.days[-1]
    return opens.value, max(end, opens.value)


def _bounds(opens: Estimate | None, closes: Estimate | None) -> tuple[float, ...]:
    return tuple(
        day for edge in (opens, closes) if edge is not None for day in (edge.low, edge.high)
    )


def _day_range(
    view: CurveView, opens: Estimate | None, closes: Estimate | None
) -> tuple[float, float]:
    ends = [_LEAST_DAYS, (view.now_day or 0.0) + _DAYS_AFTER]
    ends += [edge.high + _DAYS_AFTER for edge in (opens, closes) if edge is not None]
    ends += [point.day + 1.0 for point in (*view.points, *view.ta_points)]
    last = max(ends)
    if view.forecast is not None:
        seen = max([point.day for point in view.points], default=0.0)
        last = max(min(last, view.forecast.days[-1]), seen + 1.0)
    return -_EDGE_DAYS, last


def _course(days: tuple[float, ...], quantiles: dict[float, tuple[float, ...]]) -> PlotForecast:
    return PlotForecast(
        days=days,
        outer_low=quantiles[0.1],
        inner_low=quantiles[0.25],
        median=quantiles[0.5],
        inner_high=quantiles[0.75],
        outer_high=quantiles[0.9],
    )


def _number(value: float, digits: int) -> str:
    return QLocale().toString(value, "f", digits)
