"""The pH of many blends at once: the balance of :mod:`culturecore.acidbase` on arrays.

Needs numpy, so nothing that runs at the start of the program imports this. The work is
done in blocks that stay in the processor's cache, with two exponentials a round; all
other powers are products of those.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, cast

import numpy as np
from numpy.typing import ArrayLike, NDArray

from culturecore.acidbase import (
    BRACKET_PH,
    HIGHEST_IONIC_STRENGTH,
    MAX_STRONG,
)
from culturecore.acidconstants import ACIDS, Maths, constants_with
from culturecore.constants import LN_10
from culturecore.errors import ImpossibleInput

Floats = NDArray[np.float64]
_ConstantArrays = tuple[tuple[tuple[Floats, ...], ...], Floats, Floats]

BLOCK: Final = 2048  # rows; 8 acids of this length fill a first-level cache
NEWTON_ROUNDS: Final = (8, 40)  # in the whole block, then for the rows that need more
HALVINGS: Final = 52  # every bit of a float
_FIRST_PH = 4.0  # near most drinks
_PH_STEP = 1e-8  # the last step is taken, so what is left is smaller still
_IONIC_STEP = 1e-9
_NEAR = 0.2  # pH
_LOG_NOISE = 2e-15  # of a ratio of two sums of charges


def ph_of_many(
    acids_mol_per_kg: ArrayLike,
    strong_ion_excess_eq_per_kg: ArrayLike,
    temperature_c: ArrayLike = 25.0,
    *,
    inert_salt_mol_per_kg: ArrayLike = 0.0,
) -> Floats:
    """Return the pH of many blends at once.

    Parameters
    ----------
    acids_mol_per_kg : array (n, 8)
        Columns in the order of :data:`culturecore.acidconstants.ACIDS`; below 10 mol/kg.
    strong_ion_excess_eq_per_kg, inert_salt_mol_per_kg : array (n,) or number
        As in :class:`culturecore.acidbase.Blend`.
    temperature_c : array (n,) or number
        0 to 60 degC.

    Returns
    -------
    array (n,)
        pH, within 1e-8 of what a single blend gets where it is buffered at all.

    Raises
    ------
    ImpossibleInput
        For amounts that a single blend may not have either.

    Notes
    -----
    Newton's steps on the logarithm of positive over negative charge, kept inside a bracket;
    rows that do not settle are halved to their end, so every row ends.
    """
    totals = np.atleast_2d(np.asarray(acids_mol_per_kg, dtype=np.float64))
    if totals.ndim != 2 or totals.shape[1] != len(ACIDS):
        raise ImpossibleInput("acids_mol_per_kg", totals.shape, reason="shape")
    excess = _column("strong_ion_excess_eq_per_kg", strong_ion_excess_eq_per_kg, totals)
    salt = _column("inert_salt_mol_per_kg", inert_salt_mol_per_kg, totals)
    temperature = _column("temperature_c", temperature_c, totals)
    # NaN fails every one of these
    _refuse_outside("acids_mol_per_kg", totals, 0.0, np.nextafter(10.0, 0.0), "mol/kg")
    _refuse_outside("strong_ion_excess_eq_per_kg", excess, -MAX_STRONG, MAX_STRONG, "eq/kg")
    _refuse_outside("inert_salt_mol_per_kg", salt, 0.0, MAX_STRONG, "mol/kg")
    _refuse_outside("temperature_c", temperature, 0.0, 60.0, "°C")
    ph = np.empty(len(totals))
    for start in range(0, len(totals), BLOCK):
        rows = slice(start, start + BLOCK)
        ph[rows] = _solve(_Block.of(totals[rows].T, excess[rows], salt[rows], temperature[rows]))
    return ph


@dataclass(frozen=True, slots=True)
class _Block:
    """Rows that are solved together; acids that none of them holds are left out."""

    ones: Floats  # (k, n) totals of the acids with one step
    one_betas: Floats
    twos: Floats  # ... with two and more steps
    two_betas: Floats  # (2, k, n)
    three: Floats  # (n,) the one with three
    three_beta: Floats
    three_row: int  # its place among ``twos``, -1 when absent
    excess: Floats
    salt: Floats
    k_water: Floats
    davies_a: Floats

    @classmethod
    def of(cls, totals: Floats, excess: Floats, salt: Floats, temperature_c: Floats) -> _Block:
        uniform = bool(np.all(temperature_c == temperature_c[0]))
        # one temperature for all is worked out once; the arithmetic is that of single floats
        temperatures = cast("float", temperature_c[:1] if uniform else temperature_c)
        constants = constants_with(cast("Maths", np), temperatures)
        log_betas, pk_water, davies_a = cast("_ConstantArrays", constants)
        count = len(excess)
        held = [k for k in range(len(ACIDS)) if totals[k].any()]
        ones = [k for k in held if len(log_betas[k]) == 1]
        twos = [k for k in held if len(log_betas[k]) > 1]
        threes = [k for k in held if len(log_betas[k]) > 2]

        def betas(acids: list[int], step: int) -> Floats:
            width = 1 if uniform else count
            logs = np.empty((len(acids), width))
            for row, k in enumerate(acids):
                logs[row] = log_betas[k][step]
            return np.asarray(np.exp(LN_10 * logs), dtype=np.float64)

        return cls(
            ones=np.ascontiguousarray(totals[ones]),
            one_betas=betas(ones, 0),
            twos=np.ascontiguousarray(totals[twos]),
            two_betas=np.stack((betas(twos, 0), betas(twos, 1))),
            three=totals[threes[0]] if threes else np.zeros(count),
            three_beta=betas(threes, 2)[0] if threes else np.zeros(1),
            three_row=twos.index(threes[0]) if threes else -1,
            excess=excess,
            salt=salt,
            k_water=np.exp(-LN_10 * pk_water),
            davies_a=davies_a,
        )

    def some(self, rows: NDArray[np.intp]) -> _Block:
        """Return a block of these rows only."""

        def cut(values: Floats) -> Floats:
            return values[..., rows] if values.shape[-1] > 1 else values

        return _Block(
            ones=self.ones[:, rows],
            one_betas=cut(self.one_betas),
            twos=self.twos[:, rows],
            two_betas=cut(self.two_betas),
            three=self.three[rows],
            three_beta=cut(self.three_beta),
            three_row=self.three_row,
            excess=self.excess[rows],
            salt=self.salt[rows],
            k_water=cut(self.k_water),
            davies_a=cut(self.davies_a),
        )


def _solve(block: _Block) -> Floats:
    """Return the pH of a block's rows: most soon, the rest in a smaller block, each surely."""
    ph = np.full(len(block.excess), _FIRST_PH)
    ionic = np.abs(block.excess) / 2.0 + block.salt
    ph, ionic, settled = _by_newton(block, ph, ionic, NEWTON_ROUNDS[0])
    if settled.all():
        return ph
    rest = np.flatnonzero(~settled)
    ph[rest], _, settled = _by_newton(block.some(rest), ph[rest], ionic[rest], NEWTON_ROUNDS[1])
    if not settled.all():
        rest = rest[~settled]
        ph[rest] = _by_halving(block.some(rest))
    return ph


