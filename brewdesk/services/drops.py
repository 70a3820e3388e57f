"""What may be carried where: one rule book for dragging, menus, keys and clicks.

Pure functions over a frozen picture of the shelf, cheap enough to ask at every movement of
the mouse. The services check again when it is done.
"""

from __future__ import annotations

from brewdesk.services.dropfacts import Carried as Carried
from brewdesk.services.dropfacts import CarriedKind as CarriedKind
from brewdesk.services.dropfacts import Choice as Choice
from brewdesk.services.dropfacts import ChoiceKind as ChoiceKind
from brewdesk.services.dropfacts import Drop as Drop
from brewdesk.services.dropfacts import JarFacts as JarFacts
from brewdesk.services.dropfacts import ShelfFacts as ShelfFacts
from brewdesk.services.dropfacts import Target as Target
from brewdesk.services.dropfacts import Tray as Tray
from brewdesk.services.ledger import DROP_L
from brewdesk.store.records import Batch, Culture
from culturecore import safety
from culturecore.outcome import Level, Verdict
from culturecore.stages import BatchStage, CultureState, StepKind


def choices(facts: ShelfFacts, carried: Carried, target: Target) -> Drop:
    """Return what can be done with ``carried`` at ``target``, or the reason against it."""
    if carried.kind is CarriedKind.CULTURE:
        return _CultureDrop(facts, carried, target).drop()
    return _BatchDrop(facts, carried, target).drop()


def can_be_carried(facts: ShelfFacts, carried: Carried) -> Drop:
    """Return whether something may be picked up at all; the refusal says why not.

    The choices are none: what can be done depends on the target.
    """
    if carried.kind is CarriedKind.CULTURE:
        return _CultureDrop(facts, carried, Target()).pick_up()
    return _BatchDrop(facts, carried, Target()).pick_up()


def targets_for(facts: ShelfFacts, carried: Carried) -> dict[int, Drop]:
    """Return what can be done at each vessel, by its id."""
    return {
        vessel_id: choices(facts, carried, Target(vessel_id=vessel_id)) for vessel_id in facts.jars
    }


class _AnyDrop:
    def __init__(self, facts: ShelfFacts, carried: Carried, target: Target) -> None:
        self._facts = facts
        self._carried = carried
        self._target = target
        self._jar = facts.jars.get(target.vessel_id) if target.vessel_id is not None else None
        self._names = {"carried": "", "target": "", "other": ""}
        if self._jar is not None:
            self._names["target"] = self._jar.vessel.name
            if self._jar.batch is not None:
                self._names["other"] = self._jar.batch.name

    def _refuse(self, code: str, **numbers: float) -> Drop:
        return Drop(refusal=Verdict(f"drop_{code}", Level.STOP, numbers), names=self._names)

    def _allow(self, *found: Choice | None) -> Drop:
        return Drop(
            choices=tuple(choice for choice in found if choice is not None), names=self._names
        )

    def _make(self, kind: ChoiceKind, **fields: object) -> Choice:
        given = {"kind": kind, "carried": self._carried, "target": self._target}
        return Choice(**(given | fields))  # type: ignore[arg-type]  # fields of Choice, by name

    def _vessel_refusal(self, jar: JarFacts) -> Drop | None:
        """Refuse a vessel that nothing may go into."""
        if jar.vessel.retired_at is not None:
            return self._refuse("retired")
        material = safety.material_verdict(jar.vessel.material)
        if material.level is Level.STOP:
            return Drop(refusal=material, names=self._names)
        flagged = [culture for culture in jar.resting if culture.suspect_at is not None]
        if flagged or (jar.batch is not None and jar.batch.suspect_at is not None):
            if flagged:
                self._names["other"] = flagged[0].name
            return self._refuse("target_suspect")
        return None

    def _room_l(self, jar: JarFacts) -> float:
        in_it_l = jar.now_l
        if jar.batch is None or not jar.batch.stage.is_live:
            in_it_l = sum(self._facts.resting_l.get(culture.id, 0.0) for culture in jar.resting)
        return max(jar.vessel.brim_volume_l - in_it_l, 0.0)

    def _lend(self, jar: JarFacts, **source: object) -> Choice:
        plan = jar.batch
        wanted_l = plan.starter_volume_l if plan is not None else None
        most_l = source["most_l"]
        assert isinstance(most_l, float)
        usual_l = wanted_l if wanted_l is not None else 0.1 * jar.vessel.working_volume_l
        return self._make(
            ChoiceKind.LEND,
            to_batch_id=plan.id if plan is not None else None,
            **(source | {"usual_l": min(usual_l, most_l)}),
        )


