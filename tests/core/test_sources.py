"""Every figure can be traced: keys match, nothing is cited that is not listed."""

from __future__ import annotations

import re
from pathlib import Path

from culturecore import sources
from culturecore.sources import SOURCES, Standing

_CORE = Path(sources.__file__).parent


def test_entries_are_filed_under_their_own_key() -> None:
    for key, source in SOURCES.items():
        assert source.key == key
        assert len(source.citation) > 15


def test_every_listed_source_is_used_somewhere() -> None:
    text = "\n".join(
        path.read_text(encoding="utf-8") for path in _CORE.glob("*.py") if path.name != "sources.py"
    )
    unused = {key for key in SOURCES if not re.search(rf"\b{key}\b", text)}
    assert not unused


def test_each_standing_is_told_apart() -> None:
    assert {source.standing for source in SOURCES.values()} == set(Standing)
