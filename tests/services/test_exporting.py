"""Everything out and in again: nothing forgotten, nothing changed, and all of it or nothing."""

from __future__ import annotations

import csv
import io
import json
import shutil
import sqlite3
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from brewdesk.paths import resource
from brewdesk.services import exportmanifest
from brewdesk.services.exportformat import unit_of
from brewdesk.services.exporting import export_everything
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.importing import examine_export, import_export
from brewdesk.services.photofiles import PhotoFolder
from brewdesk.services.spreadsheetcells import csv_row, safe_cell
from brewdesk.store.schema import SHELF_TABLES, metadata
from brewdesk.store.store import Store
from brewdesk.store.wholetables import shapes
from tests.helpers.whole_pantry import (
    changed_row,
    entries_of,
    everything,
    full_pantry,
    pack,
    photo_files,
)
from tests.store import drafts
from tests.store.drafts import NOW

UPGRADES = Path(__file__).resolve().parents[1] / "upgrades"
MANY = settings(max_examples=12, suppress_health_check=[HealthCheck.function_scoped_fixture])


@pytest.fixture(scope="module")
def pantry(tmp_path_factory):
    return full_pantry(tmp_path_factory.mktemp("full") / "pantry.brewdesk")


@pytest.fixture(scope="module")
def archive(pantry, tmp_path_factory):
    target = tmp_path_factory.mktemp("out") / "all.brewdesk-export.zip"
    export_everything(pantry, target, now=NOW, program="0.test", guide="how to read it")
    return target


def trouble_of(path, target):
    with pytest.raises(ExportTrouble) as caught:
        import_export(path, target, now=NOW)
    assert list(target.parent.glob("*in*")) == []
    assert list(target.parent.glob(".*in*")) == []
    return caught.value


def test_every_table_of_the_schema_is_in_an_export_with_every_column(pantry, archive):
    entries = entries_of(archive)
    said = json.loads(entries["manifest.json"])
    told = {note["name"]: [column["name"] for column in note["columns"]] for note in said["tables"]}

    with sqlite3.connect(pantry) as connection:
        for (name,) in connection.execute(
            "SELECT name FROM sqlite_schema WHERE type = 'table'"
            " AND name NOT LIKE 'sqlite%' AND name <> 'alembic_version'"
        ):
            columns = [row[1] for row in connection.execute(f"PRAGMA table_info({name})")]
            rows = connection.execute(f"SELECT count(*) FROM {name}").fetchone()[0]
            assert sorted(told[name]) == sorted(columns)
            assert rows > 0, f"the invented pantry should have something in {name}"
            assert entries[f"tables/{name}.jsonl"].count(b"\n") == rows
            assert f"csv/{name}.csv" in entries
    assert {table.name for table in SHELF_TABLES} < set(told)
    assert set(told) == set(metadata.tables)
    connection.close()


def test_what_goes_out_comes_in_the_same_to_the_last_row_and_picture(pantry, archive, tmp_path):
    target = tmp_path / "in.brewdesk"
    imported = import_export(archive, target, now=NOW)

    assert everything(target) == everything(pantry)
    assert photo_files(target) == photo_files(pantry)
    assert imported.photos == 1
    assert imported.missing == 0
    assert target.stat().st_mode & 0o077 == 0
    again = tmp_path / "again.zip"
    export_everything(target, again, now=NOW, program="0.test", guide="how to read it")
    assert entries_of(again) == entries_of(archive)


@st.composite
def lots(draw):
    return {
        "places": draw(st.lists(drafts.PLACES, max_size=2)),
        "vessel": draw(drafts.vessels(1)),
        "cultures": draw(st.lists(drafts.CULTURES, min_size=1, max_size=2)),
        "batches": draw(st.lists(drafts.batches(1, 1), min_size=1, max_size=2)),
        "steps": draw(st.lists(drafts.steps(1), max_size=2)),
        "readings": draw(st.lists(drafts.readings(1), max_size=4)),
        "reminder": draw(drafts.reminders(1)),
        "setting": draw(drafts.TEXTS),
        "facts": draw(drafts.TEXTS),
    }


