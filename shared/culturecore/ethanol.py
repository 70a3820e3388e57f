"""Ethanol and water: density, strength by volume and by mass, and what sugar can give."""

from __future__ import annotations

from typing import Final

from culturecore.co2 import CO2_G_PER_MOL
from culturecore.errors import ImpossibleInput
from culturecore.stages import SugarKind as SugarKind

ETHANOL_G_PER_MOL: Final = 46.0684  # IUPAC standard atomic masses, as are the next two
SUCROSE_G_PER_MOL: Final = 342.2965
HEXOSE_G_PER_MOL: Final = 180.1559
ACETIC_PER_ETHANOL: Final = 60.052 / 46.0684  # stoichiometry: C2H6O + O2 = C2H4O2 + H2O
ETHANOL_G_PER_ML: Final = 0.78924  # oiml_r22, pure ethanol at 20 degC

# oiml_r22: density [kg/m³] = sum A_k p^(k-1) + sum B_k (t-20)^k + sum C_ik p^k (t-20)^i,
# p the mass share of ethanol, t in degC
_A = (
    9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4, -8.829278388e4,
    3.062874042e5, -6.138381234e5, 7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4,
)  # fmt: skip
_B = (
    -2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11,
)  # fmt: skip
_C = (
    (
        1.693443461530087e-1, -1.046914743455169e1, 7.196353469546523e1, -7.047478054272792e2,
        3.924090430035045e3, -1.210164659068747e4, 2.248646550400788e4, -2.605562982188164e4,
        1.852373922069467e4, -7.420201433430137e3, 1.285617841998974e3,
    ),
    (
        -1.193013005057010e-2, 2.517399633803461e-1, -2.170575700536993, 1.353034988843029e1,
        -5.029988758547014e1, 1.096355666577570e2, -1.422753946421155e2, 1.080435942856230e2,
        -4.414153236817392e1, 7.442971530188783,
    ),
    (
        -6.802995733503803e-4, 1.876837790289664e-2, -2.002561813734156e-1, 1.022992966719220,
        -2.895696483903638, 4.810060584300675, -4.672147440794683, 2.458043105903461,
        -5.411227621436812e-1,
    ),
    (
        4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6,
    ),
    (-2.788074354782409e-8, 1.345612883493354e-8),
)  # fmt: skip


_SPLIT: Final[dict[SugarKind, tuple[float, float]]] = {  # molecules of each product, mass
    SugarKind.SUCROSE: (4.0, SUCROSE_G_PER_MOL),
    SugarKind.HEXOSE: (2.0, HEXOSE_G_PER_MOL),
}


def co2_g_per_g(kind: SugarKind) -> float:
    """Return grams of CO2 from a gram of sugar, nothing lost (stoichiometry)."""
    molecules, mass = _SPLIT[kind]
    return molecules * CO2_G_PER_MOL / mass


def ethanol_g_per_g(kind: SugarKind) -> float:
    """Return grams of ethanol from a gram of sugar, nothing lost (stoichiometry)."""
    molecules, mass = _SPLIT[kind]
    return molecules * ETHANOL_G_PER_MOL / mass


def density_kg_per_l(mass_percent: float, temperature_c: float = 20.0) -> float:
    """Return the density of ethanol in water [kg/L].

    Parameters
    ----------
    mass_percent : float
        Grams of ethanol in 100 g, 0 to 100.
    temperature_c : float
        -20 to 40 degC.

    Raises
    ------
    ImpossibleInput
        Outside those ranges.

    Notes
    -----
    Source: oiml_r22, exact to the sixth digit of the density.
    """
    _check("mass_percent", mass_percent, 100.0, "%")
    if not -20.0 <= temperature_c <= 40.0:
        raise ImpossibleInput("temperature_c", temperature_c, low=-20.0, high=40.0, unit="°C")
    share, above = mass_percent / 100.0, temperature_c - 20.0
    at_20_c = sum(a * share**power for power, a in enumerate(_A))
    of_water = sum(b * above**power for power, b in enumerate(_B, start=1))
    both = sum(
        c * share**k * above**i
        for i, row in enumerate(_C, start=1)
        for k, c in enumerate(row, start=1)
    )
    return (at_20_c + of_water + both) / 1000.0


def abv_from_g_per_l(ethanol_g_per_l: float) -> float:
    """Return strength [% vol at 20 degC] for grams of ethanol in a litre, 0 to 789."""
    _check("ethanol_g_per_l", ethanol_g_per_l, 1000.0 * ETHANOL_G_PER_ML, "g/L")
    return ethanol_g_per_l / (10.0 * ETHANOL_G_PER_ML)


def g_per_l_from_abv(abv: float) -> float:
    """Return grams of ethanol in a litre for a strength [% vol at 20 degC], 0 to 100."""
    _check("abv", abv, 100.0, "% vol")
    return abv * 10.0 * ETHANOL_G_PER_ML


def abv_from_mass_percent(mass_percent: float) -> float:
    """Return strength [% vol at 20 degC] of ethanol in water, from percent by mass."""
    return mass_percent * density_kg_per_l(mass_percent) / density_kg_per_l(100.0)


def _check(field: str, value: float, most: float, unit: str) -> None:
    if not 0.0 <= value <= most:  # NaN fails too
        raise ImpossibleInput(field, value, low=0.0, high=most, unit=unit)
