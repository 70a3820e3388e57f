"""Drafts to store: a plain example of each, and strategies for any that the store must take.

All of it is invented.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

from hypothesis import strategies as st

from brewdesk.store.records import (
    BatchDraft,
    CultureDraft,
    PlaceDraft,
    ReadingDraft,
    ReminderDraft,
    StepDraft,
    VesselDraft,
)
from culturecore.stages import (
    BatchStage,
    CultureOrigin,
    CultureState,
    Look,
    Material,
    Method,
    Quantity,
    ReminderKind,
    ReminderState,
    StarterTaste,
    StepKind,
    StepState,
    TasteMark,
    TeaKind,
    VesselShape,
)

NOW = datetime(2026, 11, 25, 9, 12, 58, 123456, tzinfo=UTC)

PLACE = PlaceDraft(name="Invented larder", temperature_c=22.5)


def vessel_draft(place_id: int, **changed: Any) -> VesselDraft:
    """Return an invented jar."""
    draft = VesselDraft(
        name="Invented tall jar",
        shape=VesselShape.CYLINDER,
        material=Material.GLASS,
        brim_volume_l=4.2,
        working_volume_l=3.8,
        inner_diameter_cm=15.0,
        place_id=place_id,
    )
    return replace(draft, **changed)


def culture_draft(**changed: Any) -> CultureDraft:
    """Return an invented culture."""
    draft = CultureDraft(
        name="Invented line",
        origin=CultureOrigin.GIFT,
        state=CultureState.AT_WORK,
        born_at=NOW - timedelta(days=90),
    )
    return replace(draft, **changed)


def batch_draft(vessel_id: int, culture_id: int | None = None, **changed: Any) -> BatchDraft:
    """Return an invented batch in its planned stage."""
    draft = BatchDraft(
        name="Invented batch",
        vessel_id=vessel_id,
        culture_id=culture_id,
        stage=BatchStage.PLANNED,
        planned_at=NOW,
        fill_volume_l=3.5,
        sugar_g_per_l=50.0,
        tea_kind=TeaKind.BLACK,
        tea_g_per_l=4.0,
        bag_g=2.0,
        starter_ph=3.1,
        starter_ta_g_per_l=None,
        starter_taste=None,
        target_start_ph=4.2,
        water_alkalinity_meq_per_l=1.5,
        hot_water_c=90.0,
        cold_water_c=15.0,
        culture_limit_c=30.0,
        place_temperature_c=22.5,
        sugar_g=150.0,
        tea_g=12.0,
        starter_volume_l=0.5,
        hot_water_g=600.0,
        cold_water_g=2300.0,
        mixed_temperature_c=27.4,
        start_ph=4.1,
        start_ph_low=3.9,
        start_ph_high=4.3,
    )
    return replace(draft, **changed)


def reading_draft(batch_id: int, **changed: Any) -> ReadingDraft:
    """Return an invented pH reading."""
    draft = ReadingDraft(
        batch_id=batch_id,
        at=NOW,
        quantity=Quantity.PH,
        method=Method.METER,
        value=3.42,
        sd=0.05,
        entered="3,42",
    )
    return replace(draft, **changed)


def reminder_draft(batch_id: int | None, **changed: Any) -> ReminderDraft:
    """Return an invented reminder."""
    draft = ReminderDraft(
        batch_id=batch_id,
        kind=ReminderKind.TASTE,
        occurrence="first",
        due_at=NOW + timedelta(days=7),
    )
    return replace(draft, **changed)


def step_draft(batch_id: int, **changed: Any) -> StepDraft:
    """Return an invented run-sheet step."""
    draft = StepDraft(batch_id=batch_id, position=1, kind=StepKind.STEEP, planned_s=720)
    return replace(draft, **changed)


def _numbers(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high, allow_nan=False, allow_infinity=False)


def _maybe(strategy: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    return st.none() | strategy


# Whole minutes off UTC, so that other zones are converted too.
INSTANTS = st.datetimes(
    min_value=datetime(1970, 1, 2),
    max_value=datetime(9000, 1, 1),
    timezones=st.sampled_from([UTC, datetime.strptime("+0530", "%z").tzinfo]),
)
# Everything that a keyboard or a clipboard can bring but NUL and lone surrogates.
TEXTS = st.text(st.characters(exclude_characters="\x00", exclude_categories=["Cs"]), max_size=60)
NAMES = TEXTS.filter(lambda text: len(text) > 0)

PLACES = st.builds(PlaceDraft, name=NAMES, temperature_c=_numbers(-20, 60))

CULTURES = st.builds(
    CultureDraft,
    name=NAMES,
    origin=st.sampled_from(CultureOrigin),
    state=st.sampled_from(CultureState),
    born_at=INSTANTS,
    vessel_id=st.none(),
    pellicle_mm=_maybe(_numbers(0, 1000)),
    note=TEXTS,
)


def vessels(place_id: int) -> st.SearchStrategy[VesselDraft]:
    """Build any vessel in a place."""
    return st.builds(
        VesselDraft,
        name=NAMES,
        shape=st.sampled_from(VesselShape),
        material=st.sampled_from(Material),
        brim_volume_l=_numbers(5, 10_000),
        working_volume_l=_numbers(0.001, 5),
        inner_diameter_cm=_numbers(0.001, 1000),
        place_id=st.just(place_id),
        shelf_order=st.integers(-1_000_000, 1_000_000),
        note=TEXTS,
        retired_at=_maybe(INSTANTS),
    )


def batches(vessel_id: int, culture_id: int) -> st.SearchStrategy[BatchDraft]:
    """Build any ended batch, so that they all fit into one vessel."""
    return st.builds(
        BatchDraft,
        name=NAMES,
        vessel_id=st.just(vessel_id),
        culture_id=_maybe(st.just(culture_id)),
        stage=st.sampled_from(
            [stage for stage in BatchStage if not stage.is_live],
        ),
        planned_at=INSTANTS,
        started_at=INSTANTS,
        ended_at=INSTANTS,
        end_reason=TEXTS,
        fill_volume_l=_numbers(0.001, 10_000),
        sugar_g_per_l=_numbers(0, 1000),
        tea_kind=st.sampled_from(TeaKind),
        tea_g_per_l=_numbers(0, 1000),
        bag_g=_numbers(0, 1000),
        starter_ph=_maybe(_numbers(0, 14)),
        starter_ta_g_per_l=_maybe(_numbers(0, 1000)),
        starter_taste=_maybe(st.sampled_from(StarterTaste)),
        target_start_ph=_numbers(0, 14),
        water_alkalinity_meq_per_l=_numbers(-100, 100),
        hot_water_c=_numbers(-20, 150),
        cold_water_c=_numbers(-20, 150),
        culture_limit_c=_numbers(-20, 150),
        place_temperature_c=_numbers(-20, 60),
        sugar_g=_numbers(0, 10_000_000),
        tea_g=_numbers(0, 10_000_000),
        starter_volume_l=_numbers(0, 10_000),
        hot_water_g=_numbers(0, 10_000_000),
        cold_water_g=_numbers(0, 10_000_000),
        mixed_temperature_c=_numbers(-20, 150),
        start_ph=_numbers(0, 14),
        start_ph_low=_numbers(0, 7),
        start_ph_high=_numbers(7, 14),
    )


def steps(batch_id: int) -> st.SearchStrategy[StepDraft]:
    """Build any run-sheet step of a batch."""
    return st.builds(
        StepDraft,
        batch_id=st.just(batch_id),
        position=st.integers(0, 1000),
        kind=st.sampled_from(StepKind),
        state=st.sampled_from(StepState),
        planned_s=_maybe(st.integers(0, 100_000_000)),
        ends_at=_maybe(INSTANTS),
        remaining_s=_maybe(_numbers(0, 100_000_000)),
        started_at=_maybe(INSTANTS),
        finished_at=_maybe(INSTANTS),
        temperature_c=_maybe(_numbers(-50, 200)),
        override_reason=TEXTS,
    )


def readings(batch_id: int) -> st.SearchStrategy[ReadingDraft]:
    """Build any reading of a batch."""
    common: dict[str, Any] = {
        "batch_id": st.just(batch_id),
        "at": INSTANTS,
        "method": st.sampled_from(Method),
        "sd": _maybe(_numbers(0, 1_000_000)),
        "temperature_c": _maybe(_numbers(-50, 200)),
        "entered": TEXTS,
    }
    worded = (Quantity.TASTE, Quantity.NOTE, Quantity.LOOK)
    measured = [q for q in Quantity if q not in (Quantity.PH, *worded)]
    return st.one_of(
        st.builds(
            ReadingDraft,
            quantity=st.just(Quantity.PH),
            value=_numbers(0, 14),
            text=TEXTS,
            **common,
        ),
        st.builds(
            ReadingDraft,
            quantity=st.sampled_from(measured),
            value=_numbers(-1_000_000, 1_000_000),
            text=TEXTS,
            **common,
        ),
        st.builds(
            ReadingDraft,
            quantity=st.just(Quantity.TASTE),
            text=st.sampled_from([mark.value for mark in TasteMark]),
            **common,
        ),
        st.builds(
            ReadingDraft,
            quantity=st.just(Quantity.LOOK),
            text=st.sampled_from([look.value for look in Look]),
            **common,
        ),
        st.builds(ReadingDraft, quantity=st.just(Quantity.NOTE), text=TEXTS, **common),
    )


def reminders(batch_id: int) -> st.SearchStrategy[ReminderDraft]:
    """Build any reminder, of a batch or of none."""
    return st.builds(
        ReminderDraft,
        batch_id=_maybe(st.just(batch_id)),
        kind=st.sampled_from(ReminderKind),
        occurrence=TEXTS,
        due_at=INSTANTS,
        window_end=_maybe(INSTANTS),
        state=st.sampled_from(ReminderState),
        shown_at=_maybe(INSTANTS),
        snoozed_until=_maybe(INSTANTS),
        done_at=_maybe(INSTANTS),
        text=TEXTS,
    )
