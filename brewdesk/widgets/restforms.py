"""A culture at rest: put to rest, moved, fed, topped up."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Culture, Kind
from brewdesk.services.settings import CULTURE_LIMIT_C, REST_FEED_DAYS
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.quantityedit import QuantityEdit

FEED_SUGAR_G_PER_L = 50.0  # as in a usual batch; the maker may enter any other


class RestDialog(CareDialog):
    """Put a culture to rest in ripe kombucha."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Put {name} to rest").format(name=culture.name),
            self.tr("Put it to rest"),
            name="rest",
            parent=parent,
        )
        self._culture = culture
        days = round(desk.settings.get(REST_FEED_DAYS))
        self.add_words(
            self.tr(
                "In ripe, unflavoured kombucha that covers it, under cloth, a culture keeps for "
                "weeks. You are reminded to feed it every {days} days; the settings change that."
            ).format(days=days)
        )
        here = culture.vessel_id
        self.vessel = self.add_vessels("vessel_id", self.tr("In"), here, may_be_none=False)
        if self.vessel.count() == 0:
            self.refuse("vessel_id", self.tr("No vessel is free. Put another on the shelf first."))
        self.volume = QuantityEdit(desk.quantities, Kind.VOLUME, lines=1)
        self.volume.set_value(culture.rest_volume_l)
        self.add_row("volume_l", self.tr("In how much ripe kombucha"), self.volume)

    def act(self) -> object:
        """Put it to rest."""
        return self._desk.culture_care.rest(
            self._culture.id, int(self.vessel.currentData() or 0), self.volume.value() or 0.0
        )


class MoveDialog(CareDialog):
    """Put a culture into another vessel, with what it rests in."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Move {name}").format(name=culture.name),
            self.tr("Move it"),
            name="move",
            parent=parent,
        )
        self._culture = culture
        self.add_words(
            self.tr("What it rests in goes along. Into a batch it goes by planning one.")
        )
        self.vessel = self.add_vessels("vessel_id", self.tr("To"), None, may_be_none=True)

    def act(self) -> object:
        """Move it."""
        return self._desk.culture_care.move(self._culture.id, self.vessel.currentData())


class FeedDialog(CareDialog):
    """Give a resting culture fresh sweet tea."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Feed {name}").format(name=culture.name),
            self.tr("Note the feeding"),
            name="feed",
            parent=parent,
        )
        self._culture = culture
        limit = desk.quantities.show(desk.settings.get(CULTURE_LIMIT_C), Kind.TEMPERATURE)
        self.add_words(
            self.tr(
                "Look for mold first. Pour in a little fresh sweet tea that has cooled to {limit} "
                "or below; hot tea kills the culture. Take some of the old liquid out if the jar "
                "gets too full."
            ).format(limit=limit)
        )
        self.volume = QuantityEdit(desk.quantities, Kind.VOLUME, lines=1)
        self.add_row("volume_l", self.tr("Sweet tea"), self.volume)
        self.sugar = QuantityEdit(desk.quantities, Kind.MASS, lines=1)
        self.add_row("sugar_g", self.tr("Sugar in it"), self.sugar)
        self.volume.value_changed.connect(self._on_volume)

    def _on_volume(self, volume_l: float | None) -> None:
        if not self.sugar.is_touched():
            self.sugar.set_value(None if volume_l is None else volume_l * FEED_SUGAR_G_PER_L)

    def act(self) -> object:
        """Note the feeding."""
        return self._desk.culture_care.feed(
            self._culture.id, self.volume.value() or 0.0, self.sugar.value() or 0.0
        )


class TopUpDialog(CareDialog):
    """Make good what has evaporated."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Top up {name}").format(name=culture.name),
            self.tr("Note the topping up"),
            name="top_up",
            parent=parent,
        )
        self._culture = culture
        self.add_words(
            self.tr("Use ripe, unflavoured kombucha, so that the pellicle stays covered and sour.")
        )
        self.volume = QuantityEdit(desk.quantities, Kind.VOLUME, lines=1)
        self.add_row("volume_l", self.tr("How much"), self.volume)
        liquid = desk.culture_care.resting_liquid(culture.id)
        if liquid is not None:
            lost, show = liquid.evaporated_l, desk.quantities.show
            self.add_words(
                self.tr(
                    "A guess without measuring: between {low} and {high} may have evaporated "
                    "since it was last noted."
                ).format(low=show(lost.low, Kind.VOLUME), high=show(lost.high, Kind.VOLUME))
            )

    def act(self) -> object:
        """Note the topping up."""
        return self._desk.culture_care.top_up(self._culture.id, self.volume.value() or 0.0)
