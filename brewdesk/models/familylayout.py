"""Where each culture stands in the drawn family: generations from left to right.

Pure figures, in columns and rows; a row is one card high. Every culture is drawn beside
one of its parents, the one of the latest generation, so that no line to it is longer than
one column; lines to its other parents are drawn over the rest.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from brewdesk.services.lineage import FamilyNode


@dataclass(frozen=True, slots=True)
class Spot:
    """Column and row of one card."""

    column: int
    row: int


@dataclass(frozen=True, slots=True)
class FamilyPlan:
    """Where everybody stands, in the order of the nodes, and how large the whole is."""

    spots: tuple[Spot, ...]
    first_parent: tuple[int | None, ...]  # index of the parent each stands beside
    links: tuple[tuple[int, int], ...]  # (parent index, child index), first parents first
    columns: int
    rows: int


def plan_family(nodes: Sequence[FamilyNode]) -> FamilyPlan:
    """Place all cultures; no two share a spot, and a parent stands level with its first child."""
    index_of = {node.culture.id: index for index, node in enumerate(nodes)}
    first: list[int | None] = [_first_parent(node, nodes, index_of) for node in nodes]
    children: dict[int | None, list[int]] = {}
    for index, parent in enumerate(first):
        children.setdefault(parent, []).append(index)
    rows = [0] * len(nodes)
    used = 0
    # Depth first without recursion: a line may be longer than Python's stack.
    pending: list[tuple[int, bool]] = [(root, False) for root in reversed(children.get(None, []))]
    while pending:
        index, is_done = pending.pop()
        below = children.get(index, [])
        if is_done:
            rows[index] = rows[below[0]]
        elif below:
            pending.append((index, True))
            pending += [(child, False) for child in reversed(below)]
        else:
            rows[index] = used
            used += 1
    others = [
        (index_of[parent_id], index)
        for index, node in enumerate(nodes)
        for parent_id in node.parent_ids
        if parent_id in index_of and index_of[parent_id] != first[index]
    ]
    own = [(parent, index) for index, parent in enumerate(first) if parent is not None]
    return FamilyPlan(
        spots=tuple(Spot(node.generation, row) for node, row in zip(nodes, rows, strict=True)),
        first_parent=tuple(first),
        links=(*own, *others),
        columns=1 + max((node.generation for node in nodes), default=-1),
        rows=used,
    )


def _first_parent(
    node: FamilyNode, nodes: Sequence[FamilyNode], index_of: dict[int, int]
) -> int | None:
    """Return the parent of the generation just before; only that cannot make a ring."""
    known = [index_of[one] for one in node.parent_ids if one in index_of]
    before = [index for index in known if nodes[index].generation == node.generation - 1]
    return before[0] if before else None
