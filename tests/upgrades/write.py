"""Write down a store of the present schema, to be upgraded by all later programs.

Run once for each released schema: ``python -m tests.upgrades.write``. The content is
invented. A file here is never changed afterwards.
"""

from __future__ import annotations

import sqlite3
import sys
import tempfile
from contextlib import closing
from datetime import timedelta
from pathlib import Path

from brewdesk.store.records import (
    AdditionDraft,
    BottleCheckDraft,
    BottleGroupDraft,
    BottlingDraft,
    CalibrationDraft,
    CareDraft,
    CultureParentDraft,
    PhotoDraft,
    PlaceDraft,
    PlaceTemperatureDraft,
    TemperatureLogDraft,
    TransferDraft,
    VesselMoveDraft,
)
from brewdesk.store.schema import SCHEMA_NUMBER
from brewdesk.store.stockrecords import (
    BatchSupplyDraft,
    SupplyDraft,
    SupplyDrawDraft,
    SupplyLotDraft,
)
from brewdesk.store.store import Store
from brewdesk.store.trialrecords import TrialArmDraft, TrialDraft, TrialJarDraft, TrialScoreDraft
from brewdesk.store.unitofwork import UnitOfWork
from culturecore.stages import (
    AdditionKind,
    BatchStage,
    BottleKind,
    CareKind,
    CheckKind,
    CultureOrigin,
    DrawReason,
    Feel,
    Look,
    Material,
    Method,
    Quantity,
    ReminderKind,
    StepKind,
    StepState,
    SupplyKind,
    SupplyMeasure,
    TasteMark,
    TeaKind,
    TransferKind,
    TrialFactor,
    TrialState,
    VesselShape,
)
from tests.store.drafts import (
    NOW,
    PLACE,
    batch_draft,
    culture_draft,
    reading_draft,
    reminder_draft,
    step_draft,
    vessel_draft,
)

FOLDER = Path(__file__).resolve().parent


def fill(store: Store) -> None:
    """Put an invented pantry on the shelf: some of everything, with a history."""
    with store.write() as unit:
        place = unit.places.add(PLACE)
        cellar = unit.places.add(PlaceDraft(name="Invented cellar", temperature_c=16.0))
        jar = unit.vessels.add(vessel_draft(place.id))
        crock = unit.vessels.add(
            vessel_draft(
                cellar.id,
                name="Invented crock “½”",
                shape=VesselShape.TAPERED,
                material=Material.CERAMIC_FOOD_SAFE,
                retired_at=NOW,
            )
        )
        mother = unit.cultures.add(culture_draft(vessel_id=jar.id, pellicle_mm=6.5))
        daughter = unit.cultures.add(culture_draft(origin=CultureOrigin.SPLIT, note="thin"))
        unit.culture_parents.add(CultureParentDraft(culture_id=daughter.id, parent_id=mother.id))
        ended = unit.batches.add(
            batch_draft(
                crock.id,
                daughter.id,
                stage=BatchStage.DISCARDED,
                ended_at=NOW,
                end_reason="mold (invented)",
            )
        )
        batch = unit.batches.add(
            batch_draft(jar.id, mother.id, stage=BatchStage.SOURING, started_at=NOW)
        )
        unit.steps.add(step_draft(batch.id, state=StepState.DONE, finished_at=NOW))
        unit.steps.add(step_draft(batch.id, position=2, kind=StepKind.COVER, planned_s=None))
        unit.reminders.add(reminder_draft(batch.id))
        unit.reminders.add(reminder_draft(None, kind=ReminderKind.OWN, text="buy tea"))
        unit.transfers.add(
            TransferDraft(
                at=NOW,
                kind=TransferKind.STARTER,
                volume_l=0.25,
                from_batch_id=batch.id,
                to_culture_id=daughter.id,
                ph=3.1,
            )
        )
        unit.vessel_moves.add(
            VesselMoveDraft(batch_id=batch.id, from_vessel_id=crock.id, to_vessel_id=jar.id, at=NOW)
        )
        unit.care.add(
            CareDraft(culture_id=daughter.id, at=NOW, kind=CareKind.LOOKED, look=Look.FINE)
        )
        unit.photos.add(
            PhotoDraft(
                content_hash="ab" * 32,
                media_type="image/png",
                width_px=4,
                height_px=3,
                size_bytes=99,
                taken_at=NOW,
                culture_id=mother.id,
                caption="invented",
            )
        )
        unit.place_temperatures.add(
            PlaceTemperatureDraft(place_id=cellar.id, at=NOW, temperature_c=15.5)
        )
        unit.temperature_logs.add(
            TemperatureLogDraft(
                place_id=cellar.id,
                name="invented logger.csv",
                content_hash="cd" * 32,
                sample_count=2,
                first_at=NOW,
                last_at=NOW,
            )
        )
        unit.temperature_samples.keep("cd" * 32, [b"packed", b"samples"])
        bottles = unit.bottlings.add(
            BottlingDraft(
                name="Invented bottles",
                batch_id=batch.id,
                filled_at=NOW,
                drink_volume_l=2.0,
                residual_sugar_low_g_per_l=20.0,
                residual_sugar_high_g_per_l=40.0,
                target_volumes=2.2,
                priming_sugar_g=5.0,
                place_temperature_c=22.0,
                open_jar_c=23.0,
                warmest_c=30.0,
            )
        )
        unit.bottle_groups.add(
            BottleGroupDraft(
                bottling_id=bottles.id,
                position=0,
                bottle_count=4,
                kind=BottleKind.RATED,
                brim_volume_l=0.5,
                headspace_share=0.06,
                rated_bar=10.0,
            )
        )
        unit.additions.add(
            AdditionDraft(
                bottling_id=bottles.id,
                position=0,
                kind=AdditionKind.FRUIT,
                name="invented berries",
                mass_g=120.0,
                sugar_share_low=0.04,
                sugar_share_high=0.08,
            )
        )
        unit.bottle_checks.add(
            BottleCheckDraft(bottling_id=bottles.id, at=NOW, kind=CheckKind.FEEL, feel=Feel.FIRM)
        )
        unit.calibrations.add(CalibrationDraft(at=NOW, meter="invented meter", slope_percent=97.0))
        unit.reminders.add(reminder_draft(None, bottling_id=bottles.id, kind=ReminderKind.CHILL))
        unit.reminders.add(reminder_draft(None, culture_id=daughter.id, kind=ReminderKind.FEED))
        fill_stores(unit, batch.id, bottles.id)
        fill_trial(unit, jar.id, batch.id)
        unit.settings.put("theme", "dark")
        unit.acts.add(kind="start_souring", facts={"name": batch.name}, at=NOW, deltas=unit.deltas)
    with store.write() as unit:
        for day in range(5):
            unit.readings.add(
                reading_draft(batch.id, at=NOW + timedelta(days=day), value=4.1 - 0.2 * day)
            )
        unit.readings.add(
            reading_draft(
                batch.id, quantity=Quantity.TASTE, method=Method.TONGUE, value=None, text="right"
            )
        )
        taken_back = unit.readings.add(reading_draft(ended.id))
        unit.readings.remove(taken_back.id)
        unit.acts.add(
            kind="add_readings",
            facts={"ph": 3.3},
            at=NOW,
            batch_id=batch.id,
            deltas=unit.deltas,
        )


