"""Readings: one act for a form, ranges, doubts, corrections."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.readings import METHODS, SPANS, Readings
from brewdesk.services.wording.acts import act_text
from brewdesk.store.records import ReadingDraft
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import Look, Method, Quantity, TasteMark
from culturecore.units import NotAQuantity
from tests.helpers.dump import dump
from tests.helpers.fakes import DEFAULT_START


def _draft(kit, batch, quantity=Quantity.PH, value=3.42, method=None, **fields):
    return ReadingDraft(
        **(
            {
                "batch_id": batch.id,
                "at": kit.clock.now(),
                "quantity": quantity,
                "method": method or METHODS[quantity][0],
                "value": value,
                "entered": str(value),
            }
            | fields
        )
    )


def test_a_whole_form_is_one_act(kit):
    batch = kit.souring()
    kit.heard.clear()
    drafts = [_draft(kit, batch), _draft(kit, batch, Quantity.TEMPERATURE_C, 23.5)]

    readings = kit.readings.record(drafts)

    assert kit.readings.of_batch(batch.id) == readings
    assert len(kit.heard) == 1
    assert act_text(kit.history.undo_act()) == "pH 3.42 and 23.5 °C on Tall jar"
    kit.history.undo()
    assert kit.readings.of_batch(batch.id) == ()


def test_words_and_numbers_are_told_alike(kit):
    batch = kit.souring()
    kit.readings.record(
        [
            _draft(kit, batch, Quantity.BRIX, 4.2),
            _draft(kit, batch, Quantity.TASTE, None, text=TasteMark.TOO_SWEET.value),
            _draft(kit, batch, Quantity.NOTE, None, text="smells of apples"),
            _draft(kit, batch, Quantity.PELLICLE_MM, 3.0),
            _draft(kit, batch, Quantity.TA_G_PER_L, 5.1),
            _draft(kit, batch, Quantity.SPECIFIC_GRAVITY, 1.012),
        ]
    )
    assert act_text(kit.history.undo_act()) == (
        "4.2 °Bx, Taste “Too sweet”, “smells of apples”, Pellicle 3 mm, Acidity 5.10 g/L "
        "and SG 1.012 on Tall jar"
    )


def test_readings_come_back_in_order_of_time(kit):
    batch = kit.souring()
    kit.clock.advance(days=2)
    late = _draft(kit, batch, value=3.5)
    early = _draft(kit, batch, value=4.0, at=kit.clock.now() - timedelta(days=1))
    kit.readings.record([late, early])
    assert [reading.value for reading in kit.readings.of_batch(batch.id)] == [4.0, 3.5]


@pytest.mark.parametrize(
    ("quantity", "value"),
    [
        (Quantity.PH, -0.1),
        (Quantity.PH, 14.1),
        (Quantity.PH, float("nan")),
        (Quantity.PH, None),
        (Quantity.TEMPERATURE_C, -5.1),
        (Quantity.TEMPERATURE_C, 110.1),
        (Quantity.BRIX, -0.1),
        (Quantity.BRIX, 40.1),
        (Quantity.SPECIFIC_GRAVITY, 0.979),
        (Quantity.SPECIFIC_GRAVITY, 1.151),
        (Quantity.TA_G_PER_L, -0.1),
        (Quantity.TA_G_PER_L, 60.1),
        (Quantity.PELLICLE_MM, 201.0),
    ],
)
def test_a_value_no_reading_can_have_refuses_the_whole_form(kit, quantity, value):
    batch = kit.souring()
    before = dump(kit.path)
    with pytest.raises(ImpossibleInput) as refused:
        kit.readings.record([_draft(kit, batch), _draft(kit, batch, quantity, value)])
    assert refused.value.field == quantity.value
    assert dump(kit.path) == before


@pytest.mark.parametrize("quantity", list(SPANS))
def test_the_ends_of_the_possible_range_are_possible(kit, quantity):
    batch = kit.souring()
    span = SPANS[quantity]
    kit.readings.record([_draft(kit, batch, quantity, end) for end in (span.low, span.high)])
    assert len(kit.readings.of_batch(batch.id)) == 2


@pytest.mark.parametrize(
    ("quantity", "text", "reason"),
    [
        (Quantity.TASTE, "delicious", "not_offered"),
        (Quantity.NOTE, "  ", "empty"),
    ],
)
def test_words_that_say_nothing_are_refused(kit, quantity, text, reason):
    batch = kit.souring()
    with pytest.raises(ImpossibleInput) as refused:
        kit.readings.record([_draft(kit, batch, quantity, None, text=text)])
    assert (refused.value.field, refused.value.reason) == ("text", reason)


def test_a_method_that_cannot_measure_it_is_refused(kit):
    batch = kit.souring()
    with pytest.raises(ImpossibleInput) as refused:
        kit.readings.record([_draft(kit, batch, method=Method.HYDROMETER)])
    assert refused.value.field == "method"


def test_an_uncertainty_must_be_one(kit):
    batch = kit.souring()
    for sd in (0.0, -0.1, float("nan"), 9.0):
        with pytest.raises(ImpossibleInput) as refused:
            kit.readings.record([_draft(kit, batch, sd=sd)])
        assert refused.value.field == "sd"


def test_an_empty_form_and_a_form_of_two_batches_are_refused(kit):
    one, two = kit.souring(kit.vessel("One")), kit.souring(kit.vessel("Two"))
    with pytest.raises(ImpossibleInput, match="empty"):
        kit.readings.record([])
    with pytest.raises(ImpossibleInput, match="several_batches"):
        kit.readings.record([_draft(kit, one), _draft(kit, two)])


@pytest.mark.parametrize(
    ("offset", "reason"),
    [
        (timedelta(minutes=5), None),
        (timedelta(minutes=5, seconds=1), "in_future"),
        (-timedelta(days=1), None),
        (-timedelta(days=1, seconds=1), "before_start"),
    ],
)
def test_a_reading_belongs_to_the_time_of_its_batch(kit, offset, reason):
    batch = kit.souring()
    draft = _draft(kit, batch, at=kit.clock.now() + offset)
    if reason is None:
        assert kit.readings.record([draft])[0].at == draft.at
        return
    with pytest.raises(ImpossibleInput) as refused:
        kit.readings.record([draft])
    assert (refused.value.field, refused.value.reason) == ("at", reason)


@pytest.mark.parametrize(
    ("quantity", "value", "is_doubted"),
    [
        (Quantity.PH, 1.9, True),
        (Quantity.PH, 2.0, False),
        (Quantity.PH, 7.5, False),
        (Quantity.PH, 7.6, True),
        (Quantity.TEMPERATURE_C, 55.0, True),
        (Quantity.TEMPERATURE_C, 24.0, False),
        (Quantity.BRIX, 25.0, True),
        (Quantity.SPECIFIC_GRAVITY, 1.1, True),
        (Quantity.TA_G_PER_L, 45.0, True),
        (Quantity.PELLICLE_MM, 80.0, True),
    ],
)
def test_an_unlikely_value_is_doubted_but_kept(kit, quantity, value, is_doubted):
    batch = kit.souring()
    draft = _draft(kit, batch, quantity, value)
    doubts = kit.readings.doubts(draft)
    assert [doubt.level for doubt in doubts] == ([Level.WARN] if is_doubted else [])
    assert kit.readings.record([draft])[0].value == value


def test_a_reading_without_uncertainty_gets_that_of_its_method(kit):
    batch = kit.souring()
    meter, strip, acid, own = kit.readings.record(
        [
            _draft(kit, batch),
            _draft(kit, batch, method=Method.STRIP),
            _draft(kit, batch, Quantity.TA_G_PER_L, 8.0),
            _draft(kit, batch, sd=0.02),
        ]
    )
    assert (meter.sd, strip.sd, own.sd) == (0.05, 0.3, 0.02)
    assert acid.sd == pytest.approx(0.4)  # 5 % of the value
    assert kit.readings.default_sd(Quantity.NOTE, Method.EYE) is None


@given(st.floats(0.0, 60.0))
def test_the_uncertainty_of_an_acidity_is_never_nothing(value):
    # Needs neither store nor clock: the figure depends on its arguments alone.
    sd = Readings.default_sd(None, Quantity.TA_G_PER_L, Method.TITRATION, value)
    assert sd >= 0.1
    assert sd >= 0.05 * value


def test_correcting_a_reading_keeps_what_is_not_touched(kit):
    batch = kit.souring()
    (reading,) = kit.readings.record([_draft(kit, batch)])
    edited = kit.readings.edit(reading.id, value=3.24, entered="3.24")
    assert (edited.value, edited.at, edited.sd) == (3.24, reading.at, 0.05)
    assert act_text(kit.history.undo_act()) == "pH 3.42 on Tall jar corrected to pH 3.24"


def test_another_method_brings_its_own_uncertainty_unless_the_maker_gave_one(kit):
    batch = kit.souring()
    usual, own = kit.readings.record([_draft(kit, batch), _draft(kit, batch, sd=0.02)])
    assert kit.readings.edit(usual.id, method=Method.STRIP).sd == 0.3
    assert kit.readings.edit(own.id, method=Method.STRIP).sd == 0.02


def test_a_correction_is_checked_like_a_new_reading(kit):
    batch = kit.souring()
    (reading,) = kit.readings.record([_draft(kit, batch)])
    with pytest.raises(ImpossibleInput):
        kit.readings.edit(reading.id, value=34.2)
    assert kit.readings.get(reading.id) == reading


def test_a_reading_taken_out_is_gone_until_undone(kit):
    batch = kit.souring()
    (reading,) = kit.readings.record([_draft(kit, batch)])
    kit.readings.remove(reading.id)
    assert kit.readings.of_batch(batch.id) == ()
    kit.history.undo()
    assert kit.readings.of_batch(batch.id) == (reading,)


@pytest.mark.parametrize(
    ("quantity", "text", "value"),
    [
        (Quantity.PH, "3,42", 3.42),
        (Quantity.TEMPERATURE_C, "75.2 °F", 24.0),
        (Quantity.BRIX, "4.5", 4.5),
        (Quantity.SPECIFIC_GRAVITY, "1.012", 1.012),
        (Quantity.TA_G_PER_L, "5", 5.0),
        (Quantity.PELLICLE_MM, "4", 4.0),
        (Quantity.PELLICLE_MM, "0.5 cm", 5.0),
        (Quantity.PELLICLE_MM, "1/4 in", 6.35),
    ],
)
def test_a_field_of_the_form_becomes_a_draft(kit, quantity, text, value):
    method = METHODS[quantity][0]
    draft = kit.readings.entry_from_text(7, quantity, method, text, DEFAULT_START)
    assert draft.value == pytest.approx(value)
    assert (draft.entered, draft.batch_id, draft.at) == (text, 7, DEFAULT_START)
    assert draft.sd == kit.readings.default_sd(quantity, method, draft.value)


def test_words_become_a_draft_as_they_are(kit):
    draft = kit.readings.entry_from_text(7, Quantity.NOTE, Method.EYE, " cloudy ", DEFAULT_START)
    assert (draft.text, draft.value, draft.sd) == ("cloudy", None, None)


def test_a_field_that_cannot_be_read_says_so(kit):
    with pytest.raises(NotAQuantity):
        kit.readings.entry_from_text(7, Quantity.PH, Method.METER, "sour", DEFAULT_START)


def test_every_quantity_has_its_methods(kit):
    for quantity in Quantity:
        assert kit.readings.methods(quantity)


# looks at the surface


def test_a_look_is_kept_with_what_was_seen_as_one_act(kit):
    batch = kit.souring()
    look, note = kit.readings.record_look(batch.id, Look.UNSURE, "a pale spot")
    assert (look.quantity, look.method, look.text) == (Quantity.LOOK, Method.EYE, "unsure")
    assert (look.value, look.sd) == (None, None)
    assert (note.quantity, note.text) == (Quantity.NOTE, "a pale spot")
    kit.history.undo()
    assert kit.readings.of_batch(batch.id) == ()


def test_a_look_without_words_is_one_reading(kit):
    batch = kit.souring()
    assert len(kit.readings.record_look(batch.id, Look.FINE, "  ")) == 1


def test_a_look_is_one_of_three_and_taken_by_eye(kit):
    batch = kit.souring()
    draft = _draft(kit, batch, Quantity.LOOK, None, text="lovely")
    with pytest.raises(ImpossibleInput) as fault:
        kit.readings.record([replace(draft, method=Method.EYE)])
    assert (fault.value.field, fault.value.reason) == ("text", "not_offered")
    with pytest.raises(ImpossibleInput) as fault:
        kit.readings.record([replace(draft, text="fine", method=Method.METER)])
    assert fault.value.field == "method"


def test_a_look_is_written_in_the_journal(kit):
    batch = kit.souring()
    kit.readings.record_look(batch.id, Look.FINE)
    assert "Nothing suspicious" in kit.journal.of_batch(batch.id)[0].text


def test_a_look_can_be_corrected(kit):
    batch = kit.souring()
    (look,) = kit.readings.record_look(batch.id, Look.FINE)
    assert kit.readings.edit(look.id, text="mold").text == "mold"
