"""Trials: jars alike but for one factor, from the drawing of lots to the conclusion."""

from __future__ import annotations

import math
import random
import statistics
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeVar

from brewdesk.services.acts import ActKind
from brewdesk.services.batches import Batches
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.ending import close_drawn_off
from brewdesk.services.names import tidy_name
from brewdesk.services.trialplan import (
    BY_HAND,
    JarPlan,
    TrialRecipe,
    TrialWish,
    check_level,
    jar_plan,
)
from brewdesk.services.trialreader import ForecastOf, TrialReader, no_forecast
from brewdesk.services.trialview import TrialOutcome, TrialView, is_hidden
from brewdesk.store.records import BatchDraft
from brewdesk.store.trialrecords import (
    Trial,
    TrialArm,
    TrialArmDraft,
    TrialDraft,
    TrialJar,
    TrialJarDraft,
    TrialScore,
    TrialScoreDraft,
)
from culturecore import safety
from culturecore import trials as lots
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    Look,
    Quantity,
    TasteMark,
    TrialState,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

NAME_MOST = 60  # a code stands behind it in a batch's name
TEXT_MOST = 2000
LONG_TEXT_MOST = 20_000
MOST_JARS = 24
_TASTED = (BatchStage.SOURING, BatchStage.DRAWN_OFF, BatchStage.CLOSED)
_OPEN = (TrialState.PLANNED, TrialState.RUNNING)
T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoreEntry:
    """What a taster says of one jar; an entry without liking, mark and words says nothing."""

    jar_id: int
    liking: float | None = None
    mark: TasteMark | None = None
    text: str = ""

    @property
    def is_empty(self) -> bool:
        """Whether nothing was said."""
        return self.liking is None and self.mark is None and not self.text.strip()


