"""Contrast, measured by the formula of WCAG 2.2 (relative luminance and contrast ratio).

https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio
"""

from __future__ import annotations

import itertools

import pytest
from PySide6.QtGui import QColor

from brewdesk.widgets.theme import DARK, LIGHT, LIQUID_RAMP, Theme, liquid_colour
from tests.helpers.worn_theme import look_kept

TEXT_RATIO = 4.5
PART_RATIO = 3.0


def luminance(colour: str | QColor) -> float:
    def linear(share: float) -> float:
        return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4

    c = QColor(colour)
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF())


def contrast(one: str, other: str) -> float:
    bright, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


def test_the_contrast_formula_gives_the_standards_extremes():
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#777777", "#777777") == pytest.approx(1.0)


@pytest.mark.parametrize("scheme", [LIGHT, DARK], ids=lambda t: t.name)
@pytest.mark.parametrize(
    ("text", "grounds"),
    [
        ("ink", ("ground", "surface", "sunken", "wall", "accent_soft")),
        ("muted", ("ground", "surface", "sunken", "wall", "accent_soft")),
        ("danger", ("surface", "ground", "danger_soft")),
        ("warn", ("surface", "ground", "warn_soft")),
        ("good", ("surface", "good_soft")),
        ("accent", ("surface", "ground")),
        ("on_accent", ("accent",)),
        ("ink", ("warn_soft", "danger_soft", "good_soft")),
    ],
)
def test_text_reads_on_every_ground_it_stands_on(scheme, text, grounds):
    for ground in grounds:
        ratio = contrast(getattr(scheme, text), getattr(scheme, ground))
        assert ratio >= TEXT_RATIO, f"{text} on {ground}: {ratio:.2f}"


@pytest.mark.parametrize("scheme", [LIGHT, DARK], ids=lambda t: t.name)
@pytest.mark.parametrize(
    ("part", "grounds"),
    [
        ("edge", ("surface", "sunken", "ground")),
        ("focus", ("surface", "ground", "wall")),
        ("glass", ("wall",)),
    ],
)
def test_parts_that_carry_meaning_stand_out(scheme, part, grounds):
    for ground in grounds:
        ratio = contrast(getattr(scheme, part), getattr(scheme, ground))
        assert ratio >= PART_RATIO, f"{part} on {ground}: {ratio:.2f}"


def test_the_liquid_gets_steadily_lighter_as_it_sours():
    steps = [luminance(liquid_colour(5.2 - 0.1 * step)) for step in range(28)]
    assert all(later >= earlier for earlier, later in itertools.pairwise(steps))
    assert steps[-1] > 4 * steps[0]


def test_a_ph_of_the_ramp_has_the_ramps_colour():
    for ph, colour in LIQUID_RAMP:
        assert liquid_colour(ph).name() == colour


def test_the_theme_says_when_it_changed_and_which_it_is(qapp, qtbot):
    with look_kept(qapp):
        theme = Theme(qapp)
        with qtbot.waitSignal(theme.changed):
            theme.apply("dark")
        assert theme.tokens is DARK
        theme.apply("light")
        assert theme.tokens is LIGHT
