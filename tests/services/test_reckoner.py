"""Each declared question: it answers its first entries, cites sources, names a bad entry."""

from __future__ import annotations

import math
import re
from dataclasses import replace

import pytest

from brewdesk.services.reckoner.catalogue import all_questions, group_name
from brewdesk.services.reckoner.numbers import NumberReader
from brewdesk.services.reckoner.question import Choice, Group, Number, reckon
from brewdesk.services.wording.amounts import plain
from brewdesk.services.wording.reckoner import (
    caveat_words,
    line_words,
    refusal_words,
    says_words,
    source_words,
    span_words,
    standing_words,
    withheld_words,
)
from brewdesk.services.wording.verdicts import verdict_words
from culturecore import acidpair, instruments, phmeter, starter, titration
from culturecore.bottleverdicts import BottleKind
from culturecore.buffers import Buffer
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Caveat, Level, Verdict
from culturecore.sources import SOURCES, Standing
from culturecore.stages import StarterTaste, TeaKind
from culturecore.titration import ExpressedAs
from culturecore.units import Kind, NotAQuantity

QUESTIONS = {question.key: question for question in all_questions()}
ARITHMETIC_ALONE = {"cost"}


def answer_of(key, **entries):
    question = QUESTIONS[key]
    assert entries.keys() <= question.defaults().keys()
    return reckon(question, {**question.defaults(), **entries})


def figure(key, line=None, **entries):
    """The value of a line, the first one if none is named."""
    answer = answer_of(key, **entries)
    found = [one for one in answer.lines if line in (None, one.key)]
    return found[0].value


# --- all of them -------------------------------------------------------------------------


def test_keys_and_titles_are_used_once():
    questions = all_questions()
    assert len({question.key for question in questions}) == len(questions)
    assert len({question.title for question in questions}) == len(questions)


def test_no_two_entries_of_a_question_have_the_same_name():
    for question in QUESTIONS.values():
        labels = [entry.label for entry in question.fields]
        assert len(set(labels)) == len(labels), question.key


def test_every_group_has_a_name_and_questions():
    assert {question.group for question in QUESTIONS.values()} == set(Group)
    assert len({group_name(group) for group in Group}) == len(Group)


@pytest.mark.parametrize("key", QUESTIONS)
def test_its_first_entries_are_answered_with_finite_ordered_figures(key):
    answer = answer_of(key)
    assert answer.lines or answer.verdicts
    for line in answer.lines:
        assert line.label
        if line.value is None:
            assert line.text
            continue
        assert math.isfinite(line.value)
        assert (line.low is None) == (line.high is None)
        if line.low is not None:
            assert -math.inf < line.low <= line.value <= line.high < math.inf
            assert bool(span_words(line)) == (line.low < line.high)


@pytest.mark.parametrize("key", QUESTIONS)
def test_its_answer_cites_sources_that_can_be_found(key):
    formulas = answer_of(key).formulas
    assert formulas
    cited = [key for formula in formulas for key in formula.keys]
    assert set(cited) <= set(SOURCES)
    assert bool(cited) != (key in ARITHMETIC_ALONE)
    for formula in formulas:
        assert formula.name
        for words in source_words(formula):
            assert words.citation
            assert words.standing


@pytest.mark.parametrize("key", QUESTIONS)
def test_its_answer_is_said_in_whole_sentences(key):
    question, answer = QUESTIONS[key], answer_of(key)
    sentences = [question.purpose, *answer.notes, *(caveat_words(c) for c in answer.caveats)]
    if answer.says:
        sentences.append(says_words(question, answer, question.defaults(), plain))
    sentences += [verdict_words(verdict).fact for verdict in answer.verdicts]
    for sentence in sentences:
        assert sentence.rstrip()[-1] in ".?!"
        assert not re.search(r"[{}_]|\bNone\b|\bnan\b|degC", sentence)
    for line in answer.lines:
        assert line_words(line, plain).figure


