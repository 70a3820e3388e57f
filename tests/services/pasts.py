"""Batches of the past, written straight into the store. Everything in them is invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from brewdesk.store.records import (
    BatchDraft,
    CultureDraft,
    PlaceDraft,
    ReadingDraft,
    VesselDraft,
)
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    CultureOrigin,
    CultureState,
    Material,
    Method,
    Quantity,
    TeaKind,
    VesselShape,
)

START_PH = 4.3


class Past:
    """A desk's store with short ways to put something into its past."""

    def __init__(self, desk):
        self.desk = desk
        self.now = desk.clock.now()
        self.place = desk.vessels.add_place(PlaceDraft(name="Invented pantry", temperature_c=22.0))
        self._vessels = 0
        first = self.vessel()
        wish = replace(desk.batches.default_wish(first.id), hot_water_c=90.0)
        model = desk.batches.plan(first.id, None, "Model", wish)
        self._model = {name: getattr(model, name) for name in BatchDraft.__dataclass_fields__}
        desk.batches.drop_plan(model.id)

    def vessel(self, place=None):
        self._vessels += 1
        return self.desk.vessels.add(
            VesselDraft(
                name=f"Jar {self._vessels}",
                shape=VesselShape.CYLINDER,
                material=Material.GLASS,
                brim_volume_l=4.5,
                working_volume_l=4.0,
                inner_diameter_cm=15.0,
                place_id=(place or self.place).id,
            )
        )

    def culture(self, name="Invented culture", *, parents=(), born_days_ago=400.0):
        draft = CultureDraft(
            name=name,
            origin=CultureOrigin.GIFT,
            state=CultureState.RESTING,
            born_at=self.now - timedelta(days=born_days_ago),
        )
        return self.desk.cultures.add(draft, parents)

    def batch(
        self,
        ph=((4.0, 3.8), (10.0, 3.0)),
        *,
        name="Invented batch",
        tea=TeaKind.BLACK,
        started=40.0,
        lasted=12.0,
        stage=BatchStage.CLOSED,
        culture=None,
        vessel=None,
        reason="",
        purpose=BatchPurpose.DRINK,
        **fields,
    ):
        """Add a batch that began ``started`` days ago, with readings of (day, pH)."""
        begun = self.now - timedelta(days=started)
        ended = None if stage.is_live else begun + timedelta(days=lasted)
        draft = BatchDraft(
            **(
                self._model
                | {
                    "name": name,
                    "vessel_id": (vessel or self.vessel()).id,
                    "culture_id": None if culture is None else culture.id,
                    "stage": stage,
                    "tea_kind": tea,
                    "planned_at": begun,
                    "started_at": begun,
                    "ended_at": ended,
                    "end_reason": reason,
                    "start_ph": START_PH,
                    "start_ph_low": START_PH - 0.05,
                    "start_ph_high": START_PH + 0.05,
                    "purpose": purpose,
                }
                | fields
            )
        )
        with self.desk.store.write() as unit:
            made = unit.batches.add(draft)
            for day, value in ph:
                unit.readings.add(
                    ReadingDraft(
                        batch_id=made.id,
                        at=begun + timedelta(days=day),
                        quantity=Quantity.PH,
                        method=Method.METER,
                        value=value,
                        sd=0.05,
                    )
                )
        return made

    def reading(self, batch, day, quantity, *, value=None, text=""):
        draft = ReadingDraft(
            batch_id=batch.id,
            at=batch.started_at + timedelta(days=day),
            quantity=quantity,
            method=Method.TONGUE,
            value=value,
            text=text,
        )
        with self.desk.store.write() as unit:
            return unit.readings.add(draft)

    def reached(self, days, **fields):
        """Add a batch that came down to pH 3.2 on a day, read half a day before and after."""
        lasted = fields.pop("lasted", days + 2.0)
        return self.batch(((days - 0.5, 3.3), (days + 0.5, 3.1)), lasted=lasted, **fields)
