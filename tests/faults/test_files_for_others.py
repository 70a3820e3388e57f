"""Files that the maker gives away: named harmlessly, and whole or as they were before."""

from __future__ import annotations

import resource

import pytest

from brewdesk.services.wholefile import NotWrittenError, write_whole
from brewdesk.widgets.paperdialog import file_name

NAMES = [
    "../../x", "CON", "com1", "a/b", ".hidden", "x" * 300, "tea 🍵" * 60, "dot.", "nul\x00byte",
    "a\\b:c*d?e\"f<g>h|i", "  ", "\u202egnp.exe", "line\nbreak",
]  # fmt: skip


@pytest.mark.parametrize("name", NAMES)
def test_a_file_named_after_a_batch_stays_in_its_folder(name, tmp_path):
    made = file_name(name)

    assert made.endswith(".pdf")
    assert len(made.encode()) <= 124
    assert not set(made) & set('/\\:*?"<>|\x00\n\u202e')
    assert not made.startswith(".")
    assert made.removesuffix(".pdf").upper() not in {"CON", "COM1"}
    (tmp_path / made).write_bytes(b"a page")
    assert [entry.name for entry in tmp_path.iterdir()] == [made]


@pytest.mark.parametrize("is_private", [True, False])
def test_a_disk_that_takes_half_a_file_leaves_the_one_before(tmp_path, is_private):
    path = tmp_path / "labels.pdf"
    path.write_bytes(b"the page of yesterday")
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (10_000, before[1]))
    try:
        with pytest.raises(NotWrittenError):
            write_whole(path, b"x" * 100_000, is_private=is_private)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)

    assert path.read_bytes() == b"the page of yesterday"
    assert [entry.name for entry in tmp_path.iterdir()] == ["labels.pdf"]
    write_whole(path, b"the page of today", is_private=is_private)
    assert path.read_bytes() == b"the page of today"
