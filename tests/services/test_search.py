"""Search over everything: what is found, in which order, and what filters hold back."""

from __future__ import annotations

import shutil
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from brewdesk.services import demo, searchindex
from brewdesk.services.changes import Changes
from brewdesk.services.door import Door
from brewdesk.services.quantities import Quantities
from brewdesk.services.reminders import Reminders
from brewdesk.services.search import Search
from brewdesk.services.searchparts import PARTS
from brewdesk.services.searchwords import FoundKind, Sieve
from brewdesk.services.settings import Settings
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import CareDraft, PhotoDraft, PlaceDraft, ReadingDraft
from brewdesk.store.store import Store
from culturecore.stages import BatchStage, CareKind, Method, Quantity, TeaKind
from culturecore.units import Kind
from tests.helpers.fakes import FakeClock, InlineJobs

EVERYTHING = 1_000_000


@pytest.fixture
def search(kit):
    return Search(kit.door, InlineJobs(), kit.quantities)


def note(kit, row, text):
    draft = ReadingDraft(
        batch_id=row.id,
        at=kit.clock.now(),
        quantity=Quantity.NOTE,
        method=Method.EYE,
        text=text,
    )
    return kit.readings.record([draft])[0]


def kinds(answer):
    return [find.kind for find in answer.finds]


def test_every_kind_of_record_is_found_by_its_words(kit, search):
    living = kit.culture("Wanderer", note="zebra of culture")
    home = kit.vessel("Tall jar", note="zebra of vessel")
    row = kit.souring(home, living)
    kit.vessels.add_place(PlaceDraft(name="Zebra cellar", temperature_c=14.0))
    note(kit, row, "zebra of note")
    Reminders(kit.door).add_own(row.id, kit.clock.now() + timedelta(days=1), "zebra of reminder")
    now = kit.clock.now()

    def work(unit):
        unit.care.add(
            CareDraft(culture_id=living.id, at=now, kind=CareKind.NOTE, text="zebra of care")
        )
        unit.photos.add(
            PhotoDraft(
                content_hash="a" * 64,
                media_type="image/jpeg",
                width_px=1,
                height_px=1,
                size_bytes=1,
                taken_at=now,
                culture_id=living.id,
                caption="zebra of caption",
            )
        )

    kit.door.quiet(work)
    kit.batches.draw_off(row.id, "zebra of end")
    answer = search.find("zebra")
    assert set(kinds(answer)) == set(FoundKind)
    assert answer.total == len(answer.finds)
    assert all(find.subject is not None for find in answer.finds)


def test_a_name_comes_before_a_note_and_a_closer_name_first(kit, search):
    row = kit.souring(name="Batch of June")
    note(kit, row, "ginger")
    kit.culture("Old ginger line")
    kit.culture("Ginger")
    kit.culture("Gingerbread")
    named = [find.name for find in search.find("ginger").finds]
    assert named[:4] == ["Ginger", "Gingerbread", "Old ginger line", "Batch of June"]


def test_all_words_have_to_occur_anywhere_in_a_record(kit, search):
    kit.culture("Wanderer", note="likes green tea")
    assert search.find("tea WANDERER").total == 1
    assert search.find("tea wanderer black").total == 0
    assert search.find("wand tea").finds[0].name == "Wanderer"


def test_case_and_accents_make_no_difference(kit, search):
    kit.culture("Crème Brûlée")
    assert search.find("creme BRULEE").total == search.find("CRÈME brûlée").total > 0


def test_the_journals_sentences_are_found_and_name_their_batch(kit, search):
    row = kit.souring()
    answer = search.find("covered and souring")
    (find,) = answer.finds
    assert find.kind is FoundKind.ACT
    assert find.name == row.name
    assert find.subject == Subject(SubjectKind.BATCH, row.id)
    assert find.act_id == find.id


def test_an_old_name_is_found_in_the_journal_after_renaming(kit, search):
    home = kit.vessel("Aubergine")
    kit.vessels.edit(home.id, name="Courgette")
    assert FoundKind.VESSEL not in kinds(search.find("aubergine"))
    assert {find.name for find in search.find("aubergine").finds} == {"Courgette"}