@MANY
@given(lot=lots())
def test_any_pantry_that_the_store_takes_survives_the_way_out_and_in(lot, tmp_path, pantry):
    here = tmp_path / "one"
    shutil.rmtree(here, ignore_errors=True)
    here.mkdir()
    store = Store.open(here / "pantry.brewdesk", now=NOW)
    with store.write() as unit:
        unit.places.add(drafts.PLACE)
        for draft in lot["places"]:
            unit.places.add(draft)
        unit.vessels.add(lot["vessel"])
        for rows, found in (
            (unit.cultures, lot["cultures"]),
            (unit.batches, lot["batches"]),
            (unit.steps, lot["steps"]),
            (unit.readings, lot["readings"]),
        ):
            for draft in found:
                rows.add(draft)
        unit.reminders.add(lot["reminder"])
        unit.settings.put("invented", lot["setting"])
        facts = {"name": lot["facts"], "vessel": "x", "reason": lot["facts"]}
        unit.acts.add(kind="draw_off", facts=facts, at=NOW, batch_id=1, deltas=unit.deltas)
    store.close()
    export_everything(store.path, here / "a.zip", now=NOW, program="0")
    import_export(here / "a.zip", here / "in.brewdesk", now=NOW)

    assert everything(here / "in.brewdesk") == everything(store.path)


def test_an_id_that_was_given_once_is_not_given_again_after_the_way_in(archive, tmp_path):
    target = tmp_path / "in.brewdesk"
    import_export(archive, target, now=NOW)
    store = Store.open(target, now=NOW)
    with store.write() as unit:
        (photo,) = unit.photos.where()
        draft = {name: getattr(photo, name) for name in type(photo).__dataclass_fields__}
        draft.pop("id")
        fresh = unit.photos.add(type(photo).__mro__[1](**draft))
    store.close()

    assert fresh.id == photo.id + 2  # one between them was given, and is gone


def test_a_batch_may_name_one_that_is_further_down(pantry, tmp_path):
    store_path = tmp_path / "pantry.brewdesk"
    shutil.copy(pantry, store_path)
    with sqlite3.connect(store_path) as connection:
        connection.execute("UPDATE batch SET starter_batch_id = 2 WHERE id = 1")
    connection.close()
    export_everything(store_path, tmp_path / "a.zip", now=NOW, program="0")
    import_export(tmp_path / "a.zip", tmp_path / "in.brewdesk", now=NOW)

    assert everything(tmp_path / "in.brewdesk") == everything(store_path)


def test_the_preview_tells_counts_and_times_before_anything_is_made(archive):
    seen = examine_export(archive)

    assert seen.rows_of("batch") == 2
    assert seen.rows_of("reading") == 6
    assert seen.made_at == NOW
    assert seen.first_at <= NOW <= seen.last_at
    assert len(seen.photos) == 1
    assert not seen.is_demo


def test_a_photo_whose_file_is_gone_is_told_and_the_rest_comes_along(pantry, tmp_path):
    store_path = tmp_path / "pantry.brewdesk"
    shutil.copy(pantry, store_path)
    exported = export_everything(store_path, tmp_path / "a.zip", now=NOW, program="0")
    assert (exported.photos, exported.missing) == (0, 1)

    imported = import_export(tmp_path / "a.zip", tmp_path / "in.brewdesk", now=NOW)
    assert imported.missing == 1
    assert everything(tmp_path / "in.brewdesk") == everything(store_path)


