"""Put a theme on the test's application, and take it off again without a trace."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtGui import QFont, QPalette
from PySide6.QtWidgets import QApplication

from brewdesk.widgets.theme import Theme


@contextmanager
def look_kept(app: QApplication) -> Iterator[None]:
    """Whatever is put on inside, the application looks as before afterwards."""
    style, sheet = app.style().name(), app.styleSheet()
    font, palette = QFont(app.font()), QPalette(app.palette())
    before = app.property("brewdesk_theme")
    try:
        yield
    finally:
        app.setStyleSheet(sheet)
        app.setStyle(style)
        app.setFont(font)
        app.setPalette(palette)
        app.setProperty("brewdesk_theme", before)


@contextmanager
def worn_theme(
    app: QApplication, choice: str = "light", text_scale: float = 1.0
) -> Iterator[Theme]:
    """Wear ``choice`` at ``text_scale``; afterwards the application looks as it did before."""
    with look_kept(app):
        theme = Theme(app)
        theme.apply(choice, text_scale)
        try:
            yield theme
        finally:
            theme.deleteLater()
