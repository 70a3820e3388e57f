"""A look back in words: what is said, what is left unsaid, and on paper."""

from __future__ import annotations

import math
from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services.lookbackfacts import Past, PastBatch
from brewdesk.services.lookbackgroups import Factor, Measure, Question
from brewdesk.services.lookbacklosses import LossKind
from brewdesk.services.lookbackview import Tally, view_of
from brewdesk.services.losscauses import Cause
from brewdesk.services.paperdoc import Drawing, Grid, Para
from brewdesk.services.wording.amounts import plain
from brewdesk.services.wording.lookback import (
    compared_words,
    days_words,
    dot_words,
    factor_words,
    group_line,
    measure_words,
    month_words,
    sentences,
    spread_words,
)
from brewdesk.services.wording.lookbackreport import look_back_report
from brewdesk.services.wording.losses import cause_words, help_words
from culturecore.smallsamples import spread_of
from culturecore.stages import BatchPurpose, BatchStage, TasteMark, TeaKind

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)


@pytest.fixture(autouse=True)
def english():
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedKingdom))
    yield
    QLocale.setDefault(before)


def batch(number, days, *, tea=TeaKind.BLACK, stage=BatchStage.CLOSED, **fields):
    """Return an invented batch that came down to pH 3.2 on a day; None for never."""
    started = NOW - timedelta(days=60 + number)
    ph = ((4.0, 3.8),) if days is None else ((days - 0.5, 3.3), (days + 0.5, 3.1))
    given = {
        "batch_id": number,
        "name": f"Batch {number}",
        "tea_kind": tea,
        "stage": stage,
        "purpose": BatchPurpose.DRINK,
        "started_at": started,
        "ended_at": None if stage.is_live else started + timedelta(days=20),
        "end_reason": "",
        "culture_id": 1,
        "culture_name": "Lighthouse",
        "generation": 0,
        "culture_age_days": 100.0,
        "place_id": 1,
        "place_name": "Pantry",
        "temperature_c": 22.0,
        "is_measured": True,
        "starter_share": 0.15,
        "start_ph": 4.3,
        "start_ph_low": 4.25,
        "ph": ph,
        "tastes": (),
        "saw_mold": False,
        "lost_l": 0.0,
    }
    return PastBatch(**(given | fields))


def view(*batches, **asked):
    return view_of(Past(now=NOW, zone=UTC, batches=batches), Question(**asked))


def test_a_single_batch_has_no_range_and_few_say_so():
    told = sentences(view(batch(1, 8.0)), plain)
    assert told[0] == "Your batches took 8 days (1 batch) to pH 3.2."
    assert told[1] == "That is too few to say what the next one will take."


def test_an_open_median_is_more_than_the_longest_seen():
    found = spread_of([5.0, 6.0], [7.0, 8.0, 9.0])
    assert spread_words(found) == "more than 9 days (5 to 6, 2 batches, 3 more not there)"


def test_none_there_yet():
    told = sentences(view(batch(1, None), batch(2, None, tea=TeaKind.GREEN)), plain)
    assert told[0] == "None of 2 batches has come to pH 3.2 yet."
    live = batch(1, None, stage=BatchStage.SOURING)
    told = sentences(view(live, measure=Measure.DRAWN_OFF), plain)
    assert told[0] == "None of 1 batch is drawn off yet."


def test_a_line_of_a_group_says_how_sure_it_is():
    one = view(*(batch(n, 8.0 + n) for n in range(6)))
    (group,) = one.groups
    line = group_line(group, one.question, plain)
    assert line == (
        "Black tea: 10.5 days (8 to 13, 6 batches). The median of many such batches lies "
        "between 8 and 13 days (97 % sure)."
    )


def test_what_never_got_there_is_compared_as_open():
    blacks = [batch(n, 7.0 + n / 10) for n in range(6)]
    greens = [batch(10 + n, 8.0 + n / 10, tea=TeaKind.GREEN) for n in range(5)]
    never = [batch(20 + n, None, tea=TeaKind.GREEN) for n in range(4)]
    found = view(*blacks, *greens, *never)
    assert not found.compared.difference.is_told
    words = compared_words(found.compared, found.question, plain)
    assert words == "Whether Black tea and Green tea differ cannot be said yet."
    assert math.isinf(found.compared.difference.interval.low)


def test_tastings_below_five_carry_no_share():
    marks = tuple((NOW, mark) for mark in (TasteMark.RIGHT, TasteMark.TOO_SWEET))
    told = " ".join(sentences(view(batch(1, 8.0, tastes=marks)), plain))
    assert "Of 2 tastings 1 were just right, 1 too sweet, 0 too sour; too few to say" in told
    assert "%" not in told


def test_a_tally_of_nothing_has_no_share():
    assert Tally().right_share is None


@pytest.mark.parametrize("factor", Factor)
def test_every_factor_and_measure_has_words(factor):
    assert factor_words(factor)
    for measure in Measure:
        assert measure_words(measure, Question(), plain)
    one = view(batch(1, 8.0), factor=factor)
    assert sentences(one, plain)[0].startswith("Your batches took 8 days")


def test_every_cause_has_a_name_and_help_stays_general():
    assert len({cause_words(cause) for cause in Cause}) == len(Cause)
    assert help_words(Cause.UNTOLD) == ""
    assert all(help_words(cause) for cause in Cause if cause is not Cause.UNTOLD)
    # mold: everything goes; nothing may read as if part of it could be kept
    assert "all of it" in help_words(Cause.MOLD)
    assert {kind.value for kind in LossKind} == {"batch", "culture", "bottles"}


def test_a_dot_says_between_which_readings():
    one = view(batch(1, 8.0))
    words = dot_words(one.dots[0], plain, UTC)
    assert "8 days, read between day 7.5 and day 8.5" in words
    assert "22.0 °C" in words
    usual = view(batch(1, 8.0, is_measured=False))
    assert "22.0 °C as usual there" in dot_words(usual.dots[0], plain, UTC)


def test_days_are_written_to_a_tenth_at_most():
    assert [days_words(day) for day in (8.0, 8.04, 8.25, 11.96)] == ["8", "8", "8.2", "12"]


def test_months_are_named_with_their_year():
    (month,) = view(batch(1, 8.0)).months
    assert month_words(month, plain) == ("September 2026: 1 batch begun, 22.0 °C, 8 days (1 batch)")


def test_the_paper_says_what_the_page_says():
    batches = [batch(n, 7.0 + n, tea=list(TeaKind)[n % 3]) for n in range(9)]
    batches.append(batch(20, None, stage=BatchStage.DISCARDED, end_reason="Mold", lost_l=3.5))
    found = view(*batches)
    document = look_back_report(found, ("Green tea",), plain, UTC)
    paragraphs = [block.text for block in document.blocks if isinstance(block, Para)]
    assert set(sentences(found, plain)) <= set(paragraphs)
    (drawing,) = [block for block in document.blocks if isinstance(block, Drawing)]
    assert all(line in drawing.words for line in ("Black tea: ", "Green tea: "))
    grids = [block for block in document.blocks if isinstance(block, Grid)]
    assert [len(grid.rows) for grid in grids] == [3, 1, 1]
    assert all(len(row) == len(grid.headers) for grid in grids for row in grid.rows)
    assert document.subtitle == "Green tea"
    assert "Batch Batch 20 · " in grids[2].rows[0][0]
    assert grids[2].rows[0][1:] == ("Mold", "Mold")


def test_an_empty_look_back_can_be_put_on_paper():
    document = look_back_report(view(), (), plain, UTC)
    assert document.subtitle == "All batches"
