"""A trial's report and picture, read back by programs that are not ours."""

from __future__ import annotations

import subprocess
from html.parser import HTMLParser
from xml.etree import ElementTree

import pytest
from PySide6.QtGui import QImage

from brewdesk.services.paperhtml import html_of
from brewdesk.services.trialplan import ArmWish
from brewdesk.services.trials import ScoreEntry
from brewdesk.services.wording.trialreport import trial_picture, trial_report
from brewdesk.widgets.documentdialog import page_count, write_document_pdf
from brewdesk.widgets.theme import load_fonts
from brewdesk.widgets.trialpaper import picture_height, write_picture
from tests.helpers.pantry_desk import open_desk
from tests.helpers.trial_desk import read_jars, souring_trial

HOSTILE = "<script>alert(1)</script>\"'&{page}</title>"


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path)
    load_fonts()
    yield made
    made.store.close()


def report_of(desk, trial, **more):
    view = desk.trials.view(trial.id)
    return trial_report(view, desk.quantities.show, desk.clock.zone(), desk.clock.now(), **more)


def picture_of(desk, trial):
    view = desk.trials.view(trial.id)
    return trial_picture(view, desk.quantities.show, desk.clock.zone(), desk.clock.now())


def text_of(path):
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], check=True, capture_output=True, text=True
    )
    return " ".join(done.stdout.split())


class _Tags(HTMLParser):
    def __init__(self):
        super().__init__()
        self.tags, self.texts = [], []

    def handle_starttag(self, tag, attrs):
        self.tags.append(tag)

    def handle_data(self, data):
        self.texts.append(data)


def test_a_blind_report_tells_no_level(desk, tmp_path):
    trial = souring_trial(desk)
    read_jars(desk, trial)
    path = tmp_path / "report.pdf"
    assert write_document_pdf(report_of(desk, trial), path)
    text = text_of(path)
    assert "The codes are closed." in text
    assert "Green" not in text
    assert "Black" not in text
    for jar in desk.trials.view(trial.id).jars:
        assert jar.jar.code in text


def test_a_report_tells_jars_left_out_and_why(desk, tmp_path):
    trial = souring_trial(desk, 6, is_blind=False)
    read_jars(desk, trial)
    jar = desk.trials.view(trial.id).jars[2].jar
    desk.trials.leave_out(jar.id, "mold on top")
    path = tmp_path / "report.pdf"
    assert write_document_pdf(report_of(desk, trial), path)
    text = text_of(path)
    assert "left out: mold on top" in text
    assert "Left out" in text
    assert ("3 Black, 2 Green" in text) or ("2 Black, 3 Green" in text)


def test_names_are_told_only_if_wished(desk, tmp_path):
    trial = souring_trial(desk, 2, is_blind=False)
    jar = desk.trials.view(trial.id).jars[0].jar
    desk.trials.score(trial.id, "Taster One", [ScoreEntry(jar_id=jar.id, liking=6.0, text="flat")])
    for with_names in (False, True):
        path = tmp_path / f"{with_names}.pdf"
        assert write_document_pdf(report_of(desk, trial, with_names=with_names), path)
        text = text_of(path)
        for name in ("Taster One", "Jar 1", "flat"):
            assert (name in text) == with_names
    told = html_of(picture_of(desk, trial))
    assert "Taster One" not in told
    assert "Jar 1" not in told


def test_hostile_words_stay_words_in_html(desk):
    arms = (ArmWish(name=f"{HOSTILE}1", level="green"), ArmWish(name=f"{HOSTILE}2", level="black"))
    trial = souring_trial(desk, 4, name=HOSTILE, question=HOSTILE, arms=arms, is_blind=False)
    read_jars(desk, trial)
    parser = _Tags()
    parser.feed(html_of(report_of(desk, trial, with_names=True)))
    assert "script" not in parser.tags
    assert any(HOSTILE in text for text in parser.texts)


def test_the_picture_holds_all_of_it_and_nothing_covers_anything(desk, tmp_path):
    trial = souring_trial(desk, 6, is_blind=False)
    read_jars(desk, trial)
    document = picture_of(desk, trial)
    png, svg = tmp_path / "picture.png", tmp_path / "picture.svg"
    assert write_picture(document, png)
    assert write_picture(document, svg)
    image = QImage(str(png))
    assert (image.width(), image.height()) == (1200, picture_height(document))
    # The line above the foot stands below the last caption: white just above it.
    line = _last_full_line(image)
    above = {image.pixelColor(x, y).name() for y in range(line - 6, line - 2)
             for x in range(60, 1140)}  # fmt: skip
    assert above == {"#ffffff"}
    ElementTree.parse(svg)


def _last_full_line(image):
    """Return the lowest row that is drawn from margin to margin."""
    for y in range(image.height() - 1, 0, -1):
        if all(image.pixelColor(x, y).lightness() < 250 for x in range(70, 1130)):
            return y
    raise AssertionError("no line")


def test_a_folder_that_cannot_be_written_is_told(desk, tmp_path):
    trial = souring_trial(desk, 2, is_blind=False)
    assert not write_picture(picture_of(desk, trial), tmp_path / "no" / "picture.png")


def test_a_long_trial_breaks_over_pages(desk, tmp_path):
    trial = souring_trial(desk, 24, is_blind=False)
    read_jars(desk, trial, days=(2, 6, 10))
    document = report_of(desk, trial)
    assert page_count(document) >= 2
    path = tmp_path / "report.pdf"
    assert write_document_pdf(document, path)
    text = text_of(path)
    assert all(jar.jar.code in text for jar in desk.trials.view(trial.id).jars)