def _by_newton(
    block: _Block, ph: Floats, ionic: Floats, rounds: int
) -> tuple[Floats, Floats, NDArray[np.bool_]]:
    """Return pH and ionic strength after that many rounds, and which rows have settled."""
    count = len(block.excess)
    low, high = np.full(count, BRACKET_PH[0]), np.full(count, BRACKET_PH[1])
    settled = np.zeros(count, dtype=np.bool_)
    for _ in range(rounds):
        before = ionic
        log_ratio, slope, ionic = _balance(block, ph, before)
        step = log_ratio / slope
        size = np.abs(step)
        settled = (size < _PH_STEP) | (np.abs(log_ratio) < _LOG_NOISE)
        # a balance at an ionic strength that is still moving is a coincidence
        settled &= np.abs(ionic - before) < _IONIC_STEP
        ahead = ph + step
        if settled.all():
            return ahead, ionic, settled
        # The bracket holds at one ionic strength only, which is still moving: it guards the
        # large steps, and the small ones go where they will.
        far = size > _NEAR
        low, high = (
            np.where(far & (step > 0.0), ph, low),
            np.where(far & (step < 0.0), ph, high),
        )
        inside = (ahead > low) & (ahead < high)
        ph = np.where(far & ~inside, (low + high) / 2.0, ahead)
    return ph, ionic, settled


