"""Archives that somebody made to harm, or that broke on the way: refused with a word, no more."""

from __future__ import annotations

import json
import stat
import struct
import zipfile

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from brewdesk.services import exportzip
from brewdesk.services.exporting import export_everything
from brewdesk.services.exporttrouble import TROUBLE_CODES, ExportTrouble
from brewdesk.services.importing import examine_export, import_export
from tests.helpers.whole_pantry import entries_of, full_pantry, pack
from tests.store.drafts import NOW

POSSIBLE = TROUBLE_CODES | {"fine"}
FUZZ = settings(max_examples=150, suppress_health_check=[HealthCheck.function_scoped_fixture])
A_FEW = settings(max_examples=15, suppress_health_check=[HealthCheck.function_scoped_fixture])


@pytest.fixture(scope="module")
def archive(tmp_path_factory):
    folder = tmp_path_factory.mktemp("zip")
    target = folder / "all.zip"
    export_everything(
        full_pantry(folder / "pantry.brewdesk"), target, now=NOW, program="0.test", guide="x"
    )
    return target


def refused(path):
    with pytest.raises(ExportTrouble) as caught:
        examine_export(path)
    assert caught.value.code in TROUBLE_CODES
    return caught.value.code


def code_of(work):
    """Return the code of the trouble that work ran into; any other error is a failure."""
    try:
        work()
    except ExportTrouble as trouble:
        return trouble.code
    return "fine"


def odd(path, archive, *infos):
    """Write the archive again with further entries."""
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as out:
        for name, data in entries_of(archive).items():
            out.writestr(name, data)
        for info, data in infos:
            out.writestr(info, data)
    return path


@pytest.mark.parametrize(
    "name",
    [
        "../evil", "/etc/evil", "C:\\evil", "tables/../../evil.jsonl", "photos/x.png",
        "tables/place.jsonl/", "tables/", "TABLES/place.jsonl", "tables/place.jsonl\n", "",
        "photos/" + "0" * 64 + ".exe", "tables/pl\u0430ce.jsonl", "./manifest.json",
    ],
)  # fmt: skip
def test_names_that_no_export_has_are_refused(archive, tmp_path, name):
    path = odd(tmp_path / "odd.zip", archive, (zipfile.ZipInfo(name), b"x"))

    assert refused(path) == "unsafe"


@pytest.mark.filterwarnings("ignore:Duplicate name")
def test_a_name_given_twice_is_refused(archive, tmp_path):
    path = odd(tmp_path / "odd.zip", archive, (zipfile.ZipInfo("tables/place.jsonl"), b"{}"))

    assert refused(path) == "unsafe"


@pytest.mark.parametrize("kind", [stat.S_IFLNK, stat.S_IFDIR, stat.S_IFIFO, stat.S_IFCHR])
def test_links_folders_and_devices_are_refused(archive, tmp_path, kind):
    info = zipfile.ZipInfo("csv/extra.csv")
    info.external_attr = (kind | 0o777) << 16

    assert refused(odd(tmp_path / "odd.zip", archive, (info, b"/etc/passwd"))) == "unsafe"


def test_encrypted_entries_are_refused(archive, tmp_path):
    data = bytearray(archive.read_bytes())
    at = data.rindex(b"PK\x01\x02")
    flags = struct.unpack_from("<H", data, at + 8)[0]
    struct.pack_into("<H", data, at + 8, flags | 1)
    (tmp_path / "odd.zip").write_bytes(bytes(data))

    assert refused(tmp_path / "odd.zip") == "unsafe"


def test_other_ways_of_packing_are_refused(archive, tmp_path):
    path = tmp_path / "odd.zip"
    with zipfile.ZipFile(path, "w", zipfile.ZIP_BZIP2) as out:
        for name, data in entries_of(archive).items():
            out.writestr(name, data)

    assert refused(path) == "unsafe"


def test_a_little_that_unfolds_to_a_lot_is_refused(archive, tmp_path):
    path = odd(
        tmp_path / "bomb.zip", archive, (zipfile.ZipInfo("csv/bomb.csv"), b"\0" * 60_000_000)
    )
    with zipfile.ZipFile(path) as told:
        assert told.getinfo("csv/bomb.csv").compress_size == 60_000_000  # writestr stored it
    path = pack(path, {**entries_of(archive), "csv/bomb.csv": b"\0" * 60_000_000}, is_honest=False)

    assert path.stat().st_size < 200_000
    assert refused(path) == "unsafe"


