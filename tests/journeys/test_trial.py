"""A trial from the drawing of lots to a printed report, through the whole window."""

from __future__ import annotations

import subprocess

from PySide6.QtGui import QImage

from brewdesk.services.records import BatchStage, TrialState
from tests.helpers.trial_desk import jars, read_jars
from tests.journeys.person import Person


def _text_of(path):
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], check=True, capture_output=True, text=True
    )
    return " ".join(done.stdout.split())


def _ink_share(path):
    """Return how much of the first page is not white, as a PDF viewer renders it."""
    stem = path.with_suffix("")
    subprocess.run(
        ["pdftoppm", "-r", "50", "-png", "-singlefile", str(path), str(stem)], check=True
    )
    image = QImage(f"{stem}.png")
    dark = sum(
        image.pixelColor(x, y).lightness() < 200
        for x in range(image.width())
        for y in range(image.height())
    )
    return dark / (image.width() * image.height())


def test_four_jars_from_lots_to_a_report(pantry, tmp_path):
    program = pantry.open()
    desk, window = program.desk, program.window
    person = Person(window)
    jars(desk, 4)
    before = len(desk.batches.all())
    person.click("rail_trials")
    person.click("trial_first_plan")
    person.type("trial_form_name", "Two teas")
    person.type("trial_form_question", "Does green tea sour faster?")
    for n in range(4):
        person.click(f"trial_vessel_{n}")
    person.click("trial_form_go")
    person.click("trial_start")
    person.click("trial_start_go")
    assert len(desk.batches.all()) == before + 4

    (trial,) = desk.trials.all()
    codes = [jar.jar.code for jar in desk.trials.view(trial.id).jars]
    person.click("rail_shelf")
    on_shelf = {jar.batch.name for jar in desk.shelf.jars()}
    assert on_shelf == {f"Two teas {code}" for code in codes}
    for jar in desk.trials.view(trial.id).jars:
        desk.brewing.note_already_in(jar.batch.id, desk.clock.now(), 25.0)
    read_jars(desk, trial, green=6.0, black=9.0)

    person.click("rail_trials")
    assert window.page("trials").sheet.model.index(0, 1).data() == "closed"
    for taster, likings in (("First", ("7", "6", "8", "5")), ("Second", ("6", "6", "7", "5"))):
        person.click("trial_taste")
        person.type("trial_tasting_taster", taster)
        for code, liking in zip(codes, likings, strict=True):
            person.type(f"liking_{code}", liking)
        person.click("trial_tasting_go")
    assert all(len(jar.scores) == 2 for jar in desk.trials.view(trial.id).jars)
    person.click("trial_reveal")
    headline = person.find("trial_headline").text()
    assert "earlier" in headline
    assert "do not settle it" in headline
    person.click("trial_end")
    person.find("trial_end_conclusion").setPlainText("Green seems quicker.")
    person.click("trial_end_go")
    assert desk.trials.get(trial.id).state is TrialState.ENDED

    person.click("trial_report")
    report = person.find("trial_report_dialog")
    pdf, png, svg = (tmp_path / f"report.{ending}" for ending in ("pdf", "png", "svg"))
    report.save_pdf(str(pdf))
    text = _text_of(pdf)
    assert "Does green tea sour faster?" in text
    assert "2 Black tea, 2 Green tea" in text
    assert "point to it but do not settle it" in text
    assert "Green seems quicker." in text
    assert "Jar 1" not in text
    assert "First" not in text
    assert 0.01 < _ink_share(pdf) < 0.4
    person.click("trial_report_names")
    report.save_pdf(str(pdf))
    named = _text_of(pdf)
    assert "Jar 1" in named
    assert "First" in named
    report.save_picture(str(png))
    report.save_picture(str(svg))
    assert QImage(str(png)).width() == 1200
    assert "Jar 1" not in svg.read_text(encoding="utf-8")
    report.reject()

    program = pantry.reopen()
    (kept,) = program.desk.trials.all()
    assert kept.conclusion == "Green seems quicker."
    view = program.desk.trials.view(kept.id)
    assert {arm.name for arm in view.arms} == {"Black tea", "Green tea"}
    assert all(jar.batch.stage is BatchStage.SOURING for jar in view.jars)
