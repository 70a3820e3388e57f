"""Labels for jars, bottles and cultures: choose, word, lay out, see, print."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QStandardPaths, Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.printing.sheetpainter import LabelJob, SheetPainter
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.labels import (
    LabelContent,
    LabelFacts,
    LabelField,
    LabelKind,
    label_content,
)
from brewdesk.services.labelsample import sample_facts
from brewdesk.services.labelsheets import LabelChoices
from brewdesk.services.records import StoreTrouble
from brewdesk.services.wording.labels import fit_note_words, sample_words
from brewdesk.services.wording.problems import trouble_words
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.handoverwords import feed_by
from brewdesk.widgets.labelpicker import LabelPicker
from brewdesk.widgets.labelpreview import LabelPreview
from brewdesk.widgets.labelsheetbox import LabelSheetBox
from brewdesk.widgets.labelwords import LabelWords
from brewdesk.widgets.paperdialog import file_name
from brewdesk.widgets.printlabels import CalibrationPage, LabelPages, LabelPrinting, write_pdf
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import FAMILY, SPACE, load_fonts

PREVIEW_DELAY_MS = 60
_TOPICS = (
    Topic.BOTTLINGS
    | Topic.CULTURES
    | Topic.VESSELS
    | Topic.BATCHES
    | Topic.SETTINGS
    | Topic.FORECASTS
)
_NOTES_SHOWN = 4
_NAME_SHOWN = 40
_LEFT_PX = 430
_WORDS_PX = 520


class LabelsPage(QWidget):
    """What to label on the left in three steps, the sheets as they will be on the right."""

    add_vessel_wanted = Signal()

    def __init__(
        self, desk: Desk, parent: QWidget | None = None, *, delay_ms: int = PREVIEW_DELAY_MS
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._is_stale = True
        self._wanted: tuple[str, ...] | None = None
        self._files: QFileDialog | None = None
        self._completed: dict[str, LabelFacts] = {}
        self.setObjectName("labels_page")
        load_fonts()
        self.picker = LabelPicker(self)
        self.words = LabelWords(self)
        self.sheet = LabelSheetBox(desk, self)
        self.preview = LabelPreview(self)
        self.printing = LabelPrinting(self)
        self._later = QTimer(self)
        self._later.setObjectName("label_preview_delay")
        self._later.setSingleShot(True)
        self._later.setInterval(delay_ms)
        self.painter = SheetPainter(LabelJob(sheet=self.sheet.sheet(), labels=()), FAMILY)
        self._stack = QStackedWidget(self)
        self._stack.addWidget(self._make_split())
        self._stack.addWidget(self._make_empty())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._stack)
        self._restore()
        self._connect()

    # --- building --------------------------------------------------------------------

    def _make_split(self) -> QWidget:
        self.tabs = QTabWidget()
        self.tabs.setObjectName("label_tabs")
        self.tabs.setAccessibleName(self.tr("What is labelled, its words, and the sheet"))
        self.tabs.setDocumentMode(True)
        self.tabs.addTab(self.picker, self.tr("What"))
        self.tabs.addTab(self.words, self.tr("Words"))
        self.tabs.addTab(self.sheet, self.tr("Sheet"))
        left = QWidget()
        left.setMinimumWidth(_LEFT_PX)
        column = QVBoxLayout(left)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, SPACE, SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Labels"), "title"))
        column.addWidget(self.tabs, 1)
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        column.setSpacing(SPACE)
        column.addWidget(self.preview, 1)
        self.notes = plain_label("", "warn", right, wraps=True)
        self.notes.setObjectName("label_notes")
        self.notes.hide()
        column.addWidget(self.notes)
        column.addLayout(self._make_foot())
        split = QSplitter(Qt.Orientation.Horizontal)
        split.setChildrenCollapsible(False)
        split.addWidget(left)
        split.addWidget(right)
        split.setStretchFactor(0, 0)
        split.setStretchFactor(1, 1)
        split.setSizes([500, 690])
        return split

    def _make_foot(self) -> QHBoxLayout:
        self.said = plain_label("", "muted", wraps=True)
        self.print = QPushButton(self.tr("Print…"))
        self.print.setObjectName("labels_print")
        self.save = QPushButton(self.tr("Save as PDF…"))
        self.save.setObjectName("labels_pdf")
        set_role(self.save, "primary")
        foot = QHBoxLayout()
        foot.setSpacing(SPACE)
        foot.addWidget(self.said, 1)
        foot.addWidget(self.print)
        foot.addWidget(self.save)
        return foot

    def _make_empty(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Labels"), "title"))
        column.addStretch(2)
        middle = Qt.AlignmentFlag.AlignHCenter
        column.addWidget(plain_label(self.tr("Nothing to label yet"), "heading"), 0, middle)
        words = plain_label(
            self.tr(
                "Once there is a jar, a batch or a culture, this page prints labels for it: with "
                "its dates, your own words and a code with its record's own number."
            ),
            "muted",
            wraps=True,
        )
        words.setAlignment(middle)
        words.setMaximumWidth(_WORDS_PX)
        around = QHBoxLayout()
        around.addStretch(1)
        around.addWidget(words, 20)
        around.addStretch(1)
        column.addLayout(around)
        self.first_vessel = QPushButton(self.tr("Add a vessel…"))
        self.first_vessel.setObjectName("labels_add_vessel")
        set_role(self.first_vessel, "primary")
        self.first_vessel.clicked.connect(self.add_vessel_wanted)
        column.addSpacing(SPACE)
        column.addWidget(self.first_vessel, 0, middle)
        column.addStretch(3)
        return page

    def _connect(self) -> None:
        self._later.timeout.connect(self.draw)
        self.picker.changed.connect(self._on_picked)
        self.words.changed.connect(self._later.start)
        self.sheet.changed.connect(self._later.start)
        self.sheet.test_wanted.connect(
            lambda: self.printing.open(CalibrationPage(self.sheet.sheet()))
        )
        self.printing.painted.connect(self._on_painted)
        self.print.clicked.connect(self._on_print)
        self.save.clicked.connect(self._on_save)
        self._desk.changes.changed.connect(self._on_changed)

    # --- what is shown ---------------------------------------------------------------

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        if self._is_stale:
            self.refresh()

    def hideEvent(self, event: QHideEvent) -> None:
        """Keep the choices for the next time."""
        super().hideEvent(event)
        self._keep_choices()

    def begin(self, record: str, record_id: int) -> None:
        """Label this one record: "vessel", "bottling", "batch" or "culture"."""
        self._wanted = (f"{record}:{record_id}",)
        self._is_stale = True
        self.tabs.setCurrentWidget(self.words)
        if self.isVisible():
            self.refresh()

    def refresh(self) -> None:
        """Read again what there is to label; ticks stay."""
        self._is_stale = False
        sources = self._desk.label_sources
        rows = {
            "vessel": sources.jars(),
            "bottling": sources.bottlings(),
            "batch": sources.batches(),
            "culture": sources.cultures(),
        }
        self._completed.clear()
        self._stack.setCurrentIndex(0 if any(rows.values()) else 1)
        self.picker.set_rows(rows)
        wanted, self._wanted = self._wanted, None
        if wanted is not None:
            self.picker.pick_only(wanted)
        else:
            self.picker.pick_likely()
        self.draw()

    def labels(self) -> tuple[LabelContent, ...]:
        """Return the labels as chosen and worded, copies one after the other."""
        made: list[LabelContent] = []
        for facts, copies in self.picker.chosen():
            made += [self._content(self._complete(facts))] * copies
        return tuple(made)

    def draw(self) -> None:
        """Lay the labels out and show them."""
        self._later.stop()
        labels = self.labels()
        job = LabelJob(
            sheet=self.sheet.sheet(),
            labels=labels,
            start=self.sheet.grid.start,
            has_frames=self.sheet.frames.isChecked(),
        )
        self.painter = SheetPainter(job, FAMILY)
        self.sheet.grid.set_labels(len(labels))
        self.preview.set_painter(self.painter if labels else self._sample_painter(job))
        for button in (self.print, self.save):
            button.setEnabled(bool(labels))
        self._show_notes()

    def _sample_painter(self, job: LabelJob) -> SheetPainter:
        """Show how labels look before anything is ticked: invented ones, and marked so."""
        kind = self.words.chosen_kind()
        kinds = (kind,) if kind is not None else tuple(LabelKind)
        now = self._desk.clock.now()
        samples = tuple(self._content(sample_facts(each, now)) for each in kinds)
        return SheetPainter(replace(job, labels=samples, start=0, stamp=sample_words()), FAMILY)

    def _content(self, facts: LabelFacts) -> LabelContent:
        return label_content(
            facts,
            zone=self._desk.clock.zone(),
            pantry_uid=self._desk.store.info.uid,
            kind=self.words.chosen_kind(),
            hidden=self.words.hidden(),
            own=self.words.all_own(facts),
            show=self._desk.quantities.show,
        )

    def _complete(self, facts: LabelFacts) -> LabelFacts:
        """Add what is reckoned only for what is labelled: by when to feed, by when to chill."""
        if facts.key not in self._completed:
            self._completed[facts.key] = self._reckoned(facts)
        return self._completed[facts.key]

    def _reckoned(self, facts: LabelFacts) -> LabelFacts:
        if facts.record == "bottling":
            return self._desk.label_sources.with_danger(facts)
        if facts.record != "culture":
            return facts
        culture = self._desk.cultures.get(facts.record_id)
        return replace(facts, feed_by=feed_by(self._desk, culture))

    def _show_notes(self) -> None:
        """Say what does not stand on the labels as it should."""
        told = [
            fit_note_words(note.reason, note.field.value, _shortened(content))
            for content, note in self.painter.notes()
        ]
        if not self.painter.job.labels:
            told = [
                self.tr(
                    "Nothing is ticked yet. These are samples with invented words; they are not "
                    "printed."
                )
            ]
        shown = told[:_NOTES_SHOWN]
        if len(told) > len(shown):
            more = self.tr("And {count} more.").format(count=len(told) - len(shown))
            shown.append(more)
        text = "\n".join(shown)
        if text != self.notes.text():
            self.notes.setText(text)
            announce(self.notes, text)
        self.notes.setVisible(bool(text))

    # --- remembering -----------------------------------------------------------------

    def _restore(self) -> None:
        choices = self._desk.label_sheets.choices()
        texts = {key: dict(words) for key, words in choices.texts.items()}
        self.words.restore(choices.kind, choices.hidden, texts)
        self.sheet.choose(choices.sheet_key)
        self.sheet.frames.setChecked(choices.has_frames)

    def choices(self) -> LabelChoices:
        """Return what is chosen now."""
        kind = self.words.chosen_kind()
        return LabelChoices(
            sheet_key=self.sheet.sheet().key,
            kind=kind.value if kind is not None else "",
            hidden=tuple(sorted(each.value for each in self.words.hidden())),
            has_frames=self.sheet.frames.isChecked(),
            texts=self.words.texts,
        )

    def _keep_choices(self) -> None:
        choices = self.choices()
        if choices != self._desk.label_sheets.choices():
            self._desk.label_sheets.keep_choices(choices)

    # --- what happens ----------------------------------------------------------------

    def _on_picked(self) -> None:
        facts = tuple(self._complete(each) for each, _copies in self.picker.chosen())
        self.words.set_facts(facts, self._desk.clock.zone())
        self.said.setText("")
        self._later.start()

    def _on_print(self) -> None:
        self.draw()
        self._keep_choices()
        self.printing.open(LabelPages(self.painter, self.title()))

    def title(self) -> str:
        """Return what the print queue and the file are called."""
        names = [facts.name for facts, _copies in self.picker.chosen()]
        if len(names) == 1:
            return self.tr("Label {name}").format(name=" ".join(names[0].split())[:_NAME_SHOWN])
        return self.tr("Labels")

    def _on_save(self) -> None:
        """Ask where to put the file."""
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._files = QFileDialog(self, self.tr("Save the labels as PDF"), folder)
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setNameFilter(self.tr("PDF files (*.pdf)"))
        self._files.setDefaultSuffix("pdf")
        self._files.selectFile(file_name(self.title(), "labels"))
        self._files.fileSelected.connect(self.save_pdf)
        self._files.finished.connect(self._files.deleteLater)
        self._files.open()

    def save_pdf(self, path: str) -> None:
        """Write the labels to ``path`` and say how that went."""
        self.draw()
        self._keep_choices()
        if not self.painter.job.labels:  # unticked while the file was being chosen
            return
        if write_pdf(LabelPages(self.painter, self.title()), Path(path)):
            text = self.tr("Saved as {file}").format(file=Path(path).name)
        else:
            text = self.tr("{file} could not be written. Choose another folder.").format(
                file=Path(path).name
            )
        self.said.setText(text)
        announce(self.said, text)

    def _on_painted(self, has_paper: bool) -> None:
        """Tell of a printer without the sheet's paper; one chosen after it may have it."""
        text = self.tr(
            "The printer does not have the paper of this sheet. Choose another printer, or the "
            "labels will be in the wrong place."
        )
        if not has_paper:
            self.said.setText(text)
            announce(self.said, text)
        elif self.said.text() == text:
            self.said.setText("")

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        self._is_stale = True
        if self.isVisible():
            try:
                self.refresh()
            except StoreTrouble as trouble:
                self.said.setText(trouble_words(trouble))


def _shortened(content: LabelContent) -> str:
    name = content.text(LabelField.NAME)
    return name if len(name) <= _NAME_SHOWN else name[: _NAME_SHOWN - 1] + "…"
