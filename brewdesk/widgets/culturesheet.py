"""The sheet of the chosen culture: what it is, where, its kin, its batches, its care."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLayout,
    QMenu,
    QPushButton,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.lineage import Family, FamilyNode
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import CultureState, Verdict
from brewdesk.services.suspicion import suspect_verdict
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.cultures import (
    age_words,
    care_words,
    generation_words,
    liquid_words,
    mishap_words,
    origin_words,
    place_words,
    story_lines,
)
from brewdesk.services.wording.moments import date_words, stamp_words
from brewdesk.widgets.cultureacts import CultureActs, offered
from brewdesk.widgets.fields import make_strong, plain_label
from brewdesk.widgets.figurerow import ElidedLabel
from brewdesk.widgets.growpanel import GrowPanel
from brewdesk.widgets.icons import icon
from brewdesk.widgets.photostrip import PhotoStrip
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard

CARE_SHOWN = 30
_LEAST_PX = 400
_PHOTOS_PX = 208  # a row of thumbnails with its buttons


class CultureSheet(QWidget):
    """Shows one culture. Acts are opened by ``acts``; a jar to be shown is emitted."""

    culture_wanted = Signal(int)
    batch_wanted = Signal(int)

    def __init__(self, desk: Desk, acts: CultureActs, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._acts = acts
        self._node: FamilyNode | None = None
        self.setObjectName("culture_sheet")
        self.setMinimumWidth(_LEAST_PX)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        column.setSpacing(SPACE)
        column.addLayout(self._make_header())
        self._buttons = QGridLayout()
        self._buttons.setSpacing(SPACE)
        column.addLayout(self._buttons)
        self.act_buttons: dict[str, QPushButton] = {}
        self._above, self._below = QWidget(), QWidget()
        self.photos = PhotoStrip(desk)
        self.photos.setMinimumHeight(_PHOTOS_PX)
        self._area = QScrollArea(self)
        self._area.setObjectName("culture_facts")
        self._area.setAccessibleName(self.tr("All about this culture"))
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._area.setWidget(self._make_body())
        column.addWidget(self._area, 1)

    def _make_body(self) -> QWidget:
        """Room for what is told anew each time, around the photos that stay."""
        body = QWidget()
        self._parts = QVBoxLayout(body)
        self._parts.setContentsMargins(0, SPACE, SPACE, SPACE)
        self._parts.setSpacing(2 * SPACE)
        self._parts.addWidget(self._above)
        _section(self._parts, self.tr("Photos")).addWidget(self.photos)
        self._parts.addWidget(self._below)
        self._parts.addStretch(1)
        return body

    def _make_header(self) -> QHBoxLayout:
        row = QHBoxLayout()
        words = QVBoxLayout()
        words.setSpacing(0)
        self.title = ElidedLabel()
        self.title.setObjectName("culture_title")
        set_role(self.title, "title")
        self.subtitle = plain_label("", "muted", wraps=True)
        words.addWidget(self.title)
        words.addWidget(self.subtitle)
        row.addLayout(words, 1)
        self.more = QToolButton()
        self.more.setObjectName("culture_more")
        self.more.setAccessibleName(self.tr("More for this culture"))
        self.more.setToolTip(self.tr("More for this culture"))
        self.more.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self._menu = QMenu(self.more)
        self._menu.aboutToShow.connect(self.fill_menu)
        self.more.setMenu(self._menu)
        row.addWidget(self.more, 0, Qt.AlignmentFlag.AlignTop)
        return row

    # --- showing ---------------------------------------------------------------------

    @property
    def culture_id(self) -> int | None:
        """The culture on show."""
        return None if self._node is None else self._node.culture.id

    def fill_menu(self) -> None:
        """Offer what can be done with the culture as it is now."""
        if self._node is not None:
            self._acts.fill_menu(self._menu, self._node.culture)

    def show_culture(self, node: FamilyNode | None, family: Family) -> None:
        """Put a culture on show; the same one again stays scrolled where it was."""
        same = node is not None and node.culture.id == self.culture_id
        at = self._area.verticalScrollBar().value() if same else 0
        self._node = node
        self.setVisible(node is not None)
        if node is None:
            return
        self.more.setIcon(icon("more"))
        self.title.setText(node.culture.name)
        self.subtitle.setText(
            self.tr("{origin} · {generation} · {age}").format(
                origin=origin_words(node, _names(family, node.parent_ids)),
                generation=generation_words(node.generation),
                age=age_words(node.age_days),
            )
        )
        self._show_buttons(node)
        self._above = self._told_anew(self._above, lambda column: self._fill(column, node, family))
        self._below = self._told_anew(self._below, lambda column: self._fill_below(column, node))
        if not same:
            self.photos.set_owner(PhotoOwner(culture_id=node.culture.id))
        self._area.verticalScrollBar().setValue(at)

    def _told_anew(self, old: QWidget, fill: Callable[[QVBoxLayout], None]) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2 * SPACE)
        fill(column)
        self._parts.replaceWidget(old, made)
        old.hide()
        old.setParent(None)
        old.deleteLater()
        made.setVisible(column.count() > 0)  # an empty one would still take its spacing
        return made

    def _show_buttons(self, node: FamilyNode) -> None:
        specs = offered(node.culture, usual_only=True)
        wanted = [spec.key for spec in specs]
        if list(self.act_buttons) == wanted:
            return  # the one that was pressed keeps the keyboard
        _empty(self._buttons)
        self.act_buttons = {}
        for number, spec in enumerate(specs):
            button = QPushButton(spec.text)
            button.setObjectName(f"act_{spec.key}")
            if number == 0:
                set_role(button, "primary")
            button.clicked.connect(lambda _checked=False, key=spec.key: self._do(key))
            self._buttons.addWidget(button, number // 2, number % 2)
            self.act_buttons[spec.key] = button

    def _do(self, key: str) -> None:
        if self._node is not None:
            self._acts.do(key, self._node.culture.id)

    def _fill(self, column: QVBoxLayout, node: FamilyNode, family: Family) -> None:
        if node.is_suspect:
            column.addWidget(self._suspicion(node, suspect_verdict()))
        if node.culture.state is CultureState.FORMING:
            self._add_growing(column, node)
        column.addWidget(self._facts(node))
        self._add_kin(column, self.tr("Parents"), node.parent_ids, family)
        self._add_kin(column, self.tr("Daughters"), node.child_ids, family)

    def _fill_below(self, column: QVBoxLayout, node: FamilyNode) -> None:
        self._add_story(column, node)
        self._add_care(column, node)

    # --- parts -----------------------------------------------------------------------

    def _suspicion(self, node: FamilyNode, verdict: Verdict) -> QWidget:
        holder = QWidget()
        holder.setObjectName("suspicion")
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(VerdictCard(verdict, holder, show=self._desk.quantities.show))
        column.addWidget(
            plain_label(
                self.tr("What was noted: {reason}").format(reason=node.culture.suspect_reason),
                "",
                holder,
                wraps=True,
            )
        )
        row = QHBoxLayout()
        row.setSpacing(SPACE)
        throw = QPushButton(self.tr("Throw it out…"))
        throw.setObjectName("suspect_lose")
        set_role(throw, "danger")
        clear = QPushButton(self.tr("Clear it…"))
        clear.setObjectName("suspect_clear")
        culture_id = node.culture.id
        if node.culture.state is CultureState.FORMING:
            throw.clicked.connect(lambda: self._acts.discard_growing(culture_id))
        else:
            throw.clicked.connect(lambda: self._acts.do("lose", culture_id))
        clear.clicked.connect(lambda: self._acts.clear(culture_id))
        row.addWidget(throw)
        row.addWidget(clear)
        row.addStretch(1)
        column.addLayout(row)
        return holder

    def _add_growing(self, column: QVBoxLayout, node: FamilyNode) -> None:
        growth = self._desk.growing.growth_of(node.culture.id)
        if growth is None:
            return
        culture_id = node.culture.id
        panel = GrowPanel(self._desk, growth)
        panel.look_wanted.connect(lambda _batch: self._acts.look_at_film(culture_id))
        panel.finish_wanted.connect(lambda _batch: self._acts.finish_growing(culture_id))
        panel.jar_wanted.connect(self.batch_wanted)
        column.addWidget(panel)

    def _facts(self, node: FamilyNode) -> QWidget:
        culture, zone = node.culture, self._desk.clock.zone()
        facts = [(self.tr("Now"), place_words(node))]
        if culture.pellicle_mm is not None:
            thickness = self.tr("{mm} mm").format(mm=number_text(culture.pellicle_mm, 0))
            facts.append((self.tr("Pellicle"), thickness))
        if culture.state is CultureState.RESTING and culture.vessel_id is not None:
            liquid = self._desk.culture_care.resting_liquid(culture.id)
            facts.append((self.tr("Rests in"), liquid_words(liquid, self._desk.quantities.show)))
        if culture.fed_at is not None:
            facts.append((self.tr("Last fed"), date_words(culture.fed_at, zone)))
        facts.append((self.tr("Born"), date_words(culture.born_at, zone)))
        if culture.gone_at is not None:
            facts.append((self.tr("Gone"), date_words(culture.gone_at, zone)))
        if culture.state is CultureState.LOST and culture.gone_to:
            facts.append((self.tr("What happened"), culture.gone_to))
        if culture.note:
            facts.append((self.tr("Note"), culture.note))
        holder = QWidget()
        grid = QGridLayout(holder)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE // 2)
        grid.setColumnStretch(1, 1)
        for row, (label, value) in enumerate(facts):
            top = Qt.AlignmentFlag.AlignTop
            grid.addWidget(plain_label(label, "muted", holder), row, 0, top)
            shown = plain_label(value, "", holder, wraps=True)
            shown.setAccessibleName(f"{label}: {value}")
            grid.addWidget(shown, row, 1, top)
        return holder

    def _add_kin(
        self, column: QVBoxLayout, title: str, ids: tuple[int, ...], family: Family
    ) -> None:
        kin = [node for one in ids if (node := family.node(one)) is not None]
        if not kin:
            return
        section = _section(column, title)
        for node in kin:
            words = self.tr("{name} – {place}").format(
                name=node.culture.name, place=place_words(node)
            )
            link = QPushButton(words.replace("&", "&&"))
            link.setObjectName(f"kin_{node.culture.id}")
            link.setAccessibleName(self.tr("Show {name}").format(name=node.culture.name))
            link.setAccessibleDescription(words)
            set_role(link, "kin")
            link.clicked.connect(
                lambda _checked=False, one=node.culture.id: self.culture_wanted.emit(one)
            )
            section.addWidget(link)

    def _add_story(self, column: QVBoxLayout, node: FamilyNode) -> None:
        if node.culture.state is CultureState.FORMING:
            return
        section = _section(column, self.tr("How its batches did"))
        story = self._desk.lineage.story(node.culture.id)
        for words in story_lines(story, self._desk.quantities.show):
            section.addWidget(plain_label(words, "", wraps=True))
        for mishap in story.mishaps:
            words = mishap_words(mishap, self._desk.clock.zone())
            section.addWidget(plain_label(words, "warn", wraps=True))

    def _add_care(self, column: QVBoxLayout, node: FamilyNode) -> None:
        rows = self._desk.culture_care.care_of(node.culture.id)
        if not rows:
            return
        section = _section(column, self.tr("Care"))
        zone = self._desk.clock.zone()
        for care in rows[:CARE_SHOWN]:
            words = self.tr("{when}: {what}").format(
                when=stamp_words(care.at, zone),
                what=care_words(care, self._desk.quantities.show),
            )
            section.addWidget(plain_label(words, "", wraps=True))
        if len(rows) > CARE_SHOWN:
            more = self.tr("{count} older entries").format(count=len(rows) - CARE_SHOWN)
            section.addWidget(plain_label(more, "muted"))


def _section(column: QVBoxLayout, title: str) -> QVBoxLayout:
    section = QVBoxLayout()
    section.setSpacing(SPACE // 2)
    heading = plain_label(title, "muted")
    make_strong(heading)
    section.addWidget(heading)
    column.addLayout(section)
    return section


def _names(family: Family, ids: tuple[int, ...]) -> list[str]:
    return [node.culture.name for one in ids if (node := family.node(one)) is not None]


def _empty(layout: QLayout) -> None:
    while (item := layout.takeAt(0)) is not None:
        widget = item.widget()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
