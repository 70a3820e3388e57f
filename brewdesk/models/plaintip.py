"""Tooltips of what the maker wrote: shown letter by letter, never as markup."""

from __future__ import annotations

import html


def plain_tip(text: str) -> str:
    """Return a tooltip that reads ``text``. Qt has no plain ones: it guesses by the look of it."""
    return f'<p style="white-space:pre-wrap">{html.escape(text)}</p>' if text else ""
