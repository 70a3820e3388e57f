"""What the maker likes: declared once with type, default and label, kept as text in the store.

Facts about brews are not settings; they live in their own tables.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import time
from pathlib import Path
from typing import TYPE_CHECKING, Generic, TypeVar, overload
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.services.changes import Changes, Topic
from brewdesk.services.stockchecks import is_currency
from culturecore.errors import ImpossibleInput
from culturecore.units import Kind, units_for

if TYPE_CHECKING:
    from brewdesk.services.door import Units

T = TypeVar("T", bool, float, str, time)


@dataclass(frozen=True, slots=True, kw_only=True)
class Option(Generic[T]):
    """One declared setting.

    ``low``/``high`` bound a number, ``choices`` a text; an empty ``choices`` allows
    any text that ``is_valid`` accepts.
    """

    key: str
    default: T
    low: float | None = None
    high: float | None = None
    choices: tuple[str, ...] = ()
    is_valid: Callable[[str], bool] | None = None

    @property
    def label(self) -> str:
        """The setting's name for people."""
        return _labels()[self.key]


NAME_LIMIT = 60


def _is_zone(name: str) -> bool:
    if not name:
        return True
    try:
        ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return False
    return True


def _is_whole_path(text: str) -> bool:
    return not text or (Path(text).is_absolute() and text.isprintable())


QUIET_FROM = Option(key="quiet_from", default=time(22, 0))
QUIET_TO = Option(key="quiet_to", default=time(7, 0))
REMINDER_HOUR = Option(key="reminder_hour", default=time(9, 0))
CLOSE_TO_TRAY = Option(key="close_to_tray", default=False)
SOUND_ON = Option(key="sound_on", default=True)
# 30 degC: upper end of the range in which makers keep cultures; common practice, no source.
CULTURE_LIMIT_C = Option(key="culture_limit_c", default=30.0, low=20.0, high=38.0)
# The band is taste. These are starting values (from memory), for the maker to move.
FIRST_TASTE_PH = Option(key="first_taste_ph", default=3.3, low=2.5, high=4.2)
TOO_SOUR_PH = Option(key="too_sour_ph", default=2.9, low=2.5, high=4.2)
LEARN_TASTE = Option(key="learn_taste", default=True)
# A culture at rest gets fresh sweet tea every few weeks; common practice, no source.
REST_FEED_DAYS = Option(key="rest_feed_days", default=28.0, low=3.0, high=180.0)
# How often to look whether it has dried up; an assumption, since cloth and air differ so much.
REST_TOP_UP_DAYS = Option(key="rest_top_up_days", default=14.0, low=2.0, high=90.0)
# How often a pH meter in use is calibrated; common practice, no source.
CALIBRATE_DAYS = Option(key="calibrate_days", default=7.0, low=1.0, high=90.0)
THEME = Option(key="theme", default="system", choices=("system", "light", "dark"))
# "system" = the computer's; the program is worded in English and translated from there.
LANGUAGES = ("en", "de", "es")
LANGUAGE = Option(key="language", default="system", choices=("system", *LANGUAGES))
TEXT_SCALE = Option(key="text_scale", default=1.0, low=0.8, high=3.0)
# A calendar file of the due list that is kept up to date; "" = none.
CALENDAR_PATH = Option(key="calendar_path", default="", is_valid=_is_whole_path)
# Where several desks share one store: this desk's name, and where reminders are shown.
DESK_NAME = Option(key="desk_name", default="", is_valid=lambda text: len(text) <= NAME_LIMIT)
REMINDERS_HERE = Option(key="reminders_here", default=True)
REMINDERS_ONCE = Option(key="reminders_once", default=True)
ZONE = Option(key="zone", default="", is_valid=_is_zone)  # "" = the computer's own


def _is_own_currency(code: str) -> bool:
    return not code or is_currency(code)


CURRENCY = Option(key="currency", default="", is_valid=_is_own_currency)  # "" = the locale's

