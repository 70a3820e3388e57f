"""Sentences are found in the code however a module words them, and none is left untranslated."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT / "packaging"))

from translating.catalogs import (  # noqa: E402  # the folder is no package
    LANGUAGES,
    catalog_path,
    compile_catalog,
    flaws_of,
    read_catalog,
)
from translating.sentences import NotPlainError, Sentence, sentences_of  # noqa: E402

CODE = """
from PySide6.QtCore import QCoreApplication


def _t(text: str) -> str:
    return QCoreApplication.translate("Own", text)


def words() -> str:
    def t(text: str) -> str:
        return QCoreApplication.translate("Inner", text)

    return t("inside") + _t("of the module")


class Page:
    def name(self) -> str:
        tr = self.tr
        say, other = self.tr, self.other
        plain = QCoreApplication.translate("Else", "plain")
        return tr("shortly") + say("beside another") + self.tr("of the class") + plain
"""


def test_every_way_of_wording_is_found_with_its_context(tmp_path):
    (tmp_path / "brewdesk").mkdir()
    (tmp_path / "brewdesk" / "one.py").write_text(CODE, "utf-8")
    (tmp_path / "brewdesk" / "two.py").write_text(
        'from brewdesk.one import _t as say\n\nTEXT = lambda: say("taken in")\n', "utf-8"
    )

    assert sentences_of((tmp_path / "brewdesk",)) == (
        Sentence("Else", "plain"),
        Sentence("Inner", "inside"),
        Sentence("Own", "of the module"),
        Sentence("Own", "taken in"),
        Sentence("Page", "beside another"),
        Sentence("Page", "of the class"),
        Sentence("Page", "shortly"),
    )


@pytest.mark.parametrize("words", ["_t('a' + name)", "name.tr('of another object')"])
def test_a_sentence_that_cannot_be_found_again_is_refused(tmp_path, words):
    (tmp_path / "one.py").write_text(CODE + f"\n\nX = lambda name: {words}\n", "utf-8")

    with pytest.raises(NotPlainError, match=r"one\.py"):
        sentences_of((tmp_path,))


@pytest.mark.parametrize(
    ("text", "said", "reason"),
    [
        ("{count} jars", "Gläser", "other gaps to fill in"),
        ("{count:.1f} jars", "{count} Gläser", "other gaps to fill in"),
        ("Jar: ", "Glas:", "other spaces at its ends"),
        ("one\ntwo", "eins zwei", "other number of lines"),
        ("&Open", "Öffnen", "a key mark (&) too few or too many"),
        ("Open", "", "not translated"),
    ],
)
def test_a_translation_that_would_be_wrong_on_screen_is_told(text, said, reason):
    (flaw,) = flaws_of({Sentence("C", text): said})

    assert flaw.reason == reason


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_sentence_is_left_out(language):
    wanted = set(sentences_of((ROOT / "brewdesk",)))
    kept = read_catalog(language)

    assert sorted(wanted ^ set(kept)) == []
    assert flaws_of(kept) == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_the_program_reads_is_what_the_translators_wrote(language, tmp_path):
    fresh = compile_catalog(language, tmp_path / "fresh.qm")

    assert fresh.read_bytes() == catalog_path(language).with_suffix(".qm").read_bytes()
