"""Acts on trials for the history test: what has to be there before, and the act itself."""

from __future__ import annotations

from brewdesk.services.acts import ActKind
from brewdesk.services.trialplan import ArmWish, TrialRecipe, TrialWish
from brewdesk.services.trials import ScoreEntry, Trials
from culturecore.stages import TasteMark, TeaKind, TrialFactor

TEAS = (
    ArmWish(name="Green", level=TeaKind.GREEN.value),
    ArmWish(name="Black", level=TeaKind.BLACK.value),
)


def trials_of(kit):
    return Trials(kit.door, kit.batches)


def wish(kit, *, jars=2, **fields):
    """A blind trial of two teas in new jars of one size."""
    vessels = tuple(kit.vessel(f"Trial jar {n + 1}").id for n in range(jars))
    full = {"name": "Two teas", "factor": TrialFactor.TEA, "arms": TEAS, "is_blind": True}
    return TrialWish(**(full | {"vessel_ids": vessels} | fields))


def _planned(kit):
    return trials_of(kit).plan(wish(kit))


def _started(kit):
    trial = _planned(kit)
    trials_of(kit).start(trial.id, TrialRecipe())
    return trial


def _jar(kit, trial):
    return trials_of(kit).view(trial.id).jars[0].jar


def _left_out(kit):
    jar = _jar(kit, _started(kit))
    return trials_of(kit).leave_out(jar.id, "mold")


def _score(kit, trial):
    entry = ScoreEntry(jar_id=_jar(kit, trial).id, liking=7.5, mark=TasteMark.RIGHT, text="round")
    return trials_of(kit).score(trial.id, "T", [entry])


def _open_trial_and_batch(kit):
    return trials_of(kit).plan(wish(kit, jars=0)), kit.plan()


def _attach(kit, both):
    trial, batch = both
    with kit.store.read() as unit:
        arm = unit.trial_arms.where(trial_id=trial.id)[0]
    return trials_of(kit).attach(trial.id, arm.id, batch.id)


ACTS = {
    ActKind.PLAN_TRIAL: (lambda kit: wish(kit), lambda kit, made: trials_of(kit).plan(made)),
    ActKind.EDIT_TRIAL: (
        _planned,
        lambda kit, trial: trials_of(kit).edit(trial.id, name="Other", question="Q?", note="n"),
    ),
    ActKind.START_TRIAL: (
        _planned,
        lambda kit, trial: trials_of(kit).start(trial.id, TrialRecipe()),
    ),
    ActKind.ATTACH_TO_TRIAL: (_open_trial_and_batch, _attach),
    ActKind.LEAVE_OUT_JAR: (
        _started,
        lambda kit, trial: trials_of(kit).leave_out(_jar(kit, trial).id, "mold on it"),
    ),
    ActKind.TAKE_JAR_BACK: (_left_out, lambda kit, jar: trials_of(kit).take_back(jar.id)),
    ActKind.TASTE_TRIAL: (_started, _score),
    ActKind.REMOVE_TRIAL_SCORE: (
        lambda kit: _score(kit, _started(kit))[0],
        lambda kit, score: trials_of(kit).remove_score(score.id),
    ),
    ActKind.REVEAL_TRIAL: (_started, lambda kit, trial: trials_of(kit).reveal(trial.id)),
    ActKind.END_TRIAL: (_started, lambda kit, trial: trials_of(kit).end(trial.id, "Alike.")),
    ActKind.DROP_TRIAL: (_started, lambda kit, trial: trials_of(kit).drop(trial.id, "moved")),
}