@pytest.mark.parametrize("key", QUESTIONS)
def test_a_number_no_kitchen_has_is_refused_beside_an_entry_of_its_own(key):
    question = QUESTIONS[key]
    numbers = [entry for entry in question.fields if not isinstance(entry.form, Choice)]
    for entry in numbers:
        for bad in (-1e9, 1e9, math.inf, math.nan):
            with pytest.raises((ImpossibleInput, NotAssessed)) as caught:
                reckon(question, {**_all_filled(question), entry.key: bad})
            if isinstance(caught.value, ImpossibleInput):
                assert caught.value.field in {one.key for one in question.fields}
                words = refusal_words(caught.value, question)
                assert words.endswith((".", "?"))
                assert not re.search(r"[{}_]|\bNone\b|\bnan\b|\binf\b", words)


def _all_filled(question):
    """Its first entries, with something in those that may stay empty."""
    filled = question.defaults()
    for entry in question.fields:
        if entry.optional and filled[entry.key] is None:
            filled[entry.key] = _FILLED.get((question.key, entry.key), 3.5)
    if "buffer_3" in filled:
        filled |= {"buffer_3": Buffer.TECHNICAL_10, "shown_3": -175.0}
    if "kind" in filled:
        filled["kind"] = BottleKind.RATED
    return filled


_FILLED = {
    ("cooling", "minute_3"): 45.0,
    ("cooling", "temperature_3"): 42.5,
    ("cooling", "minute_4"): 60.0,
    ("cooling", "temperature_4"): 39.5,
    **{
        (key, f"{what}_{place}"): value
        for key in ("table_volume", "table_height")
        for what, place, value in (
            ("height", 4, 20.0),
            ("volume", 4, 3.6),
            ("height", 5, 22.0),
            ("volume", 5, 4.0),
        )
    },
}


@pytest.mark.parametrize("key", QUESTIONS)
def test_an_empty_entry_is_named(key):
    question = QUESTIONS[key]
    for entry in question.fields:
        if not entry.optional and not isinstance(entry.form, Choice):
            with pytest.raises(ImpossibleInput) as caught:
                reckon(question, {**question.defaults(), entry.key: None})
            assert (caught.value.field, caught.value.reason) == (entry.key, "empty")


@pytest.mark.parametrize("key", QUESTIONS)
def test_every_choice_is_answered_or_withheld_in_words(key):
    question = QUESTIONS[key]
    for entry in question.fields:
        if not isinstance(entry.form, Choice):
            continue
        for value, words in entry.form.options:
            assert words
            said = _outcome(question, {**question.defaults(), entry.key: value})
            assert said
            assert all(sentence.endswith((".", "?")) for sentence in said)


def _outcome(question, values):
    """What is said: the verdicts, or why there is no answer."""
    try:
        answer = reckon(question, values)
    except NotAssessed as withheld:
        return [withheld_words(withheld)]
    except ImpossibleInput as problem:
        return [refusal_words(problem, question)] if problem.field else []
    facts = [verdict_words(verdict).fact.rstrip() for verdict in answer.verdicts]
    return facts or [formula.name + "." for formula in answer.formulas]


@pytest.mark.parametrize("key", QUESTIONS)
def test_what_is_not_offered_is_refused(key):
    question = QUESTIONS[key]
    for entry in question.fields:
        if isinstance(entry.form, Choice):
            with pytest.raises(ImpossibleInput) as caught:
                reckon(question, {**question.defaults(), entry.key: "something else"})
            assert caught.value.field == entry.key


# --- against published values ------------------------------------------------------------


def test_titration_gives_the_worked_example_of_80_meq_per_l():
    # 80 meq/L = 4.80 g/L acetic, 6.00 g/L tartaric: factors 0.060 and 0.075 g/meq of AOAC 942.15
    assert figure("titration", "meq") == pytest.approx(80.0)
    assert figure("titration", "told") == pytest.approx(4.80, abs=0.01)
    tartaric = figure("titration", "told", expressed_as=ExpressedAs.TARTARIC)
    assert tartaric == pytest.approx(6.00, abs=0.01)


def test_acetic_acid_alone_has_the_handbook_ph():
    # 0.1 mol/L acetic acid: pH 2.88 from Ka = 1.75e-5 (CRC Handbook of Chemistry and Physics)
    nothing = {"gluconic_mol_per_kg": 0.0, "strong_ion_excess_eq_per_kg": 0.0}
    assert figure("ph_of_acids", acetic_mol_per_kg=0.1, **nothing) == pytest.approx(2.88, abs=0.01)


