"""Fresh sweet tea into a souring jar: how much, how sweet, how warm, and what it does."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QDialog, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.brewing import StepShut
from brewdesk.services.desk import Desk
from brewdesk.services.records import Batch, ImpossibleInput, Kind, StoreTrouble, TeaKind
from brewdesk.services.toppingup import FreshWish, TopUpPreview
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.balancewords import range_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, card, choose, make_strong, plain_label
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictLine


class TopUpDialog(QDialog):
    """Shows volume, pH and sugar as they would be, while the amounts are typed."""

    topped_up = Signal()

    def __init__(self, desk: Desk, batch: Batch, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._batch = batch
        self._flagged: set[str] = set()  # entries with a problem that was found here
        self.setObjectName("top_up_dialog")
        self.setWindowTitle(self.tr("Top up"))
        self.setMinimumWidth(560)
        self._make_fields()
        self._lay_out()
        self._fill()

    def _make_fields(self) -> None:
        quantities = self._desk.quantities
        self.volume = QuantityEdit(quantities, Kind.VOLUME, lines=2)
        self.sugar = QuantityEdit(quantities, Kind.SUGAR, lines=2)
        self.tea = QuantityEdit(quantities, Kind.TEA, lines=2)
        self.kind = QComboBox()
        for tea_kind in TeaKind:
            self.kind.addItem(name_of(tea_kind), tea_kind)
        self.temperature = QuantityEdit(quantities, Kind.TEMPERATURE, required=False, lines=2)
        self.reason = QLineEdit()
        self.rows = {
            "volume_l": FieldRow(self.tr("How much sweet tea"), self.volume),
            "temperature_c": FieldRow(self.tr("How warm it is now"), self.temperature),
            "tea_kind": FieldRow(self.tr("Tea"), self.kind, lines=1),
            "tea_g_per_l": FieldRow(self.tr("Leaf per litre of it"), self.tea),
            "sugar_g_per_l": FieldRow(self.tr("Sugar per litre of it"), self.sugar),
            "reason": FieldRow(self.tr("Why it goes in all the same"), self.reason, lines=3),
        }
        for key, row in self.rows.items():
            row.focus_widget.setObjectName(f"top_up_{key}")
        self.rows["reason"].hide()
        for edit in (self.volume, self.sugar, self.tea):
            edit.value_changed.connect(self._refresh)
        self.kind.currentIndexChanged.connect(self._refresh)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        title = self.tr("Top up {name} with fresh sweet tea").format(name=self._batch.name)
        column.addWidget(plain_label(title, "heading", wraps=True))
        grid = PairGrid(self)
        grid.add(self.rows["volume_l"], self.rows["sugar_g_per_l"])
        grid.add(self.rows["tea_kind"], self.rows["tea_g_per_l"])
        grid.add(self.rows["temperature_c"], QWidget(self))
        column.addWidget(grid)
        frame, self._facts = card(self)
        self.volume_words = plain_label("", wraps=True)
        self.volume_words.setObjectName("top_up_balance")
        make_strong(self.volume_words)
        self.ph_words = plain_label("", wraps=True)
        self.ph_words.setObjectName("top_up_ph")
        self.sugar_words = plain_label("", wraps=True)
        self.sugar_words.setObjectName("top_up_sugar")
        for label in (self.volume_words, self.ph_words, self.sugar_words):
            self._facts.addWidget(label)
        column.addWidget(frame)
        self._verdicts = QVBoxLayout()
        self._verdicts.setSpacing(SPACE)
        column.addLayout(self._verdicts)
        column.addWidget(self.rows["reason"])
        buttons, self.go = go_and_leave(
            self, self.tr("Pour it in"), self.tr("Cancel"), go_name="top_up_go"
        )
        self.go.clicked.connect(self._on_go)
        column.addWidget(buttons)

    def _fill(self) -> None:
        fresh = self._desk.liquids.fresh_like(self._batch.id)
        self.volume.set_value(fresh.volume_l if fresh.volume_l > 0.0 else None)
        self.sugar.set_value(fresh.sugar_g_per_l)
        self.tea.set_value(fresh.tea_g_per_l)
        choose(self.kind, fresh.tea_kind)
        limit = self._desk.quantities.show(self._batch.culture_limit_c, Kind.TEMPERATURE)
        self.rows["temperature_c"].label.setText(
            self.tr("How warm it is now, at most {limit}").format(limit=limit)
        )
        vessel = self._desk.vessels.get(self._batch.vessel_id)
        room_l = vessel.brim_volume_l - self._desk.liquids.volume_now_l(self._batch.id)
        room = self._desk.quantities.show(max(room_l, 0.0), Kind.VOLUME)
        self.rows["volume_l"].label.setText(
            self.tr("How much sweet tea, room for {room}").format(room=room)
        )
        self._refresh()

    def _wish(self) -> FreshWish | None:
        volume_l, sugar, tea = self.volume.value(), self.sugar.value(), self.tea.value()
        if volume_l is None or sugar is None or tea is None:
            return None
        return FreshWish(
            volume_l=volume_l,
            sugar_g_per_l=sugar,
            tea_kind=self.kind.currentData(),
            tea_g_per_l=tea,
        )

    def _refresh(self) -> None:
        for key in self._flagged:
            self.rows[key].set_problem("")
        self._flagged = set()
        fresh = self._wish()
        if fresh is None:
            self._show(None)
            return
        try:
            preview = self._desk.liquids.preview_top_up(self._batch.id, fresh)
        except ImpossibleInput as problem:
            self._show(None)
            self._flag(problem)
            return
        self._show(preview)

    def _flag(self, problem: ImpossibleInput) -> None:
        """Show what is wrong beside the entry it is about."""
        key = problem.field if problem.field in self.rows else "volume_l"
        self._flagged.add(key)
        self.rows[key].set_problem(impossible_words(problem, self._desk.quantities.show))

    def _show(self, preview: TopUpPreview | None) -> None:
        self._clear_verdicts()
        if preview is None:
            self.volume_words.setText(self.tr("Type an amount to see what it does."))
            self.ph_words.setText("")
            self.sugar_words.setText("")
            return
        show = self._desk.quantities.show
        before_l, after_l = preview.before.volume_l, preview.after.volume_l
        self.volume_words.setText(
            self.tr("{before} + {poured} = {after}, with {sugar} of sugar and {tea} of tea").format(
                before=show(before_l, Kind.VOLUME),
                poured=show(after_l - before_l, Kind.VOLUME),
                after=show(after_l, Kind.VOLUME),
                sugar=show(preview.sugar_g, Kind.MASS),
                tea=show(preview.tea_g, Kind.MASS),
            )
        )
        self.ph_words.setText(self._ph_words(preview))
        self.sugar_words.setText(self._sugar_words(preview))
        for verdict in preview.verdicts:
            self._verdicts.addWidget(VerdictLine(verdict, self, show=show))

    def _ph_words(self, preview: TopUpPreview) -> str:
        before, after = preview.before.ph, preview.after.ph
        if before is None or after is None:
            return self.tr("No pH of it is known, so what it becomes is not known either.")
        return self.tr("pH from about {before} to {after}").format(
            before=number_text(before.value, 2), after=range_words(after, 2)
        )

    def _sugar_words(self, preview: TopUpPreview) -> str:
        before, after = preview.before.sugar_g_per_l, preview.after.sugar_g_per_l
        if before is None or after is None:
            return self.tr("How much sugar is left in it is not known yet.")
        show = self._desk.quantities.show
        return self.tr("Sugar from about {before} to about {after}").format(
            before=show(before.value, Kind.SUGAR), after=show(after.value, Kind.SUGAR)
        )

    def _clear_verdicts(self) -> None:
        while (item := self._verdicts.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()

    def _on_go(self) -> None:
        wrong = [
            edit
            for edit in (self.volume, self.temperature, self.tea, self.sugar)
            if not edit.point_out()
        ]
        if wrong:
            wrong[0].line.setFocus()
            return
        fresh = self._wish()
        if fresh is None:
            return
        try:
            self._desk.liquids.top_up(
                self._batch.id,
                fresh.volume_l,
                fresh.sugar_g_per_l,
                fresh.tea_kind,
                fresh.tea_g_per_l,
                self.temperature.value(),
                self.reason.text(),
            )
        except StepShut as shut:
            self._show_gate(shut)
            return
        except ImpossibleInput as problem:
            self._flag(problem)
            self.rows.get(problem.field, self.rows["volume_l"]).focus_widget.setFocus()
            return
        except StoreTrouble as trouble:
            self.rows["volume_l"].set_problem(trouble_words(trouble))
            return
        self.accept()
        self.topped_up.emit()

    def _show_gate(self, shut: StepShut) -> None:
        """Refuse, and open the written way past it."""
        words = verdict_words(shut.verdict, self._desk.quantities.show)
        row = self.rows["reason"]
        row.show()
        row.set_problem(f"{words.fact} {words.what_to_do}")
        self.temperature.line.setFocus()
