"""The whole life of a thing on one time line."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services import timeline as timelines
from brewdesk.services.reminders import Reminders
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.services.timeline import Timeline
from brewdesk.store.errors import NoSuchRow
from brewdesk.store.records import (
    CareDraft,
    PhotoDraft,
    ReadingDraft,
    TransferDraft,
    VesselMoveDraft,
)
from culturecore.stages import (
    CareKind,
    Method,
    Quantity,
    ReminderKind,
    ReminderState,
    TransferKind,
)
from tests.helpers.fakes import InlineJobs


def batch(row):
    return Subject(SubjectKind.BATCH, row.id)


def vessel(row):
    return Subject(SubjectKind.VESSEL, row.id)


def culture(row):
    return Subject(SubjectKind.CULTURE, row.id)


@pytest.fixture
def timeline(kit):
    return Timeline(kit.door, InlineJobs(), kit.quantities)


def read(kit, row, value=3.4, *, at=None, note=""):
    draft = ReadingDraft(
        batch_id=row.id,
        at=at or kit.clock.now(),
        quantity=Quantity.NOTE if note else Quantity.PH,
        method=Method.EYE if note else Method.METER,
        value=None if note else value,
        text=note,
    )
    return kit.readings.record([draft])[0]


def texts(view):
    return [line.text for line in view.lines]


def test_a_batch_is_told_from_its_plan_to_its_end_newest_first(kit, timeline):
    row = kit.souring()
    kit.clock.advance(days=3)
    read(kit, row)
    kit.clock.advance(days=1)
    kit.batches.draw_off(row.id, "just right")
    view = timeline.of(batch(row))
    assert view.name == row.name
    assert view.lines[0].text == "Black tea 1 drawn off from Tall jar: just right"
    assert view.lines[1].text == "pH 3.40 on Tall jar"
    assert view.lines[-1].text == "Black tea 1 planned, 4.00 L in Tall jar"
    assert [line.at for line in view.lines] == sorted((x.at for x in view.lines), reverse=True)


def test_a_reading_entered_later_stands_where_it_was_taken_and_says_so(kit, timeline):
    row = kit.souring()
    kit.clock.advance(days=5)
    taken = kit.clock.now() - timedelta(days=2)
    read(kit, row, at=taken)
    read(kit, row, 3.1)
    lines = timeline.of(batch(row)).lines
    late = next(line for line in lines if line.text.startswith("pH 3.40"))
    assert late.at == taken
    assert late.entered_at == kit.clock.now()
    assert late.is_late
    assert not lines[0].is_late


def test_what_was_undone_is_not_told(kit, timeline):
    row = kit.souring()
    read(kit, row)
    before = timeline.of(batch(row))
    kit.history.undo()
    after = timeline.of(batch(row))
    assert texts(before)[1:] == texts(after)
    kit.history.redo()
    assert timeline.of(batch(row)) == before


def test_a_vessel_tells_of_its_batches_only_while_they_were_in_it(kit, timeline):
    old, new = kit.vessel("Old jar"), kit.vessel("New jar")
    row = kit.souring(old)
    kit.clock.advance(days=1)
    read(kit, row, 4.0)
    kit.clock.advance(days=1)
    pour_over(kit, row, old, new)
    kit.clock.advance(days=1)
    read(kit, row, 3.5)
    in_old, in_new = texts(timeline.of(vessel(old))), texts(timeline.of(vessel(new)))
    assert "pH 4.00 on Old jar" in in_old
    assert not any("3.50" in text for text in in_old)
    assert any("3.50" in text for text in in_new)
    assert not any("4.00 on" in text for text in in_new)
    moved = "Black tea 1 poured over from Old jar into New jar"
    assert moved in in_old
    assert moved in in_new


def pour_over(kit, row, old, new):
    """Write what pouring over writes, without an act."""
    draft = VesselMoveDraft(
        batch_id=row.id, from_vessel_id=old.id, to_vessel_id=new.id, at=kit.clock.now()
    )

    def work(unit):
        unit.vessel_moves.add(draft)
        unit.batches.change(row.id, vessel_id=new.id)

    kit.door.quiet(work)


def test_there_and_back_again_is_two_stays(kit, timeline):
    old, new = kit.vessel("Old jar"), kit.vessel("New jar")
    row = kit.souring(old)
    for number, (source, target) in enumerate(((old, new), (new, old))):
        kit.clock.advance(days=1)
        pour_over(kit, row, source, target)
        kit.clock.advance(hours=1)
        read(kit, row, 4.0 - number / 2)
    in_old, in_new = texts(timeline.of(vessel(old))), texts(timeline.of(vessel(new)))
    assert any("3.50" in text for text in in_old)
    assert not any("4.00 on" in text for text in in_old)
    assert any("4.00 on" in text for text in in_new)
    assert not any("3.50" in text for text in in_new)


def test_rows_that_no_act_tells_of_have_lines_of_their_own(kit, timeline):
    row, living = kit.souring(), kit.culture()
    now = kit.clock.now()

    def work(unit):
        unit.care.add(
            CareDraft(culture_id=living.id, at=now, kind=CareKind.NOTE, text="smells of apples")
        )
        unit.care.add(CareDraft(culture_id=living.id, at=now, kind=CareKind.FED, volume_l=0.2))
        unit.photos.add(
            PhotoDraft(
                content_hash="a" * 64,
                media_type="image/jpeg",
                width_px=10,
                height_px=10,
                size_bytes=100,
                taken_at=now,
                batch_id=row.id,
                caption="a smooth film",
            )
        )
        unit.transfers.add(
            TransferDraft(at=now, kind=TransferKind.DRINK, volume_l=0.5, from_batch_id=row.id)
        )

    kit.door.quiet(work)
    of_culture, of_batch = texts(timeline.of(culture(living))), texts(timeline.of(batch(row)))
    assert "Note: “smells of apples”" in of_culture
    assert "Fed, 0.200 L" in of_culture
    assert "Old Faithful came to be: A gift" in of_culture
    assert "Photo: “a smooth film”" in of_batch
    assert "Drawn off, 0.500 L" in of_batch


def test_what_an_act_tells_of_is_not_told_twice(kit, timeline):
    row = kit.souring()
    read(kit, row, note="a thin film")
    assert sum("a thin film" in text for text in texts(timeline.of(batch(row)))) == 1


def test_a_reminder_that_came_due_and_was_left_is_told(kit, timeline):
    row = kit.souring()
    reminders = Reminders(kit.door)
    own = reminders.add_own(row.id, kit.clock.now() + timedelta(hours=1), "buy tea")
    kit.clock.advance(days=1)
    shown_at = kit.clock.now()

    def show(unit):
        unit.reminders.change(own.id, state=ReminderState.SHOWN, shown_at=shown_at)

    kit.door.quiet(show)
    missed = "Came due, not ticked off: buy tea"
    assert missed in texts(timeline.of(batch(row)))
    reminders.done(own.id)
    told = texts(timeline.of(batch(row)))
    assert missed not in told
    assert "“buy tea” done" in told
    waiting = [r for r in reminders.listed() if r.reminder.kind is not ReminderKind.OWN]
    assert not any(item.title in text for item in waiting for text in told)


def test_a_culture_tells_of_its_batches_stages(kit, timeline):
    living = kit.culture()
    row = kit.souring(culture=living)
    kit.batches.draw_off(row.id, "nice")
    told = timeline.of(culture(living))
    assert any("drawn off" in text for text in texts(told))
    line = next(line for line in told.lines if "drawn off" in line.text)
    assert line.about == batch(row)
    assert line.about_name == row.name


def test_a_place_tells_of_the_jars_that_came_to_stand_there(kit, timeline):
    row = kit.vessel()
    told = timeline.of(Subject(SubjectKind.PLACE, row.place_id))
    assert texts(told) == ["New vessel Tall jar, 4.50 L"]
    assert told.lines[0].about == vessel(row)


def test_lines_lead_elsewhere_and_never_to_what_is_gone(kit, timeline):
    row = kit.plan()
    kit.batches.drop_plan(row.id)
    home = kit.vessels.all()[0]
    told = timeline.of(vessel(home))
    dropped = next(line for line in told.lines if "given up" in line.text)
    assert dropped.about is None or dropped.about.kind is not SubjectKind.BATCH
    assert all(line.about != vessel(home) for line in told.lines)
    with pytest.raises(NoSuchRow):
        timeline.of(batch(row))


def test_a_limit_keeps_the_newest_and_counts_all(kit, timeline):
    row = kit.souring()
    for number in range(8):
        kit.clock.advance(hours=8)
        read(kit, row, 4.0 - number / 10)
    whole = timeline.of(batch(row))
    cut = timeline.of(batch(row), limit=5)
    assert cut.lines == whole.lines[:5]
    assert cut.total == whole.total == len(whole.lines)


def test_more_acts_than_are_read_at_a_time(kit, timeline, monkeypatch):
    monkeypatch.setattr(timelines, "ACTS_AT_A_TIME", 5)
    row = kit.vessel()
    for number in range(12):
        kit.vessels.edit(row.id, note=f"note {number}")
    told = timeline.of(vessel(row))
    assert told.total == 13
    assert [line.act_id for line in told.lines] == sorted(
        (line.act_id for line in told.lines), reverse=True
    )


def test_a_request_is_answered_by_signal(kit, timeline, qtbot):
    row = kit.souring()
    with qtbot.waitSignal(timeline.ready) as caught:
        timeline.request(batch(row))
    assert caught.args[0].subject == batch(row)
    with qtbot.waitSignal(timeline.failed) as caught:
        timeline.request(Subject(SubjectKind.BATCH, 999))
    assert isinstance(caught.args[0], NoSuchRow)


def test_pouring_over_by_the_makers_own_act_ends_one_stay_and_begins_another(kit, timeline):
    old, new = kit.vessel("Old jar"), kit.vessel("New jar")
    row = kit.souring(old)
    kit.clock.advance(days=1)
    read(kit, row, 4.0)
    kit.clock.advance(days=1)
    kit.liquids.move_batch(row.id, new.id)
    kit.clock.advance(days=1)
    read(kit, row, 3.5)
    in_old, in_new = texts(timeline.of(vessel(old))), texts(timeline.of(vessel(new)))
    poured = "Black tea 1 poured over into New jar"
    assert in_old.count(poured) == in_new.count(poured) == 1
    assert any("4.00 on" in text for text in in_old)
    assert not any("3.50 on" in text for text in in_old)
    assert any("3.50 on" in text for text in in_new)
    assert not any("4.00 on" in text for text in in_new)
