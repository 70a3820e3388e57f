"""The words on labels, and what is said about sheets and what does not fit."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.moments import local, time_words
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Verdict
from culturecore.stages import TeaKind
from culturecore.units import Kind


def _t(text: str) -> str:
    return QCoreApplication.translate("Labels", text)


def date_on_label(moment: datetime, zone: tzinfo) -> str:
    """Write a day with its month in letters and its year: no order of figures to be misread."""
    day = local(moment, zone).date()
    return QLocale().toString(QDate(day.year, day.month, day.day), _t("d MMM yyyy"))


def hour_on_label(moment: datetime, zone: tzinfo) -> str:
    """Write a day with its hour, rounded down."""
    return _t("{day}, {hour}").format(
        day=date_on_label(moment, zone),
        hour=time_words(local(moment, zone).replace(minute=0), zone),
    )


def kind_words(kind: str) -> str:
    """Name a kind of label."""
    return {
        "jar": _t("Jar"),
        "bottle": _t("Bottle"),
        "culture": _t("Culture"),
        "resting_jar": _t("Resting jar"),
    }[kind]


def field_words(field: str) -> str:
    """Name a field of a label."""
    return {
        "name": _t("Name"),
        "stage": _t("Stage"),
        "made_on": _t("Made on"),
        "taste_from": _t("Taste from"),
        "chill_by": _t("Chill by"),
        "best_before": _t("Best before"),
        "feed_by": _t("Feed by"),
        "ingredients": _t("Ingredients"),
        "allergens": _t("Allergens"),
        "under_pressure": _t("Contents under pressure"),
        "keep_cold": _t("Keep refrigerated"),
        "trace_alcohol": _t("Contains some alcohol"),
        "qr": _t("QR code"),
    }[field]


def line_words(field: str, kind: str, text: str) -> str:
    """Put a field's own text into its line; empty text makes no line."""
    if not text:
        return ""
    made_on = {
        "jar": _t("Made {text}"),
        "bottle": _t("Filled {text}"),
        "culture": _t("Born {text}"),
        "resting_jar": _t("Born {text}"),
    }
    patterns = {
        "made_on": made_on[kind],
        "taste_from": _t("Taste from {text}"),
        "chill_by": _t("Chill by {text}"),
        "best_before": _t("Best before {text}"),
        "feed_by": _t("Feed by {text}"),
        "ingredients": _t("Ingredients: {text}"),
        "allergens": _t("Allergens: {text}"),
    }
    return patterns.get(field, "{text}").format(text=text)


def caution_words(field: str, verdict: Verdict, show: Show) -> str:
    """Say a caution in the few words that a label has room for."""
    sentences = {
        "bottle_handling": _t("Contents under pressure. Chill before opening; do not shake."),
        "storage_cold": _t("Keep refrigerated, at {limit} or below."),
        "not_for_everyone": _t("Alive; contains some alcohol and caffeine."),
    }
    limit_c = verdict.numbers.get("limit_c")
    limit = "" if limit_c is None else show(limit_c, Kind.TEMPERATURE)
    return sentences[verdict.code].format(limit=limit)


def fit_note_words(reason: str, field: str, name: str) -> str:
    """Say what did not fit on a label."""
    sentences = {
        "elided": _t("{name}: “{field}” is cut short. It does not fit on this label."),
        "left_out": _t("{name}: “{field}” is left out. There is no room for it."),
        "too_long": _t("{name}: “{field}” is longer than any label and was cut short."),
        "qr_left_out": _t("{name}: the QR code is left out. It would be too small to be read."),
    }
    return sentences[reason].format(name=name, field=field_words(field))


def sheet_name_words(paper: str, columns: int, rows: int, width_mm: float, height_mm: float) -> str:
    """Describe a sheet by its numbers."""
    return _t("{paper}, {columns} × {rows}, {width} × {height} mm").format(
        paper=paper,
        columns=columns,
        rows=rows,
        width=_number(width_mm),
        height=_number(height_mm),
    )


def roll_name_words(width_mm: float, length_mm: float) -> str:
    """Describe a roll by its numbers."""
    return _t("Roll, {width} mm wide, labels {length} mm long").format(
        width=_number(width_mm), length=_number(length_mm)
    )


def suspect_words() -> str:
    """Say on a label that the liquid may share mold with another."""
    return _t("Do not use: may share mold")


def bottles_words(state: str, count: int) -> str:
    """Say how many bottles there still are, and how they stand."""
    if count == 1:
        return _t("1 bottle · {state}").format(state=state)
    return _t("{count} bottles · {state}").format(state=state, count=count)


def ingredient_words(ingredient: str) -> str:
    """Name what goes into a batch, as it stands in a list."""
    return {
        "water": _t("water"),
        "sugar": _t("sugar"),
        "kombucha": _t("live kombucha culture"),
        TeaKind.BLACK.value: _t("black tea"),
        TeaKind.GREEN.value: _t("green tea"),
        TeaKind.OOLONG.value: _t("oolong tea"),
        TeaKind.WHITE.value: _t("white tea"),
        TeaKind.MIXED.value: _t("tea"),
        TeaKind.HERBAL.value: _t("herbs"),
    }[ingredient]


