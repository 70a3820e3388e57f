"""Whatever a maker does, each life tells all of it, and everything can be found."""

from __future__ import annotations

import pytest
from hypothesis import settings
from hypothesis.stateful import run_state_machine_as_test

from brewdesk.services.subjects import Subject, SubjectKind
from tests.services.test_random_acts import RandomActs


class RandomLives(RandomActs):
    """The maker without a plan, and somebody who reads the time lines at the end."""

    def teardown(self):
        if not hasattr(self, "store"):
            return
        try:
            self._check_lives()
            self._check_names()
        finally:
            super().teardown()

    def _check_lives(self):
        with self.store.read() as unit:
            rows = {
                SubjectKind.BATCH: unit.batches.where(),
                SubjectKind.CULTURE: unit.cultures.where(),
                SubjectKind.VESSEL: unit.vessels.where(),
                SubjectKind.PLACE: unit.places.where(),
            }
            about = {
                Subject(kind, row.id): {act.id for act in unit.acts.about(kind.value, row.id)}
                for kind, found in rows.items()
                for row in found
            }
            readings = unit.readings.where()
            undone = unit.acts.undone_ids()
        told = {subject: self.desk.timeline.of(subject).lines for subject in about}
        for subject, act_ids in about.items():
            ids = [line.act_id for line in told[subject] if line.act_id is not None]
            assert act_ids <= set(ids)
            assert len(ids) == len(set(ids))
            assert not undone & set(ids)
            assert all(line.text for line in told[subject])
        for batch in rows[SubjectKind.BATCH]:
            in_jar = {line.act_id for line in told[Subject(SubjectKind.VESSEL, batch.vessel_id)]}
            assert about[Subject(SubjectKind.BATCH, batch.id)] <= in_jar
        for reading in readings:
            lines = told[Subject(SubjectKind.BATCH, reading.batch_id)]
            assert sum(("reading", reading.id) in line.rows for line in lines) == 1

    def _check_names(self):
        for vessel in self.desk.vessels.all(include_retired=True):
            answer = self.desk.search.find(vessel.name, limit=100_000)
            subjects = {find.subject for find in answer.finds}
            assert Subject(SubjectKind.VESSEL, vessel.id) in subjects


@pytest.fixture
def machine(new_store):
    return type("RandomLivesHere", (RandomLives,), {"new_store": new_store})


def test_lives_tell_everything_that_was_done_and_nothing_that_was_undone(machine):
    run_state_machine_as_test(
        machine, settings=settings(settings.default, max_examples=10, stateful_step_count=30)
    )
