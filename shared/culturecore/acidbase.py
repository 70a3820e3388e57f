"""Weak acids in water: the pH of a blend, and how much starter a wished pH takes.

A liquid is a :class:`Blend`: how much of each acid it holds, and by how much its strong
cations outnumber its strong anions. On mixing these add up by mass; pH does not. The pH
follows from charge balance with Davies activity coefficients and temperature-dependent
constants; it is on the activity scale, as an electrode reads it.

Validity: 0 to 60 degC, ionic strength up to about 0.1 mol/kg. Amounts are per kg of
water; using them per kg of sweet tea costs about 0.003 pH. Complexes with calcium and
magnesium are left out (below 0.02 pH in acid drinks without citrate). Against a meter no
prediction is better than 0.15 pH (astm_e70_aoac_97341).
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, fields, replace
from typing import Final

from culturecore.acidconstants import ACIDS, AcidConstants, constants_at
from culturecore.constants import ACETIC_ACID_G_PER_MOL, LN_10
from culturecore.errors import ImpossibleInput
from culturecore.rootfinding import root_of_rising, settle

END_POINT_PH: Final = 8.1  # aoac_94215; some texts use 8.2, which changes 0.1 %

GLUCONIC_SHARE: Final = 0.29  # of the acid, by amount; starter_acid_assumption
STRONG_ION_EXCESS_EQ_PER_KG: Final = 0.004  # of a ripe starter; starter_acid_assumption

# tea_buffer_assumption: what a gram of leaf leaves in the brew, and the pH of tea in pure water
TEA_ACID_MOL_PER_G: Final = 0.0008
TEA_PHENOL_MOL_PER_G: Final = 0.00025
TEA_PH_IN_PURE_WATER: Final = 4.95  # simpson_2001: black tea 4.9

LOWEST_PH, HIGHEST_PH = 0.0, 14.0  # that may be asked for
BRACKET_PH: Final = (-1.0, 16.0)  # where a balance is looked for: cold water is neutral at 7.5
MAX_STRONG: Final = 0.5  # mol/kg of strong ions; always balanced between those two
NEWTON_ROUNDS: Final = 60  # far more than are ever needed
CHARGE_NOISE_EQ_PER_KG: Final = 1e-15  # sums of charges up to 1 eq/kg carry no more digits
HIGHEST_IONIC_STRENGTH: Final = 20.0  # above that of any blend whose charges balance


@dataclass(frozen=True, slots=True, kw_only=True)
class Blend:
    """What a liquid holds, per kg of water. Totals count every form of an acid."""

    acetic_mol_per_kg: float = 0.0
    gluconic_mol_per_kg: float = 0.0
    lactic_mol_per_kg: float = 0.0
    malic_mol_per_kg: float = 0.0
    citric_mol_per_kg: float = 0.0
    carbonic_mol_per_kg: float = 0.0
    tea_acid_mol_per_kg: float = 0.0  # pseudo-acid of brewed tea, pK 4.5
    tea_phenol_mol_per_kg: float = 0.0  # pseudo-acid of brewed tea, pK 8.5
    strong_ion_excess_eq_per_kg: float = 0.0  # strong cations less strong anions
    inert_salt_mol_per_kg: float = 0.0  # 1:1 salt that only adds ionic strength

    @property
    def acids_mol_per_kg(self) -> tuple[float, ...]:
        """The totals in the order of :data:`ACIDS`."""
        return (
            self.acetic_mol_per_kg,
            self.gluconic_mol_per_kg,
            self.lactic_mol_per_kg,
            self.malic_mol_per_kg,
            self.citric_mol_per_kg,
            self.carbonic_mol_per_kg,
            self.tea_acid_mol_per_kg,
            self.tea_phenol_mol_per_kg,
        )


def ph_of(blend: Blend, temperature_c: float = 25.0) -> float:
    """Return the pH of a blend.

    Parameters
    ----------
    blend : Blend
        What the liquid holds.
    temperature_c : float
        0 to 60 degC.

    Raises
    ------
    ImpossibleInput
        For a negative amount, NaN, more than 0.5 eq/kg of strong ions (the activity
        coefficients end far below), or a temperature out of range.

    Notes
    -----
    strong ions + [H+] - [OH-] - sum of C n = 0, with n the mean charge each acid has
    given off. Same constants in PHREEQC: 400 mixtures within 0.001 pH.
    """
    _check_blend(blend)
    constants = constants_at(temperature_c)
    strong = blend.strong_ion_excess_eq_per_kg
    low, high = BRACKET_PH
    ionic = _ionic_strength_floor(blend)
    # a coarse bisection at fixed activity coefficients finds the neighbourhood ...
    for _ in range(6):
        middle = (low + high) / 2.0
        if _imbalance(blend, strong, middle, ionic, constants)[0] > 0.0:
            low = middle
        else:
            high = middle
    ph = (low + high) / 2.0
    # ... and clipped Newton steps, with the ionic strength renewed each time, finish it
    for _ in range(NEWTON_ROUNDS):
        before = ionic
        charge, buffer, ionic = _imbalance(blend, strong, ph, before, constants)
        step = max(-0.5, min(0.5, charge / buffer))
        ph += step
        # unbuffered, the last digit of the charge may move the pH by more than the first
        # bound; a balance at an ionic strength that is still moving is a coincidence
        balanced = abs(step) < 1e-10 or abs(charge) < CHARGE_NOISE_EQ_PER_KG
        if balanced and abs(ionic - before) < 1e-10:
            return ph
    return _ph_by_halving(blend, constants)


def _ph_by_halving(blend: Blend, constants: AcidConstants) -> float:
    """Return the pH where Newton's steps found none: slow, and sure to end.

    At a given ionic strength the charge falls as the pH rises, so halving finds the pH. The
    ionic strength that this pH brings starts above the given one and ends below it, so
    halving finds that too.
    """
    strong = blend.strong_ion_excess_eq_per_kg

    def ph_at(ionic: float) -> float:
        return root_of_rising(
            lambda ph: -_imbalance(blend, strong, ph, ionic, constants)[0],
            *BRACKET_PH,
            tolerance=1e-12,
        )

    def surplus(ionic: float) -> float:
        return ionic - _imbalance(blend, strong, ph_at(ionic), ionic, constants)[2]

    return ph_at(root_of_rising(surplus, 0.0, HIGHEST_IONIC_STRENGTH, tolerance=1e-12))


def buffer_capacity_eq_per_kg(
    blend: Blend, temperature_c: float = 25.0, *, ph: float | None = None
) -> float:
    """Return how much strong base per kg moves the pH by one (dB/dpH), at ``ph`` or its own.

    At constant activity coefficients, which leaves out some 3 % in a starter.
    """
    at = ph_of(blend, temperature_c) if ph is None else _checked_ph("ph", ph)
    constants = constants_at(temperature_c)
    ionic = _settled_ionic_strength(blend, at, constants)
    return _imbalance(blend, blend.strong_ion_excess_eq_per_kg, at, ionic, constants)[1]


def strong_ions_needed_eq_per_kg(blend: Blend, ph: float, temperature_c: float = 25.0) -> float:
    """Return the strong-ion excess that would give the blend's acids this pH [eq/kg].

    Direct, no search. The blend's own strong-ion excess is not looked at, but for a first
    guess of ionic strength.
    """
    _check_blend(blend)
    _checked_ph("ph", ph)
    constants = constants_at(temperature_c)

    def needed_at(ionic: float) -> float:
        return -_imbalance(blend, 0.0, ph, ionic, constants)[0]

    # the wanted excess and the ionic strength it brings are refined together
    ionic = settle(
        lambda ionic: _imbalance(blend, needed_at(ionic), ph, ionic, constants)[2],
        _ionic_strength_floor(blend),
        tolerance=1e-14,
    )
    return needed_at(ionic)


def mix(parts: Iterable[tuple[Blend, float]]) -> Blend:
    """Return the blend of several liquids, each with its mass [kg].

    Raises
    ------
    ImpossibleInput
        For a negative mass, or when there is no mass at all.
    """
    totals = dict.fromkeys((f.name for f in fields(Blend)), 0.0)
    mass_kg = 0.0
    for blend, part_kg in parts:
        if not 0.0 <= part_kg < math.inf:
            raise ImpossibleInput("mass_kg", part_kg, low=0.0, unit="kg")
        mass_kg += part_kg
        for name in totals:
            totals[name] += getattr(blend, name) * part_kg
    if mass_kg == 0.0:
        raise ImpossibleInput("mass_kg", mass_kg, low=0.0, unit="kg")
    return Blend(**{name: total / mass_kg for name, total in totals.items()})


def titratable_acidity_g_per_l(
    blend: Blend, temperature_c: float = 25.0, *, end_point_ph: float = END_POINT_PH
) -> float:
    """Return the acidity found by titration to an end point, as g/L of acetic acid.

    Carbonic acid is left out: a sample is freed of gas before titration. A litre is taken
    for a kilogram. Negative for liquids already above the end point.
    """
    still = replace(blend, carbonic_mol_per_kg=0.0)
    needed = strong_ions_needed_eq_per_kg(still, end_point_ph, temperature_c)
    return (needed - blend.strong_ion_excess_eq_per_kg) * ACETIC_ACID_G_PER_MOL


def starter_blend(
    ph: float,
    ta_g_per_l: float | None = None,
    gluconic_share: float = GLUCONIC_SHARE,
    *,
    strong_ion_excess_eq_per_kg: float = STRONG_ION_EXCESS_EQ_PER_KG,
    temperature_c: float = 25.0,
) -> Blend:
    """Return the make-up of a ripe starter from what can be measured of it.

    Parameters
    ----------
    ph : float
        Measured pH, 2 to 6.
    ta_g_per_l : float | None
        Titratable acidity as acetic acid [g/L]. With it the strong-ion excess follows.
        Without it that excess is assumed and the acidity follows; that is a wide guess:
        at pH 3.0 from about 2 to 10 g/L.
    gluconic_share : float
        Share of the acid that is gluconic, by amount, 0 to 1; the rest is acetic.
    strong_ion_excess_eq_per_kg : float
        Used only when ``ta_g_per_l`` is None (starter_acid_assumption).

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    _check("ph", ph, 2.0, 6.0, "pH")
    _check("gluconic_share", gluconic_share, 0.0, 1.0, "")
    if ta_g_per_l is not None:
        _check("ta_g_per_l", ta_g_per_l, 0.0, 60.0, "g/L")
    else:
        _check("strong_ion_excess_eq_per_kg", strong_ion_excess_eq_per_kg, 0.0, 0.1, "eq/kg")

    def of_total(total: float, excess: float) -> Blend:
        return Blend(
            acetic_mol_per_kg=total * (1.0 - gluconic_share),
            gluconic_mol_per_kg=total * gluconic_share,
            strong_ion_excess_eq_per_kg=excess,
        )

    free = strong_ions_needed_eq_per_kg(Blend(), ph, temperature_c)

    def better_total(total: float) -> float:
        needed = strong_ions_needed_eq_per_kg(of_total(total, 0.0), ph, temperature_c)
        if ta_g_per_l is None:
            charge_per_mol = (needed - free) / total
            wanted = (strong_ion_excess_eq_per_kg - free) / charge_per_mol
        else:
            end = strong_ions_needed_eq_per_kg(of_total(total, 0.0), END_POINT_PH, temperature_c)
            wanted = total * (ta_g_per_l / ACETIC_ACID_G_PER_MOL) / (end - needed)
        return max(wanted, 1e-9)

    total = settle(better_total, 0.05, tolerance=1e-13, rounds=30)
    excess = strong_ions_needed_eq_per_kg(of_total(total, 0.0), ph, temperature_c)
    return of_total(total, excess)


