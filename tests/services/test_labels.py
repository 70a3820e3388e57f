"""What stands on a label, from plain values; every name and text is invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services.bottlingwish import AdditionWish, BottleGroupWish
from brewdesk.services.labels import (
    LONGEST_TEXT,
    OFFERED,
    LabelFacts,
    LabelField,
    LabelKind,
    caution_verdicts,
    chill_by_text,
    code_of,
    inherited,
    label_content,
    tidy_text,
)
from brewdesk.services.labelsample import sample_facts
from brewdesk.services.records import (
    BatchStage,
    BottleCheckDraft,
    CheckKind,
    CultureDraft,
    CultureOrigin,
    CultureState,
    Opened,
)
from culturecore.stages import AdditionKind, BottleKind
from tests.helpers.pantry_desk import open_desk, plan_batch, souring_batch

F = LabelField
UID = "0f3a9c2e-77aa-4d00-9c00-000000000000"
BERLIN = ZoneInfo("Europe/Berlin")


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    yield made
    made.store.close()


def facts(**changed):
    values = {"record": "batch", "record_id": 7, "kind": LabelKind.JAR, "name": "Black tea 7"}
    return LabelFacts(**(values | changed))


def content(given, **changed):
    return label_content(given, **({"zone": BERLIN, "pantry_uid": UID} | changed))


@pytest.mark.parametrize("kind", list(LabelKind))
def test_a_label_holds_what_its_kind_offers_and_nothing_else(kind):
    day = datetime(2026, 11, 25, 12, tzinfo=UTC)
    full = facts(
        stage="Souring", made_on=day, taste_from=day, chill_by=day, best_before=day, feed_by=day,
        ingredients="water, tea", allergens="none",
    )  # fmt: skip
    made = content(full, kind=kind)
    assert {line.field for line in made.lines} | {F.QR} == OFFERED[kind]
    assert made.code


def test_dates_are_days_where_the_maker_lives():
    late = datetime(2026, 11, 25, 23, 30, tzinfo=UTC)
    given = facts(made_on=late)
    assert content(given).text(F.MADE_ON) == "Made 26 Nov 2026"
    in_new_york = content(given, zone=ZoneInfo("America/New_York"))
    assert in_new_york.text(F.MADE_ON) == "Made 25 Nov 2026"


def test_months_are_in_the_makers_language(qapp):
    before = QLocale()
    QLocale.setDefault(QLocale("de_DE"))
    try:
        given = facts(made_on=datetime(2026, 5, 3, 12, tzinfo=UTC))
        assert content(given).text(F.MADE_ON) == "Made 3 Mai 2026"
    finally:
        QLocale.setDefault(before)


def test_the_code_is_short_and_says_nothing_of_the_record_but_its_id():
    given = facts(name="A private name", ingredients="secret")
    assert code_of(given, UID) == "brewdesk:batch:0f3a9c2e-7"
    assert content(given).code == "brewdesk:batch:0f3a9c2e-7"


def test_a_field_that_is_off_or_empty_makes_no_line():
    day = datetime(2026, 11, 25, 12, tzinfo=UTC)
    made = content(facts(made_on=day), hidden=frozenset({F.MADE_ON, F.QR, F.TRACE_ALCOHOL}))
    assert [line.field for line in made.lines] == [F.NAME]
    assert made.code == ""
    assert made.cautions == ()


def test_the_makers_own_words_come_first():
    made = content(facts(), own={F.NAME: "For my aunt", F.ALLERGENS: "sesame"})
    assert made.text(F.NAME) == "For my aunt"
    assert made.text(F.ALLERGENS) == "Allergens: sesame"


def test_cautions_come_from_the_core_with_their_sources():
    made = content(facts(kind=LabelKind.BOTTLE))
    assert made.cautions == tuple(caution_verdicts().values())
    assert all(verdict.sources for verdict in made.cautions)
    assert "under pressure" in made.text(F.UNDER_PRESSURE)
    assert "5.0 °C or below" in made.text(F.KEEP_COLD)
    assert "alcohol" in made.text(F.TRACE_ALCOHOL)


def test_no_label_promises_that_a_drink_is_safe():
    for kind in LabelKind:
        words = " ".join(line.text for line in content(facts(), kind=kind).lines).casefold()
        assert "safe" not in words
        assert "guarantee" not in words
        assert "free of alcohol" not in words


@pytest.mark.parametrize(
    ("danger_at", "shown"),
    [
        ("2026-11-28T12:00", "27 Nov 2026"),  # the 28th may be read as "to its end"
        ("2026-11-28T00:00", "27 Nov 2026"),
        ("2026-11-27T23:59", "26 Nov 2026"),
        ("2026-11-26T03:00", "25 Nov 2026"),  # the day they were filled
        ("2026-11-25T21:40", "25 Nov 2026, 21:00"),  # that same day: with the hour
    ],
)
def test_chill_by_names_a_day_that_is_over_before_the_danger(danger_at, shown):
    given = facts(
        kind=LabelKind.BOTTLE,
        made_on=datetime(2026, 11, 25, 9, tzinfo=BERLIN),
        chill_by=datetime.fromisoformat(danger_at).replace(tzinfo=BERLIN),
    )
    assert chill_by_text(given, BERLIN).replace("9:00 PM", "21:00") == shown


def test_bottles_keep_the_batchs_allergens_and_a_jar_all_of_its_words():
    kept = {"batch:3": {"allergens": "sesame", "ingredients": "all there is", "name": "x"}}
    bottles = facts(record="bottling", batch_key="batch:3")
    assert inherited(bottles, kept) == {F.ALLERGENS: "sesame"}
    jar = facts(record="vessel", batch_key="batch:3")
    assert inherited(jar, kept) == {F.ALLERGENS: "sesame", F.INGREDIENTS: "all there is"}
    assert inherited(facts(), kept) == {}


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        ("<b>Bold</b> &amp; {name} %1", "<b>Bold</b> &amp; {name} %1"),
        ("one\ntwo\r\n\tthree\u2028four", "one two three four"),
        ("\u202eesrever\u202c \x00\x07end", "esrever end"),
        ("תה שחור", "תה שחור"),
        ("  ", ""),
    ],
)
def test_hostile_text_is_kept_as_text_on_one_line(typed, shown):
    assert tidy_text(typed) == shown


def test_a_text_longer_than_any_label_is_cut_and_told():
    made = content(facts(name="n" * 10_000))
    assert len(made.text(F.NAME)) == LONGEST_TEXT
    assert made.text(F.NAME).endswith("…")
    assert made.cut == {F.NAME}
    assert content(facts(name="n" * LONGEST_TEXT)).cut == frozenset()


def test_the_pantry_offers_vessels_batches_and_cultures(desk):
    batch = souring_batch(desk)
    jar, *_ = desk.label_sources.jars()
    assert (jar.record, jar.name, jar.stage) == ("vessel", "Tall jar", "Black tea 1 · Souring")
    (of_batch,) = desk.label_sources.batches()
    assert (of_batch.record_id, of_batch.kind) == (batch.id, LabelKind.JAR)
    assert of_batch.made_on == batch.started_at
    (of_culture,) = desk.label_sources.cultures()
    assert (of_culture.kind, of_culture.name) == (LabelKind.CULTURE, "Culture of Tall jar")


GINGER = AdditionWish(
    kind=AdditionKind.GINGER,
    name="Ginger root",
    mass_g=24.0,
    sugar_share_low=0.01,
    sugar_share_high=0.03,
)


def bottle(desk, batch, **changed):
    wish = desk.bottlings.wish_for(batch.id)
    groups = (
        BottleGroupWish(bottle_count=3, kind=BottleKind.FIZZY_GLASS, brim_volume_l=0.52),
        BottleGroupWish(bottle_count=1, kind=BottleKind.FIZZY_PLASTIC, brim_volume_l=0.5),
    )
    values = {"groups": groups, "additions": (GINGER,), "name": "Ginger 1"}
    return desk.bottlings.fill(replace(wish, **(values | changed)), "invented, for a test")


def test_bottles_are_offered_with_a_label_for_each_and_what_is_in_them(desk):
    batch = souring_batch(desk)
    bottling = bottle(desk, batch)
    (made,) = desk.label_sources.bottlings()
    assert (made.key, made.kind) == (f"bottling:{bottling.id}", LabelKind.BOTTLE)
    assert made.usual_copies == 4
    assert "4 bottles" in made.stage
    assert made.is_likely
    assert made.made_on == bottling.filled_at
    assert made.best_before == bottling.filled_at + timedelta(days=30)
    assert made.ingredients.startswith("Water, live kombucha culture, sugar, ")
    assert {"black tea", "Ginger root"} <= set(made.ingredients.split(", "))
    assert code_of(made, UID) == f"brewdesk:bottling:0f3a9c2e-{bottling.id}"


def test_the_heaviest_ingredient_stands_first(desk):
    batch = souring_batch(desk)
    bottle(desk, batch, additions=(replace(GINGER, mass_g=900.0, name="Pear juice"),))
    (made,) = desk.label_sources.bottlings()
    names = made.ingredients.split(", ")
    assert names.index("Pear juice") == 1  # after the water, before half a litre of starter
    assert names.index("sugar") < names.index("black tea")


def test_warm_bottles_say_by_when_to_chill_and_cold_ones_do_not(desk):
    batch = souring_batch(desk)
    bottling = bottle(desk, batch)
    (made,) = desk.label_sources.bottlings()
    reckoned = desk.label_sources.with_danger(made).chill_by
    assert reckoned == desk.fizz_forecasts.now(bottling.id).chill_by_at
    assert reckoned is not None
    desk.bottlings.chill(bottling.id)
    (cold,) = desk.label_sources.bottlings()
    assert desk.label_sources.with_danger(cold).chill_by is None
    assert cold.best_before == desk.bottlings.get(bottling.id).best_before


def test_an_opened_bottle_needs_no_label_and_yesterdays_are_not_the_likeliest(desk):
    batch = souring_batch(desk)
    bottling = bottle(desk, batch)
    desk.clock.advance(days=2)
    desk.bottlings.check(
        BottleCheckDraft(
            bottling_id=bottling.id,
            at=desk.clock.now(),
            kind=CheckKind.OPENED,
            opened=Opened.RIGHT,
            bottle_count=1,
        )
    )
    (made,) = desk.label_sources.bottlings()
    assert made.usual_copies == 3
    assert not made.is_likely
    desk.bottlings.finish(bottling.id)
    assert desk.label_sources.bottlings() == ()


@pytest.mark.parametrize("kind", list(LabelKind))
def test_a_sample_is_plainly_invented_and_its_code_is_no_records(kind):
    made = content(sample_facts(kind, datetime(2026, 11, 25, 12, tzinfo=UTC)))
    assert "Invented" in made.text(F.NAME)
    assert made.code == "brewdesk:sample:0f3a9c2e-0"
    assert {line.field for line in made.lines} | {F.QR} == OFFERED[kind]


def test_a_batch_drawn_off_gets_a_bottle_label_and_a_discarded_one_none(desk):
    batch = souring_batch(desk)
    desk.batches.draw_off(batch.id)
    (drawn,) = desk.label_sources.batches()
    assert drawn.kind is LabelKind.BOTTLE
    other = souring_batch(desk, "Black tea 2", "Other jar")
    desk.batches.discard(other.id, "too sour")
    assert desk.batches.get(other.id).stage is BatchStage.DISCARDED
    assert [each.record_id for each in desk.label_sources.batches()] == [batch.id]


def test_a_resting_culture_has_a_jar_and_one_gone_has_no_label(desk):
    vessel = desk.vessels.get(plan_batch(desk).vessel_id)
    desk.batches.drop_plan(desk.batches.all()[0].id)
    mother = desk.cultures.add(
        CultureDraft(
            name="Mother",
            origin=CultureOrigin.GIFT,
            state=CultureState.RESTING,
            born_at=desk.clock.now(),
        )
    )
    desk.culture_care.rest(mother.id, vessel.id, 0.5)
    kinds = {each.name: each.kind for each in desk.label_sources.cultures()}
    assert kinds["Mother"] is LabelKind.RESTING_JAR
    assert desk.label_sources.jars()[0].kind is LabelKind.RESTING_JAR
    desk.culture_care.give_away(mother.id, "a friend")
    assert "Mother" not in {each.name for each in desk.label_sources.cultures()}


def test_what_may_share_mold_says_so_on_its_label(desk):
    batch = souring_batch(desk)
    culture_id = batch.culture_id
    desk.culture_care.lose(culture_id, "mold")
    suspects = [each for each in desk.label_sources.batches() if "mold" in each.stage]
    assert [each.record_id for each in suspects] == [
        each.id for each in desk.batches.all() if each.suspect_at is not None
    ]
    assert suspects