def test_the_ideal_slope_is_the_nernst_slope_at_25_degrees():
    # 59.16 mV per pH at 25 degC: ln 10 R T / F with the constants of the SI (2019)
    assert figure("calibrate", "ideal", buffer_c=25.0) == pytest.approx(59.16, abs=0.005)


def test_phthalate_at_20_degrees_is_that_of_the_printed_table():
    # JIS Z 8802: 4.00 at 20 degC
    assert figure("buffer_ph", buffer=Buffer.PHTHALATE, temperature_c=20.0) == pytest.approx(4.00)


def test_ten_brix_is_the_density_of_nbs_circular_c440():
    # NBS Circular C440: 10 °Bx has 1.03814 at 20 degC over water at 4 degC, which has
    # 0.999972 kg/L (both figures from memory)
    density = figure("from_brix", "density", brix=10.0)
    assert density == pytest.approx(1.03814 * 0.999972, abs=1e-5)


def test_gravity_and_grams_lead_back_to_the_same_brix():
    gravity = figure("from_brix", "sg", brix=8.0)
    grams = figure("from_brix", "g_per_l", brix=8.0)
    assert figure("from_gravity", "degrees", specific_gravity=gravity) == pytest.approx(8.0)
    assert figure("from_grams", "degrees", sugar_g_per_l=grams) == pytest.approx(8.0)


def test_water_boils_at_100_by_the_sea_and_at_95_on_a_mountain():
    # ISO 2533 gives 842 hPa at 1530 m; water boils there at 95.0 degC (steam tables)
    assert figure("boiling_point", altitude_m=0.0) == pytest.approx(99.97, abs=0.05)
    assert figure("boiling_point", altitude_m=1530.0) == pytest.approx(94.9, abs=0.2)


def test_equal_masses_of_water_meet_in_the_middle():
    entries = {"hot_g": 1000.0, "cold_g": 1000.0, "hot_c": 80.0, "cold_c": 20.0, "sugar_g": 0.0}
    assert figure("mix_temperature", **entries) == pytest.approx(50.0, abs=0.01)


def test_ice_takes_its_heat_of_melting():
    # 1 kg of water at 79.7 degC just melts 1 kg of ice: 333.6 kJ/kg over 4.184 kJ/kg/K
    entries = {"hot_g": 1000.0, "hot_c": 79.73, "cold_g": 0.0, "sugar_g": 0.0}
    answer = answer_of("mix_with_ice", **entries, ice_g=1000.0, ice_temperature_c=0.0)
    mixed, left, _ = answer.lines
    assert mixed.value == pytest.approx(0.0, abs=0.05)
    assert left.value == pytest.approx(0.0, abs=1.0)


def test_cooling_follows_newtons_closed_form():
    # (T - Ta) falls by exp(-k t): 55 to 46 degC in 30 min at 21 degC, so 30 degC after
    k = math.log((55.0 - 21.0) / (46.0 - 21.0)) / 30.0
    minutes = math.log((46.0 - 21.0) / (30.0 - 21.0)) / k
    assert figure("cooling", "wait") == pytest.approx(minutes, rel=1e-6)


def test_one_volume_is_1_977_grams():
    # 44.0095 g/mol over 22.2605 L/mol (IUPAC-NIST SRD 106)
    assert figure("gauge_of_volumes", "grams", volumes=1.0) == pytest.approx(1.977, abs=0.001)


def test_an_open_jar_of_water_at_20_degrees_holds_what_the_tables_say():
    # Bunsen coefficient 0.871 at 20 degC (IUPAC-NIST SRD 106), times the dry pressure 0.977 atm
    volumes = figure("open_jar", temperature_c=20.0, sugar_g_per_l=0.0, ethanol_abv=0.0)
    assert volumes == pytest.approx(0.871 * 0.977, rel=0.015)


