"""What is done with a culture: split, merged, put to rest, fed, looked at, given away, lost."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from brewdesk.services import suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.cultureacts import NOT_BEGUN, check_not_planned, gone_fields
from brewdesk.services.culturedividing import CultureDividing
from brewdesk.services.culturerest import CultureRest
from brewdesk.services.suspicion import Contact
from brewdesk.store.records import Culture
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, CultureState, StepKind, StepState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

TO_HIGH = 200  # letters of to whom a culture was given


class CultureCare(CultureDividing, CultureRest):
    """Every act on a culture but adding and correcting it."""

    # it leaves

    def give_away(self, culture_id: int, to: str = "") -> Culture:
        """Give a culture away; it is in no vessel any more.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone", "forming", "suspect" or "planned";
            "to" with reason "too_long".
        """
        words = " ".join(to.split())
        if len(words) > TO_HIGH:
            raise ImpossibleInput("to", words, high=TO_HIGH, reason="too_long")
        culture = self.get_usable(culture_id)
        fields = gone_fields(CultureState.GIVEN_AWAY, self._door.clock.now(), words)
        return self._leave(ActKind.GIVE_CULTURE, culture, fields, {"to": words})

    def retire(self, culture_id: int) -> Culture:
        """Stop keeping a culture, for no bad reason.

        Raises
        ------
        ImpossibleInput
            Field "culture_id" with reason "gone", "forming" or "planned".
        """
        culture = self._get_living(culture_id)
        fields = gone_fields(CultureState.RETIRED, self._door.clock.now(), "")
        return self._leave(ActKind.RETIRE_CULTURE, culture, fields, {})

    def lose(self, culture_id: int, reason: str, *, flag: bool = True) -> tuple[Contact, ...]:
        """Mark a culture as lost, and everything that shared liquid with it as doubtful.

        ``flag`` is for mold and what else may spread; without it nothing else is touched.
        A batch that was to be brewed with it goes on without. Return what was flagged.

        Raises
        ------
        ImpossibleInput
            Field "reason" with reason "empty"; "culture_id" with reason "gone".
        """
        words = reason.strip()
        if not words:
            raise ImpossibleInput("reason", reason, reason="empty")
        culture = self._get_here(culture_id)
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> tuple[Contact, ...]:
            flagged: tuple[Contact, ...] = ()
            if flag:
                flagged = suspicion.flag_contacts(
                    unit, suspicion.CULTURE, culture_id, culture.name, words, now
                )
            _take_out_of_plans(unit, culture)
            unit.cultures.change(culture_id, **suspicion.lost_fields(words, now))
            return flagged

        return self._door.perform(
            ActKind.LOSE_CULTURE,
            lambda flagged: {
                "name": culture.name,
                "reason": words,
                "flagged": [contact.name for contact in flagged],
            },
            work,
            topics=Topic.CULTURES | Topic.BATCHES,
            vessel_id=culture.vessel_id,
            culture_id=culture_id,
        )

    def clear_suspicion(
        self, *, culture_id: int | None = None, batch_id: int | None = None, reason: str
    ) -> None:
        """Take a culture or a batch out of suspicion, as `suspicion.Suspicion.clear`."""
        suspicion.Suspicion(self._door).clear(
            culture_id=culture_id, batch_id=batch_id, reason=reason
        )

    # within

    def _leave(
        self, kind: ActKind, culture: Culture, fields: dict[str, Any], facts: dict[str, object]
    ) -> Culture:
        with self._door.store.read() as unit:
            check_not_planned(unit, culture)
        return self._door.perform(
            kind,
            {"name": culture.name} | facts,
            lambda unit: unit.cultures.change(culture.id, **fields),
            topics=Topic.CULTURES,
            vessel_id=culture.vessel_id,
            culture_id=culture.id,
        )


def _take_out_of_plans(unit: UnitOfWork, culture: Culture) -> None:
    """Let what was to be brewed with a lost culture go on without it."""
    for batch in unit.batches.where(culture_id=culture.id, stage=NOT_BEGUN):
        waiting = unit.steps.where(
            batch_id=batch.id, kind=StepKind.CULTURE_IN, state=StepState.WAITING
        )
        if batch.stage is BatchStage.BREWING and not waiting:
            continue  # it is in already
        for step in waiting:
            unit.steps.remove(step.id)
        unit.batches.change(batch.id, culture_id=None)
