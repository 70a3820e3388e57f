"""The program speaks the maker's language, and goes back to its own when it closes."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QCoreApplication, QLocale

from brewdesk.language import Speech, language_for


@pytest.mark.parametrize(
    ("wish", "wanted", "spoken"),
    [
        ("system", ["de-AT", "en"], "de"),
        ("system", ["es_MX"], "es"),
        ("system", ["eu-ES", "es-ES"], "es"),
        ("system", ["C"], "en"),
        ("system", [], "en"),
        ("en", ["de"], "en"),
        ("de", ["es"], "de"),
        ("xx", ["es"], "es"),
    ],
)
def test_the_first_known_language_is_spoken_unless_one_is_wished_for(wish, wanted, spoken):
    assert language_for(wish, wanted) == spoken


def test_a_wish_changes_words_standard_buttons_and_numbers_and_all_goes_back(qapp):
    before = QLocale().name()
    speech = Speech(qapp)
    speech.speak("de")
    try:
        assert QCoreApplication.translate("AboutDialog", "Close") == "Schließen"
        assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"
        assert QLocale().toString(3.4, "f", 1) == "3,4"
    finally:
        speech.hush()

    assert QCoreApplication.translate("AboutDialog", "Close") == "Close"
    assert QLocale().name() == before


def test_speaking_another_language_leaves_nothing_of_the_first(qapp):
    speech = Speech(qapp)
    speech.speak("de")
    speech.speak("es")
    try:
        assert QCoreApplication.translate("AboutDialog", "Close") == "Cerrar"
    finally:
        speech.speak("en")
        assert QCoreApplication.translate("AboutDialog", "Close") == "Close"
        speech.hush()