def test_pressure_and_volumes_lead_back_to_each_other():
    bar = figure("gauge_of_volumes", volumes=2.4)
    assert figure("volumes_of_gauge", gauge_pressure_bar=bar) == pytest.approx(2.4, rel=1e-6)


def test_all_lost_sugar_as_alcohol_follows_the_reaction():
    # 342.3 g sucrose give 4 x 46.07 g ethanol; 0.78924 g/mL at 20 degC (OIML R 22)
    answer = answer_of("alcohol_from_sugar", left_sugar_low_g_per_l=30.0)
    most = 30.0 * 4 * 46.0684 / 342.2965 / 0.78924 / 10.0
    assert answer.lines[0].high == pytest.approx(most, rel=1e-3)


def test_energy_uses_the_factors_of_the_law():
    # Regulation (EU) No 1169/2011, Annex XIV: sugar 4, organic acid 3, alcohol 7 kcal/g
    sugar = {f"sugar_g_per_l{end}": 40.0 for end in ("_low", "", "_high")}
    none = {f"ethanol_abv{end}": 0.0 for end in ("_low", "", "_high")}
    kcal = figure("glass", "kcal", volume_l=0.25, acid_g_per_l=4.0, **sugar, **none)
    assert kcal == pytest.approx(0.25 * (40.0 * 4 + 4.0 * 3))


def test_a_cup_of_sugar_is_200_grams():
    # USDA household weight
    assert answer_of("sugar_spoons", mass_g=200.0).lines[0].text == "1 cup"


def test_a_tablespoon_of_bleach_in_a_gallon_is_about_200_ppm():
    # Fraser & Lackey 2004: 1 tablespoon of 5.25 % bleach to the US gallon is 200 ppm
    entries = {"bleach_ml": 14.787, "water_l": 3.785, "chlorine_percent": 5.25}
    assert figure("chlorine", **entries) == pytest.approx(200.0, rel=0.03)


def test_a_straight_jar_follows_geometry():
    # 15 cm wide: 176.7 cm2, so 4 L stand 22.64 cm high
    assert figure("level", "height", volume_l=4.0) == pytest.approx(22.635, abs=0.01)
    assert figure("volume_at_height", height_cm=22.635) == pytest.approx(4.0, abs=0.001)


def test_marks_of_ones_own_lead_back_to_themselves():
    assert figure("table_volume", asked_cm=10.0) == pytest.approx(1.9)
    assert figure("table_height", asked_l=1.9) == pytest.approx(10.0)


def test_cost_is_exact_to_the_cent():
    # 0.2 kg of 1.60 a kg and 16 g of 4.00 for 100 g: 0.32 + 0.64, over 4 L
    answer = answer_of("cost", volume_l=4.0, shop_price=3.0, shop_l=0.5)
    figures = {line.key: line.value for line in answer.lines}
    assert figures["total"] == 0.96
    assert figures["litre"] == 0.24
    assert figures["saved"] == 23.04


# --- what is particular ------------------------------------------------------------------


def test_hard_water_takes_more_starter():
    soft = figure("starter_for_ph", water_alkalinity_meq_per_l=0.5)
    hard = figure("starter_for_ph", water_alkalinity_meq_per_l=3.0)
    assert hard > 1.2 * soft


def test_common_practice_comes_out_for_a_mild_starter():
    # some 15 % of a mild starter is common practice, without a source
    assert figure("starter_for_ph", "share") == pytest.approx(0.15, abs=0.03)


def test_a_sour_reading_counts_only_with_its_doubt():
    answer = answer_of("finished_ph", ph=4.15, sd=0.1)
    assert [verdict.level for verdict in answer.verdicts] == [Level.STOP]


def test_a_verdict_to_wait_is_not_called_all_right():
    # pH 4.5 on the second day is no alarm, and nothing to drink either
    answer = answer_of("ph_on_day", ph=4.5, day=2.0)
    assert answer.verdicts[0].code == "ph_not_yet"
    assert answer.is_judgement
    assert answer.says == ""


def test_a_jar_under_pressure_is_stopped_before_any_sugar_is_named():
    answer = answer_of("prime", kind=BottleKind.NOT_FOR_PRESSURE)
    assert answer.verdicts[0].level is Level.STOP