def sweet_tea_blend(
    alkalinity_meq_per_l: float,
    tea_g_per_l: float,
    *,
    tea_acid_mol_per_g: float = TEA_ACID_MOL_PER_G,
    tea_ph_in_pure_water: float = TEA_PH_IN_PURE_WATER,
) -> Blend:
    """Return the make-up of sweet tea from its water and its leaf.

    Parameters
    ----------
    alkalinity_meq_per_l : float
        Of the water, 0 to 20 meq/L.
    tea_g_per_l : float
        Dry leaf per litre, 0 to 50 g/L.
    tea_acid_mol_per_g : float
        Buffering acid that a gram of leaf gives off; the truth may be half or double.
    tea_ph_in_pure_water : float
        3 to 8.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    tea_buffer_assumption. The water's bicarbonate is kept as carbonic acid: boiling drives
    part of it out, which hardly matters below pH 5. Sugar is no acid and takes no part.
    """
    _check("alkalinity_meq_per_l", alkalinity_meq_per_l, 0.0, 20.0, "meq/L")
    _check("tea_g_per_l", tea_g_per_l, 0.0, 50.0, "g/L")
    _check("tea_acid_mol_per_g", tea_acid_mol_per_g, 0.0, 0.01, "mol/g")
    _check("tea_ph_in_pure_water", tea_ph_in_pure_water, 3.0, 8.0, "pH")
    leaf = Blend(
        tea_acid_mol_per_kg=tea_acid_mol_per_g * tea_g_per_l,
        tea_phenol_mol_per_kg=TEA_PHENOL_MOL_PER_G * tea_g_per_l,
    )
    leaf_excess = strong_ions_needed_eq_per_kg(leaf, tea_ph_in_pure_water) if tea_g_per_l else 0.0
    alkalinity = alkalinity_meq_per_l / 1000.0
    return replace(
        leaf,
        carbonic_mol_per_kg=alkalinity,
        strong_ion_excess_eq_per_kg=leaf_excess + alkalinity,
    )


