"""Colours, fonts and spacing of the window, light and dark.

Contrast is chosen to WCAG 2.2 AA: text tones reach 4.5:1 on the surfaces they are
used on, lines that carry meaning 3:1; ``tests/widgets/test_theme.py`` measures it.
The liquid ramp falls in lightness steadily with acidity, so that it reads the same
without colour vision, and the pH always stands beside it in text.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontDatabase, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from brewdesk.paths import resource

FAMILY = "Atkinson Hyperlegible Next"
FONT_FILES = ("AtkinsonHyperlegibleNext-Regular.ttf", "AtkinsonHyperlegibleNext-SemiBold.ttf")
BASE_POINT_SIZE = 11.0

SPACE = 8  # the grid: every gap is a multiple of it
RADIUS = 10
TOUCH = 40  # least height of anything to press, in px


@dataclass(frozen=True, slots=True)
class Tokens:
    """One scheme's colours, as #rrggbb."""

    name: str
    ground: str  # behind everything
    surface: str  # cards and panels
    sunken: str  # entry fields
    ink: str
    muted: str
    line: str  # decoration
    edge: str  # borders of controls, 3:1 on surface
    accent: str  # primary action
    on_accent: str
    accent_soft: str  # selection ground
    focus: str
    warn: str
    warn_soft: str
    danger: str
    danger_soft: str
    good: str
    good_soft: str
    wall: str  # behind the jars
    board: str
    board_edge: str
    glass: str
    glass_fill: str
    cloth: str
    pellicle: str
    pellicle_edge: str
    band_outer: str
    band_inner: str
    window: str


LIGHT = Tokens(
    name="light",
    ground="#f3ede2",
    surface="#fffdf9",
    sunken="#ffffff",
    ink="#27231d",
    muted="#655c50",
    line="#e0d6c6",
    edge="#8d8270",
    accent="#1c625b",
    on_accent="#ffffff",
    accent_soft="#dcebe6",
    focus="#1c625b",
    warn="#805000",
    warn_soft="#fbedcf",
    danger="#a3281c",
    danger_soft="#fbe3de",
    good="#2b6a35",
    good_soft="#e1efdd",
    wall="#efe6d7",
    board="#b98e60",
    board_edge="#8f683f",
    glass="#6f7f7d",
    glass_fill="#ffffff",
    cloth="#f7f1e4",
    pellicle="#f1e2c0",
    pellicle_edge="#a98a57",
    band_outer="#d5e6e2",
    band_inner="#a9cdc6",
    window="#f4dca4",
)

DARK = Tokens(
    name="dark",
    ground="#1b1916",
    surface="#262320",
    sunken="#1f1c19",
    ink="#f1ebe0",
    muted="#b9ae9d",
    line="#3b362f",
    edge="#8b8071",
    accent="#7fc9bc",
    on_accent="#0f2a26",
    accent_soft="#26423d",
    focus="#7fc9bc",
    warn="#f0bf65",
    warn_soft="#43351b",
    danger="#ff9d8c",
    danger_soft="#4a2620",
    good="#98d19f",
    good_soft="#243a27",
    wall="#221f1b",
    board="#6b4f34",
    board_edge="#4a3522",
    glass="#9fb0ad",
    glass_fill="#2f2c28",
    cloth="#cfc6b4",
    pellicle="#d9c69b",
    pellicle_edge="#8a7148",
    band_outer="#2c4743",
    band_inner="#3f6b64",
    window="#5a4a22",
)

# pH -> colour of the drink, dark when sweet, pale when sour: as the tea itself does.
LIQUID_RAMP = (
    (5.0, "#6a3414"),
    (4.2, "#8f4d1a"),
    (3.8, "#ad6a25"),
    (3.4, "#c98a35"),
    (3.0, "#dfac55"),
    (2.6, "#f0cf86"),
)
UNKNOWN_LIQUID = "#a3866a"


