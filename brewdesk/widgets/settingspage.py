"""The settings, built from their declarations. Everything applies at once."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.money import known_currencies, own_currency
from brewdesk.services.settings import (
    CALENDAR_PATH,
    CLOSE_TO_TRAY,
    CURRENCY,
    DESK_NAME,
    LEARN_TASTE,
    REMINDERS_HERE,
    REMINDERS_ONCE,
)
from brewdesk.services.wording.palate import learnt_words
from brewdesk.widgets.autostartswitch import AutostartSwitch
from brewdesk.widgets.fields import card, plain_label
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.settingeditors import (
    CalendarPathEditor,
    SettingEditor,
    SwitchEditor,
    make_editor,
    scale_words,
)
from brewdesk.widgets.theme import SPACE

_WIDEST_PX = 820
DESK_KEYS = (DESK_NAME.key, REMINDERS_HERE.key, REMINDERS_ONCE.key)
OUTSIDE_KEYS = (CLOSE_TO_TRAY.key, CALENDAR_PATH.key)


class SettingsPage(QWidget):
    """Units, look, reminders, brewing, and where the data lie.

    ``test_notice_wanted`` asks for one reminder now, to see whether they reach the desktop.
    """

    test_notice_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("settings_page")
        self._desk = desk
        self._editors: dict[str, SettingEditor] = {}
        self.autostart: AutostartSwitch | None = None  # where the desktop has such a thing
        self._build()
        desk.changes.changed.connect(self._on_changed)
        desk.palate.learned.connect(self._show_learnt)
        self._show_learnt()

    def editor(self, key: str) -> SettingEditor:
        """Return the editor of one setting.

        Raises
        ------
        KeyError
            For a key that is not declared.
        """
        return self._editors[key]

    def keys(self) -> tuple[str, ...]:
        """Return the keys of all settings shown."""
        return tuple(self._editors)

    def _build(self) -> None:
        content = QWidget()
        content.setMaximumWidth(_WIDEST_PX)
        column = QVBoxLayout(content)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 3 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.tr("Settings"), "title"))
        for title, note, keys in self._sections():
            column.addWidget(self._section(title, note, keys))
        column.addWidget(self._data_card())
        column.addStretch(1)
        holder = QWidget()
        row = QHBoxLayout(holder)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(content, 1)
        row.addStretch(0)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setAccessibleName(self.tr("All settings"))
        area.setWidget(holder)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(area)

    def _sections(self) -> list[tuple[str, str, list[str]]]:
        """Sort the declared settings into sections; one that is new lands in the last."""
        declared = [option.key for option in self._desk.settings.options()]
        sections: list[tuple[str, str, list[str]]] = [
            (
                self.tr("Look"),
                "",
                [key for key in ("language", "theme", "text_scale") if key in declared],
            ),
            (
                self.tr("Units"),
                self.tr(
                    "Every entry takes other units as well: just write them behind the number."
                ),
                [key for key in declared if key.startswith("unit_")],
            ),
            (
                self.tr("Your taste, and the culture's comfort"),
                self.tr(
                    "The tasting window is reckoned from these. Safety limits are not settings."
                ),
                [
                    key
                    for key in ("first_taste_ph", "too_sour_ph", "culture_limit_c", "learn_taste")
                    if key in declared
                ],
            ),
        ]
        sections.append(
            (
                self.tr("Money"),
                self.tr("Prices keep the currency they were typed in; nothing is converted."),
                [key for key in (CURRENCY.key,) if key in declared],
            )
        )
        outside = [key for key in OUTSIDE_KEYS if key in declared]
        desks = [key for key in DESK_KEYS if key in declared]
        placed = {*outside, *desks, *(key for _, _, keys in sections for key in keys)}
        rest = [key for key in declared if key not in placed]
        sections.append(
            (
                self.tr("Reminders"),
                self.tr(
                    "In quiet hours nothing pops up but bottles that may soon burst; the due list "
                    "shows everything."
                ),
                rest,
            )
        )
        sections.append(
            (
                self.tr("While the window is closed"),
                self.tr(
                    "Reminders come, and the calendar file is renewed, only while brewdesk runs. "
                    "On a desktop without a tray the window is made small instead of closed."
                ),
                outside,
            )
        )
        if desks:
            sections.append(
                (
                    self.tr("Several desks"),
                    self.tr(
                        "All desks share one pantry. Colours, units, quiet hours and the window "
                        "are each desk's own; taste, limits and rhythms are everybody's."
                    ),
                    desks,
                )
            )
        return sections

    def _section(self, title: str, note: str, keys: list[str]) -> QFrame:
        frame, column = card()
        column.addWidget(plain_label(title, "heading", wraps=True))
        if note:
            column.addWidget(plain_label(note, "muted", wraps=True))
        grid = PairGrid(gap=3 * SPACE)
        column.addWidget(grid)
        options = {option.key: option for option in self._desk.settings.options()}
        made = [
            make_editor(options[key], self._desk.settings, self._desk.quantities, self._words())
            for key in keys
        ]
        self._editors |= {editor.option.key: editor for editor in made}
        whole_lines = (SwitchEditor, CalendarPathEditor)
        fields = [editor for editor in made if not isinstance(editor, whole_lines)]
        switches = [editor for editor in made if isinstance(editor, whole_lines)]
        for first in range(0, len(fields), 2):
            pair = fields[first : first + 2]
            grid.add(*pair, *([QWidget()] if len(pair) == 1 else []))
        if CALENDAR_PATH.key in keys and self._desk.session_start is not None:
            self.autostart = AutostartSwitch(self._desk.session_start)
            grid.add(self.autostart)
        for editor in switches:
            grid.add(editor)
        if "learn_taste" in keys:
            self.learnt = plain_label("", "muted", wraps=True)
            self.learnt.setObjectName("settings_learnt")
            self.learnt.setAccessibleName(self.tr("Your taste, as learnt"))
            column.addWidget(self.learnt)
        if title == self.tr("Reminders"):
            column.addWidget(self._test_line())
        return frame

    def _test_line(self) -> PairGrid:
        self.test_button = QPushButton(self.tr("Show me one reminder now"))
        self.test_button.setObjectName("settings_test_notice")
        self.test_button.clicked.connect(self.test_notice_wanted)
        line = PairGrid()
        line.add(
            self.test_button,
            plain_label(
                self.tr("If none appears, your desktop keeps them back: look at the due list."),
                "muted",
                wraps=True,
            ),
        )
        return line

    def _data_card(self) -> QFrame:
        frame, column = card()
        column.addWidget(plain_label(self.tr("Where your records are"), "heading", wraps=True))
        self.path = plain_label(self._desk.place, "", wraps=True)
        self.path.setObjectName("settings_path")
        self.path.setAccessibleName(self.tr("File with your records"))
        self.path.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        column.addWidget(self.path)
        column.addWidget(plain_label(self._keeping_words(), "muted", wraps=True))
        return frame

    def _keeping_words(self) -> str:
        folder = self._desk.photos.folder.root
        if self._desk.desks.are_several:
            return self.tr(
                "Your records lie in this database, for all desks, because this desk was started "
                "with its address; brewdesk opens no other connection. Backups are kept on this "
                "computer, in {folder}."
            ).format(folder=folder.parent / "backups")
        return self.tr(
            "Nothing leaves this computer. Backups are kept beside this file. Photos lie "
            "in a folder of their own beside it, {folder}; backups do not hold them. "
            "“Copy everything to a folder” in the Pantry menu takes both along."
        ).format(folder=folder.name)

    def _words(self) -> dict[str, dict[object, str]]:
        return {
            # A language is named in its own words.
            "language": {
                "system": self.tr("As the computer"),
                "en": "English",
                "de": "Deutsch",
                "es": "Español",
            },
            "theme": {
                "system": self.tr("As the desktop"),
                "light": self.tr("Light"),
                "dark": self.tr("Dark"),
            },
            "text_scale": scale_words(),
            CURRENCY.key: self._currency_words(),
            "rest_feed_days": self._every((14, 21, 28, 42, 56)),
            "rest_top_up_days": self._every((7, 14, 21, 28)),
            "calibrate_days": self._every((7, 14, 30)),
            "": {"zone": self.tr("As the computer")},
        }

    def _currency_words(self) -> dict[object, str]:
        own = self.tr("As the computer ({code})").format(code=own_currency())
        return {"": own, **{code: code for code in known_currencies()}}

    def _every(self, days: tuple[int, ...]) -> dict[object, str]:
        return {float(count): self.tr("Every {count} days").format(count=count) for count in days}

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.SETTINGS):
            for editor in self._editors.values():
                editor.show_value()
            self._show_learnt()

    def _show_learnt(self) -> None:
        """Say what tastings have taught; while learning is off there is nothing to say."""
        is_on = self._desk.settings.get(LEARN_TASTE)
        self.learnt.setText(
            learnt_words(self._desk.palate.learnt(), self._desk.quantities.unit) if is_on else ""
        )
        self.learnt.setVisible(is_on)
