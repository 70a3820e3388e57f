"""Every code has words, every word is whole, and no number is left out."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

import brewdesk.services
from brewdesk.services.wording.problems import impossible_words, quantity_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.store.errors import StoreTrouble
from culturecore import safety, stages
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.sources import SOURCES
from culturecore.stages import Look, Material, StarterTaste, TeaKind
from culturecore.sweettea import Starter, Wish, plan
from culturecore.units import Kind, NotAQuantity, from_canonical

SERVICES = Path(brewdesk.services.__file__).parent


def _codes_of_services():
    """Collect the codes of verdicts that the services make themselves, from their source."""
    codes = set()
    for path in SERVICES.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            is_verdict = isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Verdict"
            if is_verdict and isinstance(node.args[0], ast.Constant):
                codes.add(node.args[0].value)
    return codes


def _plans():
    """Wishes odd enough that together they bring every verdict on a recipe."""
    yield Wish(fill_volume_l=4.0)
    yield Wish(fill_volume_l=4.0, working_volume_l=3.5, sugar_g_per_l=20.0, tea_g_per_l=1.0)
    yield Wish(fill_volume_l=4.0, sugar_g_per_l=150.0, tea_g_per_l=20.0, starter_volume_l=0.1)
    yield Wish(fill_volume_l=4.0, starter_volume_l=2.0, tea_kind=TeaKind.HERBAL)
    yield Wish(fill_volume_l=4.0, hot_water_c=60.0, cold_water_c=30.0, place_temperature_c=15.0)
    yield Wish(fill_volume_l=4.0, cold_water_c=35.0, place_temperature_c=34.0)
    yield Wish(
        fill_volume_l=4.0,
        target_start_ph=3.2,
        starter=Starter(ph=4.4, taste=StarterTaste.SWEET),
        water_alkalinity_meq_per_l=8.0,
    )
    yield Wish(fill_volume_l=4.0, starter=Starter(ph=2.5, ta_g_per_l=1.0))


def _verdicts_of_core():
    found = [safety.material_verdict(material) for material in Material]
    found += [safety.culture_temperature_verdict(degrees) for degrees in (20.0, 33.0, 50.0)]
    found += [safety.place_temperature_verdict(degrees) for degrees in (15.0, 22.0, 35.0)]
    found += [safety.place_now_verdict(degrees, 1.0) for degrees in (15.0, 35.0)]
    for value, high in ((4.0, 4.1), (4.3, 4.4), (4.5, 4.8)):
        found.append(safety.start_ph_verdict(Estimate(value, value - 0.1, high)))
    for ph, sd, day in (
        (3.4, 0.05, 5.0),
        (2.3, 0.05, 20.0),
        (4.5, 0.05, 2.0),
        (4.1, 0.3, 3.0),
        (4.5, 0.05, 6.0),
        (4.5, 0.05, 8.0),
        (4.1, 0.3, 8.0),
    ):
        found.append(safety.ph_verdict(ph, sd, day))
    found.append(safety.mold_verdict())
    found += [verdict for look in Look if (verdict := safety.look_verdict(look)) is not None]
    found += [safety.uncultured_verdict(hours) for hours in (1.0, 3.0, 5.0)]
    found += [safety.souring_length_verdict(day) for day in (22.0, 31.0)]
    for wish in _plans():
        found += plan(wish).verdicts
    return {verdict.code: verdict for verdict in found}


CORE = _verdicts_of_core()


def test_the_examples_bring_every_verdict_of_the_core():
    assert set(CORE) == set(safety.VERDICT_CODES)


@pytest.mark.parametrize("code", sorted(safety.VERDICT_CODES))
def test_every_verdict_of_the_core_is_said_in_whole_sentences(code):
    verdict = CORE[code]
    words = verdict_words(verdict)
    said = [part for part in (words.fact, words.why, words.what_to_do) if part]
    assert words.fact
    assert words.why
    assert words.what_to_do or verdict.level is Level.INFORM
    for part in said:
        assert part[0].isupper() or part[0].isdigit() or part.startswith("pH")
        assert part.rstrip()[-1] == "."
        assert not re.search(r"[{}_]|\bNone\b|\bnan\b", part)


@pytest.mark.parametrize("code", sorted(_codes_of_services()))
def test_every_verdict_of_the_services_has_words(code):
    class AnyNumber(dict):
        def items(self):
            keys = ["limit", "limit_c", "day", "deadline_days", "height_cm", "inner_diameter_cm"]
            keys += ["first_days", "last_days", "solid_days", "latest_days", "at_c"]
            keys += ["value_mm", "low_mm", "high_mm"]
            keys += ["ph", "high", "share", "fill_l", "working_l"]
            return [(key, 1.0) for key in keys]

    words = verdict_words(Verdict(code, Level.WARN, AnyNumber()))
    assert words.fact
    assert words.what_to_do


def test_a_verdict_without_words_is_a_mistake_of_the_program():
    with pytest.raises(KeyError):
        verdict_words(Verdict("unheard_of", Level.WARN))


def test_numbers_are_said_in_the_makers_units():
    def in_fahrenheit(value, kind):
        assert kind is Kind.TEMPERATURE
        return f"{from_canonical(value, '°F', kind):.0f} °F"

    words = verdict_words(CORE["culture_too_warm"], in_fahrenheit)
    assert "91 °F" in words.fact  # 33 °C
    assert "86 °F" in words.why  # 30 °C


def test_a_verdict_names_its_sources_in_full():
    words = verdict_words(CORE["ph_low_enough"])
    assert words.sources == tuple(SOURCES[key].citation for key in CORE["ph_low_enough"].sources)
    assert words.sources


@pytest.mark.parametrize(
    "code",
    ["ph_low_enough", "ph_deadline_missed", "mold_discard_all", "ph_not_taken_by_deadline"],
)
def test_the_weightiest_verdicts_defer_to_local_rules(code):
    numbers = {"day": 9.0, "deadline_days": 7.0}
    verdict = CORE.get(code) or Verdict(code, Level.WARN, numbers)
    assert "local rules" in verdict_words(verdict).what_to_do


def test_a_low_ph_is_never_called_safe():
    words = verdict_words(CORE["ph_low_enough"])
    assert "does not prove" in words.why
    assert "is safe" not in words.fact


def test_a_share_is_said_in_percent():
    assert verdict_words(CORE["starter_low"]).fact.startswith("2.5 % starter")


def test_every_enum_member_that_people_see_has_a_name():
    unseen = {stages.ReminderKind, stages.ReminderState}
    kinds = [
        kind
        for kind in vars(stages).values()
        if isinstance(kind, type) and issubclass(kind, stages.Enum) and kind is not stages.Enum
    ]
    for kind in set(kinds) - unseen:
        names = [name_of(member) for member in kind]
        assert all(names)
        assert len(set(names)) == len(names)


def _refusals_of_services():
    """Collect (field, reason) of the refusals the services make themselves, from their source."""
    found = set()
    for path in SERVICES.glob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if not (
                isinstance(node, ast.Call) and getattr(node.func, "id", "") == "ImpossibleInput"
            ):
                continue
            field = node.args[0].value if isinstance(node.args[0], ast.Constant) else "value"
            for word in node.keywords:
                if word.arg == "reason" and isinstance(word.value, ast.Constant):
                    found.add((field, word.value.value))
    return sorted(found)


@pytest.mark.parametrize(("field", "reason"), _refusals_of_services())
def test_every_refusal_says_why(field, reason):
    error = ImpossibleInput(field, "x", low=1.0, high=2.0, unit="L", reason=reason)
    text = impossible_words(error)
    assert text.endswith(".")
    assert text != impossible_words(ImpossibleInput(field, "x", low=1.0, high=2.0, unit="L"))
    assert not set("{}_") & set(text)


@pytest.mark.parametrize(
    ("error", "text"),
    [
        (
            ImpossibleInput("ph", 20.0, low=0.0, high=14.0, unit="pH"),
            "The pH must lie between 0.00 and 14.00.",
        ),
        (
            ImpossibleInput("fill_volume_l", 0.0, low=0.1, unit="L"),
            "The amount to make must be at least 0.100 L.",
        ),
        (
            ImpossibleInput("bag_g", 99.0, high=50.0, unit="g"),
            "The tea in one bag must be at most 50.0 g.",
        ),
        (
            ImpossibleInput("specific_gravity", 2.0, low=0.98, high=1.15),
            "The specific gravity must lie between 0.980 and 1.15.",
        ),
        (ImpossibleInput("whatever", 2.0), "This value cannot be that. Please check it."),
    ],
)
def test_a_value_out_of_range_is_told_its_range(error, text):
    assert impossible_words(error) == text


@pytest.mark.parametrize(
    "reason",
    ["empty", "no_number", "ambiguous_number", "unknown_unit", "wrong_kind", "not_finite"],
)
def test_every_reason_why_text_is_no_amount_has_words(reason):
    text = quantity_words(NotAQuantity(reason, "3 {spoons}", "{spoons}"))
    assert text
    if reason not in ("empty", "no_number"):
        assert "{spoons}" in text  # what was typed is shown as it was typed


def _codes_of_trouble():
    text = re.sub(r"\s+", " ", StoreTrouble.__doc__)
    listed = re.search(r"is one of: (.*?)\.", text).group(1)
    return [code.strip() for code in listed.split(",")]


@pytest.mark.parametrize("code", _codes_of_trouble())
def test_every_trouble_with_the_store_has_its_own_words(code):
    assert trouble_words(StoreTrouble(code)) != trouble_words(StoreTrouble("unheard_of"))
