"""Settings: declared, typed, kept, refused."""

from __future__ import annotations

from datetime import time

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services.changes import Changes, Topic
from brewdesk.services.settings import (
    CLOSE_TO_TRAY,
    CULTURE_LIMIT_C,
    FIRST_TASTE_PH,
    QUIET_FROM,
    TEXT_SCALE,
    THEME,
    TOO_SOUR_PH,
    ZONE,
    Settings,
)
from culturecore.errors import ImpossibleInput
from culturecore.units import Kind, units_for


def test_a_setting_never_made_has_its_default(kit):
    assert kit.settings.get(CLOSE_TO_TRAY) is False
    assert kit.settings.get(QUIET_FROM) == time(22, 0)
    assert kit.settings.get("culture_limit_c") == 30.0


@pytest.mark.parametrize(
    ("option", "value"),
    [
        (CLOSE_TO_TRAY, True),
        (QUIET_FROM, time(21, 30)),
        (CULTURE_LIMIT_C, 28.5),
        (CULTURE_LIMIT_C, 28),
        (THEME, "dark"),
        (ZONE, "Europe/London"),
        (ZONE, ""),
    ],
)
def test_a_setting_is_kept_in_the_store_with_its_type(kit, option, value):
    kit.settings.put(option, value)

    for settings in (kit.settings, Settings(kit.store, Changes())):
        kept = settings.get(option)
        assert kept == value
        assert type(kept) is type(option.default)


@pytest.mark.parametrize(
    ("option", "value"),
    [
        (CLOSE_TO_TRAY, 1),
        (CLOSE_TO_TRAY, "yes"),
        (CULTURE_LIMIT_C, "28"),
        (CULTURE_LIMIT_C, True),
        (CULTURE_LIMIT_C, 60.0),
        (CULTURE_LIMIT_C, float("nan")),
        (TEXT_SCALE, 0.1),
        (THEME, "pink"),
        (ZONE, "Europe/Nowhere"),
        (QUIET_FROM, "22:00"),
    ],
)
def test_a_value_that_cannot_be_is_refused_and_not_kept(kit, option, value):
    with pytest.raises(ImpossibleInput) as refused:
        kit.settings.put(option, value)
    assert refused.value.field == option.key
    assert kit.settings.get(option) == option.default
    assert kit.heard == []


def test_the_taste_band_cannot_be_turned_upside_down(kit):
    with pytest.raises(ImpossibleInput, match="band_upside_down"):
        kit.settings.put(FIRST_TASTE_PH, kit.settings.get(TOO_SOUR_PH))
    with pytest.raises(ImpossibleInput, match="band_upside_down"):
        kit.settings.put(TOO_SOUR_PH, kit.settings.get(FIRST_TASTE_PH))
    kit.settings.put(FIRST_TASTE_PH, 3.6)
    kit.settings.put(TOO_SOUR_PH, 3.2)
    assert (kit.settings.get(FIRST_TASTE_PH), kit.settings.get(TOO_SOUR_PH)) == (3.6, 3.2)


@pytest.mark.parametrize(
    ("key", "text"),
    [("culture_limit_c", "warm"), ("culture_limit_c", "99"), ("close_to_tray", "maybe")],
)
def test_a_kept_text_that_cannot_be_read_gives_the_default(kit, key, text):
    with kit.store.write() as unit:
        unit.settings.put(key, text)
    settings = Settings(kit.store, Changes())
    declared = {option.key: option for option in settings.options()}
    assert settings.get(key) == declared[key].default


def test_an_unknown_key_is_a_mistake_of_the_program(kit):
    with pytest.raises(KeyError):
        kit.settings.get("colour_of_the_cat")
    with pytest.raises(KeyError):
        kit.settings.put("colour_of_the_cat", "grey")


def test_a_change_of_settings_is_told_but_is_no_act(kit):
    kit.settings.put(THEME, "light")
    (change,) = kit.heard
    assert change.topics == Topic.SETTINGS
    assert kit.history.undo_act() is None


@pytest.mark.parametrize(
    ("measurement", "volume", "temperature"),
    [
        (QLocale.MeasurementSystem.MetricSystem, "L", "°C"),
        (QLocale.MeasurementSystem.ImperialUKSystem, "L", "°C"),
        (QLocale.MeasurementSystem.ImperialUSSystem, "gal", "°F"),
    ],
)
def test_the_units_offered_first_follow_the_locale(kit, measurement, volume, temperature):
    settings = Settings(kit.store, Changes(), measurement=measurement)
    assert settings.unit(Kind.VOLUME) == volume
    assert settings.unit(Kind.TEMPERATURE) == temperature


@pytest.mark.parametrize(
    "measurement",
    [QLocale.MeasurementSystem.MetricSystem, QLocale.MeasurementSystem.ImperialUSSystem],
)
def test_every_default_unit_is_one_that_is_offered(kit, measurement):
    settings = Settings(kit.store, Changes(), measurement=measurement)
    for kind in Kind:
        unit = settings.unit(kind)
        assert unit == "" or unit in units_for(kind)


def test_a_unit_is_chosen_among_those_offered(kit):
    kit.settings.put_unit(Kind.VOLUME, "qt")
    assert kit.settings.unit(Kind.VOLUME) == "qt"
    with pytest.raises(ImpossibleInput):
        kit.settings.put_unit(Kind.VOLUME, "g")


def test_every_setting_has_a_label(kit):
    labels = [option.label for option in kit.settings.options()]
    assert all(labels)
    assert len(set(labels)) == len(labels)