def test_what_is_undone_is_found_no_more_and_again_after_redo(kit, search):
    kit.culture("Wanderer")
    before = search.find("wanderer")
    assert before.total == 2  # the culture, and the act that brought it
    kit.history.undo()
    assert search.find("wanderer").total == 0
    kit.history.redo()
    assert search.find("wanderer") == before


def test_a_note_is_found_once_though_its_act_quotes_it(kit, search):
    row = kit.souring()
    found = note(kit, row, "a quince in the air")
    answer = search.find("quince")
    assert [(find.kind, find.id) for find in answer.finds] == [(FoundKind.NOTE, found.id)]
    kit.readings.edit(found.id, text="a pear in the air")
    assert FoundKind.NOTE not in kinds(search.find("quince"))
    assert FoundKind.NOTE in kinds(search.find("pear"))


def test_sentences_follow_the_makers_units(kit, search):
    kit.vessel("Tall jar")
    assert search.find("new vessel 4.50 L").total == 1
    kit.settings.put_unit(Kind.VOLUME, "gal")
    assert search.find("new vessel 4.50 L").total == 0
    assert search.find("new vessel gal").total == 1


def test_a_limit_keeps_the_best_and_tells_how_many_more(kit, search):
    for number in range(30):
        kit.culture(f"Line {number}")
    answer = search.find("line", limit=10)
    assert len(answer.finds) == 10
    assert answer.more == answer.total - 10 == 50
    assert answer.finds == search.find("line", limit=EVERYTHING).finds[:10]


@pytest.mark.parametrize(
    "text", ["%", "_", "<b>bold</b>", "'; DROP TABLE act; --", "\u202eabc", '"', "\\", "\x07"]
)
def test_hostile_text_is_looked_for_as_it_stands(kit, search, text):
    assert search.find(text).total == 0
    row = kit.souring()
    note(kit, row, f"x {text} y")
    answer = search.find(text)
    assert FoundKind.NOTE in kinds(answer)
    assert answer.finds[0].text == f"x {text} y"


def test_the_filters_of_one_batch(kit, search):
    living, other = kit.culture("Wanderer"), kit.culture("Homebody")
    kit.vessels.ensure_place()
    cellar = kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    here, there = kit.vessel("Here"), kit.vessel("There", place_id=cellar.id)
    green = kit.souring(here, living, name="First", tea_kind=TeaKind.GREEN)
    black = kit.souring(there, other, name="Second", tea_kind=TeaKind.BLACK)
    kit.batches.draw_off(black.id)

    def batches(**sieve):
        answer = search.find("", Sieve(kind=FoundKind.BATCH, **sieve))
        return {find.id for find in answer.finds}

    assert batches() == {green.id, black.id}
    assert batches(tea=TeaKind.GREEN) == {green.id}
    assert batches(culture_id=other.id) == {black.id}
    assert batches(place_id=cellar.id) == {black.id}
    assert batches(stage=BatchStage.DRAWN_OFF) == {black.id}
    assert batches(tea=TeaKind.GREEN, stage=BatchStage.DRAWN_OFF) == set()


def test_times_let_through_what_was_there_then(kit, search):
    start = kit.clock.now()
    early = kit.souring(kit.vessel("One"), name="Early")
    kit.clock.advance(days=10)
    kit.batches.draw_off(early.id)
    kit.clock.advance(days=10)
    late = kit.souring(kit.vessel("Two"), name="Late")

    def found(kind, first, last):
        sieve = Sieve(
            kind=kind,
            since=start + timedelta(days=first),
            until=start + timedelta(days=last),
        )
        return {find.name for find in search.find("", sieve).finds}

    assert found(FoundKind.BATCH, 0, 5) == {"Early"}
    assert found(FoundKind.BATCH, 12, 15) == set()
    assert found(FoundKind.BATCH, 15, 30) == {"Late"}
    assert found(FoundKind.BATCH, -9, 30) == {"Early", "Late"}
    assert found(FoundKind.VESSEL, 12, 15) == set()
    assert found(FoundKind.VESSEL, 15, 30) == {"Two"}
    assert late.name == "Late"


def test_nothing_found_says_what_each_filter_holds_back(kit, search):
    row = kit.souring(tea_kind=TeaKind.BLACK)
    note(kit, row, "a quince in the air")
    sieve = Sieve(tea=TeaKind.GREEN, kind=FoundKind.NOTE)
    answer = search.find("quince", sieve)
    assert answer.total == 0
    assert dict(answer.hidden_by) == {"tea": 1, "kind": 0}
    assert answer.without_filters == 1


