"""Batch report and process log, read back by programs that are not ours."""

from __future__ import annotations

import subprocess
from dataclasses import replace
from datetime import UTC, timedelta
from html.parser import HTMLParser
from itertools import pairwise
from xml.etree import ElementTree

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtGui import QImage, QPageSize

from brewdesk.services.paperdoc import Document, Facts, Grid, Heading, Para
from brewdesk.services.paperhtml import html_of
from brewdesk.services.processlog import process_log
from brewdesk.services.safetylog import SafePh, SafetyKind
from brewdesk.services.wording.processlog import process_document
from brewdesk.store.records import CalibrationDraft, ReadingDraft
from brewdesk.widgets.documentdialog import page_count, write_document_html, write_document_pdf
from brewdesk.widgets.reports import batch_document
from brewdesk.widgets.theme import load_fonts
from culturecore.stages import Look, Method, Quantity, StepKind
from tests.helpers.pantry_desk import brewing_batch, open_desk, souring_batch

HOSTILE = "<script>alert(1)</script>\"'&{page}</title><img src=http://x.invalid/a>\u202egnp\x07"
SIZES = (QPageSize.PageSizeId.A4, QPageSize.PageSizeId.Letter)


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    load_fonts()
    yield made
    made.store.close()


def reading(desk, batch, value, **more):
    return ReadingDraft(
        batch_id=batch.id,
        at=desk.clock.now(),
        quantity=Quantity.PH,
        method=Method.METER,
        value=value,
        **more,
    )


def soured(desk, name="Black tea 1", vessel="Tall jar", start=4.4):
    batch = souring_batch(desk, name, vessel)
    for day in range(6):
        desk.readings.record([reading(desk, batch, start - 0.15 * day)])
        desk.clock.advance(days=1)
    return batch


def text_of(path):
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], check=True, capture_output=True, text=True
    )
    return " ".join(done.stdout.split())


def pages_of(path):
    done = subprocess.run(["pdfinfo", str(path)], check=True, capture_output=True, text=True)
    return int(done.stdout.split("Pages:")[1].split()[0])


def pictures_of(path):
    stem = path.with_suffix("")
    subprocess.run(["pdftoppm", "-r", "40", "-png", str(path), str(stem)], check=True)
    return [QImage(str(each)) for each in sorted(path.parent.glob(f"{stem.name}-*.png"))]


def margins_are_white(image):
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = [bytes(grey.constScanLine(y))[: grey.width()] for y in range(grey.height())]
    edge = 12  # of some 22 dots of margin
    return all(min(row[:edge] + row[-edge:]) > 200 for row in rows) and all(
        min(row) > 200 for row in (*rows[:edge], *rows[-edge:])
    )


def long_log(desk):
    batch = soured(desk)
    with desk.store.write() as unit:
        for n in range(90):
            unit.calibrations.add(
                CalibrationDraft(
                    at=desk.clock.now() - timedelta(hours=n), meter=f"Invented meter {n}"
                )
            )
    for n in range(5):
        desk.readings.record_look(batch.id, Look.UNSURE, f"spot {n}")
        desk.clock.advance(hours=1)
    now = desk.clock.now()
    return process_document(
        process_log(desk.door, now - timedelta(days=30), now), desk.quantities.show, UTC
    )


class Seen(HTMLParser):
    """What a browser would see: elements, attributes, words."""

    def __init__(self):
        super().__init__()
        self.tags, self.attributes, self.words = [], [], []

    def handle_starttag(self, tag, attrs):
        self.tags.append(tag)
        self.attributes += attrs

    def handle_data(self, data):
        self.words.append(data)


def seen_in(html):
    seen = Seen()
    seen.feed(html)
    seen.close()
    return seen


@pytest.mark.parametrize("size", SIZES)
def test_a_batch_report_is_one_page_with_everything_on_it(desk, tmp_path, size):
    batch = soured(desk)
    desk.readings.record_look(batch.id, Look.FINE, "smooth")
    document = batch_document(desk, batch.id)
    path = tmp_path / "report.pdf"
    assert write_document_pdf(document, path, size)

    assert pages_of(path) == 1
    text = text_of(path)
    for words in ("Batch report", "Black tea 1", "Tall jar", "4.40", "3.65", "Run sheet", "smooth",
                  "What went in", "Safety log", "Page 1 of 1", "no guarantee"):  # fmt: skip
        assert words in text
    assert "pH 4.2 or below was first read on day 2.0." in text
    assert "What was read so far; without a forecast." in text
    (page,) = pictures_of(path)
    assert margins_are_white(page)