class _CultureDrop(_AnyDrop):
    """A culture: from a souring jar, a resting store, or from nowhere in particular."""

    def __init__(self, facts: ShelfFacts, carried: Carried, target: Target) -> None:
        super().__init__(facts, carried, target)
        self._culture = facts.cultures.get(carried.id)
        if self._culture is not None:
            self._names["carried"] = self._culture.name

    def pick_up(self) -> Drop:
        culture = self._culture
        if culture is None:
            return self._refuse("gone")
        if culture.suspect_at is not None:
            return self._refuse("carried_suspect")
        if culture.state is CultureState.FORMING:
            return self._refuse("forming")
        return self._allow()

    def drop(self) -> Drop:
        refused = self.pick_up()
        culture = self._culture
        if refused.refusal is not None or culture is None:
            return refused
        if self._target.tray is Tray.BOTTLES:
            return self._refuse("culture_no_drink")
        if self._target.tray is Tray.RESTING:
            return self._to_rest(culture)
        if self._jar is None:
            return self._refuse("no_target")
        return self._to_jar(culture, self._jar)

    def _to_rest(self, culture: Culture) -> Drop:
        if culture.state is CultureState.AT_WORK:
            return self._refuse("at_work")
        if culture.vessel_id is not None and culture.rest_volume_l is not None:
            return self._refuse("rests_already")
        vessel_ids = tuple(
            vessel_id
            for vessel_id, jar in self._facts.jars.items()
            if (jar.batch is None or not jar.batch.stage.is_live)
            and self._vessel_refusal(jar) is None
        )
        if not vessel_ids:
            return self._refuse("no_vessel_free")
        usual_l = 0.5  # enough to cover a pellicle in a small jar; common practice, no source
        return self._allow(
            self._make(ChoiceKind.REST, vessel_ids=vessel_ids, usual_l=usual_l, most_l=1000.0)
        )

    def _to_jar(self, culture: Culture, jar: JarFacts) -> Drop:
        if culture.vessel_id == jar.vessel.id:
            return self._at_home(culture, jar)
        refused = self._vessel_refusal(jar)
        if refused is not None:
            return refused
        batch = jar.batch if jar.batch is not None and jar.batch.stage.is_live else None
        if batch is None:
            return self._allow(
                self._make(ChoiceKind.MOVE_CULTURE),
                self._make(ChoiceKind.SPLIT_CULTURE),
                self._loan(culture, jar) if not jar.resting else None,
            )
        if batch.stage is BatchStage.SOURING:
            return self._refuse("occupied")
        if batch.stage is BatchStage.BREWING:
            return self._into_brew(culture, jar, batch)
        use = None
        if culture.id != batch.culture_id and culture.state is CultureState.RESTING:
            use = self._make(ChoiceKind.USE_IN_PLAN, to_batch_id=batch.id)
        found = self._allow(use, self._loan(culture, jar))
        return found if found.is_allowed else self._refuse("planned_with_it")

    def _at_home(self, culture: Culture, jar: JarFacts) -> Drop:
        batch = jar.batch
        if batch is not None and batch.stage is BatchStage.BREWING:
            return self._into_brew(culture, jar, batch)
        return self._refuse("same_place")

    def _into_brew(self, culture: Culture, jar: JarFacts, batch: Batch) -> Drop:
        if jar.heat is not None:
            return self._too_hot(jar.heat)
        if batch.culture_id != culture.id:
            return self._refuse("brewed_for_another")
        if jar.open_step is None or jar.open_step[1] is not StepKind.CULTURE_IN:
            return self._refuse("starter_first")
        return self._allow(
            self._make(ChoiceKind.PUT_IN, to_batch_id=batch.id, step_id=jar.open_step[0])
        )

    def _too_hot(self, heat: Verdict) -> Drop:
        return Drop(refusal=heat, names=self._names)

    def _loan(self, culture: Culture, jar: JarFacts) -> Choice | None:
        """Lend of what the culture rests in, or of the batch it is at work in."""
        if culture.state is CultureState.RESTING:
            there_l = self._facts.resting_l.get(culture.id, 0.0)
            if culture.vessel_id is None or there_l < DROP_L:
                return None
            return self._lend(jar, from_culture_id=culture.id, most_l=there_l)
        home = self._facts.jars.get(culture.vessel_id or 0)
        batch = home.batch if home is not None else None
        if home is None or batch is None or batch.stage is not BatchStage.SOURING:
            return None
        if batch.suspect_at is not None or home.now_l < 2 * DROP_L:
            return None
        return self._lend(jar, from_batch_id=batch.id, most_l=home.now_l)


