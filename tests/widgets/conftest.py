"""Real widgets on a real desk."""

from __future__ import annotations

import pytest

from tests.helpers.pantry_desk import open_desk


@pytest.fixture
def desk(tmp_path, qapp):
    """A desk with an empty pantry."""
    made = open_desk(tmp_path)
    yield made
    made.store.close()
