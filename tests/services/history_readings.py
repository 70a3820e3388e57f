"""The act of reading in a file of readings, for the tests of the history."""

from __future__ import annotations

from brewdesk.services.acts import ActKind
from brewdesk.services.readingsfile import ReadingsRead
from brewdesk.services.readingsimport import ReadingsImport
from brewdesk.store.records import ReadingDraft
from culturecore.stages import Method, Quantity
from tests.helpers.fakes import InlineJobs


def _keep(kit, batch):
    drafts = tuple(
        ReadingDraft(
            batch_id=batch.id,
            at=kit.clock.now(),
            quantity=quantity,
            method=method,
            value=value,
            text=text,
        )
        for quantity, method, value, text in (
            (Quantity.PH, Method.METER, 3.4, ""),
            (Quantity.NOTE, Method.EYE, None, "invented"),
        )
    )
    read = ReadingsRead(
        drafts=drafts, errors=(), error_count=0, known=0, doubled=0, left_out=0, twice=0
    )
    ReadingsImport(kit.door, kit.readings, InlineJobs()).keep(batch, "diary.csv", read)


READINGS_ACTS = {ActKind.IMPORT_READINGS: (lambda kit: kit.souring(), _keep)}