def test_nothing_is_ever_written_over(archive, pantry, tmp_path):
    for taken in ("in.brewdesk", "in.photos", "in.brewdesk-journal"):
        (tmp_path / taken).write_text("mine")
        with pytest.raises(ExportTrouble, match="target_taken"):
            import_export(archive, tmp_path / "in.brewdesk", now=NOW)
        assert (tmp_path / taken).read_text() == "mine"
        (tmp_path / taken).unlink()
    before = everything(pantry)
    with pytest.raises(ExportTrouble, match="target_taken"):
        import_export(archive, pantry, now=NOW)
    assert everything(pantry) == before


@pytest.mark.parametrize("after", [0, 3, 20, 25])
def test_stopping_leaves_nothing_behind(archive, pantry, tmp_path, after):
    def stop():
        nonlocal asked
        asked += 1
        return asked > after

    asked = 0
    with pytest.raises(ExportTrouble, match="cancelled"):
        import_export(archive, tmp_path / "in.brewdesk", now=NOW, is_cancelled=stop)
    asked = 0
    with pytest.raises(ExportTrouble, match="cancelled"):
        export_everything(pantry, tmp_path / "a.zip", now=NOW, program="0", is_cancelled=stop)
    assert list(tmp_path.iterdir()) == []


def test_progress_goes_from_nothing_to_all_and_never_back(archive, pantry, tmp_path):
    for work in (
        lambda told: import_export(archive, tmp_path / "in.brewdesk", now=NOW, progress=told),
        lambda told: export_everything(
            pantry, tmp_path / "a.zip", now=NOW, program="0", progress=told
        ),
    ):
        shares = []
        work(shares.append)
        assert shares == sorted(shares)
        assert shares[-1] == 1.0
        assert len(set(shares)) > 3


def test_an_export_that_fails_leaves_the_one_before_as_it_was(pantry, tmp_path):
    target = tmp_path / "a.zip"
    target.write_text("the one before")
    with pytest.raises(ExportTrouble, match="cancelled"):
        export_everything(pantry, target, now=NOW, program="0", is_cancelled=lambda: True)
    assert target.read_text() == "the one before"
    with pytest.raises(ExportTrouble, match="no_folder"):
        export_everything(pantry, tmp_path / "none" / "a.zip", now=NOW, program="0")


@pytest.mark.parametrize(
    ("table", "values"),
    [
        ("place", {"temperature_c": 1000.0}),
        ("place", {"temperature_c": "warm"}),
        ("place", {"name": ""}),
        ("place", {"name": "a\x00b"}),
        ("place", {"name": "\ud800"}),
        ("place", {"id": 2**70}),
        ("place", {"id": True}),
        ("place", {"name": ["a list"]}),
        ("place", {"name": None}),
        ("vessel", {"place_id": 99}),
        ("vessel", {"material": "cheese"}),
        ("batch", {"planned_at": "2026-13-45T99:99:99.000000Z"}),
        ("batch", {"ended_at": None}),
        ("reading", {"value": 15.0}),
        ("temperature_chunk", {"samples": "not base64!"}),
        ("act", {"kind": "never_heard_of"}),
        ("act", {"facts": "{}"}),
        ("act", {"facts": "[]"}),
        ("act", {"facts": "no json"}),
        ("act", {"deltas": "no json"}),
        ("act", {"deltas": '[["no_table",1,null,null]]'}),
        ("act", {"deltas": '[["place",1,null,{"id":1,"name":[],"temperature_c":"x"}]]'}),
        ("pantry", {"created_at": "yesterday"}),
        ("photo", {"content_hash": "ef" * 32}),
        ("setting", {"key": ""}),
    ],
)
def test_a_row_that_breaks_a_rule_keeps_everything_out(archive, tmp_path, table, values):
    entries = changed_row(entries_of(archive), table, **values)

    trouble = trouble_of(pack(tmp_path / "bad.zip", entries), tmp_path / "in.brewdesk")

    assert trouble.code in ("row_refused", "photo_missing")