def starter_fraction_for(
    tea: Blend, starter: Blend, target_ph: float, temperature_c: float = 25.0
) -> float:
    """Return the mass share of starter in the blend that brings it to ``target_ph``.

    Raises
    ------
    ImpossibleInput
        ``reason`` "already_below" when the tea alone is at or below the target,
        "starter_not_acid_enough" when not even pure starter reaches it.

    Notes
    -----
    At a fixed target pH the strong ions that a liquid lacks or has too many of add up by
    mass, so the share is a ratio; only the ionic strength is refined in a few rounds.
    """
    _checked_ph("target_ph", target_ph)
    if ph_of(tea, temperature_c) <= target_ph:
        raise ImpossibleInput("target_ph", target_ph, reason="already_below")
    if ph_of(starter, temperature_c) >= target_ph:
        raise ImpossibleInput("target_ph", target_ph, reason="starter_not_acid_enough")
    constants = constants_at(temperature_c)

    def better(fraction: float) -> float:
        blend = mix(((tea, 1.0 - fraction), (starter, fraction)))
        ionic = _settled_ionic_strength(blend, target_ph, constants)
        tea_surplus = _imbalance(tea, tea.strong_ion_excess_eq_per_kg, target_ph, ionic, constants)[
            0
        ]
        starter_lack = _imbalance(
            starter, starter.strong_ion_excess_eq_per_kg, target_ph, ionic, constants
        )[0]
        return min(max(tea_surplus / (tea_surplus - starter_lack), 0.0), 1.0)

    return settle(better, 0.1, tolerance=1e-13)