_KINDS_WITH_UNIT = (
    Kind.VOLUME,
    Kind.MASS,
    Kind.TEMPERATURE,
    Kind.LENGTH,
    Kind.SUGAR,
    Kind.TEA,
    Kind.ACIDITY,
    Kind.ALKALINITY,
)
_METRIC = {
    Kind.VOLUME: "L",
    Kind.MASS: "g",
    Kind.TEMPERATURE: "°C",
    Kind.LENGTH: "cm",
    Kind.SUGAR: "g/L",
    Kind.TEA: "g/L",
    Kind.ACIDITY: "g/L",
    Kind.ALKALINITY: "meq/L",
}
# Where recipes are read in gallons and degrees Fahrenheit, scales still show grams.
_US = _METRIC | {
    Kind.VOLUME: "gal",
    Kind.TEMPERATURE: "°F",
    Kind.LENGTH: "in",
    Kind.SUGAR: "g/gal",
    Kind.TEA: "g/gal",
}


def unit_key(kind: Kind) -> str:
    """Return the settings key that holds the maker's unit for ``kind``."""
    return f"unit_{kind.name.lower()}"


def _unit_options(measurement: QLocale.MeasurementSystem) -> tuple[Option[str], ...]:
    is_us = measurement == QLocale.MeasurementSystem.ImperialUSSystem
    defaults = _US if is_us else _METRIC
    return tuple(
        Option(key=unit_key(kind), default=defaults[kind], choices=units_for(kind))
        for kind in _KINDS_WITH_UNIT
    )


class Settings:
    """Read and change settings. Changes are announced, but are no step of the undo history.

    ``measurement`` decides the units offered first; it is the locale's, read by the
    caller. ``are_several`` adds what only several desks at one store need to choose.
    """

    def __init__(
        self,
        store: Units,
        changes: Changes,
        *,
        measurement: QLocale.MeasurementSystem = QLocale.MeasurementSystem.MetricSystem,
        are_several: bool = False,
    ) -> None:
        self._store = store
        self._changes = changes
        self._kept: dict[str, str] | None = None
        declared: tuple[Option[bool] | Option[float] | Option[str] | Option[time], ...] = (
            QUIET_FROM,
            QUIET_TO,
            REMINDER_HOUR,
            CLOSE_TO_TRAY,
            SOUND_ON,
            CULTURE_LIMIT_C,
            FIRST_TASTE_PH,
            TOO_SOUR_PH,
            LEARN_TASTE,
            REST_FEED_DAYS,
            REST_TOP_UP_DAYS,
            CALIBRATE_DAYS,
            LANGUAGE,
            THEME,
            TEXT_SCALE,
            ZONE,
            CALENDAR_PATH,
            CURRENCY,
            *_unit_options(measurement),
        )
        if are_several:
            declared += (DESK_NAME, REMINDERS_HERE, REMINDERS_ONCE)
        self._options = {option.key: option for option in declared}

    def options(
        self,
    ) -> tuple[Option[bool] | Option[float] | Option[str] | Option[time], ...]:
        """Return every declared option, in the order of the settings page."""
        return tuple(self._options.values())

    @overload
    def get(self, option: Option[T]) -> T: ...
    @overload
    def get(self, option: str) -> bool | float | str | time: ...
    def get(self, option: Option[T] | str) -> T | bool | float | str | time:
        """Return a setting's value, or its default if it was never set or cannot be read.

        Raises
        ------
        KeyError
            For a key that is not declared.
        """
        declared = self._options[option if isinstance(option, str) else option.key]
        text = self._texts().get(declared.key)
        if text is None:
            return declared.default
        try:
            value = _from_text(text, declared.default)
            self._check(declared.key, value)
        except ValueError:  # a value of another program version: the default is better than none
            return declared.default
        return value

    def put(self, option: Option[T] | str, value: bool | float | str | time) -> None:
        """Keep a setting and announce it.

        Raises
        ------
        KeyError
            For a key that is not declared.
        ImpossibleInput
            For a value of another type or outside the declared range; ``field`` is the key.
        """
        key = option if isinstance(option, str) else option.key
        self._check(key, value)
        self._check_band(key, value)
        text = _to_text(value)
        with self._store.write() as unit:
            unit.settings.put(key, text)
        self._texts()[key] = text
        self._changes.announce(Topic.SETTINGS)

    def forget(self) -> None:
        """Read everything anew when it is asked for next: another desk may have changed it."""
        self._kept = None

    def unit(self, kind: Kind) -> str:
        """Return the symbol of the maker's unit for ``kind``; "" where there is no choice."""
        key = unit_key(kind)
        return str(self.get(key)) if key in self._options else ""

    def put_unit(self, kind: Kind, symbol: str) -> None:
        """Choose the unit in which ``kind`` is shown and read.

        Raises
        ------
        ImpossibleInput
            For a symbol that is not offered for this kind.
        """
        self.put(unit_key(kind), symbol)

    def _texts(self) -> dict[str, str]:
        if self._kept is None:
            with self._store.read() as unit:
                self._kept = dict(unit.settings.all())
        return self._kept

    def _check(self, key: str, value: bool | float | str | time) -> None:
        option = self._options[key]
        if isinstance(option.default, float) and type(value) is int:
            value = float(value)
        if type(value) is not type(option.default):
            raise ImpossibleInput(key, value, reason="wrong_type")
        if isinstance(value, float):
            _check_number(option, value)
        elif isinstance(value, str):
            is_offered = not option.choices or value in option.choices
            if not is_offered or (option.is_valid is not None and not option.is_valid(value)):
                raise ImpossibleInput(key, value, reason="not_offered")

    def _check_band(self, key: str, value: bool | float | str | time) -> None:
        first, sour = self.get(FIRST_TASTE_PH), self.get(TOO_SOUR_PH)
        is_upside_down = (key == FIRST_TASTE_PH.key and float(str(value)) <= sour) or (
            key == TOO_SOUR_PH.key and float(str(value)) >= first
        )
        if is_upside_down:
            raise ImpossibleInput(key, value, reason="band_upside_down")


