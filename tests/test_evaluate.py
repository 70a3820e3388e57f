"""The command that measures the forecast: any folder of series, an honest report."""

from __future__ import annotations

import json
import math
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from evaluation.baselines import fixed, sigmoid, straight_line
from evaluation.pooled import taught
from evaluation.report import report
from evaluation.scores import Score, crossing_of
from evaluation.series import all_series, number
from evaluation.told import DAYS, Told

from culturecore import priors
from culturecore.forecast import Observation
from culturecore.stages import Quantity, TeaKind
from tests.core.other_mechanics import invented_batch, invented_culture

ROOT = Path(__file__).parents[1]
CUTS = ["after_day_0", "after_day_3", "after_day_5", "after_day_7"]


def ph(day, value, sd=0.05):
    return Observation(day=float(day), quantity=Quantity.PH, value=value, sd=sd)


def write_invented(folder: Path, count: int) -> None:
    rng = np.random.default_rng(6)
    lines = ["source_key,series_key,tea,temperature_C,starter_percent,day,quantity,value,sd"]
    for at in range(count):
        batch = invented_batch(rng)
        lines += [
            f"s{at % 2},jar{at},black,{batch.temperature_c},{100 * batch.starter_share}"
            f",{day},pH,{value},{batch.meter_sd_ph}"
            for day, value in batch.readings
        ]
    (folder / "invented.csv").write_text("\n".join(lines), encoding="utf-8")


def test_the_report_has_every_cut_and_every_way(tmp_path):
    write_invented(tmp_path, 4)
    found = report(tmp_path)
    assert json.loads(json.dumps(found)) == found
    assert found["series_with_a_course_of_ph"] == 4
    assert list(found["cuts"]) == CUTS
    assert set(found["by_source"]) == {"s0", "s1"}
    for cut in found["cuts"].values():
        assert cut["series"] == 4
        for way in (
            "forecast", "fixed_7_to_10_days", "straight_line_through_last_readings",
            "sigmoid_of_this_batch",
        ):  # fmt: skip
            score = cut[way]
            assert score["later_ph_readings"] >= 30
            assert score["median_absolute_error_ph"] > 0.0
            assert 0.0 <= score["coverage_50_ph"] <= score["coverage_80_ph"] <= 1.0
            assert score["median_width_50_ph"] < score["median_width_80_ph"]
    assert found["milliseconds_per_forecast"]["forecasts"] == 16


def test_earlier_series_of_a_culture_teach_later_ones_in_a_block_of_their_own(tmp_path):
    rng = np.random.default_rng(6)
    culture = invented_culture(rng)
    lines = ["source_key,series_key,culture,temperature_C,starter_percent,day,quantity,value,sd"]
    for at, name in enumerate(("tall", "tall", "", "flat", "tall")):
        batch = invented_batch(rng, culture, meter_sd_ph=0.05)
        lines += [
            f"home,jar{at},{name},{batch.temperature_c},{100 * batch.starter_share},{day},pH,"
            f"{value},0.05"
            for day, value in batch.readings
        ]
    (tmp_path / "cultures.csv").write_text("\n".join(lines), encoding="utf-8")
    found = report(tmp_path)
    pooled = found["pooled"]
    assert pooled["series_with_a_teacher"] == 2
    assert list(pooled["cuts"]) == CUTS
    first = pooled["cuts"]["after_day_0"]
    assert first["taught"]["later_ph_readings"] == first["untaught"]["later_ph_readings"] == 30
    assert first["taught"] != first["untaught"]
    # The main figures do not know of it.
    assert found["cuts"]["after_day_0"]["series"] == 5
    taught_pairs = taught(list(all_series(tmp_path)))
    assert [(plain.key, pupil.conditions.known.batches) for plain, pupil in taught_pairs] == [
        ("jar1", 1),
        ("jar4", 2),
    ]
    assert all(plain.conditions.known is None for plain, _ in taught_pairs)
    sds = [pupil.conditions.known.log_rate_sd for _, pupil in taught_pairs]
    assert sds[1] < sds[0] < math.log(priors.RATE_MEQ_PER_L_DAY.spread)


def test_the_script_prints_only_json(tmp_path):
    write_invented(tmp_path, 1)
    run = subprocess.run(
        [sys.executable, str(ROOT / "packaging" / "evaluate.py"), str(tmp_path)],
        capture_output=True, text=True, check=True,
    )  # fmt: skip
    assert json.loads(run.stdout)["series_found"] == 1


