"""Calibrations kept, judged and counted from; every figure is invented."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services.meters import NAME_LIMIT, Meters
from brewdesk.store.records import CalibrationDraft
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level


@pytest.fixture
def meters(kit):
    return Meters(kit.door)


def draft(kit, **fields):
    values = {"at": kit.clock.now(), "meter": "Yellow meter", **fields}
    return CalibrationDraft(**values)


@pytest.mark.parametrize(
    ("slope_percent", "offset_mv", "code"),
    [
        (97.0, -8.0, "electrode_good"),
        (88.0, 5.0, "electrode_usable"),
        (97.0, 41.0, "electrode_clean_or_replace"),
        (80.0, 0.0, "electrode_clean_or_replace"),
    ],
)
def test_a_calibration_is_kept_with_its_verdict(kit, meters, slope_percent, offset_mv, code):
    kept = meters.record(draft(kit, slope_percent=slope_percent, offset_mv=offset_mv))
    assert kept.verdict == code
    assert meters.last() == kept
    assert code in {verdict.code for verdict in meters.verdicts(kept)}


def test_a_calibration_of_which_only_the_day_is_known_is_kept_too(kit, meters):
    kept = meters.record(draft(kit, meter="  Old one "))
    assert (kept.meter, kept.slope_percent, kept.verdict) == ("Old one", None, "")
    assert [verdict.code for verdict in meters.verdicts(kept)] == ["calibration_fresh"]


def test_it_grows_old_and_then_that_is_said_first(kit, meters):
    kept = meters.record(draft(kit, slope_percent=97.0, offset_mv=-8.0))
    kit.clock.advance(days=20)
    first, second = meters.verdicts(kept)
    assert (first.code, first.level) == ("calibration_old", Level.WARN)
    assert second.code == "electrode_good"


def test_each_meter_has_its_own_newest_one(kit, meters):
    earlier = kit.clock.now() - timedelta(days=9)
    blue = meters.record(draft(kit, meter="Blue", at=earlier))
    yellow = meters.record(draft(kit))
    meters.record(draft(kit, at=earlier - timedelta(days=30)))
    assert meters.last("Blue") == blue
    assert meters.last("Yellow meter") == meters.last() == yellow
    assert meters.names() == ("Yellow meter", "Blue")
    assert len(meters.all("Yellow meter")) == 2
    assert meters.last("Nobody's") is None


@pytest.mark.parametrize(
    ("fields", "field", "reason"),
    [
        ({"meter": "  "}, "meter", "empty"),
        ({"meter": "x" * (NAME_LIMIT + 1)}, "meter", "too_long"),
        ({"slope_percent": float("nan"), "offset_mv": 0.0}, "slope_percent", "not_finite"),
        ({"slope_percent": -3.0, "offset_mv": 0.0}, "slope_percent", ""),
    ],
)
def test_what_cannot_be_is_refused(kit, meters, fields, field, reason):
    with pytest.raises(ImpossibleInput) as refused:
        meters.record(draft(kit, **fields))
    assert refused.value.field == field
    assert not reason or refused.value.reason == reason
    assert meters.all() == ()


def test_a_calibration_to_come_is_refused(kit, meters):
    with pytest.raises(ImpossibleInput) as refused:
        meters.record(draft(kit, at=kit.clock.now() + timedelta(days=1)))
    assert refused.value.reason == "in_future"
