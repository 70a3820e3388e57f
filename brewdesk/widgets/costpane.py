"""What a year's batches cost, and what they saved against the shop."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QStandardPaths, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFileDialog,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.costs import CostsModel
from brewdesk.services.batchcosts import USES_MOST, BatchCost, ShopPrice, YearCost
from brewdesk.services.costtable import cost_table
from brewdesk.services.desk import Desk
from brewdesk.services.money import NotMoney, read_money, show_money
from brewdesk.services.records import ImpossibleInput, Kind, StoreTrouble
from brewdesk.services.wholefile import NotWrittenError, write_whole
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stores import (
    cost_words,
    money_words,
    not_counted_words,
    saving_figure,
)
from brewdesk.widgets.costbars import CostBar, CostLegend
from brewdesk.widgets.fields import FieldRow, announce, card, plain_label
from brewdesk.widgets.figureflow import FigureFlow
from brewdesk.widgets.plainspin import make_plain
from brewdesk.widgets.plaintable import PlainTable
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_ROWS_LEAST, _ROWS_MOST = 3, 8  # before the table scrolls by itself


class CostPane(QScrollArea):
    """Year, shop price, sums, one line a batch, and what is not counted."""

    open_batch = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._is_filling = False
        self._files: QFileDialog | None = None
        self.year_cost: YearCost | None = None
        self.setWidgetResizable(True)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._make_controls()
        self._lay_out()
        self._connect()

    # --- building --------------------------------------------------------------------

    def _make_controls(self) -> None:
        desk = self._desk
        self.year = QComboBox()
        self.year.setObjectName("cost_year")
        self.shop = QLineEdit()
        self.shop.setObjectName("cost_shop")
        self.uses = QSpinBox()
        self.uses.setObjectName("cost_bottle_uses")
        self.uses.setRange(1, USES_MOST)
        self.uses.setSuffix(self.tr(" times"))
        self.uses.setKeyboardTracking(False)
        make_plain(self.uses)
        self.model = CostsModel(desk.clock, desk.quantities, self)
        self.table = PlainTable(self.model, stretched=CostsModel.PARTS)
        self.table.setObjectName("cost_table")
        self.table.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        self.table.setAccessibleName(self.tr("What each batch cost"))
        self.bar = CostBar(self.table)
        self.table.setItemDelegateForColumn(CostsModel.PARTS, self.bar)
        self.legend = CostLegend(self)
        self.figures = FigureFlow(4)
        self.said = plain_label("", "muted", wraps=True)
        self.said.setObjectName("cost_said")
        self.save = QPushButton(self.tr("Save as a table (CSV)…"))
        self.save.setObjectName("cost_save")
        self.none = plain_label(
            self.tr("No batch was begun in this year. Once one is, its cost stands here."),
            "muted",
            wraps=True,
        )

    def _lay_out(self) -> None:
        tr = self.tr
        self.rows = {
            "year": FieldRow(tr("Batches begun in"), self.year, lines=2),
            "shop": FieldRow(tr("A litre in the shop"), self.shop, lines=2),
            "uses": FieldRow(tr("A bottle is filled so often"), self.uses, lines=2),
        }
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        frame, inside = card()
        grid = QGridLayout()
        grid.setHorizontalSpacing(3 * SPACE)
        for number, row in enumerate(self.rows.values()):
            grid.addWidget(row, 0, number)
            grid.setColumnStretch(number, 1)
        inside.addLayout(grid)
        inside.addWidget(self.figures)
        self.summary = plain_label("", "muted", wraps=True)
        self.summary.setObjectName("cost_summary")
        inside.addWidget(self.summary)
        column.addWidget(frame)
        column.addWidget(self.legend)
        column.addWidget(self.none)
        column.addWidget(self.table)
        foot = QHBoxLayout()
        foot.setSpacing(2 * SPACE)
        foot.addWidget(self.save)
        foot.addWidget(self.said, 1)
        column.addLayout(foot)
        column.addWidget(plain_label(not_counted_words(), "muted", wraps=True))
        column.addStretch(1)
        self.setWidget(holder)

    def _connect(self) -> None:
        self.year.currentIndexChanged.connect(self._on_year)
        self.shop.editingFinished.connect(self._on_shop)
        self.uses.valueChanged.connect(self._on_uses)
        self.save.clicked.connect(self._on_save)
        self.table.open_wanted.connect(self._on_open)

    # --- showing ---------------------------------------------------------------------

    def refresh(self) -> None:
        """Work the costs of the chosen year out again."""
        self._is_filling = True
        costs, chosen = self._desk.batch_costs, self.year.currentData()
        self.year.clear()
        for year in costs.years():
            self.year.addItem(str(year), year)
        at = self.year.findData(chosen)
        self.year.setCurrentIndex(max(at, 0))
        if not self.shop.hasFocus():
            self._show_shop()
        self.uses.setValue(costs.bottle_uses())
        self.rows["uses"].set_hint(
            self.tr("An assumption, until you say how often yours last.")
            if costs.are_uses_assumed()
            else self.tr("Each filling costs this share of the bottle.")
        )
        self._is_filling = False
        self._show_year()

    def _show_shop(self) -> None:
        shop = self._desk.batch_costs.shop_price()
        self.shop.setText("" if shop is None else show_money(shop.minor, shop.currency))
        currency = self._desk.batch_costs.currency()
        self.shop.setPlaceholderText(self.tr("type it, in {currency}").format(currency=currency))
        self.rows["shop"].set_problem("")
        self.rows["shop"].set_hint(self.tr("Of the drink that yours takes the place of."))

    def _show_year(self) -> None:
        costs = self._desk.batch_costs
        self.year_cost = year = costs.year(int(self.year.currentData()))
        rows = year.batches
        self.bar.set_scale(rows, _main_currency(rows, costs.currency()))
        self.model.set_rows(rows)
        self.model.refresh()
        self.legend.show_kinds(rows)
        self.none.setVisible(not rows)
        for widget in (self.table, self.legend, self.figures, self.save):
            widget.setVisible(bool(rows))
        self.figures.set_figures(self._figures(year))
        self.summary.setText(self._summary_words(year))
        self.summary.setVisible(bool(rows))
        self._fit()

    def _figures(self, year: YearCost) -> list[tuple[str, str]]:
        show = self._desk.quantities.show
        figures = [
            (cost_words(year.total), self.tr("spent")),
            (show(year.drink_l, Kind.VOLUME), self.tr("drunk or in bottles")),
        ]
        if year.per_litre is not None:
            figures.append((cost_words(year.per_litre), self.tr("a litre")))
        if year.saving is not None:
            figures.append(saving_figure(year.saving))
        return figures

    def _summary_words(self, year: YearCost) -> str:
        words = []
        if year.to_come:
            words.append(
                self.tr(
                    "Of {all} batches, {count} gave nothing to drink yet; what they cost counts "
                    "towards a litre only once some is drawn off."
                ).format(count=year.to_come, all=len(year.batches))
            )
        if not year.total.is_complete:
            count = sum(not row.total.is_complete for row in year.batches)
            words.append(
                self.tr(
                    "Of {all} batches, {count} used something without a known price: sums with "
                    "them are “at least”, savings “at most”."
                ).format(count=count, all=len(year.batches))
            )
        if year.shop is None:
            words.append(self.tr("Type what a litre costs in the shop to see what you saved."))
        elif year.saving is None and year.drink_l:
            words.append(
                self.tr("Not all is paid in {currency}, so nothing is compared.").format(
                    currency=year.shop.currency
                )
            )
        return " ".join(words)

    def _fit(self) -> None:
        rows = max(self.model.rowCount(), _ROWS_LEAST)
        height = self.table.verticalHeader().defaultSectionSize()
        header = self.table.horizontalHeader().sizeHint().height()
        bar = self.table.horizontalScrollBar().sizeHint().height() + 4
        self.table.setMinimumHeight(header + min(rows, _ROWS_MOST) * height + bar)
        self.table.setMaximumHeight(header + rows * height + bar)

    # --- what happens ----------------------------------------------------------------

    def _on_year(self, _index: int) -> None:
        if not self._is_filling:
            self.said.setText("")
            self._show_year()

    def _on_shop(self) -> None:
        costs, text = self._desk.batch_costs, self.shop.text()
        shop = costs.shop_price()
        if shop is not None and text == show_money(shop.minor, shop.currency):
            return
        try:
            if text.strip():
                minor, currency = read_money(text, costs.currency())
                costs.put_shop_price(ShopPrice(minor=minor, currency=currency))
            else:
                costs.put_shop_price(None)
        except NotMoney as problem:
            self.rows["shop"].set_problem(money_words(problem))
        except StoreTrouble as trouble:
            self.rows["shop"].set_problem(trouble_words(trouble))
        else:
            self._show_shop()
            self._show_year()

    def _on_uses(self, uses: int) -> None:
        if self._is_filling:
            return
        try:
            self._desk.batch_costs.put_bottle_uses(uses)
        except ImpossibleInput as problem:
            self.rows["uses"].set_problem(impossible_words(problem))
        except StoreTrouble as trouble:
            self.rows["uses"].set_problem(trouble_words(trouble))
        else:
            self.refresh()

    def _on_open(self) -> None:
        row = self.model.row_at(self.table.currentIndex())
        if row is not None:
            self.open_batch.emit(row.batch.id)

    def _on_save(self) -> None:
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._files = QFileDialog(self, self.tr("Save the costs as a table"), folder)
        self._files.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        self._files.setNameFilter(self.tr("Tables (*.csv)"))
        self._files.setDefaultSuffix("csv")
        self._files.selectFile(self.tr("costs-{year}.csv").format(year=self.year.currentText()))
        self._files.fileSelected.connect(self.save_table)
        self._files.finished.connect(self._files.deleteLater)
        self._files.open()

    def save_table(self, path: str) -> None:
        """Write the year's costs to ``path`` and say how that went."""
        if self.year_cost is None:
            return
        name = Path(path).name
        try:
            write_whole(Path(path), cost_table(self.year_cost, self._desk.clock.zone()))
        except NotWrittenError:
            words = self.tr("{file} could not be written. Choose another folder.")
            set_role(self.said, "error")
        else:
            words = self.tr("Saved as {file}")
            set_role(self.said, "muted")
        self.said.setText(words.format(file=name))
        announce(self.said, self.said.text())


def _main_currency(rows: tuple[BatchCost, ...], usual: str) -> str:
    """Return the currency that the bars are drawn in: the usual one, or the only other."""
    found = {currency for row in rows for currency, _ in row.total.known}
    return usual if usual in found or not found else min(found)
