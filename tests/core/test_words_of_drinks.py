"""Every verdict on bottles, alcohol and the finished drink has words, whole ones."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from brewdesk.services.wording.limits import limit_lines
from brewdesk.services.wording.verdicts import verdict_words
from culturecore import alcohol, bottleverdicts, safety
from culturecore import drinkverdicts as drink
from culturecore.bottle import BottlePressure, Filling
from culturecore.bottleverdicts import BottleKind, bottle_verdicts
from culturecore.conditioning import FizzWish, plan_fizz
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.sources import SOURCES, Standing

FILLING = Filling(brim_volume_l=0.5, headspace_share=0.04)
CODES = alcohol.VERDICT_CODES | bottleverdicts.VERDICT_CODES | drink.VERDICT_CODES


def _plans():
    plan = plan_fizz(FizzWish(volume_l=4.0, filling=FILLING, ceiling_bar=3.7))
    for bar in (1.0, 3.2, 5.0, None):
        at = BottlePressure(air_dissolved_bar=bar, air_trapped_bar=bar, volumes=2.0)
        yield replace(plan, on_target=at, all_sugar=at, chill_by_day=6.0)
    for volumes in (3.6, 4.1):
        fizzy = BottlePressure(air_dissolved_bar=1.0, air_trapped_bar=1.0, volumes=volumes)
        yield replace(plan, on_target=fizzy)
    full = BottlePressure(
        air_dissolved_bar=None, air_trapped_bar=None, volumes=None, is_brimful=True
    )
    yield replace(plan, on_target=full)


def _verdicts() -> dict[str, Verdict]:
    found: list[Verdict] = []
    large = Filling(brim_volume_l=1.5, headspace_share=0.02)
    for plan in _plans():
        found += bottle_verdicts(BottleKind.FIZZY_GLASS, FILLING, plan)
        found += bottle_verdicts(BottleKind.FIZZY_GLASS, large, plan, is_damaged=True)
        roomy = replace(FILLING, headspace_share=0.2)
        found += bottle_verdicts(BottleKind.NOT_FOR_PRESSURE, roomy, plan)
        found += [bottleverdicts.chill_verdict(plan, day=day) for day in (0.0, 3.0, 7.0)]
    found += [
        bottleverdicts.gauge_verdict(gauge_bar=bar, sd_bar=0.1, ceiling=3.7)
        for bar in (1.0, 3.0, 5.0)
    ]
    found += [
        alcohol.threshold_verdict(Estimate(high / 2, low, high), "abv_anz_soft_drink")
        for low, high in ((0.0, 0.3), (0.5, 1.5), (1.2, 2.0))
    ]
    found += [
        drink.finished_ph_verdict(4.4, 0.1),
        drink.finished_ph_verdict(4.1, 0.05, by_strip=True),
        drink.finished_ph_verdict(2.3, 0.1),
        drink.finished_ph_verdict(3.2, 0.1),
        drink.storage_verdict(4.0),
        drink.storage_verdict(12.0),
        drink.keeping_verdict(5.0),
        drink.keeping_verdict(50.0),
        drink.serving_verdict(0.1),
        drink.serving_verdict(0.5),
        drink.audience_verdict(),
        drink.flavouring_verdict(is_pasteurised=True),
        drink.flavouring_verdict(is_pasteurised=False),
        drink.pasteurising_verdict(85.0),
        drink.pasteurising_verdict(70.0),
        drink.pasteurising_verdict(70.0, is_sealed=True),
        drink.chlorine_verdict(150.0),
        drink.chlorine_verdict(400.0),
        drink.caffeine_verdict(Estimate(20.0, 10.0, 40.0)),
        drink.caffeine_verdict(Estimate(200.0, 100.0, 300.0)),
    ]
    return {verdict.code: verdict for verdict in found}


VERDICTS = _verdicts()


def test_the_examples_bring_every_verdict() -> None:
    assert set(VERDICTS) == CODES


def test_no_code_means_two_things() -> None:
    assert not CODES & safety.VERDICT_CODES


@pytest.mark.parametrize("code", sorted(CODES))
def test_every_verdict_is_said_in_whole_sentences(code: str) -> None:
    verdict = VERDICTS[code]
    words = verdict_words(verdict)
    assert words.fact
    assert words.why
    assert words.what_to_do or verdict.level is Level.INFORM
    for part in (words.fact, words.why, words.what_to_do):
        if part:
            assert part[0].isupper() or part[0].isdigit() or part.startswith("pH")
            assert part.rstrip()[-1] == "."
            assert not re.search(r"[{}_]|\bNone\b|\bnan\b", part)
    assert words.sources == tuple(SOURCES[key].citation for key in verdict.sources)


@pytest.mark.parametrize(
    "code",
    [
        "finished_ph_within",
        "bottle_within_ceiling",
        "bottle_handling",
        "chill_now",
        *sorted(alcohol.VERDICT_CODES),
    ],
)
def test_the_weightiest_verdicts_defer_to_local_rules(code: str) -> None:
    assert "local rules" in verdict_words(VERDICTS[code]).what_to_do


@pytest.mark.parametrize("code", sorted(alcohol.VERDICT_CODES))
def test_only_a_laboratory_settles_alcohol(code: str) -> None:
    words = verdict_words(VERDICTS[code])
    assert "laboratory" in words.what_to_do
    assert "estimate" in words.why
    assert "1.15 %" in words.fact


def test_nothing_is_called_safe() -> None:
    for code in CODES:
        words = verdict_words(VERDICTS[code])
        assert not re.search(r"\b(is|are) safe\b", words.fact + words.what_to_do)


def test_pressures_are_said_in_both_units_and_bounds_are_rounded_up() -> None:
    verdict = Verdict(
        "bottle_near_ceiling",
        Level.WARN,
        {"highest_bar": 3.61, "ceiling_bar": 3.7, "volumes": 2.3},
    )
    words = verdict_words(verdict)
    assert "3.7 bar (54 psi), at 2.3 volumes" in words.fact


def test_over_8_bar_is_said_without_a_figure() -> None:
    for code in ("bottle_over_8_bar", "all_sugar_over_8_bar"):
        assert "over 8 bar" in verdict_words(VERDICTS[code]).fact


def test_every_limit_has_a_name_and_says_how_it_stands() -> None:
    lines = limit_lines()
    assert len(lines) == len(safety.LIMITS)
    assert len({line.name for line in lines}) == len(lines)
    for line, limit in zip(lines, safety.LIMITS.values(), strict=True):
        assert line.source == f"{limit.source}. {line.standing}"
        assert line.standing.endswith(".")
        assert (line.standing == "Read in the source itself.") == (limit.standing is Standing.READ)
    values = {line.name: line.value for line in lines}
    assert values["European Union: strength is stated above"] == "1.2 % alcohol by volume"
    assert values["Headspace of a bottle, usual"] == "3.5 %"
