"""Words for a careful look at a jar's surface: the signs, and what follows from them."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from brewdesk.services.looks import Sign
from culturecore.stages import Look


def _t(text: str) -> str:
    return QCoreApplication.translate("Looks", text)


@dataclass(frozen=True, slots=True)
class SignWords:
    """A sign in a few words, more of it, and what its drawing shows."""

    name: str
    more: str
    drawing: str


@dataclass(frozen=True, slots=True)
class LookWords:
    """What follows from a look: the finding, and what to do."""

    finding: str
    what_to_do: str


def sign_words(sign: Sign) -> SignWords:
    """Say what to look for."""
    return {
        Sign.FUZZY: SignWords(
            _t("Fuzzy or hairy"),
            _t("Fine hairs or a velvety patch, mostly round, on top of the film."),
            _t("Drawing: tufts of hair standing on the film."),
        ),
        Sign.DRY: SignWords(
            _t("Dry, standing above the liquid"),
            _t("A dull patch like flour or felt, where all around it is wet."),
            _t("Drawing: a dry cushion on top of the wet film."),
        ),
        Sign.COLOURED: SignWords(
            _t("Coloured, or like white powder"),
            _t("Green, blue, black, pink or orange spots, or a white powder, seen from above."),
            _t("Drawing: the film from above with spots in several colours."),
        ),
        Sign.WET_SMOOTH: SignWords(
            _t("Wet and smooth, of the colour of the tea"),
            _t("A pale or tan skin, glossy, under or at the surface of the liquid."),
            _t("Drawing: an even, glossy film on the liquid."),
        ),
        Sign.STRINGS: SignWords(
            _t("Brown strings hanging"),
            _t("Yeast: soft brown threads or clouds below the film, always in the liquid."),
            _t("Drawing: brown threads hanging from the film into the liquid."),
        ),
        Sign.BUBBLES: SignWords(
            _t("Bubbles under it"),
            _t("Gas of the yeast lifts the film or makes domes in it; they are wet."),
            _t("Drawing: bubbles below a film that they lift."),
        ),
        Sign.LAYERS: SignWords(
            _t("New layers, holes, uneven thickness"),
            _t("A young film over an old one, gaps, ridges, a pale new patch: wet all over."),
            _t("Drawing: a thin new film above an uneven old one with a hole."),
        ),
        Sign.BARE: SignWords(
            _t("Only liquid, no film yet"),
            _t("Clear or cloudy, with nothing on top: usual in the first days."),
            _t("Drawing: liquid without a film."),
        ),
        Sign.DOUBT: SignWords(
            _t("I am not sure"),
            _t(
                "You see something that you cannot place. A day tells: mold grows, a film thickens."
            ),
            _t("Drawing: a question mark on the film."),
        ),
    }[sign]


def look_words(look: Look) -> LookWords:
    """Say what follows from a look. It never says that a jar is safe."""
    return {
        Look.MOLD: LookWords(
            _t("This looks like mold."),
            _t(
                "Discard all of it: drink, culture and cloth. Do not scoop it off, do not taste "
                "it, and keep no starter from it. Wash and sanitise the vessel."
            ),
        ),
        Look.UNSURE: LookWords(
            _t("Not clear yet."),
            _t(
                "Keep the jar apart, use nothing from it for another, and look again tomorrow; "
                "you will be reminded. When in doubt, throw it out."
            ),
        ),
        Look.FINE: LookWords(
            _t("Nothing suspicious seen."),
            _t(
                "That is no proof: mold can begin out of sight. Go on looking, and when in "
                "doubt, throw it out."
            ),
        ),
    }[look]


def seen_words(signs: Iterable[Sign]) -> str:
    """Write down what was ticked, for the record: "Fuzzy or hairy; brown strings hanging"."""
    ticked = set(signs)
    return "; ".join(sign_words(sign).name for sign in Sign if sign in ticked)


def mold_seen_words() -> str:
    """Say why something is under suspicion, if no more was written about the look."""
    return _t("Mold was seen on it.")


def look_source() -> str:
    """Say where this advice comes from."""
    return _t(
        "Discarding everything at any mold: Niagara Region (Ontario), kombucha best practices. "
        "How a healthy film looks: common practice, no source. Your local rules come first."
    )