class _BatchDrop(_AnyDrop):
    """A batch, carried by its jar."""

    def __init__(self, facts: ShelfFacts, carried: Carried, target: Target) -> None:
        super().__init__(facts, carried, target)
        self._home = facts.jar_of_batch(carried.id)
        self._batch = self._home.batch if self._home is not None else None
        if self._batch is not None:
            self._names["carried"] = self._batch.name

    def pick_up(self) -> Drop:
        batch = self._batch
        if batch is None:
            return self._refuse("gone")
        if batch.suspect_at is not None:
            return self._refuse("carried_suspect")
        if batch.stage is BatchStage.PLANNED:
            return self._refuse("not_brewed_yet")
        if batch.stage is BatchStage.BREWING:
            return self._refuse("still_brewing")
        if self._home is None or self._home.now_l < DROP_L:
            return self._refuse("nothing_left")
        return self._allow()

    def drop(self) -> Drop:
        refused = self.pick_up()
        batch, home = self._batch, self._home
        if refused.refusal is not None or batch is None or home is None:
            return refused
        if self._target.tray is Tray.BOTTLES:
            return self._allow(
                self._make(ChoiceKind.FILL_BOTTLES, from_batch_id=batch.id),
                self._make(
                    ChoiceKind.DRAW_PART,
                    from_batch_id=batch.id,
                    most_l=home.now_l,
                    usual_l=0.5 * home.now_l,
                ),
                self._make(ChoiceKind.DRAW_OFF, from_batch_id=batch.id),
            )
        if self._target.tray is Tray.RESTING:
            return self._to_stores(batch, home)
        if self._jar is None:
            return self._refuse("no_target")
        return self._to_jar(batch, home, self._jar)

    def _to_stores(self, batch: Batch, home: JarFacts) -> Drop:
        store_ids = tuple(
            culture.id
            for jar in self._facts.jars.values()
            for culture in jar.resting
            if culture.suspect_at is None and self._room_l(jar) >= DROP_L
        )
        if not store_ids:
            return self._refuse("no_store")
        return self._allow(self._keep(batch, home, store_ids, home.now_l))

    def _to_jar(self, batch: Batch, home: JarFacts, jar: JarFacts) -> Drop:
        if jar.vessel.id == home.vessel.id:
            return self._refuse("same_place")
        refused = self._vessel_refusal(jar)
        if refused is not None:
            return refused
        there = jar.batch if jar.batch is not None and jar.batch.stage.is_live else None
        if there is None and jar.resting:
            if self._room_l(jar) < DROP_L:
                return self._refuse("no_room")
            ids = tuple(culture.id for culture in jar.resting)
            return self._allow(self._keep(batch, home, ids, min(home.now_l, self._room_l(jar))))
        if there is None:
            return self._into_empty(batch, home, jar)
        if there.stage is BatchStage.BREWING:
            return self._refuse("tea_not_ready") if jar.heat is None else self._hot(jar.heat)
        if there.stage is BatchStage.PLANNED:
            return self._allow(self._lend(jar, from_batch_id=batch.id, most_l=home.now_l))
        return self._into_souring(batch, home, jar, there)

    def _hot(self, heat: Verdict) -> Drop:
        return Drop(refusal=heat, names=self._names)

    def _into_empty(self, batch: Batch, home: JarFacts, jar: JarFacts) -> Drop:
        over = None
        if home.now_l <= jar.vessel.brim_volume_l:
            over = self._make(ChoiceKind.POUR_OVER, from_batch_id=batch.id)
        return self._allow(over, self._lend(jar, from_batch_id=batch.id, most_l=home.now_l))

    def _into_souring(self, batch: Batch, home: JarFacts, jar: JarFacts, there: Batch) -> Drop:
        room_l = self._room_l(jar)
        if room_l < DROP_L:
            return self._refuse("no_room")
        ids = {batch.culture_id, there.culture_id} - {None}
        may_join = len(ids) > 1 and all(self._is_at_work(culture_id) for culture_id in ids)
        whole = None
        if home.now_l <= room_l:
            whole = self._make(
                ChoiceKind.MERGE_ALL,
                from_batch_id=batch.id,
                to_batch_id=there.id,
                may_join_cultures=may_join,
            )
        most_l = min(home.now_l, room_l)
        part = self._make(
            ChoiceKind.MERGE_PART,
            from_batch_id=batch.id,
            to_batch_id=there.id,
            most_l=most_l,
            usual_l=0.5 * most_l,
        )
        return self._allow(whole, part)

    def _is_at_work(self, culture_id: int | None) -> bool:
        culture = self._facts.cultures.get(culture_id or 0)
        return culture is not None and culture.state is CultureState.AT_WORK

    def _keep(
        self, batch: Batch, home: JarFacts, store_ids: tuple[int, ...], most_l: float
    ) -> Choice:
        wanted_l = self._facts.starter_l or 0.1 * home.now_l
        return self._make(
            ChoiceKind.KEEP,
            from_batch_id=batch.id,
            store_ids=store_ids,
            most_l=most_l,
            usual_l=min(wanted_l, most_l),
        )
