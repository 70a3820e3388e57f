"""The translations in Qt Linguist's files: brought up to date, filled, compiled, checked."""

from __future__ import annotations

import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from translating.sentences import Sentence

ROOT = Path(__file__).resolve().parents[2]
FOLDER = ROOT / "resources" / "translations"
LANGUAGES = ("de", "es")

_GAP = re.compile(r"\{[^{}]*\}")
_MARK = re.compile(r"&(?=[^\s&])")


@dataclass(frozen=True, slots=True)
class Flaw:
    """What is wrong with one translation."""

    sentence: Sentence
    said: str
    reason: str


def catalog_path(language: str) -> Path:
    """Return where a language's sentences are kept."""
    return FOLDER / f"brewdesk_{language}.ts"


def bring_up_to_date(language: str, sentences: Iterable[Sentence]) -> None:
    """Add new sentences to a language's file and drop those that are gone."""
    with tempfile.TemporaryDirectory() as folder:
        code = Path(folder) / "sentences.py"
        lines = [f"QCoreApplication.translate({s.context!r}, {s.text!r})\n" for s in sentences]
        code.write_text("".join(lines), "utf-8")
        tool = _tool("lupdate")
        options = ["-no-obsolete", "-locations", "none", "-source-language", "en"]
        target = ["-target-language", language, "-ts", str(catalog_path(language))]
        subprocess.run([*tool, *options, str(code), *target], check=True, stdout=subprocess.DEVNULL)


def compile_catalog(language: str, into: Path | None = None) -> Path:
    """Write the compiled file that the program reads; return where."""
    target = into or catalog_path(language).with_suffix(".qm")
    command = [*_tool("lrelease"), "-silent", str(catalog_path(language)), "-qm", str(target)]
    subprocess.run(command, check=True)
    return target


def read_catalog(language: str) -> dict[Sentence, str]:
    """Return every sentence of a language's file with its translation; "" = none yet."""
    kept: dict[Sentence, str] = {}
    for context in ET.parse(catalog_path(language)).getroot().iter("context"):
        name = context.findtext("name", "")
        for message in context.iter("message"):
            said = message.find("translation")
            done = said is not None and said.get("type") is None
            text = (said.text or "") if said is not None and done else ""
            kept[Sentence(name, message.findtext("source", ""))] = text
    return kept


def fill(language: str, said: dict[Sentence, str]) -> int:
    """Put translations into a language's file; return how many found their sentence."""
    tree = ET.parse(catalog_path(language))
    found = 0
    for context in tree.getroot().iter("context"):
        name = context.findtext("name", "")
        for message in context.iter("message"):
            text = said.get(Sentence(name, message.findtext("source", "")), "")
            translation = message.find("translation")
            if not text or translation is None:
                continue
            translation.text = text
            translation.attrib.pop("type", None)
            found += 1
    ET.indent(tree, "    ")
    head = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
    body = ET.tostring(tree.getroot(), encoding="unicode")
    catalog_path(language).write_text(f"{head}{body}\n", "utf-8")
    return found


def flaws_of(translations: dict[Sentence, str]) -> list[Flaw]:
    """Return every translation that would be wrong on screen, and every one that is missing."""
    found = []
    for sentence, said in translations.items():
        if not said:
            found.append(Flaw(sentence, said, "not translated"))
            continue
        if sorted(_GAP.findall(sentence.text)) != sorted(_GAP.findall(said)):
            found.append(Flaw(sentence, said, "other gaps to fill in"))
        if _edges(sentence.text) != _edges(said):
            found.append(Flaw(sentence, said, "other spaces at its ends"))
        if sentence.text.count("\n") != said.count("\n"):
            found.append(Flaw(sentence, said, "other number of lines"))
        if bool(_MARK.search(sentence.text)) != bool(_MARK.search(said)):
            found.append(Flaw(sentence, said, "a key mark (&) too few or too many"))
    return found


def _edges(text: str) -> tuple[str, str]:
    return text[: len(text) - len(text.lstrip())], text[len(text.rstrip()) :]


def _tool(name: str) -> list[str]:
    """Return how to start one of the translation tools that come with PySide6."""
    beside = Path(sys.executable).with_name(f"pyside6-{name}")
    return [str(beside)]