def test_a_folder_that_is_none_is_refused(tmp_path):
    run = subprocess.run(
        [sys.executable, str(ROOT / "packaging" / "evaluate.py"), str(tmp_path / "none")],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert run.returncode == 2
    assert "folder" in run.stderr


def test_poor_files_are_read_as_far_as_they_go(tmp_path):
    (tmp_path / "bare.csv").write_text("day,quantity,value\n0,pH,4.1\n5,ph,3.6\n9,pH,n.d.\n")
    (tmp_path / "prose.csv").write_text(
        "series_key,tea,sucrose_g_per_L,starter_percent,temperature_C,volume_mL,"
        "vessel_diameter_cm,day,quantity,value,sd\n"
        'a,"green, weak",99 (day-0 point),"1 (stated)",,500,8,0,pH,4.5,\n'
        "a,,,,,,,3,temperature_C,22.5,\n"
        "b,rosella,,,300,,,2,titratable_acidity_g_per_L_as_acetic,3.1,0.2\n"
        "b,rosella,,,,,,2,pH,99,0.2\n"
    )
    (tmp_path / "other.csv").write_text("a,b\n1,2\n")
    (tmp_path / "empty.csv").write_text("")
    bare, a, b = all_series(tmp_path)
    assert (bare.key, len(bare.readings), bare.readings[0].sd) == ("bare", 2, 0.05)
    assert a.conditions.sugar_g_per_l == 99.0
    assert a.conditions.starter_share == 0.01
    assert a.conditions.tea_kind is TeaKind.GREEN
    assert a.conditions.surface_cm2 == pytest.approx(math.pi * 16.0)
    assert a.conditions.temperature_c == 22.5
    assert a.temperatures == ((3.0, 22.5),)
    assert b.conditions.tea_kind is TeaKind.HERBAL
    assert b.conditions.temperature_c == 25.0
    assert [r.quantity for r in b.readings] == [Quantity.TA_G_PER_L]
    assert report(tmp_path)["series_with_a_course_of_ph"] == 1


@pytest.mark.parametrize(
    ("text", "value"), [("99 (day-0 point)", 99.0), ("1e1", 10.0), ("about 3", None), (None, None)]
)
def test_numbers_stand_at_the_beginning(text, value):
    assert number(text) == value


def test_the_published_series_in_the_tests_are_scored():
    found = report(ROOT / "tests" / "cases" / "series")
    assert found["series_with_a_course_of_ph"] >= 1
    assert found["cuts"]["after_day_3"]["forecast"]["coverage_80_ph"] >= 0.5


def test_the_crossing_is_found_through_noise():
    course = [ph(d, v) for d, v in ((0, 4.0), (4, 3.6), (6, 3.7), (8, 3.3), (10, 3.1), (12, 3.25))]
    # 3.1 and 3.25 are pooled to 3.175: from 3.3 on day 8, 3.2 comes 0.8 of the way to day 10.
    assert crossing_of(course) == pytest.approx(9.6)
    assert crossing_of(course[:4]) == math.inf
    assert crossing_of([ph(0, 3.1), ph(3, 3.0)]) == math.inf


def test_the_baselines_are_what_they_say():
    straight = straight_line([ph(0, 4.0), ph(2, 3.8), ph(4, 3.6)], 3.2)
    assert straight.crossing_days[2] == pytest.approx(8.0)
    assert straight.ph_at(6.0, 0.0)[2] == pytest.approx(3.4)
    assert fixed([ph(0, 4.0)], 3.2).crossing_days.tolist() == [7.0, 7.75, 8.5, 9.25, 10.0]
    days = np.arange(0.0, 13.0)
    true = 2.9 + 1.4 / (1.0 + np.exp((days - 5.0) / 2.0))
    fitted = sigmoid([ph(d, v) for d, v in zip(days, true, strict=True)], 3.2)
    assert fitted.crossing_days[2] == pytest.approx(5.0 + 2.0 * math.log(1.4 / 0.3 - 1.0), abs=0.1)


def test_scores_count_hits_and_far_misses():
    curves = np.array([np.full(len(DAYS), v) for v in (3.0, 3.1, 3.2, 3.3, 3.4)])
    told = Told(curves, np.array([5.0, 6.0, 7.0, 8.0, 9.0]))
    score = Score()
    for value in (3.2, 3.35, 3.9):
        score.add_ph(told, ph(8, value, 1e-6), "jar")
    score.add_day(told, 8.5)
    found = score.summary()
    assert found["coverage_80_ph"] == pytest.approx(0.667)
    assert found["coverage_50_ph"] == pytest.approx(0.333)
    assert found["confident_and_wrong"] == ["jar day 8"]
    assert (found["coverage_80_days"], found["coverage_50_days"]) == (1.0, 0.0)
    assert found["median_absolute_error_days"] == 1.5