def test_entries_that_lie_over_each_other_are_refused(archive, tmp_path):
    data = bytearray(archive.read_bytes())
    first = data.index(b"PK\x01\x02")
    second = data.index(b"PK\x01\x02", first + 4)
    for at in (first, second):
        struct.pack_into("<I", data, at + 42, 0)  # both begin where the archive does
    (tmp_path / "odd.zip").write_bytes(bytes(data))

    assert refused(tmp_path / "odd.zip") in ("unsafe", "damaged", "not_an_export")


def test_an_entry_longer_than_the_manifest_says_is_not_read_to_its_end(archive, tmp_path):
    entries = entries_of(archive)
    entries["tables/place.jsonl"] += b"{}\n" * 2_000_000
    path = pack(tmp_path / "long.zip", entries, is_honest=False)
    read = 0
    with exportzip.opened_export(path) as opened:
        note = next(note for note in examine_export(path).tables if note.name == "place").file
        pieces = iter(opened.pieces(note))
        with pytest.raises(ExportTrouble, match="longer"):
            read = sum(len(piece) for piece in pieces)

    assert read == 0
    assert next(pieces, None) is None


def test_a_line_without_end_is_not_kept_in_memory(archive, tmp_path, monkeypatch):
    monkeypatch.setattr(exportzip, "MOST_LINE_BYTES", 1_000_000)
    entries = entries_of(archive)
    entries["tables/place.jsonl"] = b"x" * 3_000_000
    path = pack(tmp_path / "long.zip", entries)
    with pytest.raises(ExportTrouble, match="too_large"):
        import_export(path, tmp_path / "in.brewdesk", now=NOW)


def test_files_that_are_no_archives_are_told_apart(archive, tmp_path):
    for content in (b"", b"PK", b"not a zip at all" * 100, archive.read_bytes()[:-30]):
        (tmp_path / "x.zip").write_bytes(content)
        assert refused(tmp_path / "x.zip") == "not_an_export"
    assert refused(tmp_path / "none.zip") == "unreadable"
    assert refused(tmp_path) == "not_an_export"
    with zipfile.ZipFile(tmp_path / "other.zip", "w") as other:
        other.writestr("tables/place.jsonl", "{}")
    assert refused(tmp_path / "other.zip") == "not_an_export"


@FUZZ
@given(data=st.data())
def test_any_byte_changed_anywhere_is_found_or_harmless(archive, tmp_path, data):
    content = bytearray(archive.read_bytes())
    for _ in range(data.draw(st.integers(1, 3))):
        content[data.draw(st.integers(0, len(content) - 1))] = data.draw(st.integers(0, 255))
    path = tmp_path / "odd.zip"
    path.write_bytes(bytes(content))

    assert code_of(lambda: read_through(path)) in POSSIBLE


def read_through(path):
    seen = examine_export(path)
    with exportzip.opened_export(path) as opened:
        for note in [*(note.file for note in seen.tables), *seen.photos]:
            assert sum(map(len, opened.pieces(note))) == note.size_bytes


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner),
    max_leaves=6,
)


@FUZZ
@given(data=st.data())
def test_any_value_anywhere_in_the_manifest_gives_only_our_own_trouble(archive, tmp_path, data):
    entries = entries_of(archive)
    said = json.loads(entries["manifest.json"])
    spot = said
    key = data.draw(st.sampled_from(sorted(said)))
    while isinstance(spot[key], (dict, list)) and spot[key] and data.draw(st.booleans()):
        spot = spot[key]
        keys = sorted(spot) if isinstance(spot, dict) else list(range(len(spot)))
        key = data.draw(st.sampled_from(keys))
    spot[key] = data.draw(JSON)
    entries["manifest.json"] = json.dumps(said).encode()
    path = pack(tmp_path / "odd.zip", entries, is_honest=False)

    assert code_of(lambda: examine_export(path)) in POSSIBLE


@A_FEW
@given(data=st.data())
def test_any_value_anywhere_in_a_row_gives_only_our_own_trouble(archive, tmp_path, data):
    entries = entries_of(archive)
    name = data.draw(st.sampled_from(sorted(n for n in entries if n.startswith("tables/"))))
    first, *rest = entries[name].split(b"\n")
    row = json.loads(first)
    row[data.draw(st.sampled_from(sorted(row)))] = data.draw(JSON)
    entries[name] = b"\n".join([json.dumps(row).encode(), *rest])
    target = tmp_path / "in.brewdesk"
    path = pack(tmp_path / "odd.zip", entries)
    code = code_of(lambda: import_export(path, target, now=NOW))

    assert code in POSSIBLE
    assert target.exists() == (code == "fine")
    target.unlink(missing_ok=True)
    for left in sorted(tmp_path.glob("in.photos/**/*"), reverse=True):
        left.rmdir() if left.is_dir() else left.unlink()
    if (tmp_path / "in.photos").exists():
        (tmp_path / "in.photos").rmdir()