def fill_stores(unit: UnitOfWork, batch_id: int, bottling_id: int) -> None:
    """Put an invented tea and invented bottles into the stores."""
    tea = unit.supplies.add(
        SupplyDraft(
            name="Invented garden tea",
            kind=SupplyKind.TEA,
            measure=SupplyMeasure.MASS_G,
            tea_kind=TeaKind.GREEN,
            low_amount=50.0,
        )
    )
    lot = unit.supply_lots.add(
        SupplyLotDraft(
            supply_id=tea.id,
            bought_at=NOW,
            amount=250.0,
            price_minor=1250,
            currency="EUR",
            lot_code="invented 7",
        )
    )
    unit.batch_supplies.add(BatchSupplyDraft(batch_id=batch_id, supply_id=tea.id, amount=14.0))
    unit.supply_draws.add(
        SupplyDrawDraft(
            supply_id=tea.id,
            lot_id=lot.id,
            batch_id=batch_id,
            at=NOW,
            amount=14.0,
            reason=DrawReason.BREWED,
        )
    )
    bottles = unit.supplies.add(
        SupplyDraft(
            name="Invented half litres", kind=SupplyKind.BOTTLE, measure=SupplyMeasure.PIECES
        )
    )
    unit.supply_draws.add(
        SupplyDrawDraft(
            supply_id=bottles.id,
            bottling_id=bottling_id,
            at=NOW,
            amount=-4.0,
            reason=DrawReason.RETURNED,
        )
    )


def fill_trial(unit: UnitOfWork, vessel_id: int, batch_id: int) -> None:
    """Put an invented trial beside it."""
    trial = unit.trials.add(
        TrialDraft(
            name="Invented tea trial",
            factor=TrialFactor.TEA,
            seed=7,
            created_at=NOW,
            state=TrialState.RUNNING,
            started_at=NOW,
            is_blind=True,
        )
    )
    arm = unit.trial_arms.add(
        TrialArmDraft(trial_id=trial.id, position=0, name="Green", level="green")
    )
    jar = unit.trial_jars.add(
        TrialJarDraft(
            trial_id=trial.id,
            arm_id=arm.id,
            position=0,
            code="K7",
            vessel_id=vessel_id,
            batch_id=batch_id,
        )
    )
    unit.trial_scores.add(
        TrialScoreDraft(jar_id=jar.id, at=NOW, liking=7.5, mark=TasteMark.RIGHT, taster="invented")
    )


def main() -> None:
    """Write NNNN.sqlite for the present schema."""
    target = FOLDER / f"{SCHEMA_NUMBER:04d}.sqlite"
    if target.exists():
        sys.exit(f"{target.name} is there already; a released schema does not change")
    with tempfile.TemporaryDirectory() as folder:
        store = Store.open(Path(folder) / "pantry.sqlite", now=NOW)
        fill(store)
        store.close()
        with closing(sqlite3.connect(store.path)) as connection:
            connection.execute("VACUUM")
        target.write_bytes(store.path.read_bytes())


if __name__ == "__main__":
    main()