def test_the_line_of_the_first_bad_row_is_told(archive, tmp_path):
    entries = entries_of(archive)
    good, second, *rest = entries["tables/vessel.jsonl"].split(b"\n")
    bad = json.dumps(json.loads(second) | {"brim_volume_l": -1}).encode()
    entries["tables/vessel.jsonl"] = b"\n".join([good, bad, *rest])

    trouble = trouble_of(pack(tmp_path / "bad.zip", entries), tmp_path / "in.brewdesk")

    assert (trouble.code, trouble.where, trouble.line) == ("row_refused", "tables/vessel.jsonl", 2)


@pytest.mark.parametrize(
    "line",
    [b"", b"{", b"[]", b'{"id":1}', b'{"id":NaN}', b'{"id":1,"id":1}', b"\xff", b"[" * 9999],
)
def test_lines_that_are_no_rows_keep_everything_out(archive, tmp_path, line):
    entries = entries_of(archive)
    entries["tables/place.jsonl"] += line + b"\n"

    trouble = trouble_of(pack(tmp_path / "bad.zip", entries), tmp_path / "in.brewdesk")

    assert trouble.code in ("damaged", "row_refused")


def test_a_samples_hash_that_is_not_theirs_is_found(archive, tmp_path):
    entries = entries_of(archive)
    entries = changed_row(entries, "temperature_chunk", content_hash="00" * 32)

    assert trouble_of(pack(tmp_path / "bad.zip", entries), tmp_path / "in.brewdesk").code == (
        "damaged"
    )


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"version": 2}, "newer_export"),
        ({"schema": 99}, "newer_export"),
        ({"version": 0}, "not_an_export"),
        ({"schema": 1}, "not_an_export"),
        ({"format": "something else"}, "not_an_export"),
        ({"tables": []}, "not_an_export"),
        ({"photos": [{"file": "photos/../../x", "bytes": 1, "sha256": "0" * 64}]}, "not_an_export"),
        ({"last_ids": {"place": -1}}, "not_an_export"),
        ({"last_ids": {"setting": 5}}, None),
        ({"last_ids": {"no_such": 5}}, "row_refused"),
        ({"made_at": "soon"}, "not_an_export"),
    ],
)
def test_a_manifest_of_another_kind_or_time_is_told(archive, tmp_path, change, code):
    entries = entries_of(archive)
    entries["manifest.json"] = json.dumps(json.loads(entries["manifest.json"]) | change).encode()
    path = pack(tmp_path / "odd.zip", entries, is_honest=False)
    if code is None:
        import_export(path, tmp_path / "in.brewdesk", now=NOW)
        return
    assert trouble_of(path, tmp_path / "in.brewdesk").code == code


def test_text_never_becomes_a_formula_and_numbers_stay_numbers():
    for sign in "=+-@\t\r\n＝＋－＠":
        assert str(safe_cell(f"{sign}1+1")).startswith("'")
        assert str(safe_cell(f"  {sign}1+1")).startswith("'")
    assert safe_cell("plain = text") == "plain = text"
    assert safe_cell(-5.25) == -5.25
    assert csv_row(["=A1", -5.25, None, 3, 'a"b']) == '\'=A1,-5.25,,3,"a""b"\r\n'


@given(text=st.text(st.characters(exclude_characters="\x00", exclude_categories=["Cs"])))
def test_a_cell_read_back_is_the_text_or_the_text_behind_an_apostrophe(text):
    (row,) = csv.reader(io.StringIO(csv_row([text, "x"]), newline=""))

    assert row[0] in (text, f"'{text}")
    assert not row[0].startswith(tuple("=+-@\t\r\n"))


