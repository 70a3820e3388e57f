"""The pH of many blends at once: the balance of :mod:`culturecore.acidbase` on arrays.

Needs numpy, so nothing that runs at the start of the program imports this.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from culturecore.acidbase import HIGHEST_PH, LOWEST_PH, MAX_STRONG
from culturecore.acidconstants import ACIDS, AcidConstants, constants_at
from culturecore.constants import LN_10
from culturecore.errors import ImpossibleInput


def ph_of_many(
    acids_mol_per_kg: ArrayLike,
    strong_ion_excess_eq_per_kg: ArrayLike,
    temperature_c: float = 25.0,
    *,
    inert_salt_mol_per_kg: ArrayLike = 0.0,
) -> NDArray[np.float64]:
    """Return the pH of many blends at once.

    Parameters
    ----------
    acids_mol_per_kg : array (n, 8)
        Columns in the order of :data:`culturecore.acidconstants.ACIDS`.
    strong_ion_excess_eq_per_kg, inert_salt_mol_per_kg : array (n,) or number
        As in :class:`culturecore.acidbase.Blend`.
    temperature_c : float
        One temperature for all, 0 to 60 degC.

    Returns
    -------
    array (n,)
        pH.

    Raises
    ------
    ImpossibleInput
        For amounts that a single blend may not have either.
    """
    totals = np.atleast_2d(np.asarray(acids_mol_per_kg, dtype=float))
    excess = np.broadcast_to(np.asarray(strong_ion_excess_eq_per_kg, float), totals.shape[:1])
    salt = np.broadcast_to(np.asarray(inert_salt_mol_per_kg, float), totals.shape[:1])
    if totals.shape[1] != len(ACIDS) or not np.all(np.isfinite(totals) & (totals >= 0.0)):
        raise ImpossibleInput("acids_mol_per_kg", acids_mol_per_kg, low=0.0, unit="mol/kg")
    if not (np.all(np.abs(excess) <= MAX_STRONG) and np.all((salt >= 0) & (salt <= MAX_STRONG))):
        raise ImpossibleInput("strong_ion_excess_eq_per_kg", excess, unit="eq/kg")
    constants = constants_at(temperature_c)
    low = np.full(len(totals), LOWEST_PH)
    high = np.full(len(totals), HIGHEST_PH)
    ionic = np.abs(excess) / 2.0 + salt
    for _ in range(12):
        middle = (low + high) / 2.0
        too_acid = _imbalance_of_many(totals, excess, salt, middle, ionic, constants)[0] > 0.0
        low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
    ph: NDArray[np.float64] = (low + high) / 2.0
    for _ in range(60):
        over, buffer, ionic = _imbalance_of_many(totals, excess, salt, ph, ionic, constants)
        step = np.clip(over / buffer, -0.5, 0.5)
        ph = ph + step
        if np.all(np.abs(step) < 1e-9):
            break
    return ph


def _imbalance_of_many(
    totals: NDArray[np.float64],
    excess: NDArray[np.float64],
    salt: NDArray[np.float64],
    ph: NDArray[np.float64],
    ionic: NDArray[np.float64],
    constants: AcidConstants,
) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Return what :func:`culturecore.acidbase.ph_of` balances, for arrays."""
    root = np.sqrt(ionic)
    log_gamma = -constants.davies_a * (root / (1.0 + root) - 0.3 * ionic)
    hydrogen = 10.0 ** (-ph - log_gamma)
    hydroxide = 10.0 ** (ph - constants.pk_water - log_gamma)
    charge = excess + hydrogen - hydroxide
    buffer = hydrogen + hydroxide
    squares = np.abs(excess) + 2.0 * salt + hydrogen + hydroxide
    for column, log_betas in enumerate(constants.log_betas):
        total = totals[:, column]
        if not total.any():
            continue
        norm, mean, mean_square = np.ones_like(ph), np.zeros_like(ph), np.zeros_like(ph)
        for z, log_beta in enumerate(log_betas, start=1):
            ratio = 10.0 ** (z * ph + log_beta - z * z * log_gamma + 0.1 * ionic)
            norm += ratio
            mean += z * ratio
            mean_square += z * z * ratio
        mean /= norm
        mean_square /= norm
        charge = charge - total * mean
        buffer = buffer + total * (mean_square - mean * mean)
        squares = squares + total * mean_square
    return charge, LN_10 * buffer, squares / 2.0