def _by_halving(block: _Block) -> Floats:
    """Return the pH of rows that did not settle, as ``acidbase._ph_by_halving`` does."""
    count = len(block.excess)

    def ph_at(ionic: Floats) -> Floats:
        low, high = np.full(count, BRACKET_PH[0]), np.full(count, BRACKET_PH[1])
        for _ in range(HALVINGS):
            middle = (low + high) / 2.0
            too_acid = _balance(block, middle, ionic)[0] > 0.0
            low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
        found: Floats = (low + high) / 2.0
        return found

    low, high = np.zeros(count), np.full(count, HIGHEST_IONIC_STRENGTH)
    for _ in range(HALVINGS):
        middle = (low + high) / 2.0
        brought = _balance(block, ph_at(middle), middle)[2]
        rises = brought > middle
        low, high = np.where(rises, middle, low), np.where(rises, high, middle)
    return ph_at((low + high) / 2.0)


def _balance(block: _Block, ph: Floats, ionic: Floats) -> tuple[Floats, Floats, Floats]:
    """Return (ln of positive over negative charge, minus its slope, ionic strength)."""
    root = np.sqrt(ionic)
    log_gamma = block.davies_a * (0.3 * ionic - root / (1.0 + root))
    gamma = np.exp(LN_10 * log_gamma)
    power = np.exp(LN_10 * ph)
    neutral = np.exp((0.1 * LN_10) * ionic)
    hydrogen = 1.0 / (power * gamma)
    hydroxide = power * block.k_water / gamma

    once = power / gamma
    first = once * neutral
    # charge, its spread (the buffer) and its square, summed over the acids
    share = block.one_betas * first
    share /= 1.0 + share
    charged = block.ones * share
    mean = charged.sum(axis=0)
    square = mean.copy()
    spread = mean - (charged * share).sum(axis=0)
    if len(block.twos):
        gamma_2 = gamma * gamma
        second = once * once / gamma_2 * neutral
        one = block.two_betas[0] * first
        two = block.two_betas[1] * second
        norm = 1.0 + one + two
        means = one + 2.0 * two
        squares = means + 2.0 * two
        if block.three_row >= 0:
            # z squared is nine: three powers of ``once`` hold three of those
            third = once * once * once / (gamma_2 * gamma_2 * gamma_2) * neutral
            three = block.three_beta * third
            norm[block.three_row] += three
            means[block.three_row] += 3.0 * three
            squares[block.three_row] += 9.0 * three
        means /= norm
        squares /= norm
        charged = block.twos * means
        mean = mean + charged.sum(axis=0)
        spread = spread + (block.twos * squares - charged * means).sum(axis=0)
        square = square + (block.twos * squares).sum(axis=0)

    positive = hydrogen + np.maximum(block.excess, 0.0)
    negative = hydroxide + np.maximum(-block.excess, 0.0) + mean
    slope = LN_10 * (hydrogen / positive + (hydroxide + spread) / negative)
    strength = 0.5 * (np.abs(block.excess) + hydrogen + hydroxide + square) + block.salt
    # a step too far must not carry the activity coefficients out of all bounds
    return np.log(positive / negative), slope, np.minimum(strength, HIGHEST_IONIC_STRENGTH)


def _column(field: str, values: ArrayLike, totals: Floats) -> Floats:
    column = np.asarray(values, dtype=np.float64)
    if column.shape not in ((), (1,), (len(totals),)):
        raise ImpossibleInput(field, column.shape, reason="shape")
    return np.broadcast_to(column, (len(totals),))


def _refuse_outside(field: str, values: Floats, low: float, high: float, unit: str) -> None:
    wrong = ~((values >= low) & (values <= high))
    if wrong.any():
        raise ImpossibleInput(field, float(values[wrong][0]), low=low, high=high, unit=unit)