def liquid_colour(ph: float | None) -> QColor:
    """Tint of the drink at ``ph``; a neutral brown when it is not known."""
    if ph is None:
        return QColor(UNKNOWN_LIQUID)
    if ph >= LIQUID_RAMP[0][0]:
        return QColor(LIQUID_RAMP[0][1])
    for (high, dark), (low, pale) in itertools.pairwise(LIQUID_RAMP):
        if ph >= low:
            share = (high - ph) / (high - low)
            a, b = QColor(dark), QColor(pale)
            return QColor(
                round(a.red() + (b.red() - a.red()) * share),
                round(a.green() + (b.green() - a.green()) * share),
                round(a.blue() + (b.blue() - a.blue()) * share),
            )
    return QColor(LIQUID_RAMP[-1][1])


def load_fonts() -> bool:
    """Make the program's own type available; False when Qt could not read it."""
    if FAMILY in QFontDatabase.families():
        return True
    return all(
        QFontDatabase.addApplicationFont(str(resource("fonts", name))) >= 0 for name in FONT_FILES
    )


def palette(tokens: Tokens) -> QPalette:
    """Qt's palette for ``tokens``."""
    made = QPalette()
    role = QPalette.ColorRole
    for name, colour in (
        (role.Window, tokens.ground),
        (role.WindowText, tokens.ink),
        (role.Base, tokens.sunken),
        (role.AlternateBase, tokens.surface),
        (role.Text, tokens.ink),
        (role.Button, tokens.surface),
        (role.ButtonText, tokens.ink),
        (role.BrightText, tokens.on_accent),
        (role.Highlight, tokens.accent),
        (role.HighlightedText, tokens.on_accent),
        (role.ToolTipBase, tokens.surface),
        (role.ToolTipText, tokens.ink),
        (role.PlaceholderText, tokens.muted),
        (role.Link, tokens.accent),
        (role.Mid, tokens.line),
        (role.Dark, tokens.edge),
    ):
        made.setColor(name, QColor(colour))
    for name in (role.WindowText, role.Text, role.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, name, QColor(tokens.muted))
    return made


class Theme(QObject):
    """The scheme in use. ``changed`` fires after the application was repainted with it."""

    changed = Signal()

    def __init__(self, app: QApplication) -> None:
        super().__init__(app)
        self._app = app
        self._choice = "system"
        self._scale = 1.0
        self.tokens = LIGHT
        self._hints = QGuiApplication.styleHints()
        self._hints.colorSchemeChanged.connect(self._on_system_changed)

    def apply(self, choice: str = "system", text_scale: float = 1.0) -> None:
        """Put on 'light', 'dark' or what the desktop says ('system'), at a text scale."""
        from brewdesk.widgets.stylesheet import style_sheet

        self._choice, self._scale = choice, text_scale
        dark = choice == "dark" or (
            choice == "system" and self._hints.colorScheme() == Qt.ColorScheme.Dark
        )
        self.tokens = DARK if dark else LIGHT
        load_fonts()
        font = QFont(FAMILY)
        font.setPointSizeF(BASE_POINT_SIZE * text_scale)
        self._app.setStyle("Fusion")
        self._app.setFont(font)
        self._app.setPalette(palette(self.tokens))
        self._app.setStyleSheet(style_sheet(self.tokens, text_scale))
        self._app.setProperty("brewdesk_theme", self)
        self.changed.emit()

    def _on_system_changed(self) -> None:
        if self._choice == "system":
            self.apply(self._choice, self._scale)


def theme() -> Theme | None:
    """Give the running application's theme, if one was put on."""
    app = QApplication.instance()
    found = app.property("brewdesk_theme") if app is not None else None
    return found if isinstance(found, Theme) else None


def tokens() -> Tokens:
    """Colours in use now (light before a theme was put on)."""
    found = theme()
    return found.tokens if found is not None else LIGHT