class Trials:
    """Plan trials, fill their jars, taste them, and look at what came of them.

    ``forecast_of`` gives a batch's newest forecast, if there is one.
    """

    def __init__(
        self, door: Door, batches: Batches, *, forecast_of: ForecastOf = no_forecast
    ) -> None:
        self._door = door
        self._batches = batches
        self._reader = TrialReader(door, forecast_of)

    # --- looking ---------------------------------------------------------------------

    def all(self) -> tuple[Trial, ...]:
        """Return the trials, newest first."""
        with self._door.store.read() as unit:
            return unit.trials.where(order_by=("-created_at", "-id"))

    def get(self, trial_id: int) -> Trial:
        """Return one trial.

        Raises
        ------
        NoSuchRow
            If there is no trial with this id.
        """
        with self._door.store.read() as unit:
            return unit.trials.get(trial_id)

    def view(self, trial_id: int) -> TrialView:
        """Return a trial with its jars and what they show; arms stay hidden while it is blind.

        Raises
        ------
        NoSuchRow
            If there is no trial with this id.
        """
        return self._reader.view(trial_id)

    def arms(self, trial_id: int) -> tuple[TrialArm, ...]:
        """Return the levels of a trial, also while it is blind: whoever brews knows them."""
        with self._door.store.read() as unit:
            return unit.trial_arms.where(trial_id=trial_id, order_by="position")

    def scatter(self, outcome: TrialOutcome) -> tuple[float | None, int]:
        """Return how far like jars lie apart by the trials there are, and from how many jars.

        The standard deviation within arms, pooled over all trials whose codes are open; None
        where no arm has two jars.
        """
        squares, freedom, jars = 0.0, 0, 0
        for trial in self.all():
            for values in self._reader.values_of_arms(trial.id, outcome):
                if len(values) > 1:
                    squares += statistics.variance(values) * (len(values) - 1)
                    freedom += len(values) - 1
                    jars += len(values)
        return (math.sqrt(squares / freedom) if freedom and squares else None), jars

    def tasting_order(self, trial_id: int, taster: str = "") -> tuple[TrialJar, ...]:
        """Return the jars to taste, in an order by lot that is another at each tasting.

        The same until that tasting is entered, so that a form may be opened twice. What has
        not soured yet, was thrown away or must not be drunk is in no order.
        """
        with self._door.store.read() as unit:
            trial = unit.trials.get(trial_id)
            jars = unit.trial_jars.where(trial_id=trial_id, left_out_reason="", order_by="position")
            ids = tuple(jar.id for jar in jars)
            told = len(unit.trial_scores.where(jar_id=ids)) if ids else 0
        verdicts = self.glass_verdicts(trial_id)
        order = [
            jar for jar in jars if jar.id in verdicts and verdicts[jar.id].level is not Level.STOP
        ]
        random.Random(f"{trial.seed}/{taster.strip().casefold()}/{told}").shuffle(order)
        return tuple(order)

    def glass_verdicts(self, trial_id: int) -> dict[int, Verdict]:
        """Judge by jar whether what is in it may be tasted; only of those that soured.

        STOP is never to be tasted: mold seen or suspected, or a pH that is not low enough.
        """
        with self._door.store.read() as unit:
            jars = unit.trial_jars.where(trial_id=trial_id, left_out_reason="")
            ids = tuple(jar.batch_id for jar in jars if jar.batch_id is not None)
            batches = {row.id: row for row in unit.batches.where(id=ids)} if ids else {}
            looks = (
                unit.readings.where(batch_id=ids, quantity=Quantity.LOOK, order_by="at")
                if ids
                else ()
            )
        last_look = {look.batch_id: look.text for look in looks}
        found = {}
        for jar in jars:
            batch = batches.get(jar.batch_id or 0)
            if batch is None or batch.stage not in _TASTED:
                continue
            if last_look.get(batch.id) == Look.MOLD.value:
                found[jar.id] = safety.mold_verdict()
            else:
                found[jar.id] = self._batches.drinkable_verdict(batch.id)
        return found

    def batches_to_attach(self) -> tuple[tuple[int, str], ...]:
        """Return id and name of the batches that could join a trial, newest first."""
        with self._door.store.read() as unit:
            rows = unit.batches.where(
                order_by=("-planned_at", "-id"), purpose=BatchPurpose.DRINK, limit=200
            )
            taken = {jar.batch_id for jar in unit.trial_jars.where()}
        return tuple((row.id, row.name) for row in rows if row.id not in taken)

    # --- planning --------------------------------------------------------------------

    def plan(self, wish: TrialWish) -> Trial:
        """Plan a trial: draw lots, or take the maker's own dealing, and give each jar a code.

        Raises
        ------
        ImpossibleInput
            Fields "name", "question", "note", "arms" (reasons "too_few", "too_many",
            "same"), "arm_name", "level", "vessels" (reasons "twice", "fewer_than_arms",
            "too_many") or "by_hand".
        """
        name = _name(wish.name)
        question = _text("question", wish.question, TEXT_MOST)
        note = _text("note", wish.note, LONG_TEXT_MOST)
        now = self._door.clock.now()
        seed = wish.seed if wish.seed is not None else _seed_of(f"{now.isoformat()}/{name}")
        with self._door.store.read() as unit:
            _check_arms(unit, wish)
            arms_of = self._dealt(unit, wish, seed)
        codes = lots.draw_codes(len(wish.vessel_ids), seed=seed)

        def work(unit: UnitOfWork) -> Trial:
            trial = unit.trials.add(
                TrialDraft(
                    name=name,
                    factor=wish.factor,
                    seed=seed,
                    created_at=now,
                    question=question,
                    is_blind=wish.is_blind,
                    note=note,
                )
            )
            arms = [
                unit.trial_arms.add(
                    TrialArmDraft(
                        trial_id=trial.id, position=n, name=tidy_name(arm.name), level=arm.level
                    )
                )
                for n, arm in enumerate(wish.arms)
            ]
            for n, (vessel_id, arm, code) in enumerate(
                zip(wish.vessel_ids, arms_of, codes, strict=True)
            ):
                unit.trial_jars.add(
                    TrialJarDraft(
                        trial_id=trial.id,
                        arm_id=arms[arm].id,
                        position=n,
                        code=code,
                        vessel_id=vessel_id,
                    )
                )
            return trial

        facts = {"name": name, "jars": len(wish.vessel_ids)}
        return self._do(ActKind.PLAN_TRIAL, facts, work)

    def edit(self, trial_id: int, *, name: str, question: str, note: str) -> Trial:
        """Change what a trial is called and asks, and the note on it.

        Raises
        ------
        ImpossibleInput
            Fields "name", "question" or "note".
        """
        old = self.get(trial_id)
        tidy = _name(name)
        fields = {
            "name": tidy,
            "question": _text("question", question, TEXT_MOST),
            "note": _text("note", note, LONG_TEXT_MOST),
        }
        return self._do(
            ActKind.EDIT_TRIAL,
            {"name": tidy, "old_name": old.name},
            lambda unit: unit.trials.change(trial_id, **fields),
        )

    def start(self, trial_id: int, recipe: TrialRecipe) -> tuple[int, ...]:
        """Plan one batch a jar, alike but for the factor, all in one act; return their ids.

        Raises
        ------
        ImpossibleInput
            Field "trial_id" with reason "ended" or "nothing_to_start"; as `Batches.plan`
            for a vessel or a recipe that cannot be, and then nothing is planned at all.
        """
        trial = self._open(trial_id)
        with self._door.store.read() as unit:
            arms = {arm.id: arm for arm in unit.trial_arms.where(trial_id=trial_id)}
            jars = [
                jar
                for jar in unit.trial_jars.where(trial_id=trial_id, order_by="position")
                if jar.batch_id is None and jar.vessel_id is not None and not jar.left_out_reason
            ]
        if not jars:
            raise ImpossibleInput("trial_id", trial_id, reason="nothing_to_start")
        planned = [self._jar_draft(trial, arms[jar.arm_id], jar, recipe) for jar in jars]
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> tuple[int, ...]:
            ids = []
            for jar, (draft, plan) in zip(jars, planned, strict=True):
                vessel = unit.vessels.get(draft.vessel_id)
                if vessel.place_id != plan.place_id:
                    unit.vessels.change(vessel.id, place_id=plan.place_id)
                close_drawn_off(unit, vessel.id)
                batch = unit.batches.add(draft)
                unit.trial_jars.change(jar.id, batch_id=batch.id)
                ids.append(batch.id)
            unit.trials.change(trial_id, state=TrialState.RUNNING, started_at=now)
            return tuple(ids)

        facts = {"name": trial.name, "jars": len(jars)}
        return self._do(ActKind.START_TRIAL, facts, work, topics=Topic.BATCHES)

    def attach(self, trial_id: int, arm_id: int, batch_id: int) -> TrialJar:
        """Take a batch there is already into a trial; what differs is listed in the view.

        Raises
        ------
        ImpossibleInput
            Field "trial_id" with reason "ended"; "batch_id" with reason "in_a_trial" or
            "not_a_drink"; "arm_id" with reason "not_of_this"; "vessels" with "too_many".
        """
        trial = self._open(trial_id)
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            arm = unit.trial_arms.get(arm_id)
            jars = unit.trial_jars.where(trial_id=trial_id, order_by="position")
            if unit.trial_jars.where(batch_id=batch_id):
                raise ImpossibleInput("batch_id", batch_id, reason="in_a_trial")
        if batch.purpose is not BatchPurpose.DRINK:
            raise ImpossibleInput("batch_id", batch_id, reason="not_a_drink")
        if arm.trial_id != trial_id:
            raise ImpossibleInput("arm_id", arm_id, reason="not_of_this")
        if len(jars) >= MOST_JARS:
            raise ImpossibleInput("vessels", len(jars) + 1, high=MOST_JARS, reason="too_many")
        taken = [jar.code for jar in jars]
        (code,) = lots.draw_codes(1, seed=trial.seed + len(jars), taken=taken)
        position = max((jar.position for jar in jars), default=-1) + 1
        waits = any(jar.batch_id is None and not jar.left_out_reason for jar in jars)
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> TrialJar:
            if trial.state is TrialState.PLANNED and not waits:
                unit.trials.change(trial_id, state=TrialState.RUNNING, started_at=now)
            return unit.trial_jars.add(
                TrialJarDraft(
                    trial_id=trial_id,
                    arm_id=arm_id,
                    position=position,
                    code=code,
                    batch_id=batch_id,
                )
            )

        facts = {"name": trial.name, "batch": batch.name}
        return self._do(ActKind.ATTACH_TO_TRIAL, facts, work)

    # --- while it runs ---------------------------------------------------------------

    def leave_out(self, jar_id: int, reason: str) -> TrialJar:
        """Count a jar in no result, and keep why.

        Raises
        ------
        ImpossibleInput
            Field "reason" with reason "empty" or "too_long"; "trial_id" with "ended".
        """
        text = _text("reason", reason, TEXT_MOST)
        if not text:
            raise ImpossibleInput("reason", reason, reason="empty")
        trial, jar = self._jar(jar_id)
        return self._do(
            ActKind.LEAVE_OUT_JAR,
            {"name": trial.name, "code": jar.code, "reason": text},
            lambda unit: unit.trial_jars.change(jar_id, left_out_reason=text),
        )

    def take_back(self, jar_id: int) -> TrialJar:
        """Count a jar again that was left out.

        Raises
        ------
        ImpossibleInput
            Field "trial_id" with reason "ended".
        """
        trial, jar = self._jar(jar_id)
        return self._do(
            ActKind.TAKE_JAR_BACK,
            {"name": trial.name, "code": jar.code},
            lambda unit: unit.trial_jars.change(jar_id, left_out_reason=""),
        )

    def score(
        self, trial_id: int, taster: str, entries: Sequence[ScoreEntry]
    ) -> tuple[TrialScore, ...]:
        """Enter one tasting; jars of which nothing was said are left out.

        Raises
        ------
        ImpossibleInput
            Fields "entries" (reason "empty"), "liking" (0 to 10), "taster", "text" or
            "trial_id".
        """
        trial = self._open(trial_id)
        told = [entry for entry in entries if not entry.is_empty]
        if not told:
            raise ImpossibleInput("entries", 0, reason="nothing_said")
        who = _text("taster", taster, 200)
        for entry in told:
            if entry.liking is not None and not 0.0 <= entry.liking <= 10.0:
                raise ImpossibleInput("liking", entry.liking, low=0.0, high=10.0)
            _text("text", entry.text, LONG_TEXT_MOST)
        with self._door.store.read() as unit:
            ids = {jar.id for jar in unit.trial_jars.where(trial_id=trial_id)}
        strangers = [entry.jar_id for entry in told if entry.jar_id not in ids]
        if strangers:
            raise ImpossibleInput("jar_id", strangers[0], reason="not_of_this")
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> tuple[TrialScore, ...]:
            return tuple(
                unit.trial_scores.add(
                    TrialScoreDraft(
                        jar_id=entry.jar_id,
                        at=now,
                        taster=who,
                        liking=entry.liking,
                        mark=entry.mark,
                        text=entry.text.strip(),
                    )
                )
                for entry in told
            )

        facts = {"name": trial.name, "jars": len(told)}
        return self._do(ActKind.TASTE_TRIAL, facts, work)

    def remove_score(self, score_id: int) -> None:
        """Take out what was said of one jar.

        Raises
        ------
        ImpossibleInput
            Field "trial_id" with reason "ended".
        """
        with self._door.store.read() as unit:
            score = unit.trial_scores.get(score_id)
        trial, jar = self._jar(score.jar_id)
        self._do(
            ActKind.REMOVE_TRIAL_SCORE,
            {"name": trial.name, "code": jar.code},
            lambda unit: unit.trial_scores.remove(score_id),
        )

    def reveal(self, trial_id: int) -> Trial:
        """Open the codes of a blind trial.

        Raises
        ------
        ImpossibleInput
            Field "trial_id" with reason "not_hidden".
        """
        trial = self.get(trial_id)
        if not is_hidden(trial):
            raise ImpossibleInput("trial_id", trial_id, reason="not_hidden")
        now = self._door.clock.now()
        return self._do(
            ActKind.REVEAL_TRIAL,
            {"name": trial.name},
            lambda unit: unit.trials.change(trial_id, revealed_at=now),
        )

    def end(self, trial_id: int, conclusion: str) -> Trial:
        """End a trial with the maker's own conclusion; codes still hidden are opened.

        Raises
        ------
        ImpossibleInput
            Field "trial_id" with reason "ended"; "conclusion" too long.
        """
        return self._close(ActKind.END_TRIAL, TrialState.ENDED, trial_id, conclusion)

    def drop(self, trial_id: int, reason: str) -> Trial:
        """Give a trial up, keeping why; its batches go on as any others.

        Raises
        ------
        ImpossibleInput
            Field "trial_id" with reason "ended"; "conclusion" too long.
        """
        return self._close(ActKind.DROP_TRIAL, TrialState.DROPPED, trial_id, reason)

    # --- pieces ----------------------------------------------------------------------

    def _close(self, kind: ActKind, state: TrialState, trial_id: int, words: str) -> Trial:
        trial = self._open(trial_id)
        text = _text("conclusion", words, LONG_TEXT_MOST)
        now = self._door.clock.now()
        opened = now if is_hidden(trial) else trial.revealed_at
        return self._do(
            kind,
            {"name": trial.name},
            lambda unit: unit.trials.change(
                trial_id, state=state, ended_at=now, revealed_at=opened, conclusion=text
            ),
        )

    def _dealt(self, unit: ReadUnit, wish: TrialWish, seed: int) -> tuple[int, ...]:
        ids = wish.vessel_ids
        if len(set(ids)) != len(ids):
            raise ImpossibleInput("vessels", len(ids), reason="twice")
        if len(ids) > MOST_JARS:
            raise ImpossibleInput("vessels", len(ids), high=MOST_JARS, reason="too_many")
        vessels = [unit.vessels.get(one) for one in ids]
        if wish.by_hand is not None:
            chosen = wish.by_hand
            if len(chosen) != len(ids) or not set(chosen) <= set(range(len(wish.arms))):
                raise ImpossibleInput("by_hand", len(chosen), reason="incomplete")
            return chosen
        if not ids:  # batches there are already join later
            return ()
        if wish.factor in BY_HAND:
            raise ImpossibleInput("by_hand", 0, reason="incomplete")
        if len(ids) < len(wish.arms):
            raise ImpossibleInput("vessels", len(ids), low=len(wish.arms), reason="fewer_than_arms")
        sizes = [
            lots.JarSize(
                working_volume_l=one.working_volume_l, inner_diameter_cm=one.inner_diameter_cm
            )
            for one in vessels
        ]
        return lots.allocate(sizes, len(wish.arms), seed=seed)

    def _jar_draft(
        self, trial: Trial, arm: TrialArm, jar: TrialJar, recipe: TrialRecipe
    ) -> tuple[BatchDraft, JarPlan]:
        assert jar.vessel_id is not None
        with self._door.store.read() as unit:
            vessel = unit.vessels.get(jar.vessel_id)
            warmth = {place.id: place.temperature_c for place in unit.places.where()}
        plan = jar_plan(
            trial.factor,
            arm.level,
            recipe,
            vessel,
            self._batches.default_wish,
            lambda place_id: warmth[place_id],
        )
        draft, _ = self._batches.checked_draft(
            vessel.id, plan.culture_id, batch_name(trial.name, jar.code), plan.wish
        )
        return draft, plan

    def _open(self, trial_id: int) -> Trial:
        trial = self.get(trial_id)
        if trial.state not in _OPEN:
            raise ImpossibleInput("trial_id", trial_id, reason="ended")
        return trial

    def _jar(self, jar_id: int) -> tuple[Trial, TrialJar]:
        with self._door.store.read() as unit:
            jar = unit.trial_jars.get(jar_id)
        return self._open(jar.trial_id), jar

    def _do(
        self,
        kind: ActKind,
        facts: Mapping[str, object],
        work: Callable[[UnitOfWork], T],
        *,
        topics: Topic = Topic.NOTHING,
    ) -> T:
        return self._door.perform(kind, facts, work, topics=Topic.TRIALS | topics)


