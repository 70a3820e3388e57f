"""Bring the translations up to date, and tell what is missing.

    python3 packaging/translate.py update              read the code, write *.ts and *.qm anew
    python3 packaging/translate.py missing LANGUAGE    print what has no translation, as JSON
    python3 packaging/translate.py fill LANGUAGE FILE  take translations from such a JSON
    python3 packaging/translate.py check               say what is wrong; exit 1 if anything is

The files in ``resources/translations`` open in Qt Linguist. The JSON is
``{context: {sentence: translation}}``.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

from translating.catalogs import (
    LANGUAGES,
    ROOT,
    bring_up_to_date,
    compile_catalog,
    fill,
    flaws_of,
    read_catalog,
)
from translating.sentences import Sentence, sentences_of


def update() -> int:
    """Read the code and write every language's files anew."""
    sentences = sentences_of((ROOT / "brewdesk",))
    for language in LANGUAGES:
        bring_up_to_date(language, sentences)
        compile_catalog(language)
        left = sum(not said for said in read_catalog(language).values())
        print(f"{language}: {len(sentences)} sentences, {left} not translated")
    return 0


def missing(language: str) -> int:
    """Print the sentences without a translation as JSON."""
    left: dict[str, dict[str, str]] = {}
    for sentence, said in sorted(read_catalog(language).items()):
        if not said:
            left.setdefault(sentence.context, {})[sentence.text] = ""
    print(json.dumps(left, ensure_ascii=False, indent=1))
    return 0


def take(language: str, path: Path) -> int:
    """Fill a language's file from a JSON of translations, and compile it."""
    told = json.loads(path.read_text("utf-8"))
    said = {
        Sentence(context, text): translation
        for context, texts in told.items()
        for text, translation in texts.items()
    }
    found = fill(language, said)
    compile_catalog(language)
    print(f"{language}: {found} of {len(said)} found their sentence")
    return 0


def check() -> int:
    """Say every flaw; 1 if there is any."""
    wanted = set(sentences_of((ROOT / "brewdesk",)))
    wrong = 0
    for language in LANGUAGES:
        kept = read_catalog(language)
        for sentence in sorted(wanted - set(kept)):
            print(f"{language}: not in the file: {sentence.context}: {sentence.text!r}")
            wrong += 1
        for flaw in flaws_of(kept):
            print(f"{language}: {flaw.reason}: {flaw.sentence.text!r} -> {flaw.said!r}")
            wrong += 1
    return 1 if wrong else 0


def main(words: list[str]) -> int:
    """Carry out one command."""
    match words:
        case ["update"]:
            return update()
        case ["missing", language] if language in LANGUAGES:
            return missing(language)
        case ["fill", language, path] if language in LANGUAGES:
            return take(language, Path(path))
        case ["check"]:
            return check()
    print(__doc__)
    return 2


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
