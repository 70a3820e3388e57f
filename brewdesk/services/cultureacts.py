"""What every act on a culture begins with: is it here, grown, at rest; since when it is gone."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING, Any

from brewdesk.services.cultures import GONE
from brewdesk.services.door import Door
from brewdesk.services.settings import Settings
from brewdesk.store.records import Culture
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, CultureState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

NOT_BEGUN = (BatchStage.PLANNED, BatchStage.BREWING)


class CultureActs:
    """Look a culture up for an act, or refuse."""

    def __init__(self, door: Door, settings: Settings) -> None:
        self._door = door
        self._settings = settings

    def get_usable(self, culture_id: int) -> Culture:
        """Return a culture that may be used: here, grown, and under no suspicion.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone", "forming" or "suspect".
        """
        culture = self._get_living(culture_id)
        if culture.suspect_at is not None:
            raise ImpossibleInput("culture_id", culture_id, reason="suspect")
        return culture

    def _get_here(self, culture_id: int) -> Culture:
        with self._door.store.read() as unit:
            culture = unit.cultures.get(culture_id)
        if culture.state in GONE:
            raise ImpossibleInput("culture_id", culture_id, reason="gone")
        return culture

    def _get_living(self, culture_id: int) -> Culture:
        culture = self._get_here(culture_id)
        if culture.state is CultureState.FORMING:
            raise ImpossibleInput("culture_id", culture_id, reason="forming")
        return culture

    def _get_resting(self, culture_id: int) -> Culture:
        culture = self._get_here(culture_id)
        if culture.state is not CultureState.RESTING:
            raise ImpossibleInput("culture_id", culture_id, reason="not_resting")
        return culture

    def _moment(self, culture: Culture, at: datetime | None) -> datetime:
        now = self._door.clock.now()
        moment = at or now
        if moment > now:
            raise ImpossibleInput("at", moment, reason="in_future")
        if moment < culture.born_at:
            raise ImpossibleInput("at", moment, reason="before_birth")
        return moment


def gone_fields(state: CultureState, now: datetime, to: str) -> dict[str, Any]:
    """Return the columns of a culture that is here no more."""
    return {
        "state": state,
        "vessel_id": None,
        "rest_volume_l": None,
        "gone_at": now,
        "gone_to": to,
    }


def check_not_planned(unit: ReadUnit, culture: Culture) -> None:
    """Refuse what a plan still waits for.

    Raises
    ------
    ImpossibleInput
        Field "culture_id" with reason "planned".
    """
    for batch in unit.batches.where(culture_id=culture.id, stage=NOT_BEGUN):
        raise ImpossibleInput("culture_id", batch.name, reason="planned")