def test_a_report_with_a_great_deal_on_it_is_still_one_page_and_html_leaves_nothing_out(
    desk, tmp_path
):
    batch = souring_batch(desk, "W" * 80, "V" * 60)
    for n in range(80):
        at = desk.clock.now()
        note = ReadingDraft(
            batch_id=batch.id, at=at, quantity=Quantity.NOTE, method=Method.EYE,
            text=f"note {n} " + "long " * 200,
        )  # fmt: skip
        desk.readings.record([reading(desk, batch, 3.9), note])
        desk.readings.record_look(batch.id, Look.UNSURE, "x" * 3000)
        desk.clock.advance(hours=3)
    document = batch_document(desk, batch.id)
    path = tmp_path / "report.pdf"
    write_document_pdf(document, path)

    assert pages_of(path) == 1
    text = text_of(path)
    assert "Thinned out to 14 of 80 rows" in text
    assert "Only 8 of 80 entries fit on one page" in text
    assert margins_are_white(pictures_of(path)[0])
    html = html_of(document)
    assert all(f"note {n} " in html for n in range(80))


def test_a_report_of_sixty_readings_is_thinned_out_evenly_and_says_so(desk, tmp_path):
    batch = souring_batch(desk)
    for n in range(60):
        desk.readings.record([reading(desk, batch, 4.4 - n / 50)])
        desk.clock.advance(hours=5)
    document = batch_document(desk, batch.id)
    grid = next(block for block in document.blocks if isinstance(block, Grid))
    shown = [grid.rows.index(row) for row in grid.on_paper()]
    assert (shown[0], shown[-1], len(shown)) == (0, 59, 14)
    steps = [later - sooner for sooner, later in pairwise(shown)]
    assert max(steps) - min(steps) <= 1
    path = tmp_path / "report.pdf"
    write_document_pdf(document, path)
    assert pages_of(path) == 1
    text = text_of(path)
    assert "Thinned out to 14 of 60 rows" in text
    assert "the HTML report has every row" in text
    html = html_of(document)
    assert "Thinned out" not in html
    assert all(row[0] in html for row in grid.rows)


@given(count=st.integers(0, 200), most=st.integers(2, 30))
def test_thinning_keeps_order_and_both_ends_and_says_so_only_if_rows_are_gone(count, most):
    rows = tuple((str(n),) for n in range(count))
    grid = Grid(
        headers=("n",), rows=rows, shares=(1.0,), most_on_paper=most, thinned="{shown} of {count}"
    )
    shown = grid.on_paper()
    assert len(shown) == min(count, most)
    assert len(set(shown)) == len(shown)
    assert [int(cell) for (cell,) in shown] == sorted(int(cell) for (cell,) in shown)
    assert shown[:1] == rows[:1]
    assert shown[-1:] == rows[-1:]
    assert grid.thinned_words() == (f"{most} of {count}" if count > most else "")


def test_a_long_log_goes_on_over_pages_and_loses_no_row(desk, tmp_path):
    document = long_log(desk)
    path = tmp_path / "log.pdf"
    assert write_document_pdf(document, path)

    text = text_of(path)
    pages = pages_of(path)
    assert pages == page_count(document) > 1
    for n in range(90):
        assert f"Invented meter {n} " in f"{text} "
    for n in range(1, pages + 1):
        assert f"Page {n} of {pages}" in text
    assert text.count("Buffers") >= 2  # the columns are named again on the next page
    assert all(margins_are_white(page) for page in pictures_of(path))


def test_the_log_tells_overrides_with_their_reasons_looks_and_discards(desk):
    batch = brewing_batch(desk)
    for step in desk.brewing.steps(batch.id):
        reason = "the thermometer is broken (invented)" if step.kind is StepKind.CULTURE_IN else ""
        reason = reason or ("same" if step.kind is StepKind.STARTER_IN else "")
        desk.brewing.finish(step.id, 45.0 if reason else None, reason)
    desk.clock.advance(days=8)
    desk.readings.record_look(batch.id, Look.MOLD, "green and dry")
    desk.batches.discard(batch.id, "mold")
    log = process_log(desk.door, desk.clock.now() - timedelta(days=30), desk.clock.now())

    kinds = [entry.kind for entry in log.entries]
    assert SafetyKind.STEP_OVERRIDE in kinds
    assert SafetyKind.DISCARD in kinds
    reasons = [entry.reason for entry in log.entries]
    assert "the thermometer is broken (invented)" in reasons
    assert "green and dry" in reasons
    (logged,) = log.batches
    assert logged.safe_ph.code is SafePh.NOT_SHOWN
    html = html_of(process_document(log, desk.quantities.show, UTC))
    for words in ("the thermometer is broken (invented)", "45.0 °C", "green and dry", "not shown"):
        assert words in html


