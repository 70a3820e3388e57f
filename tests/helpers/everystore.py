"""Run a test on each kind of store."""

from __future__ import annotations

import pytest

on_every_store = pytest.mark.parametrize("lies_on", ["file", "server"], scope="module")
