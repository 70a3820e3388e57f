"""Any bytes at any door are read, or refused with a trouble of the program's own."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.fuzz.targets import TARGETS

CASES = Path(__file__).parent / "cases"
EXAMPLES = settings(max_examples=80)


def mended(seeds: tuple[bytes, ...]) -> st.SearchStrategy[bytes]:
    """Bytes that begin as something sensible and go wrong in places."""

    def mutate(seed: bytes, changes: list[tuple[int, int, bytes]]) -> bytes:
        data = bytearray(seed)
        for where, length, put in changes:
            at = where % (len(data) + 1)
            data[at : at + length] = put
        return bytes(data)

    change = st.tuples(st.integers(0, 300), st.integers(0, 4), st.binary(max_size=12))
    return st.builds(mutate, st.sampled_from(seeds), st.lists(change, max_size=4))


@pytest.mark.parametrize("name", sorted(TARGETS))
def test_any_bytes_are_read_or_refused_in_words(name):
    target = TARGETS[name]

    @EXAMPLES
    @given(
        st.one_of(
            mended(target.seeds), st.binary(max_size=300), st.text(max_size=200).map(str.encode)
        )
    )
    def feed(data: bytes) -> None:
        target.feed(data)

    for seed in target.seeds:
        target.feed(seed)
    feed()


@pytest.mark.parametrize(
    "case", sorted(CASES.glob("*/*")), ids=lambda path: f"{path.parent.name}-{path.name}"
)
def test_what_a_search_once_brought_to_light_is_read_or_refused(case):
    TARGETS[case.parent.name].feed(case.read_bytes())


def test_every_case_belongs_to_a_door():
    assert {path.name for path in CASES.iterdir()} <= TARGETS.keys()