def test_the_day_of_ph_4_2_is_that_of_the_first_reading_that_shows_it(desk):
    quick, slow = soured(desk), soured(desk, "Slow", "Other jar", start=5.2)
    desk.clock.advance(days=5)
    desk.readings.record([reading(desk, slow, 4.2)])
    log = process_log(desk.door, desk.clock.now() - timedelta(days=60), desk.clock.now())
    stories = {each.batch.id: each.safe_ph for each in log.batches}

    assert stories[quick.id].code is SafePh.IN_TIME
    assert stories[quick.id].day == pytest.approx(2.0)
    assert stories[quick.id].start.value == 4.4
    assert stories[slow.id].code is SafePh.LATE
    assert stories[slow.id].day == pytest.approx(11.0)


def test_a_batch_that_is_over_gives_no_advice_any_more(desk):
    batch = soured(desk)
    desk.forecasts.request(batch.id)
    desk.jobs.release()
    assert "without a forecast" not in html_of(batch_document(desk, batch.id))
    desk.batches.draw_off(batch.id)
    html = html_of(batch_document(desk, batch.id))

    assert "this is what was read until it ended" in html
    assert "tasting" not in html.casefold()


def test_only_what_falls_into_the_span_is_in_the_log(desk):
    batch = soured(desk)
    desk.batches.draw_off(batch.id)
    end = desk.clock.now()
    desk.clock.advance(days=40)

    assert process_log(desk.door, end + timedelta(days=1), desk.clock.now()).batches == ()
    assert len(process_log(desk.door, end - timedelta(days=1), end).batches) == 1


def test_hostile_words_stay_words_in_html_and_on_paper(desk, tmp_path):
    batch = soured(desk, HOSTILE[:90])
    desk.readings.record_look(batch.id, Look.UNSURE, HOSTILE)
    document = batch_document(desk, batch.id)
    html = html_of(document)
    seen = seen_in(html)

    assert not {"script", "img", "iframe", "link", "object", "a"} & set(seen.tags)
    assert not [name for name, _ in seen.attributes if name.startswith("on") or name == "src"]
    assert [value for name, value in seen.attributes if value and "://" in value] == [
        "http://www.w3.org/2000/svg"
    ]
    assert "<script>alert(1)</script>" in "".join(seen.words)
    assert "\x07" not in html
    write_document_pdf(document, tmp_path / "r.pdf")
    assert "alert(1)" in text_of(tmp_path / "r.pdf")


def test_the_curve_in_html_is_a_picture_with_words_and_a_point_for_each_reading(desk):
    batch = soured(desk)
    html = html_of(batch_document(desk, batch.id))
    svg = html[html.index("<svg") : html.index("</svg>") + 6]
    root = ElementTree.fromstring(svg)
    space = "{http://www.w3.org/2000/svg}"

    assert len(root.findall(f"{space}circle")) == 6
    assert root.find(f"{space}title").text
    heights = [float(dot.get("cy")) for dot in root.findall(f"{space}circle")]
    assert heights == sorted(heights)  # the pH falls


WORDS = st.text(max_size=40)


@settings(max_examples=80, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(words=st.lists(WORDS, min_size=6, max_size=6))
def test_any_words_at_all_make_html_with_the_same_elements(words):
    def document(a, b, c, d, e, f):
        blocks = (
            Heading(text=a),
            Para(text=b),
            Facts(pairs=((c, d),)),
            Grid(headers=(a,), rows=((e,),), shares=(1.0,)),
        )
        return Document(
            kind=f, title=e, subtitle=d, made_on=c, blocks=blocks, footer=b, page_words="",
            is_one_page=True,
        )  # fmt: skip

    html = html_of(document(*words))
    assert seen_in(html).tags == seen_in(html_of(document(*"abcdef"))).tags
    html.encode("utf-8")


def test_a_file_that_cannot_be_written_is_told(desk, tmp_path):
    document = replace(batch_document(desk, soured(desk).id), title="x")
    assert not write_document_pdf(document, tmp_path / "none" / "x.pdf")
    assert not write_document_html(document, tmp_path / "none" / "x.html")
    assert write_document_html(document, tmp_path / "x.html")