def ingredient_list_words(names: Sequence[str]) -> str:
    """Join the names of ingredients into a list that begins with a capital."""
    text = _t(", ").join(names)
    return text[:1].upper() + text[1:]


def sample_words() -> str:
    """Mark a label that is not one of the maker's."""
    return _t("Sample")


def sample_texts(kind: str) -> dict[str, str]:
    """Return invented words for a sample label of a kind."""
    names = {
        "jar": _t("Invented black tea 1"),
        "bottle": _t("Invented ginger 1"),
        "culture": _t("Invented culture"),
        "resting_jar": _t("Invented culture at rest"),
    }
    stages = {"jar": _t("Souring"), "culture": _t("Growing"), "resting_jar": _t("Resting")}
    return {
        "name": names[kind],
        "stage": stages.get(kind, ""),
        "ingredients": _t("Water, live kombucha culture, sugar, black tea, ginger"),
        "allergens": _t("none known to its invented maker"),
    }


def in_vessel_words(name: str, stage: str) -> str:
    """Say on a jar's own label what is in it."""
    return _t("{name} · {stage}").format(name=name, stage=stage)


def sheet_field_words(field: str, *, is_roll: bool = False) -> str:
    """Name a measure of a sheet."""
    if is_roll and field == "page_width_mm":
        return _t("Width of the roll, mm")
    if is_roll and field == "label_height_mm":
        return _t("Length of a label, mm")
    return {
        "name": _t("Name of the sheet"),
        "page_width_mm": _t("Width of the paper, mm"),
        "page_height_mm": _t("Height of the paper, mm"),
        "margin_left_mm": _t("Left edge to the first label, mm"),
        "margin_top_mm": _t("Upper edge to the first label, mm"),
        "columns": _t("Labels across"),
        "rows": _t("Labels down"),
        "label_width_mm": _t("Width of a label, mm"),
        "label_height_mm": _t("Height of a label, mm"),
        "gap_x_mm": _t("Gap between columns, mm"),
        "gap_y_mm": _t("Gap between rows, mm"),
        "corner_mm": _t("Radius of the corners, mm"),
        "shift_x_mm": _t("Move everything right, mm"),
        "shift_y_mm": _t("Move everything down, mm"),
        "ruler_x_mm": _t("The ruler across measures, mm"),
        "ruler_y_mm": _t("The ruler down measures, mm"),
    }[field]


def problems() -> dict[tuple[str, str], str]:
    """Return sentences on sheets that cannot be, by (field, reason)."""
    return {
        ("name", "too_many"): _t("There are {high} sheets already. Remove one first."),
        ("label_width_mm", "off_the_paper"): _t(
            "Together the labels and gaps are {value} mm wide; the paper leaves {high}."
        ),
        ("label_height_mm", "off_the_paper"): _t(
            "Together the labels and gaps are {value} mm high; the paper leaves {high}."
        ),
    }


def sheet_problem_words(problem: ImpossibleInput) -> str:
    """Say beside a sheet's field what is wrong with it."""
    unit = f" {problem.unit}" if problem.unit else ""
    low, high = _number(problem.low) + unit, _number(problem.high) + unit
    special = problems() | {
        ("name", "empty"): _t("Please give the sheet a name."),
        ("name", "too_long"): _t("Please keep the name shorter."),
    }
    sentence = special.get((problem.field, problem.reason))
    if sentence is not None:
        value = problem.value if isinstance(problem.value, float) else None
        return sentence.format(value=_number(value), low=low, high=high)
    return _t("This must lie between {low} and {high}.").format(low=low, high=high)


def _number(value: float | None) -> str:
    if value is None:
        return ""
    for decimals in (0, 1):
        if round(value, decimals) == round(value, 2):
            return number_text(value, decimals)
    return number_text(value, 2)


def ruler_words(across_mm: float, down_mm: float) -> str:
    """Say how long the two rulers of the test page should be."""
    if across_mm == down_mm == 100.0:
        return _t("Both lines are 100 mm long if the printer prints true to size.")
    return _t(
        "True to size, the line across is {across} mm long and the line down {down} mm. Multiply "
        "what you measure by {times_across} and {times_down}."
    ).format(
        across=number_text(across_mm, 0),
        down=number_text(down_mm, 0),
        times_across=number_text(100.0 / across_mm, 0),
        times_down=number_text(100.0 / down_mm, 0),
    )


def test_page_words() -> str:
    """Say what to do with the test page."""
    return _t(
        "Test page. Hold it behind a sheet of labels against the light: the frames are where the "
        "labels will be, with your corrections. The rulers are printed without any."
    )