def _imbalance(
    blend: Blend, excess: float, ph: float, ionic: float, constants: AcidConstants
) -> tuple[float, float, float]:
    """Return (positive less negative charge, buffer capacity, ionic strength) at ``ph``."""
    log_gamma = _log_gamma(ionic, constants.davies_a)
    log_neutral = 0.1 * ionic
    hydrogen = 10.0 ** (-ph - log_gamma)
    hydroxide = 10.0 ** (ph - constants.pk_water - log_gamma)
    charge = excess + hydrogen - hydroxide
    buffer = hydrogen + hydroxide
    squares = abs(excess) + 2.0 * blend.inert_salt_mol_per_kg + hydrogen + hydroxide
    for total, log_betas in zip(blend.acids_mol_per_kg, constants.log_betas, strict=True):
        if total == 0.0:
            continue
        norm, mean, mean_square = 1.0, 0.0, 0.0
        for z, log_beta in enumerate(log_betas, start=1):
            ratio = 10.0 ** (z * ph + log_beta - z * z * log_gamma + log_neutral)
            norm += ratio
            mean += z * ratio
            mean_square += z * z * ratio
        mean /= norm
        mean_square /= norm
        charge -= total * mean
        buffer += total * (mean_square - mean * mean)
        squares += total * mean_square
    # a step too far must not carry the activity coefficients out of all bounds
    return charge, LN_10 * buffer, min(squares / 2.0, HIGHEST_IONIC_STRENGTH)


def _settled_ionic_strength(blend: Blend, ph: float, constants: AcidConstants) -> float:
    excess = blend.strong_ion_excess_eq_per_kg
    return settle(
        lambda ionic: _imbalance(blend, excess, ph, ionic, constants)[2],
        _ionic_strength_floor(blend),
        tolerance=1e-13,
    )


def _ionic_strength_floor(blend: Blend) -> float:
    return abs(blend.strong_ion_excess_eq_per_kg) / 2.0 + blend.inert_salt_mol_per_kg


def _log_gamma(ionic: float, davies_a: float) -> float:
    """Return log10 of the activity coefficient of a single charge (davies_1962)."""
    root = math.sqrt(ionic)
    return -davies_a * (root / (1.0 + root) - 0.3 * ionic)


def _check_blend(blend: Blend) -> None:
    for name, value in zip(ACIDS, blend.acids_mol_per_kg, strict=True):
        if not 0.0 <= value < 10.0:
            raise ImpossibleInput(f"{name}_mol_per_kg", value, low=0.0, high=10.0, unit="mol/kg")
    excess, salt = blend.strong_ion_excess_eq_per_kg, blend.inert_salt_mol_per_kg
    _check("strong_ion_excess_eq_per_kg", excess, -MAX_STRONG, MAX_STRONG, "eq/kg")
    _check("inert_salt_mol_per_kg", salt, 0.0, MAX_STRONG, "mol/kg")


def _checked_ph(field: str, ph: float) -> float:
    _check(field, ph, LOWEST_PH, HIGHEST_PH, "pH")
    return ph


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
