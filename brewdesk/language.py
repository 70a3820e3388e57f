"""Which language the program speaks, and how numbers and dates go with it.

The language is chosen once, before the first page is made: pages are not worded anew while
they stand.
"""

from __future__ import annotations

import logging
from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from brewdesk.paths import resource
from brewdesk.services.settings import LANGUAGES

log = logging.getLogger(__name__)

OWN = "en"  # what the code is written in


def language_for(wish: str, wanted: Iterable[str]) -> str:
    """Return the language to speak: the maker's wish, or the first wanted one that is known.

    ``wish`` is "system" or a language's code; ``wanted`` are the computer's languages as BCP 47
    tags, the dearest first.
    """
    if wish in LANGUAGES:
        return wish
    for tag in wanted:
        language = tag.replace("_", "-").partition("-")[0].lower()
        if language in LANGUAGES:
            return language
    return OWN


class Speech:
    """What translates the program's sentences and the standard buttons."""

    def __init__(self, app: QCoreApplication) -> None:
        self._app = app
        self._translators: list[QTranslator] = []
        self._locale_before: QLocale | None = None
        self.language = OWN

    def speak(self, wish: str) -> None:
        """Speak one of the program's languages from now on: what is worded already stays."""
        self.hush()
        computer = QLocale.system()
        self.language = language_for(wish, computer.uiLanguages())
        if self.language != OWN:
            self._load("qtbase", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
            self._load("brewdesk", str(resource("translations")))
        if QLocale().name().partition("_")[0] != self.language and wish != "system":
            # Asked for by hand: numbers, days and months go along; the country stays.
            self._locale_before = QLocale()
            language = QLocale.codeToLanguage(self.language)
            QLocale.setDefault(QLocale(language, computer.territory()))

    def hush(self) -> None:
        """Speak the code's language again, in the computer's way."""
        for translator in self._translators:
            self._app.removeTranslator(translator)
        self._translators.clear()
        if self._locale_before is not None:
            QLocale.setDefault(self._locale_before)
            self._locale_before = None
        self.language = OWN

    def _load(self, name: str, folder: str) -> None:
        translator = QTranslator()
        if not translator.load(f"{name}_{self.language}", folder):
            log.warning("no sentences found: %s_%s", name, self.language)
            return
        self._app.installTranslator(translator)
        self._translators.append(translator)