def test_a_rated_bottle_needs_its_rating():
    with pytest.raises(NotAssessed):
        answer_of("prime", kind=BottleKind.RATED)
    assert figure("prime", "ceiling", kind=BottleKind.RATED, rated_bar=6.0) == 6.0


def test_bottles_that_stood_too_long_are_to_be_chilled():
    codes = [verdict.code for verdict in answer_of("prime", day=3.0).verdicts]
    assert "chill_now" in codes


def test_herbs_get_no_figure_for_caffeine():
    with pytest.raises(NotAssessed) as caught:
        answer_of("caffeine", tea_kind=TeaKind.HERBAL)
    assert "Herbs" in withheld_words(caught.value)


def test_a_pot_read_while_it_steams_gives_the_earliest_time():
    answer = answer_of("cooling", temperature_1=90.0, temperature_2=70.0)
    wait = answer.lines[0]
    assert wait.low == wait.value
    assert wait.high >= 1.5 * wait.value
    assert Caveat.EXTRAPOLATED in answer.caveats


@pytest.mark.parametrize(
    ("key", "entries", "field", "reason"),
    [
        ("cooling", {"temperature_2": 56.0}, "temperature_2", "not_cooling"),
        ("cooling", {"minute_2": 0.0}, "minute_2", "same_moment"),
        ("cooling", {"ambient_c": 50.0}, "ambient_c", "at_ambient"),
        ("cooling", {"limit_c": 20.0}, "limit_c", "never"),
        ("cooling", {"minute_3": 60.0}, "temperature_3", "empty"),
        ("calibrate", {"buffer_2": Buffer.TECHNICAL_7}, "buffer_2", "same_buffer"),
        ("calibrate", {"buffer_2": Buffer.PHOSPHATE}, "buffer_2", "too_near"),
        ("calibrate", {"shown_2": -170.0}, "shown_2", "wrong_way"),
        ("calibrate", {"shown_1": 3000.0}, "shown_1", "out_of_range"),
        ("calibrate", {"shown_as": "ph"}, "shown_1", "out_of_range"),
        ("calibrate", {"buffer_3": Buffer.BORATE}, "shown_3", "empty"),
        ("judge_starter", {"starter_ph": 3.9, "starter_ta_g_per_l": 50.0}, "starter_ta_g_per_l",
         "contradicts_ph"),
        ("ph_from_ta", {"ph": 5.5, "ta_g_per_l": 50.0}, "ta_g_per_l", "contradicts_ph"),
        ("table_volume", {"volume_2": 0.5}, "volume_2", "not_rising"),
        ("table_volume", {"asked_cm": 50.0}, "asked_cm", "out_of_range"),
        ("weighed_bag", {"bags": 2.5}, "bags", "not_whole"),
        ("glass", {"sugar_g_per_l_low": 50.0}, "sugar_g_per_l_low", "ends_crossed"),
        ("glass", {"ethanol_abv_high": 0.2}, "ethanol_abv_high", "ends_crossed"),
        ("alcohol_from_two", {"specific_gravity": 1.1}, "specific_gravity", "readings_disagree"),
        ("alcohol_from_sugar", {"left_sugar_high_g_per_l": 70.0}, "left_sugar_high_g_per_l",
         "out_of_range"),
        ("cost", {"tea_pack_g": 0.0}, "tea_pack_g", "nothing"),
        ("cost", {"shop_price": 2.0}, "shop_l", "empty"),
    ],
)  # fmt: skip
def test_the_entry_at_fault_is_named_with_its_reason(key, entries, field, reason):
    with pytest.raises(ImpossibleInput) as caught:
        answer_of(key, **entries)
    assert (caught.value.field, caught.value.reason) == (field, reason)
    assert refusal_words(caught.value, QUESTIONS[key]).endswith((".", "?"))


def test_a_meter_that_shows_ph_is_calibrated_like_one_that_shows_voltage():
    # 29.08 mV and 174.5 mV by the ideal scale at 20 degC are pH 6.5 and 4.0
    by_ph = answer_of("calibrate", shown_as="ph", shown_1=6.5, shown_2=4.0)
    per_ph = phmeter.nernst_mv_per_ph(20.0)
    by_mv = answer_of("calibrate", shown_1=0.5 * per_ph, shown_2=3.0 * per_ph)
    assert by_ph.lines[0].value == pytest.approx(by_mv.lines[0].value)