def _check_number(
    option: Option[bool] | Option[float] | Option[str] | Option[time], value: float
) -> None:
    low = option.low if option.low is not None else float("-inf")
    high = option.high if option.high is not None else float("inf")
    if not low <= value <= high:  # a NaN fails this too
        raise ImpossibleInput(option.key, value, low=option.low, high=option.high)


def _to_text(value: bool | float | str | time) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, time):
        return value.isoformat(timespec="minutes")
    return value if isinstance(value, str) else repr(float(value))


def _from_text(text: str, default: bool | float | str | time) -> bool | float | str | time:
    if isinstance(default, bool):
        if text not in ("yes", "no"):
            raise ValueError(text)
        return text == "yes"
    if isinstance(default, time):
        return time.fromisoformat(text)
    return text if isinstance(default, str) else float(text)


def _labels() -> dict[str, str]:
    def t(text: str) -> str:
        return QCoreApplication.translate("Settings", text)

    return {
        "quiet_from": t("Quiet from"),
        "quiet_to": t("Quiet until"),
        "reminder_hour": t("Reminders of a day come at"),
        "close_to_tray": t("Keep running in the tray when the window is closed"),
        "sound_on": t("Ring when a timer ends"),
        "culture_limit_c": t("Warmest liquid a culture may go into"),
        "first_taste_ph": t("pH at which a batch is first worth tasting"),
        "too_sour_ph": t("pH below which a batch is too sour for you"),
        "learn_taste": t("Learn my taste from my tastings"),
        "rest_feed_days": t("Feed resting cultures"),
        "rest_top_up_days": t("Look whether resting cultures need topping up"),
        "calibrate_days": t("Calibrate the pH meter while it is in use"),
        "language": t("Language, from the next start"),
        "theme": t("Colours"),
        "text_scale": t("Size of the text"),
        "desk_name": t("Name of this desk"),
        "reminders_here": t("Show reminders at this desk"),
        "reminders_once": t("Show each reminder at one desk only (for all desks)"),
        "zone": t("Time zone"),
        "calendar_path": t("Keep a calendar file of the due list up to date at"),
        "currency": t("Prices in"),
        "unit_volume": t("Volumes in"),
        "unit_mass": t("Weights in"),
        "unit_temperature": t("Temperatures in"),
        "unit_length": t("Lengths in"),
        "unit_sugar": t("Sugar in"),
        "unit_tea": t("Tea in"),
        "unit_acidity": t("Acidity in"),
        "unit_alkalinity": t("Water alkalinity in"),
    }
