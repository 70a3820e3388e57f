"""Units of work: everything inside one happens together or not at all."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection

from brewdesk.store import schema, stocktables, trialtables
from brewdesk.store.acts import ActRows, ReadActRows
from brewdesk.store.deltas import apply_deltas
from brewdesk.store.errors import told
from brewdesk.store.records import (
    Addition,
    AdditionDraft,
    Batch,
    BatchDraft,
    BottleCheck,
    BottleCheckDraft,
    BottleGroup,
    BottleGroupDraft,
    Bottling,
    BottlingDraft,
    Calibration,
    CalibrationDraft,
    Care,
    CareDraft,
    Culture,
    CultureDraft,
    CultureParent,
    CultureParentDraft,
    Photo,
    PhotoDraft,
    Place,
    PlaceDraft,
    PlaceTemperature,
    PlaceTemperatureDraft,
    Reading,
    ReadingDraft,
    Reminder,
    ReminderDraft,
    RowDelta,
    Step,
    StepDraft,
    TemperatureLog,
    TemperatureLogDraft,
    Transfer,
    TransferDraft,
    Vessel,
    VesselDraft,
    VesselMove,
    VesselMoveDraft,
)
from brewdesk.store.rows import ReadRows, Rows
from brewdesk.store.samples import ReadSampleRows, SampleRows
from brewdesk.store.settings import ReadSettingRows, SettingRows
from brewdesk.store.stockrecords import (
    BatchSupply,
    BatchSupplyDraft,
    Supply,
    SupplyDraft,
    SupplyDraw,
    SupplyDrawDraft,
    SupplyLot,
    SupplyLotDraft,
)
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


class ReadUnit:
    """One view of the store in which nothing changes while it is open."""

    def __init__(self, connection: Connection) -> None:
        self.places = ReadRows(connection, schema.place, Place)
        self.vessels = ReadRows(connection, schema.vessel, Vessel)
        self.cultures = ReadRows(connection, schema.culture, Culture)
        self.culture_parents = ReadRows(connection, schema.culture_parent, CultureParent)
        self.batches = ReadRows(connection, schema.batch, Batch)
        self.vessel_moves = ReadRows(connection, schema.vessel_move, VesselMove)
        self.transfers = ReadRows(connection, schema.transfer, Transfer)
        self.care = ReadRows(connection, schema.care, Care)
        self.bottlings = ReadRows(connection, schema.bottling, Bottling)
        self.bottle_groups = ReadRows(connection, schema.bottle_group, BottleGroup)
        self.additions = ReadRows(connection, schema.addition, Addition)
        self.bottle_checks = ReadRows(connection, schema.bottle_check, BottleCheck)
        self.calibrations = ReadRows(connection, schema.calibration, Calibration)
        self.steps = ReadRows(connection, schema.step, Step)
        self.readings = ReadRows(connection, schema.reading, Reading)
        self.photos = ReadRows(connection, schema.photo, Photo)
        self.place_temperatures = ReadRows(connection, schema.place_temperature, PlaceTemperature)
        self.temperature_logs = ReadRows(connection, schema.temperature_log, TemperatureLog)
        self.temperature_samples = ReadSampleRows(connection)
        self.reminders = ReadRows(connection, schema.reminder, Reminder)
        self.supplies = ReadRows(connection, stocktables.supply, Supply)
        self.supply_lots = ReadRows(connection, stocktables.supply_lot, SupplyLot)
        self.supply_draws = ReadRows(connection, stocktables.supply_draw, SupplyDraw)
        self.batch_supplies = ReadRows(connection, stocktables.batch_supply, BatchSupply)
        self.trials = ReadRows(connection, trialtables.trial, Trial)
        self.trial_arms = ReadRows(connection, trialtables.trial_arm, TrialArm)
        self.trial_jars = ReadRows(connection, trialtables.trial_jar, TrialJar)
        self.trial_scores = ReadRows(connection, trialtables.trial_score, TrialScore)
        self.acts = ReadActRows(connection)
        self.settings = ReadSettingRows(connection)


class UnitOfWork:
    """One set of changes. ``deltas`` lists every row added, changed or removed, in order."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self.deltas: list[RowDelta] = []
        noted = self.deltas
        self.places = Rows(connection, schema.place, Place, PlaceDraft, noted)
        self.vessels = Rows(connection, schema.vessel, Vessel, VesselDraft, noted)
        self.reminders = Rows(connection, schema.reminder, Reminder, ReminderDraft, noted)
        self.cultures = Rows(
            connection, schema.culture, Culture, CultureDraft, noted, cascades=(self.reminders,)
        )
        self.culture_parents = Rows(
            connection, schema.culture_parent, CultureParent, CultureParentDraft, noted
        )
        self.bottlings = Rows(
            connection,
            schema.bottling,
            Bottling,
            BottlingDraft,
            noted,
            cascades=(self.reminders,),
        )
        self.bottle_groups = Rows(
            connection, schema.bottle_group, BottleGroup, BottleGroupDraft, noted
        )
        self.additions = Rows(connection, schema.addition, Addition, AdditionDraft, noted)
        self.bottle_checks = Rows(
            connection, schema.bottle_check, BottleCheck, BottleCheckDraft, noted
        )
        self.calibrations = Rows(
            connection, schema.calibration, Calibration, CalibrationDraft, noted
        )
        self.steps = Rows(connection, schema.step, Step, StepDraft, noted)
        self.readings = Rows(connection, schema.reading, Reading, ReadingDraft, noted)
        self.photos = Rows(connection, schema.photo, Photo, PhotoDraft, noted)
        self.place_temperatures = Rows(
            connection,
            schema.place_temperature,
            PlaceTemperature,
            PlaceTemperatureDraft,
            noted,
        )
        self.temperature_logs = Rows(
            connection, schema.temperature_log, TemperatureLog, TemperatureLogDraft, noted
        )
        self.temperature_samples = SampleRows(connection)
        self.vessel_moves = Rows(connection, schema.vessel_move, VesselMove, VesselMoveDraft, noted)
        self.transfers = Rows(connection, schema.transfer, Transfer, TransferDraft, noted)
        self.care = Rows(connection, schema.care, Care, CareDraft, noted)
        self.batches = Rows(
            connection, schema.batch, Batch, BatchDraft, noted, cascades=(self.reminders,)
        )
        self.supplies = Rows(connection, stocktables.supply, Supply, SupplyDraft, noted)
        self.supply_lots = Rows(
            connection, stocktables.supply_lot, SupplyLot, SupplyLotDraft, noted
        )
        self.supply_draws = Rows(
            connection, stocktables.supply_draw, SupplyDraw, SupplyDrawDraft, noted
        )
        self.batch_supplies = Rows(
            connection, stocktables.batch_supply, BatchSupply, BatchSupplyDraft, noted
        )
        self.trials = Rows(connection, trialtables.trial, Trial, TrialDraft, noted)
        self.trial_arms = Rows(connection, trialtables.trial_arm, TrialArm, TrialArmDraft, noted)
        self.trial_jars = Rows(connection, trialtables.trial_jar, TrialJar, TrialJarDraft, noted)
        self.trial_scores = Rows(
            connection, trialtables.trial_score, TrialScore, TrialScoreDraft, noted
        )
        self.acts = ActRows(connection)
        self.settings = SettingRows(connection)

    def apply(self, deltas: Sequence[RowDelta], *, backwards: bool) -> None:
        """Do changes again, or take them back; these are not noted in ``deltas``.

        Raises
        ------
        StaleRow
            If a row is no longer as the changes left it. Let it leave the unit, so that
            all of it is rolled back.
        """
        with told():
            apply_deltas(self._connection, deltas, backwards=backwards)