def test_every_bench_verdict_of_the_core_has_whole_words():
    numbers = dict.fromkeys(
        (
            "ph", "ta_g_per_l", "share", "target_ph", "co2_g_per_l", "adds_g_per_l",
            "excess_meq_per_l", "low", "high", "slope_percent", "offset_mv", "residual_ph",
            "most_ph", "lowest_ph", "age_days", "old_days", "error_without_ph", "day",
        ),
        2.0,
    )  # fmt: skip
    codes = set().union(
        *(
            module.VERDICT_CODES
            for module in (starter, titration, acidpair, phmeter, instruments)
        )
    )  # fmt: skip
    for code in sorted(codes):
        words = verdict_words(Verdict(code, Level.WARN, numbers))
        for part in (words.fact, words.why, words.what_to_do):
            assert not part or part.rstrip()[-1] == "."
        assert words.fact
        assert words.why


# --- words -------------------------------------------------------------------------------


@pytest.mark.parametrize("standing", Standing)
def test_every_standing_of_a_source_has_words(standing):
    assert standing_words(standing)


@pytest.mark.parametrize("caveat", Caveat)
def test_every_caveat_has_a_sentence(caveat):
    assert caveat_words(caveat).endswith(".")


def test_figures_follow_the_units_of_the_maker(kit):
    kit.settings.put_unit(Kind.VOLUME, "gal")
    line = answer_of("starter_for_ph").lines[0]
    words = line_words(line, kit.quantities.show)
    assert words.figure.endswith(" gal")
    assert words.ends.count("gal") == 2


def test_a_limit_in_a_refusal_follows_the_units_too(kit):
    kit.settings.put_unit(Kind.TEMPERATURE, "°F")
    with pytest.raises(ImpossibleInput) as caught:
        answer_of("cooling", limit_c=60.0)
    words = refusal_words(caught.value, QUESTIONS["cooling"], kit.quantities.show)
    assert "59.0 °F" in words
    assert "113.0 °F" in words


def test_a_negative_figure_has_a_true_minus():
    line = replace(answer_of("calibrate").lines[1], value=-3.0)
    assert line_words(line, plain).figure == "−3.0 mV"


@pytest.mark.parametrize(
    ("text", "measure", "value"),
    [
        ("12,5", Number("mL", 1), 12.5),
        ("12.5 mL", Number("mL", 1), 12.5),
        ("12.5ml", Number("mL", 1), 12.5),
        ("-3", Number("mV", 1), -3.0),
        ("1/2", Number("bar", 1), 0.5),
        ("5 %", Number("%", 1, 100.0), 0.05),
    ],
)
def test_plain_numbers_are_read_with_or_without_their_unit(kit, text, measure, value):
    reader = NumberReader(kit.quantities, measure)
    assert reader.read(text, Kind.MASS) == pytest.approx(value)


@pytest.mark.parametrize("text", ["", "twelve", "1,500", "5 psi", "5 g/L", "1 2"])
def test_what_is_no_plain_number_is_refused(kit, text):
    with pytest.raises(NotAQuantity):
        NumberReader(kit.quantities, Number("m", 0)).read(text, Kind.MASS)


@pytest.mark.parametrize("key", QUESTIONS)
def test_what_an_entry_shows_first_can_be_typed_again(kit, key):
    for entry in QUESTIONS[key].fields:
        if isinstance(entry.form, Number) and isinstance(entry.default, float):
            reader = NumberReader(kit.quantities, entry.form)
            shown = reader.show(entry.default, Kind.MASS)
            assert reader.read(shown, Kind.MASS) == pytest.approx(entry.default, rel=0.01)


def test_a_taste_is_enough_for_a_starter_to_be_judged():
    for taste in StarterTaste:
        answer = answer_of("judge_starter", starter_taste=taste)
        assert answer.lines[0].text
        assert "starter_untested" in {verdict.code for verdict in answer.verdicts}
