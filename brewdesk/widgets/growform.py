"""Begin to grow a culture from a bottle of raw kombucha, or from starter of one's own."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.growing import BottleKind
from brewdesk.services.records import (
    Batch,
    CultureState,
    ImpossibleInput,
    Kind,
    Level,
    Plan,
    Starter,
    Verdict,
    Wish,
)
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.problems import impossible_words
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard, VerdictLine

_LATER_MS = 150


class GrowDialog(CareDialog):
    """Vessel, bottle and amounts; what they come to stands below and follows the typing.

    ``done_with`` carries the batch that was planned.
    """

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Grow a culture from raw kombucha"),
            self.tr("Plan it"),
            name="grow",
            parent=parent,
        )
        self.setMinimumWidth(640)
        self._wish: Wish | None = None
        self.add_words(
            self.tr(
                "Raw kombucha in fresh sweet tea grows a film of its own in two to three weeks, "
                "kept warm, still and under cloth. Usual is about {raw} in {tea} of sweet tea."
            ).format(
                raw=desk.quantities.show(0.1, Kind.VOLUME),
                tea=desk.quantities.show(0.5, Kind.VOLUME),
            )
        )
        self._make_fields()
        self.outcome = QVBoxLayout()
        self.outcome.setSpacing(SPACE)
        self.body.addLayout(self.outcome)
        self._later = QTimer(self)
        self._later.setObjectName("grow_reckon")
        self._later.setSingleShot(True)
        self._later.setInterval(_LATER_MS)
        self._later.timeout.connect(self.reckon)
        self._connect()
        self._on_vessel()
        self.name.setFocus()

    # --- building --------------------------------------------------------------------

    def _make_fields(self) -> None:
        desk = self._desk
        self.name = self.add_line("name", self.tr("Name of the new culture"))
        resting = [
            culture.vessel_id
            for culture in desk.cultures.all(include_gone=False)
            if culture.vessel_id is not None
        ]
        self.vessel = self.add_vessels(
            "vessel_id", self.tr("Vessel"), None, may_be_none=False, without=resting
        )
        self.bottle = QComboBox()
        for kind, words in self._bottles():
            self.bottle.addItem(words, kind)
        self.add_row("bottle", self.tr("Raw liquid from"), self.bottle)
        self.source = self.add_line("source", self.tr("Which one, in your words (optional)"))
        self.parent_choice = QComboBox()
        for culture in desk.cultures.all(include_gone=False):
            if culture.state is not CultureState.FORMING:
                self.parent_choice.addItem(culture.name, culture.id)
        self.add_row("culture_id", self.tr("Starter of"), self.parent_choice)
        self.fill = QuantityEdit(desk.quantities, Kind.VOLUME, lines=1)
        self.add_row("fill_volume_l", self.tr("All together"), self.fill)
        self.raw = QuantityEdit(desk.quantities, Kind.VOLUME, lines=1)
        self.add_row("starter_volume_l", self.tr("Raw liquid in it"), self.raw)
        self.ph = QuantityEdit(desk.quantities, Kind.PH, required=False, lines=1)
        self.ph.set_placeholder(self.tr("not known"))
        self.add_row("starter_ph", self.tr("Its pH, if you know"), self.ph)
        self.rows["ph"] = self.rows["starter_ph"]
        self._pair()

    def _pair(self) -> None:
        """Set short fields two in a line."""
        pairs = (
            ("name", "vessel_id"),
            ("bottle", "source"),
            ("fill_volume_l", "starter_volume_l"),
        )
        for left, right in pairs:
            grid = PairGrid(gap=2 * SPACE)
            grid.add(self.rows[left], self.rows[right])
            self.body.addWidget(grid)
        self.rows["culture_id"].setVisible(False)
        self.body.addWidget(self.rows["culture_id"])
        self.body.addWidget(self.rows["starter_ph"])

    def _bottles(self) -> list[tuple[BottleKind, str]]:
        offered = [
            (BottleKind.RAW_PLAIN, self.tr("A raw bottle, unflavoured")),
            (BottleKind.RAW_FLAVOURED, self.tr("A raw bottle with fruit or flavour")),
            (BottleKind.PASTEURISED, self.tr("A pasteurised bottle")),
            (BottleKind.UNKNOWN, self.tr("A bottle, not known whether raw")),
        ]
        if any(
            culture.state is not CultureState.FORMING
            for culture in self._desk.cultures.all(include_gone=False)
        ):
            offered.append((BottleKind.STARTER, self.tr("Starter of a culture of mine")))
        return offered

    def _connect(self) -> None:
        self.vessel.currentIndexChanged.connect(self._on_vessel)
        self.bottle.currentIndexChanged.connect(self._on_bottle)
        for edit in (self.fill, self.raw, self.ph):
            edit.value_changed.connect(lambda _value: self._later.start())

    # --- following -------------------------------------------------------------------

    def bottle_kind(self) -> BottleKind:
        """Return what the raw liquid is."""
        return BottleKind(self.bottle.currentData())

    def _on_vessel(self) -> None:
        vessel_id = self.vessel.currentData()
        if vessel_id is None:
            self.rows["vessel_id"].set_problem(
                self.tr("No vessel is free. Put another on the shelf first.")
            )
            self.go.setEnabled(False)
            return
        self._wish = self._desk.growing.default_wish(int(vessel_id))
        for edit, value in (
            (self.fill, self._wish.fill_volume_l),
            (self.raw, self._wish.starter_volume_l),
        ):
            if not edit.is_touched():
                edit.set_value(value)
        self.reckon()

    def _on_bottle(self) -> None:
        self.rows["culture_id"].setVisible(self.bottle_kind() is BottleKind.STARTER)
        self.reckon()

    def wish(self) -> Wish | None:
        """Return what the fields ask for; None while one cannot be read."""
        edits = (self.fill, self.raw, self.ph)
        if self._wish is None or not all(edit.is_valid() for edit in edits):
            return None
        fill_l, raw_l = self.fill.value(), self.raw.value()
        if fill_l is None or raw_l is None:
            return None
        ph = self.ph.value()
        starter = self._wish.starter if ph is None else Starter(ph=ph)
        return replace(self._wish, fill_volume_l=fill_l, starter_volume_l=raw_l, starter=starter)

    def reckon(self) -> None:
        """Show what it comes to, and what there is to mind."""
        while (item := self.outcome.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        for verdict in self._desk.growing.bottle_verdicts(self.bottle_kind()):
            self.outcome.addWidget(_shown(verdict, self))
        wish = self.wish()
        if wish is None:
            return
        try:
            plan = self._desk.batches.plan_preview(wish)
        except ImpossibleInput as problem:
            words = impossible_words(problem, self._desk.quantities.show)
            self.outcome.addWidget(plain_label(words, "warn", self, wraps=True))
            return
        self.amounts = plain_label(self._amount_words(plan), "", self, wraps=True)
        self.amounts.setObjectName("grow_amounts")
        self.outcome.addWidget(self.amounts)
        for verdict in plan.verdicts:
            if verdict.level is not Level.INFORM:
                self.outcome.addWidget(VerdictCard(verdict, self, show=self._desk.quantities.show))
        self.fit()

    def _amount_words(self, plan: Plan) -> str:
        show = self._desk.quantities.show
        return self.tr(
            "{water} of water, {tea} of tea, {sugar} of sugar, {raw} of raw liquid. It is "
            "reckoned to start at about pH {ph} ({low} to {high}): measure it. The run sheet "
            "leads through it and keeps the raw liquid out of hot tea."
        ).format(
            water=show(plan.hot_water_g + plan.cold_water_g, Kind.MASS),
            tea=show(plan.tea_g, Kind.MASS),
            sugar=show(plan.sugar_g, Kind.MASS),
            raw=show(plan.starter_volume_l, Kind.VOLUME),
            ph=number_text(plan.start_ph.value, 1),
            low=number_text(plan.start_ph.low, 1),
            high=number_text(plan.start_ph.high, 1),
        )

    # --- doing -----------------------------------------------------------------------

    def act(self) -> Batch:
        """Plan it."""
        wish = self.wish()
        vessel_id = self.vessel.currentData()
        if wish is None or vessel_id is None:
            raise ImpossibleInput("vessel_id", vessel_id, reason="empty")
        is_starter = self.bottle_kind() is BottleKind.STARTER
        return self._desk.growing.start(
            int(vessel_id),
            name=self.name.text(),
            wish=wish,
            source=self.source.text(),
            parent_id=self.parent_choice.currentData() if is_starter else None,
        )


def _shown(verdict: Verdict, parent: QWidget) -> QWidget:
    made = VerdictLine if verdict.level is Level.INFORM else VerdictCard
    return made(verdict, parent)