def test_what_is_asked_is_read_piece_by_piece_and_only_the_newest_answered(kit, monkeypatch):
    monkeypatch.setattr(searchindex, "ACTS_AT_A_TIME", 5)
    home = kit.vessel()
    for number in range(12):
        kit.vessels.edit(home.id, note=f"note {number}")
    jobs = InlineJobs(hold=True)
    search = Search(kit.door, jobs, kit.quantities)
    answers = []
    search.answered.connect(answers.append)
    search.ask("first")
    search.ask("changed")
    rounds = 0
    while not answers:
        jobs.release()
        rounds += 1
    assert rounds >= len(PARTS) + 2
    assert [answer.text for answer in answers] == ["changed"]
    assert answers[0].total == 12


def test_a_store_that_cannot_be_read_is_told(kit, search):
    failures = []
    search.failed.connect(failures.append)
    kit.path.rename(kit.path.with_suffix(".away"))
    search.ask("tea")
    assert isinstance(failures[0], StoreTrouble)
    kit.path.with_suffix(".away").rename(kit.path)


NAMES = st.text(
    st.characters(exclude_categories=["Cs", "Cc", "Zl", "Zp"]), min_size=1, max_size=80
).filter(lambda name: name.strip())


@settings(max_examples=40)
@given(names=st.lists(NAMES, min_size=1, max_size=5))
def test_each_stored_name_is_found_by_any_of_its_words(new_store, tmp_path_factory, names):
    path = tmp_path_factory.mktemp("names") / "pantry.sqlite"
    shutil.copy(new_store, path)
    clock = FakeClock()
    store = Store.open(path, now=clock.now())
    try:
        changes = Changes()
        quantities = Quantities(Settings(store, changes))
        search = Search(Door(store, clock, changes), InlineJobs(), quantities)
        with store.write() as unit:
            rows = [unit.places.add(PlaceDraft(name=n, temperature_c=20.0)) for n in names]
        for row in rows:
            for word in row.name.split():
                found = {find.id for find in search.find(word).finds}
                assert row.id in found, (row.name, word)
    finally:
        store.close()


@pytest.fixture(scope="module")
def month(tmp_path_factory, new_store):
    """The invented month, to look at only."""
    path = tmp_path_factory.mktemp("month") / "pantry.sqlite"
    shutil.copy(new_store, path)
    clock = FakeClock(datetime(2026, 11, 25, 10, 30, tzinfo=UTC))
    store = Store.open(path, now=clock.now())
    demo.fill(store, clock)
    changes = Changes()
    quantities = Quantities(Settings(store, changes))
    yield Search(Door(store, clock, changes), InlineJobs(), quantities)
    store.close()


DAYS = st.integers(1, 26).map(lambda day: datetime(2026, 11, day, tzinfo=UTC))
FIELDS = {
    "kind": st.sampled_from(FoundKind),
    "tea": st.sampled_from(TeaKind),
    "culture_id": st.integers(1, 5),
    "place_id": st.integers(1, 3),
    "stage": st.sampled_from(BatchStage),
    "since": DAYS,
    "until": DAYS,
}
SIEVES = st.fixed_dictionaries({}, optional=FIELDS)


@given(
    text=st.sampled_from(["", "e", "tea", "black tea", "ph", "done", "invented"]),
    fields=SIEVES,
    more=SIEVES,
)
def test_a_filter_only_ever_narrows(month, text, fields, more):
    wide = Sieve(**fields)
    narrow = replace(wide, **{name: more[name] for name in more if name not in fields})

    def found(sieve):
        return {(f.kind, f.id) for f in month.find(text, sieve, limit=EVERYTHING).finds}

    assert found(narrow) <= found(wide) <= found(Sieve())


@given(text=st.text(max_size=12), fields=SIEVES)
def test_any_question_has_an_answer_that_adds_up(month, text, fields):
    sieve = Sieve(**fields)
    answer = month.find(text, sieve, limit=7)
    assert len(answer.finds) == min(7, answer.total)
    for name, count in answer.hidden_by:
        assert count == month.find(text, sieve.without(name), limit=1).total