def test_the_csv_of_a_table_reads_like_the_table(pantry, archive):
    with sqlite3.connect(pantry) as connection:
        rows = connection.execute("SELECT id, name, temperature_c FROM place").fetchall()
    connection.close()
    text = entries_of(archive)["csv/place.csv"].decode("utf-8-sig")
    head, *read = csv.reader(io.StringIO(text, newline=""))

    assert head == ["id", "name", "temperature_c"]
    assert [(int(a), b, float(c)) for a, b, c in read] == rows
    samples = entries_of(archive)["csv/temperature_chunk.csv"].decode("utf-8-sig").splitlines()
    assert samples[1].endswith("2026-11-25T09:12:58.000000Z,15.0")
    assert len(samples) == 6


def test_every_column_has_its_unit_and_stands_in_the_guide():
    guide = resource("records", "export-format.md").read_text(encoding="utf-8")
    for table in shapes():
        assert f"### {table.name}\n" in guide
        part = guide.split(f"### {table.name}\n")[1].split("\n### ")[0]
        for column in table.columns:
            unit = unit_of(table.name, column.name, column.kind)
            needed = "yes" if not column.is_optional else "no"
            assert f"| {column.name} | {column.kind} | {unit} | {needed} |" in part


def test_a_removed_photo_that_undo_can_bring_back_comes_along(tmp_path, pantry):
    store_path = tmp_path / "pantry.brewdesk"
    shutil.copy(pantry, store_path)
    shutil.copytree(PhotoFolder(pantry).root, PhotoFolder(store_path).root)
    store = Store.open(store_path, now=NOW)
    with store.write() as unit:
        (photo,) = unit.photos.where()
        unit.photos.remove(photo.id)
        facts = {"about": "x", "caption": "", "count": 1, "name": "x"}
        unit.acts.add(kind="remove_photo", facts=facts, at=NOW + timedelta(1), deltas=unit.deltas)
    store.close()

    exported = export_everything(store_path, tmp_path / "a.zip", now=NOW, program="0")

    assert exported.photos == 1


def test_an_export_of_an_older_schema_is_brought_up_to_the_present_one(tmp_path, monkeypatch):
    """The first schema stands in for any older one: exports began after it."""
    monkeypatch.setattr(exportmanifest, "OLDEST_SCHEMA", 1)
    entries, notes = {}, []
    with closing(sqlite3.connect(UPGRADES / "0001.sqlite")) as connection:
        connection.row_factory = sqlite3.Row
        names = [
            row["name"]
            for row in connection.execute(
                "SELECT name FROM sqlite_schema WHERE type = 'table'"
                " AND name NOT LIKE 'sqlite%' AND name <> 'alembic_version'"
            )
        ]
        for name in names:
            rows = [dict(row) for row in connection.execute(f"SELECT * FROM {name} ORDER BY rowid")]
            for row in rows if name == "act" else ():
                row["kind"], row["facts"] = "close_batch", '{"name": "invented"}'
            file = f"tables/{name}.jsonl"
            entries[file] = b"".join(json.dumps(row).encode() + b"\n" for row in rows)
            columns = connection.execute(f"PRAGMA table_info({name})")
            notes.append(
                {
                    "name": name,
                    "file": file,
                    "columns": [{"name": column["name"]} for column in columns],
                }
            )
        vessels = connection.execute("SELECT count(*) FROM vessel").fetchone()[0]
    said = {
        "format": "brewdesk-export",
        "version": 1,
        "schema": 1,
        "program": "0",
        "made_at": "2026-11-25T09:12:58.123456Z",
        "pantry": {"uid": "x", "is_demo": 0},
        "span": {"first_at": "", "last_at": ""},
        "tables": notes,
        "last_ids": {"vessel": 40},
        "photos": [],
        "missing_photos": [],
    }
    entries["manifest.json"] = json.dumps(said).encode()
    target = tmp_path / "in.brewdesk"
    import_export(pack(tmp_path / "old.zip", entries), target, now=NOW)

    store = Store.open(target, now=NOW)
    with store.write() as unit:
        assert len(unit.vessels.where()) == vessels
        fresh = unit.vessels.add(drafts.vessel_draft(unit.places.where()[0].id))
    store.close()
    assert fresh.id == 41