def batch_name(trial_name: str, code: str) -> str:
    """Return the neutral name of a jar's batch: it betrays no level."""
    return f"{trial_name} {code}"


def _name(text: str) -> str:
    name = tidy_name(text)
    if len(name) > NAME_MOST:
        raise ImpossibleInput("name", text, high=NAME_MOST, reason="too_long")
    return name


def _text(field: str, text: str, most: int) -> str:
    tidy = text.strip()
    if len(tidy) > most:
        raise ImpossibleInput(field, len(tidy), high=most, reason="too_long")
    return tidy


def _check_arms(unit: ReadUnit, wish: TrialWish) -> None:
    count = len(wish.arms)
    if count < 2:
        raise ImpossibleInput("arms", count, low=2, reason="too_few")
    if count > lots.MOST_ARMS:
        raise ImpossibleInput("arms", count, high=lots.MOST_ARMS, reason="too_many")
    names = set()
    for arm in wish.arms:
        names.add(_arm_name(arm.name).casefold())
        check_level(unit, wish.factor, arm.level)
    if len(names) < count:
        raise ImpossibleInput("arms", count, reason="same")
    levels = {arm.level for arm in wish.arms if arm.level}
    if levels and len(levels) < count:
        raise ImpossibleInput("arms", count, reason="same")


def _arm_name(text: str) -> str:
    try:
        return tidy_name(text)
    except ImpossibleInput as problem:
        raise ImpossibleInput(
            "arm_name", problem.value, high=problem.high, reason=problem.reason
        ) from None


def _seed_of(text: str) -> int:
    return random.Random(text).randrange(2**31)
