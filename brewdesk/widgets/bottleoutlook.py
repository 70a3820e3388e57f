"""What a bottling comes to, kept live: the right half of the bottle page."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtWidgets import QFrame, QGridLayout, QVBoxLayout, QWidget

from brewdesk.services.bottlingwish import BottlingOutlook, GroupOutlook
from brewdesk.services.desk import Desk
from brewdesk.services.records import Kind, Level
from brewdesk.services.wording.amounts import number_text
from brewdesk.services.wording.bottlings import bar_words, days_words, volumes_words
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import card, make_strong, plain_label
from brewdesk.widgets.figurerow import FigureRow
from brewdesk.widgets.fizzplot import FizzPlot, FizzSpec
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard, VerdictLine

_WORTH_SAYING_L = 0.05  # less than that is a sip
_LEAST_DAYS, _MOST_DAYS = 7.0, 21.0


class BottleOutlook(QFrame):
    """Figures, picture, words and verdicts of a `BottlingOutlook`."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._outlook: BottlingOutlook | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2 * SPACE)
        self.state = plain_label("", "muted", self, wraps=True)
        self.state.setObjectName("outlook_state")
        frame, inner = card(self)
        self.figures = FigureRow(2, self)
        self.more_figures = FigureRow(2, self)
        self.plot = FizzPlot(self)
        self.summary = plain_label("", "", self, wraps=True)
        self.summary.setObjectName("outlook_summary")
        inner.addWidget(self.figures)
        inner.addWidget(self.more_figures)
        inner.addWidget(self.plot)
        inner.addWidget(self.summary)
        self._frame = frame
        table, rows = card(self)
        rows.addWidget(plain_label(self.tr("By the bottle"), "heading", self))
        self._table = QGridLayout()
        self._table.setHorizontalSpacing(2 * SPACE)
        rows.addLayout(self._table)
        self.fits = plain_label("", "muted", self, wraps=True)
        rows.addWidget(self.fits)
        self._by_bottle = table
        self._said = QVBoxLayout()
        self._said.setSpacing(SPACE)
        column.addWidget(self.state)
        column.addLayout(self._said)
        column.addWidget(frame)
        column.addWidget(table)
        self._notes = QVBoxLayout()
        self._notes.setSpacing(SPACE)
        column.addLayout(self._notes)
        column.addStretch(1)
        self.show_nothing("")

    def outlook(self) -> BottlingOutlook | None:
        """Return what is shown."""
        return self._outlook

    def show_nothing(self, words: str) -> None:
        """Show nothing but ``words``."""
        self._outlook = None
        self.state.setText(words)
        self.state.setVisible(bool(words))
        self._frame.hide()
        self._by_bottle.hide()
        _clear(self._said)
        _clear(self._notes)

    def show_stale(self, words: str) -> None:
        """Say that what is shown does not fit the entries any more."""
        self.state.setText(words)
        self.state.show()

    def show_outlook(self, outlook: BottlingOutlook) -> None:
        """Show ``outlook``."""
        if outlook == self._outlook:
            self.state.hide()
            return
        self._outlook = outlook
        self.state.hide()
        self._frame.show()
        self._by_bottle.show()
        self._show_figures(outlook)
        self._show_plot(outlook)
        self._show_table(outlook)
        self._show_verdicts(outlook)

    def _show_figures(self, outlook: BottlingOutlook) -> None:
        tr = self.tr
        first = outlook.groups[0]
        sugar = tr("{grams} g").format(grams=number_text(first.sugar_per_bottle_g, 1))
        caption = tr("sugar a bottle")
        if first.sugar_measure:
            caption = tr("sugar a bottle: {measure}").format(measure=first.sugar_measure)
        if outlook.priming_sugar_g <= 0.0:
            sugar, caption = tr("no sugar"), tr("to add: the drink has enough")
        alcohol = tr("+ {low} to {high} %").format(
            low=number_text(outlook.ethanol_gained_abv.low, 1),
            high=number_text(outlook.ethanol_gained_abv.high, 1),
        )
        target = outlook.days_to_target
        fizzy = tr("never") if target is None else days_words(target.low, target.high)
        self.figures.set_figures(
            [
                (sugar, caption),
                (self._chill_words(outlook.chill_by_at), tr("chill by, at the latest")),
            ]
        )
        self.more_figures.set_figures(
            [
                (fizzy, tr("until it is as fizzy as that")),
                (alcohol, tr("alcohol by volume, made in the bottle")),
            ]
        )

    def _chill_words(self, at: datetime | None) -> str:
        if at is None:
            return self.tr("no deadline")
        return stamp_words(at, self._desk.clock.zone())

    def _show_plot(self, outlook: BottlingOutlook) -> None:
        worst = outlook.worst
        words = self._summary(outlook, worst)
        self.summary.setText(words)
        self.plot.set_spec(spec_of_outlook(outlook, self.tr("chill by")), words)

    def _summary(self, outlook: BottlingOutlook, worst: GroupOutlook) -> str:
        tr, zone = self.tr, self._desk.clock.zone()
        parts = []
        if outlook.chill_by_at is None or outlook.chill_likely_at is None:
            parts.append(
                tr("With this much sugar the bottles are not reckoned to reach their limit.")
            )
        else:
            parts.append(
                tr(
                    "Chill by {moment}: from then on one bottling in twenty may have passed "
                    "{limit} on a warm day. More likely that would take until {likely}; feel the "
                    "test bottle to know."
                ).format(
                    moment=stamp_words(outlook.chill_by_at, zone),
                    limit=bar_words(worst.ceiling_bar or 0.0),
                    likely=stamp_words(outlook.chill_likely_at, zone),
                )
            )
        top = outlook.all_sugar.air_trapped_bar
        told = tr("over 8 bar") if top is None else bar_words(top, is_high=True)
        parts.append(
            tr(
                "If nobody chilled and all the sugar fermented: {pressure} at the warmest, and "
                "{alcohol} % more alcohol."
            ).format(pressure=told, alcohol=number_text(outlook.ethanol_all_sugar_abv, 1))
        )
        low, high = outlook.residual_sugar_g_per_l
        show = self._desk.quantities.show
        parts.append(
            tr("Reckoned with {low} to {high} of sugar left in the drink.").format(
                low=show(low, Kind.SUGAR), high=show(high, Kind.SUGAR)
            )
        )
        return " ".join(parts).replace("g/L", "g/\u2060L")  # a unit is not broken

    def _show_table(self, outlook: BottlingOutlook) -> None:
        _clear_grid(self._table)
        tr = self.tr
        for column, words in enumerate((tr("Bottles"), tr("Sugar"), tr("Spoons"), tr("Limit"))):
            self._table.addWidget(plain_label(words, "label", self), 0, column)
        for line, group in enumerate(outlook.groups, start=1):
            name = tr("{count} × {volume}, {kind}").format(
                count=group.group.bottle_count,
                volume=self._desk.quantities.show(group.group.brim_volume_l, Kind.VOLUME),
                kind=name_of(group.group.kind),
            )
            if group.group.is_test:
                name = tr("{name} (test)").format(name=name)
            limit = tr("none") if group.ceiling_bar is None else bar_words(group.ceiling_bar)
            if group.ceiling_is_assumed:
                limit = tr("{limit}, assumed").format(limit=limit)
            cells = (
                name,
                tr("{grams} g").format(grams=number_text(group.sugar_per_bottle_g, 1)),
                group.sugar_measure or "–",
                limit,
            )
            for column, words in enumerate(cells):
                label = plain_label(words, "", self, wraps=column in (0, 3))
                if column == 1:
                    make_strong(label)
                self._table.addWidget(label, line, column)
        self._table.setColumnStretch(0, 3)
        self._table.setColumnStretch(3, 2)
        self.fits.setText(self._fit_words(outlook))

    def _fit_words(self, outlook: BottlingOutlook) -> str:
        show, tr = self._desk.quantities.show, self.tr
        words = [
            tr("{drink} of drink, room for {room}.").format(
                drink=show(outlook.drink_volume_l, Kind.VOLUME),
                room=show(outlook.capacity_l, Kind.VOLUME),
            )
        ]
        if outlook.left_over_l >= _WORTH_SAYING_L:
            words.append(
                tr("{left} is left over; {count} more of the first kind would take it.").format(
                    left=show(outlook.left_over_l, Kind.VOLUME), count=outlook.bottles_needed
                )
            )
        elif outlook.spare_bottles:
            words.append(tr("{count} would stay empty.").format(count=outlook.spare_bottles))
        words.append(
            tr("Sugar in all: {grams} g, {fizz} wanted.").format(
                grams=number_text(outlook.priming_sugar_g, 1),
                fizz=volumes_words(outlook.wish.target_volumes),
            )
        )
        return " ".join(words)

    def _show_verdicts(self, outlook: BottlingOutlook) -> None:
        _clear(self._said)
        _clear(self._notes)
        show = self._desk.quantities.show
        for verdict in outlook.verdicts:
            if verdict.level is Level.STOP:
                self._said.addWidget(VerdictCard(verdict, self, show=show))
        if outlook.remedies:
            frame, column = card(self)
            frame.setObjectName("outlook_remedies")
            column.addWidget(plain_label(self.tr("What would help"), "heading", self))
            for remedy in outlook.remedies:
                column.addWidget(plain_label(f"•  {remedy}", "", self, wraps=True))
            self._said.addWidget(frame)
        for verdict in outlook.verdicts:
            if verdict.level is Level.WARN:
                self._notes.addWidget(VerdictCard(verdict, self, show=show))
        for verdict in outlook.verdicts:
            if verdict.level is Level.INFORM:
                self._notes.addWidget(VerdictLine(verdict, self, show=show))


def spec_of_outlook(outlook: BottlingOutlook, chill: str) -> FizzSpec:
    """Return the picture of an outlook: the kind of bottles that is in danger first."""
    worst = outlook.worst
    curve = worst.course.gauge_bar
    by_day = worst.course.over_ceiling_day
    wanted = _LEAST_DAYS if by_day is None else 2.0 * by_day.value
    last_day = min(max(wanted, _LEAST_DAYS), _MOST_DAYS)
    return FizzSpec(
        days=curve.days,
        low=curve.low,
        likely=curve.likely,
        high=curve.high,
        last_day=last_day,
        ceiling_bar=worst.ceiling_bar,
        ceiling_words="" if worst.ceiling_bar is None else bar_words(worst.ceiling_bar),
        chill_by_day=worst.course.chill_by_day,
        chill_words=chill,
    )


def _clear(layout: QVBoxLayout) -> None:
    while (item := layout.takeAt(0)) is not None:
        old = item.widget()
        if old is not None:
            old.hide()
            old.deleteLater()


def _clear_grid(layout: QGridLayout) -> None:
    while (item := layout.takeAt(0)) is not None:
        old = item.widget()
        if old is not None:
            old.hide()
            old.deleteLater()
