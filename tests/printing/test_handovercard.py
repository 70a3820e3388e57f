"""The hand-over card on paper, read back with tools that are not ours: pdftotext and pdftoppm."""

from __future__ import annotations

import subprocess
from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtGui import QImage, QPageSize

from brewdesk.printing.handovercard import CARD_SIZES_MM, MARGIN_MM
from brewdesk.services.records import CultureDraft, CultureOrigin, CultureState
from brewdesk.widgets.handoverwords import feed_by, hand_over_card, lineage_words
from brewdesk.widgets.printhandover import HandOverDialog, write_card
from brewdesk.widgets.theme import load_fonts
from tests.helpers.pantry_desk import open_desk, souring_batch

SIZES = (QPageSize.PageSizeId.A4, QPageSize.PageSizeId.Letter)
DPI = 60


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    load_fonts()
    yield made
    made.store.close()


def culture(desk, name="Mother", **fields):
    draft = {
        "name": name,
        "origin": CultureOrigin.RAW_BOTTLE,
        "state": CultureState.RESTING,
        "born_at": desk.clock.now(),
        "pellicle_mm": 4.0,
    }
    return desk.cultures.add(CultureDraft(**(draft | fields)))


@pytest.fixture
def daughter(desk):
    mother = culture(desk)
    batch = souring_batch(desk)
    desk.clock.advance(days=2)
    return desk.culture_care.rest(
        desk.culture_care.split(mother.id, name="Daughter", vessel_id=None).id,
        desk.vessels.get(_spare(desk, batch)).id,
        0.75,
    )


def _spare(desk, batch):
    from dataclasses import fields

    from brewdesk.services.records import VesselDraft

    old = desk.vessels.get(batch.vessel_id)
    draft = {field.name: getattr(old, field.name) for field in fields(VesselDraft)}
    return desk.vessels.add(VesselDraft(**(draft | {"name": "Store jar"}))).id


@pytest.fixture
def card(desk, daughter):
    return hand_over_card(desk, daughter.id)


def text_of(path):
    done = subprocess.run(["pdftotext", "-raw", str(path), "-"], check=True, capture_output=True)
    return " ".join(done.stdout.decode().split())


def pages_of(path):
    done = subprocess.run(["pdfinfo", str(path)], check=True, capture_output=True, text=True)
    facts = dict(line.split(":", 1) for line in done.stdout.splitlines() if ":" in line)
    return int(facts["Pages"])


def ink_box(path):
    """Left, top, right and bottom of everything that is not paper, in mm."""
    stem = path.with_suffix("")
    subprocess.run(
        ["pdftoppm", "-r", str(DPI), "-png", "-singlefile", str(path), str(stem)], check=True
    )
    grey = QImage(str(stem.with_suffix(".png"))).convertToFormat(QImage.Format.Format_Grayscale8)
    rows, columns = [], []
    for y in range(grey.height()):
        line = bytes(grey.constScanLine(y))[: grey.width()]
        dark = [x for x, value in enumerate(line) if value < 200]
        if dark:
            rows.append(y)
            columns += (dark[0], dark[-1])
    return tuple(edge * 25.4 / DPI for edge in (min(columns), min(rows), max(columns), max(rows)))


@pytest.mark.parametrize("card_size", sorted(CARD_SIZES_MM))
@pytest.mark.parametrize("size", SIZES)
def test_everything_on_the_card_can_be_read_out_of_the_pdf(card, tmp_path, size, card_size):
    path = tmp_path / "card.pdf"
    assert write_card(card, path, size, card_size)

    text = text_of(path)

    assert pages_of(path) == 1
    for words in (card.kind, card.title, card.made_on, card.lineage, card.feed_by, card.footer):
        assert words in text
    for sentence in (*card.care, *card.cautions):
        assert sentence in text
    for label, value in card.facts:
        assert label in text
        assert value in text


@pytest.mark.parametrize("card_size", sorted(CARD_SIZES_MM))
def test_the_card_is_no_larger_than_its_paper_and_inside_the_margin(card, tmp_path, card_size):
    path = tmp_path / "card.pdf"
    write_card(card, path, card_size=card_size)
    left, top, right, bottom = ink_box(path)
    wide, high = CARD_SIZES_MM[card_size]
    slack = 2 * 25.4 / DPI
    assert left >= MARGIN_MM - slack
    assert top >= MARGIN_MM - slack
    assert right <= MARGIN_MM + wide + slack
    assert bottom <= MARGIN_MM + high + slack
    assert right - left > 0.9 * wide


@pytest.mark.parametrize("card_size", sorted(CARD_SIZES_MM))
def test_long_words_are_set_smaller_and_stay_on_the_card(card, tmp_path, card_size):
    path = tmp_path / "long.pdf"
    long = replace(card, title="W" * 80, lineage=" ".join([card.lineage] * 6))
    write_card(long, path, card_size=card_size)
    _, _, right, bottom = ink_box(path)
    wide, high = CARD_SIZES_MM[card_size]
    slack = 2 * 25.4 / DPI
    assert right <= MARGIN_MM + wide + slack
    assert bottom <= MARGIN_MM + high + slack
    assert "W" * 80 in text_of(path).replace(" ", "")


def test_the_lineage_is_told_back_to_the_founder(card):
    assert card.lineage == "Split from Mother. Mother: grown from a raw bottle."


def test_a_long_line_is_cut_with_a_word(desk):
    one = culture(desk)
    for number in range(12):
        desk.clock.advance(minutes=1)
        one = desk.culture_care.split(one.id, name=f"C{number}", vessel_id=None)
    words = lineage_words(desk.lineage.tree(), one.id)
    assert words.endswith("The line goes back further.")
    assert words.count(":") == 6


def test_it_is_to_be_fed_four_weeks_after_it_was_put_to_rest(desk, daughter):
    assert feed_by(desk, daughter) == desk.clock.now() + timedelta(days=28)
    desk.clock.advance(days=10)
    fed = desk.culture_care.feed(daughter.id, 0.1, 5.0)
    assert feed_by(desk, fed) == desk.clock.now() + timedelta(days=28)
    desk.clock.advance(days=5)
    topped = desk.culture_care.top_up(daughter.id, 0.1)
    assert feed_by(desk, topped) == desk.clock.now() + timedelta(days=23)


def test_one_overdue_is_to_be_fed_today(desk, daughter):
    desk.clock.advance(days=100)
    assert feed_by(desk, daughter) == desk.clock.now()


def test_the_card_tells_the_dangers_and_defers_to_local_rules(card):
    told = " ".join(card.cautions)
    assert "mold" in told
    assert "When in doubt, throw it out." in told
    assert "4.2" in told
    assert "doctor" in told
    assert "Local rules" in card.footer
    assert "not a guarantee" in card.footer


def test_the_dialog_shows_saves_and_changes_the_size(card, qtbot, tmp_path):
    dialog = HandOverDialog(card)
    qtbot.addWidget(dialog)
    dialog.open()
    large = dialog.page.grab().toImage()
    dialog.size_choice.setCurrentIndex(1)
    small = dialog.page.grab().toImage()
    assert large != small
    path = tmp_path / "card.pdf"
    dialog.save_pdf(str(path))
    assert path.name in dialog.said.text()
    _, _, right, _ = ink_box(path)
    assert right <= MARGIN_MM + CARD_SIZES_MM["a6"][0] + 1.0
    (tmp_path / "taken.pdf").mkdir()
    dialog.save_pdf(str(tmp_path / "taken.pdf"))
    assert "could not be written" in dialog.said.text()
