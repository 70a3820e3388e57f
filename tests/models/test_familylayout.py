"""Where cultures stand in the drawn family: nobody on top of another, children beside parents."""

from __future__ import annotations

from datetime import UTC, datetime

from hypothesis import given
from hypothesis import strategies as st

from brewdesk.models.familylayout import plan_family
from brewdesk.services.lineage import FamilyNode, generations
from brewdesk.services.records import Culture, CultureOrigin, CultureState

BORN = datetime(2026, 1, 1, tzinfo=UTC)


def family(parents):
    """Nodes 1..n with the parents given for each."""
    ids = sorted(parents)
    generation = generations(ids, parents)
    return tuple(
        FamilyNode(
            culture=Culture(
                id=one,
                name=f"C{one}",
                origin=CultureOrigin.GIFT,
                state=CultureState.RESTING,
                born_at=BORN,
            ),
            generation=generation[one],
            age_days=0,
            parent_ids=tuple(parents[one]),
            child_ids=tuple(child for child in ids if one in parents[child]),
            vessel_name="",
            batch_count=0,
        )
        for one in ids
    )


FAMILIES = st.lists(st.lists(st.integers(1, 40), max_size=3), max_size=40).map(
    lambda rows: {
        number: sorted({above for above in row if above < number})
        for number, row in enumerate(rows, start=1)
    }
)


@given(FAMILIES)
def test_no_two_stand_on_one_spot_and_every_child_is_right_of_its_parents(parents):
    nodes = family(parents)
    plan = plan_family(nodes)
    assert len(set(plan.spots)) == len(nodes)
    for parent, child in plan.links:
        assert plan.spots[parent].column < plan.spots[child].column
    assert len(plan.links) == sum(len(above) for above in parents.values())
    assert all(0 <= spot.column < plan.columns and 0 <= spot.row < plan.rows for spot in plan.spots)


@given(FAMILIES)
def test_a_parent_is_level_with_its_first_child_and_above_the_others(parents):
    plan = plan_family(family(parents))
    children = {}
    for child, parent in enumerate(plan.first_parent):
        if parent is not None:
            children.setdefault(parent, []).append(plan.spots[child].row)
            assert plan.spots[child].column == plan.spots[parent].column + 1
    for parent, rows in children.items():
        assert plan.spots[parent].row == min(rows)


def test_one_culture_and_none():
    assert plan_family(()).rows == 0
    plan = plan_family(family({1: []}))
    assert (plan.rows, plan.columns, plan.links) == (1, 1, ())


def test_a_line_of_two_thousand_is_no_trouble():
    plan = plan_family(
        family({number: [number - 1] if number > 1 else [] for number in range(1, 2001)})
    )
    assert (plan.rows, plan.columns) == (1, 2000)
