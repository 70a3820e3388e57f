"""Looks at the bottles: felt, gauged, opened, noted; corrected and taken out again."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from brewdesk.services.acts import ActKind
from brewdesk.services.bottlingparts import BottlingParts, can_be_felt, check_facts, parts_in
from brewdesk.services.bottlingrows import OPEN_STATES, BottlingRows
from brewdesk.store.records import BottleCheck, BottleCheckDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import CheckKind


class BottleLooks(BottlingRows):
    """Write down looks at the bottles."""

    def check(self, draft: BottleCheckDraft) -> BottleCheck:
        """Write down a look at the bottles.

        Raises
        ------
        ImpossibleInput
            Field "bottling_id" with reason "ended"; "feel" with reason "no_test_bottle" or
            "empty"; "gauge_bar", "opened", "text"; "bottle_count" with reason "too_many"; "at"
            with reason "in_future" or "before_filling".
        """
        with self._door.store.read() as unit:
            parts = parts_in(unit, draft.bottling_id)
        draft = self._checked(parts, draft)
        return self._perform(
            ActKind.CHECK_BOTTLES,
            parts.bottling,
            check_facts(parts.bottling, draft),
            lambda unit: unit.bottle_checks.add(draft),
        )

    def edit_check(self, check_id: int, **fields: Any) -> BottleCheck:  # noqa: ANN401  # a row's fields
        """Correct a look at the bottles. Raises as `check`."""
        with self._door.store.read() as unit:
            check = unit.bottle_checks.get(check_id)
            parts = parts_in(unit, check.bottling_id)
        others = tuple(other for other in parts.checks if other.id != check_id)
        changed = self._checked(replace(parts, checks=others), replace(check, **fields))
        return self._perform(
            ActKind.EDIT_BOTTLE_CHECK,
            parts.bottling,
            check_facts(parts.bottling, changed),
            lambda unit: unit.bottle_checks.change(check_id, **fields),
        )

    def remove_check(self, check_id: int) -> None:
        """Take a look at the bottles out again. Raises NoSuchRow."""
        with self._door.store.read() as unit:
            check = unit.bottle_checks.get(check_id)
            bottling = unit.bottlings.get(check.bottling_id)
        self._perform(
            ActKind.REMOVE_BOTTLE_CHECK,
            bottling,
            check_facts(bottling, check),
            lambda unit: unit.bottle_checks.remove(check_id),
        )

    def _checked(self, parts: BottlingParts, draft: BottleCheckDraft) -> BottleCheckDraft:
        if parts.bottling.state not in OPEN_STATES:
            raise ImpossibleInput("bottling_id", parts.bottling.id, reason="ended")
        self._moment(parts.bottling, draft.at)
        needed = {
            CheckKind.FEEL: ("feel", draft.feel),
            CheckKind.GAUGE: ("gauge_bar", draft.gauge_bar),
            CheckKind.OPENED: ("opened", draft.opened),
            CheckKind.NOTE: ("text", draft.text.strip() or None),
        }.get(draft.kind)
        if needed is not None and needed[1] is None:
            raise ImpossibleInput(needed[0], None, reason="empty")
        if draft.kind is CheckKind.FEEL and not can_be_felt(parts.groups):
            raise ImpossibleInput("feel", draft.feel, reason="no_test_bottle")
        if draft.gauge_bar is not None and not -1.0 <= draft.gauge_bar <= 30.0:
            raise ImpossibleInput("gauge_bar", draft.gauge_bar, low=-1.0, high=30.0, unit="bar")
        if draft.kind is CheckKind.OPENED:
            count = max(draft.bottle_count, 1)
            if count > parts.bottles_left:
                raise ImpossibleInput(
                    "bottle_count", count, low=1, high=parts.bottles_left, reason="too_many"
                )
            draft = replace(draft, bottle_count=count)
        return draft
